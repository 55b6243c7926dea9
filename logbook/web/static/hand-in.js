// The hand-in form with a microphone: records parts, plays them, and sends the form without leaving the page.
import { sizeOf, upload } from "./asking.js";
import { Recorder, canRecord, drawLevel, minutes } from "./recorder.js";

const words = JSON.parse(document.querySelector("script[data-words]").dataset.words);
const form = document.getElementById("hand-in");
const speak = document.getElementById("speak");
const press = document.getElementById("speak-press");
const hint = document.getElementById("speak-told");
const level = document.getElementById("level");
const list = document.getElementById("parts");
const told = document.getElementById("told");
const firstWord = press.textContent;
const parts = [];
let levels = [];
let began = null;

const state = (name) => { form.dataset.state = name; };

const recorder = new Recorder({
  onLevel(now, seconds) {
    levels.push(now);
    drawLevel(level, levels);
    hint.textContent = `${words.listening} ${minutes(seconds)}`;
  },
  ended(part) {
    parts.push(part);
    showParts();
    press.dataset.state = "";
    press.textContent = words.more;
    hint.textContent = part.quiet ? words.silent : "";
    state("recorded");
  },
});

function showParts() {
  list.replaceChildren(...parts.map((part, at) => {
    const item = document.createElement("li");
    const sound = document.createElement("audio");
    sound.controls = true;
    sound.src = URL.createObjectURL(new Blob(part.chunks, { type: part.kind }));
    sound.setAttribute("aria-label", `${words.part} ${at + 1}, ${minutes(part.seconds)}`);
    const again = document.createElement("button");
    again.type = "button";
    again.className = "quiet";
    again.textContent = words.again;
    again.addEventListener("click", () => { parts.splice(at, 1); showParts(); if (!parts.length) press.textContent = firstWord; });
    item.append(sound, again);
    return item;
  }));
}

press.addEventListener("click", async () => {
  if (recorder.running) return recorder.stop();
  told.textContent = "";
  try {
    await recorder.start();
  } catch (error) {
    hint.textContent = error.name === "NotAllowedError" ? words.refused : words.none;
    state("refused");
    return;
  }
  began ||= new Date();
  levels = [];
  level.hidden = false;
  press.dataset.state = "listening";
  press.textContent = words.stop;
  state("listening");
});

function here(date) {
  // ISO 8601 with this phone's own offset, as the contract wants it.
  const minutesEast = -date.getTimezoneOffset();
  const sign = minutesEast < 0 ? "-" : "+";
  const two = (number) => String(Math.abs(number)).padStart(2, "0");
  return new Date(date.getTime() + minutesEast * 60000).toISOString().slice(0, 19) + sign + two(Math.trunc(minutesEast / 60)) + ":" + two(minutesEast % 60);
}

form.addEventListener("submit", async (event) => {
  event.preventDefault();
  await recorder.stop();
  const body = new FormData(form);
  body.set("spoken_at", here(began || new Date()));
  body.set("sent_at", here(new Date()));
  if (parts.length) {
    body.delete("audio");
    body.delete("text");
    parts.forEach((part, at) => body.append("audio", new Blob(part.chunks, { type: part.kind }), `part-${at + 1}`));
  }
  state("sending");
  told.textContent = words.sending;
  const answer = await upload("POST", form.action, body, { Accept: "application/json" }, sizeOf(body)).catch(() => null);
  if (!answer) { state("offline"); told.textContent = words.offline; return; }
  const said = await answer.json().catch(() => ({ error: answer.statusText, cure: "" }));
  if (answer.ok) { state("sent"); location.assign(form.dataset.then || `/entry/${said.id}`); return; }
  state("refused");
  told.textContent = `${said.error} ${said.cure}`;
});

speak.hidden = false;
if (!canRecord()) {
  press.hidden = true;
  hint.textContent = words.none;
}
