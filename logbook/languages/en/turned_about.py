"""English that says a thing by the way of its opposite, and sets right what was said: "the tag says taped, the tag's wrong", "did I say two, I meant three", "unless I'm blind there's no tape".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.numbers import SAID_NUMBER as _NUMBER
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_KIND = r"(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|piece|fitting|section|number)"
_DONE = r"(?:taped|stapled|rubbed(?: down)?|wiped|trimmed|finished|hung)"
_PAPER = r"(?:tag|label|sheet|whiteboard|log|list|paper|card|sticker|report|form|note|clipboard|tablet|checklist|marker|chalk mark|writing)"
_WRONG = r"(?:wrong|lying|a lie|not right|not true|old|out of date|a mistake|mistaken|off|no good|full of it|from before)"
_SEES = r"(?:blind|mistaken|wrong|crazy|seeing things|missing something|going blind|losing my mind|dreaming|reading it wrong)"

ENGLISH_TURNED_ABOUT = (
    # --- what a tag has it, and the tag is wrong
    Plainer(
        tuple(f" {one}" for one in ("wrong", "lying", "a lie", "not right", "not true", "old", "out of date", "a mistake", "mistaken", "off", "no good", "full of it", "from before")),
        rf"(?:^|(?<=[.!?;:,] ))(?P<x>(?:the |my |its |that |somebody's |their )?{_PAPER}(?: on it)? (?:says|said|has it|has it as|shows|reads|claims)(?: (?:it's|it is|it was|it as|it|that it's|that it was))? )(?P<a>{_DONE})(?P<y>(?:[,.;]|(?= but| and))? (?:but |and |well |only )*(?:(?:the |that )?{_PAPER}|it|that)(?:'s| is| was) (?:just |dead |plain |flat |all )*{_WRONG}(?: (?:on that|about that|there|again))?)(?=[.,;!]|$| and | but )",
        (("x", "it's not "), ("y", "")),
    ),
    # --- "did I say two, I meant three"
    Plainer(
        ("did i say", "did we say", "did i just say", "did i tell you", "did i call", "did i put"),
        rf"(?:^|(?<=[.;,?!] ))(?P<x>(?:(?:wait|oh|sorry|hang on|hold on|no|and|what)[, ]+)*did {_I}(?: just)? (?:say|tell you|call it|put)(?: (?:every|it's|at|it was|that|they're))* {_NUMBER}(?: inch(?:es)?)?[,.?;] (?:(?:no|sorry|well|oh|because|cause|wait|yeah)[, ]+)*(?:{_I} (?:meant|mean)(?: to say)?|make (?:that|it)|it's|it should be|they're|that's|should(?:'ve been| be))(?: (?:every|at))? )(?={_NUMBER})",
        (("x", "no, make that "),),
    ),
    # --- what he would have to be for it not to be so
    Plainer(("unless i'm", "unless i am", "unless we're"), rf"(?:^|(?<=[.!?;:,] )|(?<= and )|(?<= but ))(?P<x>unless (?:i'm|i am|we're) {_SEES},? (?:then )?)", (("x", ""),)),
    Plainer(("unless i'm", "unless i am", "unless we're"), rf"(?P<x>,? unless (?:i'm|i am|we're) {_SEES})(?=[.,;!]|$)", (("x", ""),)),
    Plainer(("i say", "i said", "i tell", "i told", "i call", "we say"), rf"(?:^|(?<=[.!?;:,] )|(?<= and )|(?<= but ))(?P<x>if {_I} (?:say|said|tell (?:you|him)|told (?:you|him)|call it|called it)(?: (?:it's|it is|it was|that it's|i))? )(?P<a>{_DONE})(?P<y>(?: it)?,? (?:then )?(?:i'm|i am|i'd be|i would be|that makes me|that'd make me|call me) (?:a (?:damn |big )?liar|lying|telling (?:a lie|stories)))(?=[.,;!]|$)", (("x", "it's not "), ("y", ""))),
    # --- what he wonders that anybody says
    Plainer(
        (" why ", " how ", " where "),
        rf"(?:^|(?<=[.!?;:,] ))(?P<x>(?:(?:i|we) )?(?:don't|can't|do not|cannot) (?:see|know|understand|get|imagine|tell you) (?:why|how|where) (?:anybody|anyone|somebody|someone|he|she|they|you|people)(?:'d| would| could| can| got| gets)? ?(?:ever )?(?:say|says|said|think|thinks|claim|claims|write|the idea|it)(?: (?:that|down))? )(?P<n>{_KIND} (?:number )?\d{{1,3}})(?P<y> (?:isn't|wasn't|has no|is not|ain't|hasn't got|doesn't have|got no|needs) [a-z]+(?: down| on it| in it)?)(?P<z>[.,;] )(?=(?:it|they|there|the|i) ?)",
        (("x", ""), ("y", ""), ("z", ", ")),
    ),
)
