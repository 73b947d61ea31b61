/* base_constants.h - the constants of the headers that are no enum's, in their order. Written by
 * tests/abi/describe_api.py: change the headers, not this file.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_BASE_CONSTANTS_H
#define MUSLIN_BASE_CONSTANTS_H

#define CONSTANTS(X) \
    X(version_major, "VERSION_MAJOR", INT64_C(1)) \
    X(version_minor, "VERSION_MINOR", INT64_C(1)) \
    X(version_patch, "VERSION_PATCH", INT64_C(0)) \
    X(version, "VERSION", INT64_C(1001000)) \
    X(ticks_per_inch, "TICKS_PER_INCH", INT64_C(8128)) \
    X(ticks_per_mm, "TICKS_PER_MM", INT64_C(320)) \
    X(length_max, "LENGTH_MAX", INT64_C(4611686018427387903)) \
    X(size_max, "SIZE_MAX", INT64_C(1073741824)) \
    X(count_max, "COUNT_MAX", INT64_C(2147483647)) \
    X(ppm, "PPM", INT64_C(1000000)) \
    X(format_unicode, "FORMAT_UNICODE", INT64_C(1)) \
    X(format_bare, "FORMAT_BARE", INT64_C(2)) \
    X(quarter_inch, "QUARTER_INCH", INT64_C(2032)) \
    X(usable_width_usual, "USABLE_WIDTH_USUAL", INT64_C(325120)) \
    X(cloth_may_turn, "CLOTH_MAY_TURN", INT64_C(1)) \
    X(motif_any_start, "MOTIF_ANY_START", INT64_C(1)) \
    X(motif_any_across, "MOTIF_ANY_ACROSS", INT64_C(2)) \
    X(stack_any_start, "STACK_ANY_START", INT64_C(1)) \
    X(yield_from_one_end, "YIELD_FROM_ONE_END", INT64_C(1)) \
    X(cutlist_rows_max, "CUTLIST_ROWS_MAX", INT64_C(4096)) \
    X(cutlist_piece_may_turn, "CUTLIST_PIECE_MAY_TURN", INT64_C(1)) \
    X(shape_size_max, "SHAPE_SIZE_MAX", INT64_C(1048576)) \
    X(shape_seam_max, "SHAPE_SEAM_MAX", INT64_C(131072)) \
    X(shape_corners_max, "SHAPE_CORNERS_MAX", INT64_C(1024)) \
    X(shape_outline, "SHAPE_OUTLINE", INT64_C(-1)) \
    X(template_reach_max, "TEMPLATE_REACH_MAX", INT64_C(4194304)) \
    X(unit_size_max, "UNIT_SIZE_MAX", INT64_C(67108864)) \
    X(border_lengthwise, "BORDER_LENGTHWISE", INT64_C(1)) \
    X(setting_sashed_frame, "SETTING_SASHED_FRAME", INT64_C(1)) \
    X(setting_sashed_cornerstones, "SETTING_SASHED_CORNERSTONES", INT64_C(2)) \
    X(setting_line_frame, "SETTING_LINE_FRAME", INT64_C(1)) \
    X(setting_point_diagonal_first, "SETTING_POINT_DIAGONAL_FIRST", INT64_C(1)) \
    X(rounds_max, "ROUNDS_MAX", INT64_C(1000)) \
    X(logcabin_blocks_max, "LOGCABIN_BLOCKS_MAX", INT64_C(100000)) \
    X(logcabin_given_cut, "LOGCABIN_GIVEN_CUT", INT64_C(1)) \
    X(medallion_equal_coping, "MEDALLION_EQUAL_COPING", INT64_C(1)) \
    X(point_border_squares_max, "POINT_BORDER_SQUARES_MAX", INT64_C(536870912)) \
    X(bed_foot_given, "BED_FOOT_GIVEN", INT64_C(1)) \
    X(fit_allow_straight, "FIT_ALLOW_STRAIGHT", INT64_C(1)) \
    X(fit_allow_sashed, "FIT_ALLOW_SASHED", INT64_C(2)) \
    X(fit_allow_framed, "FIT_ALLOW_FRAMED", INT64_C(4)) \
    X(fit_allow_on_point, "FIT_ALLOW_ON_POINT", INT64_C(8)) \
    X(fit_across_frame, "FIT_ACROSS_FRAME", INT64_C(1)) \
    X(bias_blunt_ends, "BIAS_BLUNT_ENDS", INT64_C(1)) \
    X(batting_fixed, "BATTING_FIXED", INT64_C(1)) \
    X(backing_round_panels, "BACKING_ROUND_PANELS", INT64_C(1)) \
    X(stripquilt_segments_max, "STRIPQUILT_SEGMENTS_MAX", INT64_C(32)) \
    X(thread_ready_bobbins, "THREAD_READY_BOBBINS", INT64_C(1)) \
    X(money_max, "MONEY_MAX", INT64_C(4611686018427387903)) \
    X(quilt_depth_max, "QUILT_DEPTH_MAX", INT64_C(4096)) \
    X(quilt_point_depth_max, "QUILT_POINT_DEPTH_MAX", INT64_C(4)) \
    X(quilt_corners_max, "QUILT_CORNERS_MAX", INT64_C(32)) \
    X(quilt_join_keeps_order, "QUILT_JOIN_KEEPS_ORDER", INT64_C(1)) \
    X(quilt_sashed_frame, "QUILT_SASHED_FRAME", INT64_C(1)) \
    X(quilt_sashed_cornerstones, "QUILT_SASHED_CORNERSTONES", INT64_C(2)) \
    X(edge_prints_turns_half, "EDGE_PRINTS_TURNS_HALF", INT64_C(1)) \
    X(edge_prints_turns_quarter, "EDGE_PRINTS_TURNS_QUARTER", INT64_C(2)) \
    X(cutplan_rows_max, "CUTPLAN_ROWS_MAX", INT64_C(4096)) \
    X(cutplan_count_max, "CUTPLAN_COUNT_MAX", INT64_C(1000000)) \
    X(blank_may_turn, "BLANK_MAY_TURN", INT64_C(1)) \
    X(cutplan_no_panels, "CUTPLAN_NO_PANELS", INT64_C(1)) \
    X(cutplan_one_height, "CUTPLAN_ONE_HEIGHT", INT64_C(2)) \
    X(cutplan_own_strips, "CUTPLAN_OWN_STRIPS", INT64_C(4)) \
    X(cutplan_stacked, "CUTPLAN_STACKED", INT64_C(8)) \
    X(cutplan_first_cut_across, "CUTPLAN_FIRST_CUT_ACROSS", INT64_C(16)) \
    X(cutplan_folded, "CUTPLAN_FOLDED", INT64_C(32)) \
    X(cutplan_by_priority, "CUTPLAN_BY_PRIORITY", INT64_C(64))

#endif
