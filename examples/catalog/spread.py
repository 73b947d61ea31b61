"""Jobs spread over processes of this machine, or over the workers of a dask cluster: the same work either way.

SPDX-License-Identifier: MIT

Both give (job, answer) as answers come, in any order. Few jobs are under way at a time, so that a catalogue may be
larger than memory. A worker that dies takes nothing with it: what it had in hand is done again.
"""
from __future__ import annotations

import importlib
import itertools
import multiprocessing
import os
import signal
from concurrent.futures import FIRST_COMPLETED, CancelledError, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from typing import Any, Iterable, Iterator

from jobs import Job, Trouble
from working import work

UNDER_WAY = 4    # for each worker
TRIES = 3        # of a job whose workers die


def leave_interrupts_to_the_parent() -> None:
    signal.signal(signal.SIGINT, signal.SIG_IGN)


# ---- this machine ----------------------------------------------------------------------------------------------------

def over_processes(jobs: "Iterable[Job]", workers: int) -> "Iterator[tuple[Job, Any]]":
    if workers == 1:
        for job in jobs:
            yield job, work(job)
        return
    tries: "dict[str, int]" = {}
    waiting = iter(jobs)
    while True:
        lost: "list[Job]" = []
        yield from one_pool(waiting, workers, lost)
        if not lost:
            return
        for job in lost:
            tries[job.key] = tries.get(job.key, 0) + 1
            if tries[job.key] > TRIES:
                raise Trouble(f"{job.name}: the process that works it out has died {TRIES} times.")
        waiting = itertools.chain(lost, waiting)


def one_pool(waiting: "Iterator[Job]", workers: int, lost: "list[Job]") -> "Iterator[tuple[Job, Any]]":
    """Until all is done, or a process dies: then the jobs under way are lost, and are to be done again."""
    context = multiprocessing.get_context("forkserver")
    pool = ProcessPoolExecutor(workers, mp_context=context, initializer=leave_interrupts_to_the_parent)
    under_way: "dict[Future[Any], Job]" = {}
    try:
        while True:
            for job in itertools.islice(waiting, UNDER_WAY * workers - len(under_way)):
                lost.append(job)  # for as long as it is not under way: submitting fails where a process has died
                under_way[pool.submit(work, job)] = job
                lost.pop()
            if not under_way:
                return
            done, _ = wait(under_way, return_when=FIRST_COMPLETED)
            for future in done:
                answer = future.result()
                yield under_way.pop(future), answer
    except BrokenProcessPool:
        lost.extend(under_way.values())
    finally:
        pool.shutdown(wait=True, cancel_futures=True)


# ---- a cluster -------------------------------------------------------------------------------------------------------

def over_cluster(jobs: "Iterable[Job]", address: str) -> "Iterator[tuple[Job, Any]]":
    """Workers need this folder and the muslin package on their PYTHONPATH, MUSLIN_LIBRARY and MUSLIN_SQL."""
    try:
        distributed: Any = importlib.import_module("distributed")
    except ImportError:
        raise Trouble("A cluster needs dask.distributed: on Debian, apt-get install python3-distributed.") from None
    try:
        client = distributed.Client(address, timeout="8s")
    except (OSError, ValueError) as error:
        raise Trouble(f"{address}: no dask scheduler answers there: {error}.") from None
    with client:
        waiting = iter(jobs)
        under_way = {}

        def start(count: int) -> "list[Any]":
            futures = []
            for job in itertools.islice(waiting, count):
                future = client.submit(work, job, key=f"muslin-{job.key}", retries=TRIES, pure=True)
                under_way[future.key] = job
                futures.append(future)
            return futures

        workers = max(1, len(client.scheduler_info()["workers"]))
        coming = distributed.as_completed(start(UNDER_WAY * workers))
        for future in coming:
            job = under_way.pop(future.key)
            try:
                answer = future.result()
            except distributed.KilledWorker:
                answer = {"complaint": f"the workers that took it on have died {TRIES} times and more."}
            except (OSError, CancelledError):
                raise Trouble(f"{address}: the cluster is lost. What is done is kept.") from None
            yield job, answer
            future.release()
            coming.update(start(1))


def usual_workers() -> int:
    return len(os.sched_getaffinity(0))
