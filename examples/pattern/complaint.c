/* complaint.c - what is wrong with a pattern file, place by place.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "inside.h"

void must(muslin_status status)
{
    if (status == MUSLIN_OK)
        return;
    fprintf(stderr, "muslin: %s\n", muslin_status_sentence(status));
    exit(3);
}

void *kept(void *memory)
{
    if (memory == NULL)
        must(MUSLIN_ERR_NO_MEMORY);
    return memory;
}

/* Ends a text of UTF-8 at so many bytes, or a little before: never within a character. */
static void cut_off(char *text, size_t most)
{
    if (strlen(text) <= most)
        return;
    while (most > 0 && ((unsigned char)text[most] & 0xC0) == 0x80)
        most--;
    text[most] = '\0';
}

/* The first characters of a value as the file has it. */
static char *shortened(json_t *value)
{
    enum { MOST = 60 };
    if (value == NULL)
        return NULL;
    char *text = kept(json_dumps(value, JSON_ENCODE_ANY | JSON_COMPACT));
    if (strlen(text) > MOST) {
        cut_off(text, MOST - 3);
        strcat(text, "...");
    }
    return text;
}

static bool is_told(const struct complaints *complaints, const struct complaint *complaint)
{
    for (size_t i = 0; i < complaints->used; i++)
        if (strcmp(complaints->rows[i].place, complaint->place) == 0 &&
            strcmp(complaints->rows[i].sentence, complaint->sentence) == 0)
            return true;
    return false;
}

static void complaint_free(struct complaint *complaint)
{
    free(complaint->place);
    free(complaint->value);
    free(complaint->sentence);
}

static void add_complaint(struct complaints *complaints, struct complaint complaint)
{
    if (is_told(complaints, &complaint)) {
        complaint_free(&complaint);
        return;
    }
    if (complaints->used == complaints->room) {
        complaints->room = 2 * complaints->room + 8;
        complaints->rows = kept(realloc(complaints->rows, complaints->room * sizeof *complaints->rows));
    }
    complaints->rows[complaints->used++] = complaint;
}

void complain(struct complaints *complaints, const char *place, json_t *value, int status, const char *format, ...)
{
    char sentence[1000];
    va_list arguments;
    if (complaints->used > COMPLAINTS_MOST)
        return;
    va_start(arguments, format);
    vsnprintf(sentence, sizeof sentence, format, arguments);
    va_end(arguments);
    cut_off(sentence, sizeof sentence - 8);
    struct complaint complaint = { kept(strdup(place)), 0, 0, shortened(value), kept(strdup(sentence)), status };
    if (complaints->used == COMPLAINTS_MOST) {
        complaint_free(&complaint);
        complaint =
            (struct complaint){ kept(strdup("")), 0, 0, NULL, kept(strdup("there is more; mend these first")), -1 };
    }
    add_complaint(complaints, complaint);
}

void complaints_move(struct complaints *to, struct complaints *from)
{
    for (size_t i = 0; i < from->used; i++)
        add_complaint(to, from->rows[i]);
    free(from->rows);
    *from = (struct complaints){ NULL, 0, 0 };
}

void complaints_free(struct complaints *complaints)
{
    for (size_t i = 0; i < complaints->used; i++)
        complaint_free(&complaints->rows[i]);
    free(complaints->rows);
    *complaints = (struct complaints){ NULL, 0, 0 };
}
