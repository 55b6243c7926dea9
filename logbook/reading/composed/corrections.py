"""What is set right where it stands ("20 by 16, no, 20 by 14"): measures, sides, ends of a print, opposites."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook import measure
from logbook.languages.language import Forms
from logbook.reading.composed.behind_its_thing import behind_its_thing
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.phrasing import words_of
from logbook.reading.composed.size_pairs import LENGTHS, MEASURES, Size

_BETWEEN_FIX = ("BUT", "LONG", "APART", "STATIC", "COMMA", "STOP", "FILLER", "AND", "HEDGE", "DET", "BE", "NO", "FIX", "THINK", "NOT", "OUTLET_SIZE", "OF")
MOVED = ("MOVE_DOWN", "MOVE_UP", "MOVE_IN", "MOVE_OUT", "MOVE", "DOWN", "UP", "IN")


def corrected(items, text: str = "", forms: Forms = Forms()):
    """A measure, a word that takes it back, a measure of the same sort: the second counts and remembers the first."""
    done: list[Item] = []
    admits = bool(forms.misspoke) and re.search(forms.misspoke, text.lower()) is not None
    for place, item in enumerate(items):
        if item.concept == "NO" and done and _sorry_for(items, place, text):
            continue  # "half inch staples in, no, sorry, three eighths": denies nothing
        if item.concept == "NUM" and concept_at(items, place + 1) == "BE" and concept_at(items, place + 2) in ("SIZE", "LEN") and concept_at(done, len(done) - 1) in ("COMMA", "FIX", "STOP"):
            done.append(item)  # "hold on, one's ten by twelve": the piece
            continue
        if admits and item.concept in MEASURES and _misspoken(item, done, text, forms):
            continue
        if item.concept in MEASURES and done:
            if len(done) > 2 and done[-1].concept == "OF" and text[done[-2].start : done[-2].end].lower() == "instead":
                done[-2] = replace(done[-2], concept="NOT")  # "ten by twelve instead of ten by ten"
            contrast = len(done) > 2 and done[-1].concept == "OF" and done[-2].concept == "NOT"  # "de catorce por diez, no de doce"
            if contrast or _not_the(item, done, text):
                done.pop()
            spanish = not contrast and done[-1].concept == "NOT" and len(done) > 1 and text[done[-1].start : done[-1].end].lower() == "no" and done[-2].concept == "SIZE"  # "doce por diez no catorce por diez"
            before = None if done[-1].concept == "NOT" and not spanish else _taken_back_by(item, done, text)
            name = before if before is not None or done[-1].concept not in _LIKE_EVERY else _taken_back_by(item, done[:-1], text)
            if name is not None and (told := _before_the_name(item, done, name)) is not None:
                done[told] = replacing(item, done[told])
                del done[name + 1 :]
                continue
            if before is not None and _is_the_mark(item, done, before, text):
                before = None
            if before is None and (said := _sorry(items, place, done)) is not None:
                before = said
            if before is None and done[-1].concept != "NOT":
                before = _said_again(items, place, done)
            if before is None and _nearer_the_truth(item, done, text):
                before = len(done) - 4
            if before is None and item.concept == "SIZE" and (size := _size_before_the_rest(done)) is not None:
                while done[-1].concept not in ("COMMA", "STOP", *MEASURES):
                    done.pop()
                done[size] = replacing(item, done[size])  # "doce por doce, noventa, me equivoqué, es de catorce por doce"
                continue
            if before is None and (label := _label_before_the_rest(done, item)) is not None:
                while done[-1].concept not in MEASURES and done[-1].concept != "SIDE":
                    done.pop()
                done[label] = replacing(item, done[label])
                continue
            if before is not None:
                first = done[before]
                long = [kept for kept in done[before + 1 :] if kept.concept in ("LONG", "APART", "STATIC")]
                del done[before:]
                done.append(replacing(item, first))
                done.extend(long[:1] if concept_at(items, place + 1) not in ("LONG", "APART", "STATIC") else ())
                continue
            if (thing := behind_its_thing(items, place, done)) is not None:
                at, last = thing
                done[at:] = [replace(replacing(item, done[at]), start=done[at].start, first=done[at].first), *done[at + 1 : last + 1]]
                continue
            if _not_that(items, place, done) and not text[done[-1].start : done[-1].end].lower().startswith("ni"):  # "la 135 ni la 136": neither
                first = next(i for i in range(len(done) - 1, -1, -1) if done[i].concept == item.concept or {done[i].concept, item.concept} <= set(LENGTHS))
                del done[first + 1 :]
                ahead = [concept_at(items, place + k) for k in (1, 2)]
                if _same_measure(done[first], item) and ahead[0] == "COMMA" and (ahead[1] == item.concept or {ahead[1], item.concept} <= set(LENGTHS)):
                    done.append(replace(item, concept="FIX"))  # "left in six, not six, three"
                    continue
                done[first] = replace(done[first], took_back=(*done[first].took_back, item))
                continue
        elif item.concept == "LETTER" and done and (first := _mark_before(items, place, done, text)) is not None:
            old, start = done[first], done[-1].start if done[-1].concept == "DET" else item.start
            del done[first:]
            value = f"181A-{text[item.start : item.end].upper()}"
            item = replace(item, concept="MARK181", value=value, start=start, read_as=value, took_back=(*old.took_back, replace(old, took_back=())))
        elif done and any(item.concept in pair for pair in _OPPOSITES):
            before = _opposite_before(item, done)
            if before is not None:
                first = done[before]
                del done[before:]
                item = replace(item, took_back=(*first.took_back, replace(first, took_back=())))
        elif item.concept == "SIDE" and len(done) > 2 and (before := _other_side_before(item, done, concept_at(items, place + 1))) is not None:
            first = done[before]
            del done[before:]
            item = replace(item, took_back=(*first.took_back, replace(first, took_back=())))
        done.append(item)
    return tuple(done)


def _sorry_for(items, place: int, text: str) -> bool:
    """Whether a no and a word of correction stand between signs, and a measure behind them."""
    ahead = [item for item in items[place + 1 : place + 5] if item.concept != "COMMA"]
    return _says_no(items[place]) and len(ahead) > 1 and ahead[0].concept == "FIX" and ahead[1].concept in MEASURES and items[place - 1].concept in ("COMMA", "STOP")


_ADMITTED = ("COMMA", "STOP", "BUT", "IT", "THIS", "BE", "FILLER", "DET", "AND", "NO", "FIX")


def _misspoken(item: Item, done: list[Item], text: str, forms: Forms) -> bool:
    """ "Forty-two long. I said forty-two, it's forty-three": what he owns to have said wrong is no measure of the piece, and the one said before is set right; whether this was it."""
    at = len(done) - 1
    if any(one.concept == "FIX" for one in done[-_FARTHEST:]) and done[-1].concept in ("BE", "IT", "THIS"):  # "I said ten by ten on the phone and that's wrong, I had the old tag. It's …"
        while at >= 0 and len(done) - at <= _FARTHEST and done[at].concept not in MEASURES and not done[at].concept.startswith("K_"):
            at -= 1
    while at >= 0 and len(done) - at <= 7 and (done[at].concept in _ADMITTED or text[done[at].start : done[at].end].lower() in forms.earlier):
        at -= 1
    if at < 1 or at == len(done) - 1 or not _of_a_sort(done[at], item) or not any(one.concept == "BE" for one in done[at + 1 :]):
        return False
    first = at
    while first > 0 and at - first < 5 and done[first - 1].concept not in ("STOP", "QUERY", "COMMA", *MEASURES):
        first -= 1
    if re.fullmatch(rf"(?:\w+ )?{forms.misspoke}", text[done[first].start : done[at].start].lower().strip()) is None:
        return False
    wrong = done[at]
    del done[first:]
    right = next((k for k in range(len(done) - 1, -1, -1) if _of_a_sort(done[k], wrong) and (_same_measure(done[k], wrong) or _same_measure(done[k], item))), None)
    if right is None:
        done.append(replace(item, took_back=(replace(wrong, took_back=()),)))
    elif _same_measure(done[right], item):
        done[right] = replace(done[right], took_back=(*done[right].took_back, wrong))
    else:
        done[right] = replacing(item, done[right])
    return True


def _is_the_mark(item: Item, done: list[Item], at: int, text: str) -> bool:
    """ "Collar 149, correction, seven inch": the number behind the kind is which one, and what is put right is told next."""
    behind = [one for one in done[at + 1 :] if one.concept != "COMMA"]
    named = done[at].concept == "NUM" and at > 0 and done[at - 1].concept.startswith("K_") and item.concept == "LEN" and len(behind) == 1
    return named and text[behind[0].start : behind[0].end].lower() in words_of("small.corrections")


def _before_the_name(item: Item, done: list[Item], at: int) -> int | None:
    """ "Three inch tape on straight 39, sorry, two inch", "cinta de tres en el recto 39, perdón, de dos": not the name is set right but the measure before it."""
    if done[at].concept != "NUM" or at < 2 or not (done[at - 1].concept.startswith("K_") or done[at - 1].concept in ("FITTING", "NUMBER")):
        return None
    if item.concept not in LENGTHS or item.concept == "NUM" and done[-1].concept not in ("OF", *_LIKE_EVERY):
        return None
    for k in range(at - 2, -1, -1):
        if done[k].concept in ("STOP", "QUERY", "SIZE") or done[k].concept.startswith("K_"):
            return None
        if done[k].concept in LENGTHS:
            return k if done[k + 1].concept != "SIDE_WORD" else None
    return None


def _size_before_the_rest(done: list[Item]) -> int | None:
    """The size that a word of correction takes back, with its turn or its length told between."""
    at, fixed = len(done) - 1, False
    while at >= 0 and len(done) - at <= 9 and (done[at].concept in ("COMMA", "FIX", "BE", "OF", "FILLER", "DET", "IT", "LONG", "ON", "RUN", "K_ELBOW") or fixed and done[at].concept in ("NUM", "DEG", "LEN")):
        fixed = fixed or done[at].concept == "FIX"
        at -= 1
    return at if fixed and at >= 0 and done[at].concept == "SIZE" and done[at + 1].concept == "COMMA" else None


def _label_before_the_rest(done: list[Item], item: Item) -> int | None:
    """ "In eighteen inches, three off each side, no wait, in sixteen inches", "right in two, back twelve, no, in four": the measure behind the same small word, with another told between."""
    at = len(done) - 1
    label = done[at].concept
    if label not in _LABELS or item.concept not in LENGTHS:
        return None
    at, fixed = at - 1, False
    while at > 0 and len(done) - at <= 6 and done[at].concept in ("COMMA", "STOP", "FIX", "NO", "FILLER"):
        fixed = fixed or done[at].concept == "FIX" or done[at].concept == "NO" and _says_no(done[at])
        at -= 1
    if not fixed or done[at].concept in ("COMMA", "STOP"):
        return None
    for k in range(at, max(0, at - _FURTHEST), -1):
        if done[k].concept in ("STOP", "QUERY") or done[k].concept.startswith("K_"):
            return None
        if done[k].concept in LENGTHS and done[k - 1].concept == label:
            return k
    return None


_LABELS = ("IN", "BACK", "OVER", "DOWN", "UP", "EVERY")


def _of_a_sort(one: Item, other: Item) -> bool:
    return one.concept == other.concept or {one.concept, other.concept} <= set(LENGTHS)


def _nearer_the_truth(item: Item, done: list[Item], text: str) -> bool:
    """ "Stapled every two, well, two and an eighth": how far apart, told more closely."""
    if len(done) < 5 or [one.concept for one in done[-3:]] != ["COMMA", "FILLER", "COMMA"] or done[-5].concept not in ("EVERY", "APART", "ON"):
        return False
    said = text[done[-2].start : done[-2].end].lower()
    return said == "well" and done[-4].concept in LENGTHS and item.concept in LENGTHS and abs(item.value.value - done[-4].value.value) < 2


def _other_side_before(item: Item, done: list[Item], ahead: str) -> int | None:
    """ "Entra por la izquierda, no, por la derecha, cuatro": the way a side moves stands before the side that was wrong."""
    at, fixed = len(done) - 1, False
    if any(one.concept == "FIX" for one in done[-4:]):
        while at > 1 and len(done) - at <= 8 and done[at].concept in (*_BETWEEN_FIX, "I"):
            at, fixed = at - 1, fixed or done[at].concept == "FIX"
    while at >= 0 and len(done) - at <= 6 and (done[at].concept in _BETWEEN_FIX or done[at].concept in ("BY", "TO", "ON")):
        fixed = fixed or done[at].concept == "FIX" or (done[at].concept in ("NO", "NOT") and _says_no(done[at]) and at > 0 and done[at - 1].concept in ("COMMA", "STOP"))
        at -= 1
    if fixed and at > 1 and ahead in MOVED and done[at].concept in LENGTHS and done[at - 1].concept in MOVED and done[at - 2].concept == "SIDE":
        at -= 2  # "top comes in four, no, sorry, left comes in four": the whole move is told again
        return at if len(done[at].value) == len(item.value) == 1 and done[at].value != item.value else None
    moves = at > 0 and fixed and done[at].concept == "SIDE" and done[at - 1].concept in MOVED
    return at if moves and len(done[at].value) == len(item.value) == 1 and done[at].value != item.value else None


def _mark_before(items, place: int, done: list[Item], text: str) -> int | None:
    """ "181A-H, no wait, read it again, A-P": the end of the print alone, behind a word that takes the whole print back."""
    if text[items[place].start : items[place].end].upper() not in ("P", "H", "M") or concept_at(items, place + 1) not in ("COMMA", "STOP", "QUERY", ""):
        return None
    at, fixed = len(done) - 1, False
    while at >= 0 and len(done) - at <= _FURTHEST and (done[at].concept in _LOOSE or done[at].concept in _BETWEEN_FIX or done[at].concept == "DASH"):
        fixed = fixed or done[at].concept == "FIX" or (done[at].concept in ("NO", "NOT") and _says_no(done[at]))
        at -= 1
    return at if at >= 0 and fixed and done[at].concept == "MARK181" else None


_OPPOSITES = (("FEMALE", "MALE"), ("INSIDE", "OUTSIDE"))


def _opposite_before(item: Item, done: list[Item]) -> int | None:
    """ "by the male, no, the female": the other of a pair, with a word that takes it back between."""
    at, fixed = len(done) - 1, False
    while at >= 0 and len(done) - at <= 6 and (done[at].concept in _BETWEEN_FIX or done[at].concept in ("BY", "TO", "ON", "END", "IT", "THIS")):
        fixed = fixed or done[at].concept == "FIX" or (done[at].concept == "NO" and _says_no(done[at]) and at > 0 and done[at - 1].concept in ("COMMA", "STOP"))
        at -= 1
    mates = next(pair for pair in _OPPOSITES if item.concept in pair)
    return at if at >= 0 and fixed and done[at].concept in mates else None


def replacing(item: Item, first: Item) -> Item:
    """The second measure in the place of the first, which it remembers; what the first says of unit and second side holds for it too."""
    if first.concept == "SIZE" and item.concept in LENGTHS:  # "eighteen by twelve, no, fourteen"
        pair = (first.value.pair[0], item.value.value)
        item = Item("SIZE", Size(pair, first.value.unit, None), first.start, item.end, first.first, item.last, item.read_as)
    if first.concept == "LEN" and item.concept in ("NUM", "FRAC") and first.value.unit in measure.UNITS:  # "forty inches, or rather forty-two"
        item = replace(item, concept="LEN", value=replace(item.value, sort="LEN", value=item.value.value * measure.UNITS[first.value.unit], unit=first.value.unit))
    return replace(item, took_back=(*first.took_back, replace(first, took_back=())))


_LOOSE = ("ROOM", "DRAWING", "WORD", "GENERIC", "SIDE_WORD", "ON", "OF", "I", "IT", "THIS", "LAID", "QUESTION", "SEE", "HAVE", "HAVING", "SAYS", "REDID", "TO", "FIX", "WILL", "ANOTHER", "TRADE_NOISE", "BE", "DET", "COMMA", "FILLER")
_LIKE_EVERY = ("EVERY", "ON", "TO")  # "cada dos, digo, a tres"
_REPEATED = ("BACK", "EVERY", "ON", "TO", "LENGTH", "SIZE_WORD", "OUTLET", "INLET", "BRANCH_WORD", "OFFSETS", "IN", "BY", "OVER")
_ENDS_SO = ("COMMA", "STOP", "QUERY", "AND", "", "LONG", "APART", "BACK", "STAPLED", "TAPED", "RUBBED")
_FURTHEST = 14  # items
_FARTHEST = 20  # items between what he owns to have said wrong and what it is


def _said_again(items, place: int, done: list[Item]) -> int | None:
    """ "back twenty-four, uh, no, I measured that again, back sixteen", "a forty-five, wait what am I saying, it's a ninety": words of no trade between."""
    if concept_at(items, place + 1) not in _ENDS_SO or _just_one(items[place]):
        return None
    item, at = items[place], len(done) - 1
    label = done[at].concept if done and done[at].concept in _REPEATED else None
    at -= label is not None
    if label == "BACK" and done[at].concept == "SIDE" and any(one.concept == "SIDE" and one.value == done[at].value for one in done[max(0, at - _FURTHEST) : at]):
        at -= 1  # "right in three, back eighteen, no, make that right back fifteen"
    verb = done[at].concept if label is not None and at > 0 and done[at].concept in ("STAPLED", "STAPLES", "TAPE", "TABS") and done[at - 1].concept in ("COMMA", "FIX", "FILLER") else None
    at -= verb is not None
    fixed = loose = False
    while at >= 0 and len(done) - at <= _FURTHEST:
        concept = done[at].concept
        if _just_one(done[at]) and not fixed:
            at -= 1
            continue
        if concept in MEASURES or (concept not in _BETWEEN_FIX and (fixed or concept not in _LOOSE)):
            break
        bare = concept == "NO" and _says_no(done[at]) and at > 0 and done[at - 1].concept in ("COMMA", "STOP", "FILLER") and done[min(at + 1, len(done) - 1)].concept in ("COMMA", "FIX")
        fixed = fixed or concept == "FIX" or bare
        loose = loose or concept in ("WORD", "LAID", "QUESTION", "REDID")
        at -= 1
    if at < 1 or not fixed or not loose and label is None:
        return None
    if verb is not None and (at < 2 or done[at - 2].concept != verb):
        return None
    if label is not None and done[at - 1].concept != label and not {done[at - 1].concept, label} <= set(_LIKE_EVERY) or done[at].concept == "NUM" and done[at - 1].concept.startswith("K_"):
        return None
    same = done[at].concept == item.concept or {done[at].concept, item.concept} <= set(LENGTHS)
    return at if same else None


def _sorry(items, place: int, done: list[Item]) -> int | None:
    """ "Forty long. Forty-two, sorry.": the word of correction stands behind the second."""
    behind = [concept_at(items, place + k) for k in (1, 2, 3)]
    if behind[:2] != ["COMMA", "FIX"] or behind[2] not in ("STOP", "") or items[place].concept not in (*LENGTHS, "SIZE"):
        return None
    at = len(done) - 1
    while at >= 0 and len(done) - at <= 4 and done[at].concept in ("STOP", "COMMA", "LONG", "APART"):
        at -= 1
    same = at >= 0 and (done[at].concept == items[place].concept or {done[at].concept, items[place].concept} <= set(LENGTHS))
    return at if same and at < len(done) - 1 else None


def _just_one(item: Item) -> bool:
    """ "The wrong one": no number."""
    return item.concept == "NUM" and item.value.value == 1 and not item.value.digits


def _taken_back_by(item: Item, done: list[Item], text: str) -> int | None:
    at, fixed, no = len(done) - 1, False, False
    while at >= 0 and len(done) - at <= 7 and (done[at].concept in _BETWEEN_FIX or _it_was(done, at)):
        fixed = fixed or done[at].concept == "FIX"
        no = no or (done[at].concept in ("NO", "NOT") and _says_no(done[at]) and text[done[at].start : done[at].end].lower() != "ni" and concept_at(done, at + 1) not in ("BE", "HAVE"))  # "ni la 136", "no quedaba de tres" takes nothing back
        at -= 1
    if at < 0 or not (fixed or no):
        return None
    same = done[at].concept == item.concept or {done[at].concept, item.concept} <= set(LENGTHS)
    partial = done[at].concept == "SIZE" and item.concept == "NUM" and len(done) - at <= 4
    return at if same or partial else None


def _it_was(done: list[Item], at: int) -> bool:
    """ "Every two. Hang on, it was three." """
    return done[at].concept in ("IT", "THIS") and at + 1 < len(done) and done[at + 1].concept == "BE"


def _says_no(item: Item) -> bool:
    return item.end - item.start == 2  # the bare word "no", not "without" or "there's no"


def _not_the(item: Item, done: list[Item], text: str) -> bool:
    """ "La ocho, no la nueve": behind "no la" stands the other one; "la ocho, no, la nueve" sets it right."""
    if item.concept != "NUM" or len(done) < 4 or [one.concept for one in done[-2:]] != ["NOT", "DET"] or done[-3].concept != "COMMA" or done[-4].concept != "NUM":
        return False
    return text[done[-2].start : done[-1].end].lower() in ("no la", "no el")


def _same_measure(one: Item, other: Item) -> bool:
    return one.value.pair == other.value.pair if one.concept == other.concept == "SIZE" else one.concept != "SIZE" and other.concept != "SIZE" and one.value.raw == other.value.raw


def _not_that(items, place: int, done: list[Item]) -> bool:
    """ "forty-two, not forty": what stands behind "not" is the withdrawn one."""
    if items[place].concept == "NUM" and items[place].value.value == 1 and not items[place].value.digits:
        return False  # "not one side of it"
    if len(done) < 2 or done[-1].concept != "NOT" or done[-1].took_back:
        return False
    behind = done[-3:-1] if len(done) >= 3 else done[-2:-1]
    last = behind[-1]
    if last.concept == "COMMA" and len(behind) > 1:
        last = behind[-2]
    if last.concept == items[place].concept == "NUM" and {last.value.value, items[place].value.value} <= {one.value.value for one in done[:-3] if one.concept == "NUM"}:
        return False  # "straight 8 and 9. I taped 8, not 9": pieces that were named
    return last.concept == items[place].concept or {last.concept, items[place].concept} <= set(LENGTHS)
