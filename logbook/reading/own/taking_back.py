"""Words that take back: a whole note, the last one, or what was just said."""

from __future__ import annotations

import re
from functools import cache

from logbook.languages import LANGUAGES
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import Likely
from logbook.reading.clauses.marks import MARK, mark_text
from logbook.reading.words.phrasing import words_of
from logbook.said import Withdraws

_NAMES = {
    "LENGTH": ("length",), "LONG": ("length",), "SIZE_WORD": ("inlet_size", "outlet_size"), "OUTLET": ("outlet_size",),
    "INLET": ("inlet_size",), "TAPE": ("taped", "closure", "closure_mark", "tape_width"), "TAPED": ("taped",), "STAPLES": ("stapled", "staple_spacing"),
    "STAPLED": ("stapled",), "VANES": ("vanes",), "EVERY": ("staple_spacing",), "RUN": ("run",), "BACK": ("side_moves",), "NUMBER": ("mark",),
    "SLOPE": ("stated_slope", "taper_length"), "RUBBED": ("rubbed_down",), "SERVICE": ("service",),
}  # fmt: skip
_NAMES_IT = ("kind", "mark", "run", "place", "service", "stage")
_LEAD = re.compile(r"(?:(?:okay|ok|hey|oh|and|so|well|uh|please|no|wait|actually|sorry|just|you can|go ahead and|let's|can you|could you|we can|i want to|i need to)[, ]+)*")
_CLEARS = ("wipe", "clear", "kill", "remove", "pull", "take out", "drop")
_NOTES = ("note", "recording", "message", "entry", "one", "memo", "nota", "mensaje", "audio", "grabación", "grabacion")
_SAYS = ("scratch", "strike", "scrap", "borra", "olvida", "forget")


def withdraws(row: Row, language: Language, text: str) -> tuple[Withdraws | None, set[int]]:
    """What this note takes back of the log, and the items that say so."""
    kept = _kept(row, language)
    if kept:
        return None, kept
    said = _in_words(row, language)
    if said is not None:
        return said
    row = row.blanked({at + 1 for at, (one, other) in enumerate(zip(row.items, row.items[1:])) if other.concept == "SCRATCH" and one.concept in ("DET", "NO", "NUM")})  # "not a scratch on it": a thing, and no word to strike
    for match in row.find("(?P<s>SCRATCH|FIX) (?:FILL|THIS|OF|ON|ALL|THINK){0,3} (?P<t>LAST_ONE)"):
        if _says(row, match.start("s")):
            return _made("last", None, row, match.start(), match.end()), _sentence(row, match.start())
    for match in row.find(f"(?P<s>SCRATCH) (?:FILL|THIS|OF|ON){{0,3}} (?:FITTING|NUMBER|KIND){{1,2}} (?:NUMBER)? (?P<m>{MARK})"):
        mark = mark_text(row, *match.span("m"), language)
        if mark is not None:
            return _made("mark", mark, row, match.start(), match.end()), _sentence(row, match.start())
    for match in row.find("(?P<s>WIPE|SCRATCH|MOVE|WORD) (?:FILL|THIS|OFF|OUT){0,2} (?P<t>LAST_ONE)"):
        if _word(row, row.items[match.start("s")]) in _CLEARS and any(word in row.words(*match.span("t")).lower() for word in _NOTES[:4]):  # "wipe that last note"
            return _made("last", None, row, match.start(), match.end()), _sentence(row, match.start())
    for match in row.find(f"(?P<s>SCRATCH) (?P<m>{MARK}) (?=COMMA|STOP|$)"):
        mark = mark_text(row, *match.span("m"), language)
        rest = row.text[row.items[match.start()].start :].lower()
        if mark is not None and any(word in rest for word in _NOTES[:4]) and not any(item.concept in ("FIX", "SIZE") for item in row.items[match.end() :]):  # "forget forty-nine, don't keep that note"
            return _made("mark", mark, row, match.start(), match.end()), _sentence(row, match.start())
    for match in row.find("(?P<s>SCRATCH) (?:FILL|THIS|OF|ON|ALL){0,2} (?P<t>ALL_THAT|IT|THIS|$) | (?P<s2>SCRATCH) (?P<t2>THIS|IT|ALL_THAT)"):
        if match.end() < len(row.items) and row.items[match.end()].concept not in ("COMMA", "STOP", "I", "FILLER", "QUERY", "AND", "BE"):
            continue
        nxt = [item.concept for item in row.items[match.end() : match.end() + 4]]
        if _goes_on(row, match.end()):
            continue
        if "FIX" in nxt or any(c in ("SIZE", "NUM", "LEN") for c in nxt):
            continue
        if (one := _the_one_named(row, match.start(), language)) is not None:
            return _made("mark", one, row, row.sentence_start(match.start()), match.end()), _sentence(row, row.sentence_start(match.start()))
        before = any(item.concept in ("SIZE", "TAPED", "STAPLED", "FITTING") or item.concept.startswith("K_") for item in row.items[: match.start()])
        what = "this" if before or _names_this(row.words(match.start(), match.end())) else "last"
        return _made(what, None, row, match.start(), match.end()), _sentence(row, match.start())
    only = [item for item in row.items if item.concept not in ("STOP", "COMMA", "FILLER")]
    if only and only[0].concept == "FIX" and _word(row, only[0]).startswith(_SAYS) and not any(
        item.concept in ("NUM", "SIZE", "LEN", "TAPED", "STAPLED") for item in only
    ):
        at = row.items.index(only[0])
        return _made("last", None, row, at, at + 1), set(range(len(row.items)))
    return None, set()


@cache
def _keeps(code: str) -> Likely:
    return Likely(LANGUAGES[code].turns.keeps)


def _kept(row: Row, language: Language) -> set[int]:
    """ "Don't scratch that last note, it was right after all": the words of a note that is not to be taken back, and take nothing back."""
    match = _keeps(language.code).search(row.text.lower().replace("’", "'"))
    if match is None:
        return set()
    first = next(at for at, item in enumerate(row.items) if item.end > match.start())
    last = next((at for at in range(first, len(row.items)) if row.items[at].start >= match.end() and row.items[at].concept in ("COMMA", "STOP", "QUERY")), len(row.items))
    return set(range(first, last))


_VERB = (
    r"(?:drop|lose|kill|toss|trash|dump|scrap|scratch|erase|delete|ignore|forget(?: about)?|throw (?:out|away)|disregard|never mind|nevermind|cancel|pull|strike|void|take (?:out|back|off)|take|wipe|skip|discard|remove|"
    r"don't (?:use|count|keep|log|save|send|file)|do not (?:use|count|keep|log|save|send))"
)


@cache
def _patterns(code: str) -> tuple[tuple[str, Likely, bool], ...]:
    """What is taken back, the words, and whether one of the verbs opens them."""
    return tuple((what, Likely(rf"(?<![\w'])(?:{pattern.replace('{verb}', _VERB)})"), "{verb}" in pattern) for what, pattern in LANGUAGES[code].turns.takes_back)


@cache
def _verbs() -> Likely:
    return Likely(rf"\b{_VERB}\b")


def _in_words(row: Row, language: Language) -> tuple[Withdraws, set[int]] | None:
    """ "drop the note I just gave you", "pull the note on straight nine", "scratch that whole note": a sentence of its own."""
    text = row.text.lower().replace("’", "'")
    verb = _verbs().search(text) is not None
    patterns = [(what, pattern) for what, pattern, opens in _patterns(language.code) if (verb or not opens) and pattern.may(text)]
    firsts = [at for at in range(len(row.items)) if at == 0 or row.items[at - 1].concept in ("STOP", "QUERY", "COMMA")]
    for first in firsts if patterns else ():
        last = row.sentence_end(first)
        if last == first:
            continue
        words = row.words(first, last).lower().replace("’", "'")
        lead = _LEAD.match(words).end()
        for what, pattern in patterns:
            match = pattern.match(words, lead)
            if match is None:
                continue
            start = row.items[first].start
            until = next((k for k in range(first, last) if row.items[k].start >= start + match.end()), last)
            if what != "mark":
                if _goes_on(row, until):
                    continue
                if until < last and row.items[until].concept not in ("COMMA", "STOP", "AND", "FILLER", "BUT", "I", "BE"):
                    continue
                if (one := _the_one_named(row, first, language)) is not None:
                    return _made("mark", one, row, row.sentence_start(first), until), _sentence(row, row.sentence_start(first))
                before = any(item.concept in ("SIZE", "TAPED", "STAPLED", "FITTING") or item.concept.startswith("K_") for item in row.items[:first])
                if what == "alone":  # of the note before; behind words of a piece it is not told of which
                    if before:
                        continue
                    what = "last"
                this = _names_this(row.words(first, until))
                return _made("last" if what == "this" and not before and not this else what, None, row, first, until), _sentence(row, first)
            named = next(row.find(f"(?:DET|FITTING|NUMBER|KIND){{0,3}} (?P<m>{MARK})", until, last), None)
            if named is not None and named.start() == until and _goes_on(row, named.end()):
                return None  # "scratch what I said about straight nine, it's not rubbed": set right, and not taken back
            if named is not None and named.start() == until and not _one_of_more(row, named.end(), last) and (mark := mark_text(row, *named.span("m"), language)) is not None:
                return _made("mark", mark, row, first, named.end()), _sentence(row, first)
    return None


def _one_of_more(row: Row, at: int, last: int) -> bool:
    """ "Forget twelve, we're on thirteen", "delete 12 and 13": another number stands behind."""
    return any(row.items[k].concept in ("NUM", "MARKED") and row.words(k, k + 1).lower() != "one" for k in range(at, last))


def _the_one_named(row: Row, first: int, language: Language) -> str | None:
    """ "88 never happened, forget it": the piece that the sentence before it names, where nothing is told of its work."""
    start = row.sentence_start(first)
    told = row.items[start:first]
    numbers = [at for at in range(start, first) if row.items[at].concept in ("NUM", "MARKED") and row.words(at, at + 1).lower() != "one"]
    if len(numbers) != 1 or any(item.concept in _OF_THE_WORK or item.concept in ("STAPLED", "TAPED", "RUBBED") for item in told) or any(row.items[at].concept not in ("DET", "FITTING", "NUMBER", "FILLER") and not row.items[at].concept.startswith("K_") for at in range(start, numbers[0])):
        return None
    why = language.turns.no_such
    return mark_text(row, numbers[0], numbers[0] + 1, language) if why and re.search(why, row.words(start, first).lower().replace("’", "'")) else None


_OF_THE_WORK = frozenset((*DENIED, "SIZE", "EVERY", "LEN"))
_SO_IS_IT = re.compile(r"(?:it|they|that|this one|these)(?: \w+)? ?(?:is|are|was|were|'s|'re|isn't|aren't|wasn't|weren't|ain't|is not|are not|was not|didn't|did|does|doesn't|has|hasn't)(?: not| never| only| so| true| right| done| finished| there| yet| all)*\b")


def _goes_on(row: Row, at: int) -> bool:
    """ "Forget that, it's not taped": what he says instead stands behind it, so that only what was said last is taken back."""
    end = next((k for k in range(at, len(row.items)) if row.items[k].concept in ("STOP", "QUERY")), len(row.items))
    while at < end and row.items[at].concept in ("COMMA", "AND", "BUT", "FILLER"):
        at += 1
    if at >= end:
        return False
    said = row.words(at, end).lower().replace("’", "'")
    return any(row.items[k].concept in _OF_THE_WORK for k in range(at, end)) or _SO_IS_IT.fullmatch(said) is not None


def _names_this(words: str) -> bool:
    """ "Ignore this note": the one that says so, where "scratch that" is of the one before."""
    said = words.lower().split()
    return said[-1:] == ["this"] or any(one in _THIS and two in _NOTES for one, two in zip(said, said[1:]))


_THIS = ("this", "esta", "este")


def scratched(row: Row) -> list[Claim]:
    """ "scratch the length": what is named loses its value and gets none."""
    made: list[Claim] = []
    for match in row.find("(?P<w>SCRATCH (?:DET|THIS|FILL){0,2} (?P<n>LENGTH|LONG|SIZE_WORD|OUTLET|INLET|TAPE|TAPED|STAPLES|STAPLED|VANES|EVERY|RUN|BACK|NUMBER|SLOPE|RUBBED|SERVICE)) (?!NUM|LEN|SIZE)"):
        made.append(claim(row, "(scratch)", _NAMES[row.items[match.start("n")].concept], *match.span("w")))
    for match in row.find("(?P<w>FIX) (?=STOP|$)"):
        if _word(row, row.items[match.start("w")]) in words_of("small.takes_back"):
            made.append(claim(row, "(scratch)", (), *match.span("w")))
    return made


def unsaid_again(row: Row, claims: list[Claim], language: Language) -> list[Claim]:
    """ "It's trimmed. Forget I said that, it's still in there": whatever was told right before is told no more."""
    made: list[Claim] = []
    for match in _unsaid(language.code).finditer(row.text.lower().replace("’", "'")):
        first = next((at for at, item in enumerate(row.items) if item.end > match.start()), 0)
        last = next((at for at in range(first, len(row.items)) if row.items[at].start >= match.end()), len(row.items))
        before = first
        while before and row.items[before - 1].concept in ("STOP", "QUERY", "COMMA"):
            before -= 1
        begin = row.sentence_start(before - 1) if before else 0
        names = tuple(dict.fromkeys(one.name for one in claims if begin <= one.first and one.last <= before and not one.name.startswith("(") and one.name not in _NAMES_IT))
        if names and not any(last <= one.first < row.sentence_end(first) for one in claims):  # what he says instead takes its place
            made.append(claim(row, "(scratch)", names, first, last))
    return made


@cache
def _unsaid(code: str) -> Likely:
    return Likely(LANGUAGES[code].turns.unsaid or "(?!)")


def _says(row: Row, at: int) -> bool:
    return row.items[at].concept == "SCRATCH" or _word(row, row.items[at]).startswith(_SAYS)


def _word(row: Row, item) -> str:
    return row.text[item.start : item.end].lower()


def _sentence(row: Row, at: int) -> set[int]:
    end = row.sentence_end(at)
    return set(range(at, end))


def _made(what: str, mark: str | None, row: Row, first: int, last: int) -> Withdraws:
    return Withdraws(what, mark, row.words(first, last), row.items[first].start, row.items[last - 1].end)
