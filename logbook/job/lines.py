"""Where a key of a TOML text stands: `tomllib` gives values without places, and a refusal must name the line."""

from __future__ import annotations

import re
import tomllib

_KEY = re.compile(r"""\s*(?P<path>(?:"(?:[^"\\]|\\.)*"|'[^']*'|[\w-]+)(?:\s*\.\s*(?:"(?:[^"\\]|\\.)*"|'[^']*'|[\w-]+))*)\s*=""")
_TABLE = re.compile(r"\s*(?P<open>\[\[?)(?P<path>[^\]]+)\]")


def of_keys(text: str) -> dict[tuple[object, ...], int]:
    """Path of every key and table -> its line, from 1. Tables of an array carry their number in the path."""
    places: dict[tuple[object, ...], int] = {}
    table: tuple[object, ...] = ()
    counts: dict[tuple[object, ...], int] = {}
    pending = ""  # a value that goes on over several lines
    for number, line in enumerate(text.splitlines(), 1):
        if pending:
            pending += "\n" + line
            pending = "" if _whole(pending) else pending
            continue
        head = _TABLE.match(line)
        if head and not _KEY.match(line):
            table = _path(head["path"])
            if head["open"] == "[[":
                counts[table] = counts.get(table, -1) + 1
                table = (*table, counts[table])
            places.setdefault(table, number)
            continue
        key = _KEY.match(line)
        if key:
            path = (*table, *_path(key["path"]))
            places.setdefault(path, number)
            for deeper in range(1, len(_path(key["path"]))):
                places.setdefault((*table, *_path(key["path"])[:deeper]), number)
            pending = "" if _whole(line) else line
    return places


def _whole(text: str) -> bool:
    try:
        tomllib.loads(text)
    except tomllib.TOMLDecodeError:
        return False
    return True


def _path(text: str) -> tuple[str, ...]:
    """A dotted key as its parts, read by the TOML reader itself."""
    inner = tomllib.loads(f"{text} = 0")
    parts = []
    while isinstance(inner, dict):
        ((part, inner),) = inner.items()
        parts.append(part)
    return tuple(parts)
