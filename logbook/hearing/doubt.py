"""Whether a hearing is words or noise made into words, from Whisper's own measures.

The prompt spoils Whisper's silence test (hum with a trade prompt gave 0.09), so the probability of no speech
comes from one step without it. What passes is still suspect when it repeats itself or is all unlikely.
"""

from __future__ import annotations

import zlib

from logbook.hearing import prompt

NO_SPEECH = 0.75  # 48 speech clips: at most 0.71; silence and noise 0.77 to 0.92
COMPRESSION = 2.4  # text that packs better repeats itself; the released transcriber's own limit
UNLIKELY = -1.0  # mean log probability; the released transcriber's own limit
UNLIKELY_NO_SPEECH = 0.4  # with this much doubt of speech an unlikely text is noise (hammering: 0.43)
REPEATS = 4  # the same one to four words this often in a row


def compression(text: str) -> float:
    """Length over packed length, as the released transcriber reckons it."""
    data = text.encode()
    return len(data) / len(zlib.compress(data)) if data else 0.0


def repeats(text: str) -> bool:
    said = prompt.words(text)
    for size in range(1, 5):
        for start in range(len(said) - size * REPEATS + 1):
            first = said[start : start + size]
            if all(said[start + size * n : start + size * (n + 1)] == first for n in range(1, REPEATS)):
                return True
    return False


def why_unheard(text: str, language: str, no_speech: float, mean_log: float, ended: bool) -> str | None:
    """`no_speech`, `repetition`, `echo`, `noise`, or None when the text may stand."""
    if no_speech >= NO_SPEECH or not text.strip():
        return "no_speech"
    if compression(text) > COMPRESSION or repeats(text):
        return "repetition"
    if prompt.echoes(text, language):
        return "echo"
    if mean_log < UNLIKELY and (no_speech > UNLIKELY_NO_SPEECH or not ended):
        return "noise"
    return None
