"""Whether a hearing is words or noise made into words, from Whisper's own measures.

The prompt spoils Whisper's silence test (hum with a trade prompt gave 0.09), so the probability of no speech
comes from one step without it. What passes is still suspect when it repeats itself or is all unlikely, and above
all when nothing but the prompt makes it likely: the text is judged once more without the prompt, in the pass that
times its words.
"""

from __future__ import annotations

import zlib
from dataclasses import dataclass

from logbook.hearing import prompt

NO_SPEECH = 0.75  # 48 speech clips: at most 0.71; silence and noise 0.77 to 0.92
COMPRESSION = 2.4  # text that packs better repeats itself; the released transcriber's own limit
UNLIKELY = -1.0  # mean log probability; the released transcriber's own limit
UNLIKELY_NO_SPEECH = 0.4  # with this much doubt of speech an unlikely text is noise (hammering: 0.43)
# Other people's talk across a hall becomes long texts of the prompt's words: 48 windows of 16 s and more gave 0.75 to
# 1.8 below, where they did not repeat themselves. No clip of a note that long is there; short faint ones are.
FAR_SECONDS, FAR, FAR_NO_SPEECH = 15.0, -0.7, 0.25
HOPELESS = -1.2  # and the ends of such talk, of any length; 140 notes at least -0.99, with nine words of ten wrong
# Share of English and Spanish among the languages that Whisper knows: 220 spoken notes at least 0.14 (the worst of
# them espeak-ng's Spanish by telephone), German, French, Polish, Portuguese, Italian, Vietnamese 0.0007 to 0.07.
# Of two words it says nothing ("dos pulgadas" is Hungarian, "con cinta" Thai).
FOREIGN, FOREIGN_SECONDS, FOREIGN_MEAN = 0.06, 6.0, -0.5
REPEATS = 4  # the same one to four words this often in a row
# The same text judged without the prompt, mean log probability: 150 speech clips at worst -1.88 (8 dB), noise made
# into words -2.6 to -3.3 (Spanish), into prompt words -5.3 and below. A suspected echo needs less to be one.
PLAIN, ECHO_PLAIN = -2.4, -2.0
AGAIN_NO_SPEECH, AGAIN_MEAN = 0.55, -0.8  # clicks and hammering 0.59 and more, speech clips at most 0.53


@dataclass(frozen=True)
class Measures:
    """Probability of no speech without prompt; mean log probability as decoded, and without the prompt (`plain`);
    whether the text came to its end by itself; seconds of sound; share of the languages we know among all."""

    no_speech: float
    mean_log: float
    plain: float
    ended: bool
    seconds: float = 0.0
    known: float = 1.0


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


def why_unheard(text: str, language: str, found: Measures) -> str | None:
    """`no_speech`, `language`, `repetition`, `echo`, `noise`, or None when the text may stand."""
    if found.no_speech >= NO_SPEECH or not text.strip():
        return "no_speech"
    if is_foreign(found) and found.mean_log < FOREIGN_MEAN:
        return "language"
    if compression(text) > COMPRESSION or repeats(text):
        return "language" if is_foreign(found) else "repetition"
    if found.plain < ECHO_PLAIN and prompt.echoes(text, language):
        return "echo"
    if found.plain < PLAIN or found.mean_log < HOPELESS or (found.mean_log < UNLIKELY and (found.no_speech > UNLIKELY_NO_SPEECH or not found.ended)):
        return "noise"
    if found.seconds >= FAR_SECONDS and (found.mean_log < UNLIKELY or (found.mean_log < FAR and found.no_speech > FAR_NO_SPEECH)):
        return "noise"
    return None


def is_foreign(found: Measures) -> bool:
    """Whether somebody speaks, and neither English nor Spanish."""
    return found.known < FOREIGN and found.seconds >= FOREIGN_SECONDS and found.no_speech < AGAIN_NO_SPEECH


def may_hear_again(why: str | None, no_speech: float) -> bool:
    """Whether other settings may still find words: there was speech, and the first hearing stumbled over it."""
    return why in ("repetition", "echo", "noise") and no_speech < AGAIN_NO_SPEECH


def stands_again(why: str | None, found: Measures) -> bool:
    """A second hearing has no prompt to lean on and must be likelier than a first one, or noise becomes words."""
    return why is None and found.mean_log > AGAIN_MEAN and found.ended
