"""Measures told apart: of each of two pieces, and of several parts of one."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim
from logbook.reading.compared.first_and_second import first_and_second
from logbook.reading.clauses.grammar import Row
from logbook.reading.names.headings import Mention
from logbook.reading.compared.measured_again import measured_again
from logbook.reading.compared.part_by_part import part_by_part


def measured_apart(row: Row, named: list[Mention], claims: list[Claim], language: Language) -> list[Claim]:
    marks = marks_of(named)
    return measured_again(row, part_by_part(row, first_and_second(row, named, claims, language), marks, language), marks, language)


def marks_of(named: list[Mention]) -> set[str]:
    return {mark for one in named for mark in (one.mark, *(mark for mark, _ in one.batch)) if mark is not None}
