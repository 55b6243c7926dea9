"""Words of the trade said of other things than a duct: a torn glove, a dented truck, "is water wet", the wye on a compressor."""

from __future__ import annotations

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import apart, finds, word, words_of
from logbook.reading.words.tokens import plain

_DUCT = ("FITTING", "BOARD", "FACING", "IT", "PANEL", "DAMAGE_PLACE", "JOINT", "FLAP", "GENERIC", "MARKED")
_CUTS = ("COMMA", "STOP", "BUT", "QUERY", "AND")
_BETWEEN = ("DET", "LEN", "WORD", "IN", "ON", "OF", "THROUGH", "BUILDING", "FILLER", "THIS", "COUNTED", "GENERIC", "PLACE_NOUN")


def of_something_else(row: Row, at: int) -> bool:
    """Whether the damage at this item is of what is no duct, told of before it in its clause or right behind it."""
    if words_of("small.of_a_duct") & set(row.words(at, at + 1).lower().replace("'", " ").split()):
        return False  # "the foil's coming off the glass"
    if row.words(at, at + 1).lower().split()[-1] == "hole" and (_is_cut_out(row, at) or at and row.items[at - 1].concept == "SIZE"):  # "a twelve by ten hole in the trunk"
        return True
    if row.words(at, at + 1).lower().split()[-1] in ("hole", "holes") and _for_the_screws(row, at):
        return True
    first = at
    while first > 0 and row.items[first - 1].concept not in _CUTS:
        first -= 1
    if any(item.concept in _DUCT or item.concept.startswith("K_") for item in row.items[first:at]):
        return False
    last = at + 1
    while last < len(row.items) and row.items[last].concept in _BETWEEN and last - at < 6:
        last += 1
    doer = first
    while doer < at and row.items[doer].concept in ("OTHER", "DET", "FILLER"):
        doer += 1
    by_another = any(item.concept == "OTHER" for item in row.items[first:doer]) and doer == at  # "the plumber made a hole": his deed, not his thing
    subject = row.text[row.items[doer if by_another else first].start : row.items[at].start].lower().replace("'", " ").replace("’", " ").split()
    if subject[-1:] and subject[-1] in words_of("small.tools") and at - first <= 3:
        return False  # "there's a knife hole in the cheek": made with it
    if any(item.concept in ("SIDE", "BACK") and k and row.words(k - 1, k).lower() in words_of("small.the") for k, item in enumerate(row.items[first:at], first)):
        return False  # "the back has a tear in it", and not "my back"
    behind = row.text[row.items[at].end : row.items[last - 1].end].lower().split()
    if last + 1 < len(row.items) and row.items[last].concept.startswith("K_") and of_a_machine(row, last):
        return True  # "ripped my pants"
    followed = last < len(row.items) and row.items[last].concept in ("FACING", "BOARD", "PANEL", "FLAP", "SIDE", "JOINT", "IT")
    told = not followed and bool(words_of("small.no_duct") & set(behind)) and (behind[0] in words_of("small.owners") or behind[0] in ("in", "on", "through", "en") or behind[0] in words_of("small.no_duct"))
    return bool(words_of("small.no_duct") & set(subject)) or told


def _is_cut_out(row: Row, at: int) -> bool:
    """ "We cut the hole on Monday. Branch nineteen …. Four days for one hole": what a branch or a collar sits in, where nothing was mended."""
    sits = any(item.concept in ("K_COLLAR", "K_BRANCH", "K_TEE", "K_REGISTER", "K_ACCESS_DOOR", "BRANCH_WORD") for item in row.items)
    mends = any(item.concept in ("REPAIRED", "METHOD", "FACING") for item in row.items)
    said = row.text[: row.items[at].end + 12].lower()
    return sits and not mends and any(word(code, "turns.cuts_out").search(said) is not None for code in LANGUAGES)


def _for_the_screws(row: Row, at: int) -> bool:
    """ "lining up with the holes that were already there", "in the factory holes": what a screw or a strap goes through."""
    before, behind = row.text[max(0, row.items[at].start - 36) : row.items[at].start].lower(), row.text[row.items[at].end : row.items[at].end + 32].lower()
    return any(word(code, "elsewhere.fixing_holes").search(f"{before}<h>{behind}") is not None for code in LANGUAGES)


def of_a_machine(row: Row, at: int) -> bool:
    """Whether a kind is a part of something else: "the wye on the compressor", "my pants"."""
    first, last = at, at + 1
    while first > 0 and row.items[first - 1].concept not in ("COMMA", "STOP", "QUERY") and at - first < 8:
        first -= 1
    while last < len(row.items) and row.items[last].concept not in ("COMMA", "STOP", "QUERY") and last - at < 8:
        last += 1
    said = row.words(first, last).lower().replace("'", " ").split()
    name = row.words(at, at + 1).lower()
    if name == "straight" and row.words(at, at + 2).lower() == "straight up" and at + 2 < len(row.items) and row.items[at + 2].concept == "COMMA":
        return True  # "straight up, nobody has run anything": a way to say that it is so
    worn = name in ("pants", "boot", "boots") and row.text[: row.items[at].start].lower().split()[-1:] in (["my"], ["his"], ["her"], ["your"], ["our"])
    return worn or bool(words_of("small.machines") & set(said))


def a_lack(row: Row) -> bool:
    """ "No hay cinta", "ya no hay grapas de media ni cinta de tres": nothing else said, and no piece named: the crew has run out, no joint is open."""
    concepts = {item.concept for item in row.items}
    return not _STUFF.isdisjoint(concepts) and _WANTING.issuperset(concepts) and plain(row.text).startswith(tuple(words_of("small.there_is_no")))


_STUFF = frozenset(("TAPE", "STAPLES", "VANES"))
_WANTING = _STUFF | frozenset("STOP COMMA FILLER DET NO NOT OF NUM LEN FRAC AND OR PENDING WORD TO DAY LATER TRADE_NOISE".split())


def made_anew(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """ "It was wet yesterday. Threw it out and built a fresh one": the damage is replaced, though no word of mending was said."""
    made = list(claims)
    if any(c.name == "damage_repaired" or c.name == "(method)" for c in claims):
        return made
    for one in claims:
        if one.name != "facing_damage" or one.value == "none":
            continue
        last, stops = one.last, 0
        while last < len(row.items) and stops < 2 and (not row.items[last].concept.startswith("K_") or last <= one.last + 3 and row.items[last - 1].concept in ("OF", "ON", "IN", "FROM", "DET")):
            stops += row.items[last].concept in ("STOP", "QUERY")
            last += 1
        behind = row.text[one.end : row.items[last - 1].end].lower() if last > one.last else ""
        match = finds(apart(language.code, "turns.anew"), behind)
        if match is not None:
            first, until = row.within(one.last, last, match, one.end)
            led = _led(row, one.last, first)
            if not _DENIED.isdisjoint(row.items[k].concept for k in range(led, until)):  # "it got wet and I haven't cut that part out"
                made.append(claim(row, "damage_repaired", False, led, until, hedged=False))
                continue
            if not _TO_COME.isdisjoint(row.items[k].concept for k in range(led, until)):
                continue
            made.append(claim(row, "damage_repaired", True, first, until, hedged=False))
            made.append(claim(row, "(method)", "replaced", first, until, hedged=False))
    return made


def _led(row: Row, begin: int, at: int) -> int:
    """Where the clause begins in which this is said."""
    while at > begin and row.items[at - 1].concept not in ("COMMA", "STOP", "QUERY", "AND", "BUT"):
        at -= 1
    return at


_DENIED = frozenset(("NOT", "NO", "NOT_DONE", "FORGOT"))
_TO_COME = frozenset(("WILL", "GOING_TO", "PENDING", "NEED", "IF", "REMIND", "LATER"))
