// How fast the library answers where it is asked, the same in Node and in a page. Milliseconds; of what is asked many
// times the median and the 95th percentile.
//
// SPDX-License-Identifier: MIT

const TIMES = 60;
const LITTLE_WORK = 2000000; // as the web page has it while someone types

const rounded = (number) => Math.round(number * 100) / 100;

/** Of times that are sorted by this. */
export function spread(times) {
    times.sort((a, b) => a - b);
    const at = (share) => rounded(times[Math.min(times.length - 1, Math.floor(times.length * share))]);
    return { median: at(0.5), most_of_95: at(0.95) };
}

function timed(times, ask) {
    return spread(
        Array.from({ length: times }, (_, i) => {
            const begun = performance.now();
            ask(i);
            return performance.now() - begun;
        })
    );
}

/** A top of nine-patches with sashes, in two fabrics, solved with another side of its patches and planned. */
function planned(muslin, i) {
    const quilt = new muslin.Quilt();
    const [dark, light] = ["blue", "white"].map((name) => quilt.fabric(name));
    const side = quilt.measure("side", BigInt(8128 + 127 * (i % 40)));
    const [one, two] = [dark, light].map((fabric) => quilt.patch({ fabric, width: side, height: side }));
    const block = quilt.grid(3, 3, [one, two, one, two, one, two, one, two, one]);
    const top = quilt.repeat(block, 12, 15, [0], 1, 1);
    const solution = new muslin.Solution(quilt, top);
    const yardage = new muslin.Yardage(solution, [], { workLimit: LITTLE_WORK });
    const bought = yardage.fabrics().length;
    for (const handle of [yardage, solution, quilt]) handle.free();
    return bought;
}

/** load: of an instance from bytes; first: of its first answer; calls: of a sum, a second; then plans. */
export async function measured(load, bytes) {
    const loads = [],
        firsts = [];
    let muslin;
    for (let i = 0; i < 9; i++) {
        const begun = performance.now();
        muslin = await load({ wasm: bytes });
        const ready = performance.now();
        muslin.seamRowEqual("2 1/2 in", 6);
        loads.push(ready - begun);
        firsts.push(performance.now() - begun);
    }
    const begun = performance.now();
    for (let i = 0; i < 20000; i++) muslin.seamCutFromFinished(BigInt(8128 + i));
    const seconds = (performance.now() - begun) / 1000;
    return {
        load: spread(loads),
        first_answer: spread(firsts),
        calls_per_second: Math.round(20000 / seconds),
        strip_quilt: timed(TIMES, (i) => muslin.stripquiltPlan({ strips: 40, columns: 3, rows: 3 + (i % 2) })),
        quilt_with_cloth: timed(TIMES, (i) => planned(muslin, i)),
    };
}
