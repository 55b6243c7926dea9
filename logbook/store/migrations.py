"""The shape of `log.db`, one step after another: a step is never edited once it has been released, only followed.

What was said or decided is never updated: `words`, `readings`, `acts`, `findings` and `journal` only grow.
`current` is a mark that moves; the state of a note, the lease, the pieces and entries are marks too, and can be
reckoned again from the rows.
"""

from __future__ import annotations

from sqlite_utils import Database, Migrations

migrations = Migrations("logbook")

_FIRST = (
    """CREATE TABLE about (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT""",
    """CREATE TABLE files (
        sha256 TEXT PRIMARY KEY, what TEXT NOT NULL, kind TEXT NOT NULL, bytes INTEGER NOT NULL,
        received_at TEXT NOT NULL, erased_at TEXT) STRICT""",
    """CREATE TABLE notes (
        seq INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, job TEXT NOT NULL,
        spoken_by TEXT NOT NULL, handed_in_by TEXT NOT NULL, as_lead INTEGER NOT NULL DEFAULT 0,
        spoken_at TEXT NOT NULL, spoken_utc TEXT NOT NULL, sent_at TEXT, received_at TEXT NOT NULL, day TEXT NOT NULL,
        answers TEXT, mark TEXT, kind TEXT, run TEXT, language TEXT, digests TEXT NOT NULL, announced TEXT NOT NULL,
        state TEXT NOT NULL, wants TEXT, problem TEXT, answered_at TEXT, withdrawn_at TEXT, flagged INTEGER,
        revision INTEGER NOT NULL DEFAULT 0,
        attempt INTEGER NOT NULL DEFAULT 0, tries INTEGER NOT NULL DEFAULT 0,
        held_by TEXT, held_boot TEXT, held_until REAL) STRICT""",
    "CREATE INDEX notes_waiting ON notes (state, wants, seq)",
    "CREATE INDEX notes_day ON notes (day, seq)",
    "CREATE INDEX notes_speaker ON notes (spoken_by, seq)",
    "CREATE INDEX notes_revision ON notes (revision)",
    "CREATE INDEX notes_flagged ON notes (flagged, seq)",
    """CREATE TABLE parts (
        note TEXT NOT NULL REFERENCES notes(id), what TEXT NOT NULL, place INTEGER NOT NULL,
        sha256 TEXT NOT NULL REFERENCES files(sha256), received_at TEXT NOT NULL, handed_in_by TEXT NOT NULL,
        taken_at TEXT, latitude REAL, longitude REAL, accuracy_m REAL, shows TEXT,
        PRIMARY KEY (note, what, place)) STRICT""",
    "CREATE INDEX parts_file ON parts (sha256)",
    """CREATE TABLE words (
        id INTEGER PRIMARY KEY AUTOINCREMENT, note TEXT NOT NULL REFERENCES notes(id), source TEXT NOT NULL,
        text TEXT NOT NULL, transcript TEXT, language TEXT, said_by TEXT, at TEXT NOT NULL,
        current INTEGER NOT NULL) STRICT""",
    "CREATE UNIQUE INDEX words_current ON words (note) WHERE current = 1",
    "CREATE INDEX words_note ON words (note)",
    """CREATE TABLE readings (
        id INTEGER PRIMARY KEY AUTOINCREMENT, note TEXT NOT NULL REFERENCES notes(id),
        words INTEGER NOT NULL REFERENCES words(id), reader TEXT NOT NULL, reading TEXT NOT NULL, at TEXT NOT NULL,
        current INTEGER NOT NULL) STRICT""",
    "CREATE UNIQUE INDEX readings_current ON readings (note) WHERE current = 1",
    "CREATE INDEX readings_note ON readings (note)",
    """CREATE TABLE pictures (
        sha256 TEXT PRIMARY KEY REFERENCES files(sha256), readable INTEGER NOT NULL, seen TEXT NOT NULL,
        problem TEXT, at TEXT NOT NULL) STRICT""",
    """CREATE TABLE acts (
        seq INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, act TEXT NOT NULL, note TEXT, piece TEXT,
        day TEXT, done_by TEXT NOT NULL, at TEXT NOT NULL, content TEXT NOT NULL) STRICT""",
    "CREATE INDEX acts_note ON acts (note) WHERE note IS NOT NULL",
    "CREATE INDEX acts_piece ON acts (piece) WHERE piece IS NOT NULL",
    "CREATE INDEX acts_day ON acts (day) WHERE day IS NOT NULL",
    """CREATE TABLE pieces (
        id TEXT PRIMARY KEY, run TEXT, mark TEXT, bare_mark TEXT, kind TEXT, flagged INTEGER NOT NULL,
        stands_open INTEGER NOT NULL, gone INTEGER NOT NULL DEFAULT 0, since TEXT NOT NULL,
        document TEXT NOT NULL) STRICT""",
    "CREATE INDEX pieces_run ON pieces (run, bare_mark)",
    "CREATE INDEX pieces_mark ON pieces (bare_mark)",
    "CREATE INDEX pieces_open ON pieces (stands_open, since)",
    """CREATE TABLE entries (
        note TEXT NOT NULL REFERENCES notes(id), position INTEGER NOT NULL, piece TEXT NOT NULL REFERENCES pieces(id),
        current INTEGER NOT NULL, PRIMARY KEY (note, position, piece)) STRICT""",
    "CREATE INDEX entries_piece ON entries (piece)",
    """CREATE TABLE findings (
        id INTEGER PRIMARY KEY AUTOINCREMENT, piece TEXT NOT NULL REFERENCES pieces(id), rule TEXT NOT NULL,
        place INTEGER NOT NULL, verdict TEXT NOT NULL, weight TEXT NOT NULL, shows TEXT NOT NULL, stands TEXT,
        edition TEXT NOT NULL, document TEXT NOT NULL, at TEXT NOT NULL, current INTEGER NOT NULL,
        judged INTEGER) STRICT""",
    "CREATE INDEX findings_piece ON findings (piece, current)",
    "CREATE INDEX findings_judged ON findings (judged)",
    "CREATE TABLE questions (note TEXT PRIMARY KEY REFERENCES notes(id), document TEXT NOT NULL) STRICT",
    """CREATE TABLE journal (
        seq INTEGER PRIMARY KEY, at TEXT NOT NULL, act TEXT NOT NULL, ids TEXT NOT NULL, digest TEXT NOT NULL,
        before TEXT NOT NULL, hash TEXT NOT NULL) STRICT""",
    "CREATE TABLE salts (seq INTEGER PRIMARY KEY REFERENCES journal(seq), salt BLOB NOT NULL) STRICT",
    """CREATE TRIGGER journal_stays BEFORE UPDATE ON journal
        BEGIN SELECT RAISE(ABORT, 'a row of the journal is never changed'); END""",
    """CREATE TRIGGER journal_keeps BEFORE DELETE ON journal
        BEGIN SELECT RAISE(ABORT, 'a row of the journal is never removed'); END""",
    # erasing is the only change that words, readings and acts allow
    """CREATE TRIGGER acts_stay BEFORE UPDATE ON acts WHEN NEW.content <> '"erased"'
        BEGIN SELECT RAISE(ABORT, 'an act is never changed'); END""",
    """CREATE TRIGGER words_stay BEFORE UPDATE OF note, source, text, transcript, at ON words
        WHEN NEW.text <> '' OR NEW.transcript IS NOT NULL
        BEGIN SELECT RAISE(ABORT, 'what was said is never changed'); END""",
    """CREATE TRIGGER readings_stay BEFORE UPDATE OF note, words, reader, reading, at ON readings
        WHEN NEW.reading <> '"erased"'
        BEGIN SELECT RAISE(ABORT, 'a reading is never changed'); END""",
)


@migrations()
def lay_the_log(db: Database) -> None:
    for statement in _FIRST:
        db.execute(statement)
    for key in ("revision", "reckoned"):
        db.execute("INSERT INTO about VALUES (?, '0')", [key])


@migrations()
def tell_small_copies(db: Database) -> None:
    """A picture may be a small copy that a phone made; `copy_of` is the digest of the original that follows it."""
    db.execute("ALTER TABLE parts ADD COLUMN copy_of TEXT")


@migrations()
def find_what_stands_open(db: Database) -> None:
    db.execute("CREATE INDEX findings_open ON findings (stands) WHERE current = 1 AND stands IN ('open', 'in hand')")
    db.execute("CREATE INDEX acts_decided ON acts (done_by, seq) WHERE act = 'decided'")
    db.execute("CREATE INDEX acts_of_the_job ON acts (act, seq) WHERE act IN ('released', 'held_again')")
    db.execute("CREATE INDEX notes_of_leads ON notes (answers) WHERE as_lead = 1")
    db.execute("CREATE INDEX pieces_gone ON pieces (gone) WHERE gone = 1")


@migrations()
def find_runs_and_marks_in_any_case(db: Database) -> None:
    db.execute("CREATE INDEX pieces_run_any_case ON pieces (run COLLATE NOCASE)")
    db.execute("CREATE INDEX pieces_mark_any_case ON pieces (bare_mark COLLATE NOCASE)")


@migrations()
def keep_the_books_of_signed_days(db: Database) -> None:
    db.execute("CREATE TABLE books (digest TEXT PRIMARY KEY, files TEXT NOT NULL, at TEXT NOT NULL) STRICT")
    db.execute("CREATE TABLE signed_under (day TEXT PRIMARY KEY, book TEXT NOT NULL REFERENCES books(digest)) STRICT")


@migrations()
def hear_again_what_was_doubtful(db: Database) -> None:
    """Notes whose hearing was doubtful: `words` is that hearing, `kept` which of the two stands (first, second)."""
    db.execute(
        "CREATE TABLE second_hearings (note TEXT PRIMARY KEY REFERENCES notes(id), words INTEGER NOT NULL REFERENCES words(id), "
        "tries INTEGER NOT NULL DEFAULT 0, ended_at TEXT, kept TEXT) STRICT"
    )
    db.execute("CREATE INDEX second_hearings_wanted ON second_hearings (words) WHERE ended_at IS NULL")


@migrations()
def find_what_was_closed(db: Database) -> None:
    db.execute("CREATE INDEX findings_closed ON findings (stands) WHERE current = 1 AND stands = 'closed'")


@migrations()
def count_where_findings_stand(db: Database) -> None:
    db.execute("CREATE INDEX findings_asked ON findings (piece) WHERE current = 1 AND shows = 'ask' AND verdict IN ('unsaid', 'unclear')")
    db.execute("CREATE INDEX findings_settled ON findings (piece) WHERE current = 1 AND stands IN ('settled', 'closed')")


@migrations()
def count_pieces_by_run(db: Database) -> None:
    db.execute("CREATE INDEX pieces_in_short ON pieces (run, bare_mark, id, mark, kind) WHERE gone = 0")


@migrations()
def find_packages(db: Database) -> None:
    db.execute("CREATE INDEX journal_handed_over ON journal (seq) WHERE act = 'handed_over'")
