"""Whether all steps come to the top, use up the cutting list, and have the patches and units of the tree.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

from collections import Counter
from fractions import Fraction
from typing import Any

from .account import Account
from .cutting import Facts, expected_squares, printed
from .sewing import Sewing, Step


class Whole:
    """What the steps, the list and the tree say of each other."""

    def __init__(self, account: Account, facts: Facts, sewing: Sewing) -> None:
        self.account, self.facts, self.sewing = account, facts, sewing
        self.quilt = facts.quilt

    def check(self) -> None:
        self.last_step()
        self.demands()
        self.list_and_tree()
        self.short_sets()
        self.strips()
        self.uses()

    def last_step(self) -> None:
        if not self.sewing.order:
            return
        last = self.sewing.order[-1]
        if last.size is not None and self.quilt.ruler.by(*last.size) != self.quilt.ruler.by(*self.facts.top_size()):
            self.account.fault(f"the last step {last.letter} does not measure what the top does")
        if last.make != self.quilt.tops:
            self.account.fault(f"{last.letter}: make {self.quilt.tops}")

    def demands(self) -> None:
        """From the top down: how many of each part, and of each piece, are used."""
        wanted: "Counter[str]" = Counter()
        starred: "Counter[str]" = Counter()
        pieces: "Counter[str]" = Counter()
        steps = self.sewing.order
        for number, step in enumerate(reversed(steps)):
            if step.sort == "strip set for":
                continue
            made = step.make - step.spare
            used = wanted[step.letter] + starred[step.letter]
            if number > 0 and used != made:
                self.account.fault(f"{step.letter} {step.name}: {used} are used, {made} are made for that", "",
                                   step.start)
            self.stars(step, starred[step.letter])
            for name, count in step.uses.items():
                if name.startswith("["):
                    pieces[name] += step.make * count
                elif not name.endswith(" set"):
                    self.use(step, name, count, wanted, starred)
        self.used_up(pieces)

    def stars(self, step: Step, starred: int) -> None:
        told = step.other[1] if step.other else 0
        if told != starred:
            self.account.fault(f"{step.letter}*: {starred} are used, {told} are made", "", step.start)

    @staticmethod
    def use(step: Step, name: str, count: int, wanted: "Counter[str]", starred: "Counter[str]") -> None:
        """In A* a part B is a B*, and a B* is a B, where every seam is pressed the other way."""
        flipped = step.other[1] if step.other and "every seam" in step.other[2] else 0
        plain, star = (step.make - flipped) * count, flipped * count
        if name.endswith("*"):
            plain, star = star, plain
        wanted[name.rstrip("*")] += plain
        starred[name.rstrip("*")] += star

    def used_up(self, pieces: "Counter[str]") -> None:
        for piece in self.facts.pieces.values():
            name = f"[{piece.number}]"
            if piece.sort == "strip":
                made = sum(step.make * step.strips.count(str(piece.number)) for step in self.sewing.sets.values())
            else:
                made = pieces[name]
            there = piece.count if not piece.again else piece.gives - piece.spare
            if made != there:
                self.account.fault(f"{name}: {made} are sewn, the cutting list has {there}")

    def list_and_tree(self) -> None:
        """By fabric and size: what the list has, with what comes of strip sets, is what the tree has."""
        wanted = expected_squares(self.facts)
        for node, count in self.quilt.patches():
            wanted[node.fabric, "", printed(self.facts.ruler, node.width + self.quilt.seam,
                                            node.height + self.quilt.seam)] += count
        there: "Counter[Any]" = Counter()
        for piece in self.facts.pieces.values():
            if piece.sort == "piece":
                there[piece.fabric, piece.again, piece.size] += piece.count
        for (fabric, size), count in self.sewing.segment_patches.items():
            there[fabric, "", size] += count
        for key in wanted.keys() | there.keys():
            if wanted[key] != there[key]:
                self.account.fault(f"of {key[0]} {key[2][0]}{' cut ' + key[1] if key[1] else ''} there are "
                                   f"{there[key]}, the top takes {wanted[key]}")

    def short_sets(self) -> None:
        """The list says of strips for sets, too, how long those of a last set must be."""
        for piece in self.facts.pieces.values():
            expected = {letter: long for letter, long in self.facts.short_sets.items()
                        if str(piece.number) in self.sewing.sets[letter].strips}
            if piece.last_sets != expected:
                self.account.passage = piece.passage
                self.account.fault(f"[{piece.number}] is told for last sets {piece.last_sets}, expected {expected}", "",
                                   piece.place)

    def strips(self) -> None:
        """How narrow the cloth may be: as wide as the fullest strip; strips for sets as their segments take."""
        takes = self.facts.set_takes
        for passage, proof, cloth, strips in self.facts.widths:
            most = Fraction(0)
            for strip in strips:
                first = next(iter(strip.names), "")
                most = max(most, takes.get(first.strip("[]"), strip.used) if strip.whole else strip.used)
            self.account.passage = passage
            if proof["down"] is not None or most < cloth.usable:
                expected = self.quilt.ruler.at_least(most) if most < cloth.usable else None
                if proof["down"] != expected:
                    self.account.fault(f"it works down to {proof['down']}, expected {expected}", proof[0],
                                       proof.start())
            elif proof["all"] != self.quilt.ruler.measured(cloth.usable):
                self.account.fault(f"it takes {proof['all']}, expected all of {cloth.usable}", proof[0], proof.start())

    def uses(self) -> None:
        """The letters of the list are those of the steps that take a piece."""
        for piece in self.facts.pieces.values():
            name = f"[{piece.number}]"
            steps = [step for step in self.sewing.order if name in step.uses]
            expected = list(dict.fromkeys(step.letter for step in steps))
            if piece.uses != expected:
                self.account.fault(f"{name} is for {piece.uses}, it is sewn in {expected}")
        for letter, name, said in self.facts.use_names:
            step = self.sewing.steps.get(letter) or self.sewing.sets.get(letter)
            if step is None or not (step.name == name or step.name.startswith(f"{name} (")):
                self.account.fault(f"{letter} is called {step.name if step else 'nothing'}", said)
