// The errors that have a class of their own; statuses.js has one for each status.
//
// SPDX-License-Identifier: MIT
import { jsonable } from "./values.js";

/** A call was refused. Its message is the library's sentence; each status has a class of its own. */
export class MuslinError extends Error {
    /** told: status, argument, at, bytes, value, limit */
    constructor(message, told) {
        super(message);
        Object.assign(this, told);
    }

    get name() {
        return this.constructor.name;
    }

    toJSON() {
        return { name: this.name, message: this.message, ...jsonable({ ...this }).toJSON() };
    }
}

/** The exact answer is no whole number of ticks, and no rounding was asked for. */
export class InexactError extends RangeError {
    get name() {
        return "InexactError";
    }
}
