"""One size of a sheet, read from its first to its last section.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re

from .account import Account
from .buying import Buying, assumed, cover, pressing, words
from .cutting import CuttingList, Facts, sizes_first
from .finishing import Finishing
from .layout import Layout
from .quilt import Quilt
from .sewing import Sewing
from .text import Passage, SheetText
from .whole import Whole

ASKED = ("Read this first", "What to buy", "Cutting list", "On the cloth", "Sewing", "Pressing, all together",
         "Finishing", "What is assumed", "Words")


def read_size(quilt: Quilt, sections: "dict[str, Passage]") -> "tuple[Account, Facts, Finishing]":
    """In the order in which one thing hangs on the other."""
    account, facts = Account(), Facts(quilt)
    section = {**{name: Passage(name) for name in ASKED}, **sections}
    sizes_first(account, facts, section["Read this first"])
    CuttingList(account, facts).read(section["Cutting list"])
    Layout(account, facts).read(section["On the cloth"])
    sewing = Sewing(account, facts)
    account.open(section["Sewing"])
    sewing.read()
    account.close()
    finishing = Finishing(account, facts, sewing)
    if "Borders" in section:
        finishing.borders(section["Borders"])
    Whole(account, facts, sewing).check()
    pressing(account, facts, sewing, section["Pressing, all together"])
    finishing.read(section["Finishing"])
    Buying(account, facts, finishing).read(section["What to buy"])
    assumed(account, facts, section["What is assumed"])
    words(account, facts, section["Words"], any(re.search(r"about \d", part.text) for part in section.values()))
    for name in section.keys() - set(ASKED) - {"Borders"}:
        account.open(section[name])
        account.close()
    return account, facts, finishing


def read_sheet(quilts: "dict[str, Quilt]", sheet: SheetText, pages: bool) -> "tuple[list[str], int]":
    """What is wrong with a sheet, and how many numbers were looked at."""
    faults, told, sizes = list(sheet.faults), 0, {}
    for name, quilt in quilts.items():
        account, facts, finishing = read_size(quilt, sheet.sizes.get(name, {}))
        faults += [f"{name}: {fault}" for fault in account.faults]
        told += account.told
        sizes[name] = (facts, finishing)
    account = Account()
    cover(account, sheet, sizes, pages)
    return faults + account.faults, told + account.told
