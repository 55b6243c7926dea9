"""English that tells of other years and other men: patterns over sketches of sentences."""

from __future__ import annotations

from logbook.languages.en.asides import _SO
from logbook.languages.told import Aside

_MAN = r"(?:partner|boss|foreman|dad|father|granddad|grandpa|grandfather|uncle|teacher|journeyman|fella|fellow|guy|man|kid|lead|helper|cousin|brother|instructor|old[- ]timer|buddy)"
_YEAR = r"(?:(?:the )?(?:(?:late |early |mid )?(?:fifties|sixties|seventies|eighties|nineties)|(?:fif|six|seven|eigh|nine)ty(?:-[a-z]+)?|19\d\d|20[01]\d|'?[5-9]\d(?:'?s)?|nineteen [a-z]+(?:-[a-z]+)?(?: [a-z]+)?))"

ENGLISH_LONG_AGO = (
    # --- years ago
    Aside(rf"(?P<x>{_SO}(?:back )?in {_YEAR}(?: ,)? (?:i|we|they|he|my|our) (?:\w+ )?(?:built|wrapped|used|ran|made|hung|closed|had|did|worked|put up|<d>) (?:a|an|the whole|whole|every|nothing but|everything|all our|them|those|thousands|hundreds|miles|cloth|duct)(?![\w'])[^.?]*)(?= [.?]|$)", ("in ",), unless=r"(?<![\w'])(?:this one|#|mine)(?![\w'])"),
    Aside(rf"(?P<x>{_SO}(?:back in (?:the day|my day|the old days|those days|school|the service|the navy|the army)|back when|years (?:ago|back)|(?:[\w-]+ ){{1,2}}years (?:ago|back)|when i (?:was (?:a |an )?(?:kid|apprentice|boy|young|starting out|coming up|green|new|helper)|started out|came up|broke in)|in my day|in the old days)(?![\w'])[^.?]*)(?= [.?]|$)", ("back in", "back when", "years ", "when i", "in my day", "in the old"), unless=r"(?<![\w'])(?:this one|#|mine)(?![\w'])"),
    # --- what somebody used to do
    Aside(rf"(?P<x>{_SO}(?:my|the|this|that|one|an?|our) (?:[\w-]+ ){{0,3}}?{_MAN}(?![\w'])[^.?]*? (?:used to|would always|always used to|was known to) (?:<[nbd]>|[\w-]+)[^.?]*?)(?= [.?]|$| (?:so|and|but) (?:i|we)(?![\w']))", ("used to", "would always", "was known"), unless=r"(?<![\w'])(?:this one|#|mine|i|me the)(?![\w'])"),
    Aside(rf"(?P<x>{_SO}(?:he|she|they|we|i) used to <[nbd]>[^.?]*?)(?= [.?]|$| (?:so|and|but|now) (?:i|we|now)(?![\w']))", ("used to",), unless=r"(?<![\w'])(?:this one|#|mine)(?![\w'])"),
)
