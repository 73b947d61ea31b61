"""Answers kept in a folder, one file each: written beside their place and renamed, so that none is ever half there.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import tempfile
from pathlib import Path
from typing import Any

from jobs import Job


class Kept:
    """The folder."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def place(self, job: Job) -> Path:
        return self.folder / job.key[:2] / f"{job.key}.json"

    def has(self, job: Job) -> bool:
        return self.get(job) is not None

    def get(self, job: Job) -> Any:
        """None where nothing is kept, or nothing that can be read."""
        try:
            return json.loads(self.place(job).read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return None

    def put(self, job: Job, answer: Any) -> None:
        write(self.place(job), json.dumps(answer))


def write(place: Path, text: "str | bytes") -> None:
    """A whole file or none."""
    place.parent.mkdir(parents=True, exist_ok=True)
    handle, beside = tempfile.mkstemp(dir=place.parent, prefix=".new-")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(text.encode() if isinstance(text, str) else text)
            file.flush()
            os.fsync(file.fileno())
        os.chmod(beside, 0o644)
        os.replace(beside, place)
    except BaseException:
        os.unlink(beside)
        raise
