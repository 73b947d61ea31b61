/* answer.h - building a JSON answer: lengths with their text, cloth in yards, shares, warnings.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_ANSWER_H
#define CLI_ANSWER_H

#include "command.h"

/* "name": {"ticks": 20320, "text": "2 1/2 in", "exact": true}. The text is in the units asked for; the ticks are the
 * truth. */
void put_length(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
/* The same for what there is to spare, whose text is rounded down, and for what there must be at least, rounded up: an
 * inexact text then errs on the safe side. */
void put_slack(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
void put_least(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
/* What there is to spare of cloth, down to what one measures it in: 1/8 in, or 5 mm. */
void put_spare(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
/* What cloth must measure at least, up to the same. */
void put_ample(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
/* A length of cloth, at least so much, up to 1/8 in or 5 mm; where it is sold so, in yards: "1 3/8 yd (49 1/2 in)". */
void put_cloth(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
/* What to buy of a length of cloth: up to 1/8 yd or 10 cm, as shops cut it. */
void put_to_buy(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
/* "buy": what to ask for in a shop when so much is needed, in the steps that shops cut, with "buy_leaves", what that has
 * to spare, and "buy_rather", a step more, when it has nothing. Left out for nothing, and for more than any shop has. */
void put_shop_length(json_t *answer, const struct desk *desk, muslin_len needed);
/* A length of thread: whole yards or centimetres, up for what is needed, down for what is left; a few yards are said as
 * cloth is. */
void put_thread(json_t *answer, const struct desk *desk, const char *name, muslin_len value, int32_t direction);
/* A length as one says it: its text, where that is not exact, to the nearest 1/16 in or millimetre. */
void put_about(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
/* A size that one measures by, brought to marks 1 / `parts` in or `tenths` of a millimetre apart, as `direction` says:
 * its ticks are those of the mark. */
void put_on_mark(json_t *answer, const struct desk *desk, const char *name, muslin_len value, int32_t direction,
                 int32_t parts, int32_t tenths);
/* Where to cut what may be wider, never narrower: the value itself where its text is exact, else the next mark of a
 * ruler: the usual ones, or at a greater fineness finer ones; -1 where there are none so fine. */
muslin_len up_to_mark(const struct desk *desk, muslin_len value, size_t fineness);
/* What something comes out more (above 0) or less than wanted: the difference, and how much it is without its sign. */
void put_off_by(json_t *answer, const struct desk *desk, const char *name, const char *amount, muslin_len value);
/* A long length in yards, up to an eighth or exactly in thirds; nothing where lengths are metric. */
void put_yards(json_t *answer, const struct desk *desk, const char *name, muslin_len value);
void put_count(json_t *answer, const char *name, int64_t value);
/* {"thousandths": 10160, "text": "10.16"} */
void put_thousandths(json_t *answer, const struct desk *desk, const char *name, int64_t thousandths);
/* {"mg": 1206000, "text": "1206 g (42.5 oz)"}; the ounces stand where lengths are in inches. */
bool put_mass(json_t *answer, struct desk *desk, const char *name, int64_t mass);
/* {"ppm": 200000, "text": "20 %"} */
void put_share(json_t *answer, const struct desk *desk, const char *name, int32_t ppm);
void put_text(json_t *answer, const char *name, const char *text);
void put_truth(json_t *answer, const char *name, bool truth);
/* "warnings": sentences; the member is made once and added to, in the order of the bits, each sentence once. */
void put_warnings(json_t *answer, uint32_t warnings);

/* A new, empty member. */
json_t *put_object(json_t *answer, const char *name);
json_t *put_list(json_t *answer, const char *name);
/* A new, empty object at the end of a list. */
json_t *append_object(json_t *list);

/* The plain addition that front ends need, done by the library. */
bool sum_of(struct desk *desk, const struct lengths *lengths, muslin_len *sum);

#endif
