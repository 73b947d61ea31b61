/* policies.c - how one cuts, presses and buys, as the file has it; and whether the library can work the top out so.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "inside.h"

static const struct place the_whole = { NULL, NULL, 0 };

/* What it takes to square the end of cloth or of a strip set. */
static const struct usual squaring = { "1/2 in", "1 cm" };

/* ---- how one works ----------------------------------------------------------------------------------------------- */

static void choose_cutting(struct making *making)
{
    static const struct usual eighth = { "1/8 in", "1 mm" };
    const struct muslin_solution_spec usual = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_spec *spec = &making->design->solve;
    json_t *cutting = json_object_get(making->file, "cutting");
    *spec = usual;
    if (json_object_get(making->file, "tops") != NULL)
        spec->tops = count_of(making, making->file, "tops");
    spec->ease = length_of(making, json_object_get(making->file, "seam"), "ease", NULL);
    spec->grid = length_of(making, cutting, "grid", &eighth);
    spec->trim_room = length_of(making, cutting, "trim", NULL);
    spec->end_trim = length_of(making, cutting, "end trim", &squaring);
    spec->resquare_loss = length_of(making, cutting, "resquare loss", NULL);
    spec->resquare_every = json_integer_value(json_object_get(cutting, "resquare every"));
    spec->fold_clear = length_of(making, cutting, "fold clear", NULL);
    spec->flags = spec->fold_clear != 0 ? 0 : MUSLIN_YIELD_FROM_ONE_END;
    spec->policy = value_of_word(cutting, "policy", policy_words, usual.policy);
    spec->tip = value_of_word(cutting, "tips", tip_words, usual.tip);
    spec->direction = value_of_word(cutting, "round", ways_to_round, usual.direction);
    spec->strip_piecing = value_of_word(cutting, "strip piecing", set_words, usual.strip_piecing);
}

static void choose_pressing(struct making *making)
{
    const struct muslin_pressing_spec usual = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing_spec *spec = &making->design->pressing;
    json_t *pressing = json_object_get(making->file, "pressing");
    *spec = usual;
    spec->units = value_of_word(pressing, "units", pressed_words, pressed_words[0].value);
    if (json_object_get(pressing, "towards dark") != NULL)
        spec->prefer = is_true(pressing, "towards dark") ? MUSLIN_PREFER_DARKER : MUSLIN_PREFER_NOTHING;
}

/* A shop that sells by the metre cuts tenths of one, whatever the pattern is measured in. */
static struct usual usual_step(const struct pattern *pattern)
{
    const char *step = is_sold_by_metre(pattern) ? "10 cm" : "1/8 yd";
    return (struct usual){ step, step };
}

static void choose_buying(struct making *making)
{
    const struct usual step = usual_step(making->design->pattern);
    const struct muslin_yardage_spec usual = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_yardage_spec *spec = &making->design->buying;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    const struct place seam = place_in(&the_whole, "seam");
    json_t *buying = json_object_get(making->file, "buying");
    muslin_len allowance = making->allowance;
    *spec = usual;
    spec->step = length_of(making, buying, "step", &step);
    spec->extra = length_of(making, buying, "extra", NULL);
    spec->straightening = length_of(making, buying, "straightening", &squaring);
    spec->shrinkage = (int32_t)(json_number_value(json_object_get(buying, "shrinkage")) * MUSLIN_PPM / 100 + 0.5);
    spec->long_pieces = value_of_word(buying, "long strips", long_words, MUSLIN_LONG_PIECES_JOINED);
    if (spec->long_pieces == MUSLIN_LONG_PIECES_JOINED)
        spec->flags = MUSLIN_CUTPLAN_NO_PANELS;
    went_well(making, &seam, NULL, muslin_join_loss(MUSLIN_JOIN_STRAIGHT, 0, allowance, &spec->join_loss, &problem),
              &problem);
}

void make_policies(struct making *making)
{
    choose_cutting(making);
    choose_pressing(making);
    choose_buying(making);
}

/* ---- does it come out? ------------------------------------------------------------------------------------------- */

static muslin_status solve(const struct making *making, muslin_id root, struct muslin_solution **solution,
                           struct muslin_problem *problem)
{
    const struct design *design = making->design;
    const struct muslin_problem fresh = MUSLIN_PROBLEM_INIT;
    *problem = fresh;
    *solution = NULL;
    muslin_status status = muslin_solution_create(design->quilt, root, &design->solve, NULL, 0, 0, NULL, solution,
                                                  problem);
    if (status == MUSLIN_ERR_NO_MEMORY)
        must(status);
    return status;
}

/* Where the file has what is asked of the whole. */
static const char *place_of_policy(int32_t argument)
{
    switch (argument) {
    case MUSLIN_ARG_TOPS:
        return "/tops";
    case MUSLIN_ARG_EASE:
        return "/seam/ease";
    case MUSLIN_ARG_GRID:
        return "/cutting/grid";
    case MUSLIN_ARG_TRIM:
        return "/cutting/trim";
    case MUSLIN_ARG_END_TRIM:
        return "/cutting/end trim";
    case MUSLIN_ARG_RESQUARE_LOSS:
        return "/cutting/resquare loss";
    case MUSLIN_ARG_FOLD_CLEAR:
        return "/cutting/fold clear";
    default:
        return "/cutting";
    }
}

/* Where the node or measure was made that a problem counts, else where `root` was. One that counts none is about the
 * whole. */
static const char *place_of_problem(const struct making *making, muslin_id root, const struct muslin_problem *problem)
{
    bool is_measure = problem->argument == MUSLIN_ARG_SUM || problem->argument == MUSLIN_ARG_VALUE;
    muslin_id id = 0;
    const char *place = NULL;
    if (problem->at == 0)
        return place_of_policy(problem->argument);
    if (muslin_quilt_id(making->design->quilt, is_measure ? MUSLIN_SORT_MEASURE : MUSLIN_SORT_NODE, problem->at, &id,
                        NULL) == MUSLIN_OK)
        place = place_noted(making, id);
    if (place == NULL)
        place = place_noted(making, root);
    return place != NULL ? place : "/top";
}

/* Looking at every node is worth while in what a person has written. */
static bool is_small(const struct making *making)
{
    enum { SMALL = 20000 };
    struct muslin_part_counts counts = { .size = (uint32_t)sizeof counts };
    must(muslin_quilt_counts(making->design->quilt, &counts, NULL));
    return counts.nodes <= SMALL;
}

/* Says of every node that was made why it cannot be worked out; what is wrong in others is told of those. */
static void tell_all(struct making *making)
{
    enum { TRIED_MOST = 500 };
    struct muslin_problem problem;
    struct muslin_solution *solution;
    json_t *places = json_object_get(making->known, "places");
    const char *key;
    json_t *ignored;
    char text[300];
    int tried = 0;
    json_object_foreach(places, key, ignored)
    {
        muslin_id node = strtoll(key, NULL, 10);
        if (muslin_id_sort(node) != MUSLIN_SORT_NODE || tried++ == TRIED_MOST)
            continue;
        if (solve(making, node, &solution, &problem) != MUSLIN_OK)
            complain(making->complaints, place_of_problem(making, node, &problem), NULL, problem.status, "%s",
                     in_own_units(making, problem.text, text));
        muslin_solution_free(solution);
    }
}

static void note_border_widths(struct making *making, const struct muslin_solution *solution)
{
    struct design *design = making->design;
    for (size_t i = 0; i < design->borders_used; i++)
        if (making->border_widths[i] != 0)
            must(muslin_solution_value(solution, making->border_widths[i], &design->borders[i].width, NULL));
}

void try_solving(struct making *making)
{
    struct muslin_problem problem;
    struct muslin_solution *solution;
    muslin_id top = making->design->top;
    char text[300];
    if (solve(making, top, &solution, &problem) == MUSLIN_OK)
        note_border_widths(making, solution);
    else {
        complain(making->complaints, place_of_problem(making, top, &problem), NULL, problem.status, "%s",
                 in_own_units(making, problem.text, text));
        if (is_small(making))
            tell_all(making);
    }
    muslin_solution_free(solution);
}
