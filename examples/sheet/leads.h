/* leads.h - words that have no room where they belong: written below it, each with a line to its place.
 *
 * SPDX-License-Identifier: MIT */
#ifndef LEADS_H
#define LEADS_H

#include "patches.h"

enum { LEADS_MOST = 32 };

struct lead {
    struct spot at;    /* near its lower edge */
    struct room piece; /* how large what lies there is drawn */
    char brief[32];
    char words[WORD_ROOM + 40];
    double half; /* of the width of what is written */
};
struct leads {
    struct lead rows[LEADS_MOST];
    size_t count;
};

/* Words, and briefer ones where those of all have no room. Of pieces alike there is one; a row of more than it holds
 * goes without the rest. */
void add_lead(struct leads *leads, const struct box *piece, const char *brief, const char *words);
/* Beside each other below `top`, between 0 and `width`, as near to their places as may be. Returns how high that is. */
double write_leads(cairo_t *cairo, struct leads *leads, double top, double width, double size);

#endif
