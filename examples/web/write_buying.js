// What to buy: a table of cloth and of what goes inside and behind, and where that is near its edge; as in
// ../pattern/write_buying.c.
//
// SPDX-License-Identifier: MIT
import { atLeast, atLeastBy, atMost, bought, by, caution, line, listed, packaged, plural, point } from "./lines.js";
import { toBuy } from "./words.js";
import { panelsOf } from "./write_finishing.js";

const INCH = 8128n,
    TICKS_PER_MM = 320n,
    FAT_QUARTER = 9n * INCH,
    TOPS_TRIED = 50;

// ---- rows -----------------------------------------------------------------------------------------------------------

function uses(worked, fabric) {
    const { binding, sleeve } = worked.finishing;
    return [
        worked.cuts.some((cut) => cut.fabric === fabric.id) && "top",
        binding && worked.design.fabrics[binding.fabric] === fabric && "binding",
        sleeve && worked.design.fabrics[sleeve.fabric] === fabric && "sleeve",
    ]
        .filter(Boolean)
        .join(", ");
}

function stripsRow(fabric, { stripsNeeded: needed }) {
    const have = fabric.stripsHave;
    const size = line` of ${by(fabric.usableWidth, fabric.stripCut)}`;
    const buy =
        have === 0
            ? line`${needed} strips${size}`
            : needed > have
              ? line`from your bundle: all ${have} strips${size}; ${needed - have} more are missing`
              : line`from your bundle: ${needed} strips${size}`;
    const spare = have >= needed ? `${have - needed} of ${have} strips` : have === 0 ? "none" : "too few";
    return [`${needed} strips`, buy, spare];
}

/** What is told as needed is on a mark of the ruler: what is told to be spare makes it up to what is bought. */
const spareBeside = (worked, needed, spare) => atMost(spare.plus(needed).minus(worked.shown.toMark(needed.ticks)));

const spareOf = (worked, needed, spare) =>
    worked.isNothing(spare) ? "none" : line`${spareBeside(worked, needed, spare)}`;

function clothRow(worked, row) {
    const fabric = worked.design.fabrics[row.fabric];
    const figures =
        fabric.stripCut.ticks > 0n
            ? stripsRow(fabric, row)
            : [
                  line`${atLeast(row.clothLength)}`,
                  line`${bought(row.bought)}`,
                  spareOf(worked, row.clothLength, row.spare),
              ];
    return { fabric: row.fabric, cells: [`${fabric.letter}, ${fabric.name}`, ...figures, uses(worked, fabric)] };
}

function backingRow(worked, { name, width, best }) {
    const { tops } = worked;
    const panels = `${panelsOf(best)}${best.pieces > best.panels ? `, ${best.pieces} pieces` : ""}`;
    return {
        cells: [
            line`backing${name && `: ${name}`}, ${width} wide`,
            line`${atLeast(best.needed)}`,
            line`${bought(best.bought)}`,
            spareOf(worked, best.needed, best.spare),
            tops > 1 ? `backs of all ${tops} quilts, of each: ${panels}` : `back of each quilt: ${panels}`,
        ],
    };
}

function battingRow(worked, { batting, rollWidth }, name) {
    const { tops } = worked;
    const size = atLeastBy(batting.width, batting.length);
    const pack = packaged(batting.packageWidth, batting.packageLength);
    const buy =
        batting.package >= 0
            ? tops > 1
                ? line`${tops} packages of ${pack}`
                : line`a package of ${pack}`
            : batting.joinedPieces > 0
              ? line`${toBuy(worked, batting.joinedLength.times(tops))} of the roll, ${rollWidth} wide`
              : "from a roll";
    return {
        cells: [
            name,
            tops > 1 ? line`${tops} pieces of ${size}` : line`${size}`,
            buy,
            "",
            tops > 1 ? `middle of all ${tops} quilts` : "middle of each quilt",
        ],
    };
}

// ---- near the edge --------------------------------------------------------------------------------------------------

function noSpare(worked, name, row, needed) {
    const isLittle = row.spare.ticks < (worked.isInches ? INCH : 25n * TICKS_PER_MM);
    const safer = bought(row.bought.plus(worked.design.buying.step));
    const left = worked.isNothing(row.spare) ? "nothing" : line`only ${spareBeside(worked, needed, row.spare)}`;
    return (
        isLittle &&
        caution(line`${name}: buy at least ${bought(row.bought)}: that leaves ${left} to spare, ${safer} is safer.`)
    );
}

/** Too few strips of one fabric are told; the fabric that gives the fewest tops says how many there are. */
function stripCounts(worked, rows) {
    const own = rows.filter((row) => row.stripCut.ticks > 0n && row.stripsHave > 0);
    if (own.length === 0) return [];
    const missing = own
        .filter((row) => row.stripsHave < row.stripsNeeded)
        .map((row) =>
            caution(
                `${worked.design.fabrics[row.fabric].name}: ${row.stripsNeeded} strips are needed, and there are ` +
                    `only ` +
                    `${row.stripsHave}: ${row.stripsNeeded - row.stripsHave} more are missing.`
            )
        );
    const fewest = Math.min(...own.map((row) => row.topsGiven));
    const isShared = own.some((row) => row.stripsNeeded * row.topsGiven > row.stripsHave);
    return [
        ...missing,
        fewest === 0
            ? caution("The strips that there are do not suffice for one top of this size.")
            : point(
                  `The strips that there are suffice for ${fewest} top${plural(fewest)} of this size` +
                      `${fewest === TOPS_TRIED ? " or more" : ""}` +
                      `${isShared ? ", cut together: what is short in the last set of one serves the next" : ""}.`
              ),
    ];
}

/** A quarter of a yard may lie in the shop as a fat quarter. */
function noQuarters(worked, rows) {
    const names = rows
        .filter((row) => row.bought.ticks <= FAT_QUARTER && row.stripCut.ticks === 0n)
        .map((row) => worked.design.fabrics[row.fabric].name);
    return names.length > 0 && point(line`${listed(names)}: off the bolt, no fat quarter: strips go right across it.`);
}

function added({ design }) {
    const { shrinkage, extra } = design.buying;
    return [
        point(
            shrinkage > 0
                ? `For shrinking along the cloth ${(shrinkage / 10000).toFixed(2)} per cent are counted: needed is ` +
                      `what ` +
                      "must be left after washing."
                : "Shrinkage is not counted: of cloth that will be washed first buy more."
        ),
        extra.ticks > 0n && point(line`${extra} more of each cloth is bought, for mistakes.`),
    ];
}

/** One cloth for front and back is bought in one length, where both are reckoned of one width. */
function sameCloth(worked, rows, backing) {
    const row = backing && rows.find((one) => one.fabric === backing.fabric);
    if (!row) return undefined;
    const { name, usableWidth } = worked.design.fabrics[row.fabric];
    return usableWidth.ticks === backing.width.ticks
        ? point(
              line`${name} is bought for the top and for the back: ${bought(
                  row.bought.plus(backing.best.bought)
              )} in all.`
          )
        : point(`${name} is bought for the top and for the back, of two widths: as two lengths.`);
}

/** { rows, items }: cells of the table, and what is said below it. */
export function buying(worked, rows, name) {
    const { backing, batting } = worked.finishing;
    const isJoined = batting && batting.batting.package < 0 && batting.batting.joinedPieces === 0;
    return {
        heads: ["What", "Needed", "Buy", "To spare", "For"],
        rows: [
            ...rows.map((row) => clothRow(worked, row)),
            backing && backingRow(worked, backing),
            batting && battingRow(worked, batting, name),
        ].filter(Boolean),
        items: [
            rows
                .filter((row) => row.stripCut.ticks === 0n)
                .map((row) => noSpare(worked, worked.design.fabrics[row.fabric].name, row, row.clothLength)),
            noQuarters(worked, rows),
            backing && noSpare(worked, "backing", backing.best, backing.best.needed),
            stripCounts(worked, rows),
            sameCloth(worked, rows, backing),
            isJoined &&
                point(`No usual package of ${name} is large enough: join pieces edge to edge, without overlapping.`),
            added(worked),
        ]
            .flat(2)
            .filter(Boolean),
    };
}
