""" "No tape lifting", "none of the staples went inward", "isn't short a staple": the thing is there; only how it might have come out is denied."""

from __future__ import annotations

from logbook.reading.clauses.grammar import VOID, Row
from logbook.reading.words.phrasing import words_of

_THINGS = ("TAPE", "STAPLES", "STAPLE", "TABS", "VANES", "SCREWS")
_PLACES = ("ON", "IN", "DET", "FITTING", "NUMBER", "NUM", "MARKED")
_BETWEEN = ("MOVE", "BE", "HAVE", "HAVING", "THIS", "FILLER", "THROUGH", "UP")
_MEASURES = ("LEN", "NUM", "FRAC")
_TURNED = ("CLINCHED", "BENT", "TURNING")
_FAR = 4  # items


def only_how(row: Row, begin: int, at: int, last: int) -> int | None:
    """Past the words that tell how the thing at `at`, of which the "no" at `begin` tells, is not; None where it is not there at all."""
    if row.items[begin].concept != "NO" or row.items[at].concept not in _THINGS:
        return None
    ways = words_of("small.how_it_sits")
    if begin + 2 == at and row.words(begin + 1, at).lower() in ways:
        return at + 1  # "no loose staples"
    if any(row.items[k].concept not in ("DET", "OF", "ONLY", "WORD") for k in range(begin + 1, at)):
        return None
    k = past = _past_piece(row, at + 1, last)
    while k < min(last, past + _FAR) and row.items[k].concept in _BETWEEN and row.words(k, k + 1).lower() not in ways:
        k += 1
    if k >= last:
        return None
    concept, said = row.items[k].concept, row.words(k, k + 1).lower().split()
    ahead = row.items[k + 1].concept if k + 1 < last else ""
    spaced = concept in _MEASURES and ahead == "APART" or concept in ("APART", "EVERY") and k > past
    turned = concept in _TURNED and row.items[at].concept != "TABS"
    held = concept == "WITH" and ahead not in ("DET", "")  # "no tape with wrinkles"; "no tape with me"
    if spaced or turned or concept in ("UNDONE", VOID) or held and row.words(k + 1, k + 2).lower() in words_of("small.flaws") or said[0] in ways or " ".join(said) in ways or concept in ("MOVE_IN", "MOVE_OUT") and (said[-1] in ways or concept == "MOVE_OUT"):
        return k + 1
    return None


def not_so(row: Row, thing: str, at: int, last: int) -> int | None:
    """ "The tape's not lifting", "the vanes aren't bent", "staples aren't too far apart": past the fault that the thing has not, behind its "not"; None where what is denied is the thing. Tabs that are not bent are a fault."""
    k = at
    while k < last and row.items[k].concept in ("BE", "FILLER", "HAVE", "ALL") and row.words(k, k + 1).lower() not in ("too", *words_of("small.how_it_sits")):
        k += 1
    said = row.words(k, k + 1).lower().split()[0] if k < last else ""
    faulty = said == "too" or said in words_of("small.how_it_sits") and said not in _AS_IT_SHOULD
    return k + 1 if faulty and not (thing == "TABS" and row.items[k].concept in _TURNED) else None


_AS_IT_SHOULD = ("turned", "clinched", "outward", "outwards", "missing", "skipped", "folded", "half")  # "not folded over", "the staples aren't turned out"


def _past_piece(row: Row, at: int, last: int) -> int:
    """Past "on straight 16" in "none of the staples on straight 16 went inward"."""
    k = at
    if k >= last or row.items[k].concept not in ("ON", "IN") or row.words(k, k + 1).lower() in words_of("small.how_it_sits"):
        return at
    while k < last and (row.items[k].concept in _PLACES or row.items[k].concept.startswith("K_")):
        k += 1
    return k if k > at + 1 and row.items[k - 1].concept in ("NUM", "MARKED") else at


def lacks_none(row: Row, begin: int, last: int) -> int | None:
    """The thing of which a piece is "not short": "isn't short a staple", "not lacking any tape"."""
    if row.items[begin].concept != "NOT":
        return None
    at = begin + 1
    while at < last and row.items[at].concept in ("BE", "HEDGE", "FILLER"):
        at += 1
    if at >= last or row.words(at, at + 1).lower() not in words_of("small.lacks"):
        return None
    at += 1
    while at < last and (row.items[at].concept in ("DET", "OF", "ON", "NUM") or row.words(at, at + 1).lower() in words_of("small.any_one")):
        at += 1
    return at if at < last and row.items[at].concept in _THINGS else None


def of_the_joint(row: Row, first: int, last: int) -> bool:
    """ "The joint is loose", "that seam's not tight": told of where two parts meet, whatever was done before."""
    at = first
    while at < last and row.items[at].concept in ("DET", "THIS", "AND", "BUT", "FILLER"):
        at += 1
    while at < last and row.items[at].concept in ("JOINT", "SIDE", "THROAT", "END"):
        if row.items[at].concept == "JOINT" and not words_of("small.joints").isdisjoint(row.words(at, at + 1).lower().split()):
            return True
        at += 1
    return False
