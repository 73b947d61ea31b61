"""One size of a sheet, read from its first to its last section.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations
from typing import Any

from .account import Account
from .cutting import CuttingList, Facts, expected_squares, sizes_first
from .finishing import Finishing
from .layout import Layout
from .quilt import Quilt
from .sewing import Sewing
from .whole import Whole


def read_size(quilt: Quilt, sections: "dict[str, Any]") -> "tuple[Account, Facts]":
    account, facts = Account(), Facts(quilt)
    sizes_first(account, facts, sections["Read this first"])
    CuttingList(account, facts).read(sections["Cutting list"])
    Layout(account, facts).read(sections["On the cloth"])
    sewing = Sewing(account, facts)
    account.open(sections["Sewing"])
    sewing.read(sections["Sewing"])
    account.close()
    finishing = Finishing(account, facts, sewing)
    if "Borders" in sections:
        finishing.borders(sections["Borders"])
    Whole(account, facts, sewing).check()
    finishing.read(sections["Finishing"])
    return account, facts
