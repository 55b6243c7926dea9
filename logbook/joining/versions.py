"""Values that change along a row of events, each known as it stood at any event.

Whoever lays an event asks and puts values through `get` and `put`; what it asked and what it put is remembered. Laid
anew in the midst of the row, an event tells which later ones saw another value because of it, and only those have to
be laid anew: the cost follows what the change touches, not how long the row is behind it.

`When` is anything ordered that names one event; a place is (table, key).
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass, field
from typing import NamedTuple

ABSENT = object()
_ASKED = object()  # in place of an old value: the event only looked

Place = tuple[str, object]


class Touch(NamedTuple):
    """An event that looked at a place or changed it; `old` is what stood there before, or `_ASKED`."""

    when: tuple
    old: object


@dataclass
class Versions:
    """`tables` hold the values after the last event. `touches` of a place stand in the order of their events."""

    tables: dict[str, dict] = field(default_factory=dict)
    touches: dict[Place, tuple[Touch, ...]] = field(default_factory=dict)
    places: dict[tuple, tuple[Place, ...]] = field(default_factory=dict)  # event -> what it touched
    changed: set[Place] = field(default_factory=set)  # places whose last value was put anew; whoever looks empties it
    laying: tuple | None = None
    asked: set[Place] = field(default_factory=set)
    put_now: dict[Place, object] = field(default_factory=dict)

    def copy(self) -> Versions:
        """Versions that can go on without changing these: everything in them is immutable."""
        return Versions({name: dict(rows) for name, rows in self.tables.items()}, dict(self.touches), dict(self.places))

    # --- while an event is laid

    def begin(self, when: tuple) -> None:
        self.laying, self.asked, self.put_now = when, set(), {}

    def get(self, table: str, key, otherwise=None):
        """The value as it stands at the event that is laid, or after the last one where none is."""
        place = (table, key)
        if self.laying is None:
            return self.tables[table].get(key, otherwise)
        if place in self.put_now:
            return self.put_now[place]
        self.asked.add(place)
        value = self._before(place, self.laying)
        return otherwise if value is ABSENT else value

    def put(self, table: str, key, value) -> None:
        self.put_now[table, key] = value

    def end(self) -> list[tuple]:
        """The later events that saw another value because of this one."""
        when, again = self.laying, []
        touched = {*self.asked, *self.put_now}
        for place in touched.union(self.places.get(when, ())):
            again += self._settle(place, when, place in touched)
        if touched:
            self.places[when] = tuple(touched)
        else:
            self.places.pop(when, None)
        self.laying, self.asked, self.put_now = None, set(), {}
        return again

    def _settle(self, place: Place, when: tuple, touched: bool) -> list[tuple]:
        """Puts what the event did to one place into its row of touches."""
        touches = self.touches.get(place, ())
        at = bisect_left(touches, when, key=_when)
        own = touches[at] if at < len(touches) and touches[at].when == when else None
        later = touches[at + (own is not None) :]
        changes = _next_change(later)
        after = self._last(place) if changes is None else later[changes].old  # as the later events know it
        before = own.old if own is not None and own.old is not _ASKED else after
        now = self.put_now.get(place, before)
        again: list[tuple] = []
        if now is not after and not (later and now == after):
            if changes is None:
                self._set_last(place, now)
            else:
                later = (*later[:changes], Touch(later[changes].when, now), *later[changes + 1 :])
            again = [touch.when for touch in (later if changes is None else later[: changes + 1])]
        mine = (Touch(when, before if now is not before else _ASKED),) if touched else ()
        whole = touches[:at] + mine + later
        if whole:
            self.touches[place] = whole
        else:
            self.touches.pop(place, None)
        return again

    # --- values

    def after(self, table: str, key, when: tuple, otherwise=None):
        """The value right after an event that was laid."""
        touches = self.touches.get((table, key), ())
        value = self._known(touches, bisect_left(touches, when, key=_when), (table, key), past=when)
        return otherwise if value is ABSENT else value

    def seen_by(self, table: str, key, since: tuple) -> list[tuple]:
        """The events after `since` that looked at a place or changed it."""
        return [touch.when for touch in self.touches.get((table, key), ()) if touch.when > since]

    def _before(self, place: Place, when: tuple):
        touches = self.touches.get(place, ())
        return self._known(touches, bisect_left(touches, when, key=_when), place)

    def _known(self, touches: tuple[Touch, ...], at: int, place: Place, past: tuple | None = None):
        for touch in touches[at:]:
            if touch.old is not _ASKED and touch.when != past:
                return touch.old
        return self._last(place)

    def _last(self, place: Place):
        return self.tables[place[0]].get(place[1], ABSENT)

    def _set_last(self, place: Place, value) -> None:
        table, key = place
        self.changed.add(place)
        if value is ABSENT:
            self.tables[table].pop(key, None)
        else:
            self.tables[table][key] = value


def _when(touch: Touch) -> tuple:
    return touch.when


def _next_change(touches: tuple[Touch, ...]) -> int | None:
    return next((n for n, touch in enumerate(touches) if touch.old is not _ASKED), None)
