// Drawings as SVG, 1000 units across at most: the top, a strip set, a cutting plan, a backing. A fabric is told by its
// letter and its hatching, not by its colour alone. What is drawn the library worked out; here it is only scaled.
//
// SPDX-License-Identifier: MIT
import { h, s, wide } from "./dom.js";

const WIDE = 1000,
    HATCHES = 8,
    LETTERS = 32; // 7 points and more on paper, and 11 pixels on a phone
const STRIP_LOW = 34,
    STRIP_HIGH = 230,
    LABEL = 290; // LABEL: room for words beside a strip

// ---- what drawings share --------------------------------------------------------------------------------------------

/** Hatchings 0 to 7 (0: none), to be put on the page once. */
export function hatchings() {
    const lines = [
        "",
        "M-4 20L20 -4M12 28L28 12M-4 4L4 -4",
        "M-4 -4L28 28M-4 20L4 28M20 -4L28 4",
        "M0 12H24",
        "M12 0V24",
        "M-4 20L20 -4M12 28L28 12M-4 -4L28 28",
        "M0 12H24M12 0V24",
        "",
    ];
    return s(
        "svg",
        { class: "unseen", "aria-hidden": "true", width: 0, height: 0 },
        s(
            "defs",
            {},
            lines.map((d, index) =>
                s(
                    "pattern",
                    { id: `hatch-${index}`, width: 24, height: 24, patternUnits: "userSpaceOnUse" },
                    index === 7
                        ? s("circle", { cx: 12, cy: 12, r: 3, fill: "#000", "fill-opacity": 0.4 })
                        : s("path", { d, stroke: "#000", "stroke-opacity": 0.35, "stroke-width": 2, fill: "none" })
                )
            )
        )
    );
}

/** A shape in a fabric: its colour, and its hatching over it. */
function inFabric(shape, attributes, fabric, index) {
    return [
        s(shape, { ...attributes, fill: fabric?.color ?? greyOf(index), class: "seam" }),
        s(shape, { ...attributes, fill: `url(#hatch-${index % HATCHES})` }),
    ];
}

/** Strips of which nobody said the colour. */
function greyOf(index) {
    return ["#f4efe4", "#d9d2c0", "#e9e4d8", "#c9c2b2", "#efe9dc", "#d2cbbb"][index % 6];
}

function words(x, y, text, more = {}) {
    return s(
        "text",
        {
            x,
            y,
            "text-anchor": "middle",
            "dominant-baseline": "central",
            class: "words",
            "font-size": LETTERS,
            ...more,
        },
        text
    );
}

/** A drawing with what it is called below it. */
function figure(caption, width, height, ...children) {
    const svg = s(
        "svg",
        {
            viewBox: `-2 -2 ${width + 4} ${height + 4}`,
            role: "img",
            "aria-label": caption,
            preserveAspectRatio: "xMinYMin",
            class: height > width * 1.15 ? "tall" : undefined,
        },
        children
    );
    return h("figure", {}, svg, h("figcaption", {}, caption));
}

/** One with words in it that must stay large enough to be read. */
function detailed(caption, width, height, ...children) {
    const drawn = figure(caption, width, height, ...children);
    drawn.prepend(wide(caption, drawn.firstChild));
    drawn.classList.add("detailed");
    return drawn;
}

/** The key: each fabric's letter, hatching and name. */
export function swatch(fabric, index) {
    return s(
        "svg",
        { viewBox: "0 0 60 36", class: "swatch", "aria-hidden": "true" },
        inFabric("rect", { x: 1, y: 1, width: 58, height: 34 }, fabric, index),
        words(30, 18, fabric.letter, { "font-size": 22 })
    );
}

// ---- the top --------------------------------------------------------------------------------------------------------

export function drawTop({ width, height, paths, letters, tooMany }, fabrics, caption, size = LETTERS) {
    if (tooMany > 0) return h("p", {}, `With ${tooMany.toLocaleString("en")} patches the top is not drawn.`);
    return figure(
        caption,
        width,
        height,
        paths.map((d, index) => (d === "" ? [] : inFabric("path", { d }, fabrics[index], index))),
        letters
            .filter(({ room }) => room > 1.5 * size)
            .map(({ x, y, fabric }) => words(x, y, fabrics[fabric].letter, { "font-size": size }))
    );
}

/** A block or a unit, which is small on the page. */
export function drawPart(drawing, fabrics, caption) {
    if (drawing.tooMany > 0) return null;
    const drawn = drawTop(drawing, fabrics, caption, 2 * LETTERS);
    drawn.classList.add("part");
    return drawn;
}

/** A border round a top of a size, its corners as they are sewn. */
function frame({ style, width, across, down }) {
    const [w, h2] = [across + 2 * width, down + 2 * width];
    const box = (x, y, boxWidth, boxHeight, index) =>
        inFabric("rect", { x, y, width: boxWidth, height: boxHeight }, undefined, index);
    const isTop = style === "sidesFirst",
        [endWidth, endAt] = isTop ? [w, 0] : [across, width],
        [sideHeight, sideAt] = style === "topFirst" ? [h2, 0] : [down, width];
    const corners =
        style === "cornerstones" ? [0, across + width].flatMap((x) => [0, down + width].map((y) => [x, y])) : [];
    return [
        [0, down + width].map((y) => box(endAt, y, endWidth, width, 3)),
        [0, across + width].map((x) => box(x, sideAt, width, sideHeight, 3)),
        corners.map(([x, y]) => box(x, y, width, width, 5)),
    ];
}

/** The top of a strip quilt: one block, laid as `turns` say, row by row; with its border where it has one. */
export function drawBlocks(block, turns, columns, caption, border) {
    const rows = turns.length / columns;
    const beyond = border ? 2 * border.width : 0;
    const unit = WIDE / Math.max(columns * block.width + beyond, rows * block.height + beyond);
    const [across, down] = [block.width * unit, block.height * unit];
    const pieces = block.pieces.map(({ strip, points }) =>
        inFabric("path", { d: `M${points.map(([x, y]) => `${x * unit} ${y * unit}`).join("L")}Z` }, undefined, strip)
    );
    const at = (index) => [(index % columns) * across, Math.floor(index / columns) * down];
    const laid = turns.map((turn, index) =>
        s("use", {
            href: "#one-block",
            transform: `translate(${at(index).join(" ")}) rotate(${turn * 90} ${across / 2} ${down / 2})`,
        })
    );
    const edges = turns.map((_, index) => {
        const [x, y] = at(index);
        return s("rect", { x, y, width: across, height: down, class: "edge" });
    });
    const round = border && {
        style: border.style,
        width: border.width * unit,
        across: border.across * unit,
        down: border.down * unit,
    };
    const inset = (beyond * unit) / 2;
    return figure(
        caption,
        columns * across + 2 * inset,
        rows * down + 2 * inset,
        s("defs", {}, s("g", { id: "one-block" }, pieces)),
        round ? frame(round) : [],
        s("g", { transform: `translate(${inset} ${inset})` }, laid, edges)
    );
}

// ---- strip sets -----------------------------------------------------------------------------------------------------

/** Where segments begin and end along a set: from one end, or from both towards the middle. */
export function segmentsAlong(set, most) {
    const [cut, trim, length, loss] = [set.segmentCut, set.endTrim, set.stripLength, set.resquareLoss].map(Number);
    const every = set.resquareEvery;
    const from = (count) =>
        Array.from({ length: Math.min(count, most) }, (_, i) => {
            const at = trim + (every > 0 ? Math.floor(i / every) * loss : 0) + i * cut;
            return { from: at, to: at + cut };
        });
    const right = from(set.segmentsPerSet - set.segmentsPerEnd);
    return [...from(set.segmentsPerEnd), ...right.map(({ from: a, to }) => ({ from: length - to, to: length - a }))];
}

/** strips: [{ width, letter, fabric, index }]; segments: where they begin and end, in ticks of the length. Strips stand
 * side by side, or lie one below the other, as the text says; whichever way there is least room is not to scale. */
export function drawSet(strips, length, segments, caption, isStanding = false) {
    const most = isStanding ? { along: 720, across: 600 } : { along: WIDE, across: 500 };
    const all = strips.reduce((sum, strip) => sum + Number(strip.width), 0);
    const along = most.along / Number(length),
        across = Math.min(most.across / all, isStanding ? Infinity : along);
    const box = (a, from, wide, high) =>
        isStanding ? { x: from, y: a, width: high, height: wide } : { x: a, y: from, width: wide, height: high };
    let from = 0;
    const rows = strips.map(({ width, letter, fabric, index }) => {
        const high = Number(width) * across;
        const strip = box(0, from, most.along, high);
        const at = isStanding ? [from + high / 2, -LETTERS] : [LETTERS, from + high / 2];
        from += high;
        return [inFabric("rect", strip, fabric, index), words(...at, letter)];
    });
    const cuts = segments.map((segment, index) => {
        const [a, wide] = [segment.from * along, (segment.to - segment.from) * along];
        const middle = a + wide / 2;
        return [
            s("rect", { ...box(a, -2, wide, from + 4), class: "cut" }),
            index % Math.ceil((1.3 * LETTERS) / wide) === 0
                ? words(...(isStanding ? [from + LETTERS, middle] : [middle, from + LETTERS]), String(index + 1))
                : [],
        ];
    });
    return isStanding
        ? detailed(
              caption,
              WIDE,
              most.along + 2 * LETTERS,
              s("g", { transform: `translate(0 ${2 * LETTERS})` }, rows, cuts)
          )
        : detailed(caption, WIDE, from + 2 * LETTERS, rows, cuts);
}

// ---- cutting plans --------------------------------------------------------------------------------------------------

function drawPiece(place, box, fabric, index, isDown) {
    const { x, y, width, height, pitch } = box,
        slant = width - pitch;
    if (!place.isSloped || slant <= 0) return inFabric("rect", { x, y, width, height }, fabric, index);
    const [wide, narrow] = isDown ? [y, y + height] : [y + height, y];
    const points =
        place.shape === "diamonds"
            ? [
                  [x + slant, y],
                  [x + width, y],
                  [x + pitch, y + height],
                  [x, y + height],
              ]
            : [
                  [x, wide],
                  [x + width, wide],
                  [x + Math.min(width, pitch), narrow],
                  [x + Math.max(0, slant), narrow],
              ];
    return inFabric("path", { d: `M${points.map((point) => point.join(" ")).join("L")}Z` }, fabric, index);
}

/** What lies there, on each piece that has room for it, or else once in the middle of all that are alike. */
function names(place, boxes) {
    const wide = place.name.length * LETTERS * 0.6;
    const [first, last] = [boxes[0], boxes.at(-1)];
    const middle = (from, to, y) => words((from + to) / 2, y + first.height / 2, place.name);
    return first.width < wide
        ? middle(first.x, last.x + last.width, first.y)
        : boxes.map(({ x, y, width }) => middle(x, x + width, y));
}

/** One strip with its pieces, from its upper left corner. */
function drawStrip(plan, number, at, along, unit, fabric, index) {
    const strip = plan.strips[number];
    const right = at.x + Number(strip.width) * unit;
    const pieces = plan.places.slice(strip.firstPlace, strip.firstPlace + strip.places).map((place) => {
        const boxes = Array.from({ length: Math.min(place.count, 200) }, (_, i) => {
            const x = at.x + (Number(place.x) + i * Number(place.pitch)) * unit;
            return {
                x,
                y: at.y + Number(place.y) * along,
                width: Math.min(Number(place.width) * unit, right - x),
                height: Number(place.height) * along,
                pitch: Number(place.pitch) * unit,
            };
        });
        return [boxes.map((box, i) => drawPiece(place, box, fabric, index, i % 2 === 1)), names(place, boxes)];
    });
    const left = { x: at.x, y: at.y, width: Number(strip.width) * unit, height: Number(strip.height) * along };
    return [strip.kind === "slit" ? [] : s("rect", { ...left, class: "left-over" }), pieces];
}

/** Cloth from its straightened end downwards; strips that are alike once, with how many. */
export function drawCloth(plan, usableWidth, fabric, index, shown, caption) {
    const unit = (WIDE - LABEL) / Number(usableWidth);
    const drawn = [];
    let y = 0;
    plan.strips.forEach((strip, number) => {
        if (strip.kind === "slit" || strip.kind === "within") return;
        const own = plan.strips.flatMap((one, i) => (one.holder === number ? [i] : []));
        const most = own.some((i) => plan.strips[i].kind === "within") ? 600 : STRIP_HIGH;
        const height = Math.min(most, Math.max(STRIP_LOW, Number(strip.height) * unit));
        const along = height / Number(strip.height);
        drawn.push(drawStrip(plan, number, { x: 0, y }, along, unit, fabric, index));
        for (const i of own)
            for (let k = 0; k < plan.strips[i].times; k++)
                drawn.push(
                    drawStrip(
                        plan,
                        i,
                        {
                            x: Number(plan.strips[i].x) * unit,
                            y: y + (Number(plan.strips[i].y) + k * Number(plan.strips[i].height)) * along,
                        },
                        along,
                        unit,
                        fabric,
                        index
                    )
                );
        const times = strip.times > 1 ? `${strip.times} × ` : "";
        drawn.push(
            words(WIDE - LABEL + 10, y + height / 2, `${times}cut ${shown.length(strip.height)}`, {
                "text-anchor": "start",
            })
        );
        y += height + 6;
    });
    return detailed(caption, WIDE, y, drawn);
}

// ---- backing --------------------------------------------------------------------------------------------------------

/** Pieces of a panel that are joined end to end: a line at each join. */
function joins({ x, y, width, height }, count, isAlong) {
    return Array.from({ length: count - 1 }, (_, i) => {
        const part = (i + 1) / count;
        return isAlong
            ? s("line", { x1: x, x2: x + width, y1: y + height * part, y2: y + height * part, class: "join" })
            : s("line", { x1: x + width * part, x2: x + width * part, y1: y, y2: y + height, class: "join" });
    });
}

/** Panels as they lie, with the joins of an insert, and the quilt in the middle of them. */
export function drawBacking({ best, panels }, size, shown, caption) {
    const isAlong = ["oneWidth", "seamsAlong", "centreAlong", "insertAlong"].includes(best.layout);
    const unit = Math.min(WIDE / Number(best.joinedWidth), 900 / Number(best.joinedLength));
    const [width, height] = [Number(best.joinedWidth) * unit, Number(best.joinedLength) * unit];
    const depth = (panel) => Number(panel.role === "insert" ? panel.cutLength : panel.cutWidth);
    const isInsert = (panel) => panel.role === "insert" && panel.count > 1;
    const all = panels.reduce((sum, panel) => sum + depth(panel) * (isInsert(panel) ? 1 : panel.count), 0);
    let at = 0;
    const drawn = panels.flatMap((panel, index) =>
        Array.from({ length: isInsert(panel) ? 1 : panel.count }, () => {
            const deep = (depth(panel) / all) * (isAlong ? width : height);
            const box = isAlong ? { x: at, y: 0, width: deep, height } : { x: 0, y: at, width, height: deep };
            at += deep;
            return [
                s("rect", { ...box, fill: index % 2 ? "#fffdf8" : "#f3eee2", class: "seam" }),
                isInsert(panel) ? joins(box, panel.count, isAlong) : [],
                words(box.x + Math.min(30, box.width / 2), box.y + Math.min(40, box.height / 2), `${panel.position}`),
            ];
        })
    );
    const [across, down] = [Number(size.quiltWidth) * unit, Number(size.quiltLength) * unit];
    return figure(
        `${caption}; numbers: places in the table`,
        width,
        height,
        drawn,
        s("rect", { x: (width - across) / 2, y: (height - down) / 2, width: across, height: down, class: "quilt" }),
        words(width / 2, height * 0.7, "quilt") // clear of joins in the middle
    );
}
