// The library in Chromium, in the folder of the web page: a line of JSON. Run by tests/web/run
//
// SPDX-License-Identifier: MIT
import { copyFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { browser, served } from "../../web/browser.mjs";

copyFileSync(fileURLToPath(new URL("measured.js", import.meta.url)), join(process.env.MUSLIN_WEB, "measured.js"));
const { server, address } = await served();
const chromium = await browser();
const page = await chromium.newPage();
await page.goto(address);
const found = await page.evaluate(async () => {
    const [{ load }, { measured }] = await Promise.all([import("./muslin/muslin.js"), import("./measured.js")]);
    return measured(load, await (await fetch("muslin/muslin.wasm")).arrayBuffer());
});
console.log(JSON.stringify({ bench: "library", place: `chromium ${chromium.version()}`, ...found }));
await chromium.close();
server.close();
