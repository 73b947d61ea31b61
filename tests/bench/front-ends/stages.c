/* stages.c - where the time of a printed sheet goes: one run of the work of `muslin-sheet`, stage by stage.
 *
 * SPDX-License-Identifier: MIT
 *
 * usage: stages PATTERN SIZE
 *
 * Prints one line of JSON, in milliseconds of processor time: reading the file, piecing its tree, working out (the
 * library), words, letters (fonts found), laying out, and all pages as PDF with their pictures. Then, for comparison:
 * its pictures drawn once more, alone; and the working out again with other limits for the search for the least cloth,
 * the last of them the usual one. */
#define _POSIX_C_SOURCE 199309L
#include <cairo-pdf.h>
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "bytes.h"
#include "document.h"
#include "draw.h"
#include "flow.h"
#include "pattern.h"
#include "pdf.h"
#include "type.h"
#include "worked.h"

static struct complaints complaints;

/* In milliseconds that this program computed: what else the machine does changes little. */
static double now(void)
{
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return (double)time.tv_sec * 1e3 + (double)time.tv_nsec / 1e6;
}

static void want(bool fine, const char *what)
{
    if (fine)
        return;
    fprintf(stderr, "stages: %s%s%s\n", what, complaints.used > 0 ? ": " : "",
            complaints.used > 0 ? complaints.rows[0].sentence : "");
    exit(1);
}

static size_t size_called(const struct pattern *pattern, const char *name)
{
    for (size_t size = 0; size < pattern->sizes_count; size++)
        if (strcmp(pattern->sizes[size].name, name) == 0)
            return size;
    want(false, "there is no such size");
    return 0;
}

static bool goes_on(void)
{
    return false;
}

/* Tells the milliseconds since it told last. */
static void tell(const char *stage, double *since)
{
    printf(", \"%s\": %.3f", stage, now() - *since);
    *since = now();
}

static size_t draw_pictures(const struct flow *flow)
{
    struct bytes bytes = { NULL, 0, 0 };
    size_t pictures = 0;
    cairo_surface_t *surface = cairo_pdf_surface_create_for_stream(bytes_take, &bytes, flow->page.width,
                                                                   flow->page.height);
    cairo_t *cairo = cairo_create(surface);
    for (size_t i = 0; i < flow->used; i++) {
        const struct strip *strip = &flow->strips[i];
        for (size_t k = 0; strip->kind == STRIP_PICTURES && k < strip->count; k++, pictures++) {
            const struct shown *shown = &strip->shown[k];
            picture_draw(cairo, &shown->picture, shown->part, shown->most_width, shown->most_height);
            cairo_show_page(cairo);
        }
    }
    cairo_destroy(cairo);
    cairo_surface_finish(surface);
    cairo_surface_destroy(surface);
    bytes_free(&bytes);
    return pictures;
}

/* The working out with a limit for each fabric's search; nothing else differs. The best of several, for they are
 * short. */
static void tell_search(const struct pattern *pattern, size_t size, int64_t limit, bool is_first)
{
    double best = 0;
    size_t fabrics = 0, proven = 0;
    muslin_len cloth = 0;
    for (int round = 0; round < 3; round++) {
        struct design *design = design_create(pattern, size, &complaints);
        want(design != NULL, "the size cannot be pieced");
        design->buying.work_limit = limit;
        const double began = now();
        struct worked *worked = worked_create(design, NULL, NULL, &complaints);
        const double took = now() - began;
        want(worked != NULL, "the size cannot be worked out");
        best = round == 0 || took < best ? took : best;
        fabrics = worked->bill_count;
        proven = 0;
        cloth = 0;
        for (size_t i = 0; i < fabrics; i++) {
            proven += (size_t)worked->bill[i].proven;
            cloth += worked->bill[i].cloth_length;
        }
        worked_free(worked);
        design_free(design);
    }
    printf("%s{\"steps\": %" PRId64 ", \"ms\": %.3f, \"fabrics\": %zu, \"proven\": %zu, \"cloth_in\": %.2f}",
           is_first ? "" : ", ", limit, best, fabrics, proven, (double)cloth / MUSLIN_TICKS_PER_INCH);
}

int main(int argc, char **argv)
{
    want(argc == 3, "usage: stages PATTERN SIZE");
    double began = now(), since = began;
    printf("{\"pattern\": \"%s\", \"size\": \"%s\"", argv[1], argv[2]);
    struct pattern *pattern = pattern_read(argv[1], &complaints);
    want(pattern != NULL, "the pattern cannot be read");
    size_t size = size_called(pattern, argv[2]);
    tell("reading", &since);
    struct design *design = design_create(pattern, size, &complaints);
    want(design != NULL, "the size cannot be pieced");
    tell("piecing", &since);
    struct worked *worked = worked_create(design, NULL, NULL, &complaints);
    want(worked != NULL, "the size cannot be worked out");
    tell("working_out", &since);
    struct document *document = document_create(pattern, &worked, 1);
    tell("words", &since);
    struct type_case letters;
    want(type_case_open(&letters), "there are no fonts");
    tell("letters", &since);
    struct flow *flow = flow_create(document, &letters, pattern->paper);
    tell("laying_out", &since);
    struct bytes bytes = { NULL, 0, 0 };
    want(pdf_write(flow, 0, &bytes, goes_on) == CAIRO_STATUS_SUCCESS, "the pages cannot be drawn");
    tell("pages", &since);
    printf(", \"all\": %.3f, \"page_count\": %d, \"bytes\": %zu", now() - began, flow->pages, bytes.used);
    since = now();
    size_t pictures = draw_pictures(flow);
    tell("pictures_alone", &since);
    printf(", \"pictures\": %zu, \"search\": [", pictures);
    const int64_t usual = design->buying.work_limit;
    for (int64_t share = 1000; share >= 1; share /= 10)
        tell_search(pattern, size, share == 1000 ? 0 : usual / share, share == 1000);
    printf("]}\n");
    flow_free(flow);
    type_case_close(&letters);
    bytes_free(&bytes);
    document_free(document);
    worked_free(worked);
    design_free(design);
    pattern_free(pattern);
    return 0;
}
