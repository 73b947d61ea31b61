/* sheets.h - what was asked for, drawn into files.
 *
 * SPDX-License-Identifier: MIT */
#ifndef SHEETS_H
#define SHEETS_H

#include "files.h"
#include "work.h"

/* Draws a document as the wish says: pages, or pictures alone. False leaves a failure. */
bool sheets_write(const struct work *work, const struct wish *wish, struct files *files, struct failure *failure);

#endif
