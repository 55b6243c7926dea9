"""A part that was left out where another was done: "the left seam I rubbed, the right seam I didn't", "I patched the flange one, not the other", "the flap I trimmed, the insulation I did not"."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention
from logbook.reading.words.likely import Likely
from logbook.reading.words.tokens import plain

_ACTS = ("stapled", "taped", "rubbed_down", "surface_clean", "trimmed", "tabs_bent")
_MENDED = "damage_repaired"
_TO_DO = frozenset(("RUB", "TAPE_IT", "STAPLE", "WIPE", "TRIM", "HEAT_IT", "REPAIR_IT"))  # "the top side I couldn't reach to rub" is not of the tape


def of_the_other_part(row: Row, named: list[Mention], claims: list[Claim], language: Language) -> list[Claim]:
    """The claims, with that of the part that was left out."""
    done = {one.name for one in claims if one.value is True}
    if not language.all_but.left_out_part or done.isdisjoint((*_ACTS, _MENDED)):
        return claims
    said, made, code = plain(row.text), claims, language.code
    for member in ("left_out_part", "left_out_told") if not done.isdisjoint(_ACTS) else ():
        for match in _pattern(code, member).finditer(said):
            made = _left_out(row, named, made, match, _ACTS, language)
    for member in ("left_out_harm", "only_one") if _MENDED in done else ():
        for match in _pattern(code, member).finditer(said):
            made = _left_out(row, named, made, match, (_MENDED,), language)
    return made


def _left_out(row: Row, named: list[Mention], claims: list[Claim], match: re.Match[str], acts: tuple[str, ...], language: Language) -> list[Claim]:
    inside = [at for at, item in enumerate(row.items) if item.start < match.end("of") and match.start("of") < item.end]
    if not inside:
        return claims
    first, last = inside[0], inside[-1] + 1
    if any(first <= one.first < last and one.mark is not None for one in named) or any(item.concept == "NUM" and item.value.value > (3 if match.groupdict().get("part", "") is None else 1) or item.concept == "MARKED" for item in row.items[first:last]):
        return claims  # "not the one in 12"
    begin, end = row.sentence_start(first), row.sentence_end(first)
    told = [one for one in claims if one.value is True and one.name in acts]
    clause = max((at + 1 for at in range(begin, first - 1) if row.items[at].concept in ("COMMA", "BUT")), default=begin)  # the one right before
    here = [one for one in told if first <= one.first < last] if "told" in match.groupdict() else [one for one in told if clause <= one.first < first] or [one for one in told if begin <= one.first < end and acts == (_MENDED,)]
    here = here or _of_so_many(row, told, begin, first, language) or ([] if _TO_DO & {item.concept for item in row.items[first:last]} else _told_before(row, told, match, begin))
    if not here or _seen_to(row, match, here, language):
        return claims
    if len({one.mark for one in named if one.mark is not None}) > 1 and match.groupdict().get("part", "") is None and match.groupdict().get("parts") is None:
        return claims  # "the other two I never got to": pieces
    if match.groupdict().get("part", "") is None and match.groupdict().get("parted") is None and match.groupdict().get("parts") is None and _pattern(language.code, "a_part").search(plain(row.words(begin, first))) is None:
        return claims  # "taped 31, the other I didn't": another piece
    latest = max(one.first for one in here)
    left = {one.name: one for one in here}
    between = {DENIED[row.items[at].concept][0] for at in range(latest, first) if row.items[at].concept in DENIED}
    if any(name in acts and name not in left for name in between):
        return claims  # what is denied last is another act
    left = {name: one for name, one in left.items() if not any(other.value is False and other.name == name and begin <= other.first < end for other in claims)}
    return [*claims, *(claim(row, name, False, first, last, hedged=one.hedged, part="side", corrects=True) for name, one in left.items())] if left else claims


def _told_before(row: Row, told: list[Claim], match: re.Match[str], begin: int) -> list[Claim]:
    """ "Taped and rubbed. The left end I didn't manage.": what the sentence before ends with, where a part begins this one."""
    if match.groupdict().get("part", "") in (None, "") or begin < 2 or row.items[begin - 1].concept != "STOP":
        return []
    before = row.sentence_start(begin - 2)
    clause = max((at + 1 for at in range(before, begin - 1) if row.items[at].concept in ("COMMA", "BUT") and any(at < one.first < begin for one in told)), default=before)
    return [one for one in told if clause <= one.first < begin]


def _of_so_many(row: Row, told: list[Claim], begin: int, first: int, language: Language) -> list[Claim]:
    """ "Rubbed the first two and then I got a call, never got back to the other two": of those that were counted, whatever came between."""
    latest = max((one for one in told if begin <= one.first < first), key=lambda one: one.first, default=None)
    counted = latest is not None and _pattern(language.code, "so_many").search(plain(row.words(latest.first, first))) is not None
    return [latest] if counted else []


@cache
def _pattern(code: str, member: str) -> Likely:
    return Likely(getattr(LANGUAGES[code].all_but, member))


def _seen_to(row: Row, match: re.Match[str], here: list[Claim], language: Language) -> bool:
    """ "The back I couldn't reach. Pete got it": somebody did since; not where the words behind name another act, "patched the hole, not the dent. Taped it."."""
    seen = _pattern(language.code, "seen_to").match(plain(row.text[match.end() :]))
    if seen is None:
        return False
    until = match.end() + seen.end()
    named = {DENIED[item.concept][0] for item in row.items if match.end() <= item.start < until and item.concept in DENIED}
    return not named or not named.isdisjoint(one.name for one in here)
