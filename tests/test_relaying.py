"""One change to an old note: only what it concerns is laid anew, and the log is the one that laying everything anew gives."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from log_cases import JOB, NOW, note, numbered, when
from logbook import pipeline
from logbook.joining.log import Log
from logbook.joining.values import read_value
from logbook.joining.versions import Versions
from logbook.note import Correction
from logbook.piece import Decision
from relaying import EagerLog, tables
from test_pipeline import as_of, lived_logs


@st.composite
def lives(draw):
    """Steps in the order in which they came: notes as known then, decisions on the piece of an entry, some answers and leads."""
    notes, decided = draw(lived_logs())
    for place, one in enumerate(notes):
        if place and draw(st.integers(0, 3)) == 0:
            notes[place] = replace(one, answers=notes[draw(st.integers(0, len(notes) - 1))].id)
        elif draw(st.integers(0, 9)) == 0:
            notes[place] = replace(one, as_lead=True)
    made = [Decision(f"d{n}", draw(st.sampled_from(notes)).id, "taped", "0" * 64, word, "rosa", at) for n, (word, at) in enumerate(decided)]
    return notes, made


def steps_of(notes):
    return sorted({n.answered_at for n in notes} | {c.at for n in notes for c in n.corrections} | {n.withdrawn_at for n in notes if n.withdrawn_at})


def placed_by(log):
    """A decision names a note; it is made on the piece of that note's first entry, as it stands at its time."""

    def piece_of(decision):
        place = log.place_of((decision.piece, 0))
        return place if isinstance(place, tuple) else None

    return piece_of


@given(lives())
def test_laying_what_changed_is_laying_everything_anew(life):
    notes, decisions = life
    few, all_of = Log(JOB), EagerLog(JOB)
    known, made = {}, set()
    for at in steps_of(notes):
        fresh = [one for n in notes if n.answered_at <= at and known.get(n.id) != (one := as_of(n, at))]
        known |= {one.id: one for one in fresh}
        new = [d for d in decisions if d.at <= at and d.id not in made]
        made |= {d.id for d in new}
        before = dict(few.pieces)
        for log in (few, all_of):
            log.change(fresh, new, placed_by(log))
        assert tables(few) == tables(all_of)
        touched, _ = few.take_touched()
        assert {key for key in before.keys() | few.pieces.keys() if before.get(key) != few.pieces.get(key)} <= touched
    once = Log(JOB)
    once.change([as_of(n, NOW) for n in notes], [d for d in decisions if d.id in made], placed_by(once))
    assert tables(once) == tables(few)


def lived(life, log):
    """The book after every step, its decisions made on the first piece there is, going on from this log."""
    notes, made = life
    new_id = numbered()
    book, decisions = replace(pipeline.reckon([], (), JOB, NOW, new_id=new_id), log=log), []
    for at in sorted({*steps_of(notes), *(d.at for d in made)}):
        decisions += [replace(d, piece=book.entries[min(book.entries)]) for d in made if d.at == at and book.entries]
        book = pipeline.reckon([as_of(n, at) for n in notes if n.answered_at <= at], decisions, JOB, at, previous=book, new_id=new_id)
    return book


@given(lives())
def test_the_book_is_the_one_that_laying_everything_anew_gives(life):
    few, all_of = lived(life, Log(JOB)), lived(life, EagerLog(JOB))
    assert isinstance(all_of.log, EagerLog)
    for name in ("pieces", "findings", "questions", "asked", "entries", "ids", "decisions", "moved"):
        assert getattr(few, name) == getattr(all_of, name), name


def unrelated(count: int):
    """Notes of three speakers over ten days, each of a piece and a run of its own."""
    notes = []
    for place in range(count):
        spoken = when("08:00") + timedelta(days=place * 10 // count, seconds=place)
        one = note({"id": f"n{place:04}", "by": f"by{place % 3}", "at": "08:00", "says": f"Straight {place + 1} on run {place // 10 + 1}, ten by ten, taped."})
        notes.append(replace(one, spoken_at=spoken, received_at=spoken, answered_at=spoken))
    return notes


def test_a_press_on_an_old_note_lays_only_that_note():
    notes = unrelated(120)
    log = Log(JOB)
    log.change(notes, (), lambda _: None)
    log.take_touched()
    press = Correction("c", 0, "staple_spacing", read_value("staple_spacing", 2), "by0", when("12:00"))
    log.change([replace(notes[30], corrections=(press,))], (), lambda _: None)
    touched, laid = log.take_touched()
    assert touched == {("n0030", 0)} and laid == {"n0030"}


def test_a_press_that_changes_the_run_lays_what_leaned_on_that_run_and_no_more():
    """A later note of that speaker and day without a run means the run he said last."""
    notes = unrelated(60)
    bare = note({"id": "bare", "by": notes[3].spoken_by, "at": "08:00", "says": "Straight ninety, ten by ten."})
    notes.insert(4, replace(bare, spoken_at=notes[3].spoken_at + timedelta(milliseconds=5)))
    log = Log(JOB)
    log.change(notes, (), lambda _: None)
    assert log.pieces["bare", 0].run == "1"
    log.take_touched()
    press = Correction("c", 0, "run", "44", notes[3].spoken_by, when("12:00"))
    log.change([replace(notes[3], corrections=(press,))], (), lambda _: None)
    assert log.pieces["bare", 0].run == "44"
    assert {notes[3].id, "bare"} <= log.take_touched()[1]


# --- values along a row of events, against laying the whole row each time

ROW = st.lists(st.tuples(st.integers(0, 7), st.lists(st.tuples(st.sampled_from("abc"), st.sampled_from("abc"), st.integers(0, 3)), max_size=3)), max_size=12)


def play(versions, when_, acts):
    """Each act copies a place with something added to another place; an act of 0 only looks."""
    versions.begin(when_)
    for source, goal, more in acts:
        value = versions.get("t", source, 0)
        if more:
            versions.put("t", goal, (value + more) % 5)
    return versions.end()


@given(ROW)
def test_values_are_those_of_the_whole_row_in_order(changes):
    row, versions = {}, Versions({"t": {}})
    for at, acts in changes:
        row[at,] = acts
        waits = {(at,)}
        while waits:
            first = min(waits)
            waits.remove(first)
            waits |= set(play(versions, first, row[first]))
        whole = Versions({"t": {}})
        for when_ in sorted(row):
            assert play(whole, when_, row[when_]) == []
        assert {key: value for key, value in versions.tables["t"].items()} == whole.tables["t"]
        for when_ in row:
            assert all(versions.after("t", key, when_) == whole.after("t", key, when_) for key in "abc")
