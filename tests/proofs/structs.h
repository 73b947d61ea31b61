/* structs.h - what checks and sized structs promise to the proof of muslin_length_parse(), under names with the types
 * of its structs, for Frama-C's WP cannot follow a struct through its bytes. Trusted, not proved; tested, and looked
 * through by Eva.
 *
 * SPDX-License-Identifier: MIT */
#include "inside.h"

#define msl_read_struct(check, argument, into, known, least, flags, from) read_parse_spec(check, into, from)
#define msl_want_output(check, out, least) want_parsed(check, out)
#define msl_write_struct(out, from, known) write_parsed(out, from)

/*@ assigns \nothing;
  @ ensures \result.at == 0 && (\result.problem == \null || \result.problem == problem); */
struct msl_check msl_check_start(struct muslin_problem *problem);

/*@ assigns check->status, *check->problem;
  @ ensures check->status == MUSLIN_OK ==> \old(check->status) == MUSLIN_OK && pointer != \null; */
static inline void msl_want_pointer(struct msl_check *check, int32_t argument, const void *pointer);

/*@ assigns check->status, *check->problem;
  @ ensures check->status == MUSLIN_OK ==> \old(check->status) == MUSLIN_OK && first <= value <= last; */
void msl_want_choice(struct msl_check *check, int32_t argument, int32_t value, int32_t first, int32_t last);

/*@ assigns check->status, *check->problem;
  @ ensures check->status == MUSLIN_OK ==> \old(check->status) == MUSLIN_OK && (sign == '.' || sign == ','); */
void msl_want_decimal_sign(struct msl_check *check, int32_t sign);

/*@ assigns check->status, *check->problem, *into; */
void read_parse_spec(struct msl_check *check, struct muslin_parse_spec *into, const struct muslin_parse_spec *from);

/*@ assigns check->status, *check->problem;
  @ ensures check->status == MUSLIN_OK ==> \old(check->status) == MUSLIN_OK; */
void want_parsed(struct msl_check *check, const struct muslin_parsed *out);

/*@ requires \valid(out) && \valid_read(from);
  @ assigns *out;
  @ ensures out->value == from->value && out->exact == from->exact && out->unit == from->unit; */
void write_parsed(struct muslin_parsed *out, const struct muslin_parsed *from);
