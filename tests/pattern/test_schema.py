"""The schema is well formed, and takes the samples.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

from pathlib import Path

import jsonschema
from files import EVERYTHING, Schema, load


def test_the_schema_is_one(schema: Schema) -> None:
    jsonschema.Draft202012Validator.check_schema(schema.text)


def test_it_takes_the_samples(schema: Schema, sample: Path) -> None:
    assert not list(schema.validator.iter_errors(load(sample)))


def test_it_takes_the_file_with_everything(schema: Schema) -> None:
    assert not list(schema.validator.iter_errors(load(EVERYTHING)))


def test_it_wants_units(schema: Schema) -> None:
    file = load(EVERYTHING)
    for text, good in [("2 1/2 in", True), ("2 1/2", False), ("½ in", True), ("6mm", True), ("1 yd 4 in.", True),
                       ("3\"", True), ("3", False), ("-1 in", False), ("2.5 cm", True), ("in", False), ("", False)]:
        file["seam"]["ease"] = text
        assert schema.takes(file) == good, text
