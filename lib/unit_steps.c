/* unit_steps.c - how the pieces of a recipe are sewn, step by step.
 *
 * SPDX-License-Identifier: MIT */
#include "unit_cut.h"
#include "unit_steps_texts.h"

/* What a step measures. */
enum measure {
    NOTHING,
    SEAM,         /* s */
    UNFINISHED,   /* W + E, and for TRIM_TO H + E */
    STRIP         /* the strip's height as cut: what lies between the parallel sides of a diamond */
};

struct step {
    int8_t step; /* enum muslin_sewing_step */
    int8_t piece;
    int8_t other;
    int8_t times;
    int8_t measure;
    int8_t region;
};

#define MARK(how, piece, times) { MUSLIN_SEW_MARK_##how, piece, 0, times, NOTHING, 0 }
#define MARK_CORNERS(piece, times) { MUSLIN_SEW_MARK_CORNERS, piece, 0, times, SEAM, 0 }
#define PAIR(piece, other, times) { MUSLIN_SEW_PAIR, piece, other, times, NOTHING, 0 }
#define PAIR_HALVES { MUSLIN_SEW_PAIR_HALVES, 0, 0, 1, NOTHING, 0 }
#define PAIR_CORNER(piece, other, times) { MUSLIN_SEW_PAIR_CORNER, piece, other, times, NOTHING, 0 }
#define SEW_ON_LINE(times) { MUSLIN_SEW_ON_LINE, 0, 0, times, NOTHING, 0 }
#define SEW_BESIDE(times) { MUSLIN_SEW_BESIDE, 0, 0, times, SEAM, 0 }
#define CUT_APART(times) { MUSLIN_SEW_CUT_APART, 0, 0, times, NOTHING, 0 }
#define CUT_SQUARES { MUSLIN_SEW_CUT_SQUARES, 0, 0, 1, NOTHING, 0 }
#define CUT_TURNING { MUSLIN_SEW_CUT_TURNING, 1, 0, 1, NOTHING, 0 }
#define CUT_SLANTED(measure) { MUSLIN_SEW_CUT_SLANTED, 1, 0, 1, measure, 0 }
#define CUT_TO_SHAPE { MUSLIN_SEW_CUT_TO_SHAPE, 1, 0, 1, NOTHING, 0 }
#define TRIM_CORNER(times) { MUSLIN_SEW_TRIM_CORNER, 0, 0, times, SEAM, 0 }
#define FOLD_BACK(times) { MUSLIN_SEW_FOLD_BACK, 2, 0, times, NOTHING, 0 }
#define PRESS_OPEN(times) { MUSLIN_SEW_PRESS_OPEN, 0, 0, times, NOTHING, 0 }
#define PRESS_TO(region, times) { MUSLIN_SEW_PRESS_TO, 0, 0, times, NOTHING, region }
#define JOIN(how, piece, other, times) { MUSLIN_SEW_JOIN_##how, piece, other, times, SEAM, 0 }
#define SET_IN(piece) { MUSLIN_SEW_SET_IN, piece, 0, 4, SEAM, 0 }
#define TRIM_TO(times) { MUSLIN_SEW_TRIM_TO, 0, 0, times, UNFINISHED, 0 }

/* Where the steps of each recipe begin: one list behind the other. */
enum {
    HALF_PIECES = 0,
    HALF_TWO = HALF_PIECES + 3,
    HALF_ROUND = HALF_TWO + 6,
    HALF_MIDPOINTS = HALF_ROUND + 5,
    HALF_EIGHT = HALF_MIDPOINTS + 7,
    HALF_STRIPS = HALF_EIGHT + 7,
    HALF_BIAS = HALF_STRIPS + 5,
    QUARTER_PIECES = HALF_BIAS + 3,
    QUARTER_TWO = QUARTER_PIECES + 5,
    SPLIT_PIECES = QUARTER_TWO + 11,
    SPLIT_TWO = SPLIT_PIECES + 5,
    GEESE_PIECES = SPLIT_TWO + 11,
    GEESE_FOUR = GEESE_PIECES + 5,
    GEESE_FLIPPED = GEESE_FOUR + 10,
    ON_POINT_PIECES = GEESE_FLIPPED + 10,
    FLIPPED_FOUR = ON_POINT_PIECES + 5,
    LEANING = FLIPPED_FOUR + 10,
    TURNING = LEANING + 5,
    DIAMONDS = TURNING + 1,
    HEXAGON = DIAMONDS + 1,
    OCTAGON_PIECES = HEXAGON + 1,
    STAR = OCTAGON_PIECES + 4,
    KALEIDOSCOPE = STAR + 15,
    SLICE = KALEIDOSCOPE + 10,
    STEPS = SLICE + 1
};

static const struct step steps[STEPS] = {
    [HALF_PIECES] = JOIN(LONG, 1, 2, 2), PRESS_TO(1, 2), TRIM_TO(2),
    [HALF_TWO] = MARK(LINE, 2, 1), PAIR(2, 1, 1), SEW_BESIDE(1), CUT_APART(1), PRESS_TO(1, 2), TRIM_TO(2),
    [HALF_ROUND] = PAIR(2, 1, 1), { MUSLIN_SEW_ROUND, 0, 0, 1, SEAM, 0 },
                   { MUSLIN_SEW_CUT_DIAGONALS, 0, 0, 1, NOTHING, 0 }, PRESS_TO(1, 4), TRIM_TO(4),
    [HALF_MIDPOINTS] = MARK(MIDDLES, 2, 1), PAIR(2, 1, 1), SEW_ON_LINE(4), CUT_SQUARES, TRIM_CORNER(4), PRESS_TO(1, 4),
                       TRIM_TO(4),
    [HALF_EIGHT] = MARK(BOTH, 2, 1), PAIR(2, 1, 1), SEW_BESIDE(2), CUT_SQUARES, CUT_APART(4), PRESS_TO(1, 8),
                   TRIM_TO(8),
    [HALF_STRIPS] = { MUSLIN_SEW_PAIR_STRIPS, 2, 1, 1, NOTHING, 0 }, CUT_TURNING, JOIN(LONG, 1, 2, 2), PRESS_TO(1, 2),
                    TRIM_TO(2),
    [HALF_BIAS] = { MUSLIN_SEW_JOIN, 1, 2, 1, SEAM, 0 }, PRESS_OPEN(1),
                  { MUSLIN_SEW_CUT_ON_POINT, 0, 0, 1, UNFINISHED, 0 },
    [QUARTER_PIECES] = JOIN(SHORT, 1, 2, 4), PRESS_TO(1, 4), JOIN(PARTS, 0, 0, 2), PRESS_OPEN(2), TRIM_TO(2),
    [QUARTER_TWO] = MARK(LINE, 2, 1), PAIR(2, 1, 1), SEW_BESIDE(1), CUT_APART(1), PRESS_TO(1, 2), MARK(ACROSS, 0, 1),
                    PAIR_HALVES, SEW_BESIDE(1), CUT_APART(1), PRESS_OPEN(2), TRIM_TO(2),
    [SPLIT_PIECES] = JOIN(SHORT, 2, 3, 4), PRESS_TO(2, 4), JOIN(LONG, 1, 0, 4), PRESS_TO(1, 4), TRIM_TO(4),
    [SPLIT_TWO] = MARK(LINE, 3, 1), PAIR(3, 2, 1), SEW_BESIDE(1), CUT_APART(1), PRESS_TO(2, 2), MARK(ACROSS, 0, 2),
                  PAIR(0, 1, 2), SEW_BESIDE(2), CUT_APART(2), PRESS_TO(1, 4), TRIM_TO(4),
    [GEESE_PIECES] = JOIN(POINT, 2, 1, 4), PRESS_TO(2, 4), JOIN(AGAIN, 2, 0, 4), PRESS_TO(2, 4), TRIM_TO(4),
    [GEESE_FOUR] = MARK(LINE, 2, 4), { MUSLIN_SEW_PAIR_OPPOSITE, 2, 1, 1, NOTHING, 0 }, SEW_BESIDE(1), CUT_APART(1),
                   PRESS_TO(2, 2), PAIR_CORNER(2, 0, 2), SEW_BESIDE(2), CUT_APART(2), PRESS_TO(2, 4), TRIM_TO(4),
    [GEESE_FLIPPED] = MARK(LINE, 2, 2), PAIR_CORNER(2, 1, 1), SEW_ON_LINE(1), TRIM_CORNER(1), FOLD_BACK(1),
                      PAIR_CORNER(2, 0, 1), SEW_ON_LINE(1), TRIM_CORNER(1), FOLD_BACK(1), TRIM_TO(1),
    [ON_POINT_PIECES] = JOIN(CENTRED, 2, 1, 2), PRESS_TO(2, 2), JOIN(AGAIN, 2, 0, 2), PRESS_TO(2, 2), TRIM_TO(1),
    [FLIPPED_FOUR] = MARK(LINE, 2, 4), PAIR_CORNER(2, 1, 2), SEW_ON_LINE(2), TRIM_CORNER(2), FOLD_BACK(2),
                     PAIR_CORNER(2, 0, 2), SEW_ON_LINE(2), TRIM_CORNER(2), FOLD_BACK(2), TRIM_TO(1),
    [LEANING] = MARK_CORNERS(1, 2), MARK_CORNERS(2, 2), JOIN(LONG, 1, 2, 2), PRESS_TO(1, 2), TRIM_TO(2),
    [TURNING] = CUT_TURNING,
    [DIAMONDS] = CUT_SLANTED(STRIP),
    [HEXAGON] = CUT_TO_SHAPE,
    [OCTAGON_PIECES] = CUT_TO_SHAPE, JOIN(CENTRED, 2, 1, 4), PRESS_TO(2, 4), TRIM_TO(1),
    [STAR] = CUT_SLANTED(STRIP), MARK_CORNERS(1, 8), MARK_CORNERS(2, 4), MARK_CORNERS(3, 4),
             { MUSLIN_SEW_PARTIAL, 1, 1, 4, SEAM, 0 }, PRESS_OPEN(4), JOIN(PARTS, 0, 0, 2), PRESS_OPEN(2),
             JOIN(PARTS, 0, 0, 1), PRESS_OPEN(1), SET_IN(2), PRESS_TO(1, 8), SET_IN(3), PRESS_TO(1, 8), TRIM_TO(1),
    [KALEIDOSCOPE] = CUT_TURNING, JOIN(LONG, 1, 1, 4), PRESS_OPEN(4), JOIN(PARTS, 0, 0, 2), PRESS_OPEN(2),
                     JOIN(PARTS, 0, 0, 1), PRESS_OPEN(1), JOIN(CENTRED, 2, 0, 4), PRESS_TO(2, 4), TRIM_TO(1),
    [SLICE] = CUT_SLANTED(UNFINISHED),
};

struct course {
    int8_t kind;
    int8_t method;
    uint8_t first;
    uint8_t steps;
};

static const struct course courses[] = {
    { MUSLIN_UNIT_RECTANGLE, MUSLIN_METHOD_PIECES, 0, 0 },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_PIECES, HALF_PIECES, HALF_TWO - HALF_PIECES },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_TWO_AT_A_TIME, HALF_TWO, HALF_ROUND - HALF_TWO },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_FOUR_ALL_ROUND, HALF_ROUND, HALF_MIDPOINTS - HALF_ROUND },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_FOUR_MIDPOINTS, HALF_MIDPOINTS, HALF_EIGHT - HALF_MIDPOINTS },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_EIGHT_AT_A_TIME, HALF_EIGHT, HALF_STRIPS - HALF_EIGHT },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_STRIPS, HALF_STRIPS, HALF_BIAS - HALF_STRIPS },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_BIAS_STRIPS, HALF_BIAS, QUARTER_PIECES - HALF_BIAS },
    { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_METHOD_PIECES, QUARTER_PIECES, QUARTER_TWO - QUARTER_PIECES },
    { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_METHOD_TWO_AT_A_TIME, QUARTER_TWO, SPLIT_PIECES - QUARTER_TWO },
    { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_METHOD_PIECES, SPLIT_PIECES, SPLIT_TWO - SPLIT_PIECES },
    { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_METHOD_TWO_AT_A_TIME, SPLIT_TWO, GEESE_PIECES - SPLIT_TWO },
    { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_METHOD_PIECES, GEESE_PIECES, GEESE_FOUR - GEESE_PIECES },
    { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_METHOD_FOUR_AT_A_TIME, GEESE_FOUR, GEESE_FLIPPED - GEESE_FOUR },
    { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_METHOD_FLIPPED_CORNERS, GEESE_FLIPPED, ON_POINT_PIECES - GEESE_FLIPPED },
    { MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_METHOD_PIECES, ON_POINT_PIECES, FLIPPED_FOUR - ON_POINT_PIECES },
    { MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_METHOD_FLIPPED_CORNERS, FLIPPED_FOUR, LEANING - FLIPPED_FOUR },
    { MUSLIN_UNIT_SNOWBALL, MUSLIN_METHOD_FLIPPED_CORNERS, FLIPPED_FOUR, LEANING - FLIPPED_FOUR },
    { MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_METHOD_PIECES, LEANING, TURNING - LEANING },
    { MUSLIN_UNIT_TRIANGLE_60, MUSLIN_METHOD_STRIPS, TURNING, DIAMONDS - TURNING },
    { MUSLIN_UNIT_DIAMOND_60, MUSLIN_METHOD_STRIPS, DIAMONDS, HEXAGON - DIAMONDS },
    { MUSLIN_UNIT_DIAMOND_45, MUSLIN_METHOD_STRIPS, DIAMONDS, HEXAGON - DIAMONDS },
    { MUSLIN_UNIT_HEXAGON, MUSLIN_METHOD_STRIPS, HEXAGON, OCTAGON_PIECES - HEXAGON },
    { MUSLIN_UNIT_HALF_HEXAGON, MUSLIN_METHOD_STRIPS, TURNING, DIAMONDS - TURNING },
    { MUSLIN_UNIT_TRAPEZOID, MUSLIN_METHOD_STRIPS, TURNING, DIAMONDS - TURNING },
    { MUSLIN_UNIT_OCTAGON, MUSLIN_METHOD_PIECES, OCTAGON_PIECES, STAR - OCTAGON_PIECES },
    { MUSLIN_UNIT_OCTAGON, MUSLIN_METHOD_FLIPPED_CORNERS, FLIPPED_FOUR, LEANING - FLIPPED_FOUR },
    { MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_METHOD_PIECES, STAR, KALEIDOSCOPE - STAR },
    { MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_METHOD_PIECES, KALEIDOSCOPE, SLICE - KALEIDOSCOPE },
    { MUSLIN_UNIT_SLANTED_SLICE, MUSLIN_METHOD_STRIPS, SLICE, STEPS - SLICE },
};

/* Every recipe that a spec can ask for has its course. */
static const struct course *course_of(const struct muslin_unit_spec *spec)
{
    const struct course *course = courses;
    while (course->kind != spec->kind || course->method != spec->method)
        course++;
    return course;
}

/* ---- rows -------------------------------------------------------------------------------------------------------- */

static muslin_len strip_as_cut(const struct msl_unit_sizes *sizes, const struct muslin_unit_spec *spec)
{
    struct muslin_unit_piece piece = { 0 };
    unit_cut_piece(&unit_recipe_for(spec->kind, spec->method, spec->tip)->row[0], sizes, spec, &piece);
    return piece.cut_height;
}

static muslin_len measure_of(const struct step *step, const struct muslin_unit_spec *spec)
{
    struct msl_unit_sizes sizes = msl_unit_sizes_of(spec);
    switch (step->measure) {
    case SEAM:
        return spec->allowance;
    case UNFINISHED:
        return sizes.w + sizes.e;
    case STRIP:
        return strip_as_cut(&sizes, spec);
    default:
        return 0;
    }
}

static struct muslin_unit_step row_of(const struct step *step, const struct muslin_unit_spec *spec)
{
    struct muslin_unit_step row = { 0 };
    struct msl_unit_sizes sizes = msl_unit_sizes_of(spec);
    row.step = step->step;
    row.piece = step->piece;
    row.other = step->other;
    row.times = step->times;
    row.region = step->region;
    row.measure = measure_of(step, spec);
    if (step->step == MUSLIN_SEW_TRIM_TO)
        row.measure_height = sizes.h + sizes.e;
    return row;
}

muslin_status muslin_unit_steps(const struct muslin_unit_spec *spec, struct muslin_unit_step *rows, size_t row_size,
                                size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_unit_spec in = { 0 };
    msl_unit_read(&check, &in, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct course *course = course_of(&in);
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, course->steps))
        return check.status;
    for (int32_t i = 0; i < course->steps; i++) {
        struct muslin_unit_step row = row_of(&steps[course->first + i], &in);
        msl_write_row(rows, row_size, (size_t)i, &row, (uint32_t)sizeof row);
    }
    return check.status;
}

/* ---- sentences --------------------------------------------------------------------------------------------------- */

#define MEMBER(name, words) char name[sizeof words];
#define WORDS(name, words) words,
#define AT(name, words) (uint16_t)offsetof(struct step_texts, name),

/* As in base.c: one constant struct and 16-bit offsets into it, so that no pointer needs relocating. */
struct step_texts {
    STEP_SENTENCES(MEMBER)
};
static const struct step_texts step_texts = { STEP_SENTENCES(WORDS) };
static const uint16_t step_text_at[] = { STEP_SENTENCES(AT) };

const char *muslin_sewing_step_text(int32_t step)
{
    const int32_t known = (int32_t)(sizeof step_text_at / sizeof *step_text_at);
    return (const char *)&step_texts + step_text_at[step < 0 || step >= known ? 0 : step];
}
