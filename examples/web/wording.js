// Words that both kinds of plan share: finishing, warnings, what is assumed.
//
// SPDX-License-Identifier: MIT
import { counted, h, list, table, unfolds } from "./dom.js";
import { drawBacking } from "./draw.js";

const LAYOUTS = {
    oneWidth: "one width along the quilt",
    oneWidthTurned: "one width across the quilt",
    seamsAlong: "seams along the quilt",
    seamsAcross: "seams across the quilt",
    centreAlong: "a whole width in the middle, seams along",
    centreAcross: "a whole width in the middle, seams across",
    insertAlong: "an insert along the quilt",
    insertAcross: "an insert across the quilt",
};

/** What the library warns of: told once each, as cautions. */
export function warned(muslin, ...warnings) {
    return [...new Set(warnings.flat())].map((warning) =>
        h("p", { class: "caution" }, muslin.warningSentence(warning))
    );
}

/** How near the edge: what may come out less before the answer changes. */
export function edge(shown, slack, what, instead) {
    if (slack === 0n)
        return h("p", { class: "caution" }, `Near the edge: ${what} must not be any shorter, or ${instead}.`);
    const sentence = `${what} may be ${shown.atMost(slack)} shorter before ${instead}.`;
    return h(
        "p",
        { class: shown.isLittle(slack) ? "caution" : undefined },
        shown.isLittle(slack) ? `Near the edge: ${sentence}` : sentence
    );
}

export function bindingWords(shown, binding, bindingCut, length = binding.length) {
    return list(
        `Binding: strips cut ${shown.length(bindingCut)} wide; ${shown.length(length)} of joined strip, for ` +
            `${shown.length(binding.perimeter)} round the finished quilt.`,
        `${counted(binding.strips, "strip")} from the cloth; each join takes ${shown.length(binding.lossPerJoin)}.`
    );
}

export function battingWords(shown, batting, word = "Batting") {
    return list(
        `${word}: cut ${shown.size(batting.width, batting.length)}.`,
        batting.package >= 0 &&
            `A package of ${shown.size(batting.packageWidth, batting.packageLength)} covers that` +
                `${batting.turned ? ", turned a quarter" : ""}.`,
        batting.joinedPieces > 1 &&
            `From the roll: ${counted(batting.joinedPieces, "piece")} side by side, ` +
                `${shown.cloth(batting.joinedLength)} in all.`
    );
}

export function backingWords(shown, backing, size) {
    const { best, layouts, panels, seam } = backing;
    return [
        list(
            `Backing: at least ${shown.size(best.neededWidth, best.neededLength)}, unfinished; buy ` +
                `${shown.cloth(best.bought)}` +
                `${backing.name ? ` of ${backing.name}` : ""} (${LAYOUTS[best.layout]}).`,
            panels.map(
                (panel, index) =>
                    `Panel ${index + 1}: ${panel.count > 1 ? `${panel.count} pieces, each ` : ""}cut ` +
                    `${shown.size(panel.cutWidth, panel.cutLength)}.`
            ),
            best.seams > 0 &&
                `Sew them with ${shown.length(seam)} seams, pressed open: ` +
                    `${shown.size(best.joinedWidth, best.joinedLength)} unfinished.`
        ),
        edge(shown, best.narrowerBy, "The cloth for the back", "this layout needs more").textContent.replace(
            "shorter",
            "narrower"
        ),
        drawBacking(backing, size, shown, "The backing, panel by panel, with the quilt on it"),
        layouts.length > 1
            ? unfolds(
                  "backing",
                  "Other ways to cut the backing",
                  table(
                      "Backing layouts",
                      ["Layout", "#Panels", "#Buy"],
                      layouts.map((layout) => [LAYOUTS[layout.layout], layout.panels, shown.cloth(layout.bought)])
                  )
              )
            : null,
    ];
}
