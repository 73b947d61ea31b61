// Solves a model in the LP format with HiGHS, the npm package `highs`, and prints what HiGHS says.
//
//     node peer.mjs PACKAGE MODEL SECONDS
//
// SPDX-License-Identifier: MIT
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import process from 'node:process';

const [folder, model, seconds] = process.argv.slice(2);

// The time limit is one of the processor: HiGHS asks this clock.
performance.now = () => {
    const used = process.cpuUsage();
    return (used.user + used.system) / 1e3;
};
const load = createRequire(import.meta.url)(folder);
const highs = await load({ print: console.log, printErr: console.log });
highs.solve(readFileSync(model, 'utf8'), { time_limit: Number(seconds), mip_rel_gap: 0 });
