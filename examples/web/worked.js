// One size of a pattern with all that the library says of it: rows, what several writers ask of them, and then facts as
// plain data, which a Worker can send. No arithmetic of quilts is done here: the library did it.
//
// SPDX-License-Identifier: MIT
import { ClothPlans } from "./cloth.js";
import { FILE, pointerOf, placeIn } from "./complaints.js";
import { finish, packed } from "./finished.js";
import { Shown } from "./lengths.js";
import { Length, MuslinError } from "./muslin/muslin.js";
import { drawn } from "./outline.js";
import { written } from "./written.js";
import { nameOf } from "./words.js";
import { clashes } from "./write_pressing.js";

const INCH = 8128n,
    TICKS_PER_MM = 320n;

/** Lengths as ticks, all the way down. */
export function plain(value) {
    if (value instanceof Length) return value.ticks;
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value === "object" && value !== null)
        return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, plain(one)]));
    return value;
}

/** These members of an object. */
export function pick(from, names) {
    return Object.fromEntries(names.split(" ").map((name) => [name, from[name]]));
}

/** What all segments of a set are longer by, in ticks, when each is cut so wide. */
const longerBy = ({ segmentCut, segmentsPerSet }, cut) => (cut - segmentCut.ticks) * BigInt(segmentsPerSet);

/** What a function gives, once for each argument. */
function kept(answer) {
    const known = new Map();
    return (key) => {
        if (!known.has(key)) known.set(key, answer(key));
        return known.get(key);
    };
}

export class Worked {
    constructor(design) {
        this.design = design;
        this.muslin = design.muslin;
        this.quilt = design.quilt;
        this.solution = design.solution;
        this.complaints = [];
        this.extras = [];
        this.top = this.solution.size(design.top);
        this.tops = design.solve.tops ?? 1;
        this.isInches = design.units === "in";
        this.shown = new Shown(this.muslin, design.shownIn);
        this.hand = this.isInches ? 4n * INCH : 100n * TICKS_PER_MM; // a seam nearer to a corner is better not there
        this.node = kept((node) => this.quilt.node(node));
        this.partsOf = kept((node) => this.#partsOf(node));
        this.#readCuts();
        this.#readSteps();
        this.#press();
        this.#readBorders();
        this.finishing = finish(this);
    }

    /** What a call gives; undefined where the library refuses, which is told at the place, or at that of the error. */
    ask(place, call) {
        try {
            return call();
        } catch (error) {
            if (!(error instanceof MuslinError) || error.status === "noMemory") throw error;
            this.complaints.push({
                place: typeof place === "string" ? place : place(error),
                value: null,
                sentence: error.message,
                status: error.status,
            });
            return undefined;
        }
    }

    /** What a call gives, if anything. */
    quietly(call) {
        try {
            return call();
        } catch (error) {
            if (!(error instanceof MuslinError) || error.status === "noMemory") throw error;
            return undefined;
        }
    }

    /** Less than that is nothing on a ruler: 1/8 in, or a millimetre. */
    isNothing(length) {
        return length.ticks < (this.isInches ? INCH / 8n : TICKS_PER_MM);
    }

    // ---- fabrics ----

    clothOf(id) {
        return this.design.fabrics[this.indexOf(id)];
    }

    indexOf(id) {
        return this.design.fabrics.findIndex((fabric) => fabric.id === id);
    }

    fabricName(id) {
        return this.clothOf(id).name;
    }

    // ---- cuts ----

    #readCuts() {
        this.cuts = this.solution.cuts();
        this.nodesOfCut = this.cuts.map((_, index) => new Set(this.solution.cutNodes(index)));
        this.cutsOfPatch = new Map();
        this.cuts.forEach(({ source }, index) => {
            if (source !== "patch") return;
            for (const node of this.nodesOfCut[index])
                if (!this.cutsOfPatch.has(node)) this.cutsOfPatch.set(node, index);
        });
        this.mitreExtra = this.#mitreExtra();
        this.#readLaid();
        this.#order();
    }

    isCutFor(cut, node) {
        return this.nodesOfCut[cut].has(node);
    }

    /** Strips cannot be slit: what is too long for one is joined. */
    buyingOf(fabric) {
        const buying = { ...this.design.buying, mitreExtra: this.mitreExtra };
        return fabric.stripCut.ticks > 0n ? { ...buying, longPieces: "joined" } : buying;
    }

    /** A hand's breadth to hold, so that the longest of the mitred strips comes out at a whole inch or centimetre. */
    #mitreExtra() {
        const [hold, grid] = this.isInches ? ["2 in", "1 in"] : ["5 cm", "1 cm"];
        const mitred = this.cuts.filter((cut) => cut.source === "mitred").map((cut) => cut.cutWidth);
        if (mitred.length === 0) return 0n;
        const longest = mitred.reduce((most, one) => (one > most ? one : most));
        const held = this.muslin.lengthAdd(longest, hold);
        return this.muslin.lengthSnap(held, { grid, direction: "up" }).value.minus(longest);
    }

    /** How each cut is laid out: whole, lengthwise, joined from strips, on a slope. */
    #readLaid() {
        this.laid = new Array(this.cuts.length).fill(null);
        for (const fabric of this.design.fabrics)
            for (const row of this.solution.yardagePieces(fabric.id, this.buyingOf(fabric)))
                this.laid[row.label] = row.kind;
    }

    isJoined(index) {
        const { source } = this.cuts[index];
        return this.laid[index] === "joined" && (source === "patch" || source === "mitred");
    }

    /** How long a cut is on the cloth: of mitred strips with what is left to hold on to. */
    cutLength(index) {
        const { source, cutWidth } = this.cuts[index];
        return source === "mitred" ? cutWidth.plus(this.mitreExtra) : cutWidth;
    }

    /** How long the cloth must be for it; strips are cut across all of it. */
    #lengthOf(cut) {
        if (cut.source === "setStrip" || cut.pitch.ticks > 0n) return this.clothOf(cut.fabric).usableWidth;
        return cut.cutWidth > cut.cutHeight ? cut.cutWidth : cut.cutHeight;
    }

    #isBefore(one, other) {
        const a = this.cuts[one],
            b = this.cuts[other];
        if (a.fabric !== b.fabric) return false;
        if (this.isJoined(one) !== this.isJoined(other)) return this.isJoined(one);
        if (this.isJoined(one) && a.cutHeight.ticks !== b.cutHeight.ticks) return a.cutHeight > b.cutHeight;
        return this.#lengthOf(a) > this.#lengthOf(b);
    }

    /** Cuts of one fabric stand together, the longest strips first; the strips of one mitred border share a number. */
    #order() {
        const order = (this.order = []);
        this.cuts.forEach((_, index) => {
            let place = index;
            for (; place > 0 && this.#isBefore(index, order[place - 1]); place--) order[place] = order[place - 1];
            order[place] = index;
        });
        const alike = (a, b) =>
            a.source === "mitred" &&
            b.source === "mitred" &&
            a.fabric === b.fabric &&
            a.cutWidth.ticks === b.cutWidth.ticks &&
            a.cutHeight.ticks === b.cutHeight.ticks;
        let number = 0;
        this.piece = [];
        order.forEach((cut, index) => {
            if (index === 0 || !alike(this.cuts[order[index - 1]], this.cuts[cut])) number++;
            this.piece[cut] = number;
        });
    }

    #cutRow(index) {
        const cut = this.cuts[index];
        return {
            piece: this.piece[index],
            fabric: this.indexOf(cut.fabric),
            ...pick(cut, "cutWidth cutHeight count pieces spare source shape again hand pitch warnings"),
            joined: this.isJoined(index),
            border: this.isBorderCut(index),
        };
    }

    /** The steps that a cut goes into: a strip into the set that is cut apart again. */
    usesOf(index) {
        const nodes = this.nodesOfCut[index];
        return this.steps.filter(
            (step, i) =>
                (nodes.has(step.node) && step.kind !== "segments") ||
                (step.kind !== "set" && this.feeds[i].some((feed) => feed.step < 0 && nodes.has(feed.node)))
        );
    }

    cutOfPatch(node) {
        return this.cutsOfPatch.get(node) ?? -1;
    }

    cutOfStrip(join, patch) {
        const size = this.solution.size(patch);
        const width = this.node(join).axis === "across" ? size.unfinishedWidth : size.unfinishedHeight;
        const { fabric } = this.quilt.readPatch(patch);
        return this.cuts.findIndex(
            (cut, index) =>
                cut.source === "setStrip" &&
                cut.fabric === fabric &&
                cut.cutHeight.ticks === width.ticks &&
                this.isCutFor(index, join)
        );
    }

    // ---- sewing ----

    #readSteps() {
        this.steps = this.solution.sewingSteps();
        this.feeds = this.steps.map((_, index) => this.solution.sewingFeeds(index));
        this.sets = this.solution.stripsets();
        this.lastSteps = new Map(this.steps.map(({ node }, index) => [node, index]));
        this.takers = new Map();
        this.steps.forEach((step, index) => {
            for (const { node } of this.feeds[index])
                if (node !== step.node && !this.takers.has(node)) this.takers.set(node, step);
        });
        const { allowance, takeUp } = this.quilt.seam();
        this.seam = { allowance: this.solution.value(allowance), takeUp: this.solution.value(takeUp) };
    }

    /** The last step that makes a node, or -1. */
    stepOf(node) {
        return this.lastSteps.get(node) ?? -1;
    }

    stepThatTakes(node) {
        return this.takers.get(node);
    }

    setOf(node) {
        return this.sets.find((set) => set.node === node);
    }

    letterOf(node) {
        const step = this.stepOf(node);
        return step < 0 ? "" : this.muslin.sewingLabel(this.steps[step].stack);
    }

    /** A node's children as they lie: without what only turns or mirrors them. */
    #partsOf(parent) {
        const isOther = (node, place) => this.otherWays.has(`${node} ${place}`);
        return this.quilt.children(parent).map((child, place) => {
            const otherWay = isOther(parent, place);
            const { kind, quarterTurns, mirrored } = this.node(child);
            if (kind !== "turn") return { node: child, quarterTurns: 0, mirrored: false, otherWay };
            const [node] = this.quilt.children(child);
            return { node, quarterTurns, mirrored, otherWay: otherWay !== isOther(child, 0) };
        });
    }

    #stepRow(step, index) {
        const own = this.seamsOf(step.node);
        const parts = this.feeds[index].map(({ node, step: from, each }) => {
            const cut = from >= 0 ? -1 : step.kind === "set" ? this.cutOfStrip(step.node, node) : this.cutOfPatch(node);
            return cut >= 0 ? { each, piece: this.piece[cut] } : { each, letter: this.letterOf(node) };
        });
        const named = this.design.names.get(step.node);
        return {
            letter: this.letterOf(step.node),
            kind: step.kind,
            name: named?.name ?? nameOf(this, step.node),
            make: step.alike,
            isBlock: named?.isBlock === true,
            unfinishedWidth: step.unfinishedWidth,
            unfinishedHeight: step.unfinishedHeight,
            parts,
            pressed: own.map((seam) => seam.press),
            otherWay: own[0]?.otherWay ?? 0,
        };
    }

    #setRow(set) {
        const { axis } = this.node(set.node);
        const strips = this.partsOf(set.node).map(({ node }) => {
            const size = this.solution.size(node);
            return {
                fabric: this.indexOf(this.quilt.readPatch(node).fabric),
                width: axis === "across" ? size.unfinishedWidth : size.unfinishedHeight,
            };
        });
        return {
            letter: this.letterOf(set.node),
            strips,
            ...pick(set, "setUnfinished segmentCut stripLength segments segmentsPerSet sets spare shorterBy warnings"),
            count: set.strips,
            isStanding: axis === "across",
        };
    }

    // ---- pressing ----

    #press() {
        const pressing = this.ask("/pressing", () => new this.muslin.Pressing(this.solution, this.design.pressing));
        const rows = (pressing?.seams() ?? []).map((seam) => this.#pressedOutwards(seam));
        this.pressed = pressing?.totals();
        this.exceptions = pressing?.exceptions() ?? [];
        this.seams = new Map();
        for (const seam of rows) this.seams.set(seam.node, [...(this.seams.get(seam.node) ?? []), seam]);
        this.otherWays = new Set(
            (pressing?.children() ?? []).filter((one) => one.otherWay).map(({ node, place }) => `${node} ${place}`)
        );
        this.clashes = clashes(this);
        pressing?.free();
    }

    /** Strips of a mitred border lie over the seam that holds them, its mitres open: no plan decides it. */
    #pressedOutwards(seam) {
        const isMitred = this.design.borders.some((one) => one.corners === "mitred" && one.outside === seam.node);
        if (!isMitred) return seam;
        const press = ["left", "right", "up", "down"][seam.seam] ?? "open";
        return { ...seam, press, towards: seam.seam >= 4 ? "neither" : seam.seam % 2 === 0 ? "first" : "second" };
    }

    seamsOf(node) {
        return this.seams.get(node) ?? [];
    }

    // ---- borders ----

    #readBorders() {
        const { borders, centre, top } = this.design;
        this.firstBorderStep = borders.length === 0 || centre === top ? this.steps.length : this.stepOf(centre) + 1;
        this.borderStrips = this.cuts.map(() => []);
        for (let step = this.firstBorderStep; step < this.steps.length; step++)
            for (const feed of this.feeds[step])
                if (feed.step < 0 && this.#isBorderStrip(step, feed.node))
                    this.cuts.forEach(({ source }, cut) => {
                        if (source === "patch" && this.isCutFor(cut, feed.node))
                            this.borderStrips[cut].push({ step, node: feed.node });
                    });
    }

    borderOfStep(step) {
        if (step < this.firstBorderStep) return undefined;
        return this.design.borders.find((border) => step <= this.stepOf(border.outside));
    }

    /** Cornerstones are square, and what pieced strips are made of is no strip. */
    #isBorderStrip(step, patch) {
        const border = this.borderOfStep(step);
        if (!border?.corners || border.corners === "mitred" || this.node(patch).kind !== "patch") return false;
        const { finishedWidth, finishedHeight } = this.solution.size(patch);
        return finishedWidth.ticks !== finishedHeight.ticks;
    }

    /** The steps that take a cut as a strip of a border, and its nodes. */
    borderStripsOf(cut) {
        return this.borderStrips[cut];
    }

    /** Border strips are cut after the top is measured. */
    isBorderCut(cut) {
        return this.borderStrips[cut].length > 0;
    }

    mitredBorderOf(cut) {
        if (this.cuts[cut].source !== "mitred") return undefined;
        return this.design.borders.find((one) => one.corners === "mitred" && this.isCutFor(cut, one.outside));
    }

    /** Which sides of a node a mitred strip of it is for. */
    mitredSides(cut, node) {
        const { finishedWidth, finishedHeight } = this.solution.size(node);
        if (finishedWidth.ticks === finishedHeight.ticks) return "all";
        const isLongest = !this.cuts.some(
            (one, i) => one.source === "mitred" && one.cutWidth > this.cuts[cut].cutWidth && this.isCutFor(i, node)
        );
        return isLongest === finishedHeight > finishedWidth ? "beside" : "across";
    }

    /** How long a strip must be for the sets that a cut goes into, in ticks; 0: it goes into none. */
    setTakes(cut) {
        return this.sets
            .filter((set) => set.used && this.isCutFor(cut, set.node))
            .map((set) => set.stripLength.minus(this.slackOf(set)).ticks)
            .reduce((most, one) => (one > most ? one : most), 0n);
    }

    /** What a strip set's segments are cut to: the mark of the ruler, or the first of finer ones, at which a set gives
     * as many; where none does, what they need. */
    segmentMark(set) {
        const { segmentCut, shorterBy } = set;
        const isEnough = (cut) => longerBy(set, cut) <= shorterBy.ticks;
        return this.shown.marksFrom(segmentCut.ticks).find(isEnough) ?? segmentCut.ticks;
    }

    /** How much shorter strips may then be before a set gives less. */
    slackOf(set) {
        return set.shorterBy.minus(longerBy(set, this.segmentMark(set)));
    }

    // ---- facts ----

    /** Sizes, cuts, sets, sewing, pressing and finishing; the drawing of the top; all but the cloth. */
    get facts() {
        const { design, solution } = this;
        const facts = plain({
            top: this.top,
            tops: this.tops,
            totals: solution.totals(),
            fabrics: design.fabrics,
            solve: pick(design.solve, "endTrim foldClear resquareEvery resquareLoss"),
            cuts: this.order.map((index) => this.#cutRow(index)),
            sets: this.sets.filter((set) => set.used).map((set) => this.#setRow(set)),
            steps: this.steps.map((step, index) => this.#stepRow(step, index)),
            misfits: solution.misfits().map((misfit) => ({
                ...misfit,
                name: nameOf(this, misfit.node),
                place: design.names.get(misfit.node)?.place ?? null,
            })),
            pressed: this.pressed,
            ...packed(this.finishing),
            written: written(this),
        });
        return { ...facts, drawing: drawn(this), complaints: this.complaints };
    }

    /** What to buy of each fabric and how it is cut up, with so much work; `progress` is told how the search stands. */
    cloth(workLimit, progress) {
        return plain(new ClothPlans(this, workLimit, progress).facts);
    }

    /** Where in the file the bed of the size stands. */
    get bedPlace() {
        return pointerOf(placeIn(this.design.sizePlace ?? FILE, "bed"));
    }
}
