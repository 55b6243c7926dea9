"""Words for harm that only what they befell makes harm: "the top got gouged" and "a ding in the corner", and not "a scrape on my knee"."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.phrasing import words_of

_ENDS = ("COMMA", "STOP", "QUERY", "BUT", "AND", "EXCEPT", "OTHER", "I")
_PARTS = frozenset("FACING BOARD PANEL MALE FEMALE SHIPLAP GROOVE SIDE SIDE_WORD END JOINT CORNER THROAT DAMAGE_PLACE BACK GENERIC DAMAGE BOTH".split())
_ENDS_OF_IT = frozenset("MALE FEMALE SHIPLAP GROOVE".split())
_PIECES = frozenset("IT FITTING MARKED NUM NUMBER".split())
_PLACED = frozenset("IN ON BY ACROSS DOWN ALONG THROUGH OVER INTO AT OF TO".split())
_BESIDE = frozenset("DET WORD FILLER SIZE_WORD HEDGE LEN NUM FRAC THIS BIG LONG WIDE ONE_SIDE OTHER_SIDE UP".split())
_FAR = 7  # items


def harms_meant(items: tuple[Item, ...], text: str) -> tuple[Item, ...]:
    if not any(item.concept in ("HARM", "LEAK_TEST") for item in items):
        return items
    done = list(items)
    items = tuple(_as_part(items, at, text) if item.concept == "WORD" else item for at, item in enumerate(items))
    items = tuple(replace(item, concept="FACING") if item.concept == "TEMP" and words_of("small.facing_is").intersection(text[item.start : item.end].lower().split()) else item for item in items)
    for place, item in enumerate(items):
        if item.concept == "LEAK_TEST" and text[item.start : item.end].lower() in words_of("small.leaking") and _leaks(items, place):
            done[place] = replace(item, concept="PARTED", value=None)
        if item.concept != "HARM":
            continue
        kind = next((kind for kind, sort in item.value if _befell(items, place, sort, text)), None)
        concept = "WORD" if kind is None else kind if kind.isupper() else "DAMAGE"
        done[place] = replace(item, concept=concept, value=text[item.start : item.end].lower() if kind is None else kind if concept == "DAMAGE" else None)
    return tuple(done)


def _as_part(items, at: int, text: str) -> Item:
    """ "the heel", "the lap": parts that are words of the book nowhere else; "my heel" is none."""
    said = text[items[at].start : items[at].end].lower()
    concept = next((concept for concept, words in (("SIDE_WORD", "small.cheeks"), ("SHIPLAP", "small.laps")) if said in words_of(words)), None)
    if concept is None or at and text[items[at - 1].start : items[at - 1].end].lower() in words_of("small.whose"):
        return items[at]
    return replace(items[at], concept=concept)


def _befell(items, place: int, sort: str, text: str) -> bool:
    if sort == "thing":
        return _has_it(items, place, _PARTS | _PIECES, text) or _in_the_duct(items, place)
    if sort == "opening":
        return _has_it(items, place, ("JOINT",), text) or _in_a_joint(items, place)
    if sort == "in_facing":
        return _has_it(items, place, ("FACING",), text) or _in_the_facing(items, place, text)
    if sort in ("of_joint", "of_seam"):
        if concept_at(items, place + 1) == "JOINT" and sort == "of_joint" and concept_at(items, place - 1) not in ("NO", "NOT", "NOT_DONE") and text[items[place].start : items[place].end].isalpha() and text[items[place].end - 1] != "s":
            return True  # "a crooked joint on the bottom"
        return _subject(items, place, ("JOINT",)) and not _told_of_what_holds_it(items, place) and (sort == "of_joint" or _of_a_seam(items, place, text))
    if sort == "state" and concept_at(items, place + 1) == "WORD" and text[items[place + 1].start : items[place + 1].end].lower() in words_of("small.spots"):
        return _in_the_duct(items, place + 1)
    if sort == "of_end":
        return _subject(items, place, _ENDS_OF_IT)
    if sort == "shows":
        return _shows_on_a_face(items, place, text)
    if sort == "of_part":
        return _subject(items, place, _PARTS - {"GENERIC", "DAMAGE", "BOTH", "SIDE_WORD"}) and not _told_of_what_holds_it(items, place)
    if sort == "soaked":
        return _is_so(items, place, "state", text) or _was_done_to(items, place, text) or _inside_is(items, place, text)
    return _is_so(items, place, sort, text) or sort == "state" and (_was_done_to(items, place, text) or _so_at_a_part(items, place))


def _so_at_a_part(items, place: int) -> bool:
    """ "sort of crumpled on one end", "banged up at the corner": nothing but how much before it, and the part right behind it."""
    at = place - 1
    while concept_at(items, at) in ("HEDGE", "THINK", "FILLER", "WORD", "BE", "AND") and place - at < 4:
        at -= 1
    begins = at == -1 or concept_at(items, at) in ("STOP", "COMMA", "BUT")
    return begins and concept_at(items, place + 1) in ("ON", "IN", "ALONG", "ACROSS", "ONE_SIDE") and (concept_at(items, place + 1) == "ONE_SIDE" or _in_the_duct(items, place))


def _shows_on_a_face(items, place: int, text: str) -> bool:
    """ "fiberglass showing on the corner", and not at an end, where it always shows"""
    at = place + 1
    while concept_at(items, at) in ("ON", "IN", "DET", "ALONG", "ALL", "SIDE") and at - place < _FAR:
        at += 1
    return at > place + 1 and (concept_at(items, at) in ("SIDE_WORD", "BACK", "FACING", "THROAT") or concept_at(items, at - 1) == "SIDE" or concept_at(items, at) == "JOINT" and text[items[at].start : items[at].end].lower().startswith("corner"))


def _inside_is(items, place: int, text: str) -> bool:
    """ "the insulation is drenched", "the inside's moldy" """
    at = place - 1
    while concept_at(items, at) in ("BE", "HAVE", "FILLER", "HEDGE", "ALL") and place - at < _FAR:
        at -= 1
    return 0 <= at < place - 1 and (items[at].concept in ("INSIDE", "INSIDE_WORD") or text[items[at].start : items[at].end].lower().split()[-1].removesuffix("'s") in words_of("small.insides"))


_MEASURES_A_LEAK = frozenset("NUM LEN FRAC CFM INWG FT2 STATIC NOT NO NOT_DONE IF QUERY SIZE".split())
_OUT_OF = frozenset("AIR FILLER BE OUT WORD DOWN UP ON IN OF ALONG AROUND FROM DET SIDE BACK".split())


def _leaks(items, place: int) -> bool:
    """ "The joint leaks", "it leaks at the corner", and not "leaks twelve cfm at one inch": a test."""
    first, last = place, place + 1
    while first and concept_at(items, first - 1) not in _ENDS:
        first -= 1
    while last < len(items) and concept_at(items, last) not in _ENDS:
        last += 1
    if not _MEASURES_A_LEAK.isdisjoint(item.concept for item in items[first:last]) or concept_at(items, last) == "QUERY":
        return False
    at = place + 1
    while at < last and concept_at(items, at) in _OUT_OF:
        at += 1
    return _subject(items, place, ("JOINT", "END")) or concept_at(items, at) in ("JOINT", "END")


def _in_a_joint(items, place: int) -> bool:
    """ "a slot in the seam", "a sliver on the bottom seam" """
    at = place + 1
    if concept_at(items, at) not in ("IN", "ON", "OF", "ALONG", "DOWN"):
        return False
    while concept_at(items, at) in ("IN", "ON", "OF", "ALONG", "DOWN", "DET", "SIDE", "THIS", "WORD") and at - place < _FAR:
        at += 1
    return concept_at(items, at) == "JOINT"


_HOLDS_IT = frozenset("TAPE TAPES STAPLES FLAP TABS VANES CLOSURE MARK181 C_MASTIC K_HANGER SCREWS LEG".split())


def _told_of_what_holds_it(items, place: int) -> bool:
    """ "The tape on the seam is crooked": the tape is, and not the seam."""
    first = place
    while first and place - first < _FAR and concept_at(items, first - 1) not in _ENDS:
        first -= 1
    return not _HOLDS_IT.isdisjoint(item.concept for item in items[first:place])


def _of_a_seam(items, place: int, text: str) -> bool:
    """ "the seam cracked", and not "the corner cracked": of the board."""
    told = [item for item in items[max(0, place - _FAR) : place] if item.concept == "JOINT"]
    return bool(told) and not text[told[-1].start : told[-1].end].lower().startswith("corner")


def _in_the_facing(items, place: int, text: str) -> bool:
    """ "a wrinkle in the facing", and not in the tape or in the plan"""
    at = place + 1
    while concept_at(items, at) in ("IN", "ON", "OF", "ACROSS", "ALONG", "DOWN", "THROUGH", "DET", "SIDE", "THIS") and at - place < _FAR:
        at += 1
    return concept_at(items, at) == "FACING" or concept_at(items, at) == "DAMAGE_PLACE" and not text[items[at].start : items[at].end].lower().endswith("board")


def _in_the_duct(items, place: int) -> bool:
    """ "a ding in the corner", "scrapes all over the foil", "a pinhole in 14" """
    at = place + 1
    while concept_at(items, at) in ("WORD", "FILLER", "ALL", "DOWN", "UP") and at - place <= 2:
        at += 1
    if concept_at(items, at) == "IN_PLACE":
        return True  # "a couple of pokes in it"
    if concept_at(items, at) not in _PLACED and concept_at(items, at - 1) not in ("WORD", "DOWN"):
        return concept_at(items, at) == "DAMAGE_PLACE"
    at += concept_at(items, at) in _PLACED
    while concept_at(items, at) in _BESIDE - _PIECES and at - place < _FAR:
        at += 1
    return _of_a_duct(items, at)


def _has_it(items, place: int, told, text: str) -> bool:
    """ "the back has a small nick", "it's got a ding" """
    at = place - 1
    while concept_at(items, at) in _BESIDE and place - at < _FAR:
        at -= 1
    return concept_at(items, at) in ("HAVE", "WITH") and ("IT" in told and _begins_with_it(items, at, text) or _subject(items, at, told))


def _is_so(items, place: int, sort: str, text: str) -> bool:
    """ "the corner got gouged", "the foil is all scratched"; of a whole piece only where that is said of it: "scratched 14 off the list" """
    if _subject(items, place, ("FACING",) if sort == "of_facing" else _PARTS):
        return True
    at = place - 1
    while concept_at(items, at) in _BESIDE - _PIECES and place - at < _FAR:
        at -= 1
    return sort == "state" and concept_at(items, at) in ("BE", "HAVE") and (_begins_with_it(items, at, text) or _subject(items, at, _PIECES))


def _was_done_to(items, place: int, text: str) -> bool:
    """ "scraped the jacket", "banged up the corner"; of the whole piece only what nobody does on purpose: "I gouged it", and not "I banged it together" """
    at = place + 1
    while concept_at(items, at) in ("DET", "UP", "THROUGH", "INTO", "WORD", "FILLER") and at - place <= 4:
        at += 1
    return concept_at(items, at) in _PARTS or concept_at(items, place + 1) == "IT" and concept_at(items, place + 2) in ("", "STOP", "COMMA", "ON", "WITH", "AND", "BUT", "FILLER") and not words_of("small.ruins").isdisjoint(text[items[place].start : items[place].end].lower().split())


def _subject(items, at: int, told: tuple[str, ...] | frozenset[str]) -> bool:
    """Whether what is told at this place is told of one of these: it stands before it in the clause, and nobody else's name does."""
    first = at - 1
    while first >= 0 and at - first < _FAR and concept_at(items, first) not in _ENDS:
        if concept_at(items, first) in told or "IT" in told and concept_at(items, first).startswith("K_"):
            return True
        first -= 1
    return False


def _of_a_duct(items, at: int) -> bool:
    concept = concept_at(items, at)
    return concept in _PARTS or concept in _PIECES or concept.startswith("K_")


def _begins_with_it(items, at: int, text: str) -> bool:
    """ "it's got", "they're": the word of having holds whose it is."""
    return text[items[at].start : items[at].end].lower().startswith(("it", "they"))
