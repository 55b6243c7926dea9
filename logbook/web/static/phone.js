// The phone's page: speak, photos, hand in, read the answer; all of it with or without signal. This file joins the parts.
import * as box from "./outbox.js";
import { ask } from "./asking.js";
import { $, changed, known, pressedLanguage, root, speakLanguage, today } from "./page.js";
import { addPhotos, draft, fromRow, handIn, keepTyped, letGo, mayHandIn, noAnswer, presses, showDraft, takeUp, toSay } from "./making.js";
import { refresh, send, sender, showQueue } from "./sending.js";
import { showNote } from "./told.js";
import { showBreak, showMine, wanting } from "./lists.js";
import { fetchSheets, find, rowOf, showCut } from "./sheets.js";
import { asks, asksOf, heading, kind, make, say } from "./answer.js";

const SCREENS = { speak: showAnswering, mine: showMine, break: showBreak, cut: showCut, note: showNote };

// --- who, and what to tap

async function showWho() {
  const me = known.me;
  $("job").textContent = (me && me.job && me.job.name) || say("phone.short-name");
  const crew = (me && me.crew) || [];
  const last = await box.kept("voice");
  const speaks = crew.some((one) => one.id === last) ? last : crew.length && crew[0].id;
  $("voices").hidden = crew.length < 2;
  $("voices").replaceChildren(make("legend", {}, say("phone.who")), ...crew.map((one) => make("label", {}, make("input", { type: "radio", name: "voice", value: one.id, checked: one.id === speaks, onchange: () => box.keep("voice", one.id) }), one.name || one.id)));
  $("foot").replaceChildren(me ? make("p", {}, say("phone.signed-in", { name: me.person.name || me.person.id }), " ", make("button", { type: "button", class: "plain", onclick: signOut }, say("phone.sign-out"))) : "");
}

async function signOut() {
  // Cached answers go; what waits stays on the phone.
  await sender.me().catch(() => null);
  const body = new FormData();
  body.append("csrf_token", sender.csrf || "");
  await ask("/leave", { method: "POST", body }).catch(() => null);
  await box.clear("answers");
  for (const one of ["me", "cursor", "voice"]) await box.remove("kept", one);
  if ("caches" in window) await caches.delete("logbook-made"); // pages that the worker kept with this person's name
  location.reload();
}

function showPlan() {
  const [chosen, mode] = [$("kind").value, (draft && draft.mode) || "fitting"];
  const rows = known.plan.rows;
  $("kind").replaceChildren(make("option", { value: "" }), ...Object.keys(known.plan.say).map((one) => make("option", { value: one }, kind(one))));
  $("kind").value = chosen;
  $("piece").replaceChildren(make("option", { value: "" }, rows.length ? "" : say("phone.no-schedule")), ...rows.map((row, at) => make("option", { value: at }, [kind(row.kind), row.mark, row.run ? say("phone.run", { run: row.run }) : ""].filter(Boolean).join(" "))));
  const modes = ["fitting", "several", "shift", ...(known.me && known.me.role === "lead" ? ["look"] : [])]; // a lead may look at another's piece
  const pick = (one) => { draft.mode = one; toSay(); };
  $("modes").replaceChildren(make("legend", { class: "aside" }, say("phone.mode")), ...modes.map((one) => make("label", {}, make("input", { type: "radio", name: "mode", value: one, checked: one === mode, onchange: () => pick(one) }), say(`phone.mode-${one}`))));
}

async function fetchPlan() {
  const answer = await ask("/phone/plan", { headers: { Accept: "application/json" } }).catch(() => null);
  if (!answer || !answer.ok) return;
  known.plan = await answer.json();
  await box.keep("plan", known.plan);
  showPlan();
  await fetchSheets();
  await linkToCut();
}

async function linkToCut() {
  // Beside what is pressed: the way to its cut sheet, where this phone keeps one.
  const at = await rowOf({ mark: $("mark").value, run: $("run").value });
  $("cut-link").hidden = at === null;
  if (at !== null) $("cut-link").firstElementChild.href = `#cut/${at}`;
}

// --- screens

async function show() {
  const [name, id] = (location.hash.slice(1) || "speak").split("/"); // id: of a note, or the number of a cut sheet
  const screen = name in SCREENS ? name : "speak";
  for (const one of Object.keys(SCREENS)) $(`screen-${one}`).hidden = one !== screen;
  document.querySelectorAll("#nav a").forEach((link) => (link.hash === `#${screen}` ? link.setAttribute("aria-current", "page") : link.removeAttribute("aria-current")));
  const { list } = await wanting();
  $("nav-break").textContent = list.length ? say("phone.nav-break-count", { count: list.length }) : say("phone.nav-break");
  await SCREENS[screen](id);
}

async function showAnswering() {
  // On the speaking screen: which note this answers, and the question that was pressed, else what the note asked.
  const about = draft && draft.answers && (await box.get("answers", draft.answers));
  $("answering").hidden = !about;
  const one = about && about.note && draft.asked && asksOf(about.note).find(({ position, finding }) => String([position, finding.rule]) === String(draft.asked));
  if (about && about.note) $("answering").replaceChildren(make("p", {}, say("phone.answering", { what: about.note.fittings.map((f) => heading(f.facts, f.of_piece)).join("; ") || about.at.slice(11, 16) })), ...(one ? [one] : asks(about.note)).map(({ finding }) => make("p", { class: "question" }, finding.do || finding.says)), make("button", { type: "button", class: "quiet", onclick: () => noAnswer().then(show) }, say("phone.not-an-answer")));
}

let showing = false; // one drawing of the screen at a time; what changed meanwhile is drawn after it
let again = false;
async function draw() {
  if (showing) { again = true; return; }
  showing = true;
  do { again = false; await show(); } while (again);
  showing = false;
}

function quietly() {
  // A screen in which somebody types or listens is not drawn anew under his thumb.
  const busy = document.activeElement && document.activeElement.closest("#note form, #break form");
  if (!busy) draw();
}

async function changeLanguage(next, pressed) {
  await speakLanguage(next, pressed);
  await box.remove("kept", "cursor"); // the sentences of the answers come anew
  await showWho();
  showPlan();
  await showDraft();
  await showQueue();
  await draw();
  refresh();
  fetchSheets().then(draw);
}

function listen() {
  presses();
  $("hand-in").addEventListener("click", async () => {
    const note = await handIn();
    if (!note) return;
    await showQueue();
    delete root.dataset.answer; // that was of another note
    root.dataset.state = "queued";
    location.hash = `#note/${note}`;
    send();
  });
  for (const [input, taken] of [["camera", true], ["album", false]]) {
    $(input).addEventListener("change", (event) => addPhotos([...event.target.files], taken).then(() => { event.target.value = ""; }));
  }
  $("later").addEventListener("change", () => box.keep("later", $("later").checked));
  $("text").addEventListener("input", () => { keepTyped(); mayHandIn(); });
  for (const field of ["kind", "mark", "run"]) $(field).addEventListener("change", () => { keepTyped(); toSay(); linkToCut(); });
  $("piece").addEventListener("change", () => { if (known.plan.rows[$("piece").value]) fromRow(known.plan.rows[$("piece").value]); keepTyped(); linkToCut(); });
  $("cut-find").addEventListener("input", find);
  for (const way of ["online", "offline"]) addEventListener(way, () => draw());
  $("tongue").addEventListener("click", () => changeLanguage(known.language === "en" ? "es" : "en", true));
  $("send-now").addEventListener("click", () => send(true));
  document.addEventListener("changed", quietly);
  addEventListener("hashchange", async () => { await draw(); const title = document.querySelector("main section:not([hidden]) h1"); if (title) title.focus(); scrollTo(0, 0); });
  const round = async () => { if (document.visibilityState === "visible") { await letGo(); await send(); if (!sender.signedOut) await refresh(); } };
  addEventListener("online", round);
  document.addEventListener("visibilitychange", round);
  setInterval(round, 30000);
  return round;
}

async function start() {
  const own = (navigator.language || "en").startsWith("es") ? "es" : "en";
  if (!window.isSecureContext) {
    // Plain HTTP: no microphone, nothing kept without signal. Files can be handed in by the form.
    await speakLanguage(own).catch(() => {});
    $("plain").hidden = false;
    root.dataset.state = "plain";
    return;
  }
  known.me = await box.kept("me");
  const pressed = pressedLanguage() || (await box.kept("language"));
  await speakLanguage(pressed || (known.me && known.me.language) || own, !!pressed);
  known.plan = await box.kept("plan", known.plan);
  await showWho();
  showPlan();
  await takeUp();
  $("later").checked = await box.kept("later", false);
  if ((await box.kept("cautioned")) !== today()) { $("caution").hidden = false; await box.keep("cautioned", today()); }
  const round = listen();
  await showQueue();
  await draw();
  if ("serviceWorker" in navigator) {
    navigator.serviceWorker.register("/sw.js").then(() => navigator.serviceWorker.ready).then(() => { root.dataset.shelf = "ready"; }).catch(() => { root.dataset.shelf = "none"; });
  }
  root.dataset.state = "ready";
  await round();
  const me = await box.kept("me");
  if (!pressedLanguage() && me && me.language !== known.language) await changeLanguage(me.language, false); // chosen on another device
  await showWho();
  await fetchPlan();
  toSay();
  changed();
}

start();
