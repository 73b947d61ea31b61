/* show_layout.c - the blocks of a top, drawn.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>

#include "look.h"
#include "sheet.h"

#define DRAWN_SEGMENTS_MAX 4
#define DRAWN_COLUMNS_MAX 76

/* The arrow of a block, by quarter turns clockwise: it points to the strips A. */
static char arrow(json_t *turns, size_t column)
{
    return "^>v<"[json_integer_value(json_array_get(turns, column)) & 3];
}

static void write_times(FILE *out, char c, size_t times)
{
    for (size_t i = 0; i < times; i++)
        fputc(c, out);
}

/* One line of one block. Upright, its segments stand side by side; turned a quarter, they lie one below the other. */
static void draw_block_line(FILE *out, size_t segments, size_t line, char pointing)
{
    bool upright = pointing == '^' || pointing == 'v';
    for (size_t c = 0; c < 4 * segments - 1; c++) {
        bool between = upright ? c % 4 == 3 : line % 2 == 1;
        bool middle = upright ? c % 4 == 1 && line == segments - 1 : c == 2 * segments - 1;
        fputc(between ? (upright ? '|' : '-') : middle ? pointing : ' ', out);
    }
}

static void draw_rule(FILE *out, size_t columns, size_t segments)
{
    fputs("    +", out);
    for (size_t column = 0; column < columns; column++) {
        write_times(out, '-', 4 * segments - 1);
        fputc('+', out);
    }
    fputc('\n', out);
}

static void draw_blocks(FILE *out, json_t *rows, size_t columns, size_t segments)
{
    draw_rule(out, columns, segments);
    for (size_t row = 0; row < json_array_size(rows); row++) {
        for (size_t line = 0; line < 2 * segments - 1; line++) {
            fputs("    |", out);
            for (size_t column = 0; column < columns; column++) {
                draw_block_line(out, segments, line, arrow(json_array_get(rows, row), column));
                fputc('|', out);
            }
            fputc('\n', out);
        }
        draw_rule(out, columns, segments);
    }
}

/* Too large to draw block by block: one arrow a block. */
static void draw_arrows(FILE *out, json_t *rows, size_t columns)
{
    for (size_t row = 0; row < json_array_size(rows); row++) {
        fputs("   ", out);
        for (size_t column = 0; column < columns; column++)
            fprintf(out, " %c", arrow(json_array_get(rows, row), column));
        fputc('\n', out);
    }
}

void draw_layout(struct sheet *sheet, json_t *plan)
{
    json_t *rows = part(plan, "top", "quarter_turns");
    size_t columns = json_array_size(json_array_get(rows, 0));
    size_t segments = (size_t)json_integer_value(part(plan, "blocks", "segments_per_block"));
    sheet_gap(sheet);
    if (segments <= DRAWN_SEGMENTS_MAX && columns * 4 * segments + 5 <= DRAWN_COLUMNS_MAX)
        draw_blocks(sheet->out, rows, columns, segments);
    else
        draw_arrows(sheet->out, rows, columns);
    sheet_gap(sheet);
    bool all = json_integer_value(part(plan, "top", "columns")) == (json_int_t)columns &&
               json_integer_value(part(plan, "top", "rows")) == (json_int_t)json_array_size(rows);
    if (!all)
        sheet_under(sheet, plan, "This is the upper left corner; go on in the same way.");
    sheet_under(sheet, plan, any(plan, "blocks", "segments_turned")
                                 ? "The arrows point to the strips A, except in segments turned end for end."
                                 : "The arrows point to the strips A.");
}
