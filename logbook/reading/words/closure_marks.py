"""The print on tape and pails (181A-P, 181A-H, 181A-M) in every spelling it is said and heard in."""

from __future__ import annotations

from dataclasses import dataclass

from logbook.reading.words.tokens import Token

_ONE = {"one", "uno", "ciento"}
_BEGINS = _ONE | {"181", "1"}
_EIGHTY = {"eighty", "ochenta"}
_EIGHT_HEARD, _TY_HEARD = {"ate", "eight", "8"}, {"tea", "tee", "ty", "tie"}
_LETTERS = {"p": "P", "pee": "P", "h": "H", "aitch": "H", "hache": "H", "m": "M", "em": "M", "pe": "P", "eme": "M", "pea": "P"}
_FAMILY = {"a", "ay", "eh", "hey"}
CLOSURE_OF = {"181A-P": "tape_pressure", "181A-H": "tape_heat", "181A-M": "mastic"}


@dataclass(frozen=True, slots=True)
class ClosureMark:
    value: str
    end: int
    read_as: str | None = None


def closure_mark(tokens: tuple[Token, ...], at: int) -> ClosureMark | None:
    """The mark that starts at this token, or None. A mark without its letter states nothing."""
    if tokens[at].bare not in _BEGINS:
        return None
    end = _hundred_eighty_one(tokens, at)
    if end is None:
        return None
    end = end + 1 if _word(tokens, end) == "-" else end
    end = end + 1 if _word(tokens, end) in ("dash", "guion", "guión") else end
    word = _word(tokens, end)
    if word in ("ap", "ah", "am"):
        return ClosureMark(f"181A-{word[1].upper()}", end + 1)
    if word in ("8p", "8h", "8m"):
        return None
    if word not in _FAMILY:
        eight = word in ("8", "eight") and _word(tokens, end + 1) in _LETTERS  # "one eighty-one eight P"
        return ClosureMark(f"181A-{_LETTERS[_word(tokens, end + 1)]}", end + 2, "181A-P"[:5] + _LETTERS[_word(tokens, end + 1)]) if eight else None
    end += 1
    while _word(tokens, end) in ("-", "dash", "guion", "guión"):
        end += 1
    letter = _LETTERS.get(_word(tokens, end))
    return ClosureMark(f"181A-{letter}", end + 1) if letter else None


def _hundred_eighty_one(tokens, at) -> int | None:
    first = tokens[at].bare
    if first == "181":
        return at + 1
    if first == "1" and _word(tokens, at + 1) == "81":
        return at + 2
    if first not in _ONE:
        return None
    second = _word(tokens, at + 1)
    if second in _EIGHT_HEARD and _word(tokens, at + 2) in _TY_HEARD:  # "one ate tea one a pee"
        return at + 4 if _word(tokens, at + 3) in _ONE | {"1", "won"} else None
    if second == "81":
        return at + 2
    step = at + 2 if second == "hundred" else at + 1
    step = step + 1 if _word(tokens, step) in ("and", "y") else step
    if _word(tokens, step) in _EIGHTY:
        step = step + 2 if _word(tokens, step + 1) in ("y", "and") else step + 1
        return step + 1 if _word(tokens, step) in _ONE | {"1"} else None
    if _word(tokens, step) in ("eight", "ocho") and _word(tokens, step + 1) in _ONE:
        return step + 2
    return None


def _word(tokens, at) -> str:
    return tokens[at].bare if 0 <= at < len(tokens) else ""
