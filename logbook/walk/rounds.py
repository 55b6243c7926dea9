"""The walk list: each question of the published check list, asked of each area; the newest answer stands, all are kept."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from logbook.mistake import Mistake
from logbook.rules.checklist import CHECKLIST, LEAD, WALK

ANSWERS = ("yes", "not_applicable", "no")
IDS = tuple(one.id for one in CHECKLIST)
LONGEST = 500
GROUPS = tuple(dict.fromkeys(one.id[0] for one in CHECKLIST))  # g, p, f, r, h, s in the order of the list


@dataclass(frozen=True)
class Standing:
    """One question in one area: `now` is the act that answers it, `before` the earlier ones, newest first."""

    question: str
    now: Mapping | None
    before: tuple[Mapping, ...] = ()


def answer(area: object, question: object, given: object, words: object, photos: Iterable[str] = ()) -> dict | Mistake:
    """The content of one answer. A no says what is wrong: somebody else has to find it again."""
    if question not in IDS:
        return Mistake("walk.no-question", "question", {"came": str(question)[:20]})
    if given not in ANSWERS:
        return Mistake("walk.no-such-answer", str(question), {"expected": ", ".join(ANSWERS)})
    if not isinstance(area, str) or not area.strip():
        return Mistake("walk.no-area", "area")
    said = " ".join(str(words or "").split())[:LONGEST]
    if given == "no" and not said:
        return Mistake("walk.no-needs-words", str(question), {"question": question})
    return {"area": area, "question": question, "answer": given, "words": said, "photos": list(photos)}


def standing(area: str, acts: Iterable[Mapping]) -> tuple[Standing, ...]:
    """Every question in the order of the list; `acts` are the answers of the job, oldest first."""
    by_question: dict[str, list[Mapping]] = {}
    for act in acts:
        if act["area"].casefold() == area.casefold():
            by_question.setdefault(act["question"], []).insert(0, act)
    return tuple(Standing(one, (found := by_question.get(one, [None]))[0], tuple(found[1:])) for one in IDS)


def counts(rows: Iterable[Standing]) -> dict[str, int]:
    """How many questions stand at which answer; `none` was not asked yet."""
    told = {name: 0 for name in (*ANSWERS, "none")}
    for row in rows:
        told[row.now["answer"] if row.now else "none"] += 1
    return told


def of_walk(question: str) -> bool:
    """Somebody has to go and look."""
    return WALK in next(one for one in CHECKLIST if one.id == question).covered_by


def of_lead(question: str) -> bool:
    """The lead answers it from papers."""
    return LEAD in next(one for one in CHECKLIST if one.id == question).covered_by
