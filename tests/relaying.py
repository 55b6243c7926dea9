"""A log that lays everything anew after any change: what the selective log is held against, in laws and in the bench."""

from __future__ import annotations

from logbook.joining.log import Log


class EagerLog(Log):
    """Every event after the first changed one is laid anew, whatever it has to do with the change."""

    def _lay_in_order(self, whens, gone, piece_of):
        whens = set(whens)
        later = {when for when in self.values.places if when > min(whens)}
        super()._lay_in_order(whens | later, gone, piece_of)


def tables(log: Log) -> dict:
    """Everything a log says, table by table."""
    return {name: dict(rows) for name, rows in log.values.tables.items()} | {"back": {note: found for note, found in log.back.items() if found}}
