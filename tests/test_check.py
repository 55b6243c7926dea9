"""`logbook check`: inputs, exit codes, what stands on standard output, and what a foreman reads."""

import io
import json
import sys

import pytest
from test_schemas import problems

from logbook.cli import main
from logbook.hearing.scripted import spread
from logbook.transcript import to_json as transcript_to_json

GOOD = (
    "End cap thirty-one on run four, ten by eight, four sides stapled every two inches, four sides taped with 181A-P, "
    "rubbed down till the scrim shows, tight."
)
OFF = "Straight thirty-one on run one, eighteen by fourteen, stapled every two and a quarter, taped with cloth tape."
SPANISH = "Reducción nueve en el run dos, de veinte por catorce a dieciséis por catorce, el lado izquierdo entra cuatro, back doce."


@pytest.fixture
def notes(tmp_path):
    """Files of notes by name."""

    def write(**texts):
        for name, text in texts.items():
            path = tmp_path / f"{name}.txt"
            path.write_bytes(text if isinstance(text, bytes) else text.encode())
            yield str(path)

    return lambda **texts: list(write(**texts))


def checked(capsys, *arguments) -> tuple[int, dict]:
    code = main(["check", *arguments, "--json"])
    return code, json.loads(capsys.readouterr().out)


@pytest.mark.parametrize(
    ("texts", "code"),
    [
        ({"a": GOOD}, 0),
        ({"a": OFF}, 1),
        ({"a": b"\xff\xd8\xff\xe0 a photo"}, 2),
        ({"a": GOOD, "b": OFF}, 1),
        ({"a": OFF, "b": b"\xff\xfe\x00", "c": GOOD}, 2),
        ({"a": ""}, 2),
        ({"a": "Thank you."}, 0),
    ],
)
def test_the_exit_code_is_the_worst_of_the_inputs(notes, capsys, texts, code):
    got, document = checked(capsys, *notes(**texts))
    assert got == code
    assert len(document.get("documents", [document])) == len(texts)


def test_one_input_gives_the_bare_document(notes, capsys):
    _, document = checked(capsys, *notes(a=GOOD))
    assert "input" not in document and document["text"] == GOOD
    assert problems("check.json", document) == []


def test_several_inputs_stand_in_order_and_a_bad_one_stops_none(notes, capsys):
    paths = notes(a=GOOD, b=b"\x00\xff", c=SPANISH)
    _, document = checked(capsys, *paths)
    assert [one["input"] for one in document["documents"]] == paths
    assert set(document["documents"][1]) == {"input", "error", "cure"}
    assert [one["language"] for one in document["documents"][::2]] == ["en", "es"]
    assert problems("documents.json", document) == []


def test_inputs_of_one_call_are_never_joined(notes, capsys):
    _, document = checked(capsys, *notes(a="Straight seven on run two, eighteen by twelve, stapled.", b="Fitting seven on run two, taped."))
    names = [{fact["name"] for fact in one["fittings"][0]["facts"]} for one in document["documents"]]
    assert "taped" not in names[0] and "stapled" not in names[1]


def test_a_missing_file_is_told(capsys, tmp_path):
    code, document = checked(capsys, str(tmp_path / "none.txt"))
    assert code == 2 and set(document) == {"input", "error", "cure"}


@pytest.mark.parametrize("given", [b"", b" \n\t\n", b"\xef\xbb\xbf"])
def test_nothing_to_check_is_bad_input_and_the_others_are_still_checked(notes, capsys, monkeypatch, tmp_path, given):
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(given)))
    assert main(["check"]) == 2 and "is empty" in capsys.readouterr().err
    (tmp_path / "empty.txt").write_bytes(given)
    assert main(["check", "--json", str(tmp_path / "empty.txt"), *notes(a=OFF)]) == 2
    told = json.loads(capsys.readouterr().out)["documents"]
    assert "words of a note" in told[0]["error"] and told[1]["fittings"]


def test_words_come_on_standard_input(capsys, monkeypatch):
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(OFF.encode())))
    code, document = checked(capsys, "-")
    assert code == 1 and document["text"] == OFF


def test_the_language_is_given_or_found(notes, capsys):
    _, found = checked(capsys, *notes(a=SPANISH))
    _, given = checked(capsys, *notes(a=SPANISH), "--language", "es")
    assert (found["language_from"], given["language_from"]) == ("words", "given")
    assert found["fittings"][0]["facts"] == given["fittings"][0]["facts"]


def test_a_job_file_sets_the_limits(notes, capsys, tmp_path):
    file = tmp_path / "job.toml"
    file.write_text('[limits]\nstaple_spacing = "3 in"\n', encoding="utf-8")
    rule = {}
    for arguments in ((), ("--job", str(file))):
        _, document = checked(capsys, *notes(a=OFF), *arguments)
        rule[bool(arguments)] = [f["verdict"] for f in document["fittings"][0]["findings"] if f["rule"] == "staple-spacing"]
    assert rule == {False: ["departs"], True: ["meets"]}


def test_a_job_file_with_a_mistake_is_refused_with_its_line(notes, capsys, tmp_path):
    file = tmp_path / "job.toml"
    file.write_text('[limits]\nstaple_spacing = "near"\n', encoding="utf-8")
    code, document = checked(capsys, *notes(a=OFF), "--job", str(file))
    assert code == 2 and set(document) == {"error", "cure"}


def test_without_a_photo_the_photo_rules_are_not_due(notes, capsys):
    _, document = checked(capsys, *notes(a=GOOD))
    assert not [f for f in document["fittings"][0]["findings"] if f["rule"].startswith("photo-")]


def test_a_photo_belongs_to_one_note(notes, capsys, tmp_path):
    code, document = checked(capsys, *notes(a=GOOD, b=OFF), "--photo", str(tmp_path / "p.jpg"))
    assert code == 2 and "--photo" in document["error"]


@pytest.fixture
def sound(tmp_path):
    """A second of sound whose words are prepared."""
    import wave

    def make(text):
        path = tmp_path / "7.wav"
        with wave.open(str(path), "wb") as file:
            file.setparams((1, 2, 16000, 0, "NONE", ""))
            file.writeframes(b"".join((200 * (i % 100 - 50)).to_bytes(2, "little", signed=True) for i in range(16000 * 2)))
        (tmp_path / "7.json").write_text(json.dumps(transcript_to_json(spread(text, 2.0, "en"))), encoding="utf-8")
        return str(path), ("--engine", "scripted", "--prepared", str(tmp_path))

    return make


def test_sound_goes_the_same_way(sound, capsys):
    path, ears = sound(OFF)
    code, document = checked(capsys, path, *ears)
    assert code == 1 and document["transcript"]["text"] == document["text"] == OFF
    assert document["language_from"] == "ears"
    assert {fact["via"] for fact in document["fittings"][0]["facts"]} == {"spoken"}
    assert problems("check.json", document) == []


def test_sound_without_words_is_no_pass(sound, capsys):
    path, ears = sound("")
    code, document = checked(capsys, path, *ears)
    assert code == 2 and set(document) == {"input", "error", "cure"}


def test_what_a_foreman_reads(notes, capsys):
    assert main(["check", *notes(a=OFF)]) == 1
    told = capsys.readouterr().out
    for words in ("Straight section 31 of run 1: 18 by 14 in.", "off", "2.25", "for the QA lead", "Do:", "good as said", "also not said", "Question:", "no approval"):
        assert words in told, words


def test_what_a_foreman_reads_in_spanish(notes, capsys):
    assert main(["check", *notes(a=SPANISH)]) == 1
    told = " ".join(capsys.readouterr().out.split())  # lines may break between any two words
    for words in ("fuera", "Haga:", "no es una aprobación"):
        assert words in told, words


@pytest.mark.parametrize(
    ("text", "words"),
    [("Thank you.", "No fitting"), ("Shift note. Half-inch staples every two.", "for the shift"), ("Scrap that last one.", "Takes back")],
)
def test_a_note_without_a_fitting_says_so(notes, capsys, text, words):
    assert main(["check", *notes(a=text)]) == 0
    assert words in capsys.readouterr().out


def test_with_a_photo_the_photo_rules_are_due(notes, capsys, tmp_path):
    from PIL import Image

    stripes = Image.new("L", (320, 240))
    stripes.putdata([255 * (x // 4 % 2) for _ in range(240) for x in range(320)])
    stripes.save(tmp_path / "p.png")
    _, document = checked(capsys, *notes(a=GOOD), "--photo", str(tmp_path / "p.png"))
    found = {f["rule"]: f["verdict"] for f in document["fittings"][0]["findings"] if f["rule"].startswith("photo-")}
    assert found["photo-there"] == "meets"
    assert "photo-time" not in found  # when the note was spoken is not known here


def test_a_photo_that_cannot_be_seen_is_told_and_the_words_are_still_checked(notes, capsys):
    [path] = notes(a=OFF)
    assert main(["check", path, "--photo", path, "--json"]) == 2
    told = capsys.readouterr()
    assert json.loads(told.out)["text"] == OFF and "a.txt" in told.err


def test_a_fault_of_ours_never_answers_as_something_flagged(capsys, monkeypatch):
    from logbook.cli import check

    monkeypatch.setattr(check, "run", lambda args: 1 // 0)
    assert main(["check"]) == 2
    assert "ZeroDivisionError" in capsys.readouterr().err
