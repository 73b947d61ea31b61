// The cutting list: every piece with its number, how many, what size, how it is cut again, its use; as in
// ../pattern/write_cuts.c.
//
// SPDX-License-Identifier: MIT
import { atLeast, by, caution, line, listed, plural, point, under } from "./lines.js";
import { nameOf, spelt, word } from "./words.js";
import { shortSet } from "./write_sets.js";

const SHAPES = {
    triangles: " triangles",
    diamonds: " diamonds",
    hexagons: " hexagons",
    trapezoids: " trapezoids",
    wedges: " wedges",
    octagons: " octagons",
    slices: " slices",
};
const WHOLE = {
    twoAtATime: ", leave whole: two units come of each pair",
    fourAtATime: ", leave whole: four units come of one large and four small squares",
    eightAtATime: ", leave whole: eight units come of each pair",
    fourAllRound: ", leave whole: four units come of each pair",
    fourMidpoints: ", leave whole: four units come of each pair",
};
const TOLD_ELSEWHERE = ["longerThanWidth", "biasEdge"];

const isSquare = (cut) => cut.cutWidth.ticks === cut.cutHeight.ticks;

// ---- what it is for -------------------------------------------------------------------------------------------------

/** "for C and E": the letters of all that it goes into. */
function use(worked, cut) {
    const steps = worked.usesOf(cut);
    const letters = listed(steps.map(({ node }) => worked.letterOf(node))).join("");
    const into = steps.length === 1 && ` (${nameOf(worked, steps[0].node)})`;
    return line`${steps.length > 0 && `, for ${letters}`}${into}${
        worked.isBorderCut(cut) && "; cut after the top is measured through the middle, as long as it is there"
    }`;
}

// ---- rows -----------------------------------------------------------------------------------------------------------

function shapeName(cut) {
    if (cut.source === "template") return ` piece${plural(cut.count)}`;
    if (cut.shape === "rectangle") return isSquare(cut) ? ` square${plural(cut.count)}` : "";
    return SHAPES[cut.shape] ?? "";
}

/** Shapes from strips: how high the strip is and how far apart the cuts are. */
function stripShape(worked, cut) {
    const along = worked.muslin.lengthDot([cut.cutWidth, cut.pitch], [1, cut.count - 1]);
    const isOne = along <= worked.clothOf(cut.fabric).usableWidth;
    const how =
        cut.shape === "diamonds"
            ? line`, then cut parallel to that, ${cut.cutHeight} apart, measured square to the cut`
            : line`, then go on with the ruler leaning to the one side and to the other in turn, ${
                  cut.wideEdge
              } wide at the widest`;
    return line`Cut ${isOne ? "1 strip" : "strips"}, width of ${word(worked, "fabric")} by ${cut.cutHeight}, and from ${
        isOne ? "it" : "them"
    } ${cut.count}${shapeName(cut)}: cut one end off at ${cut.angle} degrees${how}`;
}

/** From point to point, and a hand's breadth to hold. */
function mitred(worked, index) {
    const cut = worked.cuts[index];
    const strips = worked.cuts.reduce(
        (sum, one, i) => (worked.piece[i] === worked.piece[index] ? sum + one.count : sum),
        0
    );
    const size = by(worked.cutLength(index), cut.cutHeight);
    return line`Cut ${strips} strips at ${size}, cut generous (from point to point a strip needs ${cut.cutWidth},
        cut); the ends are trimmed when the corners are ${spelt(worked, "mitred")}`;
}

function again(worked, cut) {
    const times = { once: "once", twice: "twice" }[cut.again];
    const setting = cut.again === "once" ? "corner setting triangles" : "side setting triangles";
    const unit = worked.design.unitNodes.get(cut.firstNode);
    const from = cut.hand === "mirrored" ? "upper left to the lower right" : "lower left to the upper right";
    return line`${
        times && `, cut ${times} on the diagonal: ${cut.pieces} ${cut.source === "setting" ? setting : "triangles"}`
    }${!times && cut.source === "unit" && WHOLE[unit?.method]}${
        cut.again === "once" && !isSquare(cut) && `, from the ${from}, right side up`
    }${cut.source === "setting" && cut.spare > 0 && `, ${cut.spare} of them spare`}${
        cut.source === "template" &&
        `, each from a rectangle so large, by its template${cut.hand === "mirrored" ? " turned over" : ""}`
    }`;
}

/** How long the last strips of a set must be that is sewn for one or two segments. */
function shortStrips(worked, index) {
    return worked.sets
        .filter((set) => worked.isCutFor(index, set.node) && shortSet(worked, set))
        .map(
            (set) =>
                line`; for the last set of ${worked.letterOf(set.node)} strips ${atLeast(
                    shortSet(worked, set).length
                )} long are enough`
        );
}

/** Pieces of one size of which some are cut again and some are not. */
function alike(worked, index) {
    const cut = worked.cuts[index];
    return worked.cuts.map(
        (other, i) =>
            i !== index &&
            other.fabric === cut.fabric &&
            other.shape === cut.shape &&
            other.again !== cut.again &&
            other.cutWidth.ticks === cut.cutWidth.ticks &&
            other.cutHeight.ticks === cut.cutHeight.ticks &&
            other.source !== "setStrip" &&
            cut.source !== "setStrip" &&
            `; as large as [${worked.piece[i]}]: keep them apart`
    );
}

function what(worked, index) {
    const cut = worked.cuts[index];
    if (cut.source === "mitred") return mitred(worked, index);
    const strips = `${cut.count} strip${plural(cut.count)}`;
    if (cut.source === "setStrip" && worked.clothOf(cut.fabric).stripCut.ticks > 0n)
        return line`Take ${strips}, ${cut.cutHeight} wide as bought`;
    if (cut.source === "setStrip") return line`Cut ${strips}, width of ${word(worked, "fabric")} by ${cut.cutHeight}`;
    if (cut.pitch.ticks > 0n) return stripShape(worked, cut);
    return line`Cut ${cut.count}${shapeName(cut)} at ${by(cut.cutWidth, cut.cutHeight)}`;
}

function row(worked, index) {
    const cut = worked.cuts[index];
    const words = line`${what(worked, index)}${again(worked, cut)}${use(worked, index)}${alike(worked, index)}${
        cut.source === "setStrip" && shortStrips(worked, index)
    }`;
    return (worked.isJoined(index) ? under : point)(words, `[${worked.piece[index]}]`);
}

// ---- strips longer than the cloth is wide ---------------------------------------------------------------------------

const isOfSameStrips = (worked, one, other) =>
    worked.isJoined(one) &&
    worked.isJoined(other) &&
    worked.cuts[one].fabric === worked.cuts[other].fabric &&
    worked.cuts[one].cutHeight.ticks === worked.cuts[other].cutHeight.ticks;

const joining = (cut) =>
    point(
        line`The cloth is not as wide as the next pieces are long: join each of them end to end from strips ${
            cut.cutHeight
        } wide, with straight seams pressed open. The strips are laid out below; leave the shorter ones longer where
        their strip has cloth free, and trim what is joined when the top is measured:`
    );

// ---- all ------------------------------------------------------------------------------------------------------------

/** What the library warns of, once for all cuts of a fabric. */
function warnings(worked, order) {
    const pieces = new Map();
    for (const cut of order)
        for (const warning of worked.cuts[cut].warnings)
            if (!TOLD_ELSEWHERE.includes(warning))
                pieces.set(warning, (pieces.get(warning) ?? new Set()).add(`[${worked.piece[cut]}]`));
    return [...pieces].map(([warning, numbers]) =>
        caution(`${[...numbers].join(", ")}: ${worked.muslin.warningSentence(warning)}`)
    );
}

/** Items of a fabric's pieces; its binding and sleeve come with its cloth. */
export function cutList(worked, fabric) {
    const order = worked.order.filter((cut) => worked.cuts[cut].fabric === fabric.id);
    const rows = order.flatMap((cut, i) => [
        worked.isJoined(cut) && (i === 0 || !isOfSameStrips(worked, order[i - 1], cut)) && joining(worked.cuts[cut]),
        (i === 0 || worked.piece[cut] !== worked.piece[order[i - 1]]) && row(worked, cut),
    ]);
    return [...rows, ...warnings(worked, order)].filter(Boolean);
}
