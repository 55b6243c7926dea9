"""What the ears say of a fact: its second, how well its words were heard, and other values they offer."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from logbook.facts import BY_NAME
from logbook.reading.muffled import FAINT, loose_words, with_maybe_open
from logbook.reading.words.phrasing import words_of
from logbook.said import Fact, Reading
from logbook.transcript import Transcript, Word

_SIGNS = ",.;:!?"
_MOST = 16  # doubtful words that are tried; a note with more is doubtful all over
_TURNS_WITHIN = 4  # words
_BESIDE = 3  # words
_UNSURE = 0.4  # a word beside an act that was heard below this may have denied it


def with_heard(reading: Reading, transcript: Transcript) -> Reading:
    """Every fact with `second` and `heard` from the words it stands in, `via` spoken."""
    unsure = loose_words(reading, transcript, _UNSURE)

    def told(fact: Fact) -> Fact:
        if fact.start is None or fact.via != "typed":
            return fact
        words = [w for w in transcript.words if w.start < fact.end and w.end > fact.start]
        if not words:
            return replace(fact, via="spoken")
        doubt = [*words, *_turning(transcript.words, words[0], fact)]
        doubt.extend(_guessed(transcript.words, words, fact, unsure) if unsure else ())
        for span in fact.also:
            doubt.extend(w for w in transcript.words if w.start < span.end and w.end > span.start)
        return replace(fact, via="spoken", second=words[0].second, heard=min(w.heard for w in doubt))

    return _each(reading, told)


def with_alternatives(reading: Reading, transcript: Transcript, read_again: Callable[[str], Reading]) -> Reading:
    """Other values a fact would have, had the ears written a word's alternative."""
    others: dict[tuple[int, str], list[object]] = {}
    tried = 0
    for at, word in enumerate(transcript.words):
        for alternative in word.alternatives:
            if tried >= _MOST:
                break
            tried += 1
            last = transcript.words[min(at + alternative.over, len(transcript.words)) - 1]
            text = transcript.text[: word.start] + _like(last, alternative.words) + transcript.text[last.end :]
            again = read_again(text)
            reading = with_maybe_open(reading, word, again, last.end + len(text) - len(transcript.text))
            for place, entry in enumerate(reading.fittings):
                for fact in entry.facts:
                    near = fact.start is not None and fact.start <= last.end + 1 and fact.end >= word.start - 1
                    if not near or place >= len(again.fittings):
                        continue
                    other = again.fittings[place].fact(fact.name)
                    if other is not None and other.value != fact.value and other.start is not None and abs(other.start - fact.start) <= 2 + len(text):
                        others.setdefault((place, fact.name), []).append(other.value)
                    elif other is None and BY_NAME[fact.name].shape == "flag":
                        others.setdefault((place, fact.name), []).append(not fact.value)
    if not others:
        return reading
    fittings = tuple(
        replace(entry, facts=tuple(replace(f, alternatives=_unlike(f, others.get((place, f.name), ()))) for f in entry.facts))
        for place, entry in enumerate(reading.fittings)
    )
    return replace(reading, fittings=fittings)


def _unlike(fact: Fact, values) -> tuple[object, ...]:
    kept: list[object] = []
    for value in values:
        if value not in kept and value != fact.value:
            kept.append(value)
    return tuple(kept)


def _like(word: Word, alternative: str) -> str:
    """The alternative with the word's own sign behind it."""
    tail = word.words[len(word.words.rstrip(".,;:!?")) :]
    return alternative.strip().rstrip(".,;:!?") + tail


def _turning(words: tuple[Word, ...], first: Word, fact: Fact):
    """A word shortly before an act that could turn its meaning ("now taped") is doubted with it, and so is what
    stands between: "no (something faint) taped" may say that it is not."""
    if BY_NAME[fact.name].shape != "flag":
        return
    at = words.index(first)
    for before in range(at - 1, max(-1, at - 1 - _TURNS_WITHIN), -1):
        if words[before].words[-1] in ".;:!?":
            return
        if words[before].words.strip(",").lower() in words_of("small.turns_all"):
            yield from words[before:at]
            return


def _guessed(words: tuple[Word, ...], own: list[Word], fact: Fact, unsure: list[Word]):
    """What was heard well among words that nobody could make out stands no firmer than they: "taped and (something) on
    the throat" may be tape that did not stick, and one word between two such is itself a guess."""
    shape = BY_NAME[fact.name].shape
    if shape != "choice" and not (shape == "flag" and fact.value):
        return
    first, last = words.index(own[0]), words.index(own[-1])
    around = [one for one in (*words[max(0, first - 1) : first], *words[last + 1 : last + 2]) if one in unsure and one.heard < FAINT]
    if len(around) == 2:
        yield from around
    if shape == "flag":
        for way in (words[max(0, first - _BESIDE) : first][::-1], words[last : last + 1 + _BESIDE]):
            for one in way:
                if one.words[-1] in _SIGNS and one.end <= own[0].start:
                    break  # of the clause before
                if one in unsure:
                    yield one
                if one.words[-1] in _SIGNS:
                    break


def _each(reading: Reading, told: Callable[[Fact], Fact]) -> Reading:
    fittings = tuple(replace(entry, facts=tuple(told(f) for f in entry.facts)) for entry in reading.fittings)
    shift = None if reading.shift is None else tuple(told(f) for f in reading.shift)
    return replace(reading, fittings=fittings, shift=shift)
