// One note as it was understood: the drawing and big numbers, what is off, at most two questions, and the rest.
import * as box from "./outbox.js";
import { $, changed, clock, known, local, redraw, root } from "./page.js";
import { newDraft, photoOf, takeUp } from "./making.js";
import { place } from "./pictures.js";
import { act, fetchNote, send, showQueue } from "./sending.js";
import { quickAnswers, showFact } from "./setting-right.js";
import { aloud, asks, asksOf, empty, heading, holding, label, loose, make, number, quoted, say, sorted, text, titleOf, verdict, wanted } from "./answer.js";

function big(facts) {
  // The numbers that matter with the piece in hand.
  const of = (name) => facts.find((fact) => fact.name === name);
  const size = (name) => { const fact = of(name); return fact ? fact.value.map(number).join(` ${say("phone.by")} `) : null; };
  const lines = [];
  if (size("inlet_size")) lines.push(size("outlet_size") ? say("phone.from-to", { one: size("inlet_size"), other: size("outlet_size") }) : size("inlet_size"));
  for (const name of ["branch_size", "side_moves", "offset_by", "turn_angle", "collar_diameter"]) if (of(name)) lines.push(text(of(name)));
  return lines.map((line) => make("p", { class: "big" }, line));
}

export function answerTo(note, asked = null) {
  // `asked`: the question that was pressed; it alone stands on the screen while he speaks.
  newDraft({ answers: note.id, asked: asked && [asked.position, asked.finding.rule] }).then(() => { location.hash = "#speak"; changed(); });
}

export function showQuestion(note, { position, finding, fitting }) {
  return make("div", { class: "ask" }, finding.do ? make("p", { class: "says" }, finding.says) : null, make("p", { class: "question" }, finding.do || finding.says),
    finding.asks === "photo" ? addPhoto(note) : quickAnswers(note, position, finding, fitting.facts),
    make("div", { class: "stack" }, make("button", { type: "button", class: "quiet", onclick: () => answerTo(note, { position, finding }) }, say("phone.answer-by-voice"), make("span", { class: "aside" }, ` ${finding.do || finding.says}`))));
}

function addPhoto(note, kind = "press") {
  // A photo for a note that is in already; it goes the way everything goes, with or without signal.
  const added = async (event) => {
    const files = [...event.target.files];
    const where = files.length ? await place() : {};
    for (const [at, file] of files.entries()) await box.queuePhoto(await photoOf(note.id, Date.now() + at, file, true, where), local());
    await showQueue();
    send();
    changed(note.id);
  };
  return [make("div", { class: "stack" }, make("label", { class: kind }, say("phone.add-photo"), make("input", { class: "aside", type: "file", accept: "image/*", capture: "environment", onchange: added })))];
}

function showFinding(f) {
  return make("div", { class: `finding ${f.verdict}` }, make("p", {}, verdict(f.verdict)), make("p", { class: "says" }, f.says), f.do ? make("p", { class: "do" }, make("b", {}, say("phone.do")), ` ${f.do}`) : null, make("p", { class: "source" }, f.source));
}

function showRest(rest) {
  // What else was not said or could not be told: one line each, folded.
  if (!rest.length) return null;
  return make("details", {}, make("summary", {}, say("phone.rest", { count: rest.length })),
    rest.map((f) => make("div", { class: `finding ${f.verdict}` }, make("p", {}, verdict(f.verdict)), make("p", {}, f.says), make("p", { class: "source" }, f.source))));
}

function showTicks(note, fitting) {
  // The list of what this kind must say, ticked off.
  const names = known.plan.say[(fitting.facts.find((fact) => fact.name === "kind") || {}).value] || [];
  const said = new Set(fitting.facts.map((fact) => fact.name).concat((fitting.assumed || []).map((one) => one.name)));
  if (note.photos.length) said.add("photo");
  const line = (sign, words, which) => (which.length ? make("p", { class: `ticks ${sign}` }, verdict(sign).firstChild, make("b", {}, ` ${say(words)} `), which.map(label).join(", ")) : null);
  return names.length ? [line("unsaid", "phone.not-said", names.filter((name) => !said.has(name))), line("meets", "phone.said", names.filter((name) => said.has(name)))] : [];
}

function showFitting(note, fitting, drawing, several) {
  const { off, rest } = sorted(note, fitting);
  const questions = asks(note).filter((one) => one.position === fitting.position);
  const silent = note.reckoning ? say("phone.being-judged") : !off.length && !questions.length && !rest.length && !loose(note).length ? say("phone.nothing-off") : null;
  return make("section", { class: "sheet" }, several ? make("h2", {}, heading(fitting.facts, fitting.of_piece)) : null,
    drawing ? make("img", { class: "drawing", src: URL.createObjectURL(new Blob([drawing], { type: "image/svg+xml" })), alt: say("phone.drawing-alt", { what: heading(fitting.facts, fitting.of_piece) }) }) : null,
    big(fitting.facts), silent ? make("p", { role: "status" }, silent) : null,
    off.map(showFinding), questions.map((one) => showQuestion(note, one)), showRest(rest),
    make("details", {}, make("summary", {}, say("phone.understood")), make("p", { class: "hint" }, say("phone.tap-to-correct")), fitting.facts.map((fact) => showFact(note, fitting.position, fact))),
    showTicks(note, fitting));
}

function showAloud(note) {
  // The phone's own voice; the same press again is silence.
  if (!window.speechSynthesis) return null;
  const read = () => {
    if (speechSynthesis.speaking) return speechSynthesis.cancel();
    const voice = new SpeechSynthesisUtterance(aloud(note));
    voice.lang = known.language;
    speechSynthesis.speak(voice);
  };
  return make("button", { type: "button", class: "quiet", onclick: read }, say("phone.read-aloud"));
}

function showActs(note) {
  if (note.withdrawn_at) return [make("p", { class: "told" }, say("phone.taken-back"))];
  if (note.state === "unheard") return [make("div", { class: "stack" }, make("button", { type: "button", onclick: () => answerTo(note) }, say("phone.say-again")))];
  if (note.state !== "answered") return [];
  return [make("div", { class: "stack" },
    note.heard_right ? make("p", { class: "stands" }, say("phone.right-done")) : make("button", { type: "button", onclick: () => act(`/notes/${note.id}/right`, { text: note.text }) }, say("phone.right")),
    note.heard_right ? null : make("p", { class: "hint" }, say("phone.right-hint")),
    make("button", { type: "button", class: "quiet", onclick: () => answerTo(note) }, say("phone.say-more")),
    addPhoto(note, "press quiet"),
    showAloud(note),
    make("details", {}, make("summary", {}, say("phone.take-back")), make("p", {}, say("phone.take-back-told")), make("button", { type: "button", class: "quiet", onclick: () => act(`/notes/${note.id}/withdraw`) }, say("phone.take-back-press"))))];
}

const next = () => make("div", { class: "stack" }, make("button", { type: "button", id: "next-one", onclick: () => takeUp().then(() => { location.hash = "#speak"; changed(); }) }, say("phone.next-one")));

function stillHere(here) {
  // Not in yet: waiting for signal, or refused with its reason; either way the bytes are on this phone.
  const of = holding(here);
  if (here.state !== "refused") return [make("h1", { tabindex: "-1" }, say("phone.on-phone")), make("p", { class: "big" }, here.unanswered ? say("phone.on-phone-unanswered", { time: clock(local(new Date(here.unanswered))) }) : say("phone.on-phone-told")), of ? make("p", { class: "told" }, of) : null];
  const why = here.said ? `${here.said.error} ${here.said.cure}` : say(here.why || "phone.refused");
  return [make("h1", { tabindex: "-1" }, say("phone.refused")), make("p", { class: "told" }, why), make("div", { class: "stack" },
    make("button", { type: "button", onclick: async () => { await box.again(here.seq); send(); } }, say("phone.try-again")),
    make("button", { type: "button", class: "quiet", onclick: () => saveFiles(here) }, say("phone.save-file")))];
}

async function saveFiles(one) {
  for (const { name, blob } of await box.saved(one)) make("a", { href: URL.createObjectURL(blob), download: name }).click();
}

export async function showNote(id) {
  const [kept, queue] = [await box.get("answers", id), await box.queued()];
  const here = queue.find((one) => one.what === "note" && one.id === id);
  const presses = queue.filter((one) => (one.what === "note" ? one.fields.answers === id : one.note === id || (one.url || "").includes(id)));
  const note = kept && kept.note;
  if (note && kept.language && kept.language !== known.language) fetchNote(id); // the sentences come in the language of now
  const about = note && note.answers && empty(note) ? await box.get("answers", note.answers) : null;
  redraw($("note"), [id, kept, here, presses.map(({ seq, state }) => [seq, state]), known.plan.say, about], () => drawn(note, kept, here, presses, about && about.note));
  root.dataset.answer = here ? (here.state === "refused" ? "refused" : "queued") : note ? (note.reckoning ? "judging" : note.state) : "waiting";
}

function drawn(note, kept, here, presses, about) {
  const parts = [];
  if (here) parts.push(...stillHere(here));
  else if (!note || ["waiting", "hearing"].includes(note.state)) parts.push(make("h1", { tabindex: "-1" }, say("phone.handed-in")), make("p", { class: "big" }, say("phone.handed-in-told")));
  else parts.push(...answered(note, kept.drawings || {}, about));
  const refused = presses.find((one) => one.state === "refused");
  if (presses.length) parts.splice(2, 0, make("p", { class: "told", role: "status" }, refused && refused.said ? `${refused.said.error} ${refused.said.cure}` : say(presses.some((one) => one.what !== "note") ? "phone.press-kept" : "phone.answer-kept")));
  return [...parts.flat().filter(Boolean), next()];
}

export function showWanted(f) {
  // What the lead decided that somebody still has to do, in his words.
  const { decision, reason, due } = f.wants;
  return make("div", { class: "told" }, make("p", {}, make("b", {}, say("phone.lead-wants", { what: say(`facts.decision.${decision}`) }))), make("p", {}, f.says), reason ? make("p", {}, `“${reason}”`) : null, due ? make("p", { class: "hint" }, say("phone.by-day", { day: due })) : null);
}

function showEmpty(about) {
  // Nothing came of these words. Of an answer what was asked still waits, with its presses.
  const waits = about ? asksOf(about) : [];
  return [make("p", { class: "told", "data-empty": "" }, say("phone.nothing-in-it")), waits.length ? [make("h2", {}, say("phone.still-waits", { what: about.fittings.map((f) => heading(f.facts, f.of_piece)).join("; ") })), waits.map((one) => showQuestion(about, one))] : []];
}

function answered(note, drawings, about) {
  const title = titleOf(note);
  const parts = [make("h1", { tabindex: "-1" }, title), make("p", { class: "meta" }, `${clock(note.spoken_at)} · ${say(`facts.state.${note.state}`)}`)];
  if (note.problem) parts.push(make("div", { class: "told" }, make("p", { class: "error" }, note.problem.why), make("p", {}, note.problem.cure)));
  parts.push(wanted(note).map(showWanted));
  parts.push(note.fittings.map((fitting) => showFitting(note, fitting, drawings[fitting.position], note.fittings.length > 1)));
  if (empty(note)) parts.push(...showEmpty(about).flat(2));
  if (loose(note).length) parts.push(make("div", { class: "told", "data-unread": "" }, make("p", {}, make("b", {}, say("phone.unread")), " ", quoted(note)), make("p", { class: "hint" }, say("phone.unread-told"))));
  if (note.text) parts.push(make("h2", {}, say("phone.words")), make("blockquote", { class: "words", lang: note.language || known.language }, note.text));
  if (note.photos_to_come.length) parts.push(make("p", { class: "hint" }, say("phone.originals-to-come", { count: note.photos_to_come.length })));
  parts.push(showActs(note));
  return parts.flat();
}
