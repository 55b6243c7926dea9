"""English of a piece that somebody in charge turned down: "the inspector flagged it", "super red-tagged it", "boss says it leaks".

What he thinks of it stays his; that it was turned down is asked about, as what its maker does not trust is. Rows like those of `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.found_by_others import _AT, _ROLES, _WHO
from logbook.languages.plainer import Plainer

_ANY_OF_THEM = rf"(?:{_WHO}|they|he|she|qa|quality|the city|the owner's rep|the gc)"
_IT = r"(?:it|this one|that one|them|this|the whole thing|my (?:tape|work|joint|joints|staples))"
_TURNED_DOWN = rf"(?:flagged|failed|rejected|red[- ]?tagged|tagged|wrote up|kicked back|kicked|turned down|bounced|shot down|didn't like|did not like|doesn't like|wasn't happy with|isn't happy with|wouldn't (?:pass|sign off on|accept|take)|won't (?:pass|sign off on|accept|take)|wants me to (?:redo|fix|do over)|says (?:to |i gotta |i have to )?(?:redo|fix)|told me to (?:redo|fix)) {_IT}(?! (?:as|like|for|because it looked)\b)"
_WANTS = rf"wants {_IT} (?:redone|fixed|done over|torn off|taken down|made over|done again)"
_LEAKS = r"(?:it leaks|it's leaking|it is leaking|there's a leak|it whistles|it's whistling|there's air coming out)"
_SINCE = r"redid|re-?did|so i (?:fixed|redid|re)|(?:fixed|redone|did) it (?:since|now|over|again)|passed|(?:good|fine|okay|ok|happy|likes it) now|took another look"

ENGLISH_TURNED_DOWN = (
    Plainer((*(f" {verb}" for verb in ("flagged", "failed", "rejected", "red", "tagged", "wrote up", "kicked", "turned down", "bounced", "shot down", "didn't", "did not", "doesn't", "wasn't", "isn't", "wouldn't", "won't", "wants", "says", "told")),), rf"{_AT}(?P<x>{_ANY_OF_THEM} (?:just |already |has |had |also |then )*(?:{_TURNED_DOWN}|{_WANTS}))(?=[.,;!]|$| (?:and|but|so|because|yesterday|today|this morning|again)\b)", (("x", "it's no good"),), unless=_SINCE, beside=(*_ROLES, "they", "he ", "she ", "qa", "quality", "city", "rep")),
    Plainer((" leak", " whistl", " air coming"), rf"{_AT}(?P<x>{_ANY_OF_THEM} (?:says|said|thinks|claims|swears|tells me|told me|heard|reckons)(?: that)? )(?={_LEAKS})", (("x", ""),), unless=_SINCE, beside=(*_ROLES, "they", "he ", "she ", "qa", "quality", "city", "rep")),
)
