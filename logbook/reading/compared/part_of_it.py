"""An act told of one part and of no other: "rubbed the back", "stapled the ends", "taped the bottom only".

With "only" the act is not done. Without it the words leave open whether the rest is done too: the fact is unsure, and is asked for.
Where another part is named near, or the rest or all of it, the parts are read together elsewhere.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of
from logbook.reading.words.tokens import plain

_ACTS = {"STAPLED": "stapled", "TAPED": "taped", "RUBBED": "rubbed_down", "WIPED": "surface_clean", "TRIMMED": "trimmed"}
_NOUNS = {"STAPLES": "stapled", "TAPE": "taped"}
_PARTS = ("SIDE", "BACK", "END", "SIDE_WORD")
_OTHERS = (*_PARTS, "OTHER_SIDE", "ONE_SIDE", "SIDES_ALL", "ALL", "BOTH", "JOINT", "EXCEPT", "ALL_BUT", "THROAT", "FLAP", "OTHER", "PARTLY")
_OVER = ("", "COMMA", "STOP", "QUERY", "AND", "BUT")
_TELLS_ON = (*_ACTS, *_PARTS, "OTHER_SIDE", "ONE_SIDE", "SIDES_ALL", "ALL", "BOTH", "EXCEPT", "ALL_BUT", "OTHER", "PARTLY", "IT")  # what goes on about the parts, in a sentence behind
_NEAR = 24  # items
_SIGNS = ("COMMA", "STOP", "QUERY", "BUT")
_FOURTH = frozenset(("4th", "3rd"))
_IS = ("is", "are", "was", "were", "got", "gets")


def of_a_part(row: Row, claims: list[Claim]) -> list[Claim]:
    """The claims, those of one part alone unsure or, with "only", not so."""
    claims = _one_of_two(row, claims)
    if not any(item.concept in _PARTS or _is_part(row, at) for at, item in enumerate(row.items)):
        return claims
    return [_as_told(row, one) if one.value is True and one.name in _ACTS.values() else one for one in claims]


def _one_of_two(row: Row, claims: list[Claim]) -> list[Claim]:
    """ "The branch isn't taped, the main is taped all the way around": not one after the other, but one part and the other."""
    for name in _ACTS.values():
        done = [c for c in claims if c.name == name and c.value is True and not c.hedged]
        left = [c for c in claims if c.name == name and c.value is False and not c.pending and not c.part]
        if not done or not left:
            continue
        counted = any(c.name == f"sides_{name}" and c.value < 4 for c in claims)  # "taped three sides, the fourth has no tape"
        on = [parts for c in done if (parts := _named_parts(row, c))]
        claims = [replace(c, part="side") if c in left and counted and _names_a_side(row, c) or c in left and (parts := _named_parts(row, c)) and any(parts.isdisjoint(others) for others in on) and not any(parts & others for others in on) else c for c in claims]
    return claims


def _named_parts(row: Row, one: Claim) -> set[str]:
    """The parts of a piece that are named in the words around a claim, up to the next sign; where none is, in its sentence before it."""
    trimmed = one.name == "trimmed"
    first, last = _around(row, one, (*_SIGNS, "AND") if trimmed else _SIGNS)
    return _parts_in(row, first, last, trimmed) or _parts_in(row, row.sentence_start(one.first), last, trimmed)


def _around(row: Row, one: Claim, signs: tuple[str, ...]) -> tuple[int, int]:
    """The items around a claim, up to the next of these on either side."""
    first, last = one.first, one.last
    while first > 0 and row.items[first - 1].concept not in signs:
        first -= 1
    while last < len(row.items) and row.items[last].concept not in signs:
        last += 1
    return first, last


def _names_a_side(row: Row, one: Claim) -> bool:
    """Whether a side is named beside a claim."""
    first, last = _around(row, one, (*_SIGNS, "AND"))
    return any(row.items[at].concept in ("SIDE", "BACK", "OTHER_SIDE", "ONE_SIDE") or row.words(at, at + 1).lower() in words_of("small.ordinals") | _FOURTH for at in range(first, last))


def _parts_in(row: Row, first: int, last: int, trimmed: bool) -> set[str]:
    return set(plain(row.words(first, last)).replace("'", " ").split()) & words_of("small.trimmed_parts" if trimmed else "small.part_names")


def _as_told(row: Row, one: Claim) -> Claim:
    act = next((at for at in range(one.first, min(one.last, len(row.items))) if {**_ACTS, **_NOUNS}.get(row.items[at].concept) == one.name), None)
    if act is None or " " in row.words(act, act + 1) and row.words(act, act + 1).lower().split()[0] not in _IS:  # "taped it up top": where he stood
        return one
    before = _of_part_before(row, one, act) if row.items[act].concept in _ACTS else None
    return before or _of_part_behind(row, one, act) or one


def _of_part_before(row: Row, one: Claim, act: int) -> Claim | None:
    """ "The back is rubbed", "got the back rubbed"."""
    part = act - 1
    while part > 1 and row.items[part].concept in ("BE", "HAVE", "FILLER"):
        part -= 1
    if part > 2 and row.items[part].concept in ("NUM", "MARKED"):  # "the top of 30 is taped"
        named = part - 1
        while named > 1 and (row.items[named].concept in ("NUMBER", "FITTING", "DET") or row.items[named].concept.startswith("K_")):
            named -= 1
        part = named - 1 if row.items[named].concept in ("OF", "ON") else part
    part -= part > 1 and row.items[part].concept == "SIDE_WORD" and row.items[part - 1].concept in ("SIDE", "BACK")
    just_the = part > 0 and row.items[part - 1].concept == "ONLY"  # "just the ends": with its article in it
    if part < 1 or not just_the and row.items[part - 1].concept != "DET" and not (row.items[part].concept == "SIDE" and row.items[part - 1].concept in _SIGNS) or not _is_one(row, part) or not _is_over(row, act + 1):
        return None
    is_so = row.words(act, act + 1).lower().split()[0] in _IS  # "is taped" is one item
    if part < act - 1 and _concept(row, act - 1) == "SIDE_WORD" or act - part == 1 and not is_so and _concept(row, part - 2) != "HAVE":
        return None  # "missed a couple on the back side taped": run together
    only = just_the or part > 1 and row.items[part - 2].concept == "ONLY"
    made = _told(row, one, only, range(max(0, part - _NEAR), part), range(act + 1, act + 1 + _NEAR))
    lead = part - 1 if just_the else part - 2
    return made if made is None or not only or not is_so else replace(made, first=lead, start=row.items[lead].start)


def _of_part_behind(row: Row, one: Claim, act: int) -> Claim | None:
    """ "Rubbed the back", "taped the bottom only"."""
    part = act + 1
    only = row.items[act - 1].concept == "ONLY" if act else False
    while _concept(row, part) in ("DET", "ON", "ONLY", "FILLER"):
        only = only or row.items[part].concept == "ONLY"
        part += 1
    if one.name in _UNCOUNTED and _concept(row, part) == "SIDE" and (told := _of_some_sides(row, one, act, part)) is not None:
        return told
    bare = part == act + 1 and _concept(row, part) in ("BACK", "END", "SIDE_WORD")  # "taped back", "taped end to end"
    if bare or not _is_one(row, part):
        return None
    end = part + 1
    end += _concept(row, part) == "SIDE" and _concept(row, end) == "JOINT"
    while _concept(row, end) in ("SIDE_WORD", "ONLY"):
        only = only or row.items[end].concept == "ONLY"
        end += 1
    if _concept(row, end) not in _OVER:
        return None
    return _told(row, one, only, range(max(0, act - _NEAR), act), range(end, end + _NEAR))


_UNCOUNTED = ("rubbed_down", "surface_clean")  # of the others the sides are counted


def _of_some_sides(row: Row, one: Claim, act: int, part: int) -> Claim | None:
    """ "Rubbed the top and both sides": of the bottom nothing is said."""
    end, sides = part, set()
    while _concept(row, end) in ("SIDE", "AND", "COMMA", "DET") and _concept(row, end + 1) != "WORD":
        sides.update(row.items[end].value if row.items[end].concept == "SIDE" else ())
        end += 1
    while _concept(row, end - 1) in ("AND", "COMMA", "DET"):
        end -= 1
    if len(sides) != 3 or _concept(row, end) not in _OVER:
        return None
    near = (*range(max(0, act - _NEAR), act), *range(end, min(len(row.items), end + _NEAR)))
    told = any(row.items[at].concept in ("RUBBED", "WIPED", "OTHER_SIDE", "SIDE", "OTHER", "EXCEPT", "ALL_BUT") or row.words(at, at + 1).lower() in words_of("small.ordinals") for at in near)
    return None if told else replace(one, hedged=True)


def _told(row: Row, one: Claim, only: bool, before: range, behind: range) -> Claim | None:
    behind = range(behind.start, min(len(row.items), behind.stop))
    if only and not any(row.items[at].concept in _TELLS_ON for at in behind):
        behind = range(behind.start, min(behind.stop, row.sentence_end(behind.start)))  # "the light's bad in this corner" is of no part
    if only:
        before = _of_this_act(row, before, one)
    if _others(row, before) or _others(row, behind):
        return None
    return replace(one, value=False, part="side", hedged=False) if only else replace(one, hedged=True)


def _of_this_act(row: Row, before: range, one: Claim) -> range:
    """Without the sentence before where it tells of another act: "all taped up. Just the ends are stapled."."""
    begin = row.sentence_start(before.stop)
    acts = {_ACTS[row.items[at].concept] for at in range(before.start, begin) if row.items[at].concept in _ACTS}
    return range(max(before.start, begin), before.stop) if acts and one.name not in acts else before


def _is_over(row: Row, at: int) -> bool:
    """Whether nothing more is said of the act: the words end here, or say on which piece it is."""
    return _concept(row, at) in _OVER or _concept(row, at) == "ON" and (_concept(row, at + 1).startswith("K_") or _concept(row, at + 1) in ("FITTING", "NUMBER", "IT"))


def _is_one(row: Row, at: int) -> bool:
    """Whether a part stands here, and not several sides at once."""
    return (_concept(row, at) in _PARTS or _is_part(row, at)) and not (_concept(row, at) == "SIDE" and len(row.items[at].value) > 1)


def _others(row: Row, places: range) -> bool:
    return any(row.items[at].concept in _OTHERS or _is_part(row, at) or row.words(at, at + 1).lower() in words_of("small.ordinals") for at in places)


def _is_part(row: Row, at: int) -> bool:
    """ "Heel", "corners": parts that are plain words, or one of the joints."""
    return _concept(row, at) in ("WORD", "JOINT") and row.words(at, at + 1).lower() in words_of("small.parts_of_it")


def _concept(row: Row, at: int) -> str:
    return row.items[at].concept if at < len(row.items) else ""
