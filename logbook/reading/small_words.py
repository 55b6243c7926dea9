"""Words whose meaning hangs on the word behind them: "por encintar" is still to do, "menos el fondo" leaves the bottom out."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

from logbook.reading.measures import Measure
from logbook.reading.phrasing import table_of, words_of

_TO_DO = ("REPAIR_IT", "HEAT_IT", "TAPE_IT", "STAPLE", "RUB", "TRIM", "WIPE", "HANG")
_LEFT_OUT = ("SIDE", "OTHER_SIDE", "ONE_SIDE", "TAPE", "STAPLES", "VANES", "TABS", "TAPE_IT", "STAPLE", "RUB", "JOINT", "SIDE_WORD")
_OF_METAL = ("lengüeta", "lengueta", "lengüetas", "lenguetas", "pestaña", "ceja", "tab")
_COUNTED_OFF = ("BENT", "CLINCHED", "TABS", "VANES", "STAPLED", "TAPED", "RUBBED", "SIDE", "ALL", "STAPLES", "SIDE_WORD", "SIDES_ALL")
_SHIFTED = ("corrido", "corrida", "recorrido", "recorrida")
_TOP_AND_BOTTOM = {"techo": "top", "piso": "bottom"}
_INFINITIVE = re.compile(r"\w{3,}[aei]r(?:les?|l[oa]s?)?")
_MINUS = ("menos", "minus")
_SOMEDAY = ("termine de", "acabe de", "vuelva a", "alcance a")
SIDE_LETTERS = {"l": "left", "r": "right", "t": "top", "b": "bottom"}
_WHEN_DONE = {"TAPE_IT": "TAPED", "STAPLE": "STAPLED", "RUB": "RUBBED", "TRIM": "TRIMMED", "WIPE": "WIPED", "HANG": "HUNG", "REPAIR_IT": "REPAIRED", "HEAT_IT": "PREHEATED"}
_ACTS = ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "WIPED", "STAPLES", "TAPE", "SEALED", "HUNG", "MISHEARD")


_LEFT_AS_THEY_ARE = ("NUM", "DET", "STOP", "AND", "IT", "BE", "IN", "OUT", "OF", "K_TRANSITION", "RUN", "MARKED")  # but behind "of"; the commonest, so that they cost nothing


def _clause_end(items, place: int) -> int:
    return next((k for k in range(place + 1, min(place + 6, len(items))) if items[k].concept in ("COMMA", "STOP", "QUERY")), min(place + 6, len(items)))


def meant_by_neighbours(items, text: str):
    done = list(items)
    collar = any(item.concept == "K_COLLAR" for item in items)
    for place, item in enumerate(items):
        if (item.concept in _LEFT_AS_THEY_ARE or item.concept == "COMMA" and text[item.start] not in "-–") and _concept(done, place - 1) != "OF":
            continue
        ahead = _concept(items, place + 1)
        past_article = _concept(items, place + 2) if ahead in ("DET", "FILLER", "ON") else ahead
        said = text[item.start : item.end].lower()
        if item.concept == "TRADE_NOISE" and said in ("hang on", "hold on a second") and ahead in ("COMMA", "STOP") and _concept(items, place - 1) in ("COMMA", "STOP"):
            done[place] = replace(item, concept="FIX", value=None)  # "fourteen by ten, hang on, fourteen by twelve"
        elif item.concept == "HEDGE" and said == "como" and _concept(items, place - 1) in ("", "STOP", "COMMA", "FILLER", "BUT", "AND") and (ahead in ("NO", "NOT", "NOT_DONE", "DET", "IT", "I", "BE", "LACK") or ahead == "FILLER" and past_article not in ("NUM", "LEN", "FRAC", "DEG")):
            done[place] = replace(item, concept="FILLER", value=None)  # "como no traía solapa, …": since
        elif item.concept == "TRADE_NOISE" and said == "right at" and ahead in ("LEN", "NUM") and _concept(items, place - 1) in ("STAPLED", "STAPLES"):
            done[place] = replace(item, concept="ON", value=None)  # "stapled right at two inches"
        elif item.concept == "K_STRAIGHT" and said == "straight" and ahead == "THROUGH" and _concept(items, place + 2) not in ("NUM", "MARKED") and _concept(items, place - 1) not in ("DET", "THIS", "STOP", "", "COMMA"):
            done[place] = replace(item, concept="FILLER", value=None)  # "stapled it straight through"
        elif item.concept == "TAPE" and said == "tape" and _concept(items, place - 1) == "DET" and ahead == "ON" and past_article in ("GAP", "DAMAGE") or item.concept == "TAPE" and said == "tape" and ahead == "ON" and _concept(items, place - 1) == "DET" and _concept(items, place + 2) in ("STAPLES", "GAP") and text[items[place - 1].start : items[place - 1].end].lower() in ("a", "my"):
            done[place] = replace(item, concept="WORD", value=None)  # "put a tape on the staples": what he measures with
        elif item.concept == "OTHER" and said in ("otros", "otras", "los otros", "las otras") and (ahead in ("NUM", "BE", "HAVE", "STAPLED", "TAPED", "RUBBED", "COMMA", "NOT") or ahead == "FILLER") and any([_concept(items, k), _concept(items, k + 1)] in (["NUM", "AND"], ["NUM", "THRU"], ["NUM", "COMMA"], ["NUM", "TO"]) and _concept(items, k + 2) in ("NUM", "DET") for k in range(place)):
            done[place] = replace(item, concept="WORD", value="otros")  # "80, 81 y 82 …, los otros sí": the pieces
        elif item.concept == "ON" and said == "al" and _concept(items, place - 2) in ("COUNTED", "FITTING") and _concept(items, place - 1) == ahead == "NUM" and items[place + 1].value.value > items[place - 1].value.value:
            done[place] = replace(item, concept="THRU", value=None)  # "tramos 20 al 24"
        elif item.concept == "EXCEPT" and said.endswith(" que") and any(_concept(items, k) in ("BE", "HAVE", "NOT", "NO", "PENDING", "UNDONE", "FORGOT", "EVERY") for k in range(place + 1, _clause_end(items, place))):
            done[place] = replace(item, concept="BUT", value=None)  # "nomás que las grapas son de tres octavos"
        elif item.concept == "FIX" and said in words_of("small.that_is") and ahead in ("NUM", "FRAC") and [_concept(items, place + k) for k in (2, 3)] in (["ON", "NUM"], ["IN", "NUM"]) and items[place + 3].value.value == 12:
            done[place] = replace(item, concept="SLOPE", value=None)  # "entra tres en veinticuatro, o sea dos en doce"
        elif item.concept == "LONG" and said == "en total" and _concept(items, place - 1) == "NUM" and _concept(items, place - 2) in ("HAVE", "BE", "FILLER", "WORD"):
            done[place] = replace(item, concept="COUNTED", value=None)  # "puse ocho en total"
        elif item.concept in _TO_DO and _concept(items, place - 1) == "TO" and _concept(items, place - 2) in ("AND", "COMMA") and _concept(done, place - 3) in _ACTS and text[items[place - 3].start : items[place - 3].end].lower().startswith(tuple(words_of("small.over_again"))):
            done[place] = replace(item, concept=_WHEN_DONE[item.concept], value=None)  # "lo volví a grapear y a encintar"
        elif item.concept == "WORD" and said == "pulgada" and _concept(items, place - 1) == "OF" and any(_concept(items, place - k) == "BOARD" for k in (2, 3, 4)):
            done[place] = replace(item, concept="LEN", value=Measure("LEN", Fraction(1), "in", 0, False, Fraction(1)))  # "board de pulgada"
        elif item.concept == "K_STRAIGHT" and said == "straight" and _concept(items, place - 1) == "SIDE" and ahead in ("COMMA", "STOP", "", "AND") and (_moves_before(items, place) or len(items) == 2):
            done[place] = replace(item, concept="LEVEL", value=None)  # "right in four, back twenty-four, left straight"
        elif item.concept == "BACK" and said == "back" and ahead == "TO" and _concept(items, place + 2) in ("DET", "ON_BENCH", "BUILDING", "WORD") and _concept(items, place - 1) in ("NUM", "MARKED", "IT"):
            done[place] = replace(item, concept="FILLER")  # "brought nine back to the bench"
        elif item.concept == "GOING_TO" and _concept(items, place - 2) == "BY" and ahead in ("NUM", "LEN") and _concept(items, place + 2) == "BY":
            done[place] = replace(item, concept="TO")  # "it's twenty by ten going to sixteen by ten"
        elif item.concept == "K_STRAIGHT" and said == "section" and "LEAK_TEST" in (_concept(items, place - 1), _concept(items, place - 2)) and ahead in ("LETTER", "MARKED", "NUM"):
            done[place] = replace(item, concept="FITTING", value=None)  # "leak test, section A": a stretch of the run
        elif item.concept == "QUESTION" and said in ("is it", "is that", "is there", "is this") and ahead in ("MOVE", "HAVE", "FROM", "BE") and _concept(items, place - 1) == "COMMA" and "STOP" not in [one.concept for one in items[:place][-12:]]:
            done[place] = replace(item, concept="BE")  # "what I ended up with, transition nine, is it goes from …"
        elif item.concept == "WILL" and said in ("i'd", "we'd", "i’d", "we’d") and ahead in ("STAPLED", "TAPED", "RUBBED", "HUNG", "WIPED", "TRIMMED") and text[items[place + 1].start :].lower().split()[0].endswith(("ed", "hung")):
            done[place] = replace(item, concept="I")  # "I'd stapled it and was taping when …": it was done by then
        elif item.concept == "BACK" and ahead == "BY" and _concept(items, place - 1) == "IT" and text[items[place - 2].start : items[place - 2].end].lower() in ("cut", "trimmed", "took"):
            done[place] = replace(item, concept="FILLER")  # "I had to cut it back by two inches": no side moves
        elif item.concept == "FRAC" and said == "half" and _concept(items, place - 1) in ("WORD", "FILLER", "SIDE", "OTHER_SIDE") and _concept(items, place - 2) == "DET" and ahead not in ("LEN", "NUM", "FRAC", "OF", "STAPLES", "BOARD", "LEG"):
            done[place] = replace(item, concept="WORD", value="half")  # "used the good half"
        elif item.concept == "K_PLENUM" and said == "box" and ahead not in ("NUM", "MARKED", "NUMBER", "COMMA", "LETTER", "SIZE", "DASH") and (_concept(items, place - 1) in ("WORD", "LEN", "FRAC", "SIDE", "FILLER") and _concept(items, place - 2) in ("DET", "WORD", "ON", "IN", "FROM") or _concept(items, place - 3) in ("TAPE", "STAPLES", "SAYS") and _concept(items, place - 2) in ("IN", "ON") or ahead == "SAYS"):
            done[place] = replace(item, concept="WORD", value="box")  # "the half inch box was empty", "on a pizza box", "no other tape in the box"
        elif item.concept == "UNDONE" and said.endswith("cut it off") and ahead in ("TO", "ON") and _concept(items, place + 2) in ("NUM", "LEN"):
            done[place] = replace(item, concept="CUT_TO")  # "had to cut it off to thirty-one"
        elif item.concept == "QUERY" and ahead == "BE" and _concept(items, place + 2).startswith("K_") and _points(items, place):
            done[place] = replace(item, concept="COMMA")  # "The one I cut short? That's straight nine": nothing is asked
        elif item.concept == "K_OFFSET" and _concept(done, place - 1) in ("COMMA", "AND", "WITH") and any(one.concept == "K_OFFSET" for one in done[:place]) and (_by_and_over(items, place + 1) or _sized_before(done, place)):
            done[place] = replace(item, concept="OFFSETS", value=None)  # "offset nine, ten by ten, offset six in twenty-four", "…, length 36, offset six"
        elif item.concept == "WILL" and said in ("going back to", "coming back to") and _concept(items, place - 1) in ("", "STOP", "FILLER") and _names_only(items, place + 1):
            done[place] = replace(item, concept="CORRECTION_ON", value=None)  # "going back to straight nine, I told you …"
        elif item.concept == "OTHER" and said == "they" and _of_the_parts(items, place):
            done[place] = replace(item, concept="IT")  # "the staples are half-inch and they flare outward"
        elif item.concept == "OTHER" and said.endswith((" shift", " crew")) and ahead == "FILLER" and text[items[place + 1].start : items[place + 1].end].lower() == "here":
            done[place] = replace(item, concept="SHIFT")  # "night shift here": who speaks
        elif item.concept == "TIED" and said in _ENDS_IN_TO and past_article in ("END", "JOINT", "FLAP", "SIDE", "SIDE_WORD", "FACING"):
            done[place] = replace(item, concept=_ENDS_IN_TO[said])  # "stapled to the edge"
        elif item.concept == "NOT_MARK" and said == "box number" and _concept(items, place - 1) in ("", "STOP") and ahead == "NUM" and _concept(items, place + 2) in ("COMMA", "BE", "STOP"):
            done[place] = replace(item, concept="K_PLENUM", value="plenum")  # "box number six, twenty-four by twenty-four"
        elif item.concept == "HEDGE" and said == "like" and _concept(items, place - 1) in ("COMMA", "BE") and ahead in ("NUM", "MARKED") and _concept(items, place + 2) in ("BUT", "EXCEPT", "ONLY", "COMMA", "STOP", ""):
            done[place] = replace(item, concept="SAME_AS", value=None)  # "straight 89, like 88 but thirty long"
        elif item.concept == "QUESTION" and said in ("is the", "is this", "is that") and _concept(items, place - 1) in ("NUM", "MARKED") and _concept(items, place - 2) in ("", "STOP", "FILLER", "NUMBER", "FITTING"):
            done[place] = replace(item, concept="BE", value=None)  # "fifty-seven is the tee in the closet"
        elif item.concept == "BRANCH_WORD" and said.endswith(" off") and ahead == "DET" and _concept(items, place + 2) in ("NUM", "LEN") and any(one.concept == "K_BRANCH" for one in items[:place]):
            done[place] = replace(item, concept="FROM")  # "takeoff nine comes off the sixteen by ten"
        elif item.concept in ("BRANCH_WORD", "UNDONE") and said.endswith(" off") and past_article == "SIDE" and _so_far(items, place + 1):
            done[place] = replace(item, concept="OFF", value=None)  # "it all comes off the left side, six in thirty-six"
        elif item.concept == "REPAIRED" and said.startswith(("taped over", "tape over")) and not any(one.concept in ("DAMAGE", "K_REPAIR", "GAP", "PARTED", "METHOD") for one in items[:place]):
            done[place] = replace(item, concept="TAPED", value=None)  # "it was dusty and I taped over it"
        elif item.concept == "DAMAGE" and said == "wet" and "TAPE" in (_concept(items, place - 1), _concept(items, place - 2)) and _concept(items, place - 1) in ("TAPE", "BE"):
            done[place] = replace(item, concept="WORD", value=None)  # "the tape was wet": the roll, not the board
        elif item.concept == "NO" and said == "without" and ahead in ("STAPLED", "TAPED", "RUBBED") and text[items[place + 1].start : items[place + 1].end].lower().endswith("ed"):
            done[place] = replace(item, concept="WORD", value=None)  # "I closed her up without, stapled every two": the comma is lost
        elif item.concept == "BOTH" and said == "every one" and ahead == "OF" and _concept(items, place + 2) in ("DET", "IT") and _concept(items, place + 3) == "TABS":
            done[place] = replace(item, concept="ALL", value=None)  # "bent every one of the tabs"
        elif item.concept == "QUESTION" and said == "is the" and "MISSING" in [_concept(items, place - k) for k in (1, 2, 3, 4, 5)]:
            done[place] = replace(item, concept="BE", value=None)  # "the only thing missing on elbow 23 is the vanes"
        elif item.concept == "UNDONE" and ((ahead == "NUM" and items[place + 1].value.value == 1 and _concept(items, place + 2) == "UP") or ahead == "UP") and _concept(items, place + (3 if ahead == "NUM" else 2)) == "ON":
            done[place] = replace(item, concept="FILLER", value=None)  # "they pulled that one up on the schedule"
        elif item.concept == "SIDE" and said == "left" and _concept(items, place - 1) in ("STAPLES", "TAPE", "CLOSURE", "MARK181") and ahead in ("STOP", "COMMA", ""):
            done[place] = replace(item, concept="FILLER", value=None)  # "I only had the quarter inch staples left"
        elif item.concept == "NOT" and said == "not" and ahead == "NUM" and _concept(items, place + 2) in ("COMMA", "STOP", "AND", "") and any(_concept(items, place - k) in _COUNTED and _concept(items, place - k - 1) == "NUM" for k in (1, 2, 3)):
            done[place] = replace(item, concept="FILLER")  # "it's two vanes not three"
            done[place + 1] = replace(items[place + 1], concept="COUNT", value=None)
        elif item.concept == "DIRTY" and _concept(items, place - 1) == "BE" and text[items[place - 1].start : items[place - 1].end].lower().endswith("was") and _wiped_before(items, place, text):
            done[place] = replace(item, concept="FILLER")  # "wiped it down first, it was dusty"
        elif item.concept == "SIDE_WORD" and ahead in ("MOVE_IN", "MOVE_OUT") and _concept(items, place - 1) == "NUM" and items[place - 1].value.value == 4:
            done[place - 1] = replace(items[place - 1], concept="FILLER", value=None)
            done[place] = replace(item, start=items[place - 1].start, concept="SIDE", value=("left", "right", "top", "bottom"))  # "all four sides come in two"
        elif item.concept == "TIGHT" and _concept(items, place - 1) in ("BOTH", "ALL") and "TABS" in (near := [_concept(items, place - k) for k in (2, 3, 4, 5, 6)]) and "JOINT" not in near:
            done[place] = replace(item, concept="FILLER", value=None)  # "tabs are bent, all of them tight": the tabs, no joint
        elif item.concept == "RUBBED" and said == "rubbing" and ahead == "COMMA" and _concept(items, place - 1) in ("DET", "OF"):
            done[place] = replace(item, concept="RUB", value=None)  # "and the rubbing, well, …": what he goes on to tell of
        elif item.concept == "UNDONE" and said == "sticking out" and ahead in ("INSIDE", "IN", "OUTSIDE", "THROUGH"):
            done[place] = replace(item, concept="WORD", value=None)  # "the staples are sticking out on the inside": which way they went
        elif item.concept == "WORD" and said == "open" and _concept(items, place - 1) == "BE" and (ahead in ("LEN", "FRAC") or ahead == "HEDGE" and _concept(items, place + 2) in ("LEN", "FRAC")):
            done[place] = replace(item, concept="PARTED", value=None)  # "the joint between 7 and 8 is open a quarter inch"
        elif item.concept == "OTHER" and said in ("she's", "she’s") and (ahead in ("DET", "SIZE", "NUM", "LEN", "DEG", "TIGHT", "VANES", "IN_PLACE", "UP", "FILLER", "ON_BENCH", "HAVE", "NOT", "NO") or ahead.startswith("K_")):
            done[place] = replace(item, concept="BE")  # "she's a plain straight"
        elif item.concept == "OTHER" and said == "she" and ahead in _OF_A_THING:
            done[place] = replace(item, concept="IT")  # "she weighs sixty pounds": the piece
        elif item.concept == "OFFSETS" and said.endswith(" de") and ahead == "NUM" and _concept(items, place + 2) == "BY":
            done[place] = replace(item, concept="K_OFFSET", value="offset")  # "la siete es un offset de doce por diez"
        elif item.concept == "PANEL" and ahead in ("MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN") and (side := table_of("small.panel_sides").get(said)) is not None:
            done[place] = replace(item, concept="SIDE", value=(side,))
        elif item.concept == "K_STRAIGHT" and said in ("recta", "recto") and _concept(done, place - 2 if _concept(done, place - 1) == "BE" else place - 1) == "SIDE" and ahead in ("COMMA", "STOP", "", "AND", "BUT", "BE", "STAPLED", "TAPED"):
            done[place] = replace(item, concept="LEVEL", value=None)  # "la izquierda recta"
        elif item.concept == "SIDE" and said in ("derecha", "derecho") and _concept(done, place - 1) == "SIDE" and done[place - 1].value == ("right",) and ahead in ("COMMA", "STOP", "", "AND"):
            done[place] = replace(item, concept="LEVEL", value=None)  # "la derecha derecha"
        elif item.concept == "PENDING" and said == "pendiente" and _a_slope(items, place + 2 if ahead == "COMMA" else place + 1):
            done[place] = replace(item, concept="SLOPE")  # "pendiente tres en doce"
        elif item.concept == "REPAIRED" and (said in ("parche", "remiendo", "parchado") or said in ("reparación", "reparacion") and any(one.concept == "REPAIRED" or one.concept == "DAMAGE" and any(near.concept.startswith("K_") for near in items[place + 1 : place + 4]) for one in items[place + 1 :])) and _concept(done, place - 1) in ("", "STOP", "DET") and ahead == "ON" and (place < 2 or _concept(done, place - 2) in ("", "STOP")):
            done[place] = replace(item, concept="K_REPAIR", value="repair")  # "Parche en el dieciocho: …"
        elif item.concept == "CUT_LENGTH" and said == "le corté" and ahead == "DET" and text[items[place + 2].start : items[place + 2].end].lower() in words_of("small.bits") if place + 2 < len(items) else False:
            done[place] = replace(item, concept="WORD", value=None)  # "le corté el pedazo": cut out, not to length
        elif item.concept == "SAYS" and said == "marca" and (ahead == "MARKED" or ahead == "NUM" and _concept(done, place - 1) in ("COMMA", "STOP", "")) and _concept(done, place - 1) != "DRAWING":
            done[place] = replace(item, concept="NUMBER")  # "…, marca E dos"
        elif item.concept == "COUNTED" and said == "caja" and _a_box(done, items, place):
            done[place] = replace(item, concept="K_PLENUM", value="plenum")
        elif item.concept == "K_TEE" and said == "te" and not _a_tee(done, items, place, text):
            done[place] = replace(item, concept="WORD", value=None)  # "luego te digo": the pronoun
        elif item.concept == "LETTER" and said in SIDE_LETTERS and ahead in ("IN", "OUT", "MOVE_IN", "MOVE_OUT") and _concept(items, place + 2) in ("NUM", "LEN"):
            done[place] = replace(item, concept="SIDE", value=(SIDE_LETTERS[said],))  # "L in 4 back 24"
        elif item.concept == "LETTER" and said == "n" and ahead in _ACTS and _concept(items, place - 1) not in ("NUMBER", "RUN", "FITTING"):
            done[place] = replace(item, concept="AND", value=None)  # "stapled n taped"
        elif item.concept == "COMMA" and said in ("-", "–", "->") and text[item.start - 1 : item.start] == text[item.end : item.end + 1] == " " and _concept(items, place - 2) == _concept(items, place + 2) == "BY":
            done[place] = replace(item, concept="TO", value=None)  # "14x10 - 10x10"
        elif item.concept == "EVERY" and said == "c/" and ahead not in ("NUM", "LEN", "FRAC"):
            done[place] = replace(item, concept="WITH", value=None)  # "c/tape"
        elif item.concept == "BY" and said == "por" and (ahead in _TO_DO or ahead == "WORD" and _concept(done, place - 1) == "BE" and _INFINITIVE.fullmatch(text[items[place + 1].start : items[place + 1].end].lower())):
            done[place] = replace(item, concept="PENDING")  # "está por encintar"
        elif item.concept == "DRAWING" and said == "plano" and text[max(0, item.start - 3) : item.start].lower() not in ("el ", "un ") and {_concept(items, place - 1), past_article} & {"SIDE"}:
            done[place] = replace(item, concept="LEVEL")  # "abajo plano"
        elif item.concept == "LEVEL" and said in ("straight on", "recto en", "recta en") and ahead in ("RUN", "WORD", "ANOTHER"):
            done[place] = replace(item, concept="K_STRAIGHT", value="straight")
        elif item.concept in ("PARTLY", "FRAC") and ahead in _TO_DO:
            done[place] = replace(item, concept="PENDING")  # "a medio encintar"
        elif collar and item.concept == "FLAP" and said.split()[-1] in _OF_METAL:
            done[place] = replace(item, concept="TABS")  # the tabs of a collar, not a flap of the facing
        elif item.concept == "K_END_CAP" and said == "tapa" and ahead in ("MOVE_DOWN", "MOVE_UP") and _concept(items, place + 2) in ("NUM", "LEN", "FRAC"):
            done[place] = replace(item, concept="SIDE", value=("top",))  # "la tapa baja tres"
        elif item.concept == "NUM" and _concept(done, place - 1) == "OF" and _concept(done, place - 2) in ("TAPE", "MARK181") and 2 <= item.value.value <= 4 and ahead in ("COMMA", "STOP", "AND", "") and any(one.concept == "SHIFT" for one in items[:6]):
            done[place] = replace(item, concept="LEN")  # "hoy con board de pulgada, cinta de tres"
        elif said == "cuarto" and _concept(done, place - 1) == "OF" and _concept(done, place - 2) in ("STAPLES", "LEG"):
            done[place] = replace(item, concept="FRAC", value=Measure("FRAC", Fraction(1, 4), None, 0, False, Fraction(1, 4)))  # "grapas de cuarto"
        elif item.concept == "WORD" and said in _SHIFTED and any(one.concept == "K_OFFSET" for one in items[:place]):
            done[place] = replace(item, concept="OFFSETS", value=None)  # "offset tres, corrido de seis en treinta y seis"
        elif item.concept == "PLACE_NOUN" and said in _TOP_AND_BOTTOM and ahead in ("MOVE_DOWN", "MOVE_UP", "LEVEL", "FLAT") and (ahead in ("LEVEL", "FLAT") or _concept(items, place + 2) in ("NUM", "LEN", "FRAC")):
            done[place] = replace(item, concept="SIDE", value=(_TOP_AND_BOTTOM[said],))  # "techo baja cuatro en dieciséis"
        elif item.concept == "MOVE_OUT" and said.split()[-1] in ("abre", "abrió", "abrio") and ahead in ("LEN", "FRAC") and items[place + 1].value.value <= 2 and "JOINT" in {_concept(done, place - k) for k in (1, 2, 3)}:
            done[place] = replace(item, concept="GAP", value=None)  # "la junta de arriba se abre tres dieciseisavos"
        elif item.concept == "DET" and said == "una" and _concept(done, place - 1) == "OF" and _concept(done, place - 2) == "BOARD" and ahead in ("COMMA", "STOP", "AND", ""):
            done[place] = replace(item, concept="LEN", value=Measure("LEN", Fraction(1), "in", 0, False, Fraction(1)))  # "tablero de una"
        elif item.concept == "WORD" and said == "pulgada" and _concept(done, place - 1) == "OF" and _concept(done, place - 2) in ("BOARD", "WASHERS", "MARK181", "TAPE"):
            done[place] = replace(item, concept="LEN", value=Measure("LEN", Fraction(1), "in", 0, False, Fraction(1)))  # "board de pulgada"
        elif item.concept == "HAVE" and said.split()[-1] in ("metí", "meti", "metimos") and ahead in ("NUM", "LEN", "FRAC"):
            done[place] = replace(item, concept="MOVE_IN")
        elif item.concept == "SIDE" and said in ("derecho", "recto", "derecha") and place and done[place - 1].concept == "SIDE" and done[place - 1].value in (("top",), ("bottom",), ("left",)):
            done[place] = replace(item, concept="LEVEL", value=None)  # "abajo derecho"
        elif item.concept == "SLOPE" and ahead in _TO_DO:
            done[place] = replace(item, concept="PENDING")
        elif item.concept in ("K_STRAIGHT", "BRANCH_WORD") and said in ("tramo", "ramal", "el ramal") and ahead in ("NUM", "MARKED") and _is_a_run(done, place):
            done[place] = replace(item, concept="RUN", value=None)
        elif item.concept == "ON" and said == "al" and ahead == "NUM" and _concept(done, place - 1) == "NUM" and {_concept(done, place - 2), _concept(done, place - 3)} & {"FROM", "OF"}:
            done[place] = replace(item, concept="THRU")  # "del cuatro al seis"
        elif item.concept == "SIDE" and said in ("derecho", "derecha") and ahead == "NUM" and _concept(items, place + 2) != "BY" and (place == 0 or _concept(done, place - 1) in ("STOP", "FITTING")):
            done[place] = replace(item, concept="K_STRAIGHT", value="straight")  # "derecho ocho, doce por diez"
        elif item.concept == "NUM" and said == "one" and _concept(items, place - 1) == "THROAT" and _concept(items, place - 2) == "DET":
            done[place] = replace(item, concept="WORD", value="one")  # "used a radius one": an elbow
        elif item.concept == "DAMAGE" and said.split()[-1] in words_of("small.holes") and (end := _where_it_does_not_meet(items, place, text)):
            done[place] = replace(item, concept="GAP", value=None)
            done[place + 1 : end] = [one if one.concept in ("JOINT", "SIDE") else replace(one, concept="FILLER") for one in items[place + 1 : end]]
        elif item.concept == "UP" and said == "up" and (ahead == "AND" and _concept(items, place + 2) == "TIED" or ahead in ("STOP", "") and _concept(items, place - 1) == "STOP" and place > 3):
            done[place] = replace(item, concept="HUNG", value=None)  # "up and tied into twenty-six", "Taped, rubbed. Up."
        elif item.concept == "HUNG" and said.startswith(("instal", "mont")) and past_article in ("VANES", "TIE_RODS", "SCREWS", "TABS", "ACCESSORY", "K_HANGER"):
            done[place] = replace(item, concept="FILLER")  # "ya le instalé las aletas"
        elif item.concept == "SIDE" and said == "arriba" and ahead == "AND" and _concept(items, place + 2) == "TIED":
            done[place] = replace(item, concept="HUNG", value=None)
        elif item.concept in ("HUNG", "WIPED", "PREHEATED", "REPAIRED", "DAMAGE") and _of_another_thing(items, place, text):
            done[place] = replace(item, concept="WORD", value=None)  # "colgué la chamarra", "se golpeó la cabeza"
        elif item.concept in ("K_ELBOW", "K_COLLAR") and _of_the_body(items, place, text):
            done[place] = replace(item, concept="WORD", value=None)  # "me duele el codo", "mi bota"
        elif item.concept == "MOVE_OUT" and said in ("salió", "salio") and past_article == "SCRIM":
            done[place] = replace(item, concept="SHOWS")
        elif item.concept == "IF" and said == "si" and _is_yes(done, items, place):
            done[place] = replace(item, concept="FILLER")  # "recto 9 si lo encinte": yes, without its accent
        elif item.concept == "NEGATIVE" and said in _MINUS and (past_article in _LEFT_OUT or ((past_article == "NUM" or _concept(items, place + 2) in ("", "COMMA", "STOP", "TABS") and ahead == "DET") and _concept(done, place - 1) in _COUNTED_OFF)):
            done[place] = replace(item, concept="EXCEPT")
        elif item.concept in ("STAPLED", "TAPED", "RUBBED", "WIPED") and (said in words_of("small.ought_to") or said.startswith(_SOMEDAY)) and _wished(items, place, text):
            lacks = re.search(r"falta que (?:lo |la |le |se )?(?:lo |la )?$", text[max(0, item.start - 22) : item.start].lower()) is not None
            to_do = {"STAPLED": "STAPLE", "TAPED": "TAPE_IT", "RUBBED": "RUB", "WIPED": "WIPE"}[item.concept]
            done[place] = replace(item, concept=to_do if lacks else "WORD", value=None)  # "que lo encinte Juan"
    return tuple(done)


def _so_far(items, at: int) -> bool:
    """Whether a measure stands behind the side that follows: "the left side, six in thirty-six"."""
    while _concept(items, at) in ("DET", "FILLER", "ON", "SIDE", "SIDE_WORD", "COMMA"):
        at += 1
    return _concept(items, at) in ("NUM", "LEN", "FRAC") and _concept(items, at + 1) in ("IN", "OVER")


def _a_slope(items, at: int) -> bool:
    return _concept(items, at) == "RATIO" or _concept(items, at) == "NUM" and _concept(items, at + 1) in ("ON", "TO", "BY", "IN") and _concept(items, at + 2) == "NUM" and items[at].value.value < items[at + 2].value.value


def _a_box(done, items, place: int) -> bool:
    """ "Caja 8, 20x20", "la caja once de veinte por catorce": a plenum by its number, where "dos cajas", "caja de grapas" are none."""
    numbered = place + 2 if _concept(items, place + 1) in ("NUMBER", "COMMA") else place + 1
    if _concept(items, numbered) not in ("NUM", "MARKED") or _concept(done, place - 1) in ("NUM", "LEN", "COUNT"):
        return False
    behind = [_concept(items, numbered + k) for k in (1, 2)]
    if _concept(items, place + 1) == "COMMA":
        return _concept(items, numbered) == "MARKED"
    return behind[0] in ("", "COMMA", "STOP", "SIZE", "BE", "ON", "RUN", "NOT", "NO", "HAVE", "STAPLED", "TAPED", "HUNG", "GAP", "PENDING", "NOT_DONE") or behind[0] == "OF" and behind[1] in ("SIZE", "NUM") or behind[1:] == ["BY"]


def _a_tee(done, items, place: int, text: str) -> bool:
    """Whether "te" is the fitting: behind an article or a count, or named by its number or its size."""
    if text[items[place].start : items[place].end] == "TE" or _concept(items, place + 1) in ("NUM", "MARKED", "NUMBER", "SIZE", "DASH", "LETTER"):
        return True
    before = text[max(0, items[place].start - 8) : items[place].start].lower().split()
    if before[-1:] and before[-1] in ("la", "una", "el", "un", "otra", "esta", "esa", "misma", "de", "es", "son"):
        return True
    return _concept(items, place + 1) in ("COMMA", "STOP", "", "OF", "ON", "RUN", "WITH") and _concept(done, place - 1) in ("", "STOP", "COMMA", "AND", "NUM", "MARKED")


def _moves_before(items, place: int) -> bool:
    """Whether another side of the same piece moves shortly before."""
    near = [_concept(items, k) for k in range(max(0, place - 14), place - 1)]
    return "SIDE" in near and bool({"IN", "OUT", "BACK", "DOWN", "UP", "MOVE_IN", "MOVE_OUT", "MOVE_DOWN", "MOVE_UP"} & set(near))


def _is_a_run(items, place: int) -> bool:
    """ "Codo cuatro, tramo dos", "en el tramo dos", "tramo dos, codo cuatro": a stretch of the run; alone it is a piece."""
    if _concept(items, place + 2) == "BY":
        return False
    before = [_concept(items, place - k) for k in (1, 2, 3, 4)]
    others = (k for k, item in enumerate(items) if k != place and (item.concept.startswith("K_") or item.concept in ("FITTING", "MARKED", "NUMBER") or item.concept == "NUM" and k > 0 and k != place + 1 and items[k - 1].concept == "DET"))
    if before[0] in ("DET", "ON", "FROM") and items[place].concept == "K_STRAIGHT" and next(others, None) is None and any(item.concept in (*_ACTS, "SIZE", "AIR", "FLAP", "DAMAGE", "GAP") for item in items):
        return False  # "en el tramo siete de diez por ocho": no other piece is named
    led = before[0] in ("ON", "FROM", "OF") and _concept(items, place + 2) not in ("PENDING", "HAVE", "MISSING") or (before[0] == "DET" and before[1] in ("ON", "OF"))
    near = before[1:3] if before[0] in ("COMMA", "DET", "FROM") else before[:2]
    named = near[:1] in (["NUM"], ["MARKED"]) and (near[1].startswith("K_") or near[1] in ("FITTING", "NUMBER")) and near[1] not in ("K_TEE", "K_BRANCH", "K_WYE")
    if items[place].concept == "BRANCH_WORD":
        return named
    ahead = [_concept(items, place + k) for k in (2, 3, 4)]
    ahead = ahead[1:] if ahead[0] == "COMMA" else ahead
    ahead = ahead[1:] if ahead[0] in ("DET", "NUMBER") else ahead
    opens = before[0] in ("", "STOP", "FILLER") and (ahead[0].startswith("K_") or ahead[0] == "FITTING")
    return led or named or opens


def _names_only(items, at: int) -> bool:
    """Whether a piece is named here, and nothing behind it in its clause."""
    end = at
    while _concept(items, end) in ("DET", "FITTING", "NUMBER") or _concept(items, end).startswith("K_"):
        end += 1
    return _concept(items, end) in ("NUM", "MARKED") and _concept(items, end + 1) in ("COMMA", "STOP")


def _points(items, place: int) -> bool:
    """Whether the words up to a question's sign are a thing and who did what with it: "the one I cut short"."""
    first = place
    while first > 0 and items[first - 1].concept not in ("STOP", "QUERY"):
        first -= 1
    ahead = [_concept(items, first + k) for k in (0, 1, 2)]
    return ahead[0] == "DET" and (ahead[1] in ("NUM", "GENERIC", "FITTING") or ahead[1].startswith("K_")) and ahead[2] in ("I", "THIS", "WITH", "FROM")


def _of_the_parts(items, place: int) -> bool:
    """Whether "they" are the staples, tabs or vanes named right before: they go some way, or they are somehow."""
    near = [_concept(items, k) for k in range(max(0, place - 10), place)]
    near = near[max((k for k, concept in enumerate(near) if concept in ("STOP", "QUERY")), default=-1) + 1 :]
    goes = {_concept(items, place + 1), _concept(items, place + 2)} & {"OUT", "OUTSIDE", "INSIDE", "CLINCHED", "MOVE_OUT", "OFFSETS"}
    return bool(goes) and bool({"STAPLES", "LEG", "TABS"} & set(near)) and "I" not in near


_ENDS_IN_TO = {"stapled to": "STAPLED", "taped to": "TAPED", "stapled up to": "STAPLED", "taped up to": "TAPED", "is taped to": "TAPED", "is stapled to": "STAPLED"}
_OF_A_THING = ("WEIGHS", "MOVE", "MOVE_IN", "MOVE_UP", "MOVE_DOWN", "MOVE_OUT", "TAKES", "SEATED", "BE", "LEAVES", "END")
_OTHER_THINGS = ("WORD", "BUILDING", "TRADE_NOISE", "ROOM", "COUNTED")


def _of_another_thing(items, place: int, text: str) -> bool:
    """A verb of ours with another thing behind it: "instalé la lámpara", "calenté el lonche"."""
    said = text[items[place].start : items[place].end].lower().split()
    verb = said[-1].endswith(("é", "ó", "amos", "aron", "ue", "ie", "le", "te")) or said[0] == "se"
    if not verb or len(said) > (2 if said[0] == "se" else 1) or place + 2 >= len(items) or items[place + 1].concept not in ("DET", "ON"):
        return False
    if text[items[place + 1].start : items[place + 1].end].lower() not in ("el", "la", "los", "las", "un", "una", "mi", "mis", "su", "al", "unos", "unas"):
        return False
    noun = items[place + 2]
    return noun.concept in _OTHER_THINGS and text[noun.start : noun.end].lower() not in words_of("small.of_ours")


def _of_the_body(items, place: int, text: str) -> bool:
    if _concept(items, place + 1) in ("NUM", "NUMBER", "MARKED", "LETTER"):
        return False
    before = text[max(0, items[place].start - 30) : items[place].start].lower()
    return re.search(r"(?:\bm(?:e|i) (?:\w+ (?:en |con )?(?:el |la |mi )?)?|\bsuela de (?:mi |la )|\btu |\bmis )$", before) is not None and re.search(r"\bme (?:falta|quedó|faltan|toca|salió)\b", before) is None


def _is_yes(done, items, place: int) -> bool:
    """ "Sí" without its accent: right behind the piece or "creo que", with an act behind it that ends the sentence."""
    before = [_concept(done, place - k) for k in (1, 2)]
    if not (before[0] == "THINK" or (before[0] in ("NUM", "MARKED") and (before[1].startswith("K_") or before[1] in ("FITTING", "NUMBER")))):
        return False
    ahead = [_concept(items, place + k) for k in range(1, 6)]
    ends = next((k for k, concept in enumerate(ahead) if concept in ("", "STOP")), None)
    return ends is not None and any(concept in ("STAPLED", "TAPED", "RUBBED", "TAPE", "STAPLES", "SCRIM", "VANES") for concept in ahead[:ends])


def _wished(items, place: int, text: str) -> bool:
    behind = " ".join(text[item.start : item.end].lower() for item in items[max(0, place - 4) : place])
    sure = re.search(r"\b(?:claro|creo|seguro|digo|dije|juro|parece|pienso|sé|se|es)(?: de)? que\b", behind)
    return sure is None and re.search(r"\b(?:que|cuando|hasta|antes|cuanto|quien)\b", behind) is not None


_COUNTED = ("VANES", "TABS", "STAPLES", "SCREWS")


def _wiped_before(items, at: int, text: str) -> bool:
    """Whether it was wiped, in this very sentence, with no "but" between."""
    for item in reversed(items[:at]):
        if item.concept in ("STOP", "QUERY", "NOT", "NOT_DONE") or item.concept == "BUT" and text[item.start : item.end].lower() != "though":
            return False
        if item.concept == "WIPED":
            return True
    return False


def _sized_before(items, at: int) -> bool:
    """An offset, marked and sized in this very sentence: "offset six" behind it is how far it goes."""
    sentence: list[str] = []
    for item in reversed(items[:at]):
        if item.concept in ("STOP", "QUERY", "ANOTHER"):
            break
        sentence.append(item.concept)
    sized = "BY" in sentence and sentence.count("K_OFFSET") == 1 and not any(concept in sentence for concept in ("STAPLED", "TAPED", "RUBBED"))
    return sized and _concept(items, at + 1) in ("NUM", "LEN") and _concept(items, at + 2) in ("COMMA", "STOP", "") and _concept(items, at + 4) != "BY"


def _by_and_over(items, at: int) -> bool:
    """How far it goes over and in what length: "six in twenty-four"; a mark has no second number behind it."""
    return _concept(items, at) in ("NUM", "LEN") and _concept(items, at + 1) in ("IN", "OVER") and _concept(items, at + 2) in ("NUM", "LEN")


def _concept(items, at: int) -> str:
    return items[at].concept if 0 <= at < len(items) else ""


def _where_it_does_not_meet(items, place: int, text: str) -> int:
    """ "a quarter inch hole at the corner where it don't meet": what is open there is the joint; the place behind those words, or none."""
    where = next((k for k in range(place + 1, min(place + 6, len(items))) if text[items[k].start : items[k].end].lower().split()[0] in words_of("small.where")), None)
    for at in range(where or len(items), min((where or 0) + 7, len(items))):
        if items[at].concept in ("COMMA", "STOP"):
            break
        if words_of("small.meets").intersection(text[items[at].start : items[at].end].lower().split()):
            return at + 1 if any(re.search(r"n.?t$|^not?$", text[one.start : one.end].lower()) or one.concept in ("NOT", "PARTED") for one in items[where:at + 1]) else 0
    return 0
