/* commands.c - the list of commands, in the order of the work.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "cmd.h"
#include "words.h"

static const struct command *const quilt_group[] = { &plan_command, &pattern_command, &from_stock_command, NULL };
static const struct command *const seam_group[] = { &cut_command, &finished_command, &piece_command, &row_command,
                                                    &strip_command, &resize_command, &calibrate_command,
                                                    &drift_command, &accuracy_command, NULL };
static const struct command *const set_group[] = { &yield_command, &sets_command, &bundle_command, &prints_command,
                                                   NULL };
static const struct command *const unit_group[] = { &unit_command, &makes_command, NULL };
static const struct command *const fit_group[] = { &bed_command, &cover_command, &fit_command, &across_command,
                                                   &triangles_command, &rescale_command, NULL };
static const struct command *const rounds_group[] = { &log_cabin_command, &frame_command, &medallion_command,
                                                      &pieced_border_command, NULL };
static const struct command *const setting_group[] = { &block_command, &top_command, &sashing_command,
                                                       &on_point_command, &border_command, &join_command,
                                                       &scatter_command, NULL };
static const struct command *const shape_group[] = { &curve_command, &polygon_command, &template_command, NULL };
static const struct command *const finishing_group[] = { &batting_command, &backing_command, &binding_command,
                                                         &bias_command, &sleeve_command, &shrinkage_command, NULL };
static const struct command *const cloth_group[] = { &usable_command, &pieces_command, &strips_command, &stock_command,
                                                     &cutlist_command, &cutplan_command, &substitute_command,
                                                     &motif_command, &stack_command, &prewash_command, &buy_command,
                                                     NULL };
static const struct command *const supplies_group[] = { &seams_command, &thread_command, &stitches_command,
                                                        &quilting_lines_command, &weight_command, &cost_command,
                                                        NULL };
static const struct command *const number_group[] = { &length_command, &table_command, NULL };

const struct command_group command_groups[] = {
    { "A whole quilt", quilt_group },
    { "Seams and sizes", seam_group },
    { "Strip sets", set_group },
    { "Pieced units", unit_group },
    { "Curves and polygons", shape_group },
    { "Blocks, top and borders", setting_group },
    { "Fitting a bed or a size", fit_group },
    { "From the middle outwards", rounds_group },
    { "Finishing", finishing_group },
    { "Cloth", cloth_group },
    { "Thread, weight and cost", supplies_group },
    { "Numbers", number_group },
    { NULL, NULL }
};

const struct command *find_command(const char *name)
{
    for (const struct command_group *group = command_groups; group->title != NULL; group++)
        for (const struct command *const *command = group->commands; *command != NULL; command++)
            if (strcmp((*command)->name, name) == 0)
                return *command;
    return NULL;
}

const char *nearest_command(const char *written)
{
    struct nearest nearest = nearest_start(written);
    for (const struct command_group *group = command_groups; group->title != NULL; group++)
        for (const struct command *const *command = group->commands; *command != NULL; command++)
            nearest_offer(&nearest, (*command)->name);
    nearest_offer(&nearest, "batch");
    nearest_offer(&nearest, "completion");
    return nearest.word;
}

/* Is it a whole word of the text? */
static bool mentions(const char *text, const char *word)
{
    static const char within[] = "abcdefghijklmnopqrstuvwxyz-";
    const size_t length = strlen(word);
    for (const char *at = strstr(text, word); at != NULL && length > 0; at = strstr(at + 1, word)) {
        const bool starts = at == text || strchr(within, at[-1]) == NULL;
        if (starts && (at[length] == '\0' || strchr(within, at[length]) == NULL))
            return true;
    }
    return false;
}

enum { SUGGESTIONS_MAX = 4 };

/* Those whose names begin so, or that say this word of what they do. */
static size_t collect(struct word *found, const char *written, bool by_name)
{
    size_t count = 0;
    for (const struct command_group *group = command_groups; group->title != NULL; group++)
        for (const struct command *const *at = group->commands; *at != NULL && count < SUGGESTIONS_MAX; at++) {
            const struct command *command = *at;
            if (by_name ? strncmp(command->name, written, strlen(written)) == 0 && strlen(written) > 1
                        : mentions(command->about, written))
                found[count++].word = command->name;
        }
    return count;
}

void suggest_commands(const char *written, char *buf, size_t cap)
{
    struct word found[SUGGESTIONS_MAX + 1] = { { NULL, 0 } };
    size_t count = collect(found, written, true);
    if (count == 0)
        count = collect(found, written, false);
    if (count == 0)
        found[0].word = nearest_command(written);
    list_words(found, buf, cap);
}
