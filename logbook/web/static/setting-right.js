// A fact set right by a tap, and a question answered by one: kept beside what was heard, never over it.
import { known } from "./page.js";
import { act } from "./sending.js";
import { has, kind, label, make, number, say, text } from "./answer.js";

const FEW = 4; // choices that stand as presses of their own; more are a list

function read(typed) {
  // A length as the trade writes it: 12, 12-1/2, 12 1/2, 1/2, 12.5; null where it is none.
  const found = /^(-)?(?:(\d+)(?:[ -](\d+)\/([1-9]\d*))?|(\d+)\/([1-9]\d*)|(\d*\.\d+))$/.exec(typed.trim().replace(",", "."));
  if (!found) return null;
  const [, minus, whole, over, under, over1, under1, decimal] = found;
  const size = decimal ? Number(decimal) : over1 ? over1 / under1 : Number(whole) + (over ? over / under : 0);
  return minus ? -size : size;
}

const SIDES = ["top", "bottom", "left", "right"];
const choiceWord = (name, value) => (name === "kind" ? kind(value) : has(`facts.value.${value}`) ? say(`facts.value.${value}`) : value);
const shapeOf = (name) => known.plan.shapes[name] || { shape: "text", choices: [] };

function fields(name, now) {
  // {inputs, value(inputs) -> the JSON value, or null where something does not fit} of a fact's shape.
  const { shape, choices, unit } = shapeOf(name);
  const named = unit ? `${label(name)} (${unit})` : label(name);
  const field = (value, more = {}) => make("input", { value: value ?? "", inputmode: "decimal", autocomplete: "off", ...more });
  const one = (told, value, more) => make("label", {}, told, field(value, more));
  const whole = (all) => (all.some((each) => each === null) ? null : all);
  if (shape === "flag" || (choices || []).length) {
    const options = shape === "flag" ? [["true", say("facts.yes")], ["false", say("facts.no")]] : choices.map((each) => [String(each), choiceWord(name, each)]);
    const picked = make("select", {}, options.map(([id, words]) => make("option", { value: id, selected: String(now) === id }, words)));
    return { inputs: [make("label", {}, named, picked)], value: ([each]) => (shape === "flag" ? each.value === "true" : shape === "count" ? Number(each.value) : each.value) };
  }
  if (shape === "size" || shape === "slope") {
    return { inputs: [0, 1].map((at) => one(`${named} ${at + 1}`, now ? number(now[at]) : "")), value: (all) => whole(all.map((each) => read(each.value))) };
  }
  if (shape === "moves") {
    const moves = now || [{ side: null, by: null, back: null, way: null }];
    const ways = ["in", "out"];
    const pick = (told, given, offered) => make("label", {}, told, make("select", {}, make("option", { value: "" }), offered.map((each) => make("option", { value: each, selected: each === given }, choiceWord(name, each)))));
    const row = (m) => [pick(say("phone.side"), m.side, SIDES), pick(say("phone.way"), m.way, ways), one(`${say("phone.moves-by")} (${unit})`, m.by === null ? "" : number(m.by)), one(`${say("phone.moves-back")} (${unit})`, m.back === null ? "" : number(m.back))];
    return {
      inputs: moves.flatMap(row),
      value: (all) => whole(moves.map((m, at) => {
        const [side, way, by, back] = all.slice(at * 4, at * 4 + 4).map((each) => each.value.trim());
        const lengths = [by, back].map((typed) => (typed ? read(typed) : undefined));
        if (lengths.includes(null) || (lengths[0] === undefined && lengths[1] === undefined)) return null;
        return { side: side || null, way: way || null, by: lengths[0] ?? null, back: lengths[1] ?? null };
      })),
    };
  }
  if (["length", "angle", "number"].includes(shape)) return { inputs: [one(named, now === undefined ? "" : number(now))], value: ([each]) => read(each.value) };
  if (shape === "sides") {
    const ticks = SIDES.map((side) => make("label", {}, make("input", { type: "checkbox", checked: (now || []).includes(side) }), ` ${choiceWord(name, side)}`));
    return { inputs: [make("fieldset", { class: "pick" }, make("legend", {}, named), ticks)], value: (all) => SIDES.filter((_, at) => all[at].checked) };
  }
  if (shape === "marks") {
    return { inputs: [one(named, (now || []).join(", "), { inputmode: "text" })], value: ([each]) => each.value.split(",").map((mark) => mark.trim()).filter(Boolean) };
  }
  return { inputs: [one(named, now, { inputmode: shape === "count" ? "numeric" : "text" })], value: ([each]) => (shape === "count" ? (/^\d+$/.test(each.value.trim()) ? Number(each.value) : null) : each.value.trim() || null) };
}

export function form(note, position, name, now, close) {
  // The form of a fact's shape. A fact that is there can also be answered with "I did not say that".
  const { inputs, value } = fields(name, now);
  const told = make("p", { class: "error", role: "alert" });
  const press = (given) => { act(`/notes/${note.id}/corrections`, { position, name, value: given }); close(); };
  const made = make("form", { class: "fields told" }, inputs, told, make("button", {}, say("phone.keep-value")),
    now === undefined ? null : make("button", { type: "button", class: "quiet", onclick: () => press(null) }, say("phone.did-not-say")),
    make("button", { type: "button", class: "quiet", onclick: close }, say("phone.leave-it")));
  made.addEventListener("submit", (event) => {
    event.preventDefault();
    const given = value([...made.querySelectorAll("input, select")]);
    if (given === null) { told.textContent = say("phone.not-a-number"); return; }
    press(given);
  });
  return made;
}

export function showFact(note, position, fact) {
  // One fact as a press that opens its form.
  const row = make("div", {});
  const open = () => { row.replaceChildren(form(note, position, fact.name, fact.value, () => row.replaceChildren(press))); row.querySelector("input, select").focus(); };
  const press = make("button", { type: "button", class: "fact", onclick: open },
    make("span", {}, label(fact.name)), make("b", {}, text(fact)), make("span", { class: "aside" }, say("phone.set-right")));
  row.append(press);
  return row;
}

export function quickAnswers(note, position, finding, facts) {
  // What one tap can answer of a question: a value that it names, yes and no, a choice of few, "that is what I said", or a
  // small form. Every press tells this one fact and nothing else.
  const name = finding.asks;
  if (!name || !known.plan.shapes[name]) return [];
  const { shape, choices } = shapeOf(name);
  const set = (value) => () => act(`/notes/${note.id}/corrections`, { position, name, value });
  const fact = facts.find((one) => one.name === name);
  const doubted = fact && ["heard-faintly", "maybe-misheard"].includes(finding.case);
  const one = (words, value) => make("button", { type: "button", onclick: set(value) }, words);
  const other = fact ? (doubted || finding.offers || finding.case === "not-understood" ? "phone.no-set-right" : "phone.set-it-right") : choices && choices.length ? "phone.pick-it" : "phone.type-it";
  const holder = make("div", { class: "stack" });
  const typed = make("button", { type: "button", class: "quiet", onclick: () => { holder.replaceChildren(form(note, position, name, fact && fact.value, () => holder.replaceChildren(typed))); holder.querySelector("input, select").focus(); } }, say(other));
  if (finding.offers) {
    holder.append(typed);
    return [make("div", { class: "stack" }, finding.offers.map((value) => one(say(finding.case === "maybe-another-mark" ? "phone.yes-it-is" : "phone.it-is", { fact: label(name), value: choiceWord(name, value) }), value))), holder];
  }
  if (doubted) {
    holder.append(typed);
    return [make("div", { class: "stack" }, one(say("phone.yes-said", { value: text(fact) }), fact.value)), holder];
  }
  if (shape === "flag") {
    const press = (value) => one(`${label(name)}: ${say(value ? "facts.yes" : "facts.no")}`, value);
    return [make("div", { class: "two" }, press(true), press(false))];
  }
  if (shape === "choice" && choices.length <= FEW) {
    return [make("div", { class: "two" }, choices.map((value) => one(choiceWord(name, value), value)))];
  }
  holder.append(typed);
  return finding.case === "not-understood" && fact ? [make("div", { class: "stack" }, one(say("phone.it-is", { fact: label(name), value: text(fact) }), fact.value)), holder] : [holder];
}
