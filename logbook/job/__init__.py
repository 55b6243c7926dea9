"""The job: its limits, standing words, crew phrases, schedule, place, zone and roles, read from `job.toml`.

`load(folder)` gives the `Job` or every mistake of the file, each with its line and the nearest right word;
`default()` is a job that says nothing of its own. A `Job` is frozen; `canonical(job)` is its JSON form, from which
the rule book's digest is made.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields
from datetime import date, datetime, time, timedelta
from fractions import Fraction
from importlib.resources import files
from types import MappingProxyType
from zoneinfo import ZoneInfo

from logbook import facts, limits, measure
from logbook.schedule import Revision, Row, bare_run, in_force

FILE = "job.toml"
GROOVES = ("shiplap", "v")


def _nothing() -> Mapping:
    return MappingProxyType({})



@dataclass(frozen=True)
class Phrase:
    """A crew phrase, said aloud on each piece, and the facts it makes; `language` None holds in every language."""

    words: str
    facts: tuple[tuple[str, object], ...]
    language: str | None = None


@dataclass(frozen=True)
class Run:
    """What the job file says of one run. Pressures in in. w.g., temperature in °F. `done`: set done by the lead."""

    name: str
    service: str | None = None
    static_pressure: Fraction | None = None
    air_temperature: Fraction | None = None
    system: str | None = None
    storeys: Fraction | None = None  # of a riser
    done: bool = False


@dataclass(frozen=True)
class Hold:
    """A hold point: work waits here until somebody releases it. Without runs and area it is of the whole job."""

    key: str  # as in `[holds.KEY]`; releases name it, so it is never changed
    name: str
    runs: tuple[str, ...] = ()
    area: str | None = None  # as the schedule calls it


@dataclass(frozen=True)
class Reinforced:
    """A row of the user's own reinforcement table: up to which span a board holds at a pressure, and how."""

    board_class: int
    thickness: Fraction
    pressure: Fraction  # in. w.g., with sign
    span: Fraction  # largest inside dimension that this row covers
    method: str  # "none" where the row says that no reinforcement is needed
    document: str


@dataclass(frozen=True)
class PhotoPolicy:
    wanted: bool = True  # a fitting needs a photo
    keep_place: bool = False  # the package carries photos as they were handed in, with the place they were taken
    come_within_hours: int = 24  # announced photos


@dataclass(frozen=True)
class VoicePolicy:
    """A voice is personal data: who hears it, and whether it goes when the speaker's name is erased."""

    contractor_hears: bool = False
    goes_with_the_name: bool = False


@dataclass(frozen=True)
class Job:
    id: str = "aaaaaaaa"
    name: str = ""
    place: str = ""
    zone: str = "UTC"
    day_starts: time = time(5)
    languages: tuple[str, ...] = ("en", "es")
    groove: str = "shiplap"
    tags: bool = False  # printed tags are in use on this job
    limits: Mapping[str, object] = field(default_factory=lambda: MappingProxyType(dict(limits.DEFAULTS)))
    weights: Mapping[str, str] = field(default_factory=_nothing)  # rule id -> weight, only where the job differs
    silence: Mapping[str, str] = field(default_factory=_nothing)  # rule id -> silence, only where the job differs
    standing: tuple[tuple[str, object], ...] = ()  # in the order of the file; closure marks apart
    closure_marks: Mapping[str, str] = field(default_factory=_nothing)  # closure -> the mark that stands for it
    closure_mark_at: int = 0  # place of the mark among the standing words
    phrases: tuple[Phrase, ...] = ()
    runs: Mapping[str, Run] = field(default_factory=_nothing)  # bare run -> Run
    revisions: tuple[Revision, ...] = ()
    reinforcement: tuple[Reinforced, ...] = ()
    roles: Mapping[str, str] = field(default_factory=_nothing)  # contractor, engineer, ... as printed
    photos: PhotoPolicy = PhotoPolicy()
    voice: VoicePolicy = VoicePolicy()
    holds: Mapping[str, Hold] = field(default_factory=_nothing)  # key -> hold point, in the order of the file

    def limit(self, name: str):
        return self.limits[name]

    def timezone(self) -> ZoneInfo:
        return ZoneInfo(self.zone)

    def run(self, name: str | None) -> Run | None:
        return None if name is None else self.runs.get(bare_run(name))

    def revision(self, day: date | None = None) -> Revision | None:
        """The schedule in force on a day; without a day, the newest."""
        return in_force(self.revisions, day)

    def row(self, mark: str | None, run: str | None, day: date | None = None) -> Row | None:
        schedule = self.revision(day)
        return None if schedule is None or mark is None else schedule.row(mark, run)

    def day_of(self, moment: datetime) -> date:
        """The day of the job that a moment belongs to: a night shift belongs to the evening it began."""
        local = moment.astimezone(self.timezone())
        return local.date() if local.time() >= self.day_starts else local.date() - timedelta(days=1)

    def stands(self, closure: str | None = None, run: str | None = None) -> tuple[tuple[str, object], ...]:
        """What this file lets stand for a piece: (name, value) in the file's order, then what it says of the run.

        The mark of a closure stands only for the closure that was said (or stands itself), never for another.
        """
        words = list(self.standing)
        closure = closure or dict(words).get("closure")
        if closure in self.closure_marks:
            words.insert(self.closure_mark_at, ("closure_mark", self.closure_marks[closure]))
        of_run = self.run(run)
        if of_run is not None:
            said = {name for name in ("service", "static_pressure", "air_temperature") if getattr(of_run, name) is not None}
            words = [(name, value) for name, value in words if name not in said]
            words += [(name, getattr(of_run, name)) for name in ("service", "static_pressure", "air_temperature") if name in said]
        return tuple(words)


def default() -> Job:
    """A job that says nothing of its own: the book's limits, no schedule, no standing words."""
    return Job()


DEFAULT = default()


def template(job_id: str, name: str = "", zone: str = "UTC") -> str:
    """The text of a new job folder's `job.toml`: every setting with its default and what it does, as comments."""
    text = files(__name__).joinpath("template.toml").read_text(encoding="utf-8")
    return text.replace("@ID@", job_id).replace("@NAME@", name).replace("@ZONE@", zone)


def canonical(job: Job) -> dict[str, object]:
    """The JSON form of a job: everything that can change a finding, exact numbers as text."""
    return {row.name: _plain(getattr(job, row.name)) for row in fields(job) if row.name not in ("voice", "holds")}


def _plain(value):
    match value:
        case Fraction():
            return measure.exact(value) or measure.in_json(value)
        case time() | date():
            return value.isoformat()
        case Mapping():
            return {str(key): _plain(one) for key, one in value.items()}
        case tuple():
            return [_plain(one) for one in value]
        case Revision():
            return {"name": value.name, "since": _plain(value.since), "rows": _plain(value.rows)}
        case Phrase() | Run() | Reinforced() | PhotoPolicy() | Row() | facts.Move():
            return {row.name: _plain(getattr(value, row.name)) for row in fields(value)}
    return value


from logbook.job.reading import load, parse  # noqa: E402  (the reader needs the records above)

__all__ = [
    "DEFAULT", "FILE", "GROOVES", "Hold", "Job", "Phrase", "PhotoPolicy", "Reinforced", "Run", "VoicePolicy", "canonical",
    "default", "load",
    "parse", "template",
]  # fmt: skip
