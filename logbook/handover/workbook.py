"""The register for people who live in spreadsheets: XLSX with the same bytes every time.

openpyxl stamps the hour into its files; the parts are packed again with one fixed time, in the order of their names.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from tempfile import SpooledTemporaryFile

from openpyxl import Workbook
from openpyxl.cell import WriteOnlyCell
from openpyxl.styles import Alignment, Font, PatternFill
from openpyxl.utils import get_column_letter

from logbook.handover.bag import FIXED_TIME
from logbook.handover.register import plain

HEAD = Font(bold=True, color="FFFFFF")
DARK = PatternFill("solid", fgColor="1B2733")
LONGEST = 32_767  # characters of a cell
_ILLEGAL = {code: "\u25a1" for code in (*range(0, 9), 11, 12, *range(14, 32), 0xFFFE, 0xFFFF)}  # XML 1.0 cannot carry them


def workbook(sheets: Sequence[tuple[str, Sequence[tuple[str, str, str]], Iterable[Mapping]]]) -> bytes:
    """`sheets`: (title, columns, rows). Text stays text: nothing in it is taken for a formula."""
    book = Workbook(write_only=True)
    for title, columns, rows in sheets:
        page = book.create_sheet(title[:31])
        page.freeze_panes = "D2"
        for at, (name, _, _) in enumerate(columns, 1):
            page.column_dimensions[get_column_letter(at)].width = min(max(len(name) + 2, 12), 30)
        head = []
        for name, _, _ in columns:
            cell = WriteOnlyCell(page, name)
            cell.font, cell.fill, cell.alignment = HEAD, DARK, Alignment(wrap_text=True, vertical="top")
            head.append(cell)
        page.append(head)
        for row in rows:
            page.append([_cell(row[name]) for name, _, _ in columns])
    book.properties.creator = "fitting-logbook"
    book.properties.created = book.properties.modified = datetime(1980, 1, 1)
    with SpooledTemporaryFile(1 << 24) as raw:
        book.save(raw)
        return _same_time(raw)


def _cell(value: object) -> object:
    """Neutralised text is never taken for a formula by the writer either; an empty cell is left out."""
    if not isinstance(value, str):
        return value
    return str(plain(value)).translate(_ILLEGAL)[:LONGEST] or None


def _same_time(raw) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(raw) as made, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as again:
        for name in sorted(made.namelist()):
            content = made.read(name)
            if name == "docProps/core.xml":
                content = _modified(content)
            info = zipfile.ZipInfo(name, FIXED_TIME)
            info.compress_type = zipfile.ZIP_DEFLATED
            again.writestr(info, content)
    return out.getvalue()


def _modified(core: bytes) -> bytes:
    """Saving stamps the hour once more; put the fixed one back."""
    start, end = b'<dcterms:modified xsi:type="dcterms:W3CDTF">', b"</dcterms:modified>"
    head, found, rest = core.partition(start)
    return head + start + b"1980-01-01T00:00:00Z" + end + rest.partition(end)[2] if found else core
