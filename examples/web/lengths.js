// Lengths as people write them, and as they are shown: on the marks of a ruler, inches or metric.
//
// SPDX-License-Identifier: MIT

const SIZE_MAX = 1n << 30n;
const TICKS_PER_MM = 320n;
const FINE_MOST = 500n * TICKS_PER_MM; // beyond this no one measures to half a millimetre
const INCH = 8128n;

/** Lengths within a sentence. */
const LENGTHS = /(about )?(\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?) (in|cm|mm)\b/g;

/** The marks that one looks for, and the finer ones on which a length may lie exactly. */
const MARKS = {
    in: [
        { style: "inchFraction", denominator: 8 },
        { style: "inchFraction", denominator: 16 },
    ],
    cm: [
        { style: "cm", decimals: 1 },
        { style: "cm", decimals: 2 },
    ],
    mm: [
        { style: "mm", decimals: 0 },
        { style: "mm", decimals: 1 },
    ],
};

/** Grids to cut on, the usual one first: each finer one is tried where one before it gives less. */
const GRIDS = {
    in: ["1/8 in", "1/16 in", "1/32 in", "1/64 in"],
    mm: ["1 mm", "0.5 mm", "0.1 mm"],
};

/** Marks for what is small: the first that shows it exactly, or else the last. */
const FINE = {
    in: [
        { style: "inchFraction", denominator: 8 },
        { style: "inchFraction", denominator: 64 },
    ],
    mm: [
        { style: "mm", decimals: 0 },
        { style: "mm", decimals: 1 },
        { style: "mm", decimals: 2 },
    ],
};

function parsed(muslin, text, defaultUnit) {
    try {
        return muslin.lengthParse(text, { defaultUnit });
    } catch (error) {
        return { error };
    }
}

function whatIsWrong(text, { status }) {
    if (status === "overflow" || status === "range") return "this is too large for a length: 3.3 km at most";
    return text.includes(",")
        ? 'this is no length: write a point for the comma, "2.5 cm"'
        : 'this is no length: write it like "2 1/2 in", "0.75 in" or "6 mm"';
}

/** What is typed into a field as a file has it: with the unit chosen where it says none, and a point for a comma. */
export function completed(text, units) {
    const typed = text.trim().replace(/^(\d*),(\d+)(?=\D*$)/, "$1.$2");
    if (typed === "" || /[\p{L}"'″′]/u.test(typed)) return typed === text.trim() ? text : typed;
    return `${typed} ${units}`;
}

/** The Length that a text says, with its unit; undefined where it says none, which is then told. */
export function readLength(muslin, text, tell) {
    const inches = parsed(muslin, text, "inch");
    if (inches.error) {
        tell(whatIsWrong(text, inches.error));
        return undefined;
    }
    const millimetres = parsed(muslin, text, "mm"); // a number without a unit takes whatever it is offered
    if (!millimetres.error && millimetres.unit !== inches.unit) {
        const short = text.trim().slice(0, 40);
        tell(`this length has no unit: write "${short} in", "${short} cm" or "${short} mm"`);
        return undefined;
    }
    if (inches.value.ticks < 0n || inches.value.ticks > SIZE_MAX) {
        const hint = inches.value.ticks < 0n ? '; to take one away, add it with "times": -1' : "";
        tell(`a length is 0 or more, and 3.3 km at most${hint}`);
        return undefined;
    }
    return inches.value;
}

/** Whether cloth is sold by the metre: as the file says, and else by the units that lengths are shown in. */
export function soldByMetre(file, units) {
    return (file?.words?.["cloth sold by"] ?? (units === "in" ? "yard" : "metre")) === "metre";
}

/** Shows lengths in a unit: "in", "cm" or "mm". */
export class Shown {
    constructor(muslin, units, soldByMetre = units !== "in") {
        this.muslin = muslin;
        this.units = units;
        this.soldByMetre = soldByMetre;
    }

    #on(ticks, marks, direction) {
        return this.muslin.lengthFormat(ticks, { ...marks, direction });
    }

    #written(ticks, direction) {
        const [usual, finer] = MARKS[this.units];
        const first = this.#on(ticks, usual, direction);
        const isFine = this.units === "in" || ticks <= FINE_MOST;
        const second = first.exact || !isFine ? first : this.#on(ticks, finer, direction);
        return second.exact ? second : first;
    }

    /** "12 1/2 in", or "about 8 1/2 in" where it lies between two marks. No-break spaces hold it together. */
    length(ticks) {
        const { text, exact } = this.#written(ticks, "nearest");
        return joined(`${exact ? "" : "about "}${text}`);
    }

    atLeast(ticks) {
        return joined(this.#written(ticks, "up").text);
    }

    atMost(ticks) {
        return joined(this.#written(ticks, "down").text);
    }

    /** "12 1/2 in x 40 in" */
    size(width, height) {
        const across = this.#written(width, "nearest"),
            down = this.#written(height, "nearest");
        return joined(`${across.exact && down.exact ? "" : "about "}${across.text} x ${down.text}`);
    }

    /** The same with both on the marks that the finer of them takes, so that what is alike looks alike. */
    sizeAlike(width, height) {
        const [usual, finer] = MARKS[this.units];
        const isFiner = (ticks) => !this.#on(ticks, usual, "nearest").exact && this.#written(ticks, "nearest").exact;
        if (!isFiner(width) && !isFiner(height)) return this.size(width, height);
        const [across, down] = [width, height].map((ticks) => this.#on(ticks, finer, "nearest"));
        return joined(`${across.exact && down.exact ? "" : "about "}${across.text} x ${down.text}`);
    }

    sizeAtLeast(width, height) {
        return joined(`${this.#written(width, "up").text} x ${this.#written(height, "up").text}`);
    }

    /** The length, where it lies on a mark of the ruler; else the next of the usual marks. */
    toMark(ticks) {
        if (this.#written(ticks, "up").exact) return ticks;
        const grid = this.units === "in" ? "1/8 in" : "1 mm";
        return this.muslin.lengthSnap(ticks, { grid, direction: "up" }).value.ticks;
    }

    /** Where to cut what may be wider, never narrower: the length itself where it lies on a mark, else the next of the
     * usual marks, and then of finer ones. */
    marksFrom(ticks) {
        if (this.#written(ticks, "up").exact) return [ticks];
        return GRIDS[this.units === "in" ? "in" : "mm"].map(
            (grid) => this.muslin.lengthSnap(ticks, { grid, direction: "up" }).value.ticks
        );
    }

    /** A width on one of those marks, exactly; as finely as can be where it is sewn of such. */
    onMark(ticks) {
        const isFine = this.units === "cm" || this.#written(ticks, "nearest").exact;
        return isFine ? this.length(ticks) : this.fine(ticks);
    }

    /** A piece to cut that is not trimmed afterwards: on a fine mark of the ruler, never below its width. */
    cut(ticks) {
        if (this.#written(ticks, "up").exact) return this.length(ticks);
        const [usual, finer] = MARKS[this.units];
        return joined(this.#on(ticks, this.units === "in" ? finer : usual, "up").text);
    }

    /** A length between all marks, by its decimals. */
    between(ticks) {
        const style = this.units === "in" ? { style: "inchDecimal", decimals: 3 } : { style: this.units, decimals: 2 };
        return joined(`about ${this.#on(ticks, style, "nearest").text}`);
    }

    /** Something small, exactly where it can be: a seam allowance, to 1/64 in or to a hundredth of a millimetre. */
    fine(ticks) {
        const marks = this.units === "in" ? FINE.in : FINE.mm;
        const tried = marks.map((one) => this.#on(ticks, one, "nearest"));
        const { text, exact } = tried.find((one) => one.exact) ?? tried.at(-1);
        return joined(`${exact ? "" : "about "}${text}`);
    }

    /** Cloth as shops cut it: "1 3/8 yd" or "1.3 m". */
    cloth(ticks) {
        if (!this.soldByMetre) return joined(this.#on(ticks, { style: "yardFraction", denominator: 8 }, "up").text);
        return this.#metres(this.#on(ticks, { style: "cm", decimals: 0, bare: true }, "up").text);
    }

    #metres(centimetres) {
        return joined(`${Number(centimetres) / 100} m`);
    }

    /** Seams or thread, up to whole yards or metres. */
    inWhole(ticks) {
        if (!this.soldByMetre) return joined(this.#on(ticks, { style: "yardFraction", denominator: 1 }, "up").text);
        const whole = this.muslin.lengthSnap(ticks, { grid: "1 m", direction: "up" }).value;
        return this.cloth(whole.ticks);
    }

    /** The same in the unit of a text, if it has one. */
    inUnitsOf(text) {
        const [, unit = this.units] = /(in|cm|mm)\s*$/.exec(text) ?? [];
        return new Shown(this.muslin, unit);
    }

    /** A sentence of the library with its lengths in these units. */
    retold(sentence) {
        return sentence.replaceAll(LENGTHS, (told, about = "", number, unit) => {
            if (unit === this.units) return told;
            const { ticks } = this.muslin.lengthParse(`${number} ${unit}`).value;
            const length = ticks < INCH && this.units !== "cm" ? this.fine(ticks) : this.length(ticks);
            return `${length.startsWith("about") ? "" : about}${length}`;
        });
    }

    /** A package of batting: about whole centimetres where it was made in inches. */
    packaged(width, height) {
        if (this.units === "in") return this.size(width, height);
        const [across, down] = [width, height].map((one) => this.#on(one, { style: "cm", decimals: 0 }, "nearest"));
        return joined(`${across.exact && down.exact ? "" : "about "}${across.text} x ${down.text}`);
    }

    /** A line of a written pattern: texts, and lengths of some form. */
    line(pieces) {
        if (typeof pieces === "string") return pieces;
        return pieces.map((piece) => this.#piece(piece)).join("");
    }

    #piece(piece) {
        if (typeof piece === "string") return piece;
        if (typeof piece === "bigint") return this.length(piece);
        const [[form, value]] = Object.entries(piece);
        const forms = {
            by: () => this.size(...value),
            atLeastBy: () => this.sizeAtLeast(...value),
            atLeast: () => this.atLeast(value),
            atMost: () => this.atMost(value),
            fine: () => this.fine(value),
            bought: () => this.cloth(value),
            inWhole: () => this.inWhole(value),
            packaged: () => this.packaged(...value),
            either: () => joined(value[this.units === "in" ? 0 : 1]),
        };
        return forms[form]();
    }

    /** Less than that is nothing on a ruler: 1/8 in, or a millimetre. */
    isNothing(ticks) {
        return ticks < (this.units === "in" ? INCH / 8n : TICKS_PER_MM);
    }

    /** Less than an inch, or 25 mm: near the edge. */
    isLittle(ticks) {
        return ticks < (this.units === "in" ? INCH : 25n * TICKS_PER_MM);
    }
}

function joined(text) {
    return text.replaceAll(" ", "\u00a0");
}
