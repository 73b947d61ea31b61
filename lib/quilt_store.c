/* quilt_store.c - memory of a quilt: rows that grow by doubling, each different one stored once, ids.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_store.h"

/* ---- memory ----------------------------------------------------------------------------------------------------- */

enum { FIRST_CAPACITY = 16 };

size_t msl_bytes(uint64_t count, size_t row_size)
{
    size_t too_many = (size_t)(count > UINT32_MAX / 2) | (size_t)(count > SIZE_MAX / 2 / row_size);
    size_t all = (size_t)0 - too_many; /* every bit, or none */
    return ((size_t)count * row_size & ~all) | (SIZE_MAX / 2 & all);
}

void *msl_scratch(struct msl_check *check, const struct muslin_allocator *allocator, uint64_t count, size_t size)
{
    if (check->status != MUSLIN_OK)
        return NULL;
    uint64_t wanted = count == 0 ? 1 : count;
    void *block = allocator->alloc(allocator->context, msl_bytes(wanted, size));
    if (block == NULL)
        msl_fail(check, MUSLIN_ERR_NO_MEMORY, MUSLIN_ARG_ALLOCATOR, (int64_t)wanted, 0);
    return block;
}

void msl_scratch_free(const struct muslin_allocator *allocator, void *block, uint64_t count, size_t size)
{
    if (block != NULL)
        allocator->free(allocator->context, block, (size_t)(count == 0 ? 1 : count) * size);
}

void *msl_moved(const struct muslin_allocator *allocator, void *block, size_t old_size, size_t size)
{
    if (block == NULL)
        return allocator->alloc(allocator->context, size);
    return allocator->realloc(allocator->context, block, old_size, size);
}

static uint64_t doubled_until(uint64_t capacity, uint64_t needed)
{
    uint64_t grown = capacity == 0 ? FIRST_CAPACITY : capacity;
    while (grown < needed)
        grown *= 2;
    return grown;
}

void msl_grow(struct msl_check *check, struct muslin_quilt *quilt, void **rows, uint32_t *capacity, uint64_t needed,
              size_t row_size)
{
    if (check->status != MUSLIN_OK || needed <= *capacity)
        return;
    uint64_t grown = doubled_until(*capacity, needed);
    size_t old_size = *capacity * row_size;
    size_t size = msl_bytes(grown, row_size);
    void *block = msl_moved(&quilt->allocator, *rows, old_size, size);
    if (block == NULL) {
        msl_fail(check, MUSLIN_ERR_NO_MEMORY, MUSLIN_ARG_ALLOCATOR, (int64_t)grown, 0);
        return;
    }
    quilt->bytes += (int64_t)(size - old_size);
    *rows = block;
    *capacity = (uint32_t)grown;
}

uint32_t msl_keep_name(struct msl_check *check, struct muslin_quilt *quilt, const char *name, size_t bytes)
{
    void *names = quilt->names;
    msl_grow(check, quilt, &names, &quilt->names_capacity, (uint64_t)quilt->names_used + bytes, 1);
    quilt->names = names;
    if (check->status != MUSLIN_OK)
        return 0;
    uint32_t first = quilt->names_used;
    for (size_t i = 0; i < bytes; i++)
        quilt->names[first + i] = name[i];
    quilt->names_used += (uint32_t)bytes;
    return first;
}

/* ---- equal rows once -------------------------------------------------------------------------------------------- */

/* FNV-1a (G. Fowler, L. C. Noll, K.-P. Vo) over the arguments' bits, word by word. */
static uint32_t hash_of(int32_t kind, const int32_t *args, uint32_t count)
{
    uint64_t hash = UINT64_C(14695981039346656037) ^ (uint64_t)(uint32_t)kind;
    for (uint32_t i = 0; i < count; i++)
        hash = (hash ^ (uint32_t)args[i]) * UINT64_C(1099511628211);
    return (uint32_t)(hash >> 32) ^ (uint32_t)hash;
}

/* Where in the table the row with this number stands, or would stand. */
static uint32_t place_after(const struct msl_list *list, uint32_t place)
{
    return (place + 1) & (list->places - 1);
}

static void enter(struct msl_list *list, uint32_t number)
{
    uint32_t place = list->rows[number - 1].hash & (list->places - 1);
    while (list->table[place] != 0)
        place = place_after(list, place);
    list->table[place] = number;
}

static void enter_all(struct msl_list *list)
{
    for (uint32_t place = 0; place < list->places; place++)
        list->table[place] = 0;
    for (uint32_t number = 1; number <= list->used; number++)
        enter(list, number);
}

static int equal_rows(const struct muslin_quilt *quilt, const struct msl_row *row, const struct msl_row *begun)
{
    uint32_t differ = (row->count ^ begun->count) | (uint32_t)(row->kind ^ begun->kind);
    for (uint32_t i = 0; i < begun->count; i++) /* past a shorter row's end lie those of later ones */
        differ |= (uint32_t)(quilt->args[row->args + i] ^ quilt->args[begun->args + i]);
    return differ == 0;
}

/* The row that is equal to the one begun; 0: none. */
static uint32_t find(const struct muslin_quilt *quilt, const struct msl_list *list, const struct msl_row *begun)
{
    if (list->places == 0)
        return 0;
    uint32_t place = begun->hash & (list->places - 1);
    for (; list->table[place] != 0; place = place_after(list, place)) {
        const struct msl_row *row = &list->rows[list->table[place] - 1];
        if (row->hash == begun->hash && equal_rows(quilt, row, begun))
            return list->table[place];
    }
    return 0;
}

/* Room for one more row and its place in the table. */
static void make_room(struct msl_check *check, struct muslin_quilt *quilt, struct msl_list *list)
{
    void *rows = list->rows;
    msl_grow(check, quilt, &rows, &list->capacity, (uint64_t)list->used + 1, sizeof list->rows[0]);
    list->rows = rows;
    uint32_t places = list->places;
    void *table = list->table;
    msl_grow(check, quilt, &table, &list->places, 2 * ((uint64_t)list->used + 1), sizeof list->table[0]);
    list->table = table;
    if (list->places != places)
        enter_all(list);
}

void msl_want_room(struct msl_check *check, const struct muslin_quilt *quilt)
{
    int64_t parts = (int64_t)quilt->nodes.used + quilt->measures.used + quilt->fabrics_used;
    if (check->status == MUSLIN_OK && parts >= quilt->most)
        msl_fail(check, MUSLIN_ERR_WORK_LIMIT, MUSLIN_ARG_MOST, parts + 1, quilt->most);
}

int32_t *msl_begin(struct msl_check *check, struct muslin_quilt *quilt, uint32_t count)
{
    uint64_t needed = (uint64_t)quilt->args_used + count;
    if (check->status == MUSLIN_OK && needed > 16 * (uint64_t)quilt->most)
        msl_fail(check, MUSLIN_ERR_WORK_LIMIT, MUSLIN_ARG_MOST, (int64_t)(needed / 16), quilt->most);
    void *args = quilt->args;
    msl_grow(check, quilt, &args, &quilt->args_capacity, needed, sizeof quilt->args[0]);
    quilt->args = args;
    return check->status == MUSLIN_OK ? quilt->args + quilt->args_used : NULL;
}

/* Takes the row begun into the list, unless there is an equal one (`alone`: even then). */
static uint32_t end_row(struct msl_check *check, struct muslin_quilt *quilt, struct msl_list *list,
                        struct msl_row *begun, int alone)
{
    begun->hash = hash_of(begun->kind, quilt->args + begun->args, begun->count);
    uint32_t found = alone ? 0 : find(quilt, list, begun);
    if (found != 0)
        return found;
    msl_want_room(check, quilt);
    make_room(check, quilt, list);
    if (check->status != MUSLIN_OK)
        return 0;
    list->rows[list->used] = *begun;
    list->used++;
    quilt->args_used += begun->count;
    enter(list, list->used);
    return list->used;
}

/* A node is one deeper than its deepest child, and so are its fields on point. */
static void measure_depth(const struct muslin_quilt *quilt, struct msl_row *begun)
{
    struct msl_children children = msl_children_of(begun->kind, begun->count);
    uint32_t depth = 0;
    uint32_t points = 0;
    for (uint32_t i = 0; i < children.count; i++) {
        const struct msl_row *child = msl_node_row(quilt, (uint32_t)quilt->args[begun->args + children.first + i]);
        depth = child->depth > depth ? child->depth : depth;
        points = child->points > points ? child->points : points;
    }
    begun->depth = (uint16_t)(depth + 1);
    begun->points = (uint8_t)(points + (begun->kind == MUSLIN_NODE_DIAGONAL ? 1u : 0u));
}

uint32_t msl_end_node(struct msl_check *check, struct muslin_quilt *quilt, int32_t kind, uint32_t count)
{
    struct msl_row begun = {
        .args = quilt->args_used, .count = count, .before = quilt->measures.used, .kind = (uint8_t)kind
    };
    measure_depth(quilt, &begun);
    msl_want_between(check, MUSLIN_ARG_DEPTH, begun.depth, 1, MUSLIN_QUILT_DEPTH_MAX);
    msl_want_between(check, MUSLIN_ARG_DEPTH, begun.points, 0, MUSLIN_QUILT_POINT_DEPTH_MAX);
    return check->status == MUSLIN_OK ? end_row(check, quilt, &quilt->nodes, &begun, 0) : 0;
}

uint32_t msl_end_measure(struct msl_check *check, struct muslin_quilt *quilt, int32_t kind, uint32_t count)
{
    struct msl_row begun = {
        .args = quilt->args_used, .count = count, .before = quilt->nodes.used, .kind = (uint8_t)kind
    };
    return end_row(check, quilt, &quilt->measures, &begun, kind == MUSLIN_MEASURE_NAMED);
}

/* ---- going back ------------------------------------------------------------------------------------------------- */

struct msl_mark msl_mark(const struct muslin_quilt *quilt)
{
    struct msl_mark mark = { quilt->nodes.used, quilt->measures.used, quilt->args_used };
    return mark;
}

void msl_go_back(struct muslin_quilt *quilt, struct msl_mark mark)
{
    quilt->nodes.used = mark.nodes;
    quilt->measures.used = mark.measures;
    quilt->args_used = mark.args;
    enter_all(&quilt->nodes);
    enter_all(&quilt->measures);
}

/* ---- numbers in arguments --------------------------------------------------------------------------------------- */

void msl_put_long(int32_t *args, int64_t value)
{
    args[0] = (int32_t)(value / INT64_C(2147483648)); /* both parts have the sign of the whole */
    args[1] = (int32_t)(value % INT64_C(2147483648));
}

int64_t msl_get_long(const int32_t *args)
{
    return args[0] * INT64_C(2147483648) + args[1];
}

/* ---- ids -------------------------------------------------------------------------------------------------------- */

/* An id is tag, sort and number, from high to low. */
enum { SORT_BIT = 36, TAG_BIT = 40 };

muslin_id msl_id(const struct muslin_quilt *quilt, int32_t sort, uint32_t number)
{
    return (quilt->tag << TAG_BIT) | ((int64_t)sort << SORT_BIT) | number;
}

static int is_id(muslin_id id)
{
    int64_t sort = (id >> SORT_BIT) & 15;
    return id > 0 && sort >= MUSLIN_SORT_FABRIC && sort <= MUSLIN_SORT_NODE && (id & UINT32_MAX) != 0;
}

int32_t muslin_id_sort(muslin_id id)
{
    return is_id(id) ? (int32_t)((id >> SORT_BIT) & 15) : 0;
}

int64_t muslin_id_number(muslin_id id)
{
    return is_id(id) ? id & UINT32_MAX : 0;
}

uint32_t msl_used_of(const struct muslin_quilt *quilt, int32_t sort)
{
    if (sort == MUSLIN_SORT_FABRIC)
        return quilt->fabrics_used;
    return sort == MUSLIN_SORT_MEASURE ? quilt->measures.used : quilt->nodes.used;
}

uint32_t msl_want_id(struct msl_check *check, const struct muslin_quilt *quilt, int32_t sort, int32_t argument,
                     muslin_id id)
{
    if (check->status != MUSLIN_OK)
        return 0;
    uint32_t number = (uint32_t)(id & UINT32_MAX);
    if (number == 0 || number > msl_used_of(quilt, sort) || id != msl_id(quilt, sort, number)) {
        msl_fail(check, MUSLIN_ERR_FOREIGN, argument, id, 0);
        return 0;
    }
    return number;
}

uint32_t msl_want_id_or(struct msl_check *check, const struct muslin_quilt *quilt, int32_t sort, int32_t argument,
                        muslin_id id, uint32_t usual)
{
    return id == 0 ? usual : msl_want_id(check, quilt, sort, argument, id);
}

int msl_ids_wanted(struct msl_check *check, int64_t *ids, size_t capacity, size_t *count, size_t needed)
{
    if (capacity != 0)
        msl_want_pointer(check, MUSLIN_ARG_ROWS, ids);
    if (check->status != MUSLIN_OK)
        return 0;
    *count = needed;
    if (capacity != 0 && capacity < needed)
        msl_fail(check, MUSLIN_ERR_BUFFER, MUSLIN_ARG_ROWS, (int64_t)capacity, (int64_t)needed);
    return capacity != 0 && check->status == MUSLIN_OK;
}

void msl_want_quilt(struct msl_check *check, const struct muslin_quilt *quilt, const void *out)
{
    msl_want_pointer(check, MUSLIN_ARG_QUILT, quilt);
    msl_want_pointer(check, MUSLIN_ARG_OUTPUT, out);
}

static muslin_status give(struct msl_check *check, struct muslin_quilt *quilt, struct msl_mark mark, int32_t sort,
                          uint32_t number, muslin_id *out)
{
    if (check->status == MUSLIN_OK)
        *out = msl_id(quilt, sort, number);
    else if (quilt->nodes.used != mark.nodes || quilt->measures.used != mark.measures)
        msl_go_back(quilt, mark);
    return check->status;
}

muslin_status msl_give_node(struct msl_check *check, struct muslin_quilt *quilt, struct msl_mark mark, uint32_t node,
                            muslin_id *out)
{
    return give(check, quilt, mark, MUSLIN_SORT_NODE, node, out);
}

muslin_status msl_give_measure(struct msl_check *check, struct muslin_quilt *quilt, struct msl_mark mark,
                               uint32_t measure, muslin_id *out)
{
    return give(check, quilt, mark, MUSLIN_SORT_MEASURE, measure, out);
}

/* ---- reading ---------------------------------------------------------------------------------------------------- */

int32_t msl_turn_after(int32_t outer, int32_t inner)
{
    int32_t quarters = inner & MSL_TURN_QUARTERS;
    if ((outer & MSL_TURN_MIRRORED) != 0) /* mirrored, a clockwise turn becomes one the other way */
        quarters = -quarters;
    quarters = (quarters + outer) & MSL_TURN_QUARTERS;
    return quarters | ((inner ^ outer) & MSL_TURN_MIRRORED);
}

struct msl_children msl_children_of(int32_t kind, uint32_t args)
{
    struct msl_children children = { 0 };
    switch (kind) {
    case MUSLIN_NODE_JOIN:
        children = (struct msl_children){ JOIN_CHILDREN, args - JOIN_CHILDREN };
        break;
    case MUSLIN_NODE_TURN:
        children = (struct msl_children){ TURN_CHILD, 1 };
        break;
    case MUSLIN_NODE_TRIM:
        children = (struct msl_children){ TRIM_CHILD, 1 };
        break;
    case MUSLIN_NODE_PINWHEEL:
        children = (struct msl_children){ PINWHEEL_CENTRE, PINWHEEL_ARGS };
        break;
    case MUSLIN_NODE_SET_IN:
        children = (struct msl_children){ SET_IN_CENTRE, 1 };
        break;
    case MUSLIN_NODE_DIAGONAL:
        children = (struct msl_children){ DIAGONAL_BLOCKS, args - DIAGONAL_BLOCKS };
        break;
    default:
        break;
    }
    return children;
}

struct msl_children msl_measures_of(int32_t kind)
{
    struct msl_children measures = { 0 };
    switch (kind) {
    case MUSLIN_NODE_PATCH:
        measures = (struct msl_children){ PATCH_WIDTH, PATCH_ARGS - PATCH_WIDTH };
        break;
    case MUSLIN_NODE_UNIT:
        measures = (struct msl_children){ UNIT_WIDTH, 3 };
        break;
    case MUSLIN_NODE_SHAPE:
        measures = (struct msl_children){ SHAPE_WIDTH, 2 };
        break;
    case MUSLIN_NODE_TRIM:
        measures = (struct msl_children){ TRIM_LEFT, 4 };
        break;
    case MUSLIN_NODE_SET_IN:
        measures = (struct msl_children){ SET_IN_WIDTHS, 4 };
        break;
    case MUSLIN_NODE_DIAGONAL:
        measures = (struct msl_children){ DIAGONAL_SET_OFF, 2 };
        break;
    case MUSLIN_NODE_SIXTY:
        measures = (struct msl_children){ SIXTY_HEIGHT, 1 };
        break;
    default:
        break;
    }
    return measures;
}
