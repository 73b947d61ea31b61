/* cutting.c - how good cutting plans are and what they take: one run, one line of JSON for each list, and a summary.
 *
 * SPDX-License-Identifier: MIT
 *
 *     cutting FOLDER [SET ...] [MILLIONS ...]
 *
 * FOLDER holds the lists and what is known of them. Sets, all of them unless some are named:
 *
 *     bolts        30 invented lists, without panels, as known.csv has them
 *     panels       those of them with borders longer than 60 in, slit from panels
 *     stacked      all of them, with panels and stacks
 *     wider        every size 6 mm more, no panels: sizes that share no large divisor
 *     moved        every size moved by up to 40 ticks either way, no panels: sizes that share none at all
 *     large        up to 40 sizes, 2000 pieces of each
 *     hundredfold  20 pieces of each size, then 2000, and what that costs more
 *     stock        10 lists from pieces of stock
 *     public       lists of research, turned and not
 *
 * Each is planned with each work limit, in millions of steps; the usual ones are about 1 s and 10 s on the machine that
 * set them. How many steps a second this machine takes is printed first. Times are of the processor, of short runs the
 * least of three. Lengths are in the unit of the list: 1/8 in, or whatever the research has; cost in that of the stock.
 *
 * Nothing is passed or failed by time or by how long a plan is. A plan below a proven bound, a bound above a plan, or a
 * fault that the check finds, is `wrong`, and the exit status 1. */
#include "measure.h"

#include "counted.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum {
    ROWS_MOST = 64,  /* pieces of a list */
    STOCK_MOST = 16,
    LISTS_MOST = 64,
    EIGHTH = MUSLIN_TICKS_PER_INCH / 8,
    LONG = 60 * MUSLIN_TICKS_PER_INCH, /* what may not turn and is longer is a border, cut along the cloth */
    SIX_MM = 6 * MUSLIN_TICKS_PER_MM,
    MOVED = 40,
    SHORT_LIMIT = 280, /* millions of steps: about 1 s, and 10 s */
    LONG_LIMIT = 2800
};

static void stop(const char *what, const char *why)
{
    fprintf(stderr, "cutting: %s: %s\n", what, why);
    exit(2);
}

static void must(const char *what, muslin_status status)
{
    if (status != MUSLIN_OK)
        stop(what, muslin_status_sentence(status));
}

/* ---- lists ------------------------------------------------------------------------------------------------------ */

struct list {
    char name[16];
    int64_t unit;       /* ticks of a unit of length */
    int64_t cost_unit;  /* the same, or 1 of what stock costs */
    muslin_len width;   /* of the bolt */
    struct muslin_blank_spec pieces[ROWS_MOST];
    size_t n;
    struct muslin_cutplan_stock_spec stock[STOCK_MOST];
    size_t stock_n;
    int32_t print;
    uint32_t flags;
    int64_t known_bound; /* in cost units; -1: not known, or it is of other plans */
    int64_t known_best;
    int64_t other_bound; /* the same of plans with panels or stacks; -1 elsewhere. Not judged by: they are a little */
    int64_t other_best;  /* other plans than those here */
};

static struct list lists[LISTS_MOST];
static size_t list_count;
static char folder[512];

/* Calls `take` with the fields of each row behind the heading, up to six; the list's name is the first. */
static void read_rows(const char *file, void (*take)(char **fields))
{
    char path[768];
    char line[512];
    int rows = 0;
    snprintf(path, sizeof path, "%s/%s", folder, file);
    FILE *in = fopen(path, "r");
    if (in == NULL)
        stop(path, "cannot be read");
    while (fgets(line, sizeof line, in) != NULL) {
        static char nothing[] = "";
        char *fields[6] = { line, nothing, nothing, nothing, nothing, nothing };
        int n = 1;
        if (line[0] == '#' || rows++ == 0)
            continue;
        line[strcspn(line, "\r\n")] = 0;
        for (char *at = line; (at = strchr(at, ',')) != NULL && n < 6; n++) {
            *at++ = 0;
            fields[n] = at;
        }
        take(fields);
    }
    fclose(in);
}

static struct list *list_named(const char *name, int64_t unit, int64_t cost_unit)
{
    if (list_count > 0 && strcmp(lists[list_count - 1].name, name) == 0)
        return &lists[list_count - 1];
    if (list_count == LISTS_MOST)
        stop(name, "too many lists");
    struct list *list = &lists[list_count++];
    memset(list, 0, sizeof *list);
    snprintf(list->name, sizeof list->name, "%s", name);
    list->unit = unit;
    list->cost_unit = cost_unit;
    list->print = MUSLIN_PRINT_NONE;
    list->known_bound = list->known_best = list->other_bound = list->other_best = -1;
    return list;
}

static void add_piece(struct list *list, char **width_length_count, int may_turn)
{
    struct muslin_blank_spec piece = MUSLIN_BLANK_SPEC_INIT;
    if (list->n == ROWS_MOST)
        stop(list->name, "too many pieces");
    piece.cut_width = atoll(width_length_count[0]) * list->unit;
    piece.cut_length = atoll(width_length_count[1]) * list->unit;
    piece.count = atoll(width_length_count[2]);
    piece.flags = may_turn ? MUSLIN_BLANK_MAY_TURN : 0;
    if (!may_turn && piece.cut_length > LONG && list->unit == EIGHTH)
        piece.kind = MUSLIN_BLANK_LENGTHWISE;
    list->pieces[list->n++] = piece;
}

static void take_bolt(char **fields)
{
    struct list *list = list_named(fields[0], EIGHTH, EIGHTH);
    list->width = atoll(fields[1]) * list->unit;
    add_piece(list, &fields[2], fields[5][0] == '1');
}

static void take_stock(char **fields)
{
    struct list *list = list_named(fields[0], EIGHTH, 1);
    if (strcmp(fields[1], "piece") == 0) {
        add_piece(list, &fields[2], fields[5][0] == '1');
        return;
    }
    struct muslin_cutplan_stock_spec stock = MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
    stock.width = atoll(fields[2]) * list->unit;
    stock.length = atoll(fields[3]) * list->unit;
    stock.cost = atoll(fields[4]);
    stock.count = atoll(fields[5]) > 0 ? atoll(fields[5]) : MUSLIN_COUNT_MAX;
    if (list->stock_n == STOCK_MOST)
        stop(list->name, "too much stock");
    list->stock[list->stock_n++] = stock;
}

static void take_public(char **fields)
{
    struct list *list = list_named(fields[0], 1, 1);
    list->width = atoll(fields[1]);
    add_piece(list, &fields[2], 1);
}

/* What stands in a field, -1: nothing. */
static int64_t known(const char *field)
{
    return field[0] ? atoll(field) : -1;
}

static void take_known(char **fields)
{
    for (size_t i = 0; i < list_count; i++) {
        struct list *list = &lists[i];
        if (strcmp(list->name, fields[0]) != 0)
            continue;
        list->known_bound = known(fields[1]);
        list->known_best = known(fields[2]);
        if (list->flags & MUSLIN_CUTPLAN_NO_PANELS)
            continue;
        list->other_bound = known(fields[3]);
        list->other_best = known(fields[4]);
    }
}

/* Each list is known of as it lies, turned, or both: those come out as lists of their own, behind what there is. */
static void take_known_public(char **fields)
{
    for (size_t i = 0; i < list_count; i++) {
        if (lists[i].known_bound >= 0 || strcmp(lists[i].name, fields[0]) != 0)
            continue;
        if (list_count == LISTS_MOST)
            stop(fields[0], "too many lists");
        struct list *list = &lists[list_count++];
        *list = lists[i];
        list->print = fields[1][0] == '1' ? MUSLIN_PRINT_NONE : MUSLIN_PRINT_ONE_WAY;
        snprintf(list->name, sizeof list->name, "%.13s %s", fields[0], fields[1][0] == '1' ? "r" : "o");
        list->known_bound = known(fields[2]);
        list->known_best = known(fields[3]);
        return;
    }
}

/* ---- variants --------------------------------------------------------------------------------------------------- */

/* Every size so much more, and moved by up to MOVED either way, the same in every run; squares stay square, and what
 * fits the bolt still does. */
static void change_sizes(struct list *list, muslin_len more, int moved)
{
    uint64_t state = 12345;
    for (size_t i = 0; i < list->n; i++) {
        struct muslin_blank_spec *piece = &list->pieces[i];
        const int square = piece->cut_width == piece->cut_length;
        muslin_len *sides[] = { &piece->cut_width, &piece->cut_length };
        for (int side = 0; side < (square ? 1 : 2); side++) {
            *sides[side] += more;
            state = state * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
            if (moved)
                *sides[side] += (muslin_len)((state >> 33) % (2 * MOVED + 1)) - MOVED;
            if (side == 0 && *sides[side] > list->width)
                *sides[side] = list->width;
        }
        if (square)
            piece->cut_length = piece->cut_width;
    }
    list->known_bound = list->known_best = -1;
}

static int has_borders(const struct list *list)
{
    for (size_t i = 0; i < list->n; i++)
        if (list->pieces[i].kind == MUSLIN_BLANK_LENGTHWISE)
            return 1;
    return 0;
}

/* ---- one plan --------------------------------------------------------------------------------------------------- */

struct outcome {
    struct muslin_cutplan_total totals;
    double ms;
    double check_ms;
    double memory_mb;
    int64_t fault; /* that the check finds */
};

static struct outcome plan_once(const struct list *list, int64_t work_limit)
{
    struct outcome outcome = { .totals = { .size = (uint32_t)sizeof outcome.totals } };
    struct muslin_cutplan_checked checked = { .size = (uint32_t)sizeof checked };
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    struct counted counted = { .calls = 0 };
    struct muslin_cutplan *plan;
    must("memory", muslin_allocator_libc(&counted.libc));
    const struct muslin_allocator allocator = { counted_alloc, counted_realloc, counted_free, &counted };
    spec.usable_width = list->stock_n > 0 ? 0 : list->width;
    spec.flags = list->flags;
    spec.print = list->print;
    spec.work_limit = work_limit;
    double start = now();
    must(list->name, muslin_cutplan_create(&spec, list->pieces, sizeof list->pieces[0], list->n, list->stock,
                                           sizeof list->stock[0], list->stock_n, &allocator, NULL, NULL, &plan, NULL));
    outcome.ms = now() - start;
    outcome.memory_mb = (double)counted.most / 1e6;
    must(list->name, muslin_cutplan_totals(plan, &outcome.totals, NULL));
    start = now();
    must(list->name, muslin_cutplan_check(plan, NULL, NULL, &checked, NULL));
    outcome.check_ms = now() - start;
    outcome.fault = checked.fault;
    if (checked.fault == 0 && (checked.cost != outcome.totals.cost || checked.least < outcome.totals.least))
        outcome.fault = -1;
    muslin_cutplan_free(plan);
    return outcome;
}

/* The least of three where that is short. */
static struct outcome plan_it(const struct list *list, int64_t work_limit)
{
    struct outcome best = plan_once(list, work_limit);
    for (int round = 1; round < 3 && best.ms < 100; round++) {
        struct outcome again = plan_once(list, work_limit);
        if (again.ms < best.ms)
            best = again;
    }
    return best;
}

static double gap_of(const struct muslin_cutplan_total *totals)
{
    const int64_t least = totals->least > 0 ? totals->least : 1;
    return 100.0 * (double)(totals->cost - least) / (double)least;
}

/* ---- sets ------------------------------------------------------------------------------------------------------- */

struct summary {
    const char *set;
    int64_t work_limit;
    double ms[LISTS_MOST];
    size_t lists;
    size_t proven;
    size_t known;
    size_t longer;
    size_t shorter;
    size_t wrong;
    double gaps;
    double worst_gap;
    double above_known;
};

static size_t all_wrong;

static int ascending(const void *a, const void *b)
{
    const double x = *(const double *)a;
    const double y = *(const double *)b;
    return (x > y) - (x < y);
}

static double median(double *values, size_t n)
{
    qsort(values, n, sizeof values[0], ascending);
    return n == 0 ? 0 : (values[(n - 1) / 2] + values[n / 2]) / 2;
}

/* Whether this plan and what is known contradict each other. */
static int is_wrong(const struct list *list, const struct outcome *outcome)
{
    const struct muslin_cutplan_total *totals = &outcome->totals;
    const int below = list->known_bound >= 0 && totals->cost < list->known_bound * list->cost_unit;
    const int above = list->known_best >= 0 && totals->least > list->known_best * list->cost_unit;
    return outcome->fault != 0 || totals->least > totals->cost || below || above;
}

static void add_to(struct summary *summary, const struct list *list, const struct outcome *outcome)
{
    const struct muslin_cutplan_total *totals = &outcome->totals;
    const double gap = gap_of(totals);
    summary->ms[summary->lists++] = outcome->ms;
    summary->proven += totals->proven == 1;
    summary->gaps += gap;
    if (gap > summary->worst_gap)
        summary->worst_gap = gap;
    summary->wrong += (size_t)is_wrong(list, outcome);
    if (list->known_best < 0)
        return;
    const int64_t best = list->known_best * list->cost_unit;
    summary->known++;
    summary->longer += totals->cost > best;
    summary->shorter += totals->cost < best;
    summary->above_known += 100.0 * (double)(totals->cost - best) / (double)best;
}

static void print_known(const struct list *list, const struct outcome *outcome)
{
    if (list->known_bound >= 0)
        printf(", \"known_bound\": %" PRId64, list->known_bound);
    if (list->known_best >= 0) {
        const int64_t best = list->known_best * list->cost_unit;
        printf(", \"known_best\": %" PRId64 ", \"longer_than_known\": %d", list->known_best,
               outcome->totals.cost > best);
    }
    if (list->other_bound >= 0)
        printf(", \"other_bound\": %" PRId64, list->other_bound);
    if (list->other_best >= 0)
        printf(", \"other_best\": %" PRId64, list->other_best);
    printf(", \"wrong\": %d}\n", is_wrong(list, outcome));
    fflush(stdout);
}

static void print_outcome(const char *set, const struct list *list, int64_t work_limit, const struct outcome *first,
                          const struct outcome *outcome)
{
    const struct muslin_cutplan_total *totals = &outcome->totals;
    const double unit = (double)list->cost_unit;
    printf("{\"set\": \"%s\", \"list\": \"%s\", \"work_limit\": %" PRId64 ", \"sizes\": %zu, \"pieces\": %" PRId64 ", "
           "\"best\": %.12g, \"bound\": %.12g, \"gap_percent\": %.3f, \"proven\": %d, \"stopped\": %d, ",
           set, list->name, work_limit, list->n, totals->pieces, (double)totals->cost / unit,
           (double)totals->least / unit, gap_of(totals), totals->proven, totals->stopped);
    printf("\"steps\": %" PRId64 ", \"cases\": %" PRId64 ", \"ms\": %.3f, \"first_best\": %.12g, "
           "\"first_bound\": %.12g, \"first_ms\": %.3f, \"check_ms\": %.3f, \"memory_mb\": %.2f, \"fault\": %" PRId64,
           totals->work, totals->cases, outcome->ms, (double)first->totals.cost / unit,
           (double)first->totals.least / unit, first->ms, outcome->check_ms, outcome->memory_mb, outcome->fault);
    print_known(list, outcome);
}

static void print_summary(struct summary *summary)
{
    const double n = (double)summary->lists;
    const double middle = median(summary->ms, summary->lists);
    printf("{\"summary\": \"%s\", \"work_limit\": %" PRId64 ", \"lists\": %zu, \"proven\": %zu, "
           "\"mean_gap_percent\": %.4f, \"worst_gap_percent\": %.3f, \"median_ms\": %.3f, \"most_ms\": %.1f",
           summary->set, summary->work_limit, summary->lists, summary->proven, summary->gaps / n, summary->worst_gap,
           middle, summary->ms[summary->lists - 1]);
    if (summary->known > 0)
        printf(", \"known\": %zu, \"longer_than_known\": %zu, \"shorter_than_known\": %zu, "
               "\"mean_above_known_percent\": %.4f",
               summary->known, summary->longer, summary->shorter, summary->above_known / (double)summary->known);
    printf(", \"wrong\": %zu}\n", summary->wrong);
    fflush(stdout);
    all_wrong += summary->wrong;
}

static void measure(struct summary *summary, const struct list *list)
{
    const struct outcome first = plan_it(list, 0);
    const struct outcome outcome = plan_it(list, summary->work_limit);
    add_to(summary, list, &outcome);
    print_outcome(summary->set, list, summary->work_limit, &first, &outcome);
}

/* The lists whose names begin with this letter. */
static void read_bolts(char letter, uint32_t flags)
{
    size_t kept = 0;
    list_count = 0;
    read_rows("bolts.csv", take_bolt);
    for (size_t i = 0; i < list_count; i++)
        if (lists[i].name[0] == letter)
            lists[kept++] = lists[i];
    list_count = kept;
    for (size_t i = 0; i < list_count; i++)
        lists[i].flags = flags;
    read_rows("known.csv", take_known);
}

static void read_changed(muslin_len more, int moved)
{
    read_bolts('q', MUSLIN_CUTPLAN_NO_PANELS);
    for (size_t i = 0; i < list_count; i++)
        change_sizes(&lists[i], more, moved);
}

/* A plan without panels and stacks is one with them too, so a bound may not pass the best that is known without. */
static void read_wider_choice(uint32_t flags, int only_borders)
{
    size_t kept = 0;
    read_bolts('q', flags);
    for (size_t i = 0; i < list_count; i++) {
        lists[i].known_bound = -1;
        if (!only_borders || has_borders(&lists[i]))
            lists[kept++] = lists[i];
    }
    list_count = kept;
}

static void read_public(void)
{
    size_t kept = 0;
    list_count = 0;
    read_rows("public/lists.csv", take_public);
    read_rows("public/known.csv", take_known_public);
    for (size_t i = 0; i < list_count; i++)
        if (lists[i].known_best >= 0)
            lists[kept++] = lists[i];
    list_count = kept;
}

/* Reads the lists of a set; 0 where there is no such set. */
static int read_set(const char *set)
{
    list_count = 0;
    if (strcmp(set, "bolts") == 0)
        read_bolts('q', MUSLIN_CUTPLAN_NO_PANELS);
    else if (strcmp(set, "large") == 0)
        read_bolts('s', MUSLIN_CUTPLAN_NO_PANELS);
    else if (strcmp(set, "panels") == 0)
        read_wider_choice(0, 1);
    else if (strcmp(set, "stacked") == 0)
        read_wider_choice(MUSLIN_CUTPLAN_STACKED, 0);
    else if (strcmp(set, "wider") == 0)
        read_changed(SIX_MM, 0);
    else if (strcmp(set, "moved") == 0)
        read_changed(0, 1);
    else if (strcmp(set, "hundredfold") == 0)
        read_changed(0, 0);
    else if (strcmp(set, "public") == 0)
        read_public();
    else if (strcmp(set, "stock") == 0) {
        read_rows("stock.csv", take_stock);
        read_rows("known.csv", take_known);
    }
    return list_count > 0;
}

/* 20 pieces of each size, then 2000. Of lists where both are proven, how many times as long that takes. */
static void hundredfold(int64_t work_limit)
{
    struct summary few = { .set = "hundredfold, 20 of each", .work_limit = work_limit };
    struct summary many = { .set = "hundredfold, 2000 of each", .work_limit = work_limit };
    double ratios[LISTS_MOST];
    size_t both = 0;
    for (size_t i = 0; i < list_count; i++) {
        struct outcome outcomes[2];
        for (int hundred = 0; hundred < 2; hundred++) {
            for (size_t piece = 0; piece < lists[i].n; piece++)
                lists[i].pieces[piece].count = hundred ? 2000 : 20;
            const struct outcome first = plan_it(&lists[i], 0);
            outcomes[hundred] = plan_it(&lists[i], work_limit);
            add_to(hundred ? &many : &few, &lists[i], &outcomes[hundred]);
            print_outcome(hundred ? many.set : few.set, &lists[i], work_limit, &first, &outcomes[hundred]);
        }
        if (outcomes[0].totals.proven == 1 && outcomes[1].totals.proven == 1)
            ratios[both++] = outcomes[1].ms / outcomes[0].ms;
    }
    print_summary(&few);
    print_summary(&many);
    const double middle = median(ratios, both);
    printf("{\"summary\": \"hundredfold\", \"work_limit\": %" PRId64 ", \"both_proven\": %zu, "
           "\"median_ms_of_2000_to_20\": %.2f, \"most_ms_of_2000_to_20\": %.2f}\n",
           work_limit, both, middle, both > 0 ? ratios[both - 1] : 0);
    fflush(stdout);
}

static void run_set(const char *set, int64_t work_limit)
{
    struct summary summary = { .set = set, .work_limit = work_limit };
    if (!read_set(set))
        stop(set, "no such set");
    if (strcmp(set, "hundredfold") == 0) {
        hundredfold(work_limit);
        return;
    }
    for (size_t i = 0; i < list_count; i++)
        measure(&summary, &lists[i]);
    print_summary(&summary);
}

/* On lists that take long to prove. */
static void print_speed(void)
{
    static const char *const names[] = { "q14", "q23", "q25", "q26" };
    int64_t steps = 0;
    double ms = 0;
    read_bolts('q', MUSLIN_CUTPLAN_NO_PANELS);
    for (size_t i = 0; i < list_count; i++)
        for (size_t k = 0; k < sizeof names / sizeof names[0]; k++)
            if (strcmp(lists[i].name, names[k]) == 0) {
                const struct outcome outcome = plan_once(&lists[i], 100000000);
                steps += outcome.totals.work;
                ms += outcome.ms;
            }
    printf("{\"millions_of_steps_a_second\": %.1f}\n", (double)steps / ms / 1e3);
    fflush(stdout);
}

int main(int argc, char **argv)
{
    static const char *const every_set[] = { "bolts", "panels", "stacked",     "wider",
                                             "moved", "large",  "hundredfold", "stock", "public" };
    const char *sets[16];
    int64_t limits[16];
    size_t set_count = 0;
    size_t limit_count = 0;
    if (argc < 2 || argc > 16)
        stop("arguments", "FOLDER [SET ...] [MILLIONS ...]");
    snprintf(folder, sizeof folder, "%s", argv[1]);
    for (int i = 2; i < argc; i++)
        if (argv[i][0] >= '0' && argv[i][0] <= '9')
            limits[limit_count++] = atoll(argv[i]);
        else
            sets[set_count++] = argv[i];
    if (limit_count == 0) {
        limits[limit_count++] = SHORT_LIMIT;
        limits[limit_count++] = LONG_LIMIT;
    }
    if (set_count == 0)
        while (set_count < sizeof every_set / sizeof every_set[0]) {
            sets[set_count] = every_set[set_count];
            set_count++;
        }
    print_speed();
    for (size_t i = 0; i < set_count; i++)
        for (size_t k = 0; k < limit_count; k++)
            run_set(sets[i], limits[k] * 1000000);
    return all_wrong > 0;
}
