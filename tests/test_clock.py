"""A phone whose clock is years off: it is told, the order follows the time received, and nothing that came is overwritten."""

from __future__ import annotations

import re
from datetime import UTC, datetime, timedelta

import pytest

from desk import PAGE, open_desk, piece_of, work
from logbook import clock, store

NOON = datetime(2026, 10, 14, 12, tzinfo=UTC)
YEARS, HOURS, WEEK = timedelta(days=1826), timedelta(hours=20), timedelta(days=7)


@pytest.mark.parametrize(
    ("spoken", "sent", "counts"),
    [
        (NOON, NOON, NOON),
        (NOON - WEEK, NOON, NOON - WEEK),  # it lay on a phone without signal
        (NOON + HOURS, NOON + HOURS, NOON + HOURS),  # a zone set wrongly is no absurdity
        (NOON - YEARS, None, NOON - YEARS),  # an old recording, handed in by hand
        (NOON + YEARS, NOON + YEARS, NOON),
        (NOON + YEARS - WEEK, NOON + YEARS, NOON - WEEK),  # the time that it lay there is right by any clock
        (NOON - YEARS - WEEK, NOON - YEARS, NOON - WEEK),
        (NOON + YEARS, None, NOON),
        (NOON - YEARS, NOON, NOON),  # the clock was set right after it was spoken
        (NOON + YEARS, NOON, NOON),
    ],
)
def test_what_counts(spoken, sent, counts):
    assert clock.counted_at(spoken, sent, NOON) == counts


@pytest.mark.parametrize("years", [YEARS, -YEARS], ids=["ahead", "behind"])
def test_a_clock_that_is_years_off_is_told_and_decides_no_order(tmp_path, years):
    desk, now = open_desk(tmp_path), datetime.now(UTC).replace(microsecond=0)
    told = (now + years).isoformat()
    wrong = desk.hand_in(text="Straight seven on run two, eighteen by twelve, stapled every two.", spoken_at=told, sent_at=told).json["id"]
    right = "Straight seven on run two, eighteen by twelve, stapled every three."
    before, after = now - timedelta(hours=1), now + timedelta(hours=1)
    assert desk.hand_in(text=right, spoken_at=(after if years > timedelta(0) else before).isoformat()).status_code == 201
    work(desk)
    (spacing,) = [fact for fact in desk.by_key("lead", "GET", f"/pieces/{piece_of(desk, '7')}").json["facts"] if fact["name"] == "staple_spacing"]
    assert spacing["value"] == (3 if years > timedelta(0) else 2), "the later one by the server's clock holds"
    with desk.folder() as folder:
        note, zone = store.note_document(folder, wrong, "en"), folder.job.timezone()
        assert datetime.fromisoformat(note["spoken_at"]) == now + years, "what the phone said stays"
        day = folder.job.day_of(datetime.fromisoformat(note["received_at"])).isoformat()
    lead = desk.browser("lead")
    year = str((now + years).astimezone(zone).year)
    for language, beginning in (("en", "The phone&#39;s clock said"), ("es", "El reloj del teléfono decía")):
        lead.set_cookie("language", language)
        for path in (f"/entry/{wrong}", f"/day/{day}"):
            page = lead.get(path, headers=PAGE)
            assert page.status_code == 200 and re.search(rf"{beginning} [^;]*{year}[^;]*; ", page.text), path
    assert lead.get(f"/day/{day}", headers=PAGE).text.count("El reloj del teléfono") == 1, "the phone that goes right is not spoken of"
    paper = lead.get(f"/day/{day}/report.html", headers=PAGE).text
    assert "el reloj del teléfono decía" in paper or "clock said" in paper
