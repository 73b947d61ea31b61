/* quilt.c - a quilt from its creation to what can be read back from it; its fabrics.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_store.h"

enum {
    QUILT_SPEC_LEAST = sizeof(struct muslin_quilt_spec),
    FABRIC_SPEC_LEAST = sizeof(struct muslin_quilt_fabric_spec),
    NODE_LEAST = sizeof(struct muslin_node),
    COUNTS_LEAST = sizeof(struct muslin_part_counts)
};
enum { NAME_MOST = 200, DARKNESS_MOST = 100, TAG_MOST = 1048575, PARTS_MOST = 134217728 };

/* ---- creation --------------------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_spec_init(struct muslin_quilt_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_spec initial = MUSLIN_QUILT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, QUILT_SPEC_LEAST);
}

/* A tag from where the quilt lies: different for quilts that live at the same time, but for one pair in a million. */
static int64_t tag_of(const struct muslin_quilt *quilt)
{
    uint64_t mixed = (uint64_t)(uintptr_t)quilt * UINT64_C(0x9E3779B97F4A7C15);
    return (int64_t)(mixed >> 32) % TAG_MOST + 1;
}

static void start_empty(struct muslin_quilt *quilt, const struct muslin_quilt_spec *in,
                        const struct muslin_allocator *allocator)
{
    const struct msl_list empty = { 0 };
    quilt->allocator = *allocator;
    quilt->tag = in->tag == 0 ? tag_of(quilt) : in->tag;
    quilt->most = in->most;
    quilt->bytes = (int64_t)sizeof *quilt;
    quilt->nodes = empty;
    quilt->measures = empty;
    quilt->fabrics = NULL;
    quilt->args = NULL;
    quilt->names = NULL;
    quilt->fabrics_used = quilt->fabrics_capacity = 0;
    quilt->args_used = quilt->args_capacity = 0;
    quilt->names_used = quilt->names_capacity = 0;
}

/* The seam allowance and the take-up, the first two measures. */
static void add_seam(struct msl_check *check, struct muslin_quilt *quilt, const struct muslin_quilt_spec *in)
{
    muslin_id id;
    muslin_status status = muslin_quilt_measure(quilt, "seam allowance", 14, in->allowance, &id, NULL);
    if (status == MUSLIN_OK)
        status = muslin_quilt_measure(quilt, "take-up", 7, in->take_up, &id, NULL);
    if (status != MUSLIN_OK)
        msl_fail(check, status, status == MUSLIN_ERR_WORK_LIMIT ? MUSLIN_ARG_MOST : MUSLIN_ARG_ALLOCATOR, 2, in->most);
}

void msl_want_allocator(struct msl_check *check, const struct muslin_allocator *allocator)
{
    msl_want_pointer(check, MUSLIN_ARG_ALLOCATOR, allocator);
    if (check->status != MUSLIN_OK)
        return;
    if (allocator->alloc == NULL || allocator->realloc == NULL || allocator->free == NULL)
        msl_fail(check, MUSLIN_ERR_NULL, MUSLIN_ARG_ALLOCATOR, 0, 0);
}

const struct muslin_allocator *msl_allocator_or(struct msl_check *check, const struct muslin_allocator *allocator,
                                                const struct muslin_quilt *quilt)
{
    if (allocator == NULL)
        return &quilt->allocator;
    msl_want_allocator(check, allocator);
    return allocator;
}

muslin_status muslin_quilt_create(const struct muslin_quilt_spec *spec, const struct muslin_allocator *allocator,
                                  struct muslin_quilt **out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_spec in;
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, QUILT_SPEC_LEAST, 0, spec);
    msl_want_allocator(&check, allocator);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_seam(&check, MUSLIN_ARG_SEAM_ALLOWANCE, in.allowance);
    msl_want_seam(&check, MUSLIN_ARG_TAKE_UP, in.take_up);
    msl_want_between(&check, MUSLIN_ARG_MOST, in.most, 1, PARTS_MOST);
    msl_want_between(&check, MUSLIN_ARG_TAG, in.tag, 0, TAG_MOST);
    struct muslin_quilt *quilt = msl_scratch(&check, allocator, 1, sizeof *quilt);
    if (quilt == NULL)
        return check.status;
    start_empty(quilt, &in, allocator);
    add_seam(&check, quilt, &in);
    if (check.status == MUSLIN_OK)
        *out = quilt;
    else
        muslin_quilt_free(quilt);
    return check.status;
}

static void free_list(const struct muslin_allocator *a, struct msl_list *list)
{
    msl_scratch_free(a, list->rows, list->capacity, sizeof list->rows[0]);
    msl_scratch_free(a, list->table, list->places, sizeof list->table[0]);
}

void muslin_quilt_free(struct muslin_quilt *quilt)
{
    if (quilt == NULL)
        return;
    const struct muslin_allocator a = quilt->allocator;
    free_list(&a, &quilt->nodes);
    free_list(&a, &quilt->measures);
    msl_scratch_free(&a, quilt->fabrics, quilt->fabrics_capacity, sizeof quilt->fabrics[0]);
    msl_scratch_free(&a, quilt->args, quilt->args_capacity, sizeof quilt->args[0]);
    msl_scratch_free(&a, quilt->names, quilt->names_capacity, 1);
    msl_scratch_free(&a, quilt, 1, sizeof *quilt);
}

/* ---- fabrics ---------------------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_fabric_spec_init(struct muslin_quilt_fabric_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_fabric_spec initial = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, FABRIC_SPEC_LEAST);
}

static uint32_t add_fabric(struct msl_check *check, struct muslin_quilt *quilt,
                           const struct muslin_quilt_fabric_spec *in, const char *name, size_t bytes)
{
    void *fabrics = quilt->fabrics;
    msl_grow(check, quilt, &fabrics, &quilt->fabrics_capacity, (uint64_t)quilt->fabrics_used + 1,
             sizeof quilt->fabrics[0]);
    quilt->fabrics = fabrics;
    uint32_t first = msl_keep_name(check, quilt, name, bytes);
    if (check->status != MUSLIN_OK)
        return 0;
    struct msl_fabric fabric = { in->usable_width, first, (uint32_t)bytes, in->print, in->darkness };
    quilt->fabrics[quilt->fabrics_used] = fabric;
    quilt->fabrics_used++;
    return quilt->fabrics_used;
}

void msl_want_name(struct msl_check *check, const char *name, size_t bytes)
{
    if (bytes != 0)
        msl_want_pointer(check, MUSLIN_ARG_NAME, name);
    msl_want_between(check, MUSLIN_ARG_NAME, bytes > NAME_MOST ? NAME_MOST + 1 : (int64_t)bytes, 0, NAME_MOST);
}

muslin_status muslin_quilt_fabric(struct muslin_quilt *quilt, const struct muslin_quilt_fabric_spec *spec,
                                  const char *name, size_t bytes, muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_fabric_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, FABRIC_SPEC_LEAST, 0, spec);
    msl_want_name(&check, name, bytes);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_some_size(&check, MUSLIN_ARG_USABLE_WIDTH, in.usable_width);
    msl_want_choice(&check, MUSLIN_ARG_PRINT_DIRECTION, in.print, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
    msl_want_between(&check, MUSLIN_ARG_DARKNESS, in.darkness, 0, DARKNESS_MOST);
    msl_want_room(&check, quilt);
    uint32_t fabric = add_fabric(&check, quilt, &in, name, bytes);
    if (check.status == MUSLIN_OK)
        *out = msl_id(quilt, MUSLIN_SORT_FABRIC, fabric);
    return check.status;
}

/* ---- read back -------------------------------------------------------------------------------------------------- */

/* The name of a fabric or a measure; not terminated. */
static const char *name_of(const struct muslin_quilt *quilt, int32_t sort, uint32_t number, uint32_t *length)
{
    *length = 0;
    if (sort == MUSLIN_SORT_FABRIC) {
        *length = quilt->fabrics[number - 1].name_length;
        return quilt->names + quilt->fabrics[number - 1].name;
    }
    if (msl_measure_row(quilt, number)->kind != MUSLIN_MEASURE_NAMED)
        return quilt->names;
    const int32_t *args = msl_measure_args(quilt, number);
    *length = (uint32_t)args[3];
    return quilt->names + args[2];
}

muslin_status muslin_quilt_name(const struct muslin_quilt *quilt, muslin_id id, char *buf, size_t cap, size_t *need,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, need);
    if (cap > 0)
        msl_want_pointer(&check, MUSLIN_ARG_BUFFER, buf);
    int32_t sort = muslin_id_sort(id) == MUSLIN_SORT_FABRIC ? MUSLIN_SORT_FABRIC : MUSLIN_SORT_MEASURE;
    uint32_t number = msl_want_id(&check, quilt, sort, MUSLIN_ARG_NAME, id);
    if (check.status != MUSLIN_OK)
        return check.status;
    uint32_t length;
    const char *name = name_of(quilt, sort, number, &length);
    *need = (size_t)length + 1;
    if (cap == 0)
        return MUSLIN_OK;
    if (cap < *need)
        return msl_fail(&check, MUSLIN_ERR_BUFFER, MUSLIN_ARG_BUFFER, (int64_t)cap, (int64_t)*need);
    for (uint32_t i = 0; i < length; i++)
        buf[i] = name[i];
    buf[length] = '\0';
    return MUSLIN_OK;
}

muslin_status muslin_quilt_node(const struct muslin_quilt *quilt, muslin_id node, struct muslin_node *out,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_output(&check, out, NODE_LEAST);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct msl_row *row = msl_node_row(quilt, number);
    const int32_t *args = msl_node_args(quilt, number);
    struct muslin_node found = { .size = sizeof found,
                                 .children = msl_children_of(row->kind, row->count).count,
                                 .depth = row->depth,
                                 .kind = row->kind };
    if (row->kind == MUSLIN_NODE_JOIN)
        found.axis = args[JOIN_AXIS];
    if (row->kind == MUSLIN_NODE_TURN) {
        found.quarter_turns = args[TURN_HOW] & MSL_TURN_QUARTERS;
        found.mirrored = (args[TURN_HOW] & MSL_TURN_MIRRORED) != 0;
    }
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

muslin_status muslin_quilt_children(const struct muslin_quilt *quilt, muslin_id node, muslin_id *ids, size_t capacity,
                                    size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, count);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct msl_row *row = msl_node_row(quilt, number);
    struct msl_children children = msl_children_of(row->kind, row->count);
    if (!msl_ids_wanted(&check, ids, capacity, count, children.count))
        return check.status;
    const int32_t *args = msl_node_args(quilt, number) + children.first;
    for (uint32_t i = 0; i < children.count; i++)
        ids[i] = msl_id(quilt, MUSLIN_SORT_NODE, (uint32_t)args[i]);
    return MUSLIN_OK;
}

muslin_status muslin_quilt_counts(const struct muslin_quilt *quilt, struct muslin_part_counts *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_output(&check, out, COUNTS_LEAST);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct muslin_part_counts found = {
        .fabrics = quilt->fabrics_used, .measures = quilt->measures.used, .nodes = quilt->nodes.used,
        .bytes = quilt->bytes
    };
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}
