// How a unit is made, sentence by sentence, as the library tells it; as in ../pattern/write_recipe.c.
//
// SPDX-License-Identifier: MIT
import { caution, fine, line, listed, plural, point, under } from "./lines.js";
import { PRESSED } from "./words.js";

const SHAPES = {
    diamonds: "diamond",
    hexagons: "hexagon",
    trapezoids: "trapezoid",
    wedges: "wedge",
    octagons: "octagon",
};
const PLACES = [
    ["upper left", "upper", "upper right"],
    ["left", "middle", "right"],
    ["lower left", "lower", "lower right"],
];

/** Wanted are those of the first hand and those of the other: mirror images, or what is made as the second hand. */
function read(worked, node) {
    const { muslin, solution, design } = worked;
    const unit = design.unitNodes.get(node);
    const size = solution.size(node);
    const value = (measure) => (measure ? solution.value(measure) : 0n);
    const hasHands = unit.kind === "halfRectangle" || unit.kind === "splitQuarter";
    const isSecond = hasHands && unit.isMirrored;
    const mirrored = hasHands ? size.mirrored : 0;
    const { policy, trimRoom, grid, tip, direction } = design.solve;
    const spec = {
        kind: unit.kind,
        method: unit.method,
        finishedWidth: value(unit.width),
        finishedHeight: value(unit.height),
        corner: value(unit.corner),
        ...worked.seam,
        grid,
        policy,
        tip,
        direction,
        trimRoom: policy === "oversize" ? trimRoom : 0n,
        units: isSecond ? mirrored : size.count - mirrored,
        mirrored: isSecond ? size.count - mirrored : mirrored,
    };
    const [plan, pieces, steps] = [muslin.unitRecipe(spec), muslin.unitPieces(spec), muslin.unitSteps(spec)];
    return { worked, unit, plan, pieces, steps, isFree: design.pressing.units === false };
}

// ---- pieces ---------------------------------------------------------------------------------------------------------

const fabricOf = (recipe, region) => recipe.unit.fabrics[region - 1];
const nameOfFabric = (recipe, region) => recipe.worked.fabricName(fabricOf(recipe, region));

/** The number of a piece of the recipe in the cut list. */
function numberOf(recipe, piece) {
    const { worked } = recipe;
    const is = (a, b) => a.ticks === b.ticks;
    const found = worked.cuts.findIndex(
        (cut) =>
            cut.source === "unit" &&
            cut.fabric === fabricOf(recipe, piece.region) &&
            cut.again === piece.again &&
            cut.shape === piece.shape &&
            cut.hand === piece.hand &&
            ((is(cut.cutWidth, piece.cutWidth) && is(cut.cutHeight, piece.cutHeight)) ||
                (is(cut.cutWidth, piece.cutHeight) && is(cut.cutHeight, piece.cutWidth)))
    );
    return found < 0 ? 0 : worked.piece[found];
}

function shapeOf(piece) {
    if (piece.again === "once" || piece.again === "twice") return "triangle";
    if (piece.shape === "rectangle") return piece.cutWidth.ticks === piece.cutHeight.ticks ? "square" : "rectangle";
    return SHAPES[piece.shape] ?? "triangle";
}

function takes(recipe) {
    const { plan, pieces } = recipe;
    const recipes = plan.recipes + plan.mirroredRecipes;
    const rows = pieces.map((piece) => {
        const count = piece.count * piece.gives;
        return (
            `${count} ${shapeOf(piece)}${plural(count)} [${numberOf(recipe, piece)}] ` +
            nameOfFabric(recipe, piece.region)
        );
    });
    return line`${plan.unitsPerRecipe === 1 ? "For each take " : `For ${plan.unitsPerRecipe} at a time take `}${listed(
        rows
    )}${recipes > 1 && `; ${recipes} times in all`}${
        plan.spareUnits > 0 && `, which makes ${plan.spareUnits} more than needed`
    }.`;
}

// ---- sentences ------------------------------------------------------------------------------------------------------

function pieceWords(recipe, row, isAnother) {
    const piece = recipe.pieces[row - 1];
    if (!piece) return "the part sewn so far";
    const name = nameOfFabric(recipe, piece.region);
    return `${isAnother ? "another" : "a"} ${name} ${shapeOf(piece)} [${numberOf(recipe, piece)}]`;
}

/** Where seams are pressed as it nests, the recipe does not say which way; a fabric has a name here. */
function sentenceOf(recipe, step) {
    if (step.step === "pressTo")
        return recipe.isFree ? "Press the seam as said at the end." : "Press the seam towards {region}.";
    return recipe.worked.muslin.unitStepSentence(step.step);
}

/** A seam is told as finely as it is sewn. */
const isSeam = ({ worked }, measure) => measure?.ticks === worked.seam.allowance.ticks;

function sentence(recipe, step) {
    const places = {
        piece: () => pieceWords(recipe, step.piece, false),
        other: () => pieceWords(recipe, step.other, step.other === step.piece),
        measure: () => (isSeam(recipe, step.measure) ? fine(step.measure) : step.measure),
        measure_height: () => step.measureHeight,
        from_corner: () => step.fromCorner,
        region: () => nameOfFabric(recipe, step.region),
        angle: () => step.angle,
    };
    const words = sentenceOf(recipe, step)
        .split(/[{}]/)
        .map((text, i) => (i % 2 ? places[text]() : text));
    return line`${words}${step.times > 1 && ` (${step.times} times)`}`;
}

// ---- how it lies ----------------------------------------------------------------------------------------------------

/** How it lies when nothing is said of turning. */
function lies(recipe) {
    const [first, second] = [1, 2].map((region) => nameOfFabric(recipe, region));
    const rises = recipe.unit.isMirrored ? "falls" : "rises";
    return {
        halfSquare: `Not turned, its seam rises to the right, with ${first} below and ${second} above.`,
        halfRectangle: `Not turned, its seam ${rises} to the right, with ${first} below and ${second} above.`,
        quarterSquare: `Not turned, it has ${first} at bottom and top, ${second} at left and right.`,
        flyingGeese: `Not turned, the ${first} triangle points up.`,
    }[recipe.unit.kind];
}

/** Of a seam within the unit: where its middle lies. */
function whereLies({ plan }, seam) {
    const side = (sum, whole) => (sum.ticks < whole.ticks ? -1 : sum.ticks > whole.ticks ? 1 : 0);
    const column = side(seam.fromX.plus(seam.toX), plan.finishedWidth);
    return PLACES[1 - side(seam.fromY.plus(seam.toY), plan.finishedHeight)][1 + column];
}

/** Which way the plan has the seams of the unit, where it is not its recipe that says so. */
function pressedFree(recipe, node) {
    const { worked } = recipe;
    const seams = worked.seamsOf(node);
    if (!recipe.isFree || seams.length === 0) return undefined;
    const told =
        seams.length === 1
            ? `its seam ${PRESSED[seams[0].press]}`
            : listed(seams.map((seam) => `the ${whereLies(recipe, seam)} seam ${PRESSED[seam.press]}`));
    const starred = seams[0].otherWay > 0 && seams[0].other === "pressed";
    return line`Press, as ${worked.letterOf(node)} lies not turned, ${told}${
        starred && "; of the starred ones all the other way"
    }.`;
}

export function recipe(worked, { node }) {
    const own = read(worked, node);
    const steps = own.steps.filter(({ step }) => step !== "cutSlanted" && step !== "cutTurning"); // of the cut list
    return [
        point(takes(own)),
        ...steps.map((step, index) => under(sentence(own, step), `${index + 1})`)),
        own.plan.biasOutside &&
            caution(
                "Outer edges of this unit were cut on the slant and stretch: press it without pushing, and handle it " +
                    "little."
            ),
        lies(own) && point(lies(own)),
        pressedFree(own, node) && point(pressedFree(own, node)),
    ].filter(Boolean);
}
