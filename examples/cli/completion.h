/* completion.h - a completion script for bash.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_COMPLETION_H
#define CLI_COMPLETION_H

#include <stdio.h>

void write_completion(FILE *out);

#endif
