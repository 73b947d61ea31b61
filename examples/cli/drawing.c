/* drawing.c - a unit of one's own shape read, corner by corner, and complaints in the user's terms.
 *
 * SPDX-License-Identifier: MIT */
#include "drawing.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "memory.h"
#include "words.h"

const struct word curve_words[] = {
    { "straight", MUSLIN_CURVE_STRAIGHT }, { "convex", MUSLIN_CURVE_CONVEX }, { "concave", MUSLIN_CURVE_CONCAVE },
    { NULL, 0 }
};

size_t corners_of(const struct drawing *drawing, size_t shape)
{
    return drawing->start[shape + 1] - drawing->start[shape];
}

struct place place_of(const struct drawing *drawing, int64_t row)
{
    struct place place = { 0, 0, 0 };
    while (place.shape < drawing->pieces && (int64_t)drawing->start[place.shape + 1] <= row)
        place.shape++;
    place.corner = (size_t)row - drawing->start[place.shape] + 1;
    place.next = place.corner % corners_of(drawing, place.shape) + 1;
    return place;
}

/* "The outline", "Piece 2" */
static void name_shape(size_t shape, char *buf, size_t cap)
{
    if (shape == OUTLINE)
        snprintf(buf, cap, "The outline");
    else
        snprintf(buf, cap, "Piece %zu", shape);
}

static const char *option_of_shape(size_t shape)
{
    return shape == OUTLINE ? "outline" : "piece";
}

/* ---- one corner as people write it ------------------------------------------------------------------------------ */

#define CORNER_WORDS 24
static const char blanks[] = " \t\r\n";

struct corner_text {
    const char *text;
    size_t length;
    size_t shape;
    size_t corner;
};

/* The words of a corner: where each begins and ends. */
struct corner_words {
    size_t n;
    const char *begin[CORNER_WORDS];
    const char *end[CORNER_WORDS];
};

/* Sets the failure; always false. `reason` follows what was written. */
static bool refuse_corner(struct desk *desk, const struct corner_text *corner, const char *reason)
{
    char name[40];
    name_shape(corner->shape, name, sizeof name);
    failure_say(desk->failure, option_of_shape(corner->shape), "%s, corner %zu: \"%.*s\" %s", name, corner->corner,
                (int)(corner->length < 60 ? corner->length : 60), corner->text, reason);
    return false;
}

static bool is_no_corner(struct desk *desk, const struct corner_text *corner)
{
    return refuse_corner(desk, corner, desk->common.decimal_comma
                                           ? "is no corner. Write how far right and how far up, such as \"2,5 3\", and "
                                             "where an arc starts also \"convex\" or \"concave\", its centre and its "
                                             "radius; between corners stands a semicolon."
                                           : "is no corner. Write how far right and how far up, such as \"2 1/2 3\", "
                                             "and where an arc starts also \"convex\" or \"concave\", its centre and "
                                             "its radius; between corners stands a comma.");
}

static bool split_corner(const struct corner_text *corner, struct corner_words *words)
{
    const char *end = corner->text + corner->length;
    const char *at = corner->text;
    for (words->n = 0;; words->n++) {
        while (at < end && strchr(blanks, *at) != NULL)
            at++;
        if (at == end)
            return true;
        if (words->n == CORNER_WORDS)
            return false;
        words->begin[words->n] = at;
        while (at < end && strchr(blanks, *at) == NULL)
            at++;
        words->end[words->n] = at;
    }
}

/* Reads the words from `from` up to `to` as one length. A number without a unit takes *unit, which becomes the unit of
 * this one. */
static bool read_words(const struct desk *desk, const struct corner_words *words, size_t from, size_t to,
                       int32_t *unit, muslin_len *out)
{
    struct muslin_parse_spec spec = MUSLIN_PARSE_SPEC_INIT;
    struct muslin_parsed parsed = { .size = sizeof parsed };
    spec.default_unit = *unit;
    spec.decimal_sign = desk->common.decimal_comma ? ',' : '.';
    size_t length = (size_t)(words->end[to - 1] - words->begin[from]);
    if (muslin_length_parse(words->begin[from], length, &spec, &parsed, NULL) != MUSLIN_OK)
        return false;
    *unit = parsed.unit;
    *out = parsed.value;
    return true;
}

/* The words from `from` on as lengths that end before ends[0], ends[1] ... "4 6 cm" are 4 cm and 6 cm: a length without
 * a unit has that of the one behind it. */
static bool read_lengths(const struct desk *desk, const struct corner_words *words, size_t from, const size_t *ends,
                         size_t count, muslin_len *out)
{
    int32_t unit = desk->common.bare_unit;
    for (size_t i = count; i-- > 0;)
        if (!read_words(desk, words, i == 0 ? from : ends[i - 1], ends[i], &unit, &out[i]))
            return false;
    return true;
}

/* Lengths have blanks inside and between them: all ways to share out the words [from, to) among two or three lengths
 * are tried. How many can be read; `out` is the last of them. */
static size_t find_lengths(const struct desk *desk, const struct corner_words *words, size_t from, size_t to,
                           size_t count, muslin_len *out)
{
    size_t found = 0;
    muslin_len read[3];
    for (size_t first = from + 1; first < to; first++) {
        size_t last = count == 2 ? to : to - 1; /* two lengths: the second one always takes the rest */
        for (size_t second = count == 2 ? to : first + 1; second <= last; second++) {
            const size_t ends[] = { first, second, to };
            if (!read_lengths(desk, words, from, ends, count, read))
                continue;
            memcpy(out, read, count * sizeof read[0]);
            found++;
        }
    }
    return found;
}

/* One word for each length, and yet one cannot be read: the library says what is wrong with it. */
static bool complain_of_word(struct desk *desk, const struct corner_text *corner, const struct corner_words *words,
                             size_t from, size_t to)
{
    char name[40], said[400];
    muslin_len value;
    name_shape(corner->shape, name, sizeof name);
    for (size_t i = from; i < to; i++) {
        if (read_length(desk, option_of_shape(corner->shape), words->begin[i],
                        (size_t)(words->end[i] - words->begin[i]), &value))
            continue;
        snprintf(said, sizeof said, "%.390s", desk->failure->sentence);
        snprintf(desk->failure->sentence, sizeof desk->failure->sentence, "%s, corner %zu: %s", name, corner->corner,
                 said);
        return false;
    }
    return is_no_corner(desk, corner);
}

static bool read_part(struct desk *desk, const struct corner_text *corner, const struct corner_words *words,
                      size_t from, size_t to, size_t count, muslin_len *out)
{
    size_t found = find_lengths(desk, words, from, to, count, out);
    if (found == 1)
        return true;
    if (found > 1)
        return refuse_corner(desk, corner, "can be read in more than one way. Tie each length together: 2-1/2 instead "
                                           "of 2 1/2, 27 in instead of 2 ft 3 in.");
    return to - from == count ? complain_of_word(desk, corner, words, from, to) : is_no_corner(desk, corner);
}

/* The word that names an arc, or how many words there are. */
static size_t find_arc(const struct corner_words *words, int32_t *curve)
{
    *curve = MUSLIN_CURVE_STRAIGHT;
    for (size_t i = 0; i < words->n; i++) {
        char word[16];
        snprintf(word, sizeof word, "%.*s", (int)(words->end[i] - words->begin[i]), words->begin[i]);
        const struct word *known = find_word(curve_words, word);
        if (known == NULL || known->value == MUSLIN_CURVE_STRAIGHT)
            continue;
        *curve = known->value;
        return i;
    }
    return words->n;
}

static bool read_corner(struct desk *desk, const struct corner_text *text, struct muslin_corner_spec *corner)
{
    struct corner_words words;
    muslin_len at[2], arc[3] = { 0 };
    if (!split_corner(text, &words))
        return is_no_corner(desk, text);
    size_t end = find_arc(&words, &corner->curve);
    if (!read_part(desk, text, &words, 0, end, 2, at))
        return false;
    corner->x = at[0];
    corner->y = at[1];
    if (corner->curve == MUSLIN_CURVE_STRAIGHT)
        return true;
    if (!read_part(desk, text, &words, end + 1, words.n, 3, arc))
        return false;
    corner->centre_x = arc[0];
    corner->centre_y = arc[1];
    corner->radius = arc[2];
    return true;
}

/* ---- the drawing as people write it ----------------------------------------------------------------------------- */

/* Where an arc ends or starts the library knows only sharp corners. */
static void set_tips(struct drawing *drawing, size_t shape, int32_t tip)
{
    struct muslin_corner_spec *rows = drawing->rows + drawing->start[shape];
    size_t count = drawing->n - drawing->start[shape];
    for (size_t i = 0; i < count; i++)
        if (rows[i].curve == MUSLIN_CURVE_STRAIGHT &&
            rows[(i + count - 1) % count].curve == MUSLIN_CURVE_STRAIGHT)
            rows[i].tip = tip;
}

bool read_shape(struct desk *desk, const char *text, size_t shape, const struct muslin_corner_spec *model,
                struct drawing *drawing)
{
    const char *between = desk->common.decimal_comma ? ";" : ",";
    struct corner_text corner = { text, 0, shape, 0 };
    drawing->start[shape] = drawing->n;
    for (;; corner.text += corner.length + 1) {
        struct muslin_corner_spec row = *model;
        corner.text += strspn(corner.text, blanks);
        corner.length = strcspn(corner.text, between);
        corner.corner++;
        row.piece = shape == OUTLINE ? MUSLIN_SHAPE_OUTLINE : (int32_t)shape - 1;
        row.tip = MUSLIN_CORNER_TIP_SHARP;
        if (!read_corner(desk, &corner, &row))
            return false;
        if (drawing->n == MUSLIN_SHAPE_CORNERS_MAX)
            return refuse_corner(desk, &corner, "is one corner too many: a drawing has at most 1024.");
        drawing->rows[drawing->n++] = row;
        if (corner.text[corner.length] == '\0')
            break;
    }
    set_tips(drawing, shape, model->tip);
    drawing->start[shape + 1] = drawing->n;
    return true;
}

/* ---- complaints in the user's terms ----------------------------------------------------------------------------- */

static bool is_about_a_corner(int32_t argument)
{
    return argument == MUSLIN_ARG_CORNER_ROW || argument == MUSLIN_ARG_PLACE || argument == MUSLIN_ARG_CENTRE ||
           argument == MUSLIN_ARG_RADIUS;
}

/* How to take the corners of a shape. Backwards an arc that bulged out of it bulges in; but who drew it clockwise may
 * well have meant the words as they stand. */
enum way { AS_DRAWN, BACKWARDS, BACKWARDS_AS_WORDED };

static int32_t curve_taken(int32_t curve, enum way way)
{
    if (way != BACKWARDS || curve == MUSLIN_CURVE_STRAIGHT)
        return curve;
    return curve == MUSLIN_CURVE_CONVEX ? MUSLIN_CURVE_CONCAVE : MUSLIN_CURVE_CONVEX;
}

/* Is this shape, taken alone, one that the library knows? It is when it fills an outline like itself. */
static bool is_shape(const struct drawing *drawing, size_t shape, enum way way)
{
    size_t count = corners_of(drawing, shape);
    const struct muslin_corner_spec *from = drawing->rows + drawing->start[shape];
    struct muslin_corner_spec *twice = need_memory(2 * count * sizeof *twice);
    struct muslin_shape out = { .size = sizeof out };
    for (size_t i = 0; i < 2 * count; i++) {
        size_t corner = way == AS_DRAWN ? i % count : count - 1 - i % count;
        const struct muslin_corner_spec *edge = &from[way == AS_DRAWN ? corner : (corner + count - 1) % count];
        twice[i] = *edge;
        twice[i].piece = i < count ? MUSLIN_SHAPE_OUTLINE : 0;
        twice[i].curve = curve_taken(edge->curve, way);
        twice[i].x = from[corner].x;
        twice[i].y = from[corner].y;
    }
    bool fine = muslin_shape_check(twice, sizeof *twice, 2 * count, &out, NULL) == MUSLIN_OK;
    free(twice);
    return fine;
}

/* Why the library knows no such shape. Alone it may only run the wrong way; one that is a shape, but has no template,
 * has an arc that meets a straight edge at a slant. */
static const char *reason_of(const struct drawing *drawing, size_t shape, muslin_status status)
{
    if (status == MUSLIN_ERR_SHAPE &&
        (is_shape(drawing, shape, BACKWARDS) || is_shape(drawing, shape, BACKWARDS_AS_WORDED)))
        return "This shape runs clockwise: name its corners in the other order.";
    if (status == MUSLIN_ERR_SHAPE && is_shape(drawing, shape, AS_DRAWN))
        return "An arc starts or ends here, and its cut corner is not worked out: the straight edge beside it must run "
               "level, upright or towards the arc's centre, and two arcs must still meet when cut.";
    return muslin_status_sentence(status);
}

bool worked_on(struct desk *desk, const struct drawing *drawing, muslin_status status)
{
    if (worked(desk, status))
        return true;
    char name[40], reason[400];
    struct failure *failure = desk->failure;
    if (!is_about_a_corner(failure->argument))
        return false;
    struct place place = place_of(drawing, failure->at);
    bool is_row = failure->argument == MUSLIN_ARG_CORNER_ROW;
    name_shape(place.shape, name, sizeof name);
    snprintf(reason, sizeof reason, "%.390s", is_row ? reason_of(drawing, place.shape, status) : failure->sentence);
    if (status == MUSLIN_ERR_NOT_TILED)
        snprintf(failure->sentence, sizeof failure->sentence, "%s, the edge from corner %zu to corner %zu: %s", name,
                 place.corner, place.next, reason);
    else
        snprintf(failure->sentence, sizeof failure->sentence, "%s, corner %zu: %s", name, place.corner, reason);
    snprintf(failure->option, sizeof failure->option, "%s", option_of_shape(place.shape));
    return false;
}
