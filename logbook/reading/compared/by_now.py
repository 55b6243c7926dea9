"""Work that was not done then and is now: "the tabs weren't bent when he came by. They're all bent now", "half taped at lunch, finished it at one".

What he tells of a time that is past and what he did since are no contradiction, and nothing is left open.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.another_part import of_another_part
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.parts import Part
from logbook.reading.words.phrasing import apart, finds, valued, word
from logbook.reading.words.tokens import plain

_ACTS = frozenset("stapled taped rubbed_down trimmed tabs_bent vanes cross_tabs surface_clean".split())
_BEHIND = 40  # letters
_ALL_SIDES = 4
_AHEAD = 4  # parts


def by_now(row: Row, cut_up: tuple[Part, ...], claims: list[Claim], language: Language) -> list[Claim]:
    lacked = [one for one in claims if one.value is False and one.name in _ACTS and not one.corrects and not one.hedged]
    if not lacked or not language.thoughts.done_since:
        return claims
    made = list(claims)
    for old in lacked:
        if any(c.name == f"sides_{old.name}" and c.value < _ALL_SIDES for c in claims):
            continue  # "three sides are taped now"
        later = next((c for c in made if c.name == old.name and c.value is True and c.first >= old.last and not c.hedged and not _another(row, old, c.first)), None)
        if later is not None and not of_another_part(row, old.first, later.first, since=False) and (_now(row, later, language) or _good_now(row, later, language) or _set_right(row, old, later, language)):
            made = [replace(c, corrects=True) if c is later else c for c in made if later.name != "rubbed_down" or not _did_not_show(c, later)]
        elif later is None and (since := _done_since(row, cut_up, old, language)) is not None:
            made.append(since)
    return made


def _now(row: Row, one: Claim, language: Language) -> bool:
    """ "All taped now", "taped as of two o'clock", "now it's taped"."""
    behind = plain(row.text[one.end : one.end + _BEHIND]).split(".")[0].split(",")[0]
    before = plain(row.text[max(row.items[row.sentence_start(one.first)].start, one.start - _BEHIND) : one.start]).split(",")[-1]
    if any(finds(apart(language.code, "thoughts.by_now"), said) is not None for said in (behind, before)):
        return True
    return bool(language.thoughts.gone_back) and finds(apart(language.code, "thoughts.gone_back"), before.rstrip()) is not None and word(language.code, "thoughts.done_to_it").match(plain(row.text[one.end : one.end + _BEHIND])) is not None


def _good_now(row: Row, one: Claim, language: Language) -> bool:
    """ "Got a new roll and taped it, done", "went over it with the squeegee, and now it shows everywhere": what he says of it behind tells that it was lacking no more."""
    behind = plain(row.text[one.end : row.items[row.sentence_end(one.last - 1) - 1].end]) if one.last <= len(row.items) else ""
    return any(pattern.match(behind) for pattern in apart(language.code, "thoughts.good_now")) or any(pattern.search(plain(row.text[one.start : one.end])) for pattern in apart(language.code, "thoughts.at_once"))


def _set_right(row: Row, old: Claim, one: Claim, language: Language) -> bool:
    """ "I found straight 63 isn't taped on the back. I taped it." """
    first = row.sentence_start(one.first)
    if first <= old.last - 1 or not any(pattern.search(plain(row.words(row.sentence_start(old.first), old.last))) for pattern in apart(language.code, "thoughts.came_upon")):
        return False
    said = plain(row.words(first, row.sentence_end(one.last - 1)))
    return any(pattern.match(said) for pattern in apart(language.code, "thoughts.set_right"))


def _did_not_show(one: Claim, later: Claim) -> bool:
    return one.name == "scrim_shows" and one.value is False and one.last <= later.first and not one.hedged


def _done_since(row: Row, cut_up: tuple[Part, ...], old: Claim, language: Language) -> Claim | None:
    """Words of what he did since, that do not name the act or are no act by themselves."""
    place = next((k for k, part in enumerate(cut_up) if part.first <= old.first < part.last), None)
    if place is None:
        return None
    metal = old.name == "cross_tabs" and any(item.concept == "K_COLLAR" for item in row.items)  # "the tabs weren't bent": of a collar they are its own
    name = "tabs_bent" if metal else old.name
    then = finds(apart(language.code, "thoughts.back_then"), plain(row.words(row.sentence_start(old.first), row.sentence_end(old.last - 1)))) is not None
    for part in cut_up[place + 1 : place + 1 + _AHEAD]:
        if part.sentence > cut_up[place].sentence + 1 or _another(row, old, part.last):
            return None
        for pattern, names in valued(language.code, "thoughts.done_since"):
            if (name in names if names else then) and (match := pattern.match(part.words)) is not None and len(part.words) - match.end() < 2:
                return claim(row, old.name, True, part.first, part.last, corrects=True, hedged=False, weak=metal)
    return None


def _another(row: Row, old: Claim, last: int) -> bool:
    """Whether a piece is named up to there that the first words are not of: "couldn't finish taping straight 31" names its own behind them."""
    named = [at for at in range(min(last, len(row.items) - 1)) if _names_a_piece(row, at)]
    behind = [at for at in named if at >= old.first]
    return len(behind) > (len(behind) == len(named) or any(at < old.last for at in behind))


def _names_a_piece(row: Row, at: int) -> bool:
    concept = row.items[at].concept
    return (concept.startswith("K_") or concept == "FITTING") and row.items[at + 1].concept in ("NUM", "MARKED")
