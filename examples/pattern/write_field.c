/* write_field.c - blocks on point: which squares and triangles make up each diagonal row, and how all is pressed.
 *
 * SPDX-License-Identifier: MIT
 *
 * Blocks, alternates and seams are numbered as quilt.h and pressing.h say. In diagonal row `line`, from columns - 1 in
 * the upper right to 1 - rows in the lower left, lie the blocks whose column less row is `line`, and the alternates. */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

struct field {
    const struct worked *worked;
    muslin_id node;
    muslin_id *blocks;
    size_t blocks_count; /* alternates with them, sashes not */
    struct muslin_quilt_diagonal_spec spec;
    const struct muslin_pressing_seam *seams;
};

/* ---- rows -------------------------------------------------------------------------------------------------------- */

/* The blocks of a row, by number, from the upper left; `blocks` has room for all of the field's, or is null. */
static size_t row_of(int64_t columns, int64_t rows, int64_t line, size_t *blocks)
{
    size_t count = 0;
    int64_t j = line < 0 ? -line : 0;
    for (int64_t i = j + line; i < columns && j < rows; i++, j++) {
        const bool has_alternate = i + 1 < columns && j + 1 < rows;
        if (blocks != NULL)
            blocks[count] = (size_t)(i + j * columns);
        if (blocks != NULL && has_alternate)
            blocks[count + 1] = (size_t)(columns * rows + i + j * (columns - 1));
        count += has_alternate ? 2 : 1;
    }
    return count;
}

/* A row begins at the left or at the upper edge. */
size_t block_that_begins(const struct point_field *field, size_t number)
{
    const int64_t line = field->columns - 1 - (int64_t)number;
    return (size_t)(line < 0 ? -line * field->columns : line);
}

/* The letter or number of a block. */
static void add_block(struct line *line, const struct field *field, size_t block)
{
    char letter[16];
    const struct worked *worked = field->worked;
    struct lying part = lying_at(worked, field->node, block, field->blocks[block]);
    int64_t cut = cut_of_patch(worked, part.node);
    if (cut >= 0)
        add(line, "[%d] %s%s", worked->piece[cut], fabric_name(worked, worked->cuts[cut].fabric),
            turned(part.quarter_turns));
    else
        add(line, "%s%s%s", letter_of(worked, part.node, letter), part.other_way ? "*" : "",
            turned(part.quarter_turns));
}

static bool has_sashes(const struct field *field)
{
    return field->spec.layout != MUSLIN_POINT_LAYOUT_PLAIN;
}

/* The two longest rows have a corner of the top at one end. */
static void write_row(struct document *document, const struct field *field, int64_t line, size_t number)
{
    size_t *blocks = rows_for(field->blocks_count, sizeof *blocks);
    const size_t count = row_of(field->spec.columns, field->spec.rows, line, blocks);
    const bool sash_at_ends = has_sashes(field) && field->spec.layout != MUSLIN_POINT_LAYOUT_SASH_INNER;
    struct line words = { NULL, 0, 0 };
    char lead[40];
    add(&words, "%s", line == 0 ? "" : "side triangle; ");
    if (sash_at_ends)
        add(&words, "%s; ", sash(field->worked));
    for (size_t i = 0; i < count; i++) {
        if (i > 0 && has_sashes(field))
            add(&words, "; %s", sash(field->worked));
        add(&words, "%s", i == 0 ? "" : "; ");
        add_block(&words, field, blocks[i]);
    }
    if (sash_at_ends)
        add(&words, "; %s", sash(field->worked));
    add(&words, "%s.", line == field->spec.columns - field->spec.rows ? "" : "; side triangle");
    snprintf(lead, sizeof lead, "Diagonal row %zu:", number);
    put(document, ITEM_POINT, 1, lead, &words);
    free(blocks);
}

/* ---- pressing --------------------------------------------------------------------------------------------------- */

/* Seams within rows: those at the left of each block but the first, then those at the left of the triangles at the
 * right, from the top, and at the bottom, from the left. */
static int64_t seams_within(const struct field *field)
{
    return (int64_t)field->blocks_count - 1 + field->spec.columns - 1 + field->spec.rows - 1;
}

/* Whether a seam within the row that begins with the triangle or block before `block` is pressed towards the main
 * blocks: those and the alternates take turns, and triangles lie beside main blocks alone. */
static bool goes_to_main(const struct field *field, int64_t seam)
{
    int64_t main_blocks = field->spec.columns * field->spec.rows;
    bool is_left_of_main = seam + 1 < main_blocks;
    return field->seams[seam].towards == (is_left_of_main ? MUSLIN_TOWARDS_SECOND : MUSLIN_TOWARDS_FIRST);
}

/* All main blocks are the same, and none of the others is. */
static bool has_one_main(const struct field *field)
{
    const size_t main_blocks = (size_t)(field->spec.columns * field->spec.rows);
    const muslin_id first = lying_at(field->worked, field->node, 0, field->blocks[0]).node;
    for (size_t i = 1; i < field->blocks_count; i++)
        if ((lying_at(field->worked, field->node, i, field->blocks[i]).node == first) != (i < main_blocks))
            return false;
    return true;
}

/* Whether one rule says it of all rows. */
static bool add_pressed_within(struct line *line, const struct field *field)
{
    const int64_t count = seams_within(field);
    int64_t to_main = 0;
    for (int64_t i = 0; i < count; i++)
        to_main += goes_to_main(field, i);
    const bool has_rule = (to_main == count || to_main == 0) && has_one_main(field);
    if (has_rule) {
        add(line, "Press the seams within rows %s ", to_main == 0 ? "away from" : "towards");
        add_block(line, field, 0);
    } else {
        add(line, "Press the seams within rows as said below");
    }
    return has_rule;
}

/* Seams within a diagonal row, by number, from its upper left end: at the left of each block, of which the field's
 * first has none, then of the triangle that closes the row. */
static size_t seams_of_row(const struct field *field, int64_t line, size_t *seams)
{
    const int64_t columns = field->spec.columns;
    const size_t count = row_of(columns, field->spec.rows, line, seams);
    const int64_t i = (int64_t)seams[count - 1] % columns;
    const int64_t j = (int64_t)seams[count - 1] / columns;
    size_t used = 0;
    for (size_t block = 0; block < count; block++)
        if (seams[block] > 0)
            seams[used++] = seams[block] - 1;
    if (line != columns - field->spec.rows)
        seams[used++] = field->blocks_count - 1 + (size_t)(i == columns - 1 ? j : field->spec.rows - 1 + i);
    return used;
}

static const char *along_row(int32_t press)
{
    return press == MUSLIN_PRESS_LEFT    ? "towards the upper left"
           : press == MUSLIN_PRESS_RIGHT ? "towards the lower right"
                                         : "open";
}

static bool takes_turns(const struct field *field, const size_t *seams, size_t count)
{
    for (size_t i = 2; i < count; i++)
        if (field->seams[seams[i]].press != field->seams[seams[i - 2]].press)
            return false;
    return count > 2 && field->seams[seams[0]].press != field->seams[seams[1]].press;
}

/* "Row 3: seams 1 to 2 towards the lower right; seam 3 towards the upper left." */
static void write_pressed_row(struct document *document, const struct field *field, int64_t line, size_t number)
{
    size_t *seams = rows_for(field->blocks_count + 2, sizeof *seams);
    const size_t count = seams_of_row(field, line, seams);
    struct line words = { NULL, 0, 0 };
    char lead[40];
    if (takes_turns(field, seams, count))
        add(&words, "seams 1, 3 and so on %s; seams 2, 4 and so on %s", along_row(field->seams[seams[0]].press),
            along_row(field->seams[seams[1]].press));
    for (size_t i = words.used == 0 ? 0 : count, next; i < count; i = next) {
        const int32_t press = field->seams[seams[i]].press;
        for (next = i + 1; next < count && field->seams[seams[next]].press == press; next++) {
        }
        if (next - i == count)
            add(&words, "all");
        else if (next - i == 1)
            add(&words, "%sseam %zu", i == 0 ? "" : "; ", next);
        else
            add(&words, "%sseams %zu to %zu", i == 0 ? "" : "; ", i + 1, next);
        add(&words, " %s", along_row(press));
    }
    snprintf(lead, sizeof lead, "Row %zu:", number);
    if (count > 0) {
        add(&words, ".");
        put(document, ITEM_POINT, 1, lead, &words);
    }
    free(seams);
}

static void write_pressed_rows(struct document *document, const struct field *field)
{
    size_t number = 0;
    say(document, ITEM_POINT, 0, NULL, "Within rows, the seams counted from the upper left end of the row:");
    for (int64_t i = field->spec.columns - 1; i > -field->spec.rows; i--)
        write_pressed_row(document, field, i, ++number);
}

/* Then the seams below each row, from the upper right, and those of the corners: upper left, lower right, upper right,
 * lower left. */
static void write_pressed(struct document *document, const struct field *field)
{
    static const char *const corners[] = { "upper left", "lower right", "upper right", "lower left" };
    static const int32_t to_rows[] = { MUSLIN_PRESS_RIGHT, MUSLIN_PRESS_LEFT, MUSLIN_PRESS_LEFT, MUSLIN_PRESS_RIGHT };
    struct line line = { NULL, 0, 0 };
    const int64_t rows = field->spec.columns + field->spec.rows - 2;
    const struct muslin_pressing_seam *seam = field->seams + seams_within(field);
    const bool has_rule = add_pressed_within(&line, field);
    if (rows > 0)
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
    put(document, ITEM_POINT, 0, NULL, &line);
    if (!has_rule)
        write_pressed_rows(document, field);
}

/* ---- pieces of the field ----------------------------------------------------------------------------------------- */

static bool is_of_field(const struct field *field, size_t cut)
{
    return field->worked->cuts[cut].source == MUSLIN_CUT_SOURCE_SETTING && is_cut_for(field->worked, cut, field->node);
}

static void add_triangles(struct line *line, const struct field *field)
{
    const struct worked *worked = field->worked;
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (is_of_field(field, i) && worked->cuts[i].again != MUSLIN_CUT_AGAIN_NO)
            add(line, "%s triangles are [%d]. ", worked->cuts[i].again == MUSLIN_CUT_AGAIN_TWICE ? "Side" : "Corner",
                worked->piece[i]);
}

/* Patches that follow the blocks: the sash that lies, the one that stands, the cornerstone. */
static void add_sashes(struct line *line, const struct field *field, size_t children)
{
    const struct worked *worked = field->worked;
    char head[WORD_ROOM];
    for (size_t i = field->blocks_count; i < children; i++) {
        const struct muslin_node_size size = size_of(worked, field->blocks[i]);
        const int64_t cut = cut_of_patch(worked, field->blocks[i]);
        const bool is_square = size.finished_width == size.finished_height;
        if (cut >= 0 && (i == field->blocks_count || is_square))
            add(line, "%s%s are [%d]. ", is_square ? capital(worked, WORD_CORNERSTONE, head) : "The ",
                is_square ? "s" : sashes(worked), worked->piece[cut]);
    }
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (worked->cuts[i].source == MUSLIN_CUT_SOURCE_MITRED && is_cut_for(worked, i, field->node))
            add(line, "The %s that the edge cuts off are [%d]. ", sashes(worked), worked->piece[i]);
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

static size_t count_blocks(const struct muslin_quilt_diagonal_spec *spec)
{
    return (size_t)(spec->columns * spec->rows + (spec->columns - 1) * (spec->rows - 1));
}

static void write_sewing(struct document *document, const struct field *field)
{
    if (has_sashes(field)) {
        say(document, ITEM_POINT, 0, NULL, "Between two rows of blocks%s lies a row of %s, with a %s between every "
            "two of them. Sew the rows of blocks and those rows, then all rows to each other in their order, last the "
            "four corner triangles.",
            field->spec.layout == MUSLIN_POINT_LAYOUT_SASH_INNER ? "" : ", and outside the first and the last one,",
            sashes(field->worked), word(field->worked, WORD_CORNERSTONE));
        say(document, ITEM_POINT, 0, NULL, "Press as the arrows on the drawing show.");
    } else {
        say(document, ITEM_POINT, 0, NULL, "Sew each row, then the rows to each other in their order, last the four "
            "corner triangles: those at the upper left and lower right, which close the longest rows, before the "
            "others.");
        write_pressed(document, field);
    }
}

static void write_trim(struct document *document, const struct field *field)
{
    struct line line = { NULL, 0, 0 };
    const struct worked *worked = field->worked;
    const struct muslin_solution_spec *solve = &worked->design->solve;
    char allowance[WORD_ROOM];
    char text[WORD_ROOM];
    muslin_id seam;
    muslin_len value;
    must(muslin_quilt_seam(worked->design->quilt, &seam, NULL, NULL));
    must(muslin_solution_value(worked->solution, seam, &value, NULL));
    measured(worked, value, allowance);
    if (field->spec.set_off != 0) {
        must(muslin_solution_value(worked->solution, field->spec.set_off, &value, NULL));
        add(&line, "The blocks float: trim the sides square at the corners, so that the blocks' points lie %s and one "
            "seam allowance inside the edge. ", measured(worked, value, text));
    } else {
        add(&line, "Trim the sides to %s beyond the blocks' points, square at the corners", allowance);
        if (solve->policy == MUSLIN_ALLOWANCE_POLICY_EXACT)
            add(&line, "; triangles are cut at the next %s above the need, so that there is little or nothing to trim",
                measured(worked, solve->grid, text));
        add(&line, ". ");
    }
    if (solve->policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE && solve->trim_room > 0)
        add(&line, "Setting triangles are cut larger than they need be, by %s, to be trimmed. ",
            measured(worked, solve->trim_room, text));
    add(&line, "Lay a side triangle with its right angle flush with the corner of the block, so that what is over "
        "hangs out beyond the row; lay the middle of a corner triangle's long side on the middle of the row's end. ");
    add(&line, "Side triangles were cut twice: their long side, on the outside, lies on the straight grain, their "
        "short sides stretch. Corner triangles were cut once: their two short sides, on the outside, lie on the "
        "straight grain; the long side, which you sew, stretches.");
    put(document, ITEM_POINT, 0, NULL, &line);
}

void write_field(struct document *document, const struct worked *worked, size_t step)
{
    struct field field = { .worked = worked,
                           .node = worked->steps[step].node,
                           .spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT };
    struct line line = { NULL, 0, 0 };
    size_t number = 0;
    size_t children;
    size_t seams;
    must(muslin_quilt_read_diagonal(worked->design->quilt, field.node, &field.spec, NULL));
    field.blocks = children_of(worked, field.node, &children);
    field.blocks_count = count_blocks(&field.spec);
    field.seams = seams_of(worked, field.node, &seams);
    add_triangles(&line, &field);
    add_sashes(&line, &field, children);
    add(&line, "Lay all out as drawn. Each row runs down to the right; the first is in the upper right corner. Each "
        "block is turned an eighth turn (45 degrees) to the right, its upper edge facing the upper right.");
    put(document, ITEM_POINT, 0, NULL, &line);
    for (int64_t i = field.spec.columns - 1; i > -field.spec.rows; i--)
        write_row(document, &field, i, ++number);
    write_sewing(document, &field);
    write_trim(document, &field);
    free(field.blocks);
}
