/* can_make.c - patterns that can be cut from the cloth there is.
 *
 * SPDX-License-Identifier: MIT */
#include "can_make.h"

#include <stdlib.h>
#include <string.h>

#include "answer.h"
#include "interrupt.h"
#include "memory.h"
#include "patterns.h"
#include "worked.h"

/* A look at one fabric and one row of stock takes no longer than this. */
enum { WORK_LIMIT = 2000000 };

/* ---- one fabric from one row ------------------------------------------------------------------------------------ */

/* The plan for a fabric from a row; null where the row does not suffice. */
static struct muslin_cutplan *cut_from(const struct worked *worked, const struct cloth *cloth,
                                       const struct cloth_row *row)
{
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    struct muslin_cutplan_stock_spec stock = MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
    const struct muslin_yardage_spec buying = buying_of(worked, cloth);
    struct muslin_allocator memory;
    struct muslin_cutplan *plan = NULL;
    size_t count = 0;
    struct muslin_blank_spec *pieces = pieces_of(worked, cloth, &buying, &count);
    spec.usable_width = 0;
    spec.print = cloth->print;
    spec.end_loss = buying.end_loss;
    spec.straightening = cloth->strip_cut > 0 ? 0 : buying.straightening;
    spec.work_limit = WORK_LIMIT;
    stock.width = row->across;
    stock.length = row->along;
    stock.count = row->count;
    must(muslin_allocator_libc(&memory));
    if (muslin_cutplan_create(&spec, pieces, sizeof *pieces, count, &stock, sizeof stock, 1, &memory, NULL, NULL, &plan,
                              NULL) != MUSLIN_OK)
        plan = NULL;
    free(pieces);
    return plan;
}

static int64_t pieces_used(const struct muslin_cutplan *plan)
{
    struct muslin_cutplan_total totals = { .size = sizeof totals };
    must(muslin_cutplan_totals(plan, &totals, NULL));
    return totals.stock_pieces;
}

/* ---- fabrics matched to rows ------------------------------------------------------------------------------------ */

enum { FABRICS_MAX = 40, NONE = -1 };

struct match {
    int64_t used[FABRICS_MAX][TEXTS_MAX]; /* pieces of a row that a fabric takes; 0: it does not suffice */
    int row_of[FABRICS_MAX];              /* NONE: it has none */
    int fabric_of[TEXTS_MAX];
    size_t fabrics;
    size_t rows;
};

/* Finds a row for a fabric, moving others to other rows where that makes room: breadth first, one way at a time. */
static bool place(struct match *match, size_t fabric)
{
    int from[TEXTS_MAX]; /* the fabric that came to this row; NONE: not looked at */
    size_t queue[FABRICS_MAX];
    size_t first = 0;
    size_t last = 0;
    for (size_t r = 0; r < match->rows; r++)
        from[r] = NONE;
    for (queue[last++] = fabric; first < last; first++)
        for (size_t r = 0; r < match->rows; r++) {
            if (from[r] != NONE || match->used[queue[first]][r] == 0)
                continue;
            from[r] = (int)queue[first];
            if (match->fabric_of[r] != NONE) {
                queue[last++] = (size_t)match->fabric_of[r];
                continue;
            }
            for (int row = (int)r; row != NONE;) { /* everybody on the way moves on by one */
                const int mover = from[row];
                const int left = match->row_of[mover];
                match->fabric_of[row] = mover;
                match->row_of[mover] = row;
                row = left;
            }
            return true;
        }
    return false;
}

/* True when each fabric has a row of its own. */
static bool match_fabrics(const struct worked *worked, const struct cloth_row *rows, struct match *match)
{
    bool all = true;
    for (size_t f = 0; f < match->fabrics; f++) {
        match->row_of[f] = NONE;
        for (size_t r = 0; r < match->rows; r++) {
            const struct cloth *cloth = cloth_of(worked->design, worked->bill[f].fabric);
            struct muslin_cutplan *plan = cut_from(worked, cloth, &rows[r]);
            match->used[f][r] = plan == NULL ? 0 : pieces_used(plan);
            muslin_cutplan_free(plan);
        }
    }
    for (size_t r = 0; r < match->rows; r++)
        match->fabric_of[r] = NONE;
    for (size_t f = 0; f < match->fabrics; f++)
        all = place(match, f) && all;
    return all;
}

/* ---- one size --------------------------------------------------------------------------------------------------- */

static void put_fabric(json_t *fabric, const struct desk *desk, const struct worked *worked,
                       const struct cloth_row *rows, const struct match *match, size_t f)
{
    const struct muslin_fabric_yardage *bill = &worked->bill[f];
    const int row = match->row_of[f];
    put_text(fabric, "fabric", fabric_name(worked, bill->fabric));
    if (row != NONE) {
        put_text(fabric, "from", rows[row].as_written);
        put_count(fabric, "used", match->used[f][row]);
        put_count(fabric, "left", rows[row].count - match->used[f][row]);
        return;
    }
    put_cloth(fabric, desk, "needs", bill->cloth_length);
    put_about(fabric, desk, "usable_width", bill->usable_width);
}

/* The size goes to one of the two lists. */
static void put_size(json_t *lists[2], const struct desk *desk, const char *file, const struct worked *worked,
                     const struct cloth_row *rows, size_t count)
{
    struct match match = { .rows = count, .fabrics = worked->bill_count };
    const struct pattern *pattern = worked->design->pattern;
    if (match.fabrics > FABRICS_MAX)
        return;
    const bool all = match_fabrics(worked, rows, &match);
    json_t *size = append_object(lists[all ? 0 : 1]);
    int64_t missing = 0;
    put_text(size, "pattern", pattern->title);
    put_text(size, "file", file);
    put_text(size, "size", pattern->sizes[worked->design->size].name);
    put_about(size, desk, "top_finished_width", worked->top.finished_width);
    put_about(size, desk, "top_finished_length", worked->top.finished_height);
    put_truth(size, "can_be_made", all);
    json_t *fabrics = put_list(size, "fabrics");
    for (size_t f = 0; f < match.fabrics; f++) {
        put_fabric(append_object(fabrics), desk, worked, rows, &match, f);
        missing += match.row_of[f] == NONE;
    }
    put_count(size, "fabrics_missing", missing);
}

static bool try_size(json_t *lists[2], const struct desk *desk, const char *file, const struct pattern *pattern,
                     size_t number, const struct cloth_row *rows, size_t count)
{
    struct complaints complaints = { NULL, 0, 0 };
    struct design *design = design_create(pattern, number, &complaints);
    struct worked *worked = design == NULL ? NULL : worked_create(design, NULL, NULL, &complaints);
    if (worked != NULL)
        put_size(lists, desk, file, worked, rows, count);
    const bool fine = worked != NULL;
    worked_free(worked);
    if (design != NULL)
        design_free(design);
    complaints_free(&complaints);
    return fine;
}

/* ---- all of them ------------------------------------------------------------------------------------------------ */

static int64_t ticks_of(const json_t *size, const char *member)
{
    return json_integer_value(json_object_get(json_object_get(size, member), "ticks"));
}

/* Fewer missing fabrics first, then the larger top. */
static bool comes_before(const json_t *a, const json_t *b)
{
    const int64_t missing_a = json_integer_value(json_object_get(a, "fabrics_missing"));
    const int64_t missing_b = json_integer_value(json_object_get(b, "fabrics_missing"));
    if (missing_a != missing_b)
        return missing_a < missing_b;
    return ticks_of(a, "top_finished_width") * ticks_of(a, "top_finished_length") >
           ticks_of(b, "top_finished_width") * ticks_of(b, "top_finished_length");
}

static void put_in_order(json_t *list)
{
    for (size_t i = 1; i < json_array_size(list); i++) {
        json_t *size = json_incref(json_array_get(list, i));
        size_t at = i;
        while (at > 0 && comes_before(size, json_array_get(list, at - 1)))
            at--;
        json_array_remove(list, i);
        json_array_insert_new(list, at, size);
    }
}

/* A file that is no pattern, or a size that does not work out, is told by `muslin pattern`; here it is named. */
static void try_pattern(json_t *lists[3], const struct desk *desk, const char *file, const struct cloth_row *rows,
                        size_t count)
{
    struct complaints complaints = { NULL, 0, 0 };
    struct pattern *pattern = pattern_read(file, &complaints);
    bool fine = pattern != NULL;
    for (size_t i = 0; pattern != NULL && i < pattern->sizes_count && !interrupted(); i++)
        fine = try_size(lists, desk, file, pattern, i, rows, count) && fine;
    if (!fine)
        json_array_append_new(lists[2], json_string(file));
    if (pattern != NULL)
        pattern_free(pattern);
    complaints_free(&complaints);
}

/* How many there are, and the first of them. */
static void put_first(json_t *patterns, const char *found, json_t *list, int64_t most)
{
    put_in_order(list);
    put_count(patterns, found, (int64_t)json_array_size(list));
    while (most > 0 && (int64_t)json_array_size(list) > most)
        json_array_remove(list, json_array_size(list) - 1);
}

bool put_patterns(json_t *answer, struct desk *desk, json_t *names, const struct cloth_row *rows, size_t count,
                  int64_t most)
{
    json_t *files = pattern_files(names, desk->failure);
    if (files == NULL)
        return false;
    json_t *patterns = put_object(answer, "patterns");
    json_t *lists[3] = { put_list(patterns, "can_be_made"), put_list(patterns, "something_is_missing"),
                         put_list(patterns, "wrong_files") };
    for (size_t i = 0; i < json_array_size(files) && !interrupted(); i++)
        try_pattern(lists, desk, json_string_value(json_array_get(files, i)), rows, count);
    json_decref(files);
    put_first(patterns, "sizes_that_can_be_made", lists[0], most);
    put_first(patterns, "sizes_that_lack_something", lists[1], most);
    return true;
}
