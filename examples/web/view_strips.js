// A strip quilt as a written pattern: materials, cutting, strip sets, blocks, top, finishing.
//
// SPDX-License-Identifier: MIT
import { counted, h, list, table, unfolds } from "./dom.js";
import { drawBlocks, drawSet } from "./draw.js";
import { drawBlock, specOf } from "./strips.js";
import { backingWords, battingWords, bindingWords, edge, warned } from "./wording.js";

const DRAWN_MOST = 36,
    SEGMENTS_DRAWN = 200,
    SETS_LISTED = 60;

/** What follows from a plan that came out: nodes by section. */
export function stripSections(muslin, shown, answer) {
    const { plan, values, border, binding, size } = answer;
    return {
        plan: [
            h("p", { class: "answer" }, summary(shown, answer)),
            warned(muslin, plan.warnings, border?.warnings ?? [], binding?.warnings ?? []),
        ],
        materials: materials(shown, answer),
        cutting: cutting(shown, answer),
        sets: sets(muslin, shown, answer),
        blocks: blocks(shown, answer),
        top: top(muslin, shown, answer),
        finishing: [
            binding ? bindingWords(shown, binding, values.bindingCut) : null,
            answer.batting ? battingWords(shown, answer.batting) : null,
            answer.backing ? backingWords(shown, answer.backing, size) : null,
        ],
        assumed: assumed(shown, values),
    };
}

export function summary(shown, { plan, size }) {
    const edges = plan.warnings.includes("noSlack") ? " It stands exactly on its edge." : "";
    return (
        `${counted(plan.tops, "top")} of ${shown.size(size.quiltWidth, size.quiltLength)} finished, from ` +
        `${counted(plan.stripsUsed, "strip")} in ${counted(plan.sets, "set")}; ` +
        `${counted(plan.stripsLeft, "strip")} and ` +
        `${counted(plan.segmentsLeft, "segment")} are left over.${edges}`
    );
}

function materials(shown, { plan, values, border, borderCloth, binding, batting, backing }) {
    return [
        list(
            `${counted(values.strips, "strip")}, cut ${shown.length(values.stripCut)} wide, each usable over ` +
                `${shown.length(values.stripLength)} at least.`,
            border &&
                borderCloth &&
                `Border: buy ${shown.cloth(borderCloth.bought)} of cloth, usable ` +
                    `${shown.length(values.clothWidth)} wide.`,
            binding && `Binding: buy ${shown.cloth(binding.bought)} of that width.`,
            backing && `Backing: buy ${shown.cloth(backing.best.bought)}, ${shown.length(values.fabricWidth)} wide.`,
            batting && `Batting: ${shown.size(batting.width, batting.length)}, cut.`
        ),
        h(
            "p",
            {},
            `All ${counted(values.strips, "strip")} give ${counted(plan.topsInHand, "top")} like this; one more ` +
                `takes ` +
                `${counted(plan.stripsForOneMoreTop, "strip")} more.`
        ),
    ];
}

function cutting(shown, { plan, values, border, binding }) {
    return list(
        `From the sewn strip sets: ${counted(plan.segments, "segment")}, cut ${shown.length(plan.segmentCut)} wide.`,
        border &&
            `Border: ${counted(border.strips, "strip")} across the cloth, cut ${shown.length(border.cutWidth)} ` +
                `wide, joined end to end.`,
        border && border.cornerstoneCut > 0n && `Cornerstones: 4 squares, cut ${shown.length(border.cornerstoneCut)}.`,
        binding &&
            `Binding: ${counted(binding.strips, "strip")} across the cloth, cut ` +
                `${shown.length(values.bindingCut)} wide.`
    );
}

// ---- strip sets -----------------------------------------------------------------------------------------------------

function pressing(muslin, plan, values) {
    if (plan.sets > SETS_LISTED) return null;
    const spec = specOf(values);
    const numbers = { toTop: [], toBottom: [] };
    for (let set = 1; set <= plan.sets; set++) numbers[muslin.stripquiltPressing(set, spec).pressing].push(set);
    const told = (sets, where) =>
        sets.length > 0 &&
        `Press the seams of ${sets.length === 1 ? "set" : "sets"} ${sets.join(", ")} towards the ${where}.`;
    return list(told(numbers.toTop, "first strip"), told(numbers.toBottom, "last strip"));
}

/** Where segments begin and end along a set. */
function segmentsOf(plan, values) {
    const cut = Number(plan.segmentCut),
        trim = Number(values.endTrim),
        length = Number(values.stripLength);
    const from = (count) =>
        Array.from({ length: Math.min(count, SEGMENTS_DRAWN) }, (_, i) => {
            const squared =
                values.resquareEvery > 0 ? Math.floor(i / values.resquareEvery) * Number(values.resquareLoss) : 0;
            return { from: trim + squared + i * cut, to: trim + squared + (i + 1) * cut };
        });
    const left = from(values.fromOneEnd ? plan.segmentsPerSet : plan.segmentsPerEnd);
    const right = values.fromOneEnd ? [] : from(plan.segmentsPerSet - plan.segmentsPerEnd);
    return [...left, ...right.map(({ from: a, to }) => ({ from: length - to, to: length - a }))];
}

function sets(muslin, shown, { plan, values, set }) {
    const strips = Array.from({ length: Math.min(values.stripsPerSet, 60) }, (_, index) => ({
        width: values.stripCut,
        letter: String(index + 1),
        index,
    }));
    return [
        list(
            `Sew ${counted(plan.sets, "set")} of ${counted(values.stripsPerSet, "strip")} long side to long ` +
                `side: each ` +
                `${shown.length(plan.setUnfinished)} wide unfinished, ${shown.length(plan.setFinished)} finished.`,
            `A strip is then ${shown.length(plan.stripFinished)} wide finished.`,
            `From each set ${counted(plan.segmentsPerSet, "segment")}, cut ${shown.length(plan.segmentCut)} wide; ` +
                `${shown.length(plan.stripLeftOver)} of its length is left over.`
        ),
        pressing(muslin, plan, values),
        edge(shown, plan.stripShorterBy, "The usable strips", "a set gives one segment less"),
        h(
            "p",
            {},
            `For one segment more from each set, strips would have to be ` +
                `${shown.atLeast(plan.stripLongerForMore)} longer.`
        ),
        drawSet(
            strips,
            values.stripLength,
            segmentsOf(plan, values),
            "A strip set: strips numbered at the left, segments in the order of cutting"
        ),
        unfolds(
            "sets",
            "How the set comes out",
            set
                ? table(
                      "A strip set, added up",
                      ["What", "#Times", "#Each", "#Together"],
                      [
                          ["strips, cut", set.pieces, shown.length(values.stripCut), shown.length(set.cutTotal)],
                          ["seams take", set.seams, "", `− ${shown.length(set.eaten)}`],
                          ["set, unfinished", "", "", shown.length(set.unfinished)],
                          ["set, finished", "", "", shown.length(set.finished)],
                      ]
                  )
                : null,
            list(
                `The shortest strip that gives as many segments is usable over ${shown.atLeast(plan.stripLeast)}.`,
                `${counted(plan.segmentsPerEnd, "segment")} ` +
                    `${values.fromOneEnd ? "are cut straight through" : "can be cut from each end"}.`,
                `The cut edge is squared again ${counted(plan.resquarings, "time")} in each set.`
            )
        ),
    ];
}

// ---- blocks and top -------------------------------------------------------------------------------------------------

function blocks(shown, { plan, values, groups }) {
    const meets =
        groups.length === 0
            ? null
            : unfolds(
                  "blocks",
                  "Which stacks of segments meet",
                  table(
                      "Blocks, and the sets that their segments come from",
                      ["Blocks", "#How many", "Segments of sets", "Turned end for end", "Do not lock"],
                      groups.map((group) => [
                          `${group.firstBlock} to ${group.firstBlock + group.blocks - 1}`,
                          group.blocks,
                          [...group.sets].slice(0, group.segments).join(", "),
                          bits(group.turned),
                          bits(group.notNesting),
                      ])
                  )
              );
    return [
        list(
            `Make ${counted(plan.blocks, "block")} of ${counted(values.segmentsPerBlock, "segment")}: ` +
                `${shown.size(plan.blockUnfinishedWidth, plan.blockUnfinishedHeight)} unfinished, ` +
                `${shown.size(plan.blockFinishedWidth, plan.blockFinishedHeight)} finished.`,
            plan.placesNotNesting > 0
                ? `${counted(plan.placesNotNesting, "pair")} of segments meet with seams that do not lock.`
                : "Seams lock wherever segments meet in a block.",
            plan.segmentsTurned > 0 &&
                `${counted(plan.segmentsTurned, "segment")} are turned end for end so that they do.`
        ),
        meets,
    ];
}

/** Bit by bit, which segments are meant: 1, 2, ... */
function bits(sum) {
    const found = [];
    for (let bit = 0; bit < 16; bit++) if ((sum >>> bit) & 1) found.push(bit + 1);
    return found.length === 0 ? "none" : found.join(", ");
}

function top(muslin, shown, answer) {
    const { plan, values, border } = answer;
    const columns = Math.min(values.columns, DRAWN_MOST),
        rows = Math.min(values.rows, DRAWN_MOST);
    const turns = Array.from({ length: columns * rows }, (_, index) =>
        muslin.settingTurn(values.turning, index % columns, Math.floor(index / columns))
    );
    const whole = columns === values.columns && rows === values.rows;
    const canDraw = values.stripsPerSet * values.segmentsPerBlock <= 400;
    return [
        list(
            `${values.columns} blocks across, ${values.rows} down: ` +
                `${shown.size(plan.topUnfinishedWidth, plan.topUnfinishedLength)} unfinished, ` +
                `${shown.size(plan.topFinishedWidth, plan.topFinishedLength)} finished.`,
            plan.blocksTurned > 0 && `${counted(plan.blocksTurned, "block")} are turned.`,
            border &&
                `Measure the top through the middle before you cut border strips: sides ` +
                    `${shown.length(border.sideCutLength)}, ` +
                    `top and bottom ${shown.length(border.topCutLength)}, cut ${shown.length(border.cutWidth)} wide.`,
            border &&
                `With its border the top is ${shown.size(border.unfinishedWidth, border.unfinishedLength)} ` +
                    `unfinished, ` +
                    `${shown.size(border.finishedWidth, border.finishedLength)} finished.`
        ),
        canDraw
            ? drawBlocks(
                  drawBlock(muslin, answer),
                  turns,
                  columns,
                  `The top${border ? " without its border" : ""}, ` +
                      `${values.columns} by ${values.rows} blocks${whole ? "" : ", its first rows and columns"}`
              )
            : null,
    ];
}

function assumed(shown, values) {
    return list(
        `Seam allowance ${shown.length(values.allowance)} on each edge${
            values.takeUp > 0n
                ? `, and ${shown.length(values.takeUp)} more for fold and thread at every seam`
                : ", fold and thread included"
        }.`,
        values.endTrim > 0n
            ? `Each end of a set is squared by trimming ${shown.length(values.endTrim)} off it.`
            : "Nothing is trimmed off the ends of a set.",
        values.fromOneEnd
            ? "Segments are cut straight through from one end."
            : "Segments are cut from both ends towards the middle.",
        values.foldClear > 0n && `${shown.length(values.foldClear)} is kept clear of cuts on either side of the fold.`,
        "Strips are as long as the shortest of them; they are unwashed, and are not washed before they are sewn.",
        "Cloth is usable over the width said from end to end, without flaws. Nothing is added for shrinking."
    );
}
