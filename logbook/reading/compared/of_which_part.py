"""Which part of the piece a measure is told of: the one named beside it ("three on the top"), in its clause ("the last roll was narrower, two inch") or right before that ("the corner got away from me, that's three")."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

_PARTS = frozenset("SIDE SIDE_WORD SIDES_ALL ONE_SIDE OTHER_SIDE JOINT END PANEL".split())
_MAY_BE = ("WORD", "FILLER", "GENERIC", "ANOTHER", "DET", "LEG", "BACK", "FLAP")  # a part by its word alone
_BETWEEN = frozenset("FROM BY ON IN DOWN AT DET BE EVERY APART WIDE LONG LEG TAPE CLOSURE MARK181 AROUND OVER OF ALL BOTH ONLY THROUGH HAVE FILLER".split())
_LEADS = ("ON", "IN", "DOWN", "AT", "OVER", "AROUND", "THROUGH")
_FARTHEST = 6  # items between a measure and its part


def beside(row: Row, at: int, language: Language) -> int | None:
    """The item of the part that stands beside a measure: "three on the top", "the top at three"."""
    begin, end = row.sentence_start(at), row.sentence_end(at)
    for place in range(at + 1, min(end, at + _FARTHEST)):
        if is_a_part(row, place, language):
            led = any(row.items[k].concept in _LEADS for k in range(at + 1, place)) or row.items[place - 1].concept in ("FROM", "OF", "BY") and row.items[at - 1].concept in ("TO", "EVERY")  # "a tres del otro"
            return place if place == at + 1 or led or row.items[place].concept == "WORD" else None
        if row.items[place].concept not in _BETWEEN and not _tells_which(row, place, language):
            break
    if at + 1 < end and row.items[at + 1].concept in ("FROM", "OFF"):
        return None  # "the back corner is three inches from the wall"
    for place in range(at - 1, max(begin - 1, at - _FARTHEST), -1):
        if row.items[place].concept == "BACK" and row.items[place - 1].concept != "DET":
            return None  # "it's back eighteen"
        if is_a_part(row, place, language):
            return place
        if row.items[place].concept == "NUM" and place > begin and is_a_part(row, place - 1, language):
            continue  # "the last two are three apart"
        if row.items[place].concept not in (*_BETWEEN, "TO"):
            break
    return None


def _tells_which(row: Row, place: int, language: Language) -> bool:
    """ "On the short ones"."""
    return row.items[place].concept == "WORD" and row.items[place - 1].concept == "DET" and place + 1 < len(row.items) and is_a_part(row, place + 1, language)


def is_a_part(row: Row, place: int, language: Language) -> bool:
    concept = row.items[place].concept
    return concept in _PARTS or concept in _MAY_BE and word(language.code, "told.parts.word").fullmatch(row.words(place, place + 1).lower()) is not None


def counts_parts(row: Row, at: int, language: Language) -> bool:
    """ "Three inch tape, but one panel isn't seated": how many of them, and no width."""
    item = row.items[at]
    if item.concept != "NUM" or item.value.value not in (1, 2, 3, 4) or at + 1 >= len(row.items):
        return False
    return is_a_part(row, at + 1, language) and (item.value.value == 1 or row.words(at + 1, at + 2).lower().endswith("s"))


def in_its_clause(row: Row, cut: tuple[Clause, ...], place: int, claims: list[Claim], language: Language) -> tuple[int, int] | None:
    """The items of the part that a clause is of; "that's three" is of the one told right before it, "then three" of what comes behind."""
    clause, before = cut[place], cut[place - 1]
    if here := _named(row, clause, language):
        return here[0]
    said = plain(row.words(clause.first, clause.last))
    if word(language.code, "told.parts.then").match(said) is not None:
        return clause.first, clause.first
    points = word(language.code, "told.parts.that").match(said) is not None
    near = _named(row, before, language) if points or before.sentence == clause.sentence else []
    alone = not any(before.first <= one.first < before.last and one.name != "place" for one in claims)
    return (clause.first, clause.first) if near and (alone or points and near[-1][1] == before.last) else None


def _named(row: Row, clause: Clause, language: Language) -> list[tuple[int, int]]:
    """The items of the parts that a clause names; "it's back eighteen" names none."""
    said = plain(row.words(clause.first, clause.last))
    places = [row.within(clause.first, clause.last, match) for match in word(language.code, "told.parts.named").finditer(said)]
    return [(first, last) for first, last in places if row.items[last - 1].concept != "BACK" or last - 1 > first and row.items[last - 2].concept == "DET"]
