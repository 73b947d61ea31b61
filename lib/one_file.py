#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes the library as two files, muslin.c and muslin.h, for whoever would rather copy than link.

    one_file.py FOLDER     writes FOLDER/muslin.c and FOLDER/muslin.h

The headers come in the order of include/muslin/muslin.h, the sources in that of meson.build, each once. Names that
a source has for functions, structs or constants of its own, and which others use too, get the source's name in front;
everything else is as it stands there. The same sources give the same files, byte for byte.
"""
import re
import sys
from collections import Counter
from pathlib import Path
from typing import Dict, List, Set, Tuple

from clang import cindex
from clang.cindex import CursorKind, LinkageKind, TokenKind

ROOT = Path(__file__).resolve().parent.parent
FLAGS = ["-std=c11", f"-I{ROOT / 'include'}", f"-I{ROOT / 'lib'}"]
INCLUDE = re.compile(r'^#\s*include\s+["<]([\w/.]+)[">].*\n', re.M)
OWN = {CursorKind.FUNCTION_DECL, CursorKind.VAR_DECL, CursorKind.STRUCT_DECL, CursorKind.ENUM_DECL,
       CursorKind.ENUM_CONSTANT_DECL, CursorKind.TYPEDEF_DECL}


def sources() -> List[Path]:
    listed = re.search(r"^sources = files\((.*?)\)\n", (ROOT / "meson.build").read_text(encoding="utf-8"),
                       re.M | re.S).group(1)
    return [ROOT / name for name in re.findall(r"'(lib/\w+\.c)'", listed)]


def version() -> str:
    return re.search(r"version: '([\d.]+)'", (ROOT / "meson.build").read_text(encoding="utf-8")).group(1)


# ---- names of a source's own ------------------------------------------------------------------------------------------

def is_own(cursor: cindex.Cursor, source: Path) -> bool:
    """Declared at the outermost level of the source itself, seen by no other."""
    if cursor.kind not in OWN or cursor.location.file is None or Path(cursor.location.file.name) != source:
        return False
    if cursor.kind in (CursorKind.FUNCTION_DECL, CursorKind.VAR_DECL):
        return cursor.linkage == LinkageKind.INTERNAL
    parent = cursor.semantic_parent
    return parent.kind in (CursorKind.TRANSLATION_UNIT, CursorKind.ENUM_DECL)


def own_names(unit: cindex.TranslationUnit, source: Path) -> List[Tuple[int, str]]:
    """Where a source says a name of its own: offset and name. What stands within macros has no cursor to ask: there a
    name of its own is taken for what it says, unless it is a member."""
    places, within_macros = [], []
    for token in unit.get_tokens(extent=unit.cursor.extent):
        if token.kind != TokenKind.IDENTIFIER or Path(token.location.file.name) != source:
            continue
        cursor = token.cursor
        target = cursor if cursor.spelling == token.spelling and cursor.kind in OWN else cursor.referenced
        place = (token.location.offset, token.spelling)
        if target is None or target.spelling != token.spelling:
            within_macros.append(place)
        elif is_own(target, source):
            places.append(place)
    text = source.read_bytes()
    own = {name for _, name in places}
    return places + [(offset, name) for offset, name in within_macros
                     if name in own and text[offset - 1:offset] not in (b".", b">")]


def renamed(text: bytes, stem: str, places: List[Tuple[int, str]], shared: Set[str]) -> bytes:
    for offset, name in sorted(places, reverse=True):
        if name in shared:
            text = text[:offset] + f"{stem}_{name}".encode() + text[offset + len(name):]
    return text


# ---- files put together -----------------------------------------------------------------------------------------------

class Writer:
    """Files one after the other, each header once, before what includes it."""

    def __init__(self) -> None:
        self.done: Set[Path] = set()
        self.parts: List[str] = []

    def include(self, name: str, beside: Path) -> str:
        """The line to leave in place of an include: the header itself goes before."""
        for folder in (beside, ROOT / "lib", ROOT / "include", ROOT / "include" / "muslin"):
            header = (folder / name).resolve()
            if header.is_file():
                self.put(header, header.read_text(encoding="utf-8"))
                return ""
        return f"#include <{name}>\n"

    def put(self, path: Path, text: str) -> None:
        if path in self.done:
            return
        self.done.add(path)
        body = INCLUDE.sub(lambda found: self.include(found.group(1), path.parent), text)
        self.parts.append(f"\n/* ==== {path.relative_to(ROOT)} ==== */\n\n{body.strip()}\n")


def write_header() -> Tuple[str, Set[Path]]:
    writer = Writer()
    top = ROOT / "include" / "muslin" / "muslin.h"
    writer.put(top, top.read_text(encoding="utf-8"))
    return "".join(writer.parts), writer.done


def write_source(headers: Set[Path]) -> str:
    units: Dict[Path, List[Tuple[int, str]]] = {}
    index = cindex.Index.create()
    for source in sources():
        units[source] = own_names(index.parse(str(source), args=FLAGS), source)
    texts = [path.read_text(encoding="utf-8") for path in [*units, *sorted((ROOT / "lib").glob("*.h"))]]
    seen = Counter(name for text in texts for name in set(re.findall(r"\b[A-Za-z_]\w*", text)))
    shared = {name for name, count in seen.items() if count > 1}
    writer = Writer()
    writer.done |= headers
    for source, places in units.items():
        text = renamed(source.read_bytes(), source.stem, places, shared).decode()
        macros = re.findall(r"^#define (\w+)", text, re.M)
        writer.put(source, text.rstrip() + "\n" + "".join(f"#undef {macro}\n" for macro in macros))
    return "".join(writer.parts)


def main(folder: Path) -> int:
    header, headers = write_header()
    notice = f" - muslin {version()}, the whole library in one file, written by lib/one_file.py.\n *\n" \
             " * SPDX-License-Identifier: MIT */\n"
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "muslin.h").write_text(f"/* muslin.h{notice}{header}", encoding="utf-8")
    (folder / "muslin.c").write_text(f'/* muslin.c{notice}#include "muslin.h"\n{write_source(headers)}',
                                     encoding="utf-8")
    return 0


if __name__ == "__main__":
    if len(sys.argv) != 2 or sys.argv[1].startswith("-"):
        print(__doc__)
        sys.exit(0 if sys.argv[1:] in (["-h"], ["--help"]) else 2)
    sys.exit(main(Path(sys.argv[1])))
