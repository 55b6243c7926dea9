// What every part of the phone's page needs: its elements, its clock, its language, and what it knows of the job.
import { keep } from "./outbox.js";
import { learn, say } from "./answer.js";

export const $ = (id) => document.getElementById(id);
export const root = document.documentElement;
export const uuid = () => crypto.randomUUID();
export const known = { me: null, plan: { rows: [], say: {}, shapes: {} }, language: "en" };

export function local(date = new Date()) {
  // ISO 8601 with this phone's offset.
  const east = -date.getTimezoneOffset();
  const two = (n) => String(Math.abs(Math.trunc(n))).padStart(2, "0");
  return new Date(date.getTime() + east * 60000).toISOString().slice(0, 19) + (east < 0 ? "-" : "+") + two(east / 60) + ":" + two(east % 60);
}

export const today = () => local().slice(0, 10);
export const clock = (iso) => (iso || "").slice(11, 16);
export const dayName = (day) => new Date(`${day}T12:00:00`).toLocaleDateString(known.language, { weekday: "long", day: "numeric", month: "long" });

export function pressedLanguage() {
  // What somebody pressed on this device, here or where he signed in; null where nobody did.
  return (/(?:^|; )language=(en|es)(?:;|$)/.exec(document.cookie) || [])[1] || null;
}

export async function speakLanguage(next, pressed = false) {
  // Every text on the page is said anew; a press is remembered, a guess is not.
  known.language = next;
  learn(await (await fetch(`/phone/words/${next}.json`)).json());
  root.lang = next;
  document.querySelectorAll("[data-say]").forEach((element) => { element.textContent = say(element.dataset.say); });
  const other = next === "en" ? "es" : "en";
  $("tongue").textContent = say(`phone.language-${other}`);
  $("tongue").lang = other;
  $("nav").setAttribute("aria-label", say("phone.nav"));
  if (!pressed) return;
  document.cookie = `language=${next}; max-age=31536000; path=/; samesite=lax`;
  await keep("language", next);
}

const drawnFrom = new WeakMap();
export function redraw(element, from, parts) {
  // New content only where what it is made from is new, so that the keyboard stays where it is; a fold that was open stays open.
  const print = JSON.stringify([known.language, from]);
  if (drawnFrom.get(element) === print) return;
  drawnFrom.set(element, print);
  const here = element.contains(document.activeElement);
  const unfolded = new Set([...element.querySelectorAll("details[open] > summary")].map((one) => one.textContent));
  element.replaceChildren(...parts());
  for (const one of element.querySelectorAll("details > summary")) if (unfolded.has(one.textContent)) one.parentElement.open = true;
  if (here) (element.querySelector("h1") || element.closest("section").querySelector("h1")).focus();
}

export function changed(note = null) {
  // Something that the screens show is not as it was.
  document.dispatchEvent(new CustomEvent("changed", { detail: note }));
}
