/* cmd_scatter.c - scatter: blocks of several prints laid out so that equal ones seldom touch.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "memory.h"
#include "sheet.h"

/* As many as there are letters for. */
static const char letters[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmn";

struct scatter_request {
    struct texts prints;
    struct muslin_scatter_blocks_spec size;
};

static void start_scatter(void *request)
{
    struct scatter_request *wanted = request;
    wanted->size = (struct muslin_scatter_blocks_spec)MUSLIN_SCATTER_BLOCKS_SPEC_INIT;
}

static bool read_prints(struct desk *desk, const struct texts *texts, int64_t *prints)
{
    for (size_t i = 0; i < texts->count; i++) {
        const char *text = texts->texts[i];
        if (strspn(text, "0123456789") != strlen(text) || text[0] == '\0' || strlen(text) > 9) {
            failure_say(desk->failure, "print", "Give the number of blocks there are of each print, in digits only.");
            return false;
        }
        prints[i] = strtoll(text, NULL, 10);
    }
    return true;
}

/* What is asked of the library, and what it answers. */
struct top {
    struct muslin_scatter_spec spec;
    struct muslin_touch_spec *touches; /* room for two a block */
    size_t n;
    int64_t *laid;
    struct muslin_scattered found;
};

static void add_touch(struct top *top, int64_t first, int64_t second)
{
    top->touches[top->n] = (struct muslin_touch_spec)MUSLIN_TOUCH_SPEC_INIT;
    top->touches[top->n].first = first;
    top->touches[top->n].second = second;
    top->n++;
}

/* Each block touches the next in its row and the one below. */
static void touch_in_rows(struct top *top, int64_t columns)
{
    for (int64_t place = 0; place < top->spec.places; place++) {
        if ((place + 1) % columns != 0)
            add_touch(top, place, place + 1);
        if (place + columns < top->spec.places)
            add_touch(top, place, place + columns);
    }
}

/* The library checks columns and rows where it lays blocks; asking it for their number costs nothing. */
static bool want_size(struct desk *desk, const struct muslin_scatter_blocks_spec *size, size_t *places)
{
    struct muslin_allocator memory;
    struct muslin_edge_prints_spec any = MUSLIN_EDGE_PRINTS_SPEC_INIT;
    struct muslin_scattered nothing = { .size = sizeof nothing };
    any.count = MUSLIN_COUNT_MAX;
    return worked(desk, muslin_allocator_libc(&memory)) &&
           worked(desk, muslin_scatter_blocks(size, &any, sizeof any, 1, &memory, NULL, NULL, NULL, 0, 0, places,
                                              &nothing, &desk->problem));
}

static bool scatter(struct desk *desk, const int64_t *prints, size_t kinds, int64_t columns, struct top *top)
{
    struct muslin_allocator memory;
    touch_in_rows(top, columns);
    return worked(desk, muslin_allocator_libc(&memory)) &&
           worked(desk, muslin_scatter_prints(&top->spec, prints, kinds, top->touches, sizeof top->touches[0], top->n,
                                              NULL, &memory, NULL, NULL, top->laid, &top->found, &desk->problem));
}

/* "ABA", row by row from the top. */
static void put_layout(json_t *answer, const struct top *top, int64_t columns)
{
    json_t *rows = put_list(answer, "layout");
    char *row = need_memory((size_t)columns + 1);
    for (int64_t first = 0; first < top->spec.places; first += columns) {
        for (int64_t column = 0; column < columns; column++)
            row[column] = letters[top->laid[first + column]];
        json_array_append_new(rows, json_string(row));
    }
    free(row);
}

static void put_prints(json_t *answer, const struct top *top, const int64_t *prints, size_t kinds)
{
    json_t *list = put_list(answer, "prints");
    for (size_t i = 0; i < kinds; i++) {
        const char letter[2] = { letters[i], '\0' };
        int64_t used = 0;
        for (int64_t place = 0; place < top->spec.places; place++)
            used += top->laid[place] == (int64_t)i;
        json_t *print = append_object(list);
        put_text(print, "letter", letter);
        put_count(print, "in_hand", prints[i]);
        put_count(print, "used", used);
    }
}

static json_t *answer_scatter(const void *request, struct desk *desk)
{
    const struct scatter_request *wanted = request;
    int64_t prints[TEXTS_MAX];
    size_t kinds = wanted->prints.count;
    size_t places = 0;
    if (!read_prints(desk, &wanted->prints, prints) || !want_size(desk, &wanted->size, &places))
        return NULL;
    struct top top = { .spec = MUSLIN_SCATTER_SPEC_INIT, .found = { .size = sizeof top.found } };
    top.spec.places = (int64_t)places;
    top.spec.seed = wanted->size.seed;
    top.spec.work_limit = wanted->size.work_limit;
    top.touches = need_memory(2 * places * sizeof top.touches[0]);
    top.laid = need_memory(places * sizeof top.laid[0]);
    json_t *answer = NULL;
    if (scatter(desk, prints, kinds, wanted->size.columns, &top)) {
        answer = json_object();
        put_count(answer, "columns", wanted->size.columns);
        put_count(answer, "rows", wanted->size.rows);
        put_count(answer, "blocks", top.spec.places);
        put_count(answer, "seed", top.spec.seed);
        put_count(answer, "touching_pairs", top.found.touching);
        put_count(answer, "no_layout_has_fewer_than", top.found.least);
        put_truth(answer, "certainly_the_fewest", top.found.proven == 1);
        put_count(answer, "steps_of_the_search", top.found.work);
        put_layout(answer, &top, wanted->size.columns);
        put_prints(answer, &top, prints, kinds);
    }
    free(top.touches);
    free(top.laid);
    return answer;
}

static const struct option_row scatter_options[] = {
    { "print", KIND_TEXTS, offsetof(struct scatter_request, prints), MUSLIN_ARG_PLACES,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "blocks that there are of a print; once for each print, A, B, C ..." },
    { "columns", KIND_COUNT, offsetof(struct scatter_request, size.columns), MUSLIN_ARG_COLUMNS, OPTION_REQUIRED, NULL,
      "blocks across" },
    { "rows", KIND_COUNT, offsetof(struct scatter_request, size.rows), MUSLIN_ARG_QUILT_ROWS, OPTION_REQUIRED, NULL,
      "blocks down" },
    { "seed", KIND_COUNT, offsetof(struct scatter_request, size.seed), 0, 0, NULL,
      "any number: another seed, another layout (1)" },
    { "work", KIND_COUNT, offsetof(struct scatter_request, size.work_limit), MUSLIN_ARG_WORK_LIMIT, 0, NULL,
      "search no longer than so many steps (10000000)" },
    OPTION_END
};

const struct command scatter_command = {
    .name = "scatter",
    .about = "blocks of several prints laid out so that equal ones seldom touch",
    .operands = "BLOCKS-OF-A-PRINT...",
    .examples = "  muslin scatter 5 4 --columns 3 --rows 3\n"
                "  muslin scatter 20 20 20 20 20 --columns 9 --rows 11 --seed 7",
    .options = scatter_options,
    .request_size = sizeof(struct scatter_request),
    .start = start_scatter,
    .answer = answer_scatter,
    .show = show_scatter
};
