// Words that several parts of a written pattern share: names of fabrics, units, parts and sides, as in
// ../pattern/wording.c.
//
// SPDX-License-Identifier: MIT
import { bought, by, line, runs } from "./lines.js";

export const TURNED = ["", " turned a quarter to the right", " turned upside down", " turned a quarter to the left"];
/** A length as shops cut it. */
export function toBuy({ muslin, design }, length) {
    return bought(muslin.lengthSnap(length, { grid: design.buying.step, direction: "up" }).value);
}

export const PRESSED = {
    left: "to the left",
    right: "to the right",
    up: "upwards",
    down: "downwards",
    open: "open",
};
export const UNITS = {
    halfSquare: "half-square triangles",
    quarterSquare: "quarter-square triangles",
    splitQuarter: "split quarters",
    flyingGeese: "flying geese",
    squareInSquare: "square in a square",
    snowball: "snowballs",
    halfRectangle: "half-rectangle triangles",
    octagon: "octagons",
    eightPointedStar: "eight-pointed star",
    kaleidoscope: "kaleidoscopes",
};
const SIDES = { left: ", left side", right: ", right side", top: ", top", bottom: ", bottom" };
const USUAL = { batting: "batting", fabric: "fabric", cornerstone: "cornerstone", color: "color" };
const BRITISH = { mitre: "mitre", mitred: "mitred", centre: "centre" },
    AMERICAN = { mitre: "miter", mitred: "mitered", centre: "center" };

/** As the file wants it called. */
export const word = ({ design }, which) => design.file.words?.[which] ?? USUAL[which];
export const capital = (text) => text[0].toUpperCase() + text.slice(1);
export const spelt = (worked, which) => (word(worked, "color") === "colour" ? BRITISH : AMERICAN)[which];
export const sash = ({ design }) => (design.file.words?.sashing === "lattice" ? "lattice strip" : "sash");
export const sashes = ({ design }) => (design.file.words?.sashing === "lattice" ? "lattice strips" : "sashes");

// ---- names ----------------------------------------------------------------------------------------------------------

/** The block that a node is in. */
function blockAround(worked, node) {
    for (let step = worked.stepThatTakes(node); step; step = worked.stepThatTakes(step.node)) {
        const named = worked.design.names.get(step.node);
        if (named) return named.isBlock ? named : undefined;
    }
    return undefined;
}

/** "lamp row" of a lamp block; "block row"; "sash row". */
function rowName(worked, row) {
    const block = blockAround(worked, row);
    const step = worked.stepOf(row);
    const hasBlock = step >= 0 && worked.feeds[step].some(({ node }) => worked.design.names.get(node)?.isBlock);
    if (step < 0 || (!block && !hasBlock && !worked.design.hasSashes)) return "row";
    if (!block) return `${hasBlock ? "block" : sash(worked)} row`;
    return `${block.name.replace(/ block$/, "")} row`;
}

function kindName(worked, node) {
    const unit = worked.design.unitNodes.get(node);
    const KINDS = {
        setIn: `${spelt(worked, "mitred")} border`,
        shape: "unit of its own shape",
        trim: "part to be trimmed",
        pinwheel: "strips round a middle",
        diagonal: "field on point",
        sixty: "rows of triangles",
    };
    return unit ? (UNITS[unit.kind] ?? "unit") : (KINDS[worked.node(node).kind] ?? "rows joined");
}

/** A part without a name: of a border, both its sides with the middle, or the strip with its corners. */
function partName(worked, node) {
    const step = worked.stepOf(node);
    const border = step < 0 ? undefined : worked.borderOfStep(step);
    const isFed = (at, one) => at >= 0 && worked.feeds[at].some((feed) => feed.node === one);
    if (border && isFed(worked.stepOf(border.outside), node))
        return `${border.name}, ${isFed(step, border.inside) ? "left and right" : "top and bottom"}`;
    const { kind, axis } = worked.node(node);
    return !worked.design.unitNodes.has(node) && kind === "join" && axis === "across"
        ? rowName(worked, node)
        : kindName(worked, node);
}

/** "lamp block", "border, left side", "row"; without the letter. */
export function nameOf(worked, node) {
    const named = worked.design.names.get(node);
    if (!named) return partName(worked, node);
    const log =
        named.log === 0 ? "" : named.log === 1 ? `, ${spelt(worked, "centre")} and log 1` : `, log ${named.log}`;
    return `${named.name}${named.side ? SIDES[named.side] : ""}${log}`;
}

// ---- parts ----------------------------------------------------------------------------------------------------------

/** A part that was told before: its number or letter, and how it is turned. */
export function partAgain(worked, part) {
    const cut = worked.cutOfPatch(part.node);
    if (cut >= 0) return `[${worked.piece[cut]}]`;
    const mirrored = part.mirrored ? " in mirror image" : "";
    return `${worked.letterOf(part.node)}${part.otherWay ? "*" : ""}${mirrored}${TURNED[part.quarterTurns]}`;
}

/** A child as it is laid: "[4] night, cut 3 1/2 in x 3 1/2 in", "A* (flying geese) turned upside down". */
export function partOf(worked, part) {
    const cut = worked.cutOfPatch(part.node);
    if (cut >= 0) {
        const { fabric, cutWidth, cutHeight } = worked.cuts[cut];
        return line`[${worked.piece[cut]}] ${worked.fabricName(fabric)}, cut ${by(cutWidth, cutHeight)}`;
    }
    const mirrored = part.mirrored ? " in mirror image" : "";
    return line`${worked.letterOf(part.node)}${part.otherWay ? "*" : ""} (${nameOf(worked, part.node)})${mirrored}${
        TURNED[part.quarterTurns]
    }`;
}

/** "seams 1 to 4 to the right; seam 5 to the left" */
export function pressedRuns(seams) {
    const takeTurns =
        seams.length > 4 &&
        seams[0].press !== seams[1].press &&
        seams.every((seam, i) => i < 2 || seam.press === seams[i - 2].press);
    if (takeTurns)
        return (
            `seams 1, 3, 5 and so on ${PRESSED[seams[0].press]}; ` +
            `seams 2, 4, 6 and so on ${PRESSED[seams[1].press]}`
        );
    return runs(seams, (a, b) => a.press === b.press)
        .map(({ first, count }) =>
            count > 1
                ? `seams ${first + 1} to ${first + count} ${PRESSED[seams[first].press]}`
                : `seam ${first + 1} ${PRESSED[seams[first].press]}`
        )
        .join("; ");
}
