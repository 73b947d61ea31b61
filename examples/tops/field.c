/* field.c - blocks on point: which squares and triangles make up each diagonal row, and how all is pressed.
 *
 * SPDX-License-Identifier: MIT
 *
 * Blocks, alternates and seams are numbered as quilt.h and pressing.h say. In diagonal row `line`, from columns - 1 in
 * the upper right to 1 - rows in the lower left, lie the blocks whose column less row is `line`, and the alternates. */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"

enum { ROW_MOST = 64 };

struct field {
    const struct sheet *sheet;
    muslin_id node;
    muslin_id *blocks;
    size_t blocks_count;
    int64_t columns;
    int64_t rows;
    const struct muslin_pressed_seam *seams;
};

/* A row: its blocks by number. */
struct row {
    size_t blocks[ROW_MOST];
    size_t count;
};

static struct row row_of(const struct field *field, int64_t line)
{
    struct row row = { .count = 0 };
    int64_t j = line < 0 ? -line : 0;
    for (int64_t i = j + line; i < field->columns && j < field->rows && row.count + 1 < ROW_MOST; i++, j++) {
        row.blocks[row.count++] = (size_t)(i + j * field->columns);
        if (i + 1 < field->columns && j + 1 < field->rows)
            row.blocks[row.count++] = (size_t)(field->columns * field->rows + i + j * (field->columns - 1));
    }
    return row;
}

size_t block_that_begins(const struct design *design, size_t number)
{
    struct field field = { .columns = design->columns, .rows = design->rows };
    return row_of(&field, design->columns - 1 - (int64_t)number).blocks[0];
}

/* The letter or number of a block. */
static void add_block(struct line *line, const struct field *field, size_t block)
{
    char text[16];
    struct lying part = lying_at(field->sheet, field->node, block, field->blocks[block]);
    int64_t cut = cut_of_patch(field->sheet, part.node);
    if (cut >= 0)
        add(line, "[%d] %s%s", field->sheet->piece[cut], fabric_name(field->sheet, field->sheet->cuts[cut].fabric),
            turned(part.quarter_turns));
    else
        add(line, "%s%s%s", letter(field->sheet, part.node, text), part.other_way ? "*" : "",
            turned(part.quarter_turns));
}

/* The two longest rows have a corner of the top at one end. */
static void print_row(const struct field *field, int64_t line, size_t number)
{
    struct row row = row_of(field, line);
    struct line words = { .used = 0 };
    add(&words, "Row %zu: %s", number, line == 0 ? "" : "side triangle; ");
    for (size_t i = 0; i < row.count; i++) {
        add(&words, "%s", i > 0 ? "; " : "");
        add_block(&words, field, row.blocks[i]);
    }
    add(&words, "%s.", line == field->columns - field->rows ? "" : "; side triangle");
    print_line(&words, 11, 2);
}

/* ---- pressing --------------------------------------------------------------------------------------------------- */

/* Seams within rows: those at the left of each block but the first, then those at the left of the triangles at the
 * right, from the top, and at the bottom, from the left. */
static int64_t seams_within(const struct field *field)
{
    return (int64_t)field->blocks_count - 1 + field->columns - 1 + field->rows - 1;
}

/* Whether a seam within the row that begins with the triangle or block before `block` is pressed towards the main
 * blocks: those and the alternates take turns, and triangles lie beside main blocks alone. */
static int goes_to_main(const struct field *field, int64_t seam)
{
    int64_t main_blocks = field->columns * field->rows;
    int is_left_of_main = seam + 1 < main_blocks;
    return field->seams[seam].towards == (is_left_of_main ? 2 : 1);
}

static void add_pressed_within(struct line *line, const struct field *field)
{
    int64_t count = seams_within(field);
    int64_t to_main = 0;
    char text[16];
    for (int64_t i = 0; i < count; i++)
        to_main += goes_to_main(field, i);
    struct lying part = lying_at(field->sheet, field->node, 0, field->blocks[0]);
    if (to_main == count)
        add(line, "Press the seams within rows towards %s", letter(field->sheet, part.node, text));
    else if (to_main == 0)
        add(line, "Press the seams within rows away from %s", letter(field->sheet, part.node, text));
    else {
        add(line, "Press the seams at the upper left of the blocks but the first, from left to right along the top row "
            "of blocks and so on, then of the squares between them, then of the side triangles at the right and at "
            "the bottom: ");
        add_runs(line, field->seams, (size_t)count);
    }
}

/* Then the seams below each row, from the upper right, and those of the corners: upper left, lower right, upper right,
 * lower left. */
static void print_pressing(const struct field *field)
{
    static const char *const corners[] = { "upper left", "lower right", "upper right", "lower left" };
    static const int32_t to_rows[] = { MUSLIN_PRESS_RIGHT, MUSLIN_PRESS_LEFT, MUSLIN_PRESS_LEFT, MUSLIN_PRESS_RIGHT };
    struct line line = { .used = 0 };
    int64_t rows = field->columns + field->rows - 2;
    const struct muslin_pressed_seam *seam = field->seams + seams_within(field);
    add_pressed_within(&line, field);
    add(&line, "; of those between rows, from row 1 on, ");
    for (int64_t i = 0, next; i < rows; i = next) {
        for (next = i + 1; next < rows && seam[next].press == seam[i].press; next++) {
        }
        if (next - i == rows)
            add(&line, "all");
        else
            add(&line, "%sthe next %d", i == 0 ? "" : ", ", (int)(next - i));
        add(&line, " towards the row %s",
            seam[i].press == MUSLIN_PRESS_RIGHT ? "before (upper right)" : "after (lower left)");
    }
    add(&line, "; of the corners the ");
    for (size_t i = 0; i < 4; i++)
        add(&line, "%s%s one towards the %s", comma(i, 4), corners[i],
            seam[rows + (int64_t)i].press == to_rows[i] ? "rows" : "triangle");
    add(&line, ".");
    print_line(&line, 9, 2);
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

static void add_triangles(struct line *line, const struct field *field)
{
    for (size_t i = 0; i < field->sheet->cuts_count; i++) {
        const struct muslin_cut *cut = &field->sheet->cuts[i];
        if (cut->source == MUSLIN_CUT_SETTING && cut->first_node == field->node)
            add(line, "%s triangles are [%d]. ", cut->again == MUSLIN_AGAIN_TWICE ? "Side" : "Corner",
                field->sheet->piece[i]);
    }
}

static struct field field_of(const struct sheet *sheet, muslin_id node)
{
    struct field field = { .sheet = sheet, .node = node };
    size_t count;
    field.blocks = children_of(sheet, node, &field.blocks_count);
    field.seams = seams_of(sheet, node, &count);
    field.columns = sheet->design->columns;
    field.rows = sheet->design->rows;
    return field;
}

void print_field(const struct sheet *sheet, const struct muslin_sewing_row *step)
{
    struct field field = field_of(sheet, step->node);
    struct line line = { .used = 0 };
    size_t number = 0;
    add_triangles(&line, &field);
    add(&line, "Lay all out as drawn. Each row runs down to the right; the first is in the upper right corner. Each "
        "block is turned an eighth turn (45 degrees) to the right, its upper edge facing the upper right.");
    print_line(&line, 9, 2);
    for (int64_t i = field.columns - 1; i > -field.rows; i--)
        print_row(&field, i, ++number);
    add(&line, "Sew each row, then the rows to each other in their order, last the four corner triangles: those at "
        "the upper left and lower right, which close the longest rows, before the others.");
    print_line(&line, 9, 2);
    print_pressing(&field);
    add(&line, "Trim the sides to 1/4 in beyond the blocks' points, square at the corners; triangles are cut at the "
        "next 1/8 in above the need, so that there is little or nothing to trim. Side triangles were cut twice: their "
        "long side, on the outside, lies on the straight grain, their short sides stretch. Corner triangles were cut "
        "once: their two short sides, on the outside, lie on the straight grain; the long side, which you sew, "
        "stretches.");
    print_line(&line, 9, 2);
    free(field.blocks);
}
