# SPDX-License-Identifier: MIT
"""Cutting plans of few pieces by dealing them out in every way, and proofs of bounds followed in fractions.

A request here is a dict of `pieces` and `stock` (lists of dicts) and the members and flags of the plan's spec. Counts
of sizes go together as tuples. A thing is a strip, a panel or a piece of stock; the least of all plans is that of
dealing all pieces out to things.
"""

from collections import Counter, namedtuple
from fractions import Fraction
from functools import lru_cache
from itertools import product

PIECE, LENGTHWISE, JOINED, SLOPED = 1, 2, 3, 4
STRIP, PANEL, SLIT, STOCK, WITHIN = 1, 2, 3, 4, 5
NO_DIRECTION = 1

# lies: (width taken, height) of each way in which it can lie
Size = namedtuple("Size", "lies run_in slit level")


# ---- what is wanted -------------------------------------------------------------------------------------------------

def flag(request, name):
    return bool(request.get(name))


def squaring_share(request):
    return -(-request["resquare_loss"] // request["resquare_every"]) if request.get("resquare_every") else 0


def bolt_room(request):
    """Folded cloth is squared at its selvages, half the loss in each layer; at the fold nothing is lost."""
    return (request["usable_width"] - request.get("end_loss", 0)) // (2 if flag(request, "folded") else 1)


def may_turn(request, row):
    return bool(row.get("may_turn")) and request.get("print", NO_DIRECTION) == NO_DIRECTION


def size_of(request, row, width):
    share = 0 if row["kind"] == JOINED else squaring_share(request)
    lies = {(width + share, row["cut_length"])}
    if may_turn(request, row):
        lies.add((row["cut_length"] + share, width))
    slit = row["kind"] == LENGTHWISE and not request.get("stock") and not flag(request, "no_panels")
    return Size(frozenset(lies), row.get("run_in", 0), slit, row["kind"] == SLOPED or flag(request, "one_height"))


def strips_joined(request, row):
    """The lengths of the strips that one long strip is pieced from."""
    room, each = bolt_room(request), bolt_room(request) - row.get("join_loss", 0)
    lengths, left = [], row["cut_width"]
    while left > room:
        lengths.append(room)
        left -= each
    return lengths + [left]


def strips_of(request, row):
    """All strips of a row, by their lengths; `parts` are those that a plan has, see as_cut()."""
    return row["parts"] if "parts" in row else strips_joined(request, row) * row["count"]


def wanted(request):
    """{size: pieces, or blanks of two layers}"""
    found, spare = {}, {}
    for row in request["pieces"]:
        widths = strips_of(request, row) if row["kind"] == JOINED else [row["cut_width"]] * row["count"]
        for width, count in Counter(widths).items():
            size = size_of(request, row, width)
            found[size] = found.get(size, 0) + count
            if row["kind"] != JOINED:
                spare[size] = request.get("spare_pieces", 0)
    layers = 2 if flag(request, "folded") else 1
    return {size: -(-(count + spare.get(size, 0)) // layers) for size, count in found.items()}


# ---- what fits ------------------------------------------------------------------------------------------------------

def fits(size, along, height):
    return along == height if size.level else along <= height


def narrowest(size, height):
    return min((across for across, along in size.lies if fits(size, along, height)), default=None)


def heights_of(sizes, cloths):
    """Of strips: those of pieces as they fit into some cloth, but not of those that are only slit."""
    return sorted({along for size in sizes if not size.slit for across, along in size.lies
                   if any(size.run_in + across <= width and along <= length for width, length in cloths)})


def may_turn_stock(request):
    free = request.get("print", NO_DIRECTION) == NO_DIRECTION and not flag(request, "first_cut_across")
    return free and all(row.get("may_turn") or row["kind"] in (JOINED, SLOPED) or
                        row["cut_width"] == row["cut_length"] for row in request["pieces"])


def sheets_of(request, row):
    """Room across and along of a piece of stock, for each way of first cuts."""
    length, loss = row["length"] - request.get("straightening", 0), request.get("end_loss", 0)
    return [(row["width"] - loss, length)] + [(length - loss, row["width"])] * may_turn_stock(request)


def clothes(request):
    if not request.get("stock"):
        return [(bolt_room(request), float("inf"))]
    return [cloth for row in request["stock"] for cloth in sheets_of(request, row)]


class Cloth:
    """What things hold of these sizes; counts are tuples in their order."""

    def __init__(self, request):
        self.counts = tuple(wanted(request).values())
        self.sizes = list(wanted(request))
        self.one_size, self.stacked = flag(request, "own_strips"), flag(request, "stacked")
        self.heights = heights_of(self.sizes, clothes(request))
        self.behind = lru_cache(None)(self.behind)
        self.strip_height = lru_cache(None)(self.strip_height)
        self.stack_width = lru_cache(None)(self.stack_width)

    def parts(self, counts):
        """All that may be taken from these, something of the first that is there among it."""
        first = next(i for i, count in enumerate(counts) if count)
        ranges = [range(1 if i == first else 0, count + 1) for i, count in enumerate(counts)]
        return product(*ranges)

    def in_stacks(self, size):
        return self.stacked and not size.run_in and not size.level

    def stack_width(self, counts, height):
        """The least width of blanks with these, stacked."""
        if not any(counts):
            return 0
        first = next(i for i, count in enumerate(counts) if count)
        best = None
        for part in self.parts(counts):
            for width in {across for across, _ in self.sizes[first].lies}:
                high = 0
                for size, count in zip(self.sizes, part):
                    lowest = min((along for across, along in size.lies if across == width), default=height + 1)
                    high += count * lowest
                if high <= height:
                    rest = self.stack_width(tuple(a - b for a, b in zip(counts, part)), height)
                    if rest is not None and (best is None or width + rest < best):
                        best = width + rest
        return best

    def taken(self, counts, height):
        """What these take of a strip at least, or None."""
        if self.one_size and sum(map(bool, counts)) > 1:
            return None
        sum_of = 0
        for size, count in zip(self.sizes, counts):
            if count and not self.in_stacks(size):
                across = narrowest(size, height)
                if across is None:
                    return None
                sum_of += size.run_in + count * across
        stacked = self.stack_width(tuple(count if self.in_stacks(size) else 0
                                         for size, count in zip(self.sizes, counts)), height)
        return None if stacked is None else sum_of + stacked

    def strip_height(self, counts, room):
        for height in self.heights:
            taken = self.taken(counts, height)
            if taken is not None and taken <= room:
                return height
        return None

    def behind(self, counts, room):
        """The least height of strips with these, one behind the other, none of them slit; or None."""
        if not any(counts):
            return 0
        sums = []
        for part in self.parts(counts):
            height = self.strip_height(part, room)
            rest = self.behind(tuple(a - b for a, b in zip(counts, part)), room) if height is not None else None
            if rest is not None:
                sums.append(height + rest)
        return min(sums, default=None)

    def panel_length(self, counts, room):
        """The length of the shortest panel with these, or None."""
        slits = [(size, count) for size, count in zip(self.sizes, counts) if size.slit and count]
        rest = tuple(0 if size.slit else count for size, count in zip(self.sizes, counts))
        if not slits:
            return None
        lengths = sorted({along for size in self.sizes if size.slit for _, along in size.lies})
        for length in lengths:
            across = [narrowest(size, length) for size, _ in slits]
            if None in across:
                continue
            left = room - sum(width * count for width, (_, count) in zip(across, slits))
            behind = self.behind(rest, left) if left >= 0 else None
            if behind is not None and behind <= length:
                return length
        return None


def things(request, cloth):
    """Functions from counts to the cost of one thing that holds them, or None, and how many there are of each."""
    if not request.get("stock"):
        def bolt(counts):
            room = bolt_room(request)
            both = [cloth.strip_height(counts, room), cloth.panel_length(counts, room)]
            return min((cost for cost in both if cost is not None), default=None)
        return [(bolt, sum(cloth.counts))]

    def sheet(row):
        def cost(counts):
            behind = [(cloth.behind(counts, across), along) for across, along in sheets_of(request, row)]
            return row["cost"] if any(high is not None and high <= along for high, along in behind) else None
        return cost
    return [(sheet(row), row["count"]) for row in request["stock"]]


def least(request):
    """The least cost of all plans, or None where there is none."""
    cloth = Cloth(request)
    kinds = [(lru_cache(None)(cost), count) for cost, count in things(request, cloth)]

    @lru_cache(None)
    def deal(counts, there_are):
        if not any(counts):
            return 0
        sums = []
        for part in cloth.parts(counts):
            for kind, (cost, _) in enumerate(kinds):
                price = cost(part) if there_are[kind] else None
                fewer = tuple(n - (k == kind) for k, n in enumerate(there_are))
                rest = deal(tuple(a - b for a, b in zip(counts, part)), fewer) if price is not None else None
                if rest is not None:
                    sums.append(price + rest)
        return min(sums, default=None)
    most = sum(cloth.counts)
    return deal(cloth.counts, tuple(min(count, most) for _, count in kinds))


# ---- a plan ---------------------------------------------------------------------------------------------------------

def copies(strips, strip):
    times = strip["times"]
    return times * (copies(strips, strips[strip["holder"]]) if strip["holder"] >= 0 else 1)


def overlap(a, b):
    return all(a[0][k] < b[1][k] and b[0][k] < a[1][k] for k in (0, 1))


def box(place):
    across = (place["count"] - 1) * place["pitch"] + place["width"]
    return (place["x"], place["y"]), (place["x"] + across, place["y"] + place["height"])


def lie_on_each_other(request, one, other):
    """Sloped pieces lean over what the run-in takes once: alike ones lie in each other's boxes by so much."""
    rows = [request["pieces"][place["piece"]] for place in (one, other)]
    alike = all(row["kind"] == SLOPED and row.get("run_in") == rows[0].get("run_in") for row in rows)
    lean = rows[0].get("run_in", 0) if alike else 0
    boxes = [((low[0] + lean, low[1]), high) for low, high in map(box, (one, other))]
    return overlap(*boxes)


def lies_rightly(request, row, place):
    """As wide and as high as the row says, the way it lies."""
    if row["kind"] == JOINED:
        return place["height"] == row["cut_length"] and not place["turned"] and place["width"] in \
            strips_of(request, row)
    width = row["cut_width"] + row.get("run_in", 0)
    sides = (row["cut_length"], width) if place["turned"] else (width, row["cut_length"])
    return (place["width"], place["height"]) == sides and (not place["turned"] or may_turn(request, row))


def strip_faults(request, strips, places):
    for number, strip in enumerate(strips):
        held = [place for place in places if place["strip"] == number]
        is_squared = strip["kind"] == STRIP and not flag(request, "folded")
        room = strip["width"] - is_squared * -(-request.get("end_loss", 0) // 2)
        for k, place in enumerate(held):
            low, high = box(place)
            if low[0] < 0 or low[1] < 0 or high[0] > room or high[1] > strip["height"]:
                yield f"place {k} of strip {number} is not in it"
            if any(lie_on_each_other(request, other, place) for other in held[:k]):
                yield f"place {k} of strip {number} lies on another"
        if flag(request, "own_strips") and strip["kind"] in (STRIP, WITHIN):
            alike = {size_of(request, row, row["cut_width"]) for place in places if place["strip"] == number
                     for row in [request["pieces"][place["piece"]]] if row["kind"] != JOINED}
            if len(alike) > 1:
                yield f"strip {number} holds {len(alike)} sizes"


def holder_faults(strips):
    for number, strip in enumerate(strips):
        if strip["holder"] < 0:
            continue
        holder = strips[strip["holder"]]
        if strip["x"] < 0 or strip["y"] < 0 or strip["x"] + strip["width"] > holder["width"] or \
                strip["y"] + strip["times"] * strip["height"] > holder["height"]:
            yield f"strip {number} is not in its holder"
        for other in strips[:number]:
            if other["holder"] == strip["holder"] and overlap(
                    ((strip["x"], strip["y"]),
                     (strip["x"] + strip["width"], strip["y"] + strip["times"] * strip["height"])),
                    ((other["x"], other["y"]),
                     (other["x"] + other["width"], other["y"] + other["times"] * other["height"]))):
                yield f"strip {number} lies on another"


def bolt_faults(strips):
    at = 0
    for number, strip in enumerate(strips):
        if strip["kind"] in (STRIP, PANEL):
            if strip["y"] != at:
                yield f"strip {number} does not follow the one before it"
            at = strip["y"] + strip["times"] * strip["height"]


def piece_faults(request, strips, places):
    """Of folded cloth a blank may give a piece each to two rows that want the same; so these are counted together."""
    layers = 2 if flag(request, "folded") else 1
    missing = Counter()
    for number, row in enumerate(request["pieces"]):
        alike = size_of(request, row, row["cut_width"]) if layers > 1 else number
        missing[alike] += len(strips_of(request, row)) if row["kind"] == JOINED else row["count"]
        for place in places:
            if place["piece"] == number:
                missing[alike] -= place["count"] * copies(strips, strips[place["strip"]]) * layers
                if not lies_rightly(request, row, place):
                    yield f"row {number} lies as it may not"
    yield from (f"{count} of {alike} are missing" for alike, count in missing.items() if count > 0)


def as_cut(request, strips, places):
    """The request with the strips that joined pieces have in a plan, where their lengths are the plan's to choose."""
    def cut(number, row):
        if row["kind"] != JOINED or row["count"] != 1 or not row.get("least_part"):
            return row
        return dict(row, parts=[place["width"] for place in places if place["piece"] == number
                                for _ in range(place["count"] * copies(strips, strips[place["strip"]]))])
    return dict(request, pieces=[cut(number, row) for number, row in enumerate(request["pieces"])])


def joined_faults(request):
    """Strips together give the length; they are whole ones and one shorter one, or long enough."""
    for number, row in enumerate(request["pieces"]):
        parts = row.get("parts", [])
        plain = sorted(parts) == sorted(strips_joined(request, row)) if parts else True
        if parts and sum(parts) - (len(parts) - 1) * row.get("join_loss", 0) != row["cut_width"]:
            yield f"strips of row {number} do not give its length"
        if not plain and min(parts) < row["least_part"]:
            yield f"a strip of row {number} is too short"


def cost_of(request, strips):
    if request.get("stock"):
        return sum(strip["times"] * request["stock"][strip["stock"]]["cost"] for strip in strips
                   if strip["kind"] == STOCK)
    return sum(strip["times"] * strip["height"] for strip in strips if strip["kind"] in (STRIP, PANEL))


def plan_faults(request, strips, places):
    """What is wrong with a plan, in words."""
    yield from strip_faults(request, strips, places)
    yield from holder_faults(strips)
    yield from bolt_faults(strips)
    yield from piece_faults(request, strips, places)
    yield from joined_faults(request)
    for number, row in enumerate(request.get("stock") or []):
        if row["count"] < sum(strip["times"] for strip in strips
                              if strip["kind"] == STOCK and strip["stock"] == number):
            yield f"more of stock {number} than there is"


# ---- a proof --------------------------------------------------------------------------------------------------------

def proof_size(row):
    lies = {(row["taken"], row["height"])}
    if row["may_turn"]:
        lies.add((row["turned_taken"], row["turned_height"]))
    return Size(frozenset(lies), row["run_in"], bool(row["slit"]), bool(row["level"]))


class Proof:
    """The rows of a plan's sizes, ways, cases and worths (by case: rows and scale)."""

    def __init__(self, request, sizes, ways, cases, worths, cost):
        self.request, self.ways, self.cases, self.worths, self.cost = request, ways, cases, worths, cost
        self.sizes = [proof_size(row) for row in sizes]
        self.counts = [row["count"] for row in sizes]
        self.heights = heights_of(self.sizes, [(way["width"], way["height"]) for way in ways])
        self.sums = self.sums_of_costs()

    def sums_of_costs(self):
        reached, fresh = {0}, [0]
        while fresh:
            fresh = [s for s in {a + way["cost"] for a in fresh for way in self.ways} if s <= self.cost and
                     s not in reached]
            reached.update(fresh)
        return sorted(reached)

    def path(self, number):
        """The cases from one up to the whole, which has no condition."""
        while self.cases[number]["parent"] >= 0:
            yield number
            number = self.cases[number]["parent"]

    # -- what a thing may be worth

    def offers(self, worth, height, within):
        """[(taken, run-in, worth, most)] of what lies side by side in a strip; a stack counts as one."""
        found, widths = [], set()
        for i, size in enumerate(self.sizes):
            if worth[i] <= 0 or (within and size.slit):
                continue
            if self.request.get("stacked") and not size.run_in and not size.level:
                widths |= {across for across, along in size.lies if along <= height}
            elif narrowest(size, height) is not None:
                found.append((narrowest(size, height), size.run_in, worth[i], self.counts[i]))
        for width in widths:
            inside = [(along, 0, worth[i], self.counts[i]) for i, size in enumerate(self.sizes)
                      for across, along in size.lies if across == width and along <= height and worth[i] > 0 and
                      not (within and size.slit) and not size.run_in and not size.level]
            found.append((width, 0, best_filling(inside, height), sum(most for *_, most in inside)))
        return found

    def most_in_strip(self, worth, height, room, within):
        if not self.request.get("own_strips"):
            return best_filling(self.offers(worth, height, within), room)
        alone = [[w if k == i else 0 for k, w in enumerate(worth)] for i in range(len(worth))]
        return max((best_filling(self.offers(one, height, within), room) for one in alone), default=0)

    def most_in_way(self, way, worth):
        if way["kind"] == STRIP:
            return self.most_in_strip(worth, way["height"], way["width"], False)
        slits = [(narrowest(size, way["height"]), 0, worth[i], self.counts[i]) for i, size in enumerate(self.sizes)
                 if way["kind"] == PANEL and size.slit and worth[i] > 0 and
                 narrowest(size, way["height"]) is not None]
        best = 0
        for taken, value in fillings(slits, way["width"]).items():
            strips = [(height, 0, self.most_in_strip(worth, height, way["width"] - taken, True), way["height"])
                      for height in self.heights if height <= way["height"]]
            best = max(best, value + best_filling([row for row in strips if row[2] > 0], way["height"]))
        return best

    # -- what worths prove

    def bound(self, number):
        """No plan of the case costs less than this, as a fraction."""
        rows, scale = self.worths[number]
        of_size = {row["plan_size"]: row["worth"] for row in rows if row["plan_size"] >= 0}
        of_case = {row["of_case"]: row["worth"] for row in rows if row["plan_size"] < 0 and row["of_case"] >= 0}
        of_stock = {row["stock"]: row["worth"] for row in rows if row["plan_size"] < 0 and row["of_case"] < 0}
        assert all(worth >= 0 for worth in of_size.values()) and all(worth <= 0 for worth in of_stock.values())
        assert set(of_case) <= set(self.path(number))
        assert all(worth == 0 or (worth > 0) == bool(self.cases[case]["at_least"]) for case, worth in of_case.items())
        total = sum(of_size.get(i, 0) * count for i, count in enumerate(self.counts))
        total += sum(worth * self.cases[case]["wanted"] for case, worth in of_case.items())
        total += sum(worth * self.request["stock"][row]["count"] for row, worth in of_stock.items())
        rho = Fraction(0)
        for at, way in enumerate(self.ways):
            worth = [of_size.get(i, 0) for i in range(len(self.sizes))]
            itself = of_stock.get(way["stock"], 0) if way["stock"] >= 0 else 0
            for case, more in of_case.items():
                row = self.cases[case]
                if row["first_way"] <= at <= row["last_way"]:
                    if row["plan_size"] >= 0:
                        worth[row["plan_size"]] += more
                    else:
                        itself += more
            rho = max(rho, Fraction(self.most_in_way(way, worth) + itself, way["cost"] * scale) - 1)
        return Fraction(total, scale) - rho * (self.cost - 1)

    def proves(self, number):
        """The bound that a case says is proved: sums of costs below it, and below the plan's, are below the bound."""
        least = min(self.cases[number]["least"], self.cost)
        below = max((s for s in self.sums if s < least), default=None)
        return below is None or below < self.bound(number)

    def is_split(self, number):
        """In two, which leave nothing out."""
        split = self.cases[number]["split"]
        first, second = self.cases[split:split + 2]
        most, fewest = (first, second) if second["at_least"] else (second, first)
        alike = ("first_way", "last_way", "plan_size")
        return (first["parent"] == second["parent"] == number and not most["at_least"] and fewest["at_least"] and
                fewest["wanted"] == most["wanted"] + 1 and all(first[name] == second[name] for name in alike))

    def is_packed_full(self, number):
        """What the case asks for of one way does not fit into the strips of it that it allows."""
        at = self.cases[number]["packed_way"]
        rows = [self.cases[case] for case in self.path(number)]
        rows = [row for row in rows if row["first_way"] == row["last_way"] == at]
        strips = min(row["wanted"] for row in rows if row["plan_size"] < 0 and not row["at_least"])
        wants = [max([row["wanted"] for row in rows if row["plan_size"] == i and row["at_least"]], default=0)
                 for i in range(len(self.sizes))]
        way = self.ways[at]

        @lru_cache(None)
        def fit(counts, left):
            if not any(counts):
                return True
            first = next(i for i, count in enumerate(counts) if count)
            for part in product(*[range(i == first, count + 1) for i, count in enumerate(counts)]) if left else []:
                if self.request.get("own_strips") and sum(map(bool, part)) > 1:
                    continue
                taken = [size.run_in + count * narrowest(size, way["height"]) for size, count in zip(self.sizes, part)
                         if count]
                if sum(taken) <= way["width"] and fit(tuple(a - b for a, b in zip(counts, part)), left - 1):
                    return True
            return False
        if any(count and narrowest(size, way["height"]) is None for size, count in zip(self.sizes, wants)):
            return True
        return not fit(tuple(wants), strips)

    def least(self):
        """The bound that the cases prove together; every one is looked at."""
        open_cases = []
        for number, case in enumerate(self.cases):
            assert (case["parent"] < 0) == (number == 0) and case["parent"] < number
            assert number == 0 or number - self.cases[case["parent"]]["split"] in (0, 1)
            assert case["worths"] in [number, *self.path(number), 0]
            assert self.proves(number) if case["worths"] == number else \
                case["least"] <= self.cases[case["worths"]]["least"]
            if case["split"]:
                assert self.is_split(number)
            elif case["packed_way"] >= 0:
                assert self.is_packed_full(number)
            else:
                open_cases.append(min(case["least"], self.cost))
        return min(open_cases)


def fillings(offers, room):
    """{taken in all: the most that it is worth}"""
    sums = {0: 0}
    for taken, run_in, worth, most in offers:
        for at, value in list(sums.items()):
            for n in range(1, most + 1):
                reached = at + run_in + n * taken
                if reached > room:
                    break
                sums[reached] = max(sums.get(reached, 0), value + n * worth)
    return sums


def best_filling(offers, room):
    return max(fillings(offers, room).values())


