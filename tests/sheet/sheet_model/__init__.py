"""What a printed sheet should say, worked out from the pattern file alone.

SPDX-License-Identifier: MIT
"""
import pathlib
import sys

for _folder in ("model", "pattern"):  # the models of the sums, and the little walker
    sys.path.append(str(pathlib.Path(__file__).parents[2] / _folder))
