"""Notes and decisions in the order of their times, and the pieces they add up to.

A note that comes late is put in its place: what was spoken after it is taken off, the note is laid in, and the rest
is laid on again. Every laid event remembers what it changed, so taking off costs as much as it had done; a log of
thousands of notes is never joined anew for one more. `Log` is the one thing here that changes while it works; the
pipeline copies it before it starts and shows only frozen records.
"""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import datetime

from logbook import facts, limits
from logbook.job import Job
from logbook.joining import copying, current, joined
from logbook.joining.adding import Saying
from logbook.joining.joined import Joined, Key
from logbook.joining.whose import Asks, Before, Begins, same_run, whose
from logbook.note import Note
from logbook.piece import Assumed, Decision
from logbook.said import Entry

_ABSENT = object()
When = tuple[datetime, int, str]  # time, notes before decisions, id


@dataclass
class Log:
    """What was laid so far. The dictionaries of the second half are undone event by event."""

    job: Job
    notes: dict[str, Note] = field(default_factory=dict)
    decisions: dict[str, Decision] = field(default_factory=dict)
    spoken: dict[str, list[When]] = field(default_factory=dict)  # speaker -> his notes in order
    takes_back: set[str] = field(default_factory=set)  # speakers who ever said "scrap that"
    back: dict[str, dict] = field(default_factory=dict)  # what voice took back: note -> {by: positions or None}
    order: list[When] = field(default_factory=list)
    undo: list[list[tuple[str, object, object]]] = field(default_factory=list)
    touched: set[Key] = field(default_factory=set)
    touched_notes: set[str] = field(default_factory=set)

    pieces: dict[Key, Joined] = field(default_factory=dict)
    placed: dict[Key, Key | Asks] = field(default_factory=dict)
    by_mark: dict[str, tuple[Key, ...]] = field(default_factory=dict)
    by_run: dict[str, tuple[Key, ...]] = field(default_factory=dict)
    last_run: dict[str, tuple] = field(default_factory=dict)  # speaker -> (run, day)
    shifts: dict[str, tuple] = field(default_factory=dict)  # speaker -> (note id, facts, day)
    spoken_of: dict[tuple, tuple] = field(default_factory=dict)  # (speaker, day) -> ((note, piece key), …)
    decided: dict[str, Key] = field(default_factory=dict)  # decision -> piece

    def copy(self, job: Job) -> Log:
        """A log that can go on without changing this one."""
        fresh = {name: type(value)(value) for name, value in vars(self).items() if name != "job"}
        spoken = {speaker: list(whens) for speaker, whens in self.spoken.items()}
        return Log(job, **fresh | {"spoken": spoken, "touched": set(), "touched_notes": set()})

    # --- changes that can be taken off again

    def _put(self, table: str, key, value) -> None:
        rows = getattr(self, table)
        self.undo[-1].append((table, key, rows.get(key, _ABSENT)))
        self._set(table, key, value)

    def _set(self, table: str, key, value) -> None:
        rows = getattr(self, table)
        if table == "pieces":
            self.touched.add(key)
        if value is _ABSENT:
            rows.pop(key, None)
        else:
            rows[key] = value

    def _put_piece(self, piece: Joined) -> None:
        """Keeps the piece, and the lists of its mark and run when they changed."""
        before = self.pieces.get(piece.founder)
        self._put("pieces", piece.founder, piece)
        for table, of in (("by_mark", _bare_mark_of), ("by_run", _bare_run_of)):
            old, new = of(before), of(piece)
            if old == new:
                continue
            if old is not None:
                self._put(table, old, tuple(key for key in getattr(self, table)[old] if key != piece.founder))
            if new is not None:
                self._put(table, new, (*getattr(self, table).get(new, ()), piece.founder))

    # --- laying and taking off

    def change(self, notes: Iterable[Note], decisions: Iterable[Decision], piece_of: Callable[[Decision], Key | None]) -> None:
        """Lays new and changed notes and decisions in the order of their times.

        `piece_of` tells the piece of a decision while the log stands at its time.
        """
        new_notes, new_decisions = list(notes), list(decisions)
        whens = [when_of(d) for d in new_decisions]
        for note in new_notes:
            old = self.notes.get(note.id)
            own = self.spoken.setdefault(note.spoken_by, [])
            if old is not None:
                whens.append(when_of(old))
                self.spoken[old.spoken_by].remove(when_of(old))
            whens.append(when_of(note))
            insort(own, when_of(note))
            if note.reading is not None and note.reading.withdraws is not None:
                self.takes_back.add(note.spoken_by)
        for decision in new_decisions:
            if decision.id in self.decisions:
                whens.append(when_of(self.decisions[decision.id]))
        whens += self._taken_back({note.id: note for note in new_notes})
        if not whens:
            return
        later = self._take_off(min(whens))
        gone = {note.id for note in new_notes} | {decision.id for decision in new_decisions}
        self.notes.update((note.id, note) for note in new_notes)
        self.decisions.update((decision.id, decision) for decision in new_decisions)
        again = [when for when in later if when[2] not in gone]
        for when in sorted([*again, *map(when_of, new_notes), *map(when_of, new_decisions)]):
            self.order.append(when)
            self.undo.append([])
            if when[1]:
                self._lay_decision(self.decisions[when[2]], piece_of)
            else:
                self._lay_note(self.notes[when[2]])

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

    def _take_off(self, since: When) -> list[When]:
        place = bisect_left(self.order, since)
        later = self.order[place:]
        for _ in later:
            self.order.pop()
            for table, key, old in reversed(self.undo.pop()):
                self._set(table, key, old)
        return later

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
        note, said, of_day = self.shifts.get(speaker, (None, (), None))
        if of_day != day:
            return ()
        return tuple(
            Assumed(fact.name, fact.value, "shift", note)
            for fact in said
            if limits.may_stand(fact.name, "shift") and (fact.for_run is None or (run is not None and same_run(fact.for_run, run)))
        )

    def _lay_note(self, note: Note) -> None:
        self.touched_notes.add(note.id)
        day = self.job.day_of(note.spoken_at)
        if note.reading is not None and note.reading.shift is not None and note.withdrawn_at is None:
            self._lay_shift(note, day)
        said = self.standing(note)
        shown = current.photos(note, current.entries(note))
        for entry in said:
            self._lay_entry(note, entry, shown, day)

    def _lay_shift(self, note: Note, day) -> None:
        if None in self.back.get(note.id, {}).values():
            return
        self._put("shifts", note.spoken_by, (note.id, note.reading.shift, day))
        runs = [fact.value for fact in note.reading.shift if fact.name == "run"]
        self._put("last_run", note.spoken_by, (runs[-1] if runs else None, day))

    def _lay_entry(self, note: Note, entry: Entry, shown, day) -> None:
        key = (note.id, entry.position)
        before = self._before(note, entry, day)
        entry = copying.copied(entry, self._source(entry, before), note.id)
        meant = whose(entry, note, before)
        run = entry.fact("run")
        if run is not None and not note.as_lead:
            self._put("last_run", note.spoken_by, (run.value, day))
        if isinstance(meant, Asks) or (note.as_lead and isinstance(meant, Begins)):
            self._put("placed", key, meant if isinstance(meant, Asks) else Asks(("no-piece",)))
            return
        if note.as_lead:
            self._put("placed", key, meant.piece)
            self._put_piece(joined.looked_at(self.pieces[meant.piece], entry, note))
            return
        piece = Joined(key, meant.run, note.spoken_at) if isinstance(meant, Begins) else self.pieces[meant.piece]
        shift = self.shift_words(note.spoken_by, day, meant.run or piece.run)
        saying = Saying(note.id, note.spoken_by, note.spoken_at, replaces=entry.amends or note.answers is not None)
        piece = joined.add(piece, key, entry, saying, meant.run, shift)
        self._put_piece(joined.with_photos(piece, note, shown, entry.position))
        self._put("placed", key, piece.founder)
        own = (note.spoken_by, day)
        self._put("spoken_of", own, (*self.spoken_of.get(own, ()), (note.id, piece.founder)))

    def _before(self, note: Note, entry: Entry, day) -> Before:
        run, of_day = self.last_run.get(note.spoken_by, (None, None))
        answered = self.notes.get(note.answers) if note.answers is not None else None
        keys = [] if answered is None else [self.placed.get((answered.id, e.position)) for e in current.entries(answered)]
        of_answered = dict.fromkeys(key for key in keys if isinstance(key, tuple))
        mark = entry.fact("mark")
        return Before(
            of_mark=self.of_mark(None if mark is None else mark.value),
            last_run=run if of_day == day else None,
            of_answered=[self.pieces[key] for key in of_answered],
            spoken_of_today=[(of, self.pieces[key]) for of, key in self.spoken_of.get((note.spoken_by, day), ())],
        )

    def of_mark(self, mark: str | None) -> list[Joined]:
        """The pieces with this mark that were not scrapped."""
        if mark is None:
            return []
        pieces = [self.pieces[key] for key in self.by_mark.get(facts.bare_mark(mark), ())]
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
        if key is not None and key in self.pieces:
            self._put("decided", decision.id, key)
            self._put_piece(joined.decided(self.pieces[key], decision))

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
    return (event.spoken_at, 0, event.id) if isinstance(event, Note) else (event.at, 1, event.id)


def lone(entry: Entry, note: Note, words: tuple[Assumed, ...]) -> Joined:
    """An entry that joined nothing, as a piece of its own, so that the rules can ask about it."""
    run = entry.fact("run")
    piece = Joined((note.id, entry.position), None, note.spoken_at)
    saying = Saying(note.id, note.spoken_by, note.spoken_at)
    piece = joined.add(piece, piece.founder, entry, saying, None if run is None else run.value, words)
    return joined.with_photos(piece, note, current.photos(note, current.entries(note)), entry.position)
