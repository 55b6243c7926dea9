"""Writes docs/checklist.md from the check list in the code: python tests/making/write_checklist.py

A test compares the page with what this writes.
"""

from __future__ import annotations

from pathlib import Path

from logbook.rules.checklist import CHECKLIST, LEAD, WALK, Question
from logbook.wording import say

PAGE = Path(__file__).parents[2] / "docs" / "checklist.md"
GROUPS = {"g": "The whole system", "p": "The board", "f": "Fittings and joints", "r": "Reinforcement", "h": "Hanging", "s": "What is built in, and the end"}
HEAD = """# The published check list, and who answers it

NAIMA's installation check list for fibrous-glass duct asks 26 questions. They stand here in our own words. Each says
which rules of the book speak to it, whether somebody is asked to go and look (`/walk`, the walk list by area), and
whether the lead answers it from papers. A rule judges only what was said of a piece: where a question needs eyes, the walk stands beside it.
{remembered} questions are from memory of the list ("memory"): compare them with the printed page before you rely on their wording.

This page is written by `tests/making/write_checklist.py` from `logbook/rules/checklist.py`.
"""


def written() -> str:
    lines = [HEAD.format(remembered=sum(not question.read for question in CHECKLIST))]
    for letter, name in GROUPS.items():
        lines += [f"## {name}", "", "| | question | rules | go and look | the lead, from papers | known from |", "|---|---|---|---|---|---|"]
        lines += [_row(question) for question in CHECKLIST if question.id.startswith(letter)]
        lines.append("")
    rules = [question for question in CHECKLIST if set(question.covered_by) - {WALK, LEAD}]
    only = [question for question in CHECKLIST if not set(question.covered_by) - {WALK, LEAD}]
    lines.append(f"{len(rules)} questions have rules that speak to them; {len(only)} are left to eyes or papers alone: {', '.join(q.id for q in only)}.")
    return "\n".join(lines) + "\n"


def _row(question: Question) -> str:
    rules = ", ".join(f"`{rule}`" for rule in question.covered_by if rule not in (WALK, LEAD)) or "–"
    ticks = [("yes" if who in question.covered_by else "–") for who in (WALK, LEAD)]
    return f"| {question.id} | {say(question.asks, 'en')} | {rules} | {ticks[0]} | {ticks[1]} | {'the printed page' if question.read else 'memory'} |"


if __name__ == "__main__":
    PAGE.write_text(written(), encoding="utf-8")
