"""Work told by who learned the language late: "I staple each two inch, tape I put, vanes I no put, rub it down".

Acts told in the present are done where the piece was named before. A habit ("I always staple every two") and a rule ("I staple, you tape") are not.
"""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.facts import BY_NAME
from logbook.languages.language import Forms
from logbook.reading.words.items import Item, concept_at

_DONE = {"STAPLE": "STAPLED", "RUB": "RUBBED", "WIPE": "WIPED", "TRIM": "TRIMMED", "TAPE": "TAPED", "TAPE_IT": "TAPED"}
_BEGINS = ("", "COMMA", "STOP", "AND", "BUT", "ANOTHER", "FILLER", "THIS")
_BEHIND = ("EVERY", "COMMA", "STOP", "", "AND", "BUT", "DET", "JOINT", "IT", "SIDE", "BOTH", "ALL", "FILLER", "DOWN", "WORD", "SIDES_ALL", "NUM", "ROOM", "WITH", "ON")
_SAID_OF_IT = ("COMMA", "STOP", "", "IT", "AND", "DOWN", "NUM", "ONE_SIDE", "SIDE", "DET", "THIS")

_THINGS = ("TAPE", "STAPLES", "VANES", "TABS", "MARK181", "CLOSURE")
_SPACED = ("STAPLED", "STAPLES", "STAPLE", "TABS", "SCREWS", "K_HANGER", "HANG", "CLINCHED", "LEG", "WASHERS")
_NOT_SPACED = ("SIDE", "MOVE", "MOVE_IN", "MOVE_OUT", "MOVE_UP", "MOVE_DOWN", "BRANCH_WORD", "BY")
_LENGTHS = ("LEN", "NUM", "FRAC")
_ENDS = ("COMMA", "STOP", "QUERY", "AND", "BUT", "")
_DENIES = ("NOT", "NO", "NOT_DONE")
_DENIALS = frozenset(_DENIES)
_WORKED = ("RUB", "RUBBED", "TAPE", "TAPED", "STAPLE", "STAPLED", "BENT", "WIPED")


def learned_late(items: tuple[Item, ...], text: str, forms: Forms) -> tuple[Item, ...]:
    """The items, where a language's words stand in the order of another: "each two inches", "tape I put", "vanes I no put"."""
    if not forms.lays:
        return items
    done = list(items)
    concepts = [item.concept for item in items]
    if "EACH" in concepts:
        _each(done, text)
    if not _DENIALS.isdisjoint(concepts):
        _denied(done, text, forms)
    for at, concept in enumerate(concepts):
        if concept == "OTHER":
            _the_piece(done, at, text)
        elif concept in _THINGS:
            _is_there(done, at, text, forms)
            _told_behind(done, at, text, forms)
        elif concept in _LENGTHS:
            _measured(done, at, text, forms)
        elif concept == "STAPLE" and concept_at(done, at + 1) == "BE" and concept_at(done, at - 1) in ("DET", *_ENDS):
            done[at] = replace(done[at], concept="STAPLES")  # "staple is good, each two"
        elif concept == "STAPLE" and _said(done[at], text) == "stapling" and at and _said(done[at - 1], text).rsplit(None, 1)[-1] in forms.lays:
            done[at] = replace(done[at], concept="STAPLED")  # "I made stapling each two"
        elif concept == "MISSING":
            _lacks(done, at, text)
        elif concept == "STAPLE" and concept_at(done, at - 1) in ("STOP", "COMMA") and concept_at(done, at + 1) == "ON" and concept_at(done, at + 2) in ("ALL", "SIDES_ALL", "BOTH"):
            done[at] = replace(done[at], concept="STAPLED")  # "staple on all four": the plural's ending is not said
        elif concept == "WORD" and concept_at(done, at - 1) in _WORKED and _said(done[at], text) in forms.well:
            done[at] = replace(done[at], concept="FILLER", value=None)
    return tuple(done)


def _said(item: Item, text: str) -> str:
    return text[item.start : item.end].lower().replace("\u2019", "'")


def _each(done: list[Item], text: str) -> None:
    """ "Staples each two inches": how far apart they are. "Both sides come in, each two inches" is no spacing, nor is "stapled each two sides"."""
    for at, item in enumerate(done):
        if item.concept != "EACH" or concept_at(done, at + 1) not in _LENGTHS or text[item.start : item.end].lower() != "each" or concept_at(done, at + 2) in ("SIDE_WORD", "SIDE", "BY", "COUNTED", "JOINT"):
            continue
        start = at
        while start and done[start - 1].concept not in ("STOP", "QUERY"):
            start -= 1
        near = ["" if one.concept == "SIDE" and concept_at(done, k - 1 - (concept_at(done, k - 1) == "DET")) in ("IN", "ON") else one.concept for k, one in enumerate(done[start:at], start)]
        last = max((k for k, concept in enumerate(near) if concept in _SPACED or concept == "EVERY"), default=-1)
        alone = start == at and concept_at(done, at + 2) in _ENDS and any(one.concept in _SPACED for one in done) and not any(one.concept in _NOT_SPACED[:-1] for one in done[max(0, start - 8) : start])
        listed = concept_at(done, at - 1) == "COMMA" and concept_at(done, at + 2) in _ENDS and not any(concept in _NOT_SPACED[:-1] for concept in near) and any(one.concept in _SPACED for one in done)
        if alone or listed or last >= 0 and not any(concept in _NOT_SPACED for concept in near[last:]) or last < 0 and _of_what_went_before(done, at, start):
            done[at] = replace(item, concept="EVERY")


def _of_what_went_before(done: list[Item], at: int, start: int) -> bool:
    """ "Both with staples of half inch. In the 96 I put each two inches": what is spaced was told of right before, and nothing moves."""
    if concept_at(done, at + 2) not in _ENDS or done[at + 1].value.value > _FARTHEST or any(one.concept in _NOT_SPACED for one in done[start:at]):
        return False
    before = next((one.concept for one in reversed(done[max(0, start - _SO_FAR_BACK) : start]) if one.concept in _SPACED or one.concept in _NOT_SPACED), "")
    return before in _SPACED


_FARTHEST = 16  # in.: staples, tabs and screws that are farther apart are told with their name
_SO_FAR_BACK = 16  # items


def _denied(done: list[Item], text: str, forms: Forms) -> None:
    """ "I no rub", "we no clean nothing", "I not repair": what is denied is an act, and one denial is enough."""
    for at, item in enumerate(done):
        if item.concept == "NOT_DONE" and _said(item, text) in forms.has_not and _thing_alone(done, at + 1):
            done[at] = replace(item, concept="NO", value=None)  # "it have not vanes", "has not the flap": nothing is still to do
        if item.concept not in _DENIES or concept_at(done, at - 1) not in ("I", "OTHER", "IT") and _said(item, text) not in forms.nobody and not (concept_at(done, at - 1) == "FILLER" and concept_at(done, at - 2) == "I"):
            continue
        if item.concept == "NO" and _said(item, text) == "no" and concept_at(done, at + 1) not in (*_THINGS, *_ENDS, "I", "DAMAGE", "GAP", "FLAP", *_LENGTHS):
            done[at] = item = replace(item, concept="NOT", value=None)
        verb = at + 1
        while concept_at(done, verb) in ("FILLER", "YET") and verb < at + 3:
            verb += 1
        if concept_at(done, verb) == "K_REPAIR" or concept_at(done, verb) == "WORD" and _said(done[verb], text) in (*forms.wipes, *forms.heats):
            done[verb] = replace(done[verb], concept="REPAIR_IT" if done[verb].concept == "K_REPAIR" else "WIPE" if _said(done[verb], text) in forms.wipes else "HEAT_IT", value=None)
        behind = verb + 1
        while behind < len(done) and behind < verb + 4 and done[behind].concept in ("IT", "DET", "FILLER", "STAPLES", "TAPE", "VANES"):
            behind += 1
        if verb < len(done) and done[verb].concept not in _ENDS and behind < len(done) and done[behind].concept in ("NOT", "NO") and _said(done[behind], text) in forms.nothing:
            done[behind] = replace(done[behind], concept="FILLER", value=None)


def _thing_alone(done: list[Item], at: int) -> bool:
    at += concept_at(done, at) == "DET"
    return concept_at(done, at) in (*_THINGS, "FLAP", "TIE_RODS") and concept_at(done, at + 1) not in ("STAPLED", "TAPED", "RUBBED", "IN_PLACE", "FILLER", "BE", "YET")


def _measured(done: list[Item], at: int, text: str, forms: Forms) -> None:
    """ "Left goes inside four inches", "the right enters four", "goes in four inches on twelve inches of length", "a cut, long two inches"."""
    lead = at - 1
    while lead > at - 3 and concept_at(done, lead) in ("BY", "OF", "HEDGE", "ONLY") and concept_at(done, lead - 1) in ("INSIDE", "OUTSIDE", "WORD", "LENGTH"):
        lead -= 1
    if lead < 0:
        return
    before, said = done[lead], _said(done[lead], text)
    if before.concept in ("INSIDE", "OUTSIDE") and (" " in said or concept_at(done, lead - 1) in ("MOVE", "TO", "SIDE", "BE")) or before.concept == "WORD" and said in forms.enters:
        if any(concept_at(done, k) == "SIDE" for k in range(lead - 3, lead)):
            done[lead] = replace(before, concept="MOVE_OUT" if before.concept == "OUTSIDE" else "MOVE_IN", value=None)
            for k in range(lead - 2, lead):
                if done[k].concept == "TO":
                    done[k] = replace(done[k], concept="FILLER", value=None)
        return
    if before.concept == "LENGTH" and concept_at(done, lead - 1) in ("ON", "IN") and concept_at(done, lead - 2) in _LENGTHS and any(concept_at(done, k).startswith("MOVE") for k in range(lead - 5, lead - 2)):
        done[lead - 1] = replace(done[lead - 1], concept="OVER", value=None)
        for k in range(lead, at):
            done[k] = replace(done[k], concept="FILLER", value=None)
        return
    before = done[at - 1]
    if before.concept == "NUMBER" and str(done[at].value.value) in BY_NAME["board_class"].values and any(concept_at(done, k) == "BOARD" for k in range(at - 7, at - 1)):
        done[at - 1] = replace(before, concept="FILLER", value=None)  # "board is one inch, number 475"
    elif before.concept == "OF" and concept_at(done, at - 2) == "WORD" and _said(done[at - 2], text) in forms.spaces and done[at].value.value <= _WIDEST and _at_a_joint(done, at, text, forms):
        done[at - 2] = replace(done[at - 2], concept="GAP", value=None)
    elif before.concept == "LONG" and any(concept_at(done, k) == "DAMAGE" for k in range(at - 5, at - 1)) and done[at].value.value <= _LONGEST:
        done[at - 1] = replace(before, concept="FILLER", value=None)
    elif before.concept == "ON" and concept_at(done, at - 2) in _LENGTHS and any(concept_at(done, k).startswith("MOVE") for k in (at - 3, at - 4)):
        behind = at + 2 if concept_at(done, at + 1) in ("OF", "IN") else at + 1
        if concept_at(done, behind) in ("LENGTH", "LONG"):
            done[at - 1] = replace(before, concept="OVER", value=None)
            done[behind] = replace(done[behind], concept="FILLER", value=None)
            done[at + 1] = replace(done[at + 1], concept="FILLER", value=None)


def _at_a_joint(done: list[Item], at: int, text: str, forms: Forms) -> bool:
    """ "Between this and the other there is a space of an eighth", "a separation of an eighth in the union"."""
    first, last = _two_sentences(done, at, 1), _sentence_end(done, at)
    return any(one.concept in ("JOINT", "END", "FEMALE", "MALE") or _said(one, text) in forms.between for one in done[first:last])


_WIDEST = 2  # in.: a space of more is no joint that was left open
_LONGEST = 12  # in.: a cut longer than that may be the piece's own length


def _lacks(done: list[Item], at: int, text: str) -> None:
    """ "Missing only the rubbing", "is missing to rub": an act that is still to come, and none that was done."""
    noun = at + 1
    while concept_at(done, noun) in ("ONLY", "DET", "FILLER", "TO"):
        noun += 1
    if noun < len(done) and done[noun].concept in _BARE and _said(done[noun], text).endswith("ing"):
        done[noun] = replace(done[noun], concept=_BARE[done[noun].concept])
    if concept_at(done, noun) in _BARE.values() and noun > at + 1 and concept_at(done, at - 1) != "DET":  # "a missing staple" is none
        done[at] = replace(done[at], concept="PENDING", value=None)
    for k in range(at + 1, noun):
        if done[k].concept in ("ONLY", "TO"):
            done[k] = replace(done[k], concept="FILLER", value=None)


_BARE = {"RUBBED": "RUB", "TAPED": "TAPE_IT", "STAPLED": "STAPLE", "WIPED": "WIPE", "TRIMMED": "TRIM"}


def _the_piece(done: list[Item], at: int, text: str) -> None:
    """ "He is not taped, he is not stapled": nobody is stapled, it is the piece."""
    act = at + 1
    be = concept_at(done, act) == "BE" or concept_at(done, act) in ("NOT", "NOT_DONE") and _said(done[act], text).startswith(("is", "was"))
    while act < at + 4 and concept_at(done, act) in ("BE", "NOT", "NOT_DONE", "FILLER", "YET", "ALL"):
        act += 1
    if be and _said(done[at], text) in ("he", "she") and concept_at(done, at - 1) in ("COMMA", "STOP", "AND", "BUT") and concept_at(done, act) in ("STAPLED", "TAPED", "RUBBED", "TRIMMED"):
        done[at] = replace(done[at], concept="IT")


def _is_there(done: list[Item], at: int, text: str, forms: Forms) -> None:
    """ "Tape is there but nobody rub it": no question is asked."""
    ask = at + 1
    if concept_at(done, ask) == "QUESTION" and _said(done[ask], text) in forms.there and concept_at(done, ask + 1) in ("COMMA", "STOP", "BUT", "AND", "") and concept_at(done, at - 1) in ("DET", *_ENDS):
        done[ask] = replace(done[ask], concept="ON" if done[at].concept != "VANES" else "IN", value=None)


def _told_behind(done: list[Item], at: int, text: str, forms: Forms) -> None:
    """ "Tape I put", "tape is put", "the vanes I no put because finish", "all the tabs I bend": the thing first, and behind it what became of it."""
    who = at + 1
    before = at - 1
    while concept_at(done, before) in ("DET", "ALL", "FILLER", "THIS", "OF", "NUM", "WORD", "ONLY") and at - before < 6:
        before -= 1
    if concept_at(done, before) not in ("COMMA", "STOP", "QUERY", "AND", "BUT", ""):
        return
    own = concept_at(done, who) == "I" and _said(done[who], text) in ("i", "we")
    other = concept_at(done, who) in ("OTHER", "NOT") and _said(done[who], text) in forms.others
    if not (own or other or concept_at(done, who) == "BE"):
        return
    verb = who if _said(done[who], text) in forms.nobody else who + 1
    denied = verb == who
    while concept_at(done, verb) in (*_DENIES, "YET") or concept_at(done, verb) == "FILLER" and _said(done[verb], text) not in forms.lays:
        denied = denied or done[verb].concept in _DENIES
        verb += 1
    verb += denied and verb == who
    if verb >= len(done) or verb > who + 4:
        return
    if done[verb].concept in ("BENT", "CLINCHED") and done[at].concept in ("TABS", "STAPLES") and own:
        done[who] = replace(done[who], concept="BE", value=None)
        if done[at].concept == "STAPLES":
            done[verb] = replace(done[verb], concept="CLINCHED")
        return
    if _said(done[verb], text) not in forms.lays:
        return
    if denied:
        done[who] = replace(done[who], concept="NOT" if verb == who + 1 and other else "BE", value=None)
        for k in range(who + 1, verb):
            if done[k].concept == "NO":
                done[k] = replace(done[k], concept="NOT", value=None)
        done[verb] = replace(done[verb], concept="FILLER", value=None)
    elif not other and done[at].concept == "STAPLES":
        done[who] = replace(done[who], concept="BE", value=None)
    elif not other:
        behind = verb + 1
        while concept_at(done, behind) in ("FILLER", "ON", "AROUND", "IT"):
            behind += 1
        if concept_at(done, behind) in _ENDS and concept_at(done, behind) != "QUERY":
            done[who] = replace(done[who], concept="BE", value=None)
            done[verb] = replace(done[verb], concept="IN" if done[at].concept == "VANES" else "ON", value=None)


def _what_i_did(items: tuple[Item, ...], text: str) -> tuple[Item, ...]:
    """ "The next thing I did was wipe the facing down": behind what he did the bare act is done."""
    done = list(items)
    told = False
    for at, item in enumerate(items):
        if item.concept in ("STOP", "QUERY", "I", "BUT"):
            told = False
        if item.concept in _DONE and (told and concept_at(items, at - 1) in ("AND", "COMMA") or concept_at(items, at - 1) == "BE" and _DID.search(text[: items[at - 1].start].lower())):
            done[at] = replace(item, concept=_DONE[item.concept], value=None)
            told = True
    return tuple(done)


_DID = re.compile(r"\b(?:i|we) (?:just |then |only )?did(?: (?:first|next|then|today|here|after that|on it|to it|with it))* $")


def done_in_the_present(items: tuple[Item, ...], text: str, forms: Forms) -> tuple[Item, ...]:
    """The items, where such acts are told as done."""
    items = _what_i_did(items, text)
    said = text.lower()
    acts = [at for at in range(1, len(items)) if (items[at].concept in _DONE or items[at].concept == "WORD") and _who(items, at) and _is_an_act(items, at, text, forms)]
    if not forms.habit or not acts or re.search(forms.always, said):
        return items
    done = list(items)
    told = -2
    for at, item in enumerate(items):
        if not _is_an_act(items, at, text, forms) or concept_at(items, at + 1) not in _BEHIND or not any(one.concept.startswith("K_") or one.concept in ("FITTING", "NUMBER") for one in items[:at]):
            continue
        who = _who(items, at)
        if concept_at(items, at - 1) == "ONLY" and concept_at(items, at + 1) not in _SAID_OF_IT and concept_at(items, at) != "TAPE_IT":
            continue  # "I only tape on Mondays"
        own = who > 0 and text[items[who].start : items[who].end].lower() in ("i", "we") and (concept_at(items, who - 1) in _BEGINS or concept_at(items, who - 1) == "WORD" and _said(items[who - 1], text) in forms.steps or concept_at(items, who - 1) in ("NUM", "MARKED") and (concept_at(items, who - 2).startswith("K_") or concept_at(items, who - 2) in ("FITTING", "NUMBER")))
        goes_on = concept_at(items, at - 1) in ("COMMA", "AND") and told >= 0 and not any(one.concept in ("STOP", "QUERY") for one in items[told:at])
        if (own or goes_on) and _TO_COME.isdisjoint(one.concept for one in items[_two_sentences(items, at, 1) : _sentence_end(items, at)]) and not re.search(forms.habit, said[items[_two_sentences(items, at)].start : items[_sentence_end(items, at)].end]):
            done[at] = replace(item, concept=_DONE.get(item.concept, "WIPED"), value=None)
            told = at
    return tuple(done)


_TO_COME = frozenset(("LATER", "WILL", "PENDING", "IF", "WHEN", "REMIND", "NEED", "FORGOT"))


def _is_an_act(items, at: int, text: str, forms: Forms) -> bool:
    if items[at].concept != "WORD" or text[items[at].start : items[at].end].lower() not in forms.wipes:
        return items[at].concept in _DONE
    return concept_at(items, at + 1) in ("COMMA", "STOP", "", "WITH", "AND", "FACING", "BOARD", "IT") or concept_at(items, at + 1) == "DET" and concept_at(items, at + 2) in ("FACING", "BOARD", "JOINT")


def _who(items, at: int) -> int:
    """The "I" before an act, past "already" and "only"; 0 where there is none."""
    who = at - 1
    while who > 0 and items[who].concept in ("FILLER", "BOTH", "ONLY") and at - who < 3:
        who -= 1
    return who if who >= 0 and items[who].concept == "I" else 0


def _sentence_end(items, at: int) -> int:
    while at + 1 < len(items) and items[at].concept not in ("STOP", "QUERY"):
        at += 1
    return at


def _two_sentences(items, at: int, stops: int = 2) -> int:
    """The first item of the sentence before this one."""
    while at > 0 and stops:
        at -= 1
        stops -= items[at].concept in ("STOP", "QUERY")
    return at
