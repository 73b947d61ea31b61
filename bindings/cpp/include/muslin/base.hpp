// muslin/base.hpp - what every other header shares: version, statuses, problems, warnings, the allocator.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_BASE_HPP
#define MUSLIN_BASE_HPP

#include <muslin/base.h>
#include <muslin/core.hpp>

namespace muslin {

/** enum muslin_status_code */
enum class status : std::int32_t {
    /** all went well */
    ok = MUSLIN_OK,
    /** a pointer that must be given is null */
    null = MUSLIN_ERR_NULL,
    /** a struct's size is 0, below the first published one, or above 4096 */
    struct_size = MUSLIN_ERR_STRUCT_SIZE,
    /** bytes behind the members this library knows are not zero */
    struct_tail = MUSLIN_ERR_STRUCT_TAIL,
    /** a flag this library does not know */
    flags = MUSLIN_ERR_FLAGS,
    /** a value that is none of the listed choices */
    choice = MUSLIN_ERR_CHOICE,
    /** an argument below its least or above its greatest value */
    range = MUSLIN_ERR_RANGE,
    /** the result would lie outside the range of its type */
    overflow = MUSLIN_ERR_OVERFLOW,
    /** a divisor is zero */
    divide_by_zero = MUSLIN_ERR_DIVIDE_BY_ZERO,
    /** the caller's buffer or array is too small; the needed size was written */
    buffer = MUSLIN_ERR_BUFFER,
    /** a row number at or past the end of a table */
    index = MUSLIN_ERR_INDEX,
    /** the text holds no number */
    text_empty = MUSLIN_ERR_TEXT_EMPTY,
    /** something stands where a number or a unit should */
    text_syntax = MUSLIN_ERR_TEXT_SYNTAX,
    /** a whole length, then something more */
    text_trailing = MUSLIN_ERR_TEXT_TRAILING,
    /** a word that is no unit of length */
    text_unit = MUSLIN_ERR_TEXT_UNIT,
    /** the other decimal sign than the one asked for */
    text_decimal = MUSLIN_ERR_TEXT_DECIMAL,
    /** a fraction over zero */
    text_zero_denominator = MUSLIN_ERR_TEXT_ZERO_DENOMINATOR,
    /** not valid UTF-8 */
    text_encoding = MUSLIN_ERR_TEXT_ENCODING,
    /** the seams eat the whole piece: nothing would be seen of it */
    seam_too_wide = MUSLIN_ERR_SEAM_TOO_WIDE,
    /** a quarter turn was asked of a block that is not square */
    not_square = MUSLIN_ERR_NOT_SQUARE,
    /** the stock gives not even one piece, so no amount of it is enough */
    no_yield = MUSLIN_ERR_NO_YIELD,
    /** the stock in hand does not suffice */
    not_enough = MUSLIN_ERR_NOT_ENOUGH,
    /** no listed size or layout covers what is asked */
    no_fit = MUSLIN_ERR_NO_FIT,
    /** an allocator returned nothing */
    no_memory = MUSLIN_ERR_NO_MEMORY,
    /** a customary addition is below what the geometry needs */
    customary = MUSLIN_ERR_CUSTOMARY,
    /** this kind of unit is not made by that method */
    method = MUSLIN_ERR_METHOD,
    /** no such shape: corners missing, edges that cross, an impossible angle or arc */
    shape = MUSLIN_ERR_SHAPE,
    /** the pieces leave a gap in the outline, overlap, or stick out */
    not_tiled = MUSLIN_ERR_NOT_TILED,
    /** the work, or what is stored, would be more than the caller allows */
    work_limit = MUSLIN_ERR_WORK_LIMIT,
    /** an id of another quilt, of another sort, or of nothing */
    foreign = MUSLIN_ERR_FOREIGN,
    /** the caller's progress call ended it before there was an answer */
    stopped = MUSLIN_ERR_STOPPED,
    /** more would be needed than can be counted here; since 1.1 */
    too_many = MUSLIN_ERR_TOO_MANY,
};

/** enum muslin_argument */
enum class argument : std::int32_t {
    none = MUSLIN_ARG_NONE,
    text = MUSLIN_ARG_TEXT,
    buffer = MUSLIN_ARG_BUFFER,
    output = MUSLIN_ARG_OUTPUT,
    spec = MUSLIN_ARG_SPEC,
    rows = MUSLIN_ARG_ROWS,
    row_size = MUSLIN_ARG_ROW_SIZE,
    length = MUSLIN_ARG_LENGTH,
    other_length = MUSLIN_ARG_OTHER_LENGTH,
    factor = MUSLIN_ARG_FACTOR,
    divisor = MUSLIN_ARG_DIVISOR,
    ratio = MUSLIN_ARG_RATIO,
    grid = MUSLIN_ARG_GRID,
    tolerance = MUSLIN_ARG_TOLERANCE,
    direction = MUSLIN_ARG_DIRECTION,
    unit = MUSLIN_ARG_UNIT,
    decimal_sign = MUSLIN_ARG_DECIMAL_SIGN,
    style = MUSLIN_ARG_STYLE,
    denominator = MUSLIN_ARG_DENOMINATOR,
    decimals = MUSLIN_ARG_DECIMALS,
    area = MUSLIN_ARG_AREA,
    index = MUSLIN_ARG_INDEX,
    table = MUSLIN_ARG_TABLE,
    seam_allowance = MUSLIN_ARG_SEAM_ALLOWANCE,
    take_up = MUSLIN_ARG_TAKE_UP,
    finished = MUSLIN_ARG_FINISHED,
    unfinished = MUSLIN_ARG_UNFINISHED,
    cut = MUSLIN_ARG_CUT,
    pieces = MUSLIN_ARG_PIECES,
    seams = MUSLIN_ARG_SEAMS,
    measured = MUSLIN_ARG_MEASURED,
    seam_error = MUSLIN_ARG_SEAM_ERROR,
    usable_width = MUSLIN_ARG_USABLE_WIDTH,
    labelled_width = MUSLIN_ARG_LABELLED_WIDTH,
    selvage = MUSLIN_ARG_SELVAGE,
    shrinkage = MUSLIN_ARG_SHRINKAGE,
    extra = MUSLIN_ARG_EXTRA,
    extra_share = MUSLIN_ARG_EXTRA_SHARE,
    step = MUSLIN_ARG_STEP,
    cloth_length = MUSLIN_ARG_CLOTH_LENGTH,
    end_loss = MUSLIN_ARG_END_LOSS,
    edge = MUSLIN_ARG_EDGE,
    pink_depth = MUSLIN_ARG_PINK_DEPTH,
    care_state = MUSLIN_ARG_CARE_STATE,
    print_direction = MUSLIN_ARG_PRINT_DIRECTION,
    strip_length = MUSLIN_ARG_STRIP_LENGTH,
    strip_cut = MUSLIN_ARG_STRIP_CUT,
    strips = MUSLIN_ARG_STRIPS,
    strips_per_set = MUSLIN_ARG_STRIPS_PER_SET,
    strips_per_bundle = MUSLIN_ARG_STRIPS_PER_BUNDLE,
    segment_cut = MUSLIN_ARG_SEGMENT_CUT,
    segments = MUSLIN_ARG_SEGMENTS,
    segments_per_block = MUSLIN_ARG_SEGMENTS_PER_BLOCK,
    segments_per_set = MUSLIN_ARG_SEGMENTS_PER_SET,
    end_trim = MUSLIN_ARG_END_TRIM,
    resquare_loss = MUSLIN_ARG_RESQUARE_LOSS,
    resquare_every = MUSLIN_ARG_RESQUARE_EVERY,
    fold_clear = MUSLIN_ARG_FOLD_CLEAR,
    block_width = MUSLIN_ARG_BLOCK_WIDTH,
    block_height = MUSLIN_ARG_BLOCK_HEIGHT,
    blocks = MUSLIN_ARG_BLOCKS,
    columns = MUSLIN_ARG_COLUMNS,
    quilt_rows = MUSLIN_ARG_QUILT_ROWS,
    tops = MUSLIN_ARG_TOPS,
    turning = MUSLIN_ARG_TURNING,
    pressing = MUSLIN_ARG_PRESSING,
    quilt_width = MUSLIN_ARG_QUILT_WIDTH,
    quilt_length = MUSLIN_ARG_QUILT_LENGTH,
    border_width = MUSLIN_ARG_BORDER_WIDTH,
    border_style = MUSLIN_ARG_BORDER_STYLE,
    join = MUSLIN_ARG_JOIN,
    join_loss = MUSLIN_ARG_JOIN_LOSS,
    mitre_extra = MUSLIN_ARG_MITRE_EXTRA,
    margin = MUSLIN_ARG_MARGIN,
    fabric_width = MUSLIN_ARG_FABRIC_WIDTH,
    repeat = MUSLIN_ARG_REPEAT,
    layout = MUSLIN_ARG_LAYOUT,
    fold = MUSLIN_ARG_FOLD,
    binding_cut = MUSLIN_ARG_BINDING_CUT,
    binding_front = MUSLIN_ARG_BINDING_FRONT,
    binding_back = MUSLIN_ARG_BINDING_BACK,
    thickness = MUSLIN_ARG_THICKNESS,
    turn_under = MUSLIN_ARG_TURN_UNDER,
    perimeter = MUSLIN_ARG_PERIMETER,
    corners = MUSLIN_ARG_CORNERS,
    bias_length = MUSLIN_ARG_BIAS_LENGTH,
    sleeve_drop = MUSLIN_ARG_SLEEVE_DROP,
    sleeves = MUSLIN_ARG_SLEEVES,
    inset = MUSLIN_ARG_INSET,
    corner_triangle = MUSLIN_ARG_CORNER_TRIANGLE,
    label = MUSLIN_ARG_LABEL,
    spare = MUSLIN_ARG_SPARE,
    per_set = MUSLIN_ARG_PER_SET,
    in_hand = MUSLIN_ARG_IN_HAND,
    stock_kind = MUSLIN_ARG_STOCK_KIND,
    square_tolerance = MUSLIN_ARG_SQUARE_TOLERANCE,
    sets = MUSLIN_ARG_SETS,
    unit_kind = MUSLIN_ARG_UNIT_KIND,
    method = MUSLIN_ARG_METHOD,
    policy = MUSLIN_ARG_POLICY,
    half_addition = MUSLIN_ARG_HALF_ADDITION,
    quarter_addition = MUSLIN_ARG_QUARTER_ADDITION,
    trim = MUSLIN_ARG_TRIM,
    tip = MUSLIN_ARG_TIP,
    corner = MUSLIN_ARG_CORNER,
    units = MUSLIN_ARG_UNITS,
    height = MUSLIN_ARG_HEIGHT,
    motifs = MUSLIN_ARG_MOTIFS,
    layers = MUSLIN_ARG_LAYERS,
    stacks = MUSLIN_ARG_STACKS,
    stacks_per_strip = MUSLIN_ARG_STACKS_PER_STRIP,
    prints = MUSLIN_ARG_PRINTS,
    cut_error = MUSLIN_ARG_CUT_ERROR,
    quilting_loss = MUSLIN_ARG_QUILTING_LOSS,
    governing_rule = MUSLIN_ARG_GOVERNING_RULE,
    stitch_length = MUSLIN_ARG_STITCH_LENGTH,
    stitches = MUSLIN_ARG_STITCHES,
    waste = MUSLIN_ARG_WASTE,
    bobbin = MUSLIN_ARG_BOBBIN,
    spool = MUSLIN_ARG_SPOOL,
    spacing = MUSLIN_ARG_SPACING,
    offset = MUSLIN_ARG_OFFSET,
    pattern = MUSLIN_ARG_PATTERN,
    start = MUSLIN_ARG_START,
    passes = MUSLIN_ARG_PASSES,
    density = MUSLIN_ARG_DENSITY,
    mass = MUSLIN_ARG_MASS,
    amount = MUSLIN_ARG_AMOUNT,
    amount_kind = MUSLIN_ARG_AMOUNT_KIND,
    price = MUSLIN_ARG_PRICE,
    price_per = MUSLIN_ARG_PRICE_PER,
    mattress_width = MUSLIN_ARG_MATTRESS_WIDTH,
    mattress_length = MUSLIN_ARG_MATTRESS_LENGTH,
    mattress_depth = MUSLIN_ARG_MATTRESS_DEPTH,
    floor_height = MUSLIN_ARG_FLOOR_HEIGHT,
    drop = MUSLIN_ARG_DROP,
    drop_rule = MUSLIN_ARG_DROP_RULE,
    pillow_tuck = MUSLIN_ARG_PILLOW_TUCK,
    foot_corner = MUSLIN_ARG_FOOT_CORNER,
    sash_width = MUSLIN_ARG_SASH_WIDTH,
    setting_kind = MUSLIN_ARG_SETTING_KIND,
    parity = MUSLIN_ARG_PARITY,
    rank = MUSLIN_ARG_RANK,
    best = MUSLIN_ARG_BEST,
    work_limit = MUSLIN_ARG_WORK_LIMIT,
    triangle_height = MUSLIN_ARG_TRIANGLE_HEIGHT,
    hand = MUSLIN_ARG_HAND,
    centre_width = MUSLIN_ARG_CENTRE_WIDTH,
    centre_height = MUSLIN_ARG_CENTRE_HEIGHT,
    log_width = MUSLIN_ARG_LOG_WIDTH,
    rounds = MUSLIN_ARG_ROUNDS,
    log_order = MUSLIN_ARG_LOG_ORDER,
    log_side = MUSLIN_ARG_LOG_SIDE,
    log_turn = MUSLIN_ARG_LOG_TURN,
    round_kind = MUSLIN_ARG_ROUND_KIND,
    round_corner = MUSLIN_ARG_ROUND_CORNER,
    unit_repeat = MUSLIN_ARG_UNIT_REPEAT,
    coping_most = MUSLIN_ARG_COPING_MOST,
    spacers = MUSLIN_ARG_SPACERS,
    spacer_least = MUSLIN_ARG_SPACER_LEAST,
    diagonal = MUSLIN_ARG_DIAGONAL,
    runs = MUSLIN_ARG_RUNS,
    set_off = MUSLIN_ARG_SET_OFF,
    trim_room = MUSLIN_ARG_TRIM_ROOM,
    setting_layout = MUSLIN_ARG_SETTING_LAYOUT,
    edge_style = MUSLIN_ARG_EDGE_STYLE,
    first_block = MUSLIN_ARG_FIRST_BLOCK,
    corner_row = MUSLIN_ARG_CORNER_ROW,
    piece = MUSLIN_ARG_PIECE,
    corner_tip = MUSLIN_ARG_CORNER_TIP,
    place = MUSLIN_ARG_PLACE,
    centre = MUSLIN_ARG_CENTRE,
    radius = MUSLIN_ARG_RADIUS,
    curve = MUSLIN_ARG_CURVE,
    grain = MUSLIN_ARG_GRAIN,
    sides = MUSLIN_ARG_SIDES,
    measure = MUSLIN_ARG_MEASURE,
    quarter_turns = MUSLIN_ARG_QUARTER_TURNS,
    fabric = MUSLIN_ARG_FABRIC,
    node = MUSLIN_ARG_NODE,
    depth = MUSLIN_ARG_DEPTH,
    children = MUSLIN_ARG_CHILDREN,
    axis = MUSLIN_ARG_AXIS,
    most = MUSLIN_ARG_MOST,
    tag = MUSLIN_ARG_TAG,
    darkness = MUSLIN_ARG_DARKNESS,
    strip_piecing = MUSLIN_ARG_STRIP_PIECING,
    press = MUSLIN_ARG_PRESS,
    cells = MUSLIN_ARG_CELLS,
    value = MUSLIN_ARG_VALUE,
    ease = MUSLIN_ARG_EASE,
    stage = MUSLIN_ARG_STAGE,
    places = MUSLIN_ARG_PLACES,
    touch = MUSLIN_ARG_TOUCH,
    name = MUSLIN_ARG_NAME,
    allocator = MUSLIN_ARG_ALLOCATOR,
    sum = MUSLIN_ARG_SUM,
    frame = MUSLIN_ARG_FRAME,
    prefer = MUSLIN_ARG_PREFER,
    quilt = MUSLIN_ARG_QUILT,
    fabrics = MUSLIN_ARG_FABRICS,
    sort = MUSLIN_ARG_SORT,
    kind = MUSLIN_ARG_KIND,
    mirrored = MUSLIN_ARG_MIRRORED,
    blank_kind = MUSLIN_ARG_BLANK_KIND,
    run_in = MUSLIN_ARG_RUN_IN,
    priority = MUSLIN_ARG_PRIORITY,
    straightening = MUSLIN_ARG_STRAIGHTENING,
    stock_side = MUSLIN_ARG_STOCK_SIDE,
    stock_cost = MUSLIN_ARG_STOCK_COST,
    stock_rows = MUSLIN_ARG_STOCK_ROWS,
    cutplan = MUSLIN_ARG_CUTPLAN,
    proof_case = MUSLIN_ARG_PROOF_CASE,
    least_side = MUSLIN_ARG_LEAST_SIDE,
    widths = MUSLIN_ARG_WIDTHS,
    spare_pieces = MUSLIN_ARG_SPARE_PIECES,
    stock_count = MUSLIN_ARG_STOCK_COUNT,
    long_pieces = MUSLIN_ARG_LONG_PIECES,
    yardage = MUSLIN_ARG_YARDAGE,
    piece_width = MUSLIN_ARG_PIECE_WIDTH,
    piece_length = MUSLIN_ARG_PIECE_LENGTH,
    least_part = MUSLIN_ARG_LEAST_PART,
};

/** enum muslin_warning */
enum class warning : std::uint32_t {
    /** a yield stands exactly on its edge: any shorter and a piece is lost */
    no_slack = MUSLIN_WARN_NO_SLACK,
    /** washed and unwashed fabric meet in one top */
    mixed_wash = MUSLIN_WARN_MIXED_WASH,
    /** small pre-cuts were washed: they fray, shrink and lose their size */
    precut_washed = MUSLIN_WARN_PRECUT_WASHED,
    /** a print with a direction lies turned in some places */
    print_turned = MUSLIN_WARN_PRINT_TURNED,
    /** the back shows far more or less binding than the front */
    binding_uneven = MUSLIN_WARN_BINDING_UNEVEN,
    /** diagonal joins put bias edges into a border, which stretches */
    diagonal_stretch = MUSLIN_WARN_DIAGONAL_STRETCH,
    /** some pairs of segments cannot nest without turning one of them */
    nest_conflict = MUSLIN_WARN_NEST_CONFLICT,
    /** too few sets: some block holds two segments of one set */
    set_repeats = MUSLIN_WARN_SET_REPEATS,
    /** of a size used around infants: keep it out of their sleep space */
    small_quilt = MUSLIN_WARN_SMALL_QUILT,
    /** the binding does not reach round to cover its own seam on the back */
    back_too_narrow = MUSLIN_WARN_BACK_TOO_NARROW,
    /** pinked and straight edges meet: align the same point throughout */
    mixed_edges = MUSLIN_WARN_MIXED_EDGES,
    /** strips of unequal usable length share the shortest */
    mixed_widths = MUSLIN_WARN_MIXED_WIDTHS,
    /** an outside edge lies on the bias and stretches */
    bias_edge = MUSLIN_WARN_BIAS_EDGE,
    /** a size does not lie on the ruler's grid */
    off_grid = MUSLIN_WARN_OFF_GRID,
    /** a size was rounded below what the geometry needs */
    below_exact = MUSLIN_WARN_BELOW_EXACT,
    /** a piece is longer than its fabric is wide */
    longer_than_width = MUSLIN_WARN_LONGER_THAN_WIDTH,
};

inline namespace MUSLIN_CPP_FORM {

/** The version of the library that is running, in the form of MUSLIN_VERSION; it belongs to these headers where the
 * major version is the same and it is not older, patches apart. Constant time.
 * muslin_version() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::uint32_t version() noexcept
{
    return muslin_version();
}

/** The same as text, for instance "1.1.0". Constant time.
 * muslin_version_text() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::string_view version_text() noexcept
{
    return muslin_version_text();
}

/** How many statuses this library knows. A binding iterates 0 .. count - 1. Constant time.
 * muslin_status_count() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::int32_t status_count() noexcept
{
    return muslin_status_count();
}

/** The status's name without its prefix, for instance "ERR_RANGE" for 6 and "OK" for 0; "UNKNOWN" for a number
 * outside the list. Never null. Constant time.
 * muslin_status_name() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::string_view status_name(muslin::status status) noexcept
{
    return muslin_status_name(detail::in_c(status));
}

/** One plain English sentence on what the status means and what to do. Its wording may improve between versions;
 * match on the number. Never null. Constant time.
 * muslin_status_sentence() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::string_view status_sentence(muslin::status status) noexcept
{
    return muslin_status_sentence(detail::in_c(status));
}

/** How many arguments this library can name, numbered 0 .. count - 1. Constant time.
 * muslin_argument_count() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::int32_t argument_count() noexcept
{
    return muslin_argument_count();
}

/** The trade's words for an argument, for instance "seam allowance"; "unknown argument" for a number outside the
 * list. Never null. Constant time.
 * muslin_argument_words() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::string_view argument_words(muslin::argument argument) noexcept
{
    return muslin_argument_words(detail::in_c(argument));
}

/** How many warnings this library knows: the bits 0 .. count - 1, each 1u << bit. Constant time.
 * muslin_warning_count() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::int32_t warning_count() noexcept
{
    return muslin_warning_count();
}

/** The name of one warning bit without its prefix, for instance "NO_SLACK" for 1; "UNKNOWN" for 0 or for anything
 * that is not exactly one known bit. Never null. Constant time.
 * muslin_warning_name() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::string_view warning_name(muslin::warning warning) noexcept
{
    return muslin_warning_name(detail::in_c(warning));
}

/** One sentence for one warning bit; "" for 0 or for anything that is not exactly one known bit. Never null.
 * Constant time.
 * muslin_warning_sentence() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::string_view warning_sentence(muslin::warning warning) noexcept
{
    return muslin_warning_sentence(detail::in_c(warning));
}

/** Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
 * flags, ticks per unit. For languages without a preprocessor, and for whoever was built against an older version,
 * since limits may rise. count says how many there are. name and value answer for a place in the list, 0 .. count
 * - 1, whose order may change between versions: look for a name. A name has no prefix, "SIZE_MAX" for
 * MUSLIN_SIZE_MAX; it is "" and the value 0 for a place that is none. Never null. Constant time.
 * muslin_constant_count() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::int32_t constant_count() noexcept
{
    return muslin_constant_count();
}

/** Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
 * flags, ticks per unit.
 * muslin_constant_name() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::string_view constant_name(std::int32_t index) noexcept
{
    return muslin_constant_name(index);
}

/** Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
 * flags, ticks per unit.
 * muslin_constant_value() in muslin/base.h. Since 1.0. */
[[nodiscard]] inline std::int64_t constant_value(std::int32_t index) noexcept
{
    return muslin_constant_value(index);
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
