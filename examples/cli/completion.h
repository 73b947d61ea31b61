/* completion.h - completion scripts for shells, made from the tables of options.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_COMPLETION_H
#define CLI_COMPLETION_H

#include "command.h"

/* Everything a command line may name, for a script of its shell. */
struct completed {
    const char *name;
    const char *about;
    const struct option_row *tables[3]; /* its own, those of all commands, the front end's; null: none */
};

/* Calls for each command in turn, batch and completion too. */
void for_each_completed(FILE *out, void (*write)(FILE *out, const struct completed *completed));
/* The operand that may be completed first: a choice or a file; null when there is none. */
const struct option_row *completed_operand(const struct completed *completed);
bool is_file(const struct option_row *row);
bool takes_value(const struct option_row *row);

void write_bash_completion(FILE *out);
void write_zsh_completion(FILE *out);

extern const struct command completion_command;
enum exit_code run_completion_command(int argc, char **argv);

#endif
