"""Interrupted, killed, spread over processes and a cluster: the tables are always those of one quiet process.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from pathlib import Path
from typing import Any, Iterator

import pytest
from cataloguing import (command_of, descendants, done, environment, kept, pattern, start, tables, wait_until,
                         write_patterns)

PATTERNS = 24
WORDS = ("--from", "36 in", "--to", "46 in", "--step", "1/2 in", "--picture", "none")


@pytest.fixture(scope="module")
def patterns(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Enough work to be interrupted in the middle."""
    designs = {f"moss{i:02}": pattern("Moss", f"{2 + i}/4 in", 4 + i // 2) for i in range(PATTERNS)}
    return write_patterns(tmp_path_factory.mktemp("patterns"), **designs)


@pytest.fixture(scope="module")
def quiet(patterns: Path, tmp_path_factory: pytest.TempPathFactory) -> "list[str]":
    folder = tmp_path_factory.mktemp("quiet")
    done(patterns, "--output", folder, "--workers", "1", *WORDS)
    assert kept(folder) == PATTERNS
    return tables(folder)


def in_the_middle(folder: Path) -> bool:
    return kept(folder) >= 3


def test_interrupted_and_gone_on(patterns: Path, quiet: "list[str]", tmp_path: Path) -> None:
    program = start(patterns, "--output", tmp_path, "--workers", "2", *WORDS)
    wait_until(lambda: in_the_middle(tmp_path))
    os.killpg(program.pid, signal.SIGINT)  # as a terminal sends it: to all of them
    _, said = program.communicate(timeout=60)
    assert program.returncode == 130 and "the same command goes on from there" in said
    assert "Traceback" not in said
    assert 3 <= kept(tmp_path) < PATTERNS and not list((tmp_path / "kept").glob("*/.new-*"))
    before = kept(tmp_path)
    assert f"({before} kept from before)" in done(patterns, "--output", tmp_path, "--progress", "always", *WORDS)
    assert tables(tmp_path) == quiet


def test_a_process_killed(patterns: Path, quiet: "list[str]", tmp_path: Path) -> None:
    program = start(patterns, "--output", tmp_path, "--workers", "2", *WORDS)
    wait_until(lambda: in_the_middle(tmp_path))
    workers = [pid for pid in descendants(program.pid) if "resource_tracker" not in command_of(pid)
               and not descendants(pid)]
    os.kill(workers[0], signal.SIGKILL)
    _, said = program.communicate(timeout=120)
    assert program.returncode == 0, said
    assert tables(tmp_path) == quiet


@pytest.fixture
def cluster(tmp_path: Path) -> "Iterator[tuple[str, list[subprocess.Popen[bytes]]]]":
    """A scheduler and two workers, each a process of its own: nobody starts them anew."""
    pytest.importorskip("distributed")
    told = tmp_path / "scheduler.json"
    common: "dict[str, Any]" = {"env": environment(), "stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL,
                                "cwd": tmp_path}
    dask = [sys.executable, "-m"]
    scheduler = subprocess.Popen([*dask, "distributed.cli.dask_scheduler", "--host", "127.0.0.1", "--port", "0",
                                  "--no-dashboard", "--no-show", "--scheduler-file", str(told)], **common)
    wait_until(lambda: told.exists() and told.read_text().strip())
    address = json.loads(told.read_text())["address"]
    workers = [subprocess.Popen([*dask, "distributed.cli.dask_worker", address, "--nthreads", "1", "--no-nanny",
                                 "--no-dashboard", "--local-directory", str(tmp_path / f"worker{i}")], **common)
               for i in range(2)]
    yield address, workers
    for process in (*workers, scheduler):
        process.kill()
        process.wait()


def test_a_worker_of_a_cluster_killed(cluster: "tuple[str, list[subprocess.Popen[bytes]]]", patterns: Path,
                                      quiet: "list[str]", tmp_path: Path) -> None:
    address, workers = cluster
    out = tmp_path / "out"
    with start(patterns, "--output", out, "--cluster", address, *WORDS) as program:
        wait_until(lambda: in_the_middle(out))
        workers[0].kill()
        assert kept(out) < PATTERNS
        _, said = program.communicate(timeout=120)
    assert program.returncode == 0, said
    assert kept(out) == PATTERNS and tables(out) == quiet


def test_no_cluster(patterns: Path, tmp_path: Path) -> None:
    pytest.importorskip("distributed")
    with start(patterns, "--output", tmp_path, "--cluster", "tcp://127.0.0.1:9") as program:
        _, said = program.communicate(timeout=120)
    assert program.returncode == 2 and "no dask scheduler answers there" in said, said
