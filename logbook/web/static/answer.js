// Facts as people read them, on the phone: the same words as the server prints, from the same texts.
import { minutes } from "./recorder.js";

let texts = {};
export const learn = (words) => { texts = words; };
export const has = (key) => key in texts;
export function say(key, values = {}) {
  return (texts[key] ?? key).replace(/\{(\w+)\}/g, (whole, name) => (name in values ? values[name] : whole));
}

export function number(value) {
  // A length as the trade writes it, down to 1/64.
  const minus = value < 0 ? "-" : "";
  const size = Math.abs(value);
  const parts = Math.round(size * 64);
  if (Math.abs(size * 64 - parts) > 1e-4) return minus + String(Math.round(size * 100) / 100);
  const whole = Math.floor(parts / 64);
  let [over, under] = [parts % 64, 64];
  if (!over) return minus + whole;
  while (over % 2 === 0) { over /= 2; under /= 2; }
  return minus + (whole ? `${whole}-` : "") + `${over}/${under}`;
}

const word = (value) => (has(`facts.value.${value}`) ? say(`facts.value.${value}`) : String(value));
export const label = (name) => (has(`facts.name.${name}`) ? say(`facts.name.${name}`) : name);
export const kind = (value) => (value && has(`facts.kind.${value}`) ? say(`facts.kind.${value}`) : "");

export function move(m) {
  if (m.by === null) return say("facts.back-only", { back: m.back === null ? "?" : number(m.back) });
  const values = { side: m.side ? word(m.side) : "?", way: m.way ? word(m.way) : "", by: number(m.by), back: m.back === null ? "" : number(m.back) };
  return say(m.back === null ? "facts.move-no-back" : "facts.move", values).replace(/\s+/g, " ").trim();
}

export function text(fact) {
  const { name, value, unit } = fact;
  if (value === null || value === undefined) return "";
  if (typeof value === "boolean") return say(value ? "facts.yes" : "facts.no");
  if (name === "kind") return kind(value);
  if (Array.isArray(value)) {
    if (name === "side_moves") return value.map(move).join("; ");
    if (name === "stated_slope") return say("facts.slope", { rise: number(value[0]), run: number(value[1]) });
    if (name.endsWith("_size")) return say("facts.size", { one: number(value[0]), other: number(value[1]) });
    return value.map(word).join(", ") || say("facts.nothing");
  }
  if (typeof value === "number" && unit) return number(value) + (unit === "°" ? "" : " ") + (unit === "in" && document.documentElement.lang === "en" ? "in." : unit);
  return typeof value === "number" ? String(value) : word(value);
}

export function heading(facts, piece = {}) {
  // `piece`: what its piece is, where these facts leave it unsaid.
  const of = (name) => (facts.find((fact) => fact.name === name) || { value: piece[name] }).value;
  return [kind(of("kind")), of("mark")].filter(Boolean).join(" ") || say("facts.piece-no-mark");
}

export const SHAPES = {
  meets: '<path d="M3 6h12v6h6v6H9v-6H3z" fill="currentColor"/>',
  departs: '<path d="M2 3h12v6H8v4H2z M22 21H10v-6h6v-4h6z" fill="currentColor"/>',
  unsaid: '<path d="M3 6h6v12H3z" fill="currentColor"/><path d="M12 6h9v12h-9z" fill="none" stroke="currentColor" stroke-width="2" stroke-dasharray="3 2.5"/>',
  unclear: '<path d="M3 5h18v14H3z" fill="none" stroke="currentColor" stroke-width="2"/><path d="M6 14c2-5 4-5 6-2s4 3 6-2" fill="none" stroke="currentColor" stroke-width="2.5"/>',
};

export function make(tag, members = {}, ...inside) {
  // An element; texts are set as text, never as markup.
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(members)) {
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else if (name === "class") element.className = value;
    else if (value !== null && value !== undefined && value !== false) element.setAttribute(name, value === true ? "" : value);
  }
  element.append(...inside.flat().filter((one) => one !== null && one !== undefined));
  return element;
}

export function verdict(name, count = null) {
  const sign = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  for (const [key, value] of Object.entries({ class: "shape", viewBox: "0 0 24 24", width: "24", height: "24", "aria-hidden": "true" })) sign.setAttribute(key, value);
  sign.innerHTML = SHAPES[name]; // our own constant
  return make("span", { class: `verdict ${name}` }, sign, ` ${count === null ? "" : `${count} `}${say(`facts.verdict.${name}`)}`);
}

export const findings = (note) => note.fittings.flatMap((fitting) => fitting.findings || []);
export const unfinished = (note) => !note || ["waiting", "hearing"].includes(note.state) || note.reckoning; // not judged yet
const unsettled = (f) => [undefined, null, "open"].includes(f.stands);
export const wanted = (note) => findings(note).filter((f) => f.wants && ["open", "in hand"].includes(f.stands)); // what the lead wants done
export const open = (note) => findings(note).filter((f) => f.shows === "flag" && f.verdict === "departs" && unsettled(f));

export function asks(note) {
  // The note's own questions: at most two.
  return note.questions.map(([position, rule]) => {
    const fitting = note.fittings.find((one) => one.position === position);
    return { position, fitting, finding: fitting && (fitting.findings || []).find((one) => one.rule === rule) };
  }).filter((one) => one.finding);
}

export function asksOf(note) {
  // Everything that waits for a word, for the break: a fact is asked for once, however many rules wait for it.
  const seen = new Set();
  return note.fittings.flatMap((fitting) => (fitting.findings || [])
    .filter((f) => ["unsaid", "unclear"].includes(f.verdict) && ["flag", "ask"].includes(f.shows) && unsettled(f))
    .map((finding) => ({ position: fitting.position, fitting, finding })))
    .filter(({ position, finding }) => { const key = `${position} ${finding.asks || finding.rule}`; return !seen.has(key) && seen.add(key); });
}

export function sorted(note, fitting) {
  // {off, rest}: what departs, and what is neither off nor among the note's questions.
  const asked = new Set(asks(note).filter((one) => one.position === fitting.position).map(({ finding }) => finding.asks || finding.rule));
  const told = (fitting.findings || []).filter((f) => f.verdict !== "meets" && f.shows !== "file");
  const covered = (f) => f.verdict !== "departs" && asked.has(f.asks || f.rule);
  const off = told.filter((f) => unsettled(f) && !covered(f) && (f.verdict === "departs" || (f.verdict === "unclear" && f.shows === "flag")));
  return { off, rest: told.filter((f) => !off.includes(f) && !covered(f)) };
}

export const needsWord = (note) => note.state === "unheard" || asksOf(note).length > 0 || open(note).length > 0 || wanted(note).length > 0;

export function tally(note) {
  // What bothers somebody, counted; "good as said" only where nothing does and every word of the work was understood.
  const told = findings(note).filter((f) => f.shows !== "file" && f.verdict !== "meets");
  const counted = ["departs", "unclear", "unsaid"].map((name) => [name, told.filter((f) => f.verdict === name).length]).filter(([, count]) => count);
  return counted.length || loose(note).length || !findings(note).length ? counted : [["meets", null]];
}

// words that nobody understood, and that no finding quotes and nobody told since in other words
export const loose = (note) => (note.unread || []).filter((one) => !one.stands);
export const quoted = (note) => loose(note).map((one) => `“${one.words}”`).join("; ");

// words in which neither a fitting nor anything else was found: nothing follows from them, and he has to be told so
export const empty = (note) => note.state === "answered" && !note.fittings.length && !note.shift && !note.withdraws;

export const titleOf = (note) => note.fittings.map((f) => heading(f.facts, f.of_piece)).join("; ") || say(note.shift ? "phone.shift" : empty(note) ? "phone.nothing-understood" : `facts.state.${note.state}`);

const BRIEF = 60; // signs of a note's words in a row of a list
const briefly = (words) => (words.length > BRIEF ? `${words.slice(0, BRIEF).trimEnd()}…` : words);

export function holding({ fields, holds }) {
  // What a note holds that is on this phone: what was tapped, typed, spoken and photographed.
  const { seconds = 0, photos = 0 } = holds || {};
  const tapped = [kind(fields.kind), fields.mark, fields.run ? say("phone.run", { run: fields.run }) : ""].filter(Boolean).join(" ");
  return [tapped, fields.text ? `“${briefly(fields.text)}”` : "", seconds ? say("phone.holds-sound", { time: minutes(seconds) }) : "", photos ? say("phone.holds-photos", { count: photos }) : ""].filter(Boolean).join(", ");
}

export function aloud(note) {
  // What the phone reads out on request: what was understood, what is off, what is asked.
  const lines = [];
  for (const fitting of note.fittings) {
    const { off, rest } = sorted(note, fitting);
    lines.push(`${heading(fitting.facts, fitting.of_piece)}.`, ...fitting.facts.filter((fact) => ["inlet_size", "outlet_size", "side_moves"].includes(fact.name)).map((fact) => `${label(fact.name)}: ${text(fact)}.`));
    for (const f of [...off, ...asks(note).filter((one) => one.position === fitting.position).map((one) => one.finding)]) lines.push(f.says, f.do || "");
    if (rest.length) lines.push(`${say("phone.rest", { count: rest.length })}.`);
  }
  if (note.problem) lines.push(note.problem.why, note.problem.cure);
  if (loose(note).length) lines.push(say("phone.unread"), `${quoted(note)}.`, say("phone.unread-told"));
  if (empty(note)) lines.push(say("phone.nothing-in-it"));
  else if (!loose(note).length && !findings(note).some((f) => f.verdict !== "meets")) lines.push(say("phone.nothing-off"));
  return lines.filter(Boolean).join(" ");
}
