"""A worker holds a note for a while; whoever holds it now is told by an attempt number, not by a name.

An unheard note in the table is the queue. Taking notes gives each a new attempt; a result is only written for
the attempt that is current, so a worker that was stopped and goes on cannot write twice. Times are seconds of
CLOCK_BOOTTIME, which no clock setting moves and which goes on while a machine sleeps, beside the id of the boot.
"""

from __future__ import annotations

import json
import os
import time
from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass
from pathlib import Path

from logbook.store.folder import JobFolder, writing

SECONDS = 60.0  # a hold that is not renewed ends after this
BEAT = 15.0  # seconds between renewals
TRIES = 3  # holds that may end without a result before the note is given up as unheard


@dataclass(frozen=True)
class Clock:
    """This boot and the seconds since it began."""

    boot: str
    seconds: Callable[[], float]


def clock() -> Clock:
    boot = Path("/proc/sys/kernel/random/boot_id")
    return Clock(
        boot.read_text().strip() if boot.exists() else "",
        lambda: time.clock_gettime(getattr(time, "CLOCK_BOOTTIME", time.CLOCK_MONOTONIC)),
    )


@dataclass(frozen=True)
class Hold:
    """One note held for one attempt. `tries` counts this hold too."""

    note: str
    attempt: int
    tries: int


def worker_name() -> str:
    """Who holds: process id space, process id and its start, so that a dead worker can be told from a living one."""
    try:
        return f"{os.readlink('/proc/self/ns/pid')} {os.getpid()} {_started(os.getpid())}"
    except OSError:
        return f"? {os.getpid()} ?"


def _started(pid: int) -> str:
    """When a process started, in ticks of its boot: the 22nd field of its stat line."""
    return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[19]


def dead(holder: str | None) -> bool:
    """True only where the holder is surely gone: same process id space, and no such process any more."""
    space, _, rest = (holder or "? 0 ?").partition(" ")
    try:
        if space != os.readlink("/proc/self/ns/pid"):
            return False
        pid, _, started = rest.partition(" ")
        return _started(int(pid)) != started
    except FileNotFoundError:
        return space != "?"
    except (OSError, ValueError):
        return False


def lapse(folder: JobFolder, now: Clock) -> list[str]:
    """Put back the notes whose hold ended, whose holder died or whose machine started anew; gives their ids."""
    with writing(folder) as db:
        held = list(db.execute("SELECT id, held_by, held_boot, held_until FROM notes WHERE state = 'hearing'"))
        over = [
            note for note, holder, boot, until in held if boot != now.boot or until < now.seconds() or dead(holder)
        ]
        db.conn.executemany("UPDATE notes SET state = 'waiting' WHERE id = ?", [[note] for note in over])
    return over


def take(
    folder: JobFolder, worker: str, now: Clock, count: int = 1, seconds: float = SECONDS, but_not: Collection[str] = ()
) -> list[Hold]:
    """Hold up to `count` notes that wait to be heard, oldest first; none of `but_not`.

    A note whose hold ended without a result before is held alone: if hearing it brings the worker down, it
    brings nobody else's note down with it.
    """
    with writing(folder) as db:
        waiting = list(
            db.execute(
                "SELECT id, attempt, tries FROM notes WHERE state = 'waiting' AND wants = 'hearing' "
                "AND withdrawn_at IS NULL AND id NOT IN (SELECT value FROM json_each(?)) ORDER BY tries, seq LIMIT ?",
                [json.dumps(sorted(but_not)), count],
            )
        )
        if waiting and waiting[0][2]:
            waiting = waiting[:1]
        held = [Hold(note, attempt + 1, tries + 1) for note, attempt, tries in waiting if not tries or len(waiting) == 1]
        for hold in held:
            db.execute(
                "UPDATE notes SET state = 'hearing', attempt = ?, tries = ?, held_by = ?, held_boot = ?, held_until = ? "
                "WHERE id = ?",
                [hold.attempt, hold.tries, worker, now.boot, now.seconds() + seconds, hold.note],
            )
    return held


def renew(folder: JobFolder, holds: Sequence[Hold], now: Clock, seconds: float = SECONDS) -> None:
    """The heartbeat: say that these are still being heard."""
    with writing(folder) as db:
        for hold in holds:
            db.execute(
                "UPDATE notes SET held_until = ? WHERE id = ? AND attempt = ? AND state = 'hearing'",
                [now.seconds() + seconds, hold.note, hold.attempt],
            )


def give_back(folder: JobFolder, holds: Sequence[Hold]) -> None:
    """A worker that is asked to stop puts back what it holds, as if it had never taken it."""
    with writing(folder) as db:
        for hold in holds:
            db.execute(
                "UPDATE notes SET state = 'waiting', tries = max(tries - 1, 0) "
                "WHERE id = ? AND attempt = ? AND state = 'hearing'",
                [hold.note, hold.attempt],
            )
