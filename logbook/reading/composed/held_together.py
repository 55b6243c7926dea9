"""What belongs to the words right before it, where a note without signs is given some: "half | taped", "the tape | I used", "claims | straight 9 is taped".

A sign between such two tells something that nobody said, so it is asked here before one is put.
"""

from __future__ import annotations

from logbook.languages.run_on import RunOn
from logbook.reading.words.items import concept_at
from logbook.reading.words.kinds import KIND_CONCEPTS

_KINDS = frozenset(KIND_CONCEPTS)
_ENDS = frozenset(("COMMA", "STOP", "QUERY"))
_SHARED = frozenset("STAPLED TAPED RUBBED WIPED TRIMMED SEATED REPAIRED PREHEATED BENT CLINCHED VANES TAPE STAPLES TABS".split())
_ACTS = frozenset("STAPLED TAPED RUBBED WIPED TRIMMED".split())
_SAID = _SHARED | frozenset("NUM LEN FRAC DEG DAMAGE GAP HUNG YET LATER NO NOT MARK181 C_MASTIC CLOSURE FIX LEVEL".split())
_NAMES = frozenset("DET NUM OF ON TAPE STAPLES VANES TABS SIDE SIDE_WORD JOINT ONE_SIDE WORD FRAC CLOSURE RUBBED STAPLED".split()) | _KINDS
_OPENS = frozenset("OF ON IN LATER".split())  # "per the plans", "in real life", "tomorrow": what follows is the sentence
_OF_A_SIZE = frozenset("BRANCH_WORD INLET K_BRANCH".split())


def begin(items, at: int, signs) -> int:
    """The first item of the stretch that this one stands in."""
    while at > 0 and at not in signs and items[at - 1].concept not in _ENDS:
        at -= 1
    return at


def held(items, said, at: int, signs, words: RunOn) -> bool:
    before, concept, earlier = items[at - 1].concept, items[at].concept, concept_at(items, at - 2)
    first = begin(items, at - 1, signs)
    if concept in _SHARED:
        return _is_with_its_act(items, said, first, at, words)
    if concept in _KINDS:
        return concept != "K_OFFSET" and _is_its_piece(items, said, first, at, words) or concept == "K_OFFSET" and before == "LEN"
    if concept == "NUM":
        return _is_its_number(items, said, first, at, words)
    if concept == "NO":
        return said[at].split()[0] in words.lacking
    if concept == "NOT":
        return before == "TRADE_NOISE" or before == "REPAIRED" and earlier == "DET"
    if concept == "DRAWING":
        return before == "IT" or earlier == "DET"
    if concept in ("DEG", "FT2", "CFM"):
        return before == "NUM" and earlier in ("BE", "LEN", "CFM", "DEG")
    if concept in ("OFFSETS", "OPENING"):
        return before == "LEN" or earlier == "BY" and concept_at(items, at - 4) == "DET"
    if concept in _OF_A_SIZE and before == "NUM":
        return earlier == "BY" and (concept_at(items, at - 4) == "DET" or not _is_named(items, at))
    if concept in ("LEVEL", "EVERY") and before == "NUM":
        return earlier == "SIDE" if concept == "LEVEL" else earlier in _KINDS and any(item.concept in _SHARED for item in items[first:at])
    if concept == "SIDE":
        return before == "LEN" and said[at].split()[0] in words.each
    if concept == "LEN":
        return before in _ACTS and said[at - 1].split()[-1] in words.across and concept_at(items, at + 1) == "DAMAGE"
    if concept in ("ALL", "BOTH"):
        return before == "NUM" and items[first].concept in ("STAPLES", "TABS", "VANES", "SCREWS")
    return _is_his(items, said, first, at, words)


def _is_his(items, said, first: int, at: int, words: RunOn) -> bool:
    """Whether what stands before belongs to who or what begins here: "in real life | it's not", "the tape | I used"."""
    before, concept, earlier, last = items[at - 1].concept, items[at].concept, concept_at(items, at - 2), said[at - 1].split()[-1]
    if concept == "DET":
        return before == "IN_PLACE" and last in words.within or last in words.takers or before == "TAPE" and at - 1 == first or before in _ACTS and concept_at(items, at + 1) == "NUM" and concept_at(items, at + 2) == "I"
    person = concept in ("I", "WILL", "OTHER") or concept in ("HAVE", "FILLER") and said[at].split()[0] in words.people
    if not person and concept not in ("BE", "IT"):
        return False
    if said[at] in words.him or items[first].concept in _OPENS and at - first < 5 and not any(item.concept in _SHARED or item.concept in _KINDS for item in items[first:at]) or before == "DAY" and at - first < 3:
        return True
    if person:
        one = before == "NUM" and (earlier == "DET" or earlier == "WORD" and said[at - 1] in words.one)
        return last in words.claims or one or at - 1 == first and before == "NUM" or before == "IT" and earlier == "BUT" or is_share(items, said, at - 1, words) or _is_fronted(items, first, at) or before in ("TAPE", "STAPLES") and earlier == "QUESTION" or before == "LEN" and earlier == "BE"
    return said[at] in words.relative and (earlier == "DET" or any(item.concept == "NOT" for item in items[first:at]))


def _is_with_its_act(items, said, first: int, at: int, words: RunOn) -> bool:
    before, concept = items[at - 1].concept, items[at].concept
    if is_share(items, said, at - 1, words) or _is_asked(items, said, first, at, words):
        return True
    if concept in _ACTS:
        if before in ("SIDE", "BACK", "SIDE_WORD", "JOINT", "END") and any(item.concept in ("ALL_BUT", "EXCEPT") for item in items[max(first, at - 3) : at]):
            return True  # "all but the back | stapled"
        return before == "SIDE_WORD" and first == at - 1 or _is_one_of_several(items, said, first, at, words) or _is_tried(items, said, first, at, words)
    return concept == "TAPE" and before == "WIDE"


def _is_its_piece(items, said, first: int, at: int, words: RunOn) -> bool:
    """ "I didn't staple | straight 9", "claims | straight 9 is taped", "no staples | in cap 7"."""
    before, last = items[at - 1].concept, said[at - 1].split()[-1]
    if last in words.claims or at == 1 and before in ("VANES", "TAPE", "STAPLES") or said[at].split()[0] in words.within or before == "ROOM":
        return True
    if before == "NO":
        return len(said[at - 1].split()) > 1
    if before == "WORD":
        return concept_at(items, at - 2) == "NOT" or not _has_told(items, said, first, at, words)
    if before == "LEN" and concept_at(items, at + 1) not in ("NUM", "NUMBER", "LETTER"):
        return True
    return before in _ACTS and _acts_come_first(items)


def _is_its_number(items, said, first: int, at: int, words: RunOn) -> bool:
    before, earlier, behind = items[at - 1].concept, concept_at(items, at - 2), concept_at(items, at + 1)
    if before == "DAMAGE" and behind in ("JOINT", "SIDE_WORD", "END", "PANEL"):
        return True  # "crushed | one corner"
    if before in ("DOUBT", "SHOULD_HAVE", "BUILDING", "TRADE_NOISE") or before == "SHOWS" and earlier == "DRAWING" or before == "LEN" and behind == "BOARD" or behind == "COUNTED":
        return True
    if before == "FILLER" and earlier == "BE" or before == "VANES" and said[at] in words.zero or said[at] in words.one and earlier == "DET":
        return True
    if before == "WORD" and behind == "BY":
        return earlier == "DET" or earlier == "OTHER" or not _is_named(items, at)
    if before == "NUM" and said[at] in words.right_angles:
        return earlier == "K_STRAIGHT"
    return before == "RUBBED" and not _is_named(items, at) or before == "NUM" and earlier == "IN" and not _is_named(items, at)


def _is_named(items, at: int) -> bool:
    return any(item.concept in _KINDS for item in items[:at])


def is_share(items, said, at: int, words: RunOn) -> bool:
    """ "half", "about three quarters", "partly", "half of it": how much of it the next word is true of."""
    if said[at] in words.shares or said[at].split()[-1] in words.partly:
        return True
    return items[at].concept == "IT" and concept_at(items, at - 1) == "OF" and said[at - 2] in words.shares


def _is_asked(items, said, first: int, at: int, words: RunOn) -> bool:
    """ "is straight 9 | rubbed"."""
    return said[first] in words.asking and all(item.concept in _KINDS or item.concept == "NUM" for item in items[first + 1 : at])


def _is_one_of_several(items, said, first: int, at: int, words: RunOn) -> bool:
    """ "straight 4 taped, 5 | taped", "12 by 12, four | taped": a number alone is a piece, or counts the sides."""
    if items[at - 1].concept != "NUM" or first != at - 1 or said[at - 1] in words.right_angles or not _is_named(items, first):
        return False
    return said[at - 1] in words.so_many_sides or concept_at(items, at - 2) in _ACTS or concept_at(items, at - 2) in _ENDS and concept_at(items, at - 3) in _ACTS


def _is_tried(items, said, first: int, at: int, words: RunOn) -> bool:
    """ "stapled | taped couldn't reach the back", "four sides stapled | taped": in one breath, and what stands around them is of both."""
    if first == at - 2 and items[first].concept == "NUM" and items[at - 1].concept == "SIDE_WORD":
        return True
    return items[at - 1].concept in _ACTS and (concept_at(items, at - 2) == "SIDE_WORD" or concept_at(items, at + 1) == "NOT" and said[at + 1] in words.auxiliaries)


def _has_told(items, said, first: int, at: int, words: RunOn) -> bool:
    """Whether anything was told that a new piece can stand behind."""
    return said[at - 1] in words.closers or any(item.concept in _SAID for item in items[first:at])


def _acts_come_first(items) -> bool:
    """ "stapled straight 5 and taped | straight 6": the piece stands behind its act."""
    return next((item.concept in _ACTS for item in items if item.concept in _ACTS or item.concept in _KINDS), False)


def _is_fronted(items, first: int, at: int) -> bool:
    """ "the last seam | I'll get tomorrow": what stands before him is what he did it to."""
    stretch = [item.concept for item in items[first:at]]
    return "DET" in stretch[:1] and len(stretch) < 6 and _NAMES.issuperset(stretch) or stretch[:1] == ["ONE_SIDE"] or stretch in (["TAPE"], ["STAPLES"], ["VANES"])
