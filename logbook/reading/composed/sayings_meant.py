"""Words of talk that only their neighbours explain: "hang on" corrects, "como no traía solapa" gives a reason, "she's a plain straight" is the piece."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.reading.words.items import concept_at
from logbook.reading.words.phrasing import words_of
from logbook.reading.composed.yes_unaccented import is_yes

_LEFT_OUT = ("SIDE", "OTHER_SIDE", "ONE_SIDE", "TAPE", "STAPLES", "VANES", "TABS", "TAPE_IT", "STAPLE", "RUB", "JOINT", "SIDE_WORD")
_COUNTED_OFF = ("BENT", "CLINCHED", "TABS", "VANES", "STAPLED", "TAPED", "RUBBED", "SIDE", "ALL", "STAPLES", "SIDE_WORD", "SIDES_ALL")
_MINUS = ("menos", "minus")
_OF_A_THING = ("WEIGHS", "MOVE", "MOVE_IN", "MOVE_UP", "MOVE_DOWN", "MOVE_OUT", "TAKES", "SEATED", "BE", "LEAVES", "END")
_CAN = (" can", "can't", " to", " gotta", " will", "'ll", " must", " should", " could", " i", " we")
_COUNTED = ("VANES", "TABS", "STAPLES", "SCREWS")
_ACTS_DONE = ("STAPLED", "TAPED", "RUBBED", "WIPED", "TRIMMED", "PREHEATED")
_HAD_DONE = re.compile(r"(?:(?:just|already|only|even) )*(?!(?:\w*eed|bed|wed|led|fed|shed|sped|red)\b)(?:\w{2,}ed|hung|done|shot|taken|gotten|driven|begun|broken|torn)\b")
CONCEPTS = ("FILLER", "TRADE_NOISE", "HEDGE", "OTHER", "EXCEPT", "FIX", "QUESTION", "WILL", "QUERY", "NO", "NOT", "IF", "NEGATIVE")


def meant(done: list, items, place: int, ahead: str, past_article: str, said: str, text: str) -> None:
    """Puts into `done` what the word at this place means."""
    item = items[place]
    if item.concept == "TRADE_NOISE" and said in ("hang on", "hold on a second") and ahead in ("COMMA", "STOP") and concept_at(items, place - 1) in ("COMMA", "STOP"):
        done[place] = replace(item, concept="FIX", value=None)  # "fourteen by ten, hang on, fourteen by twelve"
    elif item.concept == "FILLER" and said in words_of("small.so_it_is_not") and ahead in ("BE", "HAVE") and concept_at(items, place + 2) in _ACTS_DONE:
        done[place] = replace(item, concept="NOT", value=None)  # "no air so it won't be stapled"; "so it won't be loose" is what the work is for
    elif item.concept == "NOT" and ahead == "WORD" and concept_at(items, place + 2) in ("LEN", "FRAC") and text[items[place + 1].start : items[place + 1].end].lower() in words_of("small.quite"):
        done[place] = replace(item, concept="FILLER", value=None)  # "not quite two inches apart": they are in, and apart
    elif item.concept == "HEDGE" and said == "como" and concept_at(items, place - 1) in ("", "STOP", "COMMA", "FILLER", "BUT", "AND") and (ahead in ("NO", "NOT", "NOT_DONE", "DET", "IT", "I", "BE", "LACK") or ahead == "FILLER" and past_article not in ("NUM", "LEN", "FRAC", "DEG")):
        done[place] = replace(item, concept="FILLER", value=None)  # "como no traía solapa, …": since
    elif item.concept == "TRADE_NOISE" and said == "right at" and ahead in ("LEN", "NUM") and concept_at(items, place - 1) in ("STAPLED", "STAPLES"):
        done[place] = replace(item, concept="ON", value=None)  # "stapled right at two inches"
    elif item.concept == "OTHER" and said in ("otros", "otras", "los otros", "las otras") and (ahead in ("NUM", "BE", "HAVE", "STAPLED", "TAPED", "RUBBED", "COMMA", "NOT") or ahead == "FILLER") and any([concept_at(items, k), concept_at(items, k + 1)] in (["NUM", "AND"], ["NUM", "THRU"], ["NUM", "COMMA"], ["NUM", "TO"]) and concept_at(items, k + 2) in ("NUM", "DET") for k in range(place)):
        done[place] = replace(item, concept="WORD", value="otros")  # "80, 81 y 82 …, los otros sí": the pieces
    elif item.concept == "EXCEPT" and said.endswith(" que") and any(concept_at(items, k) in ("BE", "HAVE", "NOT", "NO", "PENDING", "UNDONE", "FORGOT", "EVERY") for k in range(place + 1, _clause_end(items, place))):
        done[place] = replace(item, concept="BUT", value=None)  # "nomás que las grapas son de tres octavos"
    elif item.concept == "FIX" and said == "wait" and text[: item.start].lower().rstrip().endswith(_CAN):
        done[place] = replace(item, concept="WORD", value=None)  # "rubbing can wait": nothing is put right
    elif item.concept == "FIX" and said in words_of("small.that_is") and ahead in ("NUM", "FRAC") and [concept_at(items, place + k) for k in (2, 3)] in (["ON", "NUM"], ["IN", "NUM"]) and items[place + 3].value.value == 12:
        done[place] = replace(item, concept="SLOPE", value=None)  # "entra tres en veinticuatro, o sea dos en doce"
    elif item.concept == "QUESTION" and said in ("is it", "is that", "is there", "is this") and ahead in ("MOVE", "HAVE", "FROM", "BE") and concept_at(items, place - 1) == "COMMA" and "STOP" not in [one.concept for one in items[:place][-12:]]:
        done[place] = replace(item, concept="BE")  # "what I ended up with, transition nine, is it goes from …"
    elif item.concept == "WILL" and said in ("i'd", "we'd", "i’d", "we’d") and place + 1 < len(items) and _HAD_DONE.match(text[items[place + 1].start :].lower()):
        done[place] = replace(item, concept="I")  # "I'd stapled it and was taping when …": it was done by then
    elif item.concept == "QUERY" and ahead == "BE" and concept_at(items, place + 2).startswith("K_") and _points(items, place):
        done[place] = replace(item, concept="COMMA")  # "The one I cut short? That's straight nine": nothing is asked
    elif item.concept == "WILL" and said in ("going back to", "coming back to") and concept_at(items, place - 1) in ("", "STOP", "FILLER") and _names_only(items, place + 1):
        done[place] = replace(item, concept="CORRECTION_ON", value=None)  # "going back to straight nine, I told you …"
    elif item.concept == "OTHER" and said == "they" and _of_the_parts(items, place):
        done[place] = replace(item, concept="IT")  # "the staples are half-inch and they flare outward"
    elif item.concept == "OTHER" and said.endswith((" shift", " crew")) and ahead == "FILLER" and text[items[place + 1].start : items[place + 1].end].lower() == "here":
        done[place] = replace(item, concept="SHIFT")  # "night shift here": who speaks
    elif item.concept == "HEDGE" and said == "like" and concept_at(items, place - 1) in ("COMMA", "BE") and ahead in ("NUM", "MARKED") and concept_at(items, place + 2) in ("BUT", "EXCEPT", "ONLY", "COMMA", "STOP", ""):
        done[place] = replace(item, concept="SAME_AS", value=None)  # "straight 89, like 88 but thirty long"
    elif item.concept == "QUESTION" and said in ("is the", "is this", "is that") and concept_at(items, place - 1) in ("NUM", "MARKED") and concept_at(items, place - 2) in ("", "STOP", "FILLER", "NUMBER", "FITTING"):
        done[place] = replace(item, concept="BE", value=None)  # "fifty-seven is the tee in the closet"
    elif item.concept == "NO" and said == "without" and ahead in ("STAPLED", "TAPED", "RUBBED") and text[items[place + 1].start : items[place + 1].end].lower().endswith("ed"):
        done[place] = replace(item, concept="WORD", value=None)  # "I closed her up without, stapled every two": the comma is lost
    elif item.concept == "QUESTION" and said == "is the" and "MISSING" in [concept_at(items, place - k) for k in (1, 2, 3, 4, 5)]:
        done[place] = replace(item, concept="BE", value=None)  # "the only thing missing on elbow 23 is the vanes"
    elif item.concept == "NOT" and said == "not" and ahead == "NUM" and concept_at(items, place + 2) in ("COMMA", "STOP", "AND", "") and any(concept_at(items, place - k) in _COUNTED and concept_at(items, place - k - 1) == "NUM" for k in (1, 2, 3)):
        done[place] = replace(item, concept="FILLER")  # "it's two vanes not three"
        done[place + 1] = replace(items[place + 1], concept="COUNT", value=None)
    elif item.concept == "OTHER" and said in ("she's", "she’s") and (ahead in ("DET", "SIZE", "NUM", "LEN", "DEG", "TIGHT", "VANES", "IN_PLACE", "UP", "FILLER", "ON_BENCH", "HAVE", "NOT", "NO") or ahead.startswith("K_")):
        done[place] = replace(item, concept="BE")  # "she's a plain straight"
    elif item.concept == "OTHER" and said == "she" and ahead in _OF_A_THING:
        done[place] = replace(item, concept="IT")  # "she weighs sixty pounds": the piece
    elif item.concept == "IF" and said == "si" and is_yes(done, items, place):
        done[place] = replace(item, concept="FILLER")  # "recto 9 si lo encinte": yes, without its accent
    elif item.concept == "NEGATIVE" and said in _MINUS and (past_article in _LEFT_OUT or ((past_article == "NUM" or concept_at(items, place + 2) in ("", "COMMA", "STOP", "TABS") and ahead == "DET") and concept_at(done, place - 1) in _COUNTED_OFF)):
        done[place] = replace(item, concept="EXCEPT")


def _clause_end(items, place: int) -> int:
    return next((k for k in range(place + 1, min(place + 6, len(items))) if items[k].concept in ("COMMA", "STOP", "QUERY")), min(place + 6, len(items)))


def _names_only(items, at: int) -> bool:
    """Whether a piece is named here, and nothing behind it in its clause."""
    end = at
    while concept_at(items, end) in ("DET", "FITTING", "NUMBER") or concept_at(items, end).startswith("K_"):
        end += 1
    return concept_at(items, end) in ("NUM", "MARKED") and concept_at(items, end + 1) in ("COMMA", "STOP")


def _points(items, place: int) -> bool:
    """Whether the words up to a question's sign are a thing and who did what with it: "the one I cut short"."""
    first = place
    while first > 0 and items[first - 1].concept not in ("STOP", "QUERY"):
        first -= 1
    ahead = [concept_at(items, first + k) for k in (0, 1, 2)]
    return ahead[0] == "DET" and (ahead[1] in ("NUM", "GENERIC", "FITTING") or ahead[1].startswith("K_")) and ahead[2] in ("I", "THIS", "WITH", "FROM")


def _of_the_parts(items, place: int) -> bool:
    """Whether "they" are the staples, tabs or vanes named right before: they go some way, or they are somehow."""
    near = [concept_at(items, k) for k in range(max(0, place - 10), place)]
    near = near[max((k for k, concept in enumerate(near) if concept in ("STOP", "QUERY")), default=-1) + 1 :]
    goes = {concept_at(items, place + 1), concept_at(items, place + 2)} & {"OUT", "OUTSIDE", "INSIDE", "CLINCHED", "BENT", "MOVE_OUT", "OFFSETS"}
    return bool(goes) and bool({"STAPLES", "STAPLED", "LEG", "TABS"} & set(near)) and "I" not in near
