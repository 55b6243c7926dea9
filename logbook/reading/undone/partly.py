"""What was done only in part: "all but the top", "half taped", "three of the four sides".

It would otherwise leave a true fact that a person on site knows to be false.
"""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import ACTS
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import word, words_of
from logbook.reading.clauses.stance import Clause
from logbook.reading.clauses.measured_there import measured_there
from logbook.reading.words.tokens import plain

_WORK = ("STAPLED", "TAPED", "RUBBED", "WIPED", "TRIMMED")
_WHOLE = ("JOINT", "SIDES_ALL", "AROUND", "FLAP")
_ON_A_SIDE = ("SIDE", "OTHER_SIDE", "BACK", "SIDE_WORD", "JOINT", "END", "ONE_SIDE")


def sides_left_out(row: Row, cut: tuple[Clause, ...]) -> list[Claim]:
    """ "Taped all but the top", "stapled every side except the back": not all of it is done."""
    made: list[Claim] = []
    for clause in cut:
        for at in range(clause.first, clause.last):
            if row.is_blank(at) or row.items[at].concept not in ("EXCEPT", "ALL_BUT"):
                continue
            noun = at + 1
            while noun < clause.last and row.items[noun].concept in ("DET", "ON", "OF", "FILLER", "FROM"):
                noun += 1
            acts = [k for k in range(clause.first, at) if row.items[k].concept in (*_WORK, "SHOWS") and not row.is_blank(k)]
            acts = [k for k, behind in zip(acts, [*acts[1:], at]) if behind == at or not any(row.items[j].concept in _WHOLE for j in range(k + 1, behind))]  # "stapled the seams every two and taped everything but the bottom"
            if not acts and noun < clause.last and row.items[noun].concept in _ON_A_SIDE:  # "all but the back stapled"
                behind = next((k for k in range(noun + 1, min(noun + 4, clause.last)) if row.items[k].concept not in ("BE", "HAVE", "FILLER", "SIDE_WORD")), None)
                acts = [behind] if behind is not None and row.items[behind].concept in _WORK and not row.is_blank(behind) else []
            if noun >= clause.last or row.items[noun].concept in ACTS or any(row.items[k].concept in ("NO", "NOT", "NOT_DONE", "PENDING") for k in range(at + 1, min(noun + 2, clause.last) if row.items[noun].concept in _ON_A_SIDE and acts else clause.last)):
                continue  # "all but the top isn't"; but "all but the side you can't see"
            if row.items[noun].concept not in _ON_A_SIDE and (not acts or at - acts[-1] > 2):
                continue
            copied = any(row.items[k].concept in ("SAME_AS", "SAME_THING", "SAME_SIZE") for k in range(clause.first, at))
            behind = any(row.items[k].concept in ("MOVE_IN", "MOVE_DOWN", "MOVE_UP", "MOVE_OUT", "MOVE") for k in range(noun, clause.last))
            acts = [k for k in acts if row.items[k].concept != "STAPLED" or not _spaced_there(row, k, noun)]
            if not copied and not behind:
                made += [claim(row, ACTS[row.items[k].concept], False, min(k, at), max(k, noun) + 1, part="side", hedged=False) for k in acts]
    return made


def _spaced_there(row: Row, act: int, noun: int) -> bool:
    """ "Every two except the back, where it's four": the staples are in there too, and lie wider."""
    if row.items[act + 1 : act + 2] and row.items[act + 1].concept not in ("EVERY", "APART", "ON", "LEN", "NUM", "IT", "HEDGE", "AROUND"):
        return False
    return measured_there(row, noun + 1)


def half_done(row: Row, cut: tuple[Clause, ...], language: Language) -> list[Claim]:
    """ "half taped", "taped halfway around", "only taped the top", "staples are missing": not all of it is done."""
    made: list[Claim] = []
    for clause in cut:
        concepts = [row.items[at].concept for at in range(clause.first, clause.last)]
        only = any(c == "ONLY" and not (concepts[k + 1 : k + 2] == ["HAVE"] and concepts[k + 2 : k + 3] in (["NUM"], ["LEN"])) and not _but(concepts, k) for k, c in enumerate(concepts))  # "I only had eighteen to do it in"
        only = only or concepts[:2] == ["ALL", "I"]  # "all I taped was the bottom"
        begins = clause.first + _from_only(concepts)
        for at in range(clause.first, clause.last):
            item = row.items[at]
            if row.is_blank(at):
                continue
            if item.concept == "PARTLY" and not any(c in ACTS and c not in ("TAPE", "STAPLES", "VANES") for c in concepts):
                near = [k for k in range(max(clause.first, at - 4), min(clause.last, at + 3)) if row.items[k].concept in ("TAPE", "STAPLES")]
                if near:
                    made.append(claim(row, ACTS[row.items[near[0]].concept], False, min(near[0], at), max(near[0], at) + 1, part="side", hedged=False))
            if item.concept == "MISSING" and row.words(at, at + 1).lower() in ("missing", "faltante"):
                near = [k for k in range(max(clause.first, at - 3), min(clause.last, at + 3)) if row.items[k].concept in ("TAPE", "STAPLES", "VANES", "TABS")]
                if near and "NO" not in concepts:
                    made.append(claim(row, ACTS[row.items[near[0]].concept], False, min(near[0], at), max(near[0], at) + 1, part="side", hedged=False))
            if only:
                reason = next((k for k in range(at + 1, clause.last) if re.match(language.acts.because, row.words(k, k + 1).lower())), clause.last)
                sides = {side for k, i in enumerate(row.items[clause.first : reason], clause.first) if i.concept == "SIDE" and not _shaped(row, k, at) for side in i.value}
                if sides and any(row.items[k].concept == "SIDE_WORD" and row.items[k - 1].concept == "NUM" and row.items[k - 1].value.value == 2 for k in range(clause.first + 1, reason)):
                    sides |= {"left", "right"}  # "the top and the two sides"
            listed = only and at >= begins and 1 <= len(sides) <= 3 and not any(c in ("SIDES_ALL", "FLAP", "BOTH") for c in concepts) and "PENDING" not in concepts[: at - clause.first]  # "faltan las grapas de abajo nada más"
            if listed and item.concept in ("STAPLED", "TAPED", "STAPLES", "TAPE") and (sides != {"left", "right"} or _two_of_four(row, clause)) and row.items[at - 1].concept != "NO":  # "the top is the only side without tape"
                name = ACTS[item.concept]
                made.append(claim(row, f"sides_{name}", len(sides), at, at + 1, hedged=False))
                if item.concept in ("STAPLES", "TAPE"):
                    made.append(claim(row, name, True, at, at + 1, hedged=False, weak=True))
                continue
            if only and not sides and item.concept in ("TAPED", "TAPE", "STAPLED", "STAPLES") and _of_a_part(row, at, reason):
                made.append(claim(row, ACTS[item.concept], False, at, at + 1, part="side", hedged=False))  # "I only got tape on the outside of the heel"
                continue
            if listed and item.concept == "SHOWS":  # "scrim only shows on top"
                made.append(claim(row, "scrim_shows", False, at, at + 1, part="side", hedged=False))
            if item.concept not in _WORK:
                continue
            near = at - 1
            while near > clause.first and (row.items[near].concept in ("BE", "IT") or row.words(near, near + 1).lower() in ("esta", "lo", "la", "le")):
                near -= 1
            measure = near >= clause.first and row.items[near].concept in ("NUM", "LEN", "FRAC") and len(row.words(near, near + 1).split()) > 1  # "every two and a half taped"
            before = row.words(near, near + 1).lower().split()[-1] if near >= clause.first and not measure else ""
            behind = row.words(at + 1, at + 2).lower().split()[0] if at + 1 < clause.last and row.items[at + 1].concept != "LEN" else ""
            if row.words(max(clause.first, near - 1), near + 1).lower().endswith(("así mero", "asi mero")):
                before = ""  # "así mero lo encinté": just as it was
            if before in ("todo", "toda", "all") and at - 1 > clause.first:  # "casi todo encintado"
                before = row.words(at - 2, at - 1).lower().split()[-1]
            parts = [row.items[k].concept for k in range(max(clause.first, at - 3), min(clause.last, at + 3))]
            spaced = at + 2 < clause.last and row.items[at + 2].concept in ("ON", "EVERY", "THROUGH")  # "stapled half on two"
            if "PARTLY" in parts or before in words_of("small.half") or (behind in words_of("small.half_behind") and not spaced) or (listed and item.concept in ("RUBBED", "WIPED", "TRIMMED")):
                made.append(claim(row, ACTS[item.concept], False, at, at + 1, part="side", hedged=False))
    return made


def _two_of_four(row: Row, clause: Clause) -> bool:
    """ "nomás los dos lados largos", "solo le encinté los lados": there are others; "both sides" may be all there are."""
    long_ones = not words_of("small.two_of_four").isdisjoint(row.words(clause.first, clause.last).lower().split())
    return long_ones or any(row.items[at].concept == "SIDE" and row.words(at, at + 1).lower() in words_of("small.just_the_sides") for at in range(clause.first, clause.last))


def _but(concepts: list[str], only: int) -> bool:
    """ "… is the same only I forgot the bottom", "only the bottom isn't taped": what is left out is told of, before any act."""
    for concept in concepts[only + 1 :]:
        if concept in _DENYING or concept == "MISSING":
            return True
        if concept not in _BETWEEN:
            return False
    return False


def _from_only(concepts: list[str]) -> int:
    """ "Stapled and only the top is taped": from where on it is told of the part alone."""
    k = concepts.index("ONLY") if "ONLY" in concepts else 0
    ahead = [c for c in concepts[k + 1 : k + 5] if c not in ("DET", "ON", "OF")]
    return k if k and ahead[:1] == ["SIDE"] and any(c in _WORK for c in concepts[k + 1 :]) else 0


_BETWEEN = ("I", "DET", "SIDE", "OTHER_SIDE", "SIDE_WORD", "FILLER", "BE", "HAVE", "ON", "OF", "THIS", "IT", "END", "BACK", "JOINT")


def _shaped(row: Row, side: int, act: int) -> bool:
    """ "la derecha queda recta nomás … la encinté": run together, a side of which the way it goes was told; the act is of the piece."""
    return side + 1 < act and row.items[side + 1].concept in _GOES


_GOES = ("LEVEL", "MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN")


def _of_a_part(row: Row, act: int, end: int) -> bool:
    """ "… on just the one seam", "… on the outside of the heel": right behind the act, and no more than that."""
    behind = [k for k in range(act + 1, min(act + 8, end)) if row.items[k].concept not in ("ON", "DET", "OF", "ONLY", "FILLER", "OUTSIDE", "INSIDE", "AROUND")]
    if not behind:
        return False
    if row.items[behind[0]].concept == "NUM" and row.items[behind[0]].value.value == 1:
        return [row.items[k].concept for k in behind[1:2]] in (["JOINT"], ["END"])
    return row.words(behind[0], behind[0] + 1).lower() in words_of("small.parts_of_it")


_SIDED = ("stapled", "taped", "rubbed_down", "trimmed", "surface_clean", "tabs_bent")
_DENYING = ("NOT", "NO", "NOT_DONE", "FORGOT", "LEFT_OUT")
_BACK = 30  # items


def of_the_rest(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """ "The branch seam's not taped. The rest is.": what is done on the rest is not done on all of it, where it was denied right before."""
    rest = word(language.code, "acts.of_the_rest")
    tabbed = any(one.name == "cross_tabs" and one.value is True for one in claims)  # what has no flap gets tabs, and the rest staples
    done = list(claims)
    for one in claims if any(item.concept in _DENYING for item in row.items) else ():
        if one.name not in _SIDED or one.value is not True or (tabbed and one.name == "stapled") or rest.search(_before(row, one)) is None:
            continue
        before = [c for c in claims if c.name == one.name and c.value is False and not c.pending and 0 <= one.first - c.first < _BACK]
        denied = next((at for at in range(one.first - 1, max(-1, one.first - _BACK), -1) if ACTS.get(row.items[at].concept) == one.name), None)
        if not before and denied is not None and any(row.items[k].concept in _DENYING for k in range(max(0, denied - 4), denied)):
            done = [claim(row, one.name, False, denied, denied + 1, part="side", hedged=False) if c is one else c for c in done]
        done = [replace(c, part="side") if c in before else c for c in done]
    return done


def _before(row: Row, one: Claim) -> str:
    """The words of the sentence right before a claim, and of what it begins with before its act."""
    start = row.items[max(row.sentence_start(one.first), one.first - 6)].start
    return plain(row.text[start : row.items[one.first].start] + (row.words(one.first, one.first + 1).split(" ")[0] if " " in row.words(one.first, one.first + 1) else "")).strip()


def reconciled(claims: list[Claim]) -> list[Claim]:
    """An act denied of one side and done on the others: with a count of sides it is done on that many, without one it is not done."""
    done = list(claims)
    for name in dict.fromkeys(("stapled", "taped", "rubbed_down", "scrim_shows", *(c.name for c in claims if c.part == "side"))):
        sides = [c for c in done if c.name == name and c.part == "side" and not c.pending]
        if not sides:
            continue
        if any(c.name == name and c.value is True and c.corrects and c.first > max(s.first for s in sides) for c in done):
            done = [c for c in done if c not in sides]  # "vanes were missing, found them and put them in"
            continue
        counted = [c for c in done if c.name == f"sides_{name}" and c.value < 4]
        if counted:
            done = [replace(c, name="(open)", value=None) if c in sides else c for c in done if c not in sides or c.opens]
            if not any(c.name == name for c in done):
                one = counted[0]
                done.append(Claim(name, True, one.first, one.last, one.start, one.end))
        else:
            done = [c for c in done if not (c.name == name and c.value is True) and not (c.name == f"sides_{name}")]
    return done
