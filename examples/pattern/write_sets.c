/* write_sets.c - strip sets and their segments: what is sewn long side to long side, and cut across again.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

const struct muslin_stripset *set_of(const struct worked *worked, muslin_id join)
{
    for (size_t i = 0; i < worked->sets_count; i++)
        if (worked->sets[i].node == join)
            return &worked->sets[i];
    return NULL;
}

/* ---- sets -------------------------------------------------------------------------------------------------------- */

/* The first strip has the label: which end of a segment is which is seen from it. */
static void write_label(struct document *document, const struct worked *worked, const struct muslin_sewing_step *step)
{
    const struct muslin_stripset *set = set_of(worked, step->node);
    const bool is_across = node_of(worked, step->node).axis == MUSLIN_AXIS_ACROSS;
    if (set != NULL && set->turns)
        return;
    say(document, ITEM_POINT, 0, NULL, "Pin a label to the %s strip of each set, and to that end of each segment as it "
        "is cut, so that nothing gets turned: it is the %s end.", is_across ? "left" : "top",
        is_across ? "left" : "upper");
}

static int64_t sets_for(int64_t segments, const struct muslin_stripset *set)
{
    return (segments + set->segments_per_set - 1) / set->segments_per_set;
}

/* Whether no set need give both sorts of segments; a short last set gives the rest of one sort. */
static bool are_apart(const struct worked *worked, const struct muslin_stripset *set,
                      const struct muslin_pressing_seam *seam)
{
    muslin_len length;
    const int64_t each = set->segments_per_set;
    if (short_set(worked, set, &length) > 0 && seam->as_shown % each != 0 && seam->other_way % each != 0)
        return false;
    return sets_for(seam->as_shown, set) + sets_for(seam->other_way, set) <= set->sets;
}

struct other_sets other_sets(const struct worked *worked, const struct muslin_stripset *set,
                             const struct muslin_pressing_seam *seam)
{
    if (are_apart(worked, set, seam))
        return (struct other_sets){ sets_for(seam->other_way, set), 0 };
    return (struct other_sets){ seam->other_way / set->segments_per_set, seam->other_way % set->segments_per_set };
}

/* "to the left", where all seams of a set are pressed to the right. */
static const char *reversed(const struct muslin_pressing_seam *seams, size_t count)
{
    static const char *const to[] = { "", "to the right", "to the left", "downwards", "upwards", "open" };
    for (size_t i = 1; i < count; i++)
        if (seams[i].press != seams->press)
            return "the other way";
    return to[seams->press];
}

/* Which sets are pressed the other way. */
static void write_other_sets(struct document *document, const struct worked *worked, muslin_id join)
{
    const struct muslin_stripset *set = set_of(worked, join);
    struct line line = { NULL, 0, 0 };
    char letter[16];
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(worked, join, &count);
    if (set == NULL || count == 0 || seams->other_way == 0 || seams->other != MUSLIN_OTHER_WAY_SETS)
        return;
    const struct other_sets other = other_sets(worked, set, seams);
    const char *to = reversed(seams, count);
    letter_of(worked, join, letter);
    if (other.sets > 0)
        add(&line, "Of the %" PRId64 " sets press %" PRId64 " with every seam %s: from %s cut %" PRId64 " %s*.",
            set->sets, other.sets, to, other.sets == 1 ? "it" : "these", seams->other_way - other.anew, letter);
    if (other.anew > 0)
        add(&line, "%sCut %" PRId64 " %s%s* from %s, and press every seam in them anew, %s.",
            other.sets > 0 ? " " : "", other.anew, other.sets > 0 ? "more " : "", letter,
            other.sets > 0 ? "the other sets" : "these sets, too", to);
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* Strips: their fabrics, in the order in which they lie. */
void write_set(struct document *document, const struct worked *worked, size_t number)
{
    const struct muslin_sewing_step *step = &worked->steps[number];
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    size_t count;
    muslin_id *children = children_of(worked, step->node, &count);
    add(&line, "Sew strips long side to long side, from %s: ",
        node_of(worked, step->node).axis == MUSLIN_AXIS_ACROSS ? "left to right" : "top to bottom");
    for (size_t i = 0, next; i < count; i = next) {
        int64_t cut = cut_of_strip(worked, step->node, lying_at(worked, step->node, i, children[i]).node);
        for (next = i + 1; next < count; next++)
            if (cut_of_strip(worked, step->node, lying_at(worked, step->node, next, children[next]).node) != cut)
                break;
        add(&line, "%s", i == 0 ? "" : ", ");
        if (next - i > 1)
            add(&line, "%zu strips ", next - i);
        add(&line, "[%d] %s", worked->piece[cut], fabric_name(worked, worked->cuts[cut].fabric));
    }
    const bool is_across = node_of(worked, step->node).axis == MUSLIN_AXIS_ACROSS;
    add(&line, ". The set is %s wide unfinished.",
        measured(worked, is_across ? step->unfinished_width : step->unfinished_height, text));
    put(document, ITEM_POINT, 0, NULL, &line);
    free(children);
    write_join_pressing(document, worked, step->node);
    write_other_sets(document, worked, step->node);
    write_label(document, worked, step);
}

/* ---- stacks ------------------------------------------------------------------------------------------------------ */

/* All strips of the set come from one bundle, in which every strip is another print. */
static const struct cloth *bundle_of(const struct worked *worked, muslin_id join)
{
    const struct cloth *found = NULL;
    for (size_t i = 0; i < worked->cuts_count; i++) {
        if (worked->cuts[i].source != MUSLIN_CUT_SOURCE_SET_STRIP || !is_cut_for(worked, i, join))
            continue;
        const struct cloth *cloth = cloth_of(worked->design, worked->cuts[i].fabric);
        if (cloth->strip_cut == 0 || (found != NULL && found != cloth))
            return NULL;
        found = cloth;
    }
    return found;
}

/* The step that joins segments of this set alone, side by side, or -1; of how many in each. */
static int64_t step_of_pairs(const struct worked *worked, muslin_id join, int64_t *each)
{
    for (size_t i = 0; i < worked->steps_count; i++) {
        const struct feeds *feeds = &worked->feeds[i];
        if (worked->steps[i].kind != MUSLIN_SEWING_JOIN || feeds->count != 1 || feeds->rows[0].node != join)
            continue;
        *each = feeds->rows[0].each;
        return (int64_t)i;
    }
    return -1;
}

static bool ask_for_stacks(const struct worked *worked, const struct muslin_stripset *set,
                           struct muslin_stripquilt_spec *spec)
{
    const struct muslin_solution_spec *solve = &worked->design->solve;
    const struct cloth *bundle = bundle_of(worked, set->node);
    muslin_id allowance;
    muslin_id take_up;
    const int64_t step = bundle == NULL ? -1 : step_of_pairs(worked, set->node, &spec->segments_per_block);
    if (step < 0 || spec->segments_per_block > MUSLIN_STRIPQUILT_SEGMENTS_MAX)
        return false;
    must(muslin_quilt_seam(worked->design->quilt, &allowance, &take_up, NULL));
    must(muslin_solution_value(worked->solution, allowance, &spec->allowance, NULL));
    must(muslin_solution_value(worked->solution, take_up, &spec->take_up, NULL));
    spec->strips = set->sets * set->strips;
    spec->strips_per_set = set->strips;
    spec->columns = worked->steps[step].alike;
    spec->tops = 1;
    spec->strip_cut = bundle->strip_cut;
    spec->strip_length = set->strip_length;
    spec->segment_cut = set->segment_cut;
    spec->end_trim = solve->end_trim;
    spec->resquare_loss = solve->resquare_loss;
    spec->resquare_every = solve->resquare_every;
    spec->fold_clear = solve->fold_clear;
    spec->flags = solve->flags;
    spec->turning = MUSLIN_TURNING_NONE;
    spec->nesting = MUSLIN_NESTING_NAME;
    return true;
}

static void write_group(struct document *document, const struct muslin_block_group *group)
{
    struct line line = { NULL, 0, 0 };
    const int64_t last = group->first_block + group->blocks - 1;
    if (last == group->first_block)
        add(&line, "block %" PRId64, last);
    else
        add(&line, "blocks %" PRId64 " to %" PRId64, group->first_block, last);
    add(&line, ": one segment each of stack");
    for (int32_t i = 0; i < group->segments; i++)
        add(&line, "%s %" PRId64, i == 0 ? "s" : i + 1 == group->segments ? " and" : ",", group->sets[i]);
    add(&line, "%s.", group->repeats ? "; a print meets itself in these" : "");
    put(document, ITEM_POINT, 1, NULL, &line);
}

/* Which stacks meet in which blocks, so that no block has a print twice. */
static void write_stacks(struct document *document, const struct worked *worked, const struct muslin_stripset *set)
{
    struct muslin_stripquilt_spec spec = MUSLIN_STRIPQUILT_SPEC_INIT;
    size_t count;
    if (set->sets < 2 || !ask_for_stacks(worked, set, &spec) ||
        muslin_stripquilt_groups(&spec, NULL, 0, 0, &count, NULL) != MUSLIN_OK)
        return;
    struct muslin_block_group *groups = rows_for(count, sizeof *groups);
    must(muslin_stripquilt_groups(&spec, groups, sizeof *groups, count, &count, NULL));
    say(document, ITEM_POINT, 0, NULL, "Lay the segments of each set on a stack of its own, sets 1 to %" PRId64 ". So "
        "that no block has a print twice, take for", set->sets);
    for (size_t i = 0; i < count; i++)
        write_group(document, &groups[i]);
    free(groups);
}

/* ---- segments ---------------------------------------------------------------------------------------------------- */

/* Of segments whose width lies between two marks. */
static void write_trimmed_back(struct document *document, const struct worked *worked,
                               const struct muslin_stripset *set)
{
    if (to_mark(worked, set->segment_cut) == set->segment_cut)
        return;
    if (segment_mark(worked, set) > set->segment_cut)
        say(document, ITEM_POINT, 0, NULL, "That is a little more than a segment needs: trim what is sewn of them to "
            "its unfinished size, as much off one side as off the other.");
    else
        say(document, ITEM_CAUTION, 0, NULL, "No mark of a ruler gives so many: cut to the next one, a set gives "
            "fewer.");
}

/* A last set for one or two segments can be sewn of short strips. */
int64_t short_set(const struct worked *worked, const struct muslin_stripset *set, muslin_len *length)
{
    const int64_t last = set->segments - (set->sets - 1) * set->segments_per_set;
    const muslin_len lengths[] = { segment_mark(worked, set), worked->design->solve.end_trim };
    const int64_t counts[] = { last, 2 };
    if (!set->used || set->sets < 2 || last > 2)
        return 0;
    must(muslin_length_dot(lengths, counts, 2, length));
    return last;
}

static void add_short_set(struct line *line, const struct worked *worked, const struct muslin_stripset *set)
{
    char text[WORD_ROOM];
    muslin_len length;
    const int64_t last = short_set(worked, set, &length);
    if (last == 0)
        return;
    add(line, " The last set is sewn for only %" PRId64 " of them: strips %s long are enough for it.", last,
        at_least(worked, length, text));
}

/* Half of what is kept clear lies to either side. */
static void add_fold(struct line *line, const struct worked *worked)
{
    char clear[WORD_ROOM];
    char half[WORD_ROOM];
    const muslin_len fold_clear = worked->design->solve.fold_clear;
    add(line, ", from both ends towards the fold: keep %s clear in the middle, %s to either side of the fold",
        measured(worked, fold_clear, clear), measured(worked, fold_clear / 2, half));
}

static void add_ends(struct line *line, const struct worked *worked, const struct muslin_stripset *set)
{
    const struct muslin_solution_spec *solve = &worked->design->solve;
    char text[WORD_ROOM];
    char cut[WORD_ROOM];
    add(line, "Square %s of each set", solve->fold_clear > 0 ? "both ends" : "one end");
    if (solve->end_trim > 0)
        add(line, " (%s is allowed at each end)", measured(worked, solve->end_trim, text));
    add(line, " and cut segments %s wide across it", segment_measured(worked, set, cut));
    if (solve->fold_clear > 0)
        add_fold(line, worked);
    add(line, ". ");
    if (solve->resquare_every > 0)
        add(line, "Square the end again after every %" PRId64 " cut%s: %s is allowed for that. ",
            solve->resquare_every, plural(solve->resquare_every), measured(worked, solve->resquare_loss, text));
}

void write_segments(struct document *document, const struct worked *worked, size_t number)
{
    const struct muslin_stripset *set = set_of(worked, worked->steps[number].node);
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    if (set == NULL)
        return;
    add_ends(&line, worked, set);
    add(&line, "A set gives %" PRId64, set->segments_per_set);
    if (set->sets > 1)
        add(&line, ", %" PRId64 " sets give %" PRId64, set->sets, set->sets * set->segments_per_set);
    if (set->spare > 0)
        add(&line, "; %" PRId64 " needed, %" PRId64 " over.", set->segments, set->spare);
    else
        add(&line, "; %" PRId64 " needed, none over: there is none to spoil.", set->segments);
    add_short_set(&line, worked, set);
    put(document, ITEM_POINT, 0, NULL, &line);
    write_trimmed_back(document, worked, set);
    write_stacks(document, worked, set);
    if (is_nothing(worked, set_slack(worked, set)))
        say(document, ITEM_CAUTION, 0, NULL, "Strips must have their full length: any shorter, and a set gives "
            "less.");
    else
        say(document, ITEM_POINT, 0, NULL, "Strips may be up to %s shorter before a set gives less.",
            at_most(worked, set_slack(worked, set), text));
}
