/* inside.h - what the files of this folder share: the format as tables, places in a file, a design while it is made.
 *
 * SPDX-License-Identifier: MIT */
#ifndef INSIDE_H
#define INSIDE_H

#include "pattern.h"

/* ---- the format: format.c --------------------------------------------------------------------------------------- */

enum form_kind {
    A_TEXT = 1,  /* of least .. most characters */
    A_SWITCH,    /* true or false */
    A_WHOLE,     /* number, least .. most */
    A_SHARE,     /* number, whole or not, least .. most */
    A_WORD,      /* one of `words` */
    A_COLOR,     /* "#c08040" */
    A_DATE,      /* "2025-03-09" */
    A_LENGTH,    /* with its unit, of least ticks */
    A_NAME,      /* of something in `among` */
    A_LIST,      /* of least .. most `of` */
    A_TABLE,     /* list of lists that are equally long */
    A_MAP,       /* from names to `of` */
    AN_OBJECT,   /* with the members of kinds[0] */
    ONE_OF       /* a text, a number, or an object of one of `kinds`, told by its first member */
};

struct word {
    const char *word;
    int32_t value; /* the library's, where it has one */
};

struct form;

enum { NEEDED = 1 };

struct member {
    const char *name;
    int needed; /* NEEDED or 0 */
    const struct form *form;
    const char *with; /* stands only together with this one */
};

/* The members of one kind of object, ended by one without a name. */
struct kind {
    const struct member *members;
    const char *either; /* one of these two, not both; may be null */
    const char *or;
};

struct form {
    enum form_kind kind;
    json_int_t least;
    json_int_t most;
    const char *among;           /* member of the file: "fabrics", "measures", "counts", "parts" */
    const struct word *words;    /* ended by one without a word */
    const struct form *of;
    const struct kind *const *kinds; /* ended by null */
    const struct form *text;
    const struct form *number;
    const char *what;            /* that is wanted, for sentences */
};

extern const struct form the_file;
extern const struct form *const node_form;    /* of a part, and of all that is sewn */
extern const struct form *const measure_form;
extern const struct word kinds_of_unit[], method_words[], kinds_of_print[], side_words[], piecing_words[],
    across_press_words[], down_press_words[], corners_words[], sashes_words[], first_words[],
    policy_words[], ways_to_round[], tip_words[],
    units_words[], paper_words[], pressed_words[], long_words[], kinds_of_join[], set_words[];

/* The value of an object's word; `otherwise` where it has none. */
int32_t value_of_word(json_t *object, const char *member, const struct word *words, int32_t otherwise);

/* ---- places in a file: place.c ---------------------------------------------------------------------------------- */

struct place {
    const struct place *in; /* null: this is the file as a whole */
    const char *key;        /* null: `index` */
    size_t index;
};
struct place place_in(const struct place *in, const char *key);
struct place place_at(const struct place *in, size_t index);
/* As a JSON pointer; give it back with free(). */
char *pointer_of(const struct place *place);
void complain_at(struct complaints *complaints, const struct place *place, json_t *value, int status,
                 const char *format, ...) __attribute__((format(printf, 5, 6)));

/* The name most like a misspelt one; null where none is like it. */
struct nearest {
    const char *name;
    const char *found;
    size_t distance;
};
void try_name(struct nearest *nearest, const char *name);

/* Stops the program where memory is wanting. */
void *kept(void *memory);

/* Tells those of one list in another, which may have some already, and empties the first one. */
void complaints_move(struct complaints *to, struct complaints *from);
/* So many are told; then that there are more. */
enum { COMPLAINTS_MOST = 1000 };

/* ---- checking: check.c, ring.c ---------------------------------------------------------------------------------- */

enum { DEEPEST = 200 };

struct under_way;

struct check {
    struct complaints *complaints;
    json_t *file;
    size_t depth;
    size_t deepest;
    /* What is done with a name that is used, besides seeing that it is there; may be null. */
    void (*follow)(struct check *check, const struct place *place, const struct form *form, const char *name);
    const struct under_way *under_way;
    json_t *followed; /* names and how deep what they stand for is */
};
void check_value(struct check *check, const struct place *place, const struct form *form, json_t *value);
void check_rings(struct check *check);

/* ---- lengths: length.c ------------------------------------------------------------------------------------------ */

bool parse_length(struct complaints *complaints, const struct place *place, json_t *value, muslin_len *length);

/* ---- a design while it is made ---------------------------------------------------------------------------------- */

struct making {
    struct design *design;
    struct complaints *complaints;
    json_t *file;
    json_t *known;        /* what was made: names of fabrics, measures and parts, places and names of ids */
    const char *called;   /* of the node that is made now; may be null */
    muslin_len allowance; /* of seams */
    muslin_id *border_widths; /* measure of each of the design's borders */
};

/* Rows with room for one more than are used. */
void *room_for_one(void *rows, size_t used, size_t size);
const char *keep_text(struct design *design, char *text);

/* The library's sentence with nothing in the units of the pattern: "0 cm" for "0 in". */
const char *in_own_units(const struct making *making, const char *sentence, char text[300]);

/* Whether a call went well; else says at `place` what the library says. */
bool went_well(struct making *making, const struct place *place, json_t *value, muslin_status status,
               const struct muslin_problem *problem);

/* A length of an object; `usual` where it has none, which may be null: 0. */
struct usual {
    const char *inch;
    const char *metric;
};
muslin_len length_of(const struct making *making, json_t *object, const char *member, const struct usual *usual);
int64_t count_of(const struct making *making, json_t *object, const char *member);
bool is_true(json_t *object, const char *member);

void make_fabrics(struct making *making);
muslin_id fabric_of(const struct making *making, json_t *object, const char *member); /* 0: there is no such member */
muslin_id fabric_called(const struct making *making, json_t *name);

/* These give 0 where they failed, which was said then. */
muslin_id make_measure(struct making *making, const struct place *place, json_t *value);
/* One that has a name, which must last as long as the file. */
muslin_id make_named_measure(struct making *making, const char *name);
/* A member that is a measure. False where it failed; *id is 0 where there is no such member. */
bool measure_of(struct making *making, const struct place *place, json_t *object, const char *member, muslin_id *id);

muslin_id make_node(struct making *making, const struct place *place, json_t *value);
muslin_id make_part(struct making *making, const char *name);
muslin_id node_in(struct making *making, const struct place *place, json_t *object, const char *member);
/* The nodes of a list. Null where one failed. */
muslin_id *make_nodes(struct making *making, const struct place *place, json_t *list, size_t *count);
muslin_id make_unit(struct making *making, const struct place *place, json_t *value);
muslin_id make_shape(struct making *making, const struct place *place, json_t *value);
muslin_id make_triangle_rows(struct making *making, const struct place *place, json_t *value);
muslin_id make_grid(struct making *making, const struct place *place, json_t *value);
muslin_id make_repeat(struct making *making, const struct place *place, json_t *value);
muslin_id make_alternate(struct making *making, const struct place *place, json_t *value);
muslin_id make_sashed(struct making *making, const struct place *place, json_t *value);
muslin_id make_on_point(struct making *making, const struct place *place, json_t *value);
muslin_id make_log_cabin(struct making *making, const struct place *place, json_t *value);
muslin_id make_bordered(struct making *making, const struct place *place, json_t *value);
/* A list of borders; those of the whole are noted in the design. */
muslin_id make_borders(struct making *making, const struct place *place, json_t *borders, muslin_id centre,
                       bool of_the_whole);

/* What was made of a name already: false where nothing was; its id is 0 where that failed. */
bool is_made(const struct making *making, const char *among, const char *name, muslin_id *id);
muslin_id note_made(struct making *making, const char *among, const char *name, muslin_id id);
/* Where a node or measure was made first; null where it was not noted. */
void note_place(struct making *making, const struct place *place, muslin_id id);
const char *place_noted(const struct making *making, muslin_id id);
/* Notes what a node is called, unless it has a name; its row, until the next one is made. */
struct named *call_node(struct making *making, const struct place *place, muslin_id node, const char *name);

void make_policies(struct making *making);
void make_finishing(struct making *making);
/* Says what is wrong when the top is worked out, if anything is. */
void try_solving(struct making *making);

#endif
