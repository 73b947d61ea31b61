/* fit_heap.c - settings in the order of their rank, kept in the caller's rows.
 *
 * SPDX-License-Identifier: MIT */
#include "fit_inside.h"

muslin_len msl_fit_off(const struct muslin_fit *fit)
{
    return (fit->off_width < 0 ? -fit->off_width : fit->off_width) +
           (fit->off_length < 0 ? -fit->off_length : fit->off_length);
}

/* No two settings are equal in all of these. */
enum { KEYS = 8 };

int msl_fit_before(const struct muslin_fit *a, const struct muslin_fit *b)
{
    const int64_t first[KEYS] = { a->rank_key, msl_fit_off(a), a->blocks + a->alternates, a->kind, -a->block, a->sash,
                                  a->border, a->columns };
    const int64_t second[KEYS] = { b->rank_key, msl_fit_off(b), b->blocks + b->alternates, b->kind, -b->block, b->sash,
                                   b->border, b->columns };
    int key = 0;
    while (key < KEYS - 1 && first[key] == second[key])
        key++;
    return first[key] < second[key];
}

static struct muslin_fit held_at(const struct msl_fit_heap *heap, size_t index)
{
    struct msl_check check = msl_check_start(NULL);
    struct muslin_fit fit = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_ROWS, &fit, (uint32_t)sizeof fit, (uint32_t)sizeof fit, 0,
                    (const unsigned char *)heap->rows + index * heap->row_size);
    return fit;
}

static void hold_at(const struct msl_fit_heap *heap, size_t index, const struct muslin_fit *fit)
{
    msl_write_row(heap->rows, heap->row_size, index, fit, (uint32_t)sizeof *fit);
}

/* Finds the place of a row that comes in at the end. */
static void rise(const struct msl_fit_heap *heap, size_t place, const struct muslin_fit *fit)
{
    while (place > 0) {
        size_t parent = (place - 1) / 2;
        struct muslin_fit above = held_at(heap, parent);
        if (msl_fit_before(fit, &above))
            break;
        hold_at(heap, place, &above);
        place = parent;
    }
    hold_at(heap, place, fit);
}

/* Finds the place of a row that comes in at the top, whose own row has gone. */
static void sink(const struct msl_fit_heap *heap, const struct muslin_fit *fit)
{
    size_t place = 0;
    size_t child = 1;
    while (child < heap->held) {
        struct muslin_fit below = held_at(heap, child);
        if (child + 1 < heap->held) {
            struct muslin_fit other = held_at(heap, child + 1);
            if (msl_fit_before(&below, &other)) {
                below = other;
                child++;
            }
        }
        if (msl_fit_before(&below, fit))
            break;
        hold_at(heap, place, &below);
        place = child;
        child = 2 * place + 1;
    }
    hold_at(heap, place, fit);
}

void msl_fit_offer(struct msl_fit_heap *heap, const struct muslin_fit *fit)
{
    if (heap->held < heap->room) {
        rise(heap, heap->held++, fit);
        return;
    }
    struct muslin_fit last = held_at(heap, 0);
    if (msl_fit_before(fit, &last))
        sink(heap, fit);
}

/* The last in rank goes to the end, again and again. */
void msl_fit_order(struct msl_fit_heap *heap)
{
    while (heap->held > 1) {
        struct muslin_fit last = held_at(heap, 0);
        struct muslin_fit other = held_at(heap, --heap->held);
        hold_at(heap, heap->held, &last);
        sink(heap, &other);
    }
}
