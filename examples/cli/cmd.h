/* cmd.h - the commands, and the pieces of answers that several of them share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_CMD_H
#define CLI_CMD_H

#include "command.h"

extern const struct command plan_command, pattern_command;
extern const struct command cut_command, finished_command, piece_command, row_command, strip_command, resize_command,
    calibrate_command, drift_command;
extern const struct command accuracy_command;
extern const struct command shrinkage_command, prewash_command;
extern const struct command yield_command, sets_command, bundle_command, prints_command;
extern const struct command unit_command, makes_command, from_stock_command;
extern const struct command usable_command, pieces_command, strips_command, stock_command, buy_command;
extern const struct command cutplan_command, cutlist_command, substitute_command, motif_command, stack_command;
extern const struct command block_command, top_command, border_command, join_command;
extern const struct command bed_command, cover_command, across_command, triangles_command;
extern const struct command fit_command, rescale_command;
extern const struct command log_cabin_command, frame_command, medallion_command, pieced_border_command;
extern const struct command scatter_command;
extern const struct command sashing_command, on_point_command;
extern const struct command curve_command, polygon_command, template_command;
extern const struct command binding_command, bias_command, batting_command, backing_command, sleeve_command;
extern const struct command seams_command, thread_command, stitches_command, quilting_lines_command, weight_command,
    cost_command;
extern const struct command length_command, table_command;

/* What rounding changed: "rounded_by", left out when it is less than a tick. */
void put_rounding(json_t *answer, const struct desk *desk, const struct muslin_rounded *rounded);

/* A difference under one of two names: what is missing, or what is too much; neither when there is none. */
void put_difference(json_t *answer, const struct desk *desk, const char *missing, const char *too_much,
                    muslin_len difference);
/* A finished size with its seams: what it measures unfinished. */
bool put_unfinished(json_t *answer, struct desk *desk, const char *name, muslin_len finished, muslin_len allowance,
                    muslin_len take_up);

/* Print adds 1/2 to 6 in to a mitred piece for handling. */
#define MITRE_EXTRA_USUAL (2 * MUSLIN_TICKS_PER_INCH)

/* A border as people write it: "4 in", "4 in mitred", "6 cm cornerstones lengthwise diagonal". Sets width, style,
 * join and flags of the spec. */
bool read_border(struct desk *desk, const char *text, struct muslin_border_spec *spec);

/* Borders one after the other, each sewn to what the one before left: appends an object a border to `list` and fills
 * borders[] (TEXTS_MAX of them). `spec` holds the first one's surroundings and ends with the last one's unfinished
 * size. `warnings` gathers. */
bool put_borders(json_t *list, struct desk *desk, const struct texts *texts, struct muslin_border_spec *spec,
                 struct muslin_border *borders, uint32_t *warnings);

/* All layouts of a backing, the chosen one (0: the best) piece by piece. */
bool put_backing(json_t *answer, struct desk *desk, const struct muslin_backing_spec *spec, int32_t layout,
                 struct muslin_backing *chosen);

/* Batting to cut, the package that covers, pieces joined. */
bool put_batting(json_t *answer, struct desk *desk, const struct muslin_batting_spec *spec,
                 struct muslin_batting *batting);

/* Length, strips and joins of a binding; its width where that is asked for. */
bool put_binding(json_t *answer, struct desk *desk, const struct muslin_binding_spec *spec,
                 struct muslin_binding *binding);
bool put_binding_width(json_t *answer, struct desk *desk, const struct muslin_binding_width_spec *spec,
                       struct muslin_binding_width *width);

#endif
