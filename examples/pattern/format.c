/* format.c - the pattern file as tables: which members each kind of object has, and what they are. What
 * pattern.schema.json says of a file's form, and nothing else; tests hold the two together.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "inside.h"

/* ---- words, with what the library calls them; the first is the usual one unless README.md says otherwise --------- */

#define LAST { NULL, 0 }

const struct word units_words[] = { { "in", PATTERN_INCH }, { "cm", PATTERN_CM }, { "mm", PATTERN_MM }, LAST };
const struct word paper_words[] = { { "letter", PAPER_LETTER }, { "a4", PAPER_A4 }, LAST };
const struct word kinds_of_unit[] = { { "half-square", MUSLIN_UNIT_HALF_SQUARE },
                                   { "quarter-square", MUSLIN_UNIT_QUARTER_SQUARE },
                                   { "split-quarter", MUSLIN_UNIT_SPLIT_QUARTER },
                                   { "flying-geese", MUSLIN_UNIT_FLYING_GEESE },
                                   { "square-in-square", MUSLIN_UNIT_SQUARE_IN_SQUARE },
                                   { "snowball", MUSLIN_UNIT_SNOWBALL },
                                   { "half-rectangle", MUSLIN_UNIT_HALF_RECTANGLE },
                                   { "octagon", MUSLIN_UNIT_OCTAGON },
                                   { "eight-pointed-star", MUSLIN_UNIT_EIGHT_POINTED_STAR },
                                   { "kaleidoscope", MUSLIN_UNIT_KALEIDOSCOPE },
                                   LAST };
const struct word method_words[] = { { "pieces", MUSLIN_UNIT_METHOD_PIECES },
                                     { "two-at-a-time", MUSLIN_UNIT_METHOD_TWO_AT_A_TIME },
                                     { "four-all-round", MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND },
                                     { "four-midpoints", MUSLIN_UNIT_METHOD_FOUR_MIDPOINTS },
                                     { "eight-at-a-time", MUSLIN_UNIT_METHOD_EIGHT_AT_A_TIME },
                                     { "four-at-a-time", MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME },
                                     { "flipped-corners", MUSLIN_UNIT_METHOD_FLIPPED_CORNERS },
                                     { "bias-strips", MUSLIN_UNIT_METHOD_BIAS_STRIPS },
                                     LAST };
const struct word kinds_of_print[] = { { "any way", MUSLIN_PRINT_NONE },
                                    { "two ways", MUSLIN_PRINT_TWO_WAY },
                                    { "one way", MUSLIN_PRINT_ONE_WAY },
                                    { "stripe along", MUSLIN_PRINT_STRIPE_ALONG },
                                    { "stripe across", MUSLIN_PRINT_STRIPE_ACROSS },
                                    LAST };
const struct word side_words[] = { { "left", MUSLIN_SIDE_LEFT }, { "right", MUSLIN_SIDE_RIGHT },
                                   { "top", MUSLIN_SIDE_TOP }, { "bottom", MUSLIN_SIDE_BOTTOM }, LAST };
const struct word piecing_words[] = { { "where fewer", MUSLIN_STRIP_PIECING_WHERE_FEWER },
                                      { "always", MUSLIN_STRIP_PIECING_ALWAYS },
                                      { "never", MUSLIN_STRIP_PIECING_NEVER },
                                      LAST };
const struct word set_words[] = { { "where fewer", MUSLIN_STRIP_PIECING_WHERE_FEWER },
                                  { "never", MUSLIN_STRIP_PIECING_NEVER },
                                  LAST };
const struct word across_press_words[] = { { "free", MUSLIN_SEAM_PRESS_FREE },
                                           { "left", MUSLIN_SEAM_PRESS_TO_FIRST },
                                           { "right", MUSLIN_SEAM_PRESS_TO_LAST },
                                           { "open", MUSLIN_SEAM_PRESS_OPEN },
                                           LAST };
const struct word down_press_words[] = { { "free", MUSLIN_SEAM_PRESS_FREE },
                                         { "up", MUSLIN_SEAM_PRESS_TO_FIRST },
                                         { "down", MUSLIN_SEAM_PRESS_TO_LAST },
                                         { "open", MUSLIN_SEAM_PRESS_OPEN },
                                         LAST };
const struct word corners_words[] = { { "sides first", CORNERS_SIDES_FIRST },
                                      { "top and bottom first", CORNERS_TOP_FIRST },
                                      { "mitred", CORNERS_MITRED },
                                      { "cornerstones", CORNERS_STONES },
                                      LAST };
const struct word sashes_words[] = { { "outside", MUSLIN_POINT_LAYOUT_SASH_OUTER },
                                     { "cut", MUSLIN_POINT_LAYOUT_SASH_CUT },
                                     { "inside", MUSLIN_POINT_LAYOUT_SASH_INNER },
                                     LAST };
const struct word first_words[] = { { "on its side", MUSLIN_SIXTY_FIRST_ON_SIDE },
                                    { "on its point", MUSLIN_SIXTY_FIRST_ON_POINT },
                                    LAST };
const struct word policy_words[] = { { "exact", MUSLIN_ALLOWANCE_POLICY_EXACT },
                                     { "customary", MUSLIN_ALLOWANCE_POLICY_CUSTOMARY },
                                     { "oversize", MUSLIN_ALLOWANCE_POLICY_OVERSIZE },
                                     LAST };
const struct word ways_to_round[] = { { "up", MUSLIN_DIRECTION_UP }, { "down", MUSLIN_DIRECTION_DOWN },
                                       { "nearest", MUSLIN_DIRECTION_NEAREST }, LAST };
const struct word tip_words[] = { { "sharp", MUSLIN_TIP_SHARP }, { "blunt", MUSLIN_TIP_BLUNT }, LAST };
const struct word pressed_words[] = { { "fixed", 1 }, { "free", 0 }, LAST };
const struct word long_words[] = { { "joined", MUSLIN_LONG_PIECES_JOINED },
                                   { "along", MUSLIN_LONG_PIECES_LENGTHWISE },
                                   LAST };
const struct word kinds_of_join[] = { { "diagonal", MUSLIN_JOIN_DIAGONAL }, { "straight", MUSLIN_JOIN_STRAIGHT },
                                      LAST };

static const struct word batting_words[] = { { "batting", 0 }, { "wadding", 0 }, LAST };
static const struct word sashing_words[] = { { "sashing", 0 }, { "lattice", 0 }, LAST };
static const struct word fabric_words[] = { { "fabric", 0 }, { "cloth", 0 }, { "material", 0 }, LAST };
static const struct word cornerstone_words[] = { { "cornerstone", 0 }, { "post", 0 }, LAST };
static const struct word color_words[] = { { "color", 0 }, { "colour", 0 }, LAST };
static const struct word sold_words[] = { { "yard", 0 }, { "metre", 0 }, LAST };

int32_t value_of_word(json_t *object, const char *member, const struct word *words, int32_t otherwise)
{
    const char *text = json_string_value(json_object_get(object, member));
    for (; text != NULL && words->word != NULL; words++)
        if (strcmp(words->word, text) == 0)
            return words->value;
    return otherwise;
}

/* ---- what members are ------------------------------------------------------------------------------------------- */

#define TEXT(shortest, longest) \
    { .kind = A_TEXT, .least = (shortest), .most = (longest), .what = "a text" }
#define WHOLE(from, to) \
    { .kind = A_WHOLE, .least = (from), .most = (to), .what = "a whole number" }
#define WORD_OF(choice) \
    { .kind = A_WORD, .words = (choice), .what = "a word" }
#define LIST(shortest, longest, item) \
    { .kind = A_LIST, .least = (shortest), .most = (longest), .of = &(item), .what = "a list" }
#define OBJECT_OF(the_kinds) \
    { .kind = AN_OBJECT, .kinds = (the_kinds), .what = "an object, { ... }" }

enum { ANY_NUMBER = INT32_MAX };

static const struct form any_text = TEXT(0, ANY_NUMBER);
static const struct form title = TEXT(1, 120);
static const struct form person = TEXT(0, 120);
static const struct form story = TEXT(0, 2000);
static const struct form short_text = TEXT(0, 40);
static const struct form size_name = TEXT(1, 40);
static const struct form print_name = TEXT(1, 60);
static const struct form cloth_name = TEXT(0, 60);
static const struct form yes_or_no = { .kind = A_SWITCH, .what = "true or false" };
static const struct form date = { .kind = A_DATE, .what = "a date, \"2025-03-09\"" };
static const struct form color = { .kind = A_COLOR, .what = "a colour, \"#c08040\"" };
static const struct form length = { .kind = A_LENGTH, .what = "a length with its unit, \"2 1/2 in\"" };

/* One of nothing is no length. */
static const struct form some_length = { .kind = A_LENGTH, .least = 1,
                                         .what = "a length with its unit that is more than 0" };

static const struct form one = WHOLE(1, 1);
static const struct form one_or_two = WHOLE(1, 2);
static const struct form one_to_three = WHOLE(1, 3);
static const struct form quarters = WHOLE(0, 3);
static const struct form darkness = WHOLE(1, 100);
static const struct form how_many = WHOLE(1, MUSLIN_COUNT_MAX);
static const struct form every = WHOLE(0, MUSLIN_COUNT_MAX);
static const struct form factor = WHOLE(-1000, 1000);
static const struct form per_cent = { .kind = A_SHARE, .least = 0, .most = 50, .what = "a number" };

static const struct form fabric = { .kind = A_NAME, .among = "fabrics", .what = "the name of a fabric" };
static const struct form part = { .kind = A_NAME, .among = "parts", .what = "the name of a part" };
static const struct form count_name = { .kind = A_NAME, .among = "counts", .what = "the name of a count" };
/* A name of a measure, or a length: they begin differently. */
static const struct form measure_text = { .kind = A_NAME, .among = "measures", .of = &length,
                                          .what = "a length with its unit, or the name of a measure" };

static const struct form unit_word = WORD_OF(kinds_of_unit);
static const struct form method_word = WORD_OF(method_words);
static const struct form print_word = WORD_OF(kinds_of_print);
static const struct form side_word = WORD_OF(side_words);
static const struct form piecing_word = WORD_OF(piecing_words);
static const struct form set_word = WORD_OF(set_words);
static const struct form across_press = WORD_OF(across_press_words);
static const struct form down_press = WORD_OF(down_press_words);
static const struct form corners_word = WORD_OF(corners_words);
static const struct form sashes_word = WORD_OF(sashes_words);
static const struct form first_word = WORD_OF(first_words);
static const struct form policy_word = WORD_OF(policy_words);
static const struct form rounding_word = WORD_OF(ways_to_round);
static const struct form tip_word = WORD_OF(tip_words);
static const struct form units_word = WORD_OF(units_words);
static const struct form paper_word = WORD_OF(paper_words);
static const struct form pressed_word = WORD_OF(pressed_words);
static const struct form long_word = WORD_OF(long_words);
static const struct form join_word = WORD_OF(kinds_of_join);
static const struct form batting_word = WORD_OF(batting_words);
static const struct form sashing_word = WORD_OF(sashing_words);
static const struct form fabric_word = WORD_OF(fabric_words);
static const struct form cornerstone_word = WORD_OF(cornerstone_words);
static const struct form color_word = WORD_OF(color_words);
static const struct form sold_word = WORD_OF(sold_words);

/* These hold each other. */
static const struct form measure, node, border;

static const struct form count = { .kind = ONE_OF, .number = &how_many, .text = &count_name,
                                   .what = "a whole number, or the name of a count" };
static const struct form measures = LIST(1, 32, measure);
static const struct form nodes = LIST(1, 1000, node);
static const struct form rows = { .kind = A_TABLE, .least = 1, .most = ANY_NUMBER, .of = &nodes,
                                  .what = "a list of rows" };
static const struct form quarters_row = LIST(1, ANY_NUMBER, quarters);
static const struct form quarters_rows = { .kind = A_TABLE, .least = 1, .most = ANY_NUMBER, .of = &quarters_row,
                                           .what = "a list of rows" };
static const struct form borders = LIST(1, 20, border);
static const struct form any_borders = LIST(0, 20, border);
static const struct form corner = LIST(2, 2, length);
static const struct form corners = LIST(3, 32, corner);
static const struct form unit_fabrics = LIST(2, 3, fabric);

#define NO_MORE { NULL, 0, NULL, NULL }
#define KIND(name, ...) \
    static const struct member name##_members[] = { __VA_ARGS__, NO_MORE }; \
    static const struct kind name = { name##_members, NULL, NULL }
#define KIND_EITHER(name, one_member, other_member, ...) \
    static const struct member name##_members[] = { __VA_ARGS__, NO_MORE }; \
    static const struct kind name = { name##_members, one_member, other_member }
#define OBJECT(name, ...) \
    KIND(name##_object, __VA_ARGS__); \
    static const struct kind *const name##_kinds[] = { &name##_object, NULL }; \
    static const struct form name = OBJECT_OF(name##_kinds)

/* ---- measures --------------------------------------------------------------------------------------------------- */

KIND(times_kind, { "times", NEEDED, &factor, NULL }, { "of", NEEDED, &measure, NULL });
KIND(sum_kind, { "sum", NEEDED, &measures, NULL });
KIND(width_kind, { "width of", NEEDED, &node, NULL });
KIND(height_kind, { "height of", NEEDED, &node, NULL });

static const struct kind *const measure_kinds[] = { &times_kind, &sum_kind, &width_kind, &height_kind, NULL };
static const struct form measure = { .kind = ONE_OF, .text = &measure_text, .kinds = measure_kinds,
                                     .what = "a length with its unit, a measure, a multiple or a sum" };

/* ---- nodes: each kind is told by its first member ---------------------------------------------------------------- */

#define ANY_NODE { "called", 0, &print_name, NULL }, { "block", 0, &yes_or_no, NULL }
#define COLUMNS_AND_ROWS { "columns", NEEDED, &count, NULL }, { "rows", NEEDED, &count, NULL }

KIND_EITHER(patch_kind, "size", "width",
    { "patch", NEEDED, &fabric, NULL }, ANY_NODE,
    { "size", 0, &measure, NULL },
    { "width", 0, &measure, "height" },
    { "height", 0, &measure, "width" });
KIND_EITHER(unit_kind, "size", "width",
    { "unit", NEEDED, &unit_word, NULL }, ANY_NODE,
    { "fabrics", NEEDED, &unit_fabrics, NULL },
    { "method", 0, &method_word, NULL },
    { "hand", 0, &one_or_two, NULL },
    { "size", 0, &measure, NULL },
    { "width", 0, &measure, NULL },
    { "height", 0, &measure, "width" },
    { "corner", 0, &measure, NULL });
OBJECT(shape_piece,
    { "fabric", NEEDED, &fabric, NULL },
    { "corners", NEEDED, &corners, NULL });
static const struct form shape_pieces = LIST(1, 64, shape_piece);
KIND(shape_kind,
    { "shape", NEEDED, &corners, NULL }, ANY_NODE,
    { "pieces", NEEDED, &shape_pieces, NULL },
    { "width", 0, &measure, NULL },
    { "height", 0, &measure, NULL });
KIND(across_kind,
    { "across", NEEDED, &nodes, NULL }, ANY_NODE,
    { "strip piecing", 0, &piecing_word, NULL },
    { "press", 0, &across_press, NULL },
    { "keep order", 0, &yes_or_no, NULL });
KIND(down_kind,
    { "down", NEEDED, &nodes, NULL }, ANY_NODE,
    { "strip piecing", 0, &piecing_word, NULL },
    { "press", 0, &down_press, NULL },
    { "keep order", 0, &yes_or_no, NULL });
KIND(grid_kind,
    { "grid", NEEDED, &rows, NULL }, ANY_NODE);
KIND(turn_kind,
    { "turn", NEEDED, &node, NULL }, ANY_NODE,
    { "quarters", NEEDED, &quarters, NULL });
KIND(mirror_kind,
    { "mirror", NEEDED, &node, NULL }, ANY_NODE);
KIND(repeat_kind,
    { "repeat", NEEDED, &node, NULL }, ANY_NODE, COLUMNS_AND_ROWS,
    { "quarters", 0, &quarters_rows, NULL });
KIND(alternate_kind,
    { "alternate", NEEDED, &rows, NULL }, ANY_NODE, COLUMNS_AND_ROWS);
KIND(sashed_kind,
    { "sashed", NEEDED, &rows, NULL }, ANY_NODE, COLUMNS_AND_ROWS,
    { "sash", NEEDED, &measure, NULL },
    { "fabric", NEEDED, &fabric, NULL },
    { "cornerstone", 0, &fabric, NULL },
    { "frame", 0, &yes_or_no, NULL });
KIND(on_point_kind,
    { "on point", NEEDED, &rows, NULL }, ANY_NODE, COLUMNS_AND_ROWS,
    { "between", 0, &rows, NULL },
    { "side fabric", NEEDED, &fabric, NULL },
    { "corner fabric", NEEDED, &fabric, NULL },
    { "float", 0, &measure, NULL },
    { "sash", 0, &measure, "fabric" },
    { "fabric", 0, &fabric, "sash" },
    { "cornerstone", 0, &fabric, "sash" },
    { "sashes end", 0, &sashes_word, "sash" });
OBJECT(cabin_log,
    { "fabric", NEEDED, &fabric, NULL },
    { "width", NEEDED, &measure, NULL },
    { "side", NEEDED, &side_word, NULL });
static const struct form cabin_logs = LIST(1, 200, cabin_log);
KIND(log_cabin_kind,
    { "log cabin", NEEDED, &node, NULL }, ANY_NODE,
    { "logs", NEEDED, &cabin_logs, NULL });
KIND(bordered_kind,
    { "bordered", NEEDED, &node, NULL }, ANY_NODE,
    { "borders", NEEDED, &borders, NULL });
KIND(pinwheel_kind,
    { "pinwheel", NEEDED, &node, NULL }, ANY_NODE,
    { "top", NEEDED, &node, NULL },
    { "right", NEEDED, &node, NULL },
    { "bottom", NEEDED, &node, NULL },
    { "left", NEEDED, &node, NULL });
KIND(trimmed_kind,
    { "trimmed", NEEDED, &node, NULL }, ANY_NODE,
    { "left", 0, &measure, NULL },
    { "right", 0, &measure, NULL },
    { "top", 0, &measure, NULL },
    { "bottom", 0, &measure, NULL });
KIND(triangles_kind,
    { "fabric", NEEDED, &fabric, NULL },
    { "triangles", NEEDED, &one_to_three, NULL });
static const struct kind *const triangles_kinds[] = { &triangles_kind, NULL };
static const struct form triangle = { .kind = ONE_OF, .text = &fabric, .kinds = triangles_kinds,
                                      .what = "the name of a fabric, or an object with it and how many triangles" };
static const struct form triangle_row = LIST(1, ANY_NUMBER, triangle);
static const struct form triangle_rows = LIST(1, ANY_NUMBER, triangle_row);
KIND(triangle_rows_kind,
    { "triangle rows", NEEDED, &triangle_rows, NULL }, ANY_NODE,
    { "height", NEEDED, &measure, NULL },
    { "end fabric", NEEDED, &fabric, NULL },
    { "first", 0, &first_word, NULL });

static const struct kind *const node_kinds[] = {
    &patch_kind,  &unit_kind,      &shape_kind,  &across_kind,   &down_kind,      &grid_kind,
    &turn_kind,   &mirror_kind,    &repeat_kind, &alternate_kind, &sashed_kind,   &on_point_kind,
    &log_cabin_kind, &bordered_kind, &pinwheel_kind, &trimmed_kind, &triangle_rows_kind, NULL };
static const struct form node = { .kind = ONE_OF, .text = &part, .kinds = node_kinds,
                                  .what = "the name of a part, or an object that says what is sewn" };

/* ---- borders ---------------------------------------------------------------------------------------------------- */

KIND(plain_border_kind,
    { "fabric", NEEDED, &fabric, NULL },
    { "called", 0, &print_name, NULL },
    { "width", NEEDED, &measure, NULL },
    { "corners", 0, &corners_word, NULL },
    { "cornerstone", 0, &fabric, NULL });
OBJECT(border_sides,
    { "left", NEEDED, &node, NULL },
    { "right", NEEDED, &node, NULL },
    { "top", NEEDED, &node, NULL },
    { "bottom", NEEDED, &node, NULL },
    { "corner", NEEDED, &node, NULL });
KIND(pieced_border_kind,
    { "sides", NEEDED, &border_sides, NULL },
    { "called", 0, &print_name, NULL });
static const struct kind *const border_kinds[] = { &plain_border_kind, &pieced_border_kind, NULL };
static const struct form border = { .kind = ONE_OF, .kinds = border_kinds,
                                    .what = "an object with a border's fabric and width, or its pieced sides" };

/* ---- fabrics, how one works, finishing --------------------------------------------------------------------------- */

OBJECT(strips,
    { "cut width", NEEDED, &some_length, NULL },
    { "have", 0, &how_many, NULL });
OBJECT(a_fabric,
    { "name", 0, &print_name, NULL },
    { "color", 0, &color, NULL },
    { "darkness", 0, &darkness, NULL },
    { "usable width", 0, &some_length, NULL },
    { "print", 0, &print_word, NULL },
    { "strips", 0, &strips, NULL });
OBJECT(words,
    { "batting", 0, &batting_word, NULL },
    { "sashing", 0, &sashing_word, NULL },
    { "fabric", 0, &fabric_word, NULL },
    { "cornerstone", 0, &cornerstone_word, NULL },
    { "color", 0, &color_word, NULL },
    { "cloth sold by", 0, &sold_word, NULL });
OBJECT(seam,
    { "allowance", 0, &length, NULL },
    { "take up", 0, &length, NULL },
    { "ease", 0, &length, NULL });
OBJECT(cutting,
    { "policy", 0, &policy_word, NULL },
    { "grid", 0, &length, NULL },
    { "round", 0, &rounding_word, NULL },
    { "trim", 0, &length, NULL },
    { "tips", 0, &tip_word, NULL },
    { "end trim", 0, &length, NULL },
    { "resquare every", 0, &every, NULL },
    { "resquare loss", 0, &length, NULL },
    { "fold clear", 0, &length, NULL },
    { "strip piecing", 0, &set_word, NULL });
OBJECT(pressing,
    { "units", 0, &pressed_word, NULL },
    { "towards dark", 0, &yes_or_no, NULL });
OBJECT(buying,
    { "step", 0, &some_length, NULL },
    { "extra", 0, &length, NULL },
    { "shrinkage", 0, &per_cent, NULL },
    { "straightening", 0, &length, NULL },
    { "long strips", 0, &long_word, NULL });
OBJECT(binding,
    { "fabric", NEEDED, &fabric, NULL },
    { "cut width", 0, &some_length, NULL },
    { "join", 0, &join_word, NULL },
    { "extra", 0, &length, NULL });
OBJECT(batting,
    { "beyond", 0, &length, NULL },
    { "roll width", 0, &some_length, NULL });
OBJECT(backing,
    { "fabric", 0, &fabric, NULL },
    { "name", 0, &cloth_name, NULL },
    { "beyond", 0, &length, NULL },
    { "width", 0, &some_length, NULL },
    { "selvage", 0, &length, NULL },
    { "seam", 0, &length, NULL },
    { "print", 0, &print_word, NULL },
    { "repeat", 0, &length, NULL });
OBJECT(sleeve,
    { "fabric", NEEDED, &fabric, NULL },
    { "depth", 0, &some_length, NULL },
    { "sleeves", 0, &one_or_two, NULL });

/* ---- sizes, and the file ----------------------------------------------------------------------------------------- */

static const struct form size_measures = { .kind = A_MAP, .of = &length, .among = "measures",
                                           .what = "lengths by name" };
static const struct form size_counts = { .kind = A_MAP, .of = &how_many, .among = "counts", .what = "counts by name" };
OBJECT(bed,
    { "width", NEEDED, &some_length, NULL },
    { "length", NEEDED, &some_length, NULL },
    { "depth", 0, &length, NULL });
OBJECT(size,
    { "name", NEEDED, &size_name, NULL },
    { "measures", 0, &size_measures, NULL },
    { "counts", 0, &size_counts, NULL },
    { "bed", 0, &bed, NULL });

static const struct form fabrics = { .kind = A_MAP, .least = 1, .of = &a_fabric, .what = "fabrics by name" };
static const struct form named_measures = { .kind = A_MAP, .of = &measure, .what = "measures by name" };
static const struct form named_counts = { .kind = A_MAP, .of = &how_many, .what = "counts by name" };
static const struct form parts = { .kind = A_MAP, .of = &node, .what = "parts by name" };
static const struct form sizes = LIST(1, 12, size);

KIND(file_kind,
    { "$schema", 0, &any_text, NULL },
    { "muslin_pattern", NEEDED, &one, NULL },
    { "title", NEEDED, &title, NULL },
    { "by", 0, &person, NULL },
    { "story", 0, &story, NULL },
    { "version", 0, &short_text, NULL },
    { "date", 0, &date, NULL },
    { "invented", 0, &yes_or_no, NULL },
    { "units", 0, &units_word, NULL },
    { "paper", 0, &paper_word, NULL },
    { "words", 0, &words, NULL },
    { "seam", 0, &seam, NULL },
    { "cutting", 0, &cutting, NULL },
    { "pressing", 0, &pressing, NULL },
    { "buying", 0, &buying, NULL },
    { "fabrics", NEEDED, &fabrics, NULL },
    { "measures", 0, &named_measures, NULL },
    { "counts", 0, &named_counts, NULL },
    { "parts", 0, &parts, NULL },
    { "top", NEEDED, &node, NULL },
    { "borders", 0, &any_borders, NULL },
    { "tops", 0, &count, NULL },
    { "binding", 0, &binding, NULL },
    { "batting", 0, &batting, NULL },
    { "backing", 0, &backing, NULL },
    { "sleeve", 0, &sleeve, NULL },
    { "sizes", 0, &sizes, NULL });
static const struct kind *const file_kinds[] = { &file_kind, NULL };
const struct form the_file = OBJECT_OF(file_kinds);
const struct form *const node_form = &node;
const struct form *const measure_form = &measure;
