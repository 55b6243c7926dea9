"""Holds: who lost a note writes nothing about it, whatever the clocks, the workers and the machine did."""

import os
import subprocess
import uuid

import pytest
from handing import SAID, SPOKEN, new_folder, note, tone

from logbook import lease, reading, store
from logbook.hearing.scripted import spread
from logbook.mistake import Mistake
from logbook.store import answering

BOOT = "a boot"


class Hand:
    """A clock set by hand."""

    def __init__(self, boot: str = BOOT):
        self.now = 1000.0
        self.boot = boot

    def clock(self) -> lease.Clock:
        return lease.Clock(self.boot, lambda: self.now)


@pytest.fixture
def folder(tmp_path):
    with new_folder(tmp_path / "job") as opened:
        yield opened


def hand_in(folder, count: int = 1) -> list[str]:
    return [store.receive(folder, note(audio=(tone(200 + n),))).id for n in range(count)]


def state(folder, id: str) -> tuple:
    return folder.db.execute("SELECT state, attempt, tries FROM notes WHERE id = ?", [id]).fetchone()


def answer(folder, hold, text: str = SAID) -> bool:
    words = spread(text, 2.0, "en")
    return answering.heard(folder, hold, words, reading.read(text, transcript=words, job=folder.job), SPOKEN)


def words(folder) -> list[str]:
    return [text for (text,) in folder.db.execute("SELECT text FROM words")]


def test_a_note_is_held_once(folder):
    hand_in(folder)
    clock = Hand().clock()
    assert len(lease.take(folder, "one", clock, 4)) == 1
    assert lease.take(folder, "two", clock, 4) == []


def test_notes_are_taken_in_order_and_no_more_than_asked(folder):
    ids = hand_in(folder, 3)
    assert [hold.note for hold in lease.take(folder, "one", Hand().clock(), 2)] == ids[:2]


def test_a_hold_that_lapsed_and_was_taken_by_another_cannot_write(folder):
    """A worker that was stopped (SIGSTOP, a machine that slept) goes on later and finds its attempt over."""
    (id,) = hand_in(folder)
    hand = Hand()
    stopped = lease.take(folder, "one", hand.clock())[0]
    hand.now += lease.SECONDS + 1
    assert lease.lapse(folder, hand.clock()) == [id]
    other = lease.take(folder, "two", hand.clock())[0]
    assert answer(folder, stopped, "Straight nine on run two.") is False
    assert answering.unheard(folder, stopped, Mistake("store.gave-up", id, {"tries": 3}), SPOKEN) is False
    assert words(folder) == [] and state(folder, id)[0] == "hearing"
    assert answer(folder, other) is True
    assert answer(folder, stopped, "Straight nine on run two.") is False
    assert words(folder) == [SAID] and state(folder, id)[0] == "answered"


def test_a_hold_that_lapsed_cannot_write_even_before_another_takes_the_note(folder):
    (id,) = hand_in(folder)
    hand = Hand()
    hold = lease.take(folder, "one", hand.clock())[0]
    hand.now += lease.SECONDS + 1
    lease.lapse(folder, hand.clock())
    assert answer(folder, hold) is False and words(folder) == []


def test_an_answer_is_written_once(folder):
    hand_in(folder)
    hold = lease.take(folder, "one", Hand().clock())[0]
    assert [answer(folder, hold), answer(folder, hold)] == [True, False]
    assert words(folder) == [SAID]


def test_a_late_heartbeat_does_not_bring_a_lost_hold_back(folder):
    (id,) = hand_in(folder)
    hand = Hand()
    lost = lease.take(folder, "one", hand.clock())[0]
    hand.now += lease.SECONDS + 1
    lease.lapse(folder, hand.clock())
    lease.take(folder, "two", hand.clock(), seconds=5)
    lease.renew(folder, [lost], hand.clock())
    hand.now += 6
    assert lease.lapse(folder, hand.clock()) == [id], "the hold of the second worker was not made longer by the first"


def test_a_heartbeat_keeps_a_hold(folder):
    hand_in(folder)
    hand = Hand()
    holds = lease.take(folder, lease.worker_name(), hand.clock())
    for _ in range(5):
        hand.now += lease.BEAT
        lease.renew(folder, holds, hand.clock())
    assert lease.lapse(folder, hand.clock()) == []


def test_the_machine_started_anew_and_its_seconds_begin_again(folder):
    """After a start the seconds are small: by seconds alone the hold would last for days."""
    (id,) = hand_in(folder)
    before = Hand()
    before.now = 900_000.0
    lease.take(folder, "one", before.clock())
    after = Hand("another boot")
    after.now = 10.0
    assert lease.lapse(folder, after.clock()) == [id]


def test_a_clock_that_is_set_moves_no_hold(folder, monkeypatch):
    """Holds count seconds since the machine began; the hour of the wall is not asked."""
    hand_in(folder)
    clock = lease.clock()
    lease.take(folder, lease.worker_name(), clock)
    for jump in (-10 * 365 * 86_400, 10 * 365 * 86_400):
        monkeypatch.setattr("time.time", lambda jump=jump: 1_790_000_000.0 + jump)
        assert lease.lapse(folder, clock) == []
    first = clock.seconds()
    assert 0 <= clock.seconds() - first < 60 and clock.boot == lease.clock().boot


def test_a_dead_worker_loses_its_notes_at_once(folder):
    (id,) = hand_in(folder)
    gone = subprocess.Popen(["sleep", "60"])
    name = f"{os.readlink('/proc/self/ns/pid')} {gone.pid} {lease._started(gone.pid)}"
    hand = Hand()
    lease.take(folder, name, hand.clock())
    assert lease.lapse(folder, hand.clock()) == []
    gone.kill()
    gone.wait()
    assert lease.lapse(folder, hand.clock()) == [id]


def test_a_worker_whose_number_was_given_to_another_process_is_dead():
    me = f"{os.readlink('/proc/self/ns/pid')} {os.getpid()}"
    assert lease.dead(f"{me} 1") is True
    assert lease.dead(lease.worker_name()) is False


@pytest.mark.parametrize("holder", [None, "", "?", "pid:[1] 5 5", "pid:[1]", "nonsense here now"])
def test_a_holder_that_cannot_be_looked_at_is_not_called_dead(holder):
    assert lease.dead(holder) is False


def test_a_worker_that_stops_gives_its_notes_back_as_if_never_taken(folder):
    (id,) = hand_in(folder)
    holds = lease.take(folder, "one", Hand().clock())
    lease.give_back(folder, holds)
    assert state(folder, id) == ("waiting", 1, 0)
    assert answer(folder, holds[0]) is False


def test_a_note_that_brought_a_worker_down_is_held_alone_afterwards_and_last(folder):
    bad, *good = hand_in(folder, 3)
    hand = Hand()
    lease.take(folder, "one", hand.clock())
    hand.now += lease.SECONDS + 1
    lease.lapse(folder, hand.clock())
    assert [hold.note for hold in lease.take(folder, "two", hand.clock(), 4)] == good
    assert [(hold.note, hold.tries) for hold in lease.take(folder, "two", hand.clock(), 4)] == [(bad, 2)]


def test_a_note_that_was_taken_back_is_not_heard(folder):
    (id,) = hand_in(folder)
    store.withdraw(folder, str(uuid.uuid4()), id, "rosa")
    assert lease.take(folder, "one", Hand().clock(), 4) == []
