// The page of a note: the sound jumps to the second of a word, and a waiting note looks again by itself.
const parts = [...document.querySelectorAll("audio[data-part]")];

function playFrom(second) {
  // Seconds count on over the parts of a recording; a part that knows its length takes its share off.
  let left = second;
  for (const part of parts) {
    const last = part === parts[parts.length - 1];
    if (last || !Number.isFinite(part.duration) || left < part.duration) {
      parts.forEach((other) => other !== part && other.pause());
      part.currentTime = Math.max(0, left - 0.15);
      return part.play();
    }
    left -= part.duration;
  }
}

for (const link of document.querySelectorAll("[data-second]")) {
  if (!parts.length) break;
  link.addEventListener("click", (event) => {
    if (link.classList.contains("hear")) event.preventDefault();
    playFrom(Number(link.dataset.second));
  });
}

const live = document.getElementById("live");
if (live && ["waiting", "hearing"].includes(live.dataset.state)) {
  const look = async () => {
    if (document.visibilityState === "visible") {
      const answer = await fetch(`/notes/${live.dataset.note}`, { headers: { Accept: "application/json" } }).catch(() => null);
      if (answer && answer.ok && !["waiting", "hearing"].includes((await answer.json()).state)) return location.reload();
    }
    setTimeout(look, 1500);
  };
  setTimeout(look, 800);
}
