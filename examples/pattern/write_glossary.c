/* write_glossary.c - words that a size uses, each with what it means.
 *
 * SPDX-License-Identifier: MIT */
#include <ctype.h>
#include <string.h>

#include "wording.h"

struct meaning {
    const char *word;
    const char *meaning;
};

static const struct meaning meanings[] = {
    { "allowance", "what of a piece lies between its edge and its seam" },
    { "chain", "parts alike sewn one behind the other without cutting the thread between them" },
    { "finished", "as it measures in the quilt, without the allowances round it" },
    { "fold", "where cloth that is cut doubled is folded lengthwise" },
    { "grain", "the way the threads of the cloth run; between them, on the slant, it stretches" },
    { "lock", "of seams that lie opposite ways where they meet: they lie flat and find each other" },
    { "on point", "standing on a corner" },
    { "segment", "what is cut across from a strip set" },
    { "selvage", "the woven edge of cloth, which is cut off" },
    { "strip set", "strips sewn long side to long side, to be cut across" },
    { "unfinished", "as it measures before it is sewn in, with the allowances round it" },
};

/* Whether a word of the text begins so. */
static bool says(const char *text, const char *word)
{
    for (const char *at = text; at != NULL && (at = strstr(at, word)) != NULL; at++)
        if (at == text || !isalpha((unsigned char)at[-1]))
            return true;
    return false;
}

static bool is_said_in(const struct item *item, const char *word)
{
    bool found = says(item->text, word);
    for (size_t i = 0; item->table != NULL && i < item->table->used && !found; i++)
        found = says(item->table->cells[i], word);
    return found;
}

static bool is_said(const struct document *document, size_t from, const char *word)
{
    for (size_t i = from; i < document->used; i++)
        if (is_said_in(&document->items[i], word))
            return true;
    return false;
}

void write_glossary(struct document *document, const struct worked *worked, size_t from)
{
    const bool has_about = is_said(document, from, "about\xC2\xA0");
    say(document, ITEM_HEADING, 0, NULL, "Words");
    if (has_about)
        say(document, ITEM_POINT, 0, NULL, "about: the exact length lies between two marks of a ruler; it is told to "
            "the nearest %s.", worked->design->pattern->units == PATTERN_INCH ? "1/8 in" : "millimetre");
    for (size_t i = 0; i < sizeof meanings / sizeof meanings[0]; i++)
        if (is_said(document, from, meanings[i].word))
            say(document, ITEM_POINT, 0, NULL, "%s: %s.", meanings[i].word, meanings[i].meaning);
}
