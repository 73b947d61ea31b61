/* main.c - SQLite calls this when the extension is loaded.
 *
 * SPDX-License-Identifier: MIT */
#include "sql.h"

SQLITE_EXTENSION_INIT1

#if defined(__GNUC__)
__attribute__((visibility("default")))
#endif
int sqlite3_muslinsql_init(sqlite3 *database, char **message, const sqlite3_api_routines *api);

/* The name follows from the file's, muslin_sql.so. */
int sqlite3_muslinsql_init(sqlite3 *database, char **message, const sqlite3_api_routines *api)
{
    static const struct table_function *const tables[] = { &unit_table,    &backing_table,         &cutplan_table,
                                                  &pattern_table, &pattern_fabrics_table, &pattern_sets_table,
                                                  &pattern_cuts_table, &pattern_facts_table };
    SQLITE_EXTENSION_INIT2(api)
    if (muslin_version() != MUSLIN_VERSION) {
        *message = sqlite3_mprintf("This extension was made for another version of muslin than %s, which is here.",
                                   muslin_version_text());
        return SQLITE_ERROR;
    }
    int status = add_functions(database);
    for (size_t i = 0; i < sizeof tables / sizeof tables[0] && status == SQLITE_OK; i++)
        status = add_table(database, tables[i]);
    return status;
}
