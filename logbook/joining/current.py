"""What one note says now: its newest reading, what the hand pressed beside it, then the presses in order.

The reading is never changed: a corrected fact carries the value that was heard in `was`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from urllib.parse import unquote

from logbook import facts
from logbook.joining import adding
from logbook.note import Correction, Note, Photo
from logbook.said import Earlier, Entry, Fact, Muffled

TAG = "duct-tag:1:"
_LOST = ("noise", "repetition", "echo", "language", "torn", "too_long", "cut_off")  # why a stretch gave no words; a pause is none


def entries(note: Note) -> tuple[Entry, ...]:
    """The entries of a note as they stand; none where nothing could be read yet."""
    if note.reading is None:
        return ()
    said = _with_tag(note, _with_hand(note, _with_gaps(note, _confirmed(note))))
    for press in note.corrections:
        said = tuple(_pressed(entry, press) if entry.position == press.position else entry for entry in said)
    return said


def _with_gaps(note: Note, entries: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """Every entry with the stretches of the recording that gave no words: any of them may have spoken of it."""
    unheard = () if note.transcript is None else note.transcript.unheard
    lost = tuple(Muffled("", 0, 0, gap.second) for gap in unheard if gap.why in _LOST)
    return tuple(replace(entry, muffled=entry.muffled + lost) for entry in entries) if lost else entries


def _confirmed(note: Note) -> tuple[Entry, ...]:
    """The entries as read; under "that is right" their heard words are confirmed, and nothing that was not heard."""
    if not note.heard_right:
        return note.reading.fittings
    return tuple(
        replace(
            entry,
            facts=tuple(f if f.heard is None else replace(f, confirmed=True) for f in entry.facts),
            muffled=(),
        )
        for entry in note.reading.fittings
    )


def photos(note: Note, said: Sequence[Entry]) -> tuple[Photo, ...]:
    """The photos of a note with the entries they show: by the hand, by the tag, or because there is one entry only."""
    return tuple(_shown(photo, note.job, said) for photo in note.photos)


def _shown(photo: Photo, job: str, said: Sequence[Entry]) -> Photo:
    if photo.of is not None and photo.of_from == "pressed":
        return photo
    if len(said) == 1:
        return replace(photo, of=(said[0].position,), of_from="only")
    marks = {facts.bare_mark(mark) for mark in tag_marks(photo.tags, job)}
    shown = tuple(e.position for e in said if (mark := e.fact("mark")) and facts.bare_mark(mark.value) in marks)
    return replace(photo, of=shown or None, of_from="tag" if shown else None)


def tag_marks(tags: Iterable[str], job: str) -> tuple[str, ...]:
    """The marks that readable tags of this job name; tags of anything else name none."""
    ours = f"{TAG}{job}:"
    return tuple(unquote(tag.removeprefix(ours)) for tag in tags if tag.startswith(ours) and tag != ours)


def taken_back(notes: Sequence[Note]) -> Mapping[str, dict[str, tuple[int, ...] | None]]:
    """What "scrap that" takes back, for the notes of one speaker in the order spoken.

    Note id -> {the note that takes it back: positions, or None for all of it}. `last` is the note before that is
    still standing, `mark` the newest standing note with an entry of that mark (its entries only), `this` the note
    itself. Nobody takes back another person's words.
    """
    back: dict[str, dict[str, tuple[int, ...] | None]] = {}
    standing: list[tuple[Note, tuple[Entry, ...]]] = []
    for note in notes:
        said = entries(note)
        withdraws = None if note.reading is None or note.withdrawn_at else note.reading.withdraws
        if withdraws is None:
            if said and not note.withdrawn_at:
                standing.append((note, said))
            continue
        if withdraws.what == "this":
            back.setdefault(note.id, {})[note.id] = None
            continue
        if withdraws.what == "last" and standing:
            back.setdefault(standing.pop()[0].id, {})[note.id] = None
        elif withdraws.what == "mark" and withdraws.mark is not None:
            _take_mark(note.id, withdraws.mark, standing, back)
        if said:
            standing.append((note, said))
    return back


def _take_mark(by: str, mark: str, standing: list, back: dict) -> None:
    for place in range(len(standing) - 1, -1, -1):
        note, said = standing[place]
        of_mark = [e for e in said if (m := e.fact("mark")) and facts.bare_mark(m.value) == facts.bare_mark(mark)]
        if of_mark:
            back.setdefault(note.id, {})[by] = tuple(e.position for e in of_mark)
            left = tuple(e for e in said if e not in of_mark)
            standing[place : place + 1] = [(note, left)] if left else []
            return


# --- the hand beside the voice


def by_hand(name: str, value: object, via: str = "pressed") -> Fact:
    return Fact(name, value, None, None, None, via=via)


def _with_hand(note: Note, said: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """A pressed run holds for every entry without one; mark and kind for the entry they can only mean."""
    pressed = note.pressed
    if pressed.run is not None:
        said = tuple(e if e.fact("run") else _add(e, by_hand("run", pressed.run)) for e in said)
    for name in ("mark", "kind"):
        value = getattr(pressed, name)
        if value is None:
            continue
        without = [e for e in said if e.fact(name) is None]
        if len(said) == 1:
            said = (_beside(said[0], by_hand(name, value)),)
        elif len(without) == 1 and not any(_same(name, e.fact(name).value, value) for e in said if e.fact(name)):
            said = tuple(_add(e, by_hand(name, value)) if e is without[0] else e for e in said)
    return said


def _with_tag(note: Note, said: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """One entry without a mark, and one mark on the tags of its photos: that is its mark."""
    if len(said) != 1 or said[0].fact("mark"):
        return said
    marks = {facts.bare_mark(m): m for photo in note.photos for m in tag_marks(photo.tags, note.job)}
    return (_add(said[0], by_hand("mark", *marks.values(), via="tag")),) if len(marks) == 1 else said


def _beside(entry: Entry, fact: Fact) -> Entry:
    """Adds what the hand pressed; where the mouth said otherwise both stand, in conflict."""
    spoken = [f for f in entry.facts if f.name == fact.name]
    if not spoken:
        return _add(entry, fact)
    if any(_same(fact.name, f.value, fact.value) for f in spoken):
        return entry
    doubted = tuple(replace(f, conflict=True) if f in spoken else f for f in entry.facts)
    return replace(entry, facts=(replace(fact, conflict=True), *doubted))


def _add(entry: Entry, fact: Fact) -> Entry:
    return replace(entry, facts=(*entry.facts, fact))


def _pressed(entry: Entry, press: Correction) -> Entry:
    """The entry with one fact set right by a press; a press of None says "I did not say that". It also answers what was not understood of it."""
    entry = replace(entry, unread=adding.told_again(entry.unread, (press.name,)))
    old = [f for f in entry.facts if f.name == press.name]
    gone = tuple(e for f in old for e in (*f.was, Earlier(f.value, f.words, f.start, f.end)))
    if press.value is None:
        named = tuple(replace(e, name=press.name) for e in gone)
        return replace(entry, facts=tuple(f for f in entry.facts if f not in old), withdrawn=(*entry.withdrawn, *named))
    new = replace(by_hand(press.name, press.value), was=gone)
    if not old:
        return _add(entry, new)
    return replace(entry, facts=tuple(new if f is old[0] else f for f in entry.facts if f is old[0] or f not in old))


def _same(name: str, one: object, other: object) -> bool:
    return facts.bare_mark(one) == facts.bare_mark(other) if name in ("mark", "run") else one == other
