// The pattern file as tables: which members each kind of object has, and what they are; what the pattern.schema.json
// beside the C reader says. A form's `kind` says how a value is looked at; words give what the library calls them.
//
// SPDX-License-Identifier: MIT

// ---- words, with what the library calls them ------------------------------------------------------------------------

const same = (...words) => Object.fromEntries(words.map((word) => [word, word]));

export const words = {
    units: same("in", "cm", "mm"),
    paper: same("letter", "a4"),
    unit: {
        "half-square": "halfSquare",
        "quarter-square": "quarterSquare",
        "split-quarter": "splitQuarter",
        "flying-geese": "flyingGeese",
        "square-in-square": "squareInSquare",
        snowball: "snowball",
        "half-rectangle": "halfRectangle",
        octagon: "octagon",
        "eight-pointed-star": "eightPointedStar",
        kaleidoscope: "kaleidoscope",
    },
    method: {
        pieces: "pieces",
        "two-at-a-time": "twoAtATime",
        "four-all-round": "fourAllRound",
        "four-midpoints": "fourMidpoints",
        "eight-at-a-time": "eightAtATime",
        "four-at-a-time": "fourAtATime",
        "flipped-corners": "flippedCorners",
        "bias-strips": "biasStrips",
    },
    print: {
        "any way": "none",
        "two ways": "twoWay",
        "one way": "oneWay",
        "stripe along": "stripeAlong",
        "stripe across": "stripeAcross",
    },
    side: same("left", "right", "top", "bottom"),
    piecing: { "where fewer": "whereFewer", always: "always", never: "never" },
    sets: { "where fewer": "whereFewer", never: "never" },
    pressAcross: { free: "free", left: "toFirst", right: "toLast", open: "open" },
    pressDown: { free: "free", up: "toFirst", down: "toLast", open: "open" },
    corners: same("sides first", "top and bottom first", "mitred", "cornerstones"),
    sashesEnd: { outside: "sashOuter", cut: "sashCut", inside: "sashInner" },
    first: { "on its side": "onSide", "on its point": "onPoint" },
    policy: same("exact", "customary", "oversize"),
    round: same("up", "down", "nearest"),
    tips: same("sharp", "blunt"),
    pressed: { fixed: true, free: false },
    long: { joined: "joined", along: "lengthwise" },
    join: same("diagonal", "straight"),
};

// ---- what members are -----------------------------------------------------------------------------------------------

const ANY_NUMBER = 2147483647;
const text = (least, most) => ({ kind: "text", least, most, what: "a text" });
const whole = (least, most) => ({ kind: "whole", least, most, what: "a whole number" });
const word = (choices) => ({ kind: "word", words: choices, what: "a word" });
const list = (least, most, of) => ({ kind: "list", least, most, of, what: "a list" });
const name = (among, what, otherwise) => ({ kind: "name", among, what, otherwise });
const map = (of, what, more) => ({ kind: "map", least: 0, of, what, ...more });
const object = (members) => ({ kind: "object", kinds: [{ members }], what: "an object, { ... }" });
const need = (form) => ({ form, needed: true });
const may = (form, goesWith) => ({ form, with: goesWith });

const truth = { kind: "switch", what: "true or false" };
const date = { kind: "date", what: 'a date, "2025-03-09"' };
const color = { kind: "color", what: 'a colour, "#c08040"' };
const length = { kind: "length", what: 'a length with its unit, "2 1/2 in"' };
const someLength = { kind: "length", least: 1n, what: "a length with its unit that is more than 0" }; // in ticks
const howMany = whole(1, ANY_NUMBER);
const quarters = whole(0, 3);
const fabric = name("fabrics", "the name of a fabric");
const count = {
    kind: "oneOf",
    number: howMany,
    text: name("counts", "the name of a count"),
    what: "a whole number, or the name of a count",
};

// These hold each other; their kinds follow.
const measure = {
    kind: "oneOf",
    kinds: [],
    what: "a length with its unit, a measure, a multiple or a sum",
    text: name("measures", "a length with its unit, or the name of a measure", length),
};
const node = {
    kind: "oneOf",
    kinds: [],
    what: "the name of a part, or an object that says what is sewn",
    text: name("parts", "the name of a part"),
};
const border = { kind: "oneOf", kinds: [], what: "an object with a border's fabric and width, or its pieced sides" };

const nodes = list(1, 1000, node);
const rows = { kind: "table", least: 1, most: ANY_NUMBER, of: nodes, what: "a list of rows" };
const quartersRow = list(1, ANY_NUMBER, quarters);
const quartersRows = { kind: "table", least: 1, most: ANY_NUMBER, of: quartersRow, what: "a list of rows" };
const corner = list(2, 2, length);
const corners = list(3, 32, corner);
const borders = list(1, 20, border);

measure.kinds = [
    { members: { times: need(whole(-1000, 1000)), of: need(measure) } },
    { members: { sum: need(list(1, 32, measure)) } },
    { members: { "width of": need(node) } },
    { members: { "height of": need(node) } },
];

/** A kind of node is told by its first member; any may have a name in print, and be a block. */
function sewn(first, form, members = {}, either) {
    return { members: { [first]: need(form), called: may(text(1, 60)), block: may(truth), ...members }, either };
}

const columnsAndRows = { columns: need(count), rows: need(count) };
const triangle = {
    kind: "oneOf",
    text: fabric,
    kinds: [{ members: { fabric: need(fabric), triangles: need(whole(1, 3)) } }],
    what: "the name of a fabric, or an object with it and how many triangles",
};

node.kinds = [
    sewn("patch", fabric, { size: may(measure), width: may(measure, "height"), height: may(measure, "width") }, [
        "size",
        "width",
    ]),
    sewn(
        "unit",
        word(words.unit),
        {
            fabrics: need(list(2, 3, fabric)),
            method: may(word(words.method)),
            hand: may(whole(1, 2)),
            size: may(measure),
            width: may(measure),
            height: may(measure, "width"),
            corner: may(measure),
        },
        ["size", "width"]
    ),
    sewn("shape", corners, {
        pieces: need(list(1, 64, object({ fabric: need(fabric), corners: need(corners) }))),
        width: may(measure),
        height: may(measure),
    }),
    sewn("across", nodes, {
        "strip piecing": may(word(words.piecing)),
        press: may(word(words.pressAcross)),
        "keep order": may(truth),
    }),
    sewn("down", nodes, {
        "strip piecing": may(word(words.piecing)),
        press: may(word(words.pressDown)),
        "keep order": may(truth),
    }),
    sewn("grid", rows),
    sewn("turn", node, { quarters: need(quarters) }),
    sewn("mirror", node),
    sewn("repeat", node, { ...columnsAndRows, quarters: may(quartersRows) }),
    sewn("alternate", rows, columnsAndRows),
    sewn("sashed", rows, {
        ...columnsAndRows,
        sash: need(measure),
        fabric: need(fabric),
        cornerstone: may(fabric),
        frame: may(truth),
    }),
    sewn("on point", rows, {
        ...columnsAndRows,
        between: may(rows),
        "side fabric": need(fabric),
        "corner fabric": need(fabric),
        float: may(measure),
        sash: may(measure, "fabric"),
        fabric: may(fabric, "sash"),
        cornerstone: may(fabric, "sash"),
        "sashes end": may(word(words.sashesEnd), "sash"),
    }),
    sewn("log cabin", node, {
        logs: need(list(1, 200, object({ fabric: need(fabric), width: need(measure), side: need(word(words.side)) }))),
    }),
    sewn("bordered", node, { borders: need(borders) }),
    sewn("pinwheel", node, { top: need(node), right: need(node), bottom: need(node), left: need(node) }),
    sewn("trimmed", node, { left: may(measure), right: may(measure), top: may(measure), bottom: may(measure) }),
    sewn("triangle rows", list(1, ANY_NUMBER, list(1, ANY_NUMBER, triangle)), {
        height: need(measure),
        "end fabric": need(fabric),
        first: may(word(words.first)),
    }),
];

border.kinds = [
    {
        members: {
            fabric: need(fabric),
            called: may(text(1, 60)),
            width: need(measure),
            corners: may(word(words.corners)),
            cornerstone: may(fabric),
        },
    },
    {
        members: {
            sides: need(
                object({ left: need(node), right: need(node), top: need(node), bottom: need(node), corner: need(node) })
            ),
            called: may(text(1, 60)),
        },
    },
];

// ---- the file -------------------------------------------------------------------------------------------------------

const size = object({
    name: need(text(1, 40)),
    measures: may(map(length, "lengths by name", { among: "measures" })),
    counts: may(map(howMany, "counts by name", { among: "counts" })),
    bed: may(object({ width: need(someLength), length: need(someLength), depth: may(length) })),
});

const fabrics = map(
    object({
        name: may(text(1, 60)),
        color: may(color),
        darkness: may(whole(1, 100)),
        "usable width": may(someLength),
        print: may(word(words.print)),
        strips: may(object({ "cut width": need(someLength), have: may(howMany) })),
    }),
    "fabrics by name",
    { least: 1 }
);

export const theFile = object({
    $schema: may(text(0, ANY_NUMBER)),
    muslin_pattern: need(whole(1, 1)),
    title: need(text(1, 120)),
    by: may(text(0, 120)),
    story: may(text(0, 2000)),
    version: may(text(0, 40)),
    date: may(date),
    invented: may(truth),
    units: may(word(words.units)),
    paper: may(word(words.paper)),
    words: may(
        object({
            batting: may(word(same("batting", "wadding"))),
            sashing: may(word(same("sashing", "lattice"))),
            fabric: may(word(same("fabric", "cloth", "material"))),
            cornerstone: may(word(same("cornerstone", "post"))),
            color: may(word(same("color", "colour"))),
            "cloth sold by": may(word(same("yard", "metre"))),
        })
    ),
    seam: may(object({ allowance: may(length), "take up": may(length), ease: may(length) })),
    cutting: may(
        object({
            policy: may(word(words.policy)),
            grid: may(length),
            round: may(word(words.round)),
            trim: may(length),
            tips: may(word(words.tips)),
            "end trim": may(length),
            "resquare every": may(whole(0, ANY_NUMBER)),
            "resquare loss": may(length),
            "fold clear": may(length),
            "strip piecing": may(word(words.sets)),
        })
    ),
    pressing: may(object({ units: may(word(words.pressed)), "towards dark": may(truth) })),
    buying: may(
        object({
            step: may(someLength),
            extra: may(length),
            shrinkage: may({ kind: "share", least: 0, most: 50, what: "a number" }),
            straightening: may(length),
            "long strips": may(word(words.long)),
        })
    ),
    fabrics: need(fabrics),
    measures: may(map(measure, "measures by name")),
    counts: may(map(howMany, "counts by name")),
    parts: may(map(node, "parts by name")),
    top: need(node),
    borders: may(list(0, 20, border)),
    tops: may(count),
    binding: may(
        object({ fabric: need(fabric), "cut width": may(someLength), join: may(word(words.join)), extra: may(length) })
    ),
    batting: may(object({ beyond: may(length), "roll width": may(someLength) })),
    backing: may(
        object({
            fabric: may(fabric),
            name: may(text(0, 60)),
            beyond: may(length),
            width: may(someLength),
            selvage: may(length),
            seam: may(length),
            print: may(word(words.print)),
            repeat: may(length),
        })
    ),
    sleeve: may(object({ fabric: need(fabric), depth: may(someLength), sleeves: may(whole(1, 2)) })),
    sizes: may(list(1, 12, size)),
});

export const nodeForm = node,
    measureForm = measure;
