"""English of what a lead, an inspector or a helper saw on the speaker's own piece: "the foreman looked inside and there are no vanes in it", "my helper measured the staples and they're three apart".

Regular expressions over lower-case letters, as in `plainer.py`. What another man's eyes found is there all the same, and is read as if he had found it himself;
what that man says, wants or thinks of it is still his own, and so is what he found on a piece of his or on one that is named in the same breath.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.plainer import Plainer

_ROLES = ("foreman", "boss", "lead", "inspector", "super", "helper", "apprentice", "partner", "gc ", "engineer", "balancer", "kid", "old man", "new guy", "owner")
_WHO = r"(?:(?:the|my|our) )?(?:shop |lead |job |city |new |qa |mechanical |site )?(?:foreman|boss|lead|inspector|super|superintendent|helper|apprentice|partner|gc|engineer|balancer|kid|old man|new guy|owner|lead man|leadman)"
_AT = r"(?:^|(?<=[.?!;,] )|(?<=and )|(?<=but )|(?<=when )|(?<=then )|(?<=until )|(?<=till ))"
_MINE = rf"(?![^.?!]{{0,90}} (?:his|her|their|your|another|other (?:piece|one|straight|elbow|tee)|next|should|supposed|wants|wanted|says|said|thinks|told|asked|{KIND} (?:number )?\d+)(?![\w']))"
_HARM = r"(?:gap|tear|hole|rip|cut|dent|step|puncture|split|gash|slit|opening)"
_STANDS = r"(?:'s|'re| is| are| was| were| isn't| aren't| wasn't| weren't| had| has| hadn't| hasn't| didn't| doesn't| don't)(?![\w'])"
_SEEN = rf"(?:an? (?:\w+ ){{0,2}}{_HARM}(?![\w'])|no (?:vanes|staples|tape|washers|flap|cross tabs|tabs)(?! (?:in|on|at) (?:the|my) (?:truck|shop|van|box|shelf))|(?:dust|dirt|grease|oil|daylight)(?![\w'])|there{_STANDS}|(?:it|they|(?:the|one|half) [\w -]{{2,24}}?){_STANDS})"

ENGLISH_FOUND_BY_OTHERS = (
    Plainer((" found ", " saw ", " noticed ", " spotted ", " caught ", " pointed out ", " discovered "), rf"{_AT}(?P<x>{_WHO} (?:just |then |also |had |has |later )*(?:found|saw|noticed|spotted|caught|pointed out|discovered)(?: out)?(?: that)? ){_MINE}(?={_SEEN})", (("x", "i found "),), beside=_ROLES),
    Plainer((" looked", " checked", " measured", " went over"), rf"{_AT}(?P<x>{_WHO}) (?P<y>(?:(?:came by|came over|climbed up|went up|got up|walked by) and )?)(?:looked|checked|measured|went over|re-?measured)(?![\w']){_MINE}[^.?!]{{0,45}}?(?:,? and|[,;.]) (?=(?:found|saw|got) |{_SEEN})", (("x", "i"), ("y", "")), beside=_ROLES),
)
