// Keys at the desk: an addition to forms and links that work without it. One switch turns them off (WCAG 2.1.4).
const SWITCH = "logbook.desk.keys";
const sounds = [...document.querySelectorAll("audio[data-note]")];

function playFrom(note, second) {
  // Seconds count on over the parts of a recording; a part that knows its length takes its share off.
  const parts = sounds.filter((one) => one.dataset.note === note);
  let left = second;
  for (const part of parts) {
    if (part === parts.at(-1) || !Number.isFinite(part.duration) || left < part.duration) {
      sounds.forEach((other) => other !== part && other.pause());
      part.currentTime = Math.max(0, left - 0.5);
      part.play();
      return;
    }
    left -= part.duration;
  }
}

for (const link of document.querySelectorAll("a[data-second]")) {
  link.addEventListener("click", (event) => {
    if (!sounds.some((one) => one.dataset.note === link.dataset.note)) return;
    event.preventDefault();
    playFrom(link.dataset.note, Number(link.dataset.second));
  });
}

const decide = document.querySelector(".to-several");
function count() {
  // How many are ticked stands on the press that leads to their decision, which stays in reach while the list is long.
  decide.textContent = decide.dataset.told.replace("{count}", document.querySelectorAll(".work input[name=pick]:checked").length);
}
if (decide) {
  count();
  document.addEventListener("change", (event) => { if (event.target.name === "pick") count(); });
}

const all = document.getElementById("tick-all");
if (all) {
  all.hidden = false;
  all.addEventListener("click", () => {
    const boxes = [...document.querySelectorAll(".work:not(.ended) input[name=pick]")];
    const ticked = boxes.some((one) => !one.checked); // the same press again takes them all off
    boxes.forEach((one) => { one.checked = ticked; });
    count();
  });
}

const keys = document.querySelector(".keys");
const button = document.getElementById("keys-switch");

function on() {
  try { return localStorage.getItem(SWITCH) !== "off"; } catch { return true; }
}

function show() {
  button.setAttribute("aria-pressed", String(on()));
  button.textContent = on() ? button.dataset.on : button.dataset.off;
  document.querySelectorAll("kbd").forEach((one) => { one.hidden = !on(); });
}

function press(target) {
  if (target.matches("input[type=radio]")) target.checked = true;
  if (target.matches("input, button")) {
    target.focus();
    target.scrollIntoView({ block: "center" });
    if (target.matches("input[type=radio]")) target.dispatchEvent(new Event("change", { bubbles: true }));
  } else {
    target.click();
  }
}

if (keys) {
  keys.hidden = false;
  show();
  button.addEventListener("click", () => {
    try { localStorage.setItem(SWITCH, on() ? "off" : "on"); } catch { /* the browser keeps nothing: the switch holds for this page only */ }
    show();
  });
  document.addEventListener("keydown", (event) => {
    if (!on() || event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
    if (event.target.matches("textarea, select, input:not([type=radio], [type=checkbox])")) return;
    const target = document.querySelector(`[data-key="${CSS.escape(event.key)}"]`);
    if (!target) return;
    event.preventDefault();
    press(target);
  });
}
