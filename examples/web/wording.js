// What the library warns of, as both kinds of plan tell it.
//
// SPDX-License-Identifier: MIT
import { h } from "./dom.js";

/** Told once each, as cautions. */
export function warned(muslin, ...warnings) {
    return [...new Set(warnings.flat())].map((warning) =>
        h("p", { class: "caution" }, muslin.warningSentence(warning))
    );
}
