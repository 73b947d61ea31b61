// The errors, one class for each status.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
import { MuslinError } from "./errors.js";

/** A pointer that must be given is null. */
export class MuslinNullError extends MuslinError {}

/** A struct's size is 0, below the first published one, or above 4096. */
export class MuslinStructSizeError extends MuslinError {}

/** Bytes behind the members this library knows are not zero. */
export class MuslinStructTailError extends MuslinError {}

/** A flag this library does not know. */
export class MuslinFlagsError extends MuslinError {}

/** A value that is none of the listed choices. */
export class MuslinChoiceError extends MuslinError {}

/** An argument below its least or above its greatest value. */
export class MuslinRangeError extends MuslinError {}

/** The result would lie outside the range of its type. */
export class MuslinOverflowError extends MuslinError {}

/** A divisor is zero. */
export class MuslinDivideByZeroError extends MuslinError {}

/** The caller's buffer or array is too small; the needed size was written. */
export class MuslinBufferError extends MuslinError {}

/** A row number at or past the end of a table. */
export class MuslinIndexError extends MuslinError {}

/** The text holds no number. */
export class MuslinTextEmptyError extends MuslinError {}

/** Something stands where a number or a unit should. */
export class MuslinTextSyntaxError extends MuslinError {}

/** A whole length, then something more. */
export class MuslinTextTrailingError extends MuslinError {}

/** A word that is no unit of length. */
export class MuslinTextUnitError extends MuslinError {}

/** The other decimal sign than the one asked for. */
export class MuslinTextDecimalError extends MuslinError {}

/** A fraction over zero. */
export class MuslinTextZeroDenominatorError extends MuslinError {}

/** Not valid UTF-8. */
export class MuslinTextEncodingError extends MuslinError {}

/** The seams eat the whole piece: nothing would be seen of it. */
export class MuslinSeamTooWideError extends MuslinError {}

/** A quarter turn was asked of a block that is not square. */
export class MuslinNotSquareError extends MuslinError {}

/** The stock gives not even one piece, so no amount of it is enough. */
export class MuslinNoYieldError extends MuslinError {}

/** The stock in hand does not suffice. */
export class MuslinNotEnoughError extends MuslinError {}

/** No listed size or layout covers what is asked. */
export class MuslinNoFitError extends MuslinError {}

/** An allocator returned nothing. */
export class MuslinNoMemoryError extends MuslinError {}

/** A customary addition is below what the geometry needs. */
export class MuslinCustomaryError extends MuslinError {}

/** This kind of unit is not made by that method. */
export class MuslinMethodError extends MuslinError {}

/** No such shape: corners missing, edges that cross, an impossible angle or arc. */
export class MuslinShapeError extends MuslinError {}

/** The pieces leave a gap in the outline, overlap, or stick out. */
export class MuslinNotTiledError extends MuslinError {}

/** The work, or what is stored, would be more than the caller allows. */
export class MuslinWorkLimitError extends MuslinError {}

/** An id of another quilt, of another sort, or of nothing. */
export class MuslinForeignError extends MuslinError {}

/** The caller's progress call ended it before there was an answer. */
export class MuslinStoppedError extends MuslinError {}

/** More would be needed than can be counted here; since 1.1. */
export class MuslinTooManyError extends MuslinError {}

/** The classes by status. */
export default new Map([
    [1, MuslinNullError],
    [2, MuslinStructSizeError],
    [3, MuslinStructTailError],
    [4, MuslinFlagsError],
    [5, MuslinChoiceError],
    [6, MuslinRangeError],
    [7, MuslinOverflowError],
    [8, MuslinDivideByZeroError],
    [9, MuslinBufferError],
    [10, MuslinIndexError],
    [11, MuslinTextEmptyError],
    [12, MuslinTextSyntaxError],
    [13, MuslinTextTrailingError],
    [14, MuslinTextUnitError],
    [15, MuslinTextDecimalError],
    [16, MuslinTextZeroDenominatorError],
    [17, MuslinTextEncodingError],
    [18, MuslinSeamTooWideError],
    [19, MuslinNotSquareError],
    [20, MuslinNoYieldError],
    [21, MuslinNotEnoughError],
    [22, MuslinNoFitError],
    [23, MuslinNoMemoryError],
    [24, MuslinCustomaryError],
    [25, MuslinMethodError],
    [26, MuslinShapeError],
    [27, MuslinNotTiledError],
    [28, MuslinWorkLimitError],
    [29, MuslinForeignError],
    [30, MuslinStoppedError],
    [31, MuslinTooManyError],
]);
