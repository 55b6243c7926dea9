"""The whole path in one job folder: notes are taken, read, judged, reported, handed over and verified.

The words are typed here; the hearing of sound has tests of its own, and the transcripts below are prepared.
"""

import json
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from logbook.cli import main

SPOKEN = "2026-10-14T10:00:00-05:00"
NOTES = {
    "steep": "Transition seven on run two, twenty by fourteen to twenty by eleven, top down three, back twelve, stapled every two, taped with 181A-P, rubbed down.",
    "untaped": "Straight eight on run two, twenty by eleven, stapled every two inches.",
    "shift": "Shift note. One-inch board, two-and-a-half-inch 181A-P, half-inch staples every two. Run two, supply.",
}


@pytest.fixture(scope="module")
def job(tmp_path_factory):
    """A job folder with three typed notes, answered by one round of a worker."""
    home = tmp_path_factory.mktemp("path")
    for name, text in NOTES.items():
        (home / f"{name}.txt").write_text(text, encoding="utf-8")
    take = ["take", *(str(home / f"{name}.txt") for name in NOTES), "--folder", str(home / "job"), "--as", "rosa", "--at", SPOKEN]
    assert main(take) == 0
    assert main(["work", "--once", "--engine", "scripted", "--prepared", str(home), "--folder", str(home / "job")]) == 0
    return home


def log(job, capsys):
    code = main(["log", "--json", "--folder", str(job / "job")])
    return code, json.loads(capsys.readouterr().out)


def test_every_note_is_answered_and_what_is_wrong_is_flagged(job, capsys):
    code, doc = log(job, capsys)
    assert code == 1
    assert {note["state"] for note in doc["notes"]} == {"answered"}
    found = {piece["mark"]: {f["rule"]: f["verdict"] for f in piece["findings"]} for piece in doc["pieces"]}
    assert found["7"]["transition-slope"] == "departs"
    assert found["7"]["taped"] == "meets"
    assert found["8"]["taped"] == "unsaid"


def test_taking_a_file_twice_changes_nothing(job, capsys):
    _, before = log(job, capsys)
    again = ["take", *(str(job / f"{name}.txt") for name in NOTES), "--folder", str(job / "job"), "--as", "rosa", "--at", SPOKEN]
    assert main(again) == 0
    capsys.readouterr()
    assert log(job, capsys)[1] == before


def test_an_answer_after_a_restart_keeps_the_piece(job, capsys):
    """A second worker has reckoned nothing itself; the piece of mark 8 is the same one, now taped."""
    _, before = log(job, capsys)
    (job / "more.txt").write_text("Straight eight on run two is taped now with 181A-P and rubbed down.", encoding="utf-8")
    main(["take", str(job / "more.txt"), "--folder", str(job / "job"), "--as", "rosa", "--at", "2026-10-14T11:00:00-05:00"])
    main(["work", "--once", "--engine", "scripted", "--prepared", str(job), "--folder", str(job / "job")])
    capsys.readouterr()
    _, after = log(job, capsys)
    one, other = ({piece["mark"]: piece for piece in doc["pieces"]} for doc in (before, after))
    assert one["8"]["id"] == other["8"]["id"]
    assert {f["rule"]: f["verdict"] for f in other["8"]["findings"]}["taped"] == "meets"


def test_the_day_is_reported_and_the_package_proves_itself(job, capsys):
    assert main(["day", "2026-10-14", "--folder", str(job / "job")]) == 0
    assert (job / "job" / "reports" / "day-2026-10-14.pdf").read_bytes().startswith(b"%PDF-")
    assert main(["handover", str(job / "out.zip"), "--folder", str(job / "job")]) == 0
    assert main(["verify", str(job / "out.zip")]) == 0
    whole = (job / "out.zip").read_bytes()
    at = whole.index(b"steep") if b"steep" in whole else whole.index(b"Transition seven")
    (job / "bad.zip").write_bytes(whole[:at] + bytes([whole[at] ^ 1]) + whole[at + 1 :])
    assert main(["verify", str(job / "bad.zip")]) == 1


def test_the_folder_is_whole_and_the_doctor_says_so_by_its_schema(job, capsys):
    assert main(["doctor", "--json", "--folder", str(job / "job")]) == 0
    told = json.loads(capsys.readouterr().out)
    schema = json.loads((Path(__file__).parents[1] / "schemas" / "doctor.json").read_text(encoding="utf-8"))
    assert list(Draft202012Validator(schema).iter_errors(told)) == []
    assert told["whole"] is True and told["notes"] >= 3


def test_a_day_that_is_none_is_told_with_what_was_expected(job, capsys):
    for came in ("tomorrow", "2026-13-01"):
        assert main(["log", "--date", came, "--folder", str(job / "job")]) == 2
        assert f"Expected a day as 2026-10-14, got {came}." in capsys.readouterr().err
