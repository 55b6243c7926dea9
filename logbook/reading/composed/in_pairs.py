"""A mark said in two numbers: "elbow one nineteen", "straight two two"; and measures said so: "two fifty millimetre"."""

from __future__ import annotations

from logbook.reading.words.items import concept_at
from logbook.reading.words.phrasing import table_of

_MEASURED = ("BY", "LEN", "FRAC", "LONG", "WIDE", "HIGH", "DEG", "ROUND", "APART", "TIMES", "PIECE_COUNT", "THICK", "IN", "OUT", "OVER", "BACK", "SIDE_WORD", "BOARD", "CFM", "DASH", "COUNTED", "STAPLES", "SCREWS", "WASHERS", "TABS")
_ENDS_A_MARK = ("THROUGH", "THRU", "COMMA", "STOP", "ON", "RUN", "BE", "", "AND", "STAPLED", "TAPED", "RUBBED", "HUNG", "WITH", "HAVE", "NOT", "NO", "TIED", "FILLER", "PENDING", "NOT_DONE", "SERVICE", "WIPED", "VANES")
_BEFORE_A_MARK = ("HUNG", "HANG", "STAPLED", "TAPED", "RUBBED", "SEALED", "REDID", "REPAIRED", "TAPE_IT", "FILLER", "BE", "ON", "TIED", "WITH")


def in_hundreds(items, place: int, text: str) -> bool:
    """ "two fifty millimetre", "one fifty square feet": hundreds and tens said as two numbers."""
    before, item = items[place - 1] if place else None, items[place]
    if before is None or before.concept != "NUM" or before.value.digits or item.value.digits or text[before.end : item.start] != " ":
        return False
    named = concept_at(items, place - 2)
    return 1 <= before.value.value <= 9 and 10 <= item.value.raw <= 99 and not named.startswith("K_") and named not in ("NUMBER", "FITTING", "RUN", "EVERY")


def digit_by_digit(items, place: int, text: str) -> bool:
    """ "straight two two": a mark said figure by figure."""
    before, item = items[place - 1] if place else None, items[place]
    if item.concept != "NUM" or before is None or before.concept != "NUM" or item.value.digits or before.value.digits or text[before.end : item.start] != " ":
        return False
    kind = concept_at(items, place - 2)
    named = kind.startswith("K_") or kind in ("FITTING", "NUMBER")
    return named and 1 <= before.value.value <= 9 and 0 <= item.value.value <= 9 and concept_at(items, place + 1) in ("COMMA", "STOP", "", "RUN", "ON", "BE", "HAVE")


def in_a_pair(items, place: int, text: str) -> bool:
    """ "elbow one nineteen": a number over a hundred said in two, right behind the kind."""
    item, before = items[place], items[place - 1] if place else None
    if item.concept != "NUM" or before is None or before.concept != "NUM" or item.value.digits or before.value.digits:
        return False
    named, ahead = concept_at(items, place - 2), concept_at(items, place + 1)
    fits = 1 <= before.value.value <= 9 and 10 <= item.value.value <= 99 and " " not in text[before.start : before.end]
    if not fits or text[before.end : item.start] != " ":
        return False
    kind = named.startswith("K_") or named in ("FITTING", "NUMBER") or named == "BRANCH_WORD" or (named == "COUNTED" and text[items[place - 2].start : items[place - 2].end].lower() in table_of("small.several"))
    if kind and not (named in ("K_ELBOW", "K_WYE") and item.value.value in (90, 45, 30, 60)):
        return ahead not in _MEASURED and not (ahead == "NUM" and concept_at(items, place + 2) != "BY")
    if named in ("AND", "COMMA", "THROUGH", "THRU", "TO") and ahead in _ENDS_A_MARK and concept_at(items, place - 3) == concept_at(items, place - 4) == "NUM":
        return True  # "straights one twelve and one thirteen"
    if ahead not in _MEASURED and _said_twice(items, place):
        return True  # "one twenty six and one twenty seven, … and on one twenty seven I forgot the tape"
    opens = named in ("", "STOP", "QUERY") or (named in _BEFORE_A_MARK and place - 2 >= 0)
    return opens and (ahead in ("BE", "AND", "ON", "HAVE", "NOT", "WITH", "YET", "") or (ahead in ("COMMA", "STOP") and (named in _BEFORE_A_MARK or concept_at(items, place + 2).startswith("K_"))))


def _said_twice(items, place: int) -> bool:
    """Whether the same two numbers stand side by side elsewhere, behind a word that a mark stands behind."""
    pair = (items[place - 1].value.value, items[place].value.value)
    return any(items[k - 1].concept == items[k].concept == "NUM" and (items[k - 1].value.value, items[k].value.value) == pair for k in range(1, len(items)) if k != place)
