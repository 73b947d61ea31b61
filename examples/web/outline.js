// The top, or a part of it, as a drawing: one path for each fabric, and letters on large pieces; its longer side has
// DRAWN units.
//
// SPDX-License-Identifier: MIT
const OUTLINES_MOST = 40000,
    LETTERS_MOST = 300,
    LETTER_ROOM = 20; // so many pieces in a row have room for a letter that can be read on a phone
export const DRAWN = 1000;

export function drawn({ design, solution, top }, node = design.top) {
    const { finishedWidth, finishedHeight } = solution.size(node);
    const { patches } = top;
    const [across, down] = [Number(finishedWidth.ticks), Number(finishedHeight.ticks)];
    const unit = DRAWN / Math.max(across, down);
    const drawing = { width: across * unit, height: down * unit, paths: [], letters: [], tooMany: 0 };
    if (patches > OUTLINES_MOST) return { ...drawing, tooMany: patches };
    const paths = design.fabrics.map(() => []);
    const number = new Map(design.fabrics.map(({ id }, index) => [id, index]));
    for (const { fabric, corners } of solution.outlines(node, "finished")) {
        const points = corners.map(({ x, y }) => [Number(x.ticks) * unit, (down - Number(y.ticks)) * unit]);
        const index = number.get(fabric);
        if (points.length > 0) paths[index].push(`M${points.map((point) => point.map(shortly).join(" ")).join("L")}Z`);
        const room = roomIn(points);
        if (room > DRAWN / LETTER_ROOM)
            drawing.letters.push({ x: middle(points, 0), y: middle(points, 1), fabric: index, room });
    }
    drawing.letters = drawing.letters.sort((a, b) => b.room - a.room).slice(0, LETTERS_MOST);
    return { ...drawing, paths: paths.map((path) => path.join("")) };
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
