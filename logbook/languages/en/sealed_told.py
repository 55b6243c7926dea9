"""English words for a side that is not sealed, and for staples that were turned the wrong way: "isn't sealed on the ceiling side", "turned them in instead of out"."""

from __future__ import annotations

from logbook.languages.language import State
from logbook.languages.plainer import Plainer

_NOT = r"(?:not|never|isn't|wasn't|ain't|hasn't been|has not been|didn't get|never got|won't be|not getting)(?: (?:all|quite|really|even|yet|fully))*"
_SEALED = r"(?:sealed|closed|closed up|closed in|sealed up|sealed off)(?: (?:in|off|up|over|all the way))*"
_WHERE = r"(?:on|at|along|in|around|down|over|underneath|under)(?: (?:the|one|its|that|a|this|both|two|either))?(?: [\w-]+){0,2}?(?: (?:sides?|ends?|top|bottom|back|left|right|front|seams?|joints?|corners?|edges?|heel|throat|cheeks?|underside|flange|miter))"
_TURNED = r"(?:turned|bent|folded|curled|clinched|rolled|pointed|pointing|facing|went|gone|splayed|shot|set)(?: (?:the|all|my|half|most|some|a few|of|them|it|'em|staples?|legs?|over))*"
_INSTEAD = r"(?:,? (?:instead of|not|rather than|and not|when (?:they|it) should(?:'ve| have)? (?:be|been|gone|go)))"
_CLOSURE = r"(?:tape|mastic|foil|foil tape|181 ?a-?[phm])"
_SOME = r"(?:(?:about|only|just|maybe|like|the) )*(?:half|part|most|some|one|two|three|a couple|a third|a quarter)(?: of)?(?: (?:it|them|the \w+|sides?|seams?|joints?|ends?))?"

ENGLISH_SEALED_TOLD: tuple[State, ...] = (
    State("taped", False, (rf"{_NOT} {_SEALED} {_WHERE}",), ("SEALED", "TAPED", "STAPLED", "K_STRAIGHT", "K_ELBOW", "K_TEE", "K_BRANCH", "K_WYE", "K_END_CAP", "K_TRANSITION", "K_OFFSET", "K_PLENUM", "K_COLLAR", "FITTING"), apart=True, part="side", cues=("sealed", "closed")),
    State("taped", False, (rf"(?:only|just|barely)(?: had| got| have)?(?: enough)? {_CLOSURE}(?: left)?(?: enough)? for {_SOME}", rf"(?:had|got|have)(?: enough)? {_CLOSURE}(?: left)?(?: enough)? for {_SOME} only"), part="side", cues=(" for ",)),
    State("staple_clinch", "inward", (rf"{_TURNED} in(?:ward|wards|side)?{_INSTEAD} (?:turned |bent )?out(?:ward|wards|side)?",), ("STAPLES", "STAPLE", "STAPLED", "LEG", "CLINCHED"), apart=True, uses=True, cues=(" in",)),
    State("staple_clinch", "outward", (rf"{_TURNED} out(?:ward|wards|side)?{_INSTEAD} (?:turned |bent )?in(?:ward|wards|side)?",), ("STAPLES", "STAPLE", "STAPLED", "LEG", "CLINCHED"), apart=True, uses=True, cues=(" out",)),
)

ENGLISH_TURNED_PLAINLY = (
    Plainer(("got nothing",), r"(?:(?:top|bottom|left|right|back|front|fourth|last|other|third|second|first|one|side|end|heel|throat|flange|flap|corner|seam|joint|edge)(?: (?:one|side|end))?)(?P<x>'s got| has got| got) nothing (?:at all )?(?:in|on) it(?![\w'])", (("x", " has"),)),
    Plainer((" not in",), rf"(?:staples?|legs?)(?: [\w']+){{0,4}}? {_TURNED} out(?P<x>,? (?:and )?not in)(?=[.,;!]|$)", (("x", ""),)),
    Plainer((" not out",), rf"(?:staples?|legs?)(?: [\w']+){{0,4}}? {_TURNED} (?P<w>in)(?P<x>,? (?:and )?not out)(?=[.,;!]|$)", (("w", "inward"), ("x", ""))),
)
