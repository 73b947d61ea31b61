/* draw.c - a top as SVG: every patch in its fabric's colour, seams as thin lines, letters of parts, a legend below.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"
#include "svg.h"

enum { PAGE = 64, CORNERS_MOST = PAGE * 40, WIDTH = 640, MARGIN = 28, LINE = 18 };

static void set_colour(cairo_t *cairo, const struct cloth *cloth)
{
    cairo_set_source_rgb(cairo, cloth->colour[0] / 255.0, cloth->colour[1] / 255.0, cloth->colour[2] / 255.0);
}

/* Thin lines: dark ones on light cloth, light ones on dark. */
static void set_seam(cairo_t *cairo, const struct cloth *cloth)
{
    int is_dark = cloth->colour[0] + 2 * cloth->colour[1] + cloth->colour[2] < 4 * 80;
    double shade = is_dark ? 1 : 0;
    cairo_set_source_rgba(cairo, shade, shade, shade, 0.55);
}

/* Lengths become units of the drawing; y runs downwards there. */
struct scale {
    double unit;
    muslin_len height;
};

/* Some outlines of the top with their corners. */
struct page {
    struct muslin_outline rows[PAGE];
    struct muslin_outline_corner corners[CORNERS_MOST];
    size_t count;
};

/* Outlines from number `first` on, `most` of them or as many as a page holds; how many are left from there. */
static size_t read_page(const struct sheet *sheet, int64_t first, int64_t most, struct page *page)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    size_t left;
    must(muslin_solution_outlines(sheet->solution, sheet->design->top, MUSLIN_STAGE_FINISHED, first, page->rows,
                                  sizeof page->rows[0], most < PAGE ? (size_t)most : PAGE, page->corners,
                                  sizeof page->corners[0], CORNERS_MOST, &left, &page->count, &problem),
         &problem);
    return left;
}

/* ---- patches ---------------------------------------------------------------------------------------------------- */

static void draw_patch(cairo_t *cairo, const struct scale *scale, const struct page *page, size_t row)
{
    const struct muslin_outline_corner *corners = page->corners + page->rows[row].first_corner;
    for (int64_t i = 0; i < page->rows[row].corners; i++)
        cairo_line_to(cairo, (double)corners[i].x * scale->unit, (double)(scale->height - corners[i].y) * scale->unit);
    cairo_close_path(cairo);
}

static void draw_patches(cairo_t *cairo, const struct scale *scale, const struct sheet *sheet)
{
    static struct page page;
    size_t left = 1;
    for (int64_t first = 0; left > 0; first += (int64_t)page.count) {
        left = read_page(sheet, first, PAGE, &page) - page.count;
        for (size_t i = 0; i < page.count; i++) {
            const struct cloth *cloth = cloth_of(sheet->design, page.rows[i].fabric);
            draw_patch(cairo, scale, &page, i);
            set_colour(cairo, cloth);
            cairo_fill_preserve(cairo);
            set_seam(cairo, cloth);
            cairo_stroke(cairo);
        }
    }
}

/* ---- letters ---------------------------------------------------------------------------------------------------- */

/* The number of a node's first patch in the top where it lies as it was made, found in the order of the tree, in which
 * a node's own pieces come before its children; or -1. `first` is that of `at`. */
static int64_t first_patch(const struct sheet *sheet, muslin_id at, int64_t first, muslin_id node)
{
    size_t count;
    int64_t found = at == node ? first : -1;
    if (found >= 0 || node_of(sheet, at).kind == MUSLIN_NODE_TURN)
        return found;
    muslin_id *children = children_of(sheet, at, &count);
    first += size_of(sheet, at).patches;
    for (size_t i = 0; i < count; i++)
        first -= size_of(sheet, children[i]).patches;
    for (size_t i = 0; i < count && found < 0; i++) {
        found = first_patch(sheet, children[i], first, node);
        first += size_of(sheet, children[i]).patches;
    }
    free(children);
    return found;
}

struct box {
    muslin_len left;
    muslin_len right;
    muslin_len low;
    muslin_len high;
};

static void stretch(struct box *box, const struct page *page)
{
    for (size_t row = 0; row < page->count; row++) {
        const struct muslin_outline_corner *corners = page->corners + page->rows[row].first_corner;
        for (int64_t i = 0; i < page->rows[row].corners; i++) {
            box->left = corners[i].x < box->left ? corners[i].x : box->left;
            box->right = corners[i].x > box->right ? corners[i].x : box->right;
            box->low = corners[i].y < box->low ? corners[i].y : box->low;
            box->high = corners[i].y > box->high ? corners[i].y : box->high;
        }
    }
}

/* Round some patches of the top. */
static struct box box_of(const struct sheet *sheet, int64_t first, int64_t patches)
{
    static struct page page;
    struct box box = { MUSLIN_LENGTH_MAX, 0, MUSLIN_LENGTH_MAX, 0 };
    for (int64_t end = first + patches; first < end; first += (int64_t)page.count) {
        read_page(sheet, first, end - first, &page);
        stretch(&box, &page);
    }
    return box;
}

static void draw_letter(cairo_t *cairo, double x, double y, const char *text)
{
    cairo_text_extents_t size;
    cairo_text_extents(cairo, text, &size);
    cairo_rectangle(cairo, x - size.width / 2 - 4, y - size.height / 2 - 4, size.width + 8, size.height + 8);
    cairo_set_source_rgba(cairo, 1, 1, 1, 0.85);
    cairo_fill(cairo);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    cairo_move_to(cairo, x - size.width / 2 - size.x_bearing, y - size.height / 2 - size.y_bearing);
    cairo_show_text(cairo, text);
}

/* Each diagonal row has its number at the edge of its first block. */
static void draw_row_numbers(cairo_t *cairo, const struct scale *scale, const struct sheet *sheet, muslin_id field)
{
    size_t count;
    muslin_id *blocks = children_of(sheet, field, &count);
    int64_t start = first_patch(sheet, sheet->design->top, 0, field) + size_of(sheet, field).patches;
    for (size_t i = 0; i < count; i++)
        start -= size_of(sheet, blocks[i]).patches;
    for (size_t row = 0; row + 1 < (size_t)(sheet->design->columns + sheet->design->rows); row++) {
        size_t begins = block_that_begins(sheet->design, row);
        int64_t first = start;
        char text[24];
        for (size_t i = 0; i < begins; i++)
            first += size_of(sheet, blocks[i]).patches;
        struct box box = box_of(sheet, first, size_of(sheet, blocks[begins]).patches);
        double x = (3.0 * (double)box.left + (double)box.right) / 4;
        double y = (double)scale->height - (3.0 * (double)box.high + (double)box.low) / 4;
        snprintf(text, sizeof text, "%zu", row + 1);
        draw_letter(cairo, x * scale->unit, y * scale->unit, text);
    }
    free(blocks);
}

/* Blocks have theirs in the middle, rows of the top beside it. */
static void draw_letters(cairo_t *cairo, const struct scale *scale, const struct sheet *sheet)
{
    muslin_len width = size_of(sheet, sheet->design->top).finished_width;
    cairo_set_font_size(cairo, 13);
    for (size_t i = 0; i < sheet->steps_count; i++) {
        const struct muslin_sewing_row *step = &sheet->steps[i];
        const struct named *named = named_of(sheet, step->node);
        int is_block = named != NULL && named->is_block;
        int is_row = named == NULL && node_of(sheet, step->node).axis == MUSLIN_ACROSS &&
                     step->unfinished_width > width / 2;
        if (step->kind == MUSLIN_SEWING_DIAGONAL)
            draw_row_numbers(cairo, scale, sheet, step->node);
        if ((!is_block && !is_row) || step->kind == MUSLIN_SEWING_SET)
            continue;
        char text[16];
        int64_t first = first_patch(sheet, sheet->design->top, 0, step->node);
        if (first < 0)
            continue;
        struct box box = box_of(sheet, first, size_of(sheet, step->node).patches);
        double x = is_block ? (double)(box.left + box.right) / 2 * scale->unit : -MARGIN / 2.0;
        double y = ((double)scale->height - (double)(box.low + box.high) / 2) * scale->unit;
        draw_letter(cairo, x, y, letter(sheet, step->node, text));
    }
}

/* ---- legend ----------------------------------------------------------------------------------------------------- */

static void show_line(cairo_t *cairo, double y, const char *line)
{
    cairo_move_to(cairo, 0, y);
    cairo_show_text(cairo, line);
}

static void draw_legend(cairo_t *cairo, const struct design *design, const struct muslin_node_size *size,
                        const char *title, double top)
{
    char line[2 * WORD + 64];
    char words[2][WORD];
    cairo_set_font_size(cairo, 11);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    snprintf(line, sizeof line, "%s (invented), %" PRId64 " patches; upper edge above, letters as on the sheet", title,
             size->patches);
    show_line(cairo, top + LINE, line);
    snprintf(line, sizeof line, "finished %s, unfinished %s",
             inches_by(size->finished_width, size->finished_height, words[0]),
             inches_by(size->unfinished_width, size->unfinished_height, words[1]));
    show_line(cairo, top + 2 * LINE, line);
    for (int i = 0; i < design->cloths_used; i++) {
        double x = (i % 4) * WIDTH / 4.0;
        double y = top + LINE * (2.5 + i / 4);
        cairo_rectangle(cairo, x, y, 12, 12);
        set_colour(cairo, &design->cloths[i]);
        cairo_fill_preserve(cairo);
        cairo_set_source_rgb(cairo, 0, 0, 0);
        cairo_stroke(cairo);
        cairo_move_to(cairo, x + 18, y + 10);
        cairo_show_text(cairo, design->cloths[i].name);
    }
}

int draw_top(const struct sheet *sheet, const char *title, FILE *file)
{
    struct muslin_node_size size = size_of(sheet, sheet->design->top);
    struct scale scale = { (double)WIDTH / (double)size.finished_width, size.finished_height };
    double height = (double)size.finished_height * scale.unit;
    cairo_t *cairo = start_svg(file, WIDTH + 2 * MARGIN, height + 2 * MARGIN + 4 * LINE);
    cairo_translate(cairo, MARGIN, MARGIN);
    cairo_set_line_width(cairo, 0.8);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
    cairo_select_font_face(cairo, "sans-serif", CAIRO_FONT_SLANT_NORMAL, CAIRO_FONT_WEIGHT_NORMAL);
    draw_patches(cairo, &scale, sheet);
    draw_letters(cairo, &scale, sheet);
    draw_legend(cairo, sheet->design, &size, title, height);
    return end_svg(cairo);
}
