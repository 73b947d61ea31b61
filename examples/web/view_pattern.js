// A pattern file's size as a written pattern: materials, cutting, strip sets, blocks, top, finishing. What is
// written the size brings along; drawings are put beside it.
//
// SPDX-License-Identifier: MIT
import { items } from "./document.js";
import { counted, h, list, table, unfolds } from "./dom.js";
import { drawBacking, drawCloth, drawPart, drawSet, drawTop, segmentsAlong, swatch } from "./draw.js";
import { warned } from "./wording.js";
import { capital } from "./words.js";

const ROWS_MOST = 400,
    PLANS_DRAWN = 600,
    SEGMENTS_DRAWN = 100;

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
    const { written } = facts;
    return {
        plan: [
            h("p", { class: "answer" }, patternSummary(shown, facts)),
            misfits(shown, facts),
            warned(muslin, facts.totals.warnings, facts.bed?.warnings ?? []),
        ],
        materials: materials(shown, facts, cloth),
        cutting: cutting(shown, facts, cloth),
        sets:
            written.steps.sets.length === 0
                ? h("p", {}, "There are no strip sets: every piece is cut by itself.")
                : steps(shown, facts, written.steps.sets),
        blocks: [
            items(shown, [...written.tests, ...written.starred]),
            madeBlocks(shown, facts),
            steps(shown, facts, written.steps.blocks),
        ],
        top: top(shown, facts),
        finishing: finishing(shown, facts, cloth),
        assumed: items(shown, [...written.assumed, ...written.slant]),
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

// ---- materials and cutting ------------------------------------------------------------------------------------------

function materials(shown, { fabrics, written }, cloth) {
    const first = (cell, index) => (index === undefined ? cell : [swatch(fabrics[index], index), ` ${cell}`]);
    const not = Array(3).fill(cloth ? "not known" : "…"); // what is wrong is told above, or it is being worked out
    const rows = cloth?.buying
        ? cloth.buying.rows.map(({ fabric, cells: [name, ...more] }) => [
              first(shown.line(name), fabric),
              ...more.map((cell) => shown.line(cell)),
          ])
        : fabrics
              .slice(0, ROWS_MOST)
              .map(({ letter, name }, index) => [first(`${letter}, ${name}`, index), ...not, ""]);
    return [
        table("To buy", ["What", "Needed", "Buy", "To spare", "For"], rows.slice(0, ROWS_MOST)),
        cloth?.rows.some((row) => !row.proven)
            ? h("p", {}, "Not proven to be the least cloth: the search was ended before.")
            : null,
        items(shown, [...(cloth?.buying?.items ?? []), ...written.widths, ...written.borderCloth]),
    ];
}

function cutting(shown, { fabrics, written }, cloth) {
    const extras = (index) => (cloth?.extraCuts ?? []).filter(({ fabric }) => fabric === index).map(({ item }) => item);
    return [
        h(
            "p",
            {},
            `All sizes here are cut sizes, seam allowances included. Of each ${written.fabricWord} the longest ` +
                `comes first.`
        ),
        fabrics.slice(0, ROWS_MOST).map(({ letter, name }, index) => {
            const own = [...written.cutting[index], ...extras(index)];
            return own.length === 0 ? null : [h("h3", {}, `Fabric ${letter}, ${name}`), items(shown, own)];
        }),
        cloth && cloth.rows.length > 0
            ? [
                  h("h3", {}, "On the cloth"),
                  items(shown, [...written.onTheCloth, ...cloth.whole]),
                  cloth.rows.map((row, index) => onCloth(shown, fabrics, row, cloth.layouts[index])),
              ]
            : null,
    ];
}

function onCloth(shown, fabrics, row, words) {
    const fabric = fabrics[row.fabric];
    if (!words) return null;
    return [
        h("h4", {}, `Fabric ${fabric.letter}, ${fabric.name}`),
        items(shown, words.before),
        row.plan.places.length > PLANS_DRAWN
            ? h("p", {}, `The cutting plan of ${fabric.name} has too many parts to be drawn.`)
            : drawCloth(
                  row.plan,
                  fabric.usableWidth,
                  fabric,
                  row.fabric,
                  shown,
                  `${fabric.letter}, ${fabric.name}, as it is laid out on ${shown.length(fabric.usableWidth)} of ` +
                      `usable ` +
                      "width; dotted: left over"
              ),
        items(shown, words.after),
    ];
}

// ---- sewing ---------------------------------------------------------------------------------------------------------

function setDrawing({ fabrics, sets, solve }, letter) {
    const set = sets.find((one) => one.letter === letter);
    if (!set) return null;
    const strips = set.strips.map(({ fabric, width }) => ({
        width,
        index: fabric,
        fabric: fabrics[fabric],
        letter: fabrics[fabric].letter,
    }));
    const fromBothEnds = solve.foldClear > 0n;
    const segmentsPerEnd = fromBothEnds ? Math.ceil(set.segmentsPerSet / 2) : set.segmentsPerSet;
    const segments = segmentsAlong({ ...set, ...solve, segmentsPerEnd }, SEGMENTS_DRAWN);
    const caption = `Strip set ${letter}, not to scale along the strips; dashed: where segments are cut`;
    return drawSet(strips, set.stripLength, segments, caption, set.isStanding);
}

function steps(shown, facts, own) {
    return own.map(({ letter, kind, name, head, items: words, drawing }) =>
        h(
            "div",
            { class: "step" },
            h("h3", {}, `${letter}  ${head}`),
            items(shown, words),
            kind === "set" ? setDrawing(facts, letter) : null,
            drawing ? drawPart(drawing, facts.fabrics, `${capital(name)} ${letter}, finished`) : null
        )
    );
}

function madeBlocks(shown, facts) {
    const blocks = facts.steps.filter((step) => step.isBlock && step.kind !== "set");
    const made = blocks.map(
        (step) =>
            `${step.make} × ${step.name} ${step.letter}: ` +
            `${shown.size(step.unfinishedWidth, step.unfinishedHeight)} unfinished.`
    );
    return made.length > 0 ? list(made) : null;
}

function top(shown, facts) {
    const { top: size, written, fabrics } = facts;
    return [
        list(
            `Unfinished ${shown.size(size.unfinishedWidth, size.unfinishedHeight)}, finished ` +
                `${shown.size(size.finishedWidth, size.finishedHeight)}.`
        ),
        drawTop(facts.drawing, fabrics, "The top, finished, in its fabrics"),
        h(
            "ul",
            { class: "key" },
            fabrics
                .slice(0, 60)
                .map((fabric, index) => h("li", {}, swatch(fabric, index), ` ${fabric.letter}: ${fabric.name}`))
        ),
        unfolds("working", "How the size of the top comes about", items(shown, written.working)),
        steps(shown, facts, written.steps.top),
        written.borders.length > 0 ? [h("h3", {}, "Borders"), items(shown, written.borders)] : null,
        steps(shown, facts, written.steps.borders),
        written.pressing.length > 0 ? [h("h3", {}, "Pressing, all together"), items(shown, written.pressing)] : null,
    ];
}

// ---- finishing ------------------------------------------------------------------------------------------------------

function part(shown, head, words, ...more) {
    return words ? [h("h3", {}, head), items(shown, words), more] : null;
}

function finishing(shown, facts, cloth) {
    const { backing, top: size } = facts,
        { finishing: words } = facts.written;
    const quilt = { quiltWidth: size.finishedWidth, quiltLength: size.finishedHeight };
    const isNone = !words.backing && !words.batting && !facts.binding && !words.sleeve && !words.bed;
    return [
        part(
            shown,
            "Backing",
            words.backing,
            backing && drawBacking(backing, quilt, shown, "Backing, with the quilt’s outline"),
            words.layouts?.length > 0 && otherLayouts(shown, words.layouts)
        ),
        part(shown, "Batting", words.batting),
        part(shown, "Layers and quilting", words.layers),
        part(shown, "Binding", cloth?.binding),
        part(shown, "Hanging sleeve, if the quilt is to hang", words.sleeve),
        part(shown, "On the bed", words.bed),
        isNone ? h("p", {}, "The file says nothing of finishing.") : null,
    ];
}

export function otherLayouts(shown, rows) {
    return unfolds(
        "backing",
        "Other layouts of the backing",
        table(
            "Other layouts of the backing",
            ["Layout", "Cut from", "#Buy"],
            rows.map((cells) => cells.map((cell) => shown.line(cell)))
        )
    );
}
