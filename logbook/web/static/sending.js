// What goes out and what comes back: the queue that is always visible, presses, answers that arrive late.
import * as box from "./outbox.js";
import { ask } from "./asking.js";
import { $, changed, known, local, root, uuid } from "./page.js";
import { make, say, unfinished } from "./answer.js";

const ROUNDS = 60; // a note just handed in is asked for every 1.5 s so often; later rounds do it every 30 s

export const sender = new box.Sender(async (event, id) => {
  if (event === "me") known.me = await box.kept("me");
  if (["sent", "acted"].includes(event)) follow(id);
  if (["me", "refused", "sent", "rest"].includes(event)) changed(id);
  await showQueue(event);
});

export const send = (photosToo = false) => sender.run(photosToo);

export async function showQueue(event = "") {
  const list = await box.queued();
  const refused = list.filter((one) => one.state === "refused").length;
  const originals = list.filter((one) => one.state === "waiting" && one.hold).length;
  const waits = list.filter((one) => one.state === "waiting").length - originals;
  Object.assign($("queue").dataset, { waiting: waits, refused, originals });
  const told = [];
  if (event === "sending") told.push(say("phone.sending"));
  if (waits) told.push(say("phone.waiting", { count: waits }));
  if (originals) told.push(say("phone.originals", { count: originals }));
  if (refused) told.push(say("phone.refused-count", { count: refused }));
  if (list.some((one) => one.state === "waiting" && !one.hold && one.unanswered)) told.push(say("phone.unanswered"));
  if (waits && sender.full) told.push(say("phone.server-full"));
  if (waits && sender.trouble) told.push(say("phone.server-trouble", { status: sender.trouble }));
  if (sender.signedOut) told.push(say(known.me ? "phone.signed-out" : "phone.not-paired"));
  root.dataset.room = (await box.spareIsThere()) ? "enough" : "little";
  if (root.dataset.room === "little") told.push(say("phone.little-room"));
  $("queue-told").textContent = told.join(" ") || say("phone.all-in");
  $("send-now").textContent = say(waits || !originals ? "phone.send-now" : "phone.send-originals");
  $("send-now").hidden = (!waits && !originals) || sender.signedOut;
  const again = document.getElementById("pair-again");
  if (sender.signedOut && !again) $("queue").append(make("a", { id: "pair-again", class: "press quiet", href: "/pair" }, say("phone.pair")));
  else if (again && sender.signedOut) again.textContent = say("phone.pair");
  else if (again) again.remove();
}

export async function act(url, body = {}) {
  // A press about a note that is in: kept first, then sent, like a note.
  await box.queueAct(url, { id: uuid(), at: local(), ...body });
  await showQueue();
  root.dataset.state = "queued"; // once the queue shows it, as with a note
  changed(url.split("/")[2]);
  send();
}

// --- answers

const following = new Set();

export async function follow(id) {
  // Asks until the note is heard and judged.
  if (following.has(id)) return;
  following.add(id);
  for (let round = 0; round < ROUNDS; round++) {
    const note = await fetchNote(id);
    if (note && !unfinished(note)) break;
    await new Promise((done) => setTimeout(done, 1500));
    if (document.visibilityState !== "visible") break;
  }
  following.delete(id);
}

export async function fetchNote(id) {
  const answer = await ask(`/notes/${id}`, { headers: { Accept: "application/json" } }).catch(() => null);
  if (!answer || !answer.ok) return null;
  const note = await answer.json();
  const drawings = {};
  for (const fitting of note.fittings) {
    if (!fitting.piece) continue;
    const drawn = await ask(`/pieces/${fitting.piece}/drawing.svg`).catch(() => null);
    if (drawn && drawn.ok) drawings[fitting.position] = await drawn.text();
  }
  const before = await box.get("answers", id);
  await box.put("answers", { ...before, id, at: note.spoken_at, note, drawings, language: known.language });
  if (!before || before.language !== known.language || JSON.stringify(before.note) !== JSON.stringify(note)) changed(id);
  return note;
}

export async function refresh() {
  // New notes since the cursor (another phone may have handed in for this person), then those without an answer.
  for (let more = true; more;) {
    const since = await box.kept("cursor");
    const answer = await ask(`/notes?limit=50${since ? `&since=${encodeURIComponent(since)}` : ""}`, { headers: { Accept: "application/json" } }).catch(() => null);
    if (!answer || !answer.ok) return;
    const { notes, next } = await answer.json();
    for (const note of notes) {
      const old = await box.get("answers", note.id);
      await box.put("answers", { drawings: {}, ...old, id: note.id, at: note.spoken_at, note });
    }
    if (next) await box.keep("cursor", next);
    more = Boolean(next) && notes.length === 50;
  }
  const asked = await ask("/questions", { headers: { Accept: "application/json" } }).catch(() => null); // what the lead wants of older notes
  if (asked && asked.ok) for (const note of (await asked.json()).earlier || []) await box.put("answers", { drawings: {}, ...(await box.get("answers", note.id)), id: note.id, at: note.spoken_at, note });
  for (const one of await box.all("answers")) if (unfinished(one.note)) follow(one.id);
  changed();
}
