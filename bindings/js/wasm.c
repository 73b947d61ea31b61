/* wasm.c - what the library asks of its host, in WebAssembly: memory, the memory functions that the compiler may call
 * by itself, and a function to be told how a plan stands.
 *
 * Memory is handed out in classes of size, four to each doubling, and what is given back is kept in a list for its
 * class. Nobody forgets how large a block is: the library tells the old size, and so does JavaScript. So blocks need no
 * heads.
 *
 * SPDX-License-Identifier: MIT */
#include <muslin/cutplan.h>
#include <stdint.h>

#define EXPORTED __attribute__((visibility("default")))

enum { PAGE = 65536, UNIT = 16, CLASSES = 120 };

EXPORTED void *muslin_wasm_take(size_t size);
EXPORTED void muslin_wasm_give(void *block, size_t size);
EXPORTED void muslin_wasm_limit(size_t bytes);
EXPORTED muslin_progress muslin_wasm_progress(void);
void *memcpy(void *to, const void *from, size_t count);
void *memmove(void *to, const void *from, size_t count);
void *memset(void *to, int byte, size_t count);
int memcmp(const void *a, const void *b, size_t count);

/* ---- memory functions ------------------------------------------------------------------------------------------ */

/* These three are instructions of the machine, not calls of themselves. */

void *memcpy(void *to, const void *from, size_t count)
{
    return __builtin_memcpy(to, from, count);
}

void *memmove(void *to, const void *from, size_t count)
{
    return __builtin_memmove(to, from, count);
}

void *memset(void *to, int byte, size_t count)
{
    return __builtin_memset(to, byte, count);
}

int memcmp(const void *a, const void *b, size_t count)
{
    const unsigned char *one = a;
    const unsigned char *other = b;
    for (size_t i = 0; i < count; i++)
        if (one[i] != other[i])
            return one[i] - other[i];
    return 0;
}

/* ---- memory ---------------------------------------------------------------------------------------------------- */

/* A block that was given back. */
struct spare {
    struct spare *next;
};

/* Where the linker says that free memory begins. */
extern unsigned char __heap_base;

static struct spare *spares[CLASSES];
static uintptr_t end;               /* behind what was ever handed out; 0 before the first block */
static uintptr_t most = UINTPTR_MAX; /* the memory does not grow past this */

struct size_class {
    size_t number;
    size_t bytes;
};

/* The smallest class that holds a size: 1 to 4, 5, 6, 7, 8, 10, 12, 14, 16, 20 ... units. Sizes of half the memory and
 * more, which are never there, have none: 0 bytes. */
static struct size_class class_of(size_t size)
{
    struct size_class of = { 0, 0 };
    if (size > SIZE_MAX / 2)
        return of;
    size_t units = (size + UNIT - 1) / UNIT;
    unsigned doublings = units < 4 ? 2 : 31 - (unsigned)__builtin_clz((unsigned)units);
    size_t step = (size_t)1 << (doublings - 2);
    size_t steps = (units + step - 1) / step;
    of.number = 4 * (doublings - 2) + steps;
    of.bytes = steps * step * UNIT;
    return of;
}

/* Makes the memory reach a place. */
static int reach(uintptr_t place)
{
    uintptr_t now = __builtin_wasm_memory_size(0) * (uintptr_t)PAGE;
    if (place <= now)
        return 1;
    if (place > most)
        return 0;
    return __builtin_wasm_memory_grow(0, (place - now + PAGE - 1) / PAGE) != SIZE_MAX;
}

/* Memory of a size, or null. */
void *muslin_wasm_take(size_t size)
{
    struct size_class of = class_of(size);
    struct spare *found = spares[of.number];
    if (of.bytes == 0)
        return NULL;
    if (found) {
        spares[of.number] = found->next;
        return found;
    }
    if (end == 0)
        end = ((uintptr_t)&__heap_base + UNIT - 1) / UNIT * UNIT;
    if (of.bytes > UINTPTR_MAX - PAGE - end || !reach(end + of.bytes))
        return NULL;
    end += of.bytes;
    return (void *)(end - of.bytes);
}

/* Takes memory back, of the size that was asked for. */
void muslin_wasm_give(void *block, size_t size)
{
    struct size_class of = class_of(size);
    struct spare *given = block;
    if (!given)
        return;
    if ((uintptr_t)given + of.bytes == end) {
        end -= of.bytes;
        return;
    }
    given->next = spares[of.number];
    spares[of.number] = given;
}

/* From now on the memory does not grow past so many bytes. */
void muslin_wasm_limit(size_t bytes)
{
    most = bytes;
}

static void *take(void *context, size_t size)
{
    (void)context;
    return muslin_wasm_take(size);
}

static void give(void *context, void *block, size_t size)
{
    (void)context;
    muslin_wasm_give(block, size);
}

static void *take_again(void *context, void *block, size_t old_size, size_t size)
{
    if (block && class_of(old_size).number == class_of(size).number)
        return block;
    void *taken = take(context, size);
    if (taken && block) {
        memcpy(taken, block, old_size < size ? old_size : size);
        give(context, block, old_size);
    }
    return taken;
}

/* The allocator of this host, which has no C library. */
muslin_status muslin_allocator_libc(struct muslin_allocator *out)
{
    if (!out)
        return MUSLIN_ERR_NULL;
    out->alloc = take;
    out->realloc = take_again;
    out->free = give;
    out->context = NULL;
    return MUSLIN_OK;
}

/* ---- progress -------------------------------------------------------------------------------------------------- */

/* JavaScript is told through an import, and knows by itself whom it is to tell. */
__attribute__((import_module("muslin"), import_name("tell"))) int32_t tell(int64_t steps, int64_t best, int64_t bound);

static int32_t told(void *context, int64_t steps, int64_t best, int64_t bound)
{
    (void)context;
    return tell(steps, best, bound);
}

/* The function to give to calls that tell how they stand. */
muslin_progress muslin_wasm_progress(void)
{
    return told;
}
