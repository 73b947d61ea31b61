/* questions_shrinkage.c - what the handbook asks about shrinkage.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

static void change(struct figure *f)
{
    int32_t ppm;
    must(f, muslin_shrinkage_change(length(f, "before"), length(f, "after"), &ppm, NULL));
    answer_count(f, "ppm", ppm);
}

static void wash(struct figure *f)
{
    struct muslin_wash_spec spec = MUSLIN_WASH_SPEC_INIT;
    struct muslin_wash_change found = { .size = sizeof found };
    spec.before_width = length(f, "before_width");
    spec.after_width = length(f, "after_width");
    spec.before_length = length(f, "before_length");
    spec.after_length = length(f, "after_length");
    must(f, muslin_shrinkage_measure(&spec, &found, NULL));
    answer_count(f, "across", found.change_across);
    answer_count(f, "along", found.change_along);
    answer_count(f, "area", found.change_area);
}

static struct muslin_shrinkage_spec quilt_of(struct figure *f)
{
    struct muslin_shrinkage_spec spec = MUSLIN_SHRINKAGE_SPEC_INIT;
    spec.width = length(f, "width");
    spec.length = length_or(f, "length", 0);
    spec.quilting_across = (int32_t)count_or(f, "quilting", 0);
    spec.quilting_along = spec.quilting_across;
    spec.washing_across = (int32_t)count_or(f, "washing", 0);
    spec.washing_along = spec.washing_across;
    return spec;
}

static void size_to_make(struct figure *f)
{
    struct muslin_shrinkage_spec spec = quilt_of(f);
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_size_to_make made = { .size = sizeof made };
    must(f, muslin_shrinkage_size_to_make(&spec, &rounding, &made, NULL));
    answer_length(f, "width", made.make_width);
    answer_length(f, "multiplied_width", made.multiplied_width);
    answer_count(f, "exact", made.width_exact);
}

static void washed_size(struct figure *f)
{
    struct muslin_shrinkage_spec spec = quilt_of(f);
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_washed_size washed = { .size = sizeof washed };
    must(f, muslin_shrinkage_becomes(&spec, &rounding, &washed, NULL));
    answer_length(f, "quilted_width", washed.quilted_width);
    answer_length(f, "washed_width", washed.washed_width);
}

static void from_sample(struct figure *f)
{
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_rounded made = { .size = sizeof made };
    must(f, muslin_shrinkage_from_sample(length(f, "before"), length(f, "after"), length(f, "target"), &rounding, &made,
                                         NULL));
    answer_length(f, "make", made.value);
    answer_count(f, "exact", made.exact);
}

static void governing(struct figure *f)
{
    static const char *const rules[] = { "batting", "fabric", "larger", "smaller", NULL };
    static const char *const sources[] = { "", "batting", "fabric", "both" };
    struct muslin_governing found = { .size = sizeof found };
    must(f, muslin_shrinkage_governs((int32_t)count(f, "fabric"), (int32_t)count(f, "batting"),
                                     choice(f, "rule", rules), &found, NULL));
    answer_count(f, "share", found.share);
    answer_text(f, "source", sources[found.source]);
}

static void prewash(struct figure *f)
{
    struct muslin_prewash_spec spec = MUSLIN_PREWASH_SPEC_INIT;
    struct muslin_prewash found = { .size = sizeof found };
    spec.needed_length = length(f, "needed");
    spec.usable_width = length(f, "usable");
    spec.across = (int32_t)count(f, "across");
    spec.along = (int32_t)count(f, "along");
    must(f, muslin_shrinkage_prewash(&spec, &found, NULL));
    answer_length(f, "unshrunk", found.unshrunk_length);
    answer_length(f, "washed_width", found.washed_width);
}

extern const struct question questions_shrinkage[];

const struct question questions_shrinkage[] = {
    { "change", change },
    { "wash", wash },
    { "size_to_make", size_to_make },
    { "washed_size", washed_size },
    { "from_sample", from_sample },
    { "governing", governing },
    { "prewash", prewash },
    { NULL, NULL },
};
