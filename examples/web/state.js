// What the page shows, as one value: kept in the address, and as steps that can be undone.
//
// SPDX-License-Identifier: MIT
import { stripFields } from "./strips.js";

const TEXT_MOST = 64 * 1024; // longer patterns do not go into the address
const LARGEST = 4 * 1024 * 1024;
const STEPS_MOST = 200;
const SAME_STEP = 1500; // milliseconds: typing in one field is one step

/** units: undefined until they were chosen, and then kept whatever is opened. */
export const START = Object.freeze({ from: "strips", units: undefined, strips: Object.freeze({}), text: "", size: 0 });
export const UNITS = { in: "inches", cm: "centimetres", mm: "millimetres" };

async function through(stream, bytes) {
    const chunks = [];
    let length = 0;
    const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
        length += next.value.length;
        if (length > LARGEST) {
            await reader.cancel();
            throw new RangeError("this address holds more than any pattern");
        }
        chunks.push(next.value);
    }
    return new Uint8Array(await new Blob(chunks).arrayBuffer());
}

async function packed(text) {
    const bytes = await through(new CompressionStream("deflate-raw"), new TextEncoder().encode(text));
    const letters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
    return btoa(letters).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

async function unpacked(text) {
    const letters = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = await through(
        new DecompressionStream("deflate-raw"),
        Uint8Array.from(letters, (one) => one.charCodeAt(0))
    );
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
}

/** The state as the part of an address after "#"; what is as usual is left out. Undefined where it is too long. */
export async function toFragment(state) {
    const words = new URLSearchParams();
    if (state.units) words.set("units", state.units);
    if (state.from === "pattern") {
        if (state.text.length > TEXT_MOST) return undefined;
        words.set("size", state.size);
        words.set("pattern", await packed(state.text));
        return words.toString();
    }
    for (const { name, usual } of stripFields)
        if (name in state.strips && state.strips[name] !== usual) words.set(name, state.strips[name]);
    return words.toString();
}

/** The state that an address says; what it does not know is left out. */
export async function fromFragment(fragment) {
    const words = new URLSearchParams(fragment.replace(/^#/, ""));
    const units = Object.hasOwn(UNITS, words.get("units") ?? "") ? words.get("units") : START.units;
    if (words.has("pattern")) {
        const size = Math.max(0, Math.min(11, Number.parseInt(words.get("size"), 10) || 0));
        return { ...START, from: "pattern", units, size, text: await unpacked(words.get("pattern")) };
    }
    const strips = {};
    for (const { name, usual } of stripFields)
        if (words.has(name) && words.get(name) !== usual) strips[name] = words.get(name).slice(0, 200);
    return { ...START, units, strips };
}

/** Steps that can be undone and done again. */
export class Steps {
    #done = [];
    #undone = [];
    #last = { what: undefined, when: 0 };

    constructor(state) {
        this.state = state;
    }

    get canUndo() {
        return this.#done.length > 0;
    }

    get canRedo() {
        return this.#undone.length > 0;
    }

    /** A new state; what was changed says whether it goes on with the last step. */
    take(state, what) {
        const now = performance.now();
        const goesOn = what !== undefined && what === this.#last.what && now - this.#last.when < SAME_STEP;
        if (!goesOn) this.#done = [...this.#done.slice(1 - STEPS_MOST), this.state];
        this.#undone = [];
        this.#last = { what, when: now };
        this.state = state;
    }

    undo() {
        this.#undone.push(this.state);
        this.state = this.#done.pop();
        this.#last.what = undefined;
    }

    redo() {
        this.#done.push(this.state);
        this.state = this.#undone.pop();
        this.#last.what = undefined;
    }
}
