"""The day report on paper: archivable, readable for everybody, the same bytes twice, and true to the words.

PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1) are judged by page-validation; the words of a page are read back
with pdftotext (poppler).
"""

import json
import re
import subprocess
from pathlib import Path

import paper_days
import pytest
from fontTools.ttLib import TTFont
from hypothesis import given, settings
from hypothesis import strategies as st
from pdf_checks import failures

from logbook.day import Day, document
from logbook.paper import face, reports

MADE_AT = "2026-10-13T17:05:00-05:00"


@pytest.fixture(scope="module")
def day():
    return paper_days.one_day()


@pytest.fixture(scope="module")
def copies(day):
    digests = sorted({photo["sha256"] for note in day.notes for photo in note["photos"]})
    return {digest: paper_days.jpeg(at) for at, digest in enumerate(digests)}


@pytest.fixture(scope="module")
def english(day, copies):
    made = document({"en": day}, MADE_AT)
    return made, reports.pdf(made, copies)


def text_of(pdf: bytes) -> str:
    told = subprocess.run(["pdftotext", "-layout", "-", "-"], input=pdf, capture_output=True, check=True).stdout.decode()
    return " ".join(told.split())


@pytest.mark.parametrize("profile", ["2a", "ua1"])
def test_the_pdf_is_archivable_and_accessible(english, profile):
    assert failures(english[1], profile) == []


@pytest.mark.parametrize("profile", ["2a", "ua1"])
def test_a_walked_day_in_both_languages_is_archivable_and_accessible(copies, profile):
    seen = paper_days.seen_day()
    made = reports.pdf(document({"en": seen, "es": seen}, MADE_AT), copies)
    assert failures(made, profile) == []
    told = text_of(made)
    for words in ("Spot check: said against found", "found 3-1/2 in.", "the calibration had run out before the test", "Muestra al azar", "más de lo permitido", "bare straps"):
        assert words in told, words
    html = reports.html(document({"en": seen}, MADE_AT), copies).decode()
    assert "found 3-1/2 in." in html and "above the allowable" in html and "bare straps" in html


def test_the_outside_validator_can_say_no(english):
    assert failures(english[1].replace(b"/Lang", b"/Lung"), "ua1") != []
    assert failures(english[1].replace(b"pdfaid", b"pdfbid"), "2a") != []


def test_both_languages_stand_in_one_valid_file(day, copies):
    made = reports.pdf(document({"es": day, "en": day}, MADE_AT), copies)
    assert failures(made, "ua1") == []
    told = text_of(made)
    assert "Como lo dijo el instalador" in told and "As said by the installer" in told


def test_the_same_day_is_the_same_bytes(day, copies, english):
    made = document({"en": day}, MADE_AT)
    assert reports.pdf(made, copies) == english[1]
    assert reports.html(made, copies) == reports.html(made, copies)


def test_the_page_says_what_was_said_and_no_more(english):
    told = text_of(english[1])
    for words in (
        "As said by the installer", "It approves nothing", "Top comes down 4 in over 18 in, 2.67 in 12; this job allows 2 in 12.",
        "Set the line back at least 24 in.", "Recut with the line set back 24 in.", "No speech was found", "Nobody has signed this day.",
        "Looked at", "Measured", "Tested", "straight section", "60 °F", "ab" * 32,
    ):  # fmt: skip
        assert words in told, words
    for verdict_like in ("passed", "is approved", "compliant", "100 %", "score"):
        assert verdict_like not in told.lower()


def test_words_that_look_like_markup_are_printed_as_they_were_said(english, day, copies):
    assert "<b>#strong[today]</b>" in text_of(english[1])
    page_text = reports.html(english[0], copies).decode()
    assert "&lt;b&gt;#strong[today]&lt;/b&gt;" in page_text and "<b>#strong" not in page_text


@pytest.mark.parametrize("sign", ["\U0001f600", "\u6f22", "\x00", "\ue000", "\ufeff", "\u202e", "\x07"])
def test_a_character_without_a_shape_becomes_a_square(sign):
    day = paper_days.one_day()
    day.notes[1]["text"] = f"Transition four {sign} top down four."
    day.pieces[0]["facts"][1]["value"] = f"4{sign}"  # the mark stands in heading, drawing and table
    made = reports.pdf(document({"en": day}, MADE_AT), {})
    assert failures(made, "2a") == []
    assert "Transition four □ top down four." in text_of(made)


@settings(max_examples=50, derandomize=True)
@given(st.text())
def test_every_text_is_printable(text):
    assert set(face.printable(text)) <= face.characters()


@pytest.mark.parametrize("name", face.FILES)
def test_the_list_of_characters_is_that_of_the_face(name):
    covered = TTFont(face.folder() / name).getBestCmap()
    assert {ord(sign) for sign in face.characters()} <= set(covered)


def test_every_text_of_the_product_can_be_printed():
    from logbook.wording import LANGUAGES, texts

    for language in LANGUAGES:
        for key, text in texts(language).items():
            if key.startswith(("report.", "drawing.", "facts.", "rules.", "handover.")):
                assert face.MISSING not in face.printable(text), f"{language} {key}"


def test_photos_lose_nothing_but_their_camera_data(english, copies):
    """The small copies go in as they were made: no EXIF, so no position, comes with them."""
    assert b"Exif" not in english[1]


def test_a_photo_whose_copy_is_missing_is_named(day):
    told = text_of(reports.pdf(document({"en": day}, MADE_AT), {}))
    assert f"small copy not made yet: {paper_days.CASE_PHOTO[:12]}" in told


def test_the_json_is_plain(english):
    assert json.loads(json.dumps(english[0])) == english[0]


def test_a_long_day_keeps_its_fittings():
    """Speed and memory are measured in tests/bench, never asserted."""
    day, copies = paper_days.many(12, 3)
    told = text_of(reports.pdf(document({"en": day}, MADE_AT), copies))
    assert all(f"Transition {at}" in told for at in range(1, 13))


CONTRACT = Path(__file__).parent / "cases" / "contract"


@pytest.mark.parametrize("name", ["08-note-with-photos", "09-answer-and-piece", "10-amends-same-as", "11-decisions", "12-unheard"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_documents_of_the_contract_become_a_report(name, language):
    told = json.loads((CONTRACT / f"{name}.json").read_text(encoding="utf-8"))
    notes, pieces = told.get("notes") or [told], told.get("pieces", [])
    made = document({language: Day("2026-10-13", paper_days.JOB, notes, pieces)}, MADE_AT)
    printed = reports.pdf(made, {})
    assert failures(printed, "ua1") == []
    shown = " ".join(text_of(printed).split())
    for piece in pieces:
        for finding in piece["findings"]:
            assert finding["says"] in shown
        for one in piece["decisions"]:
            assert one["by"] in shown and (one["reason"] or "") in shown


def test_what_was_said_before_a_correction_stays_on_paper():
    told = json.loads((CONTRACT / "09-answer-and-piece.json").read_text(encoding="utf-8"))
    made = document({"en": Day("2026-10-13", paper_days.JOB, told["notes"], told["pieces"])}, MADE_AT)
    shown = text_of(reports.pdf(made, {}))
    assert "No, I mean back twenty-four." in shown
    assert "before: left in 4, back 18" in shown
    assert "changed after an answer" in shown


def test_ids_of_a_page_in_two_languages_are_one_of_a_kind(day, copies):
    shown = reports.html(document({"en": day, "es": day}, MADE_AT), copies).decode()
    ids = re.findall(r' id="([^"]+)"', shown)
    assert len(ids) == len(set(ids)) > 10


@pytest.mark.parametrize("language", [None, "fr", "no language at all", "EN"])
def test_a_note_in_any_tongue_is_printed(language):
    day = paper_days.one_day()
    day.notes[1]["language"] = language
    assert failures(reports.pdf(document({"en": day}, MADE_AT), {}), "ua1") == []


def test_a_very_long_note_without_a_blank_is_printed():
    day = paper_days.one_day()
    day.notes[1]["text"] = "x" * 5000
    day.pieces[0]["mark"] = day.pieces[0]["facts"][1]["value"] = "M" * 300
    assert failures(reports.pdf(document({"en": day}, MADE_AT), {}), "2a") == []
