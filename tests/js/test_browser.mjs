// The package as a page loads it: streamed from a server, on the page and in a Worker, which tell the server what they
// found. Needs chromium, or what MUSLIN_BROWSER names.
//
// SPDX-License-Identifier: MIT
import assert from "node:assert/strict";
import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { rm } from "node:fs/promises";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import test from "node:test";
import { home } from "./package.mjs";

const browser = [process.env.MUSLIN_BROWSER, "chromium", "chromium-browser"].find((one) =>
    one && spawnSync(one, ["--version"]).status === 0);

const pages = {
    "/": `<!doctype html><title>muslin</title>
<script type="module">
import { load } from "/package/muslin/muslin.js";
const page = String((await load()).seamRowEqual("2 1/2 in", 6).unfinished);
const worker = new Worker("/worker.js", { type: "module" });
worker.onmessage = ({ data }) => fetch("/found", { method: "POST", body: page + "; " + data });
</script>`,
    "/worker.js": `import { load } from "/package/muslin/muslin.js";
const muslin = await load();
const plan = new muslin.Cutplan([{ cutWidth: "6 in", cutLength: "6 in", count: 16 }]);
postMessage(plan.totals().clothLength + " of cloth");`,
};
const types = { ".js": "text/javascript", ".wasm": "application/wasm", "": "text/html" };

/** Serves the pages and the package, and gives what is posted to /found. */
async function serving(server) {
    const found = new Promise((tell) => {
        server.on("request", async (request, response) => {
            if (request.method === "POST")
                tell((await request.setEncoding("utf-8").toArray()).join(""));
            try {
                const body = pages[request.url] ?? readFileSync(join(home, request.url.replace(/^\/package/, "")));
                response.writeHead(200, { "Content-Type": types[extname(request.url)] }).end(body);
            } catch {
                response.writeHead(404).end();
            }
        });
    });
    await new Promise((listening) => { server.listen(0, "127.0.0.1", listening); });
    return { found };
}

const skip = browser ? false : "chromium is not installed";

test("a page and its Worker load it", { skip, timeout: 120000 }, async () => {
    const server = createServer();
    const { found } = await serving(server);
    const profile = mkdtempSync(join(tmpdir(), "muslin-browser-"));
    const child = spawn(browser, ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
        "--disable-background-networking", "--disable-component-update", "--disable-sync", `--user-data-dir=${profile}`,
        `http://127.0.0.1:${server.address().port}/`], { stdio: "ignore", detached: true });
    const ended = new Promise((end) => { child.on("exit", end); });
    try {
        assert.equal(await found, "12 1/2 in; 18 in of cloth");
    } finally {
        process.kill(-child.pid, "SIGKILL"); // with all that it has started
        await ended;
        server.close();
        server.closeAllConnections();
        await rm(profile, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
    }
});
