// The service worker: the phone's page opens without signal. It keeps the shell and nothing that anybody said.
const EDITION = "logbook-/*EDITION*/";
const KEPT = /*KEPT*/ [];

self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(EDITION);
    await cache.addAll(KEPT.map((path) => new Request(path, { cache: "reload" })));
    await self.skipWaiting();
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) if (name !== EDITION) await caches.delete(name);
    await self.clients.claim();
  })());
});

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== location.origin) return;
  if (KEPT.includes(url.pathname)) {
    event.respondWith(fromShelf(event.request, url.pathname));
  } else if (event.request.mode === "navigate") {
    // Another page without signal: the phone's page says what waits, instead of the browser's error.
    event.respondWith(fetch(event.request).catch(() => caches.match("/phone")));
  }
});

async function fromShelf(request, path) {
  const found = await (await caches.open(EDITION)).match(path);
  return found || fetch(request);
}
