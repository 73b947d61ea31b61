# SPDX-License-Identifier: MIT
"""The library's constants and enums.

Written by generate.py from lib/abi/api.json: change that, not this file.
"""
from ._library import library
from ._values import Choice

__all__ = ["VERSION_MAJOR", "VERSION_MINOR", "VERSION_PATCH", "VERSION", "TICKS_PER_INCH", "TICKS_PER_MM", "LENGTH_MAX",
           "SIZE_MAX", "COUNT_MAX", "PPM", "FORMAT_UNICODE", "FORMAT_BARE", "QUARTER_INCH", "USABLE_WIDTH_USUAL",
           "CLOTH_MAY_TURN", "MOTIF_ANY_START", "MOTIF_ANY_ACROSS", "STACK_ANY_START", "YIELD_FROM_ONE_END",
           "CUTLIST_ROWS_MAX", "CUTLIST_PIECE_MAY_TURN", "SHAPE_SIZE_MAX", "SHAPE_SEAM_MAX", "SHAPE_CORNERS_MAX",
           "SHAPE_OUTLINE", "TEMPLATE_REACH_MAX", "UNIT_SIZE_MAX", "BORDER_LENGTHWISE", "SETTING_SASHED_FRAME",
           "SETTING_SASHED_CORNERSTONES", "SETTING_LINE_FRAME", "SETTING_POINT_DIAGONAL_FIRST", "ROUNDS_MAX",
           "LOGCABIN_BLOCKS_MAX", "LOGCABIN_GIVEN_CUT", "MEDALLION_EQUAL_COPING", "POINT_BORDER_SQUARES_MAX",
           "BED_FOOT_GIVEN", "FIT_ALLOW_STRAIGHT", "FIT_ALLOW_SASHED", "FIT_ALLOW_FRAMED", "FIT_ALLOW_ON_POINT",
           "FIT_ACROSS_FRAME", "BIAS_BLUNT_ENDS", "BATTING_FIXED", "BACKING_ROUND_PANELS", "STRIPQUILT_SEGMENTS_MAX",
           "THREAD_READY_BOBBINS", "MONEY_MAX", "QUILT_DEPTH_MAX", "QUILT_POINT_DEPTH_MAX", "QUILT_CORNERS_MAX",
           "QUILT_JOIN_KEEPS_ORDER", "QUILT_SASHED_FRAME", "QUILT_SASHED_CORNERSTONES", "EDGE_PRINTS_TURNS_HALF",
           "EDGE_PRINTS_TURNS_QUARTER", "CUTPLAN_ROWS_MAX", "CUTPLAN_COUNT_MAX", "BLANK_MAY_TURN", "CUTPLAN_NO_PANELS",
           "CUTPLAN_ONE_HEIGHT", "CUTPLAN_OWN_STRIPS", "CUTPLAN_STACKED", "CUTPLAN_FIRST_CUT_ACROSS", "CUTPLAN_FOLDED",
           "CUTPLAN_BY_PRIORITY", "Status", "Argument", "Warning", "Direction", "LengthUnit", "Style",
           "AllowancePolicy", "GoverningRule", "GoverningSource", "Edge", "Care", "Print", "StockKind", "Table",
           "Curve", "CornerTip", "PolygonMeasure", "UnitKind", "UnitMethod", "Tip", "CutShape", "CutAgain", "Grain",
           "Hand", "Stage", "UnitStepKind", "Side", "Turning", "Join", "BorderStyle", "SashKind", "FirstBlock",
           "PointLayout", "PointEdge", "LogOrder", "LogTurn", "LogHalf", "FramePiece", "FrameLine", "RoundKind",
           "RoundCorner", "Drop", "FootCorner", "FitKind", "Parity", "FitRank", "Fold", "BackingLayout", "PanelRole",
           "Nesting", "SetPressing", "ThreadMethod", "QuiltingPattern", "QuiltingStart", "CostKind", "Sort", "Axis",
           "StripPiecing", "SeamPress", "SixtyFirst", "MeasureKind", "NodeKind", "MisfitKind", "CutSource", "TermKind",
           "Prefer", "Press", "OtherWay", "Towards", "Preferred", "SewingKind", "BlankKind", "CutplanStopped",
           "CutplanStripKind", "CutplanFault", "LongPieces"]

VERSION_MAJOR = 1
VERSION_MINOR = 1
VERSION_PATCH = 0
VERSION = 1001000
TICKS_PER_INCH = 8128
TICKS_PER_MM = 320
LENGTH_MAX = 4611686018427387903
SIZE_MAX = 1073741824
COUNT_MAX = 2147483647
PPM = 1000000
FORMAT_UNICODE = 1
FORMAT_BARE = 2
QUARTER_INCH = 2032
USABLE_WIDTH_USUAL = 325120
CLOTH_MAY_TURN = 1
MOTIF_ANY_START = 1
MOTIF_ANY_ACROSS = 2
STACK_ANY_START = 1
YIELD_FROM_ONE_END = 1
CUTLIST_ROWS_MAX = 4096
CUTLIST_PIECE_MAY_TURN = 1
SHAPE_SIZE_MAX = 1048576
SHAPE_SEAM_MAX = 131072
SHAPE_CORNERS_MAX = 1024
SHAPE_OUTLINE = -1
TEMPLATE_REACH_MAX = 4194304
UNIT_SIZE_MAX = 67108864
BORDER_LENGTHWISE = 1
SETTING_SASHED_FRAME = 1
SETTING_SASHED_CORNERSTONES = 2
SETTING_LINE_FRAME = 1
SETTING_POINT_DIAGONAL_FIRST = 1
ROUNDS_MAX = 1000
LOGCABIN_BLOCKS_MAX = 100000
LOGCABIN_GIVEN_CUT = 1
MEDALLION_EQUAL_COPING = 1
POINT_BORDER_SQUARES_MAX = 536870912
BED_FOOT_GIVEN = 1
FIT_ALLOW_STRAIGHT = 1
FIT_ALLOW_SASHED = 2
FIT_ALLOW_FRAMED = 4
FIT_ALLOW_ON_POINT = 8
FIT_ACROSS_FRAME = 1
BIAS_BLUNT_ENDS = 1
BATTING_FIXED = 1
BACKING_ROUND_PANELS = 1
STRIPQUILT_SEGMENTS_MAX = 32
THREAD_READY_BOBBINS = 1
MONEY_MAX = 4611686018427387903
QUILT_DEPTH_MAX = 4096
QUILT_POINT_DEPTH_MAX = 4
QUILT_CORNERS_MAX = 32
QUILT_JOIN_KEEPS_ORDER = 1
QUILT_SASHED_FRAME = 1
QUILT_SASHED_CORNERSTONES = 2
EDGE_PRINTS_TURNS_HALF = 1
EDGE_PRINTS_TURNS_QUARTER = 2
CUTPLAN_ROWS_MAX = 4096
CUTPLAN_COUNT_MAX = 1000000
BLANK_MAY_TURN = 1
CUTPLAN_NO_PANELS = 1
CUTPLAN_ONE_HEIGHT = 2
CUTPLAN_OWN_STRIPS = 4
CUTPLAN_STACKED = 8
CUTPLAN_FIRST_CUT_ACROSS = 16
CUTPLAN_FOLDED = 32
CUTPLAN_BY_PRIORITY = 64


class Status(Choice):
    """enum muslin_status_code"""

    OK = 0  # all went well
    ERR_NULL = 1  # a pointer that must be given is null
    ERR_STRUCT_SIZE = 2  # a struct's size is 0, below the first published one, or above 4096
    ERR_STRUCT_TAIL = 3  # bytes behind the members this library knows are not zero
    ERR_FLAGS = 4  # a flag this library does not know
    ERR_CHOICE = 5  # a value that is none of the listed choices
    ERR_RANGE = 6  # an argument below its least or above its greatest value
    ERR_OVERFLOW = 7  # the result would lie outside the range of its type
    ERR_DIVIDE_BY_ZERO = 8  # a divisor is zero
    ERR_BUFFER = 9  # the caller's buffer or array is too small; the needed size was written
    ERR_INDEX = 10  # a row number at or past the end of a table
    ERR_TEXT_EMPTY = 11  # the text holds no number
    ERR_TEXT_SYNTAX = 12  # something stands where a number or a unit should
    ERR_TEXT_TRAILING = 13  # a whole length, then something more
    ERR_TEXT_UNIT = 14  # a word that is no unit of length
    ERR_TEXT_DECIMAL = 15  # the other decimal sign than the one asked for
    ERR_TEXT_ZERO_DENOMINATOR = 16  # a fraction over zero
    ERR_TEXT_ENCODING = 17  # not valid UTF-8
    ERR_SEAM_TOO_WIDE = 18  # the seams eat the whole piece: nothing would be seen of it
    ERR_NOT_SQUARE = 19  # a quarter turn was asked of a block that is not square
    ERR_NO_YIELD = 20  # the stock gives not even one piece, so no amount of it is enough
    ERR_NOT_ENOUGH = 21  # the stock in hand does not suffice
    ERR_NO_FIT = 22  # no listed size or layout covers what is asked
    ERR_NO_MEMORY = 23  # an allocator returned nothing
    ERR_CUSTOMARY = 24  # a customary addition is below what the geometry needs
    ERR_METHOD = 25  # this kind of unit is not made by that method
    ERR_SHAPE = 26  # no such shape: corners missing, edges that cross, an impossible angle or arc
    ERR_NOT_TILED = 27  # the pieces leave a gap in the outline, overlap, or stick out
    ERR_WORK_LIMIT = 28  # the work, or what is stored, would be more than the caller allows
    ERR_FOREIGN = 29  # an id of another quilt, of another sort, or of nothing
    ERR_STOPPED = 30  # the caller's progress call ended it before there was an answer
    ERR_TOO_MANY = 31  # more would be needed than can be counted here; since 1.1

    @property
    def sentence(self) -> str:
        """In the library's words."""
        return str(library.muslin_status_sentence(int(self)).decode("utf-8"))


class Argument(Choice):
    """enum muslin_argument"""

    NONE = 0
    TEXT = 1
    BUFFER = 2
    OUTPUT = 3
    SPEC = 4
    ROWS = 5
    ROW_SIZE = 6
    LENGTH = 7
    OTHER_LENGTH = 8
    FACTOR = 9
    DIVISOR = 10
    RATIO = 11
    GRID = 12
    TOLERANCE = 13
    DIRECTION = 14
    UNIT = 15
    DECIMAL_SIGN = 16
    STYLE = 17
    DENOMINATOR = 18
    DECIMALS = 19
    AREA = 20
    INDEX = 21
    TABLE = 22
    SEAM_ALLOWANCE = 23
    TAKE_UP = 24
    FINISHED = 25
    UNFINISHED = 26
    CUT = 27
    PIECES = 28
    SEAMS = 29
    MEASURED = 30
    SEAM_ERROR = 31
    USABLE_WIDTH = 32
    LABELLED_WIDTH = 33
    SELVAGE = 34
    SHRINKAGE = 35
    EXTRA = 36
    EXTRA_SHARE = 37
    STEP = 38
    CLOTH_LENGTH = 39
    END_LOSS = 40
    EDGE = 41
    PINK_DEPTH = 42
    CARE_STATE = 43
    PRINT_DIRECTION = 44
    STRIP_LENGTH = 45
    STRIP_CUT = 46
    STRIPS = 47
    STRIPS_PER_SET = 48
    STRIPS_PER_BUNDLE = 49
    SEGMENT_CUT = 50
    SEGMENTS = 51
    SEGMENTS_PER_BLOCK = 52
    SEGMENTS_PER_SET = 53
    END_TRIM = 54
    RESQUARE_LOSS = 55
    RESQUARE_EVERY = 56
    FOLD_CLEAR = 57
    BLOCK_WIDTH = 58
    BLOCK_HEIGHT = 59
    BLOCKS = 60
    COLUMNS = 61
    QUILT_ROWS = 62
    TOPS = 63
    TURNING = 64
    PRESSING = 65
    QUILT_WIDTH = 66
    QUILT_LENGTH = 67
    BORDER_WIDTH = 68
    BORDER_STYLE = 69
    JOIN = 70
    JOIN_LOSS = 71
    MITRE_EXTRA = 72
    MARGIN = 73
    FABRIC_WIDTH = 74
    REPEAT = 75
    LAYOUT = 76
    FOLD = 77
    BINDING_CUT = 78
    BINDING_FRONT = 79
    BINDING_BACK = 80
    THICKNESS = 81
    TURN_UNDER = 82
    PERIMETER = 83
    CORNERS = 84
    BIAS_LENGTH = 85
    SLEEVE_DROP = 86
    SLEEVES = 87
    INSET = 88
    CORNER_TRIANGLE = 89
    LABEL = 90
    SPARE = 91
    PER_SET = 92
    IN_HAND = 93
    STOCK_KIND = 94
    SQUARE_TOLERANCE = 95
    SETS = 96
    UNIT_KIND = 97
    METHOD = 98
    POLICY = 99
    HALF_ADDITION = 100
    QUARTER_ADDITION = 101
    TRIM = 102
    TIP = 103
    CORNER = 104
    UNITS = 105
    HEIGHT = 106
    MOTIFS = 107
    LAYERS = 108
    STACKS = 109
    STACKS_PER_STRIP = 110
    PRINTS = 111
    CUT_ERROR = 112
    QUILTING_LOSS = 113
    GOVERNING_RULE = 114
    STITCH_LENGTH = 115
    STITCHES = 116
    WASTE = 117
    BOBBIN = 118
    SPOOL = 119
    SPACING = 120
    OFFSET = 121
    PATTERN = 122
    START = 123
    PASSES = 124
    DENSITY = 125
    MASS = 126
    AMOUNT = 127
    AMOUNT_KIND = 128
    PRICE = 129
    PRICE_PER = 130
    MATTRESS_WIDTH = 131
    MATTRESS_LENGTH = 132
    MATTRESS_DEPTH = 133
    FLOOR_HEIGHT = 134
    DROP = 135
    DROP_RULE = 136
    PILLOW_TUCK = 137
    FOOT_CORNER = 138
    SASH_WIDTH = 139
    SETTING_KIND = 140
    PARITY = 141
    RANK = 142
    BEST = 143
    WORK_LIMIT = 144
    TRIANGLE_HEIGHT = 145
    HAND = 146
    CENTRE_WIDTH = 147
    CENTRE_HEIGHT = 148
    LOG_WIDTH = 149
    ROUNDS = 150
    LOG_ORDER = 151
    LOG_SIDE = 152
    LOG_TURN = 153
    ROUND_KIND = 154
    ROUND_CORNER = 155
    UNIT_REPEAT = 156
    COPING_MOST = 157
    SPACERS = 158
    SPACER_LEAST = 159
    DIAGONAL = 160
    RUNS = 161
    SET_OFF = 162
    TRIM_ROOM = 163
    SETTING_LAYOUT = 164
    EDGE_STYLE = 165
    FIRST_BLOCK = 166
    CORNER_ROW = 167
    PIECE = 168
    CORNER_TIP = 169
    PLACE = 170
    CENTRE = 171
    RADIUS = 172
    CURVE = 173
    GRAIN = 174
    SIDES = 175
    MEASURE = 176
    QUARTER_TURNS = 177
    FABRIC = 178
    NODE = 179
    DEPTH = 180
    CHILDREN = 181
    AXIS = 182
    MOST = 183
    TAG = 184
    DARKNESS = 185
    STRIP_PIECING = 186
    PRESS = 187
    CELLS = 188
    VALUE = 189
    EASE = 190
    STAGE = 191
    PLACES = 192
    TOUCH = 193
    NAME = 194
    ALLOCATOR = 195
    SUM = 196
    FRAME = 197
    PREFER = 198
    QUILT = 199
    FABRICS = 200
    SORT = 201
    KIND = 202
    MIRRORED = 203
    BLANK_KIND = 204
    RUN_IN = 205
    PRIORITY = 206
    STRAIGHTENING = 207
    STOCK_SIDE = 208
    STOCK_COST = 209
    STOCK_ROWS = 210
    CUTPLAN = 211
    PROOF_CASE = 212
    LEAST_SIDE = 213
    WIDTHS = 214
    SPARE_PIECES = 215
    STOCK_COUNT = 216
    LONG_PIECES = 217
    YARDAGE = 218
    PIECE_WIDTH = 219
    PIECE_LENGTH = 220
    LEAST_PART = 221

    @property
    def words(self) -> str:
        """In the library's words."""
        return str(library.muslin_argument_words(int(self)).decode("utf-8"))


class Warning(Choice):
    """enum muslin_warning"""

    NO_SLACK = 1  # a yield stands exactly on its edge: any shorter and a piece is lost
    MIXED_WASH = 2  # washed and unwashed fabric meet in one top
    PRECUT_WASHED = 4  # small pre-cuts were washed: they fray, shrink and lose their size
    PRINT_TURNED = 8  # a print with a direction lies turned in some places
    BINDING_UNEVEN = 16  # the back shows far more or less binding than the front
    DIAGONAL_STRETCH = 32  # diagonal joins put bias edges into a border, which stretches
    NEST_CONFLICT = 64  # some pairs of segments cannot nest without turning one of them
    SET_REPEATS = 128  # too few sets: some block holds two segments of one set
    SMALL_QUILT = 256  # of a size used around infants: keep it out of their sleep space
    BACK_TOO_NARROW = 512  # the binding does not reach round to cover its own seam on the back
    MIXED_EDGES = 1024  # pinked and straight edges meet: align the same point throughout
    MIXED_WIDTHS = 2048  # strips of unequal usable length share the shortest
    BIAS_EDGE = 4096  # an outside edge lies on the bias and stretches
    OFF_GRID = 8192  # a size does not lie on the ruler's grid
    BELOW_EXACT = 16384  # a size was rounded below what the geometry needs
    LONGER_THAN_WIDTH = 32768  # a piece is longer than its fabric is wide

    @property
    def sentence(self) -> str:
        """In the library's words."""
        return str(library.muslin_warning_sentence(int(self)).decode("utf-8"))


class Direction(Choice):
    """enum muslin_direction"""

    UP = 1  # towards +infinity
    DOWN = 2  # towards -infinity
    NEAREST = 3  # to the nearest; ties upwards


class LengthUnit(Choice):
    """enum muslin_length_unit"""

    INCH = 1
    FOOT = 2
    YARD = 3
    MM = 4
    CM = 5
    M = 6

    @property
    def word(self) -> str:
        """In the library's words."""
        return str(library.muslin_length_unit_word(int(self)).decode("utf-8"))


class Style(Choice):
    """enum muslin_style"""

    INCH_FRACTION = 1  # 2 1/2 in
    INCH_DECIMAL = 2  # 2.5 in
    YARD_FRACTION = 3  # 1 3/8 yd
    MM = 4  # 63.5 mm
    CM = 5  # 6.35 cm


class AllowancePolicy(Choice):
    """enum muslin_allowance_policy"""

    EXACT = 1  # what the geometry of the seams asks for, and no more
    CUSTOMARY = 2  # the trade's round figures, or the caller's; refused where they are too small
    OVERSIZE = 3  # the customary figures and some room to trim away after sewing


class GoverningRule(Choice):
    """enum muslin_governing_rule"""

    BATTING = 1  # closely quilted: the layers go where the batting goes
    FABRIC = 2  # as the fabric does
    LARGER = 3  # on the safe side where the quilt must not end too small
    SMALLER = 4  # on the safe side where it must not end too large


class GoverningSource(Choice):
    """enum muslin_governing_source"""

    BATTING = 1  # the batting governs
    FABRIC = 2  # the fabric governs
    BOTH = 3  # larger or smaller was asked, and they are alike


class Edge(Choice):
    """enum muslin_edge"""

    STRAIGHT = 1  # cut straight
    PINKED_TIPS = 2  # zigzag edges, the stated size measured from tip to tip
    PINKED_VALLEYS = 3  # ... from valley to valley


class Care(Choice):
    """enum muslin_care"""

    UNWASHED = 1
    WASHED = 2


class Print(Choice):
    """enum muslin_print"""

    NONE = 1  # looks the same in every direction
    TWO_WAY = 2  # upright or upside down alike, along the cloth
    ONE_WAY = 3  # has a top, along the cloth
    STRIPE_ALONG = 4  # stripes that run with the selvage
    STRIPE_ACROSS = 5  # stripes that run from selvage to selvage


class StockKind(Choice):
    """enum muslin_stock_kind"""

    YARDAGE = 1
    STRIP = 2
    SQUARE = 3
    FAT_QUARTER = 4
    FAT_EIGHTH = 5


class Table(Choice):
    """enum muslin_table"""

    BATTING = 1  # packaged batting, in this version smallest first: width, length
    PRECUT = 2  # usual pre-cuts: cut width across, cut length along, pieces sold together
    FABRIC_WIDTH = 3  # usable widths people plan with, in this version smallest first: width
    MATTRESS = 4  # mattresses: width, length
    CRIB = 5  # what the law fixes for a full-size crib: width, length; a thickness as width
    PILLOW_TUCK = 6  # what a quilt is longer for tucking under pillows: width
    DROP = 7  # depths of mattresses, least as width and greatest as length; what a drop adds
    YARD_FRACTION = 8  # fractions of a yard and of a metre, in this version smallest first: width
    STITCH = 9  # usual lengths of a stitch: width
    CAUTION = 10  # behind cautions: sizes, or an age in months as count; see each row's note
    # packaged batting where other lists disagree with MUSLIN_TABLE_BATTING; never chosen by muslin_batting_plan()
    BATTING_OTHER = 11


class Curve(Choice):
    """enum muslin_curve"""

    STRAIGHT = 1  # no arc
    CONVEX = 2  # an arc that bulges out of its piece: counter-clockwise round its centre
    CONCAVE = 3  # an arc that bulges into its piece: clockwise round its centre


class CornerTip(Choice):
    """enum muslin_corner_tip"""

    SHARP = 1
    BLUNT = 2
    TRIM_ARRIVING = 3
    TRIM_LEAVING = 4


class PolygonMeasure(Choice):
    """enum muslin_polygon_measure"""

    SIDE = 1  # one side
    FLATS = 2  # from a side straight across to the opposite side, of a triangle to the corner
    CORNERS = 3  # between the two corners farthest apart; of a triangle its side
    CENTRE = 4  # from the centre to a corner


class UnitKind(Choice):
    """enum muslin_unit_kind"""

    RECTANGLE = 1  # one patch; W, H (0: a square). Region 1
    HALF_SQUARE = 2  # a square of two triangles; W. Regions 1 and 2
    QUARTER_SQUARE = 3  # a square of four triangles, two fabrics facing; W. Regions 1 and 2
    # one half (region 1) and two quarters (2, 3); W. Has hands: the same pieces make both, and TWO_AT_A_TIME always two
    # of each
    SPLIT_QUARTER = 4
    FLYING_GEESE = 5  # a goose (1) between two triangles (2); W, H = W / 2 (or 0)
    SQUARE_IN_SQUARE = 6  # a square on its point (1) and four corners (2); W
    SNOWBALL = 7  # a rectangle (1) that loses its corners (2); W, H (0: square), corner
    HALF_RECTANGLE = 8  # a rectangle of two triangles (1, 2); W, H. Has hands, cut each for itself
    TRIANGLE_60 = 9  # an equilateral triangle; H, its height. finished_width: its side
    # a 60 degree diamond; H, between two parallel sides. finished_width: its side, not the extent, which is half as
    # much again
    DIAMOND_60 = 10
    DIAMOND_45 = 11  # a 45 degree diamond; H, between two parallel sides. finished_width: its side
    HEXAGON = 12  # H, from flat to flat. finished_width: from point to point
    HALF_HEXAGON = 13  # H, half of flat to flat. finished_width: its long side
    TRAPEZOID = 14  # ends at 45 degrees; W, the long side, and H; W at least 2 H
    OCTAGON = 15  # a regular octagon (1) and its four corners (2); W
    EIGHT_POINTED_STAR = 16  # eight diamonds (1), four squares and four triangles (2), set in; W
    KALEIDOSCOPE = 17  # eight wedges, in turn 1 and 2, and four corners (3); W
    # a slice at 45 degrees from a strip set; W, across the slice, square to its long edges, not along the set; H, of
    # the set. Has hands, cut each for itself
    SLANTED_SLICE = 18


class UnitMethod(Choice):
    """enum muslin_unit_method"""

    PIECES = 1  # each piece cut by itself; triangles from squares cut on the diagonal
    TWO_AT_A_TIME = 2  # two squares sewn on both sides of a drawn diagonal
    FOUR_ALL_ROUND = 3  # two squares sewn all round and cut on both diagonals: bias outside
    FOUR_MIDPOINTS = 4  # two squares sewn from middle to middle of the sides, cut into four squares
    EIGHT_AT_A_TIME = 5  # two squares sewn on both sides of both diagonals, cut into eight
    FOUR_AT_A_TIME = 6  # geese: one large square and four small ones
    FLIPPED_CORNERS = 7  # squares sewn on their diagonal to a corner, folded back
    STRIPS = 8  # triangles, diamonds and the like cut from a strip of one height
    BIAS_STRIPS = 9  # half-squares cut on point along the seam of two strips


class Tip(Choice):
    """enum muslin_tip"""

    SHARP = 1  # the whole raw point
    BLUNT = 2  # cut off level with the allowance, as many rulers do: the strip is H + E high


class CutShape(Choice):
    """enum muslin_cut_shape"""

    RECTANGLE = 1  # square or not
    TRIANGLES = 2  # from a strip, alternately up and down; `pitch` holds `gives` of them
    DIAMONDS = 3  # from a strip, by parallel slanted cuts as far apart as the strip is high as cut
    HEXAGONS = 4  # so
    TRAPEZOIDS = 5  # from a strip, alternately up and down
    WEDGES = 6  # from a strip, alternately up and down
    OCTAGONS = 7  # a square that loses four corners
    SLICES = 8  # from a strip set, by parallel cuts at 45 degrees


class CutAgain(Choice):
    """enum muslin_cut_again"""

    NO = 1  # sewn as it is cut
    ONCE = 2  # once on the diagonal: two pieces
    TWICE = 3  # on both diagonals: four pieces


class Grain(Choice):
    """enum muslin_grain"""

    ALL_EDGES = 1  # on all edges
    SHORT_EDGES = 2  # a triangle's short sides; its long side is bias
    LONG_EDGE = 3  # a triangle's long side; its short sides are bias
    STRIP_EDGES = 4  # the edges that lay along the strip; the slanted ones are bias


class Hand(Choice):
    """enum muslin_hand"""

    FIRST = 1  # as the kinds say, and all that have no hands
    MIRRORED = 2  # its mirror image


class Stage(Choice):
    """enum muslin_stage"""

    FINISHED = 1  # what is seen of a patch: the finished patches fill the unit without gap or overlap
    RAW = 2  # the patch with e = E / 2 outside each edge: raw patches overlap by their seams


class UnitStepKind(Choice):
    """enum muslin_unit_step_kind"""

    MARK_LINE = 1  # draw a diagonal on the back
    MARK_BOTH = 2  # draw both diagonals
    MARK_MIDDLES = 3  # draw lines from middle to middle of neighbouring sides
    MARK_ACROSS = 4  # draw a diagonal across the seam of a half-square
    MARK_CORNERS = 5  # mark where the seam lines cross at each corner, `measure` in from both edges
    PAIR = 6  # lay one on the other, right sides together
    PAIR_HALVES = 7  # lay two half-squares together, fabrics opposite, seams locked
    PAIR_CORNER = 8  # lay a small square on one of two opposite corners
    PAIR_OPPOSITE = 9  # lay two small squares on opposite corners, overlapping in the middle
    ON_LINE = 10  # sew on the drawn line
    BESIDE = 11  # sew on both sides of the line, `measure` from it
    ROUND = 12  # sew round all edges, `measure` from them
    CUT_APART = 13  # cut on the drawn line
    CUT_SQUARES = 14  # cut through the middle both ways
    CUT_DIAGONALS = 15  # cut on both diagonals
    TRIM_CORNER = 16  # cut the corner off, `measure` beyond the seam
    FOLD_BACK = 17  # fold the piece back over its seam and press
    PRESS_OPEN = 18  # press the seam open
    PRESS_TO = 19  # press the seam towards `region`
    JOIN = 20  # sew edge to edge, along one long edge
    JOIN_LONG = 21  # sew two pieces together along their long sides
    JOIN_SHORT = 22  # ... along short sides, the same fabric always on the same side
    JOIN_POINT = 23  # sew a triangle's long side to a goose's short side, even at the foot
    JOIN_CENTRED = 24  # sew a triangle's long side to one of two opposite sides, dog-ears alike
    JOIN_AGAIN = 25  # to the goose's other short side
    JOIN_PARTS = 26  # sew the parts together in pairs, seams meeting in the middle
    SET_IN = 27  # set a square in, each side from the mark outwards
    PARTIAL = 28  # sew from the raw edge in the middle outwards and stop at the mark
    # cut across the strip by parallel cuts at `angle`, `measure` apart: for diamonds as far as the strip is wide as cut
    CUT_SLANTED = 29
    CUT_TURNING = 30  # cut from the strip alternately up and down, `angle` from its edge
    # octagon: cut the corners off the square from marks `from_corner` along both edges, so that each edge is `measure`
    # as cut
    CUT_TO_SHAPE = 31
    CUT_ON_POINT = 32  # cut squares on point, `measure` wide, their diagonal on the seam
    TRIM_TO = 33  # trim to `measure` by `measure_height`; the seam runs from corner to corner
    PAIR_STRIPS = 34  # lay the strips together that the pieces are cut from, right sides together
    MARK_ACROSS_EACH = 35  # as MARK_ACROSS, on each half-square
    MARK_WIDE = 36  # mark where the seam lines cross at both wide-angled corners of a diamond
    MARK_INNER = 37  # ... at one right-angled corner, the one to be set in
    PAIR_EACH_HALF = 38  # lay each half-square on a square cut `measure`
    PAIR_CORNER_LEFT = 39  # lay a small square on one of the two corners that are left
    PAIR_LAST_CORNER = 40  # geese: lay a small square on the large square's corner that is left
    PAIR_END = 41  # geese: lay a square on one end, its line running down and outwards
    PAIR_OTHER_END = 42  # ... on the other end of the same long edge, its line likewise
    BESIDE_BOTH = 43  # sew on both sides of both lines, `measure` from them
    CUT_EACH_APART = 44  # cut each of the four squares apart on its line
    JOIN_MARKED = 45  # sew two pieces together along their long sides, mark on mark
    JOIN_OTHERS = 46  # sew a triangle's long side to one of the other two sides, dog-ears alike
    JOIN_EVERY_SECOND = 47  # sew triangles to every second side of an octagon, opposite ones first
    JOIN_WEDGES = 48  # sew two wedges together along a long side, the same fabric always alike
    JOIN_MIDDLE = 49  # sew parts of wedges together, tips and seams meeting in the middle
    JOIN_WIDE_END = 50  # sew triangles to the wide ends of every second wedge, opposite ones first
    PARTIAL_PARTS = 51  # sew two pairs as in PARTIAL
    JOIN_THROUGH = 52  # sew two halves from mark to mark, straight through the middle
    SET_IN_SHORT = 53  # set a triangle in by its short sides, each from the mark outwards
    TRIM_EARS = 54  # trim the dog-ears off level
    TRIM_CROSSED = 55  # trim; the seams meet in the middle and run out into corners
    TRIM_GEESE = 56  # trim; seams run into the lower corners, the point lies an allowance inside
    TRIM_POINTS = 57  # trim; a point lies an allowance inside the middle of each edge
    TRIM_CORNERS = 58  # trim; each corner's seam meets the edges `from_corner` from the raw corner
    TRIM_STAR = 59  # trim; two points lie an allowance inside each edge, `from_corner` from its ends
    TRIM_LEANING = 60  # trim; the seam meets the shorter edges `from_corner` from the raw corner
    CUT_LENGTHS = 61  # cut the strip across into rectangles `measure` long
    # hexagon: cut the corners off a rectangle from marks `from_corner` along its long edges to the middles of its ends,
    # so that each edge is `measure` as cut
    CUT_POINTS = 62
    CUT_WEDGES = 63  # cut wedges alternately up and down with a ruler whose tip has `angle`
    CUT_PAIRS = 64  # half-squares: cut both strips in turn square across and `angle` from the edge


class Side(Choice):
    """enum muslin_side"""

    LEFT = 1
    RIGHT = 2
    TOP = 3
    BOTTOM = 4


class Turning(Choice):
    """enum muslin_turning"""

    NONE = 1  # all blocks the same way up
    QUARTER_ALTERNATE = 2  # every other block turned a quarter, like a chessboard; squares only
    HALF_ALTERNATE = 3  # every other block turned a half; any block


class Join(Choice):
    """enum muslin_join"""

    BUTTED = 1  # edge to edge, nothing lost (batting; or a count that ignores the loss)
    STRAIGHT = 2  # a straight seam: loses two allowances
    DIAGONAL = 3  # square-ended strips laid at right angles: loses the strip's cut width
    BIAS_ENDS = 4  # ends already cut at 45 degrees: loses 2 sqrt 2 allowances, up to a tick


class BorderStyle(Choice):
    """enum muslin_border_style"""

    SIDES_FIRST = 1  # butted: sides first, then top and bottom over them
    TOP_FIRST = 2  # butted: top and bottom first
    CORNERSTONES = 3  # four squares in the corners
    MITRED = 4  # seams at 45 degrees in the corners


class SashKind(Choice):
    """enum muslin_sash_kind"""

    VERTICAL = 1
    HORIZONTAL = 2
    CORNERSTONE = 3


class FirstBlock(Choice):
    """enum muslin_first_block"""

    PIECED = 1  # a pieced block in the first corner
    PLAIN = 2  # a plain one


class PointLayout(Choice):
    """enum muslin_point_layout"""

    PLAIN = 1  # block to block, no sashes
    SASH_OUTER = 2  # every block has four sashes; the outer cornerstones touch the edge by their tips
    SASH_CUT = 3  # the same, the edge runs through the middle of the outer cornerstones: triangles
    # no sash outside the corner blocks; the outer blocks touch the edge by their tips, sashes beside side triangles end
    # at the edge, cut off at 45 degrees: there the edge is bias, even beside triangles. A single block has no such sash
    SASH_INNER = 4


class PointEdge(Choice):
    """enum muslin_point_edge"""

    # setting triangles: straight grain lies on the outside, but for the ends of sashes in SASH_INNER
    TRIANGLES = 1
    # blocks cut beyond their diagonal, one half from each, with bias on the outside; the corners stay triangles
    HALF_BLOCKS = 2


class LogOrder(Choice):
    """enum muslin_log_order"""

    ROUND = 1  # each log turns the corner: four sides one after the other
    COURTHOUSE = 2  # courthouse steps: a side and its opposite, then the other two
    QUARTER = 3  # two neighbouring sides only: the centre stays in a corner


class LogTurn(Choice):
    """enum muslin_log_turn"""

    CLOCKWISE = 1
    ANTICLOCKWISE = 2


class LogHalf(Choice):
    """enum muslin_log_half"""

    FIRST = 1
    SECOND = 2


class FramePiece(Choice):
    """enum muslin_frame_piece"""

    TOP = 1  # top or bottom
    SIDE = 2  # left and right


class FrameLine(Choice):
    """enum muslin_frame_line"""

    CUT = 1  # the raw edge
    FINISHED = 2  # the stitched line


class RoundKind(Choice):
    """enum muslin_round_kind"""

    PLAIN = 1  # a border of whole strips
    PIECED = 2  # a border of equal units side by side
    COPING = 3  # plain strips just wide enough that the pieced round behind them comes out


class RoundCorner(Choice):
    """enum muslin_round_corner"""

    SQUARES = 1  # each run is a side's length, and four squares stand in the corners
    THROUGH = 2  # sides first; top and bottom run through the corners


class Drop(Choice):
    """enum muslin_drop"""

    DEPTH = 1  # as far as the mattress is deep: a coverlet that shows the base of the bed
    OVER_JOINT = 2  # the depth and 3 in, or what else is asked: hides where mattress and base meet
    FLOOR = 3  # from the top of the mattress down to the floor: a bedspread
    GIVEN = 4  # as the spec says


class FootCorner(Choice):
    """enum muslin_foot_corner"""

    SQUARE = 1  # left square: their points hang lower than the edges
    ROUNDED = 2  # cut to a quarter circle, so that no point hangs lower than the edges


class FitKind(Choice):
    """enum muslin_fit_kind"""

    STRAIGHT = 1  # side by side: c B + 2 b wide
    SASHED = 2  # sashes between blocks: c B + (c - 1) S + 2 b
    FRAMED = 3  # and one round the outside: c B + (c + 1) S + 2 b
    # on their corners, c and r counted along the edges, (c - 1)(r - 1) alternate blocks between them: c B sqrt 2 + 2 b
    ON_POINT = 4


class Parity(Choice):
    """enum muslin_parity"""

    ANY = 1  # even or odd
    EVEN = 2  # turned blocks that come in fours
    ODD = 3  # every other block a plain one, and the same block in all four corners


class FitRank(Choice):
    """enum muslin_fit_rank"""

    NEAREST = 1  # least off first: what width and length are off, added up
    FEWEST_BLOCKS = 2  # blocks and alternate blocks
    LARGEST_BLOCK = 3  # the largest block first


class Fold(Choice):
    """enum muslin_fold"""

    DOUBLE = 1  # folded in half, raw edges in the seam, the fold sewn down on the back
    SINGLE = 2  # one layer, its far edge turned under on the back


class BackingLayout(Choice):
    """enum muslin_backing_layout"""

    ONE_WIDTH = 1  # a single panel, its length along the quilt's length
    ONE_WIDTH_TURNED = 2  # a single panel, its length along the quilt's width
    SEAMS_ALONG = 3  # panels side by side, seams parallel to the quilt's length
    SEAMS_ACROSS = 4  # panels one below the other, seams parallel to its width
    CENTRE_ALONG = 5  # a whole panel in the middle, equal side panels, seams along
    CENTRE_ACROSS = 6  # the same, seams across
    INSERT_ALONG = 7  # one panel split lengthwise, an insert between its halves, seams along
    INSERT_ACROSS = 8  # the same, seams across


class PanelRole(Choice):
    """enum muslin_panel_role"""

    WHOLE = 1  # the full usable width, one of equals
    CENTRE = 2  # the full usable width, between two sides
    SIDE = 3  # cut to width from a further panel
    HALF = 4  # of a panel split lengthwise
    INSERT = 5  # strips between the halves


class Nesting(Choice):
    """enum muslin_nesting"""

    TURN = 1  # turn some segments end for end, which turns their pressing and the order of prints
    NAME = 2  # turn none; name the joins that do not nest


class SetPressing(Choice):
    """enum muslin_set_pressing"""

    TO_TOP = 1  # all seams of the set towards its labelled top strip
    TO_BOTTOM = 2  # ... away from it


class ThreadMethod(Choice):
    """enum muslin_thread_method"""

    RATIO = 1  # thread : seam as given
    FORMULA = 2  # 2 + 2 T S: from the thickness sewn and the stitch


class QuiltingPattern(Choice):
    """enum muslin_quilting_pattern"""

    ACROSS = 1  # straight lines from side to side
    ALONG = 2  # straight lines from top to bottom
    GRID = 3  # both
    DIAGONAL = 4  # at 45 degrees, one way
    CROSSHATCH = 5  # at 45 degrees, both ways
    OUTLINE = 6  # along seams or shapes whose length is given


class QuiltingStart(Choice):
    """enum muslin_quilting_start"""

    AT_OFFSET = 1  # the first diagonal cuts a corner off, at the offset from that corner
    FROM_CORNER = 2  # the first diagonal starts in a corner; the others lie on both sides of it


class CostKind(Choice):
    """enum muslin_cost_kind"""

    LENGTH = 1  # cloth by length: a price for so many ticks, 292608 for a yard, 320000 for a metre
    PIECES = 2  # things one by one: a price for one, or for so many
    BUNDLES = 3  # pieces that are sold together only: whole bundles are bought


class Sort(Choice):
    """enum muslin_sort"""

    FABRIC = 1
    MEASURE = 2
    NODE = 3


class Axis(Choice):
    """enum muslin_axis"""

    ACROSS = 1  # side by side, from the left; of a size: the width
    DOWN = 2  # one below the other, from the top; of a size: the height


class StripPiecing(Choice):
    """enum muslin_strip_piecing"""

    WHERE_FEWER = 1  # as a strip set where that takes fewer cuts and pays, see muslin_stripset
    ALWAYS = 2  # as a strip set; solving fails where the pieces do not allow it
    NEVER = 3  # piece by piece


class SeamPress(Choice):
    """enum muslin_seam_press"""

    FREE = 1  # whichever way seams nest
    TO_FIRST = 2  # towards the piece that comes first: to the left, or up
    TO_LAST = 3  # to the right, or down
    OPEN = 4  # half to either side: does not nest, and needs not


class SixtyFirst(Choice):
    """enum muslin_sixty_first"""

    ON_SIDE = 1
    ON_POINT = 2


class MeasureKind(Choice):
    """enum muslin_measure_kind"""

    NAMED = 1
    FIXED = 2
    SUM = 3
    EXTENT = 4


class NodeKind(Choice):
    """enum muslin_node_kind"""

    PATCH = 1  # muslin_quilt_patch()
    UNIT = 2  # muslin_quilt_unit()
    SHAPE = 3  # muslin_quilt_shape()
    JOIN = 4  # pieces side by side or one below the other
    TURN = 5  # turned, mirrored, or both
    TRIM = 6  # muslin_quilt_trim()
    PINWHEEL = 7  # muslin_quilt_pinwheel()
    SET_IN = 8  # muslin_quilt_set_in()
    DIAGONAL = 9  # a field on point
    SIXTY = 10  # rows of 60 degree pieces


class MisfitKind(Choice):
    """enum muslin_misfit_kind"""

    LENGTH = 1  # two edges to be sewn together differ in length by more than the ease
    EASED = 2  # ... by no more than the ease
    ALLOWANCE = 3  # their allowances differ, or the pieces along one differ among themselves
    NOT_SQUARE = 4  # a block on point is not a square of the first one's size


class CutSource(Choice):
    """enum muslin_cut_source"""

    PATCH = 1  # a patch, cut by itself
    SET_STRIP = 2  # a strip for strip sets, as long as its fabric's usable width
    UNIT = 3  # a piece of a unit's recipe
    TEMPLATE = 4  # a piece of the caller's own shape: the smallest upright rectangle round it as cut
    SETTING = 5  # a square for setting triangles, or for cornerstones that the edge cuts in half
    SIXTY = 6  # a piece of a 60 degree row, cut from a strip
    # a strip with mitred ends, cut as a rectangle to its longest edge; so is a sash on point that ends at the edge, cut
    # off at 45 degrees
    MITRED = 7


class TermKind(Choice):
    """enum muslin_term_kind"""

    MEASURE = 1  # a measure's value: of `id`, `times` of it
    CHILD = 2  # finished size of the child `id`, `times` of it
    GREATEST = 3  # the greatest of the children: the child `id`
    ALLOWANCE = 4  # allowance of an edge, from the measure `id`
    TAKE_UP = 5  # half the take-up `id`, of `times` edges, up to a tick
    TRIMMED = 6  # what is trimmed away, from the measure `id`; negative
    # `times` diagonals of the block `id`, rounded once; then of squares as wide as the sash `id`: what all together,
    # rounded once, leave
    DIAGONAL = 7
    SIXTY = 8  # `times` half sides of a triangle of height `id`, rounded once
    DRAWN = 9  # the size of the caller's own drawing
    HALF = 10  # half of the measure `id`: the height of geese


class Prefer(Choice):
    """enum muslin_prefer"""

    NOTHING = 0  # either side is as good
    DARKER = 1  # seams go towards the darker fabric where nesting leaves the choice


class Press(Choice):
    """enum muslin_press"""

    LEFT = 1  # to the left
    RIGHT = 2  # to the right
    UP = 3  # upwards
    DOWN = 4  # downwards
    OPEN = 5  # open


class OtherWay(Choice):
    """enum muslin_other_way"""

    NONE = 1  # no copy is taken the other way
    PRESSED = 2  # press so many copies the other way
    SETS = 3  # cut them from strip sets of their own, pressed the other way
    # press all alike and turn so many as a whole, by `turn` quarters: they look the same; segments of strip sets end
    # for end
    TURNED = 4


class Towards(Choice):
    """enum muslin_towards"""

    NEITHER = 0  # open
    FIRST = 1  # the left or upper one
    SECOND = 2  # the right or lower one


class Preferred(Choice):
    """enum muslin_preferred"""

    NEITHER = 0  # neither way is preferred
    KEPT = 1  # pressed as preferred
    AGAINST = 2  # ... against it


class SewingKind(Choice):
    """enum muslin_sewing_kind"""

    SET = 1  # strips sewn into sets
    SEGMENTS = 2  # sets cut across into segments: nothing is sewn
    UNIT = 3  # a unit by its recipe: muslin_unit_steps() has its own steps
    SHAPE = 4  # the caller's own shape
    JOIN = 5  # pieces joined in their order
    TRIM = 6  # trimmed to size: nothing is sewn
    PINWHEEL = 7  # a partial first seam, three whole ones, the first one finished
    SET_IN = 8  # strips sewn from mark to mark, then the mitres
    DIAGONAL = 9  # diagonal rows of blocks and of sashes, then rows to each other, corners last
    SIXTY = 10  # rows of 60 degree pieces, then rows to each other


class BlankKind(Choice):
    """enum muslin_blank_kind"""

    PIECE = 1  # a rectangle
    LENGTHWISE = 2  # a rectangle, its cut_length along the cloth: a border, slit from a panel
    # a strip cut_length high and cut_width long in all, pieced from strips across the cloth: binding, pieced borders,
    # long sashes
    JOINED = 3
    # cut one beside the other from a strip just cut_length high, every second one upside down or all alike: each takes
    # cut_width of the strip, the first run_in more. 60 degree triangles, diamonds, wedges, half-hexagons
    SLOPED = 4


class CutplanStopped(Choice):
    """enum muslin_cutplan_stopped"""

    DONE = 0  # it came to its end: proven
    PROGRESS = 1  # the progress call ended it
    WORK = 2  # the work limit: a higher one may give a better plan or a proof
    # no memory for more, or the room that the search keeps to is full; fewer sizes at a time, or sizes in coarser
    # steps, take less
    MEMORY = 3
    SIZES = 4  # more sizes, or kinds of stock, than are searched: only first plans were made
    NO_MORE = 5  # it knows no more to do for plan or bound: a higher limit changes nothing


class CutplanStripKind(Choice):
    """enum muslin_cutplan_strip_kind"""

    STRIP = 1  # right across the bolt
    PANEL = 2  # a length of the bolt, as high as its longest slit piece
    SLIT = 3  # the pieces slit from a panel, side by side at its left edge
    STOCK = 4  # a piece of stock
    WITHIN = 5  # a strip across the rest of a panel, or of a piece of stock


class CutplanFault(Choice):
    """enum muslin_cutplan_fault"""

    NONE = 0  # all is well
    MISSING = 1  # fewer pieces of a size than are wanted
    OVERFULL = 2  # a strip holds more than its room, or pieces overlap
    TOO_HIGH = 3  # a piece is higher than its strip, or lies as it may not
    COST = 4  # the cost is not what the strips add up to
    GAP = 5  # two cases do not make up the one that they split
    BOUND = 6  # worths do not prove what they are said to prove
    STOCK = 7  # more pieces of stock than there are


class LongPieces(Choice):
    """enum muslin_long_pieces"""

    LENGTHWISE = 1  # along the cloth, whole, slit from panels
    JOINED = 2  # across the cloth, pieced from strips
