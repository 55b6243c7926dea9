// The service worker: the phone's page opens without signal. It keeps the shell and nothing that anybody said, and the
// last cut sheets that were made with signal, so that their marks are there where the knife is.
const EDITION = "logbook-/*EDITION*/";
const KEPT = /*KEPT*/ [];
const MADE = "logbook-made";
const MOST_MADE = 40; // answers: a page and its drawing are two

self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const cache = await caches.open(EDITION);
    await cache.addAll(KEPT.map((path) => new Request(path, { cache: "reload" })));
    await self.skipWaiting();
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) if (name !== EDITION && name !== MADE) await caches.delete(name);
    await self.clients.claim();
  })());
});

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== location.origin) return;
  if (KEPT.includes(url.pathname)) {
    event.respondWith(fromShelf(event.request, url.pathname));
  } else if (url.pathname === "/layout" || url.pathname === "/layout/drawing.svg") {
    event.respondWith(cutSheet(event));
  } else if (event.request.mode === "navigate") {
    // Another page without signal: the phone's page says what waits, instead of the browser's error.
    event.respondWith(fetch(event.request).catch(() => caches.match("/phone")));
  }
});

async function fromShelf(request, path) {
  const found = await (await caches.open(EDITION)).match(path);
  return found || fetch(request);
}

async function cutSheet(event) {
  // With signal always the newest; without it the sheet as it was made, else the phone's own list of sheets.
  const cache = await caches.open(MADE);
  try {
    const answer = await fetch(event.request);
    const made = answer.ok && !answer.redirected && (event.request.mode !== "navigate" || new URL(event.request.url).search);
    if (made) event.waitUntil(keepMade(cache, event.request, answer.clone()));
    return answer;
  } catch (error) {
    const kept = await cache.match(event.request, { ignoreVary: true });
    if (kept) return kept;
    if (event.request.mode === "navigate") return Response.redirect("/phone#cut");
    throw error;
  }
}

async function keepMade(cache, request, answer) {
  // A page without a sheet on it is only a form: nothing to keep.
  if (request.mode === "navigate" && !(await answer.clone().text()).includes("/layout/drawing.svg?")) return;
  await cache.delete(request, { ignoreVary: true }); // the last made stand last
  await cache.put(request, answer);
  const all = await cache.keys();
  for (const old of all.slice(0, Math.max(0, all.length - MOST_MADE))) await cache.delete(old, { ignoreVary: true });
}
