"""Notes and decisions in the order of their times, and the pieces they add up to.

A note that comes late, or an old one that is pressed right, is laid at its own place; after it only those events are
laid anew that saw another value because of it (`versions.py`): notes of the same piece, mark or run, answers to it,
decisions on it. A log of thousands of notes is never joined anew for one more. `Log` is the one thing here that
changes while it works; the pipeline copies it before it starts and shows only frozen records.
"""

from __future__ import annotations

from bisect import insort
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import datetime
from heapq import heappop, heappush

from logbook import facts, limits
from logbook.job import Job
from logbook.joining import copying, current, joined
from logbook.joining.adding import Saying
from logbook.joining.joined import Joined, Key
from logbook.joining.versions import Versions
from logbook.joining.whose import Asks, Before, Begins, same_run, whose
from logbook.note import Note
from logbook.piece import Assumed, Decision
from logbook.said import Entry

When = tuple[datetime, int, str]  # time, notes before decisions, id
TABLES = (
    "pieces",  # founder -> Joined
    "placed",  # entry -> founder of its piece, or Asks
    "by_mark", "by_run",  # bare mark or run -> founders
    "last_run",  # (speaker, day) -> run
    "shifts",  # (speaker, day) -> (note id, facts)
    "spoken_of",  # (speaker, day) -> ((note, founder), …)
    "decided",  # decision -> founder
    "words",  # note -> nothing: who answers a note looks at its words
)  # fmt: skip


@dataclass
class Log:
    """What was laid so far."""

    job: Job
    notes: dict[str, Note] = field(default_factory=dict)
    decisions: dict[str, Decision] = field(default_factory=dict)
    spoken: dict[str, list[When]] = field(default_factory=dict)  # speaker -> his notes in order
    takes_back: set[str] = field(default_factory=set)  # speakers who ever said "scrap that"
    back: dict[str, dict] = field(default_factory=dict)  # what voice took back: note -> {by: positions or None}
    doubted: set[str] = field(default_factory=set)  # decisions whose piece may be another by now: `doubt` them
    touched_notes: set[str] = field(default_factory=set)
    values: Versions = field(default_factory=lambda: Versions({table: {} for table in TABLES}))

    def copy(self, job: Job) -> Log:
        """A log that can go on without changing this one."""
        fresh = {name: type(value)(value) for name, value in vars(self).items() if name not in ("job", "values")}
        spoken = {speaker: list(whens) for speaker, whens in self.spoken.items()}
        return type(self)(job, **fresh | {"spoken": spoken, "touched_notes": set(), "values": self.values.copy()})

    # --- as it stands after everything that was laid

    @property
    def pieces(self) -> dict[Key, Joined]:
        return self.values.tables["pieces"]

    @property
    def placed(self) -> dict[Key, Key | Asks]:
        return self.values.tables["placed"]

    @property
    def by_run(self) -> dict[str, tuple[Key, ...]]:
        return self.values.tables["by_run"]

    def take_touched(self) -> tuple[set[Key], set[str]]:
        """The pieces that are not as they were since this was last asked, and the notes that were laid."""
        found = {key for table, key in self.values.changed if table == "pieces"}, self.touched_notes
        self.values.changed, self.touched_notes = set(), set()
        return found

    # --- laying

    def _put_piece(self, piece: Joined) -> None:
        """Keeps the piece, and the lists of its mark and run when they changed."""
        before = self.values.get("pieces", piece.founder)
        self.values.put("pieces", piece.founder, piece)
        for table, of in (("by_mark", _bare_mark_of), ("by_run", _bare_run_of)):
            old, new = of(before), of(piece)
            if old == new:
                continue
            if old is not None:
                self.values.put(table, old, tuple(key for key in self.values.get(table, old, ()) if key != piece.founder))
            if new is not None:
                self.values.put(table, new, (*self.values.get(table, new, ()), piece.founder))

    def change(self, notes: Iterable[Note], decisions: Iterable[Decision], piece_of: Callable[[Decision], Key | None]) -> None:
        """Lays new and changed notes and decisions, each at its time, and what they concern after it.

        `piece_of` tells the piece of a decision while the log stands at its time: it asks `place_of`.
        """
        new_notes, new_decisions = list(notes), list(decisions)
        now = {*map(when_of, new_notes), *map(when_of, new_decisions)}
        before = {when_of(old) for note in new_notes if (old := self.notes.get(note.id)) is not None}
        before |= {when_of(self.decisions[one.id]) for one in new_decisions if one.id in self.decisions}
        for note in new_notes:
            old = self.notes.get(note.id)
            if old is not None:
                self.spoken[old.spoken_by].remove(when_of(old))
            insort(self.spoken.setdefault(note.spoken_by, []), when_of(note))
            if note.reading is not None and note.reading.withdraws is not None:
                self.takes_back.add(note.spoken_by)
        now |= set(self._taken_back({note.id: note for note in new_notes}))
        if not now:
            return
        first = min(now | before)
        self.notes.update((note.id, note) for note in new_notes)
        self.decisions.update((decision.id, decision) for decision in new_decisions)
        for note in new_notes:
            now.update(self.values.seen_by("words", note.id, first))
        doubted = {when for decision in self.doubted if (when := when_of(self.decisions[decision])) > first}
        self.doubted -= {when[2] for when in doubted}
        self._lay_in_order(now | before | doubted, before - now, piece_of)

    def doubt(self, decisions: Iterable[Decision]) -> None:
        """Looks at these again when something before them changes: the piece they were made on goes by another id."""
        self.doubted |= {decision.id for decision in decisions if decision.id in self.decisions}

    def _lay_in_order(self, whens: Iterable[When], gone: set[When], piece_of) -> None:
        waits = sorted(whens)
        known = set(waits)
        while waits:
            when = heappop(waits)
            self.values.begin(when)
            if when not in gone:
                if when[1]:
                    self._lay_decision(self.decisions[when[2]], piece_of)
                else:
                    self._lay_note(self.notes[when[2]])
            for later in self.values.end():
                if later not in known:
                    known.add(later)
                    heappush(waits, later)

    def _taken_back(self, new: dict[str, Note]) -> list[When]:
        """Looks again at what each speaker took back by voice; the times of the notes for which that changed."""
        changed = []
        for speaker in {note.spoken_by for note in new.values()} & self.takes_back:
            own = [new.get(when[2]) or self.notes[when[2]] for when in self.spoken[speaker]]
            back = current.taken_back(own)
            for note in own:
                if back.get(note.id, {}) != self.back.get(note.id, {}):
                    changed.append(when_of(note))
                    self.back[note.id] = back.get(note.id, {})
        return changed

    # --- one note

    def standing(self, note: Note) -> tuple[Entry, ...]:
        """The entries of the note that nobody took back."""
        back = self.back.get(note.id, {})
        if note.withdrawn_at is not None or None in back.values():
            return ()
        gone = {position for positions in back.values() for position in positions}
        return tuple(entry for entry in current.entries(note) if entry.position not in gone)

    def shift_words(self, speaker: str, day, run: str | None) -> tuple[Assumed, ...]:
        """What this speaker's shift note lets stand on a run that day."""
        return self._lent(self.values.get("shifts", (speaker, day), (None, ())), run)

    def words_lent_to(self, note: Note) -> tuple[Assumed, ...]:
        """What the shift note before this note lets stand for an entry of it that joined nothing."""
        day = self.job.day_of(note.counted_at)
        return self._lent(self.values.after("shifts", (note.spoken_by, day), when_of(note), (None, ())), None)

    @staticmethod
    def _lent(shift: tuple, run: str | None) -> tuple[Assumed, ...]:
        note, said = shift
        return tuple(
            Assumed(fact.name, fact.value, "shift", note)
            for fact in said
            if limits.may_stand(fact.name, "shift") and (fact.for_run is None or (run is not None and same_run(fact.for_run, run)))
        )

    def _lay_note(self, note: Note) -> None:
        self.touched_notes.add(note.id)
        day = self.job.day_of(note.counted_at)
        if note.reading is not None and note.reading.shift is not None and note.withdrawn_at is None:
            self._lay_shift(note, day)
        said = self.standing(note)
        shown = current.photos(note, current.entries(note))
        for entry in said:
            self._lay_entry(note, entry, shown, day)

    def _lay_shift(self, note: Note, day) -> None:
        if None in self.back.get(note.id, {}).values():
            return
        self.values.put("shifts", (note.spoken_by, day), (note.id, note.reading.shift))
        runs = [fact.value for fact in note.reading.shift if fact.name == "run"]
        self.values.put("last_run", (note.spoken_by, day), runs[-1] if runs else None)

    def _lay_entry(self, note: Note, entry: Entry, shown, day) -> None:
        key = (note.id, entry.position)
        before = self._before(note, entry, day)
        entry = copying.copied(entry, self._source(entry, before), note.id)
        meant = whose(entry, note, before)
        run = entry.fact("run")
        if run is not None and not note.as_lead:
            self.values.put("last_run", (note.spoken_by, day), run.value)
        if isinstance(meant, Asks) or (note.as_lead and isinstance(meant, Begins)):
            self.values.put("placed", key, meant if isinstance(meant, Asks) else Asks(("no-piece",)))
            self.values.get("shifts", (note.spoken_by, day))  # what it is asked leans on the shift's words
            return
        if note.as_lead:
            self.values.put("placed", key, meant.piece)
            self._put_piece(joined.looked_at(self._piece(meant.piece), entry, note))
            return
        piece = Joined(key, meant.run, note.counted_at) if isinstance(meant, Begins) else self._piece(meant.piece)
        shift = self.shift_words(note.spoken_by, day, meant.run or piece.run)
        saying = Saying(note.id, note.spoken_by, note.counted_at, replaces=entry.amends or note.answers is not None)
        piece = joined.add(piece, key, entry, saying, meant.run, shift)
        self._put_piece(joined.with_photos(piece, note, shown, entry.position))
        self.values.put("placed", key, piece.founder)
        own = (note.spoken_by, day)
        self.values.put("spoken_of", own, (*self.values.get("spoken_of", own, ()), (note.id, piece.founder)))

    def _piece(self, key: Key) -> Joined:
        return self.values.get("pieces", key)

    def place_of(self, entry: Key) -> Key | Asks | None:
        """Where an entry stands at the event that is laid."""
        return self.values.get("placed", entry)

    def _before(self, note: Note, entry: Entry, day) -> Before:
        if note.answers is not None:
            self.values.get("words", note.answers)
        answered = self.notes.get(note.answers) if note.answers is not None else None
        keys = [] if answered is None else [self.place_of((answered.id, e.position)) for e in current.entries(answered)]
        of_answered = dict.fromkeys(key for key in keys if isinstance(key, tuple))
        mark = entry.fact("mark")
        # looked at only where it tells the piece: what is looked at has to be laid anew when it changes
        spoken_of = self.values.get("spoken_of", (note.spoken_by, day), ()) if mark is None and entry.amends else ()
        return Before(
            of_mark=self.of_mark(None if mark is None else mark.value),
            last_run=self.values.get("last_run", (note.spoken_by, day)),
            of_answered=[self._piece(key) for key in of_answered],
            spoken_of_today=[(of, self._piece(key)) for of, key in spoken_of],
        )

    def of_mark(self, mark: str | None) -> list[Joined]:
        """The pieces with this mark that were not scrapped."""
        if mark is None:
            return []
        pieces = [self._piece(key) for key in self.values.get("by_mark", facts.bare_mark(mark), ())]
        return [piece for piece in pieces if not piece.scrapped]

    def _source(self, entry: Entry, before: Before):
        """The facts of the piece that "same as" names: on the run said with it, on the entry's run, or the only one."""
        if entry.same_as is None:
            return {}
        found = self.of_mark(entry.same_as.mark)
        run = entry.fact("run")
        for wanted in (entry.same_as.run, None if run is None else run.value, before.last_run):
            on_run = [p for p in found if wanted is not None and p.run is not None and same_run(p.run, wanted)]
            if len(on_run) == 1:
                return on_run[0].by_name
            if wanted is not None and wanted == entry.same_as.run:
                return {}
        return found[0].by_name if len(found) == 1 else {}

    # --- one decision

    def _lay_decision(self, decision: Decision, piece_of) -> None:
        key = piece_of(decision)
        piece = None if key is None else self._piece(key)
        if piece is not None:
            self.values.put("decided", decision.id, key)
            self._put_piece(joined.decided(piece, decision))

    # --- what others need to know

    def twins(self, key: Key) -> tuple[Key, ...]:
        """Other pieces that say they have the same mark on the same run."""
        piece = self.pieces[key]
        return tuple(
            other.founder
            for other in self.of_mark(piece.mark)
            if other.founder != key and not piece.scrapped and facts.bare_mark(other.run or "") == facts.bare_mark(piece.run or "")
        )


def _bare_mark_of(piece: Joined | None) -> str | None:
    return None if piece is None or piece.mark is None else facts.bare_mark(piece.mark)


def _bare_run_of(piece: Joined | None) -> str | None:
    """Pieces without a run stand together under the empty run."""
    return None if piece is None else facts.bare_mark(piece.run or "")


def when_of(event: Note | Decision) -> When:
    return (event.counted_at, 0, event.id) if isinstance(event, Note) else (event.at, 1, event.id)


def lone(entry: Entry, note: Note, words: tuple[Assumed, ...]) -> Joined:
    """An entry that joined nothing, as a piece of its own, so that the rules can ask about it."""
    run = entry.fact("run")
    piece = Joined((note.id, entry.position), None, note.counted_at)
    saying = Saying(note.id, note.spoken_by, note.counted_at)
    piece = joined.add(piece, piece.founder, entry, saying, None if run is None else run.value, words)
    return joined.with_photos(piece, note, current.photos(note, current.entries(note)), entry.position)
