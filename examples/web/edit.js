// What can be changed of a pattern file by fields: the places in it, and how a setting or a border becomes another one.
//
// SPDX-License-Identifier: MIT
import { readJson } from "./json.js";

const FIELDS_MOST = 60; // of one sort; the rest is changed in the text
const SETTINGS = { straight: "straight, block by block", sashed: "between sashes", "on point": "on point" };
const CORNERS = {
    "": "sides first",
    "top and bottom first": "top and bottom first",
    mitred: "mitred",
    cornerstones: "with cornerstones",
};
const FINISHING = [
    ["binding", "cut width", "Width of binding strips, cut", "2 1/2 in", "6 cm"],
    ["batting", "beyond", "Batting beyond the quilt, each side", "3 in", "8 cm"],
    ["backing", "beyond", "Backing beyond the quilt, each side", "4 in", "10 cm"],
    ["backing", "width", "Width of the backing cloth", undefined, undefined],
];

const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);

/** A place within a file, as a JSON pointer. */
export function pointer(...steps) {
    return steps.map((step) => `/${String(step).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}

function stepsOf(place) {
    return place
        .split("/")
        .slice(1)
        .map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"));
}

/** The text of a file with another value at a place; undefined takes the member out. */
export function changed(text, place, value) {
    const file = readJson(text);
    const steps = stepsOf(place),
        last = steps.pop();
    let within = file;
    for (const step of steps) within = within[step] ??= Object.create(null);
    if (value === undefined) delete within[last];
    else within[last] = value;
    return written(file);
}

export function written(file) {
    return `${JSON.stringify(file, null, 4)}\n`;
}

// ---- fields ---------------------------------------------------------------------------------------------------------

/** A field at a place in the file; `what` says how its text becomes a value. */
function field(section, place, label, value, more = {}) {
    const isText = value === undefined || typeof value === "string" || typeof value === "number";
    return {
        name: place,
        section,
        label,
        kind: "length",
        value: isText ? String(value ?? more.usual ?? "") : "",
        isText,
        ...more,
    };
}

function measureFields(file, size) {
    const own = file.sizes?.[size];
    return Object.entries(file.measures ?? {})
        .slice(0, FIELDS_MOST)
        .flatMap(([name, value]) => {
            const ofSize = own?.measures?.[name];
            const text = ofSize ?? value;
            if (typeof text !== "string" || /^[a-z]/.test(text)) return []; // it follows from others
            const place = own ? pointer("sizes", size, "measures", name) : pointer("measures", name);
            return [field("blocks", place, `“${name}”`, text, { group: "Measures, finished" })];
        });
}

function countFields(file, size) {
    const own = file.sizes?.[size];
    return Object.entries(file.counts ?? {})
        .slice(0, FIELDS_MOST)
        .map(([name, value]) =>
            field(
                "top",
                own ? pointer("sizes", size, "counts", name) : pointer("counts", name),
                `“${name}”`,
                own?.counts?.[name] ?? value,
                { kind: "count", group: "Counts" }
            )
        );
}

function fabricFields(file) {
    const metric = (file.units ?? "in") !== "in";
    return Object.entries(file.fabrics)
        .slice(0, FIELDS_MOST)
        .flatMap(([key, fabric]) => [
            field("materials", pointer("fabrics", key, "name"), "Name", fabric.name ?? key, {
                kind: "text",
                group: `Fabric “${key}”`,
            }),
            field("materials", pointer("fabrics", key, "color"), "Colour", fabric.color ?? "#a0a0a0", {
                kind: "color",
                group: `Fabric “${key}”`,
            }),
            field(
                "materials",
                pointer("fabrics", key, "usable width"),
                fabric.strips ? "Usable length of a strip" : "Usable width, selvages off",
                fabric["usable width"],
                { usual: metric ? "100 cm" : "40 in", group: `Fabric “${key}”` }
            ),
            ...(fabric.strips
                ? [
                      field(
                          "materials",
                          pointer("fabrics", key, "strips", "have"),
                          "Strips that there are",
                          fabric.strips.have,
                          { kind: "count", group: `Fabric “${key}”` }
                      ),
                  ]
                : []),
        ]);
}

function cuttingFields(file, soldByMetre, units) {
    const metric = (file.units ?? "in") !== "in";
    return [
        field("cutting", "/seam/allowance", "Seam allowance", file.seam?.allowance, {
            usual: metric ? "6 mm" : "1/4 in",
        }),
        field("cutting", "/seam/take up", "Fold and thread take at each seam", file.seam?.["take up"], {
            usual: `0 ${units}`,
        }),
        field("cutting", "/cutting/grid", "Slanted pieces are cut to the next", file.cutting?.grid, {
            usual: metric ? "1 mm" : "1/8 in",
        }),
        field("cutting", "/buying/step", "Shops cut cloth in steps of", file.buying?.step, {
            usual: soldByMetre ? "10 cm" : "1/8 yd",
        }),
        field("sets", "/cutting/strip piecing", "Strip sets are", file.cutting?.["strip piecing"] ?? "where fewer", {
            kind: "choice",
            choices: { "where fewer": "sewn where that takes fewer cuts", never: "never sewn" },
        }),
        field("sets", "/cutting/end trim", "Trimmed off each end of a set", file.cutting?.["end trim"], {
            usual: metric ? "1 cm" : "1/2 in",
        }),
    ];
}

const names = (file) =>
    Object.fromEntries(Object.entries(file.fabrics).map(([key, fabric]) => [key, fabric.name ?? key]));

/** A field that takes a length, or the name of a measure. */
const measured = (value) => ({
    note:
        typeof value === "string" && /^[a-z]/.test(value)
            ? `A length, or the name of a measure of the file: here it is as wide as the measure “${value}” says.`
            : "A length, or the name of a measure of the file.",
});

/** Of the top itself, where it is a field of blocks. */
function settingFields(file) {
    const { top } = file,
        kind = settingOf(top);
    if (!kind) return [];
    const group = "Setting";
    return [
        field("top", "setting", "Blocks are set", kind, { kind: "choice", choices: SETTINGS, group }),
        ...["columns", "rows"]
            .filter((member) => typeof top[member] === "number")
            .map((member) =>
                field("top", `/top/${member}`, member === "columns" ? "Blocks across" : "Blocks down", top[member], {
                    kind: "count",
                    group,
                })
            ),
        ...("sash" in top
            ? [field("top", "/top/sash", "Width of the sashes, finished", top.sash, { group, ...measured(top.sash) })]
            : []),
        ...(kind === "sashed"
            ? [
                  field("top", "/top/fabric", "Sashes of", top.fabric, { kind: "choice", choices: names(file), group }),
                  field("top", "/top/frame", "Sashes round the outside too", top.frame ? "yes" : "", {
                      kind: "switch",
                      group,
                  }),
              ]
            : []),
        ...(kind === "on point"
            ? ["side fabric", "corner fabric"].map((member) =>
                  field(
                      "top",
                      `/top/${member}`,
                      member === "side fabric" ? "Side triangles of" : "Corner triangles of",
                      top[member],
                      { kind: "choice", choices: names(file), group }
                  )
              )
            : []),
    ];
}

function borderFields(file) {
    return (file.borders ?? []).flatMap((border, index) =>
        "sides" in border
            ? []
            : [
                  field("top", `/borders/${index}/width`, "Width, finished", border.width, {
                      group: borderName(index, border),
                      ...measured(border.width),
                  }),
                  field("top", `/borders/${index}/fabric`, "Fabric", border.fabric, {
                      kind: "choice",
                      choices: names(file),
                      group: borderName(index, border),
                  }),
                  field(
                      "top",
                      `/borders/${index}/corners`,
                      "Corners",
                      border.corners === "sides first" || (!border.corners && !border.cornerstone)
                          ? ""
                          : (border.corners ?? "cornerstones"),
                      { kind: "choice", choices: CORNERS, group: borderName(index, border) }
                  ),
              ]
    );
}

function borderName(index, border) {
    return `Border ${index + 1}${border.called ? `, ${border.called}` : ""}`;
}

function finishingFields(file) {
    const metric = (file.units ?? "in") !== "in";
    return FINISHING.filter(([member]) => member in file).map(([member, name, label, inches, centimetres]) =>
        field("finishing", pointer(member, name), label, file[member][name], { usual: metric ? centimetres : inches })
    );
}

/** All fields of a file that was read, for one of its sizes; soldByMetre: how cloth is, where the file says no step;
 * units: that lengths are shown in. */
export function fieldsOf(file, size, soldByMetre, units) {
    return [
        ...fabricFields(file),
        ...cuttingFields(file, soldByMetre, units),
        ...measureFields(file, size),
        ...settingFields(file),
        ...countFields(file, size),
        ...borderFields(file),
        ...finishingFields(file),
    ].filter((one) => one.isText);
}

/** The text of the file when a field is changed. An empty field means: as usual. */
export function withField(text, { name, kind }, typed) {
    if (name === "setting") return withSetting(text, typed);
    if (kind === "switch") return changed(text, name, typed === "" ? undefined : true);
    if (kind === "count" && /^\s*\d{1,15}\s*$/.test(typed)) return changed(text, name, Number(typed));
    const isGone = typed.trim() === "" && !name.startsWith("/measures") && !/^\/borders\/\d+\/width/.test(name);
    return changed(text, name, isGone ? undefined : typed);
}

// ---- settings -------------------------------------------------------------------------------------------------------

function settingOf(top) {
    if (!isObject(top)) return undefined;
    if ("sashed" in top || "on point" in top) return "sashed" in top ? "sashed" : "on point";
    return ["alternate", "grid", "repeat"].some((kind) => kind in top) ? "straight" : undefined;
}

/** The blocks of a setting, row by row. */
function rowsOf(top) {
    if ("repeat" in top)
        return (top.quarters ?? [[0]]).map((row) =>
            row.map((quarters) => (quarters === 0 ? top.repeat : { turn: top.repeat, quarters }))
        );
    return top.alternate ?? top.grid ?? top.sashed ?? top["on point"];
}

/** The first that is not bought in strips: triangles and borders are wider than those. */
const usualFabric = ({ fabrics }) =>
    (Object.entries(fabrics).find(([, { strips }]) => !strips) ?? Object.entries(fabrics)[0])[0];

/** The text of the file with its top set otherwise: the same blocks, with usual sashes or triangles. */
export function withSetting(text, kind) {
    const file = readJson(text),
        { top } = file;
    const rows = rowsOf(top),
        fabric = usualFabric(file);
    const shared = {
        columns: top.columns ?? rows[0].length,
        rows: top.rows ?? rows.length,
        ...("called" in top ? { called: top.called } : {}),
        ...("block" in top ? { block: top.block } : {}),
    };
    const sash = (file.units ?? "in") === "in" ? "2 in" : "5 cm";
    file.top =
        kind === "sashed"
            ? { sashed: rows, ...shared, sash: top.sash ?? sash, fabric: top.fabric ?? fabric }
            : kind === "on point"
              ? { "on point": rows, ...shared, "side fabric": fabric, "corner fabric": fabric }
              : { alternate: rows, ...shared };
    return written(file);
}

/** The text with one more border round all, or without the outermost one. */
export function withBorder(text, isMore) {
    const file = readJson(text);
    const borders = file.borders ?? [];
    file.borders = isMore
        ? [
              ...borders,
              { fabric: usualFabric(file), width: (file.units ?? "in") === "in" ? "4 in" : "10 cm" },
          ]
        : borders.slice(0, -1);
    return written(file);
}
