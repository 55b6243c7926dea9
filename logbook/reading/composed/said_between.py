"""What is said between two things that were done and tells of neither: "stapled every two | I think the drywall guys were mad | taped".

In a note without signs such a sentence reaches over what follows it, or takes a doubt or a denial back over what stands before it. It holds no word of the
trade, and has all that a sentence needs; so it is closed off on both sides. What can belong to an act ("not well | rubbed", "wants it | taped", "rubbed not that good") is none.
"""

from __future__ import annotations

from logbook.languages.run_on import RunOn
from logbook.reading.words.items import concept_at
from logbook.reading.words.kinds import KIND_CONCEPTS

_ACTS = frozenset(("STAPLED", "TAPED", "RUBBED"))
_PLAIN = frozenset("WORD FILLER BE HAVE HAVING DET I IT THIS OTHER THINK HEDGE BUILDING TRADE_NOISE PLACE_NOUN LATER DAY WHEN TO OF ON IN UP OUT WITH FROM AND OR QUESTION SAYS WILL NEED PENDING NOT NOT_DONE NO TROUBLE MOVE BY GOING_TO TEMP SEE YET AROUND HARM GENERIC".split())
_TELLS = frozenset("WORD BUILDING TRADE_NOISE PLACE_NOUN HARM TROUBLE DAY".split())  # without one of these it says nothing
_VERBS = frozenset("BE HAVE HAVING NOT NOT_DONE WILL NEED PENDING SAYS MOVE GOING_TO SEE".split())
_OPENS = frozenset("THINK NOT NO I OTHER WILL IT NOT_DONE DET".split())
_PEOPLE = frozenset(("I", "OTHER", "IT"))
_DOERS = frozenset(("I", "OTHER"))
_ENDS = frozenset(("COMMA", "STOP", "QUERY"))
_DENIES = frozenset(("NOT", "NOT_DONE"))
_UNFINISHED = frozenset("BE HAVE HAVING AND OR I IT THIS TO OF ON WITH FROM BY NOT NOT_DONE NO WILL NEED PENDING SAYS THINK HEDGE DET GOING_TO WHEN QUESTION OTHER".split())
_BEHIND = frozenset("STAPLED TAPED RUBBED MARK181 NUM LEN WIPED TRIMMED IN".split())
_MEASURED_BY = frozenset(("EVERY", "BY"))
_PARTS = frozenset("OTHER_SIDE SIDE SIDE_WORD BACK END JOINT PANEL TAPE STAPLES VANES".split())
_DENIED = frozenset("NOT NOT_DONE NO HAVE".split())
_LEADS_TO = frozenset("I NOT NOT_DONE NO PENDING EXCEPT FORGOT".split())  # what begins to tell that something was not done
_LEADS_ON = _LEADS_TO | frozenset("FILLER ONLY HAVE NEED".split())
_FEWEST = 2
_FARTHEST = 14  # items


def said_between(items, said, words: RunOn) -> dict[int, str]:
    """Item -> the sign before it."""
    found: dict[int, str] = {}
    at = 1
    while at < len(items):
        if _is_behind(items, said, at, words):
            found[at] = ","
        if _is_doubted_next(items, said, at) or _is_of_a_part(items, at):
            found[at] = "."
        end = _end(items, said, at, words) if (items[at].concept in _OPENS or said[at] in words.names or items[at].concept in ("NEED", "PENDING") and said[at].split()[0] in words.people) and _is_free(items, said, at, words) else None
        if end is None:
            at += 1
            continue
        found[at] = "."
        if end < len(items) and items[end].concept not in _ENDS:
            found[end] = "."
        at = end + 1
    return found


def _is_behind(items, said, at: int, words: RunOn) -> bool:
    """ "Every two I think | taped", "every two maybe a hair over | taped": a doubt that has nobody behind it is of the measure before it."""
    if items[at].concept not in _ACTS or said[at].split()[0] not in words.bare or items[at - 1].concept not in ("THINK", "HEDGE"):
        return False
    k = at - 1
    while k > 0 and items[k].concept in ("THINK", "HEDGE", "FILLER"):
        k -= 1
    sure = items[at - 1].concept == "THINK" and said[at - 1].split()[0] != "i"  # "every two maybe taped": of which?
    return not sure and items[k].concept in ("NUM", "LEN") and concept_at(items, k - 1) in ("EVERY", "HEDGE")


def _is_doubted_next(items, said, at: int) -> bool:
    """ "Rubbed | I guess I did the staples every three", "four foot | I think the staples are …": a doubt with its own subject is of what comes."""
    if items[at].concept != "THINK" or said[at].split()[0] != "i" or items[at - 1].concept not in (*_ACTS, "MARK181", "LEN", "NUM"):
        return False
    if items[at - 1].concept == "NUM" and concept_at(items, at - 2) == "EVERY":
        return False
    return said[at + 1 : at + 2] != [] and said[at + 1].split()[0] in ("i", "we") and items[at + 1].concept in ("I", "FILLER") or items[at - 1].concept in ("LEN", "NUM") and concept_at(items, at + 2) == "BE"


def _is_of_a_part(items, at: int) -> bool:
    """ "Rubbed down | more like three on the bottom", "rubbed | all but the bottom is rubbed": what is told of a part behind the last of a list."""
    if items[at - 1].concept not in _ACTS:
        return False
    if items[at].concept == "ALL_BUT":
        return any(items[k].concept in _ACTS and items[k - 1].concept == "BE" for k in range(at + 2, min(at + 6, len(items))))
    return items[at].concept == "HEDGE" and concept_at(items, at + 1) == "NUM" and concept_at(items, at + 2) == "ON"


def _is_free(items, said, at: int, words: RunOn) -> bool:
    """Whether what stands before it is told, and not what the sentence is of: "straight 4 | doesn't look stapled", "the rubbing | I still have to do"."""
    before = items[at - 1].concept
    if before not in _BEHIND or before in _ACTS and said[at - 1].split()[0] not in words.bare:
        return False
    return before != "NUM" or concept_at(items, at - 2) in _MEASURED_BY or items[at].concept in ("I", "OTHER", "THINK") or said[at].startswith("i ")


def _end(items, said, first: int, words: RunOn) -> int | None:
    """Where the sentence that begins here is done; None where it is none, or goes on to tell of the work."""
    last = first
    while last < len(items) and last - first < _FARTHEST and items[last].concept in _PLAIN:
        last += 1
    if last < len(items) and items[last].concept not in _ENDS and (items[last - 1].concept in _DENIED or not _begins(items, said, last, words)):
        last = _short_of(items, said, first, last, words)
    if last < len(items) and items[last].concept in _ACTS and items[last - 1].concept in _DOERS:
        last -= 1  # "… | I stapled it"
    while last > first and items[last - 1].concept == "AND":
        last -= 1
    return last if last - first >= _FEWEST and _is_whole(items, said, first, last, words) else None


def _short_of(items, said, first: int, last: int, words: RunOn) -> int:
    """Where what tells of the work begins: "the boss was yelling | I never rubbed the back", "… | didn't rub the back", "… | the far side still needs tape"."""
    whose = last - 1 if items[last - 1].concept == "DET" else last
    verb = last + 3 if concept_at(items, last + 1) == "ON" else last + 1  # "the staples on the bottom are …"
    if items[last].concept in _PARTS and concept_at(items, verb) in _VERBS and (items[whose - 1].concept in ("LATER", "DAY") or said[whose - 1].endswith("ing") or {"DET", "BE"} & {concept_at(items, whose - 2), concept_at(items, whose - 3)}):
        return whose
    k = last
    while k > first + _FEWEST and items[k - 1].concept in _LEADS_ON:
        k -= 1
    return k if k < last and items[k].concept in _LEADS_TO and items[k].concept != "FILLER" else first


def _begins(items, said, at: int, words: RunOn) -> bool:
    if items[at].concept in _ACTS:
        return said[at] in words.bare or items[at - 1].concept == "I"
    return items[at].concept in KIND_CONCEPTS and concept_at(items, at + 1) in ("NUM", "NUMBER", "LETTER")


def _is_whole(items, said, first: int, last: int, words: RunOn) -> bool:
    concepts = [item.concept for item in items[first:last]]
    if concepts[0] == "DET" and concepts[1] not in ("WORD", "BUILDING", "OTHER") or concepts[0] in _DENIES and last - first < 2:
        return False
    if concepts[0] == "THINK" and said[first] in words.sorts:
        return concepts[1:] == ["DET", "WORD"]
    acts = last < len(items) and items[last].concept in _ACTS
    counted = acts and _is_counted(items, last)
    caused = any(said[k].split()[0] in words.causes and not (counted and said[k] in words.senses) or items[k].concept in ("HAVE", "HAVING", "NEED", "PENDING") for k in range(first, last))
    if acts and caused and _DENIES.intersection(concepts) and not (items[last - 1].concept in _TELLS and concept_at(items, last - 2) != "IT"):
        return False
    told = [k for k in range(first, last) if items[k].concept in _TELLS and not _is_how(said[k], words)]
    heads = concepts[0] == "THINK" and concepts[1] in _PEOPLE or concepts[0] == "OTHER" and last - first > 2 or concepts[-1] in ("AROUND", "OUT") and concepts[-2] in ("BE", "NOT")
    if not told and not heads or not _VERBS.intersection(concepts) and not (concepts[0] in _PEOPLE and concepts[1] == "WORD"):
        return False
    if acts and (said[last - 1] in words.anybody or said[last - 1] in words.names and concepts[-2] in ("NOT", "THINK")):
        return False  # "I doubt anyone | taped"
    hearsay = counted and concepts[-2] == "OTHER"  # "it might snow they say"
    if acts and not hearsay and (said[last - 1].split()[-1] in words.adverbs - words.him | words.binders | words.reaching and said[last - 1] != "by" or _is_how(said[last - 1], words) and concepts[0] != "THINK" and (not counted or said[last - 1] not in words.extents)):
        return False
    if concepts[-1] == "IT":
        return not (acts and caused)
    return said[last - 1] in words.him and concepts[-2] == "WORD" or concepts[-1] not in _UNFINISHED or said[last - 1] in words.whys or concepts[-1] == "BY" and concepts[-2] in ("BE", "MOVE")


def _is_counted(items, at: int) -> bool:
    """Whether an act is measured, or one of a list."""
    return concept_at(items, at + 1) in ("EVERY", "MARK181", "NUM", "LEN", "WITH", *_ACTS)


def _is_how(word: str, words: RunOn) -> bool:
    """ "Properly", "half": how an act was done or how much of it, and nothing by itself."""
    return word.endswith("ly") or word in words.shares or word in words.partly or word in words.extents
