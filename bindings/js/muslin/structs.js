// Structs in memory: how they are written and read, by the table in api.js.
//
// SPDX-License-Identifier: MIT
import { structs } from "./api.js";
import { Length, ticksOf } from "./length.js";
import { counted, jsonable, numberOf, said, warningsIn, whole, wordOf } from "./values.js";

const LITTLE = true;

/** Each kind of member: how it is read from a place and written to it. Results only have no writer. */
const kinds = {
    length: {
        read: (library, at) => new Length(library.view.getBigInt64(at, LITTLE), library),
        write(library, at, value, name) {
            const ticks = ticksOf(library, value, name); // may make the memory grow: before the view is taken
            library.view.setBigInt64(at, ticks, LITTLE);
        },
    },
    id: {
        read: (library, at) => library.view.getBigInt64(at, LITTLE),
        write: (library, at, value, name) => library.view.setBigInt64(at, whole(value, name, 64), LITTLE),
    },
    int64: {
        read: (library, at) => counted(library.view.getBigInt64(at, LITTLE)),
        write: (library, at, value, name) => library.view.setBigInt64(at, whole(value, name, 64), LITTLE),
    },
    int32: {
        read: (library, at) => library.view.getInt32(at, LITTLE),
        write: (library, at, value, name) => library.view.setInt32(at, Number(whole(value, name, 32)), LITTLE),
    },
    uint32: {
        read: (library, at) => library.view.getUint32(at, LITTLE),
        write: (library, at, value, name) => library.view.setUint32(at, Number(whole(value, name, 32, false)), LITTLE),
    },
    truth: {
        read: (library, at) => library.view.getInt32(at, LITTLE) !== 0,
        write(library, at, value, name) {
            library.view.setInt32(at, truth(value, name), LITTLE);
        },
    },
    choice: {
        read: (library, at, { detail }) => wordOf(detail, library.view.getInt32(at, LITTLE)),
        write(library, at, value, name, { detail }) {
            if (value !== null)
                library.view.setInt32(at, numberOf(detail, value, name), LITTLE);
        },
    },
    sign: {
        read: (library, at) => String.fromCodePoint(library.view.getInt32(at, LITTLE)),
        write(library, at, value, name) {
            if (typeof value !== "string" || [...value].length !== 1)
                throw new TypeError(`${name} must be one character, not ${said(value)}`);
            library.view.setInt32(at, value.codePointAt(0), LITTLE);
        },
    },
    flag: {
        read: (library, at, { detail }) => (library.view.getUint32(at, LITTLE) & detail) !== 0,
        write(library, at, value, name, { detail }) {
            const others = library.view.getUint32(at, LITTLE) & ~detail;
            library.view.setUint32(at, (others | truth(value, name) * detail) >>> 0, LITTLE);
        },
    },
    large: { read: (library, at) => library.view.getBigInt64(at, LITTLE) },
    size: { read: (library, at) => library.view.getUint32(at, LITTLE) },
    warnings: { read: (library, at) => warningsIn(library.view.getUint32(at, LITTLE)) },
    chars: { read: (library, at) => library.textAt(at) },
    numbers: {
        read: (library, at, { detail }) =>
            Object.freeze(jsonable(Array.from({ length: detail }, (_, i) => kinds.int64.read(library, at + 8 * i)))),
    },
    // What a row is made of lies in an array of its own: the row says where its parts begin and how many they are.
    parts: {
        read(library, at, { detail }, row, parts) {
            const first = Number(library.view.getBigInt64(row + detail, LITTLE));
            return Object.freeze(parts.slice(first, first + Number(library.view.getBigInt64(at, LITTLE))));
        },
    },
};
kinds.maybe = kinds.choice;

function truth(value, name) {
    if (typeof value !== "boolean")
        throw new TypeError(`${name} must be true or false, not ${said(value)}`);
    return value ? 1 : 0;
}

/** What one number of a kind is, read from a place. */
export const read = (library, kind, at, detail) => kinds[kind].read(library, at, { detail });

/** A struct's size and members. */
class Struct {
    constructor(name) {
        const [bytes, members, init] = structs[name];
        this.name = name;
        this.bytes = bytes;
        this.init = init;
        this.members = new Map(members.split(" ").filter(Boolean).map((text) => {
            const [, member, kind, detail, at] = /^(\w+):(\w+)(?:=(-?\w+))?@(\d+)$/.exec(text);
            const number = /^\d/.test(detail) ? Number(detail) : detail;
            return [member, { kind: kinds[kind], detail: number, at: Number(at) }];
        }));
    }

    /** A struct with its size set, and with the library's own initial values. */
    begin(library, at) {
        if (this.init)
            library.function(this.init)(at, this.bytes);
        library.view.setUint32(at, this.bytes, LITTLE);
    }

    /** Writes the members that are given over the initial values. */
    write(library, at, given, name) {
        this.begin(library, at);
        if (typeof given !== "object" || given === null || Array.isArray(given))
            throw new TypeError(`${name} must be an object with members of ${this.name}, not ${said(given)}`);
        for (const [key, value] of Object.entries(given)) {
            const member = this.members.get(key);
            if (!member?.kind.write)
                throw new TypeError(`${this.name} has no member "${key}"`);
            if (value !== undefined)
                member.kind.write(library, at + member.at, value, name === "spec" ? key : `${name}.${key}`, member);
        }
    }

    /** All members, as a frozen plain object. */
    read(library, at, parts) {
        const found = {};
        for (const [name, member] of this.members)
            found[name] = member.kind.read(library, at + member.at, member, at, parts);
        return Object.freeze(jsonable(found));
    }
}

const known = new Map();

export function structOf(name) {
    if (!known.has(name))
        known.set(name, new Struct(name));
    return known.get(name);
}
