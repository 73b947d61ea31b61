// Reads JSON as a pattern file must be: no member twice, nothing too deep, and where it fails, line and column.
// Objects have no prototype, so that a member may be called anything.
//
// SPDX-License-Identifier: MIT

const DEEPEST = 500,
    DIGITS_MOST = 15;
const SPACE = /[ \t\n\r]*/y,
    NUMBER = /-?(?:0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?/y;
const WORDS = [
    ["true", true],
    ["false", false],
    ["null", null],
];

/** What a text is not, and where. */
export class NoJson extends Error {
    constructor(sentence, line, column) {
        super(sentence);
        this.line = line;
        this.column = column;
    }
}

class Reader {
    constructor(text) {
        this.text = text;
        this.at = 0;
        this.depth = 0;
    }

    wrong(sentence) {
        const before = this.text.slice(0, this.at).split("\n");
        return new NoJson(sentence, before.length, before.at(-1).length + 1);
    }

    /** What matches here; null where nothing does. */
    match(pattern) {
        pattern.lastIndex = this.at;
        const found = pattern.exec(this.text);
        if (found) this.at = pattern.lastIndex;
        return found;
    }

    /** Whether this character comes next; then it is passed. */
    passes(character) {
        this.match(SPACE);
        if (this.text[this.at] !== character) return false;
        this.at++;
        return true;
    }

    need(character) {
        if (!this.passes(character)) throw this.wrong(`"${character}" is wanted here`);
    }

    value() {
        if (this.depth > DEEPEST) throw this.wrong("too many things stand within each other");
        this.match(SPACE);
        const first = this.text[this.at];
        if (first === "{") return this.within(() => this.object());
        if (first === "[") return this.within(() => this.list());
        if (first === '"') return this.string();
        for (const [word, value] of WORDS) {
            if (this.text.startsWith(word, this.at)) {
                this.at += word.length;
                return value;
            }
        }
        return this.number();
    }

    within(read) {
        this.at++;
        this.depth++;
        const value = read();
        this.depth--;
        return value;
    }

    object() {
        const object = Object.create(null);
        if (this.passes("}")) return object;
        do {
            this.match(SPACE);
            const name = this.string();
            if (name in object) throw this.wrong(`"${name.slice(0, 40)}" stands here twice`);
            this.need(":");
            object[name] = this.value();
        } while (this.passes(","));
        this.need("}");
        return object;
    }

    list() {
        const list = [];
        if (this.passes("]")) return list;
        do list.push(this.value());
        while (this.passes(","));
        this.need("]");
        return list;
    }

    string() {
        const end = this.text[this.at] === '"' ? this.endOfString() : -1;
        try {
            const value = JSON.parse(this.text.slice(this.at, end));
            this.at = end;
            return value;
        } catch {
            throw this.wrong("a text in double quotes is wanted here");
        }
    }

    /** Behind the quote that ends the text here: an even number of backslashes stands before it. */
    endOfString() {
        for (let quote = this.text.indexOf('"', this.at + 1); quote > 0; quote = this.text.indexOf('"', quote + 1)) {
            let first = quote;
            while (this.text[first - 1] === "\\") first--;
            if ((quote - first) % 2 === 0) return quote + 1;
        }
        return -1;
    }

    number() {
        const found = this.match(NUMBER);
        if (!found) throw this.wrong("a value is wanted here");
        const isWhole = found[1] === undefined && found[2] === undefined;
        if (!Number.isFinite(Number(found[0])) || (isWhole && found[0].length > DIGITS_MOST))
            throw this.wrong("this number is too large");
        return Number(found[0]);
    }
}

export function readJson(text) {
    const reader = new Reader(text.startsWith("\ufeff") ? text.slice(1) : text);
    const value = reader.value();
    reader.match(SPACE);
    if (reader.at < reader.text.length) throw reader.wrong("nothing more is wanted here");
    return value;
}
