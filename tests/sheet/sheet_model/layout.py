"""On the cloth: the strips told yield every piece of the list, lie within the cloth, and add up to what is needed.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
from collections import Counter, defaultdict
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from .account import Account
from .cutting import Cloth, Facts, Piece, fabric_heads, sleeve
from .ruler import INCH, LENGTH, MM, SIZE, sides_of, value_of

LAID = re.compile(r"(?P<many>\d+ pieces )?(?P<long>" + LENGTH + r") long for (?P<name>\[\d+\]|binding|sleeve)|"
                  r"(?P<n>\d+) (?P<sort>squares?|of) (?P<p>\[\d+\])|(?P<m>\d+) pieces? for the "
                  r"(?P<other>sleeve|binding)")
TURNED = re.compile(r", turned: cross-cut at (?P<at>" + LENGTH + ")$")
TRIMMED = re.compile(rf", trimmed from (?P<from>{LENGTH}) to (?P<to>{LENGTH}) high$")
FREE = re.compile(rf"\. (?:(?P<more>{LENGTH}) of this strip are free: cut those for (?P<these>.*) longer, so that "
                  rf"their "
                  rf"seam is not by a corner, and trim when the top is measured|Only (?P<only>{LENGTH}) of this strip "
                  r"are free to leave those for (?P<those>.*) longer)$")
MOST_LEFT = 6  # sizes of what is left over that are told
LATE = re.compile(r"\. Cut the others from its right end and leave the part for (?P<these>.*) whole until the top is "
                  r"measured$")
LEFT = re.compile(rf"(?P<n>\d+) pieces? of (?P<size>{SIZE})")


@dataclass
class Strip:
    """So many strips that are cut alike."""

    match: Any
    times: int
    high: Fraction
    said: str
    used: Fraction = Fraction(0)
    names: "Counter[str]" = field(default_factory=Counter)
    whole: bool = False
    long: "list[tuple[str, int, Fraction]]" = field(default_factory=list)  # told by their length
    turned: "list[tuple[str, bool]]" = field(default_factory=list)
    short: "list[str]" = field(default_factory=list)
    free: Any = None


def close(a: Fraction, b: Fraction, facts: Facts, times: int = 1) -> bool:
    """Of lengths that are told to the nearest mark."""
    return abs(a - b) <= times * facts.ruler.usual / 2


class Layout:
    """Reads the plan of each fabric."""

    def __init__(self, account: Account, facts: Facts) -> None:
        self.account, self.facts, self.ruler = account, facts, facts.ruler
        self.quilt = facts.quilt
        self.cloth = facts.cloths[0]
        self.strips: "list[Strip]" = []
        self.left: "list[Any]" = []
        self.left_told: "set[str]" = set()
        self.proofs: "list[Any]" = []
        self.rough = False  # a strip has lengths told to the nearest mark that nothing else tells
        self.laid: "defaultdict[str, list[tuple[int, Fraction]]]" = defaultdict(list)  # how many, how long if told so
        self.binding: "list[tuple[int, Fraction]]" = []
        self.sleeve: "list[tuple[int, Fraction]]" = []
        self.straightening = facts.quilt.length(facts.quilt.file.get("buying", {}), "straightening", "1/2 in", "10 mm")

    def read(self, passage: Any) -> None:
        self.account.open(passage)
        self.account.take("For straightening the end <a:L> is counted.",
                          lambda m: self.account.same(m, "a", self.ruler.measured(self.straightening)))
        word = self.quilt.words["fabric"].capitalize()
        names = "|".join(re.escape(name) for name in sorted(self.facts.names, key=len, reverse=True))
        heads = list(re.finditer(rf"{word} F\d+, ({names})(?= \d)", passage.text))
        starts = [head.start() for head in heads] + [len(passage.text)]
        told = set()
        for head, start, end in zip(heads, starts, starts[1:]):
            told.add(head[1])
            self.read_fabric(self.facts.names[head[1]], start, end)
        for cloth in self.facts.cloths:
            if cloth.name not in told:
                self.taken_whole(cloth)
        fabric_heads(self.account, self.facts)
        self.facts.binding_laid, self.facts.sleeve_laid = self.binding, self.sleeve
        self.account.close()

    def taken_whole(self, cloth: Cloth) -> None:
        """Bought strips that go into sets as they are."""
        mine = [piece for piece in self.facts.pieces.values() if piece.fabric == cloth.key]
        if any(piece.sort != "strip" or not cloth.strip for piece in mine):
            self.account.fault(f"{cloth.name}: no plan is told")
        self.facts.strips_taken[cloth.key] = sum(piece.count for piece in mine)

    # ---- a fabric

    def read_fabric(self, cloth: Cloth, start: int, end: int) -> None:
        self.cloth, self.strips, self.left, self.proofs = cloth, [], [], []
        self.laid = defaultdict(list)
        account = self.account
        account.take("<need:L> are needed, cut like this. Cut in this way, no plan needs less{ than <least:L>|}. {It "
                     "works down to <down:L> of usable width.|It takes all of the <all:L> across, with nothing to "
                     "spare.}", self.proofs.append, start, end)
        account.take("<n:n> strips, each <size:S>, are cut into:", self.bought_strips, start, end)
        before = self.account.rest.find("As it is laid out", start, end)
        account.take("<n:n> strip{s|} <high:L> wide{, from each|}: <places:w>" + POINT, self.strip, max(start, before),
                     end)
        account.take("Left over: <list:w>." + POINT, self.left.append, max(start, before), end)
        account.take("<p:w>: some lie along the cloth, some across it", self.both_ways, max(start, before), end)
        self.measure_strips()
        self.stubs(max(start, before), end)
        self.check(start)
        Picture(self, start, before if before >= 0 else start).read()

    def bought_strips(self, match: Any) -> None:
        self.account.same(match, "size", self.ruler.by(self.cloth.usable, self.cloth.strip))

    def both_ways(self, match: Any) -> None:
        ways: "dict[str, set[bool]]" = {}
        for strip in self.strips:
            for name, turned in strip.turned:
                ways.setdefault(name, set()).add(turned)
        expected = {name for name, told in ways.items() if len(told) == 2}
        told = set(re.findall(r"\[\d+\]", match["p"]))
        self.account.holds(match, told == expected, f"lie both ways: expected {sorted(expected)}")

    def strip(self, match: Any) -> None:
        high = value_of(match["high"])
        strip = Strip(match, int(match["n"]), high, match["high"])
        self.account.holds(match, (strip.times > 1) == ("from each" in match[0]), "one strip, or more?")
        places = match["places"].strip()
        late = LATE.search(places)
        places = places[:late.start()] if late else places
        free = FREE.search(places)
        places = places[:free.start()] if free else places
        strip.free = free
        for item in places.split("; "):
            self.lay(match, strip, item)
        self.late(match, strip, late)
        self.strips.append(strip)

    def late(self, match: Any, strip: Strip, late: Any) -> None:
        """Parts of a border on a strip with other pieces are left whole."""
        borders = {name for name in strip.names
                   if number_of(name) in self.facts.pieces and self.facts.pieces[number_of(name)].late}
        expected = sorted(borders) if borders and borders != set(strip.names) else []
        told = sorted(set(re.findall(r"\[\d+\]", late["these"]))) if late else []
        self.account.holds(match, told == expected, f"{told} are left whole, expected {expected}")

    def stubs(self, start: int, end: int) -> None:
        """What is joined with a piece so short that its seam lies by a corner."""
        told: "list[str]" = []
        hand = 4 * INCH if self.ruler.units == "in" else 100 * MM
        shortest: "dict[str, Fraction]" = {}
        for strip in self.strips:
            for name, _, long in strip.long:
                shortest[name] = min(long, shortest.get(name, long))

        def stub(match: Any) -> None:
            name = f"[{match['p']}]"
            told.append(name)
            self.account.holds(match, value_of(match["a"]) == shortest.get(name), f"it is {shortest.get(name)} ticks")
            piece = self.piece_called(match, name)
            if piece:
                self.account.same(match, "b", self.ruler.at_least(piece.long()))
            self.longer(match, name, shortest.get(name, hand), hand)
        self.account.take("[<p:n>] is joined with a piece only <a:L> long{, its seam close to a corner: {<free:L> of "
                          "another strip as wide are free: cut that piece from there, longer,|where cloth is left, cut "
                          "that piece longer} and the one that it is joined to as much shorter, so that both are "
                          "nearer equal|}. On cloth usable over at least <b:L> it is cut in one, without a join.",
                          stub, start, end)
        expected = sorted(name for name, long in shortest.items() if name.startswith("[") and long < hand)
        if sorted(told) != expected:
            self.account.fault(f"{sorted(told)} are said to be joined with a short piece, expected {expected}", "",
                               start)

    def longer(self, match: Any, name: str, long: Fraction, hand: Fraction) -> None:
        """From where a piece so short may be cut longer: its own strip, which says so itself, or one as high."""
        strip = next((one for one in self.strips if (name, long) in [(word, size) for word, _, size in one.long]), None)
        if strip is None:
            return
        most = max(self.cloth.usable - one.used for one in self.strips if one.high == strip.high)
        told = self.cloth.usable - strip.used < hand
        self.account.holds(match, ("its seam close" in match[0]) == told, "may it be left longer where it lies?")
        self.account.holds(match, (match["free"] is not None) == (told and most >= hand), "may it lie elsewhere?")
        self.account.same(match, "free", self.ruler.at_most(most))

    def measure_strips(self) -> None:
        """Lengths that are told to the nearest mark are worked out from what they are joined to."""
        for strip in self.strips:
            self.rough = False
            for name, count, long in strip.long:
                strip.used += count * self.exactly(name, long)
            self.account.holds(strip.match, strip.used <= self.cloth.usable, "this is more than the cloth is wide")
            self.free(strip.match, strip, strip.free, self.cloth.usable - strip.used)

    def exactly(self, name: str, long: Fraction) -> Fraction:
        """Of pieces to be joined the last ones: what is left when whole widths are taken off."""
        if long == self.cloth.usable:
            return long
        laid = [(count * strip.times, other) for strip in self.strips for word, count, other in strip.long
                if word == name]
        parts = [other for _, other in laid if other != self.cloth.usable]
        if len(set(parts)) > 1:
            self.rough = self.rough or long % self.ruler.finer != 0 or not self.is_exact(name)
            return long
        count = sum(times for times, _ in laid)
        last = sum(times for times, other in laid if other != self.cloth.usable)
        exact = (self.joined_length(name, count) - (count - last) * self.cloth.usable) / last
        return exact if close(exact, long, self.facts) else long

    def is_exact(self, name: str) -> bool:
        """Whether what is joined has a length that a ruler shows."""
        return self.ruler.exact(self.joined_length(name, 1))

    def joined_length(self, name: str, count: int) -> Fraction:
        """All pieces of one name, with the seams that join them."""
        if name == "binding":
            return binding_length(self.facts, count)
        if name == "sleeve":
            sleeves, long, _, _ = sleeve(self.facts)
            return sleeves * long + (count - sleeves) * 2 * self.quilt.allowance
        piece = self.facts.pieces[number_of(name)]
        whole = sum(times for times, long in self.laid[name] if not long)
        return (piece.count - whole) * piece.long() + (count - piece.count + whole) * 2 * self.quilt.allowance

    def free(self, match: Any, strip: Strip, free: Any, room: Fraction) -> None:
        expected = sorted(set(strip.short)) if not self.ruler.nothing(room) else []
        told = sorted(re.findall(r"\[\d+\]", free["these"] or free["those"])) if free else []
        self.account.holds(match, told == expected, f"free is told for {told}, expected for {expected}")
        if free and told:
            said = free["more"] or free["only"]
            enough = room >= (4 * INCH if self.ruler.units == "in" else 100 * MM)
            near = self.rough and close(value_of(said), room, self.facts, 2 + len(strip.long))
            self.account.holds(match, near or said == self.ruler.at_most(room), f"free are {self.ruler.at_most(room)}")
            self.account.holds(match, enough == (free["more"] is not None), "only, or enough?")

    def lay(self, match: Any, strip: Strip, item: str) -> None:
        trimmed = TRIMMED.search(item)
        item = item[:trimmed.start()] if trimmed else item
        turned = TURNED.search(item)
        item = item[:turned.start()] if turned else item
        told = LAID.fullmatch(item)
        self.account.holds(match, told is not None, f"not to be understood: {item}")
        if not told:
            return
        high = value_of(trimmed["to"]) if trimmed else strip.high
        if trimmed:
            self.account.holds(match, trimmed["from"] == strip.said, "it is trimmed from another height")
            self.account.holds(match, value_of(trimmed["to"]) < strip.high, "nothing is to be trimmed")
        if told["long"]:
            self.lay_long(match, strip, told, high)
        elif told["p"]:
            self.lay_piece(match, strip, told, high, turned)
        else:
            width, cut_high = self.sleeve_size()
            self.account.holds(match, high == cut_high, "a sleeve of another height")
            self.sleeve.append((int(told["m"]) * strip.times, width))
            strip.names["sleeve"] += int(told["m"])
            strip.used += int(told["m"]) * width

    def lay_long(self, match: Any, strip: Strip, told: Any, high: Fraction) -> None:
        count = int(told["many"].split()[0]) if told["many"] else 1
        long, name = value_of(told["long"]), told["name"]
        strip.names[name] += count
        if name in ("binding", "sleeve"):
            wanted = self.binding_width() if name == "binding" else self.sleeve_size()[1]
            self.account.holds(match, high == wanted, f"{name} is {self.ruler.measured(wanted)} wide")
            (self.binding if name == "binding" else self.sleeve).append((count * strip.times, long))
            strip.long.append((name, count, long))
            return
        piece = self.piece_called(match, name)
        if piece is None:
            return
        strip.long.append((name, count, long))
        self.account.holds(match, close(high, piece.short(), self.facts), f"{name} is not so high")
        if piece.sort == "strip":
            strip.whole = True
            self.account.holds(match, long == self.cloth.usable and count == 1, "a strip for a set is as long as the "
                               "cloth is wide")
        elif long < self.cloth.usable:
            strip.short.append(name)
        self.laid[name].append((count * strip.times, long))

    def lay_piece(self, match: Any, strip: Strip, told: Any, high: Fraction, turned: Any) -> None:
        name, count = told["p"], int(told["n"])
        piece = self.piece_called(match, name)
        if piece is None:
            return
        strip.names[name] += count
        self.laid[name].append((count * strip.times, Fraction(0)))
        if piece.sort == "diamonds":
            strip.used += piece.exact[1] + (count - 1) * piece.exact[2]
            self.account.holds(match, high == piece.exact[0], f"{name} is not so high")
            return
        sides = piece.exact
        ways = [(a, b) for a, b in (sides, sides[::-1]) if close(b, high, self.facts)]
        self.account.holds(match, bool(ways), f"{name} is not so high")
        if ways:
            width = value_of(turned["at"]) if turned else ways[0][0]
            self.account.holds(match, any(close(width, way[0], self.facts) for way in ways), f"{name} is not so wide")
            strip.used += count * ways[0][0]
            if sides[0] != sides[1]:
                strip.turned.append((name, turned is not None))
        self.account.holds(match, told["sort"] == "of" or sides[0] == sides[1], f"{name} is no square")

    def piece_called(self, match: Any, name: str) -> "Piece | None":
        piece = self.facts.pieces.get(number_of(name))
        fits = piece is not None and piece.fabric == self.cloth.key
        self.account.holds(match, fits, f"{name} is no piece of {self.cloth.name}")
        return piece if fits else None

    def binding_width(self) -> Fraction:
        return self.quilt.length(self.quilt.file.get("binding", {}), "cut width", "2 1/2 in", "6 cm")

    def sleeve_size(self) -> "tuple[Fraction, Fraction]":
        size = sleeve(self.facts)
        return size[1], size[2]

    # ---- all of it

    def check(self, start: int) -> None:
        account, cloth = self.account, self.cloth
        for piece in self.facts.pieces.values():
            if piece.fabric == cloth.key:
                self.check_piece(piece, start)
        if cloth.strip:
            self.facts.strips_taken[cloth.key] = sum(strip.times for strip in self.strips)
            return
        needed = sum((strip.times * strip.high for strip in self.strips), self.straightening)
        self.facts.needed[cloth.key] = needed
        if len(self.proofs) != 1:
            account.fault(f"{cloth.name}: what is needed is told {len(self.proofs)} times", "", start)
            return
        proof = self.proofs[0]
        account.same(proof, "need", self.ruler.at_least(needed))
        self.check_bound(proof, needed)
        self.facts.widths.append((account.passage, proof, cloth, self.strips))
        self.left_over(start)

    def check_bound(self, proof: Any, needed: Fraction) -> None:
        """No plan can do with less than the area of its pieces, and none is said to."""
        area = sum((strip.times * count * self.facts.pieces[number_of(name)].area() for strip in self.strips
                    for name, count in strip.names.items() if number_of(name) in self.facts.pieces), Fraction(0))
        if proof["least"]:
            least = value_of(proof["least"])
            self.account.holds(proof, area / self.cloth.usable <= least <= needed, "such a bound cannot be")

    def check_piece(self, piece: Piece, start: int) -> None:
        name = f"[{piece.number}]"
        laid = self.laid[name]
        count = sum(times for times, _ in laid)
        lengths = sum((times * long for times, long in laid), Fraction(0))
        if piece.sort == "strip" or not lengths:
            if count != piece.count:
                self.account.fault(f"{name}: {count} are laid out, the list has {piece.count}", "", start)
            return
        whole = sum(times for times, long in laid if not long)
        parts = count - whole
        seams = parts - (piece.count - whole)
        wanted = (piece.count - whole) * piece.long() + seams * 2 * self.quilt.allowance
        if not close(lengths, wanted, self.facts, parts) or seams < 0:
            self.account.fault(f"{name}: {parts} pieces of {self.ruler.measured(lengths)} in all make no "
                               f"{piece.count - whole} of {self.ruler.measured(piece.long())}: expected "
                               f"{self.ruler.measured(wanted)}", "", start)

    def left_over(self, start: int) -> None:
        least = 2 * INCH if self.ruler.units == "in" else 50 * MM
        found: "Counter[tuple[Fraction, Fraction]]" = Counter()
        for strip in self.strips:
            room = self.cloth.usable - strip.used
            if room >= least and strip.high >= least:
                found[room, strip.high] += strip.times
        told, self.left_told = 0, set()
        for match in self.left:
            text = match["list"].removesuffix(", and smaller ones")
            for item in text.split(", "):
                one = LEFT.fullmatch(item)
                self.account.holds(match, one is not None, f"not to be understood: {item}")
                if one:
                    self.left_told.add(one["size"])
                    sides = sides_of(one["size"])
                    fits = [count for size, count in found.items()
                            if all(close(a, b, self.facts, 2) if "about" in match[0] else a == b
                                   for a, b in zip(size, sides))]
                    self.account.holds(match, int(one["n"]) in fits, f"left over is not {item}: expected {fits}")
                    told += 1
            self.account.holds(match, told == len(found) or told == MOST_LEFT and "smaller" in match[0],
                               f"{told} sizes are told, expected {len(found)}")
        if found and not self.left:
            self.account.fault(f"{self.cloth.name}: left over is not told", "", start)


POINT = r"«(?= ?\x01| • | (?:Fabric|Cloth|Material) F\d+, |\Z| ?\Z)»"


def number_of(name: str) -> int:
    return int(name.strip("[]")) if name.startswith("[") else 0


ENDS_LEAST = 10 * INCH  # for corners and ends


def binding_wanted(facts: Facts) -> Fraction:
    """For one quilt: round it and the extra; a little less where a strip would be cut for less than its join takes,
    unless the file says how much."""
    quilt = facts.quilt
    value = quilt.file["binding"]
    round_it = 2 * (quilt.top.width + quilt.top.height)
    wanted = round_it + quilt.length(value, "extra", "12 in", "30 cm")
    strip, loss = facts.by_key[value["fabric"]].usable, join_loss(facts)
    fewer = -(-(wanted - loss) // (strip - loss)) - 1
    others = fewer * strip - (fewer - 1) * loss
    asked = "extra" in value
    return others if not asked and fewer > 0 and wanted - others < loss and others - round_it >= ENDS_LEAST else wanted


def join_loss(facts: Facts) -> Fraction:
    value = facts.quilt.file["binding"]
    width = facts.quilt.length(value, "cut width", "2 1/2 in", "6 cm")
    return width if value.get("join", "diagonal") == "diagonal" else 2 * facts.quilt.allowance


def binding_length(facts: Facts, strips: int) -> Fraction:
    """Of so many strips together: for all quilts, and what the joins take."""
    return facts.quilt.tops * binding_wanted(facts) + (strips - facts.quilt.tops) * join_loss(facts)


class Picture:
    """The drawing of the cloth: from strip to strip, the pieces on each, and what is left."""

    def __init__(self, layout: Layout, start: int, end: int) -> None:
        self.layout, self.start, self.end = layout, start, end
        self.account, self.ruler = layout.account, layout.ruler

    def read(self) -> None:
        account = self.account
        for length, words in ((self.layout.straightening, "straightened"), (self.layout.cloth.usable, "usable width")):
            account.take(f"{self.ruler.measured(length)} {words}", None, self.start, self.end)
        account.take(f"«(?<!\\S)»{self.layout.cloth.letter}«(?!\\S)»", None, self.start, self.end)
        place, number = self.start, 0
        self.drawn = [Counter() for _ in self.layout.strips]
        for match in list(re.finditer(rf"cut ({LENGTH})(?: x (\d+)(?! ?[/\d]))?(?! x)", account.rest[:self.end])):
            if match.start() < self.start:
                continue
            if number < len(self.layout.strips):
                strip = self.layout.strips[number]
                expected = strip.said + (f" x {strip.times}" if strip.times > 1 else "")
                if match[0] != f"cut {expected}":
                    account.fault(f"the drawing has {match[0]}, expected cut {expected}", "", match.start())
                self.row(number, place, match.start())
            else:
                account.fault("the drawing has more strips than the list", match[0], match.start())
            account.take("«" + re.escape(match[0]) + "»", None, match.start(), match.end())
            place, number = match.end(), number + 1
        if number:
            self.row(number, place, self.end)
        if number not in (0, len(self.layout.strips)):
            account.fault(f"the drawing has {number} strips, expected {len(self.layout.strips)}", "", self.start)

    def row(self, number: int, start: int, end: int) -> None:
        """From the last strip's height on: what belongs to this strip; or is led out from the one above it."""
        account, strips = self.account, self.layout.strips
        near = [at for at in (number - 1, number) if 0 <= at < len(strips)]

        def left(match: Any) -> None:
            rooms = [(self.layout.cloth.usable - strips[at].used, strips[at].high) for at in near]
            sides = sides_of(match["size"])
            account.holds(match, any(close(sides[0], room, self.layout.facts, 3) and sides[1] == high
                                     for room, high in rooms), f"left over is {self.ruler.by(*rooms[-1])}")
            least = 2 * INCH if self.ruler.units == "in" else 50 * MM
            if len(self.layout.left_told) < MOST_LEFT and min(sides) >= least:
                account.holds(match, match["size"] in self.layout.left_told, "the list has no such piece left over")

        def piece(match: Any) -> None:
            name = f"[{match['p']}]"
            fits = [at for at in near if self.drawn[at][name] < strips[at].names[name] and
                    self.is_so_large(strips[at], name, match["size"], match["long"], match["high"], match["join"])]
            account.holds(match, bool(fits), "no such piece is on this strip, or it has another size")
            if fits:
                self.drawn[fits[0]][name] += 1

        account.take("left <size:S>", left, start, end)
        account.take("[<p:n>]{ «(?P<join>to join)»|}{ <size:S>| <long:L>«(?! x)»| <high:L> high|}", piece, start,
                     end)

    def is_so_large(self, strip: Strip, name: str, size: "str | None", long: "str | None", high: "str | None",
                    join: "str | None") -> bool:
        """Where it is told: what is to be joined as it lies, others as the list has them."""
        piece = self.layout.facts.pieces.get(number_of(name))
        if piece is None:
            return False
        lying = [(one, piece.short()) for other, _, one in strip.long if other == name]
        if bool(join) != bool(lying) and (join or size or long):
            return False
        ways = lying or [piece.exact[:2], piece.exact[1::-1]]
        told = sides_of(size) if size else (value_of(long) if long else None, value_of(high) if high else None)
        return any(all(a is None or close(a, b, self.layout.facts) for a, b in zip(told, way)) for way in ways)
