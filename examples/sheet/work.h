/* work.h - a pattern file worked out as far as its document.
 *
 * SPDX-License-Identifier: MIT */
#ifndef WORK_H
#define WORK_H

#include "options.h"

struct work {
    struct pattern *pattern;
    struct design **designs;
    struct worked **worked;
    size_t used;
    struct document *document;
};

/* What happened is told on standard error unless it went well. */
enum exit_code work_out(struct work *work, const struct wish *wish);
/* Says on standard error where edges do not meet; true where any do not. */
bool work_doubted(const struct work *work);
void work_free(struct work *work);

/* One line on a terminal, once it has taken longer than one likes to wait without a word. */
void waiting(const char *format, ...) __attribute__((format(printf, 1, 2)));
void waiting_end(void);

#endif
