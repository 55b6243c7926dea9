"""The job file: what is wrong is refused with its line and the nearest right word; what is right reads exactly."""

import tomllib
from datetime import UTC, date, datetime
from fractions import Fraction
from pathlib import Path

import pytest

from logbook import job
from logbook.facts import FACTS
from logbook.limits import may_stand
from logbook.mistake import Mistake
from logbook.wording import LANGUAGES, say

HEAD = 'id = "abcdefgh"\nname = "x"\nzone = "America/Chicago"\n'
CASES = tomllib.loads((Path(__file__).parent / "cases" / "job" / "wrong.toml").read_text(encoding="utf-8"))["case"]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["text"].replace("\n", " ")[:50])
def test_what_is_wrong_is_refused_with_its_line_and_a_word_that_helps(case):
    found = job.parse(HEAD + case["text"] + "\n")
    assert isinstance(found, tuple)
    (mistake,) = found
    assert (mistake.key, mistake.where) == (case["key"], f"job.toml:{case['line']}")
    for language in LANGUAGES:
        told = [say(f"{mistake.key}.{part}", language, **mistake.values) for part in ("error", "cure")]
        assert all(told)
    assert case["helps"] in " ".join(say(f"{mistake.key}.{part}", "en", **mistake.values) for part in ("error", "cure"))


def test_a_zone_that_is_none_is_answered_with_the_nearest():
    (mistake,) = job.parse(HEAD.replace("America/Chicago", "America/Chicgo"))
    assert (mistake.where, mistake.values["nearest"]) == ("job.toml:3", "America/Chicago")


def test_every_mistake_is_told_at_once():
    found = job.parse(HEAD + 'languges = ["en"]\n[limits]\nstaple_spacng = 2\n[weights]\ntaped = "maybe"\n')
    assert [mistake.where for mistake in found] == ["job.toml:4", "job.toml:6", "job.toml:8"]


@pytest.mark.parametrize(
    ("written", "inches"),
    [("2", Fraction(2)), ("2.25", Fraction(9, 4)), ('"2-1/4 in"', Fraction(9, 4)), ('"50 mm"', Fraction(500, 254)), ('"1 ft"', Fraction(12))],
)
def test_a_length_is_exact_however_it_is_written(written, inches):
    assert job.parse(HEAD + f"[limits]\nstaple_spacing = {written}\n").limit("staple_spacing") == inches


def test_what_is_not_written_is_the_default():
    assert job.parse(HEAD).limit("slope") == job.DEFAULT.limit("slope") == (2, 12)


@pytest.mark.parametrize("row", [row for row in FACTS if not any(may_stand(row.name, way) for way in ("job", "shift"))], ids=lambda row: row.name)
def test_only_materials_and_method_stand(row):
    """Every fact that may not stand is refused by name, whatever its value."""
    value = {"flag": "true", "count": "2"}.get(row.shape, '"1"')
    found = job.parse(HEAD + f"[standing]\n{row.name} = {value}\n")
    assert isinstance(found, tuple) and found[0].key == "job.never-stands"


def test_a_night_shift_belongs_to_the_day_it_began():
    """`day_starts` 05:00 in Chicago: four in the morning UTC-5 is still the day before."""
    here = job.parse(HEAD + 'day_starts = "05:00"\n')
    assert here.day_of(datetime(2026, 7, 2, 9, 30, tzinfo=UTC)) == date(2026, 7, 1)  # 04:30 in Chicago
    assert here.day_of(datetime(2026, 7, 2, 10, 30, tzinfo=UTC)) == date(2026, 7, 2)


SCHEDULE = """mark,run,order,kind,inlet,outlet
1,1,1,straight,20x14,
2,1,2,transition,20x14,18x14
"""


def folder(tmp_path: Path, **files: str) -> Path:
    blocks = "".join(f'[[schedule]]\nfile = "{name}.csv"\nrevision = "{name}"\nfrom = {day}\n' for name, day in (("a", "2026-01-05"), ("b", "2026-03-01")) if name in files)
    (tmp_path / "job.toml").write_text(HEAD + blocks, encoding="utf-8")
    for name, text in files.items():
        (tmp_path / f"{name}.csv").write_text(text, encoding="utf-8")
    return tmp_path


def test_the_revision_in_force_is_that_of_the_day(tmp_path):
    here = job.load(folder(tmp_path, a=SCHEDULE, b=SCHEDULE.replace("18x14", "16x14")))
    assert [here.row("2", "1", day).outlet for day in (date(2026, 2, 1), date(2026, 3, 1))] == [(18, 14), (16, 14)]
    assert here.row("9", "1", date(2026, 2, 1)) is None


@pytest.mark.parametrize(
    ("wrong", "line"), [("3,1,3,straigt,18x14,", 4), ("3,1,x,straight,18x14,", 4), ("3,1,3,straight,18xx14,", 4), ("2,1,3,straight,18x14,", 4)]
)
def test_a_wrong_row_of_the_schedule_is_refused_with_its_line(tmp_path, wrong, line):
    found = job.load(folder(tmp_path, a=SCHEDULE + wrong + "\n"))
    assert isinstance(found, tuple) and found[0].where.endswith(f":{line}")
    assert say(f"{found[0].key}.cure", "es", **found[0].values)


def test_a_folder_without_a_job_file_is_told(tmp_path):
    (mistake,) = job.load(tmp_path) if isinstance(job.load(tmp_path), tuple) else ()
    assert isinstance(mistake, Mistake) and mistake.key == "job.no-file"
