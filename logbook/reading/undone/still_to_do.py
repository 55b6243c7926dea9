"""The claims of one stretch of words that tells work still to do: which acts wait, of the piece or beside it, and from where it is told.

`undone` finds where such a stretch begins and ends. An act that was given up, or was done to the piece by then, does not wait; a side
that is left, or a word that nobody knows ("not rough yet"), leaves the piece open without an act of ours.
"""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.denials import DENIED, PAST, live
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word, words_of
from logbook.reading.clauses.stance import Clause
from logbook.reading.words.tokens import plain

HANGING = ("HANG", "HUNG")
_BESIDE = ("TIED", "C_MASTIC", "SEALED", "CUT_TO", "SCREWS", "CLOSURE")


def still_to_do(row: Row, clause: Clause, begin: int, end: int, language: Language) -> list[Claim]:
    """The open items, and the acts that they deny, of the items from `begin`, which begins to tell of work still to do, up to `end`."""
    first = _start_of(row, clause, begin)
    start, stop = row.items[first].start, row.items[end - 1].end
    acts = [at for at in range(first, end) if row.items[at].concept in DENIED or row.items[at].concept in HANGING or row.items[at].concept in _BESIDE]
    if row.items[begin].concept in ("NOT", "NO", "NOT_DONE") and not any(at >= begin for at in acts):
        nouns = [at for at in range(clause.first, begin) if row.items[at].concept in ("VANES", "TAPE", "STAPLES", "TABS", "PANEL", "FLAP")]
        if nouns:
            first, acts = nouns[-1], [nouns[-1]]
            start, begin = row.items[first].start, first
    led = row.words(begin, begin + 1).lower().split()
    clitic = row.items[begin].concept == "WILL" and begin > clause.first and (row.items[begin - 1].concept == "DET" or led[0] == "se" or led[0] in _THEM)  # "la cinta se la pongo mañana", "las vanes se las pongo en la tarde"
    if not any(at >= begin for at in acts) and (row.items[begin].concept in ("PENDING", "NOT_DONE") or clitic):
        noun = begin - 1  # "la cinta falta", "the tape, not yet"
        while noun > clause.first and row.items[noun].concept in ("BE", "FILLER", "DET", "HAVE", "YET"):
            noun -= 1
        if noun >= clause.first and row.items[noun].concept in ("VANES", "TAPE", "STAPLES", "TABS", "FLAP") and live(row, noun):
            first, acts = noun, [noun]
            start, begin = row.items[noun].start, noun
    done_elsewhere = _done_to_another(row, begin, end) if not acts else None
    if done_elsewhere is not None:
        first, acts = done_elsewhere, [done_elsewhere]
        start = row.items[first].start
    acts = [at for at in acts if at >= begin or row.items[begin].concept in ("PENDING", "LATER")]
    acts = [at for at in acts if not (row.items[begin].concept in ("NOT", "NO") and any(row.items[k].concept == "WHEN" for k in range(begin + 1, at)))]  # "it wasn't dry yet when I taped it"
    acts = [at for at in acts if not (at > begin and row.is_blank(at) and row.items[at].concept == "SHOWS")]  # "… if the lift shows up"
    acts = [at for at in acts if not (row.items[at].concept == "SEATED" and any(row.items[k].concept not in DENIED and row.words(k, k + 1).lower() in words_of("small.gives_reason") for k in range(begin + 1, at)))]  # "not taped yet because it's sitting on the floor"
    acts = [at for at in acts if not _told_of_the_piece(row, begin, at)]
    strong = row.items[begin].concept in ("PENDING", "NOT_DONE")
    made: list[Claim] = []
    names: set[str] = set()
    given_up = _given_up(row, begin, end)
    for at in acts:
        concept = row.items[at].concept
        if concept == "TAPE" and _is_rubbed(row, begin, at):
            continue
        if concept in ("REPAIRED", "REPAIR_IT") and len(acts) > 1 and not any(item.concept == "DAMAGE" for item in row.items):
            continue  # "staple it once the compressor's fixed": nothing of the piece is broken
        if concept in HANGING:
            name, about, denies, value = "(open)", "hanging", None, None
        elif concept in _BESIDE:
            name, about, denies, value = "(open)", "piece", None, None
        else:
            (name, value), about = DENIED[concept], "piece"
            denies = name
            if value is not False or (concept == "SHOWS" and (row.words(at, at + 1).lower().endswith("up") or at == begin + 1 and row.words(begin, at).lower().startswith(("i", "we"))) and not any(row.items[k].concept == "SCRIM" for k in range(max(0, at - 8), at))):
                continue  # "if the lift shows up"
        if (name, about) in names or concept == "FLAP" and ("stapled", "piece") in names and _of_its_staples(row, at):
            continue
        names.add((name, about))
        made.append(claim(row, name, value, first, end, opens=() if given_up else (Open(about, denies, start, stop),), pending=True, hedged=False))
    if given_up:
        return made
    if not made and (_not_something_yet(row, clause, begin) or side_waits(row, clause, language)):
        made.append(claim(row, "(open)", None, first, end, opens=(Open("piece", None, start, stop),), pending=True, hedged=False))
    sure = strong and _is_strong(row, begin)
    if not made and re.search(language.acts.over, plain(row.text[start : row.items[clause.last - 1].end])) is not None:
        return made
    hung = row.items[begin].concept == "PENDING" and _needs_hangers(row, clause, begin, end)
    if not made and (sure or hung or (language.acts.of_any_plan and row.items[begin].concept in ("PENDING", "NOT_DONE", "WILL", "LATER"))):
        mine = hung or word(language.code, "acts.of_the_piece").search(plain(row.text[start:stop])) is not None
        if mine or sure:
            made.append(claim(row, "(open)", None, first, end, opens=(Open("piece" if mine else "other", None, start, stop),), pending=True, hedged=False))
    return made


def begins_what_is_left(row: Row, clause: Clause) -> Clause | None:
    """ "algunas lengüetas quedaron sin doblar y me falta la cinta": the clause from there on, where its beginning is told already."""
    at = next((k for k in range(clause.first + 2, clause.last - 1) if live(row, k) in ("AND", "BUT") and live(row, k + 1) == "PENDING"), None)
    return None if at is None else replace(clause, first=at)


def more_of_them(row: Row, clause: Clause) -> bool:
    """ "le falta cinta, y también las vanes": things alone, behind those that are lacking."""
    concepts = [row.items[at].concept for at in range(clause.first, clause.last)]
    things = [concept for concept in concepts if concept not in ("AND", "DET", "FILLER", "COMMA")]
    return concepts[0] == "AND" and len(things) == 1 and things[0] in ("VANES", "TAPE", "STAPLES")


def ends_the_list(row: Row, at: int, end: int) -> bool:
    """ "faltan las vanes y las grapas": they are lacking too, where "still needs tape and staples every two" tells how they are."""
    behind = at + 1
    while behind < end and row.items[behind].concept in ("FILLER", "YET"):
        behind += 1
    return row.items[at - 1].concept == "AND" and row.items[at - 2].concept in ("VANES", "TAPE", "TABS") and behind == end


def _of_its_staples(row: Row, at: int) -> bool:
    """ "le faltan diez grapas en el flap", "me falta engrapar el flap": where the staples are to go; the flap is there."""
    led = [item.concept for item in row.items[max(0, at - 4) : at]]
    while led and led[-1] in ("DET", "ON", "IN", "OF", "ALL", "FILLER"):
        led.pop()
    return led[-1:] in (["STAPLES"], ["STAPLE"], ["STAPLED"])


def _done_to_another(row: Row, begin: int, end: int) -> int | None:
    """ "rubbed down the wrong piece so this one still needs it": the act that was done, and not to this one."""
    if row.items[begin].concept != "PENDING" or [live(row, k) for k in range(begin + 1, end)] != ["IT"]:
        return None
    for at in range(begin - 1, max(-1, begin - 9), -1):
        if live(row, at) in PAST:
            return at if live(row, at) in DENIED and not words_of("small.not_this").isdisjoint(row.words(at + 1, begin).lower().split()) else None
        if live(row, at) == "STOP":
            return None
    return None


def side_waits(row: Row, clause: Clause, language: Language) -> bool:
    """ "Three sides taped. Fourth one after lunch.", "taped, the last seam I'll get tomorrow": the side that is left, where sides were counted right before, or an act was told and it is named."""
    counted = any(item.concept in ("SIDE_WORD", "SIDE") for item in row.items[max(0, clause.first - _SIDES_BACK) : clause.first])
    named = any(item.concept in ("SIDE_WORD", "JOINT", "SIDE", "OTHER_SIDE") for item in row.items[clause.first : clause.last])
    counted = counted or named and any(item.concept in _SIDED_ACTS for item in row.items[max(0, clause.first - _SIDES_BACK) : clause.first])
    return counted and word(language.code, "acts.side_waits").match(plain(row.words(clause.first, clause.last))) is not None


_SIDES_BACK = 6  # items
_SIDED_ACTS = ("STAPLED", "STAPLES", "TAPED", "TAPE", "RUBBED")


def _given_up(row: Row, begin: int, end: int) -> bool:
    """ "I was going to put vanes in but it's a radius": not done, and nothing that is still to do."""
    said = f" {row.words(begin, begin + 1).lower()} "
    return row.items[begin].concept == "WILL" and (" was " in said or " were " in said) and [item.concept for item in row.items[end : end + 2]] in (["BUT", "BE"], ["BUT", "IT"])


def _told_of_the_piece(row: Row, begin: int, at: int) -> bool:
    """ "me falta cuadrarle la punta al offset 102 engrapado a dos": what is lacking stands before the piece, and behind it how the piece is."""
    if row.items[begin].concept != "PENDING" or row.items[at].concept not in PAST:
        return False
    if any(row.items[k].concept == "OFFSETS" for k in range(begin + 1, at)):
        return True  # "… doce por ocho corrido cuatro en veinticuatro engrapado a dos"
    named = next((k for k in range(begin + 1, at) if row.items[k].concept.startswith("K_")), None)
    if named is None or not any(item.concept in ("NUM", "MARKED") for item in row.items[named + 1 : named + 3]):
        return False
    return any(item.concept not in _TO_ONE for item in row.items[begin + 1 : named])


_TO_ONE = ("ON", "DET", "TO", "OF", "IN", "FILLER", "THIS", "ONLY")


def _is_rubbed(row: Row, begin: int, at: int) -> bool:
    """ "me quedó pendiente sobarle la cinta": the tape is there, it is still to be rubbed."""
    if at < begin and any(row.items[k].concept == "RUB" and row.words(k, k + 1).lower().endswith(("la", "lo", "las", "los", "it")) for k in range(begin - 2, min(begin + 4, len(row.items)))):
        return True  # "el teip lo dejé listo para tallarlo mañana"
    rub = next((k for k in range(begin + 1, min(begin + 5, len(row.items))) if row.items[k].concept in ("RUB", "RUBBED")), None)
    if at < begin and rub is not None and not any(row.items[k].concept in ("AND", "TAPED", "TAPE", "TAPE_IT", "COMMA") for k in range(begin + 1, rub)):
        return True  # "the tape still needs a rub"
    back = at - 1
    while back > begin and row.items[back].concept in ("DET", "FILLER", "OF", "OFF"):
        back -= 1
    return back >= begin and row.items[back].concept in ("RUB", "RUBBED")


def _needs_hangers(row: Row, clause: Clause, begin: int, end: int) -> bool:
    """ "154 needs a hanger by the elbow", "it still needs two more straps": what is to hold the piece, and not a bundle of them from the shop."""
    hanger = next((at for at in range(begin + 1, min(begin + 5, end)) if row.items[at].concept == "K_HANGER"), None)
    if hanger is None or row.items[clause.first].concept == "I" or any(row.items[at].concept in ("NOT", "NO", "FOR", "EVERY", "SPACING") for at in range(clause.first, end)):
        return False
    behind = [item.concept for item in row.items[end : row.sentence_end(begin)]]
    return "I" not in behind and row.items[begin - 1].concept in ("NUM", "MARKED", "IT", "THIS", "FILLER", "HAVE") and begin > clause.first


_THEM = ("la", "lo", "las", "los")
_SMALL = ("NOT", "YET", "IT", "BE", "FILLER", "HEDGE", "DET", "THIS", "AND", "BUT", "HAVE", "ALL")


def _not_something_yet(row: Row, clause: Clause, begin: int) -> bool:
    """ "Stapled, taped, not rough yet", "not quite there yet": a word that nobody knows, of a piece that was named, is not done."""
    concepts = [row.items[at].concept for at in range(clause.first, clause.last)]
    unknown = [c for c in concepts if c not in _SMALL]
    if row.items[begin].concept != "NOT" or "YET" not in concepts or len(unknown) > 1 or any(c not in ("WORD", "DONE") for c in unknown):
        return False
    return clause.sentence >= 0 and any(item.concept.startswith("K_") or item.concept == "FITTING" for item in row.items[: clause.first])


def _is_strong(row: Row, begin: int) -> bool:
    item = row.items[begin]
    words = row.text[item.start : item.end].lower()
    return "still" in words or "left" in words or "waiting" in words or "pending" in words or "falt" in words or "pendiente" in words or "owe" in words.split() or item.concept == "NOT_DONE"


def _start_of(row: Row, clause: Clause, begin: int) -> int:
    """The whole clause, unless something else was stated before the words that tell the pending work."""
    stated = (*PAST, "SIZE", "STAPLES", "EVERY", "VANES", "MARK181", "LEN", "FLAP", "DAMAGE", "GAP")
    first = clause.first
    if row.items[begin].concept == "PENDING" and begin - 1 > clause.first and row.items[begin - 1].concept in ("AND", "BUT"):
        return begin  # "algunas lengüetas quedaron sin doblar y me falta la cinta"
    for at in range(begin - 1, clause.first - 1, -1):
        if row.items[at].concept in stated and row.items[begin].concept in ("NOT_DONE", "NOT", "NO", "PENDING", "WILL", "LATER"):
            if row.items[begin].concept == "PENDING" and begin - at <= 3 and row.items[at].concept in ("TAPE", "VANES", "STAPLES"):
                continue
            first = at + 1
            break
        named = at == begin - 1 and at == clause.first + 1 and row.items[at].concept in ("NUM", "MARKED") and row.items[clause.first].concept in ("ON", "DET", "THRU", "NUMBER")  # "al setenta le falta la cinta"
        if named or row.items[at].concept.startswith("K_") or row.items[at].concept in ("FITTING", "RUN"):
            first = begin
            break
    while first < begin and row.items[first].concept in ("AND", "BUT", "FILLER", "COMMA", "NUM", "OR"):
        first += 1
    return first
