"""What begins something new by what stands behind it: "stapled | the tape I'll put on after lunch", "vanes | left them out", "taped | not yet".

A thing with its own verb is no object of the act before it; a thing told and then only denied was asked, as a man asks himself a question and answers it.
"""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.run_on import RunOn
from logbook.reading.composed.held_together import begin
from logbook.reading.words.items import Item, concept_at
from logbook.reading.words.kinds import KIND_CONCEPTS

_KINDS = frozenset(KIND_CONCEPTS)
_ENDS = frozenset(("COMMA", "STOP", "QUERY"))
_ACTS = frozenset("STAPLED TAPED RUBBED WIPED TRIMMED PREHEATED REPAIRED SEATED".split())
_DENIED = _ACTS | frozenset("CLINCHED BENT VANES STAPLES TAPE".split())
_THINGS = frozenset("TAPE STAPLES VANES TABS RUBBED FLAP TAPED STAPLED DAMAGE".split())
_PARTS = frozenset("SIDE SIDE_WORD BRANCH_WORD INLET ANOTHER END JOINT PANEL THROAT OTHER_SIDE".split())
_BEHIND = _ACTS | frozenset("NUM LEN FRAC YET LEVEL SHIPLAP BUTT CLINCHED BENT VANES MARK181".split())
_VERBS = frozenset("BE NOT NOT_DONE WILL LATER WHEN PENDING NEED HAVE NO TIGHT".split())
_BEFORE_DEEDS = frozenset("VANES TAPE STAPLES TABS IN OUT NUM LEN DAMAGE YET MOVE_UP MOVE_DOWN UNDONE AROUND FLAP STAPLED TAPED RUBBED CLINCHED".split())
_NEW, _MORE, _ASKED, _IS = ".", ",", "?", ":"


def sign_before(items, said, at: int, signs, words: RunOn) -> str | None:
    before, concept = items[at - 1].concept, items[at].concept
    if before in _ENDS or at in signs:
        return None
    first = begin(items, at - 1, signs)
    if concept == "I" and _is_topic(items, said, first, at, words) and concept_at(items, at + 1) in ("NO", "NOT", "WORD"):
        return _ASKED
    if _is_answer(items, said, at, signs, words) or (before in _DENIED and concept_at(items, at - 2) != "NO" or _is_topic(items, said, begin(items, at - 1, signs), at, words)) and _is_short_denial(items, said, at, words):
        return _ASKED
    if signs.get(at - 1) == _ASKED and said[at - 1] in words.denials or signs.get(at - 2) == _ASKED and said[at - 2] in words.nots:
        return _NEW
    if concept in _ACTS and is_put_off(items, said, at, words):
        return _NEW
    if _is_deed(items, said, at, words) or _is_corrected(items, said, at, words):
        return _MORE
    if concept in ("DET", *_THINGS, *_PARTS) and _is_free(items, at) and _has_verb(items, said, at, words):
        return _MORE if said[at + 1 : at + 2] and said[at + 1] in words.few else _NEW
    if concept in _ON_IT and _is_told_of(items, said, at, words):
        return _NEW
    if concept == "IT" and said[at] in words.people and (before in _ACTS and concept_at(items, at + 1) in ("NOT", "BE", "HAVE") or before in ("WORD", "THIS") and said[at - 1] not in words.binders | words.adverbs | words.claims and concept_at(items, at + 1) == "NOT"):
        return _NEW
    if said[at] in words.subjects and before == "NOT" and concept_at(items, at - 2) in ("I", "IT", "OTHER") and said[at - 1] in words.auxiliaries | words.copulas:
        return _NEW  # "you'd never know I didn't | there's a hole in my boot"
    if before == "NOT" and said[at - 1] in words.copulas and concept_at(items, at - 2) in _PARTS and concept in _ON_IT and concept_at(items, at + 1) in ("BE", "EVERY", "IN_PLACE"):
        return _NEW  # "three sides are taped the top isn't | staples are at two inches"
    if before in _ACTS and (said[at] in words.idle or said[at] in words.shares and concept_at(items, at + 1) in ("DET", "OTHER")):
        return _NEW
    if before in _DENIED and said[at] in words.shares and (at + 1 == len(items) or items[at + 1].concept in _ENDS):
        return _IS  # "trimmed: half"
    if concept == "QUESTION" and said[at].split()[0] in words.asking and said[at].split()[-1] in words.objects and before == "NUM" and concept_at(items, at - 2) in _KINDS:
        return _MORE
    if _is_count(items, at):
        return _MORE
    if said[at] in words.wholes and concept_at(items, at + 1) == "HAVE" and before in ("DRAWING", "WORD", *_BEHIND):
        return _MORE
    if concept == "IF" and before in _ACTS or concept == "TIE_RODS" and before == "NUM" and concept_at(items, at - 2) in _KINDS or said[at] in words.short and before in _ACTS or concept == "IT" and concept_at(items, at + 1) == "TAKES" and before == "VANES":
        return _MORE
    return None


def _is_count(items, at: int) -> bool:
    """ "four sides taped | two sides rubbed", "sides taped 3 | sides stapled 4": the counts stand as those before them do."""
    coming = [items[k].concept for k in range(at, min(at + 3, len(items)))]
    if len(coming) < 3:
        return False
    if coming[:2] == ["NUM", "SIDE_WORD"] and coming[2] in _ACTS:
        return items[at - 1].concept in _ACTS and concept_at(items, at - 2) == "SIDE_WORD"
    if coming[0] == "SIDE_WORD" and coming[1] in _ACTS and coming[2] == "NUM":
        return items[at - 1].concept == "NUM" and concept_at(items, at - 2) in _ACTS and concept_at(items, at - 3) == "SIDE_WORD"
    behind = items[at - 1].concept in ("SIDE_WORD", "NUM")
    if coming[0] in _ACTS and coming[1] == "NUM" and behind:
        return any(items[k].concept in _ACTS and items[k + 1].concept in ("NUM", "ALL", "ON") for k in range(max(0, at - 5), at - 1))
    return coming[0] == "TAPE" and coming[1] == "ON" and coming[2] in ("NUM", "ALL") and behind


def _is_free(items, at: int) -> bool:
    """Whether a thing can begin here: what counts or measures it would stand before it ("three | sides", "half | the tape", "two inch | tape")."""
    before = items[at - 1].concept
    if before in ("SHIPLAP", "BUTT") and items[at].concept == "SIDE_WORD":
        return False
    return before in _BEHIND and (before not in ("NUM", "LEN", "FRAC") or concept_at(items, at - 2) in ("EVERY", "BY"))


_ON_IT = frozenset("TAPE STAPLES VANES TABS FLAP SCRIM".split())
_ENDS_IT = frozenset("IN_PLACE IT BACK SIDE END DAY DAMAGE".split())
_OF_A_NOUN = frozenset("DET HAVING WITH IN ON OF NO".split())
_ARTICLE = 4  # letters: an article belongs to the thing behind it, and is no item


def _is_told_of(items, said, at: int, words: RunOn) -> bool:
    """ "couldn't reach in there with the tool | the staples on it are every two", "didn't have time | the tape is on": a thing with its article, where it is and its verb, behind a whole clause."""
    before = items[at - 1].concept
    if items[at].start - items[at - 1].end < _ARTICLE or said[at - 1].split()[-1] in words.binders | words.claims | words.adverbs:
        return False
    if before not in _ENDS_IT and not (before == "WORD" and concept_at(items, at - 2) in _OF_A_NOUN):
        return False
    k = at + 1
    if concept_at(items, k) in ("ON", "IN"):
        k += 1
        while concept_at(items, k) in ("DET", "IT", "THIS", "NUMBER", "NUM", "MARKED") or concept_at(items, k) in _KINDS:
            k += 1
    return concept_at(items, k) in ("BE", "IN_PLACE", "HAVE", "NOT", "NOT_DONE") and concept_at(items, k + 1) not in ("", "QUERY") or concept_at(items, k) == "IN_PLACE"


def _is_corrected(items, said, at: int, words: RunOn) -> bool:
    """ "vanes in | no | left them out", "taped no | not taped"."""
    before = items[at - 1].concept
    if items[at].concept == "NO" and said[at] in words.ticks:
        return before in ("IN", "OUT") and concept_at(items, at + 1) in ("LEFT_OUT", "NOT", "IT", "BE", "I")
    if before == "NO" and said[at - 1] in words.ticks:
        return items[at].concept == "LEFT_OUT" or said[at] in words.nots | words.auxiliaries | words.copulas
    return items[at].concept == "FIX" and before in ("IN", "OUT") or before == "FIX" and said[at] in words.subjects


def apart(text: str, items: tuple[Item, ...], words: RunOn) -> tuple[Item, ...]:
    """The items with "it" by itself where it is who the next words are of: "taped | it wasn't easy"."""
    made: list[Item] = []
    for at, item in enumerate(items):
        said = text[item.start : item.end].lower()
        ahead = text[items[at + 1].start : items[at + 1].end].lower().replace("’", "'") if at + 1 < len(items) else ""
        if item.concept in _ACTS and said.endswith(" it") and said[:-3] in words.bare and (ahead in words.copulas or ahead in words.auxiliaries or ahead == "'s"):
            made += [replace(item, end=item.end - 3, last=item.last - 1), replace(item, concept="IT", start=item.end - 2, first=item.last - 1)]
        else:
            made.append(item)
    return tuple(made)


def is_put_off(items, said, at: int, words: RunOn) -> bool:
    """ "gonna get them tomorrow | stapled": the plan has its verb, its object and its day."""
    return items[at - 1].concept in ("LATER", "DAY") and said[at - 2] in words.several and said[at] in words.bare


def _is_answer(items, said, at: int, signs, words: RunOn) -> bool:
    """ "is straight 9 taped | no", "did I leave it untaped | yes I did"."""
    if said[at] not in words.ticks and said[at] not in words.did:
        return False
    first = begin(items, at - 1, signs)
    first = next((k for k in range(first, at) if items[k].concept == "QUESTION"), first)
    if said[first].split()[0] not in words.asking or at - first < 2:
        return False
    return items[at].concept != "NO" or at + 1 == len(items) or items[at + 1].concept in ("IT", "BE", "I", "STOP", "COMMA", *_KINDS, *_ACTS)


def _is_topic(items, said, first: int, at: int, words: RunOn) -> bool:
    """ "turning vanes elbow 12", "the rubbing on straight 9": the thing, with the piece it is of."""
    first += items[first].concept == "DET"
    if first >= at or items[first].concept not in ("VANES", "TAPE", "STAPLES", "TABS") and said[first] not in words.doings:
        return False
    rest = [item.concept for item in items[first + 1 : at] if item.concept not in ("ON", "IN", "OF", "NUMBER")]
    return len(rest) == 2 and rest[0] in _KINDS and rest[1] == "NUM"


def _is_short_denial(items, said, at: int, words: RunOn) -> bool:
    """ "not yet", "hardly", "negative": all of an answer, with nothing behind it that it could deny."""
    if at < 1:
        return False
    if said[at] in words.nots and concept_at(items, at + 1) == "YET":
        return concept_at(items, at + 2) not in _DENIED
    if said[at] in words.denials and concept_at(items, at + 1) == "OF":
        return concept_at(items, at + 2) == "IT"
    return said[at] in words.denials and concept_at(items, at + 1) not in _DENIED | {"ON", "IN", "HAVE"} or any(said[at : at + len(one)] == list(one) for one in words.mocking)


def _is_deed(items, said, at: int, words: RunOn) -> bool:
    """ "vanes | left them out", "two tabs were loose | bent them down": what he did to what was told."""
    heard = said[at].split()
    if heard[0] not in words.deeds:
        return False
    before = items[at - 1].concept
    if heard[0] in words.had and concept_at(items, at + 1) == "TO":
        return items[at - 1].concept in ("IN", "OUT")
    if heard[-1] not in words.objects and said[at + 1 : at + 2] not in (["it"], ["them"], ["'em"]):
        return False
    return before in _BEFORE_DEEDS or before == "WORD" and concept_at(items, at - 2) == "BE"


def _has_verb(items, said, at: int, words: RunOn) -> bool:
    """Whether the thing that begins here is somebody's, or has a verb of its own: "the tape I'll …", "sides aren't", "tape ran out"."""
    k = at + 1 if items[at].concept == "DET" else at
    if k < len(items) and items[k].concept == "WORD" and k > at:
        k += 1
    if k < len(items) and k > at + 1 and said[k - 1] in words.few and said[k].split()[0] in words.verbs:
        return True
    if k >= len(items) or items[k].concept not in _THINGS and items[k].concept not in _PARTS or items[k].concept in ("TAPED", "STAPLED", "RUBBED") and said[k] not in words.doings:
        return False
    if said[k].endswith("'s"):
        return True
    k += 1
    if k >= len(items):
        return False
    if said[k] in words.nots:
        return k + 1 == len(items) or concept_at(items, k + 1) == "YET"
    return items[k].concept in _VERBS and not (items[k].concept == "NO" and items[at].concept != "DET") or said[k].split()[0] in words.verbs or items[k].concept == "I" and (items[at].concept == "DET" or items[at].start - items[at - 1].end >= _ARTICLE) and concept_at(items, k + 1) in ("PENDING", "NOT", "WILL", "FORGOT")
