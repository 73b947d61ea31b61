"""Pressing in all, what to buy, and the cover with all sizes side by side.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
from fractions import Fraction
from typing import Any

from .account import Account
from .cutting import Cloth, Facts
from .finishing import Finishing, panels_of
from .ruler import INCH, value_of
from .seams import Seams
from .sewing import Sewing


# ---- pressing ------------------------------------------------------------------------------------------------------


def left_of(ruler: Any, needed: Fraction, spare: Fraction) -> str:
    """What is bought beyond the need as that is told, to a mark."""
    return ruler.at_most(spare + needed - value_of(ruler.at_least(needed)))


def sewn_in_all(facts: Facts, sewing: Sewing, seams: Seams) -> Fraction:
    """All seams from raw edge to raw edge."""
    quilt, total = facts.quilt, Fraction(0)
    for step in sewing.order:
        if step.sort == "strip set for":
            total += step.make * step.long_seams
        elif step.node is not None and step.node.kind in ("unit", "field"):
            node = step.node
            total += step.make * quilt.once(f"seams of {id(node)}", lambda node=node: seams.of_one(node))
        elif step.sort != "segments:" and step.size and not step.is_mitred:
            total += step.make * step.seams * (step.size[1 - step.along] + quilt.seam)
    for node in quilt.of_kind("set in"):
        total += quilt.counts[node] * seams.of_one(node)
    return total


def pressing(account: Account, facts: Facts, sewing: Sewing, passage: Any) -> None:
    quilt, ruler = facts.quilt, facts.ruler
    seams = quilt.once("seams", lambda: Seams(quilt))
    account.open(passage)
    account.once("meet at <n:n> places of the top", lambda m: account.same(m, "n", seams.meetings()))
    lumps: "list[int]" = []
    account.take("lock into each other at all but <n:n> of them", lambda m: lumps.append(int(m["n"])))
    clashes(account, facts, sewing, lumps)
    across, down = (Fraction(INCH * count, 32) for count in seams.crossed[quilt.top])
    off = "0.4 mm" if quilt.metric else "1/64 in"
    account.once(f"About <all:L> of seams in all; with every allowance {off} off the same way, the top comes out off "
                 "by no more than <a:L> across and <b:L> down.", lambda m: (
                     account.same(m, "all", ruler.seams(sewn_in_all(facts, sewing, seams))),
                     account.same(m, "a", ruler.at_least(across)), account.same(m, "b", ruler.at_least(down))))
    account.close()


def clashes(account: Account, facts: Facts, sewing: Sewing, lumps: "list[int]") -> None:
    """Where seams do not lie opposite: the places add up, and the seams are there."""
    places: "list[int]" = []

    def clash(match: Any) -> None:
        places.append(int(match["n"]))
        account.holds(match, (int(match["n"]) == 1) == ("place," in match[0]), "one place, or more?")
        step = sewing.steps.get(match["letter"])
        numbers = [int(number) for number in re.findall(r"seam (\d+)", match["seams"])]
        good = step is not None and (step.seams == 0 or all(1 <= number <= step.seams for number in numbers))
        account.holds(match, good and step is not None and step.name.startswith(match["name"]), "no such part, or seam")
        parts = (match["two"],) if match["two"] else tuple(sorted((match["one"], match["other"])))
        at = facts.clashes.pop((match["letter"], parts), None)
        account.holds(match, at == numbers, f"the step says that these do not lock at {at}")
    account.take("<letter:l> (<name:w>)«(?P<seams>(?:, seam \\d+)+)»: <n:n> place{s|}, {seams of two <two:l>|a seam "
                 "of <one:l> and one of <other:l>}", clash)
    for (letter, parts), at in facts.clashes.items():
        account.fault(f"that in {letter} seams of {parts} do not lock at {at} is only told there")
    if sum(places) != sum(lumps):
        account.fault(f"{lumps} places are said to be told, {sum(places)} are")


# ---- what to buy ---------------------------------------------------------------------------------------------------


class Buying:
    """The table, and where it is near its edge."""

    def __init__(self, account: Account, facts: Facts, finishing: Finishing) -> None:
        self.account, self.facts, self.finishing = account, facts, finishing
        self.quilt, self.ruler = facts.quilt, facts.ruler
        buying = self.quilt.file.get("buying", {})
        self.extra = self.quilt.length(buying, "extra", "0 in", "0 mm")
        self.shrinks = Fraction(str(buying.get("shrinkage", 0))) / 100

    def read(self, passage: Any) -> None:
        account = self.account
        account.open(passage)
        taken = {piece.fabric for piece in self.facts.pieces.values()}
        for cloth in self.facts.cloths:
            if cloth.key in self.facts.needed or cloth.key in taken:
                self.cloth(cloth)
        self.backing()
        self.batting()
        self.cautions()
        account.close()

    def bought(self, needed: Fraction) -> Fraction:
        length = needed / (1 - self.shrinks) + self.extra
        return -(-length // self.quilt.step) * self.quilt.step

    def cloth(self, cloth: Cloth) -> None:
        account, ruler = self.account, self.ruler
        start = f"{cloth.letter}, {cloth.name} "
        if cloth.strip:
            strips = self.facts.strips_taken[cloth.key]

            def row(match: Any) -> None:
                account.same(match, "n", strips)
                account.same(match, "size", ruler.by(cloth.usable, cloth.strip))
                account.same(match, "buy", strips)
                account.same(match, "left", cloth.have - strips)
                account.same(match, "have", cloth.have)
                account.holds(match, ("bundle" in match[0]) == (cloth.have > 0), "are there strips?")
                account.holds(match, (match["left"] is not None) == (cloth.have >= strips), "are there enough?")
            account.once(start + "<n:n> strips {from your bundle: |}<buy:n> strips of <size:S> {<left:n> of <have:n> "
                                 "strips|none|too few}", row)
            return
        needed = self.facts.needed[cloth.key]
        bought = self.bought(needed)
        spare = (bought - self.extra) * (1 - self.shrinks) - needed if self.shrinks else bought - needed
        self.facts.bills[cloth.key], self.facts.spares[cloth.key] = bought, spare

        def bolt(match: Any) -> None:
            account.same(match, "need", ruler.at_least(needed))
            account.same(match, "buy", ruler.buy(bought))
            account.holds(match, (match["left"] is None) == ruler.nothing(spare), "is there something to spare?")
            account.same(match, "left", left_of(ruler, needed, spare))
        account.once(start + "<need:L> <buy:L> {<left:L>|none} ", bolt)
        self.edge(cloth.name, needed, bought, spare)

    def edge(self, name: str, needed: Fraction, bought: Fraction, spare: Fraction) -> None:
        account, ruler = self.account, self.ruler

        def near(match: Any) -> None:
            account.same(match, "buy", ruler.buy(bought))
            account.same(match, "left", left_of(ruler, needed, spare))
            account.holds(match, (match["left"] is None) == ruler.nothing(spare), "nothing, or a little?")
            account.same(match, "safe", ruler.buy(bought + self.quilt.step))
        told = account.take(f"! {name}: buy at least <buy:L>: that leaves {{nothing|only <left:L>}} to spare, "
                            f"<safe:L> is "
                            "safer.", near)
        if told != ruler.little(spare):
            account.fault(f"{name}: {ruler.at_most(spare)} to spare, is that told?")

    def backing(self) -> None:
        value = self.quilt.file.get("backing")
        account, ruler = self.account, self.ruler
        if value is None:
            return
        best = self.finishing.backing_rows()[0]
        spare = Fraction(best["bought"] - best["cloth_with_repeat"])

        def row(match: Any) -> None:
            account.same(match, "need", ruler.at_least(best["cloth_with_repeat"]))
            account.same(match, "buy", ruler.buy(best["bought"]))
            account.same(match, "left", left_of(ruler, Fraction(best["cloth_with_repeat"]), spare))
            account.holds(match, (match["left"] is None) == ruler.nothing(spare), "is there something to spare?")
            account.same(match, "how", panels_of(best))
            account.holds(match, (match["n"] is not None) == (best["pieces"] > best["panels"]), "pieces, or panels?")
            account.same(match, "n", best["pieces"])
        name = value.get("name") or (self.facts.by_key[value["fabric"]].name if "fabric" in value else "")
        wide = ruler.measured(self.finishing.back.fabric_width)
        account.once(f"backing{': ' + name if name else ''}, {wide} wide <need:L> <buy:L> {{<left:L>|none}} back of "
                     "each quilt: «(?P<how>\\d+ panels?(?: and an insert)?)»{, <n:n> pieces|}", row)
        self.edge("backing", Fraction(best["cloth_with_repeat"]), Fraction(best["bought"]), spare)
        if value.get("fabric") in self.facts.bills and \
                self.facts.by_key[value["fabric"]].usable == self.finishing.back.fabric_width:
            both = self.facts.bills[value["fabric"]] + best["bought"]
            account.once(f"{self.facts.by_key[value['fabric']].name} is bought for the top and for the back: <a:L> in "
                         f"all.",
                         lambda m: account.same(m, "a", ruler.buy(both)))

    def batting(self) -> None:
        account, ruler = self.account, self.ruler
        if "batting" not in self.quilt.file:
            return
        found = self.finishing.batting_found()

        def row(match: Any) -> None:
            account.same(match, "size", ruler.by_at_least(*self.finishing.inside()))
            account.same(match, "pack", self.finishing.package_size(found))
            account.same(match, "wide", ruler.measured(self.finishing.roll_width()))
            account.same(match, "roll", ruler.buy(found["joined_length"]))
            account.holds(match, (match["pack"] is not None) == (found["package"] >= 0), "a package, or none?")
        account.once(self.quilt.words["batting"] + " <size:S> {a package of <pack:S>|<roll:L> of the roll, "
                     "<wide:L> wide|from a roll} ", row)

    def cautions(self) -> None:
        """Strips that there are: the fabric that gives the fewest tops."""
        account = self.account
        mine = [cloth for cloth in self.facts.cloths if cloth.strip and cloth.have and
                cloth.key in self.facts.strips_taken]
        tops = [self.tops_of(cloth) for cloth in mine]
        known = [count for count in tops if count is not None]

        def suffice(match: Any) -> None:
            if len(known) == len(tops):
                account.same(match, "n", min(known))
            shares = any(self.facts.strips_taken[cloth.key] * count > cloth.have for cloth, count in zip(mine, tops)
                         if count is not None)
            if len(known) == len(tops):
                account.holds(match, shares == ("together" in match[0]), "are they to be cut together?")
            account.holds(match, int(match["n"]) >= 1 and (int(match["n"]) == 1) == ("top of" in match[0]), "how many?")
        account.take("The strips that there are suffice for <n:n> top{s|} of this size{ or more|}{, cut together: what "
                     "is short in the last set of one serves the next|}.", suffice)
        account.take("<name:w>: <n:n> strips are needed, and there are only <have:n>.", lambda m: account.holds(
            m, any(self.facts.strips_taken.get(cloth.key) == int(m["n"]) and cloth.have == int(m["have"])
                   for cloth in self.facts.cloths), "other numbers of strips"))
        account.take("per cent are counted")
        account.take("<a:L> more of each is bought", lambda m: account.same(m, "a", self.ruler.measured(self.extra)))

    def tops_of(self, cloth: Cloth) -> "int | None":
        """Of strips that go whole into sets: as the sets of so many tops take them."""
        sewing, tops = self.finishing.sewing, 0
        numbers = [str(piece.number) for piece in self.facts.pieces.values() if piece.fabric == cloth.key]
        if any(self.facts.pieces[int(number)].sort != "strip" for number in numbers):
            return None
        while True:
            strips = 0
            for letter, strip_set in sewing.sets.items():
                gives = sewing.steps[letter].gives
                sets = -(-(tops + 1) * sewing.steps[letter].make // self.quilt.tops // gives)
                strips += sets * sum(strip_set.strips.count(number) for number in numbers)
            if strips > cloth.have or tops > 99:
                return tops
            tops += 1


# ---- what is assumed, and the cover --------------------------------------------------------------------------------


def assumed(account: Account, facts: Facts, passage: Any) -> None:
    quilt, ruler = facts.quilt, facts.ruler
    account.open(passage)
    trim = quilt.length(quilt.file.get("cutting", {}), "end trim", "1/2 in", "10 mm")
    account.take("Squaring takes <a:L> at each end", lambda m: account.same(m, "a", ruler.measured(trim)))
    account.take("brought to the next <a:L>.", lambda m: account.same(m, "a", ruler.measured(quilt.grid())))
    account.close()


def words(account: Account, facts: Facts, passage: Any, about: bool) -> None:
    nearest = "millimetre" if facts.quilt.metric else "1/8 in"
    account.open(passage)
    told = account.take("about: the exact length lies between two marks of a ruler; it is told to the nearest "
                        f"{nearest}.")
    if about and told != 1:
        account.fault("it is not said what about means")
    account.close()


def cover(account: Account, sheet: Any, sizes: "dict[str, tuple[Facts, Finishing]]", pages: bool) -> None:
    """A row for each thing, a cell for each size: what the sizes themselves say."""
    account.open(sheet.cover)
    account.take("Check squares: 1 in and 25 mm where")
    account.take("{measures 1 in after printing at 100 % measures 25 mm after printing at 100 %|measures 1 in "
                 "measures 25 mm after printing at 100 %}")
    one = next(iter(sizes.values()))[0]
    for name in ("title", "by", "version", "date", "story"):
        words = re.sub(r"\s+", " ", str(one.quilt.file.get(name, "")))
        account.take("«" + re.escape(words) + "»") if words else None
    numbered_rows(account, sizes)
    for name, cell in rows(sizes).items():
        cells = [cell(facts, finishing) for facts, finishing in sizes.values()]
        printed = " ".join(cells)
        words = "; ".join(f"{size}: {text}" for size, text in zip(sizes, cells))
        row = re.escape(name) + "(?: " + re.escape(printed) + rf"|\. {re.escape(words)})(?= |$)"
        if account.take(f"«{row}»") != 1:
            account.fault(f"of {name} the table does not say {printed}")
    if pages:
        first = [sheet.first_pages.get(name, 0) for name in sizes]
        last = [page - 1 for page in first[1:]] + [sheet.pages]
        numbers = " ".join(f"{start} to {end}" if start < end else f"{start}" for start, end in zip(first, last))
        if len(sizes) > 1 and account.take(f"pages to print {numbers}«(?= |$)»") != 1:
            account.fault(f"the pages of the sizes are {numbers}")
    account.close()


def numbered_rows(account: Account, sizes: "dict[str, tuple[Facts, Finishing]]") -> None:
    """On the drawings of tops on point that have room for them."""
    end = account.rest.find("Sizes, and what to buy for each")
    told = [int(number) for number in re.findall(r"(?<!\S)\d+(?!\S)", account.rest[:end])]
    several = [list(range(1, node.extra[0] + node.extra[1])) for facts, _ in sizes.values()
               for node in facts.quilt.of_kind("field")]
    if told and told in (sum(several[number:], []) for number in range(len(several))):
        account.take(r"«(?<!\S)»<n:n>«(?!\S)»", None, 0, end)


def rows(sizes: "dict[str, tuple[Facts, Finishing]]") -> "dict[str, Any]":
    one = next(iter(sizes.values()))[0]
    file, seam = one.quilt.file, one.quilt.seam
    found: "dict[str, Any]" = {
        "top, finished": lambda facts, _: facts.ruler.by(*facts.top_size()),
        "top, unfinished": lambda facts, _: facts.ruler.by(*(side + seam for side in facts.top_size())),
        "blocks": lambda facts, _: str(facts.quilt.blocks())}
    if not any(facts.quilt.blocks() for facts, _ in sizes.values()):
        del found["blocks"]
    for cloth in one.cloths:
        found[f"{cloth.letter}, {cloth.name}"] = lambda facts, _, key=cloth.key: bought(facts, key)
    if "binding" in file:
        found[f"binding (its {one.quilt.words['fabric']} is counted above)"] = binding
    if "backing" in file:
        wide = next(iter(sizes.values()))[1].back_width()
        found[f"backing, {one.ruler.measured(wide)} wide"] = backing
    if "batting" in file:
        found[f"{one.quilt.words['batting']}, cut"] = lambda facts, finishing: facts.ruler.by_at_least(
            *finishing.inside())
    return found


def bought(facts: Facts, key: str) -> str:
    if facts.by_key[key].strip and key in facts.strips_taken:
        return f"{facts.strips_taken[key]} strips {facts.ruler.measured(facts.by_key[key].strip)} wide"
    return safer(facts, facts.bills[key], facts.spares[key]) if key in facts.bills else "none"


def safer(facts: Facts, amount: Fraction, spare: Fraction) -> str:
    """Where little is to spare, one step more too."""
    more = f" (safer: {facts.ruler.buy(amount + facts.quilt.step)})" if facts.ruler.little(spare) else ""
    return facts.ruler.buy(amount) + more


def backing(facts: Facts, finishing: Finishing) -> str:
    best = finishing.backing_rows()[0]
    return safer(facts, Fraction(best["bought"]), Fraction(best["bought"] - best["cloth_with_repeat"]))


def binding(facts: Facts, _: Finishing) -> str:
    wide = facts.quilt.length(facts.quilt.file["binding"], "cut width", "2 1/2 in", "6 cm")
    return f"{sum(count for count, _ in facts.binding_laid)} strips cut {facts.ruler.measured(wide)} wide"

