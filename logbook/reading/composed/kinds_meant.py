"""Words for a kind of fitting, or for what comes off, that only their neighbours explain: "stapled it straight through" names no straight, "caja 8" is a plenum."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.reading.composed.acts_meant import ACTS
from logbook.reading.words.items import concept_at
from logbook.reading.words.phrasing import words_of

_TOP_AND_BOTTOM = {"techo": "top", "piso": "bottom"}
CONCEPTS = ("K_STRAIGHT", "K_PLENUM", "UNDONE", "K_OFFSET", "NOT_MARK", "BRANCH_WORD", "OFFSETS", "K_TEE", "K_END_CAP", "PLACE_NOUN", "K_ELBOW", "K_COLLAR", "TIE_RODS", "K_HANGER", "K_DAMPER_SLEEVE")


def meant(done: list, items, place: int, ahead: str, past_article: str, said: str, text: str) -> None:
    """Puts into `done` what the word at this place means."""
    item = items[place]
    if item.concept == "K_STRAIGHT" and said == "straight" and ahead == "THROUGH" and concept_at(items, place + 2) not in ("NUM", "MARKED") and concept_at(items, place - 1) not in ("DET", "THIS", "STOP", "", "COMMA"):
        done[place] = replace(item, concept="FILLER", value=None)  # "stapled it straight through"
    elif item.concept == "K_STRAIGHT" and said == "straight" and _how_it_went(items, place, text):
        done[place] = replace(item, concept="FILLER", value=None)  # "taped it straight away", "straight over the grease"
    elif item.concept == "K_HANGER" and _ran_into(items, place, text):
        done[place] = replace(item, concept="WORD", value=None)  # "it snagged on a hanger rod"
    elif item.concept == "K_STRAIGHT" and said == "straight" and concept_at(items, place - 1) == "SIDE" and ahead in ("COMMA", "STOP", "", "AND") and (_moves_before(items, place) or len(items) == 2):
        done[place] = replace(item, concept="LEVEL", value=None)  # "right in four, back twenty-four, left straight"
    elif item.concept == "K_STRAIGHT" and said == "straight" and ahead not in ("NUM", "MARKED", "NUMBER", "LETTER", "SIZE", "LEN", "DASH") and _of_a_side(items, place, text):
        done[place] = replace(item, concept="LEVEL", value=None)  # "the bottom's straight", "right side straight, transition 162"
    elif item.concept == "K_STRAIGHT" and said == "straight" and ahead in ("UP", "OUT", "", "COMMA", "STOP", "AND", "BUT", "WORD", "IN") and concept_at(items, place - 1) in ("WORD", "FILLER", "IT", "LEFT_OUT", "BE", "OTHER_SIDE", "HUNG") and any(one.concept in ("TABS", "TAB_WORD") for one in items[max(0, place - 12) : place]):
        done[place] = replace(item, concept="FILLER", value=None)  # "the tabs are still standing straight up", "left the others straight"
    elif item.concept == "K_STRAIGHT" and said == "section" and "LEAK_TEST" in (concept_at(items, place - 1), concept_at(items, place - 2)) and ahead in ("LETTER", "MARKED", "NUM"):
        done[place] = replace(item, concept="FITTING", value=None)  # "leak test, section A": a stretch of the run
    elif item.concept == "K_PLENUM" and said == "box" and ahead not in ("NUM", "MARKED", "NUMBER", "COMMA", "LETTER", "SIZE", "DASH") and (concept_at(items, place - 1) in ("WORD", "LEN", "FRAC", "SIDE", "FILLER") and concept_at(items, place - 2) in ("DET", "WORD", "ON", "IN", "FROM") or concept_at(items, place - 3) in ("TAPE", "STAPLES", "SAYS") and concept_at(items, place - 2) in ("IN", "ON") or ahead == "SAYS"):
        done[place] = replace(item, concept="WORD", value="box")  # "the half inch box was empty", "on a pizza box", "no other tape in the box"
    elif item.concept == "K_PLENUM" and said == "box" and (ahead in ("WORD", "BE", "OF") or ahead == "COMMA" and concept_at(items, place + 2) in ("FRAC", "LEN")) and any(one.concept in ("STAPLES", "LEG") for one in items[max(0, place - 3) : place + 5]):
        done[place] = replace(item, concept="WORD", value="box")  # "the box was three-eighths legs", "the wrong box, three-eighths legs"
    elif item.concept == "K_PLENUM" and said == "box" and ahead in ("", "STOP", "COMMA", "AND", "BUT") and concept_at(items, place - 1) == "DET" and concept_at(items, place - 2) == "IN" and concept_at(items, place + 2) not in ("NUM", "MARKED", "NUMBER", "SIZE") and any(one.concept in ("VANES", "ACCESSORY") or one.concept.startswith("K_") and one.concept != "K_PLENUM" for one in items):
        done[place] = replace(item, concept="WORD", value="box")  # "elbow 26 …, they're still in the box"
    elif item.concept == "UNDONE" and said.endswith("cut it off") and ahead in ("TO", "ON") and concept_at(items, place + 2) in ("NUM", "LEN"):
        done[place] = replace(item, concept="CUT_TO")  # "had to cut it off to thirty-one"
    elif item.concept == "K_OFFSET" and concept_at(done, place - 1) in ("COMMA", "AND", "WITH") and any(one.concept == "K_OFFSET" for one in done[:place]) and (_by_and_over(items, place + 1) or _sized_before(done, place)):
        done[place] = replace(item, concept="OFFSETS", value=None)  # "offset nine, ten by ten, offset six in twenty-four", "…, length 36, offset six"
    elif item.concept == "NOT_MARK" and said == "box number" and concept_at(items, place - 1) in ("", "STOP") and ahead == "NUM" and concept_at(items, place + 2) in ("COMMA", "BE", "STOP"):
        done[place] = replace(item, concept="K_PLENUM", value="plenum")  # "box number six, twenty-four by twenty-four"
    elif item.concept == "BRANCH_WORD" and said == "branch" and ahead in ("NUM", "MARKED") and concept_at(items, place - 1) == "AND" and concept_at(items, place - 2) in ("NUM", "MARKED") and concept_at(items, place - 3).startswith("K_") and concept_at(items, place + 2) not in ("BY", "ROUND", "LONG", "WIDE"):
        done[place] = replace(item, concept="K_BRANCH", value="branch")  # "elbow 3 and branch 4, both taped"
    elif item.concept == "BRANCH_WORD" and said.endswith(" off") and ahead == "DET" and concept_at(items, place + 2) in ("NUM", "LEN") and any(one.concept == "K_BRANCH" for one in items[:place]):
        done[place] = replace(item, concept="FROM")  # "takeoff nine comes off the sixteen by ten"
    elif item.concept in ("BRANCH_WORD", "UNDONE") and said.endswith(" off") and past_article == "SIDE" and _so_far(items, place + 1):
        done[place] = replace(item, concept="OFF", value=None)  # "it all comes off the left side, six in thirty-six"
    elif item.concept == "UNDONE" and ((ahead == "NUM" and items[place + 1].value.value == 1 and concept_at(items, place + 2) == "UP") or ahead == "UP") and concept_at(items, place + (3 if ahead == "NUM" else 2)) == "ON":
        done[place] = replace(item, concept="FILLER", value=None)  # "they pulled that one up on the schedule"
    elif item.concept == "UNDONE" and said == "sticking out" and ahead in ("INSIDE", "IN", "OUTSIDE", "THROUGH"):
        done[place] = replace(item, concept="WORD", value=None)  # "the staples are sticking out on the inside": which way they went
    elif item.concept == "OFFSETS" and said == "offsets" and concept_at(items, place - 1) in ("", "STOP", "AND") and _several(items, place + 1):
        done[place] = replace(item, concept="K_OFFSET", value="offset")  # "offsets 15 and 53": two of them
    elif item.concept == "OFFSETS" and said.endswith(" de") and ahead == "NUM" and concept_at(items, place + 2) == "BY":
        done[place] = replace(item, concept="K_OFFSET", value="offset")  # "la siete es un offset de doce por diez"
    elif item.concept == "K_STRAIGHT" and said in ("recta", "recto") and concept_at(done, place - 2 if concept_at(done, place - 1) == "BE" else place - 1) == "SIDE" and ahead in ("COMMA", "STOP", "", "AND", "BUT", "BE", "STAPLED", "TAPED"):
        done[place] = replace(item, concept="LEVEL", value=None)  # "la izquierda recta"
    elif item.concept == "K_TEE" and said == "te" and not _a_tee(done, items, place, text):
        done[place] = replace(item, concept="WORD", value=None)  # "luego te digo": the pronoun
    elif item.concept == "K_END_CAP" and said == "tapa" and ahead in ("MOVE_DOWN", "MOVE_UP") and concept_at(items, place + 2) in ("NUM", "LEN", "FRAC"):
        done[place] = replace(item, concept="SIDE", value=("top",))  # "la tapa baja tres"
    elif item.concept == "PLACE_NOUN" and said in _TOP_AND_BOTTOM and ahead in ("MOVE_DOWN", "MOVE_UP", "LEVEL", "FLAT") and (ahead in ("LEVEL", "FLAT") or concept_at(items, place + 2) in ("NUM", "LEN", "FRAC")):
        done[place] = replace(item, concept="SIDE", value=(_TOP_AND_BOTTOM[said],))  # "techo baja cuatro en dieciséis"
    elif item.concept in ("K_STRAIGHT", "BRANCH_WORD") and said in ("tramo", "ramal", "el ramal") and ahead in ("NUM", "MARKED") and _is_a_run(done, place):
        done[place] = replace(item, concept="RUN", value=None)
    elif item.concept == "K_DAMPER_SLEEVE" and said in words_of("small.sleeves") and ahead not in ("NUM", "MARKED", "NUMBER", "SIZE"):
        done[place] = replace(item, concept="WORD", value=None)  # "se me atoró la manga"
    elif item.concept == "TIE_RODS" and said.endswith(("tirante", "tirantes")) and _in_feet(items):
        done[place] = replace(item, concept="K_HANGER", value="hanger")  # "en la línea 7 puse tirantes cada siete pies": of a run, and of no piece
    elif item.concept in ("K_ELBOW", "K_COLLAR") and _of_the_body(items, place, text):
        done[place] = replace(item, concept="WORD", value=None)  # "me duele el codo", "mi bota"


_ANYWHERE = ("away", "afterwards", "afterward")
_BEHIND_AN_ACT = ("off", "off of", "off the", "out", "out of", "out of the", "over", "after", "across", "onto", "from", "from the", "back", "behind")
_A_PIECE_STRAIGHT = ("DET", "THIS", "STOP", "", "COMMA", "AND", "ANOTHER", "SERVICE", "NUM", "OF", "ON", "FITTING", "NUMBER", "EACH", "BOTH", "FROM", "TO", "FILLER")


def _how_it_went(items, place: int, text: str) -> bool:
    """Whether "straight" tells how an act was done: right away, or right over what lay there."""
    if place + 1 == len(items):
        return False
    behind = text[items[place + 1].start : items[place + 1].end].lower()
    return concept_at(items, place - 1) not in ("DET", "THIS") and behind in _ANYWHERE or concept_at(items, place - 1) not in _A_PIECE_STRAIGHT and behind in _BEHIND_AN_ACT


_RUNS_INTO = re.compile(
    r"\b(?:(?:snag\w*|caught|catch(?:es|ing)?|hit|hits|bump\w*|clip(?:ped|s)|struck)(?: (?:it|her|itself|one \w+))?(?: (?:on|by|against|into|with))?"
    r"|(?:scrap(?:ed|es)|banged|tore|torn|ripped|rips|hooked|hung up|dinged|gouged|poked|punched|sliced|cut|jabbed|knocked|brushed|rubbed)(?: (?:it|her|one \w+|itself|open|through|right|up))*? (?:on|by|against|into|with|off))"
    r" (?:a|an|the|that|some|somebody's|one of the|their|an old) (?:\w+ )?$"
)


def _ran_into(items, place: int, text: str) -> bool:
    """Whether a hanger is only what the piece was hurt by."""
    return concept_at(items, place + 1) not in ("NUM", "MARKED", "NUMBER") and _RUNS_INTO.search(text[max(0, items[place].start - 44) : items[place].start].lower()) is not None


def _in_feet(items) -> bool:
    """Whether feet are told, of a run or of nothing, and no piece is named: reinforcement is of a piece."""
    if any(item.concept.startswith("K_") and item.concept != "K_HANGER" or item.concept in ("FITTING", "MARKED") for item in items):
        return False
    return any(item.concept == "LEN" and getattr(item.value, "unit", None) == "ft" for item in items)


def _so_far(items, at: int) -> bool:
    """Whether a measure stands behind the side that follows: "the left side, six in thirty-six"."""
    while concept_at(items, at) in ("DET", "FILLER", "ON", "SIDE", "SIDE_WORD", "COMMA"):
        at += 1
    return concept_at(items, at) in ("NUM", "LEN", "FRAC") and concept_at(items, at + 1) in ("IN", "OVER")


def _a_tee(done, items, place: int, text: str) -> bool:
    """Whether "te" is the fitting: behind an article or a count, or named by its number or its size."""
    if text[items[place].start : items[place].end] == "TE" or concept_at(items, place + 1) in ("NUM", "MARKED", "NUMBER", "SIZE", "DASH", "LETTER"):
        return True
    before = text[max(0, items[place].start - 8) : items[place].start].lower().split()
    if before[-1:] and before[-1] in ("la", "una", "el", "un", "otra", "esta", "esa", "misma", "de", "es", "son"):
        return True
    return concept_at(items, place + 1) in ("COMMA", "STOP", "", "OF", "ON", "RUN", "WITH") and concept_at(done, place - 1) in ("", "STOP", "COMMA", "AND", "NUM", "MARKED")


def _of_a_side(items, place: int, text: str) -> bool:
    """ "The right is straight", "the other side stays straight", "left side straight": how a side goes, and no kind of piece."""
    at = place - 1
    while concept_at(items, at) in ("BE", "FILLER") or concept_at(items, at) == "WORD" and text[items[at].start : items[at].end].lower() in ("stays", "stayed", "runs", "ran", "goes", "remains"):
        at -= 1
    if concept_at(items, at) not in ("SIDE", "OTHER_SIDE"):
        return False
    side = text[items[at].start : items[at].end].lower()
    return at < place - 1 or side.endswith((" side", "'s"))


def _moves_before(items, place: int) -> bool:
    """Whether another side of the same piece moves shortly before."""
    near = [concept_at(items, k) for k in range(max(0, place - 14), place - 1)]
    return "SIDE" in near and bool({"IN", "OUT", "BACK", "DOWN", "UP", "MOVE_IN", "MOVE_OUT", "MOVE_DOWN", "MOVE_UP"} & set(near))


def _alone(items, place: int) -> bool:
    """Whether no other piece is named in this sentence."""
    ends = [k for k, item in enumerate(items) if item.concept == "STOP"]
    start, end = max((k for k in ends if k < place), default=0), min((k for k in ends if k > place), default=len(items))
    return not any(items[k].concept.startswith("K_") or items[k].concept == "FITTING" for k in range(start, end) if k != place)


def _is_a_run(items, place: int) -> bool:
    """ "Codo cuatro, tramo dos", "en el tramo dos", "tramo dos, codo cuatro": a stretch of the run; alone it is a piece."""
    if concept_at(items, place + 2) == "BY":
        return False
    before = [concept_at(items, place - k) for k in (1, 2, 3, 4)]
    others = (k for k, item in enumerate(items) if k != place and (item.concept.startswith("K_") or item.concept in ("FITTING", "MARKED", "NUMBER") or item.concept == "NUM" and k > 0 and k != place + 1 and items[k - 1].concept == "DET" and concept_at(items, k + 1) != "SIDE_WORD"))
    if before[0] in ("DET", "ON", "FROM") and items[place].concept == "K_STRAIGHT" and next(others, None) is None and any(item.concept in (*ACTS, "SIZE", "AIR", "FLAP", "DAMAGE", "GAP") for item in items):
        return False  # "en el tramo siete de diez por ocho": no other piece is named
    led = before[0] in ("ON", "FROM", "OF") and concept_at(items, place + 2) not in ("PENDING", "HAVE", "MISSING") or (before[0] == "DET" and before[1] in ("ON", "OF"))
    near = before[1:3] if before[0] in ("COMMA", "DET", "FROM") else before[:2]
    named = near[:1] in (["NUM"], ["MARKED"]) and (near[1].startswith("K_") or near[1] in ("FITTING", "NUMBER")) and near[1] not in ("K_TEE", "K_BRANCH", "K_WYE")
    by_its_number = near == ["NUM", "DET"] and before[0] == "COMMA" and before[3] in ("", "STOP", "FILLER") and concept_at(items, place + 2) in ("COMMA", "STOP", "") and _alone(items, place)
    named = named or by_its_number  # "la siete, tramo dos, doce por diez"
    if items[place].concept == "BRANCH_WORD":
        return named
    ahead = [concept_at(items, place + k) for k in (2, 3, 4)]
    ahead = ahead[1:] if ahead[0] == "COMMA" else ahead
    ahead = ahead[1:] if ahead[0] in ("DET", "NUMBER") else ahead
    straight = concept_at(items, place + 2) == "K_STRAIGHT" and (concept_at(items, place + 3) not in ("NUM", "MARKED", "NUMBER", "LETTER") or concept_at(items, place + 4) == "BY")  # "tramo 77 recto": of what kind it is
    opens = before[0] in ("", "STOP", "FILLER") and (ahead[0].startswith("K_") or ahead[0] == "FITTING") and not straight
    return led or named or opens


def _of_the_body(items, place: int, text: str) -> bool:
    if concept_at(items, place + 1) in ("NUM", "NUMBER", "MARKED", "LETTER"):
        return False
    before = text[max(0, items[place].start - 30) : items[place].start].lower()
    return re.search(r"(?:\bm(?:e|i) (?:\w+ (?:en |con )?(?:el |la |mi )?)?|\bsuela de (?:mi |la )|\btu |\bmis )$", before) is not None and re.search(r"\bme (?:falta|quedó|faltan|toca|salió)\b", before) is None


def _sized_before(items, at: int) -> bool:
    """An offset, marked and sized in this very sentence: "offset six" behind it is how far it goes."""
    sentence: list[str] = []
    for item in reversed(items[:at]):
        if item.concept in ("STOP", "QUERY", "ANOTHER"):
            break
        sentence.append(item.concept)
    sized = "BY" in sentence and sentence.count("K_OFFSET") == 1 and not any(concept in sentence for concept in ("STAPLED", "TAPED", "RUBBED"))
    return sized and concept_at(items, at + 1) in ("NUM", "LEN") and concept_at(items, at + 2) in ("COMMA", "STOP", "") and concept_at(items, at + 4) != "BY"


def _several(items, at: int) -> bool:
    """Whether numbers stand here one after another, with an "and" before the last, and measure nothing: "15, 16 and 53"."""
    joined = False
    while not joined and concept_at(items, at) == "NUM" and concept_at(items, at + 1) in ("AND", "COMMA"):
        joined = concept_at(items, at + 1) == "AND" or concept_at(items, at + 2) == "AND"
        at += 3 if joined and concept_at(items, at + 1) == "COMMA" else 2
    return joined and concept_at(items, at) == "NUM" and concept_at(items, at + 1) not in ("LONG", "BY", "WIDE", "LEN", "FRAC")


def _by_and_over(items, at: int) -> bool:
    """How far it goes over and in what length: "six in twenty-four"; a mark has no second number behind it."""
    return concept_at(items, at) in ("NUM", "LEN") and concept_at(items, at + 1) in ("IN", "OVER") and concept_at(items, at + 2) in ("NUM", "LEN")
