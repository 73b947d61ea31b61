/* leads.c - words that have no room where they belong: written below it, each with a line to its place.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <string.h>

#include "leads.h"

enum { LEADS_APART = 7, NEAR = 6 };

void add_lead(struct leads *leads, const struct box *piece, const char *brief, const char *words)
{
    const struct room room = { piece->right - piece->left, piece->bottom - piece->top };
    for (size_t i = 0; i < leads->count; i++)
        if (strcmp(leads->rows[i].brief, brief) == 0 && fabs(leads->rows[i].piece.width - room.width) < 1 &&
            fabs(leads->rows[i].piece.height - room.height) < 1)
            return;
    if (leads->count == LEADS_MOST)
        return;
    struct lead *lead = &leads->rows[leads->count++];
    lead->at = (struct spot){ (piece->left + piece->right) / 2, piece->bottom - fmin(NEAR, room.height / 2) };
    lead->piece = room;
    snprintf(lead->brief, sizeof lead->brief, "%.31s", brief);
    snprintf(lead->words, sizeof lead->words, "%.120s", words);
}

static void put_in_order(struct leads *leads)
{
    for (size_t i = 1; i < leads->count; i++)
        for (size_t k = i; k > 0 && leads->rows[k].at.x < leads->rows[k - 1].at.x; k--) {
            const struct lead swapped = leads->rows[k];
            leads->rows[k] = leads->rows[k - 1];
            leads->rows[k - 1] = swapped;
        }
}

/* Measures what is written of each; returns how wide all are. */
static double measure(struct leads *leads, double size, bool is_brief)
{
    double all = 0;
    for (size_t i = 0; i < leads->count; i++) {
        struct lead *lead = &leads->rows[i];
        if (is_brief)
            snprintf(lead->words, sizeof lead->words, "%s", lead->brief);
        lead->half = words_room(lead->words, size).width / 2;
        all += 2 * lead->half + LEADS_APART;
    }
    return all;
}

double write_leads(cairo_t *cairo, struct leads *leads, double top, double width, double size)
{
    double x[LEADS_MOST];
    double edge = -LEADS_APART;
    const double high = 2.2 * size;
    const double y = top + 0.6 * high;
    put_in_order(leads);
    if (measure(leads, size, false) > width)
        measure(leads, size, true);
    for (size_t i = 0; i < leads->count; i++) {
        x[i] = fmax(leads->rows[i].at.x, edge + LEADS_APART + leads->rows[i].half);
        edge = x[i] + leads->rows[i].half;
    }
    edge = width + LEADS_APART;
    for (size_t i = leads->count; i > 0; i--) {
        const struct lead *lead = &leads->rows[i - 1];
        const double middle = fmin(x[i - 1], edge - LEADS_APART - lead->half);
        edge = middle - lead->half;
        const double from = fmax(middle - lead->half, fmin(middle + lead->half, lead->at.x));
        draw_lead(cairo, from, y - size * 0.6, lead->at.x, lead->at.y);
        write_words(cairo, middle, y, lead->words, size, PLATE_NONE);
    }
    return leads->count > 0 ? high : 0;
}
