"""What tells of the work and became no fact is told as not understood, on the reading, in the log, on the page.

The sentences are our own; there is no outside corpus of notes that a reader cannot read.
"""

from __future__ import annotations

import csv
import io
import uuid
import zipfile
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desk import PAGE, open_desk, work
from logbook import said
from logbook.paper.handing_over import hand_over
from logbook.reading import read

CASES = Path(__file__).parent / "cases" / "reading" / "unread.txt"
LINES = [line.split(" => ") for line in CASES.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#")]
WORDS = "straight four 12 by 8 stapled taped not no tape the seam smiles every two , . vanes behind it I didn't left 3 in codo con aletas grapado".split()


@pytest.mark.parametrize(("text", "told"), LINES, ids=[text for text, _ in LINES])
def test_what_was_not_understood_is_told_and_nothing_else(text, told):
    assert [one.words for one in read(text).unread] == ([] if told == "nothing" else told.split(" | "))


@given(st.lists(st.sampled_from(WORDS), max_size=40).map(" ".join))
def test_an_unread_stretch_is_words_of_the_note_and_stands_in_no_fact(text):
    reading = read(text, language="en")
    for one in reading.unread:
        assert text[one.start : one.end] == one.words
        for entry in reading.fittings:
            assert not any(fact.start < one.end and fact.end > one.start for fact in entry.facts)


def test_it_goes_the_way_of_a_reading_there_and_back():
    reading = read(LINES[1][0])
    assert reading.unread and said.reading_from_json(said.reading_to_json(reading)) == reading


def test_the_page_of_the_entry_marks_and_names_it(tmp_path):
    desk = open_desk(tmp_path)
    note = desk.hand_in(text=LINES[1][0]).json["id"]
    work(desk)
    assert [one["words"] for one in desk.by_key("lead", "GET", f"/notes/{note}").json["unread"]] == [LINES[1][1]]
    page = desk.browser("lead").get(f"/entry/{note}", headers=PAGE).text
    assert f'<span class="said unread">{LINES[1][1]}</span>' in page and f"<q>{LINES[1][1]}</q>" in page


def test_the_day_and_its_report_list_it_and_the_desk_counts_it_until_it_is_taken_back(tmp_path):
    desk = open_desk(tmp_path)
    note = desk.hand_in(text=LINES[1][0]).json["id"]
    desk.hand_in(text="Straight 5, 12 by 8, stapled every two, taped, rubbed down.")
    work(desk)
    lead, day = desk.browser("lead"), "2026-10-14"
    (row,) = desk.by_key("lead", "GET", f"/day/{day}/report.json").json["reports"][0]["not_understood"]["rows"]
    assert row == {"note": note, "what": "straight section 4", "says": [LINES[1][1]], "line": "Rosa Quint, 15:00"}
    page = lead.get(f"/day/{day}", headers=PAGE).text
    assert f'<a href="/entry/{note}">straight section 4 Rosa Quint, 15:00</a> <q>{LINES[1][1]}</q>' in page.split('id="not-understood"')[1]
    assert page.count("some words not understood") == lead.get("/log", headers=PAGE).text.count("some words not understood") == 1
    told = f'<a href="/day/{day}#not-understood">Said and not understood, Wednesday, October 14, 2026: 1</a>'
    assert told in lead.get("/desk", headers=PAGE).text
    assert desk.by_key("installer", "POST", f"/notes/{note}/withdraw", json={"id": str(uuid.uuid4())}).status_code in (200, 201)
    work(desk)
    assert told not in lead.get("/desk", headers=PAGE).text and 'id="not-understood"' not in lead.get(f"/day/{day}", headers=PAGE).text


def test_the_package_has_a_table_of_it_and_the_cover_a_count(tmp_path):
    desk = open_desk(tmp_path)
    note = desk.hand_in(text=LINES[1][0]).json["id"]
    desk.hand_in(text="Straight 5, 12 by 8, stapled every two, taped, rubbed down.")
    work(desk)
    with desk.folder() as folder:
        made = hand_over(folder, tmp_path / "out.zip", "en", datetime.now(UTC))
    with zipfile.ZipFile(made.path) as archive:
        table, start = (archive.read(f"{made.built.base}/data/{name}").decode() for name in ("register/not-understood.csv", "index.html"))
    (row,) = csv.DictReader(io.StringIO(table))
    assert (row["note"], row["said_by"], row["words"], len(row["pieces"].split())) == (note, "Rosa Quint", LINES[1][1], 1)
    assert '<th scope="row">notes with words that became no fact</th><td>1</td>' in start and 'href="register/not-understood.csv"' in start
