"""English that sets a measure right by its number alone: "a hundred degrees, no, three hundred" has the unit once, and "three inches wide, sorry, two" what it measures."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
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
    # --- he was right before: "every three, no, two, no, I was right, three"
    Plainer(("right",), rf"(?<=[.,;] )(?:(?:no|wait|hold on|nope),? )*(?P<x>(?:i (?:was|had (?:it|that)) right(?: (?:the first time|before|at first|all along|to begin with))?|(?:the )?first (?:one|number|time) was right|right the first time)[.,;:]? (?:it's |it is |that's )?)(?={_V}{_END})", (("x", "no, "),)),
    Plainer(("right",), rf"(?<![\w'/-]){_V}(?: inch(?:es)?)?(?P<x>[.,;] (?:(?:no|wait|sorry|make that|make it|i mean),? )+{_V}(?: inch(?:es)?)?[.,;] (?:(?:no|wait|nope|hold on),? )+(?:i (?:was|had (?:it|that)) right(?: (?:the first time|before|at first|all along|to begin with))?|(?:the )?first (?:one|number|time) was right))(?=[.;!]|$)", (("x", ""),)),
    # --- what was wrong is named, and the right measure stands alone: "I gave you the wrong length on straight fourteen. It's forty-six"
    *(
        Plainer(
            (" wrong",),
            rf"(?P<w>(?:i|we) (?:gave|told|sent|had|got|said)(?: (?:you|them|him))? the )?(?:wrong (?:{thing})|(?:{thing})(?: (?:i (?:gave|told|sent|said|wrote|had))(?: (?:you|them|him))?)?(?: \w+)? wrong|(?:had|got|gave|told)(?: (?:you|them|him))? the (?:{thing}) wrong)(?: (?:on|for|of) (?:the |that )?(?:{KIND}|number)? ?(?:number )?(?:[a-z]-?)?{NUMBER})?(?: (?:was|is) wrong)?(?P<x>[.,;:] (?:(?:and|but|actually|really|well),? )*(?:it's|it is|it was|that's|should be|it should be|make (?:it|that)|right one is|the right one's)(?: (?:really|actually|supposed to be))*) (?={_V}(?: inch(?:es)?)?{_END})",
            (("w", ""), ("x", says)),
        )
        for thing, says in (("length", ". The length is"), ("(?:staple )?spacing", ". Stapled every"), ("gap", ". The gap is"))
    ),
    Plainer(
        ("length ",),
        rf"length i (?:gave|told|sent|said|wrote|had)(?: (?:you|them|him))? (?:on|for|of) (?:the |that )?(?:{KIND}|number)? ?(?:number )?(?:[a-z]-?)?{NUMBER} (?:was|is) wrong(?P<x>[.,;:] (?:(?:and|but|actually|really|well),? )*(?:it's|it is|it was|that's|should be|it should be|make (?:it|that))(?: (?:really|actually))*) (?={_V}(?: inch(?:es)?)?{_END})",
        (("x", ". The length is"),),
    ),
)
