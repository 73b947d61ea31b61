// Every header asked for figures from elsewhere: published ones, by the row of tests/handbook that names the source, or
// sums anyone can check, which stand beside them.
//
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>
#include <muslin/muslin.hpp>

#include <algorithm>
#include <string>

using namespace muslin::literals;
using muslin::length;

/** Sets some members of a spec, since C++17 has no names for them. */
template <class Spec, class Set> Spec with(Set set)
{
    Spec spec;
    set(spec);
    return spec;
}

static muslin::rounding_spec to(length grid, muslin::direction direction = muslin::direction::nearest)
{
    return with<muslin::rounding_spec>([&](auto &rounding) {
        rounding.grid = grid;
        rounding.direction = direction;
    });
}

// ---- base and length -----------------------------------------------------------------------------------------------

TEST_CASE("base: headers and library belong together")
{
    CHECK(muslin::version() == MUSLIN_VERSION);
    CHECK(std::count(muslin::version_text().begin(), muslin::version_text().end(), '.') == 2);
    CHECK(muslin::warning_name(muslin::warning::small_quilt) == "SMALL_QUILT");
    CHECK(muslin::constant_count() > 60);
}

TEST_CASE("length: text in and out, roots")
{
    CHECK(muslin::length_parse("2 1/2 in").value == 2.5_in);
    CHECK(muslin::length_parse("1 yd 4 1/2 in").value == 40.5_in);
    CHECK_FALSE(muslin::length_parse("1/3 in").exact);
    const auto written = muslin::length_format(2.5_in);
    CHECK((written.text == "2 1/2 in" && written.exact));
    muslin::format_spec metric;
    metric.style = muslin::style::mm;
    CHECK(muslin::length_format(6.35_cm, metric).text == "63.5 mm");
    CHECK(muslin::length_snap(3.0625_in, to(0.125_in, muslin::direction::up)).value == 3.125_in);
    // 3, 4, 5; 6 x 1.41421 = 8.485
    CHECK(muslin::length_hypotenuse(3_in, 4_in).value == 5_in);
    CHECK(muslin::length_times_root2(6_in, to(0.125_in, muslin::direction::up)).value == 8.5_in);
    CHECK(muslin::length_unit_ticks(muslin::length_unit::yard) == 36_in);
    CHECK(muslin::length_unit_word(muslin::length_unit::cm) == "cm");
    const std::int64_t counts[] = {2, 3};
    CHECK(muslin::length_dot({2.5_in, 1_in}, counts) == 8_in);
}

// ---- seams to strip sets -------------------------------------------------------------------------------------------

TEST_CASE("seam: T01-01, T01-04, T01-05, T01-07")
{
    CHECK(muslin::seam_cut_from_finished(6_in) == 6.5_in);
    CHECK(muslin::seam_finished_from_cut(2.5_in) == 2_in);
    CHECK(muslin::seam_strip_for_finished(6_in, 3).value == 2.5_in);
    CHECK(muslin::seam_row(std::vector<length>(9, 3.25_in)).unfinished == 25.25_in);
    CHECK(muslin::seam_row_equal(2.5_in, 5).unfinished == 10.5_in);
    const length finished[] = {6_in, 1_in};
    length cut[2];
    CHECK(muslin::seam_cut_from_finished_n(finished, {}, cut) == 2);
    CHECK((cut[0] == 6.5_in && cut[1] == 1.5_in));
}

TEST_CASE("accuracy and shrinkage")
{
    // 8 seams of 1/32 in
    CHECK(muslin::accuracy_row(with<muslin::accuracy_row_spec>([](auto &row) {
              row.pieces = 9;
              row.seams = 8;
              row.seam_error = 0.03125_in;
          })).worst == 0.25_in);
    CHECK(muslin::shrinkage_change(20_in, 17_in) == -150000); // 3 / 20
}

TEST_CASE("fabric, motif, reference")
{
    CHECK(muslin::fabric_usable_width(44_in, 0.5_in, 0) == 43_in); // 44 - 2 x 1/2
    // 112 in in eighths of 36 in: 24.9, so 25
    const auto purchase = muslin::fabric_purchase(with<muslin::purchase_spec>([](auto &of) { of.needed = 112_in; }));
    CHECK((purchase.steps == 25 && purchase.bought == 112.5_in));
    // 2 1/2 in from tip to tip, 1/8 in deep: two depths less from valley to valley
    muslin::stock_spec strip;
    strip.width = 40_in;
    strip.edge = muslin::edge::pinked_tips;
    strip.pink_depth = 0.125_in;
    CHECK(muslin::stock_size(strip, muslin::edge::pinked_valleys).length == 2.25_in);
    CHECK(muslin::stock_size(strip, muslin::edge::pinked_tips).length == 2.5_in);
    CHECK(muslin::print_may_turn(muslin::print::two_way, 2));
    CHECK_FALSE(muslin::print_may_turn(muslin::print::two_way, 1));
    std::vector<muslin::stock_spec> stock(2);
    stock[1].edge = muslin::edge::pinked_tips;
    stock[1].pink_depth = 0.125_in;
    CHECK(muslin::holds(muslin::stock_check(stock), muslin::warning::mixed_edges));
    CHECK_FALSE(muslin::holds(muslin::stock_check(stock), muslin::warning::mixed_widths));
    // 96 / 27 = 3.6: 4 repeats, 108 in
    CHECK(muslin::motif_plan(with<muslin::motif_spec>([](auto &of) {
              of.repeat_length = 27_in;
              of.cut_width = 40_in;
              of.cut_length = 96_in;
              of.pieces = 1;
          })).cloth_length == 108_in);
    CHECK(muslin::reference_row(muslin::table::fabric_width, 0).width == 40_in);
    CHECK(muslin::reference_name(muslin::table::batting, 5) == "queen");
}

TEST_CASE("stripset: T11-02, T11-03")
{
    muslin::yield_spec spec;
    spec.flags = muslin::yield_spec::from_one_end;
    spec.strip_length = 42_in;
    spec.segment_cut = 10.5_in;
    const muslin::yield yield = muslin::stripset_yield(spec);
    CHECK((yield.segments == 4 && yield.shorter_by == 0_in));
    CHECK(muslin::holds(yield.warnings, muslin::warning::no_slack));
    spec.end_trim = 0.125_in;
    CHECK(muslin::stripset_yield(spec).segments == 3);
    std::vector<muslin::stripset_print> prints(2);
    prints[0].in_hand = 56;
    prints[0].per_set = 4;
    prints[1].in_hand = 14;
    prints[1].per_set = 1;
    CHECK(muslin::stripset_prints(prints, 0).sets == 14);
    CHECK((prints[0].left_over == 0 && prints[1].left_over == 0));
    const auto shortest = muslin::stripset_shortest({42_in, 40_in, 41_in});
    CHECK((shortest.shortest == 40_in && shortest.index == 1));
}

TEST_CASE("cutlist: 11 of 4 in and 14 of 3 in a strip of 44 in, so 5 and 2 strips")
{
    std::vector<muslin::cutlist_piece_spec> squares(2);
    squares[0].cut_width = squares[0].cut_length = 4_in;
    squares[0].count = 52;
    squares[1].cut_width = squares[1].cut_length = 3_in;
    squares[1].count = 20;
    muslin::cutlist_spec spec;
    spec.usable_width = 44_in;
    CHECK(muslin::cutlist_from_yardage(squares, spec).cloth_length == 26_in);
    const auto rows = muslin::cutlist_yardage_rows(squares, spec);
    REQUIRE(rows.size() == 2);
    CHECK((rows[0].strips == 5 && rows[0].per_strip == 11 && rows[1].strips == 2 && rows[1].per_strip == 14));
}

// ---- units, settings, finishing ------------------------------------------------------------------------------------

TEST_CASE("shape and unit")
{
    // r = 5 x 3.1416: two quarters of a circle
    CHECK(muslin::arc_length(5_in, 2, to(0.125_in)).value == 15.75_in);
    muslin::unit_spec half_square;
    half_square.finished_width = 3_in;
    CHECK(muslin::unit_recipe(half_square).unfinished_width == 3.5_in);
    const auto pieces = muslin::unit_pieces(half_square);
    REQUIRE(pieces.size() == 2);
    CHECK(pieces[0].cut_width == 3.875_in); // 3 + 7/8
    CHECK(muslin::unit_step_sentence(muslin::unit_step_kind::on_line) == "Sew on the drawn line.");
    const auto first = muslin::unit_recipe_at(0);
    CHECK((first.kind == muslin::unit_kind::rectangle && first.method == muslin::unit_method::pieces));
}

TEST_CASE("setting, rounds, fit")
{
    CHECK(muslin::join_loss(muslin::join::diagonal, 2.5_in, 0.25_in) == 2.5_in);
    // 42 = 14 x 3, 48 = 16 x 3
    const auto common = muslin::repeat_common(42_in, 48_in, 2_in, 4_in);
    CHECK((common.repeat == 3_in && common.across == 14 && common.down == 16));
    // 60 + 2 x 12 by 80 + 12
    const auto bed = muslin::bed_size(with<muslin::bed_spec>([](auto &of) {
        of.mattress_width = 60_in;
        of.mattress_length = 80_in;
        of.mattress_depth = 12_in;
    }));
    CHECK((bed.finished_width == 84_in && bed.finished_length == 92_in));
    // 6 + 1 + 12 + 1 + 6
    const auto sash = with<muslin::setting_line_spec>([](auto &of) { of.sash = 1_in; });
    CHECK(muslin::setting_line({6_in, 12_in, 6_in}, sash).finished == 26_in);
    const auto places = muslin::setting_line_places({6_in, 12_in, 6_in}, sash);
    REQUIRE(places.size() == 3);
    CHECK(places[2].start == 20_in);
}

TEST_CASE("finishing: T07-02, T06-03")
{
    CHECK(muslin::binding_plan(with<muslin::binding_spec>([](auto &of) {
              of.quilt_width = 96_in;
              of.quilt_length = 110_in;
              of.join = muslin::join::butted;
          })).strips == 11);
    const auto batting = muslin::batting_plan(with<muslin::batting_spec>([](auto &of) {
        of.quilt_width = 60_in;
        of.quilt_length = 80_in;
    }));
    CHECK((batting.width == 66_in && batting.length == 86_in));
}

TEST_CASE("stripquilt: the README's two tops of 36 in, 2 in to spare")
{
    muslin::stripquilt_spec wish;
    wish.strips = 42;
    wish.columns = wish.rows = 3;
    wish.strip_length = 41_in;
    const muslin::stripquilt quilt = muslin::stripquilt_plan(wish);
    CHECK((quilt.tops == 2 && quilt.top_finished_width == 36_in && quilt.strip_shorter_by == 2_in));
    std::int64_t blocks = 0;
    for (const muslin::block_group &group : muslin::stripquilt_groups(wish))
        blocks += group.blocks;
    CHECK(blocks == 2 * 9);
    CHECK(muslin::stripquilt_pressing(wish, 1).pressing == muslin::set_pressing::to_top);
}

TEST_CASE("supplies: 25.4 mm / 2.5 mm stitches")
{
    const auto stitches = muslin::stitch_count(1_in, 2.5_mm, 2, muslin::direction::nearest);
    CHECK((stitches.thousandths == 10160 && stitches.exact));
}

// ---- a quilt -------------------------------------------------------------------------------------------------------

/** Nine nine-patches in three rows, of patches of 2 in. */
struct nine_patches {
    muslin::quilt quilt = muslin::quilt::create();
    muslin::id side = quilt.measure("side", 2_in), blue = quilt.fabric({}, "blue"), white = quilt.fabric({}, "white");
    muslin::id dark = patch(blue), light = patch(white);
    muslin::id block = quilt.grid(3, 3, {dark, light, dark, light, dark, light, dark, light, dark});
    muslin::id top = quilt.repeat(block, 3, 3, std::vector<std::int32_t>{0}, 1, 1);

    /** Every patch cut by itself, not from strip sets. */
    muslin::solution solved() const
    {
        muslin::solution_spec spec;
        spec.strip_piecing = muslin::strip_piecing::never;
        return muslin::solution::create(quilt, top, spec);
    }

    muslin::id patch(muslin::id fabric)
    {
        muslin::quilt_patch_spec spec;
        spec.fabric = fabric;
        spec.width = spec.height = side;
        return quilt.patch(spec);
    }
};

TEST_CASE("quilt and solution: 9 x 9 patches, 9 x 5 of them dark, 18 in")
{
    nine_patches nine;
    const muslin::solution solution = nine.solved();
    CHECK(solution.totals().patches == 81);
    CHECK(solution.size(nine.top).finished_width == 18_in);
    CHECK(solution.value(nine.side) == 2_in);
    const auto cuts = solution.cuts();
    REQUIRE(cuts.size() == 2);
    CHECK((cuts[0].count == 45 && cuts[0].fabric == nine.blue && cuts[0].cut_width == 2.5_in));
    CHECK((cuts[1].count == 36 && cuts[1].fabric == nine.white));
    CHECK(solution.cut_nodes(1) == std::vector{nine.light});
    CHECK(solution.misfits().empty());
    CHECK(nine.quilt.name(nine.blue) == "blue");
    CHECK(nine.quilt.node(nine.block).kind == muslin::node_kind::join);
    CHECK(muslin::id_sort(nine.side) == muslin::sort::measure);
    CHECK(muslin::id_number(nine.white) == 2);
    CHECK(nine.quilt.seam().take_up != nine.quilt.seam().allowance);
}

TEST_CASE("outlines come a page at a time into the caller's arrays")
{
    nine_patches nine;
    const muslin::solution solution = nine.solved();
    muslin::outline rows[20];
    muslin::outline_corner corners[80];
    CHECK(solution.outlines(nine.top, muslin::stage::finished, 0, {}, {}).count == 81);
    std::int64_t drawn = 0, area = 0;
    for (std::size_t left = 1; left != 0;) {
        const auto page = solution.outlines(nine.top, muslin::stage::finished, drawn, rows, corners);
        for (std::size_t i = 0; i < page.written; i++) {
            REQUIRE(rows[i].corners == 4);
            const muslin::outline_corner *of = corners + rows[i].first_corner;
            area += (of[2].x - of[0].x).ticks() * (of[2].y - of[0].y).ticks();
        }
        drawn += static_cast<std::int64_t>(page.written);
        left = page.count - page.written;
    }
    CHECK(drawn == 81);
    CHECK(area == (18_in).ticks() * (18_in).ticks()); // without gap or overlap
}

TEST_CASE("pressing, sewing, scatter")
{
    nine_patches nine;
    const muslin::solution solution = nine.solved();
    const muslin::pressing pressing = muslin::pressing::create(solution);
    CHECK(pressing.seams().size() > 0);
    CHECK_FALSE(muslin::sewing_steps(solution).empty());
    CHECK(muslin::sewing_totals(solution, 0_in, 0_in).seams == 80); // they join 81 patches
    // 45 dark patches of 9 blocks touch only at corners within a block; side by side at 12 block edges, twice each
    const auto touches = muslin::scatter_touches(solution, nine.blue);
    CHECK((touches.places == 45 && touches.rows.size() == 24));
    // four strips of two prints into two sets: one of each
    muslin::scatter_spec spec;
    spec.places = 4;
    const auto dealt = muslin::scatter_sets(spec, {2, 2}, 2, 2);
    REQUIRE(dealt.out.size() == 4);
    CHECK((dealt.result.touching == 0 && dealt.out[0] != dealt.out[1] && dealt.out[2] != dealt.out[3]));
}

TEST_CASE("cutplan and yardage: seven squares of 5 in fit a strip of 40 in")
{
    std::vector<muslin::blank_spec> squares(1);
    squares[0].cut_width = squares[0].cut_length = 5_in;
    squares[0].count = 7;
    const muslin::cutplan plan = muslin::cutplan::create({}, squares);
    CHECK((plan.totals().cloth_length == 5_in && plan.totals().proven));
    CHECK(plan.narrowest() == 35_in);
    CHECK(plan.blanks(0).size() == 7);
    nine_patches nine;
    const muslin::solution solution = nine.solved();
    const muslin::yardage yardage = muslin::yardage::create(solution);
    REQUIRE(yardage.fabrics().size() == 2);
    // 40 / 2 1/2 = 16 a strip: three strips of 45, three of 36
    CHECK(yardage.fabrics()[0].cloth_length == 7.5_in);
    CHECK(yardage.plan(1).totals().pieces == 36);
    CHECK(muslin::yardage_pieces(solution, nine.blue).size() == 1);
}
