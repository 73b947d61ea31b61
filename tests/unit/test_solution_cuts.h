/* test_solution_cuts.h - what tests of the cut list and of strip sets share: rows read back.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_SOLUTION_CUTS_H
#define MUSLIN_TEST_SOLUTION_CUTS_H

#include "refusals.h"
#include "test_quilt.h"

enum { CUTS_MOST = 400 };

/* The whole cut list of a solution, and its strip sets. */
struct listed {
    struct muslin_solution *solution;
    struct muslin_solution_cut cuts[CUTS_MOST];
    struct muslin_stripset sets[CUTS_MOST];
    size_t cut_count;
    size_t set_count;
};

static inline void list_all(struct listed *listed)
{
    ck_ok(muslin_solution_cuts(listed->solution, listed->cuts, sizeof listed->cuts[0], CUTS_MOST, &listed->cut_count,
                               NULL));
    ck_ok(muslin_solution_stripsets(listed->solution, listed->sets, sizeof listed->sets[0], CUTS_MOST,
                                     &listed->set_count, NULL));
}

static inline void list_with(struct listed *listed, struct muslin_quilt *quilt, muslin_id root,
                             const struct muslin_solution_spec *spec)
{
    listed->solution = NULL;
    ck_ok(muslin_solution_create(quilt, root, spec, NULL, 0, 0, NULL, &listed->solution, NULL));
    list_all(listed);
}

static inline void list_of(struct listed *listed, struct muslin_quilt *quilt, muslin_id root)
{
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    list_with(listed, quilt, root, &spec);
}

static inline void end_list(struct listed *listed)
{
    muslin_solution_free(listed->solution);
}

/* The row of this source, fabric and cut size, the first of them; there must be one. */
static inline const struct muslin_solution_cut *cut_sized(const struct listed *listed, int32_t source, muslin_id fabric,
                                                          muslin_len width, muslin_len height)
{
    for (size_t i = 0; i < listed->cut_count; i++) {
        const struct muslin_solution_cut *cut = &listed->cuts[i];
        if (cut->source == source && cut->fabric == fabric && cut->cut_width == width && cut->cut_height == height)
            return cut;
    }
    ck_abort_msg("no such cut");
    return NULL;
}

static inline void ck_turns(const struct muslin_solution_cut *cut, int64_t upright, int64_t quarter, int64_t half,
                            int64_t three_quarter, int64_t scattered)
{
    ck_assert_int_eq(cut->upright, upright);
    ck_assert_int_eq(cut->quarter, quarter);
    ck_assert_int_eq(cut->half, half);
    ck_assert_int_eq(cut->three_quarter, three_quarter);
    ck_assert_int_eq(cut->scattered, scattered);
}

static inline void ck_counts(const struct muslin_solution_cut *cut, int64_t count, int64_t pieces, int64_t spare)
{
    ck_assert_int_eq(cut->count, count);
    ck_assert_int_eq(cut->pieces, pieces);
    ck_assert_int_eq(cut->spare, spare);
    ck_assert_int_eq(cut->pieces, cut->count * cut->gives);
    ck_assert_int_eq(cut->pieces - cut->spare,
                     cut->upright + cut->quarter + cut->half + cut->three_quarter + cut->scattered);
}

/* A join with all that its spec can say. */
static inline muslin_id pieced_join(struct muslin_quilt *quilt, int32_t axis, int32_t piecing, uint32_t flags,
                                    const muslin_id *children, size_t n)
{
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    muslin_id id = 0;
    spec.flags = flags;
    spec.axis = axis;
    spec.piecing = piecing;
    ck_ok(muslin_quilt_join(quilt, &spec, children, n, &id, NULL));
    return id;
}

static inline muslin_id printed_fabric(struct muslin_quilt *quilt, const char *name, int32_t print)
{
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    muslin_id id = 0;
    spec.print = print;
    ck_ok(muslin_quilt_fabric(quilt, &spec, name, strlen(name), &id, NULL));
    return id;
}

#endif
