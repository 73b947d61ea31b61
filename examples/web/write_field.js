// Blocks on point: which squares and triangles make up each diagonal row, and how all is pressed and trimmed; as in
// ../pattern/write_field.c.
//
// Blocks, alternates and seams are numbered as quilt.h and pressing.h say. In diagonal row `line`, from columns - 1 in
// the upper right to 1 - rows in the lower left, lie the blocks whose column less row is `line`, and the alternates.
//
// SPDX-License-Identifier: MIT
import { line, listed, point, runs, under } from "./lines.js";
import { capital, partAgain, sash, sashes, word } from "./words.js";

const ROWS_TOLD = 200,
    BLOCKS_TOLD = 400;
const ALONG_ROW = { left: "towards the upper left", right: "towards the lower right" };

// ---- rows -----------------------------------------------------------------------------------------------------------

/** The blocks of a row, by number, from the upper left. */
function rowOf({ columns, rows }, diagonal) {
    const blocks = [];
    for (let j = Math.max(0, -diagonal), i = j + diagonal; i < columns && j < rows; i++, j++) {
        blocks.push(i + j * columns);
        if (i + 1 < columns && j + 1 < rows) blocks.push(columns * rows + i + j * (columns - 1));
    }
    return blocks;
}

/** The letter or number of a block, and its fabric. */
function blockName(worked, part) {
    const cut = worked.cutOfPatch(part.node);
    return cut < 0
        ? partAgain(worked, { ...part, mirrored: false })
        : `[${worked.piece[cut]}] ${worked.fabricName(worked.cuts[cut].fabric)}`;
}

/** The two longest rows have a corner of the top at one end. */
function rowWords({ worked, spec, parts, hasSashes }, diagonal) {
    const own = sash(worked);
    const blocks = rowOf(spec, diagonal).map((block) => blockName(worked, parts[block]));
    const hasEnds = hasSashes && spec.layout !== "sashInner";
    return [
        ...(diagonal === 0 ? [] : ["side triangle"]),
        ...(hasEnds ? [own] : []),
        ...blocks.flatMap((block, i) => (i > 0 && hasSashes ? [own, block] : [block])),
        ...(hasEnds ? [own] : []),
        ...(diagonal === spec.columns - spec.rows ? [] : ["side triangle"]),
    ].join("; ");
}

function rowsTold(field) {
    const { columns, rows } = field.spec;
    if (columns * rows > BLOCKS_TOLD) return [];
    return Array.from({ length: Math.min(columns + rows - 1, ROWS_TOLD) }, (_, index) =>
        under(`${rowWords(field, columns - 1 - index)}.`, `Diagonal row ${index + 1}:`)
    );
}

// ---- pressing -------------------------------------------------------------------------------------------------------

/** Main blocks and the alternates take turns, and triangles lie beside main blocks alone. */
function pressedWithin({ worked, spec, parts, seams, within }) {
    const mains = spec.columns * spec.rows;
    const toMain = Array.from({ length: within }, (_, i) => seams[i].towards === (i + 1 < mains ? "second" : "first"));
    const isOne = parts
        .slice(0, within + 3 - spec.columns - spec.rows)
        .every((part, i) => i === 0 || (part.node === parts[0].node) === i < mains);
    return isOne && toMain.every((one) => one === toMain[0])
        ? `Press the seams within rows ${toMain[0] ? "towards" : "away from"} ${blockName(worked, parts[0])}`
        : undefined;
}

/** Seams within a diagonal row, by number, from its upper left end: at the left of each block, of which the field's
 * first has none, then of the triangle that closes the row. */
function seamsOfRow({ spec, blocks }, diagonal) {
    const { columns, rows } = spec;
    const own = rowOf(spec, diagonal);
    const last = own.at(-1),
        column = last % columns,
        row = Math.floor(last / columns);
    const closing = blocks - 1 + (column === columns - 1 ? row : rows - 1 + column);
    return [
        ...own.filter((block) => block > 0).map((block) => block - 1),
        ...(diagonal === columns - rows ? [] : [closing]),
    ];
}

/** "seams 1 to 2 towards the lower right; seam 3 towards the upper left." */
function pressedRow(field, diagonal) {
    const seams = seamsOfRow(field, diagonal).map((seam) => field.seams[seam]);
    const way = ({ press }) => ALONG_ROW[press] ?? "open";
    const takeTurns =
        seams.length > 2 &&
        seams[0].press !== seams[1].press &&
        seams.every((seam, i) => i < 2 || seam.press === seams[i - 2].press);
    if (takeTurns) return `seams 1, 3 and so on ${way(seams[0])}; seams 2, 4 and so on ${way(seams[1])}.`;
    const told = runs(seams, (a, b) => a.press === b.press).map(({ first, count }) => {
        const which =
            count === seams.length
                ? "all"
                : count === 1
                  ? `seam ${first + 1}`
                  : `seams ${first + 1} to ${first + count}`;
        return `${which} ${way(seams[first])}`;
    });
    return told.length > 0 && `${told.join("; ")}.`;
}

function pressedRows(field) {
    const { columns, rows } = field.spec;
    return [
        point("Within rows, the seams counted from the upper left end of the row:"),
        ...Array.from({ length: Math.min(columns + rows - 1, ROWS_TOLD) }, (_, index) => {
            const told = pressedRow(field, columns - 1 - index);
            return told && under(told, `Row ${index + 1}:`);
        }).filter(Boolean),
    ];
}

/** Then the seams below each row, from the upper right, and those of the corners. */
function pressed(field) {
    const { spec, seams, within } = field;
    const count = spec.columns + spec.rows - 2;
    const rows = seams.slice(within, within + count);
    const told = runs(rows, (a, b) => a.press === b.press).map(({ first, count: times }) => {
        const which = times === count ? "all" : `${first === 0 ? "" : ", "}the next ${times}`;
        const side = rows[first].press === "right" ? "before (upper right)" : "after (lower left)";
        return `${which} towards the row ${side}`;
    });
    const corners = ["upper left", "lower right", "upper right", "lower left"].map((corner, i) => {
        const toRows = ["right", "left", "left", "right"][i];
        return `${corner} one towards the ${seams[within + count + i].press === toRows ? "rows" : "triangle"}`;
    });
    const ofRows = count > 0 ? `; of those between rows, from row 1 on, ${told.join("")}` : "";
    const inRows = pressedWithin(field);
    return [
        point(
            `${inRows ?? "Press the seams within rows as said below"}${ofRows}; of the corners the ` +
                `${listed(corners).join("")}.`
        ),
        ...(inRows ? [] : pressedRows(field)),
    ];
}

// ---- pieces of the field --------------------------------------------------------------------------------------------

function triangles({ worked, node }) {
    return worked.cuts
        .flatMap((cut, i) =>
            cut.source === "setting" && cut.again !== "no" && worked.isCutFor(i, node)
                ? [`${cut.again === "twice" ? "Side" : "Corner"} triangles are [${worked.piece[i]}]. `]
                : []
        )
        .join("");
}

/** Patches that follow the blocks: the sash that lies, the one that stands, the cornerstone. */
function sashPieces({ worked, node, parts, blocks }) {
    const own = parts.slice(blocks).flatMap((part, i) => {
        const { finishedWidth, finishedHeight } = worked.solution.size(part.node);
        const cut = worked.cutOfPatch(part.node);
        const isSquare = finishedWidth.ticks === finishedHeight.ticks;
        if (cut < 0 || (i > 0 && !isSquare)) return [];
        return [
            `${isSquare ? `${capital(word(worked, "cornerstone"))}s` : `The ${sashes(worked)}`} are ` +
                `[${worked.piece[cut]}]. `,
        ];
    });
    const cutOff = worked.cuts.flatMap((cut, i) =>
        cut.source === "mitred" && worked.isCutFor(i, node)
            ? [`The ${sashes(worked)} that the edge cuts off are [${worked.piece[i]}]. `]
            : []
    );
    return [...own, ...cutOff].join("");
}

// ---- all ------------------------------------------------------------------------------------------------------------

function sewing(field) {
    const { worked, spec, hasSashes } = field;
    if (!hasSashes)
        return [
            point(
                "Sew each row, then the rows to each other in their order, last the four corner triangles: those at " +
                    "the upper left and lower right, which close the longest rows, before the others."
            ),
            ...pressed(field),
        ];
    const outside = spec.layout === "sashInner" ? "" : ", and outside the first and the last one,";
    return [
        point(
            line`Between two rows of blocks${outside} lies a row of ${sashes(worked)}, with a
                ${word(worked, "cornerstone")} between every two of them. Sew the rows of blocks and those rows, then
                all rows to each other in their order, last the four corner triangles.`
        ),
    ];
}

function trim({ worked, spec }) {
    const { policy, trimRoom: room, grid } = worked.design.solve;
    const { allowance } = worked.seam;
    const edge = spec.setOff
        ? line`The blocks float: trim the sides square at the corners, so that the blocks' points lie
            ${worked.solution.value(spec.setOff)} and one seam allowance inside the edge. `
        : line`Trim the sides to ${allowance} beyond the blocks' points, square at the corners${
              policy === "exact" &&
              line`; triangles are cut at the next ${grid} above the need, so that there is little or nothing to trim`
          }. `;
    return line`${edge}${
        policy === "oversize" &&
        room.ticks > 0n &&
        line`Setting triangles are cut larger than they need be, by ${room}, to be trimmed. `
    }Lay a side triangle with its right angle flush with the corner of the block, so that what is over hangs out
    beyond the row; lay the middle of a corner triangle's long side on the middle of the row's end. Side triangles
    were cut twice: their long side, on the outside, lies on the straight grain, their short sides stretch. Corner
    triangles were cut once: their two short sides, on the outside, lie on the straight grain; the long side, which
    you sew, stretches.`;
}

export function field(worked, { node }) {
    const spec = worked.quilt.readDiagonal(node);
    const { columns, rows } = spec;
    const blocks = columns * rows + (columns - 1) * (rows - 1);
    const own = {
        worked,
        node,
        spec,
        blocks,
        parts: worked.partsOf(node),
        seams: worked.seamsOf(node),
        hasSashes: spec.layout !== "plain",
        within: blocks - 1 + columns - 1 + rows - 1,
    };
    return [
        point(
            `${triangles(own)}${sashPieces(own)}Lay all out as drawn. Each row runs down to the right; the first ` +
                `is in ` +
                "the upper right corner. Each block is turned an eighth turn (45 degrees) to the right, its upper " +
                "edge " +
                "facing the upper right."
        ),
        ...rowsTold(own),
        ...sewing(own),
        point(trim(own)),
    ];
}
