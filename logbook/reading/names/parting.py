"""Where a note on several pieces may be parted: before each sentence that names another piece."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.kinds import KIND_CONCEPTS
from logbook.reading.names.listed import all_of_them
from logbook.reading.clauses.marks import mark_text
from logbook.reading.names.pointing_back import points_back

_STOPS = ("STOP", "QUERY")
_LEANS = frozenset("SAME_THING SAME_SIZE SAME_AS CORRECTION_ON SHOULD_HAVE".split())
_OF_ONE = frozenset("SIDE SIDE_WORD SIDES_ALL END JOINT ENDING AROUND OVER NUM DET PANEL".split())  # "both sides", "each end"
_NAMES = frozenset((*KIND_CONCEPTS, "FITTING", "NUMBER", "GENERIC", "BRANCH_WORD")) - {"K_REPAIR"}
_COUNTS = frozenset("BY WIDE HIGH SIDE SIDE_WORD STAPLES TABS DEG COUNTED LEN FRAC SCREWS WASHERS TIMES".split())  # what a number right before it counts or measures
_COUNTS_MORE = _COUNTS | frozenset("LONG EVERY VANES BOARD TAPE TAPES ROUND OVER BACK APART JOINT END".split())
_MEASURES = frozenset("BY EVERY BACK RUN OVER LEN FRAC HEDGE SIZE BE".split())  # what a number right behind it measures
_LISTS = _NAMES | {"AND", "COMMA", "DET", "FILLER"}
_POINTED_AT = frozenset("VANES FLAP DAMAGE FACING".split())
_LEAST = 10  # below it a number with no kind counts more often than it names
_NO_MARKS = (90, 60, 45, 30, 181)  # a turn, or the tape


def parted(row: Row, language: Language) -> list[tuple[int, frozenset[str]]]:
    """The places of the text where parts begin, each with the marks that its first sentence may name; no more than one place where the note is one."""
    found: list[tuple[int, frozenset[str]]] = []
    seen: set[str] = set()
    here: set[str] = set()  # those of the part so far
    listed: frozenset[str] = frozenset()
    counted = False
    for begin, end in _sentences(row):
        if begin == 0 and (listed := _only_listed(row, end, language)):
            continue  # "tees 47 and 43. 47 is ..., 43 is ...": what they are, the note as a whole tells
        if not seen and _only_counted(row, begin, end):
            counted = True
            continue
        named = _named(row, begin, end, language)
        if listed and row.words(begin, begin + 1) in listed:
            named |= {row.words(begin, begin + 1)}
        if not found:
            begins = bool(named) or any(item.concept in ("NUM", "MARKED") for item in row.items[begin:end])  # the first may be named by any number
        else:
            begins = bool(named - here) and (bool(named - seen) or row.items[begin].concept not in ("IT", "THIS", "BE"))  # "it's tied into straight nine" goes back to none
        if begins:
            found.append((row.items[begin].start if found or listed or counted else 0, named))
            here = set()
        here |= named
        seen |= named
    return found if len(found) > 1 and not _leans(row) and not points_back(row, language) else []


def _only_listed(row: Row, end: int, language: Language) -> frozenset[str]:
    """The marks of a first sentence that names several pieces and tells nothing."""
    numbers = [at for at in range(end) if row.items[at].concept in ("NUM", "MARKED")]
    if len(numbers) < 2 or numbers[0] > 3 or not all(row.items[at].concept in _LISTS for at in range(end) if at not in numbers):
        return frozenset()
    return frozenset(mark for at in numbers if (mark := mark_text(row, at, at + 1, language)) is not None)


def _only_counted(row: Row, begin: int, end: int) -> bool:
    """ "Two for run thirteen.": how many he is going to tell of."""
    told = [item.concept for item in row.items[begin:end] if item.concept not in ("I", "HAVE", "FILLER", "ANOTHER", "COMMA")]
    return told in (["NUM", "OF", "RUN", "NUM"], ["NUM", "ON", "RUN", "NUM"], ["NUM", "FROM", "RUN", "NUM"])


def _sentences(row: Row):
    """The items of each sentence; what is written on a line of its own is one."""
    begin = 0
    for at, item in enumerate(row.items):
        if item.concept in _STOPS or at > begin and "\n" in row.text[row.items[at - 1].end : item.start]:
            if at > begin:
                yield begin, at
            begin = at + (item.concept in _STOPS)
    if begin < len(row.items):
        yield begin, len(row.items)


def _named(row: Row, first: int, last: int, language: Language) -> frozenset[str]:
    """The numbers of a sentence that may be marks."""
    found: set[str] = set()
    for at in range(first, last):
        item = row.items[at]
        if item.concept not in ("NUM", "MARKED") or item.concept == "NUM" and (item.value.value.denominator != 1 or item.value.value < 1):
            continue
        begin = at
        while begin > first and row.items[begin - 1].concept in ("NUM", "LETTER", "DASH", "DET"):
            begin -= 1
        if not _tells_where(row, first, begin) and (_is_behind_its_kind(row, first, begin, at, last) or _stands_for_a_piece(row, first, begin, at, last)):
            found.update(mark for start in range(begin, at + 1) if (mark := mark_text(row, start, at + 1, language)) is not None)
    return frozenset(found)


def _is_behind_its_kind(row: Row, first: int, begin: int, at: int, last: int) -> bool:
    """ "Straight nine", "elbow number nineteen", "31 straight"."""
    behind = row.items[at + 1].concept if at + 1 < last else ""
    if begin == first:
        return behind in _NAMES
    apart = behind == "LEN" and any(item.concept in ("ON", "IN", "OF") for item in row.items[max(first, begin - 3) : begin - 1])  # "the staples on number 58 three inches"
    return row.items[begin - 1].concept in _NAMES and (apart or behind not in _COUNTS)


def _tells_where(row: Row, first: int, begin: int) -> bool:
    """ "It's in straight twelve": where the piece is that was named before."""
    led = [item.concept for item in row.items[first:begin] if item.concept not in ("DET", "IT", "THIS", *_NAMES)]
    return len(led) == 2 and led[0] == "BE" and led[1] in ("IN", "ON", "TO", "OFF", "OVER", "FROM", "TIED")


def _stands_for_a_piece(row: Row, first: int, begin: int, at: int, last: int) -> bool:
    """ "Half of forty-six", "the vanes in 7", "B8"; not "three in twenty", "mine's twenty"."""
    item, led = row.items[at], [one.concept for one in row.items[max(first, begin - 2) : begin]]
    if at + 1 < last and row.items[at + 1].concept in _COUNTS_MORE or led[-1:] and led[-1] in _MEASURES or led[-1:] == ["K_REPAIR"]:
        return False
    if item.concept == "MARKED" or led[-1:] == ["FORGOT"] or led[-1:] in (["ON"], ["IN"], ["OF"]) and led[0] in _POINTED_AT:
        return True
    measured = led[-1:] in (["ON"], ["IN"]) and led[0] in ("NUM", "LEN", "FRAC") and "EVERY" not in [one.concept for one in row.items[max(first, begin - 3) : begin]]
    return item.value.value >= _LEAST and item.value.value not in _NO_MARKS and not measured


def _leans(row: Row) -> bool:
    """Whether something is said of several pieces at once, of one as of another, or puts the number of one right."""
    for at, item in enumerate(row.items):
        if item.concept in _LEANS or item.concept == "ALL" and all_of_them(row, at):
            return True
        if item.concept in ("BOTH", "EACH") and not (at + 1 < len(row.items) and row.items[at + 1].concept in _OF_ONE):
            return True
        if item.concept == "FIX" and row.sentence_start(at) >= at - 3 and _puts_right_a_number(row, at):
            return True
    return False


def _puts_right_a_number(row: Row, at: int) -> bool:
    """ "No, hold on, it's B5"."""
    return any(item.concept in ("NUM", "MARKED") for item in row.items[at + 1 : min(at + 4, row.sentence_end(at))])
