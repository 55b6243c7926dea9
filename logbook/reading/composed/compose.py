"""The order in which items are put together, and numbers in words that only their neighbours explain ("every for")."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from types import MappingProxyType

from logbook import measure
from logbook.languages.language import Forms
from logbook.reading.composed.act_lists import act_lists
from logbook.reading.composed.calqued import calqued
from logbook.reading.composed.corrections import MOVED, corrected
from logbook.reading.composed.in_pairs import digit_by_digit, in_a_pair, in_hundreds
from logbook.reading.composed.in_the_present import done_in_the_present, learned_late
from logbook.reading.words.items import Item, concept_at
from logbook.reading.composed.harms_meant import harms_meant
from logbook.reading.composed.labels import labelled
from logbook.reading.composed.mark_shapes import marked
from logbook.reading.words.measures import Measure
from logbook.reading.words.phrasing import in_any, table_of, words_of
from logbook.reading.composed.put_right import put_right
from logbook.reading.composed.at_most import at_most
from logbook.reading.composed.ranges import one_of_a_range
from logbook.reading.composed.said_short import said_short
from logbook.reading.composed.size_pairs import LENGTHS, of_the_building, one_unit, sized
from logbook.reading.composed.small_words import meant_by_neighbours
from logbook.reading.composed.tape_or_mastic import told_apart


def compose(items: tuple[Item, ...], text: str, letters=MappingProxyType({}), forms: Forms = Forms()) -> tuple[Item, ...]:
    """Sizes first, then the corrections between two measures of one sort."""
    items = labelled(marked(harms_meant(items, text), text, letters), text, forms)
    items = done_in_the_present(learned_late(calqued(meant_by_neighbours(items, text), text, forms.calques), text, forms), text, forms)
    items = said_short(act_lists(told_apart(items, text, forms.instead)), text)
    items = _counted(at_most(_beyond(_named_kinds(_small_words(_split_decimals(items, text), text), text), text), text))
    items = _of_another_size(of_the_building(one_unit(sized(items, text)), text), text)
    return corrected(put_right(items, text, forms), text, forms)


def _of_another_size(items, text: str):
    """ "no era de doce por diez, es de doce por catorce": what it is not is no size of it."""
    done = list(items)
    for place, item in enumerate(items):
        if item.concept != "SIZE":
            continue
        if min(item.value.pair) < _LEAST_SIDE and _of_damage(items, place):  # "a tear, five eighths wide by four long"
            narrow = min(item.value.pair)
            done[place] = replace(item, concept="LEN", value=Measure("LEN", narrow, "in", 0, False, narrow))
            if concept_at(items, place + 1) in ("LONG", "WIDE"):
                done[place + 1] = replace(items[place + 1], concept="FILLER")
            continue
        ahead = [concept_at(items, place + k) for k in (1, 2, 3, 4)]
        if ahead[0] == "COMMA" and "SIZE" in ahead and set(ahead[1 : ahead.index("SIZE")]) <= {"BE", "OF", "FILLER", "BUT"} and _NOT_OF.search(text[max(0, item.start - 16) : item.start].lower()):
            done[place] = replace(item, concept="COUNT")
    return tuple(done)


_LEAST_SIDE = 4  # inches; common practice, no published source: no duct is narrower


def _of_damage(items, place: int) -> bool:
    """Whether the size is of damage that its sentence names right before or behind it."""
    if concept_at(items, place + 1) == "DAMAGE":
        return True
    for back in range(place - 1, max(-1, place - 10), -1):
        concept = items[back].concept
        if concept == "DAMAGE":
            return True
        if concept in ("STOP", "QUERY", "SIZE", "TAPED", "STAPLED") or concept.startswith("K_"):
            return False
    return False


_NOT_OF = re.compile(r"\bno (?:es|era|son|eran|mide|medía|va)(?: de)? $")


def _split_decimals(items, text: str):
    """ "20 x 14.16 x 14" is what ears write for "20 x 14, 16 x 14": two sizes, no decimal."""
    done: list[Item] = []
    for place, item in enumerate(items):
        if item.concept != "NUM":
            if item.concept == "WORD" and len(done) > 1 and done[-1].concept == done[-2].concept == "NUM" and text[done[-1].start : item.end].lower() in _PARTS_OF_AN_INCH:
                part = Fraction(done[-2].value.value, _PARTS_OF_AN_INCH[text[done.pop().start : item.end].lower()])
                item = replace(done.pop(), concept="FRAC", value=Measure("FRAC", part, "in", 0, False, part), end=item.end, last=item.last)
            done.append(item)
            continue
        whole, dot, part = text[item.start : item.end].partition(".")
        between = 0 < place < len(items) - 1 and items[place - 1].concept == items[place + 1].concept == "BY"
        if dot and between and part.isdigit() and len(part) == 2 and int(part) >= 4 and int(whole or 0) >= 4:
            middle = item.start + len(whole)
            done.append(replace(item, end=middle, value=_plain(int(whole)), read_as=f"{whole}, {part}"))
            done.append(Item("COMMA", ".", middle, middle + 1, item.first, item.last))
            done.append(replace(item, start=middle + 1, value=_plain(int(part))))
        else:
            done.append(item)
    return tuple(done)


_PARTS_OF_AN_INCH = MappingProxyType({"8ths": 8, "8th": 8, "16ths": 16, "16th": 16, "32nds": 32, "4ths": 4})  # "3 8ths" is what ears write for three eighths
_ENDS_A_RANGE = (*LENGTHS, "DEG")
_LEFT_AS_THEY_ARE = ("COMMA", "STOP", "DET", "AND", "BY", "BE", "OF", "IN", "ON", "EVERY", "SIDE", "STAPLED", "TAPED", "RUBBED", "RUN")  # the commonest, so that they cost nothing
_ENDS_A_MOVE = ("COMMA", "STOP", "BACK", "AND", "OVER", "IN", "")
def _spaces(items, place: int) -> bool:
    """Whether a bare number behind "stapled" is how far apart: small, and the piece was named before; no number of sides."""
    near = [concept_at(items, k) for k in range(max(0, place - 9), place)]
    if "SIDES_ALL" in near or ("ALL", "NUM") in zip(near, near[1:]):
        return False
    return items[place].value.value <= 4 and any(one.concept.startswith("K_") or one.concept in ("SIZE", "SLOPE") for one in items[:place])


_WIDTHS = (2, 3, 4)  # inches, of tape


def _tells_on(items, place: int, text: str) -> bool:
    """Whether a sentence of its own begins there, and not the one thing that is left out."""
    first, second = concept_at(items, place), concept_at(items, place + 1)
    if first in ("FORGOT", "NOT_DONE", "NO", "PENDING"):
        return " " in text[items[place].start : items[place].end] and text[items[place].start : items[place].end].lower().split()[0] in words_of("small.tells_on")
    return first == "I" or first in ("IT", "OTHER", "THIS") and second in ("NOT", "NOT_DONE", "PENDING", "NEED", "BE", "HAVE")


def _listed_last(items, place: int) -> bool:
    """Whether the piece was named with its mark in this sentence, and behind the number stands its end or another act: no number of another piece."""
    ahead = [concept_at(items, place + k) for k in (1, 2, 3)]
    ends = ahead[0] in ("STOP", "") and items[place - 1].concept == "TAPE" or ahead[0] in ("COMMA", "AND") and (ahead[1] in _LISTED or ahead[1] == "AND" and ahead[2] in _LISTED)
    named = False
    for item, after in zip(items[:place], items[1:]):
        named = item.concept not in ("STOP", "QUERY") and (named or item.concept.startswith("K_") and after.concept in ("NUM", "MARKED"))
    return named and ends


def _a_sentence(items, place: int) -> bool:
    """Whether "tape three" is a whole sentence, and a piece was named before it."""
    alone = concept_at(items, place - 2) in ("STOP", "COMMA") and concept_at(items, place + 1) in ("STOP", "")
    return alone and any(one.concept.startswith("K_") or one.concept in ("FITTING", "NUMBER") for one in items[:place])


_LISTED = ("RUBBED", "RUB", "STAPLED", "STAPLES", "TRIMMED", "WIPED", "VANES", "TABS", "HUNG", "MARK181")


def _small_words(items, text: str):
    """Numbers that stand in small words: "every for", "drops for, back 18", "comes into", "every foot", "ninety three piece", "one nineteen"."""
    done: list[Item] = []
    for place, item in enumerate(items):
        said = text[item.start : item.end].lower()
        before = concept_at(items, place - 1)
        if item.concept in _LEFT_AS_THEY_ARE and before != "EVERY" and said not in table_of("small.sounds") and said not in words_of("small.parted"):
            if said != ":" or before != "EXCEPT":  # "with one exception: the back"
                done.append(item)
            continue
        ahead = concept_at(items, place + 1)
        ends = said in table_of("small.sounds") and ahead in ("COMMA", "STOP", "AND", "BACK", "TAPED", "APART", "", "BOTH") or (said in table_of("small.sounds") and ahead == "WORD" and text[items[place + 1].start : items[place + 1].end].lower() in ("inches", "inch", "pulgadas"))
        if ends and (before == "EVERY" or (before in MOVED and _moves_a_side(items, place))):
            value, meant = table_of("small.sounds")[said]
            item = replace(item, concept="NUM", value=_plain(value), read_as=meant)
        elif item.concept == "NUM" and before == "STAPLES" and item.value.value <= 4 and (_listed_last(items, place) or _a_sentence(items, place)):
            done += [replace(done[-1], concept="EVERY", value=None)]
            done[-2] = replace(done[-2], concept="STAPLED", value=None)  # "Staples two. Tape three. Rubbed."
        elif item.concept == "NUM" and (before in ("TAPE", "TAPED") and item.value.value in _WIDTHS and _listed_last(items, place) or before == "TAPE" and item.value.value in _WIDTHS and _a_sentence(items, place)):
            item = replace(item, concept="LEN", value=Measure("LEN", item.value.value, "in", 0, False, item.value.value))  # "elbow 8, staples 2, tape 3, rubbed"
        elif item.concept == "LEN" and before == "EVERY" and said.rstrip(".") == "one in":  # "got every one in": each of them, and no inch
            done += [replace(item, concept="NUM", value=replace(_plain(1), digits=False), end=item.start + 3), replace(item, concept="IN", value=None, start=item.start + 4, end=item.start + 6)]
            if not said.endswith("."):
                continue
            item = replace(item, concept="STOP", value=None, start=item.end - 1)
        elif said == "into" and ahead in ("COMMA", "STOP", "BACK", "") and before in ("MOVE", "MOVE_IN") and _moves_a_side(items, place):
            done.append(replace(item, concept="IN", end=item.start + 2))
            item = replace(item, concept="NUM", value=_plain(2), start=item.start + 2, read_as="two")
        elif item.concept in ("WORD", "ROUND") and said in table_of("small.one_unit") and (before == "EVERY" or ahead in ("STATIC", "DAMAGE") or ahead == "WIDE" and concept_at(items, place + 2) == "DAMAGE") and before not in ("NUM", "FRAC"):
            unit = table_of("small.one_unit")[said]
            item = replace(item, concept="LEN", value=Measure("LEN", measure.UNITS[unit], unit, 0, False, Fraction(1)))
        elif item.concept == "TRADE_NOISE" and said == "tape measures" and ahead in LENGTHS and concept_at(items, place + 2) in ("WIDE", "OVER"):
            done.append(replace(item, concept="TAPE", end=item.start + 4))  # "the tape measures two and a quarter across"
            item = replace(item, concept="WORD", start=item.start + 5)
        elif item.concept == "WORD" and before == "DET" and ahead in LENGTHS and said in words_of("small.all_of_it") and concept_at(items, place - 2) in MOVED:
            item = replace(item, concept="FILLER")  # "comes in the whole eight"
        elif item.concept == "AROUND" and said == "around" and ahead in ("LEN", "FRAC", "DEG", "TEMP_F"):
            item = replace(item, concept="HEDGE")  # "around forty inches long"
        elif item.concept == "NUM" and ahead in ("FITTING", "PIECE_COUNT") and item.value.value in (92, 93, 94, 95, 96, 97) and " " in said:
            first, _, last = said.rpartition(" ")
            done.append(replace(item, end=item.start + len(first), value=_plain(90)))
            item = replace(item, start=item.end - len(last), value=_plain(int(item.value.value) % 10))
        elif item.concept == "LETTER" and said == "s" and before == "NUM" and done and items[place - 1].end == item.start:
            continue  # "stapled on 3s"
        elif said == "left out" and ahead in LENGTHS and concept_at(items, place + 2) in (*_ENDS_A_MOVE, "SIDE") and any(one.concept == "SIDE" for one in items):
            done.append(replace(item, concept="SIDE", value=("left",), end=item.start + 4))  # "left out two, right out two"
            item = replace(item, concept="OUT", value=None, start=item.end - 3)
        elif said == "left over" and before in ("OFF", "FROM", "ON", "DET") and ahead in LENGTHS:
            done.append(replace(item, concept="SIDE", value=("left",), end=item.start + 4))  # "six inches off the left over two feet"
            item = replace(item, concept="OVER", value=None, start=item.end - 4)
        elif said == "right by" and before == "DET" and ahead in LENGTHS:
            done.append(replace(item, concept="SIDE", value=("right",), end=item.start + 5))  # "flares on the right by two"
            item = replace(item, concept="BY", value=None, start=item.end - 2)
        elif item.concept in ("NO", "EXCEPT") and said == "minus" and ahead in ("NUM", "LEN", "FRAC", "INWG") and "STATIC" in {concept_at(items, place + k) for k in (-3, -2, -1, 2, 3, 4)}:
            item = replace(item, concept="NEGATIVE", value=None)
        elif item.concept == "WORD" and said in table_of("small.in_twos") and before == "ON":
            item = replace(item, concept="NUM", value=_plain(table_of("small.in_twos")[said]))
        elif item.concept == "WORD" and said in table_of("small.in_twos") and before == "STAPLED":
            item = replace(item, concept="LEN", value=_plain(table_of("small.in_twos")[said]))
        elif item.concept == "NUM" and ahead in ("COMMA", "STOP", "", "AND", "TAPED") and _spaces(items, place) and (before == "STAPLED" or before == "HEDGE" and concept_at(items, place - 2) == "STAPLED" or before == "STAPLES" and concept_at(items, place - 2) in ("COMMA", "STOP", "")):
            item = replace(item, concept="LEN")  # "stapled two, taped, rubbed", "Staples two."
        elif item.concept == "NUM" and before == "COMMA" and concept_at(items, place - 2) == "STAPLED" and ahead in ("COMMA", "STOP", "") and item.value.value.denominator != 1 and 1 < item.value.value <= 6:
            item = replace(item, concept="LEN")  # "stapled, two and a half, taped": no number of sides
        elif item.concept == "WORD" and said in ("st", "stp") and ahead in ("LEN", "EVERY") and before in ("COMMA", "STOP", "DASH", "WORD", "AND"):
            item = replace(item, concept="STAPLED", read_as="stapled")  # a thumb's word
        elif item.concept == "WORD" and (said == "lost" and ahead == "FLAP" or ahead in _THINGS and said in words_of("small.forgets")):  # "forgot vanes"
            item = replace(item, concept="NO", value=None)
        elif item.concept == "HUNG" and said.startswith("hanging") and any(concept_at(items, k) == "LATER" for k in range(place + 1, place + 4)):
            item = replace(item, concept="HANG")
        elif item.concept == "WORD" and said == "know" and ahead in ("VANES", "STAPLES", "TAPE", "TABS", "FLAP", "TIE_RODS") and before not in ("I", "NOT", "TO", "OTHER", "WILL", "QUESTION", "WORD"):
            item = replace(item, concept="NO", value=None, read_as="no")  # nothing else can stand there; what it denies stays in doubt
        elif item.concept == "BUTT" and said == "but" and any(concept_at(items, k) in ("ALL", "TAPED", "STAPLED", "RUBBED") for k in range(place - 4, place)):
            item = replace(item, concept="EXCEPT", read_as=None)  # "everything's taped but the bottom"
        elif item.concept == "BUT" and said == "but" and before == "FILLER" and done[-1].end - done[-1].start > 4 and text[done[-1].start : done[-1].end].lower().endswith(" all"):
            done[-1] = replace(done[-1], end=done[-1].end - 4)  # "it is all but taped"
            item = replace(item, concept="ALL_BUT", start=done[-1].end + 1)
        elif item.concept == "ALL_BUT" and said.endswith("sides but") and ahead in ("ONLY", "COUNT", "I", "STAPLED", "TAPED", "RUBBED"):
            done.append(replace(item, concept="SIDES_ALL", end=item.end - 4))  # "stapled all four sides but only three of them got tape"
            item = replace(item, concept="BUT", start=item.end - 3)
        elif item.concept == "ALL_BUT" and said in ("everything but", "all of it but") and _tells_on(items, place + 1, text):
            done.append(replace(item, concept="ALL", end=item.end - 4))  # "taped everything but I forgot to rub it"
            item = replace(item, concept="BUT", start=item.end - 3)
        elif item.concept == "FIX" and said == "not that" and ahead in ("IT", "THIS", "DET", "I") and concept_at(items, place + 2) in ("NOT", "NOT_DONE", "NO"):
            done.append(replace(item, concept="NOT", end=item.start + 3))  # "it's not that it isn't taped"
            item = replace(item, concept="THIS", start=item.end - 4)
        elif item.concept == "THIS" and before == "IF" and said == "that" and ahead in ("COMMA", "STOP", "") and done:
            item = replace(done.pop(), concept="HEDGE", end=item.end, last=item.last)
        elif item.concept == "CUT_LENGTH" and ahead in ("NUM", "MARKED") and said.split()[-1] in table_of("small.cut_nouns"):  # "corté la recta nueve a treinta": its number, no length
            noun = item.end - len(said.split()[-1])
            done.append(replace(item, end=noun - 1))
            kind = table_of("small.cut_nouns")[said.split()[-1]]
            item = replace(item, start=noun, concept="K_STRAIGHT" if kind else "FITTING", value=kind)
        elif item.concept == "OTHER" and said.replace("’", "'") == "she's" and ahead in ("STAPLED", "TAPED", "RUBBED", "HUNG", "TIGHT") and before in ("COMMA", "BUT", "AND", "STOP", "NUM", "MARKED", "SIZE"):
            item = replace(item, concept="BE")  # the piece: "straight nine, she's stapled"
        elif item.concept == "FILLER" and ahead == "NEED" and said.replace("’", "'").endswith("n't"):  # "so it doesn't need vanes"
            item = replace(item, concept="NOT")
        elif item.concept == "NUM" and item.value.value == 0 and ahead in ("VANES", "STAPLES", "TAPE", "TABS", "GAP", "DAMAGE", "FLAP"):
            item = replace(item, concept="NO", value=None)
        elif done and item.concept in _ENDS_A_RANGE and (wider := one_of_a_range(items, place, text, done)) is not None:
            item = wider
        elif said in table_of("small.decades") and (done and text[done[-1].start : done[-1].end].lower() not in words_of("small.whose_age")):
            more = table_of("small.in_a_decade").get(text[done[-1].start : done[-1].end].lower())
            first = done.pop() if more is not None else item  # "in the high forties"
            value = Fraction(table_of("small.decades")[said] + (5 if more is None else more))
            item = replace(item, concept="DEG", start=first.start, first=first.first, value=Measure("DEG", value, None, 0, False, value, near=True))
        elif item.concept == "NUMBER" and done[1:] and done[-1].concept == "COMMA" and done[-2].concept in LENGTHS and ahead in LENGTHS and said in words_of("small.calls_it") and not concept_at(items, place + 2).startswith("K_") and any(concept_at(items, k) in _SPACED for k in range(place - 8, place)):
            item = replace(item, concept="FIX")  # "a hair over two, call it two and a sixteenth"
        elif item.concept == "NUMBER" and ahead == "NUM" and said in words_of("small.calls_it") and items[place + 1].value.value <= 4 and any(concept_at(items, k) == "SIDE_WORD" for k in range(place - 10, place)):
            item = replace(item, concept="FILLER")  # "stapled on three sides, lost count, call it three"
        elif (item.concept in ("CFM", "FT2", "LB") or item.concept == "LEN" and item.value.unit == "mm") and in_hundreds(items, place, text) and done:
            first = done.pop()
            whole = int(first.value.value) * 100 + int(item.value.raw)
            item = replace(item, start=first.start, first=first.first, value=replace(item.value, value=item.value.value * whole / item.value.raw, raw=Fraction(whole)))
        elif digit_by_digit(items, place, text) and done:
            first = done.pop()
            item = replace(item, start=first.start, first=first.first, value=_plain(int(first.value.value) * 10 + int(item.value.value)))
        elif in_a_pair(items, place, text) and done:
            first = done.pop()
            item = replace(item, start=first.start, first=first.first, value=_plain(int(first.value.value) * 100 + int(item.value.value)))
        done.append(item)
    return tuple(done)


def _moves_a_side(items, place: int) -> bool:
    return any(concept_at(items, k) == "SIDE" for k in range(place - 5, place))


_THINGS = ("VANES", "STAPLES", "TABS")


def _named_kinds(items, text: str):
    """ "twelve and thirteen, both straights": a plural that counts nothing names the kind."""
    done = list(items)
    for place, item in enumerate(items):
        if item.concept == "K_TEE" and text[item.start : item.end].lower() == "te" and concept_at(items, place + 1) in ("WORD", "FIX", "SEE", "SHOWS", "LEAVES", "MOVE", "MOVE_IN", "MOVE_OUT"):
            done[place] = replace(item, concept="WORD", value=None)  # "te ves bien": the pronoun
        kind = table_of("small.several").get(text[item.start : item.end].lower()) if item.concept in ("COUNTED", "BRANCH_WORD") else None
        if kind is None:
            continue
        of_a_size = concept_at(items, place - 2) == "BY" or (concept_at(items, place - 1) in ("STOP", "") and concept_at(items, place + 1) == "COMMA")  # "both ten by ten straights", "Straights, ten by ten"
        in_a_row = concept_at(items, place - 1) == concept_at(items, place - 2) == "NUM" and items[place - 1].value.value == items[place - 2].value.value + 1  # "86 87 88 straights"
        turned = concept_at(items, place - 1) == "NUM" and items[place - 1].value.value in (90, 45) and kind == "elbow"
        step = next((k for k in range(place + 1, place + 4) if concept_at(items, k) not in ("FROM", "OF", "DET", "OFF")), place + 1)
        numbered = concept_at(items, step) in ("NUM", "MARKED", "NUMBER") and concept_at(items, step + 1) not in ("BY", "LEN") and concept_at(items, place - 1) != "NUM"
        numbered = numbered or (concept_at(items, place + 1) == "COMMA" and concept_at(items, place + 2) in ("NUM", "MARKED") and (concept_at(items, place + 3) in ("AND", "COMMA", "TO", "THRU", "THROUGH") and concept_at(items, place + 4) in ("NUM", "MARKED") or [concept_at(items, place + k) for k in (3, 4, 5)] == ["NUM", "AND", "NUM"]))
        listed = (concept_at(items, place - 1) in ("COMMA", "BE") or concept_at(items, place - 1) == "FILLER" and text[items[place - 1].start : items[place - 1].end].lower().split()[0] in ("are", "is", "son")) and any(concept_at(items, k) in ("NUM", "MARKED") for k in range(place - 4, place - 1))
        listed = listed or concept_at(items, place - 1) in ("COUNT", "NUM") and [concept_at(items, place - k) in ("NUM", "MARKED") for k in (3, 5)] == [True, True] and [concept_at(items, place - k) for k in (2, 4)] == ["COMMA", "AND"]  # "A12 and A13, two collars"
        told = concept_at(items, place - 1) in ("NUM", "COUNT") and any([concept_at(items, k + n) for n in (1, 2)] in (["NUM", "COMMA"], ["NUM", "AND"], ["MARKED", "COMMA"], ["MARKED", "AND"]) for k in range(place + 1, place + 6) if concept_at(items, k) == "COMMA" and all(concept_at(items, j) in _ON_THE_WAY for j in range(place + 1, k)))  # "three straights this time: 21, 22 and 23"
        listed = listed or concept_at(items, place - 1) == "OF" and text[items[place - 2].start : items[place - 2].end].lower() in words_of("small.pair") and concept_at(items, place - 3 - (concept_at(items, place - 3) == "DET")) == "COMMA"  # "74 and 75, couple of straights"
        if (told or numbered or listed or of_a_size or in_a_row or turned or concept_at(items, place - 1) in ("BOTH", "ALL", "THIS") or _of_marks(items, place, text)):
            done[place] = replace(item, concept="K_" + kind.upper(), value=kind) if kind != "fitting" else replace(item, concept="FITTING", value=None)
    return tuple(done)


def _beyond(items, text: str):
    """ "a touch over two inches", "two and change apart": a measure that is not quite that; where it stands of things that are spaced, or with its unit."""
    done: list[Item] = []
    said, end = text.lower(), 0
    for place, item in enumerate(items):
        if item.start < end:
            continue  # a word of what was said behind the measure
        end = 0
        if item.concept in ("LEN", "NUM", "FRAC") and (concept_at(items, place + 1) == "APART" or any(concept_at(items, place - k) in _SPACED for k in range(1, 7))):
            every = done.pop() if done and done[-1].concept == "EVERY" else None  # "slightly more than every two"
            until = every.start if every is not None else item.start
            first = max(0, until - _FAR)
            before = in_any("forms.beyond").search(said[first:until].rstrip())
            if before is not None:
                while done and done[-1].start >= first + before.start():
                    done.pop()
                item = replace(item, start=first + before.start() if every is None else item.start, value=replace(item.value, near=True))
            elif (behind := in_any("forms.and_more").match(said[item.end : item.end + _FAR])) is not None:
                end = item.end + behind.end()
                item = replace(item, end=end, value=replace(item.value, near=True))
            done += [every] if every is not None else []
        if item.concept in _UP_TO_A_LIMIT and not item.value.near and any(concept_at(items, place - k) in _LIMITED for k in range(1, 9)) and not any(concept_at(items, place - k) in ("NOT", "NO") for k in range(1, 6)):
            first = max(0, item.start - _FAR)
            if (above := in_any("forms.above").search(said[first : item.start].rstrip())) is not None:  # "static is over two inches"
                while done and done[-1].start >= first + above.start():
                    done.pop()
                item = replace(item, start=first + above.start(), value=replace(item.value, near=True))
        done.append(item)
    return tuple(done)


_FAR = 40  # letters: so much is looked through on either side of a measure
_UP_TO_A_LIMIT = ("LEN", "NUM", "FRAC", "INWG", "DEG", "TEMP_F")
_LIMITED = ("STATIC", "SLOPE", "AIR", "AIR_TEMP")
_SPACED = ("STAPLED", "STAPLES", "STAPLE", "EVERY", "TABS", "SCREWS", "K_HANGER", "APART", "GAP", "TAPE", "OFFSETS")
_ON_THE_WAY = ("FILLER", "THIS", "TIMES", "DET", "ON", "RUN", "NUM", "WORD", "LATER", "HUNG")


def _of_marks(items, place: int, text: str) -> bool:
    """ "Las dos son rectas", "…, puras rectas", "tres rectas, la 260, la 261 y la 262", "dos codos gemelos, el 3 y el 4": the kind of pieces that are named."""
    before = [concept_at(items, place - k) for k in (1, 2)]
    if before == ["BE", "BOTH"] or text[items[place - 1].start : items[place - 1].end].lower() in ("puras", "puros") and place > 0:
        return True
    ahead = [concept_at(items, place + k) for k in (1, 2, 3, 4)]
    ahead = ahead[1:] if ahead[0] in ("WORD", "FILLER") else ahead
    return before[0] in ("NUM", "COUNT") and ahead[:3] in (["COMMA", "DET", "NUM"], ["COMMA", "DET", "MARKED"])


def _counted(items):
    """Numbers that count or name something else: boxes, people, hours, rooms, telephones."""
    done: list[Item] = []
    for place, item in enumerate(items):
        if item.concept == "NUM":
            step = place + 2 if concept_at(items, place + 1) in ("FILLER", "OF") else place + 1
            other = concept_at(items, step) == "COUNTED" or concept_at(items, place - 1) == "ROOM" and concept_at(items, place + 1) != "BY"
            if other and concept_at(items, place + 1) == "FILLER" and concept_at(items, place - 1) in ("THROUGH", "THRU", "AND", "TO") and concept_at(items, place - 2) in ("NUM", "MARKED"):
                other = False  # "fittings forty through forty-two are all elbows"
            if other and concept_at(items, place - 1) == "ROOM" and (item.value.raw.denominator != 1 or concept_at(items, place + 1) in ("APART", "BACK", "WIDE", "LONG")):  # "at about two and a half", which is no room and no time
                done[-1], other = replace(done[-1], concept="HEDGE"), False
            other = other or any(concept_at(items, k) == "NOT_MARK" for k in range(place - 3, place))
            other = other or (concept_at(items, place + 1) == "SCREWS" and concept_at(items, place - 1) == "NUMBER" and items[place - 1].end - items[place - 1].start == 1)  # "#10 screws": how thick they are
            item = replace(item, concept="COUNT") if other else item
        done.append(item)
    return tuple(done)


def _plain(value: int) -> Measure:
    return Measure("NUM", Fraction(value), None, 0, True, Fraction(value))
