"""Tokens to items: every stretch of text becomes a concept of the trade, a measure, or a word that means nothing here.

The grammar works on items only. An item's `concept` is an upper-case name; `value` holds what the concept carries
(a side, a kind, a measure, a mark's text). `read_as` tells what a misheard word was taken for.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache

from rapidfuzz import fuzz, process

from logbook.languages import LANGUAGES
from logbook.languages.language import Language, Misheard
from logbook.reading.words import measures
from logbook.reading.words.closure_marks import closure_mark
from logbook.reading.words.phrasing import words_of
from logbook.reading.words.spelled import cuts_of, laid_out, written_out
from logbook.reading.words.tokens import Token, bare, lows, tokens
from logbook.record import record

FUZZY_SCORE = 84  # of 100; measured: "transission" 86, while "tea" is nearer to "taped" than to "tee"
FUZZY_LETTERS = 6  # shorter words go through written aliases only
WHOLE = "whole"  # value of a place that needs no other word: "outdoors"


@record
class Item:
    concept: str
    value: object
    start: int
    end: int
    first: int  # tokens first to last - 1
    last: int
    read_as: str | None = None
    took_back: tuple[Item, ...] = ()  # what a correction right here replaced


def concept_at(items, at: int) -> str:
    """The concept of the item at a place, or nothing before the first and behind the last."""
    return items[at].concept if 0 <= at < len(items) else ""


@dataclass(frozen=True)
class Book:
    """A language's lexicon, laid out for looking up word by word (phrases) or by first word. Nobody writes into it."""

    language: Language
    phrases: Mapping[str, object]  # word -> further words, and under "" the concept and value of what ends there
    units: measures.Units
    misheard: Mapping[str, tuple[tuple[tuple[str, ...], Misheard], ...]]
    fuzzy: Mapping[str, str]
    known: frozenset[str]


@cache
def book(code: str) -> Book:
    """The lexicon of a language. In Spanish, trade English stands behind it (people mix)."""
    language = LANGUAGES[code]
    phrases: dict = {}
    known: set[str] = set()
    rows = laid_out(one for one in language.thumbs.shorts if one.same)
    also: list[tuple[str, object]] = []
    for concept, value, spelled in _entries(language):
        for phrase in spelled.split("|"):
            words = lows(phrase)
            _learn(phrases, known, words, (concept, value))
            if any(row.spelled in phrase for word in words if word in rows for row in rows[word]) and (cuts := cuts_of(phrase, tokens(phrase), rows)):  # "could have": the text is read with "could've"
                also.append((written_out(phrase, cuts), (concept, value)))
    for phrase, means in also:
        _learn(phrases, known, lows(phrase.lower()), means)
    if language.accents_fall:
        _without_accents(phrases, language)
    units: dict[str, list] = {}
    for unit, spelled in language.units:
        for phrase in spelled.split("|"):
            words = lows(phrase)
            units.setdefault(words[0], []).append((words, unit))
    misheard: dict[str, list] = {}
    for row in language.misheard:
        words = lows(row.words)
        misheard.setdefault(words[0], []).append((words, row))
    longest = lambda rows: tuple(sorted(rows, key=lambda row: -len(row[0])))  # noqa: E731
    return Book(
        language=language,
        phrases=phrases,
        units={word: longest(rows) for word, rows in units.items()},
        misheard={word: longest(rows) for word, rows in misheard.items()},
        fuzzy=dict(language.fuzzy),
        known=frozenset(known) | language.telling,
    )


def _learn(phrases: dict, known: set[str], words: tuple[str, ...], means) -> None:
    """A phrase without a word would stand everywhere and lead on to nothing: two strokes behind one another in a list of words are refused."""
    if not words:
        raise ValueError(f"a phrase of {means!r} has no word")
    path = phrases
    for one in words:
        path = path.setdefault(one, {})
    known.update(words)
    path.setdefault(_END, means)


def _without_accents(phrases: dict, language: Language) -> None:
    """Every phrase once more as hands and ears write it, without accents, where that spelling means nothing else."""
    for concept, value, spelled in _entries(language):
        for phrase in spelled.split("|"):
            if phrase.isascii():
                continue
            words = tuple(map(bare, lows(phrase)))
            if words == lows(phrase) or (len(words) == 1 and words[0] in language.accents_kept):
                continue
            path = phrases
            for one in words:
                path = path.setdefault(one, {})
            path.setdefault(_END, (concept, value))


def _entries(language: Language):
    """(concept, value, spellings) of everything that is not a number; earlier rows win over later of one length."""
    for concept, spelled in language.concepts:
        yield concept, None, spelled
    for kind, spelled in language.kinds:
        yield kind_concept(kind), kind, spelled
    for sides, spelled in language.sides:
        yield "SIDE", tuple(sides.split()), spelled
    for service, spelled in language.services:
        yield "SERVICE", service, spelled
    for closure, spelled in language.closures:
        yield "C_MASTIC" if closure == "mastic" else "CLOSURE", closure, spelled
    for damage, spelled in language.damages:
        yield "DAMAGE", damage, spelled
    for harm, spelled in language.harms:
        yield "HARM", harm, spelled
    for method, spelled in language.methods:
        yield "METHOD", method, spelled
    for place in language.places:
        yield "PLACE_NOUN", None, place
    for place in language.whole_places:
        yield "PLACE_NOUN", WHOLE, place


def kind_concept(kind: str) -> str:
    return "K_" + kind.upper()


def itemise(found: tuple[Token, ...], lexicon: Book) -> tuple[Item, ...]:
    """Every token in exactly one item, in order."""
    rough: list[Item] = []
    at = 0
    while at < len(found):
        item = _item_at(found, at, lexicon)
        rough.append(item)
        at = item.last
    return _settle(rough, found, lexicon)


def _item_at(found, at: int, lexicon: Book) -> Item:
    token = found[at]
    mark = closure_mark(found, at)
    if mark is not None:
        return _make(found, "MARK181", mark.value, at, mark.end, mark.read_as)
    if _is_letter(found, at):
        return _make(found, "LETTER", token.low, at, at + 1)
    named = _phrase(found, at, lexicon)
    if named is not None and named.concept == "NUMBER" and found[at].low == "no" and not _number_follows(found, named.last, lexicon):
        named = _phrase(found[: at + 1], at, lexicon)  # "No." that ends a sentence is no number
    if named is not None and named.last > at + 1 and closure_mark(found, named.last - 1) is not None:
        named = _phrase(found[: named.last - 1], at, lexicon)  # "with that one eighty-one A P"
    if named is not None and named.last - named.first == 2:  # "cada uno y cuarto": the number goes on behind the phrase
        number = measures.read(found, named.last - 1, lexicon.language, lexicon.units)
        if number is not None and number.end > named.last and (number.raw.denominator != 1 or number.unit is not None):
            named = _phrase(found[: at + 1], at, lexicon) or named
    measured = measures.read(found, at, lexicon.language, lexicon.units) if measures.may_begin(found, at, lexicon.language, lexicon.units) else None
    if measured is not None and (named is None or named.last <= max(measured.end, at + 1)):
        return _make(found, measured.sort, measured, at, measured.end)
    heard = _misheard(found, at, lexicon)
    if heard is not None and (named is None or named.last <= heard.last):
        return heard
    if named is not None:
        return named
    if token.sort == "sign" and token.low == "/" and token.gap:
        return _make(found, "COMMA", token.low, at, at + 1)
    if token.sort == "sign":
        return _make(found, _SIGNS.get(token.low, "SIGN"), token.low, at, at + 1)
    near = _fuzzy(token.low, lexicon.language.code) if len(token.low) >= FUZZY_LETTERS else None
    if near is not None:
        concept, meant = near
        kind = "mastic" if concept == "C_MASTIC" else concept[2:].lower() if concept[:2] in ("K_", "D_") else None
        concept = "DAMAGE" if concept.startswith("D_") else concept
        return _make(found, concept, kind, at, at + 1, meant)
    return _make(found, "LETTER" if len(token.low) == 1 else "WORD", token.low, at, at + 1)


def _number_follows(found, at: int, lexicon: Book) -> bool:
    number = measures.read(found, at, lexicon.language, lexicon.units) if at < len(found) else None
    if number is not None and number.end < len(found) and found[number.end].low in ("by", "x", "×"):
        return False  # "vanes, no. Ten by ten": a size
    return number is not None or at < len(found) and _is_letter(found, at)


def _is_letter(found, at: int) -> bool:
    """A letter of a mark or a run ("7A", "B-12", "run A"), not the article nor a unit."""
    token = found[at]
    if token.sort != "word" or len(token.text) != 1 or token.low == "x":
        return False
    behind = found[at - 1] if at else None
    ahead = found[at + 1] if at + 1 < len(found) else None
    after_number = behind is not None and behind.sort == "number" and token.gap == "" and token.low not in ("m", "f", "c")
    before_number = ahead is not None and ahead.sort == "number" and ahead.gap in ("", "-")
    says_i = token.text == "I" and ahead is not None and ahead.sort == "word"  # "the elbow I sent in"
    named = behind is not None and token.text.isupper() and behind.bare in words_of("small.before_letter") and not says_i
    return after_number or before_number or named


_SIGNS = {".": "STOP", "!": "STOP", "?": "QUERY", ",": "COMMA", ";": "COMMA", ":": "COMMA", "—": "COMMA", "–": "COMMA",
          "-": "COMMA", "…": "COMMA", "#": "NUMBER", "&": "AND", "@": "ON", "¿": "ASKS", "+": "AND", "\n": "STOP"}  # fmt: skip


def _make(found, concept, value, first, last, read_as=None) -> Item:
    return Item(concept, value, found[first].start, found[last - 1].end, first, last, read_as)


_END = ""  # key of what a path of words stands for; no token is empty


def _phrase(found, at: int, lexicon: Book) -> Item | None:
    best = _longest(lexicon.phrases, found, at, 0)
    if best is None:
        return None
    count, concept, value = best
    articles = words_of("small.articles")
    if count > 1 and found[at].low in articles and found[at + 1].low not in articles:  # "the facing" does not hide what "facing's gone" is
        further = _longest(lexicon.phrases, found, at + 1, 0)
        if further is not None and further[0] >= count and further[1] != "TIED":  # "the joint to elbow 12" is a thing
            count, concept, value = further[0] + 1, *further[1:]
    item = _make(found, concept, value, at, at + count)
    several = concept == "SIDE" and len(value) > 1
    if count > 1 and found[at].low in articles and not several:  # an article belongs to the phrase, not to its words
        return replace(item, start=found[at + 1].start)
    return item


def _longest(path, found, at: int, count: int):
    """The longest phrase along the words from here: (tokens, concept, value). A word with its accents goes before one without."""
    ended = path.get(_END)
    best = None if ended is None else (count, *ended)
    if at >= len(found):
        return best
    token = found[at]
    for word in (token.low,) if token.low == token.bare else (token.low, token.bare):
        further = path.get(word)
        deeper = None if further is None else _longest(further, found, at + 1, count + 1)
        if deeper is not None and (best is None or deeper[0] > best[0]):
            best = deeper
    return best


def _misheard(found, at: int, lexicon: Book) -> Item | None:
    rows = tuple(
        (len(words), row)
        for words, row in lexicon.misheard.get(found[at].low, ())
        if all(at + k < len(found) and found[at + k].low == w for k, w in enumerate(words))
    )
    if not rows:
        return None
    longest = rows[0][0]
    return _make(found, "MISHEARD", tuple(row for size, row in rows if size == longest), at, at + longest)


@cache
def _fuzzy(word: str, code: str) -> tuple[str, str] | None:
    """The trade word a word nobody knows is nearest to, if it is near enough."""
    lexicon = book(code)
    if word in lexicon.known or not word.isalpha():
        return None
    found = process.extractOne(word, lexicon.fuzzy.keys(), scorer=fuzz.ratio, score_cutoff=FUZZY_SCORE)
    if found is None or abs(len(found[0]) - len(word)) > 2 or found[0][0] != word[0]:
        return None
    return lexicon.fuzzy[found[0]], found[0]


def _settle(rough: list[Item], found, lexicon: Book) -> tuple[Item, ...]:
    """Misheard words become what they mean where their neighbours leave one reading, else what they are."""
    settled: list[Item] = []
    for place, item in enumerate(rough):
        if item.concept != "MISHEARD":
            settled.append(item)
            continue
        row = next((row for row in item.value if _fits(row, settled, rough, place) and not (row.concept == "BUTT" and item.last < len(found) and found[item.last].low in lexicon.language.run_on.pointing)), None)  # "but the joint …"
        if row is not None:
            value = "mastic" if row.concept == "C_MASTIC" else row.concept[2:].lower() if row.concept[:2] in ("K_", "D_") else None
            concept = "DAMAGE" if row.concept.startswith("D_") else row.concept
            settled.append(replace(item, concept=concept, value=value, read_as=None if row.plain else row.meant))
            continue
        at = item.first
        while at < item.last:
            plain = _phrase(found, at, lexicon)
            measured = measures.read(found, at, lexicon.language, lexicon.units)
            if measured is not None and (plain is None or plain.last <= measured.end):
                plain = _make(found, measured.sort, measured, at, measured.end)
            if plain is None or plain.last > item.last:
                plain = _make(found, "WORD", found[at].low, at, at + 1)
            settled.append(plain)
            at = plain.last
    return tuple(settled)


_ORDERS = ("TO", "WILL", "GOING_TO", "PENDING", "NEED", "REMIND", "NOT", "NOT_DONE", "FORGOT", "IF", "QUESTION", "LATER", "SAYS", "NOT_FORGET")


def _is_an_act(settled) -> bool:
    """Whether a lost "-d" may be put back: a piece was named before, and nothing right before makes it an order or a plan."""
    named = any(item.concept.startswith("K_") or item.concept in ("FITTING", "NUMBER") for item in settled)
    for item in reversed(settled[-6:]):
        if item.concept in ("COMMA", "STOP", "STAPLED", "TAPED"):
            break
        if item.concept in _ORDERS or item.concept in ("I", "OTHER"):
            return False
    return named


def _so_wide(settled) -> bool:
    """ "Two inch staples, three inch tape, rubbed": the tape is the thing that is so wide; "every two inch tape and rubbed" goes on with what was done."""
    said = [item.concept for item in settled[-2:]]
    return said[-1:] == ["LEN"] and said[0] not in ("EVERY", "STAPLED", "STAPLES", "APART")


def _fits(row: Misheard, settled, rough, place: int) -> bool:
    if row.lost_ending and not _is_an_act(settled):
        return False
    if row.concept == "TAPED" and _so_wide(settled):
        return False
    if not row.before and not row.after:
        return True
    behind = tuple(item.concept for item in settled[-row.near :])
    if any(concept in behind for concept in row.before):
        return True
    ahead = [_likely(item) for item in rough[place + 1 : place + 1 + max(row.near, 3)]]
    for wanted in row.after:
        sequence = wanted.split()
        if len(sequence) > 1:
            if ahead[: len(sequence)] == sequence:
                return True
        elif wanted in ahead[: row.near]:
            return True
    return False


def _likely(item: Item) -> str:
    return item.value[0].concept if item.concept == "MISHEARD" else item.concept
