// Cut sheets without signal: those of the schedule are kept on this phone, and the last ones that were made are kept by the worker.
import * as box from "./outbox.js";
import { ask } from "./asking.js";
import { $, known, redraw } from "./page.js";
import { kind, make, say } from "./answer.js";

const SHOWN = 60; // rows of the list at once; the field above finds the others
const MADE = "logbook-made"; // the worker's cache of pages that were made with signal
let sheets = null; // {token, revision, rows, sheets, heads, cautions, fetched}

const keptAs = () => `sheets-${known.language}`;

export async function fetchSheets() {
  // Asked for again only where the plan says that they are others.
  const before = await box.kept(keptAs());
  if (before && before.token === known.plan.sheets) return;
  const answer = await ask(`/phone/sheets?language=${known.language}`, { headers: { Accept: "application/json" } }).catch(() => null);
  if (!answer || !answer.ok) return;
  await box.keep(keptAs(), { ...(await answer.json()), fetched: new Date().toISOString() });
}

async function made() {
  // [{address, title}] of the pages that were made with signal, the last first.
  if (!("caches" in window)) return [];
  const cache = await caches.open(MADE);
  const pages = (await cache.keys()).filter((request) => new URL(request.url).pathname === "/layout").reverse();
  return Promise.all(pages.map(async (request) => {
    const page = new DOMParser().parseFromString(await (await cache.match(request)).text(), "text/html");
    return { address: request.url, title: (page.querySelector("h1") || {}).textContent || "" };
  }));
}

const named = (row) => capital([kind(row.kind), row.mark, row.run ? say("phone.run", { run: row.run }) : ""].filter(Boolean).join(" "));
const capital = (text) => text.slice(0, 1).toUpperCase() + text.slice(1);
const plain = (text) => String(text || "").toLowerCase().replace(/[\s-]/g, "");

export async function showCut(number) {
  sheets = (await box.kept(keptAs())) || (await box.kept("sheets-en")) || (await box.kept("sheets-es"));
  const row = sheets && number !== undefined && sheets.rows[number];
  $("cut-list").hidden = Boolean(row);
  $("cut-sheet").hidden = !row;
  if (row) return showSheet(row);
  $("cut-told").textContent = say(navigator.onLine ? "phone.cut-online" : "phone.cut-offline");
  $("cut-new").hidden = !navigator.onLine;
  $("cut-as-of").textContent = !sheets ? say("phone.cut-none") : sheets.revision === null ? say("phone.cut-no-schedule") : say("phone.cut-as-of", { revision: sheets.revision, time: new Date(sheets.fetched).toLocaleString(known.language, { dateStyle: "medium", timeStyle: "short" }) });
  const last = await made();
  redraw($("cut-made"), last, () => (last.length ? [make("h2", {}, say("phone.cut-made")), ...last.map((one) => make("div", { class: "note-row" }, make("a", { href: one.address }, one.title)))] : []));
  find();
}

export function find() {
  // The rows whose mark or run holds what is typed.
  const wanted = plain($("cut-find").value);
  const found = ((sheets && sheets.rows) || []).map((row, at) => ({ row, at })).filter(({ row }) => !wanted || plain(row.mark).includes(wanted) || plain(row.run).includes(wanted));
  $("cut-find-row").hidden = !sheets || sheets.rows.length < 8;
  const part = (row) => (row.why ? make("span", { class: "why" }, say("phone.cut-cannot")) : make("span", {}, sheets.sheets[row.sheet].heading.replace(/^[^,]*, /, "")));
  redraw($("cut-rows"), [wanted, sheets && sheets.token], () => [...found.slice(0, SHOWN).map(({ row, at }) => make("div", { class: "note-row" }, make("a", { href: `#cut/${at}` }, named(row)), part(row))), found.length > SHOWN ? make("p", {}, say("phone.cut-more", { count: found.length - SHOWN })) : null].filter(Boolean));
}

function showSheet(row) {
  const back = make("p", {}, make("a", { href: "#cut" }, say("phone.cut-all")));
  const title = make("h1", { tabindex: "-1" }, named(row));
  if (row.why) return $("cut-sheet").replaceChildren(back, title, make("p", { class: "told" }, row.why, " ", row.cure));
  const [sheet, heads] = [sheets.sheets[row.sheet], sheets.heads];
  const drawing = document.importNode(new DOMParser().parseFromString(sheet.drawing, "image/svg+xml").documentElement, true);
  drawing.setAttribute("class", "drawing");
  $("cut-sheet").replaceChildren(back, title, make("p", { class: "meta" }, sheet.heading), make("p", { class: "meta" }, $("cut-as-of").textContent || say("phone.cut-as-of", { revision: sheets.revision, time: new Date(sheets.fetched).toLocaleString(known.language, { dateStyle: "medium", timeStyle: "short" }) })),
    drawing, make("p", { class: "says" }, `${heads.method}: `, make("b", {}, sheet.method)),
    make("h2", {}, heads.numbers), make("dl", { class: "facts" }, ...sheet.sizes.map(([name, value]) => make("div", {}, make("dt", {}, name), make("dd", {}, make("b", {}, value))))),
    make("h2", {}, heads["steps-heading"]), make("ol", { class: "steps" }, ...sheet.steps.map((step) => make("li", {}, step))),
    make("h2", {}, heads["stock-heading"]), ...sheet.stock.map((line) => make("p", {}, line)),
    make("h2", {}, heads["cautions-heading"]), make("ul", {}, ...sheets.cautions.map((line) => make("li", {}, line))),
    make("p", { class: "source" }, heads["source-note"]), make("p", { class: "source" }, heads.deferral));
}

export async function rowOf(own) {
  // The number of the kept row with this mark and run, for a link beside what is pressed; null where there is none.
  const kept = own.mark && ((await box.kept(keptAs())) || null);
  const at = kept ? kept.rows.findIndex((row) => plain(row.mark) === plain(own.mark) && (!own.run || plain(row.run) === plain(own.run))) : -1;
  return at < 0 ? null : at;
}
