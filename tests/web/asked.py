# SPDX-License-Identifier: MIT
"""Strip quilts by chance, as typed into the page and as the C library answers: a JSON line each. asked.py SEED COUNT"""
from __future__ import annotations

import json
import random
import sys
from typing import Any, Callable, Dict, List, Optional

import muslin

CHANCE = random.Random()
INCH, MM = 8128, 320
LENGTHS = {"stripCut": 3, "stripLength": 45, "clothWidth": 45, "step": 12, "allowance": 0.4, "takeUp": 0.05,
           "endTrim": 1, "foldClear": 0.5, "resquareLoss": 0.3, "segmentCut": 8, "finishedBorder": 8, "bindingCut": 3,
           "battingBeyond": 6, "backingBeyond": 8, "fabricWidth": 110}
COUNTS = {"strips": (1, 90), "stripsPerSet": (1, 9), "segmentsPerBlock": (1, 5), "columns": (1, 9), "rows": (1, 9),
          "tops": (0, 2), "resquareEvery": (0, 6)}
CHOICES = {"turning": {"none": "NONE", "quarterAlternate": "QUARTER_ALTERNATE", "halfAlternate": "HALF_ALTERNATE"},
           "nesting": {"turn": "TURN", "name": "NAME"},
           "style": {"sidesFirst": "SIDES_FIRST", "topFirst": "TOP_FIRST", "cornerstones": "CORNERSTONES"}}
USUAL = {"strips": 40, "stripCut": 2.5, "stripLength": 40, "clothWidth": 40, "step": 4.5, "allowance": 0.25,
         "takeUp": 0, "endTrim": 0.25, "foldClear": 0, "resquareEvery": 0, "resquareLoss": 0, "fromOneEnd": 0,
         "stripsPerSet": 6, "segmentCut": 0, "segmentsPerBlock": 2, "nesting": "turn", "columns": 4, "rows": 4,
         "turning": "quarterAlternate", "tops": 1, "finishedBorder": 0, "style": "sidesFirst", "bindingCut": 2.5,
         "battingBeyond": 3, "backingBeyond": 4, "fabricWidth": 40}


def written(ticks: int) -> str:
    """One of the ways in which people write this length exactly."""
    inches = CHANCE.choice([f"{ticks // INCH} {ticks % INCH // 127}/64 in", f"{ticks // 127 / 64} in",
                            f"{ticks // 127}/64\""])
    return inches if ticks % 127 == 0 else f"{ticks / MM} mm" if CHANCE.random() < 0.5 else f"{ticks / MM / 10:.2f} cm"


def length(most: float) -> int:
    """Inches in 64ths, or millimetres in tenths; mostly a usual fraction."""
    grid = CHANCE.choice([127, 127 * 8, 127 * 16, 32, 320])
    return CHANCE.randrange(0, max(1, int(most * INCH) // grid) + 1) * grid


def snake(name: str) -> str:
    return "".join(f"_{letter.lower()}" if letter.isupper() else letter for letter in name)


def asked() -> Dict[str, Any]:
    """Some fields changed: their texts, and all values."""
    values: Dict[str, Any] = {name: round(one * INCH) if name in LENGTHS else one for name, one in USUAL.items()}
    texts: Dict[str, str] = {}
    for name in CHANCE.sample(sorted(USUAL), CHANCE.randrange(0, 9)):
        if name in LENGTHS:
            values[name] = length(LENGTHS[name])
            texts[name] = written(values[name])
        elif name in COUNTS:
            values[name] = CHANCE.randint(*COUNTS[name])
            texts[name] = str(values[name])
        elif name in CHOICES:
            values[name] = texts[name] = CHANCE.choice(sorted(CHOICES[name]))
        else:
            values[name] = CHANCE.randrange(2)
            texts[name] = "yes" if values[name] else ""
    return {"texts": texts, "values": values}


def plain(record: Any) -> Dict[str, Any]:
    """A result's lengths and numbers, by name; what is no number the JavaScript package's own tests compare."""
    found = {}
    for name in (name for name in dir(record) if not name.startswith("_")):
        value = getattr(record, name)
        if isinstance(value, muslin.Length):
            found[name] = value.ticks
        elif isinstance(value, (int, bool)) and not hasattr(value, "name"):
            found[name] = int(value)
    return found


class Answers:
    def __init__(self, values: Dict[str, Any]) -> None:
        self.values = {snake(name): muslin.Length(value) if name in LENGTHS else
                       value for name, value in values.items()}
        self.found: Dict[str, Any] = {}
        self.refused: List[str] = []

    def ask(self, name: str, call: Callable[[], Any]) -> Optional[Any]:
        try:
            answer = call()
        except muslin.MuslinError as error:
            self.refused.append(str(error))
            return None
        self.found[name] = [plain(one) for one in answer] if isinstance(answer, (list, tuple)) else plain(answer)
        return answer

    def plan(self) -> None:
        value = self.values
        own = {name: one for name, one in value.items() if name not in (
            "cloth_width", "step", "finished_border", "style", "binding_cut", "batting_beyond", "backing_beyond",
            "fabric_width")}
        own["turning"] = muslin.Turning[CHOICES["turning"][value["turning"]]]
        own["nesting"] = muslin.Nesting[CHOICES["nesting"][value["nesting"]]]
        own["from_one_end"] = bool(value["from_one_end"])
        plan = self.ask("plan", lambda: muslin.stripquilt_plan(**own))
        if plan is not None:
            self.finish(plan)

    def finish(self, plan: Any) -> None:
        value = self.values
        size = {"quilt_width": plan.top_finished_width, "quilt_length": plan.top_finished_length}
        if value["finished_border"].ticks > 0:
            border = self.ask("border", lambda: muslin.border_plan(
                unfinished_width=plan.top_unfinished_width, unfinished_length=plan.top_unfinished_length,
                finished_border=value["finished_border"], allowance=value["allowance"], take_up=value["take_up"],
                usable_width=value["cloth_width"], style=muslin.BorderStyle[CHOICES["style"][value["style"]]]))
            if border is not None:
                size = {"quilt_width": border.finished_width, "quilt_length": border.finished_length}

        def beyond(margin: Any) -> Dict[str, Any]:
            return {**size, "margin_left": margin, "margin_right": margin, "margin_top": margin,
                    "margin_bottom": margin}

        if value["binding_cut"].ticks <= 2 * value["allowance"].ticks:
            self.refused.append("a binding is cut wider than its two seam allowances")
        else:
            self.ask("binding", lambda: muslin.binding_plan(
                binding_cut=value["binding_cut"], strip_length=value["cloth_width"], allowance=value["allowance"],
                step=value["step"], **size))
        self.ask("batting", lambda: muslin.batting_plan(**beyond(value["batting_beyond"])))
        self.ask("backing", lambda: muslin.backing_layouts(fabric_width=value["fabric_width"], step=value["step"],
                                                           **beyond(value["backing_beyond"])))


def main(seed: str, count: str) -> None:
    CHANCE.seed(int(seed))
    for _ in range(int(count)):
        question = asked()
        answers = Answers(question["values"])
        answers.plan()
        print(json.dumps({"texts": question["texts"], "found": answers.found, "refused": answers.refused}))


if __name__ == "__main__":
    main(*sys.argv[1:])
