// A whole strip quilt from a bundle of strips: what is asked, and what the library answers, as plain data. Fields are
// named like the members of the library's spec, so that what it refuses is told at the field.
//
// SPDX-License-Identifier: MIT
import { readLength } from "./lengths.js";
import { MuslinError } from "./muslin/muslin.js";
import { pick, plain } from "./worked.js";

const COUNT_MOST = 2147483647;
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
    { name: "step", kind: "length", section: "materials", label: "Shops cut cloth in steps of", usual: "1/8 yd" },
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
        label: "Kept clear on either side of the fold",
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
    tell(`a whole number from ${least} to ${COUNT_MOST} is wanted here`);
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

/** What comes of the texts in the fields: { complaints } or all answers. Those left out are as usual. */
export function planStrips(muslin, texts) {
    const complaints = [];
    const tell = (field, sentence) => complaints.push({ field, value: texts[field] ?? usual[field], sentence });
    const values = readAll(muslin, texts, tell);
    if (complaints.length > 0) return { complaints };
    const ask = (aliases, call) => {
        try {
            return call();
        } catch (error) {
            if (!(error instanceof MuslinError)) throw error;
            const name = aliases[error.argument] ?? error.argument;
            tell(name in usual ? name : "strips", error.message);
            return undefined;
        }
    };
    const spec = specOf(values);
    const plan = ask({}, () => muslin.stripquiltPlan(spec));
    if (!plan) return { complaints };
    const set = ask({ pieces: "stripsPerSet", cut: "stripCut" }, () =>
        muslin.seamRowEqual(values.stripCut, values.stripsPerSet, {
            allowance: values.allowance,
            takeUp: values.takeUp,
        })
    );
    const groups = ask({}, () => (plan.groups <= GROUPS_LISTED ? muslin.stripquiltGroups(spec) : []));
    const finishing = finish(muslin, values, plan, ask);
    return { ...plain({ plan, values, set, groups, ...finishing }), complaints };
}

/** What the library's own plan of the strips is asked with. */
export function specOf(values) {
    return pick(
        values,
        "strips stripsPerSet segmentsPerBlock columns rows tops stripCut stripLength segmentCut allowance takeUp " +
            "endTrim resquareLoss resquareEvery foldClear turning nesting fromOneEnd"
    );
}

/** Border, binding, batting and backing of one top. */
function finish(muslin, values, plan, ask) {
    const { allowance, takeUp, clothWidth, finishedBorder, style, step } = values;
    const border =
        finishedBorder.ticks === 0n
            ? undefined
            : ask({ usableWidth: "clothWidth" }, () =>
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
    const size = {
        quiltWidth: (border ?? plan)[border ? "finishedWidth" : "topFinishedWidth"],
        quiltLength: (border ?? plan)[border ? "finishedLength" : "topFinishedLength"],
    };
    const beyond = (margin) => ({
        ...size,
        marginLeft: margin,
        marginRight: margin,
        marginTop: margin,
        marginBottom: margin,
    });
    const aside = {
        marginLeft: "backingBeyond",
        marginRight: "backingBeyond",
        marginTop: "backingBeyond",
        marginBottom: "backingBeyond",
    };
    const borderCloth = border && ask({}, () => muslin.fabricPurchase({ needed: border.clothLength, step }));
    const binding = ask({ stripLength: "clothWidth" }, () =>
        muslin.bindingPlan({ ...size, bindingCut: values.bindingCut, stripLength: clothWidth, allowance, step })
    );
    const batting = ask({ marginLeft: "battingBeyond" }, () => muslin.battingPlan(beyond(values.battingBeyond)));
    const backing = ask(aside, () => {
        const spec = { ...beyond(values.backingBeyond), fabricWidth: values.fabricWidth, step };
        const layouts = muslin.backingLayouts(spec);
        const best = layouts.find((layout) => layout.best) ?? layouts[0];
        return {
            best,
            layouts: layouts.filter((layout) => layout.possible),
            panels: muslin.backingPanels(best.layout, spec),
            seam: muslin.backingSpec().allowance,
        };
    });
    return { size, border, borderCloth, binding, batting, backing };
}

/** Corners of each strip in a block, by the library's own tree: { width, height, pieces: [{ strip, points }] }. */
export function drawBlock(muslin, { plan, values }) {
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
                      Array.from({ length: values.segmentsPerBlock }, (_, index) => (index % 2 ? turned : segment)),
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
