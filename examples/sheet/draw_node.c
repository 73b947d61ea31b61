/* draw_node.c - a part as it is when it is finished: its pieces numbered as in the cut list, its sizes beside it.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <stdlib.h>

#include "picture.h"

/* ---- numbers ----------------------------------------------------------------------------------------------------- */

static bool is_written(const int64_t *cuts, const bool *written, size_t end, int64_t cut)
{
    for (size_t i = 0; i < end; i++)
        if (cuts[i] == cut && written[i])
            return true;
    return false;
}

/* Of the patches of a cut. */
static size_t leftmost_of(const struct patches *patches, const int64_t *cuts, int64_t cut, const struct view *view)
{
    size_t least = patches->count;
    for (size_t row = 0; row < patches->count; row++)
        if (cuts[row] == cut && (least == patches->count ||
                                 middle_of(patches, row, view).x < middle_of(patches, least, view).x - 0.5))
            least = row;
    return least;
}

/* Of the cuts that are written nowhere, the one whose patch lies highest; or no row. */
static size_t next_of(const struct patches *patches, const int64_t *cuts, const bool *written, const struct view *view)
{
    size_t next = patches->count;
    double highest = HUGE_VAL;
    for (size_t row = 0; row < patches->count; row++) {
        if (cuts[row] < 0 || is_written(cuts, written, patches->count, cuts[row]))
            continue;
        const size_t leftmost = leftmost_of(patches, cuts, cuts[row], view);
        const double y = middle_of(patches, leftmost, view).y;
        if (y < highest) {
            next = leftmost;
            highest = y;
        }
    }
    return next;
}

/* Where the number of a piece fits into none of its patches, it stands at the left, with a line to the nearest one. */
static void write_numbers(const struct canvas *canvas, const struct patches *patches, const int64_t *cuts,
                          const struct view *view)
{
    char text[WORD_ROOM];
    double free_from = -HUGE_VAL;
    bool *written = rows_for(patches->count, sizeof *written);
    for (size_t row = 0; row < patches->count; row++)
        if (cuts[row] >= 0)
            written[row] = write_in_patch(canvas->cairo, patches, row, view, (struct spot){ 0, 0 },
                                          piece_name(canvas->worked, cuts[row], text), TEXT_SIZE);
    for (size_t row; (row = next_of(patches, cuts, written, view)) < patches->count; written[row] = true) {
        const struct spot at = middle_of(patches, row, view);
        const double y = fmax(at.y, free_from);
        free_from = y + TEXT_SIZE + 2;
        draw_lead(canvas->cairo, view->x - 4, y, at.x, at.y);
        write_up_to(canvas->cairo, view->x - 5, y, piece_name(canvas->worked, cuts[row], text), SMALL_SIZE);
    }
    free(written);
}

static void draw_arrows(const struct canvas *canvas, muslin_id node, const struct view *view)
{
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(canvas->worked, node, &count);
    for (size_t i = 0; i < count; i++) {
        const double from_x = view_x(view, seams[i].from_x);
        const double from_y = view_y(view, seams[i].from_y);
        const double to_x = view_x(view, seams[i].to_x);
        const double to_y = view_y(view, seams[i].to_y);
        draw_pressed(canvas->cairo, (from_x + to_x) / 2, (from_y + to_y) / 2, seams[i].press,
                     atan2(to_y - from_y, to_x - from_x), 6);
    }
}

void draw_numbered(const struct canvas *canvas, muslin_id node, const struct view *view, bool has_arrows)
{
    struct patches patches = patches_of(canvas->worked, node, MUSLIN_STAGE_FINISHED);
    int64_t *cuts = cuts_of_patches(canvas->worked, node, &patches);
    draw_patches(canvas->cairo, canvas->worked, &patches, 0, patches.count, view, NULL);
    write_numbers(canvas, &patches, cuts, view);
    if (has_arrows)
        draw_arrows(canvas, node, view);
    free(cuts);
    patches_free(&patches);
}

/* ---- sizes ------------------------------------------------------------------------------------------------------- */

void draw_sizes(const struct canvas *canvas, muslin_id node, const struct view *view, bool is_finished)
{
    const struct muslin_node_size size = size_of(canvas->worked, node);
    const double right = view_x(view, size.finished_width);
    const double top = view_y(view, size.finished_height);
    char text[WORD_ROOM];
    char words[WORD_ROOM + 16];
    const char *stage = is_finished ? "finished" : "unfinished";
    snprintf(words, sizeof words, "%s\n%s",
             measured(canvas->worked, is_finished ? size.finished_width : size.unfinished_width, text), stage);
    dimension_across(canvas->cairo, view->x, right, view->y + 11, words);
    snprintf(words, sizeof words, "%s\n%s",
             measured(canvas->worked, is_finished ? size.finished_height : size.unfinished_height, text), stage);
    dimension_down(canvas->cairo, right + 8, top, view->y, words);
}

enum { LARGEST = 200, SMALLEST = 70 };

/* As large as is good to look at: small units are not drawn as large as blocks. */
void draw_node(const struct canvas *canvas)
{
    const struct muslin_node_size size = size_of(canvas->worked, canvas->which);
    const double patches = sqrt((double)size.patches);
    const double most = fmin(LARGEST, SMALLEST + 20 * patches);
    const struct view view = { 0, 0, unit_for(&size, fmin(most, canvas->width - 60), fmin(most, canvas->height - 40)) };
    draw_numbered(canvas, canvas->which, &view, false);
    draw_sizes(canvas, canvas->which, &view, true);
}
