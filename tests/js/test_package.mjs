// The package from outside: packed, installed without a network, loaded in every way, typed, and its README.
//
// SPDX-License-Identifier: MIT
import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { pathToFileURL } from "node:url";
import { home } from "./package.mjs";

const wasm = join(home, "muslin", "muslin.wasm");
const project = mkdtempSync(join(tmpdir(), "muslin-js-"));
const npm = spawnSync("npm", ["--version"]).status === 0 ? false : "npm is not installed";
const tsc = [process.env.MUSLIN_TSC, "tsc"].find((one) => one && spawnSync(one, ["--version"]).status === 0);
let muslin;

after(() => rmSync(project, { recursive: true }));

/** A program in the project, and what it prints. */
function printed(name, program) {
    writeFileSync(join(project, name), program);
    return execFileSync(process.execPath, [name], { cwd: project, encoding: "utf-8" });
}

before(async () => {
    writeFileSync(join(project, "package.json"), '{ "name": "consumer", "private": true, "type": "module" }');
    if (npm) {
        cpSync(home, join(project, "node_modules", "muslin"), { recursive: true });
    } else {
        const env = { ...process.env, npm_config_cache: join(project, ".npm"), npm_config_offline: "true" };
        const run = (cwd, ...words) => execFileSync("npm", [...words, "--silent"], { cwd, env, encoding: "utf-8" });
        const packed = run(home, "pack", "--pack-destination", project);
        run(project, "install", "--no-audit", "--no-fund", packed.trim());
    }
    muslin = await import(pathToFileURL(join(project, "node_modules", "muslin", "muslin", "muslin.js")));
});

test("the package holds its module, its types and the library, and nothing else", { skip: npm }, () => {
    const [{ files }] = JSON.parse(execFileSync("npm", ["pack", "--dry-run", "--json"], { cwd: home }));
    assert.deepEqual(files.map(({ path }) => path).sort(), ["README.md", "muslin/api.d.ts", "muslin/api.js",
        "muslin/calls.js", "muslin/errors.js", "muslin/handles.js", "muslin/length.js", "muslin/library.js",
        "muslin/muslin.d.ts", "muslin/muslin.js", "muslin/muslin.wasm", "muslin/statuses.js", "muslin/structs.js",
        "muslin/values.js", "package.json"]);
});

test("its version is the library's", async () => {
    const { version } = JSON.parse(readFileSync(join(home, "package.json")));
    assert.equal(muslin.version, version);
    assert.equal((await muslin.load()).versionText(), version);
});

test("an installed package is found by its name", () => {
    assert.equal(printed("installed.js", `import { load } from "muslin";
console.log(String((await load()).seamRowEqual("2 1/2 in", 6).unfinished));`), "12 1/2 in\n");
});

test("the programs of the README print what they say", () => {
    const readme = readFileSync(join(home, "README.md"), "utf-8");
    const blocks = [...readme.matchAll(/^```\w+\n([^]*?)^```$/gm)].map(([, text]) => text);
    assert.equal(blocks.length, 4);
    for (let i = 0; i < blocks.length; i += 2)
        assert.equal(printed(`readme${i}.js`, blocks[i]), blocks[i + 1]);
});

// ---- loading --------------------------------------------------------------------------------------------------------

const ask = (instance) => String(instance.seamRowEqual("2 1/2 in", 6).unfinished);

test("it is loaded from bytes, a module, a URL, a response, and what is promised", async () => {
    const bytes = readFileSync(wasm);
    const type = { headers: { "Content-Type": "application/wasm" } };
    for (const given of [bytes, new Uint8Array(bytes).buffer, new WebAssembly.Module(bytes), pathToFileURL(wasm),
        pathToFileURL(wasm).href, new Response(bytes, type), new Response(bytes), Promise.resolve(bytes)])
        assert.equal(ask(await muslin.load({ wasm: given })), "12 1/2 in");
});

test("it is fetched, streaming where the server names its type", async () => {
    const server = createServer(({ url }, response) => {
        if (url === "/lost.wasm")
            return response.writeHead(404).end();
        response.writeHead(200, { "Content-Type": url === "/typed.wasm" ? "application/wasm" : "text/plain" });
        return response.end(readFileSync(wasm));
    });
    await new Promise((listening) => { server.listen(0, "127.0.0.1", listening); });
    const at = `http://127.0.0.1:${server.address().port}`;
    try {
        for (const name of ["typed", "untyped"])
            assert.equal(ask(await muslin.load({ wasm: new URL(`${at}/${name}.wasm`) })), "12 1/2 in");
        await assert.rejects(muslin.load({ wasm: `${at}/lost.wasm` }), /not found: 404/);
    } finally {
        server.close();
        server.closeAllConnections();
    }
});

test("an option that is none is refused by its name", async () => {
    await assert.rejects(muslin.load({ wams: readFileSync(wasm) }), /^TypeError: load has no option "wams"/);
});

test("what is no muslin.wasm is refused", async () => {
    const empty = Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0);
    await assert.rejects(muslin.load({ wasm: empty }), /^TypeError: this is not muslin.wasm/);
});

test("a Worker has an instance of its own, of a module that is compiled once", () => {
    assert.equal(printed("worker.js", `import { readFileSync } from "node:fs";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import { load } from "muslin";

if (isMainThread) {
    const file = new URL("node_modules/muslin/muslin/muslin.wasm", import.meta.url);
    const wasm = new WebAssembly.Module(readFileSync(file));
    const worker = new Worker(new URL(import.meta.url), { workerData: wasm });
    const muslin = await load({ wasm });
    worker.on("message", ({ unfinished }) => console.log(String(muslin.length(unfinished))));
} else {
    parentPort.postMessage((await load({ wasm: workerData })).seamRowEqual("2 1/2 in", 6));
}`), "12 1/2 in\n"); // a Length arrives as a plain object with its ticks, and is taken as such
});

// ---- comments ------------------------------------------------------------------------------------------------------

const types = readFileSync(join(home, "muslin", "api.d.ts"), "utf-8");
const comments = [...types.matchAll(/\/\*\*([^]*?)\*\//g)].map(([, text]) => text.replace(/\s*\n\s*\* ?/g, " ").trim());

test("comments speak JavaScript: no C but where a comment names the function that it is", () => {
    for (const text of comments) {
        const said = text.replace(/(muslin_\w+\(\)|(struct|enum) muslin_\w+) in muslin\/\w+\.h\./g, "");
        assert.doesNotMatch(said, /\bmuslin_|\bMUSLIN_|\b(row_size|capacity|sizeof|size_t|int64_t)\b|[Aa]sk, then/, text);
    }
});

test("comments are whole: flags with their meaning, ranges, errors, examples", () => {
    const before = (declared) => {
        const at = types.indexOf(declared);
        assert.ok(at > 0, declared);
        return types.slice(types.lastIndexOf("/**", at), at).replace(/\s*\n\s*\* ?/g, " ");
    };
    assert.match(before("    readonly fromOneEnd?: boolean"), /cut straight through from one end; .*Initially false\./);
    assert.match(before("    readonly foldClear?: LengthLike"), /must be 0 with fromOneEnd/);
    assert.match(before("    stripsetYield("), /@throws \{MuslinRangeError\}/);
    assert.match(before("    stripsetYield("), /Example: 40 in, 6 1\/2 in segments, .* with 1 in kept clear: four\./);
    assert.match(before("    readonly stacked?: boolean"), /may be cut again into a stack of pieces/);
    assert.doesNotMatch(types, /The flag MUSLIN/);
});

test("each error that a comment says is thrown is there, and can come", () => {
    const thrown = new Set([...types.matchAll(/@throws \{(\w+)\}/g)].map(([, name]) => name));
    assert.ok(thrown.size > 10);
    for (const name of thrown) {
        assert.ok(muslin[name]?.prototype instanceof muslin.MuslinError, name);
        assert.doesNotMatch(name, /^Muslin(Null|StructSize|Buffer|Flags)Error$/);
    }
});

// ---- types ----------------------------------------------------------------------------------------------------------

const typed = `import { load, MuslinSeamTooWideError, constants } from "muslin";
import type { Filled, Id, Length, QuiltPatchSpec, Stripquilt, Warning } from "muslin";

const muslin = await load({ mostMemory: 64 << 20 });
const plan: Stripquilt = muslin.stripquiltPlan({ strips: 42, stripLength: "42 in", fromOneEnd: true });
const width: Length = plan.topFinishedWidth.plus("1 in").times(2).minus(plan.setFinished);
const said: readonly Warning[] = plan.warnings;
const quilt = new muslin.Quilt({ allowance: "6 mm" });
const blue: Id = quilt.fabric("blue");
const block: Id = quilt.join([quilt.patch({ fabric: blue })], { axis: "down" });
const solution = new muslin.Solution(quilt, block, { tops: 2, values: [{ id: blue, value: "42 in" }] });
const counts: readonly number[] = solution.cuts().map((cut) => cut.count);
const corners: number[] = [...solution.outlines(block, "raw")].map((outline) => outline.corners.length);
const read: Filled<QuiltPatchSpec> = quilt.readPatch(block);
const area: bigint = solution.totals().finishedArea;
const cutting = new muslin.Cutplan([{ cutWidth: "5 in", cutLength: 40640n, count: 3 }],
    { stock: [], progress: (work, best, bound) => work > constants.PPM || best === bound });
const gap: bigint = cutting.totals().cost - cutting.totals().least;
const first: Length = muslin.stripquiltSpec().stripLength;
try {
    muslin.lengthParse("x");
} catch (error) {
    if (error instanceof MuslinSeamTooWideError)
        console.log(error.limit + 1n, error.argument === "cut");
}
console.log(width < first, said, counts, corners, read.width, area, gap, cutting.totals().proven);
`;
const disposed = `import { load } from "muslin";
const muslin = await load();
{
    using quilt = new muslin.Quilt();
    console.log(quilt.freed);
}
`;
const wrong = ["muslin.stripsetYield({ segmentCut: 6 })", "muslin.runPlan({ join: 3 })",
    "muslin.stripquiltPlan({ strip: 3 })", 'muslin.seamRowEqual("1 in", 2).pieces = 3', "new muslin.Quilt().fabric(1)",
    "new muslin.Solution(new muslin.Quilt())", "new muslin.Pressing(new muslin.Quilt())",
    "new muslin.Quilt().fixed(8128)", "new muslin.Cutplan()",
    "new muslin.Cutplan([], { progress: async () => {} })", "load({ wams: 1 })", 'muslin.printMayTurn("sideways", 1)'];
const untyped = tsc ? false : "tsc is not installed; MUSLIN_TSC may name one";

test("its types serve whoever uses them, and find what is wrong", { skip: untyped }, () => {
    writeFileSync(join(project, "typed.ts"), typed);
    writeFileSync(join(project, "wrong.ts"), ['import { load } from "muslin";', "const muslin = await load();",
        ...wrong.flatMap((line) => ["// @ts-expect-error", `${line};`])].join("\n"));
    writeFileSync(join(project, "disposed.ts"), disposed);
    // console alone is of no language: whoever has browsers' or Node's types has it.
    writeFileSync(join(project, "console.d.ts"), "declare const console: { log(...values: unknown[]): void };");
    for (const [module, moduleResolution, lib, more] of [["nodenext", "nodenext", ["es2022", "dom"], []],
        ["esnext", "bundler", ["es2022"], ["console.d.ts"]],
        ["nodenext", "nodenext", ["es2022", "esnext.disposable"], ["console.d.ts", "disposed.ts"]]]) {
        const compilerOptions = { strict: true, noEmit: true, target: "es2022", lib, types: [], module,
            moduleResolution };
        const files = ["typed.ts", "wrong.ts", ...more];
        writeFileSync(join(project, "tsconfig.json"), JSON.stringify({ files, compilerOptions }));
        assert.equal(spawnSync(tsc, { cwd: project, encoding: "utf-8" }).stdout, "");
    }
});
