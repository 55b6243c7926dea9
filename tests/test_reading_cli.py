"""`logbook read`: one document or several, bad inputs beside good ones, the exit code of the worst."""

from __future__ import annotations

import io
import json
import sys
from types import SimpleNamespace

import pytest

from logbook.cli import main

GOOD = "Straight 12, 18 by 12, taped."


@pytest.fixture
def files(tmp_path):
    (tmp_path / "good.txt").write_text(GOOD, encoding="utf-8")
    (tmp_path / "bytes.txt").write_bytes(b"\xff\xd8\xff\xe0 picture")
    (tmp_path / "empty.txt").write_text("", encoding="utf-8")
    (tmp_path / "long.txt").write_text("straight twelve " * 70_000, encoding="utf-8")
    return tmp_path


def read(capsys, *args):
    code = main(["read", *map(str, args)])
    said = capsys.readouterr()
    return code, said.out, said.err


def test_one_input_gives_the_bare_document(capsys, files):
    code, out, err = read(capsys, "--json", files / "good.txt")
    document = json.loads(out)
    assert (code, err) == (0, "")
    assert set(document) == {"language", "language_from", "text", "fittings", "shift", "withdraws"}
    assert (document["text"], document["language_from"]) == (GOOD, "words")


def test_a_given_language_is_said_to_be_given(capsys, files):
    assert json.loads(read(capsys, "--json", "--language", "en", files / "good.txt")[1])["language_from"] == "given"


@pytest.mark.parametrize("name", ["bytes.txt", "long.txt", "nowhere.txt"])
def test_a_bad_input_is_told_with_its_cure_and_the_others_are_done(capsys, files, name):
    code, out, _ = read(capsys, "--json", files / name, files / "good.txt")
    bad, good = json.loads(out)["documents"]
    assert code == 2
    assert set(bad) == {"input", "error", "cure"} and "Nothing was changed" in bad["error"]
    assert good["input"].endswith("good.txt") and good["fittings"]


def test_an_empty_note_is_no_error_and_says_why_nothing_was_read(capsys, files):
    code, out, _ = read(capsys, "--json", files / "empty.txt")
    assert (code, json.loads(out)["fittings"], json.loads(out)["reason"]) == (0, [], "reading.empty")


def test_a_dash_reads_standard_input(capsys, monkeypatch):
    monkeypatch.setattr(sys, "stdin", SimpleNamespace(buffer=io.BytesIO(GOOD.encode())))
    code, out, _ = read(capsys, "--json", "-")
    assert (code, len(json.loads(out)["fittings"])) == (0, 1)


def test_explain_shows_every_fact_under_its_words(capsys, files):
    _, out, _ = read(capsys, "--explain", files / "good.txt")
    lines = out.splitlines()
    under = next(line for line in lines if "Inlet: 18 by 12" in line)
    assert lines[0] == GOOD and under.index("^") == GOOD.index("18 by 12") and under.count("^") == len("18 by 12")


def test_explain_tells_what_was_taken_back_and_what_came_from_another_fitting(capsys, tmp_path):
    text = "Straight 9, 20 by 16, no, make that 20 by 14. Straight 10, same size. Taped? Not yet."
    (tmp_path / "n.txt").write_text(text, encoding="utf-8")
    out = read(capsys, "--explain", tmp_path / "n.txt")[1]
    assert "1 Inlet taken back" in out and "2 Inlet: 20 by 14 in., as of fitting 1 of this note" in out
    assert "2 Closed with tape: no" in out and "a question" not in out


def test_explain_of_a_long_note_keeps_every_mark_under_its_words(capsys, tmp_path):
    text = "Straight 9, taped.  \n\n" + "It rained all day and nobody came. " * 6 + "Elbow 12, vanes in."
    (tmp_path / "n.txt").write_text(text, encoding="utf-8")
    lines = read(capsys, "--explain", tmp_path / "n.txt")[1].splitlines()
    above = next(line for line in lines if "Elbow 12" in line)
    under = next(line for line in lines if "Mark: 12" in line)
    assert above[under.index("^") : under.rindex("^") + 1] == "12"


def test_explain_tells_what_was_left_alone_and_why(capsys, tmp_path):
    (tmp_path / "n.txt").write_text("Straight 9, taped. The drawing calls for 18 by 12.", encoding="utf-8")
    assert "left alone: what a drawing asks for" in read(capsys, "--explain", tmp_path / "n.txt")[1]
