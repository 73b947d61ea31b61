/* inside.h - what the library's files share and nobody else sees: checks of input, sized structs, the problem.
 *
 * SPDX-License-Identifier: MIT
 *
 * The way of every public function: read the spec, check the output, check each value, compute, write. */
#ifndef MUSLIN_INSIDE_H
#define MUSLIN_INSIDE_H

#include "muslin/base.h"
#include "muslin/length.h"

#define MSL_STRUCT_SIZE_MAX 4096u

/* ---- a problem being looked for -------------------------------------------------------------------------------- */

/* The first failure wins; after it every msl_want... call does nothing. So a function lists what it wants, left to
 * right, and asks once at the end. */
struct msl_check {
    muslin_status status;
    struct muslin_problem *problem; /* the caller's, may be null */
    int64_t at;                     /* row or byte offset that a failure shall name */
};

/* Starts a check. A problem of a wrong size is itself a failure (and is not written to). */
struct msl_check msl_check_start(struct muslin_problem *problem);

/* Records a failure and writes the problem's sentence. Returns the status. */
muslin_status msl_fail(struct msl_check *check, muslin_status status, int32_t argument, int64_t value, int64_t limit);

/* Records a failure in a text: `length` of its bytes at check->at. */
/*@ requires \valid(check) && 0 <= check->at && 0 <= length && status != MUSLIN_OK;
    requires \valid_read(text + (check->at .. check->at + length - 1));
    assigns check->status, *check->problem;
    ensures \result != MUSLIN_OK; */
muslin_status msl_fail_text(struct msl_check *check, muslin_status status, const char *text, int64_t length);

static inline void msl_want_pointer(struct msl_check *check, int32_t argument, const void *pointer)
{
    if (pointer == NULL)
        msl_fail(check, MUSLIN_ERR_NULL, argument, 0, 0);
}

/* least <= value <= most, else MUSLIN_ERR_RANGE with the limit that was broken. For lengths, counts and ppm alike. */
static inline void msl_want_between(struct msl_check *check, int32_t argument, int64_t value, int64_t least,
                                    int64_t most)
{
    if (value < least || value > most)
        msl_fail(check, MUSLIN_ERR_RANGE, argument, value, value < least ? least : most);
}

/* The same with the usual bounds: 0 .. MUSLIN_SIZE_MAX, 1 .. MUSLIN_SIZE_MAX, 0 or 1 .. MUSLIN_COUNT_MAX. */
void msl_want_size(struct msl_check *check, int32_t argument, muslin_len value);
void msl_want_some_size(struct msl_check *check, int32_t argument, muslin_len value);
void msl_want_count(struct msl_check *check, int32_t argument, int64_t value);
void msl_want_some_count(struct msl_check *check, int32_t argument, int64_t value);
/* An allowance or a take-up: 0 .. MUSLIN_SIZE_MAX / 8. */
void msl_want_seam(struct msl_check *check, int32_t argument, muslin_len value);
/* first <= value <= last, else MUSLIN_ERR_CHOICE. */
void msl_want_choice(struct msl_check *check, int32_t argument, int32_t value, int32_t first, int32_t last);

/* A pad member: 0, else MUSLIN_ERR_STRUCT_TAIL, so that a later version may give it a meaning. */
void msl_want_pad(struct msl_check *check, int32_t pad);
/* '.' or ',', else MUSLIN_ERR_CHOICE. */
void msl_want_decimal_sign(struct msl_check *check, int32_t sign);

/* ---- sized structs --------------------------------------------------------------------------------------------- */

/* Reads a caller's struct into *into (`known` bytes, the library's own sizeof): checks size, tail and flags. `least`
 * is the size first published. Members that the caller does not know become zero, after a failure all but the size. */
void msl_read_struct(struct msl_check *check, int32_t argument, void *into, uint32_t known, uint32_t least,
                     uint32_t known_flags, const void *from);

/* Checks a caller's output struct before anything is computed. */
void msl_want_output(struct msl_check *check, const void *out, uint32_t least);

/* Writes what both know, zeroes the rest, and keeps the caller's size. An answer has no flags; a row to be asked with
 * brings its own. */
void msl_write_struct(void *out, const void *from, uint32_t known);

/* Writes a spec's initial values: the first `size` bytes of *from, which has `known`. */
muslin_status msl_init_struct(void *spec, uint32_t size, const void *from, uint32_t known, uint32_t least);

/* ---- rows to read ---------------------------------------------------------------------------------------------- */

/* least <= row_size <= 4096, else MUSLIN_ERR_STRUCT_SIZE. */
void msl_want_row_size(struct msl_check *check, size_t row_size, uint32_t least);

/* The caller's row `index`, for msl_read_struct; check->at names it from now on. A row whose own size reaches into the
 * next one is MUSLIN_ERR_STRUCT_SIZE. */
const void *msl_row_to_read(struct msl_check *check, const void *rows, size_t row_size, size_t index);

/* ---- ask-then-fill rows ---------------------------------------------------------------------------------------- */

/* Checks (rows, row_size, capacity, count) when `needed` rows are to be written: sets *count; returns 1 when rows are
 * to be written, 0 when the caller only asked or a failure was recorded (MUSLIN_ERR_BUFFER, _NULL, _STRUCT_SIZE). */
int msl_rows_wanted(struct msl_check *check, void *rows, size_t row_size, uint32_t least, size_t capacity,
                    size_t *count, size_t needed);
/* The same for a call that may yet fail: where it says that rows shall be filled, *count is written with them. */
int msl_rows_to_fill(struct msl_check *check, void *rows, size_t row_size, uint32_t least, size_t capacity,
                     size_t *count, size_t needed);
/* Writes row `index` at its stride; its size member becomes row_size. */
void msl_write_row(void *rows, size_t row_size, size_t index, const void *from, uint32_t known);

/* ---- whole numbers --------------------------------------------------------------------------------------------- */

/* a / b up, for a >= 0 and b > 0. */
/*@ requires 0 <= a && 0 < b;
    assigns \nothing;
    ensures (\result - 1) * b < a <= \result * b; */
int64_t msl_divided_up(int64_t a, int64_t b);

/* Do all n values lie from `least` to below least + span, a power of two? */
int msl_all_within(const int64_t *values, size_t n, int64_t least, int64_t span);
/* Where a block of an array's elements that begins at `first` ends: few enough to be looked at twice at little cost. */
size_t msl_block_end(size_t first, size_t n);

/* The greatest common divisor of two numbers, neither below 0; the other one where one is 0. */
/*@ requires 0 <= a && 0 <= b && (0 < a || 0 < b);
    assigns \result \from a, b;
    ensures 1 <= \result && a / \result * \result == a && b / \result * \result == b; */
int64_t msl_common_divisor(int64_t a, int64_t b);

static inline int64_t msl_lesser(int64_t a, int64_t b)
{
    return a < b ? a : b;
}

static inline int64_t msl_greater(int64_t a, int64_t b)
{
    return a > b ? a : b;
}

/* ---- text being written ---------------------------------------------------------------------------------------- */

/* Appends to a buffer and counts; what does not fit is counted and dropped. */
struct msl_text {
    char *buf;
    size_t cap;
    size_t used; /* bytes so far, terminator not counted; may pass cap */
};
void msl_put(struct msl_text *text, const char *words);
void msl_put_unsigned(struct msl_text *text, uint64_t number);
void msl_put_signed(struct msl_text *text, int64_t number); /* ASCII minus */
void msl_put_end(struct msl_text *text);                    /* terminates within cap, which is not 0 */

#endif
