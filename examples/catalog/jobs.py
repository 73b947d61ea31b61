"""What is to be worked out: every pattern with every seam, at all widths.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import hashlib
import json
import sqlite3
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Iterator

import muslin

# An answer that was worked out another way is not found again.
WAY = (Path(__file__).resolve().parent / "working.py").read_text(encoding="utf-8")
USUAL_QUERY = "SELECT name, pattern FROM design ORDER BY name"


class Trouble(Exception):
    """A sentence for the user."""


@dataclass(frozen=True)
class Job:
    """One pattern with one seam. Lengths are ticks; a seam of None leaves what the pattern says."""

    name: str
    pattern: str
    seam: "int | None"
    widths: "tuple[int, ...]"
    grid: int

    @property
    def key(self) -> str:
        """The same for the same work and nothing else, so that kept answers are found again."""
        asked = json.dumps([muslin.version_text(), WAY, asdict(self)], sort_keys=True)
        return hashlib.sha256(asked.encode()).hexdigest()


def patterns_in(source: Path, query: str, complaints: "list[str]") -> "Iterator[tuple[str, str]]":
    """Names and texts: of a file, of a folder's files and those in folders below it, or of a database. A file that is
    no text is complained of."""
    if source.is_dir():
        files = sorted(source.rglob("*.json"))
        if not files:
            raise Trouble(f"{source}: no pattern file (.json) is in this folder.")
        for file in files:
            yield from texts_of(file, file.relative_to(source).with_suffix("").as_posix(), complaints)
    elif source.suffix == ".json":
        yield from texts_of(source, source.stem, complaints)
    else:
        yield from patterns_of_database(source, query)


def texts_of(file: Path, name: str, complaints: "list[str]") -> "Iterator[tuple[str, str]]":
    """One, or none where the file is no text or cannot be read."""
    try:
        yield name, file.read_text(encoding="utf-8")
    except UnicodeDecodeError as error:
        complaints.append(f"{file}: this is no text in UTF-8, from byte {error.start} on (counted from 0).")
    except OSError as error:
        complaints.append(f"{file}: this file cannot be read: {error.strerror}.")


def patterns_of_database(source: Path, query: str) -> "Iterator[tuple[str, str]]":
    try:
        database = sqlite3.connect(f"{source.absolute().as_uri()}?mode=ro", uri=True)
        for row in database.execute(query):
            if len(row) != 2 or not all(isinstance(value, str) for value in row):
                raise Trouble(f"{source}: the query must give two texts a row, a name and a pattern.")
            yield row[0], row[1]
        database.close()
    except sqlite3.Error as error:
        raise Trouble(f"{source}: neither a pattern file (.json), a folder, nor a database to ask: {error}.") from None


def all_jobs(sources: "list[Path]", query: str, seams: "list[int | None]", widths: "list[int]",
             grid: int, complaints: "list[str]") -> "list[Job]":
    texts: "dict[str, str]" = {}
    for source in sources:
        if not source.exists():
            raise Trouble(f"{source}: there is nothing of this name.")
        for name, text in patterns_in(source, query, complaints):
            if texts.get(name, text) != text:
                raise Trouble(f"{name}: two different patterns have this name.")
            texts[name] = text
    return [Job(name, text, seam, tuple(widths), grid) for name, text in texts.items() for seam in seams]
