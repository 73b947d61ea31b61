/* corpus_rounds.c - the calls of rounds.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

enum { WIDTHS = 12, LOG_ROWS = 24, CORNER_ROWS = 16 };

/* Widths of logs: mostly one for each round or log, rarely another number. */
static size_t draw_widths(struct golden *g, muslin_len *widths, int64_t rounds)
{
    static const int64_t times[] = { 0, 1, 4, 2 };
    for (int32_t i = 0; i < WIDTHS; i++)
        widths[i] = draw_rarely(g, 3) ? draw_size(g, 3) : 8128;
    int64_t few_rounds = rounds < 0 || rounds > WIDTHS ? 0 : rounds;
    int64_t n = draw_rarely(g, 20) ? draw_below(g, WIDTHS + 1) : few_rounds * times[draw_below(g, 4)];
    return n > WIDTHS ? 0 : (size_t)n;
}

static void take_log_rows(struct golden *g, const struct muslin_logcabin_log *rows, size_t count)
{
    for (size_t i = 0; i < count && i < LOG_ROWS; i++)
        TAKE(g, muslin_logcabin_log, rows[i]);
}

static void take_strip_rows(struct golden *g, const struct muslin_logcabin_strip *rows, size_t count)
{
    for (size_t i = 0; i < count && i < LOG_ROWS; i++)
        TAKE(g, muslin_logcabin_strip, rows[i]);
}

static void cabins(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_logcabin_spec, spec);
        OUT(muslin_logcabin, out);
        struct muslin_logcabin_log logs[LOG_ROWS] = { { 0 } };
        struct muslin_logcabin_strip strips[LOG_ROWS] = { { 0 } };
        muslin_len widths[WIDTHS];
        size_t count = 77;
        spec.flags = draw_flags(g, MUSLIN_LOGCABIN_GIVEN_CUT);
        spec.centre_width = draw_size(g, 6);
        spec.centre_height = draw_rarely(g, 3) ? draw_size(g, 6) : spec.centre_width;
        spec.log_width = draw_size(g, 3);
        spec.rounds = draw_rarely(g, 40) ? draw_count(g, 3000) : draw_between(g, 1, 6);
        spec.blocks = draw_rarely(g, 40) ? draw_count(g, 200000) : draw_between(g, 1, 40);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.usable_width = draw_rarely(g, 6) ? 0 : draw_size(g, 60);
        spec.end_loss = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        spec.order = draw_choice(g, MUSLIN_LOG_ORDER_ROUND, MUSLIN_LOG_ORDER_QUARTER);
        spec.start = draw_choice(g, MUSLIN_SIDE_LEFT, MUSLIN_SIDE_BOTTOM);
        spec.turn = draw_choice(g, MUSLIN_LOG_TURN_CLOCKWISE, MUSLIN_LOG_TURN_ANTICLOCKWISE);
        size_t n = draw_widths(g, widths, spec.rounds);
        told(g, muslin_logcabin_plan(&spec, widths, n, &out, ask(g)));
        TAKE(g, muslin_logcabin, out);
        told(g, muslin_logcabin_logs(&spec, widths, n, logs, sizeof *logs, LOG_ROWS, &count, ask(g)));
        take_number(g, (int64_t)count);
        take_log_rows(g, logs, count);
        told(g, muslin_logcabin_strips(&spec, widths, n, strips, sizeof *strips, LOG_ROWS, &count, ask(g)));
        take_number(g, (int64_t)count);
        take_strip_rows(g, strips, count);
    }
}

static void log_fits(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_logcabin_fit_spec, spec);
        OUT(muslin_logcabin_fit, log);
        OUT(muslin_logcabin_fit, rounds);
        struct muslin_rounding_spec rounding = draw_rounding(g);
        spec.flags = draw_flags(g, 0);
        spec.wanted = draw_size(g, 24);
        spec.centre = draw_size(g, 6);
        spec.rounds = draw_count(g, 10);
        spec.log_finished = draw_size(g, 3);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.order = draw_choice(g, MUSLIN_LOG_ORDER_ROUND, MUSLIN_LOG_ORDER_QUARTER);
        told(g, muslin_logcabin_log_for(&spec, &rounding, &log, ask(g)));
        TAKE(g, muslin_logcabin_fit, log);
        told(g, muslin_logcabin_rounds_for(&spec, &rounds, ask(g)));
        TAKE(g, muslin_logcabin_fit, rounds);
    }
}

static void frames(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_frame_spec, spec);
        OUT(muslin_frame, out);
        struct muslin_frame_corner rows[CORNER_ROWS] = { { 0 } };
        struct muslin_rounding_spec rounding = draw_rounding(g);
        size_t count = 77;
        spec.flags = draw_flags(g, 0);
        spec.opening_width = draw_size(g, 40);
        spec.opening_height = draw_size(g, 40);
        spec.frame_width = draw_size(g, 6);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.usable_width = draw_rarely(g, 4) ? 0 : draw_size(g, 50);
        told(g, muslin_frame_pieces(&spec, &rounding, &out, ask(g)));
        TAKE(g, muslin_frame, out);
        told(g, muslin_frame_outline(&spec, &rounding, rows, sizeof *rows, CORNER_ROWS, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (size_t i = 0; i < CORNER_ROWS; i++)
            TAKE(g, muslin_frame_corner, rows[i]);
    }
}

/* A round; what follows coping is mostly pieced. */
static struct muslin_medallion_row draw_round(struct golden *g, const struct muslin_medallion_row *before)
{
    struct muslin_medallion_row row;
    int after_coping = before != NULL && before->kind == MUSLIN_ROUND_COPING;
    muslin_medallion_row_init(&row, (uint32_t)sizeof row);
    row.kind = draw_choice(g, MUSLIN_ROUND_PLAIN, MUSLIN_ROUND_COPING);
    row.kind = after_coping && !draw_rarely(g, 20) ? MUSLIN_ROUND_PIECED : row.kind;
    row.corner = draw_choice(g, MUSLIN_ROUND_CORNER_SQUARES, MUSLIN_ROUND_CORNER_THROUGH);
    row.width = draw_size(g, 6);
    row.repeat = draw_size(g, 6);
    row.most = draw_rarely(g, 3) ? draw_size(g, 10) : 20 * 8128;
    return row;
}

static void medallions(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_medallion_spec, spec);
        OUT(muslin_medallion, out);
        struct muslin_medallion_row rows[FEW];
        spec.flags = draw_flags(g, MUSLIN_MEDALLION_EQUAL_COPING);
        spec.centre_width = draw_size(g, 30);
        spec.centre_height = draw_rarely(g, 2) ? draw_size(g, 30) : spec.centre_width;
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        for (int32_t i = 0; i < FEW; i++)
            rows[i] = draw_round(g, i > 0 ? &rows[i - 1] : NULL);
        size_t n = (size_t)draw_below(g, FEW + 1);
        told(g, muslin_medallion_plan(&spec, rows, sizeof *rows, n, &out, ask(g)));
        TAKE(g, muslin_medallion, out);
        for (int32_t i = 0; i < FEW; i++)
            TAKE(g, muslin_medallion_row, rows[i]);
    }
}

static void repeats(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_repeat_spec, spec);
        OUT(muslin_repeat, out);
        OUT(muslin_common_repeat, common);
        struct muslin_rounding_spec rounding = draw_rounding(g);
        spec.flags = draw_flags(g, 0);
        spec.side_finished = draw_size(g, 100);
        spec.repeat_finished = draw_size(g, 8);
        spec.spacers = draw_rarely(g, 3) ? 0 : draw_count(g, 8);
        spec.spacer_least = draw_size(g, 2);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        told(g, muslin_repeat_plan(&spec, &rounding, &out, ask(g)));
        TAKE(g, muslin_repeat, out);
        muslin_len width = draw_size(g, 100);
        muslin_len height = draw_size(g, 100);
        muslin_len least = draw_rarely(g, 2) ? 0 : draw_size(g, 3);
        muslin_len most = draw_size(g, 9);
        told(g, muslin_repeat_common(width, height, least, most, &rounding, &common, ask(g)));
        TAKE(g, muslin_common_repeat, common);
    }
}

static void point_borders(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_point_border_spec, spec);
        OUT(muslin_point_border, out);
        struct muslin_rounding_spec cutting = draw_rounding(g);
        struct muslin_rounding_spec measuring = draw_rounding(g);
        spec.flags = draw_flags(g, 0);
        spec.side_finished = draw_size(g, 100);
        spec.diagonal_finished = draw_rarely(g, 2) ? 0 : draw_size(g, 6);
        spec.squares = draw_count(g, 40);
        spec.runs = draw_count(g, 4);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        told(g, muslin_point_border_plan(&spec, &cutting, &measuring, &out, ask(g)));
        TAKE(g, muslin_point_border, out);
    }
}

void golden_rounds(struct golden *g)
{
    cabins(g);
    log_fits(g);
    frames(g);
    medallions(g);
    repeats(g);
    point_borders(g);
}
