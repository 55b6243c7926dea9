"""Cases of the reader: plain text files a person can write and read.

A block is the words behind "> " and one line a fitting, `name=value; name=value`. A value ends in ~ when hedged, in !
when in conflict. `open=piece taped & hanging` lists open items; `amends=yes`; `same_as=15 except side_moves`. A line
`nothing` is no fitting, `shift: …` a start-of-shift note (`service=return for 5`), `withdraws: last`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from pathlib import Path
from zlib import crc32

from logbook import measure
from logbook.facts import BY_NAME, Move

CASES = Path(__file__).parent / "cases" / "reading"
_OF_THEIR_OWN = ("known_failures", "unread")  # read by their own tests
FILES = tuple(sorted(path.stem for path in CASES.glob("*.txt") if path.stem not in _OF_THEIR_OWN))


@dataclass(frozen=True)
class Said:
    value: object
    hedged: bool = False
    conflict: bool = False


@dataclass(frozen=True)
class Case:
    text: str
    language: str
    fittings: tuple[dict, ...]
    shift: tuple | None
    withdraws: str | None
    where: str

    def __str__(self) -> str:
        return f"{self.where} {self.text[:60]}"


def load(path: Path, language: str | None = None) -> list[Case]:
    language = language or ("es" if "spanish" in path.stem else "en")
    source = path.read_text(encoding="utf-8")
    if "\n> " not in source:
        return [_line(line, language, f"{path.stem}:{n}") for n, line in enumerate(source.splitlines(), 1) if line and line[0] != "#"]
    cases = []
    for number, block in enumerate(source.split("\n\n"), 1):
        lines = [line for line in block.splitlines() if line and not line.startswith("#")]
        if not lines:
            continue
        assert lines[0].startswith("> "), f"{path.name}: {lines[0]}"
        cases.append(_case(lines[0][2:], lines[1:], language, f"{path.stem}:{number}"))
    return cases


def drawn(cases: Iterable[Case], one_of: int) -> list[Case]:
    """About one of so many, by its words: a case that is added draws no others."""
    return [case for case in cases if crc32(case.text.encode()) % one_of == 0]


@cache
def sentences(name: str) -> tuple[Case, ...]:
    """The cases of one of the FILES."""
    return tuple(load(CASES / f"{name}.txt"))


def assert_each(holds: Callable[[Case], None], cases: Iterable[Case]) -> None:
    """Every case is tried, and all that fail are told: a test for each of twelve thousand took longer than their reading."""
    failed = []
    for case in cases:
        try:
            holds(case)
        except Exception as error:  # noqa: BLE001  a reader that raises is told of its sentence too
            failed.append(f"{case.where} {case.text}\n{type(error).__name__}: {error}")
    assert not failed, "\n\n".join(failed)


def _line(line: str, language: str, where: str) -> Case:
    """The short form of sentences: `words => pairs || pairs`."""
    text, _, said = line.partition(" => ")
    return _case(text, [part.strip() for part in said.split("||")], language, where)


def _case(text: str, lines: list[str], language: str, where: str) -> Case:
    fittings, shift, withdraws = [], None, None
    for line in lines:
        if line == "nothing":
            continue
        if line.startswith("shift:"):
            shift = tuple(_pairs(line.removeprefix("shift:")))
        elif line.startswith("withdraws:"):
            withdraws = line.removeprefix("withdraws:").strip()
        else:
            fittings.append(dict(_pairs(line)))
    return Case(text, language, tuple(fittings), shift, withdraws, where)


def _pairs(line: str):
    for pair in line.split(";"):
        name, _, value = pair.strip().partition("=")
        if not name:
            continue
        if name in ("open", "amends", "same_as"):
            yield name, value
            continue
        hedged, conflict = value.endswith("~"), value.endswith("!")
        yield name, Said(parse(name, value.rstrip("~!")), hedged, conflict)


def parse(name: str, value: str):
    shape = BY_NAME[name].shape
    value = value.split(" for ")[0] if name == "service" else value
    match shape:
        case "flag":
            return {"yes": True, "no": False}[value]
        case "count":
            return int(value)
        case "length" | "angle" | "number":
            return number(value)
        case "size":
            return tuple(number(side) for side in value.split("x"))
        case "slope":
            return tuple(number(side) for side in value.split(":"))
        case "sides" | "marks":
            return tuple(value.split(","))
        case "moves":
            return tuple(_move(one) for one in value.split(" & "))
    return value


def number(text: str) -> Fraction:
    value = measure.parse(text)
    return value if value is not None else Fraction(text)


def _move(text: str) -> Move:
    side, way, by, _, back = text.split()  # top in 3 back 18; a ? was not said
    maybe = lambda word: None if word == "?" else word  # noqa: E731
    return Move(maybe(side), None if by == "?" else number(by), None if back == "?" else number(back), maybe(way))


def facts_of(case: Case) -> set:
    """(position, name, value) of everything said, moves one by one, sizes without order."""
    rows = set()
    for place, fitting in enumerate(case.fittings):
        for name, said in fitting.items():
            if isinstance(said, Said):
                rows.update(_rows(place, name, said.value))
    for name, said in case.shift or ():
        rows.update(_rows("shift", name, said.value))
    return rows


def facts_read(reading) -> set:
    rows = set()
    for entry in reading.fittings:
        for fact in entry.facts:
            rows.update(_rows(entry.position, fact.name, fact.value))
    for fact in reading.shift or ():
        rows.update(_rows("shift", fact.name, fact.value))
    return rows


def _rows(place, name: str, value):
    if name == "side_moves":
        for move in value:
            yield place, name, move
    elif name.endswith("_size") and isinstance(value, tuple):
        yield place, name, tuple(sorted(value))
    elif name.endswith("_sides"):
        yield place, name, tuple(sorted(value)) if isinstance(value, tuple) else value
    else:
        yield place, name, value
