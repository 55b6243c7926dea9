"""People, their devices and how they get in: the only place that knows passwords, keys and sessions.

Functions take the folder's database; those that write are called inside `store.writing(folder)`. Passwords are
kept as argon2id; everything else that opens a door (session, key, code, link) is 32 random bytes or a short code
that dies within minutes, kept as SHA-256 only. Attempts are rows, so a restart forgets none.
Times are aware datetimes; the columns hold UTC ISO text of whole seconds, which sorts as it counts.
"""

from __future__ import annotations

import hashlib
import secrets
import unicodedata
import uuid
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from argon2 import PasswordHasher
from argon2.exceptions import InvalidHashError, VerificationError
from sqlite_utils import Database, Migrations

from logbook.mistake import Mistake

ROLES = ("installer", "lead", "contractor", "keeper")
KINDS = ("browser", "phone", "script")
LASTS = {"browser": timedelta(days=14), "phone": timedelta(days=400), "script": timedelta(days=400)}
INVITATION_LASTS = {"first": timedelta(hours=24), "pair": timedelta(minutes=10), "password": timedelta(hours=24)}
SHORTEST_PASSWORD, LONGEST_PASSWORD = 10, 200  # characters; the longest keeps a huge body out of the hasher
LONGEST_NAME = 80
CODE_SIGNS = "23456789ABCDEFGHJKMNPQRSTVWXYZ"  # no signs that look alike on a scratched screen
CODE_LENGTH = 8
WINDOW = timedelta(minutes=15)
TRIES_OF_A_NAME, TRIES_OF_A_PLACE = 5, 30  # failures within the window before anybody has to wait
SEEN_EVERY = timedelta(hours=1)  # a device's last use is written at most this often

migrations = Migrations("people")


@migrations()
def people_and_devices(db: Database) -> None:
    db["people"].create(
        {"id": str, "name": str, "folded": str, "role": str, "language": str, "password": str, "made_at": str, "left_at": str},
        pk="id",
        not_null={"role", "made_at"},
    )
    db["people"].create_index(["folded"], unique=True)
    db["devices"].create(
        {
            "id": str, "person": str, "kind": str, "called": str, "token": str,
            "made_at": str, "seen_at": str, "ends_at": str, "cut_off_at": str,
        },
        pk="id",
        not_null={"person", "kind", "token", "made_at", "ends_at"},
        foreign_keys=[("person", "people", "id")],
    )  # fmt: skip
    db["devices"].create_index(["token"], unique=True)
    db["invitations"].create(
        {"code": str, "person": str, "purpose": str, "made_at": str, "ends_at": str, "used_at": str},
        pk="code",
        not_null={"purpose", "made_at", "ends_at"},
        foreign_keys=[("person", "people", "id")],
    )
    db["attempts"].create({"id": int, "name": str, "place": str, "at": str, "worked": int}, pk="id")
    db["attempts"].create_index(["name", "at"])
    db["attempts"].create_index(["place", "at"])
    db["crew"].create(
        {"device": str, "person": str},
        pk=("device", "person"),
        foreign_keys=[("device", "devices", "id"), ("person", "people", "id")],
    )


@dataclass(frozen=True)
class Person:
    """`id` stands in the log and never changes; `name` can be erased on request."""

    id: str
    name: str | None
    role: str
    language: str | None
    has_password: bool
    made_at: str
    left_at: str | None


@dataclass(frozen=True)
class Device:
    id: str
    person: str
    kind: str
    called: str
    made_at: str
    seen_at: str | None
    ends_at: str
    cut_off_at: str | None


def _text(at: datetime) -> str:
    return at.astimezone(UTC).isoformat(timespec="seconds")


def _digest(secret: str) -> str:
    return hashlib.sha256(secret.encode()).hexdigest()


def folded(name: str) -> str:
    """A name as it is compared: no case, no accents' form, single spaces."""
    return " ".join(unicodedata.normalize("NFKC", name).casefold().split())


def _person(row: dict) -> Person:
    return Person(
        row["id"], row["name"], row["role"], row["language"], bool(row["password"]), row["made_at"], row["left_at"]
    )


def _device(row: dict) -> Device:
    return Device(*(row[key] for key in ("id", "person", "kind", "called", "made_at", "seen_at", "ends_at", "cut_off_at")))


def _one(db: Database, sql: str, given: tuple) -> dict | None:
    return next(db.query(sql, given), None)


# --- people


def add(db: Database, name: str, role: str, now: datetime, language: str | None = None) -> Person | Mistake:
    """A new person. Mistake: no usable name, a role that is none, or the name is taken."""
    name = " ".join(name.split())
    if not name or len(name) > LONGEST_NAME or not name.isprintable():
        return Mistake("people.bad-name", "name", {"longest": LONGEST_NAME})
    if role not in ROLES:
        return Mistake("people.bad-role", "role", {"role": role, "roles": ", ".join(ROLES)})
    if _one(db, "select id from people where folded = ?", (folded(name),)):
        return Mistake("people.name-taken", "name", {"name": name})
    number = 1 + _one(db, "select count(*) as n from people where id like ?", (f"{role}-%",))["n"]
    row = {
        "id": f"{role}-{number}", "name": name, "folded": folded(name), "role": role, "language": language,
        "password": None, "made_at": _text(now), "left_at": None,
    }  # fmt: skip
    db["people"].insert(row)
    return _person(row)


def person(db: Database, id: str) -> Person | None:
    row = _one(db, "select * from people where id = ?", (id,))
    return _person(row) if row else None


def by_name(db: Database, name: str) -> Person | None:
    row = _one(db, "select * from people where folded = ?", (folded(name),))
    return _person(row) if row else None


def everybody(db: Database) -> list[Person]:
    return [_person(row) for row in db.query("select * from people order by left_at is not null, role, folded")]


def names(db: Database) -> dict[str, str]:
    """id -> name, for pages; who was erased keeps the id only."""
    return {row["id"]: row["name"] or row["id"] for row in db.query("select id, name from people")}


def speak(db: Database, id: str, language: str) -> None:
    """The language this person last pressed."""
    db.execute("update people set language = ? where id = ?", (language, id))


def leave(db: Database, id: str, now: datetime) -> None:
    """The person works here no more: every device of his is cut off, the log keeps what he said."""
    db.execute("update people set left_at = ? where id = ? and left_at is null", (_text(now), id))
    db.execute("update devices set cut_off_at = ? where person = ? and cut_off_at is null", (_text(now), id))


def erase(db: Database, id: str, now: datetime) -> None:
    """Forgets the name, on request; the id stays, because the journal leans on it."""
    leave(db, id, now)
    db.execute("update people set name = null, folded = null, password = null where id = ?", (id,))
    db.execute("update devices set called = '' where person = ?", (id,))


def has_keeper(db: Database) -> bool:
    return bool(_one(db, "select 1 from people where role = 'keeper' and left_at is null", ()))


# --- passwords


def hashed(password: str) -> str | Mistake:
    """argon2id with the parameters of RFC 9106 for small memory; hash before the transaction, it takes 0.1 s."""
    if not SHORTEST_PASSWORD <= len(password) <= LONGEST_PASSWORD:
        return Mistake("people.bad-password", "password", {"shortest": SHORTEST_PASSWORD, "longest": LONGEST_PASSWORD})
    return PasswordHasher().hash(password)


def keep_password(db: Database, id: str, hash_text: str) -> None:
    db.execute("update people set password = ? where id = ?", (hash_text, id))


# verified when nobody has that name, so that an unknown name takes as long as a wrong password; the hash is of
# random bytes that were thrown away
_NOBODY = "$argon2id$v=19$m=65536,t=3,p=4$uLBlqkP/lgULPJT9OrouYQ$xkS2D0vEazqmRHFG3i1lzBhdaUNqDFZOOygwBQg8i2s"


def check_password(db: Database, name: str, password: str) -> Person | None:
    """The person whose name and password these are; None for every other case, at the same pace."""
    row = _one(db, "select * from people where folded = ? and left_at is null", (folded(name),))
    kept = row["password"] if row and row["password"] else _NOBODY
    if len(password) > LONGEST_PASSWORD:  # nobody has such a one; the hasher is asked all the same, for the pace
        kept, password = _NOBODY, password[:LONGEST_PASSWORD]
    try:
        PasswordHasher().verify(kept, password)
    except (VerificationError, InvalidHashError, UnicodeEncodeError):
        return None
    return _person(row) if row and row["password"] else None


# --- devices: sessions of a browser, paired phones, keys of scripts


def give_device(db: Database, person_id: str, kind: str, called: str, now: datetime) -> tuple[Device, str]:
    """A new device and its token; the token is told here once and kept as a digest."""
    token = secrets.token_urlsafe(32)
    row = {
        "id": str(uuid.uuid4()), "person": person_id, "kind": kind, "called": called[:LONGEST_NAME],
        "token": _digest(token), "made_at": _text(now), "seen_at": None, "ends_at": _text(now + LASTS[kind]), "cut_off_at": None,
    }  # fmt: skip
    db["devices"].insert(row)
    return _device(row), token


def device_of(db: Database, token: str, now: datetime) -> tuple[Person, Device] | None:
    """Who holds this token, unless it ended, was cut off, or its person left."""
    row = _one(
        db,
        "select devices.* from devices join people on people.id = devices.person where token = ?"
        " and cut_off_at is null and ends_at > ? and left_at is null",
        (_digest(token), _text(now)),
    )
    return (person(db, row["person"]), _device(row)) if row else None


def is_stale(device: Device, now: datetime) -> bool:
    """Its last use was written long enough ago to write it again."""
    return device.seen_at is None or device.seen_at < _text(now - SEEN_EVERY)


def seen(db: Database, device_id: str, now: datetime) -> None:
    db.execute("update devices set seen_at = ? where id = ?", (_text(now), device_id))


def cut_off(db: Database, device_id: str, now: datetime) -> bool:
    """Ends a device. False: there is none, or it was cut off before."""
    changed = db.execute(
        "update devices set cut_off_at = ? where id = ? and cut_off_at is null", (_text(now), device_id)
    )
    return changed.rowcount == 1


def end_sessions(db: Database, person_id: str, now: datetime) -> None:
    """Signs every browser of a person out: a new password ends what somebody else may have opened with the old one."""
    db.execute(
        "update devices set cut_off_at = ? where person = ? and kind = 'browser' and cut_off_at is null", (_text(now), person_id)
    )


def devices(db: Database, person_id: str | None = None) -> list[Device]:
    where, given = ("where person = ?", (person_id,)) if person_id else ("", ())
    return [_device(row) for row in db.query(f"select * from devices {where} order by made_at", given)]


def share(db: Database, device_id: str, person_ids: tuple[str, ...]) -> None:
    """Who may speak on this phone beside its owner."""
    db.execute("delete from crew where device = ?", (device_id,))
    db["crew"].insert_all({"device": device_id, "person": one} for one in person_ids)


def crew(db: Database, device_id: str) -> list[Person]:
    rows = db.query(
        "select people.* from crew join people on people.id = crew.person where device = ? and left_at is null"
        " order by folded",
        (device_id,),
    )
    return [_person(row) for row in rows]


# --- links and codes that work once


def invite(db: Database, person_id: str | None, purpose: str, now: datetime) -> str:
    """A secret that works once, for a while: 8 signs to type for `pair`, a long one for links.

    A new one of the same person and purpose makes the older ones void.
    """
    db.execute("delete from invitations where purpose = ? and person is ? and used_at is null", (purpose, person_id))
    short = purpose == "pair"
    code = "".join(secrets.choice(CODE_SIGNS) for _ in range(CODE_LENGTH)) if short else secrets.token_urlsafe(32)
    db["invitations"].insert(
        {
            "code": _digest(code), "person": person_id, "purpose": purpose,
            "made_at": _text(now), "ends_at": _text(now + INVITATION_LASTS[purpose]), "used_at": None,
        }
    )  # fmt: skip
    return code


def tidy_code(typed: str) -> str:
    """A pairing code as a thumb types it: any case, spaces and hyphens."""
    return typed.upper().replace(" ", "").replace("-", "")


def invited(db: Database, code: str, purpose: str, now: datetime) -> dict | None:
    """The invitation of this code while it works ({"person": id or None}); reading does not use it up."""
    return _one(
        db,
        "select person from invitations where code = ? and purpose = ? and used_at is null and ends_at > ?",
        (_digest(code), purpose, _text(now)),
    )


def use_invitation(db: Database, code: str, purpose: str, now: datetime) -> dict | None:
    """Uses it up: of two that come together one gets it."""
    found = invited(db, code, purpose, now)
    if found is None:
        return None
    used = db.execute(
        "update invitations set used_at = ? where code = ? and used_at is null", (_text(now), _digest(code))
    )
    return found if used.rowcount == 1 else None


# --- attempts


def note_attempt(db: Database, name: str, place: str, worked: bool, now: datetime) -> int:
    """A try to get in, and its number; what was typed as a name is kept as a digest (people type passwords there)."""
    row = {"name": _digest(folded(name)), "place": place, "at": _text(now), "worked": int(worked)}
    return db["attempts"].insert(row).last_pk


def attempt_worked(db: Database, attempt: int) -> None:
    """The try was written down as failed before the password was looked at; it was right."""
    db.execute("update attempts set worked = 1 where id = ?", (attempt,))


def must_wait(db: Database, name: str, place: str, now: datetime) -> int:
    """Seconds until the next try counts; 0 while there were few failures. Known and unknown names alike.

    Success starts a name anew, never a place: one good account must not buy guesses at the others. What was written
    down by a clock that stood ahead and was set back since neither shuts anybody out nor opens the door to guessing.
    """
    since = _text(now - WINDOW)
    name = _digest(folded(name))
    worked = _one(db, "select max(at) as at from attempts where name = ? and worked = 1 and at <= ?", (name, _text(now)))["at"]
    return max(
        _wait(db, "name", name, max(since, worked or ""), TRIES_OF_A_NAME, now),
        _wait(db, "place", place, since, TRIES_OF_A_PLACE, now),
    )


def _wait(db: Database, column: str, value: str, since: str, most: int, now: datetime) -> int:
    rows = list(
        db.query(
            f"select at from attempts where {column} = ? and worked = 0 and at > ? and at <= ? order by at desc limit ?",
            (value, since, _text(now + WINDOW), most),
        )
    )
    if len(rows) < most:
        return 0
    left = datetime.fromisoformat(rows[-1]["at"]) + WINDOW - now
    return 1 + int(min(left, WINDOW).total_seconds())


def forget_attempts_of(db: Database, name: str) -> None:
    """The digests of tries under a name: whoever guesses the name could tell that it was here."""
    db.execute("delete from attempts where name = ?", (_digest(folded(name)),))


def forget_attempts(db: Database, now: datetime) -> None:
    """Rows older than a month are of no use to anybody."""
    db.execute("delete from attempts where at < ?", (_text(now - timedelta(days=30)),))


# --- who said it (the guard asks on every request, so these read no documents)


def speakers(db: Database, note_id: str) -> tuple[str, ...]:
    """Who spoke a note and who handed it in; () where there is none."""
    row = _one(db, "select spoken_by, handed_in_by from notes where id = ?", (note_id,))
    return tuple(row.values()) if row else ()


def piece_speakers(db: Database, piece_id: str) -> tuple[str, ...]:
    """Everybody who spoke or handed in a note of this piece."""
    rows = db.query(
        "select spoken_by, handed_in_by from notes join entries on entries.note = notes.id where entries.piece = ?",
        (piece_id,),
    )
    return tuple({one for row in rows for one in row.values()})
