// A pattern file's size as a written pattern: materials, cutting, strip sets, blocks, top, finishing.
//
// SPDX-License-Identifier: MIT
import { counted, h, list, table, unfolds } from "./dom.js";
import { drawCloth, drawSet, drawTop, swatch } from "./draw.js";
import { backingWords, battingWords, bindingWords, edge, warned } from "./wording.js";

const ROWS_MOST = 400,
    COMPLAINTS_SHOWN = 50,
    PLANS_DRAWN = 600;
const PRESSED = { left: "to the left", right: "to the right", up: "upwards", down: "downwards", open: "open" };
const SHAPES = {
    triangles: " triangles",
    diamonds: " diamonds",
    hexagons: " hexagons",
    trapezoids: " trapezoids",
    wedges: " wedges",
    octagons: " octagons",
    slices: " slices",
};
const AGAIN = { once: "cut once on the diagonal", twice: "cut twice on the diagonal" };
const STEPS = {
    set: "sew strip sets",
    segments: "cut segments",
    unit: "sew units",
    shape: "sew",
    join: "join",
    trim: "trim",
    pinwheel: "sew round a centre",
    setIn: "sew on, mitring the corners",
    diagonal: "join in diagonal rows",
    sixty: "join in rows",
};
const TERMS = {
    measure: "measure",
    child: "part",
    greatest: "the greatest of its parts",
    allowance: "seam allowance",
    takeUp: "fold and thread",
    trimmed: "trimmed away",
    diagonal: "diagonals",
    sixty: "half sides of triangles",
    drawn: "as drawn",
    half: "half of",
};

/** What is wrong with a file, each with its place and value. */
export function complaintList(complaints) {
    const more = complaints.length - COMPLAINTS_SHOWN;
    return h(
        "div",
        { class: "complaints", role: "group", "aria-label": "What is wrong with the pattern file" },
        h("p", {}, h("b", {}, `${counted(complaints.length, "thing")} must be mended in the pattern file:`)),
        h(
            "ul",
            {},
            complaints
                .slice(0, COMPLAINTS_SHOWN)
                .map(({ place, value, sentence, line, column }) =>
                    h(
                        "li",
                        {},
                        h("code", {}, place === "" ? "the file" : place),
                        line ? ` (line ${line}, column ${column})` : "",
                        value === null || value === undefined ? "" : [" has ", h("code", {}, value)],
                        `: ${sentence}`
                    )
                )
        ),
        more > 0 ? h("p", {}, `And ${more} more.`) : null
    );
}

export function patternSummary(shown, facts) {
    const { top, totals, misfits } = facts;
    return (
        `The top is ${shown.size(top.finishedWidth, top.finishedHeight)} finished, ` +
        `${shown.size(top.unfinishedWidth, top.unfinishedHeight)} unfinished, of ` +
        `${counted(totals.patches, "patch", "patches")}` +
        `${facts.tops > 1 ? ` in ${facts.tops} tops` : ""}.` +
        `${misfits.length > 0 ? ` ${counted(totals.misfits, "pair")} of edges do not meet.` : ""}`
    );
}

/** What follows from a size that came out: nodes by section. `cloth` comes later. */
export function patternSections(muslin, shown, facts, cloth) {
    const warnings = [
        facts.totals.warnings,
        facts.cuts.flatMap((cut) => cut.warnings),
        facts.sets.flatMap((set) => set.warnings),
        facts.binding?.warnings ?? [],
        facts.bed?.warnings ?? [],
    ];
    return {
        plan: [
            h("p", { class: "answer" }, patternSummary(shown, facts)),
            misfits(shown, facts),
            warned(muslin, ...warnings),
        ],
        materials: materials(shown, facts, cloth),
        cutting: [cutting(shown, facts), ...plans(shown, facts, cloth)],
        sets:
            facts.sets.length === 0
                ? h("p", {}, "There are no strip sets: every piece is cut by itself.")
                : facts.sets.slice(0, 20).map((set) => stripSet(shown, facts, set)),
        blocks: blocks(shown, facts),
        top: top(shown, facts),
        finishing: finishing(shown, facts),
        assumed: assumed(shown, facts),
    };
}

function misfits(shown, { misfits: rows, tops }) {
    return rows
        .slice(0, 20)
        .map((row) =>
            h(
                "p",
                { class: "caution" },
                `In ${row.name}${row.place ? ` (${row.place})` : ""}: parts ` +
                    `${row.first + 1} and ${row.second + 1} measure ${shown.length(row.firstSize)} and ` +
                    `${shown.length(row.secondSize)} finished where they are ` +
                    `sewn together (${counted(row.count, "time")}${tops > 1 ? " in all" : ""})` +
                    `${row.kind === "eased" ? ": ease them to each other" : ""}.`
            )
        );
}

// ---- materials ------------------------------------------------------------------------------------------------------

function bought(shown, fabric, row) {
    if (!row) return ["…", "…"];
    if (row.stripCut > 0n)
        return [
            `${counted(row.stripsNeeded, "strip")} cut ` +
                `${shown.length(row.stripCut)}${row.stripsHave > 0 ? `, of ${row.stripsHave}` : ""}`,
            row.stripsHave > 0 ? `gives ${counted(row.topsGiven, "top")}` : "",
        ];
    const spare = row.spare > 0n ? `${shown.atMost(row.spare)} to spare` : "nothing to spare";
    const width =
        row.narrowestWidth < row.usableWidth
            ? `enough down to ${shown.atLeast(row.narrowestWidth)} wide`
            : "must have its full width";
    return [shown.cloth(row.bought), `${spare}; ${width}`];
}

function materials(shown, facts, cloth) {
    const rowOf = (index) => cloth?.rows.find((row) => row.fabric === index);
    const isUsed = (index) => !cloth || rowOf(index);
    const { backing, batting } = facts;
    return [
        table(
            "Fabrics",
            ["Fabric", "Name", "Usable width", "Buy", "How near the edge"],
            facts.fabrics
                .slice(0, ROWS_MOST)
                .flatMap((fabric, index) =>
                    isUsed(index)
                        ? [
                              [
                                  [swatch(fabric, index), ` ${fabric.letter}`],
                                  fabric.name,
                                  shown.length(fabric.usableWidth),
                                  ...bought(shown, fabric, rowOf(index)),
                              ],
                          ]
                        : []
                )
        ),
        cloth?.rows.some((row) => !row.proven)
            ? h("p", {}, "Not proven to be the least cloth: the search was ended before.")
            : null,
        list(
            backing &&
                `Backing: buy ${shown.cloth(backing.best.bought)}${backing.name ? ` of ${backing.name}` : ""}, ` +
                    `${shown.length(backing.width)} wide.`,
            batting && `Batting: ${shown.size(batting.width, batting.length)}, cut.`
        ),
    ];
}

// ---- cutting --------------------------------------------------------------------------------------------------------

function pieceWords(cut) {
    if (cut.source === "setStrip") return "strips for sets";
    const name =
        cut.shape === "rectangle"
            ? cut.cutWidth === cut.cutHeight
                ? "squares"
                : "pieces"
            : (SHAPES[cut.shape] ?? "pieces").trim();
    const more = [
        AGAIN[cut.again] && `${AGAIN[cut.again]}: ${cut.pieces} pieces`,
        cut.joined && "joined from strips",
        cut.border && "after the top is measured",
        cut.hand === "mirrored" && "reversed",
    ].filter(Boolean);
    return [name, ...more].join(", ");
}

function cutting(shown, facts) {
    return facts.fabrics.slice(0, ROWS_MOST).map((fabric, index) => {
        const cuts = facts.cuts.filter((cut) => cut.fabric === index).slice(0, ROWS_MOST);
        return cuts.length === 0
            ? null
            : table(
                  `Fabric ${fabric.letter}, ${fabric.name}: sizes are cut`,
                  ["Piece", "#Cut", "Size, cut", "What", "For"],
                  cuts.map((cut) => [
                      `[${cut.piece}]`,
                      cut.count,
                      cut.source === "setStrip"
                          ? `${shown.length(cut.cutHeight)} wide, usable width`
                          : shown.size(cut.cutWidth, cut.cutHeight),
                      pieceWords(cut),
                      cut.uses.join(", "),
                  ])
              );
    });
}

function plans(shown, facts, cloth) {
    const isThere = cloth && cloth.rows.length > 0;
    return [
        isThere ? h("h3", {}, "How the cloth is cut up") : null,
        isThere
            ? h(
                  "p",
                  {},
                  "Strips are cut across the cloth from its straightened " +
                      "end, at the top. Numbers are those of the pieces; what is dotted is left over."
              )
            : null,
        (cloth?.rows ?? []).map((row) => {
            const fabric = facts.fabrics[row.fabric];
            if (row.plan.places.length > PLANS_DRAWN)
                return h("p", {}, `The cutting plan of ${fabric.name} has too many parts to be drawn.`);
            return drawCloth(
                row.plan,
                fabric.usableWidth,
                fabric,
                row.fabric,
                shown,
                `Fabric ${fabric.letter}, ${fabric.name}, laid out on ${shown.length(fabric.usableWidth)} of ` +
                    `usable width`
            );
        }),
    ];
}

// ---- sets, blocks, top ----------------------------------------------------------------------------------------------

function stripSet(shown, facts, set) {
    const strips = set.strips.map(({ fabric, width }) => ({
        width,
        index: fabric,
        fabric: facts.fabrics[fabric],
        letter: facts.fabrics[fabric].letter,
    }));
    const cut = Number(set.segmentCut),
        trim = Number(facts.endTrim);
    const segments = Array.from({ length: Math.min(set.segmentsPerSet, 100) }, (_, i) => ({
        from: trim + i * cut,
        to: trim + (i + 1) * cut,
    }));
    return h(
        "div",
        {},
        h("h3", {}, `Strip set ${set.letter}, ${set.name}`),
        list(
            `Sew ${counted(set.sets, "set")} of ${counted(set.count, "strip")}: ` +
                `${shown.length(set.setUnfinished)} wide unfinished.`,
            `Cut ${counted(set.segments, "segment")} from them, cut ${shown.length(set.segmentCut)} wide; a set ` +
                `gives ${set.segmentsPerSet}, ` +
                `${counted(set.spare, "segment")} to spare.`
        ),
        edge(shown, set.shorterBy, "Strips", "a set gives one segment less"),
        drawSet(
            strips,
            set.stripLength,
            segments,
            `Strip set ${set.letter}: strips with their fabrics, segments in the order of cutting`
        )
    );
}

function partWords(parts) {
    return parts
        .map(({ each, piece, letter }) => `${each > 1 ? `${each} × ` : ""}${piece ? `[${piece}]` : letter}`)
        .join(", ");
}

function pressedWords({ pressed, otherWay }) {
    const ways = [...new Set(pressed.map((press) => PRESSED[press]))].join(", ");
    return otherWay > 0 ? `${ways}; ${otherWay} the other way` : ways;
}

function stepTable(shown, caption, steps) {
    return table(
        caption,
        ["Step", "What", "#Make", "From each", "Size, unfinished", "Seams pressed"],
        steps
            .slice(0, ROWS_MOST)
            .map((step) => [
                step.letter,
                `${STEPS[step.kind]}: ${step.name}`,
                step.make,
                partWords(step.parts),
                shown.size(step.unfinishedWidth, step.unfinishedHeight),
                pressedWords(step),
            ])
    );
}

function isOfBlocks(facts) {
    const last = facts.steps.findLastIndex((step) => step.isBlock);
    return last < 0 ? facts.steps.length - 1 : last + 1;
}

function blocks(shown, facts) {
    const made = facts.steps.filter((step) => step.isBlock);
    return [
        list(
            made.map(
                (step) =>
                    `${step.make} × ${step.name} ${step.letter}: ` +
                    `${shown.size(step.unfinishedWidth, step.unfinishedHeight)} unfinished.`
            )
        ),
        made.length > 0 ? h("p", {}, "Sew one of each first, and measure it.") : null,
        stepTable(shown, "Sewing of units and blocks, in order", facts.steps.slice(0, isOfBlocks(facts))),
    ];
}

function working(shown, facts) {
    const sum = (axis, what) =>
        table(
            `How the ${what} of the top comes about`,
            ["Term", "#Times", "#Adds", "#Up to here", "Size"],
            facts.working[axis]
                .slice(0, ROWS_MOST)
                .map((term) => [
                    `${TERMS[term.kind] ?? term.kind} ${term.what ?? ""}`.trim(),
                    term.times,
                    shown.length(term.value),
                    shown.length(term.sum),
                    term.finished ? "finished" : "unfinished",
                ])
        );
    return unfolds("working", "How width and height come about", sum("across", "width"), sum("down", "height"));
}

function top(shown, facts) {
    const { top: size, sewn, pressed } = facts;
    return [
        list(
            `Unfinished ${shown.size(size.unfinishedWidth, size.unfinishedHeight)}, finished ` +
                `${shown.size(size.finishedWidth, size.finishedHeight)}.`,
            `${shown.cloth(sewn.sewn)} of seams. Were each seam 1/32 in off, all the same way, the top would ` +
                `come out ` +
                `${shown.size(sewn.widthWorst, sewn.heightWorst)} off.`,
            pressed &&
                `Seams meet in ${counted(pressed.meetings, "place")}; they do not lie opposite ways in ` +
                    `${pressed.exceptions}, and no plan has fewer ` +
                    `than ${pressed.least}.`
        ),
        drawTop(facts.drawing, facts.fabrics, "The top, finished, in its fabrics"),
        h(
            "ul",
            { class: "key" },
            facts.fabrics
                .slice(0, 60)
                .map((fabric, index) => h("li", {}, swatch(fabric, index), ` ${fabric.letter}: ${fabric.name}`))
        ),
        working(shown, facts),
        stepTable(shown, "Sewing of the top, in order", facts.steps.slice(isOfBlocks(facts))),
    ];
}

// ---- the rest -------------------------------------------------------------------------------------------------------

function finishing(shown, { binding, batting, backing, sleeve, bed, top: size }) {
    const quilt = { quiltWidth: size.finishedWidth, quiltLength: size.finishedHeight };
    return [
        binding ? bindingWords(shown, binding, binding.bindingCut, binding.reckoned) : null,
        batting ? battingWords(shown, batting) : null,
        backing ? backingWords(shown, backing, quilt) : null,
        list(
            sleeve &&
                `Hanging sleeve: ${counted(sleeve.sleeves, "piece")}, cut ` +
                    `${shown.size(sleeve.sleeveCutLength, sleeve.sleeveCutWidth)}.`,
            bed &&
                `On the bed it hangs ${shown.length(bed.sideDrop)} at the sides, ${shown.length(bed.footDrop)} ` +
                    `at the foot.`
        ),
        binding || batting || backing || sleeve || bed ? null : h("p", {}, "The file says nothing of finishing."),
    ];
}

function assumed(shown, { allowance, totals, grid, endTrim }) {
    return list(
        `Seam allowance ${shown.length(allowance)} on each edge, fold included, in all sizes to cut and all ` +
            `unfinished sizes.`,
        "Cloth is usable over the width said from end to end, without flaws.",
        endTrim > 0n && `Squaring takes ${shown.length(endTrim)} at either end of a strip set.`,
        !totals.exact &&
            `Lengths on the slant are no whole fractions; cut sizes of triangles are brought to the next ` +
                `${shown.length(grid)}.`,
        "“About”: the exact length lies between two marks of a ruler, and is told to the nearest."
    );
}
