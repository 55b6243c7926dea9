"""English of the hour: "it's ten to twelve" and "at twenty past three this morning" are no pieces from ten to twelve, and no measure.

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_HOUR = r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|noon|1[0-2]|[1-9])"
_TIME = rf"(?:(?:a )?quarter|half|five|ten|twenty|twenty[- ]five|10|20|25)(?: minutes)? (?:to|of|till|until|before|past|after) {_HOUR}(?: o'clock)?(?![\w'/-])(?! (?:by|x|inch|inches|feet|foot|degrees|and a|wide|long|apart|sides?)(?![\w']))"
_CUES = (" to ", " of ", " till ", " until ", " before ", " past ", " after ")

ENGLISH_BY_THE_CLOCK = (
    Plainer(_CUES, rf"(?:^|(?<=[.!?;] ))(?:(?:okay|ok|so|well|man|hey|and|but|now|already|damn|shoot),? )*(?:it's|it is|it was)(?: (?:about|almost|nearly|already|only|just|like|around|now))* (?P<x>{_TIME})(?=[.,;!]|$| now| already| when | in the | and | so | on | here| sharp| today)", (("x", "late"),)),
    Plainer(_CUES, rf"(?P<x>(?:at|by|since|around|about|before|till|until) (?:about |around |almost |nearly )?{_TIME}) (?=(?:in the (?:morning|afternoon|evening)|this (?:morning|afternoon|evening)|today|yesterday|last night|sharp|on the dot|by the clock)(?![\w']))", (("x", "early"),)),
    # --- "Okay so, eleven thirty. It's a straight, twelve by ten": the hour in a sentence of its own, the size behind it
    Plainer((" thirty.", " fifteen.", " forty-five.", " forty five."), rf"^(?:(?:okay|ok|so|well|alright|all right|man|hey|yeah|uh|um|and|now|right|let's see)[,.]? )+(?P<x>{_HOUR}[ -](?:thirty|fifteen|forty[- ]five))(?=[.])", (("x", "early"),), beside=(" by ", "x")),
)
