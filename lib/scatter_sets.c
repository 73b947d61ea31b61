/* scatter_sets.c - strips dealt to sets as evenly as can be, and laid in an order in which equal ones seldom meet.
 *
 * SPDX-License-Identifier: MIT
 *
 * No search is needed. Of n strips of one print in S sets the pairs that lie in one set are fewest when each set has
 * n / S of them, rounded down or up; the neighbours that must be equal (2 m - s - 1 where m of s strips are equal, if
 * that is above 0) are fewest then too. Dealing prints one after the other round the sets does that for all prints at
 * once, whichever way the sets are shuffled before each turn, so the answer is the least there is. */
#include "scatter_inside.h"

struct sets {
    int64_t sets;
    int64_t strips;  /* in each */
    uint32_t kinds;
    int64_t *use;    /* of each print, in the order of `order` */
    uint32_t *order; /* prints, shuffled */
    uint32_t *turn;  /* sets, shuffled turn by turn */
    uint32_t *dealt; /* prints: the strips of a set lie side by side */
    uint32_t *row;   /* strips of one set */
    uint64_t chance;
};

/* ---- how many of each -------------------------------------------------------------------------------------------- */

/* How many strips there are if none has more than `most`. */
static int64_t strips_up_to(const int64_t *prints, uint32_t kinds, int64_t most)
{
    int64_t strips = 0;
    for (uint32_t i = 0; i < kinds; i++)
        strips += prints[i] < most ? prints[i] : most;
    return strips;
}

/* The least `most` that leaves enough strips: what there is too much of stays over, the commonest prints first. */
static int64_t most_of_one(const int64_t *prints, uint32_t kinds, int64_t places)
{
    int64_t low = 1;
    int64_t high = places;
    while (low < high) {
        int64_t middle = (low + high) / 2;
        if (strips_up_to(prints, kinds, middle) >= places)
            high = middle;
        else
            low = middle + 1;
    }
    return low;
}

static void shuffle(uint32_t *items, uint32_t n, uint64_t *chance)
{
    for (uint32_t i = 0; i + 1 < n; i++) {
        uint32_t other = i + msl_chance(chance, n - i);
        uint32_t item = items[other];
        items[other] = items[i];
        items[i] = item;
    }
}

/* Prints in a shuffled order; of those that have as many as may be, the first ones stay one short. */
static void choose_strips(struct sets *d, const int64_t *prints)
{
    int64_t places = d->sets * d->strips;
    int64_t most = most_of_one(prints, d->kinds, places);
    int64_t over = strips_up_to(prints, d->kinds, most) - places;
    for (uint32_t i = 0; i < d->kinds; i++)
        d->order[i] = i;
    shuffle(d->order, d->kinds, &d->chance);
    for (uint32_t i = 0; i < d->kinds; i++) {
        int64_t there_are = prints[d->order[i]];
        d->use[i] = there_are < most ? there_are : most;
        if (there_are >= most && over > 0) {
            d->use[i]--;
            over--;
        }
    }
}

/* ---- dealing ----------------------------------------------------------------------------------------------------- */

/* Draws the set for the strip at this number of the whole deal. `turn` holds the sets that have had one in this turn
 * before `at`. A print that began in an earlier turn and has come round only in part owes the sets that were before it
 * there: those that it reached last stand at the end and wait. */
static uint32_t draw_set(struct sets *d, int64_t number, int64_t first_of_print)
{
    int64_t at = number % d->sets;
    int64_t turn_start = number - at;
    int64_t reached = turn_start > first_of_print ? (turn_start - first_of_print) % d->sets : 0;
    int64_t end = at < d->sets - reached ? d->sets - reached : d->sets;
    int64_t drawn = at + msl_chance(&d->chance, (uint32_t)(end - at));
    uint32_t set = d->turn[drawn];
    d->turn[drawn] = d->turn[at];
    d->turn[at] = set;
    return set;
}

static void deal(struct sets *d)
{
    int64_t number = 0;
    for (uint32_t i = 0; i < (uint32_t)d->sets; i++)
        d->turn[i] = i;
    for (uint32_t i = 0; i < d->kinds; i++) {
        int64_t first = number;
        for (int64_t strip = 0; strip < d->use[i]; strip++) {
            int64_t set = draw_set(d, number, first);
            d->dealt[set * d->strips + number / d->sets] = d->order[i];
            number++;
        }
    }
}

/* ---- the order in a set ------------------------------------------------------------------------------------------ */

/* How many from here on are equal. */
static int64_t equal_from(const uint32_t *strips, int64_t n, int64_t at)
{
    int64_t end = at;
    while (end < n && strips[end] == strips[at])
        end++;
    return end - at;
}

/* Groups of equal strips, in a shuffled order but for the largest, which comes first. `starts` gets where each begins.
 */
static uint32_t group(struct sets *d, const uint32_t *strips, uint32_t *starts)
{
    uint32_t groups = 0;
    uint32_t largest = 0;
    for (int64_t at = 0; at < d->strips; at += equal_from(strips, d->strips, at))
        starts[groups++] = (uint32_t)at;
    shuffle(starts, groups, &d->chance);
    for (uint32_t i = 1; i < groups; i++)
        if (equal_from(strips, d->strips, starts[i]) > equal_from(strips, d->strips, starts[largest]))
            largest = i;
    uint32_t start = starts[largest];
    starts[largest] = starts[0];
    starts[0] = start;
    return groups;
}

/* Where the strip of this number goes: on every second place, then between them. A print that fills all of the former
 * and more comes between from the end, where it has one neighbour less. */
static int64_t place_of(int64_t number, int64_t strips, int from_end)
{
    int64_t seconds = (strips + 1) / 2;
    if (number < seconds)
        return 2 * number;
    return from_end ? strips - 1 - strips % 2 - 2 * (number - seconds) : 2 * (number - seconds) + 1;
}

static void order_set(struct sets *d, uint32_t *strips, uint32_t *starts)
{
    uint32_t groups = group(d, strips, starts);
    int64_t number = 0;
    int from_end = equal_from(strips, d->strips, starts[0]) > (d->strips + 1) / 2;
    int turned = msl_chance(&d->chance, 2) == 1;
    for (uint32_t i = 0; i < groups; i++) {
        int64_t n = equal_from(strips, d->strips, starts[i]);
        for (int64_t strip = 0; strip < n; strip++) {
            int64_t place = place_of(number, d->strips, from_end);
            d->row[turned ? d->strips - 1 - place : place] = strips[starts[i]];
            number++;
        }
    }
    for (int64_t i = 0; i < d->strips; i++)
        strips[i] = d->row[i];
}

/* ---- the answer -------------------------------------------------------------------------------------------------- */

/* Of n equal strips in one set: pairs, and neighbours that must be equal. */
static int64_t pairs_of(int64_t n)
{
    return n * (n - 1) / 2;
}

static int64_t weight_of(int64_t n, int64_t strips)
{
    return pairs_of(n) + msl_greater(2 * n - strips - 1, 0);
}

/* What each print cannot do without. */
static int64_t least_of(const struct sets *d)
{
    int64_t least = 0;
    for (uint32_t i = 0; i < d->kinds; i++) {
        int64_t each = d->use[i] / d->sets;
        int64_t more = d->use[i] % d->sets;
        least += (d->sets - more) * weight_of(each, d->strips) + more * weight_of(each + 1, d->strips);
    }
    return least;
}

/* Counts a set that is still in groups, ... */
static int64_t pairs_in(const struct sets *d, const uint32_t *strips)
{
    int64_t pairs = 0;
    for (int64_t at = 0; at < d->strips; at += equal_from(strips, d->strips, at))
        pairs += pairs_of(equal_from(strips, d->strips, at));
    return pairs;
}

/* ... and one in its order. */
static int64_t equal_neighbours(const struct sets *d, const uint32_t *strips)
{
    int64_t neighbours = 0;
    for (int64_t i = 1; i < d->strips; i++)
        neighbours += strips[i] == strips[i - 1];
    return neighbours;
}

static void deal_and_order(struct sets *d, uint32_t *starts, struct muslin_scattered *found)
{
    deal(d);
    for (int64_t set = 0; set < d->sets; set++) {
        uint32_t *strips = d->dealt + set * d->strips;
        int64_t pairs = pairs_in(d, strips);
        order_set(d, strips, starts);
        found->pairs += pairs;
        found->touching += pairs + equal_neighbours(d, strips);
    }
    found->least = least_of(d);
    found->proven = found->touching == found->least;
}

static void want_sets(struct msl_check *check, int64_t places, int64_t sets, int64_t strips)
{
    msl_want_between(check, MUSLIN_ARG_SETS, sets, 1, MSL_PLACES_MAX);
    msl_want_between(check, MUSLIN_ARG_STRIPS_PER_SET, strips, 1, MSL_PLACES_MAX);
    if (check->status == MUSLIN_OK && places != sets * strips)
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_PLACES, places, sets * strips);
}

static void take_room(struct sets *d, struct msl_scatter_room *room)
{
    d->use = msl_scatter_take(room, d->kinds, sizeof *d->use);
    d->order = msl_scatter_take(room, d->kinds, sizeof *d->order);
    d->turn = msl_scatter_take(room, d->sets, sizeof *d->turn);
    d->dealt = msl_scatter_take(room, d->sets * d->strips, sizeof *d->dealt);
    d->row = msl_scatter_take(room, d->strips, sizeof *d->row);
}

muslin_status muslin_scatter_sets(const struct muslin_scatter_spec *spec, const int64_t *prints, size_t kinds,
                                  int64_t sets, int64_t strips_per_set, const struct muslin_allocator *allocator,
                                  int64_t *out, struct muslin_scattered *result, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_scatter_spec in = { 0 };
    struct muslin_scattered found = { 0 };
    struct msl_scatter_room room = { .check = &check, .allocator = allocator };
    msl_read_scatter(&check, &in, spec);
    msl_want_allocator(&check, allocator);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    msl_want_output(&check, result, (uint32_t)sizeof *result);
    want_sets(&check, in.places, sets, strips_per_set);
    msl_want_stock(&check, prints, kinds, in.places);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct sets d = { .sets = sets, .strips = strips_per_set, .kinds = (uint32_t)kinds, .chance = (uint64_t)in.seed };
    take_room(&d, &room);
    uint32_t *starts = msl_scatter_take(&room, strips_per_set, sizeof *starts);
    if (check.status == MUSLIN_OK) {
        choose_strips(&d, prints);
        deal_and_order(&d, starts, &found);
        for (int64_t i = 0; i < in.places; i++)
            out[i] = d.dealt[i];
        msl_write_struct(result, &found, (uint32_t)sizeof found);
    }
    msl_scatter_give_back(&room);
    return check.status;
}
