/* args.h - from the words of a command line to a request.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_ARGS_H
#define CLI_ARGS_H

#include "command.h"

/* What a command's words ask for. `request` has the members that a line of a batch would have; `front` holds what
 * concerns the front end alone: json, output, force, svg. */
struct args {
    json_t *request;
    json_t *front;
};

/* The options of the front end, which no line of a batch can name. */
extern const struct option_row front_options[];
extern const struct option_row drawing_front_options[]; /* of a command that can draw its answer */

/* Those of a command. */
const struct option_row *front_of(const struct command *command);

/* Reads argv[1] and on; argv[0] is "muslin plan" and the like. `front` is one of the tables above. --help and
 * --usage are answered here and end the program. False leaves a failure. The caller drops both objects. */
bool read_args(const struct command *command, const struct option_row *front, int argc, char **argv,
               struct args *args, struct failure *failure);

#endif
