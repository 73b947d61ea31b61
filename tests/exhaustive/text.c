/* text.c - every short text through the reader of lengths, against a reader of its own.
 *
 * SPDX-License-Identifier: MIT
 *
 *     text SYMBOLS LONGEST  every text of up to LONGEST symbols: of twelve with SYMBOLS few, of all that mean something
 *                           to the reader, and one that does not, with SYMBOLS all
 *
 * Each text lies at the end of a block of just its bytes, so that the address sanitizer sees every byte too many that is
 * read. The reader here works backwards from the header's grammar: it tries each way in which a text may be split, and
 * adds up what it says as fractions. Both must take the same texts, and read the same from them; and what is written of
 * a length that was read exactly reads as the same. Prints how many texts there were, and how many are lengths. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <muslin/muslin.h>

enum { MOST_SYMBOLS = 8, MOST_BYTES = 3 * MOST_SYMBOLS + 1 };

static const char *const few[] = { "1", "2", "0", " ", "/", "-", ".", "'", "\"", "m", "\xc2\xbd", "x", NULL };
static const char *const all[] = {
    "0", "3", "9", " ", "\t", "\xc2\xa0", "\xe2\x80\xaf", "/", "\xe2\x81\x84", "\xe2\x88\x95", "-", "+",
    "\xe2\x88\x92", ".", ",", "'", "\"", "\xe2\x80\xb2", "\xe2\x80\xb3", "\xe2\x80\x9d", "\xe2\x80\x99", "\xc2\xbd",
    "\xe2\x85\x9e", "i", "n", "f", "t", "y", "d", "s", "m", "c", "M", "x", "\xff", NULL
};

/* ---- a reader of its own ----------------------------------------------------------------------------------------- */

/* Every rule gives how many bytes it takes from a text, or 0; none takes an empty one. */
static int is_digit(char c)
{
    return c >= '0' && c <= '9';
}

static size_t one_of(const char *text, const char *const *words)
{
    for (; *words != NULL; words++)
        if (strncmp(text, *words, strlen(*words)) == 0)
            return strlen(*words);
    return 0;
}

static size_t blanks(const char *text)
{
    static const char *const blank[] = { " ", "\t", "\n", "\r", "\xc2\xa0", "\xe2\x80\xaf", "\xe2\x80\x89", NULL };
    size_t at = 0, more;
    while ((more = one_of(text + at, blank)) > 0)
        at += more;
    return at;
}

static size_t digits(const char *text, int64_t *value)
{
    size_t at = 0;
    *value = 0;
    for (; is_digit(text[at]); at++)
        *value = *value * 10 + (text[at] - '0');
    return at;
}

struct fraction {
    int64_t above;
    int64_t below;
};

static size_t vulgar(const char *text, struct fraction *value)
{
    static const char *const signs[] = { "\xc2\xbd", "\xe2\x85\x9e", NULL };
    const size_t bytes = one_of(text, signs);
    *value = bytes == 2 ? (struct fraction){ 1, 2 } : (struct fraction){ 7, 8 };
    return bytes;
}

static size_t plain_fraction(const char *text, struct fraction *value)
{
    static const char *const slashes[] = { "/", "\xe2\x81\x84", "\xe2\x88\x95", NULL };
    const size_t above = digits(text, &value->above);
    const size_t slash = above > 0 ? one_of(text + above, slashes) : 0;
    const size_t below = slash > 0 ? digits(text + above + slash, &value->below) : 0;
    return below > 0 ? above + slash + below : 0;
}

/* The number that takes the most, as a decimal, mixed, a fraction or whole. */
static size_t number(const char *text, struct fraction *value)
{
    struct fraction part;
    int64_t whole, after;
    const size_t before = digits(text, &whole);
    const size_t decimals = text[before] == '.' ? digits(text + before + 1, &after) : 0;
    if (decimals > 0) {
        *value = (struct fraction){ whole, 1 };
        for (size_t i = 0; i < decimals; i++)
            *value = (struct fraction){ value->above * 10, value->below * 10 };
        value->above += after;
        return before + 1 + decimals;
    }
    const size_t space = before == 0 ? 0 : text[before] == '-' ? 1 : blanks(text + before);
    size_t bytes = vulgar(text + before + space, &part);
    if (bytes == 0 && space > 0)
        bytes = plain_fraction(text + before + space, &part);
    if (bytes > 0 && before + space > 0) {
        *value = (struct fraction){ whole * part.below + part.above, part.below };
        return before + space + bytes;
    }
    *value = part;
    if (bytes > 0 || (bytes = plain_fraction(text, value)) > 0)
        return bytes;
    *value = (struct fraction){ whole, 1 };
    return before;
}

static size_t unit(const char *text, int64_t *ticks)
{
    static const struct { const char *word; int64_t ticks; } units[] = {
        { "''", 8128 }, { "\xe2\x80\xb2\xe2\x80\xb2", 8128 }, { "\xe2\x80\x99\xe2\x80\x99", 8128 },
        { "\"", 8128 }, { "\xe2\x80\xb3", 8128 }, { "\xe2\x80\x9d", 8128 },
        { "'", 97536 }, { "\xe2\x80\xb2", 97536 }, { "\xe2\x80\x99", 97536 },
        { "in.", 8128 }, { "ft.", 97536 }, { "yds.", 292608 }, { "yd.", 292608 },
        { "in", 8128 }, { "ft", 97536 }, { "yds", 292608 }, { "yd", 292608 },
        { "mm", 320 }, { "cm", 3200 }, { "m", 320000 }
    };
    char low[MOST_BYTES] = "";
    size_t letters = 0;
    for (size_t i = 0; text[i] != 0; i++)
        low[i] = text[i] == 'M' ? 'm' : text[i];
    while (low[letters] >= 'a' && low[letters] <= 'z')
        letters++;
    for (size_t i = 0; i < sizeof units / sizeof units[0]; i++) {
        const size_t bytes = strlen(units[i].word);
        const size_t word = bytes - (units[i].word[bytes - 1] == '.');
        if (strncmp(low, units[i].word, bytes) == 0 && (letters == 0 || letters == word)) {
            *ticks = units[i].ticks;
            return bytes;
        }
    }
    return 0;
}

/* Nearest tick of a sum of fractions, ties upwards. 1 when the text is a length. */
static int read_length(const char *text, int64_t *value, int *exact)
{
    static const char *const minus[] = { "-", "\xe2\x88\x92", NULL };
    size_t at = blanks(text);
    const size_t is_less = one_of(text + at, minus);
    struct fraction total = { 0, 1 };
    int64_t before = INT64_MAX;
    at += is_less > 0 ? is_less : text[at] == '+';
    at += blanks(text + at);
    for (int parts = 0; parts == 0 || text[at] != 0; parts++) {
        struct fraction part;
        int64_t ticks = 8128;
        const size_t bytes = number(text + at, &part);
        if (bytes == 0 || part.below == 0)
            return 0;
        at += bytes;
        at += blanks(text + at);
        const size_t word = unit(text + at, &ticks);
        at += word;
        at += blanks(text + at);
        if ((word == 0 && text[at] != 0) || ticks >= before)
            return 0;
        before = ticks;
        total = (struct fraction){ total.above * part.below + part.above * ticks * total.below,
                                   total.below * part.below };
    }
    if (is_less > 0)
        total.above = -total.above;
    const int64_t twice = 2 * total.above + total.below, below = 2 * total.below;
    *value = twice / below - (twice % below < 0);
    *exact = total.above % total.below == 0;
    return 1;
}

/* ---- compared ---------------------------------------------------------------------------------------------------- */

static uint64_t texts, lengths;

static void wrong(const char *text, const char *what)
{
    printf("\"%s\": %s\n", text, what);
    exit(1);
}

static void write_back(const char *text, int64_t length)
{
    char written[64];
    int32_t exact = 0;
    struct muslin_parsed again = { .size = sizeof again };
    if (muslin_length_format(length, NULL, written, sizeof written, NULL, &exact, NULL) != MUSLIN_OK)
        wrong(text, "cannot be written");
    if (exact == 0)
        return;
    if (muslin_length_parse(written, strlen(written), NULL, &again, NULL) != MUSLIN_OK || again.value != length)
        wrong(text, "is written so that it reads otherwise");
}

static void compare(const char *text, size_t bytes, char *block)
{
    struct muslin_parsed parsed = { .size = sizeof parsed };
    struct muslin_problem problem = { .size = sizeof problem };
    int64_t value = 0;
    int exact = 0;
    memcpy(block, text, bytes);
    const muslin_status status = muslin_length_parse(block, bytes, NULL, &parsed, &problem);
    const int is_length = read_length(text, &value, &exact);
    texts++;
    if ((status == MUSLIN_OK) != is_length)
        wrong(text, is_length ? "is a length, and was refused" : "is no length, and was read");
    if (is_length == 0) {
        if (status < MUSLIN_ERR_TEXT_EMPTY || status > MUSLIN_ERR_TEXT_ENCODING)
            wrong(text, "is refused by a status that is none of text");
        if (problem.at < 0 || problem.bytes < 0 || problem.at + problem.bytes > (int64_t)bytes)
            wrong(text, "has its fault outside itself");
        return;
    }
    lengths++;
    if (parsed.value != value || parsed.exact != exact)
        wrong(text, "is read as another length");
    if (exact)
        write_back(text, value);
}

/* All texts of so many symbols more. `blocks` holds one block for each number of bytes. */
static void every(const char *const *symbols, char *text, size_t bytes, int more, char **blocks)
{
    compare(text, bytes, blocks[bytes]);
    for (int i = 0; more > 0 && symbols[i] != NULL; i++) {
        strcpy(text + bytes, symbols[i]);
        every(symbols, text, bytes + strlen(symbols[i]), more - 1, blocks);
    }
    text[bytes] = 0;
}

int main(int count, char **words)
{
    char text[MOST_BYTES] = "";
    char *blocks[MOST_BYTES];
    const int longest = count == 3 ? atoi(words[2]) : 0;
    if (longest < 1 || longest > MOST_SYMBOLS) {
        fprintf(stderr, "text few|all LONGEST, 1 .. %d\n", MOST_SYMBOLS);
        return 2;
    }
    for (size_t bytes = 0; bytes < MOST_BYTES; bytes++)
        blocks[bytes] = malloc(bytes);
    every(strcmp(words[1], "all") == 0 ? all : few, text, 0, longest, blocks);
    for (size_t bytes = 0; bytes < MOST_BYTES; bytes++)
        free(blocks[bytes]);
    printf("%llu texts, %llu lengths\n", (unsigned long long)texts, (unsigned long long)lengths);
    return 0;
}
