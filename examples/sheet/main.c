/* main.c - muslin-sheet, a quilt pattern as a sheet to print.
 *
 * SPDX-License-Identifier: MIT
 *
 * Only the library's public headers are used, and no sum is done here: what is shown, the library worked out. */
#define _POSIX_C_SOURCE 200809L
#include <signal.h>
#include <stdio.h>
#include <string.h>

#include "interrupt.h"
#include "memory.h"
#include "sheets.h"

static void tell(const struct failure *failure)
{
    bool named = failure->option[0] != '\0';
    fprintf(stderr, "muslin-sheet: %s%s%s%s\n", named ? "--" : "", failure->option, named ? ": " : "",
            failure->sentence);
}

static enum exit_code print_instead(enum instead instead)
{
    if (instead == INSTEAD_HELP)
        help_print(stdout);
    else if (instead == INSTEAD_BASH)
        help_bash(stdout);
    else if (instead == INSTEAD_ZSH)
        help_zsh(stdout);
    else
        printf("muslin-sheet %s\n", muslin_version_text());
    if (fflush(stdout) == 0 && ferror(stdout) == 0)
        return EXIT_ANSWERED;
    fputs("muslin-sheet: Cannot write standard output.\n", stderr);
    return EXIT_FILE_TROUBLE;
}

static enum exit_code make_sheet(const struct wish *wish)
{
    struct work work;
    struct failure failure;
    struct files files = { .force = wish->force };
    if (wish->output == NULL || strcmp(wish->output, "-") != 0)
        signal(SIGPIPE, SIG_IGN); /* who reads the names may leave: the files are written all the same */
    enum exit_code code = work_out(&work, wish);
    if (code == EXIT_ANSWERED) {
        bool fine = sheets_write(&work, wish, &files, &failure);
        waiting_end();
        if (fine)
            fine = files_finish(&files, &failure);
        else
            files_drop(&files);
        if (!fine) {
            tell(&failure);
            code = failure.exit_code;
        } else if (work_doubted(&work))
            code = EXIT_NO_ANSWER;
    }
    work_free(&work);
    return code;
}

int main(int argc, char **argv)
{
    struct wish wish;
    struct failure failure;
    enum instead instead;
    enum exit_code code = EXIT_WRONG_INPUT;
    use_memory_for_json();
    watch_for_interrupt();
#ifdef SIGXFSZ
    signal(SIGXFSZ, SIG_IGN); /* a file that grows too large is told like a full disk */
#endif
    if (!options_read(argc, argv, &wish, &instead, &failure))
        tell(&failure);
    else
        code = instead != INSTEAD_NOTHING ? print_instead(instead) : make_sheet(&wish);
    options_free(&wish);
    return (int)code;
}
