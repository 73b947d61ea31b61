/* place.c - where in a pattern file something stands, and which known name a misspelt one is like.
 *
 * SPDX-License-Identifier: MIT */
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "inside.h"

struct place place_in(const struct place *in, const char *key)
{
    return (struct place){ in, key, 0 };
}

struct place place_at(const struct place *in, size_t index)
{
    return (struct place){ in, NULL, index };
}

/* ---- JSON pointers (RFC 6901) ----------------------------------------------------------------------------------- */

enum { INDEX_ROOM = 24 };

static size_t room_for(const struct place *place)
{
    size_t room = 1;
    for (; place->in != NULL; place = place->in)
        room += 1 + (place->key != NULL ? 2 * strlen(place->key) : INDEX_ROOM);
    return room;
}

/* "~" and "/" within a name are written "~0" and "~1". */
static char *add_key(char *end, const char *key)
{
    for (; *key != '\0'; key++) {
        if (*key == '~' || *key == '/')
            *end++ = '~';
        *end++ = *key == '~' ? '0' : *key == '/' ? '1' : *key;
    }
    return end;
}

static char *add_steps(char *end, const struct place *place)
{
    if (place->in == NULL)
        return end;
    end = add_steps(end, place->in);
    *end++ = '/';
    if (place->key != NULL)
        return add_key(end, place->key);
    return end + snprintf(end, INDEX_ROOM, "%zu", place->index);
}

char *pointer_of(const struct place *place)
{
    char *text = kept(malloc(room_for(place)));
    *add_steps(text, place) = '\0';
    return text;
}

void complain_at(struct complaints *complaints, const struct place *place, json_t *value, int status,
                 const char *format, ...)
{
    char sentence[1000];
    char *pointer = pointer_of(place);
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(sentence, sizeof sentence, format, arguments);
    va_end(arguments);
    complain(complaints, pointer, value, status, "%s", sentence);
    free(pointer);
}

/* ---- names that are alike --------------------------------------------------------------------------------------- */

enum { LONGEST = 40 };

static size_t least_of(size_t a, size_t b)
{
    return a < b ? a : b;
}

/* How many letters must be put in, left out, changed or swapped with the next one to make one name of the other. */
static size_t distance(const char *a, const char *b)
{
    size_t rows[LONGEST + 1][LONGEST + 1];
    size_t height = strlen(a);
    size_t width = strlen(b);
    for (size_t i = 0; i <= height; i++)
        rows[i][0] = i;
    for (size_t j = 0; j <= width; j++)
        rows[0][j] = j;
    for (size_t i = 1; i <= height; i++)
        for (size_t j = 1; j <= width; j++) {
            size_t changed = rows[i - 1][j - 1] + (a[i - 1] != b[j - 1]);
            rows[i][j] = least_of(changed, least_of(rows[i - 1][j], rows[i][j - 1]) + 1);
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                rows[i][j] = least_of(rows[i][j], rows[i - 2][j - 2] + 1);
        }
    return rows[height][width];
}

void try_name(struct nearest *nearest, const char *name)
{
    size_t length = strlen(nearest->name);
    if (length > LONGEST || strlen(name) > LONGEST || (nearest->found != NULL && nearest->distance == 0))
        return;
    size_t apart = distance(nearest->name, name);
    size_t allowed = nearest->found != NULL ? nearest->distance - 1 : least_of(2, (length + 1) / 3);
    if (apart > allowed)
        return;
    nearest->found = name;
    nearest->distance = apart;
}
