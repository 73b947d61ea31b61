// wasm.mjs - runs the module given as argument and prints the digests, in the form of digest.txt. That it needs no
// import is part of the test.
//
// SPDX-License-Identifier: MIT
import { readFile } from 'node:fs/promises';

const { instance } = await WebAssembly.instantiate(await readFile(process.argv[2]), {});
instance.exports.golden_start();
for (const [which, name] of ['arithmetic', 'figures', 'words'].entries()) {
  const digest = BigInt.asUintN(64, instance.exports.golden_digest(which));
  console.log(`${name} ${digest.toString(16).padStart(16, '0')}`);
}
