"""Where a clause ends that no comma or stop ends: "didn't need a second coat stapled every two taped" says that it is stapled.

A denial, a wish, a reminder or an order reaches over its own verb or noun only. Behind that a list of acts as it tells what was done ("stapled every
two taped rubbed") begins a sentence of its own, and a stop of no length is put before it. What such a word governs itself ("isn't stapled",
"didn't get it stapled", "no seam stapled or taped") stays with it; so does an act that stands alone, without its measure or a second act.
"""

from __future__ import annotations

from logbook.languages.run_on import RunOn
from logbook.reading.words.items import Item, concept_at

_ACTS = ("STAPLED", "TAPED", "RUBBED")
_MORE_ACTS = (*_ACTS, "WIPED", "TRIMMED", "MARK181", "CLOSURE", "C_MASTIC", "VANES")
_ENDS = ("COMMA", "STOP", "QUERY")
_DENIES = ("NOT", "NO", "NOT_DONE")
_TO_COME = ("FORGOT", "PENDING", "REMIND", "WILL", "IF")
_BARE_VERBS = ("STAPLE", "TAPE_IT", "RUB", "TRIM", "WIPE", "HANG", "HEAT_IT", "REPAIR_IT")
_TOLD_OF = ("WIPED", "TRIMMED", "PREHEATED", "SEATED", "REPAIRED", *_ACTS)
_AN_ACT = frozenset(_ACTS)
_REACHES = frozenset((*_DENIES, *_TO_COME, "ONLY"))  # what has an end that is looked for
# right before an act: it is governed by these, whatever stands before them
_GOVERNS = ("BE", "HAVE", "HAVING", "AND", "OR", "BUT", "I", "OTHER", "ONLY", "BOTH", "QUESTION", "WILL", "GOING_TO", "PENDING", "NEED", "TO", "EXCEPT", "ALL_BUT", "IF", "WHEN", "REMIND", "FORGOT", "NOT_FORGET", "SAYS", "DRAWING", "THINK", "BY", "FROM", "BEFORE")
_SMALL = ("FILLER", "HEDGE", "DET", "ALL", "EACH", "YET")
_OF_THE_PIECE = ("SIDE", "PANEL", "JOINT", "SIDE_WORD", "END", "FITTING", "GENERIC", "BACK", "BOARD", "OTHER_SIDE", "THIS", "IT")
_THINGS = ("VANES", "TIE_RODS", "TAPE", "STAPLES", "SCREWS", "TABS", "FLAP", "CLOSURE", "MARK181", "WORD")
_PARTS = ("JOINT", "SIDE_WORD", "SIDE", "TAPE", "STAPLES", "VANES", "TABS")  # "not a seam I taped"
_WHERE = ("ON", "IN", "UNDER", "OVER", "INSIDE", "AROUND", "BESIDE", "WITH", "TO", "THROUGH", "FROM")
_MEASURED_BY = ("EVERY", "NUM", "LEN", "FRAC", "MARK181", "CLOSURE", "APART")
_ON_THE_WAY = ("ON", "WITH", "THROUGH", "FLAP", "DET", "ALL", "AROUND", "SIDE_WORD", "FILLER", "SIDES_ALL", "BOTH", "OVER", "IN", "TAPE", "STAPLES", "OF", "APART", "JOINT")
_LOOKS_BACK = 40  # items: so that what this costs grows in line with the note


def ended(items: tuple[Item, ...], text: str, words: RunOn) -> tuple[Item, ...]:
    """The items, with a stop of no length where a sentence ends before a list of what was done."""
    concepts = [item.concept for item in items]
    if not words.bare or not _AN_ACT.intersection(concepts):
        return items
    said = [text[item.start : item.end].lower().replace("’", "'") for item in items]
    if not _REACHES.intersection(concepts) and "OTHER" not in concepts and words.names.isdisjoint(said) and sum(concept[:2] == "K_" for concept in concepts) < 2:
        return items
    stops: set[int] = set()
    start = 0
    for at, item in enumerate(items):
        if item.concept in _ENDS:
            start = at + 1
            continue
        place = None
        if item.concept in _ACTS and at > start and said[at] in words.bare:
            place = _ends_before(items, said, max(start, at - _LOOKS_BACK), at, words)
        elif item.concept == "IT" and _is_by_now(items, said, start, at, words):
            place = at
            if concept_at(items, at + 3) == "EVERY":
                stops.add(at + 3)  # "it is now every two"
        elif item.concept in ("I", "FILLER") and at > start + 2 and _tells_anew(items, said, max(start, at - _LOOKS_BACK), at, words):
            place = at
        elif item.concept == "BE" and at > start + 1 and said[at] in words.it_is and _is_that_one(items, said, at, words):
            place = at
        elif item.concept.startswith("K_") and _begins_another(items, max(start, at - _LOOKS_BACK), at):
            place = at
        elif (item.concept == "OTHER" or said[at] in words.names) and _did_it(items, said, start, at, words):
            place = at
        if place is not None:
            stops.add(place)
            start = at
    if not stops:
        return items
    return tuple(one for at, item in enumerate(items) for one in ((Item("STOP", "", item.start, item.start, item.first, item.first), item) if at in stops else (item,)))


def _is_by_now(items, said, start: int, at: int, words: RunOn) -> bool:
    """ "wasn't stapled this morning it is now": what was not so then is so now."""
    if concept_at(items, at + 1) != "BE" or at + 2 >= len(items) or said[at + 2] not in words.now or concept_at(items, at + 3) in ("NOT", "NO", "NOT_DONE"):
        return False
    return any(items[k].concept == "NOT" and items[k + 1].concept in _ACTS for k in range(max(start, at - _LOOKS_BACK), at - 1))


def _tells_anew(items, said, start: int, at: int, words: RunOn) -> bool:
    """ "I didn't swap it | I just taped it", "nobody helped me | I stapled it": he himself right before an act, behind a denied verb that is no saying or thinking."""
    if concept_at(items, at + 1) not in _TOLD_OF or items[at].concept == "FILLER" and said[at].split()[0] not in words.people or said[at - 1].split()[-1] in words.binders | words.opening or items[at - 1].concept in (*_PARTS, *_GOVERNS):
        return False
    cue = next((k for k in range(at - 2, start - 1, -1) if items[k].concept in ("NOT", "NOT_DONE")), None)
    if cue is None or said[cue].split()[-1] in words.opinions or said[cue] not in words.auxiliaries and items[cue].concept != "NOT_DONE":
        return False
    between = {word for k in range(cue + 1, at) for word in said[k].split()}
    return between.isdisjoint(words.opinions) and between.isdisjoint(words.binders)


def _is_that_one(items, said, at: int, words: RunOn) -> bool:
    """ "43 was taped and it's not | it's 34 that's taped": another piece, told behind a denial or an act as the one it is so of."""
    if items[at - 1].concept not in ("NOT", *_TOLD_OF):
        return False
    number = next((k for k in range(at + 1, min(at + 5, len(items))) if items[k].concept in ("NUM", "MARKED")), None)
    return number is not None and all(items[k].concept in ("DET", "NUMBER", "FITTING", "FILLER") or items[k].concept.startswith("K_") for k in range(at + 1, number)) and said[number + 1 : number + 2] != [] and said[number + 1] in words.relative


def _did_it(items, said, start: int, at: int, words: RunOn) -> bool:
    """ "Straight 5 my helper taped it": somebody else with what he did, right behind nothing but the piece."""
    if concept_at(items, at + 1) not in _ACTS or said[at + 1].split()[0] not in words.bare or items[at - 1].concept not in ("NUM", "MARKED") or at - start > 4:
        return False
    return all(items[k].concept in ("NUM", "MARKED", "NUMBER", "FITTING", "DET", "AND", "FILLER") or items[k].concept.startswith("K_") for k in range(start, at))


def _begins_another(items, start: int, at: int) -> bool:
    """ "straight 4 stapled every two not taped yet straight 5 …": a second piece with its number, behind all that was told of the first."""
    if concept_at(items, at + 1) not in ("NUM", "MARKED") or concept_at(items, at + 2) in ("BY", "LEN", "DEG", "AND") or not any(items[k].concept.startswith("K_") for k in range(start, at)):
        return False
    last = at - 1
    if items[last].concept in ("YET", "LATER"):
        return any(items[k].concept in _ACTS for k in range(start, last))
    while last > start and items[last].concept in ("NUM", "LEN", "FRAC", "EVERY", "APART"):
        last -= 1
    measured = last < at - 1 and items[last + 1].concept == "EVERY"
    return items[last].concept in _ACTS and (measured or items[last - 1].concept in (*_ACTS, "NUM", "LEN", "FRAC", "MARK181"))


def _ends_before(items, said, start: int, at: int, words: RunOn) -> int | None:
    """Where the stop stands before this act; None where it belongs to what stands before it."""
    governor = at - 1
    while governor >= start and items[governor].concept in _SMALL and said[governor] not in words.adjectives and said[governor] not in words.it_is:
        governor -= 1
    listed = governor
    while listed >= start and items[listed].concept in (*_MEASURED_BY, *_ON_THE_WAY):
        listed -= 1
    if listed >= start and items[listed].concept in _ACTS:  # one of a list that began before
        return None
    own = governor > start and said[governor] in words.it_is  # "…, it's taped": it has a subject of its own
    place = governor if own else at
    if own:
        governor -= 1
    if governor < start or items[governor].concept in (*_GOVERNS, *_ACTS) or not _is_a_list(items, said, at, words):
        return None
    cue = next((k for k in range(governor, start - 1, -1) if items[k].concept in (*_DENIES, *_TO_COME, "ONLY")), None)
    if cue is None or own and not (items[cue].concept in (*_TO_COME, "NOT_DONE") or said[cue] in words.auxiliaries or said[cue] in words.wholes and cue == governor):
        return None
    return place if _is_whole(items, said, start, cue, place, words) else None


def _is_whole(items, said, start: int, cue: int, at: int, words: RunOn) -> bool:
    """Whether what denies, wishes or puts off has all it needs before the act."""
    if _goes_on_to_tell(items, cue, at):
        return True
    if items[cue].concept == "ONLY":  # "over only sixteen inches"
        return cue + 1 < at and all(items[k].concept in ("NUM", "LEN", "FRAC") for k in range(cue + 1, at))
    if items[cue].concept in _TO_COME:
        return _has_its_verb(items, said, cue, at, words)
    if said[cue] in words.wholes or items[cue].concept == "NO":
        return _lacks_a_thing(items, said, start, cue, at, words)
    if said[cue].split()[-1] in words.opinions:
        return _told(items, said, cue, at, words)
    if said[cue] in words.auxiliaries or items[cue].concept == "NOT_DONE":
        return _verb_is_whole(items, said, start, cue, at, words)
    return said[cue] in words.copulas and _is_not_so(items, said, start, cue, at, words)


def _goes_on_to_tell(items, cue: int, at: int) -> bool:
    """ "no idea why and it took twenty-four": a clause with its own subject stands between, and what was denied ended with it."""
    return any(items[k].concept in ("AND", "BUT") and items[k + 1].concept in ("I", "IT", "THIS") and k + 3 < at for k in range(cue + 1, at - 1))


def _is_a_list(items, said, at: int, words: RunOn) -> bool:
    """Measured, or with another act behind it; not one of several of which none was done ("stapled or taped")."""
    end = next((k for k in range(at, len(items)) if items[k].concept in _ENDS), len(items))
    k, measured = at + 1, False
    while k < end and items[k].concept in (*_ON_THE_WAY, *_MEASURED_BY):
        measured = measured or items[k].concept in _MEASURED_BY
        k += 1
    if k < end and items[k].concept == "OR":
        return False
    step = k + 1 if k < end and items[k].concept == "AND" else k
    more = step < end and items[step].concept in _MORE_ACTS
    if more and concept_at(items, step + 1) == "OR":
        return False
    return measured or more


def _first_verb(items, said, cue: int, at: int) -> int:
    k = cue + 1
    while k < at and items[k].concept in ("FILLER", "HEDGE", "ALL", "I", "IT", "THIS", "ONLY", "TO") and said[k].split()[0] not in ("made", "put", "got", "used"):
        k += 1
    return k


def _is_acted_on(items, said, first: int, last: int, words: RunOn) -> bool:
    """Whether what stands here is the piece or a part of it, that can be stapled; where it only tells the place of another thing, it is not."""
    return any(items[k].concept in _OF_THE_PIECE and said[k] not in words.several or items[k].concept.startswith("K_") for k in range(first, last) if not (k > first and items[k - 1].concept in _WHERE) and not (k > first + 1 and items[k - 1].concept == "DET" and items[k - 2].concept in _WHERE))


def _verb_is_whole(items, said, start: int, cue: int, at: int, words: RunOn) -> bool:
    """ "couldn't reach in there", "didn't get any vanes in", "could've run it tighter but didn't": with its verb, or with one before it."""
    verb = _first_verb(items, said, cue, at)
    if verb >= at:
        return cue > start and items[cue - 1].concept == "BUT"
    first = said[verb].split()[0]
    if first in words.opinions or said[verb].split()[-1] in words.opinions:
        return _told(items, said, verb, at, words)
    if any(said[k].split()[0] in words.opinions for k in range(verb, min(verb + 2, at))):
        return _told(items, said, verb, at, words)
    if first in words.causes and cue > start and items[cue - 1].concept in _THINGS:  # "the rods never came"
        return True
    cause = next((k for k in range(verb, at) if said[k].split()[0] in words.causes and items[k - 1].concept not in ("DET", "MALE", "FEMALE")), None)
    if cause is None or said[at - 1].split()[-1] in words.fills or items[at - 1].concept == "IN_PLACE":
        return True
    if any(items[k].concept in (*_TOLD_OF, "TIGHT") or items[k].concept == "WORD" and (said[k].endswith("ed") or said[k] in words.better) for k in range(cause + 1, at)):  # "didn't get warmed up", "can't get it any tighter"
        return True
    other_thing = cause + 1 < at and not _is_acted_on(items, said, cause + 1, at, words)
    return other_thing and (said[cause] in words.senses or items[cause].concept in ("HAVE", "HAVING") and not any(items[k].concept == "WORD" and said[k] not in words.several for k in range(cause + 1, at)))


def _lacks_a_thing(items, said, start: int, cue: int, at: int, words: RunOn) -> bool:
    """ "no vanes", "has none", "nothing on it": not where it is the piece or a part of it that there is none of ("no seam stapled")."""
    if cue + 1 < at or items[cue].concept == "NO" or said[at] in words.it_is:
        return not _is_acted_on(items, said, cue + 1, at, words)
    return False


def _is_not_so(items, said, start: int, cue: int, at: int, words: RunOn) -> bool:
    """ "isn't much to look at", "there wasn't"."""
    if all(items[k].concept in _SMALL and said[k] not in words.adjectives for k in range(cue + 1, at)):
        return cue > start and said[cue - 1].split()[-1] in words.there
    if said[cue + 1].split()[0] in words.causes:  # "isn't going out stapled"
        return False
    return not _is_acted_on(items, said, cue + 1, at, words) and "NUM" not in {items[cue + 1].concept}


def _told(items, said, verb: int, at: int, words: RunOn) -> bool:
    """ "can't say I wiped it": what is denied was told with its own verb, and what stands behind it has nobody who did it."""
    return any(items[k].concept in _TOLD_OF and items[k - 1].concept in ("I", "IT", "BE", "FILLER") for k in range(verb + 1, at)) and said[at + 1 : at + 2] != ["it"]


def _has_its_verb(items, said, cue: int, at: int, words: RunOn) -> bool:
    """ "remind me to rub it", "if I'd had the time I'd trim it", "I'd be lying if I said I rubbed it"."""
    if items[cue].concept == "IF" and any(said[k].split()[0] in words.opinions for k in range(cue + 1, at)):
        return _told(items, said, cue, at, words)
    if items[cue].concept == "IF" and said[cue] not in words.would:
        return False
    if items[cue].concept == "PENDING" and cue and said[cue - 1] in words.this_one and said[cue + 1 : at] == ["it"]:
        return True  # "this one still needs it": the act that was told before
    verb = _first_verb(items, said, cue, at)
    return verb < at and (items[verb].concept in _BARE_VERBS or items[verb].concept in _ACTS and said[verb].startswith("rub "))
