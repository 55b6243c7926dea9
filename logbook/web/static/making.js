// The note being made: speak in parts, photos, what is pressed, and handing it in. All of it works without signal.
import * as box from "./outbox.js";
import { elsewhere, hold } from "./hands.js";
import { $, known, local, root, uuid } from "./page.js";
import { markOnTag, place, smallCopy } from "./pictures.js";
import { Recorder, canRecord, drawLevel, minutes } from "./recorder.js";
import { kind, label, make, say, verdict } from "./answer.js";

const HOLD_MS = 600; // a press held longer than this ends when the thumb lifts
const OF_A_SHIFT = ["board_thickness", "closure_mark", "staple_leg", "staple_spacing", "surface_temperature", "run", "service"];
export let draft = null; // {note, part, n, began, levels, answers, mode}

// --- bytes that found no room are held while the page stays open, and kept as soon as there is room

const held = [];

async function keepOrHold(write) {
  if ((await letGo()) && (await written(write))) return;
  held.push(write);
  const spare = await box.giveSpare();
  if (await letGo()) return;
  if (!spare) recorder.stop(); // with the reserve given up the next second may find room again
  root.dataset.room = spare ? "little" : "none";
  tell([say(spare ? "phone.little-room" : "phone.no-room")]);
}

const written = (write) => write().then(() => true, () => false);

export async function letGo() {
  while (held.length) {
    if (!(await written(held[0]))) return false;
    held.shift();
  }
  return true;
}

// --- speaking

const recorder = new Recorder({
  async keep(bytes, soundKind) {
    const at = [draft.note, draft.part, draft.n++, bytes, soundKind];
    await keepOrHold(() => box.keepChunk(...at));
  },
  onLevel(level, seconds) {
    draft.levels.push(level);
    drawLevel($("level"), draft.levels);
    $("press-told").textContent = `${say("phone.listening")} ${minutes(seconds)}`;
  },
  async ended(part) {
    const quiet = (draft.quiet || []).filter((one) => one !== draft.part);
    await keepDraft({ quiet: part.quiet ? [...quiet, draft.part] : quiet, part: draft.part + 1, n: 0 });
    wake(false);
    await showDraft();
    root.dataset.state = "recorded";
  },
});

export async function begin() {
  tell([]);
  if (!(await letGo()) || !(await box.spareIsThere())) return instead("phone.no-room-to-speak", "full");
  if (!canRecord()) return instead("phone.microphone-none", "refused");
  try {
    await recorder.start();
  } catch (error) {
    return instead(error.name === "NotAllowedError" ? "phone.microphone-refused" : "phone.microphone-none", "refused");
  }
  if (navigator.storage && navigator.storage.persist) navigator.storage.persist();
  draft.levels = [];
  draft.began ||= local();
  await keepDraft();
  wake(true);
  $("level").hidden = false;
  $("press").textContent = say("phone.stop");
  $("press").dataset.state = "listening";
  root.dataset.state = "listening";
}

function instead(why, state) {
  // Where nobody can be heard here: typing, and the form that takes files.
  $("press-told").textContent = say(why);
  $("typing").open = true;
  $("by-file").hidden = state !== "refused";
  root.dataset.state = state;
}

let lock = null;
async function wake(on) {
  try {
    if (on && navigator.wakeLock) lock = await navigator.wakeLock.request("screen");
    else if (lock) { await lock.release(); lock = null; }
  } catch { /* the screen may go dark; the recording goes on */ }
}

export function presses() {
  // Tap to start and tap to stop; or hold, speak and lift. A keyboard's press is a tap.
  let downAt = 0;
  let started = false;
  $("press").addEventListener("pointerdown", () => { downAt = performance.now(); started = !recorder.running; if (started) begin(); });
  $("press").addEventListener("pointerup", () => {
    const lifted = performance.now() - downAt > HOLD_MS;
    if (recorder.running && (!started || lifted)) recorder.stop();
  });
  $("press").addEventListener("click", (event) => { if (event.detail === 0) recorder.running ? recorder.stop() : begin(); });
  $("press").addEventListener("contextmenu", (event) => event.preventDefault()); // a long press is a hold, no menu
  // a call, a lock or another app ends the part, which is kept
  document.addEventListener("visibilitychange", () => { if (document.visibilityState === "hidden") recorder.stop(); });
  addEventListener("pagehide", () => recorder.stop());
}

// --- the draft on the phone

export async function newDraft(more = {}) {
  // A note that was begun and not handed in stays in its store: `takeUp` brings it back.
  await settled();
  draft = { note: uuid(), part: 0, n: 0, levels: [], began: null, quiet: [], tags: [], mode: "fitting", photo: 0, ...more };
  await hold(draft.note, takenAway);
  clean();
  const begun = more.answers && (await begunNotes()).length;
  beside(begun ? say("phone.begun-waits") : "");
  await showDraft();
}

function clean() {
  for (const field of ["mark", "run", "text"]) $(field).value = "";
  $("kind").value = $("piece").value = "";
  $("typing").open = false;
  $("by-file").hidden = true;
  document.querySelectorAll("input[name=mode]").forEach((one) => { one.checked = one.value === draft.mode; });
}

function beside(told, ...more) {
  // What is told of a note that was begun.
  $("cut-off").hidden = !told;
  $("cut-off").replaceChildren(make("p", {}, told), ...more);
}

const takenAway = () => newDraft().then(() => beside(say("phone.begun-taken")));

async function inHand(begun, from) {
  // The last note that may be this page's; what another page has open is left to it, except the one that is asked for.
  for (const one of begun.reverse()) if (await hold(one.left.note, takenAway, one.left.note === from)) return one;
  return null;
}

export async function takeUp(otherwise = {}, from = null) {
  // A note that was cut off (the app closed, the phone died, an answer came first) is still here: the last one first.
  await settled();
  const all = await begunNotes();
  const begun = await inHand(from ? all.filter((one) => one.left.note === from) : [...all], from);
  if (!begun) {
    await newDraft(otherwise);
    if (all.length) beside(say("phone.begun-elsewhere"), make("button", { type: "button", class: "quiet", onclick: () => takeUp(otherwise, all.at(-1).left.note) }, say("phone.begun-take-here")));
    return;
  }
  const { left, parts, photos } = begun;
  draft = { levels: [], quiet: [], tags: [], ...left };
  draft.part = parts.length ? parts.at(-1).part + 1 : 0;
  draft.n = 0;
  draft.photo = photos.length ? photos.at(-1).n + 1 : 0;
  clean();
  for (const [name, value] of Object.entries(left.fields || {})) if ($(name)) $(name).value = value;
  $("typing").open = Boolean($("text").value);
  const told = parts.length || photos.length ? say("phone.cut-off", { time: minutes(parts.reduce((sum, part) => sum + part.seconds, 0)), photos: photos.length }) : say("phone.cut-off-typed");
  beside(told, make("button", { type: "button", class: "quiet", onclick: async () => { await box.forget(draft.note); await takeUp(); } }, say("phone.throw-away-all")));
  await showDraft();
}

async function keepDraft(more = {}) {
  Object.assign(draft, more);
  const kept = asKept();
  await box.put("drafts", kept).catch(() => held.push(() => box.put("drafts", kept)));
}

function asKept() {
  const { levels, ...rest } = draft;
  return { ...rest, touched: Date.now(), fields: pressed() };
}

async function begunNotes() {
  // The notes that were begun and hold something, the last one last; those in which nothing is are let go.
  const begun = [];
  const others = await elsewhere();
  for (const left of (await box.all("drafts")).sort((a, b) => (a.touched || 0) - (b.touched || 0))) {
    const [parts, photos] = [await box.partsOf(left.note), await box.photosOf(left.note)];
    if (parts.length || photos.length || Object.values(left.fields || {}).some(Boolean)) begun.push({ left, parts, photos });
    else if (!held.length && !others(left.note)) await box.forget(left.note);
  }
  return begun;
}

async function settled() {
  // What is being spoken, photographed and typed is in its own note before another one comes.
  await recorder.stop();
  await adding;
  await saved;
}

let saved = Promise.resolve(); // what was typed and tapped, one write after the other
let unsaved = false;
export function keepTyped() {
  // Typed words are kept as they are typed: of many signs during one write only the last state is written.
  if (unsaved || handing) return;
  unsaved = true;
  saved = saved.then(() => { unsaved = false; return box.put("drafts", asKept()); }).catch(() => tell([say("phone.no-room")]));
}

export async function noAnswer() {
  // What was begun as an answer is a note of its own.
  if (!(await box.get("drafts", draft.note))) return takeUp();
  await keepDraft({ answers: "", asked: null });
  await showDraft();
}

const pressed = () => ({ mark: $("mark").value.trim(), run: $("run").value.trim(), kind: $("kind").value, text: $("text").value.trim() });

export async function showDraft() {
  const [parts, photos] = [await box.partsOf(draft.note), await box.photosOf(draft.note)];
  $("speak-title").textContent = say(draft.answers ? "phone.answer-title" : "phone.speak-title");
  $("press").textContent = say(parts.length ? "phone.speak-more" : "phone.speak");
  $("press").dataset.state = "";
  $("level").hidden = !draft.levels.length;
  $("level").setAttribute("aria-label", say("phone.level"));
  $("press-told").textContent = parts.length ? "" : say("phone.speak-hint");
  $("parts").replaceChildren(...parts.map((part, at) => showPart(part, at + 1)));
  $("photos").replaceChildren(...photos.map((photo, at) => make("li", {},
    make("img", { src: URL.createObjectURL(new Blob([photo.bytes], { type: photo.kind })), alt: say("phone.photo-alt", { number: at + 1 }) }),
    make("button", { type: "button", class: "quiet", onclick: async () => { await box.dropPhoto(draft.note, photo.n); await showDraft(); } }, say("phone.drop-photo"), make("span", { class: "aside" }, ` ${at + 1}`)))));
  $("later-row").hidden = !photos.length;
  $("modes").hidden = Boolean(draft.answers);
  toSay(photos.length > 0);
  checks(parts, photos);
  mayHandIn();
}

export function mayHandIn() {
  // A press that is not open yet says why: a photo by itself tells nothing of the piece.
  const words = $("parts").children.length || $("text").value.trim();
  $("hand-in").disabled = !words;
  const alone = !words && $("photos").children.length;
  $("needs-words").hidden = !alone;
  $("needs-words").textContent = alone ? say("phone.photo-alone") : "";
}

function showPart(part, number) {
  const drop = async () => { await box.dropPart(draft.note, part.part); draft.quiet = draft.quiet.filter((one) => one !== part.part); await keepDraft(); await showDraft(); };
  const press = (key, then) => make("button", { type: "button", class: "quiet", onclick: then }, say(key), make("span", { class: "aside" }, ` ${number}`));
  return make("li", {}, make("p", { class: "part" }, `${say("phone.part")} ${number}, ${minutes(part.seconds)}`),
    make("audio", { controls: true, src: URL.createObjectURL(part.blob), "aria-label": `${say("phone.part")} ${number}` }),
    press("phone.again", async () => { await drop(); await begin(); }), press("phone.throw-away", drop));
}

export function toSay(photo = $("photos").children.length > 0) {
  // Before speaking: what this kind must say. What is pressed or photographed ticks off at once; the rest in the answer.
  const own = pressed();
  const names = draft.mode === "shift" ? OF_A_SHIFT : known.plan.say[own.kind] || [];
  const ticked = (name) => (name === "photo" ? photo : Boolean(own[name]));
  $("to-say").replaceChildren(...names.map((name) => make("li", {}, ticked(name) ? verdict("meets").firstChild : null, label(name), ticked(name) ? make("span", { class: "aside" }, ` ${say("phone.there")}`) : null)));
  $("to-say-hint").textContent = names.length ? say("phone.to-say") : draft.answers ? "" : say(`phone.hint-${draft.mode}`);
  const told = [own.kind ? kind(own.kind) : "", own.mark, own.run ? say("phone.run", { run: own.run }) : ""].filter(Boolean).join(" ");
  $("tap-title").textContent = told ? say("phone.tapped", { what: told }) : say("phone.tap-first");
}

function checks(parts, photos) {
  // What the phone can tell without hearing.
  const told = [];
  if (parts.some((part) => draft.quiet.includes(part.part))) told.push(say("phone.too-quiet"));
  if (parts.length && !photos.length && draft.mode === "fitting" && !draft.answers) told.push(say("phone.no-photo"));
  for (const mark of draft.tags) told.push(say("phone.tag-read", { mark }));
  if (held.length) told.push(say("phone.no-room"));
  tell(told);
}

function tell(lines) {
  $("checks").hidden = !lines.length;
  $("checks").replaceChildren(...lines.map((line) => make("p", {}, line)));
}

// --- photos, and the piece they tell by their tag

let adding = Promise.resolve();
export const addPhotos = (files, taken) => (adding = Promise.all([adding, handing]).then(() => takeIn(files, taken)));

async function takeIn(files, taken) {
  // The bytes first: where it was taken may take seconds to find, and a page in the back is soon ended.
  const where = taken ? place() : {};
  const unread = [];
  await keepDraft();
  for (const file of files) {
    const photo = await photoOf(draft.note, draft.photo++, file, taken, {}).catch(() => null);
    if (!photo) { unread.push(file.name); continue; }
    await keepOrHold(() => box.keepPhoto(photo));
    Object.assign(photo.facts, await where);
    if ("latitude" in photo.facts) await keepOrHold(() => box.keepPhoto(photo));
    const mark = known.me && (await markOnTag(file, known.me.job.id));
    if (mark && !draft.tags.includes(mark)) tagged(mark);
  }
  await keepDraft();
  await showDraft();
  if (unread.length) tell([say("phone.photo-gone", { names: unread.join(", ") })]);
  root.dataset.state = "photographed";
}

export async function photoOf(note, n, file, taken, where) {
  const at = taken ? new Date() : new Date(file.lastModified);
  return { note, n, bytes: await file.arrayBuffer(), kind: file.type, name: file.name, facts: { taken_at: local(at), ...where } };
}

function tagged(mark) {
  draft.tags.push(mark);
  if ($("mark").value.trim()) return; // what the hand pressed stands; another tag is told by the answer
  const bare = (one) => String(one || "").toLowerCase().replace(/[\s-]/g, "");
  const rows = known.plan.rows.filter((row) => bare(row.mark) === bare(mark));
  $("mark").value = mark;
  if (rows.length === 1) fromRow(rows[0]);
}

export function fromRow(row) {
  $("mark").value = row.mark || "";
  $("run").value = row.run || "";
  $("kind").value = row.kind || "";
  toSay();
}

// --- handing in

let handing = null; // a second press while the first is at work hands nothing in twice
export const handIn = () => (handing ? null : (handing = giveIn().finally(() => { handing = null; })));

async function giveIn() {
  // The id of the note that is in the queue now; null where it is not, and why stands on the page.
  const noRoom = () => { root.dataset.room = "none"; tell([say("phone.no-room")]); return null; };
  await settled();
  if (!(await letGo())) return noRoom();
  const later = $("later").checked;
  const parts = await box.partsOf(draft.note);
  const own = pressed();
  const photos = (await box.photosOf(draft.note)).length;
  const fields = {
    id: draft.note, spoken_at: draft.began || local(), language: "", answers: draft.answers || "", mark: own.mark, run: own.run, kind: own.kind,
    text: parts.length ? "" : own.text, spoken_by: (document.querySelector("input[name=voice]:checked") || {}).value || "",
    as_lead: draft.mode === "look" ? "yes" : "",
  };
  const aside = parts.length && own.text ? { ...fields, id: uuid(), spoken_at: local(), answers: draft.answers || draft.note, text: own.text } : null; // typed beside the sound
  try {
    if (later) for (const photo of await box.photosOf(draft.note)) await box.keepPhoto({ ...photo, small: await smallCopy(new Blob([photo.bytes], { type: photo.kind })) });
    await box.queueNote(fields, later, { seconds: parts.reduce((sum, part) => sum + part.seconds, 0), photos }, aside);
  } catch {
    return noRoom();
  }
  await takeUp(draft.mode === "look" ? { mode: "look" } : {}); // who walks and looks goes on looking
  return fields.id;
}
