/* pattern.h - a pattern file: read, checked, and pieced as a tree, one for each of its sizes.
 *
 * SPDX-License-Identifier: MIT
 *
 * One way through: pattern_read() takes the file, design_create() pieces one size of it, worked_create() (worked.h)
 * asks the library for all that follows, write_pattern() (document.h) puts it into words, tables and pictures. Who
 * prints them is another's business: text for the command line, pages for the sheet. No arithmetic is done here. */
#ifndef PATTERN_H
#define PATTERN_H

#include <stdbool.h>
#include <stddef.h>

#include <jansson.h>
#include <muslin/muslin.h>

/* ---- complaints ------------------------------------------------------------------------------------------------ */

/* What is wrong, and where: all that is found is told, not only the first. */
struct complaint {
    char *place;    /* JSON pointer, "/parts/lamp/across/2/width"; "" for the file as a whole */
    int line;       /* of the file, where its parser says so; else 0 */
    int column;
    char *value;    /* what stands there, shortened; may be null */
    char *sentence; /* the library's where it has one */
    int status;     /* muslin_status; -1 where the library never saw it */
    unsigned of_sizes; /* a bit for each size that has it; 0: the file has it */
    char *sizes;    /* their names, "lap, twin", where others do not have it; else null */
};

struct complaints {
    struct complaint *rows;
    size_t used;
    size_t room;
};

/* Adds one, unless the same is there already. `value` may be null. */
void complain(struct complaints *complaints, const char *place, json_t *value, int status, const char *format, ...)
    __attribute__((format(printf, 5, 6)));
/* Moves those of one size behind the others; what others have too is told once. */
void complaints_of_size(struct complaints *to, struct complaints *from, size_t size);
void complaints_free(struct complaints *complaints);

/* ---- a pattern as its file has it ------------------------------------------------------------------------------- */

/* Words that a file may choose; the first of each is the usual one. */
enum chosen_word { WORD_BATTING, WORD_SASHING, WORD_FABRIC, WORD_CORNERSTONE, WORD_COLOR, WORD_YARD, CHOSEN_WORDS };

enum pattern_units { PATTERN_INCH = 1, PATTERN_CM, PATTERN_MM };
enum pattern_paper { PAPER_LETTER = 1, PAPER_A4 };

struct pattern_size {
    const char *name; /* "as given" where the file has no sizes */
    json_t *values;   /* its entry; null where the file has none */
};

/* Texts belong to the pattern; null where the file has none. */
struct pattern {
    json_t *root;
    const char *title;
    const char *by;
    const char *story;
    const char *version;
    const char *date;
    bool invented;
    enum pattern_units units;
    enum pattern_paper paper; /* letter for inches, A4 for metric patterns, unless said */
    const char *words[CHOSEN_WORDS];
    struct pattern_size *sizes;
    size_t sizes_count; /* 1 or more */
};

/* Reads a file ("-": standard input), or a text that is in memory. What can be checked without a size is checked; null
 * when something is wrong. Duplicate keys are refused. A file of more than 4 MiB is refused. */
struct pattern *pattern_read(const char *path, struct complaints *complaints);
struct pattern *pattern_parse(const char *text, size_t length, struct complaints *complaints);
void pattern_free(struct pattern *pattern);

bool is_sold_by_metre(const struct pattern *pattern);

/* Names the sizes that have a complaint, where not all of those have it that were looked at: a bit for each. */
void name_sizes(struct complaints *complaints, const struct pattern *pattern, unsigned looked_at);

/* ---- one size of it, pieced ------------------------------------------------------------------------------------- */

struct cloth {
    muslin_id id;
    const char *key;           /* in the file */
    const char *name;
    char letter[24];           /* F1, F2, ... in the file's order, for drawings and keys */
    unsigned char colour[3];   /* red, green, blue; a grey of the fabric's darkness where the file has none */
    int32_t print;             /* enum muslin_print */
    muslin_len usable_width;   /* of the cloth, or length of a strip */
    muslin_len strip_cut;      /* bought as strips of this cut width; 0: by the length */
    int64_t strips_have;       /* 0: not said */
};

/* What a node is called in print: named by "called", a part, a strip of a border, a log of a cabin. In the order of
 * their ids, each once: a border's strips and a cabin's logs keep its name; else what the node itself is called
 * counts. */
struct named {
    muslin_id id;
    const char *name;
    const char *place; /* JSON pointer */
    int32_t side;      /* enum muslin_side, of the strip that a border has got last; else 0 */
    int log;           /* number of the log that a cabin has got last; else 0 */
    bool is_block;
};

/* A unit as it was asked for: its recipe is asked for again when it is written down. */
struct unit_asked {
    muslin_id id;
    struct muslin_quilt_unit_spec spec;
    muslin_id fabrics[3];
};

/* A field on point, whose rows are numbered on the drawing. */
struct point_field {
    muslin_id id;
    int64_t columns;
    int64_t rows;
};

struct border_asked {
    const char *name;
    muslin_id fabric;   /* 0 for pieced strips */
    muslin_len width;   /* finished; 0 for pieced strips */
    int32_t corners;    /* enum border_corners */
    muslin_id cornerstone;
    muslin_id inside;   /* node: what it is sewn round */
    muslin_id outside;  /* node: with it */
};
enum border_corners { CORNERS_SIDES_FIRST = 1, CORNERS_TOP_FIRST, CORNERS_MITRED, CORNERS_STONES, CORNERS_PIECED };

struct design {
    const struct pattern *pattern;
    size_t size; /* which of the pattern's */
    struct muslin_quilt *quilt;
    muslin_id centre; /* without borders */
    muslin_id top;
    struct cloth *cloths;
    size_t cloths_used;
    struct named *names;
    size_t names_used;
    struct unit_asked *units;
    size_t units_used;
    struct point_field *fields;
    size_t fields_used;
    bool has_sashes;
    struct border_asked *borders;
    size_t borders_used;

    struct muslin_solution_spec solve;
    struct muslin_pressing_spec pressing;
    struct muslin_yardage_spec buying;

    /* Finishing; the quilt's own size is filled in when it is known. */
    bool has_binding;
    muslin_id binding_fabric;
    bool asks_binding_extra; /* the file says how much is wanted beyond the way round */
    struct muslin_binding_spec binding;
    bool has_batting;
    struct muslin_batting_spec batting;
    bool has_backing;
    const char *backing_name;
    muslin_id backing_fabric; /* 0: a cloth of its own */
    struct muslin_backing_spec backing;
    bool has_sleeve;
    muslin_id sleeve_fabric;
    struct muslin_hanging_spec sleeve;
    bool has_bed;
    muslin_len bed_width;
    muslin_len bed_length;
    muslin_len bed_depth; /* of the mattress; 0: not said */

    json_t *places; /* where in the file nodes and measures were made first, by their ids */
    char **texts; /* that only the design holds */
    size_t texts_used;
};

/* Pieces the size's tree. Null when something is wrong; every wrong place is told. */
struct design *design_create(const struct pattern *pattern, size_t size, struct complaints *complaints);
void design_free(struct design *design);

const struct cloth *cloth_of(const struct design *design, muslin_id fabric);
const struct named *named_of(const struct design *design, muslin_id node); /* null: it has no name */
const char *place_made(const struct design *design, muslin_id id); /* JSON pointer; null: it has no place of its own */
const struct unit_asked *unit_of(const struct design *design, muslin_id node);

/* Stops the program with exit status 3 where a call fails that can only fail for want of memory. */
void must(muslin_status status);

#endif
