// What calls.js goes by: the enums, structs and functions of the library.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT

export const version = "1.1.0";

export const constants = Object.freeze({
    VERSION_MAJOR: 1,
    VERSION_MINOR: 1,
    VERSION_PATCH: 0,
    VERSION: 1001000,
    TICKS_PER_INCH: 8128,
    TICKS_PER_MM: 320,
    LENGTH_MAX: 4611686018427387903n,
    SIZE_MAX: 1073741824,
    COUNT_MAX: 2147483647,
    PPM: 1000000,
    FORMAT_UNICODE: 1,
    FORMAT_BARE: 2,
    QUARTER_INCH: 2032,
    USABLE_WIDTH_USUAL: 325120,
    CLOTH_MAY_TURN: 1,
    MOTIF_ANY_START: 1,
    MOTIF_ANY_ACROSS: 2,
    STACK_ANY_START: 1,
    YIELD_FROM_ONE_END: 1,
    CUTLIST_ROWS_MAX: 4096,
    CUTLIST_PIECE_MAY_TURN: 1,
    SHAPE_SIZE_MAX: 1048576,
    SHAPE_SEAM_MAX: 131072,
    SHAPE_CORNERS_MAX: 1024,
    SHAPE_OUTLINE: -1,
    TEMPLATE_REACH_MAX: 4194304,
    UNIT_SIZE_MAX: 67108864,
    BORDER_LENGTHWISE: 1,
    SETTING_SASHED_FRAME: 1,
    SETTING_SASHED_CORNERSTONES: 2,
    SETTING_LINE_FRAME: 1,
    SETTING_POINT_DIAGONAL_FIRST: 1,
    ROUNDS_MAX: 1000,
    LOGCABIN_BLOCKS_MAX: 100000,
    LOGCABIN_GIVEN_CUT: 1,
    MEDALLION_EQUAL_COPING: 1,
    POINT_BORDER_SQUARES_MAX: 536870912,
    BED_FOOT_GIVEN: 1,
    FIT_ALLOW_STRAIGHT: 1,
    FIT_ALLOW_SASHED: 2,
    FIT_ALLOW_FRAMED: 4,
    FIT_ALLOW_ON_POINT: 8,
    FIT_ACROSS_FRAME: 1,
    BIAS_BLUNT_ENDS: 1,
    BATTING_FIXED: 1,
    BACKING_ROUND_PANELS: 1,
    STRIPQUILT_SEGMENTS_MAX: 32,
    THREAD_READY_BOBBINS: 1,
    MONEY_MAX: 4611686018427387903n,
    QUILT_DEPTH_MAX: 4096,
    QUILT_POINT_DEPTH_MAX: 4,
    QUILT_CORNERS_MAX: 32,
    QUILT_JOIN_KEEPS_ORDER: 1,
    QUILT_SASHED_FRAME: 1,
    QUILT_SASHED_CORNERSTONES: 2,
    EDGE_PRINTS_TURNS_HALF: 1,
    EDGE_PRINTS_TURNS_QUARTER: 2,
    CUTPLAN_ROWS_MAX: 4096,
    CUTPLAN_COUNT_MAX: 1000000,
    BLANK_MAY_TURN: 1,
    CUTPLAN_NO_PANELS: 1,
    CUTPLAN_ONE_HEIGHT: 2,
    CUTPLAN_OWN_STRIPS: 4,
    CUTPLAN_STACKED: 8,
    CUTPLAN_FIRST_CUT_ACROSS: 16,
    CUTPLAN_FOLDED: 32,
    CUTPLAN_BY_PRIORITY: 64,
});

// What each number is called.
export const enums = {
    Status: "ok=0 null=1 structSize=2 structTail=3 flags=4 choice=5 range=6 overflow=7 divideByZero=8 buffer=9 " +
        "index=10 textEmpty=11 textSyntax=12 textTrailing=13 textUnit=14 textDecimal=15 textZeroDenominator=16 " +
        "textEncoding=17 seamTooWide=18 notSquare=19 noYield=20 notEnough=21 noFit=22 noMemory=23 customary=24 " +
        "method=25 shape=26 notTiled=27 workLimit=28 foreign=29 stopped=30 tooMany=31",
    Argument: "none=0 text=1 buffer=2 output=3 spec=4 rows=5 rowSize=6 length=7 otherLength=8 factor=9 divisor=10 " +
        "ratio=11 grid=12 tolerance=13 direction=14 unit=15 decimalSign=16 style=17 denominator=18 decimals=19 " +
        "area=20 index=21 table=22 seamAllowance=23 takeUp=24 finished=25 unfinished=26 cut=27 pieces=28 seams=29 " +
        "measured=30 seamError=31 usableWidth=32 labelledWidth=33 selvage=34 shrinkage=35 extra=36 extraShare=37 " +
        "step=38 clothLength=39 endLoss=40 edge=41 pinkDepth=42 careState=43 printDirection=44 stripLength=45 " +
        "stripCut=46 strips=47 stripsPerSet=48 stripsPerBundle=49 segmentCut=50 segments=51 segmentsPerBlock=52 " +
        "segmentsPerSet=53 endTrim=54 resquareLoss=55 resquareEvery=56 foldClear=57 blockWidth=58 blockHeight=59 " +
        "blocks=60 columns=61 quiltRows=62 tops=63 turning=64 pressing=65 quiltWidth=66 quiltLength=67 " +
        "borderWidth=68 borderStyle=69 join=70 joinLoss=71 mitreExtra=72 margin=73 fabricWidth=74 repeat=75 " +
        "layout=76 fold=77 bindingCut=78 bindingFront=79 bindingBack=80 thickness=81 turnUnder=82 perimeter=83 " +
        "corners=84 biasLength=85 sleeveDrop=86 sleeves=87 inset=88 cornerTriangle=89 label=90 spare=91 perSet=92 " +
        "inHand=93 stockKind=94 squareTolerance=95 sets=96 unitKind=97 method=98 policy=99 halfAddition=100 " +
        "quarterAddition=101 trim=102 tip=103 corner=104 units=105 height=106 motifs=107 layers=108 stacks=109 " +
        "stacksPerStrip=110 prints=111 cutError=112 quiltingLoss=113 governingRule=114 stitchLength=115 stitches=116 " +
        "waste=117 bobbin=118 spool=119 spacing=120 offset=121 pattern=122 start=123 passes=124 density=125 mass=126 " +
        "amount=127 amountKind=128 price=129 pricePer=130 mattressWidth=131 mattressLength=132 mattressDepth=133 " +
        "floorHeight=134 drop=135 dropRule=136 pillowTuck=137 footCorner=138 sashWidth=139 settingKind=140 " +
        "parity=141 rank=142 best=143 workLimit=144 triangleHeight=145 hand=146 centreWidth=147 centreHeight=148 " +
        "logWidth=149 rounds=150 logOrder=151 logSide=152 logTurn=153 roundKind=154 roundCorner=155 unitRepeat=156 " +
        "copingMost=157 spacers=158 spacerLeast=159 diagonal=160 runs=161 setOff=162 trimRoom=163 settingLayout=164 " +
        "edgeStyle=165 firstBlock=166 cornerRow=167 piece=168 cornerTip=169 place=170 centre=171 radius=172 " +
        "curve=173 grain=174 sides=175 measure=176 quarterTurns=177 fabric=178 node=179 depth=180 children=181 " +
        "axis=182 most=183 tag=184 darkness=185 stripPiecing=186 press=187 cells=188 value=189 ease=190 stage=191 " +
        "places=192 touch=193 name=194 allocator=195 sum=196 frame=197 prefer=198 quilt=199 fabrics=200 sort=201 " +
        "kind=202 mirrored=203 blankKind=204 runIn=205 priority=206 straightening=207 stockSide=208 stockCost=209 " +
        "stockRows=210 cutplan=211 proofCase=212 leastSide=213 widths=214 sparePieces=215 stockCount=216 " +
        "longPieces=217 yardage=218 pieceWidth=219 pieceLength=220 leastPart=221",
    Warning: "noSlack=1 mixedWash=2 precutWashed=4 printTurned=8 bindingUneven=16 diagonalStretch=32 nestConflict=64 " +
        "setRepeats=128 smallQuilt=256 backTooNarrow=512 mixedEdges=1024 mixedWidths=2048 biasEdge=4096 offGrid=8192 " +
        "belowExact=16384 longerThanWidth=32768",
    Direction: "up=1 down=2 nearest=3",
    LengthUnit: "inch=1 foot=2 yard=3 mm=4 cm=5 m=6",
    Style: "inchFraction=1 inchDecimal=2 yardFraction=3 mm=4 cm=5",
    AllowancePolicy: "exact=1 customary=2 oversize=3",
    GoverningRule: "batting=1 fabric=2 larger=3 smaller=4",
    GoverningSource: "batting=1 fabric=2 both=3",
    Edge: "straight=1 pinkedTips=2 pinkedValleys=3",
    Care: "unwashed=1 washed=2",
    Print: "none=1 twoWay=2 oneWay=3 stripeAlong=4 stripeAcross=5",
    StockKind: "yardage=1 strip=2 square=3 fatQuarter=4 fatEighth=5",
    Table: "batting=1 precut=2 fabricWidth=3 mattress=4 crib=5 pillowTuck=6 drop=7 yardFraction=8 stitch=9 " +
        "caution=10 battingOther=11",
    Curve: "straight=1 convex=2 concave=3",
    CornerTip: "sharp=1 blunt=2 trimArriving=3 trimLeaving=4",
    PolygonMeasure: "side=1 flats=2 corners=3 centre=4",
    UnitKind: "rectangle=1 halfSquare=2 quarterSquare=3 splitQuarter=4 flyingGeese=5 squareInSquare=6 snowball=7 " +
        "halfRectangle=8 triangle60=9 diamond60=10 diamond45=11 hexagon=12 halfHexagon=13 trapezoid=14 octagon=15 " +
        "eightPointedStar=16 kaleidoscope=17 slantedSlice=18",
    UnitMethod: "pieces=1 twoAtATime=2 fourAllRound=3 fourMidpoints=4 eightAtATime=5 fourAtATime=6 flippedCorners=7 " +
        "strips=8 biasStrips=9",
    Tip: "sharp=1 blunt=2",
    CutShape: "rectangle=1 triangles=2 diamonds=3 hexagons=4 trapezoids=5 wedges=6 octagons=7 slices=8",
    CutAgain: "no=1 once=2 twice=3",
    Grain: "allEdges=1 shortEdges=2 longEdge=3 stripEdges=4",
    Hand: "first=1 mirrored=2",
    Stage: "finished=1 raw=2",
    UnitStepKind: "markLine=1 markBoth=2 markMiddles=3 markAcross=4 markCorners=5 pair=6 pairHalves=7 pairCorner=8 " +
        "pairOpposite=9 onLine=10 beside=11 round=12 cutApart=13 cutSquares=14 cutDiagonals=15 trimCorner=16 " +
        "foldBack=17 pressOpen=18 pressTo=19 join=20 joinLong=21 joinShort=22 joinPoint=23 joinCentred=24 " +
        "joinAgain=25 joinParts=26 setIn=27 partial=28 cutSlanted=29 cutTurning=30 cutToShape=31 cutOnPoint=32 " +
        "trimTo=33 pairStrips=34 markAcrossEach=35 markWide=36 markInner=37 pairEachHalf=38 pairCornerLeft=39 " +
        "pairLastCorner=40 pairEnd=41 pairOtherEnd=42 besideBoth=43 cutEachApart=44 joinMarked=45 joinOthers=46 " +
        "joinEverySecond=47 joinWedges=48 joinMiddle=49 joinWideEnd=50 partialParts=51 joinThrough=52 setInShort=53 " +
        "trimEars=54 trimCrossed=55 trimGeese=56 trimPoints=57 trimCorners=58 trimStar=59 trimLeaning=60 " +
        "cutLengths=61 cutPoints=62 cutWedges=63 cutPairs=64",
    Side: "left=1 right=2 top=3 bottom=4",
    Turning: "none=1 quarterAlternate=2 halfAlternate=3",
    Join: "butted=1 straight=2 diagonal=3 biasEnds=4",
    BorderStyle: "sidesFirst=1 topFirst=2 cornerstones=3 mitred=4",
    SashKind: "vertical=1 horizontal=2 cornerstone=3",
    FirstBlock: "pieced=1 plain=2",
    PointLayout: "plain=1 sashOuter=2 sashCut=3 sashInner=4",
    PointEdge: "triangles=1 halfBlocks=2",
    LogOrder: "round=1 courthouse=2 quarter=3",
    LogTurn: "clockwise=1 anticlockwise=2",
    LogHalf: "first=1 second=2",
    FramePiece: "top=1 side=2",
    FrameLine: "cut=1 finished=2",
    RoundKind: "plain=1 pieced=2 coping=3",
    RoundCorner: "squares=1 through=2",
    Drop: "depth=1 overJoint=2 floor=3 given=4",
    FootCorner: "square=1 rounded=2",
    FitKind: "straight=1 sashed=2 framed=3 onPoint=4",
    Parity: "any=1 even=2 odd=3",
    FitRank: "nearest=1 fewestBlocks=2 largestBlock=3",
    Fold: "double=1 single=2",
    BackingLayout: "oneWidth=1 oneWidthTurned=2 seamsAlong=3 seamsAcross=4 centreAlong=5 centreAcross=6 " +
        "insertAlong=7 insertAcross=8",
    PanelRole: "whole=1 centre=2 side=3 half=4 insert=5",
    Nesting: "turn=1 name=2",
    SetPressing: "toTop=1 toBottom=2",
    ThreadMethod: "ratio=1 formula=2",
    QuiltingPattern: "across=1 along=2 grid=3 diagonal=4 crosshatch=5 outline=6",
    QuiltingStart: "atOffset=1 fromCorner=2",
    CostKind: "length=1 pieces=2 bundles=3",
    Sort: "fabric=1 measure=2 node=3",
    Axis: "across=1 down=2",
    StripPiecing: "whereFewer=1 always=2 never=3",
    SeamPress: "free=1 toFirst=2 toLast=3 open=4",
    SixtyFirst: "onSide=1 onPoint=2",
    MeasureKind: "named=1 fixed=2 sum=3 extent=4",
    NodeKind: "patch=1 unit=2 shape=3 join=4 turn=5 trim=6 pinwheel=7 setIn=8 diagonal=9 sixty=10",
    MisfitKind: "length=1 eased=2 allowance=3 notSquare=4",
    CutSource: "patch=1 setStrip=2 unit=3 template=4 setting=5 sixty=6 mitred=7",
    TermKind: "measure=1 child=2 greatest=3 allowance=4 takeUp=5 trimmed=6 diagonal=7 sixty=8 drawn=9 half=10",
    Prefer: "nothing=0 darker=1",
    Press: "left=1 right=2 up=3 down=4 open=5",
    OtherWay: "none=1 pressed=2 sets=3 turned=4",
    Towards: "neither=0 first=1 second=2",
    Preferred: "neither=0 kept=1 against=2",
    SewingKind: "set=1 segments=2 unit=3 shape=4 join=5 trim=6 pinwheel=7 setIn=8 diagonal=9 sixty=10",
    BlankKind: "piece=1 lengthwise=2 joined=3 sloped=4",
    CutplanStopped: "done=0 progress=1 work=2 memory=3 sizes=4 noMore=5",
    CutplanStripKind: "strip=1 panel=2 slit=3 stock=4 within=5",
    CutplanFault: "none=0 missing=1 overfull=2 tooHigh=3 cost=4 gap=5 bound=6 stock=7",
    LongPieces: "lengthwise=1 joined=2",
};

// Bytes of a struct, its members, and the function that writes its initial values.
export const structs = {
    Problem: [248, "status:int32@8 argument:choice=Argument@12 at:int64@16 bytes:int64@24 value:large@32 " +
        "limit:large@40 text:chars@48"],
    RoundingSpec: [32, "grid:length@8 tolerance:length@16 direction:choice=Direction@24", "muslin_rounding_spec_init"],
    Rounded: [32, "value:length@8 error:length@16 exact:truth@24 onTick:truth@28"],
    ParseSpec: [16, "defaultUnit:choice=LengthUnit@8 decimalSign:sign@12", "muslin_parse_spec_init"],
    Parsed: [24, "value:length@8 exact:truth@16 unit:choice=LengthUnit@20"],
    FormatSpec: [32, "style:choice=Style@8 denominator:int32@12 decimals:int32@16 decimalSign:sign@20 " +
        "direction:choice=Direction@24 unicode:flag=1@4 bare:flag=2@4", "muslin_format_spec_init"],
    SeamSpec: [24, "allowance:length@8 takeUp:length@16", "muslin_seam_spec_init"],
    PieceSpec: [64, "finishedWidth:length@8 finishedHeight:length@16 left:length@24 right:length@32 top:length@40 " +
        "bottom:length@48 takeUp:length@56", "muslin_piece_spec_init"],
    Piece: [48, "cutWidth:length@8 cutHeight:length@16 cutArea:large@24 finishedArea:large@32 seamShare:int32@40"],
    SewnRow: [64, "pieces:int64@8 seams:int64@16 cutTotal:length@24 eaten:length@32 unfinished:length@40 " +
        "finished:length@48 seamShare:int32@56"],
    Calibration: [88, "seams:int64@8 planned:length@16 shortfall:length@24 perSeamNumerator:length@32 " +
        "perSeamDenominator:int64@40 takeUp:length@48 effectiveNumerator:length@56 effectiveDenominator:int64@64 " +
        "effectiveAllowance:length@72 sewAt:length@80"],
    CarryOnSpec: [56, "cutTotal:length@8 strips:int64@16 measured:length@24 laterCut:length@32 allowance:length@40 " +
        "takeUp:length@48", "muslin_carry_on_spec_init"],
    AccuracyRowSpec: [40, "pieces:int64@8 seams:int64@16 seamError:length@24 " +
        "cutError:length@32", "muslin_accuracy_row_spec_init"],
    AccuracyRowErrors: [48, "cuts:int64@8 fromSeams:length@16 fromCuts:length@24 worst:length@32 likely:length@40"],
    AccuracyTopSpec: [56, "piecesAcross:int64@8 piecesDown:int64@16 columns:int64@24 rows:int64@32 " +
        "seamError:length@40 cutError:length@48", "muslin_accuracy_top_spec_init"],
    AccuracyTopErrors: [104, "blockSeamsAcross:int64@8 blockWidthWorst:length@16 blockWidthLikely:length@24 " +
        "blockSeamsDown:int64@32 blockHeightWorst:length@40 blockHeightLikely:length@48 topSeamsAcross:int64@56 " +
        "topWidthWorst:length@64 topWidthLikely:length@72 topSeamsDown:int64@80 topLengthWorst:length@88 " +
        "topLengthLikely:length@96"],
    AccuracyMeetSpec: [40, "seams:int64@8 seamError:length@16 cutError:length@24 " +
        "tolerance:length@32", "muslin_accuracy_meet_spec_init"],
    AccuracyMeeting: [96, "worst:length@8 likely:length@16 firstMissed:int64@24 likelyFirstMissed:int64@32 " +
        "largestSeamError:length@40 likelyLargestSeamError:length@48 meets:truth@56 likelyMeets:truth@60 " +
        "cutsMeet:truth@64 likelyCutsMeet:truth@68 twiceLikelyFirstMissed:int64@72 " +
        "twiceLikelyLargestSeamError:length@80 twiceLikelyMeets:truth@88 twiceLikelyCutsMeet:truth@92"],
    WashSpec: [40, "beforeWidth:length@8 afterWidth:length@16 beforeLength:length@24 " +
        "afterLength:length@32", "muslin_wash_spec_init"],
    WashChange: [40, "areaBefore:large@8 areaAfter:large@16 changeAcross:int32@24 changeAlong:int32@28 " +
        "changeArea:int32@32"],
    ShrinkageSpec: [40, "width:length@8 length:length@16 quiltingAcross:int32@24 quiltingAlong:int32@28 " +
        "washingAcross:int32@32 washingAlong:int32@36", "muslin_shrinkage_spec_init"],
    SizeToMake: [96, "makeWidth:length@8 makeLength:length@16 quiltedWidth:length@24 quiltedLength:length@32 " +
        "washedWidth:length@40 washedLength:length@48 multipliedWidth:length@56 multipliedLength:length@64 " +
        "shortWidth:length@72 shortLength:length@80 widthExact:truth@88 lengthExact:int32@92"],
    WashedSize: [56, "quiltedWidth:length@8 quiltedLength:length@16 washedWidth:length@24 washedLength:length@32 " +
        "changeAcross:int32@40 changeAlong:int32@44 changeArea:int32@48"],
    Governing: [16, "share:int32@8 source:choice=GoverningSource@12"],
    PrewashSpec: [32, "neededLength:length@8 usableWidth:length@16 across:int32@24 " +
        "along:int32@28", "muslin_prewash_spec_init"],
    Prewash: [40, "unshrunkLength:length@8 washedWidth:length@16 lostLength:length@24 lostWidth:length@32"],
    PurchaseSpec: [40, "needed:length@8 extra:length@16 step:length@24 shrinkage:int32@32 " +
        "extraShare:int32@36", "muslin_purchase_spec_init"],
    Purchase: [64, "needed:length@8 unshrunk:length@16 withExtra:length@24 bought:length@32 steps:int64@40 " +
        "spare:length@48 lessBy:length@56"],
    ClothSpec: [56, "width:length@8 length:length@16 pieceWidth:length@24 pieceLength:length@32 lossAcross:length@40 " +
        "lossAlong:length@48 mayTurn:flag=1@4", "muslin_cloth_spec_init"],
    ClothPieces: [88, "across:int64@8 along:int64@16 pieces:int64@24 turned:truth@32 warnings:warnings@36 " +
        "leftAcross:length@40 leftAlong:length@48 narrowerBy:length@56 shorterBy:length@64 widerForOne:length@72 " +
        "longerForOne:length@80"],
    StripsSpec: [56, "pieces:int64@8 pieceAcross:length@16 stripCut:length@24 usableWidth:length@32 " +
        "endLoss:length@40 straightening:length@48", "muslin_strips_spec_init"],
    Strips: [72, "perStrip:int64@8 strips:int64@16 sparePieces:int64@24 length:length@32 leftPerStrip:length@40 " +
        "narrowerBy:length@48 widerForOne:length@56 warnings:warnings@64"],
    StockSpec: [56, "width:length@8 length:length@16 count:int64@24 pinkDepth:length@32 edge:choice=Edge@40 " +
        "care:choice=Care@44 print:choice=Print@48 kind:choice=StockKind@52", "muslin_stock_spec_init"],
    StockYield: [72, "perPiece:int64@8 inHand:int64@16 piecesNeeded:int64@24 piecesMissing:int64@32 " +
        "stripLength:length@40 leftOver:length@48 shorterBy:length@56 warnings:warnings@64"],
    MotifSpec: [64, "repeatLength:length@8 repeatWidth:length@16 usableWidth:length@24 cutWidth:length@32 " +
        "cutLength:length@40 motifs:int64@48 pieces:int64@56 anyStart:flag=1@4 " +
        "anyAcross:flag=2@4", "muslin_motif_spec_init"],
    Motif: [192, "repeatsAcrossEach:int64@8 repeatsAlongEach:int64@16 perRow:int64@24 rows:int64@32 repeats:int64@40 " +
        "repeatsBought:int64@48 sparePieces:int64@56 perRowCertain:int64@64 perRowLucky:int64@72 " +
        "rowsCertain:int64@80 rowsLucky:int64@88 rowLength:length@96 wastePerRow:length@104 shift:length@112 " +
        "clothLength:length@120 clothCertain:length@128 clothLucky:length@136 luckyWithin:length@144 " +
        "narrowerBy:length@152 widerForLess:length@160 widerRows:int64@168 warnings:warnings@176 " +
        "clothLeast:length@184"],
    MotifYield: [80, "rows:int64@8 repeats:int64@16 pieces:int64@24 piecesCertain:int64@32 piecesLucky:int64@40 " +
        "leftOver:length@48 shorterBy:length@56 longerForOne:length@64 warnings:warnings@72"],
    StackSpec: [56, "repeatLength:length@8 stripCut:length@16 straightening:length@24 perStrip:int64@32 " +
        "layers:int64@40 stacks:int64@48 anyStart:flag=1@4", "muslin_stack_spec_init"],
    Stack: [128, "strips:int64@8 stripsInLayers:int64@16 repeatsPerLayer:int64@24 repeats:int64@32 " +
        "repeatsBought:int64@40 pieces:int64@48 spareStacks:int64@56 layerLength:length@64 usedLength:length@72 " +
        "shift:length@80 clothLength:length@88 leftOver:length@96 shorterBy:length@104 warnings:warnings@112 " +
        "clothLeast:length@120"],
    Reference: [32, "width:length@8 length:length@16 count:int64@24"],
    YieldSpec: [56, "stripLength:length@8 segmentCut:length@16 endTrim:length@24 resquareLoss:length@32 " +
        "resquareEvery:int64@40 foldClear:length@48 fromOneEnd:flag=1@4", "muslin_yield_spec_init"],
    Yield: [80, "segments:int64@8 perEnd:int64@16 resquarings:int64@24 leastLength:length@32 leftOver:length@40 " +
        "shorterBy:length@48 longerForMore:length@56 warnings:warnings@64 fromOneEnd:int64@72"],
    NeedSpec: [48, "segments:int64@8 segmentsPerSet:int64@16 stripsPerSet:int64@24 stripsPerBundle:int64@32 " +
        "stripCut:length@40", "muslin_need_spec_init"],
    Need: [56, "sets:int64@8 strips:int64@16 bundles:int64@24 spareSegments:int64@32 spareStrips:int64@40 " +
        "clothLength:length@48"],
    HarvestSpec: [48, "strips:int64@8 stripsPerSet:int64@16 segmentsPerSet:int64@24 segmentsPerBlock:int64@32 " +
        "blocksPerTop:int64@40", "muslin_harvest_spec_init"],
    Harvest: [88, "sets:int64@8 segments:int64@16 blocks:int64@24 tops:int64@32 setsUsed:int64@40 " +
        "stripsUsed:int64@48 stripsLeft:int64@56 segmentsLeft:int64@64 blocksLeft:int64@72 stripsForOneMore:int64@80"],
    StripsetPrint: [32, "inHand:int64@8 perSet:int64@16 leftOver:int64@24", "muslin_stripset_print_init"],
    CutlistPieceSpec: [32, "cutWidth:length@8 cutLength:length@16 count:int64@24 " +
        "mayTurn:flag=1@4", "muslin_cutlist_piece_spec_init"],
    CutlistRow: [88, "pieces:int64@8 strips:int64@16 perStrip:int64@24 sparePieces:int64@32 stripCut:length@40 " +
        "pieceCut:length@48 stripsLength:length@56 firstStock:int64@64 lastStock:int64@72 turned:truth@80 " +
        "trimmed:truth@84"],
    CutlistSpec: [40, "usableWidth:length@8 endLoss:length@16 straightening:length@24 " +
        "print:choice=Print@32", "muslin_cutlist_spec_init"],
    CutlistYardage: [96, "pieces:int64@8 strips:int64@16 sparePieces:int64@24 clothLength:length@32 " +
        "areaBound:length@40 narrowestWidth:length@48 narrowerBy:length@56 narrowestAsCut:length@64 " +
        "widerForLess:length@72 widerSaves:length@80 warnings:warnings@88 turned:truth@92"],
    CutlistStock: [128, "pieces:int64@8 strips:int64@16 sparePieces:int64@24 stockNeeded:int64@32 " +
        "stockMissing:int64@40 stockLeft:int64@48 areaBound:large@56 leftOver:length@64 narrowerBy:length@72 " +
        "shorterBy:length@80 asCutNarrowerBy:length@88 asCutShorterBy:length@96 warnings:warnings@104 " +
        "trimmed:truth@108 turned:truth@112 restPieces:int64@120"],
    CutlistPart: [48, "row:int64@8 strips:int64@16 firstStock:int64@24 lastStock:int64@32 beginsAt:length@40"],
    CutlistLists: [88, "lists:int64@8 stockUsed:int64@16 stockLeft:int64@24 stockForOneMore:int64@32 " +
        "leftOver:length@40 narrowerBy:length@48 shorterBy:length@56 asCutNarrowerBy:length@64 " +
        "asCutShorterBy:length@72 warnings:warnings@80"],
    Substitution: [120, "unfitRow:int64@8 stockNeeded:int64@16 stockMissing:int64@24 fabrics:int64@32 " +
        "perFabricLeast:int64@40 perFabricMost:int64@48 clothLength:length@56 clothMissing:length@64 " +
        "narrowerBy:length@72 shorterBy:length@80 sparePieces:int64@88 possible:truth@96 enough:truth@100 " +
        "warnings:warnings@104 turned:truth@108 restPieces:int64@112"],
    CornerSpec: [80, "piece:int32@8 tip:choice=CornerTip@12 x:length@16 y:length@24 allowance:length@32 " +
        "takeUp:length@40 centreX:length@48 centreY:length@56 radius:length@64 " +
        "curve:choice=Curve@72", "muslin_corner_spec_init"],
    Shape: [72, "pieces:int64@8 corners:int64@16 outsideEdges:int64@24 insideEdges:int64@32 finishedWidth:length@40 " +
        "finishedHeight:length@48 finishedArea:large@56 hasArcs:truth@64"],
    TemplateCorner: [64, "corner:int32@8 curve:choice=Curve@12 x:length@16 y:length@24 centreX:length@32 " +
        "centreY:length@40 radius:length@48 hasSeam:truth@56"],
    ShapePieceSpec: [40, "piece:int32@8 grainX:length@16 grainY:length@24 " +
        "margin:length@32", "muslin_shape_piece_spec_init"],
    ShapePiece: [104, "finishedArea:large@8 cutArea:large@16 cutWidth:length@24 cutHeight:length@32 " +
        "longest:length@40 grainX:length@48 grainY:length@56 rectangleAlong:length@64 rectangleAcross:length@72 " +
        "longestCorner:int32@80 grainCorner:int32@84 outsideEdges:int32@88 biasEdges:int32@92 hasArcs:truth@96 " +
        "warnings:warnings@100"],
    QuarterCircleSpec: [40, "finished:length@8 radius:length@16 allowance:length@24 " +
        "takeUp:length@32", "muslin_quarter_circle_spec_init"],
    QuarterCircle: [72, "convexCutSquare:length@8 convexCutRadius:length@16 convexCutLeg:length@24 " +
        "concaveCutSquare:length@32 concaveCutRadius:length@40 concaveCutLeg:length@48 centreInset:length@56 " +
        "seamLength:length@64"],
    RegularPolygon: [48, "side:length@8 flats:length@16 corners:length@24 centre:length@32 area:large@40"],
    UnitSpec: [128, "finishedWidth:length@8 finishedHeight:length@16 corner:length@24 allowance:length@32 " +
        "takeUp:length@40 halfAddition:length@48 quarterAddition:length@56 trimRoom:length@64 grid:length@72 " +
        "tolerance:length@80 units:int64@88 mirrored:int64@96 kind:choice=UnitKind@104 method:choice=UnitMethod@108 " +
        "policy:choice=AllowancePolicy@112 tip:choice=Tip@116 direction:choice=Direction@120", "muslin_unit_spec_init"],
    UnitPlan: [160, "finishedWidth:length@8 finishedHeight:length@16 unfinishedWidth:length@24 " +
        "unfinishedHeight:length@32 unitsPerRecipe:int64@40 mirroredPerRecipe:int64@48 recipes:int64@56 " +
        "mirroredRecipes:int64@64 spareUnits:int64@72 pieces:int64@80 cutArea:large@88 finishedArea:large@96 " +
        "allowanceArea:large@104 wasteArea:large@112 seamOffset:length@120 bonusUnits:int64@128 " +
        "bonusUnfinished:length@136 biasOutside:truth@144 warnings:warnings@148 starWiderBy:length@152"],
    UnitPiece: [120, "cutWidth:length@8 cutHeight:length@16 surplusWidth:length@24 surplusHeight:length@32 " +
        "pitch:length@40 wideEdge:length@48 narrowEdge:length@56 count:int64@64 total:large@72 region:int32@80 " +
        "shape:choice=CutShape@84 again:choice=CutAgain@88 gives:int32@92 grain:choice=Grain@96 hand:choice=Hand@100 " +
        "angle:int32@104 starExcess:length@112"],
    UnitStockSpec: [48, "width:length@8 height:length@16 perRegion:int64@24 endLoss:length@32 " +
        "finishedGrid:length@40", "muslin_unit_stock_spec_init"],
    UnitYield: [80, "finishedWidth:length@8 finishedHeight:length@16 unfinishedWidth:length@24 " +
        "unfinishedHeight:length@32 cutSpare:length@40 recipes:int64@48 units:int64@56 unitsOfOne:int64@64 " +
        "kind:choice=UnitKind@72 method:choice=UnitMethod@76"],
    UnitCorner: [40, "x:length@8 y:length@16 patch:int32@24 region:int32@28 corner:int32@32 stage:choice=Stage@36"],
    UnitStep: [56, "measure:length@8 measureHeight:length@16 fromCorner:length@24 step:choice=UnitStepKind@32 " +
        "piece:int32@36 other:int32@40 times:int32@44 region:int32@48 angle:int32@52"],
    SettingSpec: [72, "blockWidth:length@8 blockHeight:length@16 columns:int64@24 rows:int64@32 allowance:length@40 " +
        "takeUp:length@48 turning:choice=Turning@56 squareTolerance:length@64", "muslin_setting_spec_init"],
    Setting: [72, "blocks:int64@8 blocksTurned:int64@16 finishedWidth:length@24 finishedLength:length@32 " +
        "unfinishedWidth:length@40 unfinishedLength:length@48 blockSeams:int64@56 rowSeams:int64@64"],
    BlockSpec: [48, "segmentCut:length@8 setUnfinished:length@16 segments:int64@24 allowance:length@32 " +
        "takeUp:length@40", "muslin_block_spec_init"],
    Block: [64, "unfinishedWidth:length@8 unfinishedHeight:length@16 finishedWidth:length@24 " +
        "finishedHeight:length@32 segmentFinished:length@40 squareSegmentCut:length@48 square:truth@56 " +
        "squareExact:truth@60"],
    RunSpec: [48, "length:length@8 stripLength:length@16 stripCut:length@24 allowance:length@32 " +
        "join:choice=Join@40", "muslin_run_spec_init"],
    Run: [72, "strips:int64@8 joins:int64@16 lossPerJoin:length@24 joined:length@32 spare:length@40 " +
        "clothLength:length@48 narrowerBy:length@56 warnings:warnings@64"],
    BorderSpec: [72, "unfinishedWidth:length@8 unfinishedLength:length@16 finishedBorder:length@24 " +
        "allowance:length@32 takeUp:length@40 usableWidth:length@48 mitreExtra:length@56 style:choice=BorderStyle@64 " +
        "join:choice=Join@68 lengthwise:flag=1@4", "muslin_border_spec_init"],
    Border: [128, "cutWidth:length@8 sideCutLength:length@16 topCutLength:length@24 cornerstoneCut:length@32 " +
        "totalLength:length@40 strips:int64@48 joins:int64@56 lossPerJoin:length@64 clothLength:length@72 " +
        "spare:length@80 unfinishedWidth:length@88 unfinishedLength:length@96 finishedWidth:length@104 " +
        "finishedLength:length@112 warnings:warnings@120"],
    SettingSashedSpec: [88, "blockWidth:length@8 blockHeight:length@16 columns:int64@24 rows:int64@32 " +
        "sashWidth:length@40 sashHeight:length@48 allowance:length@56 takeUp:length@64 usableWidth:length@72 " +
        "endLoss:length@80 frame:flag=1@4 cornerstones:flag=2@4", "muslin_setting_sashed_spec_init"],
    SettingSashedPlan: [136, "blocks:int64@8 verticalSashes:int64@16 horizontalSashes:int64@24 cornerstones:int64@32 " +
        "verticalCutWidth:length@40 verticalCutLength:length@48 horizontalCutWidth:length@56 " +
        "horizontalCutLength:length@64 cornerstoneCutWidth:length@72 cornerstoneCutHeight:length@80 " +
        "finishedWidth:length@88 finishedLength:length@96 unfinishedWidth:length@104 unfinishedLength:length@112 " +
        "blockUnfinishedWidth:length@120 blockUnfinishedHeight:length@128"],
    SashPiece: [88, "pieces:int64@8 cutLength:length@16 cutWidth:length@24 perStrip:int64@32 strips:int64@40 " +
        "sparePieces:int64@48 joins:int64@56 clothLength:length@64 narrowerBy:length@72 kind:choice=SashKind@80 " +
        "warnings:warnings@84"],
    SettingAlternateSpec: [64, "blockWidth:length@8 blockHeight:length@16 columns:int64@24 rows:int64@32 " +
        "allowance:length@40 takeUp:length@48 first:choice=FirstBlock@56", "muslin_setting_alternate_spec_init"],
    SettingAlternatePlan: [72, "pieced:int64@8 plain:int64@16 plainCutWidth:length@24 plainCutHeight:length@32 " +
        "finishedWidth:length@40 finishedLength:length@48 unfinishedWidth:length@56 unfinishedLength:length@64"],
    SettingLineSpec: [40, "sash:length@8 allowance:length@16 takeUp:length@24 wanted:length@32 " +
        "frame:flag=1@4", "muslin_setting_line_spec_init"],
    SettingLinePlan: [40, "sashes:int64@8 finished:length@16 unfinished:length@24 longerBy:length@32"],
    SettingLinePlace: [32, "start:length@8 finished:length@16 unfinished:length@24"],
    SettingPointSpec: [120, "block:length@8 columns:int64@16 rows:int64@24 sash:length@32 setOff:length@40 " +
        "allowance:length@48 takeUp:length@56 trimRoom:length@64 sideAddition:length@72 cornerAddition:length@80 " +
        "factorNumerator:int64@88 factorDenominator:int64@96 layout:choice=PointLayout@104 edge:choice=PointEdge@108 " +
        "policy:choice=AllowancePolicy@112 diagonalFirst:flag=1@4", "muslin_setting_point_spec_init"],
    SettingPointPlan: [328, "blocks:int64@8 alternates:int64@16 sideTriangles:int64@24 sideSquares:int64@32 " +
        "spareSideTriangles:int64@40 cornerTriangles:int64@48 cornerSquares:int64@56 halfBlocks:int64@64 " +
        "alternateCut:length@72 sideSquareCut:length@80 sideNeed:length@88 sideSurplus:length@96 " +
        "cornerSquareCut:length@104 cornerNeed:length@112 cornerSurplus:length@120 halfBlockBeyond:length@128 " +
        "diagonal:length@136 diagonalError:length@144 finishedWidth:length@152 widthError:length@160 " +
        "finishedLength:length@168 lengthError:length@176 unfinishedWidth:length@184 unfinishedLength:length@192 " +
        "sashes:int64@200 edgeSashes:int64@208 cornerstones:int64@216 edgeCornerstones:int64@224 " +
        "edgeCornerstoneSquares:int64@232 sashCutWidth:length@240 sashCutLength:length@248 " +
        "edgeSashCutLength:length@256 cornerstoneCut:length@264 edgeCornerstoneCut:length@272 " +
        "straightGrain:truth@280 warnings:warnings@284 edgeCornerstoneNeed:length@288 " +
        "edgeCornerstoneSurplus:length@296 sideRoom:length@304 cornerRoom:length@312 edgeCornerstoneRoom:length@320"],
    LogcabinSpec: [96, "centreWidth:length@8 centreHeight:length@16 logWidth:length@24 rounds:int64@32 " +
        "blocks:int64@40 allowance:length@48 takeUp:length@56 usableWidth:length@64 endLoss:length@72 " +
        "order:choice=LogOrder@80 start:choice=Side@84 turn:choice=LogTurn@88 " +
        "givenCut:flag=1@4", "muslin_logcabin_spec_init"],
    Logcabin: [160, "centreCutWidth:length@8 centreCutHeight:length@16 finishedWidth:length@24 " +
        "finishedHeight:length@32 unfinishedWidth:length@40 unfinishedHeight:length@48 logs:int64@56 kinds:int64@64 " +
        "firstLength:length@72 secondLength:length@80 longestLog:length@88 stripsLeast:int64@96 strips:int64@104 " +
        "clothLength:length@112 square:truth@120 centreStripCut:length@128 centresPerStrip:int64@136 " +
        "centreStrips:int64@144 centreClothLength:length@152"],
    LogcabinLog: [88, "round:int64@8 cutLength:length@16 cutWidth:length@24 finishedLength:length@32 " +
        "finishedWidth:length@40 runningLength:length@48 unfinishedWidth:length@56 unfinishedHeight:length@64 " +
        "side:choice=Side@72 half:choice=LogHalf@76 closesRound:truth@80"],
    LogcabinStrip: [72, "cutWidth:length@8 pieces:int64@16 longest:length@24 length:length@32 stripsLeast:int64@40 " +
        "strips:int64@48 clothLength:length@56 half:choice=LogHalf@64"],
    LogcabinFitSpec: [64, "wanted:length@8 centre:length@16 rounds:int64@24 logFinished:length@32 " +
        "allowance:length@40 takeUp:length@48 order:choice=LogOrder@56", "muslin_logcabin_fit_spec_init"],
    LogcabinFit: [88, "rounds:int64@8 logsAcross:int64@16 exactNumerator:length@24 exactDenominator:int64@32 " +
        "logFinished:length@40 logCut:length@48 blockFinished:length@56 rest:length@64 centreToFit:length@72 " +
        "nextFinished:length@80"],
    FrameSpec: [56, "openingWidth:length@8 openingHeight:length@16 frameWidth:length@24 allowance:length@32 " +
        "takeUp:length@40 usableWidth:length@48", "muslin_frame_spec_init"],
    Frame: [120, "cutWidth:length@8 topLong:length@16 topLongError:length@24 topShort:length@32 sideLong:length@40 " +
        "sideLongError:length@48 sideShort:length@56 stripLength:length@64 finishedWidth:length@72 " +
        "finishedHeight:length@80 unfinishedWidth:length@88 unfinishedHeight:length@96 strips:int64@104 " +
        "clothLength:length@112"],
    FrameCorner: [48, "x:length@8 xError:length@16 y:length@24 yError:length@32 piece:choice=FramePiece@40 " +
        "line:choice=FrameLine@44"],
    MedallionSpec: [40, "centreWidth:length@8 centreHeight:length@16 allowance:length@24 takeUp:length@32 " +
        "equalCoping:flag=1@4", "muslin_medallion_spec_init"],
    MedallionRow: [216, "kind:choice=RoundKind@8 corner:choice=RoundCorner@12 width:length@16 repeat:length@24 " +
        "most:length@32 beforeWidth:length@40 beforeHeight:length@48 afterWidth:length@56 afterHeight:length@64 " +
        "sidePair:length@72 topPair:length@80 sideFinished:length@88 topFinished:length@96 sideCut:length@104 " +
        "topCut:length@112 sideLength:length@120 topLength:length@128 sideUnits:int64@136 topUnits:int64@144 " +
        "units:int64@152 cornerSquares:int64@160 sideRest:length@168 topRest:length@176 unitUnfinished:length@184 " +
        "divides:int32@192 unequal:truth@196 afterUnfinishedWidth:length@200 " +
        "afterUnfinishedHeight:length@208", "muslin_medallion_row_init"],
    Medallion: [72, "finishedWidth:length@8 finishedHeight:length@16 unfinishedWidth:length@24 " +
        "unfinishedHeight:length@32 undivided:int64@40 unequal:int64@48 units:int64@56 cornerSquares:int64@64"],
    RepeatSpec: [56, "sideFinished:length@8 repeatFinished:length@16 spacers:int64@24 spacerLeast:length@32 " +
        "allowance:length@40 takeUp:length@48", "muslin_repeat_spec_init"],
    Repeat: [152, "unitsBelow:int64@8 restBelow:length@16 unitsAbove:int64@24 overAbove:length@32 " +
        "unitsNearest:int64@40 repeatBelow:length@48 repeatBelowError:length@56 repeatAbove:length@64 " +
        "repeatAboveError:length@72 unitUnfinished:length@80 units:int64@88 shared:length@96 " +
        "spacerFinished:length@104 spacerCut:length@112 leftOver:length@120 divides:truth@128 " +
        "belowLeftOver:length@136 aboveLeftOver:length@144"],
    CommonRepeat: [56, "common:length@8 parts:int64@16 repeat:length@24 repeatError:length@32 across:int64@40 " +
        "down:int64@48"],
    PointBorderSpec: [56, "sideFinished:length@8 diagonalFinished:length@16 squares:int64@24 runs:int64@32 " +
        "allowance:length@40 takeUp:length@48", "muslin_point_border_spec_init"],
    PointBorder: [176, "diagonalNumerator:length@8 diagonalDenominator:int64@16 diagonalFinished:length@24 " +
        "diagonalError:length@32 squaresPerRun:int64@40 rest:length@48 squareFinished:length@56 " +
        "squareFinishedError:length@64 squareCut:length@72 squareCutError:length@80 settingCut:length@88 " +
        "settingCutError:length@96 endCut:length@104 endCutError:length@112 borderUnfinished:length@120 " +
        "squares:int64@128 settingTriangles:int64@136 settingSquares:int64@144 endTriangles:int64@152 " +
        "endSquares:int64@160 runLongerBy:length@168"],
    BedSpec: [96, "mattressWidth:length@8 mattressLength:length@16 mattressDepth:length@24 floorHeight:length@32 " +
        "beyondDepth:length@40 sideDrop:length@48 footDrop:length@56 headDrop:length@64 pillowTuck:length@72 " +
        "quiltingExtra:length@80 drop:choice=Drop@88 footCorner:choice=FootCorner@92 " +
        "footGiven:flag=1@4", "muslin_bed_spec_init"],
    Bed: [96, "sideDrop:length@8 footDrop:length@16 finishedWidth:length@24 finishedLength:length@32 " +
        "topWidth:length@40 topLength:length@48 cornerHang:length@56 cornerRadius:length@64 cornerCutOff:length@72 " +
        "cornerClearance:length@80 cornerTouches:truth@88 warnings:warnings@92"],
    BedCoveredSpec: [80, "quiltWidth:length@8 quiltLength:length@16 mattressWidth:length@24 mattressLength:length@32 " +
        "mattressDepth:length@40 floorHeight:length@48 headDrop:length@56 pillowTuck:length@64 " +
        "footCorner:choice=FootCorner@72", "muslin_bed_covered_spec_init"],
    BedCover: [88, "sideDrop:length@8 footDrop:length@16 shortWidth:length@24 shortLength:length@32 " +
        "cornerHang:length@40 cornerClearance:length@48 reachesEdges:truth@56 reachesDepth:truth@60 " +
        "cornerTouches:truth@64 warnings:warnings@68 beyondSide:length@72 beyondFoot:length@80"],
    FitSpec: [192, "wantedWidth:length@8 wantedLength:length@16 widthUnder:length@24 widthOver:length@32 " +
        "lengthUnder:length@40 lengthOver:length@48 blockLeast:length@56 blockMost:length@64 blockStep:length@72 " +
        "sashLeast:length@80 sashMost:length@88 sashStep:length@96 borderLeast:length@104 borderMost:length@112 " +
        "borderStep:length@120 columnsLeast:int64@128 columnsMost:int64@136 rowsLeast:int64@144 rowsMost:int64@152 " +
        "best:int64@160 workLimit:int64@168 rank:choice=FitRank@176 columnsParity:choice=Parity@180 " +
        "rowsParity:choice=Parity@184 allowStraight:flag=1@4 allowSashed:flag=2@4 allowFramed:flag=4@4 " +
        "allowOnPoint:flag=8@4", "muslin_fit_spec_init"],
    Fit: [112, "kind:choice=FitKind@8 exact:truth@12 columns:int64@16 rows:int64@24 block:length@32 sash:length@40 " +
        "border:length@48 finishedWidth:length@56 finishedLength:length@64 offWidth:length@72 offLength:length@80 " +
        "blocks:int64@88 alternates:int64@96 rankKey:large@104"],
    FitAcrossSpec: [48, "wanted:length@8 border:length@16 block:length@24 sash:length@32 " +
        "direction:choice=Direction@40 frame:flag=1@4", "muslin_fit_across_spec_init"],
    FitAcrossBlocks: [56, "blocks:int64@8 finishedWidth:length@16 off:length@24 room:length@32 pitch:length@40 " +
        "exact:truth@48"],
    FitTrianglesSpec: [56, "wantedWidth:length@8 wantedLength:length@16 height:length@24 " +
        "rowsDirection:choice=Direction@32 sidesDirection:choice=Direction@36 allowance:length@40 " +
        "takeUp:length@48", "muslin_fit_triangles_spec_init"],
    FitTriangleRows: [136, "rows:int64@8 sides:int64@16 side:length@24 finishedWidth:length@32 " +
        "finishedLength:length@40 offWidth:length@48 offLength:length@56 triangles:int64@64 halfTriangles:int64@72 " +
        "halvesEachHand:int64@80 unfinishedWidth:length@88 unfinishedLength:length@96 stripCut:length@104 " +
        "stripCutBlunt:length@112 cutBase:length@120 halfCutBase:length@128"],
    FitRescaleSpec: [48, "numerator:int64@8 denominator:int64@16 allowance:length@24 takeUp:length@32 " +
        "grid:length@40", "muslin_fit_rescale_spec_init"],
    FitRescaleRow: [72, "finished:length@8 newFinished:length@16 rest:int64@24 newCut:length@32 cutBelow:length@40 " +
        "cutNearest:length@48 cutAbove:length@56 onGrid:truth@64", "muslin_fit_rescale_row_init"],
    FitRescaled: [64, "offGrid:int64@8 unit:length@16 unitBelow:length@24 unitAbove:length@32 numerator:int64@40 " +
        "denominator:int64@48 warnings:warnings@56"],
    BindingWidthSpec: [72, "fold:choice=Fold@8 allowance:length@16 front:length@24 thickness:length@32 " +
        "back:length@40 turnUnder:length@48 bindingCut:length@56 " +
        "unevenLimit:length@64", "muslin_binding_width_spec_init"],
    BindingWidth: [40, "cutWidth:length@8 back:length@16 folded:length@24 warnings:warnings@32"],
    BindingSpec: [104, "perimeter:length@8 quiltWidth:length@16 quiltLength:length@24 extra:length@32 " +
        "corners:int64@40 cornerExtra:length@48 bindingCut:length@56 stripLength:length@64 allowance:length@72 " +
        "step:length@80 spareStrips:int64@88 join:choice=Join@96", "muslin_binding_spec_init"],
    Binding: [104, "perimeter:length@8 length:length@16 stripsNeeded:int64@24 strips:int64@32 joins:int64@40 " +
        "lossPerJoin:length@48 joined:length@56 spare:length@64 clothLength:length@72 bought:length@80 " +
        "narrowerBy:length@88 warnings:warnings@96"],
    BiasSpec: [48, "width:length@8 length:length@16 stripCut:length@24 allowance:length@32 wanted:length@40 " +
        "bluntEnds:flag=1@4", "muslin_bias_spec_init"],
    Bias: [56, "rounds:int64@8 joins:int64@16 length:length@24 squareCut:length@32 areaRule:length@40 spare:length@48"],
    BattingSpec: [64, "quiltWidth:length@8 quiltLength:length@16 marginLeft:length@24 marginRight:length@32 " +
        "marginTop:length@40 marginBottom:length@48 rollWidth:length@56 fixed:flag=1@4", "muslin_batting_spec_init"],
    Batting: [96, "width:length@8 length:length@16 package:int64@24 packageWidth:length@32 packageLength:length@40 " +
        "spareWidth:length@48 spareLength:length@56 turned:truth@64 joinedTurned:truth@68 joinedPieces:int64@72 " +
        "joinedLength:length@80 joinedJoins:int64@88"],
    BackingSpec: [112, "quiltWidth:length@8 quiltLength:length@16 marginLeft:length@24 marginRight:length@32 " +
        "marginTop:length@40 marginBottom:length@48 fabricWidth:length@56 selvage:length@64 allowance:length@72 " +
        "endLoss:length@80 repeat:length@88 step:length@96 print:choice=Print@104 " +
        "roundPanels:flag=1@4", "muslin_backing_spec_init"],
    Backing: [144, "layout:choice=BackingLayout@8 possible:truth@12 best:truth@16 turned:truth@20 " +
        "neededWidth:length@24 neededLength:length@32 panels:int64@40 panelLength:length@48 pieces:int64@56 " +
        "seams:int64@64 joinedWidth:length@72 joinedLength:length@80 clothLength:length@88 clothWithRepeat:length@96 " +
        "bought:length@104 otherRounding:length@112 narrowerBy:length@120 stripCut:length@128 warnings:warnings@136"],
    Panel: [40, "role:choice=PanelRole@8 position:int32@12 cutWidth:length@16 cutLength:length@24 count:int64@32"],
    HangingSpec: [104, "quiltWidth:length@8 sleeves:int64@16 inset:length@24 gap:length@32 drop:length@40 " +
        "ease:length@48 hem:length@56 allowance:length@64 labelWidth:length@72 labelHeight:length@80 " +
        "cornerTriangle:length@88 corners:int64@96", "muslin_hanging_spec_init"],
    Hanging: [72, "sleeves:int64@8 sleeveFinished:length@16 sleeveCutLength:length@24 sleeveCutWidth:length@32 " +
        "labelCutWidth:length@40 labelCutHeight:length@48 cornerSquares:int64@56 cornerSquareCut:length@64"],
    StripquiltSpec: [144, "strips:int64@8 stripsPerSet:int64@16 segmentsPerBlock:int64@24 columns:int64@32 " +
        "rows:int64@40 tops:int64@48 stripCut:length@56 stripLength:length@64 segmentCut:length@72 " +
        "allowance:length@80 takeUp:length@88 endTrim:length@96 resquareLoss:length@104 resquareEvery:int64@112 " +
        "foldClear:length@120 turning:choice=Turning@128 nesting:choice=Nesting@132 squareTolerance:length@136 " +
        "fromOneEnd:flag=1@4", "muslin_stripquilt_spec_init"],
    Stripquilt: [320, "setUnfinished:length@8 setFinished:length@16 stripFinished:length@24 segmentCut:length@32 " +
        "segmentFinished:length@40 segmentsPerSet:int64@48 segmentsPerEnd:int64@56 resquarings:int64@64 " +
        "stripLeast:length@72 stripShorterBy:length@80 stripLongerForMore:length@88 stripLeftOver:length@96 " +
        "blockUnfinishedWidth:length@104 blockUnfinishedHeight:length@112 blockFinishedWidth:length@120 " +
        "blockFinishedHeight:length@128 blocksPerTop:int64@136 blocksTurned:int64@144 topFinishedWidth:length@152 " +
        "topFinishedLength:length@160 topUnfinishedWidth:length@168 topUnfinishedLength:length@176 " +
        "setsInHand:int64@184 topsInHand:int64@192 tops:int64@200 sets:int64@208 stripsUsed:int64@216 " +
        "stripsLeft:int64@224 stripsForOneMoreTop:int64@232 blocks:int64@240 segments:int64@248 " +
        "segmentsLeft:int64@256 stackLow:int64@264 stackHigh:int64@272 stacksHigh:int64@280 groups:int64@288 " +
        "segmentsTurned:int64@296 placesNotNesting:int64@304 blockSquare:truth@312 warnings:warnings@316"],
    BlockGroup: [304, "firstBlock:int64@8 blocks:int64@16 segments:int32@24 turned:uint32@28 notNesting:uint32@32 " +
        "repeats:truth@36 firstPressing:choice=SetPressing@40 sets:numbers=32@48"],
    PiecingSpec: [96, "sets:int64@8 stripsPerSet:int64@16 stripLength:length@24 tops:int64@32 columns:int64@40 " +
        "rows:int64@48 segmentsPerBlock:int64@56 blockWidth:length@64 blockHeight:length@72 allowance:length@80 " +
        "takeUp:length@88", "muslin_piecing_spec_init"],
    Piecing: [56, "seams:int64@8 inSets:length@16 inBlocks:length@24 inRows:length@32 betweenRows:length@40 " +
        "total:length@48"],
    ThreadSpec: [72, "seam:length@8 ratioAbove:int64@16 ratioBelow:int64@24 thickness:length@32 " +
        "stitchLength:length@40 bobbin:length@48 spool:length@56 method:choice=ThreadMethod@64 waste:int32@68 " +
        "readyBobbins:flag=1@4", "muslin_thread_spec_init"],
    Thread: [96, "ratioThousandths:int64@8 thread:length@16 withWaste:length@24 needle:length@32 " +
        "bobbinThread:length@40 bobbins:int64@48 spools:int64@56 leftOnBobbin:length@64 leftOnSpool:length@72 " +
        "bobbinLongerBy:length@80 spoolLongerBy:length@88"],
    QuiltingSpec: [64, "width:length@8 length:length@16 spacing:length@24 offset:length@32 outline:length@40 " +
        "passes:int64@48 pattern:choice=QuiltingPattern@56 start:choice=QuiltingStart@60", "muslin_quilting_spec_init"],
    Quilting: [96, "lines:int64@8 length:length@16 linesFirst:int64@24 linesSecond:int64@32 leftFirst:length@40 " +
        "leftSecond:length@48 evenFirst:length@56 evenSecond:length@64 exact:truth@72 lastFirst:length@80 " +
        "lastSecond:length@88"],
    WeightSpec: [88, "width:length@8 length:length@16 bindingLength:length@24 bindingCut:length@32 " +
        "topDensity:int64@40 battingDensity:int64@48 backingDensity:int64@56 bindingDensity:int64@64 step:int64@72 " +
        "seamShare:int32@80 direction:choice=Direction@84", "muslin_weight_spec_init"],
    Weight: [48, "top:int64@8 batting:int64@16 backing:int64@24 binding:int64@32 total:large@40"],
    CostSpec: [40, "amount:int64@8 price:int64@16 per:int64@24 sold:choice=CostKind@32 " +
        "direction:choice=Direction@36", "muslin_cost_spec_init"],
    Cost: [40, "bought:int64@8 spare:int64@16 cost:large@24 exact:truth@32"],
    QuiltSpec: [40, "allowance:length@8 takeUp:length@16 most:int64@24 tag:int64@32", "muslin_quilt_spec_init"],
    QuiltFabricSpec: [24, "usableWidth:length@8 print:choice=Print@16 " +
        "darkness:int32@20", "muslin_quilt_fabric_spec_init"],
    QuiltSumSpec: [24, "measure:id@8 factor:int64@16", "muslin_quilt_sum_spec_init"],
    QuiltPatchSpec: [64, "fabric:id@8 width:id@16 height:id@24 left:id@32 right:id@40 top:id@48 " +
        "bottom:id@56", "muslin_quilt_patch_spec_init"],
    QuiltUnitSpec: [48, "width:id@8 height:id@16 corner:id@24 kind:choice=UnitKind@32 method:choice=UnitMethod@36 " +
        "hand:choice=Hand@40", "muslin_quilt_unit_spec_init"],
    QuiltJoinSpec: [24, "axis:choice=Axis@8 piecing:choice=StripPiecing@12 press:choice=SeamPress@16 " +
        "keepsOrder:flag=1@4", "muslin_quilt_join_spec_init"],
    QuiltTrimSpec: [40, "left:id@8 right:id@16 top:id@24 bottom:id@32", "muslin_quilt_trim_spec_init"],
    QuiltPinwheelSpec: [48, "centre:id@8 top:id@16 right:id@24 bottom:id@32 " +
        "left:id@40", "muslin_quilt_pinwheel_spec_init"],
    QuiltSetInSpec: [80, "centre:id@8 leftWidth:id@16 rightWidth:id@24 topWidth:id@32 bottomWidth:id@40 " +
        "leftFabric:id@48 rightFabric:id@56 topFabric:id@64 bottomFabric:id@72", "muslin_quilt_set_in_spec_init"],
    QuiltLogSpec: [32, "fabric:id@8 width:id@16 side:choice=Side@24", "muslin_quilt_log_spec_init"],
    QuiltSurroundSpec: [80, "centre:id@8 left:id@16 right:id@24 top:id@32 bottom:id@40 topLeft:id@48 topRight:id@56 " +
        "bottomLeft:id@64 bottomRight:id@72", "muslin_quilt_surround_spec_init"],
    QuiltSashedSpec: [48, "columns:int64@8 rows:int64@16 sash:id@24 sashFabric:id@32 cornerstone:id@40 " +
        "frame:flag=1@4 cornerstones:flag=2@4", "muslin_quilt_sashed_spec_init"],
    QuiltDiagonalSpec: [80, "columns:int64@8 rows:int64@16 sideFabric:id@24 cornerFabric:id@32 setOff:id@40 " +
        "sash:id@48 sashFabric:id@56 cornerstone:id@64 " +
        "layout:choice=PointLayout@72", "muslin_quilt_diagonal_spec_init"],
    QuiltSixtySpec: [48, "cells:int64@8 rows:int64@16 height:id@24 endFabric:id@32 " +
        "first:choice=SixtyFirst@40", "muslin_quilt_sixty_spec_init"],
    QuiltSixtyPieceSpec: [24, "fabric:id@8 cells:int64@16", "muslin_quilt_sixty_piece_spec_init"],
    TreeMeasure: [40, "value:length@8 node:id@16 kind:choice=MeasureKind@24 axis:maybe=Axis@28 terms:int64@32"],
    Node: [40, "children:int64@8 depth:int64@16 kind:choice=NodeKind@24 axis:maybe=Axis@28 quarterTurns:int32@32 " +
        "mirrored:truth@36"],
    PartCounts: [40, "fabrics:int64@8 measures:int64@16 nodes:int64@24 bytes:int64@32"],
    SolutionSpec: [112, "tops:int64@8 ease:length@16 grid:length@24 gridTolerance:length@32 halfAddition:length@40 " +
        "quarterAddition:length@48 trimRoom:length@56 endTrim:length@64 resquareLoss:length@72 " +
        "resquareEvery:int64@80 foldClear:length@88 policy:choice=AllowancePolicy@96 tip:choice=Tip@100 " +
        "direction:choice=Direction@104 stripPiecing:choice=StripPiecing@108 " +
        "fromOneEnd:flag=1@4", "muslin_solution_spec_init"],
    SolutionValueSpec: [24, "id:id@8 value:length@16", "muslin_solution_value_spec_init"],
    NodeSize: [152, "finishedWidth:length@8 finishedHeight:length@16 unfinishedWidth:length@24 " +
        "unfinishedHeight:length@32 left:length@40 right:length@48 top:length@56 bottom:length@64 count:int64@72 " +
        "mirrored:int64@80 upright:int64@88 quarter:int64@96 half:int64@104 threeQuarter:int64@112 patches:int64@120 " +
        "seamsAcross:int64@128 seamsDown:int64@136 kind:choice=NodeKind@144 exact:truth@148"],
    SolutionTotal: [88, "patches:int64@8 differentNodes:int64@16 finishedArea:large@24 patchArea:large@32 " +
        "areaError:large@40 misfits:int64@48 eased:int64@56 cuts:int64@64 stripsets:int64@72 warnings:warnings@80 " +
        "exact:truth@84"],
    Misfit: [88, "node:id@8 first:int64@16 second:int64@24 firstSize:length@32 secondSize:length@40 " +
        "difference:length@48 pieces:int64@56 easeEach:length@64 count:int64@72 kind:choice=MisfitKind@80"],
    SolutionCut: [224, "fabric:id@8 firstNode:id@16 cutWidth:length@24 cutHeight:length@32 pitch:length@40 " +
        "wideEdge:length@48 narrowEdge:length@56 surplusWidth:length@64 surplusHeight:length@72 left:length@80 " +
        "right:length@88 top:length@96 bottom:length@104 count:int64@112 pieces:int64@120 spare:int64@128 " +
        "nodes:int64@136 upright:int64@144 quarter:int64@152 half:int64@160 threeQuarter:int64@168 " +
        "scattered:int64@176 source:choice=CutSource@184 shape:choice=CutShape@188 again:choice=CutAgain@192 " +
        "gives:int32@196 grain:choice=Grain@200 hand:choice=Hand@204 angle:int32@208 region:int32@212 " +
        "warnings:warnings@216"],
    Stripset: [120, "node:id@8 strips:int64@16 setUnfinished:length@24 segmentCut:length@32 stripLength:length@40 " +
        "segments:int64@48 segmentsPerSet:int64@56 sets:int64@64 spare:int64@72 cutsApart:int64@80 " +
        "cutsInSets:int64@88 shorterBy:length@96 used:truth@104 turns:truth@108 warnings:warnings@112"],
    Term: [48, "id:id@8 times:int64@16 value:length@24 sum:length@32 kind:choice=TermKind@40 finished:truth@44"],
    Outline: [56, "node:id@8 fabric:id@16 corners:parts=24@32 region:int32@40 quarterTurns:int32@44 " +
        "mirrored:truth@48 onPoint:truth@52"],
    OutlineCorner: [40, "x:length@8 y:length@16 seamNode:id@24 seam:int64@32"],
    PressingSpec: [24, "workLimit:int64@8 prefer:choice=Prefer@16 units:truth@20", "muslin_pressing_spec_init"],
    PressingTotal: [80, "meetings:int64@8 exceptions:int64@16 least:int64@24 alternating:int64@32 open:int64@40 " +
        "otherWay:int64@48 work:int64@56 proven:truth@64 copiesTurned:int64@72"],
    PressingSeam: [96, "node:id@8 seam:int64@16 asShown:int64@24 otherWay:int64@32 fromX:length@40 fromY:length@48 " +
        "toX:length@56 toY:length@64 press:choice=Press@72 towards:choice=Towards@76 other:choice=OtherWay@80 " +
        "preferred:choice=Preferred@84 turn:int32@88"],
    PressingChild: [40, "node:id@8 child:id@16 place:int64@24 otherWay:truth@32 turn:int32@36"],
    PressingException: [80, "node:id@8 seam:int64@16 x:length@24 y:length@32 firstNode:id@40 firstSeam:int64@48 " +
        "secondNode:id@56 secondSeam:int64@64 count:int64@72"],
    SewingStep: [96, "node:id@8 stack:int64@16 alike:int64@24 pieces:int64@32 seams:int64@40 seamLongest:length@48 " +
        "sewn:length@56 unfinishedWidth:length@64 unfinishedHeight:length@72 feeds:int64@80 " +
        "kind:choice=SewingKind@88 chain:truth@92"],
    SewingFeed: [32, "node:id@8 step:int64@16 each:int64@24"],
    SewingTotal: [88, "steps:int64@8 seams:int64@16 sewn:length@24 inSets:length@32 widthSeams:int64@40 " +
        "heightSeams:int64@48 widthWorst:length@56 widthLikely:length@64 heightWorst:length@72 heightLikely:length@80"],
    ScatterSpec: [32, "places:int64@8 seed:int64@16 workLimit:int64@24", "muslin_scatter_spec_init"],
    TouchSpec: [32, "first:int64@8 second:int64@16 weight:int64@24", "muslin_touch_spec_init"],
    Scattered: [48, "touching:int64@8 pairs:int64@16 least:int64@24 work:int64@32 proven:truth@40"],
    ScatterBlocksSpec: [40, "columns:int64@8 rows:int64@16 seed:int64@24 " +
        "workLimit:int64@32", "muslin_scatter_blocks_spec_init"],
    EdgePrintsSpec: [48, "count:int64@8 top:int64@16 right:int64@24 bottom:int64@32 left:int64@40 turnsHalf:flag=1@4 " +
        "turnsQuarter:flag=2@4", "muslin_edge_prints_spec_init"],
    PlacedBlock: [24, "kind:int64@8 quarterTurns:int32@16"],
    BlankSpec: [72, "cutWidth:length@8 cutLength:length@16 count:int64@24 runIn:length@32 joinLoss:length@40 " +
        "label:int64@48 kind:choice=BlankKind@56 priority:int32@60 leastPart:length@64 " +
        "mayTurn:flag=1@4", "muslin_blank_spec_init"],
    CutplanStockSpec: [48, "width:length@8 length:length@16 count:int64@24 cost:int64@32 " +
        "label:int64@40", "muslin_cutplan_stock_spec_init"],
    CutplanSpec: [72, "usableWidth:length@8 endLoss:length@16 resquareLoss:length@24 resquareEvery:int64@32 " +
        "straightening:length@40 sparePieces:int64@48 workLimit:int64@56 print:choice=Print@64 noPanels:flag=1@4 " +
        "oneHeight:flag=2@4 ownStrips:flag=4@4 stacked:flag=8@4 firstCutAcross:flag=16@4 folded:flag=32@4 " +
        "byPriority:flag=64@4", "muslin_cutplan_spec_init"],
    CutplanTotal: [144, "pieces:int64@8 missing:int64@16 strips:int64@24 panels:int64@32 heights:int64@40 " +
        "cuts:int64@48 clothLength:length@56 cost:large@64 least:large@72 stockPieces:int64@80 waste:large@88 " +
        "ownStripsLength:length@96 areaBound:length@104 work:int64@112 cases:int64@120 proven:truth@128 " +
        "stopped:choice=CutplanStopped@132 otherLengths:truth@136"],
    CutplanStrip: [96, "times:int64@8 holder:int64@16 stock:int64@24 firstPlace:int64@32 places:int64@40 x:length@48 " +
        "y:length@56 width:length@64 height:length@72 used:length@80 kind:choice=CutplanStripKind@88 turned:truth@92"],
    CutplanPlace: [80, "piece:int64@8 strip:int64@16 count:int64@24 x:length@32 y:length@40 width:length@48 " +
        "height:length@56 pitch:length@64 turned:truth@72 trimmed:truth@76"],
    CutplanBlank: [96, "piece:int64@8 place:int64@16 strip:int64@24 stock:int64@32 sheet:int64@40 x:length@48 " +
        "y:length@56 width:length@64 height:length@72 turned:truth@80 trimmed:truth@84 layers:int32@88"],
    CutplanLeftOver: [56, "strip:int64@8 count:int64@16 x:length@24 y:length@32 width:length@40 height:length@48"],
    CutplanPiece: [40, "label:int64@8 made:int64@16 missing:int64@24 cut:int64@32"],
    CutplanStockUsed: [32, "label:int64@8 used:int64@16 cost:large@24"],
    CutplanWidth: [40, "usableWidth:length@8 clothLength:length@16 least:large@24 proven:truth@32"],
    CutplanSize: [80, "piece:int64@8 count:int64@16 taken:length@24 height:length@32 runIn:length@40 " +
        "mayTurn:truth@48 slit:truth@52 level:truth@56 turnedTaken:length@64 turnedHeight:length@72"],
    CutplanWay: [48, "cost:large@8 stock:int64@16 width:length@24 height:length@32 kind:choice=CutplanStripKind@40 " +
        "turned:truth@44"],
    CutplanCase: [88, "parent:int64@8 split:int64@16 worths:int64@24 least:large@32 wanted:int64@40 " +
        "firstWay:int64@48 lastWay:int64@56 planSize:int64@64 packedWay:int64@72 atLeast:truth@80"],
    CutplanWorth: [40, "planSize:int64@8 ofCase:int64@16 stock:int64@24 worth:large@32"],
    CutplanChecked: [48, "cost:large@8 least:large@16 cases:int64@24 fault:choice=CutplanFault@32 at:int64@40"],
    YardageSpec: [112, "endLoss:length@8 resquareLoss:length@16 resquareEvery:int64@24 straightening:length@32 " +
        "sparePieces:int64@40 workLimit:int64@48 joinLoss:length@56 extra:length@64 step:length@72 " +
        "shrinkage:int32@80 extraShare:int32@84 longPieces:choice=LongPieces@88 leastPart:length@96 " +
        "mitreExtra:length@104 noPanels:flag=1@4 oneHeight:flag=2@4 ownStrips:flag=4@4 stacked:flag=8@4 " +
        "folded:flag=32@4", "muslin_yardage_spec_init"],
    ExtraCutSpec: [72, "fabric:id@8 cutWidth:length@16 cutLength:length@24 count:int64@32 runIn:length@40 " +
        "joinLoss:length@48 kind:choice=BlankKind@56 leastPart:length@64 " +
        "mayTurn:flag=1@4", "muslin_extra_cut_spec_init"],
    FabricYardage: [96, "fabric:id@8 usableWidth:length@16 pieces:int64@24 clothLength:length@32 least:length@40 " +
        "ownStripsLength:length@48 withExtra:length@56 bought:length@64 spare:length@72 narrowestWidth:length@80 " +
        "proven:truth@88 turned:truth@92"],
};

// Functions that take no handle: what C takes, in its order, and what comes back if no status.
export const functions = {
    version: ["muslin_version", "", "uint32"],
    versionText: ["muslin_version_text", "", "words"],
    statusCount: ["muslin_status_count", "", "int32"],
    statusName: ["muslin_status_name", "status:choice=Status", "words"],
    statusSentence: ["muslin_status_sentence", "status:choice=Status", "words"],
    argumentCount: ["muslin_argument_count", "", "int32"],
    argumentWords: ["muslin_argument_words", "argument:choice=Argument", "words"],
    warningCount: ["muslin_warning_count", "", "int32"],
    warningName: ["muslin_warning_name", "warning:choice=Warning", "words"],
    warningSentence: ["muslin_warning_sentence", "warning:choice=Warning", "words"],
    constantCount: ["muslin_constant_count", "", "int32"],
    constantName: ["muslin_constant_name", "index:int32", "words"],
    constantValue: ["muslin_constant_value", "index:int32", "int64"],
    lengthAdd: ["muslin_length_add", "a:length b:length >out:length"],
    lengthSubtract: ["muslin_length_subtract", "a:length b:length >out:length"],
    lengthMultiply: ["muslin_length_multiply", "a:length factor:int64 >out:length"],
    lengthDivide: ["muslin_length_divide", "a:length divisor:int64 rounding:spec=RoundingSpec >out:struct=Rounded"],
    lengthScale: ["muslin_length_scale", "a:length numerator:int64 denominator:int64 rounding:spec=RoundingSpec " +
        ">out:struct=Rounded"],
    lengthSnap: ["muslin_length_snap", "a:length rounding:spec=RoundingSpec >out:struct=Rounded"],
    lengthCompare: ["muslin_length_compare", "a:length b:length", "int32"],
    lengthSum: ["muslin_length_sum", "values:lengths count >out:length"],
    lengthDot: ["muslin_length_dot", "lengths:lengths counts:int64s count >out:length"],
    lengthAddN: ["muslin_length_add_n", "a:lengths b:lengths count >out:many ?statuses:statuses failed"],
    lengthSubtractN: ["muslin_length_subtract_n", "a:lengths b:lengths count >out:many ?statuses:statuses failed"],
    lengthMultiplyN: ["muslin_length_multiply_n", "a:lengths factors:int64s count >out:many ?statuses:statuses failed"],
    lengthScaleN: ["muslin_length_scale_n", "a:lengths count numerator:int64 denominator:int64 " +
        "rounding:spec=RoundingSpec >out:many ?statuses:statuses failed"],
    lengthSnapN: ["muslin_length_snap_n", "a:lengths count rounding:spec=RoundingSpec >out:many ?statuses:statuses " +
        "failed"],
    lengthTimesRoot2: ["muslin_length_times_root2", "a:length rounding:spec=RoundingSpec >out:struct=Rounded"],
    lengthOverRoot2: ["muslin_length_over_root2", "a:length rounding:spec=RoundingSpec >out:struct=Rounded"],
    lengthEquilateralHeight: ["muslin_length_equilateral_height", "a:length rounding:spec=RoundingSpec " +
        ">out:struct=Rounded"],
    lengthEquilateralSide: ["muslin_length_equilateral_side", "a:length rounding:spec=RoundingSpec " +
        ">out:struct=Rounded"],
    lengthHypotenuse: ["muslin_length_hypotenuse", "a:length b:length rounding:spec=RoundingSpec >out:struct=Rounded"],
    lengthRootOfArea: ["muslin_length_root_of_area", "area:int64 rounding:spec=RoundingSpec >out:struct=Rounded"],
    lengthUnitTicks: ["muslin_length_unit_ticks", "unit:choice=LengthUnit", "length"],
    lengthUnitWord: ["muslin_length_unit_word", "unit:choice=LengthUnit", "words"],
    lengthParse: ["muslin_length_parse", "text:text spec:spec=ParseSpec >out:struct=Parsed problem"],
    lengthFormat: ["muslin_length_format", "a:length spec:spec=FormatSpec askText >exact:truth problem"],
    seamCutFromFinished: ["muslin_seam_cut_from_finished", "finished:length seam:spec=SeamSpec >out:length problem"],
    seamFinishedFromCut: ["muslin_seam_finished_from_cut", "cut:length seam:spec=SeamSpec >out:length problem"],
    seamCutFromFinishedN: ["muslin_seam_cut_from_finished_n", "finished:lengths count seam:spec=SeamSpec >out:many " +
        "?statuses:statuses failed"],
    seamFinishedFromCutN: ["muslin_seam_finished_from_cut_n", "cut:lengths count seam:spec=SeamSpec >out:many " +
        "?statuses:statuses failed"],
    seamPiece: ["muslin_seam_piece", "spec:spec=PieceSpec >out:struct=Piece problem"],
    seamRowEqual: ["muslin_seam_row_equal", "cut:length pieces:int64 seam:spec=SeamSpec >out:struct=SewnRow problem"],
    seamRow: ["muslin_seam_row", "cuts:lengths count seam:spec=SeamSpec >out:struct=SewnRow problem"],
    seamStripForFinished: ["muslin_seam_strip_for_finished", "finished:length pieces:int64 seam:spec=SeamSpec " +
        "rounding:spec=RoundingSpec >out:struct=Rounded problem"],
    seamResizeCut: ["muslin_seam_resize_cut", "cut:length numerator:int64 denominator:int64 seam:spec=SeamSpec " +
        "rounding:spec=RoundingSpec >out:struct=Rounded problem"],
    seamCalibrate: ["muslin_seam_calibrate", "cuts:lengths count measured:length stitched:length " +
        ">out:struct=Calibration problem"],
    seamCarryOn: ["muslin_seam_carry_on", "spec:spec=CarryOnSpec rounding:spec=RoundingSpec >out:struct=Rounded " +
        "problem"],
    seamErrorTotal: ["muslin_seam_error_total", "errorPerSeam:length seams:int64 >out:length problem"],
    seamErrorLimit: ["muslin_seam_error_limit", "tolerance:length seams:int64 >out:length problem"],
    seamShare: ["muslin_seam_share", "cutArea:int64 finishedArea:int64 >ppm:int32 problem"],
    accuracyRow: ["muslin_accuracy_row", "spec:spec=AccuracyRowSpec >out:struct=AccuracyRowErrors problem"],
    accuracyTop: ["muslin_accuracy_top", "spec:spec=AccuracyTopSpec >out:struct=AccuracyTopErrors problem"],
    accuracyMeet: ["muslin_accuracy_meet", "spec:spec=AccuracyMeetSpec >out:struct=AccuracyMeeting problem"],
    shrinkageChange: ["muslin_shrinkage_change", "before:length after:length >ppm:int32 problem"],
    shrinkageMeasure: ["muslin_shrinkage_measure", "spec:spec=WashSpec >out:struct=WashChange problem"],
    shrinkageSizeToMake: ["muslin_shrinkage_size_to_make", "spec:spec=ShrinkageSpec rounding:spec=RoundingSpec " +
        ">out:struct=SizeToMake problem"],
    shrinkageBecomes: ["muslin_shrinkage_becomes", "spec:spec=ShrinkageSpec rounding:spec=RoundingSpec " +
        ">out:struct=WashedSize problem"],
    shrinkageFromSample: ["muslin_shrinkage_from_sample", "before:length after:length target:length " +
        "rounding:spec=RoundingSpec >out:struct=Rounded problem"],
    shrinkageGoverns: ["muslin_shrinkage_governs", "fabric:int32 batting:int32 governingRule:choice=GoverningRule " +
        ">out:struct=Governing problem"],
    shrinkagePrewash: ["muslin_shrinkage_prewash", "spec:spec=PrewashSpec >out:struct=Prewash problem"],
    fabricUsableWidth: ["muslin_fabric_usable_width", "labelled:length selvage:length shrinkage:int32 >out:length " +
        "problem"],
    fabricPurchase: ["muslin_fabric_purchase", "spec:spec=PurchaseSpec >out:struct=Purchase problem"],
    fabricPieces: ["muslin_fabric_pieces", "spec:spec=ClothSpec >out:struct=ClothPieces problem"],
    fabricStrips: ["muslin_fabric_strips", "spec:spec=StripsSpec >out:struct=Strips problem"],
    fabricAreaBound: ["muslin_fabric_area_bound", "area:int64 usableWidth:length >out:length problem"],
    stockSize: ["muslin_stock_size", "stock:given=StockSpec align:choice=Edge >width:length >length:length problem"],
    stockStrips: ["muslin_stock_strips", "stock:given=StockSpec stripCut:length stripsWanted:int64 " +
        ">out:struct=StockYield problem"],
    stockCheck: ["muslin_stock_check", "rows:rows=StockSpec >warnings:warnings problem"],
    printMayTurn: ["muslin_print_may_turn", "print:choice=Print quarterTurns:int32 >allowed:truth problem"],
    motifPlan: ["muslin_motif_plan", "spec:spec=MotifSpec >out:struct=Motif problem"],
    motifFromCloth: ["muslin_motif_from_cloth", "spec:spec=MotifSpec clothLength:length >out:struct=MotifYield " +
        "problem"],
    stackPlan: ["muslin_stack_plan", "spec:spec=StackSpec >out:struct=Stack problem"],
    referenceCount: ["muslin_reference_count", "table:choice=Table >out:int64 problem"],
    referenceRow: ["muslin_reference_row", "table:choice=Table index:int64 >out:struct=Reference problem"],
    referenceName: ["muslin_reference_name", "table:choice=Table index:int64", "words"],
    referenceSource: ["muslin_reference_source", "table:choice=Table index:int64", "words"],
    referenceNote: ["muslin_reference_note", "table:choice=Table index:int64", "words"],
    stripsetYield: ["muslin_stripset_yield", "spec:spec=YieldSpec >out:struct=Yield problem"],
    stripsetShortest: ["muslin_stripset_shortest", "lengths:lengths count >shortest:length >index:size " +
        ">warnings:warnings problem"],
    stripsetNeed: ["muslin_stripset_need", "spec:spec=NeedSpec >out:struct=Need problem"],
    stripsetHarvest: ["muslin_stripset_harvest", "spec:spec=HarvestSpec >out:struct=Harvest problem"],
    stripsetPrints: ["muslin_stripset_prints", "rows:filled=StripsetPrint setsWanted:int64 >sets:int64 " +
        ">scarcest:size problem"],
    cutlistFromYardage: ["muslin_cutlist_from_yardage", "pieces:rows=CutlistPieceSpec spec:spec=CutlistSpec " +
        ">out:struct=CutlistYardage problem"],
    cutlistYardageRows: ["muslin_cutlist_yardage_rows", "pieces:rows=CutlistPieceSpec spec:spec=CutlistSpec " +
        ">rows:askRows=CutlistRow problem"],
    cutlistFromStock: ["muslin_cutlist_from_stock", "pieces:rows=CutlistPieceSpec stock:spec=StockSpec " +
        ">out:struct=CutlistStock problem"],
    cutlistStockRows: ["muslin_cutlist_stock_rows", "pieces:rows=CutlistPieceSpec stock:spec=StockSpec " +
        ">rows:askRows=CutlistRow problem"],
    cutlistStockParts: ["muslin_cutlist_stock_parts", "pieces:rows=CutlistPieceSpec stock:spec=StockSpec " +
        ">rows:askRows=CutlistPart problem"],
    cutlistListsFromStock: ["muslin_cutlist_lists_from_stock", "pieces:rows=CutlistPieceSpec stock:spec=StockSpec " +
        ">out:struct=CutlistLists problem"],
    cutlistListsRows: ["muslin_cutlist_lists_rows", "pieces:rows=CutlistPieceSpec stock:spec=StockSpec " +
        ">rows:askRows=CutlistRow problem"],
    cutlistSubstitute: ["muslin_cutlist_substitute", "pieces:rows=CutlistPieceSpec stock:spec=StockSpec prints:int64 " +
        ">out:struct=Substitution problem"],
    shapeCheck: ["muslin_shape_check", "corners:rows=CornerSpec >out:struct=Shape problem"],
    shapeTemplate: ["muslin_shape_template", "corners:rows=CornerSpec piece:int32 rounding:spec=RoundingSpec " +
        ">rows:askRows=TemplateCorner problem"],
    shapeMeasure: ["muslin_shape_measure", "corners:rows=CornerSpec spec:spec=ShapePieceSpec " +
        "rounding:spec=RoundingSpec >out:struct=ShapePiece problem"],
    shapeFoundation: ["muslin_shape_foundation", "corners:rows=CornerSpec corner:int32 margin:length " +
        "rounding:spec=RoundingSpec >along:length >across:length problem"],
    shapeQuarterCircle: ["muslin_shape_quarter_circle", "spec:spec=QuarterCircleSpec rounding:spec=RoundingSpec " +
        ">out:struct=QuarterCircle problem"],
    arcLength: ["muslin_arc_length", "radius:length quarterTurns:int32 rounding:spec=RoundingSpec " +
        ">out:struct=Rounded problem"],
    shapeRegularPolygon: ["muslin_shape_regular_polygon", "sides:int32 measure:choice=PolygonMeasure length:length " +
        "rounding:spec=RoundingSpec >out:struct=RegularPolygon problem"],
    unitRecipe: ["muslin_unit_recipe", "spec:spec=UnitSpec >out:struct=UnitPlan problem"],
    unitPieces: ["muslin_unit_pieces", "spec:spec=UnitSpec >rows:askRows=UnitPiece problem"],
    unitRecipeCount: ["muslin_unit_recipe_count", "", "int64"],
    unitRecipeAt: ["muslin_unit_recipe_at", "index:int64 >kind:choice=UnitKind >method:choice=UnitMethod problem"],
    unitFromStock: ["muslin_unit_from_stock", "spec:spec=UnitSpec stock:spec=UnitStockSpec >out:struct=UnitYield " +
        "problem"],
    unitLargest: ["muslin_unit_largest", "spec:spec=UnitSpec stock:spec=UnitStockSpec >out:struct=UnitYield problem"],
    unitMakes: ["muslin_unit_makes", "spec:spec=UnitSpec stock:spec=UnitStockSpec >rows:askRows=UnitYield problem"],
    unitOutlines: ["muslin_unit_outlines", "spec:spec=UnitSpec hand:choice=Hand >rows:askRows=UnitCorner problem"],
    unitSteps: ["muslin_unit_steps", "spec:spec=UnitSpec >rows:askRows=UnitStep problem"],
    unitStepSentence: ["muslin_unit_step_sentence", "step:choice=UnitStepKind", "words"],
    settingStraight: ["muslin_setting_straight", "spec:spec=SettingSpec >out:struct=Setting problem"],
    settingTurn: ["muslin_setting_turn", "turning:choice=Turning column:int64 row:int64 >quarterTurns:int32 problem"],
    blockFromSegments: ["muslin_block_from_segments", "spec:spec=BlockSpec >out:struct=Block problem"],
    joinLoss: ["muslin_join_loss", "join:choice=Join stripCut:length allowance:length >out:length problem"],
    runPlan: ["muslin_run_plan", "spec:spec=RunSpec >out:struct=Run problem"],
    borderPlan: ["muslin_border_plan", "spec:spec=BorderSpec >out:struct=Border problem"],
    settingSashed: ["muslin_setting_sashed", "spec:spec=SettingSashedSpec >out:struct=SettingSashedPlan problem"],
    settingSashedPieces: ["muslin_setting_sashed_pieces", "spec:spec=SettingSashedSpec >rows:askRows=SashPiece " +
        "problem"],
    settingAlternate: ["muslin_setting_alternate", "spec:spec=SettingAlternateSpec >out:struct=SettingAlternatePlan " +
        "problem"],
    settingLine: ["muslin_setting_line", "sizes:lengths count spec:spec=SettingLineSpec >out:struct=SettingLinePlan " +
        "problem"],
    settingLinePlaces: ["muslin_setting_line_places", "sizes:lengths count spec:spec=SettingLineSpec " +
        ">rows:askRows=SettingLinePlace problem"],
    settingPoint: ["muslin_setting_point", "spec:spec=SettingPointSpec cutting:spec=RoundingSpec " +
        "measuring:spec=RoundingSpec >out:struct=SettingPointPlan problem"],
    settingPointBlockForWidth: ["muslin_setting_point_block_for_width", "spec:spec=SettingPointSpec " +
        "wantedWidth:length grid:length >out:length problem"],
    settingPointBlockFromSide: ["muslin_setting_point_block_from_side", "spec:spec=SettingPointSpec " +
        "sideSquareCut:length rounding:spec=RoundingSpec >out:struct=Rounded problem"],
    logcabinPlan: ["muslin_logcabin_plan", "spec:spec=LogcabinSpec widths:lengths count >out:struct=Logcabin problem"],
    logcabinLogs: ["muslin_logcabin_logs", "spec:spec=LogcabinSpec widths:lengths count >rows:askRows=LogcabinLog " +
        "problem"],
    logcabinStrips: ["muslin_logcabin_strips", "spec:spec=LogcabinSpec widths:lengths count " +
        ">rows:askRows=LogcabinStrip problem"],
    logcabinLogFor: ["muslin_logcabin_log_for", "spec:spec=LogcabinFitSpec rounding:spec=RoundingSpec " +
        ">out:struct=LogcabinFit problem"],
    logcabinRoundsFor: ["muslin_logcabin_rounds_for", "spec:spec=LogcabinFitSpec >out:struct=LogcabinFit problem"],
    framePieces: ["muslin_frame_pieces", "spec:spec=FrameSpec rounding:spec=RoundingSpec >out:struct=Frame problem"],
    frameOutline: ["muslin_frame_outline", "spec:spec=FrameSpec rounding:spec=RoundingSpec >rows:askRows=FrameCorner " +
        "problem"],
    medallionPlan: ["muslin_medallion_plan", "spec:spec=MedallionSpec rows:filled=MedallionRow >out:struct=Medallion " +
        "problem"],
    repeatPlan: ["muslin_repeat_plan", "spec:spec=RepeatSpec rounding:spec=RoundingSpec >out:struct=Repeat problem"],
    repeatCommon: ["muslin_repeat_common", "width:length height:length least:length most:length " +
        "rounding:spec=RoundingSpec >out:struct=CommonRepeat problem"],
    pointBorderPlan: ["muslin_point_border_plan", "spec:spec=PointBorderSpec cutting:spec=RoundingSpec " +
        "measuring:spec=RoundingSpec >out:struct=PointBorder problem"],
    bedSize: ["muslin_bed_size", "spec:spec=BedSpec >out:struct=Bed problem"],
    bedCovered: ["muslin_bed_covered", "spec:spec=BedCoveredSpec >out:struct=BedCover problem"],
    fitSettings: ["muslin_fit_settings", "spec:spec=FitSpec >rows:askRows=Fit problem"],
    fitNearest: ["muslin_fit_nearest", "spec:spec=FitSpec >out:struct=Fit problem"],
    fitAcross: ["muslin_fit_across", "spec:spec=FitAcrossSpec >out:struct=FitAcrossBlocks problem"],
    fitTriangles: ["muslin_fit_triangles", "spec:spec=FitTrianglesSpec >out:struct=FitTriangleRows problem"],
    fitRescale: ["muslin_fit_rescale", "spec:spec=FitRescaleSpec rows:filled=FitRescaleRow >out:struct=FitRescaled " +
        "problem"],
    bindingMeasure: ["muslin_binding_measure", "spec:spec=BindingWidthSpec >out:struct=BindingWidth problem"],
    bindingPlan: ["muslin_binding_plan", "spec:spec=BindingSpec >out:struct=Binding problem"],
    biasTube: ["muslin_bias_tube", "spec:spec=BiasSpec >out:struct=Bias problem"],
    biasLeastSquare: ["muslin_bias_least_square", "spec:spec=BiasSpec rounding:spec=RoundingSpec >out:struct=Bias " +
        "problem"],
    biasStrips: ["muslin_bias_strips", "spec:spec=BiasSpec >out:struct=Bias problem"],
    battingPlan: ["muslin_batting_plan", "spec:spec=BattingSpec >out:struct=Batting problem"],
    backingLayouts: ["muslin_backing_layouts", "spec:spec=BackingSpec >rows:askRows=Backing problem"],
    backingPanels: ["muslin_backing_panels", "spec:spec=BackingSpec layout:choice=BackingLayout >rows:askRows=Panel " +
        "problem"],
    hangingPlan: ["muslin_hanging_plan", "spec:spec=HangingSpec >out:struct=Hanging problem"],
    stripquiltPlan: ["muslin_stripquilt_plan", "spec:spec=StripquiltSpec >out:struct=Stripquilt problem"],
    stripquiltStripsNeeded: ["muslin_stripquilt_strips_needed", "spec:spec=StripquiltSpec >strips:int64 problem"],
    stripquiltGroups: ["muslin_stripquilt_groups", "spec:spec=StripquiltSpec >rows:askRows=BlockGroup problem"],
    stripquiltPressing: ["muslin_stripquilt_pressing", "spec:spec=StripquiltSpec set:int64 " +
        ">pressing:choice=SetPressing >segments:int64 problem"],
    piecingPlan: ["muslin_piecing_plan", "spec:spec=PiecingSpec >out:struct=Piecing problem"],
    threadPlan: ["muslin_thread_plan", "spec:spec=ThreadSpec >out:struct=Thread problem"],
    stitchCount: ["muslin_stitch_count", "length:length stitchLength:length decimals:int32 " +
        "direction:choice=Direction >thousandths:int64 >exact:truth problem"],
    stitchLength: ["muslin_stitch_length", "length:length thousandths:int64 rounding:spec=RoundingSpec " +
        ">out:struct=Rounded problem"],
    quiltingLines: ["muslin_quilting_lines", "spec:spec=QuiltingSpec >out:struct=Quilting problem"],
    weightPlan: ["muslin_weight_plan", "spec:spec=WeightSpec >out:struct=Weight problem"],
    densityFromOunces: ["muslin_density_from_ounces", "thousandths:int64 direction:choice=Direction >density:int64 " +
        "problem"],
    massInOunces: ["muslin_mass_in_ounces", "mass:int64 decimals:int32 direction:choice=Direction >thousandths:int64 " +
        "problem"],
    costPlan: ["muslin_cost_plan", "spec:spec=CostSpec >out:struct=Cost problem"],
    costTotal: ["muslin_cost_total", "rows:rows=CostSpec >total:large problem"],
    idSort: ["muslin_id_sort", "id:id", "maybe=Sort"],
    idNumber: ["muslin_id_number", "id:id", "int64"],
    sewingLabel: ["muslin_sewing_label", "number:int64 askText problem"],
    scatterPrints: ["muslin_scatter_prints", "spec:spec=ScatterSpec prints:int64s count touches:rows=TouchSpec " +
        "?given:places allocator ?progress:progress >out:places >result:struct=Scattered problem"],
    scatterBlocks: ["muslin_scatter_blocks", "spec:spec=ScatterBlocksSpec blocks:rows=EdgePrintsSpec allocator " +
        "?progress:progress >rows:askRows=PlacedBlock >result:struct=Scattered problem"],
    scatterSets: ["muslin_scatter_sets", "spec:spec=ScatterSpec prints:int64s count sets:int64 stripsPerSet:int64 " +
        "allocator >out:places >result:struct=Scattered problem"],
};

// The handles.
export const handles = {
    Quilt: {
        free: "muslin_quilt_free",
        make: ["muslin_quilt_create", "spec:spec=QuiltSpec allocator >out:made=Quilt problem"],
        methods: {
            fabric: ["muslin_quilt_fabric", "self spec:spec=QuiltFabricSpec name:text >out:id problem"],
            measure: ["muslin_quilt_measure", "self name:text value:length >out:id problem"],
            fixed: ["muslin_quilt_fixed", "self value:length >out:id problem"],
            sum: ["muslin_quilt_sum", "self terms:rows=QuiltSumSpec >out:id problem"],
            extent: ["muslin_quilt_extent", "self node:id axis:choice=Axis >out:id problem"],
            seam: ["muslin_quilt_seam", "self >allowance:id >takeUp:id problem"],
            name: ["muslin_quilt_name", "self id:id askText problem"],
            patch: ["muslin_quilt_patch", "self spec:spec=QuiltPatchSpec >out:id problem"],
            unit: ["muslin_quilt_unit", "self spec:spec=QuiltUnitSpec fabrics:ids count >out:id problem"],
            shape: ["muslin_quilt_shape", "self corners:rows=CornerSpec fabrics:ids count width:id height:id >out:id " +
                "problem"],
            join: ["muslin_quilt_join", "self spec:spec=QuiltJoinSpec children:ids count >out:id problem"],
            grid: ["muslin_quilt_grid", "self columns:int64 rows:int64 children:ids count >out:id problem"],
            repeat: ["muslin_quilt_repeat", "self node:id columns:int64 rows:int64 turns:int32s count " +
                "patternColumns:int64 patternRows:int64 >out:id problem"],
            turn: ["muslin_quilt_turn", "self node:id quarterTurns:int32 >out:id problem"],
            mirror: ["muslin_quilt_mirror", "self node:id >out:id problem"],
            lay: ["muslin_quilt_lay", "self node:id quarterTurns:int32 mirrored:truth >out:id problem"],
            trim: ["muslin_quilt_trim", "self node:id spec:spec=QuiltTrimSpec >out:id problem"],
            pinwheel: ["muslin_quilt_pinwheel", "self spec:spec=QuiltPinwheelSpec >out:id problem"],
            setIn: ["muslin_quilt_set_in", "self spec:spec=QuiltSetInSpec >out:id problem"],
            logs: ["muslin_quilt_logs", "self centre:id logs:rows=QuiltLogSpec >out:id problem"],
            surround: ["muslin_quilt_surround", "self spec:spec=QuiltSurroundSpec >out:id problem"],
            sashed: ["muslin_quilt_sashed", "self spec:spec=QuiltSashedSpec blocks:ids count >out:id problem"],
            diagonal: ["muslin_quilt_diagonal", "self spec:spec=QuiltDiagonalSpec blocks:ids count >out:id problem"],
            sixty: ["muslin_quilt_sixty", "self spec:spec=QuiltSixtySpec pieces:rows=QuiltSixtyPieceSpec >out:id " +
                "problem"],
            id: ["muslin_quilt_id", "self sort:choice=Sort number:int64 >out:id problem"],
            readFabric: ["muslin_quilt_read_fabric", "self fabric:id >out:struct=QuiltFabricSpec problem"],
            readMeasure: ["muslin_quilt_read_measure", "self measure:id >out:struct=TreeMeasure problem"],
            readTerms: ["muslin_quilt_read_terms", "self measure:id >rows:askRows=QuiltSumSpec problem"],
            node: ["muslin_quilt_node", "self node:id >out:struct=Node problem"],
            children: ["muslin_quilt_children", "self node:id >ids:askIds problem"],
            readPatch: ["muslin_quilt_read_patch", "self node:id >out:struct=QuiltPatchSpec problem"],
            readUnit: ["muslin_quilt_read_unit", "self node:id >out:struct=QuiltUnitSpec problem"],
            readJoin: ["muslin_quilt_read_join", "self node:id >out:struct=QuiltJoinSpec problem"],
            readTrim: ["muslin_quilt_read_trim", "self node:id >out:struct=QuiltTrimSpec problem"],
            readPinwheel: ["muslin_quilt_read_pinwheel", "self node:id >out:struct=QuiltPinwheelSpec problem"],
            readSetIn: ["muslin_quilt_read_set_in", "self node:id >out:struct=QuiltSetInSpec problem"],
            readDiagonal: ["muslin_quilt_read_diagonal", "self node:id >out:struct=QuiltDiagonalSpec problem"],
            readSixty: ["muslin_quilt_read_sixty", "self node:id >out:struct=QuiltSixtySpec problem"],
            readSixtyPieces: ["muslin_quilt_read_sixty_pieces", "self node:id >rows:askRows=QuiltSixtyPieceSpec " +
                "problem"],
            readShape: ["muslin_quilt_read_shape", "self node:id >corners:askRows=CornerSpec >width:id >height:id " +
                "problem"],
            readFabrics: ["muslin_quilt_read_fabrics", "self node:id >ids:askIds problem"],
            counts: ["muslin_quilt_counts", "self >out:struct=PartCounts problem"],
        },
    },
    Solution: {
        free: "muslin_solution_free",
        make: ["muslin_solution_create", "quilt:handle=Quilt root:id spec:spec=SolutionSpec " +
            "?values:rows=SolutionValueSpec allocator >out:made=Solution problem"],
        methods: {
            size: ["muslin_solution_size", "self node:id >out:struct=NodeSize problem"],
            value: ["muslin_solution_value", "self measure:id >value:length problem"],
            totals: ["muslin_solution_totals", "self >out:struct=SolutionTotal problem"],
            misfits: ["muslin_solution_misfits", "self >rows:askRows=Misfit problem"],
            path: ["muslin_solution_path", "self node:id >steps:askInt64s problem"],
            cuts: ["muslin_solution_cuts", "self >rows:askRows=SolutionCut problem"],
            cutNodes: ["muslin_solution_cut_nodes", "self row:int64 >ids:askIds problem"],
            stripsets: ["muslin_solution_stripsets", "self >rows:askRows=Stripset problem"],
            explain: ["muslin_solution_explain", "self node:id axis:choice=Axis >rows:askRows=Term problem"],
            outlines: ["muslin_solution_outlines", "self node:id stage:choice=Stage " +
                ">rows:askPages=Outline/OutlineCorner problem"],
            sewingSteps: ["muslin_sewing_steps", "self >rows:askRows=SewingStep problem"],
            sewingFeeds: ["muslin_sewing_feeds", "self step:int64 >rows:askRows=SewingFeed problem"],
            sewingTotals: ["muslin_sewing_totals", "self seamError:length cutError:length >out:struct=SewingTotal " +
                "problem"],
            scatterTouches: ["muslin_scatter_touches", "self fabric:id allocator >rows:askRows=TouchSpec " +
                ">places:int64 problem"],
            yardagePieces: ["muslin_yardage_pieces", "self fabric:id spec:spec=YardageSpec >rows:askRows=BlankSpec " +
                "problem"],
        },
    },
    Pressing: {
        free: "muslin_pressing_free",
        make: ["muslin_pressing_create", "solution:handle=Solution spec:spec=PressingSpec allocator " +
            "?progress:progress >out:made=Pressing problem"],
        methods: {
            totals: ["muslin_pressing_totals", "self >out:struct=PressingTotal problem"],
            seams: ["muslin_pressing_seams", "self >rows:askRows=PressingSeam problem"],
            children: ["muslin_pressing_children", "self >rows:askRows=PressingChild problem"],
            exceptions: ["muslin_pressing_exceptions", "self >rows:askRows=PressingException problem"],
        },
    },
    Cutplan: {
        free: "muslin_cutplan_free",
        make: ["muslin_cutplan_create", "spec:spec=CutplanSpec pieces:rows=BlankSpec ?stock:rows=CutplanStockSpec " +
            "allocator ?progress:progress >out:made=Cutplan problem"],
        methods: {
            totals: ["muslin_cutplan_totals", "self >out:struct=CutplanTotal problem"],
            strips: ["muslin_cutplan_strips", "self >rows:askRows=CutplanStrip problem"],
            places: ["muslin_cutplan_places", "self >rows:askRows=CutplanPlace problem"],
            blanks: ["muslin_cutplan_blanks", "self first:int64 >rows:askRows=CutplanBlank problem"],
            leftOvers: ["muslin_cutplan_left_overs", "self leastSide:length >rows:askRows=CutplanLeftOver problem"],
            pieces: ["muslin_cutplan_pieces", "self >rows:askRows=CutplanPiece problem"],
            stock: ["muslin_cutplan_stock", "self >rows:askRows=CutplanStockUsed problem"],
            widths: ["muslin_cutplan_widths", "self leastWidth:length mostWidth:length widths:int64 " +
                "?progress:progress >rows:askRows=CutplanWidth problem"],
            narrowest: ["muslin_cutplan_narrowest", "self >width:length problem"],
            sizes: ["muslin_cutplan_sizes", "self >rows:askRows=CutplanSize problem"],
            ways: ["muslin_cutplan_ways", "self >rows:askRows=CutplanWay problem"],
            cases: ["muslin_cutplan_cases", "self >rows:askRows=CutplanCase problem"],
            worths: ["muslin_cutplan_worths", "self ofCase:int64 >rows:askRows=CutplanWorth >scale:large problem"],
            check: ["muslin_cutplan_check", "self ?progress:progress >out:struct=CutplanChecked problem"],
        },
    },
    Yardage: {
        free: "muslin_yardage_free",
        make: ["muslin_yardage_create", "solution:handle=Solution spec:spec=YardageSpec cuts:rows=ExtraCutSpec " +
            "allocator ?progress:progress >out:made=Yardage problem"],
        methods: {
            fabrics: ["muslin_yardage_fabrics", "self >rows:askRows=FabricYardage problem"],
            plan: ["muslin_yardage_plan", "self row:int64 >out:lent=Cutplan problem"],
        },
    },
};
