// A whole strip quilt from a bundle of strips: what is asked, and what the library answers, as plain data. Fields are
// named like the members of the library's spec, so that what it refuses is told at the field.
//
// SPDX-License-Identifier: MIT
import { readLength } from "./lengths.js";
import { MuslinError } from "./muslin/muslin.js";
import { pick, plain } from "./worked.js";
import * as words from "./write_finishing.js";

const COUNT_MOST = 2147483647,
    LARGEST = 1n << 27n, // more than 16,000 in: no quilt is that large
    SMALL = 60n * 8128n, // both sides of a quilt that the library takes for one of a baby
    NOTHING = 8128n / 8n; // on a ruler
export const GROUPS_LISTED = 40;

/** Each field: what it is, where it stands, its label, and what is taken where nothing was changed. */
export const stripFields = [
    { name: "strips", kind: "count", section: "materials", label: "Strips in the bundle", usual: "40" },
    { name: "stripCut", kind: "length", section: "materials", label: "Width of a strip, cut", usual: "2 1/2 in" },
    {
        name: "stripLength",
        kind: "length",
        section: "materials",
        label: "Usable length of a strip, selvages off",
        usual: "40 in",
        note: "Of the shortest: measure yours.",
    },
    {
        name: "clothWidth",
        kind: "length",
        section: "materials",
        label: "Usable width of cloth for borders and binding",
        usual: "40 in",
    },
    {
        name: "step",
        kind: "length",
        section: "materials",
        label: "Shops cut cloth in steps of",
        usual: "1/8 yd",
        metric: "10 cm",
    },
    { name: "allowance", kind: "length", section: "cutting", label: "Seam allowance", usual: "1/4 in" },
    { name: "takeUp", kind: "length", section: "cutting", label: "Fold and thread take at each seam", usual: "0 in" },
    {
        name: "endTrim",
        kind: "length",
        section: "cutting",
        label: "Trimmed off each end of a set to square it",
        usual: "1/4 in",
    },
    {
        name: "foldClear",
        kind: "length",
        section: "cutting",
        label: "Kept clear of cuts in the middle, where the fold is",
        usual: "0 in",
    },
    {
        name: "resquareEvery",
        kind: "count",
        section: "cutting",
        label: "Squared again after so many cuts (0: never)",
        usual: "0",
        least: 0,
    },
    { name: "resquareLoss", kind: "length", section: "cutting", label: "Each squaring takes", usual: "0 in" },
    {
        name: "fromOneEnd",
        kind: "switch",
        section: "cutting",
        label: "Cut segments straight through from one end",
        usual: "",
    },
    { name: "stripsPerSet", kind: "count", section: "sets", label: "Strips in a set", usual: "6" },
    {
        name: "segmentCut",
        kind: "length",
        section: "sets",
        label: "Width of a segment, cut (0 in: so that blocks are square)",
        usual: "0 in",
    },
    { name: "segmentsPerBlock", kind: "count", section: "blocks", label: "Segments in a block", usual: "2" },
    {
        name: "nesting",
        kind: "choice",
        section: "blocks",
        label: "Where seams meet, segments are",
        usual: "turn",
        choices: { turn: "turned end for end", name: "told, if they do not lock" },
    },
    { name: "columns", kind: "count", section: "top", label: "Blocks across", usual: "4" },
    { name: "rows", kind: "count", section: "top", label: "Blocks down", usual: "4" },
    {
        name: "turning",
        kind: "choice",
        section: "top",
        label: "Every other block is",
        usual: "quarterAlternate",
        choices: { quarterAlternate: "turned a quarter", halfAlternate: "turned upside down", none: "as the first" },
    },
    {
        name: "tops",
        kind: "count",
        section: "top",
        label: "Tops (0: as many as the strips give)",
        usual: "1",
        least: 0,
    },
    {
        name: "finishedBorder",
        kind: "length",
        section: "top",
        label: "Width of a border, finished (0 in: none)",
        usual: "0 in",
    },
    {
        name: "style",
        kind: "choice",
        section: "top",
        label: "Corners of the border",
        usual: "sidesFirst",
        choices: { sidesFirst: "sides first", topFirst: "top and bottom first", cornerstones: "with cornerstones" },
    },
    {
        name: "bindingCut",
        kind: "length",
        section: "finishing",
        label: "Width of binding strips, cut",
        usual: "2 1/2 in",
    },
    {
        name: "battingBeyond",
        kind: "length",
        section: "finishing",
        label: "Batting beyond the quilt, each side",
        usual: "3 in",
    },
    {
        name: "backingBeyond",
        kind: "length",
        section: "finishing",
        label: "Backing beyond the quilt, each side",
        usual: "4 in",
    },
    { name: "fabricWidth", kind: "length", section: "finishing", label: "Width of the backing cloth", usual: "40 in" },
];

const usual = Object.fromEntries(stripFields.map(({ name, usual: value }) => [name, value]));

function readCount(field, text, tell) {
    const { least = 1 } = field;
    const number = Number(text.trim());
    if (/^\s*\d{1,10}\s*$/.test(text) && number >= least && number <= COUNT_MOST) return number;
    tell(
        text.trim().length > 9
            ? `this number is too large: ${COUNT_MOST.toLocaleString("en")} at most`
            : `a whole number is wanted here, ${least} or more`
    );
    return undefined;
}

/** The texts of the fields as values; complaints go to `tell`. */
function readAll(muslin, texts, tell) {
    const values = {};
    for (const field of stripFields) {
        const text = texts[field.name] ?? field.usual;
        const here = (sentence) => tell(field.name, sentence);
        if (field.kind === "count") values[field.name] = readCount(field, text, here);
        else if (field.kind === "length") values[field.name] = readLength(muslin, text, here);
        else if (field.kind === "switch") values[field.name] = text !== "";
        else if (text in field.choices) values[field.name] = text;
        else here("this is none of the choices");
    }
    return values;
}

/** What a refusal may hang on besides the field that the library names, by its status. */
const HANG_ON = {
    notSquare: "segmentCut stripsPerSet stripCut segmentsPerBlock allowance takeUp turning",
    noYield: "stripLength segmentCut endTrim foldClear fromOneEnd resquareEvery resquareLoss stripCut stripsPerSet",
    notEnough:
        "strips tops columns rows stripsPerSet segmentsPerBlock stripLength segmentCut endTrim foldClear fromOneEnd " +
        "resquareEvery resquareLoss stripCut allowance takeUp",
};
const USUALLY = { notSquare: "segmentCut", noYield: "stripLength", notEnough: "strips" };

/** The field that is marked: the one that was changed last, where the complaint may hang on it. What finishes the
 * quilt hangs on the field that is named, or on its own. */
function fieldOf({ status, argument }, { aliases = {}, own }, changed) {
    const name = aliases[argument] ?? argument;
    if (own) return name in usual ? name : own;
    if (HANG_ON[status]?.split(" ").includes(changed)) return changed;
    return USUALLY[status] ?? (name in usual ? name : "strips");
}

/** A length between the ticks as it was typed, not as it is counted: "0.4 in" for "about 0.3999 in". */
function asTyped({ message, value }, values, texts) {
    const field = stripFields.find(({ name, kind }) => kind === "length" && values[name].ticks === BigInt(value));
    const typed = field && (texts[field.name] ?? field.usual).trim();
    return typed ? message.replace(/ is about [\d.]+ (in|mm)/, ` is ${typed}`) : message;
}

/** Where a limit is of no use to a quilter. */
const tooLarge = ({ message }) => message.replace(/, but .*$/, ": no quilt is that large.");

/** What a field of the finishing may hold; no limit that is no one's, and none between two marks: nothing is left of
 * 1 in where a tick more than 1 in is wanted. */
function finishingSentence(muslin, error, field, values, texts) {
    const { value = 0n, limit = 0n } = error;
    const { label } = stripFields.find(({ name }) => name === field);
    const typed = `“${label.replace(/ \(.*\)$/, "")}” is ${(texts[field] ?? usual[field]).trim()}`;
    if (values[field].ticks >= LARGEST) return `${typed}: no quilt is that large.`;
    if (limit >= LARGEST) return tooLarge(error);
    if (values[field].ticks !== BigInt(value)) return error.message;
    const { text, exact } = muslin.lengthFormat(limit - 1n);
    return exact && /at least about/.test(error.message)
        ? `${typed}, but must be more than ${text}.`
        : error.message.replace(/^.* is .*?, but/, `${typed}, but`);
}

/** The library's sentence, or how many strips more it takes. */
function sentenceOf(muslin, error, spec, values, texts) {
    if (error.limit >= LARGEST) return tooLarge(error);
    if (error.status !== "notEnough") return asTyped(error, values, texts);
    try {
        const { stripsUsed } = muslin.stripquiltPlan({ ...spec, strips: COUNT_MOST, tops: Math.max(1, values.tops) });
        const more = stripsUsed - values.strips;
        return (
            `${stripsUsed.toLocaleString("en")} strips are needed, and there are only ` +
            `${values.strips.toLocaleString("en")}: ${more.toLocaleString("en")} more are missing.`
        );
    } catch (other) {
        if (!(other instanceof MuslinError)) throw other;
        return error.message;
    }
}

/** What comes of the texts in the fields: { complaints } or all answers. Those left out are as usual; `changed` is the
 * field that was changed last. A complaint has the library's own sentence as its reason. */
export function planStrips(muslin, texts, changed) {
    const complaints = [];
    const tell = (field, sentence, reason = sentence) =>
        complaints.push({ field, value: texts[field] ?? usual[field], sentence, reason });
    const values = readAll(muslin, texts, tell);
    if (complaints.length > 0) return { complaints };
    const spec = specOf(values);
    const ask = (where, call) => {
        try {
            return call();
        } catch (error) {
            if (!(error instanceof MuslinError)) throw error;
            const field = fieldOf(error, where, changed);
            const sentence = where.own
                ? finishingSentence(muslin, error, field, values, texts)
                : sentenceOf(muslin, error, spec, values, texts);
            tell(field, sentence, error.message);
            return undefined;
        }
    };
    const plan = ask({}, () => muslin.stripquiltPlan(spec));
    if (!plan) return { complaints };
    const set = ask({ aliases: { pieces: "stripsPerSet", cut: "stripCut" } }, () =>
        muslin.seamRowEqual(values.stripCut, values.stripsPerSet, {
            allowance: values.allowance,
            takeUp: values.takeUp,
        })
    );
    const groups = ask({}, () => (plan.groups <= GROUPS_LISTED ? muslin.stripquiltGroups(spec) : []));
    const finishing = finish(muslin, values, plan, { ask, tell });
    const written = write(finishing, values, plan.tops);
    return { ...plain({ plan, values, set, groups, ...finishing, written }), complaints };
}

/** What segments of that width give, of as many strips as it takes; undefined where a set gives none. */
function cutAt(muslin, values, segmentCut, more) {
    try {
        const enough = { strips: COUNT_MOST, tops: 1, turning: "none" };
        return plain(muslin.stripquiltPlan({ ...specOf(values), ...enough, segmentCut, ...more }));
    } catch (error) {
        if (!(error instanceof MuslinError)) throw error;
        return undefined;
    }
}

/** The answer with its segments cut on the first of these marks at which a set gives as many, and what follows from
 * that width: how near the edge a strip is, what is left over, how wide a block is before it is trimmed, what a set
 * gives straight through from one end, across the fold. Where no mark will do, `finest` is what the last one gives. */
export function onMarks(muslin, answer, marksFrom) {
    const { plan, values } = answer;
    const marks = marksFrom(plan.segmentCut);
    const tried = marks.map((mark) => cutAt(muslin, values, mark));
    const found = tried.find((one) => one?.segmentsPerSet === plan.segmentsPerSet);
    const at = found ?? cutAt(muslin, values, plan.segmentCut);
    const through = cutAt(muslin, values, at.segmentCut, { fromOneEnd: true, foldClear: 0n });
    return {
        ...answer,
        plan: {
            ...plan,
            ...pick(at, "segmentCut stripLeast stripShorterBy stripLongerForMore stripLeftOver"),
            warnings: [
                ...plan.warnings.filter((warning) => warning !== "noSlack"),
                ...at.warnings.filter((warning) => warning === "noSlack"),
            ],
        },
        sewnWidth: at.blockUnfinishedWidth,
        straightThrough: through?.segmentsPerSet ?? 0,
        finest: found ? undefined : { cut: marks.at(-1), gives: tried.at(-1)?.segmentsPerSet ?? 0 },
    };
}

/** A quilt is small, or not, with its border. */
export function isSmall({ quiltWidth, quiltLength }) {
    return quiltWidth <= SMALL && quiltLength <= SMALL;
}

/** Backing, batting, binding in words. */
function write({ backing, batting, binding }, { bindingCut, clothWidth }, tops) {
    const forAll = (layout) => ({ ...layout, bought: layout.forAll });
    return {
        backing: backing && [
            words.backingNeed(backing),
            words.backingLeast(forAll(backing.best), tops),
            words.panelTable(backing.panels, tops),
            ...words.panelSewing(backing),
            words.backingEdge(backing.best, backing.best.narrowerBy.ticks < NOTHING),
        ],
        layouts: backing ? words.otherLayouts(backing.layouts.map(forAll), backing.best) : [],
        batting: batting && words.battingWords({ batting, backing, tops }),
        layers: words.layers("batting"),
        binding:
            binding &&
            words.bindingWords({
                binding,
                cut: bindingCut,
                reckoned: binding.joined,
                laid: { strips: binding.strips * tops, together: clothWidth.times(binding.strips * tops) },
                tops,
            }),
    };
}

/** What the library's own plan of the strips is asked with. */
export function specOf(values) {
    return pick(
        values,
        "strips stripsPerSet segmentsPerBlock columns rows tops stripCut stripLength segmentCut allowance takeUp " +
            "endTrim resquareLoss resquareEvery foldClear turning nesting fromOneEnd"
    );
}

/** Border, binding, batting and backing of each top, and the cloth for all of them. */
function finish(muslin, values, plan, { ask, tell }) {
    const { step, clothWidth, style } = values;
    const border = values.finishedBorder.ticks === 0n ? undefined : surround(muslin, values, plan, ask);
    const of = border ?? { finishedWidth: plan.topFinishedWidth, finishedLength: plan.topFinishedLength };
    const size = { quiltWidth: of.finishedWidth, quiltLength: of.finishedLength };
    const buy = (own, lengths) =>
        ask({ own, aliases: { usableWidth: "clothWidth" } }, () => bought(muslin, plan.tops, step, lengths));
    const stone = border && style === "cornerstones" ? border.cornerstoneCut : undefined;
    const stoneLength = (count) => cornerstones(muslin, stone, clothWidth, count);
    const borderCloth = border && buy("finishedBorder", (count) => border.clothLength.times(count));
    const stoneCloth = stone && buy("finishedBorder", stoneLength);
    const binding = bind(muslin, values, size, { ask, tell });
    return {
        size,
        border,
        borderCloth,
        stoneCloth,
        binding,
        bindingCloth: binding && buy("bindingCut", (count) => binding.clothLength.times(count)),
        ...layered(muslin, values, size, plan.tops, ask),
    };
}

/** What to buy for one top, and for all: { each, all }. */
function bought(muslin, tops, step, lengthOf) {
    const buy = (count) => muslin.fabricPurchase({ needed: lengthOf(count), step }).bought;
    return { each: buy(1), all: buy(tops) };
}

function surround(muslin, { allowance, takeUp, clothWidth, finishedBorder, style }, plan, ask) {
    return ask({ own: "finishedBorder", aliases: { usableWidth: "clothWidth" } }, () =>
        muslin.borderPlan({
            unfinishedWidth: plan.topUnfinishedWidth,
            unfinishedLength: plan.topUnfinishedLength,
            finishedBorder,
            allowance,
            takeUp,
            usableWidth: clothWidth,
            style,
        })
    );
}

/** A binding is folded in half and sewn through all its layers: what its two seams take must leave something. */
function bind(muslin, { bindingCut, clothWidth, allowance, step }, size, { ask, tell }) {
    if (bindingCut.ticks <= allowance.times(2).ticks) {
        tell("bindingCut", "a binding is cut wider than its two seam allowances");
        return undefined;
    }
    return ask({ own: "bindingCut", aliases: { stripLength: "clothWidth" } }, () =>
        muslin.bindingPlan({ ...size, bindingCut, stripLength: clothWidth, allowance, step })
    );
}

/** Batting and backing. */
function layered(muslin, { battingBeyond, backingBeyond, fabricWidth, step }, size, tops, ask) {
    const beyond = (margin) => ({
        ...size,
        marginLeft: margin,
        marginRight: margin,
        marginTop: margin,
        marginBottom: margin,
    });
    const batting = ask({ own: "battingBeyond" }, () => muslin.battingPlan(beyond(battingBeyond)));
    const backing = ask({ own: "backingBeyond" }, () => {
        const spec = { ...beyond(backingBeyond), fabricWidth, step };
        const layouts = muslin.backingLayouts(spec).map((layout) => ({
            ...layout,
            forAll: bought(muslin, tops, step, (count) => layout.clothLength.times(count)).all,
        }));
        const possible = layouts.filter((layout) => layout.possible);
        const ofOne = layouts.find((layout) => layout.best) ?? layouts[0];
        const best = possible.reduce((least, one) => (one.forAll.ticks < least.forAll.ticks ? one : least), ofOne);
        return {
            best,
            layouts: possible,
            panels: muslin.backingPanels(best.layout, spec),
            seam: muslin.backingSpec().allowance,
        };
    });
    return { batting, backing };
}

/** Cloth of their own for four squares of each top. */
function cornerstones(muslin, cut, usableWidth, tops) {
    const plan = new muslin.Cutplan([{ cutWidth: cut, cutLength: cut, count: 4 * tops }], { usableWidth });
    const needed = plan.totals().clothLength;
    plan.free();
    return needed;
}

/** Corners of each strip in a block, its segments turned as in the first of all, by the library's own tree:
 * { width, height, pieces: [{ strip, points }] }. */
export function drawBlock(muslin, { plan, values, groups }) {
    const quilt = new muslin.Quilt({ allowance: values.allowance });
    let solution;
    try {
        const width = quilt.fixed(plan.segmentFinished),
            height = quilt.fixed(plan.stripFinished);
        const fabrics = Array.from({ length: values.stripsPerSet }, (_, index) => quilt.fabric(`strip ${index + 1}`));
        const segment = quilt.join(
            fabrics.map((fabric) => quilt.patch({ fabric, width, height })),
            { axis: "down" }
        );
        const turned = quilt.turn(segment, 2);
        const block =
            values.segmentsPerBlock === 1
                ? segment
                : quilt.join(
                      Array.from({ length: values.segmentsPerBlock }, (_, index) =>
                          (groups[0]?.turned >> index) & 1 ? turned : segment
                      ),
                      { axis: "across" }
                  );
        solution = new muslin.Solution(quilt, block, { stripPiecing: "never" });
        const tall = Number(plan.blockFinishedHeight);
        const pieces = [...solution.outlines(block, "finished")].map(({ fabric, corners }) => ({
            strip: fabrics.indexOf(fabric),
            points: corners.map(({ x, y }) => [Number(x.ticks), tall - Number(y.ticks)]),
        }));
        return { width: Number(plan.blockFinishedWidth), height: tall, pieces };
    } finally {
        solution?.free();
        quilt.free();
    }
}
