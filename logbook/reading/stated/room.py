"""What length a move had: "only had fifteen inches for it", "two foot to get there", "squeezed the four inches into fifteen on the right"."""

from __future__ import annotations

from fractions import Fraction

from logbook.facts import Move
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim, unit_of
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import standing
from logbook.reading.words.phrasing import apart, finds, words_of
from logbook.reading.clauses.stance import Clause

_FEWEST = 6  # inches; less room than that is said of something else
_MEASURES = ("NUM", "LEN", "FRAC")
_MOST = 60  # inches that a side moves by
_FAR = 30  # items between the move and the words that tell what it had
_ITS_CHANGE = "(?P<by>NUM|LEN|FRAC) (?:(?:ON|OF|FROM|OFF|IN|OUT) (?:DET|WORD|SIDE|SIDE_WORD|WIDE|HIGH|LONG){1,3})? (?P<o>IN|OVER|WORD|IN_PLACE) (?:FILL|OF|ONLY){0,2} (?P<back>NUM|LEN) (?!BACK|BY|DEGREE|SIDE_WORD|APART|DEG|NUM)"


def room(row: Row, own: Row, cut: tuple[Clause, ...], language: Language, taken: set[int], claims: list[Claim]) -> list[Claim]:
    """The length that a move told of had; of a piece whose sizes change, also where no side is told to move."""
    made: list[Claim] = []
    changes = _changes(row)
    moves = [at for at in range(len(row.items)) if _moves_at(row, at)]
    if not moves and not changes:
        return made
    gives = standing(apart(language.code, "turns.room"), row.text.lower().replace("’", "'"))
    for place, clause in enumerate(cut if gives else ()):
        if own.is_blank(clause.first):
            continue
        lead = cut[place - 1] if place and cut[place - 1].sentence == clause.sentence else clause
        if any(own.is_blank(at) for at in range(lead.first, lead.last)):
            lead = clause
        said = row.words(lead.first, clause.last).lower().replace("’", "'")
        if finds(gives, said) is None:
            continue
        lengths = [at for at in range(clause.first, clause.last) if row.items[at].concept in ("NUM", "LEN") and at not in taken and row.items[at].value.value >= _FEWEST]
        by = next((at for at in range(lead.first, clause.last) if row.items[at].concept in _MEASURES and row.items[at].value.value in changes and at not in taken and at not in lengths[1:]), None)
        if len(lengths) == 2 and lengths[0] == by:
            lengths = lengths[1:]
        if len(lengths) != 1:
            continue
        at = lengths[0]
        moved = any(c.name == "side_moves" and c.value[0].by is not None and c.first >= clause.first - _FAR for c in claims) or any(max(0, clause.first - _FAR) <= k < clause.last for k in moves)
        if changes and by is not None and by != at and not any(c.name == "side_moves" for c in claims):
            made.append(_move(row, lead.first, clause.last, by, at))
        elif moved or changes:
            made.append(claim(row, "side_moves", (Move(None, None, row.items[at].value.value, None),), at, at + 1, uses=(at,), corrects=False, said_unit=unit_of(row.items[at])))
        taken.update(made[-1].uses if made else ())
    if changes and not made and not any(c.name in ("side_moves", "stated_slope", "taper_length") for c in claims):
        made += _its_change(row, own, cut, taken, changes)
    return made


def _its_change(row: Row, own: Row, cut: tuple[Clause, ...], taken: set[int], changes: set[Fraction]) -> list[Claim]:
    """ "Does its four inches in fourteen", "we lost four inches of width in a foot": just as much as the sizes change, whatever verb tells it."""
    for match in own.find(_ITS_CHANGE):
        by, back = match.start("by"), match.start("back")
        how = row.words(match.start("o"), match.start("o") + 1).lower().split()[-1]
        clause = next((one for one in cut if one.first <= by < one.last), None)
        if clause is None or taken & {by, back} or row.items[by].value.value not in changes or not _FEWEST <= row.items[back].value.value or row.items[by].value.value > _MOST or not row.items[by].value.value < row.items[back].value.value:
            continue
        if how in words_of("small.in_so_long"):
            return [_move(row, clause.first, clause.last, by, back)]
    return []


def _move(row: Row, first: int, last: int, by: int, back: int) -> Claim:
    sides = [item for item in row.items[first:last] if item.concept == "SIDE"]
    side = sides[0].value[0] if len(sides) == 1 and len(sides[0].value) == 1 else None
    return claim(row, "side_moves", (Move(side, row.items[by].value.value, row.items[back].value.value, None),), min(by, back), max(by, back) + 1, uses=(by, back), said_unit=unit_of(row.items[back]))


def _changes(row: Row) -> set[Fraction]:
    """By how much the two sizes of a transition differ."""
    concepts = {item.concept for item in row.items}
    if "K_TRANSITION" not in concepts or "K_OFFSET" in concepts:
        return set()
    sizes = [item.value.pair for item in row.items if item.concept == "SIZE"]
    return {abs(a - b) for order in (sizes[1], sizes[1][::-1]) for a, b in zip(sizes[0], order) if a != b} if len(sizes) == 2 else set()


def _moves_at(row: Row, at: int) -> bool:
    """ "comes in four", "left in four", "left over four" """
    concept = row.items[at].concept
    if concept in ("MOVE_IN", "MOVE_DOWN", "MOVE_UP", "MOVE_OUT", "MOVE"):
        return True
    return concept in ("IN", "OUT", "UP", "DOWN", "OFFSETS", "OVER") and at > 0 and row.items[at - 1].concept == "SIDE"
