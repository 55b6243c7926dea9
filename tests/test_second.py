"""A doubtful note is heard a second time when nothing else waits: the better hearing stands, both are kept."""

from __future__ import annotations

import html
import uuid
from dataclasses import replace
from datetime import UTC, datetime

import pytest
from desk import PAGE, open_desk
from test_worker import folder, hand_in, tone  # noqa: F401  (folder is a fixture)

from logbook import store, worker
from logbook.hearing import scripted, second
from logbook.store import doctoring
from logbook.transcript import Transcript, Unheard

FAINT = "Straight four on run two, eighteen by twelve, stable every two, rubbed town."
CLEAR = "Straight four on run two, eighteen by twelve, stapled every two, rubbed down."


def said(text: str, heard: float) -> Transcript:
    words = scripted.spread(text, 8.0, "en")
    return replace(words, words=tuple(replace(word, heard=heard) for word in words.words))


class Ears:
    """Two hearings of whatever is handed in."""

    name = "prepared"

    def __init__(self, first: Transcript, again: Transcript | None):
        self.first, self.again, self.heard_again = first, again, 0

    def hear(self, sounds, *, languages):
        return [self.first for _ in sounds]

    def hear_again(self, sound, *, language):
        self.heard_again += 1
        return self.again


def work(folder, ears: Ears, rounds: int = 4) -> None:  # noqa: F811
    bench = worker.Bench(lambda: ears, again=lambda: ears)
    for _ in range(rounds):
        worker.work_once(folder, bench)


def revision_of(folder, note) -> int:  # noqa: F811
    return folder.db.execute("SELECT revision FROM notes WHERE id = ?", [note]).fetchone()[0]


def document(folder, note):  # noqa: F811
    return store.note_document(folder, note, "en")


# --- which hearing is the better


@pytest.mark.parametrize(
    ("first", "again", "better"),
    [
        (said(FAINT, 0.5), said(CLEAR, 0.8), True),
        (said(FAINT, 0.5), said(CLEAR, 0.5), False),
        (said(FAINT, 0.5), said("Straight four.", 0.99), False),  # the hard words left out
        (replace(said(FAINT, 0.5), unheard=(Unheard(8.0, 12.0, "noise"),)), said(CLEAR, 0.52), True),
        (said(FAINT, 0.5), replace(said(CLEAR, 0.6), unheard=(Unheard(8.0, 20.0, "repetition"),)), False),
        (scripted.spread("", 8.0, "en"), said(CLEAR, 0.5), True),
    ],
)
def test_the_better_of_two_hearings(first, again, better):
    assert second.is_better(again, first) is better


@pytest.mark.parametrize(
    ("first", "again", "stands"),
    [
        (FAINT, CLEAR, "second"),
        ("Straight four, stapled every three.", "Straight four, stapled every two, taped.", "first"),  # a departure would go
        ("Pieza 24, recta, engrapada y con cinta en los cuatro lados.", "Pieza 24, recta, engrapada y consinda en los cuatro lados.", "first"),
        ("Straight four, not taped yet.", "Straight four, now taped yes.", "first"),
        ("Straight four, stapled.", "Straight four, stapled and taped.", "second"),
    ],
)
def test_a_better_hearing_stands_only_where_nothing_that_was_heard_is_lost(first, again, stands):
    found = second.taking_the_place(said(again, 0.9), said(first, 0.5), "es" if first.startswith("Pieza") else "en")
    assert (found is not None) is (stands == "second")


# --- in the log


def test_the_second_hearing_takes_the_place_of_the_first_and_both_are_kept(folder):  # noqa: F811
    note = hand_in(folder, tone(300))
    ears = Ears(said(FAINT, 0.5), said(CLEAR, 0.9))
    worker.work_once(folder, worker.Bench(lambda: ears, again=lambda: ears))
    first = document(folder, note)
    assert first["text"] == FAINT and first["earlier"] == [] and ears.heard_again == 0
    before = revision_of(folder, note)
    work(folder, ears)
    now = document(folder, note)
    assert now["text"] == CLEAR and [old["text"] for old in now["earlier"]] == [FAINT]
    assert any(fact["name"] == "stapled" for fact in now["fittings"][0]["facts"])
    assert ears.heard_again == 1 and revision_of(folder, note) > before  # once; and phones see that the note changed
    assert doctoring.examine(folder.path).problems == []


def test_a_worse_second_hearing_is_kept_and_changes_nothing(folder):  # noqa: F811
    note = hand_in(folder, tone(300))
    ears = Ears(said(FAINT, 0.5), said(CLEAR, 0.4))
    work(folder, ears)
    assert document(folder, note)["text"] == FAINT and ears.heard_again == 1
    assert folder.db.execute("SELECT kept FROM second_hearings").fetchone() == ("first",)
    kept = folder.db.execute("SELECT text, current FROM words WHERE note = ? ORDER BY id", [note]).fetchall()
    assert kept == [(FAINT, 1), (CLEAR, 0)]


@pytest.mark.parametrize(("heard", "again"), [(0.9, 0), (0.5, 1)])
def test_only_a_doubtful_note_is_heard_again(folder, heard, again):  # noqa: F811
    hand_in(folder, tone(300))
    ears = Ears(said(FAINT, heard), None)
    work(folder, ears)
    assert ears.heard_again == again


def test_what_a_person_did_meanwhile_stands(folder):  # noqa: F811
    note = hand_in(folder, tone(300))
    ears = Ears(said(FAINT, 0.5), said(CLEAR, 0.9))
    worker.work_once(folder, worker.Bench(lambda: ears))
    act = store.confirm(folder, str(uuid.uuid4()), note, "ada", datetime.now(UTC), FAINT)
    assert isinstance(act, store.Act), act
    work(folder, ears)
    assert document(folder, note)["text"] == FAINT


def test_a_second_hearing_that_breaks_the_worker_is_tried_twice_and_the_note_stays_answered(folder):  # noqa: F811
    note = hand_in(folder, tone(300))
    ears = Ears(said(FAINT, 0.5), None)

    def breaks():
        raise MemoryError

    worker.work_once(folder, worker.Bench(lambda: ears))
    for _ in range(2):
        with pytest.raises(MemoryError):
            worker.work_once(folder, worker.Bench(lambda: ears, again=breaks))
    worker.work_once(folder, worker.Bench(lambda: ears, again=breaks))
    assert document(folder, note)["state"] == "answered"


@pytest.mark.parametrize(("language", "words"), [("en", "heard a second time"), ("es", "se escuchó otra vez")])
def test_the_installer_sees_that_his_words_changed(tmp_path, language, words):
    desk = open_desk(tmp_path)
    note = desk.hand_in(audio=[tone(300)]).json["id"]
    ears = Ears(said(FAINT, 0.5), replace(said(CLEAR, 0.9), settings={"second": True}))
    rosa = desk.browser("installer")

    def page() -> str:
        return html.unescape(rosa.get(f"/entry/{note}", headers=PAGE | {"Accept-Language": language}).text)

    with desk.folder() as opened:
        work(opened, ears, rounds=1)
        assert "stable" in page() and words not in page()
        work(opened, ears)
    assert words in page() and FAINT in page() and "stapled" in page()
