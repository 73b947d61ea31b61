# SPDX-License-Identifier: MIT
"""The C side: structs, and what every function takes and returns.

Written by generate.py from lib/abi/api.json: change that, not this file.
"""
import ctypes
from typing import Any, Dict, Tuple

__version__ = "1.1.0"
VERSION = 1001000

muslin_progress = ctypes.CFUNCTYPE(ctypes.c_int32, ctypes.c_void_p, ctypes.c_int64, ctypes.c_int64, ctypes.c_int64)


class muslin_problem(ctypes.Structure):
    """muslin/base.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("status", ctypes.c_int32),
        ("argument", ctypes.c_int32),
        ("at", ctypes.c_int64),
        ("bytes", ctypes.c_int64),
        ("value", ctypes.c_int64),
        ("limit", ctypes.c_int64),
        ("text", ctypes.c_char * 200),
    ]


class muslin_allocator(ctypes.Structure):
    """muslin/base.h"""

    _fields_ = [
        ("alloc", ctypes.CFUNCTYPE(ctypes.c_void_p, ctypes.c_void_p, ctypes.c_size_t)),
        ("realloc",
         ctypes.CFUNCTYPE(ctypes.c_void_p, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_size_t, ctypes.c_size_t)),
        ("free", ctypes.CFUNCTYPE(None, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_size_t)),
        ("context", ctypes.c_void_p),
    ]


class muslin_rounding_spec(ctypes.Structure):
    """muslin/length.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("grid", ctypes.c_int64),
        ("tolerance", ctypes.c_int64),
        ("direction", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_rounded(ctypes.Structure):
    """muslin/length.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("value", ctypes.c_int64),
        ("error", ctypes.c_int64),
        ("exact", ctypes.c_int32),
        ("on_tick", ctypes.c_int32),
    ]


class muslin_parse_spec(ctypes.Structure):
    """muslin/length.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("default_unit", ctypes.c_int32),
        ("decimal_sign", ctypes.c_int32),
    ]


class muslin_parsed(ctypes.Structure):
    """muslin/length.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("value", ctypes.c_int64),
        ("exact", ctypes.c_int32),
        ("unit", ctypes.c_int32),
    ]


class muslin_format_spec(ctypes.Structure):
    """muslin/length.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("style", ctypes.c_int32),
        ("denominator", ctypes.c_int32),
        ("decimals", ctypes.c_int32),
        ("decimal_sign", ctypes.c_int32),
        ("direction", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_seam_spec(ctypes.Structure):
    """muslin/seam.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_piece_spec(ctypes.Structure):
    """muslin/seam.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("left", ctypes.c_int64),
        ("right", ctypes.c_int64),
        ("top", ctypes.c_int64),
        ("bottom", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_piece(ctypes.Structure):
    """muslin/seam.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_width", ctypes.c_int64),
        ("cut_height", ctypes.c_int64),
        ("cut_area", ctypes.c_int64),
        ("finished_area", ctypes.c_int64),
        ("seam_share", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_sewn_row(ctypes.Structure):
    """muslin/seam.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("seams", ctypes.c_int64),
        ("cut_total", ctypes.c_int64),
        ("eaten", ctypes.c_int64),
        ("unfinished", ctypes.c_int64),
        ("finished", ctypes.c_int64),
        ("seam_share", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_calibration(ctypes.Structure):
    """muslin/seam.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("seams", ctypes.c_int64),
        ("planned", ctypes.c_int64),
        ("shortfall", ctypes.c_int64),
        ("per_seam_numerator", ctypes.c_int64),
        ("per_seam_denominator", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("effective_numerator", ctypes.c_int64),
        ("effective_denominator", ctypes.c_int64),
        ("effective_allowance", ctypes.c_int64),
        ("sew_at", ctypes.c_int64),
    ]


class muslin_carry_on_spec(ctypes.Structure):
    """muslin/seam.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_total", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("measured", ctypes.c_int64),
        ("later_cut", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_accuracy_row_spec(ctypes.Structure):
    """muslin/accuracy.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("seams", ctypes.c_int64),
        ("seam_error", ctypes.c_int64),
        ("cut_error", ctypes.c_int64),
    ]


class muslin_accuracy_row_errors(ctypes.Structure):
    """muslin/accuracy.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cuts", ctypes.c_int64),
        ("from_seams", ctypes.c_int64),
        ("from_cuts", ctypes.c_int64),
        ("worst", ctypes.c_int64),
        ("likely", ctypes.c_int64),
    ]


class muslin_accuracy_top_spec(ctypes.Structure):
    """muslin/accuracy.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces_across", ctypes.c_int64),
        ("pieces_down", ctypes.c_int64),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("seam_error", ctypes.c_int64),
        ("cut_error", ctypes.c_int64),
    ]


class muslin_accuracy_top_errors(ctypes.Structure):
    """muslin/accuracy.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("block_seams_across", ctypes.c_int64),
        ("block_width_worst", ctypes.c_int64),
        ("block_width_likely", ctypes.c_int64),
        ("block_seams_down", ctypes.c_int64),
        ("block_height_worst", ctypes.c_int64),
        ("block_height_likely", ctypes.c_int64),
        ("top_seams_across", ctypes.c_int64),
        ("top_width_worst", ctypes.c_int64),
        ("top_width_likely", ctypes.c_int64),
        ("top_seams_down", ctypes.c_int64),
        ("top_length_worst", ctypes.c_int64),
        ("top_length_likely", ctypes.c_int64),
    ]


class muslin_accuracy_meet_spec(ctypes.Structure):
    """muslin/accuracy.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("seams", ctypes.c_int64),
        ("seam_error", ctypes.c_int64),
        ("cut_error", ctypes.c_int64),
        ("tolerance", ctypes.c_int64),
    ]


class muslin_accuracy_meeting(ctypes.Structure):
    """muslin/accuracy.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("worst", ctypes.c_int64),
        ("likely", ctypes.c_int64),
        ("first_missed", ctypes.c_int64),
        ("likely_first_missed", ctypes.c_int64),
        ("largest_seam_error", ctypes.c_int64),
        ("likely_largest_seam_error", ctypes.c_int64),
        ("meets", ctypes.c_int32),
        ("likely_meets", ctypes.c_int32),
        ("cuts_meet", ctypes.c_int32),
        ("likely_cuts_meet", ctypes.c_int32),
        ("twice_likely_first_missed", ctypes.c_int64),
        ("twice_likely_largest_seam_error", ctypes.c_int64),
        ("twice_likely_meets", ctypes.c_int32),
        ("twice_likely_cuts_meet", ctypes.c_int32),
    ]


class muslin_wash_spec(ctypes.Structure):
    """muslin/shrinkage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("before_width", ctypes.c_int64),
        ("after_width", ctypes.c_int64),
        ("before_length", ctypes.c_int64),
        ("after_length", ctypes.c_int64),
    ]


class muslin_wash_change(ctypes.Structure):
    """muslin/shrinkage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("area_before", ctypes.c_int64),
        ("area_after", ctypes.c_int64),
        ("change_across", ctypes.c_int32),
        ("change_along", ctypes.c_int32),
        ("change_area", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_shrinkage_spec(ctypes.Structure):
    """muslin/shrinkage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("quilting_across", ctypes.c_int32),
        ("quilting_along", ctypes.c_int32),
        ("washing_across", ctypes.c_int32),
        ("washing_along", ctypes.c_int32),
    ]


class muslin_size_to_make(ctypes.Structure):
    """muslin/shrinkage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("make_width", ctypes.c_int64),
        ("make_length", ctypes.c_int64),
        ("quilted_width", ctypes.c_int64),
        ("quilted_length", ctypes.c_int64),
        ("washed_width", ctypes.c_int64),
        ("washed_length", ctypes.c_int64),
        ("multiplied_width", ctypes.c_int64),
        ("multiplied_length", ctypes.c_int64),
        ("short_width", ctypes.c_int64),
        ("short_length", ctypes.c_int64),
        ("width_exact", ctypes.c_int32),
        ("length_exact", ctypes.c_int32),
    ]


class muslin_washed_size(ctypes.Structure):
    """muslin/shrinkage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("quilted_width", ctypes.c_int64),
        ("quilted_length", ctypes.c_int64),
        ("washed_width", ctypes.c_int64),
        ("washed_length", ctypes.c_int64),
        ("change_across", ctypes.c_int32),
        ("change_along", ctypes.c_int32),
        ("change_area", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_governing(ctypes.Structure):
    """muslin/shrinkage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("share", ctypes.c_int32),
        ("source", ctypes.c_int32),
    ]


class muslin_prewash_spec(ctypes.Structure):
    """muslin/shrinkage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("needed_length", ctypes.c_int64),
        ("usable_width", ctypes.c_int64),
        ("across", ctypes.c_int32),
        ("along", ctypes.c_int32),
    ]


class muslin_prewash(ctypes.Structure):
    """muslin/shrinkage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("unshrunk_length", ctypes.c_int64),
        ("washed_width", ctypes.c_int64),
        ("lost_length", ctypes.c_int64),
        ("lost_width", ctypes.c_int64),
    ]


class muslin_purchase_spec(ctypes.Structure):
    """muslin/fabric.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("needed", ctypes.c_int64),
        ("extra", ctypes.c_int64),
        ("step", ctypes.c_int64),
        ("shrinkage", ctypes.c_int32),
        ("extra_share", ctypes.c_int32),
    ]


class muslin_purchase(ctypes.Structure):
    """muslin/fabric.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("needed", ctypes.c_int64),
        ("unshrunk", ctypes.c_int64),
        ("with_extra", ctypes.c_int64),
        ("bought", ctypes.c_int64),
        ("steps", ctypes.c_int64),
        ("spare", ctypes.c_int64),
        ("less_by", ctypes.c_int64),
    ]


class muslin_cloth_spec(ctypes.Structure):
    """muslin/fabric.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("piece_width", ctypes.c_int64),
        ("piece_length", ctypes.c_int64),
        ("loss_across", ctypes.c_int64),
        ("loss_along", ctypes.c_int64),
    ]


class muslin_cloth_pieces(ctypes.Structure):
    """muslin/fabric.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("across", ctypes.c_int64),
        ("along", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("turned", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
        ("left_across", ctypes.c_int64),
        ("left_along", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("wider_for_one", ctypes.c_int64),
        ("longer_for_one", ctypes.c_int64),
    ]


class muslin_strips_spec(ctypes.Structure):
    """muslin/fabric.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("piece_across", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
        ("usable_width", ctypes.c_int64),
        ("end_loss", ctypes.c_int64),
        ("straightening", ctypes.c_int64),
    ]


class muslin_strips(ctypes.Structure):
    """muslin/fabric.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("per_strip", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("left_per_strip", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("wider_for_one", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
    ]


class muslin_stock_spec(ctypes.Structure):
    """muslin/fabric.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("pink_depth", ctypes.c_int64),
        ("edge", ctypes.c_int32),
        ("care", ctypes.c_int32),
        ("print", ctypes.c_int32),
        ("kind", ctypes.c_int32),
    ]


class muslin_stock_yield(ctypes.Structure):
    """muslin/fabric.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("per_piece", ctypes.c_int64),
        ("in_hand", ctypes.c_int64),
        ("pieces_needed", ctypes.c_int64),
        ("pieces_missing", ctypes.c_int64),
        ("strip_length", ctypes.c_int64),
        ("left_over", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
    ]


class muslin_motif_spec(ctypes.Structure):
    """muslin/motif.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("repeat_length", ctypes.c_int64),
        ("repeat_width", ctypes.c_int64),
        ("usable_width", ctypes.c_int64),
        ("cut_width", ctypes.c_int64),
        ("cut_length", ctypes.c_int64),
        ("motifs", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
    ]


class muslin_motif(ctypes.Structure):
    """muslin/motif.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("repeats_across_each", ctypes.c_int64),
        ("repeats_along_each", ctypes.c_int64),
        ("per_row", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("repeats", ctypes.c_int64),
        ("repeats_bought", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("per_row_certain", ctypes.c_int64),
        ("per_row_lucky", ctypes.c_int64),
        ("rows_certain", ctypes.c_int64),
        ("rows_lucky", ctypes.c_int64),
        ("row_length", ctypes.c_int64),
        ("waste_per_row", ctypes.c_int64),
        ("shift", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("cloth_certain", ctypes.c_int64),
        ("cloth_lucky", ctypes.c_int64),
        ("lucky_within", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("wider_for_less", ctypes.c_int64),
        ("wider_rows", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
        ("cloth_least", ctypes.c_int64),
    ]


class muslin_motif_yield(ctypes.Structure):
    """muslin/motif.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("rows", ctypes.c_int64),
        ("repeats", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("pieces_certain", ctypes.c_int64),
        ("pieces_lucky", ctypes.c_int64),
        ("left_over", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("longer_for_one", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
    ]


class muslin_stack_spec(ctypes.Structure):
    """muslin/motif.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("repeat_length", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
        ("straightening", ctypes.c_int64),
        ("per_strip", ctypes.c_int64),
        ("layers", ctypes.c_int64),
        ("stacks", ctypes.c_int64),
    ]


class muslin_stack(ctypes.Structure):
    """muslin/motif.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("strips", ctypes.c_int64),
        ("strips_in_layers", ctypes.c_int64),
        ("repeats_per_layer", ctypes.c_int64),
        ("repeats", ctypes.c_int64),
        ("repeats_bought", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("spare_stacks", ctypes.c_int64),
        ("layer_length", ctypes.c_int64),
        ("used_length", ctypes.c_int64),
        ("shift", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("left_over", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
        ("cloth_least", ctypes.c_int64),
    ]


class muslin_reference(ctypes.Structure):
    """muslin/reference.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("count", ctypes.c_int64),
    ]


class muslin_yield_spec(ctypes.Structure):
    """muslin/stripset.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("strip_length", ctypes.c_int64),
        ("segment_cut", ctypes.c_int64),
        ("end_trim", ctypes.c_int64),
        ("resquare_loss", ctypes.c_int64),
        ("resquare_every", ctypes.c_int64),
        ("fold_clear", ctypes.c_int64),
    ]


class muslin_yield(ctypes.Structure):
    """muslin/stripset.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("segments", ctypes.c_int64),
        ("per_end", ctypes.c_int64),
        ("resquarings", ctypes.c_int64),
        ("least_length", ctypes.c_int64),
        ("left_over", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("longer_for_more", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
        ("from_one_end", ctypes.c_int64),
    ]


class muslin_need_spec(ctypes.Structure):
    """muslin/stripset.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("segments", ctypes.c_int64),
        ("segments_per_set", ctypes.c_int64),
        ("strips_per_set", ctypes.c_int64),
        ("strips_per_bundle", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
    ]


class muslin_need(ctypes.Structure):
    """muslin/stripset.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("sets", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("bundles", ctypes.c_int64),
        ("spare_segments", ctypes.c_int64),
        ("spare_strips", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
    ]


class muslin_harvest_spec(ctypes.Structure):
    """muslin/stripset.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("strips", ctypes.c_int64),
        ("strips_per_set", ctypes.c_int64),
        ("segments_per_set", ctypes.c_int64),
        ("segments_per_block", ctypes.c_int64),
        ("blocks_per_top", ctypes.c_int64),
    ]


class muslin_harvest(ctypes.Structure):
    """muslin/stripset.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("sets", ctypes.c_int64),
        ("segments", ctypes.c_int64),
        ("blocks", ctypes.c_int64),
        ("tops", ctypes.c_int64),
        ("sets_used", ctypes.c_int64),
        ("strips_used", ctypes.c_int64),
        ("strips_left", ctypes.c_int64),
        ("segments_left", ctypes.c_int64),
        ("blocks_left", ctypes.c_int64),
        ("strips_for_one_more", ctypes.c_int64),
    ]


class muslin_stripset_print(ctypes.Structure):
    """muslin/stripset.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("in_hand", ctypes.c_int64),
        ("per_set", ctypes.c_int64),
        ("left_over", ctypes.c_int64),
    ]


class muslin_cutlist_piece_spec(ctypes.Structure):
    """muslin/cutlist.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_width", ctypes.c_int64),
        ("cut_length", ctypes.c_int64),
        ("count", ctypes.c_int64),
    ]


class muslin_cutlist_row(ctypes.Structure):
    """muslin/cutlist.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("per_strip", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
        ("piece_cut", ctypes.c_int64),
        ("strips_length", ctypes.c_int64),
        ("first_stock", ctypes.c_int64),
        ("last_stock", ctypes.c_int64),
        ("turned", ctypes.c_int32),
        ("trimmed", ctypes.c_int32),
    ]


class muslin_cutlist_spec(ctypes.Structure):
    """muslin/cutlist.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("usable_width", ctypes.c_int64),
        ("end_loss", ctypes.c_int64),
        ("straightening", ctypes.c_int64),
        ("print", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_cutlist_yardage(ctypes.Structure):
    """muslin/cutlist.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("area_bound", ctypes.c_int64),
        ("narrowest_width", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("narrowest_as_cut", ctypes.c_int64),
        ("wider_for_less", ctypes.c_int64),
        ("wider_saves", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("turned", ctypes.c_int32),
    ]


class muslin_cutlist_stock(ctypes.Structure):
    """muslin/cutlist.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("stock_needed", ctypes.c_int64),
        ("stock_missing", ctypes.c_int64),
        ("stock_left", ctypes.c_int64),
        ("area_bound", ctypes.c_int64),
        ("left_over", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("as_cut_narrower_by", ctypes.c_int64),
        ("as_cut_shorter_by", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("trimmed", ctypes.c_int32),
        ("turned", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("rest_pieces", ctypes.c_int64),
    ]


class muslin_cutlist_part(ctypes.Structure):
    """muslin/cutlist.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("row", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("first_stock", ctypes.c_int64),
        ("last_stock", ctypes.c_int64),
        ("begins_at", ctypes.c_int64),
    ]


class muslin_cutlist_lists(ctypes.Structure):
    """muslin/cutlist.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("lists", ctypes.c_int64),
        ("stock_used", ctypes.c_int64),
        ("stock_left", ctypes.c_int64),
        ("stock_for_one_more", ctypes.c_int64),
        ("left_over", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("as_cut_narrower_by", ctypes.c_int64),
        ("as_cut_shorter_by", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
    ]


class muslin_substitution(ctypes.Structure):
    """muslin/cutlist.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("unfit_row", ctypes.c_int64),
        ("stock_needed", ctypes.c_int64),
        ("stock_missing", ctypes.c_int64),
        ("fabrics", ctypes.c_int64),
        ("per_fabric_least", ctypes.c_int64),
        ("per_fabric_most", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("cloth_missing", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("possible", ctypes.c_int32),
        ("enough", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
        ("turned", ctypes.c_int32),
        ("rest_pieces", ctypes.c_int64),
    ]


class muslin_corner_spec(ctypes.Structure):
    """muslin/shape.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("piece", ctypes.c_int32),
        ("tip", ctypes.c_int32),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("centre_x", ctypes.c_int64),
        ("centre_y", ctypes.c_int64),
        ("radius", ctypes.c_int64),
        ("curve", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_shape(ctypes.Structure):
    """muslin/shape.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("corners", ctypes.c_int64),
        ("outside_edges", ctypes.c_int64),
        ("inside_edges", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("finished_area", ctypes.c_int64),
        ("has_arcs", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_template_corner(ctypes.Structure):
    """muslin/shape.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("corner", ctypes.c_int32),
        ("curve", ctypes.c_int32),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("centre_x", ctypes.c_int64),
        ("centre_y", ctypes.c_int64),
        ("radius", ctypes.c_int64),
        ("has_seam", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_shape_piece_spec(ctypes.Structure):
    """muslin/shape.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("piece", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("grain_x", ctypes.c_int64),
        ("grain_y", ctypes.c_int64),
        ("margin", ctypes.c_int64),
    ]


class muslin_shape_piece(ctypes.Structure):
    """muslin/shape.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished_area", ctypes.c_int64),
        ("cut_area", ctypes.c_int64),
        ("cut_width", ctypes.c_int64),
        ("cut_height", ctypes.c_int64),
        ("longest", ctypes.c_int64),
        ("grain_x", ctypes.c_int64),
        ("grain_y", ctypes.c_int64),
        ("rectangle_along", ctypes.c_int64),
        ("rectangle_across", ctypes.c_int64),
        ("longest_corner", ctypes.c_int32),
        ("grain_corner", ctypes.c_int32),
        ("outside_edges", ctypes.c_int32),
        ("bias_edges", ctypes.c_int32),
        ("has_arcs", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
    ]


class muslin_quarter_circle_spec(ctypes.Structure):
    """muslin/shape.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished", ctypes.c_int64),
        ("radius", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_quarter_circle(ctypes.Structure):
    """muslin/shape.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("convex_cut_square", ctypes.c_int64),
        ("convex_cut_radius", ctypes.c_int64),
        ("convex_cut_leg", ctypes.c_int64),
        ("concave_cut_square", ctypes.c_int64),
        ("concave_cut_radius", ctypes.c_int64),
        ("concave_cut_leg", ctypes.c_int64),
        ("centre_inset", ctypes.c_int64),
        ("seam_length", ctypes.c_int64),
    ]


class muslin_regular_polygon(ctypes.Structure):
    """muslin/shape.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("side", ctypes.c_int64),
        ("flats", ctypes.c_int64),
        ("corners", ctypes.c_int64),
        ("centre", ctypes.c_int64),
        ("area", ctypes.c_int64),
    ]


class muslin_unit_spec(ctypes.Structure):
    """muslin/unit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("corner", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("half_addition", ctypes.c_int64),
        ("quarter_addition", ctypes.c_int64),
        ("trim_room", ctypes.c_int64),
        ("grid", ctypes.c_int64),
        ("tolerance", ctypes.c_int64),
        ("units", ctypes.c_int64),
        ("mirrored", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("method", ctypes.c_int32),
        ("policy", ctypes.c_int32),
        ("tip", ctypes.c_int32),
        ("direction", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_unit_plan(ctypes.Structure):
    """muslin/unit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("units_per_recipe", ctypes.c_int64),
        ("mirrored_per_recipe", ctypes.c_int64),
        ("recipes", ctypes.c_int64),
        ("mirrored_recipes", ctypes.c_int64),
        ("spare_units", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("cut_area", ctypes.c_int64),
        ("finished_area", ctypes.c_int64),
        ("allowance_area", ctypes.c_int64),
        ("waste_area", ctypes.c_int64),
        ("seam_offset", ctypes.c_int64),
        ("bonus_units", ctypes.c_int64),
        ("bonus_unfinished", ctypes.c_int64),
        ("bias_outside", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
        ("star_wider_by", ctypes.c_int64),
    ]


class muslin_unit_piece(ctypes.Structure):
    """muslin/unit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_width", ctypes.c_int64),
        ("cut_height", ctypes.c_int64),
        ("surplus_width", ctypes.c_int64),
        ("surplus_height", ctypes.c_int64),
        ("pitch", ctypes.c_int64),
        ("wide_edge", ctypes.c_int64),
        ("narrow_edge", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("total", ctypes.c_int64),
        ("region", ctypes.c_int32),
        ("shape", ctypes.c_int32),
        ("again", ctypes.c_int32),
        ("gives", ctypes.c_int32),
        ("grain", ctypes.c_int32),
        ("hand", ctypes.c_int32),
        ("angle", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("star_excess", ctypes.c_int64),
    ]


class muslin_unit_stock_spec(ctypes.Structure):
    """muslin/unit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("per_region", ctypes.c_int64),
        ("end_loss", ctypes.c_int64),
        ("finished_grid", ctypes.c_int64),
    ]


class muslin_unit_yield(ctypes.Structure):
    """muslin/unit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("cut_spare", ctypes.c_int64),
        ("recipes", ctypes.c_int64),
        ("units", ctypes.c_int64),
        ("units_of_one", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("method", ctypes.c_int32),
    ]


class muslin_unit_corner(ctypes.Structure):
    """muslin/unit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("patch", ctypes.c_int32),
        ("region", ctypes.c_int32),
        ("corner", ctypes.c_int32),
        ("stage", ctypes.c_int32),
    ]


class muslin_unit_step(ctypes.Structure):
    """muslin/unit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("measure", ctypes.c_int64),
        ("measure_height", ctypes.c_int64),
        ("from_corner", ctypes.c_int64),
        ("step", ctypes.c_int32),
        ("piece", ctypes.c_int32),
        ("other", ctypes.c_int32),
        ("times", ctypes.c_int32),
        ("region", ctypes.c_int32),
        ("angle", ctypes.c_int32),
    ]


class muslin_setting_spec(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("block_width", ctypes.c_int64),
        ("block_height", ctypes.c_int64),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("turning", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("square_tolerance", ctypes.c_int64),
    ]


class muslin_setting(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("blocks", ctypes.c_int64),
        ("blocks_turned", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_length", ctypes.c_int64),
        ("block_seams", ctypes.c_int64),
        ("row_seams", ctypes.c_int64),
    ]


class muslin_block_spec(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("segment_cut", ctypes.c_int64),
        ("set_unfinished", ctypes.c_int64),
        ("segments", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_block(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("segment_finished", ctypes.c_int64),
        ("square_segment_cut", ctypes.c_int64),
        ("square", ctypes.c_int32),
        ("square_exact", ctypes.c_int32),
    ]


class muslin_run_spec(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("length", ctypes.c_int64),
        ("strip_length", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("join", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_run(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("strips", ctypes.c_int64),
        ("joins", ctypes.c_int64),
        ("loss_per_join", ctypes.c_int64),
        ("joined", ctypes.c_int64),
        ("spare", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
    ]


class muslin_border_spec(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_length", ctypes.c_int64),
        ("finished_border", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("usable_width", ctypes.c_int64),
        ("mitre_extra", ctypes.c_int64),
        ("style", ctypes.c_int32),
        ("join", ctypes.c_int32),
    ]


class muslin_border(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_width", ctypes.c_int64),
        ("side_cut_length", ctypes.c_int64),
        ("top_cut_length", ctypes.c_int64),
        ("cornerstone_cut", ctypes.c_int64),
        ("total_length", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("joins", ctypes.c_int64),
        ("loss_per_join", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("spare", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_length", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_uint32),
    ]


class muslin_setting_sashed_spec(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("block_width", ctypes.c_int64),
        ("block_height", ctypes.c_int64),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("sash_width", ctypes.c_int64),
        ("sash_height", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("usable_width", ctypes.c_int64),
        ("end_loss", ctypes.c_int64),
    ]


class muslin_setting_sashed_plan(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("blocks", ctypes.c_int64),
        ("vertical_sashes", ctypes.c_int64),
        ("horizontal_sashes", ctypes.c_int64),
        ("cornerstones", ctypes.c_int64),
        ("vertical_cut_width", ctypes.c_int64),
        ("vertical_cut_length", ctypes.c_int64),
        ("horizontal_cut_width", ctypes.c_int64),
        ("horizontal_cut_length", ctypes.c_int64),
        ("cornerstone_cut_width", ctypes.c_int64),
        ("cornerstone_cut_height", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_length", ctypes.c_int64),
        ("block_unfinished_width", ctypes.c_int64),
        ("block_unfinished_height", ctypes.c_int64),
    ]


class muslin_sash_piece(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("cut_length", ctypes.c_int64),
        ("cut_width", ctypes.c_int64),
        ("per_strip", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("joins", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
    ]


class muslin_setting_alternate_spec(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("block_width", ctypes.c_int64),
        ("block_height", ctypes.c_int64),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("first", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_setting_alternate_plan(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieced", ctypes.c_int64),
        ("plain", ctypes.c_int64),
        ("plain_cut_width", ctypes.c_int64),
        ("plain_cut_height", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_length", ctypes.c_int64),
    ]


class muslin_setting_line_spec(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("sash", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("wanted", ctypes.c_int64),
    ]


class muslin_setting_line_plan(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("sashes", ctypes.c_int64),
        ("finished", ctypes.c_int64),
        ("unfinished", ctypes.c_int64),
        ("longer_by", ctypes.c_int64),
    ]


class muslin_setting_line_place(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("start", ctypes.c_int64),
        ("finished", ctypes.c_int64),
        ("unfinished", ctypes.c_int64),
    ]


class muslin_setting_point_spec(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("block", ctypes.c_int64),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("sash", ctypes.c_int64),
        ("set_off", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("trim_room", ctypes.c_int64),
        ("side_addition", ctypes.c_int64),
        ("corner_addition", ctypes.c_int64),
        ("factor_numerator", ctypes.c_int64),
        ("factor_denominator", ctypes.c_int64),
        ("layout", ctypes.c_int32),
        ("edge", ctypes.c_int32),
        ("policy", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_setting_point_plan(ctypes.Structure):
    """muslin/setting.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("blocks", ctypes.c_int64),
        ("alternates", ctypes.c_int64),
        ("side_triangles", ctypes.c_int64),
        ("side_squares", ctypes.c_int64),
        ("spare_side_triangles", ctypes.c_int64),
        ("corner_triangles", ctypes.c_int64),
        ("corner_squares", ctypes.c_int64),
        ("half_blocks", ctypes.c_int64),
        ("alternate_cut", ctypes.c_int64),
        ("side_square_cut", ctypes.c_int64),
        ("side_need", ctypes.c_int64),
        ("side_surplus", ctypes.c_int64),
        ("corner_square_cut", ctypes.c_int64),
        ("corner_need", ctypes.c_int64),
        ("corner_surplus", ctypes.c_int64),
        ("half_block_beyond", ctypes.c_int64),
        ("diagonal", ctypes.c_int64),
        ("diagonal_error", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("width_error", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("length_error", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_length", ctypes.c_int64),
        ("sashes", ctypes.c_int64),
        ("edge_sashes", ctypes.c_int64),
        ("cornerstones", ctypes.c_int64),
        ("edge_cornerstones", ctypes.c_int64),
        ("edge_cornerstone_squares", ctypes.c_int64),
        ("sash_cut_width", ctypes.c_int64),
        ("sash_cut_length", ctypes.c_int64),
        ("edge_sash_cut_length", ctypes.c_int64),
        ("cornerstone_cut", ctypes.c_int64),
        ("edge_cornerstone_cut", ctypes.c_int64),
        ("straight_grain", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
        ("edge_cornerstone_need", ctypes.c_int64),
        ("edge_cornerstone_surplus", ctypes.c_int64),
        ("side_room", ctypes.c_int64),
        ("corner_room", ctypes.c_int64),
        ("edge_cornerstone_room", ctypes.c_int64),
    ]


class muslin_logcabin_spec(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("centre_width", ctypes.c_int64),
        ("centre_height", ctypes.c_int64),
        ("log_width", ctypes.c_int64),
        ("rounds", ctypes.c_int64),
        ("blocks", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("usable_width", ctypes.c_int64),
        ("end_loss", ctypes.c_int64),
        ("order", ctypes.c_int32),
        ("start", ctypes.c_int32),
        ("turn", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_logcabin(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("centre_cut_width", ctypes.c_int64),
        ("centre_cut_height", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("logs", ctypes.c_int64),
        ("kinds", ctypes.c_int64),
        ("first_length", ctypes.c_int64),
        ("second_length", ctypes.c_int64),
        ("longest_log", ctypes.c_int64),
        ("strips_least", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("square", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("centre_strip_cut", ctypes.c_int64),
        ("centres_per_strip", ctypes.c_int64),
        ("centre_strips", ctypes.c_int64),
        ("centre_cloth_length", ctypes.c_int64),
    ]


class muslin_logcabin_log(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("round", ctypes.c_int64),
        ("cut_length", ctypes.c_int64),
        ("cut_width", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("running_length", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("side", ctypes.c_int32),
        ("half", ctypes.c_int32),
        ("closes_round", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_logcabin_strip(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_width", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("longest", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("strips_least", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("half", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_logcabin_fit_spec(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("wanted", ctypes.c_int64),
        ("centre", ctypes.c_int64),
        ("rounds", ctypes.c_int64),
        ("log_finished", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("order", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_logcabin_fit(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("rounds", ctypes.c_int64),
        ("logs_across", ctypes.c_int64),
        ("exact_numerator", ctypes.c_int64),
        ("exact_denominator", ctypes.c_int64),
        ("log_finished", ctypes.c_int64),
        ("log_cut", ctypes.c_int64),
        ("block_finished", ctypes.c_int64),
        ("rest", ctypes.c_int64),
        ("centre_to_fit", ctypes.c_int64),
        ("next_finished", ctypes.c_int64),
    ]


class muslin_frame_spec(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("opening_width", ctypes.c_int64),
        ("opening_height", ctypes.c_int64),
        ("frame_width", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("usable_width", ctypes.c_int64),
    ]


class muslin_frame(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_width", ctypes.c_int64),
        ("top_long", ctypes.c_int64),
        ("top_long_error", ctypes.c_int64),
        ("top_short", ctypes.c_int64),
        ("side_long", ctypes.c_int64),
        ("side_long_error", ctypes.c_int64),
        ("side_short", ctypes.c_int64),
        ("strip_length", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
    ]


class muslin_frame_corner(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("x", ctypes.c_int64),
        ("x_error", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("y_error", ctypes.c_int64),
        ("piece", ctypes.c_int32),
        ("line", ctypes.c_int32),
    ]


class muslin_medallion_spec(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("centre_width", ctypes.c_int64),
        ("centre_height", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_medallion_row(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("kind", ctypes.c_int32),
        ("corner", ctypes.c_int32),
        ("width", ctypes.c_int64),
        ("repeat", ctypes.c_int64),
        ("most", ctypes.c_int64),
        ("before_width", ctypes.c_int64),
        ("before_height", ctypes.c_int64),
        ("after_width", ctypes.c_int64),
        ("after_height", ctypes.c_int64),
        ("side_pair", ctypes.c_int64),
        ("top_pair", ctypes.c_int64),
        ("side_finished", ctypes.c_int64),
        ("top_finished", ctypes.c_int64),
        ("side_cut", ctypes.c_int64),
        ("top_cut", ctypes.c_int64),
        ("side_length", ctypes.c_int64),
        ("top_length", ctypes.c_int64),
        ("side_units", ctypes.c_int64),
        ("top_units", ctypes.c_int64),
        ("units", ctypes.c_int64),
        ("corner_squares", ctypes.c_int64),
        ("side_rest", ctypes.c_int64),
        ("top_rest", ctypes.c_int64),
        ("unit_unfinished", ctypes.c_int64),
        ("divides", ctypes.c_int32),
        ("unequal", ctypes.c_int32),
        ("after_unfinished_width", ctypes.c_int64),
        ("after_unfinished_height", ctypes.c_int64),
    ]


class muslin_medallion(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("undivided", ctypes.c_int64),
        ("unequal", ctypes.c_int64),
        ("units", ctypes.c_int64),
        ("corner_squares", ctypes.c_int64),
    ]


class muslin_repeat_spec(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("side_finished", ctypes.c_int64),
        ("repeat_finished", ctypes.c_int64),
        ("spacers", ctypes.c_int64),
        ("spacer_least", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_repeat(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("units_below", ctypes.c_int64),
        ("rest_below", ctypes.c_int64),
        ("units_above", ctypes.c_int64),
        ("over_above", ctypes.c_int64),
        ("units_nearest", ctypes.c_int64),
        ("repeat_below", ctypes.c_int64),
        ("repeat_below_error", ctypes.c_int64),
        ("repeat_above", ctypes.c_int64),
        ("repeat_above_error", ctypes.c_int64),
        ("unit_unfinished", ctypes.c_int64),
        ("units", ctypes.c_int64),
        ("shared", ctypes.c_int64),
        ("spacer_finished", ctypes.c_int64),
        ("spacer_cut", ctypes.c_int64),
        ("left_over", ctypes.c_int64),
        ("divides", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("below_left_over", ctypes.c_int64),
        ("above_left_over", ctypes.c_int64),
    ]


class muslin_common_repeat(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("common", ctypes.c_int64),
        ("parts", ctypes.c_int64),
        ("repeat", ctypes.c_int64),
        ("repeat_error", ctypes.c_int64),
        ("across", ctypes.c_int64),
        ("down", ctypes.c_int64),
    ]


class muslin_point_border_spec(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("side_finished", ctypes.c_int64),
        ("diagonal_finished", ctypes.c_int64),
        ("squares", ctypes.c_int64),
        ("runs", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_point_border(ctypes.Structure):
    """muslin/rounds.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("diagonal_numerator", ctypes.c_int64),
        ("diagonal_denominator", ctypes.c_int64),
        ("diagonal_finished", ctypes.c_int64),
        ("diagonal_error", ctypes.c_int64),
        ("squares_per_run", ctypes.c_int64),
        ("rest", ctypes.c_int64),
        ("square_finished", ctypes.c_int64),
        ("square_finished_error", ctypes.c_int64),
        ("square_cut", ctypes.c_int64),
        ("square_cut_error", ctypes.c_int64),
        ("setting_cut", ctypes.c_int64),
        ("setting_cut_error", ctypes.c_int64),
        ("end_cut", ctypes.c_int64),
        ("end_cut_error", ctypes.c_int64),
        ("border_unfinished", ctypes.c_int64),
        ("squares", ctypes.c_int64),
        ("setting_triangles", ctypes.c_int64),
        ("setting_squares", ctypes.c_int64),
        ("end_triangles", ctypes.c_int64),
        ("end_squares", ctypes.c_int64),
        ("run_longer_by", ctypes.c_int64),
    ]


class muslin_bed_spec(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("mattress_width", ctypes.c_int64),
        ("mattress_length", ctypes.c_int64),
        ("mattress_depth", ctypes.c_int64),
        ("floor_height", ctypes.c_int64),
        ("beyond_depth", ctypes.c_int64),
        ("side_drop", ctypes.c_int64),
        ("foot_drop", ctypes.c_int64),
        ("head_drop", ctypes.c_int64),
        ("pillow_tuck", ctypes.c_int64),
        ("quilting_extra", ctypes.c_int64),
        ("drop", ctypes.c_int32),
        ("foot_corner", ctypes.c_int32),
    ]


class muslin_bed(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("side_drop", ctypes.c_int64),
        ("foot_drop", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("top_width", ctypes.c_int64),
        ("top_length", ctypes.c_int64),
        ("corner_hang", ctypes.c_int64),
        ("corner_radius", ctypes.c_int64),
        ("corner_cut_off", ctypes.c_int64),
        ("corner_clearance", ctypes.c_int64),
        ("corner_touches", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
    ]


class muslin_bed_covered_spec(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("quilt_width", ctypes.c_int64),
        ("quilt_length", ctypes.c_int64),
        ("mattress_width", ctypes.c_int64),
        ("mattress_length", ctypes.c_int64),
        ("mattress_depth", ctypes.c_int64),
        ("floor_height", ctypes.c_int64),
        ("head_drop", ctypes.c_int64),
        ("pillow_tuck", ctypes.c_int64),
        ("foot_corner", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_bed_cover(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("side_drop", ctypes.c_int64),
        ("foot_drop", ctypes.c_int64),
        ("short_width", ctypes.c_int64),
        ("short_length", ctypes.c_int64),
        ("corner_hang", ctypes.c_int64),
        ("corner_clearance", ctypes.c_int64),
        ("reaches_edges", ctypes.c_int32),
        ("reaches_depth", ctypes.c_int32),
        ("corner_touches", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
        ("beyond_side", ctypes.c_int64),
        ("beyond_foot", ctypes.c_int64),
    ]


class muslin_fit_spec(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("wanted_width", ctypes.c_int64),
        ("wanted_length", ctypes.c_int64),
        ("width_under", ctypes.c_int64),
        ("width_over", ctypes.c_int64),
        ("length_under", ctypes.c_int64),
        ("length_over", ctypes.c_int64),
        ("block_least", ctypes.c_int64),
        ("block_most", ctypes.c_int64),
        ("block_step", ctypes.c_int64),
        ("sash_least", ctypes.c_int64),
        ("sash_most", ctypes.c_int64),
        ("sash_step", ctypes.c_int64),
        ("border_least", ctypes.c_int64),
        ("border_most", ctypes.c_int64),
        ("border_step", ctypes.c_int64),
        ("columns_least", ctypes.c_int64),
        ("columns_most", ctypes.c_int64),
        ("rows_least", ctypes.c_int64),
        ("rows_most", ctypes.c_int64),
        ("best", ctypes.c_int64),
        ("work_limit", ctypes.c_int64),
        ("rank", ctypes.c_int32),
        ("columns_parity", ctypes.c_int32),
        ("rows_parity", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_fit(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("kind", ctypes.c_int32),
        ("exact", ctypes.c_int32),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("block", ctypes.c_int64),
        ("sash", ctypes.c_int64),
        ("border", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("off_width", ctypes.c_int64),
        ("off_length", ctypes.c_int64),
        ("blocks", ctypes.c_int64),
        ("alternates", ctypes.c_int64),
        ("rank_key", ctypes.c_int64),
    ]


class muslin_fit_across_spec(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("wanted", ctypes.c_int64),
        ("border", ctypes.c_int64),
        ("block", ctypes.c_int64),
        ("sash", ctypes.c_int64),
        ("direction", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_fit_across_blocks(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("blocks", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("off", ctypes.c_int64),
        ("room", ctypes.c_int64),
        ("pitch", ctypes.c_int64),
        ("exact", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_fit_triangles_spec(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("wanted_width", ctypes.c_int64),
        ("wanted_length", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("rows_direction", ctypes.c_int32),
        ("sides_direction", ctypes.c_int32),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_fit_triangle_rows(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("rows", ctypes.c_int64),
        ("sides", ctypes.c_int64),
        ("side", ctypes.c_int64),
        ("finished_width", ctypes.c_int64),
        ("finished_length", ctypes.c_int64),
        ("off_width", ctypes.c_int64),
        ("off_length", ctypes.c_int64),
        ("triangles", ctypes.c_int64),
        ("half_triangles", ctypes.c_int64),
        ("halves_each_hand", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_length", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
        ("strip_cut_blunt", ctypes.c_int64),
        ("cut_base", ctypes.c_int64),
        ("half_cut_base", ctypes.c_int64),
    ]


class muslin_fit_rescale_spec(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("numerator", ctypes.c_int64),
        ("denominator", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("grid", ctypes.c_int64),
    ]


class muslin_fit_rescale_row(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished", ctypes.c_int64),
        ("new_finished", ctypes.c_int64),
        ("rest", ctypes.c_int64),
        ("new_cut", ctypes.c_int64),
        ("cut_below", ctypes.c_int64),
        ("cut_nearest", ctypes.c_int64),
        ("cut_above", ctypes.c_int64),
        ("on_grid", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_fit_rescaled(ctypes.Structure):
    """muslin/fit.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("off_grid", ctypes.c_int64),
        ("unit", ctypes.c_int64),
        ("unit_below", ctypes.c_int64),
        ("unit_above", ctypes.c_int64),
        ("numerator", ctypes.c_int64),
        ("denominator", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
    ]


class muslin_binding_width_spec(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("fold", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("allowance", ctypes.c_int64),
        ("front", ctypes.c_int64),
        ("thickness", ctypes.c_int64),
        ("back", ctypes.c_int64),
        ("turn_under", ctypes.c_int64),
        ("binding_cut", ctypes.c_int64),
        ("uneven_limit", ctypes.c_int64),
    ]


class muslin_binding_width(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_width", ctypes.c_int64),
        ("back", ctypes.c_int64),
        ("folded", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_uint32),
    ]


class muslin_binding_spec(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("perimeter", ctypes.c_int64),
        ("quilt_width", ctypes.c_int64),
        ("quilt_length", ctypes.c_int64),
        ("extra", ctypes.c_int64),
        ("corners", ctypes.c_int64),
        ("corner_extra", ctypes.c_int64),
        ("binding_cut", ctypes.c_int64),
        ("strip_length", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("step", ctypes.c_int64),
        ("spare_strips", ctypes.c_int64),
        ("join", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_binding(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("perimeter", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("strips_needed", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("joins", ctypes.c_int64),
        ("loss_per_join", ctypes.c_int64),
        ("joined", ctypes.c_int64),
        ("spare", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("bought", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_uint32),
    ]


class muslin_bias_spec(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("wanted", ctypes.c_int64),
    ]


class muslin_bias(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("rounds", ctypes.c_int64),
        ("joins", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("square_cut", ctypes.c_int64),
        ("area_rule", ctypes.c_int64),
        ("spare", ctypes.c_int64),
    ]


class muslin_batting_spec(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("quilt_width", ctypes.c_int64),
        ("quilt_length", ctypes.c_int64),
        ("margin_left", ctypes.c_int64),
        ("margin_right", ctypes.c_int64),
        ("margin_top", ctypes.c_int64),
        ("margin_bottom", ctypes.c_int64),
        ("roll_width", ctypes.c_int64),
    ]


class muslin_batting(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("package", ctypes.c_int64),
        ("package_width", ctypes.c_int64),
        ("package_length", ctypes.c_int64),
        ("spare_width", ctypes.c_int64),
        ("spare_length", ctypes.c_int64),
        ("turned", ctypes.c_int32),
        ("joined_turned", ctypes.c_int32),
        ("joined_pieces", ctypes.c_int64),
        ("joined_length", ctypes.c_int64),
        ("joined_joins", ctypes.c_int64),
    ]


class muslin_backing_spec(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("quilt_width", ctypes.c_int64),
        ("quilt_length", ctypes.c_int64),
        ("margin_left", ctypes.c_int64),
        ("margin_right", ctypes.c_int64),
        ("margin_top", ctypes.c_int64),
        ("margin_bottom", ctypes.c_int64),
        ("fabric_width", ctypes.c_int64),
        ("selvage", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("end_loss", ctypes.c_int64),
        ("repeat", ctypes.c_int64),
        ("step", ctypes.c_int64),
        ("print", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_backing(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("layout", ctypes.c_int32),
        ("possible", ctypes.c_int32),
        ("best", ctypes.c_int32),
        ("turned", ctypes.c_int32),
        ("needed_width", ctypes.c_int64),
        ("needed_length", ctypes.c_int64),
        ("panels", ctypes.c_int64),
        ("panel_length", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("seams", ctypes.c_int64),
        ("joined_width", ctypes.c_int64),
        ("joined_length", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("cloth_with_repeat", ctypes.c_int64),
        ("bought", ctypes.c_int64),
        ("other_rounding", ctypes.c_int64),
        ("narrower_by", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_uint32),
    ]


class muslin_panel(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("role", ctypes.c_int32),
        ("position", ctypes.c_int32),
        ("cut_width", ctypes.c_int64),
        ("cut_length", ctypes.c_int64),
        ("count", ctypes.c_int64),
    ]


class muslin_hanging_spec(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("quilt_width", ctypes.c_int64),
        ("sleeves", ctypes.c_int64),
        ("inset", ctypes.c_int64),
        ("gap", ctypes.c_int64),
        ("drop", ctypes.c_int64),
        ("ease", ctypes.c_int64),
        ("hem", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("label_width", ctypes.c_int64),
        ("label_height", ctypes.c_int64),
        ("corner_triangle", ctypes.c_int64),
        ("corners", ctypes.c_int64),
    ]


class muslin_hanging(ctypes.Structure):
    """muslin/finishing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("sleeves", ctypes.c_int64),
        ("sleeve_finished", ctypes.c_int64),
        ("sleeve_cut_length", ctypes.c_int64),
        ("sleeve_cut_width", ctypes.c_int64),
        ("label_cut_width", ctypes.c_int64),
        ("label_cut_height", ctypes.c_int64),
        ("corner_squares", ctypes.c_int64),
        ("corner_square_cut", ctypes.c_int64),
    ]


class muslin_stripquilt_spec(ctypes.Structure):
    """muslin/stripquilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("strips", ctypes.c_int64),
        ("strips_per_set", ctypes.c_int64),
        ("segments_per_block", ctypes.c_int64),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("tops", ctypes.c_int64),
        ("strip_cut", ctypes.c_int64),
        ("strip_length", ctypes.c_int64),
        ("segment_cut", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("end_trim", ctypes.c_int64),
        ("resquare_loss", ctypes.c_int64),
        ("resquare_every", ctypes.c_int64),
        ("fold_clear", ctypes.c_int64),
        ("turning", ctypes.c_int32),
        ("nesting", ctypes.c_int32),
        ("square_tolerance", ctypes.c_int64),
    ]


class muslin_stripquilt(ctypes.Structure):
    """muslin/stripquilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("set_unfinished", ctypes.c_int64),
        ("set_finished", ctypes.c_int64),
        ("strip_finished", ctypes.c_int64),
        ("segment_cut", ctypes.c_int64),
        ("segment_finished", ctypes.c_int64),
        ("segments_per_set", ctypes.c_int64),
        ("segments_per_end", ctypes.c_int64),
        ("resquarings", ctypes.c_int64),
        ("strip_least", ctypes.c_int64),
        ("strip_shorter_by", ctypes.c_int64),
        ("strip_longer_for_more", ctypes.c_int64),
        ("strip_left_over", ctypes.c_int64),
        ("block_unfinished_width", ctypes.c_int64),
        ("block_unfinished_height", ctypes.c_int64),
        ("block_finished_width", ctypes.c_int64),
        ("block_finished_height", ctypes.c_int64),
        ("blocks_per_top", ctypes.c_int64),
        ("blocks_turned", ctypes.c_int64),
        ("top_finished_width", ctypes.c_int64),
        ("top_finished_length", ctypes.c_int64),
        ("top_unfinished_width", ctypes.c_int64),
        ("top_unfinished_length", ctypes.c_int64),
        ("sets_in_hand", ctypes.c_int64),
        ("tops_in_hand", ctypes.c_int64),
        ("tops", ctypes.c_int64),
        ("sets", ctypes.c_int64),
        ("strips_used", ctypes.c_int64),
        ("strips_left", ctypes.c_int64),
        ("strips_for_one_more_top", ctypes.c_int64),
        ("blocks", ctypes.c_int64),
        ("segments", ctypes.c_int64),
        ("segments_left", ctypes.c_int64),
        ("stack_low", ctypes.c_int64),
        ("stack_high", ctypes.c_int64),
        ("stacks_high", ctypes.c_int64),
        ("groups", ctypes.c_int64),
        ("segments_turned", ctypes.c_int64),
        ("places_not_nesting", ctypes.c_int64),
        ("block_square", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
    ]


class muslin_block_group(ctypes.Structure):
    """muslin/stripquilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("first_block", ctypes.c_int64),
        ("blocks", ctypes.c_int64),
        ("segments", ctypes.c_int32),
        ("turned", ctypes.c_uint32),
        ("not_nesting", ctypes.c_uint32),
        ("repeats", ctypes.c_int32),
        ("first_pressing", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("sets", ctypes.c_int64 * 32),
    ]


class muslin_piecing_spec(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("sets", ctypes.c_int64),
        ("strips_per_set", ctypes.c_int64),
        ("strip_length", ctypes.c_int64),
        ("tops", ctypes.c_int64),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("segments_per_block", ctypes.c_int64),
        ("block_width", ctypes.c_int64),
        ("block_height", ctypes.c_int64),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
    ]


class muslin_piecing(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("seams", ctypes.c_int64),
        ("in_sets", ctypes.c_int64),
        ("in_blocks", ctypes.c_int64),
        ("in_rows", ctypes.c_int64),
        ("between_rows", ctypes.c_int64),
        ("total", ctypes.c_int64),
    ]


class muslin_thread_spec(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("seam", ctypes.c_int64),
        ("ratio_above", ctypes.c_int64),
        ("ratio_below", ctypes.c_int64),
        ("thickness", ctypes.c_int64),
        ("stitch_length", ctypes.c_int64),
        ("bobbin", ctypes.c_int64),
        ("spool", ctypes.c_int64),
        ("method", ctypes.c_int32),
        ("waste", ctypes.c_int32),
    ]


class muslin_thread(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("ratio_thousandths", ctypes.c_int64),
        ("thread", ctypes.c_int64),
        ("with_waste", ctypes.c_int64),
        ("needle", ctypes.c_int64),
        ("bobbin_thread", ctypes.c_int64),
        ("bobbins", ctypes.c_int64),
        ("spools", ctypes.c_int64),
        ("left_on_bobbin", ctypes.c_int64),
        ("left_on_spool", ctypes.c_int64),
        ("bobbin_longer_by", ctypes.c_int64),
        ("spool_longer_by", ctypes.c_int64),
    ]


class muslin_quilting_spec(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("spacing", ctypes.c_int64),
        ("offset", ctypes.c_int64),
        ("outline", ctypes.c_int64),
        ("passes", ctypes.c_int64),
        ("pattern", ctypes.c_int32),
        ("start", ctypes.c_int32),
    ]


class muslin_quilting(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("lines", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("lines_first", ctypes.c_int64),
        ("lines_second", ctypes.c_int64),
        ("left_first", ctypes.c_int64),
        ("left_second", ctypes.c_int64),
        ("even_first", ctypes.c_int64),
        ("even_second", ctypes.c_int64),
        ("exact", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("last_first", ctypes.c_int64),
        ("last_second", ctypes.c_int64),
    ]


class muslin_weight_spec(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("binding_length", ctypes.c_int64),
        ("binding_cut", ctypes.c_int64),
        ("top_density", ctypes.c_int64),
        ("batting_density", ctypes.c_int64),
        ("backing_density", ctypes.c_int64),
        ("binding_density", ctypes.c_int64),
        ("step", ctypes.c_int64),
        ("seam_share", ctypes.c_int32),
        ("direction", ctypes.c_int32),
    ]


class muslin_weight(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("top", ctypes.c_int64),
        ("batting", ctypes.c_int64),
        ("backing", ctypes.c_int64),
        ("binding", ctypes.c_int64),
        ("total", ctypes.c_int64),
    ]


class muslin_cost_spec(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("amount", ctypes.c_int64),
        ("price", ctypes.c_int64),
        ("per", ctypes.c_int64),
        ("sold", ctypes.c_int32),
        ("direction", ctypes.c_int32),
    ]


class muslin_cost(ctypes.Structure):
    """muslin/supplies.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("bought", ctypes.c_int64),
        ("spare", ctypes.c_int64),
        ("cost", ctypes.c_int64),
        ("exact", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_quilt_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("allowance", ctypes.c_int64),
        ("take_up", ctypes.c_int64),
        ("most", ctypes.c_int64),
        ("tag", ctypes.c_int64),
    ]


class muslin_quilt_fabric_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("usable_width", ctypes.c_int64),
        ("print", ctypes.c_int32),
        ("darkness", ctypes.c_int32),
    ]


class muslin_quilt_sum_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("measure", ctypes.c_int64),
        ("factor", ctypes.c_int64),
    ]


class muslin_quilt_patch_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("fabric", ctypes.c_int64),
        ("width", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("left", ctypes.c_int64),
        ("right", ctypes.c_int64),
        ("top", ctypes.c_int64),
        ("bottom", ctypes.c_int64),
    ]


class muslin_quilt_unit_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("corner", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("method", ctypes.c_int32),
        ("hand", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_quilt_join_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("axis", ctypes.c_int32),
        ("piecing", ctypes.c_int32),
        ("press", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_quilt_trim_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("left", ctypes.c_int64),
        ("right", ctypes.c_int64),
        ("top", ctypes.c_int64),
        ("bottom", ctypes.c_int64),
    ]


class muslin_quilt_pinwheel_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("centre", ctypes.c_int64),
        ("top", ctypes.c_int64),
        ("right", ctypes.c_int64),
        ("bottom", ctypes.c_int64),
        ("left", ctypes.c_int64),
    ]


class muslin_quilt_set_in_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("centre", ctypes.c_int64),
        ("left_width", ctypes.c_int64),
        ("right_width", ctypes.c_int64),
        ("top_width", ctypes.c_int64),
        ("bottom_width", ctypes.c_int64),
        ("left_fabric", ctypes.c_int64),
        ("right_fabric", ctypes.c_int64),
        ("top_fabric", ctypes.c_int64),
        ("bottom_fabric", ctypes.c_int64),
    ]


class muslin_quilt_log_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("fabric", ctypes.c_int64),
        ("width", ctypes.c_int64),
        ("side", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_quilt_surround_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("centre", ctypes.c_int64),
        ("left", ctypes.c_int64),
        ("right", ctypes.c_int64),
        ("top", ctypes.c_int64),
        ("bottom", ctypes.c_int64),
        ("top_left", ctypes.c_int64),
        ("top_right", ctypes.c_int64),
        ("bottom_left", ctypes.c_int64),
        ("bottom_right", ctypes.c_int64),
    ]


class muslin_quilt_sashed_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("sash", ctypes.c_int64),
        ("sash_fabric", ctypes.c_int64),
        ("cornerstone", ctypes.c_int64),
    ]


class muslin_quilt_diagonal_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("side_fabric", ctypes.c_int64),
        ("corner_fabric", ctypes.c_int64),
        ("set_off", ctypes.c_int64),
        ("sash", ctypes.c_int64),
        ("sash_fabric", ctypes.c_int64),
        ("cornerstone", ctypes.c_int64),
        ("layout", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_quilt_sixty_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cells", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("end_fabric", ctypes.c_int64),
        ("first", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_quilt_sixty_piece_spec(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("fabric", ctypes.c_int64),
        ("cells", ctypes.c_int64),
    ]


class muslin_tree_measure(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("value", ctypes.c_int64),
        ("node", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("axis", ctypes.c_int32),
        ("terms", ctypes.c_int64),
    ]


class muslin_node(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("children", ctypes.c_int64),
        ("depth", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("axis", ctypes.c_int32),
        ("quarter_turns", ctypes.c_int32),
        ("mirrored", ctypes.c_int32),
    ]


class muslin_part_counts(ctypes.Structure):
    """muslin/quilt.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("fabrics", ctypes.c_int64),
        ("measures", ctypes.c_int64),
        ("nodes", ctypes.c_int64),
        ("bytes", ctypes.c_int64),
    ]


class muslin_solution_spec(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("tops", ctypes.c_int64),
        ("ease", ctypes.c_int64),
        ("grid", ctypes.c_int64),
        ("grid_tolerance", ctypes.c_int64),
        ("half_addition", ctypes.c_int64),
        ("quarter_addition", ctypes.c_int64),
        ("trim_room", ctypes.c_int64),
        ("end_trim", ctypes.c_int64),
        ("resquare_loss", ctypes.c_int64),
        ("resquare_every", ctypes.c_int64),
        ("fold_clear", ctypes.c_int64),
        ("policy", ctypes.c_int32),
        ("tip", ctypes.c_int32),
        ("direction", ctypes.c_int32),
        ("strip_piecing", ctypes.c_int32),
    ]


class muslin_solution_value_spec(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("id", ctypes.c_int64),
        ("value", ctypes.c_int64),
    ]


class muslin_node_size(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("finished_width", ctypes.c_int64),
        ("finished_height", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("left", ctypes.c_int64),
        ("right", ctypes.c_int64),
        ("top", ctypes.c_int64),
        ("bottom", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("mirrored", ctypes.c_int64),
        ("upright", ctypes.c_int64),
        ("quarter", ctypes.c_int64),
        ("half", ctypes.c_int64),
        ("three_quarter", ctypes.c_int64),
        ("patches", ctypes.c_int64),
        ("seams_across", ctypes.c_int64),
        ("seams_down", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("exact", ctypes.c_int32),
    ]


class muslin_solution_total(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("patches", ctypes.c_int64),
        ("different_nodes", ctypes.c_int64),
        ("finished_area", ctypes.c_int64),
        ("patch_area", ctypes.c_int64),
        ("area_error", ctypes.c_int64),
        ("misfits", ctypes.c_int64),
        ("eased", ctypes.c_int64),
        ("cuts", ctypes.c_int64),
        ("stripsets", ctypes.c_int64),
        ("warnings", ctypes.c_uint32),
        ("exact", ctypes.c_int32),
    ]


class muslin_misfit(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("node", ctypes.c_int64),
        ("first", ctypes.c_int64),
        ("second", ctypes.c_int64),
        ("first_size", ctypes.c_int64),
        ("second_size", ctypes.c_int64),
        ("difference", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("ease_each", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_solution_cut(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("fabric", ctypes.c_int64),
        ("first_node", ctypes.c_int64),
        ("cut_width", ctypes.c_int64),
        ("cut_height", ctypes.c_int64),
        ("pitch", ctypes.c_int64),
        ("wide_edge", ctypes.c_int64),
        ("narrow_edge", ctypes.c_int64),
        ("surplus_width", ctypes.c_int64),
        ("surplus_height", ctypes.c_int64),
        ("left", ctypes.c_int64),
        ("right", ctypes.c_int64),
        ("top", ctypes.c_int64),
        ("bottom", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("spare", ctypes.c_int64),
        ("nodes", ctypes.c_int64),
        ("upright", ctypes.c_int64),
        ("quarter", ctypes.c_int64),
        ("half", ctypes.c_int64),
        ("three_quarter", ctypes.c_int64),
        ("scattered", ctypes.c_int64),
        ("source", ctypes.c_int32),
        ("shape", ctypes.c_int32),
        ("again", ctypes.c_int32),
        ("gives", ctypes.c_int32),
        ("grain", ctypes.c_int32),
        ("hand", ctypes.c_int32),
        ("angle", ctypes.c_int32),
        ("region", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
    ]


class muslin_stripset(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("node", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("set_unfinished", ctypes.c_int64),
        ("segment_cut", ctypes.c_int64),
        ("strip_length", ctypes.c_int64),
        ("segments", ctypes.c_int64),
        ("segments_per_set", ctypes.c_int64),
        ("sets", ctypes.c_int64),
        ("spare", ctypes.c_int64),
        ("cuts_apart", ctypes.c_int64),
        ("cuts_in_sets", ctypes.c_int64),
        ("shorter_by", ctypes.c_int64),
        ("used", ctypes.c_int32),
        ("turns", ctypes.c_int32),
        ("warnings", ctypes.c_uint32),
        ("pad", ctypes.c_int32),
    ]


class muslin_term(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("id", ctypes.c_int64),
        ("times", ctypes.c_int64),
        ("value", ctypes.c_int64),
        ("sum", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("finished", ctypes.c_int32),
    ]


class muslin_outline(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("node", ctypes.c_int64),
        ("fabric", ctypes.c_int64),
        ("first_corner", ctypes.c_int64),
        ("corners", ctypes.c_int64),
        ("region", ctypes.c_int32),
        ("quarter_turns", ctypes.c_int32),
        ("mirrored", ctypes.c_int32),
        ("on_point", ctypes.c_int32),
    ]


class muslin_outline_corner(ctypes.Structure):
    """muslin/solution.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("seam_node", ctypes.c_int64),
        ("seam", ctypes.c_int64),
    ]


class muslin_pressing_spec(ctypes.Structure):
    """muslin/pressing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("work_limit", ctypes.c_int64),
        ("prefer", ctypes.c_int32),
        ("units", ctypes.c_int32),
    ]


class muslin_pressing_total(ctypes.Structure):
    """muslin/pressing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("meetings", ctypes.c_int64),
        ("exceptions", ctypes.c_int64),
        ("least", ctypes.c_int64),
        ("alternating", ctypes.c_int64),
        ("open", ctypes.c_int64),
        ("other_way", ctypes.c_int64),
        ("work", ctypes.c_int64),
        ("proven", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("copies_turned", ctypes.c_int64),
    ]


class muslin_pressing_seam(ctypes.Structure):
    """muslin/pressing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("node", ctypes.c_int64),
        ("seam", ctypes.c_int64),
        ("as_shown", ctypes.c_int64),
        ("other_way", ctypes.c_int64),
        ("from_x", ctypes.c_int64),
        ("from_y", ctypes.c_int64),
        ("to_x", ctypes.c_int64),
        ("to_y", ctypes.c_int64),
        ("press", ctypes.c_int32),
        ("towards", ctypes.c_int32),
        ("other", ctypes.c_int32),
        ("preferred", ctypes.c_int32),
        ("turn", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_pressing_child(ctypes.Structure):
    """muslin/pressing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("node", ctypes.c_int64),
        ("child", ctypes.c_int64),
        ("place", ctypes.c_int64),
        ("other_way", ctypes.c_int32),
        ("turn", ctypes.c_int32),
    ]


class muslin_pressing_exception(ctypes.Structure):
    """muslin/pressing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("node", ctypes.c_int64),
        ("seam", ctypes.c_int64),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("first_node", ctypes.c_int64),
        ("first_seam", ctypes.c_int64),
        ("second_node", ctypes.c_int64),
        ("second_seam", ctypes.c_int64),
        ("count", ctypes.c_int64),
    ]


class muslin_sewing_step(ctypes.Structure):
    """muslin/sewing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("node", ctypes.c_int64),
        ("stack", ctypes.c_int64),
        ("alike", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("seams", ctypes.c_int64),
        ("seam_longest", ctypes.c_int64),
        ("sewn", ctypes.c_int64),
        ("unfinished_width", ctypes.c_int64),
        ("unfinished_height", ctypes.c_int64),
        ("feeds", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("chain", ctypes.c_int32),
    ]


class muslin_sewing_feed(ctypes.Structure):
    """muslin/sewing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("node", ctypes.c_int64),
        ("step", ctypes.c_int64),
        ("each", ctypes.c_int64),
    ]


class muslin_sewing_total(ctypes.Structure):
    """muslin/sewing.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("steps", ctypes.c_int64),
        ("seams", ctypes.c_int64),
        ("sewn", ctypes.c_int64),
        ("in_sets", ctypes.c_int64),
        ("width_seams", ctypes.c_int64),
        ("height_seams", ctypes.c_int64),
        ("width_worst", ctypes.c_int64),
        ("width_likely", ctypes.c_int64),
        ("height_worst", ctypes.c_int64),
        ("height_likely", ctypes.c_int64),
    ]


class muslin_scatter_spec(ctypes.Structure):
    """muslin/scatter.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("places", ctypes.c_int64),
        ("seed", ctypes.c_int64),
        ("work_limit", ctypes.c_int64),
    ]


class muslin_touch_spec(ctypes.Structure):
    """muslin/scatter.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("first", ctypes.c_int64),
        ("second", ctypes.c_int64),
        ("weight", ctypes.c_int64),
    ]


class muslin_scattered(ctypes.Structure):
    """muslin/scatter.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("touching", ctypes.c_int64),
        ("pairs", ctypes.c_int64),
        ("least", ctypes.c_int64),
        ("work", ctypes.c_int64),
        ("proven", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_scatter_blocks_spec(ctypes.Structure):
    """muslin/scatter.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("columns", ctypes.c_int64),
        ("rows", ctypes.c_int64),
        ("seed", ctypes.c_int64),
        ("work_limit", ctypes.c_int64),
    ]


class muslin_edge_prints_spec(ctypes.Structure):
    """muslin/scatter.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("count", ctypes.c_int64),
        ("top", ctypes.c_int64),
        ("right", ctypes.c_int64),
        ("bottom", ctypes.c_int64),
        ("left", ctypes.c_int64),
    ]


class muslin_placed_block(ctypes.Structure):
    """muslin/scatter.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("kind", ctypes.c_int64),
        ("quarter_turns", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_blank_spec(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cut_width", ctypes.c_int64),
        ("cut_length", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("run_in", ctypes.c_int64),
        ("join_loss", ctypes.c_int64),
        ("label", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("priority", ctypes.c_int32),
        ("least_part", ctypes.c_int64),
    ]


class muslin_cutplan_stock_spec(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("width", ctypes.c_int64),
        ("length", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("cost", ctypes.c_int64),
        ("label", ctypes.c_int64),
    ]


class muslin_cutplan_spec(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("usable_width", ctypes.c_int64),
        ("end_loss", ctypes.c_int64),
        ("resquare_loss", ctypes.c_int64),
        ("resquare_every", ctypes.c_int64),
        ("straightening", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("work_limit", ctypes.c_int64),
        ("print", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_cutplan_total(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("pieces", ctypes.c_int64),
        ("missing", ctypes.c_int64),
        ("strips", ctypes.c_int64),
        ("panels", ctypes.c_int64),
        ("heights", ctypes.c_int64),
        ("cuts", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("cost", ctypes.c_int64),
        ("least", ctypes.c_int64),
        ("stock_pieces", ctypes.c_int64),
        ("waste", ctypes.c_int64),
        ("own_strips_length", ctypes.c_int64),
        ("area_bound", ctypes.c_int64),
        ("work", ctypes.c_int64),
        ("cases", ctypes.c_int64),
        ("proven", ctypes.c_int32),
        ("stopped", ctypes.c_int32),
        ("other_lengths", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_cutplan_strip(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("times", ctypes.c_int64),
        ("holder", ctypes.c_int64),
        ("stock", ctypes.c_int64),
        ("first_place", ctypes.c_int64),
        ("places", ctypes.c_int64),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("width", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("used", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("turned", ctypes.c_int32),
    ]


class muslin_cutplan_place(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("piece", ctypes.c_int64),
        ("strip", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("width", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("pitch", ctypes.c_int64),
        ("turned", ctypes.c_int32),
        ("trimmed", ctypes.c_int32),
    ]


class muslin_cutplan_blank(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("piece", ctypes.c_int64),
        ("place", ctypes.c_int64),
        ("strip", ctypes.c_int64),
        ("stock", ctypes.c_int64),
        ("sheet", ctypes.c_int64),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("width", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("turned", ctypes.c_int32),
        ("trimmed", ctypes.c_int32),
        ("layers", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_cutplan_left_over(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("strip", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("x", ctypes.c_int64),
        ("y", ctypes.c_int64),
        ("width", ctypes.c_int64),
        ("height", ctypes.c_int64),
    ]


class muslin_cutplan_piece(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("label", ctypes.c_int64),
        ("made", ctypes.c_int64),
        ("missing", ctypes.c_int64),
        ("cut", ctypes.c_int64),
    ]


class muslin_cutplan_stock_used(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("label", ctypes.c_int64),
        ("used", ctypes.c_int64),
        ("cost", ctypes.c_int64),
    ]


class muslin_cutplan_width(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("usable_width", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("least", ctypes.c_int64),
        ("proven", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_cutplan_size(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("piece", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("taken", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("run_in", ctypes.c_int64),
        ("may_turn", ctypes.c_int32),
        ("slit", ctypes.c_int32),
        ("level", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("turned_taken", ctypes.c_int64),
        ("turned_height", ctypes.c_int64),
    ]


class muslin_cutplan_way(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cost", ctypes.c_int64),
        ("stock", ctypes.c_int64),
        ("width", ctypes.c_int64),
        ("height", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("turned", ctypes.c_int32),
    ]


class muslin_cutplan_case(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("parent", ctypes.c_int64),
        ("split", ctypes.c_int64),
        ("worths", ctypes.c_int64),
        ("least", ctypes.c_int64),
        ("wanted", ctypes.c_int64),
        ("first_way", ctypes.c_int64),
        ("last_way", ctypes.c_int64),
        ("plan_size", ctypes.c_int64),
        ("packed_way", ctypes.c_int64),
        ("at_least", ctypes.c_int32),
        ("pad", ctypes.c_int32),
    ]


class muslin_cutplan_worth(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("plan_size", ctypes.c_int64),
        ("of_case", ctypes.c_int64),
        ("stock", ctypes.c_int64),
        ("worth", ctypes.c_int64),
    ]


class muslin_cutplan_checked(ctypes.Structure):
    """muslin/cutplan.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("cost", ctypes.c_int64),
        ("least", ctypes.c_int64),
        ("cases", ctypes.c_int64),
        ("fault", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("at", ctypes.c_int64),
    ]


class muslin_yardage_spec(ctypes.Structure):
    """muslin/yardage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("end_loss", ctypes.c_int64),
        ("resquare_loss", ctypes.c_int64),
        ("resquare_every", ctypes.c_int64),
        ("straightening", ctypes.c_int64),
        ("spare_pieces", ctypes.c_int64),
        ("work_limit", ctypes.c_int64),
        ("join_loss", ctypes.c_int64),
        ("extra", ctypes.c_int64),
        ("step", ctypes.c_int64),
        ("shrinkage", ctypes.c_int32),
        ("extra_share", ctypes.c_int32),
        ("long_pieces", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("least_part", ctypes.c_int64),
        ("mitre_extra", ctypes.c_int64),
    ]


class muslin_extra_cut_spec(ctypes.Structure):
    """muslin/yardage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("fabric", ctypes.c_int64),
        ("cut_width", ctypes.c_int64),
        ("cut_length", ctypes.c_int64),
        ("count", ctypes.c_int64),
        ("run_in", ctypes.c_int64),
        ("join_loss", ctypes.c_int64),
        ("kind", ctypes.c_int32),
        ("pad", ctypes.c_int32),
        ("least_part", ctypes.c_int64),
    ]


class muslin_fabric_yardage(ctypes.Structure):
    """muslin/yardage.h"""

    _fields_ = [
        ("size", ctypes.c_uint32),
        ("flags", ctypes.c_uint32),
        ("fabric", ctypes.c_int64),
        ("usable_width", ctypes.c_int64),
        ("pieces", ctypes.c_int64),
        ("cloth_length", ctypes.c_int64),
        ("least", ctypes.c_int64),
        ("own_strips_length", ctypes.c_int64),
        ("with_extra", ctypes.c_int64),
        ("bought", ctypes.c_int64),
        ("spare", ctypes.c_int64),
        ("narrowest_width", ctypes.c_int64),
        ("proven", ctypes.c_int32),
        ("turned", ctypes.c_int32),
    ]


class muslin_quilt(ctypes.Structure):
    """muslin/quilt.h, opaque"""


class muslin_solution(ctypes.Structure):
    """muslin/solution.h, opaque"""


class muslin_pressing(ctypes.Structure):
    """muslin/pressing.h, opaque"""


class muslin_cutplan(ctypes.Structure):
    """muslin/cutplan.h, opaque"""


class muslin_yardage(ctypes.Structure):
    """muslin/yardage.h, opaque"""


PROTOTYPES: Dict[str, Tuple[Any, Tuple[Any, ...]]] = {
    "muslin_version": (ctypes.c_uint32, ()),
    "muslin_version_text": (ctypes.c_char_p, ()),
    "muslin_status_count": (ctypes.c_int32, ()),
    "muslin_status_name": (ctypes.c_char_p, (ctypes.c_int32,)),
    "muslin_status_sentence": (ctypes.c_char_p, (ctypes.c_int32,)),
    "muslin_argument_count": (ctypes.c_int32, ()),
    "muslin_argument_words": (ctypes.c_char_p, (ctypes.c_int32,)),
    "muslin_problem_init": (ctypes.c_int32, (ctypes.POINTER(muslin_problem), ctypes.c_uint32)),
    "muslin_warning_count": (ctypes.c_int32, ()),
    "muslin_warning_name": (ctypes.c_char_p, (ctypes.c_uint32,)),
    "muslin_warning_sentence": (ctypes.c_char_p, (ctypes.c_uint32,)),
    "muslin_constant_count": (ctypes.c_int32, ()),
    "muslin_constant_name": (ctypes.c_char_p, (ctypes.c_int32,)),
    "muslin_constant_value": (ctypes.c_int64, (ctypes.c_int32,)),
    "muslin_allocator_libc": (ctypes.c_int32, (ctypes.POINTER(muslin_allocator),)),
    "muslin_length_add": (ctypes.c_int32, (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64))),
    "muslin_length_subtract": (ctypes.c_int32, (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64))),
    "muslin_length_multiply": (ctypes.c_int32, (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64))),
    "muslin_rounding_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_rounding_spec), ctypes.c_uint32)),
    "muslin_length_divide": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded))),
    "muslin_length_scale": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_rounded))),
    "muslin_length_snap": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded))),
    "muslin_length_compare": (ctypes.c_int32, (ctypes.c_int64, ctypes.c_int64)),
    "muslin_length_sum": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64))),
    "muslin_length_dot": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64))),
    "muslin_length_add_n": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(ctypes.c_size_t))),
    "muslin_length_subtract_n": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(ctypes.c_size_t))),
    "muslin_length_multiply_n": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(ctypes.c_size_t))),
    "muslin_length_scale_n": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.c_int64, ctypes.c_int64,
         ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int32),
         ctypes.POINTER(ctypes.c_size_t))),
    "muslin_length_snap_n": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(ctypes.c_size_t))),
    "muslin_length_times_root2": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded))),
    "muslin_length_over_root2": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded))),
    "muslin_length_equilateral_height": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded))),
    "muslin_length_equilateral_side": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded))),
    "muslin_length_hypotenuse": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded))),
    "muslin_length_root_of_area": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded))),
    "muslin_length_unit_ticks": (ctypes.c_int64, (ctypes.c_int32,)),
    "muslin_length_unit_word": (ctypes.c_char_p, (ctypes.c_int32,)),
    "muslin_parse_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_parse_spec), ctypes.c_uint32)),
    "muslin_length_parse": (ctypes.c_int32, 
        (ctypes.c_char_p, ctypes.c_size_t, ctypes.POINTER(muslin_parse_spec), ctypes.POINTER(muslin_parsed),
         ctypes.POINTER(muslin_problem))),
    "muslin_format_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_format_spec), ctypes.c_uint32)),
    "muslin_length_format": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_format_spec), ctypes.c_char_p, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(muslin_problem))),
    "muslin_seam_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_seam_spec), ctypes.c_uint32)),
    "muslin_seam_cut_from_finished": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_seam_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_seam_finished_from_cut": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(muslin_seam_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_seam_cut_from_finished_n": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.POINTER(muslin_seam_spec),
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(ctypes.c_size_t))),
    "muslin_seam_finished_from_cut_n": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.POINTER(muslin_seam_spec),
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(ctypes.c_size_t))),
    "muslin_piece_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_piece_spec), ctypes.c_uint32)),
    "muslin_seam_piece": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_piece_spec), ctypes.POINTER(muslin_piece), ctypes.POINTER(muslin_problem))),
    "muslin_seam_row_equal": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_seam_spec), ctypes.POINTER(muslin_sewn_row),
         ctypes.POINTER(muslin_problem))),
    "muslin_seam_row": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.POINTER(muslin_seam_spec),
         ctypes.POINTER(muslin_sewn_row), ctypes.POINTER(muslin_problem))),
    "muslin_seam_strip_for_finished": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_seam_spec), ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_rounded), ctypes.POINTER(muslin_problem))),
    "muslin_seam_resize_cut": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_seam_spec),
         ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded), ctypes.POINTER(muslin_problem))),
    "muslin_seam_calibrate": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.c_int64, ctypes.c_int64,
         ctypes.POINTER(muslin_calibration), ctypes.POINTER(muslin_problem))),
    "muslin_carry_on_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_carry_on_spec), ctypes.c_uint32)),
    "muslin_seam_carry_on": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_carry_on_spec), ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded),
         ctypes.POINTER(muslin_problem))),
    "muslin_seam_error_total": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_seam_error_limit": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_seam_share": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(muslin_problem))),
    "muslin_accuracy_row_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_accuracy_row_spec), ctypes.c_uint32)),
    "muslin_accuracy_row": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_accuracy_row_spec), ctypes.POINTER(muslin_accuracy_row_errors),
         ctypes.POINTER(muslin_problem))),
    "muslin_accuracy_top_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_accuracy_top_spec), ctypes.c_uint32)),
    "muslin_accuracy_top": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_accuracy_top_spec), ctypes.POINTER(muslin_accuracy_top_errors),
         ctypes.POINTER(muslin_problem))),
    "muslin_accuracy_meet_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_accuracy_meet_spec), ctypes.c_uint32)),
    "muslin_accuracy_meet": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_accuracy_meet_spec), ctypes.POINTER(muslin_accuracy_meeting),
         ctypes.POINTER(muslin_problem))),
    "muslin_shrinkage_change": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(muslin_problem))),
    "muslin_wash_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_wash_spec), ctypes.c_uint32)),
    "muslin_shrinkage_measure": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_wash_spec), ctypes.POINTER(muslin_wash_change), ctypes.POINTER(muslin_problem))),
    "muslin_shrinkage_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_shrinkage_spec), ctypes.c_uint32)),
    "muslin_shrinkage_size_to_make": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_shrinkage_spec), ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_size_to_make), ctypes.POINTER(muslin_problem))),
    "muslin_shrinkage_becomes": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_shrinkage_spec), ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_washed_size), ctypes.POINTER(muslin_problem))),
    "muslin_shrinkage_from_sample": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_rounded), ctypes.POINTER(muslin_problem))),
    "muslin_shrinkage_governs": (ctypes.c_int32, 
        (ctypes.c_int32, ctypes.c_int32, ctypes.c_int32, ctypes.POINTER(muslin_governing),
         ctypes.POINTER(muslin_problem))),
    "muslin_prewash_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_prewash_spec), ctypes.c_uint32)),
    "muslin_shrinkage_prewash": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_prewash_spec), ctypes.POINTER(muslin_prewash), ctypes.POINTER(muslin_problem))),
    "muslin_fabric_usable_width": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.c_int32, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_purchase_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_purchase_spec), ctypes.c_uint32)),
    "muslin_fabric_purchase": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_purchase_spec), ctypes.POINTER(muslin_purchase), ctypes.POINTER(muslin_problem))),
    "muslin_cloth_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_cloth_spec), ctypes.c_uint32)),
    "muslin_fabric_pieces": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cloth_spec), ctypes.POINTER(muslin_cloth_pieces), ctypes.POINTER(muslin_problem))),
    "muslin_strips_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_strips_spec), ctypes.c_uint32)),
    "muslin_fabric_strips": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_strips_spec), ctypes.POINTER(muslin_strips), ctypes.POINTER(muslin_problem))),
    "muslin_fabric_area_bound": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_stock_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_stock_spec), ctypes.c_uint32)),
    "muslin_stock_size": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stock_spec), ctypes.c_int32, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_stock_strips": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stock_spec), ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_stock_yield),
         ctypes.POINTER(muslin_problem))),
    "muslin_stock_check": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stock_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_uint32),
         ctypes.POINTER(muslin_problem))),
    "muslin_print_may_turn": (ctypes.c_int32, 
        (ctypes.c_int32, ctypes.c_int32, ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(muslin_problem))),
    "muslin_motif_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_motif_spec), ctypes.c_uint32)),
    "muslin_motif_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_motif_spec), ctypes.POINTER(muslin_motif), ctypes.POINTER(muslin_problem))),
    "muslin_motif_from_cloth": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_motif_spec), ctypes.c_int64, ctypes.POINTER(muslin_motif_yield),
         ctypes.POINTER(muslin_problem))),
    "muslin_stack_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_stack_spec), ctypes.c_uint32)),
    "muslin_stack_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stack_spec), ctypes.POINTER(muslin_stack), ctypes.POINTER(muslin_problem))),
    "muslin_reference_count": (ctypes.c_int32, 
        (ctypes.c_int32, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_reference_row": (ctypes.c_int32, 
        (ctypes.c_int32, ctypes.c_int64, ctypes.POINTER(muslin_reference), ctypes.POINTER(muslin_problem))),
    "muslin_reference_name": (ctypes.c_char_p, (ctypes.c_int32, ctypes.c_int64)),
    "muslin_reference_source": (ctypes.c_char_p, (ctypes.c_int32, ctypes.c_int64)),
    "muslin_reference_note": (ctypes.c_char_p, (ctypes.c_int32, ctypes.c_int64)),
    "muslin_yield_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_yield_spec), ctypes.c_uint32)),
    "muslin_stripset_yield": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_yield_spec), ctypes.POINTER(muslin_yield), ctypes.POINTER(muslin_problem))),
    "muslin_stripset_shortest": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(ctypes.c_uint32), ctypes.POINTER(muslin_problem))),
    "muslin_need_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_need_spec), ctypes.c_uint32)),
    "muslin_stripset_need": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_need_spec), ctypes.POINTER(muslin_need), ctypes.POINTER(muslin_problem))),
    "muslin_harvest_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_harvest_spec), ctypes.c_uint32)),
    "muslin_stripset_harvest": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_harvest_spec), ctypes.POINTER(muslin_harvest), ctypes.POINTER(muslin_problem))),
    "muslin_stripset_print_init": (ctypes.c_int32, (ctypes.POINTER(muslin_stripset_print), ctypes.c_uint32)),
    "muslin_stripset_prints": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stripset_print), ctypes.c_size_t, ctypes.c_size_t, ctypes.c_int64,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutlist_piece_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_uint32)),
    "muslin_cutlist_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_cutlist_spec), ctypes.c_uint32)),
    "muslin_cutlist_from_yardage": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(muslin_cutlist_spec), ctypes.POINTER(muslin_cutlist_yardage), ctypes.POINTER(muslin_problem))),
    "muslin_cutlist_yardage_rows": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(muslin_cutlist_spec), ctypes.POINTER(muslin_cutlist_row), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutlist_from_stock": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_stock_spec),
         ctypes.POINTER(muslin_cutlist_stock), ctypes.POINTER(muslin_problem))),
    "muslin_cutlist_stock_rows": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_stock_spec),
         ctypes.POINTER(muslin_cutlist_row), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_cutlist_stock_parts": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_stock_spec),
         ctypes.POINTER(muslin_cutlist_part), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_cutlist_lists_from_stock": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_stock_spec),
         ctypes.POINTER(muslin_cutlist_lists), ctypes.POINTER(muslin_problem))),
    "muslin_cutlist_lists_rows": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_stock_spec),
         ctypes.POINTER(muslin_cutlist_row), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_cutlist_substitute": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutlist_piece_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_stock_spec),
         ctypes.c_int64, ctypes.POINTER(muslin_substitution), ctypes.POINTER(muslin_problem))),
    "muslin_corner_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_corner_spec), ctypes.c_uint32)),
    "muslin_shape_check": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_corner_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_shape),
         ctypes.POINTER(muslin_problem))),
    "muslin_shape_template": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_corner_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.c_int32,
         ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_template_corner), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_shape_piece_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_shape_piece_spec), ctypes.c_uint32)),
    "muslin_shape_measure": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_corner_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_shape_piece_spec),
         ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_shape_piece), ctypes.POINTER(muslin_problem))),
    "muslin_shape_foundation": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_corner_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.c_int32, ctypes.c_int64,
         ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quarter_circle_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quarter_circle_spec), ctypes.c_uint32)),
    "muslin_shape_quarter_circle": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quarter_circle_spec), ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_quarter_circle), ctypes.POINTER(muslin_problem))),
    "muslin_arc_length": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int32, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded),
         ctypes.POINTER(muslin_problem))),
    "muslin_shape_regular_polygon": (ctypes.c_int32, 
        (ctypes.c_int32, ctypes.c_int32, ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_regular_polygon), ctypes.POINTER(muslin_problem))),
    "muslin_unit_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_unit_spec), ctypes.c_uint32)),
    "muslin_unit_recipe": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_unit_spec), ctypes.POINTER(muslin_unit_plan), ctypes.POINTER(muslin_problem))),
    "muslin_unit_pieces": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_unit_spec), ctypes.POINTER(muslin_unit_piece), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_unit_recipe_count": (ctypes.c_int64, ()),
    "muslin_unit_recipe_at": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(ctypes.c_int32),
         ctypes.POINTER(muslin_problem))),
    "muslin_unit_stock_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_unit_stock_spec), ctypes.c_uint32)),
    "muslin_unit_from_stock": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_unit_spec), ctypes.POINTER(muslin_unit_stock_spec), ctypes.POINTER(muslin_unit_yield),
         ctypes.POINTER(muslin_problem))),
    "muslin_unit_largest": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_unit_spec), ctypes.POINTER(muslin_unit_stock_spec), ctypes.POINTER(muslin_unit_yield),
         ctypes.POINTER(muslin_problem))),
    "muslin_unit_makes": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_unit_spec), ctypes.POINTER(muslin_unit_stock_spec), ctypes.POINTER(muslin_unit_yield),
         ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_unit_outlines": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_unit_spec), ctypes.c_int32, ctypes.POINTER(muslin_unit_corner), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_unit_steps": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_unit_spec), ctypes.POINTER(muslin_unit_step), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_unit_step_sentence": (ctypes.c_char_p, (ctypes.c_int32,)),
    "muslin_setting_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_setting_spec), ctypes.c_uint32)),
    "muslin_setting_straight": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_setting_spec), ctypes.POINTER(muslin_setting), ctypes.POINTER(muslin_problem))),
    "muslin_setting_turn": (ctypes.c_int32, 
        (ctypes.c_int32, ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int32),
         ctypes.POINTER(muslin_problem))),
    "muslin_block_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_block_spec), ctypes.c_uint32)),
    "muslin_block_from_segments": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_block_spec), ctypes.POINTER(muslin_block), ctypes.POINTER(muslin_problem))),
    "muslin_join_loss": (ctypes.c_int32, 
        (ctypes.c_int32, ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_run_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_run_spec), ctypes.c_uint32)),
    "muslin_run_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_run_spec), ctypes.POINTER(muslin_run), ctypes.POINTER(muslin_problem))),
    "muslin_border_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_border_spec), ctypes.c_uint32)),
    "muslin_border_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_border_spec), ctypes.POINTER(muslin_border), ctypes.POINTER(muslin_problem))),
    "muslin_setting_sashed_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_setting_sashed_spec), ctypes.c_uint32)),
    "muslin_setting_sashed": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_setting_sashed_spec), ctypes.POINTER(muslin_setting_sashed_plan),
         ctypes.POINTER(muslin_problem))),
    "muslin_setting_sashed_pieces": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_setting_sashed_spec), ctypes.POINTER(muslin_sash_piece), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_setting_alternate_spec_init": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_setting_alternate_spec), ctypes.c_uint32)),
    "muslin_setting_alternate": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_setting_alternate_spec), ctypes.POINTER(muslin_setting_alternate_plan),
         ctypes.POINTER(muslin_problem))),
    "muslin_setting_line_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_setting_line_spec), ctypes.c_uint32)),
    "muslin_setting_line": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.POINTER(muslin_setting_line_spec),
         ctypes.POINTER(muslin_setting_line_plan), ctypes.POINTER(muslin_problem))),
    "muslin_setting_line_places": (ctypes.c_int32, 
        (ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.POINTER(muslin_setting_line_spec),
         ctypes.POINTER(muslin_setting_line_place), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_setting_point_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_setting_point_spec), ctypes.c_uint32)),
    "muslin_setting_point": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_setting_point_spec), ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_setting_point_plan),
         ctypes.POINTER(muslin_problem))),
    "muslin_setting_point_block_for_width": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_setting_point_spec), ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_setting_point_block_from_side": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_setting_point_spec), ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_rounded), ctypes.POINTER(muslin_problem))),
    "muslin_logcabin_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_logcabin_spec), ctypes.c_uint32)),
    "muslin_logcabin_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_logcabin_spec), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(muslin_logcabin), ctypes.POINTER(muslin_problem))),
    "muslin_logcabin_logs": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_logcabin_spec), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(muslin_logcabin_log), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_logcabin_strips": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_logcabin_spec), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(muslin_logcabin_strip), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_logcabin_fit_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_logcabin_fit_spec), ctypes.c_uint32)),
    "muslin_logcabin_log_for": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_logcabin_fit_spec), ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_logcabin_fit), ctypes.POINTER(muslin_problem))),
    "muslin_logcabin_rounds_for": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_logcabin_fit_spec), ctypes.POINTER(muslin_logcabin_fit),
         ctypes.POINTER(muslin_problem))),
    "muslin_frame_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_frame_spec), ctypes.c_uint32)),
    "muslin_frame_pieces": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_frame_spec), ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_frame),
         ctypes.POINTER(muslin_problem))),
    "muslin_frame_outline": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_frame_spec), ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_frame_corner),
         ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_medallion_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_medallion_spec), ctypes.c_uint32)),
    "muslin_medallion_row_init": (ctypes.c_int32, (ctypes.POINTER(muslin_medallion_row), ctypes.c_uint32)),
    "muslin_medallion_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_medallion_spec), ctypes.POINTER(muslin_medallion_row), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(muslin_medallion), ctypes.POINTER(muslin_problem))),
    "muslin_repeat_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_repeat_spec), ctypes.c_uint32)),
    "muslin_repeat_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_repeat_spec), ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_repeat),
         ctypes.POINTER(muslin_problem))),
    "muslin_repeat_common": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_common_repeat), ctypes.POINTER(muslin_problem))),
    "muslin_point_border_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_point_border_spec), ctypes.c_uint32)),
    "muslin_point_border_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_point_border_spec), ctypes.POINTER(muslin_rounding_spec),
         ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_point_border), ctypes.POINTER(muslin_problem))),
    "muslin_bed_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_bed_spec), ctypes.c_uint32)),
    "muslin_bed_size": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_bed_spec), ctypes.POINTER(muslin_bed), ctypes.POINTER(muslin_problem))),
    "muslin_bed_covered_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_bed_covered_spec), ctypes.c_uint32)),
    "muslin_bed_covered": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_bed_covered_spec), ctypes.POINTER(muslin_bed_cover), ctypes.POINTER(muslin_problem))),
    "muslin_fit_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_fit_spec), ctypes.c_uint32)),
    "muslin_fit_settings": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_fit_spec), ctypes.POINTER(muslin_fit), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_fit_nearest": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_fit_spec), ctypes.POINTER(muslin_fit), ctypes.POINTER(muslin_problem))),
    "muslin_fit_across_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_fit_across_spec), ctypes.c_uint32)),
    "muslin_fit_across": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_fit_across_spec), ctypes.POINTER(muslin_fit_across_blocks),
         ctypes.POINTER(muslin_problem))),
    "muslin_fit_triangles_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_fit_triangles_spec), ctypes.c_uint32)),
    "muslin_fit_triangles": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_fit_triangles_spec), ctypes.POINTER(muslin_fit_triangle_rows),
         ctypes.POINTER(muslin_problem))),
    "muslin_fit_rescale_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_fit_rescale_spec), ctypes.c_uint32)),
    "muslin_fit_rescale_row_init": (ctypes.c_int32, (ctypes.POINTER(muslin_fit_rescale_row), ctypes.c_uint32)),
    "muslin_fit_rescale": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_fit_rescale_spec), ctypes.POINTER(muslin_fit_rescale_row), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(muslin_fit_rescaled), ctypes.POINTER(muslin_problem))),
    "muslin_binding_width_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_binding_width_spec), ctypes.c_uint32)),
    "muslin_binding_measure": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_binding_width_spec), ctypes.POINTER(muslin_binding_width),
         ctypes.POINTER(muslin_problem))),
    "muslin_binding_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_binding_spec), ctypes.c_uint32)),
    "muslin_binding_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_binding_spec), ctypes.POINTER(muslin_binding), ctypes.POINTER(muslin_problem))),
    "muslin_bias_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_bias_spec), ctypes.c_uint32)),
    "muslin_bias_tube": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_bias_spec), ctypes.POINTER(muslin_bias), ctypes.POINTER(muslin_problem))),
    "muslin_bias_least_square": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_bias_spec), ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_bias),
         ctypes.POINTER(muslin_problem))),
    "muslin_bias_strips": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_bias_spec), ctypes.POINTER(muslin_bias), ctypes.POINTER(muslin_problem))),
    "muslin_batting_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_batting_spec), ctypes.c_uint32)),
    "muslin_batting_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_batting_spec), ctypes.POINTER(muslin_batting), ctypes.POINTER(muslin_problem))),
    "muslin_backing_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_backing_spec), ctypes.c_uint32)),
    "muslin_backing_layouts": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_backing_spec), ctypes.POINTER(muslin_backing), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_backing_panels": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_backing_spec), ctypes.c_int32, ctypes.POINTER(muslin_panel), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_hanging_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_hanging_spec), ctypes.c_uint32)),
    "muslin_hanging_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_hanging_spec), ctypes.POINTER(muslin_hanging), ctypes.POINTER(muslin_problem))),
    "muslin_stripquilt_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_stripquilt_spec), ctypes.c_uint32)),
    "muslin_stripquilt_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stripquilt_spec), ctypes.POINTER(muslin_stripquilt), ctypes.POINTER(muslin_problem))),
    "muslin_stripquilt_strips_needed": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stripquilt_spec), ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_stripquilt_groups": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stripquilt_spec), ctypes.POINTER(muslin_block_group), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_stripquilt_pressing": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_stripquilt_spec), ctypes.c_int64, ctypes.POINTER(ctypes.c_int32),
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_piecing_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_piecing_spec), ctypes.c_uint32)),
    "muslin_piecing_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_piecing_spec), ctypes.POINTER(muslin_piecing), ctypes.POINTER(muslin_problem))),
    "muslin_thread_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_thread_spec), ctypes.c_uint32)),
    "muslin_thread_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_thread_spec), ctypes.POINTER(muslin_thread), ctypes.POINTER(muslin_problem))),
    "muslin_stitch_count": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.c_int32, ctypes.c_int32, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(ctypes.c_int32), ctypes.POINTER(muslin_problem))),
    "muslin_stitch_length": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_rounding_spec), ctypes.POINTER(muslin_rounded),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilting_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilting_spec), ctypes.c_uint32)),
    "muslin_quilting_lines": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilting_spec), ctypes.POINTER(muslin_quilting), ctypes.POINTER(muslin_problem))),
    "muslin_weight_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_weight_spec), ctypes.c_uint32)),
    "muslin_weight_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_weight_spec), ctypes.POINTER(muslin_weight), ctypes.POINTER(muslin_problem))),
    "muslin_density_from_ounces": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int32, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_mass_in_ounces": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_int32, ctypes.c_int32, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_cost_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_cost_spec), ctypes.c_uint32)),
    "muslin_cost_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cost_spec), ctypes.POINTER(muslin_cost), ctypes.POINTER(muslin_problem))),
    "muslin_cost_total": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cost_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_spec), ctypes.c_uint32)),
    "muslin_quilt_create": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt_spec), ctypes.POINTER(muslin_allocator),
         ctypes.POINTER(ctypes.POINTER(muslin_quilt)), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_free": (None, (ctypes.POINTER(muslin_quilt),)),
    "muslin_id_sort": (ctypes.c_int32, (ctypes.c_int64,)),
    "muslin_id_number": (ctypes.c_int64, (ctypes.c_int64,)),
    "muslin_quilt_fabric_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_fabric_spec), ctypes.c_uint32)),
    "muslin_quilt_fabric": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_fabric_spec), ctypes.c_char_p, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_measure": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_char_p, ctypes.c_size_t, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_fixed": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_sum_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_sum_spec), ctypes.c_uint32)),
    "muslin_quilt_sum": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_sum_spec), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_extent": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.c_int32, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_seam": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_name": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.c_char_p, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_patch_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_patch_spec), ctypes.c_uint32)),
    "muslin_quilt_patch": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_patch_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_unit_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_unit_spec), ctypes.c_uint32)),
    "muslin_quilt_unit": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_unit_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_shape": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_corner_spec), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.c_int64, ctypes.c_int64,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_join_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_join_spec), ctypes.c_uint32)),
    "muslin_quilt_join": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_join_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_grid": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_repeat": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int32),
         ctypes.c_size_t, ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_turn": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.c_int32, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_mirror": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_lay": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.c_int32, ctypes.c_int32, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_trim_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_trim_spec), ctypes.c_uint32)),
    "muslin_quilt_trim": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_trim_spec),
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_pinwheel_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_pinwheel_spec), ctypes.c_uint32)),
    "muslin_quilt_pinwheel": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_pinwheel_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_set_in_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_set_in_spec), ctypes.c_uint32)),
    "muslin_quilt_set_in": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_set_in_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_log_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_log_spec), ctypes.c_uint32)),
    "muslin_quilt_logs": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_log_spec), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_surround_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_surround_spec), ctypes.c_uint32)),
    "muslin_quilt_surround": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_surround_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_sashed_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_sashed_spec), ctypes.c_uint32)),
    "muslin_quilt_sashed": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_sashed_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_diagonal_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_diagonal_spec), ctypes.c_uint32)),
    "muslin_quilt_diagonal": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_diagonal_spec), ctypes.POINTER(ctypes.c_int64),
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_sixty_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_quilt_sixty_spec), ctypes.c_uint32)),
    "muslin_quilt_sixty_piece_spec_init": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt_sixty_piece_spec), ctypes.c_uint32)),
    "muslin_quilt_sixty": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_quilt_sixty_spec),
         ctypes.POINTER(muslin_quilt_sixty_piece_spec), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_id": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int32, ctypes.c_int64, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_fabric": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_fabric_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_measure": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_tree_measure),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_terms": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_sum_spec), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_node": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_node), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_children": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_patch": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_patch_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_unit": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_unit_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_join": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_join_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_trim": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_trim_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_pinwheel": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_pinwheel_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_set_in": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_set_in_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_diagonal": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_diagonal_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_sixty": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_sixty_spec),
         ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_sixty_pieces": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_quilt_sixty_piece_spec), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_shape": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_corner_spec), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_read_fabrics": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_quilt_counts": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.POINTER(muslin_part_counts), ctypes.POINTER(muslin_problem))),
    "muslin_solution_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_solution_spec), ctypes.c_uint32)),
    "muslin_solution_value_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_solution_value_spec), ctypes.c_uint32)),
    "muslin_solution_create": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_quilt), ctypes.c_int64, ctypes.POINTER(muslin_solution_spec),
         ctypes.POINTER(muslin_solution_value_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_allocator),
         ctypes.POINTER(ctypes.POINTER(muslin_solution)), ctypes.POINTER(muslin_problem))),
    "muslin_solution_free": (None, (ctypes.POINTER(muslin_solution),)),
    "muslin_solution_size": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.POINTER(muslin_node_size),
         ctypes.POINTER(muslin_problem))),
    "muslin_solution_value": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_solution_totals": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.POINTER(muslin_solution_total), ctypes.POINTER(muslin_problem))),
    "muslin_solution_misfits": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.POINTER(muslin_misfit), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_solution_path": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_solution_cuts": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.POINTER(muslin_solution_cut), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_solution_cut_nodes": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_solution_stripsets": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.POINTER(muslin_stripset), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_solution_explain": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.c_int32, ctypes.POINTER(muslin_term), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_solution_outlines": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.c_int32, ctypes.c_int64,
         ctypes.POINTER(muslin_outline), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_outline_corner),
         ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_pressing_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_pressing_spec), ctypes.c_uint32)),
    "muslin_pressing_create": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.POINTER(muslin_pressing_spec), ctypes.POINTER(muslin_allocator),
         muslin_progress, ctypes.c_void_p, ctypes.POINTER(ctypes.POINTER(muslin_pressing)),
         ctypes.POINTER(muslin_problem))),
    "muslin_pressing_free": (None, (ctypes.POINTER(muslin_pressing),)),
    "muslin_pressing_totals": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_pressing), ctypes.POINTER(muslin_pressing_total), ctypes.POINTER(muslin_problem))),
    "muslin_pressing_seams": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_pressing), ctypes.POINTER(muslin_pressing_seam), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_pressing_children": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_pressing), ctypes.POINTER(muslin_pressing_child), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_pressing_exceptions": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_pressing), ctypes.POINTER(muslin_pressing_exception), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_sewing_steps": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.POINTER(muslin_sewing_step), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_sewing_feeds": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.POINTER(muslin_sewing_feed), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_sewing_label": (ctypes.c_int32, 
        (ctypes.c_int64, ctypes.c_char_p, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_sewing_totals": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.c_int64, ctypes.POINTER(muslin_sewing_total),
         ctypes.POINTER(muslin_problem))),
    "muslin_scatter_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_scatter_spec), ctypes.c_uint32)),
    "muslin_touch_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_touch_spec), ctypes.c_uint32)),
    "muslin_scatter_prints": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_scatter_spec), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t,
         ctypes.POINTER(muslin_touch_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_allocator), muslin_progress, ctypes.c_void_p, ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_scattered), ctypes.POINTER(muslin_problem))),
    "muslin_scatter_blocks_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_scatter_blocks_spec), ctypes.c_uint32)),
    "muslin_edge_prints_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_edge_prints_spec), ctypes.c_uint32)),
    "muslin_scatter_blocks": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_scatter_blocks_spec), ctypes.POINTER(muslin_edge_prints_spec), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(muslin_allocator), muslin_progress, ctypes.c_void_p,
         ctypes.POINTER(muslin_placed_block), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_scattered), ctypes.POINTER(muslin_problem))),
    "muslin_scatter_sets": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_scatter_spec), ctypes.POINTER(ctypes.c_int64), ctypes.c_size_t, ctypes.c_int64,
         ctypes.c_int64, ctypes.POINTER(muslin_allocator), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_scattered), ctypes.POINTER(muslin_problem))),
    "muslin_scatter_touches": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.POINTER(muslin_allocator),
         ctypes.POINTER(muslin_touch_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_blank_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_blank_spec), ctypes.c_uint32)),
    "muslin_cutplan_stock_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_cutplan_stock_spec), ctypes.c_uint32)),
    "muslin_cutplan_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_cutplan_spec), ctypes.c_uint32)),
    "muslin_cutplan_create": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan_spec), ctypes.POINTER(muslin_blank_spec), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(muslin_cutplan_stock_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_allocator),
         muslin_progress, ctypes.c_void_p, ctypes.POINTER(ctypes.POINTER(muslin_cutplan)),
         ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_free": (None, (ctypes.POINTER(muslin_cutplan),)),
    "muslin_cutplan_totals": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(muslin_cutplan_total), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_strips": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(muslin_cutplan_strip), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_places": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(muslin_cutplan_place), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_blanks": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.c_int64, ctypes.POINTER(muslin_cutplan_blank), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_left_overs": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.c_int64, ctypes.POINTER(muslin_cutplan_left_over), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_pieces": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(muslin_cutplan_piece), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_stock": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(muslin_cutplan_stock_used), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_widths": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.c_int64, ctypes.c_int64, ctypes.c_int64, muslin_progress,
         ctypes.c_void_p, ctypes.POINTER(muslin_cutplan_width), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_narrowest": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(ctypes.c_int64), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_sizes": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(muslin_cutplan_size), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_ways": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(muslin_cutplan_way), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_cases": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.POINTER(muslin_cutplan_case), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_worths": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), ctypes.c_int64, ctypes.POINTER(muslin_cutplan_worth), ctypes.c_size_t,
         ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(ctypes.c_int64),
         ctypes.POINTER(muslin_problem))),
    "muslin_cutplan_check": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_cutplan), muslin_progress, ctypes.c_void_p, ctypes.POINTER(muslin_cutplan_checked),
         ctypes.POINTER(muslin_problem))),
    "muslin_yardage_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_yardage_spec), ctypes.c_uint32)),
    "muslin_extra_cut_spec_init": (ctypes.c_int32, (ctypes.POINTER(muslin_extra_cut_spec), ctypes.c_uint32)),
    "muslin_yardage_pieces": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.c_int64, ctypes.POINTER(muslin_yardage_spec),
         ctypes.POINTER(muslin_blank_spec), ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(ctypes.c_size_t),
         ctypes.POINTER(muslin_problem))),
    "muslin_yardage_create": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_solution), ctypes.POINTER(muslin_yardage_spec), ctypes.POINTER(muslin_extra_cut_spec),
         ctypes.c_size_t, ctypes.c_size_t, ctypes.POINTER(muslin_allocator), muslin_progress, ctypes.c_void_p,
         ctypes.POINTER(ctypes.POINTER(muslin_yardage)), ctypes.POINTER(muslin_problem))),
    "muslin_yardage_free": (None, (ctypes.POINTER(muslin_yardage),)),
    "muslin_yardage_fabrics": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_yardage), ctypes.POINTER(muslin_fabric_yardage), ctypes.c_size_t, ctypes.c_size_t,
         ctypes.POINTER(ctypes.c_size_t), ctypes.POINTER(muslin_problem))),
    "muslin_yardage_plan": (ctypes.c_int32, 
        (ctypes.POINTER(muslin_yardage), ctypes.c_int64, ctypes.POINTER(ctypes.POINTER(muslin_cutplan)),
         ctypes.POINTER(muslin_problem))),
}
