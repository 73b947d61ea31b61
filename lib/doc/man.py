#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes the manual pages of the library in mdoc from the public headers, so that they say what those say.

    man.py INCLUDE FOLDER      FOLDER/muslin.3, and FOLDER/muslin_length.3 and so on, a page a header

Which comment speaks for what is decided in comments.py. The build runs this; it needs nothing but Python.
"""
import re
import sys
import textwrap
from pathlib import Path
from typing import Dict, Iterator, List

import comments
from comments import Block, Item

DATE = "November 30, 2026"
VERSION = re.compile(r"^#define MUSLIN_VERSION_(?:MAJOR|MINOR|PATCH) (\d+)", re.M)
ESCAPES = {"\\": "\\e", "\u2212": "\\(mi"}
SENTENCE = re.compile(r"(?<=[\w)\"'\]`][.!?])(?<! [A-Z]\.) (?=[A-Z0-9(\"`*_])")


def plain(text: str) -> str:
    """Text that roff takes as it is, each sentence on a line of its own."""
    text = re.sub(r"[\\\u2212]", lambda found: ESCAPES[found.group()], text.replace("`", ""))
    lines = []
    for sentence in SENTENCE.split(text):
        wrapped = textwrap.wrap(sentence, 110, break_long_words=False, break_on_hyphens=False)
        for line in wrapped:
            goes_on = "\\&" if line is not wrapped[-1] and line[-1] in ".!?" else ""  # else taken for a sentence's end
            lines.append(("\\&" if line[0] in ".'" else "") + line + goes_on)
    return "\n".join(lines)


def word(text: str) -> str:
    """An argument of a macro: in quotation marks where it has blanks, its own ones doubled."""
    text = text.replace("\\", "\\e").replace('"', "\\(dq")
    text = "\\&" + text if re.match(r"[.,;:()\[\]?!|]|[A-Z][a-z]{1,2}$", text) else text
    return f'"{text}"' if " " in text else text


def entries(blocks: List[Block]) -> Iterator[str]:
    """Entries and bullets that follow each other, as a list; tables in between stand in it as they are."""
    yield ".Bl -tag -width Ds"
    for block in blocks:
        if block.kind == "table":
            yield from table(block.text.rstrip("\n").split("\n"))
        elif block.label or block.kind == "bullet":
            label, text = (block.label, block.text) if block.label else halves(block.text)
            yield from (f".It {word(label)}", plain(text)) if text else (f".It {word(label)}",)
        else:
            yield plain(block.text)
    yield ".El"


def table(lines: List[str]) -> Iterator[str]:
    """A table as a list, for terminals are narrow: its first column are the tags. What is indented in the first column,
    or stands in the others alone, goes on with the row above."""
    starts = [found.start() for found in re.finditer(r"\S+(?: \S+)*", lines[0])] + [None]
    cells = [[line[a:b] for a, b in zip(starts, starts[1:])] for line in lines]
    rows: List[List[str]] = []
    for row in cells[1:]:
        if row[0][:1].strip():
            rows.append([cell.strip() for cell in row])
        else:
            rows[-1] = [" ".join(f"{was} {cell}".split()) for was, cell in zip(rows[-1], row)]
    names = [name.strip() for name in cells[0]]
    yield ".Bl -tag -width Ds -compact"
    for row in rows:
        yield f".It {word(row[0])}"
        yield plain("; ".join(f"{name}: {cell}" for name, cell in zip(names[1:], row[1:]) if cell))
    yield ".El"


def halves(text: str) -> List[str]:
    """A bullet by its first colon: what it is about, and what is said of it."""
    label, colon, rest = text.partition(": ")
    return [label + ":", rest] if colon and len(label) < 60 else ["-", text]


def prose(comment: str, sections: bool = False) -> Iterator[str]:
    """A comment as paragraphs and lists, each after an empty line; with sections, headings begin one."""
    waiting: List[Block] = []
    first = True
    for block in [*comments.blocks(comment), Block("paragraph", "")]:
        if block.kind in ("entry", "bullet", "table"):
            waiting.append(block)
            continue
        if waiting:
            yield from entries(waiting)
            waiting, first = [], False
        if sections and block.kind == "heading":
            yield f".Ss {block.text}"
            first = True
        elif block.text:
            if not first:
                yield ".Pp"
            yield plain(block.text + ":" if block.kind == "heading" else block.text)
            first = False


# ---- what is declared -----------------------------------------------------------------------------------------------

def prototype(item: Item) -> Iterator[str]:
    """A function in the synopsis."""
    found = re.match(r"(.*?)(muslin_\w+)\((.*)\)$", comments.flowing(item.text), re.S)
    kind, name, arguments = found.groups()
    yield f".Ft {word(kind.strip())}"
    yield f".Fo {name}"
    for argument in re.split(r", (?![^()]*\))", arguments):
        yield f".Fa {word(argument)}"
    yield ".Fc"


def members(item: Item) -> Iterator[str]:
    yield ".Bl -tag -width Ds -compact"
    said = comments.of_members(item)
    usual = re.compile(r"(size|flags|pad\w*)$")
    for member in item.members:
        if item.kind == "struct" and usual.match(member.name) and member.comment in ("", "0"):
            continue
        macro = ".It Dv " if item.kind == "enum" else ".It Vt "
        yield macro + word(member.declaration)
        if said[member.name] != "What its name says.":
            yield plain(said[member.name])
    yield ".El"


def declared(item: Item, said: Dict[str, str]) -> Iterator[str]:
    """A constant, a type, an enum or a struct, under its name."""
    comment = said.get(item.name, item.comment)
    if item.kind == "define":
        yield f".It Dv {item.name}"
    elif item.kind == "typedef":
        yield f".It Vt {word(comments.flowing(item.text).rstrip(';'))}"
    else:
        yield f".It Vt {word(('struct ' if item.kind == 'handle' else item.kind + ' ') + item.name)}"
    if comment:
        yield from prose(comment)
    if item.members:
        yield ".Pp"
        yield from members(item)


def described(group: List[Item], said: Dict[str, str]) -> Iterator[str]:
    """Items of one section as a list. Functions that share a comment stand together."""
    yield ".Bl -tag -width Ds"
    for item, after in zip(group, [*group[1:], None]):
        if item.kind != "function":
            yield from declared(item, said)
            continue
        yield f".It Fn {item.name}"
        if not (after and after.kind == "function" and not after.comment and said[after.name] == said[item.name]):
            yield from prose(said[item.name])
    yield ".El"


# ---- pages ----------------------------------------------------------------------------------------------------------

def title(items: List[Item]) -> str:
    return comments.flowing(re.sub(r"^muslin/\w+\.h - ", "", items[0].text.split("\n\n")[0])).rstrip(".")


def head(items: List[Item]) -> str:
    """What a header says before it declares anything, without its first sentence and its licence."""
    return "\n\n".join(items[0].text.split("\n\n")[2:])


def page(header: str, items: List[Item], version: str, others: List[str]) -> Iterator[str]:
    name = f"muslin_{header[:-2]}"
    functions = [item for item in items if item.kind == "function"]
    said = {**comments.of_structs(items), **comments.of_enums(items), **comments.shared(items)}
    yield f'.\\" SPDX-License-Identifier: MIT\n.\\" Written by lib/doc/man.py from muslin/{header}.'
    yield f".Dd {DATE}\n.Dt {name.upper()} 3\n.Os muslin {version}\n.Sh NAME"
    names = [name] + [item.name for item in functions]
    yield "\n".join(f".Nm {each} ," for each in names[:-1])
    yield f".Nm {names[-1]}\n.Nd {title(items)}\n.Sh LIBRARY\nlibmuslin, -lmuslin\n.Sh SYNOPSIS\n.In muslin/{header}"
    for item in functions:
        yield from prototype(item)
    yield ".Sh DESCRIPTION"
    yield from prose(head(items) or title(items) + ".", sections=True)
    group: List[Item] = []
    before = items[0]
    for item in [*items[1:], Item("section", "", "", "", 0, 0)]:
        if item.kind in ("section", "text") and group:
            yield from described(group, said)
            group = []
        if item.kind == "section" and item.text:
            yield f".Ss {word(item.text[0].upper() + item.text[1:])}"
        elif item.kind == "text":
            if before.kind != "section":
                yield ".Pp"
            yield from prose(item.text)
        elif item.kind != "section":
            group.append(item)
        before = item
    yield from ending(name, others)


def ending(name: str, others: List[str]) -> Iterator[str]:
    yield ".Sh RETURN VALUES"
    yield plain("A function of type muslin_status returns 0, which is MUSLIN_OK, or the number of what was wrong, and "
                "then touches no output but the problem, where one was given.")
    yield ".Sh SEE ALSO"
    pages = sorted({"muslin", *others} - {name})
    yield "\n".join(f".Xr {each} 3 ," for each in pages[:-1]) + f"\n.Xr {pages[-1]} 3" if len(pages) > 1 else \
        f".Xr {pages[0]} 3"


def overview(read: Dict[str, List[Item]], version: str) -> Iterator[str]:
    """muslin.3: what all calls have in common, from base.h, and which page answers what."""
    yield '.\\" SPDX-License-Identifier: MIT\n.\\" Written by lib/doc/man.py from muslin/base.h.'
    yield f".Dd {DATE}\n.Dt MUSLIN 3\n.Os muslin {version}\n.Sh NAME\n.Nm muslin\n.Nd quilt arithmetic as a C library"
    yield ".Sh LIBRARY\nlibmuslin, -lmuslin\n.Sh SYNOPSIS\n.In muslin/muslin.h\n.Pp"
    yield ".Nm cc Ar file.c Li $(pkg-config --cflags --libs muslin)"
    yield ".Sh DESCRIPTION"
    yield plain("The arithmetic of a quilt: from the sizes that someone wants to see, to what must be cut, sewn, "
                "pressed and bought, and back again. Results are exact, or rounded once in a direction that the caller names; "
                "they carry their working, and tell how near to the edge they stand.")
    yield ".Pp"
    yield plain("One page for each header, from the number to the whole quilt; muslin/muslin.h includes all:")
    yield ".Bl -tag -width Ds -compact"
    for header, items in read.items():
        yield f".It Xr muslin_{header[:-2]} 3\n{plain(title(items) + '.')}"
    yield ".El"
    yield ".Ss What holds for every call"
    yield from prose(re.sub(r"^Conventions, stated once\n\n", "", head(read["base.h"])))
    yield ".Sh EXAMPLES"
    yield "How wide is a set of six strips, cut 2 1/2 in and sewn with seams of 1/4 in?"
    yield ".Bd -literal -offset indent\n" + EXAMPLE.strip("\n").replace("\\", "\\e") + "\n.Ed\n.Pp"
    yield "It says: 12 1/2 in."
    yield ".Sh SEE ALSO"
    pages = [f"muslin_{header[:-2]}" for header in read]
    yield "\n".join(f".Xr {each} 3 ," for each in sorted(pages)[:-1]) + f"\n.Xr {sorted(pages)[-1]} 3"


EXAMPLE = r'''
#include <muslin/muslin.h>
#include <stdio.h>

int main(void)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_sewn_row set = { .size = sizeof set };
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    char text[64];

    if (muslin_seam_row_equal(20320, 6, &seam, &set, &problem))
        return puts(problem.text), 1;
    muslin_length_format(set.unfinished, NULL, text, sizeof text,
                         NULL, NULL, NULL);
    return puts(text) == EOF;
}
'''


def main() -> int:
    include, folder = Path(sys.argv[1]), Path(sys.argv[2])
    texts = {name: (include / name).read_text(encoding="utf-8") for name in
             re.findall(r'#include "(\w+\.h)"', (include / "muslin.h").read_text(encoding="utf-8"))}
    read = {name: comments.read(text) for name, text in texts.items()}
    version = ".".join(VERSION.findall(texts["base.h"]))
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "muslin.3").write_text("\n".join(overview(read, version)) + "\n", encoding="utf-8")
    for header, items in read.items():
        others = [f"muslin_{name}" for name in re.findall(r'#include "(\w+)\.h"', texts[header])]
        text = "\n".join(page(header, items, version, others)) + "\n"
        (folder / f"muslin_{header[:-2]}.3").write_text(text, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
