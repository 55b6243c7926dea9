"""A hearing worker: decodes, hears, reads and judges what waits in a job folder, one engine loaded once.

    work_once(folder, bench, now) -> Done     one round: photos, typed words, sound, pieces; a second hearing when idle
    work(path, bench, stop)                                       rounds until `stop` is set

Results are fenced by the attempt of the hold (`lease.py`); no transaction is open while hearing. A recording longer
than a minute is heard a stretch a round, after the short notes that wait, so that a forgotten microphone holds nobody up.
"""

from __future__ import annotations

import json
import logging
import signal
import threading
import time
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime
from pathlib import Path
from typing import NamedTuple

from logbook import lease, reading, running, store
from logbook.decoding import pictures, sound
from logbook.hearing import second, stretches
from logbook.hearing.engine import Engine
from logbook.mistake import Broken, Mistake
from logbook.store import answering
from logbook.store.files import erased_at
from logbook.store.folder import room_for_derived
from logbook.transcript import Transcript, Unheard, from_json

AT_ONCE = 4  # notes heard together; alone and together give the same words
WINDOWS = 1  # of a long recording, heard in one round
PAUSE = 0.25  # seconds between two looks where nothing waited
LOOK_FOR = 8.0  # seconds of one round given to photos, so that a pile of hard ones keeps no words waiting
SECOND_TRIES = 2  # second hearings of one note that may bring the worker down
LOOK_AGAIN = 60.0  # seconds after which pieces that wait for photos are looked at again


@dataclass(frozen=True)
class Recorded:
    """The sound of a note; `torn` are the seconds at which a part of it could not be used."""

    sound: sound.Sound
    torn: tuple[float, ...] = ()


@dataclass
class Long:
    """A long recording that is being heard: what is still to hear of it, what was heard, and the seconds that took."""

    hold: lease.Hold
    one: Recorded
    left: list[tuple[float, sound.Sound]]
    heard: list[tuple[float, Transcript]] = field(default_factory=list)
    spent: float = 0.0


@dataclass
class Bench:
    """One worker's things: the ears, its name, its clock and the book it reckoned last."""

    ears: Callable[[], Engine]  # loads the engine when the first sound waits
    name: str = field(default_factory=lease.worker_name)
    clock: lease.Clock = field(default_factory=lease.clock)
    reckoner: store.Reckoner = field(default_factory=store.Reckoner)
    holds: list[lease.Hold] = field(default_factory=list)  # what it hears now
    full: bool = False  # as many notes were taken up as are heard at once: more may wait, and a long recording waits for them
    long: Long | None = None  # the one long recording that it hears between the others
    put_off: set[str] = field(default_factory=set)  # other long ones: their turn comes after it
    again: Callable[[], Engine] | None = None  # hears doubtful notes once more when nothing else waits; None: nobody does


def work(path: Path, bench: Bench, stop: threading.Event) -> None:
    """Until `stop`: the round that runs is finished first."""
    looked, low = bench.clock.seconds(), False
    while not stop.is_set():
        folder = store.open_folder(path)
        if isinstance(folder, Mistake):
            raise Broken(folder)
        with folder:
            again = bench.clock.seconds() - looked > LOOK_AGAIN
            looked = bench.clock.seconds() if again else looked
            if low is room_for_derived(folder):
                low = not low
                running.tell("too-little-room" if low else "room-again", logging.WARNING)
            done = work_once(folder, bench, again=again)
        if not any(done):
            stop.wait(PAUSE)
    put_back(path, bench)  # a long recording of which a part is still to hear


def put_back(path: Path, bench: Bench) -> None:
    """What is being heard waits again, as if it had never been taken: for a worker that may not finish."""
    folder = store.open_folder(path)
    if not isinstance(folder, Mistake):
        with folder, suppress(Broken):  # a locked log: the next worker sees that this one is gone
            lease.give_back(folder, bench.holds)


class Done(NamedTuple):
    """What one round did."""

    notes: int = 0  # that got an answer
    photos: int = 0  # that were looked at
    again: int = 0  # that were heard a second time
    stretches: int = 0  # of long recordings that were heard


def work_once(folder: store.JobFolder, bench: Bench, now: datetime | None = None, *, again: bool = False) -> Done:
    """One round. Below the floor of free space nothing is made."""
    if folder.read_only or not room_for_derived(folder):
        return Done()
    now = (now or datetime.now(UTC)).astimezone(folder.job.timezone()).replace(microsecond=0)
    _still_held(folder, bench)
    lease.lapse(folder, bench.clock)
    photos = look_at_photos(folder, now, bench.clock)
    notes = read_typed(folder, now) + hear_waiting(folder, bench, now)
    if notes and bench.long is not None:
        store.catch_up(folder, bench.reckoner, again=again)  # nobody's answer waits for the stretch that comes now
    heard = 0 if notes and bench.full else hear_on(folder, bench, now)
    heard_again = 0 if notes or heard or bench.again is None else hear_again(folder, bench.again, now)
    store.catch_up(folder, bench.reckoner, again=again)
    return Done(notes, photos, heard_again, heard)


def look_at_photos(folder: store.JobFolder, now: datetime, clock: lease.Clock, most: int = 20) -> int:
    """Look at photos that nobody looked at yet, for `LOOK_FOR` seconds; the number of those that were."""
    until, looked = clock.seconds() + LOOK_FOR, 0
    waiting = list(folder.db.execute(
        "SELECT f.sha256 FROM files f LEFT JOIN pictures i ON i.sha256 = f.sha256 "
        "WHERE f.what = 'picture' AND f.erased_at IS NULL AND i.sha256 IS NULL LIMIT ?", [most]
    ))
    for (sha256,) in waiting:
        if clock.seconds() > until:
            break
        looked += 1
        path = store.original(folder, sha256)
        gone = Mistake("store.file-missing", sha256, {"name": sha256[:16]})
        answering.seen(folder, sha256, gone if path is None else pictures.look_and_shrink(path), now)
    return looked


def read_typed(folder: store.JobFolder, now: datetime) -> int:
    waiting = folder.db.execute(
        "SELECT n.id, w.id, w.text, w.language FROM notes n JOIN words w ON w.note = n.id AND w.current = 1 "
        "WHERE n.state = 'waiting' AND n.wants = 'reading' ORDER BY n.seq LIMIT 50"
    )
    return sum(
        answering.read_typed(folder, note, words, reading.read(text, language=language, job=folder.job), now)
        for note, words, text, language in list(waiting)
    )


def hear_waiting(folder: store.JobFolder, bench: Bench, now: datetime) -> int:
    """Hear up to `AT_ONCE` notes; of the long recordings among them one is begun (`bench.long`), others are put off.

    Broken: the ears cannot be loaded; no note was taken up and none is given up.
    """
    if bench.long is None:
        bench.put_off.clear()
    waiting = [note for (note,) in folder.db.execute("SELECT id FROM notes WHERE state = 'waiting' AND wants = 'hearing' AND withdrawn_at IS NULL")]
    if bench.put_off.issuperset(waiting):
        bench.full = False
        return 0
    ears = bench.ears()
    holds = []
    taken = lease.take(folder, bench.name, bench.clock, AT_ONCE, but_not=bench.put_off)
    bench.full = len(taken) == AT_ONCE
    for hold in taken:
        if hold.tries > lease.TRIES:
            lease.give_back(folder, [hold])
            answering.gave_up(folder, hold.note, Mistake("store.gave-up", hold.note, {"tries": lease.TRIES}), now)
        else:
            holds.append(hold)
    if not holds:
        return 0
    began, answered, seconds = time.monotonic(), len(holds), 0.0
    held = [bench.long.hold] if bench.long else []
    bench.holds = [*holds, *held]
    with _beating(folder, bench, bench.holds):
        whole = []
        for hold in holds:
            one = _decoded(folder, hold.note)
            if isinstance(one, Mistake):
                answering.unheard(folder, hold, one, now)
            elif one.sound.seconds <= stretches.LONG or not ears.in_stretches:
                whole.append((hold, one))
            else:
                answered -= 1
                if bench.long is None:
                    bench.long = Long(hold, one, stretches.parts(one.sound))
                else:
                    bench.put_off.add(hold.note)
                    lease.give_back(folder, [hold])
        if whole:
            languages = [_language(folder, hold) for hold, _ in whole]
            transcripts = ears.hear([one.sound for _, one in whole], languages=languages)
            for (hold, one), words in zip(whole, transcripts, strict=True):
                _answer(folder, hold, one, words, now)
            seconds = sum(one.sound.seconds for _, one in whole)
    bench.holds = [bench.long.hold] if bench.long else []
    if answered:
        running.tell("heard", notes=answered, seconds=round(seconds, 1), ms=round(1000 * (time.monotonic() - began)))
    return answered


def hear_on(folder: store.JobFolder, bench: Bench, now: datetime) -> int:
    """The next stretch of the long recording, and its answer after the last; 1, or 0 where there is none."""
    going = bench.long
    if going is None:
        return 0
    began = time.monotonic()
    some, going.left = going.left[:WINDOWS], going.left[WINDOWS:]
    spoken = _language(folder, going.hold) or stretches.language(going.heard)
    with _beating(folder, bench, [going.hold]):
        found = bench.ears().hear([part for _, part in some], languages=[spoken] * len(some))
        going.heard += [(start, words) for (start, _), words in zip(some, found, strict=True)]
        going.spent += time.monotonic() - began
        if not going.left:
            _answer(folder, going.hold, going.one, stretches.joined(going.one.sound, going.heard), now)
    if not going.left:
        bench.long, bench.holds = None, []
        running.tell("heard", notes=1, seconds=round(going.one.sound.seconds, 1), ms=round(1000 * going.spent))
    return 1


def _still_held(folder: store.JobFolder, bench: Bench) -> None:
    """Hold the long recording on; let go of it where somebody else has it by now, or it was taken back."""
    if bench.long is None:
        return
    hold = bench.long.hold
    lease.renew(folder, [hold], bench.clock)
    found = folder.db.execute("SELECT withdrawn_at FROM notes WHERE id = ? AND attempt = ? AND state = 'hearing'", [hold.note, hold.attempt]).fetchone()
    if found is None or found[0] is not None:
        lease.give_back(folder, [hold])
        bench.long, bench.holds = None, []


def _answer(folder, hold, one: Recorded, words: Transcript | Mistake, now: datetime) -> None:
    if isinstance(words, Mistake):
        answering.unheard(folder, hold, words, now)
        return
    words = _with_torn(words, one)
    if not words.words:
        why = next((gap.why for gap in words.unheard if gap.why != "torn"), "no_speech")
        problem = Mistake(f"hearing.not-heard.{why}", hold.note, {"seconds": round(one.sound.seconds)})
        answering.unheard(folder, hold, problem, now, words)
    else:
        read = reading.read(words.text, language=_language(folder, hold), transcript=words, job=folder.job)
        doubtful = one.sound.seconds <= stretches.LONG and second.is_doubtful(words)  # a long one would hold up the notes that come
        answering.heard(folder, hold, words, read, now, doubtful=doubtful)


def hear_again(folder: store.JobFolder, ears: Callable[[], Engine], now: datetime) -> int:
    """One doubtful note, the oldest first. The better hearing stands, both are kept; a new note never waits for more than one."""
    wanted = folder.db.execute(
        "SELECT s.note, s.words, n.language, w.transcript FROM second_hearings s JOIN notes n ON n.id = s.note "
        "JOIN words w ON w.id = s.words WHERE s.ended_at IS NULL AND s.tries < ? AND w.current = 1 AND w.transcript IS NOT NULL "
        "ORDER BY s.words LIMIT 1", [SECOND_TRIES],
    ).fetchone()
    if wanted is None:
        return 0
    note, number, language, document = wanted
    with store.writing(folder) as db:
        db.execute("UPDATE second_hearings SET tries = tries + 1 WHERE note = ?", [note])
    one = _decoded(folder, note)
    first = from_json(json.loads(document))
    words = None if isinstance(one, Mistake) else ears().hear_again(one.sound, language=language or first.language)
    words = None if isinstance(words, Mistake) else words
    read = None
    if words is not None:
        words = _with_torn(words, one)
        read = second.taking_the_place(words, first, language, folder.job)
    answering.heard_again(folder, note, number, words, read, now)
    return 1


def _with_torn(words: Transcript, one: Recorded) -> Transcript:
    lost = tuple(Unheard(at, at, "torn") for at in one.torn)
    return replace(words, unheard=tuple(sorted((*words.unheard, *lost), key=lambda gap: gap.second)))


def _decoded(folder: store.JobFolder, note: str) -> Recorded | Mistake:
    """The note's sound: several parts follow one another, and a part that is torn or silent is told, never passed over.

    A note is heard for half an hour, in however many parts it comes; what is beyond is kept and told as unheard.
    """
    parts = list(
        folder.db.execute("SELECT sha256 FROM parts WHERE note = ? AND what = 'sound' ORDER BY place", [note])
    )
    good, torn, seconds, first_problem = [], [], 0.0, None
    for (sha256,) in parts:
        path = store.original(folder, sha256)
        if path is None:
            one = _gone(folder, sha256)
        elif seconds >= sound.MAX_SECONDS:
            one = Mistake("hearing.too-long", sha256, {"name": sha256[:16], "minutes": sound.MAX_SECONDS // 60})
        else:
            one = sound.decode(path, max_seconds=sound.MAX_SECONDS - seconds)
        if isinstance(one, Mistake):
            torn.append(round(seconds, 2))
            first_problem = first_problem or one
        else:
            good.append(one)
            seconds += one.seconds
    return Recorded(sound.joined(good), tuple(torn)) if good else first_problem


def _gone(folder: store.JobFolder, sha256: str) -> Mistake:
    at = erased_at(folder, sha256)
    return Mistake("store.file-missing", sha256, {"name": sha256[:16]}) if at is None else Mistake("erasing.sound-gone", sha256, {"date": at[:10]})


def _language(folder: store.JobFolder, hold: lease.Hold) -> str | None:
    return folder.db.execute("SELECT language FROM notes WHERE id = ?", [hold.note]).fetchone()[0]


class _beating:
    """Renews the holds from a thread with a connection of its own while the worker hears."""

    def __init__(self, folder: store.JobFolder, bench: Bench, holds: list[lease.Hold]):
        self.path, self.bench, self.holds = folder.path, bench, holds
        self.over = threading.Event()
        self.thread = threading.Thread(target=self._beat, daemon=True)

    def __enter__(self):
        self.thread.start()

    def __exit__(self, *_):
        self.over.set()
        self.thread.join()

    def _beat(self) -> None:
        signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGTERM, signal.SIGINT})  # they wake the one who hears, or he would not see them
        while not self.over.wait(lease.BEAT):
            folder = store.open_folder(self.path)
            if not isinstance(folder, Mistake):
                with folder:
                    lease.renew(folder, self.holds, self.bench.clock)
