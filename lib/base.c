/* base.c - version, and the library's names and sentences.
 *
 * SPDX-License-Identifier: MIT
 *
 * Texts lie in one constant struct a list, found by 16-bit offsets: no pointer needs relocating, so nothing of the
 * library is writable at run time. */
#include "inside.h"

#define MEMBER(name, words) char name[sizeof words];
#define WORDS(name, words) words,

#define TEXTS(list, prefix)                                        \
    struct prefix##_texts {                                        \
        list(MEMBER)                                               \
    };                                                             \
    static const struct prefix##_texts prefix##_texts = { list(WORDS) }

#include "base_constants.h"
#include "base_texts.h"

TEXTS(STATUS_NAMES, status_name);
TEXTS(STATUS_SENTENCES, status_sentence);
TEXTS(ARGUMENT_NAMES, argument_name);
TEXTS(WARNING_NAMES, warning_name);
TEXTS(WARNING_SENTENCES, warning_sentence);

#define AT_STATUS_NAME(name, words) (uint16_t)offsetof(struct status_name_texts, name),
#define AT_STATUS_SENTENCE(name, words) (uint16_t)offsetof(struct status_sentence_texts, name),
#define AT_ARGUMENT_NAME(name, words) (uint16_t)offsetof(struct argument_name_texts, name),
#define AT_WARNING_NAME(name, words) (uint16_t)offsetof(struct warning_name_texts, name),
#define AT_WARNING_SENTENCE(name, words) (uint16_t)offsetof(struct warning_sentence_texts, name),

static const uint16_t status_name_at[] = { STATUS_NAMES(AT_STATUS_NAME) };
static const uint16_t status_sentence_at[] = { STATUS_SENTENCES(AT_STATUS_SENTENCE) };
static const uint16_t argument_name_at[] = { ARGUMENT_NAMES(AT_ARGUMENT_NAME) };
static const uint16_t warning_name_at[] = { WARNING_NAMES(AT_WARNING_NAME) };
static const uint16_t warning_sentence_at[] = { WARNING_SENTENCES(AT_WARNING_SENTENCE) };

#define COUNT(array) ((int32_t)(sizeof(array) / sizeof((array)[0])))

uint32_t muslin_version(void)
{
    return MUSLIN_VERSION;
}

#define QUOTED(number) #number
#define VERSION_TEXT(major, minor, patch) QUOTED(major) "." QUOTED(minor) "." QUOTED(patch)

const char *muslin_version_text(void)
{
    return VERSION_TEXT(MUSLIN_VERSION_MAJOR, MUSLIN_VERSION_MINOR, MUSLIN_VERSION_PATCH);
}

int32_t muslin_status_count(void)
{
    return COUNT(status_name_at);
}

const char *muslin_status_name(muslin_status status)
{
    if (status < 0 || status >= COUNT(status_name_at))
        return "UNKNOWN";
    return (const char *)&status_name_texts + status_name_at[status];
}

const char *muslin_status_sentence(muslin_status status)
{
    if (status < 0 || status >= COUNT(status_sentence_at))
        return "This number is no status of this library version.";
    return (const char *)&status_sentence_texts + status_sentence_at[status];
}

int32_t muslin_argument_count(void)
{
    return COUNT(argument_name_at);
}

const char *muslin_argument_words(int32_t argument)
{
    if (argument < 0 || argument >= COUNT(argument_name_at))
        return "unknown argument";
    return (const char *)&argument_name_texts + argument_name_at[argument];
}

int32_t muslin_warning_count(void)
{
    return COUNT(warning_name_at);
}

/* The number of the one known bit that a warning is, or -1. */
static int32_t warning_bit(uint32_t warning)
{
    for (int32_t bit = 0; bit < COUNT(warning_name_at); bit++)
        if (warning == (uint32_t)1 << bit)
            return bit;
    return -1;
}

const char *muslin_warning_name(uint32_t warning)
{
    int32_t bit = warning_bit(warning);
    return bit < 0 ? "UNKNOWN" : (const char *)&warning_name_texts + warning_name_at[bit];
}

const char *muslin_warning_sentence(uint32_t warning)
{
    int32_t bit = warning_bit(warning);
    return bit < 0 ? "" : (const char *)&warning_sentence_texts + warning_sentence_at[bit];
}

/* ---- constants ------------------------------------------------------------------------------------------------- */

#define CONSTANT_MEMBER(name, words, value) char name[sizeof words];
#define CONSTANT_WORDS(name, words, value) words,
#define CONSTANT_AT(name, words, value) (uint16_t)offsetof(struct constant_names, name),
#define CONSTANT_VALUE(name, words, value) value,

struct constant_names {
    CONSTANTS(CONSTANT_MEMBER)
};
static const struct constant_names constant_names = { CONSTANTS(CONSTANT_WORDS) };
static const uint16_t constant_name_at[] = { CONSTANTS(CONSTANT_AT) };
static const int64_t constant_values[] = { CONSTANTS(CONSTANT_VALUE) };

int32_t muslin_constant_count(void)
{
    return COUNT(constant_values);
}

const char *muslin_constant_name(int32_t index)
{
    if (index < 0 || index >= COUNT(constant_values))
        return "";
    return (const char *)&constant_names + constant_name_at[index];
}

int64_t muslin_constant_value(int32_t index)
{
    if (index < 0 || index >= COUNT(constant_values))
        return 0;
    return constant_values[index];
}
