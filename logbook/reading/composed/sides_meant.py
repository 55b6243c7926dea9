"""Words for a side or a way that only their neighbours explain: "brought nine back to the bench" goes back no inches."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.reading.composed.acts_meant import TO_DO
from logbook.reading.words.items import concept_at

_INFINITIVE = re.compile(r"\w{3,}[aei]r(?:les?|l[oa]s?)?")
_TAKES_BACK = re.compile(r"\b(?:peel|pull|open|bend|lift|fold|tak|took|br(?:ing|ought)|sen[dt]|ship|put|g[oe]t|buil[dt]|haul|carr)(?:ed|ied|ies|ing|s|en)? $")
_WENT = re.compile(r"\b(?:walk|climb|crawl|wander|head|hike|drove|rode|ran|circl|stroll|duck|pop|trott?)(?:ed|ing)? $")
CONCEPTS = ("ON", "BACK", "GOING_TO", "SIDE", "SIDE_WORD", "BY", "DRAWING", "LEVEL", "MOVE_OUT", "SLOPE", "INLET")


def meant(done: list, items, place: int, ahead: str, past_article: str, said: str, text: str) -> None:
    """Puts into `done` what the word at this place means."""
    item = items[place]
    if item.concept == "ON" and said == "al" and concept_at(items, place - 2) in ("COUNTED", "FITTING") and concept_at(items, place - 1) == ahead == "NUM" and items[place + 1].value.value > items[place - 1].value.value:
        done[place] = replace(item, concept="THRU", value=None)  # "tramos 20 al 24"
    elif item.concept == "BACK" and said == "back" and ahead == "TO" and concept_at(items, place + 2) in ("DET", "ON_BENCH", "BUILDING", "WORD") and concept_at(items, place - 1) in ("NUM", "MARKED", "IT"):
        done[place] = replace(item, concept="FILLER")  # "brought nine back to the bench"
    elif item.concept == "BACK" and said == "back" and concept_at(items, place - 1) in ("NUM", "MARKED") and (ahead == "UP" or _TAKES_BACK.search(text[: items[place - 1].start].lower()[-16:])):
        done[place] = replace(item, concept="FILLER")  # "opened 63 back up", "I peel one back and look"
    elif item.concept == "BACK" and said == "back" and ahead in ("TO", "OVER", "ON", "AT", "FROM") and _WENT.search(text[max(0, item.start - 12) : item.start].lower()):
        done[place] = replace(item, concept="FILLER")  # "I walked back to 41"
    elif item.concept == "GOING_TO" and concept_at(items, place - 2) == "BY" and ahead in ("NUM", "LEN") and concept_at(items, place + 2) == "BY":
        done[place] = replace(item, concept="TO")  # "it's twenty by ten going to sixteen by ten"
    elif item.concept == "BACK" and ahead == "BY" and concept_at(items, place - 1) == "IT" and text[items[place - 2].start : items[place - 2].end].lower() in ("cut", "trimmed", "took"):
        done[place] = replace(item, concept="FILLER")  # "I had to cut it back by two inches": no side moves
    elif item.concept == "INLET" and said == "coming in" and ahead in ("LEN", "FRAC", "NUM", "HEDGE") and concept_at(items, place + 2) != "BY" and ({concept_at(items, place - 1), concept_at(items, place - 2) if concept_at(items, place - 1) == "BE" else ""} & {"SIDE", "ONE_SIDE", "SIDE_WORD", "OTHER_SIDE"}):
        done[place] = replace(item, concept="MOVE_IN", value=None)  # "the left side coming in six over twenty"
    elif item.concept == "SIDE" and said == "left" and concept_at(items, place - 1) in ("STAPLES", "TAPE", "CLOSURE", "MARK181") and ahead in ("STOP", "COMMA", ""):
        done[place] = replace(item, concept="FILLER", value=None)  # "I only had the quarter inch staples left"
    elif item.concept == "SIDE" and said == "right" and concept_at(items, place - 1) in ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "WIPED") and (ahead in ("STOP", "BUT", "") or ahead == "COMMA" and concept_at(items, place + 2) != "SIDE"):
        done[place] = replace(item, concept="FILLER", value=None)  # "stapled right, two inches and legs out"
    elif item.concept == "SIDE" and said == "left" and ahead == "BE" and concept_at(items, place - 1) in ("STAPLES", "TAPE", "CLOSURE", "MARK181", "COUNTED", "HAVE", "BE", "LEN"):
        done[place] = replace(item, concept="FILLER", value=None)  # "the only tape left was two inch"
    elif item.concept == "SIDE_WORD" and ahead in ("MOVE_IN", "MOVE_OUT") and concept_at(items, place - 1) == "NUM" and items[place - 1].value.value == 4:
        done[place - 1] = replace(items[place - 1], concept="FILLER", value=None)
        done[place] = replace(item, start=items[place - 1].start, concept="SIDE", value=("left", "right", "top", "bottom"))  # "all four sides come in two"
    elif item.concept == "SIDE" and said in ("derecha", "derecho") and concept_at(done, place - 1) == "SIDE" and done[place - 1].value == ("right",) and ahead in ("COMMA", "STOP", "", "AND"):
        done[place] = replace(item, concept="LEVEL", value=None)  # "la derecha derecha"
    elif item.concept == "BY" and said == "por" and (ahead in TO_DO or ahead == "WORD" and concept_at(done, place - 1) == "BE" and _INFINITIVE.fullmatch(text[items[place + 1].start : items[place + 1].end].lower())):
        done[place] = replace(item, concept="PENDING")  # "está por encintar"
    elif item.concept == "BY" and said == "por" and (ahead in ("ALL_BUT", "SIDES_ALL") or [concept_at(items, k) for k in range(place + 1, place + 4) if concept_at(items, k) != "DET"][:2] == ["NUM", "SIDE_WORD"]):
        done[place] = replace(item, concept="ON")  # "le puse cinta al 12 por los cuatro lados": no size
    elif item.concept == "DRAWING" and said == "plano" and text[max(0, item.start - 3) : item.start].lower() not in ("el ", "un ") and {concept_at(items, place - 1), past_article} & {"SIDE"}:
        done[place] = replace(item, concept="LEVEL")  # "abajo plano"
    elif item.concept == "LEVEL" and said == "level" and concept_at(done, place - 1) == "SIDE" and text[items[place - 1].start : items[place - 1].end].lower() in ("lower", "upper") and (ahead == "SERVICE" or text[item.start - 1] == "-"):
        done[place - 1 : place + 1] = [replace(one, concept="WORD", value=None) for one in (items[place - 1], item)]  # "the lower-level return": a floor of the building
    elif item.concept == "LEVEL" and said in ("ran straight", "runs straight", "run straight") and ahead in ("NUM", "MARKED"):
        done[place] = replace(item, concept="K_STRAIGHT", value="straight")  # "ran straight 5 along the parapet"
    elif item.concept == "LEVEL" and said in ("straight on", "recto en", "recta en") and ahead in ("RUN", "WORD", "ANOTHER"):
        done[place] = replace(item, concept="K_STRAIGHT", value="straight")
    elif item.concept == "MOVE_OUT" and said.split()[-1] in ("abre", "abrió", "abrio") and ahead in ("LEN", "FRAC") and items[place + 1].value.value <= 2 and "JOINT" in {concept_at(done, place - k) for k in (1, 2, 3)}:
        done[place] = replace(item, concept="GAP", value=None)  # "la junta de arriba se abre tres dieciseisavos"
    elif item.concept == "SIDE" and said in ("derecho", "recto", "derecha") and place and done[place - 1].concept == "SIDE" and done[place - 1].value in (("top",), ("bottom",), ("left",)):
        done[place] = replace(item, concept="LEVEL", value=None)  # "abajo derecho"
    elif item.concept == "SLOPE" and said in ("bajada", "la bajada") and ahead in ("NUM", "MARKED") and concept_at(items, place + 2) not in ("IN", "ON", "OVER", "BY", "LEN", "FRAC", "OF"):
        done[place] = replace(item, concept="K_BRANCH", value="branch")  # "la bajada 61 lleva tabs": a drop, and no slope
    elif item.concept == "SLOPE" and said.removeprefix("the ").removeprefix("a ") in _TAPERS and (number := _named_a_taper(items, place)):
        done[place] = replace(item, concept="K_TRANSITION", value="transition")  # "taper 117 drops five in twenty", "the tapered piece, 9"
        if number - place > 1 and items[place + 1].concept in ("FITTING", "K_STRAIGHT"):
            done[place + 1] = replace(items[place + 1], concept="FILLER", value=None)
    elif item.concept == "SLOPE" and ahead in TO_DO:
        done[place] = replace(item, concept="PENDING")
    elif item.concept == "ON" and said == "al" and ahead == "NUM" and concept_at(done, place - 1) == "NUM" and {concept_at(done, place - 2), concept_at(done, place - 3)} & {"FROM", "OF"}:
        done[place] = replace(item, concept="THRU")  # "del cuatro al seis"
    elif item.concept == "SIDE" and said in ("derecho", "derecha") and ahead == "NUM" and concept_at(items, place + 2) != "BY" and (place == 0 or concept_at(done, place - 1) in ("STOP", "FITTING")):
        done[place] = replace(item, concept="K_STRAIGHT", value="straight")  # "derecho ocho, doce por diez"
    elif item.concept == "SIDE" and said == "arriba" and ahead == "AND" and concept_at(items, place + 2) == "TIED":
        done[place] = replace(item, concept="HUNG", value=None)
    elif item.concept == "MOVE_OUT" and said in ("salió", "salio") and past_article == "SCRIM":
        done[place] = replace(item, concept="SHOWS")


_TAPERS = ("taper", "tapers", "tapered", "tapering")
_NO_NAME = ("IN", "TO", "OVER", "OUT", "BY", "DEG", "LONG", "BACK", "ON", "SIZE", "OF", "COUNT", "NUM", "LEN", "FRAC", "DOWN", "UP")  # behind a number that tells how much it tapers


def _named_a_taper(items, place: int) -> int:
    """Where the number stands that names the taper; 0 where none does: "taper three in twelve" is how much."""
    at = place + 1
    said = concept_at(items, at)
    if said in ("FITTING", "K_STRAIGHT"):
        at += 1
    elif concept_at(items, place - 1) not in ("", "STOP", "COMMA", "DET", "ON", "OF", "AND", "THIS", "STAPLED", "TAPED", "RUBBED"):
        return 0
    if concept_at(items, at) == "COMMA" and concept_at(items, at + 1) in ("NUM", "MARKED") and concept_at(items, at + 2) in ("COMMA", "STOP", ""):
        at += 1
    if concept_at(items, at) in ("NUMBER",):
        at += 1
    if concept_at(items, at) == "MARKED":
        return at
    behind = concept_at(items, at + 1)
    told = behind == "ON" and concept_at(items, at + 2) == "RUN" or behind not in _NO_NAME
    return at if concept_at(items, at) == "NUM" and items[at].value.value.denominator == 1 and told else 0
