"""Reckoning: what happened goes into the log, pieces that changed are judged again, and only those.

A piece is judged when it changed itself or when something it leans on did: a neighbour of its run, a piece with the
same photo. The runs are small, so one more note costs the same in a long log as in a short one.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime

from logbook import facts, runs
from logbook.findings import Finding, Rule, judge, questions
from logbook.job import Job
from logbook.joining import adding, joined
from logbook.joining.joined import Joined, Key
from logbook.joining.log import Log, lone
from logbook.joining.whose import Asks
from logbook.piece import Decision, Piece
from logbook.pipeline.book import Kept
from logbook.pipeline.changing import how_ended
from logbook.pipeline.happenings import Happening
from logbook.review import Row, stands, wants
from logbook.said import Fact

WIDEST_GROUP = 300  # pieces without a run are no run: above this many they are not neighbours of each other


@dataclass
class Reckoning:
    """One call of `reckon` at work, on copies of the log and of what is kept."""

    log: Log
    kept: Kept
    job: Job
    rules: Sequence[Rule]
    new_id: Callable[[], str]
    without_photos: bool = False
    judged_by: Mapping[str, Job] = field(default_factory=dict)  # pieces of signed days: the job that judges them
    changed: set[str] = field(default_factory=set)
    changed_notes: set[str] = field(default_factory=set)

    def take_in(self, one: Happening) -> None:
        """One happening, and everything that follows from it."""
        decided = set()
        if one.decision is not None:
            self.log.change((), (one.decision,), self.key_of_decision)
            decided = self._keep_decision(one.decision)
        else:
            self.log.change((one.note,), (), self.key_of_decision)
        self._settle(one, decided)

    def key_of_decision(self, decision: Decision) -> Key | None:
        """The piece a decision was made on, as the log stands while it is laid."""
        for entry in self.kept.members.get(self.now_called(decision.piece), ()):
            place = self.log.place_of(entry)
            if isinstance(place, tuple):
                return place
        return None

    def now_called(self, piece_id: str) -> str:
        while piece_id in self.kept.moved:
            piece_id = self.kept.moved[piece_id]
        return piece_id

    def _keep_decision(self, decision: Decision) -> set[str]:
        piece_id = self.now_called(decision.piece)
        others = [d for d in self.kept.decisions.get(piece_id, ()) if d.id != decision.id]
        self.kept.decisions[piece_id] = tuple(sorted([*others, decision], key=lambda d: d.at))  # two of one second as they came
        return {piece_id}

    # --- after a happening

    def _settle(self, cause: Happening, decided: set[str]) -> None:
        touched, notes = self.log.take_touched()
        marks = {piece.mark for key in touched if (piece := self._was(key)) is not None}
        gone = self._name(touched)
        marks |= {self.log.pieces[key].mark for key in touched if key in self.log.pieces}
        twins = {piece.founder for mark in marks for piece in self.log.of_mark(mark)}
        fresh = {}
        for key in (touched | twins) & self.log.pieces.keys():
            piece = self.piece(self.log.pieces[key], cause.happened)
            if piece != self.kept.pieces.get(piece.id):
                fresh[piece.id] = piece
        self._judge(fresh, cause, decided, gone)
        self._ask(notes)

    def settle_for(self, cause: Happening, piece_ids: Iterable[str]) -> None:
        """Judges these pieces again for another reason than a note: time went by, the job file changed."""
        fresh = {}
        for piece_id in piece_ids:
            piece = self.piece(self.log.pieces[self.kept.key_of[piece_id]], cause.happened)
            if piece != self.kept.pieces.get(piece_id) or cause.what == "job":
                fresh[piece_id] = piece
        self._judge(fresh, cause, set())

    def _was(self, key: Key) -> Piece | None:
        return self.kept.pieces.get(self.kept.id_of.get(key))

    def piece(self, one: Joined, now: datetime) -> Piece:
        unclear = ("second-piece",) if self.log.twins(one.founder) else _two_marks(one)
        piece_id = self.kept.id_of[one.founder]
        made = joined.piece_of(one, piece_id, self.judged_by.get(piece_id, self.job), now, unclear)
        return replace(made, checked_without_photos=True) if self.without_photos else made

    # --- ids that stay

    def _name(self, touched: set[Key]) -> list[Piece]:
        """Gives every piece its id: the one its entries had before, oldest first, else a new one.

        The pieces that are no more, as they were.
        """
        kept = self.kept
        let_go = {kept.id_of.pop(key) for key in touched if key not in self.log.pieces and key in kept.id_of}
        for piece_id in let_go:
            kept.key_of.pop(piece_id, None)
        there = sorted((key for key in touched if key in self.log.pieces), key=lambda k: (self.log.pieces[k].made_at, k))
        for key in there:
            piece = self.log.pieces[key]
            if key not in kept.id_of:
                last = (self.now_called(kept.ids[entry]) for entry in piece.entries if entry in kept.ids)
                ever = (one for entry in piece.entries for one in kept.had.get(entry, ()))
                piece_id = next((one for one in (*last, *ever) if one not in kept.key_of), None) or self.new_id()
                kept.id_of[key], kept.key_of[piece_id] = piece_id, key
                self._come_back(piece_id)
            piece_id = kept.id_of[key]
            if kept.members.get(piece_id) != piece.entries:
                kept.members[piece_id] = piece.entries
                self.log.doubt(kept.decisions.get(piece_id, ()))
            for entry in piece.entries:
                kept.ids[entry] = piece_id
                if piece_id not in kept.had.get(entry, ()):
                    kept.had[entry] = (*kept.had.get(entry, ()), piece_id)
        return [old for piece_id in let_go - kept.key_of.keys() if (old := self._retire(piece_id)) is not None]

    def _come_back(self, piece_id: str) -> None:
        """A piece that had joined another is itself again, with the decisions made on it."""
        target = self.kept.moved.pop(piece_id, None)
        if target in self.kept.decisions:
            both = self.kept.decisions[target]
            self.kept.decisions[piece_id] = tuple(d for d in both if d.piece == piece_id)
            self.kept.decisions[target] = tuple(d for d in both if d.piece != piece_id)
            self.log.doubt(both)

    def _retire(self, piece_id: str) -> Piece | None:
        """A piece that is no more: its notes were taken back, or joined another, which then carries its decisions."""
        kept = self.kept
        onward = {kept.ids[entry] for entry in kept.members.get(piece_id, ()) if isinstance(self.log.placed.get(entry), tuple)}
        onward.discard(piece_id)
        if onward:
            kept.moved[piece_id] = target = min(onward)
            if piece_id in kept.decisions:
                both = (*kept.decisions.get(target, ()), *kept.decisions.pop(piece_id))
                kept.decisions[target] = tuple(sorted(both, key=lambda d: d.at))
                self.log.doubt(both)
        old = kept.pieces.pop(piece_id, None)
        if old is not None:
            self._index_photos(old, None)
            self.changed.add(piece_id)
            self.changed_notes.update(old.notes)
        for table in (kept.around, kept.raw, kept.findings, kept.waiting):
            table.pop(piece_id, None)
        return old

    # --- judging

    def _judge(self, fresh: Mapping[str, Piece], cause: Happening, decided: set[str], gone: Sequence[Piece] = ()) -> None:
        kept = self.kept
        before = {piece_id: kept.pieces.get(piece_id) for piece_id in fresh}
        alike = {piece_id for piece_id, piece in fresh.items() if cause.what == "note" and runs.shown(before[piece_id]) == runs.shown(piece)}
        seen_otherwise = [piece for piece_id, piece in fresh.items() if piece_id not in alike]
        near = self._near([before[piece.id] for piece in seen_otherwise] + [*gone]) | self._near_by_photo(before.values())
        for piece_id, piece in fresh.items():
            self._index_photos(before[piece_id], piece)
            kept.pieces[piece_id] = piece
            if piece.coming:
                kept.waiting[piece_id] = True
            else:
                kept.waiting.pop(piece_id, None)
        near |= self._near(seen_otherwise) | self._near_by_photo(fresh.values())
        for group in self._groups(near | fresh.keys()):
            sharing = {piece_id for piece_id in group if self.kept.sharing.get(piece_id)}
            others = {other for piece_id in sharing for other in self.kept.sharing[piece_id]} & kept.pieces.keys()
            site = runs.site(self.job, self._in_order(group | others), shown=sharing | others)
            for piece_id in group & (near | fresh.keys()):
                around = site.around(kept.pieces[piece_id], self.judged_by.get(piece_id))
                if piece_id in fresh or around != kept.around.get(piece_id):
                    kept.around[piece_id] = around
                    self._find(piece_id, before.get(piece_id, kept.pieces[piece_id]), cause)
                    decided = decided | {piece_id}
        for piece_id in decided & kept.raw.keys():
            self._stand(piece_id)

    def _find(self, piece_id: str, before: Piece | None, cause: Happening) -> None:
        """Judges one piece; a finding that is not as it was goes into its rows."""
        kept, piece = self.kept, self.kept.pieces[piece_id]
        new = judge(piece, kept.around[piece_id], self.rules)
        found = {finding.rule: finding for finding in new}
        was = {finding.rule: finding for finding in kept.raw.get(piece_id, ())}
        for rule, old in was.items():
            now = found.get(rule)
            if now is not None and (_alike(old, now) or old.verdict == now.verdict == "meets"):
                continue  # what was met and still is has no history to tell
            since, own = kept.since[piece_id, rule], self._decisions(piece_id, rule)
            ended = how_ended(old, since, now, before or piece, piece, cause, own)
            row = Row(old.verdict, old.case, old.shows, old.reckoned, old.edition, since, ended)
            kept.rows[piece_id, rule] = (*kept.rows.get((piece_id, rule), ()), (row, _behind(old, before or piece)))
        for rule, now in found.items():
            if rule not in was or not _alike(was[rule], now):
                kept.since[piece_id, rule] = cause.happened
        kept.raw[piece_id] = new

    def _stand(self, piece_id: str) -> None:
        kept, piece = self.kept, self.kept.pieces[piece_id]
        kept.findings[piece_id] = tuple(self._standing(finding, piece) for finding in kept.raw[piece_id])
        self.changed.add(piece_id)
        self.changed_notes.update(piece.notes)

    def _standing(self, finding: Finding, piece: Piece) -> Finding:
        rows = self.kept.rows.get((piece.id, finding.rule), ())
        decisions = self._decisions(piece.id, finding.rule)
        if not rows and not decisions and not piece.scrapped:
            return replace(finding, stands="open") if finding.shows == "flag" else finding
        # a row that rests on words which were taken back since is kept, but nothing follows from it
        counted = [row for row, notes in rows if notes <= set(piece.notes)]
        where = stands(
            finding,
            counted,
            decisions,
            scrapped=piece.scrapped,
            looked_meets={d.id for d in decisions if d.looked is not None and self._meets(finding, piece, d)},
            told_after={d.id for d in decisions if self._told_after(piece.id, d)},
        )
        return replace(
            finding,
            stands=where,
            changed_after_answer=any(
                row.verdict in ("departs", "unclear") and row.ended == "corrected_after_answer" for row in counted
            ),
            earlier=tuple(row.to_json() for row, _ in rows),
            wants=wants(finding, where, decisions),
        )

    def _meets(self, finding: Finding, piece: Piece, look: Decision) -> bool:
        """Whether the rule is met with what the lead saw himself put in the place of what was said."""
        if not look.looked.facts:
            return True  # he looked at the piece itself, where only a photo was wanting
        seen = {name: value for name, value in look.looked.facts}
        own = tuple(Fact(name, value, None, None, None, via="lead") for name, value in seen.items())
        rule = [rule for rule in self.rules if rule.id == finding.rule]
        said = tuple(fact for fact in piece.facts if fact.name not in seen)
        found = judge(replace(piece, facts=said + own, unread=adding.told_again(piece.unread, seen)), self.kept.around[piece.id], rule)
        return all(one.verdict == "meets" for one in found)

    def _told_after(self, piece_id: str, decision: Decision) -> bool:
        """Whether a later note says something of the making of the piece (not only that it hangs)."""
        by_name = self.log.pieces[self.kept.key_of[piece_id]].by_name
        return any(
            held.at > decision.at and held.fact.via != "lead" and name not in ("kind", "stage", "joined_to")
            for name, all_held in by_name.items()
            if facts.BY_NAME[name].family != "where"
            for held in all_held
        )

    def _decisions(self, piece_id: str, rule: str) -> list[Decision]:
        return [decision for decision in self.kept.decisions.get(piece_id, ()) if decision.rule == rule]

    # --- what a piece leans on

    def _near(self, pieces: Iterable[Piece | None]) -> set[str]:
        """The pieces of the same runs, and those that show the same photo."""
        pieces = [piece for piece in pieces if piece is not None]
        found = set().union(*(self._of_run(run) for run in {piece.run for piece in pieces}))
        return found & self.kept.pieces.keys() | self._near_by_photo(pieces)

    def _near_by_photo(self, pieces: Iterable[Piece | None]) -> set[str]:
        found = set().union(*(self.kept.prints.get(key, ()) for piece in pieces if piece is not None for key in _keys(piece)))
        return found & self.kept.pieces.keys()

    def _of_run(self, run: str | None) -> set[str]:
        keys = self.log.by_run.get(facts.bare_mark(run or ""), ())
        return {self.kept.id_of[key] for key in keys} if run is not None or len(keys) <= WIDEST_GROUP else set()

    def _groups(self, piece_ids: Iterable[str]) -> list[set[str]]:
        """The pieces by run, each with the whole of its run."""
        by_run: dict[str, set[str]] = {}
        for piece_id in piece_ids:
            run = self.kept.pieces[piece_id].run
            by_run.setdefault(facts.bare_mark(run or ""), set(self._of_run(run))).add(piece_id)
        return [group & self.kept.pieces.keys() for group in by_run.values()]

    def _in_order(self, piece_ids: Iterable[str]) -> list[Piece]:
        pieces = [self.kept.pieces[piece_id] for piece_id in piece_ids]
        return sorted(pieces, key=lambda piece: (piece.made_at, self.kept.key_of[piece.id]))

    def _index_photos(self, old: Piece | None, new: Piece | None) -> None:
        """Keeps which pieces show a photo, and which pieces share one."""
        prints, sharing = self.kept.prints, self.kept.sharing
        before, after = _keys(old), _keys(new)
        piece_id = (old or new).id
        if before == after:
            return
        for key in before - after:
            prints[key] = prints[key] - {piece_id}
        for key in after - before:
            prints[key] = prints.get(key, frozenset()) | {piece_id}
        near = frozenset().union(*(prints[key] for key in after)) - {piece_id}
        now = frozenset(other for other in near if new is not None and runs.share_a_photo(new, self.kept.pieces.get(other)))
        had = sharing.get(piece_id, frozenset())
        for other in had - now:
            sharing[other] = sharing[other] - {piece_id}
        for other in now - had:
            sharing[other] = sharing.get(other, frozenset()) | {piece_id}
        sharing[piece_id] = now

    # --- entries that joined nothing, and what each note is asked

    def _ask(self, notes: set[str]) -> None:
        kept = self.kept
        for note_id in notes:
            note = self.log.notes[note_id]
            self.changed_notes.add(note_id)
            for entry in note.reading.fittings if note.reading is not None else ():
                kept.asked.pop((note_id, entry.position), None)
            for entry in self.log.standing(note):
                key = (note_id, entry.position)
                place = self.log.placed.get(key)
                if isinstance(place, Asks):
                    alone = lone(entry, note, self.log.words_lent_to(note))
                    piece = joined.piece_of(alone, None, self.job, note.received_at, place.why)
                    piece = replace(piece, checked_without_photos=True) if self.without_photos else piece
                    found = judge(piece, runs.site(self.job, ()).around(piece), self.rules)
                    # a lead who looks states nothing of his own: he is only asked which piece he means
                    found = tuple(one for one in found if one.rule == "mark-said") if note.as_lead else found
                    kept.asked[key] = piece, tuple(replace(one, stands="open" if one.shows == "flag" else None) for one in found)

    def ask_notes(self) -> None:
        """The questions of every note that changed, or whose piece did."""
        kept = self.kept
        for note_id in self.changed_notes:
            note = self.log.notes[note_id]
            by_position = {}
            for entry in self.log.standing(note):
                key = (note_id, entry.position)
                place = self.log.placed.get(key)
                if isinstance(place, tuple) and not note.as_lead:
                    by_position[entry.position] = kept.findings[kept.id_of[place]]
                elif key in kept.asked:
                    by_position[entry.position] = kept.asked[key][1]
            kept.questions[note_id] = questions(by_position)


def _keys(piece: Piece | None) -> set[tuple]:
    """Everything that the photos of a piece are looked up by."""
    return set() if piece is None else {key for held in piece.photos for _, keys in runs.prints(held) for key in keys}


def _alike(one: Finding, other: Finding) -> bool:
    return (one.edition, one.verdict, one.case, one.shows) == (other.edition, other.verdict, other.case, other.shows)


def _behind(finding: Finding, piece: Piece) -> frozenset[str]:
    """The notes whose words a finding used; where it used none, the note the piece began with."""
    used = {fact.note for fact in piece.facts if fact.name in finding.facts and fact.note in piece.notes}
    return frozenset(used or piece.notes[:1])


def _two_marks(piece: Joined) -> tuple[str, ...]:
    marks = [held.fact.value for held in piece.by_name.get("mark", ())]
    return ("other-mark", *marks) if len(marks) > 1 else ()
