"""Sheets that several tests read.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import pathlib
from typing import Callable

import pytest
from sheets import pattern, written

Maker = Callable[[str, str], pathlib.Path]


@pytest.fixture(scope="session")
def sheet_of(tmp_path_factory: pytest.TempPathFactory) -> Maker:
    """The PDF of a sample pattern on a paper, made once."""
    folder = tmp_path_factory.mktemp("sheets")

    def made(name: str, paper: str) -> pathlib.Path:
        file = folder / f"{name}-{paper}.pdf"
        if not file.exists():
            assert written(pattern(name), "--paper", paper, "-o", str(file)) == [str(file)]
        return file

    return made
