// Works a pattern out beside the page: first sizes, cuts and drawing, which are quick; then cloth, with little work and
// then with all of it, telling how the search stands. A request that is no longer wanted ends with its Worker.
//
// SPDX-License-Identifier: MIT
import { load } from "./muslin/muslin.js";
import { Design, readPattern } from "./pattern.js";
import { Worked } from "./worked.js";

const MEMORY_MOST = 512 * 1024 * 1024;
const LITTLE_WORK = 2000000;
const TOLD_EVERY = 100; // milliseconds

let muslin;

onmessage = async ({ data }) => {
    if (data.module) {
        muslin = load({ wasm: data.module, mostMemory: MEMORY_MOST });
        return;
    }
    const tell = (phase, more) => postMessage({ id: data.id, phase, ...more });
    try {
        answer(await muslin, data, tell);
    } catch (error) {
        tell("wrong", {
            complaints: [
                {
                    place: "",
                    value: null,
                    sentence:
                        error.status === "noMemory" || error instanceof RangeError
                            ? `this is more than a page can work out: ${error.message}`
                            : error.message,
                },
            ],
        });
    }
};

function answer(muslin, { text, size, units }, tell) {
    const pattern = readPattern(muslin, text);
    if (pattern.complaints.length > 0) {
        tell("wrong", { complaints: pattern.complaints });
        return;
    }
    tell("read", { file: pattern.file, sizes: pattern.sizes });
    const design = new Design(muslin, pattern, Math.min(size, pattern.sizes.length - 1), units);
    if (!design.isRight) {
        tell("wrong", { complaints: design.complaints });
        design.free();
        return;
    }
    const worked = new Worked(design);
    tell("sizes", { facts: worked.facts });
    let cloth = worked.cloth(LITTLE_WORK);
    tell("cloth", { cloth });
    if (cloth.rows.some((row) => !row.proven)) {
        cloth = worked.cloth(undefined, progress(tell)); // all the work of the library's own limit
        tell("cloth", { cloth });
    }
    tell("done");
    design.free();
}

/** Tells now and then how much work was done. */
function progress(tell) {
    let last = 0;
    return (work, best, bound) => {
        const now = performance.now();
        if (now - last >= TOLD_EVERY) {
            last = now;
            tell("progress", { work, best, bound });
        }
        return false;
    };
}
