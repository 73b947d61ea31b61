// Borders round the top: measured first, then cut and sewn in their order; as in ../pattern/write_borders.c.
//
// SPDX-License-Identifier: MIT
import { by, line, point, say } from "./lines.js";
import { nameOf, spelt, word } from "./words.js";

const isWide = (size) => size.finishedWidth > size.finishedHeight;
const long = (size, kind) =>
    isWide(size) ? by(size[`${kind}Width`], size[`${kind}Height`]) : by(size[`${kind}Height`], size[`${kind}Width`]);

/** Strips that have a step each are called by their side; else both of a pair are told at once. */
function stripName(worked, step, size) {
    const { node } = worked.steps[step];
    const name = worked.design.names.get(node)?.side
        ? nameOf(worked, node)
        : `${worked.borderOfStep(step).name}, ${isWide(size) ? "top and bottom" : "left and right"}`;
    return `${name} (${worked.letterOf(node)})`;
}

/** A row for each piece: both of a pair together. */
function stripRow(worked, cut) {
    const uses = worked.borderStripsOf(cut);
    const size = worked.solution.size(uses.at(-1).node);
    return [
        `[${worked.piece[cut]}] ${worked.fabricName(worked.cuts[cut].fabric)}`,
        uses.map(({ step, node }) => stripName(worked, step, worked.solution.size(node))).join("; "),
        line`${long(size, "finished")}`,
        line`${long(size, "unfinished")}`,
    ];
}

/** A mitred strip lies along the outer edge from corner to corner. */
function mitredRow(worked, cut, border) {
    const where = { all: "all four sides", beside: "left and right", across: "top and bottom" };
    const { finishedWidth, finishedHeight } = worked.solution.size(border.outside);
    const sides = worked.mitredSides(cut, border.outside);
    return [
        `[${worked.piece[cut]}] ${worked.fabricName(worked.cuts[cut].fabric)}`,
        `${border.name}, ${where[sides]} (${worked.letterOf(border.outside)})`,
        line`${by(sides === "across" ? finishedWidth : finishedHeight, worked.solution.value(border.width))}`,
        line`${by(worked.cutLength(cut), worked.cuts[cut].cutHeight)}`,
    ];
}

function lengths(worked) {
    const told = new Set();
    const rows = worked.order.flatMap((cut) => {
        const border = worked.mitredBorderOf(cut);
        if ((!border && !worked.isBorderCut(cut)) || told.has(worked.piece[cut])) return [];
        told.add(worked.piece[cut]);
        return [border ? mitredRow(worked, cut, border) : stripRow(worked, cut)];
    });
    const heads = ["Piece", "For", "Finished, length x width", "Cut, length x width"];
    return rows.length > 0 && { kind: "table", caption: "Border strips, as the sums have them", heads, rows };
}

export function borders(worked) {
    const { borders: all } = worked.design;
    if (all.length === 0) return [];
    const has = (corners) => all.some((border) => (border.corners ?? "pieced") === corners);
    return [
        worked.cuts.some((_, cut) => worked.isBorderCut(cut)) &&
            say(
                "Before each pair of strips press the top and measure it through the middle, not along its edges, " +
                    "which " +
                    "stretch: from top to bottom for the strips at left and right, from side to side for those at " +
                    "top " +
                    "and bottom, each time with the strips that are already sewn on. Cut both of a pair to that one " +
                    "length. Pin middles and ends first and ease the edge in between. Lengths told here are what it " +
                    "should be."
            ),
        has("cornerstones") &&
            point(
                `Of a border with ${word(worked, "cornerstone")}s measure both ways before any of its strips is sewn ` +
                    "on: the squares make up the corners."
            ),
        has("pieced") &&
            point(
                "A pieced border has its length: where it does not fit, let out or take in a little of several of " +
                    "its " +
                    "seams."
            ),
        has("mitred") &&
            point(
                `Strips of a ${spelt(worked, "mitred")} border are cut long and trimmed when the corners are sewn. ` +
                    "Measure the top through the middle both ways, mark that length on each strip, as much of it on " +
                    "either side of the strip's middle, and pin mark on corner and middle on middle: what is over " +
                    "stands out alike at both ends."
            ),
        lengths(worked),
    ].filter(Boolean);
}
