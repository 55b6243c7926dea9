"""The register for people who live in spreadsheets: XLSX with the same bytes every time.

XlsxWriter packs the parts with one fixed time; rows go to the disk as they come, so that a long register takes no more
memory than a short one.
"""

from __future__ import annotations

import io
from collections.abc import Iterable, Mapping, Sequence
from datetime import UTC, datetime

import xlsxwriter

from logbook.handover.register import plain

LONGEST = 32_767  # characters of a cell
NARROW, WIDE = 12, 30  # of a column, in characters
_ILLEGAL = {code: "\u25a1" for code in (*range(0, 9), 11, 12, *range(14, 32), 0xFFFE, 0xFFFF)}  # XML 1.0 cannot carry them
# text stays text: nothing in it is taken for a formula, a number or an address
AS_TEXT = {"constant_memory": True, "strings_to_formulas": False, "strings_to_numbers": False, "strings_to_urls": False}


def workbook(sheets: Sequence[tuple[str, Sequence[tuple[str, str, str]], Iterable[Mapping]]]) -> bytes:
    """`sheets`: (title, columns, rows)."""
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, AS_TEXT)
    book.set_properties({"author": "fitting-logbook", "created": datetime(1980, 1, 1, tzinfo=UTC)})
    head = book.add_format({"bold": True, "font_color": "#FFFFFF", "bg_color": "#1B2733", "text_wrap": True, "valign": "top"})
    for title, columns, rows in sheets:
        page = book.add_worksheet(title[:31])
        page.freeze_panes("D2")
        for at, (name, _, _) in enumerate(columns):
            page.set_column(at, at, min(max(len(name) + 2, NARROW), WIDE))
            page.write_string(0, at, name, head)
        for line, row in enumerate(rows, 1):
            for at, (name, _, _) in enumerate(columns):
                _write(page, line, at, row[name])
    book.close()
    return out.getvalue()


def _write(page, line: int, at: int, value: object) -> None:
    """An empty cell is left out; neutralised text is written as text."""
    match value:
        case bool():
            page.write_boolean(line, at, value)
        case int() | float():
            page.write_number(line, at, value)
        case str():
            text = str(plain(value)).translate(_ILLEGAL)[:LONGEST]
            if text:
                page.write_string(line, at, text)
