"""The cut sheet as a half-sheet print: numbers and steps on one page, the panels and the check bar on the next."""

from __future__ import annotations

import json

from logbook.geometry import cut_drawing, cut_text
from logbook.geometry.cut_sheet import CutSheet
from logbook.paper import face, typesetting
from logbook.wording import say


def pdf(sheet: CutSheet, language: str, mark: str = "") -> bytes:
    """PDF/A-2a and PDF/UA-1, 5.5 by 8.5 in.; the same sheet gives the same bytes. `mark`: of the schedule, for the heading."""
    doc = {
        "language": language,
        "heading": cut_text.heading(sheet, language, mark),
        "method": f"{say('layout.method', language)}: {say(f'layout.methods.{sheet.method}', language)}",
        "numbers_heading": say("layout.numbers", language),
        "numbers_head": [say("layout.number-name", language), say("layout.number-value", language)],
        "numbers": cut_text.sizes(sheet, language),
        "steps_heading": say("layout.steps-heading", language),
        "steps": cut_text.steps(sheet, language),
        "stock": cut_text.stock_line(sheet, language),
        "closing": cut_text.closing_line(sheet, language),
        "about": say("layout.drawing-about", language, panels=len(sheet.panels)),
        "check_bar": say("layout.check-bar", language),
        "cautions_heading": say("layout.cautions-heading", language),
        "cautions": cut_text.cautions(language),
        "source": say("layout.source-note", language),
        "deferral": say("layout.deferral", language),
    }
    carried = {
        "cut_sheet.json": json.dumps(face.printable_tree(doc), ensure_ascii=False).encode(),
        "cut_sheet.svg": cut_drawing.svg(sheet, language).encode(),
    }
    return typesetting.pdf("cut_sheet.typ", carried, 0)
