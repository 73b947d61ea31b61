// One size of a pattern asked through: sizes, cuts, strip sets, sewing, pressing, finishing, cloth; as plain data, so
// that a Worker can send it. Lengths are BigInt ticks. No arithmetic of quilts is done here: the library did it.
//
// SPDX-License-Identifier: MIT
import { FILE, pointerOf, placeIn } from "./complaints.js";
import { words } from "./format.js";
import { Length, MuslinError } from "./muslin/muslin.js";

const INCH = 8128n,
    TICKS_PER_MM = 320n;
const ENDS_LEAST = 10n * INCH; // beyond the way round, for corners and joining the ends of a binding
const TOPS_TRIED = 50;
const OUTLINES_MOST = 40000,
    LETTERS_MOST = 300;
export const DRAWN = 1000;

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

const UNIT_NAMES = {
    halfSquare: "half-square triangles",
    quarterSquare: "quarter-square triangles",
    splitQuarter: "split quarters",
    flyingGeese: "flying geese",
    squareInSquare: "square in a square",
    snowball: "snowballs",
    halfRectangle: "half-rectangle triangles",
    octagon: "octagons",
    eightPointedStar: "eight-pointed star",
    kaleidoscope: "kaleidoscopes",
};
const KIND_NAMES = {
    setIn: "mitred border",
    shape: "unit of its own shape",
    trim: "part to be trimmed",
    pinwheel: "strips round a centre",
    diagonal: "centre on point",
    sixty: "rows of triangles",
};
const SIDE_NAMES = { left: "left side", right: "right side", top: "top", bottom: "bottom" };

export class Worked {
    constructor(design) {
        this.design = design;
        this.muslin = design.muslin;
        this.quilt = design.quilt;
        this.solution = design.solution;
        this.complaints = [];
        this.extras = [];
        this.cuts = this.solution.cuts();
        this.top = this.solution.size(design.top);
        this.tops = design.solve.tops ?? 1;
        this.steps = this.solution.sewingSteps();
        this.feeds = this.steps.map((_, index) => this.solution.sewingFeeds(index));
        this.mitreExtra = this.#mitreExtra();
        this.#readLaid();
        this.#order();
        this.finishing = this.#finish();
    }

    /** What a call gives; undefined where the library refuses, which is told at the place, or at that of the error. */
    #ask(place, call) {
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

    #cloth(id) {
        return this.design.fabrics.findIndex((fabric) => fabric.id === id);
    }

    // ---- cuts ----

    /** Strips cannot be slit: what is too long for one is joined. */
    #buyingOf(fabric) {
        const buying = { ...this.design.buying, mitreExtra: this.mitreExtra };
        return fabric.stripCut.ticks > 0n ? { ...buying, longPieces: "joined" } : buying;
    }

    /** A hand's breadth to hold, so that the longest of the mitred strips comes out at a whole inch or centimetre. */
    #mitreExtra() {
        const [hold, grid] = this.design.units === "in" ? ["2 in", "1 in"] : ["5 cm", "1 cm"];
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
            for (const row of this.solution.yardagePieces(fabric.id, this.#buyingOf(fabric)))
                this.laid[row.label] = row.kind;
    }

    #isJoined(index) {
        const { source } = this.cuts[index];
        return this.laid[index] === "joined" && (source === "patch" || source === "mitred");
    }

    /** How long the cloth must be for it; strips are cut across all of it. */
    #lengthOf(cut) {
        if (cut.source === "setStrip" || cut.pitch.ticks > 0n)
            return this.design.fabrics[this.#cloth(cut.fabric)].usableWidth;
        return cut.cutWidth > cut.cutHeight ? cut.cutWidth : cut.cutHeight;
    }

    #isBefore(one, other) {
        const a = this.cuts[one],
            b = this.cuts[other];
        if (a.fabric !== b.fabric) return false;
        if (this.#isJoined(one) !== this.#isJoined(other)) return this.#isJoined(one);
        if (this.#isJoined(one) && a.cutHeight.ticks !== b.cutHeight.ticks) return a.cutHeight > b.cutHeight;
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

    /** Border strips are cut after the top is measured. */
    #isBorderCut(index) {
        const nodes = this.solution.cutNodes(index);
        const inside = this.steps.findIndex((step) => step.node === this.design.centre);
        if (this.cuts[index].source !== "patch" || this.design.borders.length === 0 || inside < 0) return false;
        return this.steps.slice(inside + 1).some((_, i) =>
            this.feeds[inside + 1 + i].some((feed) => {
                const size = feed.step < 0 && nodes.includes(feed.node) && this.solution.size(feed.node);
                return size && size.finishedWidth.ticks !== size.finishedHeight.ticks;
            })
        );
    }

    #cutRow(index) {
        const cut = this.cuts[index];
        return {
            piece: this.piece[index],
            fabric: this.#cloth(cut.fabric),
            ...pick(
                cut,
                "cutWidth cutHeight count pieces spare source shape again hand pitch wideEdge narrowEdge warnings"
            ),
            joined: this.#isJoined(index),
            border: this.#isBorderCut(index),
            uses: this.#usesOf(index),
        };
    }

    /** The letters of the steps that a cut goes into. */
    #usesOf(index) {
        const nodes = this.solution.cutNodes(index);
        const uses = this.steps.filter(
            (step, i) =>
                (nodes.includes(step.node) && step.kind !== "segments") ||
                this.feeds[i].some((feed) => feed.step < 0 && nodes.includes(feed.node))
        );
        return uses.map((step) => this.#letter(step));
    }

    #cutOfPatch(node) {
        return this.cuts.findIndex(
            (cut, index) => cut.source === "patch" && this.solution.cutNodes(index).includes(node)
        );
    }

    #cutOfStrip(join, patch) {
        const size = this.solution.size(patch);
        const width = this.quilt.node(join).axis === "across" ? size.unfinishedWidth : size.unfinishedHeight;
        const { fabric } = this.quilt.readPatch(patch);
        return this.cuts.findIndex(
            (cut, index) =>
                cut.source === "setStrip" &&
                cut.fabric === fabric &&
                cut.cutHeight.ticks === width.ticks &&
                this.solution.cutNodes(index).includes(join)
        );
    }

    // ---- sewing ----

    #letter(step) {
        return this.muslin.sewingLabel(step.stack);
    }

    #letterOfNode(node) {
        const step = this.steps.findLast((one) => one.node === node);
        return step ? this.#letter(step) : "";
    }

    #nameOf(node) {
        const named = this.design.names.get(node);
        if (named)
            return (
                named.name +
                (named.side ? `, ${SIDE_NAMES[named.side]}` : "") +
                (named.log === 0 ? "" : named.log === 1 ? ", centre and log 1" : `, log ${named.log}`)
            );
        const { kind, axis } = this.quilt.node(node);
        if (this.design.unitKinds.has(node)) return UNIT_NAMES[this.design.unitKinds.get(node)] ?? "unit";
        return KIND_NAMES[kind] ?? (axis === "down" ? "rows joined" : "row");
    }

    #stepRow(step, index, seams) {
        const own = seams.filter((seam) => seam.node === step.node);
        const parts = this.feeds[index].map(({ node, step: from, each }) => {
            const cut =
                from >= 0 ? -1 : step.kind === "set" ? this.#cutOfStrip(step.node, node) : this.#cutOfPatch(node);
            return cut >= 0 ? { each, piece: this.piece[cut] } : { each, letter: this.#letterOfNode(node) };
        });
        return {
            letter: this.#letter(step),
            kind: step.kind,
            name: this.#nameOf(step.node),
            make: step.alike,
            isBlock: this.design.names.get(step.node)?.isBlock === true,
            unfinishedWidth: step.unfinishedWidth,
            unfinishedHeight: step.unfinishedHeight,
            parts,
            pressed: own.map((seam) => seam.press),
            otherWay: own[0]?.otherWay ?? 0,
        };
    }

    /** Strips of a mitred border lie over the seam that holds them, its mitres open: no plan decides it. */
    #pressedOutwards(seam) {
        const isMitred = this.design.borders.some((one) => one.corners === "mitred" && one.outside === seam.node);
        return isMitred ? { ...seam, press: ["left", "right", "up", "down"][seam.seam] ?? "open" } : seam;
    }

    #setRow(set) {
        const { axis } = this.quilt.node(set.node);
        const strips = this.quilt.children(set.node).map((child) => {
            const node = this.quilt.node(child).kind === "turn" ? this.quilt.children(child)[0] : child;
            const size = this.solution.size(child);
            return {
                fabric: this.#cloth(this.quilt.readPatch(node).fabric),
                width: axis === "across" ? size.unfinishedWidth : size.unfinishedHeight,
            };
        });
        const {
            strips: count,
            setUnfinished,
            segmentCut,
            stripLength,
            segments,
            segmentsPerSet,
            sets,
            spare,
            shorterBy,
            warnings,
        } = set;
        return {
            letter: this.#letterOfNode(set.node),
            name: this.#nameOf(set.node),
            strips,
            count,
            setUnfinished,
            segmentCut,
            stripLength,
            segments,
            segmentsPerSet,
            sets,
            spare,
            shorterBy,
            warnings,
        };
    }

    // ---- finishing ----

    #finish() {
        const { file } = this.design;
        return {
            binding: file.binding && this.#bind(file.binding),
            sleeve: file.sleeve && this.#hang(file.sleeve),
            bed: this.design.size.bed && this.#lay(this.design.size.bed),
            batting: file.batting && this.#pad(file.batting),
            backing: file.backing && this.#back(file.backing),
        };
    }

    #bind(value) {
        const { design, top } = this;
        const fabric = design.fabrics.find((one) => one.key === value.fabric);
        const bindingCut = design.length(value, "cut width", ["2 1/2 in", "6 cm"]);
        const plan = this.#ask("/binding", () =>
            this.muslin.bindingPlan({
                bindingCut,
                quiltWidth: top.finishedWidth,
                quiltLength: top.finishedHeight,
                stripLength: fabric.usableWidth,
                extra: design.length(value, "extra", ["12 in", "30 cm"]),
                allowance: design.allowance,
                step: design.buying.step,
                join: words.join[value.join] ?? "diagonal",
            })
        );
        if (!plan) return undefined;
        const length = "extra" in value ? plan.length : withoutStub(plan, fabric.usableWidth);
        this.extras.push({
            fabric: fabric.id,
            kind: "joined",
            cutWidth: length,
            cutLength: bindingCut,
            joinLoss: plan.lossPerJoin,
            count: this.tops,
            what: "binding",
        });
        return { ...plan, reckoned: length, bindingCut, fabric: this.#cloth(fabric.id) };
    }

    #hang(value) {
        const { design } = this;
        const fabric = design.fabrics.find((one) => one.key === value.fabric);
        const usual = (inches, metric) => design.length(undefined, "", [inches, metric]);
        const plan = this.#ask("/sleeve", () =>
            this.muslin.hangingPlan({
                quiltWidth: this.top.finishedWidth,
                sleeves: value.sleeves ?? 1,
                drop: design.length(value, "depth", ["4 in", "10 cm"]),
                inset: usual("1 in", "25 mm"),
                gap: usual("2 in", "50 mm"),
                ease: usual("1/2 in", "12 mm"),
                hem: usual("1 in", "25 mm"),
                allowance: design.allowance,
            })
        );
        if (!plan || plan.sleeves === 0) return undefined;
        const isLong = plan.sleeveCutLength > fabric.usableWidth;
        this.extras.push({
            fabric: fabric.id,
            kind: isLong ? "joined" : "piece",
            cutWidth: plan.sleeveCutLength,
            cutLength: plan.sleeveCutWidth,
            joinLoss: isLong ? design.allowance.times(2) : 0n,
            count: plan.sleeves * this.tops,
            what: "sleeve",
        });
        return { ...plan, fabric: this.#cloth(fabric.id) };
    }

    #lay(bed) {
        const place = pointerOf(placeIn(this.design.sizePlace ?? FILE, "bed"));
        return this.#ask(place, () =>
            this.muslin.bedCovered({
                quiltWidth: this.top.finishedWidth,
                quiltLength: this.top.finishedHeight,
                mattressWidth: bed.width,
                mattressLength: bed.length,
                mattressDepth: bed.depth ?? 0n,
            })
        );
    }

    #margins(value, usual) {
        const beyond = this.design.length(value, "beyond", usual);
        return {
            quiltWidth: this.top.finishedWidth,
            quiltLength: this.top.finishedHeight,
            marginLeft: beyond,
            marginRight: beyond,
            marginTop: beyond,
            marginBottom: beyond,
        };
    }

    #pad(value) {
        return this.#ask("/batting", () =>
            this.muslin.battingPlan({
                ...this.#margins(value, ["3 in", "8 cm"]),
                rollWidth: this.design.length(value, "roll width"),
            })
        );
    }

    /** A cloth of its own, or a fabric of the top: then as wide, and with its print, where nothing else is said. */
    #back(value) {
        const { design } = this;
        const fabric = design.fabrics.find((one) => one.key === value.fabric);
        const width =
            value.width === undefined && fabric
                ? fabric.usableWidth
                : design.length(value, "width", ["40 in", "100 cm"]);
        const spec = {
            ...this.#margins(value, ["4 in", "10 cm"]),
            fabricWidth: width,
            selvage: design.length(value, "selvage"),
            seam: design.length(value, "seam", ["1/2 in", "12 mm"]),
            repeat: design.length(value, "repeat"),
            step: design.buying.step,
            print: words.print[value.print] ?? fabric?.print ?? "none",
        };
        const layouts = this.#ask("/backing", () => this.muslin.backingLayouts(spec));
        if (!layouts) return undefined;
        const bought = this.#ask("/backing", () => this.#buyBacks(layouts.filter((layout) => layout.possible)));
        if (!bought) return undefined;
        const [best] = bought.toSorted(
            (a, b) => Number(a.bought.ticks - b.bought.ticks) || Number(a.seams - b.seams)
        );
        return {
            name: value.name ?? fabric?.name ?? null,
            best,
            layouts: bought,
            panels: this.muslin.backingPanels(best.layout, spec),
            width,
            seam: spec.seam,
        };
    }

    /** The layouts with the cloth that is bought for the backs of all tops, cut from one length. */
    #buyBacks(layouts) {
        const { step, extra, shrinkage } = this.design.buying;
        return layouts.map((layout) => {
            const needed = this.muslin.lengthDot([layout.clothLength, layout.clothWithRepeat], [this.tops - 1, 1]);
            return { ...layout, ...this.muslin.fabricPurchase({ needed, step, extra, shrinkage }) };
        });
    }

    // ---- all but the cloth ----

    /** Sizes, cuts, sets, sewing, pressing and finishing; the drawing of the top. */
    get facts() {
        const { design, solution } = this;
        const pressing = this.#ask("/pressing", () => new this.muslin.Pressing(solution, design.pressing));
        const seams = (pressing?.seams() ?? []).map((seam) => this.#pressedOutwards(seam));
        const facts = plain({
            top: this.top,
            tops: this.tops,
            totals: solution.totals(),
            grid: design.solve.grid,
            allowance: design.allowance,
            endTrim: design.solve.endTrim,
            fabrics: design.fabrics,
            cuts: this.order.map((index) => this.#cutRow(index)),
            sets: solution
                .stripsets()
                .filter((set) => set.used)
                .map((set) => this.#setRow(set)),
            steps: this.steps.map((step, index) => this.#stepRow(step, index, seams)),
            misfits: solution.misfits().map((misfit) => ({
                ...misfit,
                name: this.#nameOf(misfit.node),
                place: design.names.get(misfit.node)?.place ?? null,
            })),
            pressed: pressing?.totals(),
            sewn: solution.sewingTotals(INCH / 32n, 0n),
            ...this.finishing,
            working: { across: this.#working("across"), down: this.#working("down") },
        });
        pressing?.free();
        return { ...facts, drawing: this.#drawing(), complaints: this.complaints };
    }

    /** The sum that leads to the top's width or height, term by term. */
    #working(axis) {
        return this.solution.explain(this.design.top, axis).map(({ id, times, value, sum, kind, finished }) => ({
            times,
            value,
            sum,
            kind,
            finished,
            what: this.#termName(kind, id),
        }));
    }

    #termName(kind, id) {
        if (id === 0n) return "";
        if (this.muslin.idSort(id) === "node")
            return this.#cutOfPatch(id) >= 0 ? `piece ${this.piece[this.#cutOfPatch(id)]}` : this.#nameOf(id);
        try {
            return this.quilt.name(id);
        } catch {
            return "";
        }
    }

    /** One path for each fabric, and letters on large pieces, in units of which the longer side has DRAWN. */
    #drawing() {
        const { finishedWidth, finishedHeight, patches } = this.top;
        const [across, down] = [Number(finishedWidth.ticks), Number(finishedHeight.ticks)];
        const unit = DRAWN / Math.max(across, down);
        const drawing = { width: across * unit, height: down * unit, paths: [], letters: [], tooMany: 0 };
        if (patches > OUTLINES_MOST) return { ...drawing, tooMany: patches };
        const paths = this.design.fabrics.map(() => []);
        for (const { fabric, corners } of this.solution.outlines(this.design.top, "finished")) {
            const points = corners.map(({ x, y }) => [Number(x.ticks) * unit, (down - Number(y.ticks)) * unit]);
            if (points.length > 0)
                paths[this.#cloth(fabric)].push(`M${points.map((point) => point.map(shortly).join(" ")).join("L")}Z`);
            const room = roomIn(points);
            if (room > DRAWN / 40)
                drawing.letters.push({ x: middle(points, 0), y: middle(points, 1), fabric: this.#cloth(fabric), room });
        }
        drawing.letters = drawing.letters.sort((a, b) => b.room - a.room).slice(0, LETTERS_MOST);
        return { ...drawing, paths: paths.map((path) => path.join("")) };
    }

    // ---- cloth ----

    /** What to buy of each fabric and how it is cut up, with so much work; `progress` is told how the search stands. */
    cloth(workLimit, progress) {
        const buying = { ...this.design.buying, mitreExtra: this.mitreExtra };
        const limit = workLimit === undefined ? {} : { workLimit };
        const extras = this.extras.map(({ what: _, ...extra }) => extra);
        const yardage = this.#ask(
            (error) => this.#placeOfFabric(error),
            () => new this.muslin.Yardage(this.solution, extras, { ...buying, ...limit, progress })
        );
        if (!yardage) return { rows: [], complaints: this.complaints };
        const rows = yardage.fabrics().map((row, index) => {
            const fabric = this.design.fabrics[this.#cloth(row.fabric)];
            const fromStrips = fabric.stripCut.ticks > 0n ? this.#fromStrips(fabric, limit, progress) : undefined;
            const plan = fromStrips ?? yardage.plan(index);
            const { proven } = plan.totals();
            const fact = {
                ...plain({ ...row, proven, stripCut: fabric.stripCut, stripsHave: fabric.stripsHave }),
                fabric: this.#cloth(row.fabric),
                stripsNeeded: fromStrips?.totals().stockPieces ?? 0,
                topsGiven: fromStrips ? this.#topsGiven(fabric, limit) : 0,
                plan: this.#planOf(plan),
            };
            fromStrips?.free();
            return fact;
        });
        yardage.free();
        return { rows, complaints: this.complaints };
    }

    /** Where in the file the fabric stands of which no plan can be made, or what is to be cut from it. */
    #placeOfFabric({ at, argument, status, value }) {
        const isJoin = argument === "joinLoss";
        let id;
        try {
            id = this.quilt.id("fabric", at);
        } catch {
            return "/buying";
        }
        const ticks = (length) => length.ticks ?? length;
        const extra = this.extras.find(
            (cut) =>
                cut.fabric === id &&
                [cut.cutWidth, cut.cutLength, cut.joinLoss].some((length) => ticks(length) === BigInt(value))
        );
        if (extra && (isJoin || status === "noYield")) return `/${extra.what}`;
        return isJoin ? "/seam/allowance" : `/fabrics/${this.design.fabrics[this.#cloth(id)].key}`;
    }

    #planOf(plan) {
        const least = this.design.units === "in" ? 2n * INCH : 50n * TICKS_PER_MM;
        const label = (row) =>
            row < this.cuts.length ? `${this.piece[row]}` : (this.extras[row - this.cuts.length]?.what ?? "");
        const pieces = plan.pieces();
        return plain({
            strips: plan.strips(),
            places: plan.places().map((place) => {
                const row = pieces[place.piece].label,
                    cut = this.cuts[row];
                return {
                    ...place,
                    name: label(row),
                    shape: cut?.shape ?? "rectangle",
                    isSloped: cut !== undefined && cut.pitch.ticks > 0n,
                };
            }),
            leftOver: plan.leftOvers(least),
        });
    }

    /** A plan from strips as they are bought, as many as it takes. */
    #fromStrips(fabric, limit, progress, solution = this.solution, tops = this.tops) {
        const extras = this.extras
            .map((extra, index) => ({ ...extra, label: this.cuts.length + index }))
            .filter((extra) => extra.fabric === fabric.id)
            .map(({ cutWidth, cutLength, count, joinLoss, kind, label }) => ({
                cutWidth,
                cutLength,
                joinLoss,
                kind,
                label,
                count: Math.floor(count / this.tops) * tops,
            }));
        return this.#ask(
            `/fabrics/${fabric.key}`,
            () =>
                new this.muslin.Cutplan([...solution.yardagePieces(fabric.id, this.#buyingOf(fabric)), ...extras], {
                    firstCutAcross: true,
                    usableWidth: 0n,
                    print: fabric.print,
                    ...limit,
                    progress,
                    stock: [{ width: fabric.usableWidth, length: fabric.stripCut }],
                })
        );
    }

    /** How many tops the strips that there are suffice for. */
    #topsGiven(fabric, limit) {
        let given = 0;
        for (let tops = 1; fabric.stripsHave > 0 && tops <= TOPS_TRIED; tops++) {
            let solution, plan;
            try {
                solution = new this.muslin.Solution(this.quilt, this.design.top, { ...this.design.solve, tops });
                plan = this.#fromStrips(fabric, limit, undefined, solution, tops);
                if (!plan || plan.totals().stockPieces > fabric.stripsHave) break;
                given = tops;
            } catch (error) {
                if (error instanceof MuslinError) break;
                throw error;
            } finally {
                plan?.free();
                solution?.free();
            }
        }
        return given;
    }
}

/** A last strip of which the join takes more than half is not cut, where the others go round with enough to spare. */
function withoutStub(plan, strip) {
    const adds = strip.minus(plan.lossPerJoin),
        others = plan.joined.minus(adds);
    const isStub = plan.length.minus(others) < plan.lossPerJoin;
    return plan.joins > 0 && isStub && others.minus(plan.perimeter).ticks >= ENDS_LEAST ? others : plan.length;
}

const shortly = (number) => Math.round(number * 100) / 100;

/** How large a letter a drawn piece has room for. */
function roomIn(points) {
    const side = (axis) =>
        Math.max(...points.map((point) => point[axis])) - Math.min(...points.map((point) => point[axis]));
    return points.length === 0 ? 0 : Math.min(side(0), side(1));
}

/** The middle of a drawn piece, which is where its letter stands. */
function middle(points, axis) {
    return points.reduce((sum, point) => sum + point[axis], 0) / points.length;
}
