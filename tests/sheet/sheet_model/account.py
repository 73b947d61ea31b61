"""Sentences and what their numbers should be: each number of a passage belongs to a sentence that is looked at.

A sentence is written with its places: <name:n> a whole number, <name:L> a length, <name:S> a size, <name:w> words up to
the next point of the list, <name:l> the letter of a part; {one|other} is a choice; «...» is a regular expression.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
from functools import lru_cache
from typing import Any, Callable

from .ruler import LENGTH, SIZE
from .text import NUMBERS, Passage

SORTS = {"n": r"\d+", "L": LENGTH, "S": SIZE, "w": r"[^•\x01]*?", "l": r"[A-Z]{1,2}\b\*?", "f": r"\d+/\d+"}
Found = Callable[[Any], Any]


@lru_cache(maxsize=None)
def sentence(words: str) -> "re.Pattern[str]":
    made = ""
    for part in re.split(r"(<\w+:\w>|«.*?»|[{|}])", words):
        place = re.fullmatch(r"<(\w+):(\w)>", part)
        if part.startswith("«"):
            made += part[1:-1]
        elif place:
            made += f"(?P<{place[1]}>{SORTS[place[2]]})"
        else:
            made += {"{": "(?:", "|": "|", "}": ")"}.get(part) or re.escape(part).replace(r"\ ", " ")
    return re.compile(made)


class Account:
    """What is found in passages; wrong numbers are faults."""

    def __init__(self) -> None:
        self.faults: "list[str]" = []
        self.passage = Passage("")
        self.rest = ""
        self.told = 0

    def open(self, passage: Passage) -> None:
        self.passage, self.rest = passage, passage.text

    def page_at(self, place: int) -> int:
        pages = self.passage.pages
        return pages[min(place, len(pages) - 1)] if pages else 0

    def fault(self, words: str, said: str = "", place: int = 0) -> None:
        where = f"page {self.page_at(place)}, {self.passage.name}"
        self.faults.append(f'{where}: {words}' + (f' (in: "{said[:160]}")' if said else ""))

    def same(self, match: Any, name: str, expected: Any) -> bool:
        return self.holds(match, match[name] in (None, str(expected)), f"{name} is {match[name]}, expected {expected}")

    def holds(self, match: Any, truth: bool, words: str) -> bool:
        if not truth:
            self.fault(words, match[0], match.start())
        return truth

    def take(self, words: str, found: "Found | None" = None, start: int = 0, end: "int | None" = None) -> int:
        """Looks at every such sentence that is left, and takes it away. How many there were."""
        end = len(self.rest) if end is None else end
        taken = list(sentence(words).finditer(self.rest, start, end))
        for match in taken:
            if found:
                found(match)
            self.told += len(NUMBERS.findall(match[0]))
            self.rest = self.rest[:match.start()] + "\x01" * len(match[0]) + self.rest[match.end():]
        return len(taken)

    def once(self, words: str, found: "Found | None" = None, start: int = 0, end: "int | None" = None) -> None:
        count = self.take(words, found, start, end)
        if count != 1:
            self.fault(f"told {count} times, not once: {words}")

    def close(self) -> None:
        """Every number that is left belongs to no sentence."""
        for match in NUMBERS.finditer(self.rest):
            around = self.passage.text[max(0, match.start() - 50):match.end() + 40]
            self.fault(f"{match[0]} belongs to no sentence that is looked at", around, match.start())
