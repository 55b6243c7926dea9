"""Whether the clock of a phone can be believed, and where a note stands in time when it cannot.

What the phone said is kept as it came; only the order of the notes and the day of the report follow the server's clock.
"""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import NamedTuple


class Limit(NamedTuple):
    most: timedelta
    why: str  # own judgement, no source


OFF = Limit(
    timedelta(days=1),
    "Nothing is handed in before it is said, and what is being sent arrives within minutes. A zone or a summer hour set wrongly moves a "
    "clock by less than a day; a clock that is farther off puts the note into another day's report.",
)
WAITS = Limit(timedelta(days=366), "No note waits a year on a phone: a browser lets go of what a page keeps that is not opened for so long.")


def believed(spoken_at: datetime, sent_at: datetime | None, received_at: datetime) -> bool:
    """`sent_at`: what the phone's clock said when it sent the note; a file that was handed in later by hand has none."""
    if spoken_at - received_at > OFF.most:
        return False
    return sent_at is None or (abs(sent_at - received_at) <= OFF.most and sent_at - spoken_at <= WAITS.most)


def counted_at(spoken_at: datetime, sent_at: datetime | None, received_at: datetime) -> datetime:
    """When the note counts as spoken: as the phone said, else when it was received, less the time that it lay on the phone."""
    if believed(spoken_at, sent_at, received_at):
        return spoken_at
    lay = timedelta(0) if sent_at is None else sent_at - spoken_at
    return received_at - lay if timedelta(0) <= lay <= WAITS.most else received_at
