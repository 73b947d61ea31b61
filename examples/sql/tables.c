/* tables.c - functions that give a table: SQLite's side of them. Rows are worked out all at once, when a scan begins.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "sql.h"

SQLITE_EXTENSION_INIT3

/* ---- an answer's rows -------------------------------------------------------------------------------------------- */

static void put(struct answer *answer, struct cell cell)
{
    if (answer->used == answer->room) {
        const size_t room = answer->room == 0 ? 64 : 2 * answer->room;
        struct cell *cells = sqlite3_realloc64(answer->cells, room * sizeof *cells);
        if (cells == NULL) {
            answer->out_of_memory = true;
            sqlite3_free(cell.text);
            return;
        }
        answer->cells = cells;
        answer->room = room;
    }
    answer->cells[answer->used++] = cell;
}

void put_number(struct answer *answer, int64_t number)
{
    put(answer, (struct cell){ NULL, number, false });
}

void put_nothing(struct answer *answer)
{
    put(answer, (struct cell){ NULL, 0, true });
}

void put_text(struct answer *answer, const char *text)
{
    char *copy = text == NULL ? NULL : sqlite3_mprintf("%s", text);
    if (text != NULL && copy == NULL)
        answer->out_of_memory = true;
    put(answer, (struct cell){ copy, 0, copy == NULL });
}

static void forget(struct answer *answer)
{
    for (size_t i = 0; i < answer->used; i++)
        sqlite3_free(answer->cells[i].text);
    sqlite3_free(answer->cells);
    *answer = (struct answer){ .used = 0 };
}

/* ---- the table --------------------------------------------------------------------------------------------------- */

enum { ARGUMENTS_MOST = 10 };

struct opened {
    sqlite3_vtab base;
    const struct table_function *table;
};

struct cursor {
    sqlite3_vtab_cursor base;
    sqlite3_value *arguments[ARGUMENTS_MOST];
    struct answer answer;
    size_t row;
};

static int connect_table(sqlite3 *database, void *user_data, int count, const char *const *words, sqlite3_vtab **out,
                         char **message)
{
    const struct table_function *table = user_data;
    (void)count;
    (void)words;
    (void)message;
    int status = sqlite3_declare_vtab(database, table->columns);
    if (status != SQLITE_OK)
        return status;
    if (table->innocuous)
        sqlite3_vtab_config(database, SQLITE_VTAB_INNOCUOUS);
    struct opened *opened = sqlite3_malloc64(sizeof *opened);
    if (opened == NULL)
        return SQLITE_NOMEM;
    *opened = (struct opened){ .table = table };
    *out = &opened->base;
    return SQLITE_OK;
}

static int disconnect_table(sqlite3_vtab *base)
{
    sqlite3_free(base);
    return SQLITE_OK;
}

/* Takes the arguments that have a value: in their order, a bit for each. What is required must be there. */
static int choose_plan(sqlite3_vtab *base, sqlite3_index_info *info)
{
    const struct table_function *table = ((struct opened *)(void *)base)->table;
    int found[ARGUMENTS_MOST] = { 0 };
    bool is_waiting[ARGUMENTS_MOST] = { false };
    int used = 0;
    for (int i = 0; i < info->nConstraint; i++) {
        const int argument = info->aConstraint[i].iColumn - table->shown;
        if (argument < 0 || info->aConstraint[i].op != SQLITE_INDEX_CONSTRAINT_EQ)
            continue;
        if (info->aConstraint[i].usable)
            found[argument] = i + 1;
        else
            is_waiting[argument] = true;
    }
    info->idxNum = 0;
    for (int argument = 0; argument < table->arguments; argument++) {
        if (found[argument] == 0 && is_waiting[argument])
            return SQLITE_CONSTRAINT;
        if (found[argument] == 0 && argument < table->required) {
            sqlite3_free(base->zErrMsg);
            base->zErrMsg = sqlite3_mprintf("%s: something is missing, write for instance %s.", table->name,
                                            table->usage);
            return base->zErrMsg == NULL ? SQLITE_NOMEM : SQLITE_ERROR;
        }
        if (found[argument] == 0)
            continue;
        info->aConstraintUsage[found[argument] - 1].argvIndex = ++used;
        info->aConstraintUsage[found[argument] - 1].omit = 1;
        info->idxNum |= 1 << argument;
    }
    info->estimatedCost = 100000;
    info->estimatedRows = 25;
    return SQLITE_OK;
}

/* ---- the scan ---------------------------------------------------------------------------------------------------- */

static int open_cursor(sqlite3_vtab *base, sqlite3_vtab_cursor **out)
{
    struct cursor *cursor = sqlite3_malloc64(sizeof *cursor);
    (void)base;
    if (cursor == NULL)
        return SQLITE_NOMEM;
    *cursor = (struct cursor){ .row = 0 };
    *out = &cursor->base;
    return SQLITE_OK;
}

static void clear_cursor(struct cursor *cursor)
{
    for (int i = 0; i < ARGUMENTS_MOST; i++) {
        sqlite3_value_free(cursor->arguments[i]);
        cursor->arguments[i] = NULL;
    }
    forget(&cursor->answer);
    cursor->row = 0;
}

static int close_cursor(sqlite3_vtab_cursor *base)
{
    struct cursor *cursor = (struct cursor *)(void *)base;
    clear_cursor(cursor);
    sqlite3_free(cursor);
    return SQLITE_OK;
}

/* Works the rows out. Nothing in, no rows out. */
static int fill(const struct table_function *table, struct cursor *cursor, struct trouble *trouble)
{
    for (int i = 0; i < table->arguments; i++)
        if (cursor->arguments[i] != NULL && sqlite3_value_type(cursor->arguments[i]) == SQLITE_NULL)
            return SQLITE_OK;
    table->fill(trouble, cursor->arguments, &cursor->answer);
    if (cursor->answer.out_of_memory || (trouble->is_there && trouble->sentence == NULL))
        return SQLITE_NOMEM;
    return trouble->is_there ? SQLITE_ERROR : SQLITE_OK;
}

static int begin_scan(sqlite3_vtab_cursor *base, int given, const char *ignored, int count, sqlite3_value **values)
{
    struct cursor *cursor = (struct cursor *)(void *)base;
    const struct table_function *table = ((struct opened *)(void *)base->pVtab)->table;
    struct trouble trouble = { false, NULL };
    int taken = 0;
    (void)ignored;
    clear_cursor(cursor);
    for (int i = 0; i < table->arguments && taken < count; i++) {
        if ((given & (1 << i)) == 0)
            continue;
        cursor->arguments[i] = sqlite3_value_dup(values[taken++]);
        if (cursor->arguments[i] == NULL)
            return SQLITE_NOMEM;
    }
    int status = fill(table, cursor, &trouble);
    if (status != SQLITE_OK)
        forget(&cursor->answer);
    if (status == SQLITE_ERROR) {
        sqlite3_free(base->pVtab->zErrMsg);
        base->pVtab->zErrMsg = sqlite3_mprintf("%s: %s", table->name, trouble.sentence);
        status = base->pVtab->zErrMsg == NULL ? SQLITE_NOMEM : SQLITE_ERROR;
    }
    sqlite3_free(trouble.sentence);
    return status;
}

static int next_row(sqlite3_vtab_cursor *base)
{
    ((struct cursor *)(void *)base)->row++;
    return SQLITE_OK;
}

static int is_at_end(sqlite3_vtab_cursor *base)
{
    const struct cursor *cursor = (const struct cursor *)(const void *)base;
    const struct table_function *table = ((struct opened *)(void *)base->pVtab)->table;
    return cursor->row * (size_t)table->shown >= cursor->answer.used;
}

static int give_column(sqlite3_vtab_cursor *base, sqlite3_context *context, int column)
{
    const struct cursor *cursor = (const struct cursor *)(const void *)base;
    const struct table_function *table = ((struct opened *)(void *)base->pVtab)->table;
    if (column >= table->shown) {
        if (cursor->arguments[column - table->shown] != NULL)
            sqlite3_result_value(context, cursor->arguments[column - table->shown]);
        return SQLITE_OK;
    }
    const struct cell *cell = &cursor->answer.cells[cursor->row * (size_t)table->shown + (size_t)column];
    if (cell->text != NULL)
        sqlite3_result_text(context, cell->text, -1, SQLITE_TRANSIENT);
    else if (!cell->is_nothing)
        sqlite3_result_int64(context, cell->number);
    return SQLITE_OK;
}

static int give_rowid(sqlite3_vtab_cursor *base, sqlite3_int64 *rowid)
{
    *rowid = (sqlite3_int64)((const struct cursor *)(const void *)base)->row + 1;
    return SQLITE_OK;
}

/* Without a way to create it, a table of this kind is there by its name alone, and takes arguments. */
static const sqlite3_module module = {
    .xConnect = connect_table, .xBestIndex = choose_plan, .xDisconnect = disconnect_table,
    .xOpen = open_cursor,      .xClose = close_cursor,    .xFilter = begin_scan,
    .xNext = next_row,         .xEof = is_at_end,         .xColumn = give_column,
    .xRowid = give_rowid
};

int add_table(sqlite3 *database, const struct table_function *table)
{
    return sqlite3_create_module_v2(database, table->name, &module, (void *)(size_t)table, NULL);
}
