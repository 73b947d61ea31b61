// A call of the library, from what JavaScript gives to what it gets back, by the tables in api.js.
//
// A function is a row of tokens, one for what C takes at a place or at a few that belong together:
//
//     name:kind=detail      is given; kind and detail say as what
//     ?name:kind=detail     may be left out; said with the first spec, or, for statuses, last
//     >name:kind=detail     comes back
//     kind                  is nobody's business: self, count, allocator, problem, failed
//
// SPDX-License-Identifier: MIT
import { Handle, Hold } from "./handles.js";
import { Length, ticksOf } from "./length.js";
import { read, structOf } from "./structs.js";
import { counted, jsonable, numberOf, said, textOf, utf8, whole, wordOf } from "./values.js";

const LITTLE = true;
const PAGE = 512;          // rows asked for at a time
const PLACES_MOST = 1 << 24; // the library refuses more before it writes any

/** One run of a function: what C gets, the memory that this needs, and what is read from it afterwards. */
class Call {
    constructor(library, plan, self) {
        this.library = library;
        this.plan = plan;
        this.self = self;
        this.passed = [];
        this.outputs = new Map(); // name -> how it is read
        this.asked = undefined;   // what is asked twice: for its number, then for itself
        this.arrays = new Map();  // those that are not yet counted: name -> count
        this.taken = [];
    }

    // ---- memory for a while ----

    take(size) {
        const at = this.library.take(size);
        this.taken.push([at, size]);
        return at;
    }

    giveBack() {
        for (const [at, size] of this.taken)
            this.library.exports.muslin_wasm_give(at, Math.max(size, 1));
    }

    // ---- what C gets ----

    pass(...values) {
        this.passed.push(...values);
    }

    /** A place where the library writes something of a kind. */
    passOutput(name, kind, size, detail) {
        const at = this.take(size);
        this.pass(at);
        this.outputs.set(name, () => read(this.library, kind, at, detail));
        return at;
    }

    /** Numbers in a row, each of 4 or 8 bytes. */
    passNumbers(name, values, bytes, convert) {
        const list = listOf(values, name);
        const at = this.take(list.length * bytes);
        list.forEach((value, i) => {
            const number = convert(value, `${name}[${i}]`);
            if (bytes === 8)
                this.library.view.setBigInt64(at + 8 * i, number, LITTLE);
            else
                this.library.view.setInt32(at + 4 * i, Number(number), LITTLE);
        });
        this.pass(at);
        this.arrays.set(name, list.length);
    }

    passRows(name, struct, rows) {
        const list = listOf(rows, name);
        const at = this.take(list.length * struct.bytes);
        list.forEach((row, i) => struct.write(this.library, at + i * struct.bytes, row, `${name}[${i}]`));
        this.pass(at, struct.bytes, list.length);
        return { at, count: list.length };
    }

    rowsAt(struct, at, count, parts) {
        return Object.freeze(Array.from({ length: count }, (_, i) =>
            struct.read(this.library, at + i * struct.bytes, parts)));
    }

    /** How many places the spec says there are. */
    get places() {
        return Number(this.library.view.getBigInt64(this.spec.at + this.spec.struct.members.get("places").at, LITTLE));
    }

    // ---- the run ----

    run() {
        this.ask();
        if (this.asked) {
            const count = this.library.view.getUint32(this.asked.count, LITTLE);
            this.asked.room(count);
            if (count > 0 || this.outputs.size > 1)
                this.ask();
        }
    }

    ask() {
        const status = this.plan.function(...this.passed);
        if (status !== 0)
            throw this.error(status);
    }

    error(status) {
        const problem = this.problem && structOf("Problem").read(this.library, this.problem);
        const at = this.failed === undefined ? 0 : this.library.view.getUint32(this.failed, LITTLE);
        return this.library.error(status, problem?.status === status ? problem : { at });
    }

    /** What comes back: the one thing, or several by name. */
    result() {
        const found = [...this.outputs].map(([name, readIt]) => [name, readIt()]);
        return found.length === 1 ? found[0][1] : Object.freeze(jsonable(Object.fromEntries(found)));
    }
}

function listOf(values, name) {
    if (typeof values === "string" || typeof values?.[Symbol.iterator] !== "function")
        throw new TypeError(`${name} must be an array, not ${said(values)}`);
    return [...values];
}

/** Asks for a number of things, then makes room for them: where C is told of rows and room, and how they are read. */
function ask(call, token, bytes, places, readAll) {
    const first = call.passed.length;
    const count = call.take(4);
    call.pass(...places.map((place) => ({ rows: 0, size: bytes, room: 0, count })[place]));
    call.asked = {
        count,
        room(number) {
            const room = Math.max(number, 1);
            const at = call.take(room * bytes);
            call.passed[first + places.indexOf("rows")] = at;
            call.passed[first + places.indexOf("room")] = room;
            call.outputs.set(token.name || "text", () => readAll(at, number));
        },
    };
    call.outputs.set(token.name || "text", undefined); // in its place
}

/** What each kind of token passes to C: (call, token, value). */
const tokens = {
    // values
    length: (call, { name }, value) => call.pass(ticksOf(call.library, value, name)),
    id: (call, { name }, value) => call.pass(whole(value, name, 64)),
    int64: (call, { name }, value) => call.pass(whole(value, name, 64)),
    int32: (call, { name }, value) => call.pass(Number(whole(value, name, 32))),
    uint32: (call, { name }, value) => call.pass(Number(whole(value, name, 32, false))),
    choice: (call, { name, detail }, value) => call.pass(numberOf(detail, value, name)),
    truth(call, { name }, value) {
        if (typeof value !== "boolean")
            throw new TypeError(`${name} must be true or false, not ${said(value)}`);
        call.pass(value ? 1 : 0);
    },
    text(call, { name }, value) {
        const bytes = utf8(value, name);
        const at = call.take(bytes.length);
        call.library.bytes(at, bytes.length).set(bytes);
        call.pass(at, bytes.length);
    },

    // specs and arrays
    spec(call, { name, detail }, value = {}) {
        const struct = structOf(detail);
        const at = call.take(struct.bytes);
        struct.write(call.library, at, value, name);
        call.spec ??= { struct, at };
        call.pass(at);
    },
    given: (call, token, value) => tokens.spec(call, token, value),
    rows: (call, { name, detail, way }, value = way === "?" ? [] : undefined) =>
        void call.passRows(name, structOf(detail), value),
    filled(call, { name, detail }, value) {
        const struct = structOf(detail);
        const { at, count } = call.passRows(name, struct, value);
        call.outputs.set(name, () => call.rowsAt(struct, at, count));
    },
    lengths: (call, { name }, value) => call.passNumbers(name, value, 8, (one, at) => ticksOf(call.library, one, at)),
    ids: (call, { name }, value) => call.passNumbers(name, value, 8, (one, at) => whole(one, at, 64)),
    int64s: (call, { name }, value) => call.passNumbers(name, value, 8, (one, at) => whole(one, at, 64)),
    int32s: (call, { name }, value) => call.passNumbers(name, value, 4, (one, at) => whole(one, at, 32)),
    places(call, { name, way }, value) {
        if (way === ">") {
            const count = Math.min(Math.max(call.places, 1), PLACES_MOST);
            const at = call.take(8 * count);
            call.pass(at);
            call.outputs.set(name, () => Object.freeze(jsonable(Array.from({ length: call.places }, (_, i) =>
                read(call.library, "int64", at + 8 * i)))));
        } else if (value === undefined) {
            call.pass(0);
        } else {
            tokens.int64s(call, { name }, value);
            const count = call.arrays.get(name);
            if (count !== call.places)
                throw new RangeError(`${name} has ${count} numbers and there are ${call.places} places`);
            call.arrays.delete(name);
        }
    },
    count(call) {
        const counts = [...call.arrays.values()];
        if (counts.some((count) => count !== counts[0]))
            throw new RangeError("arrays of unequal length: " +
                [...call.arrays].map(([name, count]) => `${name} ${count}`).join(", "));
        call.many = counts[0];
        call.pass(call.many);
        call.arrays.clear();
    },

    // what the library needs besides
    self: (call) => call.pass(Handle.holdOf(call.self).pointer),
    handle(call, { name, detail }, value) {
        if (!(value instanceof call.library.handles[detail]))
            throw new TypeError(`${name} must be a ${detail} of this muslin, not ${said(value)}`);
        call.reads = Handle.holdOf(value);
        call.pass(call.reads.pointer);
    },
    allocator: (call) => call.pass(call.library.allocator),
    problem(call) {
        const struct = structOf("Problem");
        call.problem = call.take(struct.bytes);
        struct.begin(call.library, call.problem);
        call.pass(call.problem);
    },
    progress(call, { name }, value) {
        if (value !== undefined && typeof value !== "function")
            throw new TypeError(`${name} must be a function, not ${said(value)}`);
        call.progress = value;
        call.pass(value ? call.library.exports.muslin_wasm_progress() : 0, 0);
    },

    // what comes back
    struct(call, { name, detail }) {
        const struct = structOf(detail);
        const at = call.take(struct.bytes);
        call.library.view.setUint32(at, struct.bytes, LITTLE);
        call.pass(at);
        call.outputs.set(name, () => struct.read(call.library, at));
    },
    made: (call, { name }) => void (call.made = call.passOutput(name, "size", 4)),
    lent(call, { name, detail }) {
        const at = call.passOutput(name, "size", 4);
        call.outputs.set(name, () => new call.library.handles[detail](
            new Hold(read(call.library, "size", at), () => {}, Handle.holdOf(call.self))));
    },
    askRows(call, token) {
        const struct = structOf(token.detail);
        ask(call, token, struct.bytes, ["rows", "size", "room", "count"],
            (at, count) => call.rowsAt(struct, at, count));
    },
    askIds: (call, token) => askNumbers(call, token, "id"),
    askInt64s: (call, token) => askNumbers(call, token, "int64"),
    askText(call, token) {
        ask(call, token, 1, ["rows", "room", "count"], (at, bytes) =>
            textOf(call.library.bytes(at, bytes - 1))); // which may hold a zero byte
    },
    askPages(call, { detail }) {
        const [rows, parts] = detail.split("/").map(structOf);
        const { first, room } = call.page;
        const at = [call.take(rows.bytes * PAGE), call.take(parts.bytes * room), call.take(4), call.take(4)];
        call.pass(first, at[0], rows.bytes, PAGE, at[1], parts.bytes, room, at[2], at[3]);
        call.outputs.set("page", () => {
            const [count, given] = [read(call.library, "size", at[2]), read(call.library, "size", at[3])];
            const made = given ? call.rowsAt(parts, at[1], room) : [];
            return { rows: call.rowsAt(rows, at[0], given, made), left: count - given };
        });
    },
    many(call, { name }) {
        const at = call.take(8 * call.many);
        call.pass(at);
        call.outputs.set(name, () => jsonable(BigInt64Array.from({ length: call.many }, (_, i) =>
            call.library.view.getBigInt64(at + 8 * i, LITTLE))));
    },
    statuses(call, { name }, value) {
        if (value === undefined)
            return call.pass(0);
        if (!(value instanceof Int32Array) || value.length !== call.many)
            throw new TypeError(`${name} must be an Int32Array with a place for each of ${call.many} values`);
        const at = call.take(4 * call.many);
        call.pass(at);
        call.after = () => value.forEach((_, i) => { value[i] = call.library.view.getInt32(at + 4 * i, LITTLE); });
        return undefined;
    },
    failed(call) {
        call.failed = call.take(4);
        call.pass(call.failed);
    },
};

function askNumbers(call, token, kind) {
    ask(call, token, 8, ["rows", "room", "count"], (at, count) =>
        Object.freeze(jsonable(Array.from({ length: count }, (_, i) => read(call.library, kind, at + 8 * i)))));
}

/** Where plain numbers that come back are written. */
const outputBytes = {
    length: 8, id: 8, int64: 8, large: 8, int32: 4, uint32: 4, choice: 4, truth: 4, warnings: 4, size: 4,
};

const counts = (number) => `${number || "no"} argument${number === 1 ? "" : "s"}`;

/** A function of the library, ready to be called. */
export class Plan {
    constructor(library, name, [cName, text, returns]) {
        this.library = library;
        this.name = name;
        this.cName = cName;
        this.returns = returns?.split("=");
        this.tokens = text.split(" ").filter(Boolean).map((token) => {
            const [, way, name, kind, detail] = /^([>?]?)(?:(\w+):)?(\w+)(?:=([\w/]+))?$/.exec(token);
            return { way, name, kind, detail };
        });
        const given = this.tokens.filter(({ name, way }) => name && way === "");
        const specs = given.filter(({ kind }) => kind === "spec");
        specs.sort((a, b) => (b.name === "spec") - (a.name === "spec"));
        const optional = this.tokens.filter(({ way }) => way === "?");
        this.beside = optional.filter(({ kind }) => kind !== "statuses");
        this.parameters = [...given.filter(({ kind }) => kind !== "spec"), ...specs,
            ...optional.filter(({ kind }) => kind === "statuses")];
        if (this.beside.length > 0 && specs.length === 0)
            this.parameters.push({ name: "more", kind: "more" });
        this.firstSpec = specs[0] ?? this.parameters.find(({ kind }) => kind === "more");
        this.paged = this.tokens.some(({ kind }) => kind === "askPages");
    }

    /** Values by token. What may be left out besides is taken from the first spec, or stands by itself. */
    sorted(values) {
        if (values.length > this.parameters.length)
            throw new TypeError(`${this.name} takes ${counts(this.parameters.length)}, not ${values.length}`);
        const sorted = new Map(this.parameters.map((token, i) => [token, values[i]]));
        const spec = sorted.get(this.firstSpec);
        if (spec && this.beside.length > 0) {
            const rest = { ...spec };
            for (const token of this.beside) {
                sorted.set(token, rest[token.name]);
                delete rest[token.name];
            }
            sorted.set(this.firstSpec, rest);
            if (this.firstSpec.kind === "more" && Object.keys(rest).length > 0)
                throw new TypeError(`${this.name} knows no "${Object.keys(rest)[0]}"`);
        }
        return sorted;
    }

    /** Runs it, and reads what came of it while its memory is there. */
    run(self, values, readIt, page) {
        this.function ??= this.library.function(this.cName);
        const call = new Call(this.library, this, self);
        const sorted = this.sorted(values);
        call.page = page;
        try {
            for (const token of this.tokens) {
                if (token.way === ">" && token.kind in outputBytes)
                    call.passOutput(token.name, token.kind, outputBytes[token.kind], token.detail);
                else
                    tokens[token.kind](call, token, sorted.get(token));
            }
            return readIt(call);
        } finally {
            call.giveBack();
        }
    }

    call(self, values) {
        if (this.paged)
            return this.pages(self, values);
        if (this.returns)
            return this.run(self, values, (call) => this.returned(this.function(...call.passed)));
        return this.run(self, values, (call) => {
            if (call.progress)
                this.tell(call);
            else
                call.run();
            call.after?.();
            return call.result();
        });
    }

    /** What a progress function throws ends the call, and is thrown again behind it. */
    tell(call) {
        const told = this.library.telling(call.progress, () => call.run());
        if (told)
            throw told.raised;
    }

    /** What a function returns that returns no status. */
    returned(value) {
        const [kind, detail] = this.returns;
        switch (kind) {
        case "words": return this.library.textAt(value >>> 0);
        case "length": return new Length(value, this.library);
        case "maybe": return wordOf(detail, value);
        case "int64": return counted(value);
        default: return kind === "uint32" ? value >>> 0 : value;
        }
    }

    /** A handle's memory. What a progress function throws ends the call, and is thrown again behind it. */
    make(values, free) {
        return this.run(undefined, values, (call) => {
            const told = this.library.telling(call.progress, () => call.run());
            const hold = new Hold(read(this.library, "size", call.made), free, call.reads);
            if (told) {
                hold.letGo();
                throw told.raised;
            }
            return hold;
        });
    }

    /** Rows with what they are made of, a page at a time; the first one at once, so that failures show here. */
    pages(self, values) {
        const page = (first) => {
            for (let room = 8 * PAGE; ; room *= 2) {
                const found = this.run(self, values, (call) => {
                    call.ask();
                    return call.result();
                }, { first: BigInt(first), room });
                if (found.rows.length > 0 || found.left === 0)
                    return found;
            }
        };
        return (function* rowsOf(found) {
            for (let first = 0; ; found = page(first)) {
                yield* found.rows;
                first += found.rows.length;
                if (found.left === 0)
                    return;
            }
        })(page(0));
    }
}
