"""How hot the air is: "I measured 268 degrees in straight 7", "the furnace is blowing 270 into it", "the air hits two eighty on high fire".

No facing is so warm; what else is, an iron, a link, an attic, has its own word in the sentence.
"""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row, code
from logbook.reading.stated.read_off import NOT_READ
from logbook.reading.words.phrasing import word
from logbook.reading.words.tokens import plain

HOT = 150  # °F
_HOTTEST = 900
_BARE = (150, 600)  # a number without its unit, where what the air is warmed by stands before it
_NAMES = ("FITTING", "NUMBER", "RUN", "MARKED", "DASH", "LETTER")
_SORTS = ("NUM", "DEG", "TEMP_F")
_TURNED = ("NOT", "NO", "IF", "NOT_DONE", "PENDING")


def how_hot(row: Row, stated: Row, taken: set[int], claims: list[Claim], language: Language) -> list[Claim]:
    """Claims of the air's temperature, from numbers that nothing else has taken."""
    if not language.told.wanted.around:
        return []
    told = [one.first for one in claims if one.name == "air_temperature"]
    made: list[Claim] = []
    hot = [at for at, item in enumerate(row.items) if item.concept in _SORTS and _is_hot(item) and at not in taken and (stated.string[at] == code(item.concept) or _shown(row, at, language))]
    for at in hot:
        if any(not _of_another(row, at, other) for other in told):
            continue
        first, last = row.sentence_start(at), row.sentence_end(at)
        said = plain(row.words(first, last))
        if word(language.code, "told.wanted.not_the_air").search(said) is not None or word(language.code, "told.wanted.of_air").search(said) is None or any(row.items[k].concept in _TURNED for k in range(max(first, at - 4), at)):
            continue
        if row.items[at].concept == "NUM" and not _told_of_the_air(row, first, at, last, language):
            continue
        at = _hottest(row, at, hot)
        unit = "°C" if getattr(row.items[at].value, "unit", None) == "°C" else None
        near = any(row.items[k].concept in ("HEDGE", "THINK", "AROUND") for k in range(max(first, at - 2), at))
        made.append(claim(row, "air_temperature", row.items[at].value.value, at, at + 1, uses=(at,), said_unit=unit, hedged=near))
        told.append(at)
    return made


def _of_another(row: Row, at: int, other: int) -> bool:
    """Whether a piece is named between the two: each is of its own."""
    return any(item.concept.startswith("K_") or item.concept in ("FITTING", "NUMBER", "MARKED") for item in row.items[min(at, other) : max(at, other)])


def _shown(row: Row, at: int, language: Language) -> bool:
    """ "The inspector put his probe in straight 15 and got 260": what was read is so, whoever held what it was read on."""
    first = row.sentence_start(at)
    lead = plain(row.text[row.items[first].start : row.items[at].start])
    return word(language.code, "told.wanted.instrument").search(lead) is not None and NOT_READ.isdisjoint(item.concept for item in row.items[first:at])


def _hottest(row: Row, at: int, hot: list[int]) -> int:
    """ "180, 182, 181": of what was read one after another, the most."""
    last = at
    while last + 2 in hot and row.items[last + 1].concept in ("COMMA", "AND", "THEN"):
        last += 2
    return max(range(at, last + 1, 2), key=lambda k: row.items[k].value.value)


def _is_hot(item) -> bool:
    low, high = (HOT, _HOTTEST) if item.concept != "NUM" else _BARE
    return low <= item.value.value <= high


def _told_of_the_air(row: Row, first: int, at: int, last: int, language: Language) -> bool:
    """Whether a bare number is how hot: behind the air, or what warms it, and a word of its being so."""
    before = row.items[at - 1].concept if at else ""
    if before.startswith("K_") or before in _NAMES or row.items[at].concept == "NUM" and at + 1 < last and row.items[at + 1].concept in ("BY", "LEN", "CFM", "FT2", "NUM", "LONG"):
        return False
    lead = plain(row.text[row.items[first].start : row.items[at].start]).rstrip()
    behind = plain(row.text[row.items[at].end : row.items[last - 1].end])
    return word(language.code, "told.wanted.heats").search(lead) is not None or word(language.code, "told.wanted.heats_behind").match(behind) is not None
