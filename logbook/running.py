"""What a running server and worker tell of themselves: one JSON object a line on standard error.

    begin(part)                 once, at the start of a process: `part` is "server" or "worker"
    tell(event, **numbers)      one line: {"at", "level", "part", "event", ...}

A line never holds what people said, their names, addresses they asked for (codes and links stand in them), keys or
passwords. So nothing free gets in: a member must stand in `MEMBERS`, and its text must look like an id. Of another
library's message only the pattern is told, never what was filled in; of an error its kind and where it happened,
never its words. At a terminal only warnings are printed; into a file or a journal everything is.
"""

from __future__ import annotations

import json
import logging
import os
import re
import sys
import threading
import traceback
from datetime import UTC, datetime
from pathlib import Path

MEMBERS = frozenset({
    "version", "pid", "secure", "method", "route", "status", "ms", "bytes", "role", "notes", "photos", "seconds", "key", "count",
    "code", "engine", "note",
})  # fmt: skip
AN_ID = re.compile(r"[\w.:/<>-]{0,120}", re.ASCII)
FRAMES = 12  # of an error, the innermost
_HERE = Path(__file__).parent
_LOGGER = logging.getLogger("logbook")


class _Line(logging.Formatter):
    def __init__(self, part: str):
        super().__init__()
        self.part = part

    def format(self, record: logging.LogRecord) -> str:
        at = datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds")
        line: dict[str, object] = {"at": at, "level": record.levelname.lower(), "part": self.part}
        if record.name.startswith("logbook"):
            line |= {"event": record.msg} | getattr(record, "numbers", {})
        else:
            line |= {"event": "library", "library": record.name, "where": f"{record.module}:{record.lineno}"}
            if record.args:
                line["pattern"] = str(record.msg)[:200]
        if record.exc_info and record.exc_info[1] is not None:
            line |= fault(record.exc_info[1])
        return json.dumps(line, ensure_ascii=True)


class _ToTheEnd(logging.Handler):
    """Each line in one write, so that lines of server and worker never run into one another; safe in a signal."""

    def emit(self, record: logging.LogRecord) -> None:
        try:
            os.write(2, (self.format(record) + "\n").encode())
        except OSError:
            return  # nobody reads any more: no reason to stop taking notes


def fault(error: BaseException) -> dict:
    """Kind and place of an error. Its words may quote what somebody said, so they are left out."""
    frames = traceback.extract_tb(error.__traceback__)[-FRAMES:]
    told = {"error": type(error).__name__, "frames": [f"{_short(frame.filename)}:{frame.lineno} {frame.name}" for frame in frames]}
    cause = error.__cause__ or error.__context__
    return told | ({"from": type(cause).__name__} if cause else {})


def _short(file: str) -> str:
    path = Path(file)
    return path.relative_to(_HERE.parent).as_posix() if path.is_relative_to(_HERE) else path.name


def begin(part: str) -> None:
    """Everything that this process logs goes out as lines; errors that nobody caught too."""
    handler = _ToTheEnd()
    handler.setFormatter(_Line(part))
    root = logging.getLogger()
    root.handlers[:] = [handler]
    root.setLevel(logging.WARNING)
    _LOGGER.setLevel(logging.WARNING if sys.stderr.isatty() else logging.INFO)
    logging.captureWarnings(True)
    sys.excepthook = _uncaught
    threading.excepthook = lambda args: _uncaught(args.exc_type, args.exc_value, args.exc_traceback)


def _uncaught(kind, error, trace) -> None:
    if kind is not None and issubclass(kind, KeyboardInterrupt):
        return
    _LOGGER.critical("fell-over", exc_info=(kind, error, trace))


def tell(event: str, level: int = logging.INFO, **numbers: object) -> None:
    """One line. A member that is not in MEMBERS is a fault of ours and raises; text that is no id becomes "?"."""
    odd = numbers.keys() - MEMBERS
    if odd:
        raise KeyError(", ".join(sorted(odd)))
    _LOGGER.log(level, event, extra={"numbers": {name: _plain(value) for name, value in numbers.items()}})


def _plain(value: object) -> object:
    if value is None or isinstance(value, bool | int | float):
        return value
    return value if isinstance(value, str) and AN_ID.fullmatch(value) else "?"
