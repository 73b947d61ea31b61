/* test_pressing_brute.c - pressing plans of small trees against a model that lays every copy out on the table, finds
 * every meeting by looking, and tries all ways of pressing.
 *
 * SPDX-License-Identifier: MIT
 *
 * The model knows nothing of edges or profiles: it has each seam of each copy as a line in the finished top, with the
 * side on which its first piece lies, and sees two seams meet where they end at one point of a third from its two
 * sides. Lengths are whole inches here. */
#include "test_pressing.h"

enum { NODES_MOST = 512, CHILDREN_MOST = 4, LINES_MOST = 4096, MEETINGS_MOST = 8192, BITS_MOST = 15, TREES = 300 };

/* ---- a tree, as the test makes it --------------------------------------------------------------------------------- */

enum { PATCH, ACROSS = MUSLIN_ACROSS, DOWN = MUSLIN_DOWN, TURN };

struct model_node {
    int kind;
    int turn; /* quarters, and 4 when mirrored before */
    int width;
    int height;
    int press;
    int children;
    int64_t child[CHILDREN_MOST];
    int seam_bit;                 /* of its first seam */
    int place_bit[CHILDREN_MOST]; /* -1: nothing to press in the child */
    int has_seams;
    int held; /* by the root */
};

struct model {
    struct muslin_quilt *quilt;
    muslin_id cloth[2];
    uint64_t random;
    struct model_node node[NODES_MOST]; /* by the number of their ids */
    muslin_id id[NODES_MOST];
    int64_t nodes;
    int bits;
};

static int64_t keep(struct model *model, muslin_id id, const struct model_node *node)
{
    int64_t number = muslin_id_number(id);
    ck_assert_int_lt(number, NODES_MOST);
    model->node[number] = *node;
    model->id[number] = id;
    if (number > model->nodes)
        model->nodes = number;
    return number;
}

static int64_t model_patch(struct model *model, int width, int height)
{
    muslin_id cloth = model->cloth[draw(&model->random) % 2];
    struct model_node node = { PATCH, 0, width, height, MUSLIN_SEAM_PRESS_FREE, 0, { 0 }, 0, { 0 }, 0, 0 };
    muslin_id id = patch_of(model->quilt, cloth, fixed_of(model->quilt, WHOLE_IN(width)),
                            fixed_of(model->quilt, WHOLE_IN(height)));
    return keep(model, id, &node);
}

static int64_t model_join(struct model *model, int axis, int press, const int64_t *children, int n)
{
    struct model_node node = { axis, 0, 0, 0, press, n, { 0 }, 0, { 0 }, 1, 0 };
    muslin_id ids[CHILDREN_MOST];
    for (int k = 0; k < n; k++) {
        const struct model_node *child = &model->node[children[k]];
        ids[k] = model->id[children[k]];
        node.child[k] = children[k];
        node.width = axis == ACROSS ? node.width + child->width : child->width;
        node.height = axis == DOWN ? node.height + child->height : child->height;
    }
    return n == 1 ? children[0] : keep(model, join_pressed(model->quilt, axis, press, ids, (size_t)n), &node);
}

static int64_t model_turn(struct model *model, int64_t child, int turn)
{
    const struct model_node *inner = &model->node[child];
    muslin_id id = model->id[child];
    struct model_node node = { TURN, turn, inner->width, inner->height, MUSLIN_SEAM_PRESS_FREE, 1, { child }, 0, { 0 },
                               inner->has_seams, 0 };
    ck_assert_int_ne(inner->kind, TURN);
    if ((turn & 4) != 0)
        id = mirror_of(model->quilt, id);
    id = turn_of(model->quilt, id, turn & 3);
    if ((turn & 1) != 0) {
        node.width = inner->height;
        node.height = inner->width;
    }
    return turn == 0 ? child : keep(model, id, &node);
}

/* Mostly in halves, so that much of it meets. */
static int cut_by_chance(struct model *model, int length, int is_last)
{
    if (is_last)
        return length;
    return draw(&model->random) % 4 == 0 ? (int)draw_from(&model->random, 1, length) : (length + 1) / 2;
}

/* A block cut up by chance, at most so often. */
static int64_t model_block(struct model *model, int width, int height, int depth)
{
    int axis = width < 2 ? DOWN : height < 2 ? ACROSS : (int)draw_from(&model->random, ACROSS, DOWN);
    int length = axis == ACROSS ? width : height;
    if (depth == 0 || length < 2)
        return model_patch(model, width, height);
    int64_t children[3];
    int n = 0;
    while (length > 0) {
        int part = cut_by_chance(model, length, n == 2);
        int width_of = axis == ACROSS ? part : width;
        int height_of = axis == ACROSS ? height : part;
        children[n++] = model_block(model, width_of, height_of, depth - 1);
        length -= part;
    }
    int press = draw(&model->random) % 16 == 0 ? (int)draw_from(&model->random, 2, 4) : MUSLIN_SEAM_PRESS_FREE;
    return model_join(model, axis, press, children, n);
}

/* Four squares, which turned and mirrored do not nest everywhere. */
static int64_t model_four_patch(struct model *model)
{
    const int64_t square = model_patch(model, 2, 2);
    const int64_t other = model_patch(model, 2, 2);
    const int64_t first[] = { square, other };
    const int64_t second[] = { other, square };
    const int64_t rows[] = { model_join(model, ACROSS, MUSLIN_SEAM_PRESS_FREE, first, 2),
                             model_join(model, ACROSS, MUSLIN_SEAM_PRESS_FREE, second, 2) };
    return model_join(model, DOWN, MUSLIN_SEAM_PRESS_FREE, rows, 2);
}

/* A grid of one or two blocks, turned and mirrored by chance. */
static int64_t model_top(struct model *model)
{
    int columns = (int)draw_from(&model->random, 1, 3);
    int rows = (int)draw_from(&model->random, 1, 3);
    int64_t blocks[2];
    int64_t down[3];
    const int squares = draw(&model->random) % 2 == 0;
    for (int i = 0; i < 2; i++)
        blocks[i] = squares ? model_four_patch(model)
                            : model_block(model, 4, 4, (int)draw_from(&model->random, 1, 3));
    for (int row = 0; row < rows; row++) {
        int64_t across[3];
        for (int column = 0; column < columns; column++) {
            int64_t block = blocks[draw(&model->random) % 2];
            int turn = draw(&model->random) % 2 == 0 ? 0 : (int)draw_from(&model->random, 0, 7);
            across[column] = model_turn(model, block, turn);
        }
        down[row] = model_join(model, ACROSS, MUSLIN_SEAM_PRESS_FREE, across, columns);
        if (row > 0 && draw(&model->random) % 3 == 0)
            down[row] = down[0];
    }
    return model_join(model, DOWN, MUSLIN_SEAM_PRESS_FREE, down, rows);
}

/* ---- every copy laid out ------------------------------------------------------------------------------------------ */

/* A seam of one copy: its ends, the side of its first piece, and what its way hangs on. */
struct laid {
    int x[2];
    int y[2];
    int first_x;
    int first_y;
    int64_t node;
    int seam;
    int press;
    uint32_t bits;   /* of its own and its places' */
    uint32_t places; /* of its places' alone */
};

struct table {
    struct laid laid[LINES_MOST];
    int count;
};

static void move(struct table *table, int first, int by_x, int by_y, int bit)
{
    for (int i = first; i < table->count; i++) {
        struct laid *laid = &table->laid[i];
        for (int end = 0; end < 2; end++) {
            laid->x[end] += by_x;
            laid->y[end] += by_y;
        }
        laid->bits ^= UINT32_C(1) << bit;
        laid->places ^= UINT32_C(1) << bit;
    }
}

static void swap(int *a, int *b)
{
    int was = *a;
    *a = *b;
    *b = was;
}

static void mirror(struct table *table, int first, int width)
{
    for (int i = first; i < table->count; i++) {
        struct laid *laid = &table->laid[i];
        laid->x[0] = width - laid->x[0];
        laid->x[1] = width - laid->x[1];
        laid->first_x = -laid->first_x;
    }
}

/* A quarter clockwise: what was on top is at the right. */
static void quarter(struct table *table, int first, int width)
{
    for (int i = first; i < table->count; i++) {
        struct laid *laid = &table->laid[i];
        for (int end = 0; end < 2; end++) {
            int was_x = laid->x[end];
            laid->x[end] = laid->y[end];
            laid->y[end] = width - was_x;
        }
        swap(&laid->first_x, &laid->first_y);
        laid->first_y = -laid->first_y;
    }
}

static void lay(const struct model *model, int64_t number, struct table *table);

static void lay_turned(const struct model *model, const struct model_node *node, struct table *table)
{
    const struct model_node *child = &model->node[node->child[0]];
    int first = table->count;
    int width = child->width;
    int height = child->height;
    lay(model, node->child[0], table);
    move(table, first, 0, 0, node->place_bit[0]);
    if ((node->turn & 4) != 0)
        mirror(table, first, width);
    for (int i = 0; i < (node->turn & 3); i++) {
        quarter(table, first, width);
        swap(&width, &height);
    }
}

static void lay_joined(const struct model *model, int64_t number, struct table *table)
{
    const struct model_node *node = &model->node[number];
    int before = 0;
    for (int k = 0; k < node->children; k++) {
        const struct model_node *child = &model->node[node->child[k]];
        int first = table->count;
        int at = node->kind == ACROSS ? before : node->height - before - child->height;
        lay(model, node->child[k], table);
        move(table, first, node->kind == ACROSS ? at : 0, node->kind == ACROSS ? 0 : at,
             node->place_bit[k] < 0 ? 31 : node->place_bit[k]);
        before += node->kind == ACROSS ? child->width : child->height;
        if (k + 1 == node->children)
            break;
        ck_assert_int_lt(table->count, LINES_MOST);
        uint32_t own = UINT32_C(1) << (node->seam_bit + k);
        struct laid across = { { before, before }, { 0, node->height }, -1, 0, number, k, node->press, own, 0 };
        struct laid down = { { 0, node->width }, { node->height - before, node->height - before }, 0, 1, number, k,
                             node->press, own, 0 };
        table->laid[table->count++] = node->kind == ACROSS ? across : down;
    }
}

static void lay(const struct model *model, int64_t number, struct table *table)
{
    const struct model_node *node = &model->node[number];
    if (node->kind == TURN)
        lay_turned(model, node, table);
    else if (node->kind != PATCH)
        lay_joined(model, number, table);
}

/* ---- meetings ----------------------------------------------------------------------------------------------------- */

struct meeting {
    uint32_t bits;
    int odd; /* nests when so many of them are set */
    int64_t line;
    int line_seam;
};

struct meetings {
    struct meeting of[MEETINGS_MOST];
    int count;
    int open;
};

static int is_upright(const struct laid *laid)
{
    return laid->x[0] == laid->x[1];
}

static int least(const int *pair)
{
    return pair[0] < pair[1] ? pair[0] : pair[1];
}

static int most(const int *pair)
{
    return pair[0] > pair[1] ? pair[0] : pair[1];
}

/* Whether a ends at the line from the left or below, and b, at the same point, from the other side. */
static int meet(const struct laid *line, const struct laid *a, const struct laid *b)
{
    if (is_upright(line))
        return !is_upright(a) && !is_upright(b) && most(a->x) == line->x[0] && least(b->x) == line->x[0] &&
               a->y[0] == b->y[0] && a->y[0] > least(line->y) && a->y[0] < most(line->y);
    return is_upright(a) && is_upright(b) && most(a->y) == line->y[0] && least(b->y) == line->y[0] &&
           a->x[0] == b->x[0] && a->x[0] > least(line->x) && a->x[0] < most(line->x);
}

static void add(struct meetings *meetings, const struct laid *line, const struct laid *a, const struct laid *b)
{
    if (a->press == MUSLIN_SEAM_PRESS_OPEN || b->press == MUSLIN_SEAM_PRESS_OPEN) {
        meetings->open++;
        return;
    }
    int same_side = a->first_x == b->first_x && a->first_y == b->first_y;
    ck_assert_int_lt(meetings->count, MEETINGS_MOST);
    meetings->of[meetings->count++] = (struct meeting){ a->bits ^ b->bits, same_side, line->node, line->seam };
}

static void find_meetings(const struct table *table, struct meetings *meetings)
{
    for (int i = 0; i < table->count; i++)
        for (int a = 0; a < table->count; a++)
            for (int b = 0; b < table->count; b++)
                if (meet(&table->laid[i], &table->laid[a], &table->laid[b]))
                    add(meetings, &table->laid[i], &table->laid[a], &table->laid[b]);
}

static int is_odd(uint32_t bits)
{
    int odd = 0;
    for (; bits != 0; bits &= bits - 1)
        odd ^= 1;
    return odd;
}

static int64_t broken(const struct meetings *meetings, uint32_t ways)
{
    int64_t count = 0;
    for (int i = 0; i < meetings->count; i++)
        count += is_odd(meetings->of[i].bits & ways) != meetings->of[i].odd;
    return count;
}

/* Whether every seam that is asked for is pressed so in every copy. */
static int is_as_asked(const struct table *table, uint32_t ways)
{
    for (int i = 0; i < table->count; i++) {
        const struct laid *laid = &table->laid[i];
        int way = is_odd(laid->bits & ways);
        if ((laid->press == MUSLIN_SEAM_PRESS_TO_FIRST && way) || (laid->press == MUSLIN_SEAM_PRESS_TO_LAST && !way))
            return 0;
    }
    return 1;
}

static int64_t fewest(const struct table *table, const struct meetings *meetings, int bits)
{
    int64_t best = INT64_MAX;
    for (uint32_t ways = 0; ways < UINT32_C(1) << bits; ways++) {
        int64_t count = broken(meetings, ways);
        if (count < best && is_as_asked(table, ways))
            best = count;
    }
    return best;
}

/* ---- the library's plan, in the model's bits ---------------------------------------------------------------------- */

/* Bits for all that the root holds; bit 31 is for places that have nothing to press, and always 0. */
static int number_bits(struct model *model, int64_t root)
{
    int bits = 0;
    model->node[root].held = 1;
    for (int64_t number = root; number > 0; number--) {
        struct model_node *node = &model->node[number];
        node->seam_bit = bits;
        if (!node->held)
            continue;
        bits += node->kind == ACROSS || node->kind == DOWN ? node->children - 1 : 0;
        for (int k = 0; k < node->children; k++) {
            model->node[node->child[k]].held = 1;
            node->place_bit[k] = model->node[node->child[k]].has_seams ? bits++ : 31;
        }
    }
    model->bits = bits;
    return bits;
}

static uint32_t ways_of(const struct model *model, const struct muslin_pressing_plan *plan)
{
    uint32_t ways = 0;
    size_t n;
    struct muslin_pressed_seam *seams = seams_of(plan, &n);
    for (size_t i = 0; i < n; i++)
        if (seams[i].towards == 2)
            ways |= UINT32_C(1) << (model->node[muslin_id_number(seams[i].node)].seam_bit + seams[i].seam);
    free(seams);
    struct muslin_pressed_child *children = children_of(plan, &n);
    for (size_t i = 0; i < n; i++) {
        const struct model_node *node = &model->node[muslin_id_number(children[i].node)];
        ck_assert_int_eq(node->child[children[i].place], muslin_id_number(children[i].child));
        if (children[i].other_way)
            ways |= UINT32_C(1) << node->place_bit[children[i].place];
    }
    free(children);
    return ways;
}

static int asks_within(const struct model *model, int64_t number)
{
    const struct model_node *node = &model->node[number];
    if (node->press == MUSLIN_SEAM_PRESS_TO_FIRST || node->press == MUSLIN_SEAM_PRESS_TO_LAST)
        return 1;
    for (int k = 0; k < node->children; k++)
        if (asks_within(model, node->child[k]))
            return 1;
    return 0;
}

/* All pressed in turn. */
static uint32_t ways_in_turn(const struct model *model, int64_t root)
{
    uint32_t ways = 0;
    for (int64_t number = 1; number <= root; number++) {
        const struct model_node *node = &model->node[number];
        for (int k = 0; node->held && k < node->children; k++) {
            if (node->kind != TURN && k + 1 < node->children && node->press == MUSLIN_SEAM_PRESS_TO_LAST)
                ways |= UINT32_C(1) << (node->seam_bit + k);
            if (node->kind != TURN && k % 2 == 1 && !asks_within(model, node->child[k]))
                ways |= UINT32_C(1) << node->place_bit[k];
        }
    }
    return ways & INT32_MAX;
}

static void ck_copies(const struct muslin_pressing_plan *plan, const struct table *table, uint32_t ways)
{
    size_t n;
    int64_t other = 0;
    struct muslin_pressed_seam *seams = seams_of(plan, &n);
    for (size_t i = 0; i < n; i++) {
        int64_t as_shown = 0;
        int64_t other_way = 0;
        for (int k = 0; k < table->count; k++) {
            const struct laid *laid = &table->laid[k];
            if (laid->node != muslin_id_number(seams[i].node) || laid->seam != seams[i].seam)
                continue;
            int is_other = laid->press != MUSLIN_SEAM_PRESS_OPEN && is_odd(laid->places & ways);
            as_shown += !is_other;
            other_way += is_other;
        }
        ck_assert_int_eq(seams[i].as_shown, as_shown);
        ck_assert_int_eq(seams[i].other_way, other_way);
        ck_assert_int_le(other_way, as_shown);
        ck_assert_int_eq(seams[i].other, other_way == 0 ? MUSLIN_OTHER_NONE : seams[i].other);
        other += seams[i].seam == 0 ? other_way : 0;
    }
    ck_assert_int_eq(other, totals_of(plan).other_way);
    free(seams);
}

static void ck_exceptions(const struct muslin_pressing_plan *plan, const struct meetings *meetings, uint32_t ways)
{
    size_t n;
    struct muslin_pressing_exception *rows = exceptions_of(plan, &n);
    int64_t told = 0;
    for (size_t i = 0; i < n; i++)
        told += rows[i].count;
    ck_assert_int_eq(told, totals_of(plan).exceptions);
    for (int i = 0; i < meetings->count; i++) {
        const struct meeting *meeting = &meetings->of[i];
        size_t k = 0;
        if (is_odd(meeting->bits & ways) == meeting->odd)
            continue;
        while (k < n && (rows[k].count == 0 || muslin_id_number(rows[k].node) != meeting->line ||
                         rows[k].seam != meeting->line_seam))
            k++;
        ck_assert_uint_lt(k, n);
        rows[k].count--;
    }
    free(rows);
}

/* ---- tests -------------------------------------------------------------------------------------------------------- */

static struct table table;
static struct meetings meetings;

static void ck_tree(struct model *model, int64_t root, int *tried)
{
    int bits = number_bits(model, root);
    if (bits > 31)
        return;
    struct muslin_solution *solution = solved(model->quilt, model->id[root]);
    struct muslin_pressing_plan *plan = pressed(solution);
    struct muslin_pressed_totals totals = totals_of(plan);
    table.count = 0;
    meetings.count = 0;
    meetings.open = 0;
    lay(model, root, &table);
    find_meetings(&table, &meetings);
    uint32_t ways = ways_of(model, plan);
    ck_assert_int_eq(totals.meetings, meetings.count);
    ck_assert_int_eq(totals.open, meetings.open);
    ck_assert_int_eq(totals.exceptions, broken(&meetings, ways));
    ck_assert_int_eq(totals.alternating, broken(&meetings, ways_in_turn(model, root)));
    ck_assert_int_le(totals.exceptions, totals.alternating);
    ck_assert_int_le(totals.least, totals.exceptions);
    ck_assert_int_eq(totals.proven, 1);
    ck_assert(is_as_asked(&table, ways));
    ck_copies(plan, &table, ways);
    ck_exceptions(plan, &meetings, ways);
    if (bits <= BITS_MOST) {
        ck_assert_int_eq(totals.exceptions, fewest(&table, &meetings, bits));
        ++*tried;
    }
    muslin_pressing_free(plan);
    muslin_solution_free(solution);
}

START_TEST(small_trees_have_the_fewest_exceptions_of_all_ways)
{
    static struct model model;
    int tried = 0;
    for (uint64_t seed = 1; seed <= TREES; seed++) {
        struct sewn sewn;
        begin_sewing(&sewn);
        memset(&model, 0, sizeof model);
        model.quilt = sewn.quilt;
        model.cloth[0] = sewn.blue;
        model.cloth[1] = sewn.white;
        model.random = seed;
        ck_tree(&model, model_top(&model), &tried);
        end_sewing(&sewn);
    }
    ck_assert_int_gt(tried, TREES / 3);
}
END_TEST

Suite *pressing_brute_suite(void);
Suite *pressing_brute_suite(void)
{
    Suite *suite = suite_create("pressing, all ways");
    TCase *tests = tcase_create("pressing, all ways");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, small_trees_have_the_fewest_exceptions_of_all_ways);
    suite_add_tcase(suite, tests);
    return suite;
}
