// What to buy of each fabric of a pattern and how it is cut up: from the bolt, or from strips as they are bought.
//
// SPDX-License-Identifier: MIT
import { MuslinError } from "./muslin/muslin.js";
import { by, line, plural, point, say } from "./lines.js";
import { battingName, bindingWords } from "./write_finishing.js";
import { buying } from "./write_buying.js";
import { bindingStrips, layout } from "./write_layout.js";

const INCH = 8128n,
    TICKS_PER_MM = 320n;
const TOPS_TRIED = 50;

export class ClothPlans {
    constructor(worked, workLimit, progress) {
        this.worked = worked;
        this.limit = workLimit === undefined ? {} : { workLimit };
        this.progress = progress;
    }

    /** Rows of what is bought with their plans, and what is written of them. */
    get facts() {
        const { worked } = this;
        const { complaints } = worked;
        const buyingSpec = { ...worked.design.buying, mitreExtra: worked.mitreExtra };
        const extras = worked.extras.map(({ what: _, ...extra }) => extra);
        const yardage = worked.ask(
            (error) => this.#placeOfFabric(error),
            () =>
                new worked.muslin.Yardage(worked.solution, extras, {
                    ...buyingSpec,
                    ...this.limit,
                    progress: this.progress,
                })
        );
        if (!yardage) return { rows: [], complaints };
        const rows = yardage.fabrics().map((row, index) => this.#row(row, () => yardage.plan(index)));
        yardage.free();
        if (rows.includes(undefined)) return { rows: [], complaints };
        return {
            rows: rows.map(({ laid, ...row }) => ({ ...row, plan: this.#named(row.plan) })),
            complaints,
            ...this.#written(rows),
        };
    }

    #row(row, planned) {
        const { worked } = this;
        const fabric = worked.clothOf(row.fabric);
        const fromStrips =
            fabric.stripCut.ticks > 0n ? this.#fromStrips(fabric, worked.solution, worked.tops) : undefined;
        if (fabric.stripCut.ticks > 0n && !fromStrips) return undefined; // what is wrong is told
        const plan = fromStrips ?? planned();
        const fact = {
            ...row,
            proven: plan.totals().proven,
            stripCut: fabric.stripCut,
            stripsHave: fabric.stripsHave,
            fabric: worked.indexOf(row.fabric),
            stripsNeeded: fromStrips?.totals().stockPieces ?? 0,
            topsGiven: fromStrips ? this.#topsGiven(fabric) : 0,
            plan: {
                strips: plan.strips(),
                places: plan.places(),
                pieces: plan.pieces(),
                leftOver: plan.leftOvers(worked.isInches ? 2n * INCH : 50n * TICKS_PER_MM),
            },
        };
        fromStrips?.free();
        return { ...fact, laid: layout(worked, fabric, fact, fact.plan) };
    }

    /** Where in the file the fabric stands of which no plan can be made, or what is to be cut from it. */
    #placeOfFabric({ at, argument, status, value }) {
        const { worked } = this;
        const isJoin = argument === "joinLoss";
        let id;
        try {
            id = worked.quilt.id("fabric", at);
        } catch {
            return "/buying";
        }
        const ticks = (length) => length.ticks ?? length;
        const extra = worked.extras.find(
            (cut) =>
                cut.fabric === id &&
                [cut.cutWidth, cut.cutLength, cut.joinLoss].some((length) => ticks(length) === BigInt(value))
        );
        if (extra && (isJoin || status === "noYield")) return `/${extra.what}`;
        return isJoin ? "/seam/allowance" : `/fabrics/${worked.clothOf(id).key}`;
    }

    /** Places with the numbers of their pieces, for the drawing. */
    #named({ strips, places, pieces, leftOver }) {
        const { cuts, extras, piece } = this.worked;
        const named = places.map((place) => {
            const { label } = pieces[place.piece],
                cut = cuts[label];
            return {
                ...place,
                name: cut ? `${piece[label]}` : (extras[label - cuts.length]?.what ?? ""),
                shape: cut?.shape ?? "rectangle",
                isSloped: cut !== undefined && cut.pitch.ticks > 0n,
            };
        });
        return { strips, places: named, leftOver };
    }

    // ---- from strips ----

    /** A plan from strips as they are bought, as many as it takes. */
    #fromStrips(fabric, solution, tops) {
        const { worked } = this;
        const extras = worked.extras
            .map((extra, index) => ({ ...extra, label: worked.cuts.length + index }))
            .filter((extra) => extra.fabric === fabric.id)
            .map(({ cutWidth, cutLength, count, joinLoss, kind, label }) => ({
                cutWidth,
                cutLength,
                joinLoss,
                kind,
                label,
                count: Math.floor(count / worked.tops) * tops,
            }));
        return worked.ask(
            `/fabrics/${fabric.key}`,
            () =>
                new worked.muslin.Cutplan([...solution.yardagePieces(fabric.id, worked.buyingOf(fabric)), ...extras], {
                    firstCutAcross: true,
                    usableWidth: 0n,
                    print: fabric.print,
                    ...this.limit,
                    progress: this.progress,
                    stock: [{ width: fabric.usableWidth, length: fabric.stripCut }],
                })
        );
    }

    /** How many tops the strips that there are suffice for. */
    #topsGiven(fabric) {
        const { muslin, quilt, design } = this.worked;
        let given = 0;
        for (let tops = 1; fabric.stripsHave > 0 && tops <= TOPS_TRIED; tops++) {
            let solution, plan;
            try {
                solution = new muslin.Solution(quilt, design.top, { ...design.solve, tops });
                plan = this.#fromStrips(fabric, solution, tops);
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

    // ---- in words ----

    #written(rows) {
        const { worked } = this;
        const { binding, sleeve } = worked.finishing;
        const fabrics = worked.design.fabrics;
        const laid = bindingStrips(
            worked,
            rows.map((row) => ({ plan: row.plan, fabric: fabrics[row.fabric] }))
        );
        return {
            layouts: rows.map(({ laid: words }) => words ?? null),
            whole: wholeStrips(rows.filter(({ laid: words }) => !words).map(({ fabric }) => fabrics[fabric].name)),
            extraCuts: [
                binding && { fabric: binding.fabric, item: bindingCut(laid, binding) },
                sleeve && { fabric: sleeve.fabric, item: sleeveCut(sleeve, worked.tops) },
            ].filter(Boolean),
            binding:
                binding &&
                bindingWords({
                    binding,
                    cut: binding.bindingCut,
                    reckoned: binding.reckoned,
                    fabric: fabrics[binding.fabric].name,
                    isSlanted: binding.isSlanted,
                    laid,
                    tops: worked.tops,
                }),
            buying: buying(worked, rows, battingName(worked)),
        };
    }
}

const wholeStrips = (names) =>
    names.length === 0
        ? []
        : [say(`Strips that are taken whole and not cut before they are sewn into sets: ${names.join(", ")}.`)];

const bindingCut = ({ strips, together }, binding) =>
    point(line`Binding: cut ${strips} strip${plural(strips)} ${binding.bindingCut} wide, ${together} together.`);

function sleeveCut({ sleeves, sleeveCutLength, sleeveCutWidth, isJoined }, tops) {
    const count = sleeves * tops;
    return point(
        line`Hanging sleeve: cut ${count} piece${plural(count)} at ${by(sleeveCutLength, sleeveCutWidth)}${
            isJoined && ", joined from strips"
        }.`
    );
}
