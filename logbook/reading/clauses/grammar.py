"""Patterns over items: regular expressions whose letters are concepts.

A pattern is written with concept names and the groups of `CLASSES`; blanks mean nothing. Every item of a note is
one character of the row, so matching costs no more than it would on a short string and grows with its length.
"""

from __future__ import annotations

import re
from functools import cache, cached_property
from re import _constants as sre
from re import _parser  # the standard library's own reading of a pattern; it has no public door

from logbook.reading.words.kinds import KIND_CONCEPTS
from logbook.languages import LANGUAGES
from logbook.reading.words.items import Item
from logbook.record import record

VOID = "VOID"  # an item whose words state nothing of this speaker's own work
_ENDS = ("STOP", "QUERY")  # of a sentence
_BLANK = "\uf8ff"  # its letter, known without a look into the table
_BUILT_IN = (
    VOID, "NUM", "LEN", "FRAC", "DEG", "TEMP_F", "CFM", "INWG", "LB", "FT2", "COUNT", "SIZE", "RATIO", "MARK181", "WORD",
    "LETTER", "SIGN", "STOP", "QUERY", "COMMA", "ASKS", "SIDE", "SERVICE", "CLOSURE", "C_MASTIC", "DAMAGE", "METHOD",
    "PLACE_NOUN", "MISHEARD", "MARKED",
)  # fmt: skip
CLASSES = {
    "NUMB": ("NUM", "LEN", "FRAC"),
    "FILL": ("DET", "IT", "BE", "HEDGE", "THINK", "FILLER", "THIS", "HAVE", "ALL", "EACH"),
    "SEP": ("COMMA", "STOP", "QUERY"),
    "ME": ("I",),  # a name of one letter is none to a pattern
    "KIND": KIND_CONCEPTS,
    "DIRECTION": ("DOWN", "UP", "IN", "OUT", "MOVE_DOWN", "MOVE_UP", "MOVE_IN", "MOVE_OUT"),
    "MOVES": ("MOVE_DOWN", "MOVE_UP", "MOVE_IN", "MOVE_OUT"),
    "ENDING": ("FEMALE", "MALE"),
    "TAPES": ("TAPE", "CLOSURE", "MARK181"),
    "ACT": ("STAPLED", "TAPED", "RUBBED"),
    "LOOSE": (
        "DET", "IT", "BE", "HEDGE", "THINK", "FILLER", "THIS", "HAVE", "HAVING", "ALL", "EACH", "WORD", "ON", "OF", "WITH", "TO",
        "FROM", "I", "IN_PLACE", "GENERIC", "FITTING", "AROUND", "SIDE", "SIDE_WORD", "ONLY", "JOINT", "END", "FACING", "YET",
        "OTHER_SIDE", "LATER", "IN", "OVER", "BOTH", "UP", "DOWN", "LETTER", "OFF", "THROUGH", "WILL", "GOING_TO", "SIDES_ALL",
    ),
}  # fmt: skip
_NAME = re.compile(r"(?<![a-z<])[A-Z][A-Z0-9_]+")


@cache
def _codes() -> dict[str, str]:
    names = set(_BUILT_IN) | set(KIND_CONCEPTS)
    for language in LANGUAGES.values():
        names.update(concept for concept, _ in language.concepts)
        names.update(row.concept for row in language.misheard)
    return {name: chr(0xE000 + place) for place, name in enumerate(sorted(names))} | {VOID: _BLANK}


@cache
def compiled(pattern: str) -> re.Pattern[str]:
    """The pattern over rows. KeyError: a name that is no concept of any language."""
    return re.compile(_lettered(pattern))


def _lettered(pattern: str) -> str:
    """The pattern with a letter for each name of a concept."""
    codes = _codes()

    def letters(match: re.Match[str]) -> str:
        name = match.group()
        if name in CLASSES:
            return "[" + "".join(codes[c] for c in CLASSES[name] if c in codes) + "]"
        return codes[name]

    return _NAME.sub(letters, pattern).replace(" ", "").replace("\n", "")


@cache
def one_of_each(pattern: str) -> tuple[frozenset[str], ...]:
    """Sets of concepts, as letters of a row: where a row holds none of one of these sets, the pattern matches nowhere."""
    needs = {frozenset(letters) for letters in _required(_parser.parse(_lettered(pattern)))}
    return tuple(sorted((one for one in needs if not any(other < one for other in needs)), key=lambda one: (len(one), sorted(one))))


def _required(parsed) -> list[frozenset[str]]:
    needs: list[frozenset[str]] = []
    for kind, value in parsed:
        if kind is sre.LITERAL:
            needs.append(frozenset(chr(value)))
        elif kind is sre.IN and all(sort is sre.LITERAL for sort, _ in value):
            needs.append(frozenset(chr(letter) for _, letter in value))
        elif kind is sre.BRANCH:
            each = [_required(one) for one in value[1]]
            if all(each):
                needs.append(frozenset().union(*(min(one, key=len) for one in each)))
        elif kind is sre.SUBPATTERN:
            needs += _required(value[-1])
        elif kind in (sre.MAX_REPEAT, sre.MIN_REPEAT, sre.POSSESSIVE_REPEAT) and value[0] > 0:
            needs += _required(value[-1])
    return needs


@cache
def code(concept: str) -> str:
    codes = _codes()
    return codes.get(concept, codes["WORD"])


@record
class Row:
    """The items of one text and their string of concepts; `ground` blanks out what is not the speaker's own."""

    text: str
    items: tuple[Item, ...]
    string: str

    @cached_property
    def letters(self) -> frozenset[str]:
        return frozenset(self.string)

    @classmethod
    def of(cls, text: str, items: tuple[Item, ...], blank: frozenset[int] = frozenset()) -> Row:
        void = code(VOID)
        return cls(text, items, "".join(void if at in blank else code(item.concept) for at, item in enumerate(items)))

    def blanked(self, blank) -> Row:
        if not blank:
            return self
        letters = list(self.string)
        for at in blank:
            if at < len(letters):
                letters[at] = _BLANK
        return Row(self.text, self.items, "".join(letters))

    def recoded(self, places: dict[int, str]) -> Row:
        """The row where the items at these places count as another concept."""
        if not places:
            return self
        return Row(self.text, self.items, "".join(code(places[at]) if at in places else c for at, c in enumerate(self.string)))

    def is_blank(self, at: int) -> bool:
        return self.string[at] == _BLANK

    def find(self, pattern: str, first: int = 0, last: int | None = None):
        """Matches from left to right; one match never starts inside another."""
        letters = self.letters
        for needs in one_of_each(pattern):
            if needs.isdisjoint(letters):
                return iter(())
        return compiled(pattern).finditer(self.string, first, len(self.string) if last is None else last)

    def sentence_start(self, at: int) -> int:
        """The first item of the sentence that goes up to this place."""
        while at > 0 and self.items[at - 1].concept not in _ENDS:
            at -= 1
        return at

    def sentence_end(self, at: int) -> int:
        """The place of the sign that ends the sentence from this item on; behind the last item where none does."""
        while at < len(self.items) and self.items[at].concept not in _ENDS:
            at += 1
        return at

    def within(self, first: int, last: int, match: re.Match[str], begin: int | None = None) -> tuple[int, int]:
        """Which of the items first to last - 1 a match in their words is in: its first item, and the one behind it.

        `begin` is where in the text the words begin that were searched, where that is not with the first of these items.
        """
        begin = self.items[first].start if begin is None else begin
        start, end = begin + match.start(), begin + match.end()
        own = next(at for at in range(first, last) if self.items[at].end > start)
        return own, next((at for at in range(own + 1, last) if self.items[at].start >= end), last)

    def words(self, first: int, last: int) -> str:
        """The text of items first to last - 1."""
        items = self.items
        return self.text[items[first].start : items[last - 1 if last <= len(items) else -1].end]
