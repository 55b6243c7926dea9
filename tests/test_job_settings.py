"""Every setting of the job file does something: the same words come out otherwise, or something printed does.

A setting that is read and changes nothing would be a promise that nobody keeps.
"""

from __future__ import annotations

from dataclasses import fields
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from desk import open_desk
from logbook import job as jobs
from logbook import pipeline, rules
from logbook.job import reading
from logbook.note import Note, Photo
from logbook.reading import read

HERE = Path(__file__).parent
HEAD = 'id = "abcdefgh"\nname = "x"\n'
ZONE = 'zone = "America/Chicago"\n'
CUT = "Straight four on run two, eighteen by twelve, cut to length."
RUN_2 = "[runs.2]\nstatic_pressure = 1\n"


def job(text: str) -> jobs.Job:
    found = jobs.parse(HEAD + ("" if "zone" in text.split("[", 1)[0] else ZONE) + text)
    assert isinstance(found, jobs.Job), found
    return found


def verdict(text: str, words: str, rule: str, photos: int = 0) -> str | None:
    """The verdict and who is bothered, or None: not due."""
    here = job(text)
    good = [Photo(f"{n:064x}", readable=True, seen={"sharpness": 50.0, "light": 120.0}) for n in range(photos)]
    note_at = datetime(2026, 3, 2, 15, tzinfo=UTC)
    note = Note("n", here.id, "p", "p", note_at, note_at, note_at, "answered", reading=read(words, language="en", job=here), photos=tuple(good), answered_at=note_at)
    book = pipeline.reckon([note], (), here, note_at)
    found = next((one for one in book.findings_of("n", 0) if one.rule == rule), None)
    return found and f"{found.verdict} {found.shows}"


REINFORCED = '[[reinforcement]]\nboard_class = 475\nthickness = "1 in"\npressure = 1.0\nspan = "{span} in"\nmethod = "{method}"\ndocument = "a printed table, page 9"\n'
# setting -> (its text, words, rule, without it, with it)
CASES = {
    "groove": ('groove = "v"\n', CUT, "groove-step", "unsaid ask", None),
    "tags": ("tags = true\n", "Straight, eighteen by twelve.", "mark-said", "unsaid ask", "unsaid flag"),
    "limits": ("[limits]\nstaple_spacing = 3\n", "Straight four, stapled every three.", "staple-spacing", "departs flag", "meets file"),
    "weights": ('[weights]\nstaple-spacing = "should"\n', "Straight four, stapled every three.", "staple-spacing", "departs flag", "departs count"),
    "silence": ('[silence]\ntaped = "ask"\n', "Straight four, stapled.", "taped", "unsaid flag", "unsaid ask"),
    "standing": ('[standing]\nair_leaves_by = "female"\n', "Straight four, eighteen by twelve.", "air-leaves-by", "unsaid ask", "meets file"),
    "phrases": ('[phrases]\n"closed our way" = ["taped"]\n', "Straight four, closed our way.", "taped", "unsaid flag", "meets file"),
    "runs.service": ('[runs.2]\nservice = "outside"\n', "Straight four on run two.", "allowed-there", None, "departs count"),
    "runs.storeys": ("[runs.2]\nstoreys = 4\n", "Straight four on run two.", "allowed-there", None, "departs flag"),
    "runs.done": ("[runs.2]\ndone = true\n", "Straight four on run two, hung.", "joined", "unsaid count", "unsaid flag"),
    "reinforcement": (RUN_2 + REINFORCED.format(span=48, method="none"), "Straight four on run two, forty by thirty, one inch board, 475 board.", "span-unreinforced", None, "meets file"),
    "reinforcement too small": (RUN_2 + REINFORCED.format(span=30, method="none"), "Straight four on run two, forty by thirty, one inch board, 475 board.", "span-unreinforced", None, None),
    "photos.wanted": ("[photos]\nwanted = false\n", "Straight four.", "photo-there", "unsaid flag", None),
}  # fmt: skip
# what shows elsewhere than in a finding, each with a test of its own below or in the file that is named
ELSEWHERE = {
    "id": "test_tags.py", "name": "here", "place": "here", "zone": "test_job.py", "day_starts": "test_job.py", "languages": "here",
    "roles": "here", "revisions": "test_revisions.py", "photos.keep_place": "test_handover.py", "photos.come_within_hours": "here",
    "runs.system": "test_run_page.py", "holds": "test_holds.py", "voice": "test_erasing.py", "closure_marks": "test_rules.py", "closure_mark_at": "test_rules.py",
}  # fmt: skip


def test_every_setting_is_shown_to_do_something():
    known = {row.name for row in fields(jobs.Job)}
    shown = {name.split(".")[0].split(" ")[0] for name in (*CASES, *ELSEWHERE)}
    assert all(file == "here" or (HERE / file).is_file() for file in ELSEWHERE.values())
    assert known <= shown and set(reading.TOP) <= shown | {"schedule"}


@pytest.mark.parametrize("name", [name for name in CASES if name != "reinforcement too small"])
def test_a_setting_changes_what_comes_out(name):
    text, words, rule, without, with_it = CASES[name]
    assert (verdict("", words, rule, photos=0), verdict(text, words, rule, photos=0)) == (without, with_it)
    assert without != with_it


def test_a_row_of_the_users_own_table_that_is_too_short_does_not_pass_a_wider_duct():
    text, words, rule, *_ = CASES["reinforcement too small"]
    assert (verdict(text, words, rule) or "").split(" ")[0] != "meets"


@pytest.mark.parametrize(("setting", "rule"), [("static_pressure = 3", "static-pressure"), ("air_temperature = 300", "air-temperature")])
def test_what_a_run_is_built_for_is_judged_once_for_the_job(setting, rule):
    found = [(about, finding.verdict) for about, finding in rules.of_the_job(job(f"[runs.2]\n{setting}\n")) if finding.rule == rule]
    assert found == [("2", "departs")]
    assert not [one for _, one in rules.of_the_job(job("")) if one.rule == rule]


def test_the_empty_table_is_told_once_for_the_job():
    assert any(finding.rule == "span-unreinforced" for _, finding in rules.of_the_job(job(RUN_2)))
    assert not any(finding.case == "table-empty" for _, finding in rules.of_the_job(job(RUN_2 + REINFORCED.format(span=48, method="none"))))


def test_photos_that_were_announced_are_waited_for_as_long_as_the_job_says():
    at = datetime(2026, 3, 2, 15, tzinfo=UTC)

    def overdue(text: str) -> bool:
        here = job(text)
        note = Note("n", here.id, "p", "p", at, at, at, "answered", reading=read("Straight four.", language="en", job=here), photos_to_come=("0" * 64,), answered_at=at)
        (piece,) = pipeline.reckon([note], (), here, at + timedelta(hours=5)).pieces.values()
        return piece.photos_overdue

    assert not overdue("") and overdue("[photos]\ncome_within_hours = 4\n")


def test_names_place_and_roles_are_printed(tmp_path):
    from logbook.paper.making import make_day
    from logbook.worker import Bench, work_once

    desk = open_desk(tmp_path)
    file = desk.settings.folder / "job.toml"
    text = file.read_text()
    text = text.replace("[roles]", '[roles]\nengineer = "the engineer of the hall"', 1)
    lines = [line for line in text.splitlines() if not line.startswith(("name =", "place =", "languages ="))]
    at = next(n for n, line in enumerate(lines) if line.startswith("id ="))
    file.write_text("\n".join([*lines[: at + 1], 'name = "A hall on a hill"', 'place = "Nowhere 7"', 'languages = ["es"]', *lines[at + 1 :]]))
    desk.hand_in()
    with desk.folder() as folder:
        work_once(folder, Bench(None))
        made = make_day(folder, "2026-10-14", folder.job.languages, datetime.now(UTC))
    heading = made.document["reports"][0]["heading"]
    assert heading["job"] == "A hall on a hill" and heading["lines"][0] == "Nowhere 7"
    assert any("the engineer of the hall" in line for line in heading["lines"]) and made.document["languages"] == ["es"]
