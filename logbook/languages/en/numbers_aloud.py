"""English of a piece whose number comes by itself while one talks: "on 45 the tee", "the straight one 18", "the straight by the boiler, 99 I think it was, no 98".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.plainer import Plainer

_UM = r"(?:,? (?:uh|um|er|ah))*,?"
_WHERE = r"(?: (?:by|over|near|behind|at|in|next to|above|under|off|for|down|up|along|across from) (?:the |my |that )?[a-z']+(?: [a-z']+)??)?"
_NAMES = rf"(?:(?:the|that|this|my|a) (?:[a-z]+ )?{KIND}{_WHERE}{_UM} |(?:^|(?<=[.;!?,] )|(?<=so )|(?<=okay )|(?<=uh )|(?<=um ))(?:it was|it's|it is|this is|this was|that's|that was|i'm on|i was on)(?: number)? )"
_THINK = r"(?:,? (?:i think|i believe|i guess|i wanna say|i want to say|maybe)(?: (?:it was|it is|it's|that was))?)"
_NO_MEASURE = r"(?![\w'/-])(?! ?(?:by|x|inch(?:es)?|in|wide|long|feet|foot|degrees?|cfm|and a)(?![\w']))"

ENGLISH_NUMBERS_ALOUD = (
    Plainer(
        (" one ", " one, "),
        rf"(?<![\w'])(?:the|that|this|another) {KIND}(?P<x> one,?{_UM} )(?:number )?\d{{1,3}}{_NO_MEASURE}",
        (("x", " number "),),
        unless=r"number one",
    ),
    Plainer(
        tuple(f"on {the}{digit}" for the in ("", "the ") for digit in range(1, 10)),
        rf"(?<![\w'])on (?P<x>(?:the )?)(?=\d{{2,3}},? (?:the|a|an|that|which is|that's)(?: (?:the|a|an))? (?:[a-z]+ )?{KIND}(?![\w']))",
        (("x", "number "),),
        unless=r"(?:floor|page|sheet|drawing)",
    ),
    Plainer(
        (" i think", " i believe", " i guess", " i wanna say", " i want to say", " maybe"),
        rf"{_NAMES}(?P<x>\d{{2,3}}{_THINK}{_UM},? (?:no|nope|actually|wait|hold on)(?:,? (?:no|wait|it was|it's|that was|that's|make it|make that|uh|um))*,? )(?P<n>\d{{2,3}})(?P<y>(?:,? (?P=n))?){_NO_MEASURE}",
        (("x", "number "), ("y", "")),
    ),
    Plainer(
        (" i think", " i believe", " i guess", " i wanna say", " i want to say"),
        rf"(?:the|that|this|my) (?:[a-z]+ )?{KIND}{_WHERE}{_UM} (?P<x>)\d{{2,3}}(?P<y>{_THINK})(?=[.,;!]|$| (?:i|it|that|we|stapled|taped|rubbed) )",
        (("x", "number "), ("y", "")),
        unless=r" no,? |actually|wait|hold on",
    ),
)
