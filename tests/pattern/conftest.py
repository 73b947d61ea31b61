"""What all tests of pattern files take: the reader, built with sanitizers, and the schema.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

from pathlib import Path

import pytest
from files import Reader, Schema


@pytest.fixture(scope="session")
def reader(tmp_path_factory: pytest.TempPathFactory) -> Reader:
    return Reader(tmp_path_factory.mktemp("reader"))


@pytest.fixture(scope="session")
def schema() -> Schema:
    return Schema()


def pytest_generate_tests(metafunc: pytest.Metafunc) -> None:
    if "sample" in metafunc.fixturenames:
        folder = Path(__file__).resolve().parents[2] / "examples/patterns"
        metafunc.parametrize("sample", sorted(folder.glob("*.json")), ids=lambda path: path.stem)
