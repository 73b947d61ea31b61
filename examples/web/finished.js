// What finishes a quilt of a pattern, as the library answers: binding, sleeve, batting, backing; the bed it lies on.
//
// SPDX-License-Identifier: MIT
import { words } from "./format.js";

const ENDS_LEAST = 10n * 8128n; // beyond the way round, for corners and joining the ends of a binding

/** All that the file asks for; binding and sleeve are noted as cuts of their fabrics. */
export function finish(worked) {
    const { file, size } = worked.design;
    return {
        binding: file.binding && bind(worked, file.binding),
        sleeve: file.sleeve && hang(worked, file.sleeve),
        bed: size.bed && lay(worked, size.bed),
        batting: file.batting && pad(worked, file.batting),
        backing: file.backing && back(worked, file.backing),
    };
}

/** The figures of it that the page draws with and that programs ask for. */
export function packed({ binding, batting, backing, bed, ...rest }) {
    return { binding, batting: batting?.batting, backing, bed, ...rest };
}

const fabricOf = (worked, key) => worked.design.fabrics.find((one) => one.key === key);

function bind(worked, value) {
    const { design, top } = worked;
    const fabric = fabricOf(worked, value.fabric);
    const bindingCut = design.length(value, "cut width", ["2 1/2 in", "6 cm"]);
    const join = words.join[value.join] ?? "diagonal";
    const plan = worked.ask("/binding", () =>
        worked.muslin.bindingPlan({
            bindingCut,
            quiltWidth: top.finishedWidth,
            quiltLength: top.finishedHeight,
            stripLength: fabric.usableWidth,
            extra: design.length(value, "extra", ["12 in", "30 cm"]),
            allowance: design.allowance,
            step: design.buying.step,
            join,
        })
    );
    if (!plan) return undefined;
    const reckoned = "extra" in value ? plan.length : withoutStub(plan, fabric.usableWidth);
    worked.extras.push({
        fabric: fabric.id,
        kind: "joined",
        cutWidth: reckoned,
        cutLength: bindingCut,
        joinLoss: plan.lossPerJoin,
        count: worked.tops,
        what: "binding",
    });
    return { ...plan, reckoned, bindingCut, isSlanted: join === "diagonal", fabric: worked.indexOf(fabric.id) };
}

/** A last strip of which the join takes more than half is not cut, where the others go round with enough to spare. */
function withoutStub(plan, strip) {
    const adds = strip.minus(plan.lossPerJoin),
        others = plan.joined.minus(adds);
    const isStub = plan.length.minus(others) < plan.lossPerJoin;
    return plan.joins > 0 && isStub && others.minus(plan.perimeter).ticks >= ENDS_LEAST ? others : plan.length;
}

function hang(worked, value) {
    const { design } = worked;
    const fabric = fabricOf(worked, value.fabric);
    const usual = (inches, metric) => design.length(undefined, "", [inches, metric]);
    const plan = worked.ask("/sleeve", () =>
        worked.muslin.hangingPlan({
            quiltWidth: worked.top.finishedWidth,
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
    const isJoined = plan.sleeveCutLength > fabric.usableWidth;
    worked.extras.push({
        fabric: fabric.id,
        kind: isJoined ? "joined" : "piece",
        cutWidth: plan.sleeveCutLength,
        cutLength: plan.sleeveCutWidth,
        joinLoss: isJoined ? design.allowance.times(2) : 0n,
        count: plan.sleeves * worked.tops,
        what: "sleeve",
    });
    return { ...plan, isJoined, fabric: worked.indexOf(fabric.id) };
}

function lay(worked, bed) {
    return worked.ask(worked.bedPlace, () =>
        worked.muslin.bedCovered({
            quiltWidth: worked.top.finishedWidth,
            quiltLength: worked.top.finishedHeight,
            mattressWidth: bed.width,
            mattressLength: bed.length,
            mattressDepth: bed.depth ?? 0n,
        })
    );
}

function margins({ design, top }, value, usual) {
    const beyond = design.length(value, "beyond", usual);
    return {
        quiltWidth: top.finishedWidth,
        quiltLength: top.finishedHeight,
        marginLeft: beyond,
        marginRight: beyond,
        marginTop: beyond,
        marginBottom: beyond,
    };
}

function pad(worked, value) {
    const rollWidth = worked.design.length(value, "roll width");
    const batting = worked.ask("/batting", () =>
        worked.muslin.battingPlan({ ...margins(worked, value, ["3 in", "8 cm"]), rollWidth })
    );
    return batting && { batting, rollWidth };
}

/** A cloth of its own, or a fabric of the top: then as wide, and with its print, where nothing else is said. */
function back(worked, value) {
    const { design } = worked;
    const fabric = fabricOf(worked, value.fabric);
    const width =
        value.width === undefined && fabric ? fabric.usableWidth : design.length(value, "width", ["40 in", "100 cm"]);
    const spec = {
        ...margins(worked, value, ["4 in", "10 cm"]),
        fabricWidth: width,
        selvage: design.length(value, "selvage"),
        allowance: design.length(value, "seam", ["1/2 in", "12 mm"]),
        repeat: design.length(value, "repeat"),
        step: design.buying.step,
        print: words.print[value.print] ?? fabric?.print ?? "none",
    };
    const layouts = worked.ask("/backing", () => worked.muslin.backingLayouts(spec));
    const bought =
        layouts &&
        worked.ask("/backing", () =>
            buyBacks(
                worked,
                layouts.filter((layout) => layout.possible)
            )
        );
    if (!bought) return undefined;
    const [best] = bought.toSorted((a, b) => Number(a.bought.ticks - b.bought.ticks) || Number(a.seams - b.seams));
    return {
        name: value.name ?? fabric?.name ?? null,
        isOfTop: fabric !== undefined,
        fabric: fabric ? worked.indexOf(fabric.id) : -1,
        best,
        layouts: bought,
        panels: worked.muslin.backingPanels(best.layout, spec),
        width,
        seam: spec.allowance,
    };
}

/** The layouts with the cloth that is bought for the backs of all tops, cut from one length. */
function buyBacks({ muslin, design, tops }, layouts) {
    const { step, extra, shrinkage } = design.buying;
    return layouts.map((layout) => {
        const needed = muslin.lengthDot([layout.clothLength, layout.clothWithRepeat], [tops - 1, 1]);
        return { ...layout, ...muslin.fabricPurchase({ needed, step, extra, shrinkage }) };
    });
}
