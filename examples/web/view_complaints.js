// What is wrong with a pattern file, in sentences, with the place in the file behind.
//
// SPDX-License-Identifier: MIT
import { counted, h } from "./dom.js";

const SHOWN_MOST = 50;
const PARTS = {
    measures: "the measure",
    counts: "the count",
    fabrics: "the fabric",
    parts: "the part",
};
const MEMBERS = {
    muslin_pattern: "the first line, “muslin_pattern”",
    seam: "the seam",
    cutting: "the cutting",
    buying: "what is bought",
    pressing: "the pressing",
    top: "the top",
    tops: "how many tops",
    binding: "the binding",
    batting: "the batting",
    backing: "the backing",
    sleeve: "the sleeve",
    borders: "the borders",
    title: "the title",
};

/** "the measure “square” of size 2", "the width of border 1"; undefined for the file itself. */
function spoken(place) {
    const steps = place
        .split("/")
        .slice(1)
        .map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"));
    if (steps.length === 0) return undefined;
    const size = steps[0] === "sizes" && steps.length > 1 ? ` of size ${Number(steps[1]) + 1}` : "";
    const [first, second, ...rest] = size ? steps.slice(2) : steps;
    const last = [...rest].reverse().find((step) => !/^\d+$/.test(step));
    const own = last ? `“${last}” of ` : "";
    if (first === undefined) return `size ${Number(steps[1]) + 1}`;
    if (first === "borders" && second !== undefined) return `${own}border ${Number(second) + 1}${size}`;
    if (PARTS[first] && second !== undefined) return `${own}${PARTS[first]} “${second}”${size}`;
    const named = MEMBERS[first] ?? `“${first}”`;
    return second === undefined || /^\d+$/.test(second)
        ? `${own}${named}${size}`
        : `${last ? own : `“${second}” of `}${named}${size}`;
}

/** What a sentence says to a quilter, without what is for those who write files. */
export function plainly(sentence) {
    return sentence
        .replace(/; to take one away, add it with "times": -1$/, "")
        .replace(/number from (\d+) to 2147483647/, "number of $1 or more");
}

/** The sentence as a quilter is told it: what is no file at all needs other words than a place. */
export function complaintWords({ place, value, sentence: whole, line, column }) {
    const sentence = plainly(whole);
    if (line)
        return (
            "This is not a pattern file, or it was changed so that it cannot be read: at line " +
            `${line}, column ${column}, ${sentence.replace(/^this is not JSON: /, "")}.`
        );
    if (place === "/muslin_pattern")
        return "This pattern file is of another form than this page reads: “muslin_pattern” must be 1.";
    const where = spoken(place);
    const said = value === null || value === undefined ? "" : ` is ${value}`;
    if (!where) return `${sentence[0].toUpperCase()}${sentence.slice(1)}.`;
    return `${where[0].toUpperCase()}${where.slice(1)}${said}: ${sentence}${/[.?!]$/.test(sentence) ? "" : "."}`;
}

/** All that is wrong with a file, each with its place. */
export function complaintList(complaints) {
    const more = complaints.length - SHOWN_MOST;
    return h(
        "div",
        { class: "complaints", role: "group", "aria-label": "What is wrong with the pattern file" },
        h("p", {}, h("b", {}, `${counted(complaints.length, "thing")} must be mended in the pattern file:`)),
        h(
            "ul",
            {},
            complaints
                .slice(0, SHOWN_MOST)
                .map((one) =>
                    h(
                        "li",
                        {},
                        complaintWords(one),
                        one.place === "" ? null : [" (in the file: ", h("code", {}, one.place), ")"]
                    )
                )
        ),
        more > 0 ? h("p", {}, `And ${more} more.`) : null
    );
}
