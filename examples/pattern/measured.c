/* measured.c - lengths in words, in the pattern's units.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "worked.h"

/* A length on some marks of a ruler: 1 / `parts` in, or so many decimals of a centimetre or millimetre. */
struct marks {
    int32_t style;
    int32_t parts;
    int32_t decimals;
};

/* The marks that one looks for, and the finer ones on which a length may lie exactly. */
static const struct marks usual[] = { { 0, 1, 0 },
                                      { MUSLIN_STYLE_INCH_FRACTION, 8, 0 },
                                      { MUSLIN_STYLE_CM, 1, 1 },
                                      { MUSLIN_STYLE_MM, 1, 0 } };
static const struct marks finer[] = { { 0, 1, 0 },
                                      { MUSLIN_STYLE_INCH_FRACTION, 16, 0 },
                                      { MUSLIN_STYLE_CM, 1, 2 },
                                      { MUSLIN_STYLE_MM, 1, 1 } };

static bool write_on(const struct marks *marks, muslin_len length, int32_t direction, char text[WORD_ROOM])
{
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    int32_t exact;
    spec.style = marks->style;
    spec.denominator = marks->parts;
    spec.decimals = marks->decimals;
    spec.direction = direction;
    must(muslin_length_format(length, &spec, text, WORD_ROOM, NULL, &exact, NULL));
    return exact != 0;
}

/* Beyond this no one measures to half a millimetre. */
enum { FINE_MOST = 500 * MUSLIN_TICKS_PER_MM };

/* On the marks that show it exactly, or on the usual ones. */
static bool write_length(const struct worked *worked, muslin_len length, int32_t direction, char text[WORD_ROOM])
{
    const enum pattern_units units = worked->design->pattern->units;
    const bool is_fine = units == PATTERN_INCH || length <= FINE_MOST;
    return write_on(&usual[units], length, direction, text) ||
           (is_fine && write_on(&finer[units], length, direction, text)) ||
           write_on(&usual[units], length, direction, text);
}

const char *measured(const struct worked *worked, muslin_len length, char text[WORD_ROOM])
{
    char number[WORD_ROOM];
    bool exact = write_length(worked, length, MUSLIN_DIRECTION_NEAREST, number);
    snprintf(text, WORD_ROOM, "%s%.80s", exact ? "" : "about ", number);
    return text;
}

static muslin_len up_to(muslin_len length, muslin_len grid)
{
    struct muslin_rounding_spec spec = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { .size = (uint32_t)sizeof rounded };
    spec.grid = grid;
    spec.direction = MUSLIN_DIRECTION_UP;
    must(muslin_length_snap(length, &spec, &rounded));
    return rounded.value;
}

muslin_len to_mark(const struct worked *worked, muslin_len length)
{
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    char text[WORD_ROOM];
    const bool is_there = write_length(worked, length, MUSLIN_DIRECTION_UP, text);
    return is_there ? length : up_to(length, in_inches ? MUSLIN_TICKS_PER_INCH / 8 : MUSLIN_TICKS_PER_MM);
}

const char *measured_fine(const struct worked *worked, muslin_len length, char text[WORD_ROOM])
{
    static const struct marks sixty_fourths = { MUSLIN_STYLE_INCH_FRACTION, 64, 0 };
    static const struct marks hundredths = { MUSLIN_STYLE_MM, 1, 2 };
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    char number[WORD_ROOM];
    bool exact = write_on(in_inches ? &sixty_fourths : &hundredths, length, MUSLIN_DIRECTION_NEAREST, number);
    snprintf(text, WORD_ROOM, "%s%.80s", exact ? "" : "about ", number);
    return text;
}

/* What all segments of a set are longer by when each is cut so wide. */
static muslin_len longer_by(const struct muslin_stripset *set, muslin_len cut)
{
    const muslin_len lengths[] = { cut, set->segment_cut };
    const int64_t counts[] = { set->segments_per_set, -set->segments_per_set };
    muslin_len more;
    must(muslin_length_dot(lengths, counts, 2, &more));
    return more;
}

muslin_len segment_mark(const struct worked *worked, const struct muslin_stripset *set)
{
    static const muslin_len inch_marks[] = { MUSLIN_TICKS_PER_INCH / 16, MUSLIN_TICKS_PER_INCH / 32,
                                             MUSLIN_TICKS_PER_INCH / 64 };
    static const muslin_len metric_marks[] = { MUSLIN_TICKS_PER_MM / 2, MUSLIN_TICKS_PER_MM / 10 };
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    const muslin_len *marks = in_inches ? inch_marks : metric_marks;
    const size_t count = in_inches ? 3 : 2;
    muslin_len cut = to_mark(worked, set->segment_cut);
    for (size_t i = 0; longer_by(set, cut) > set->shorter_by; i++) {
        if (i == count)
            return set->segment_cut;
        cut = up_to(set->segment_cut, marks[i]);
    }
    return cut;
}

muslin_len set_slack(const struct worked *worked, const struct muslin_stripset *set)
{
    return set->shorter_by - longer_by(set, segment_mark(worked, set));
}

const char *segment_measured(const struct worked *worked, const struct muslin_stripset *set, char text[WORD_ROOM])
{
    const muslin_len cut = segment_mark(worked, set);
    return to_mark(worked, cut) == cut ? measured(worked, cut, text) : measured_fine(worked, cut, text);
}

const char *at_least(const struct worked *worked, muslin_len length, char text[WORD_ROOM])
{
    write_length(worked, length, MUSLIN_DIRECTION_UP, text);
    return text;
}

const char *at_most(const struct worked *worked, muslin_len length, char text[WORD_ROOM])
{
    write_length(worked, length, MUSLIN_DIRECTION_DOWN, text);
    return text;
}

const char *measured_by(const struct worked *worked, muslin_len width, muslin_len height, char text[WORD_ROOM])
{
    char across[WORD_ROOM];
    char down[WORD_ROOM];
    bool exact = write_length(worked, width, MUSLIN_DIRECTION_NEAREST, across);
    exact = write_length(worked, height, MUSLIN_DIRECTION_NEAREST, down) && exact;
    snprintf(text, WORD_ROOM, "%s%.40s x %.40s", exact ? "" : "about ", across, down);
    return text;
}

const char *at_least_by(const struct worked *worked, muslin_len width, muslin_len height, char text[WORD_ROOM])
{
    char across[WORD_ROOM];
    char down[WORD_ROOM];
    write_length(worked, width, MUSLIN_DIRECTION_UP, across);
    write_length(worked, height, MUSLIN_DIRECTION_UP, down);
    snprintf(text, WORD_ROOM, "%.40s x %.40s", across, down);
    return text;
}

/* Sides are cut from a panel; all others are as wide as the cloth, or half of it. */
const char *panel_size(const struct worked *worked, const struct muslin_panel *panel, char text[WORD_ROOM])
{
    char across[WORD_ROOM];
    char along[WORD_ROOM];
    if (panel->role == MUSLIN_PANEL_ROLE_SIDE)
        at_least(worked, panel->cut_width, across);
    else
        measured(worked, panel->cut_width, across);
    snprintf(text, WORD_ROOM, "%.45s x %.40s", across, at_least(worked, panel->cut_length, along));
    return text;
}

const char *package_size(const struct worked *worked, char text[WORD_ROOM])
{
    static const struct marks whole = { MUSLIN_STYLE_CM, 1, 0 };
    const struct muslin_batting *batting = &worked->batting;
    char across[WORD_ROOM];
    char down[WORD_ROOM];
    if (worked->design->pattern->units == PATTERN_INCH)
        return measured_by(worked, batting->package_width, batting->package_length, text);
    bool exact = write_on(&whole, batting->package_width, MUSLIN_DIRECTION_NEAREST, across);
    exact = write_on(&whole, batting->package_length, MUSLIN_DIRECTION_NEAREST, down) && exact;
    snprintf(text, WORD_ROOM, "%s%.40s x %.40s", exact ? "" : "about ", across, down);
    return text;
}

/* "130 cm" as "1.3 m". */
static void write_metres(muslin_len length, char text[WORD_ROOM])
{
    static const struct marks whole = { MUSLIN_STYLE_CM, 1, 0 };
    write_on(&whole, length, MUSLIN_DIRECTION_UP, text);
    const long centimetres = strtol(text, NULL, 10);
    int used = snprintf(text, WORD_ROOM, "%ld.%02ld", centimetres / 100, centimetres % 100);
    while (text[used - 1] == '0')
        used--;
    used -= text[used - 1] == '.';
    snprintf(text + used, (size_t)(WORD_ROOM - used), " m");
}

const char *to_buy(const struct worked *worked, muslin_len length, char text[WORD_ROOM])
{
    static const struct marks eighths = { MUSLIN_STYLE_YARD_FRACTION, 8, 0 };
    const muslin_len bought = up_to(length, worked->design->buying.step);
    if (is_sold_by_metre(worked->design->pattern))
        write_metres(bought, text);
    else
        write_on(&eighths, bought, MUSLIN_DIRECTION_UP, text);
    return text;
}

const char *in_whole_yards(const struct worked *worked, muslin_len length, char text[WORD_ROOM])
{
    static const struct marks whole = { MUSLIN_STYLE_YARD_FRACTION, 1, 0 };
    if (is_sold_by_metre(worked->design->pattern))
        write_metres(up_to(length, 1000 * MUSLIN_TICKS_PER_MM), text);
    else
        write_on(&whole, length, MUSLIN_DIRECTION_UP, text);
    return text;
}
