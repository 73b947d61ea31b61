/* draw.h - requests drawn from the bytes of a fuzzer, in memory that is just as large as the call is told.
 *
 * SPDX-License-Identifier: MIT */
#ifndef FUZZ_DRAW_H
#define FUZZ_DRAW_H

#include <stddef.h>
#include <stdint.h>

#include <muslin/muslin.h>

#include "../unit/failing_allocator.h"

/* Stops with a word on what does not hold; the fuzzer then keeps the input. */
#define MUST(holds) ((holds) ? (void)0 : broken(#holds, __FILE__, __LINE__))
void broken(const char *what, const char *file, int line);

/* ---- bytes ------------------------------------------------------------------------------------------------------- */

/* What is left of the input. Past its end all bytes are 0. */
struct input {
    const uint8_t *data;
    size_t left;
};
uint8_t draw_byte(struct input *input);
uint32_t draw_below(struct input *input, uint32_t below); /* below <= 256 */
int64_t draw_number(struct input *input);                 /* small ones, lengths as people use them, and the extremes */

/* ---- one call ---------------------------------------------------------------------------------------------------- */

enum { MOST_BLOCKS = 24, MOST_IDS = 64, ROOM = 12 }; /* ROOM: numbers in an array without a count of its own */

/* What a tree's calls hand on to each other. */
struct tree {
    struct muslin_quilt *quilt;
    struct muslin_solution *solution;
    struct muslin_pressing *pressing;
    struct muslin_yardage *yardage;
    struct muslin_cutplan *plan;
    muslin_id ids[MOST_IDS];
    size_t ids_used;
};

struct block {
    uint8_t *memory;
    size_t bytes;
    size_t from; /* of an output: from here on a call that fails leaves it as it was; else `bytes` */
    size_t own;  /* of a struct to answer in: its own size, behind which there must be zeros; else 0 */
};

/* Memory of the call that is being drawn, and what is true when it comes back. */
struct call {
    struct input *input;
    struct tree *tree;
    struct failing_allocator *failing;
    struct block blocks[MOST_BLOCKS];
    size_t used;
    int64_t places;  /* that the spec counts, for arrays that have one number a place */
    size_t capacity; /* of the rows, and where their number is written */
    const size_t *count;
    int in_part;     /* what fails may have answered a part */
};

void call_start(struct call *call, struct input *input, struct tree *tree, struct failing_allocator *failing);
/* Checks what every call promises, gives the memory back, and hands the status on. */
muslin_status call_end(struct call *call, muslin_status status, const struct muslin_problem *problem);

void *give(struct call *call, size_t bytes);        /* an input, zeroed */
void *give_output(struct call *call, size_t bytes); /* filled with a byte that zero is not */

enum member_kind {
    A_NUMBER = 1,
    A_CHOICE, /* 1 .. most */
    AN_ID,    /* most: enum muslin_sort */
    THE_PLACES,
    THE_WORK_LIMIT
};
struct member {
    uint16_t offset;
    uint8_t width;
    uint8_t kind;
    int32_t most;
};

/* A struct as it was published, and how it begins. */
struct form {
    uint32_t size;
    uint32_t members;
    const struct member *member;
    muslin_status (*init)(void *spec, uint32_t size); /* may be null */
    uint32_t flags; /* those that are known */
};

void *draw_spec(struct call *call, const struct form *form);                        /* may be null */
void *draw_rows(struct call *call, const struct form *form, size_t *row_size, size_t *n);
void *give_struct(struct call *call, const struct form *form);                      /* for an answer */
void *give_rows(struct call *call, const struct form *form, size_t *row_size, size_t *capacity);
struct muslin_problem *give_problem(struct call *call);
size_t *give_count(struct call *call, size_t capacity);

uint32_t draw_size(struct call *call, uint32_t own); /* mostly that; else any, also such as must be refused */
size_t draw_n(struct call *call);
int64_t *draw_numbers(struct call *call, size_t n);
int32_t *draw_words(struct call *call, size_t n);
muslin_id draw_id(struct call *call, int32_t sort); /* 0: of any sort */
muslin_id *draw_ids(struct call *call, size_t n, int32_t sort);
char *draw_text(struct call *call, size_t *bytes);
int32_t draw_choice(struct call *call, int32_t most);
const struct muslin_allocator *draw_allocator(struct call *call);
muslin_progress draw_progress(struct call *call);
void keep_id(struct call *call, muslin_status status, muslin_id id);

/* ---- all calls, written by calls.py ------------------------------------------------------------------------------ */

struct known_call {
    const char *name;
    muslin_status (*make)(struct input *input, struct tree *tree, struct failing_allocator *failing);
    uint32_t key; /* by which the input names it, whatever is added to the list later */
    uint8_t of_tree;
};
extern const struct known_call known_calls[];
extern const size_t known_count;

/* Makes the call that the next three bytes name, among those of trees or the others. */
muslin_status make_call(struct input *input, struct tree *tree, struct failing_allocator *failing, int of_tree);
/* Writes the calls made so far, each with how often it was made and how often it succeeded, where FUZZ_REACHED says. */
void tell_reached(void);

void tree_free(struct tree *tree);

#endif
