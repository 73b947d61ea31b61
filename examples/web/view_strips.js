// A strip quilt as a written pattern, in the words of the command line's `plan`: materials, cutting, strip sets,
// blocks, top, finishing.
//
// SPDX-License-Identifier: MIT
import { items } from "./document.js";
import { counted, h, list, table, unfolds } from "./dom.js";
import { drawBacking, drawBlocks, drawSet, segmentsAlong } from "./draw.js";
import { drawBlock, isSmall, specOf } from "./strips.js";
import { otherLayouts } from "./view_pattern.js";
import { warned } from "./wording.js";

const DRAWN_MOST = 36,
    SEGMENTS_DRAWN = 200,
    SETS_LISTED = 60;
const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

/** What follows from a plan that came out and was put on marks: nodes by section. */
export function stripSections(muslin, shown, answer) {
    const { plan, border, binding, size } = answer;
    const ofTop = plan.warnings.filter((warning) => warning !== "smallQuilt" || isSmall(size));
    return {
        plan: [
            h("p", { class: "answer" }, summary(shown, answer)),
            warned(muslin, ofTop, border?.warnings ?? [], binding?.warnings ?? []),
        ],
        materials: materials(shown, answer),
        cutting: cutting(shown, answer),
        sets: sets(muslin, shown, answer),
        blocks: blocks(shown, answer),
        top: top(muslin, shown, answer),
        finishing: finishing(shown, answer),
        assumed: assumed(shown, answer.values),
    };
}

export function summary(shown, { plan, size }) {
    const edges = plan.warnings.includes("noSlack") ? " It stands exactly on its edge." : "";
    return (
        `${counted(plan.tops, "top")}${plan.tops > 1 ? ", each" : " of"} ` +
        `${shown.sizeAlike(size.quiltWidth, size.quiltLength)} finished, from ` +
        `${counted(plan.stripsUsed, "strip")} in ${counted(plan.sets, "set")}; ` +
        `${counted(plan.stripsLeft, "strip")} and ` +
        `${counted(plan.segmentsLeft, "segment")} are left over.${edges}`
    );
}

/** "1, 5 and 6", "2 to 4" */
function numbered(all) {
    const runs = [];
    for (const one of all) {
        if (runs.length > 0 && runs.at(-1)[1] === one - 1) runs.at(-1)[1] = one;
        else runs.push([one, one]);
    }
    const words = runs.flatMap(([from, to]) =>
        to - from > 1 ? [`${from} to ${to}`] : to > from ? [`${from}`, `${to}`] : [`${from}`]
    );
    return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

// ---- materials and cutting ------------------------------------------------------------------------------------------

/** "all 3 tops" */
const allTops = (tops) => (tops === 2 ? "both tops" : `all ${tops} tops`);
const perTop = (tops) => (tops > 1 ? " for each top" : "");

function materials(shown, answer) {
    const { plan, values, borderCloth, stoneCloth, bindingCloth, batting, backing } = answer;
    const wide = `usable ${shown.length(values.clothWidth)} wide`;
    const buy = ({ each, all }, what = " of cloth") =>
        plan.tops === 1
            ? `buy ${shown.cloth(all)}${what}`
            : `buy ${shown.cloth(all)}${what} for ${allTops(plan.tops)} (${shown.cloth(each)} for each top alone)`;
    return [
        list(
            `${counted(values.strips, "strip")}, cut ${shown.length(values.stripCut)} wide, each usable over ` +
                `${shown.length(values.stripLength)} at least. Measure yours: a set is only as long as its ` +
                `shortest strip.`,
            borderCloth && `Border: ${buy(borderCloth)}, ${wide}.`,
            stoneCloth && `Cornerstones: they need cloth of their own; ${buy(stoneCloth)}, ${wide}.`,
            bindingCloth && `Binding: ${buy(bindingCloth)}, ${wide}.`,
            backing &&
                `Backing: ${buy({ each: backing.best.bought, all: backing.best.forAll }, "")}, ` +
                    `${shown.length(values.fabricWidth)} wide.`,
            batting &&
                `Batting: ${plan.tops > 1 ? `${plan.tops} pieces of ` : ""}` +
                    `${shown.sizeAtLeast(batting.width, batting.length)}, cut${plan.tops > 1 ? ", one" : ""}` +
                    `${perTop(plan.tops)}.`
        ),
        list(
            `All the strips in hand make ${counted(plan.topsInHand, "top")} like this; one more would take ` +
                `${counted(plan.stripsForOneMoreTop, "more strip")}.`,
            "What to buy allows nothing for shrinking and nothing extra."
        ),
    ];
}

/** The one width to cut segments at; between all marks only where none will do. */
const segmentWidth = (shown, { plan, finest }) =>
    finest ? shown.between(plan.segmentCut) : shown.onMark(plan.segmentCut);

function cutting(shown, answer) {
    const { plan, values, border, binding } = answer;
    const { tops } = plan;
    const strips = (count) =>
        `${counted(count * tops, "strip")} across the cloth${tops > 1 ? ` (${count} for each top)` : ""}`;
    return list(
        `From the sewn strip sets: ${counted(plan.segments, "segment")}, cut ${segmentWidth(shown, answer)} wide.`,
        border && `Border: ${strips(border.strips)}, cut ${shown.cut(border.cutWidth)} wide, joined end to end.`,
        border &&
            border.cornerstoneCut > 0n &&
            `Cornerstones: ${4 * tops} squares, cut ${shown.cut(border.cornerstoneCut)}, from cloth of their own` +
                `${tops > 1 ? "; 4 for each top" : ""}.`,
        binding && `Binding: ${strips(binding.strips)}, cut ${shown.cut(values.bindingCut)} wide.`
    );
}

// ---- strip sets -----------------------------------------------------------------------------------------------------

function pressing(muslin, plan, values) {
    if (plan.sets > SETS_LISTED) return "These are too many sets to list; plan fewer tops at a time to see them.";
    const spec = specOf(values);
    const numbers = { toTop: [], toBottom: [] };
    for (let set = 1; set <= plan.sets; set++) numbers[muslin.stripquiltPressing(set, spec).pressing].push(set);
    const told = (own, where) =>
        own.length > 0 && `${own.length === 1 ? "set" : "sets"} ${numbered(own)}: ${where} strip A`;
    const ways = [told(numbers.toTop, "towards"), told(numbers.toBottom, "away from")].filter(Boolean);
    return `Press every seam flat as sewn, then over to one side, without steam or pulling: ${ways.join("; ")}.`;
}

function sewing(muslin, shown, { plan, values }) {
    const count = values.stripsPerSet;
    if (count === 1) return h("p", { class: "caution" }, "A set is a single strip here: there is nothing to sew yet.");
    const odd = count % 2 ? ", the odd strip last" : "";
    const last = count % 2 ? "then pairs together" : "then the pairs together";
    return list(
        `Sort the strips into ${counted(plan.sets, "pile")} of ${count}, ${counted(plan.stripsUsed, "strip")} in ` +
            `all, ` +
            "and lay each pile out in the order you like.",
        "Number the piles. The first strip of each pile is its strip A: label it with the number and the letter A, " +
            "so " +
            "that no set gets turned by mistake.",
        `Sew the strips of each pile long side to long side, ${counted(count - 1, "seam")} a set: in pairs first, ` +
            `${last}${odd}, each seam begun at the other end than the one before, so that the set stays straight.`,
        pressing(muslin, plan, values),
        `Each set must measure ${shown.length(plan.setUnfinished)} unfinished across the strips, at both ends and in ` +
            `the middle (${shown.length(plan.setFinished)} finished, ${shown.length(plan.stripFinished)} of each ` +
            "strip). Measure before you cut."
    );
}

/** Segments that are wider than a block takes, and what is trimmed of it; or that no mark gives. */
function wider(shown, { plan, values, sewnWidth, finest }) {
    if (finest)
        return (
            `No mark of a ruler gives ${counted(plan.segmentsPerSet, "segment")} a set: cut at ` +
            `${shown.fine(finest.cut)}, a set gives ${finest.gives}. Longer strips are safer.`
        );
    const trimmed = shown.sizeAlike(plan.blockUnfinishedWidth, plan.blockUnfinishedHeight);
    const sewn = values.segmentsPerBlock > 1 ? "sewn of such segments it" : "it";
    return (
        sewnWidth > plan.blockUnfinishedWidth &&
        `That is a little more than a block needs: ${sewn} is ${shown.onMark(sewnWidth)} wide. Trim each ` +
            `block to ${trimmed} unfinished, as much off one side as off the other.`
    );
}

function cuttingSets(shown, answer) {
    const { plan, values, straightThrough } = answer;
    const each = counted(plan.segmentsPerEnd, "segment");
    return list(
        `Across each set, cut ${counted(plan.segmentsPerSet, "segment")}, each cut ${segmentWidth(shown, answer)} ` +
            `wide (${shown.length(plan.segmentFinished)} finished); ` +
            `${shown.isNothing(plan.stripLeftOver) ? "nothing" : `a piece ${shown.length(plan.stripLeftOver)} long`} ` +
            "is left over. Lay the set open in one layer, with a line of the ruler on a seam.",
        wider(shown, answer),
        values.fromOneEnd
            ? `Square one end and cut ${each} from it.`
            : `Square one end and cut ${each} from it; turn the mat, not the set, square the other end and cut ` +
                  `${each} ` +
                  "from there. The fold stays in the piece left over.",
        values.foldClear === 0n &&
            straightThrough > plan.segmentsPerSet &&
            `Straight through from one end, across the fold, a set gives ${counted(straightThrough, "segment")}.`,
        plan.resquarings > 0 &&
            `Square the edge again after every ${counted(values.resquareEvery, "cut")} ` +
                `(${shown.length(values.resquareLoss)}).`,
        `Keep the segments of each set in one stack, strip A at the top: ${counted(plan.sets, "stack")}, numbered ` +
            "like the sets.",
        plan.segmentsLeft > 0 && leftOver(plan)
    );
}

function leftOver(plan) {
    const uses = `The plan uses ${counted(plan.segments, "segment")}`;
    const over = `${counted(plan.segmentsLeft, "segment")} stay over.`;
    return plan.stacksHigh === plan.sets
        ? `${uses}, ${plan.stackHigh} from each stack. ${over}`
        : `${uses}: ${plan.stackHigh} from each of the first ${counted(plan.stacksHigh, "stack")}, ${plan.stackLow} ` +
              `from each of the others. ${over}`;
}

/** How near the edge: what may come out less before the answer changes. */
function edges(shown, { plan, values }) {
    const lost = values.fromOneEnd ? "loses a segment" : "loses two segments, one at each end";
    const more = values.fromOneEnd ? "one segment more" : "two segments more, one at each end,";
    const isNear = shown.isLittle(plan.stripShorterBy);
    const down = plan.stripShorterBy > 0n ? `, down to ${shown.atLeast(plan.stripLeast)} usable` : "";
    return [
        h(
            "p",
            { class: isNear ? "caution" : undefined },
            `Each strip may be ${shown.atMost(plan.stripShorterBy)} shorter than planned${down}. Below that, its set ` +
                `${lost}.`
        ),
        h(
            "p",
            {},
            `For ${more} from each set, strips would have to be ${shown.atLeast(plan.stripLongerForMore)} longer.`
        ),
    ];
}

function sets(muslin, shown, answer) {
    const { plan, values, set } = answer;
    const strips = Array.from({ length: Math.min(values.stripsPerSet, 60) }, (_, index) => ({
        width: values.stripCut,
        letter: index === 0 ? "A" : String(index + 1),
        index,
    }));
    const segments = segmentsAlong(
        {
            ...values,
            segmentCut: plan.segmentCut,
            segmentsPerSet: plan.segmentsPerSet,
            segmentsPerEnd: values.fromOneEnd ? plan.segmentsPerSet : plan.segmentsPerEnd,
        },
        SEGMENTS_DRAWN
    );
    return [
        sewing(muslin, shown, answer),
        cuttingSets(shown, answer),
        edges(shown, answer),
        drawSet(
            strips,
            values.stripLength,
            segments,
            "A strip set: strips at the left, strip A at the top; segments in the order of cutting"
        ),
        set
            ? unfolds(
                  "sets",
                  "How the set comes out",
                  table(
                      "A strip set, added up",
                      ["What", "#Times", "#Each", "#Together"],
                      [
                          ["strips, cut", set.pieces, shown.length(values.stripCut), shown.length(set.cutTotal)],
                          ["seams take", set.seams, "", `− ${shown.length(set.eaten)}`],
                          ["set, unfinished", "", "", shown.length(set.unfinished)],
                          ["set, finished", "", "", shown.length(set.finished)],
                      ]
                  )
              )
            : null,
    ];
}

// ---- blocks ---------------------------------------------------------------------------------------------------------

/** Bit by bit, which segments are meant: 0, 1, ... */
function bits(sum) {
    return Array.from({ length: 32 }, (_, bit) => bit).filter((bit) => (sum >>> bit) & 1);
}

/** Which stacks meet in which blocks, and what is turned or does not lock there. */
function group({ firstBlock, blocks: count, sets: own, segments, turned, notNesting, repeats }) {
    const stacks = Array.from(own).slice(0, segments);
    const last = firstBlock + count - 1;
    const which =
        stacks.length === 1
            ? `stack ${stacks[0]}`
            : `each of stacks ${stacks.slice(0, -1).join(", ")} and ${stacks.at(-1)}, left to right`;
    const told = [
        ...bits(turned).map(
            (place) =>
                `Turn the one from stack ${stacks[place]} (${ORDINALS[place] ?? `${place + 1}th`} from the left) ` +
                `end for ` +
                "end, strip A to the bottom, so that the seams nest."
        ),
        ...bits(notNesting).map(
            (place) => `The seams of segments ${place + 1} and ${place + 2} do not nest: match them with a pin.`
        ),
        ...(repeats ? ["These blocks hold two segments of one set."] : []),
    ];
    return h(
        "li",
        {},
        `${last === firstBlock ? `Block ${last}` : `Blocks ${firstBlock} to ${last}`}: one segment from ${which}.`,
        told.length > 0 ? list(told) : null
    );
}

function blocks(shown, { plan, values, groups, sewnWidth }) {
    const across = values.segmentsPerBlock;
    return [
        h(
            "p",
            {},
            across > 1
                ? `${counted(plan.blocks, "block")}, each of ${counted(across, "segment")} sewn side by side, strips ` +
                      "A up unless told otherwise:"
                : `${counted(plan.blocks, "block")}, each a single segment with strip A up:`
        ),
        groups.length === 0
            ? h(
                  "p",
                  {},
                  `${plan.groups} different pairings are too many to list; plan fewer tops at a time to see them.`
              )
            : h("ul", { id: "stacks" }, groups.map(group)),
        list(
            plan.placesNotNesting > 0
                ? `${counted(plan.placesNotNesting, "pair")} of segments meet with seams that do not lock.`
                : across > 1 && "Seams lock wherever segments meet in a block.",
            across > 1 && blockPressing(values),
            `Each block must measure ${shown.sizeAlike(plan.blockUnfinishedWidth, plan.blockUnfinishedHeight)} ` +
                `unfinished${sewnWidth > plan.blockUnfinishedWidth ? " when it is trimmed" : ""} ` +
                `(${shown.sizeAlike(plan.blockFinishedWidth, plan.blockFinishedHeight)} finished). Measure the ` +
                `first one before you ${across > 1 ? "sew" : "cut"} the others.`
        ),
    ];
}

function blockPressing({ turning }) {
    if (turning === "none")
        return (
            "Press the seams between segments to the left in blocks for odd rows of the layout, to the right in " +
            "blocks " +
            "for even rows."
        );
    const left = "Press the seams between segments to the left in every block, before it is turned.";
    return turning === "quarterAlternate"
        ? `${left} Where such a seam meets a strip seam of a neighbour turned a quarter, not every pair can be ` +
              `pressed to ` +
              "nest: pin those that do not, or twist the seam there."
        : left;
}

// ---- top ------------------------------------------------------------------------------------------------------------

function top(muslin, shown, answer) {
    const { plan, values, border } = answer;
    const turned =
        values.turning === "halfAlternate"
            ? "Turn every other block upside down, like the squares of a chessboard."
            : `Turn every other block a quarter to the right, like the squares of a chessboard: ` +
              `${plan.blocksTurned} are turned${plan.tops > 1 ? " in each top" : ""}.`;
    return [
        list(
            `${plan.tops > 1 ? "Each top: " : ""}${counted(values.rows, "row")} of ` +
                `${counted(values.columns, "block")}.`,
            plan.blocksTurned > 0 && turned,
            "Spread blocks of the same stacks over the top, so that equal ones do not touch.",
            "Join the blocks into rows. Press the seams of odd rows to the left and of even rows to the right, so " +
                "that " +
                "they nest where rows meet; then join the rows.",
            `${plan.tops > 1 ? "Each" : "The"} top measures ` +
                `${shown.sizeAlike(plan.topUnfinishedWidth, plan.topUnfinishedLength)} unfinished ` +
                `(${shown.sizeAlike(plan.topFinishedWidth, plan.topFinishedLength)} finished).`
        ),
        topDrawing(muslin, answer),
        border ? [h("h3", {}, "Border"), borderWords(shown, border, values, plan.tops)] : null,
    ];
}

function topDrawing(muslin, answer) {
    const { plan, values, border } = answer;
    if (values.stripsPerSet * values.segmentsPerBlock > 400) return null;
    const columns = Math.min(values.columns, DRAWN_MOST),
        rows = Math.min(values.rows, DRAWN_MOST);
    const turns = Array.from({ length: columns * rows }, (_, index) =>
        muslin.settingTurn(values.turning, index % columns, Math.floor(index / columns))
    );
    const isWhole = columns === values.columns && rows === values.rows;
    return drawBlocks(
        drawBlock(muslin, answer),
        turns,
        columns,
        `The top, ${values.columns} by ${values.rows} blocks${isWhole ? "" : ", its first rows and columns"}` +
            `${border && isWhole ? ", with its border" : ""}` +
            `${plan.groups > 1 ? "; every block as the first of them" : ""}`,
        border && isWhole
            ? {
                  style: values.style,
                  width: Number(values.finishedBorder),
                  across: Number(plan.topFinishedWidth),
                  down: Number(plan.topFinishedLength),
              }
            : undefined
    );
}

function borderWords(shown, border, values, tops) {
    const [sides, ends] = [border.sideCutLength, border.topCutLength].map((one) => shown.cut(one));
    const stones = shown.cut(border.cornerstoneCut);
    const ways = {
        sidesFirst:
            `Cut two sides ${sides} long and sew them on; then cut top and bottom ${ends} long and sew ` +
            `them over both.`,
        topFirst:
            `Cut top and bottom ${ends} long and sew them on; then cut two sides ${sides} long and sew them ` +
            `over both.`,
        cornerstones:
            `Cut two sides ${sides} long, top and bottom ${ends} long, and four cornerstones cut ${stones} square. ` +
            `Sew ` +
            "the sides on; sew a cornerstone to each end of top and bottom, then sew those on.",
    };
    return list(
        "The lengths below are the arithmetic. Before the border is cut, measure your top across the centre and " +
            "near each " +
            "end, use the average, cut the border to that and ease the top to fit. Never sew on a long strip and " +
            "cut it " +
            "off where it ends.",
        `The border, ${shown.length(values.finishedBorder)} finished: pieces cut ${shown.cut(border.cutWidth)} ` +
            `wide.`,
        `${tops > 1 ? "For each top: " : ""}${ways[values.style]}`,
        `They come from ${counted(border.strips, "strip")}${perTop(tops)} cut across the cloth` +
            (border.joins > 0
                ? `, joined end to end: ${counted(border.joins, "join")}, ${shown.length(border.lossPerJoin)} lost ` +
                  `in each.`
                : "."),
        "Press each border seam towards the border.",
        `With its border ${tops > 1 ? "each" : "the"} top measures ` +
            `${shown.sizeAlike(border.unfinishedWidth, border.unfinishedLength)} unfinished ` +
            `(${shown.sizeAlike(border.finishedWidth, border.finishedLength)} finished).`
    );
}

// ---- finishing and what is assumed ----------------------------------------------------------------------------------

function finishing(shown, { written, backing, size }) {
    return [
        written.backing && [
            h("h3", {}, "Backing"),
            items(shown, written.backing),
            drawBacking(backing, size, shown, "Backing, with the quilt’s outline"),
            written.layouts.length > 0 ? otherLayouts(shown, written.layouts) : null,
        ],
        written.batting && [h("h3", {}, "Batting"), items(shown, written.batting)],
        [h("h3", {}, "Layers and quilting"), items(shown, written.layers)],
        written.binding && [h("h3", {}, "Binding"), items(shown, written.binding)],
    ];
}

function assumed(shown, values) {
    return list(
        `Seam allowance ${shown.fine(values.allowance)} on each edge${
            values.takeUp > 0n
                ? `, and ${shown.fine(values.takeUp)} more for fold and thread at every seam`
                : ", fold and thread included"
        }.`,
        values.endTrim > 0n
            ? `Each end of a set is squared by trimming ${shown.fine(values.endTrim)} off it.`
            : "Nothing is trimmed off the ends of a set.",
        values.fromOneEnd
            ? "Segments are cut straight through from one end."
            : values.foldClear > 0n
              ? `Segments are cut from both ends towards the middle, where ${shown.fine(values.foldClear)} is kept ` +
                `clear of ` +
                "cuts because of the fold."
              : "Segments are cut from both ends towards the middle; nothing is kept clear at the fold, but none " +
                "lies " +
                "across it.",
        "The strips are unwashed; do not wash them, they fray and shrink.",
        "Cloth is usable over the width said from end to end, without flaws. Nothing is added for shrinking, nor " +
            "for a " +
            "crooked cut in the shop."
    );
}
