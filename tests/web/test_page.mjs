// The page as people use it, in real Chromium: typing, files, undo, addresses, keys alone, hostile files, no other
// server.
//
// SPDX-License-Identifier: MIT
import assert from "node:assert/strict";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { fileURLToPath } from "node:url";
import { axeSource, browser, opened, served } from "./browser.mjs";

const sample = (name) => fileURLToPath(new URL(`../../examples/patterns/${name}.json`, import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "muslin-web-"));
let site, chromium;

before(async () => {
    site = await served();
    chromium = await browser();
});

after(async () => {
    await chromium?.close();
    site?.server.close();
    rmSync(folder, { recursive: true, force: true });
});

/** A test on a page of its own, whose console must stay silent. */
function onPage(name, run, { fragment = "", ...options } = {}) {
    test(name, { timeout: 120000 }, async (context) => {
        const own = await chromium.newContext({ viewport: { width: 1000, height: 800 }, ...options });
        try {
            const page = await opened(own, site.address, fragment);
            await run(page, context);
            assert.deepEqual(page.errors, []);
        } finally {
            await own.close();
        }
    });
}

const field = (page, label) => page.getByLabel(label, { exact: true });
const answer = (page) => page.textContent("#plan .answer");
const says = (page, section, words) =>
    page.waitForFunction(
        ([id, text]) => document.getElementById(id).textContent.replaceAll("\u00a0", " ").includes(text),
        [section, words]
    );

/** Opens a file and waits until it is read or refused: until then the fields are those of the file before. */
async function openPattern(page, path) {
    await page.check("input[value=pattern]");
    await page.focus("#file");
    await page.setInputFiles("#file", path);
    await page.waitForFunction(
        () => document.activeElement.id === "title" || document.querySelector("#complaints .wrong") !== null
    );
}

async function openText(page, name, text) {
    const path = join(folder, `${name}.json`);
    writeFileSync(path, text);
    await openPattern(page, path);
}

onPage("what is typed is planned", async (page) => {
    assert.match(await answer(page), /1.top of 48.in.x.48.in finished, from 36.strips in 6.sets/);
    await field(page, "Strips in the bundle").fill("42");
    await field(page, "Blocks down").fill("5");
    await says(page, "plan", "1 top of 48 in x 60 in finished");
    await field(page, "Seam allowance").fill("6 mm");
    await says(page, "sets", "unfinished");
    await page.check("input[value=cm]");
    await says(page, "materials", "6.35 cm wide");
    await page.selectOption("#field-turning", "none");
    await says(page, "top", "5 rows of 4 blocks.");
    await field(page, "Width of a border, finished (0 in: none)").fill("4 in");
    await says(page, "top", "With its border the top measures");
});

onPage("what cannot be is told at its field, and the last plan stands", async (page) => {
    const cut = field(page, "Width of a strip, cut");
    await cut.fill("2 1/2 furlongs");
    assert.equal(await cut.getAttribute("aria-invalid"), "true");
    await says(
        page,
        "materials",
        '“Width of a strip, cut” is “2 1/2 furlongs”: this is no length: write it like "2 1/2 in" or "0.75 in".'
    );
    await cut.fill("0.4 in");
    await says(page, "materials", "Cut width of a strip is 0.4 in, but its seams take 1/2 in");
    await cut.fill("1/2 in");
    await says(page, "materials", "its seams take 1/2 in");
    await says(page, "plan", "Below is what followed before");
    await says(page, "top", "48 in x 48 in finished");
    await cut.fill("2 1/2 in");
    assert.equal(await cut.getAttribute("aria-invalid"), null);
    await page.waitForFunction(() => document.getElementById("news").textContent.includes("48"), undefined, {
        timeout: 5000,
    });
});

onPage("steps are undone and done again", async (page) => {
    const rows = field(page, "Blocks down");
    await rows.fill("3");
    await field(page, "Blocks across").fill("5");
    await says(page, "plan", "60 in x 36 in");
    await page.click("#undo");
    await says(page, "plan", "48 in x 36 in");
    assert.equal(await field(page, "Blocks across").inputValue(), "4");
    await page.click("#undo");
    await says(page, "plan", "48 in x 48 in");
    assert.equal(await rows.inputValue(), "4");
    assert.ok(await page.isDisabled("#undo"));
    await page.click("#redo");
    await page.focus("#field-turning");
    await page.keyboard.press("Control+y");
    await says(page, "plan", "60 in x 36 in");
    await page.keyboard.press("Control+z");
    await says(page, "plan", "48 in x 36 in");
});

onPage("the address holds all of it", async (page) => {
    await field(page, "Width of a strip, cut").fill("63.5 mm");
    await field(page, "Blocks across").fill("3");
    await page.check("input[value=mm]");
    await page.waitForFunction(() => location.hash.includes("columns=3") && location.hash.includes("units=mm"));
    const address = await page.evaluate(() => location.href),
        words = await answer(page);
    const other = await opened(
        page.context(),
        address.slice(0, address.indexOf("#")),
        address.slice(address.indexOf("#"))
    );
    assert.equal(await answer(other), words);
    assert.equal(await other.inputValue("#field-stripCut"), "63.5 mm");
    await openPattern(other, sample("slipway-pebbles"));
    await says(other, "plan", "1250 mm x 1550 mm");
    await other.selectOption("#size", { label: "queen" });
    await says(other, "plan", "2150 mm x 2450 mm");
    await other.waitForFunction(() => location.hash.includes("size=2"));
    const third = await opened(page.context(), await other.evaluate(() => location.href));
    await says(third, "plan", "2150 mm x 2450 mm");
    assert.equal(await third.inputValue("#text"), readFileSync(sample("slipway-pebbles"), "utf8"));
    assert.deepEqual([...other.errors, ...third.errors], []);
});

onPage("addresses that say nonsense do no harm", async (page) => {
    for (const fragment of [
        "#pattern=AAAA",
        "#pattern=%%%",
        "#strips=1e999&columns=<img src=x onerror=alert(1)>",
        "#size=-5&pattern=",
        `#strips=${"9".repeat(5000)}`,
        "#__proto__=1&units=__proto__",
    ]) {
        await page.evaluate((hash) => {
            location.hash = hash;
        }, fragment);
        await page.waitForTimeout(150);
        assert.ok(await page.isVisible("#undo"));
        assert.equal(await page.locator("img").count(), 0);
    }
});

onPage("a pattern file is opened, changed and saved", async (page) => {
    await openPattern(page, sample("lamplighters-round"));
    await says(page, "plan", "30 in x 38 in finished");
    await says(page, "materials", "1 1/8 yd");
    await page.selectOption("#size", { label: "lap" });
    await says(page, "plan", "48 in x 62 in finished");
    const block = page.locator("#blocks .say input").first();
    await block.fill("7 1/2 in");
    await page.waitForFunction(() => !document.querySelector("#plan .answer").textContent.includes("48"));
    await page.click("#border-more");
    await page.waitForFunction(() => document.querySelectorAll("#top .say legend").length > 2);
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
    assert.equal(download.suggestedFilename(), "lamplighter-s-round.json");
    const saved = JSON.parse(readFileSync(await download.path(), "utf8")),
        before = JSON.parse(readFileSync(sample("lamplighters-round"), "utf8"));
    assert.equal(Object.values(saved.sizes[1].measures)[0], "7 1/2 in");
    assert.equal(saved.borders.length, before.borders.length + 1);
    assert.deepEqual(saved.parts, before.parts);
    await page.click("#undo");
    await page.click("#undo");
    await says(page, "plan", "48 in x 62 in finished");
});

onPage("blocks are set straight, between sashes and on point", async (page) => {
    await openPattern(page, sample("market-barrow"));
    await says(page, "plan", "finished");
    const before = await answer(page);
    for (const [kind, words] of [
        ["sashed", "Width of the sashes, finished"],
        ["on point", "Side triangles of"],
        ["straight", "Blocks are set"],
    ]) {
        await page.selectOption("#field-setting", kind);
        await page.getByLabel(words, { exact: true }).waitFor();
        await page.waitForFunction(
            (was) => document.querySelector("#plan .answer")?.textContent !== was,
            kind === "straight" ? "" : before
        );
    }
});

onPage("what is wrong with a file is told with place and value", async (page) => {
    const file = JSON.parse(readFileSync(sample("market-barrow"), "utf8"));
    file.seam = { allowance: "1/4" };
    file.colours = 1;
    await openText(page, "wrong", JSON.stringify(file));
    await page.waitForSelector(".complaints li");
    const told = (await page.textContent(".complaints")).replaceAll("\u00a0", " ");
    assert.match(told, /2 things must be mended/);
    assert.match(
        told,
        /“allowance” of the seam is "1\/4": this length has no unit.*\(in the file: \/seam\/allowance\)/
    );
    assert.match(told, /“colours”: nothing is called so here/);
    assert.ok(await page.isVisible("#plan .told .complaints"), "where the answer would stand");
    await page.click("#as-text summary");
    delete file.colours;
    file.seam.allowance = "1/4 in";
    await page.fill("#text", JSON.stringify(file));
    await says(page, "plan", "finished");
    assert.equal(await page.locator(".complaints").count(), 0);
    await page.fill("#text", '{ "muslin_pattern": 1,\n "title": "x", "title": "y" }');
    await says(page, "complaints", 'at line 2, column 23, "title" stands here twice');
});

/** A file that would take the page over, or bring it down. */
const EVIL = '"><img src=x onerror="document.title=\'taken\'"><svg onload=alert(1)>';
const hostile = {
    markup: JSON.stringify({
        muslin_pattern: 1,
        title: EVIL,
        story: EVIL,
        invented: true,
        fabrics: { a: { name: EVIL.slice(0, 60), color: "#112233" }, b: { name: "</style><script>x</script>" } },
        measures: { m: "3 in" },
        parts: {
            p: {
                called: EVIL.slice(0, 60),
                block: true,
                grid: [
                    [
                        { patch: "a", size: "m" },
                        { patch: "b", size: "m" },
                    ],
                ],
            },
        },
        top: { alternate: [["p"]], columns: 3, rows: 3 },
        borders: [{ called: EVIL.slice(0, 60), fabric: "a", width: "m" }],
        backing: { name: EVIL.slice(0, 60) },
        sizes: [{ name: "<b>big</b>" }],
    }),
    members:
        `{"muslin_pattern":1,"title":"x","__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},` +
        `"fabrics":{"a":{}},` +
        `"<img src=x onerror=alert(1)>":1,"top":{"patch":"__proto__","size":"1 in"}}`,
    huge: JSON.stringify({
        muslin_pattern: 1,
        title: "huge",
        fabrics: { a: {} },
        measures: { m: "100000 in" },
        top: { repeat: { patch: "a", size: "m" }, columns: 2147483647, rows: 2147483647 },
    }),
    many: JSON.stringify({
        muslin_pattern: 1,
        title: "many",
        fabrics: { a: {}, b: {} },
        top: {
            alternate: [
                [
                    { patch: "a", size: "1 in" },
                    { patch: "b", size: "1 in" },
                ],
            ],
            columns: 300,
            rows: 300,
        },
    }),
    doubled: JSON.stringify({
        muslin_pattern: 1,
        title: "doubled",
        fabrics: { a: {} },
        parts: Object.fromEntries([
            ["p0", { patch: "a", size: "1 in" }],
            ...Array.from({ length: 60 }, (_, i) => [`p${i + 1}`, { across: [`p${i}`, `p${i}`] }]),
        ]),
        top: "p60",
    }),
    ring: JSON.stringify({
        muslin_pattern: 1,
        title: "ring",
        fabrics: { a: {} },
        parts: { p: { turn: "q", quarters: 1 }, q: { mirror: "p" } },
        top: "p",
    }),
    deep: `${'{"turn":'.repeat(100000)}1${"}".repeat(100000)}`,
    lists: "[".repeat(2000000),
    large: `{"muslin_pattern":1,"title":"${"x".repeat(5 * 1024 * 1024)}"}`,
    string: `{"muslin_pattern":1,"title":"${"\\u0041".repeat(600000)}"}`,
    wide:
        `{"muslin_pattern":1,"title":"wide","fabrics":{` +
        `${Array.from({ length: 40000 }, (_, i) => `"f${i}":{}`).join(",")}},` +
        `"top":{"patch":"f1","size":"1 in"}}`,
    number: '{"muslin_pattern":1e400,"title":"x"}',
    empty: "",
    binary: String.fromCharCode(0, 1, 2, 255).repeat(1000),
};

for (const [name, text] of Object.entries(hostile))
    onPage(`a hostile file: ${name}`, async (page) => {
        await openPattern(page, sample("market-barrow"));
        await says(page, "plan", "finished");
        await openText(page, name, text);
        await page.waitForTimeout(300);
        // The page answers while the Worker may still be busy.
        const begun = Date.now();
        await page.focus("#undo");
        assert.equal(await page.evaluate(() => 1 + 1), 2);
        assert.ok(Date.now() - begun < 2000, `the page hung for ${Date.now() - begun} ms`);
        await page.waitForFunction(
            () =>
                document.querySelector("#complaints").textContent !== "" ||
                (document.querySelector("#plan .answer") !== null && !document.body.classList.contains("stale")),
            undefined,
            { timeout: 60000 }
        );
        assert.equal(await page.locator("img, script:not([src]), iframe, object").count(), 0);
        assert.notEqual(await page.title(), "taken");
        assert.equal(await page.evaluate(() => ({}).polluted), undefined);
        await page.setInputFiles("#file", sample("sixteen-hearths"));
        await says(page, "plan", "36 in x 36 in finished");
    });

onPage("a long search tells how it stands, and is stopped", async (page) => {
    const sizes = [
        3.125, 4.375, 5.625, 6.875, 7.125, 8.375, 9.625, 10.875, 11.125, 12.375, 13.625, 2.875, 14.125, 15.375,
    ];
    const rows = sizes.map((width, i) => ({
        patch: "a",
        width: `${width} in`,
        height: `${sizes[(i * 5 + 3) % sizes.length]} in`,
    }));
    await openText(
        page,
        "long",
        JSON.stringify({
            muslin_pattern: 1,
            title: "long",
            fabrics: { a: { "usable width": "41.375 in" } },
            tops: 7,
            top: { across: rows },
        })
    );
    await page.waitForSelector("#search:not([hidden])", { timeout: 30000 });
    await page.waitForFunction(
        () => /million steps/.test(document.getElementById("search-words").textContent),
        undefined,
        { timeout: 30000 }
    );
    const begun = Date.now();
    await page.click("#as-text summary"); // the page answers at once
    assert.ok(Date.now() - begun < 1000);
    await page.click("#stop");
    assert.ok(await page.isHidden("#search"));
    await says(page, "materials", "Not proven to be the least cloth");
    assert.ok((await page.locator("#cutting figure").count()) > 0);
    await page.setInputFiles("#file", sample("sixteen-hearths"));
    await says(page, "plan", "36 in x 36 in finished");
});

onPage("with the keys alone", async (page) => {
    const focused = () => page.evaluate(() => document.activeElement.id || document.activeElement.textContent.trim());
    const tabTo = async (wanted) => {
        for (let presses = 0; presses < 120; presses++) {
            await page.keyboard.press("Tab");
            if ((await focused()) === wanted) return;
        }
        assert.fail(`the Tab key does not come to ${wanted}`);
    };
    await page.keyboard.press("Tab");
    assert.equal(await focused(), "To the materials");
    await tabTo("field-strips");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("80");
    await says(page, "plan", "44 strips");
    await tabTo("field-nesting");
    await page.keyboard.press("ArrowDown");
    await says(page, "blocks", "not lock");
    for (let presses = 0; presses < 10 && (await focused()) !== "How the set comes out"; presses++)
        await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#sets details[open] table");
    const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
    assert.equal(outline, "solid", "one sees where one is");
    await page.focus("#title");
    await tabTo(
        await page.evaluate(
            () =>
                document.querySelector("input[value=strips]").id ||
                (document.querySelector("input[value=strips]").id = "from-strips")
        )
    );
    await page.keyboard.press("ArrowDown");
    await page.waitForSelector("#sample");
    await says(page, "plan", "finished");
    await tabTo("sample");
    await page.keyboard.type("sixteen");
    await says(page, "plan", "36 in x 36 in finished");
    await tabTo("size");
    await page.keyboard.press("End");
    await says(page, "plan", "92 in x 92 in finished");
    await tabTo("undo");
    await page.keyboard.press("Enter");
    await says(page, "plan", "36 in x 36 in finished");
});

onPage("only its own files are asked for, and no other code runs", async (page) => {
    const foreign = [];
    page.on(
        "request",
        (request) =>
            !request.url().startsWith(site.address) &&
            !/^(data|blob):/.test(request.url()) &&
            foreign.push(request.url())
    );
    await openPattern(page, sample("sixteen-hearths"));
    await says(page, "materials", "5/8 yd");
    assert.deepEqual(foreign, []);
    const stopped = await page.evaluate(async () => {
        const violations = [];
        document.addEventListener("securitypolicyviolation", (event) => violations.push(event.effectiveDirective));
        const script = document.createElement("script");
        script.textContent = "globalThis.taken = true;";
        document.body.append(script);
        const styled = document.createElement("p");
        styled.setAttribute("style", "color: red");
        document.body.append(styled);
        await fetch("http://127.0.0.1:9/").catch(() => {});
        setTimeout("globalThis.taken = true;"); // eval() itself is let through where a test calls it
        await new Promise((done) => {
            setTimeout(done, 200);
        });
        return { taken: globalThis.taken ?? false, violations: [...new Set(violations)].sort() };
    });
    assert.deepEqual(stopped, {
        taken: false,
        violations: ["connect-src", "script-src", "script-src-elem", "style-src-attr"],
    });
    page.errors.length = 0; // those were wanted
    assert.equal(await page.evaluate(() => [...document.querySelectorAll("[style]")].length), 1);
});

for (const width of [360, 800, 1400])
    for (const kind of ["strips", "pattern"])
        onPage(
            `nothing keeps anybody out: ${kind}, ${width} px`,
            async (page) => {
                if (kind === "pattern") {
                    await openPattern(page, sample("ferry-steps"));
                    await says(page, "materials", "yd");
                }
                await page.evaluate(() =>
                    document.querySelectorAll("details").forEach((one) => {
                        one.open = true;
                    })
                );
                assert.ok(
                    await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth),
                    "the page is wider than the window"
                );
                await page.evaluate(() => new Promise((done) => setTimeout(done, 400)));
                await page.evaluate(`(() => { ${axeSource.replaceAll("</", "<\\/")} })()`).catch(() => {});
                const found = await page.evaluate(
                    async () =>
                        globalThis.axe &&
                        (await globalThis.axe.run({ resultTypes: ["violations"] })).violations.map(
                            ({ id, nodes }) =>
                                `${id}: ${nodes
                                    .slice(0, 3)
                                    .map((node) => node.html.slice(0, 160))
                                    .join(" | ")}`
                        )
                );
                assert.deepEqual(found, []);
            },
            { viewport: { width, height: 800 } }
        );

onPage("what is printed has the answers and the cautions, and no fields", async (page) => {
    await page.emulateMedia({ media: "print" });
    assert.equal(await page.locator(".say:visible").count(), 0);
    for (const words of [
        "Sew a test block first",
        "place where an infant sleeps",
        "hand flat on the ruler",
        "Seam allowance",
    ])
        assert.ok((await page.locator("body").innerText()).includes(words), words);
    assert.ok((await page.pdf({ format: "A4" })).length > 10000);
});

// ---- the strip quilt says what happens on the table -----------------------------------------------------------------

/** The words of a section, blanks as blanks. */
const words = async (page, section) => (await page.textContent(`#${section} .follows`)).replaceAll("\u00a0", " ");

onPage("cut from both ends, a set loses or gains two segments", async (page) => {
    // 40 strips, 40 in: three segments of 6 1/2 in fit into 20 in less 1/4 in from either end; below 39 1/2 in two do
    const sets = await words(page, "sets");
    for (const told of [
        "Each strip may be 1/2 in shorter than planned, down to 39 1/2 in usable.",
        "Below that, its set loses two segments, one at each end.",
        "For two segments more, one at each end, from each set, strips would have to be 12 1/2 in longer",
    ])
        assert.ok(sets.includes(told), told);
    await field(page, "Strips in the bundle").fill("60");
    await field(page, "Usable length of a strip, selvages off").fill("39");
    await says(page, "sets", "Across each set, cut 4 segments");
    await page.check("#field-fromOneEnd");
    await says(page, "sets", "Below that, its set loses a segment.");
});

onPage("what a set gives straight through is said where that is more", async (page) => {
    // 5 strips 2 1/2 in: 10 1/2 in, so segments of 5 1/2 in; 39 1/2 in hold 7 of them, and 19 3/4 in twice 3
    await field(page, "Strips in a set").fill("5");
    await says(
        page,
        "sets",
        "Across each set, cut 6 segments, each cut 5 1/2 in wide (5 in finished); a piece 6 1/2 in"
    );
    await says(page, "sets", "Straight through from one end, across the fold, a set gives 7 segments.");
    await page.check("#field-fromOneEnd");
    await says(page, "sets", "Across each set, cut 7 segments");
    assert.doesNotMatch(await words(page, "sets"), /across the fold/);
});

onPage("cornerstones have cloth of their own", async (page) => {
    await field(page, "Width of a border, finished (0 in: none)").fill("5 in");
    await page.selectOption("#field-style", "cornerstones");
    // four squares of 5 1/2 in lie in one strip of 40 in: 5 1/2 in, up to 1/4 yd
    await says(page, "materials", "Cornerstones: they need cloth of their own; buy 1/4 yd");
    await says(page, "materials", "Border: buy 7/8 yd");
    assert.match(await page.textContent("#top figcaption"), /with its border/);
});

onPage("which stacks meet stands there, on paper too", async (page) => {
    await page.emulateMedia({ media: "print" });
    const blocks = await page.locator("#blocks").innerText();
    assert.match(
        blocks.replaceAll("\u00a0", " "),
        /Blocks 2 to 6: one segment from each of stacks 1 and 4, left to right/
    );
});

onPage("a set of one strip is told to be none", async (page) => {
    await field(page, "Strips in a set").fill("1");
    await field(page, "Segments in a block").fill("1");
    await says(page, "sets", "A set is a single strip here: there is nothing to sew yet.");
});

// ---- what is typed --------------------------------------------------------------------------------------------------

onPage("a number alone takes the unit chosen, and a comma is a point", async (page) => {
    const cut = field(page, "Width of a strip, cut"),
        binding = field(page, "Width of binding strips, cut");
    await cut.fill("2");
    await says(page, "materials", "Taken as 2 in.");
    await says(page, "materials", "cut 2 in wide");
    await binding.fill("6,5 cm");
    assert.equal(await cut.inputValue(), "2 in");
    await says(page, "finishing", "Taken as 6.5 cm.");
    await page.check("input[value=cm]");
    await binding.fill("7");
    await says(page, "finishing", "strips cut 7 cm wide");
    await says(page, "materials", "cut 5.08 cm wide"); // 2 in stay 2 in
    await openPattern(page, sample("lamplighters-round"));
    await says(page, "plan", "The top is about 76.2 cm x 96.5 cm finished"); // as chosen, of a file in inches
    await page.locator("#blocks .say input").first().fill("7,5");
    await page.waitForFunction(() => JSON.parse(document.getElementById("text").value).sizes[0].measures !== undefined);
    await page.click("#title");
    const file = JSON.parse(await page.inputValue("#text"));
    assert.ok(Object.values(file.sizes[0].measures).includes("7.5 cm"));
});

onPage("the field that was changed is the one that is marked", async (page) => {
    const marked = () => page.evaluate(() => [...document.querySelectorAll("[aria-invalid]")].map((one) => one.id));
    for (const [name, wrong, right] of [
        ["segmentCut", "7 in", "0 in"],
        ["stripLength", "12 in", "40 in"],
        ["columns", "5000", "4"],
        ["stripLength", "5 in", "40 in"],
    ]) {
        await page.fill(`#field-${name}`, wrong);
        assert.deepEqual(await marked(), [`field-${name}`]);
        await page.fill(`#field-${name}`, right);
        assert.deepEqual(await marked(), []);
    }
    await page.fill("#field-rows", "5");
    // 20 blocks of two segments, six a set: seven sets of six strips
    assert.match(
        (await page.textContent("#field-rows-wrong")).trim(),
        /^42 strips are needed, and there are only 40: 2 more are missing\.$/
    );
});

onPage("lengths are shown exactly, or not less than they are", async (page) => {
    await page.check("input[value=cm]");
    await says(page, "assumed", "Seam allowance 6.35 mm on each edge");
    await page.check("input[value=mm]");
    // 44 in over a 36 in quilt and 4 in beyond: 1117.6 mm
    await page.fill("#field-columns", "3");
    await says(page, "finishing", "The back must measure at least 1118 mm");
    assert.match(await words(page, "materials"), /Binding: buy 0\.\d+ m of cloth/);
});

onPage("the units that were chosen stay, whatever is opened", async (page) => {
    const units = () => page.evaluate(() => document.querySelector("input[name=units]:checked").value);
    assert.equal(await units(), "in");
    await openPattern(page, sample("slipway-pebbles"));
    await says(page, "plan", "125 cm x 155 cm");
    assert.equal(await units(), "cm", "as the file says, as long as nothing was chosen");
    await page.check("input[value=strips]");
    assert.equal(await units(), "in");
    await page.check("input[value=mm]");
    await openPattern(page, sample("slipway-pebbles"));
    await says(page, "plan", "1250 mm x 1550 mm");
    await openPattern(page, sample("ferry-steps"));
    await says(page, "plan", "1016 mm x 1016 mm finished"); // 40 in
    await page.check("input[value=strips]");
    assert.equal(await units(), "mm");
    await page.waitForFunction(() => location.hash.includes("units=mm"));
});

onPage("in metric units cloth is told in tenths of a metre, and what is least alike", async (page) => {
    await page.check("input[value=cm]");
    await openPattern(page, sample("ferry-steps"));
    // A quilt of 40 in and 4 in beyond: 48 in are 121.92 cm.
    await says(page, "finishing", "The back must measure at least 122 cm x 122 cm");
    const finishing = await words(page, "finishing");
    assert.match(finishing, /Sewn together it measures at least 122 cm x 122 cm unfinished/);
    assert.doesNotMatch(finishing, /121\.9/);
    await page.waitForFunction(() => !document.querySelector("#materials .follows").textContent.includes("…"));
    const bought = await page.evaluate(() =>
        [...document.querySelectorAll('#materials td[data-head="Buy"]')].map((cell) => cell.textContent)
    );
    assert.ok(bought.length > 6);
    for (const cell of bought.slice(0, -1)) assert.match(cell, /^\d+(\.\d)?\u00a0m$/);
    assert.equal(await field(page, "Shops cut cloth in steps of").inputValue(), "10 cm");
});

onPage("what is wrong with a field is a sentence of its own", async (page) => {
    const told = async (name, typed) => {
        await page.fill(`#field-${name}`, typed);
        return (await page.textContent(`#field-${name}-wrong`)).replaceAll("\u00a0", " ");
    };
    assert.equal(
        await told("segmentCut", "-1 in"),
        "“Width of a segment, cut” is “-1 in”: a length is 0 or more."
    );
    for (const far of ["140000 in", "99999999999999999999 in"])
        assert.equal(
            await told("segmentCut", far),
            `“Width of a segment, cut” is “${far}”: no quilt is that large.`
        );
    assert.equal(
        await told("segmentCut", ""),
        '“Width of a segment, cut” is empty: this is no length: write it like "2 1/2 in" or "0.75 in".'
    );
    await page.fill("#field-segmentCut", "0 in");
    assert.equal(await told("columns", "0"), "“Blocks across” is “0”: a whole number is wanted here, 1 or more.");
    await page.fill("#field-columns", "4");
    await page.check("input[value=mm]");
    // Seams of 1/4 in on either side of a strip that is 10 mm wide.
    assert.match(await told("stripCut", "10 mm"), /^Cut width of a strip is 10 mm, but its seams take 12\.7 mm/);
});

/** Types into fields of the strip quilt, by their names. */
async function fill(page, texts) {
    for (const [name, text] of Object.entries(texts)) await page.fill(`#field-${name}`, text);
}

/** All that sections say. */
async function tells(page, section, ...all) {
    for (const one of all) await says(page, section, one);
}

onPage("slack is told for the width that segments are cut at", async (page) => {
    // Four strips make 8 1/2 in unfinished, and of three segments each takes 8/3 + 1/2 = 3 1/6 in. Cut at 3 1/4 in, 12
    // take 39 in and 1/2 in for the ends, 14 would take 46 in.
    await fill(page, { stripsPerSet: "4", segmentsPerBlock: "3" });
    await tells(
        page,
        "sets",
        "cut 12 segments, each cut 3 1/4 in wide",
        "a piece 1/2 in long is left over",
        "Each strip may be 1/2 in shorter than planned, down to 39 1/2 in usable.",
        "strips would have to be 6 in longer",
        // 3 x 2 3/4 + 1/2 in
        "sewn of such segments it is 8 3/4 in wide. Trim each block to about 8 1/2 in x 8 1/2 in unfinished"
    );
    await says(page, "cutting", "cut 3 1/4 in wide");
    // 12 x 3 1/4 + 1/2 = 39 1/2 in are too long, 12 x 3 3/16 + 1/2 = 38 3/4 in are not
    await fill(page, { stripLength: "39 in" });
    await tells(page, "sets", "cut 12 segments, each cut 3 3/16 in wide", "Each strip may be 1/4 in shorter");
    assert.doesNotMatch(await words(page, "sets"), /just short|less than that mark/);
    // 12 x 3 11/64 + 1/2 = 38 9/16 in are too long by 1/16 in, 12 x 3 1/6 + 1/2 = 38 1/2 in fit
    await fill(page, { stripLength: "38 1/2 in" });
    await tells(page, "sets", "each cut about 3.167 in wide", "cut at 3 11/64 in, a set gives 10.");
    await tells(page, "sets", "nothing is left over", "Each strip may be 0 in shorter than planned");
});

onPage("slack with what fold and thread take, in inches and millimetres", async (page) => {
    // 5 x (2 1/2 - 17/32) in are 9 27/32 in, half of it and 17/32 in 5 29/64 in, cut at 5 1/2 in: six and 1 in for the
    // ends are 34 in, eight are 45 in.
    await fill(page, { strips: "42", stripLength: "42 in", stripsPerSet: "5", takeUp: "1/32 in", endTrim: "1/2 in" });
    await tells(
        page,
        "sets",
        "cut 6 segments, each cut 5 1/2 in wide",
        "Each strip may be 8 in shorter than planned, down to 34 in usable.",
        "strips would have to be 3 in longer"
    );
    // 5 x (2 1/2 - 9/16) in are 9 11/16 in, a third of it and 9/16 in 96.3 mm: ten cut at 97 mm and 12.7 mm for the
    // ends are 982.7 mm of 1016 mm.
    await fill(page, { stripLength: "40 in", takeUp: "1/16 in", endTrim: "1/4 in", segmentsPerBlock: "3" });
    await page.check("input[value=mm]");
    await tells(page, "sets", "cut 10 segments, each cut 97 mm wide", "Each strip may be 33.3 mm shorter than planned");
    await says(page, "sets", "down to 983 mm usable");
});

onPage("what is square is told as square, and a cut never below its width", async (page) => {
    // 10 1/4 - 9/16 = 9 11/16 in; 4 x 9 11/16 + 9/16 = 39 5/16 in
    await fill(page, { stripsPerSet: "5", takeUp: "1/16 in", segmentsPerBlock: "3" });
    await says(page, "blocks", "9 11/16 in x 9 11/16 in finished");
    await says(page, "top", "39 5/16 in x 39 5/16 in unfinished");
    // A border of 4 in, its two allowances and what fold and thread take, with 7/32 in: 4 + 1/2 + 7/32 = 4 23/32 in
    await fill(page, { stripsPerSet: "6", segmentsPerBlock: "2", takeUp: "7/32 in", finishedBorder: "4 in" });
    await says(page, "top", "pieces cut 4 3/4 in wide");
    // 4 + 1/2 + 9/32 = 4 25/32 in
    await fill(page, { takeUp: "9/32 in" });
    await says(page, "top", "pieces cut 4 13/16 in wide");
    await says(page, "cutting", "cut 4 13/16 in wide");
    assert.doesNotMatch(await words(page, "cutting"), /about/);
});

onPage("of several tops it is told what is for each and what for all", async (page) => {
    // 64 segments, six a set, are eleven sets. The border of 4 in round 48 in: two sides of 48 1/2 in and two of
    // 56 1/2 in are 210 in, six strips of 40 in, cut 4 1/2 in: 27 in, twice 54 in.
    await fill(page, { strips: "80", tops: "2", finishedBorder: "4 in" });
    await says(page, "plan", "2 tops, each 56 in x 56 in finished, from 66 strips in 11 sets");
    await tells(
        page,
        "materials",
        "Border: buy 1 1/2 yd of cloth for both tops (3/4 yd for each top alone)",
        // 4 x 56 + 12 in: seven strips of 2 1/2 in, 17 1/2 in up to 1/2 yd, and 35 in up to 1 yd
        "Binding: buy 1 yd of cloth for both tops (1/2 yd for each top alone)",
        // Two panels of 64 in are 128 in, up to 3 5/8 yd; four are 256 in, up to 7 1/8 yd
        "Backing: buy 7 1/8 yd for both tops (3 5/8 yd for each top alone)",
        "Batting: 2 pieces of 62 in x 62 in, cut, one for each top."
    );
    await says(page, "cutting", "Border: 12 strips across the cloth (6 for each top)");
    await says(page, "cutting", "Binding: 14 strips across the cloth (7 for each top)");
    await tells(page, "top", "Each top: 4 rows of 4 blocks.", "8 are turned in each top", "6 strips for each top");
    await tells(page, "finishing", "Buy 7 1/8 yd for all 2 quilts", "for each quilt", "14 strips cut 2 1/2 in wide");
});

onPage("a quilt is small with its border, not before", async (page) => {
    await says(page, "plan", "baby");
    await fill(page, { finishedBorder: "6 in" }); // 60 in
    await says(page, "plan", "60 in x 60 in");
    assert.match(await words(page, "plan"), /baby/);
    await fill(page, { finishedBorder: "16 in" });
    await says(page, "plan", "80 in x 80 in");
    assert.doesNotMatch(await words(page, "plan"), /baby/);
});

onPage("what cannot be finished is told beside the headline", async (page) => {
    const BACK = "“Width of the backing cloth” is 1 in, but must be more than 1 in.", // two seams of 1/2 in
        BINDING = "a binding is cut wider than its two seam allowances.",
        ACROSS = "“Usable width of cloth for borders and binding” is 1 in, but must be more than 2 1/2 in.";
    for (const [name, typed, told] of [
        ["bindingCut", "1/2 in", `“Width of binding strips, cut” is “1/2 in”: ${BINDING}`],
        ["bindingCut", "0 in", `“Width of binding strips, cut” is “0 in”: ${BINDING}`],
        ["fabricWidth", "1 in", BACK],
        ["step", "0 in", "“Shops cut cloth in steps of” is 0 in, but must be more than 0 in."],
        ["clothWidth", "1 in", ACROSS],
        ["finishedBorder", "100000 in", "“Width of a border, finished” is 100000 in: no quilt is that large."],
    ]) {
        const before = await page.inputValue(`#field-${name}`);
        await page.fill(`#field-${name}`, typed);
        await says(page, "plan", told);
        await says(page, "plan", "What hangs on it is left out below.");
        assert.match(await answer(page), /1.top of/);
        assert.equal(await page.getAttribute(`#field-${name}`, "aria-invalid"), "true");
        assert.doesNotMatch(await words(page, "plan"), /1\.0001|132104/);
        await page.fill(`#field-${name}`, before);
        await page.waitForFunction(() => document.getElementById("first-wrong") === null);
    }
});

onPage("a block of one segment is no row of them", async (page) => {
    await fill(page, { strips: "60", segmentsPerBlock: "1" }); // three segments a set, eight sets of six
    await says(page, "blocks", "16 blocks, each a single segment with strip A up:");
    await says(page, "blocks", "one segment from stack 1.");
    assert.doesNotMatch(await words(page, "blocks"), /side by side|each of stack 1|left to right/);
});

// ---- files ----------------------------------------------------------------------------------------------------------

onPage("units are drawn, and tried where there is no block; strips stand as they are told", async (page) => {
    await openPattern(page, sample("the-courtyard-well"));
    await says(page, "blocks", "Test unit: first cut and sew as few of each unit as its step makes at a time");
    await says(page, "blocks", "12 1/2 in x 12 1/2 in unfinished, 12 in x 12 in finished.");
    const drawn = await page.locator("#blocks figcaption").allTextContents();
    assert.deepEqual(drawn, ["Star A, finished", "Tooth B, finished"]);
    await openPattern(page, sample("market-barrow"));
    await says(page, "sets", "from left to right");
    const strips = await page.evaluate(() =>
        Array.from(document.querySelector("#sets svg").querySelectorAll("rect.seam"), (one) => {
            const { x, y } = one.getBoundingClientRect();
            return { x, y };
        })
    );
    assert.equal(new Set(strips.map(({ x }) => x)).size, 4, "side by side");
    assert.equal(new Set(strips.map(({ y }) => y)).size, 1);
});

onPage("a field of a file speaks as the others do", async (page) => {
    await openPattern(page, sample("market-barrow"));
    await says(page, "materials", "Shrinkage is not counted");
    await page.fill('[name="field--2f-borders-2f-0-2f-width"]', "-1 in");
    await says(page, "top", "“Width, finished” is “-1 in”: a length is 0 or more.");
    assert.doesNotMatch(await page.textContent("#plan"), /times/);
    await page.fill('[name="field--2f-borders-2f-0-2f-width"]', "2 in");
    await page.fill('[name="field--2f-binding-2f-cut-20-width"]', "1/4 in");
    await says(
        page,
        "finishing",
        "“Width of binding strips, cut” is “1/4 in”: a binding is cut wider than its two seam allowances."
    );
});

onPage("where cloth cannot be cut the sentence stands at its field", async (page) => {
    await openPattern(page, sample("a-kite-each"));
    await says(page, "materials", "Shrinkage is not counted");
    const width = page.locator("[id='field--2f-fabrics-2f-sky-2f-usable-20-width']");
    await width.fill("4 in");
    await says(page, "complaints", "Cut width of a piece is");
    const wrong = page.locator("[id='field--2f-fabrics-2f-sky-2f-usable-20-width-wrong']");
    assert.match(await wrong.textContent(), /there is room for at most 4.in/);
    await says(page, "materials", "not known");
    await width.fill("40 in");
    await says(page, "materials", "Shrinkage is not counted");
    assert.equal(await wrong.textContent(), "");
});

onPage("triangles are of cloth, and too large for strips", async (page) => {
    await openPattern(page, sample("market-barrow"));
    await says(page, "materials", "Shrinkage is not counted");
    await field(page, "Blocks are set").selectOption("on point");
    await says(page, "materials", "Shrinkage is not counted");
    assert.equal(await field(page, "Side triangles of").inputValue(), "oatmeal");
    assert.equal(await page.textContent("#complaints"), "");
    await says(page, "sets", "Of the 4 sets press 1 with every seam to the left: from it cut 4 B*.");
    await says(page, "top", "Row 1: seam 1 towards the lower right; seam 2 towards the upper left.");
    await field(page, "Side triangles of").selectOption("apricot");
    await says(page, "complaints", "there is room for at most 2 1/2 in");
    assert.doesNotMatch(await words(page, "materials"), /\b0 strips/);
    assert.doesNotMatch(await words(page, "cutting"), /\b0 strips/);
});

onPage("needed and spare make what is bought, and cloth of two widths no length", async (page) => {
    await openPattern(page, sample("sixteen-hearths"));
    await page.check("input[value=cm]");
    await page.locator("[id='field--2f-backing-2f-width']").fill("150 cm");
    await says(page, "materials", "slate is bought for the top and for the back, of two widths: as two lengths.");
    assert.doesNotMatch(await words(page, "materials"), /in all/);
    const rows = await page.$$eval("#materials tbody tr", (all) =>
        all.map((row) => [...row.querySelectorAll("td, th")].map((cell) => parseFloat(cell.textContent)))
    );
    const told = rows.filter(([, , , spare]) => !Number.isNaN(spare));
    assert.ok(told.length > 4);
    for (const [, needed, bought, spare] of told)
        assert.ok(Math.abs(needed + spare - 100 * bought) < 0.001, `${needed} and ${spare} are not ${bought} m`);
    assert.equal(await field(page, "Fold and thread take at each seam").inputValue(), "0 cm");
});

onPage("two fabrics of one name are refused, and a width says what it takes", async (page) => {
    await openPattern(page, sample("a-kite-each"));
    await says(page, "plan", "finished");
    const group = page.getByRole("group", { name: /^Border 1/ });
    assert.equal(await group.getByLabel("Width, finished").inputValue(), "inner border");
    assert.match(await group.textContent(), /the name of a measure of the file: here .* “inner border”/);
    await page.locator("[id='field--2f-fabrics-2f-sky-2f-name']").fill("hay");
    await says(page, "complaints", "an earlier fabric has this name");
    assert.match(
        await page.locator("[id='field--2f-fabrics-2f-sky-2f-name-wrong']").textContent(),
        /The fabric “hay”: an earlier fabric has this name/
    );
});

onPage("where no seams meet nothing locks, and an insert is turned", async (page) => {
    await openPattern(page, sample("ferry-steps"));
    await says(page, "top", "That counts the most seams of each row and block, which no one line need cross.");
    await says(page, "top", "Pressing, all together");
    assert.match(await words(page, "top"), /meet at [1-9]\d* places/);
    await page.locator("#size").selectOption({ label: "wall" });
    await says(page, "finishing", "Turn the insert a quarter: the 40 in across the cloth run down the quilt.");
    await openPattern(page, sample("market-barrow"));
    await field(page, "Blocks are set").selectOption("sashed");
    await says(page, "top", "of seams in all");
    assert.doesNotMatch(await words(page, "top"), /meet at 0|lock into/);
});

onPage("on paper no heading stands over nothing", async (page) => {
    await openText(
        page,
        "plain",
        '{ "muslin_pattern": 1, "title": "plain", "fabrics": { "a": {} }, "top": { "across": [ ' +
            '{ "patch": "a", "size": "3 in" }, { "patch": "a", "size": "3 in" } ] } }'
    );
    await says(page, "materials", "Shrinkage is not counted");
    await page.emulateMedia({ media: "print" });
    assert.ok(await page.isHidden("#blocks-head"));
    assert.ok(await page.isVisible("#top-head"));
});

onPage("strip sets are no blocks", async (page) => {
    await openPattern(page, sample("ferry-steps"));
    await page.selectOption("#size", { label: "twin" });
    await says(page, "blocks", "35 × rail block A: 12 1/2 in x 12 1/2 in unfinished.");
    assert.doesNotMatch(await words(page, "blocks"), /x 40 in unfinished/);
    await openPattern(page, sample("sixteen-hearths"));
    await says(page, "blocks", "16 × hearth block L");
});

onPage("of a refused file nothing of the one before stays", async (page) => {
    await openPattern(page, sample("ferry-steps"));
    await says(page, "plan", "finished");
    await openText(page, "refused", '{ "muslin_pattern": 1, "title": "x", "fabrics": {} }');
    await page.waitForSelector(".complaints li");
    assert.equal(await page.textContent("#title"), "A pattern file that cannot be read");
    assert.equal(await page.locator("#materials .say *").count(), 0);
    assert.equal(await page.textContent("#materials .follows"), "");
    await openText(
        page,
        "one",
        '{ "muslin_pattern": 2, "title": "x", "fabrics": { "a": {} }, "top": { "patch": "a", "size": "1 in" } }'
    );
    await says(page, "complaints", "This pattern file is of another form than this page reads");
    await openPattern(page, sample("ferry-steps"));
    await says(page, "plan", "finished");
    assert.equal(await page.locator(".complaints").count(), 0);
});

onPage("the contents lead to the parts, and what was typed stays", async (page) => {
    await page.fill("#field-rows", "3");
    await page.waitForFunction(() => location.hash.includes("rows=3"));
    await page.click("#contents a[href='#finishing']");
    assert.equal(await page.evaluate(() => document.activeElement.id), "finishing-head");
    assert.ok(await page.evaluate(() => document.getElementById("finishing-head").getBoundingClientRect().top < 300));
    assert.equal(await page.inputValue("#field-rows"), "3");
    assert.match(await page.evaluate(() => location.hash), /rows=3/);
});

// ---- paper, phone, no network ---------------------------------------------------------------------------------------

onPage("printing unfolds what is folded, and folds it again", async (page) => {
    await page.evaluate(() => {
        addEventListener("beforeprint", () => {
            globalThis.folded = document.querySelectorAll("main .follows details:not([open])").length;
        });
    });
    assert.ok((await page.locator("main .follows details:not([open])").count()) > 0);
    await page.pdf({ format: "A4" });
    assert.equal(await page.evaluate(() => globalThis.folded), 0);
    assert.ok((await page.locator("main .follows details:not([open])").count()) > 0);
});

for (const name of ["market-barrow", "a-kite-each", ""])
    onPage(
        `on a phone nothing is moved sideways: ${name || "strips"}`,
        async (page) => {
            if (name) {
                await openPattern(page, sample(name));
                await says(page, "materials", "Shrinkage is not counted");
            }
            const wider = await page.evaluate(() =>
                [...document.querySelectorAll(".wide")]
                    .filter((one) => one.scrollWidth > one.clientWidth + 1)
                    .map((one) => one.getAttribute("aria-label"))
            );
            assert.deepEqual(wider, []);
            const letters = await page.evaluate(() =>
                [...document.querySelectorAll("figure text")].map(
                    (one) => one.getAttribute("font-size") * one.ownerSVGElement.getScreenCTM().a
                )
            );
            assert.ok(Math.min(...letters) >= 10, `letters of ${Math.min(...letters)} pixels`);
            const dot = await page.locator("input[type=radio]").first().boundingBox();
            assert.ok(dot.width >= 24 && dot.height >= 24);
        },
        { viewport: { width: 390, height: 800 } }
    );

test("a new version is taken at the next load", { timeout: 120000 }, async () => {
    const own = await served();
    const context = await chromium.newContext();
    try {
        const page = await opened(context, own.address);
        await page.evaluate(() => navigator.serviceWorker.ready);
        const worker = readFileSync(join(process.env.MUSLIN_WEB, "offline.js"), "utf8");
        const html = readFileSync(join(process.env.MUSLIN_WEB, "index.html"), "utf8");
        own.changed.set("/offline.js", worker.replace('VERSION = "', 'VERSION = "new'));
        for (const path of ["/", "/index.html"])
            own.changed.set(path, html.replace("<body>", '<body data-version="new">'));
        await page.reload(); // the old one still, while the new one comes in
        assert.equal(await page.getAttribute("body", "data-version"), null);
        await page.evaluate(async () => {
            const registration = await navigator.serviceWorker.getRegistration();
            while (!registration.waiting) await new Promise((done) => setTimeout(done, 50));
        });
        await page.reload();
        // A browser ends the old worker when it is idle, but not while it is looked into, as here.
        const browserItself = await context.newCDPSession(page);
        await browserItself.send("ServiceWorker.enable");
        const ended = setInterval(() => browserItself.send("ServiceWorker.stopAllWorkers").catch(() => {}), 1000);
        await page.waitForSelector("body[data-version=new][data-ready]").finally(() => clearInterval(ended));
        const kept = await page.evaluate(() => caches.keys());
        assert.equal(kept.length, 1, "what was kept of the old version is gone");
    } finally {
        await context.close();
        own.server.close();
    }
});

onPage("after the first visit it works without a network", async (page) => {
    const context = page.context();
    await page.evaluate(() => navigator.serviceWorker.ready);
    await context.setOffline(true);
    try {
        await page.reload();
        await page.waitForSelector("body[data-ready]");
        await page.fill("#field-rows", "3");
        await says(page, "plan", "48 in x 36 in");
        await page.check("input[value=pattern]");
        await page.waitForSelector("#sample");
        await page.selectOption("#sample", "sixteen-hearths");
        await says(page, "plan", "36 in x 36 in finished");
        await page.selectOption("#sample", "slipway-pebbles");
        await says(page, "plan", "125 cm x 155 cm");
        await page.waitForFunction(() => location.hash.includes("pattern="));
    } finally {
        await context.setOffline(false);
    }
});
