// Plain values on their way into the library, measured before they are let in: WebAssembly would cut them off without a
// word.
//
// SPDX-License-Identifier: MIT
import { enums } from "./api.js";

/** What a value is, for messages. */
export function said(value) {
    if (typeof value === "string")
        return JSON.stringify(value);
    if (typeof value === "object" && value !== null)
        return Array.isArray(value) ? "an array" : `a ${value.constructor?.name ?? "plain object"}`;
    return typeof value === "function" ? "a function" : String(value);
}

/** A whole number, given as number or BigInt, that fits so many bits: as BigInt. */
export function whole(value, name, bits, signed = true) {
    if (typeof value !== "bigint" && !Number.isInteger(value))
        throw new TypeError(`${name} must be a whole number, not ${said(value)}`);
    if (typeof value === "number" && !Number.isSafeInteger(value))
        throw new RangeError(`${name} is ${value}, which a number does not hold exactly: give a BigInt`);
    const number = BigInt(value);
    const least = signed ? -(1n << BigInt(bits - 1)) : 0n;
    if (number < least || number >= least + (1n << BigInt(bits)))
        throw new RangeError(`${name} is ${number}, which does not fit ${bits} bits`);
    return number;
}

/** A BigInt as JSON can have it: as a number where that is exact, else its digits as text. */
function forJson(value) {
    if (typeof value !== "bigint")
        return value;
    const number = counted(value);
    return typeof number === "number" ? number : String(value);
}

const toJSON = {
    value() {
        return Array.isArray(this) || ArrayBuffer.isView(this) ? Array.from(this, forJson)
            : Object.fromEntries(Object.entries(this).map(([name, value]) => [name, forJson(value)]));
    },
};

/** A result of the library: JSON.stringify() takes it, though some of its numbers are BigInts. */
export function jsonable(found) {
    return Object.defineProperty(found, "toJSON", toJSON);
}

/** A count as number. What no number holds stays a BigInt, so that it is never inexact. */
export function counted(value) {
    const number = Number(value);
    return Number.isSafeInteger(number) ? number : value;
}

/** Text as UTF-8. Half a surrogate pair, which is no character, is passed on: the library says where it stands. */
export function utf8(text, name) {
    if (typeof text !== "string")
        throw new TypeError(`${name} must be text, not ${said(text)}`);
    const bytes = [];
    for (const character of text) {
        const code = character.codePointAt(0);
        if (code >= 0xd800 && code < 0xe000)
            bytes.push(0xed, 0x80 | code >> 6 & 0x3f, 0x80 | code & 0x3f);
        else
            bytes.push(...encoder.encode(character));
    }
    return Uint8Array.from(bytes);
}

const encoder = new TextEncoder();

/** The text of such bytes. */
export function textOf(bytes) {
    let text = "", start = 0;
    for (let at = 0; at < bytes.length; at++) {
        if (bytes[at] === 0xed && bytes[at + 1] >= 0xa0) {
            text += decoder.decode(bytes.subarray(start, at));
            text += String.fromCharCode(0xd000 | (bytes[at + 1] & 0x3f) << 6 | bytes[at + 2] & 0x3f);
            start = at + 3;
        }
    }
    return text + decoder.decode(bytes.subarray(start));
}

const decoder = new TextDecoder("utf-8", { ignoreBOM: true });

/** What an enum's numbers are called, both ways. */
class Choices {
    constructor(text) {
        const pairs = text.split(" ").map((pair) => pair.split("="));
        this.numbers = new Map(pairs.map(([word, number]) => [word, Number(number)]));
        this.words = new Map(pairs.map(([word, number]) => [Number(number), word]));
    }
}

const known = new Map();

function choices(kind) {
    if (!known.has(kind))
        known.set(kind, new Choices(enums[kind]));
    return known.get(kind);
}

/** A choice's number. A number is let through: the library says whether it knows it. */
export function numberOf(kind, word, name) {
    if (typeof word === "number")
        return Number(whole(word, name, 32));
    const number = choices(kind).numbers.get(word);
    if (number === undefined) {
        const listed = [...choices(kind).numbers.keys()].map((one) => `"${one}"`).join(", ");
        throw new TypeError(`${name} must be one of ${listed}, not ${said(word)}`);
    }
    return number;
}

/** A choice's word; null for 0 where that is none, and the number itself where no word is known. */
export function wordOf(kind, number) {
    return choices(kind).words.get(number) ?? (number === 0 ? null : number);
}

/** A sum of warnings, one by one. */
export function warningsIn(sum) {
    const found = [];
    for (let bit = 0; bit < 32; bit++)
        if (sum >>> bit & 1)
            found.push(wordOf("Warning", 1 << bit >>> 0));
    return Object.freeze(found);
}
