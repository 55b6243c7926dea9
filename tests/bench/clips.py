"""Makes the clips of the hearing bench: our own trade notes, spoken by free synthetic voices, with site noise.

    python tests/bench/clips.py FOLDER

needs the Debian packages flite, espeak-ng, festival, festvox-us-slt-hts and festvox-kdlpc16k (nothing else is fetched) and writes 16 kHz WAV files
and `clips.json`: for each clip its text, language, voice, condition, kind (`made` by the sentences below, `case` of the
reader's held-out notes, `ordinary` speech) and part. A third of the notes are
`held`: they were not looked at while the listener was being built. Everything is seeded; the same programs
give the same clips. Voices are synthetic: what is measured here says how one setting compares with another,
not how well a person on a site is heard.
"""

from __future__ import annotations

import json
import random
import re
import subprocess
import sys
import wave
from pathlib import Path

import numpy as np

RATE = 16_000
EN_VOICES = (
    "flite slt", "flite rms", "flite awb", "flite kal16", "espeak en-us", "espeak en-us+f3", "espeak en-gb",
    "festival cmu_us_slt_arctic_hts", "festival ked_diphone", "festival kal_diphone",
)  # fmt: skip
ES_VOICES = ("espeak es-419", "espeak es-419+f2", "espeak es", "espeak es-419+m3")
CONDITIONS = ("clean", "hum", "15 dB", "8 dB", "hammer", "telephone", "mask")

ONES = "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
TENS = "x x twenty thirty forty fifty sixty".split()
UNOS = "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve".split()
DIECES = "x x x treinta cuarenta cincuenta sesenta".split()


def en(n: int) -> str:
    return ONES[n] if n < 20 else TENS[n // 10] + (f"-{ONES[n % 10]}" if n % 10 else "")


def es(n: int) -> str:
    return UNOS[n] if n < 30 else DIECES[n // 10] + (f" y {UNOS[n % 10]}" if n % 10 else "")


def english_note(r: random.Random) -> str:
    """One note as an installer says it: mark, run, kind and sizes, layout, closing, loose ends."""
    size = lambda: r.choice((8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 36))  # noqa: E731
    a, b = size(), size()
    c = r.choice([s for s in (8, 10, 12, 14, 16, 18, 20, 24) if s != a])
    by, back = r.choice((2, 3, 4, 5, 6)), r.choice((12, 18, 20, 24, 30, 36))
    ab = f"{en(a)} by {en(b)}"
    start = r.choice(("Fitting {m}, run {r}.", "This is fitting {m} on run {r}.", "{m} on run {r}.", "Okay, number {m}, run {r}."))
    kind = r.choice((
        f"Transition, {ab} to {en(c)} by {en(b)}, {{side}} {{way}} {en(by)}, back {en(back)}.",
        f"Transition {ab} down to {en(c)} by {en(b)}. {{side}} {{way}} {en(by)} inches, back {en(back)} inches, flat on the {r.choice(('bottom', 'top'))}.",
        f"Ninety degree elbow, {ab}, {r.choice(('turning vanes in', 'with vanes', 'no vanes', 'three piece'))}.",
        f"Straight section, {ab}, {r.choice(('four feet long', 'cut to thirty-two inches', 'forty-eight long'))}.",
        f"Tee, {ab}, branch {en(c)} by {en(b)}.",
        f"Offset, {ab}, over {en(by)} inches, in {en(back)}.",
        f"Round collar, {r.choice(('six', 'eight', 'ten'))} inch, tabs bent tight, on the {ab} trunk.",
        f"End cap, {ab}.",
        f"Wye, {ab}, branch {en(c)} by {en(b)}.",
    ))
    edges = r.choice(("", "", "Shiplap on the sides, butt edge top and bottom, low step to the inside.", "Made from the female end, groove step inside.", "Air leaves by the female end.", "Panel dropped in and seats good."))
    fixed = r.choice((
        "Stapled every two inches, taped and rubbed down.",
        "Half inch staples every two, clinched outward, taped and rubbed down.",
        "No flap, so cross tabs, eight inches long every twelve. Taped.",
        "Stapled, one eighty-one A P tape, three inch, rubbed down till the scrim shows.",
        "Stapled both sides, mastic on the far side, tape on the rest.",
        "Stapled and taped all four sides, wiped it first.",
        "Not taped yet, still have to do the far side.",
        "Stapled every two, three inch one eighty-one A P, rubbed hard, scrim is not showing.",
        "Closed it with staples and heat tape, one eighty-one A H.",
    ))
    loose = r.choice(("", "", "Tight all around, no gaps.", "Small tear on the facing, patched with tape.", "No damage.", "Trimmed the extra insulation.", "Took the photo.", "Hung it, tied in and taped to {n}.", "It's about an eighth of a gap at the corner."))
    text = " ".join(part for part in (start, kind, edges, fixed, loose) if part)
    text = text.format(m=en(r.randint(2, 48)), r=en(r.randint(1, 7)), n=en(r.randint(2, 40)),
                       side=r.choice(("top", "bottom", "left side", "right side")), way=r.choice(("in", "down", "comes in")))  # fmt: skip
    return text[0].upper() + text[1:]


def spanish_note(r: random.Random) -> str:
    size = lambda: r.choice((8, 10, 12, 14, 16, 18, 20, 24, 30))  # noqa: E731
    a, b, c = size(), size(), size()
    ab = f"{es(a)} por {es(b)}"
    start = r.choice(("Pieza {m}, línea {r}.", "Número {m} de la línea {r}.", "Esta es la pieza {m}, línea {r}."))
    kind = r.choice((
        f"Transición de {ab} a {es(c)} por {es(b)}, arriba baja {es(r.randint(2, 6))} pulgadas, atrás {es(r.choice((18, 24, 30)))}.",
        f"Codo de noventa, {ab}, con aletas.",
        f"Pieza recta, {ab}, cortada a treinta y dos pulgadas.",
        f"Reducción, {ab} a {es(c)} por {es(b)}, recta por abajo.",
        f"Derivación, {ab}.", "Collarín redondo de ocho pulgadas.", f"Tapa, {ab}.",
    ))  # fmt: skip
    fixed = r.choice((
        "Grapada cada dos pulgadas, con cinta y bien frotada.", "Con grapas y cinta, tallada con la espátula.",
        "Engrapado cada dos pulgadas, falta la cinta del otro lado.", "Con grapas y masilla.",
        "Grapas cada dos, cinta de tres pulgadas, bien pegada.", "No le he puesto cinta todavía.",
    ))  # fmt: skip
    loose = r.choice(("", "", "Sin daños.", "Rebaje a los lados, escalón por dentro.", "Ya quedó colgada.", "Tomé la foto."))
    text = " ".join(part for part in (start, kind, fixed, loose) if part)
    return text.format(m=es(r.randint(2, 48)), r=es(r.randint(1, 7)))


ORDINARY = (
    "The weather turned cold on Sunday and the river was almost frozen by the evening.",
    "She asked him whether the train to the city would stop at the old station.",
    "We had bread and soup for lunch and talked about the garden for an hour.",
    "My brother plays the guitar in a small band with three friends from school.",
    "The doctor said that the boy should rest for a week and drink plenty of water.",
    "Please put the books back on the table when you are finished reading them.",
    "It takes about twenty minutes to walk from the market to the harbor.",
    "They painted the kitchen yellow because it looked dark in the winter.",
    "Did you remember to call the bank before they close at four?",
    "The dog ran across the field and came back with a muddy stick.",
)  # heard with the trade's expectations; they must not become trade words


CASES = Path(__file__).resolve().parents[1] / "cases" / "reading" / "heldout"


def case_texts(name: str, most: int) -> list[str]:
    """Notes that others wrote for the reader, of a length that somebody dictates, without what voices cannot say."""
    blocks = (CASES / name).read_text(encoding="utf-8").split("\n\n")
    texts = [line[2:] for block in blocks for line in block.splitlines() if line.startswith("> ")]
    good = [text for text in texts if 40 <= len(text) <= 330 and not re.search(r"\dx\d|\d:\d|[\"/]", text)]
    return good[:most]


# --- voices


def speak(voice: str, text: str, file: Path) -> None:
    program, name = voice.split()
    if program == "flite":
        subprocess.run(["flite", "-voice", name, "-t", text, "-o", file], check=True)
    elif program == "espeak":
        subprocess.run(["espeak-ng", "-v", name, "-s", "155", "-w", file, text], check=True)
    else:
        subprocess.run(["text2wave", "-o", file, "-eval", f"(voice_{name})"], input=text.encode(), check=True, stderr=subprocess.DEVNULL)


def load(file: Path) -> np.ndarray:
    with wave.open(str(file)) as sound:
        rate, samples = sound.getframerate(), np.frombuffer(sound.readframes(-1), np.int16)
    samples = samples.astype(np.float64) / 32768
    return resample(samples, rate)


def resample(samples: np.ndarray, rate: int) -> np.ndarray:
    """To 16 kHz through the spectrum: exact enough for speech, no library."""
    count = round(samples.size * RATE / rate)
    spectrum, bins = np.fft.rfft(samples), count // 2 + 1
    fitted = np.zeros(bins, complex)
    keep = min(bins, spectrum.size)
    fitted[:keep] = spectrum[:keep]
    return np.fft.irfft(fitted, count) * count / samples.size


# --- sites


def band(samples: np.ndarray, low: float, high: float, slope: float = 24.0) -> np.ndarray:
    """What passes between two frequencies, falling by `slope` dB an octave outside."""
    spectrum = np.fft.rfft(samples)
    f = np.fft.rfftfreq(samples.size, 1 / RATE) + 1e-9
    loss = np.maximum(0, np.log2(low / f)) + np.maximum(0, np.log2(f / high))
    return np.fft.irfft(spectrum * 10 ** (-slope * loss / 20), samples.size)


def pink(r: np.random.Generator, count: int) -> np.ndarray:
    spectrum = np.fft.rfft(r.standard_normal(count))
    return np.fft.irfft(spectrum / np.sqrt(np.arange(spectrum.size) + 20), count)


def at_level(speech: np.ndarray, noise: np.ndarray, decibels: float) -> np.ndarray:
    loud = speech[np.abs(speech) > 0.02 * np.abs(speech).max()]
    scale = np.sqrt((loud**2).mean() / (noise**2).mean()) * 10 ** (-decibels / 20)
    return speech + noise * scale


def hum(r: np.random.Generator, count: int) -> np.ndarray:
    t = np.arange(count) / RATE
    tones = sum(np.sin(2 * np.pi * 60 * n * t + r.uniform(0, 6)) / n for n in (1, 2, 3, 5, 7))
    return tones + 3 * band(r.standard_normal(count), 20, 90)


def hammering(r: np.random.Generator, count: int) -> np.ndarray:
    noise, at = np.zeros(count), int(r.uniform(0.1, 0.5) * RATE)
    while at < count - 4000:
        blow = r.standard_normal(4000) * np.exp(-np.arange(4000) / 500) * r.uniform(0.5, 1)
        blow += 0.6 * np.sin(2 * np.pi * r.uniform(250, 900) * np.arange(4000) / RATE) * np.exp(-np.arange(4000) / 900)
        noise[at : at + 4000] += blow
        at += int(r.uniform(0.35, 0.8) * RATE)
    return noise


def on_site(condition: str, speech: np.ndarray, seed: int) -> np.ndarray:
    r = np.random.default_rng(seed)
    quiet = np.zeros(int(0.3 * RATE))
    speech = np.concatenate([quiet, 0.3 * speech / np.abs(speech).max(), quiet])
    count = speech.size
    if condition == "hum":
        speech = at_level(speech, hum(r, count), 3) + 0.002 * r.standard_normal(count)
    elif condition == "15 dB":
        speech = at_level(speech, pink(r, count), 15)
    elif condition == "8 dB":
        speech = at_level(speech, pink(r, count), 8)
    elif condition == "hammer":
        speech = np.clip(2.2 * (speech + 0.35 * hammering(r, count)), -0.6, 0.6)
    elif condition == "telephone":
        speech = band(speech, 300, 3300) + 0.002 * r.standard_normal(count)
    elif condition == "mask":  # cloth takes the highs, the hollow behind it booms
        speech = band(speech, 60, 1800, 9) + 0.8 * band(speech, 350, 550) + 0.002 * r.standard_normal(count)
    return speech / max(1.0, np.abs(speech).max())


def save(file: Path, samples: np.ndarray) -> None:
    with wave.open(str(file), "wb") as sound:
        sound.setnchannels(1), sound.setsampwidth(2), sound.setframerate(RATE)
        sound.writeframes((np.clip(samples, -1, 1) * 32767).astype(np.int16).tobytes())


def main(folder: Path, english: int = 168, spanish: int = 42) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    r, rows = random.Random(2611), []
    plan = [("en", english_note(r)) for _ in range(english)] + [("es", spanish_note(r)) for _ in range(spanish)]
    plan = [(language, "made", text) for language, text in plan] + [("en", "ordinary", text) for text in ORDINARY]
    plan += [("en", "case", text) for text in case_texts("english.txt", 70)]
    plan += [("es", "case", text) for text in case_texts("spanish.txt", 40)]
    for n, (language, kind, text) in enumerate(plan):
        voices = ES_VOICES if language == "es" else EN_VOICES
        voice = voices[n % len(voices)]
        condition = "clean" if kind == "ordinary" else CONDITIONS[(n // len(voices) + n) % len(CONDITIONS)]
        raw, file = folder / "raw.wav", folder / f"{n:03}.wav"
        speak(voice, text, raw)
        save(file, on_site(condition, load(raw), n))
        raw.unlink()
        part = "ordinary" if kind == "ordinary" else "held" if n % 3 == 2 else "open"
        rows.append({"file": file.name, "text": text, "language": language, "voice": voice, "condition": condition,
                     "kind": kind, "part": part})  # fmt: skip
    (folder / "clips.json").write_text(json.dumps(rows, ensure_ascii=False, indent=1), encoding="utf-8")
    print(len(rows), "clips in", folder, file=sys.stderr)


if __name__ == "__main__":
    main(Path(sys.argv[1]))
