/* work.c - from a pattern file to its document; every complaint is told.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "work.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

#include "interrupt.h"
#include "memory.h"

/* ---- complaints -------------------------------------------------------------------------------------------------- */

static void print_complaint(const char *file, const struct complaint *complaint)
{
    fprintf(stderr, "muslin-sheet: %s", strcmp(file, "-") == 0 ? "standard input" : file);
    if (complaint->line > 0)
        fprintf(stderr, ", line %d", complaint->line);
    if (complaint->line > 0 && complaint->column > 0)
        fprintf(stderr, ", column %d", complaint->column);
    if (complaint->place[0] != '\0')
        fprintf(stderr, ", %s", complaint->place);
    if (complaint->sizes != NULL)
        fprintf(stderr, ", size %s", complaint->sizes);
    if (complaint->value != NULL)
        fprintf(stderr, " (%s)", complaint->value);
    fprintf(stderr, ": %s\n", complaint->sentence);
}

static bool has_no_answer(int status)
{
    return status == MUSLIN_ERR_SEAM_TOO_WIDE || status == MUSLIN_ERR_NOT_SQUARE || status == MUSLIN_ERR_NO_YIELD ||
           status == MUSLIN_ERR_NOT_ENOUGH || status == MUSLIN_ERR_NO_FIT || status == MUSLIN_ERR_OVERFLOW;
}

/* What is wrong weighs more than what has no answer. */
static enum exit_code print_complaints(const char *file, struct complaints *complaints)
{
    enum exit_code code = EXIT_NO_ANSWER;
    if (interrupted()) {
        fputs("muslin-sheet: Interrupted; nothing was written.\n", stderr);
        code = EXIT_INTERRUPTED;
    }
    for (size_t i = 0; i < complaints->used && code != EXIT_INTERRUPTED; i++) {
        print_complaint(file, &complaints->rows[i]);
        if (!has_no_answer(complaints->rows[i].status))
            code = EXIT_WRONG_INPUT;
    }
    complaints_free(complaints);
    return code;
}

/* ---- sizes ------------------------------------------------------------------------------------------------------- */

static bool is_wanted(const struct wish *wish, const char *name)
{
    for (size_t i = 0; i < wish->sizes_count; i++)
        if (strcasecmp(wish->sizes[i], name) == 0)
            return true;
    return wish->sizes_count == 0;
}

static bool has_size(const struct pattern *pattern, const char *name)
{
    for (size_t i = 0; i < pattern->sizes_count; i++)
        if (strcasecmp(pattern->sizes[i].name, name) == 0)
            return true;
    return false;
}

static bool has_sizes(const struct pattern *pattern, const struct wish *wish)
{
    for (size_t i = 0; i < wish->sizes_count; i++) {
        if (has_size(pattern, wish->sizes[i]))
            continue;
        fprintf(stderr, "muslin-sheet: --size: %s has no size \"%s\"; it has:", wish->pattern, wish->sizes[i]);
        for (size_t size = 0; size < pattern->sizes_count; size++)
            fprintf(stderr, "%s %s", size == 0 ? "" : ",", pattern->sizes[size].name);
        fputs(".\n", stderr);
        return false;
    }
    return true;
}

/* ---- work -------------------------------------------------------------------------------------------------------- */

/* As bright as it looks. */
static void make_grey(struct design *design)
{
    for (size_t i = 0; i < design->cloths_used; i++) {
        unsigned char *colour = design->cloths[i].colour;
        int grey = (299 * colour[0] + 587 * colour[1] + 114 * colour[2]) / 1000;
        memset(colour, grey, 3);
    }
}

static bool stop(void *with)
{
    (void)with;
    return interrupted();
}

static bool work_size(struct work *work, const struct wish *wish, size_t size, struct complaints *complaints)
{
    waiting("Working out %s ...", work->pattern->sizes[size].name);
    struct design *design = design_create(work->pattern, size, complaints);
    if (design == NULL)
        return false;
    if (wish->grey)
        make_grey(design);
    work->designs[work->used] = design;
    work->worked[work->used] = worked_create(design, stop, NULL, complaints);
    return work->worked[work->used++] != NULL;
}

/* A file that cannot be read is another trouble than one that is wrong. */
static bool can_read(const char *file)
{
    if (strcmp(file, "-") == 0)
        return true;
    FILE *opened = fopen(file, "rb");
    char byte;
    bool fine = opened != NULL && (fread(&byte, 1, 1, opened) == 1 || ferror(opened) == 0);
    if (!fine)
        fprintf(stderr, "muslin-sheet: Cannot read %s: %s.\n", file, strerror(errno));
    if (opened != NULL)
        fclose(opened);
    return fine;
}

enum exit_code work_out(struct work *work, const struct wish *wish)
{
    struct complaints complaints = { NULL, 0, 0 };
    *work = (struct work){ .used = 0 };
    if (!can_read(wish->pattern))
        return EXIT_FILE_TROUBLE;
    waiting("Reading %s ...", wish->pattern);
    work->pattern = pattern_read(wish->pattern, &complaints);
    if (work->pattern == NULL)
        return print_complaints(wish->pattern, &complaints);
    if (!has_sizes(work->pattern, wish))
        return EXIT_WRONG_INPUT;
    work->designs = need_memory(work->pattern->sizes_count * sizeof(struct design *));
    work->worked = need_memory(work->pattern->sizes_count * sizeof(struct worked *));
    unsigned looked_at = 0;
    bool fine = true;
    for (size_t size = 0; size < work->pattern->sizes_count && !interrupted(); size++)
        if (is_wanted(wish, work->pattern->sizes[size].name)) {
            struct complaints own = { NULL, 0, 0 };
            fine = work_size(work, wish, size, &own) && fine;
            complaints_of_size(&complaints, &own, size);
            looked_at |= 1u << size;
        }
    waiting_end();
    name_sizes(&complaints, work->pattern, looked_at);
    if (!fine || interrupted())
        return print_complaints(wish->pattern, &complaints);
    work->document = document_create(work->pattern, work->worked, work->used);
    complaints_free(&complaints);
    return EXIT_ANSWERED;
}

bool work_doubted(const struct work *work)
{
    bool doubted = false;
    for (size_t i = 0; i < work->used; i++)
        for (size_t k = 0; k < work->worked[i]->misfits_count; k++) {
            const struct muslin_misfit *misfit = &work->worked[i]->misfits[k];
            if (misfit->kind == MUSLIN_MISFIT_EASED)
                continue;
            doubted = true;
            fprintf(stderr, "muslin-sheet: %s, size \"%s\": edges do not meet here; change the design before you "
                    "cut.\n", place_in_file(work->worked[i], misfit->node),
                    work->pattern->sizes[work->designs[i]->size].name);
        }
    return doubted;
}

void work_free(struct work *work)
{
    document_free(work->document);
    for (size_t i = 0; i < work->used; i++) {
        worked_free(work->worked[i]);
        design_free(work->designs[i]);
    }
    free(work->worked);
    free(work->designs);
    pattern_free(work->pattern);
}
