"""English of a man who asks himself, leads up to the answer, and sets things before the word that denies them: "Did I rub it? Looking at it, no", "taping it, that I skipped".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_LEADS_UP = (
    r"(?:(?:hm+|um+|uh+|well|oh|honestly|to be honest|truthfully|let me (?:look|see|think|check)|lemme (?:look|see|think|check)|looking at it(?: now)?|now that i (?:look|see it|think about it)|i(?:'m| am) (?:going to|gonna) (?:have to )?say|i(?:'m| am) (?:looking|feeling)"
    r"|i(?:'d| would)?(?: have| got|'ve got)? to say|i want to say|i(?:'ll| will) say|i(?:'m| am) afraid|afraid|sad to say|sorry to say|i hate to say it|if i(?:'m| am) honest|from here)[,.]? )+"
)
_YES_OR_NO = r"(?:no|nope|nah|not|yes|yeah|yep|i did|i didn't|i did not|we didn't|i never|it is|it isn't|it's not|it is not|they are|they aren't|they're not|there is|there isn't|there are|there aren't)(?![\w'])"
_ASKS = r"(?:did|didn't|have|haven't|had) (?:i|we) |(?:is|isn't|was|wasn't|are|aren't|were) (?:it|they|there|those|these) |does it |has it "
_THING = r"(?:the |turning |my )*(?:vanes|tape|staples|tabs|rub ?-?down|rubbing(?: down)?|taping|stapling|trimming|wiping|scrim)"

_BETWEEN = r"(?:,|;|:|\.|-|–|—)+ (?:(?:yeah|yes|well|no|now|ok|okay|see|oh|and|uh|um|you see|sorry|i'm sorry),? )*"
_THAT = r"(?:that|those|them|this)(?: (?:part|one|step|bit|i'm afraid|one thing))?"
_NOT_DONE = (
    r"(?:(?:just|plain|totally|clean|completely|honestly|also|sure|really|kind of|kinda|'d|had|have|'ve) )*(?:skipped|forgot(?:ten)?(?: about| all about)?|missed|passed (?:on|over)|left (?:out|off|undone)|didn't do|did not do|didn't|did not|never did|never got (?:to|around to)|didn't get (?:to|around to)|did not get to"
    r"|blew off|let slide|didn't bother with|ran out of time for)"
)
_WORKS = (
    (r"(?:the )?rub(?:bing)?(?:[- ]?down)?(?: (?:it|that|the tape))?(?: down)?", "I didn't rub it down"),
    (r"(?:the )?taping(?: (?:it|that|the seams?|the joints?))?(?: up)?", "I didn't tape it"),
    (r"(?:the )?stapling(?: (?:it|that|the flaps?))?(?: up| down)?", "I didn't staple it"),
    (r"(?:the )?trimming(?: (?:it|that|the insulation))?(?: out| back)?", "I didn't trim it"),
    (r"(?:the )?wip(?:ing|edown|e down)(?: (?:it|that|the facing|the foil))?(?: down| off)?", "I didn't wipe it"),
)
_THINGS = ((r"(?:the )?(?:turning )?vanes", "I didn't put the vanes in"), (r"(?:the )?tape", "I didn't put the tape on"), (r"(?:the )?staples", "I didn't put the staples in"))
_STARTS = r"(?:^|(?<=[.;:!?,] )|(?<= and )|(?<= but ))"
_OVER = r"(?: (?:today|this time|on this one|again|on it|though|too|entirely|altogether|i'm afraid))*(?=[.,;!]|$| and | but )"

ENGLISH_ASKED_OF_HIMSELF = (
    # --- what leads up to the answer
    Plainer(("? ",), rf"(?<=\? )(?P<x>{_LEADS_UP})(?={_YES_OR_NO})", (("x", ""),)),
    # --- the thing by its name, and then the question for it
    Plainer(("? ",), rf"(?:^|(?<=[.!?] ))(?P<x>(?:and |now |then |so |okay )?{_THING}[.?!] (?:(?:okay|so|now|well|let me see|hm+)[.,]? )*)(?=(?:{_ASKS})[^.?!]*(?<![\w'])(?:vanes|tape|staples|tabs|rub|taped?|staple|trim|wipe|scrim)(?![\w'])[^.?!]*\?)", (("x", ""),)),
    Plainer(("? ",), rf"(?:^|(?<=[.!?] )){_THING}(?P<x>\? (?:(?:okay|so|now|well|let me see|hm+)[.,]? )*)(?=(?:{_ASKS})[^.?!]*(?<![\w'])(?:them|it|any|that|'em)(?![\w'])[^.?!]*\?)", (("x", ". "),)),
    # --- the work stands first, and then that it was not done
    *(Plainer((" that", " those", " them", " this"), rf"{_STARTS}(?P<x>{work}{_BETWEEN}{_THAT} (?:(?:is|was) (?:something|one|what|a thing|where) )?(?:i|we) {_NOT_DONE}){_OVER}", (("x", said),)) for work, said in _WORKS),
    *(Plainer((" that's ", " that is ", " that was "), rf"{_STARTS}(?P<x>{work}{_BETWEEN}that(?:'s| is| was) (?:what|the (?:one |only )?(?:thing|part|step)(?: that)?|something|where) (?:i|we) {_NOT_DONE}){_OVER}", (("x", said),)) for work, said in _WORKS),
    *(Plainer((" that", " those", " them"), rf"{_STARTS}(?P<x>{thing}{_BETWEEN}{_THAT} (?:i|we) (?:{_NOT_DONE}|left (?:in|on|at|back|out in) [^.,;!?]+?|forgot to (?:put|bring)(?: (?:in|on))?|didn't put(?: (?:in|on))?|never put(?: (?:in|on))?|don't have|didn't have)){_OVER}", (("x", said),)) for thing, said in _THINGS),
)
