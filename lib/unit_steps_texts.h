/* unit_steps_texts.h - a sentence for each step of sewing, in the order of enum muslin_sewing_step.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_UNIT_STEPS_TEXTS_H
#define MUSLIN_UNIT_STEPS_TEXTS_H

#define STEP_SENTENCES(X) \
    X(unknown, "This number is no sewing step of this library version.") \
    X(mark_line, "On the back of {piece}, draw a line from corner to corner.") \
    X(mark_both, "On the back of {piece}, draw lines from corner to corner both ways.") \
    X(mark_middles, "On the back of {piece}, draw four lines, each from the middle of a side to the middle of the " \
                    "next.") \
    X(mark_across, "On the back of one half-square, draw a line from corner to corner across its seam.") \
    X(mark_corners, "On the back of {piece}, mark the point at each corner that lies {measure} inside both edges.") \
    X(pair, "Lay {piece} on {other}, right sides together and edges even.") \
    X(pair_halves, "Lay the half-squares together, right sides together, each fabric on the other one, so that their " \
                   "seams lock.") \
    X(pair_corner, "Lay {piece} on a free corner of {other}, right sides together and edges even, the line cutting " \
                   "the corner off.") \
    X(pair_opposite, "Lay {piece} on each of two opposite corners of {other}, right sides together and edges even, " \
                     "so that they overlap in the middle and their lines run on.") \
    X(on_line, "Sew on the drawn line.") \
    X(beside, "Sew on both sides of the drawn line, {measure} from it.") \
    X(round, "Sew round all four edges, {measure} from them.") \
    X(cut_apart, "Cut apart on the drawn line.") \
    X(cut_squares, "Cut through the middle both ways, parallel to the edges, into four squares.") \
    X(cut_diagonals, "Cut from corner to corner both ways, into four.") \
    X(trim_corner, "Cut the corner off {measure} beyond the seam, through both layers.") \
    X(fold_back, "Fold {piece} back over its seam and press it: it fills the corner again.") \
    X(press_open, "Press the seam open.") \
    X(press_to, "Press the seam towards fabric {region}.") \
    X(join, "Sew {piece} to {other} along one long edge, with a seam of {measure}.") \
    X(join_long, "Sew {piece} and {other} together along their long sides, with a seam of {measure}.") \
    X(join_short, "Sew {piece} and {other} together along a short side, with a seam of {measure}; the same fabric " \
                  "always lies on the same side.") \
    X(join_point, "Sew the long side of {piece} to a short side of {other}, with a seam of {measure}; let the points " \
                  "meet at the foot and stick out at the top.") \
    X(join_centred, "Sew the long side of {piece} to one of the sides of {other} that it fits, with a seam of " \
                    "{measure}; opposite sides first, the points sticking out alike at both ends.") \
    X(join_again, "Sew the long side of {piece} to the other side of {other} in the same way, with a seam of " \
                  "{measure}.") \
    X(join_parts, "Sew the parts together in pairs along their long sides, the seams meeting in the middle, with a " \
                  "seam of {measure}; where points are marked, stop at the marks.") \
    X(set_in, "Set {piece} into an inner corner: sew each of its two sides from mark to mark, with a seam of " \
              "{measure}, and turn the work between them.") \
    X(partial, "Sew {piece} to {other}, with a seam of {measure}, from the middle of the unit outwards; stop at the " \
               "mark and secure the stitches.") \
    X(cut_slanted, "Cut across the strip by parallel slanted cuts, {measure} apart; each further cut gives {piece}.") \
    X(cut_turning, "Turn the ruler up and down along the strip, and cut {piece} with each turn.") \
    X(cut_to_shape, "Cut the corners off {piece} by a ruler or template, so that all sides come out alike.") \
    X(cut_on_point, "Cut a square on point, {measure} wide, with the seam from corner to corner.") \
    X(trim_to, "Trim to {measure} by {measure_height} unfinished: seams run into their corners, and points lie one " \
               "seam allowance inside the edge.") \
    X(pair_strips, "Lay the strip for {piece} on the strip for {other}, right sides together and edges even, so that " \
                   "both are cut at one go.")

#endif
