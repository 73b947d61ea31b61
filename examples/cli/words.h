/* words.h - lists of words: finding one, naming all, suggesting the nearest.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_WORDS_H
#define CLI_WORDS_H

#include "command.h"

/* The word of a list, or null. */
const struct word *find_word(const struct word *words, const char *written);
/* The word that stands for a value; "" when none does. */
const char *word_of(const struct word *words, int32_t value);
/* "none, quarter or half" */
void list_words(const struct word *words, char *buf, size_t cap);

/* The nearest of the words offered, counted in letters to change; null while none is near enough to suggest. */
struct nearest {
    const char *written;
    const char *word;
    size_t changes;
};
struct nearest nearest_start(const char *written);
void nearest_offer(struct nearest *nearest, const char *word);

/* Lists that several commands share. */
extern const struct word unit_words[];
extern const struct word rounding_words[];
extern const struct word turning_words[];
extern const struct word nesting_words[];
extern const struct word join_words[];
extern const struct word border_words[];
extern const struct word fold_words[];
extern const struct word print_words[];
extern const struct word layout_words[];
extern const struct word edge_words[];
extern const struct word align_words[];
extern const struct word care_words[];
extern const struct word governing_words[];
extern const struct word unit_kind_words[];
extern const struct word unit_method_words[];
extern const struct word again_words[];

#endif
