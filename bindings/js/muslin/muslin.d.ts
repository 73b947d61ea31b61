// The types of the package. What follows from the API, with the words of the headers, is in api.d.ts.
//
// SPDX-License-Identifier: MIT
import type { Argument, Calls, FormatSpec, ParseSpec, Status } from "./api.js";

export * from "./api.js";

/** The version of the package. */
export declare const version: string;

declare global {
    // The library "esnext.disposable" says the same: with it, or without, the types are whole.
    interface SymbolConstructor {
        readonly dispose: unique symbol;
    }
}

/** An address as text or URL, bytes, a Response, or a WebAssembly.Module: without types of browsers or of Node. */
export type WasmSource = string | object;

export interface LoadOptions {
    /**
     * Where muslin.wasm is, if not beside this module: a URL, its bytes, a response, or the module compiled before,
     * which can be sent to a Worker.
     */
    readonly wasm?: WasmSource | PromiseLike<WasmSource>;
    /** Bytes that its memory does not grow past; what would need more is a MuslinNoMemoryError. */
    readonly mostMemory?: number;
}

/** An instance of the library, independent of all others. */
export declare function load(options?: LoadOptions): Promise<Muslin>;

export interface Muslin extends Calls {
    /** A Length, from text that says one exactly ("2 1/2 in", "6.35 cm"), from ticks, or from another Length. */
    length(value: LengthLike, spec?: ParseSpec): Length;
    /** The functions of the WebAssembly module itself, and its memory. */
    readonly exports: { readonly memory: { readonly buffer: ArrayBuffer } } & { readonly [name: string]: unknown };
}

/** An exact length in ticks of 1/8128 inch, so that 1/64 inch and 1/320 mm are whole numbers. */
export declare class Length {
    private constructor();
    readonly ticks: bigint;
    plus(other: LengthLike): Length;
    minus(other: LengthLike): Length;
    /** Times a whole number. */
    times(factor: Whole): Length;
    /** Text as the spec says. */
    format(spec?: FormatSpec): string;
    /** Inches with a fraction where 1/64 in suffices, else exact millimetres: given back as text, it is this length. */
    toString(): string;
    toJSON(): string;
    /**
     * Two Lengths compare with < and >; beside text, and with +, they are text. Equal are those of equal ticks: == asks
     * whether they are one object.
     */
    [Symbol.toPrimitive](hint: string): bigint | string;
}

/**
 * What is taken for a length: a Length, BigInt ticks, or text that says one exactly ("2 1/2 in", "6.35 cm"; without a
 * unit it is inches). A bare number is refused: it does not say whether it is ticks.
 */
export type LengthLike = Length | { readonly ticks: bigint } | bigint | string;

export type LengthsLike = Iterable<LengthLike>;

/** A whole number. */
export type Whole = number | bigint;

export type WholeNumbers = Iterable<Whole>;

/** A fabric, a measure or a node, as its quilt numbers them; 0n is none. */
export type Id = bigint;

/**
 * Is told how a search stands, every few million steps: steps taken, the cost of the best plan so far, and the bound, in
 * the unit of `cost` and `least` in totals. Answering true ends the search with what it has. It cannot be async: the
 * search would not wait.
 */
export type Progress = (work: number, best: bigint, bound: bigint) => boolean | void;

/** A length as text, and whether the text says exactly that length. */
export interface Formatted {
    readonly text: string;
    readonly exact: boolean;
}

/** A struct that is asked with as it comes back: with every member. */
export type Filled<Struct> = { readonly [Name in keyof Struct]-?: FilledMember<Exclude<Struct[Name], undefined>> };

type FilledMember<Given> = [Length] extends [Given] ? Length : [number] extends [Given] ? number : Given;

/** An object of the library. */
export declare abstract class Handle {
    /** Whether free() was called. */
    readonly freed: boolean;
    /**
     * Gives the memory back; a second time it does nothing. So does, some time, that nobody has it any more. What still
     * reads it may be used on. Any other call of it is a ReferenceError from then on.
     */
    free(): void;
    /** The same, for `using`: there where the runtime has Symbol.dispose. */
    [Symbol.dispose](): void;
}

/** A call was refused. Its message is the library's sentence; each status has a class of its own. */
export declare class MuslinError extends Error {
    readonly status: Status;
    /** The input that was at fault; "none" where the call does not say. */
    readonly argument: Argument;
    /**
     * Byte offset in the text (as UTF-8), the number of the row or element, or, where members of a spec share one word,
     * which of them it is, in their order (of a patch's measures 0 is its width, 1 its height); else 0. From 0.
     */
    readonly at: number;
    /** Bytes of text concerned, else 0. */
    readonly bytes: number;
    /** The offending value: ticks, count, parts per million or choice, as its argument is measured. */
    readonly value: bigint;
    /** The limit it broke, in the same unit; 0 where there is none. */
    readonly limit: bigint;
}

/** The exact answer is no whole number of ticks. */
export declare class InexactError extends RangeError {}
