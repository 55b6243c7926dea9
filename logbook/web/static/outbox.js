// What waits on the phone: notes and presses in order, their bytes, and how they go out.
// A recording is written second by second, so that a phone that dies loses at most the last one.
// Nothing is removed because a server said no: only what the server has whole is removed.
import { Unanswered, ask, sizeOf, upload } from "./asking.js";

const STORES = {
  queue: { keyPath: "seq", autoIncrement: true }, // what goes out, in order: notes, presses, photos that follow
  chunks: { keyPath: ["note", "part", "n"] }, // sound as it came: ArrayBuffers of one second
  photos: { keyPath: ["note", "n"] }, // pictures as they are, with what the phone knew of them
  drafts: { keyPath: "note" }, // the note being made
  answers: { keyPath: "id" }, // notes as the server last told them
  kept: { keyPath: "key" }, // who, plan, cursor, language
};

let opened = null;

function database() {
  opened ||= new Promise((done, fail) => {
    const asked = indexedDB.open("logbook", 1);
    asked.onupgradeneeded = () => {
      for (const [name, shape] of Object.entries(STORES)) asked.result.createObjectStore(name, shape);
    };
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => fail(asked.error);
  });
  return opened;
}

async function within(names, mode, work) {
  // One transaction; resolves when it is on the disk, not when it was asked for.
  const db = await database();
  return new Promise((done, fail) => {
    const transaction = db.transaction(names, mode, { durability: "strict" });
    let answer;
    transaction.oncomplete = () => done(answer && "result" in answer ? answer.result : answer);
    transaction.onerror = transaction.onabort = () => fail(transaction.error);
    answer = work(...[].concat(names).map((name) => transaction.objectStore(name)));
  });
}

export const put = (store, value) => within(store, "readwrite", (s) => s.put(value));
export const get = (store, key) => within(store, "readonly", (s) => s.get(key));
export const all = (store, range) => within(store, "readonly", (s) => s.getAll(range));
export const remove = (store, key) => within(store, "readwrite", (s) => s.delete(key));
export const clear = (store) => within(store, "readwrite", (s) => s.clear());
export const keep = (key, value) => put("kept", { key, value });
export const kept = async (key, otherwise = null) => ((await get("kept", key)) || { value: otherwise }).value;
const of = (note) => IDBKeyRange.bound([note], [note, []]);

// --- the note being made

export const keepChunk = (note, part, n, bytes, kind) => put("chunks", { note, part, n, bytes, kind });
export const keepPhoto = (photo) => put("photos", photo);
export const dropPhoto = (note, n) => remove("photos", [note, n]);
export const dropPart = (note, part) => within("chunks", "readwrite", (s) => s.delete(IDBKeyRange.bound([note, part], [note, part, []])));
export const photosOf = (note) => all("photos", of(note));

export async function partsOf(note) {
  // [{part, kind, seconds, blob}], in order; a chunk is a second.
  const parts = new Map();
  for (const chunk of await all("chunks", of(note))) {
    if (!parts.has(chunk.part)) parts.set(chunk.part, { part: chunk.part, kind: chunk.kind, chunks: [] });
    parts.get(chunk.part).chunks.push(chunk.bytes);
  }
  return [...parts.values()].map((p) => ({ part: p.part, kind: p.kind, seconds: p.chunks.length, blob: new Blob(p.chunks, { type: p.kind }) }));
}

export async function forget(note) {
  await within(["chunks", "photos", "drafts"], "readwrite", (chunks, photos, drafts) => {
    chunks.delete(of(note));
    photos.delete(of(note));
    drafts.delete(note);
  });
}

// --- what goes out

export async function queueNote(fields, later, holds, aside = null) {
  // The note is in the queue, and the draft is none any more, in one step. `holds`: what its row tells while it waits.
  // `aside`: the fields of a second note, what was typed beside the sound of the first.
  await within(["queue", "drafts"], "readwrite", (queue, drafts) => {
    queue.add({ what: "note", id: fields.id, fields, later, holds, state: "waiting", at: fields.spoken_at });
    if (aside) queue.add({ what: "note", id: aside.id, fields: aside, later: false, holds: { seconds: 0, photos: 0 }, state: "waiting", at: aside.spoken_at });
    drafts.delete(fields.id);
  });
}

export const queueAct = (url, body) => within("queue", "readwrite", (s) => s.add({ what: "act", id: body.id, url, body, state: "waiting", at: body.at }));
export const queuePhoto = async (photo, at) => {
  // A photo that is added to a note which is handed in already.
  const sha256 = await digest(new Blob([photo.bytes]));
  await within(["queue", "photos"], "readwrite", (queue, photos) => {
    photos.put(photo);
    queue.add({ what: "photo", id: `${photo.note}:${photo.n}`, note: photo.note, n: photo.n, sha256, state: "waiting", hold: false, at });
  });
};
export const queued = () => all("queue");

const amend = (seq, more) => within("queue", "readwrite", (queue) => {
  // A row that another page has sent meanwhile does not come back.
  const found = queue.get(seq);
  found.onsuccess = () => { if (found.result) queue.put({ ...found.result, ...more }); };
});

export async function digest(blob) {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", await blob.arrayBuffer()));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

async function form(one) {
  // The multipart body of a note, and the digests that the server must answer with.
  const body = new FormData();
  for (const [name, value] of Object.entries(one.fields)) if (value) body.append(name, value);
  body.append("sent_at", new Date().toISOString());
  const sound = await partsOf(one.id);
  const photos = await photosOf(one.id);
  const own = { audio: [], photos: [] };
  for (const part of sound) {
    body.append("audio", part.blob, `part-${part.part}`);
    own.audio.push(await digest(part.blob));
  }
  const blobs = photos.map((photo) => new Blob([photo.bytes], { type: photo.kind }));
  const digests = await Promise.all(blobs.map(digest));
  if (one.later) {
    // small copies now; the originals are announced and follow by a press
    const small = photos.map((photo, at) => ({ photo, of: digests[at] })).filter(({ photo }) => photo.small);
    if (digests.length) body.append("photos_to_come", JSON.stringify(digests));
    for (const { photo } of small) {
      const blob = new Blob([photo.small], { type: "image/jpeg" });
      body.append("photo", blob, photo.name);
      own.photos.push(await digest(blob));
    }
    if (small.length) body.append("photo_facts", JSON.stringify(small.map(({ photo, of }) => ({ ...photo.facts, copy_of: of }))));
  } else {
    blobs.forEach((blob, at) => body.append("photo", blob, photos[at].name));
    own.photos = digests;
    if (photos.length) body.append("photo_facts", JSON.stringify(photos.map((photo) => photo.facts)));
  }
  return { body, own, photos, digests };
}

// Refused for good: not where the server says when to come again (busy, or a token that is too old).
export const gone = ({ status, headers }) => status >= 400 && status < 500 && ![401, 408, 425, 429].includes(status) && !headers.has("Retry-After");

export class Sender {
  // tell(event): something changed. A refusal stays in the queue with its reason; the next ones go on.
  constructor(tell) { this.tell = tell; this.busy = null; this.signedOut = false; this.csrf = null; this.trouble = null; this.full = false; this.anew = false; this.photosToo = false; }

  run(photosToo = false) {
    // Asked while it is at work, it looks once more at the end: a note that came meanwhile does not wait for the next round.
    if (this.busy) Object.assign(this, { anew: true, photosToo: this.photosToo || photosToo });
    this.busy ||= this.work(photosToo).catch(() => false).finally(() => {
      this.busy = null;
      this.tell("rest");
      if (this.anew) this.run(this.photosToo);
    });
    return this.busy;
  }

  async me() {
    const answer = await ask("/me", { headers: { Accept: "application/json" } });
    if (answer.status === 401) { this.signedOut = true; this.tell("signed-out"); return null; }
    if (!answer.ok) { this.fell(answer); return null; }
    this.signedOut = false;
    const me = await answer.json();
    this.csrf = me.csrf;
    await keep("me", me);
    this.tell("me");
    return me;
  }

  async work(photosToo) {
    Object.assign(this, { anew: false, photosToo: false }); // what is asked from here on is for the next round
    this.trouble = null; // the status of a server that fell over what it was sent
    const me = await this.me().catch((error) => this.unanswered(error));
    if (!me) return false;
    const back = []; // notes that stayed: what belongs to them waits behind them
    for (const one of await queued()) {
      if (one.state !== "waiting" || (one.what === "photo" && one.hold && !photosToo)) continue;
      if (back.some((id) => [one.note, one.fields && one.fields.answers, (one.url || "").split("/")[2]].includes(id))) continue;
      if (!(await get("queue", one.seq))) continue; // this page is open twice, and the other one has sent it
      this.tell("sending");
      const went = await (one.what === "note" ? this.note(one) : one.what === "act" ? this.act(one) : this.photo(one)).catch((error) => this.unanswered(error, one.seq));
      if (went) { this.full = false; continue; }
      if (!this.trouble && went !== null) return false;
      back.push(one.what === "note" ? one.id : one.note || one.url.split("/")[2]); // one note may not hold up the others
    }
    return !back.length;
  }

  async note(one) {
    const { body, own, photos, digests } = await form(one);
    const answer = await upload("POST", "/notes", body, { Accept: "application/json", "X-CSRFToken": this.csrf }, sizeOf(body));
    if (!answer.ok) return this.refused(one, answer);
    const receipt = await answer.json();
    const whole = JSON.stringify(receipt.digests.audio) === JSON.stringify(own.audio) && JSON.stringify(receipt.digests.photos) === JSON.stringify(own.photos);
    if (!whole) return this.settle(one, "refused", "phone.digests-differ");
    if (one.later) {
      for (const [at, photo] of photos.entries()) {
        await within("queue", "readwrite", (s) => s.add({ what: "photo", id: `${one.id}:${photo.n}`, note: one.id, n: photo.n, sha256: digests[at], state: "waiting", hold: true, at: one.at }));
      }
      await within(["chunks"], "readwrite", (chunks) => chunks.delete(of(one.id)));
    } else {
      await forget(one.id);
    }
    await remove("queue", one.seq);
    await put("answers", { id: one.id, at: one.at, note: null, sent: { fields: one.fields, holds: one.holds } }); // what it holds is told until it is judged
    this.tell("sent", one.id);
    return true;
  }

  async act(one) {
    const answer = await ask(one.url, { method: "POST", body: JSON.stringify(one.body), headers: { Accept: "application/json", "Content-Type": "application/json", "X-CSRFToken": this.csrf } });
    if (!answer.ok) return this.refused(one, answer);
    await remove("queue", one.seq);
    this.tell("acted", one.url.split("/")[2]);
    return true;
  }

  async photo(one) {
    const photo = await get("photos", [one.note, one.n]);
    const answer = await upload("PUT", `/notes/${one.note}/photos/${one.sha256}?facts=${encodeURIComponent(JSON.stringify(photo.facts))}`, new Blob([photo.bytes]), { Accept: "application/json", "Content-Type": "application/octet-stream", "X-CSRFToken": this.csrf }, photo.bytes.byteLength);
    if (!answer.ok) return this.refused(one, answer);
    await dropPhoto(one.note, one.n);
    await remove("queue", one.seq);
    this.tell("acted", one.note);
    return true;
  }

  async unanswered(error, seq = null) {
    // Nothing came back in time: it stays, its row says so, and it goes out again under the same id. Null: others may go on.
    if (!(error instanceof Unanswered)) throw error;
    for (const one of await queued()) if (one.state === "waiting" && !one.hold && (seq === null || one.seq === seq)) await amend(one.seq, { unanswered: new Date().toISOString() });
    return null;
  }

  async refused(one, answer) {
    this.fell(answer);
    if (answer.status === 401) { this.signedOut = true; this.tell("signed-out"); return false; }
    if (!gone(answer)) return false; // the server is busy, full or falling over, or the token is too old: later
    const said = await answer.json().catch(() => ({ error: answer.statusText, cure: "" }));
    return this.settle(one, "refused", null, said);
  }

  fell({ status, headers }) {
    // A server that is busy or full says when to come again; one that fell over says nothing.
    this.full ||= status === 507; // told until something goes through
    this.trouble = status >= 500 && !headers.has("Retry-After") && ![502, 503, 504, 507].includes(status) ? status : null;
  }

  async settle(one, state, why, said = null) {
    await amend(one.seq, { state, why, said });
    this.tell("refused", one.id);
    return true;
  }
}

export async function again(seq) {
  await amend(seq, { state: "waiting", unanswered: null });
}

export async function saved(one) {
  // A refused note as files that the person can keep: its sound parts, photos, and its fields.
  const files = [{ name: `${one.id}.json`, blob: new Blob([JSON.stringify(one.fields || one.body, null, 1)], { type: "application/json" }) }];
  const end = (kind) => (kind.includes("mp4") ? "m4a" : kind.includes("ogg") ? "ogg" : "webm");
  for (const part of await partsOf(one.id)) files.push({ name: `${one.id}-${part.part}.${end(part.kind)}`, blob: part.blob });
  for (const photo of await photosOf(one.id)) files.push({ name: `${one.id}-${photo.n}-${photo.name}`, blob: new Blob([photo.bytes], { type: photo.kind }) });
  return files;
}

// --- room: browsers no longer tell how much is free, so some is held in reserve

const SPARE = 8_000_000; // bytes: about half an hour of speech

export async function spareIsThere() {
  // Lays the reserve where it is missing. False: there is no room for it, and it is time to say so.
  if (await within("kept", "readonly", (s) => s.count("spare"))) return true;
  const value = new Uint8Array(SPARE);
  for (let at = 0; at < SPARE; at += 65536) crypto.getRandomValues(value.subarray(at, Math.min(at + 65536, SPARE)));
  return put("kept", { key: "spare", value }).then(() => true, () => false);
}

export async function giveSpare() {
  // The reserve is for what is being said while the room ends. True where there was one.
  if (!(await within("kept", "readonly", (s) => s.count("spare")))) return false;
  await remove("kept", "spare");
  return true;
}
