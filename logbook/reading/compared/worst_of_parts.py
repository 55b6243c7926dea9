"""A measure that does not hold all over the piece: told of several parts of it, or of the whole and again of a part, a stretch, another hour.

"Stapled at two on the sides, at three on the top", "two inches, then past the middle they go to three", "at sixty degrees, the last stretch was down to forty":
the worst of them counts for the piece.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from fractions import Fraction

from logbook.facts import Move
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.stance import Clause
from logbook.reading.compared.measured_of import MEASURED, MOVED, Measured, bars, counts_something, counts_things
from logbook.reading.compared.of_which_part import beside, counts_parts, in_its_clause
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain
from logbook.record import record

_COUNTED = {"staple_spacing": "sides_stapled", "tape_width": "sides_taped", "surface_temperature": "sides_taped"}
_MENDED = frozenset("FIX REDID CONDITION IF SHOULD_HAVE".split())
_TURNED = frozenset("FIX REDID CONDITION IF SHOULD_HAVE NOT_DONE PENDING NEED DRAWING SAYS DAMAGE WILL GOING_TO".split())  # in the clause of a measure told again
_DENIED = frozenset("NOT NO NOT_DONE".split())  # shortly before a measure
_LED = frozenset("BE TO ON EVERY HEDGE MOVE ONLY OUT FILLER COMMA THIS IT THROUGH BY OPENING GENERIC AROUND".split())  # before a bare number that measures
_BEHIND = frozenset("COMMA STOP QUERY AND BUT APART WHEN WITH THIS THERE INSTEAD ON IN DEG TEMP_F".split())  # behind one
_NAMES = ("kind", "mark", "place")  # what alone tells of nothing done
_CLAUSES, _FAR = 3, 26  # clauses and items behind the last measure of the whole


@record
class _Look:
    row: Row
    not_own: Mapping[int, str]
    cut: tuple[Clause, ...]
    marks: set[str]
    language: Language


def worst_of_parts(row: Row, not_own: Mapping[int, str], cut: tuple[Clause, ...], claims: list[Claim], marks: set[str], language: Language) -> list[Claim]:
    """The claims, with the worst measure alone where one was told of several parts, or again of one."""
    told = [one for one in claims if one.name in MEASURED and _value(one) is not None and not one.took_back and one.for_mark is None]
    if not told:
        return claims
    look = _Look(row, not_own, cut, marks, language)
    for name in dict.fromkeys(one.name for one in told):
        of, mine = MEASURED[name], sorted((one for one in told if one.name == name), key=lambda one: one.first)
        if sum(item.concept in of.sorts for item in row.items) > (0 if name == "gap" else 1):
            for group in _of_one_piece(row, mine, marks):
                claims = _worst(look, claims, group, of) if _moves_a_side(group[0]) else claims
    return claims


def _value(one: Claim) -> Fraction | int | None:
    """How much it is; of a side that moves, over how far back it does."""
    if type(one.value) is tuple:
        return one.value[0].back if len(one.value) == 1 and type(one.value[0]) is Move else None
    return one.value if type(one.value) in (Fraction, int) else None


def _moves_a_side(one: Claim) -> bool:
    return type(one.value) is not tuple or one.value[0].by is not None


def _moved(one: Claim, back: Fraction) -> Claim:
    return replace(one, value=(replace(one.value[0], back=back),))


def _of_one_piece(row: Row, mine: list[Claim], marks: set[str]) -> list[list[Claim]]:
    groups = [[mine[0]]]
    for before, one in zip(mine, mine[1:]):
        if type(one.value) is tuple and _moves_a_side(one) or len(marks) > 1 and any(_names_another(row, at, marks) for at in range(before.last, one.first)):
            groups.append([])
        groups[-1].append(one)
    return groups


def _worst(look: _Look, claims: list[Claim], mine: list[Claim], of: Measured) -> list[Claim]:
    row, name = look.row, mine[0].name
    apart = [one for one in mine[1:] if _unlike(look, mine[0].last, one.first)]
    claims, mine = [one for one in claims if one not in apart], [one for one in mine if one not in apart]
    used = {at: one for one in mine for at in (one.uses or range(one.first, one.last)) if row.items[at].concept in of.sorts and (type(one.value) is not tuple or row.items[at].value.value == _value(one))}
    values = {at: _value(one) for at, one in used.items()} or {mine[0].first: _value(mine[0])}
    parts = {at: beside(row, at, look.language) for at in values}
    for at, part in _told_again(look, claims, mine, of, used):
        values.setdefault(at, _size(row, at, of, mine[0]))
        parts[at] = parts.get(at) or part
    known = [part for part in parts.values() if part is not None]
    if not known or len(values) < 2 or len(set(known)) < len(known) or any(one.corrects for one in mine[1:]) or _by_now(look, min(values), max(values)):
        return claims
    begin, end = row.sentence_start(mine[0].first), row.sentence_end(max(values))
    claims = [one for one in claims if not (one.name == _COUNTED.get(name) and begin <= one.first < end)]
    if len(set(values.values())) < 2:
        return claims
    at = of.worst(values, key=values.get)
    keep = _moved(mine[0], values[at]) if type(mine[0].value) is tuple else used.get(at) or (mine[0] if at == mine[0].first else claim(row, name, values[at], at, at + 1, uses=(at,), said_unit=unit_of(row.items[at])))
    others = tuple((one.start, one.end) for one in mine if one is not keep)
    uses = tuple(sorted({*keep.uses, *used}))
    stay = (one for one in claims if not any(one is each for each in mine) and not (one.name == "length" and not values.keys().isdisjoint(one.uses)))  # "the ones at the bottom are only six long": of the tabs
    return [*stay, replace(keep, weak=False, uses=uses, also=(*keep.also, *others))]


def _told_again(look: _Look, claims: list[Claim], mine: list[Claim], of: Measured, used: dict[int, Claim]) -> Iterator[tuple[int, object]]:
    """The measures of a part, each with its part: those claimed already, and those that nothing else reads."""
    row, language = look.row, look.language
    spent = {at for one in claims if one.name != mine[0].name and type(one.value) is not bool and not (one.name == "length" and "LONG" in of.things) for at in one.uses}
    first = mine[0]
    begin, last = row.sentence_start(first.first), max((*used, first.last - 1))
    for at in range(begin, min(len(row.items), last + _FAR)):
        item = row.items[at]
        if item.concept not in of.sorts or at in spent or row.is_blank(at) or row.words(at, at + 1) in look.marks or item.concept == "NUM" and item.value.value == 1 and not item.value.digits:
            continue
        if at in used:
            if at > min(used) and (part := _further(look, claims, mine, at, of)) is not None:
                yield at, part
            continue
        near = min(used or (first.first,), key=lambda k: abs(k - at))
        if row.items[at - 1].concept in MOVED or counts_things(row, at) or counts_parts(row, at, language) or not of.least <= _size(row, at, of, first) <= of.most or any(bars(row, k, of, look.marks) for k in range(min(at, near) + 1, max(at, near))):
            continue
        if _unlike(look, min(at, near), max(at, near)):
            continue
        part = beside(row, at, language) if (at > near or first.name != "side_moves") and row.sentence_end(at) == row.sentence_end(first.first) and not of.by_the_hour else None
        if part is None and at > near:
            part = _further(look, claims, mine, at, of)
        if part is not None:
            yield at, part


def _unlike(look: _Look, first: int, last: int) -> bool:
    """Whether something else is measured from one place to the other, or in the clause of the latter: "three inch tape, it laps an inch past the seam"."""
    end = next((clause.last for clause in look.cut if clause.first <= last < clause.last), last + 1)
    return word(look.language.code, "told.parts.unlike").search(plain(look.row.words(first, end))) is not None


def _further(look: _Look, claims: list[Claim], mine: list[Claim], at: int, of: Measured) -> object:
    """The part that a measure behind the first is told of in its clause; None where it measures something else, or nothing that was done."""
    row, code = look.row, look.language.code
    place = next((k for k, clause in enumerate(look.cut) if clause.first <= at < clause.last), 0)
    clause = look.cut[place]
    before = max((one.last for one in mine if one.last <= at), default=at)
    own = any(one.first <= at < one.last for one in mine)
    if not own:
        since = [k for k, each in enumerate(look.cut) if each.last > before - 1]
        if place - since[0] > _CLAUSES or clause.sentence - look.cut[since[0]].sentence > 1 or not _measures(row, at, of) or not _is_told(look, clause, at):
            return None
        if any(each.first >= look.cut[since[0]].last and each.last <= clause.last and each.name not in _NAMES and not each.name.startswith("(") and each.value is not False for each in claims):
            return None
    said = plain(row.words(clause.first, clause.last))
    if of.by_the_hour:
        return (clause.first, at) if word(code, "told.parts.again").search(said) is not None else None
    part = in_its_clause(row, look.cut, place, claims, look.language) if place or own else None
    if part is not None and not part[0] <= at < part[1]:
        return part
    if not own and word(code, "told.parts.further").search(row.words(before, at).lower()) is not None and row.items[at - 1].concept in _LED:
        return before, at
    return None


def _is_told(look: _Look, clause: Clause, at: int) -> bool:
    """Whether the words around a measure tell of what is: no plan, no question, nothing denied or mended."""
    here = [item.concept for item in look.row.items[clause.first : clause.last]]
    opens = clause.first == look.row.sentence_start(clause.first) or look.row.items[min(look.row.sentence_end(at), len(look.row.items) - 1)].concept == "QUERY"
    planned = any(concept in ("WILL", "LATER", "PENDING", "GOING_TO") for concept in here)  # "after that there's a ten foot jump" plans nothing
    why = look.not_own.get(at)
    own = why is None or why == "plan" and not planned or why == "question" and here[0] == "QUESTION" and not opens  # "everywhere but the throat, which got two inch" asks nothing
    return own and _TURNED.isdisjoint(here) and _DENIED.isdisjoint(item.concept for item in look.row.items[max(clause.first, at - 4) : at])


def _measures(row: Row, at: int, of: Measured) -> bool:
    """Whether a number measures this, and counts nothing."""
    item, ahead = row.items[at], row.items[at + 1].concept if at + 1 < len(row.items) else "STOP"
    if counts_something(ahead, of):
        return False
    return item.concept != "NUM" or item.value.value.denominator != 1 or item.value.value >= 100 or item.value.value > 1 and (ahead in _BEHIND or row.items[at - 1].concept in _LED)


def _size(row: Row, at: int, of: Measured, first: Claim) -> Fraction:
    """ "60 mm apart down one side, the rest are 45": in the unit that was told with the first."""
    item = row.items[at]
    with_it = [row.items[k].value for k in first.uses if row.items[k].concept == "LEN" and row.items[k].value.unit in ("mm", "cm", "m", "ft") and row.items[k].value.raw]
    if item.concept != "NUM" or not with_it:
        return item.value.value
    size = item.value.value * with_it[0].value / with_it[0].raw
    return size if with_it[0].unit != "ft" or size <= of.most else item.value.value


def _by_now(look: _Look, first: int, last: int) -> bool:
    """Whether it is told to be otherwise by now: "every three across the bottom, then I fixed that"."""
    row, code = look.row, look.language.code
    begin, end = row.sentence_start(first), row.sentence_end(last)
    return not _MENDED.isdisjoint(item.concept for item in row.items[begin:end]) or word(code, "told.parts.by_now").search(row.words(begin, end).lower()) is not None


def _names_another(row: Row, at: int, marks: set[str]) -> bool:
    return row.words(at, at + 1) in marks or row.items[at].concept.startswith("K_")
