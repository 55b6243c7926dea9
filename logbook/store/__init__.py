"""The job folder: everything that was handed in, said, found and decided, kept so that nothing recorded is lost.

This package is the only importer of sqlite_utils. A job is a folder: `log.db`, `job.toml`, `originals/` (named by
SHA-256, never rewritten), `derived/`, `reports/`, `documents/`.

    open_folder(path, floors=Floors()) -> JobFolder | Mistake
        opens (creates) the folder and ONE connection; cheap enough for every request. `JobFolder` has `.path`,
        `.job` (a `job.Job`), `.db` (a sqlite_utils Database), `.floors`; it is a context manager, and `.close()`
        ends the connection. A connection belongs to one thread.
    room(folder) -> Mistake | None           507 before a body is read: `store.disk-full`
    writing(folder) -> context manager       `with writing(folder) as db:` is one BEGIN IMMEDIATE transaction

    receive(folder, incoming, now=None) -> Receipt | Mistake
        `incoming` is an `intake.Incoming`. Receipt: `id`, `received_at` (datetime), `digests` {"audio": [],
        "photos": [], "text"}, `repeated` (True: answer 200, else 201); `receipt.document` is the JSON body.
    add_photo(folder, note_id, sha256, part, by, facts=None, now=None) -> Receipt | Mistake     the PUT of one photo
    add_document(folder, part, by, now=None) -> str | Mistake      a document of a decision; its SHA-256
    original(folder, sha256) -> Path | None      sound, picture or document as it was handed in
    thumbnail(folder, sha256) -> Path | None     JPEG, at most 640 px, upright, without EXIF; None while not made
    media_type(folder, sha256) -> str | None     by first bytes: "audio/webm", "image/jpeg", ...

    Every act carries the phone's `id` and may be repeated: the same id with the same content answers
    `Act(..., repeated=True)`, with other content the Mistake `store.act-differs` (409).
    correct(folder, id, note_id, position, name, value, by, at=None) -> Act | Mistake
    confirm(folder, id, note_id, by, at=None)    "that is right"
    withdraw(folder, id, note_id, by, at=None)   takes the note back; its entries leave the pieces
    type_words(folder, id, note_id, text, by, language=None, at=None)   the words of an unheard note
    hear_again(folder, id, note_id, by, at=None)
    decide(folder, piece_id, body, by, at=None)  `body`: id, rule, edition, decision, reason, corrected, looked,
        granted_by, document of the contract (JSON names). `act.document` is the decision's JSON.
    decide_together(folder, [(piece_id, body), ...], by, at=None) -> every Act, or every Mistake and nothing kept
    waiting(folder) -> [worklist.Item]           what a person has to act on, light rows in no order
    sign(folder, id, date, by, role, words="", report=None, at=None)   a day's signature; `report` is the SHA-256
        of what was signed
        Act: `id`, `act`, `by`, `at`, `document` (JSON to answer), `repeated`.

    note_document(folder, note_id, language) -> dict | None      GET /notes/ID
    piece_document(folder, piece_id, language) -> dict | None    GET /pieces/PIECE
    run_pieces(folder, run) -> [Piece]    the pieces of a run in the order they were made
    notes_since(folder, cursor=None, limit=50, filters=Filters(), language="en", newest_first=False)
        -> {"notes": [...], "next": cursor | None}; cursors are opaque strings, order of receipt.
        Filters(date, run, mark, speaker, state, flagged), all None: no filter
    day_documents(folder, date, language) -> {"notes": [...], "pieces": [...], "decisions": [...],
        "signatures": [...], "journal": {"seq", "hash"}}      notes and decisions of that job's day, and every
        piece they touch
    days(folder, most=-1) -> [{"date", "notes", "flagged", "waiting", "unheard"}], newest first; newest_day(folder); not_understood_on(folder, day)
    lineup(folder, marks, run, most) -> short rows of fittings with how many findings stand where; the rest of a long log counted by run
    open_findings(folder, limit, cursor) -> pieces whose flagged findings stand open, oldest first
    walked.draw_spot, keep_look, answer_walk, record_leak, keep_photo      what people went and saw (see walked.py)
    search.search(folder, asked, only=None, voices=None, start=0) -> Found      notes, pieces and acts by their words
    corrections_of(folder, note_id), confirmations_of, decisions_of(folder, piece_id), signatures_of(folder, date)

    journal.write(db, act, ids, content) -> Row     inside `writing`: one act more in the journal; `ids` are ids
        only, `content` is digested with a salt and never stored there
    journal.newest(folder) -> {"seq", "hash"}       printed on every day report
    journal.rows(folder, start=1) -> iterator of dicts, as the package carries them

Mistakes carry keys `store.*` and `intake.*`; `intake.STATUS[key]` is the HTTP status that means it.
`store/people.py` keeps its own migration set in `people.migrations`; `open_folder` applies both.
"""

from logbook.store import journal, search, walked
from logbook.store.acts import (
    Act, confirm, confirmations_of, correct, corrections_of, hear_again, sign, signatures_of, type_words, withdraw,
)  # fmt: skip
from logbook.store.deciding import decide, decide_together
from logbook.store.files import media_type, original, thumbnail
from logbook.store.folder import Floors, JobFolder, open_folder, room, writing
from logbook.store.listing import Filters, day_documents, days, documents, lineup, logged, newest_day, not_understood_on, notes_since, open_findings
from logbook.store.receiving import add_document, add_photo, receive
from logbook.store.reckoned import Reckoner, catch_up
from logbook.store.shelf import each_note, each_piece, note_document, piece_document, run_pieces
from logbook.store.worklist import builder_of, closed_lately, finding_says, last_reasons, looks_of, lost_notes, pending, waiting, wanted_notes

__all__ = [
    "Act", "Filters", "Floors", "JobFolder", "Reckoner", "add_document", "add_photo", "builder_of", "catch_up", "closed_lately", "confirm",
    "confirmations_of", "correct", "corrections_of", "day_documents", "days", "decide", "decide_together", "documents",
    "each_note", "each_piece", "finding_says", "hear_again", "journal", "last_reasons", "lineup", "logged", "looks_of",
    "lost_notes", "media_type", "newest_day", "not_understood_on", "note_document", "notes_since", "open_findings", "open_folder", "original", "pending",
    "piece_document", "receive", "room", "run_pieces", "search", "sign", "signatures_of", "thumbnail", "type_words", "waiting",
    "walked", "wanted_notes", "withdraw", "writing",
]  # fmt: skip
