"""The page of one run: drawn and told, each piece a link, the odd joint and what is missing named."""

from __future__ import annotations

import pytest

from desk import PAGE, open_desk
from logbook.worker import Bench, work_once

SCHEDULE = "mark,run,order,kind,inlet,outlet\n1,2,1,straight,18x12,\n2,2,2,straight,18x12,\n3,2,3,end cap,18x12,\n"


@pytest.fixture(scope="module")
def desk(tmp_path_factory):
    made = open_desk(tmp_path_factory.mktemp("run"))
    folder = made.settings.folder
    (folder / "schedule.csv").write_text(SCHEDULE)
    job = (folder / "job.toml").read_text()
    (folder / "job.toml").write_text(job + '\n[[schedule]]\nfile = "schedule.csv"\nrevision = "B"\n[runs.2]\nsystem = "AH-9"\n')
    for minute, text in enumerate(("Straight 1 on run two, eighteen by twelve, taped.", "Straight 2 on run two, eighteen by ten, taped to one.")):
        assert made.hand_in(text=text, spoken_at=f"2026-10-14T10:{minute:02}:00-05:00").status_code == 201
    with made.folder() as opened:
        work_once(opened, Bench(None))
    return made


def test_the_page_names_the_odd_joint_and_what_is_missing(desk):
    page = desk.browser("lead").get("/run?run=2", headers=PAGE)
    assert page.status_code == 200
    assert "System AH-9" in page.text and "revision B" in page.text and "Logged: 2. Not logged yet: 1. Joints that do not mate as said: 1." in page.text
    assert "sizes do not mate" in page.text and page.text.count('href="/fitting/') == 2


def test_the_drawing_is_the_same_run(desk):
    drawn = desk.by_key("lead", "GET", "/run/drawing.svg?run=2")
    assert drawn.mimetype == "image/svg+xml" and "18 × 12 meets 18 × 10" in drawn.text
    spanish = desk.by_key("lead", "GET", "/run/drawing.svg?run=2&language=es")
    assert "topa con" in spanish.text


def test_a_run_is_found_however_its_name_is_written(desk):
    from logbook import store

    with desk.folder() as folder:
        assert [piece.mark for piece in store.run_pieces(folder, " 2 ")] == ["1", "2"]
        assert store.run_pieces(folder, "22") == [] and store.run_pieces(folder, "") == []


@pytest.mark.parametrize("run", ["", "99", "<b>x</b>", "2' OR 1=1"])
def test_another_run_is_refused_with_a_cure(desk, run):
    answer = desk.browser("lead").get("/run", query_string={"run": run}, headers=PAGE)
    assert answer.status_code == 404 and "<b>x" not in answer.text and "page of the job" in answer.text


def test_an_installer_sees_only_his_own_notes_and_so_no_run(desk):
    assert desk.by_key("installer", "GET", "/run?run=2").status_code == 403


def test_the_day_report_draws_the_run_and_names_its_odd_joint(desk, tmp_path):
    """In both languages, as HTML and as a PDF whose drawing says the same in words."""
    import subprocess
    from datetime import UTC, datetime

    from logbook.paper.making import make_day

    with desk.folder() as folder:
        made = make_day(folder, "2026-10-14", ("en", "es"), datetime.now(UTC))
    english, spanish = (report["runs"] for report in made.document["reports"])
    assert [plot["title"] for plot in english["plots"]] == ["Run 2, as said"] and len(english["odd"]) == len(spanish["odd"]) == 1
    assert "18 × 12 meets 18 × 10" in english["odd"][0] and "topa con" in spanish["odd"][0]
    assert english["plots"][0]["svg"] in made.files["html"].read_text()
    told = subprocess.run(["pdftotext", "-layout", made.files["pdf"], "-"], capture_output=True, check=True, text=True).stdout
    assert "sizes do not mate" in told and "las medidas no casan" in told
