// Keeps the page and its samples for when there is no network: all files at the first visit, those of a new version as a
// whole, which is taken at the next load. `run` puts before this what they are: VERSION, of their contents, and FILES.
//
// SPDX-License-Identifier: MIT
/* global VERSION, FILES */
const KEPT = `quilt ${registration.scope} `;

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

addEventListener("message", ({ data }) => data === "take over" && skipWaiting());

addEventListener("fetch", (event) => {
    if (event.request.method === "GET" && event.request.url.startsWith(registration.scope))
        event.respondWith(answer(event.request));
});

/** A page that is opened while a new version waits is opened again with that, unless another one has the old open. */
async function answer(request) {
    if (request.mode === "navigate" && registration.waiting && (await clients.matchAll()).length < 2) {
        registration.waiting.postMessage("take over");
        return new Response("", { headers: { Refresh: "0" } });
    }
    const kept = await caches.open(KEPT + VERSION);
    return (await kept.match(request, { ignoreSearch: true })) ?? fetch(request);
}
