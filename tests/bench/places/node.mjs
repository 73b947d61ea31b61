// The library in Node: node.mjs PACKAGE prints a line of JSON.
//
// SPDX-License-Identifier: MIT
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { measured } from "./measured.js";

const folder = join(process.argv[2], "muslin");
const { load } = await import(pathToFileURL(join(folder, "muslin.js")));
const found = await measured(load, readFileSync(join(folder, "muslin.wasm")));
console.log(JSON.stringify({ bench: "library", place: `node ${process.versions.node}`, ...found }));
