/* lines.h - the requests of a batch, line by line: from files one after the other, or from standard input.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_LINES_H
#define CLI_LINES_H

#include "command.h"

/* Of a longer line only the beginning is kept, and it is marked. */
#define LINE_BYTES_MAX (1024 * 1024)

struct line {
    char *text;        /* LINE_BYTES_MAX bytes, not terminated */
    size_t length;
    bool too_long;
    int64_t number;    /* in its file, from 1; blank lines count */
    const char *file;  /* null unless there are several */
    uint64_t check;    /* of all input up to the end of this line */
    int64_t bytes;     /* of all input up to there */
};

/* A check of some bytes that goes on from another, or from 0; it tells one input from another, no more. */
uint64_t check_bytes(uint64_t check, const char *bytes, size_t length);

struct line new_line(void);
void free_line(struct line *line);

struct lines {
    json_t *names;       /* list of files; "-" is standard input */
    size_t next_name;    /* the one to open next */
    const char *name;    /* the one that is open; null: none is */
    int descriptor;
    bool in_memory;      /* the block is all there is, and another's */
    char *block;
    size_t used;
    size_t filled;
    int64_t number;
    int64_t bytes;
    int64_t total_bytes; /* 0 when it is not known */
    uint64_t check;
    int error;           /* errno of what could not be opened or read, which `name` names */
};

/* `start` is what the check begins with: whatever else decides the answers. False leaves a failure when a file cannot
 * be read: before any work is done. */
bool open_lines(struct lines *lines, json_t *names, const char *start, struct failure *failure);
/* The same from a text in memory, which must live as long. */
void open_lines_of(struct lines *lines, const char *text, size_t length, const char *start);
/* The next line that is not blank. False at the end, after a wake (interrupt.h), or when reading fails. A line that a
 * wake cuts off is no line. */
bool next_line(struct lines *lines, struct line *line);
void close_lines(struct lines *lines);

#endif
