/* read.c - a pattern file: its text, its form, and what does not depend on a size.
 *
 * SPDX-License-Identifier: MIT */
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "inside.h"

enum { LARGEST = 4 * 1024 * 1024 };

/* ---- the text ---------------------------------------------------------------------------------------------------- */

/* Reads all of a stream, one byte past the largest size at most. */
static char *read_stream(FILE *stream, size_t *length)
{
    char *text = kept(malloc(LARGEST + 1));
    *length = fread(text, 1, LARGEST + 1, stream);
    if (ferror(stream) == 0)
        return text;
    int error = errno;
    free(text);
    errno = error;
    return NULL;
}

struct pattern *pattern_read(const char *path, struct complaints *complaints)
{
    bool is_standard = strcmp(path, "-") == 0;
    FILE *stream = is_standard ? stdin : fopen(path, "rb");
    size_t length = 0;
    char *text = stream != NULL ? read_stream(stream, &length) : NULL;
    struct pattern *pattern = NULL;
    if (text == NULL)
        complain(complaints, "", NULL, -1, "this file cannot be read: %s", strerror(errno));
    else
        pattern = pattern_parse(text, length, complaints);
    free(text);
    if (stream != NULL && !is_standard)
        fclose(stream);
    return pattern;
}

/* ---- the form ---------------------------------------------------------------------------------------------------- */

static void complain_of_text(struct complaints *complaints, const json_error_t *error)
{
    size_t before = complaints->used;
    const bool is_number = strstr(error->text, "too big integer") != NULL;
    if (is_number)
        complain(complaints, "", NULL, -1, "this number has more digits than can be counted with");
    else
        complain(complaints, "", NULL, -1, "this is not JSON: %s", error->text);
    if (complaints->used > before) {
        complaints->rows[before].line = error->line;
        complaints->rows[before].column = error->column;
    }
}

static json_t *load(const char *text, size_t length, struct complaints *complaints)
{
    json_error_t error;
    if (length > LARGEST) {
        complain(complaints, "", NULL, -1, "this file is larger than 4 MiB; no pattern is that long");
        return NULL;
    }
    if (length >= 3 && memcmp(text, "\xEF\xBB\xBF", 3) == 0) { /* the mark that some editors put first */
        text += 3;
        length -= 3;
    }
    if (length == 0) {
        complain(complaints, "", NULL, -1, "this file is empty");
        return NULL;
    }
    json_t *root = json_loadb(text, length, JSON_REJECT_DUPLICATES, &error);
    if (root == NULL)
        complain_of_text(complaints, &error);
    return root;
}

/* Sizes are asked for by name. */
static void check_size_names(json_t *root, struct complaints *complaints)
{
    const struct place file = { NULL, NULL, 0 };
    const struct place list = place_in(&file, "sizes");
    json_t *sizes = json_object_get(root, "sizes");
    for (size_t i = 0; i < json_array_size(sizes); i++)
        for (size_t j = 0; j < i; j++) {
            json_t *name = json_object_get(json_array_get(sizes, i), "name");
            struct place size = place_at(&list, i);
            struct place here = place_in(&size, "name");
            if (json_equal(name, json_object_get(json_array_get(sizes, j), "name")))
                complain_at(complaints, &here, name, -1, "an earlier size has this name");
        }
}

/* Fabrics are told apart by what they are called in print. */
static void check_fabric_names(json_t *root, struct complaints *complaints)
{
    const struct place file = { NULL, NULL, 0 };
    const struct place list = place_in(&file, "fabrics");
    json_t *taken = json_object();
    const char *key;
    json_t *fabric;
    json_object_foreach(json_object_get(root, "fabrics"), key, fabric) {
        json_t *name = json_object_get(fabric, "name");
        const char *called = name == NULL ? key : json_string_value(name);
        struct place own = place_in(&list, key);
        struct place here = place_in(&own, "name");
        if (json_object_get(taken, called) != NULL)
            complain_at(complaints, name == NULL ? &own : &here, name, -1, "an earlier fabric has this name");
        json_object_set_new(taken, called, json_true());
    }
    json_decref(taken);
}

static bool is_some(struct complaints *complaints, const struct place *place, json_t *value)
{
    muslin_len length = 0;
    return value != NULL && parse_length(complaints, place, value, &length) && length > 0;
}

/* What would change nothing where it stands. */
static void check_cutting(json_t *root, struct complaints *complaints)
{
    const struct place file = { NULL, NULL, 0 };
    const struct place cutting = place_in(&file, "cutting");
    const struct place trim = place_in(&cutting, "trim");
    const struct place loss = place_in(&cutting, "resquare loss");
    json_t *value = json_object_get(root, "cutting");
    const char *policy = json_string_value(json_object_get(value, "policy"));
    if (is_some(complaints, &trim, json_object_get(value, "trim")) && (policy == NULL || strcmp(policy, "oversize") != 0))
        complain_at(complaints, &trim, json_object_get(value, "trim"), -1,
                    "room to trim goes with \"policy\": \"oversize\"");
    if (is_some(complaints, &loss, json_object_get(value, "resquare loss")) &&
        json_integer_value(json_object_get(value, "resquare every")) == 0)
        complain_at(complaints, &loss, json_object_get(value, "resquare loss"), -1,
                    "what squaring loses goes with \"resquare every\", after how many segments or strips");
}

static bool is_in_order(json_t *root, struct complaints *complaints)
{
    const struct place file = { NULL, NULL, 0 };
    struct check check = { .complaints = complaints, .file = root };
    size_t before = complaints->used;
    check_value(&check, &file, &the_file, root);
    if (complaints->used > before)
        return false;
    check_rings(&check);
    check_size_names(root, complaints);
    check_fabric_names(root, complaints);
    check_cutting(root, complaints);
    return complaints->used == before;
}

/* ---- the pattern ------------------------------------------------------------------------------------------------- */

static const char *text_of(json_t *object, const char *member)
{
    return json_string_value(json_object_get(object, member));
}

static void choose_words(struct pattern *pattern)
{
    static const char *const names[CHOSEN_WORDS] = { "batting",     "sashing", "fabric",
                                                     "cornerstone", "color",   "cloth sold by" };
    static const char *const usual[CHOSEN_WORDS] = { "batting", "sashing", "fabric", "cornerstone", "color", "yard" };
    json_t *words = json_object_get(pattern->root, "words");
    for (int i = 0; i < CHOSEN_WORDS; i++) {
        const char *chosen = text_of(words, names[i]);
        pattern->words[i] = chosen != NULL ? chosen : usual[i];
    }
    if (text_of(words, names[WORD_YARD]) == NULL && pattern->units != PATTERN_INCH)
        pattern->words[WORD_YARD] = "metre";
}

bool is_sold_by_metre(const struct pattern *pattern)
{
    return strcmp(pattern->words[WORD_YARD], "metre") == 0;
}

static void list_sizes(struct pattern *pattern)
{
    json_t *sizes = json_object_get(pattern->root, "sizes");
    pattern->sizes_count = sizes != NULL ? json_array_size(sizes) : 1;
    pattern->sizes = kept(calloc(pattern->sizes_count, sizeof *pattern->sizes));
    pattern->sizes[0].name = "as given";
    for (size_t i = 0; i < json_array_size(sizes); i++) {
        pattern->sizes[i].values = json_array_get(sizes, i);
        pattern->sizes[i].name = text_of(pattern->sizes[i].values, "name");
    }
}

struct pattern *pattern_parse(const char *text, size_t length, struct complaints *complaints)
{
    json_t *root = load(text, length, complaints);
    if (root == NULL || !is_in_order(root, complaints)) {
        json_decref(root);
        return NULL;
    }
    struct pattern *pattern = kept(calloc(1, sizeof *pattern));
    pattern->root = root;
    pattern->title = text_of(root, "title");
    pattern->by = text_of(root, "by");
    pattern->story = text_of(root, "story");
    pattern->version = text_of(root, "version");
    pattern->date = text_of(root, "date");
    pattern->invented = json_is_true(json_object_get(root, "invented"));
    pattern->units = (enum pattern_units)value_of_word(root, "units", units_words, PATTERN_INCH);
    pattern->paper = (enum pattern_paper)value_of_word(root, "paper", paper_words,
                                                 pattern->units == PATTERN_INCH ? PAPER_LETTER : PAPER_A4);
    choose_words(pattern);
    list_sizes(pattern);
    return pattern;
}

void pattern_free(struct pattern *pattern)
{
    if (pattern == NULL)
        return;
    json_decref(pattern->root);
    free(pattern->sizes);
    free(pattern);
}
