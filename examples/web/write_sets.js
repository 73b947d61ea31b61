// Strip sets and their segments: what is sewn long side to long side, and cut across again; as in
// ../pattern/write_sets.c.
//
// SPDX-License-Identifier: MIT
import { atLeast, atMost, between, caution, line, plural, point, runs, under } from "./lines.js";
import { joinPressing } from "./write_pressing.js";

const SEGMENTS_MOST = 16,
    GROUPS_MOST = 60;
const REVERSED = { left: "to the right", right: "to the left", up: "downwards", down: "upwards", open: "open" };

const setsFor = (segments, own) => Math.ceil(segments / own.segmentsPerSet);

/** Whether no set need give both sorts of segments; a short last set gives the rest of one sort. */
function areApart(worked, own, { asShown, otherWay }) {
    const each = own.segmentsPerSet;
    if (shortSet(worked, own) && asShown % each !== 0 && otherWay % each !== 0) return false;
    return setsFor(asShown, own) + setsFor(otherWay, own) <= own.sets;
}

/** Of segments that are pressed the other way: how many sets are pressed so for them, and how many come from other sets
 * and are pressed anew once they are cut. */
export function otherSets(worked, seam) {
    const own = worked.setOf(seam.node);
    const each = own.segmentsPerSet;
    return areApart(worked, own, seam)
        ? { sets: setsFor(seam.otherWay, own), anew: 0 }
        : { sets: Math.floor(seam.otherWay / each), anew: seam.otherWay % each };
}

/** Which sets are pressed the other way. */
function otherPressing(worked, join) {
    const own = worked.setOf(join),
        seams = worked.seamsOf(join);
    if (!own || seams.length === 0 || seams[0].otherWay === 0 || seams[0].other !== "sets") return undefined;
    const [{ press, otherWay }] = seams;
    const { sets, anew } = otherSets(worked, seams[0]);
    const letter = worked.letterOf(join);
    const to = seams.every((seam) => seam.press === press) ? REVERSED[press] : "the other way";
    const whole =
        sets > 0 &&
        `Of the ${own.sets} sets press ${sets} with every seam ${to}: from ${sets === 1 ? "it" : "these"} cut ` +
            `${otherWay - anew} ${letter}*.`;
    const cut =
        anew > 0 &&
        `Cut ${anew} ${whole ? "more " : ""}${letter}* from ${whole ? "the other sets" : "these sets, too"}, ` +
            `and press every seam in them anew, ${to}.`;
    return point([whole, cut].filter(Boolean).join(" "));
}

/** Strips: their fabrics, in the order in which they lie. */
export function set(worked, step) {
    const isAcross = worked.node(step.node).axis === "across";
    const cuts = worked.partsOf(step.node).map((part) => worked.cutOfStrip(step.node, part.node));
    const strips = runs(cuts, (a, b) => a === b).map(({ first, count }) => {
        const cut = cuts[first];
        const strip = `[${worked.piece[cut]}] ${worked.fabricName(worked.cuts[cut].fabric)}`;
        return count > 1 ? `${count} strips ${strip}` : strip;
    });
    const turns = worked.setOf(step.node)?.turns;
    return [
        point(
            line`Sew strips long side to long side, from ${isAcross ? "left to right" : "top to bottom"}: ${between(
                strips,
                ", "
            )}. The set is ${isAcross ? step.unfinishedWidth : step.unfinishedHeight} wide unfinished.`
        ),
        joinPressing(worked, step.node),
        otherPressing(worked, step.node),
        !turns &&
            point(
                `Pin a label to the ${isAcross ? "left" : "top"} strip of each set, and to that end of each segment ` +
                    `as it is cut, so that nothing gets turned: it is the ${isAcross ? "left" : "upper"} end.`
            ),
    ].filter(Boolean);
}

// ---- stacks ---------------------------------------------------------------------------------------------------------

/** All strips of the set come from one bundle, in which every strip is another print. */
function bundleOf(worked, join) {
    const fabrics = new Set(
        worked.cuts
            .filter((cut, index) => cut.source === "setStrip" && worked.isCutFor(index, join))
            .map((cut) => cut.fabric)
    );
    const [fabric] = fabrics;
    const cloth = worked.design.fabrics.find((one) => one.id === fabric);
    return fabrics.size === 1 && cloth.stripCut.ticks > 0n ? cloth : undefined;
}

/** The step that joins segments of this set alone, side by side: how many in each, and of how many. */
function pairOf(worked, join) {
    const step = worked.steps.findIndex(
        ({ kind }, i) => kind === "join" && worked.feeds[i].length === 1 && worked.feeds[i][0].node === join
    );
    return step < 0 ? undefined : { each: worked.feeds[step][0].each, make: worked.steps[step].alike };
}

function groupsOf(worked, own) {
    const bundle = bundleOf(worked, own.node);
    const pair = bundle && pairOf(worked, own.node);
    if (own.sets < 2 || !pair || pair.each > SEGMENTS_MOST) return [];
    const { endTrim, resquareLoss, resquareEvery, foldClear } = worked.design.solve;
    const spec = {
        strips: own.sets * own.strips,
        stripsPerSet: own.strips,
        segmentsPerBlock: pair.each,
        columns: pair.make,
        rows: 1,
        tops: 1,
        stripCut: bundle.stripCut,
        stripLength: own.stripLength,
        segmentCut: own.segmentCut,
        ...worked.seam,
        endTrim,
        resquareLoss,
        resquareEvery,
        foldClear,
        fromOneEnd: foldClear.ticks === 0n,
        turning: "none",
        nesting: "name",
    };
    return worked.quietly(() => worked.muslin.stripquiltGroups(spec)) ?? [];
}

function group({ firstBlock, blocks, segments: count, sets, repeats }) {
    const last = firstBlock + blocks - 1;
    const where = last === firstBlock ? `block ${last}` : `blocks ${firstBlock} to ${last}`;
    const stacks = Array.from(sets)
        .slice(0, count)
        .map((one, i) => `${i === 0 ? "s" : i + 1 === count ? " and" : ","} ${one}`)
        .join("");
    return under(`${where}: one segment each of stack${stacks}${repeats ? "; a print meets itself in these" : ""}.`);
}

/** Which stacks meet in which blocks, so that no block has a print twice. */
function stacks(worked, own) {
    const groups = groupsOf(worked, own);
    if (groups.length === 0) return [];
    return [
        point(
            `Lay the segments of each set on a stack of its own, sets 1 to ${own.sets}. So that no block has a print ` +
                "twice, take for"
        ),
        ...groups.slice(0, GROUPS_MOST).map(group),
    ];
}

// ---- segments -------------------------------------------------------------------------------------------------------

/** Of segments whose width lies between two marks. */
function trimmedBack(worked, own) {
    if (worked.shown.toMark(own.segmentCut.ticks) === own.segmentCut.ticks) return [];
    return worked.segmentMark(own) > own.segmentCut.ticks
        ? point(
              "That is a little more than a segment needs: trim what is sewn of them to its unfinished size, as much " +
                  "off one side as off the other."
          )
        : caution("No mark of a ruler gives so many: cut to the next one, a set gives fewer.");
}

/** As it is told where segments are cut, and written beside a drawing. */
function segmentMeasured({ shown }, cut) {
    return shown.toMark(cut) === cut ? shown.length(cut) : shown.fine(cut);
}

/** A last set for one or two segments can be sewn of short strips: how many they are, and how long. */
export function shortSet(worked, own) {
    const last = own.segments - (own.sets - 1) * own.segmentsPerSet;
    if (!own.used || own.sets < 2 || last > 2) return undefined;
    const cut = worked.segmentMark(own);
    return { last, length: worked.muslin.lengthDot([cut, worked.design.solve.endTrim], [last, 2]) };
}

function ends(worked, own) {
    const { foldClear, endTrim, resquareEvery, resquareLoss } = worked.design.solve;
    const isClear = foldClear.ticks > 0n;
    return line`Square ${isClear ? "both ends" : "one end"} of each set${
        endTrim.ticks > 0n && line` (${endTrim} is allowed at each end)`
    } and cut segments ${segmentMeasured(worked, worked.segmentMark(own))} wide across it${
        isClear &&
        line`, from both ends towards the fold: keep ${foldClear} clear in the middle, ${
            foldClear.ticks / 2n
        } to either side of the fold`
    }. ${
        resquareEvery > 0 &&
        line`Square the end again after every ${resquareEvery} cut${plural(resquareEvery)}: ${resquareLoss} is allowed
            for that. `
    }`;
}

function given(worked, own) {
    const { segmentsPerSet: each, sets, segments: wanted, spare } = own;
    const all = sets > 1 ? `, ${sets} sets give ${sets * each}` : "";
    const over = spare > 0 ? `${spare} over.` : "none over: there is none to spoil.";
    const short = shortSet(worked, own);
    return line`A set gives ${each}${all}; ${wanted} needed, ${over}${
        short &&
        line` The last set is sewn for only ${short.last} of them: strips ${atLeast(short.length)} long are enough for
            it.`
    }`;
}

export function segments(worked, step) {
    const own = worked.setOf(step.node);
    if (!own) return [];
    return [
        point(line`${ends(worked, own)}${given(worked, own)}`),
        trimmedBack(worked, own),
        ...stacks(worked, own),
        worked.isNothing(worked.slackOf(own))
            ? caution("Strips must have their full length: any shorter, and a set gives less.")
            : point(line`Strips may be up to ${atMost(worked.slackOf(own))} shorter before a set gives less.`),
    ].flat();
}
