/* draw.c - requests drawn from the bytes of a fuzzer, and what holds of every call.
 *
 * SPDX-License-Identifier: MIT */
#include "draw.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST_SIZE = 4096, MOST_WORK = 500, MOST_ROWS = 12, MOST_TEXT = 40, FRESH = 0xA5 };

void broken(const char *what, const char *file, int line)
{
    fprintf(stderr, "%s:%d: does not hold: %s\n", file, line, what);
    abort();
}

/* ---- bytes ------------------------------------------------------------------------------------------------------- */

uint8_t draw_byte(struct input *input)
{
    if (input->left == 0)
        return 0;
    input->left--;
    return *input->data++;
}

uint32_t draw_below(struct input *input, uint32_t below)
{
    return draw_byte(input) % below;
}

static int64_t draw_wide(struct input *input)
{
    uint64_t bits = 0;
    for (int i = 0; i < 8; i++)
        bits = bits << 8 | draw_byte(input);
    return (int64_t)bits;
}

int64_t draw_number(struct input *input)
{
    static const int64_t edges[] = { 0, 1, -1, INT64_MAX, INT64_MIN, INT32_MAX, INT32_MIN, MUSLIN_LENGTH_MAX,
                                     -MUSLIN_LENGTH_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX + 1, MUSLIN_PPM };
    const uint8_t how = draw_byte(input);
    const int64_t small = draw_byte(input);
    switch (how % 8) {
    case 0:
    case 1:
        return small;
    case 2:
        return small * 1016; /* eighths of an inch */
    case 3:
        return small * MUSLIN_TICKS_PER_INCH;
    case 4:
        return small * MUSLIN_TICKS_PER_MM + how / 8;
    case 5:
        return -small;
    case 6:
        return edges[(size_t)small % (sizeof edges / sizeof edges[0])];
    default:
        return draw_wide(input) >> small % 64;
    }
}

/* ---- memory of a call -------------------------------------------------------------------------------------------- */

void call_start(struct call *call, struct input *input, struct tree *tree, struct failing_allocator *failing)
{
    memset(call, 0, sizeof *call);
    call->input = input;
    call->tree = tree;
    call->failing = failing;
}

void *give(struct call *call, size_t bytes)
{
    MUST(call->used < MOST_BLOCKS);
    struct block *block = &call->blocks[call->used++];
    *block = (struct block){ malloc(bytes), bytes, bytes, 0 };
    MUST(block->memory != NULL);
    memset(block->memory, 0, bytes);
    return block->memory;
}

void *give_output(struct call *call, size_t bytes)
{
    void *memory = give(call, bytes);
    memset(memory, FRESH, bytes);
    call->blocks[call->used - 1].from = 0;
    return memory;
}

static void check_bytes(const struct block *block, size_t from, uint8_t expected)
{
    for (size_t at = from; at < block->bytes; at++)
        MUST(block->memory[at] == expected);
}

static void check_problem(muslin_status status, const struct muslin_problem *problem)
{
    MUST(problem->status == status);
    MUST(problem->argument >= 0 && problem->argument < muslin_argument_count());
    MUST(memchr(problem->text, 0, sizeof problem->text) != NULL);
}

muslin_status call_end(struct call *call, muslin_status status, const struct muslin_problem *problem)
{
    MUST(status >= 0 && status < muslin_status_count());
    for (size_t i = 0; i < call->used; i++) {
        const struct block *block = &call->blocks[i];
        const int is_written = block->own > 0 && block->memory[sizeof(uint32_t)] != FRESH; /* some calls only count */
        if (status == MUSLIN_OK && is_written)
            check_bytes(block, block->own, 0);
        if (status != MUSLIN_OK && status != MUSLIN_ERR_BUFFER && call->in_part == 0)
            check_bytes(block, block->from, FRESH);
    }
    if (call->count != NULL && status == MUSLIN_OK && call->capacity > 0)
        MUST(*call->count <= call->capacity);
    if (call->count != NULL && status == MUSLIN_ERR_BUFFER)
        MUST(*call->count > call->capacity);
    if (status != MUSLIN_OK && problem != NULL && problem->size == sizeof *problem)
        check_problem(status, problem);
    for (size_t i = 0; i < call->used; i++)
        free(call->blocks[i].memory);
    return status;
}

/* ---- structs ----------------------------------------------------------------------------------------------------- */

uint32_t draw_size(struct call *call, uint32_t own)
{
    const uint32_t how = draw_below(call->input, 32);
    if (how < 28)
        return own;
    if (how == 28)
        return own + 8 * draw_below(call->input, 16);
    return (uint32_t)draw_number(call->input);
}

/* Room for a struct that says it has this size. One that is refused for its size is not read beyond that. */
static size_t room_for(uint32_t size)
{
    return size < 8 || size > MOST_SIZE ? 8 : size;
}

static void draw_member(struct call *call, const struct member *member, uint8_t *spec)
{
    int64_t value = member->kind == AN_ID ? draw_id(call, member->most)
                    : member->kind == A_CHOICE ? draw_choice(call, member->most) : draw_number(call->input);
    if (member->kind == THE_PLACES && value > MOST_ROWS)
        value %= MOST_ROWS;
    if (member->kind == THE_WORK_LIMIT && value > MOST_WORK)
        value %= MOST_WORK;
    const int32_t word = (int32_t)value;
    memcpy(spec + member->offset, member->width == 8 ? (const void *)&value : (const void *)&word, member->width);
}

/* What costs time or room is kept small, whatever was drawn. */
static void keep_small(struct call *call, const struct form *form, uint8_t *spec, size_t room)
{
    for (uint32_t i = 0; i < form->members; i++) {
        const struct member *member = &form->member[i];
        int64_t value;
        if (member->kind < THE_PLACES || member->offset + member->width > room)
            continue;
        memcpy(&value, spec + member->offset, sizeof value);
        if (member->kind == THE_WORK_LIMIT && (value > MOST_WORK || value == 0))
            value = MOST_WORK;
        if (member->kind == THE_PLACES && value > MOST_ROWS)
            value = MOST_ROWS;
        if (member->kind == THE_PLACES)
            call->places = value;
        memcpy(spec + member->offset, &value, sizeof value);
    }
}

/* The bytes of one struct: its initial value with some members drawn, or all of them, or any bytes at all. */
static void draw_struct(struct call *call, const struct form *form, uint8_t *spec, uint32_t size, size_t room)
{
    const uint32_t how = draw_below(call->input, 8);
    if (room >= form->size && form->init != NULL)
        MUST(form->init(spec, form->size) == MUSLIN_OK);
    const uint32_t drawn = how < 6 ? draw_below(call->input, 8) : how == 6 ? form->members : 0;
    for (uint32_t i = 0; i < drawn && room >= form->size && form->members > 0; i++) {
        const uint32_t which = how == 6 ? i : draw_below(call->input, form->members);
        draw_member(call, &form->member[which], spec);
    }
    for (size_t at = 8; how == 7 && at < room; at++)
        spec[at] = draw_byte(call->input);
    const uint8_t flags = draw_byte(call->input);
    const uint32_t word = flags < 128 ? 0 : flags < 250 ? flags & form->flags : UINT32_C(1) << flags % 32;
    if (flags != 0)
        memcpy(spec + 4, &word, sizeof word);
    memcpy(spec, &size, sizeof size);
    keep_small(call, form, spec, room);
}

void *draw_spec(struct call *call, const struct form *form)
{
    const uint32_t size = draw_size(call, form->size);
    if (size == UINT32_MAX)
        return NULL;
    uint8_t *spec = give(call, room_for(size));
    draw_struct(call, form, spec, size, room_for(size));
    return spec;
}

/* Where rows lie: each has room for its head, and what its size says lies within the stride or is refused. */
static size_t room_of_rows(struct call *call, const struct form *form, size_t *row_size, size_t n)
{
    *row_size = draw_size(call, form->size);
    return *row_size >= 8 && *row_size <= MOST_SIZE ? *row_size * n : 8;
}

static void draw_each(struct call *call, const struct form *form, uint8_t *rows, size_t row_size, size_t n)
{
    for (size_t i = 0; i < n && row_size >= 8 && row_size <= MOST_SIZE; i++) {
        const uint32_t size = draw_size(call, form->size);
        const size_t room = size < row_size ? room_for(size) : row_size;
        draw_struct(call, form, rows + i * row_size, size, room <= row_size ? room : row_size);
    }
}

void *draw_rows(struct call *call, const struct form *form, size_t *row_size, size_t *n)
{
    *n = draw_n(call);
    const size_t room = room_of_rows(call, form, row_size, *n);
    uint8_t *rows = give(call, room);
    draw_each(call, form, rows, *row_size, *n);
    return rows;
}

void *give_struct(struct call *call, const struct form *form)
{
    const uint32_t size = draw_size(call, form->size);
    uint8_t *out = give_output(call, room_for(size));
    memcpy(out, &size, sizeof size);
    call->blocks[call->used - 1].from = sizeof size;
    call->blocks[call->used - 1].own = form->size;
    return out;
}

void *give_rows(struct call *call, const struct form *form, size_t *row_size, size_t *capacity)
{
    *capacity = draw_below(call->input, 256);
    return give_output(call, room_of_rows(call, form, row_size, *capacity));
}

struct muslin_problem *give_problem(struct call *call)
{
    const uint32_t size = draw_size(call, sizeof(struct muslin_problem));
    struct muslin_problem *problem = give(call, room_for(size));
    problem->size = size;
    return problem;
}

size_t *give_count(struct call *call, size_t capacity)
{
    size_t *count = give_output(call, sizeof *count);
    call->count = count;
    call->capacity = capacity;
    return count;
}

/* ---- other arguments --------------------------------------------------------------------------------------------- */

size_t draw_n(struct call *call)
{
    return draw_below(call->input, MOST_ROWS + 1);
}

int64_t *draw_numbers(struct call *call, size_t n)
{
    int64_t *numbers = give(call, n * sizeof *numbers);
    for (size_t i = 0; i < n; i++)
        numbers[i] = draw_number(call->input);
    return numbers;
}

int32_t *draw_words(struct call *call, size_t n)
{
    int32_t *words = give(call, n * sizeof *words);
    for (size_t i = 0; i < n; i++)
        words[i] = draw_choice(call, 4);
    return words;
}

muslin_id draw_id(struct call *call, int32_t sort)
{
    const struct tree *tree = call->tree;
    const uint8_t which = draw_byte(call->input);
    if (which == 255 || tree->ids_used == 0)
        return draw_number(call->input);
    if (which == 254)
        return 0;
    for (size_t i = 0; i < tree->ids_used; i++) {
        const muslin_id id = tree->ids[(tree->ids_used * 256 - 1 - which - i) % tree->ids_used];
        if (sort == 0 || muslin_id_sort(id) == sort)
            return id;
    }
    return 0;
}

muslin_id *draw_ids(struct call *call, size_t n, int32_t sort)
{
    muslin_id *ids = give(call, n * sizeof *ids);
    for (size_t i = 0; i < n; i++)
        ids[i] = draw_id(call, sort);
    return ids;
}

void keep_id(struct call *call, muslin_status status, muslin_id id)
{
    struct tree *tree = call->tree;
    if (status != MUSLIN_OK)
        return;
    MUST(muslin_id_sort(id) >= MUSLIN_SORT_FABRIC && muslin_id_sort(id) <= MUSLIN_SORT_NODE);
    if (tree->ids_used < MOST_IDS)
        tree->ids[tree->ids_used++] = id;
}

char *draw_text(struct call *call, size_t *bytes)
{
    *bytes = draw_below(call->input, MOST_TEXT);
    char *text = give(call, *bytes);
    for (size_t i = 0; i < *bytes; i++)
        text[i] = (char)draw_byte(call->input);
    return text;
}

int32_t draw_choice(struct call *call, int32_t most)
{
    const uint8_t which = draw_byte(call->input);
    return which == 255 ? (int32_t)draw_number(call->input) : which % (most + 1);
}

const struct muslin_allocator *draw_allocator(struct call *call)
{
    const uint8_t which = draw_byte(call->input);
    if (which > 0 && call->failing->round == 0)
        call->failing->round = call->failing->calls + which;
    return &call->failing->allocator;
}

/* Ends a search at its first word, or never. */
static int32_t told(void *context, int64_t work, int64_t best, int64_t bound)
{
    (void)work, (void)best, (void)bound;
    return context != NULL;
}

muslin_progress draw_progress(struct call *call)
{
    return draw_byte(call->input) < 128 ? NULL : told;
}

/* ---- which call -------------------------------------------------------------------------------------------------- */

static uint32_t made[512], answered[512];

static const struct known_call *named_call(struct input *input, int of_tree)
{
    uint32_t key = 0;
    for (int i = 0; i < 3; i++)
        key = key << 8 | draw_byte(input);
    for (size_t i = 0; i < known_count; i++)
        if (known_calls[i].key == key && known_calls[i].of_tree == of_tree)
            return &known_calls[i];
    size_t at = key % known_count;
    while (known_calls[at].of_tree != of_tree)
        at = (at + 1) % known_count;
    return &known_calls[at];
}

muslin_status make_call(struct input *input, struct tree *tree, struct failing_allocator *failing, int of_tree)
{
    const struct known_call *call = named_call(input, of_tree);
    const muslin_status status = call->make(input, tree, failing);
    made[call - known_calls]++;
    answered[call - known_calls] += status == MUSLIN_OK;
    return status;
}

void tell_reached(void)
{
    const char *path = getenv("FUZZ_REACHED");
    FILE *file = path != NULL ? fopen(path, "w") : NULL;
    if (file == NULL)
        return;
    for (size_t i = 0; i < known_count; i++)
        if (made[i] > 0)
            fprintf(file, "%s %u %u\n", known_calls[i].name, made[i], answered[i]);
    fclose(file);
}

void tree_free(struct tree *tree)
{
    muslin_cutplan_free(tree->plan);
    muslin_yardage_free(tree->yardage);
    muslin_pressing_free(tree->pressing);
    muslin_solution_free(tree->solution);
    muslin_quilt_free(tree->quilt);
    memset(tree, 0, sizeof *tree);
}
