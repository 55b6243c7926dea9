"""Spanish words of forms and tags, and everyday words that bear a piece's number. Not reviewed by a native speaker."""

from __future__ import annotations

from logbook.languages.language import Forms

SPANISH_FORMS = Forms(
    numbered=(("K_EQUIPMENT_CONNECTION", frozenset(("conexión", "conexion"))), ("K_DAMPER_SLEEVE", frozenset(("manguito",)))),
    everyday=(("FITTING", frozenset(("ducto", "conducto"))),),
)
