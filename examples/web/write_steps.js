// The sewing, step by step: what each part is made of, in order, how it is pressed, what it measures; as in
// ../pattern/write_steps.c.
//
// SPDX-License-Identifier: MIT
import { between, by, line, point, runs } from "./lines.js";
import { nameOf, partAgain, partOf, UNITS } from "./words.js";
import { field } from "./write_field.js";
import { clashesOf, joinPressing } from "./write_pressing.js";
import { recipe } from "./write_recipe.js";
import { otherSets, segments, set } from "./write_sets.js";
import { pinwheel, setIn, shape, sixty, trimming } from "./write_shapes.js";

const RUNS_MOST = 300; // told of one part; no block has so many

// ---- what goes into it ----------------------------------------------------------------------------------------------

/** The children in their order; of the same one side by side it is said how many. */
function order(worked, join) {
    const parts = worked.partsOf(join);
    const isAlike = (a, b) =>
        a.node === b.node &&
        a.quarterTurns === b.quarterTurns &&
        a.mirrored === b.mirrored &&
        a.otherWay === b.otherWay;
    const told = new Set();
    const all = runs(parts, isAlike);
    const words = all.slice(0, RUNS_MOST).map(({ first, count }) => {
        const part = parts[first],
            cut = worked.cutOfPatch(part.node);
        const key = cut >= 0 ? `[${cut}]` : part.node;
        const name = told.has(key) ? partAgain(worked, part) : partOf(worked, part);
        told.add(key);
        return line`${count > 1 && `${count} times `}${name}`;
    });
    const from = worked.node(join).axis === "across" ? "left to right" : "top to bottom";
    return line`From ${from}: ${between(words, "; ")}${all.length > RUNS_MOST && "; and so on, as drawn"}.`;
}

// ---- the head of a step ---------------------------------------------------------------------------------------------

/** Segments the other way, where whole sets are pressed so or some are pressed anew. */
function howSegments(worked, seam) {
    const { sets, anew } = otherSets(worked, seam);
    if (anew === 0) return "cut from sets of their own, pressed the other way";
    return sets === 0
        ? "pressed the other way once they are cut"
        : `pressed the other way: ${seam.otherWay - anew} in the set, ${anew} once they are cut`;
}

/** How copies the other way come about. */
function howOther(worked, seam, isSegment) {
    const { other, turn } = seam;
    if (other === "pressed") return "with every seam in it pressed the other way";
    if (other === "sets") return howSegments(worked, seam);
    if (isSegment) return "the same, turned end for end when it is sewn in";
    return `sewn and pressed the same, turned by a ${turn === 1 ? "quarter" : "half"} when it is sewn in`;
}

/** "make 12: 6 C, and 6 C* (with every seam in it pressed the other way)" */
function copies(worked, step) {
    const isSet = step.kind === "set";
    const mirrored = isSet ? 0 : worked.solution.size(step.node).mirrored;
    const make = `make ${step.alike}${mirrored > 0 ? `, ${mirrored} of them in mirror image` : ""}`;
    const [seam] = worked.seamsOf(step.node);
    if (isSet || !seam || seam.otherWay === 0) return make;
    const letter = worked.letterOf(step.node);
    const how = howOther(worked, seam, step.kind === "segments");
    return `${make}: ${seam.asShown} ${letter}, and ${seam.otherWay} ${letter}* (${how})`;
}

/** A unit may have a name of its own. */
function headOf(worked, step) {
    const TITLES = { set: "strip set for ", segments: "segments: ", unit: "units: ", trim: "trimmed: " };
    const unit = worked.design.unitNodes.get(step.node);
    const named = worked.design.names.get(step.node);
    const kind = unit && named && named.name !== UNITS[unit.kind] ? ` (${UNITS[unit.kind] ?? "unit"})` : "";
    return `${TITLES[step.kind] ?? ""}${nameOf(worked, step.node)}${kind}, ${copies(worked, step)}`;
}

// ---- steps ----------------------------------------------------------------------------------------------------------

const WAYS = { unit: recipe, segments, shape, trim: trimming, pinwheel, setIn, diagonal: field, sixty };

function how(worked, step) {
    const way = WAYS[step.kind];
    return way ? way(worked, step) : [point(order(worked, step.node)), joinPressing(worked, step.node)];
}

/** { head, items } of a step; of a strip set no size is told but its width. */
export function stepWords(worked, step) {
    const head = headOf(worked, step);
    if (step.kind === "set") return { head, items: set(worked, step) };
    const isBlock = worked.design.names.get(step.node)?.isBlock;
    const size = by(step.unfinishedWidth, step.unfinishedHeight);
    const { finishedWidth, finishedHeight } = worked.solution.size(step.node);
    const isSeen = isBlock || step.kind === "unit" || step.kind === "shape";
    const finished = isSeen && line`, ${by(finishedWidth, finishedHeight)} finished`;
    const done = step.node === worked.design.top && " The top is done.";
    return {
        head,
        items: [
            ...how(worked, step),
            clashesOf(worked, step.node),
            point(line`${isBlock ? "Measure: block" : "Measures"} ${size} unfinished${finished}.${done}`),
        ].filter(Boolean),
    };
}
