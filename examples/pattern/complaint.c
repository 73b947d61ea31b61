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

/* The same complaint, if it is there already. */
static struct complaint *find_told(const struct complaints *complaints, const struct complaint *complaint)
{
    for (size_t i = 0; i < complaints->used; i++)
        if (strcmp(complaints->rows[i].place, complaint->place) == 0 &&
            strcmp(complaints->rows[i].sentence, complaint->sentence) == 0)
            return &complaints->rows[i];
    return NULL;
}

static void complaint_free(struct complaint *complaint)
{
    free(complaint->place);
    free(complaint->value);
    free(complaint->sentence);
    free(complaint->sizes);
}

static void add_complaint(struct complaints *complaints, struct complaint complaint)
{
    struct complaint *told = find_told(complaints, &complaint);
    if (told != NULL) {
        told->of_sizes |= complaint.of_sizes;
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
    struct complaint complaint = { .place = kept(strdup(place)), .value = shortened(value),
                                   .sentence = kept(strdup(sentence)), .status = status };
    if (complaints->used == COMPLAINTS_MOST) {
        complaint_free(&complaint);
        complaint = (struct complaint){ .place = kept(strdup("")),
                                        .sentence = kept(strdup("there is more; mend these first")), .status = -1 };
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

void complaints_of_size(struct complaints *to, struct complaints *from, size_t size)
{
    for (size_t i = 0; i < from->used; i++)
        from->rows[i].of_sizes |= 1u << size;
    complaints_move(to, from);
}

static char *names_of(const struct pattern *pattern, unsigned sizes)
{
    char *names = NULL;
    size_t length = 0;
    FILE *out = kept(open_memstream(&names, &length));
    for (size_t i = 0; i < pattern->sizes_count; i++)
        if ((sizes & 1u << i) != 0)
            fprintf(out, "%s%s", ftell(out) == 0 ? "" : ", ", pattern->sizes[i].name);
    fclose(out);
    return kept(names);
}

void name_sizes(struct complaints *complaints, const struct pattern *pattern, unsigned looked_at)
{
    for (size_t i = 0; i < complaints->used; i++) {
        struct complaint *complaint = &complaints->rows[i];
        if (complaint->of_sizes != 0 && complaint->of_sizes != looked_at && complaint->sizes == NULL)
            complaint->sizes = names_of(pattern, complaint->of_sizes);
    }
}

void complaints_free(struct complaints *complaints)
{
    for (size_t i = 0; i < complaints->used; i++)
        complaint_free(&complaints->rows[i]);
    free(complaints->rows);
    *complaints = (struct complaints){ NULL, 0, 0 };
}
