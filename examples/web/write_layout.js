// How the cuts are laid out on the cloth, strip by strip, and what is left; as in ../pattern/write_layout.c.
//
// SPDX-License-Identifier: MIT
import { atLeast, atMost, between, by, line, plural, point, say, under } from "./lines.js";

const LEFT_TOLD = 6;

/** What lies at a place of a plan: a cut, or binding or sleeve. */
class Laid {
    constructor(worked, fabric, plan) {
        Object.assign(this, { worked, fabric, plan });
        this.isBought = fabric.stripCut.ticks > 0n;
    }

    label(place) {
        return this.plan.pieces[place.piece].label;
    }

    cut(place) {
        return this.worked.cuts[this.label(place)];
    }

    extra(place) {
        return this.worked.extras[this.label(place) - this.worked.cuts.length];
    }

    name(place) {
        return this.cut(place) ? `[${this.worked.piece[this.label(place)]}]` : this.extra(place).what;
    }

    isJoined(place) {
        return this.cut(place) ? this.worked.isJoined(this.label(place)) : this.extra(place).kind === "joined";
    }

    placesOf(strip) {
        return this.plan.places.slice(strip.firstPlace, strip.firstPlace + strip.places);
    }
}

// ---- places ---------------------------------------------------------------------------------------------------------

function placeWords(laid, strip, place) {
    const cut = laid.cut(place),
        name = laid.name(place);
    const { count, width, height } = place;
    const isWhole = laid.isJoined(place) || cut?.source === "setStrip"; // told by its length
    const isSquare = cut?.shape === "rectangle" && cut.cutWidth.ticks === cut.cutHeight.ticks;
    const words = isWhole
        ? line`${count > 1 && `${count} pieces `}${width} long for ${name}`
        : isSquare
          ? `${count} square${plural(count)} ${name}`
          : cut
            ? `${count} of ${name}`
            : `${count} piece${plural(count)} for the ${name}`;
    return line`${words}${place.turned && !isWhole && !isSquare && line`, turned: cross-cut at ${width}`}${
        place.trimmed && line`, trimmed from ${strip.height} to ${height} high`
    }`;
}

const freeOf = (strip) => strip.width.minus(strip.used);

/** Pieces to be joined for a border: how much longer they may be left. */
function free(laid, strip) {
    const { worked } = laid;
    const left = freeOf(strip);
    const names = laid
        .placesOf(strip)
        .filter((place) => laid.cut(place) && laid.isJoined(place) && place.width < strip.width)
        .map((place) => laid.name(place))
        .join(" and ");
    if (names === "" || worked.isNothing(left)) return "";
    return left.ticks >= worked.hand
        ? line`. ${atMost(left)} of this strip are free: cut those for ${names} longer, so that their seam is not by a
            corner, and trim when the top is measured`
        : line`. Only ${atMost(left)} of this strip are free to leave those for ${names} longer`;
}

/** Where a strip has parts of a border and other pieces: which are cut first, and where. */
function late(laid, strip) {
    const places = laid.placesOf(strip);
    const own = places.filter(
        (place) => laid.cut(place)?.source === "patch" && laid.worked.isBorderCut(laid.label(place))
    );
    if (own.length === 0 || own.length === places.length) return "";
    const names = own.map((place) => laid.name(place)).join(" and ");
    return `. Cut the others from its right end and leave the part for ${names} whole until the top is measured`;
}

function stripWords(laid, strip) {
    const { kind, times, height } = strip;
    const holder = laid.plan.strips[strip.holder];
    const strips = (count) => `${count} strip${plural(count)}`;
    if (kind === "panel")
        return line`${times} length${plural(times)} of ${height} across the whole width, to be slit along the cloth`;
    if (kind === "slit") return "from the left edge, slit along the cloth";
    if (kind === "stock") return `${strips(times)} as bought`;
    if (kind === "within" && laid.isBought) return `${strips(holder.times)} as bought`;
    if (kind === "within") return line`across what is left beside: ${strips(times)} ${height} wide`;
    return line`${strips(times)} ${height} wide`;
}

function strip(laid, row) {
    const places = laid.placesOf(row);
    if (laid.isBought && places.length === 0) return undefined;
    const isMany = row.times > 1 || (laid.isBought && laid.plan.strips[row.holder]?.times > 1);
    const told = places.map((place) => placeWords(laid, row, place));
    const words = line`${stripWords(laid, row)}${isMany && places.length > 0 && ", from each"}${
        told.length > 0 && line`: ${between(told, "; ")}`
    }${free(laid, row)}${late(laid, row)}`;
    return (row.holder >= 0 && !laid.isBought ? under : point)(words);
}

// ---- what to mind ---------------------------------------------------------------------------------------------------

/** Its seam lies by a corner, unless the piece is left longer as its strip says: where else so much is free. */
function longer({ worked, plan }, place) {
    const own = plan.strips[place.strip];
    const elsewhere = plan.strips
        .filter((one) => one.kind === "strip" && one.height.ticks === own.height.ticks)
        .map(freeOf)
        .reduce((most, one) => (one > most ? one : most));
    if (freeOf(own).ticks >= worked.hand) return "";
    const how =
        elsewhere.ticks >= worked.hand
            ? line`${atMost(elsewhere)} of another strip as wide are free: cut that piece from there, longer,`
            : "where cloth is left, cut that piece longer";
    return line`, its seam close to a corner: ${how} and the one that it is joined to as much shorter, so that both are
        nearer equal`;
}

/** Pieces that are joined with one so short that its seam lies by a corner. */
function stubs(laid) {
    const { worked, plan } = laid;
    return plan.pieces.flatMap(({ label }, piece) => {
        if (label >= worked.cuts.length || !worked.isJoined(label)) return [];
        const [place] = plan.places
            .filter((one) => one.piece === piece && one.width.ticks < worked.hand)
            .sort((a, b) => Number(a.width.ticks - b.width.ticks));
        if (!place) return [];
        return point(
            line`[${worked.piece[label]}] is joined with a piece only ${place.width} long${longer(laid, place)}. On
                cloth usable over at least ${atLeast(worked.cutLength(label))} it is cut in one, without a join.`
        );
    });
}

function bothWays(laid) {
    const { worked, plan } = laid;
    const names = plan.pieces.flatMap(({ label }, piece) => {
        const ways = plan.places.filter((one) => one.piece === piece && one.width.ticks !== one.height.ticks);
        const isBoth = ways.some((one) => one.turned) && ways.some((one) => !one.turned);
        return isBoth && label < worked.cuts.length ? [`[${worked.piece[label]}]`] : [];
    });
    return names.length === 0
        ? []
        : point(
              `${names.join(" and ")}: some lie along the cloth, some across it. Where a print would show that, or ` +
                  "stretch matter, cut all of them alike; that may take more cloth."
          );
}

function leftOver(laid) {
    const sizes = new Map();
    for (const { width, height, count } of laid.plan.leftOver) {
        const key = `${width.ticks} ${height.ticks}`;
        sizes.set(key, { width, height, count: (sizes.get(key)?.count ?? 0) + count });
    }
    if (sizes.size === 0) return [];
    const told = [...sizes.values()]
        .slice(0, LEFT_TOLD)
        .map(({ width, height, count }) => line`${count} piece${plural(count)} of ${by(width, height)}`);
    return point(line`Left over: ${between(told, ", ")}${sizes.size > LEFT_TOLD && ", and smaller ones"}.`);
}

// ---- all ------------------------------------------------------------------------------------------------------------

/** The narrowest cloth that it can be cut from as it is laid out; a strip for a set need only be as long as its
 * segments take. */
function narrowest(laid, row) {
    const { worked, plan } = laid;
    let most = 0n;
    for (const one of plan.strips) {
        if (one.kind !== "strip" || one.places === 0) return row.narrowestWidth.ticks;
        const [place] = laid.placesOf(one);
        const taken = laid.cut(place)?.source === "setStrip" ? worked.setTakes(laid.label(place)) : 0n;
        const needed = taken || one.used.ticks;
        most = needed > most ? needed : most;
    }
    return most;
}

function proof(laid, row) {
    const least = narrowest(laid, row);
    return say(
        line`${atLeast(row.clothLength)} are needed, cut like this. Cut in this way, no plan needs less${
            !row.proven && line` than ${atMost(row.least)}`
        }. ${
            least < row.usableWidth.ticks
                ? line`It works down to ${atLeast(least)} of usable width.`
                : line`It takes all of the ${row.usableWidth} across, with nothing to spare.`
        }`
    );
}

/** Strips that go into strip sets as they were bought. */
function isTakenWhole(laid) {
    const isWhole = (cut) => cut?.source === "setStrip" && cut.cutHeight.ticks === laid.fabric.stripCut.ticks;
    return laid.isBought && laid.plan.places.every((place) => isWhole(laid.cut(place)));
}

/** { before, after }: what is said before the drawing of a cloth, and behind it; undefined: it is taken whole. */
export function layout(worked, fabric, row, plan) {
    const laid = new Laid(worked, fabric, plan);
    if (isTakenWhole(laid)) return undefined;
    return {
        before: [
            laid.isBought
                ? say(line`${row.stripsNeeded} strips, each ${by(fabric.usableWidth, fabric.stripCut)}, are cut into:`)
                : proof(laid, row),
        ],
        after: [plan.strips.map((one) => strip(laid, one)), stubs(laid), bothWays(laid), leftOver(laid)]
            .flat(2)
            .filter(Boolean),
    };
}

/** How many strips the binding takes where it is laid out, and what they come to together. */
export function bindingStrips(worked, rows) {
    let strips = 0,
        together = 0n;
    for (const { plan, fabric } of rows) {
        const laid = new Laid(worked, fabric, plan);
        for (const place of plan.places) {
            if (laid.cut(place) || laid.extra(place).what !== "binding") continue;
            const row = plan.strips[place.strip];
            const count = place.count * row.times * (plan.strips[row.holder]?.times ?? 1);
            strips += count;
            together += worked.muslin.lengthMultiply(place.width, count).ticks;
        }
    }
    return { strips, together };
}
