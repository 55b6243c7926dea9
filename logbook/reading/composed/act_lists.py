"""Work told in nouns: "Staples, tape, rub. Done.", "vanes, staples at two, 181A-P": a list of acts is what was done, where nothing around it asks for them."""

from __future__ import annotations

from dataclasses import replace

from logbook.reading.words.items import Item

_DONE = {"STAPLES": "STAPLED", "STAPLE": "STAPLED", "TAPE": "TAPED", "RUB": "RUBBED"}
_ACTS = (*_DONE, "STAPLED", "TAPED", "RUBBED", "VANES", "MARK181", "CLOSURE", "C_MASTIC", "TRIMMED", "WIPED")
_SMALL = ("DET", "FILLER", "ALL", "HEDGE", "ON", "EVERY", "NUM", "LEN", "FRAC", "APART", "OF", "AROUND", "LEG", "EACH", "SIDE_WORD", "WIDE", "ANOTHER", "IN", "IN_PLACE", "IT", "DOWN", "SIDES_ALL", "ONLY")
_BY_ITS_NAME = ({"TAPE", "MARK181"}, {"TAPE", "CLOSURE"})  # "tape 181A-P, and rub"
_ENDS = ("STOP", "QUERY")
# what makes a list one of things to get, to do or to ask for
_ASKED_FOR = (
    "PENDING", "NEED", "NO", "NOT_DONE", "WILL", "LATER", "MISSING", "REMIND", "FORGOT", "IF", "QUESTION", "OTHER", "LEFT_OUT", "NOT_LOGGED", "OUT", "COUNTED", "COUNT", "GOING_TO", "SAYS", "DRAWING", "OR", "EXCEPT",
    "TROUBLE", "TRADE_NOISE", "NEGATIVE", "ALL_BUT", "PLANNED",
)  # fmt: skip


def act_lists(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """The items, the nouns of such a list turned to what was done."""
    done = list(items)
    start = 0
    for at, item in enumerate(items):  # "St 2". Tape. Rub.": one act a sentence
        if item.concept in _DONE and _is_alone(items, at) and any(_concept(done, k) in ("STAPLED", "TAPED", "RUBBED", "MARK181") for k in range(max(0, at - 3), at)):
            done[at] = replace(item, concept=_DONE[item.concept], value=None)
    for at in range(len(items) + 1):
        if at < len(items) and items[at].concept not in _ENDS:
            continue
        asked = at < len(items) and items[at].concept == "QUERY"
        if not asked and any(item.concept in _DONE for item in items[start:at]):
            for place in _listed(items, start, at):
                done[place] = replace(items[place], concept=_DONE[items[place].concept], value=None)
        start = at + 1
    return tuple(done)


def _is_alone(items, at: int) -> bool:
    return _concept(items, at - 1) == "STOP" and _concept(items, at + 1) in ("STOP", "") and _concept(items, at - 2) not in (*_ASKED_FOR, "NOT", "SEE", "HAVE")


def _concept(items, at: int) -> str:
    return items[at].concept if 0 <= at < len(items) else ""


def _listed(items, first: int, last: int) -> list[int]:
    """The nouns of a list of acts in one sentence that may be read as done."""
    parts: list[tuple[int, int]] = []
    begin = first
    for at in range(first, last + 1):
        if at == last or items[at].concept in ("COMMA", "AND") or items[at].concept == "ANOTHER" and at > begin and items[at + 1 if at + 1 < last else at].concept in _ACTS:  # "stapled then tape then rubbed"
            if at > begin:
                parts.append((begin, at))
            begin = at + 1
    run: list[tuple[int, int]] = []
    best: list[tuple[int, int]] = []
    for part in parts:
        if _is_an_act(items, *part):
            run.append(part)
        elif _tells_of_one(items, *part):
            best, run = max(best, run, key=len), [part]
        else:
            best, run = max(best, run, key=len), []
    best = max(best, run, key=len)
    nouns = [at for a, b in best if _is_an_act(items, a, b) for at in range(a, b) if items[at].concept in _DONE and not _is_measured(items, a, at, b)]
    if len(best) < 2 or not nouns or _is_asked_for(items, first, best[0][0], last):
        return []
    return nouns


def _is_an_act(items, first: int, last: int) -> bool:
    said = [item.concept for item in items[first:last]]
    by_its_name = said.count("TAPE") == 1 and {concept for concept in said if concept in _ACTS} in _BY_ITS_NAME and any(_concept(items, k) in ("RUB", "RUBBED") for k in range(last, last + 3))
    return (by_its_name or sum(concept in _ACTS for concept in said) == 1) and all(concept in _ACTS or concept in _SMALL for concept in said)


def _tells_of_one(items, first: int, last: int) -> bool:
    """ "Zipped it up with staples on two-inch centers, then tape": an act that is told in full, before those told by their nouns."""
    said = [item.concept for item in items[first:last]]
    return bool({"STAPLED", "TAPED"} & set(said)) or "STAPLES" in said and bool({"EVERY", "APART"} & set(said))


def _is_measured(items, first: int, at: int, last: int) -> bool:
    """ "half-inch staples every two", "tape of three inches": what it is told of is the stuff, and the pattern of it says what was done."""
    if items[at].concept != "TAPE" and at + 1 < last and items[at + 1].concept in ("OF", "LEN", "FRAC"):
        return True
    spans = items[first:at] if items[at].concept != "TAPE" else items[first:last]
    return any(item.concept in ("LEN", "FRAC", "NUM") for item in spans)


def _is_asked_for(items, first: int, begin: int, last: int) -> bool:
    """Whether the sentence, or the end of the one before it, wants these things instead of telling of them; "nothing left to do: staples, tape" does not."""
    if any(item.concept in (*_ASKED_FOR, "NOT") and not (item.concept == "NO" and _concept(items, at + 1) in ("VANES", "FLAP")) for at, item in enumerate(items[first:last], first)):  # "no vanes" asks for nothing
        return True
    lead = [item for item in items[first:begin] if item.concept not in ("COMMA", "AND")]
    told = any(item.concept in ("STAPLED", "TAPED") for item in items[begin:last])
    if not told and any(item.concept in ("WORD", "I", "THIS") for item in lead):
        return True  # "bring me staples, tape, …", "I've got staples, tape, …"
    before: list[str] = []
    at = first - 2 if first else -1
    while at >= 0 and items[at].concept not in _ENDS:
        before.append(items[at].concept)
        at -= 1
    if first and items[first - 1].concept == "QUERY":
        return True
    wants = any(concept in ("PENDING", "NEED", "MISSING", "FORGOT", "REMIND", "QUESTION", "IF") for concept in before)
    return wants and not ("NOT" in before or "NO" in before)
