"""A cut sheet in words: the lines of the printed sheet, for the screen, the page and the PDF alike."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from logbook.facts import SIDES
from logbook.geometry.cut_panel import lettered
from logbook.geometry.cut_sheet import CutSheet
from logbook.measure import decimal
from logbook.mistake import Mistake
from logbook.wording import say

CAUTIONS = ("blade", "eyes", "fibre", "ladder")
SQUARE_FOOT = 144


def heading(sheet: CutSheet, language: str, mark: str = "") -> str:
    """`mark`: of the schedule, where the sheet was laid out from a row of it."""
    sizes = [" x ".join(map(lettered, value)) for value in sheet.title.values() if isinstance(value, tuple)]
    kind = " ".join(part for part in (say(f"facts.kind.{sheet.kind}", language), mark) if part)
    return say("layout.heading", language, kind=kind, of=" – ".join(sizes))


def sizes(sheet: CutSheet, language: str) -> list[tuple[str, str]]:
    """Name and value of every number of the sheet: lengths in inches to 1/32, angles in degrees."""
    rows = []
    for size in sheet.sizes:
        value = f"{lettered(size.value)} in." if size.unit == "in" else decimal(size.value, 1) + size.unit
        rows.append((say(f"layout.sizes.{size.name}", language), value))
    return rows


def steps(sheet: CutSheet, language: str) -> list[str]:
    return [say(f"layout.steps.{step.key}", language, **_told(step.values, language)) for step in sheet.steps]


def _told(values, language: str) -> dict[str, object]:
    return {key: _word(key, value, language) for key, value in values.items()}


def _word(key: str, value, language: str) -> object:
    if isinstance(value, Fraction):
        return decimal(value, 1) if key == "angle" else lettered(value)
    if key == "end":
        return say(f"layout.ends.{value}", language)
    if key == "side":
        return say(f"layout.panels.{value}", language)
    return say(f"facts.value.{value}", language) if isinstance(value, str) else value


def stock_line(sheet: CutSheet, language: str) -> str:
    stock = sheet.stock
    wide, long = map(lettered, stock.sheet)
    told = {"wide": wide, "long": long, "pieces": stock.pieces, "area": decimal(stock.area / SQUARE_FOOT, 1), "waste": decimal(stock.waste / SQUARE_FOOT, 1)}
    if stock.blank is None:
        return say("layout.stock-flat", language, **told)
    return say("layout.stock-line", language, blank=lettered(stock.blank), **told)


def closing_line(sheet: CutSheet, language: str) -> str:
    closed = sheet.closing
    key = "layout.closing-tabs" if closed.tabs else "layout.closing-line"
    return say(key, language, seam=lettered(closed.seam), staples=closed.staples, tabs=closed.tabs, tape=lettered(closed.tape))


def cautions(language: str) -> list[str]:
    return [say(f"layout.cautions.{name}", language) for name in CAUTIONS]


def refusal(mistake: Mistake, language: str) -> tuple[str, str]:
    """(error, cure) of what could not be laid out, its sides, kinds and fields in the reader's words."""
    told = {}
    for name, value in mistake.values.items():
        if name == "kinds":
            value = ", ".join(say(f"facts.kind.{kind}", language) for kind in value.split(", "))
        elif name == "kind":
            value = say(f"facts.kind.{value}", language)
        elif name in ("missing", "fields", "known") and mistake.key in ("layout.needs", "layout.not-used"):
            value = ", ".join(f"“{say(f'asked.field.{field}', language)}”" for field in value.split(", "))
        elif value in SIDES:
            value = say(f"facts.value.{value}", language)
        told[name] = value
    return say(f"{mistake.key}.error", language, **told), say(f"{mistake.key}.cure", language, **told)


def lines(sheet: CutSheet, language: str) -> Iterator[str]:
    """The whole sheet as plain lines."""
    yield heading(sheet, language)
    yield f"{say('layout.method', language)}: {say(f'layout.methods.{sheet.method}', language)}"
    yield ""
    names = sizes(sheet, language)
    wide = max(len(name) for name, _ in names)
    yield from (f"  {name:<{wide}}  {value}" for name, value in names)
    yield ""
    yield say("layout.steps-heading", language)
    yield from (f"  {n}. {step}" for n, step in enumerate(steps(sheet, language), 1))
    yield ""
    yield stock_line(sheet, language)
    yield closing_line(sheet, language)
    yield ""
    yield say("layout.cautions-heading", language)
    yield from (f"  - {caution}" for caution in cautions(language))
    yield ""
    yield say("layout.source-note", language)
    yield say("layout.deferral", language)
