/* draw_template.c - a template in its true size: cut line, seam line, grain, which piece, how many, reversed or not.
 *
 * SPDX-License-Identifier: MIT
 *
 * What is larger than a page comes on several, from the upper left, row by row: they are cut along the dashed frame and
 * joined, letter to letter. */
#include <inttypes.h>
#include <math.h>
#include <stdlib.h>

#include "picture.h"

static const double TICK = 72.0 / MUSLIN_TICKS_PER_INCH;
enum { AROUND = 14, BELOW = 40, GAP = 10, LEAST_WORDS = 120, WORDS = 400, CORNERS_MOST = 80 };

/* Its corners in points, y downwards: as cut and finished. */
struct template {
    const struct muslin_solution_cut *cut;
    struct spot cuts[CORNERS_MOST];
    struct spot seams[CORNERS_MOST];
    size_t cut_corners;
    size_t seam_corners;
    double width;
    double height;
    bool is_reversed;
    bool is_turned; /* a quarter, as fewer pages hold it so */
};

/* ---- words ------------------------------------------------------------------------------------------------------- */

/* What stands below it; `pages` it comes on. */
static void say_below(const struct canvas *canvas, const struct template *template, int pages, char words[WORDS])
{
    const struct cloth *cloth = cloth_of(canvas->worked->design, template->cut->fabric);
    size_t used = (size_t)snprintf(words, WORDS, "template [%d], %s %s, %.60s: cut %" PRId64 "%s",
                                   canvas->worked->piece[canvas->which],
                                   canvas->worked->design->pattern->words[WORD_FABRIC], cloth->letter, cloth->name,
                                   template->cut->pieces,
                                   template->is_reversed ? ", reversed: lay it face down" : "");
    if (pages > 1)
        used += (size_t)snprintf(words + used, WORDS - used, "\npart %d of %d", canvas->part + 1, pages);
    snprintf(words + used, WORDS - used,
             "\nsolid: cut here; dashed: seam; arrow: straight grain; rings: corners to match");
}

/* Words are broken to the width of what they stand below. */
static double width_of_words(double width)
{
    return fmax(LEAST_WORDS, width);
}

/* ---- pages ------------------------------------------------------------------------------------------------------- */

/* With its words, and the half of its lines that lies outside. */
static bool is_whole(const struct canvas *canvas, const struct template *template, double width, double height)
{
    char words[WORDS];
    say_below(canvas, template, 1, words);
    const double below = GAP + wrapped_height(width_of_words(width), words, SMALL_SIZE);
    return width + 2 <= canvas->width && height + 1 + below <= canvas->height;
}

static int columns_for(const struct canvas *canvas, double width)
{
    return (int)ceil((width + 2) / fmax(72, canvas->width - 2 * AROUND));
}

static int rows_for_height(const struct canvas *canvas, double height)
{
    return (int)ceil((height + 2) / fmax(72, canvas->height - 2 * AROUND - BELOW));
}

static int pages_for(const struct canvas *canvas, const struct template *template, double width, double height)
{
    if (is_whole(canvas, template, width, height))
        return 1;
    return columns_for(canvas, width) * rows_for_height(canvas, height);
}

/* ---- outlines ---------------------------------------------------------------------------------------------------- */

static bool has_outline(const struct muslin_solution_cut *cut)
{
    if (cut->source == MUSLIN_CUT_SOURCE_UNIT)
        return cut->shape != MUSLIN_CUT_SHAPE_RECTANGLE || cut->again != MUSLIN_CUT_AGAIN_NO;
    return cut->source == MUSLIN_CUT_SOURCE_TEMPLATE;
}

/* The first piece of the row's region, as it is at a stage. */
static size_t read_outline(const struct worked *worked, const struct muslin_solution_cut *cut, int32_t stage,
                           struct spot corners[CORNERS_MOST])
{
    struct patches patches = patches_of(worked, cut->first_node, stage);
    const struct view view = { 0, 0, TICK };
    size_t count = 0;
    for (size_t row = 0; row < patches.count && count == 0; row++) {
        const struct muslin_outline *patch = &patches.rows[row];
        if (patch->region != cut->region || patch->fabric != cut->fabric)
            continue;
        for (int64_t i = 0; i < patch->corners && count < CORNERS_MOST; i++) {
            const struct muslin_outline_corner *corner = &patches.corners[patch->first_corner + i];
            corners[count++] = (struct spot){ view_x(&view, corner->x), view_y(&view, corner->y) };
        }
    }
    patches_free(&patches);
    return count;
}

static size_t put_rectangle(struct spot corners[CORNERS_MOST], double left, double top, double right, double bottom)
{
    corners[0] = (struct spot){ left, bottom };
    corners[1] = (struct spot){ right, bottom };
    corners[2] = (struct spot){ right, top };
    corners[3] = (struct spot){ left, top };
    return 4;
}

/* A rectangle, with its allowances inside. */
static void outline_rectangle(struct template *template)
{
    const struct muslin_solution_cut *cut = template->cut;
    const double width = (double)cut->cut_width * TICK;
    const double height = (double)cut->cut_height * TICK;
    template->cut_corners = put_rectangle(template->cuts, 0, 0, width, height);
    template->seam_corners = put_rectangle(template->seams, (double)cut->left * TICK, (double)cut->top * TICK,
                                           width - (double)cut->right * TICK, height - (double)cut->bottom * TICK);
}

/* The cut line's upper left corner comes to lie at 0, 0. */
static void settle(struct template *template)
{
    double left = HUGE_VAL, top = HUGE_VAL, right = -HUGE_VAL, bottom = -HUGE_VAL;
    for (size_t i = 0; i < template->cut_corners; i++) {
        left = fmin(left, template->cuts[i].x);
        right = fmax(right, template->cuts[i].x);
        top = fmin(top, template->cuts[i].y);
        bottom = fmax(bottom, template->cuts[i].y);
    }
    for (size_t i = 0; i < CORNERS_MOST; i++) {
        template->cuts[i] = (struct spot){ template->cuts[i].x - left, template->cuts[i].y - top };
        template->seams[i] = (struct spot){ template->seams[i].x - left, template->seams[i].y - top };
    }
    template->width = right - left;
    template->height = bottom - top;
}

/* Pieces of shapes are drawn as in the shape, units in the hand that they were asked for. */
static bool is_drawn_reversed(const struct worked *worked, const struct muslin_solution_cut *cut)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    if (cut->source == MUSLIN_CUT_SOURCE_UNIT)
        must(muslin_quilt_read_unit(worked->design->quilt, cut->first_node, &spec, NULL));
    return cut->hand != spec.hand;
}

static void turn_corners(struct spot corners[CORNERS_MOST])
{
    for (size_t i = 0; i < CORNERS_MOST; i++)
        corners[i] = (struct spot){ -corners[i].y, corners[i].x };
}

static struct template template_of(const struct canvas *canvas)
{
    struct template template = { .cut = &canvas->worked->cuts[canvas->which] };
    if (has_outline(template.cut)) {
        template.cut_corners = read_outline(canvas->worked, template.cut, MUSLIN_STAGE_RAW, template.cuts);
        template.seam_corners = read_outline(canvas->worked, template.cut, MUSLIN_STAGE_FINISHED, template.seams);
        template.is_reversed = is_drawn_reversed(canvas->worked, template.cut);
    }
    if (template.cut_corners == 0)
        outline_rectangle(&template);
    settle(&template);
    if (pages_for(canvas, &template, template.height, template.width) <
        pages_for(canvas, &template, template.width, template.height)) {
        turn_corners(template.cuts);
        turn_corners(template.seams);
        template.is_turned = true;
        settle(&template);
    }
    return template;
}

/* ---- drawn ------------------------------------------------------------------------------------------------------- */

static void trace(cairo_t *cairo, const struct spot *corners, size_t count)
{
    cairo_new_path(cairo);
    for (size_t i = 0; i < count; i++)
        cairo_line_to(cairo, corners[i].x, corners[i].y);
    cairo_close_path(cairo);
}

/* Where seams meet, a ring: prick it through and match it with that of the neighbour. */
static void draw_lines(cairo_t *cairo, const struct template *template)
{
    trace(cairo, template->cuts, template->cut_corners);
    set_black(cairo);
    cairo_set_line_width(cairo, 1);
    cairo_stroke(cairo);
    trace(cairo, template->seams, template->seam_corners);
    stroke_dashed(cairo, 5, 3);
    for (size_t i = 0; i < template->seam_corners; i++) {
        cairo_new_path(cairo);
        cairo_arc(cairo, template->seams[i].x, template->seams[i].y, 2, 0, 2 * acos(-1));
        cairo_set_source_rgb(cairo, 1, 1, 1);
        cairo_fill_preserve(cairo);
        stroke_thin(cairo);
    }
}

static struct spot middle_of_seams(const struct template *template)
{
    struct spot sum = { 0, 0 };
    for (size_t i = 0; i < template->seam_corners; i++) {
        sum.x += template->seams[i].x / (double)template->seam_corners;
        sum.y += template->seams[i].y / (double)template->seam_corners;
    }
    return sum;
}

/* How badly an edge serves as the one that lies on the straight grain when its blank is cut with the cloth: a short or
 * the long one of a triangle, or one that lay along the strip. */
static double misses_grain(const struct muslin_solution_cut *cut, double length)
{
    if (cut->grain == MUSLIN_GRAIN_SHORT_EDGES)
        return length;
    if (cut->grain == MUSLIN_GRAIN_LONG_EDGE)
        return -length;
    return fabs(length - (double)cut->wide_edge * TICK);
}

/* Upright, or along that edge; the first of equals, for what a tick makes of them is no difference. */
static double grain_of(const struct template *template)
{
    const struct muslin_solution_cut *cut = template->cut;
    double least = HUGE_VAL;
    double angle = template->is_turned ? 0 : -acos(-1) / 2;
    if (cut->grain == MUSLIN_GRAIN_ALL_EDGES || cut->source != MUSLIN_CUT_SOURCE_UNIT ||
        cut->shape == MUSLIN_CUT_SHAPE_OCTAGONS)
        return angle;
    for (size_t i = 0; i < template->cut_corners; i++) {
        const struct spot a = template->cuts[i];
        const struct spot b = template->cuts[(i + 1) % template->cut_corners];
        const double misses = misses_grain(cut, hypot(b.x - a.x, b.y - a.y));
        if (misses < least - 0.1) {
            least = misses;
            angle = atan2(b.y - a.y, b.x - a.x);
        }
    }
    return angle;
}

static double reach_of_grain(const struct template *template)
{
    return fmin(30, 0.16 * fmin(template->width, template->height) + 4);
}

static void draw_grain(cairo_t *cairo, const struct template *template)
{
    const struct spot middle = middle_of_seams(template);
    const double angle = grain_of(template);
    const double reach = reach_of_grain(template);
    const double x = reach * cos(angle);
    const double y = reach * sin(angle);
    draw_arrow(cairo, middle.x, middle.y, middle.x + x, middle.y + y);
    draw_arrow(cairo, middle.x, middle.y, middle.x - x, middle.y - y);
}

/* Number and fabric's letter on the piece, to both sides of the arrow, where there is room. */
static void write_on(const struct canvas *canvas, const struct template *template)
{
    const struct spot middle = middle_of_seams(template);
    const double angle = grain_of(template);
    char text[WORD_ROOM];
    if (fmin(template->width, template->height) < 50)
        return;
    piece_name(canvas->worked, canvas->which, text);
    const struct room room = words_room(text, LETTER_SIZE);
    const double x = fabs(sin(angle)) * (6 + room.width / 2);
    const double y = cos(angle) * (sin(angle) * cos(angle) > 0 ? -1 : 1) * (6 + room.height / 2);
    write_words(canvas->cairo, middle.x - x, middle.y - y, text, LETTER_SIZE, PLATE_NONE);
    write_words(canvas->cairo, middle.x + x, middle.y + y,
                cloth_of(canvas->worked->design, template->cut->fabric)->letter, TEXT_SIZE, PLATE_RING);
}

static void write_below(const struct canvas *canvas, const struct template *template, double x, double y,
                        double width, int pages)
{
    char words[WORDS];
    say_below(canvas, template, pages, words);
    write_wrapped(canvas->cairo, x, y, width_of_words(width), words, SMALL_SIZE);
}

/* ---- parts ------------------------------------------------------------------------------------------------------- */

/* Equal parts of the template, row by row. */
struct sheets {
    int columns;
    int rows;
    double width;
    double height;
};

static struct sheets sheets_of(const struct canvas *canvas, const struct template *template)
{
    struct sheets sheets = { .columns = 1, .rows = 1 };
    if (!is_whole(canvas, template, template->width, template->height)) {
        sheets.columns = columns_for(canvas, template->width);
        sheets.rows = rows_for_height(canvas, template->height);
    }
    sheets.width = template->width / sheets.columns;
    sheets.height = template->height / sheets.rows;
    return sheets;
}

/* Whether anything of the template lies on a part: tried at a grid of points. */
static bool is_blank(const struct template *template, const struct sheets *sheets, int number)
{
    enum { TRIED = 24 };
    cairo_surface_t *surface = cairo_recording_surface_create(CAIRO_CONTENT_ALPHA, NULL);
    cairo_t *cairo = cairo_create(surface);
    bool found = false;
    trace(cairo, template->cuts, template->cut_corners);
    for (int i = 0; i < TRIED * TRIED && !found; i++) {
        const double x = number % sheets->columns + (i % TRIED + 0.5) / TRIED;
        const double y = number / sheets->columns + (i / TRIED + 0.5) / TRIED;
        found = cairo_in_fill(cairo, x * sheets->width, y * sheets->height);
    }
    cairo_destroy(cairo);
    cairo_surface_destroy(surface);
    return !found;
}

/* The part that comes on a page: blank ones are not printed. -1: there are not so many. */
static int part_on(const struct template *template, const struct sheets *sheets, int page)
{
    for (int part = 0; part < sheets->columns * sheets->rows; part++)
        if (!is_blank(template, sheets, part) && page-- == 0)
            return part;
    return -1;
}

int template_pages(const struct canvas *canvas)
{
    const struct template template = template_of(canvas);
    const struct sheets sheets = sheets_of(canvas, &template);
    int pages = 0;
    while (part_on(&template, &sheets, pages) >= 0)
        pages++;
    return pages > 0 ? pages : 1;
}

/* A letter on either side of an edge where two pages meet, and a line across it. */
static void mark_join(cairo_t *cairo, double x, double y, bool is_down, int number)
{
    const char letter[] = { (char)('a' + number % 26), '\0' };
    cairo_new_path(cairo);
    cairo_move_to(cairo, x - (is_down ? 7 : 0), y - (is_down ? 0 : 7));
    cairo_line_to(cairo, x + (is_down ? 7 : 0), y + (is_down ? 0 : 7));
    stroke_thin(cairo);
    write_words(cairo, x + (is_down ? 0 : 8), y - (is_down ? 8 : 0), letter, TEXT_SIZE, PLATE_RING);
}

/* The frame of a page of several: where it meets the next one it is cut off, and joined letter to letter. */
static void mark_joins(cairo_t *cairo, const struct sheets *sheets, int column, int row)
{
    const double left = column * sheets->width;
    const double top = row * sheets->height;
    const double right = left + sheets->width;
    const double bottom = top + sheets->height;
    const int across = row * (sheets->columns - 1);
    const int down = (sheets->columns - 1) * sheets->rows + row * sheets->columns + column;
    cairo_new_path(cairo);
    cairo_rectangle(cairo, left, top, sheets->width, sheets->height);
    stroke_dashed(cairo, 2, 3);
    if (column > 0)
        mark_join(cairo, left, (top + bottom) / 2, true, across + column - 1);
    if (column + 1 < sheets->columns)
        mark_join(cairo, right, (top + bottom) / 2, true, across + column);
    if (row > 0)
        mark_join(cairo, (left + right) / 2, top, false, down - sheets->columns);
    if (row + 1 < sheets->rows)
        mark_join(cairo, (left + right) / 2, bottom, false, down);
}

void draw_template(const struct canvas *canvas)
{
    const struct template template = template_of(canvas);
    const struct sheets sheets = sheets_of(canvas, &template);
    const int pages = template_pages(canvas);
    const int part = part_on(&template, &sheets, canvas->part);
    const int column = part % sheets.columns;
    const int row = part / sheets.columns;
    cairo_save(canvas->cairo);
    if (pages > 1) {
        cairo_rectangle(canvas->cairo, column * sheets.width, row * sheets.height, sheets.width, sheets.height);
        cairo_clip(canvas->cairo);
    }
    cairo_new_path(canvas->cairo);
    draw_lines(canvas->cairo, &template);
    draw_grain(canvas->cairo, &template);
    write_on(canvas, &template);
    cairo_restore(canvas->cairo);
    if (pages > 1)
        mark_joins(canvas->cairo, &sheets, column, row);
    const double bottom = pages > 1 ? (row + 1) * sheets.height : template.height;
    write_below(canvas, &template, column * sheets.width, bottom + GAP, sheets.width, pages);
}
