"""Pressing in all, borders, what lies behind and inside, the edge, the bed; what to buy, and the cover.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
from fractions import Fraction
from math import floor, isqrt
from types import SimpleNamespace
from typing import Any

from muslin_model import backing as backings
from muslin_model.finishing import batting as batting_of
from walker import ticks

from .account import Account
from .cutting import Facts, sleeve
from .layout import binding_length, binding_wanted, join_loss
from .ruler import INCH, MM, SIZE
from .sewing import Sewing

PACKAGES = [(width * INCH, length * INCH) for width, length in
            ((34, 45), (45, 60), (60, 60), (72, 90), (81, 96), (90, 108), (120, 120))]
def panels_of(layout: Any) -> str:
    """Lengths of the whole cloth; an insert is cut across it."""
    insert = " and an insert" if layout["layout"] in (7, 8) else ""
    return f"{layout['panels']} panel{'s' if layout['panels'] > 1 else ''}{insert}"


LAYOUTS = ("one panel, its length along the quilt's length", "one panel, its length along the quilt's width",
           "panels side by side, seams along the quilt's length", "panels one below the other, seams along its width",
           "a whole panel in the middle, equal sides, seams along the length",
           "a whole panel in the middle, equal sides, seams along the width",
           "one panel split lengthwise, an insert between its halves, seams along the length",
           "one panel split lengthwise, an insert between its halves, seams along the width")


class Finishing:
    """From the borders on."""

    def __init__(self, account: Account, facts: Facts, sewing: Sewing) -> None:
        self.account, self.facts, self.sewing = account, facts, sewing
        self.quilt, self.ruler = facts.quilt, facts.ruler

    # ---- borders

    def borders(self, passage: Any) -> None:
        account = self.account
        account.open(passage)
        names = self.facts.any_name()

        def row(match: Any) -> None:
            piece = self.facts.pieces.get(int(match["p"]))
            account.holds(match, piece is not None and self.facts.by_key[piece.fabric].name in match[0],
                          "no such piece")
            if piece:
                long, short = piece.long(), piece.short()
                seam = self.quilt.seam
                account.same(match, "fin", self.ruler.by(*(piece.finished or (long - seam, short - seam))))
                account.holds(match, piece.sides in match["uses"], f"it is for {piece.sides}")
                account.same(match, "cut", self.ruler.by(long, short))
                letters = re.findall(r"\(([A-Z]{1,2})\)", match["uses"])
                account.holds(match, [letter for letter in piece.uses if letter in letters] == letters,
                              "for other steps")
        account.take("[<p:n>] " + names + " <uses:w> <fin:S> <cut:S>", row)
        self.border_drawing()
        self.sewing.read()
        account.close()

    def border_drawing(self) -> None:
        """Numbers in the order of sewing, and what each strip is made of."""
        account = self.account
        end = account.rest.find("Borders in the order they are sewn")
        told: "list[int]" = []

        def strips(match: Any) -> None:
            told.extend(int(number) for number in match["these"].split(", "))
            for item in match["list"].split("; "):
                one = re.fullmatch(rf"\[(\d+)\] (?:fabric|cloth|material) (F\d+), cut ({SIZE})", item.strip())
                piece = self.facts.pieces.get(int(one[1])) if one else None
                account.holds(match, one is not None and piece is not None, f"not to be understood: {item}")
                if one and piece:
                    account.holds(match, self.facts.by_key[piece.fabric].letter == one[2] and
                                  one[3] == self.ruler.by(piece.long(), piece.short()),
                                  f"[{piece.number}] is {self.ruler.by(piece.long(), piece.short())}")
        if end > 0:
            account.take("«(?P<these>\\d+(?:, \\d+)*)»: «(?P<list>\\[\\d+\\] (?:fabric|cloth|material) F\\d+, "
                         "cut " + SIZE +
                         "(?:; \\[\\d+\\] (?:fabric|cloth|material) F\\d+, cut " + SIZE + ")*)»", strips, 0, end)
            marks = [int(number) for number in re.findall(r"(?<!\S)(\d+)(?!\S)", account.rest[:end])]
            if told != list(range(1, len(told) + 1)):
                account.fault(f"strips are numbered {told}")
            if sorted(marks) != sorted(told):
                account.fault(f"the drawing has {marks}, its words have {told}")
            account.take(r"«(?<!\S)»<n:n>«(?!\S)»", None, 0, end)

    # ---- backing

    def back_width(self) -> int:
        self.backing_rows()
        return int(self.back.fabric_width)

    def backing_rows(self) -> "list[dict[str, Any]]":
        value = self.quilt.file["backing"]
        fabric = self.facts.by_key.get(value.get("fabric", ""))
        length = lambda name, inches, metric: int(self.quilt.length(value, name, inches, metric))
        margin = length("beyond", "4 in", "10 cm")
        wide = length("width", "40 in", "100 cm") if "width" in value or fabric is None else int(fabric.usable)
        prints = ["", "any way", "two ways", "one way", "stripe along", "stripe across"]
        kind = value.get("print", (self.quilt.file["fabrics"][fabric.key].get("print", "any way")) if fabric
                         else "any way")
        spec = SimpleNamespace(
            quilt_width=int(self.quilt.top.width), quilt_length=int(self.quilt.top.height), margin_left=margin,
            margin_right=margin, margin_top=margin, margin_bottom=margin, fabric_width=wide,
            selvage=length("selvage", "0 in", "0 mm"), allowance=length("seam", "1/2 in", "12 mm"), end_loss=0,
            repeat=length("repeat", "0 in", "0 mm"), step=int(self.quilt.step), print=prints.index(kind))
        self.back = spec
        rows = self.quilt.once("backings", lambda: [row for row in backings.layouts(spec, 0) if row])
        return sorted(rows, key=lambda row: (not row["best"], row["layout"]))

    def backing(self) -> None:
        account, ruler = self.account, self.ruler
        if "backing" not in self.quilt.file:
            return
        rows = self.backing_rows()
        best = rows[0]
        self.best = best
        account.once("The back must measure at least <size:S>: it stands", lambda m: account.same(
            m, "size", ruler.by_at_least(best["needed_width"], best["needed_length"])))
        account.once("Least cloth: <how:w>. Buy <a:L>.", lambda m: (
            account.same(m, "how", LAYOUTS[best["layout"] - 1]), account.same(m, "a", ruler.buy(best["bought"]))))
        pieces = sum(count for _, count, _, _ in self.cut_panels(best))
        self.panels(best)
        account.take("Join the <n:n> pieces of the insert end to end first", lambda m: account.holds(
            m, best["layout"] in (7, 8) and int(m["n"]) == best["pieces"] - 2 > 1, f"of {best['pieces'] - 2} pieces"))
        turned = account.take("Turn the insert a quarter: the <a:L> across the cloth run {down|across} the quilt.",
                              lambda m: (account.same(m, "a", ruler.measured(
                                  self.back.fabric_width - 2 * self.back.selvage)), account.holds(
                                      m, (best["layout"] == 7) == ("run down" in m[0]), "which way does it lie?")))
        if turned != (best["layout"] in (7, 8)):
            account.fault("how does the insert lie?")
        account.take("sew the pieces with <a:L> seams", lambda m: account.same(m, "a", ruler.measured(self.back.allowance)))
        sewn = account.take("Sewn together it measures at least <size:S> unfinished.", lambda m: account.same(
            m, "size", ruler.by_at_least(best["joined_width"], best["joined_length"])))
        if sewn != (pieces > 1):
            account.fault("what does the back measure when it is sewn together?")
        account.take("The cloth may be up to <a:L> narrower and what", lambda m: account.same(
            m, "a", ruler.at_most(best["narrower_by"])))
        self.backing_picture(best)
        for row in rows[1:]:
            account.once(f"{LAYOUTS[row['layout'] - 1]} {panels_of(row)} <a:L>",
                         lambda m, row=row: account.same(m, "a", ruler.buy(row["bought"])))

    def cut_panels(self, best: Any) -> "list[tuple[str, int, Fraction, Fraction]]":
        """Role, how many and cut size, in the order of sewing."""
        usable = self.back.fabric_width - 2 * self.back.selvage
        long, kind = best["panel_length"], best["layout"]
        if kind in (1, 2):
            return [("whole width", 1, usable, long)]
        if kind in (3, 4):
            return [("whole width", 1, usable, long)] * best["panels"]
        if kind in (5, 6):
            side = ("side", 1, best["strip_cut"], long)
            return [side, ("middle, whole width", 1, usable, long), side]
        half = ("half", 1, Fraction(usable, 2), long)
        return [half, ("insert", best["pieces"] - 2, usable, best["strip_cut"]), half]

    def panel_size(self, role: str, wide: Fraction, long: Fraction) -> str:
        """No shorter than it must be, nor narrower where it is not as wide as the cloth."""
        across = self.ruler.at_least(wide) if role == "side" else self.ruler.measured(wide)
        return f"{across} x {self.ruler.at_least(long)}"

    def panels(self, best: Any) -> None:
        account = self.account
        panels = self.cut_panels(best)
        words = " ".join(f"{number} {role} {count} piece{'s' if count > 1 else ''} {self.panel_size(role, wide, long)}"
                         for number, (role, count, wide, long) in enumerate(panels, 1))
        if account.take(f"Cut, across the cloth x along it {words}") != 1:
            account.fault(f"the pieces of the back are not: {words}")

    def backing_picture(self, best: Any) -> None:
        """Each panel with its place and cut size, and what it measures in all."""
        account, ruler = self.account, self.ruler
        end = account.rest.find("Backing, with the quilt's outline")
        if end < 0:
            return
        for number, (role, count, wide, long) in enumerate(self.cut_panels(best), 1):
            size = self.panel_size(role, wide, long)
            many = f"{count} pieces, each cut" if count > 1 else "cut"
            account.take(f"{{panel|insert|half|side}} {number}{{:|}} {many} {size}", None, 0, end)
            account.take(f"in one piece, cut {size}", None, 0, end)
        for side in (best["joined_width"], best["joined_length"]):
            account.take(f"{ruler.at_least(side)} as sewn", None, 0, end)
        account.take("quilt, finished: <size:S>", lambda m: account.same(m, "size", ruler.by(*self.facts.top_size())))
        account.take("{batting|wadding}, cut: <size:S>", lambda m: account.same(
            m, "size", ruler.by_at_least(*self.inside())))
        account.take("backing needed: <size:S> at least", lambda m: account.same(
            m, "size", ruler.by_at_least(best["needed_width"], best["needed_length"])))

    # ---- batting, binding, sleeve

    def inside(self) -> "tuple[Fraction, Fraction]":
        beyond = self.quilt.length(self.quilt.file.get("batting", {}), "beyond", "3 in", "8 cm")
        return self.quilt.top.width + 2 * beyond, self.quilt.top.height + 2 * beyond

    def roll_width(self) -> Fraction:
        return self.quilt.length(self.quilt.file["batting"], "roll width", "0 in", "0 mm")

    def package_size(self, found: Any) -> str:
        """In whole inches or centimetres."""
        sides = Fraction(found["package_width"]), Fraction(found["package_length"])
        if self.ruler.units == "in":
            return self.ruler.by(*sides)
        whole = [floor(side / (10 * MM) + Fraction(1, 2)) for side in sides]
        about = "about " if any(side % (10 * MM) for side in sides) else ""
        return f"{about}{whole[0]} cm x {whole[1]} cm"

    def batting_found(self) -> Any:
        beyond = int(self.quilt.length(self.quilt.file["batting"], "beyond", "3 in", "8 cm"))
        spec = SimpleNamespace(quilt_width=int(self.quilt.top.width), quilt_length=int(self.quilt.top.height),
                               margin_left=beyond, margin_right=beyond, margin_top=beyond, margin_bottom=beyond,
                               roll_width=int(self.roll_width()))
        return batting_of(spec, PACKAGES, False)

    def batting(self) -> None:
        account, ruler = self.account, self.ruler
        if "batting" not in self.quilt.file:
            return
        found = self.batting_found()
        account.once("Cut <size:S>: it stands out", lambda m: account.same(
            m, "size", ruler.by_at_least(*self.inside())))
        package = account.take("A package of <size:S> covers that{, turned a quarter|}.", lambda m: (
            account.same(m, "size", self.package_size(found)),
            account.holds(m, ("turned" in m[0]) == bool(found["turned"]), "turned, or not?")))
        if package != (found["package"] >= 0):
            account.fault("is there a package so large?")
        roll = ruler.measured(self.roll_width())
        account.take("From the roll, " + roll + " wide: <n:n> pieces laid edge to edge {across the quilt|along the "
                     "quilt}, sewn without overlapping; <a:L> of the roll in all.", lambda m: (
                         account.same(m, "n", found["joined_pieces"]),
                         account.same(m, "a", ruler.buy(found["joined_length"])),
                         account.holds(m, ("across" in m[0]) == bool(found["joined_turned"]), "across, or along?")))
        account.take("From the roll, " + roll + " wide: one piece, <a:L> long.", lambda m: (
            account.same(m, "a", ruler.buy(found["joined_length"])),
            account.holds(m, found["joined_pieces"] == 1, "more than one piece")))

    def binding(self) -> None:
        account, ruler = self.account, self.ruler
        value = self.quilt.file.get("binding")
        if value is None:
            return
        width = self.quilt.length(value, "cut width", "2 1/2 in", "6 cm")
        strips = sum(count for count, _ in self.facts.binding_laid)
        tops = self.quilt.tops

        def binding(match: Any) -> None:
            account.same(match, "n", strips)
            account.same(match, "wide", ruler.measured(width))
            account.same(match, "all", ruler.measured(binding_length(self.facts, strips)))
            account.same(match, "joins", strips - tops)
            account.same(match, "loss", ruler.measured(join_loss(self.facts)))
            account.same(match, "long", ruler.measured(binding_wanted(self.facts)))
            account.same(match, "round", ruler.measured(2 * sum(self.facts.top_size())))
            account.same(match, "ends", ruler.measured(
                binding_wanted(self.facts) - 2 * sum(self.facts.top_size())))
            account.holds(match, (strips > tops) == (match["joins"] is not None), "joins, or none?")
        account.once("<n:n> strips cut <wide:L> wide, <all:L> together; {<joins:n> joins{ on the slant|} take "
                     "<loss:L> each. "
                     "|}That makes <long:L>{ for each quilt|}: <round:L> round the quilt and <ends:L> for the corners "
                     "and for joining the ends.", binding)
        told = [(match["n"], match["wide"], match["all"]) for _, match in self.facts.binding_told]
        expected = (str(strips), ruler.measured(width), ruler.measured(binding_length(self.facts, strips)))
        if told != [expected]:
            account.passage = self.facts.binding_told[0][0] if told else account.passage
            account.fault(f"the list has for the binding {told}, expected {expected}", "",
                          self.facts.binding_told[0][1].start() if told else 0)
        laid = sum((count * long for count, long in self.facts.binding_laid), Fraction(0))
        wanted = binding_length(self.facts, strips)
        if abs(laid - wanted) > strips * ruler.usual / 2:
            account.fault(f"{ruler.measured(laid)} of binding are laid out, {ruler.measured(wanted)} are needed")

    def sleeve(self) -> None:
        account, ruler = self.account, self.ruler
        count, long, wide, finished = sleeve(self.facts)
        found = account.take("cut <n:n> piece{s|} of <size:S>{, joined from strips, as the cloth is not so wide|}; "
                             "finished <a:L> long{ each|}.", lambda m: (
                                 account.same(m, "n", count), account.same(m, "size", ruler.by(long, wide)),
                                 account.same(m, "a", ruler.measured(finished))))
        if found != (count > 0):
            account.fault("is there a sleeve?")

    # ---- on the bed

    def bed(self) -> None:
        bed = self.quilt.size.get("bed")
        account, ruler = self.account, self.ruler
        if bed is None:
            return
        wide, long, deep = (ticks(bed[name]) if name in bed else Fraction(0) for name in ("width", "length", "depth"))
        side = Fraction(self.quilt.top.width - wide, 2)
        foot = self.quilt.top.height - long

        def hang(match: Any) -> None:
            account.same(match, "bed", ruler.by(wide, long))
            account.same(match, "deep", ruler.measured(deep))
            for name, drop in (("side", side), ("foot", foot)):
                account.same(match, name, ruler.measured(drop) if drop >= 0 else None)
                account.same(match, f"{name}_short", ruler.measured(-drop) if drop < 0 else None)
        account.once("In the middle of a mattress of <bed:S>{, <deep:L> deep|}, its upper edge at the head: on each "
                     "side it {hangs <side:L>|is <side_short:L> short of the edge}, at the foot it {hangs <foot:L>|is "
                     "<foot_short:L> short of the edge}.", hang)
        account.take("of the mattress it would have to be <a:L> wider", lambda m: account.same(
            m, "a", ruler.at_least(2 * (deep - side))))
        account.take("To cover its foot it would have to be <a:L> longer", lambda m: account.same(
            m, "a", ruler.at_least(deep - foot)))
        corner = Fraction(isqrt(int((side * side + foot * foot) * 10**12)), 10**6)
        account.take("than the drop: <a:L> below the top", lambda m: account.same(m, "a",
                                                                                  ruler.measured(round(corner))))

    def read(self, passage: Any) -> None:
        self.account.open(passage)
        self.backing()
        self.batting()
        self.binding()
        self.sleeve()
        self.bed()
        self.account.close()
