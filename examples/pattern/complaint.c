/* complaint.c - what is wrong with a pattern file, place by place.
 *
 * SPDX-License-Identifier: MIT */
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "pattern.h"

void must(muslin_status status)
{
    if (status == MUSLIN_OK)
        return;
    fprintf(stderr, "muslin: %s\n", muslin_status_sentence(status));
    exit(3);
}

static void *kept(void *memory)
{
    if (memory == NULL)
        must(MUSLIN_ERR_NO_MEMORY);
    return memory;
}

/* The first characters of a value as the file has it. */
static char *shortened(json_t *value)
{
    enum { MOST = 60 };
    if (value == NULL)
        return NULL;
    char *text = kept(json_dumps(value, JSON_ENCODE_ANY | JSON_COMPACT));
    if (strlen(text) > MOST)
        memcpy(text + MOST - 3, "...", 4);
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

void complain(struct complaints *complaints, const char *place, json_t *value, int status, const char *format, ...)
{
    char sentence[1000];
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(sentence, sizeof sentence, format, arguments);
    va_end(arguments);
    struct complaint complaint = { kept(strdup(place)), 0, 0, shortened(value), kept(strdup(sentence)), status };
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

void complaints_free(struct complaints *complaints)
{
    for (size_t i = 0; i < complaints->used; i++)
        complaint_free(&complaints->rows[i]);
    free(complaints->rows);
    *complaints = (struct complaints){ NULL, 0, 0 };
}
