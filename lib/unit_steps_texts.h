/* unit_steps_texts.h - a sentence for each step of sewing, in the order of enum muslin_unit_step_kind.
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
    X(mark_across, "On the back of one of the two half-square triangles, draw a line from corner to corner across " \
                   "its seam.") \
    X(mark_corners, "On the back of {piece}, mark the point at each corner that lies {measure} inside both edges.") \
    X(pair, "Lay {piece} on {other}, right sides together and edges even.") \
    X(pair_halves, "Lay the two half-square triangles together, right sides together, each fabric on the other " \
                   "one, so that their seams lock.") \
    X(pair_corner, "Lay {piece} on one of two opposite corners of {other}, right sides together and edges even, " \
                   "the line cutting that corner off.") \
    X(pair_opposite, "Lay {piece} on each of two opposite corners of {other}, right sides together and edges " \
                     "even, so that they overlap in the middle and their lines run on.") \
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
    X(join_point, "Sew the long side of {piece} to a short side of {other}, with a seam of {measure}; let the " \
                  "points meet at the foot, so that a dog-ear sticks out at the top.") \
    X(join_centred, "Sew the long side of {piece} to one of two opposite sides of {other}, with a seam of " \
                    "{measure}, a dog-ear sticking out alike at both ends.") \
    X(join_again, "Sew the long side of {piece} to the other short side of the large triangle in the same way, " \
                  "with a seam of {measure}.") \
    X(join_parts, "Sew the parts together in pairs along their long sides, the seams meeting in the middle, with " \
                  "a seam of {measure}.") \
    X(set_in, "Set {piece} into every second inner corner between two points of the star: lay its mark on theirs, " \
              "sew one side from the marks out to the raw edge with a seam of {measure}, turn the work, and sew " \
              "the next side in the same way. What is left over hangs outside and is trimmed in the end.") \
    X(partial, "Sew {piece} to {other}, with a seam of {measure}, from the raw edge in the middle of the star " \
               "outwards; stop at the mark and secure the stitches.") \
    X(cut_slanted, "Cut one end of the strip off at {angle} degrees, then cut across it by parallel cuts " \
                   "{measure} apart, measured straight between the cuts; each further cut gives {piece}.") \
    X(cut_turning, "Lay the {angle} degree line of a ruler along the edge of the strip and cut its end off; cut on " \
                   "with the ruler leaning to the one side and to the other in turn, so that the pieces stand up and " \
                   "down along the strip. Each cut gives {piece}; check its edges against the list.") \
    X(cut_to_shape, "For {piece}, measure {from_corner} from each corner of the square along both of its edges, and " \
                    "cut the four corners off from mark to mark, at {angle} degrees: each edge is then {measure} " \
                    "long as cut.") \
    X(cut_on_point, "Cut a square on point, {measure} wide unfinished, with the seam from corner to corner.") \
    X(trim_to, "Trim to {measure} by {measure_height} unfinished: the seam runs from corner to corner.") \
    X(pair_strips, "Lay the strip for {piece} on the strip for {other}, right sides together and edges even, so " \
                   "that both are cut at one go.") \
    X(mark_across_each, "On the back of each of the two half-square triangles, draw a line from corner to corner " \
                        "across its seam.") \
    X(mark_wide, "On the back of {piece}, mark the point at both wide-angled corners that lies {measure} inside " \
                 "both edges.") \
    X(mark_inner, "On the back of {piece}, mark the point at one right-angled corner that lies {measure} inside " \
                  "both edges: that corner will be set in.") \
    X(pair_each_half, "Lay each of the two half-square triangles on {other}, cut {measure}, right sides together " \
                      "and edges even; check it against that square first, and trim the larger to the smaller.") \
    X(pair_corner_left, "Lay {piece} on one of the two corners of {other} that have none yet, right sides " \
                        "together and edges even, the line cutting that corner off.") \
    X(pair_last_corner, "Lay {piece} on the one corner of the large square that {other} has kept, right sides " \
                        "together and edges even; its line runs from that corner in between the two small " \
                        "triangles.") \
    X(pair_end, "Lay {piece} on one end of {other}, right sides together and edges even; its line runs from the " \
                "upper long edge down and outwards into the lower corner.") \
    X(pair_other_end, "Lay {piece} on the other end of the same long edge of {other}, right sides together and " \
                      "edges even; its line too runs down and outwards, so that the two lines cross one seam " \
                      "allowance below the upper edge.") \
    X(beside_both, "Sew on both sides of both drawn lines, {measure} from them.") \
    X(cut_each_apart, "Cut each of the four squares apart on its drawn line.") \
    X(join_marked, "Sew {piece} and {other} together along their long sides, mark on mark, with a seam of " \
                   "{measure}.") \
    X(join_others, "Sew the long side of {piece} to one of the other two sides of {other}, with a seam of " \
                   "{measure}, a dog-ear sticking out alike at both ends.") \
    X(join_every_second, "Sew the long side of {piece} to one of the four slanted sides of {other}, where its " \
                         "corners were cut off, with a seam of {measure}: to opposite ones first, a dog-ear sticking " \
                         "out alike at both ends. Slanted sides are bias: do not stretch them.") \
    X(join_wedges, "Sew {piece} and {other} together along a long side, tips and wide ends meeting, with a seam " \
                   "of {measure}; the same fabric always lies on the same side.") \
    X(join_middle, "Sew the parts together in pairs along their straight sides, with a seam of {measure}; match " \
                   "the tips and the seams in the middle.") \
    X(join_wide_end, "Sew the long side of {piece} to the wide end of {other}, with a seam of {measure}: to every " \
                     "second of the eight sides, opposite ones first, a dog-ear sticking out alike at both ends.") \
    X(partial_parts, "Sew two pairs together in the same way, with a seam of {measure}, from the raw edge in the " \
                     "middle of the star outwards; stop at the mark: half a star.") \
    X(join_through, "Sew the two halves together by one seam of {measure} from mark to mark, straight through the " \
                    "middle, where the seams meet.") \
    X(set_in_short, "Set {piece} into one of the inner corners that are left: lay its mark on theirs, sew one of " \
                    "its two short sides from the marks out to the raw edge with a seam of {measure}, turn the " \
                    "work, and sew the other short side in the same way.") \
    X(trim_ears, "Trim the dog-ears off level with the edges.") \
    X(trim_crossed, "Trim to {measure} by {measure_height} unfinished: the seams meet in the middle and run out " \
                    "into corners.") \
    X(trim_geese, "Trim to {measure} by {measure_height} unfinished: the seams run into both lower corners, and " \
                  "the point lies one seam allowance inside the middle of the upper edge.") \
    X(trim_points, "Trim to {measure} by {measure_height} unfinished: a point of the inner square lies one seam " \
                   "allowance inside the middle of each edge.") \
    X(trim_corners, "Trim to {measure} by {measure_height} unfinished: each corner's seam meets the two edges " \
                    "{from_corner} from that corner.") \
    X(trim_star, "Trim to {measure} by {measure_height} unfinished: along each edge two points lie one seam " \
                 "allowance inside it, {from_corner} from its corners.") \
    X(trim_leaning, "Trim to {measure} by {measure_height} unfinished: the seam does not run into the corners, " \
                    "but meets each of the two shorter edges {from_corner} from the corner it runs towards.") \
    X(cut_lengths, "Cut the strip straight across into rectangles {measure} long; each gives {piece}.") \
    X(cut_points, "For {piece}, mark both long edges of the rectangle {from_corner} from each corner, and the middle " \
                  "of both ends, half the width of the strip from each corner; cut the four corners off from mark to " \
                  "mark, at {angle} degrees to the long edges: each edge is then {measure} long as cut.") \
    X(cut_wedges, "Turn a ruler with a {angle} degree tip up and down along the strip, so that each cut makes 67 1/2 " \
                  "degrees with its edge, and cut {piece} with each turn; check its edges against the list.") \
    X(cut_pairs, "Cut through both strips in turn straight across and slanted, there with the {angle} degree line of " \
                 "the ruler along their edge: each cut gives {piece} and, with it, {other}; check the edges against " \
                 "the list.")

#endif
