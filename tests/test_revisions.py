"""Which revision of the schedule was in force when a piece was made: decided once, kept, and told with the finding."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from desk import open_desk
from logbook import job as jobs
from logbook import pipeline, schedule, store
from logbook.note import Note
from logbook.reading import read
from logbook.worker import Bench, work_once

CHICAGO = ZoneInfo("America/Chicago")
A = "mark,run,order,kind,inlet,outlet\n4,2,1,straight,18x12,\n"
B = "mark,run,order,kind,inlet,outlet\n4,2,1,straight,20x12,\n"
SAID = "Straight four on run two, eighteen by twelve."


def job(*issues: tuple[str, date | None, str]) -> jobs.Job:
    return jobs.Job(zone="America/Chicago", revisions=tuple(schedule.revision(name, since, schedule.read(text, "s")[0]) for name, since, text in issues))


TWO = job(("A", date(2026, 10, 1), A), ("B", date(2026, 10, 15), B))


def planned(of: jobs.Job, *said: tuple[str, datetime], received=None):
    notes = [
        Note(f"n{at}", of.id, "p", "p", when, received or when, received or when, "answered", reading=read(text, language="en", job=of), answered_at=received or when)
        for at, (text, when) in enumerate(said)
    ]
    book = pipeline.reckon(notes, (), of, max(note.received_at for note in notes) + timedelta(days=30))
    (piece,) = book.pieces.values()
    return next((one for one in book.findings[piece.id] if one.rule == "as-planned"), None)


@pytest.mark.parametrize(
    ("when", "revision", "verdict"),
    [
        (datetime(2026, 10, 14, 16, tzinfo=CHICAGO), "A", "meets"),
        (datetime(2026, 10, 15, 9, tzinfo=CHICAGO), "B", "departs"),
        (datetime(2026, 10, 15, 2, tzinfo=CHICAGO), "A", "meets"),  # a night shift belongs to the evening it began
        (datetime(2026, 9, 1, 9, tzinfo=CHICAGO), None, None),  # nothing was in force yet
    ],
)
def test_the_day_a_piece_was_made_decides(when, revision, verdict):
    found = planned(TWO, (SAID, when))
    assert (found and found.verdict) == verdict
    assert found is None or (found.tells["revision"] == revision and f"schedule {revision}" in found.evidence[0])


def test_a_note_that_comes_late_is_judged_by_the_day_it_was_spoken():
    found = planned(TWO, (SAID, datetime(2026, 10, 14, 16, tzinfo=CHICAGO)), received=datetime(2026, 10, 20, 9, tzinfo=CHICAGO))
    assert (found.verdict, found.tells["revision"]) == ("meets", "A")


def test_words_added_under_a_later_revision_leave_the_piece_under_its_own():
    first, later = datetime(2026, 10, 14, 16, tzinfo=CHICAGO), datetime(2026, 10, 16, 9, tzinfo=CHICAGO)
    found = planned(TWO, (SAID, first), ("Straight four on run two, taped.", later))
    assert (found.verdict, found.tells["revision"]) == ("meets", "A")


def test_the_sentence_names_the_revision_in_both_languages():
    from logbook.findings import says

    found = planned(TWO, (SAID, datetime(2026, 10, 15, 9, tzinfo=CHICAGO)))
    assert "revision B" in says(found, "en") and "revisión B" in says(found, "es")


def test_a_finding_kept_before_revisions_were_told_is_still_a_sentence():
    from dataclasses import replace

    from logbook.findings import says

    found = planned(TWO, (SAID, datetime(2026, 10, 15, 9, tzinfo=CHICAGO)))
    old = replace(found, tells={name: value for name, value in found.tells.items() if name != "revision"})
    assert "revision –" in says(old, "en")


def test_it_stands_in_the_log_on_the_page_and_a_new_revision_leaves_it_alone(tmp_path):
    desk = open_desk(tmp_path)
    folder, file = desk.settings.folder, desk.settings.folder / "job.toml"
    (folder / "a.csv").write_text(A)
    file.write_text(file.read_text() + '\n[[schedule]]\nfile = "a.csv"\nrevision = "A"\nfrom = 2026-10-01\n')
    desk.hand_in(text=SAID, spoken_at="2026-10-14T10:00:00-05:00")
    with desk.folder() as opened:
        work_once(opened, Bench(None), datetime(2026, 10, 14, 16, tzinfo=UTC))
        (before,) = list(store.each_piece(opened, "en"))
    (folder / "b.csv").write_text(B)
    file.write_text(file.read_text() + '\n[[schedule]]\nfile = "b.csv"\nrevision = "B"\nfrom = 2026-10-15\n')
    with desk.folder() as opened:
        work_once(opened, Bench(None), datetime(2026, 10, 16, 16, tzinfo=UTC))
        (after,) = list(store.each_piece(opened, "en"))
    of = [next(one for one in piece["findings"] if one["rule"] == "as-planned") for piece in (before, after)]
    assert of[0] == of[1] and "revision A" in of[0]["says"]
    page = desk.browser("lead").get(f"/fitting/{after['id']}", headers={"Accept": "text/html"})
    assert "revision A" in page.text
