// Every question to the server comes to an end: with an answer, with a broken line, or given up where nothing moves any more.

const ANSWER_MS = 30_000; // of a question without bytes: so long may no answer, and no more of it, come
const STILL_MS = 60_000; // of an upload: so long may no byte move, and so long may the answer take once all are out
const SLOWEST = 10; // bytes a millisecond: where a browser does not tell how far an upload is, its whole length gets its time

export class Unanswered extends Error {}

export async function ask(url, options = {}) {
  // Like `fetch`, and given up where neither an answer nor more of it comes for ANSWER_MS.
  const ending = new AbortController();
  let timer = null;
  const within = () => { clearTimeout(timer); timer = setTimeout(() => ending.abort(), ANSWER_MS); };
  within();
  try {
    const answer = await fetch(url, { ...options, signal: ending.signal });
    const [parts, reader] = [[], answer.body && answer.body.getReader()];
    for (let more = reader && (await reader.read()); more && !more.done; more = await reader.read()) { parts.push(more.value); within(); }
    return answerOf(answer.status, answer.statusText, answer.headers, new Blob(parts));
  } catch (error) {
    throw ending.signal.aborted ? new Unanswered(url) : error;
  } finally {
    clearTimeout(timer);
  }
}

export const sizeOf = (form) => [...form.values()].reduce((sum, part) => sum + (part.size || 0), 0);

export function upload(method, url, body, headers, size) {
  // Bytes that go out, however slowly, have their time; an upload that stands still has an end.
  return new Promise((done, fail) => {
    const out = new XMLHttpRequest();
    let timer = null;
    const within = (ms) => { clearTimeout(timer); timer = setTimeout(() => { fail(new Unanswered(url)); out.abort(); }, ms); };
    out.upload.addEventListener("progress", () => within(STILL_MS));
    out.upload.addEventListener("load", () => within(STILL_MS));
    out.addEventListener("loadend", () => clearTimeout(timer));
    for (const way of ["error", "abort"]) out.addEventListener(way, () => fail(new TypeError(way)));
    out.addEventListener("load", () => {
      const told = new Headers(out.getAllResponseHeaders().trim().split(/\r?\n/).filter(Boolean).map((line) => [line.slice(0, line.indexOf(":")), line.slice(line.indexOf(":") + 1).trim()]));
      done(answerOf(out.status, out.statusText, told, out.response));
    });
    out.open(method, url);
    out.responseType = "arraybuffer";
    for (const [name, value] of Object.entries(headers)) out.setRequestHeader(name, value);
    within(STILL_MS + size / SLOWEST);
    out.send(body);
  });
}

const answerOf = (status, statusText, headers, body) => new Response([204, 205, 304].includes(status) ? null : body, { status, statusText, headers });
