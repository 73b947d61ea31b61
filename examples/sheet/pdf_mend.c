/* pdf_mend.c - words that cairo cannot be told, added to its PDF the way the format foresees: objects that stand in for
 * earlier ones, and a table of where they are, follow the end of the file.
 *
 * SPDX-License-Identifier: MIT */
#include <glib.h>
#include <stdlib.h>
#include <string.h>

#include "pdf.h"

/* The file as cairo ended it. */
struct ended {
    const char *table; /* rows of 20 bytes: where each object begins */
    size_t objects;
    size_t table_at;
    const char *trailer;
};

/* What stands in for earlier objects. */
struct amended {
    size_t *number;
    size_t *at;
    size_t used;
};

/* ---- the end of the file ----------------------------------------------------------------------------------------- */

static const char *last_of(const struct bytes *bytes, const char *word)
{
    const char *found = NULL;
    size_t length = strlen(word), reach = bytes->used > 2048 ? 2048 : bytes->used;
    for (const char *at = bytes->text + bytes->used - reach; at + length <= bytes->text + bytes->used; at++)
        if (memcmp(at, word, length) == 0)
            found = at;
    return found;
}

/* The text ends with a zero that is not part of the file. */
static bool read_end(const struct bytes *bytes, struct ended *ended)
{
    const char *start = last_of(bytes, "startxref");
    ended->trailer = last_of(bytes, "trailer");
    if (start == NULL || ended->trailer == NULL)
        return false;
    ended->table_at = strtoul(start + strlen("startxref"), NULL, 10);
    if (ended->table_at + 8 > bytes->used || strncmp(bytes->text + ended->table_at, "xref\n0 ", 7) != 0)
        return false;
    char *end = NULL;
    ended->objects = strtoul(bytes->text + ended->table_at + 7, &end, 10);
    ended->table = end + 1;
    return ended->table + 20 * ended->objects <= ended->trailer;
}

/* "1 0 R" behind a name of the trailer. */
static size_t reference(const struct ended *ended, const char *name)
{
    const char *found = strstr(ended->trailer, name);
    return found != NULL ? strtoul(found + strlen(name), NULL, 10) : 0;
}

/* ---- what is added ----------------------------------------------------------------------------------------------- */

/* Any text, as UTF-16 in hexadecimal digits. */
static void add_text(struct bytes *out, const char *text)
{
    glong length = 0;
    gunichar2 *units = g_utf8_to_utf16(text, -1, NULL, &length, NULL);
    bytes_say(out, "<FEFF");
    for (glong i = 0; i < length; i++)
        bytes_say(out, "%04X", units[i]);
    bytes_say(out, ">");
    g_free(units);
}

static void add_told(struct bytes *out, const struct told *told)
{
    if (told->is_head) {
        bytes_say(out, "   /A << /O /Table /Scope /%s >>\n", told->of_row ? "Row" : "Column");
    } else if (told->said != NULL) {
        bytes_say(out, "   /Alt ");
        add_text(out, told->said);
        bytes_say(out, "\n");
    }
}

/* Where an object's dictionary goes on if it begins so, or null. */
static const char *behind(const char *object, const char *begin)
{
    const char *end_of_number = strchr(object, '\n');
    size_t length = strlen(begin);
    bool so = end_of_number != NULL && strncmp(end_of_number + 1, begin, length) == 0;
    return so ? end_of_number + 1 + length : NULL;
}

/* The object again, with `more` where it goes on. */
static void amend(struct bytes *out, struct amended *amended, size_t base, size_t number, const char *object,
                  const char *inside, const struct bytes *more)
{
    const char *end = strstr(inside, "endobj\n") + strlen("endobj\n");
    amended->number[amended->used] = number;
    amended->at[amended->used++] = base + out->used;
    bytes_add(out, object, (size_t)(inside - object));
    bytes_add(out, more->text, more->used);
    bytes_add(out, inside, (size_t)(end - inside));
}

static void amend_all(struct bytes *out, struct amended *amended, const struct bytes *bytes, const struct ended *ended,
                      const struct tags *tags)
{
    size_t next = 0;
    for (size_t number = 1; number < ended->objects; number++) {
        size_t at = strtoul(ended->table + 20 * number, NULL, 10);
        const char *object = bytes->text + (at < bytes->used ? at : bytes->used);
        const char *figure = behind(object, "<< /Type /StructElem\n   /S /Figure\n");
        const char *head = behind(object, "<< /Type /StructElem\n   /S /TH\n");
        const char *catalogue = behind(object, "<< /Type /Catalog\n");
        struct bytes more = { NULL, 0, 0 };
        if ((figure != NULL || head != NULL) && next < tags->told_used) {
            add_told(&more, &tags->told[next++]);
            amend(out, amended, bytes->used, number, object, figure != NULL ? figure : head, &more);
        } else if (catalogue != NULL) {
            bytes_say(&more, "   /Lang (en)\n   /ViewerPreferences << /DisplayDocTitle true >>\n");
            amend(out, amended, bytes->used, number, object, catalogue, &more);
        }
        bytes_free(&more);
    }
}

/* ---- the new end ------------------------------------------------------------------------------------------------- */

static void add_end(struct bytes *out, const struct amended *amended, size_t base, const struct ended *ended)
{
    size_t table = base + out->used;
    bytes_say(out, "xref\n");
    for (size_t i = 0; i < amended->used; i++)
        bytes_say(out, "%zu 1\n%010zu 00000 n \n", amended->number[i], amended->at[i]);
    bytes_say(out, "trailer\n<< /Size %zu\n   /Root %zu 0 R\n   /Info %zu 0 R\n   /Prev %zu\n>>\n", ended->objects,
              reference(ended, "/Root "), reference(ended, "/Info "), ended->table_at);
    bytes_say(out, "startxref\n%zu\n%%%%EOF\n", table);
}

void pdf_mend(struct bytes *bytes, const struct tags *tags)
{
    struct ended ended;
    struct bytes out = { NULL, 0, 0 };
    bytes_add(bytes, "", 1);
    bytes->used--;
    if (!read_end(bytes, &ended))
        return;
    struct amended amended = { flow_need(ended.objects, sizeof(size_t)), flow_need(ended.objects, sizeof(size_t)), 0 };
    amend_all(&out, &amended, bytes, &ended, tags);
    add_end(&out, &amended, bytes->used, &ended);
    bytes_add(bytes, out.text, out.used);
    free(amended.number);
    free(amended.at);
    bytes_free(&out);
}
