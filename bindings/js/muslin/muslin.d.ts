// The types of the package. What follows from the API, with the words of the headers, is in api.d.ts.
//
// SPDX-License-Identifier: MIT
import type { Argument, Calls, FormatSpec, ParseSpec, Status } from "./api.js";

export * from "./api.js";

/** The version of the package. */
export declare const version: string;

export interface LoadOptions {
    /**
     * Where muslin.wasm is, if not beside this module: a URL, its bytes, a response, or the module compiled before,
     * which can be sent to a Worker.
     */
    readonly wasm?: URL | string | BufferSource | Response | WebAssembly.Module |
        PromiseLike<URL | string | BufferSource | Response | WebAssembly.Module>;
    /** Bytes that its memory does not grow past; what would need more is a MuslinNoMemoryError. */
    readonly mostMemory?: number;
}

/** An instance of the library, independent of all others. */
export declare function load(options?: LoadOptions): Promise<Muslin>;

export interface Muslin extends Calls {
    /** A Length, from text that says one exactly ("2 1/2 in", "6.35 cm"), from ticks, or from another Length. */
    length(value: LengthLike, spec?: ParseSpec): Length;
    /** The functions of the WebAssembly module itself, and its memory. */
    readonly exports: WebAssembly.Exports;
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
    /** Lengths compare with < and >; beside text they are text. */
    [Symbol.toPrimitive](hint: string): bigint | string;
}

/** What is taken for a length: a Length, BigInt ticks, or text that says one exactly. A bare number has no unit. */
export type LengthLike = Length | { readonly ticks: bigint } | bigint | string;

export type LengthsLike = Iterable<LengthLike>;

/** A whole number. */
export type Whole = number | bigint;

export type WholeNumbers = Iterable<Whole>;

/** A fabric, a measure or a node, as its quilt numbers them; 0n is none. */
export type Id = bigint;

/** Is told how a search stands; answering true ends it with what it has. */
export type Progress = (work: number, best: number, bound: number) => unknown;

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
     * reads it may be used on. Symbol.dispose does the same, where there is one.
     */
    free(): void;
}

/** A call was refused. Its message is the library's sentence; each status has a class of its own. */
export declare class MuslinError extends Error {
    readonly status: Status;
    /** The input that was at fault; "none" where the call does not say. */
    readonly argument: Argument;
    /** Byte offset in the text (as UTF-8), or the number of the row or element, at which it was found; else 0. */
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
