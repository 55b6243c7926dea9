"""A note whose pieces are each told in sentences of their own, the first of which names the piece, is read one piece after the other before all else: no turn of
words then reaches from one piece into the next.

Where a part leans on another ("straight ten isn't", "both are rubbed"), takes something back or holds for more than its piece (a run), the note is left whole.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.reading.meant.bare_names import numbers_said
from logbook.reading.meant.each_alone import without_farewell
from logbook.reading.words.stretches import moved, put_together
from logbook.reading.words.tokens import plain, tokens
from logbook.said import Entry, Reading

_NAMES = frozenset(("kind", "mark", "run", "service", "place"))  # what alone tells of no work


def one_by_one(text: str, code: str, read: Callable[[str], Reading]) -> Reading | None:
    """The reading of the note; None where it is not of this sort."""
    said = plain(text)
    heads = list(_heads(code).finditer(said)) if len(said) == len(text) else []
    if len(heads) < 2 or heads[0].start() and _tells_something(text, heads[0], code, read):
        return None
    told = without_farewell(said, code)
    until, closing = _closing(told, code, heads)
    if _of_others(code, frozenset(_kinds(code)[one["kind"]] for one in heads if one["kind"])).search(said, heads[1].start() - 1, until):
        return None  # before the second piece is named nothing tells of it
    closing[-1].append((len(told), len(text)))
    parts = []
    for one, after, more in zip(heads, [*heads[1:], None], closing):
        stretches = ((one.start(), after.start() if after else until), *more)
        parts.append(moved(read(put_together(text, stretches)), text, stretches))
    entries = [part.fittings[0] for part in parts if len(part.fittings) == 1 and part.shift is None and part.withdraws is None]
    if len(entries) < len(parts) or not all(_tells(entry, head) for entry, head in zip(entries, heads)):
        return None
    if len({entry.fact("mark").value for entry in entries}) < len(entries) or len({entry.fact("run") is None for entry in entries}) > 1:
        return None
    return replace(parts[0], text=text, fittings=tuple(replace(entry, position=place) for place, entry in enumerate(entries)), unread=tuple(words for part in parts for words in part.unread))


def _tells_something(text: str, head: re.Match[str], code: str, read: Callable[[str], Reading]) -> bool:
    """Whether the words before the first piece are more than a greeting or a count; what they say of the piece by its name alone (a run) may hold for all."""
    before = text[: head.start()]
    told = read(before)
    if told.fittings or told.shift or told.withdraws or told.unread or any(letter.isdigit() for letter in before):
        return True
    if not numbers_said(tokens(before), code)[0]:
        return False
    named = read(text[: re.compile(r"[^\W_]+").match(text, head.end()).end()])
    return len(named.fittings) != 1 or not {fact.name for fact in named.fittings[0].facts} <= {"kind", "mark"}


def _closing(said: str, code: str, heads: list[re.Match[str]]) -> tuple[int, list[list[tuple[int, int] | str]]]:
    """Where the sentences begin that close the note and are told of all its pieces, or of one before the last; and those of each piece, in which "it" stands for it.

    "Straight 4, taped. Elbow 5, taped. Haven't rubbed either of those.", "… Peeled back on 4."
    """
    words, made = LANGUAGES[code].several, [list[tuple[int, int] | str]() for _ in heads]
    begins = [one.end() for one in re.finditer(r"[.!?] +", said) if one.end() > heads[-1].end()]
    until = len(said)
    for begin, end in reversed(list(zip(begins, [*begins[1:], len(said)]))):
        told = [[(match.span(), meant)] * len(heads) for pattern, meant in words.of_all for match in re.compile(pattern).finditer(said, begin, end) if len(heads) == 2 or re.search(words.of_two, match.group()) is None]
        told += [[((again.start(group), again.end(group)), words.it) if at == which else None for at in range(len(heads))] for which, again in _again(said, code, heads, begin, end) for group in [again.lastgroup]]
        if len(told) != 1:
            break
        until = begin
        for own, one in zip(made, told[0]):
            own[:0] = [*_instead(said, begin, *one), (one[0][1], end)] if one is not None else []
    return until, made


def _instead(said: str, begin: int, span: tuple[int, int], meant: str) -> list[tuple[int, int] | str]:
    """What stands in a sentence up to some words and for them; what is read of that points at the word before."""
    start = span[0]
    return [(begin, start - 1), f" {meant}"] if start > begin and said[start - 1] == " " else [(begin, start), meant]


def _again(said: str, code: str, heads: list[re.Match[str]], begin: int, end: int) -> list[tuple[int, re.Match[str]]]:
    """The pieces before the last that are named again there by their number, each with the words."""
    words = LANGUAGES[code].several
    marks = [re.compile(r"[^\W_]+").match(said, head.end())[0] for head in heads[:-1]]
    spelt = {str(count): word for word, count in words.counts.items()}
    named = [_any_of({mark, spelt.get(mark, mark), str(words.counts.get(mark, mark))}) for mark in marks]
    patterns = [re.compile(words.of_mark.replace("{mark}", f"(?:{one})").replace("{subject}", words.subject)) for one in named]
    return [(at, match) for at, pattern in enumerate(patterns) if (match := pattern.search(said, begin, end)) is not None]


def _tells(entry: Entry, head: re.Match[str]) -> bool:
    """Whether it names its piece where the sentence begins, and tells something of it alone."""
    mark = entry.fact("mark")
    return mark is not None and head.start() < mark.start <= head.end() and entry.same_as is None and not entry.amends and any(fact.name not in _NAMES for fact in entry.facts)


@cache
def _heads(code: str) -> re.Pattern[str]:
    """Where a sentence begins with a piece, up to its number."""
    led = [plain(word) for concept, words in LANGUAGES[code].concepts if concept == "NUMBER" for word in words.split("|")]
    return re.compile(rf"(?:^|(?<=[.!?] )){LANGUAGES[code].several.next_one}(?:(?P<kind>{_any_of(_kinds(code))})(?: (?:{_any_of(led)}))?|(?:{_any_of(word for word in led if word.isalpha())})(?= \d)) (?=[^\W_])")


@cache
def _kinds(code: str) -> Mapping[str, str]:
    """The words for a piece, and its kind."""
    return {plain(word): kind for kind, words in LANGUAGES[code].kinds for word in words.split("|")}


def _any_of(words: Iterable[str]) -> str:
    return "|".join(re.escape(word) for word in sorted(words, key=len, reverse=True))


@cache
def _of_others(code: str, kinds: frozenset[str]) -> re.Pattern[str]:
    """What tells of another piece, or of several, where the pieces of the note are of these kinds."""
    return re.compile(LANGUAGES[code].several.of_others.replace("{kind}", f"(?:{_any_of(word for word, kind in _kinds(code).items() if kind in kinds)})"))
