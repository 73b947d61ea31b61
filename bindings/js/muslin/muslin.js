// Quilt arithmetic, exact: the C library muslin, compiled to WebAssembly.
//
//     import { load } from "muslin";
//
//     const muslin = await load();
//     const plan = muslin.stripquiltPlan({ strips: 42, columns: 3, rows: 3, stripLength: "41 in" });
//     console.log(plan.tops, String(plan.topFinishedWidth));
//
// SPDX-License-Identifier: MIT
import { constants, version } from "./api.js";
import { InexactError, MuslinError } from "./errors.js";
import { Handle } from "./handles.js";
import { Length } from "./length.js";
import { Library } from "./library.js";

export * from "./statuses.js";
export { constants, Handle, InexactError, Length, MuslinError, version };

/**
 * An instance of the library, independent of all others. wasm: where muslin.wasm is, if not beside this module: a URL,
 * its bytes, a response, or the module compiled before. mostMemory: bytes that its memory does not grow past.
 */
export async function load(options = {}) {
    const { wasm = new URL("./muslin.wasm", import.meta.url), mostMemory, ...others } = options;
    for (const name of Object.keys(others))
        throw new TypeError(`load has no option "${name}": it takes wasm and mostMemory`);
    const library = new Library();
    const instance = await instantiated(await wasm, { muslin: { tell: (...numbers) => library.tell(...numbers) } });
    const { exports } = instance;
    if (!exports.muslin_version)
        throw new TypeError("this is not muslin.wasm: it has no function muslin_version");
    if (exports.muslin_version() !== constants.VERSION)
        throw new TypeError(`this muslin.wasm has version ${exports.muslin_version()} and this package is for ` +
            `version ${constants.VERSION}: take the two from the same release`);
    if (mostMemory !== undefined)
        exports.muslin_wasm_limit(mostMemory);
    return library.begin(exports);
}

async function instantiated(wasm, imports) {
    if (wasm instanceof WebAssembly.Module)
        return WebAssembly.instantiate(wasm, imports);
    if (wasm instanceof ArrayBuffer || ArrayBuffer.isView(wasm))
        return (await WebAssembly.instantiate(wasm, imports)).instance;
    if (typeof Response !== "undefined" && wasm instanceof Response)
        return fromResponse(wasm, imports);
    const url = new URL(wasm, import.meta.url);
    if (url.protocol !== "file:")
        return fromResponse(await fetch(url), imports);
    const { readFile } = await import("node:fs/promises");
    return instantiated(await readFile(url), imports);
}

/** Compiled while it comes in, where the server says that it is WebAssembly. */
async function fromResponse(response, imports) {
    if (!response.ok)
        throw new TypeError(`muslin.wasm was not found: ${response.status} ${response.url}`);
    if (/^application\/wasm\b/.test(response.headers.get("Content-Type") ?? ""))
        return (await WebAssembly.instantiateStreaming(response, imports)).instance;
    return instantiated(await response.arrayBuffer(), imports);
}
