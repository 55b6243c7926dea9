// My notes by day, and the one list for the break: what still needs a word, a piece once.
import * as box from "./outbox.js";
import { $, clock, dayName, local, redraw, today } from "./page.js";
import { answerTo, showQuestion, showWanted } from "./told.js";
import { asksOf, holding, loose, make, needsWord, open, say, tally, titleOf, unfinished, verdict, wanted } from "./answer.js";

async function rows() {
  // What waits on this phone and what was answered, newest first.
  const [kept, queue] = [await box.all("answers"), await box.queued()];
  const list = queue.filter((one) => one.what === "note").map((one) => ({ id: one.id, at: one.at, here: one }));
  list.push(...kept.filter((one) => !list.some((other) => other.id === one.id)));
  return list.sort((a, b) => (a.at < b.at ? 1 : -1));
}

function showRow({ id, at, note, here, sent }) {
  const told = note && !here ? titleOf(note) : say(here ? (here.state === "refused" ? "phone.refused" : "phone.on-phone") : "phone.handed-in");
  const of = here || (sent && unfinished(note)) ? holding(here || sent) : "";
  return make("div", { class: "note-row" }, make("a", { href: `#note/${id}` }, `${clock(at)} ${told}${of ? `: ${of}` : ""}`),
    note ? make("span", { class: "tally" }, note.withdrawn_at ? say("phone.taken-back-short") : tally(note).map(([name, count]) => verdict(name, count)), loose(note).length && !note.withdrawn_at ? make("span", {}, say("phone.unread-short")) : null) : null);
}

export async function showMine() {
  const list = await rows();
  const days = [...new Set(list.map((one) => (one.at || "").slice(0, 10)))];
  redraw($("mine"), list, () => (list.length ? days.flatMap((day) => [make("h2", {}, day === today() ? say("phone.today") : dayName(day)), ...list.filter((one) => (one.at || "").slice(0, 10) === day).map(showRow)]) : [make("p", { class: "empty" }, say("phone.mine-empty"))]));
}

export async function wanting() {
  // {mine, list}: today's notes and older ones of which the lead wants something, and those of them that need a word; of
  // two notes about one piece the later speaks for it.
  const kept = (await box.all("answers")).filter((one) => one.note && !one.note.withdrawn_at).sort((a, b) => (a.at < b.at ? 1 : -1));
  const mine = kept.filter((one) => (one.at && local(new Date(one.at)).slice(0, 10) === today()) || wanted(one.note).length);
  const seen = new Set();
  const list = mine.filter(({ note }) => {
    if (!needsWord(note)) return false;
    const pieces = note.fittings.map((f) => f.piece).filter(Boolean);
    const known = pieces.length > 0 && pieces.every((piece) => seen.has(piece));
    pieces.forEach((piece) => seen.add(piece));
    return !known;
  });
  return { mine, list: list.reverse() };
}

export async function showBreak() {
  const { mine, list } = await wanting();
  const all = await rows();
  const told = mine.length ? "phone.break-count" : all.some((one) => (one.at || "").slice(0, 10) === today()) ? "phone.break-unanswered" : "phone.break-none";
  const unjudged = all.filter((one) => one.here || unfinished(one.note)).length;
  const answering = (id) => all.find((one) => one.here && one.here.fields.answers === id);
  redraw($("break"), [list, mine.length, told, unjudged, list.map(({ id }) => Boolean(answering(id)))], () => [make("p", { class: "big" }, say(told, { wanting: list.length, total: mine.length })),
    unjudged ? make("p", { class: "told", id: "unjudged" }, say("phone.unjudged", { count: unjudged })) : null, ...list.map(({ id, at, note }) => make("section", { class: "sheet" },
    make("h2", {}, make("a", { href: `#note/${id}` }, `${clock(at)} ${titleOf(note)}`)),
    answering(id) ? make("p", { class: "told" }, say("phone.answer-kept")) : null,
    note.problem ? make("div", {}, make("p", { class: "error" }, note.problem.why), make("p", {}, note.problem.cure), make("button", { type: "button", onclick: () => answerTo(note) }, say("phone.say-again"))) : null,
    wanted(note).map(showWanted),
    open(note).map((f) => make("div", { class: "finding departs" }, make("p", {}, verdict("departs")), make("p", {}, f.says), f.do ? make("p", {}, make("b", {}, say("phone.do")), ` ${f.do}`) : null)),
    asksOf(note).map((one) => showQuestion(note, one))))].filter(Boolean));
}
