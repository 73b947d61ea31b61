// Backing panel by panel, batting, layers, binding, sleeve, and how it lies on the bed; as in
// ../pattern/write_finishing.c.
//
// SPDX-License-Identifier: MIT
import { atLeast, atLeastBy, atMost, bought, by, caution, line, packaged, plural, point, say } from "./lines.js";
import { word } from "./words.js";

const LAYOUTS = {
    oneWidth: "one panel, its length along the quilt's length",
    oneWidthTurned: "one panel, its length along the quilt's width",
    seamsAlong: "panels side by side, seams along the quilt's length",
    seamsAcross: "panels one below the other, seams along its width",
    centreAlong: "a whole panel in the middle, equal sides, seams along the length",
    centreAcross: "a whole panel in the middle, equal sides, seams along the width",
    insertAlong: "one panel split lengthwise, an insert between its halves, seams along the length",
    insertAcross: "one panel split lengthwise, an insert between its halves, seams along the width",
};
const ROLES = { whole: "whole width", centre: "middle, whole width", side: "side", half: "half", insert: "insert" };

// ---- backing --------------------------------------------------------------------------------------------------------

export function panelTable(panels, tops = 1) {
    const what = "piece by piece in the order it is sewn";
    return {
        kind: "table",
        caption: tops > 1 ? `Backing of each quilt, ${what}` : `Backing, ${what}`,
        heads: ["#Place", "Piece", "How many", "Cut, across the cloth x along it"],
        rows: panels.map((panel) => [
            String(panel.position),
            ROLES[panel.role] ?? "panel",
            `${panel.count} piece${plural(panel.count)}`,
            panelSize(panel),
        ]),
    };
}

/** Sides are cut from a panel; all others are as wide as the cloth, or half of it. */
const panelSize = ({ role, cutWidth, cutLength }) =>
    line`${role === "side" ? atLeast(cutWidth) : cutWidth} x ${atLeast(cutLength)}`;

/** "2 panels"; "1 panel and an insert". */
export const panelsOf = ({ panels, layout }) =>
    `${panels} panel${plural(panels)}${layout.startsWith("insert") ? " and an insert" : ""}`;

/** An insert is cut across the cloth and turned; of several pieces it is joined before it is sewn in. */
function insertSewing({ layout }, { cutWidth, count }) {
    return [
        point(
            line`Turn the insert a quarter: the ${cutWidth} across the cloth run ${
                layout === "insertAlong" ? "down" : "across"
            } the quilt.`
        ),
        count > 1 &&
            point(`Join the ${count} pieces of the insert end to end first, and trim it to the length of the halves.`),
    ];
}

export function panelSewing({ best, panels, seam }) {
    return [
        ...panels.filter(({ role }) => role === "insert").flatMap((panel) => insertSewing(best, panel)),
        best.seams > 0 && point(line`Trim the selvages off, sew the pieces with ${seam} seams and press them open.`),
        best.seams > 0 && point(
                line`Sewn together it measures at least ${atLeastBy(best.joinedWidth, best.joinedLength)} unfinished.`
            ),
    ].filter(Boolean);
}

export const backingNeed = ({ best }) =>
    say(
        line`The back must measure at least ${atLeastBy(
            best.neededWidth,
            best.neededLength
        )}: it stands out beyond the quilt on every side until it is quilted.`
    );

export const backingEdge = (best, isNothing) =>
    isNothing
        ? caution("The cloth for the back must have its full width: any narrower, and this layout needs more.")
        : point(
              line`The cloth may be up to ${atMost(
                  best.narrowerBy
              )} narrower and what is bought still be enough; the pieces are then cut otherwise.`
          );

export const backingLeast = (best, tops = 1) =>
    point(
        line`Least cloth: ${LAYOUTS[best.layout]}. Buy ${bought(best.bought)}${tops > 1 && ` for all ${tops} quilts`}.`
    );

/** Cells of the layouts but the best: what, panels, what to buy. */
export const otherLayouts = (layouts, best) =>
    layouts
        .filter((one) => one.layout !== best.layout)
        .map((one) => [LAYOUTS[one.layout], panelsOf(one), line`${bought(one.bought)}`]);

export function backingWords(worked, backing) {
    const { best, panels } = backing;
    const { tops } = worked;
    return [
        backingNeed(backing),
        backingLeast(best, tops),
        panelTable(panels, tops),
        ...panelSewing(backing),
        backingEdge(best, worked.isNothing(best.narrowerBy)),
    ];
}

// ---- batting --------------------------------------------------------------------------------------------------------

/** Against the back, where there is one. */
function howFarOut({ width }, backing) {
    if (!backing) return "it stands out beyond the quilt on every side";
    const back = backing.best.neededWidth;
    if (width < back) return "it stands out beyond the quilt like the back, a little less";
    return width.ticks === back.ticks
        ? "it stands out beyond the quilt as far as the back"
        : "it stands out further than the back: trim it to that when they are layered";
}

export function battingWords({ batting, backing, rollWidth, roll, tops = 1 }) {
    const each = tops > 1 && " for each quilt";
    const along = batting.joinedTurned ? "across the quilt" : "along the quilt";
    return [
        point(line`Cut ${atLeastBy(batting.width, batting.length)}${each}: ${howFarOut(batting, backing)}.`),
        batting.package >= 0 &&
            point(
                line`A package of ${packaged(batting.packageWidth, batting.packageLength)} covers that${
                    batting.turned && ", turned a quarter"
                }.`
            ),
        batting.joinedPieces > 1 &&
            point(
                line`From the roll, ${rollWidth} wide: ${batting.joinedPieces} pieces laid edge to edge ${along}, sewn
                    without overlapping; ${roll} of the roll in all${each}.`
            ),
        batting.joinedPieces === 1 && point(line`From the roll, ${rollWidth} wide: one piece, ${roll} long${each}.`),
    ].filter(Boolean);
}

export function layers(name) {
    return [
        point(
            `Layer: spread the back on a flat floor or table, right side down and taut; on it the ${name}, and on ` +
                `that ` +
                "the top, right side up, pressed, in the middle of both."
        ),
        point("Baste: from the middle outwards, with long stitches or safety pins, a hand's breadth apart."),
        point(
            `Quilt: from the middle outwards, by hand or machine, no further apart than the maker of the ${name} ` +
                `says; ` +
                "then trim all layers even with the top."
        ),
    ];
}

// ---- binding --------------------------------------------------------------------------------------------------------

export const BINDING_SEWN = point(
    "Press the joins open and the strip in half lengthwise, right side out. When the quilt is quilted and trimmed, " +
        "sew " +
        "the raw edges of the binding to its front with the seam allowance, from the middle of a side; at a corner " +
        "stop " +
        "one seam allowance before the edge, fold the strip up and down again and go on. Join the ends, fold the " +
        "binding " +
        "over the edge and sew its fold down on the back, over the seam."
);

/** laid: { strips, together } as they are laid out for all tops. */
export function bindingWords({ binding, cut, reckoned, fabric, isSlanted = true, laid, tops = 1 }) {
    const { strips, together } = laid;
    const joins =
        strips > tops &&
        line`${strips - tops} join${plural(strips - tops)}${isSlanted && " on the slant"} take ${
            binding.lossPerJoin
        } each. `;
    return [
        fabric && point(`Of ${fabric}.`),
        point(
            line`${strips} strips cut ${cut} wide, ${together} together; ${joins}That makes ${reckoned}${
                tops > 1 && " for each quilt"
            }: ${binding.perimeter} round the quilt and ${reckoned.minus(
                binding.perimeter
            )} for the corners and for joining the ends.`
        ),
        BINDING_SEWN,
    ].filter(Boolean);
}

// ---- sleeve and bed -------------------------------------------------------------------------------------------------

export function sleeveWords(worked, sleeve) {
    const { sleeves, sleeveCutLength, sleeveCutWidth, sleeveFinished, isJoined } = sleeve;
    const name = worked.design.fabrics[sleeve.fabric].name;
    return [
        point(
            line`Of ${name} cut${worked.tops > 1 && " for each quilt"} ${sleeves} piece${plural(sleeves)} of ${by(
                sleeveCutLength,
                sleeveCutWidth
            )}${isJoined && ", joined from strips, as the cloth is not so wide"}; finished ${sleeveFinished} long${
                sleeves > 1 && " each"
            }.`
        ),
        point(
            "Hem the short ends, sew the long edges together to a tube, and sew it to the back below the upper " +
                "binding " +
                "by hand, along both folds, with a little slack towards you for the rod."
        ),
    ];
}

const drop = (length, where) =>
    length.ticks >= 0n ? line`${where} it hangs ${length}` : line`${where} it is ${-length.ticks} short of the edge`;

export function bedWords(worked, cover, bed) {
    const depth = bed.depth && worked.muslin.length(bed.depth).ticks > 0n && bed.depth;
    const isShort = depth && !cover.reachesDepth;
    return [
        point(
            line`In the middle of a mattress of
                ${by(worked.muslin.length(bed.width), worked.muslin.length(bed.length))}${
                    depth && line`, ${worked.muslin.length(depth)} deep`
                }, its upper edge at the head: ${drop(cover.sideDrop, "on each side")}${drop(
                    cover.footDrop,
                    ", at the foot"
                )}.`
        ),
        depth && cover.reachesDepth && point("It covers the mattress down to its lower edge."),
        isShort &&
            cover.shortWidth.ticks > 0n &&
            point(line`To cover the sides of the mattress it would have to be ${atLeast(cover.shortWidth)} wider.`),
        isShort &&
            cover.shortLength.ticks > 0n &&
            point(line`To cover its foot it would have to be ${atLeast(cover.shortLength)} longer.`),
        cover.cornerHang.ticks > 0n &&
            caution(
                line`At the foot the corners hang longer than the drop: ${
                    cover.cornerHang
                } below the top of the mattress. See that nobody trips over them.`
            ),
        point("Quilting takes up some of width and length: measure a quilted sample."),
    ].filter(Boolean);
}

export const battingName = (worked) => word(worked, "batting");
