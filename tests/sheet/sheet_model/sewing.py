"""The steps: what is sewn of what measures what they say, and all of it comes to the top and uses up the cutting list.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass, field
from fractions import Fraction
from types import SimpleNamespace
from typing import Any

from muslin_model import stripset
from muslin_model import unit as units

from .account import Account
from .cutting import Facts, printed, turned
from .quilt import KIND_NAMES, Node, UnitAsked
from .ruler import SIZE, value_of

HEAD = re.compile(r"(?:(?<=^)|(?<=[.)…] )|(?<=sewn ))([A-Z]{1,2}) (strip set for |segments: |units: )?"
                  r"((?:(?!, make \d)[^.•\x01]){1,120}), make (\d+)(?:: (\d+) [A-Z]{1,2}, and (\d+) [A-Z]{1,2}\* "
                  r"\(([^)]*)\))?")
PART = re.compile(r"(?:(?P<times>\d+) times )?(?:\[(?P<p>\d+)\](?: (?P<fabric>.+), cut (?P<size>" + SIZE + r"))?|"
                  r"(?P<letter>[A-Z]{1,2})(?P<star>\*?)(?: \((?P<name>.*?)\))?(?: in mirror image)?"
                  r"(?P<turn> turned a quarter to the (?:right|left)| turned upside down)?)")

# How often each step of a recipe is done, worked out by hand: pieces, seams and pressings of one round.
TIMES = {("half-square", units.PIECES): [2, 2, 2], ("half-square", units.TWO): [1, 1, 1, 1, 2, 2],
         ("half-square", units.EIGHT): [1, 1, 1, 1, 1, 8, 8], ("quarter-square", units.PIECES): [4, 4, 2, 2, 2],
         ("flying-geese", units.FOUR): [4, 1, 1, 1, 2, 2, 2, 2, 4, 4],
         ("square-in-square", units.PIECES): [2, 2, 1, 2, 2, 1], ("snowball", units.FLIPPED): [4, 2, 2, 2, 2, 2, 2, 2,
                                                                                               2, 1],
         ("eight-pointed-star", units.PIECES): [8, 4, 4, 4, 4, 2, 2, 1, 1, 4, 8, 4, 8, 1]}


@dataclass
class Step:
    letter: str
    sort: str
    name: str
    make: int
    start: int
    end: int
    other: "tuple[int, int, str] | None" = None
    size: "tuple[Fraction, Fraction] | None" = None  # finished
    uses: "Counter[str]" = field(default_factory=Counter)  # letters, with * where told so, and [n]
    pieces: "Counter[str]" = field(default_factory=Counter)  # numbers that pictures may show
    strips: "list[str]" = field(default_factory=list)
    seams: int = 0
    spare: int = 0
    node: Any = None
    long_seams: Fraction = Fraction(0)  # in one
    candidates: "list[tuple[Fraction, Fraction]]" = field(default_factory=list)  # as its pieces may lie
    along: int = 0  # 0: its parts lie side by side; 1: one below the other
    is_mitred: bool = False
    gives: int = 1  # segments of one set
    reversed: "tuple[int, int, int]" = (0, 0, 0)  # sets pressed the other way, segments of them, and those pressed anew


class Sewing:
    """Reads steps from sections, in their order."""

    def __init__(self, account: Account, facts: Facts) -> None:
        self.account, self.facts, self.ruler, self.quilt = account, facts, facts.ruler, facts.quilt
        self.steps: "dict[str, Step]" = {}
        self.sets: "dict[str, Step]" = {}
        self.order: "list[Step]" = []
        self.units_told: "set[UnitAsked]" = set()
        self.segment_patches: "Counter[tuple[str, tuple[str, ...]]]" = Counter()  # what comes of strip sets

    def read(self) -> None:
        """All steps of the passage that is open."""
        account = self.account
        heads = [head for head in HEAD.finditer(account.rest)]
        ends = [head.start() for head in heads[1:]] + [len(account.rest)]
        for head, end in zip(heads, ends):
            other = (int(head[5]), int(head[6]), head[7]) if head[5] else None
            step = Step(head[1], (head[2] or "").strip(), head[3], int(head[4]), head.start(), end, other)
            account.take("«" + re.escape(head[0]) + "»", None, head.start(), head.end())
            if other:
                account.holds(head, other[0] + other[1] == step.make, "both kinds do not add up")
            self.read_step(step)
            (self.sets if step.sort == "strip set for" else self.steps)[step.letter] = step
            self.order.append(step)

    def read_step(self, step: Step) -> None:
        if step.sort == "strip set for":
            self.read_set(step)
        elif step.sort == "segments:":
            self.read_segments(step)
        elif step.sort == "units:":
            UnitStep(self, step).read()
        else:
            self.read_join(step)
        self.measured(step)
        self.pressed(step)
        if step.sort == "strip set for":
            return
        self.pictures(step)

    def take(self, step: Step, words: str, found: Any = None) -> int:
        return self.account.take(words, found, step.start, step.end)

    def one(self, step: Step, words: str, found: Any = None) -> None:
        self.account.once(words, found, step.start, step.end)

    # ---- strip sets

    def read_set(self, step: Step) -> None:
        def strips(match: Any) -> None:
            for item in match["list"].split(", "):
                told = re.fullmatch(r"(?:(\d+) strips )?\[(\d+)\] (.*)", item)
                self.account.holds(match, told is not None, f"not to be understood: {item}")
                if told and self.piece(match, told[2], told[3]):
                    step.strips += [told[2]] * int(told[1] or 1)
            wide = sum((self.facts.pieces[int(name)].exact[0] - self.quilt.seam for name in step.strips), Fraction(0))
            step.size = (wide, Fraction(0)) if "left to right" in match[0] else (Fraction(0), wide)
            self.account.same(match, "wide", self.ruler.measured(wide + self.quilt.seam))
            step.seams = len(step.strips) - 1
        self.one(step, "Sew strips long side to long side, from {left to right|top to bottom}: <list:w>. The set is "
                 "<wide:L> wide unfinished.", strips)
        step.uses.update(f"[{name}]" for name in step.strips)
        self.read_reversed(step)
        self.set_picture(step)

    def read_reversed(self, step: Step) -> None:
        def sets(match: Any) -> None:
            self.account.same(match, "sets", step.make)
            self.account.same(match, "of", f"{step.letter}*")
            step.reversed = int(match["k"]), int(match["c"]), 0

        def anew(match: Any) -> None:
            self.account.same(match, "of", f"{step.letter}*")
            self.account.holds(match, ("more" in match[0]) == (step.reversed[0] > 0), "more than what?")
            step.reversed = *step.reversed[:2], int(match["a"])
        way = "{to the left|to the right|upwards|downwards|the other way}"
        self.take(step, f"Of the <sets:n> sets press <k:n> with every seam {way}: from {{it|these}} cut <c:n> <of:l>.",
                  sets)
        self.take(step, "Cut <a:n> {more |}<of:l> from {the other sets|these sets, too}, and press every seam in them "
                        f"anew, {way}.", anew)

    def set_picture(self, step: Step) -> None:
        """Each strip with its number, height and fabric, then the segments and the set."""
        if not step.strips:
            return
        words, drawn = "", []
        for name in step.strips:
            piece = self.facts.pieces[int(name)]
            drawn.append(f"[{name}] {piece.size[0]} cut {self.facts.by_key[piece.fabric].letter}")
        words = " ".join(drawn)
        wide = self.ruler.measured(sum(step.size or (0, 0)) + self.quilt.seam)

        def segment(match: Any) -> None:
            step.node = match["cut"]
        if self.take(step, f"{words} {{|fold }}<cut:L> cut{{ set {wide} unfinished|}}", segment) == 0:
            self.loose_set(step, wide)

    def loose_set(self, step: Step, wide: str) -> None:
        """The same drawn otherwise: turned, or where there is little room. What is no strip's height is a segment's."""
        heights = {self.facts.pieces[int(name)].size[0] for name in step.strips}
        drawn: "Counter[str]" = Counter()
        segments: "list[str]" = []

        def strip(match: Any) -> None:
            drawn.update([match["p"]])
            piece = self.facts.pieces.get(int(match["p"]))
            self.account.holds(match, piece is not None and piece.size[0] == match["high"] and
                               self.facts.by_key[piece.fabric].letter == match["letter"], "no such piece")
        self.take(step, "[<p:n>] <high:L> cut «(?P<letter>F\\d+)»", strip)
        letters = {self.facts.by_key[self.facts.pieces[int(name)].fabric].letter for name in step.strips}
        self.take(step, "«(?<!\\S)(?P<letter>F\\d+)(?!\\S)»", lambda m: self.account.holds(
            m, m["letter"] in letters, f"of fabrics {sorted(letters)}"))
        self.take(step, f"set {wide} unfinished")
        self.take(step, "<high:L> cut", lambda m: segments.append(m["high"]) if m["high"] not in heights else None)
        self.take(step, "[<p:n>]", lambda m: drawn.update([m["p"]]))
        if drawn - Counter(step.strips):
            self.account.fault(f"drawn are {sorted(drawn.elements())}, sewn {step.strips}", "", step.start)
        step.node = " and ".join(segments) or None

    def read_segments(self, step: Step) -> None:
        strip_set = self.sets.get(step.letter)
        if strip_set is None or not strip_set.strips:
            self.account.fault("segments of no set", step.letter, step.start)
            return
        cutting = self.quilt.file.get("cutting", {})
        clear, loss = (self.quilt.length(cutting, name, "0 in", "0 mm") for name in ("fold clear", "resquare loss"))
        trim = self.quilt.length(cutting, "end trim", "1/2 in", "10 mm")
        found: "list[Any]" = []
        self.one(step, "Square {one end|both ends} of each set{ (<trim:L> is allowed at each end)|} and cut "
                 "segments <cut:L> wide across it{, from both ends towards the fold: keep <clear:L> "
                 "clear in the middle, <half:L> to either side of the fold|}. {Square the end again after every <every:n> "
                 "cut{s|}: "
                 "<loss:L> is allowed for that. |}A set "
                 "gives <gives:n>{, <sets:n> sets give <all:n>|}; <need:n> needed, {<over:n> over.|none over: there is "
                 "none to spoil.}{ The last set is sewn for only <last:n> of them: strips <long:L> long are enough for "
                 "it.|}", found.append)
        if not found:
            return
        match, account = found[0], self.account
        account.same(match, "trim", self.ruler.measured(trim))
        account.same(match, "clear", self.ruler.measured(clear))
        account.same(match, "half", self.ruler.measured(clear / 2))
        account.holds(match, (match["trim"] is None) == (trim == 0), "what squaring takes is not told")
        account.same(match, "every", cutting.get("resquare every"))
        account.same(match, "loss", self.ruler.measured(loss))
        cut = value_of(match["cut"])
        usable = min(self.facts.by_key[self.facts.pieces[int(name)].fabric].usable for name in strip_set.strips)
        spec = SimpleNamespace(strip_length=int(usable), end_trim=int(trim), resquare_loss=int(loss),
                               fold_clear=int(clear), segment_cut=int(cut),
                               resquare_every=cutting.get("resquare every", 0))
        self.yields(step, strip_set, match, spec)

    def yields(self, step: Step, strip_set: Step, match: Any, spec: Any) -> None:
        account = self.account
        gives = stripset.yield_of(spec, not spec.fold_clear)
        sets = -(-step.make // gives["segments"]) if gives["segments"] else 0
        step.gives = gives["segments"]
        account.same(match, "gives", gives["segments"])
        account.same(match, "sets", strip_set.make)
        account.holds(match, sets == strip_set.make, f"{sets} sets are enough")
        account.same(match, "all", sets * gives["segments"])
        account.same(match, "need", step.make)
        over = sets * gives["segments"] - step.make
        account.same(match, "over", over)
        account.holds(match, (match["over"] is None) == (over == 0), "none over?")
        last = step.make - (sets - 1) * gives["segments"]
        account.holds(match, (match["last"] is not None) == (sets > 1 and last <= 2), "what of the last set?")
        if match["last"]:
            self.facts.short_sets[step.letter] = match["long"]
        account.same(match, "last", last)
        account.same(match, "long", self.ruler.at_least(last * spec.segment_cut + 2 * spec.end_trim))
        self.pressed_apart(step, strip_set, match, gives["segments"])
        self.take(step, "Strips may be up to <less:L> shorter before a set gives less.",
                  lambda m: account.same(m, "less", self.ruler.at_most(gives["shorter_by"])))
        if strip_set.node:
            account.holds(match, strip_set.node == match["cut"], "the drawing has another segment")
        finished = Fraction(spec.segment_cut) - self.quilt.seam
        wide = strip_set.size or (Fraction(0), Fraction(0))
        step.size = (wide[0], finished) if wide[0] else (finished, wide[1])
        step.uses.update({f"{step.letter} set": 1})
        step.pieces.update(strip_set.strips)
        step.strips = strip_set.strips
        step.seams = strip_set.seams
        strip_set.long_seams = strip_set.seams * Fraction(spec.strip_length)
        for name in strip_set.strips:
            takes = Fraction(spec.strip_length - gives["shorter_by"])
            self.facts.set_takes[name] = max(self.facts.set_takes.get(name, takes), takes)
            sides = self.facts.pieces[int(name)].exact[0] - self.quilt.seam, finished
            self.segment_patches[self.facts.pieces[int(name)].fabric, self.patch_text(*sides)] += step.make

    def pressed_apart(self, step: Step, strip_set: Step, match: Any, each: int) -> None:
        """A set is pressed one way: those of the other way come from sets of their own, or are pressed anew."""
        shown, other, how = step.other or (step.make, 0, "")
        if "end for end" in how:
            other = 0
        short = each - int(match["last"]) if match["last"] else 0
        sets, cut, anew = strip_set.reversed

        def is_enough(own: int, first: int, second: int) -> bool:
            room = (strip_set.make - own) * each, own * each
            return any(first <= room[0] - less and second <= room[1] - short + less for less in {0, short})
        self.account.holds(match, cut + anew == other, f"{cut} and {anew} of {other} are pressed the other way")
        self.account.holds(match, is_enough(sets, shown + anew, cut), f"{sets} sets give {cut}")
        is_apart = any(is_enough(own, shown, other) for own in range(strip_set.make + 1))
        self.account.holds(match, anew == 0 or not is_apart, "none need be pressed anew")
        told = re.fullmatch(r"pressed the other way: (\d+) in the set, (\d+) once they are cut", how)
        self.account.holds(match, (told is not None) == (cut > 0 and anew > 0), f"told is {how}")
        self.account.holds(match, told is None or (int(told[1]), int(told[2])) == (cut, anew), f"told is {how}")

    def patch_text(self, wide: Fraction, high: Fraction) -> "tuple[str, ...]":
        return printed(self.ruler, wide + self.quilt.seam, high + self.quilt.seam)

    # ---- joins

    def piece(self, match: Any, number: str, fabric: str) -> bool:
        piece = self.facts.pieces.get(int(number))
        fits = piece is not None and self.facts.by_key[piece.fabric].name == fabric
        self.account.holds(match, fits, f"[{number}] is no {fabric}")
        return fits

    def read_join(self, step: Step) -> None:
        self.take(step, "From {left to right|top to bottom}: <list:w>." + END_OF_POINT, lambda m: self.joined(step, m))
        self.take(step, "In the middle: <part:w>. Sew a strip <strips:w>, middle on middle, so that it "
                  "stands out alike at both ends: begin and stop <a:L> inside the corners of the middle part and "
                  "secure the stitches. Then {mitre|miter} each corner: fold it on the diagonal, strips on each "
                  "other; draw a line at <deg:n> degrees from the last stitch to the outer edge; sew on it from the "
                  "inside outwards; trim <b:L> beyond the seam.", lambda m: self.set_in(step, m))
        Field(self, step).read()
        if step.size is None:
            self.account.fault("of what is it sewn?", f"{step.letter} {step.name}", step.start)

    def part(self, step: Step, match: Any, item: str) -> "list[tuple[Fraction, Fraction]]":
        """How it may lie, each with its finished size; how often, first."""
        told = PART.fullmatch(item)
        self.account.holds(match, told is not None, f"not to be understood: {item}")
        if not told:
            return []
        times = int(told["times"] or 1)
        if told["p"]:
            again = step.uses[f"[{told['p']}]"] > 0
            self.account.holds(match, again == (told["fabric"] is None), f"is [{told['p']}] told for the first time?")
            if int(told["p"]) not in self.facts.pieces:
                self.account.fault("no such piece", match[0], match.start())
                return []
            piece = self.facts.pieces[int(told["p"])]
            if told["fabric"]:
                self.piece(match, told["p"], told["fabric"])
                self.account.holds(match, turned(told["size"]) == piece.size, f"[{told['p']}] is cut {piece.size[0]}")
            step.uses[f"[{told['p']}]"] += times
            step.pieces[told["p"]] += times
            wide, high = (side - self.quilt.seam for side in piece.exact)
            return [(wide, high), (high, wide)] * times
        before = self.steps.get(told["letter"])
        self.account.holds(match, before is not None, f"{told['letter']} is not sewn before")
        if before is None or before.size is None:
            return []
        again = step.uses[told["letter"]] + step.uses[told["letter"] + "*"] > 0
        self.account.holds(match, again == (told["name"] is None), f"is {told['letter']} told for the first time?")
        self.account.holds(match, before.name.startswith(told["name"] or ""),
                           f"{told['letter']} is called {before.name}")
        step.uses[told["letter"] + told["star"]] += times
        size = before.size[::-1] if told["turn"] and "quarter" in told["turn"] else before.size
        return [size] * times

    def joined(self, step: Step, match: Any) -> None:
        items = match["list"].split("; ")
        sizes: "list[list[tuple[Fraction, Fraction]]]" = []
        for item in items:
            ways = self.part(step, match, item)
            if not ways:
                return
            told = PART.fullmatch(item)
            times = int(told["times"] or 1) if told else 1
            sizes += [list(dict.fromkeys(ways))] * times
        along = 0 if "left to right" in match[0] else 1
        fits = {}
        fixed = [ways[0][1 - along] for ways in sizes if len(ways) == 1]
        for other in set(fixed) or {size[1 - along] for ways in sizes for size in ways}:
            lengths = [[size[along] for size in ways if size[1 - along] == other] for ways in sizes]
            if all(lengths):
                total = sum((min(choice) for choice in lengths), Fraction(0))
                fits[other] = (total, other) if along == 0 else (other, total)
        self.account.holds(match, bool(fits), "these do not fit to each other")
        step.candidates = list(fits.values())
        if fits:
            step.size = step.candidates[0]
        step.seams = len(sizes) - 1
        step.along = along

    def set_in(self, step: Step, match: Any) -> None:
        inner = self.part(step, match, match["part"])
        told = re.findall(r"\[(\d+)\] to (each side|the left and the right side|the top and the bottom)(?: and a strip "
                          r"|$)", match["strips"])
        numbers = [number for number, _ in told]
        strips = [self.facts.pieces.get(int(number)) for number in numbers]
        good = [piece for piece in strips if piece and piece.sort == "mitred"]
        self.account.holds(match, len(good) == len(strips) > 0, "no strips for a mitred border")
        sides = [MITRED_SIDES.get(piece.sides) for piece in good]
        self.account.holds(match, [side for _, side in told] == sides, f"these are strips for {sides}")
        for name, expected in (("a", self.ruler.measured(self.quilt.allowance)), ("deg", 45),
                               ("b", self.ruler.measured(self.quilt.allowance))):
            self.account.same(match, name, expected)
        if inner and good:
            wide = good[0].exact[1] - self.quilt.seam
            step.size = inner[0][0] + 2 * wide, inner[0][1] + 2 * wide
            for piece in good:
                step.uses[f"[{piece.number}]"] += piece.count // max(step.make, 1)
                step.pieces[str(piece.number)] += 4
            step.is_mitred = True
            self.account.holds(match, sum(piece.count for piece in good) == 4 * step.make, "four strips to each")

    # ---- sizes, seams and drawings

    def measured(self, step: Step) -> None:
        seam = self.quilt.seam

        def size(match: Any) -> None:
            for candidate in step.candidates:
                if self.ruler.by(candidate[0] + seam, candidate[1] + seam) == match["size"]:
                    step.size = candidate
            if step.size:
                self.account.same(match, "size", self.ruler.by(step.size[0] + seam, step.size[1] + seam))
                self.account.same(match, "seen", self.ruler.by(*step.size))
            is_told = step.sort == "units:" or "Measure:" in match[0]
            self.account.holds(match, (match["seen"] is not None) == is_told, "is its finished size told?")
        if step.sort != "strip set for":
            self.one(step, "{Measures|Measure: block} <size:S> unfinished{, <seen:S> finished|}.{ The top is done.|}",
                     size)

    def pressed(self, step: Step) -> None:
        def seams(match: Any) -> None:
            expected = 1
            runs = match["runs"].removesuffix(PALER)
            turns = re.fullmatch(r"seams 1, 3, 5 and so on (.*); seams 2, 4, 6 and so on (.*)", runs)
            if turns:
                both = {turns[1], turns[2]}
                self.account.holds(match, step.seams >= 5 and len(both) == 2 and both < WAYS, f"{step.seams} seams")
                return
            for run in runs.split("; "):
                told = re.fullmatch(r"seams? (\d+)(?: to (\d+))? (" + "|".join(WAYS) + ")", run)
                self.account.holds(match, told is not None and int(told[1]) == expected, f"expected seam {expected}")
                if told:
                    expected = int(told[2] or told[1]) + 1
                    self.account.holds(match, told[2] is None or int(told[2]) > int(told[1]), "a run of one")
            self.account.holds(match, expected == step.seams + 1, f"{step.seams} seams are sewn")
        self.take(step, "Press «(?=seams? \\d)»<runs:w>." + END_OF_POINT, seams)

        def towards(match: Any) -> None:
            self.account.holds(match, match["p"] in step.pieces and self.facts.by_key[
                self.facts.pieces[int(match["p"])].fabric].name == match["fabric"], "no such piece is sewn here")
        self.take(step, "Press the seam {to the left|to the right|upwards|downwards}, towards the <fabric:w> [<p:n>]"
                  "{.|; that is}", towards)
        self.take(step, "These do not lock: <list:w>. Where they meet press one of the two open, or accept the lump.",
                  lambda m: self.clashing(step, m))

    def clashing(self, step: Step, match: Any) -> None:
        """Kept, to be held against what is told of pressing all together."""
        for item in match["list"].split("; "):
            told = re.fullmatch(r"seams of (?:two ([A-Z]{1,2})|([A-Z]{1,2}) and of ([A-Z]{1,2})), at "
                                r"(seam \d+(?:, seam \d+)*)", item)
            self.account.holds(match, told is not None, f"not to be understood: {item}")
            if told:
                parts = tuple(sorted(part for part in told.groups()[:3] if part))
                self.facts.clashes[step.letter, parts] = [int(number) for number in re.findall(r"\d+", told[4])]

    def pictures(self, step: Step) -> None:
        if step.size is None:
            return
        seam, ruler = self.quilt.seam, self.ruler
        self.take(step, "zigzag: <n:n> part{s|} more, not drawn", lambda m: self.not_drawn(step, m))
        unfinished = ruler.by(step.size[0] + seam, step.size[1] + seam)
        self.take(step, "= <size:S> unfinished", lambda m: self.account.same(m, "size", unfinished))
        sides = [ruler.measured(side + seam) for side in step.size]
        self.take(step, "= <a:L> unfinished <b:L> unfinished",
                  lambda m: (self.account.same(m, "a", sides[0]), self.account.same(m, "b", sides[1])))
        block = [ruler.measured(side) for side in step.size]
        told = re.findall(r"(?<![\d/] )(?<!x )(" + r"(?:about )?\d[\d /.]* (?:in|cm|mm)) finished(?= )",
                          self.account.rest[step.start:step.end])
        if told:
            if sorted(told) != sorted(block):
                self.account.fault(f"the block on the drawing is {told}, expected {block}", "", step.start)
            self.take(step, "<side:L> finished")
        shown, drawn = Counter(step.pieces), Counter()
        if told:
            shown += self.inside(step)
        self.take(step, "[<p:n>]", lambda m: drawn.update([m["p"]]))
        if drawn - shown:
            self.account.fault(f"drawn are {dict(drawn)}, there are {dict(shown)}", "", step.start)
        if step.node is not None and step.node.kind == "field":
            Field(self, step).numbers()

    def not_drawn(self, step: Step, match: Any) -> None:
        drawn = re.findall(r"\[\d+\]|(?<!\S)[A-Z]{1,2}\*?(?!\S)",
                           self.account.passage.text[step.start:match.start()].split(f", make {step.make}")[-1])
        expected = step.seams + 1 - len(drawn)
        self.account.holds(match, int(match["n"]) == expected, f"{expected} parts more are sewn than drawn")

    def inside(self, step: Step) -> "Counter[str]":
        """Pieces that a block has, those of its parts with them."""
        found = Counter(step.pieces)
        for name, count in step.uses.items():
            before = self.steps.get(name.rstrip("*"))
            if before is not None and before is not step:
                for number, inner in self.inside(before).items():
                    found[number] += count * inner
        return found


END_OF_POINT = r"«(?= ?\x01| • | [A-Z]{1,2} [^.]*, make | (?:Diagonal r|R)ow \d| ?\Z)»"
PALER = "; that is the paler side, so that they lock with what they meet"
MITRED_SIDES = {"all four sides": "each side", "left and right": "the left and the right side",
                "top and bottom": "the top and the bottom"}
WAYS = {"to the left", "to the right", "upwards", "downwards", "open"}


class UnitStep:
    """A unit by its recipe."""

    def __init__(self, sewing: Sewing, step: Step) -> None:
        self.sewing, self.step, self.account = sewing, step, sewing.account
        self.facts, self.ruler, self.quilt = sewing.facts, sewing.ruler, sewing.quilt
        self.asked: "UnitAsked | None" = None
        self.seen: "dict[tuple[str, str], int]" = {}
        self.mentioned: "list[tuple[Any, str]]" = []

    def read(self) -> None:
        step = self.step
        self.asked = self.which()
        self.ordinals()
        found: "list[Any]" = []
        self.sewing.one(step, "For {each|<k:n> at a time} take <list:w>{; <t:n> times in all|}{, which makes <m:n> "
                              "more "
                        "than needed|}." + END_OF_POINT, found.append)
        if self.asked is None or not found:
            return
        self.taken(found[0])

    def which(self) -> "UnitAsked | None":
        """The unit of this name, kind and size."""
        step = self.step
        told = re.fullmatch(r"(.*?)(?: \((.*)\))?", step.name)
        assert told
        seam = self.quilt.seam
        size = sentence_size(self.account, step)
        fits = [node for node in self.quilt.of_kind("unit")
                if (told[1] in node.called or told[1] == KIND_NAMES.get(node.unit.name)) and
                (told[2] or told[1]) == KIND_NAMES.get(node.unit.name) and
                size in (None, self.ruler.by(node.width + seam, node.height + seam))]
        taken = self.sewing.units_told
        fits = [node for node in fits if node.unit not in taken] or fits
        if not fits:
            sizes = {self.ruler.by(node.width + seam, node.height + seam) for node in self.quilt.of_kind("unit")}
            self.account.fault(f"no unit is called {step.name} and measures {size}; units measure {sorted(sizes)}", "",
                               step.start)
            return None
        node = fits[0]
        taken.add(node.unit)
        step.node, step.size = node, (node.width, node.height)
        return node.unit  # type: ignore[no-any-return]

    def taken(self, match: Any) -> None:
        plan, rows = self.facts.recipes[self.asked]  # type: ignore[index]
        account, step = self.account, self.step
        recipes = plan["recipes"] + plan["mirrored_recipes"]
        account.same(match, "k", plan["units_per_recipe"])
        account.holds(match, (match["k"] is None) == (plan["units_per_recipe"] == 1), "how many at a time?")
        account.same(match, "t", recipes)
        account.holds(match, (match["t"] is None) == (recipes == 1), "how many times?")
        account.same(match, "m", plan["spare_units"])
        account.holds(match, (match["m"] is None) == (plan["spare_units"] == 0), "how many more than needed?")
        made = recipes * plan["units_per_recipe"]
        account.holds(match, step.make == made, f"make {made}")
        step.spare = plan["spare_units"]
        items = re.split(r", | and (?=\d)", match["list"])
        account.holds(match, len(items) == len(rows), f"{len(rows)} sorts of pieces are taken")
        for item, row in zip(items, rows):
            told = re.fullmatch(r"(\d+) (\w+?)s? \[(\d+)\] (.*)", item)
            account.holds(match, told is not None, f"not to be understood: {item}")
            if told and self.sewing.piece(match, told[3], told[4]):
                count = row["count"] * row["gives"]
                account.holds(match, int(told[1]) == count, f"{count} of [{told[3]}]")
                self.fits(match, told[3], row)
                step.uses[f"[{told[3]}]"] += Fraction(count * recipes, made)  # type: ignore[assignment]
                step.pieces[told[3]] += count
        for mention, number in self.mentioned:
            account.holds(mention, number in step.pieces, f"[{number}] is not taken for this")

    def fits(self, match: Any, number: str, row: Any) -> None:
        piece = self.facts.pieces[int(number)]
        again = {1: "", 2: "once", 3: "twice"}[row["again"]]
        if row["shape"] == 1:
            size = printed(self.ruler, Fraction(row["cut_width"]), Fraction(row["cut_height"]))
            self.account.holds(match, (piece.size, piece.again) == (size, again), f"[{number}]: {size[0]}, cut {again}")
        else:
            self.account.holds(match, piece.sort == "diamonds", f"[{number}] is no diamond")

    # ---- what is done, one after the other

    def ordinals(self) -> None:
        rest = self.account.rest
        marks = list(re.finditer(r"(?<!\S)(?:• )?(\d+)\) ", rest[:self.step.end]))
        marks = [mark for mark in marks if mark.start() >= self.step.start]
        ends = [mark.start() for mark in marks[1:]] + [self.step.end]
        times = TIMES.get((self.asked.name, self.asked.method)) if self.asked else None
        if times is not None and len(times) != len(marks):
            self.account.fault(f"{len(marks)} things are done, expected {len(times)}", "", self.step.start)
        for number, (mark, end) in enumerate(zip(marks, ends), 1):
            if int(mark[1]) != number:
                self.account.fault(f"{mark[0]} should be {number})", "", mark.start())
            point = rest.find(" • ", mark.end(), end)
            stop = end if point < 0 else point
            self.doing(mark.start(), stop, times[number - 1] if times and number <= len(times) else None)
            self.account.take("«" + re.escape(mark[0]) + "»", None, mark.start(), mark.end())

    def doing(self, start: int, end: int, times: "int | None") -> None:
        account, ruler = self.account, self.ruler
        allowance = ruler.fine(self.quilt.allowance)
        told = []
        account.take("(<t:n> times)", lambda m: told.append(int(m["t"])), start, end)
        if times is not None and (told or [1]) != [times]:
            account.fault(f"done {told or [1]} times, expected {times}", account.passage.text[start:end], start)

        def piece(match: Any) -> None:
            cloth = self.facts.names.get(match["fabric"])
            number = int(match["p"])
            account.holds(match, cloth is not None and number in self.facts.pieces and
                          self.facts.pieces[number].fabric == cloth.key, "no such piece")
            self.mentioned.append((match, match["p"]))
            before = self.seen.setdefault((match["fabric"], match["sort"]), number)
            account.holds(match, before == number, f"it was [{before}] before")
        account.take(self.facts.any_name().replace("{", "«(?P<fabric>", 1).replace("}", ")»") +
                     " «(?P<sort>square|triangle|diamond|rectangle)» [<p:n>]", piece, start, end)
        self.lies(start, end)
        for words in ("<a:L> from {it|them}", "<a:L> beyond the seam", "with a seam of <a:L>", "lies <a:L> inside",
                      "one seam of <a:L>",
                      "seam of <a:L>"):
            account.take(words, lambda m: account.same(m, "a", allowance), start, end)
        if self.step.size:
            sides = [ruler.measured(side + self.quilt.seam) for side in self.step.size]
            account.take("Trim to <a:L> by <b:L> unfinished", lambda m: (account.same(m, "a", sides[0]),
                                                                        account.same(m, "b", sides[1])), start, end)

    def lies(self, start: int, end: int) -> None:
        """Where points and seams lie on the edges: of a star by its side, of a snowball by its corner."""
        if self.asked is None:
            return
        star = self.asked.width * Fraction(29289321881, 10**11) + self.quilt.allowance
        snowball = self.asked.corner + 2 * self.quilt.allowance
        for words, length in (("from its corners", star), ("from that corner", snowball)):
            self.account.take(f"<a:L> {words}", lambda m, a=length: self.account.same(m, "a", self.ruler.measured(a)),
                              start, end)


def sentence_size(account: Account, step: Step) -> "str | None":
    told = re.search(rf"Measures? ?(?:: block)?:? ?(?:block )?({SIZE}) unfinished",
                     account.rest[step.start:step.end])
    return told[1] if told else None


class Field:
    """Blocks on point."""

    def __init__(self, sewing: Sewing, step: Step) -> None:
        self.sewing, self.step, self.account = sewing, step, sewing.account
        self.facts, self.ruler, self.quilt = sewing.facts, sewing.ruler, sewing.quilt

    def read(self) -> None:
        rows: "list[Any]" = []
        self.sewing.take(self.step, "{• |}Diagonal row <r:n>: <list:w>." + END_OF_POINT, rows.append)
        fields = self.quilt.of_kind("field")
        if not rows or not fields:
            return
        node = fields[0]
        self.step.node, self.step.size = node, (node.width, node.height)
        self.triangles(node)
        self.rows(node, rows)
        self.pressed_rows(node)
        self.sewing.take(self.step, "from row 1 on, ")
        self.sewing.take(self.step, "the next <k:n> towards", lambda m: self.account.holds(
            m, int(m["k"]) < node.extra[0] + node.extra[1], "there are not so many rows"))
        self.sewing.take(self.step, "an eighth turn (45 degrees)")
        self.sewing.take(self.step, "Setting triangles are cut larger than they need be, by <a:L>, to be trimmed.",
                         lambda m: self.account.same(m, "a", self.ruler.measured(self.quilt.trim())))
        grid = self.ruler.measured(self.quilt.grid())
        self.sewing.take(self.step, "Trim the sides to <a:L> beyond the blocks' points, square at the corners{; "
                                    "triangles "
                         "are cut at the next <g:L> above the need|}", lambda m: (
                             self.account.same(m, "a", self.ruler.measured(self.quilt.allowance)),
                             self.account.same(m, "g", grid)))

    def pressed_rows(self, node: Node) -> None:
        """Each row with all its seams, one fewer than the blocks and triangles in it."""
        columns, high = node.extra[:2]
        places = [(line, sum(1 for x in range(2 * columns - 1) for y in range(2 * high - 1)
                             if x % 2 == y % 2 and x - y == 2 * line)) for line in range(columns - 1, -high, -1)]
        counts = [blocks + (line != 0) + (line != columns - high) - 1 for line, blocks in places]

        def row(match: Any) -> None:
            count = counts[int(match["r"]) - 1]
            turns = match["runs"].startswith("seams 1, 3 and so on")
            numbers = [int(number) for number in re.findall(r"\d+", match["runs"])]
            expected = [1, 3, 2, 4] if turns else [1, *numbers[1:-1], count]
            self.account.holds(match, "all" in match["runs"] or numbers == expected, f"{count} seams are in this row")
        told = self.sewing.take(self.step, "{• |}«(?<!Diagonal )»Row <r:n>: <runs:w>." + END_OF_POINT, row)
        if told not in (0, sum(1 for count in counts if count > 0)):
            self.account.fault(f"{told} rows are pressed", "", self.step.start)

    def numbers(self) -> None:
        """Those of the rows on the drawing."""
        node = self.step.node
        numbers = [int(match[1]) for match in re.finditer(r"(?<!\S)(\d+)(?!\S)",
                                                          self.account.rest[self.step.start:self.step.end])]
        if numbers:
            if numbers != list(range(1, node.extra[0] + node.extra[1])):
                self.account.fault(f"rows on the drawing are {numbers}", "", self.step.start)
            self.sewing.take(self.step, r"«(?<!\S)»<n:n>«(?!\S)»")

    def triangles(self, node: Node) -> None:
        def found(match: Any) -> None:
            for name, again, fabric, wanted in (("side", "twice", node.extra[2], 2 * (sum(node.extra[:2]) - 2)),
                                                ("corner", "once", node.extra[3], 4)):
                piece = self.facts.pieces.get(int(match[name]))
                self.account.holds(match, piece is not None and (piece.again, piece.fabric) == (again, fabric),
                                   f"{name} triangles are another piece")
                self.step.uses[f"[{match[name]}]"] += wanted
                self.step.pieces[match[name]] += wanted
        self.sewing.take(self.step, "Side triangles are [<side:n>]. Corner triangles are [<corner:n>].", found)

    def rows(self, node: Node, rows: "list[Any]") -> None:
        columns, high = node.extra[:2]
        for number, match in enumerate(rows, 1):
            self.account.same(match, "r", number)
            line = columns - number
            first = max(0, line)
            count = min(columns - first, high - max(0, -line))
            items = match["list"].split("; ")
            blocks = [item for item in items if item != "side triangle"]
            others = sum(1 for k in range(count) if first + k + 1 < columns and max(0, -line) + k + 1 < high)
            self.account.holds(match, len(blocks) == count + others, f"{count + others} blocks are in this row")
            triangles = (line != 0) + (line != columns - high)
            self.account.holds(match, len(items) - len(blocks) == triangles, f"{triangles} side triangles")
            for item in blocks:
                self.block(match, item)
        if len(rows) != columns + high - 1:
            self.account.fault(f"{len(rows)} rows, expected {columns + high - 1}", "", self.step.start)

    def block(self, match: Any, item: str) -> None:
        told = re.fullmatch(r"(?:\[(\d+)\] (.*?)|([A-Z]{1,2}\*?))( turned .*)?", item)
        self.account.holds(match, told is not None, f"not to be understood: {item}")
        if told and told[1] and self.sewing.piece(match, told[1], told[2]):
            self.step.uses[f"[{told[1]}]"] += 1
            self.step.pieces[told[1]] += 1
        elif told and told[3]:
            self.step.uses[told[3]] += 1
