#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""A public header as doxygen wants to read it, on standard output: every comment where comments.py says it speaks.

    doxygen.py HEADER

lib/doc/Doxyfile names this as its filter. Only comments are touched.
"""
import re
import sys
from pathlib import Path
from typing import Dict, List

import comments

SPECIAL = re.compile(r"[\\@<>&#%\"]|::|\.\.\.")
ENTITIES = {"<": "&lt;", ">": "&gt;", "&": "&amp;", "...": "&hellip;"}


def escaped(text: str) -> str:
    """What doxygen and HTML would read as theirs, as plain characters; what stands in backquotes stays code."""
    plain = SPECIAL.sub(lambda found: ENTITIES.get(found.group(), "\\" + found.group()), text)
    return re.sub(r"`([^`]+)`", r"<code>\1</code>", plain)


def one_line(comment: str) -> str:
    """Paragraphs, entries and tables in HTML, without a line break."""
    parts: List[str] = []
    for block in comments.blocks(comment):
        if block.kind in ("entry", "bullet"):
            label = f"<b>{escaped(block.label)}</b> " if block.label else ""
            parts.append(f"<ul><li>{label}{escaped(block.text)}</li></ul>")
        elif block.kind == "table":
            rows = "<br>".join(escaped(row).replace("  ", "&nbsp; ") for row in block.text.rstrip("\n").split("\n"))
            parts.append(f"<p>{rows}</p>")
        else:
            parts.append(f"<p>{escaped(block.text)}</p>")
    return "".join(parts).replace("</ul><ul>", "")


def brief(comment: str) -> str:
    """The comment as doxygen wants it: its first sentence is the summary."""
    text = comments.flowing(comment)
    if "\n\n" in comment or re.search(r"\n {2}", comment):
        first, _, rest = comment.partition("\n\n")
        return f"{escaped(comments.flowing(first))} {one_line(rest)}"
    return escaped(text)


def spoken(items: List[comments.Item]) -> Dict[int, str]:
    """For each line that declares something, what speaks for it."""
    lines: Dict[int, str] = {}
    said = {**comments.of_structs(items), **comments.of_enums(items), **comments.shared(items)}
    for item in items:
        if item.kind in ("title", "section", "text"):
            continue
        lines[item.line] = brief(said.get(item.name, item.comment))
        texts = comments.of_members(item)
        for member in item.members:
            lines[member.line] = escaped(texts[member.name])
    return lines


def filtered(text: str, name: str) -> str:
    items = comments.read(text)
    lines = spoken(items)
    bare = comments.COMMENT.sub(lambda found: re.sub(r"[^\n]", "", found.group()), text).split("\n")
    for number, comment in lines.items():
        declared = bare[number - 1]
        bare[number - 1] = f"/** {comment} */ {declared}" if comment else declared
    head = one_line("\n\n".join(items[0].text.split("\n\n")[2:]))
    title = escaped(re.sub(r"^muslin/\w+\.h - ", "", comments.flowing(items[0].text.split("\n\n")[0])))
    bare[0] = f"/** @file muslin/{name}\n@brief {title}\n\n{head} */"
    return "\n".join(bare)


def main() -> int:
    path = Path(sys.argv[1])
    sys.stdout.write(filtered(path.read_text(encoding="utf-8"), path.name))
    return 0


if __name__ == "__main__":
    sys.exit(main())
