/* scatter_search.c - what lies is bettered by exchanges until nothing touches that need not, or the work is up.
 *
 * SPDX-License-Identifier: MIT
 *
 * A place that touches an equal exchanges what lies in it with another place, or with a kind of which some are left,
 * where that lowers the weight; where nothing tried does, an exchange that leaves it as it is may lead further. When
 * that has gone on for long enough without gain, the search begins anew: filled again, or from the best with a few
 * exchanges made blindly. */
#include "scatter_inside.h"

enum {
    TRIES = 24,    /* partners looked at for one place */
    PATIENCE = 60, /* places looked at without a gain, and for each troubled place ... */
    PATIENCE_EACH = 6,
    BLIND = 4      /* exchanges made blindly, at most */
};

/* ---- troubled places --------------------------------------------------------------------------------------------- */

/* Every loose place that touches an equal is among them, and some that no longer do. While the weight is above the
 * least there is one: the least counts all touches between given places. */

static void add_trouble(struct msl_scatter *s, uint32_t place)
{
    if (s->trouble_of[place] != MSL_NOWHERE || msl_scatter_is_given(s, place))
        return;
    s->trouble_of[place] = s->n_troubled;
    s->troubled[s->n_troubled++] = place;
}

static void end_trouble(struct msl_scatter *s, uint32_t place)
{
    uint32_t at = s->trouble_of[place];
    uint32_t last = s->troubled[--s->n_troubled];
    s->troubled[at] = last;
    s->trouble_of[last] = at;
    s->trouble_of[place] = MSL_NOWHERE;
}

/* A place and what it touches, where they are equal. */
static void look_for_trouble(struct msl_scatter *s, uint32_t place)
{
    for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++) {
        uint32_t other = s->touches[t].place;
        if (msl_scatter_meets(s, s->laid[place], s->laid[other], s->touches[t].weight & 3)) {
            add_trouble(s, place);
            add_trouble(s, other);
        }
    }
    s->work += s->first[place + 1] - s->first[place];
}

/* Weighs what lies; each touch is seen from both ends. */
static void weigh_all(struct msl_scatter *s)
{
    int64_t twice = 0;
    s->n_troubled = 0;
    for (uint32_t place = 0; place < s->places; place++)
        s->trouble_of[place] = MSL_NOWHERE;
    for (uint32_t place = 0; place < s->places; place++) {
        int64_t weight = msl_scatter_weight(s, place, s->laid[place]);
        twice += weight;
        if (weight > 0)
            add_trouble(s, place);
    }
    s->weight = twice / 2;
}

/* ---- exchanges --------------------------------------------------------------------------------------------------- */

/* What lies in a place goes to another, or away; what comes is what lay there, or one of what is left. */
struct exchange {
    uint32_t place;
    uint32_t other; /* MSL_NOWHERE: what is left */
    uint32_t kind;  /* that comes to `place` */
    int32_t before;
    int32_t other_before;
    int64_t change; /* of the weight */
};

static uint32_t kind_at(const struct msl_scatter *s, uint32_t place)
{
    return (uint32_t)s->laid[place] / 4;
}

static void make(struct msl_scatter *s, struct exchange *e)
{
    e->before = s->laid[e->place];
    e->change = -msl_scatter_lift(s, e->place);
    if (e->other == MSL_NOWHERE) {
        e->change += msl_scatter_lay(s, e->place, e->kind);
        return;
    }
    e->other_before = s->laid[e->other];
    e->change -= msl_scatter_lift(s, e->other);
    e->change += msl_scatter_lay(s, e->place, e->kind);
    e->change += msl_scatter_lay(s, e->other, (uint32_t)e->before / 4);
}

static void take_back(struct msl_scatter *s, const struct exchange *e)
{
    s->laid[e->place] = e->before;
    if (e->other != MSL_NOWHERE)
        s->laid[e->other] = e->other_before;
}

static void keep(struct msl_scatter *s, const struct exchange *e)
{
    s->weight += e->change;
    look_for_trouble(s, e->place);
    if (e->other != MSL_NOWHERE) {
        look_for_trouble(s, e->other);
        return;
    }
    s->left[(uint32_t)e->before / 4]++;
    s->left[e->kind]--;
}

/* Any partner: mostly a place, now and then a kind of which some are left, or of blocks the place itself, to be turned.
 * Returns 0 when what was drawn is no exchange. */
static int draw_exchange(struct msl_scatter *s, uint32_t place, struct exchange *e)
{
    uint32_t own = kind_at(s, place);
    uint32_t dice = msl_chance(&s->chance, 8);
    e->place = place;
    e->other = MSL_NOWHERE;
    s->work++;
    if (dice == 0) {
        e->kind = own;
        return s->edges != NULL && s->turn_step[own] < 4;
    }
    if (dice < 4) {
        e->kind = msl_chance(&s->chance, s->kinds);
        return s->left[e->kind] > 0 && e->kind != own;
    }
    e->other = s->loose[msl_chance(&s->chance, s->n_loose)];
    e->kind = kind_at(s, e->other);
    return e->kind != own;
}

/* ---- the search -------------------------------------------------------------------------------------------------- */

int msl_scatter_is_up(struct msl_scatter *s)
{
    s->told.best = s->weight < s->best_weight ? s->weight : s->best_weight;
    return !msl_goes_on(&s->told, s->work) || s->work >= s->work_limit;
}

static int is_over(struct msl_scatter *s)
{
    return msl_scatter_is_up(s) || s->weight == s->least;
}

/* Makes the first exchange that lowers the weight, else the last that leaves it. */
static void better_place(struct msl_scatter *s, uint32_t place)
{
    struct exchange level = { 0 };
    int has_level = 0;
    for (int32_t tries = 0; tries < TRIES; tries++) {
        struct exchange e;
        if (!draw_exchange(s, place, &e))
            continue;
        make(s, &e);
        if (e.change < 0) {
            keep(s, &e);
            return;
        }
        take_back(s, &e);
        if (e.change == 0) {
            level = e;
            has_level = 1;
        }
    }
    if (has_level) {
        make(s, &level);
        keep(s, &level);
    }
}

/* Until nothing is gained for a while. */
static void better(struct msl_scatter *s)
{
    int64_t lowest = s->weight;
    int64_t patience = PATIENCE + PATIENCE_EACH * (int64_t)s->n_troubled;
    int64_t waited = 0;
    while (waited < patience && !is_over(s)) {
        uint32_t place = s->troubled[msl_chance(&s->chance, s->n_troubled)];
        if (msl_scatter_weight(s, place, s->laid[place]) == 0) {
            end_trouble(s, place);
            continue;
        }
        better_place(s, place);
        waited++;
        if (s->weight < lowest) {
            lowest = s->weight;
            waited = 0;
        }
    }
}

static void hold_best(struct msl_scatter *s)
{
    if (s->weight >= s->best_weight)
        return;
    s->best_weight = s->weight;
    for (uint32_t place = 0; place < s->places; place++)
        s->best[place] = s->laid[place];
    s->work += s->places;
}

static void return_to_best(struct msl_scatter *s)
{
    for (uint32_t place = 0; place < s->places; place++) {
        s->left[kind_at(s, place)]++;
        s->laid[place] = s->best[place];
        s->left[kind_at(s, place)]--;
    }
    s->work += s->places;
    weigh_all(s);
}

static void exchange_blindly(struct msl_scatter *s)
{
    uint32_t exchanges = 1 + msl_chance(&s->chance, BLIND);
    for (uint32_t i = 0; i < exchanges; i++) {
        struct exchange e;
        if (draw_exchange(s, s->troubled[msl_chance(&s->chance, s->n_troubled)], &e)) {
            make(s, &e);
            keep(s, &e);
        }
    }
}

/* Another start: three times in four from the best. Where the work is up before all is filled, all ends. */
static void begin_anew(struct msl_scatter *s, uint32_t round)
{
    if (round % 4 == 0 || round < 3) {
        if (msl_scatter_fill(s, round % 8 < 4 ? MSL_SCATTER_MOST : MSL_SCATTER_EVENLY))
            weigh_all(s);
        return;
    }
    return_to_best(s);
    exchange_blindly(s);
}

void msl_scatter_search(struct msl_scatter *s)
{
    const struct msl_told told = s->told;
    int64_t limit = s->work_limit;
    s->work_limit = INT64_MAX; /* the first filling is always done, and neither counted nor told of */
    s->told = msl_told_by(NULL, NULL);
    msl_scatter_fill(s, MSL_SCATTER_EVENLY);
    weigh_all(s);
    s->best_weight = INT64_MAX;
    hold_best(s);
    s->work = 0;
    s->work_limit = limit;
    s->told = told;
    s->told.bound = s->least;
    better(s);
    hold_best(s);
    for (uint32_t round = 1; !is_over(s); round++) {
        begin_anew(s, round);
        better(s);
        hold_best(s);
    }
}
