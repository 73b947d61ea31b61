/* words.c - the words that choices are written in, and the nearest word to a slip.
 *
 * SPDX-License-Identifier: MIT */
#include "words.h"

#include <stdio.h>
#include <string.h>

const struct word rounding_words[] = { { "up", MUSLIN_DIRECTION_UP },
                                       { "down", MUSLIN_DIRECTION_DOWN },
                                       { "nearest", MUSLIN_DIRECTION_NEAREST },
                                       { NULL, 0 } };
const struct word turning_words[] = {
    { "none", MUSLIN_TURNING_NONE }, { "quarter", MUSLIN_TURNING_QUARTER_ALTERNATE },
    { "half", MUSLIN_TURNING_HALF_ALTERNATE }, { NULL, 0 }
};
const struct word nesting_words[] = {
    { "turn", MUSLIN_NESTING_TURN }, { "name", MUSLIN_NESTING_NAME }, { NULL, 0 }
};
const struct word join_words[] = {
    { "butted", MUSLIN_JOIN_BUTTED }, { "straight", MUSLIN_JOIN_STRAIGHT }, { "diagonal", MUSLIN_JOIN_DIAGONAL },
    { "bias-ends", MUSLIN_JOIN_BIAS_ENDS }, { NULL, 0 }
};
const struct word border_words[] = {
    { "sides-first", MUSLIN_BORDER_STYLE_SIDES_FIRST }, { "top-first", MUSLIN_BORDER_STYLE_TOP_FIRST },
    { "cornerstones", MUSLIN_BORDER_STYLE_CORNERSTONES }, { "mitred", MUSLIN_BORDER_STYLE_MITRED }, { NULL, 0 }
};
const struct word fold_words[] = {
    { "double", MUSLIN_FOLD_DOUBLE }, { "single", MUSLIN_FOLD_SINGLE }, { NULL, 0 }
};
const struct word print_words[] = {
    { "none", MUSLIN_PRINT_NONE }, { "two-way", MUSLIN_PRINT_TWO_WAY }, { "one-way", MUSLIN_PRINT_ONE_WAY },
    { "stripe-along", MUSLIN_PRINT_STRIPE_ALONG }, { "stripe-across", MUSLIN_PRINT_STRIPE_ACROSS }, { NULL, 0 }
};
const struct word layout_words[] = { { "one-width", MUSLIN_BACKING_LAYOUT_ONE_WIDTH },
                                     { "one-width-turned", MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED },
                                     { "seams-along", MUSLIN_BACKING_LAYOUT_SEAMS_ALONG },
                                     { "seams-across", MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS },
                                     { "centre-along", MUSLIN_BACKING_LAYOUT_CENTRE_ALONG },
                                     { "centre-across", MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS },
                                     { "insert-along", MUSLIN_BACKING_LAYOUT_INSERT_ALONG },
                                     { "insert-across", MUSLIN_BACKING_LAYOUT_INSERT_ACROSS },
                                     { NULL, 0 } };
const struct word edge_words[] = {
    { "straight", MUSLIN_EDGE_STRAIGHT }, { "pinked-tips", MUSLIN_EDGE_PINKED_TIPS },
    { "pinked-valleys", MUSLIN_EDGE_PINKED_VALLEYS }, { NULL, 0 }
};
const struct word align_words[] = {
    { "tips", MUSLIN_EDGE_PINKED_TIPS }, { "valleys", MUSLIN_EDGE_PINKED_VALLEYS }, { NULL, 0 }
};
const struct word care_words[] = {
    { "unwashed", MUSLIN_CARE_UNWASHED }, { "washed", MUSLIN_CARE_WASHED }, { NULL, 0 }
};
const struct word governing_words[] = {
    { "batting", MUSLIN_GOVERNING_RULE_BATTING }, { "fabric", MUSLIN_GOVERNING_RULE_FABRIC },
    { "larger", MUSLIN_GOVERNING_RULE_LARGER }, { "smaller", MUSLIN_GOVERNING_RULE_SMALLER }, { NULL, 0 }
};

const struct word unit_kind_words[] = {
    { "rectangle", MUSLIN_UNIT_RECTANGLE }, { "half-square", MUSLIN_UNIT_HALF_SQUARE },
    { "quarter-square", MUSLIN_UNIT_QUARTER_SQUARE }, { "split-quarter", MUSLIN_UNIT_SPLIT_QUARTER },
    { "flying-geese", MUSLIN_UNIT_FLYING_GEESE }, { "square-in-square", MUSLIN_UNIT_SQUARE_IN_SQUARE },
    { "snowball", MUSLIN_UNIT_SNOWBALL }, { "half-rectangle", MUSLIN_UNIT_HALF_RECTANGLE },
    { "triangle-60", MUSLIN_UNIT_TRIANGLE_60 }, { "diamond-60", MUSLIN_UNIT_DIAMOND_60 },
    { "diamond-45", MUSLIN_UNIT_DIAMOND_45 }, { "hexagon", MUSLIN_UNIT_HEXAGON },
    { "half-hexagon", MUSLIN_UNIT_HALF_HEXAGON }, { "trapezoid", MUSLIN_UNIT_TRAPEZOID },
    { "octagon", MUSLIN_UNIT_OCTAGON }, { "eight-pointed-star", MUSLIN_UNIT_EIGHT_POINTED_STAR },
    { "kaleidoscope", MUSLIN_UNIT_KALEIDOSCOPE }, { "slanted-slice", MUSLIN_UNIT_SLANTED_SLICE }, { NULL, 0 }
};
const struct word unit_method_words[] = {
    { "pieces", MUSLIN_UNIT_METHOD_PIECES }, { "two-at-a-time", MUSLIN_UNIT_METHOD_TWO_AT_A_TIME },
    { "four-all-round", MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND }, { "four-midpoints", MUSLIN_UNIT_METHOD_FOUR_MIDPOINTS },
    { "eight-at-a-time", MUSLIN_UNIT_METHOD_EIGHT_AT_A_TIME }, { "four-at-a-time", MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME },
    { "flipped-corners", MUSLIN_UNIT_METHOD_FLIPPED_CORNERS }, { "strips", MUSLIN_UNIT_METHOD_STRIPS },
    { "bias-strips", MUSLIN_UNIT_METHOD_BIAS_STRIPS }, { NULL, 0 }
};
const struct word again_words[] = {
    { "no", MUSLIN_CUT_AGAIN_NO }, { "once on the diagonal", MUSLIN_CUT_AGAIN_ONCE },
    { "on both diagonals", MUSLIN_CUT_AGAIN_TWICE }, { NULL, 0 }
};

const struct word *find_word(const struct word *words, const char *written)
{
    for (const struct word *word = words; word->word != NULL; word++)
        if (strcmp(word->word, written) == 0)
            return word;
    return NULL;
}

const char *word_of(const struct word *words, int32_t value)
{
    for (const struct word *word = words; word->word != NULL; word++)
        if (word->value == value)
            return word->word;
    return "";
}

void list_words(const struct word *words, char *buf, size_t cap)
{
    size_t used = 0;
    buf[0] = '\0';
    for (const struct word *word = words; word->word != NULL && used < cap; word++) {
        const char *between = word == words ? "" : word[1].word == NULL ? " or " : ", ";
        used += (size_t)snprintf(buf + used, cap - used, "%s%s", between, word->word);
    }
}

/* ---- the nearest word ------------------------------------------------------------------------------------------- */

#define WORD_MAX 40

static size_t least(size_t a, size_t b)
{
    return a < b ? a : b;
}

/* Letters to change, add, drop or swap with their neighbour to turn one word into the other (optimal string alignment
 * distance), kept for the last two letters of `a` and the one in hand. */
static size_t changes_between(const char *a, const char *b)
{
    size_t rows[3][WORD_MAX + 1];
    size_t height = strlen(a);
    size_t width = strlen(b);
    if (height > WORD_MAX || width > WORD_MAX)
        return WORD_MAX;
    for (size_t i = 0; i <= height; i++) {
        size_t *row = rows[i % 3];
        row[0] = i;
        for (size_t j = 1; j <= width; j++) {
            if (i == 0) {
                row[j] = j;
                continue;
            }
            const size_t *above = rows[(i - 1) % 3];
            row[j] = least(above[j - 1] + (a[i - 1] != b[j - 1]), least(above[j], row[j - 1]) + 1);
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = least(row[j], rows[(i - 2) % 3][j - 2] + 1);
        }
    }
    return rows[height % 3][width];
}

/* A suggestion must keep at least half of the word. */
struct nearest nearest_start(const char *written)
{
    return (struct nearest){ .written = written, .word = NULL, .changes = strlen(written) / 2 + 1 };
}

void nearest_offer(struct nearest *nearest, const char *word)
{
    size_t changes = changes_between(nearest->written, word);
    if (changes < nearest->changes) {
        nearest->changes = changes;
        nearest->word = word;
    }
}
