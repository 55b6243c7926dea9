"""Makes the recordings of the demonstration again: synthetic voices, some with site noise, small Opus files.

`python tests/making/speak.py [--only STEM…] [--into FOLDER]` reads `spoken.toml` beside this file (who says
what, with which voice, over which noise) and writes `<stem>.ogg`. Needs flite, espeak-ng and festival
(text2wave) on the machine, and av and numpy from the project. Nobody real speaks in these files.
"""

from __future__ import annotations

import argparse
import hashlib
import subprocess
import tempfile
import tomllib
import wave
from pathlib import Path

import av
import numpy as np

HERE = Path(__file__).resolve().parent
RECORDINGS = HERE.parent.parent / "logbook" / "demo" / "notes"
RATE = 16_000
BITS_A_SECOND = 20_000
SILENCE = 0.35  # seconds before the first and after the last word


def voice(kind: str, name: str, pace: float, words: str, wav: Path) -> None:
    """`kind` flite, espeak or festival; `pace` stretches the time (above 1: slower)."""
    match kind:
        case "flite":
            command = ["flite", "-voice", name, "--setf", f"duration_stretch={pace}", "-t", words, "-o", str(wav)]
        case "espeak":
            command = ["espeak-ng", "-v", name, "-s", str(round(160 / pace)), "-w", str(wav), words]
        case "festival":
            command = ["text2wave", "-eval", f"({name})", "-eval", f"(Parameter.set 'Duration_Stretch {pace})", "-o", str(wav)]
        case _:
            raise ValueError(f"no such voice kind: {kind}")
    subprocess.run(command, input=words if kind == "festival" else None, text=True, check=True, capture_output=True)


def samples_of(wav: Path) -> np.ndarray:
    """Mono float64 at 16 kHz, peak at 0.6."""
    with wave.open(str(wav)) as file:
        rate, channels = file.getframerate(), file.getnchannels()
        raw = np.frombuffer(file.readframes(file.getnframes()), dtype="<i2").astype(np.float64)
    sound = raw.reshape(-1, channels).mean(axis=1) / 32768
    if rate != RATE:
        frame = av.AudioFrame.from_ndarray((sound * 32767).astype("<i2")[None, :], format="s16", layout="mono")
        frame.sample_rate = rate
        turn = av.AudioResampler(format="s16", layout="mono", rate=RATE)
        parts = [part.to_ndarray()[0] for part in turn.resample(frame) + turn.resample(None)]
        sound = np.concatenate(parts).astype(np.float64) / 32768
    still = np.zeros(round(SILENCE * RATE))
    return np.concatenate([still, sound * 0.6 / np.abs(sound).max(), still])


def site_noise(kind: str, length: int, chance: np.random.Generator) -> np.ndarray:
    """Noise of unit power: `fan` (mains hum and its harmonics under broadband air) or `hall` (broadband, duller)."""
    time = np.arange(length) / RATE
    white = chance.standard_normal(length)
    dull = np.convolve(white, np.ones(8) / 8, mode="same")
    dull /= dull.std()
    if kind == "hall":
        return dull
    hum = sum(np.sin(2 * np.pi * 60 * n * time + chance.uniform(0, 6.28)) / n for n in (1, 2, 3, 5))
    mixed = hum / hum.std() + 0.7 * dull
    return mixed / mixed.std()


def with_noise(sound: np.ndarray, noise: dict | None, chance: np.random.Generator) -> np.ndarray:
    if not noise:
        return sound
    speech = np.sqrt(np.mean(sound[np.abs(sound) > 0.01] ** 2))
    mixed = sound + site_noise(noise["kind"], len(sound), chance) * speech * 10 ** (-noise["decibels"] / 20)
    return mixed * min(1.0, 0.9 / np.abs(mixed).max())


def write_opus(sound: np.ndarray, path: Path) -> None:
    with av.open(str(path), "w", format="ogg", options={"fflags": "+bitexact"}) as out:
        stream = out.add_stream("libopus", rate=RATE)
        stream.bit_rate, stream.layout = BITS_A_SECOND, "mono"
        stream.options = {"application": "voip"}
        whole = (sound * 32767).astype("<i2")
        step = RATE // 50
        for start in range(0, len(whole), step):
            part = whole[start : start + step]
            part = np.pad(part, (0, step - len(part)))
            frame = av.AudioFrame.from_ndarray(part[None, :], format="s16", layout="mono")
            frame.sample_rate, frame.pts = RATE, start
            out.mux(stream.encode(frame))
        out.mux(stream.encode(None))


def make(stem: str, said: dict, into: Path) -> float:
    """Writes one recording; answers its seconds."""
    seed = int.from_bytes(hashlib.sha256(stem.encode()).digest()[:4], "big")
    kind, name = said["voice"].split(":")
    with tempfile.TemporaryDirectory() as folder:
        wav = Path(folder) / "voice.wav"
        voice(kind, name, said.get("pace", 1.0), said.get("spelt", said["words"]), wav)
        sound = samples_of(wav)
    sound = with_noise(sound, said.get("noise"), np.random.default_rng(seed))
    write_opus(sound, into / f"{stem}.ogg")
    return len(sound) / RATE


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--only", nargs="*", default=None)
    parser.add_argument("--into", type=Path, default=RECORDINGS)
    args = parser.parse_args()
    args.into.mkdir(parents=True, exist_ok=True)
    for stem, said in tomllib.loads((HERE / "spoken.toml").read_text(encoding="utf-8")).items():
        if args.only is None or stem in args.only:
            print(f"{stem}  {make(stem, said, args.into):.1f} s  {said['voice']}")


if __name__ == "__main__":
    main()
