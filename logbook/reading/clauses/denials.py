"""What one "no" or "not" denies: "no vanes", "couldn't staple the back", and two denials that are none ("not a seam I didn't tape")."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from logbook.reading.clauses.claims import Claim, Open, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.how_it_sits import lacks_none, only_how
from logbook.reading.clauses.none_of_what import of_a_part
from logbook.reading.words.phrasing import in_any, words_of
from logbook.reading.clauses.stance import Clause

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
ACTS = {concept: name for concept, (name, value) in DENIED.items() if value is False and name != "staple_flap"} | {"CLOSURE": "taped", "MARK181": "taped", "CLINCHED": "tabs_bent"}  # the acts that things and words tell of
_SILENT = ("TIGHT", "SHIPLAP", "BUTT", "C_MASTIC", "CLOSURE", "HUNG", "ON_BENCH", "TIED", "MARK181", "SEATED", "HANG")
_PASSES = (
    "DET", "IT", "BE", "HEDGE", "THINK", "FILLER", "THIS", "HAVE", "HAVING", "ALL", "EACH", "WORD", "ON", "OF", "IN_PLACE", "GENERIC", "YET", "I",
    "TURNING", "BOTH", "TO", "IT", "WITH", "ANOTHER", "GOING_TO", "MOVE", "FITTING", "TAKES", "AROUND", "UP",
)  # fmt: skip
PAST = ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "WIPED", "HUNG")


def live(row: Row, at: int) -> str:
    """The concept of an item, or nothing where its words are used up."""
    return "" if row.is_blank(at) else row.items[at].concept


_NONE_THAT = re.compile(
    r"(?:\bno(?! (?:i|i've|we|we've|it|it's|they|they're|that|that's|this|sir|boss|man)\b)|\bnot (?:an?|one)|\bnothing|n't (?:an?|find an?|a single|one|any)|\bnever find an?|\bno hay)\b(?:(?!\b(?:so|because|cause|cuz|since|and|but|then|y|pero|porque|por eso|entonces)\b).)*?\b(?:that|which|i|we|it|que)?(?:'s| is| are)? ?(?:isn't|not|aren't|didn't|haven't|don't|doesn't|ain't|hasn't|without|un(?=taped|stapled)|no)\b"
    r"|\b(?:nothing|none|not one|not a|not an|no|\w+n't (?:find|see|have|leave|got) (?:an?|any|one)|never (?:find|leave|left|have) (?:an?|any|one))\b(?:(?!\b(?:so|because|cause|and|but|then)\b).)*?\bun(?=taped|stapled)|\bno \w+ (?:left )?un(?=taped|stapled)|\b(?:not|n't) without\b"
)

_TWO_LACKS = re.compile(r"no (?!es\b)\w+(?: (?!que\b)\w+)? no")


def none_without(row: Row, clause: Clause) -> list[Claim]:
    """ "there's no joint on it that isn't taped", "not a seam I didn't rub": two denials, one of them of the part, are none."""
    if row.is_blank(clause.first):
        return []
    start = row.items[clause.first].start
    said = row.words(clause.first, clause.last).lower().replace("’", "'")
    if "no" not in said and "n't" not in said and "never" not in said:
        return []  # most clauses deny nothing
    match = _NONE_THAT.search(said)
    if match is None:
        return []
    end = start + match.end()
    if not of_a_part(match.group()):
        return []  # "no time the tape isn't rubbed", "no help today it isn't taped": what there was none of is no part of the piece
    act = next((k for k in range(clause.first, clause.last) if (row.items[k].end > end) and live(row, k) in _TWICE_DENIED), None)
    if match.group().rsplit(None, 1)[-1] == "no" and (_TWO_LACKS.fullmatch(match.group()) or any(live(row, k) in _TWICE_DENIED for k in range(clause.first, act or clause.last))):
        return []  # "no staples no tape", "no mastic no tape"
    between = row.text[end : row.items[act].start].lower().split() if act is not None else []
    if act is None or len(between) > 3 or live(row, clause.first) in ("FIX",):
        return []
    name = DENIED.get(live(row, act), _TWICE_DENIED.get(live(row, act)))[0]
    return [claim(row, name, True, clause.first, act + 1, hedged=False)]


_TWICE_DENIED = {
    **{concept: DENIED[concept] for concept in ("STAPLED", "STAPLE", "STAPLES", "TAPED", "TAPE", "TAPE_IT", "RUBBED", "RUB", "VANES", "TRIMMED", "WIPED", "REPAIRED", "BENT")},
    "UNTAPED": ("taped", False), "UNSTAPLED": ("stapled", False),
}  # fmt: skip


NEEDED = ("required", "needed", "necessary", "requerida", "necesaria", "necesarias", "requeridas")
_DOUBTING = ("doubt", "think", "believe", "say", "swear", "dudo", "creo", "pienso")


_NONE = re.compile(r"(?:no (?:la |lo |las |los |le |me |se )*(?:hay|deje|dejo|dejamos|me quedo|nos quedo|quedo|queda|existe|tiene|encuentras?)|nunca (?:lo |la |le )?(?:dejo|deje)|nada|ningun[oa]?|ni un[oa]?|nadie)\b")


def _none_is_not(row: Row, clause: Clause, begin: int) -> Claim | None:
    """ "no hay junta que no esté encintada", "nada quedó sin encintar": none that is not is all."""
    first = row.text[row.items[begin].start : row.items[clause.last - 1].end].lower().translate(_BARE)
    if _NONE.match(first) is None:
        return None
    second = next((k for k in range(begin + 1, min(begin + 8, clause.last)) if live(row, k) in ("NOT", "NO") and not row.words(k, k + 1).lower().startswith("ni")), None)
    act = None if second is None else next((k for k in range(second + 1, min(second + 5, clause.last)) if live(row, k) in DENIED), None)
    if act is None or DENIED[live(row, act)][1] is not False or any(live(row, k) in (*DENIED, "AND", "OR") for k in range(begin + 1, second)):
        return None
    return claim(row, DENIED[live(row, act)][0], True, begin, act + 1, hedged=False)


_BARE = str.maketrans("áéíóúü", "aeiouu")


def _twice(row: Row, clause: Clause, begin: int) -> Claim | None:
    """ "It isn't that it's not rubbed": two denials are none."""
    around = _none_is_not(row, clause, begin)
    if around is not None:
        return around
    if begin + 2 >= clause.last or row.items[begin].concept == "NO" or row.words(begin + 1, begin + 2).lower().split()[0] not in ("that", "like", "as", "because", "que"):
        return None
    second = next((k for k in range(begin + 2, min(begin + 6, clause.last)) if live(row, k) == "NOT"), None)
    act = None if second is None else next((k for k in range(second + 1, min(second + 4, clause.last)) if live(row, k) in DENIED), None)
    if act is None or DENIED[live(row, act)][1] is not False:
        return None
    return claim(row, DENIED[live(row, act)][0], True, begin, act + 1, hedged=False)


def denied(row: Row, clause: Clause, begin: int) -> list[Claim]:
    """What the "no" or "not" at `begin` denies of the piece, with all acts that hang on it; nothing where it is of something else."""
    if begin + 1 < clause.last and row.words(begin + 1, begin + 2).lower().split()[0] in ("just", "only", "simply", "sólo", "solo", "nomás"):
        return []  # "not just stapled, taped too"
    if (learned := _had_to_be(row, clause, begin)) is not None:
        return [claim(row, "(nothing)", None, begin, learned)]
    twice = _twice(row, clause, begin)
    if twice is not None:
        return [twice]
    had = lacks_none(row, begin, clause.last)
    if had is not None and live(row, had) in DENIED:
        return [claim(row, DENIED[live(row, had)][0], True, begin, had + 1)]
    made: list[Claim] = []
    at, steps = begin + 1, 0
    start = begin
    said = row.words(begin, begin + 1).lower()
    doubts = said.split()[-1] in _DOUBTING or said.split()[-2:] in (["doubt", "that"], ["think", "that"], ["dudo", "que"], ["creo", "que"], ["pienso", "que"])
    wide = said in words_of("small.nobody") or doubts
    while at < clause.last and steps < (12 if wide else 6):
        concept = live(row, at)
        if not wide and row.words(at, at + 1).lower() in ("so", "then", "so i", "por eso", "entonces"):
            break  # "no heat gun so I just taped it"
        if wide and (concept in ("NO", "FORGOT", "NOT_DONE") or row.words(at, at + 1).lower().startswith(("forg", "skip", "miss", "olvid"))):
            made.append(claim(row, "(nothing)", None, begin, clause.last))  # "don't think I forgot the staples"
            break
        if not wide and at > begin + 1 and row.words(at, at + 1).lower() in words_of("small.breaks_off"):
            break  # "couldn't flip it once it was taped"
        if not wide and at > begin + 2 and concept in PAST and live(row, at - 2) == "DET" and live(row, at - 1) == "WORD" and row.text[row.items[at - 1].end : row.items[at].start].strip().lower() in words_of("small.them"):
            break  # "no cerraba la puerta la encinté": run together, the act is told anew with its own "la"
        if concept in _THINGS and not wide and at > begin + 1 and _of_its_own(row, begin, at, clause.last):
            break  # "couldn't reach in there the staples are every two"
        if concept in ("NEED", "PENDING") and at == begin + 1:  # "didn't need any tabs": says nothing of them
            made.append(claim(row, "(nothing)", None, begin, clause.last))
            break
        if concept == "TROUBLE" and at - begin <= 2:
            made.append(claim(row, "(nothing)", None, begin, at + 2 if at + 1 < clause.last and live(row, at + 1) == "WITH" else at + 1))
            break
        if concept in ("CLINCHED", "TAB_WORD") and (of_tabs := _to_tabs(row, at, clause.last)) is not None:  # "never bent the tabs over", "not one tab folded"
            made.append(claim(row, "tabs_bent", False, start, of_tabs))
            break
        if concept in DENIED:
            if at + 1 < clause.last and live(row, at + 1) == "TROUBLE":
                made.append(claim(row, "(nothing)", None, begin, at + 2))  # "no tape trouble"
                break
            if concept == "BENT" and not any(item.concept in ("TABS", "TAB_WORD", "K_COLLAR") for item in row.items):
                made.append(claim(row, "(nothing)", None, begin, at + 1))  # "nothing's folded yet": the blanks, no tabs
                break
            bent = next((k for k in range(at + 1, min(at + 4, clause.last)) if live(row, k) in ("BENT", "CLINCHED")), None)
            if concept == "TABS" and bent is not None:
                made.append(claim(row, "tabs_bent", False, start, bent + 1))
                break
            if concept == "SHOWS" and row.words(at, at + 1).lower() in _TURNED_UP and not any(row.items[k].concept == "SCRIM" for k in range(max(0, begin - 8), min(len(row.items), at + 4))):
                made.append(claim(row, "(nothing)", None, begin, at + 1))  # "the delivery never showed"
                break
            if concept == "SHOWS" and row.words(at, at + 1).lower() in words_of("small.shows_at_all") or concept == "SHOWS" and row.words(at, at + 1).lower() in words_of("small.seen") and any(row.items[k].concept == "DAMAGE" for k in range(row.sentence_start(begin), begin)):
                near = [k for k in range(row.sentence_start(begin), min(len(row.items), at + 4)) if row.items[k].concept in ("SCRIM", "RUBBED", "TAPED", "TAPE")]
                if any(row.items[k].concept == "DAMAGE" for k in range(row.sentence_start(begin), begin)) and not any(row.items[k].concept == "SCRIM" for k in near):
                    near = []  # "un hoyo …, lo tapé con cinta y ya ni se ve"
                shown = claim(row, "scrim_shows", False, min(start, *near[-1:]), max(at, *near[-1:]) + 1) if near else claim(row, "(nothing)", None, begin, at + 1)
                made.append(shown)  # "está hundida pero no se nota": the harm, no scrim
                break
            lost = row.words(at + 1, at + 2).lower().split()[-1] if at + 1 < clause.last else ""
            if lost in ("missing", "loose", "out", "short", "peeling", "lifting", "suelta", "chueca", "chuecas", "suelto", "sueltas", "floja", "flojas", "despegada", "levantada", "botada", "salida", "parada", "rota", "rotas", "mal", "torcida", "faltante", "skipped", "missed"):
                whole = concept in ("STAPLES", "STAPLE", "VANES", "TABS") and lost in ("missing", "skipped", "missed")
                made.append(claim(row, DENIED[concept][0] if whole else "(nothing)", True if whole else None, begin, at + 2))  # "not one staple missing"
                break
            if (past := only_how(row, begin, at, clause.last)) is not None:
                made.append(claim(row, "(nothing)", None, begin, past))
                break
            if lost in ("enough",):
                made.append(claim(row, "(nothing)", None, begin, at + 2))  # "didn't have tape enough to go closer"
                break
            if lost in NEEDED and concept != "VANES":
                made.append(claim(row, "(nothing)", None, begin, at + 2))  # "no stapling needed"
                break
            if concept == "TAPE" and _is_used_up(row, clause, begin, at):
                made.append(claim(row, "(nothing)", None, begin, at + 1))  # "no foil tape left, used cloth tape"
                break
            if concept == "SEATED" and (fits_not := _what_did_not_fit(row, clause, begin)) is not None:  # "the vanes didn't fit"
                made.append(claim(row, *DENIED["VANES"], fits_not, at + 1))
                break
            if concept == "SEATED" and begin > clause.first and row.items[begin - 1].concept == "WORD" and row.words(begin - 1, begin).lower() in words_of("small.tools"):  # "the gun doesn't fit behind the pipe"
                made.append(claim(row, "(nothing)", None, begin, at + 1))
                break
            if concept == "SEATED" and (fitted := _what_fits(row, clause, at)):
                at, concept = fitted, live(row, fitted)
            name, value = DENIED[concept]
            if value is not False and row.items[begin].concept != "NO" and not (concept == "GAP" and at == begin + 2 and live(row, begin + 1) == "DET"):
                made.append(claim(row, "(nothing)", None, begin, at + 1))
                break
            if concept == "SCRIM" and at + 1 < clause.last and live(row, at + 1) == "SHOWS":
                at += 1
            last = at + 1
            if _is_the_trouble(row, clause, begin, at):
                made.append(claim(row, "(nothing)", None, begin, last))
                break
            made.append(claim(row, name, value, start, last, **({"hedged": True} if doubts else {})))
            further = _goes_on(row, clause, begin, at)
            if further is not None:
                at, steps = further, 0
                continue
            break
        one = concept == "NUM" and row.words(at, at + 1).lower() in ("one", "un", "una")
        measured = concept in ("SIZE", "LEN", "NUM") and row.items[begin].concept == "NOT" and not one and not wide
        if concept == "TIGHT" and row.items[begin].concept == "NOT" and not any(live(row, k) in ("TABS", "BENT", "STAPLES", "TAPE") for k in range(clause.first, at)):
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
    if len(made) > 2 and made[0].end < made[-1].end and all(one.value is False for one in made):  # "isn't stapled taped or rubbed": the "or" at the end is of them all
        made = [replace(one, last=made[-1].last, end=made[-1].end) for one in made]
    return made


def _to_tabs(row: Row, at: int, last: int) -> int | None:
    """Past the tabs that are bent at `at`, or past how the tab there is."""
    sought = ("TABS", "TAB_WORD") if row.items[at].concept == "CLINCHED" else ("BENT", "CLINCHED")
    k = at + 1
    while k < min(last, at + 4) and live(row, k) in ("DET", "FILLER", "ALL", "OF", "BE", "ON", "K_COLLAR", "EACH"):
        k += 1
    if k >= last or live(row, k) not in sought:
        return None
    return k + 2 if k + 1 < last and live(row, k + 1) in ("OVER", "DOWN", "IN", "LEVEL", "BACK") else k + 1


def _had_to_be(row: Row, clause: Clause, begin: int) -> int | None:
    """ "I didn't know the tape had to be listed": how it has to be, that he did not know, is not how it is; the item behind it."""
    if begin + 3 >= clause.last or row.words(begin + 1, begin + 2).lower().split()[0] not in words_of("small.knows"):
        return None
    end = next((k for k in range(begin + 2, clause.last) if row.words(k, k + 1).lower().split()[0] in words_of("small.so_then")), clause.last)
    return end if in_any("told.voices.has_to").search(row.words(begin + 1, end).lower()) is not None else None


_THINGS = ("STAPLES", "TAPE", "VANES", "TABS", "FLAP", "SCRIM")
_MEANT = frozenset("say said mean know see check claim swear promise tell notice realize sure saying hear remember care mind make".split())


def _of_its_own(row: Row, begin: int, at: int, last: int) -> bool:
    """ "I didn't have time the tape is on there", "couldn't reach the back the staples on it are every two": the thing with its article, where it is and its verb."""
    if row.items[begin].concept != "NOT" or not row.text[: row.items[at].start].rstrip().lower().endswith((" the", " my")) or not _MEANT.isdisjoint(row.words(begin, begin + 2).lower().split()):
        return False
    k = at + 1
    if k < last and live(row, k) in ("ON", "IN"):
        k += 1
        while k < last and (live(row, k) in ("IT", "THIS", "DET", "NUM", "MARKED", "NUMBER") or row.items[k].concept.startswith("K_")):
            k += 1
    before = live(row, at - 1) if live(row, at - 1) != "DET" else live(row, at - 2)
    return k < last and live(row, k) in ("BE", "IN_PLACE", "EVERY") and (k > at + 1 or before in ("WORD", "IT", "IN_PLACE", "BACK", "FILLER", "SIDE", "END"))


def _what_fits(row: Row, clause: Clause, at: int) -> int | None:
    """ "couldn't fit the vanes": it is they that are not in."""
    thing = at + 2 if at + 1 < clause.last and live(row, at + 1) == "DET" else at + 1
    return thing if thing < clause.last and live(row, thing) in ("VANES", "TIE_RODS", "TABS") else None


def _what_did_not_fit(row: Row, clause: Clause, begin: int) -> int | None:
    """The vanes right before the denial: no panel is spoken of."""
    at = begin - 1
    return at if at >= clause.first and row.items[at].concept == "VANES" else None


def _goes_on(row: Row, clause: Clause, begin: int, at: int) -> int | None:
    """Where a denial of one act goes on to the next: "not stapled every two or taped", "can't be stapled taped rubbed"."""
    behind = past_measure(row, at, clause.last)
    if behind >= clause.last:
        return None
    if live(row, behind) == "OR":
        return behind + 1 if behind + 1 < clause.last else None
    if live(row, behind) == "AND" and behind == at + 1 and row.items[begin].concept != "NO" and behind + 1 < clause.last and live(row, behind + 1) in PAST:
        return None if _told_anew(row, begin, at, behind + 1) else behind + 1
    if live(row, at) not in IN_ORDER or live(row, behind) not in IN_ORDER:
        return None
    chain = list(chained(row, at, clause.last))
    governed = any(row.items[k].concept not in _ADVERBS for k in range(begin + 1, at)) and goes_up(row, at, behind)
    listed = any(live(row, k - 1) == "OR" for k in chain) or live(row, chain[-1] + 1 if chain[-1] + 1 < clause.last else clause.first) == "OR"
    return behind if governed or listed else None


def has_object(row: Row, at: int) -> bool:
    """ "rubbed it down", "got it stapled": what he did to it; "rubbed" alone may be how it is."""
    return not words_of("small.object_of_verb").isdisjoint(row.words(at, at + 1).lower().split())


def _told_anew(row: Row, begin: int, at: int, act: int) -> bool:
    """ "not fixed and got it stapled": how it is not, and behind it what he did."""
    return row.items[begin].concept == "NOT" and has_object(row, act) and not has_object(row, at) and not set(row.words(begin, begin + 1).lower().replace("’", "'").split()) & words_of("small.denies_deed")


IN_ORDER = ("TRIMMED", "STAPLED", "WIPED", "TAPED", "RUBBED")  # as the work goes
GOVERN_A_CHAIN = ("BE", "HAVE", "HAVING", "IT", "THIS", "FITTING", "GENERIC")  # between a denial or a plan and an act: all acts that are listed behind it hang on it
_ADVERBS = ("FILLER", "HEDGE", "ALL", "EACH", "YET")
_MEASURES = ("EVERY", "NUM", "LEN", "FRAC", "APART", "MARK181")


def past_measure(row: Row, act: int, last: int) -> int:
    """The item behind an act and its measure: behind "stapled every two"."""
    at = act + 1
    while at < last and live(row, at) in (*_MEASURES, "ON", "WITH") and (live(row, at) in _MEASURES or at + 1 < last and live(row, at + 1) in (*_MEASURES, "DET")):
        at += 1
    return at


def goes_up(row: Row, one: int, other: int) -> bool:
    """Whether the second of two acts comes later in the work than the first: a list that goes back begins anew."""
    return live(row, one) in IN_ORDER and live(row, other) in IN_ORDER and IN_ORDER.index(live(row, other)) > IN_ORDER.index(live(row, one))


def chained(row: Row, act: int, last: int):
    """The acts of one list from this one on, each with nothing but its measure, "and" or "or" before the next."""
    at = act
    while at < last and live(row, at) in IN_ORDER:
        yield at
        at = past_measure(row, at, last)
        at += at < last and live(row, at) in ("AND", "OR")


_TURNED_UP = ("showed", "showed up", "show", "show up", "shows up", "shown", "popped", "came up", "came through")


def _is_used_up(row: Row, clause: Clause, begin: int, at: int) -> bool:
    """Whether a material was at an end or not at hand, which says nothing of the act: another was used, or none was needed any more."""
    behind = row.words(at + 1, at + 2).lower() if at + 1 < clause.last else ""
    if row.items[at].concept == "TAPE" and behind.split()[:1] in (["left"], ["on"], ["in"]) and row.words(at + 1, min(at + 4, clause.last)).lower().startswith(("left", "on the truck", "on hand", "in the box", "on the job", "in the truck", "on site")):
        return True
    others = [item.concept for item in row.items[at + 1 : at + 14]]
    stop = next((k for k, c in enumerate(others) if c == "STOP"), len(others))
    before = [row.items[at].concept, *others]  # "no tape, no mastic": neither was used
    return any(c in ("CLOSURE", "C_MASTIC", "MARK181", "SEALED") and before[k] not in ("NO", "NOT", "OR") for k, c in enumerate(others[:stop]))


def _act_follows(row: Row, clause: Clause, at: int) -> bool:
    """ "no corner of it is stapled": behind the part of it comes the act."""
    for k in range(at + 1, min(at + 5, clause.last)):
        if live(row, k) in PAST:
            return True
        if live(row, k) not in _PASSES and live(row, k) not in ("SIDE_WORD", "JOINT"):
            return False
    return False


def _is_the_trouble(row: Row, clause: Clause, begin: int, at: int) -> bool:
    """ "It's not the tape that's the problem": what is denied is not the tape."""
    behind = row.text[row.items[at].end : row.items[clause.last - 1].end].lower().split()
    if row.items[at].concept == "TAPE_IT" and behind[:1] == ["'s"]:
        behind = ["that's"]
    return row.items[begin].concept == "NOT" and live(row, begin + 1) == "DET" and behind[:1] in (["that's"], ["that"], ["which"], ["i'm"])


def listed_on(row: Row, at: int, end: int, joints: tuple[str, ...]) -> Iterator[int]:
    """ "Without a flap or cross tabs", "still wants taping and a rub down": the things and acts that hang on the same word as the one before them."""
    while at + 1 < end and row.items[at].concept in joints:
        at += 2 if row.items[at + 1].concept in ("DET", "FILLER") or row.words(at + 1, at + 2).lower() == "any" else 1
        if at >= end or DENIED.get(row.items[at].concept, ("", True))[1] is not False:
            return
        yield at
        at += 1
