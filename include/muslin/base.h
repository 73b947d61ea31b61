/* muslin/base.h - what every other header shares: version, statuses, problems, warnings, the allocator.
 *
 * SPDX-License-Identifier: MIT
 *
 * Conventions, stated once
 *
 *   Numbers     A length is muslin_len, in ticks of 1/8128 inch: 1/64 in is 127 ticks, 1 mm is 320. An area is in
 *               doubled square ticks, a share or percentage in parts per million (ppm), a count is an int64_t.
 *   Statuses    A function that can fail returns muslin_status. 0 is success. On failure no output is touched; the
 *               optional struct muslin_problem, which exists to be written then, is the one exception. A function of
 *               another type cannot fail: its comment says what it gives for what it does not know.
 *   Structs     Each public struct begins with `size` and `flags`. The caller sets `size` to its own sizeof. Inputs
 *               (named ..._spec) start from their MUSLIN_..._SPEC_INIT value or their muslin_..._spec_init() call,
 *               rows that are asked with and answered from MUSLIN_..._INIT or muslin_..._init(); then set members one
 *               by one: an initializer of your own, { .columns = 4 }, would set all others to 0, which is not their
 *               initial value. Outputs need only `size`: { .size = sizeof out }. Structs grow at their end only, and a
 *               member added later means "as before" when it is zero. A size of 0, below the first published one or
 *               above 4096 is refused, and so are unknown flags, pads that are not zero, and non-zero bytes behind the
 *               members this library knows. An output is zeroed behind what the library knows.
 *   Not used    A member that a request does not use must still lie in its range, unless its comment says that it is
 *               not looked at (or not read).
 *   Rows        Arrays of rows take a `row_size`, the caller's sizeof of one row; rows lie at that stride. Reading a
 *               row, the library reads the row's own `size`; writing one, it sets `size` to row_size.
 *   Ask, fill   A call with results of unknown number takes (rows, row_size, capacity, count). With capacity 0 it only
 *               sets *count and succeeds. If capacity is too small it returns MUSLIN_ERR_BUFFER, sets *count and
 *               writes nothing else.
 *   Initial     A ..._init() call writes the initial values of a struct to its first `size` bytes, in constant time.
 *               MUSLIN_ERR_NULL: no struct. MUSLIN_ERR_STRUCT_SIZE: a size that is none of its. The example of
 *               muslin_rounding_spec_init() stands for all.
 *   Threads     Any thread may make any call. Different objects may be used from different threads without locks; a
 *               const object may be read from many. The library has no global, static or thread-local variable.
 *   Handles     A quilt, its solutions and plans are opaque, get their memory from the allocator they were created with
 *               and are given back by their ..._free() call, which takes null. Nothing else allocates, but for scratch
 *               memory where a call takes an allocator.
 *   Names       An enumerator begins with its enum's name, without a final _KIND, but for MUSLIN_OK, MUSLIN_ERR_,
 *               MUSLIN_ARG_ and MUSLIN_WARN_; a flag begins as its struct does, without _SPEC, or as that
 *               of the struct from which it comes; most rows are called by the singular of the call that fills them.
 *   Choices     An enum begins at 1. What is 0 says that there is nothing to report or to prefer: MUSLIN_OK,
 *               MUSLIN_ARG_NONE, MUSLIN_CUTPLAN_STOPPED_DONE, MUSLIN_CUTPLAN_FAULT_NONE, MUSLIN_PREFER_NOTHING,
 *               MUSLIN_TOWARDS_NEITHER, MUSLIN_PREFERRED_NEITHER.
 *   Order       A handle or spec and all other inputs, the allocator, `progress` with its `context`, outputs, problem.
 *   Comments    A comment beside a member speaks for those behind it, too, that have none and are named alike: a height
 *               is as the width before it. "so" beside one says the same of it.
 *   Memory      Strings that a call returns are constants of the library: never free them; they stay valid as long as
 *               it is loaded.
 */
#ifndef MUSLIN_BASE_H
#define MUSLIN_BASE_H

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What is exported. Windows: MUSLIN_SHARED where the library is a DLL, MUSLIN_BUILDING when it is built. Who links it
 * into a library of her own and exports nothing of it defines MUSLIN_API as nothing. */
#ifdef MUSLIN_API
#elif defined _WIN32 && defined MUSLIN_SHARED
#  ifdef MUSLIN_BUILDING
#    define MUSLIN_API __declspec(dllexport)
#  else
#    define MUSLIN_API __declspec(dllimport)
#  endif
#elif defined __GNUC__
#  define MUSLIN_API __attribute__((visibility("default")))
#else
#  define MUSLIN_API
#endif

/* ---- version --------------------------------------------------------------------------------------------------- */

/* The three parts of the version of these headers. */
#define MUSLIN_VERSION_MAJOR 1
#define MUSLIN_VERSION_MINOR 1
#define MUSLIN_VERSION_PATCH 0
/* The version of these headers as one number: major x 1000000 + minor x 1000 + patch. */
#define MUSLIN_VERSION 1001000

/* The version of the library that is running, in the form of MUSLIN_VERSION; it belongs to these
 * headers where the major version is the same and it is not older, patches apart. Constant time. Example:
 * muslin_version() / 1000 >= MUSLIN_VERSION / 1000.
 * Since 1.0. */
MUSLIN_API uint32_t muslin_version(void);

/* The same as text, for instance "1.1.0". Constant time. Example: puts(muslin_version_text()). Since 1.0. */
MUSLIN_API const char *muslin_version_text(void);

/* ---- numbers --------------------------------------------------------------------------------------------------- */

/* A length in ticks of 1/8128 inch. */
typedef int64_t muslin_len;

/* Ticks in an inch and in a millimetre, exactly. */
#define MUSLIN_TICKS_PER_INCH INT64_C(8128)
#define MUSLIN_TICKS_PER_MM INT64_C(320)

/* The largest magnitude of a length in plain sums: 2^62 - 1 ticks. */
#define MUSLIN_LENGTH_MAX INT64_C(4611686018427387903)
/* The largest size of a thing (a strip, a quilt, anything squared or put under a root): 2^30 ticks, 3.3 km. */
#define MUSLIN_SIZE_MAX INT64_C(1073741824)
/* The largest count in a request (strips, blocks, pieces): 2^31 - 1. */
#define MUSLIN_COUNT_MAX INT64_C(2147483647)
/* One whole in parts per million. */
#define MUSLIN_PPM 1000000

/* ---- statuses -------------------------------------------------------------------------------------------------- */

/* How a call went: one of enum muslin_status_code. */
typedef int32_t muslin_status;

/* Every status has its number for ever; the numbers run without gaps from 0 to muslin_status_count() - 1. */
enum muslin_status_code {
    MUSLIN_OK = 0,                   /* all went well */
    MUSLIN_ERR_NULL = 1,             /* a pointer that must be given is null */
    MUSLIN_ERR_STRUCT_SIZE = 2,      /* a struct's size is 0, below the first published one, or above 4096 */
    MUSLIN_ERR_STRUCT_TAIL = 3,      /* bytes behind the members this library knows are not zero */
    MUSLIN_ERR_FLAGS = 4,            /* a flag this library does not know */
    MUSLIN_ERR_CHOICE = 5,           /* a value that is none of the listed choices */
    MUSLIN_ERR_RANGE = 6,            /* an argument below its least or above its greatest value */
    MUSLIN_ERR_OVERFLOW = 7,         /* the result would lie outside the range of its type */
    MUSLIN_ERR_DIVIDE_BY_ZERO = 8,   /* a divisor is zero */
    MUSLIN_ERR_BUFFER = 9,           /* the caller's buffer or array is too small; the needed size was written */
    MUSLIN_ERR_INDEX = 10,           /* a row number at or past the end of a table */
    MUSLIN_ERR_TEXT_EMPTY = 11,      /* the text holds no number */
    MUSLIN_ERR_TEXT_SYNTAX = 12,     /* something stands where a number or a unit should */
    MUSLIN_ERR_TEXT_TRAILING = 13,   /* a whole length, then something more */
    MUSLIN_ERR_TEXT_UNIT = 14,       /* a word that is no unit of length */
    MUSLIN_ERR_TEXT_DECIMAL = 15,    /* the other decimal sign than the one asked for */
    MUSLIN_ERR_TEXT_ZERO_DENOMINATOR = 16, /* a fraction over zero */
    MUSLIN_ERR_TEXT_ENCODING = 17,   /* not valid UTF-8 */
    MUSLIN_ERR_SEAM_TOO_WIDE = 18,   /* the seams eat the whole piece: nothing would be seen of it */
    MUSLIN_ERR_NOT_SQUARE = 19,      /* a quarter turn was asked of a block that is not square */
    MUSLIN_ERR_NO_YIELD = 20,        /* the stock gives not even one piece, so no amount of it is enough */
    MUSLIN_ERR_NOT_ENOUGH = 21,      /* the stock in hand does not suffice */
    MUSLIN_ERR_NO_FIT = 22,          /* no listed size or layout covers what is asked */
    MUSLIN_ERR_NO_MEMORY = 23,       /* an allocator returned nothing */
    MUSLIN_ERR_CUSTOMARY = 24,        /* a customary addition is below what the geometry needs */
    MUSLIN_ERR_METHOD = 25,          /* this kind of unit is not made by that method */
    MUSLIN_ERR_SHAPE = 26,           /* no such shape: corners missing, edges that cross, an impossible angle or arc */
    MUSLIN_ERR_NOT_TILED = 27,       /* the pieces leave a gap in the outline, overlap, or stick out */
    MUSLIN_ERR_WORK_LIMIT = 28,      /* the work, or what is stored, would be more than the caller allows */
    MUSLIN_ERR_FOREIGN = 29,         /* an id of another quilt, of another sort, or of nothing */
    MUSLIN_ERR_STOPPED = 30,         /* the caller's progress call ended it before there was an answer */
    MUSLIN_ERR_TOO_MANY = 31         /* more would be needed than can be counted here; since 1.1 */
};

/* How many statuses this library knows. A binding iterates 0 .. count - 1. Constant time. Example:
 * muslin_status_count() gives MUSLIN_ERR_TOO_MANY + 1. Since 1.0. */
MUSLIN_API int32_t muslin_status_count(void);

/* The status's name without its prefix, for instance "ERR_RANGE" for 6 and "OK" for 0; "UNKNOWN" for a number outside
 * the list. Never null. Constant time. Example: muslin_status_name(MUSLIN_ERR_RANGE). Since 1.0. */
MUSLIN_API const char *muslin_status_name(muslin_status status);

/* One plain English sentence on what the status means and what to do. Its wording may improve between versions; match
 * on the number. Never null. Constant time. Example: puts(muslin_status_sentence(MUSLIN_ERR_NULL)). Since 1.0. */
MUSLIN_API const char *muslin_status_sentence(muslin_status status);

/* ---- arguments and problems ------------------------------------------------------------------------------------ */

/* The inputs that a problem can name. The numbers stay for ever; new ones are added at the end. */
enum muslin_argument {
    MUSLIN_ARG_NONE = 0,
    MUSLIN_ARG_TEXT = 1,
    MUSLIN_ARG_BUFFER = 2,
    MUSLIN_ARG_OUTPUT = 3,
    MUSLIN_ARG_SPEC = 4,
    MUSLIN_ARG_ROWS = 5,
    MUSLIN_ARG_ROW_SIZE = 6,
    MUSLIN_ARG_LENGTH = 7,
    MUSLIN_ARG_OTHER_LENGTH = 8,
    MUSLIN_ARG_FACTOR = 9,
    MUSLIN_ARG_DIVISOR = 10,
    MUSLIN_ARG_RATIO = 11,
    MUSLIN_ARG_GRID = 12,
    MUSLIN_ARG_TOLERANCE = 13,
    MUSLIN_ARG_DIRECTION = 14,
    MUSLIN_ARG_UNIT = 15,
    MUSLIN_ARG_DECIMAL_SIGN = 16,
    MUSLIN_ARG_STYLE = 17,
    MUSLIN_ARG_DENOMINATOR = 18,
    MUSLIN_ARG_DECIMALS = 19,
    MUSLIN_ARG_AREA = 20,
    MUSLIN_ARG_INDEX = 21,
    MUSLIN_ARG_TABLE = 22,
    MUSLIN_ARG_SEAM_ALLOWANCE = 23,
    MUSLIN_ARG_TAKE_UP = 24,
    MUSLIN_ARG_FINISHED = 25,
    MUSLIN_ARG_UNFINISHED = 26,
    MUSLIN_ARG_CUT = 27,
    MUSLIN_ARG_PIECES = 28,
    MUSLIN_ARG_SEAMS = 29,
    MUSLIN_ARG_MEASURED = 30,
    MUSLIN_ARG_SEAM_ERROR = 31,
    MUSLIN_ARG_USABLE_WIDTH = 32,
    MUSLIN_ARG_LABELLED_WIDTH = 33,
    MUSLIN_ARG_SELVAGE = 34,
    MUSLIN_ARG_SHRINKAGE = 35,
    MUSLIN_ARG_EXTRA = 36,
    MUSLIN_ARG_EXTRA_SHARE = 37,
    MUSLIN_ARG_STEP = 38,
    MUSLIN_ARG_CLOTH_LENGTH = 39,
    MUSLIN_ARG_END_LOSS = 40,
    MUSLIN_ARG_EDGE = 41,
    MUSLIN_ARG_PINK_DEPTH = 42,
    MUSLIN_ARG_CARE_STATE = 43,
    MUSLIN_ARG_PRINT_DIRECTION = 44,
    MUSLIN_ARG_STRIP_LENGTH = 45,
    MUSLIN_ARG_STRIP_CUT = 46,
    MUSLIN_ARG_STRIPS = 47,
    MUSLIN_ARG_STRIPS_PER_SET = 48,
    MUSLIN_ARG_STRIPS_PER_BUNDLE = 49,
    MUSLIN_ARG_SEGMENT_CUT = 50,
    MUSLIN_ARG_SEGMENTS = 51,
    MUSLIN_ARG_SEGMENTS_PER_BLOCK = 52,
    MUSLIN_ARG_SEGMENTS_PER_SET = 53,
    MUSLIN_ARG_END_TRIM = 54,
    MUSLIN_ARG_RESQUARE_LOSS = 55,
    MUSLIN_ARG_RESQUARE_EVERY = 56,
    MUSLIN_ARG_FOLD_CLEAR = 57,
    MUSLIN_ARG_BLOCK_WIDTH = 58,
    MUSLIN_ARG_BLOCK_HEIGHT = 59,
    MUSLIN_ARG_BLOCKS = 60,
    MUSLIN_ARG_COLUMNS = 61,
    MUSLIN_ARG_QUILT_ROWS = 62,
    MUSLIN_ARG_TOPS = 63,
    MUSLIN_ARG_TURNING = 64,
    MUSLIN_ARG_PRESSING = 65,
    MUSLIN_ARG_QUILT_WIDTH = 66,
    MUSLIN_ARG_QUILT_LENGTH = 67,
    MUSLIN_ARG_BORDER_WIDTH = 68,
    MUSLIN_ARG_BORDER_STYLE = 69,
    MUSLIN_ARG_JOIN = 70,
    MUSLIN_ARG_JOIN_LOSS = 71,
    MUSLIN_ARG_MITRE_EXTRA = 72,
    MUSLIN_ARG_MARGIN = 73,
    MUSLIN_ARG_FABRIC_WIDTH = 74,
    MUSLIN_ARG_REPEAT = 75,
    MUSLIN_ARG_LAYOUT = 76,
    MUSLIN_ARG_FOLD = 77,
    MUSLIN_ARG_BINDING_CUT = 78,
    MUSLIN_ARG_BINDING_FRONT = 79,
    MUSLIN_ARG_BINDING_BACK = 80,
    MUSLIN_ARG_THICKNESS = 81,
    MUSLIN_ARG_TURN_UNDER = 82,
    MUSLIN_ARG_PERIMETER = 83,
    MUSLIN_ARG_CORNERS = 84,
    MUSLIN_ARG_BIAS_LENGTH = 85,
    MUSLIN_ARG_SLEEVE_DROP = 86,
    MUSLIN_ARG_SLEEVES = 87,
    MUSLIN_ARG_INSET = 88,
    MUSLIN_ARG_CORNER_TRIANGLE = 89,
    MUSLIN_ARG_LABEL = 90,
    MUSLIN_ARG_SPARE = 91,
    MUSLIN_ARG_PER_SET = 92,
    MUSLIN_ARG_IN_HAND = 93,
    MUSLIN_ARG_STOCK_KIND = 94,
    MUSLIN_ARG_SQUARE_TOLERANCE = 95,
    MUSLIN_ARG_SETS = 96,
    MUSLIN_ARG_UNIT_KIND = 97,
    MUSLIN_ARG_METHOD = 98,
    MUSLIN_ARG_POLICY = 99,
    MUSLIN_ARG_HALF_ADDITION = 100,
    MUSLIN_ARG_QUARTER_ADDITION = 101,
    MUSLIN_ARG_TRIM = 102,
    MUSLIN_ARG_TIP = 103,
    MUSLIN_ARG_CORNER = 104,
    MUSLIN_ARG_UNITS = 105,
    MUSLIN_ARG_HEIGHT = 106,
    MUSLIN_ARG_MOTIFS = 107,
    MUSLIN_ARG_LAYERS = 108,
    MUSLIN_ARG_STACKS = 109,
    MUSLIN_ARG_STACKS_PER_STRIP = 110,
    MUSLIN_ARG_PRINTS = 111,
    MUSLIN_ARG_CUT_ERROR = 112,
    MUSLIN_ARG_QUILTING_LOSS = 113,
    MUSLIN_ARG_GOVERNING_RULE = 114,
    MUSLIN_ARG_STITCH_LENGTH = 115,
    MUSLIN_ARG_STITCHES = 116,
    MUSLIN_ARG_WASTE = 117,
    MUSLIN_ARG_BOBBIN = 118,
    MUSLIN_ARG_SPOOL = 119,
    MUSLIN_ARG_SPACING = 120,
    MUSLIN_ARG_OFFSET = 121,
    MUSLIN_ARG_PATTERN = 122,
    MUSLIN_ARG_START = 123,
    MUSLIN_ARG_PASSES = 124,
    MUSLIN_ARG_DENSITY = 125,
    MUSLIN_ARG_MASS = 126,
    MUSLIN_ARG_AMOUNT = 127,
    MUSLIN_ARG_AMOUNT_KIND = 128,
    MUSLIN_ARG_PRICE = 129,
    MUSLIN_ARG_PRICE_PER = 130,
    MUSLIN_ARG_MATTRESS_WIDTH = 131,
    MUSLIN_ARG_MATTRESS_LENGTH = 132,
    MUSLIN_ARG_MATTRESS_DEPTH = 133,
    MUSLIN_ARG_FLOOR_HEIGHT = 134,
    MUSLIN_ARG_DROP = 135,
    MUSLIN_ARG_DROP_RULE = 136,
    MUSLIN_ARG_PILLOW_TUCK = 137,
    MUSLIN_ARG_FOOT_CORNER = 138,
    MUSLIN_ARG_SASH_WIDTH = 139,
    MUSLIN_ARG_SETTING_KIND = 140,
    MUSLIN_ARG_PARITY = 141,
    MUSLIN_ARG_RANK = 142,
    MUSLIN_ARG_BEST = 143,
    MUSLIN_ARG_WORK_LIMIT = 144,
    MUSLIN_ARG_TRIANGLE_HEIGHT = 145,
    MUSLIN_ARG_HAND = 146,
    MUSLIN_ARG_CENTRE_WIDTH = 147,
    MUSLIN_ARG_CENTRE_HEIGHT = 148,
    MUSLIN_ARG_LOG_WIDTH = 149,
    MUSLIN_ARG_ROUNDS = 150,
    MUSLIN_ARG_LOG_ORDER = 151,
    MUSLIN_ARG_LOG_SIDE = 152,
    MUSLIN_ARG_LOG_TURN = 153,
    MUSLIN_ARG_ROUND_KIND = 154,
    MUSLIN_ARG_ROUND_CORNER = 155,
    MUSLIN_ARG_UNIT_REPEAT = 156,
    MUSLIN_ARG_COPING_MOST = 157,
    MUSLIN_ARG_SPACERS = 158,
    MUSLIN_ARG_SPACER_LEAST = 159,
    MUSLIN_ARG_DIAGONAL = 160,
    MUSLIN_ARG_RUNS = 161,
    MUSLIN_ARG_SET_OFF = 162,
    MUSLIN_ARG_TRIM_ROOM = 163,
    MUSLIN_ARG_SETTING_LAYOUT = 164,
    MUSLIN_ARG_EDGE_STYLE = 165,
    MUSLIN_ARG_FIRST_BLOCK = 166,
    MUSLIN_ARG_CORNER_ROW = 167,
    MUSLIN_ARG_PIECE = 168,
    MUSLIN_ARG_CORNER_TIP = 169,
    MUSLIN_ARG_PLACE = 170,
    MUSLIN_ARG_CENTRE = 171,
    MUSLIN_ARG_RADIUS = 172,
    MUSLIN_ARG_CURVE = 173,
    MUSLIN_ARG_GRAIN = 174,
    MUSLIN_ARG_SIDES = 175,
    MUSLIN_ARG_MEASURE = 176,
    MUSLIN_ARG_QUARTER_TURNS = 177,
    MUSLIN_ARG_FABRIC = 178,
    MUSLIN_ARG_NODE = 179,
    MUSLIN_ARG_DEPTH = 180,
    MUSLIN_ARG_CHILDREN = 181,
    MUSLIN_ARG_AXIS = 182,
    MUSLIN_ARG_MOST = 183,
    MUSLIN_ARG_TAG = 184,
    MUSLIN_ARG_DARKNESS = 185,
    MUSLIN_ARG_STRIP_PIECING = 186,
    MUSLIN_ARG_PRESS = 187,
    MUSLIN_ARG_CELLS = 188,
    MUSLIN_ARG_VALUE = 189,
    MUSLIN_ARG_EASE = 190,
    MUSLIN_ARG_STAGE = 191,
    MUSLIN_ARG_PLACES = 192,
    MUSLIN_ARG_TOUCH = 193,
    MUSLIN_ARG_NAME = 194,
    MUSLIN_ARG_ALLOCATOR = 195,
    MUSLIN_ARG_SUM = 196,
    MUSLIN_ARG_FRAME = 197,
    MUSLIN_ARG_PREFER = 198,
    MUSLIN_ARG_QUILT = 199,
    MUSLIN_ARG_FABRICS = 200,
    MUSLIN_ARG_SORT = 201,
    MUSLIN_ARG_KIND = 202,
    MUSLIN_ARG_MIRRORED = 203,
    MUSLIN_ARG_BLANK_KIND = 204,
    MUSLIN_ARG_RUN_IN = 205,
    MUSLIN_ARG_PRIORITY = 206,
    MUSLIN_ARG_STRAIGHTENING = 207,
    MUSLIN_ARG_STOCK_SIDE = 208,
    MUSLIN_ARG_STOCK_COST = 209,
    MUSLIN_ARG_STOCK_ROWS = 210,
    MUSLIN_ARG_CUTPLAN = 211,
    MUSLIN_ARG_PROOF_CASE = 212,
    MUSLIN_ARG_LEAST_SIDE = 213,
    MUSLIN_ARG_WIDTHS = 214,
    MUSLIN_ARG_SPARE_PIECES = 215,
    MUSLIN_ARG_STOCK_COUNT = 216,
    MUSLIN_ARG_LONG_PIECES = 217,
    MUSLIN_ARG_YARDAGE = 218,
    MUSLIN_ARG_PIECE_WIDTH = 219,
    MUSLIN_ARG_PIECE_LENGTH = 220,
    MUSLIN_ARG_LEAST_PART = 221
};

/* How many arguments this library can name, numbered 0 .. count - 1. Constant time. Example:
 * for (int32_t i = 0; i < muslin_argument_count(); i++) puts(muslin_argument_words(i)). Since 1.0. */
MUSLIN_API int32_t muslin_argument_count(void);

/* The trade's words for an argument, for instance "seam allowance"; "unknown argument" for a number outside the list.
 * Never null. Constant time. Example: muslin_argument_words(MUSLIN_ARG_SEAM_ALLOWANCE). Since 1.0. */
MUSLIN_API const char *muslin_argument_words(int32_t argument);

/* What went wrong and where. Optional in every call that takes it: pass null. One that is given must have its `size`
 * set (MUSLIN_PROBLEM_INIT does), else the call itself fails with MUSLIN_ERR_STRUCT_SIZE and writes nothing. It is
 * written only when a call fails, and is the one output written then; at MUSLIN_OK it is untouched. `limit` is the
 * bound that was broken; for MUSLIN_ERR_CHOICE the last known choice, for MUSLIN_ERR_FLAGS the sum of the known flags,
 * for MUSLIN_ERR_SEAM_TOO_WIDE what the seams take, for MUSLIN_ERR_WORK_LIMIT the work limit, with the work that it is
 * too little for as `value`, or of pieces from stock how many of them a plan was found for. */
struct muslin_problem {
    uint32_t size;    /* in: sizeof(struct muslin_problem) */
    uint32_t flags;   /* 0 */
    int32_t status;   /* the status that the call returned */
    int32_t argument; /* one of enum muslin_argument */
    int64_t at;       /* byte offset in the text, or the number of the row, at which it was found; else 0 */
    int64_t bytes;    /* bytes of text concerned, else 0 */
    int64_t value;    /* the offending value: ticks, count, ppm or choice, as its argument is measured */
    int64_t limit;    /* the limit it broke, in the same unit; 0 where there is none */
    char text[200];   /* one sentence naming argument, value and limit; always terminated */
};
/* Nothing is wrong yet. */
#define MUSLIN_PROBLEM_INIT { sizeof(struct muslin_problem), 0, 0, 0, 0, 0, 0, 0, "" }
/* Writes the values above to the first `size` bytes of *problem. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Constant
 * time. Example: muslin_problem_init(&problem, sizeof problem). Since 1.0. */
MUSLIN_API muslin_status muslin_problem_init(struct muslin_problem *problem, uint32_t size);

/* ---- warnings -------------------------------------------------------------------------------------------------- */

/* A result is right and still deserves a word. Results carry a `warnings` member: a sum of these. Bit 31 of each such
 * member is kept free: should the others ever run out, it will say that more stands in a later member. */
enum muslin_warning {
    MUSLIN_WARN_NO_SLACK = 1 << 0,        /* a yield stands exactly on its edge: any shorter and a piece is lost */
    MUSLIN_WARN_MIXED_WASH = 1 << 1,      /* washed and unwashed fabric meet in one top */
    MUSLIN_WARN_PRECUT_WASHED = 1 << 2,   /* small pre-cuts were washed: they fray, shrink and lose their size */
    MUSLIN_WARN_PRINT_TURNED = 1 << 3,    /* a print with a direction lies turned in some places */
    MUSLIN_WARN_BINDING_UNEVEN = 1 << 4,  /* the back shows far more or less binding than the front */
    MUSLIN_WARN_DIAGONAL_STRETCH = 1 << 5,/* diagonal joins put bias edges into a border, which stretches */
    MUSLIN_WARN_NEST_CONFLICT = 1 << 6,   /* some pairs of segments cannot nest without turning one of them */
    MUSLIN_WARN_SET_REPEATS = 1 << 7,     /* too few sets: some block holds two segments of one set */
    MUSLIN_WARN_SMALL_QUILT = 1 << 8,     /* of a size used around infants: keep it out of their sleep space */
    MUSLIN_WARN_BACK_TOO_NARROW = 1 << 9, /* the binding does not reach round to cover its own seam on the back */
    MUSLIN_WARN_MIXED_EDGES = 1 << 10,    /* pinked and straight edges meet: align the same point throughout */
    MUSLIN_WARN_MIXED_WIDTHS = 1 << 11,   /* strips of unequal usable length share the shortest */
    MUSLIN_WARN_BIAS_EDGE = 1 << 12,      /* an outside edge lies on the bias and stretches */
    MUSLIN_WARN_OFF_GRID = 1 << 13,       /* a size does not lie on the ruler's grid */
    MUSLIN_WARN_BELOW_EXACT = 1 << 14,    /* a size was rounded below what the geometry needs */
    MUSLIN_WARN_LONGER_THAN_WIDTH = 1 << 15 /* a piece is longer than its fabric is wide */
};

/* How many warnings this library knows: the bits 0 .. count - 1, each 1u << bit. Constant time. Example: 1u <<
 * (muslin_warning_count() - 1) gives MUSLIN_WARN_LONGER_THAN_WIDTH. Since 1.0. */
MUSLIN_API int32_t muslin_warning_count(void);

/* The name of one warning bit without its prefix, for instance "NO_SLACK" for 1; "UNKNOWN" for 0 or for anything that
 * is not exactly one known bit. Never null. Constant time. Example: muslin_warning_name(MUSLIN_WARN_NO_SLACK).
 * Since 1.0. */
MUSLIN_API const char *muslin_warning_name(uint32_t warning);

/* One sentence for one warning bit; "" for 0 or for anything that is not exactly one known bit. Never null.
 * Constant time. Example: puts(muslin_warning_sentence(MUSLIN_WARN_NO_SLACK)). Since 1.0. */
MUSLIN_API const char *muslin_warning_sentence(uint32_t warning);

/* ---- constants ------------------------------------------------------------------------------------------------- */

/* Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX), flags,
 * ticks per unit. For languages without a preprocessor, and for whoever was built against an older version, since
 * limits may rise. count says how many there are. name and value answer for a place in the list, 0 .. count - 1, whose
 * order may change between versions: look for a name. A name has no prefix, "SIZE_MAX" for MUSLIN_SIZE_MAX; it is ""
 * and the value 0 for a place that is none. Never null. Constant time. Example: for (int32_t i = 0; i <
 * muslin_constant_count(); i++) puts(muslin_constant_name(i)). Example: where the name is "TICKS_PER_INCH",
 * muslin_constant_value(i) gives 8128. Since 1.0 all. */
MUSLIN_API int32_t muslin_constant_count(void);
MUSLIN_API const char *muslin_constant_name(int32_t index);
MUSLIN_API int64_t muslin_constant_value(int32_t index);

/* ---- allocator ------------------------------------------------------------------------------------------------- */

/* Where handles get their memory. This struct is frozen: it alone has no size member and holds pointers. `alloc` and
 * `realloc` return null when they cannot serve, and a block that failed to grow is as it was. Sizes are never 0; old
 * sizes are told; what `realloc` and `free` get is never null. Blocks begin at a multiple of 8 bytes, and nothing ever
 * asks for more. What is made from one quilt uses that quilt's allocator, if none is given: who solves and plans one
 * quilt in several threads at a time gives it an allocator that can be called from all of them, as that of the C
 * library can. */
struct muslin_allocator {
    void *(*alloc)(void *context, size_t size);                                 /* a new block */
    void *(*realloc)(void *context, void *block, size_t old_size, size_t size); /* the same, of another size */
    void (*free)(void *context, void *block, size_t size);                      /* gives a block back */
    void *context;                                                              /* given to all three */
};

/* Fills *out with the allocator of the C library (malloc, realloc, free). It lives in an object file of its own, so a
 * program that never calls it links without libc but for memcpy, memmove and memset, which compilers call by
 * themselves. MUSLIN_ERR_NULL: out is null. Constant time.
 * Example: struct muslin_allocator a; muslin_allocator_libc(&a). Since 1.0. */
MUSLIN_API muslin_status muslin_allocator_libc(struct muslin_allocator *out);

/* ---- progress -------------------------------------------------------------------------------------------------- */

/* How a search stands: told from its first answer on, after so many steps each time, never by a clock, so that the same
 * request tells the same on every machine. `work` is the steps taken, `best` the best answer so far and `bound` what no
 * answer is below, as the call says. Returns 0 to go on. Anything else ends the search as its work limit would: what it
 * is at is brought to an end, which takes a little more work and may better the answer; the best one stands, the call
 * succeeds and tells no more; a check, which has no half answer, fails with MUSLIN_ERR_STOPPED. Null: nobody is told;
 * where there is little to do, and in what the call says, nobody is told either. `context` is the caller's own and not
 * looked at. It is called in the thread of the call, and may ask anything of the library but of what is being made. */
typedef int32_t (*muslin_progress)(void *context, int64_t work, int64_t best, int64_t bound);

#ifdef __cplusplus
}
#endif

#endif
