"""The fixture that all tests of the command line take.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import pytest
from program import Muslin


@pytest.fixture
def muslin() -> Muslin:
    return Muslin()
