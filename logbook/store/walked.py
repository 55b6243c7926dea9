"""What people went and saw, kept as acts: spot checks, answers of the walk list, leak-test records, and their photos.

    draw_spot(folder, id, day, by, count) -> Act | Mistake      the seed is made here and stands in the act
    keep_look(folder, id, piece_id, body, by) -> Act | Mistake  said against found of a drawn piece
    answer_walk(folder, id, area, question, answer, by, words, photos) -> Act | Mistake
    record_leak(folder, id, body, by) -> Act | Mistake
    keep_photo(folder, part, by) -> str | Mistake               a photo of a walk; its SHA-256

Lists are in the order of the log. An act is never changed; a later one on the same question or piece stands instead.
"""

from __future__ import annotations

import json
import secrets
import uuid
from collections.abc import Collection, Iterable, Mapping, Sequence
from datetime import UTC, date, datetime

from sqlite_utils import Database, Migrations

from logbook import intake
from logbook.intake import Part
from logbook.mistake import Mistake
from logbook.store import files, journal
from logbook.store.acts import Act, _do, act_document
from logbook.store.deciding import decide
from logbook.store.folder import JobFolder, answers, room, writing
from logbook.store.listing import day_documents
from logbook.store.shelf import piece_document, runs_spelled, whole_piece
from logbook.walk import areas, leaks, lots, rounds

migrations = Migrations("walked")
DRAWN, LOOKED, WALKED, LEAK = "spot_drawn", "spot_looked", "walk_answered", "leak_tested"
MOST_PHOTOS = 4  # of one answer


@migrations()
def find_acts_by_kind(db: Database) -> None:
    db.execute("CREATE INDEX acts_kind ON acts (act, seq)")


@migrations()
def find_pieces_by_place(db: Database) -> None:
    db.execute("CREATE INDEX sought_places ON sought_of (places, id) WHERE what = 'piece' AND places <> ''")


def _of_kind(folder: JobFolder, act: str, where: str = "", values: Sequence = ()) -> list[dict]:
    """The acts of a kind, oldest first; what was erased is left out."""
    found = folder.db.execute(
        f"SELECT id, act, note, piece, day, done_by, at, content FROM acts WHERE act = ? AND content <> '\"erased\"' {where} ORDER BY seq",
        [act, *values],
    )
    return [act_document(row) for row in found]


def _known(folder: JobFolder, id: str) -> dict | None:
    found = folder.db.execute("SELECT id, act, note, piece, day, done_by, at, content FROM acts WHERE id = ?", [id]).fetchone()
    return None if found is None else act_document(found)


# --- the spot check


def candidates(folder: JobFolder, day: date) -> tuple[list[str], list[str]]:
    """(pieces of the day that are good as said, those of them whose builder changed his words after an answer)."""
    pieces = [one for one in day_documents(folder, day, "en")["pieces"] if lots.good_as_said(one)]
    return [one["id"] for one in pieces], [one["id"] for one in pieces if lots.changed_after_answer(one)]


@answers
def draw_spot(folder: JobFolder, id: str, day: date, by: str, count: int = lots.A_DRAW, at: datetime | None = None) -> Act | Mistake:
    """A few pieces of the day that are good as said, those first that no draw of this day took yet. The same id again
    answers the same lot."""
    known = _known(folder, id)
    if known is not None and known["act"] == DRAWN and known["by"] == by and known["day"] == day.isoformat():
        return Act(id, DRAWN, by, datetime.fromisoformat(known["at"]), known, repeated=True)
    if type(count) is not int or not 1 <= count <= lots.MOST:
        return Mistake("walk.count", "count", {"most": lots.MOST, "came": intake.shown(count)})
    among, first = candidates(folder, day)
    if not among:
        return Mistake("walk.nothing-to-draw", day.isoformat(), {"date": day.isoformat()})
    seed, taken = secrets.token_hex(16), {piece for one in draws(folder, day) for piece in one["drawn"]}
    before = sorted(taken.intersection(among))
    content = {"format": lots.FORMAT, "seed": seed, "among": sorted(among), "first": sorted(first), "drawn": list(lots.draw(seed, among, first, count, before))}
    content |= {"before": before} if before else {}
    return _do(folder, id, DRAWN, by, at, content, day=day.isoformat())


def draws(folder: JobFolder, day: date | str | None = None) -> list[dict]:
    return _of_kind(folder, DRAWN, *(("AND day = ?", [str(day)]) if day else ()))


def looks(folder: JobFolder, piece_id: str | None = None) -> list[dict]:
    return _of_kind(folder, LOOKED, *(("AND piece = ?", [piece_id]) if piece_id else ()))


@answers
def keep_look(folder: JobFolder, id: str, piece_id: str, body: Mapping[str, object], by: str, at: datetime | None = None) -> Act | Mistake:
    """`body`: how, words, photos, found [{"name", "answer", "value", "words"}]. Only a drawn piece; not by who built it.

    What was found then stands as the lead's own look at each finding, so that otherwise than said becomes a finding.
    """
    piece = piece_document(folder, piece_id, "en")
    if piece is None:
        return Mistake("store.no-piece", "PIECE", {"id": intake.shown(piece_id)})
    draw = next((one for one in reversed(draws(folder)) if piece_id in one["drawn"]), None)
    if draw is None:
        return Mistake("walk.not-drawn", piece_id)
    builders = {one for (one,) in folder.db.execute("SELECT DISTINCT n.spoken_by FROM notes n JOIN entries e ON e.note = n.id WHERE e.piece = ? AND n.as_lead = 0", [piece_id])}
    if by in builders:
        return Mistake("walk.own-work", piece_id)
    found = lots.found(body, lots.sayings(piece))
    if isinstance(found, Mistake):
        return found
    act = _do(folder, id, LOOKED, by, at, found | {"draw": draw["id"], "photos": list(body.get("photos") or ())}, piece=piece_id)
    if isinstance(act, Mistake):
        return act
    editions = {one["rule"]: one["edition"] for one in piece["findings"]}
    for rule, seen in lots.as_looked(act.document, piece["findings"]).items():
        own = str(uuid.uuid5(uuid.UUID(id), rule))
        if _known(folder, own):
            continue  # the same press again
        told = {"id": own, "rule": rule, "edition": editions[rule], "decision": "looked", "reason": act.document["words"] or None}
        made = decide(folder, piece_id, told | {"looked": {"how": found["how"], "facts": seen}}, by, act.at)
        if isinstance(made, Mistake):
            return made
    return act


def newest_looks(folder: JobFolder) -> dict[str, dict]:
    """Piece -> the newest look at it."""
    return {one["piece"]: one for one in looks(folder)}


def spot_summary(folder: JobFolder, day: date) -> dict[str, int]:
    """In numbers, for the desk: pieces drawn from a day, drawn pieces of the whole job that wait for a look, pieces
    looked at, and how many of those had something otherwise than said."""
    drawn, seen = draws(folder), newest_looks(folder)
    every = {piece for one in drawn for piece in one["drawn"]}
    told = lots.against(len(every), seen.values())
    return {"today": sum(len(one["drawn"]) for one in drawn if one["day"] == day.isoformat()), "waiting": len(every - seen.keys()), "looked": told.pieces, "off": told.off}


# --- the walk list


def pieces_in(folder: JobFolder, what: str, name: str, marks: Collection[str] = ()) -> list[dict]:
    """Of the pieces, in short, those that may stand in one area (`what` and `name` as `areas` has them): the ones with
    one of these bare marks, and the ones of its run or place, however that is written. No other row is read."""
    borne = "p.bare_mark IN (SELECT value FROM json_each(?))"
    if what == areas.PLACE:
        also = "p.id IN (SELECT o.id FROM sought_of o WHERE o.what = 'piece' AND o.places <> '' AND o.places IN (SELECT value FROM json_each(?)))"
        spelled = [one for one in _places(folder) if areas.same_name(one, name)]
    elif what == areas.RUN:
        also, spelled = "p.run IN (SELECT value FROM json_each(?))", [one for one in runs_spelled(folder) if areas.same_name(one, name)]
    else:
        also, spelled = f"(p.run IS NULL AND ? = '[{json.dumps(areas.NOWHERE)}]')", [what]
    found = {id: (id, *rest) for where, given in ((borne, sorted(marks)), (also, spelled)) for id, *rest in folder.db.execute(f"{_IN_SHORT} AND {where}", [json.dumps(given)])}
    return [_short(*row) for row in sorted(found.values(), key=lambda row: (row[1] or "", row[2] or "", row[0]))]


def _places(folder: JobFolder) -> list[str]:
    return [one for (one,) in folder.db.execute("SELECT DISTINCT places FROM sought_of WHERE what = 'piece' AND places <> ''")]


_PLACE = "coalesce((SELECT o.places FROM sought_of o WHERE o.what = 'piece' AND o.id = p.id), '')"
_IN_SHORT = f"SELECT p.id, p.run, p.mark, p.kind, {_PLACE} AS told FROM pieces p WHERE p.gone = 0"


def _short(id: str, run: str | None, mark: str | None, kind: str | None, told: str) -> dict:
    return {"id": id, "run": run, "mark": mark, "facts": [{"name": name, "value": value} for name, value in (("kind", kind), ("mark", mark), ("place", told)) if value]}


def for_release(folder: JobFolder, ids: Iterable[str]) -> list[dict]:
    """What a release sheet asks of each piece, in this order: id, run, facts, where its findings stand, whether a lead looked."""
    found = []
    for id in ids:
        whole = whole_piece(folder, id)
        if whole is not None:
            piece, findings, _ = whole
            facts = [{"name": fact.name, "value": fact.value} for fact in piece.facts]
            told = [{"rule": one.rule, "verdict": one.verdict, "stands": one.stands} for one in findings]
            found.append({"id": id, "run": piece.run, "mark": piece.mark, "facts": facts, "findings": told, "looked": piece.looked})
    return found


def short_pieces(folder: JobFolder, marks: Collection[str] = (), most: int = -1) -> tuple[list[dict], list[tuple]]:
    """Every piece in what decides its area: id, run, mark, kind and place; no document is read.

    Of more than `most` only those with one of these bare marks are given one by one; the others with a kind or a mark
    are counted: (run, place, how many).
    """
    long = most >= 0 and folder.db.execute("SELECT count(*) FROM (SELECT 1 FROM pieces WHERE gone = 0 LIMIT ?)", [most + 1]).fetchone()[0] > most
    borne = "p.bare_mark IN (SELECT value FROM json_each(?))" if long else "?"
    of = [json.dumps(sorted(marks)) if long else 1]
    pieces = [_short(*row) for row in folder.db.execute(f"{_IN_SHORT} AND {borne} ORDER BY p.run, p.bare_mark, p.id", of)]
    if not long:
        return pieces, []
    counted = folder.db.execute(
        f"SELECT p.run, {_PLACE} AS told, count(*) FROM pieces p WHERE p.gone = 0 AND (p.kind IS NOT NULL OR p.mark IS NOT NULL) "
        f"AND NOT coalesce({borne}, 0) GROUP BY p.run, told", of
    )
    return pieces, list(counted)


@answers
def answer_walk(
    folder: JobFolder, id: str, area: str, question: str, answer: str, by: str, words: str = "", photos: Iterable[str] = (), at: datetime | None = None
) -> Act | Mistake:
    content = rounds.answer(area, question, answer, words, photos)
    return content if isinstance(content, Mistake) else _do(folder, id, WALKED, by, at, content)


def walk_answers(folder: JobFolder) -> list[dict]:
    return _of_kind(folder, WALKED)


# --- leak tests


@answers
def record_leak(folder: JobFolder, id: str, body: Mapping[str, object], by: str, at: datetime | None = None) -> Act | Mistake:
    """A record of a leak test; `instead_of` names one that it sets right, which stays beside it."""
    now = (at or datetime.now(UTC)).astimezone(folder.job.timezone())
    content = leaks.record(body, folder.job.limit("leakage_class"), folder.job.day_of(now))
    if isinstance(content, Mistake):
        return content
    if content["instead_of"] and not any(one["id"] == content["instead_of"] for one in leak_records(folder)):
        return Mistake("leaks.no-such-record", "instead_of", {"id": intake.shown(content["instead_of"])})
    return _do(folder, id, LEAK, by, at, content)


def leak_records(folder: JobFolder) -> list[dict]:
    return _of_kind(folder, LEAK)


def of_day(folder: JobFolder, day: date) -> dict[str, list[dict]]:
    """What belongs to a day of the job: its draws with the newest look at each drawn piece, answers and records given on it."""
    drawn = draws(folder, day)
    ids, newest = {one["id"] for one in drawn}, newest_looks(folder)
    looked = [one for one in newest.values() if one["draw"] in ids]

    def given(acts: list[dict]) -> list[dict]:
        zone = folder.job.timezone()
        return [one for one in acts if folder.job.day_of(datetime.fromisoformat(one["at"]).astimezone(zone)) == day]

    return {"draws": drawn, "looks": looked, "answers": given(walk_answers(folder)), "records": given(leak_records(folder))}


# --- photos


@answers
def keep_photo(folder: JobFolder, part: Part, by: str, now: datetime | None = None) -> str | Mistake:
    """A photo that belongs to no note. The act that speaks of it holds its digest."""
    refused = room(folder)
    if refused:
        return refused
    laid = files.lay(folder, part, "picture", intake.shown(part.name) or "photo")
    if isinstance(laid, Mistake):
        return laid
    files.name(folder, [laid])
    now = (now or datetime.now(UTC)).astimezone(folder.job.timezone()).replace(microsecond=0)
    with writing(folder) as db:
        row = [laid.sha256, "picture", laid.kind, laid.bytes, now.isoformat()]
        if db.execute("INSERT OR IGNORE INTO files (sha256, what, kind, bytes, received_at) VALUES (?, ?, ?, ?, ?)", row).rowcount:
            journal.write(db, "picture_received", {"by": by}, {"picture": laid.sha256, "bytes": laid.bytes}, now)
    return laid.sha256


def photos_of(acts: Iterable[Mapping]) -> list[str]:
    return list(dict.fromkeys(digest for one in acts for digest in one.get("photos", ())))
