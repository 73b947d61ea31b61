// The pressing plan in words: each part's seams, and how well they nest; as in ../pattern/write_pressing.c.
//
// SPDX-License-Identifier: MIT
import { atLeast, inWhole, line, plural, point, say } from "./lines.js";
import { nameOf, PRESSED, pressedRuns } from "./words.js";

const CLASHES_TOLD = 40;

// ---- joins ----------------------------------------------------------------------------------------------------------

/** One seam: also what it is pressed towards, where that is a patch or a part with a letter. */
function towards(worked, seam) {
    if (seam.towards === "neither") return "";
    const parts = worked.partsOf(seam.node);
    const place = seam.towards === "first" ? 0 : 1;
    const { node } = parts[place];
    if (parts.length === 2 && parts[1 - place].node === node) return ""; // both are called so
    const cut = worked.cutOfPatch(node);
    if (cut >= 0) return `, towards the ${worked.fabricName(worked.cuts[cut].fabric)} [${worked.piece[cut]}]`;
    return worked.stepOf(node) >= 0 ? `, towards ${worked.letterOf(node)}` : "";
}

/** How the seams of a join are pressed. */
export function joinPressing(worked, join) {
    const seams = worked.seamsOf(join);
    if (seams.length === 0) return undefined;
    const [{ press }] = seams;
    const isOne = seams.every((seam) => seam.press === press);
    const what = ["", "the seam", "both seams"][seams.length] ?? "all seams";
    const toPale =
        seams.every((seam) => seam.preferred === "against") && worked.quilt.readJoin(join).press === "free"
            ? "; that is the paler side, so that they lock with what they meet"
            : "";
    const ways = isOne ? `${what} ${PRESSED[press]}` : pressedRuns(seams);
    return point(`Press ${ways}${seams.length === 1 ? towards(worked, seams[0]) : ""}${toPale}.`);
}

const isSameClash = (a, b) =>
    a.node === b.node &&
    ((a.firstNode === b.firstNode && a.secondNode === b.secondNode) ||
        (a.firstNode === b.secondNode && a.secondNode === b.firstNode));

/** Exceptions of the same parts together: [first, at which seams, at how many places]. */
export function clashes(worked) {
    const found = [];
    for (const row of worked.exceptions) {
        const same = found.find(({ first }) => isSameClash(first, row));
        if (same) {
            same.seams.add(row.seam + 1);
            same.places += row.count;
        } else found.push({ first: row, seams: new Set([row.seam + 1]), places: row.count });
    }
    return found;
}

/** Where two parts do not lock, once for all copies: "seams of L and of J, at seam 1, seam 3". */
export function clashesOf(worked, node) {
    const own = worked.clashes.filter(({ first }) => first.node === node);
    if (own.length === 0) return undefined;
    const words = own.map(({ first, seams }) => {
        const isOne = first.firstNode === first.secondNode;
        const second = isOne ? "" : ` and of ${worked.letterOf(first.secondNode)}`;
        const at = [...seams].map((seam) => `seam ${seam}`).join(", ");
        return `seams of ${isOne ? "two " : ""}${worked.letterOf(first.firstNode)}${second}, at ${at}`;
    });
    return point(
        `These do not lock: ${words.join("; ")}. Where they meet press one of the two open, or accept the lump.`
    );
}

// ---- all together ---------------------------------------------------------------------------------------------------

/** "M (row), seam 1, seam 3: 8 places, a seam of L and one of J" */
function clash(worked, { first, seams, places }) {
    const isOne = first.firstNode === first.secondNode;
    const parts = isOne
        ? `seams of two ${worked.letterOf(first.firstNode)}`
        : `a seam of ${worked.letterOf(first.firstNode)} and one of ${worked.letterOf(first.secondNode)}`;
    const at = [...seams].map((seam) => `seam ${seam}`).join(", ");
    const node = `${worked.letterOf(first.node)} (${nameOf(worked, first.node)})`;
    return point(`${node}, ${at}: ${places} place${plural(places)}, ${parts}`);
}

export function pressing(worked) {
    if (!worked.pressed) return [];
    const { meetings, exceptions } = worked.pressed;
    const how =
        exceptions === 0
            ? "lie opposite ways at every one of them, so that they lock into each other."
            : `lock into each other at all but ${exceptions} of them; those lie in:`;
    const sewn = worked.solution.sewingTotals("1/32 in", 0n);
    return [
        meetings > 0 &&
            say(
                `Seams of two parts that are sewn together meet at ${meetings} places of the top. Pressed as the ` +
                    `steps say, they ${how}`
            ),
        ...worked.clashes.slice(0, CLASHES_TOLD).map((one) => clash(worked, one)),
        say(
            line`About ${inWhole(sewn.sewn)} of seams in all; with every allowance ${{
                either: ["1/64 in", "0.4 mm"],
            }} off the same way, the top comes out off by no more than ${atLeast(sewn.widthWorst)} across and ${atLeast(
                sewn.heightWorst
            )} down. That counts the most seams of each row and block, which no one line need cross.`
        ),
    ].filter(Boolean);
}
