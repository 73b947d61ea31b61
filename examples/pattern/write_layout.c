/* write_layout.c - how the cuts are laid out on the cloth, fabric by fabric, strip by strip, and what is left.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

struct laying {
    const struct worked *worked;
    const struct bolt *bolt;
    const struct cloth *cloth;
};

static int64_t label_of(const struct laying *laying, size_t place)
{
    return laying->bolt->pieces[laying->bolt->places[place].piece].label;
}

/* The cut that lies there, or null: binding or a sleeve. */
static const struct muslin_solution_cut *cut_at(const struct laying *laying, size_t place)
{
    const int64_t label = label_of(laying, place);
    return laid_for(laying->worked, label) == LAID_CUT ? &laying->worked->cuts[label] : NULL;
}

static bool joined_at(const struct laying *laying, size_t place)
{
    const int64_t label = label_of(laying, place);
    if (laid_for(laying->worked, label) == LAID_CUT)
        return is_joined(laying->worked, (size_t)label);
    return laying->worked->extras[(size_t)label - laying->worked->cuts_count].kind == MUSLIN_BLANK_JOINED;
}

/* A strip that is told by its length: taken whole, for a strip set or to be joined. */
static bool is_whole(const struct laying *laying, size_t place)
{
    const struct muslin_solution_cut *cut = cut_at(laying, place);
    return joined_at(laying, place) || (cut != NULL && cut->source == MUSLIN_CUT_SOURCE_SET_STRIP);
}

static bool is_square(const struct laying *laying, size_t place)
{
    const struct muslin_solution_cut *cut = cut_at(laying, place);
    return cut != NULL && cut->shape == MUSLIN_CUT_SHAPE_RECTANGLE && cut->cut_width == cut->cut_height;
}

/* ---- places ------------------------------------------------------------------------------------------------------ */

static void add_place(struct line *line, const struct laying *laying, const struct muslin_cutplan_strip *strip,
                      size_t place)
{
    const struct worked *worked = laying->worked;
    const struct muslin_cutplan_place *row = &laying->bolt->places[place];
    char text[WORD_ROOM];
    char name[32];
    label_name(worked, label_of(laying, place), name);
    if (is_whole(laying, place) && row->count > 1)
        add(line, "%" PRId64 " pieces %s long for %s", row->count, measured(worked, row->width, text), name);
    else if (is_whole(laying, place))
        add(line, "%s long for %s", measured(worked, row->width, text), name);
    else if (is_square(laying, place))
        add(line, "%" PRId64 " square%s %s", row->count, plural(row->count), name);
    else if (cut_at(laying, place) == NULL)
        add(line, "%" PRId64 " piece%s for the %s", row->count, plural(row->count), name);
    else
        add(line, "%" PRId64 " of %s", row->count, name);
    if (row->turned && !is_whole(laying, place) && !is_square(laying, place))
        add(line, ", turned: cross-cut at %s", measured(worked, row->width, text));
    if (row->trimmed) {
        add(line, ", trimmed from %s", measured(worked, strip->height, text));
        add(line, " to %s high", measured(worked, row->height, text));
    }
}

/* A seam nearer to a corner than a hand is wide is better not there. */
static muslin_len hand_of(const struct worked *worked)
{
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    return in_inches ? 4 * MUSLIN_TICKS_PER_INCH : 100 * MUSLIN_TICKS_PER_MM;
}

/* Whether a piece to be joined for a border lies there that is shorter than its strip. */
static bool may_be_longer(const struct laying *laying, const struct muslin_cutplan_strip *strip, size_t place)
{
    return cut_at(laying, place) != NULL && joined_at(laying, place) &&
           laying->bolt->places[place].width < strip->width;
}

static muslin_len free_of(const struct muslin_cutplan_strip *strip)
{
    muslin_len left;
    must(muslin_length_subtract(strip->width, strip->used, &left));
    return left;
}

/* Pieces to be joined for a border: how much longer they may be left. */
static void add_free(struct line *line, const struct laying *laying, const struct muslin_cutplan_strip *strip)
{
    const struct worked *worked = laying->worked;
    const muslin_len enough = hand_of(worked);
    struct line names = { NULL, 0, 0 };
    char text[WORD_ROOM];
    char name[32];
    const muslin_len left = free_of(strip);
    for (int64_t i = 0; !is_nothing(worked, left) && i < strip->places; i++)
        if (may_be_longer(laying, strip, (size_t)(strip->first_place + i)))
            add(&names, "%s%s", names.used > 0 ? " and " : "",
                label_name(worked, label_of(laying, (size_t)(strip->first_place + i)), name));
    if (names.used == 0)
        return;
    add(line, left >= enough ? ". %s of this strip are free: cut those for %s longer, so that their seam is not by a "
                               "corner, and trim when the top is measured"
                             : ". Only %s of this strip are free to leave those for %s longer",
        at_most(worked, left, text), names.text);
    free(names.text);
}

/* Part of a border, which is cut when the top is measured. */
static bool is_cut_late(const struct laying *laying, size_t place)
{
    const struct muslin_solution_cut *cut = cut_at(laying, place);
    return cut != NULL && cut->source == MUSLIN_CUT_SOURCE_PATCH &&
           is_border_cut(laying->worked, (size_t)label_of(laying, place));
}

/* Where a strip has parts of a border and other pieces: which are cut first, and where. */
static void add_late(struct line *line, const struct laying *laying, const struct muslin_cutplan_strip *strip)
{
    struct line names = { NULL, 0, 0 };
    char name[32];
    int64_t late = 0;
    for (int64_t i = 0; i < strip->places; i++) {
        const size_t place = (size_t)(strip->first_place + i);
        if (!is_cut_late(laying, place))
            continue;
        late++;
        add(&names, "%s%s", names.used > 0 ? " and " : "", label_name(laying->worked, label_of(laying, place), name));
    }
    if (late > 0 && late < strip->places)
        add(line, ". Cut the others from its right end and leave the part for %s whole until the top is measured",
            names.text);
    free(names.text);
}

static void add_strip(struct line *line, const struct laying *laying, const struct muslin_cutplan_strip *strip)
{
    char text[WORD_ROOM];
    measured(laying->worked, strip->height, text);
    switch (strip->kind) {
    case MUSLIN_CUTPLAN_STRIP_PANEL:
        add(line, "%" PRId64 " length%s of %s across the whole width, to be slit along the cloth", strip->times,
            plural(strip->times), text);
        break;
    case MUSLIN_CUTPLAN_STRIP_SLIT:
        add(line, "from the left edge, slit along the cloth");
        break;
    case MUSLIN_CUTPLAN_STRIP_WITHIN:
        if (laying->cloth->strip_cut > 0) {
            add(line, "%" PRId64 " strip%s as bought", laying->bolt->strips[strip->holder].times,
                plural(laying->bolt->strips[strip->holder].times));
            break;
        }
        add(line, "across what is left beside: %" PRId64 " strip%s %s wide", strip->times, plural(strip->times), text);
        break;
    case MUSLIN_CUTPLAN_STRIP_STOCK:
        add(line, "%" PRId64 " strip%s as bought", strip->times, plural(strip->times));
        break;
    default:
        add(line, "%" PRId64 " strip%s %s wide", strip->times, plural(strip->times), text);
        break;
    }
    const bool is_many = strip->times > 1 ||
                         (laying->cloth->strip_cut > 0 && strip->holder >= 0 &&
                          laying->bolt->strips[strip->holder].times > 1);
    if (is_many && strip->places > 0)
        add(line, ", from each");
}

/* A strip for a set is taken right across the bought one. */
static void write_strip(struct document *document, const struct laying *laying,
                        const struct muslin_cutplan_strip *strip)
{
    const bool is_bought_strip = laying->cloth->strip_cut > 0;
    struct line line = { NULL, 0, 0 };
    if (is_bought_strip && strip->places == 0)
        return;
    add_strip(&line, laying, strip);
    for (int64_t i = 0; i < strip->places; i++) {
        add(&line, "%s", i == 0 ? ": " : "; ");
        add_place(&line, laying, strip, (size_t)(strip->first_place + i));
    }
    add_free(&line, laying, strip);
    add_late(&line, laying, strip);
    put(document, ITEM_POINT, strip->holder >= 0 && !is_bought_strip ? 1 : 0, NULL, &line);
}

/* ---- warnings ---------------------------------------------------------------------------------------------------- */

/* How long a strip must be for the sets that this row of the cut list goes into; 0: it goes into none. */
static muslin_len set_takes(const struct worked *worked, size_t cut)
{
    muslin_len most = 0;
    for (size_t i = 0; i < worked->sets_count; i++) {
        const struct muslin_stripset *set = &worked->sets[i];
        if (set->used && is_cut_for(worked, cut, set->node) && set->strip_length - set_slack(worked, set) > most)
            most = set->strip_length - set_slack(worked, set);
    }
    return most;
}

/* The narrowest cloth that it can be cut from as it is laid out; a strip for a set need only be as long as its segments
 * take. */
static muslin_len narrowest(const struct laying *laying, const struct muslin_fabric_yardage *row)
{
    muslin_len most = 0;
    for (size_t i = 0; i < laying->bolt->strips_count; i++) {
        const struct muslin_cutplan_strip *strip = &laying->bolt->strips[i];
        if (strip->kind != MUSLIN_CUTPLAN_STRIP_STRIP || strip->places == 0)
            return row->narrowest_width;
        const struct muslin_solution_cut *cut = cut_at(laying, (size_t)strip->first_place);
        muslin_len needed = 0;
        if (cut != NULL && cut->source == MUSLIN_CUT_SOURCE_SET_STRIP)
            needed = set_takes(laying->worked, (size_t)label_of(laying, (size_t)strip->first_place));
        if (needed == 0)
            needed = strip->used;
        most = needed > most ? needed : most;
    }
    return most;
}

static void write_proof(struct document *document, const struct laying *laying, const struct muslin_fabric_yardage *row)
{
    struct line line = { NULL, 0, 0 };
    const struct worked *worked = laying->worked;
    const muslin_len least_width = narrowest(laying, row);
    char text[WORD_ROOM];
    add(&line, "%s are needed, cut like this. ", at_least(worked, row->cloth_length, text));
    if (row->proven)
        add(&line, "Cut in this way, no plan needs less. ");
    else
        add(&line, "Cut in this way, no plan needs less than %s. ", at_most(worked, row->least, text));
    if (least_width < row->usable_width)
        add(&line, "It works down to %s of usable width.", at_least(worked, least_width, text));
    else
        add(&line, "It takes all of the %s across, with nothing to spare.", measured(worked, row->usable_width, text));
    put(document, ITEM_SAY, 0, NULL, &line);
}

/* Whether pieces of this row lie turned in one strip and not in another. */
static bool lies_both_ways(const struct bolt *bolt, int64_t piece)
{
    int ways = 0;
    for (size_t i = 0; i < bolt->places_count; i++)
        if (bolt->places[i].piece == piece && bolt->places[i].width != bolt->places[i].height)
            ways |= bolt->places[i].turned ? 2 : 1;
    return ways == 3;
}

static void write_both_ways(struct document *document, const struct laying *laying)
{
    struct line line = { NULL, 0, 0 };
    char name[32];
    size_t found = 0;
    for (size_t i = 0; i < laying->bolt->pieces_count; i++)
        if (laid_for(laying->worked, laying->bolt->pieces[i].label) == LAID_CUT &&
            lies_both_ways(laying->bolt, (int64_t)i))
            add(&line, "%s%s", found++ > 0 ? " and " : "",
                label_name(laying->worked, laying->bolt->pieces[i].label, name));
    if (found == 0)
        return;
    add(&line, ": some lie along the cloth, some across it. Where a print would show that, or stretch matter, cut all "
        "of them alike; that may take more cloth.");
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* Where the shortest strip lies of a piece that is joined with one so short that its seam lies by a corner; or -1. */
static int64_t place_of_stub(const struct laying *laying, int64_t piece)
{
    const int64_t label = laying->bolt->pieces[piece].label;
    muslin_len shortest = hand_of(laying->worked);
    int64_t found = -1;
    if (laid_for(laying->worked, label) != LAID_CUT || !is_joined(laying->worked, (size_t)label))
        return found;
    for (size_t i = 0; i < laying->bolt->places_count; i++)
        if (laying->bolt->places[i].piece == piece && laying->bolt->places[i].width < shortest) {
            shortest = laying->bolt->places[i].width;
            found = (int64_t)i;
        }
    return found;
}

/* Whether so much of its strip is free that it is told with the strip to leave it longer. */
static bool may_grow(const struct laying *laying, int64_t place)
{
    return free_of(&laying->bolt->strips[laying->bolt->places[place].strip]) >= hand_of(laying->worked);
}

/* The most that is free of another strip as wide; 0: less than a hand's breadth. */
static muslin_len free_elsewhere(const struct laying *laying, int64_t place)
{
    const muslin_len height = laying->bolt->strips[laying->bolt->places[place].strip].height;
    muslin_len most = 0;
    for (size_t i = 0; i < laying->bolt->strips_count; i++) {
        const struct muslin_cutplan_strip *strip = &laying->bolt->strips[i];
        if (strip->kind == MUSLIN_CUTPLAN_STRIP_STRIP && strip->height == height && free_of(strip) > most)
            most = free_of(strip);
    }
    return most >= hand_of(laying->worked) ? most : 0;
}

/* Its seam lies by a corner, unless the piece is left longer as its strip says. */
static void add_longer(struct line *line, const struct laying *laying, int64_t place)
{
    const muslin_len elsewhere = free_elsewhere(laying, place);
    char text[WORD_ROOM];
    if (may_grow(laying, place))
        return;
    add(line, ", its seam close to a corner: ");
    if (elsewhere > 0)
        add(line, "%s of another strip as wide are free: cut that piece from there, longer,",
            at_most(laying->worked, elsewhere, text));
    else
        add(line, "where cloth is left, cut that piece longer");
    add(line, " and the one that it is joined to as much shorter, so that both are nearer equal");
}

static void write_stubs(struct document *document, const struct laying *laying)
{
    const struct worked *worked = laying->worked;
    char text[WORD_ROOM];
    char name[32];
    for (size_t i = 0; i < laying->bolt->pieces_count; i++) {
        const int64_t place = place_of_stub(laying, (int64_t)i);
        const int64_t label = laying->bolt->pieces[i].label;
        struct line line = { NULL, 0, 0 };
        if (place < 0)
            continue;
        add(&line, "%s is joined with a piece only %s long", label_name(worked, label, name),
            measured(worked, laying->bolt->places[place].width, text));
        add_longer(&line, laying, place);
        add(&line, ". On cloth usable over at least %s it is cut in one, without a join.",
            at_least(worked, cut_length(worked, (size_t)label), text));
        put(document, ITEM_POINT, 0, NULL, &line);
    }
}

static bool is_of_one_size(const struct muslin_cutplan_left_over *a, const struct muslin_cutplan_left_over *b)
{
    return a->width == b->width && a->height == b->height;
}

/* Pieces of one size are told once. */
static int64_t count_of_size(const struct bolt *bolt, size_t row)
{
    int64_t count = 0;
    for (size_t i = 0; i < bolt->left_over_count; i++) {
        if (!is_of_one_size(&bolt->left_over[i], &bolt->left_over[row]))
            continue;
        if (i < row)
            return 0;
        count += bolt->left_over[i].count;
    }
    return count;
}

static void write_left_over(struct document *document, const struct laying *laying)
{
    enum { TOLD = 6 };
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    const struct bolt *bolt = laying->bolt;
    size_t told = 0;
    for (size_t i = 0; i < bolt->left_over_count; i++) {
        const struct muslin_cutplan_left_over *row = &bolt->left_over[i];
        const int64_t count = count_of_size(bolt, i);
        if (count == 0 || told++ >= TOLD)
            continue;
        add(&line, "%s%" PRId64 " piece%s of ", told == 1 ? "Left over: " : ", ", count, plural(count));
        add(&line, "%s", measured_by(laying->worked, row->width, row->height, text));
    }
    if (told == 0)
        return;
    add(&line, "%s.", told > TOLD ? ", and smaller ones" : "");
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

/* Strips that go into strip sets as they were bought. */
static bool is_taken_whole(const struct worked *worked, size_t fabric)
{
    const struct laying laying = { worked, &worked->bolts[fabric],
                                   cloth_of(worked->design, worked->bill[fabric].fabric) };
    for (size_t i = 0; i < laying.bolt->places_count; i++) {
        const struct muslin_solution_cut *cut = cut_at(&laying, i);
        if (cut == NULL || cut->source != MUSLIN_CUT_SOURCE_SET_STRIP || cut->cut_height != laying.cloth->strip_cut)
            return false;
    }
    return laying.cloth->strip_cut > 0;
}

static void write_whole_strips(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    size_t told = 0;
    for (size_t i = 0; i < worked->bill_count; i++)
        if (is_taken_whole(worked, i))
            add(&line, "%s%s", told++ == 0 ? "Strips that are taken whole and not cut before they are sewn into sets: "
                                           : ", ", fabric_name(worked, worked->bill[i].fabric));
    if (told == 0)
        return;
    add(&line, ".");
    put(document, ITEM_SAY, 0, NULL, &line);
}

static void write_bolt(struct document *document, const struct worked *worked, size_t fabric)
{
    const struct muslin_fabric_yardage *row = &worked->bill[fabric];
    const struct laying laying = { worked, &worked->bolts[fabric], cloth_of(worked->design, row->fabric) };
    char text[WORD_ROOM];
    write_fabric_heading(document, worked, row->fabric);
    if (laying.cloth->strip_cut > 0)
        say(document, ITEM_SAY, 0, NULL, "%" PRId64 " strips, each %s, are cut into:", laying.bolt->strips_needed,
            measured_by(worked, laying.cloth->usable_width, laying.cloth->strip_cut, text));
    else
        write_proof(document, &laying, row);
    put_picture(document, PICTURE_CLOTH, worked, (int64_t)fabric, "As it is laid out; dashed: left over");
    for (size_t i = 0; i < laying.bolt->strips_count; i++)
        write_strip(document, &laying, &laying.bolt->strips[i]);
    write_stubs(document, &laying);
    write_both_ways(document, &laying);
    write_left_over(document, &laying);
}

static bool has_panels(const struct worked *worked)
{
    for (size_t i = 0; i < worked->bill_count; i++)
        for (size_t k = 0; k < worked->bolts[i].strips_count; k++)
            if (worked->bolts[i].strips[k].kind == MUSLIN_CUTPLAN_STRIP_PANEL)
                return true;
    return false;
}

void write_layout(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    say(document, ITEM_HEADING, 0, NULL, "On the cloth");
    add(&line, "Strips go right across the cloth, the widest first. Fold the cloth lengthwise, selvage on selvage, and "
        "straighten its end square to the fold%s. Cut strips through both layers, trim the selvages off and open each "
        "strip flat; then cut its pieces from the left end, in the order said. Sizes are cut sizes.",
        worked->design->buying.straightening > 0 ? "" : " (nothing is counted for that)");
    if (worked->design->buying.straightening > 0)
        add(&line, " For straightening the end %s is counted.",
            measured(worked, worked->design->buying.straightening, text));
    put(document, ITEM_SAY, 0, NULL, &line);
    say(document, ITEM_SAY, 0, NULL, "Stacking pieces in one strip%s may need less.",
        worked->design->buying.long_pieces == MUSLIN_LONG_PIECES_JOINED ? ", or cutting borders along the cloth," : "");
    if (has_panels(worked))
        say(document, ITEM_SAY, 0, NULL, "Pieces longer than the cloth is wide are slit along it: unfold the cloth for "
            "the length that they come from, slit them off side by side from its left edge, and cut what is left "
            "beside them strip by strip.");
    write_whole_strips(document, worked);
    for (size_t i = 0; i < worked->bill_count; i++)
        if (!is_taken_whole(worked, i))
            write_bolt(document, worked, i);
}
