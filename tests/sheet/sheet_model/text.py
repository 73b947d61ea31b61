"""The text of a sheet: pages put together, cut into sizes and sections, each character knowing its page.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass, field
from typing import Any

SECTIONS = ("Read this first", "What to buy", "Before you cut", "Cutting list", "On the cloth", "Sewing",
            "Pressing, all together", "Borders", "Finishing", "What is assumed", "Cautions", "Words", "Templates",
            "To color", "To colour")
FOOT = re.compile(r"Print at 100 %; check the square\. Page (\d+) of (\d+)")
NUMBERS = re.compile(r"\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?")


@dataclass
class Passage:
    """A section as one line; of each character the page it is on."""

    name: str
    text: str = ""
    pages: "list[int]" = field(default_factory=list)

    def add(self, line: str, page: int) -> None:
        line = re.sub(r"^(?:– |- )", "• ", line.strip())
        line = re.sub(r"^! (?:Caution: )?", "• ! ", line)
        line = re.sub(r"\s+", " ", line)
        if self.text and not re.search(r"[a-z]-$", self.text):
            line = " " + line
        self.text += line
        self.pages += [page] * len(line)


@dataclass
class SheetText:
    """The cover and the sections of each size, and what is wrong with the pages themselves."""

    cover: Passage
    sizes: "dict[str, dict[str, Passage]]"
    first_pages: "dict[str, int]"
    faults: "list[str]"
    pages: int = 0

    def passages(self) -> "list[Passage]":
        return [self.cover] + [passage for size in self.sizes.values() for passage in size.values()]


def lines_of_pages(text: str, title: str, names: "list[str]", faults: "list[str]") -> "list[tuple[int, str]]":
    """Without heads and feet, which are looked at here."""
    found = []
    pages = unicodedata.normalize("NFKC", text).split("\f")[:-1]
    heads = {title, *names} | {f"{title} {name}" for name in names}
    for number, page in enumerate(pages, 1):
        lines = page.splitlines()
        feet = [FOOT.fullmatch(line.strip()) for line in lines]
        if [foot.groups() for foot in feet if foot] != [(str(number), str(len(pages)))]:
            faults.append(f"page {number}: its foot should say Page {number} of {len(pages)}")
        body = [line for line, foot in zip(lines, feet) if not foot]
        for _ in range(2 if number > 1 else 0):
            body = body[1:] if body and body[0].strip() in heads else body
        found += [(number, line) for line in body]
    return found


def lines_of_words(text: str) -> "list[tuple[int, str]]":
    """What the command line writes, brought into the form of the sheet."""
    found = []
    lines = [line for line in unicodedata.normalize("NFKC", text).splitlines() if not re.fullmatch(r"[=-]{3,}", line)]
    text = "\n".join(lines)
    text = re.sub(r"^ *\(drawing\) ", "", text, flags=re.M)
    for head in ("Needed", "Buy", "To spare", "For", "Cut from", "Finished, length x width", "Cut, length x width"):
        text = re.sub(r"[.;]\s+" + head.replace(" ", r"\s+") + ":", "", text)
    for number, line in enumerate(text.splitlines(), 1):
        found.append((number, line))
    return found


def parted(lines: "list[tuple[int, str]]", title: str, names: "list[str]", faults: "list[str]") -> SheetText:
    heads = {f"{title}: {name}": name for name in names} if len(names) > 1 else {title: names[0]}
    sheet = SheetText(Passage("cover"), {}, {}, faults)
    passage, sections, at = sheet.cover, None, 0
    for number, (page, line) in enumerate(lines):
        words = line.strip()
        if words in heads and heads[words] not in sheet.sizes and (len(names) > 1 or number > 0):
            sections = sheet.sizes.setdefault(heads[words], {})
            sheet.first_pages[heads[words]] = page
            passage, at = Passage("head"), 0
        elif sections is not None and words in SECTIONS[at:]:
            at = SECTIONS.index(words) + 1
            passage = sections.setdefault(words.replace("colour", "color"), Passage(words))
        elif words:
            passage.add(line, page)
    return sheet


def of_pdf(text: str, file: Any) -> SheetText:
    faults: "list[str]" = []
    names = [size["name"] for size in file.get("sizes", [{"name": "one size"}])]
    sheet = parted(lines_of_pages(text, file["title"], names, faults), file["title"], names, faults)
    sheet.pages = text.count("\f")
    return sheet


def of_words(text: str, file: Any) -> SheetText:
    names = [size["name"] for size in file.get("sizes", [{"name": "one size"}])]
    return parted(lines_of_words(text), file["title"], names, [])
