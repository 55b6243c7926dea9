"""English of who learned it late and names a piece as he would at home: "the 5 already it is", "in the 5 I leave an opening", "are four sides and I taped the three".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_ACT = r"(?:taped|stapled|rubbed(?: down)?|finished|hung|closed|made|cut|trimmed|wiped|fixed|left|tape|staple|rub|finish|hang|close|make)"
_N = r"\d{1,3}(?![\d/.x-])(?! (?:by|inch|inches|sides?|seams?|staples?|tabs?|vanes|feet|foot|of|o'clock|pieces?|degrees|[0-9])(?![\w']))"

ENGLISH_LEARNED_LATE = (
    Plainer((" the ",), rf"(?<![\w']){_ACT} (?:already |also |only )?(?P<x>the )(?={_N}(?: (?:but|and|with|because|also|too|already|today|every|on|no|yet)(?![\w'])|[.,;]|$))", (("x", "number "),)),
    Plainer(("the ",), rf"(?:^|(?<=[.!?;] ))(?P<x>the )(?={_N} (?:already|it|he|she|is|isn't|has|have|had|hasn't|no|not|still|only|i|we|lacks?|needs?|is missing|misses|was|got|don't|doesn't|do not|does not|also)(?![\w']))", (("x", "number "),)),
    Plainer(("in the ", "on the ", "to the ", "of the ", "at the "), rf"(?:^|(?<=[.!?;] ))(?P<x>(?:in|on|to|at|of) the )(?P<n>{_N})(?P<y>,? )(?=(?:i|we|it|the|there|no|is|he|they|have|has|not|all) )", (("x", "on number "), ("y", ", "))),
    Plainer(("four sides", "four seams", "4 sides", "4 seams"), r"(?<![\w'])(?:(?:they|there|it|she)(?:'s| are|'re| is| has| have)?|are|is|has|have|of the|from the) (?:four|4) (?:sides?|seams?)(?:,| and| but|\.)* (?:(?:i|we) )?(?:only |just )?(?:taped|stapled|rubbed)(?: (?:down|only|just))?(?P<x> the)? (?:only |just )?(?:three|two|one|3|2|1)(?P<y>)(?=[.,;]|$| and | but | because )", (("x", ""), ("y", " sides"))),
    Plainer(("opening of ", "hole of ", "space of ", "separation of "), r"(?<![\w'])(?:leave|left|have|has|is|stay|stayed|remain|remained|there's) (?P<x>an? (?:little |small |big )?(?:opening|space|separation) of )(?=(?:an? )?(?:half|quarter|eighth|one|two|three|\d))", (("x", "a gap of "),)),
)
