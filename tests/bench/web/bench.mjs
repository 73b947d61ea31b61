// How long the page takes: one JSON line. Run by tests/web/run tests/bench/web/bench.mjs
// Times are milliseconds: load (from the address to a page with its first answer), typed (from a key in a strip quilt to
// its answer in the page), pattern_first (from choosing a pattern to its sizes), pattern_typed (from a key in a measure
// of a pattern to the new sizes); medians, and of what is typed the 95th percentile too.
//
// SPDX-License-Identifier: MIT
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { browser, opened, served } from "../../web/browser.mjs";
import { spread } from "../places/measured.js";

const TIMES = 25;
const wasm = readFileSync(join(process.env.MUSLIN_WEB, "muslin/muslin.wasm"));

const { server, address } = await served();
const chromium = await browser();

async function load() {
    const own = await chromium.newContext();
    const page = await opened(own, address);
    const found = await page.evaluate(() => performance.now());
    await own.close();
    return found;
}

/** From an input event until what is looked at has changed. */
async function typed(page, selector, texts, watched) {
    return page.evaluate(
        async ([field, all, place]) => {
            const times = [];
            for (const text of all) {
                const input = document.querySelector(field),
                    before = document.querySelector(place).textContent;
                const begun = performance.now();
                input.value = text;
                input.dispatchEvent(new Event("input", { bubbles: true }));
                while (document.querySelector(place)?.textContent === before || !document.querySelector(place))
                    await new Promise((next) => {
                        const { port1, port2 } = new MessageChannel();
                        port1.onmessage = next;
                        port2.postMessage(0);
                    });
                times.push(performance.now() - begun);
                await new Promise((next) => {
                    setTimeout(next, 400);
                });
            }
            return times;
        },
        [selector, texts, watched]
    );
}

const loads = [];
for (let i = 0; i < 5; i++) loads.push(await load());
const page = await opened(await chromium.newContext(), address);
const strips = await typed(
    page,
    "#field-rows",
    Array.from({ length: TIMES }, (_, i) => (i % 2 ? "4" : "3")),
    "#plan .answer"
);
const begun = Date.now();
await page.check("input[value=pattern]");
await page.waitForSelector("#sample");
await page.selectOption("#sample", "market-barrow");
await page.waitForFunction(
    () => document.getElementById("title").textContent.startsWith("Market") && document.querySelector("#plan .answer")
);
const patternFirst = Date.now() - begun;
const pattern = await typed(
    page,
    "#blocks .say input",
    Array.from({ length: TIMES }, (_, i) => (i % 2 ? "3 in" : "4 in")),
    "#plan .answer"
);
console.log(
    JSON.stringify({
        bench: "page",
        wasm: wasm.length,
        wasm_gzip: gzipSync(wasm, { level: 9 }).length,
        load: spread(loads).median,
        typed: spread(strips),
        pattern_first: patternFirst,
        pattern_typed: spread(pattern),
    })
);
await chromium.close();
server.close();
