/* fabric.c - cloth: how wide it is, how much to buy, how many pieces it gives.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks a size is at most 2^30, a count below 2^31 and a share at most 11 x 10^6, so every product of two
 * of them fits 64 bits. */
#include "muslin/fabric.h"

#include "inside.h"

/* Values that share a name in a problem, told apart by its `at`. */
static void want_pair(struct msl_check *check, void want(struct msl_check *, int32_t, muslin_len), int32_t argument,
                      muslin_len first, muslin_len second)
{
    want(check, argument, first);
    check->at = 1;
    want(check, argument, second);
    check->at = 0;
}

static void want_shrinkage(struct msl_check *check, int32_t shrinkage)
{
    msl_want_between(check, MUSLIN_ARG_SHRINKAGE, shrinkage, 0, MUSLIN_PPM - 1);
}

/* ---- width and length of cloth --------------------------------------------------------------------------------- */

muslin_status muslin_fabric_usable_width(muslin_len labelled, muslin_len selvage, int32_t shrinkage, muslin_len *out,
                                         struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_some_size(&check, MUSLIN_ARG_LABELLED_WIDTH, labelled);
    /* less than half, so that a tick is left; no subtraction from a width that is still unchecked can wrap */
    msl_want_between(&check, MUSLIN_ARG_SELVAGE, selvage, 0, labelled - labelled / 2 - 1);
    want_shrinkage(&check, shrinkage);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status == MUSLIN_OK)
        *out = (labelled - 2 * selvage) * (MUSLIN_PPM - shrinkage) / MUSLIN_PPM;
    return check.status;
}

/* What shrinks to `length`: length / (1 - shrinkage), up. */
static muslin_len before_washing(muslin_len length, int32_t shrinkage)
{
    return msl_divided_up(length * MUSLIN_PPM, MUSLIN_PPM - shrinkage);
}

/* length x share, up; the whole millionths apart, because an unshrunk length can be 2^50. */
static muslin_len share_up(muslin_len length, int32_t share)
{
    return length / MUSLIN_PPM * share + msl_divided_up(length % MUSLIN_PPM * share, MUSLIN_PPM);
}

muslin_status muslin_purchase_spec_init(struct muslin_purchase_spec *spec, uint32_t size)
{
    const struct muslin_purchase_spec initial = MUSLIN_PURCHASE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_purchase(struct msl_check *check, struct muslin_purchase_spec *spec,
                          const struct muslin_purchase_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_size(check, MUSLIN_ARG_CLOTH_LENGTH, spec->needed);
    msl_want_size(check, MUSLIN_ARG_EXTRA, spec->extra);
    msl_want_some_size(check, MUSLIN_ARG_STEP, spec->step);
    want_shrinkage(check, spec->shrinkage);
    msl_want_between(check, MUSLIN_ARG_EXTRA_SHARE, spec->extra_share, 0, 10 * MUSLIN_PPM);
}

muslin_status muslin_fabric_purchase(const struct muslin_purchase_spec *spec, struct muslin_purchase *out,
                                     struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_purchase_spec s = { 0 };
    read_purchase(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_purchase buy = { 0 };
    buy.needed = s.needed;
    buy.unshrunk = before_washing(s.needed, s.shrinkage);
    buy.with_extra = buy.unshrunk + share_up(buy.unshrunk, s.extra_share) + s.extra;
    buy.steps = msl_divided_up(buy.with_extra, s.step);
    buy.bought = buy.steps * s.step;
    buy.spare = buy.bought - buy.with_extra;
    if (buy.steps > 0)
        buy.less_by = s.step - buy.spare;
    msl_write_struct(out, &buy, (uint32_t)sizeof buy);
    return MUSLIN_OK;
}

/* ---- pieces from cloth ----------------------------------------------------------------------------------------- */

muslin_status muslin_cloth_spec_init(struct muslin_cloth_spec *spec, uint32_t size)
{
    const struct muslin_cloth_spec initial = MUSLIN_CLOTH_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_cloth(struct msl_check *check, struct muslin_cloth_spec *spec, const struct muslin_cloth_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_CLOTH_MAY_TURN, from);
    msl_want_size(check, MUSLIN_ARG_USABLE_WIDTH, spec->width);
    msl_want_size(check, MUSLIN_ARG_CLOTH_LENGTH, spec->length);
    want_pair(check, msl_want_some_size, MUSLIN_ARG_CUT, spec->piece_width, spec->piece_length);
    want_pair(check, msl_want_size, MUSLIN_ARG_END_LOSS, spec->loss_across, spec->loss_along);
}

/* Pieces laid end to end on one side of the cloth. */
struct fit {
    int64_t pieces;
    muslin_len left;
    muslin_len more; /* so much longer and one more fits */
};

static struct fit fit_pieces(muslin_len side, muslin_len loss, muslin_len piece)
{
    muslin_len room = side - loss;
    muslin_len usable = msl_greater(room, 0);
    struct fit fit = { usable / piece, usable % piece, 0 };
    fit.more = (fit.pieces + 1) * piece - room;
    return fit;
}

/* The grid of pieces a x b, a across. */
static struct muslin_cloth_pieces lay_pieces(const struct muslin_cloth_spec *s, muslin_len a, muslin_len b)
{
    struct fit across = fit_pieces(s->width, s->loss_across, a);
    struct fit along = fit_pieces(s->length, s->loss_along, b);
    struct muslin_cloth_pieces laid = { 0 };
    laid.across = across.pieces;
    laid.along = along.pieces;
    laid.pieces = across.pieces * along.pieces;
    laid.left_across = across.left;
    laid.left_along = along.left;
    laid.wider_for_one = across.more;
    laid.longer_for_one = along.more;
    if (laid.pieces == 0)
        return laid;
    laid.narrower_by = across.left;
    laid.shorter_by = along.left;
    if (across.left == 0 || along.left == 0)
        laid.warnings = MUSLIN_WARN_NO_SLACK;
    return laid;
}

muslin_status muslin_fabric_pieces(const struct muslin_cloth_spec *spec, struct muslin_cloth_pieces *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_cloth_spec s = { 0 };
    read_cloth(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_cloth_pieces best = lay_pieces(&s, s.piece_width, s.piece_length);
    struct muslin_cloth_pieces turned = lay_pieces(&s, s.piece_length, s.piece_width);
    turned.turned = 1;
    if ((s.flags & MUSLIN_CLOTH_MAY_TURN) != 0 && turned.pieces > best.pieces)
        best = turned;
    msl_write_struct(out, &best, (uint32_t)sizeof best);
    return MUSLIN_OK;
}

muslin_status muslin_strips_spec_init(struct muslin_strips_spec *spec, uint32_t size)
{
    const struct muslin_strips_spec initial = MUSLIN_STRIPS_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_strips(struct msl_check *check, struct muslin_strips_spec *spec,
                        const struct muslin_strips_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_count(check, MUSLIN_ARG_PIECES, spec->pieces);
    msl_want_some_size(check, MUSLIN_ARG_CUT, spec->piece_across);
    msl_want_some_size(check, MUSLIN_ARG_STRIP_CUT, spec->strip_cut);
    msl_want_size(check, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width);
    want_pair(check, msl_want_size, MUSLIN_ARG_END_LOSS, spec->end_loss, spec->straightening);
}

muslin_status muslin_fabric_strips(const struct muslin_strips_spec *spec, struct muslin_strips *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_strips_spec s = { 0 };
    read_strips(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct fit fit = fit_pieces(s.usable_width, s.end_loss, s.piece_across);
    if (fit.pieces == 0)
        return msl_fail(&check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_USABLE_WIDTH, s.usable_width,
                        s.end_loss + s.piece_across);
    struct muslin_strips strips = { 0 };
    strips.per_strip = fit.pieces;
    strips.strips = msl_divided_up(s.pieces, fit.pieces);
    strips.spare_pieces = strips.strips * fit.pieces - s.pieces;
    strips.length = strips.strips * s.strip_cut + s.straightening;
    strips.left_per_strip = fit.left;
    strips.narrower_by = fit.left;
    strips.wider_for_one = fit.more;
    strips.warnings = fit.left == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    msl_write_struct(out, &strips, (uint32_t)sizeof strips);
    return MUSLIN_OK;
}

muslin_status muslin_fabric_area_bound(int64_t area, muslin_len usable_width, muslin_len *out,
                                       struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_between(&check, MUSLIN_ARG_AREA, area, 0, MUSLIN_LENGTH_MAX);
    msl_want_some_size(&check, MUSLIN_ARG_USABLE_WIDTH, usable_width);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status == MUSLIN_OK)
        *out = msl_divided_up(area, 2 * usable_width);
    return check.status;
}
