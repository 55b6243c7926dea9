"""What happened to the log, one thing at a time: a note heard, a press, photos that came, words taken back, a decision.

The log is reckoned in the order in which things happened, so that a finding remembers what it was before and what
changed it; reckoning everything from the start gives the same as reckoning each thing when it came.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime

from logbook.note import Note
from logbook.piece import Decision


@dataclass(frozen=True)
class Happening:
    """`what`: note, press, photos, heard (anew), withdrawn, decision, overdue, job. `happened` is when the log took
    it in, `said` when its words were spoken or pressed."""

    happened: datetime
    what: str
    said: datetime
    by: str | None = None
    note: Note | None = None
    decision: Decision | None = None


def happenings(
    notes: Iterable[Note],
    decisions: Iterable[Decision],
    known_notes: Mapping[str, Note],
    known_decisions: Mapping[str, Decision],
    now: datetime,
) -> list[Happening]:
    """Everything that is new against what is known, in the order in which it happened."""
    found = [
        one
        for note in notes
        if known_notes.get(note.id) is not note and known_notes.get(note.id) != note
        for one in _of_note(known_notes.get(note.id), note, now)
    ]
    found += [
        Happening(decision.at, "decision", decision.at, decision.by, decision=decision)
        for decision in decisions
        if known_decisions.get(decision.id) is not decision and known_decisions.get(decision.id) != decision
    ]
    return sorted(found, key=lambda one: (one.happened, one.what == "decision"))


def _of_note(old: Note | None, new: Note, now: datetime) -> list[Happening]:
    """The steps from the note as it was known to the note as it is."""
    presses = () if old is None else old.corrections
    base = replace(new, corrections=presses, withdrawn_at=None if old is None else old.withdrawn_at)
    steps = []
    if old is None or base != old:
        unread = old is None or old.reading is None
        reread = not unread and base.reading != old.reading
        what = "note" if unread else "heard" if reread else "photos"
        happened = (new.answered_at or new.received_at) if unread else (new.answered_at or now) if reread else now
        steps.append(Happening(happened, what, new.counted_at, new.spoken_by, base))
    for count in range(len(presses), len(new.corrections)):
        press = new.corrections[count]
        pressed = replace(base, corrections=new.corrections[: count + 1])
        steps.append(Happening(press.at, "press", press.at, press.by, pressed))
    if new.withdrawn_at != base.withdrawn_at:
        at = new.withdrawn_at or now
        steps.append(Happening(at, "withdrawn", at, new.spoken_by, new))
    floor = None
    for place, step in enumerate(steps):  # never before the step it rests on, whatever the clocks say
        floor = step.happened if floor is None else max(floor, step.happened)
        steps[place] = replace(step, happened=floor)
    return steps
