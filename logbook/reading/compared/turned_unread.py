"""Words that turn what stands behind them and that nobody has read: what they turn states nothing, since it could be the contrary.

"I wouldn't go looking for tape on it": the tape is not on it for its name. It stays among what was not understood.
"""

from __future__ import annotations

from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.parts import Part

_GOOD = frozenset("taped stapled rubbed_down vanes damage_repaired trimmed surface_clean preheated tabs_bent panel_seated cross_tabs scrim_shows reinforced".split())
_CHOICES = frozenset("facing_damage closure closure_mark groove_step staple_clinch air_leaves_by".split())
_NEAR = 7  # items
_ENDS = ("COMMA", "STOP", "QUERY", "AND", "BUT")


def without_turned(row: Row, cut_up: tuple[Part, ...], claims: list[Claim], told: set[int], language: Language) -> list[Claim]:
    """The claims without those of work done, and of how it is, that stand behind such a word in their part of a clause."""
    turns = language.told.asides.turns
    if not turns or turns.isdisjoint(row.text.lower().replace("\u2019", "'").split()):
        return claims
    read = {at for one in claims for at in range(one.first, one.last)} | told
    turning = [at for at, item in enumerate(row.items) if at not in read and _turns(row, at, turns, language)]
    if not turning:
        return claims
    return [one for one in claims if not (_is_good(one) and any(_stands_under(row, at, one) for at in turning))]


def _turns(row: Row, at: int, turns: frozenset[str], language: Language) -> bool:
    said = row.words(at, at + 1).lower().replace("\u2019", "'").split()
    behind = row.words(at + 1, at + 2).lower().split() if at + 1 < len(row.items) else []
    return bool(said) and said[-1] in turns and not (behind and behind[0] in language.told.asides.adds)


def _is_good(one: Claim) -> bool:
    return (one.name in _GOOD and one.value is True and not one.pending) or (one.name == "gap" and one.value == 0) or one.name in _CHOICES


def _stands_under(row: Row, at: int, one: Claim) -> bool:
    return 0 < one.first - at <= _NEAR and not any(row.items[k].concept in _ENDS for k in range(at, one.first))
