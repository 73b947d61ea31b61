/* memory.h - memory, or an end: a front end that has none left says so and leaves no file half written.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_MEMORY_H
#define CLI_MEMORY_H

#include <stdio.h>

/* Cleared memory; the caller frees it. Ends the program with EXIT_FILE_TROUBLE when there is none. */
void *need_memory(size_t size);
/* A stream that writes to *text, which is complete when the stream is closed. The caller frees it. */
FILE *open_text(char **text, size_t *length);
/* Makes the JSON library do the same. */
void use_memory_for_json(void);

#endif
