"""Labels before a value: "MARK: 15", "the tag reads R-3-07", "mark's sixty-six", "L 40", "in: 18x12"; and what stands for a whole label ("Tp.", "Rb.").

The words between a label and its value say nothing: without them "tag says fifteen" is "tag fifteen".
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from logbook.languages.language import Forms
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.measures import Measure

_LABELS = (
    "NUMBER", "FITTING", "RUN", "LENGTH", "LONG", "SIZE_WORD", "INLET", "OUTLET", "BRANCH_WORD", "STAPLES", "STAPLED", "TAPE", "TAPED", "SEALED", "CLOSING", "BOARD", "STATIC", "THROAT",
    "K_TEE", "K_ELBOW", "K_STRAIGHT", "K_TRANSITION", "K_OFFSET", "K_WYE", "K_BRANCH", "K_COLLAR", "K_END_CAP", "K_PLENUM", "ROUND", "EVERY", "APART", "LEG", "IN", "OUT", "OFFSETS", "AIRFLOW", "GAP", "WIDE", "HIGH", "WASHERS", "SCREWS", "BACK", "SLOPE", "PIECE_COUNT",
)  # fmt: skip
_LOOKED_AT = frozenset(("AND", "GENERIC", "BRANCH_WORD", "NUMBER", "WORD", "NUM", "COMMA", "SIGN", "QUESTION", "LETTER", "STAPLE", "RUB", "TAPE", "FROM", "MOVE_DOWN", "COUNTED", "K_COLLAR", "FITTING", "LAID", "TAKES"))
_VALUES = ("NUM", "LEN", "FRAC", "MARKED", "LETTER", "MARK181", "CLOSURE", "C_MASTIC", "CFM", "INWG", "DEG", "TEMP_F", "FT2")
_COLONS = (":", "=")
# labels that a comma does for in a sentence of their own: "Run, five.", where "Straight, five." and "Taped, three." are no labels
_IN_A_SENTENCE = frozenset("RUN LENGTH STAPLES LEG BOARD STATIC THROAT ROUND EVERY APART OFFSETS AIRFLOW WIDE HIGH BACK PIECE_COUNT NUMBER".split())
_NAMES = ("NUM", "MARKED", "LETTER")
_OPENS = ("", "STOP", "QUERY", "COMMA")
_BEHIND_A_NAME = ("COMMA", "STOP", "NUM", "RUN", "BE", "AND", "THROUGH", "THRU", "TO", "ON", "INLET", "LEN")
_BEHIND_A_NUMBER = ("COMMA", "STOP", "QUERY", "", "ON", "RUN", "BE", "HAVE", "STAPLED", "TAPED", "HUNG", "NOT", "NO", "SIZE", "WITH", "TIED", "SERVICE", "SCREWS", "WASHERS", "INSIDE", "FILLER", "SEALED", "C_MASTIC")
_MARKS_NOTHING = ("BY", "SIDE_WORD", "WIDE", "HIGH", "APART", "COUNTED", "LONG")


def labelled(items: tuple[Item, ...], text: str, forms: Forms) -> tuple[Item, ...]:
    """The items without what only joins a label to its value."""
    items = _without_counting(items)
    done: list[Item] = []
    at = 0
    while at < len(items):
        item = items[at]
        if item.concept not in _LOOKED_AT and not (item.concept == "K_STRAIGHT" and item.read_as is not None):
            done.append(item)
            at += 1
            continue
        if item.concept == "AND" and (shape := forms.lettered.get(text[item.start : item.end])) is not None and concept_at(done, len(done) - 1) == "DET" and concept_at(items, at + 1) in ("NUMBER", "NUM"):
            done.append(_meant(item, shape))  # "la Y número dos"
            at += 1
            continue
        joint = _joint(items, at, text, forms)
        if joint is not None:
            done.append(replace(item, concept="NUMBER", value=None))
            at = joint
            continue
        pieces = _pieces(items, at, text, forms)
        if pieces is not None:
            done += pieces
            at += 3
            continue
        if (_is_colon(item, text) and concept_at(done, len(done) - 1) in _LABELS and concept_at(items, at + 1) in _VALUES) or _in_a_sentence(items, at):
            if done[-1].concept in ("IN", "OUT"):
                done[-1] = replace(done[-1], concept="INLET" if done[-1].concept == "IN" else "OUTLET", value=None)
            at += 1
            continue
        asked = _asked(items, at, text, forms) if item.concept == "QUESTION" else None
        if asked is not None:
            done.append(replace(item, concept=asked[0], value=None))
            at = asked[1]
            continue
        if _is_colon(item, text) and any(one.concept == "PENDING" for one in done[-3:]):
            at += 1  # "left to do: staples, tape"
            continue
        if item.concept == "QUESTION" and at + 1 < len(items) and _is_colon(items[at + 1], text) and concept_at(items, at + 2).startswith("K_"):
            at += 2  # "What: transition"
            continue
        turn = _turns(items, at, text, forms)
        if turn is not None:
            done += turn[0]
            at = turn[1]
            continue
        done.append(_short(items, at, text, forms))
        at += 1
    return tuple(done)


def _without_counting(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """Without the "One, … Two, … Three, …" by which what was done to a piece, named before, is counted off."""
    counted: list[int] = []
    if not any(item.concept == "NUM" and concept_at(items, at + 1) == "COMMA" and item.value.value == 1 for at, item in enumerate(items)):
        return items
    named = False
    for at, item in enumerate(items):
        named = named or item.concept in ("NUM", "MARKED") and (concept_at(items, at - 1).startswith("K_") or concept_at(items, at - 1) in ("FITTING", "NUMBER")) and concept_at(items, at - 2) != "STOP"
        opens = concept_at(items, at - (2 if concept_at(items, at - 1) == "NUMBER" else 1)) == "STOP"
        if named and item.concept == "NUM" and opens and concept_at(items, at + 1) == "COMMA" and item.value.value == len(counted) + 1 and not concept_at(items, at + 2).startswith("K_"):
            counted.append(at)
    if len(counted) < 2:
        return items
    dropped = {k for at in counted for k in (at - 1, at, at + 1) if k != at - 1 or items[k].concept == "NUMBER"}
    return tuple(item for at, item in enumerate(items) if at not in dropped)


def _is_colon(item: Item, text: str) -> bool:
    return text[item.start : item.end] in _COLONS


def _asked(items, at: int, text: str, forms: Forms) -> tuple[str, int] | None:
    """ "Which one? Thirty-three.", "What size, it's ten by ten": what he asks himself is the label of what he answers, and where that begins."""
    sign = next((k for k in (at + 1, at + 2, at + 3) if concept_at(items, k) in ("QUERY", "COMMA")), None)
    if sign is None or concept_at(items, at - 1) not in _OPENS:
        return None
    said = text[items[at].start : items[sign - 1].end].lower().replace("’", "'")
    begins = sign + 1
    while concept_at(items, begins) in ("BE", "IT", "THIS", "FILLER", "DET", "COMMA", "NUMBER") and begins - sign < 5:
        begins += 1
    for concept, words in forms.asked:
        sized = concept == "SIZE_WORD" and concept_at(items, begins) in ("NUM", "LEN") and concept_at(items, begins + 1) in ("BY", "LEN")
        marks = concept != "SIZE_WORD" and concept_at(items, begins) in _NAMES and concept_at(items, begins + 1) in ("STOP", "COMMA", "")
        if said in words and (sized or marks):
            return concept, begins
    return None


def _in_a_sentence(items, at: int) -> bool:
    """The comma of "Run, five." and of "Staple leg, three eighths.": nothing stands before the label nor behind the value."""
    if items[at].concept != "COMMA" or concept_at(items, at - 1) not in _IN_A_SENTENCE or concept_at(items, at + 1) not in _VALUES or concept_at(items, at + 2) not in ("STOP", ""):
        return False
    return concept_at(items, at - 2) in ("STOP", "") or concept_at(items, at - 3) in ("STOP", "") and concept_at(items, at - 2) in _LABELS_OF


_LABELS_OF = ("STAPLE", "STAPLES", "STAPLED", "TAPE", "TABS", "K_HANGER", "DET", "K_COLLAR", "THROAT", "BOARD", "TIE_RODS", "RUN")


def _pieces(items, at: int, text: str, forms: Forms) -> tuple[Item, ...] | None:
    """ "Pieces, three": how many an elbow has, where "piece, three" is a piece."""
    item, value = items[at], items[at + 2] if at + 2 < len(items) else None
    if item.concept != "FITTING" or text[item.start : item.end].lower() not in forms.pieces or concept_at(items, at + 1) != "COMMA" or value is None or value.concept != "NUM" or concept_at(items, at + 3) not in ("STOP", "COMMA", ""):
        return None
    return (value, replace(item, concept="PIECE_COUNT", value=None)) if concept_at(items, at - 1) in ("STOP", "") and 2 <= value.value.value <= 5 else None
def _joint(items, at: int, text: str, forms: Forms) -> int | None:
    """Where the number begins behind "the tag reads", "mark's", "its number is"; None where no label tells one."""
    if items[at].concept in ("NUM", "COMMA"):
        return None
    said = text[items[at].start : items[at].end].lower().replace("’", "'")
    word, _, rest = said.partition("'")
    if word not in forms.tags or (rest and rest != "s"):
        return None
    step = at + 1
    while step < len(items) and step - at < 6 and text[items[step].start : items[step].end].lower().replace("’", "'") in forms.tells:
        step += 1
    told = step > at + 1 or bool(rest)
    if not told or concept_at(items, step) not in _NAMES or concept_at(items, step + 1) in _MARKS_NOTHING or concept_at(items, step) == concept_at(items, step + 1) == "NUM":
        return None
    return step


def _turns(items, at: int, text: str, forms: Forms) -> tuple[tuple[Item, Item], int] | None:
    """ "Two nineties, seven and eight": elbows, and how far they turn."""
    if items[at].concept == "NUM" and (items[at].value.value not in (90, 45, 40) or concept_at(items, at + 1) not in ("WORD", "LETTER")):
        return None
    for end in (at + 2, at + 1):
        if end > len(items) or items[at].concept not in ("NUM", "WORD"):
            continue
        value = forms.turns.get(text[items[at].start : items[end - 1].end].lower().replace("’", "'"))
        if value is not None:
            item = replace(items[at], end=items[end - 1].end, last=items[end - 1].last)
            number = Measure("NUM", Fraction(value), None, 0, True, Fraction(value))
            return (replace(item, concept="NUM", value=number), replace(item, concept="K_ELBOW", value="elbow")), end
    return None


def _short(items, at: int, text: str, forms: Forms) -> Item:
    """ "Tp. Rb.": a thumb's word that is a sentence of its own, or stands before its measure."""
    item = items[at]
    said = text[item.start : item.end].lower()
    if item.concept == "K_STRAIGHT" and item.read_as is not None and len(said) == 2 and concept_at(items, at + 1) == "NUM" and items[at + 1].value.value <= 12 and any(one.concept.startswith("K_") for one in items[:at]):
        return replace(item, concept="STAPLED", value=None)  # "elb 16 / 12x10 / st 2"
    if item.concept not in ("WORD", "LETTER", "STAPLE", "RUB", "TAPE", "FROM", "MOVE_DOWN", "COUNTED", "K_COLLAR", "GENERIC", "BRANCH_WORD", "TAKES"):
        return item
    before, ahead = concept_at(items, at - 1), concept_at(items, at + 1)
    for concept, words in forms.alone:
        if said in words and at and (before in _OPENS or concept == "SAME_THING" and before == "NUM") and ahead in ("STOP", "COMMA", ""):
            return _meant(item, concept)
    for concept, words in forms.numbered:
        if said in words and (ahead == "MARKED" or (ahead, concept_at(items, at + 2)) == ("LETTER", "NUM") or ahead == "NUMBER" or ahead == "NUM" and concept_at(items, at + 2) in _BEHIND_A_NUMBER) and before not in ("NUM", "WORD"):
            return _meant(item, concept)
    for concept, words in forms.everyday:
        told = at + 1 if ahead == "NUMBER" else at
        if said in words and concept_at(items, told + 1) in ("NUM", "MARKED") and concept_at(items, told + 2) not in ("BY", "NUM", "OF"):
            return _meant(item, concept)
    for concept, words in forms.first:
        if said in words and (before in ("", "STOP") or before == "COMMA" and _is_colon(items[at - 1], text) or before == "DET" and text[items[at - 1].start : items[at - 1].end].lower() in forms.before_lettered) and ahead in ("NUM", "MARKED") and concept_at(items, at + 2) in _BEHIND_A_NAME and concept_at(items, at + 3) not in ("BACK", "SIDE", "OVER", "IN"):
            return _meant(item, concept)
    past = concept_at(items, at + 2) if ahead == "ON" or ahead in ("COMMA", "SIGN") and at + 1 < len(items) and _is_colon(items[at + 1], text) else ahead
    for concept, words in forms.before_measure:
        if said in words and (before in _OPENS or before in ("SIZE", "NUM", "LEN", "RATIO", "TAPE", "CLOSURE", "MARK181")) and (past in ("NUM", "LEN", "FRAC", "EVERY") or concept == "BOARD" and before == "LEN"):
            return _meant(item, concept)
    return item


def _meant(item: Item, concept: str) -> Item:
    return replace(item, concept=concept, value=concept[2:].lower() if concept.startswith("K_") else None)
