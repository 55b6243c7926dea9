"""What was done only in part, came off again, or is denied without being named: "all but the top", "tore it off", "but it isn't".

Each would otherwise leave a true fact that a person on site knows to be false.
"""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.claims import Claim, Found, Frame, claim
from logbook.reading.grammar import Row
from logbook.reading.stance import Clause, would

_ACTS = {
    "STAPLED": "stapled", "STAPLES": "stapled", "STAPLE": "stapled", "TAPED": "taped", "TAPE": "taped", "TAPE_IT": "taped", "CLOSURE": "taped",
    "MARK181": "taped", "RUBBED": "rubbed_down", "RUB": "rubbed_down", "VANES": "vanes", "TABS": "cross_tabs", "SEATED": "panel_seated",
    "BENT": "tabs_bent", "CLINCHED": "tabs_bent", "TRIMMED": "trimmed", "TRIM": "trimmed", "WIPED": "surface_clean", "WIPE": "surface_clean", "TIE_RODS": "reinforced", "PREHEATED": "preheated",
}  # fmt: skip
_GONE = frozenset(("came off", "torn off", "gone", "arrancado", "arrancada"))
_REST = frozenset("other others rest remaining otros otras demás resto".split())
_ON_A_SIDE = ("SIDE", "OTHER_SIDE", "BACK", "SIDE_WORD", "JOINT", "END", "ONE_SIDE")
_SMALL = ("BE", "DET", "IT", "FILLER", "THIS", "HAVE", "ON", "OF", "IN", "WITH", "YET", "I", "ANY")
_LOOK_BACK = 14  # items
_BEFORE_UNDONE = (
    *_SMALL, "COMMA", "STOP", "BUT", "AND", "ANOTHER", "SIDE", "SIDE_WORD", "OTHER_SIDE", "JOINT", "ALL", "BOTH", "AROUND", "LATER", "OTHER", "FILLER",
    "OFF", "END", "OVER", "NUM", "WITH", "EVERY", "FITTING", "TO", "WHEN", "IN_PLACE", "LEN", "MARK181", "BACK", "UP",
)  # fmt: skip


def undoings(row: Row, own: Row, cut: tuple[Clause, ...]) -> list[tuple[Claim, int]]:
    """ "Taped it, then tore it off", "the tape came off": the act before it no longer holds. With the item that says so."""
    made: list[tuple[Claim, int]] = []
    for at, item in enumerate(row.items):
        peels = item.concept == "DAMAGE" and item.value == "delaminated"
        gone = item.concept == "MISSING" and row.words(at, at + 1).lower() in _GONE
        if item.concept != "UNDONE" and not peels and not gone:
            continue
        if item.concept == "UNDONE" and not own.is_blank(at):
            made += [(claim(row, "(nothing)", None, k, k + 1), k) for k in _reason(row, at)]
        if item.concept == "UNDONE" and not own.is_blank(at) and not _off_something(row, at):
            noun = next((name for word, name in _OF_THE_PHRASE.items() if word in row.words(at, at + 1).lower()), None)
            if noun is not None and not _done_again(row, at):
                made.append((claim(row, noun, False, at, at + 1, corrects=True, part="undone", hedged=False), at))
                continue
        act = None if _off_something(row, at) or _done_again(row, at) else _act_before(row, at)
        if peels and at + 1 < len(row.items) and row.items[at + 1].concept == "TAPE" and not own.is_blank(at):
            made.append((claim(row, "taped", False, at, at + 2, corrects=True, part="undone", hedged=False), at))
            continue
        if act is None and item.concept == "UNDONE" and not own.is_blank(at) and not _done_again(row, at):
            of = _named_in(row, at)
            if of is not None:
                made.append((claim(row, of[0], False, at, of[1], corrects=True, part="undone", hedged=False), at))
                continue
        if act is None or own.is_blank(act) or ((peels or gone) and row.items[act].concept not in ("TAPE", "STAPLES", "CLOSURE")):
            continue
        name = _ACTS[row.items[act].concept]
        near = act if all(row.items[k].concept not in ("COMMA", "STOP") for k in range(act, at)) else at
        made.append((claim(row, name, False, near, at + 1, corrects=True, part="undone", hedged=False), at))
    return made


_NOUNS = {"cinta": "taped", "teip": "taped", "tape": "taped", "grapas": "stapled", "aletas": "vanes"}


def _named_in(row: Row, at: int) -> tuple[str, int] | None:
    """ "Le quité la cinta", "se le cayó el teip": the act is named by the words that undo it, or right behind them."""
    last = row.words(at, at + 1).lower().split()[-1]
    noun = at + 2 if at + 1 < len(row.items) and row.items[at + 1].concept == "DET" else at + 1
    if last in _NOUNS:
        if row.words(noun, noun + 1).lower().startswith(("vieja", "mala", "sobrante")) if noun < len(row.items) else False:
            return None
        return _NOUNS[last], at + 1
    if noun < len(row.items) and row.items[noun].concept in ("TAPE", "STAPLES", "VANES") and row.words(at, at + 1).lower().startswith(("se le", "se les", "se está", "se esta", "se cay")):
        return _ACTS[row.items[noun].concept], noun + 1
    return None
_OF_THE_PHRASE = {"vane": "vanes", "staple": "stapled", "tape": "taped"}  # "pulled the vanes out": the act is named in it


def _reason(row: Row, at: int) -> range:
    """ "pulled them since the flap had ripped": why he did, which says nothing of the piece as it is."""
    if row.words(at + 1, at + 2).lower().split()[0] not in ("since", "because", "cause", "cuz", "porque") if at + 1 < len(row.items) else True:
        return range(0)
    last = at + 1
    while last < len(row.items) and row.items[last].concept not in ("COMMA", "STOP", "BUT"):
        last += 1
    return range(at + 1, last)


def _done_again(row: Row, at: int) -> bool:
    """ "pulled that, did it again at two": it holds again."""
    for item in row.items[at + 1 : at + 6]:
        if item.concept in ("STOP", "QUERY"):
            return False
        if item.concept == "REDID":
            return True
    return False


def _off_something(row: Row, at: int) -> bool:
    """ "took it off the bench", "se cayó la etiqueta": it is of another thing; "tore it off the top" is of the act."""
    behind = [item.concept for item in row.items[at + 1 : at + 3]]
    return behind[:1] in (["DET"], ["ON_BENCH"], ["BUILDING"], ["FITTING"]) and behind[1:] not in (["SIDE"], ["JOINT"], ["TAPE"], ["STAPLES"], ["VANES"])


def _act_before(row: Row, at: int) -> int | None:
    """The act that "tore it off" is of: right before, with nothing between that it could be of instead."""
    stops = 0
    for back in range(at - 1, max(-1, at - _LOOK_BACK), -1):
        concept = row.items[back].concept
        if row.is_blank(back):
            continue
        if concept == "CLINCHED" and not any(row.items[k].concept == "TABS" for k in range(max(0, back - 4), back)):
            return None
        if concept in _ACTS:
            return back
        stops += concept == "STOP"
        if (concept.startswith("K_") or concept == "FITTING") and back > 0 and row.items[back - 1].concept in _ACTS:  # "stapled straight nine, then pulled every one"
            return back - 1
        if concept.startswith("K_") and back > 1 and row.items[back - 1].concept in ("ON", "IN") and row.items[back - 2].concept in _ACTS:  # "tape's on tee nine. It's falling off"
            return back - 2
        passing = concept in ("DAY", "SHIFT") or row.words(back, back + 1).lower() in ("yesterday", "overnight", "last night", "last week", "monday", "friday", "by", "lunch", "noon", "by noon", "morning", "by morning", "ayer", "anoche")
        if stops > 1 or (concept not in _BEFORE_UNDONE and not passing):
            return None
    return None


def but_not(row: Row, why: dict[int, str], cut: tuple[Clause, ...]) -> list[Claim]:
    """ "If it was taped I'd hang it, but it isn't", "the drawing has vanes, mine doesn't": the act named before is denied."""
    made: list[Claim] = []
    for place, clause in enumerate(cut):
        if place == 0 or clause.first in why and not _own_again(row, clause):
            continue
        not_at = next((at for at in range(clause.first, clause.last) if row.items[at].concept in ("NOT", "NO")), None)
        if not_at is None or not _only_small(row, clause, not_at):
            continue
        act = _act_of_others(row, why, cut, place)
        if act is not None:
            made.append(claim(row, _ACTS[row.items[act].concept], False, clause.first, clause.last, corrects=True, hedged=False))
    return made


def so_is(row: Row, cut: tuple[Clause, ...]) -> list[Claim]:
    """ "Cap nine isn't taped. Eight is.": the act denied of the one is done on the other."""
    made: list[Claim] = []
    for place, clause in enumerate(cut[1:], 1):
        items = row.items[clause.first : clause.last]
        head = [item.concept for item in items if item.concept not in ("FILLER", "AND", "BUT", "FITTING", "NUMBER", "DET", "ON", "OF", "IN", "I", "IT") and not item.concept.startswith("K_")]
        if not row.is_blank(clause.first) and head[:2] == ["NUM", "EVERY"]:  # "forty-one stapled every two, forty-two every three"
            act = _last_done(row, cut, place)
            if act is not None and row.items[act].concept == "STAPLED":
                made.append(claim(row, "stapled", True, clause.last - 1, clause.last, hedged=False, weak=True))
                continue
        if not row.is_blank(clause.first) and head in _NOT_ON and items[-2].concept in ("ON", "IN", "OF", "MISSING"):  # "vanes in five, none in six"
            act = _last_done(row, cut, place)
            if act is not None:
                at = next(k for k in range(clause.first, clause.last) if row.items[k].concept in ("NO", "NOT", "MISSING"))
                made.append(claim(row, _ACTS.get(row.items[act].concept, "scrim_shows"), False, at, at + 1, hedged=False))
                continue
        if not row.is_blank(clause.first) and head[:1] in (["NUM"], ["MARKED"]):
            rest = _past_marks(head)
            denies = rest in _LACKS and (items[-1].concept in ("NOT", "NO") or rest[-1] == "BE" or row.words(clause.last - 1, clause.last).lower() in ("any", "one"))
            too = not rest and row.words(clause.last - 1, clause.last).lower() in _TOO
            act = _last_done(row, cut, place) if denies or too else None
            if act is not None:
                made.append(claim(row, _DONE_TOO.get(row.items[act].concept) or _ACTS[row.items[act].concept], too, clause.last - 1, clause.last, hedged=False))  # "four is taped, five too, six isn't"
                continue
        if row.is_blank(clause.first) or [item.concept for item in items if item.concept not in ("FILLER", "AND", "BUT", "FITTING", "NUMBER")] != ["NUM", "BE"]:
            continue
        before = cut[place - 1]
        acts = [at for at in range(before.first, before.last) if row.items[at].concept in _ACTS]
        if acts and any(row.items[at].concept in ("NOT", "NOT_DONE") for at in range(before.first, acts[0])):
            made.append(claim(row, _ACTS[row.items[acts[0]].concept], True, clause.last - 2, clause.last, hedged=False))
    return made


def _past_marks(head: list[str]) -> list[str]:
    """What stands behind the numbers of pieces: behind "three and four" in "three and four don't"."""
    at = 0
    while at < len(head) and head[at] in ("NUM", "MARKED", "COMMA"):
        at += 1
    return head[at:]


# "six isn't", "six has none", "six never was", "six didn't get any"
_LACKS = (["NOT"], ["BE", "NOT"], ["NO"], ["HAVE", "NO"], ["NOT", "BE"], ["NOT", "HAVE"], ["HAVE", "NOT"], ["WORD", "NO"], ["NOT", "WORD", "NO"], ["NOT", "HAVE", "WORD"], ["NOT_DONE"])
_NOT_ON = tuple([no, mark] for no in ("NO", "NOT", "MISSING") for mark in ("NUM", "MARKED"))
_DONE_TOO = {"SHOWS": "scrim_shows"}
_TOO = ("también", "tambien", "too", "also", "as well")


def _last_done(row: Row, cut: tuple[Clause, ...], place: int) -> int | None:
    """The act done in the clause before, past clauses that only say "five too"."""
    for clause in reversed(cut[max(0, place - 4) : place]):
        concepts = [row.items[at].concept for at in range(clause.first, clause.last)]
        if any(c in ("NOT", "NO", "NOT_DONE", "PENDING") for c in concepts) or row.is_blank(clause.first):
            return None
        acts = [clause.first + k for k, c in enumerate(concepts) if c in ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "VANES", "WIPED", "PREHEATED", "SHOWS", "TAPE", "STAPLES")]
        if acts:
            return acts[-1]
        if len(concepts) > 4:
            return None
    return None


def _own_again(row: Row, clause: Clause) -> bool:
    return row.items[clause.first].concept == "BUT"


def _only_small(row: Row, clause: Clause, not_at: int) -> bool:
    for at in range(clause.first, clause.last):
        item = row.items[at]
        if at == not_at or item.concept in ("BUT", "AND", *_SMALL):
            continue
        if item.concept in ("FITTING", "NUMBER", "NUM", "GENERIC") and at < not_at:
            continue
        if item.concept in ("IN_PLACE", "MOVE_IN") and at < not_at:  # "this one went in without"
            continue
        if row.words(at, at + 1).lower() in ("went", "comes", "goes", "mine", "ours", "any", "them", "there", "mío", "mía", "that", "ninguna", "actually", "though"):
            continue
        return False
    return True


def _act_of_others(row: Row, why: dict[int, str], cut, place: int) -> int | None:
    """The act last named in a clause right before, of this sentence, that was a condition, a drawing or another's."""
    for before in range(place - 1, max(-1, place - 5), -1):
        if cut[before].sentence != cut[place].sentence:
            return None
        acts = [at for at in range(cut[before].first, cut[before].last) if row.items[at].concept in _ACTS]
        if acts and would(row, cut[before]):
            return None
        if acts:
            return acts[0] if why.get(acts[0]) in ("condition", "drawing", "other") else None
    return None


def not_after_all(own: Row) -> list[Claim]:
    """ "Encintado no perdón todavía no": said and taken back in one breath, without a comma."""
    found = own.find("(?P<act>STAPLED|TAPED|RUBBED) FIX (?:NOT_DONE|YET NOT|NOT YET|NOT) (?=SEP|$)")
    return [claim(own, _ACTS[own.items[m.start("act")].concept], False, m.start() + 1, m.end(), corrects=True, hedged=False) for m in found]


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
            acts = [k for k in range(clause.first, at) if row.items[k].concept in ("STAPLED", "TAPED", "RUBBED", "SHOWS") and not row.is_blank(k)]
            if noun >= clause.last or row.items[noun].concept in _ACTS or any(row.items[k].concept in ("NO", "NOT", "NOT_DONE", "PENDING") for k in range(at + 1, clause.last)):
                continue
            if row.items[noun].concept not in _ON_A_SIDE and (not acts or at - acts[-1] > 2):
                continue
            copied = any(row.items[k].concept in ("SAME_AS", "SAME_THING", "SAME_SIZE") for k in range(clause.first, at))
            behind = any(row.items[k].concept in ("MOVE_IN", "MOVE_DOWN", "MOVE_UP", "MOVE_OUT", "MOVE") for k in range(noun, clause.last))
            if not copied and not behind:
                names = {**_ACTS, "SHOWS": "scrim_shows"}
                made += [claim(row, names[row.items[k].concept], False, k, noun + 1, part="side", hedged=False) for k in acts]
    return made


_HALF = frozenset("half partly partially mostly hardly barely scarcely almost nearly halfway partway semi medio media casi mero apenas parcialmente".split())
_HALF_BEHIND = frozenset("halfway partway mostly half a medias mitad parcialmente".split()) - {"a"}


def half_done(row: Row, cut: tuple[Clause, ...], language: Language) -> list[Claim]:
    """ "half taped", "taped halfway around", "only taped the top", "staples are missing": not all of it is done."""
    made: list[Claim] = []
    for clause in cut:
        concepts = [row.items[at].concept for at in range(clause.first, clause.last)]
        only = "ONLY" in concepts
        for at in range(clause.first, clause.last):
            item = row.items[at]
            if row.is_blank(at):
                continue
            if item.concept == "PARTLY" and not any(c in _ACTS and c not in ("TAPE", "STAPLES", "VANES") for c in concepts):
                near = [k for k in range(max(clause.first, at - 4), min(clause.last, at + 3)) if row.items[k].concept in ("TAPE", "STAPLES")]
                if near:
                    made.append(claim(row, _ACTS[row.items[near[0]].concept], False, min(near[0], at), max(near[0], at) + 1, part="side", hedged=False))
            if item.concept == "MISSING" and row.words(at, at + 1).lower() in ("missing", "faltante"):
                near = [k for k in range(max(clause.first, at - 3), min(clause.last, at + 3)) if row.items[k].concept in ("TAPE", "STAPLES", "VANES", "TABS")]
                if near and "NO" not in concepts:
                    made.append(claim(row, _ACTS[row.items[near[0]].concept], False, min(near[0], at), max(near[0], at) + 1, part="side", hedged=False))
            if only:
                reason = next((k for k in range(at + 1, clause.last) if re.match(language.acts.because, row.words(k, k + 1).lower())), clause.last)
                sides = {side for i in row.items[clause.first : reason] if i.concept == "SIDE" for side in i.value}
            listed = only and 1 <= len(sides) <= 3 and not any(c in ("SIDES_ALL", "FLAP", "BOTH") for c in concepts)
            if listed and item.concept in ("STAPLED", "TAPED", "STAPLES", "TAPE") and sides != {"left", "right"}:
                name = _ACTS[item.concept]
                made.append(claim(row, f"sides_{name}", len(sides), at, at + 1, hedged=False))
                if item.concept in ("STAPLES", "TAPE"):
                    made.append(claim(row, name, True, at, at + 1, hedged=False, weak=True))
                continue
            if listed and item.concept == "SHOWS":  # "scrim only shows on top"
                made.append(claim(row, "scrim_shows", False, at, at + 1, part="side", hedged=False))
            if item.concept not in ("STAPLED", "TAPED", "RUBBED"):
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
            if "PARTLY" in parts or before in _HALF or (behind in _HALF_BEHIND and not spaced) or (listed and item.concept == "RUBBED"):
                made.append(claim(row, _ACTS[item.concept], False, at, at + 1, part="side", hedged=False))
    return made


def _rest(found: Found):
    """ "the other three are stapled": a count of sides without the word."""
    if found.row.words(found.at("o"), found.at("o") + 1).lower().split()[-1] not in _REST:
        return
    number = found.item("n").value.value
    if number.denominator == 1 and 1 <= number <= 3:
        for item in found.items("acts"):
            if item.concept in ("STAPLED", "TAPED"):
                name = _ACTS[item.concept]
                yield found.claim(f"sides_{name}", int(number), group="w", uses=("n",), hedged=False)


def _listed(found: Found):
    """ "Taped on top, bottom and left": three sides named are three sides done."""
    sides = {side for item in found.items("sides") if item.concept == "SIDE" for side in item.value}
    if len(sides) >= 3:
        for item in found.items("acts"):
            if item.concept in ("STAPLED", "TAPED"):
                yield found.claim(f"sides_{_ACTS[item.concept]}", len(sides), group="w", hedged=False)


def _one_side(found: Found):
    """ "Stapled one side", "tape on one side only"; "one side and then the other" are two."""
    ahead = [item.concept for item in found.row.items[found.last : found.last + 5]]
    if "OTHER_SIDE" in ahead or "ANOTHER" in ahead or "OTHER" in ahead or found.row.items[found.at("o") - 1].concept == "EXCEPT":
        return
    for item in found.items("acts"):
        name = _ACTS[item.concept]
        if item.concept in ("STAPLES", "TAPE"):
            yield found.claim(name, True, group="w", weak=True)
        if name in ("stapled", "taped"):
            yield found.claim(f"sides_{name}", 1, group="w", hedged=False)


def _of_four(found: Found):
    """ "three of the four sides" """
    number = found.item("n").value.value
    if number.denominator == 1 and 1 <= number <= 4:
        for item in found.items("acts"):
            if item.concept in ("STAPLED", "TAPED"):
                yield found.claim(f"sides_{_ACTS[item.concept]}", int(number), group="w", uses=("n",), hedged=False)


_ACT_LIST = "(?P<acts>(?:STAPLED|TAPED)(?:(?:COMMA|AND){1,2} (?:FILL){0,2} (?:STAPLED|TAPED))*)"
FRAMES = (
    Frame(f"(?P<w>(?P<o>WORD|OTHER) (?P<n>NUM) SIDE_WORD? (?:FILL){{0,2}} {_ACT_LIST})", _rest),
    Frame(f"(?P<w>{_ACT_LIST} (?:FILL|ON|OF){{0,2}} (?P<o>WORD|OTHER) (?P<n>NUM) SIDE_WORD?)", _rest),
    Frame(f"(?P<w>{_ACT_LIST} (?:FILL|ON|OF){{0,2}} (?P<n>NUM) OF DET? NUM SIDE_WORD)", _of_four),
    Frame(f"(?P<w>(?P<n>NUM) OF DET? NUM SIDE_WORD (?:FILL){{0,2}} {_ACT_LIST})", _of_four),
    Frame(f"(?P<w>{_ACT_LIST} IT? (?:STOP|COMMA|BUT|FILLER){{1,4}} (?:ONLY|FILLER)? (?P<n>NUM) SIDE_WORD (?:OF|ON)? IT?) (?=SEP|$)", _of_four),
    Frame(f"(?P<w>{_ACT_LIST} (?P<n>NUM) OF DET? NUM) (?=SEP|$)", _of_four),
    Frame(f"(?P<w>{_ACT_LIST} (?P<n>NUM)) (?=COMMA COUNT COUNTED)", _of_four),
    Frame(f"(?P<w>(?P<sides>SIDE (?:(?:COMMA|AND){{0,2}} DET? SIDE)+) (?:FILL){{0,3}} {_ACT_LIST})", _listed),
    Frame(f"(?P<w>{_ACT_LIST} (?:FILL|ON|OF|ONLY){{0,2}} (?P<o>ONE_SIDE))", _one_side),
    Frame("(?P<w>(?P<acts>STAPLES|TAPE) (?:FILL|ON|ONLY){0,2} (?P<o>ONE_SIDE))", _one_side),
    Frame(f"(?P<w>{_ACT_LIST} (?:FILL|ON|OF){{0,2}} (?P<sides>SIDE (?:(?:COMMA|AND){{1,2}} DET? SIDE)+))", _listed),
)


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
