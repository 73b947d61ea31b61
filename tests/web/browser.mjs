// The built page served from this machine, and real Chromium to look at it with: what the tests and the bench share.
// MUSLIN_WEB: the built folder; MUSLIN_WEB_MODULES: where npm has put playwright-core and axe-core; MUSLIN_BROWSER: the
// browser, if not chromium.
//
// SPDX-License-Identifier: MIT
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { extname, join, resolve, sep } from "node:path";

const folder = resolve(process.env.MUSLIN_WEB ?? ".build/web");
const modules = createRequire(join(resolve(process.env.MUSLIN_WEB_MODULES ?? ".build/web-test"), "package.json"));
const TYPES = {
    ".html": "text/html",
    ".css": "text/css",
    ".js": "text/javascript",
    ".json": "application/json",
    ".wasm": "application/wasm",
};
const FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
];

export const { chromium } = modules("playwright-core");
export const axeSource = readFileSync(modules.resolve("axe-core/axe.min.js"), "utf8");

/** Serves the folder; requests are counted by path, so that tests see what was asked for. What is in `changed` is
 * served instead of the file of that path. */
export async function served() {
    const asked = [],
        changed = new Map();
    const server = createServer((request, response) => {
        const path = decodeURIComponent(new URL(request.url, "http://page").pathname);
        const file = resolve(join(folder, path.endsWith("/") ? `${path}index.html` : path));
        asked.push(path);
        try {
            if (!file.startsWith(folder + sep)) throw new Error("outside");
            const body = changed.get(path) ?? readFileSync(file);
            response.writeHead(200, { "Content-Type": TYPES[extname(file)] ?? "application/octet-stream" }).end(body);
        } catch {
            response.writeHead(404).end();
        }
    });
    await new Promise((listening) => {
        server.listen(0, "127.0.0.1", listening);
    });
    return { server, asked, changed, address: `http://127.0.0.1:${server.address().port}/` };
}

export async function browser() {
    const executablePath = [process.env.MUSLIN_BROWSER, "/usr/bin/chromium", "/usr/bin/chromium-browser"].find(
        (one) => one && spawnSync(one, ["--version"]).status === 0
    );
    return chromium.launch({ executablePath, args: FLAGS });
}

/** A page that is ready; what its console complains of is gathered in `page.errors`. */
export async function opened(context, address, fragment = "") {
    const page = await context.newPage();
    page.errors = [];
    page.on("console", (message) => ["error", "warning"].includes(message.type()) && page.errors.push(message.text()));
    page.on("pageerror", (error) => page.errors.push(String(error)));
    await page.goto(address + fragment);
    await page.waitForSelector("body[data-ready]");
    return page;
}
