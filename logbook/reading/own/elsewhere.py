"""What is of something else than a piece of the speaker's own: stock, paper, another's piece, another trade, a story, a lesson, a hope.

A fact needs a sign that this speaker made this piece; where the words around it are of something else they state nothing, until he
comes back to his own.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.elsewhere import BACK, CLAUSE, ON, SENTENCE, TO_COME, WORDS
from logbook.languages.language import Language
from logbook.reading.clauses.batches import plural
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.comes_back import back_at
from logbook.reading.clauses.denials import DENIED, PAST
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import Likely, alternatives, standing
from logbook.reading.words.phrasing import word
from logbook.reading.clauses.stance import CONDITION, DRAWING, OTHER, PLAN, Clause, built_so

_LEAD = re.compile(r"^[\W_]+")
_WORD = re.compile(r"[\w'-]+")
_NAMES = ("NUM", "MARKED", "LETTER")


@dataclass(frozen=True, slots=True)
class _Aside:
    cues: frozenset[str]
    words: Likely
    ways: tuple[Likely, ...]  # its alternatives, each with letters of its own
    reach: str
    why: str
    keeps: bool


@cache
def _asides(code: str) -> tuple[_Aside, ...]:
    language = LANGUAGES[code]
    names = "|".join(sorted(language.names)) or "(?!)"
    fill = lambda words: words.replace("{name}", f"(?:{names})").replace("{who}", language.elsewhere.who or "(?!)")  # noqa: E731
    return tuple(_Aside(one.cues, Likely(fill(one.words)), tuple(map(Likely, alternatives(fill(one.words)))), one.reach, one.why, one.keeps) for one in language.elsewhere.asides)


def elsewhere(row: Row, cut: tuple[Clause, ...], language: Language) -> dict[int, str]:
    """Item -> why it states nothing of a piece of his own."""
    found: dict[int, str] = {}
    if not language.elsewhere.asides:
        return found
    text = row.text.lower().replace("’", "'")
    said = frozenset(_WORD.findall(text))
    looked = [one for one in _asides(language.code) if not said.isdisjoint(one.cues) and one.words.may(text)]
    if not looked:
        return found
    begins = [one for one in looked if one.reach not in (BACK, WORDS)]
    anywhere = [(one, ways) for one in looked if one.reach in (BACK, WORDS) and (ways := standing(one.ways, text))]
    carried: tuple[str, int, str] | None = None  # (reach, sentence, why)
    keeps = False
    for place, clause in enumerate(cut):
        begin = row.items[clause.first - 1].end if clause.first else 0
        if row.items[clause.first].took_back:
            begin = row.items[clause.first].start  # "I told Sam two but it's really three": what is corrected tells nothing
        words = text[begin : row.items[clause.last - 1].end]
        bare = _LEAD.sub("", words)
        bare = bare[word(language.code, "elsewhere.leads").match(bare).end() :]
        if place and _is_called(row, cut[place - 1], clause, language):
            bare = f"{row.words(cut[place - 1].last - 1, cut[place - 1].last).lower()}, {bare}"
        if carried is not None and _ends(row, clause, carried, bare, place, language):
            carried = None
        told = next((one for one in begins if one.words.match(bare) and not (one.reach == TO_COME and _named(row, clause))), None) if carried is None or carried[0] != ON else None
        if told is not None and (_harms(row, clause, words, language) or told.why == DRAWING and built_so(row, clause, language)):
            told = None
        if told is not None and told.why == OTHER and row.items[clause.first].concept == "VANES" and _named(row, clause):
            told = None  # "vanes for elbow nine are sitting in the office": that one is without
        if told is not None and (_asked(row, clause, told.why) or told.reach == ON and told.why == OTHER and _named(row, clause)):
            told = None
        if told is not None and told.reach == TO_COME and _on_his_own(row, clause):
            told = None
        if told is not None and told.why == OTHER and _named(row, clause) and _and_he_goes_on(row, cut, place, language):
            told = None
        if told is not None:
            carried, keeps = (told.reach, clause.sentence, told.why), told.keeps
        if carried is not None:
            carried = (carried[0], max(carried[1], clause.sentence) if carried[0] != ON else carried[1], carried[2])
            back = _back_at_his(row, clause, language) if carried[2] == OTHER and carried[0] != ON else back_at(row, clause.first, clause.last) if carried[2] == DRAWING else None
            found.update({at: carried[2] for at in range(clause.first, back or clause.last) if not keeps or not _names_it(row, at)})
            carried = carried if back is None else None
            if carried is not None and carried[0] == CLAUSE:
                carried = None
        for one, ways in anywhere:
            if _apart(row, cut, place, begin, words, one, ways, found, language) and one.reach == BACK and carried is None:
                carried, keeps = (SENTENCE, clause.sentence, one.why), False
    return found


def signed(row: Row, cut: tuple[Clause, ...], claims: list[Claim]) -> list[Claim]:
    """Where no piece is named: without what is said of a thing nobody here knows ("the ramp is torn up", "the radio's got tape on it")."""
    strange = {clause.first: clause.last for clause in cut if _of_a_stranger(row, clause)}
    return [one for one in claims if not any(first <= one.first < last for first, last in strange.items())]


_LEADS = ("DET", "FILLER", "AND", "BUT", "COMMA", "THINK", "HEDGE")
_STRANGE = ("WORD", "BUILDING", "TRADE_NOISE")


def _of_a_stranger(row: Row, clause: Clause) -> bool:
    at = clause.first
    while at < clause.last and row.items[at].concept in _LEADS:
        at += 1
    names = at
    while at < clause.last and row.items[at].concept in _STRANGE:
        at += 1
    return names < at < clause.last and at - names < 4 and row.items[at].concept in ("BE", "HAVE")


def without(row: Row, aside: dict[int, str]) -> Row:
    """The row with its text blotted out where it is of something else, letter for letter."""
    if not aside:
        return row
    text = list(row.text)
    for at in aside:
        text[row.items[at].start : row.items[at].end] = "." * (row.items[at].end - row.items[at].start)
    return Row("".join(text), row.items, row.string)


def _ends(row: Row, clause: Clause, carried, bare: str, place: int, language: Language) -> bool:
    """Whether he is back at a piece of his own, or the sentence is over."""
    reach, sentence, why = carried
    named = _named(row, clause)
    if reach == TO_COME:
        return named or row.items[clause.first].concept == "BUT" or word(language.code, "elsewhere.own_deed").match(bare) is not None or clause.sentence > sentence and not _only_goes_on(row, clause, bare, language)
    if clause.sentence == sentence and (why == CONDITION or reach == ON and why in (DRAWING, PLAN)):
        return row.items[clause.first].concept == "BUT" or why == DRAWING and back_at(row, clause.first, clause.last) == clause.first
    if clause.sentence == sentence:
        if back_at(row, clause.first, min(clause.first + 4, clause.last)) is not None or back_at(row, clause.first, clause.last) == clause.first:
            return True
        again = any(word(language.code, "elsewhere.own_again").match(words) for words in (bare, row.words(clause.first, clause.last).lower()))
        return row.items[clause.first].concept == "BUT" and reach != ON or again and reach != ON or named and (_does(row, clause) or why == OTHER and _opens(row, clause))
    if why == CONDITION and clause.sentence == sentence + 1 and word(language.code, "elsewhere.unmet").match(bare):
        return False
    return reach != ON or word(language.code, "elsewhere.own_piece").match(bare) is not None or named


_DEEDS = ("STAPLED", "TAPED", "RUBBED", "HUNG", "QUERY")
_TO_DO = ("TAPE_IT", "STAPLE", "RUB", "TRIM", "WIPE", "HANG", "REPAIR_IT", "HEAT_IT")
_STILL_TO_COME = ("NEED", "WILL", "GOING_TO", "LATER", "PENDING", "REMIND")


def _on_his_own(row: Row, clause: Clause) -> bool:
    """ "… tomorrow I'll tape it", "Elbow's done, I'll do the tape later": what is to come is work on this piece."""
    concepts = {item.concept for item in row.items[clause.first : clause.last]}
    begun = any(item.concept.startswith("K_") or item.concept == "FITTING" for item in row.items[: clause.first])
    return not concepts.isdisjoint(_TO_DO) or not concepts.isdisjoint(PAST) or begun and not concepts.isdisjoint(DENIED)


def _only_goes_on(row: Row, clause: Clause, bare: str, language: Language) -> bool:
    """ "… Vanes too.", "Two inch tape for that one.": bare words behind what is to come, where no piece of his own was named before."""
    concepts = [item.concept for item in row.items[clause.first : clause.last]]
    if any(row.items[at].concept.startswith("K_") and row.items[at + 1].concept in _NAMES for at in range(clause.first - 1)):
        return False
    if any(concept in _STILL_TO_COME for concept in concepts):
        return True
    one = any(concept.startswith("K_") and not plural(row, clause.first + at) for at, concept in enumerate(concepts))
    return not (one or set(concepts) & set(_DEEDS) or word(language.code, "elsewhere.own_again").match(bare) or word(language.code, "elsewhere.own_piece").match(bare))


def _and_he_goes_on(row: Row, cut: tuple[Clause, ...], place: int, language: Language) -> bool:
    """ "The fellow on the roof stapled straight 9, me I taped it": of the piece that another began he tells what he did to it himself."""
    behind = cut[place + 1] if place + 1 < len(cut) else None
    if behind is None or behind.sentence != cut[place].sentence:
        return False
    said = row.words(behind.first, behind.last).lower()
    return word(language.code, "elsewhere.goes_on").match(said) is not None


def _names_it(row: Row, at: int) -> bool:
    item = row.items[at]
    return item.concept.startswith("K_") or item.concept in ("FITTING", "NUMBER") or item.concept in _NAMES and at > 0 and (row.items[at - 1].concept.startswith("K_") or row.items[at - 1].concept in ("FITTING", "NUMBER"))


def _does(row: Row, clause: Clause) -> bool:
    """ "…, straight nine is taped with the wide one": a piece by its number, and what it is or has."""
    at = next(at for at in range(clause.first, clause.last) if row.items[at].concept.startswith("K_"))
    begin = at - clause.first
    while at + 2 < clause.last and row.items[at + 2].concept in ("AND", "COMMA") and any(row.items[k].concept.startswith("K_") for k in range(at + 3, min(at + 5, clause.last))):
        at = next(k for k in range(at + 3, clause.last) if row.items[k].concept.startswith("K_"))  # "elbow 27 and elbow 28 have …"
    return begin <= 2 and any(row.items[k].concept in ("BE", "HAVE", "STAPLED", "TAPED", "NO", "NOT", "NOT_DONE", "WITHOUT") for k in range(at + 2, min(at + 4, clause.last)))


def _named(row: Row, clause: Clause) -> bool:
    return any(row.items[at].concept.startswith("K_") and row.items[at + 1].concept in _NAMES for at in range(clause.first, clause.last - 1))


def _opens(row: Row, clause: Clause) -> bool:
    """Whether the clause begins with a piece by its number."""
    at = next((at for at in range(clause.first, clause.last) if row.items[at].concept not in ("DET", "FILLER", "AND", "BUT", "ANOTHER")), clause.first)
    return at + 1 < clause.last and row.items[at].concept.startswith("K_") and row.items[at + 1].concept in _NAMES


def _is_called(row: Row, before: Clause, clause: Clause, language: Language) -> bool:
    """ "Pete, have 120 taped": the name by itself that the sentence begins with."""
    if before.sentence != clause.sentence or before.first and row.items[before.first - 1].concept not in ("STOP", "QUERY"):
        return False
    return before.last - before.first <= 2 and row.items[before.last - 1].value in language.names


def _asked(row: Row, clause: Clause, why: str) -> bool:
    """ "You want vanes in elbow nine? They're in.": a question, which its answer settles."""
    return why == DRAWING and clause.last < len(row.items) and row.items[clause.last].concept == "QUERY"


def _back_at_his(row: Row, clause: Clause, language: Language) -> int | None:
    """ "The truck is late so I built straight nine", "lunch is over and elbow nine has its vanes": where it is his own again, with no piece named before."""
    if (back := back_at(row, clause.first, clause.last)) is not None:
        return back
    for at in range(clause.first + 2, clause.last - 1):
        numbered = row.items[at].concept.startswith("K_") and row.items[at + 1].concept in _NAMES
        if row.words(at - 1, at).lower().split()[-1] in language.elsewhere.joins and (numbered or any(word(language.code, "elsewhere.own_again").match(row.words(k, clause.last).lower()) for k in (at, at - 1))):
            return at
        if row.items[at].concept.startswith("K_"):
            return None
    return None


def _harms(row: Row, clause: Clause, words: str, language: Language) -> bool:
    """ "The forklift punctured straight nine": what another did to this piece is how it is."""
    own = any(row.items[at].concept in ("IT", "FITTING", "FACING", "BOARD", "PANEL") or row.items[at].concept.startswith("K_") and row.items[at].concept != "K_HANGER" for at in range(clause.first, clause.last))
    return own and word(language.code, "elsewhere.harms").search(words) is not None


def _apart(row: Row, cut, place: int, begin: int, words: str, one: _Aside, ways: tuple[Likely, ...], found: dict[int, str], language: Language) -> bool:
    """Whether these words stand in the clause; the items they are of are put among those found."""
    clause, told = cut[place], False
    begin += len(words) - len(words := _LEAD.sub("", words))
    for match in (match for way in ways for match in way.finditer(words)):
        if one.reach == WORDS:
            found.update({at: one.why for at in range(clause.first, clause.last) if row.items[at].start < begin + match.end() and row.items[at].end > begin + match.start()})
        else:
            another = word(language.code, "elsewhere.another").match(words) is not None  # "the piece next to it is the other crew's"
            found.update(dict.fromkeys(range(clause.first if another else _piece_before(row, cut, place, begin + match.start()), clause.last), one.why))
        told = True
    return told


def _piece_before(row: Row, cut, place: int, until: int) -> int:
    """Where the piece that these words are of was named: in their sentence, or else in the one before."""
    clause = cut[place]
    first = next(one.first for one in cut if one.sentence == clause.sentence)
    before = next((one.first for one in cut if one.sentence == clause.sentence - 1), first)
    for start in (first, before) if clause.first == first else (first,):
        kinds = [at for at in range(start, clause.last) if row.items[at].start < until and row.items[at].concept.startswith("K_")]
        named = [at for at in kinds if at + 1 < len(row.items) and row.items[at + 1].concept in _NAMES]
        if len(named) > 1:
            return named[-1]
        if named or kinds:
            return start
    return first
