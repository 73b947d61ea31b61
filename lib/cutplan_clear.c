/* cutplan_clear.c - room in the pool: patterns that no case still builds on go.
 *
 * SPDX-License-Identifier: MIT
 *
 * What stays is in the best plan, or in the basis from which a case that is still open begins, or empty, or new: the
 * newest are likely to be of use to the next cases, and any other is found again where it is. */
#include "cutplan_clear.h"

enum { STAYS = 1 };

/* 1 when a case may still be solved. */
static int is_open(const struct msl_search *search, int32_t number)
{
    const struct msl_case *of = &search->cases[number];
    return of->split == 0 && of->packed == 0 && of->least < search->making.best.cost;
}

/* Bases of open cases move together; what is in them stays. */
static void clear_bases(struct msl_search *search)
{
    int32_t kept = 0;
    int32_t last = -1; /* where the basis that was moved last began: both parts of a case begin from the same */
    for (int32_t i = 0; i < search->case_count; i++) {
        struct msl_open *open = &search->open[i];
        if (!is_open(search, i))
            continue;
        if (open->first_basic != last) {
            last = open->first_basic;
            for (int32_t k = 0; k < open->basic_count; k++)
                search->bases[kept++] = search->bases[last + k];
        }
        open->first_basic = kept - open->basic_count;
    }
    search->basic_count = kept;
}

static void mark(struct msl_search *search)
{
    struct msl_pool *pool = &search->pool;
    for (int32_t i = 0; i < pool->pattern_count; i++) {
        const struct msl_pattern *pattern = &pool->patterns[i];
        const int empty = pool->strips[pattern->first].count == 0;
        pool->patterns[i].times = empty || i >= pool->pattern_count - pool->most_patterns / 8;
    }
    for (int32_t i = 0; i < search->making.best.count; i++)
        pool->patterns[search->making.best.rows[i].pattern].times = STAYS;
    for (int32_t i = 0; i < search->basic_count; i++)
        if (search->bases[i] / 2 < MSL_FIRST_SLACK)
            pool->patterns[search->bases[i] / 2].times = STAYS;
}

/* What stays gets the number that it will have, wherever it is named. */
static void renumber(struct msl_search *search)
{
    struct msl_pool *pool = &search->pool;
    int32_t kept = 0;
    for (int32_t i = 0; i < pool->pattern_count; i++)
        pool->patterns[i].times = pool->patterns[i].times == STAYS ? kept++ : -1;
    for (int32_t i = 0; i < search->making.best.count; i++) {
        struct msl_plan_row *row = &search->making.best.rows[i];
        row->pattern = (int32_t)pool->patterns[row->pattern].times;
    }
    for (int32_t i = 0; i < search->basic_count; i++) {
        const int32_t column = search->bases[i] / 2;
        if (column < MSL_FIRST_SLACK)
            search->bases[i] = (uint16_t)(2 * pool->patterns[column].times + search->bases[i] % 2);
    }
}

/* Moves what stays down, in its order. */
static void move(struct msl_pool *pool)
{
    const int32_t patterns = pool->pattern_count;
    pool->pattern_count = pool->strip_count = pool->laid_count = 0;
    for (int32_t i = 0; i < patterns; i++) {
        const struct msl_pattern from = pool->patterns[i];
        const struct msl_pattern moved = { .way = from.way, .first = pool->strip_count, .count = from.count };
        if (from.times < 0)
            continue;
        pool->patterns[pool->pattern_count++] = moved;
        for (int32_t s = 0; s < from.count; s++) {
            const struct msl_strip strip = pool->strips[from.first + s];
            const struct msl_strip to = { strip.height, pool->laid_count, strip.count };
            pool->strips[pool->strip_count++] = to;
            for (int32_t k = 0; k < strip.count; k++)
                pool->laid[pool->laid_count++] = pool->laid[strip.first + k];
        }
    }
}

/* 1 when more than three quarters of some room are taken. */
static int is_scarce(int32_t taken, int32_t most)
{
    return taken > most / 4 * 3;
}

void msl_search_clear(struct msl_search *search)
{
    const struct msl_pool *pool = &search->pool;
    if (!is_scarce(pool->pattern_count, pool->most_patterns) && !is_scarce(pool->strip_count, pool->most_strips) &&
        !is_scarce(pool->laid_count, pool->most_laid) && !is_scarce(search->basic_count, search->most_basics))
        return;
    search->master->steps += pool->laid_count + search->basic_count;
    clear_bases(search);
    mark(search);
    renumber(search);
    move(&search->pool);
    search->master->scan_from = 0;
}
