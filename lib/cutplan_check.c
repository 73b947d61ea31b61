/* cutplan_check.c - proves a plan and its bound anew.
 *
 * SPDX-License-Identifier: MIT
 *
 * A plan holds when its patterns can be cut and give what is wanted, and cost what is said. A bound holds when it is
 * proved of each case that is not split, and no split leaves a plan out. Only plans are looked at that cut just what is
 * wanted: whatever else a plan cuts can be left out without cost.
 *
 * What worths prove of a case: all that is wanted, and all that the limits of the case ask, is worth `total` in any
 * plan that keeps to them. A thing of a way is worth no more than `most`. Then a plan that costs `cost` is worth at
 * most cost x (the largest most / cost of a way), and that has to reach `total`. So no plan costs `cost` or less where
 * cost x most < total x cost of the way, for every way; the point of the worths does not matter to it. */
#include "cutplan_check.h"
#include "cutplan_plan.h"
#include "cutplan_repack.h"
#include "wide.h"

/* A case's limit never asks for more. */
static const int64_t WANTED_MAX = (int64_t)1 << 40;

enum { REACH_MAX = 1 << 23 };

/* What is known of a case once it was looked at. */
struct known {
    int64_t least; /* proved, by its own worths or those of a case that it is a part of */
    int64_t depth; /* conditions on the way to it */
};

struct proof {
    const struct msl_cutting *cutting;
    const struct msl_found *found;
    struct muslin_cutplan_checked *out;
    int64_t *cut;        /* of each size, by the plan */
    int64_t *used;       /* of each stock, by the plan */
    int64_t *worth;      /* of a piece of each size in one way */
    uint64_t *reach;     /* a bit for each sum of costs up to the plan's; null: not looked at */
    struct known *known; /* of each case */
    struct msl_repacked *pieces; /* of each size */
    struct msl_most most;
};

/* Notes a fault, the first one, at which all ends. Returns 0, for whom it is passed on to. */
static int is_fault(struct proof *proof, int32_t fault, int64_t at)
{
    proof->out->fault = fault;
    proof->out->at = at;
    return 0;
}

/* first .. first + count - 1 lie within an array of so many. */
static int is_within(int64_t first, int64_t count, int64_t most)
{
    return first >= 0 && count >= 0 && first + count <= most;
}

/* ---- the plan --------------------------------------------------------------------------------------------------- */

/* A strip while it is filled. */
struct filled {
    int64_t height; /* of a panel's slit pieces its length */
    int64_t used;   /* of its room */
    int64_t taken;  /* by each of the blanks laid last, */
    int64_t high;   /* ... how high pieces lie in them */
    int64_t count;  /* ... and how many these are */
    int32_t slit;
    int32_t number;
};

/* Lays pieces in the blanks laid last, above what is there. */
static int lay_above(struct proof *proof, struct filled *strip, int32_t number)
{
    const struct msl_laid *laid = &proof->found->plan.laid[number];
    const struct msl_piece_size *size = &proof->cutting->sizes[laid->size];
    const struct msl_lying lying = msl_lying_in(size, strip->height, laid->other_way);
    if (proof->cutting->stacked == 0 || strip->slit != 0 || lying.height > strip->height - strip->high ||
        lying.taken == 0)
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, number);
    if (lying.taken != strip->taken || size->run_in != 0 || laid->count > strip->count)
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_OVERFULL, strip->number);
    strip->high += lying.height;
    strip->count = laid->count;
    return 1;
}

static int lay_beside(struct proof *proof, struct filled *strip, int32_t number)
{
    const struct msl_laid *laid = &proof->found->plan.laid[number];
    const struct msl_piece_size *size = &proof->cutting->sizes[laid->size];
    const struct msl_lying lying = msl_lying_in(size, strip->height, laid->other_way);
    if (lying.taken == 0)
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, number);
    strip->used = msl_most_added(strip->used, size->run_in + laid->count * lying.taken);
    strip->taken = lying.taken;
    strip->high = size->run_in == 0 ? lying.height : strip->height;
    strip->count = laid->count;
    return 1;
}

static int lay(struct proof *proof, struct filled *strip, int32_t number, int64_t times)
{
    const struct msl_laid *laid = &proof->found->plan.laid[number];
    if (laid->size < 0 || laid->size >= proof->cutting->size_count || laid->count < 1)
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_MISSING, laid->size);
    if ((laid->above != 0 ? lay_above(proof, strip, number) : lay_beside(proof, strip, number)) == 0)
        return 0;
    proof->cut[laid->size] = msl_most_added(proof->cut[laid->size], laid->count * times);
    return 1;
}

/* 1 where all that lies in the strip is of one size. */
static int has_one_size(const struct msl_pool *plan, const struct msl_strip *strip)
{
    for (int32_t i = strip->first; i < strip->first + strip->count; i++)
        if (plan->laid[i].size != plan->laid[strip->first].size)
            return 0;
    return 1;
}

/* Fills a strip of a pattern, as high as `height`, or its slit pieces, and takes what they use from *room. Within a
 * sheet, slit pieces lie beside strips and in none. */
static int fill_strip(struct proof *proof, const struct msl_pattern *pattern, int32_t number, int64_t height,
                      int64_t *room)
{
    const struct msl_pool *plan = &proof->found->plan;
    const struct msl_strip *strip = &plan->strips[number];
    const int32_t is_within_sheet = proof->cutting->ways[pattern->way].sheet;
    struct filled filled = { .height = height, .high = height, .slit = strip->height == 0, .number = number };
    if (!is_within(strip->first, strip->count, plan->laid_count))
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_OVERFULL, number);
    if (proof->cutting->one_size != 0 && filled.slit == 0 && !has_one_size(plan, strip))
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, strip->first);
    for (int32_t i = strip->first; i < strip->first + strip->count; i++) {
        if (lay(proof, &filled, i, pattern->times) == 0)
            return 0;
        if (is_within_sheet && proof->cutting->sizes[plan->laid[i].size].slit != filled.slit)
            return is_fault(proof, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, i);
    }
    *room -= filled.used;
    return *room < 0 ? is_fault(proof, MUSLIN_CUTPLAN_FAULT_OVERFULL, number) : 1;
}

/* A way that is one strip: the pattern has that one, as high. */
static int fill_one(struct proof *proof, int32_t number)
{
    const struct msl_pool *plan = &proof->found->plan;
    const struct msl_pattern *pattern = &plan->patterns[number];
    const struct msl_way *way = &proof->cutting->ways[pattern->way];
    int64_t room = way->across;
    if (pattern->count != 1)
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_OVERFULL, pattern->first);
    if (plan->strips[pattern->first].height != way->along)
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, plan->strips[pattern->first].first);
    return fill_strip(proof, pattern, pattern->first, way->along, &room);
}

/* A sheet: a panel's slit pieces beside strips one behind the other. */
static int fill_sheet(struct proof *proof, int32_t number)
{
    const struct msl_pool *plan = &proof->found->plan;
    const struct msl_pattern *pattern = &plan->patterns[number];
    const struct msl_way *way = &proof->cutting->ways[pattern->way];
    const int32_t end = pattern->first + pattern->count;
    int64_t across = way->across;
    int64_t along = way->along;
    for (int32_t i = pattern->first; i < end; i++) {
        const int64_t height = plan->strips[i].height;
        if (height < 0 || height > along || (height == 0 && way->panel == 0))
            return is_fault(proof, MUSLIN_CUTPLAN_FAULT_OVERFULL, i);
        along -= height;
        if (height == 0 && fill_strip(proof, pattern, i, way->along, &across) == 0)
            return 0;
    }
    for (int32_t i = pattern->first; i < end; i++) {
        const int64_t height = plan->strips[i].height;
        int64_t room = across;
        if (height > 0 && fill_strip(proof, pattern, i, height, &room) == 0)
            return 0;
    }
    return 1;
}

static int follow_pattern(struct proof *proof, int32_t number)
{
    const struct msl_cutting *cutting = proof->cutting;
    const struct msl_pool *plan = &proof->found->plan;
    const struct msl_pattern *pattern = &plan->patterns[number];
    if (pattern->way < 0 || pattern->way >= cutting->way_count || pattern->times < 1 ||
        pattern->times > MUSLIN_COUNT_MAX)
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_COST, number);
    if (!is_within(pattern->first, pattern->count, plan->strip_count))
        return is_fault(proof, MUSLIN_CUTPLAN_FAULT_OVERFULL, pattern->first);
    const struct msl_way *way = &cutting->ways[pattern->way];
    proof->out->cost = msl_most_added(proof->out->cost, way->cost * pattern->times);
    if (way->stock >= 0)
        proof->used[way->stock] += pattern->times;
    return way->sheet != 0 ? fill_sheet(proof, number) : fill_one(proof, number);
}

/* 1 where the plan can be cut, and gives what is wanted at the cost that is said. */
static int holds(struct proof *proof)
{
    const struct msl_cutting *cutting = proof->cutting;
    for (int32_t i = 0; i < proof->found->plan.pattern_count; i++)
        if (follow_pattern(proof, i) == 0)
            return 0;
    for (int32_t i = 0; i < cutting->size_count; i++)
        if (proof->cut[i] < cutting->sizes[i].count)
            return is_fault(proof, MUSLIN_CUTPLAN_FAULT_MISSING, i);
    for (int32_t i = 0; i < cutting->stock_count; i++)
        if (proof->used[i] > cutting->available[i])
            return is_fault(proof, MUSLIN_CUTPLAN_FAULT_STOCK, i);
    return proof->out->cost == proof->found->cost ? 1 : is_fault(proof, MUSLIN_CUTPLAN_FAULT_COST, 0);
}

/* ---- splits ----------------------------------------------------------------------------------------------------- */

/* What is counted by the limit can be counted. */
static int is_countable(const struct msl_cutting *cutting, const struct msl_limit *limit)
{
    const int in_ways = limit->first_way >= 0 && limit->first_way <= limit->last_way &&
                        limit->last_way < cutting->way_count;
    if (limit->kind == MSL_LIMIT_COPIES)
        return in_ways && limit->first_way == limit->last_way && limit->size >= 0 && limit->size < cutting->size_count;
    return in_ways && limit->kind == MSL_LIMIT_WAYS;
}

/* The one asks for at most some number of something, the other for at least one more of the same. */
static int leave_nothing_out(const struct msl_limit *at_most, const struct msl_limit *at_least)
{
    return at_most->at_least == 0 && at_least->at_least == 1 && at_most->kind == at_least->kind &&
           at_most->first_way == at_least->first_way && at_most->last_way == at_least->last_way &&
           (at_most->kind == MSL_LIMIT_WAYS || at_most->size == at_least->size) && at_most->wanted >= 0 &&
           at_most->wanted < WANTED_MAX && at_least->wanted == at_most->wanted + 1;
}

static int is_whole_split(const struct proof *proof, int32_t number)
{
    const struct msl_case *cases = proof->found->cases;
    const int32_t split = cases[number].split;
    if (!is_within(split, 2, proof->found->case_count))
        return 0;
    const struct msl_limit *first = &cases[split].limit;
    const struct msl_limit *second = &cases[split + 1].limit;
    if (cases[split].parent != number || cases[split + 1].parent != number || !is_countable(proof->cutting, first))
        return 0;
    return leave_nothing_out(first, second) || leave_nothing_out(second, first);
}

/* 1 where a case before it is split, and this is one of the two parts. */
static int is_part(const struct msl_case *cases, int32_t number)
{
    const int32_t parent = cases[number].parent;
    if (parent < 0 || parent >= number || cases[parent].split == 0)
        return 0;
    return cases[parent].split == number || cases[parent].split == number - 1;
}

/* 1 where all cases are one tree from the whole down, and those that a split makes leave nothing out. */
static int covers_all(struct proof *proof)
{
    const struct msl_case *cases = proof->found->cases;
    for (int32_t i = 0; i < proof->found->case_count; i++) {
        const int32_t parent = cases[i].parent;
        const int is_root = i == 0 && parent == -1;
        if (!is_root && !is_part(cases, i))
            return is_fault(proof, MUSLIN_CUTPLAN_FAULT_GAP, i);
        if (cases[i].split != 0 && !is_whole_split(proof, i))
            return is_fault(proof, MUSLIN_CUTPLAN_FAULT_GAP, i);
        proof->known[i].depth = is_root ? 0 : proof->known[parent].depth + 1;
    }
    return 1;
}

/* ---- what worths prove ------------------------------------------------------------------------------------------ */

static int is_of_sign(int64_t worth, int32_t at_least)
{
    return at_least != 0 ? worth >= 0 && worth <= MSL_WORTH_MAX : worth <= 0 && worth >= -MSL_WORTH_MAX;
}

/* The worths of a case: of the sizes, the stocks, and the limits by their depth. */
struct worths {
    const int64_t *sizes;
    const int64_t *stocks;
    const int64_t *limits;
};

static struct worths worths_of(const struct proof *proof, int32_t number)
{
    const struct msl_cutting *cutting = proof->cutting;
    struct worths worths;
    worths.sizes = proof->found->worths + proof->found->cases[number].first_worth;
    worths.stocks = worths.sizes + cutting->size_count;
    worths.limits = worths.stocks + cutting->stock_count;
    return worths;
}

/* What a case's limit adds is worth, each: the limit of the whole itself has none. */
static int64_t limit_worth(const struct proof *proof, const struct worths *worths, int32_t number)
{
    return worths->limits[proof->known[number].depth - 1];
}

/* Adds up what is wanted by its worth. Returns 0 where a worth has the wrong sign, or all is worth nothing or more than
 * can be counted. */
static int add_up(const struct proof *proof, int32_t number, const struct worths *worths, int64_t *total)
{
    const struct msl_cutting *cutting = proof->cutting;
    const struct msl_case *cases = proof->found->cases;
    struct msl_wide sum = msl_wide_from(0);
    for (int32_t i = 0; i < cutting->size_count; i++) {
        if (!is_of_sign(worths->sizes[i], 1))
            return 0;
        sum = msl_wide_add(sum, msl_wide_multiply(worths->sizes[i], cutting->sizes[i].count));
    }
    for (int32_t i = 0; i < cutting->stock_count; i++) {
        if (!is_of_sign(worths->stocks[i], 0) || (cutting->available[i] == INT64_MAX && worths->stocks[i] != 0))
            return 0;
        sum = msl_wide_add(sum, msl_wide_multiply(worths->stocks[i], cutting->available[i]));
    }
    for (int32_t at = number; at != 0; at = cases[at].parent) {
        if (!is_of_sign(limit_worth(proof, worths, at), cases[at].limit.at_least))
            return 0;
        sum = msl_wide_add(sum, msl_wide_multiply(limit_worth(proof, worths, at), cases[at].limit.wanted));
    }
    if (msl_wide_compare(sum, msl_wide_from(0)) <= 0 || msl_wide_compare(sum, msl_wide_from(MSL_WORTH_MAX)) > 0)
        return 0;
    *total = (int64_t)sum.low;
    return 1;
}

static int is_countable_worth(int64_t worth)
{
    return worth >= -MSL_WORTH_MAX && worth <= MSL_WORTH_MAX;
}

/* What a piece of each size is worth in this way, to proof->worth, and the thing itself. Returns 0 where that can't be
 * counted. */
static int worth_in_way(struct proof *proof, int32_t number, const struct worths *worths, int32_t way, int64_t *itself)
{
    const struct msl_case *cases = proof->found->cases;
    const int32_t stock = proof->cutting->ways[way].stock;
    *itself = stock >= 0 ? worths->stocks[stock] : 0;
    for (int32_t i = 0; i < proof->cutting->size_count; i++)
        proof->worth[i] = worths->sizes[i];
    for (int32_t at = number; at != 0; at = cases[at].parent) {
        const struct msl_limit *limit = &cases[at].limit;
        if (way < limit->first_way || way > limit->last_way)
            continue;
        int64_t *worth = limit->kind == MSL_LIMIT_COPIES ? &proof->worth[limit->size] : itself;
        *worth += limit_worth(proof, worths, at);
        if (!is_countable_worth(*worth))
            return 0;
    }
    return 1;
}

/* The most that a thing of this cost may be worth, so that plans which cost `cost` are worth less than `total`. */
static int64_t most_allowed(int64_t total, int64_t way_cost, int64_t cost)
{
    int64_t most = MSL_WORTH_MAX;
    int64_t rest;
    if (cost > 0)
        msl_wide_floor(msl_wide_add(msl_wide_multiply(total, way_cost), msl_wide_from(-1)), cost, &most, &rest);
    return msl_lesser(most, MSL_WORTH_MAX);
}

/* 1 where no thing of the way is worth more than allowed. */
static int is_worth_at_most(struct proof *proof, int32_t way, int64_t itself, int64_t allowed)
{
    if (itself > allowed)
        return 0;
    const int64_t enough = msl_lesser(allowed - itself, MSL_WORTH_MAX - 1);
    return msl_most_of(&proof->most, way, proof->worth, enough) <= enough;
}

/* The largest sum of costs below `least`, 1 or more. */
static int64_t sum_below(const struct proof *proof, int64_t least)
{
    int64_t sum = least - 1;
    if (proof->reach == NULL || sum > proof->out->cost)
        return sum;
    while ((proof->reach[sum / 64] >> (sum % 64) & 1) == 0)
        sum--;
    return sum;
}

/* 1 where the worths of the case prove that its plans cost what it says at least. */
static int do_prove(struct proof *proof, int32_t number)
{
    const struct msl_case *of = &proof->found->cases[number];
    const struct msl_cutting *cutting = proof->cutting;
    int64_t total = 0;
    if (of->worth_count != cutting->size_count + cutting->stock_count + proof->known[number].depth ||
        !is_within(of->first_worth, of->worth_count, proof->found->worth_count))
        return 0;
    const struct worths worths = worths_of(proof, number);
    if (of->least <= 0)
        return 1;
    if (add_up(proof, number, &worths, &total) == 0)
        return 0;
    const int64_t below = sum_below(proof, of->least);
    for (int32_t way = 0; way < cutting->way_count; way++) {
        const int64_t allowed = most_allowed(total, cutting->ways[way].cost, below);
        int64_t itself = 0;
        if (worth_in_way(proof, number, &worths, way, &itself) == 0 || !is_worth_at_most(proof, way, itself, allowed))
            return 0;
    }
    return 1;
}

/* What the limits of a case ask of one way: at least so many pieces of each size, to proof->worth, in at most so many
 * strips, which are returned. */
static int64_t asked_of_way(struct proof *proof, int32_t number, int32_t way)
{
    const struct msl_case *cases = proof->found->cases;
    int64_t strips = INT64_MAX;
    for (int32_t i = 0; i < proof->cutting->size_count; i++)
        proof->worth[i] = 0;
    for (int32_t at = number; at != 0; at = cases[at].parent) {
        const struct msl_limit *limit = &cases[at].limit;
        if (limit->first_way != way || limit->last_way != way)
            continue;
        if (limit->kind == MSL_LIMIT_WAYS && limit->at_least == 0)
            strips = msl_lesser(strips, limit->wanted);
        if (limit->kind == MSL_LIMIT_COPIES && limit->at_least != 0)
            proof->worth[limit->size] = msl_greater(proof->worth[limit->size], limit->wanted);
    }
    return strips;
}

/* 1 where the pieces that a case asks for in one way do not fit into the strips that it allows there. */
static int is_overfull(struct proof *proof, int32_t number)
{
    const struct msl_cutting *cutting = proof->cutting;
    const uint32_t packed = (uint32_t)proof->found->cases[number].packed - 1;
    const int32_t way = (int32_t)packed;
    int32_t count = 0;
    if (packed >= (uint32_t)cutting->way_count || cutting->ways[way].sheet != 0 || cutting->stacked != 0)
        return 0;
    const int64_t strips = asked_of_way(proof, number, way);
    for (int32_t i = 0; i < cutting->size_count; i++) {
        const struct msl_piece_size *size = &cutting->sizes[i];
        const int64_t taken = msl_lying_in(size, cutting->ways[way].along, 0).taken;
        const struct msl_repacked piece = { taken, size->run_in, proof->worth[i] };
        if (piece.wanted == 0)
            continue;
        if (taken == 0 || piece.wanted > size->count)
            return 1;
        proof->pieces[count++] = piece;
    }
    return msl_repack_fails(&proof->most, proof->pieces, count, strips, cutting->ways[way].across);
}

/* Proves every case; what one that is neither split nor overfull may cost at least is the bound. */
static void bound_all(struct proof *proof)
{
    const struct msl_found *found = proof->found;
    int64_t least = found->case_count == 0 ? 0 : proof->out->cost;
    for (int32_t i = 0; proof->most.status == MUSLIN_OK && i < found->case_count; i++) {
        const struct msl_case *of = &found->cases[i];
        struct known *known = &proof->known[i];
        const int64_t above = i == 0 ? 0 : proof->known[of->parent].least;
        const int is_proved = (of->worth_count == 0 ? of->least <= above : do_prove(proof, i)) &&
                              (of->packed == 0 || is_overfull(proof, i));
        if (!is_proved) {
            is_fault(proof, MUSLIN_CUTPLAN_FAULT_BOUND, i);
            return;
        }
        proof->most.told->bound = ++proof->out->cases;
        known->least = of->least > above ? of->least : above;
        if (of->split == 0 && of->packed == 0 && known->least < least)
            least = known->least;
    }
    proof->out->least = least;
    if (found->least > least)
        is_fault(proof, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
}

/* ---- all of it -------------------------------------------------------------------------------------------------- */

/* Which sums of costs there are, up to the plan's. */
static void find_sums(struct proof *proof)
{
    const int64_t most = proof->out->cost;
    proof->reach[0] = 1;
    for (int64_t i = 1; i <= most / 64; i++)
        proof->reach[i] = 0;
    for (int32_t way = proof->cutting->way_count - 1; way >= 0; way--) {
        const int64_t cost = proof->cutting->ways[way].cost;
        const int is_new = cost <= most && (proof->reach[cost / 64] >> (cost % 64) & 1) == 0;
        for (int64_t sum = cost; is_new && sum <= most; sum++) /* what is a sum of others adds none */
            proof->reach[sum / 64] |= (proof->reach[(sum - cost) / 64] >> ((sum - cost) % 64) & 1) << (sum % 64);
    }
}

static void prove(struct proof *proof)
{
    if (holds(proof) == 0 || covers_all(proof) == 0)
        return;
    if (proof->reach != NULL)
        find_sums(proof);
    bound_all(proof);
}

muslin_status msl_found_check(const struct msl_cutting *cutting, const struct msl_found *found, int64_t most_steps,
                              struct msl_told *told, const struct muslin_allocator *allocator,
                              struct muslin_cutplan_checked *out)
{
    const int64_t words = (uint64_t)found->cost < REACH_MAX ? found->cost / 64 + 1 : 0;
    const size_t numbers = (size_t)cutting->size_count * 2 + (size_t)cutting->stock_count;
    const size_t bytes = (numbers + (size_t)words) * sizeof(int64_t) +
                         (size_t)found->case_count * sizeof(struct known) +
                         (size_t)cutting->size_count * sizeof(struct msl_repacked);
    struct muslin_cutplan_checked checked = { .size = out->size, .flags = out->flags };
    struct proof proof = { .cutting = cutting, .found = found, .out = &checked };
    told->best = found->case_count;
    muslin_status status = msl_most_start(&proof.most, cutting, most_steps, told, allocator);
    int64_t *room = status == MUSLIN_OK ? allocator->alloc(allocator->context, bytes) : NULL;
    if (room != NULL) {
        for (size_t i = 0; i < numbers; i++)
            room[i] = 0;
        proof.cut = room;
        proof.worth = proof.cut + cutting->size_count;
        proof.used = proof.worth + cutting->size_count;
        proof.reach = words > 0 ? (uint64_t *)(proof.used + cutting->stock_count) : NULL;
        proof.known = (struct known *)(proof.used + cutting->stock_count + words);
        proof.pieces = (struct msl_repacked *)(proof.known + found->case_count);
        prove(&proof);
        status = proof.most.status;
        allocator->free(allocator->context, room, bytes);
    } else if (status == MUSLIN_OK) {
        status = MUSLIN_ERR_NO_MEMORY;
    }
    msl_most_end(&proof.most);
    if (status == MUSLIN_OK)
        *out = checked;
    return status == MUSLIN_ERR_WORK_LIMIT && told->ended ? MUSLIN_ERR_STOPPED : status;
}

muslin_status msl_check_fails(struct msl_check *check, muslin_status status)
{
    switch (status) {
    case MUSLIN_ERR_WORK_LIMIT:
        return msl_fail(check, status, MUSLIN_ARG_WORK_LIMIT, 0, MSL_CHECK_STEPS_MAX);
    case MUSLIN_ERR_STOPPED:
        return msl_fail(check, status, MUSLIN_ARG_NONE, 0, 0);
    default:
        return msl_fail(check, status, MUSLIN_ARG_ALLOCATOR, 0, 0);
    }
}

/* ---- the public call -------------------------------------------------------------------------------------------- */

muslin_status muslin_cutplan_check(const struct muslin_cutplan *plan, muslin_progress progress, void *context,
                                   struct muslin_cutplan_checked *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_told told = msl_told_by(progress, context);
    struct muslin_cutplan_checked checked = { .size = (uint32_t)sizeof checked };
    msl_want_plan(&check, plan);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    const muslin_status status =
        msl_found_check(&plan->cutting, &plan->found, MSL_CHECK_STEPS_MAX, &told, &plan->allocator, &checked);
    if (status != MUSLIN_OK)
        return msl_check_fails(&check, status);
    checked.cost *= plan->cost_unit;
    checked.least *= plan->cost_unit;
    msl_write_struct(out, &checked, (uint32_t)sizeof checked);
    return check.status;
}
