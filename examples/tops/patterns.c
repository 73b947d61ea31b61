/* patterns.c - six invented quilts, each a tree of a few lines. Names, people and stories are made up.
 *
 * SPDX-License-Identifier: MIT */
#include "build.h"

/* ---- the six ---------------------------------------------------------------------------------------------------- */

/* Strip sets of six, cut into segments; every other block turned. */
static void piece_rails(struct design *d)
{
    static const unsigned char tones[6][3] = { { 30, 60, 90 },    { 60, 110, 140 }, { 120, 160, 170 },
                                               { 214, 201, 167 }, { 198, 141, 84 }, { 139, 72, 50 } };
    static const char *const names[6] = { "deep water", "tide", "mist", "sand", "rope", "rust" };
    muslin_id strip = measure(d, "strip", 2 * INCH);
    muslin_id length = times(d, 6, strip);
    muslin_id strips[6];
    for (int i = 0; i < 6; i++) {
        muslin_id fabric = cloth(d, names[i], 90 - 10 * i, tones[i][0], tones[i][1], tones[i][2]);
        strips[i] = patch(d, fabric, strip, length);
    }
    d->top = repeat(d, block(d, join(d, MUSLIN_ACROSS, strips, 6), "rail block"), 4, 5, chessboard);
}

/* Four unlike blocks between sashes with cornerstones, framed. */
static void piece_sampler(struct design *d)
{
    struct muslin_quilt_sashed_spec spec = MUSLIN_QUILT_SASHED_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id green = cloth(d, "nettle", 70, 70, 104, 68);
    muslin_id pale = cloth(d, "paper", 10, 238, 232, 214);
    muslin_id pink = cloth(d, "radish", 45, 188, 82, 98);
    muslin_id soil = cloth(d, "soil", 90, 76, 60, 50);
    muslin_id two = measure(d, "square", 3 * INCH);
    muslin_id g = patch(d, green, two, two);
    muslin_id p = patch(d, pale, two, two);
    muslin_id h = unit(d, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_TWO_AT_A_TIME, two, 0, green, pale);
    muslin_id k = unit(d, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_TWO_AT_A_TIME, two, 0, pink, pale);
    muslin_id q = unit(d, MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_METHOD_PIECES, two, 0, pink, pale);
    muslin_id across = turn(d, q, 1);
    const muslin_id rows[] = { g, p, g, p, g, p, p, across, p, q, g, q, turn(d, h, 3), p, h };
    const muslin_id leaves[] = { k, turn(d, k, 1), p, turn(d, k, 3), turn(d, k, 2), g, p, g, k };
    muslin_id row[5];
    for (int i = 0; i < 5; i++)
        row[i] = join(d, MUSLIN_ACROSS, rows + 3 * i, 3);
    const muslin_id nine[] = { row[0], row[1], row[0] };
    const muslin_id star[] = { row[2], row[3], row[2] };
    const muslin_id whirl[] = { row[4], row[1], turn(d, row[4], 2) };
    const muslin_id four[] = { block(d, join(d, MUSLIN_DOWN, nine, 3), "nine-patch block"),
                               block(d, join(d, MUSLIN_DOWN, star, 3), "star block"),
                               block(d, join(d, MUSLIN_DOWN, whirl, 3), "whirl block"),
                               block(d, grid(d, 3, 3, leaves), "radish block") };
    spec.columns = 2;
    spec.rows = 2;
    spec.sash = measure(d, "sash", 2 * INCH);
    spec.sash_fabric = soil;
    spec.cornerstone = pink;
    spec.frame = 1;
    must(muslin_quilt_sashed(d->quilt, &spec, four, 4, &d->top, &problem), &problem);
}

/* A star of a square in a square, geese and corner squares, twelve times. Every other one is turned a quarter, which
 * looks the same: so the seams of its rows end at those between its neighbours' rows, and all are pressed alike. */
static void piece_stars(struct design *d)
{
    muslin_id night = cloth(d, "night", 95, 34, 40, 64);
    muslin_id brass = cloth(d, "brass", 40, 214, 164, 72);
    muslin_id cream = cloth(d, "cream", 10, 240, 230, 205);
    muslin_id small = measure(d, "corner square", 3 * INCH);
    muslin_id large = times(d, 2, small);
    muslin_id corner = patch(d, night, small, small);
    muslin_id goose = unit(d, MUSLIN_UNIT_FLYING_GEESE, MUSLIN_METHOD_FOUR_AT_A_TIME, large, small, night, brass);
    muslin_id centre = unit(d, MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_METHOD_PIECES, large, 0, cream, brass);
    const muslin_id below[] = { corner, goose, corner };
    const muslin_id between[] = { turn(d, goose, 1), centre, turn(d, goose, 3) };
    muslin_id bottom = join(d, MUSLIN_ACROSS, below, 3);
    const muslin_id rows[] = { turn(d, bottom, 2), join(d, MUSLIN_ACROSS, between, 3), bottom };
    muslin_id lamp = block(d, join(d, MUSLIN_DOWN, rows, 3), "lamp block");
    d->top = border(d, repeat(d, lamp, 3, 4, chessboard), night, measure(d, "border", 3 * INCH), "border");
}

/* Nine-patches on point between plain squares, two borders round them. */
static void piece_kites(struct design *d)
{
    struct muslin_diagonal_spec spec = MUSLIN_DIAGONAL_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id red = cloth(d, "kite red", 60, 176, 58, 46);
    muslin_id sky = cloth(d, "sky", 25, 176, 205, 222);
    muslin_id hay = cloth(d, "hay", 30, 222, 196, 128);
    muslin_id two = measure(d, "square", 2 * INCH);
    muslin_id r = patch(d, red, two, two);
    muslin_id s = patch(d, sky, two, two);
    const muslin_id nine[] = { r, s, r, s, r, s, r, s, r };
    muslin_id kite = block(d, grid(d, 3, 3, nine), "nine-patch block");
    muslin_id plain = patch(d, hay, times(d, 3, two), times(d, 3, two));
    muslin_id blocks[3 * 4 + 2 * 3];
    for (int i = 0; i < 18; i++)
        blocks[i] = i < 12 ? kite : plain;
    spec.columns = d->columns = 3;
    spec.rows = d->rows = 4;
    spec.side_fabric = spec.corner_fabric = sky;
    must(muslin_quilt_diagonal(d->quilt, &spec, blocks, 18, &d->top, &problem), &problem);
    call(d, d->top, "centre on point");
    d->top = border(d, d->top, red, measure(d, "inner border", INCH), "inner border");
    d->top = border(d, d->top, hay, measure(d, "outer border", 4 * INCH), "outer border");
}

/* Log cabins of three rounds, light on two sides, dark on two; every other block upside down: straight furrows. */
static void piece_hearth(struct design *d)
{
    static const int32_t sides[] = { MUSLIN_SIDE_RIGHT, MUSLIN_SIDE_TOP, MUSLIN_SIDE_LEFT, MUSLIN_SIDE_BOTTOM };
    static const int32_t furrows[4] = { 0, 2, 2, 0 };
    struct muslin_log_spec logs[12];
    muslin_id ember = cloth(d, "ember", 50, 190, 64, 40);
    muslin_id light[3];
    muslin_id dark[3];
    light[0] = cloth(d, "ash", 10, 232, 226, 214);
    light[1] = cloth(d, "oat", 15, 220, 206, 178);
    light[2] = cloth(d, "straw", 20, 208, 186, 140);
    dark[0] = cloth(d, "peat", 80, 98, 74, 60);
    dark[1] = cloth(d, "slate", 85, 74, 82, 92);
    dark[2] = cloth(d, "coal", 95, 46, 44, 50);
    muslin_id log = measure(d, "log", INCH + INCH / 2);
    muslin_id centre = measure(d, "centre", 2 * INCH);
    for (int i = 0; i < 12; i++) {
        must(muslin_log_spec_init(&logs[i], sizeof logs[i]), NULL);
        logs[i].fabric = i % 4 < 2 ? light[i / 4] : dark[i / 4];
        logs[i].width = log;
        logs[i].side = sides[i % 4];
    }
    muslin_id hearth = cabin(d, patch(d, ember, centre, centre), logs, 12, "hearth block");
    d->top = repeat(d, block(d, hearth, "hearth block"), 4, 4, furrows);
}

/* A large star in the middle, a plain round, a round of half-squares, a mitred border. */
static void piece_well(struct design *d)
{
    struct muslin_set_in_spec mitred = MUSLIN_SET_IN_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id water = cloth(d, "well water", 80, 40, 84, 110);
    muslin_id lime = cloth(d, "lime wash", 10, 236, 236, 224);
    muslin_id brick = cloth(d, "brick", 55, 168, 88, 66);
    muslin_id moss = cloth(d, "moss", 60, 112, 122, 70);
    muslin_id three = measure(d, "tooth", 3 * INCH);
    muslin_id star = unit(d, MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_METHOD_PIECES, times(d, 4, three), 0, brick, lime);
    muslin_id centre = border(d, star, water, three, "plain border");
    muslin_id tooth = unit(d, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_METHOD_EIGHT_AT_A_TIME, three, 0, moss, lime);
    muslin_id across[6];
    for (int i = 0; i < 6; i++)
        across[i] = i < 3 ? tooth : turn(d, tooth, 3);
    muslin_id teeth = join(d, MUSLIN_ACROSS, across, 6);
    muslin_id corner = patch(d, brick, three, three);
    const muslin_id beside[] = { turn(d, teeth, 1), centre, turn(d, teeth, 3) };
    const muslin_id above[] = { corner, turn(d, teeth, 2), corner };
    muslin_id top = join(d, MUSLIN_ACROSS, above, 3);
    const muslin_id rows[] = { top, join(d, MUSLIN_ACROSS, beside, 3), turn(d, top, 2) };
    call(d, teeth, "strip of teeth");
    mitred.centre = join(d, MUSLIN_DOWN, rows, 3);
    call(d, mitred.centre, "well with its teeth");
    mitred.left_width = mitred.right_width = mitred.top_width = mitred.bottom_width = measure(d, "border", 4 * INCH);
    mitred.left_fabric = mitred.right_fabric = mitred.top_fabric = mitred.bottom_fabric = water;
    must(muslin_quilt_set_in(d->quilt, &mitred, &d->top, &problem), &problem);
}

const struct pattern patterns[] = {
    { "rails", "Ferry Steps", "Odile Marram pieced it from the ends of six summers, one strip for each.", piece_rails },
    { "sampler", "Allotment Notes", "Four beds, four blocks; the sashes are the paths between them.", piece_sampler },
    { "stars", "Lamplighter's Round", "Twelve lamps on the hill road, as the last lamplighter left them.",
      piece_stars },
    { "kites", "A Kite Each", "Nine-patches on point for the children of Saltmeadow Lane.", piece_kites },
    { "hearth", "Sixteen Hearths", "Light and dark sides ploughed into furrows across the top.", piece_hearth },
    { "well", "The Courtyard Well", "A star at the bottom of the well, and the wall that runs round it.", piece_well },
};
const int patterns_count = (int)(sizeof patterns / sizeof patterns[0]);
