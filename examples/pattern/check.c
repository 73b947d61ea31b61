/* check.c - whether a file is what the tables of format.c say: all that is wrong is told, each with its place.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "inside.h"

static void wrong(struct check *check, const struct place *place, json_t *value, const char *what)
{
    complain_at(check->complaints, place, value, -1, "%s is wanted here", what);
}

/* ---- texts and numbers ------------------------------------------------------------------------------------------- */

static json_int_t characters(const char *text)
{
    json_int_t count = 0;
    for (; *text != '\0'; text++)
        count += ((unsigned char)*text & 0xC0) != 0x80;
    return count;
}

static void check_text(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    json_int_t length = characters(json_string_value(value));
    if (length < form->least)
        complain_at(check->complaints, place, value, -1, "this text is empty");
    if (length > form->most)
        complain_at(check->complaints, place, value, -1,
                    "this text has %" JSON_INTEGER_FORMAT " characters; at most %" JSON_INTEGER_FORMAT " are printed",
                    length, form->most);
}

static void check_whole(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    json_int_t number = json_integer_value(value);
    if (form->least == form->most && number != form->least)
        complain_at(check->complaints, place, value, -1, "%" JSON_INTEGER_FORMAT " is wanted here", form->least);
    else if (number < form->least || number > form->most)
        complain_at(check->complaints, place, value, -1,
                    "a whole number from %" JSON_INTEGER_FORMAT " to %" JSON_INTEGER_FORMAT " is wanted here",
                    form->least, form->most);
}

static void check_share(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    double number = json_number_value(value);
    if (number < (double)form->least || number > (double)form->most)
        complain_at(check->complaints, place, value, -1,
                    "a number from %" JSON_INTEGER_FORMAT " to %" JSON_INTEGER_FORMAT " is wanted here", form->least,
                    form->most);
}

/* "letter" or "a4" */
static void list_words(const struct word *words, char text[400])
{
    text[0] = '\0';
    for (const struct word *word = words; word->word != NULL; word++) {
        if (word != words)
            strcat(text, word[1].word == NULL ? " or " : ", ");
        strcat(strcat(strcat(text, "\""), word->word), "\"");
    }
}

/* One of the words was wanted where something else stands. */
static void not_a_word(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    char choices[400];
    list_words(form->words, choices);
    wrong(check, place, value, choices);
}

static void check_word(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    struct nearest nearest = { json_string_value(value), NULL, 0 };
    for (const struct word *word = form->words; word->word != NULL; word++) {
        if (strcmp(nearest.name, word->word) == 0)
            return;
        try_name(&nearest, word->word);
    }
    if (nearest.found != NULL)
        complain_at(check->complaints, place, value, -1, "this is no such word; did you mean \"%s\"?", nearest.found);
    else
        not_a_word(check, place, form, value);
}

static bool are_digits(const char *text, size_t count, const char *digits)
{
    return strspn(text, digits) >= count;
}

static bool is_color(const char *text)
{
    return text[0] == '#' && strlen(text) == 7 && are_digits(text + 1, 6, "0123456789abcdefABCDEF");
}

static int two_digits(const char *text)
{
    return 10 * (text[0] - '0') + text[1] - '0';
}

static bool is_date(const char *text)
{
    static const int days[] = { 31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31 };
    const char *digits = "0123456789";
    if (strlen(text) != 10 || text[4] != '-' || text[7] != '-' || !are_digits(text, 4, digits) ||
        !are_digits(text + 5, 2, digits) || !are_digits(text + 8, 2, digits))
        return false;
    int century = two_digits(text);
    int year = two_digits(text + 2);
    int month = two_digits(text + 5);
    int day = two_digits(text + 8);
    bool leaps = (year != 0 ? year : century) % 4 == 0;
    return century + year > 0 && month >= 1 && month <= 12 && day >= 1 && day <= days[month - 1] &&
           (month != 2 || day <= 28 || leaps);
}

/* ---- names ------------------------------------------------------------------------------------------------------- */

/* Small letters, digits, blanks, hyphens; a letter first. */
static bool is_name(const char *text)
{
    enum { LONGEST_NAME = 40 };
    const char *letters = "abcdefghijklmnopqrstuvwxyz";
    return strspn(text, letters) > 0 && strlen(text) <= LONGEST_NAME &&
           strspn(text, "abcdefghijklmnopqrstuvwxyz0123456789 _-") == strlen(text);
}

/* Says that a name is not there, and which one may have been meant. */
static void not_there(struct check *check, const struct place *place, json_t *value, const char *name,
                      const char *among)
{
    enum { TRIED_MOST = 200 };
    struct nearest nearest = { name, NULL, 0 };
    const char *key;
    json_t *ignored;
    int tried = 0;
    json_object_foreach(json_object_get(check->file, among), key, ignored) if (tried++ < TRIED_MOST)
        try_name(&nearest, key);
    if (nearest.found != NULL)
        complain_at(check->complaints, place, value, -1, "nothing in \"%s\" is called so; did you mean \"%s\"?", among,
                    nearest.found);
    else
        complain_at(check->complaints, place, value, -1, "nothing in \"%s\" is called so", among);
}

static void check_name(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    muslin_len length;
    const char *name = json_string_value(value);
    if (form->of != NULL && (name[0] < 'a' || name[0] > 'z'))
        parse_length(check->complaints, place, value, &length);
    else if (!is_name(name))
        complain_at(check->complaints, place, value, -1,
                    "a name has small letters, digits, blanks and hyphens, a letter "
                    "first, and at most 40 of them");
    else if (json_object_get(json_object_get(check->file, form->among), name) == NULL)
        not_there(check, place, value, name, form->among);
    else if (check->follow != NULL)
        check->follow(check, place, form, name);
}

/* ---- lists and maps ---------------------------------------------------------------------------------------------- */

static void check_list(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    size_t index;
    json_t *item;
    size_t length = json_array_size(value);
    if (length < (size_t)form->least)
        complain_at(check->complaints, place, value, -1, "this list has %zu of at least %" JSON_INTEGER_FORMAT, length,
                    form->least);
    if (length > (size_t)form->most)
        complain_at(check->complaints, place, value, -1, "this list has %zu of at most %" JSON_INTEGER_FORMAT, length,
                    form->most);
    json_array_foreach(value, index, item)
    {
        struct place here = place_at(place, index);
        check_value(check, &here, form->of, item);
        if (form->kind == A_TABLE && json_array_size(item) != json_array_size(json_array_get(value, 0)))
            complain_at(check->complaints, &here, NULL, -1,
                        "this row has %zu, the first one %zu; rows are equally long", json_array_size(item),
                        json_array_size(json_array_get(value, 0)));
    }
}

static void check_map(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    const char *key;
    json_t *item;
    if (json_object_size(value) < (size_t)form->least)
        complain_at(check->complaints, place, value, -1, "nothing is named here; at least one is wanted");
    json_object_foreach(value, key, item)
    {
        struct place here = place_in(place, key);
        if (!is_name(key))
            complain_at(check->complaints, &here, NULL, -1,
                        "a name has small letters, digits, blanks and hyphens, a "
                        "letter first, and at most 40 of them");
        else if (form->among != NULL && json_object_get(json_object_get(check->file, form->among), key) == NULL)
            not_there(check, &here, NULL, key, form->among);
        check_value(check, &here, form->of, item);
    }
}

/* ---- objects ----------------------------------------------------------------------------------------------------- */

static const struct member *member_of(const struct kind *kind, const char *name)
{
    for (const struct member *member = kind->members; member->name != NULL; member++)
        if (strcmp(member->name, name) == 0)
            return member;
    return NULL;
}

static void unknown_member(struct check *check, const struct place *place, const struct kind *kind, json_t *object,
                           const char *name)
{
    struct nearest nearest = { name, NULL, 0 };
    for (const struct member *member = kind->members; member->name != NULL; member++)
        if (json_object_get(object, member->name) == NULL)
            try_name(&nearest, member->name);
    if (nearest.found != NULL)
        complain_at(check->complaints, place, NULL, -1, "nothing is called so here; did you mean \"%s\"?",
                    nearest.found);
    else
        complain_at(check->complaints, place, NULL, -1, "nothing is called so here");
}

static void check_present(struct check *check, const struct place *place, const struct kind *kind, json_t *value)
{
    for (const struct member *member = kind->members; member->name != NULL; member++) {
        bool is_there = json_object_get(value, member->name) != NULL;
        if (member->needed && !is_there)
            complain_at(check->complaints, place, NULL, -1, "\"%s\" is missing: %s", member->name, member->form->what);
        if (is_there && member->with != NULL && json_object_get(value, member->with) == NULL)
            complain_at(check->complaints, place, NULL, -1, "\"%s\" is missing, which goes with \"%s\"", member->with,
                        member->name);
    }
    if (kind->either != NULL &&
        (json_object_get(value, kind->either) == NULL) == (json_object_get(value, kind->or) == NULL))
        complain_at(check->complaints, place, NULL, -1, "either \"%s\" or \"%s\" is wanted, and not both", kind->either,
                    kind->or);
}

static void check_object(struct check *check, const struct place *place, const struct kind *kind, json_t *value)
{
    const char *key;
    json_t *item;
    json_object_foreach(value, key, item)
    {
        struct place here = place_in(place, key);
        const struct member *member = member_of(kind, key);
        if (member == NULL)
            unknown_member(check, &here, kind, value, key);
        else
            check_value(check, &here, member->form, item);
    }
    check_present(check, place, kind, value);
}

/* Says that an object is of no known kind, and which member may have been meant to say so. */
static void no_kind(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    const char *key;
    json_t *ignored;
    json_object_foreach(value, key, ignored)
    {
        struct nearest nearest = { key, NULL, 0 };
        for (size_t i = 0; form->kinds[i] != NULL; i++)
            try_name(&nearest, form->kinds[i]->members[0].name);
        if (nearest.found != NULL) {
            struct place here = place_in(place, key);
            complain_at(check->complaints, &here, NULL, -1, "nothing is called so here; did you mean \"%s\"?",
                        nearest.found);
            return;
        }
    }
    wrong(check, place, value, form->what);
}

static void check_kinds(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    const struct kind *only = form->kinds[1] == NULL ? form->kinds[0] : NULL;
    for (size_t i = 0; only == NULL && form->kinds[i] != NULL; i++)
        if (json_object_get(value, form->kinds[i]->members[0].name) != NULL)
            only = form->kinds[i];
    if (only != NULL)
        check_object(check, place, only, value);
    else
        no_kind(check, place, form, value);
}

/* ---- any value --------------------------------------------------------------------------------------------------- */

static void check_length(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    muslin_len length;
    if (json_object_get(json_object_get(check->file, "measures"), json_string_value(value)) != NULL)
        wrong(check, place, value, "a length itself, not the name of a measure,");
    else if (parse_length(check->complaints, place, value, &length) && length < form->least)
        wrong(check, place, value, form->what);
}

static void check_string(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    const char *text = json_string_value(value);
    if (form->kind == A_TEXT)
        check_text(check, place, form, value);
    else if (form->kind == A_WORD)
        check_word(check, place, form, value);
    else if (form->kind == A_NAME)
        check_name(check, place, form, value);
    else if (form->kind == A_LENGTH)
        check_length(check, place, form, value);
    else if (form->kind == A_COLOR ? !is_color(text) : form->kind != A_DATE || !is_date(text))
        wrong(check, place, value, form->what);
}

static void check_number(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    if (form->kind == A_WHOLE && json_is_integer(value))
        check_whole(check, place, form, value);
    else if (form->kind == A_SHARE)
        check_share(check, place, form, value);
    else if (form->kind == A_WORD)
        not_a_word(check, place, form, value);
    else
        wrong(check, place, value, form->what);
}

void stands_too_deep(struct check *check, const struct place *place)
{
    if (!check->told_deep)
        complain_at(check->complaints, place, NULL, -1, "more than %d things stand within each other here", DEEPEST);
    check->told_deep = true;
}

/* What stands inside others, level by level: names are followed to what they stand for. */
static void check_nested(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    check->depth++;
    if (check->depth > check->deepest)
        check->deepest = check->depth;
    if (check->depth > DEEPEST)
        stands_too_deep(check, place);
    else if (form->kind == A_LIST || form->kind == A_TABLE)
        check_list(check, place, form, value);
    else if (form->kind == A_MAP)
        check_map(check, place, form, value);
    else
        check_kinds(check, place, form, value);
    check->depth--;
}

static bool may_hold(const struct form *form, json_t *value)
{
    if (json_is_array(value))
        return form->kind == A_LIST || form->kind == A_TABLE;
    return json_is_object(value) &&
           (form->kind == A_MAP || form->kind == AN_OBJECT || (form->kind == ONE_OF && form->kinds != NULL));
}

void check_value(struct check *check, const struct place *place, const struct form *form, json_t *value)
{
    if (check->complaints->used > COMPLAINTS_MOST)
        return;
    if (form->kind == ONE_OF && form->text != NULL && json_is_string(value))
        form = form->text;
    else if (form->kind == ONE_OF && form->number != NULL && json_is_number(value))
        form = form->number;
    if (may_hold(form, value))
        check_nested(check, place, form, value);
    else if (json_is_string(value))
        check_string(check, place, form, value);
    else if (json_is_number(value))
        check_number(check, place, form, value);
    else if (form->kind == A_WORD)
        not_a_word(check, place, form, value);
    else if (form->kind != A_SWITCH || !json_is_boolean(value))
        wrong(check, place, value, form->what);
}
