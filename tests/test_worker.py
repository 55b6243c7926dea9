"""A worker answers what waits, loses no sound silently, and gives no healthy note up. Transcripts are prepared."""

import io
import json
import math
import struct
import uuid
import wave
from datetime import UTC, datetime

import pytest

from logbook import store, worker
from logbook.hearing import scripted
from logbook.intake import Incoming, Part
from logbook.mistake import Broken, Mistake

SAID = "Straight four on run two, eighteen by twelve, stapled every two, taped with 181A-P, rubbed down."


def tone(hertz: int, seconds: float = 1.0) -> bytes:
    """A WAV of a plain tone: sound that can be decoded, told apart by its pitch."""
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((1, 2, 16_000, 0, "NONE", ""))
        samples = (int(8000 * math.sin(2 * math.pi * hertz * n / 16_000)) for n in range(int(16_000 * seconds)))
        file.writeframes(b"".join(struct.pack("<h", one) for one in samples))
    return out.getvalue()


TORN = b"RIFF\x24\x00\x00\x00WAVEfmt " + b"\xff" * 40  # begins as a WAV and cannot be decoded


class Ears:
    """Hears the same prepared words in every sound; a real engine's shape, no model."""

    name = "prepared"

    def __init__(self, words: str = SAID):
        self.words = words

    def hear(self, sounds, *, languages):
        return [scripted.spread(self.words, sound.seconds, "en") for sound in sounds]


@pytest.fixture
def folder(tmp_path):
    with store.open_folder(tmp_path / "job", create=True) as opened:
        yield opened


def hand_in(folder, *parts: bytes) -> str:
    note = str(uuid.uuid4())
    came = Incoming(note, datetime(2026, 10, 14, 15, tzinfo=UTC), "rosa", "rosa", audio=tuple(Part(part, "a.wav") for part in parts))
    assert not isinstance(store.receive(folder, came), Mistake)
    return note


def bench(words: str = SAID) -> worker.Bench:
    return worker.Bench(lambda: Ears(words))


def test_a_torn_part_is_told_and_the_rest_is_heard(folder):
    note = hand_in(folder, tone(300), TORN, tone(500, 2.0))
    worker.work_once(folder, bench())
    doc = store.note_document(folder, note, "en")
    assert doc["state"] == "answered"
    assert doc["transcript"]["unheard"] == [{"second": 1, "until": 1, "why": "torn"}]
    assert doc["transcript"]["words"][-1]["until"] <= 3


def test_a_whole_recording_has_nothing_torn(folder):
    note = hand_in(folder, tone(300), tone(500))
    worker.work_once(folder, bench())
    assert store.note_document(folder, note, "en")["transcript"]["unheard"] == []


def test_a_recording_that_cannot_be_read_at_all_is_unheard_and_kept(folder):
    note = hand_in(folder, TORN)
    worker.work_once(folder, bench())
    doc = store.note_document(folder, note, "en")
    assert doc["state"] == "unheard" and doc["problem"]["cure"]
    assert store.original(folder, doc["digests"]["audio"][0]).read_bytes() == TORN


@pytest.mark.parametrize(("language", "words"), [("en", "sound without speech"), ("es", "sonido sin habla")])
def test_why_nothing_was_heard_is_told_in_the_readers_language(folder, language, words):
    note = hand_in(folder, tone(300))
    worker.work_once(folder, bench(""))
    assert words in store.note_document(folder, note, language)["problem"]["why"]


def test_missing_ears_cost_no_note_its_tries(folder):
    note = hand_in(folder, tone(300))

    def deaf():
        raise Broken(Mistake("hearing.no-folder", "", {"folder": "-"}))

    for _ in range(6):
        with pytest.raises(Broken):
            worker.work_once(folder, worker.Bench(deaf))
    assert store.note_document(folder, note, "en")["state"] == "waiting"
    worker.work_once(folder, bench())
    assert store.note_document(folder, note, "en")["state"] == "answered"


def test_an_attempt_that_lapsed_cannot_write(folder):
    """A worker that was stopped past its lease goes on: its result is thrown away, the other's stands, once."""
    from logbook import lease, reading
    from logbook.store import answering

    note = hand_in(folder, tone(300))
    clock = lease.clock()
    (late,) = lease.take(folder, "one", clock)
    later = lease.Clock(clock.boot, lambda: clock.seconds() + lease.SECONDS + 1)
    assert lease.lapse(folder, later) == [note]
    (current,) = lease.take(folder, "two", later)
    words = scripted.spread(SAID, 1.0, "en")
    read = reading.read(words.text, transcript=words)
    now = datetime.now(UTC)
    assert answering.heard(folder, late, words, read, now) is False
    assert answering.heard(folder, current, words, read, now) is True
    assert answering.heard(folder, current, words, read, now) is False
    assert folder.db.execute("SELECT count(*) FROM readings WHERE note = ?", [note]).fetchone()[0] == 1


def test_a_decision_that_names_an_unknown_document_is_refused_with_a_sentence(folder):
    from logbook.intake import STATUS
    from logbook.wording import say

    hand_in(folder, tone(300))
    worker.work_once(folder, bench(SAID.replace("taped with 181A-P", "taped with cloth tape")))
    piece = next(store.each_piece(folder, "en"))
    finding = next(one for one in piece["findings"] if one["rule"] == "closure-listed")
    assert finding["verdict"] == "departs"
    body = {
        "id": str(uuid.uuid4()), "rule": "closure-listed", "edition": finding["edition"], "decision": "concession",
        "reason": "Until the tape comes.", "granted_by": "engineer of record", "document": "0" * 64,
    }  # fmt: skip
    refused = store.decide(folder, piece["id"], body, "ada")
    assert isinstance(refused, Mistake) and STATUS[refused.key] == 422
    assert say(f"{refused.key}.error", "es", **refused.values)


def test_a_decision_stands_after_the_next_round(folder):
    hand_in(folder, tone(300))
    things = bench(SAID.replace("every two", "every three"))
    worker.work_once(folder, things)
    piece = next(store.each_piece(folder, "en"))
    finding = next(one for one in piece["findings"] if one["rule"] == "staple-spacing")
    body = {"id": str(uuid.uuid4()), "rule": finding["rule"], "edition": finding["edition"], "decision": "rework", "reason": "Staple again."}
    assert not isinstance(store.decide(folder, piece["id"], body, "ada"), Mistake)
    worker.work_once(folder, things)
    after = store.piece_document(folder, piece["id"], "en")
    assert [one["stands"] for one in after["findings"] if one["rule"] == "staple-spacing"] == ["in hand"]
    assert json.dumps(after["decisions"])


def test_a_server_on_the_network_without_https_is_refused(tmp_path, capsys):
    from logbook.cli import main

    assert main(["serve", "--folder", str(tmp_path / "job"), "--host", "0.0.0.0"]) == 2
    assert "--tls" in capsys.readouterr().err
    assert not (tmp_path / "job").exists()


def test_a_note_in_many_long_parts_is_heard_for_half_an_hour_in_all(folder, monkeypatch):
    """Twenty parts of half an hour each would be ten hours of samples in the worker's memory."""
    monkeypatch.setattr(worker.sound, "MAX_SECONDS", 3)
    id = hand_in(folder, tone(500, 2.0), tone(501, 2.0), tone(502, 2.0))
    (hold,) = worker.lease.take(folder, "one", worker.lease.clock())
    recorded = worker._decoded(folder, hold.note)
    assert (recorded.sound.seconds, recorded.sound.whole_seconds, recorded.torn) == (3.0, 4.0, (3.0,))
    assert hold.note == id


def test_a_pile_of_hard_photos_keeps_no_words_waiting(folder, monkeypatch):
    """A round looks at photos for `LOOK_FOR` seconds and goes on to the words; the next round looks at the rest."""
    from handing import picture

    photos = tuple(Part(picture(number)) for number in range(3))
    came = Incoming(str(uuid.uuid4()), datetime(2026, 10, 14, 15, tzinfo=UTC), "rosa", "rosa", text=SAID, photos=photos)
    assert not isinstance(store.receive(folder, came), Mistake)
    seconds = iter(range(0, 1000, 5))
    one = bench()
    one.clock = worker.lease.Clock("boot", lambda: float(next(seconds)))
    monkeypatch.setattr(worker.pictures, "look_and_shrink", lambda path: Mistake("photos.unreadable", "", {"came": "x"}))
    assert worker.look_at_photos(folder, came.spoken_at, one.clock) == 1
    assert worker.look_at_photos(folder, came.spoken_at, one.clock) == 1
    assert worker.look_at_photos(folder, came.spoken_at, one.clock) == 1
    assert worker.look_at_photos(folder, came.spoken_at, one.clock) == 0


class SlowEars(Ears):
    """Hears a long sound in stretches, as the real ears do, and tells the order in which it was asked."""

    in_stretches = True

    def __init__(self, meanwhile=None):
        super().__init__()
        self.asked, self.meanwhile = [], meanwhile

    def hear(self, sounds, *, languages):
        self.asked.append([round(sound.seconds) for sound in sounds])
        if self.meanwhile and sum(self.asked[-1]) > 30:
            self.meanwhile()
        first = len([one for one in self.asked if max(one) > 5]) == 1
        return [scripted.spread(SAID if sound.seconds < 5 or (first and n == 0) else "", sound.seconds, "en") for n, sound in enumerate(sounds)]


def long_tone(hertz: int, seconds: int) -> bytes:
    """As `tone`: the same second over and over."""
    one = tone(hertz)
    return one[:40] + struct.pack("<I", 32_000 * seconds) + one[44:] * seconds


def test_a_forgotten_recording_holds_nobody_up(folder):
    """A long recording is heard a stretch a round; whoever hands in meanwhile waits for that stretch and no longer."""
    came = []

    def meanwhile():
        came.append(hand_in(folder, tone(500 + len(came))))

    ears = SlowEars(meanwhile)
    long = hand_in(folder, long_tone(300, 200))
    desk = worker.Bench(lambda: ears)
    states = []
    for _ in range(12):
        worker.work_once(folder, desk)
        states.append([store.note_document(folder, note, "en")["state"] for note in came])
    assert all(state == "answered" for round_ in states for state in round_[:-1])  # all but the one that came in this very round
    doc = store.note_document(folder, long, "en")
    assert doc["state"] == "answered" and doc["text"] == SAID and desk.holds == [] and desk.long is None
    assert sum(sum(asked) for asked in ears.asked if sum(asked) > 1) == pytest.approx(200, abs=4)
    assert max(sum(asked) for asked in ears.asked) <= 59


def test_several_long_recordings_come_one_after_another_and_none_is_lost(folder):
    ears, desk = SlowEars(), None
    notes = [hand_in(folder, long_tone(300 + n, 70)) for n in range(3)] + [hand_in(folder, tone(500))]
    desk = worker.Bench(lambda: ears)
    worker.work_once(folder, desk)
    assert [store.note_document(folder, note, "en")["state"] for note in notes] == ["hearing", "waiting", "waiting", "answered"]
    while any(worker.work_once(folder, desk)):
        pass
    assert [store.note_document(folder, note, "en")["state"] for note in notes] == ["answered", "unheard", "unheard", "answered"]  # as these ears hear
    assert folder.db.execute("SELECT max(tries) FROM notes").fetchone()[0] == 1


def test_a_long_recording_goes_on_with_the_next_worker_and_one_taken_back_is_let_go(folder):
    note = hand_in(folder, long_tone(300, 150))
    desk = worker.Bench(lambda: SlowEars())
    worker.work_once(folder, desk)
    assert desk.long is not None and desk.holds == [desk.long.hold]
    worker.put_back(folder.path, desk)
    assert folder.db.execute("SELECT state, tries FROM notes").fetchone() == ("waiting", 0)
    worker.work_once(folder, desk)  # it is no longer held: the first worker lets go of what it had, and begins anew
    assert desk.long.hold.attempt == 2
    with store.writing(folder) as db:
        db.execute("UPDATE notes SET withdrawn_at = '2026-10-14T12:00:00+00:00' WHERE id = ?", [note])
    worker.work_once(folder, desk)
    assert desk.long is None and desk.holds == []
