# SPDX-License-Identifier: MIT
"""A list of pieces laid on strips, strips laid on cloth and on pieces of stock, one by one as a person does it."""

from .base import COUNT_MAX, LENGTH_MAX, SIZE_MAX, WARN_NO_SLACK, Refused, Wants, largest, least
from .fabric import PRINT_NONE, PRINT_STRIPE_ACROSS, YARDAGE, want_stock

ROWS_MAX = 4096


def want_rows(wants, rows):
    wants.that(len(rows) <= ROWS_MAX, "ERR_RANGE")
    for row in rows:
        wants.some_size(row.cut_width, row.cut_length)
        wants.count(row.count)


def ways(row, print_kind):
    """(across, along, turned) of every way that a row's pieces may lie, the listed one first."""
    listed = [(row.cut_width, row.cut_length, 0)]
    return listed + ([(row.cut_length, row.cut_width, 1)] if row.may_turn and print_kind == PRINT_NONE else [])


def strips_for(count, per_strip):
    return -(-count // per_strip)


# ---- yardage ---------------------------------------------------------------------------------------------------------


def row_from_yardage(row, room, print_kind):
    """(length, turned, strips, per strip, across, along), or None where not one piece fits."""
    fitting = [(strips_for(row.count, room // across) * along, turned, room // across, across, along)
               for across, along, turned in ways(row, print_kind) if across <= room]
    if not fitting:
        return None
    length, turned, per_strip, across, along = min(fitting, key=lambda way: way[:2])
    return length, turned, strips_for(row.count, per_strip), per_strip, across, along


def length_at(rows, width, spec):
    """Cloth at this usable width; infinite where a row does not fit."""
    total = spec.straightening
    for row in rows:
        if row.count:
            found = row_from_yardage(row, max(width - spec.end_loss, 0), spec.print)
            if found is None:
                return float("inf")
            total += found[0]
    return total


def want_yardage(rows, spec):
    wants = Wants()
    want_rows(wants, rows)
    wants.some_size(spec.usable_width)
    wants.size(spec.end_loss, spec.straightening)
    wants.choice(spec.print, PRINT_NONE, PRINT_STRIPE_ACROSS)
    wants.done()
    total = length_at(rows, spec.usable_width, spec)
    if total == float("inf"):
        raise Refused("ERR_NO_YIELD", "ERR_OVERFLOW")
    if total > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    return total


def least_width_as_cut(cut, width, end_loss=0):
    """Rows of (pieces, strips, across): the least width with which these strips still give them."""
    return least(lambda w: all(max(w - end_loss, 0) // across * strips >= pieces for pieces, strips, across in cut),
                 width)


def from_yardage(rows, spec):
    total = want_yardage(rows, spec)
    wanted = [row for row in rows if row.count]
    room = spec.usable_width - spec.end_loss
    laid = [row_from_yardage(row, room, spec.print) for row in wanted]
    pieces = sum(row.count for row in wanted)
    found = {
        "pieces": pieces,
        "strips": sum(row[2] for row in laid),
        "spare_pieces": sum(row[2] * row[3] for row in laid) - pieces,
        "cloth_length": total,
        "area_bound": strips_for(sum(row.count * row.cut_width * row.cut_length for row in rows), spec.usable_width),
        "narrowest_width": 0,
        "narrower_by": 0,
        "narrowest_as_cut": 0,
        "wider_for_less": 0,
        "wider_saves": 0,
        "warnings": 0,
        "turned": max([row[1] for row in laid], default=0),
    }
    if wanted:
        narrowest = least(lambda width: length_at(rows, width, spec) <= total, spec.usable_width)
        endless = spec.end_loss + 2**63
        wider = least(lambda width: length_at(rows, width, spec) < total, endless)
        found["narrowest_width"] = narrowest
        found["narrower_by"] = spec.usable_width - narrowest
        found["narrowest_as_cut"] = least_width_as_cut(
            [(row.count, way[2], way[4]) for row, way in zip(wanted, laid)], spec.usable_width, spec.end_loss)
        if wider is not None:
            found["wider_for_less"] = wider - spec.usable_width
            found["wider_saves"] = total - length_at(rows, wider, spec)
        found["warnings"] = WARN_NO_SLACK if narrowest == spec.usable_width else 0
    return found


def yardage_rows(rows, spec):
    want_yardage(rows, spec)
    room = max(spec.usable_width - spec.end_loss, 0)
    found = []
    for row in rows:
        length, turned, strips, per_strip, across, along = (row_from_yardage(row, room, spec.print) or
                                                            (0, 0, 0, 0, row.cut_width, row.cut_length))
        found.append({
            "pieces": row.count,
            "strips": strips,
            "per_strip": per_strip,
            "spare_pieces": strips * per_strip - row.count,
            "strip_cut": along,
            "piece_cut": across,
            "strips_length": length,
            "first_stock": 0,
            "last_stock": 0,
            "turned": turned,
            "trimmed": 0,
        })
    return found


# ---- stock -----------------------------------------------------------------------------------------------------------


def put_strips(place, strips, along, length):
    """(first piece of stock, place behind the last strip), stock by stock: whole ones at once, where there are many."""
    stock, used = place
    first = 0
    while strips:
        here = min((length - used) // along, strips)
        if here:
            first = first or stock
            used += here * along
            strips -= here
        elif strips > 2 * (length // along):
            skipped = strips // (length // along) - 1
            first = first or stock + 1
            stock, used, strips = stock + skipped, length, strips - skipped * (length // along)
        else:
            stock, used = stock + 1, 0
    return first, (stock, used)


def parts_of(place, strips, along, length):
    """(strips from each, first piece of stock, last one, used before) in the order of cutting."""
    stock, used = place
    found = []
    here = min((length - used) // along, strips)
    if here:
        found.append((here, stock, stock, used))
    full, rest = divmod(strips - here, max(length // along, 1))
    if full:
        found.append((length // along, stock + 1, stock + full, 0))
    if rest:
        found.append((rest, stock + full + 1, stock + full + 1, 0))
    return found


def laid_parts(laid, length):
    """(row, way, part) of every part of a list that is laid."""
    place = (0, length)
    for at, way in enumerate(laid):
        for part in parts_of(place, way[2], way[5], length):
            yield at, way, part
        place = way[0]


def slack_as_cut(rows, laid, stock, times=1):
    cut = [(row.count * times, way[2], way[4]) for row, way in zip(rows, laid) if way[2]]
    if not cut:
        return {"as_cut_narrower_by": 0, "as_cut_shorter_by": 0}
    ends = [part[3] + part[0] * way[5] for _, way, part in laid_parts(laid, stock.length)]
    return {"as_cut_narrower_by": stock.width - least_width_as_cut(cut, stock.width),
            "as_cut_shorter_by": stock.length - max(ends)}


def cut_stock(rows, width, length, print_kind, times=1):
    """How each row lies, in order, and where the last one ends; None where a row does not fit."""
    place = (0, length)
    laid = []
    for row in rows:
        count = row.count * times
        found = []
        for across, along, turned in ways(row, print_kind):
            per_strip = width // across
            if count == 0:
                found.append((place, turned, 0, per_strip, across, along, 0))
            elif per_strip and along <= length:
                strips = strips_for(count, per_strip)
                first, end = put_strips(place, strips, along, length)
                found.append((end, turned, strips, per_strip, across, along, first))
        if not found:
            return None
        laid.append(min(found, key=lambda way: way[:2]))
        place = laid[-1][0]
    return laid, place


def want_job(rows, stock):
    wants = Wants()
    want_stock(wants, stock)
    want_rows(wants, rows)
    wants.done()
    found = cut_stock(rows, stock.width, stock.length, stock.print)
    if found is None:
        raise Refused("ERR_NO_YIELD")
    return found


def slack(rows, stock, most, times=1):
    def enough(width, length):
        found = cut_stock(rows, width, length, stock.print, times)
        return found is not None and found[1][0] <= most

    narrowest = least(lambda width: width > 0 and enough(width, stock.length), stock.width)
    shortest = least(lambda length: length > 0 and enough(stock.width, length), stock.length)
    return {
        "narrower_by": stock.width - narrowest,
        "shorter_by": stock.length - shortest,
        "warnings": WARN_NO_SLACK if narrowest == stock.width or shortest == stock.length else 0,
    }


NO_SLACK_ASKED = {"narrower_by": 0, "shorter_by": 0, "warnings": 0}


def trimmed(way, stock):
    return int(way[2] > 0 and way[5] < stock.length)


def rest_of(way, left):
    """Pieces from further strips like those of this row."""
    strips = largest(lambda n: n * way[5] <= left, left) if way[2] else 0
    return strips * way[3]


def from_stock(rows, stock):
    laid, (needed, used) = want_job(rows, stock)
    pieces = sum(row.count for row in rows)
    area = sum(row.count * row.cut_width * row.cut_length for row in rows)
    return {
        "pieces": pieces,
        "strips": sum(way[2] for way in laid),
        "spare_pieces": sum(way[2] * way[3] for way in laid) - pieces,
        "stock_needed": needed,
        "stock_missing": max(needed - stock.count, 0),
        "stock_left": max(stock.count - needed, 0),
        "area_bound": strips_for(area, stock.width * stock.length),
        "left_over": stock.length - used,
        "rest_pieces": rest_of(laid[-1], stock.length - used) if laid else 0,
        "trimmed": max([trimmed(way, stock) for way in laid], default=0),
        "turned": max([way[1] for way in laid if way[2]], default=0),
        **slack_as_cut(rows, laid, stock),
        **(slack(rows, stock, needed) if needed else NO_SLACK_ASKED),
    }


def stock_rows(rows, stock):
    laid, _ = want_job(rows, stock)
    return rows_as_laid(rows, laid, stock)


def stock_parts(rows, stock):
    laid, _ = want_job(rows, stock)
    return [{"row": at, "strips": part[0], "first_stock": part[1], "last_stock": part[2], "begins_at": part[3]}
            for at, _, part in laid_parts(laid, stock.length)]


def rows_as_laid(rows, laid, stock, times=1):
    return [{
        "pieces": row.count * times,
        "strips": way[2],
        "per_strip": way[3],
        "spare_pieces": way[2] * way[3] - row.count * times,
        "strip_cut": way[5],
        "piece_cut": way[4],
        "strips_length": way[2] * way[5],
        "first_stock": way[6],
        "last_stock": way[0][0] if way[2] else 0,
        "turned": way[1],
        "trimmed": trimmed(way, stock),
    } for row, way in zip(rows, laid)]


def want_lists(rows, stock):
    wants = Wants()
    want_stock(wants, stock)
    want_rows(wants, rows)
    wants.done()
    if not sum(row.count for row in rows):
        raise Refused("ERR_RANGE")
    want_job(rows, stock)

    def needed(times):
        return cut_stock(rows, stock.width, stock.length, stock.print, times)[1]

    lists = largest(lambda times: needed(times)[0] <= stock.count, COUNT_MAX + 1)
    if lists > COUNT_MAX:
        raise Refused("ERR_OVERFLOW")
    return lists


def lists_rows(rows, stock):
    lists = want_lists(rows, stock)
    laid, _ = cut_stock(rows, stock.width, stock.length, stock.print, lists)
    return rows_as_laid(rows, laid, stock, lists)


def lists_from_stock(rows, stock):
    lists = want_lists(rows, stock)

    def needed(times):
        return cut_stock(rows, stock.width, stock.length, stock.print, times)[1]

    laid, (stock_used, used) = cut_stock(rows, stock.width, stock.length, stock.print, lists)
    return {
        "lists": lists,
        "stock_used": stock_used,
        "stock_left": stock.count - stock_used,
        "stock_for_one_more": needed(lists + 1)[0] - stock.count,
        "left_over": stock.length - used,
        **slack_as_cut(rows, laid, stock, lists),
        **(slack(rows, stock, stock.count, lists) if lists else NO_SLACK_ASKED),
    }


def substitute(rows, stock, prints):
    wants = Wants()
    want_stock(wants, stock)
    want_rows(wants, rows)
    wants.between(prints, 1, 1 if stock.kind == YARDAGE else COUNT_MAX)
    wants.done()
    yardage = stock.kind == YARDAGE
    found = dict.fromkeys(("spare_pieces", "rest_pieces", "turned", "unfit_row", "stock_needed", "stock_missing",
                           "fabrics", "per_fabric_least", "per_fabric_most", "cloth_length", "cloth_missing", "narrower_by", "shorter_by", "possible",
                           "enough", "warnings"), 0)
    for at, row in enumerate(rows):
        if cut_stock([row], stock.width, SIZE_MAX if yardage else stock.length, stock.print) is None:
            return dict(found, unfit_row=at)
    found.update(unfit_row=-1, possible=1)
    if yardage:
        class Cloth:
            usable_width, end_loss, straightening, print = stock.width, 0, 0, stock.print

        cloth = from_yardage(rows, Cloth)
        in_hand = stock.count * stock.length
        need = cloth["cloth_length"]
        found.update(fabrics=int(cloth["pieces"] > 0), cloth_length=need, cloth_missing=max(need - in_hand, 0),
                     narrower_by=cloth["narrower_by"], shorter_by=max(in_hand - need, 0), enough=int(need <= in_hand),
                     warnings=WARN_NO_SLACK if cloth["pieces"] and need == in_hand else cloth["warnings"],
                     spare_pieces=cloth["spare_pieces"], turned=cloth["turned"])
        return found
    stocked = from_stock(rows, stock)
    needed = stocked["stock_needed"]
    dealt = [0] * min(prints, needed) if needed < 10**5 else None
    if dealt is None:
        fabrics = min(prints, needed)
        least_each, most_each = needed // fabrics, -(-needed // fabrics)
    else:
        for piece in range(needed):
            dealt[piece % prints] += 1
        fabrics, least_each, most_each = len(dealt), min(dealt, default=0), max(dealt, default=0)
    found.update(stock_needed=needed, stock_missing=stocked["stock_missing"], fabrics=fabrics,
                 per_fabric_least=least_each, per_fabric_most=most_each,
                 narrower_by=stocked["narrower_by"], shorter_by=stocked["shorter_by"],
                 enough=int(needed <= stock.count), warnings=stocked["warnings"],
                 spare_pieces=stocked["spare_pieces"], rest_pieces=stocked["rest_pieces"], turned=stocked["turned"])
    return found
