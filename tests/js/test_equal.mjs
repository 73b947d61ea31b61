// Thousands of requests by chance are answered as by the C library, to the tick; so is every function, at least once.
//
// SPDX-License-Identifier: MIT
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import test from "node:test";
import { fileURLToPath } from "node:url";
import { part } from "./package.mjs";

const { functions, handles } = await part("api.js");
const { Plan } = await part("calls.js");
const { Length, load, MuslinError } = await part("muslin.js");
const muslin = await load();

/** Where JavaScript has what C calls so, and how it is read there. */
const known = new Map();
for (const [name, row] of Object.entries(functions))
    known.set(row[0], { name, plan: new Plan(undefined, name, row) });
for (const [kind, { make, methods }] of Object.entries(handles)) {
    known.set(make[0], { kind, plan: new Plan(undefined, kind, make) });
    for (const [name, row] of Object.entries(methods))
        known.set(row[0], { name, plan: new Plan(undefined, name, row) });
}

/** Numbers were written as text, lengths with an L before. */
function given(value) {
    if (Array.isArray(value))
        return value.map(given);
    if (typeof value === "object" && value !== null)
        return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, given(one)]));
    if (typeof value !== "string" || !/^L?-?\d+$/.test(value))
        return value;
    if (value.startsWith("L"))
        return BigInt(value.slice(1));
    return Number.isSafeInteger(Number(value)) ? Number(value) : BigInt(value);
}

function written(value) {
    if (value instanceof Length)
        return `L${value.ticks}`;
    if (typeof value === "bigint" || typeof value === "number")
        return String(value);
    if (typeof value?.[Symbol.iterator] === "function" && typeof value !== "string")
        return [...value].map(written);
    if (typeof value === "object" && value !== null)
        return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, written(one)]));
    return value;
}

function refusal({ status, argument, at, bytes, value, limit, message }) {
    return { ...written({ status, argument, at, bytes, value, limit }), message };
}

const made = new Map();

function ask({ call, given: asked, on, reads, as }) {
    const { name, kind, plan } = known.get(call);
    const values = plan.parameters.map((token) => token.kind === "handle" ? made.get(reads) :
        token.kind === "text" ? asked[token.name] : given(asked[token.name]));
    for (const token of plan.beside)
        if (asked[token.name])
            values[plan.parameters.indexOf(plan.firstSpec)][token.name] = given(asked[token.name]);
    const found = kind ? new muslin[kind](...values) : (on ? made.get(on) : muslin)[name](...values);
    if (as && found instanceof Object && "free" in found) {
        made.set(as, found);
        return undefined;
    }
    return written(found);
}

test("requests by chance are answered as by the C library", () => {
    const seed = process.env.MUSLIN_JS_SEED ?? "1";
    const script = fileURLToPath(new URL("./asked.py", import.meta.url));
    const asked = spawnSync("python3", ["-B", script, seed, process.env.MUSLIN_JS_ROUNDS ?? "8"],
        { encoding: "utf-8", maxBuffer: 1 << 30 });
    assert.equal(asked.status, 0, asked.stderr);
    const answers = new Map([...known.keys()].map((call) => [call, 0]));
    let lines = 0;
    for (const line of asked.stdout.trim().split("\n").map(JSON.parse)) {
        lines++;
        let answer, refused;
        try {
            answer = ask(line);
        } catch (error) {
            if (!(error instanceof MuslinError))
                throw new Error(`${JSON.stringify(line)}: ${error.stack}`);
            refused = refusal(error);
        }
        if (line.call === "muslin_quilt_counts")
            answer.bytes = line.answer.bytes; // pointers are half as long
        assert.deepEqual(refused, line.refused, JSON.stringify(line));
        assert.deepEqual(answer, line.answer, JSON.stringify(line));
        answers.set(line.call, answers.get(line.call) + (refused ? 0 : 1));
    }
    assert.ok(lines > 1000);
    assert.deepEqual([...answers].filter(([, count]) => count === 0).map(([call]) => call), []);
    const answered = [...answers.values()].reduce((a, b) => a + b);
    console.log(`${lines} requests, ${answered} answered, ${answers.size} functions`);
});
