"""What examples/pattern/README.md shows is so.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import re
from typing import Any

from files import PATTERN, Reader, Schema
from walker import Walker

TEXT = (PATTERN / "README.md").read_text(encoding="utf-8")


def example() -> Any:
    (text,) = re.findall(r"```json\n(.*?)```", TEXT, re.DOTALL)
    return json.loads(text)


def test_the_example_is_a_pattern(schema: Schema, reader: Reader) -> None:
    file = example()
    assert schema.takes(file)
    shown = reader.value(file)
    assert shown["complaints"] == []
    for size, got in zip(file["sizes"], shown["sizes"], strict=True):
        assert (got["width"], got["height"]) == Walker(file, size).top()
        said = f"{got['width'] // 8128} x {got['height'] // 8128} in"
        assert said in TEXT and got["misfits"] == 0


def test_all_kinds_of_nodes_are_told(schema: Schema) -> None:
    kinds = [kind["required"][0] for kind in schema.text["$defs"]["node"]["oneOf"] if "required" in kind]
    assert len(kinds) == 17
    assert not [kind for kind in kinds if f'{{ "{kind}": ' not in TEXT]
    measures = [kind["required"][0] for kind in schema.text["$defs"]["measure"]["oneOf"] if "required" in kind]
    assert not [kind for kind in measures if f'{{ "{kind}": ' not in TEXT]


def test_the_complaint_that_it_quotes(reader: Reader) -> None:
    file = example()
    file["parts"]["star"] = {"across": ["dark", {"patch": "linnen", "size": "3 in"}]}
    ((place, sentence),) = reader.told(file).items()
    assert f"{place}: {sentence}" in " ".join(TEXT.split())
