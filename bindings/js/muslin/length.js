// Length, the number that everything here is made of.
//
// SPDX-License-Identifier: MIT
import { said, whole } from "./values.js";

/** An exact length in ticks of 1/8128 inch. It knows the library that it came from, which adds it up and writes it. */
export class Length {
    #library;

    constructor(ticks, library) {
        if (!library)
            throw new TypeError("a Length belongs to a library that was loaded: make it with its length()");
        this.ticks = whole(ticks, "ticks", 64);
        this.#library = library;
        Object.freeze(this);
    }

    plus(other) {
        return this.#library.calls.lengthAdd(this, other);
    }

    minus(other) {
        return this.#library.calls.lengthSubtract(this, other);
    }

    /** Times a whole number. */
    times(factor) {
        return this.#library.calls.lengthMultiply(this, factor);
    }

    /** Text as a spec of lengthFormat() says. */
    format(spec) {
        return this.#library.calls.lengthFormat(this, spec).text;
    }

    /** Inches with a fraction where 1/64 in suffices, else exact millimetres: given back as text, it is this length. */
    toString() {
        const inches = this.#library.calls.lengthFormat(this);
        return inches.exact ? inches.text : this.format({ style: "mm", decimals: 6 });
    }

    toJSON() {
        return this.toString();
    }

    /** Lengths compare with < and >; beside text they are text. */
    [Symbol.toPrimitive](hint) {
        return hint === "number" ? this.ticks : this.toString();
    }

    /** What a console shows. */
    [Symbol.for("nodejs.util.inspect.custom")]() {
        return `Length ${this}`;
    }
}

/** The ticks of what is taken for a length: a Length of any library, BigInt ticks, or text that says one exactly. */
export function ticksOf(library, value, name) {
    if (typeof value === "string")
        return library.parsed(value);
    const ticks = typeof value === "object" && value !== null ? value.ticks : value;
    if (typeof ticks !== "bigint")
        throw new TypeError(`${name} must be text such as "2 1/2 in", BigInt ticks or a Length, not ${said(value)}: ` +
            "a bare number does not say its unit");
    return whole(ticks, name, 64);
}
