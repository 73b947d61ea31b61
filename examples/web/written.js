// A size of a pattern as a written pattern, part by part: items for the page to lay out and to show in units.
//
// SPDX-License-Identifier: MIT
import { between, by, caution, line, listed, point, say } from "./lines.js";
import { drawn } from "./outline.js";
import { borders } from "./write_borders.js";
import { cutList } from "./write_cuts.js";
import {
    backingWords,
    battingName,
    battingWords,
    bedWords,
    layers,
    otherLayouts,
    sleeveWords,
} from "./write_finishing.js";
import { pressing } from "./write_pressing.js";
import { stepWords } from "./write_steps.js";
import { working } from "./write_working.js";
import { nameOf, toBuy, word } from "./words.js";

const STEPS_TOLD = 400,
    STEPS_DRAWN = 60;

// ---- sewing ---------------------------------------------------------------------------------------------------------

const isBlock = (worked, { node, kind }) => worked.design.names.get(node)?.isBlock && kind !== "set";
const isUnit = ({ kind }) => kind === "unit" || kind === "shape";

/** Blocks of which there are more: one of each is finished before the rest of their parts; where there is none, units.
 */
const testBlocks = (worked) => worked.steps.filter((step) => isBlock(worked, step) && step.alike > 1);
const testUnits = (worked) =>
    testBlocks(worked).length > 0 ? [] : worked.steps.filter((step) => isUnit(step) && step.alike > 1);

/** "warm block A, 8 1/2 in x 8 1/2 in unfinished; cool block B, ..." */
const named = (worked, steps) =>
    between(
        steps.map((step) => {
            const size = by(step.unfinishedWidth, step.unfinishedHeight);
            return line`${nameOf(worked, step.node)} ${worked.letterOf(step.node)}, ${size} unfinished`;
        }),
        "; "
    );

/** Some are sewn before the rest of their parts are cut. */
function tests(worked) {
    const blocks = testBlocks(worked),
        units = testUnits(worked);
    const sets = worked.steps.some(({ kind }) => kind === "set");
    return [
        blocks.length > 0 &&
            point(
                line`Test block: first cut and sew what one block needs, step by step, and measure it: ${named(
                    worked,
                    blocks
                )}. It counts as one of those needed. ${
                    sets && "Of strip sets sew one of each for it, and keep what the block does not take. "
                }When it measures right, cut the rest, and sew all parts of a step in a chain.`
            ),
        units.length > 0 &&
            point(
                line`Test unit: first cut and sew as few of each unit as its step makes at a time, and measure them:
                    ${named(worked, units)}. They count as some of those needed. When they measure right, cut the rest,
                    and sew all parts of a step in a chain.`
            ),
    ].filter(Boolean);
}

/** What stars mean, where there are any. */
function starred(worked) {
    const others = [...worked.seams.values()].flat().filter((seam) => seam.otherWay > 0);
    return [
        others.some(({ other }) => other !== "turned") &&
            point(
                "A* is the same as A with all its seams, also those of its parts, pressed the other way, so that " +
                    "seams " +
                    "lie opposite ways where they meet: in A* a part B is a B*, and a B* is a B."
            ),
        others.some(({ other }) => other === "turned") &&
            point(
                "Where a step says that A* is turned, sew and press it like any A, with the same parts, and only " +
                    "turn " +
                    "it when it is sewn in: it looks the same, and its seams lie opposite ways to those they meet."
            ),
    ].filter(Boolean);
}

/** The steps that sew sets, blocks and their parts, or units where there are no blocks, the rest of the top, and its
 * borders. Blocks and units are drawn. */
function steps(worked) {
    const lastBlock = worked.steps.findLastIndex((step) => worked.design.names.get(step.node)?.isBlock);
    let draws = STEPS_DRAWN;
    const sections = { sets: [], blocks: [], top: [], borders: [] };
    worked.steps.slice(0, STEPS_TOLD).forEach((step, index) => {
        const isSet = step.kind === "set" || step.kind === "segments";
        const section =
            index >= worked.firstBorderStep
                ? "borders"
                : isSet
                  ? "sets"
                  : index <= lastBlock || (lastBlock < 0 && isUnit(step))
                    ? "blocks"
                    : "top";
        const isDrawn = (isUnit(step) || (isBlock(worked, step) && step.kind !== "segments")) && draws-- > 0;
        sections[section].push({
            letter: worked.letterOf(step.node),
            kind: step.kind,
            name: nameOf(worked, step.node),
            ...stepWords(worked, step),
            drawing: isDrawn ? drawn(worked, step.node) : undefined,
        });
    });
    return sections;
}

// ---- cloth, finishing, what is assumed ------------------------------------------------------------------------------

function onTheCloth({ design }) {
    const { straightening, longPieces } = design.buying;
    const isCounted = straightening.ticks > 0n;
    return [
        say(
            line`Strips go right across the cloth, the widest first. Fold the cloth lengthwise, selvage on selvage,
                and straighten its end square to the fold${
                    !isCounted && " (nothing is counted for that)"
                }. Cut strips through both layers, trim the selvages off and open each strip flat; then cut its pieces
            from the left end, in the order said. Sizes are cut sizes.${
                isCounted && line` For straightening the end ${straightening} is counted.`
            }`
        ),
        say(
            `Stacking pieces in one strip${
                longPieces === "joined" ? ", or cutting borders along the cloth," : ""
            } may need less.`
        ),
    ];
}

function finishing(worked) {
    const { backing, batting, sleeve, bed } = worked.finishing;
    const name = battingName(worked);
    return {
        backing: backing && backingWords(worked, backing),
        layouts: backing ? otherLayouts(backing.layouts, backing.best) : [],
        batting:
            batting &&
            battingWords({
                ...batting,
                backing,
                roll: toBuy(worked, batting.batting.joinedLength),
                tops: worked.tops,
            }),
        layers: backing && batting && layers(name),
        sleeve: sleeve && sleeveWords(worked, sleeve),
        bed: bed && bedWords(worked, bed, worked.design.size.bed),
    };
}

function assumed(worked) {
    const { endTrim, grid } = worked.design.solve;
    const { straightening } = worked.design.buying;
    const { allowance, takeUp } = worked.seam;
    const isTested = testBlocks(worked).length > 0;
    return [
        point(
            takeUp.ticks === 0n
                ? line`Seam allowance ${{ fine: allowance.ticks }}, a scant one, so that the fold is in it. It is
                    included in all sizes to cut and in all unfinished sizes.`
                : line`Seam allowance ${{ fine: allowance.ticks }}, as stitched; fold and thread of a pressed seam are
                    reckoned to take ${{
                        fine: takeUp.ticks,
                    }} more. Both are included in all sizes to cut and in all unfinished sizes.`
        ),
        point(
            "Every seam takes its allowance, fold included, and every piece is cut as said" +
                `${isTested ? ": the test block shows whether yours do" : ""}.`
        ),
        point("Cloth is usable over the width said from end to end, without flaws."),
        straightening.ticks > 0n && point(line`For straightening the end ${straightening} is counted.`),
        endTrim.ticks > 0n &&
            worked.sets.length > 0 &&
            point(line`Squaring takes ${endTrim} at each end of a strip set.`),
        !worked.solution.totals().exact &&
            point(
                line`Lengths on the slant are no whole fractions; cut sizes of triangles are brought to the next
                    ${grid}.`
            ),
    ].filter(Boolean);
}

function widths({ design }) {
    const sorts = new Map();
    for (const fabric of design.fabrics) {
        const key = `${fabric.usableWidth.ticks} ${fabric.stripCut.ticks}`;
        sorts.set(key, [...(sorts.get(key) ?? []), fabric]);
    }
    const own = design.file.words?.fabric ?? "fabric";
    return [...sorts.values()].map(([first, ...rest]) => {
        const names = listed([first, ...rest].map(({ name }) => name));
        return point(
            first.stripCut.ticks > 0n
                ? line`Strips, reckoned ${first.usableWidth} long, selvages off: ${names}. Do not wash strips before
                    they are sewn: they fray and lose their size.`
                : line`Cloth reckoned ${first.usableWidth} wide, selvages off, which is its "width of ${own}":
                    ${names}. Wash or steam test it first if you will wash the quilt.`
        );
    });
}

const hasSlant = ({ cuts }) =>
    cuts.some(({ again, pitch, source }) => again !== "no" || pitch.ticks > 0n || source === "template");

export function written(worked) {
    return {
        widths: widths(worked),
        borderCloth:
            worked.design.borders.length > 0
                ? [point("Lay cloth aside for border strips: they are cut after the top is measured.")]
                : [],
        fabricWord: word(worked, "fabric"),
        cutting: worked.design.fabrics.map((fabric) => cutList(worked, fabric)),
        onTheCloth: onTheCloth(worked),
        tests: tests(worked),
        starred: starred(worked),
        steps: steps(worked),
        borders: borders(worked),
        working: [working(worked)],
        pressing: pressing(worked),
        finishing: finishing(worked),
        assumed: assumed(worked),
        slant: hasSlant(worked)
            ? [caution("Edges that were cut on the slant (triangles, diamonds) stretch: press them without pushing.")]
            : [],
    };
}
