"""The schema and the reader's tables say the same of a file's form: both are asked about thousands of mutated files.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import copy
import json
import os
import random
from typing import Any, Iterator

from files import EVERYTHING, SAMPLES, Reader, Schema, load

# What the reader refuses and a schema cannot know: unknown names, rings, rows, what stands within a length, and the
# range of its value. (A whole number written 2.0 is one for a schema; the mutations below leave it out.)
BEYOND = ("nothing in", "goes round in a ring", "rows are equally long", "an earlier size has this name",
          "stand within each other", "a length is 0 or more", "that is more than 0",
          'goes with "policy"', 'goes with "resquare every"', "a length itself")

WRONG: "list[Any]" = [
    None, True, 17, -1, 0, 2.5, 101, 10**10, 10**30, "", "plain", "No Name", "2 1/2", "2 1/2 in", "-2 in", "6 mm",
    "#12345", "#00ff00", "2025-02-30", "x" * 41, "x" * 130, "ö" * 60, "left", "free", [], {}, ["1 in"], [[]],
    {"patch": "red", "size": "1 in"}, {"times": 2, "of": "1 in"}, {"sum": ["1 in"]}, {"nothing": 1}]


def places(value: Any, place: "tuple[Any, ...]" = ()) -> "Iterator[tuple[Any, ...]]":
    yield place
    inside = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, item in inside:
        yield from places(item, (*place, key))


def at(value: Any, place: "tuple[Any, ...]") -> Any:
    for key in place:
        value = value[key]
    return value


def renamed(holder: "dict[str, Any]", key: str, name: str) -> None:
    rows = [(name if old == key else old, item) for old, item in holder.items()]
    holder.clear()
    holder.update(rows)


def mutate(chance: random.Random, value: Any) -> Any:
    """One place changed: removed, renamed, doubled, of another type, out of range, or with something beside it."""
    value = copy.deepcopy(value)
    place = chance.choice([place for place in places(value) if place])
    holder, key = at(value, place[:-1]), place[-1]
    how = chance.randrange(8)
    if how == 0:
        del holder[key]
    elif how == 1 and isinstance(holder, dict):
        renamed(holder, key, chance.choice([key[1:], key + "x", key.upper(), key.replace(" ", "_"), "block", "fabric"]))
    elif how == 2 and isinstance(holder, list):
        holder.extend([holder[key]] * chance.choice([1, 2, 20, 40]))
    elif how == 3 and isinstance(holder[key], dict):
        other = chance.choice(["called", "block", "size", "width", "height", "fabric", "sash", "corners", "nothing"])
        holder[key][other] = chance.choice(WRONG)
    elif how == 4:
        holder[key] = copy.deepcopy(at(value, chance.choice(list(places(value)))))
    else:
        holder[key] = copy.deepcopy(chance.choice(WRONG))
    return value


def is_beyond(complaint: "dict[str, Any]") -> bool:
    return complaint["status"] > 0 or any(words in complaint["sentence"] for words in BEYOND)


def test_the_schema_and_the_reader_agree(schema: Schema, reader: Reader) -> None:
    count = int(os.environ.get("MUSLIN_PATTERN_MUTATIONS", "1500"))
    chance = random.Random(20250309)
    given = [load(EVERYTHING)] * 3 + [load(path) for path in SAMPLES]
    files = [mutate(chance, chance.choice(given)) for _ in range(count)]
    answers = reader.texts(json.dumps(file) for file in files)
    refused = 0
    for file, answer in zip(files, answers, strict=True):
        takes = schema.takes(file)
        told = answer["complaints"]
        assert answer["read"] or told
        if takes:
            assert answer["read"] or all(is_beyond(row) for row in told), (told, json.dumps(file))
        else:
            assert not answer["read"], [error.message for error in schema.validator.iter_errors(file)]
            refused += 1
    assert count / 3 < refused < count  # both sides of the question were asked


def members_of(schema: Any) -> "Iterator[str]":
    """The names of all members that the schema knows."""
    if isinstance(schema, dict):
        yield from schema.get("properties", {})
        for item in schema.values():
            yield from members_of(item)
    elif isinstance(schema, list):
        for item in schema:
            yield from members_of(item)


def test_the_file_with_everything_has_every_member(schema: Schema) -> None:
    text = EVERYTHING.read_text(encoding="utf-8")
    assert not [name for name in set(members_of(schema.text)) if f'"{name}":' not in text]
