"""Pieces that he names and says not to be his."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.languages.language import Language
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention

_NOT_MINE = re.compile(r"^(?:'s| is| was)? ?(?:isn't|wasn't|is not|was not|not|ain't) (?:ours|mine|our|my|one of (?:ours|mine)|(?:a )?(?:piece|fitting) of (?:ours|mine))\b")


def disowned(row: Row, found: list[Mention], language: Language) -> list[Mention]:
    """ "Straight thirty isn't ours, we only did thirty-one": no piece of this speaker's."""
    kept = [one for one in found if not _NOT_MINE.match(row.text[row.items[one.last - 1].end : row.items[one.last - 1].end + 40].lower().replace("’", "'"))]
    gone = [one for one in found if one not in kept]
    return [replace(one, kind=gone[0].kind, kind_at=gone[0].kind_at) if gone and one.kind is None and one.mark is not None and one.first > gone[0].last and one is kept[0] else one for one in kept]
