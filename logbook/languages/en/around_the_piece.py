"""English said around a piece that tells nothing of it: the number of the lift, how long the ladder is, an empty box, what ran out before, a scornful plan, which piece it is not.

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.en.numbers import SAID_COUNT
from logbook.languages.plainer import Plainer

_BEGINS = r"(?:^|(?<=[.;!?] ))"
_ONE = rf"(?:\d{{1,3}}[a-z]?|{SAID_COUNT})"
_RIDDEN = r"(?:(?:scissor |boom |man)?lift|bus|van|gang ?box|column|bay|shuttle|hard ?hat|badge|locker|gate|crane|hoist|elevator bank|parking spot|radio|stairwell)"
_LADDER = r"(?:step ?)?ladders?"
_FOOTER = r"(?:four|six|eight|ten|twelve|fourteen|sixteen|twenty|twenty[- ]four|\d{1,2})[- ]foot(?:er|ers)?(?:s| one)?(?![\w'])(?! (?:straight|section|duct|piece|run|length|long))"
_FETCH = r"(?:grab|bring|get|hand|fetch|move|slide|pass|need|want|take|set up|use)(?: me| us| over| up)*"

_VANES = r"(?:turning )?vanes?"
_EMPTY = r"(?:empty|bare|gone|bent|(?:all )?(?:busted|crushed|smashed)|light|short|back (?:at|in) the \w+|(?:out |still )*(?:in|on) the (?:truck|van|trailer|shop))"
_CAME = rf"(?:(?:'s| is| was| came| come| turned up| showed up| turned out)(?: (?:all|already|just|stone|dead|plumb|completely|to be|in|up|half))* {_EMPTY}|(?: had| has|'s got)(?: (?:got|just))* (?:nothing|none|zero|no vanes|not a thing|air|dust)(?: (?:in (?:it|there)|left|but (?:air|dust)))*)"
_STORED = r"(?:truck|van|trailer|shop|yard|office|gang ?box|supply house|warehouse)"

_TAPE = r"(?:(?:the|our|my|any|that|good|listed|foil|rated|right|silver|pressure|heat) )*(?:(?:ul )?(?:181|one[- ]?eighty[- ]?one) ?-? ?a(?:[- ]?[ph](?![\w']))?(?: tape)?|tape|foil)(?![\w'])"
_OUT = rf"(?:(?:(?:so|well|okay|ok|hey|and|then|anyway|also),? )*(?:(?:i|we|they|the (?:crew|truck|shop|van|gang box)|everybody)(?:'re|'m|'ve)? ?(?:all |just |are |is |was |were |am |had )*)?(?:(?:ran|run|running|clean|plumb|completely|fresh) )*out of|(?:(?:there's|there is|there was|we've got|we got|we had|had|so|well),? )*no more) {_TAPE}"
_WHEN = r"(?:,? (?!so\b|for\b|because\b|and (?:so|i|we)\b|on (?:the|straight|elbow|tee|number|this|that|it)\b)[^.;!?,]{0,36})?"
_CLOSED = r"(?:(?:cloth|duct|masking|gray|grey|packing|duck|silver|181|one eighty|hardware store)[^.;!?]{0,20}|taped|tape on)"
_NOT_CLOSED = r"(?:isn't|is not|wasn't|not|never|didn't|no|needs?|without|can't|couldn't|waits?|waiting|later|tomorrow|still|yet)"

_SCORN = r"(?:(?:oh|yeah|sure|right|great|good|genius|brilliant|smart|wonderful|perfect|fantastic|terrific|nice)(?: (?:idea|plan|thinking|call|one))?,? )"
_PLAN = r"(?:(?:let's|why don't we|why not|we could|let us) (?:all |just )*)"
_WRONG = r"what(?: could| can|'s gonna|'s the worst that could)(?: possibly| ever)?(?: go wrong| happen)"
_ANY_PIECE = rf"(?![^.?!]*(?:\bthis\b|\bthat one\b|{KIND} (?:number )?\d|\bnumber\b))"

_TRIES = r"(?:(?:an?|one|two|three|four|five|a couple(?: of)?|a few|\d) )?(?:tries|try|attempts?|goes|times|shots|passes)"
_FITS = r"(?:right|round|square|to (?:fit|line up)|lined up|even|clean|just right|where (?:i|we) want(?:ed)? it|centered|big enough)"
_NOT_SO = r"(?:'s not| is not| isn't| ain't|'s never| wasn't)"
_ONCE = r"(?:\d{1,3}[a-z]?|(?:one|two|three|four|five) (?:hundred )?\w+|(?:twen|thir|for|fif|six|seven|eigh|nine)ty(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?)"
_IT_IS = rf"(?:,|[.;])? (?:but )?(?:that's|that is|that'd be|it's|it is|that was) (?:number |(?P<k>{KIND}) )?(?P<b>{_ONCE})(?![\w'])|,? (?:but )?(?:number |(?P<l>{KIND}) )?(?P<c>{_ONCE}) (?:is|was)(?=[.,;!]|$)"
_HARMED = r"(?:wet|torn|ripped|crushed|dented|damaged|punctured|bad|busted|soaked|rained[- ]on)"
_HARM = r"(?:(?:a|an|the|that|its|some) )*(?:(?:wet|torn|ripped|crushed|dented|soaked) (?:board|facing|foil|corner|side|end|panel)|tear|rip|hole|puncture|gash|dent|water damage)(?: (?:in|on) (?:it|the \w+))?"


def _not_this_but_that():
    """ "55 isn't the one with the wet board, that's 56": told is 56, of 55 nothing."""
    for ahead, begun in ((rf"{_BEGINS}(?:(?:and|but|so|no|wait|oh),? )*(?P<x>(?:number )?", ""), (rf"{_BEGINS}{KIND} {_ONCE}(?P<x>", ". ")):
        number = _ONCE if not begun else ""
        yield Plainer((" the one with ", " the one that has ", " the one that's got "), rf"{ahead}{number}{_NOT_SO} the one (?:with|that has|that's got) (?P<w>{_HARM})(?:{_IT_IS}))", (("x", rf"{begun}\g<k>\g<l> number \g<b>\g<c> has \g<w>"),))
        yield Plainer(tuple(f" {one}" for one in ("wet", "torn", "ripped", "crushed", "dented", "damaged", "punctured", "soaked", "rained")), rf"{ahead}{number}{_NOT_SO} the (?:(?:one that(?:'s| is| got| was) (?P<v>{_HARMED}))|(?P<w>{_HARMED}) one)(?:{_IT_IS}))", (("x", rf"{begun}\g<k>\g<l> number \g<b>\g<c> is \g<v>\g<w>"),))


ENGLISH_NOT_THIS_BUT_THAT = tuple(_not_this_but_that())

ENGLISH_AROUND_THE_PIECE = (
    # --- "the other two" of three pieces are pieces, no sides
    *(
        Plainer((f"other {many}",), rf"(?:{_ONE},? ){{{of - 1}}}(?:and |& )?{_ONE}(?![\w'])(?=[^?]*(?:isn't|aren't|not|needs?|still|never|waits?|without|no|only|except|but|is|has|got|was)(?![\w'])).*?(?P<x>(?:the )?other {many})(?: of (?:them|those))?(?! (?:sides?|seams?|joints?|ends?|corners?|edges?|of the))(?! (?:are|is|were|do|have|did|aren't|isn't|don't|didn't|haven't)(?:[.,;!]|$))(?![\w'])", (("x", "the others"),), unless=r"\bsides?\b(?=[^.;!?]*\bother )|\b(?:top|bottom|seams?|joints?|edges?)\b[^.;!?]*\bother ", beside=("taped", "stapled", "rubbed", "wiped", "trimmed", "hung", "done", "got"))
        for many, of in (("two", 3), ("three", 4))
    ),
    # --- the number of what he rides or stands at
    Plainer(tuple(f"{one} number " for one in ("lift", "bus", "van", "box", "gangbox", "column", "bay", "shuttle", "hat", "hardhat", "badge", "locker", "gate", "crane", "hoist", "bank", "spot", "radio", "stairwell")), rf"(?<!the )(?<!a )(?P<x>(?P<l>{_RIDDEN}) number {_ONE})(?P<y>)(?=[.,;!?]|$| (?:today|again|this|all|and|with|so|now|here)\b| (?:{KIND}) )(?!,? (?:is|was|got|has|stapled|taped|hung|rubbed)\b)", (("x", r"\g<l>"), ("y", ". "))),
    # --- how long the ladder is
    Plainer(("footer", "foot one", "foot,", "foot."), rf"(?<![\w']){_LADDER}[^.?!]{{0,16}}?(?P<x>,? (?:(?:no|not|the|a|that|my|an|i mean|other|big|little|or),? )*{_FOOTER})", (("x", ""),)),
    Plainer(("footer",), rf"^(?:(?!{KIND}|number)[^?]){{0,80}}?(?<![\w']){_FETCH} (?:the |that |a |an |my |another )+(?:other |big |tall )*(?P<x>{_FOOTER})", (("x", "ladder"),)),
    Plainer(("footer",), rf"(?<![\w'])(?:(?:i'm|i was|we're|we were|i am|standing|working)(?: (?:up|still|standing|working|way))*|climb(?:ed|ing)?(?: up)?) (?:on|off|from|up on) (?:the |a |an |my |that )(?P<x>{_FOOTER})", (("x", "ladder"),)),
    # --- the box that the vanes come in
    Plainer((" box",), rf"(?<![\w'])(?:i |we )?(?:went|sent \w+|ran|climbed down)(?: (?:over|back|out|down))* (?:to|and) (?:get|grab|fetch) (?P<v>(?:the |some |my |our )?{_VANES}),? (?:but|and|only) (?P<y>(?:(?:the|that|my|our|whole) )+box{_CAME})(?=[.,;!]|$| (?:so|and|no|when)\b)", (("v", "them"), ("y", "none there"))),
    Plainer((" box",), rf"(?<![\w'])(?P<x>(?:(?:well|but|and|only),? )*(?:(?:the|that|my|our|whole) )+box(?: (?:they|he|she) (?:sent|brought|gave|handed)(?: us| me)?)?{_CAME})(?=[.,;!]|$| (?:so|and|no|when)\b)", (("x", ""),), beside=("vane",), unless=rf"box (?:number )?{_ONE}\b|plenum"),
    Plainer((" box",), rf"(?<![\w'])(?P<x>(?:(?:well|but|and|only),? )*(?:(?:the|that|my|our|whole) )*(?:box of {_VANES}|{_VANES} box){_CAME})(?=[.,;!]|$| (?:so|and|no|when)\b)", (("x", "no vanes"),), unless=r"another (?:box|carton)|(?:new|second|other) box|vanes (?:are|went) in|got (?:more|them|some)|borrowed"),
    Plainer((" in the ", " on the ", " at the "), rf"(?<![\w'])(?:no|without|don't have|doesn't have|has no) (?:any )?{_VANES}(?: in it| yet)?(?P<x>,? (?:because|'?cause|since|as) (?:(?:the|they|their|my|it|that)(?:'re|'s)? ?)(?:box |carton |case |vanes )?(?:(?:'s|is|are|still|out|back|sitting|all) ?)*(?:in|on|at) the {_STORED})(?=[.,;!]|$| and\b)", (("x", ""),)),
    # --- what ran out before a piece is named denies nothing of it
    Plainer((" out of ", "out of ", "no more "), rf"^(?P<x>{_OUT}{_WHEN}[.;!] )(?=(?:[^?]*? )?{KIND} (?:number )?{NUMBER}(?![\w']))", (("x", ""),)),
    Plainer((" out of ", "out of ", "no more "), rf"^(?P<x>{_OUT}{_WHEN}, (?:so )?)(?={KIND} (?:number )?{NUMBER},? (?!(?:[^.;!?]* )?{_NOT_CLOSED}(?![\w']))[^.;!?]*{_CLOSED})", (("x", ""),)),
    # --- a plan told in scorn
    Plainer((" go wrong", " happen"), rf"{_BEGINS}{_ANY_PIECE}(?P<x>{_SCORN}*{_PLAN}[^.?!]{{1,70}}? {_WRONG}[.,!?]*)", (("x", ""),)),
    Plainer((" go wrong", " happen"), rf"{_BEGINS}{_ANY_PIECE}(?P<x>{_SCORN}+(?:{_PLAN})?[^.?!]{{1,40}}? (?:a|an|any) (?:ninety|elbow|tee|straight|wye|section|duct|run|90)[^.?!]{{0,30}}? {_WRONG}[.,!?]*)", (("x", ""),)),
    Plainer((" idea", " plan", " thinking", " call"), rf"{_BEGINS}{_ANY_PIECE}(?P<x>{_SCORN}*(?:great|brilliant|genius|smart|wonderful|fantastic|terrific) (?:idea|plan|thinking|call),? {_PLAN}[^.?!]{{1,70}}?[.!?])(?= )", (("x", ""),)),
    # --- how often he cut the hole that a collar sits in: it is cut, and no harm
    Plainer((" the hole",), rf"(?<![\w'])(?P<x>(?:took|takes|needed)(?: me| us)? {_TRIES} (?:to (?:get|cut|make)|getting|cutting) (?:the|that|my) hole(?: cut)?(?: {_FITS})?)(?=[.,;!]|$| (?:but|and|mastic|spin|tabs|taped|stapled)\b)", (("x", "cut the hole"),), beside=("collar", "branch", "take", "tap", "spin", "starter")),
    Plainer((" the hole", "the hole "), rf"(?<![\w'])(?P<x>(?:(?:finally |had to |i |we )*(?:got|get|recut|re-cut|trimmed|opened up|messed up|botched|fixed) the hole(?: (?:cut|{_FITS}|up))*(?: (?:to get it|till it was|until it was) {_FITS})?(?: (?:on|the) (?:the )?(?:first|second|third|fourth|last|\d\w\w)(?: (?:try|time|go|shot|attempt))?)?|the hole took(?: me| us)? {_TRIES}(?: to (?:get|cut)(?: it)?(?: {_FITS})?)?))(?=[.,;!]|$| (?:but|and|mastic|spin|tabs|taped|stapled)\b)", (("x", "cut the hole"),), beside=("collar", "branch", "take", "tap", "spin", "starter"), unless=r"tear|tore|torn|puncture|facing|patch|mend|repair"),
    # --- where the stuff was, and not the piece: "taped it with two-inch because that's all there was on the cart"
    Plainer((" on the ", " in the "), rf"(?:all (?:that |of it )?(?:there was|there were|there is|we had|i had|they had|we got|i got|was)(?: left)?|(?:the )?(?:only|last) (?:[\w-]+ )?(?:roll|tape|stuff|one|thing|box|kind)(?: (?:left|we had|i had|there was))?|what(?:ever)? (?:was|there was|we had|i had|i found|we found)(?: left)?|nothing else|none(?: left)?|no more|no other [\w-]+|anything else)(?P<x> (?:on|in) the (?:bench|table|shop|floor|ground|cart|stand|sawhorses))(?![\w'])", (("x", ""),), beside=("bench", "table", "shop", "floor", "ground", "cart", "stand", "sawhorses")),
)
