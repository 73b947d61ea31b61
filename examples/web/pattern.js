// A pattern file, read and checked, and one size of it pieced with the library: the same trees as the C reader pieces
// from it, part by part. Complaints say the place as JSON pointer, the value, and a sentence, the library's where it
// has one.
//
// SPDX-License-Identifier: MIT
import { checkFile } from "./check.js";
import { Complaints, FILE, placeIn, pointerOf } from "./complaints.js";
import { words } from "./format.js";
import { NoJson, readJson } from "./json.js";
import { readLength, soldByMetre } from "./lengths.js";
import { MuslinError } from "./muslin/muslin.js";

const LARGEST = 4 * 1024 * 1024,
    PARTS_MOST = 1 << 20,
    BLOCKS_MOST = 100000,
    TRIED_MOST = 500,
    SMALL = 20000;

/** What it takes to square the end of cloth or of a strip set: inch patterns, metric ones. */
const SQUARING = ["1/2 in", "1 cm"];

/** Reads the text of a file: what is wrong whatever the size, or { file, units, sizes }. */
export function readPattern(muslin, text) {
    const complaints = new Complaints();
    const file = parse(text, complaints);
    if (complaints.rows.length > 0 || !checkFile(muslin, file, complaints)) return { complaints: complaints.rows };
    return {
        file,
        units: file.units ?? "in",
        complaints: [],
        sizes: file.sizes ? file.sizes.map((size) => size.name) : ["as given"],
    };
}

function parse(text, complaints) {
    try {
        if (text.length > LARGEST || new TextEncoder().encode(text).length > LARGEST)
            throw new NoJson("this file is larger than 4 MiB; no pattern is that long");
        if (text.trim() === "") throw new NoJson("this file is empty");
        return readJson(text);
    } catch (error) {
        if (!(error instanceof NoJson)) throw error;
        const { line, column, message } = error;
        complaints.add("", line ? `this is not JSON: ${message}` : message, undefined, { line, column });
        return undefined;
    }
}

/** A, B, ... Z, AA, AB, ... */
export function letterOf(number) {
    let letters = "";
    for (let rest = number + 1; rest > 0; rest = Math.floor((rest - 1) / 26))
        letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
    return letters;
}

/** Pieces one size of a pattern that was read. What is wrong is in its `complaints`. */
export class Design {
    #known = { measures: new Map(), parts: new Map() };
    #places = new Map();
    #called = null; // of the node that is made now

    /** shownIn: the units that lengths are shown in, which say how cloth is sold where the file does not, and what lies
     * on a mark of the ruler. */
    constructor(muslin, pattern, size, shownIn = pattern.units) {
        this.muslin = muslin;
        this.file = pattern.file;
        this.units = pattern.units;
        this.shownIn = shownIn;
        this.soldByMetre = soldByMetre(pattern.file, shownIn);
        this.size = this.file.sizes?.[size] ?? {};
        this.sizePlace = placeIn(placeIn(FILE, "sizes"), size);
        this.told = new Complaints();
        this.fabrics = [];
        this.names = new Map(); // of nodes: name, place, side, log, isBlock
        this.unitNodes = new Map(); // of nodes: kind, method, fabrics and measures of a unit, isMirrored
        this.hasSashes = false;
        this.borders = [];
        this.make();
    }

    get complaints() {
        return this.told.rows;
    }

    get isRight() {
        return this.complaints.length === 0;
    }

    free() {
        this.solution?.free();
        this.quilt?.free();
    }

    make() {
        if (!this.#begin()) return;
        this.#makeFabrics();
        for (const name of Object.keys(this.file.measures ?? {})) this.#namedMeasure(name);
        for (const name of Object.keys(this.file.parts ?? {})) this.#part(name);
        const top = placeIn(FILE, "top");
        this.centre = this.#node(top, this.file.top);
        this.top = this.#sewBorders(placeIn(FILE, "borders"), this.file.borders ?? [], this.centre, true);
        this.#choose();
        if (this.file.binding) this.#checkBinding(this.file.binding);
        if (this.isRight) this.#trySolving();
    }

    // ---- values ----

    /** What a call gives; 0 where the library refuses, which is told at the place. */
    #ask(place, call, value) {
        try {
            return call();
        } catch (error) {
            if (!(error instanceof MuslinError) || error.status === "noMemory") throw error;
            this.told.add(place, this.#inOwnUnits(error.message), value, { status: error.status });
            return 0n;
        }
    }

    /** The library's sentence with nothing in the units of the pattern: "0 cm" for "0 in". */
    #inOwnUnits(sentence) {
        return this.units === "in" ? sentence : sentence.replaceAll(/ 0 in(?=[ ,.;]|$)/g, ` 0 ${this.units}`);
    }

    /** A length of an object, or the usual one: [in inch patterns, in metric ones]. */
    length(object, member, usual) {
        const text = object?.[member] ?? usual?.[this.units === "in" ? 0 : 1];
        return text === undefined ? this.muslin.length(0n) : this.muslin.lengthParse(text).value;
    }

    #count(object, member) {
        const value = object[member];
        return typeof value === "string" ? (this.size.counts?.[value] ?? this.file.counts[value]) : value;
    }

    #fabric(name) {
        return this.fabrics.find((fabric) => fabric.key === name)?.id ?? 0n;
    }

    #notePlace(place, id) {
        if (!this.#places.has(id)) this.#places.set(id, pointerOf(place));
    }

    // ---- the quilt and its fabrics ----

    #begin() {
        const { seam } = this.file;
        this.allowance = this.length(seam, "allowance", ["1/4 in", "6 mm"]);
        const takeUp = this.length(seam, "take up");
        this.quilt = this.#ask(
            placeIn(FILE, "seam"),
            () => new this.muslin.Quilt({ most: PARTS_MOST, allowance: this.allowance, takeUp }),
            seam
        );
        return this.isRight;
    }

    #makeFabrics() {
        for (const [key, fabric] of Object.entries(this.file.fabrics)) {
            const place = placeIn(placeIn(FILE, "fabrics"), key);
            const spec = {
                usableWidth: this.length(fabric, "usable width", ["40 in", "100 cm"]),
                print: words.print[fabric.print] ?? "none",
                darkness: fabric.darkness ?? 0,
            };
            let id = this.#ask(place, () => this.quilt.fabric(key, spec));
            if (id === 0n) {
                // with the usual width, so that what is sewn of it is looked at too
                delete spec.usableWidth;
                id = this.quilt.fabric(key, spec);
            }
            const grey = (spec.darkness > 0 ? 250 - 2 * spec.darkness : 160).toString(16).padStart(2, "0");
            this.fabrics.push({
                id,
                key,
                name: fabric.name ?? key,
                letter: `F${this.fabrics.length + 1}`,
                color: fabric.color ?? `#${grey}${grey}${grey}`,
                print: spec.print,
                usableWidth: spec.usableWidth,
                stripCut: this.length(fabric.strips, "cut width"),
                stripsHave: fabric.strips?.have ?? 0,
            });
        }
    }

    // ---- measures ----

    #measure(place, value) {
        const id = this.#anyMeasure(place, value);
        if (id !== 0n) this.#notePlace(place, id);
        return id;
    }

    #anyMeasure(place, value) {
        if (typeof value === "string")
            return /^[a-z]/.test(value) ? this.#namedMeasure(value) : this.#lengthMeasure(place, value);
        if ("times" in value) return this.#sum(place, [this.#term(place, value)]);
        if ("sum" in value) {
            const list = placeIn(place, "sum");
            return this.#sum(
                place,
                value.sum.map((item, index) => this.#term(placeIn(list, index), item))
            );
        }
        const [member, axis] = "width of" in value ? ["width of", "across"] : ["height of", "down"];
        const node = this.#node(placeIn(place, member), value[member]);
        return node === 0n ? 0n : this.#ask(place, () => this.quilt.extent(node, axis));
    }

    #lengthMeasure(place, value, name) {
        const length = readLength(this.muslin, value, (sentence) => this.told.add(place, sentence, value));
        if (!length) return 0n;
        return this.#ask(place, () => (name ? this.quilt.measure(name, length) : this.quilt.fixed(length)), value);
    }

    #term(place, value) {
        if (value?.times === undefined) return { measure: this.#measure(place, value) };
        return { measure: this.#measure(placeIn(place, "of"), value.of), factor: value.times };
    }

    #sum(place, terms) {
        return terms.every((term) => term.measure !== 0n) ? this.#ask(place, () => this.quilt.sum(terms)) : 0n;
    }

    /** As the size has it, or else the file. */
    #namedMeasure(name) {
        const known = this.#known.measures;
        if (known.has(name)) return known.get(name);
        const own = this.size.measures?.[name];
        const place = placeIn(placeIn(own === undefined ? FILE : this.sizePlace, "measures"), name);
        const value = own ?? this.file.measures[name];
        const isLength = typeof value === "string" && !/^[a-z]/.test(value);
        const id = isLength ? this.#lengthMeasure(place, value, name) : this.#measure(place, value);
        known.set(name, id);
        return id;
    }

    /** Members that are measures, as members of a spec; undefined where one failed. */
    #measures(place, object, members) {
        const spec = {};
        let all = true;
        for (const [own, member] of Object.entries(members)) {
            if (!(member in object)) continue;
            spec[own] = this.#measure(placeIn(place, member), object[member]);
            all &&= spec[own] !== 0n;
        }
        return all ? spec : undefined;
    }

    // ---- nodes ----

    #node(place, value) {
        return typeof value === "string" ? this.#part(value) : this.#object(place, value, null);
    }

    #part(name) {
        const known = this.#known.parts;
        if (known.has(name)) return known.get(name);
        const place = placeIn(placeIn(FILE, "parts"), name);
        const value = this.file.parts[name];
        const node = typeof value === "string" ? this.#node(place, value) : this.#object(place, value, name);
        known.set(name, node);
        return node;
    }

    /** An object, with the name that it has in print where it says none itself. */
    #object(place, value, usualName) {
        const name = value.called ?? usualName;
        const kind = Object.keys(this.#makers).find((member) => member in value);
        this.#called = name;
        const node = this.#makers[kind](place, value);
        if (node === 0n) return node;
        this.#notePlace(place, node);
        if (name === null && !value.block) return node;
        const named = this.#call(place, node, name ?? "block");
        named.isBlock ||= value.block === true;
        if (!named.side && !named.log && value.called !== undefined) named.name = name;
        return node;
    }

    /** Notes what a node is called, unless it has a name. */
    #call(place, node, name) {
        if (!this.names.has(node))
            this.names.set(node, { name, place: pointerOf(place), isBlock: false, side: null, log: 0 });
        return this.names.get(node);
    }

    /** The nodes of a list; undefined where one failed. */
    #nodes(place, list) {
        const nodes = list.map((item, index) => this.#node(placeIn(place, index), item));
        return nodes.includes(0n) ? undefined : nodes;
    }

    /** The nodes of some members, as members of a spec; undefined where one failed. */
    #named(place, object, members) {
        const spec = Object.fromEntries(
            Object.entries(members).map(([own, member]) => [own, this.#node(placeIn(place, member), object[member])])
        );
        return Object.values(spec).includes(0n) ? undefined : spec;
    }

    #makers = {
        patch: (place, value) => {
            const square = "size" in value;
            const spec = this.#measures(place, value, {
                width: square ? "size" : "width",
                height: square ? "size" : "height",
            });
            return spec ? this.#ask(place, () => this.quilt.patch({ fabric: this.#fabric(value.patch), ...spec })) : 0n;
        },
        unit: (place, value) => this.#unit(place, value),
        shape: (place, value) => this.#shape(place, value),
        across: (place, value) => this.#join(place, value, "across", words.pressAcross),
        down: (place, value) => this.#join(place, value, "down", words.pressDown),
        grid: (place, value) => {
            const rows = value.grid;
            const blocks = this.#fill(placeIn(place, "grid"), rows, rows[0].length, rows.length);
            return blocks ? this.#ask(place, () => this.quilt.grid(rows[0].length, rows.length, blocks)) : 0n;
        },
        turn: (place, value) => {
            const node = this.#node(placeIn(place, "turn"), value.turn);
            return node && this.#ask(place, () => this.quilt.turn(node, value.quarters));
        },
        mirror: (place, value) => {
            const node = this.#node(placeIn(place, "mirror"), value.mirror);
            return node && this.#ask(place, () => this.quilt.mirror(node));
        },
        repeat: (place, value) => {
            const turns = value.quarters ?? [[0]];
            const node = this.#node(placeIn(place, "repeat"), value.repeat);
            return (
                node &&
                this.#ask(place, () =>
                    this.quilt.repeat(
                        node,
                        this.#count(value, "columns"),
                        this.#count(value, "rows"),
                        turns.flat(),
                        turns[0].length,
                        turns.length
                    )
                )
            );
        },
        alternate: (place, value) => {
            const field = this.#field(place, value, "alternate");
            return field ? this.#ask(place, () => this.quilt.grid(field.columns, field.rows, field.blocks)) : 0n;
        },
        sashed: (place, value) => {
            const sash = this.#measures(place, value, { sash: "sash" });
            this.hasSashes = true;
            const field = this.#field(place, value, "sashed");
            return sash && field
                ? this.#ask(place, () =>
                      this.quilt.sashed(field.blocks, {
                          columns: field.columns,
                          rows: field.rows,
                          ...sash,
                          sashFabric: this.#fabric(value.fabric),
                          cornerstone: this.#fabric(value.cornerstone),
                          cornerstones: value.cornerstone !== undefined,
                          frame: value.frame === true,
                      })
                  )
                : 0n;
        },
        "on point": (place, value) => this.#onPoint(place, value),
        "log cabin": (place, value) => this.#logCabin(place, value),
        bordered: (place, value) => {
            const centre = this.#node(placeIn(place, "bordered"), value.bordered);
            return this.#sewBorders(placeIn(place, "borders"), value.borders, centre, false);
        },
        pinwheel: (place, value) => {
            const spec = this.#named(place, value, {
                centre: "pinwheel",
                top: "top",
                right: "right",
                bottom: "bottom",
                left: "left",
            });
            return spec ? this.#ask(place, () => this.quilt.pinwheel(spec)) : 0n;
        },
        trimmed: (place, value) => {
            const node = this.#node(placeIn(place, "trimmed"), value.trimmed);
            const spec = this.#measures(place, value, { left: "left", right: "right", top: "top", bottom: "bottom" });
            return node && spec ? this.#ask(place, () => this.quilt.trim(node, spec)) : 0n;
        },
        "triangle rows": (place, value) => this.#triangleRows(place, value),
    };

    #join(place, value, axis, presses) {
        const children = this.#nodes(placeIn(place, axis), value[axis]);
        return children
            ? this.#ask(place, () =>
                  this.quilt.join(children, {
                      axis,
                      keepsOrder: value["keep order"] === true,
                      piecing: words.piecing[value["strip piecing"]] ?? "whereFewer",
                      press: presses[value.press] ?? "free",
                  })
              )
            : 0n;
    }

    #unit(place, value) {
        const spec = this.#measures(place, value, {
            width: "size" in value ? "size" : "width",
            height: "height",
            corner: "corner",
        });
        if (!spec) return 0n;
        const kind = words.unit[value.unit];
        const method = words.method[value.method] ?? this.#usualMethod(kind);
        const fabrics = value.fabrics.map((name) => this.#fabric(name));
        const unit = this.#askUnit(place, value, kind, () =>
            this.quilt.unit(fabrics, { kind, method, hand: value.hand === 2 ? "mirrored" : "first", ...spec })
        );
        if (unit !== 0n && !this.unitNodes.has(unit))
            this.unitNodes.set(unit, { kind, method, isMirrored: value.hand === 2, fabrics, ...spec });
        return unit;
    }

    /** What the library says of ids and choices is said of the members that gave them. */
    #askUnit(place, value, kind, call) {
        try {
            return call();
        } catch (error) {
            if (!(error instanceof MuslinError) || error.status === "noMemory") throw error;
            const tell = (member, sentence) =>
                this.told.add(member ? placeIn(place, member) : place, sentence, member ? value[member] : value, {
                    status: error.status,
                });
            const isSnowball = kind === "snowball",
                isMeasure = error.argument === "measure";
            if (error.status === "method")
                tell("method", `this kind of unit is not made so, but by ${this.#methodsOf(kind)}`);
            else if (error.argument === "hand") tell("hand", 'this kind of unit has no second hand; leave "hand" out');
            else if (isMeasure && "corner" in value && !isSnowball) tell("corner", 'only a snowball has a "corner"');
            else if (isMeasure && BigInt(error.value) !== 0n)
                tell("height", 'this kind of unit takes no "height"; give its "size" alone');
            else if (isMeasure && isSnowball)
                tell(null, '"corner" is missing: how far along its sides a snowball loses its corners');
            else if (isMeasure) tell(null, '"height" is missing: this kind of unit has "width" and "height"');
            else tell(null, error.message);
            return 0n;
        }
    }

    #methodsOf(kind) {
        const found = [];
        for (let i = 0; i < this.muslin.unitRecipeCount(); i++) {
            const recipe = this.muslin.unitRecipeAt(i);
            const [word] = Object.entries(words.method).find(([, method]) => method === recipe.method) ?? [];
            if (recipe.kind === kind && word) found.push(`"${word}"`);
        }
        return found.length < 2 ? found.join("") : `${found.slice(0, -1).join(", ")} or ${found.at(-1)}`;
    }

    /** How a kind is made where nothing is said: the first way that the library lists. */
    #usualMethod(kind) {
        for (let i = 0; i < this.muslin.unitRecipeCount(); i++) {
            const recipe = this.muslin.unitRecipeAt(i);
            if (recipe.kind === kind) return recipe.method;
        }
        return "pieces";
    }

    #shape(place, value) {
        const corners = [];
        let all = true;
        const add = (list, from, piece) =>
            list.forEach((corner, index) => {
                const [x, y] = corner.map((text, axis) =>
                    readLength(this.muslin, text, (sentence) =>
                        this.told.add(placeIn(placeIn(from, index), axis), sentence, text)
                    )
                );
                all &&= x !== undefined && y !== undefined;
                corners.push({ piece, x, y });
            });
        add(value.shape, placeIn(place, "shape"), -1);
        value.pieces.forEach((piece, index) =>
            add(piece.corners, placeIn(placeIn(placeIn(place, "pieces"), index), "corners"), index)
        );
        const spec = this.#measures(place, value, { width: "width", height: "height" });
        const fabrics = value.pieces.map((piece) => this.#fabric(piece.fabric));
        return all && spec
            ? this.#askShape(place, corners, (drawn) =>
                  this.quilt.shape(drawn, fabrics, spec.width ?? 0n, spec.height ?? 0n)
              )
            : 0n;
    }

    /** What is wrong with a drawing is told where its corner stands. */
    #askShape(place, corners, call) {
        try {
            return call(corners);
        } catch (error) {
            if (!(error instanceof MuslinError) || error.status === "noMemory") throw error;
            const { status, message } = error,
                at = Number(error.at),
                more = { status };
            if (!message.startsWith("Row of the ") || at >= corners.length || !message.includes(". ")) {
                this.told.add(place, message, undefined, more);
                return 0n;
            }
            const { piece } = corners[at],
                first = corners.findIndex((corner) => corner.piece === piece);
            const ring =
                piece < 0 ? placeIn(place, "shape") : placeIn(placeIn(placeIn(place, "pieces"), piece), "corners");
            if (status === "shape" && this.#goesWrongWay(corners, piece, call))
                this.told.add(
                    ring,
                    "these corners go round the wrong way: write them in the other order",
                    undefined,
                    more
                );
            else this.told.add(placeIn(ring, at - first), message.slice(message.indexOf(". ") + 2), undefined, more);
            return 0n;
        }
    }

    /** Whether the corners of a ring, written in the other order, are no fault. */
    #goesWrongWay(corners, piece, call) {
        const ring = corners.filter((corner) => corner.piece === piece).reverse();
        const turned = corners.map((corner) => (corner.piece === piece ? ring.shift() : corner));
        try {
            call(turned);
            return true;
        } catch (error) {
            if (!(error instanceof MuslinError)) throw error;
            return error.status !== "shape" || turned[Number(error.at)]?.piece !== piece;
        }
    }

    #triangleRows(place, value) {
        const rows = value["triangle rows"];
        const room = (piece) => (typeof piece === "string" ? 1 : piece.triangles);
        const cells = rows.map((row) => row.reduce((sum, piece) => sum + room(piece), 0));
        cells.forEach((count, index) => {
            if (count !== cells[0])
                this.told.add(
                    placeIn(placeIn(place, "triangle rows"), index),
                    `this row has room for ${count} ` +
                        `triangles, the first one for ${cells[0]}; rows are equally long`
                );
        });
        const spec = this.#measures(place, value, { height: "height" });
        if (!spec || cells.some((count) => count !== cells[0])) return 0n;
        const pieces = rows
            .flat()
            .map((piece) => ({ cells: room(piece), fabric: this.#fabric(piece.fabric ?? piece) }));
        return this.#ask(place, () =>
            this.quilt.sixty(pieces, {
                cells: cells[0],
                rows: rows.length,
                ...spec,
                endFabric: this.#fabric(value["end fabric"]),
                first: words.first[value.first] ?? "onSide",
            })
        );
    }

    // ---- settings ----

    /** Rows of nodes, each made once, repeated until columns and rows are full; undefined where one failed. */
    #fill(place, rows, columns, wanted) {
        const nodes = rows.map((row, index) => this.#nodes(placeIn(place, index), row));
        if (nodes.includes(undefined)) return undefined;
        return Array.from({ length: columns * wanted }, (_, i) => {
            const row = nodes[Math.floor(i / columns) % nodes.length];
            return row[(i % columns) % row.length];
        });
    }

    #field(place, value, member) {
        const columns = this.#count(value, "columns"),
            rows = this.#count(value, "rows");
        if (columns > Math.floor(BLOCKS_MOST / rows)) {
            this.told.add(place, `${columns} columns and ${rows} rows are more than ${BLOCKS_MOST} blocks`);
            return undefined;
        }
        const blocks = this.#fill(placeIn(place, member), value[member], columns, rows);
        return blocks && { columns, rows, blocks };
    }

    #onPoint(place, value) {
        const spec = this.#measures(place, value, { setOff: "float", sash: "sash" });
        const field = this.#field(place, value, "on point");
        if (!field && this.complaints.at(-1)?.sentence.endsWith(`more than ${BLOCKS_MOST} blocks`)) return 0n;
        const gaps = "between" in value ? "between" : "on point";
        const columns = this.#count(value, "columns"),
            rows = this.#count(value, "rows");
        const between = this.#fill(placeIn(place, gaps), value[gaps], columns - 1, rows - 1);
        if (!spec || !field || !between) return 0n;
        return this.#ask(place, () =>
            this.quilt.diagonal([...field.blocks, ...between], {
                columns,
                rows,
                ...spec,
                sideFabric: this.#fabric(value["side fabric"]),
                cornerFabric: this.#fabric(value["corner fabric"]),
                sashFabric: this.#fabric(value.fabric),
                cornerstone: this.#fabric(value.cornerstone),
                ...("sash" in value ? { layout: words.sashesEnd[value["sashes end"]] ?? "sashOuter" } : {}),
            })
        );
    }

    // ---- strips round a centre ----

    #patch(place, fabric, width, height) {
        return width && height && this.#ask(place, () => this.quilt.patch({ fabric, width, height }));
    }

    /** A strip along one side, as long as what is there, pressed away from it. */
    #layer(place, centre, fabric, width, side) {
        const isBeside = side === "left" || side === "right",
            isFirst = side === "left" || side === "top";
        const long = this.#ask(place, () => this.quilt.extent(centre, isBeside ? "down" : "across"));
        const strip = this.#patch(place, fabric, isBeside ? width : long, isBeside ? long : width);
        return (
            strip &&
            this.#ask(place, () =>
                this.quilt.join(isFirst ? [strip, centre] : [centre, strip], {
                    axis: isBeside ? "across" : "down",
                    press: isFirst ? "toFirst" : "toLast",
                })
            )
        );
    }

    #logCabin(place, value) {
        const name = this.#called ?? "log cabin";
        let node = this.#node(placeIn(place, "log cabin"), value["log cabin"]);
        value.logs.forEach((log, index) => {
            const here = placeIn(placeIn(place, "logs"), index);
            const width = this.#measure(placeIn(here, "width"), log.width);
            node = width && node && this.#layer(here, node, this.#fabric(log.fabric), width, log.side);
            if (node === 0n) return;
            this.#notePlace(here, node);
            // the last one makes it whole
            this.#call(here, node, name).log = index + 1 === value.logs.length ? 0 : index + 1;
        });
        return node;
    }

    #sewBorders(place, list, centre, isOfTheWhole) {
        const usual =
            list.length === 1
                ? ["border"]
                : list.length === 2
                  ? ["inner border", "outer border"]
                  : list.length === 3
                    ? ["inner border", "middle border", "outer border"]
                    : [];
        list.forEach((value, index) => {
            const here = placeIn(place, index);
            const inside = centre;
            const border = { name: value.called ?? usual[index] ?? `border ${index + 1}`, width: 0n };
            centre = this.#border(here, value, centre, border);
            if (centre === 0n) return;
            this.#notePlace(here, centre);
            if (isOfTheWhole) {
                this.borders.push({
                    name: border.name,
                    corners: border.corners,
                    width: border.width,
                    inside,
                    outside: centre,
                });
            }
        });
        return centre;
    }

    #border(place, value, centre, border) {
        let node;
        if ("sides" in value) node = this.#piecedBorder(place, value, centre);
        else {
            if (!this.#readBorder(place, value, border) || centre === 0n) return 0n;
            if (border.corners === "mitred") node = this.#mitred(place, centre, border);
            else if (border.corners === "cornerstones") node = this.#withCornerstones(place, centre, border);
            else return this.#butted(place, centre, border);
        }
        if (node !== 0n) this.#call(place, node, border.name);
        return node;
    }

    #readBorder(place, value, border) {
        border.fabric = this.#fabric(value.fabric);
        border.cornerstone = this.#fabric(value.cornerstone);
        border.corners = value.corners ?? (border.cornerstone !== 0n ? "cornerstones" : "sides first");
        const fits = border.cornerstone === 0n || border.corners === "cornerstones";
        if (!fits)
            this.told.add(place, 'a border with a "cornerstone" has "corners": "cornerstones", or leaves them out');
        border.width = this.#measure(placeIn(place, "width"), value.width);
        return border.width !== 0n && fits;
    }

    #butted(place, centre, border) {
        const sides =
            border.corners === "sides first" ? ["left", "right", "top", "bottom"] : ["top", "bottom", "left", "right"];
        for (const side of sides) {
            centre = centre && this.#layer(place, centre, border.fabric, border.width, side);
            if (centre !== 0n) this.#call(place, centre, border.name).side = side;
        }
        return centre;
    }

    #mitred(place, centre, { fabric, width }) {
        return this.#ask(place, () =>
            this.quilt.setIn({
                centre,
                leftWidth: width,
                rightWidth: width,
                topWidth: width,
                bottomWidth: width,
                leftFabric: fabric,
                rightFabric: fabric,
                topFabric: fabric,
                bottomFabric: fabric,
            })
        );
    }

    #withCornerstones(place, centre, border) {
        const height = this.#ask(place, () => this.quilt.extent(centre, "down"));
        const width = this.#ask(place, () => this.quilt.extent(centre, "across"));
        const side = this.#patch(place, border.fabric, border.width, height);
        const end = this.#patch(place, border.fabric, width, border.width);
        const stone = this.#patch(place, border.cornerstone || border.fabric, border.width, border.width);
        return (
            side &&
            end &&
            stone &&
            this.#surround(place, centre, { left: side, right: side, top: end, bottom: end }, stone)
        );
    }

    #piecedBorder(place, value, centre) {
        const spec = this.#named(placeIn(place, "sides"), value.sides, {
            left: "left",
            right: "right",
            top: "top",
            bottom: "bottom",
            corner: "corner",
        });
        if (!spec || centre === 0n) return 0n;
        const { corner, ...sides } = spec;
        return this.#surround(place, centre, sides, corner);
    }

    #surround(place, centre, sides, corner) {
        return this.#ask(place, () =>
            this.quilt.surround({
                centre,
                ...sides,
                topLeft: corner,
                topRight: corner,
                bottomLeft: corner,
                bottomRight: corner,
            })
        );
    }

    // ---- how one works ----

    /** A binding is folded in half and sewn through all its layers: what its two seams take must leave something. */
    #checkBinding(binding) {
        const place = placeIn(placeIn(FILE, "binding"), "cut width");
        if (this.length(binding, "cut width", ["2 1/2 in", "6 cm"]).ticks <= this.allowance.times(2).ticks)
            this.told.add(place, "a binding is cut wider than its two seam allowances", binding["cut width"]);
    }

    #choose() {
        const { seam, cutting = {}, pressing = {}, buying = {}, tops } = this.file;
        const foldClear = this.length(cutting, "fold clear");
        this.solve = {
            ...(tops === undefined ? {} : { tops: this.#count(this.file, "tops") }),
            ease: this.length(seam, "ease"),
            grid: this.length(cutting, "grid", ["1/8 in", "1 mm"]),
            trimRoom: this.length(cutting, "trim"),
            endTrim: this.length(cutting, "end trim", SQUARING),
            resquareLoss: this.length(cutting, "resquare loss"),
            resquareEvery: cutting["resquare every"] ?? 0,
            foldClear,
            fromOneEnd: foldClear.ticks === 0n,
            policy: cutting.policy ?? "exact",
            tip: cutting.tips ?? "blunt",
            direction: cutting.round ?? "up",
            stripPiecing: words.sets[cutting["strip piecing"]] ?? "whereFewer",
        };
        this.pressing = {
            units: words.pressed[pressing.units] ?? true,
            ...("towards dark" in pressing ? { prefer: pressing["towards dark"] ? "darker" : "nothing" } : {}),
        };
        const longPieces = words.long[buying["long strips"]] ?? "joined";
        this.buying = {
            step: this.length({ step: this.soldByMetre ? "10 cm" : "1/8 yd", ...buying }, "step"),
            extra: this.length(buying, "extra"),
            straightening: this.length(buying, "straightening", SQUARING),
            shrinkage: Math.floor(((buying.shrinkage ?? 0) * 1000000) / 100 + 0.5),
            longPieces,
            noPanels: longPieces === "joined",
        };
        const loss = this.#ask(placeIn(FILE, "seam"), () => this.muslin.joinLoss("straight", 0n, this.allowance));
        if (loss) this.buying.joinLoss = loss;
    }

    // ---- does it come out? ----

    #trySolving() {
        const { error } = this.#solve(this.top);
        if (!error) return;
        this.told.add(this.#placeOfProblem(this.top, error), this.#inOwnUnits(error.message), undefined, {
            status: error.status,
        });
        if (this.quilt.counts().nodes > SMALL) return;
        let tried = 0;
        for (const node of this.#places.keys()) {
            if (this.muslin.idSort(node) !== "node" || tried++ >= TRIED_MOST) continue;
            const found = this.#solve(node);
            if (found.error)
                this.told.add(
                    this.#placeOfProblem(node, found.error),
                    this.#inOwnUnits(found.error.message),
                    undefined,
                    {
                        status: found.error.status,
                    }
                );
            found.solution?.free();
        }
    }

    #solve(root) {
        try {
            const solution = new this.muslin.Solution(this.quilt, root, this.solve);
            if (root === this.top) this.solution = solution;
            return { solution: root === this.top ? undefined : solution };
        } catch (error) {
            if (!(error instanceof MuslinError) || error.status === "noMemory") throw error;
            return { error };
        }
    }

    /** Where the node or measure was made that a problem counts, else where `root` was. */
    #placeOfProblem(root, error) {
        const POLICIES = {
            tops: "/tops",
            ease: "/seam/ease",
            grid: "/cutting/grid",
            trimRoom: "/cutting/trim",
            endTrim: "/cutting/end trim",
            resquareLoss: "/cutting/resquare loss",
            foldClear: "/cutting/fold clear",
        };
        if (Number(error.at) === 0) return POLICIES[error.argument] ?? "/cutting";
        const sort = error.argument === "sum" || error.argument === "value" ? "measure" : "node";
        try {
            return this.#places.get(this.quilt.id(sort, error.at)) ?? this.#places.get(root) ?? "/top";
        } catch {
            return this.#places.get(root) ?? "/top";
        }
    }
}
