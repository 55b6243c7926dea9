"""The whole path on one page: words to entries, entries to pieces, pieces to findings, findings to questions.

    text or transcript ── reading.read ──> entries        what was said, each fact with its words
    entries + decisions ── joining.log ──> pieces         what all notes say of one fitting, by the time spoken
    pieces ── findings.judge(RULES) ──> findings          what departs, what was not said, what nobody can tell
    findings + decisions ── review.stands ──> open, in hand, settled, closed
    findings ── findings.questions ──> at most two questions a note
"""

from __future__ import annotations

import uuid
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from types import MappingProxyType

from logbook import job as jobs
from logbook.findings import Rule
from logbook.job import Job
from logbook.joining.joined import Key
from logbook.joining.log import Log
from logbook.note import Note, Photo
from logbook.piece import Decision
from logbook.pipeline import documents
from logbook.pipeline.book import Book, Kept
from logbook.pipeline.documents import note_document, piece_document
from logbook.pipeline.happenings import Happening, happenings
from logbook.pipeline.reckoning import Reckoning
from logbook.said import Reading
from logbook.transcript import Transcript

__all__ = ["Book", "check", "check_reading", "note_document", "piece_document", "reckon"]


def random_id() -> str:
    return str(uuid.uuid4())


def reckon(
    notes: Sequence[Note],
    decisions: Sequence[Decision],
    job: Job,
    now: datetime,
    previous: Book | None = None,
    *,
    ids: Mapping[Key, tuple[str, ...]] | None = None,
    new_id: Callable[[], str] = random_id,
    rules: Sequence[Rule] | None = None,
    without_photos: bool = False,
    judged_by: Mapping[str, Job] = MappingProxyType({}),
) -> Book:
    """The log as all notes and decisions make it.

    `notes` and `decisions`: those that are new or changed since `previous`, or all of them (what is known already is
    passed over). `ids` are `Book.ids` of an earlier run, so that pieces keep their ids. Times are aware.
    `judged_by`: pieces that another job than `job` judges, because a day they are of was signed under it.
    """
    if rules is None:
        from logbook.rules import RULES as rules  # the book is long: imported when somebody judges
    if previous is None:
        work = Reckoning(Log(job), Kept(had=dict(ids or {})), job, rules, new_id, without_photos, judged_by)
        for entry, had in (ids or {}).items():
            for piece_id in had:
                work.kept.members[piece_id] = (*work.kept.members.get(piece_id, ()), entry)
    else:
        work = Reckoning(previous.log.copy(job), previous.kept.copy(), job, rules, new_id, without_photos, judged_by)
    for one in happenings(notes, decisions, work.log.notes, work.log.decisions, now):
        work.take_in(one)
    if previous is not None and previous.job is not job and previous.job != job:
        work.settle_for(Happening(now, "job", now), tuple(work.kept.pieces))
    work.settle_for(Happening(now, "overdue", now), tuple(work.kept.waiting))
    work.ask_notes()
    return _frozen(work)


def _frozen(work: Reckoning) -> Book:
    kept, log = work.kept, work.log
    order = sorted(kept.key_of, key=lambda one: (kept.pieces[one].made_at, kept.key_of[one]))
    return Book(
        job=work.job,
        pieces=MappingProxyType({piece_id: kept.pieces[piece_id] for piece_id in order}),
        findings=MappingProxyType(kept.findings),
        entries=MappingProxyType({e: kept.id_of[key] for e, key in log.placed.items() if isinstance(key, tuple)}),
        ids=MappingProxyType(kept.had),
        asked=MappingProxyType(kept.asked),
        questions=MappingProxyType(kept.questions),
        notes=MappingProxyType(log.notes),
        decisions=MappingProxyType(kept.decisions),
        moved=MappingProxyType(kept.moved),
        changed=frozenset(work.changed),
        changed_notes=frozenset(work.changed_notes),
        log=log,
        kept=kept,
    )


def check(
    words: str | Transcript,
    *,
    job: Job = jobs.DEFAULT,
    photos: Sequence[Photo] = (),
    language: str | None = None,
    says_in: str | None = None,
) -> dict:
    """The document of `logbook check` for one text or transcript: facts, findings, questions.

    `language` is that of the words (None: found), `says_in` that of the sentences (None: the one of the words).
    Without photos, the photo rules are not due.
    """
    from logbook.reading import read

    transcript = words if isinstance(words, Transcript) else None
    text = words.text if transcript is not None else words
    reading = read(text, language=language, transcript=transcript, job=job)
    return check_reading(reading, transcript=transcript, job=job, photos=photos, says_in=says_in)


def check_reading(
    reading: Reading,
    *,
    transcript: Transcript | None = None,
    job: Job = jobs.DEFAULT,
    photos: Sequence[Photo] = (),
    says_in: str | None = None,
) -> dict:
    """`check` for words that were read already."""
    at = datetime.now(UTC)
    note = Note("said", job.id, "", "", at, at, at, "answered", transcript=transcript, reading=reading, photos=tuple(photos))
    book = reckon([note], (), job, at, without_photos=not photos)
    return documents.check_document(note, book, says_in or reading.language or "en")


def with_reading(note: Note, reading: Reading, answered_at: datetime) -> Note:
    """The note answered with a reading."""
    return replace(note, state="answered", problem=None, reading=reading, answered_at=answered_at)
