"""What is read first, and the cutting list: its pieces are those that patches, units and fields come to.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from walker import ticks

from .account import Account
from .quilt import Quilt
from .ruler import LENGTH, sides_of, value_of


@dataclass
class Piece:
    """A row of the cutting list."""

    number: int
    fabric: str
    sort: str  # piece, strip, mitred, diamonds
    count: int
    size: "tuple[str, ...]"  # as printed
    again: str = ""
    gives: int = 0
    spare: int = 0
    uses: "list[str]" = field(default_factory=list)
    exact: "tuple[Fraction, ...]" = ()
    place: int = 0
    passage: Any = None
    late: bool = False  # cut after the top is measured
    finished: "tuple[Fraction, Fraction] | None" = None  # of a mitred border along that side
    sides: str = ""  # of a mitred border
    last_sets: "dict[str, str]" = field(default_factory=dict)  # by the set, how long its last strips must be
    alike: "set[int]" = field(default_factory=set)  # pieces as large that are cut otherwise

    def long(self) -> Fraction:
        return max(self.exact)

    def short(self) -> Fraction:
        return min(self.exact)

    def area(self) -> Fraction:
        """Of pieces that are laid out one by one, at least."""
        return self.exact[0] * self.exact[1] if self.sort == "piece" else Fraction(0)


@dataclass
class Cloth:
    key: str
    letter: str
    name: str
    usable: Fraction
    strip: Fraction
    have: int


class Facts:
    """All that the parts of a sheet have to agree on, of one size."""

    def __init__(self, quilt: Quilt) -> None:
        self.quilt, self.ruler = quilt, quilt.ruler
        self.cloths = [self.cloth(number, key, value) for number, (key, value) in
                       enumerate(quilt.file["fabrics"].items())]
        self.by_key = {cloth.key: cloth for cloth in self.cloths}
        self.names = {cloth.name: cloth for cloth in self.cloths}
        self.pieces: "dict[int, Piece]" = {}
        self.recipes = quilt.once("recipes", quilt.recipes)
        self.needed: "dict[str, Fraction]" = {}
        self.strips_taken: "dict[str, int]" = {}
        self.use_names: "list[tuple[str, str, str]]" = []  # letter, name, where it is told
        self.set_takes: "dict[str, Fraction]" = {}  # how long strips of a piece must be
        self.widths: "list[Any]" = []  # of each plan what is told of it, and its strips
        self.bills: "dict[str, Any]" = {}
        self.spares: "dict[str, Fraction]" = {}
        self.binding_told: "list[Any]" = []  # in the cutting list
        self.short_sets: "dict[str, str]" = {}  # by the set, how long the strips of its last one must be
        self.clashes: "dict[tuple[str, tuple[str, ...]], list[int]]" = {}  # by step and parts, at which seams
        self.binding_laid: "list[tuple[int, Fraction]]" = []
        self.sleeve_laid: "list[tuple[int, Fraction]]" = []

    def cloth(self, number: int, key: str, value: Any) -> Cloth:
        strips = value.get("strips", {})
        usable = self.quilt.length(value, "usable width", "40 in", "100 cm")
        return Cloth(key, f"F{number + 1}", value.get("name", key), usable,
                     ticks(strips["cut width"]) if strips else Fraction(0), strips.get("have", 0))

    def any_name(self) -> str:
        return "{" + "|".join(sorted(self.names, key=len, reverse=True)) + "}"

    def top_size(self) -> "tuple[Fraction, Fraction]":
        return self.quilt.top.width, self.quilt.top.height

    # ---- pieces from the tree

    def patch_sizes(self) -> "dict[tuple[str, tuple[str, ...]], tuple[Fraction, Fraction]]":
        """Exact cut sizes by fabric and printed size, whichever way it is printed."""
        found = {}
        for node, _ in self.quilt.patches():
            sides = node.width + self.quilt.seam, node.height + self.quilt.seam
            found[node.fabric, printed(self.ruler, *sides)] = sides
        return found


def printed(ruler: Any, *sides: Fraction) -> "tuple[str, ...]":
    """A size as it is printed, the longer side first."""
    long, short = sorted(sides, reverse=True)
    return (ruler.by(long, short),)


def turned(text: str) -> "tuple[str, ...]":
    """A printed size, the longer side first."""
    about = "about " if text.startswith("about ") else ""
    sides = text.removeprefix("about ").split(" x ")
    if value_of(sides[0]) < value_of(sides[1]):
        sides.reverse()
    return (about + " x ".join(sides),)


def sizes_first(account: Account, facts: Facts, passage: Any) -> None:
    quilt, ruler = facts.quilt, facts.ruler
    account.open(passage)
    wide, high = facts.top_size()
    seam = quilt.seam
    account.once("Top, finished: <size:S>.", lambda m: account.same(m, "size", ruler.by(wide, high)))
    account.once("Top, unfinished: <size:S>.", lambda m: account.same(m, "size", ruler.by(wide + seam, high + seam)))
    total = quilt.total_pieces()
    if quilt.tops > 1:
        def several(match: Any) -> None:
            account.same(match, "n", total)
            account.same(match, "tops", quilt.tops)
            account.same(match, "again", quilt.tops)
        account.once("<n:n> patches in <tops:n> tops, which are made at once: all numbers of pieces and all cloth are "
                     "for <again:n>.", several)
    else:
        account.once("<n:n> patches.", lambda m: account.same(m, "n", total))
    account.once("Seam allowance <a:L>{, a scant one, so that the fold is in it. It is|, as stitched; fold and thread "
                 "of a pressed seam are reckoned to take <t:L> more. Both are} included",
                 lambda m: (account.same(m, "a", ruler.fine(quilt.allowance)),
                            account.holds(m, m["t"] is None or value_of(m["t"]) == quilt.take_up, "another take-up")))
    cloth_widths(account, facts)
    account.once(quilt.words["fabric"].capitalize() + "s have F and a number, F1; pieces have numbers, [1]; what is "
                 "sewn of them has letters, A")
    key(account, facts)
    test_blocks(account, facts)
    rows_on_drawing(account, facts)
    account.close()


def key(account: Account, facts: Facts) -> None:
    """The patches of the drawing's key: each fabric once, in their order."""
    told: "list[str]" = []
    account.take("«(?P<letter>F\\d+)» glue yours «(?P<name>" + facts.any_name()[1:-1] + ")(?= |$)»", lambda m: (
        told.append(m["name"]), account.holds(m, facts.names[m["name"]].letter == m["letter"],
                                              f"it is {facts.names[m['name']].letter}")))
    if told and told != [cloth.name for cloth in facts.cloths]:
        account.fault(f"the key of the drawing has {told}")


def cloth_widths(account: Account, facts: Facts) -> None:
    def widths(match: Any) -> None:
        told = re.split(", | and ", match["names"])
        for name in told:
            cloth = facts.names.get(name)
            account.holds(match, cloth is not None, f"no fabric is called {name}")
            if cloth is not None:
                account.same(match, "wide", facts.ruler.measured(cloth.usable))
                account.holds(match, (cloth.strip > 0) == match[0].startswith("Strips"), f"{name}: strips or cloth?")
    account.take("Strips, reckoned <wide:L> long, selvages off: <names:w>. Do not wash", widths)
    account.take('Cloth reckoned <wide:L> wide, selvages off, which is its "width of <f:w>": <names:w>. Wash or',
                 widths)


def test_blocks(account: Account, facts: Facts) -> None:
    seam = facts.quilt.seam

    def block(match: Any) -> None:
        for item in match["list"].split("; "):
            told = re.fullmatch(r"(?P<name>.+) (?P<letter>[A-Z]{1,2}), (?P<size>.+) unfinished", item)
            account.holds(match, told is not None, f"not to be understood: {item}")
            sizes = {facts.ruler.by(node.width + seam, node.height + seam) for node in facts.quilt.order
                     if node.block and told and told["name"] in node.called}
            account.holds(match, told is not None and told["size"] in sizes, f"{item}: expected {sizes}")
    account.take("and measure it: <list:w>. It counts as one of those needed.", block)

    def unit(match: Any) -> None:
        sizes = {facts.ruler.by(node.width + seam, node.height + seam) for node in facts.quilt.of_kind("unit")}
        told = [re.fullmatch(r".+ [A-Z]{1,2}, (?P<size>.+) unfinished", item) for item in match["list"].split("; ")]
        account.holds(match, all(one is not None and one["size"] in sizes for one in told), f"expected {sizes}")
    account.take("and measure them: <list:w>. They count as some of those needed.", unit)


def rows_on_drawing(account: Account, facts: Facts) -> None:
    """On point, the numbers of the diagonal rows stand on the drawing."""
    for node in facts.quilt.of_kind("field"):
        numbers = list(range(1, node.extra[0] + node.extra[1]))
        found = [int(number) for number in re.findall(r"(?<!\S)\d+(?!\S)", account.rest)]
        if found:
            if found != numbers:
                account.fault(f"rows on the drawing are {found}, expected {numbers}")
            account.take(r"«(?<!\S)»<n:n>«(?!\S)»")


def sleeve(facts: Facts) -> "tuple[int, Fraction, Fraction, Fraction]":
    """How many, cut length and width, finished length."""
    quilt = facts.quilt
    value = quilt.file.get("sleeve")
    if value is None:
        return 0, Fraction(0), Fraction(0), Fraction(0)
    count = value.get("sleeves", 1)
    inset, gap, ease, hem = (ticks(metric if quilt.metric else inches) for inches, metric in (
        ("1 in", "25 mm"), ("2 in", "50 mm"), ("1/2 in", "12 mm"), ("1 in", "25 mm")))
    finished = (quilt.top.width - 2 * inset - (count - 1) * gap) // count
    drop = quilt.length(value, "depth", "4 in", "10 cm")
    return count, finished + 2 * hem, 2 * drop + ease + 2 * quilt.allowance, Fraction(finished)


# ---- the cutting list ----------------------------------------------------------------------------------------------


class CuttingList:
    """Reads the list, and holds it against what the tree comes to."""

    def __init__(self, account: Account, facts: Facts) -> None:
        self.account, self.facts = account, facts
        self.joining: "list[tuple[int, str]]" = []

    def read(self, passage: Any) -> None:
        self.account.open(passage)
        word = self.facts.quilt.words["fabric"].capitalize()
        names = "|".join(re.escape(name) for name in sorted(self.facts.names, key=len, reverse=True))
        heads = list(re.finditer(rf"{word} (F\d+), ({names})(?= [\[•])", passage.text))
        starts = [head.start() for head in heads] + [len(passage.text)]
        for head, start, end in zip(heads, starts, starts[1:]):
            cloth = self.facts.names[head[2]]
            self.read_fabric(cloth, start, end)
        self.kept_apart()
        numbers = sorted(self.facts.pieces)
        if numbers != list(range(1, len(numbers) + 1)):
            self.account.fault(f"pieces are numbered {numbers}")
        fabric_heads(self.account, self.facts)
        self.account.close()

    def read_fabric(self, cloth: Cloth, start: int, end: int) -> None:
        def joined(match: Any) -> None:
            self.joining.append((match.start(), match["high"]))
        self.joining = []
        self.account.take("join each of them end to end from strips <high:L> wide, with straight", joined, start, end)
        rows = (("[<p:n>] Take <n:n> strip{s|}, <high:L> wide as bought, for <uses:w>", self.strips),
                ("[<p:n>] Cut <n:n> strip{s|}, width of {fabric|cloth|material} by <high:L>, for <uses:w>",
                 self.strips),
                ("[<p:n>] Cut <n:n> strips at <size:S>, cut generous (from point to point a strip needs <long:L>, "
                 "cut); the ends are trimmed when the corners are {mitred|mitered}, for <uses:w>", self.mitred),
                ("[<p:n>] Cut {<one:n> strip|strips}, width of {fabric|cloth|material} by <high:L>, and from {it|them} "
                 "<n:n> diamonds: cut one end off at <deg:n> degrees, then cut parallel to that, <apart:L> apart, "
                 "measured square to the cut, for <uses:w>", self.diamonds),
                ("[<p:n>] Cut <n:n>{ square| squares|} at <size:S>{, cut <again:w> on the diagonal: <gives:n> "
                 "{triangles|corner setting triangles|side setting triangles}|}{, <spare:n> of them spare|}{, leave "
                 "whole: <whole:w>|}, for <uses:w>", self.piece))
        for words, found in rows:
            self.account.take(words + END, lambda m, f=found: f(cloth, m), start, end)
        self.account.take("Binding: cut <n:n> strip{s|} <wide:L> wide, <all:L> together.",
                          lambda m: self.facts.binding_told.append((self.account.passage, m)), start, end)
        self.account.take("Hanging sleeve: cut <n:n> piece{s|} at <size:S>{, joined from strips|}.",
                          lambda m: self.sleeve(cloth, m), start, end)
        for place, high in self.joining:
            after = [piece for piece in self.facts.pieces.values() if piece.fabric == cloth.key and piece.place > place]
            nearest = min(after, key=lambda piece: piece.place, default=None)
            if nearest is None or self.facts.ruler.measured(nearest.short()) != high:
                self.account.fault(f"strips to join are {high} wide", "", place)

    def sleeve(self, cloth: Cloth, match: Any) -> None:
        count, long, wide, _ = sleeve(self.facts)
        self.account.same(match, "n", count)
        self.account.same(match, "size", self.facts.ruler.by(long, wide))
        self.account.holds(match, ("joined" in match[0]) == (long > cloth.usable), "joined, or in one?")

    def kept_apart(self) -> None:
        for piece in self.facts.pieces.values():
            alike = {other.number for other in self.facts.pieces.values() if piece.sort == other.sort == "piece" and
                     (other.fabric, other.size) == (piece.fabric, piece.size) and other.again != piece.again}
            if piece.alike != alike:
                self.account.fault(f"[{piece.number}] is as large as {sorted(alike)}, told is {sorted(piece.alike)}",
                                   "", piece.place)

    def add(self, match: Any, piece: Piece) -> None:
        piece.place, piece.passage = match.start(), self.account.passage
        piece.uses = self.uses_of(match, piece)
        self.account.holds(match, piece.number not in self.facts.pieces, "this number stands twice")
        self.facts.pieces[piece.number] = piece

    def uses_of(self, match: Any, piece: Piece) -> "list[str]":
        told = re.match(r"([A-Z]{1,2}(?:(?:, | and )[A-Z]{1,2})*)(?: \(([^;]*)\))?(; cut after the top is measured "
                        r"through the middle, as long as it is there)?((?:; as large as \[\d+\]: keep them apart)*)"
                        rf"((?:; for the last set of [A-Z]{{1,2}} strips {LENGTH} long are enough)*)$",
                        match["uses"].strip())
        self.account.holds(match, told is not None, f"uses are not to be understood: {match['uses']}")
        if not told:
            return []
        piece.late = told[3] is not None
        piece.alike = {int(number) for number in re.findall(r"\d+", told[4])}
        piece.last_sets = dict(re.findall(rf"last set of ([A-Z]{{1,2}}) strips ({LENGTH}) long", told[5]))
        if told[2]:
            self.facts.use_names.append((told[1], told[2], match[0]))
        return re.split(", | and ", told[1])

    def strips(self, cloth: Cloth, match: Any) -> None:
        high = value_of(match["high"])
        if cloth.strip:
            self.account.same(match, "high", self.facts.ruler.measured(cloth.strip))
        self.add(match, Piece(int(match["p"]), cloth.key, "strip", int(match["n"]), (match["high"],),
                              exact=(high, cloth.usable)))

    def mitred(self, cloth: Cloth, match: Any) -> None:
        quilt, ruler = self.facts.quilt, self.facts.ruler
        fits: "list[Any]" = []
        more = quilt.mitre_extra()
        for node in quilt.of_kind("set in"):
            lengths, high = quilt.mitred_strips(node), node.extra + quilt.seam
            for length, side in zip(lengths, (node.height, node.width)) if node.fabric == cloth.key else []:
                count = quilt.counts[node] * 2 * lengths.count(length)
                if (ruler.measured(length), ruler.by(length + more, high)) == (match["long"], match["size"]):
                    where = ("all four sides" if lengths[0] == lengths[1] else
                             "left and right" if length == lengths[0] else "top and bottom")
                    fits.append((count, (length + more, high), (side, node.extra), where))
        self.account.holds(match, bool(fits), "no mitred border has such strips: " + "; ".join(
            f"{ruler.by(length + more, node.extra + quilt.seam)}, {ruler.measured(length)} from point to point"
            for node in quilt.of_kind("set in") for length in quilt.mitred_strips(node)))
        count, exact, finished, where = fits[0] if fits else (0, sides_of(match["size"]), None, "")
        self.account.same(match, "n", count)
        self.add(match, Piece(int(match["p"]), cloth.key, "mitred", int(match["n"]), (match["size"],), exact=exact,
                              finished=finished, sides=where))

    def diamonds(self, cloth: Cloth, match: Any) -> None:
        self.account.same(match, "apart", match["high"])
        self.account.same(match, "deg", 45)
        self.account.same(match, "one", 1)
        rows = [row for asked, (_, rows) in self.facts.recipes.items() for row in rows if row["shape"] == 3 and
                asked.fabrics[row["region"] - 1] == cloth.key and
                self.facts.ruler.measured(row["cut_height"]) == match["high"]]
        self.account.holds(match, bool(rows), "no unit has such diamonds")
        if rows:
            count = sum(row["total"] for row in rows)
            self.account.same(match, "n", count)
            along = rows[0]["cut_width"] + (count - 1) * rows[0]["pitch"]
            self.account.holds(match, (along <= cloth.usable) == (match["one"] is not None), "one strip, or more?")
            exact = (Fraction(rows[0]["cut_height"]), Fraction(rows[0]["cut_width"]), Fraction(rows[0]["pitch"]))
            self.add(match, Piece(int(match["p"]), cloth.key, "diamonds", int(match["n"]), (match["high"],),
                                  exact=exact))

    def piece(self, cloth: Cloth, match: Any) -> None:
        again = match["again"] or ""
        times = {"": 1, "once": 2, "twice": 4}[again]
        if match["gives"]:
            self.account.same(match, "gives", times * int(match["n"]))
        size = turned(match["size"])
        sides = self.facts.patch_sizes().get((cloth.key, size)) if not again else None
        wide, high = sides_of(match["size"])
        self.account.holds(match, (wide == high) == (" square" in match[0].split(" at ")[0]), "a square or not?")
        self.add(match, Piece(int(match["p"]), cloth.key, "piece", int(match["n"]), size, again,
                              times * int(match["n"]), int(match["spare"] or 0), exact=sides or (wide, high)))


def fabric_heads(account: Account, facts: Facts) -> None:
    word, names = facts.quilt.words["fabric"].capitalize(), facts.any_name()[1:-1]

    def head(match: Any) -> None:
        letter = facts.names[match["name"]].letter
        account.holds(match, letter == match["letter"], f"it is {letter}")
    account.take(f"{word} «(?P<letter>F\\d+)», «(?P<name>{names})»", head)


END = r"«(?= ?\x01| • | \[\d+\] (?:Cut|Take) | (?:Fabric|Cloth|Material) F\d+, |\Z)»"


def expected_squares(facts: Facts) -> "Counter[tuple[str, str, tuple[str, ...]]]":
    """Whole pieces that units and fields take, by fabric, how they are cut again, and size."""
    found: "Counter[tuple[str, str, tuple[str, ...]]]" = Counter()
    for asked, (_, rows) in facts.recipes.items():
        for row in rows:
            if row["shape"] == 1:
                again = {1: "", 2: "once", 3: "twice"}[row["again"]]
                size = printed(facts.ruler, Fraction(row["cut_width"]), Fraction(row["cut_height"]))
                found[asked.fabrics[row["region"] - 1], again, size] += row["total"]
    for node in facts.quilt.of_kind("field"):
        columns, rows, side, corner = node.extra
        made = facts.quilt.counts[node]
        for fabric, again, wanted, cut in ((side, "twice", 2 * (columns + rows - 2) * made,
                                            facts.quilt.setting_squares(node)[0]),
                                           (corner, "once", 4 * made, facts.quilt.setting_squares(node)[1])):
            found[fabric, again, printed(facts.ruler, cut, cut)] += -(-wanted // (4 if again == "twice" else 2))
    return found
