// Steps of the less usual parts: own shapes, trimming, pinwheels, 60 degree rows, set-in strips; as in
// ../pattern/write_shapes.c.
//
// SPDX-License-Identifier: MIT
import { between, listed, line, point, runs, under } from "./lines.js";
import { partOf, PRESSED, spelt } from "./words.js";

const AS_DRAWN = point("Press as said of its seams: those that meet lie opposite ways where they can.");
const SEAMS_TOLD = 12,
    ROWS_TOLD = 200;

/** The pieces of the cut list that go into a node, "[3] night": of those that are no nodes. */
function pieces(worked, node, source) {
    const found = new Set(
        worked.order
            .filter((cut) => worked.cuts[cut].source === source && worked.isCutFor(cut, node))
            .map((cut) => `[${worked.piece[cut]}] ${worked.fabricName(worked.cuts[cut].fabric)}`)
    );
    return [...found].join(", ");
}

/** Seams one by one where there are few. */
function pressed(worked, node) {
    const seams = worked.seamsOf(node);
    if (seams.length === 0 || seams.length > SEAMS_TOLD) return AS_DRAWN;
    const ways = [...new Set(seams.map(({ press }) => press))];
    return point(
        ways.length === 1
            ? `Press ${seams.length === 1 ? "the seam" : "all seams"} ${PRESSED[ways[0]]}.`
            : `Press the seams, in the order in which they are sewn, ` +
                  `${listed(seams.map(({ press }) => PRESSED[press])).join("")}.`
    );
}

export function shape(worked, { node }) {
    return [
        point(
            `Its pieces, each cut by its template: ${pieces(worked, node, "template")}. Sew them together as drawn, ` +
                "short seams before long ones, edge to edge with the corners of the seam lines matched."
        ),
        pressed(worked, node),
    ];
}

export function trimming(worked, { node }) {
    const spec = worked.quilt.readTrim(node);
    const sides = ["left", "right", "top", "bottom"].flatMap((side) => {
        const value = spec[side] ? worked.solution.value(spec[side]) : undefined;
        return value?.ticks > 0n ? [line`${value} at the ${side}`] : [];
    });
    const what = sides.length > 0 ? line`Cut off ${between(sides, ", ")} of ` : "Nothing is cut off of ";
    return [point(line`${what}${partOf(worked, worked.partsOf(node)[0])}, square to its seams.`)];
}

// ---- round a centre -------------------------------------------------------------------------------------------------

export function pinwheel(worked, { node }) {
    const places = ["Middle piece", "top", "right", "bottom", "left"];
    const parts = worked
        .partsOf(node)
        .slice(0, places.length)
        .map((part, i) => line`${places[i]}: ${partOf(worked, part)}`);
    return [
        point(line`${between(parts, "; ")}.`),
        point(
            "A seam that is sewn in part comes first: sew the top piece to the middle piece, right ends even, from " +
                "there only about halfway. Then sew the right piece to the middle piece and the top, the bottom " +
                "piece " +
                "to the middle piece and the right, the left piece to the middle piece and the bottom. Last finish " +
                "the first seam, over the middle piece and the left."
        ),
        pressed(worked, node),
    ];
}

/** "a strip [7] to the left and the right side and a strip [8] to the top and the bottom", or "to each side" */
function strips(worked, node) {
    const where = { all: "each side", beside: "the left and the right side", across: "the top and the bottom" };
    const told = new Set();
    for (const cut of worked.order)
        if (worked.cuts[cut].source === "mitred" && worked.isCutFor(cut, node))
            told.add(`a strip [${worked.piece[cut]}] to ${where[worked.mitredSides(cut, node)]}`);
    return [...told].join(" and ");
}

/** Left, right, top, bottom along the middle part, of which the left and the top strip are the first piece; mitres. */
function mitredPressing(worked, node) {
    const sides = ["left", "right", "upper", "lower"],
        corners = ["upper left", "upper right", "lower left", "lower right"];
    const seams = worked.seamsOf(node);
    if (seams.length !== 8) return pressed(worked, node);
    const along = seams.slice(0, 4),
        mitres = seams.slice(4);
    const isOut = ({ towards }, i) => towards === (i % 2 === 0 ? "first" : "second");
    const first = along.every(isOut)
        ? "Press all four seams towards the strips"
        : `Press the seam of the ${listed(
              along.map((seam, i) => `${sides[i]} strip towards the ${isOut(seam, i) ? "strip" : "middle"}`)
          ).join("")}`;
    const mitre = spelt(worked, "mitre");
    const last = mitres.every(({ press }) => press === mitres[0].press)
        ? `all ${mitre}s ${PRESSED[mitres[0].press]}`
        : listed(mitres.map(({ press }, i) => `the ${corners[i]} ${mitre} ${PRESSED[press]}`)).join("");
    return point(`${first}; ${last}.`);
}

export function setIn(worked, { node }) {
    const spec = worked.quilt.readSetIn(node);
    const isAllRound = [spec.leftWidth, spec.rightWidth, spec.topWidth, spec.bottomWidth].every(Boolean);
    const { allowance } = worked.seam;
    const how = isAllRound
        ? line`, middle on middle, so that it stands out alike at both ends: begin and stop ${
              allowance
          } inside the corners of the middle part and secure the stitches.`
        : line`, where there is one on the drawing: where two strips meet, begin or stop ${
              allowance
          } inside the corner of the middle part and secure the stitches, and let both stand out beyond it.`;
    return [
        point(
            line`In the middle: ${partOf(worked, worked.partsOf(node)[0])}. Sew ${strips(worked, node)}${how} Then
                ${spelt(worked, "mitre")} each corner: fold it on the diagonal, strips on each other; draw a line at 45
                degrees from the last stitch to the outer edge; sew on it from the inside outwards; trim ${allowance}
                beyond the seam.`
        ),
        mitredPressing(worked, node),
    ];
}

// ---- 60 degree rows -------------------------------------------------------------------------------------------------

function sixtyRow(worked, row) {
    const words = runs(row, (a, b) => a.fabric === b.fabric && a.cells === b.cells).map(({ first, count }) => {
        const { cells, fabric } = row[first];
        const name = ["", "triangle", "diamond"][cells] ?? "half-hexagon";
        return `${count > 1 ? `${count} times ` : ""}${worked.fabricName(fabric)}, a ${name}`;
    });
    return ["half-triangle", ...words, "half-triangle"].join("; ");
}

export function sixty(worked, { node }) {
    const { rows, cells, first } = worked.quilt.readSixty(node);
    const all = [...worked.quilt.readSixtyPieces(node)];
    const told = Array.from({ length: Math.min(rows, ROWS_TOLD) }, (_, index) => {
        const row = [];
        for (let filled = 0; filled < cells && all.length > 0; filled += row.at(-1).cells) row.push(all.shift());
        return under(`${sixtyRow(worked, row)}.`, `Row ${index + 1}:`);
    });
    return [
        point(
            `Pieces: ${pieces(worked, node, "sixty")}. Each row from the left, a half-triangle at either end; they ` +
                "stand on their sides and on their points in turn. The first one of row 1 stands on its " +
                `${first === "onSide" ? "side" : "point"}; the rows take turns.`
        ),
        ...told,
        point("Sew the pieces of each row, then the rows to each other, points on seams. The slanted edges stretch."),
    ];
}
