# SPDX-License-Identifier: MIT
"""Finds the package in the checkout. MUSLIN_LIBRARY names the library under test and must be set."""
import os
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
PACKAGE = ROOT / "bindings" / "python"

if not os.environ.get("MUSLIN_LIBRARY"):
    raise SystemExit("tests/python needs MUSLIN_LIBRARY, the path of libmuslin.so.1")
os.environ["MUSLIN_LIBRARY"] = str(Path(os.environ["MUSLIN_LIBRARY"]).resolve())
sys.path.insert(0, str(PACKAGE))
