"""Sound that is hard to hear or no note at all, made from synthetic voices with numpy.

    whispered(speech)            the voice taken out and breath put in: linear prediction, excited by noise
    cut_off(speech, share)       a recording that stops in mid-word
    clipped(speech, seconds, r)  stretches far too loud
    across_a_hall(speech, r)     somebody else, far away: echoes, no highs
    as_wav(samples)              the bytes of a file, as a phone hands it in
    noise(kind, seconds, seed)   what a site and an empty room sound like, without a word

Samples are floats at 16 kHz, -1 to 1. Everything is seeded.
"""

from __future__ import annotations

import io
import wave

import numpy as np

RATE = 16_000
KINDS = ("empty room", "pink", "hum", "hammering", "engine", "saw", "compressor", "wind", "music", "clicks")


def as_wav(samples: np.ndarray) -> bytes:
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((1, 2, RATE, 0, "NONE", ""))
        file.writeframes((np.clip(samples, -1, 1) * 32767).astype(np.int16).tobytes())
    return out.getvalue()


def whispered(speech: np.ndarray, seed: int, order: int = 18) -> np.ndarray:
    """Each 20 ms keeps the shape of its mouth and its loudness; the vocal cords are replaced by noise."""
    size, step = RATE // 50, RATE // 100
    r, window, out = np.random.default_rng(seed), np.hanning(size), np.zeros(speech.size + size)
    for at in range(0, speech.size - size, step):
        frame = speech[at : at + size] * window
        power = float((frame**2).sum())
        if power < 1e-7:
            continue
        lags = np.array([frame[: size - n] @ frame[n:] for n in range(order + 1)])
        lags[0] *= 1.0001
        matrix = lags[np.abs(np.subtract.outer(np.arange(order), np.arange(order)))]
        taps = np.linalg.solve(matrix + 1e-9 * np.eye(order), lags[1:])
        breath, made = r.standard_normal(size), np.zeros(size + order)
        for n in range(size):
            made[n + order] = breath[n] + taps @ made[n : n + order][::-1]
        made = made[order:] * window
        out[at : at + size] += made * np.sqrt(power / max(1e-12, float((made**2).sum())))
    spectrum, f = np.fft.rfft(out[: speech.size]), np.fft.rfftfreq(speech.size, 1 / RATE)
    return np.fft.irfft(spectrum * np.clip(f / 500, 0.1, 1.0), speech.size)  # a whisper has no lows


def cut_off(speech: np.ndarray, share: float) -> np.ndarray:
    """Up to the loudest tenth of a second near `share` of the whole: the middle of a word, not a pause."""
    size = RATE // 10
    near = range(int(speech.size * (share - 0.05)), int(speech.size * (share + 0.05)), size // 4)
    return speech[: max(near, key=lambda at: float((speech[at : at + size] ** 2).mean())) + size // 2]


def clipped(speech: np.ndarray, r: np.random.Generator, share: float = 0.3, times: float = 12.0) -> np.ndarray:
    """About `share` of it, in stretches of a second, so loud that only the sign is left of it."""
    out = speech / max(1e-9, np.abs(speech).max()) * 0.5
    for at in range(0, out.size, RATE):
        if r.random() < share:
            out[at : at + RATE] = np.clip(out[at : at + RATE] * times, -0.98, 0.98)
    return out


def across_a_hall(speech: np.ndarray, r: np.random.Generator) -> np.ndarray:
    """Half a second of echoes, louder than the voice itself, and no highs."""
    echoes = r.standard_normal(RATE // 2) * np.exp(-np.arange(RATE // 2) / (0.12 * RATE))
    echoes[0] = 2.0
    count = speech.size + echoes.size
    spectrum, f = np.fft.rfft(speech, count) * np.fft.rfft(echoes, count), np.fft.rfftfreq(count, 1 / RATE)
    far = np.fft.irfft(spectrum / (1 + (f / 1800) ** 4), count)[: speech.size]
    return far / np.abs(far).max()


def noise(kind: str, seconds: float, seed: int, level: float = 0.3) -> np.ndarray:
    """Not a word in it. An empty room is as quiet as one; the others are as loud as `level`."""
    r, count = np.random.default_rng(seed), int(seconds * RATE)
    t, white = np.arange(count) / RATE, r.standard_normal(count)
    spectrum, f = np.fft.rfft(white), np.fft.rfftfreq(count, 1 / RATE)
    if kind == "empty room":
        return 0.001 * white
    if kind == "pink":
        out = np.fft.irfft(spectrum / np.sqrt(f + 1), count)
    elif kind == "hum":
        out = sum(np.sin(2 * np.pi * 60 * n * t) / n for n in (1, 2, 3, 5)) + 0.1 * white
    elif kind == "hammering":
        out = np.zeros(count)
        for at in np.cumsum(r.uniform(0.35, 0.9, int(seconds))):
            a = int(at * RATE)
            if a + 4000 < count:
                tone = np.sin(2 * np.pi * r.uniform(250, 900) * t[:4000]) * np.exp(-np.arange(4000) / 900)
                out[a : a + 4000] += r.standard_normal(4000) * np.exp(-np.arange(4000) / 500) + 0.6 * tone
    elif kind == "engine":
        turns = np.cumsum(27 + 4 * np.sin(2 * np.pi * 0.11 * t)) / RATE
        out = np.sign(np.sin(2 * np.pi * turns)) + np.fft.irfft(spectrum * (f < 400), count)
    elif kind == "saw":
        out = np.fft.irfft(spectrum * (f > 1500), count) * (1 + np.sin(2 * np.pi * 0.4 * t))
        out += 0.5 * np.sin(2 * np.pi * np.cumsum(900 + 200 * np.sin(2 * np.pi * 0.2 * t)) / RATE)
    elif kind == "compressor":
        out = (1 + np.sign(np.sin(2 * np.pi * 0.05 * t))) * (np.sin(2 * np.pi * 49 * t) ** 3 + 0.4 * np.fft.irfft(spectrum * (f < 900), count))
    elif kind == "wind":
        gusts = np.interp(t, np.arange(0, seconds + 2, 1.3), r.random(len(np.arange(0, seconds + 2, 1.3))))
        out = np.fft.irfft(spectrum / (1 + f / 60) ** 1.5, count) * gusts
    elif kind == "music":
        out = _tune(r, seconds, count)
    else:
        out = (r.random(count) < 0.0003) * 1.0
    return level * out / np.abs(out).max()


def _tune(r: np.random.Generator, seconds: float, count: int) -> np.ndarray:
    """A melody over chords, plucked, with a beat: as a radio on a site, without a voice."""
    out, note = np.zeros(count + RATE), 0
    scale = 220 * 2 ** (np.array([0, 2, 4, 5, 7, 9, 11, 12]) / 12)
    ring = np.arange(RATE) / RATE
    for beat in range(int(seconds * 2)):
        at = beat * RATE // 2
        note = int(np.clip(note + r.integers(-2, 3), 0, 7))
        played = [scale[note] * 2] if beat % 4 else [scale[note] * 2, *(scale[[0, 2, 4]] * (1 if beat % 8 else 0.75))]
        for tone in played:
            out[at : at + RATE] += sum(np.sin(2 * np.pi * tone * n * ring) / n**1.5 for n in (1, 2, 3, 4)) * np.exp(-3 * ring)
        out[at : at + RATE // 8] += 0.7 * r.standard_normal(RATE // 8) * np.exp(-40 * ring[: RATE // 8])
    return out[:count]
