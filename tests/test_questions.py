"""What a note is asked, and what "that is right" settles: the hearing, and nothing that was not said."""

import uuid
from dataclasses import replace

import pytest

from logbook import store
from logbook.hearing import scripted
from logbook.pipeline.documents import answer_to_json
from logbook.pipeline.reading_back import answer_from_json
from logbook.worker import Bench, work_once

from test_worker import folder, hand_in  # noqa: F401 (a fixture)

SAID = "Transition four on run two, 18 by 12 to 18 by 10, top down two, back 24, stapled about every two, taped with 181A-P."
FAINT = ("top", "down", "two,", "back", "24,")


class Ears:
    """Hears the words well but for the move, which comes through faintly."""

    name = "prepared"

    def hear(self, sounds, *, languages):
        return [self.one(sound) for sound in sounds]

    def one(self, sound):
        heard = scripted.spread(SAID, sound.seconds, "en")
        faint = {n for n, word in enumerate(heard.words) if word.words.strip() in FAINT and heard.text[: word.start].count("18 by") == 2}
        return replace(heard, words=tuple(replace(w, heard=0.3) if n in faint else w for n, w in enumerate(heard.words)))


def answered(folder, note):  # noqa: F811
    while any(work_once(folder, Bench(lambda: Ears()))):
        pass
    return store.note_document(folder, note, "en")


def findings(document: dict) -> dict:
    return {one["rule"]: one for one in document["fittings"][0]["findings"]}


@pytest.fixture
def note(folder):  # noqa: F811
    from handing import tone

    return hand_in(folder, tone(440))


def test_one_fact_heard_faintly_is_asked_for_once(folder, note):  # noqa: F811
    document = answered(folder, note)
    found = findings(document)
    doubted = [rule for rule in found if found[rule]["asks"] == "side_moves" and found[rule]["verdict"] == "unclear"]
    assert len(doubted) >= 2, "several rules wait for the one faint fact"
    asked = [found[rule]["asks"] or rule for _, rule in document["questions"]]
    assert asked.count("side_moves") == 1 and len(asked) == len(set(asked)) == 2


def test_that_is_right_ends_the_doubt_of_hearing_and_nothing_else(folder, note):  # noqa: F811
    before = findings(answered(folder, note))
    store.confirm(folder, str(uuid.uuid4()), note, "rosa", text=SAID)
    assert store.note_document(folder, note, "en")["reckoning"] is True, "the findings do not know of it yet"
    document = answered(folder, note)
    assert "reckoning" not in document
    after = findings(document)
    assert document["heard_right"] is True
    assert after["sizes-agree"]["verdict"] == "meets" and before["sizes-agree"]["case"] == "heard-faintly"
    assert after["rubbed-down"]["verdict"] == "unsaid", "an act that was not said stays not said"
    assert {rule for rule in after if after[rule]["verdict"] == "meets"} - {rule for rule in before if before[rule]["verdict"] == "meets"} <= {
        rule for rule in before if before[rule]["case"] in ("heard-faintly", "maybe-misheard")
    }
    fact = next(f for f in document["fittings"][0]["facts"] if f["name"] == "side_moves")
    assert fact["confirmed"] and fact["heard"] == 0.3, "how it was heard stays"
    assert after["staple-spacing"]["verdict"] == before["staple-spacing"]["verdict"] == "unclear", "a guess stays a guess"
    assert answer_to_json(answer_from_json(document), "en") == document, "a package reads it back"


@pytest.mark.parametrize("by, text", [("rosa", "other words"), ("rosa", None), ("ada", SAID)])
def test_other_words_no_words_or_another_person_confirm_nothing(folder, note, by, text):  # noqa: F811
    answered(folder, note)
    store.confirm(folder, str(uuid.uuid4()), note, by, text=text)
    document = answered(folder, note)
    assert "heard_right" not in document and findings(document)["sizes-agree"]["verdict"] == "unclear"


def test_a_fact_pressed_after_that_is_right_still_counts(folder, note):  # noqa: F811
    answered(folder, note)
    store.confirm(folder, str(uuid.uuid4()), note, "rosa", text=SAID)
    store.correct(folder, str(uuid.uuid4()), note, 0, "side_moves", None, "rosa")
    document = answered(folder, note)
    assert all(fact["name"] != "side_moves" for fact in document["fittings"][0]["facts"]), "I did not say that"
    assert findings(document)["transition-slope"]["verdict"] == "unsaid"
