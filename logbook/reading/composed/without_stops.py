"""Where the commas and stops would stand in a note that has none: "straight 4 12 by 10 stapled every two I left the tape off".

Ears often write no sign at all. One is put in the place of the blank before words that begin something new (an act told as done, somebody with what he
did, a size, a run, a side that moves) where what stands before them has all it needs. What is in the middle of saying something ("I", "not", "is", "the",
"with") governs what follows, and a number that counts things ("three sides") stays with them. The text keeps its length, so every place in it is the same.
"""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace

from logbook.languages.run_on import RunOn
from logbook.reading.composed.another_number import names_another
from logbook.reading.composed.begins_anew import apart, is_put_off, sign_before
from logbook.reading.composed.held_together import begin, held
from logbook.reading.composed.said_between import said_between
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.kinds import KIND_CONCEPTS
from logbook.reading.words.tokens import Token

_SAYING = 3  # words: so long a filler is said by itself
_FEWEST = 3  # tokens; below that there is nothing to part
_SPARSE = 30  # tokens for each sign: where there are more signs, the note was written with them
_BREATH = 7  # tokens: who writes small and sets stops alone set none within so many
_SIGNS = frozenset(",.;:?!/–—|+")

_AMOUNTS = frozenset("NUM LEN FRAC DEG CFM FT2 STATIC INWG APART WIDE LONG HIGH".split())
_ACTS = frozenset(("STAPLED", "TAPED", "RUBBED"))
_DONE = frozenset("STAPLED TAPED RUBBED WIPED TRIMMED SEATED REPAIRED PREHEATED BENT MARK181 SEALED".split())
_WHOLE = _AMOUNTS | _DONE | frozenset("BOARD PLACE_NOUN FEMALE MALE INSIDE OUTSIDE YET TRADE_NOISE DAY SAME_SIZE IN_PLACE LEVEL TIGHT SERVICE METHOD CLOSURE TIE_RODS".split())
_BEFORE_ACTS = _WHOLE | frozenset("VANES BRANCH_WORD IN OUT ROOM C_MASTIC FITTING TAPE GAP BACK AROUND END MOVE THROAT BUILDING SHOWS GROOVE IT STAPLE STAPLES LETTER SCRIM TABS CLINCHED DAMAGE NO LAST_ONE THIS WORD SIDE K_STRAIGHT FILLER".split())
_BEFORE_PEOPLE = _WHOLE | frozenset("STAPLES VANES ALL_THAT OUT BUILDING LAST_ONE DAMAGE IN BACK IT LAID NO JOINT GAP FITTING TAPE NOT".split())
_GOVERNS = frozenset(
    "AND BUT OR IF WHEN THRU SAYS THINK HEDGE QUESTION DET ON IN OF WITH TO FROM BY I OVER THROUGH AROUND NOT NO FILLER UP DOWN ANOTHER FIX HAVE BE WILL PENDING EXCEPT ONLY BOTH ALL EVERY NUMBER OTHER REMIND FORGOT COMMA STOP QUERY".split()
)
_KINDS = frozenset(KIND_CONCEPTS)
_TAKES_A_SIZE = (_GOVERNS - {"FILLER", "IN", "DOWN", "UP"}) | frozenset("INLET BRANCH_WORD GOING_TO SIZE_WORD MOVE OPENING LEG K_BRANCH".split())
_TICKED = (_DONE - {"MARK181", "SEALED"}) | frozenset("VANES TAPE STAPLES TABS FLAP SCRIM SHOWS GAP C_MASTIC RUB CLOSURE SIZE_WORD".split())
_COUNTED = frozenset("STAPLES TABS VANES SCREWS SIDE SIDE_WORD BOTH ALL JOINT TAPE WASHERS CLINCHED".split()) | _KINDS
_OF_A_LENGTH = frozenset("STAPLES WASHERS TABS TAPE LEG SCREWS K_COLLAR DAMAGE BOARD THROAT".split())  # "two inch tape"
_NUMBERED = frozenset("BY EVERY RUN BACK OVER IN TO LETTER LEN".split()) | _KINDS  # a number behind these counts nothing that follows
_REACHES_ON = frozenset("IF OTHER SAYS DRAWING PENDING WILL FORGOT REMIND QUESTION NOT NOT_DONE THINK".split())  # over commas, but over no stop
_WANTS = frozenset("PENDING WILL NEED THINK SAYS HAVING IF TO".split())
_NEW = "."
_MORE = ","
_SIGN_CONCEPTS = {_NEW: "STOP", _MORE: "COMMA", ":": "COMMA", "?": "QUERY"}


def _rows(*rows: tuple[str, frozenset[str], str]) -> dict[str, tuple[frozenset[str], str]]:
    return {concept: (before, sign) for concepts, before, sign in rows for concept in concepts.split()}


# what begins something, behind what it does, and the sign
_BEGINS = _rows(
    ("STAPLED", _BEFORE_ACTS, _MORE),
    ("TAPED", _BEFORE_ACTS - {"MARK181", "IT"}, _MORE),
    ("RUBBED", _BEFORE_ACTS | {"ON", "COUNTED", "SIDE_WORD", "JOINT", "FLAP"}, _MORE),
    ("WIPED TRIMMED PREHEATED SEATED REPAIRED", _WHOLE | {"DAMAGE"}, _MORE),
    ("RUN", _WHOLE | _KINDS | {"FILLER", "IT"}, _MORE),
    ("NUM", frozenset("NUM LEN DEG BOARD VANES SERVICE PLACE_NOUN RUBBED YET MALE FEMALE INSIDE OUTSIDE IN_PLACE SEATED TRADE_NOISE DAMAGE C_MASTIC END FLAP APART SAME_SIZE PREHEATED LATER DAY SIDE_WORD".split()), _MORE),
    ("LEN", frozenset("NUM LEN LONG SERVICE APART HIGH WIDE RUBBED BOARD TAPED SHIFT OUT MARK181".split()), _MORE),
    ("SIDE", frozenset(("NUM", "LEN", "SIDE")), _MORE),
    ("EVERY", frozenset(("NUM",)), _MORE),
    ("VANES", _AMOUNTS | {"FITTING"}, _MORE),
    ("C_MASTIC", _AMOUNTS | {"WASHERS", "BENT", "STAPLED", "CLINCHED", "UNDONE"}, _MORE),
    ("STAPLES", _WHOLE | {"IN"}, _MORE),
    ("TAPE", _AMOUNTS | {"TAPED", "STAPLES", "STAPLED"}, _MORE),
    ("GROOVE CLINCHED", _AMOUNTS | _DONE | {"SIDE", "LEVEL", "LEG"}, _MORE),
    ("TABS SCREWS WASHERS ALL BOTH AIR FT2 CFM SCRIM LAID CUT_TO OFFSETS BRANCH_WORD INLET DEG JOINT SERVICE NUMBER TIED SEALED", _WHOLE | {"FLAP", "ROUND", "OUT", "FITTING"}, _MORE),
    ("DAMAGE LEG LEAVES PANEL THROAT LEVEL CUT_LENGTH OPENING", _WHOLE, _MORE),
    ("MARK181", _WHOLE - {"LEN", "TAPED", "WIDE", "CLOSURE"}, _MORE),
    ("NO", _WHOLE | {"VANES", "FITTING", "DAMAGE", "STAPLES", "TAPE", "OUT"}, _MORE),
    ("FIX ANOTHER", _WHOLE | {"VANES", "FIX"}, _MORE),
    ("I OTHER DRAWING WILL", _BEFORE_PEOPLE, _NEW),
    ("DET", _WHOLE | {"SIDE_WORD", "JOINT", "IT", "TAPE"}, _NEW),
    ("IT", _WHOLE | {"VANES", "GROOVE", "JOINT", "STAPLES"}, _NEW),
    (" ".join(KIND_CONCEPTS), _WHOLE | {"ROOM", "FITTING", "IT", "K_REPAIR"}, _NEW),
)


def has_none(found: tuple[Token, ...]) -> bool:
    """Whether a note is long enough to need signs and has (almost) none."""
    signs = [at for at, token in enumerate(found) if token.text in _SIGNS]
    if len(found) < _FEWEST or len(signs) * _SPARSE <= len(found):
        return len(found) >= _FEWEST
    if not found[0].text[0].islower() or any(found[at].text != "." for at in signs):
        return False
    return max(last - first for first, last in zip([-1, *signs], [*signs, len(found)])) > _BREATH  # "straight 9 stapled taped rubbed no my arm gave out. Windy up here."


def with_signs(text: str, items: tuple[Item, ...], words: RunOn) -> tuple[str, tuple[Item, ...]]:
    """The text with a sign in the place of some blanks, and its items with those signs among them."""
    items = apart(text, items, words)
    said = [text[item.start : item.end].lower().replace("’", "'") for item in items]
    signs: dict[int, str] = {}
    aside = said_between(items, said, words)
    reaches = bool(items) and items[0].concept in _REACHES_ON
    for at in range(1, len(items)):
        sign = aside[at] if at in aside else None if reaches and items[at].concept in _ACTS and not _is_past_others(items, at, signs) and not is_put_off(items, said, at, words) else _sign(items, said, at, signs, words)
        if sign is not None and text[items[at].start - 1].isspace():
            if sign == "?" and signs.get(at - 1) == _MORE:
                signs[at - 1] = _NEW  # "stapled | taped? sure when pigs fly": what was asked is no part of what was told
            signs[at] = _NEW if reaches and items[at].concept in ("NUM", "RUN") else _MORE if sign == _NEW and said[begin(items, at - 1, signs)].split()[0] in words.opening else sign
        reaches = items[at].concept in _REACHES_ON or reaches and signs.get(at) != _NEW
    letters, made = list(text), []
    for at, item in enumerate(items):
        if at in signs:
            letters[item.start - 1] = signs[at]
            made.append(Item(_SIGN_CONCEPTS[signs[at]], "", item.start - 1, item.start, item.first, item.first))
        made.append(item)
    return "".join(letters), tuple(made)


def _measured_there(items, at: int, signs) -> bool:
    """ "Except on the bottom it's three", "but at the corner it's four": the place that was set apart, and how much it is there."""
    behind = at + 2 if concept_at(items, at + 1) in ("HEDGE", "FILLER", "EVERY") else at + 1
    if concept_at(items, behind) not in ("NUM", "LEN", "FRAC"):
        return False
    for k in range(at - 1, max(-1, at - _FAR), -1):
        if items[k].concept in _SETS_APART:
            return any(item.concept in _SPACED for item in items[:k])
        if k + 1 in signs or items[k].concept not in _OF_A_PLACE:
            return False
    return False


_FAR = 7  # items of a place
_SPACED = frozenset("STAPLED STAPLES STAPLE SCREWS".split())
_SETS_APART = ("EXCEPT", "ALL_BUT", "BUT")
_OF_A_PLACE = frozenset("ON IN DOWN UP UNDER OVER PLACE_NOUN DET SIDE SIDE_WORD JOINT END BACK OF BY WORD FILLER THROAT K_COLLAR ONE_SIDE OTHER_SIDE OTHER FLAP FOR".split())


def _sign(items, said, at: int, signs, words: RunOn) -> str | None:
    """The sign before this item, or none."""
    before, concept, first = items[at - 1].concept, items[at].concept, said[at].split()[0]
    if len(said[at - 1].split()) > 1 and said[at - 1].split()[-1] in words.reaching:
        return None  # "flat on | the left"
    if concept == "IT" and concept_at(items, at + 1) == "BE" and at + 2 < len(items) and said[at + 2] in words.now or concept in ("RUN", "NUM") and _tells_where(items, at):
        return None
    if before == "NUM" and _is_turned_to(items, at, signs):
        return None
    if concept == "NUM" and names_another(items, at):
        return _NEW
    if before == "NUM" and at - 1 in signs and names_another(items, at - 1) and concept in ("DET", "BE", "IT"):
        return None  # "thirty two | the tape is on"
    if concept == "BE" and _measured_there(items, at, signs):
        return None
    anew = sign_before(items, said, at, signs, words)
    if anew is not None:
        return anew
    if held(items, said, at, signs, words):
        return None
    if before == "NOT" and concept_at(items, at - 2) == "OR" and (said[at] in words.subjects or concept in ("I", "IT")):
        return _NEW  # "I don't remember if I rubbed it or not | it's stapled"
    if concept == "DET" and concept_at(items, at + 1) in ("DRAWING", "OTHER") and before in _DONE:
        return _NEW  # "rubbed | the drawing doesn't show vanes"
    if concept == "FILLER" and first in words.nots | words.lacking | words.ticks and len(said[at].split()) >= _SAYING and before in _ACTS:
        return _NEW  # "rubbed | not one bubble in the tape"
    if before == "SAME_THING" and concept == "NUM" or concept == "SAME_THING" and before == "NUM" and concept_at(items, at - 2) in ("ON", "NUMBER", *_KINDS):
        return _MORE  # "but on 89 | same thing | ninety"
    if said[at] in words.subjects or first in words.subjects:
        return _NEW if before not in _GOVERNS and said[at - 1].split()[-1] not in words.binders else None
    if said[at] in words.names and concept_at(items, at + 1) in _DONE and before in _BEFORE_PEOPLE:
        return _NEW  # "stapled every two | pete taped it"
    if concept in ("HAVE", "FILLER") and first in words.people:
        return _NEW if before in _BEFORE_PEOPLE else None
    if said[at] in words.breaths and not _is_tick(items, said, at, words):
        anew = at + 1 < len(items) and (said[at + 1] in words.names or items[at + 1].concept == "OTHER")  # "rubbed | yeah frank put his knee through it"
        return (_NEW if anew else _MORE) if before in _WHOLE else None
    if concept == "NOT" and before == "FIX":
        return _MORE
    if concept == "NOT" and before == "FILLER" and said[at - 1] in words.closers | words.now and said[at] in words.nots and concept_at(items, at + 1) in _DONE:
        return _NEW if "BE" not in (concept_at(items, at - 2), concept_at(items, at - 3)) else None  # "put his knee through it just now | not fixed"
    if concept == "NOT":
        return _MORE if _denies_anew(items, said, at, words) else None
    if concept == "NUM" and concept_at(items, at + 1) == "BY" and before not in _TAKES_A_SIZE:
        return None if said[at - 1] in words.so or said[at - 1].split()[-1] in words.binders or said[at - 1] in words.adverbs else _MORE
    if concept in _KINDS and concept_at(items, at + 1) in ("NUM", "NUMBER", "LETTER") and before in ("WORD", "STAPLES", "VANES", "NO", "FIX") and said[at - 1].split()[-1] not in words.takers | words.binders | words.adverbs:
        return _NEW
    if concept == "I" and before == "WORD" and said[at - 1] in words.closers:
        return _NEW
    if concept == "NO" and _is_tick(items, said, at, words):
        return None
    if _is_tick(items, said, at - 1, words):
        return _MORE
    if concept == "MOVE" and before == "NUM" and concept_at(items, at - 2) in ("BACK", "BY", "EVERY"):
        return _MORE
    if concept in _ACTS and concept_at(items, at + 1) == "EVERY" and said[at] in words.bare and before not in _GOVERNS and before not in ("WORD", "SIDE_WORD", "JOINT", "FLAP"):
        return _NEW if _is_past_others(items, at, signs) else _MORE
    if concept in _ACTS and before == "IN_PLACE" and concept_at(items, at - 2) == "NO":
        return _NEW  # "so there's none in it | stapled it every two"
    if before == "NOT" and _is_short_for_all(items, said, at, words):
        return _NEW
    if concept == "OVER" and before == "NUM" and concept_at(items, at - 2) == "BY":
        return _MORE
    if concept not in _BEGINS or before not in _BEGINS[concept][0] or first in words.links:
        return None
    if before == "FILLER" and said[at - 1] not in words.closers | words.did and len(said[at - 1].split()) < _SAYING or before == "WORD" and said[at - 1] in words.adverbs or _belongs(items, said, at, before, concept, signs, words):
        return None
    return _MORE if concept == "WILL" and said[at] in words.gonna else _BEGINS[concept][1]


def _tells_where(items, at: int) -> bool:
    """Whether the piece right before is the place of something: "a tear on straight 9 | run 2"."""
    k = at - 1
    while k > 0 and items[k].concept in ("NUM", "RUN", "NUMBER"):
        k -= 1
    return k < at - 1 and items[k].concept in _KINDS and concept_at(items, k - 1) in ("ON", "IN", "OF", "FROM") and concept_at(items, k - 2) in ("TAPE", "STAPLES", "VANES", "TABS", "DAMAGE", "GAP", "JOINT", "SCREWS")


def _is_past_others(items, at: int, signs) -> bool:
    """Whether somebody else has done something in this sentence, and no act of the list: "they hung a coil on it | stapled every two"."""
    start = next((k for k in range(at - 1, 0, -1) if signs.get(k) == _NEW), 0)
    return items[start].concept == "OTHER" and not any(item.concept in _ACTS or item.concept in _WANTS for item in items[start:at])


def _goes_on(items, at: int) -> bool:
    """Whether an act is one of a list as it tells what was done: measured, with another behind it, or the last word."""
    return at + 1 == len(items) or items[at + 1].concept in (*_ACTS, *_DONE, "EVERY", "ON", "AND", "NUM", "LEN", "THROUGH", "WITH")


def _is_tick(items, said, at: int, words: RunOn) -> bool:
    """ "wiped no stapled two", "vanes no staples yes": the word answers what stands before it, and the next thing begins behind it."""
    if at < 1 or said[at] not in words.ticks or items[at - 1].concept not in _TICKED or at > 1 and items[at - 2].concept in _GOVERNS and items[at - 2].concept not in ("COMMA", "STOP", "QUERY") and not _is_tick(items, said, at - 2, words):
        return False
    if at + 1 == len(items):
        return True
    after = items[at + 1].concept
    if after in ("DET", "I", "IT", "RUN") or after in _DONE and (after in _ACTS and said[at + 1] not in words.doings or said[at + 1].endswith("ed")) or after == "NUM" and concept_at(items, at + 2) == "BY" or after in _KINDS or said[at + 1] in words.subjects:
        return True
    k = at + 1
    while k + 1 < len(items) and items[k].concept in _TICKED and said[k + 1] in words.ticks:
        k += 2
    return k > at + 1 and not (k < len(items) and items[k].concept in _TICKED)  # "stapled no mastic no tape": a list of what there is none of


def _denies_anew(items, said, at: int, words: RunOn) -> bool:
    """ "every two not taped", "12 by 10 didn't tape it": not of the piece right before it ("straight 4 isn't taped")."""
    if said[at] in words.auxiliaries and concept_at(items, at + 1) in ("RUB", "STAPLE", "TAPE_IT", "TAPE", "TRIM", "WIPE") and _is_done_to_one(items, said, at, words):
        return True
    if items[at - 1].concept == "NUM" and not (at > 1 and items[at - 2].concept in ("BY", "EVERY", "BACK")):
        return False
    if items[at - 1].concept == "FILLER" and len(said[at - 1].split()) >= _SAYING and said[at] in words.auxiliaries:
        return items[at - 2].concept in (*_WHOLE, "IT")  # "when I taped it believe it or not | didn't preheat it"
    return items[at - 1].concept in _WHOLE and (said[at] in words.wholes or said[at] in words.auxiliaries or said[at] in words.plain_not or items[at - 1].concept in ("NUM", "LEN") and said[at] in words.copulas)


def _is_done_to_one(items, said, at: int, words: RunOn) -> bool:
    """ "rubbed the first one | didn't rub the second", "taped 4 | didn't tape 5": the one before is what the act before it was done to."""
    k = at - 2 if said[at - 1] in words.one and concept_at(items, at - 2) in ("WORD", "ANOTHER") else at - 1
    if k == at - 1 and items[k].concept not in ("NUM", "WORD"):
        return False
    while k > 0 and items[k].concept in ("WORD", "NUM", "DET", "NUMBER", "ANOTHER", *_KINDS) and at - k < 5:
        k -= 1
    return items[k].concept in _ACTS


def _is_short_for_all(items, said, at: int, words: RunOn) -> bool:
    """ "I said I rubbed it I didn't | taped", "you'd swear it was rubbed it wasn't | 12 by 10": the denial is all that its sentence says."""
    who = concept_at(items, at - 2)
    if who not in ("I", "IT", "OTHER", "BUT") or said[at - 1] not in words.auxiliaries and said[at - 1] not in words.copulas:
        return False
    concept = items[at].concept
    if concept in _KINDS or concept == "RUN" or concept == "NUM" and concept_at(items, at + 1) == "BY":
        return said[at - 1] not in words.plain_not
    asserted = concept_at(items, at - 3) in _DONE and concept_at(items, at - 4) in ("BE", "IF", "I", "THINK")
    return concept in _ACTS and said[at].split()[0] in words.bare and (said[at - 1] in words.auxiliaries or asserted and said[at - 1] not in words.plain_not)


def _is_turned_to(items, at: int, signs) -> bool:
    """ "…, and on the one twenty seven | I forgot the staples": the piece that what comes is told of, at the head of its clause."""
    if items[at].concept not in ("I", "DET", "IT", "OTHER", "WILL"):
        return False
    k = at - 2
    while k > 0 and items[k].concept in ("DET", "NUMBER", "FITTING", "NUM", *_KINDS):
        k -= 1
    return items[k].concept == "ON" and (k == 0 or items[k - 1].concept in ("AND", "BUT", "COMMA", "STOP") or k in signs)


def _belongs(items, said, at: int, before: str, concept: str, signs, words: RunOn) -> bool:
    """Whether it belongs to what stands right before it: what is counted, measured so, or done to it."""
    earlier = concept_at(items, at - 2)
    if before == "NUM" and concept in _COUNTED and said[at - 1] not in words.right_angles and earlier not in _NUMBERED:
        return True
    if before == "NUM" and concept == "NUM" and concept_at(items, at + 1) != "BY" and said[at] not in words.right_angles and earlier not in ("BY", "RUN", "EVERY", "BACK", "OVER", "IN"):
        return True  # "straight one twelve"
    if before == "NOT" and (earlier not in ("I", "IT", "OTHER") or said[at - 1] not in words.auxiliaries | words.copulas) or before == "FRAC" and concept == "DET" or before == "IT" and (earlier in ("BUT", "AND") or at - 1 in signs):
        return True  # "can't say I did", "half the tabs", "that one I left"
    if before == "STATIC" and earlier not in _AMOUNTS:
        return True
    if before in ("TAPE", "STAPLES", "VANES") and at - 1 in signs and concept in ("I", "WILL"):
        return True  # "tape I'll do after lunch"
    if before in ("LEN", "FRAC") and concept in _OF_A_LENGTH or before in ("STAPLED", "TAPED", "RUBBED") and concept in ("ALL", "BOTH") or before == "SEALED" and concept in ("IT", "MARK181"):
        return True
    if concept in _KINDS and before in _AMOUNTS and earlier in ("BY", "NUMBER") and not any(item.concept in _KINDS for item in items[:at]):
        return True  # "the twelve by ten straight"
    if concept in _ACTS and (words.bare and said[at] not in words.bare and not (before == "MARK181" and said[at].split()[0] in words.bare) or before in ("WORD", "FILLER", "IT") and not _goes_on(items, at)):
        return True
    if concept in ("WIPED", "TRIMMED", "PREHEATED", "REPAIRED", "SEATED") and before in ("WORD", "FILLER"):
        return True
    if concept == "NO" and earlier == "NO":
        return True  # "no staples no tape says the helper": one list
    if concept == "DET" and said[at] in words.some or concept == "IT" and said[at] in words.several or concept in ("I", "WILL") and earlier == "DET" and before not in _AMOUNTS or concept == "IT" and before == "NUM" and earlier == "HEDGE":
        return True  # "the tape I had"
    if concept in ("OTHER", "DRAWING", "WILL") and before == "NUM" and earlier in _KINDS:
        return concept_at(items, at + 1) not in _ACTS  # "straight 4 boss wants it stapled", and "straight 4 | my helper stapled it"
    has_object = concept in _KINDS or concept in ("DET", "IT")
    return has_object and before in _DONE and before != "MARK181" and not (earlier in ("AND", *_ACTS) or at - 1 in signs and "EVERY" in (concept_at(items, at - 3), concept_at(items, at - 4)))


def as_heard(told, text: str):
    """What was read of the text with signs, with the words as they stand in the text without."""
    if isinstance(told, tuple):
        return tuple(as_heard(one, text) for one in told)
    if not is_dataclass(told):
        return told
    changes = {one.name: as_heard(getattr(told, one.name), text) for one in fields(told) if isinstance(getattr(told, one.name), tuple) or is_dataclass(getattr(told, one.name))}
    if getattr(told, "start", None) is not None:
        changes["words" if hasattr(told, "words") else "text"] = text[told.start : told.end]
    return replace(told, **changes)
