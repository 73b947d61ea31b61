/* failing_allocator.h - an allocator for tests: it counts, checks the sizes it is told, finds leaks, and lets every
 * allocation fail in its turn.
 *
 * SPDX-License-Identifier: MIT
 *
 *     struct failing_allocator failing;
 *     EVERY_ALLOCATION_FAILS_ONCE(failing) {
 *         muslin_status status = what_allocates(&failing.allocator);
 *         ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
 *         ck_assert(failing_is_clean(&failing));
 *     }
 *
 * The first round's first call fails, the second round's second, and so on, until a round needs fewer calls than its
 * number: that last one succeeds. Its number less one is how often the code allocates. */
#ifndef MUSLIN_FAILING_ALLOCATOR_H
#define MUSLIN_FAILING_ALLOCATOR_H

#include <stdlib.h>
#include <string.h>

#include <muslin/base.h>

struct failing_allocator {
    struct muslin_allocator allocator; /* its context is this struct */
    size_t round;                      /* the call that fails; 0: none */
    size_t calls;                      /* of alloc and realloc, in this round */
    size_t blocks;                     /* given out and not freed */
    size_t bytes;                      /* in them */
    size_t most_bytes;                 /* in them at one time */
    size_t mistakes;                   /* size 0, a null, a wrong old size, or something written behind a block */
    int has_failed;
};

/* Before each block lies its size, in room that keeps the block aligned. */
union failing_head {
    size_t size;
    max_align_t align;
};

/* Behind each lie so many bytes, all of them this one, which nobody may write to. */
enum { FAILING_BEHIND = 64, FAILING_FENCE = 0x5A };

static inline union failing_head *failing_head_of(void *block)
{
    return (union failing_head *)block - 1;
}

static inline int failing_refuses(struct failing_allocator *failing, size_t size)
{
    failing->calls++;
    if (size == 0)
        failing->mistakes++;
    if (failing->calls != failing->round)
        return 0;
    failing->has_failed = 1;
    return 1;
}

/* Takes a block off the books; its size must be the one it was given out with. */
static inline void failing_give_back(struct failing_allocator *failing, void *block, size_t size)
{
    size_t known = failing_head_of(block)->size;
    const unsigned char *behind = (const unsigned char *)block + known;
    if (known != size)
        failing->mistakes++;
    for (size_t i = 0; i < FAILING_BEHIND; i++)
        failing->mistakes += behind[i] != FAILING_FENCE;
    failing->blocks--;
    failing->bytes -= known;
}

static inline void *failing_give_out(struct failing_allocator *failing, union failing_head *head, size_t size)
{
    if (head == NULL)
        abort(); /* the machine itself has no memory left: no test can go on */
    head->size = size;
    memset((unsigned char *)(head + 1) + size, FAILING_FENCE, FAILING_BEHIND);
    failing->blocks++;
    failing->bytes += size;
    if (failing->bytes > failing->most_bytes)
        failing->most_bytes = failing->bytes;
    return head + 1;
}

static inline void *failing_alloc(void *context, size_t size)
{
    struct failing_allocator *failing = context;
    if (failing_refuses(failing, size))
        return NULL;
    void *block = failing_give_out(failing, malloc(sizeof(union failing_head) + size + FAILING_BEHIND), size);
    memset(block, 0xA5, size);
    return block;
}

/* Always moves, so that a pointer kept from before is found out. */
static inline void *failing_realloc(void *context, void *block, size_t old_size, size_t size)
{
    struct failing_allocator *failing = context;
    if (block == NULL) {
        failing->mistakes++;
        return NULL;
    }
    if (failing_refuses(failing, size))
        return NULL;
    size_t known = failing_head_of(block)->size;
    failing_give_back(failing, block, old_size);
    void *moved = failing_give_out(failing, malloc(sizeof(union failing_head) + size + FAILING_BEHIND), size);
    memcpy(moved, block, known < size ? known : size);
    free(failing_head_of(block));
    return moved;
}

static inline void failing_free(void *context, void *block, size_t size)
{
    struct failing_allocator *failing = context;
    if (block == NULL) {
        failing->mistakes++;
        return;
    }
    failing_give_back(failing, block, size);
    free(failing_head_of(block));
}

/* Starts a round in which the call of this number fails; 0: none does. */
static inline void failing_start(struct failing_allocator *failing, size_t round)
{
    memset(failing, 0, sizeof *failing);
    failing->allocator.alloc = failing_alloc;
    failing->allocator.realloc = failing_realloc;
    failing->allocator.free = failing_free;
    failing->allocator.context = failing;
    failing->round = round;
}

/* Everything was given back and nothing was told wrongly. */
static inline int failing_is_clean(const struct failing_allocator *failing)
{
    return failing->blocks == 0 && failing->bytes == 0 && failing->mistakes == 0;
}

/* The next round, unless this one went through without a failure; then the round is set to 0 and the loop ends. */
static inline void failing_next(struct failing_allocator *failing)
{
    if (failing->has_failed)
        failing_start(failing, failing->round + 1);
    else
        failing->round = 0;
}

#define EVERY_ALLOCATION_FAILS_ONCE(failing) \
    for (failing_start(&(failing), 1); (failing).round != 0; failing_next(&(failing)))

#endif
