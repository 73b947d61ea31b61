// Items of a written pattern as elements: paragraphs, lists with their leads, cautions, tables.
//
// SPDX-License-Identifier: MIT
import { h, table } from "./dom.js";

function row(shown, { lead, text }) {
    return h("li", { class: lead ? "led" : undefined }, lead ? h("b", {}, `${lead} `) : null, shown.line(text));
}

function tableOf(shown, { caption, heads, rows }) {
    return table(
        caption,
        heads,
        rows.map((cells) => cells.map((cell) => shown.line(cell)))
    );
}

/** Points one after the other are one list; those below a point are a list in it. */
export function items(shown, all) {
    const nodes = [];
    let list, last;
    for (const item of (all ?? []).filter(Boolean)) {
        if (item.kind === "point") {
            if (!list) nodes.push((list = h("ul", { class: "points" })));
            list.append((last = row(shown, item)));
        } else if (item.kind === "under" && last) {
            if (last.lastElementChild?.tagName !== "UL") last.append(h("ul", { class: "points" }));
            last.lastElementChild.append(row(shown, item));
        } else {
            list = last = undefined;
            nodes.push(
                item.kind === "table"
                    ? tableOf(shown, item)
                    : h("p", { class: item.kind === "caution" ? "caution" : undefined }, shown.line(item.text))
            );
        }
    }
    return nodes;
}
