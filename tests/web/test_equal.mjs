// The page's own functions, in the browser, answer as the C library does, to the tick: strip quilts by chance, and
// every size of the sample patterns as `muslin pattern FILE --json` has it. MUSLIN_CLI: the command line program.
//
// SPDX-License-Identifier: MIT
import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { fileURLToPath } from "node:url";
import { browser, opened, served } from "./browser.mjs";

const patterns = fileURLToPath(new URL("../../examples/patterns/", import.meta.url));
const COUNT = process.env.MUSLIN_WEB_COUNT ?? "1000",
    SEED = process.env.MUSLIN_WEB_SEED ?? "1";
let site, chromium, page;

before(async () => {
    site = await served();
    chromium = await browser();
    page = await opened(await chromium.newContext(), site.address);
});

after(async () => {
    await chromium?.close();
    site?.server.close();
});

/** A name as C has it. */
const snake = (name) => name.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

/** Numbers and lengths by the names of C; words and lists aside. */
function plain(value) {
    if (Array.isArray(value)) return value.map(plain);
    return Object.fromEntries(
        Object.entries(value).flatMap(([name, one]) =>
            ["number", "boolean"].includes(typeof one) ? [[snake(name), Number(one)]] : []
        )
    );
}

test("strip quilts by chance", { timeout: 300000 }, async (context) => {
    const { stdout, status, stderr } = spawnSync(
        "python3",
        [fileURLToPath(new URL("asked.py", import.meta.url)), SEED, COUNT],
        { encoding: "utf8", maxBuffer: 1 << 28 }
    );
    assert.equal(status, 0, stderr);
    const rows = stdout
        .trim()
        .split("\n")
        .map((line) => JSON.parse(line));
    const answers = await page.evaluate(
        async (asked) => {
            const { load } = await import("./muslin/muslin.js");
            const { planStrips } = await import("./strips.js");
            const muslin = await load();
            const numbers = (value) =>
                typeof value === "bigint"
                    ? Number(value)
                    : Array.isArray(value)
                      ? value.map(numbers)
                      : typeof value === "object" && value !== null
                        ? Object.fromEntries(Object.entries(value).map(([name, one]) => [name, numbers(one)]))
                        : value;
            return asked.map((texts) => numbers(planStrips(muslin, texts)));
        },
        rows.map((row) => row.texts)
    );
    let refused = 0;
    rows.forEach(({ texts, found, refused: sentences }, index) => {
        const answer = answers[index],
            what = JSON.stringify(texts);
        assert.deepEqual(
            answer.complaints.map((one) => one.reason),
            sentences,
            what
        );
        refused += sentences.length > 0;
        for (const [name, wanted] of Object.entries(found)) {
            const own = name === "backing" ? undefined : plain(answer[name]);
            if (own === undefined) {
                assert.deepEqual(
                    plain(answer.backing.layouts.map(({ forAll: _, ...layout }) => layout)),
                    wanted.filter((one) => one.possible),
                    what
                );
                continue;
            }
            for (const key of Object.keys(wanted)) assert.equal(own[key], wanted[key], `${name}.${key} of ${what}`);
        }
    });
    context.diagnostic(`${rows.length} requests, ${refused} of them refused alike`);
});

/** Some figures of a size as the page has them. */
async function workedOut(text, size) {
    return page.evaluate(
        async ([file, index]) => {
            const [{ load }, { readPattern, Design }, { Worked }] = await Promise.all(
                ["./muslin/muslin.js", "./pattern.js", "./worked.js"].map((one) => import(one))
            );
            globalThis.muslinForTests ??= await load();
            const pattern = readPattern(globalThis.muslinForTests, file);
            const design = new Design(globalThis.muslinForTests, pattern, index);
            const worked = new Worked(design);
            const { facts } = worked,
                cloth = worked.cloth();
            design.free();
            const { Shown } = await import("./lengths.js");
            const shown = new Shown(globalThis.muslinForTests, pattern.units, design.soldByMetre);
            const { working: _, ...written } = facts.written;
            const n = Number;
            const PRESSED = {
                left: "to the left",
                right: "to the right",
                up: "upwards",
                down: "downwards",
                open: "open",
            };
            return JSON.parse(
                JSON.stringify({
                    sizes: pattern.sizes,
                    top: [
                        facts.top.finishedWidth,
                        facts.top.finishedHeight,
                        facts.top.unfinishedWidth,
                        facts.top.unfinishedHeight,
                    ].map(n),
                    cuts: facts.cuts.map((row) => [
                        row.piece,
                        facts.fabrics[row.fabric].name,
                        n(row.cutWidth),
                        n(row.cutHeight),
                        row.count,
                        row.pieces,
                        row.spare,
                        row.joined,
                        row.border,
                    ]),
                    sets: facts.sets.map((row) => [
                        row.letter,
                        row.count,
                        n(row.setUnfinished),
                        n(row.segmentCut),
                        row.segments,
                        row.segmentsPerSet,
                        row.sets,
                        row.spare,
                        n(row.shorterBy),
                    ]),
                    steps: facts.steps.map((row) => [
                        row.letter,
                        row.make,
                        n(row.unfinishedWidth),
                        n(row.unfinishedHeight),
                        row.parts,
                        row.otherWay,
                        row.pressed.map((press) => PRESSED[press]),
                    ]),
                    cloth: cloth.rows.map((row) =>
                        row.stripCut > 0n
                            ? [row.stripsNeeded, row.topsGiven]
                            : [n(row.clothLength), n(row.least), n(row.bought), n(row.spare), n(row.narrowestWidth)]
                    ),
                    strips: cloth.rows.map((row) =>
                        row.plan.strips
                            .filter((strip, at, strips) => strip.places || !strips.some((one) => one.holder === at))
                            .map((strip) => [
                                strip.times * (row.plan.strips[strip.holder]?.times ?? 1),
                                n(strip.width),
                                n(strip.height),
                            ])
                    ),
                    pressed: [facts.pressed.meetings, facts.pressed.exceptions, facts.pressed.least],
                    binding: facts.binding
                        ? [n(facts.binding.bindingCut), n(facts.binding.perimeter), n(facts.binding.reckoned)]
                        : null,
                    backing: facts.backing
                        ? [
                              n(facts.backing.best.neededWidth),
                              n(facts.backing.best.bought),
                              facts.backing.panels.map((panel) => [panel.count, n(panel.cutWidth), n(panel.cutLength)]),
                          ]
                        : null,
                    batting: facts.batting ? [n(facts.batting.width), n(facts.batting.length)] : null,
                    bed: facts.bed ? [n(facts.bed.sideDrop), n(facts.bed.footDrop)] : null,
                    misfits: facts.misfits.length,
                    written: linesOf([written, { ...cloth, rows: [] }]),
                })
            );

            /** Every sentence, head and cell of what is written, in inches or metric as the file has it. */
            function linesOf(value) {
                if (Array.isArray(value)) return value.flatMap(linesOf);
                if (typeof value !== "object" || value === null) return [];
                if ("kind" in value && "text" in value) return [shown.line(value.text)];
                if ("head" in value) return [value.head, ...linesOf(value.items)];
                if ("rows" in value && "heads" in value)
                    return [
                        ...value.rows.flatMap((row) => (row.cells ?? row).map((cell) => shown.line(cell))),
                        ...linesOf(value.items),
                    ];
                return Object.values(value).flatMap(linesOf);
            }
        },
        [text, size]
    );
}

/** The same figures as the command line prints them. */
function printed(facts) {
    const by = (size) => [size.width.ticks, size.height.ticks];
    return {
        top: [...by(facts.top.finished), ...by(facts.top.unfinished)],
        cuts: facts.cuts.map((row) => [
            row.piece,
            row.fabric,
            ...by(row.cut_at_least ?? row.cut),
            row.count,
            row.pieces,
            row.spare,
            row.joined,
            row.border,
        ]),
        sets: facts.strip_sets.map((row) => [
            row.letter,
            row.strips,
            row.set_unfinished.ticks,
            row.segment_cut.ticks,
            row.segments,
            row.segments_per_set,
            row.sets,
            row.spare,
            row.strips_may_be_shorter_by.ticks,
        ]),
        steps: facts.steps.map((row) => [
            row.letter,
            row.make,
            ...by(row.unfinished),
            row.parts,
            row.the_other_way,
            row.seams_pressed,
        ]),
        cloth: facts.fabrics.map((row) =>
            "strips_needed" in row
                ? [row.strips_needed, row.tops_that_they_give]
                : [
                      row.needed.ticks,
                      row.no_plan_needs_less_than.ticks,
                      row.buy.ticks,
                      row.to_spare.ticks,
                      row.narrowest_width.ticks,
                  ]
        ),
        strips: facts.fabrics.map((row) => row.strips.map((strip) => [strip.times, ...by(strip.cut)])),
        pressed: [facts.pressing.meetings, facts.pressing.not_nesting, facts.pressing.no_plan_has_fewer_than],
        binding: facts.binding && [
            facts.binding.cut_width.ticks,
            facts.binding.perimeter.ticks,
            facts.binding.length.ticks,
        ],
        backing: facts.backing && [
            facts.backing.at_least.width.ticks,
            facts.backing.buy.ticks,
            facts.backing.panels.map((panel) => [panel.count, ...by(panel.cut)]),
        ],
        batting: facts.batting && by(facts.batting.cut),
        bed: facts.bed && [facts.bed.side_drop.ticks, facts.bed.foot_drop.ticks],
        misfits: facts.misfits.length,
    };
}

const cli = process.env.MUSLIN_CLI;

/** Without line breaks, whatever blanks there are. */
const flat = (text) => text.replaceAll("\u00a0", " ").replaceAll(/\s+/g, " ").trim();

/** What the printed sheet says by an arrow on a drawing. */
const AS_DRAWN = /^Press (all seams|the seams, in the order|as said of its seams)/;

/** Samples as they are, and some changed so that more is said: [name, text]. */
function* texts() {
    const names = readdirSync(patterns).filter((name) => name.endsWith(".json"));
    const read = (name) => readFileSync(patterns + name, "utf8");
    for (const name of names) yield [name, read(name)];
    for (const usable of ["40 in", "39 1/2 in", "38.3 in"]) {
        // 48 segments of 3 53/64 in, which lies between two marks: to the next, to a finer one, to none.
        const down = ["a", "b", "a"].map((patch) => ({ patch, width: "3 21/64 in", height: "2 in" }));
        const top = { repeat: { across: ["rail", "rail", "rail"] }, columns: 4, rows: 4, quarters: [[0]] };
        const fabrics = { a: { "usable width": usable }, b: { "usable width": "41 in" } };
        const rails = { muslin_pattern: 1, title: "Rails", parts: { rail: { down } }, fabrics, top };
        yield [`rails of ${usable}`, JSON.stringify(rails)];
    }
    const barrow = JSON.parse(read("market-barrow.json"));
    const { alternate, ...size } = barrow.top;
    barrow.top = { "on point": alternate, ...size, "side fabric": "oatmeal", "corner fabric": "oatmeal" };
    yield ["market-barrow on point", JSON.stringify(barrow)];
    const hearths = JSON.parse(read("sixteen-hearths.json"));
    hearths.units = "cm";
    hearths.backing.width = "150 cm";
    yield ["sixteen-hearths, with a wide back", JSON.stringify(hearths)];
}

for (const [name, source] of texts())
    test(
        `${name} as the command line works it out`,
        { timeout: 300000, skip: cli ? false : "MUSLIN_CLI is not set" },
        async () => {
            const printedBy = (...words) =>
                execFileSync(cli, ["pattern", "-", ...words], {
                    input: source,
                    encoding: "utf8",
                    maxBuffer: 1 << 28,
                });
            const answer = JSON.parse(printedBy("--json"));
            for (const [index, facts] of answer.sizes.entries()) {
                const { sizes, written, ...own } = await workedOut(source, index);
                assert.equal(sizes[index], facts.size);
                assert.deepEqual(own, printed(facts), `${name}, ${facts.size}`);
                const text = flat(printedBy("--size", facts.size)).replaceAll(" ! Caution:", "");
                assert.ok(written.length > 40, `${written.length} lines`);
                assert.deepEqual(
                    written.map(flat).filter((one) => !text.includes(one) && !AS_DRAWN.test(one)),
                    [],
                    `sentences of ${name}, ${facts.size}, that the command line does not print`
                );
            }
        }
    );

test(
    "what is wrong is told at the same places",
    { timeout: 300000, skip: cli ? false : "MUSLIN_CLI is not set" },
    async (context) => {
        const files = JSON.parse(
            execFileSync(
                "python3",
                [fileURLToPath(new URL("spoilt.py", import.meta.url)), SEED, process.env.MUSLIN_WEB_FILES ?? "40"],
                { encoding: "utf8", maxBuffer: 1 << 28 }
            )
        );
        const own = await page.evaluate(
            async (texts) => {
                const [{ load }, { readPattern, Design }, { Worked }] = await Promise.all(
                    ["./muslin/muslin.js", "./pattern.js", "./worked.js"].map((one) => import(one))
                );
                const muslin = await load(),
                    LITTLE_WORK = 200000;
                return texts.map((text) => {
                    const pattern = readPattern(muslin, text);
                    const found = pattern.complaints.length > 0 ? pattern : new Design(muslin, pattern, 0);
                    const worked = found.complaints.length === 0 && new Worked(found);
                    const { complaints } = worked ? { ...worked.facts, ...worked.cloth(LITTLE_WORK) } : found;
                    found.free?.();
                    return complaints.map(({ place, sentence }) => ({ place, sentence }));
                });
            },
            files.map((one) => one.text)
        );
        let wrong = 0;
        files.forEach(({ text, what }, index) => {
            const size = JSON.parse(text).sizes?.[0]?.name;
            const { stderr } = spawnSync(
                cli,
                ["pattern", "-", "--json", ...(typeof size === "string" ? ["--size", size] : [])],
                { input: text, encoding: "utf8" }
            );
            // "  /place, value: sentence", after a line that counts them
            const told = stderr.split("\n").filter((line) => line.startsWith("  "));
            wrong += told.length > 0;
            assert.equal(own[index].length, told.length, `${what}:\n${own[index].join("\n")}\nand\n${stderr}`);
            for (const { place, sentence } of own[index])
                assert.ok(
                    told.some((line) => line.startsWith(`  ${place}`) && line.endsWith(`: ${sentence}`)),
                    `${what}: "${place}: ${sentence}" is not in\n${stderr}`
                );
        });
        context.diagnostic(`${files.length} files with one place changed, ${wrong} of them refused alike`);
    }
);
