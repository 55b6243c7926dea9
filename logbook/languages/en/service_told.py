"""English of what a line runs at, whoever says it: "the fan guy told me that line runs at three inches of static", "140 will see four inches of water, they tell me".

What pressure and what heat a piece stands in is never the installer's own doing: he has it from others, and it is so all the same. What should be, or what the
most is, stays another's words. Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.measured import _M
from logbook.languages.plainer import Plainer

_WHO = r"(?:they|he|she|somebody|(?:the|that|their|our) (?:\w+ ){0,2}?(?:guys?|man|men|engineers?|foreman|boss|super|lead|balancer|owner|contractor|tech|crew|print|sheet|drawing|schedule|nameplate))"
_SAYS = r"(?:told me|tells me|told us|tell me|tell us|says?|said|claims?|keeps? saying|has|shows?|puts)"
_WATER = r"(?:static(?: pressure)?|pressure|inches of water|(?:of )?water(?: gauge| column)?|w\.? ?g|w\.? ?c)"
_WISHED = r"(?![^.?!]*(?<![\w'])(?:should|shouldn't|supposed|can't|cannot|never|not|isn't|don't|doesn't|won't|max|maximum|most|limit|allowed|rated|good for|up to|no more|if)(?![\w']))"
_AT = rf"(?:(?:about |around |like |at )*{_M}(?: inch(?:es)?)?(?: of)? {_WATER}|(?:static(?: pressure)?|pressure)(?: \w+){{0,4}}?(?:'s| is| was| of) (?:about |around )?{_M}(?: inch(?:es)?)?)"
_HOT = rf"(?:about |around |like |at )*(?:a hundred|(?:one|two|three|four|five|six|a) hundred(?: and)?(?: \w+)?(?: \w+)?|\d{{2,3}}|\w+ (?:fifty|eighty|ten|twenty|seventy five|seventy|sixty|ninety)|{_M})(?:[- ]degrees?)"
_LEADS = r"(?:^|(?<=[.!?;,] )|(?<=so )|(?<=and )|(?<=but )|(?<=because ))"
_CUES = ("static", "pressure", "of water", "degree")

ENGLISH_SERVICE_TOLD = (
    Plainer((" told ", " tell ", " tells ", " say ", " says ", " said ", " claim", " saying "), rf"{_LEADS}(?P<x>{_WHO} {_SAYS}(?: that)?,? ){_WISHED}(?=[^.?!]{{3,70}}?(?:{_AT}|{_HOT}))", (("x", ""),), beside=_CUES),
    Plainer((" told ", " tell ", " tells ", " say", " said"), rf"(?:{_AT}|{_HOT})(?: in it| there| on it)?(?P<x>,? (?:so |or so |that's what |at least that's what )?(?:{_WHO} (?:told me|tells? me|told us|says?|said)|i'm told|i was told))(?=[.;!]|$)", (("x", ""),), beside=_CUES, unless=r"(?<![\w'])(?:should|supposed|can't|cannot|max|maximum|limit|allowed|rated)(?![\w'])"),
    Plainer(
        (" will ", "'ll ", " going to ", " has to ", " gonna "),
        rf"(?P<x>(?:will|is going to|are going to|has to|is gonna)(?: only| probably)? (?:see|get|have|take|hold|carry|run at|run|be at|be under))(?= {_AT})",
        (("x", "sees"),),
        beside=_CUES,
        unless=r"(?<![\w'])if(?![\w'])",
    ),
    Plainer((" will be", "'ll be", " going to be", " would be"), rf"(?<![\w'])air(?: [\w'-]+){{0,5}}?(?P<x> (?:will be|is going to be|would be|'ll be)|'ll be)(?= (?:at |about |around )?{_HOT})", (("x", " is"),), beside=("degree",), unless=r"(?<![\w'])if(?![\w'])"),
    Plainer(("according to", " per the "), rf"(?P<x>,? ?(?:according to|per) (?:the|that|their|our) (?:\w+ )?(?:schedule|engineer|balancer|nameplate|super|foreman|boss)(?: (?:on|by|in|at) (?:the|that) \w+)?,?)(?=[.;!]|$| [^.?!]*(?:{_HOT}|{_AT}))", (("x", ""),), beside=_CUES, unless=r"(?<![\w'])(?:should|supposed|can't|cannot|max|maximum|limit|allowed|rated)(?![\w'])"),
    Plainer((" run ", " runs ", " running "), rf"{_LEADS}(?P<x>(?:they|he|she)(?:'re| are|'ll| will)? (?:run|runs|running) )(?:that|the|this)(?: \w+){{1,2}}?(?P<y>) at (?={_AT}|{_HOT})", (("x", ""), ("y", " runs")), beside=_CUES),
    Plainer((" blow ", " push ", " send ", " blowing ", " pushing "), rf"{_LEADS}(?P<x>(?:they'll|they will|they're going to|they|they're gonna|it'll|it will) (?:blow|push|send|be blowing|be pushing))(?= {_HOT})", (("x", "the heater blows"),), beside=("degree",)),
    Plainer(("oven ", "dryer ", "kiln "), r"(?:that|the|this) (?P<x>(?:oven|dryer|kiln) )(?=(?:duct|line|run|main)(?: [^.?!,]{1,30})? degrees)", (("x", ""),), beside=("degree",)),
    # --- a slope told behind how it is
    Plainer((" steep",), rf"(?:^|(?<=[.!?;,] )|(?<=so )|(?<=and )|(?<=but ))(?P<x>(?:it's|it is|that's|the (?:slope|taper|side|drop)(?:'s| is)|slope(?:'s| is))(?: (?:pretty|too|kind of|a bit|really|very|a little|way too|steeper|quite))* steep(?:er)?(?:,|:|, at|,? about|,? like)? )(?=(?:about |like |at )?{_M}(?: inch(?:es)?)? (?:in|over) )", (("x", "the slope is "),)),
    Plainer((" drop in ", " drop over ", " rise in ", " rise over "), rf"(?:an? |about )*(?P<x>(?P<m>{_M})(?: inch(?:es)?)? (?P<v>drop|rise)) (?=(?:in|over) (?:about )?{_M})", (("x", r"\g<v>s \g<m> inches"),), beside=("transition", "reducer", "taper", "slope")),
)
