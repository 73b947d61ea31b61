// Keeps the page and its samples for when there is no network: all files at the first visit, and those of a new
// version, which is taken as a whole at the next load. `run` puts before this what they are: VERSION, of their
// contents, and FILES.
//
// SPDX-License-Identifier: MIT
/* global VERSION, FILES */
const KEPT = `quilt ${registration.scope} `,
    TRIES = 10;

addEventListener("install", (event) => {
    const fresh = FILES.map((file) => new Request(file, { cache: "no-cache" }));
    event.waitUntil(caches.open(KEPT + VERSION).then((kept) => kept.addAll(fresh)));
});

addEventListener("activate", (event) => {
    const drop = async () => {
        const names = await caches.keys();
        const old = names.filter((name) => name.startsWith(KEPT) && name !== KEPT + VERSION);
        await Promise.all(old.map((name) => caches.delete(name)));
        await clients.claim();
    };
    event.waitUntil(drop());
});

addEventListener("fetch", (event) => {
    if (event.request.method === "GET" && event.request.url.startsWith(registration.scope))
        event.respondWith(answer(event.request));
});

async function answer(request) {
    const kept = await caches.open(KEPT + VERSION);
    return (await kept.match(request, { ignoreSearch: true })) ?? fetch(request);
}

/** A page that is opened while this version waits asks for it; while another one is open both go on with the old. One
 * that was just left is counted for a moment still. */
addEventListener("message", (event) => {
    const takeOver = async () => {
        for (let tries = 0; tries < TRIES; tries++) {
            if ((await clients.matchAll({ includeUncontrolled: true })).length < 2) return skipWaiting();
            await new Promise((done) => setTimeout(done, 50));
        }
        return undefined;
    };
    if (event.data === "take over") event.waitUntil(takeOver());
});
