// Lengths as people write them, and as they are shown: on the marks of a ruler, inches or metric.
//
// SPDX-License-Identifier: MIT

const SIZE_MAX = 1n << 30n;
const TICKS_PER_MM = 320n;
const FINE_MOST = 500n * TICKS_PER_MM; // beyond this no one measures to half a millimetre
const INCH = 8128n;

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

function parsed(muslin, text, defaultUnit) {
    try {
        return muslin.lengthParse(text, { defaultUnit });
    } catch (error) {
        return { error };
    }
}

/** The Length that a text says, with its unit; undefined where it says none, which is then told. */
export function readLength(muslin, text, tell) {
    const inches = parsed(muslin, text, "inch");
    if (inches.error) {
        tell(inches.error.message);
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

    /** Cloth as shops cut it. */
    cloth(ticks) {
        if (!this.soldByMetre) return joined(this.#on(ticks, { style: "yardFraction", denominator: 8 }, "up").text);
        return joined(this.#on(ticks, { style: "cm", decimals: 0 }, "up").text);
    }

    /** Less than an inch, or 25 mm: near the edge. */
    isLittle(ticks) {
        return ticks < (this.units === "in" ? INCH : 25n * TICKS_PER_MM);
    }
}

function joined(text) {
    return text.replaceAll(" ", "\u00a0");
}
