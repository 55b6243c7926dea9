"""Reads `job.toml`: a value a key, every mistake told at once with its line and the nearest right word."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from types import MappingProxyType
from zoneinfo import available_timezones

from rapidfuzz import process

from logbook import facts, limits, measure, schedule
from logbook.job import FILE, GROOVES, Hold, Job, Phrase, PhotoPolicy, Reinforced, Run, VoicePolicy, single
from logbook.job.lines import of_keys
from logbook.mistake import Mistake

SHOWN_LANGUAGES = ("en", "es")
WEIGHTS = ("must", "should", "keep")
SILENCES = ("flag", "ask", "count", "not due")
ROLES = ("contractor", "mechanical_contractor", "general_contractor", "engineer", "authority", "owner", "lead", "inspector")
METHODS = ("none", "tie rods", "channels", "partial wrap")
CLOSURES = facts.BY_NAME["closure"].values


@dataclass
class _Reader:
    """The text being read, its places, and the mistakes found so far."""

    name: str
    places: dict[tuple[object, ...], int]
    wrong: list[Mistake] = field(default_factory=list)

    def refuse(self, path: tuple[object, ...], key: str, **values: object) -> object:
        line = next((self.places[path[:n]] for n in range(len(path), 0, -1) if path[:n] in self.places), 1)
        shown = ".".join(str(part) for part in path)
        self.wrong.append(Mistake(f"job.{key}", f"{self.name}:{line}", {"key": shown, **values}))
        return single.WRONG

    def unknown(self, path: tuple[object, ...], known) -> None:
        nearest = process.extractOne(str(path[-1]), [str(one) for one in known])
        self.refuse(path, "unknown-key", nearest=nearest[0] if nearest else "")

    def one(self, path: tuple[object, ...], came: object, read: Callable[[object], object], expected: str) -> object:
        value = read(came)
        return self.refuse(path, "wrong-value", came=single.shown(came), expected=expected) if value is single.WRONG else value

    def choice(self, path: tuple[object, ...], came: object, words: tuple[str, ...]) -> object:
        if came in words:
            return came
        nearest = process.extractOne(str(came), words)
        return self.refuse(path, "wrong-word", came=single.shown(came), expected=", ".join(words), nearest=nearest[0])


def load(path: str | Path) -> Job | tuple[Mistake, ...]:
    """The job of a folder or of a job file; else every mistake in it. A folder without a file is a mistake too."""
    path = Path(path)
    file = path / FILE if path.is_dir() else path
    try:
        text = file.read_text(encoding="utf-8")
    except FileNotFoundError:
        return (Mistake("job.no-file", str(file.name), {"name": file.name}),)
    except (UnicodeDecodeError, OSError):
        return (Mistake("job.not-text", str(file.name), {"name": file.name}),)
    return parse(text, file.name, file.parent)


def parse(text: str, name: str = FILE, folder: Path | None = None) -> Job | tuple[Mistake, ...]:
    """The job of a text; schedules are read from `folder`."""
    try:
        document = tomllib.loads(text)
    except tomllib.TOMLDecodeError as broken:
        line = re.search(r"at line (\d+)", str(broken))
        return (Mistake("job.not-toml", f"{name}:{line[1] if line else 1}", {"why": str(broken)}),)
    reader = _Reader(name, of_keys(text))
    values: dict[str, object] = {}
    for key, came in document.items():
        if key not in TOP:
            reader.unknown((key,), TOP)
            continue
        read = TOP[key]
        value = read(reader, (key,), came, folder)
        if value is not single.WRONG:
            values |= value if isinstance(value, dict) else {key: value}
    return tuple(reader.wrong) if reader.wrong else Job(**values)


def _fact(reader: _Reader, path: tuple[object, ...], name: str, came: object) -> object:
    """The value of a fact that may stand, in the shape of the table of facts."""
    row = facts.BY_NAME[name]
    if name == "board_thickness":
        return reader.one(path, came, single.board, '"1 in", "1-1/2 in", "2 in"')
    match row.shape:
        case "choice":
            return reader.choice(path, came, row.values)
        case "length":
            return reader.one(path, came, single.length, single.SHAPES["length"][1])
        case "number":
            return reader.one(path, came, single.number, "2, 0.5")
        case "flag":
            return reader.one(path, came, single.flag, "true, false")
        case "count":
            known = tuple(int(value) for value in row.values)
            ok = isinstance(came, int) and not isinstance(came, bool) and came in known
            return came if ok else reader.refuse(path, "wrong-value", came=single.shown(came), expected=", ".join(row.values))
    return reader.refuse(path, "wrong-value", came=single.shown(came), expected=row.shape)


# --- the tables


def _plain(read: Callable, expected: str) -> Callable:
    return lambda reader, path, came, folder: reader.one(path, came, read, expected)


def _table(reader: _Reader, path: tuple[object, ...], came: object) -> dict | None:
    if isinstance(came, dict):
        return came
    reader.refuse(path, "wrong-value", came=single.shown(came), expected=f"[{path[-1]}]")
    return None


def _languages(reader, path, came, folder):
    ok = isinstance(came, list) and came and all(one in SHOWN_LANGUAGES for one in came)
    expected = '["en", "es"]'
    return tuple(came) if ok else reader.refuse(path, "wrong-value", came=single.shown(came), expected=expected)


def _limits(reader, path, came, folder):
    found = dict(limits.DEFAULTS)
    for name, value in (_table(reader, path, came) or {}).items():
        here = (*path, name)
        if name not in limits.BY_NAME:
            reader.unknown(here, limits.BY_NAME)
            continue
        row = limits.BY_NAME[name]
        if row.shape == "choice":
            found[name] = reader.choice(here, value, row.values)
        elif row.shape == "number" and row.unit is not None:
            found[name] = _in_unit(reader, here, value, row)
        else:
            found[name] = reader.one(here, value, *single.SHAPES[row.shape])
    return MappingProxyType(found)


def _in_unit(reader: _Reader, path: tuple[object, ...], came: object, row: limits.Limit) -> object:
    """A bare number, which is in the limit's own unit: "50 C" beside °F is refused with the unit that was expected."""
    value = single.positive(came)
    if value is not single.WRONG:
        return value
    return reader.refuse(path, "wrong-number", came=single.shown(came), unit=row.unit, expected=measure.decimal(row.default))


def _zone(reader: _Reader, path: tuple[object, ...], came: object, folder) -> object:
    value = single.zone(came)
    if value is not single.WRONG:
        return value
    nearest = process.extractOne(single.shown(came), sorted(available_timezones()), score_cutoff=60)
    return reader.refuse(path, "wrong-zone", came=single.shown(came), nearest=nearest[0] if nearest else "America/Chicago")


def _by_rule(words: tuple[str, ...]) -> Callable:
    def read(reader, path, came, folder):
        found = {}
        for name, value in (_table(reader, path, came) or {}).items():
            if name not in limits.RULE_IDS:
                reader.unknown((*path, name), limits.RULE_IDS)
            else:
                found[name] = reader.choice((*path, name), value, words)
        return MappingProxyType(found)

    return read


def _standing(reader, path, came, folder):
    words, marks, mark_at = [], {}, 0
    for name, value in (_table(reader, path, came) or {}).items():
        here = (*path, name)
        if name not in facts.BY_NAME and name != "photo":
            reader.unknown(here, [one for one, ways in limits.STANDS.items() if "job" in ways])
        elif not limits.may_stand(name, "job"):
            method = limits.may_stand(name, "shift")
            reader.refuse(here, "stands-by-shift" if method else "never-stands")
        elif name == "closure_mark":
            mark_at = len(words)
            marks = _closure_marks(reader, here, value)
        else:
            words.append((name, _fact(reader, here, name, value)))
    return {"standing": tuple(words), "closure_marks": MappingProxyType(marks), "closure_mark_at": mark_at}


def _closure_marks(reader: _Reader, path: tuple[object, ...], came: object) -> dict[str, str]:
    if not isinstance(came, dict):
        reader.refuse(path, "mark-needs-closure", came=single.shown(came))
        return {}
    marks = {}
    for closure, mark in came.items():
        here = (*path, closure)
        if closure not in CLOSURES:
            reader.unknown(here, CLOSURES)
        elif limits.MARK_OF.get(closure) != mark:
            expected = limits.MARK_OF.get(closure, "-")
            reader.refuse(here, "wrong-word", came=single.shown(mark), expected=expected, nearest=expected)
        else:
            marks[closure] = mark
    return marks


def _phrases(reader, path, came, folder):
    found = []
    for words, value in (_table(reader, path, came) or {}).items():
        if isinstance(value, dict):
            if words not in SHOWN_LANGUAGES:
                reader.unknown((*path, words), SHOWN_LANGUAGES)
                continue
            found += [_phrase(reader, (*path, words, one), one, said, words) for one, said in value.items()]
        else:
            found.append(_phrase(reader, (*path, words), words, value, None))
    return tuple(found)


def _phrase(reader: _Reader, path: tuple[object, ...], words: str, came: object, language: str | None) -> Phrase:
    said: list[tuple[str, object]] = []
    if not isinstance(came, list) or not came or not words.strip():
        reader.refuse(path, "wrong-value", came=single.shown(came), expected='["stapled", "taped", "rubbed_down"]')
        came = []
    for one in came:
        pairs = one.items() if isinstance(one, dict) else [(one, True)]
        for name, value in pairs:
            if name not in facts.BY_NAME:
                reader.unknown((*path, name), [n for n, ways in limits.STANDS.items() if "phrase" in ways])
            elif not limits.may_stand(name, "phrase"):
                reader.refuse((*path, name), "never-phrase")
            else:
                said.append((name, _fact(reader, (*path, name), name, value)))
    return Phrase(words, tuple(said), language)


def _members(reader: _Reader, path: tuple[object, ...], came: object, known: dict[str, Callable]) -> dict[str, object]:
    found = {}
    for name, value in (_table(reader, path, came) or {}).items():
        if name not in known:
            reader.unknown((*path, name), known)
        else:
            found[name] = known[name](reader, (*path, name), value, None)
    return found


def _runs(reader, path, came, folder):
    known = {
        "service": lambda r, p, v, f: r.choice(p, v, facts.BY_NAME["service"].values),
        "static_pressure": _plain(single.number, "0.5"),
        "air_temperature": _plain(single.number, "120"),
        "system": _plain(single.text, '"AHU-1"'),
        "storeys": _plain(single.positive, "2"),
        "done": _plain(single.flag, "true, false"),
    }
    found = {}
    for name, value in (_table(reader, path, came) or {}).items():
        found[schedule.bare_run(name)] = Run(name, **_members(reader, (*path, name), value, known))
    return MappingProxyType(found)


def _holds(reader, path, came, folder):
    known = {
        "name": _plain(single.text, '"before the ceiling closes"'),
        "runs": lambda r, p, v, f: _names(r, p, v),
        "area": _plain(single.text, '"hall"'),
    }
    found = {}
    for key, value in (_table(reader, path, came) or {}).items():
        block = _members(reader, (*path, key), value, known)
        if "name" not in block:
            reader.refuse((*path, key), "missing-key", missing="name")
        elif single.WRONG not in block.values():
            found[key] = Hold(key, **block)
    return MappingProxyType(found)


def _names(reader: _Reader, path: tuple[object, ...], came: object) -> object:
    ok = isinstance(came, list) and came and all(isinstance(one, str) and one.strip() for one in came)
    return tuple(came) if ok else reader.refuse(path, "wrong-value", came=single.shown(came), expected='["1", "2"]')


def _schedules(reader, path, came, folder):
    known = {"file": _plain(single.text, '"schedule.csv"'), "revision": _plain(single.text, '"A"'), "from": _plain(single.day, "2026-01-05")}
    revisions = []
    for number, block in enumerate(came if isinstance(came, list) else [came]):
        here = (*path, number)
        block = _members(reader, here, block, known)
        if "file" not in block or single.WRONG in block.values():
            if single.WRONG not in block.values():
                reader.refuse(here, "missing-key", missing="file")
            continue
        rows = _rows(reader, here, block["file"], folder)
        revisions.append(schedule.revision(block.get("revision", str(number + 1)), block.get("from"), rows))
    return {"revisions": tuple(revisions)}


def _rows(reader: _Reader, path: tuple[object, ...], file: str, folder: Path | None) -> tuple[schedule.Row, ...]:
    inside = folder is not None and not Path(file).is_absolute() and ".." not in Path(file).parts
    if not inside:
        reader.refuse((*path, "file"), "schedule-outside", came=file)
        return ()
    try:
        text = (folder / file).read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError):
        reader.refuse((*path, "file"), "schedule-unreadable", came=file)
        return ()
    rows, wrong = schedule.read(text, file)
    reader.wrong += wrong
    return rows


def _reinforcement(reader, path, came, folder):
    known = {
        "board_class": lambda r, p, v, f: _fact(r, p, "board_class", v),
        "thickness": _plain(single.board, '"1 in", "1-1/2 in", "2 in"'),
        "pressure": _plain(single.number, "1.0"),
        "span": _plain(single.length, '"24 in"'),
        "method": lambda r, p, v, f: r.choice(p, v, METHODS),
        "document": _plain(single.text, '"title, page"'),
    }
    found = []
    for number, block in enumerate(came if isinstance(came, list) else [came]):
        row = _members(reader, (*path, number), block, known)
        for missing in [name for name in known if name not in row]:
            reader.refuse((*path, number), "missing-key", missing=missing)
        if len(row) == len(known):
            found.append(Reinforced(**row))
    return tuple(found)


def _roles(reader, path, came, folder):
    return MappingProxyType(_members(reader, path, came, {role: _plain(single.text, '"name"') for role in ROLES}))


def _photos(reader, path, came, folder):
    known = {
        "wanted": _plain(single.flag, "true, false"),
        "keep_place": _plain(single.flag, "true, false"),
        "come_within_hours": _plain(lambda v: v if isinstance(v, int) and not isinstance(v, bool) and v > 0 else single.WRONG, "24"),
    }
    return PhotoPolicy(**_members(reader, path, came, known))


def _voice(reader, path, came, folder):
    known = {name: _plain(single.flag, "true, false") for name in ("contractor_hears", "goes_with_the_name")}
    return VoicePolicy(**_members(reader, path, came, known))


TOP: dict[str, Callable] = {
    "id": _plain(single.job_id, '"qmvtkrha"'),
    "name": _plain(single.text, '"name"'),
    "place": _plain(single.text, '"address"'),
    "zone": _zone,
    "day_starts": _plain(single.clock, '"05:00"'),
    "languages": _languages,
    "groove": lambda reader, path, came, folder: reader.choice(path, came, GROOVES),
    "tags": _plain(single.flag, "true, false"),
    "limits": _limits,
    "weights": _by_rule(WEIGHTS),
    "silence": _by_rule(SILENCES),
    "standing": _standing,
    "phrases": _phrases,
    "runs": _runs,
    "holds": _holds,
    "schedule": _schedules,
    "reinforcement": _reinforcement,
    "roles": _roles,
    "photos": _photos,
    "voice": _voice,
}
