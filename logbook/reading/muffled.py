"""What the ears could not make out: words that stand in no fact because they were heard too faintly.

Such a word may have been "not". So a note with muffled words never counts as one in which nothing was left undone.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.words.phrasing import words_of
from logbook.said import Entry, Muffled, Reading
from logbook.transcript import Transcript, Word

FAINT = 0.3  # below this a word that stands in no fact is taken for muffled


def with_muffled(reading: Reading, transcript: Transcript) -> Reading:
    """Every entry with its muffled words: those from its first words up to the next entry's."""
    found = [Muffled(w.words, w.start, w.end, w.second) for w in loose_words(reading, transcript, FAINT)]
    return _given(reading, found)


def loose_words(reading: Reading, transcript: Transcript, below: float) -> list[Word]:
    """The words that were heard below this probability, stand in no fact, and might turn one."""
    faint = [w for w in transcript.words if w.heard < below and _might_turn(w)]
    known = [span for entry in reading.fittings for span in _spans(entry)] if faint else []
    return [w for w in faint if not any(w.start < b and w.end > a for a, b in known)]


def with_maybe_open(reading: Reading, word: Word, other: Reading, end: int) -> Reading:
    """The entries with what `other` leaves undone and they do not: the same text with another word, up to `end`, for `word`."""
    found = []
    for entry, again in zip(reading.fittings, other.fittings, strict=False):
        had = {(item.about, item.denies) for item in entry.open_items}
        new = [item for item in again.open_items if item.about == "piece" and (item.about, item.denies) not in had]
        found += [Muffled(word.words, word.start, word.end, word.second, item.text, item.denies) for item in new[:1]
                  if item.start <= end + 1 and item.end >= word.start - 1]  # fmt: skip
    return _given(reading, found)


def _given(reading: Reading, found: list[Muffled]) -> Reading:
    if not found or not reading.fittings:
        return reading
    starts = [min((a for a, _ in _spans(entry)), default=0) for entry in reading.fittings]
    mine: list[list[Muffled]] = [[] for _ in starts]
    for one in found:
        mine[max((place for place, start in enumerate(starts) if start <= one.start), default=0)].append(one)
    fittings = (
        replace(entry, muffled=tuple(sorted((*entry.muffled, *more), key=lambda one: one.start))) if more else entry
        for entry, more in zip(reading.fittings, mine, strict=True)
    )
    return replace(reading, fittings=tuple(fittings))


def _might_turn(word: Word) -> bool:
    bare = word.words.strip(".,;:!?").lower()
    return any(c.isalpha() for c in bare) and bare not in words_of("small.turns_nothing")


def _spans(entry: Entry) -> list[tuple[int, int]]:
    spans = [(f.start, f.end) for f in entry.facts if f.start is not None]
    spans += [(s.start, s.end) for f in entry.facts for s in f.also]
    spans += [(e.start, e.end) for f in entry.facts for e in f.withdrawn if e.start is not None]
    spans += [(e.start, e.end) for e in entry.withdrawn if e.start is not None]
    return spans + [(item.start, item.end) for item in entry.open_items]
