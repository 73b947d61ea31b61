/* reference_rows.h - the rows of the tables, their sources and notes, in the order of their numbers.
 *
 * SPDX-License-Identifier: MIT
 *
 * Rows are only ever added at the end of a table, and tables behind the last one: so numbers keep their meaning. */
#ifndef MUSLIN_REFERENCE_ROWS_H
#define MUSLIN_REFERENCE_ROWS_H

#include "muslin/reference.h"

#define INCHES(whole) ((whole) * MUSLIN_TICKS_PER_INCH)
/* Eighths of an inch. */
#define EIGHTHS(number) ((number) * MUSLIN_TICKS_PER_INCH / 8)
#define CENTIMETRES(whole) ((whole) * 10 * MUSLIN_TICKS_PER_MM)
/* Tenths of a millimetre. */
#define TENTHS(number) ((number) * MUSLIN_TICKS_PER_MM / 10)
/* Cut width of the strips in a bundle. */
#define TWO_AND_A_HALF EIGHTHS(20)

/* X(member, words) */
#define SOURCES(X) \
    X(practice, "common practice, no source") \
    X(memory, "from memory, no source") \
    X(two_charts, "Quilt sizes 101 (public article); Quilt size measurements (quilting magazine, 2013)") \
    X(basics, "Quilting basics: standard quilt sizes (public blog, 2012)") \
    X(conversion, "Fat quarter conversion (public forum)") \
    X(ten_inch, "Cutting up a 10 inch square (teacher's blog): 40 to 44 in a bundle") \
    X(measurements, "Measurements page (C. A. Taylor); Fat quarter conversion (public forum)") \
    X(use_40, "Binding math (public forum)") \
    X(use_42, "Double fold flange quilt binding (designer's blog, 2019)") \
    X(use_44, "52 4-inch and 20 3-inch squares (public forum)") \
    X(trade_body, "Mattress sizes (Better Sleep Council, consumer arm of the US mattress trade association, undated)") \
    X(two_answers, "Mattress sizes (Better Sleep Council, undated); Mattress dimensions (reference site, collected " \
                   "answers, undated)") \
    X(answers, "Mattress dimensions (reference site, collected answers, undated); Measurements page (C. A. Taylor, " \
               "undated)") \
    X(charts, "many published charts, as a collection of facts reports them; no single source") \
    X(slides, "Can you figure the amount of yardage to buy? (class slides, undated), worked back from its sizes") \
    X(crib_law, "16 CFR 1219, as a test laboratory quotes it (How to get a 16 CFR part 1219 test report, undated); " \
                "Cribs (sizes.com, undated)") \
    X(tuck_10, "Standard quilt sizes for mattresses (quilting magazine, 2022)") \
    X(tuck_15, "How to measure bedding (interiors page, undated); Measurements page (C. A. Taylor, undated)") \
    X(bed_drop, "How to make a bed quilt the right size (article, undated)") \
    X(three_lists, "Convert fabric measurements (tutorial site, undated); Fraction conversions (public blog, 2014); " \
                   "Measurements page (C. A. Taylor, undated)") \
    X(yard_thread, "How many inches are in (fraction) of a yard (public forum, undated)") \
    X(yard, "arithmetic: 36 in to the yard") \
    X(metre, "arithmetic: 100 cm to the metre") \
    X(stitches, "Understanding stitch length (public blog, undated)") \
    X(dial, "Convert metric stitch length to stitches per inch (public blog, undated); Understanding stitch length " \
            "(public blog, undated)") \
    X(small_parts, "16 CFR 1501.4 (eCFR, copy of 2021); Children's products: small parts regulation (law-firm note, " \
                   "undated)") \
    X(small_parts_age, "16 CFR 1501 (eCFR, copy of 2021)") \
    X(infants, "2022 safe sleep recommendations of the American Academy of Pediatrics (summary, 2022; State of " \
               "Missouri safe sleep site, undated)") \
    X(slats, "Cribs (sizes.com, undated); safe sleep recommendations (State of Missouri safe sleep site, undated)")

/* What a reader must know beside the figures: above all where lists disagree. */
#define NOTES(X) \
    X(no_note, "") \
    X(batting_36, "another list has 36 x 45 in") \
    X(batting_84, "another list has 84 x 96 in") \
    X(batting_124, "another list has 124 x 120 in") \
    X(batting_34, "the commoner figure is in the table of batting") \
    X(counts_vary, "counts vary by maker") \
    X(depth_met, "18 x 19 to 18 x 22 in are met: measure it") \
    X(crib_28, "28 x 52 in elsewhere; what the law fixes is in the table of cribs") \
    X(crib_27, "not verified (unnamed charts), measure the mattress: the trade body says 27 x 52 in") \
    X(twin_39, "39 x 75 in in many charts") \
    X(twin_38, "not verified (worked back from slides), measure the mattress: the trade body says 38 x 75 in") \
    X(full_53, "not verified (worked back from slides), measure the mattress: 53 x 75 in elsewhere") \
    X(full_54, "not verified (from memory), measure the mattress: 54 x 75 in elsewhere") \
    X(king_78, "78 x 80 in in older charts") \
    X(king_76, "not verified (unnamed charts), measure the mattress: 76 x 80 in in newer lists") \
    X(bed_memory, "not verified (from memory), measure the mattress") \
    X(law_not_met, "what the law fixes for a crib; no claim that a quilt or a bed meets it") \
    X(tucks, "sources disagree: 10, 12 and 15 in are met") \
    X(depths, "least and greatest depth; the source's depths leave gaps and touch") \
    X(drop_depth, "a drop as deep as the mattress ends at its lower edge") \
    X(drop_more, "so that the joint below the mattress is hidden; some go down to the floor") \
    X(spi_13, "about 13 stitches to the inch; a printed table gives 13, another 12") \
    X(spi_10, "10.16 stitches to the inch; a usual setting of a machine when it is switched on") \
    X(cylinder, "a test for parts a child could choke on, applied to things meant for children under 36 months: " \
                "inside diameter and greatest depth of a cylinder cut off slantwise; a part that fits into it whole " \
                "is too small. Paper, cloth, yarn, fuzz, elastic and string are left out of the test, and left out " \
                "of the test does not mean safe: long cords and loose trims are a hazard of their own. No claim of " \
                "meeting it is made here") \
    X(cylinder_least, "not verified (from memory): least depth of the same cylinder, where it is cut off") \
    X(three_years, "the rule is about choking and applies to things meant for children under 36 months (3 years)") \
    X(first_year, "no quilt, comforter or other loose or soft bedding in the sleep space of an " \
                  "infant under 12 months; a quilt of crib size is for play under supervision, or for the wall") \
    X(slat_gap, "background: the widest gap between the slats of a crib; a quilt has none to meet")

/* The rows of a table: X(member, source, note, name, width, length, count) */
#define BATTING(X) \
    X(craft, basics, batting_36, "craft", INCHES(34), INCHES(45), 0) \
    X(crib, two_charts, no_note, "crib", INCHES(45), INCHES(60), 0) \
    X(throw_size, memory, no_note, "throw", INCHES(60), INCHES(60), 0) \
    X(twin, memory, no_note, "twin", INCHES(72), INCHES(90), 0) \
    X(full, two_charts, batting_84, "full", INCHES(81), INCHES(96), 0) \
    X(queen, memory, no_note, "queen", INCHES(90), INCHES(108), 0) \
    X(king, two_charts, batting_124, "king", INCHES(120), INCHES(120), 0)

#define PRECUTS(X) \
    X(strips_40, conversion, counts_vary, "2 1/2 in strips, bundle of 40", INCHES(40), TWO_AND_A_HALF, 40) \
    X(strips_42, conversion, counts_vary, "2 1/2 in strips, bundle of 42", INCHES(40), TWO_AND_A_HALF, 42) \
    X(fives_42, conversion, counts_vary, "5 in squares, bundle of 42", INCHES(5), INCHES(5), 42) \
    X(tens_40, ten_inch, counts_vary, "10 in squares, bundle of 40", INCHES(10), INCHES(10), 40) \
    X(tens_42, memory, counts_vary, "10 in squares, bundle of 42", INCHES(10), INCHES(10), 42) \
    X(tens_44, ten_inch, counts_vary, "10 in squares, bundle of 44", INCHES(10), INCHES(10), 44) \
    X(quarter, measurements, depth_met, "fat quarter", INCHES(22), INCHES(18), 1) \
    X(quarter_narrow, measurements, depth_met, "fat quarter, narrow", INCHES(20), INCHES(18), 1) \
    X(quarter_metric, practice, no_note, "fat quarter, metric", CENTIMETRES(55), CENTIMETRES(50), 1) \
    X(eighth, practice, no_note, "fat eighth", INCHES(22), INCHES(9), 1) \
    X(eighth_narrow, practice, no_note, "fat eighth, narrow", INCHES(20), INCHES(9), 1) \
    X(narrow_strips, memory, counts_vary, "1 1/2 in strips, bundle of 40", INCHES(40), EIGHTHS(12), 40) \
    X(small_squares, memory, counts_vary, "2 1/2 in squares, bundle of 42", TWO_AND_A_HALF, TWO_AND_A_HALF, 42) \
    X(long_quarter, practice, no_note, "long quarter yard", INCHES(40), INCHES(9), 1) \
    X(quarter_metre, practice, no_note, "quarter metre", CENTIMETRES(110), CENTIMETRES(25), 1)

#define FABRIC_WIDTHS(X) \
    X(cotton_40, use_40, no_note, "quilting cotton, careful", INCHES(40), 0, 0) \
    X(cotton_42, use_42, no_note, "quilting cotton, usual", INCHES(42), 0, 0) \
    X(cotton_44, use_44, no_note, "quilting cotton, generous", INCHES(44), 0, 0) \
    X(wide_54, practice, no_note, "wide goods, 54 in", INCHES(54), 0, 0) \
    X(wide_60, practice, no_note, "wide goods, 60 in", INCHES(60), 0, 0) \
    X(wide_90, practice, no_note, "wide backing, 90 in", INCHES(90), 0, 0) \
    X(wide_108, practice, no_note, "wide backing, 108 in", INCHES(108), 0, 0)

#define MATTRESSES(X) \
    X(bed_crib, trade_body, crib_28, "crib (trade body)", INCHES(27), INCHES(52), 0) \
    X(bed_crib_charts, charts, crib_27, "crib (other lists)", INCHES(28), INCHES(52), 0) \
    X(bed_twin, two_answers, twin_39, "twin (trade body)", INCHES(38), INCHES(75), 0) \
    X(bed_twin_charts, slides, twin_38, "twin (many charts)", INCHES(39), INCHES(75), 0) \
    X(bed_twin_long, memory, bed_memory, "twin, extra long", INCHES(38), INCHES(80), 0) \
    X(bed_full, slides, full_53, "full or double (class slides)", INCHES(54), INCHES(75), 0) \
    X(bed_full_narrow, memory, full_54, "full or double (other lists)", INCHES(53), INCHES(75), 0) \
    X(bed_queen, answers, no_note, "queen", INCHES(60), INCHES(80), 0) \
    X(bed_king, answers, king_78, "king", INCHES(76), INCHES(80), 0) \
    X(bed_king_old, charts, king_76, "king (older charts)", INCHES(78), INCHES(80), 0) \
    X(bed_king_long, memory, bed_memory, "california king", INCHES(72), INCHES(84), 0)

#define CRIBS(X) \
    X(crib_inside, crib_law, law_not_met, "full-size crib, interior", INCHES(28), EIGHTHS(419), 0) \
    X(crib_least, crib_law, law_not_met, "full-size crib, least interior", EIGHTHS(219), EIGHTHS(414), 0) \
    X(crib_most, crib_law, law_not_met, "full-size crib, greatest interior", EIGHTHS(229), EIGHTHS(424), 0) \
    X(crib_mattress, crib_law, law_not_met, "crib mattress, at least", EIGHTHS(218), EIGHTHS(410), 0) \
    X(crib_thick, crib_law, law_not_met, "crib mattress, thickness at most", INCHES(6), 0, 0)

#define PILLOW_TUCKS(X) \
    X(tuck_short, tuck_10, tucks, "pillow tuck, 10 in", INCHES(10), 0, 0) \
    X(tuck_middle, practice, tucks, "pillow tuck, 12 in", INCHES(12), 0, 0) \
    X(tuck_long, tuck_15, tucks, "pillow tuck, 15 in or more", INCHES(15), 0, 0)

#define DROPS(X) \
    X(deep_7, tuck_10, depths, "mattress depth, standard", INCHES(7), INCHES(9), 0) \
    X(deep_10, tuck_10, depths, "mattress depth, deep", INCHES(10), INCHES(15), 0) \
    X(deep_15, tuck_10, depths, "mattress depth, extra deep", INCHES(15), INCHES(22), 0) \
    X(drop_coverlet, bed_drop, drop_depth, "drop of a coverlet, beyond the depth", 0, 0, 0) \
    X(drop_comforter, bed_drop, drop_more, "drop of a comforter, beyond the depth", INCHES(3), 0, 0)

#define YARD_FRACTIONS(X) \
    X(yard_36th, yard_thread, no_note, "1/36 yd", INCHES(1), 0, 0) \
    X(yard_8th, three_lists, no_note, "1/8 yd", EIGHTHS(36), 0, 0) \
    X(yard_6th, yard_thread, no_note, "1/6 yd", INCHES(6), 0, 0) \
    X(yard_4th, three_lists, no_note, "1/4 yd", INCHES(9), 0, 0) \
    X(metre_4th, metre, no_note, "1/4 m", CENTIMETRES(25), 0, 0) \
    X(yard_3rd, three_lists, no_note, "1/3 yd", INCHES(12), 0, 0) \
    X(yard_3_8ths, yard, no_note, "3/8 yd", EIGHTHS(108), 0, 0) \
    X(yard_half, three_lists, no_note, "1/2 yd", INCHES(18), 0, 0) \
    X(metre_half, metre, no_note, "1/2 m", CENTIMETRES(50), 0, 0) \
    X(yard_5_8ths, yard, no_note, "5/8 yd", EIGHTHS(180), 0, 0) \
    X(yard_2_3rds, yard, no_note, "2/3 yd", INCHES(24), 0, 0) \
    X(yard_3_4ths, three_lists, no_note, "3/4 yd", INCHES(27), 0, 0) \
    X(metre_3_4ths, metre, no_note, "3/4 m", CENTIMETRES(75), 0, 0) \
    X(yard_5_6ths, yard, no_note, "5/6 yd", INCHES(30), 0, 0) \
    X(yard_7_8ths, yard, no_note, "7/8 yd", EIGHTHS(252), 0, 0) \
    X(yard_whole, yard, no_note, "1 yd", INCHES(36), 0, 0) \
    X(metre_whole, metre, no_note, "1 m", CENTIMETRES(100), 0, 0)

#define STITCHES(X) \
    X(stitch_short, stitches, spi_13, "piecing stitch, 2.0 mm", TENTHS(20), 0, 0) \
    X(stitch_usual, dial, spi_10, "piecing stitch, 2.5 mm", TENTHS(25), 0, 0)

#define CAUTIONS(X) \
    X(parts_cylinder, small_parts, cylinder, "small-parts cylinder", EIGHTHS(10), EIGHTHS(18), 0) \
    X(parts_cylinder_short, memory, cylinder_least, "small-parts cylinder, least depth", INCHES(1), 0, 0) \
    X(parts_age, small_parts_age, three_years, "small parts: for children under so many months", 0, 0, 36) \
    X(infant_age, infants, first_year, "no loose bedding under so many months", 0, 0, 12) \
    X(crib_slats, slats, slat_gap, "crib slats, gap at most", EIGHTHS(19), 0, 0)

#define OTHER_BATTING(X) \
    X(other_craft, charts, batting_34, "craft", INCHES(36), INCHES(45), 0) \
    X(other_full, basics, batting_34, "full", INCHES(84), INCHES(96), 0) \
    X(other_king, basics, batting_34, "king", INCHES(124), INCHES(120), 0)

/* All tables, first to last, as enum muslin_table numbers them: T(rows, X). */
#define TABLES(T, X) \
    T(BATTING, X) T(PRECUTS, X) T(FABRIC_WIDTHS, X) T(MATTRESSES, X) T(CRIBS, X) T(PILLOW_TUCKS, X) T(DROPS, X) \
    T(YARD_FRACTIONS, X) T(STITCHES, X) T(CAUTIONS, X) T(OTHER_BATTING, X)

#endif
