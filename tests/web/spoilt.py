# SPDX-License-Identifier: MIT
"""Pattern files with one place changed each, as the tests of the C reader change them: spoilt.py [SEED COUNT]"""
from __future__ import annotations

import json
import random
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "pattern"))
from files import EVERYTHING, SAMPLES, load  # noqa: E402
from test_agreement import mutate  # noqa: E402


def main(seed: int = 7, count: int = 150) -> None:
    chance = random.Random(seed)
    files = [load(path) for path in [*SAMPLES, EVERYTHING, EVERYTHING, EVERYTHING, EVERYTHING]]
    found: "list[dict[str, str]]" = []
    while len(found) < count:
        text = json.dumps(mutate(chance, chance.choice(files)))
        if str(10**30) not in text and len(text) < 100000:
            found.append({"text": text, "what": f"file {len(found)} of seed {seed}"})
    print(json.dumps(found))


if __name__ == "__main__":
    main(*map(int, sys.argv[1:3]))
