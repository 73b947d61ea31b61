/* golden.h - one digest over many calls, to be the same number on every target.
 *
 * SPDX-License-Identifier: MIT
 *
 * Numbers are drawn one call a statement, because C leaves the order of evaluation within an expression open; what
 * comes back is put into the digest member by member, lowest byte first. Nothing here needs a C library.
 *
 * There are two digests. `figures` holds statuses, numbers and formatted lengths, which stay for ever; `words` holds
 * sentences and names, whose wording may improve. `arithmetic` is `figures` as far as the modules without a tree go, for
 * targets too small for more. digest.txt records all; a test compares. The corpus of a released version must give its
 * figures for ever (tests/abi/past.py): nothing here may hang on what can grow, as the number of statuses does.
 *
 * The digest is a witness that nothing changed, not a proof that anything is right: that is for the other tests. When
 * a change is meant, run the golden program into digest.txt and give the reason in the commit. */
#ifndef MUSLIN_GOLDEN_H
#define MUSLIN_GOLDEN_H

#include <muslin/muslin.h>

#include "members.h"

struct golden {
    uint64_t state;                /* of the random numbers */
    uint64_t figures;
    uint64_t arithmetic;           /* the figures before the first handle is made */
    uint64_t words;
    struct muslin_problem problem; /* of the call being made */
};

/* Of muslin_unit_recipe_at(), in 1.0; others may come behind them. */
enum { GOLDEN_RECIPES = 30 };

/* Makes every call of the corpus, module by module; the first of the two as far as nothing is allocated. */
void golden_arithmetic(struct golden *g);
void golden_run(struct golden *g);
void golden_base(struct golden *g);
void golden_length(struct golden *g);
void golden_text(struct golden *g);
void golden_seam(struct golden *g);
void golden_fabric(struct golden *g);
void golden_reference(struct golden *g);
void golden_stripset(struct golden *g);
void golden_setting(struct golden *g);
void golden_setting_more(struct golden *g);
void golden_finishing(struct golden *g);
void golden_stripquilt(struct golden *g);
void golden_accuracy(struct golden *g);
void golden_shrinkage(struct golden *g);
void golden_motif(struct golden *g);
void golden_cutlist(struct golden *g);
void golden_shape(struct golden *g);
void golden_unit(struct golden *g);
void golden_unit_drawn(struct golden *g);
void golden_rounds(struct golden *g);
void golden_fit(struct golden *g);
void golden_supplies(struct golden *g);
void golden_scatter(struct golden *g);
void golden_quilt(struct golden *g);
void golden_solution(struct golden *g);
void golden_quilt_unit(struct golden *g);
void golden_quilt_read(struct golden *g);
void golden_pressing(struct golden *g);
void golden_sewing(struct golden *g);
void golden_cutplan(struct golden *g);
void golden_yardage(struct golden *g);

/* ---- numbers drawn --------------------------------------------------------------------------------------------- */

/* 0 .. n - 1 */
int64_t draw_below(struct golden *g, int64_t n);
int64_t draw_between(struct golden *g, int64_t least, int64_t most);
/* 1 once in n calls, else 0 */
int draw_rarely(struct golden *g, int64_t n);
/* A length up to so many inches: mostly eighths of an inch, some millimetres, some odd ticks, rarely an edge of the
 * range. */
muslin_len draw_size(struct golden *g, int64_t inches);
/* The same, of either sign, and far larger now and then. */
muslin_len draw_length(struct golden *g);
/* An allowance: mostly a quarter inch, else other usual ones and odd ones. */
muslin_len draw_seam(struct golden *g);
/* A take-up: mostly none or a few ticks. */
muslin_len draw_take_up(struct golden *g);
/* 0 .. most, rarely an edge of the range. */
int64_t draw_count(struct golden *g, int64_t most);
/* first .. last, rarely one outside. */
int32_t draw_choice(struct golden *g, int32_t first, int32_t last);
/* 0 or the known flags, rarely an unknown one. */
uint32_t draw_flags(struct golden *g, uint32_t known);
/* The right size of a struct, rarely a wrong one. */
uint32_t draw_struct_size(struct golden *g, size_t right);

/* Mostly a usual grid, rarely an impossible one. */
struct muslin_rounding_spec draw_rounding(struct golden *g);

/* ---- what comes back ------------------------------------------------------------------------------------------- */

void take_number(struct golden *g, int64_t number);
void take_words(struct golden *g, const char *words);
/* The bytes of a text that stays for ever. */
void take_text(struct golden *g, const char *text, size_t length);
/* A struct, by its members' widths. */
void take_members(struct golden *g, const void *from, const char *widths);
#define TAKE(g, of, value) take_members(g, &(value), MEMBERS_##of)

/* A call: ask(g) gives it an empty problem, told(g, status) takes status and problem. */
struct muslin_problem *ask(struct golden *g);
void told(struct golden *g, muslin_status status);
void told_problem_length(struct golden *g, muslin_status status, const muslin_len *result);
void told_problem_rounded(struct golden *g, muslin_status status, const struct muslin_rounded *result);

/* ---- memory without a C library ---------------------------------------------------------------------------------- */

enum { SHELF_WORDS = 1 << 18 };

/* Taken from the front on; what is given back last in first out is used again, and all of it when nothing is out. */
struct shelf {
    size_t used;
    size_t calls;
    size_t refused; /* the call of this number */
    size_t out;     /* blocks */
    int32_t full;   /* 1 after a call that found no room: what follows depends on the target's words */
    uint64_t words[SHELF_WORDS];
};

/* An allocator on an empty shelf. */
struct muslin_allocator shelf_open(struct shelf *shelf);
/* Now and then, once in n times, lets one of the next `most` calls be refused; else none. */
void shelf_refuse(struct golden *g, struct shelf *shelf, int64_t n, int64_t most);

/* ---- how a corpus is written --------------------------------------------------------------------------------------- */

enum { ROUNDS = 1200, FEW = 6 };

#define SPEC(of, name) \
    struct of name;                                  \
    of##_init(&name, (uint32_t)sizeof name);         \
    name.size = draw_struct_size(g, sizeof name)

#define OUT(of, name) \
    struct of name = { 0 };                          \
    name.size = draw_struct_size(g, sizeof name)

#define EACH_ROUND for (int32_t round = 0; round < ROUNDS; round++)

#endif
