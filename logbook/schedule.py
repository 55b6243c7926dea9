"""The fitting schedule: what the drawings ask for, one CSV row a fitting, in revisions.

Columns, in any order, spelled with spaces, hyphens or underscores: `mark` (needed), `run`, `order`, `kind`,
`inlet`, `outlet`, `branch`, `diameter`, `flat side`, `length`, `airflow`, `system`, `area`, `drawing`,
`pressure class`. Sizes are "20x14" or "20 by 14", inches unless "mm", "cm", "ft" or "m" follows; lengths as the
trade writes them; airflow in cfm; pressure class in in. w.g. An empty cell says nothing. Which revision was in
force when a piece was made is asked by date and never changes afterwards.
"""

from __future__ import annotations

import csv
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from fractions import Fraction
from functools import cached_property, lru_cache
from typing import NamedTuple

from rapidfuzz import process
from rapidfuzz.distance import Levenshtein

from logbook import facts, measure
from logbook.mistake import Mistake

COLUMNS = (
    "mark", "run", "order", "kind", "inlet", "outlet", "branch", "diameter", "flat_side", "length", "airflow",
    "system", "area", "drawing", "pressure_class",
)  # fmt: skip
BESIDE = ("collar", "register", "access_door", "hanger", "repair")  # kinds that are no link of a run's chain
_SIZE = re.compile(r"(?P<one>[\d.\s/-]+?)\s*(?:x|×|by|por)\s*(?P<other>[\d.\s/-]+?)\s*(?P<unit>in\.?|mm|cm|m|ft)?", re.I)


@dataclass(frozen=True)
class Row:
    """One fitting of the schedule. Sizes and lengths in inches, airflow in cfm, pressure class in in. w.g."""

    mark: str
    line: int
    run: str | None = None
    order: Fraction | None = None
    kind: str | None = None
    inlet: tuple[Fraction, Fraction] | None = None
    outlet: tuple[Fraction, Fraction] | None = None
    branch: tuple[Fraction, Fraction] | None = None
    diameter: Fraction | None = None
    flat_side: str | None = None
    length: Fraction | None = None
    airflow: Fraction | None = None
    system: str | None = None
    area: str | None = None
    drawing: str | None = None
    pressure_class: Fraction | None = None


class Place(NamedTuple):
    """Where a mark stands in a revision: `row`, its links (the rows before and after), the marks spelled most alike."""

    row: Row | None
    links: tuple[Row | None, Row | None]
    nearest: tuple[str, ...]
    meant: str | None = None  # where there is no row: the only mark that this one may be a mishearing of
    on_run: str | None = None  # where there is no row on the run that was said: the only run that has this mark


@dataclass(frozen=True)
class Revision:
    """One issue of the schedule, in force from `since` (None: from the start) until the next one."""

    name: str
    since: date | None
    rows: tuple[Row, ...]
    by_mark: Mapping[str, tuple[Row, ...]] = field(default_factory=dict, repr=False, compare=False)
    by_run: Mapping[str, tuple[Row, ...]] = field(default_factory=dict, repr=False, compare=False)
    links: Mapping[tuple[str, int], tuple[Row | None, Row | None]] = field(default_factory=dict, repr=False, compare=False)

    def row(self, mark: str, run: str | None) -> Row | None:
        """The row of a mark: on its run, or the only row of that mark where the run was not said or not planned."""
        found = self.by_mark.get(facts.bare_mark(mark), ())
        on_run = [row for row in found if run is not None and row.run is not None and bare_run(row.run) == bare_run(run)]
        if on_run:
            return on_run[0]
        loose = [row for row in found if run is None or row.run is None]
        return loose[0] if len(loose) == 1 else None

    def place(self, mark: str | None, run: str | None) -> Place:
        """Where a mark stands: its row, the rows before and after it in its run; else the marks it may have meant."""
        return self._place(mark, run)

    @cached_property
    def _place(self):
        return lru_cache(maxsize=65536)(self._look_up)  # a note asks it of every piece of its run

    def _look_up(self, mark: str | None, run: str | None) -> Place:
        row = None if mark is None else self.row(mark, run)
        if row is None:
            return Place(None, (None, None), *(((), None) if mark is None else (self.nearest(mark), self.meant(mark, run), self._only_run(mark, run))))
        return Place(row, (None, None) if row.run is None else self.links.get((bare_run(row.run), row.line), (None, None)), ())

    def nearest(self, mark: str, how_many: int = 2) -> tuple[str, ...]:
        """The marks of the schedule that are spelled most alike."""
        found = process.extract(facts.bare_mark(mark), list(self.by_mark), limit=how_many)
        return tuple(self.by_mark[bare][0].mark for bare, _, _ in found)


    def _only_run(self, mark: str, run: str | None) -> str | None:
        runs = {row.run for row in self.by_mark.get(facts.bare_mark(mark), ())}
        return next(iter(runs)) if run is not None and len(runs) == 1 else None

    def meant(self, mark: str, run: str | None) -> str | None:
        """The only mark, of that run where it is planned, that is one letter or digit away or sounds alike; None: none or several."""
        bare = facts.bare_mark(mark)
        rows = self.by_run.get(bare_run(run or ""), ()) or self.rows
        found = {facts.bare_mark(row.mark): row.mark for row in rows}
        near = [shown for other, shown in found.items() if other != bare and (Levenshtein.distance(bare, other, score_cutoff=1) <= 1 or _sounds_alike(bare, other))]
        return near[0] if len(near) == 1 else None


def _sounds_alike(one: str, other: str) -> bool:
    """Fourteen and forty: the same letters around a number that ears take for the other."""
    parts = [re.fullmatch(r"(\D*)(\d+)(\D*)", mark) for mark in (one, other)]
    if None in parts or parts[0].group(1, 3) != parts[1].group(1, 3):
        return False
    low, high = sorted(int(part.group(2)) for part in parts)
    return 13 <= low <= 19 and high == (low - 10) * 10


def bare_run(run: str) -> str:
    return facts.bare_mark(run)


def revision(name: str, since: date | None, rows: tuple[Row, ...]) -> Revision:
    """A revision with its rows laid out by mark and by run; rows without an order keep the file's order, last."""
    by_mark: dict[str, list[Row]] = {}
    by_run: dict[str, list[Row]] = {}
    for row in rows:
        by_mark.setdefault(facts.bare_mark(row.mark), []).append(row)
        if row.run is not None:
            by_run.setdefault(bare_run(row.run), []).append(row)
    for of_run in by_run.values():
        of_run.sort(key=lambda row: (row.order is None, row.order or 0, row.line))
    links: dict[tuple[str, int], tuple[Row | None, Row | None]] = {}
    for run, of_run in by_run.items():
        chain = [row for row in of_run if row.kind not in BESIDE]
        for before, row, after in zip([None, *chain], chain, [*chain[1:], None]):
            links[run, row.line] = (before, after)
    return Revision(
        name,
        since,
        rows,
        {mark: tuple(found) for mark, found in by_mark.items()},
        {run: tuple(found) for run, found in by_run.items()},
        links,
    )


def in_force(revisions: tuple[Revision, ...], day: date | None) -> Revision | None:
    """The revision in force on a day; without a day, the last one."""
    valid = [rev for rev in revisions if day is None or rev.since is None or rev.since <= day]
    return max(valid, key=lambda rev: rev.since or date.min, default=None)


def read(text: str, name: str) -> tuple[tuple[Row, ...], tuple[Mistake, ...]]:
    """The rows of a CSV and everything that is wrong with it, each with its line."""
    lines = csv.reader(text.lstrip("\ufeff").splitlines())
    header = next(lines, [])
    columns = [re.sub(r"[\s-]+", "_", cell.strip().lower()) for cell in header]
    wrong = [
        Mistake("job.schedule-column", f"{name}:1", {"came": cell, "nearest": _nearest(column, COLUMNS)})
        for cell, column in zip(header, columns)
        if column not in COLUMNS
    ]
    if "mark" not in columns:
        wrong.append(Mistake("job.schedule-no-mark-column", f"{name}:1", {"came": ", ".join(header)}))
    if wrong:
        return (), tuple(wrong)
    rows: list[Row] = []
    seen: dict[tuple[str, str], int] = {}
    for cells in lines:
        if not any(cell.strip() for cell in cells):
            continue
        where = f"{name}:{lines.line_num}"
        row, mistakes = _row(dict(zip(columns, (cell.strip() for cell in cells))), lines.line_num, where)
        wrong += mistakes
        if row is None:
            continue
        key = (bare_run(row.run or ""), facts.bare_mark(row.mark))
        if key in seen:
            wrong.append(Mistake("job.schedule-twice", where, {"mark": row.mark, "line": seen[key]}))
        seen.setdefault(key, lines.line_num)
        rows.append(row)
    return tuple(rows), tuple(wrong)


def _row(cells: dict[str, str], line: int, where: str) -> tuple[Row | None, list[Mistake]]:
    values: dict[str, object] = {}
    wrong: list[Mistake] = []

    def refuse(column: str, expected: str) -> None:
        wrong.append(Mistake("job.schedule-cell", where, {"column": column, "came": cells[column], "expected": expected}))

    for column, cell in cells.items():
        if not cell:
            continue
        match column:
            case "inlet" | "outlet" | "branch":
                values[column] = size(cell)
                if values[column] is None:
                    refuse(column, "20x14, 20 by 14, 508x356 mm")
            case "diameter" | "length":
                values[column] = measure.written(cell)
                if values[column] is None or values[column] <= 0:
                    refuse(column, "10, 2-1/2 in, 50 mm")
            case "order" | "airflow" | "pressure_class":
                values[column] = measure.parse(cell)
                if values[column] is None:
                    refuse(column, "12, 0.5")
            case "kind":
                kind = re.sub(r"[\s-]+", "_", cell.lower())
                values[column] = kind
                if kind not in facts.KINDS:
                    refuse(column, _nearest(kind, facts.KINDS))
            case "flat_side":
                values[column] = cell.lower()
                if cell.lower() not in facts.SIDES:
                    refuse(column, ", ".join(facts.SIDES))
            case _:
                values[column] = cell
    if "mark" not in values:
        wrong.append(Mistake("job.schedule-no-mark", where))
    return (None if wrong else Row(line=line, **values)), wrong


def size(text: str) -> tuple[Fraction, Fraction] | None:
    """ "20x14" or "508 by 356 mm" as inches; None for anything else or a size that is not above nothing."""
    found = _SIZE.fullmatch(text.strip())
    if not found:
        return None
    unit = found["unit"] or "in"
    sides = tuple(measure.written(f"{found[side].strip()} {unit}") for side in ("one", "other"))
    return sides if all(side is not None and side > 0 for side in sides) else None


def _nearest(word: str, words: tuple[str, ...]) -> str:
    return process.extractOne(word, words)[0]
