"""Many frames over one row: which of them can find something is known at once, by the concepts that stand in the row."""

from __future__ import annotations

from functools import cached_property

from logbook.reading.clauses.claims import Claim, Found, Frame
from logbook.reading.clauses.grammar import Row
from logbook.record import record


@record
class Frames:
    """Frames in order; what one has spent the next cannot read."""

    rows: tuple[Frame, ...]

    @cached_property
    def _masks(self) -> tuple[dict[str, int], int, int]:
        """The sets that hold each letter, those that are not there, and how many a frame has at the most. A frame is a bit of a number, once for each of its sets (`Frame.needs`)."""
        wide, layers = len(self.rows), max(len(frame.needs) for frame in self.rows)
        masks: dict[str, int] = {}
        free = 0
        for place, frame in enumerate(self.rows):
            for layer in range(layers):
                bit = 1 << layer * wide + place
                if layer >= len(frame.needs):
                    free |= bit
                    continue
                for letter in frame.needs[layer]:
                    masks[letter] = masks.get(letter, 0) | bit
        return masks, free, layers

    def standing(self, row: Row) -> list[Frame]:
        """The frames of each of whose sets the row holds a letter."""
        masks, stand, layers = self._masks
        for letter in row.letters & masks.keys():
            stand |= masks[letter]
        wide = len(self.rows)
        able = (1 << wide) - 1
        for _ in range(layers):
            able &= stand
            stand >>= wide
        found = []
        while able:
            found.append(self.rows[(able & -able).bit_length() - 1])
            able &= able - 1
        return found

    def run(self, row: Row, taken: set[int]) -> list[Claim]:
        """What they find in the row."""
        made: list[Claim] = []
        for frame in self.standing(row):
            if frame.regex.search(row.string) is None:  # so most of them
                continue
            found = [one for match in frame.regex.finditer(row.string) for one in frame.build(Found(row, match)) or () if taken.isdisjoint(one.uses)]
            taken.update([at for one in found for at in one.uses])
            made += found
        return made
