// A muslin.wasm of the module cutplan alone plans, and says what it was built without: one_module.mjs WASM
//
// SPDX-License-Identifier: MIT
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { part } from "./package.mjs";

const { load } = await part("muslin.js");
const wasm = readFileSync(process.argv[2]);
const muslin = await load({ wasm });
const plan = new muslin.Cutplan([{ cutWidth: "6 in", cutLength: "6 in", count: 16 }]);
assert.equal(String(plan.totals().clothLength), "18 in"); // six across 40 in, so three rows
assert.throws(() => new muslin.Quilt(), /^ReferenceError: this muslin.wasm was built without muslin_quilt_create\(\)/);
assert.throws(() => muslin.bedSpec(), /^ReferenceError: this muslin.wasm was built without muslin_bed_spec_init\(\)/);
console.log(`${wasm.length} bytes`);
