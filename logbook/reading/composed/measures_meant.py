"""Words for a measure, a number or a thing that only their neighbours explain: "board de pulgada" is an inch, "used the good half" is none."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from logbook.reading.clauses.legs_turn import legs_turn
from logbook.reading.composed.acts_meant import ACTS, TO_DO
from logbook.reading.words.items import concept_at
from logbook.reading.words.measures import Measure
from logbook.reading.words.phrasing import words_of

SIDE_LETTERS = {"l": "left", "r": "right", "t": "top", "b": "bottom"}
CONCEPTS = ("LONG", "WORD", "FRAC", "COUNTED", "LETTER", "COMMA", "EVERY", "PARTLY", "NUM", "ROOM", "DET", "STATIC")


def meant(done: list, items, place: int, ahead: str, past_article: str, said: str, text: str) -> None:
    """Puts into `done` what the word at this place means."""
    item = items[place]
    if item.concept == "LONG" and said in words_of("small.in_all") and concept_at(items, place - 1) == "NUM" and concept_at(items, place - 2) in ("HAVE", "BE", "FILLER", "WORD"):
        done[place] = replace(item, concept="COUNTED", value=None)  # "puse ocho en total"
    elif item.concept == "WORD" and said in words_of("small.an_inch") and concept_at(items, place - 1) == "OF" and any(concept_at(items, place - k) == "BOARD" for k in (2, 3, 4)):
        done[place] = replace(item, concept="LEN", value=Measure("LEN", Fraction(1), "in", 0, False, Fraction(1)))  # "board de pulgada"
    elif item.concept == "FRAC" and said == "half" and concept_at(items, place - 1) in ("WORD", "FILLER", "SIDE", "OTHER_SIDE") and concept_at(items, place - 2) == "DET" and ahead not in ("LEN", "NUM", "FRAC", "OF", "STAPLES", "BOARD", "LEG"):
        done[place] = replace(item, concept="WORD", value="half")  # "used the good half"
    elif item.concept == "FRAC" and item.value.value < 1 and ahead not in ("LEN", "COMMA") and _of_the_staples(items, place, text):
        done[place] = replace(item, concept="FILLER", value=None)  # "half its staples curl in": they are in, and that is how they are
    elif item.concept == "WORD" and said == "open" and concept_at(items, place - 1) == "BE" and (ahead in ("LEN", "FRAC") or ahead == "HEDGE" and concept_at(items, place + 2) in ("LEN", "FRAC")):
        done[place] = replace(item, concept="PARTED", value=None)  # "the joint between 7 and 8 is open a quarter inch"
    elif item.concept == "COUNTED" and said in words_of("small.box") and _a_box(done, items, place):
        done[place] = replace(item, concept="K_PLENUM", value="plenum")
    elif item.concept == "LETTER" and said in SIDE_LETTERS and ahead in ("IN", "OUT", "MOVE_IN", "MOVE_OUT") and concept_at(items, place + 2) in ("NUM", "LEN"):
        done[place] = replace(item, concept="SIDE", value=(SIDE_LETTERS[said],))  # "L in 4 back 24"
    elif item.concept == "LETTER" and said == "n" and ahead in ACTS and concept_at(items, place - 1) not in ("NUMBER", "RUN", "FITTING"):
        done[place] = replace(item, concept="AND", value=None)  # "stapled n taped"
    elif item.concept == "COMMA" and said in ("-", "–", "->") and text[item.start - 1 : item.start] == text[item.end : item.end + 1] == " " and concept_at(items, place - 2) == concept_at(items, place + 2) == "BY":
        done[place] = replace(item, concept="TO", value=None)  # "14x10 - 10x10"
    elif item.concept == "EVERY" and said == "c/" and ahead not in ("NUM", "LEN", "FRAC"):
        done[place] = replace(item, concept="WITH", value=None)  # "c/tape"
    elif item.concept in ("PARTLY", "FRAC") and ahead in TO_DO:
        done[place] = replace(item, concept="PENDING")  # "a medio encintar"
    elif item.concept == "NUM" and concept_at(done, place - 1) == "OF" and concept_at(done, place - 2) in ("TAPE", "MARK181") and 2 <= item.value.value <= 4 and ahead in ("COMMA", "STOP", "AND", "") and any(one.concept == "SHIFT" for one in items[:6]):
        done[place] = replace(item, concept="LEN")  # "hoy con board de pulgada, cinta de tres"
    elif said in words_of("small.a_quarter") and concept_at(done, place - 1) == "OF" and concept_at(done, place - 2) in ("STAPLES", "LEG"):
        done[place] = replace(item, concept="FRAC", value=Measure("FRAC", Fraction(1, 4), None, 0, False, Fraction(1, 4)))  # "grapas de cuarto"
    elif item.concept == "WORD" and said in words_of("small.shifted") and any(one.concept == "K_OFFSET" for one in items[:place]):
        done[place] = replace(item, concept="OFFSETS", value=None)  # "offset tres, corrido de seis en treinta y seis"
    elif item.concept == "DET" and said == "una" and concept_at(done, place - 1) == "OF" and concept_at(done, place - 2) == "BOARD" and ahead in ("COMMA", "STOP", "AND", ""):
        done[place] = replace(item, concept="LEN", value=Measure("LEN", Fraction(1), "in", 0, False, Fraction(1)))  # "tablero de una"
    elif item.concept == "WORD" and said in words_of("small.an_inch") and concept_at(done, place - 1) == "OF" and concept_at(done, place - 2) in ("BOARD", "WASHERS", "MARK181", "TAPE"):
        done[place] = replace(item, concept="LEN", value=Measure("LEN", Fraction(1), "in", 0, False, Fraction(1)))  # "board de pulgada"
    elif item.concept == "STATIC" and said in words_of("small.pressed") and _of_the_tape(items, place):
        done[place] = replace(item, concept="WORD", value=None)  # "la cinta no es de la de presión, la de tres"
    elif item.concept == "NUM" and said == "one" and concept_at(items, place - 1) == "THROAT" and concept_at(items, place - 2) == "DET":
        done[place] = replace(item, concept="WORD", value="one")  # "used a radius one": an elbow


def _of_the_staples(items, place: int, text: str) -> bool:
    """Whether it is so many of the staples, and how their legs go."""
    staples = next((k for k in range(place + 1, min(place + 5, len(items))) if concept_at(items, k) == "STAPLES"), None)
    if staples is None or any(concept_at(items, k) not in ("DET", "OF", "WORD", "FILLER", "ALL") for k in range(place + 1, staples)):
        return False
    if words_of("small.of_them").isdisjoint(text[items[place].end : items[staples].end].lower().split()):
        return False  # "half inch staples", "quarter staples"
    for k in range(staples + 1, min(staples + 9, len(items))):
        if legs_turn(items, text, k):
            return True
        if items[k].concept in ("COMMA", "STOP", "QUERY", "BUT"):
            return False
    return False


def _of_the_tape(items, place: int) -> bool:
    """Whether it is told which tape it is, and no pressure of the air."""
    for at in range(place - 1, max(-1, place - 8), -1):
        if items[at].concept in ("TAPE", "COMMA", "STOP", "LEN", "NUM", "FRAC", "INWG", "RUN", "AIR"):
            return items[at].concept == "TAPE"
    return False


def _a_box(done, items, place: int) -> bool:
    """ "Caja 8, 20x20", "la caja once de veinte por catorce": a plenum by its number, where "dos cajas", "caja de grapas" are none."""
    numbered = place + 2 if concept_at(items, place + 1) in ("NUMBER", "COMMA") else place + 1
    if concept_at(items, numbered) not in ("NUM", "MARKED") or concept_at(done, place - 1) in ("NUM", "LEN", "COUNT"):
        return False
    behind = [concept_at(items, numbered + k) for k in (1, 2)]
    if concept_at(items, place + 1) == "COMMA":
        return concept_at(items, numbered) == "MARKED"
    return behind[0] in ("", "COMMA", "STOP", "SIZE", "BE", "ON", "RUN", "NOT", "NO", "HAVE", "STAPLED", "TAPED", "HUNG", "GAP", "PENDING", "NOT_DONE") or behind[0] == "OF" and behind[1] in ("SIZE", "NUM") or behind[1:] == ["BY"]
