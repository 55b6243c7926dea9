"""Makes the clips of `tests/cases/hearing/bad`: what is hard to hear, or is no note at all. Synthetic voices, Opus.

    python tests/making/bad_clips.py

needs the programs that `tests/bench/clips.py` names, and espeak-ng's other languages. The clips are kept in the project.
"""

from __future__ import annotations

import json
import sys
import tempfile
from pathlib import Path

import numpy as np

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE), str(HERE.parent / "bench")]

import bad_sound  # noqa: E402
import clips  # noqa: E402
from hearing_clips import encode  # noqa: E402

TARGET = HERE.parent / "cases" / "hearing" / "bad"
NOTE = "Fitting twelve on run three. Transition, twenty-four by twelve to eighteen by twelve, top down three, back twenty-four. Stapled every two inches, taped and rubbed down."
STRAIGHT = "This is fitting seven on run two. Straight section, eighteen by twelve, four feet long. Stapled every three inches, not taped yet, still have to do the far side."
FOREIGN = {
    "de": "Guten Morgen, ich habe gestern die Leitung im zweiten Stock fertig gemacht, zwölf mal zwanzig, und heute kommt der Rest dran. Das Wetter ist schlecht, aber wir arbeiten weiter.",
    "fr": "Bonjour, j'ai fini la gaine du deuxième étage hier soir, douze sur vingt, et le reste sera fait aujourd'hui. Il pleut beaucoup mais nous continuons à travailler.",
    "pl": "Dzień dobry, skończyłem wczoraj przewód na drugim piętrze, dwanaście na dwadzieścia, a reszta będzie dzisiaj. Pogoda jest zła, ale pracujemy dalej.",
}


def spoken(voice: str, text: str) -> np.ndarray:
    with tempfile.TemporaryDirectory() as folder:
        clips.speak(voice, text, Path(folder) / "raw.wav")
        speech = clips.load(Path(folder) / "raw.wav")
    return 0.3 * speech / np.abs(speech).max()


def in_a_room(speech: np.ndarray, after: float = 0.3) -> np.ndarray:
    r = np.random.default_rng(1)
    sound = np.concatenate([np.zeros(int(0.3 * clips.RATE)), speech, np.zeros(int(after * clips.RATE))])
    return sound + 0.001 * r.standard_normal(sound.size)


def main() -> None:
    TARGET.mkdir(parents=True, exist_ok=True)
    r = np.random.default_rng(26)
    note, straight = spoken("flite slt", NOTE), spoken("flite rms", STRAIGHT)
    chat = np.resize(spoken("flite awb", " ".join(clips.ORDINARY[n] for n in (0, 3, 5))), note.size)
    breath = bad_sound.whispered(note, 1)
    talk = np.concatenate([spoken(("flite rms", "flite awb")[n % 2], clips.ORDINARY[n]) for n in (0, 1, 2, 4, 6, 7)])
    made = {
        "plain": (in_a_room(note), NOTE, "en"),
        "whispered": (in_a_room(0.1 * breath / np.abs(breath).max()), NOTE, "en"),
        "two at once": (in_a_room(note + chat / 4), NOTE, "en"),
        "cut off": (in_a_room(bad_sound.cut_off(straight, 0.62), 0.0), STRAIGHT, "en"),
        "clipped": (in_a_room(bad_sound.clipped(straight, r)), STRAIGHT, "en"),
        "across a hall": (0.05 * bad_sound.across_a_hall(talk, r) + 0.002 * r.standard_normal(talk.size), "", "en"),
    }
    made |= {f"in {code}": (in_a_room(spoken(f"espeak {code}", text)), text, code) for code, text in FOREIGN.items()}
    rows = []
    for name, (samples, text, language) in made.items():
        file = f"{name.replace(' ', '-')}.ogg"
        encode(samples, TARGET / file)
        rows.append({"name": name, "file": file, "text": text, "language": language})
    (TARGET / "clips.json").write_text(json.dumps(rows, ensure_ascii=False, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
