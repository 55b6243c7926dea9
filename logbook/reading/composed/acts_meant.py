"""Words for an act that only their neighbours explain: "stapled to the edge" is stapled, "colgué la chamarra" hung no duct."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.reading.words.items import concept_at
from logbook.reading.words.phrasing import table_of, words_of

TO_DO = ("REPAIR_IT", "HEAT_IT", "TAPE_IT", "STAPLE", "RUB", "TRIM", "WIPE", "HANG")
_OF_METAL = ("lengüeta", "lengueta", "lengüetas", "lenguetas", "pestaña", "ceja", "tab")
_SOMEDAY = ("termine de", "acabe de", "vuelva a", "alcance a")
_WHEN_DONE = {"TAPE_IT": "TAPED", "STAPLE": "STAPLED", "RUB": "RUBBED", "TRIM": "TRIMMED", "WIPE": "WIPED", "HANG": "HUNG", "REPAIR_IT": "REPAIRED", "HEAT_IT": "PREHEATED"}
ACTS = ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "WIPED", "STAPLES", "TAPE", "SEALED", "HUNG", "MISHEARD")
_ENDS_IN_TO = {"stapled to": "STAPLED", "taped to": "TAPED", "stapled up to": "STAPLED", "taped up to": "TAPED", "is taped to": "TAPED", "is stapled to": "STAPLED"}
_OTHER_THINGS = ("WORD", "BUILDING", "TRADE_NOISE", "ROOM", "COUNTED")
CONCEPTS = ("TAPE", "REPAIR_IT", "HEAT_IT", "TAPE_IT", "STAPLE", "RUB", "TRIM", "WIPE", "HANG", "TIED", "REPAIRED", "DAMAGE", "BOTH", "DIRTY", "TIGHT", "RUBBED", "PANEL", "PENDING", "CUT_LENGTH", "SAYS", "FLAP", "HAVE", "UP", "HUNG", "WIPED", "PREHEATED", "STAPLED", "TAPED", "TRIMMED")


def meant(done: list, items, place: int, ahead: str, past_article: str, said: str, text: str) -> None:
    """Puts into `done` what the word at this place means."""
    item = items[place]
    collar = any(one.concept == "K_COLLAR" for one in items)
    if item.concept == "TAPE" and said == "tape" and concept_at(items, place - 1) == "DET" and ahead == "ON" and past_article in ("GAP", "DAMAGE") or item.concept == "TAPE" and said == "tape" and ahead == "ON" and concept_at(items, place - 1) == "DET" and concept_at(items, place + 2) in ("STAPLES", "GAP") and text[items[place - 1].start : items[place - 1].end].lower() in ("a", "my"):
        done[place] = replace(item, concept="WORD", value=None)  # "put a tape on the staples": what he measures with
    elif item.concept in TO_DO and concept_at(items, place - 1) == "TO" and concept_at(items, place - 2) in ("AND", "COMMA") and concept_at(done, place - 3) in ACTS and text[items[place - 3].start : items[place - 3].end].lower().startswith(tuple(words_of("small.over_again"))):
        done[place] = replace(item, concept=_WHEN_DONE[item.concept], value=None)  # "lo volví a grapear y a encintar"
    elif item.concept == "TIED" and said in _ENDS_IN_TO and past_article in ("END", "JOINT", "FLAP", "SIDE", "SIDE_WORD", "FACING"):
        done[place] = replace(item, concept=_ENDS_IN_TO[said])  # "stapled to the edge"
    elif item.concept == "REPAIRED" and said.startswith(("taped over", "tape over")) and not any(one.concept in ("DAMAGE", "K_REPAIR", "GAP", "PARTED", "METHOD") for one in items[:place]):
        done[place] = replace(item, concept="TAPED", value=None)  # "it was dusty and I taped over it"
    elif item.concept == "DAMAGE" and said == "wet" and "TAPE" in (concept_at(items, place - 1), concept_at(items, place - 2)) and concept_at(items, place - 1) in ("TAPE", "BE"):
        done[place] = replace(item, concept="WORD", value=None)  # "the tape was wet": the roll, not the board
    elif item.concept == "BOTH" and said == "every one" and ahead == "OF" and concept_at(items, place + 2) in ("DET", "IT") and concept_at(items, place + 3) == "TABS":
        done[place] = replace(item, concept="ALL", value=None)  # "bent every one of the tabs"
    elif item.concept == "DIRTY" and concept_at(items, place - 1) == "BE" and text[items[place - 1].start : items[place - 1].end].lower().endswith("was") and _wiped_before(items, place, text):
        done[place] = replace(item, concept="FILLER")  # "wiped it down first, it was dusty"
    elif item.concept == "TIGHT" and concept_at(items, place - 1) in ("BOTH", "ALL") and "TABS" in (near := [concept_at(items, place - k) for k in (2, 3, 4, 5, 6)]) and "JOINT" not in near:
        done[place] = replace(item, concept="FILLER", value=None)  # "tabs are bent, all of them tight": the tabs, no joint
    elif item.concept == "RUBBED" and said == "rubbing" and ahead == "COMMA" and concept_at(items, place - 1) in ("DET", "OF"):
        done[place] = replace(item, concept="RUB", value=None)  # "and the rubbing, well, …": what he goes on to tell of
    elif item.concept == "RUBBED" and said.split()[0] in words_of("small.rub_as_order") and (_asked_of_another(items, place) or _left_to_another(items, place, text)):
        done[place] = replace(item, concept="RUB", value=None)  # "I asked Kim to rub it down", "rubbing down 120 I left to Kim"
    elif item.concept == "PANEL" and ahead in ("MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN") and (side := table_of("small.panel_sides").get(said)) is not None:
        done[place] = replace(item, concept="SIDE", value=(side,))
    elif item.concept == "PENDING" and said == "pendiente" and _a_slope(items, place + 2 if ahead == "COMMA" else place + 1):
        done[place] = replace(item, concept="SLOPE")  # "pendiente tres en doce"
    elif item.concept == "REPAIRED" and (said in ("parche", "remiendo", "parchado") or said in ("reparación", "reparacion") and any(one.concept == "REPAIRED" or one.concept == "DAMAGE" and any(near.concept.startswith("K_") for near in items[place + 1 : place + 4]) for one in items[place + 1 :])) and concept_at(done, place - 1) in ("", "STOP", "DET") and ahead == "ON" and (place < 2 or concept_at(done, place - 2) in ("", "STOP")):
        done[place] = replace(item, concept="K_REPAIR", value="repair")  # "Parche en el dieciocho: …"
    elif item.concept == "CUT_LENGTH" and said == "le corté" and ahead == "DET" and text[items[place + 2].start : items[place + 2].end].lower() in words_of("small.bits") if place + 2 < len(items) else False:
        done[place] = replace(item, concept="WORD", value=None)  # "le corté el pedazo": cut out, not to length
    elif item.concept == "SAYS" and said == "marca" and (ahead == "MARKED" or ahead == "NUM" and concept_at(done, place - 1) in ("COMMA", "STOP", "")) and concept_at(done, place - 1) != "DRAWING":
        done[place] = replace(item, concept="NUMBER")  # "…, marca E dos"
    elif collar and item.concept == "FLAP" and said.split()[-1] in _OF_METAL:
        done[place] = replace(item, concept="TABS")  # the tabs of a collar, not a flap of the facing
    elif item.concept == "HAVE" and said.split()[-1] in ("metí", "meti", "metimos") and ahead in ("NUM", "LEN", "FRAC"):
        done[place] = replace(item, concept="MOVE_IN")
    elif item.concept == "DAMAGE" and said.split()[-1] in words_of("small.holes") and (end := _where_it_does_not_meet(items, place, text)):
        done[place] = replace(item, concept="GAP", value=None)
        done[place + 1 : end] = [one if one.concept in ("JOINT", "SIDE") else replace(one, concept="FILLER") for one in items[place + 1 : end]]
    elif item.concept == "TIGHT" and said.split()[-1].startswith("pegad") and _of_the_tape(items, place):
        done[place] = replace(item, concept="IN_PLACE")  # "la cinta quedó bien pegada": the tape, and not the joint
    elif item.concept == "UP" and said == "up" and (ahead == "AND" and concept_at(items, place + 2) == "TIED" or ahead in ("STOP", "") and concept_at(items, place - 1) == "STOP" and place > 3):
        done[place] = replace(item, concept="HUNG", value=None)  # "up and tied into twenty-six", "Taped, rubbed. Up."
    elif item.concept == "HUNG" and said.startswith(("instal", "mont")) and past_article in ("VANES", "TIE_RODS", "SCREWS", "TABS", "ACCESSORY", "K_HANGER"):
        done[place] = replace(item, concept="FILLER")  # "ya le instalé las aletas"
    elif item.concept in ("HUNG", "WIPED", "PREHEATED", "REPAIRED", "DAMAGE") and _of_another_thing(items, place, text):
        done[place] = replace(item, concept="WORD", value=None)  # "colgué la chamarra", "se golpeó la cabeza"
    elif item.concept in ("WIPED", "REPAIRED", "TRIMMED") and _to_a_tool(items, place, text):
        done[place] = replace(item, concept="WORD", value=None)  # "I took the gun apart, cleaned it, oiled it"
    elif item.concept in ("STAPLED", "TAPED", "RUBBED", "WIPED") and (said in words_of("small.ought_to") or said.startswith(_SOMEDAY)) and _wished(items, place, text):
        lacks = re.search(r"falta que (?:lo |la |le |se )?(?:lo |la )?$", text[max(0, item.start - 22) : item.start].lower()) is not None
        to_do = {"STAPLED": "STAPLE", "TAPED": "TAPE_IT", "RUBBED": "RUB", "WIPED": "WIPE"}[item.concept]
        done[place] = replace(item, concept=to_do if lacks else "WORD", value=None)  # "que lo encinte Juan"


def _of_the_tape(items, place: int) -> bool:
    """Whether it is told of the tape: the thing named last before it in the clause."""
    at = place - 1
    while at >= 0 and place - at < 6 and concept_at(items, at) in ("BE", "FILLER", "WORD", "NUM", "LEN", "OF", "DET", "HAVE", "MARK181", "CLOSURE", "ALL"):
        at -= 1
    return concept_at(items, at) in ("TAPE", "TAPES")


def _asked_of_another(items, place: int) -> bool:
    """Whether somebody is asked to do it."""
    return concept_at(items, place - 1) == "TO" and "SAYS" in [concept_at(items, place - k) for k in (2, 3, 4)]


def _left_to_another(items, place: int, text: str) -> bool:
    """Whether it is what he left to somebody: "rubbing down I left to Kim"."""
    for at in range(place + 1, min(place + 5, len(items))):
        if items[at].concept == "I":
            return at + 1 < len(items) and text[items[at + 1].start : items[at + 1].end].lower().split()[0] in words_of("small.handed_on")
        if items[at].concept not in ("NUM", "MARKED", "FITTING", "NUMBER", "COMMA", "DOWN") and not items[at].concept.startswith("K_"):
            return False
    return False


def _a_slope(items, at: int) -> bool:
    return concept_at(items, at) == "RATIO" or concept_at(items, at) == "NUM" and concept_at(items, at + 1) in ("ON", "TO", "BY", "IN") and concept_at(items, at + 2) == "NUM" and items[at].value.value < items[at + 2].value.value


def _of_another_thing(items, place: int, text: str) -> bool:
    """A verb of ours with another thing behind it: "instalé la lámpara", "calenté el lonche"."""
    said = text[items[place].start : items[place].end].lower().split()
    verb = said[-1].endswith(("é", "ó", "amos", "aron", "ue", "ie", "le", "te")) or said[0] == "se"
    if not verb or len(said) > (2 if said[0] == "se" else 1) or place + 2 >= len(items) or items[place + 1].concept not in ("DET", "ON"):
        return False
    if text[items[place + 1].start : items[place + 1].end].lower() not in ("el", "la", "los", "las", "un", "una", "mi", "mis", "su", "al", "unos", "unas"):
        return False
    noun = items[place + 2]
    if _DOING.search(text[noun.start : noun.end].lower()) is not None and text[items[place + 1].start : items[place + 1].end].lower() == "al":
        return False  # "se aplastó al bajarlo": when
    return noun.concept in _OTHER_THINGS and text[noun.start : noun.end].lower() not in words_of("small.of_ours")


_DOING = re.compile(r"[aei]r(?:l[oa]s?|se|me|nos)?$")
_OF_DUCT = ("FITTING", "PANEL", "FACING", "JOINT", "FLAP", "BOARD", "GENERIC", "MARKED", "SIDE", "SIDE_WORD", "END", "GROOVE", "SHIPLAP", "DAMAGE", "GLASS", "TAPE", "NUM")


def _to_a_tool(items, place: int, text: str) -> bool:
    """Whether "it" is a tool: the last thing named before it in the sentence."""
    said = text[items[place].start : items[place].end].lower().split()
    if not words_of("small.object_of_verb").intersection(said[1:]) and concept_at(items, place + 1) != "IT":
        return False
    for at in range(place - 1, -1, -1):
        concept = items[at].concept
        if concept in ("STOP", "QUERY") or concept in _OF_DUCT or concept.startswith("K_"):
            return False
        if text[items[at].start : items[at].end].lower() in words_of("small.kept_up") and concept_at(items, at - 1) in ("DET", "WORD", "THIS") and (concept_at(items, at - 2) not in _BEFORE_A_PLACE or concept_at(items, at - 3) == "TROUBLE"):
            return re.search(r"\b(?:it|her|this|them|one)\b", text[items[max(0, at - 4)].start : items[at].start].lower()) is None  # "pulled it off the truck, wiped it down"
    return False


_BEFORE_A_PLACE = ("WITH", "FROM", "BY", "IN", "ON", "OFF", "OVER", "TO", "THROUGH", "DOWN", "UP", "UNDER", "OUT", "AROUND")


def _wished(items, place: int, text: str) -> bool:
    behind = " ".join(text[item.start : item.end].lower() for item in items[max(0, place - 4) : place])
    sure = re.search(r"\b(?:claro|creo|seguro|digo|dije|juro|parece|pienso|sé|se|es)(?: de)? que\b", behind)
    return sure is None and re.search(r"\b(?:que|cuando|hasta|antes|cuanto|quien)\b", behind) is not None


def _wiped_before(items, at: int, text: str) -> bool:
    """Whether it was wiped, in this very sentence, with no "but" between."""
    for item in reversed(items[:at]):
        if item.concept in ("STOP", "QUERY", "NOT", "NOT_DONE") or item.concept == "BUT" and text[item.start : item.end].lower() != "though":
            return False
        if item.concept == "WIPED":
            return True
    return False


def _where_it_does_not_meet(items, place: int, text: str) -> int:
    """ "a quarter inch hole at the corner where it don't meet": what is open there is the joint; the place behind those words, or none."""
    where = next((k for k in range(place + 1, min(place + 6, len(items))) if text[items[k].start : items[k].end].lower().split()[0] in words_of("small.where")), None)
    for at in range(where or len(items), min((where or 0) + 7, len(items))):
        if items[at].concept in ("COMMA", "STOP"):
            break
        if words_of("small.meets").intersection(text[items[at].start : items[at].end].lower().split()):
            return at + 1 if any(re.search(r"n.?t$|^not?$", text[one.start : one.end].lower()) or one.concept in ("NOT", "PARTED") for one in items[where:at + 1]) else 0
    return 0
