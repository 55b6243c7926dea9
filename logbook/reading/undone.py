"""What was not done: denials ("no vanes") and work still to do ("still have to tape it"), which is an open item too."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from fractions import Fraction

from logbook.reading.claims import Claim, Open, claim
from logbook.reading.grammar import Row
from logbook.reading.stance import Clause

# concept -> (fact, value when denied)
DENIED = {
    "STAPLED": ("stapled", False), "STAPLE": ("stapled", False), "STAPLES": ("stapled", False), "TAPED": ("taped", False),
    "TAPE": ("taped", False), "TAPE_IT": ("taped", False), "RUBBED": ("rubbed_down", False), "RUB": ("rubbed_down", False), "VANES": ("vanes", False),
    "FLAP": ("staple_flap", False), "TABS": ("cross_tabs", False), "SCRIM": ("scrim_shows", False), "SHOWS": ("scrim_shows", False),
    "TRIMMED": ("trimmed", False), "TRIM": ("trimmed", False), "WIPED": ("surface_clean", False), "WIPE": ("surface_clean", False),
    "PREHEATED": ("preheated", False), "SEATED": ("panel_seated", False), "REPAIRED": ("damage_repaired", False),
    "TIE_RODS": ("reinforced", False), "CUT_LENGTH": ("cut_to_length", False), "DAMAGE": ("facing_damage", "none"),
    "REPAIR_IT": ("damage_repaired", False), "HEAT_IT": ("preheated", False), "GAP": ("gap", Fraction(0)), "BENT": ("tabs_bent", False), "ON_ITS_OWN": ("accessory_supported", False),
}  # fmt: skip
_ELSEWHERE = frozenset("truck box order backorder van shop trailer gangbox ground camión caja camino pedido bodega".split())  # parts that lie there are not in
_LEFT_UNDONE = ("TAPE", "STAPLES", "VANES", "TABS", "RUB", "RUBBED", "TAPE_IT", "STAPLE", "TRIM", "WIPE", "TIE_RODS")
_HANGING = ("HANG", "HUNG")
_SILENT = ("TIGHT", "SHIPLAP", "BUTT", "C_MASTIC", "CLOSURE", "HUNG", "ON_BENCH", "TIED", "MARK181", "SEATED", "HANG")
_BESIDE = ("TIED", "C_MASTIC", "SEALED", "CUT_TO", "SCREWS", "CLOSURE")
_PASSES = (
    "DET", "IT", "BE", "HEDGE", "THINK", "FILLER", "THIS", "HAVE", "HAVING", "ALL", "EACH", "WORD", "ON", "OF", "IN_PLACE", "GENERIC", "YET", "I",
    "TURNING", "BOTH", "TO", "IT", "WITH", "ANOTHER", "GOING_TO", "MOVE", "FITTING", "TAKES", "AROUND", "UP",
)  # fmt: skip
_PAST = ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "WIPED", "HUNG")
_STRONG = 5  # letters of "still": a bare "have to" about nothing of ours is no open item


@dataclass(frozen=True)
class Undone:
    claims: tuple[Claim, ...]
    blank: frozenset[int]  # items these words have used up
    plans: frozenset[int]  # items that are plans of something else


def undone(row: Row, cut: tuple[Clause, ...]) -> Undone:
    claims: list[Claim] = []
    blank: set[int] = set()
    plans: set[int] = set()
    skip_to = 0
    for place, clause in enumerate(cut):
        if clause.first < skip_to or row.is_blank(clause.first):
            continue
        begin = _pending_at(row, clause)
        if begin is None:
            continue
        end = _pending_end(row, cut, place, begin)
        made = _pending(row, clause, begin, end)
        if made:
            claims.extend(made)
            blank.update(range(made[0].first, end))
            skip_to = end
        else:
            plans.update(range(begin, clause.last))
            if row.items[begin].concept == "NEED":
                plans.update(i for c in _rest_of_sentence(cut, place) for i in range(c.first, c.last))
    rest = row.blanked(blank | plans)
    for clause in cut:
        for one in _denials(rest, clause):
            claims.append(replace(one, part="side") if _of_one_side(row, clause, one) else one)
            blank.update(range(one.first, one.last))
    return Undone(tuple(claims), frozenset(blank), frozenset(plans))


def _rest_of_sentence(cut: tuple[Clause, ...], place: int):
    for clause in cut[place : place + 40]:
        if clause.sentence != cut[place].sentence:
            return
        yield clause


def _pending_at(row: Row, clause: Clause) -> int | None:
    """Where work still to do begins to be told in this clause."""
    concepts = [_live(row, at) for at in range(clause.first, clause.last)]
    for at, concept in enumerate(concepts):
        if concept in ("PENDING", "NEED") and at and concepts[at - 1] == "NOT":
            return None
        if concept == "NEED" and at and (concepts[at - 1] == "NO" or row.words(clause.first + at - 1, clause.first + at).lower().replace("’", "'").endswith("n't")):
            return None  # "no need for vanes", "so it doesn't need any"
        if concept in ("PENDING", "NOT_DONE", "WILL", "NEED"):
            return clause.first + at
        if concept in _TO_DO and _is_soon(row, clause, clause.first + at):
            return clause.first + at
        if concept == "GOING_TO" and "NOT" in concepts[:at]:
            return clause.first + concepts.index("NOT")
    if "LATER" in concepts and not any(c in _PAST for c in concepts[: concepts.index("LATER")]):
        return clause.first + concepts.index("LATER")
    if "YET" in concepts:
        for word in ("NOT", "NO"):
            if word in concepts:
                return clause.first + concepts.index(word)
    return None


_TO_DO = ("TAPE_IT", "STAPLE", "RUB")
_SOON = frozenset("ahorita orita horita luego después despues rato ratito mero mañana enseguida lunes martes miércoles miercoles jueves viernes sábado sabado noche tarde".split())


def _is_soon(row: Row, clause: Clause, at: int) -> bool:
    """ "Ahorita lo encinto": the present of a verb beside a time that comes is a plan."""
    said = row.words(at, at + 1).lower().split()[-1]
    return said.endswith("o") and "ar" not in said[-4:] and not _SOON.isdisjoint(row.words(clause.first, clause.last).lower().split())


def _live(row: Row, at: int) -> str:
    return "" if row.is_blank(at) else row.items[at].concept


def _pending_end(row: Row, cut, place: int, begin: int) -> int:
    """The end of the clause, and of those behind it that only go on listing ("staple, tape and rub it")."""
    clause, end = cut[place], cut[place].last
    base = row.items[begin].concept != "NOT_DONE"
    seen_act = False
    for at in range(begin + 1, end):
        concept = row.items[at].concept
        if base and row.words(at, at + 1).lower() == "ya" and any(row.items[k].concept in _PAST for k in range(at + 1, min(at + 4, end))):  # "le faltaba una esquina y ya la encinté"
            return at - 1 if row.items[at - 1].concept == "AND" else at
        if base and seen_act and (concept in _PAST or concept in ("STAPLES",)) and row.items[at - 1].concept not in ("BE", "DET", "TO", "OF", "OR"):
            return at - 1 if row.items[at - 1].concept == "AND" else at
        runs_on = row.items[begin].concept == "NOT_DONE" and seen_act and concept in _PAST
        if runs_on and row.items[at - 1].concept not in ("AND", "OR", "BE", "FILLER", "WILL", "BOTH"):
            return at
        seen_act = seen_act or concept in DENIED or concept in _HANGING
    for following in cut[place + 1 : place + 12]:
        first = row.items[following.first].concept
        second = row.items[min(following.first + 1, following.last - 1)].concept
        listing = first in ("STAPLE", "TAPE", "TAPE_IT", "RUB", "TRIM", "HANG", "WIPE") or (first in ("AND", "OR") and second in ("STAPLE", "TAPE", "TAPE_IT", "RUB", "TRIM", "HANG", "WIPE"))
        listing = listing or (row.items[begin].concept == "NOT_DONE" and first == "OR")
        if following.sentence != clause.sentence or not listing:
            break
        end = following.last
    return end


def _pending(row: Row, clause: Clause, begin: int, end: int) -> list[Claim]:
    first = _start_of(row, clause, begin)
    start, stop = row.items[first].start, row.items[end - 1].end
    acts = [at for at in range(first, end) if row.items[at].concept in DENIED or row.items[at].concept in _HANGING or row.items[at].concept in _BESIDE]
    if row.items[begin].concept in ("NOT", "NO", "NOT_DONE") and not any(at >= begin for at in acts):
        nouns = [at for at in range(clause.first, begin) if row.items[at].concept in ("VANES", "TAPE", "STAPLES", "TABS", "PANEL", "FLAP")]
        if nouns:
            first, acts = nouns[-1], [nouns[-1]]
            start, begin = row.items[first].start, first
    clitic = row.items[begin].concept == "WILL" and begin > clause.first and row.items[begin - 1].concept == "DET"  # "la cinta se la pongo mañana"
    if not any(at >= begin for at in acts) and (row.items[begin].concept in ("PENDING", "NOT_DONE") or clitic):
        noun = begin - 1  # "la cinta falta", "the tape, not yet"
        while noun > clause.first and row.items[noun].concept in ("BE", "FILLER", "DET", "HAVE", "YET"):
            noun -= 1
        if noun >= clause.first and row.items[noun].concept in ("VANES", "TAPE", "STAPLES", "TABS", "FLAP") and _live(row, noun):
            first, acts = noun, [noun]
            start, begin = row.items[noun].start, noun
    acts = [at for at in acts if at >= begin or row.items[begin].concept in ("PENDING", "LATER")]
    strong = row.items[begin].concept in ("PENDING", "NOT_DONE")
    made: list[Claim] = []
    names: set[str] = set()
    for at in acts:
        concept = row.items[at].concept
        if concept in _HANGING:
            name, about, denies, value = "(open)", "hanging", None, None
        elif concept in _BESIDE:
            name, about, denies, value = "(open)", "piece", None, None
        else:
            (name, value), about = DENIED[concept], "piece"
            denies = name
            if value is not False or (concept == "SHOWS" and row.words(at, at + 1).lower().endswith("up") and not any(row.items[k].concept == "SCRIM" for k in range(max(0, at - 8), at))):
                continue  # "if the lift shows up"
        if (name, about) in names:
            continue
        names.add((name, about))
        made.append(claim(row, name, value, first, end, opens=(Open(about, denies, start, stop),), pending=True, hedged=False))
    if not made and strong and _is_strong(row, begin):
        made.append(claim(row, "(open)", None, first, end, opens=(Open("piece" if _OF_THE_PIECE.search(row.text[start:stop].lower()) else "other", None, start, stop),), pending=True, hedged=False))
    return made


_OF_THE_PIECE = re.compile(
    r"\b(?:fill|close|seal|plug|tighten|caulk|redo|mend|square)\b(?: up| in| off| out)* (?:that|it|them|this|those|the (?:gap|corner|joint|seam|hole|rest|other|last|tear))\b"
    r"|\bother (?:one|two|three|side|sides|half|end|ends|corner|corners)(?: is| are|'s)?(?: still)? pending"
)  # what is pending is work on this piece, though no act of ours is named


def _is_strong(row: Row, begin: int) -> bool:
    item = row.items[begin]
    words = row.text[item.start : item.end].lower()
    return "still" in words or "left" in words or "waiting" in words or "pending" in words or "falt" in words or "pendiente" in words or item.concept == "NOT_DONE"


def _start_of(row: Row, clause: Clause, begin: int) -> int:
    """The whole clause, unless something else was stated before the words that tell the pending work."""
    stated = (*_PAST, "SIZE", "STAPLES", "EVERY", "VANES", "MARK181", "LEN", "FLAP", "DAMAGE")
    first = clause.first
    for at in range(begin - 1, clause.first - 1, -1):
        if row.items[at].concept in stated and row.items[begin].concept in ("NOT_DONE", "NOT", "NO", "PENDING", "WILL", "LATER"):
            if row.items[begin].concept == "PENDING" and begin - at <= 3 and row.items[at].concept in ("TAPE", "VANES", "STAPLES"):
                continue
            first = at + 1
            break
        if row.items[at].concept.startswith("K_") or row.items[at].concept in ("FITTING", "RUN"):
            first = begin
            break
    while first < begin and row.items[first].concept in ("AND", "BUT", "FILLER", "COMMA", "NUM", "OR"):
        first += 1
    return first


def _denials(row: Row, clause: Clause) -> list[Claim]:
    made: list[Claim] = []
    at = clause.first
    if row.items[clause.first].concept == "FIX" or (clause.first > 1 and row.items[clause.first - 2].concept == "FIX"):
        flip = _flip(row, clause)
        if flip is not None:
            return [flip]
    over = _none_without(row, clause)
    if over:
        return over
    while at < clause.last:
        concept = _live(row, at)
        if concept == "FORGOT" and at + 2 < clause.last and _live(row, at + 1) == "DET" and _live(row, at + 2) in ("TAPE", "STAPLES", "VANES", "TABS"):
            made.append(claim(row, *DENIED[_live(row, at + 2)], at, at + 3))
            at += 3
            continue
        if concept == "FORGOT" and at + 1 < clause.last and _live(row, at + 1) in ("RUB", "TAPE_IT", "STAPLE", "TRIM", "WIPE", "TAPE", "RUBBED", "STAPLED", "STAPLES", "VANES", "TABS"):
            made.append(claim(row, *DENIED[_live(row, at + 1)], at, at + 2))
            at += 2
            continue
        if concept in ("EXCEPT", "ALL_BUT") and not any(_live(row, k) in ("SAME_AS", "SAME_THING") for k in range(clause.first, at)):
            noun = at + 1
            while noun < clause.last and _live(row, noun) in ("DET", "OF", "FILLER"):
                noun += 1
            if noun < clause.last and _live(row, noun) in (*_LEFT_UNDONE, "TAPED", "STAPLED"):
                made.append(claim(row, *DENIED[_live(row, noun)], at, noun + 1))
                at = noun + 1
                continue
        if concept == "BUT" and at == clause.first and clause.last - at <= 3 and _live(row, clause.last - 1) in _LEFT_UNDONE and clause.last - at > 1:
            if clause.last - at == 2 or _live(row, at + 1) == "DET":  # "all set but the tape"
                made.append(claim(row, *DENIED[_live(row, clause.last - 1)], at, clause.last))
                break
        if concept == "NOT_FORGET":
            act = next((k for k in range(at + 1, min(at + 4, clause.last)) if _live(row, k) in DENIED and DENIED[_live(row, k)][1] is False), None)
            if act is not None:
                made.append(claim(row, DENIED[_live(row, act)][0], True, at, act + 1))
                at = act + 1
                continue
        if concept in ("NOT", "NO", "NOT_DONE"):
            found = _denied(row, clause, at)
            made.extend(found)
            if found:
                at = found[-1].last
                continue
        if concept == "VANES":
            away = [row.words(k, k + 1).lower().split()[-1] if row.items[k].concept != "BE" else "" for k in range(at + 1, min(at + 6, clause.last))]
            if any(word in _ELSEWHERE for word in away) and not {"IN_PLACE", "PENDING"} & {_live(row, k) for k in range(at + 1, clause.last)}:
                end = next(k for k in range(at + 1, min(at + 6, clause.last)) if row.items[k].concept != "BE" and row.words(k, k + 1).lower().split()[-1] in _ELSEWHERE) + 1
                made.append(claim(row, "vanes", False, at, end))
                at = end
                continue
        if concept == "LEFT_OUT":
            noun = next((k for k in range(at + 1, min(at + 4, clause.last)) if _live(row, k) in ("VANES", "STAPLES", "TAPE", "TABS", "TIE_RODS")), None)
            out = noun is not None and (row.words(at, at + 1).lower().split()[-1] in ("out", "off") or (noun + 1 < clause.last and _live(row, noun + 1) in ("OUT", "MISSING", "OFF")))
            if out:
                ends = noun + 1 if _live(row, noun + 1 if noun + 1 < clause.last else noun) not in ("OUT", "MISSING", "OFF") else noun + 2
                made.append(claim(row, *DENIED[_live(row, noun)], at, ends))
                at = ends
                continue
        if concept in ("VANES", "FLAP", "SCRIM", "TAPE", "TABS", "PANEL", "TAPED", "RUBBED", "STAPLES") and at + 1 < clause.last:
            past = _past_piece(row, clause, at) - at
            behind = [_live(row, at + past + k) if at + past + k < clause.last else "" for k in (1, 2, 3)]
            step = next((k for k, c in enumerate(behind) if c in ("NOT", "MISSING", "OUT", "NO")), None)
            if step is not None and row.words(at + past + 1 + step, at + past + 2 + step).lower() in _WIDE:
                step = None  # "all taped, nobody had to tell me"
            if step is not None and all(c in ("BE", "FILLER", "DET", "THIS", "ON", "IT") for c in behind[:step]):
                neg = behind[step]
                follows = behind[step + 1] if step + 1 < 3 else ""
                name = DENIED["SEATED"] if concept == "PANEL" else DENIED[concept]
                needless = at + 2 + step < clause.last and row.words(at + 2 + step, at + 3 + step).lower().split()[0] in _NEEDED
                if needless:
                    made.append(claim(row, "(nothing)", None, at, at + 3 + step))
                    at += 3 + step
                    continue
                if (neg == "MISSING" and concept in ("VANES", "FLAP", "TABS")) or (neg == "OUT" and concept == "VANES") or (
                    neg == "NOT" and not (concept in ("RUBBED", "TAPED") and follows in ("SHOWS", "SEE", "SCRIM")) and follows not in _OF_ANOTHER
                ) or (neg == "NO" and concept == "VANES" and not follows):
                    last = at + past + 1 + step + 1
                    last = last + 1 if last < clause.last and _live(row, last) in ("SHOWS", "SEATED", "IN", "IN_PLACE", "ON", "IN") else last
                    made.append(claim(row, name[0], name[1], at, last))
                    at = last
                    continue
        at += 1
    return made


# a denial between two acts is of the one behind it: "rubbed down didn't trim it"
_OF_ANOTHER = ("STAPLED", "TAPED", "RUBBED", "DAMAGE", "GAP", "STAPLE", "TAPE_IT", "RUB", "TRIM", "TRIMMED", "WIPE", "WIPED", "HEAT_IT", "REPAIR_IT")
_NONE_THAT = re.compile(
    r"(?:\bno|\bnot (?:an?|one)|\bnothing|n't (?:an?|find an?|a single|one|any)|\bnever find an?|\bno hay)\b.*?\b(?:that|which|i|we|it|que)?(?:'s| is| are)? ?(?:isn't|not|aren't|didn't|haven't|don't|doesn't|ain't|hasn't|without|un(?=taped|stapled)|no)\b"
    r"|\b(?:nothing|none|not one|not a|not an|no)\b.*?\bun(?=taped|stapled)|\bno \w+ (?:left )?un(?=taped|stapled)|\b(?:not|n't) without\b"
)


def _none_without(row: Row, clause: Clause) -> list[Claim]:
    """ "there's no joint on it that isn't taped", "not a seam I didn't rub": two denials, one of them of the part, are none."""
    if row.is_blank(clause.first):
        return []
    start = row.items[clause.first].start
    said = row.words(clause.first, clause.last).lower().replace("’", "'")
    match = _NONE_THAT.search(said)
    if match is None:
        return []
    end = start + match.end()
    act = next((k for k in range(clause.first, clause.last) if (row.items[k].end > end) and _live(row, k) in _TWICE_DENIED), None)
    between = row.text[end : row.items[act].start].lower().split() if act is not None else []
    if act is None or len(between) > 3 or _live(row, clause.first) in ("FIX",):
        return []
    name = DENIED.get(_live(row, act), _TWICE_DENIED.get(_live(row, act)))[0]
    return [claim(row, name, True, clause.first, act + 1, hedged=False)]


_TWICE_DENIED = {
    **{concept: DENIED[concept] for concept in ("STAPLED", "STAPLE", "STAPLES", "TAPED", "TAPE", "TAPE_IT", "RUBBED", "RUB", "VANES", "TRIMMED", "WIPED", "REPAIRED", "BENT")},
    "UNTAPED": ("taped", False), "UNSTAPLED": ("stapled", False),
}  # fmt: skip


def _past_piece(row: Row, clause: Clause, at: int) -> int:
    """Past "for seven" in "the vanes for seven aren't in"."""
    k = at + 1
    if k >= clause.last or _live(row, k) not in ("OF", "ON", "IN"):
        return at
    k += 1
    while k < clause.last and (_live(row, k) in ("DET", "FITTING", "NUMBER") or _live(row, k).startswith("K_")):
        k += 1
    return k if k < clause.last and _live(row, k) in ("NUM", "MARKED") else at


def _of_one_side(row: Row, clause: Clause, one: Claim) -> bool:
    """ "couldn't staple the back", "the top isn't taped": of one side only."""
    for at in range(max(clause.first, one.first - 4), min(clause.last, one.last + 4)):
        item = row.items[at]
        if item.concept == "OTHER_SIDE" or (item.concept == "SIDE" and len(item.value) == 1) or (item.concept == "BACK" and at > 0 and row.items[at - 1].concept == "DET"):
            return one.name in ("stapled", "taped", "rubbed_down")
    return False


def _flip(row: Row, clause: Clause) -> Claim | None:
    """ "no wait, they're not in": what was said last is denied, without being named again."""
    concepts = [_live(row, at) for at in range(clause.first, clause.last)]
    at = next((at for at, concept in enumerate(concepts) if concept in ("NOT", "MISSING")), None)
    if at is None:
        return None
    rest = [c for c in concepts[at + 1 :] if c not in ("IN", "IN_PLACE", "FILLER", "ON", "YET")]
    before = [c for c in concepts[:at] if c not in ("FIX", "BE", "IT", "OTHER", "FILLER", "THIS", "DET", "NO", "I", "WORD")]
    if rest or before:
        return None
    return claim(row, "(flip)", None, clause.first + at, clause.last)


_NEEDED = ("required", "needed", "necessary", "requerida", "necesaria", "necesarias", "requeridas")
_WIDE = frozenset(("nobody", "no one", "noone", "nobody's", "nobody has", "no one has", "neither of us", "none of us", "neither one of us", "nadie"))
_DOUBTING = ("doubt", "think", "believe", "say", "swear", "dudo", "creo", "pienso")


_NONE = re.compile(r"(?:no (?:hay|deje|dejo|dejamos|me quedo|nos quedo|quedo|queda|existe|tiene|encuentras?)|nunca (?:lo |la |le )?(?:dejo|deje)|nada|ningun[oa]?|ni un[oa]?|nadie)\b")


def _none_is_not(row: Row, clause: Clause, begin: int) -> Claim | None:
    """ "no hay junta que no esté encintada", "nada quedó sin encintar": none that is not is all."""
    first = row.text[row.items[begin].start : row.items[clause.last - 1].end].lower().translate(_BARE)
    if _NONE.match(first) is None:
        return None
    second = next((k for k in range(begin + 1, min(begin + 8, clause.last)) if _live(row, k) in ("NOT", "NO") and not row.words(k, k + 1).lower().startswith("ni")), None)
    act = None if second is None else next((k for k in range(second + 1, min(second + 5, clause.last)) if _live(row, k) in DENIED), None)
    if act is None or DENIED[_live(row, act)][1] is not False or any(_live(row, k) in (*DENIED, "AND", "OR") for k in range(begin + 1, second)):
        return None
    return claim(row, DENIED[_live(row, act)][0], True, begin, act + 1, hedged=False)


_BARE = str.maketrans("áéíóúü", "aeiouu")


def _twice(row: Row, clause: Clause, begin: int) -> Claim | None:
    """ "It isn't that it's not rubbed": two denials are none."""
    around = _none_is_not(row, clause, begin)
    if around is not None:
        return around
    if begin + 2 >= clause.last or row.words(begin + 1, begin + 2).lower().split()[0] not in ("that", "like", "as", "because", "que"):
        return None
    second = next((k for k in range(begin + 2, min(begin + 6, clause.last)) if _live(row, k) == "NOT"), None)
    act = None if second is None else next((k for k in range(second + 1, min(second + 4, clause.last)) if _live(row, k) in DENIED), None)
    if act is None or DENIED[_live(row, act)][1] is not False:
        return None
    return claim(row, DENIED[_live(row, act)][0], True, begin, act + 1, hedged=False)


def _denied(row: Row, clause: Clause, begin: int) -> list[Claim]:
    if begin + 1 < clause.last and row.words(begin + 1, begin + 2).lower().split()[0] in ("just", "only", "simply", "sólo", "solo", "nomás"):
        return []  # "not just stapled, taped too"
    twice = _twice(row, clause, begin)
    if twice is not None:
        return [twice]
    made: list[Claim] = []
    at, steps = begin + 1, 0
    start = begin
    said = row.words(begin, begin + 1).lower()
    doubts = said.split()[-1] in _DOUBTING or said.split()[-2:] in (["doubt", "that"], ["think", "that"], ["dudo", "que"], ["creo", "que"], ["pienso", "que"])
    wide = said in _WIDE or doubts
    while at < clause.last and steps < (12 if wide else 6):
        concept = _live(row, at)
        if not wide and row.words(at, at + 1).lower() in ("so", "then", "so i", "por eso", "entonces"):
            break  # "no heat gun so I just taped it"
        if wide and (concept in ("NO", "FORGOT", "NOT_DONE") or row.words(at, at + 1).lower().startswith(("forg", "skip", "miss", "olvid"))):
            made.append(claim(row, "(nothing)", None, begin, clause.last))  # "don't think I forgot the staples"
            break
        if concept in ("NEED", "PENDING") and at == begin + 1:  # "didn't need any tabs": says nothing of them
            made.append(claim(row, "(nothing)", None, begin, clause.last))
            break
        if concept == "TROUBLE" and at - begin <= 2:
            made.append(claim(row, "(nothing)", None, begin, at + 2 if at + 1 < clause.last and _live(row, at + 1) == "WITH" else at + 1))
            break
        if concept in DENIED:
            if concept == "BENT" and not any(item.concept in ("TABS", "TAB_WORD", "K_COLLAR") for item in row.items):
                made.append(claim(row, "(nothing)", None, begin, at + 1))  # "nothing's folded yet": the blanks, no tabs
                break
            bent = next((k for k in range(at + 1, min(at + 4, clause.last)) if _live(row, k) in ("BENT", "CLINCHED")), None)
            if concept == "TABS" and bent is not None:
                made.append(claim(row, "tabs_bent", False, start, bent + 1))
                break
            if concept == "SHOWS" and row.words(at, at + 1).lower() in _TURNED_UP and not any(row.items[k].concept == "SCRIM" for k in range(max(0, begin - 8), min(len(row.items), at + 4))):
                made.append(claim(row, "(nothing)", None, begin, at + 1))  # "the delivery never showed"
                break
            lost = row.words(at + 1, at + 2).lower().split()[-1] if at + 1 < clause.last else ""
            if lost in ("missing", "loose", "out", "short", "peeling", "lifting", "suelta", "faltante", "skipped", "missed"):
                whole = concept in ("STAPLES", "STAPLE", "VANES", "TABS") and lost in ("missing", "skipped", "missed")
                made.append(claim(row, DENIED[concept][0] if whole else "(nothing)", True if whole else None, begin, at + 2))  # "not one staple missing"
                break
            if concept == "TAPE" and _is_used_up(row, clause, begin, at):
                made.append(claim(row, "(nothing)", None, begin, at + 1))  # "no foil tape left, used cloth tape"
                break
            name, value = DENIED[concept]
            if value is not False and row.items[begin].concept != "NO":
                made.append(claim(row, "(nothing)", None, begin, at + 1))
                break
            if concept == "SCRIM" and at + 1 < clause.last and _live(row, at + 1) == "SHOWS":
                at += 1
            last = at + 1
            if _is_the_trouble(row, clause, begin, at):
                made.append(claim(row, "(nothing)", None, begin, last))
                break
            made.append(claim(row, name, value, start, last, **({"hedged": True} if doubts else {})))
            if at + 1 < clause.last and _live(row, at + 1) == "OR":
                at, steps = at + 2, 0
                continue
            if at + 2 < clause.last and _live(row, at + 1) == "AND" and row.items[begin].concept != "NO" and _live(row, at + 2) in _PAST:
                at, steps = at + 2, 0
                continue
            break
        one = concept == "NUM" and row.words(at, at + 1).lower() in ("one", "un", "una")
        measured = concept in ("SIZE", "LEN", "NUM") and row.items[begin].concept == "NOT" and not one and not wide
        if concept == "TIGHT" and row.items[begin].concept == "NOT" and not any(_live(row, k) in ("TABS", "BENT", "STAPLES", "TAPE") for k in range(clause.first, at)):
            start_at, end_at = row.items[clause.first].start, row.items[at].end
            made.append(claim(row, "(open)", None, begin, at + 1, opens=(Open("piece", None, start_at, end_at),), hedged=False))
            break
        if concept in _SILENT or measured:
            made.append(claim(row, "(nothing)", None, begin, at + 1))
            break
        part_of_it = concept in ("JOINT", "SIDE_WORD", "SIDE", "END", "ONE_SIDE") or one
        if concept not in _PASSES and not wide and not (part_of_it and _act_follows(row, clause, at)):
            break
        at, steps = at + 1, steps + 1
    return made


_TURNED_UP = ("showed", "showed up", "show", "show up", "shows up", "shown")


def _is_used_up(row: Row, clause: Clause, begin: int, at: int) -> bool:
    """Whether a material was at an end or not at hand, which says nothing of the act: another was used, or none was needed any more."""
    behind = row.words(at + 1, at + 2).lower() if at + 1 < clause.last else ""
    if row.items[at].concept == "TAPE" and behind.split()[:1] in (["left"], ["on"], ["in"]) and row.words(at + 1, min(at + 4, clause.last)).lower().startswith(("left", "on the truck", "on hand", "in the box", "on the job", "in the truck", "on site")):
        return True
    others = [item.concept for item in row.items[at + 1 : at + 14]]
    stop = next((k for k, c in enumerate(others) if c == "STOP"), len(others))
    return any(c in ("CLOSURE", "C_MASTIC", "MARK181", "SEALED") for c in others[:stop])


def _act_follows(row: Row, clause: Clause, at: int) -> bool:
    """ "no corner of it is stapled": behind the part of it comes the act."""
    for k in range(at + 1, min(at + 5, clause.last)):
        if _live(row, k) in _PAST:
            return True
        if _live(row, k) not in _PASSES and _live(row, k) not in ("SIDE_WORD", "JOINT"):
            return False
    return False


def _is_the_trouble(row: Row, clause: Clause, begin: int, at: int) -> bool:
    """ "It's not the tape that's the problem": what is denied is not the tape."""
    behind = row.text[row.items[at].end : row.items[clause.last - 1].end].lower().split()
    if row.items[at].concept == "TAPE_IT" and behind[:1] == ["'s"]:
        behind = ["that's"]
    return row.items[begin].concept == "NOT" and _live(row, begin + 1) == "DET" and behind[:1] in (["that's"], ["that"], ["which"], ["i'm"])
