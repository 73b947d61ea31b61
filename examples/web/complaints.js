// What is wrong, and where: places in a file as JSON pointers, and which known name a misspelt one is like.
//
// SPDX-License-Identifier: MIT

export const COMPLAINTS_MOST = 1000;
export const FILE = Object.freeze({ in: null });

export function placeIn(place, key) {
    return { in: place, key };
}

/** A place as JSON pointer (RFC 6901). */
export function pointerOf(place) {
    const steps = [];
    for (; place.in; place = place.in) steps.unshift(String(place.key).replaceAll("~", "~0").replaceAll("/", "~1"));
    return steps.map((step) => `/${step}`).join("");
}

/** What stands there, shortened. */
function shortened(value) {
    if (value === undefined) return null;
    const text =
        typeof value === "object" && value !== null
            ? Array.isArray(value)
                ? "[ ... ]"
                : "{ ... }"
            : JSON.stringify(value);
    return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

export class Complaints {
    #told = new Set();

    constructor() {
        this.rows = [];
    }

    get tooMany() {
        return this.rows.length > COMPLAINTS_MOST;
    }

    /** Adds one, unless the same is there already. place: a place or a JSON pointer. */
    add(place, sentence, value, more = {}) {
        const pointer = typeof place === "string" ? place : pointerOf(place);
        const told = `${pointer} ${sentence}`;
        if (this.tooMany || this.#told.has(told)) return;
        this.#told.add(told);
        this.rows.push({ place: pointer, value: shortened(value), sentence, ...more });
    }
}

/** How many letters must be put in, left out, changed or swapped with the next to make one name of the other. */
function distance(a, b) {
    const rows = Array.from({ length: a.length + 1 }, (_, i) => [i]);
    for (let j = 0; j <= b.length; j++) rows[0][j] = j;
    for (let i = 1; i <= a.length; i++)
        for (let j = 1; j <= b.length; j++) {
            const changed = rows[i - 1][j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
            rows[i][j] = Math.min(changed, rows[i][j - 1] + 1, rows[i - 1][j] + 1);
            if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
                rows[i][j] = Math.min(rows[i][j], rows[i - 2][j - 2] + 1);
        }
    return rows[a.length][b.length];
}

/** The name most like a misspelt one; undefined where none is like it. */
export function nearest(name, names) {
    const LONGEST = 40,
        TRIED_MOST = 200;
    let found,
        allowed = Math.min(2, Math.floor((name.length + 1) / 3));
    if (name.length > LONGEST) return undefined;
    for (const one of names.slice(0, TRIED_MOST)) {
        const apart = one.length > LONGEST ? Infinity : distance(name, one);
        if (apart <= allowed) {
            found = one;
            allowed = apart - 1;
        }
    }
    return found;
}
