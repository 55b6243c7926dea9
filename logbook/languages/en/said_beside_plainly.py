"""English of a departure said in the same breath as what it departs from: "stapled every two but went three by the tee", "the bottom ones got to three"; and the plain words for it."""

from __future__ import annotations

from logbook.languages.en.numbers import SAID_NUMBER
from logbook.languages.plainer import Plainer

_APART = rf"(?:{SAID_NUMBER}(?: ?inch(?:es)?)?(?![\w'/-]))"
_STAPLED = rf"stapl\w+(?: (?:it|this one|them|all|on|the|\w+ side))*,? (?:every|at) {_APART}"

ENGLISH_SAID_BESIDE_PLAINLY = (
    # --- wider at one place
    Plainer((" went ", " ran ", " go ", " got "), rf"{_STAPLED}(?:,? (?:but|then|and|except))*,? (?:i |we )?(?P<x>(?:had to )?(?:went|ran|go|got) (?:with )?)(?={_APART} (?:by|near|at|around|along|where|on|toward|towards|under|behind|across) )", (("x", "then there's a stretch at "),)),
    # --- tape that nowhere came up
    Plainer((" on me", " on us", " anywhere", " at all", " a bit"), r"tape (?:(?:'s|is|has|was) )?(?:didn't|did not|isn't|is not|hasn't|has not|wasn't|won't|never|not) (?:lift(?:ed|ing)?|peel(?:ed|ing)?|curl(?:ed|ing)?|c[oa]m(?:e|ing) (?:loose|off)|let(?:ting)? go)(?P<x>(?: (?:on (?:me|us)|anywhere|at all|a bit|one bit))+)(?![\w'])", (("x", ""),)),
    Plainer((" come up", " coming up"), r"tape (?:(?:'s|is) )?(?:didn't|did not|isn't|is not|won't|never|not) (?P<x>com(?:e|ing) up)(?=[.,;!]|$| (?:on|anywhere|at|a|yet)\b)", (("x", "lift"),)),
    Plainer((" got ",), rf"(?:staples?|ones|some|few|they|spacing)(?: (?:on|along|at|in|by|near) the \w+(?: \w+)?)? (?P<x>got(?: out| up| wide)?) to {_APART}(?=[.,;]|$| (?:apart|at|by|on|near|where|along|in)\b)", (("x", "went"),), beside=("stapl",)),
)
