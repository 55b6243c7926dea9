"""The closeout package, from what the log holds to the list of its files.

    build(out, closeout, spool, sign=None) -> Built | Mistake

Documents pass once and are laid down in `spool` (a folder on the same disk); in memory stay only what a line of the
register needs. Everything inside is headed as said by the installers; what is missing or open is listed first.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from hashlib import file_digest, sha256
from pathlib import Path
from typing import BinaryIO

from logbook.day import Planned, moments
from logbook.handover import bag, findings, register, stripping
from logbook.handover import seen as went
from logbook.handover.coverage import Coverage, coverage, on_schedule
from logbook.handover.seen import Seen
from logbook.handover.workbook import workbook
from logbook.mistake import Mistake
from logbook.paper import covers, face
from logbook.wording import say

FORMAT = "as-built/1"


@dataclass(frozen=True)
class Closeout:
    """Everything a package is made of. Callables are asked once, in the order of the files.

    `notes`, `pieces`: documents of `GET /notes/ID`, `GET /pieces/PIECE`; `journal`: rows as dictionaries, oldest
    first; `original`: SHA-256 to the file as it was handed in, `small` to its small copy without camera data; `files`: (place in the package, file) that go in as
    they are (day reports, documents, job file, schemas); `rules`: the rule book with its sources as JSON.
    """

    job: Mapping
    language: str
    notes: Callable[[], Iterable[Mapping]]
    pieces: Callable[[], Iterable[Mapping]]
    journal: Callable[[], Iterable[Mapping]]
    original: Callable[[str], Path | None]
    rules: object
    planned: Sequence[Planned] | None = None
    small: Callable[[str], Path | None] = lambda sha256: None
    keep_place: bool = True
    files: Sequence[tuple[str, Path]] = ()
    seen: Seen = Seen()  # what people went and saw, tested and released
    voices: str | None = None  # who asked the crew, and when: then the recordings go along, in the firm's own cut
    days: Sequence[Mapping] = ()  # {"date", "signatures": [{"by", "role", "at", "report"}], "pdf": place | None}


@dataclass
class Built:
    """What a package holds, in numbers; `digest` is the SHA-256 of its tag manifest's bytes."""

    base: str
    files: int = 0
    bytes: int = 0
    pieces: int = 0
    notes: int = 0
    not_understood: int = 0  # notes with words that tell of the work and became no fact
    photos: int = 0
    photos_not_carried: int = 0
    open: int = 0
    missing: int | None = None
    leak_records: int = 0
    voices: int = 0
    journal: Mapping = field(default_factory=lambda: {"seq": 0, "hash": "0" * 64, "at": None})


def build(out: BinaryIO, closeout: Closeout, spool: Path, sign: Callable[[bytes], bytes] | None = None) -> Built | Mistake:
    built = Built(f"closeout-{closeout.job['id']}" + ("-voices" if closeout.voices else ""), leak_records=len(closeout.seen.records))
    laid = _Laid(closeout, spool, built)
    entries = laid.everything()
    if laid.damaged:
        return Mistake("handover.original-damaged", laid.damaged[0], {"file": laid.damaged[0]})
    about = [
        ("Source-Organization", closeout.job.get("name") or closeout.job["id"]),
        ("External-Identifier", closeout.job["id"]),
        ("External-Description", say("handover.bag-description", closeout.language)),
        ("Bagging-Date", (built.journal["at"] or "1980-01-01")[:10]),
        ("Journal-Newest-Hash", built.journal["hash"]),
        ("Journal-Rows", str(built.journal["seq"])),
        *([("Voices", say("handover.voices-asked", closeout.language, words=closeout.voices))] if closeout.voices else ()),
    ]
    readme = "\n\n".join(covers.how_to_check_text(built.base, language) for language in ("en", "es"))
    written = bag.write(out, built.base, entries, about, [bag.Entry("README.txt", readme.encode())], sign)
    built.files, built.bytes = written.files, written.bytes
    for place, digest in laid.as_handed_in.items():
        if written.digests[f"data/{place}"]["sha256"] != digest:
            return Mistake("handover.original-damaged", place, {"file": place})
    return built


class _Laid:
    """The files of one package while they are laid down."""

    def __init__(self, closeout: Closeout, spool: Path, built: Built):
        self.closeout, self.spool, self.built = closeout, spool, built
        self.entries: dict[str, bag.Entry] = {}
        self.notes: dict[str, dict] = {}  # slim: what a register row needs
        self.flagged: list[dict] = []
        self.tests: list[dict] = []
        self.unread: list[dict] = []
        self.named: dict[str, tuple[str | None, str | None]] = {}  # piece -> run, mark
        self.borne: list[tuple[str | None, str | None]] = []
        self.as_handed_in: dict[str, str] = {}
        self.damaged: list[str] = []  # photos that are no longer what was handed in, found before they were stripped
        self.tables: list[dict] = []

    def everything(self) -> list[bag.Entry]:
        closeout = self.closeout
        for place, path in closeout.files:
            self.entries[place] = bag.Entry(place, path)
        for name in (*face.FILES, face.LICENCE):
            self.entries[f"face/{name}"] = bag.Entry(f"face/{name}", face.folder() / name)
        self._json("job/rules.json", closeout.rules)
        self._lines("journal/journal.jsonl", self._journal())
        self._lines("notes/notes.jsonl", self._notes())
        rows = self._lines("register/rows.jsonl", self._pieces(), carried=False)
        found = coverage(closeout.planned, self.borne)
        self.built.missing = None if found.missing is None else len(found.missing)
        photos = self._lines("register/photos.jsonl", self._photos(), carried=False)
        if closeout.voices:
            self._lines("register/voices.jsonl", self._voices(), carried=False)
        self._tables(rows, photos, found)
        self._pages(rows, photos, found)
        return [self.entries[place] for place in sorted(self.entries)]

    # --- the passes

    def _journal(self) -> Iterator[Mapping]:
        for row in self.closeout.journal():
            self.built.journal = {"seq": row["seq"], "hash": row["hash"], "at": row["at"]}
            yield row

    def _notes(self) -> Iterator[Mapping]:
        for note in self.closeout.notes():
            self.built.notes += 1
            unread = register.unread_rows(note)
            self.unread += unread
            self.built.not_understood += bool(unread)
            self.notes[note["id"]] = {
                "id": note["id"], "spoken_at": note["spoken_at"], "spoken_by": note["spoken_by"], "state": note["state"],
                "photos": [{key: one.get(key) for key in ("sha256", "taken_at", "taken_from", "of", "readable")} for one in note["photos"]],
                "fittings": [{"position": entry["position"], "piece": entry.get("piece")} for entry in note["fittings"]],
                "audio": note["digests"]["audio"] if self.closeout.voices else (),
            }  # fmt: skip
            yield note if self.closeout.keep_place else stripping.without_place(note)

    def _pieces(self) -> Iterator[Mapping]:
        language = self.closeout.language
        place = self.spool / "pieces.jsonl"
        with open(place, "wb") as file, open(self.spool / "decisions.jsonl", "wb") as decided:
            for piece in self.closeout.pieces():
                self.named[piece["id"]] = (piece["run"], piece["mark"])
                decided.writelines(map(_line, went.decisions(piece, language)))
                file.write(_line(piece if self.closeout.keep_place else stripping.without_place(piece)))
                self.built.pieces += 1
                rows = list(findings.flagged(piece, language))
                self.flagged += rows
                self.built.open += sum(one["stands"] in findings.OPEN for one in rows)
                names = {doc["name"] for doc in piece["facts"]}
                if "kind" not in names and names & {"leak_pressure", "leak_flow", "leak_area"}:
                    self.tests.append(register.leak_row(piece, self.notes))
                    continue
                self.borne.append((piece["run"], piece["mark"]))
                yield register.row(piece, self.notes, on_schedule(self.closeout.planned, piece["run"], piece["mark"]), language)
        self.entries["pieces/pieces.jsonl"] = bag.Entry("pieces/pieces.jsonl", place)

    def _photos(self) -> Iterator[Mapping]:
        for note in self.notes.values():
            for photo in note["photos"]:
                shown = [entry["piece"] for entry in note["fittings"] if entry["piece"] and entry["position"] in (photo["of"] or ())]
                place, copy, carried, why = self._carry(photo)
                self.built.photos += 1
                self.built.photos_not_carried += not place
                for piece in shown or [""]:
                    yield {
                        "piece": piece, "note": note["id"], "path": place, "original_sha256": photo["sha256"], "copy_sha256": copy, "carried": carried,
                        "why": why, "taken_at": photo["taken_at"] or "", "taken_from": photo["taken_from"] or "",
                    }  # fmt: skip

        for digest in self.closeout.seen.photos():
            place, copy, carried, why = self._carry({"sha256": digest})
            self.built.photos += 1
            self.built.photos_not_carried += not place
            yield {"piece": "", "note": "", "path": place, "original_sha256": digest, "copy_sha256": copy, "carried": carried, "why": why, "taken_at": "", "taken_from": ""}

    def _voices(self) -> Iterator[Mapping]:
        """The recordings as they came. One that was erased, or is gone, has no path."""
        for note in self.notes.values():
            for digest in note["audio"]:
                path = self.closeout.original(digest)
                place = "" if path is None else f"voices/{digest}{path.suffix}"
                if path is not None:
                    self.entries[place] = bag.Entry(place, path)
                    self.as_handed_in[place] = digest
                    self.built.voices += 1
                yield {"note": note["id"], "said_by": note["spoken_by"], "said_at": note["spoken_at"], "path": place, "sha256": digest}

    def _carry(self, photo: Mapping) -> tuple[str, str, str, str]:
        """(place, digest of the copy, how it is carried, why not)."""
        language, digest = self.closeout.language, photo["sha256"]
        path = self.closeout.original(digest)
        if path is None:
            return "", "", "not carried", say("handover.photo-absent", language)
        place = f"photos/{digest}{path.suffix}"
        if self.closeout.keep_place:
            self.entries[place] = bag.Entry(place, path)
            self.as_handed_in[place] = digest
            return place, digest, "original", ""
        content = path.read_bytes()
        if sha256(content).hexdigest() != digest:
            self.damaged.append(place)
            return "", "", "not carried", ""
        copy = stripping.stripped(content)
        if copy is None:
            return self._carry_small(digest)
        self.entries[place] = bag.Entry(place, lambda: stripping.stripped(path.read_bytes()))
        return place, sha256(copy).hexdigest(), "stripped", say("handover.photo-stripped", language)

    def _carry_small(self, digest: str) -> tuple[str, str, str, str]:
        """A kind whose camera data cannot be cut out: the small copy, which was drawn anew, stands for it."""
        path, language = self.closeout.small(digest), self.closeout.language
        if path is None:
            return "", "", "not carried", say("handover.photo-cannot-strip", language)
        place = f"photos/{digest}-small.jpg"
        self.entries[place] = bag.Entry(place, path)
        with open(path, "rb") as file:
            return place, _digest(file), "small", say("handover.photo-small", language)

    # --- what is made from them

    def _tables(self, rows: Path, photos: Path, found: Coverage) -> None:
        missing = [{"mark": row.mark, "run": row.run or "", "kind": row.kind or "", "size": row.size} for row in found.missing or ()]
        self.flagged = findings.open_first(self.flagged)
        tables = (
            ("as-built", register.COLUMNS, lambda: _read(rows)), ("findings", findings.COLUMNS, lambda: self.flagged),
            ("leak-tests", register.LEAK_COLUMNS, lambda: self.tests), ("missing", register.MISSING_COLUMNS, lambda: missing), ("not-understood", register.UNREAD_COLUMNS, lambda: self.unread),
            ("photos", register.PHOTO_COLUMNS, lambda: _read(photos)), ("decisions", went.DECISIONS, lambda: _read(self.spool / "decisions.jsonl")),
            *went.csv_tables(self.closeout.seen, self.named, self.closeout.language),
            *([("voices", register.VOICE_COLUMNS, lambda: _read(self.spool / "register-voices.jsonl"))] if self.closeout.voices else ()),
        )  # fmt: skip
        for name, columns, read in tables:
            self._file(f"register/{name}.csv", register.csv_lines(columns, read()))
            path = self.spool / f"register-{name}.csv"
            with open(path, "rb") as file:
                digest = _digest(file)
            title = say(f"handover.table.{name}", self.closeout.language)
            self.tables.append(register.resource(name, f"{name}.csv", title, columns, path.stat().st_size, digest))
        package = {"profile": "tabular-data-package", "name": f"closeout-{self.closeout.job['id']}", "title": say("handover.title", self.closeout.language), "description": say("handover.banner", self.closeout.language), "resources": self.tables}
        self._json("register/datapackage.json", package)
        self._file("register/as-built.json", _as_built(self.closeout.job, rows))
        self._json("register/leak-records.json", _leak_records(self.closeout))
        order = ("missing", "findings", "not-understood", "as-built", "decisions", "leak-records", "leak-tests", "spot-checks", "walk-list", "hold-points", "photos")
        by_name = {name: (columns, read) for name, columns, read in tables}
        sheets = [(say(f"handover.table.{name}", self.closeout.language), by_name[name][0], by_name[name][1]()) for name in order]
        self._file("register/as-built.xlsx", [workbook(sheets)])

    def _pages(self, rows: Path, photos: Path, found: Coverage) -> None:
        cover = covers.cover(self.closeout, self.built, found, self.flagged)
        when = moments.full(self.built.journal["at"], self.closeout.language) if self.built.journal["at"] else ""
        self._file("cover.pdf", [covers.pdf(cover, self.built.journal["at"])])
        self._file("how-to-check.html", covers.how_to_check(self.built.base, self.closeout.language))
        self._file("index.html", covers.index(cover, _read(rows), _by_piece(photos), self.closeout, when))
        self._file("words.html", covers.words_page(self.closeout, _read(self.spool / "notes-notes.jsonl")))

    # --- laying down

    def _file(self, place: str, chunks: Iterable[bytes]) -> Path:
        path = self.spool / place.replace("/", "-")
        with open(path, "wb") as file:
            file.writelines(chunks)
        self.entries[place] = bag.Entry(place, path)
        return path

    def _json(self, place: str, document: object) -> None:
        self._file(place, [(json.dumps(document, ensure_ascii=False, indent=1) + "\n").encode()])

    def _lines(self, place: str, documents: Iterable[Mapping], carried: bool = True) -> Path:
        path = self._file(place, map(_line, documents))
        if not carried:
            del self.entries[place]
        return path


def _leak_records(closeout: Closeout) -> dict:
    rows = [{name: None if value == "" else value for name, value in row.items()} for row in went.leak_records(closeout.seen, closeout.language)]
    return {"format": "leak-records/1", "job": {"id": closeout.job["id"], "name": closeout.job.get("name", "")}, "records": rows}


def _digest(file: BinaryIO) -> str:
    return file_digest(file, "sha256").hexdigest()


def _line(document: Mapping) -> bytes:
    return (json.dumps(document, ensure_ascii=False) + "\n").encode()


def _read(path: Path) -> Iterator[dict]:
    with open(path, encoding="utf-8") as file:
        for line in file:
            yield json.loads(line)


def _by_piece(photos: Path) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for row in _read(photos):
        if row["path"]:
            found.setdefault(row["piece"], []).append(row["path"])
    return found


def _as_built(job: Mapping, rows: Path) -> Iterator[bytes]:
    columns = [{"name": name, "type": kind, "description": told} for name, kind, told in register.COLUMNS]
    head = {"format": FORMAT, "job": {"id": job["id"], "name": job.get("name", "")}, "as_said": True, "columns": columns}
    yield json.dumps(head, ensure_ascii=False, indent=1).encode()[:-2] + b',\n "rows": ['
    for at, row in enumerate(_read(rows)):
        yield (b",\n  " if at else b"\n  ") + json.dumps(row, ensure_ascii=False).encode()
    yield b"\n ]\n}\n"
