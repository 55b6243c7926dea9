"""What is hard to hear, and what is no note: the part that is a note is used, the rest is told, and nothing is made up. Real ears."""

from __future__ import annotations

import html
import json
import sys
from pathlib import Path

import numpy as np
import pytest
from desk import PAGE, open_desk

from logbook import pipeline, store, worker
from logbook.decoding import sound
from logbook.decoding.sound import RATE, Sound
from logbook.hearing import stretches, windows
from logbook.reading import read

sys.path.insert(0, str(Path(__file__).parent / "making"))
import bad_sound  # noqa: E402

CASES = Path(__file__).parent / "cases" / "hearing"
CLIPS = {row["name"]: sound.decode(CASES / "bad" / row["file"]) for row in json.loads((CASES / "bad" / "clips.json").read_text("utf-8"))}
FOREIGN = [name for name in CLIPS if name.startswith("in ")]
SHAPE = {"kind": "transition", "inlet_size": (24, 12), "outlet_size": (18, 12)}


def facts(heard) -> dict:
    return {fact.name: fact for entry in read(heard.text, language=heard.language, transcript=heard).fittings for fact in entry.facts}


@pytest.fixture(scope="module")
def heard(ears):
    """Every clip as English, all at once."""
    return dict(zip(CLIPS, ears.hear(list(CLIPS.values()), languages=["en"] * len(CLIPS)), strict=True))


@pytest.mark.parametrize("name", ["plain", "whispered", "two at once"])
def test_the_note_is_heard_whispered_and_under_another_voice(heard, name):
    """The other voice is 12 dB below; where both are alike, `test_hearing` wants the doubt to show."""
    found = facts(heard[name])
    assert {fact: found[fact].value for fact in SHAPE} == SHAPE and heard[name].unheard == ()


def test_a_clipped_note_gives_its_size_and_never_says_taped_where_he_said_not_taped(heard):
    found = facts(heard["clipped"])
    assert found["inlet_size"].value == (18, 12) and found["length"].value == 48
    assert "taped" not in found or found["taped"].value is False


def test_a_recording_that_stops_in_mid_word_is_used_so_far_and_told(heard):
    """Of the word in which it stops nobody can be sure, and work may have been left."""
    one = heard["cut off"]
    assert facts(one)["inlet_size"].value == (18, 12)
    assert one.unheard[-1].why == "cut_off" and one.words[-1].heard <= 0.3
    (entry,) = pipeline.check(one)["fittings"]
    assert next(found["verdict"] for found in entry["findings"] if found["rule"] == "nothing-open") == "unclear"
    assert all(gap.why != "cut_off" for name in CLIPS if name != "cut off" for gap in heard[name].unheard)


def test_the_end_of_a_recording_is_told_from_its_silence():
    speech = bad_sound.noise("pink", 2.0, 1)
    quiet = np.concatenate([0.001 * speech, speech, 0.001 * speech])
    assert windows.stops_short(quiet[: 3 * RATE]) and not windows.stops_short(quiet)
    assert not windows.stops_short(quiet[: 4 * RATE + RATE // 10]) and not windows.stops_short(speech) and not windows.stops_short(speech[:800])


@pytest.mark.parametrize("language", ["en", "es", None])
def test_another_language_is_told_and_nothing_is_read_into_it(ears, language):
    found = ears.hear([CLIPS[name] for name in FOREIGN], languages=[language] * len(FOREIGN))
    assert {name: (one.text, one.unheard[0].why) for name, one in zip(FOREIGN, found, strict=True)} == dict.fromkeys(FOREIGN, ("", "language"))


def test_other_people_s_talk_across_a_hall_is_no_note(heard):
    assert heard["across a hall"].text == "" and heard["across a hall"].unheard


def forgotten(*after: np.ndarray) -> np.ndarray:
    """A note, and what the microphone hears when nobody stops it."""
    return np.concatenate([CLIPS["plain"].samples, *after])


def test_a_forgotten_microphone_is_heard_in_stretches_as_it_is_in_one_go(ears):
    samples = forgotten(bad_sound.noise("engine", 28, 4, 0.1), CLIPS["across a hall"].samples, np.zeros(9 * RATE)).astype(np.float32)
    whole = Sound(samples, samples.size / RATE, samples.size / RATE, "0" * 64, "x")
    (at_once,) = ears.hear([whole], languages=["en"])
    parts = stretches.parts(whole)
    joined = stretches.joined(whole, [(start, ears.hear([part], languages=["en"])[0]) for start, part in parts])
    assert (joined.text, joined.unheard, joined.language) == (at_once.text, at_once.unheard, at_once.language)
    assert [word.second for word in joined.words] == pytest.approx([word.second for word in at_once.words], abs=0.06)
    assert all(joined.text[word.start : word.end] == word.words for word in joined.words)
    assert {name: fact.value for name, fact in facts(joined).items() if name in SHAPE} == SHAPE
    told = sum(gap.until - gap.second for gap in joined.unheard)
    assert told > whole.seconds - CLIPS["plain"].seconds - windows.LONG_PAUSE and joined.unheard[-1].until == round(whole.seconds, 2)


@pytest.mark.parametrize(("language", "words"), [("en", "no word was heard: sound without speech"), ("es", "no se oyó ninguna palabra: sonido sin voz")])
def test_the_page_says_what_was_not_heard_and_why(tmp_path, ears, language, words):
    desk = open_desk(tmp_path)
    note = desk.hand_in(audio=[bad_sound.as_wav(forgotten(np.zeros(60 * RATE)))]).json["id"]
    with desk.folder() as folder:
        bench = worker.Bench(lambda: ears)
        while any(worker.work_once(folder, bench)):
            pass
        assert store.note_document(folder, note, "en")["fittings"][0]["facts"]
    page = html.unescape(desk.browser("installer").get(f"/entry/{note}", headers=PAGE | {"Accept-Language": language}).text)
    assert words in page


# --- the second hearing, with real ears


@pytest.mark.parametrize(
    ("file", "language", "kept"),
    [
        ("06.ogg", "en", "second"),  # 3 s through a dust mask: "Lies in Titting 42", played slower "This is fitting 42"
        ("38.ogg", "en", "first"),  # the second leaves a third of the words out: the first stands, with its doubts
    ],
)
def test_a_second_hearing_by_the_real_ears(tmp_path, ears, file, language, kept):
    desk = open_desk(tmp_path)
    note = desk.hand_in(audio=[(CASES / file).read_bytes()], language=language).json["id"]
    with desk.folder() as folder:
        bench = worker.Bench(lambda: ears, again=lambda: ears)
        assert worker.work_once(folder, bench).notes == 1
        first = store.note_document(folder, note, "en")
        assert worker.work_once(folder, bench).again == 1 and not any(worker.work_once(folder, bench))
        now = store.note_document(folder, note, "en")
        assert folder.db.execute("SELECT kept FROM second_hearings").fetchone() == (kept,)
        assert folder.db.execute("SELECT count(*) FROM words WHERE source = 'heard'").fetchone() == (2,)  # both are kept
    page = desk.browser("installer").get(f"/entry/{note}", headers=PAGE).text
    if kept == "second":
        assert now["text"] != first["text"] and [old["text"] for old in now["earlier"]] == [first["text"]] and "data-heard-again" in page
    else:
        assert now["text"] == first["text"] and "data-heard-again" not in page
