"""What is not done to several pieces that are named one after another, each with its own kind: "straight 4 and elbow 5 aren't taped", "no staples in tee 6 or tee 7", "straight 4 taped, tee 5 taped, neither one stapled"."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of

_JOINS = ("AND", "OR", "COMMA", "DET")
_DENIES = ("NOT", "NO", "PENDING", "NOT_DONE", "NEED", "MISSING", "FORGOT")
_LEADS = ("COMMA", "ON", "IN", "OF", "THROUGH")
_ACTS = ("stapled", "taped", "rubbed_down", "vanes", "trimmed", "surface_clean", "tabs_bent", "cross_tabs", "staple_flap")


def of_all(row: Row, named, claims: list[Claim]) -> list[Claim]:
    """The claims again, on each of the other pieces of its list."""
    denied = [one for one in claims if one.value is False and one.name in _ACTS and one.for_mark is None] if len(named) > 1 else []
    made: list[Claim] = []
    for one in denied:
        if row.words(one.first, one.first + 1).lower() in words_of("small.none_of_all") and (not one.first or row.items[one.first - 1].concept not in ("NUM", "MARKED")):  # but "nine doesn't, and eleven neither"
            made += [replace(one, first=piece.last - 1, last=piece.last, uses=()) for piece in named if piece.mark is not None and piece.last <= one.first][:-1]
    for listed in _lists(row, named) if denied else ():
        for one in denied:
            if _ahead(row, one, listed):
                others = listed[1:] if one.last <= listed[-1].first else listed
            elif _behind(row, one, listed):
                others = listed[:-1]
            else:
                continue
            made += [replace(one, first=piece.last - 1, last=piece.last, uses=()) for piece in others]
    return made


def _lists(row: Row, named):
    """Pieces with nothing but a comma, "and" or "or" between them."""
    listed = []
    for one in named:
        between = ["OR" if item.concept == "NOT" and row.text[item.start : item.end].lower() == "ni" else item.concept for item in row.items[listed[-1].last : one.first]] if listed else []
        if listed and one.mark is not None and one.kind is not None and between and set(between) <= set(_JOINS):
            listed.append(one)
            continue
        if len(listed) > 1:
            yield listed
        listed = [one] if one.mark is not None and one.kind is not None else []
    if len(listed) > 1:
        yield listed


def _ahead(row: Row, one: Claim, listed) -> bool:
    """ "Not stapled: straight 4 and tee 5", "still to tape: straight 4 and elbow 5"."""
    first = listed[0].first
    if one.first >= first or any(row.items[at].concept in ("STOP", "QUERY") for at in range(one.first, first)):
        return False
    last = min(one.last, first)
    between = row.items[last:first]
    if any(item.concept == "COMMA" and row.text[item.start] == "," for item in between):
        return False  # "not stapled, straight 4 and tee 5": he goes on
    return all(item.concept in _LEADS for item in between) and _ends(row, listed[-1].last)


def _behind(row: Row, one: Claim, listed) -> bool:
    """ "Straight 4 and elbow 5 aren't taped", "straight 4 and elbow 5 still need tape": said of several."""
    at = listed[-1].last
    if not at <= one.first <= at + 1 or row.items[at].concept not in (*_DENIES, "BE", "HAVE", "HAVING", "BOTH", "FILLER"):
        return False
    said = row.words(at, one.first + 1).lower().split()
    opens = listed[0].first == row.sentence_start(listed[0].first) or row.items[listed[0].first - 1].concept in ("COMMA", "ON", "DET", "BOTH")
    return not words_of("small.several_lack").isdisjoint(said) or opens and not words_of("small.some_lack").isdisjoint(said)


def _ends(row: Row, at: int) -> bool:
    return at >= len(row.items) or row.items[at].concept in ("STOP", "QUERY", "COMMA", "BUT", "AND", "ON", "RUN", "BECAUSE", "WORD")
