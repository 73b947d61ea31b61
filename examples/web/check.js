// Whether a file is what the tables of format.js say: all that is wrong is told, each with its place.
//
// SPDX-License-Identifier: MIT
import { FILE, nearest, placeIn } from "./complaints.js";
import { measureForm, nodeForm, theFile } from "./format.js";
import { readLength } from "./lengths.js";

const DEEPEST = 200;
const NAME_WANTED = "a name has small letters, digits, blanks and hyphens, a letter first, and at most 40 of them";

const isList = Array.isArray;
const isObject = (value) => typeof value === "object" && value !== null && !isList(value);
const lengthOf = (value) => (isList(value) ? value.length : 0);
const isName = (text) => /^[a-z][a-z0-9 _-]{0,39}$/.test(text);
const members = (value) => (isObject(value) ? value : {});

function isDate(text) {
    const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
    if (!found) return false;
    const day = new Date(`${text}T00:00:00Z`);
    return found[1] !== "0000" && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

function listed(words) {
    const quoted = Object.keys(words).map((word) => `"${word}"`);
    return quoted.length === 1 ? quoted[0] : `${quoted.slice(0, -1).join(", ")} or ${quoted.at(-1)}`;
}

class Check {
    constructor(muslin, file, complaints) {
        this.muslin = muslin;
        this.file = file;
        this.complaints = complaints;
        this.depth = this.deepest = 0;
        this.underWay = []; // names that are being looked into
        this.followed = undefined; // how deep what names stand for is, once they are followed
    }

    tell(place, sentence, value) {
        this.complaints.add(place, sentence, value);
    }

    wanted(place, form, value) {
        this.tell(place, `${form.kind === "word" ? listed(form.words) : form.what} is wanted here`, value);
    }

    value(place, form, value) {
        if (this.complaints.tooMany) return;
        if (form.kind === "oneOf" && form.text && typeof value === "string") form = form.text;
        else if (form.kind === "oneOf" && form.number && typeof value === "number") form = form.number;
        if (
            isList(value)
                ? ["list", "table"].includes(form.kind)
                : isObject(value) && (form.kind === "map" || form.kinds)
        )
            this.nested(place, form, value);
        else if (typeof value === "string") this.string(place, form, value);
        else if (typeof value === "number") this.number(place, form, value);
        else if (form.kind !== "switch" || typeof value !== "boolean") this.wanted(place, form, value);
    }

    nested(place, form, value) {
        this.deepest = Math.max(this.deepest, ++this.depth);
        if (this.depth > DEEPEST) this.tooDeep(place);
        else if (isList(value)) this.list(place, form, value);
        else if (form.kind === "map") this.map(place, form, value);
        else this.kinds(place, form, value);
        this.depth--;
    }

    /** Told once. */
    tooDeep(place) {
        if (!this.toldDeep) this.tell(place, `more than ${DEEPEST} things stand within each other here`);
        this.toldDeep = true;
    }

    // ---- texts and numbers ----

    string(place, form, value) {
        const look = { text: this.text, word: this.word, name: this.name, length: this.length }[form.kind];
        if (look) look.call(this, place, form, value);
        else if (form.kind === "color" ? !/^#[0-9a-fA-F]{6}$/.test(value) : form.kind !== "date" || !isDate(value))
            this.wanted(place, form, value);
    }

    text(place, form, value) {
        const characters = [...value].length;
        if (characters < form.least) this.tell(place, "this text is empty", value);
        if (characters > form.most)
            this.tell(place, `this text has ${characters} characters; at most ${form.most} are printed`, value);
    }

    word(place, form, value) {
        if (Object.hasOwn(form.words, value)) return;
        const meant = nearest(value, Object.keys(form.words));
        if (meant) this.tell(place, `this is no such word; did you mean "${meant}"?`, value);
        else this.wanted(place, form, value);
    }

    length(place, form, value) {
        if (value in members(this.file.measures))
            this.tell(place, "a length itself, not the name of a measure, is wanted here", value);
        else {
            const read = readLength(this.muslin, value, (sentence) => this.tell(place, sentence, value));
            if (form.least && read && read.ticks < form.least) this.wanted(place, form, value);
        }
    }

    number(place, form, value) {
        const { kind, least, most } = form;
        if (
            kind === "share"
                ? value < least || value > most
                : kind === "whole" && Number.isInteger(value) && (value < least || value > most)
        )
            this.tell(
                place,
                least === most
                    ? `${least} is wanted here`
                    : `a ${kind === "whole" ? "whole " : ""}number from ${least} to ${most} is wanted here`,
                value
            );
        else if (kind !== "share" && (kind !== "whole" || !Number.isInteger(value))) this.wanted(place, form, value);
    }

    // ---- names ----

    name(place, form, value) {
        if (form.otherwise && !/^[a-z]/.test(value))
            readLength(this.muslin, value, (sentence) => this.tell(place, sentence, value));
        else if (!isName(value)) this.tell(place, NAME_WANTED, value);
        else if (!(value in members(this.file[form.among]))) this.notThere(place, form.among, value, value);
        else if (this.followed?.[form.among]) this.follow(place, form.among, value);
    }

    notThere(place, among, name, value) {
        const meant = nearest(name, Object.keys(members(this.file[among])));
        this.tell(place, `nothing in "${among}" is called so${meant ? `; did you mean "${meant}"?` : ""}`, value);
    }

    /** Looks once into what a name stands for: rings, and what stands too deep. */
    follow(place, among, name) {
        const key = `${among} ${name}`;
        const start = this.underWay.findIndex((one) => one.key === key);
        if (start >= 0) {
            const ring = this.underWay
                .slice(start)
                .map((one) => `"${one.name}" of `)
                .join("")
                .slice(0, 600);
            this.tell(place, `this goes round in a ring and never ends: ${ring}"${name}"`);
            return;
        }
        const known = this.followed[among];
        const depth = known.get(name) ?? this.lookInto(among, name, key);
        known.set(name, depth);
        if (this.depth + depth > DEEPEST) this.tooDeep(place);
        else this.deepest = Math.max(this.deepest, this.depth + depth);
    }

    lookInto(among, name, key) {
        const before = this.deepest;
        this.deepest = this.depth;
        this.underWay.push({ key, name });
        this.value(
            placeIn(placeIn(FILE, among), name),
            among === "parts" ? nodeForm : measureForm,
            this.file[among][name]
        );
        this.underWay.pop();
        const depth = this.deepest - this.depth;
        this.deepest = before;
        return depth;
    }

    rings() {
        this.followed = { measures: new Map(), parts: new Map() };
        for (const among of ["measures", "parts"])
            for (const name of Object.keys(members(this.file[among])))
                this.follow(placeIn(placeIn(FILE, among), name), among, name);
        this.value(FILE, theFile, this.file);
    }

    // ---- lists and objects ----

    list(place, form, value) {
        if (value.length < form.least)
            this.tell(place, `this list has ${value.length} of at least ${form.least}`, value);
        if (value.length > form.most) this.tell(place, `this list has ${value.length} of at most ${form.most}`, value);
        value.forEach((item, index) => {
            const here = placeIn(place, index);
            this.value(here, form.of, item);
            if (form.kind === "table" && lengthOf(item) !== lengthOf(value[0]))
                this.tell(
                    here,
                    `this row has ${lengthOf(item)}, the first one ${lengthOf(value[0])}; rows are equally long`
                );
        });
    }

    map(place, form, value) {
        if (Object.keys(value).length < form.least)
            this.tell(place, "nothing is named here; at least one is wanted", value);
        for (const [key, item] of Object.entries(value)) {
            const here = placeIn(place, key);
            if (!isName(key)) this.tell(here, NAME_WANTED);
            else if (form.among && !(key in members(this.file[form.among]))) this.notThere(here, form.among, key);
            this.value(here, form.of, item);
        }
    }

    kinds(place, form, value) {
        const firsts = form.kinds.map((kind) => Object.keys(kind.members)[0]);
        const kind = form.kinds.length === 1 ? form.kinds[0] : form.kinds[firsts.findIndex((first) => first in value)];
        if (kind) {
            this.object(place, kind, value);
            return;
        }
        for (const key of Object.keys(value)) {
            const meant = nearest(key, firsts);
            if (meant) {
                this.tell(placeIn(place, key), `nothing is called so here; did you mean "${meant}"?`);
                return;
            }
        }
        this.wanted(place, form, value);
    }

    object(place, kind, value) {
        for (const [key, item] of Object.entries(value)) {
            const here = placeIn(place, key);
            if (Object.hasOwn(kind.members, key)) this.value(here, kind.members[key].form, item);
            else {
                const meant = nearest(
                    key,
                    Object.keys(kind.members).filter((one) => !(one in value))
                );
                this.tell(here, `nothing is called so here${meant ? `; did you mean "${meant}"?` : ""}`);
            }
        }
        for (const [key, member] of Object.entries(kind.members)) {
            if (member.needed && !(key in value)) this.tell(place, `"${key}" is missing: ${member.form.what}`);
            if (key in value && member.with && !(member.with in value))
                this.tell(place, `"${member.with}" is missing, which goes with "${key}"`);
        }
        if (kind.either && kind.either[0] in value === kind.either[1] in value)
            this.tell(place, `either "${kind.either[0]}" or "${kind.either[1]}" is wanted, and not both`);
    }
}

/** Says all that is wrong with a file whatever its size. */
export function checkFile(muslin, file, complaints) {
    const check = new Check(muslin, file, complaints);
    const isRight = () => complaints.rows.length === 0;
    check.value(FILE, theFile, file);
    if (!isRight()) return false;
    check.rings();
    const names = (file.sizes ?? []).map((size) => size.name);
    names.forEach((name, index) => {
        if (names.indexOf(name) < index)
            check.tell(placeIn(placeIn(placeIn(FILE, "sizes"), index), "name"), "an earlier size has this name", name);
    });
    const taken = new Set();
    for (const [key, { name }] of Object.entries(file.fabrics)) {
        const own = placeIn(placeIn(FILE, "fabrics"), key);
        if (taken.has(name ?? key))
            check.tell(name === undefined ? own : placeIn(own, "name"), "an earlier fabric has this name", name);
        taken.add(name ?? key);
    }
    const { policy, trim, "resquare loss": loss, "resquare every": every } = file.cutting ?? {};
    const cutting = placeIn(FILE, "cutting");
    const isSome = (text) => text !== undefined && readLength(muslin, text, () => {}).ticks > 0n;
    if (isSome(trim) && policy !== "oversize")
        check.tell(placeIn(cutting, "trim"), 'room to trim goes with "policy": "oversize"', trim);
    if (isSome(loss) && !every)
        check.tell(
            placeIn(cutting, "resquare loss"),
            'what squaring loses goes with "resquare every", after how many segments or strips',
            loss
        );
    return isRight();
}
