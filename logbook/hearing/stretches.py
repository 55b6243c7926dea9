"""A long recording is heard a stretch at a time: nobody's short note waits for it, and it needs the memory of a stretch.

    parts(sound) -> [(second it begins, Sound), …]      the windows that the ears would cut it into anyway
    joined(sound, heard) -> Transcript                  what was heard in them, as one hearing
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from logbook.decoding.sound import Sound
from logbook.hearing import windows
from logbook.transcript import Doubt, Transcript, Unheard

LONG = 2 * windows.LONGEST  # seconds of sound that are heard in one go, and the length of a stretch


def parts(sound: Sound) -> list[tuple[float, Sound]]:
    return [
        (one.start, replace(sound, samples=one.samples, seconds=one.seconds, whole_seconds=one.seconds))
        for one in windows.cut(sound.samples)
    ]


def joined(sound: Sound, heard: Sequence[tuple[float, Transcript]]) -> Transcript:
    """Seconds and characters of the whole; the language is the one of most words, the doubt the worst that gave words."""
    text, words, unheard = "", [], []
    for start, one in heard:
        offset = len(text) + 1 if text and one.text else len(text)
        text = f"{text} {one.text}" if text and one.text else text or one.text
        words += [
            replace(word, start=word.start + offset, end=word.end + offset, second=round(word.second + start, 2), until=round(word.until + start, 2))
            for word in one.words
        ]
        # pauses beside words are found again over the whole: they may reach from one part into the next; and only the last part ends
        unheard += [
            Unheard(round(gap.second + start, 2), round(gap.until + start, 2), gap.why)
            for gap in one.unheard
            if not (gap.why == "no_speech" and one.words) and (gap.why != "cut_off" or start == heard[-1][0])
        ]
    unheard = windows.run_together(windows.with_pauses(unheard, words, sound.seconds))
    if sound.whole_seconds > sound.seconds + 1.0:
        unheard.append(Unheard(round(sound.seconds, 2), round(sound.whole_seconds, 2), "too_long"))
    said = [one for _, one in heard if one.words] or [one for _, one in heard]
    worst = Doubt(
        max(one.doubt.no_speech for one in said),
        min(one.doubt.mean_log_probability for one in said),
        max(one.doubt.compression for one in said),
    )
    again = [round(start + at, 2) for start, one in heard for at in one.settings.get("heard_again_from", ())]
    first = heard[0][1]
    settings = {name: value for name, value in first.settings.items() if name != "heard_again_from"}
    return Transcript(
        first.engine, first.weights, settings | ({"heard_again_from": again} if again else {}),
        language(heard), text, tuple(words), worst, tuple(unheard),
    )  # fmt: skip


def language(heard: Sequence[tuple[float, Transcript]]) -> str | None:
    """The language in which most words were heard so far; None before the first."""
    count = Counter()
    for _, one in heard:
        count[one.language] += len(one.words)
    return max(count, key=count.__getitem__) if count.total() else None
