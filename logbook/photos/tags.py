"""Tags: what stands in the code on a fitting, and which of them a schedule asks for.

The text is `duct-tag:1:JOB:MARK`, JOB the job's eight letters and MARK percent-encoded. A tag identifies a piece;
it is too small to measure anything by.
"""

from __future__ import annotations

import io
from collections.abc import Iterable
from dataclasses import dataclass
from urllib.parse import quote, unquote

import segno

from logbook.facts import bare_mark
from logbook.schedule import Row, bare_run

EDITION = "duct-tag:1"
INCHES = 2  # side of the printed code, quiet margin included (tags.typ prints it so)


@dataclass(frozen=True)
class Tag:
    job: str
    mark: str


def text(job: str, mark: str) -> str:
    return f"{EDITION}:{job}:{quote(mark, safe='')}"


def parse(words: str) -> Tag | None:
    """The tag in a code's text; None for any other code (a carton, a machine)."""
    parts = words.split(":")
    if len(parts) != 4 or ":".join(parts[:2]) != EDITION or not parts[2] or not parts[3]:
        return None
    return Tag(parts[2], unquote(parts[3]))


def names(words: Iterable[str], job: str, mark: str) -> bool:
    """Whether one of the codes is the tag of this piece of this job."""
    found = (parse(one) for one in words)
    return any(tag is not None and tag.job == job and bare_mark(tag.mark) == bare_mark(mark) for tag in found)


def code_svg(job: str, mark: str) -> str:
    """The code alone as SVG, its quiet margin in it. Error correction Q: a quarter of it may be dirt or glue."""
    out = io.BytesIO()
    segno.make(text(job, mark), error="q", micro=False).save(out, kind="svg", border=4, omitsize=True, xmldecl=False, light="#fff")
    return out.getvalue().decode()


def of_schedule(rows: Iterable[Row], run: str | None = None, marks: Iterable[str] = ()) -> list[tuple[str, str | None]]:
    """(mark, run) of the rows in the schedule's order: of one run, or of the marks named, or of all."""
    wanted = {bare_mark(mark) for mark in marks}
    return [
        (row.mark, row.run)
        for row in rows
        if (run is None or bare_run(row.run or "") == bare_run(run)) and (not wanted or bare_mark(row.mark) in wanted)
    ]


def said_twice(wanted: Iterable[tuple[str, str | None]]) -> tuple[str, ...]:
    """Marks that stand on more than one run: their tags carry the same code, so the run must be said."""
    runs: dict[str, set[str]] = {}
    for mark, run in wanted:
        runs.setdefault(mark, set()).add(bare_run(run or ""))
    return tuple(mark for mark, on in runs.items() if len(on) > 1)
