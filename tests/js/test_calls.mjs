// What JavaScript gives and gets: lengths, specs, errors, handles, progress, memory.
//
// SPDX-License-Identifier: MIT
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test from "node:test";
import { setFlagsFromString } from "node:v8";
import { part } from "./package.mjs";

const { enums, structs } = await part("api.js");
const module = await part("muslin.js");
const { constants, InexactError, Length, load, MuslinError } = module;
const muslin = await load();
const api = JSON.parse(readFileSync(new URL("../../lib/abi/api.json", import.meta.url)));

// ---- lengths --------------------------------------------------------------------------------------------------------

test("a length is text, ticks or a Length, and never a bare number", () => {
    for (const given of ["2 1/2 in", 20320n, muslin.length("63.5 mm"), { ticks: 20320n }])
        assert.equal(muslin.seamRowEqual(given, 6).unfinished.ticks, 101600n); // 15 in less 5 seams of 1/2 in
    assert.throws(() => muslin.seamRowEqual(2.5, 6), /^TypeError: cut must be text .* not 2.5: a bare number does not/);
    assert.throws(() => muslin.seamRowEqual(null, 6), TypeError);
    assert.throws(() => muslin.seamRowEqual(undefined, 6), TypeError);
    assert.throws(() => muslin.length("1/3 in"), InexactError);
    assert.throws(() => muslin.length("1/3 inch or so"), module.MuslinTextTrailingError);
});

test("a length writes itself so that it can be read again", () => {
    for (const [ticks, text] of [[20320n, "2 1/2 in"], [1n, "0.003125 mm"], [0n, "0 in"], [-8128n, "-1 in"]]) {
        const length = muslin.length(ticks);
        assert.equal(String(length), text);
        assert.equal(JSON.stringify({ length }), `{"length":"${text}"}`);
        assert.equal(muslin.length(text).ticks, ticks);
    }
    assert.equal(muslin.length("6,35 cm", { decimalSign: "," }).format({ style: "mm" }), "63.5 mm");
});

test("a length is made by its library", () => {
    assert.throws(() => new Length(4n), /^TypeError: a Length belongs to a library/);
});

test("lengths add, multiply and compare, and refuse to overflow", () => {
    const inch = muslin.length("1 in");
    assert.equal(inch.plus("1/2 in").minus(inch).times(3).ticks, 12192n);
    assert.ok(inch < muslin.length("26 mm") && inch > muslin.length("25 mm"));
    assert.equal("one " + inch + `, ${inch}`, "one 1 in, 1 in");
    assert.ok(Object.isFrozen(inch) && inch instanceof Length);
    assert.throws(() => muslin.length(constants.LENGTH_MAX).times(4), module.MuslinOverflowError);
});

test("what 64 bits do not hold is refused before it is asked", () => {
    assert.throws(() => muslin.length(1n << 63n), /^RangeError: length is 9223372036854775808, which does not fit/);
    assert.throws(() => muslin.lengthMultiply("1 in", -(1n << 63n) - 1n),
        /^RangeError: factor is -9223372036854775809, which/);
    assert.throws(() => muslin.lengthMultiply("1 in", 2 ** 53), /^RangeError: factor is .* give a BigInt/);
    assert.throws(() => muslin.lengthMultiply("1 in", 1.5), /^TypeError: factor must be a whole number, not 1.5/);
    assert.throws(() => muslin.lengthMultiply("1 in", "2"), TypeError);
    assert.throws(() => muslin.seamShare(1n, 1n << 70n), RangeError);
    assert.throws(() => muslin.stripquiltPlan({ strips: 1n << 64n }),
        /^RangeError: strips is 18446744073709551616, which/);
    assert.equal(muslin.lengthMultiply(-1n, (1n << 61n)).ticks, -(1n << 61n));
});

// ---- specs and results ----------------------------------------------------------------------------------------------

test("initial values are the headers'", () => {
    const camel = (name) => name.replace(/_(.)/g, (_, letter) => letter.toUpperCase());
    for (const { struct, values } of api.inits) {
        const read = muslin[camel(struct.replace("muslin_", ""))]();
        for (const member of api.structs.find(({ name }) => name === struct).members) {
            const name = camel(member.name);
            if (!(name in read))
                continue;
            let value = read[name] instanceof Length ? read[name].ticks : read[name];
            const [, kind] = new RegExp(`\\b${name}:\\w+=(\\w+)@`).exec(structs[camel(`_${struct.slice(7)}`)][1]) ?? [];
            if (kind && value !== null)
                value = enums[kind].split(" ").find((pair) => pair.startsWith(`${value}=`)).split("=")[1];
            else if (name === "decimalSign")
                value = value.codePointAt(0);
            assert.equal(Number(value), values[member.name], `${struct}.${member.name}`);
        }
    }
});

test("an initial value can be given back", () => {
    const initial = muslin.stripquiltSpec();
    const wish = { strips: 42, columns: 3, rows: 3, stripLength: "41 in" };
    assert.deepEqual(written(muslin.stripquiltPlan({ ...initial, ...wish })), written(muslin.stripquiltPlan(wish)));
});

const written = (value) => JSON.parse(JSON.stringify(value, (_, one) => typeof one === "bigint" ? `${one}n` : one));

test("a result is a frozen plain object", () => {
    const plan = muslin.stripquiltPlan({ strips: 42, columns: 3, rows: 3, stripLength: "41 in" });
    assert.equal(plan.tops, 2);
    assert.equal(Object.getPrototypeOf(plan), Object.prototype);
    assert.throws(() => { plan.tops = 3; }, TypeError);
    assert.ok(Object.isFrozen(plan.warnings));
    assert.ok(Object.isFrozen(muslin.backingLayouts({ quiltWidth: "60 in", quiltLength: "70 in" })));
});

test("what comes back can be written as JSON, and what was written can be given", () => {
    const { quilt, top } = nine();
    const solution = new muslin.Solution(quilt, top);
    const back = (value) => JSON.parse(JSON.stringify(value));
    const [cut] = back(solution.cuts());
    assert.deepEqual([cut.cutWidth, cut.count], ["2 1/2 in", 5]); // five dark squares of nine
    assert.equal(quilt.name(BigInt(cut.fabric)), "blue");
    assert.equal(back(solution.totals()).finishedArea, 2 * (6 * 8128) ** 2); // 6 in square, doubled square ticks
    assert.deepEqual(back({ plan: new muslin.Cutplan(list).totals() }).plan.cost, 60 * 8128);
    assert.equal(back(solution.cutNodes(0)).length, 1);
    assert.deepEqual(back(muslin.lengthAddN([1n, 2n], [3n, 1n << 60n])), [4, "1152921504606846978"]);
    assert.equal(Object.getPrototypeOf(solution.totals()), Object.prototype);
    assert.ok(!Object.keys(solution.totals()).includes("toJSON"));
    assert.deepEqual(structuredClone(muslin.seamRowEqual("2 in", 3)).pieces, 3);
    assert.throws(() => muslin.lengthParse("2 1/2 ells"), (error) => {
        const { name, message, status, value } = back(error);
        assert.deepEqual([name, status, value], ["MuslinTextUnitError", "textUnit", 0]);
        assert.match(message, /ells/);
        return true;
    });
});

test("warnings and choices are words", () => {
    const strip = { width: "40 in", length: "2 1/2 in", count: 1, kind: "strip" };
    assert.deepEqual(muslin.stockCheck([strip, { ...strip, edge: "pinkedTips", pinkDepth: "1/8 in" }]), ["mixedEdges"]);
    assert.match(muslin.warningSentence("mixedEdges"), /pinked/i);
    assert.equal(muslin.idSort(0n), null);
    assert.throws(() => muslin.printMayTurn("sideways", 1),
        /^TypeError: print must be one of "none", .* not "sideways"/);
    assert.throws(() => muslin.printMayTurn(99, 1), { status: "choice", argument: "printDirection", value: 99n });
});

test("a spec names only its own members", () => {
    assert.throws(() => muslin.stripquiltPlan({ strip: 40 }), /^TypeError: StripquiltSpec has no member "strip"/);
    assert.throws(() => muslin.stripquiltPlan([]), TypeError);
    assert.throws(() => muslin.stripquiltPlan({}, {}), /^TypeError: stripquiltPlan takes 1 argument, not 2/);
    assert.throws(() => muslin.stripsetYield({ fromOneEnd: 1 }), /fromOneEnd must be true or false/);
    assert.throws(() => muslin.versionText(1), /^TypeError: versionText takes no arguments, not 1/);
    assert.throws(() => new muslin.Quilt().fixed("1 in", 2), /^TypeError: Quilt.fixed takes 1 argument, not 2/);
    assert.throws(() => new muslin.Quilt({}, {}), /^TypeError: new Quilt takes 1 argument, not 2/);
    assert.throws(() => new muslin.Cutplan(), /^TypeError: pieces must be an array, not undefined/);
});

// ---- errors ---------------------------------------------------------------------------------------------------------

test("a refusal is an error of its status, with the library's sentence", () => {
    assert.throws(() => muslin.stripquiltPlan({ strips: 40, columns: 4, rows: 4, allowance: "1 1/4 in" }), (error) => {
        for (const kind of [module.MuslinSeamTooWideError, MuslinError, Error])
            assert.ok(error instanceof kind);
        assert.equal(error.name, "MuslinSeamTooWideError");
        assert.equal(error.message, "Cut width of a strip is 2 1/2 in, but its seams take 2 1/2 in.");
        const { status, argument, at, bytes, value, limit } = error;
        assert.deepEqual({ status, argument, at, bytes, value, limit },
            { status: "seamTooWide", argument: "stripCut", at: 0, bytes: 0, value: 20320n, limit: 20320n });
        return true;
    });
    assert.throws(() => muslin.lengthParse("2 1/2 ells"), { status: "textUnit", at: 6, bytes: 4 });
    assert.throws(() => muslin.lengthParse("2 \ud800"), { status: "textEncoding", at: 2 });
});

test("a sentence names what is missing, and says what a number counts", () => {
    const quilt = new muslin.Quilt();
    const fabric = quilt.fabric("blue");
    assert.throws(() => quilt.patch({ fabric }), { message: "Measure is missing, but one is needed here." });
    assert.throws(() => quilt.fabric("x".repeat(201)), { message: "Name is 201 bytes, but must be at most 200." });
});

test("each status has a class", () => {
    for (const [name, number] of Object.entries(api.enums[0].values).slice(1)) {
        const words = name.slice("MUSLIN_ERR".length).toLowerCase().replace(/_(.)/g, (_, one) => one.toUpperCase());
        assert.ok(module[`Muslin${words}Error`].prototype instanceof MuslinError, `${name} ${number}`);
    }
});

test("an array form says where it failed, or writes a status for each", () => {
    assert.deepEqual(muslin.lengthAddN(["1 in", 2n], [3n, "1 in"]), BigInt64Array.of(8131n, 8130n));
    const edge = [1n, constants.LENGTH_MAX];
    assert.throws(() => muslin.lengthAddN(edge, edge), { status: "overflow", at: 1 });
    const statuses = new Int32Array(2);
    assert.equal(muslin.lengthAddN(edge, edge, statuses)[0], 2n);
    assert.deepEqual(statuses, Int32Array.of(0, 7));
    assert.throws(() => muslin.lengthAddN([1n], [1n, 2n]), /^RangeError: arrays of unequal length: a 1, b 2/);
});

// ---- handles --------------------------------------------------------------------------------------------------------

function nine(of = muslin) {
    const quilt = new of.Quilt();
    const side = quilt.measure("side", "2 in");
    const [dark, light] = ["blue", "white"].map((name) =>
        quilt.patch({ fabric: quilt.fabric(name), width: side, height: side }));
    const top = quilt.grid(3, 3, [dark, light, dark, light, dark, light, dark, light, dark]);
    return { quilt, side, top };
}

test("a handle that was freed says so, and what reads it goes on", () => {
    const { quilt, top } = nine();
    const solution = new muslin.Solution(quilt, top);
    assert.equal(quilt.freed, false);
    quilt.free();
    quilt.free();
    assert.equal(quilt.freed, true);
    assert.throws(() => quilt.counts(), /^ReferenceError: this Quilt was freed/);
    assert.throws(() => new muslin.Solution(quilt, top), ReferenceError);
    assert.equal(String(solution.size(top).finishedWidth), "6 in");
    if (Symbol.dispose)
        solution[Symbol.dispose]();
    else
        solution.free();
    assert.throws(() => solution.cuts(), ReferenceError);
});

test("a part of a handle lives as long as it is used", () => {
    const { quilt, top } = nine();
    const solution = new muslin.Solution(quilt, top);
    const yardage = new muslin.Yardage(solution, []);
    const plan = yardage.plan(0);
    for (const handle of [quilt, solution, yardage])
        handle.free();
    assert.ok(plan instanceof muslin.Cutplan);
    assert.equal(plan.check().fault, "none");
    plan.free();
});

test("outlines come a page at a time, with their corners", () => {
    const { quilt, top } = nine();
    const whole = quilt.repeat(top, 20, 20, [0], 1, 1);
    const outlines = [...new muslin.Solution(quilt, whole).outlines(whole, "finished")];
    assert.equal(outlines.length, 3600);
    assert.ok(outlines.every(({ corners }) => corners.length === 4));
});

test("handles of another instance are refused", async () => {
    const other = await load();
    const { quilt, top } = nine(other);
    assert.throws(() => new muslin.Solution(quilt, top),
        /^TypeError: quilt must be a Quilt of this muslin, not a Quilt/);
    assert.notEqual(other.exports.memory.buffer, muslin.exports.memory.buffer);
});

const list = [["5 1/2 in", "5 1/2 in", 32], ["6 in", "6 in", 16], ["9 1/2 in", "9 1/2 in", 8]].map(
    ([cutWidth, cutLength, count]) => ({ cutWidth, cutLength, count }));

test("a cutting plan tells how it stands, and ends when told to", () => {
    assert.equal(muslin.length(BigInt(new muslin.Cutplan(list).totals().cost)).toString(), "60 in"); // cutplan.h
    const hard = Array.from({ length: 24 }, (_, i) => ({ cutWidth: 30000n + 977n * BigInt(i * i % 37),
        cutLength: 31000n + 1013n * BigInt(i * 7 % 23), count: 3 + i % 5 }));
    const told = [];
    const plan = new muslin.Cutplan(hard, { progress: (...numbers) => told.push(numbers) > 3 });
    assert.equal(told.length, 4);
    for (const [work, best, bound] of told)
        assert.deepEqual([typeof work, typeof best, typeof bound], ["number", "bigint", "bigint"]);
    assert.equal(plan.totals().stopped, "progress");
    assert.throws(() => new muslin.Cutplan(list, { progress: 3 }), TypeError);
    assert.throws(() => new muslin.Cutplan(hard, { progress: async () => {} }),
        /^TypeError: progress answered a promise/);
});

test("cost and bound of a plan have one type, so that a proven plan says so by itself", () => {
    const plan = new muslin.Cutplan(list);
    for (const told of [plan.totals(), plan.check()]) {
        assert.equal(told.cost, 487680n); // 60 in, cutplan.h
        assert.equal(told.cost - told.least, 0n);
    }
    assert.equal(plan.totals().proven, true);
});

test("what takes no spec is told of progress by itself", () => {
    const plan = new muslin.Cutplan(list);
    const told = [];
    assert.equal(plan.widths("40 in", "42 in", 3, { progress: (...numbers) => void told.push(numbers) }).length, 3);
    assert.ok(told.length > 0);
    assert.equal(plan.check({ progress: () => false }).fault, "none");
    assert.throws(() => plan.check({ progress: () => true }), module.MuslinStoppedError);
    assert.throws(() => plan.check({ progress() { throw new SyntaxError("enough"); } }), /^SyntaxError: enough/);
    assert.throws(() => plan.check({ progres: () => true }), TypeError);
});

test("what a progress function throws comes out, and it may ask itself", () => {
    let asked = 0;
    const hard = Array.from({ length: 24 }, (_, i) => ({ cutWidth: 30000n + 977n * BigInt(i * i % 37),
        cutLength: 31000n + 1013n * BigInt(i * 7 % 23), count: 3 + i % 5 }));
    assert.throws(() => new muslin.Cutplan(hard, { workLimit: 50000000, progress() {
        asked += muslin.seamRowEqual("2 in", 2).unfinished.ticks === 28448n ? 1 : 0;
        new muslin.Cutplan(list, { progress: () => false }).free();
        throw new SyntaxError("enough");
    } }), /^SyntaxError: enough/);
    assert.equal(asked, 1);
});

// ---- memory ---------------------------------------------------------------------------------------------------------

function round(of) {
    const { quilt, top } = nine(of);
    const solution = new of.Solution(quilt, top);
    const pressing = new of.Pressing(solution, { workLimit: 100 });
    solution.cuts();
    assert.throws(() => quilt.patch({ fabric: 3n }), module.MuslinForeignError);
    for (const handle of [quilt, pressing, solution])
        handle.free();
}

test("memory does not grow over 10,000 quilts", async () => {
    const own = await load();
    for (let i = 0; i < 10; i++)
        round(own);
    const before = own.exports.memory.buffer.byteLength;
    for (let i = 0; i < 10000; i++)
        round(own);
    assert.equal(own.exports.memory.buffer.byteLength, before);
});

test("memory is handed out once, and again when it was given back", async () => {
    const { memory, muslin_wasm_take: take, muslin_wasm_give: give } = (await load()).exports;
    const held = new Map(); // where -> [size, what is written there]
    let seed = 1;
    const chance = (most) => (seed = seed * 48271 % 2147483647) % most;
    const check = (at, [size, mark]) => {
        const bytes = new Uint8Array(memory.buffer, at, size);
        assert.ok(bytes[0] === mark && bytes[size - 1] === mark && bytes.every((byte) => byte === mark));
    };
    let asked = 0, most = 0;
    for (let i = 0; i < 20000; i++) {
        const one = [...held.keys()][chance(held.size || 1)];
        if (held.size > 100 || (held.size && chance(3) === 0)) {
            check(one, held.get(one));
            give(one, held.get(one)[0]);
            asked -= held.get(one)[0];
            held.delete(one);
            continue;
        }
        const size = 1 + chance(chance(10) ? 200 : 20000);
        const at = take(size) >>> 0;
        assert.ok(at % 16 === 0 && !held.has(at));
        new Uint8Array(memory.buffer, at, size).fill(i % 251);
        held.set(at, [size, i % 251]);
        most = Math.max(most, asked += size);
    }
    held.forEach((what, at) => check(at, what));
    assert.ok(memory.buffer.byteLength < 400000 + 6 * most);
    assert.equal(take(0x80000000), 0);
    give(0, 16);
});

test("what nobody has any more is freed some time", async () => {
    setFlagsFromString("--expose-gc");
    const { runInNewContext } = await import("node:vm");
    const collect = runInNewContext("gc");
    const own = await load();
    const grown = async (rounds) => {
        for (let i = 0; i < rounds; i++) {
            for (let j = 0; j < 100; j++) {
                const { quilt, top } = nine(own);
                new own.Solution(quilt, top);
            }
            collect();
            await new Promise((done) => { setTimeout(done, 5); });
        }
        return own.exports.memory.buffer.byteLength;
    };
    const before = await grown(10);
    assert.ok(await grown(30) <= 2 * before);
});

test("where memory ends there is an error, and nothing is lost", async () => {
    const own = await load({ mostMemory: 1 << 20 });
    const quilt = new own.Quilt();
    const made = [];
    assert.throws(() => {
        for (;;)
            made.push(quilt.fixed(BigInt(made.length + 1)));
    }, (error) => error instanceof module.MuslinNoMemoryError && error.status === "noMemory" &&
        error.message === "The allocator returned no memory.");
    assert.ok(made.length > 1000 && own.exports.memory.buffer.byteLength <= 1 << 20);
    quilt.free();
    round(own);
    assert.throws(() => own.lengthSum(new BigInt64Array(1 << 20)), module.MuslinNoMemoryError);
    assert.equal(own.lengthSum([1n, 2n]).ticks, 3n);
});
