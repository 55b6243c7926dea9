"""English that sets a measure right by its number alone: "a hundred degrees, no, three hundred" has the unit once, and "three inches wide, sorry, two" what it measures."""

from __future__ import annotations

from logbook.languages.en.measured_next import _V
from logbook.languages.plainer import Plainer

_NO = r"(?:no|nope|wait|sorry|oops|hold on|hang on|(?:scratch|strike|change) that|correction|i mean|make (?:that|it)|i misspoke|i take (?:that|it) back|my mistake|i lie)"
_FIXES = rf"(?P<j>[.,;]) (?:(?:and|but|well|oh|ah) )*{_NO}(?:[,.:;-]? {_NO})*[,.:;-]? (?:(?:it's|it is|that's|they're|to|more like|really) )*"
_END = r"(?=[.,;!]|$| and| but)"

ENGLISH_CORRECTED_PLAINLY = (
    Plainer(("degrees", "pounds", "lbs"), rf"(?<![\w'/-]){_V} (?P<u>degrees|pounds|lbs){_FIXES}{_V}(?P<x>){_END}", (("x", r" \g<u>"),)),
    Plainer((" wide",), rf"(?<![\w'/-]){_V}(?: |-)inch(?:es)?(?P<w> wide){_FIXES}{_V}(?: inch(?:es)?)?(?P<x>){_END}", (("w", ""), ("x", " wide"))),
)
