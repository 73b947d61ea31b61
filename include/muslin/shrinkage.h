/* muslin/shrinkage.h - what washing and quilting do to a size: dimensional change, and the size to make.
 *
 * SPDX-License-Identifier: MIT
 *
 * A change is (after - before) / before, so shrinkage is negative; a share lost is the same without its sign, and what
 * loses the share p becomes 1 - p of what it was. To end at a wanted size one divides by 1 - p; multiplying by 1 + p
 * falls short. Across is the width, along the length of the cloth or quilt; the two shrink by different shares. Sizes
 * of quilts are finished ones: allowances are added afterwards.
 *
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; changes and shares are ppm,
 *               shares lost 0 .. 999999.
 *   Statuses    MUSLIN_ERR_NULL: a spec or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a struct
 *               breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it, and
 *               where several share a name its `at` counts them from 0. Calls that round add those of struct
 *               muslin_rounding_spec: MUSLIN_ERR_CHOICE (direction). What else a call can return stands with it. The
 *               ..._init calls return MUSLIN_ERR_NULL and MUSLIN_ERR_STRUCT_SIZE.
 *   Rounding    Each figure is found exactly and rounded once; "nearest" takes ties up, towards +infinity.
 *   Cost        Constant time. Nothing allocates.
 */
#ifndef MUSLIN_SHRINKAGE_H
#define MUSLIN_SHRINKAGE_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- what was measured ----------------------------------------------------------------------------------------- */

/* Dimensional change in ppm to the nearest, negative when it shrank. before 1 .. MUSLIN_SIZE_MAX (`at` 0), after
 * 0 .. the lesser of 10 x before and MUSLIN_SIZE_MAX (`at` 1), so that every change fits. Source: ISO 5077 (test
 * summary by a textile laboratory supplier). Example: 20 in before and 17 in after: -150000, shrunk by 15 %.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_shrinkage_change(muslin_len before, muslin_len after, int32_t *ppm,
                                                 struct muslin_problem *problem);

struct muslin_wash_spec {
    uint32_t size;
    uint32_t flags;              /* 0 */
    muslin_len before_width;     /* each as for muslin_shrinkage_change() */
    muslin_len after_width;
    muslin_len before_length;    /* along the cloth, so */
    muslin_len after_length;
};
/* All still to be given. */
#define MUSLIN_WASH_SPEC_INIT { sizeof(struct muslin_wash_spec), 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_wash_spec_init(struct muslin_wash_spec *spec, uint32_t size);

struct muslin_wash_change {
    uint32_t size;
    uint32_t flags;
    int64_t area_before;         /* doubled square ticks */
    int64_t area_after;
    int32_t change_across;       /* ppm, nearest */
    int32_t change_along;
    int32_t change_area;         /* ppm, nearest, from the areas themselves: neither of the two above nor their sum */
    int32_t pad;
};
/* Both directions and the area of something measured before and after. `at` counts before_width 0, after_width 1,
 * before_length 2, after_length 3. Source: ISO 5077 as above; geometry for the area. Example: 42 x 36 in washed to
 * 41 x 35 in: -23810 across, -27778 along, -50926 in area. Since 1.0. */
MUSLIN_API muslin_status muslin_shrinkage_measure(const struct muslin_wash_spec *spec, struct muslin_wash_change *out,
                                                  struct muslin_problem *problem);

/* ---- the size to make, and what a size becomes ----------------------------------------------------------------- */

struct muslin_shrinkage_spec {
    uint32_t size;
    uint32_t flags;              /* 0 */
    muslin_len width;            /* finished, the size that the call starts from */
    muslin_len length;
    int32_t quilting_across;     /* share lost to the quilting's take-up */
    int32_t quilting_along;
    int32_t washing_across;      /* share that the quilted quilt loses in the wash */
    int32_t washing_along;
};
/* Nothing is lost; the sizes and shares are still to be given. */
#define MUSLIN_SHRINKAGE_SPEC_INIT { sizeof(struct muslin_shrinkage_spec), 0, 0, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_shrinkage_spec_init(struct muslin_shrinkage_spec *spec, uint32_t size);

struct muslin_size_to_make {
    uint32_t size;
    uint32_t flags;
    muslin_len make_width;         /* finished: wanted / ((1 - q)(1 - w)), rounded once, as asked */
    muslin_len make_length;
    muslin_len quilted_width;      /* what the quilt must measure when quilted, before the wash: wanted / (1 - w),
                                      nearest tick */
    muslin_len quilted_length;
    muslin_len washed_width;       /* what the size to make ends at, quilted and washed, nearest tick */
    muslin_len washed_length;
    muslin_len multiplied_width;   /* what multiplying would have said: wanted x (1 + q)(1 + w), nearest tick ... */
    muslin_len multiplied_length;
    muslin_len short_width;        /* ... and how far below the wanted size exactly so much ends: wanted less wanted x
                                      (1 - q^2)(1 - w^2), the latter to the nearest tick */
    muslin_len short_length;
    int32_t width_exact;           /* 1 when rounding lost nothing of make_width */
    int32_t length_exact;
};
/* From the size wanted in the end to the size to make: width and length are what the quilt shall measure when quilted
 * and washed. MUSLIN_ERR_OVERFLOW, naming width or length, when a size to make passes MUSLIN_LENGTH_MAX. Source: How to
 * make a quilt finish at a certain size (blog, 2020), 90 / (1 - 0.10); geometry for two losses in turn. Example: 60 x
 * 72 in wanted, 5 % lost in the wash each way and 2 % to quilting, up to 1/8 in: make 64 1/2 x 77 3/8 in. Since 1.0. */
MUSLIN_API muslin_status muslin_shrinkage_size_to_make(const struct muslin_shrinkage_spec *spec,
                                                       const struct muslin_rounding_spec *rounding,
                                                       struct muslin_size_to_make *out,
                                                       struct muslin_problem *problem);

struct muslin_washed_size {
    uint32_t size;
    uint32_t flags;
    muslin_len quilted_width;      /* width x (1 - q), rounded once, as asked */
    muslin_len quilted_length;
    muslin_len washed_width;       /* width x (1 - q)(1 - w), rounded once, as asked */
    muslin_len washed_length;
    int32_t change_across;         /* of the whole way, ppm, nearest: negative */
    int32_t change_along;
    int32_t change_area;           /* so */
    int32_t pad;
};
/* Backwards: what a made size (width and length of the spec) becomes by quilting and washing. A size to make that was
 * rounded up to a tick becomes, rounded down to a tick, the wanted size again. Source: geometry. Example: 100 x 100 in
 * made, 2 % lost to quilting and 5 % in the wash each way: 98 in quilted, 93.1 in washed, -69000 each way.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_shrinkage_becomes(const struct muslin_shrinkage_spec *spec,
                                                  const struct muslin_rounding_spec *rounding,
                                                  struct muslin_washed_size *out, struct muslin_problem *problem);

/* The size to make straight from a measured sample, without a percentage between that could be rounded:
 * target x before / after, rounded once, as asked. before and after 1 .. MUSLIN_SIZE_MAX (`at` 0 and 1), target
 * 0 .. MUSLIN_SIZE_MAX. The sample is made, quilted and washed as the quilt will be; one call for each direction.
 * Source: How to make a quilt finish at a certain size (blog, 2020). Example: a sample of 20 in came out at 18 in; for
 * 90 in make 100 in. Since 1.0. */
MUSLIN_API muslin_status muslin_shrinkage_from_sample(muslin_len before, muslin_len after, muslin_len target,
                                                      const struct muslin_rounding_spec *rounding,
                                                      struct muslin_rounded *out, struct muslin_problem *problem);

/* ---- fabric and batting ---------------------------------------------------------------------------------------- */

/* Which of two shares the quilt is taken to lose. */
enum muslin_governing_rule {
    MUSLIN_GOVERNING_RULE_BATTING = 1,  /* closely quilted: the layers go where the batting goes */
    MUSLIN_GOVERNING_RULE_FABRIC = 2,   /* as the fabric does */
    MUSLIN_GOVERNING_RULE_LARGER = 3,   /* on the safe side where the quilt must not end too small */
    MUSLIN_GOVERNING_RULE_SMALLER = 4   /* on the safe side where it must not end too large */
};

enum muslin_governing_source {
    MUSLIN_GOVERNING_SOURCE_BATTING = 1, /* the batting governs */
    MUSLIN_GOVERNING_SOURCE_FABRIC = 2, /* the fabric governs */
    MUSLIN_GOVERNING_SOURCE_BOTH = 3    /* larger or smaller was asked, and they are alike */
};

struct muslin_governing {
    uint32_t size;
    uint32_t flags;
    int32_t share;       /* ppm lost: the one of the two that governs */
    int32_t source;      /* enum muslin_governing_source */
};
/* The share to reckon with when fabric and batting shrink differently. `fabric` (`at` 0) and `batting` (`at` 1) are
 * shares lost; MUSLIN_ERR_CHOICE when the rule is no enum muslin_governing_rule. A rule of thumb: what really happens
 * depends on how close the quilting is, and a washed sample tells more. Source: Post: planning for 3-5% batting
 * shrinkage (quilting forum, 2014) for the batting in a closely quilted quilt; the other rules common practice, no
 * source. Example: fabric 2 %, batting 5 %, MUSLIN_GOVERNING_RULE_BATTING: 50000, governed by the batting. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_shrinkage_governs(int32_t fabric, int32_t batting, int32_t governing_rule,
                                                  struct muslin_governing *out, struct muslin_problem *problem);

/* ---- cloth that is washed before it is cut --------------------------------------------------------------------- */

struct muslin_prewash_spec {
    uint32_t size;
    uint32_t flags;              /* 0 */
    muslin_len needed_length;    /* of cloth, after the wash */
    muslin_len usable_width;     /* of the cloth, before the wash */
    int32_t across;              /* share that the width loses, `at` 0 */
    int32_t along;               /* share that the length loses, `at` 1 */
};
/* 40 in usable, nothing lost; length and shares are still to be given. */
#define MUSLIN_PREWASH_SPEC_INIT { sizeof(struct muslin_prewash_spec), 0, 0, 325120, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_prewash_spec_init(struct muslin_prewash_spec *spec, uint32_t size);

struct muslin_prewash {
    uint32_t size;
    uint32_t flags;
    muslin_len unshrunk_length;  /* to wash, for the length needed afterwards: needed / (1 - along), up to a tick */
    muslin_len washed_width;     /* usable after the wash: width x (1 - across), down to a tick */
    muslin_len lost_length;      /* unshrunk_length - needed_length */
    muslin_len lost_width;       /* usable_width - washed_width */
};
/* What to wash so that enough cloth is left. First ask for the width, work out the length needed of cloth that wide,
 * then ask again: narrower cloth may need more strips. Buying steps and extras are for muslin_fabric_purchase(), with
 * its shrinkage at 0. Source: as for the size to make. Example: 4 yd needed, 42 in usable, 3 % lost across and 4 %
 * along: 150 in to wash, 40.74 in usable afterwards. Since 1.0. */
MUSLIN_API muslin_status muslin_shrinkage_prewash(const struct muslin_prewash_spec *spec, struct muslin_prewash *out,
                                                  struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
