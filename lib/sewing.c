/* sewing.c - the order of sewing: steps, what goes into them, labels, and all seams together.
 *
 * SPDX-License-Identifier: MIT
 *
 * One of a kind has fewer than 2^31 seams of less than 2^31 ticks. How many there are of it can make that too long. */
#include "muslin/sewing.h"

#include "muslin/accuracy.h"
#include "inside.h"
#include "solution_inside.h"

enum {
    ROW_LEAST = sizeof(struct muslin_sewing_step),
    FEED_LEAST = sizeof(struct muslin_sewing_feed),
    TOTALS_LEAST = sizeof(struct muslin_sewing_total)
};

/* ---- one step after the other ----------------------------------------------------------------------------------- */

/* The steps in their order: those of a node, then those of the next that has any. */
struct stepping {
    const struct muslin_solution *solution;
    struct msl_check *check;            /* of sums of seams */
    const struct muslin_stripset *set; /* of the node, when it is strip-pieced */
    uint64_t sets;                      /* looked at */
    int64_t stack;
    uint32_t node;
    int32_t segments_next;
};

static muslin_id id_of(const struct muslin_solution *s, uint32_t node)
{
    return msl_id(s->quilt, MUSLIN_SORT_NODE, node);
}

/* Sets lie in the order of the nodes; a strip-pieced join has one that is used. */
static const struct muslin_stripset *set_of(struct stepping *stepping)
{
    const struct muslin_stripset *sets = stepping->solution->sets.rows;
    while (sets[stepping->sets].node != id_of(stepping->solution, stepping->node))
        stepping->sets++;
    return &sets[stepping->sets];
}

static struct muslin_sewing_step set_row(const struct stepping *stepping)
{
    const struct muslin_stripset *set = stepping->set;
    struct muslin_sewing_step row = { .size = sizeof row, .node = set->node, .stack = stepping->stack };
    row.kind = MUSLIN_SEWING_SET;
    row.alike = set->sets;
    row.pieces = set->strips;
    row.seams = set->strips - 1;
    row.seam_longest = set->strip_length;
    row.sewn = set->sets * row.seams * set->strip_length;
    row.unfinished_width = set->set_unfinished;
    row.unfinished_height = set->strip_length;
    row.feeds = msl_size_of(stepping->solution, stepping->node)->fed;
    row.chain = row.alike > 1;
    return row;
}

/* What a node makes of itself, without its seams. */
static struct muslin_sewing_step plain_row(const struct stepping *stepping, int32_t kind)
{
    const struct muslin_solution *s = stepping->solution;
    const struct msl_size *size = msl_size_of(s, stepping->node);
    struct muslin_sewing_step row = { .size = sizeof row, .stack = stepping->stack, .kind = kind };
    row.node = id_of(s, stepping->node);
    row.alike = msl_copies(&s->counts[stepping->node - 1]);
    row.pieces = 1;
    row.feeds = 1;
    row.unfinished_width = size->width + msl_allowances(s, size->edge[MSL_LEFT], size->edge[MSL_RIGHT]);
    row.unfinished_height = size->height + msl_allowances(s, size->edge[MSL_TOP], size->edge[MSL_BOTTOM]);
    return row;
}

/* Steps have the order of kinds of nodes, with two more for sets and none for turns. */
static int32_t kind_of_step(int32_t node_kind)
{
    return node_kind < MUSLIN_NODE_TURN ? node_kind + 1 : node_kind;
}

static muslin_len sewn_in_all(const struct stepping *stepping, muslin_len one, int64_t alike)
{
    if (one <= MUSLIN_LENGTH_MAX / alike)
        return one * alike;
    msl_fail(stepping->check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_SEAMS, alike, MUSLIN_LENGTH_MAX / one);
    return 0;
}

static struct muslin_sewing_step node_row(const struct stepping *stepping)
{
    const struct muslin_solution *s = stepping->solution;
    struct muslin_sewing_step row = plain_row(stepping, kind_of_step(msl_node_row(s->quilt, stepping->node)->kind));
    row.alike += msl_size_of(s, stepping->node)->spare;
    row.pieces = msl_pieces(s, stepping->node) + msl_parts(s, stepping->node);
    row.seams = msl_seams(s, stepping->node);
    row.feeds = msl_size_of(s, stepping->node)->fed;
    for (int64_t k = 0; k < row.seams; k++) {
        muslin_len sewn = msl_seam(s, stepping->node, k).sewn;
        row.seam_longest = sewn > row.seam_longest ? sewn : row.seam_longest;
        row.sewn += sewn;
    }
    row.sewn = sewn_in_all(stepping, row.sewn, row.alike);
    row.chain = row.alike > 1 && row.seams > 0;
    return row;
}

/* The next step; the caller knows how many there are. */
static struct muslin_sewing_step next_step(struct stepping *stepping)
{
    if (stepping->segments_next) {
        stepping->segments_next = 0;
        return plain_row(stepping, MUSLIN_SEWING_SEGMENTS);
    }
    do
        stepping->node++;
    while (msl_size_of(stepping->solution, stepping->node)->step == 0);
    stepping->stack++;
    stepping->segments_next = msl_size_of(stepping->solution, stepping->node)->as_set;
    if (!stepping->segments_next)
        return node_row(stepping);
    stepping->set = set_of(stepping);
    return set_row(stepping);
}

static struct stepping first_step(const struct muslin_solution *solution, struct msl_check *check)
{
    return (struct stepping){ .solution = solution, .check = check, .stack = -1 };
}

/* All of them together, or MUSLIN_ERR_OVERFLOW. */
static struct muslin_sewing_total add_up(const struct muslin_solution *solution, struct msl_check *check)
{
    struct stepping stepping = first_step(solution, check);
    struct muslin_sewing_total totals = { .size = sizeof totals, .steps = solution->steps };
    for (check->at = 0; check->status == MUSLIN_OK && check->at < totals.steps; check->at++) {
        const struct muslin_sewing_step row = next_step(&stepping);
        totals.seams += row.alike * row.seams;
        totals.sewn += row.sewn;
        totals.in_sets += row.kind == MUSLIN_SEWING_SET ? row.sewn : 0;
        if (totals.sewn > MUSLIN_LENGTH_MAX)
            msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_SEAMS, totals.seams, 0);
    }
    check->at = 0;
    return totals;
}

muslin_status muslin_sewing_steps(const struct muslin_solution *solution, struct muslin_sewing_step *rows,
                                  size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    if (check.status != MUSLIN_OK)
        return check.status;
    (void)add_up(solution, &check);
    if (!msl_rows_wanted(&check, rows, row_size, ROW_LEAST, capacity, count, solution->steps))
        return check.status;
    struct stepping stepping = first_step(solution, &check);
    for (size_t i = 0; i < solution->steps; i++) {
        const struct muslin_sewing_step row = next_step(&stepping);
        msl_write_row(rows, row_size, i, &row, sizeof row);
    }
    return MUSLIN_OK;
}

/* ---- what goes into a step -------------------------------------------------------------------------------------- */

/* The node of a step, numbered from 0: its last step is this one or, when it is strip-pieced, the next. */
static uint32_t node_of(const struct muslin_solution *s, int64_t step)
{
    uint32_t node = 1;
    while (msl_size_of(s, node)->step <= step)
        node++;
    return node;
}

muslin_status muslin_sewing_feeds(const struct muslin_solution *solution, int64_t step, struct muslin_sewing_feed *rows,
                                  size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (step < 0 || step >= solution->steps)
        return msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_INDEX, step, (int64_t)solution->steps - 1);
    const uint32_t node = node_of(solution, step);
    const struct msl_size *size = msl_size_of(solution, node);
    const struct msl_feed *feeds = msl_rows_from(&solution->feeds, size->feeds, sizeof *feeds);
    const struct msl_feed of_its_set = { .node = node, .each = 1 };
    const int is_cut_from_set = size->as_set && size->step == step + 1;
    const size_t fed = is_cut_from_set ? 1 : size->fed;
    if (!msl_rows_wanted(&check, rows, row_size, FEED_LEAST, capacity, count, fed))
        return check.status;
    for (size_t i = 0; i < fed; i++) {
        const struct msl_feed *feed = is_cut_from_set ? &of_its_set : &feeds[i];
        const int64_t made = is_cut_from_set ? step - 1 : (int64_t)msl_size_of(solution, feed->node)->step - 1;
        const struct muslin_sewing_feed row = {
            .node = id_of(solution, feed->node), .step = made, .each = feed->each
        };
        msl_write_row(rows, row_size, i, &row, sizeof row);
    }
    return MUSLIN_OK;
}

/* ---- labels ----------------------------------------------------------------------------------------------------- */

enum { LETTERS = 26, LABEL_MOST = 8 };

/* Whole numbers from 1 in the digits A .. Z, none of which is nothing. */
muslin_status muslin_sewing_label(int64_t number, char *buf, size_t cap, size_t *need, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    char letters[LABEL_MOST];
    size_t length = 0;
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, need);
    if (cap > 0)
        msl_want_pointer(&check, MUSLIN_ARG_BUFFER, buf);
    msl_want_count(&check, MUSLIN_ARG_LABEL, number);
    if (check.status != MUSLIN_OK)
        return check.status;
    for (int64_t rest = number + 1; rest > 0; rest = (rest - 1) / LETTERS)
        letters[length++] = (char)('A' + (rest - 1) % LETTERS);
    *need = length + 1;
    if (cap == 0)
        return MUSLIN_OK;
    if (cap < *need)
        return msl_fail(&check, MUSLIN_ERR_BUFFER, MUSLIN_ARG_BUFFER, (int64_t)cap, (int64_t)*need);
    for (size_t i = 0; i < length; i++)
        buf[i] = letters[length - 1 - i];
    buf[length] = '\0';
    return MUSLIN_OK;
}

/* ---- all together ----------------------------------------------------------------------------------------------- */

/* A line that crosses so many seams crosses one piece more; the errors are in range. */
static struct muslin_accuracy_row_errors errors_of(int64_t seams, muslin_len seam_error, muslin_len cut_error)
{
    const struct muslin_accuracy_row_spec spec = { sizeof spec, 0, seams + 1, seams, seam_error, cut_error };
    struct muslin_accuracy_row_errors errors = { .size = sizeof errors };
    (void)muslin_accuracy_row(&spec, &errors, NULL);
    return errors;
}

muslin_status muslin_sewing_totals(const struct muslin_solution *solution, muslin_len seam_error, muslin_len cut_error,
                                   struct muslin_sewing_total *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    msl_want_output(&check, out, TOTALS_LEAST);
    msl_want_seam(&check, MUSLIN_ARG_SEAM_ERROR, seam_error);
    msl_want_seam(&check, MUSLIN_ARG_CUT_ERROR, cut_error);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct msl_size *top = msl_size_of(solution, solution->root);
    const struct muslin_accuracy_row_errors width = errors_of(top->across, seam_error, cut_error);
    const struct muslin_accuracy_row_errors height = errors_of(top->down, seam_error, cut_error);
    struct muslin_sewing_total totals = add_up(solution, &check);
    if (check.status != MUSLIN_OK)
        return check.status;
    totals.width_seams = top->across;
    totals.height_seams = top->down;
    totals.width_worst = width.worst;
    totals.width_likely = width.likely;
    totals.height_worst = height.worst;
    totals.height_likely = height.likely;
    msl_write_struct(out, &totals, sizeof totals);
    return MUSLIN_OK;
}
