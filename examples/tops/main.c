/* main.c - tops: draws six invented quilts, or prints their working sheets.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include <errno.h>
#include <getopt.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "tops.h"

static void print_help(FILE *file)
{
    fputs("tops - six invented quilts, each described once as a tree of patches, units and joins\n"
          "\n"
          "  tops                     what there is\n"
          "  tops NAME                its working sheet: sizes, what to cut, how to sew and press it\n"
          "  tops NAME --svg FILE     its drawing; a file that is there stays as it is\n"
          "  tops NAME --cloth FILE   the cloth that it is cut from, drawn strip by strip; so\n"
          "  tops all --svg FOLDER    all drawings, FOLDER/NAME.svg\n"
          "  tops --help\n"
          "\n"
          "Examples:  tops stars        tops kites --svg kites.svg\n"
          "Exit status: 0 done, 1 it failed, 2 it was asked wrongly.\n",
          file);
}

void must(muslin_status status, const struct muslin_problem *problem)
{
    if (status == MUSLIN_OK)
        return;
    fprintf(stderr, "tops: %s\n", problem != NULL ? problem->text : muslin_status_sentence(status));
    exit(1);
}

/* ---- files ------------------------------------------------------------------------------------------------------ */

static void fail_file(const char *path)
{
    fprintf(stderr, "tops: %s: %s\n", path, strerror(errno));
    exit(1);
}

/* Ends well when all that was said has arrived. */
static int finish(void)
{
    if (fflush(stdout) != 0)
        fail_file("standard output");
    return 0;
}

/* What the file may be read by: as any new file, not as a temporary one. */
static mode_t usual_mode(void)
{
    mode_t mask = umask(0);
    umask(mask);
    return 0666 & ~mask;
}

/* Writes beside the place and then gives it its name, which fails where the name is taken. */
typedef int drawing(const struct sheet *sheet, const char *title, FILE *file);

static void write_drawing(const struct sheet *sheet, const char *title, drawing *draw, const char *path)
{
    char *draft = malloc(strlen(path) + 8);
    if (draft == NULL)
        fail_file(path);
    sprintf(draft, "%s.XXXXXX", path);
    int descriptor = mkstemp(draft);
    FILE *file = descriptor < 0 ? NULL : fdopen(descriptor, "w");
    if (file == NULL)
        fail_file(path);
    int failed = draw(sheet, title, file) != 0;
    failed = failed || fchmod(descriptor, usual_mode()) != 0;
    failed |= fclose(file) != 0;
    failed = failed || link(draft, path) != 0;
    int why = errno;
    unlink(draft);
    free(draft);
    errno = why;
    if (failed)
        fail_file(path);
    printf("%s\n", path);
}

/* ---- patterns --------------------------------------------------------------------------------------------------- */

/* Pieces and solves a pattern; then draws it, or prints its sheet where there is no path. */
static void show(const struct pattern *pattern, drawing *draw, const char *path)
{
    struct muslin_quilt_spec quilt_spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_solve_spec solve_spec = MUSLIN_SOLVE_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_allocator allocator;
    struct muslin_solution *solution;
    struct design design = { .quilt = NULL };
    must(muslin_allocator_libc(&allocator), NULL);
    must(muslin_quilt_create(&quilt_spec, &allocator, &design.quilt, &problem), &problem);
    pattern->piece(&design);
    solve_spec.end_trim = INCH / 2;
    must(muslin_solution_create(design.quilt, design.top, &solve_spec, NULL, 0, 0, &solution, &problem), &problem);
    struct sheet *sheet = sheet_create(&design, solution, &solve_spec);
    if (path != NULL)
        write_drawing(sheet, pattern->title, draw, path);
    else
        print_sheet(sheet, pattern);
    sheet_free(sheet);
    muslin_solution_free(solution);
    muslin_quilt_free(design.quilt);
}

static void show_all(const char *folder)
{
    for (int i = 0; i < patterns_count; i++) {
        size_t length = strlen(folder) + strlen(patterns[i].name) + 6;
        char *path = malloc(length);
        if (path == NULL)
            fail_file(folder);
        snprintf(path, length, "%s/%s.svg", folder, patterns[i].name);
        show(&patterns[i], draw_top, path);
        free(path);
    }
}

static const struct pattern *find(const char *name)
{
    for (int i = 0; i < patterns_count; i++)
        if (strcmp(patterns[i].name, name) == 0)
            return &patterns[i];
    return NULL;
}

static int list(void)
{
    for (int i = 0; i < patterns_count; i++)
        printf("%-8s  %s. %s\n", patterns[i].name, patterns[i].title, patterns[i].story);
    printf("\nAll are invented. tops --help says more.\n");
    return finish();
}

static int complain(const char *what, const char *name)
{
    fprintf(stderr, "tops: %s%s; tops alone lists the six, tops --help says more\n", what, name);
    return 2;
}

static int run(int names, char **name, drawing *draw, const char *path)
{
    if (names == 0 && path == NULL)
        return list();
    if (names != 1)
        return complain(names == 0 ? "which quilt?" : "one quilt at a time, or all", "");
    const struct pattern *pattern = find(name[0]);
    int all = strcmp(name[0], "all") == 0;
    if (all && (path == NULL || draw != draw_top))
        return complain("all are drawn, with --svg FOLDER; a sheet is printed of one", "");
    if (!all && pattern == NULL)
        return complain("there is no quilt here that is called ", name[0]);
    if (all)
        show_all(path);
    else
        show(pattern, draw, path);
    return finish();
}

int main(int argc, char **argv)
{
    static const struct option options[] = { { "svg", required_argument, NULL, 's' },
                                             { "cloth", required_argument, NULL, 'c' },
                                             { "help", no_argument, NULL, 'h' },
                                             { NULL, 0, NULL, 0 } };
    const char *path = NULL;
    drawing *draw = draw_top;
    for (int c; (c = getopt_long(argc, argv, "h", options, NULL)) != -1;) {
        if (c == 'h') {
            print_help(stdout);
            return finish();
        }
        if (c != 's' && c != 'c') {
            fputs("Try tops --help.\n", stderr);
            return 2;
        }
        path = optarg;
        draw = c == 'c' ? draw_cloth : draw_top;
    }
    return run(argc - optind, argv + optind, draw, path);
}
