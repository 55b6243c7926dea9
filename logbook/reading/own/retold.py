"""The acts that words around them deny, answer for or undo, before anything else of a note is read; what these words use up nobody reads again."""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.own.came_off import came_off
from logbook.reading.own.echoes import Echoed, echoes
from logbook.reading.clauses.grammar import Row
from logbook.reading.own.orders import orders
from logbook.reading.clauses.parts import Part
from logbook.reading.clauses.sketch import sketches
from logbook.reading.own.weighed import weighed


def retold(row: Row, cut_up: tuple[Part, ...], language: Language) -> Echoed:
    found = Echoed()
    if language.told.echoes.yes:
        drawn = sketches(row, cut_up, language)
        for look in (orders, weighed, echoes, came_off):
            one = look(row, drawn, language)
            found.claims += one.claims
            found.spent |= one.spent
            if one.spent:
                row = row.blanked(one.spent)
                drawn = sketches(row, cut_up, language)
            found.of_piece |= getattr(one, "of_piece", set())
    return found
