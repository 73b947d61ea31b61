// Elements made with the DOM alone: text is only ever set as text, so that nothing in a file becomes markup.
//
// SPDX-License-Identifier: MIT

const SVG = "http://www.w3.org/2000/svg";

function filled(element, attributes, children) {
    for (const [name, value] of Object.entries(attributes)) {
        if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
        else if (value === true) element.setAttribute(name, "");
        else if (value !== false && value !== undefined && value !== null) element.setAttribute(name, String(value));
    }
    element.append(...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== ""));
    return element;
}

/** An element of the page; attributes that begin with "on" are functions that listen. */
export function h(name, attributes = {}, ...children) {
    return filled(document.createElement(name), attributes, children);
}

/** An element of a drawing. */
export function s(name, attributes = {}, ...children) {
    return filled(document.createElementNS(SVG, name), attributes, children);
}

export function list(...items) {
    return h(
        "ul",
        {},
        items
            .flat()
            .filter(Boolean)
            .map((item) => h("li", {}, item))
    );
}

/** A table: heads that begin with "#" stand over numbers. The first cell of a row heads it. On a phone cells stand
 * below each other, each with its head; what is what is said by roles, which survive that. */
export function table(caption, heads, rows) {
    const isNumber = heads.map((head) => head.startsWith("#"));
    const cell = (value, index) =>
        h(
            index === 0 ? "th" : "td",
            {
                class: isNumber[index] && "number",
                scope: index === 0 && "row",
                role: index === 0 ? "rowheader" : "cell",
                "data-head": heads[index].replace("#", ""),
            },
            value
        );
    return wide(
        caption,
        h(
            "table",
            { role: "table" },
            h("caption", {}, caption),
            h(
                "thead",
                { role: "rowgroup" },
                h(
                    "tr",
                    { role: "row" },
                    heads.map((head, index) =>
                        h(
                            "th",
                            { scope: "col", role: "columnheader", class: isNumber[index] && "number" },
                            head.replace("#", "")
                        )
                    )
                )
            ),
            h(
                "tbody",
                { role: "rowgroup" },
                rows.map((row) => h("tr", { role: "row" }, row.map(cell)))
            )
        )
    );
}

const sizes = new ResizeObserver((changed) => changed.forEach(({ target }) => mind(target)));

/** What may be wider than the page, and is then moved sideways, with the keys too. */
export function wide(label, ...children) {
    const place = h("div", { class: "wide", role: "group", "aria-label": label }, children);
    sizes.observe(place); // also when what it lies in is unfolded
    return place;
}

function mind(place) {
    if (place.scrollWidth > place.clientWidth) place.tabIndex = 0;
    else place.removeAttribute("tabindex");
}

/** Only what is wider than its place is a stop for the keyboard. */
export function mindWide(within) {
    for (const place of within.querySelectorAll(".wide")) mind(place);
}

/** What unfolds, and stays as it was left when the page is written anew. */
const left = new Map();
export function unfolds(key, summary, ...children) {
    return h(
        "details",
        {
            open: left.get(key) === true,
            ontoggle: (event) => {
                left.set(key, event.target.open);
                mindWide(event.target);
            },
        },
        h("summary", {}, summary),
        children
    );
}

export function counted(number, one, many = `${one}s`) {
    return `${number.toLocaleString("en")}\u00a0${number === 1 ? one : many}`;
}

/** Gives text to the reader as a file. */
export function save(text, name) {
    const url = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    const link = h("a", { href: url, download: name });
    link.click();
    setTimeout(() => URL.revokeObjectURL(url), 10000);
}
