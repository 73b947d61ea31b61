/* golden.c - the digest, and the numbers drawn.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

/* ---- numbers drawn --------------------------------------------------------------------------------------------- */

/* splitmix64, by S. Vigna, in the public domain. */
static uint64_t draw(struct golden *g)
{
    g->state += UINT64_C(0x9e3779b97f4a7c15);
    uint64_t z = g->state;
    z = (z ^ (z >> 30)) * UINT64_C(0xbf58476d1ce4e5b9);
    z = (z ^ (z >> 27)) * UINT64_C(0x94d049bb133111eb);
    return z ^ (z >> 31);
}

int64_t draw_below(struct golden *g, int64_t n)
{
    return (int64_t)(draw(g) % (uint64_t)n);
}

int64_t draw_between(struct golden *g, int64_t least, int64_t most)
{
    return least + draw_below(g, most - least + 1);
}

int draw_rarely(struct golden *g, int64_t n)
{
    return draw_below(g, n) == 0;
}

/* One in so many numbers is an edge, so that a spec of fifteen members is still mostly good. */
enum { EDGE = 80 };

static int64_t draw_edge(struct golden *g)
{
    switch (draw_below(g, 12)) {
    case 0:
        return -1;
    case 1:
        return 1;
    case 2:
        return MUSLIN_SIZE_MAX;
    case 3:
        return MUSLIN_SIZE_MAX + 1;
    case 4:
        return MUSLIN_SIZE_MAX - 1;
    case 5:
        return MUSLIN_SIZE_MAX / 8;
    case 6:
        return MUSLIN_COUNT_MAX;
    case 7:
        return MUSLIN_COUNT_MAX + 1;
    case 8:
        return INT64_MAX;
    case 9:
        return INT64_MIN;
    case 10:
        return draw_below(g, MUSLIN_SIZE_MAX);
    default:
        return 0;
    }
}

muslin_len draw_size(struct golden *g, int64_t inches)
{
    if (draw_rarely(g, EDGE))
        return draw_edge(g);
    switch (draw_below(g, 8)) {
    case 0:
        return draw_between(g, 1, inches * MUSLIN_TICKS_PER_INCH);
    case 1:
    case 2:
        return draw_between(g, 1, inches * 25) * MUSLIN_TICKS_PER_MM;
    default:
        return draw_between(g, 1, inches * 8) * (MUSLIN_TICKS_PER_INCH / 8);
    }
}

muslin_len draw_length(struct golden *g)
{
    muslin_len length = draw_size(g, 400);
    if (draw_rarely(g, 6)) {
        int64_t shift = draw_between(g, 1, 40);
        length = (int64_t)(draw(g) >> shift);
    }
    if (draw_rarely(g, 40))
        length = MUSLIN_LENGTH_MAX - draw_below(g, 3) + 1;
    if (draw_rarely(g, 4) && length != INT64_MIN)
        length = -length;
    return length;
}

muslin_len draw_seam(struct golden *g)
{
    if (draw_rarely(g, EDGE))
        return draw_edge(g);
    switch (draw_below(g, 6)) {
    case 0:
        return 6 * MUSLIN_TICKS_PER_MM;
    case 1:
        return draw_below(g, 8) * (MUSLIN_TICKS_PER_INCH / 8);
    case 2:
        return draw_below(g, MUSLIN_TICKS_PER_INCH);
    default:
        return MUSLIN_QUARTER_INCH;
    }
}

muslin_len draw_take_up(struct golden *g)
{
    if (draw_rarely(g, EDGE))
        return draw_edge(g);
    return draw_rarely(g, 2) ? 0 : draw_below(g, 700);
}

int64_t draw_count(struct golden *g, int64_t most)
{
    if (draw_rarely(g, EDGE))
        return draw_edge(g);
    return draw_between(g, 0, most);
}

int32_t draw_choice(struct golden *g, int32_t first, int32_t last)
{
    if (draw_rarely(g, EDGE))
        return (int32_t)draw_between(g, first - 2, last + 2);
    return (int32_t)draw_between(g, first, last);
}

uint32_t draw_flags(struct golden *g, uint32_t known)
{
    uint32_t flags = (uint32_t)draw_below(g, 1 << 16) & known;
    return draw_rarely(g, 2 * EDGE) ? flags | 1u << draw_below(g, 32) : flags;
}

uint32_t draw_struct_size(struct golden *g, size_t right)
{
    if (!draw_rarely(g, 2 * EDGE))
        return (uint32_t)right;
    switch (draw_below(g, 3)) {
    case 0:
        return 0;
    case 1:
        return (uint32_t)right - 1;
    default:
        return 4097;
    }
}

/* ---- the digest: FNV-1a, 64 bits --------------------------------------------------------------------------------- */

#define FNV_START UINT64_C(0xcbf29ce484222325)
#define FNV_PRIME UINT64_C(0x100000001b3)

static void take_byte(uint64_t *digest, unsigned byte)
{
    *digest = (*digest ^ (byte & 0xffu)) * FNV_PRIME;
}

static void take_low_first(struct golden *g, uint64_t number, int bytes)
{
    for (int i = 0; i < bytes; i++)
        take_byte(&g->figures, (unsigned)(number >> (8 * i)) & 0xffu);
}

void take_number(struct golden *g, int64_t number)
{
    take_low_first(g, (uint64_t)number, 8);
}

void take_words(struct golden *g, const char *words)
{
    size_t i = 0;
    do
        take_byte(&g->words, (unsigned char)words[i]);
    while (words[i++] != 0);
}

void take_text(struct golden *g, const char *text, size_t length)
{
    for (size_t i = 0; i < length; i++)
        take_byte(&g->figures, (unsigned char)text[i]);
}

static uint64_t number_at(const unsigned char *from, int bytes)
{
    uint32_t narrow = 0;
    uint64_t wide = 0;
    unsigned char *into = bytes == 4 ? (unsigned char *)&narrow : (unsigned char *)&wide;
    for (int i = 0; i < bytes; i++)
        into[i] = from[i];
    return bytes == 4 ? narrow : wide;
}

void take_members(struct golden *g, const void *from, const char *widths)
{
    const unsigned char *at = from;
    for (size_t i = 0; widths[i] != 0; i++) {
        int bytes = widths[i] - '0';
        take_low_first(g, number_at(at, bytes), bytes);
        at += bytes;
    }
}

struct muslin_problem *ask(struct golden *g)
{
    struct muslin_problem empty = { (uint32_t)sizeof(struct muslin_problem), 0, 0, 0, 0, 0, 0, 0, "" };
    g->problem = empty;
    return &g->problem;
}

void told(struct golden *g, muslin_status status)
{
    take_number(g, status);
    TAKE(g, muslin_problem, g->problem);
    take_words(g, g->problem.text);
}

/* ---- memory without a C library ---------------------------------------------------------------------------------- */

static size_t words_of(size_t size)
{
    return (size + 7) / 8;
}

static void *shelf_alloc(void *context, size_t size)
{
    struct shelf *shelf = context;
    size_t words = words_of(size);
    shelf->calls++;
    if (shelf->calls == shelf->refused)
        return NULL;
    if (words > SHELF_WORDS - shelf->used) {
        shelf->full = 1;
        return NULL;
    }
    shelf->out++;
    shelf->used += words;
    return shelf->words + (shelf->used - words);
}

static void shelf_free(void *context, void *block, size_t size)
{
    struct shelf *shelf = context;
    uint64_t *first = block;
    shelf->out--;
    if (first + words_of(size) == shelf->words + shelf->used)
        shelf->used -= words_of(size);
    if (shelf->out == 0)
        shelf->used = 0;
}

static void *shelf_realloc(void *context, void *block, size_t old_size, size_t size)
{
    uint64_t *from = block;
    uint64_t *to = shelf_alloc(context, size);
    if (to == NULL)
        return NULL;
    for (size_t i = 0; i < words_of(old_size < size ? old_size : size); i++)
        to[i] = from[i];
    shelf_free(context, block, old_size);
    return to;
}

struct muslin_allocator shelf_open(struct shelf *shelf)
{
    const struct muslin_allocator allocator = { shelf_alloc, shelf_realloc, shelf_free, shelf };
    shelf->used = 0;
    shelf->calls = 0;
    shelf->refused = 0;
    shelf->out = 0;
    shelf->full = 0;
    return allocator;
}

void shelf_refuse(struct golden *g, struct shelf *shelf, int64_t n, int64_t most)
{
    shelf->refused = draw_rarely(g, n) ? shelf->calls + (size_t)draw_between(g, 1, most) : 0;
}

/* ---- the whole corpus -------------------------------------------------------------------------------------------- */

void golden_arithmetic(struct golden *g)
{
    g->state = MUSLIN_TICKS_PER_INCH;
    g->figures = FNV_START;
    g->words = FNV_START;
    golden_base(g);
    golden_length(g);
    golden_text(g);
    golden_seam(g);
    golden_fabric(g);
    golden_reference(g);
    golden_stripset(g);
    golden_setting(g);
    golden_finishing(g);
    golden_stripquilt(g);
    golden_accuracy(g);
    golden_shrinkage(g);
    golden_motif(g);
    golden_cutlist(g);
    golden_shape(g);
    golden_unit(g);
    golden_unit_drawn(g);
    golden_rounds(g);
    golden_fit(g);
    golden_supplies(g);
    golden_setting_more(g);
    g->arithmetic = g->figures;
}

void golden_run(struct golden *g)
{
    golden_arithmetic(g);
    golden_scatter(g);
    golden_quilt(g);
    golden_solution(g);
    golden_quilt_unit(g);
    golden_quilt_read(g);
    golden_pressing(g);
    golden_sewing(g);
    golden_cutplan(g);
    golden_yardage(g);
}
