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
from logbook.reading.words.stretches import moved
from logbook.reading.words.tokens import plain
from logbook.said import Entry, Reading

_NAMES = frozenset(("kind", "mark", "run", "service", "place"))  # what alone tells of no work


def one_by_one(text: str, code: str, read: Callable[[str], Reading]) -> Reading | None:
    """The reading of the note; None where it is not of this sort."""
    said = plain(text)
    heads = list(_heads(code).finditer(said)) if len(said) == len(text) else []
    if len(heads) < 2 or heads[0].start() or _of_others(code, frozenset(_kinds(code)[one["kind"]] for one in heads if one["kind"])).search(said, heads[1].start() - 1):
        return None  # before the second piece is named nothing tells of it
    spans = [(one.start(), after.start() if after else len(text)) for one, after in zip(heads, [*heads[1:], None])]
    parts = [moved(read(text[start:end]), text, ((start, end),)) for start, end in spans]
    entries = [part.fittings[0] for part in parts if len(part.fittings) == 1 and part.shift is None and part.withdraws is None]
    if len(entries) < len(parts) or not all(_tells(entry, head) for entry, head in zip(entries, heads)):
        return None
    if len({entry.fact("mark").value for entry in entries}) < len(entries) or len({entry.fact("run") is None for entry in entries}) > 1:
        return None
    return replace(parts[0], text=text, fittings=tuple(replace(entry, position=place) for place, entry in enumerate(entries)), unread=tuple(words for part in parts for words in part.unread))


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
