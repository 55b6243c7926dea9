"""Which run is spoken of: "run two", "run C", "the second run"."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, TakenBack, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.marks import MARK, mark_text
from logbook.reading.words.phrasing import table_of, words_of


def runs(row: Row, taken: set[int], language: Language) -> list[Claim]:
    """ "run two", "run C", and "run to" where nothing but a number can stand."""
    made: list[Claim] = []
    for match in row.find(f"(?:ON|OF)? (?P<w>RUN (?:NUMBER|HEDGE|BE)? (?P<m>{MARK}|LETTER))"):
        first, last = match.span("m")
        if taken.intersection(range(first, last)):
            continue
        value = mark_text(row, first, last, language)
        if value is None:
            continue
        if row.items[last].concept == "APART" or _of_the_air(row, *match.span("w")) if last < len(row.items) else False:
            continue  # "the staples run three apart"
        if "NOT" in [item.concept for item in row.items[max(0, match.start() - 1) : match.start("w")]]:  # "run two, not run three"
            taken.update(range(match.start("w"), match.end("w")))
            continue
        taken.update(range(match.start("w"), match.end("w")))
        backs = row.items[last - 1].took_back
        one = claim(row, "run", value, match.start("w"), match.end("w"))
        made.append(replace(one, took_back=tuple(TakenBack(str(b.value.value), b.start, b.end) for b in backs if b.concept == "NUM")))
    for first, at in hung_runs(row):
        if at not in taken:
            taken.update(range(first, at + 1))
            made.append(claim(row, "run", mark_text(row, at, at + 1, language), first, at + 1))
    for match in row.find(f"(?P<k>KIND) NUMBER? {MARK} COMMA? (?P<w>(?:ON|FROM) DET? BRANCH_WORD NUMBER? (?P<m>{MARK})) (?=SEP|$|BE|HAVE|AND|WITH)"):  # "pieza recta 14 en el ramal dos"
        if row.items[match.start("k")].concept not in _OF_A_BRANCH and not taken.intersection(range(*match.span("w"))):
            taken.update(range(*match.span("w")))
            made.append(claim(row, "run", mark_text(row, *match.span("m"), language), *match.span("w")))
    for match in row.find("(?P<f>OF|UP|ON|FILLER|WITH) (?P<m>MARKED|NUM) (?P<w>ON (?P<r>NUM)) (?=COMMA|STOP)"):  # "that's it for twelve on two": the piece and its run
        named = row.items[match.start("m")].concept == "MARKED" or row.items[match.start("m")].value.value >= 10
        if named and row.words(*match.span("f")).lower().split()[-1] in words_of("small.closes_with") and not taken.intersection(range(*match.span("w"))):
            taken.update(range(*match.span("w")))
            made.append(claim(row, "run", mark_text(row, *match.span("r"), language), *match.span("w")))
    for match in row.find("(?P<w>(?P<o>WORD|ANOTHER|FILLER) RUN) (?!NUM|NUMBER|LETTER|MARKED)"):
        number = _ORDINALS.get(row.words(match.start("o"), match.end("o")).lower().split()[-1])
        if number is not None and not taken.intersection(range(*match.span("w"))):
            taken.update(range(*match.span("w")))
            made.append(claim(row, "run", str(number), *match.span("w")))
    for match in row.find("(?P<w>RUN (?P<to>TO|OF|ON|WORD)) (?=COMMA|STOP|KIND|SIZE|$|FITTING|FILLER)"):
        word = row.items[match.start("to")]
        number = table_of("small.sounds").get(row.text[word.start : word.end].lower())
        if number is None or match.start("to") in taken:
            continue
        taken.update(range(*match.span("w")))
        one = claim(row, "run", str(number[0]), *match.span("w"))
        made.append(replace(one, read_as=f"{row.text[row.items[match.start('w')].start:row.items[match.start('w')].end]} {number[1]}"))
    return made


def _of_the_air(row: Row, first: int, last: int) -> bool:
    """ "The air in straight 4 runs 120": how warm it is."""
    return row.words(first, first + 1).lower() == "runs" and last - first == 2 and any(item.concept in ("AIR", "AIR_TEMP", "STATIC") for item in row.items[row.sentence_start(first) : first])


def hung_runs(row: Row) -> list[tuple[int, int]]:
    """ "Colgantes en la línea siete cada siete pies y en la ocho cada seis": where the words of each further run begin, and the item of its number."""
    found: list[tuple[int, int]] = []
    kinds = [at for at, item in enumerate(row.items) if item.concept.startswith("K_")]
    if not kinds or any(row.items[at].concept != "K_HANGER" for at in kinds):
        return found
    first = next((match.start("m") for match in row.find("RUN (?P<m>NUM)")), None)
    numbers = [] if first is None else [row.items[first].value.value]
    for match in row.find("(?:COMMA|AND|STOP) (?:AND )?(?P<w>ON (?:DET|RUN|DET RUN) (?P<m>NUM)) (?=BE? (?:EVERY|TO|ON)? (?:LEN|NUM))"):
        value = row.items[match.start("m")].value.value
        spaced = any(item.concept in ("LEN", "NUM") for item in row.items[: match.start()][-3:])
        if first is not None and first < match.start() and spaced and value not in numbers:
            numbers.append(value)
            found.append((match.start("w"), match.start("m")))
    return found


_OF_A_BRANCH = ("K_BRANCH", "K_COLLAR", "K_REGISTER", "K_ACCESS_DOOR")  # these sit on a branch that is a piece
_ORDINALS = {word: at for row in ("first second third fourth fifth sixth", "primera segunda tercera cuarta quinta sexta", "primer segundo tercer cuarto quinto sexto") for at, word in enumerate(row.split(), 1)}
