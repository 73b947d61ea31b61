// How the size of the top comes about: what lies side by side in its middle, then border by border, then its seams.
//
// SPDX-License-Identifier: MIT
import { between, by, line } from "./lines.js";
import { nameOf } from "./words.js";

const TERMS_TOLD = 12,
    LEVELS_MOST = 20;

/** What adds up to a side of a node; where that is just another node, of that one. */
function termsOf({ muslin, solution }, node, axis) {
    for (let level = 0; ; level++) {
        const terms = solution.explain(node, axis).filter(({ finished }) => finished);
        const [{ id, times }] = terms;
        const isNode = id !== 0n && muslin.idSort(id) === "node";
        if (terms.length > 1 || times > 1 || !isNode || level === LEVELS_MOST) return terms;
        node = id;
    }
}

/** A node without what only turns it. */
function unturned(worked, node) {
    return worked.node(node).kind === "turn" ? worked.quilt.children(node)[0] : node;
}

/** "4 times lamp block, together 24 in": parts of one name are told once. */
function sum(worked, node, axis) {
    const told = new Map();
    for (const { id, times, value, kind } of termsOf(worked, node, axis).slice(0, TERMS_TOLD)) {
        const isNode = id !== 0n && worked.muslin.idSort(id) === "node";
        const part = isNode ? nameOf(worked, unturned(worked, id)) : id;
        const before = told.get(part);
        told.set(part, {
            isNode,
            kind,
            times: times + (before?.times ?? 0),
            value: before ? value.plus(before.value) : value,
        });
    }
    const words = [...told].map(([part, { isNode, kind, times, value }]) => {
        if (!isNode) return line`${value}`;
        if (kind === "diagonal") return line`${times} times ${part} from corner to corner, together ${value}`;
        return times > 1 ? line`${times} times ${part}, together ${value}` : line`${part}, ${value}`;
    });
    return between(words, "; ");
}

export function working(worked) {
    const { design, solution, seam, top } = worked;
    const size = (node) => line`${by(solution.size(node).finishedWidth, solution.size(node).finishedHeight)} finished`;
    const rows = [
        [
            design.borders.length > 0 ? `middle: ${nameOf(worked, design.centre)}` : nameOf(worked, design.centre),
            sum(worked, design.centre, "across"),
            sum(worked, design.centre, "down"),
            size(design.centre),
        ],
        ...design.borders.map((border) => {
            const adds = border.width ? line`2 times ${solution.value(border.width)}` : "its pieced sides";
            return [border.name, adds, adds, size(border.outside)];
        }),
        [
            "seam allowances round it",
            line`2 times ${{ fine: seam.allowance.ticks }}`,
            line`2 times ${{ fine: seam.allowance.ticks }}`,
            line`${by(top.unfinishedWidth, top.unfinishedHeight)} unfinished`,
        ],
    ];
    return {
        kind: "table",
        caption: "How the size of the top comes about",
        heads: ["What", "Adds across", "Adds down", "Makes, width x height"],
        rows,
    };
}
