/* build.c - words for the tree: what the six quilts are made of, and what they call it.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "build.h"

muslin_id cloth(struct design *d, const char *name, int darkness, int red, int green, int blue)
{
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct cloth *made = &d->cloths[d->cloths_used++];
    spec.darkness = darkness;
    spec.usable_width = USABLE;
    must(muslin_quilt_fabric(d->quilt, &spec, name, strlen(name), &made->id, &problem), &problem);
    made->name = name;
    made->colour[0] = (unsigned char)red;
    made->colour[1] = (unsigned char)green;
    made->colour[2] = (unsigned char)blue;
    return made->id;
}

muslin_id measure(struct design *d, const char *name, muslin_len value)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id;
    must(muslin_quilt_measure(d->quilt, name, strlen(name), value, &id, &problem), &problem);
    return id;
}

muslin_id times(struct design *d, int64_t factor, muslin_id of)
{
    struct muslin_sum_spec term = MUSLIN_SUM_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id;
    term.measure = of;
    term.factor = factor;
    must(muslin_quilt_sum(d->quilt, &term, sizeof term, 1, &id, &problem), &problem);
    return id;
}

muslin_id patch(struct design *d, muslin_id fabric, muslin_id width, muslin_id height)
{
    struct muslin_patch_spec spec = MUSLIN_PATCH_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id;
    spec.fabric = fabric;
    spec.width = width;
    spec.height = height;
    must(muslin_quilt_patch(d->quilt, &spec, &id, &problem), &problem);
    return id;
}

muslin_id unit(struct design *d, int32_t kind, int32_t method, muslin_id width, muslin_id height, muslin_id first,
               muslin_id second)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct unit *made = &d->units[d->units_used++];
    made->fabrics[0] = first;
    made->fabrics[1] = second;
    spec.kind = kind;
    spec.method = method;
    spec.width = width;
    spec.height = height;
    must(muslin_quilt_unit(d->quilt, &spec, made->fabrics, 2, &made->id, &problem), &problem);
    made->spec = spec;
    return made->id;
}

static muslin_id sew(struct design *d, int32_t axis, int32_t press, const muslin_id *children, size_t n)
{
    struct muslin_join_spec spec = MUSLIN_JOIN_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id;
    spec.axis = axis;
    spec.press = press;
    must(muslin_quilt_join(d->quilt, &spec, children, n, &id, &problem), &problem);
    return id;
}

muslin_id join(struct design *d, int32_t axis, const muslin_id *children, size_t n)
{
    return sew(d, axis, MUSLIN_SEAM_PRESS_FREE, children, n);
}

muslin_id turn(struct design *d, muslin_id node, int32_t quarter_turns)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id;
    must(muslin_quilt_turn(d->quilt, node, quarter_turns, &id, &problem), &problem);
    return id;
}

muslin_id grid(struct design *d, int64_t columns, int64_t rows, const muslin_id *children)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id;
    must(muslin_quilt_grid(d->quilt, columns, rows, children, (size_t)(columns * rows), &id, &problem), &problem);
    return id;
}

muslin_id repeat(struct design *d, muslin_id node, int64_t columns, int64_t rows, const int32_t turns[4])
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id;
    must(muslin_quilt_repeat(d->quilt, node, columns, rows, turns, 4, 2, 2, &id, &problem), &problem);
    return id;
}

/* A strip along one side, as long as what is there, pressed away from it. */
static muslin_id layer(struct design *d, muslin_id centre, const struct muslin_log_spec *log)
{
    int beside = log->side == MUSLIN_SIDE_LEFT || log->side == MUSLIN_SIDE_RIGHT;
    int comes_first = log->side == MUSLIN_SIDE_LEFT || log->side == MUSLIN_SIDE_TOP;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id length;
    muslin_id two[2];
    must(muslin_quilt_extent(d->quilt, centre, beside ? MUSLIN_DOWN : MUSLIN_ACROSS, &length, &problem), &problem);
    two[comes_first] = centre;
    two[!comes_first] = patch(d, log->fabric, beside ? log->width : length, beside ? length : log->width);
    return sew(d, beside ? MUSLIN_ACROSS : MUSLIN_DOWN,
               comes_first ? MUSLIN_SEAM_PRESS_TO_FIRST : MUSLIN_SEAM_PRESS_TO_LAST, two, 2);
}

muslin_id border(struct design *d, muslin_id centre, muslin_id fabric, muslin_id width, const char *name)
{
    static const int32_t sides[] = { MUSLIN_SIDE_LEFT, MUSLIN_SIDE_RIGHT, MUSLIN_SIDE_TOP, MUSLIN_SIDE_BOTTOM };
    struct muslin_log_spec strip = MUSLIN_LOG_SPEC_INIT;
    strip.fabric = fabric;
    strip.width = width;
    for (int i = 0; i < 4; i++) {
        strip.side = sides[i];
        centre = layer(d, centre, &strip);
        call(d, centre, name)->side = sides[i];
    }
    return centre;
}

muslin_id cabin(struct design *d, muslin_id centre, const struct muslin_log_spec *logs, int count, const char *name)
{
    for (int i = 0; i < count; i++) {
        centre = layer(d, centre, &logs[i]);
        call(d, centre, name)->log = i + 1;
    }
    return centre;
}

struct named *call(struct design *d, muslin_id node, const char *name)
{
    struct named *named = &d->names[d->names_used++];
    *named = (struct named){ .id = node, .name = name };
    return named;
}

muslin_id block(struct design *d, muslin_id node, const char *name)
{
    call(d, node, name)->is_block = 1;
    return node;
}

const int32_t chessboard[4] = { 0, 1, 1, 0 };
