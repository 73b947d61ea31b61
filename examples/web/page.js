// The page: what is typed becomes a new state; from the state follow the fields, the written pattern and the address.
//
// SPDX-License-Identifier: MIT
import { h, mindWide, save } from "./dom.js";
import { hatchings } from "./draw.js";
import { fieldsOf, withBorder, withField } from "./edit.js";
import { Fields, fieldWords, idOf } from "./fields.js";
import { completed, Shown, soldByMetre } from "./lengths.js";
import { load } from "./muslin/muslin.js";
import { Planner } from "./planner.js";
import { fromFragment, START, Steps, toFragment, UNITS } from "./state.js";
import { onMarks, planStrips, stripFields } from "./strips.js";
import { complaintList, complaintWords } from "./view_complaints.js";
import { patternSections, patternSummary } from "./view_pattern.js";
import { stripSections, summary } from "./view_strips.js";

const SECTIONS = ["materials", "cutting", "sets", "blocks", "top", "finishing"];
const LARGEST = 4 * 1024 * 1024,
    EDITED_MOST = 200 * 1024;
const TOLD_AFTER = 700,
    KEPT_AFTER = 300,
    READ_AFTER = 250; // milliseconds after the last change

const $ = (id) => document.getElementById(id);
const follows = (section) => document.querySelector(`#${section} .follows`);
const timers = new Map();

/** Later, and once: what was put off under this name before is not done. */
function later(name, wait, what) {
    clearTimeout(timers.get(name));
    timers.set(name, setTimeout(what, wait));
}

/** What stands in a file as it is typed: text without its quotation marks. */
const unquoted = (value) => (value ?? "").replace(/^"(.*)"$/, "$1");

/** To a part of the page: not by its address, which holds what was typed. */
function goTo(event) {
    const link = event.target.closest?.('a[href^="#"]');
    if (!link) return;
    event.preventDefault();
    const head = document.querySelector(`${link.getAttribute("href")} h2`);
    head.scrollIntoView();
    head.focus({ preventScroll: true });
}

/** On paper nothing is folded away; afterwards it is as it was. */
function unfoldAll(isPrinted) {
    for (const one of document.querySelectorAll("main .follows details")) {
        if (isPrinted && !one.open) one.dataset.folded = "yes";
        if (isPrinted) one.open = true;
        else if (one.dataset.folded) one.open = false;
        if (!isPrinted) delete one.dataset.folded;
    }
}

class Page {
    #fields = Object.fromEntries(
        SECTIONS.map((section) => [section, new Fields(document.querySelector(`#${section} > .say`))])
    );
    #written = ""; // the fragment that the page itself put into the address

    constructor(muslin, module, samples) {
        this.muslin = muslin;
        this.samples = samples;
        this.steps = new Steps(START);
        this.planner = new Planner(module, (message) => this.hear(message));
        this.file = undefined; // the last one that could be read, of which there are fields
        this.facts = this.cloth = undefined;
        this.complaints = [];
        this.write();
        addEventListener("hashchange", () => location.hash.slice(1) !== this.#written && this.openAddress());
        addEventListener("resize", () => later("wide", KEPT_AFTER, () => mindWide(document)));
        addEventListener("keydown", (event) => this.hearKeys(event));
        addEventListener("click", goTo);
        addEventListener("beforeprint", () => unfoldAll(true));
        addEventListener("afterprint", () => unfoldAll(false));
        $("stop").addEventListener("click", () => this.stop());
    }

    get state() {
        return this.steps.state;
    }

    /** Lengths are shown in the units that were chosen, and before that as the file says. */
    get units() {
        const { units, from } = this.state;
        return units ?? (from === "pattern" ? this.file?.units : undefined) ?? "in";
    }

    get soldByMetre() {
        return soldByMetre(this.state.from === "pattern" ? this.file : undefined, this.units);
    }

    // ---- what the reader does ----

    /** what: the field that was changed, which is marked where a complaint hangs on several. */
    take(change, what) {
        this.changed = what;
        this.steps.take({ ...this.state, ...change }, what);
        this.follow();
    }

    async openAddress() {
        try {
            const state = await fromFragment(location.hash);
            this.steps.take(state);
            this.follow(true);
        } catch (error) {
            this.say(`This address cannot be read: ${error.message}`);
        }
    }

    async openFile(input) {
        const [file] = input.files;
        if (!file) return;
        input.value = ""; // so that it may be opened again when it was changed
        if (file.size > LARGEST) {
            this.refuse(`“${file.name}” is larger than 4 MiB; no pattern is that long.`);
            return;
        }
        this.open(await file.text());
        $("title").focus();
    }

    async openSample(name) {
        try {
            const answer = await fetch(`patterns/${encodeURIComponent(name)}.json`);
            if (!answer.ok) throw new Error(answer.statusText);
            this.open(await answer.text());
        } catch (error) {
            this.refuse(`The sample “${name.replaceAll("-", " ")}” cannot be had now (${error.message}).`);
        }
        if ($("sample")) $("sample").value = "";
    }

    /** Nothing of the file before stays. */
    open(text) {
        this.forget("A pattern file");
        this.take({ from: "pattern", text, size: 0 });
    }

    forget(title) {
        this.facts = this.cloth = this.file = undefined;
        clearTimeout(timers.get("say"));
        document.title = $("title").textContent = title;
        $("complaints").replaceChildren();
        document.body.classList.remove("stale");
        if ($("size")) $("size").replaceChildren();
        for (const section of SECTIONS) this.#fields[section].show([]);
        this.empty();
    }

    empty() {
        this.show(Object.fromEntries(["plan", ...SECTIONS, "assumed"].map((section) => [section, []])));
    }

    refuse(sentence) {
        $("complaints").replaceChildren(h("p", { class: "wrong" }, sentence));
        this.followChoices();
        this.say(sentence);
    }

    hearKeys(event) {
        const isText = /^(textarea|text)$/.test(event.target.type ?? "");
        if (!(event.ctrlKey || event.metaKey) || event.altKey || isText || !/^[zy]$/i.test(event.key)) return;
        event.preventDefault();
        this.back(event.key.toLowerCase() === "y" || event.shiftKey);
    }

    back(isForward) {
        if (isForward ? !this.steps.canRedo : !this.steps.canUndo) return;
        if (isForward) this.steps.redo();
        else this.steps.undo();
        this.follow(true);
        this.say(isForward ? "Done again." : "Undone.");
    }

    /** Told to those who listen to the page. */
    say(sentence) {
        $("news").textContent = sentence;
    }

    // ---- what is planned ----

    write() {
        const { state } = this;
        const choice = (name, values, chosen, change) =>
            Object.entries(values).map(([value, label]) =>
                h(
                    "label",
                    { class: "choice" },
                    h("input", {
                        type: "radio",
                        name,
                        value,
                        checked: value === chosen,
                        onchange: () => change(value),
                    }),
                    label
                )
            );
        $("plan-say").replaceChildren(
            h(
                "fieldset",
                {},
                h("legend", {}, "Begin from"),
                choice("from", { strips: "a bundle of strips", pattern: "a pattern file" }, state.from, (from) =>
                    this.begin(from)
                )
            ),
            h(
                "fieldset",
                {},
                h("legend", {}, "Show lengths in"),
                choice("units", UNITS, this.units, (units) => this.take({ units })),
                h("p", { class: "note" }, "A number typed without a unit is taken in these.")
            ),
            h("div", { id: "opening" }),
            h(
                "p",
                { class: "deeds" },
                h("button", { type: "button", id: "undo", onclick: () => this.back(false) }, "Undo"),
                h("button", { type: "button", id: "redo", onclick: () => this.back(true) }, "Do again"),
                h("button", { type: "button", id: "copy", onclick: () => this.copy() }, "Copy this page’s address"),
                h(
                    "button",
                    { type: "button", id: "anew", onclick: () => this.take({ ...START, units: this.state.units }) },
                    "Begin anew"
                ),
                h("span", { id: "address-note" })
            )
        );
        document.body.append(hatchings());
        this.follow(true);
    }

    begin(from) {
        if (from === "pattern" && this.state.text === "") this.openSample(this.samples[0]);
        else this.take({ from });
    }

    async copy() {
        await this.keep();
        try {
            await navigator.clipboard.writeText(location.href);
            this.say("The address is copied: it holds all that you have typed.");
        } catch {
            this.say("Copy the address from the top of the browser: it holds all that you have typed.");
        }
    }

    /** Puts the state into the address. */
    async keep() {
        const { state } = this;
        const fragment = await toFragment(state);
        if (state !== this.state) return;
        $("address-note").textContent =
            fragment === undefined ? "This pattern is too long for an address: save its file instead." : "";
        this.#written = fragment ?? "";
        history.replaceState(null, "", fragment ? `#${fragment}` : location.pathname + location.search);
    }

    // ---- what follows ----

    follow(isAnew = false) {
        const { state } = this;
        this.followChoices();
        this.followOpening(isAnew);
        if (state.from === "strips") this.followStrips(isAnew);
        else this.followPattern(isAnew);
    }

    followChoices() {
        for (const input of document.querySelectorAll("input[type=radio]"))
            input.checked = input.value === (input.name === "units" ? this.units : this.state[input.name]);
        $("undo").disabled = !this.steps.canUndo;
        $("redo").disabled = !this.steps.canRedo;
        later("keep", KEPT_AFTER, () => this.keep());
    }

    fields(fields, change, isAnew, more = {}) {
        for (const section of SECTIONS) {
            this.#fields[section].show(
                fields.filter((field) => field.section === section),
                change,
                more[section] ?? []
            );
            if (isAnew) this.#fields[section].setAll();
        }
    }

    tell(wrong) {
        for (const section of SECTIONS) this.#fields[section].tell(wrong, this.shown());
    }

    show(sections) {
        for (const [section, nodes] of Object.entries(sections))
            follows(section).replaceChildren(...[nodes].flat(Infinity).filter(Boolean));
        later("wide", KEPT_AFTER, () => mindWide(document));
    }

    shown() {
        return new Shown(this.muslin, this.units, this.soldByMetre);
    }

    // ---- from strips ----

    followStrips(isAnew) {
        const usual = ({ metric, usual: own }) => (this.units !== "in" && metric) || own;
        const strips = {
            ...Object.fromEntries(stripFields.map((one) => [one.name, usual(one)])),
            ...this.state.strips,
        };
        this.planner.stop();
        $("complaints").replaceChildren();
        $("search").hidden = true;
        document.title = "A quilt from strips, worked out";
        $("title").textContent = "A quilt from strips, worked out";
        this.fields(
            stripFields.map((field) => ({ ...field, value: strips[field.name] })),
            (field, text) =>
                this.take({ strips: { ...this.state.strips, [field.name]: this.typed(field, text) } }, field.name),
            isAnew
        );
        const answer = planStrips(this.muslin, strips, this.changed);
        this.tell(new Map(answer.complaints.map((one) => [one.field, one])));
        document.body.classList.toggle("stale", answer.plan === undefined);
        const shown = this.shown();
        const told = this.toldFirst(answer.complaints, shown);
        if (answer.plan === undefined) {
            this.show({ plan: told("Below is what followed before.") });
            return;
        }
        const marked = onMarks(this.muslin, answer, (ticks) => shown.marksFrom(ticks));
        const sections = stripSections(this.muslin, shown, marked);
        later("say", TOLD_AFTER, () => this.say(summary(shown, marked)));
        this.show({ ...sections, plan: [told("What hangs on it is left out below."), sections.plan] });
    }

    /** Beside the headline and to those who listen: the first thing that is wrong, and what is below. */
    toldFirst([first], shown) {
        return (below) => {
            if (!first) return null;
            const { label } = stripFields.find(({ name }) => name === first.field);
            const told = fieldWords(label, first, shown);
            later("say", TOLD_AFTER, () => this.say(told));
            return h("p", { class: "wrong", id: "first-wrong" }, `${told} ${below}`);
        };
    }

    /** What is typed as it is kept: a length with its unit. */
    typed({ kind }, text) {
        return kind === "length" ? completed(text, this.units) : text;
    }

    // ---- from a pattern file ----

    followOpening(isAnew) {
        const { state } = this;
        if (state.from !== "pattern") {
            $("opening").replaceChildren();
            return;
        }
        if ($("file") === null) $("opening").replaceChildren(...this.opening());
        const text = $("text");
        if (text !== document.activeElement || isAnew) text.value = state.text.length > EDITED_MOST ? "" : state.text;
        $("text-note").textContent = state.text.length > EDITED_MOST ? "This file is too long to be changed here." : "";
    }

    opening() {
        return [
            h(
                "div",
                { class: "field" },
                h("label", { for: "file" }, "Open a pattern file"),
                h("input", {
                    type: "file",
                    id: "file",
                    accept: ".json,application/json",
                    onchange: (event) => this.openFile(event.target),
                })
            ),
            h(
                "div",
                { class: "field" },
                h("label", { for: "sample" }, "or an invented sample"),
                h(
                    "select",
                    { id: "sample", onchange: (event) => event.target.value && this.openSample(event.target.value) },
                    h("option", { value: "" }, "choose one"),
                    this.samples.map((name) => h("option", { value: name }, name.replaceAll("-", " ")))
                )
            ),
            h(
                "div",
                { class: "field" },
                h("label", { for: "size" }, "Size"),
                h("select", { id: "size", onchange: (event) => this.take({ size: Number(event.target.value) }) })
            ),
            h(
                "p",
                { class: "deeds" },
                h("button", { type: "button", id: "save", onclick: () => this.save() }, "Save the pattern file")
            ),
            h(
                "details",
                { id: "as-text" },
                h("summary", {}, "The pattern file as text"),
                h("label", { for: "text" }, "Its text, which may be changed here"),
                h("textarea", {
                    id: "text",
                    rows: 16,
                    spellcheck: "false",
                    autocomplete: "off",
                    "aria-describedby": "text-note",
                    oninput: (event) =>
                        later("text", READ_AFTER, () => this.take({ text: event.target.value }, "text")),
                }),
                h("p", { id: "text-note", class: "note" })
            ),
        ];
    }

    save() {
        const title = this.file?.title ?? "pattern";
        const name =
            title
                .toLowerCase()
                .replaceAll(/[^a-z0-9]+/g, "-")
                .replaceAll(/^-|-$/g, "")
                .slice(0, 60) || "pattern";
        save(this.state.text, `${name}.json`);
        this.say(`Saved as ${name}.json.`);
    }

    stop() {
        this.planner.stop();
        $("search").hidden = true;
        const sentence = this.facts
            ? "Stopped. What was found so far stands."
            : "Stopped before anything was found: this file asks for more than was worked out in that time.";
        if (!this.facts) follows("plan").replaceChildren(h("p", {}, sentence));
        this.say(sentence);
        $("title").focus();
    }

    followPattern(isAnew) {
        const { text, size, units } = this.state;
        if (this.file && !isAnew) this.patternFields(false);
        this.isAnew ||= isAnew;
        this.planner.ask(text, size, units);
        later("search", TOLD_AFTER, () => this.searching("Working it out …"));
    }

    patternFields(isAnew) {
        const fields = fieldsOf(this.file, this.state.size, this.soldByMetre, this.units);
        const deeds = h(
            "p",
            { class: "deeds" },
            h(
                "button",
                { type: "button", id: "border-more", onclick: () => this.edit((text) => withBorder(text, true)) },
                "One more border outside"
            ),
            h(
                "button",
                { type: "button", id: "border-less", onclick: () => this.edit((text) => withBorder(text, false)) },
                "Leave the outer border out"
            )
        );
        const change = (field, text) => {
            const typed = this.typed(field, text);
            this.edit((file) => withField(file, field, typed), field.name);
        };
        this.fields(fields, change, isAnew, { top: deeds });
    }

    edit(change, what) {
        try {
            this.take({ text: change(this.state.text) }, what);
        } catch (error) {
            this.refuse(`Mend the text of the file first: ${error.message}`);
        }
    }

    searching(sentence) {
        if (this.state.from !== "pattern" || $("search") === null) return;
        $("search-words").textContent = sentence;
        $("search").hidden = false;
    }

    hear(message) {
        if (this.state.from !== "pattern") return;
        if (message.phase !== "progress") clearTimeout(timers.get("search"));
        ({
            wrong: () => this.hearWrong(message),
            read: () => this.hearRead(message),
            sizes: () => this.hearSizes(message),
            cloth: () => this.hearCloth(message),
            done: () => {
                $("search").hidden = true;
            },
            progress: () =>
                this.searching(
                    `Looking for a plan with less cloth: ${Math.round(message.work / 1000000)} million steps so far.`
                ),
        })[message.phase]();
    }

    hearWrong({ complaints }) {
        $("search").hidden = true;
        document.body.classList.add("stale");
        if (!this.file) this.forget("A pattern file that cannot be read");
        else if (!this.facts) this.empty();
        document.body.classList.add("stale");
        $("complaints").replaceChildren(complaintList(complaints));
        this.mark(complaints);
        follows("plan").replaceChildren(
            h(
                "p",
                { class: "wrong" },
                this.facts ? "Below is what followed before." : "Nothing follows until that is mended."
            )
        );
        later("say", TOLD_AFTER, () =>
            this.say(`The pattern file cannot be worked out. ${complaintWords(complaints[0])}`)
        );
    }

    /** Complaints beside their fields; where none has one, beside the field that was changed last. */
    mark(complaints) {
        const told = new Map(
            complaints.map(({ place, value, sentence }) => [place, { value: unquoted(value), sentence }])
        );
        const isThere = complaints.some(({ place }) => document.getElementById(idOf(place)));
        const [first] = complaints;
        if (!isThere)
            told.set(this.changed ?? `${first.place}/usable width`, {
                value: unquoted(first.value),
                sentence: complaintWords(first),
            });
        this.tell(told);
    }

    /** What is wrong with a file of which the sizes came out. */
    complain(complaints) {
        if (complaints.length === 0) return;
        $("complaints").replaceChildren(complaintList(complaints));
        this.mark(complaints);
    }

    hearRead({ file, sizes }) {
        this.file = file;
        this.followChoices();
        const title = file.title + (file.invented ? " (invented)" : "");
        document.title = title;
        $("title").textContent = title;
        $("size").replaceChildren(
            ...sizes.map((name, index) =>
                h("option", { value: index, selected: index === Math.min(this.state.size, sizes.length - 1) }, name)
            )
        );
        this.patternFields(this.isAnew);
        this.isAnew = false;
        this.tell(new Map());
        $("complaints").replaceChildren();
    }

    hearSizes({ facts }) {
        document.body.classList.remove("stale");
        this.facts = facts;
        this.cloth = undefined;
        this.showPattern();
        this.complain(facts.complaints);
        later("say", TOLD_AFTER, () => this.say(patternSummary(this.shown(), facts)));
    }

    hearCloth({ cloth }) {
        this.cloth = cloth;
        this.complain(cloth.complaints);
        this.showPattern();
    }

    showPattern() {
        const { plan, ...sections } = patternSections(this.muslin, this.shown(), this.facts, this.cloth);
        const { story, by } = this.file;
        this.show({
            plan: [...(story ? [h("p", {}, story)] : []), ...(by ? [h("p", {}, `By ${by}.`)] : []), ...plan],
            ...sections,
        });
    }
}

/** Keeps all files for when there is no network. A new version that came in since is taken before anything is typed. */
async function keepForOffline() {
    const { serviceWorker } = navigator;
    if (!serviceWorker) return;
    const { waiting } = (await serviceWorker.getRegistration()) ?? {};
    if (waiting) {
        serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
        waiting.postMessage("take over");
    }
    await serviceWorker.register("offline.js");
}

async function begin() {
    const module = await WebAssembly.compileStreaming(fetch("muslin/muslin.wasm"));
    const [muslin, samples] = await Promise.all([
        load({ wasm: module }),
        fetch("patterns/list.json").then((list) => list.json()),
    ]);
    const page = new Page(muslin, module, samples);
    if (location.hash.length > 1) await page.openAddress();
    document.body.dataset.ready = "yes";
    await keepForOffline().catch(() => {}); // not everywhere: then only with a network
}

begin().catch((error) => {
    document
        .querySelector("main")
        .prepend(h("p", { class: "wrong", role: "alert" }, `This page cannot begin: ${error.message}`));
});
