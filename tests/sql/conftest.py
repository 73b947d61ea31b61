"""A database with the extension loaded, as all tests of it take it.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

from typing import Iterator

import pytest
from asking import Asked


@pytest.fixture
def sql() -> Iterator[Asked]:
    asked = Asked()
    yield asked
    asked.database.close()


@pytest.fixture
def catalogue(sql: Asked, monkeypatch: pytest.MonkeyPatch) -> Asked:
    sql.load_catalogue(monkeypatch)
    return sql
