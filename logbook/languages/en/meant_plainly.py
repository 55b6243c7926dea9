"""English that says one thing and means another, and the plain words for it: "I said three inches, I meant two", "whoever taped it used two inch. That was me"."""

from __future__ import annotations

from logbook.languages.en.numbers import SAID_NUMBER
from logbook.languages.plainer import Plainer

_BEFORE = r"(?:(?!i meant|we meant|should)[^.?!;,]){0,48}?"
_SAID = r"(?:i|we) (?:said|told you|wrote(?: down)?|put(?: down)?|typed|texted|had(?: it)? down(?: as)?|called it|called them)"
_HARM = r"(?:hole|tear|rip|puncture|gash|slit|dent|cut)"

ENGLISH_MEANT_PLAINLY = (
    # --- what he said, and what he meant by it
    *(
        Plainer(
            ("i meant", "i mean,", "we meant", "should have said", "should've said"),
            rf"(?:^|(?<=[.;!?,] ))(?P<x>{_SAID} )(?:that )?{lead}(?<![\w'/-])(?P<a>{value})(?![\w'/]|-(?!inch))(?:(?!i meant|we meant|should)[^.?!;]){{0,60}}?(?P<y>,? (?:but |and |when |sorry,? )*(?:i|we) (?:meant|mean|should have said|should've said)(?: to say)? (?P<b>{value})(?:[ -]inch(?:es)?(?: tape)?)?)(?=[.,;!]|$)",
            (("x", ""), ("a", r"\g<b>"), ("y", "")),
        )
        for lead, value in ((rf"(?:{_BEFORE}(?:every|at|with|about|only|were|are|was) )?", SAID_NUMBER), (_BEFORE, r"(?:inwards?|outwards?|in(?! (?:the|my|a)\b)|out)"), (_BEFORE, r"(?:cloth|foil|duct|masking|mastic)"))
    ),
    # --- whoever did it was he himself
    Plainer(
        ("was me", "'s me", "'d be me", "be me"),
        r"(?:^|(?<=[.;!?] ))(?P<x>whoever|somebody|someone|the (?:guy|man|fool|idiot|genius) (?:who|that)) (?=(?:taped|stapled|rubbed|trimmed|hung|built|made|cut|closed|wiped|left|forgot|skipped|put|used)\b)[^.?!]{4,80}?(?P<y>[.,;] (?:well,? |and |yeah,? |ok,? |okay,? )*(?:that|it)(?: was|'s|'d be| would be| is) me)(?=[.,;!]|$)",
        (("x", "i"), ("y", "")),
    ),
    # --- one hole is plugged, and the other isn't
    Plainer(
        ("isn't", "is not", "ain't", "wasn't"),
        rf"(?<![\w'])(?P<t>{_HARM})(?:'s| is| was| got)(?: all)? (?P<d>plugged|patched|mended|fixed|repaired|closed|replaced)(?![\w'])[^?]{{1,40}}?(?<![\w'])(?P=t) (?P<x>isn't|is not|ain't|wasn't)(?=[.,;!]|$)",
        (("x", r"isn't \g<d>"),),
    ),
    # --- a condition behind a comma, which was not met
    Plainer((" if it had", " if they had", " if there", " if only", " if somebody", " if someone"), r"(?:would|'d)(?: \w+){1,4}?(?P<x>,)(?= if (?:only )?(?:it|they|there|somebody|someone|i|we) (?:had|were|was)\b)", (("x", ""),)),
    # --- where they lie first, and what they are behind it
    Plainer(
        ("they're ", "they are ", "those are ", "it's "),
        r"(?:^|(?<=[.;!?] ))(?P<x>(?:they|those|these|it)(?:'re|'s| are| is) (?:(?:still |all |just |sitting |over |back |lying )*(?:in|on) (?:the|their|its|my) (?:box|truck|van|bench|cart|gang ?box|bag|shop|trailer|floor)), (?:the |those |my ))(?=(?:turning )?(?:vanes|staples|tape|tabs|screws|washers)(?: (?:for|of|to|that go(?:es)? (?:in|on|to)) [^.,;!?]{1,30}?)?(?:[.,;!]|$))",
        (("x", "no "),),
    ),
    # --- the heat gun that was there and stayed cold
    Plainer(
        ("heat gun", "heat lamp", " iron "),
        r"(?<![\w'])(?:heat gun|heat lamp|iron)(?:'s|[ ,](?:(?!taped|wiped)[^.?!;]){0,30}?)?,? ?(?:but )?(?P<x>(?:i |we )?(?:just |simply |only )*(?:didn't|did not|never)(?: even| ever)? (?:use|used|touch|touched|pick up|picked up|plug in|plugged in|turn on|turned on|switch on|switched on|bother with|bothered with) (?:it|that|the thing)(?: in| on(?! \w))?)(?![\w'])",
        (("x", "not preheated"),),
        unless=r"(?<![\w'])(?:ironed|warmed|heated|preheated|torch|instead|needed|need|warm|borrowed|used the)(?![\w'])",
    ),
    # --- the crew's other language beside this one
    Plainer((" grapado", " grapada", " engrapado", " engrapada"), r"(?<![\w'])(?P<x>(?:est[aá] |ya est[aá] )?(?:en)?grapad[oa])(?= (?:every|at|on|with|and|all|two|three|\d))", (("x", "stapled"),)),
    Plainer((" pero ",), r"(?P<x> pero )(?=(?:no|not|the|it|i|we|isn't|there's)\b)", (("x", " but "),)),
)
