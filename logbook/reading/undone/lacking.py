"""What a clause tells is not there or was not done, in whatever way: "forgot the tape", "all but the rub", "the vanes are missing", "no staples".

What one "no" or "not" reaches is read by `denials`; here are the ways to say it without one, or with one behind the thing, and
whether it is of one side only. A thing of which nobody can tell from the words whether it is in the piece is asked for.
"""

from __future__ import annotations

import re

from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import DENIED, NEEDED, PAST, denied, has_object, live, none_without
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.how_it_sits import not_so
from logbook.reading.undone.done_to_none import DONE, done_to_none
from logbook.reading.words.phrasing import words_of
from logbook.reading.clauses.stance import Clause

_LEFT_UNDONE = ("TAPE", "STAPLES", "VANES", "TABS", "RUB", "RUBBED", "TAPE_IT", "STAPLE", "TRIM", "WIPE", "TIE_RODS")


def _spaced(row: Row, noun: int) -> bool:
    """ "fine except the staples are every four", "other than the staples, they're every four": they are in, and too far apart."""
    behind = [item.concept for item in row.items[noun + 1 : noun + 5]]
    return "EVERY" in behind and all(concept in ("COMMA", "BE", "FILLER", "IT") for concept in behind[: behind.index("EVERY")])


def _ran_short(row: Row, at: int) -> bool:
    """ "Ran short of staples on 41, so they're three apart": there were some."""
    spaced = [item.concept for item in row.items[at + 1 : at + 3] if item.concept != "DET"][:1] == ["STAPLES"] and any(item.concept in ("APART", "EVERY") for item in row.items[at : row.sentence_end(at)])
    return spaced and at > 0 and row.words(at - 1, at).lower().split()[-1] in words_of("small.runs_short") and row.words(at, at + 1).lower().split()[0] == "short"


def lacking(row: Row, clause: Clause) -> list[Claim]:
    """What one clause says is lacking, each a claim on the fact that it denies."""
    made: list[Claim] = []
    at = clause.first
    if row.items[clause.first].concept == "FIX" or (clause.first > 1 and row.items[clause.first - 2].concept == "FIX"):
        flip = _flip(row, clause)
        if flip is not None:
            return [flip]
    over = none_without(row, clause)
    if over:
        return over
    while at < clause.last:
        concept = live(row, at)
        if concept == "FORGOT" and at + 2 < clause.last and live(row, at + 1) == "DET" and live(row, at + 2) in ("TAPE", "STAPLES", "VANES", "TABS"):
            made.append(claim(row, *DENIED[live(row, at + 2)], at, at + 3))
            at += 3
            continue
        if concept == "FORGOT" and at + 1 < clause.last and live(row, at + 1) in ("RUB", "TAPE_IT", "STAPLE", "TRIM", "WIPE", "TAPE", "RUBBED", "STAPLED", "STAPLES", "VANES", "TABS"):
            made.append(claim(row, *DENIED[live(row, at + 1)], at, at + 2))
            at += 2
            continue
        if concept in ("EXCEPT", "ALL_BUT") and not any(live(row, k) in ("SAME_AS", "SAME_THING") for k in range(clause.first, at)) and not _ran_short(row, at):
            noun = at + 1
            while noun < clause.last and live(row, noun) in ("DET", "OF", "FILLER"):
                noun += 1
            named = noun + 1 < clause.last and live(row, noun + 1) == "BE" and row.words(noun + 1, noun + 2).lower() == "being"  # "except for the staples being short"
            if noun < clause.last and live(row, noun) in (*_LEFT_UNDONE, "TAPED", "STAPLED") and not named and not _spaced(row, noun):
                made.append(claim(row, *DENIED[live(row, noun)], at, noun + 1))
                at = noun + 1
                continue
        if concept == "BUT" and at == clause.first and clause.last - at <= 3 and live(row, clause.last - 1) in _LEFT_UNDONE and clause.last - at > 1 and not (live(row, clause.last - 1) == "RUBBED" and has_object(row, clause.last - 1)):
            if clause.last - at == 2 or live(row, at + 1) == "DET":  # "all set but the tape"
                name, value = DENIED[live(row, clause.last - 1)]
                nothing = _nothing_but(row, at)
                made.append(claim(row, name, value, at, clause.last) if nothing is None else claim(row, name, True, nothing, clause.last, weak=True))
                break
        if concept == "NOT_FORGET":
            act = next((k for k in range(at + 1, min(at + 4, clause.last)) if live(row, k) in DENIED and DENIED[live(row, k)][1] is False), None)
            if act is not None:
                made.append(claim(row, DENIED[live(row, act)][0], True, at, act + 1))
                at = act + 1
                continue
        if concept == "NO" and at + 2 < clause.last and live(row, at + 1) == "I" and live(row, at + 2) in (*PAST, "CUT_LENGTH", "REPAIRED"):
            at += 1  # "no I rubbed it": an answer, and then what he did
            continue
        if concept in ("NOT", "NO", "NOT_DONE"):
            found = denied(row, clause, at)
            made.extend(found)
            if found:
                at = found[-1].last
                continue
        if concept in DONE and (none := done_to_none(row, clause, at)) is not None:
            made.append(claim(row, *DONE[concept], at, none))
            at = none
            continue
        if concept in _FRONTED and (none := _none_behind(row, clause, at)) is not None:
            made.append(claim(row, *DENIED[concept], at, none))
            at = none
            continue
        if concept == "VANES":
            away = [row.words(k, k + 1).lower().split()[-1] if row.items[k].concept != "BE" else "" for k in range(at + 1, min(at + 6, clause.last))]
            fetched = at + 1 < clause.last and row.items[at + 1].concept == "FROM"  # "got vanes from the other box and fitted them"
            if not fetched and any(word in words_of("small.lies_elsewhere") for word in away) and not {"IN_PLACE", "PENDING"} & {live(row, k) for k in range(at + 1, clause.last)}:
                end = next(k for k in range(at + 1, min(at + 6, clause.last)) if row.items[k].concept != "BE" and row.words(k, k + 1).lower().split()[-1] in words_of("small.lies_elsewhere")) + 1
                made.append(claim(row, "vanes", False, at, end))
                at = end
                continue
            unknown = _where_nobody_knows(row, clause, at)
            if unknown:  # in the piece or not: it is asked for
                made.append(claim(row, "(nothing)", None, at, unknown))
                at = unknown
                continue
        if concept == "LEFT_OUT":
            noun = next((k for k in range(at + 1, min(at + 4, clause.last)) if live(row, k) in ("VANES", "STAPLES", "TAPE", "TABS", "TIE_RODS", "RUB")), None)
            out = noun is not None and ({"out", "off"} & set(row.words(at, at + 1).lower().split()) or (noun + 1 < clause.last and (live(row, noun + 1) in ("OUT", "MISSING", "OFF") or _out_of(row, noun + 1))))
            if out:
                ends = noun + 1 if live(row, noun + 1 if noun + 1 < clause.last else noun) not in ("OUT", "MISSING", "OFF") and not _out_of(row, noun + 1) else noun + 2
                made.append(claim(row, *DENIED[live(row, noun)], at, ends))
                at = ends
                continue
        rub = concept == "RUB" and (at == clause.first or live(row, at - 1) in ("DET", "ONLY"))  # "the rub is missing"
        if (rub or concept in ("VANES", "FLAP", "SCRIM", "TAPE", "TABS", "PANEL", "TAPED", "RUBBED", "STAPLES")) and at + 1 < clause.last:
            past = _past_piece(row, clause, at) - at
            behind = [live(row, at + past + k) if at + past + k < clause.last else "" for k in (1, 2, 3)]
            step = next((k for k, c in enumerate(behind) if c in ("NOT", "MISSING", "OUT", "NO")), None)
            if step is not None and row.words(at + past + 1 + step, at + past + 2 + step).lower() in words_of("small.nobody") and not (concept in ("VANES", "TAPE", "TABS", "STAPLES") and row.words(at + past + 2 + step, at + past + 3 + step).lower() in words_of("forms.lays")):
                step = None  # "all taped, nobody had to tell me"; "the vanes nobody put" are not in
            if step is not None and all(c in ("BE", "FILLER", "DET", "THIS", "ON", "IT") for c in behind[:step]):
                neg = behind[step]
                then = at + past + 2 + step
                then += then < clause.last and live(row, then) == "HAVE"  # "the tape never got rubbed"
                follows = live(row, then) if then < clause.last else ""
                beyond = next((k for k in range(then, min(then + 4, clause.last)) if live(row, k) not in ("BE", "HAVE", "HAVING", "FILLER", "WORD")), clause.last)
                if concept in PAST and beyond < clause.last and live(row, beyond) in _OF_ANOTHER:
                    follows = live(row, beyond)  # "taped it won't be rubbed today"
                name = DENIED["SEATED"] if concept == "PANEL" else DENIED[concept]
                needless = at + 2 + step < clause.last and row.words(at + 2 + step, at + 3 + step).lower().split()[0] in NEEDED
                if needless:
                    made.append(claim(row, "(nothing)", None, at, at + 3 + step))
                    at += 3 + step
                    continue
                if concept == "STAPLES" and at and row.items[at - 1].concept in ("LEN", "FRAC") and follows not in ("IN", "IN_PLACE", "ON", ""):
                    at = then
                    continue  # "half inch staples never came": one sort of them
                if rub and neg == "NOT" and follows not in ("", "YET", "FILLER", "ON"):  # "the rub isn't bad"
                    at += 1
                    continue
                if neg == "NOT" and (ends := not_so(row, concept, at + past + 2 + step, clause.last)) is not None:
                    made.append(claim(row, "(nothing)", None, at, ends))
                    at = ends
                    continue
                if (neg == "MISSING" and concept in ("VANES", "FLAP", "TABS", "RUB", "RUBBED")) or (neg == "OUT" and concept == "VANES") or (
                    neg == "NOT" and not (concept in ("RUBBED", "TAPED") and follows in ("SHOWS", "SEE", "SCRIM")) and follows not in _OF_ANOTHER and not (step == 0 and (follows in _INSTEAD or follows in ("LEN", "FRAC", "NUM") and row.words(at + past + 1, at + past + 2).lower() in words_of("forms.instead")))
                ) or (neg == "NO" and concept == "VANES" and (not follows or _left_off(row, then - 1, follows))):
                    last = at + past + 1 + step + 1
                    last = last + 1 if neg != "NO" and last < clause.last and (live(row, last) in ("SHOWS", "SEATED", "IN", "IN_PLACE", "ON", "IN") or row.words(last - 1, last).lower() in words_of("small.nobody")) else last
                    made.append(claim(row, name[0], name[1], at, last))
                    at = last
                    continue
        at += 1
    return made


_FRONTED = ("VANES", "STAPLES", "TAPE", "TABS")
_SUBJECTS = ("IT", "THIS", "I", "BE", "HAVE", "HAVING", "FILLER", "LAID", "FITTING")
_FAR = 5  # items


def _none_behind(row: Row, clause: Clause, at: int) -> int | None:
    """ "Vanes it has none", "staples I put none in": past the word that denies; None where it is of what is at hand."""
    k = at + 1
    while k < min(clause.last, at + _FAR) and (live(row, k) in _SUBJECTS or row.words(k, k + 1).lower() in words_of("small.puts")):
        k += 1
    if k == at + 1 or k >= clause.last or live(row, k) != "NO" or row.words(k, k + 1).lower().split()[0] not in words_of("small.none"):
        return None
    behind = row.words(k + 1, k + 2).lower() if k + 1 < clause.last else ""
    return None if behind in words_of("small.at_hand") else k + 1


def _left_off(row: Row, at: int, follows: str) -> bool:
    """ "The vanes left off elbow nine", "vanes left out of 12" """
    return row.words(at, at + 1).lower().split()[-1] in ("off", "out") and (follows in ("ON", "IN", "FROM", "OF", "NUM", "MARKED", "FITTING", "NUMBER") or follows.startswith("K_"))


def _out_of(row: Row, at: int) -> bool:
    """ "left the vanes out of it" """
    return at < len(row.items) and live(row, at) == "FROM" and row.words(at, at + 1).lower().split()[0] in ("out", "off")


def _nothing_but(row: Row, but: int) -> int | None:
    """ "Nothing on it but staples": those are; where that begins."""
    first = but
    while first > max(0, but - 6) and row.items[first - 1].concept not in ("STOP", "QUERY", "COMMA"):
        first -= 1
    said = row.words(first, but).lower() if first < but else ""
    return first if re.match(r"(?:there's |there is |it's got |it has |has |got )?(?:nothing|not a thing|nada)\b", said) else None


_ANY_THING = ("WORD", "BUILDING", "ROOM", "COUNTED", "OTHER", "PLACE_NOUN")


def _where_nobody_knows(row: Row, clause, vanes: int) -> int:
    """ "The vanes are by the ladder", "los álabes los tengo en la mochila": past the place; 0 where it is of the piece, or there is none."""
    at = vanes + 1
    while at < clause.last and (row.items[at].concept in ("BE", "FILLER", "HAVE", "DET", "OVER") or (at == vanes + 1 and row.items[at].concept == "WORD")):
        at += 1
    where = live(row, at) if at + 1 < clause.last else None
    where = "IN" if where == "IN_PLACE" and row.items[at + 1].concept == "DET" else where  # "are in my locker"
    if where not in ("ON", "IN", "WITH", "BY", "BESIDE"):
        return 0
    first = at + 2 if row.items[at + 1].concept == "DET" else at + 1
    last = first
    while last < clause.last and row.items[last].concept in _ANY_THING:
        last += 1
    named = row.items[first - 1].concept == "DET" or row.items[first].concept == "OTHER" if last > first else False
    return last if named and not words_of("small.in_the_piece").intersection(row.words(first, last).lower().split()) else 0


_INSTEAD = ("STAPLES", "TAPE", "TABS", "FLAP", "C_MASTIC", "CLOSURE", "MARK181")  # "tabs not staples"
# a denial between two acts is of the one behind it: "rubbed down didn't trim it"
_OF_ANOTHER = ("STAPLED", "TAPED", "RUBBED", "DAMAGE", "GAP", "STAPLE", "TAPE_IT", "RUB", "TRIM", "TRIMMED", "WIPE", "WIPED", "HEAT_IT", "REPAIR_IT")


def _past_piece(row: Row, clause: Clause, at: int) -> int:
    """Past "for seven" in "the vanes for seven aren't in"."""
    k = at + 1
    if k >= clause.last or live(row, k) not in ("OF", "ON", "IN"):
        return at
    k += 1
    while k < clause.last and (live(row, k) in ("DET", "FITTING", "NUMBER") or live(row, k).startswith("K_")):
        k += 1
    return k if k < clause.last and live(row, k) in ("NUM", "MARKED") else at


def of_one_side(row: Row, clause: Clause, one: Claim) -> bool:
    """ "couldn't staple the back", "the top isn't taped": of one side only."""
    for at in range(max(clause.first, one.first - 4), min(clause.last, one.last + 4)):
        item = row.items[at]
        if item.concept == "OTHER_SIDE" or (item.concept == "SIDE" and len(item.value) == 1) or (item.concept == "BACK" and at > 0 and row.items[at - 1].concept == "DET"):
            return one.name in _SIDED
        if item.concept == "SIDE_WORD" and at > one.first and row.items[at - 1].concept in ("PLACE_NOUN", "ROOM", "BUILDING", "DET", "WORD") and row.words(at, at + 1).lower() in words_of("small.one_side"):
            return one.name in _SIDED  # "no tape on the wall side"
        if _is_a_part(row, at) or item.concept == "JOINT" and at < one.first and row.items[at - 1].concept == "BACK" and row.words(at, at + 1).lower() in words_of("small.corners"):
            return one.name in _SIDED
    return False


_SIDED = ("stapled", "taped", "rubbed_down", "surface_clean", "cross_tabs")


def _is_a_part(row: Row, at: int) -> bool:
    """ "One side", "the throat", "two corners", "one end", "the heel": no whole of a piece, whatever stands before."""
    concept, before = row.items[at].concept, row.items[at - 1] if at else None
    if concept == "ONE_SIDE":
        return before is None or before.concept not in ("NO", "NOT", "WORD")  # "no dejé ni un lado sin cinta"
    if before is None:
        return False
    said = row.words(at, at + 1).lower()
    if before.concept == "DET" and (concept in ("THROAT", "WORD") and said in words_of("small.parts_of_it") or concept == "SIDE_WORD" and at + 1 < len(row.items) and row.words(at + 1, at + 2).lower() in words_of("small.stands_by")):
        return True  # "the heel", "the side by the wall"
    if concept == "JOINT" and said in words_of("small.corners"):
        return before.concept not in ("BACK", "K_STRAIGHT", "K_ELBOW")
    if concept == "END" and before.concept in ("MALE", "FEMALE"):
        return True
    if concept not in ("JOINT", "END", "SIDE_WORD") and said not in words_of("small.bits_of_it"):
        return False
    if concept == "SIDE_WORD" and before.concept in ("PLACE_NOUN", "ROOM", "BUILDING", "WORD") and said in words_of("small.one_side"):
        return True  # "the wall side isn't taped"
    if at > 2 and before.concept == "DET" and row.items[at - 2].concept == "OF" and row.items[at - 3].concept == "NUM":
        return row.items[at - 3].value.value in (1, 2, 3)  # "one of the sides"
    return before.concept == "NUM" and before.value.value in (1, 2, 3) or row.words(at - 1, at).lower() in words_of("small.ordinals")


def _flip(row: Row, clause: Clause) -> Claim | None:
    """ "no wait, they're not in": what was said last is denied, without being named again."""
    concepts = [live(row, at) for at in range(clause.first, clause.last)]
    at = next((at for at, concept in enumerate(concepts) if concept in ("NOT", "MISSING")), None)
    if at is None:
        return None
    rest = [c for c in concepts[at + 1 :] if c not in ("IN", "IN_PLACE", "FILLER", "ON", "YET")]
    before = [c for c in concepts[:at] if c not in ("FIX", "BE", "IT", "OTHER", "FILLER", "THIS", "DET", "NO", "I", "WORD")]
    if rest or before:
        return None
    return claim(row, "(flip)", None, clause.first + at, clause.last)
