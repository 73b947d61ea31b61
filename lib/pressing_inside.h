/* pressing_inside.h - a pressing plan in the making: ends of seams on edges, meetings, and the rules they make.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every choice is a bit: of each seam, 0 towards its first piece and 1 towards its second; of each place that can take
 * its child the other way, 1 where it does. How a seam lies in one copy is the sum, odd or even, of its own bit and of
 * those of the places on the way to it. So every meeting is a rule: the bits of both seams must add up to an odd
 * number, or to an even one. Meetings of equal bits are one rule.
 *
 * Nothing changes when a node's own bits, those of its places and those of all places that take it are reversed
 * together. Therefore the first place of each node takes it as it is, and has no bit. So has every place of a node that
 * holds seams whose way is asked for: such a node can be taken the other way only by turning it, or what it is made of.
 *
 * A node that looks the same when it is turned by g seems, from outside, to be pressed the other way when every end on
 * its edges lies, after the turn, at one that is pressed the opposite way. That is one sum of bits for every end, a
 * "turning" all together. Those of nodes whose way is asked for are a matter of exceptions, others a wish; see
 * pressing.c for the bound. */
#ifndef MUSLIN_PRESSING_INSIDE_H
#define MUSLIN_PRESSING_INSIDE_H

#include "muslin/pressing.h"

#include "solution_cuts.h"
#include "solution_inside.h"
#include "told.h"

/* ---- the plan --------------------------------------------------------------------------------------------------- */

enum msl_held { MSL_HELD_FREE, MSL_HELD_ASKED, MSL_HELD_OPEN };

struct msl_seam_way {
    uint8_t way;    /* 0: towards the first piece, 1: towards the second */
    uint8_t held;   /* enum msl_held */
    uint8_t wish;   /* 0: none, 1: towards the first, 2: towards the second */
    uint8_t pad;
};

/* What a plan keeps of a node, at its number less 1; one more row closes the last. */
struct msl_pressed_node {
    int64_t as_shown; /* copies */
    int64_t other_way;
    uint32_t first_seam;               /* of its own, in the plan's numbers */
    uint32_t first_place;              /* of its places that differ */
    uint32_t first_end[MSL_EDGES + 1]; /* of the ends on each edge, one edge after the other */
    uint32_t first_turning;            /* that may come about */
    uint8_t carries;                   /* it holds seams, its own or its parts' */
    uint8_t asks;                      /* the way of some of its own is asked for */
    uint8_t stiff;                     /* ... or of some of its parts' */
    uint8_t flips;                     /* it can be taken the other way, pressed or turned */
    uint8_t ordered;                   /* it holds pieces whose order is labelled */
    uint8_t trimmed;                   /* something is trimmed off what it is part of */
    uint8_t seen;                      /* it has its first place */
    uint8_t reversed;                  /* while comparing: its first copy is taken the other way; in the end: it is
                                          shown so */
    uint8_t turn;                      /* quarters by which its copies the other way are turned; 0: they are pressed */
    uint8_t choice;                    /* enum msl_choice */
};

/* What is tried of a node that cannot be pressed the other way; the first two are the quarters of the turning. */
enum msl_choice { MSL_CHOICE_FREE, MSL_CHOICE_QUARTER, MSL_CHOICE_HALF, MSL_CHOICE_KEPT };

struct msl_chosen {
    uint32_t node;
    uint8_t choice;  /* enum msl_choice */
    uint8_t choices; /* a bit for each turning that there is */
    uint8_t pad[2];
};

/* Two seams that meet. */
struct msl_met {
    int64_t count;
    muslin_len x;
    muslin_len y;
    uint32_t node;
    uint32_t line; /* the node's seam on which they meet */
    uint32_t first;
    uint32_t second;
    uint32_t rule;
    uint32_t odd; /* 1: nests when the rule's bits add up to an odd number */
};

/* How nodes may be taken the other way in which seams are held as asked. */
enum msl_turnings {
    MSL_TURN_NO_HELD,   /* not at all */
    MSL_TURN_HELD,      /* as if all turnings held: there may be fewer exceptions than can be */
    MSL_TURN_HELD_ALIKE /* with pressings such that all turnings hold, at any cost */
};

struct muslin_pressing {
    const struct muslin_solution *solution;
    struct muslin_allocator allocator;
    struct muslin_pressing_spec spec;
    uint32_t nodes;
    uint32_t seams;
    uint32_t places;
    uint32_t bits; /* of seams, at their numbers, then of places */
    struct msl_pressed_node *node;
    struct msl_seam_way *seam;
    uint32_t *place_bit; /* of each place; 0: it has no choice */
    uint8_t *place_way;
    int32_t turnings;    /* enum msl_turnings */
    struct msl_chosen broken; /* a node that is taken the other way and cannot be: nothing is chosen of it yet, and no
                                 turning of it holds; node 0: none */
    uint8_t has_turned;  /* 1: nodes with asked seams can be turned */
    uint8_t pad[3];
    int64_t effort;      /* about what it took to make the rules, in steps */
    struct msl_rows met; /* struct msl_met; in the end those that do not nest */
    struct muslin_pressing_total totals;
};

static inline struct msl_pressed_node *msl_pressed(const struct muslin_pressing *plan, uint32_t node)
{
    return &plan->node[node - 1];
}

static inline uint32_t msl_own_seams(const struct muslin_pressing *plan, uint32_t node)
{
    return plan->node[node].first_seam - plan->node[node - 1].first_seam;
}

/* Places that differ: those of a long join that repeats its children count only through two of its repeats. */
static inline uint32_t msl_own_places(const struct muslin_pressing *plan, uint32_t node)
{
    return plan->node[node].first_place - plan->node[node - 1].first_place;
}

/* The place in which a node has its part k, which carries seams. */
static inline uint32_t msl_pressing_place(const struct muslin_pressing *plan, uint32_t node, int64_t k)
{
    return plan->node[node - 1].first_place + (uint32_t)(k % msl_own_places(plan, node));
}

static inline int32_t msl_kind_of(const struct muslin_pressing *plan, uint32_t node)
{
    return msl_node_row(plan->solution->quilt, node)->kind;
}

static inline int64_t msl_copies_of(const struct muslin_pressing *plan, uint32_t node)
{
    return msl_copies(&plan->solution->counts[node - 1]);
}

/* ---- in the making ---------------------------------------------------------------------------------------------- */

/* Where a seam ends on an edge. */
struct msl_end {
    muslin_len at;      /* from the left or lower end of the edge */
    muslin_len reach;   /* how far its seam goes straight in from the edge; of a slanted one 0 */
    uint32_t seam;      /* in the plan's numbers */
    uint32_t taken;     /* through which places: the last struct msl_taken, counted from 1; 0: none with a bit */
    uint8_t first_high; /* 1: its first piece lies to the right of it, or above */
    uint8_t slanted;    /* 1: it does not stand at right angles to the edge */
    uint8_t pad[6];
};

struct msl_taken {
    uint32_t bit;  /* of a place */
    uint32_t next; /* as above */
};

/* Bits that are to add up to an odd or an even number. */
struct msl_rule {
    int64_t weight[2]; /* of meetings that nest when it is even, and odd */
    uint32_t first;    /* of its bits */
    uint32_t count;
    uint32_t hash;
    uint32_t pad;
};

/* A bit sum of a turning. */
struct msl_turned_end {
    uint32_t first; /* of its bits */
    uint32_t count;
    uint32_t odd;   /* what they must add up to */
    uint32_t pad;
};

/* A turn by which a node comes to be as if pressed the other way, when all its sums come out. */
struct msl_turning {
    uint32_t node;
    uint32_t first; /* of its sums */
    uint32_t count;
    uint8_t turn;   /* quarters */
    uint8_t alike;  /* enum msl_alike */
    uint8_t holds;  /* in the end */
    uint8_t pad;
};
enum msl_alike { MSL_ALIKE_UNKNOWN, MSL_ALIKE, MSL_NOT_ALIKE };

struct msl_nesting {
    struct muslin_pressing *plan;
    struct msl_check *check;
    struct msl_rows ends;  /* struct msl_end */
    struct msl_rows taken; /* struct msl_taken */
    struct msl_rows rules; /* struct msl_rule */
    struct msl_rows terms; /* uint32_t: bits of the rules, rising */
    struct msl_rows sum;   /* uint32_t: of a rule in the making */
    struct msl_rows turnings;    /* struct msl_turning, one node after the other */
    struct msl_rows turned_ends; /* struct msl_turned_end */
    struct msl_rows turned_bits; /* uint32_t */
    struct msl_rows low;   /* struct msl_end: on both sides of a line, where they are brought together */
    struct msl_rows high;
    uint32_t *table; /* open addressing: rules by their bits, counted from 1 */
    uint64_t places; /* in it */
    struct msl_told *told; /* of exceptions */
    int bounds_all;        /* 1: no other plan has fewer exceptions than the least of this one */
    int pad;
};

static inline const struct msl_rule *msl_rule_at(const struct msl_nesting *nesting, uint64_t rule)
{
    return (const struct msl_rule *)nesting->rules.rows + rule;
}

static inline const uint32_t *msl_terms_of(const struct msl_nesting *nesting, const struct msl_rule *rule)
{
    return msl_rows_from(&nesting->terms, rule->first, sizeof(uint32_t));
}

/* What more meetings want of a rule, and how many more. */
static inline uint8_t msl_rule_odd(const struct msl_rule *rule)
{
    return rule->weight[1] > rule->weight[0];
}

static inline int64_t msl_rule_gain(const struct msl_rule *rule)
{
    int64_t more = rule->weight[1] - rule->weight[0];
    return more < 0 ? -more : more;
}

/* The end of a seam, seen along a line that runs up (1) or across (0): `at` is still to be set. */
struct msl_end msl_end_of(uint32_t number, const struct msl_seam *seam, int line_runs_up);
void msl_add_end(struct msl_nesting *nesting, struct msl_rows *into, const struct msl_end *end);

/* Adds an end's bits to the sum, and that of a place (or 0). Returns what the end adds that is no bit. */
uint32_t msl_take_end(struct msl_nesting *nesting, const struct msl_end *end, uint32_t bit);
void msl_add_to_sum(struct msl_nesting *nesting, uint32_t bit);
/* Bits that stand in the sum twice cancel. */
void msl_cancel_sum(struct msl_nesting *nesting);
/* Adds the sum's bits to these rows. Returns at which they begin. */
uint32_t msl_put_sum(struct msl_nesting *nesting, struct msl_rows *into);
/* The rule whose bits stand in the sum: the one there is, or a new one. */
uint32_t msl_rule_of_sum(struct msl_nesting *nesting);

/* Whether an edge's left or lower end becomes the right or upper one by a turn. `edge` is the one before it, `after`
 * the one it comes to be. */
int msl_is_reversed(int32_t turn, enum msl_edge edge, enum msl_edge after);

/* Every node's ends on its edges, and its turnings. */
void msl_find_ends(struct msl_nesting *nesting);
/* Adds the ends on one edge of a part to `into`, as they lie in the node, taken through its place; where so much is
 * trimmed there, upright ones that reach further alone. */
void msl_take_ends(struct msl_nesting *nesting, struct msl_rows *into, uint32_t node, int64_t k, enum msl_edge edge,
                   muslin_len trimmed);
/* Sorts ends, from this one on, by where they lie; equal ones stay in their order. */
void msl_sort_ends(struct msl_nesting *nesting, struct msl_rows *ends, uint64_t first);

/* Where ends meet: a node's seam, by this line, in so many copies. */
struct msl_line {
    struct msl_seam seam; /* its ends */
    uint32_t node;
    uint32_t number;
    int64_t count;
    int32_t on_point; /* 1: the ends are in a turned frame */
    int32_t pad;
};

/* Holds nesting->low against nesting->high along a line; empties both. */
void msl_meet_gathered(struct msl_nesting *nesting, const struct msl_line *line);

/* Meetings within nodes that are no joins. */
void msl_meet_in_pinwheel(struct msl_nesting *nesting, uint32_t node);
void msl_meet_on_point(struct msl_nesting *nesting, uint32_t node);
void msl_meet_in_sixty(struct msl_nesting *nesting, uint32_t node);

/* The turnings of a node whose ends are known, and whether it can be taken the other way at all. */
void msl_find_turnings(struct msl_nesting *nesting, uint32_t node);
/* Whether its node looks the same when it is turned so. */
int msl_is_alike(struct msl_nesting *nesting, struct msl_turning *turning);
/* Whether a node can be taken the other way by pressing it so, with all that is in it. */
int msl_can_be_pressed(const struct muslin_pressing *plan, uint32_t node);
/* Adds what turnings of nodes with asked seams need to the rules, heavier than all meetings: of all, or as chosen. */
void msl_hold_turnings(struct msl_nesting *nesting);
static inline struct msl_turning *msl_turning_at(const struct msl_nesting *nesting, uint64_t number)
{
    return (struct msl_turning *)nesting->turnings.rows + number;
}
static inline const struct msl_turned_end *msl_turned_end_at(const struct msl_nesting *nesting, uint64_t number)
{
    return (const struct msl_turned_end *)nesting->turned_ends.rows + number;
}

/* All meetings: plan->met and the rules. */
void msl_find_meetings(struct msl_nesting *nesting);

/* Counts the copies of each node either way: begins with the root, and from there down a node's copies go to its parts.
 * Of one that is turned all are pressed as it is shown. */
void msl_begin_count(const struct muslin_pressing *plan);
void msl_count_parts_of(const struct muslin_pressing *plan, uint32_t node);

/* Solves the rules: fills in the ways of seams and places, and the totals. `alternating` has a way for each bit. */
void msl_solve_rules(struct msl_nesting *nesting, const uint8_t *alternating);

#endif
