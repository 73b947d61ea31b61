/* structs.c - structs that say their own size, so that old and new callers meet.
 *
 * SPDX-License-Identifier: MIT */
#include "inside.h"

static int size_is_bad(uint32_t size, uint32_t least)
{
    return size < least || size > MSL_STRUCT_SIZE_MAX;
}

/* Bytes are copied one by one: the library calls nothing, and a compiler that is told that they do not overlap makes
 * the best of the loop. */
static void copy_bytes(unsigned char *restrict to, const unsigned char *restrict from, uint32_t count)
{
    for (uint32_t i = 0; i < count; i++)
        to[i] = from[i];
}

static void zero_bytes(unsigned char *to, uint32_t first, uint32_t end)
{
    for (uint32_t i = first; i < end; i++)
        to[i] = 0;
}

static uint32_t read_u32(const unsigned char *from)
{
    uint32_t number;
    copy_bytes((unsigned char *)&number, from, (uint32_t)sizeof number);
    return number;
}

static void write_u32(unsigned char *to, uint32_t number)
{
    copy_bytes(to, (const unsigned char *)&number, (uint32_t)sizeof number);
}

/* Where size and flags lie in every public struct. */
enum { SIZE_AT = 0, FLAGS_AT = 4 };

/* The bound that a bad size breaks. */
static uint32_t size_limit(uint32_t size, uint32_t least)
{
    return size < least ? least : MSL_STRUCT_SIZE_MAX;
}

/* The size of a caller's struct whose size, tail and flags are right; 0 after a failure. */
static uint32_t size_to_read(struct msl_check *check, int32_t argument, uint32_t known, uint32_t least,
                             uint32_t known_flags, const unsigned char *theirs)
{
    msl_want_pointer(check, argument, theirs);
    if (check->status != MUSLIN_OK)
        return 0;
    uint32_t size = read_u32(theirs + SIZE_AT);
    if (size_is_bad(size, least)) {
        msl_fail(check, MUSLIN_ERR_STRUCT_SIZE, argument, size, size_limit(size, least));
        return 0;
    }
    for (uint32_t i = known; i < size; i++)
        if (theirs[i] != 0) {
            msl_fail(check, MUSLIN_ERR_STRUCT_TAIL, argument, size, known);
            return 0;
        }
    uint32_t flags = read_u32(theirs + FLAGS_AT);
    if ((flags & ~known_flags) == 0)
        return size;
    msl_fail(check, MUSLIN_ERR_FLAGS, argument, flags, known_flags);
    return 0;
}

void msl_read_struct(struct msl_check *check, int32_t argument, void *into, uint32_t known, uint32_t least,
                     uint32_t known_flags, const void *from)
{
    unsigned char *ours = into;
    uint32_t size = size_to_read(check, argument, known, least, known_flags, from);
    uint32_t common = size < known ? size : known;
    copy_bytes(ours, from, common);
    zero_bytes(ours, common, known);
    write_u32(ours + SIZE_AT, known);
}

void msl_want_output(struct msl_check *check, const void *out, uint32_t least)
{
    msl_want_pointer(check, MUSLIN_ARG_OUTPUT, out);
    if (check->status != MUSLIN_OK)
        return;
    uint32_t size = read_u32((const unsigned char *)out + SIZE_AT);
    if (size_is_bad(size, least))
        msl_fail(check, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_OUTPUT, size, size_limit(size, least));
}

void msl_write_struct(void *out, const void *from, uint32_t known)
{
    unsigned char *theirs = out;
    uint32_t size = read_u32(theirs + SIZE_AT);
    uint32_t common = size < known ? size : known;
    copy_bytes(theirs, from, common);
    zero_bytes(theirs, common, size);
    write_u32(theirs + SIZE_AT, size);
}

muslin_status msl_init_struct(void *spec, uint32_t size, const void *from, uint32_t known, uint32_t least)
{
    unsigned char *theirs = spec;
    if (spec == NULL)
        return MUSLIN_ERR_NULL;
    if (size_is_bad(size, least))
        return MUSLIN_ERR_STRUCT_SIZE;
    uint32_t common = size < known ? size : known;
    copy_bytes(theirs, from, common);
    zero_bytes(theirs, common, size);
    write_u32(theirs + SIZE_AT, size);
    return MUSLIN_OK;
}

void msl_want_row_size(struct msl_check *check, size_t row_size, uint32_t least)
{
    if (row_size > MSL_STRUCT_SIZE_MAX)
        msl_fail(check, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, MSL_STRUCT_SIZE_MAX + 1, MSL_STRUCT_SIZE_MAX);
    else if (row_size < least)
        msl_fail(check, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, (int64_t)row_size, least);
}

const void *msl_row_to_read(struct msl_check *check, const void *rows, size_t row_size, size_t index)
{
    const unsigned char *row = (const unsigned char *)rows + index * row_size;
    uint32_t size = read_u32(row + SIZE_AT);
    check->at = (int64_t)index;
    if (size > row_size)
        msl_fail(check, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS, size, (int64_t)row_size);
    return row;
}

int msl_rows_to_fill(struct msl_check *check, void *rows, size_t row_size, uint32_t least, size_t capacity,
                     size_t *count, size_t needed)
{
    msl_want_pointer(check, MUSLIN_ARG_OUTPUT, count);
    if (check->status != MUSLIN_OK)
        return 0;
    if (capacity != 0) {
        msl_want_row_size(check, row_size, least);
        msl_want_pointer(check, MUSLIN_ARG_ROWS, rows);
    }
    if (check->status != MUSLIN_OK)
        return 0;
    if (capacity != 0 && capacity >= needed)
        return 1;
    *count = needed;
    if (capacity != 0)
        msl_fail(check, MUSLIN_ERR_BUFFER, MUSLIN_ARG_ROWS, (int64_t)capacity, (int64_t)needed);
    return 0;
}

int msl_rows_wanted(struct msl_check *check, void *rows, size_t row_size, uint32_t least, size_t capacity,
                    size_t *count, size_t needed)
{
    const int wanted = msl_rows_to_fill(check, rows, row_size, least, capacity, count, needed);
    if (wanted)
        *count = needed;
    return wanted;
}

void msl_write_row(void *rows, size_t row_size, size_t index, const void *from, uint32_t known)
{
    unsigned char *row = (unsigned char *)rows + index * row_size;
    write_u32(row + SIZE_AT, (uint32_t)row_size);
    msl_write_struct(row, from, known);
}
