/* base_texts.h - the lists behind base.c, in the order of their numbers.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_BASE_TEXTS_H
#define MUSLIN_BASE_TEXTS_H

#define STATUS_NAMES(X) \
    X(ok, "OK") \
    X(err_null, "ERR_NULL") \
    X(err_struct_size, "ERR_STRUCT_SIZE") \
    X(err_struct_tail, "ERR_STRUCT_TAIL") \
    X(err_flags, "ERR_FLAGS") \
    X(err_choice, "ERR_CHOICE") \
    X(err_range, "ERR_RANGE") \
    X(err_overflow, "ERR_OVERFLOW") \
    X(err_divide_by_zero, "ERR_DIVIDE_BY_ZERO") \
    X(err_buffer, "ERR_BUFFER") \
    X(err_index, "ERR_INDEX") \
    X(err_text_empty, "ERR_TEXT_EMPTY") \
    X(err_text_syntax, "ERR_TEXT_SYNTAX") \
    X(err_text_trailing, "ERR_TEXT_TRAILING") \
    X(err_text_unit, "ERR_TEXT_UNIT") \
    X(err_text_decimal, "ERR_TEXT_DECIMAL") \
    X(err_text_zero_denominator, "ERR_TEXT_ZERO_DENOMINATOR") \
    X(err_text_encoding, "ERR_TEXT_ENCODING") \
    X(err_seam_too_wide, "ERR_SEAM_TOO_WIDE") \
    X(err_not_square, "ERR_NOT_SQUARE") \
    X(err_no_yield, "ERR_NO_YIELD") \
    X(err_not_enough, "ERR_NOT_ENOUGH") \
    X(err_no_fit, "ERR_NO_FIT") \
    X(err_no_memory, "ERR_NO_MEMORY") \
    X(err_customary, "ERR_CUSTOMARY") \
    X(err_method, "ERR_METHOD") \
    X(err_shape, "ERR_SHAPE") \
    X(err_not_tiled, "ERR_NOT_TILED") \
    X(err_work_limit, "ERR_WORK_LIMIT") \
    X(err_foreign, "ERR_FOREIGN") \
    X(err_stopped, "ERR_STOPPED") \
    X(err_too_many, "ERR_TOO_MANY")

#define STATUS_SENTENCES(X) \
    X(ok, "The call succeeded.") \
    X(err_null, "A pointer that must be given is null; pass the address of the input or output it names.") \
    X(err_struct_size, "The size member of a struct is 0, too small or above 4096; set it to sizeof the struct before the call.") \
    X(err_struct_tail, "Bytes behind the members that this library version knows are not zero; clear the struct, or use the newer library.") \
    X(err_flags, "A flag is set that this library version does not know; clear it, or use the newer library.") \
    X(err_choice, "A value is none of the listed choices; use one of the named constants.") \
    X(err_range, "An argument lies below its least or above its greatest value; the problem names it with its limit.") \
    X(err_overflow, "The result, or a number on the way to it, is too large for its type; use smaller sizes or counts, or fewer digits.") \
    X(err_divide_by_zero, "A divisor is zero; give one that is not.") \
    X(err_buffer, "The buffer or array is too small; the size it needs was written, so make it that large and call again.") \
    X(err_index, "The row number lies outside the table; ask for the count first.") \
    X(err_text_empty, "The text holds no number; write a length such as 2 1/2 in.") \
    X(err_text_syntax, "A number is missing here, or something else stands in its place; write a length such as 2 1/2 in.") \
    X(err_text_trailing, "A whole length is followed by something more; remove what comes after it.") \
    X(err_text_unit, "A word in the text is no unit of length, or the units are not in falling order; use in, ft, yd, mm, cm or m.") \
    X(err_text_decimal, "The text has the other decimal sign than the one asked for; change the text or the decimal sign in the spec.") \
    X(err_text_zero_denominator, "A fraction in the text has zero below the line; correct it.") \
    X(err_text_encoding, "The text is not valid UTF-8 at the place named; save or send it as UTF-8.") \
    X(err_seam_too_wide, "The seams would eat the whole piece; cut it wider or sew narrower seams.") \
    X(err_not_square, "The block is not square; change the cut size of a segment or the square tolerance, or turn blocks by halves.") \
    X(err_no_yield, "The stock gives not even one piece, so no amount of it is enough; use longer stock or smaller pieces.") \
    X(err_not_enough, "The stock in hand does not suffice; add stock or wish for less.") \
    X(err_no_fit, "No listed size or layout covers what is asked; use wider goods or another layout.") \
    X(err_no_memory, "The allocator returned no memory.") \
    X(err_customary, "The customary addition is smaller than the geometry needs, so the unit would come out too small; use a larger one or the exact policy.") \
    X(err_method, "This kind of unit is not made by that method; ask for the methods of the kind.") \
    X(err_shape, "There is no such shape: it needs three corners or more, edges that do not cross, and arcs that reach their corners.") \
    X(err_not_tiled, "The pieces do not fill the outline exactly: they leave a gap, overlap or stick out.") \
    X(err_work_limit, "This would take more steps, or hold more, than allowed; narrow the request or raise the limit.") \
    X(err_foreign, "The id is none of this quilt's, or names something of another sort; pass an id that the quilt itself gave.") \
    X(err_stopped, "The progress call ended it before there was an answer; ask again to have one.") \
    X(err_too_many, "More of them would be needed than can be counted here; wish for less.")

#define ARGUMENT_NAMES(X) \
    X(none, "nothing") \
    X(text, "text") \
    X(buffer, "buffer") \
    X(output, "output") \
    X(spec, "spec") \
    X(rows, "rows") \
    X(row_size, "row size") \
    X(length, "length") \
    X(other_length, "other length") \
    X(factor, "factor") \
    X(divisor, "divisor") \
    X(ratio, "ratio") \
    X(grid, "grid") \
    X(tolerance, "tolerance") \
    X(direction, "direction") \
    X(unit, "unit") \
    X(decimal_sign, "decimal sign") \
    X(style, "style") \
    X(denominator, "denominator") \
    X(decimals, "decimals") \
    X(area, "area") \
    X(index, "index") \
    X(table, "table") \
    X(seam_allowance, "seam allowance") \
    X(take_up, "take-up per seam") \
    X(finished, "finished size") \
    X(unfinished, "unfinished size") \
    X(cut, "cut size") \
    X(pieces, "number of pieces") \
    X(seams, "number of seams") \
    X(measured, "measured size") \
    X(seam_error, "error per seam") \
    X(usable_width, "usable width") \
    X(labelled_width, "labelled width") \
    X(selvage, "selvage width") \
    X(shrinkage, "shrinkage") \
    X(extra, "extra") \
    X(extra_share, "extra share") \
    X(step, "purchase step") \
    X(cloth_length, "cloth length") \
    X(end_loss, "end loss") \
    X(edge, "edge") \
    X(pink_depth, "pinking depth") \
    X(care_state, "care state") \
    X(print_direction, "print direction") \
    X(strip_length, "usable strip length") \
    X(strip_cut, "cut width of a strip") \
    X(strips, "number of strips") \
    X(strips_per_set, "strips per set") \
    X(strips_per_bundle, "strips per bundle") \
    X(segment_cut, "cut size of a segment") \
    X(segments, "number of segments") \
    X(segments_per_block, "segments per block") \
    X(segments_per_set, "segments per set") \
    X(end_trim, "end trim") \
    X(resquare_loss, "re-squaring loss") \
    X(resquare_every, "cuts between re-squarings") \
    X(fold_clear, "width kept clear at the fold") \
    X(block_width, "block width (finished)") \
    X(block_height, "block height (finished)") \
    X(blocks, "number of blocks") \
    X(columns, "columns of blocks") \
    X(quilt_rows, "rows of blocks") \
    X(tops, "number of tops") \
    X(turning, "turning of blocks") \
    X(pressing, "nesting choice") \
    X(quilt_width, "quilt width") \
    X(quilt_length, "quilt length") \
    X(border_width, "border width (finished)") \
    X(border_style, "border style") \
    X(join, "kind of join") \
    X(join_loss, "loss per join") \
    X(mitre_extra, "mitre extra") \
    X(margin, "margin") \
    X(fabric_width, "fabric width") \
    X(repeat, "pattern repeat") \
    X(layout, "backing layout") \
    X(fold, "fold of the binding") \
    X(binding_cut, "cut width of the binding") \
    X(binding_front, "binding shown on the front (finished)") \
    X(binding_back, "binding shown on the back (finished)") \
    X(thickness, "thickness") \
    X(turn_under, "turn under") \
    X(perimeter, "perimeter") \
    X(corners, "number of corners") \
    X(bias_length, "length of bias") \
    X(sleeve_drop, "depth of the sleeve") \
    X(sleeves, "number of sleeves") \
    X(inset, "inset") \
    X(corner_triangle, "corner triangle") \
    X(label, "label size") \
    X(spare, "spare strips") \
    X(per_set, "strips of a print per set") \
    X(in_hand, "strips in hand") \
    X(stock_kind, "kind of stock") \
    X(square_tolerance, "square tolerance") \
    X(sets, "sets") \
    X(unit_kind, "kind of unit") \
    X(method, "method") \
    X(policy, "allowance policy") \
    X(half_addition, "addition for a half-square") \
    X(quarter_addition, "addition for a quarter-square") \
    X(trim, "room to trim (cut)") \
    X(tip, "kind of tip") \
    X(corner, "corner (finished)") \
    X(units, "number of units") \
    X(height, "height") \
    X(motifs, "windows from a repeat") \
    X(layers, "layers") \
    X(stacks, "number of stacks") \
    X(stacks_per_strip, "stacks from a strip") \
    X(prints, "number of prints") \
    X(cut_error, "error per cut") \
    X(quilting_loss, "share lost to quilting") \
    X(governing_rule, "rule of what governs the shrinkage") \
    X(stitch_length, "stitch length") \
    X(stitches, "thousandths of a stitch") \
    X(waste, "waste") \
    X(bobbin, "thread on a bobbin") \
    X(spool, "thread on a spool") \
    X(spacing, "spacing of the lines") \
    X(offset, "offset of the first line") \
    X(pattern, "pattern of the lines") \
    X(start, "start of the diagonals") \
    X(passes, "lines along an outline") \
    X(density, "weight per area") \
    X(mass, "mass") \
    X(amount, "amount") \
    X(amount_kind, "kind of amount") \
    X(price, "price") \
    X(price_per, "what the price is for") \
    X(mattress_width, "mattress width") \
    X(mattress_length, "mattress length") \
    X(mattress_depth, "mattress depth") \
    X(floor_height, "height of the bed above the floor") \
    X(drop, "drop over the edge of the bed") \
    X(drop_rule, "rule for the drop") \
    X(pillow_tuck, "pillow tuck") \
    X(foot_corner, "foot corners") \
    X(sash_width, "sash width (finished)") \
    X(setting_kind, "kinds of setting allowed") \
    X(parity, "even or odd count") \
    X(rank, "ranking") \
    X(best, "number of settings to list") \
    X(work_limit, "work limit") \
    X(triangle_height, "height of a triangle (finished)") \
    X(hand, "hand of the unit") \
    X(centre_width, "centre width") \
    X(centre_height, "centre height") \
    X(log_width, "width of a log") \
    X(rounds, "number of rounds") \
    X(log_order, "order of the logs") \
    X(log_side, "side of the first log") \
    X(log_turn, "way round the block") \
    X(round_kind, "kind of round") \
    X(round_corner, "corner of the round") \
    X(unit_repeat, "repeat of a pieced border (finished)") \
    X(coping_most, "widest coping strip (finished)") \
    X(spacers, "number of spacers") \
    X(spacer_least, "narrowest spacer (finished)") \
    X(diagonal, "diagonal of a square (finished)") \
    X(runs, "number of runs") \
    X(set_off, "set-off") \
    X(trim_room, "trimming room") \
    X(setting_layout, "layout on point") \
    X(edge_style, "style of the edge") \
    X(first_block, "first block") \
    X(corner_row, "row of the corner") \
    X(piece, "number of the piece") \
    X(corner_tip, "tip of the corner") \
    X(place, "place of the corner (finished)") \
    X(centre, "place of the centre") \
    X(radius, "radius") \
    X(curve, "curve of the edge") \
    X(grain, "grain direction") \
    X(sides, "number of sides") \
    X(measure, "measure") \
    X(quarter_turns, "quarter turns") \
    X(fabric, "fabric") \
    X(node, "node") \
    X(depth, "depth of the tree") \
    X(children, "number of children") \
    X(axis, "across or down") \
    X(most, "most parts of a quilt") \
    X(tag, "tag of a quilt") \
    X(darkness, "darkness of a fabric") \
    X(strip_piecing, "strip piecing") \
    X(press, "pressing of the seams") \
    X(cells, "triangles of a 60 degree row") \
    X(value, "value of a measure") \
    X(ease, "ease (finished)") \
    X(stage, "stage of the drawing") \
    X(places, "number of places") \
    X(touch, "places that touch") \
    X(name, "name") \
    X(allocator, "allocator") \
    X(sum, "sum of measures") \
    X(frame, "frame of sashes") \
    X(prefer, "preference") \
    X(quilt, "quilt or solution") \
    X(fabrics, "number of fabrics") \
    X(sort, "sort of id") \
    X(kind, "kind of node or measure") \
    X(mirrored, "mirrored or not") \
    X(blank_kind, "kind of piece") \
    X(run_in, "run-in of a sloped piece") \
    X(priority, "priority of a piece") \
    X(straightening, "loss by straightening") \
    X(stock_side, "side of a piece of stock") \
    X(stock_cost, "cost of a piece of stock") \
    X(stock_rows, "number of kinds of stock") \
    X(cutplan, "cutting plan") \
    X(proof_case, "case of the proof") \
    X(least_side, "least side of what is left over") \
    X(widths, "number of widths") \
    X(spare_pieces, "spare pieces") \
    X(stock_count, "number of pieces of stock") \
    X(long_pieces, "way of cutting long pieces") \
    X(yardage, "yardage") \
    X(piece_width, "cut width of a piece") \
    X(piece_length, "cut length of a piece") \
    X(least_part, "least length of a strip that is joined")

#define WARNING_NAMES(X) \
    X(no_slack, "NO_SLACK") \
    X(mixed_wash, "MIXED_WASH") \
    X(precut_washed, "PRECUT_WASHED") \
    X(print_turned, "PRINT_TURNED") \
    X(binding_uneven, "BINDING_UNEVEN") \
    X(diagonal_stretch, "DIAGONAL_STRETCH") \
    X(nest_conflict, "NEST_CONFLICT") \
    X(set_repeats, "SET_REPEATS") \
    X(small_quilt, "SMALL_QUILT") \
    X(back_too_narrow, "BACK_TOO_NARROW") \
    X(mixed_edges, "MIXED_EDGES") \
    X(mixed_widths, "MIXED_WIDTHS") \
    X(bias_edge, "BIAS_EDGE") \
    X(off_grid, "OFF_GRID") \
    X(below_exact, "BELOW_EXACT") \
    X(longer_than_width, "LONGER_THAN_WIDTH")

#define WARNING_SENTENCES(X) \
    X(no_slack, "This stands exactly on its edge: if anything comes out shorter, a piece is lost.") \
    X(mixed_wash, "Washed and unwashed fabrics meet in one top: they shrink by different amounts later.") \
    X(precut_washed, "Small pre-cuts were washed: they fray and shrink, so measure them again before cutting.") \
    X(print_turned, "A print with a direction lies turned in some places.") \
    X(binding_uneven, "The binding shows much more on one side of the quilt than on the other.") \
    X(diagonal_stretch, "Diagonal joins put bias edges into the border: handle them gently, they stretch.") \
    X(nest_conflict, "Some segments meet a neighbour pressed the same way: turn those named, or expect seams that do not nest.") \
    X(set_repeats, "There are fewer sets than segments in a block, so some block holds two segments of one set.") \
    X(small_quilt, "A quilt of this size may be meant for a baby: keep it out of the sleep space in the first year.") \
    X(back_too_narrow, "The binding does not reach far enough round to cover its seam on the back.") \
    X(mixed_edges, "Pinked and straight edges meet: line up the same point of the pinking throughout.") \
    X(mixed_widths, "The strips differ in usable length: the set is only as long as its shortest strip.") \
    X(bias_edge, "An outside edge lies on the bias: handle it gently and do not press it out of shape, for it stretches.") \
    X(off_grid, "A size does not lie on the ruler's grid: cut it by the nearest finer mark, or choose a size that does.") \
    X(below_exact, "A size was rounded below what the geometry needs: the unit comes out too small, by the surplus that is negative.") \
    X(longer_than_width, "A piece is longer than its fabric is wide: join strips, or cut it along the cloth.")

#endif
