"""English words for a staple flap that was passed over, or that no staple caught: "missed the bottom run of the flap"."""

from __future__ import annotations

from logbook.languages.language import State

_FLAP = r"(?:stapling |staple )?flaps?"
_WHO = r"(?:i|we)(?:'d|'ve| had| have)?(?: just| all| clean| completely| somehow)*"
_SKIPPED = r"(?:missed|skipped|forgot|forgotten|overlooked|passed over|left out|left off|left alone|ran past|went past)(?: (?:on|all|about|out|over|off))?"
_DID_NOT = r"(?:didn't|did not|never|couldn't|could not|can't|wasn't able to|haven't|forgot to|failed to)(?: (?:even|quite|really|ever|get to|bother to))* (?:get|got|hit|do|done|did|catch|caught|reach|reached|staple|stapled|shoot|shot|nail|nailed|stitch|stitched|finish|finished|touch|touched)(?: (?:at|to|into|in|any|a staple|staples|one|it))*"
_PART = r"(?: (?:the|a|an|one|two|three|my|its|that|this|some|part|most|about|all|every|of|in|on|along|whole|entire|half|bottom|top|left|right|back|front|far|near|first|last|long|short|other|lower|upper|sides?|runs?|rows?|lengths?|stretch|section|bit|piece|corners?|ends?|edges?|spots?|foot|feet|inch|inches|couple|few))*"
_ON = r"(?: (?:on|at|along|in|of|over|down|across)(?: (?:the|a|one|that|its|my|this))?(?: \w+){1,2})?"
_CAUGHT = r"(?:hit|nailed|tacked|touched|reached|got to)"

ENGLISH_FLAP_TOLD: tuple[State, ...] = (
    State(
        "stapled",
        False,
        (
            rf"{_SKIPPED}{_PART} {_FLAP}(?! (?:side|end|board|panel|piece)\b)",
            rf"{_DID_NOT}{_PART} {_FLAP}(?! (?:side|end|board|panel|piece)\b)",
            rf"{_FLAP}{_ON},? (?:that |which )?{_WHO} (?:{_SKIPPED}|{_DID_NOT})",
            rf"{_FLAP}{_ON}(?: (?:just|still|also))* (?:never|didn't|hasn't|wasn't|isn't|did not|was not|is not|has not|ain't|not)(?: (?:been|get|got|gotten|even|yet|all|ever))* {_CAUGHT}",
            rf"{_FLAP}{_ON}(?:'s| is| was| got| has been)?(?: (?:just|still|all))* (?:skipped|missed|forgotten|left out|left loose|left open|loose|flapping|passed over)",
        ),
        ("FLAP",),
        part="side",
        cues=("flap",),
    ),
)
