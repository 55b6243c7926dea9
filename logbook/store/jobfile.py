"""The job file of a folder, read again only when it or a schedule beside it changed."""

from __future__ import annotations

import os
import tomllib
from functools import lru_cache
from pathlib import Path
from zoneinfo import available_timezones

from logbook import job
from logbook.mistake import Mistake


def read_job(file: Path) -> job.Job | Mistake:
    """The job of a folder, or the first mistake in its file."""
    read = _read(file, _changed(file))
    return read[0] if isinstance(read, tuple) else read


def _changed(file: Path) -> tuple:
    """Tells two states of the job file and the schedules that it names apart."""
    head = _state(file)
    return head, *(_state(file.parent / name) for name in _named(file, head))


def _state(file: Path) -> tuple[int, int] | None:
    try:
        now = file.stat()
    except (OSError, ValueError):
        return None
    return now.st_mtime_ns, now.st_size


@lru_cache(maxsize=8)
def _named(file: Path, state: tuple | None) -> tuple[str, ...]:
    """The schedules that a job file names, wherever they lie; none where it does not read."""
    try:
        blocks = tomllib.loads(file.read_text(encoding="utf-8")).get("schedule", [])
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError):
        return ()
    found = (block.get("file") for block in (blocks if isinstance(blocks, list) else [blocks]) if isinstance(block, dict))
    return tuple(name for name in found if isinstance(name, str))


@lru_cache(maxsize=8)
def _read(file: Path, changed: tuple) -> job.Job | tuple[Mistake, ...]:
    return job.load(file)


def zone_here() -> str:
    """The time zone this machine is set to, as a new job's zone; UTC where it does not tell."""
    named = os.environ.get("TZ", "")
    try:
        named = named or os.readlink("/etc/localtime").partition("zoneinfo/")[2]
    except OSError:
        pass
    return named if named in available_timezones() else "UTC"
