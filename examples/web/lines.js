// Lines of a written pattern, put together where a size is worked out: texts, and lengths that the page shows in the
// units chosen. A document is items in reading order, as in ../pattern/document.h.
//
// SPDX-License-Identifier: MIT
import { Length } from "./muslin/muslin.js";

const ticks = (length) => (length instanceof Length ? length.ticks : length);

/** line`Cut ${3} strips ${width} wide`: texts, in which a line break is a blank, and lengths as BigInt ticks or one of
 * the forms below. */
export function line(texts, ...values) {
    const words = texts.map((text) => text.replaceAll(/\s*\n\s*/g, " "));
    return words.flatMap((text, index) => (index < values.length ? [text, piece(values[index])] : [text])).flat();
}

function piece(value) {
    if (value === undefined || value === null || value === false) return "";
    if (Array.isArray(value)) return value.flatMap((one) => piece(one));
    return value instanceof Length ? value.ticks : typeof value === "number" ? String(value) : value;
}

export const by = (width, height) => ({ by: [ticks(width), ticks(height)] });
export const atLeastBy = (width, height) => ({ atLeastBy: [ticks(width), ticks(height)] });
export const atLeast = (length) => ({ atLeast: ticks(length) });
export const atMost = (length) => ({ atMost: ticks(length) });
export const fine = (length) => ({ fine: ticks(length) });
/** Cloth as it is bought; a package of batting; yards or metres of seams. */
export const bought = (length) => ({ bought: ticks(length) });
export const packaged = (width, height) => ({ packaged: [ticks(width), ticks(height)] });
export const inWhole = (length) => ({ inWhole: ticks(length) });

export const say = (text) => ({ kind: "say", text });
export const point = (text, lead) => ({ kind: "point", text, lead });
/** A point below the last one. */
export const under = (text, lead) => ({ kind: "under", text, lead });
export const caution = (text) => ({ kind: "caution", text });

export const plural = (count) => (Number(count) === 1 ? "" : "s");

/** "a, b and c" */
export function listed(lines) {
    return lines.map((one, i) => line`${i === 0 ? "" : i + 1 === lines.length ? " and " : ", "}${one}`).flat();
}

/** Runs of what is alike: [first, how many] each. */
export function runs(list, isAlike) {
    const found = [];
    list.forEach((one, index) => {
        const last = found.at(-1);
        if (last && isAlike(list[last.first], one)) last.count++;
        else found.push({ first: index, count: 1 });
    });
    return found;
}

/** Lines one after the other, with something between them. */
export function between(lines, mark) {
    return lines.map((one, i) => line`${i === 0 ? "" : mark}${one}`).flat();
}
