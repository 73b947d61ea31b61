/* unit_steps.c - how the pieces of a recipe are sewn, step by step.
 *
 * SPDX-License-Identifier: MIT */
#include "unit_cut.h"
#include "unit_steps_texts.h"

/* What a step measures. */
enum measure {
    NOTHING,
    SEAM,       /* s */
    UNFINISHED, /* W + E */
    STRIP,      /* the height as cut of its piece: what lies between the parallel sides of a diamond */
    EDGE,       /* the edge as cut of its piece */
    LENGTH,     /* what its piece takes of the strip */
    OTHER       /* the size as cut of the piece it meets */
};

struct step {
    int8_t step; /* enum muslin_unit_step_kind */
    int8_t piece;
    int8_t other;
    int8_t times;
    int8_t measure;
    int8_t region;
};

#define STEP(how, piece, other, times, measure) { MUSLIN_UNIT_STEP_##how, piece, other, times, measure, 0 }
#define MARK(how, piece, times) STEP(MARK_##how, piece, 0, times, NOTHING)
#define MARK_POINTS(how, piece, times) STEP(MARK_##how, piece, 0, times, SEAM)
#define PAIR(piece, other, times) STEP(PAIR, piece, other, times, NOTHING)
#define PAIR_AT(how, piece, other, times) STEP(PAIR_##how, piece, other, times, NOTHING)
#define SEW_ON_LINE(times) STEP(ON_LINE, 0, 0, times, NOTHING)
#define SEW_BESIDE(times) STEP(BESIDE, 0, 0, times, SEAM)
#define CUT_APART(times) STEP(CUT_APART, 0, 0, times, NOTHING)
#define CUT_SQUARES STEP(CUT_SQUARES, 0, 0, 1, NOTHING)
#define CUT_TURNING(piece) STEP(CUT_TURNING, piece, 0, 1, NOTHING)
#define CUT_WEDGES(piece) STEP(CUT_WEDGES, piece, 0, 1, NOTHING)
#define CUT_PAIRS STEP(CUT_PAIRS, 1, 2, 1, NOTHING)
#define CUT_LENGTHS STEP(CUT_LENGTHS, 1, 0, 1, LENGTH)
#define CUT_POINTS STEP(CUT_POINTS, 1, 0, 1, EDGE)
#define CUT_SLANTED(measure) STEP(CUT_SLANTED, 1, 0, 1, measure)
#define CUT_TO_SHAPE STEP(CUT_TO_SHAPE, 1, 0, 1, EDGE)
#define TRIM_CORNER(times) STEP(TRIM_CORNER, 0, 0, times, SEAM)
#define TRIM_EARS STEP(TRIM_EARS, 0, 0, 1, NOTHING)
#define FOLD_BACK(times) STEP(FOLD_BACK, 2, 0, times, NOTHING)
#define PRESS_OPEN(times) STEP(PRESS_OPEN, 0, 0, times, NOTHING)
#define PRESS_TO(region, times) { MUSLIN_UNIT_STEP_PRESS_TO, 0, 0, times, NOTHING, region }
#define JOIN(how, piece, other, times) STEP(JOIN_##how, piece, other, times, SEAM)
#define SET_IN(how, piece) STEP(how, piece, 0, 4, SEAM)

/* Where the steps of each recipe begin: one list behind the other. Its trimming, the last, stands with the course. */
enum {
    HALF_PIECES = 0,
    HALF_TWO = HALF_PIECES + 2,
    HALF_ROUND = HALF_TWO + 5,
    HALF_MIDPOINTS = HALF_ROUND + 4,
    HALF_EIGHT = HALF_MIDPOINTS + 6,
    HALF_STRIPS = HALF_EIGHT + 6,
    HALF_BIAS = HALF_STRIPS + 4,
    QUARTER_PIECES = HALF_BIAS + 3,
    QUARTER_TWO = QUARTER_PIECES + 4,
    SPLIT_PIECES = QUARTER_TWO + 10,
    SPLIT_TWO = SPLIT_PIECES + 4,
    GEESE_PIECES = SPLIT_TWO + 10,
    GEESE_FOUR = GEESE_PIECES + 4,
    GEESE_FLIPPED = GEESE_FOUR + 9,
    ON_POINT_PIECES = GEESE_FLIPPED + 9,
    FLIPPED_FOUR = ON_POINT_PIECES + 5,
    LEANING = FLIPPED_FOUR + 9,
    TURNING = LEANING + 4,
    DIAMONDS = TURNING + 1,
    HEXAGON = DIAMONDS + 1,
    OCTAGON_PIECES = HEXAGON + 2,
    STAR = OCTAGON_PIECES + 3,
    KALEIDOSCOPE = STAR + 14,
    SLICE = KALEIDOSCOPE + 10,
    STEPS = SLICE + 1
};

static const struct step steps[STEPS] = {
    [HALF_PIECES] = JOIN(LONG, 1, 2, 2), PRESS_TO(1, 2),
    [HALF_TWO] = MARK(LINE, 2, 1), PAIR(2, 1, 1), SEW_BESIDE(1), CUT_APART(1), PRESS_TO(1, 2),
    [HALF_ROUND] = PAIR(2, 1, 1), STEP(ROUND, 0, 0, 1, SEAM), STEP(CUT_DIAGONALS, 0, 0, 1, NOTHING), PRESS_TO(1, 4),
    [HALF_MIDPOINTS] = MARK(MIDDLES, 2, 1), PAIR(2, 1, 1), SEW_ON_LINE(4), CUT_SQUARES, TRIM_CORNER(4), PRESS_TO(1, 4),
    [HALF_EIGHT] = MARK(BOTH, 2, 1), PAIR(2, 1, 1), STEP(BESIDE_BOTH, 0, 0, 1, SEAM), CUT_SQUARES,
                   STEP(CUT_EACH_APART, 0, 0, 1, NOTHING), PRESS_TO(1, 8),
    [HALF_STRIPS] = PAIR_AT(STRIPS, 2, 1, 1), CUT_PAIRS, JOIN(LONG, 1, 2, 2), PRESS_TO(1, 2),
    [HALF_BIAS] = STEP(JOIN, 1, 2, 1, SEAM), PRESS_OPEN(1), STEP(CUT_ON_POINT, 0, 0, 1, UNFINISHED),
    [QUARTER_PIECES] = JOIN(SHORT, 1, 2, 4), PRESS_TO(1, 4), JOIN(PARTS, 0, 0, 2), PRESS_OPEN(2),
    [QUARTER_TWO] = MARK(LINE, 2, 1), PAIR(2, 1, 1), SEW_BESIDE(1), CUT_APART(1), PRESS_TO(1, 2), MARK(ACROSS, 0, 1),
                    PAIR_AT(HALVES, 0, 0, 1), SEW_BESIDE(1), CUT_APART(1), PRESS_OPEN(2),
    [SPLIT_PIECES] = JOIN(SHORT, 2, 3, 4), PRESS_TO(2, 4), JOIN(LONG, 1, 0, 4), PRESS_TO(1, 4),
    [SPLIT_TWO] = MARK(LINE, 3, 1), PAIR(3, 2, 1), SEW_BESIDE(1), CUT_APART(1), PRESS_TO(2, 2),
                  MARK(ACROSS_EACH, 0, 1), STEP(PAIR_EACH_HALF, 0, 1, 1, OTHER), SEW_BESIDE(2), CUT_APART(2),
                  PRESS_TO(1, 4),
    [GEESE_PIECES] = JOIN(POINT, 2, 1, 4), PRESS_TO(2, 4), JOIN(AGAIN, 2, 0, 4), PRESS_TO(2, 4),
    [GEESE_FOUR] = MARK(LINE, 2, 4), PAIR_AT(OPPOSITE, 2, 1, 1), SEW_BESIDE(1), CUT_APART(1), PRESS_TO(2, 2),
                   PAIR_AT(LAST_CORNER, 2, 0, 2), SEW_BESIDE(2), CUT_APART(2), PRESS_TO(2, 4),
    [GEESE_FLIPPED] = MARK(LINE, 2, 2), PAIR_AT(END, 2, 1, 1), SEW_ON_LINE(1), TRIM_CORNER(1), FOLD_BACK(1),
                      PAIR_AT(OTHER_END, 2, 0, 1), SEW_ON_LINE(1), TRIM_CORNER(1), FOLD_BACK(1),
    [ON_POINT_PIECES] = JOIN(CENTRED, 2, 1, 2), PRESS_TO(2, 2), TRIM_EARS, JOIN(OTHERS, 2, 0, 2), PRESS_TO(2, 2),
    [FLIPPED_FOUR] = MARK(LINE, 2, 4), PAIR_AT(CORNER, 2, 1, 2), SEW_ON_LINE(2), TRIM_CORNER(2), FOLD_BACK(2),
                     PAIR_AT(CORNER_LEFT, 2, 0, 2), SEW_ON_LINE(2), TRIM_CORNER(2), FOLD_BACK(2),
    [LEANING] = MARK_POINTS(CORNERS, 1, 2), MARK_POINTS(CORNERS, 2, 2), JOIN(MARKED, 1, 2, 2), PRESS_TO(1, 2),
    [TURNING] = CUT_TURNING(1),
    [DIAMONDS] = CUT_SLANTED(STRIP),
    [HEXAGON] = CUT_LENGTHS, CUT_POINTS,
    [OCTAGON_PIECES] = CUT_TO_SHAPE, JOIN(EVERY_SECOND, 2, 1, 4), PRESS_TO(2, 4),
    [STAR] = CUT_SLANTED(STRIP), MARK_POINTS(WIDE, 1, 8), MARK_POINTS(INNER, 2, 4), MARK_POINTS(INNER, 3, 4),
             STEP(PARTIAL, 1, 1, 4, SEAM), PRESS_OPEN(4), STEP(PARTIAL_PARTS, 0, 0, 2, SEAM), PRESS_OPEN(2),
             JOIN(THROUGH, 0, 0, 1), PRESS_OPEN(1), SET_IN(SET_IN, 2), PRESS_TO(1, 8), SET_IN(SET_IN_SHORT, 3),
             PRESS_TO(1, 8),
    [KALEIDOSCOPE] = CUT_WEDGES(1), CUT_WEDGES(2), JOIN(WEDGES, 1, 2, 4), PRESS_OPEN(4), JOIN(MIDDLE, 0, 0, 2),
                     PRESS_OPEN(2), JOIN(MIDDLE, 0, 0, 1), PRESS_OPEN(1), JOIN(WIDE_END, 3, 2, 4), PRESS_TO(3, 4),
    [SLICE] = CUT_SLANTED(UNFINISHED),
};

struct course {
    int8_t kind;
    int8_t method;
    uint8_t first;
    uint8_t steps;
    int8_t trim; /* enum muslin_unit_step_kind; 0 where it is not trimmed */
};
#define COURSE(kind, method, first, end, trim) \
    { MUSLIN_UNIT_##kind, MUSLIN_UNIT_METHOD_##method, first, (end) - (first), MUSLIN_UNIT_STEP_TRIM_##trim }
#define UNTRIMMED(kind, method, first, end) \
    { MUSLIN_UNIT_##kind, MUSLIN_UNIT_METHOD_##method, first, (end) - (first), 0 }

static const struct course courses[] = {
    UNTRIMMED(RECTANGLE, PIECES, 0, 0),
    COURSE(HALF_SQUARE, PIECES, HALF_PIECES, HALF_TWO, TO),
    COURSE(HALF_SQUARE, TWO_AT_A_TIME, HALF_TWO, HALF_ROUND, TO),
    COURSE(HALF_SQUARE, FOUR_ALL_ROUND, HALF_ROUND, HALF_MIDPOINTS, TO),
    COURSE(HALF_SQUARE, FOUR_MIDPOINTS, HALF_MIDPOINTS, HALF_EIGHT, TO),
    COURSE(HALF_SQUARE, EIGHT_AT_A_TIME, HALF_EIGHT, HALF_STRIPS, TO),
    COURSE(HALF_SQUARE, STRIPS, HALF_STRIPS, HALF_BIAS, TO),
    UNTRIMMED(HALF_SQUARE, BIAS_STRIPS, HALF_BIAS, QUARTER_PIECES),
    COURSE(QUARTER_SQUARE, PIECES, QUARTER_PIECES, QUARTER_TWO, CROSSED),
    COURSE(QUARTER_SQUARE, TWO_AT_A_TIME, QUARTER_TWO, SPLIT_PIECES, CROSSED),
    COURSE(SPLIT_QUARTER, PIECES, SPLIT_PIECES, SPLIT_TWO, CROSSED),
    COURSE(SPLIT_QUARTER, TWO_AT_A_TIME, SPLIT_TWO, GEESE_PIECES, CROSSED),
    COURSE(FLYING_GEESE, PIECES, GEESE_PIECES, GEESE_FOUR, GEESE),
    COURSE(FLYING_GEESE, FOUR_AT_A_TIME, GEESE_FOUR, GEESE_FLIPPED, GEESE),
    COURSE(FLYING_GEESE, FLIPPED_CORNERS, GEESE_FLIPPED, ON_POINT_PIECES, GEESE),
    COURSE(SQUARE_IN_SQUARE, PIECES, ON_POINT_PIECES, FLIPPED_FOUR, POINTS),
    COURSE(SQUARE_IN_SQUARE, FLIPPED_CORNERS, FLIPPED_FOUR, LEANING, POINTS),
    COURSE(SNOWBALL, FLIPPED_CORNERS, FLIPPED_FOUR, LEANING, CORNERS),
    COURSE(HALF_RECTANGLE, PIECES, LEANING, TURNING, LEANING),
    UNTRIMMED(TRIANGLE_60, STRIPS, TURNING, DIAMONDS),
    UNTRIMMED(DIAMOND_60, STRIPS, DIAMONDS, HEXAGON),
    UNTRIMMED(DIAMOND_45, STRIPS, DIAMONDS, HEXAGON),
    UNTRIMMED(HEXAGON, STRIPS, HEXAGON, OCTAGON_PIECES),
    UNTRIMMED(HALF_HEXAGON, STRIPS, TURNING, DIAMONDS),
    UNTRIMMED(TRAPEZOID, STRIPS, TURNING, DIAMONDS),
    COURSE(OCTAGON, PIECES, OCTAGON_PIECES, STAR, CORNERS),
    COURSE(OCTAGON, FLIPPED_CORNERS, FLIPPED_FOUR, LEANING, CORNERS),
    COURSE(EIGHT_POINTED_STAR, PIECES, STAR, KALEIDOSCOPE, STAR),
    COURSE(KALEIDOSCOPE, PIECES, KALEIDOSCOPE, SLICE, CORNERS),
    UNTRIMMED(SLANTED_SLICE, STRIPS, SLICE, STEPS),
};

/* Every recipe that a spec can ask for has its course. */
static const struct course *course_of(int32_t kind, int32_t method)
{
    const struct course *course = courses;
    while (course->kind != kind || course->method != method)
        course++;
    return course;
}

int32_t msl_unit_pressed_to(int32_t kind, int32_t method, int32_t first, int32_t second)
{
    const struct course *course = course_of(kind, method);
    for (uint32_t i = course->steps; i > 0; i--) { /* the last step that can mean it: inner seams are pressed earlier */
        const struct step *step = &steps[course->first + i - 1];
        int32_t region = step->region; /* of PRESS_TO alone; what is folded back covers its seam */
        if (step->step == MUSLIN_UNIT_STEP_FOLD_BACK)
            region = step->piece;
        if (region != 0 && (region == first) != (region == second))
            return region;
    }
    return 0;
}

/* ---- rows -------------------------------------------------------------------------------------------------------- */

/* A piece of the recipe as it is cut. */
static struct muslin_unit_piece piece_of(int32_t number, const struct muslin_unit_spec *spec)
{
    struct msl_unit_sizes sizes = msl_unit_sizes_of(spec);
    const struct unit_recipe *recipe = msl_unit_recipe_for(spec->kind, spec->method, spec->tip);
    struct muslin_unit_piece piece = { 0 };
    msl_unit_cut_piece(&recipe->row[number - 1], &sizes, spec, &piece);
    return piece;
}

static muslin_len measure_of(const struct step *step, const struct muslin_unit_spec *spec)
{
    switch (step->measure) {
    case SEAM:
        return spec->allowance;
    case UNFINISHED:
        return spec->finished_width + msl_unit_sizes_of(spec).e;
    case STRIP:
        return piece_of(step->piece, spec).cut_height;
    case EDGE:
        return piece_of(step->piece, spec).wide_edge;
    case LENGTH:
        return piece_of(step->piece, spec).cut_width;
    case OTHER:
        return piece_of(step->other, spec).cut_height;
    default:
        return 0;
    }
}

static int32_t cuts_at_an_angle(const struct step *step)
{
    return (step->step >= MUSLIN_UNIT_STEP_CUT_SLANTED && step->step <= MUSLIN_UNIT_STEP_CUT_TO_SHAPE) ||
           step->step >= MUSLIN_UNIT_STEP_CUT_POINTS;
}

static muslin_len nearest(const struct msl_surd *surd)
{
    struct msl_exact exact = msl_surd_exact(surd);
    return exact.floor + exact.upper_half;
}

/* Where the corners of a strip or a square K wide are cut off: a hexagon's K / (2 sqrt 3) along the strip, an octagon's
 * (1 - 1 / sqrt 2) K both ways. */
static muslin_len cut_off_of(const struct step *step, const struct muslin_unit_spec *spec)
{
    if (step->step != MUSLIN_UNIT_STEP_CUT_POINTS && step->step != MUSLIN_UNIT_STEP_CUT_TO_SHAPE)
        return 0;
    muslin_len cut = piece_of(step->piece, spec).cut_height;
    struct msl_surd of_octagon = msl_surd_of(2 * cut, -cut, 2, 2);
    struct msl_surd of_hexagon = msl_surd_of(0, cut, 3, 6);
    return nearest(step->step == MUSLIN_UNIT_STEP_CUT_POINTS ? &of_hexagon : &of_octagon);
}

static struct muslin_unit_step row_of(const struct step *step, const struct muslin_unit_spec *spec)
{
    struct muslin_unit_step row = { 0 };
    row.step = step->step;
    row.piece = step->piece;
    row.other = step->other;
    row.times = step->times;
    row.region = step->region;
    row.measure = measure_of(step, spec);
    row.from_corner = cut_off_of(step, spec);
    if (cuts_at_an_angle(step))
        row.angle = piece_of(step->piece, spec).angle;
    return row;
}

/* ---- trimming ---------------------------------------------------------------------------------------------------- */

/* The raw corner lies e outside the finished one both ways. The seam of a corner, at 45 degrees from a finished edge to
 * the next, goes e farther along it on its way out: corner + E in all. A star's point lies at the finished edge. */
static muslin_len from_corner_of(int32_t trim, const struct muslin_unit_spec *spec)
{
    struct msl_unit_sizes sizes = msl_unit_sizes_of(spec);
    int64_t halves = trim == MUSLIN_UNIT_STEP_TRIM_STAR ? sizes.e : 2 * sizes.e;
    struct msl_surd of_octagon = msl_surd_of(2 * sizes.w + halves, -sizes.w, 2, 2);
    if (trim == MUSLIN_UNIT_STEP_TRIM_LEANING)
        return msl_unit_seam_offset(&sizes);
    if (trim != MUSLIN_UNIT_STEP_TRIM_CORNERS && trim != MUSLIN_UNIT_STEP_TRIM_STAR)
        return 0;
    return sizes.c != 0 ? sizes.c + sizes.e : nearest(&of_octagon);
}

static struct muslin_unit_step trimming_of(const struct course *course, const struct muslin_unit_spec *spec)
{
    struct muslin_unit_step row = { 0 };
    int64_t e = msl_unit_sizes_of(spec).e;
    row.step = course->trim;
    row.times = msl_unit_recipe_for(spec->kind, spec->method, spec->tip)->units;
    row.measure = spec->finished_width + e;
    row.measure_height = spec->finished_height + e;
    row.from_corner = from_corner_of(course->trim, spec);
    if (course->trim == MUSLIN_UNIT_STEP_TRIM_LEANING && row.from_corner == 0)
        row.step = MUSLIN_UNIT_STEP_TRIM_TO;
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
    const struct course *course = course_of(in.kind, in.method);
    size_t needed = (size_t)course->steps + (course->trim != 0);
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed))
        return check.status;
    for (size_t i = 0; i < needed; i++) {
        struct muslin_unit_step row =
            i < course->steps ? row_of(&steps[course->first + i], &in) : trimming_of(course, &in);
        msl_write_row(rows, row_size, i, &row, (uint32_t)sizeof row);
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

const char *muslin_unit_step_sentence(int32_t step)
{
    const int32_t known = (int32_t)(sizeof step_text_at / sizeof *step_text_at);
    return (const char *)&step_texts + step_text_at[step < 0 || step >= known ? 0 : step];
}
