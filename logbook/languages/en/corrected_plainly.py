"""English that sets a measure right by its number alone: "a hundred degrees, no, three hundred" has the unit once, and "three inches wide, sorry, two" what it measures."""

from __future__ import annotations

from logbook.languages.en.measured_next import _V
from logbook.languages.plainer import Plainer

_NO = r"(?:no|nope|wait|sorry|oops|hold on|hang on|(?:scratch|strike|change) that|correction|i mean|make (?:that|it)|i misspoke|i take (?:that|it) back|take (?:that|it) back|(?:take back|scratch|strike|forget) (?:the|that) last (?:part|bit|thing|one)|my mistake|i lie)"
_FIXES = rf"(?P<j>[.,;]) (?:(?:and|but|well|oh|ah) )*{_NO}(?:[,.:;-]? {_NO})*[,.:;-]? (?:(?:it's|it is|that's|they're|to|more like|really) )*"
_TAKE = r"(?:scratch|strike|forget|erase|delete|ignore|disregard|take back|never ?mind|cancel|scrap|kill|drop)(?: about)?"
_LAST = r"(?:the|that|this|my) (?:very )?last (?:part|bit|thing|piece|one|statement|line|sentence|word|item|count|number)(?: (?:of (?:that|it)|i (?:just )?(?:said|told you|gave you)))?"
_INSTEAD = r"(?=(?:[,.;:-]| -)+ (?:(?:and|but|well|it's|that's|they're|it is|that is|i|we|it|there's|there are|actually|really|in fact|make it|should be|it was|is|was|got),? )*(?:not|never|only|just|didn't|did not|haven't|hasn't|couldn't|isn't|wasn't|ain't|aren't|no|none|nothing|every|taped|stapled|rubbed|wiped|trimmed|one|two|three|\d|an? )(?![\w']))"
_END = r"(?=[.,;!]|$| and| but)"

ENGLISH_CORRECTED_PLAINLY = (
    Plainer(("degrees", "pounds", "lbs"), rf"(?<![\w'/-]){_V} (?P<u>degrees|pounds|lbs){_FIXES}{_V}(?P<x>){_END}", (("x", r" \g<u>"),)),
    Plainer((" wide",), rf"(?<![\w'/-]){_V}(?: |-)inch(?:es)?(?P<w> wide){_FIXES}{_V}(?: inch(?:es)?)?(?P<x>){_END}", (("w", ""), ("x", " wide"))),
    # --- what he said last is taken back, and is told otherwise behind it; a count of sides by its number alone
    Plainer((" last ",), rf"(?<=[.,;!] )(?:(?:no|wait|oh|sorry|actually|and|but|so),? )*{_TAKE} (?P<x>{_LAST}){_INSTEAD}", (("x", "that"),)),
    Plainer(
        (" sides", " side"),
        rf"(?:taped|stapled)(?: (?:on|up|along|down))*(?: (?:all|the))* (?:four|4|three|3) sides{_FIXES}(?:(?:only|just|it's|there's|i only (?:did|got)|i (?:did|got)|make (?:it|that)|like),? )*(?:one|two|three|1|2|3)(?P<x>){_END}",
        (("x", " sides"),),
    ),
)
