/* yields.c - strip sets cut tick by tick: all small strips, segments, trims, squarings and folds.
 *
 * SPDX-License-Identifier: MIT
 *
 *     yields [LONGEST, by default 120]
 *
 * How many segments a strip gives is found by cutting: from an end the trim, then a segment at a time, and what squaring
 * takes before the next one, as long as the half of the strip suffices. From that for all lengths follow the shortest
 * strip that gives as many and the next longer one that gives more. */
#include <stdio.h>
#include <stdlib.h>

#include <muslin/muslin.h>

enum { MOST_LENGTH = 400, BEYOND = 40 };

static void wrong(const struct muslin_yield_spec *spec, const char *what)
{
    printf("%s: strip %lld segment %lld trim %lld loss %lld every %lld fold %lld flags %u\n", what,
           (long long)spec->strip_length, (long long)spec->segment_cut, (long long)spec->end_trim,
           (long long)spec->resquare_loss, (long long)spec->resquare_every, (long long)spec->fold_clear,
           (unsigned)spec->flags);
    exit(1);
}

/* Segments from one end, where this much may be used, the first trim taken off already; and what they take. */
static int64_t cut(const struct muslin_yield_spec *spec, int64_t room, int64_t *squared, int64_t *used)
{
    int64_t segments = 0;
    *squared = *used = 0;
    for (;;) {
        const int squares = spec->resquare_every > 0 && segments > 0 && segments % spec->resquare_every == 0;
        const int64_t next = *used + (squares ? spec->resquare_loss : 0) + spec->segment_cut;
        if (next > room)
            return segments;
        *used = next;
        *squared += squares;
        segments++;
    }
}

struct yield {
    int64_t segments;
    int64_t squared;
    int64_t used;
};

/* A strip of this length. Its halves are counted in half ticks, so that the odd one is not lost. */
static struct yield cut_strip(struct muslin_yield_spec spec, int64_t length)
{
    struct yield yield = { 0 };
    if ((spec.flags & MUSLIN_YIELD_FROM_ONE_END) != 0) {
        yield.segments = cut(&spec, length - 2 * spec.end_trim, &yield.squared, &yield.used);
        return yield;
    }
    const int64_t half = length - spec.fold_clear - 2 * spec.end_trim;
    spec.segment_cut *= 2;
    spec.resquare_loss *= 2;
    yield.segments = 2 * cut(&spec, half, &yield.squared, &yield.used); /* used: in half ticks, of both ends in whole */
    yield.squared *= 2;
    return yield;
}

static void compare(const struct muslin_yield_spec *spec, const struct yield *yields)
{
    struct muslin_yield out = { .size = sizeof out };
    const int64_t length = spec->strip_length;
    const struct yield *yield = &yields[length];
    int64_t least = length, longer = length;
    while (least > 0 && yields[least - 1].segments == yield->segments)
        least--;
    while (longer < MOST_LENGTH && yields[longer].segments <= yield->segments)
        longer++;
    const int64_t left = length - 2 * spec->end_trim - yield->used;
    if (muslin_stripset_yield(spec, &out, NULL) != MUSLIN_OK)
        wrong(spec, "refused");
    if (out.segments != yield->segments || out.resquarings != yield->squared)
        wrong(spec, "segments or squarings");
    if (out.least_length != (yield->segments > 0 ? least : 0) ||
        out.shorter_by != (yield->segments > 0 ? length - least : 0))
        wrong(spec, "shortest strip");
    if (longer < MOST_LENGTH && out.longer_for_more != longer - length)
        wrong(spec, "longer strip");
    if (out.left_over != (left > 0 ? left : 0))
        wrong(spec, "left over");
    if (out.warnings != (yield->segments > 0 && least == length ? MUSLIN_WARN_NO_SLACK : 0))
        wrong(spec, "warnings");
}

int main(int count, char **words)
{
    static struct yield yields[MOST_LENGTH + 1];
    const int64_t longest = count == 2 ? atoll(words[1]) : 120;
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    int64_t compared = 0, from_one_end = 0;
    for (spec.segment_cut = 1; spec.segment_cut <= 12; spec.segment_cut++)
        for (spec.end_trim = 0; spec.end_trim <= 5; spec.end_trim++)
            for (spec.resquare_loss = 0; spec.resquare_loss <= 3; spec.resquare_loss++)
                for (spec.resquare_every = 0; spec.resquare_every <= 4; spec.resquare_every++)
                    for (int way = -1; way <= 5; way++) {
                        spec.flags = way < 0 ? MUSLIN_YIELD_FROM_ONE_END : 0;
                        spec.fold_clear = way < 0 ? 0 : way;
                        for (int64_t length = 0; length <= longest + BEYOND; length++)
                            yields[length] = cut_strip(spec, length);
                        for (int64_t length = longest + BEYOND + 1; length <= MOST_LENGTH; length++)
                            yields[length] = (struct yield){ INT64_MAX, 0, 0 };
                        for (spec.strip_length = 0; spec.strip_length <= longest; spec.strip_length++, compared++)
                            compare(&spec, yields);
                        from_one_end += way < 0;
                    }
    printf("%lld yields, %lld kinds of cutting from one end\n", (long long)compared, (long long)from_one_end);
    return 0;
}
