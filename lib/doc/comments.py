#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Reads a public header as its author wrote it: what is declared, in order, each with the comment that speaks for it.

    comments.py HEADER     prints what was found, a line each

Needs nothing but Python, so that the manual pages can be made where the library is built. The headers keep to one form,
which this relies on: declarations begin in the first column, a comment stands right above what it speaks for or begins
on the line of a member, and functions that follow each other without a comment between them share the one above.
"""
import re
import sys
from dataclasses import dataclass, field
from pathlib import Path
from typing import Dict, Iterator, List, Optional, Tuple

COMMENT = re.compile(r"/\*(.*?)\*/", re.S)
SECTION = re.compile(r"^-{4} (.*?) -{4,}$")
STATEMENT = re.compile(r"^(?P<kind>enum|struct|typedef|MUSLIN_API)\b", re.M)


@dataclass
class Member:
    """A member of a struct or a value of an enum; its type is empty then."""
    name: str
    declaration: str
    comment: str
    line: int


@dataclass
class Item:
    """kind: title, section, text, define, typedef, enum, struct, handle, function"""
    kind: str
    name: str
    text: str                 # the declaration, or the text of a title, a section or a text
    comment: str              # what speaks for it, without stars, lines as they are
    line: int
    end: int                  # the place behind it, so that a comment can be put there
    members: List[Member] = field(default_factory=list)


def bare(comment: str) -> str:
    """The inside of a comment: without stars at the beginning of lines, indentation kept."""
    lines = comment.strip("\n").split("\n")
    rest = [re.sub(r"^ {0,2}\* ?|^ {3}(?! *\*)", "", line) for line in lines[1:]]
    return "\n".join([lines[0].strip(), *(line.rstrip() for line in rest)]).strip()


def flowing(comment: str) -> str:
    """A comment as one line."""
    return re.sub(r"\s*\n\s*(?:\* ?)?", " ", comment).strip()


def members_of(body: str, line: int) -> Iterator[Member]:
    """What stands between the braces of an enum or a struct."""
    blank = re.compile(r"[\s,]*")
    beside = re.compile(r"[ \t,]*/\*(.*?)\*/", re.S)
    at = blank.match(body).end()
    while at < len(body):
        above = beside.match(body, at)
        start = at = blank.match(body, above.end()).end() if above else at
        ends = re.compile(r"[;,](?![^()]*\))|(?=/\*)|$").search(body, at)
        declaration = flowing(body[at:ends.start()])
        at = ends.end()
        said = above or beside.match(body, at)
        comment = flowing(said.group(1)) if said else ""
        at = max(at, said.end()) if said else at
        name = re.search(r"\(\*(\w+)\)|(\w+)(?:\[\w+\])?(?: = .*)?$", declaration)
        if not name:
            raise ValueError(f"line {line + body.count(chr(10), 0, start)}: no member: {declaration!r}")
        yield Member(name.group(1) or name.group(2), declaration, comment, line + body.count("\n", 0, start))
        at = blank.match(body, at).end()


def statement_end(text: str, at: int) -> int:
    """Behind the semicolon that ends a declaration, braces and comments passed over."""
    depth = 0
    for found in re.compile(r"/\*.*?\*/|[{};]", re.S).finditer(text, at):
        if found.group() == "{":
            depth += 1
        elif found.group() == "}":
            depth -= 1
        elif found.group() == ";" and depth == 0:
            return found.end()
    raise ValueError(f"line {text.count(chr(10), 0, at) + 1}: no end")


def declared(text: str, at: int, line: int) -> Tuple[Item, str]:
    """The declaration that begins here, and its own comment if it has one beside it."""
    end = statement_end(text, at)
    whole = text[at:end]
    beside = re.compile(r"[ \t]*/\*(.*?)\*/", re.S).match(text, end)
    comment = bare(beside.group(1)) if beside else ""
    end = beside.end() if beside else end
    if whole.startswith("MUSLIN_API"):
        name = re.search(r"\b(muslin_\w+)\(", whole).group(1)
        return Item("function", name, whole[len("MUSLIN_API "):-1], comment, line, end), comment
    if whole.startswith("typedef"):
        name = re.search(r"(\w+)\)?(?:\(.*\))?;$", whole, re.S).group(1)
        pointer = re.search(r"\(\*(\w+)\)", whole)
        return Item("typedef", pointer.group(1) if pointer else name, whole, comment, line, end), comment
    kind, name = re.match(r"(enum|struct) (\w+)", whole).groups()
    if "{" not in whole:
        return Item("handle", name, whole, comment, line, end), comment
    opening = whole.index("{") + 1
    body = whole[opening:whole.rindex("}")]
    members = list(members_of(body, line + whole[:opening].count("\n")))
    return Item(kind, name, whole, comment, line, end, members), comment


def define(text: str, at: int, line: int) -> Optional[Item]:
    found = re.compile(r"#define (MUSLIN_\w+)((?:[^\n\\/]|\\\n|/(?!\*))*)(?:/\*(.*?)\*/)?", re.S).match(text, at)
    name, body, comment = found.groups()
    if name.endswith("_H") or name == "MUSLIN_API" or not body.strip():
        return None
    return Item("define", name, re.sub(r"\s*\\\n\s*", " ", body).strip(), bare(comment or ""), line, found.end())


def read(text: str) -> List[Item]:
    """All that a header declares and says, in order."""
    items: List[Item] = []
    above = ""          # the comment that stands right above
    token = re.compile(r"^(?:/\*.*?\*/|#define MUSLIN_|(?:enum|struct|typedef|MUSLIN_API)\b)", re.M | re.S)
    at = 0
    while True:
        found = token.search(text, at)
        if not found:
            return items
        line = text.count("\n", 0, found.start()) + 1
        if found.group().startswith("/*"):
            inside = bare(found.group()[2:-2])
            at = found.end()
            section = SECTION.match(inside)
            alone = text[at:at + 2] == "\n\n" or text.startswith("\n#ifndef", at)
            if section or alone or not items:
                kind = "section" if section else "text" if items else "title"
                items.append(Item(kind, "", section.group(1) if section else inside, "", line, at))
                above = ""
            else:
                above = inside
            continue
        if found.group().startswith("#define"):
            item = define(text, found.start(), line)
            at = item.end if item else found.end()
        else:
            item, _ = declared(text, found.start(), line)
            at = item.end
        if item:
            before = items[-1] if items else item
            close = item.kind == before.kind == "define" and not text[before.end:found.start()].strip(" ")[1:]
            item.comment = "\n".join(part for part in (above, item.comment) if part) or before.comment * close
            items.append(item)
        above = ""


def shared(items: List[Item]) -> Dict[str, str]:
    """The comment that speaks for each function: its own, or that of the functions right above it."""
    comments: Dict[str, str] = {}
    before: Optional[Item] = None
    for item in items:
        if item.kind == "function":
            close = before and before.kind == "function" and item.line == before.line + before.text.count("\n") + 1
            comments[item.name] = item.comment or (comments[before.name] if close else "")
        before = item
    return comments


# ---- what a comment is made of --------------------------------------------------------------------------------------

@dataclass
class Block:
    """kind: paragraph, heading (a line that entries follow), entry (with a label), bullet, table (lines as they are)"""
    kind: str
    text: str
    label: str = ""
    indent: int = 0
    column: int = 0


ENTRY = re.compile(r"^( *)(\S+(?: \S+){0,4})( {2,})(?=\S)")


def blocks(comment: str) -> List[Block]:
    """Paragraphs at the margin; an entry is a label, two blanks or more, and text that goes on under its start; what
    stands further in than that is a table; other lines that are indented are bullets and go on further in."""
    found: List[Block] = []
    current: Optional[Block] = None
    for line in comment.split("\n"):
        indent = len(line) - len(line.lstrip())
        entry = ENTRY.match(line)
        inside = current and current.kind in ("entry", "table") and indent >= current.column
        if not line.strip():
            current = current if current and current.kind in ("entry", "table") else None
        elif inside and (indent > current.column or (current.kind == "entry" and entry)):
            if current.kind != "table":
                current = Block("table", "", column=current.column)
                found.append(current)
            current.text += line[current.column:] + "\n"
        elif inside:
            if current.kind == "table":
                current = Block("entry", "", "", current.indent, current.column)
                found.append(current)
            current.text += " " + line.strip()
        elif entry:
            current = Block("entry", line[entry.end():], entry.group(2), len(entry.group(1)), entry.end())
            found.append(current)
        elif indent and current and current.kind == "bullet" and indent > current.indent:
            current.text += " " + line.strip()
        elif indent:
            current = Block("bullet", line.strip(), indent=indent)
            found.append(current)
        elif current and current.kind == "paragraph":
            current.text += " " + line.strip()
        else:
            current = Block("paragraph", line.strip())
            found.append(current)
    for block, after in zip(found, found[1:]):
        if block.kind == "paragraph" and after.kind == "entry" and not re.search(r"[.:]$", block.text):
            block.kind = "heading"
    return [Block(block.kind, block.text if block.kind == "table" else block.text.strip(), block.label, block.indent)
            for block in found]


def said_once(items: List[Item]) -> Dict[str, str]:
    """What the text at the head of a header says of every call, or base.h of everything, by its label."""
    said: Dict[str, str] = {}
    heading = ""
    for block in blocks(items[0].text):
        heading = block.text if block.kind == "heading" else heading
        if block.kind == "entry" and block.label and heading in ("Every call", "Conventions, stated once"):
            said[block.label] = block.text
    return said


# ---- who speaks for whom --------------------------------------------------------------------------------------------

SORTS = [set(words.split()) for words in (
    "left right top bottom", "width height length", "columns rows", "x y", "first second", "allowance takeup",
    "cut unfinished finished", "before after", "across along", "least most", "batting backing binding",
    "vertical horizontal cornerstone", "long short", "worst likely")]


def alike(before: str, name: str) -> bool:
    """Whether two names differ in one word of one sort, as finished_width and finished_height do."""
    one, other = (each.replace("take_up", "takeup").split("_") for each in (before, name))
    apart = [{a, b} for a, b in zip(one, other) if a != b]
    return len(one) == len(other) and len(apart) == 1 and any(apart[0] <= sort for sort in SORTS)


def of_members(item: Item) -> Dict[str, str]:
    """What is said of each member of a struct or value of an enum. A member's comment also speaks for those behind
    it whose names are alike, or which say "so"; size, flags and pads are as base.h says of every struct. An enum's
    comment speaks for values of which none has a comment, because their names are words enough."""
    named = item.kind == "enum" and not any(member.comment for member in item.members)
    said: Dict[str, str] = {}
    speaker: Optional[Member] = None
    before = ""
    for member in item.members:
        if member.comment == "so" and speaker:
            said[member.name] = f"As {speaker.name}: {speaker.comment}"
        elif member.comment:
            speaker, said[member.name] = member, member.comment
        elif item.kind == "struct" and re.match(r"(size|flags|pad\w*)$", member.name):
            speaker, said[member.name] = None, "As every struct has it."
        elif speaker and item.kind == "struct" and alike(before, member.name):
            said[member.name] = f"As {speaker.name}: {speaker.comment}"
        elif named:
            said[member.name] = "What its name says."
        else:
            speaker, said[member.name] = None, ""
        before = member.name
    return said


def of_enums(items: List[Item]) -> Dict[str, str]:
    """What is said of each enum: its own comment, or which members and functions of its header say they take it."""
    said = {item.name: item.comment for item in items if item.kind == "enum"}
    for name in [name for name, comment in said.items() if not comment]:
        mention = re.compile(rf"\benum {name}\b")
        members = [f"{member.name} of struct {item.name}" for item in items if item.kind == "struct"
                   for member in item.members if mention.search(member.comment)]
        functions = [item.name + "()" for item in items if item.kind == "function" and mention.search(item.comment)]
        said[name] = f"Taken by {', '.join(members + functions)}." if members + functions else ""
    return said


def listed(words: List[str]) -> str:
    return " and ".join(words) if len(words) < 3 else ", ".join(words[:-1]) + " and " + words[-1]


def of_structs(items: List[Item]) -> Dict[str, str]:
    """What is said of each struct: its own comment, or which functions of its header read or fill it."""
    said = {item.name: item.comment for item in items if item.kind in ("struct", "handle")}
    for name in [name for name, comment in said.items() if not comment]:
        reads, fills = ([item.name + "()" for item in items if item.kind == "function" and
                         not item.name.endswith("_spec_init") and re.search(pattern % name, item.text)]
                        for pattern in (r"const struct %s \*", r"(?<!const )struct %s \*"))
        said[name] = " ".join(f"What {listed(functions)} {verb}." for functions, verb in
                              ((reads, "reads" if len(reads) == 1 else "read"),
                               (fills, "fills" if len(fills) == 1 else "fill")) if functions)
    return said


def main() -> int:
    for item in read(Path(sys.argv[1]).read_text(encoding="utf-8")):
        print(f"{item.line}: {item.kind} {item.name}: {flowing(item.comment or item.text)[:90]}")
        for member in item.members:
            print(f"    {member.line}: {member.declaration}: {member.comment[:80]}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
