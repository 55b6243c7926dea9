"""A user's mistake is a value with a place and a cure; only broken machinery raises.

A `Mistake` keeps a wording key and the values of its sentence, so that the same mistake can be told in
the reader's language. The texts live in `wording/<language>/mistakes.toml` as `<key>.error` and `<key>.cure`;
every error says what was expected, what came, and that nothing was lost.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

OK, FLAGGED, BAD = 0, 1, 2  # the exit codes of every verb: done, something flagged, bad input or machinery


@dataclass(frozen=True)
class Mistake:
    """What a person can put right.

    `key` names the sentence, `where` the place (a file and line, a form field, a photo), `values` what the
    sentence needs (what was expected, what came).
    """

    key: str
    where: str = ""
    values: Mapping[str, object] = field(default_factory=lambda: MappingProxyType({}))


class Broken(Exception):
    """Machinery that cannot go on: carries the `Mistake` that tells a person what to do about it."""

    def __init__(self, mistake: Mistake):
        super().__init__(mistake.key)
        self.mistake = mistake
