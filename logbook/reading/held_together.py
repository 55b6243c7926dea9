"""What belongs to the words right before it, where a note without signs is given some: "half | taped", "the tape | I used", "claims | straight 9 is taped".

A sign between such two tells something that nobody said, so it is asked here before one is put.
"""

from __future__ import annotations

from logbook.languages.run_on import RunOn
from logbook.reading.items import concept_at
from logbook.reading.kinds import KIND_CONCEPTS

_KINDS = frozenset(KIND_CONCEPTS)
_ENDS = frozenset(("COMMA", "STOP", "QUERY"))
_SHARED = frozenset("STAPLED TAPED RUBBED WIPED TRIMMED SEATED REPAIRED PREHEATED BENT CLINCHED VANES TAPE STAPLES TABS".split())
_ACTS = frozenset("STAPLED TAPED RUBBED WIPED TRIMMED".split())
_SAID = _SHARED | frozenset("NUM LEN FRAC DEG DAMAGE GAP HUNG YET LATER NO NOT MARK181 C_MASTIC CLOSURE FIX LEVEL".split())
_NAMES = frozenset("DET NUM OF ON TAPE STAPLES VANES TABS SIDE SIDE_WORD JOINT ONE_SIDE WORD FRAC RUBBED STAPLED".split()) | _KINDS
_OF_A_LENGTH = frozenset("OFFSETS K_OFFSET OPENING".split())
_OF_A_SIZE = frozenset("BRANCH_WORD INLET K_BRANCH".split())


def begin(items, at: int, signs) -> int:
    """The first item of the stretch that this one stands in."""
    while at > 0 and at not in signs and items[at - 1].concept not in _ENDS:
        at -= 1
    return at


def held(items, said, at: int, signs, words: RunOn) -> bool:
    before, concept, earlier = items[at - 1].concept, items[at].concept, concept_at(items, at - 2)
    last = said[at - 1].split()[-1]
    if concept in _SHARED:
        return is_share(items, said, at - 1, words) or _is_asked(items, said, at, signs, words) or concept in _ACTS and (_is_one_of_several(items, at, signs) or _is_tried(items, said, at, signs, words))
    if concept in _KINDS and concept != "K_OFFSET":
        return last in words.claims or at == 1 and before in ("VANES", "TAPE", "STAPLES") or before == "WORD" and not _has_told(items, said, begin(items, at - 1, signs), at, words) or before in _ACTS and _acts_come_first(items)
    if concept == "NO":
        return said[at].split()[0] in words.lacking
    if concept == "NUM":
        return before == "DOUBT" or before == "SHOWS" and earlier == "DRAWING" or before == "LEN" and concept_at(items, at + 1) == "BOARD" or before == "RUBBED" and not any(item.concept in _KINDS for item in items[:at])
    if concept == "DRAWING":
        return before == "IT"
    if concept in ("DEG", "FT2", "CFM"):
        return before == "NUM" and earlier in ("BE", "LEN", "CFM", "DEG")
    if concept in _OF_A_LENGTH and before == "LEN":
        return True
    if concept in _OF_A_SIZE and before == "NUM":
        return earlier == "BY" and concept_at(items, at - 4) == "DET"
    if concept == "LEVEL" and before == "NUM":
        return earlier == "SIDE"
    if concept == "DET":
        return before == "IN_PLACE" and last in words.within or last in words.takers
    if concept == "OTHER" and is_share(items, said, at - 1, words):
        return True
    if concept in ("I", "WILL", "OTHER") or concept in ("HAVE", "FILLER") and said[at].split()[0] in words.people:
        return last in words.claims or _is_fronted(items, at, signs)
    return concept == "BE" and said[at] in words.relative and earlier == "DET"


def is_share(items, said, at: int, words: RunOn) -> bool:
    """ "half", "about three quarters", "partly", "half of it": how much of it the next word is true of."""
    if said[at] in words.shares or said[at].split()[-1] in words.partly:
        return True
    return items[at].concept == "IT" and concept_at(items, at - 1) == "OF" and said[at - 2] in words.shares


def _is_asked(items, said, at: int, signs, words: RunOn) -> bool:
    """ "is straight 9 | rubbed"."""
    first = begin(items, at - 1, signs)
    return said[first] in words.asking and all(item.concept in _KINDS or item.concept == "NUM" for item in items[first + 1 : at])


def _is_one_of_several(items, at: int, signs) -> bool:
    """ "straight 4 taped, 5 | taped": a number alone is a piece."""
    return items[at - 1].concept == "NUM" and begin(items, at - 1, signs) == at - 1 and concept_at(items, at - 2) in (*_ENDS, *_ACTS) and any(item.concept in _ACTS for item in items[: at - 1])


def _is_tried(items, said, at: int, signs, words: RunOn) -> bool:
    """ "stapled | taped couldn't reach the back", "four sides stapled | taped": in one breath, and what stands around them is of both."""
    first = begin(items, at - 1, signs)
    if first == at - 2 and items[first].concept == "NUM" and items[at - 1].concept == "SIDE_WORD":
        return True
    return items[at - 1].concept in _ACTS and (concept_at(items, at - 2) == "SIDE_WORD" or concept_at(items, at + 1) == "NOT" and said[at + 1] in words.auxiliaries)


def _has_told(items, said, first: int, at: int, words: RunOn) -> bool:
    """Whether anything was told that a new piece can stand behind."""
    return said[at - 1] in words.closers or any(item.concept in _SAID for item in items[first:at])


def _acts_come_first(items) -> bool:
    """ "stapled straight 5 and taped | straight 6": the piece stands behind its act."""
    return next((item.concept in _ACTS for item in items if item.concept in _ACTS or item.concept in _KINDS), False)


def _is_fronted(items, at: int, signs) -> bool:
    """ "the last seam | I'll get tomorrow": what stands before him is what he did it to."""
    first = begin(items, at - 1, signs)
    stretch = [item.concept for item in items[first:at]]
    return "DET" in stretch[:1] and len(stretch) < 6 and _NAMES.issuperset(stretch) or stretch[:1] == ["ONE_SIDE"] or stretch in (["TAPE"], ["STAPLES"], ["VANES"])
