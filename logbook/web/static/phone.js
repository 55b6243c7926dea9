// The phone's page: speak, photos, hand in, read the answer; all of it with or without signal.
import * as box from "./outbox.js";
import { Recorder, canRecord, drawLevel, minutes } from "./recorder.js";
import { aloud, asks, findings, has, heading, kind, label, learn, make, needsWord, number, say, tally, text, verdict } from "./answer.js";

const LITTLE_ROOM = 50_000_000; // bytes; under this the phone says so before it does harm
const HOLD_MS = 600; // a press held longer than this ends when the thumb lifts
const $ = (id) => document.getElementById(id);
const root = document.documentElement;
const uuid = () => crypto.randomUUID();
let me = null;
let plan = { rows: [], say: {}, shapes: {} };
let draft = null; // {note, part, n, began, levels, answers, mode}
let language = "en";

function local(date = new Date()) {
  // ISO 8601 with this phone's offset.
  const east = -date.getTimezoneOffset();
  const two = (n) => String(Math.abs(Math.trunc(n))).padStart(2, "0");
  return new Date(date.getTime() + east * 60000).toISOString().slice(0, 19) + (east < 0 ? "-" : "+") + two(east / 60) + ":" + two(east % 60);
}
const today = () => local().slice(0, 10);
const clock = (iso) => (iso || "").slice(11, 16);

// --- language: one press, remembered

async function speakLanguage(next) {
  language = next;
  learn(await (await fetch(`/phone/words/${next}.json`)).json());
  root.lang = next;
  document.querySelectorAll("[data-say]").forEach((element) => { element.textContent = say(element.dataset.say); });
  const other = next === "en" ? "es" : "en";
  $("tongue").textContent = say(`phone.language-${other}`);
  $("tongue").lang = other;
  $("nav").setAttribute("aria-label", say("phone.nav"));
  document.cookie = `language=${next}; max-age=31536000; path=/; samesite=lax`;
  await box.keep("language", next);
}

// --- the note being made

const recorder = new Recorder({
  async keep(bytes, soundKind) {
    try {
      await box.keepChunk(draft.note, draft.part, draft.n++, bytes, soundKind);
    } catch {
      tellChecks([say("phone.no-room")]);
      recorder.stop();
    }
  },
  onLevel(level, seconds) {
    draft.levels.push(level);
    drawLevel($("level"), draft.levels);
    $("press-told").textContent = `${say("phone.listening")} ${minutes(seconds)}`;
  },
  async ended(part) {
    await keepDraft({ seconds: [...(draft.seconds || []), part.seconds], quiet: (draft.quiet || part.quiet) && part.quiet });
    draft.part += 1;
    draft.n = 0;
    wake(false);
    await showDraft();
    root.dataset.state = "recorded";
  },
});

async function newDraft(more = {}) {
  draft = { note: uuid(), part: 0, n: 0, levels: [], began: null, seconds: [], quiet: false, mode: "fitting", photo: 0, ...more };
  for (const field of ["mark", "run", "text"]) $(field).value = "";
  $("kind").value = $("piece").value = "";
  $("later").checked = false;
  await showDraft();
}

async function keepDraft(more = {}) {
  Object.assign(draft, more);
  const { levels, ...rest } = draft;
  await box.put("drafts", { ...rest, fields: pressed() });
}

const pressed = () => ({ mark: $("mark").value.trim(), run: $("run").value.trim(), kind: $("kind").value, text: $("text").value.trim() });

async function showDraft() {
  const [parts, photos] = [await box.partsOf(draft.note), await box.photosOf(draft.note)];
  $("speak-title").textContent = say(draft.answers ? "phone.answer-title" : "phone.speak-title");
  $("press").textContent = say(parts.length ? "phone.speak-more" : "phone.speak");
  $("press").dataset.state = "";
  $("level").hidden = !draft.levels.length;
  $("level").setAttribute("aria-label", say("phone.level"));
  $("press-told").textContent = parts.length ? "" : say("phone.speak-hint");
  $("parts").replaceChildren(...parts.map((part, at) => make("li", {},
    make("audio", { controls: true, src: URL.createObjectURL(part.blob), "aria-label": `${say("phone.part")} ${at + 1}` }),
    make("button", { type: "button", class: "quiet", onclick: async () => { await box.dropPart(draft.note, part.part); await showDraft(); } }, say("phone.throw-away"), make("span", { class: "aside" }, ` ${at + 1}`)))));
  $("photos").replaceChildren(...photos.map((photo, at) => make("li", {},
    make("img", { src: URL.createObjectURL(new Blob([photo.bytes], { type: photo.kind })), alt: say("phone.photo-alt", { number: at + 1 }) }),
    make("button", { type: "button", class: "quiet", onclick: async () => { await box.dropPhoto(draft.note, photo.n); await showDraft(); } }, say("phone.drop-photo"), make("span", { class: "aside" }, ` ${at + 1}`)))));
  $("later-row").hidden = !photos.length;
  toSay();
  checks(parts, photos);
  const ready = parts.length || $("text").value.trim();
  $("hand-in").disabled = !ready;
}

function toSay() {
  // Before speaking: what this kind must say. Photos tick off at once; the rest in the answer.
  const names = draft.mode === "shift" ? ["board_thickness", "closure_mark", "staple_leg", "staple_spacing", "surface_temperature", "run", "service"] : plan.say[$("kind").value] || [];
  $("to-say").replaceChildren(...names.map((name) => make("li", {}, label(name))));
}

function checks(parts, photos) {
  // What the phone can tell without hearing.
  const told = [];
  if (parts.length && draft.quiet) told.push(say("phone.too-quiet"));
  if (parts.length && !photos.length && draft.mode === "fitting" && !draft.answers) told.push(say("phone.no-photo"));
  tellChecks(told);
}

function tellChecks(told) {
  $("checks").hidden = !told.length;
  $("checks").replaceChildren(...told.map((line) => make("p", {}, line)));
}

let lock = null;
async function wake(on) {
  try {
    if (on && navigator.wakeLock) lock = await navigator.wakeLock.request("screen");
    else if (lock) { await lock.release(); lock = null; }
  } catch { /* the screen may go dark; the recording goes on */ }
}

async function begin() {
  tellChecks([]);
  if (!canRecord()) { $("press-told").textContent = say("phone.microphone-none"); root.dataset.state = "refused"; $("typing").open = true; return; }
  try {
    await recorder.start();
  } catch (error) {
    $("press-told").textContent = say(error.name === "NotAllowedError" ? "phone.microphone-refused" : "phone.microphone-none");
    root.dataset.state = "refused";
    $("typing").open = true;
    return;
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

function presses() {
  // Tap to start and tap to stop; or hold, speak and lift. A keyboard's press is a tap.
  let downAt = 0;
  let started = false;
  $("press").addEventListener("pointerdown", () => { downAt = performance.now(); started = !recorder.running; if (started) begin(); });
  $("press").addEventListener("pointerup", () => {
    const held = performance.now() - downAt > HOLD_MS;
    if (recorder.running && (!started || held)) recorder.stop();
  });
  $("press").addEventListener("click", (event) => { if (event.detail === 0) recorder.running ? recorder.stop() : begin(); });
}

function place() {
  // Position beside the photo: Android takes it out of the file. No answer within 3 s means none.
  return new Promise((done) => {
    if (!navigator.geolocation) return done({});
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => done({ latitude: coords.latitude, longitude: coords.longitude, accuracy_m: coords.accuracy }),
      () => done({}), { timeout: 3000, maximumAge: 60000 });
  });
}

async function addPhotos(files, taken) {
  const where = taken ? await place() : {};
  for (const file of files) {
    const at = taken ? new Date() : new Date(file.lastModified);
    const facts = { taken_at: local(at), ...where };
    try {
      await box.keepPhoto({ note: draft.note, n: draft.photo++, bytes: await file.arrayBuffer(), kind: file.type, name: file.name, facts });
    } catch { tellChecks([say("phone.no-room")]); return; }
  }
  await keepDraft();
  await showDraft();
  root.dataset.state = "photographed";
}

async function handIn() {
  await recorder.stop();
  const parts = await box.partsOf(draft.note);
  const own = pressed();
  const fields = {
    id: draft.note, spoken_at: draft.began || local(), language: "", answers: draft.answers || "", mark: own.mark, run: own.run, kind: own.kind,
    text: parts.length ? "" : own.text, spoken_by: (document.querySelector("input[name=voice]:checked") || {}).value || "",
  };
  await box.queueNote(fields, $("later").checked);
  const handed = draft.note;
  await newDraft();
  root.dataset.state = "queued";
  await showQueue();
  location.hash = `#note/${handed}`;
  send();
}

// --- the queue

const sender = new box.Sender(async (event, id) => {
  if (event === "me") { me = await box.kept("me"); showWho(); }
  if (["sent", "acted"].includes(event)) follow(id);
  await showQueue(event);
});

async function showQueue(event = "") {
  const list = await box.queued();
  const waits = list.filter((one) => one.state === "waiting").length;
  const refused = list.filter((one) => one.state === "refused").length;
  $("queue").dataset.waiting = waits;
  $("queue").dataset.refused = refused;
  const told = [];
  if (event === "sending") told.push(say("phone.sending"));
  if (waits) told.push(say("phone.waiting", { count: waits }));
  if (refused) told.push(say("phone.refused-count", { count: refused }));
  if (sender.signedOut) told.push(say("phone.signed-out"));
  const free = await box.room();
  if (free !== null && free < LITTLE_ROOM) told.push(say("phone.little-room", { megabytes: Math.round(free / 1e6) }));
  $("queue-told").textContent = told.join(" ") || say("phone.all-in");
  $("send-now").hidden = !waits;
  $("nav-break").textContent = say("phone.nav-break");
  if (sender.signedOut && !document.getElementById("pair-again")) $("queue").append(make("a", { id: "pair-again", class: "press quiet", href: "/pair" }, say("phone.pair")));
  if (!sender.signedOut && document.getElementById("pair-again")) document.getElementById("pair-again").remove();
}

const send = (photosToo = false) => sender.run(photosToo);

// --- answers

const following = new Set();
async function follow(id) {
  // Asks until the note is heard: every 1.5 s at first; later rounds do it every 30 s.
  if (following.has(id)) return;
  following.add(id);
  for (let round = 0; round < 60; round++) {
    const note = await fetchNote(id);
    if (note && !["waiting", "hearing"].includes(note.state)) break;
    await new Promise((done) => setTimeout(done, 1500));
    if (document.visibilityState !== "visible") break;
  }
  following.delete(id);
}

async function fetchNote(id) {
  const answer = await fetch(`/notes/${id}`, { headers: { Accept: "application/json" } }).catch(() => null);
  if (!answer || !answer.ok) return null;
  const note = await answer.json();
  const drawings = {};
  for (const fitting of note.fittings) {
    if (!fitting.piece) continue;
    const drawn = await fetch(`/pieces/${fitting.piece}/drawing.svg`).catch(() => null);
    if (drawn && drawn.ok) drawings[fitting.position] = await drawn.text();
  }
  const before = await box.get("answers", id);
  await box.put("answers", { id, at: note.spoken_at, note, drawings });
  if (!before || JSON.stringify(before.note) !== JSON.stringify(note)) show();
  return note;
}

async function refresh() {
  // New notes since the cursor (another phone may have handed in for this person), then those without an answer.
  for (let more = true; more;) {
    const since = await box.kept("cursor");
    const answer = await fetch(`/notes?limit=50${since ? `&since=${encodeURIComponent(since)}` : ""}`, { headers: { Accept: "application/json" } }).catch(() => null);
    if (!answer || !answer.ok) return;
    const { notes, next } = await answer.json();
    for (const note of notes) {
      const old = await box.get("answers", note.id);
      await box.put("answers", { drawings: {}, ...old, id: note.id, at: note.spoken_at, note });
    }
    if (next) await box.keep("cursor", next);
    more = Boolean(next) && notes.length === 50;
  }
  for (const one of await box.all("answers")) if (!one.note || ["waiting", "hearing"].includes(one.note.state)) follow(one.id);
  show();
}

async function act(url, body = {}) {
  await box.queueAct(url, { id: uuid(), at: local(), ...body });
  root.dataset.state = "queued";
  await showQueue();
  send();
}

function big(facts) {
  // The numbers that matter with the piece in hand.
  const of = (name) => facts.find((fact) => fact.name === name);
  const size = (name) => { const fact = of(name); return fact ? fact.value.map(number).join(` ${say("phone.by")} `) : null; };
  const lines = [];
  if (size("inlet_size")) lines.push(size("outlet_size") ? say("phone.from-to", { one: size("inlet_size"), other: size("outlet_size") }) : size("inlet_size"));
  for (const name of ["branch_size", "side_moves", "offset_by", "turn_angle", "collar_diameter"]) if (of(name)) lines.push(text(of(name)));
  return lines.map((line) => make("p", { class: "big" }, line));
}

function answerTo(note) {
  newDraft({ answers: note.id, mode: "fitting" }).then(() => { location.hash = "#speak"; });
}

function showQuestion(note, { position, finding }) {
  const flag = plan.shapes[finding.asks] && plan.shapes[finding.asks].shape === "flag";
  const set = (value) => act(`/notes/${note.id}/corrections`, { position, name: finding.asks, value });
  return make("div", { class: "ask" }, make("p", { class: "question" }, finding.do || finding.says),
    flag ? make("div", { class: "two" },
      make("button", { type: "button", onclick: () => set(true) }, `${label(finding.asks)}: ${say("facts.yes")}`),
      make("button", { type: "button", onclick: () => set(false) }, `${label(finding.asks)}: ${say("facts.no")}`)) : null,
    make("div", { class: "stack" }, make("button", { type: "button", class: "quiet", onclick: () => answerTo(note) }, say("phone.answer-by-voice"))));
}

function showFact(note, position, fact) {
  const row = make("div", {});
  const open = () => row.replaceChildren(correcting(note, position, fact, () => row.replaceChildren(press)));
  const press = make("button", { type: "button", class: "fact", onclick: open },
    make("span", {}, label(fact.name)), make("b", {}, text(fact)), make("span", { class: "aside" }, say("phone.set-right")));
  row.append(press);
  return row;
}

function correcting(note, position, fact, close) {
  // The form of a fact's shape; what was heard first stays in the log.
  const { shape, choices, unit } = plan.shapes[fact.name] || { shape: "text", choices: [] };
  const named = unit ? `${label(fact.name)} (${unit})` : label(fact.name);
  const field = (value, more = {}) => make("input", { value: value ?? "", inputmode: "decimal", ...more });
  const read = (typed) => {
    const found = /^(-)?(?:(\d+)(?:[ -](\d+)\/(\d+))?|(\d+)\/(\d+)|(\d*\.\d+))$/.exec(typed.trim().replace(",", "."));
    if (!found) return null;
    const [, minus, whole, over, under, over1, under1, decimal] = found;
    const size = decimal ? Number(decimal) : over1 ? over1 / under1 : Number(whole) + (over ? over / under : 0);
    return minus ? -size : size;
  };
  let inputs;
  let value;
  if (shape === "flag" || (choices || []).length) {
    const options = shape === "flag" ? [["true", say("facts.yes")], ["false", say("facts.no")]] : choices.map((one) => [one, fact.name === "kind" ? kind(one) : has(`facts.value.${one}`) ? say(`facts.value.${one}`) : one]);
    inputs = [make("label", {}, named, make("select", {}, options.map(([id, words]) => make("option", { value: id, selected: String(fact.value) === id }, words))))];
    value = (all) => (shape === "flag" ? all[0].value === "true" : shape === "count" ? Number(all[0].value) : all[0].value);
  } else if (shape === "size" || shape === "slope") {
    inputs = fact.value.map((one, at) => make("label", {}, `${named} ${at + 1}`, field(number(one))));
    value = (all) => all.map((one) => read(one.value));
  } else if (shape === "moves") {
    inputs = fact.value.flatMap((m) => ["by", "back"].map((part) => make("label", {}, `${m.side ? say(`facts.value.${m.side}`) : ""} ${say(`phone.${part}`)}`, field(m[part] === null ? "" : number(m[part])))));
    value = (all) => fact.value.map((m, at) => ({ ...m, by: read(all[at * 2].value), back: all[at * 2 + 1].value.trim() ? read(all[at * 2 + 1].value) : null }));
  } else if (["length", "angle", "number"].includes(shape)) {
    inputs = [make("label", {}, named, field(number(fact.value)))];
    value = (all) => read(all[0].value);
  } else if (shape === "sides" || shape === "marks") {
    inputs = [make("label", {}, named, field(fact.value.join(", "), { inputmode: "text" }))];
    value = (all) => all[0].value.split(",").map((one) => one.trim()).filter(Boolean);
  } else {
    inputs = [make("label", {}, named, field(fact.value, { inputmode: shape === "count" ? "numeric" : "text" }))];
    value = (all) => (shape === "count" ? Number(all[0].value) : all[0].value.trim());
  }
  const told = make("p", { class: "error", role: "alert" });
  const form = make("form", { class: "fields told" }, inputs, told,
    make("button", {}, say("phone.keep-value")), make("button", { type: "button", class: "quiet", onclick: close }, say("phone.leave-it")));
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const given = value([...form.querySelectorAll("input, select")]);
    if (given === null || (Array.isArray(given) && given.some((one) => one === null || (one && one.by === null && one.back === null)))) { told.textContent = say("phone.not-a-number"); return; }
    act(`/notes/${note.id}/corrections`, { position, name: fact.name, value: given });
    close();
  });
  return form;
}

function showFitting(note, fitting, drawing) {
  const found = fitting.findings || [];
  const shown = found.filter((f) => f.verdict !== "meets" && f.shows !== "file");
  const order = ["flag", "ask", "count"];
  shown.sort((a, b) => order.indexOf(a.shows) - order.indexOf(b.shows));
  const names = plan.say[(fitting.facts.find((fact) => fact.name === "kind") || {}).value] || [];
  const said = new Set(fitting.facts.map((fact) => fact.name).concat((fitting.assumed || []).map((one) => one.name)));
  if (note.photos.length) said.add("photo");
  return make("section", { class: "sheet" }, make("h2", {}, heading(fitting.facts)),
    drawing ? make("img", { class: "drawing", src: URL.createObjectURL(new Blob([drawing], { type: "image/svg+xml" })), alt: say("phone.drawing-alt", { what: heading(fitting.facts) }) }) : null,
    big(fitting.facts),
    shown.length ? shown.map((f) => make("div", { class: `finding ${f.verdict}` }, make("p", {}, verdict(f.verdict)), make("p", { class: "says" }, f.says), f.do ? make("p", { class: "do" }, make("b", {}, say("phone.do")), ` ${f.do}`) : null, make("p", { class: "source" }, f.source))) : make("p", {}, say("phone.nothing-off")),
    names.length ? make("ul", { class: "to-say" }, names.map((name) => make("li", {}, verdictSign(said.has(name)), label(name), make("span", { class: "aside" }, ` ${say(said.has(name) ? "phone.said" : "facts.verdict.unsaid")}`)))) : null,
    make("h3", {}, say("phone.understood")),
    fitting.facts.map((fact) => showFact(note, fitting.position, fact)));
}

function verdictSign(said) {
  const sign = verdict(said ? "meets" : "unsaid");
  return sign.querySelector("svg");
}

async function showNote(id) {
  const [kept, queue] = [await box.get("answers", id), await box.queued()];
  const here = queue.find((one) => one.id === id);
  const note = kept && kept.note;
  const screen = $("note");
  if (here && here.state === "refused") {
    const why = here.said ? `${here.said.error} ${here.said.cure}` : say(here.why || "phone.refused");
    screen.replaceChildren(make("h1", { tabindex: "-1" }, say("phone.refused")), make("p", { class: "told" }, why),
      make("div", { class: "stack" },
        make("button", { type: "button", onclick: async () => { await box.again(here.seq); send(); } }, say("phone.try-again")),
        make("button", { type: "button", class: "quiet", onclick: () => saveFiles(here) }, say("phone.save-file"))));
    root.dataset.answer = "refused";
    return;
  }
  if (!note) {
    screen.replaceChildren(make("h1", { tabindex: "-1" }, say(here ? "phone.on-phone" : "phone.handed-in")), make("p", { class: "big" }, say(here ? "phone.on-phone-told" : "phone.handed-in-told")),
      make("div", { class: "stack" }, make("button", { type: "button", onclick: () => { location.hash = "#speak"; } }, say("phone.next-one"))));
    root.dataset.answer = here ? "queued" : "waiting";
    return;
  }
  const title = note.fittings.map((f) => heading(f.facts)).join("; ") || say(note.shift ? "phone.shift" : `facts.state.${note.state}`);
  const parts = [make("h1", { tabindex: "-1" }, title), make("p", { class: "meta" }, `${clock(note.spoken_at)} · ${say(`facts.state.${note.state}`)}`)];
  if (note.problem) parts.push(make("div", { class: "told" }, make("p", { class: "error" }, note.problem.why), make("p", {}, note.problem.cure)));
  parts.push(...asks(note).map((one) => showQuestion(note, one)));
  parts.push(...note.fittings.map((fitting) => showFitting(note, fitting, (kept.drawings || {})[fitting.position])));
  if (note.text) parts.push(make("h2", {}, say("phone.words")), make("blockquote", { class: "words", lang: note.language || language }, note.text));
  if (note.state === "answered") {
    parts.push(make("div", { class: "stack" },
      make("button", { type: "button", onclick: () => act(`/notes/${note.id}/right`) }, say("phone.right")),
      make("p", { class: "hint" }, say("phone.right-hint")),
      make("button", { type: "button", class: "quiet", onclick: () => answerTo(note) }, say("phone.say-more")),
      window.speechSynthesis ? make("button", { type: "button", class: "quiet", onclick: () => { const voice = new SpeechSynthesisUtterance(aloud(note)); voice.lang = language; speechSynthesis.cancel(); speechSynthesis.speak(voice); } }, say("phone.read-aloud")) : null,
      make("details", {}, make("summary", {}, say("phone.take-back")), make("p", {}, say("phone.take-back-told")), make("button", { type: "button", class: "quiet", onclick: () => act(`/notes/${note.id}/withdraw`) }, say("phone.take-back-press")))));
  } else if (note.state === "unheard") {
    parts.push(make("div", { class: "stack" }, make("button", { type: "button", onclick: () => answerTo(note) }, say("phone.say-again"))));
  }
  parts.push(make("div", { class: "stack" }, make("button", { type: "button", onclick: () => { newDraft(); location.hash = "#speak"; } }, say("phone.next-one"))));
  screen.replaceChildren(...parts.flat().filter(Boolean));
  root.dataset.answer = note.state;
}

async function saveFiles(one) {
  for (const { name, blob } of await box.saved(one)) {
    const link = make("a", { href: URL.createObjectURL(blob), download: name });
    link.click();
  }
}

async function rows(filter) {
  const [kept, queue] = [await box.all("answers"), await box.queued()];
  const list = queue.filter((one) => one.what === "note").map((one) => ({ id: one.id, at: one.at, here: one }));
  list.push(...kept.filter((one) => !queue.some((other) => other.id === one.id)));
  return list.filter(filter).sort((a, b) => (a.at < b.at ? 1 : -1)).map(({ id, at, note, here }) => make("div", { class: "rows note-row" },
    make("a", { href: `#note/${id}` }, `${clock(at)} ${note ? note.fittings.map((f) => heading(f.facts)).join("; ") || say(note.shift ? "phone.shift" : `facts.state.${note.state}`) : say(here ? (here.state === "refused" ? "phone.refused" : "phone.on-phone") : "phone.handed-in")}`),
    note ? make("span", { class: "tally" }, tally(note).map(([name, count]) => verdict(name, count))) : null));
}

async function showMine() {
  const list = await rows(() => true);
  $("mine").replaceChildren(...(list.length ? list : [make("p", { class: "empty" }, say("phone.mine-empty"))]));
}

async function showBreak() {
  const mine = (await box.all("answers")).filter((one) => one.note && (one.at || "").slice(0, 10) === today());
  const list = await rows((one) => one.note && (one.at || "").slice(0, 10) === today() && needsWord(one.note));
  $("break").replaceChildren(make("p", { class: "big" }, say("phone.break-count", { wanting: list.length, total: mine.length })), ...list);
}

// --- who, and what to tap

function showWho() {
  $("job").textContent = (me && me.job && me.job.name) || say("phone.short-name");
  const crew = (me && me.crew) || [];
  $("voices").hidden = crew.length < 2;
  $("voices").replaceChildren(make("legend", {}, say("phone.who")), ...crew.map((one, at) => make("label", {}, make("input", { type: "radio", name: "voice", value: one.id, checked: at === 0 }), one.name || one.id)));
  $("foot").replaceChildren(me ? make("p", {}, say("phone.signed-in", { name: me.person.name || me.person.id }), " ", make("button", { type: "button", class: "plain", onclick: signOut }, say("phone.sign-out"))) : make("p", {}, make("a", { href: "/pair", class: "press" }, say("phone.pair"))));
}

async function signOut() {
  // Cached answers go; what waits stays on the phone.
  await sender.me().catch(() => null);
  const body = new FormData();
  body.append("csrf_token", sender.csrf || "");
  await fetch("/leave", { method: "POST", body }).catch(() => null);
  await box.clear("answers");
  await box.remove("kept", "me");
  await box.remove("kept", "cursor");
  location.reload();
}

function showPlan() {
  const kinds = Object.keys(plan.say);
  $("kind").replaceChildren(make("option", { value: "" }), ...kinds.map((one) => make("option", { value: one }, kind(one))));
  $("piece").replaceChildren(make("option", { value: "" }, plan.rows.length ? "" : say("phone.no-schedule")), ...plan.rows.map((row, at) => make("option", { value: at }, [kind(row.kind), row.mark, row.run ? say("phone.run", { run: row.run }) : ""].filter(Boolean).join(" "))));
  const modes = ["fitting", "several", "shift"];
  $("modes").replaceChildren(make("legend", { class: "aside" }, say("phone.mode")), ...modes.map((mode) => make("label", {}, make("input", { type: "radio", name: "mode", value: mode, checked: mode === "fitting", onchange: () => { draft.mode = mode; $("press-told").textContent = say(`phone.hint-${mode}`); toSay(); } }), say(`phone.mode-${mode}`))));
}

async function fetchPlan() {
  const answer = await fetch("/phone/plan", { headers: { Accept: "application/json" } }).catch(() => null);
  if (answer && answer.ok) { plan = await answer.json(); await box.keep("plan", plan); showPlan(); }
}

// --- screens

async function show() {
  const [name, id] = (location.hash.slice(1) || "speak").split("/");
  const screen = ["speak", "mine", "break", "note"].includes(name) ? name : "speak";
  for (const one of ["speak", "mine", "break", "note"]) $(`screen-${one}`).hidden = one !== screen;
  document.querySelectorAll("#nav a").forEach((link) => (link.hash === `#${screen}` ? link.setAttribute("aria-current", "page") : link.removeAttribute("aria-current")));
  if (screen === "mine") await showMine();
  if (screen === "break") await showBreak();
  if (screen === "note") await showNote(id);
  if (screen === "speak") await showAnswering();
}

async function showAnswering() {
  const about = draft && draft.answers && (await box.get("answers", draft.answers));
  $("answering").hidden = !about;
  if (about && about.note) $("answering").replaceChildren(make("p", {}, say("phone.answering", { what: about.note.fittings.map((f) => heading(f.facts)).join("; ") || clock(about.at) })), ...asks(about.note).map(({ finding }) => make("p", { class: "question" }, finding.do || finding.says)), make("button", { type: "button", class: "quiet", onclick: () => newDraft().then(show) }, say("phone.not-an-answer")));
}

async function takeUp() {
  // A note that was cut off (the app closed, the phone died) is still here.
  const left = (await box.all("drafts")).at(-1);
  if (!left) return newDraft();
  draft = { levels: [], ...left };
  const parts = await box.partsOf(draft.note);
  draft.part = parts.length ? parts.at(-1).part + 1 : 0;
  draft.n = 0;
  for (const [name, value] of Object.entries(left.fields || {})) if ($(name)) $(name).value = value;
  if (parts.length) {
    $("cut-off").hidden = false;
    $("cut-off").replaceChildren(make("p", {}, say("phone.cut-off", { time: minutes(parts.reduce((sum, part) => sum + part.seconds, 0)) })), make("button", { type: "button", class: "quiet", onclick: async () => { await box.forget(draft.note); $("cut-off").hidden = true; await newDraft(); } }, say("phone.throw-away-all")));
  }
  await showDraft();
}

async function start() {
  await speakLanguage(await box.kept("language", (navigator.language || "en").startsWith("es") ? "es" : "en"));
  me = await box.kept("me");
  plan = await box.kept("plan", plan);
  showWho();
  showPlan();
  await takeUp();
  if ((await box.kept("cautioned")) !== today()) { $("caution").hidden = false; await box.keep("cautioned", today()); }
  presses();
  $("hand-in").addEventListener("click", handIn);
  $("camera").addEventListener("change", (event) => addPhotos([...event.target.files], true).then(() => { event.target.value = ""; }));
  $("album").addEventListener("change", (event) => addPhotos([...event.target.files], false).then(() => { event.target.value = ""; }));
  $("text").addEventListener("input", () => { $("hand-in").disabled = !$("text").value.trim() && !$("parts").children.length; });
  $("kind").addEventListener("change", toSay);
  $("piece").addEventListener("change", () => {
    const row = plan.rows[$("piece").value];
    if (!row) return;
    $("mark").value = row.mark || "";
    $("run").value = row.run || "";
    $("kind").value = row.kind || "";
    toSay();
  });
  $("tongue").addEventListener("click", async () => { await speakLanguage(language === "en" ? "es" : "en"); showWho(); showPlan(); await showDraft(); await showQueue(); await show(); refresh(); });
  $("send-now").addEventListener("click", () => send(true));
  addEventListener("hashchange", async () => { await show(); const title = document.querySelector("main section:not([hidden]) h1"); if (title) title.focus(); scrollTo(0, 0); });
  const round = async () => { if (document.visibilityState === "visible") { await send(); if (!sender.signedOut) await refresh(); } };
  addEventListener("online", round);
  document.addEventListener("visibilitychange", round);
  setInterval(round, 30000);
  await showQueue();
  await show();
  if ("serviceWorker" in navigator) {
    navigator.serviceWorker.register("/sw.js").then(() => navigator.serviceWorker.ready).then(() => { root.dataset.shelf = "ready"; }).catch(() => { root.dataset.shelf = "none"; });
  }
  root.dataset.state = "ready";
  await round();
  await fetchPlan();
  await showDraft();
}

start();
