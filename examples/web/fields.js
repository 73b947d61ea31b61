// Fields to fill in: each with its label, its note, and what is wrong with it beside it.
//
// SPDX-License-Identifier: MIT
import { h } from "./dom.js";
import { plainly } from "./view_complaints.js";

const GROUPS_FEW = 4;

/** Letters and digits that an id may have, of any name or pointer. */
export function idOf(name) {
    const letters = [...name].map((one) => (/[a-zA-Z0-9]/.test(one) ? one : `-${one.codePointAt(0).toString(16)}-`));
    return `field-${letters.join("")}`;
}

function describedBy({ note, kind }, id) {
    return [`${id}-wrong`, note && `${id}-note`, kind === "length" && `${id}-read`].filter(Boolean).join(" ");
}

function control(field, id, change) {
    const { kind, choices, value } = field;
    const shared = { id, name: id, "aria-describedby": describedBy(field, id) };
    if (kind === "choice")
        return h(
            "select",
            { ...shared, onchange: (event) => change(field, event.target.value) },
            Object.entries(choices).map(([key, label]) => h("option", { value: key, selected: key === value }, label))
        );
    if (kind === "switch")
        return h("input", {
            ...shared,
            type: "checkbox",
            checked: value !== "",
            onchange: (event) => change(field, event.target.checked ? "yes" : ""),
        });
    if (kind === "color")
        return h("input", { ...shared, type: "color", value, oninput: (event) => change(field, event.target.value) });
    return h("input", {
        ...shared,
        type: "text",
        value,
        autocomplete: "off",
        spellcheck: "false",
        maxlength: 200,
        inputmode: kind === "count" ? "numeric" : "text",
        oninput: (event) => change(field, event.target.value),
    });
}

const EXAMPLES = { in: '"2 1/2 in" or "0.75 in"', cm: '"2.5 cm"', mm: '"6 mm"' };

/** Of no use to quilters, who are told what is wrong. */
const LIMIT = /^(this is too large for a length: |a length is 0 or more, and )3\.3 km at most$/;

/** What is wrong with a field, as a full sentence: what it is called, what is in it, and what may be. A sentence that
 * is full says that itself. Lengths are in the unit that was typed, or else in the one chosen. */
export function fieldWords(label, { value, sentence }, shown) {
    const own = shown.inUnitsOf(value);
    if (/[.?!]$/.test(sentence)) return own.retold(sentence);
    const name = label.replace(/ \(.*\)$/, "");
    const typed = value.trim() === "" ? "is empty" : `is “${value.trim()}”`;
    const told = plainly(sentence)
        .replace(/write it like .*$/, `write it like ${EXAMPLES[own.units]}`)
        .replace(LIMIT, value.trim().startsWith("-") ? "a length is 0 or more" : "no quilt is that large");
    return `${name.startsWith("“") ? name : `“${name}”`} ${typed}: ${told}.`;
}

/** Fields in a part of the page, which stay the same elements as long as they ask the same. */
export class Fields {
    #shape;
    #fields = [];

    constructor(place) {
        this.place = place;
    }

    /** fields: { name, kind, label, value, note, choices, group }; change(field, text) is called with what is typed. */
    show(fields, change, ...more) {
        const shape = JSON.stringify(fields.map(({ value: _, ...field }) => field));
        this.#fields = fields;
        if (shape === this.#shape) {
            for (const field of fields) this.#set(field);
            return;
        }
        this.#shape = shape;
        const focused = document.activeElement?.id;
        this.place.replaceChildren(
            ...this.#grouped(
                fields,
                (field, text) => change(this.#fields.find((one) => one.name === field.name) ?? field, text),
                (name) => this.#settle(name)
            ),
            ...more
        );
        if (focused && focused !== document.activeElement?.id && this.place.querySelector(`#${CSS.escape(focused)}`))
            document.getElementById(focused).focus();
    }

    #grouped(fields, change, settle) {
        const groups = Map.groupBy ? Map.groupBy(fields, (field) => field.group) : grouped(fields);
        const nodes = [...groups]
            .map(([group, own]) =>
                group === undefined
                    ? own.map((field) => row(field, change, settle))
                    : h(
                          "fieldset",
                          {},
                          h("legend", {}, group),
                          own.map((field) => row(field, change, settle))
                      )
            )
            .flat();
        if (groups.size <= GROUPS_FEW) return nodes;
        const open = !matchMedia("(max-width: 36rem)").matches; // on a phone many fields would hide the answers
        return [h("details", { open }, h("summary", {}, `Change any of these ${groups.size}`), nodes)];
    }

    #set({ name, kind, value }) {
        const element = document.getElementById(idOf(name));
        if (kind === "switch") element.checked = value !== "";
        else if (element !== document.activeElement || !element.dataset.typed) element.value = value;
        this.#tellRead(element, kind, value);
    }

    /** While one types: how it is taken, with the unit that was left out. */
    #tellRead(element, kind, value) {
        const note = document.getElementById(`${element.id}-read`);
        if (kind === "length") note.textContent = element.value.trim() === value.trim() ? "" : `Taken as ${value}.`;
    }

    /** When one goes on, the field shows what was taken. */
    #settle(name) {
        const field = this.#fields.find((one) => one.name === name);
        delete document.getElementById(idOf(name)).dataset.typed;
        if (field) this.#set(field);
    }

    /** Sets all, also the one that is being typed in: after something was undone. */
    setAll() {
        for (const { name, kind, value } of this.#fields) {
            const element = document.getElementById(idOf(name));
            if (kind === "switch") element.checked = value !== "";
            else if (element.value !== value) element.value = value;
            this.#tellRead(element, kind, value);
        }
    }

    /** Tells beside each field what is wrong with it: { value, sentence } by name. */
    tell(wrong, shown) {
        for (const { name, label } of this.#fields) {
            const id = idOf(name),
                sentence = wrong.has(name) ? fieldWords(label, wrong.get(name), shown) : "";
            document.getElementById(`${id}-wrong`).textContent = sentence;
            document.getElementById(id).toggleAttribute("aria-invalid", sentence !== "");
            if (sentence !== "") {
                document.getElementById(id).setAttribute("aria-invalid", "true");
                document.getElementById(id).closest("details")?.setAttribute("open", "");
            }
        }
    }
}

function grouped(fields) {
    const groups = new Map();
    for (const field of fields) groups.set(field.group, [...(groups.get(field.group) ?? []), field]);
    return groups;
}

function row(field, change, settle) {
    const id = idOf(field.name);
    const typed = (own, text) => {
        document.getElementById(id).dataset.typed = "yes";
        change(own, text);
    };
    const label = h("label", { for: id }, field.label),
        input = control(field, id, typed);
    input.addEventListener("blur", () => settle(field.name));
    return h(
        "div",
        { class: `field ${field.kind}` },
        field.kind === "switch" ? [input, label] : [label, input],
        field.note ? h("p", { class: "note", id: `${id}-note` }, field.note) : null,
        field.kind === "length" ? h("p", { class: "note read", id: `${id}-read` }) : null,
        h("p", { class: "wrong", id: `${id}-wrong` })
    );
}
