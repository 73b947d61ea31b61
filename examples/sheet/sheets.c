/* sheets.c - a document drawn into files: which of them, what they are called.
 *
 * SPDX-License-Identifier: MIT */
#include "sheets.h"

#include <ctype.h>
#include <errno.h>
#include <string.h>
#include <sys/stat.h>

#include "images.h"
#include "interrupt.h"
#include "pdf.h"

#define NAME_ROOM 4096

static const char *ending_of(enum form form)
{
    return form == FORM_PDF ? ".pdf" : form == FORM_SVG ? ".svg" : ".png";
}

/* ---- trouble ----------------------------------------------------------------------------------------------------- */

static bool trouble(struct failure *failure, const char *what, const char *why)
{
    failure_say(failure, NULL, "%s%s.", what, why);
    failure->exit_code = EXIT_FILE_TROUBLE;
    return false;
}

static bool was_drawn(cairo_status_t status, struct failure *failure)
{
    if (interrupted()) {
        failure_say(failure, NULL, "Interrupted; nothing was written.");
        failure->exit_code = EXIT_INTERRUPTED;
        return false;
    }
    return status == CAIRO_STATUS_SUCCESS ||
           trouble(failure, "The sheet could not be drawn: ", cairo_status_to_string(status));
}

static bool has_letters(const struct type_case *letters, struct failure *failure)
{
    char why[80];
    if (letters->missing == 0)
        return true;
    snprintf(why, sizeof why, "U+%04X: install one that has it, or write the pattern without it",
             (unsigned)letters->missing);
    return trouble(failure, "No font of this machine has the character ", why);
}

/* ---- names ------------------------------------------------------------------------------------------------------- */

/* The pattern's name without its folder and ending: the sheet goes where one is. */
static void stem_of(const struct wish *wish, char stem[NAME_ROOM])
{
    const char *from = wish->output != NULL ? wish->output : wish->pattern;
    const char *slash = wish->output == NULL ? strrchr(from, '/') : NULL;
    if (wish->output == NULL && strcmp(from, "-") == 0)
        from = "sheet";
    snprintf(stem, NAME_ROOM, "%s", slash != NULL ? slash + 1 : from);
    char *dot = strrchr(stem, '.'), *folder = strrchr(stem, '/');
    if (dot != NULL && dot != stem && (folder == NULL || dot > folder + 1))
        *dot = '\0';
}

/* The only file has the name that was given, one of several its number before the ending. */
static void name_file(const struct wish *wish, int number, int count, char name[NAME_ROOM])
{
    char stem[NAME_ROOM];
    int digits = snprintf(NULL, 0, "%d", count);
    if (count == 1 && wish->output != NULL) {
        snprintf(name, NAME_ROOM, "%s", wish->output);
        return;
    }
    stem_of(wish, stem);
    if (count == 1)
        snprintf(name, NAME_ROOM, "%.4000s%s", stem, ending_of(wish->form));
    else
        snprintf(name, NAME_ROOM, "%.4000s-%0*d%s", stem, digits, number, ending_of(wish->form));
}

static bool fits_output(const struct wish *wish, int count, struct failure *failure)
{
    if (count == 1 || wish->output == NULL || strcmp(wish->output, "-") != 0)
        return true;
    failure_say(failure, "output", "These are %d files; only one goes to standard output.", count);
    return false;
}

/* ---- pages ------------------------------------------------------------------------------------------------------- */

static bool write_images(struct flow *flow, const struct wish *wish, struct files *files, struct failure *failure)
{
    int first = wish->page != 0 ? (int)wish->page : 1, last = wish->page != 0 ? first : flow->pages;
    if (!fits_output(wish, last - first + 1, failure))
        return false;
    for (int page = first; page <= last; page++) {
        struct bytes bytes = { NULL, 0, 0 };
        char name[NAME_ROOM];
        waiting("Drawing page %d of %d ...", page, flow->pages);
        name_file(wish, page, last - first + 1, name);
        if (!was_drawn(image_of_page(flow, page, wish->form, wish->dpi, &bytes), failure) ||
            !files_add(files, name, &bytes, failure)) {
            bytes_free(&bytes);
            return false;
        }
    }
    return true;
}

static bool write_pdf(struct flow *flow, const struct wish *wish, struct files *files, struct failure *failure)
{
    struct bytes bytes = { NULL, 0, 0 };
    char name[NAME_ROOM];
    waiting("Drawing %d pages ...", flow->pages);
    name_file(wish, 1, 1, name);
    if (was_drawn(pdf_write(flow, (int)wish->page, &bytes, interrupted), failure) &&
        files_add(files, name, &bytes, failure))
        return true;
    bytes_free(&bytes);
    return false;
}

static bool write_pages(struct flow *flow, const struct wish *wish, struct files *files, struct failure *failure)
{
    if (!has_letters(flow->letters, failure))
        return false;
    if (wish->page > flow->pages) {
        failure_say(failure, "page", "The sheet has %d page%s.", flow->pages, flow->pages == 1 ? "" : "s");
        return false;
    }
    return wish->form == FORM_PDF ? write_pdf(flow, wish, files, failure)
                                  : write_images(flow, wish, files, failure);
}

/* ---- pictures alone ---------------------------------------------------------------------------------------------- */

static bool is_picture(const struct item *item, int kind)
{
    return item->kind == ITEM_PICTURE && (kind == 0 || (int)item->picture.kind == kind);
}

static bool is_same(const struct picture *a, const struct picture *b)
{
    return a->kind == b->kind && a->worked == b->worked && a->which == b->which;
}

/* Whether an earlier item has drawn it. */
static bool is_drawn(const struct document *document, size_t item)
{
    for (size_t i = 0; i < item; i++)
        if (is_picture(&document->items[i], 0) &&
            is_same(&document->items[i].picture, &document->items[item].picture))
            return true;
    return false;
}

/* "lap-cloth-2.svg" in the folder: numbers where a size has several of a kind. */
static void name_in_folder(const struct work *work, const struct wish *wish, const struct picture *picture, int number,
                           char name[NAME_ROOM])
{
    char size[64] = "";
    const struct pattern *pattern = work->pattern;
    if (pattern->sizes_count > 1 && picture->worked != NULL)
        snprintf(size, sizeof size, "%.60s-", pattern->sizes[picture->worked->design->size].name);
    for (char *c = size; *c != '\0'; c++)
        *c = isalnum((unsigned char)*c) ? (char)tolower((unsigned char)*c) : '-';
    snprintf(name, NAME_ROOM, "%.3900s/%s%s-%d%s", wish->pictures, size, picture_word((int)picture->kind), number,
             ending_of(wish->form));
}

/* Numbers of one kind in one size go on from picture to picture. */
static int number_of(const struct document *document, const struct page *page, size_t item)
{
    int number = 1;
    const struct picture *picture = &document->items[item].picture;
    for (size_t i = 0; i < item; i++) {
        const struct item *earlier = &document->items[i];
        if (is_picture(earlier, (int)picture->kind) && earlier->picture.worked == picture->worked &&
            !is_drawn(document, i))
            number += image_parts(page, &earlier->picture);
    }
    return number;
}

static int count_pictures(const struct document *document, const struct page *page, int kind)
{
    int count = 0;
    for (size_t item = 0; item < document->used; item++)
        if (is_picture(&document->items[item], kind) && !is_drawn(document, item))
            count += image_parts(page, &document->items[item].picture);
    return count;
}

static bool write_picture(const struct work *work, const struct wish *wish, const struct page *page, size_t item,
                          struct files *files, struct failure *failure)
{
    const struct document *document = work->document;
    const struct picture *picture = &document->items[item].picture;
    int parts = image_parts(page, picture), count = count_pictures(document, page, wish->picture);
    for (int part = 0; part < parts; part++) {
        struct bytes bytes = { NULL, 0, 0 };
        char name[NAME_ROOM];
        if (wish->pictures != NULL)
            name_in_folder(work, wish, picture, number_of(document, page, item) + part, name);
        else
            name_file(wish, (int)files->used + 1, count, name);
        waiting("Drawing %s ...", name);
        if (!was_drawn(image_of_picture(page, picture, part, wish->form, wish->dpi, &bytes), failure) ||
            !files_add(files, name, &bytes, failure)) {
            bytes_free(&bytes);
            return false;
        }
    }
    return true;
}

static bool has_folder(const char *folder, struct failure *failure)
{
    if (folder == NULL || mkdir(folder, 0777) == 0 || errno == EEXIST)
        return true;
    failure_say(failure, "pictures", "Cannot make the folder %s: %s.", folder, strerror(errno));
    failure->exit_code = EXIT_FILE_TROUBLE;
    return false;
}

static bool write_pictures(const struct work *work, const struct wish *wish, const struct page *page,
                           struct files *files, struct failure *failure)
{
    int count = count_pictures(work->document, page, wish->picture);
    if (count == 0) {
        failure_say(failure, "picture", "This sheet has no picture of the kind \"%s\".", picture_word(wish->picture));
        failure->exit_code = EXIT_NO_ANSWER;
        return false;
    }
    if (!fits_output(wish, count, failure) || !has_folder(wish->pictures, failure))
        return false;
    for (size_t item = 0; item < work->document->used; item++)
        if (is_picture(&work->document->items[item], wish->picture) && !is_drawn(work->document, item) &&
            !write_picture(work, wish, page, item, files, failure))
            return false;
    return true;
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

bool sheets_write(const struct work *work, const struct wish *wish, struct files *files, struct failure *failure)
{
    enum pattern_paper paper = wish->paper != 0 ? (enum pattern_paper)wish->paper : work->pattern->paper;
    struct type_case letters;
    if (!type_case_open(&letters))
        return trouble(failure, "There is no font on this machine to set the sheet in: install one, ",
                       "for instance DejaVu Sans (Debian: fonts-dejavu-core)");
    bool fine;
    if (wish->picture != 0 || wish->pictures != NULL) {
        struct page page = page_of(paper);
        fine = write_pictures(work, wish, &page, files, failure);
    } else {
        struct flow *flow = flow_create(work->document, &letters, paper);
        fine = write_pages(flow, wish, files, failure);
        flow_free(flow);
    }
    type_case_close(&letters);
    return fine;
}
