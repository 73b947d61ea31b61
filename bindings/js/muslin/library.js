// One instance of the library: its memory, its functions and its handles.
//
// SPDX-License-Identifier: MIT
import { functions, handles, structs } from "./api.js";
import { Plan } from "./calls.js";
import { InexactError, MuslinError } from "./errors.js";
import { Handle, Hold } from "./handles.js";
import { Length, ticksOf } from "./length.js";
import classes from "./statuses.js";
import { structOf } from "./structs.js";
import { counted, textOf, wordOf } from "./values.js";

const NO_MEMORY = 23;

export class Library {
    #view;
    #told = []; // the progress functions of the calls that are running, the innermost last

    /** exports: of the WebAssembly instance, whose import `tell` is to be this library's tell(). */
    begin(exports) {
        this.exports = exports;
        this.allocator = this.take(16);
        exports.muslin_allocator_libc(this.allocator);
        this.handles = Object.fromEntries(Object.keys(handles).map((name) => [name, handleClass(this, name)]));
        this.calls = { ...this.handles };
        for (const [name, row] of Object.entries(functions))
            this.calls[name] = method(this, name, row);
        for (const [name, [, , init]] of Object.entries(structs))
            if (init)
                this.calls[name[0].toLowerCase() + name.slice(1)] = () => this.initial(name);
        this.calls.length = (value, spec) => new Length(
            typeof value === "string" ? this.parsed(value, spec) : ticksOf(this, value, "length"), this);
        this.calls.exports = exports;
        return Object.freeze(this.calls);
    }

    /** A function of the module, which may have been built without it. */
    function(name) {
        const found = this.exports[name];
        if (!found)
            throw new ReferenceError(`this muslin.wasm was built without ${name}()`);
        return found;
    }

    // ---- memory ----

    /** The memory as it is now: it moves when it grows. */
    get view() {
        if (this.#view?.buffer !== this.exports.memory.buffer)
            this.#view = new DataView(this.exports.memory.buffer);
        return this.#view;
    }

    bytes(at, count) {
        return new Uint8Array(this.exports.memory.buffer, at, count);
    }

    /** Memory, all zero. */
    take(size) {
        const most = Math.max(size, 1);
        const at = most > 0x7fffffff ? 0 : this.exports.muslin_wasm_take(most) >>> 0;
        if (at === 0)
            throw this.error(NO_MEMORY);
        this.bytes(at, most).fill(0);
        return at;
    }

    /** Text that ends with a zero byte. */
    textAt(at) {
        const bytes = new Uint8Array(this.exports.memory.buffer, at);
        return textOf(bytes.subarray(0, bytes.indexOf(0)));
    }

    // ---- what calls share ----

    error(status, { text, argument = "none", at = 0, bytes = 0, value = 0n, limit = 0n } = {}) {
        const kind = classes.get(status) ?? MuslinError;
        return new kind(text ?? this.textAt(this.exports.muslin_status_sentence(status) >>> 0),
            { status: wordOf("Status", status), argument, at, bytes, value, limit });
    }

    /** Text as ticks; it must say them exactly. */
    parsed(text, spec) {
        const found = this.calls.lengthParse(text, spec);
        if (!found.exact)
            throw new InexactError(`${JSON.stringify(text)} is no whole number of ticks (1/8128 in): ` +
                "lengthParse() gives the nearest");
        return found.value.ticks;
    }

    initial(name) {
        const struct = structOf(name);
        const at = this.take(struct.bytes);
        try {
            struct.begin(this, at);
            return struct.read(this, at);
        } finally {
            this.exports.muslin_wasm_give(at, struct.bytes);
        }
    }

    /** Runs something that tells a function how it stands; what that throws is given back. */
    telling(progress, run) {
        const told = { progress };
        this.#told.push(told);
        try {
            run();
        } catch (failure) {
            throw "raised" in told ? told.raised : failure;
        } finally {
            this.#told.pop();
        }
        return "raised" in told ? told : undefined;
    }

    /** Called by the library: true ends what it does. Cost and bound are BigInts, as they are in totals. */
    tell(work, best, bound) {
        const told = this.#told.at(-1);
        try {
            const answer = told.progress(counted(work), best, bound);
            if (typeof answer?.then === "function")
                throw new TypeError("progress answered a promise, which a search cannot wait for: " +
                    "it must not be async, and answers true or false");
            return answer ? 1 : 0;
        } catch (raised) {
            told.raised = raised;
            return 1;
        }
    }
}

/** A function that is read from its table when it is first called. */
function method(library, name, row) {
    let plan;
    return function call(...values) {
        plan ??= new Plan(library, name, row);
        return plan.call(this, values);
    };
}

function handleClass(library, name) {
    const { free, make, methods } = handles[name];
    const plan = new Plan(library, `new ${name}`, make);
    const freeIt = (pointer) => library.exports[free](pointer);
    const kind = {
        [name]: class extends Handle {
            constructor(...values) {
                super(values[0] instanceof Hold ? values[0] : plan.make(values, freeIt));
            }
        },
    }[name];
    for (const [own, row] of Object.entries(methods))
        Object.defineProperty(kind.prototype, own,
            { value: method(library, `${name}.${own}`, row), writable: true, configurable: true });
    return kind;
}
