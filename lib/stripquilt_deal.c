/* stripquilt_deal.c - segments dealt from stacks to blocks, counted without laying them out.
 *
 * SPDX-License-Identifier: MIT
 *
 * Pressing. A block nests when its segments are pressed this way and that way in turn. One rule serves all blocks: the
 * want of a place changes every B places along the line, at flip, flip + B, flip + 2 B ... A set is pressed as most of
 * its segments want; the others lie the wrong way. Only a stack that holds a change has any, and a flip at a multiple
 * of B away from the end of a stack costs that stack nothing. The cost of all stacks, as the flip moves, is made of
 * straight lines that bend upwards only where some change meets the end of a stack; so the least is found at such a
 * place, and as the ends of stacks lie in evenly spaced rows, a handful of them stands for all. */
#include "stripquilt_deal.h"
#include "inside.h"

enum { POSITIONS = MUSLIN_STRIPQUILT_SEGMENTS_MAX };

/* 0 .. divisor - 1, for any a and divisor above 0. */
static int64_t rest_of(int64_t a, int64_t divisor)
{
    int64_t rest = a % divisor;
    return rest < 0 ? rest + divisor : rest;
}

/* ---- stacks ------------------------------------------------------------------------------------------------------ */

/* The places first .. end - 1 of one set's segments. */
struct stack {
    int64_t set; /* from 0 */
    int64_t first;
    int64_t end;
};

/* Where the higher stacks end and the lower ones begin. */
static int64_t highs_end(const struct msl_deal *deal)
{
    return deal->highs * (deal->low + 1);
}

static int64_t line_end(const struct msl_deal *deal)
{
    return deal->per_block * deal->blocks;
}

int64_t msl_deal_height(const struct msl_deal *deal, int64_t set)
{
    return set < deal->highs ? deal->low + 1 : deal->low;
}

static struct stack stack_of(const struct msl_deal *deal, int64_t set)
{
    struct stack stack;
    stack.set = set;
    stack.first = set * deal->low + msl_lesser(set, deal->highs);
    stack.end = stack.first + msl_deal_height(deal, set);
    return stack;
}

static struct stack stack_at(const struct msl_deal *deal, int64_t place)
{
    int64_t low_place = place - highs_end(deal);
    return stack_of(deal, low_place < 0 ? place / (deal->low + 1) : deal->highs + low_place / deal->low);
}

/* ---- which way --------------------------------------------------------------------------------------------------- */

/* 0 or 1: the pressing that a place wants. */
static int32_t want_at(const struct msl_deal *deal, int64_t place)
{
    return (int32_t)((place - deal->flip + 2 * deal->blocks) / deal->blocks % 2);
}

/* How many places from -2 B + flip up to this one want 0: B in every 2 B, the first half of each. */
static int64_t zeros_before(const struct msl_deal *deal, int64_t place)
{
    int64_t turn = 2 * deal->blocks;
    int64_t places = place - deal->flip + turn;
    return places / turn * deal->blocks + msl_lesser(places % turn, deal->blocks);
}

/* As most of its segments want; 0 where they are equally many. */
static int32_t pressing_of(const struct msl_deal *deal, const struct stack *stack)
{
    int64_t zeros = zeros_before(deal, stack->end) - zeros_before(deal, stack->first);
    return 2 * zeros < stack->end - stack->first;
}

int32_t msl_deal_pressing(const struct msl_deal *deal, int64_t set)
{
    struct stack stack = stack_of(deal, set);
    return pressing_of(deal, &stack);
}

/* ---- segments that lie the wrong way ----------------------------------------------------------------------------- */

/* Places first .. end - 1, end to be above first. */
struct stretch {
    int64_t first;
    int64_t end;
};

/* Between two changes of the want there is at most one wrong stretch at either end. */
struct stretches {
    int64_t count;
    struct stretch at[2 * (POSITIONS + 1)];
};

static void add_if_wrong(struct stretches *wrong, const struct msl_deal *deal, const struct stack *stack,
                         struct stretch part)
{
    if (pressing_of(deal, stack) == want_at(deal, part.first))
        return;
    wrong->at[wrong->count] = part;
    wrong->count++;
}

/* The stacks that reach over the ends of a stretch of one want; those within it are pressed as it wants. */
static void add_ends(struct stretches *wrong, const struct msl_deal *deal, struct stretch same)
{
    struct stack front = stack_at(deal, same.first);
    struct stack back = stack_at(deal, same.end - 1);
    struct stretch at_front = { same.first, msl_lesser(front.end, same.end) };
    struct stretch at_back = { back.first, same.end };
    add_if_wrong(wrong, deal, &front, at_front);
    if (back.set != front.set)
        add_if_wrong(wrong, deal, &back, at_back);
}

static void find_wrong(struct stretches *wrong, const struct msl_deal *deal)
{
    int64_t first = 0;
    wrong->count = 0;
    for (int64_t position = 0; position <= deal->per_block; position++) {
        struct stretch same = { first, msl_lesser(deal->flip + position * deal->blocks, line_end(deal)) };
        if (same.end > same.first)
            add_ends(wrong, deal, same);
        first = same.end;
    }
}

int64_t msl_deal_wrong(const struct msl_deal *deal)
{
    struct stretches wrong;
    int64_t segments = 0;
    find_wrong(&wrong, deal);
    for (int64_t i = 0; i < wrong.count; i++)
        segments += wrong.at[i].end - wrong.at[i].first;
    return segments;
}

/* ---- joins that do not nest -------------------------------------------------------------------------------------- */

/* How many places two stretches share. */
static int64_t shared(struct stretch a, struct stretch b)
{
    return msl_greater(msl_lesser(a.end, b.end) - msl_greater(a.first, b.first), 0);
}

/* A place and the one B further, its right neighbour in the block, clash when just one of them lies the wrong way. So
 * each wrong place clashes on either side where it has a neighbour, less twice the pairs that are wrong together. */
int64_t msl_deal_clashes(const struct msl_deal *deal)
{
    struct stretches wrong;
    struct stretch with_right = { 0, line_end(deal) - deal->blocks };
    struct stretch with_left = { deal->blocks, line_end(deal) };
    int64_t joins = 0;
    find_wrong(&wrong, deal);
    for (int64_t i = 0; i < wrong.count; i++) {
        struct stretch right = { wrong.at[i].first + deal->blocks, wrong.at[i].end + deal->blocks };
        joins += shared(wrong.at[i], with_right) + shared(wrong.at[i], with_left);
        for (int64_t j = 0; j < wrong.count; j++)
            joins -= 2 * shared(right, wrong.at[j]);
    }
    return joins;
}

/* ---- ends of stacks, as rows of evenly spaced blocks ------------------------------------------------------------- */

/* Blocks at which a stack begins at one position: those that leave `rest` when divided by `step`. */
struct comb {
    int64_t step;
    int64_t rest;
};

/* The combs of all positions, each different one once, over blocks first .. last. */
struct field {
    int64_t first;
    int64_t last;
    int64_t count;
    struct comb comb[POSITIONS];
};

static void add_comb(struct field *field, struct comb comb)
{
    for (int64_t i = 0; i < field->count; i++)
        if (field->comb[i].step == comb.step && field->comb[i].rest == comb.rest)
            return;
    field->comb[field->count] = comb;
    field->count++;
}

/* The first `high_positions` positions lie in higher stacks all over the field, the others in lower ones. */
static void find_field(struct field *field, const struct msl_deal *deal, int64_t first, int64_t last,
                       int64_t high_positions)
{
    field->first = first;
    field->last = last;
    field->count = 0;
    for (int64_t position = 0; position < deal->per_block; position++) {
        int64_t high = position < high_positions;
        int64_t begins = high ? 0 : highs_end(deal);
        struct comb comb = { deal->low + high, 0 };
        comb.rest = rest_of(begins - position * deal->blocks, comb.step);
        add_comb(field, comb);
    }
}

/* The blocks before and from the one where, at some position, the lower stacks begin. */
static void find_field_before(struct field *field, const struct msl_deal *deal)
{
    int64_t bend = highs_end(deal);
    find_field(field, deal, 0, bend % deal->blocks - 1, bend / deal->blocks + 1);
}

static void find_field_after(struct field *field, const struct msl_deal *deal)
{
    int64_t bend = highs_end(deal);
    find_field(field, deal, bend % deal->blocks, deal->blocks - 1, bend / deal->blocks);
}

static int64_t first_tooth(const struct field *field, struct comb comb)
{
    return field->first + rest_of(comb.rest - field->first, comb.step);
}

static int64_t last_tooth(const struct field *field, struct comb comb)
{
    return field->last - rest_of(field->last - comb.rest, comb.step);
}

static int64_t teeth(const struct field *field, struct comb comb)
{
    int64_t first = first_tooth(field, comb);
    return first > field->last ? 0 : (field->last - first) / comb.step + 1;
}

/* Where the teeth of two combs meet whose steps are n + 1 and n: block b + n t of the lower comb is one of the higher
 * comb when b + n t = a modulo n + 1, and since n = -1 there, when t = b - a. */
static struct comb common(struct comb high, struct comb low)
{
    struct comb both = { high.step * low.step, low.rest + low.step * rest_of(low.rest - high.rest, high.step) };
    return both;
}

/* Combs of one step are disjoint, for equal ones are kept once; those of the higher step come first. */
static int64_t blocks_with_teeth(const struct field *field)
{
    int64_t blocks = 0;
    for (int64_t i = 0; i < field->count; i++) {
        blocks += teeth(field, field->comb[i]);
        for (int64_t j = 0; j < i; j++)
            if (field->comb[j].step != field->comb[i].step)
                blocks -= teeth(field, common(field->comb[j], field->comb[i]));
    }
    return blocks;
}

int64_t msl_deal_groups(const struct msl_deal *deal)
{
    struct field field;
    find_field_before(&field, deal);
    int64_t blocks = blocks_with_teeth(&field);
    find_field_after(&field, deal);
    return blocks + blocks_with_teeth(&field);
}

/* ---- the best flip ----------------------------------------------------------------------------------------------- */

/* The best so far, with its wrong segments. */
struct best {
    struct msl_deal deal;
    int64_t wrong;
};

static void consider(struct best *best, const struct field *field, int64_t flip)
{
    struct msl_deal tried = best->deal;
    tried.flip = flip;
    if (flip < field->first || flip > field->last)
        return;
    int64_t wrong = msl_deal_wrong(&tried);
    if (wrong >= best->wrong)
        return;
    best->deal = tried;
    best->wrong = wrong;
}

/* Along the teeth of one comb, what the combs of its own step cost is the same everywhere, and what each of the others
 * costs rises and falls evenly, down to nothing where they meet. So the least is at a first or last tooth or a meeting,
 * and all meetings of two combs in one field cost the same. */
static void consider_field(struct best *best, const struct field *field)
{
    for (int64_t i = 0; i < field->count; i++) {
        struct comb comb = field->comb[i];
        consider(best, field, first_tooth(field, comb));
        consider(best, field, last_tooth(field, comb));
        for (int64_t j = 0; j < i; j++)
            if (field->comb[j].step != comb.step)
                consider(best, field, first_tooth(field, common(field->comb[j], comb)));
    }
}

struct msl_deal msl_deal_of(int64_t per_block, int64_t blocks, int64_t sets)
{
    struct best best = { { per_block, blocks, per_block * blocks / sets, per_block * blocks % sets, 0 }, 0 };
    struct field field;
    best.wrong = msl_deal_wrong(&best.deal);
    find_field_before(&field, &best.deal);
    consider_field(&best, &field);
    find_field_after(&field, &best.deal);
    consider_field(&best, &field);
    return best.deal;
}

/* ---- one group --------------------------------------------------------------------------------------------------- */

/* Whether the set at this position has one segment in the block before it. */
static int32_t is_repeated(const struct muslin_block_group *group, int64_t position)
{
    for (int64_t i = 0; i < position; i++)
        if (group->sets[i] == group->sets[position])
            return 1;
    return 0;
}

/* Bit j where the segments j and j + 1 differ: one lies the wrong way, the other does not. */
static uint32_t clashing_joins(uint32_t wrong, int64_t per_block)
{
    return (wrong ^ wrong >> 1) & ((UINT32_C(1) << (per_block - 1)) - 1);
}

struct muslin_block_group msl_deal_group(const struct msl_deal *deal, int64_t first_block, int32_t nesting)
{
    struct muslin_block_group group = { 0 };
    uint32_t wrong = 0;
    int64_t end = deal->blocks;
    for (int64_t position = 0; position < deal->per_block; position++) {
        int64_t place = first_block + position * deal->blocks;
        struct stack stack = stack_at(deal, place);
        group.sets[position] = stack.set + 1;
        group.repeats |= is_repeated(&group, position);
        end = msl_lesser(end, stack.end - position * deal->blocks);
        if (pressing_of(deal, &stack) != want_at(deal, place))
            wrong |= UINT32_C(1) << position;
    }
    group.first_block = first_block + 1;
    group.blocks = end - first_block;
    group.segments = (int32_t)deal->per_block;
    group.turned = nesting == MUSLIN_NESTING_TURN ? wrong : 0;
    group.not_nesting = nesting == MUSLIN_NESTING_NAME ? clashing_joins(wrong, deal->per_block) : 0;
    int32_t to_bottom = msl_deal_pressing(deal, group.sets[0] - 1) != msl_deal_pressing(deal, 0);
    group.first_pressing =
        to_bottom != (int32_t)(group.turned & 1) ? MUSLIN_SET_PRESSING_TO_BOTTOM : MUSLIN_SET_PRESSING_TO_TOP;
    return group;
}
