/* pdf.c - all pages as PDF, with what readers of the file are told besides.
 *
 * SPDX-License-Identifier: MIT */
#include "pdf.h"

#include <cairo-pdf.h>
#include <ctype.h>
#include <stdio.h>
#include <string.h>

#include "paint.h"

/* ---- about the file ---------------------------------------------------------------------------------------------- */

static bool is_date(const char *text)
{
    static const char shape[] = "0000-00-00";
    for (size_t i = 0; i < sizeof shape - 1; i++)
        if (shape[i] == '0' ? !isdigit((unsigned char)text[i]) : text[i] != shape[i])
            return false;
    return text[sizeof shape - 1] == '\0';
}

/* Never the clock's: the same pattern gives the same file. */
static void set_date(cairo_surface_t *surface, const struct pattern *pattern)
{
    char date[40] = "2000-01-01T00:00:00Z";
    if (pattern->date != NULL && is_date(pattern->date))
        snprintf(date, sizeof date, "%.10sT00:00:00Z", pattern->date);
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE, date);
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_MOD_DATE, date);
}

static void set_about(cairo_surface_t *surface, const struct flow *flow)
{
    const struct pattern *pattern = flow->document->pattern;
    struct bytes subject = { NULL, 0, 0 };
    size_t sizes = 0;
    bytes_say(&subject, "Quilt pattern");
    for (size_t i = 0; i < flow->marks_used; i++)
        if (flow->marks[i].is_size)
            bytes_say(&subject, "%s%.80s", sizes++ == 0 ? ": " : ", ",
                      flow_name_of_size(flow, flow->marks[i].item));
    bytes_add(&subject, "", 1);
    char creator[60];
    snprintf(creator, sizeof creator, "muslin-sheet %s", muslin_version_text());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, pattern->title);
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_SUBJECT, subject.text);
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, creator);
    if (pattern->by != NULL)
        cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_AUTHOR, pattern->by);
    set_date(surface, pattern);
    bytes_free(&subject);
}

/* Sizes, with their headings below them. */
static void set_outline(cairo_surface_t *surface, const struct flow *flow)
{
    int size = CAIRO_PDF_OUTLINE_ROOT;
    for (size_t i = 0; i < flow->marks_used; i++) {
        const struct mark *mark = &flow->marks[i];
        const struct strip *strip = &flow->strips[mark->strip];
        char link[60];
        snprintf(link, sizeof link, "page=%d pos=[%d %d]", strip->page, (int)flow->page.left,
                 (int)(flow->page.top + strip->y));
        int parent = mark->is_size ? CAIRO_PDF_OUTLINE_ROOT : size;
        int added = cairo_pdf_surface_add_outline(surface, parent, flow->document->items[mark->item].text, link,
                                                  mark->is_size ? CAIRO_PDF_OUTLINE_FLAG_OPEN : 0);
        size = mark->is_size ? added : size;
    }
}

/* ---- pages ------------------------------------------------------------------------------------------------------- */

static void write_pages(struct flow *flow, int page, cairo_t *cairo, struct tags *tags, bool (*stop)(void))
{
    int first = page != 0 ? page : 1, last = page != 0 ? page : flow->pages;
    tags_begin(tags, cairo);
    tags->is_alone = page != 0;
    for (int i = first; i <= last && !stop(); i++) {
        paint_page(flow, i, cairo, tags);
        if (i == last)
            tags_end(tags);
        cairo_show_page(cairo);
    }
}

cairo_status_t pdf_write(struct flow *flow, int page, struct bytes *bytes, bool (*stop)(void))
{
    struct tags tags;
    cairo_surface_t *surface =
        cairo_pdf_surface_create_for_stream(bytes_take, bytes, flow->page.width, flow->page.height);
    cairo_pdf_surface_restrict_to_version(surface, CAIRO_PDF_VERSION_1_4);
    cairo_t *cairo = cairo_create(surface);
    set_about(surface, flow);
    write_pages(flow, page, cairo, &tags, stop);
    if (page == 0)
        set_outline(surface, flow);
    cairo_status_t status = cairo_status(cairo);
    cairo_destroy(cairo);
    cairo_surface_finish(surface);
    if (status == CAIRO_STATUS_SUCCESS)
        status = cairo_surface_status(surface);
    cairo_surface_destroy(surface);
    if (status == CAIRO_STATUS_SUCCESS)
        pdf_mend(bytes, &tags);
    tags_free(&tags);
    return status;
}
