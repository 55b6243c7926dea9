"""English that tells in a few words what a part of a piece has and what it has not, and the plain words for it: "the other two are only stapled", "the trunk seam wants more tape", "I've not gotten to it with the stapler"."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT, SAID_NUMBER
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_ENDS = r"(?=[.,;!]|$| and\b| but\b| because\b| so\b| since\b)"
_WHICH = r"(?:top|bottom|left|right|far|near|back|front|other|last|fourth|third|second|long|short|upper|lower|inside|outside|male|female|heel|throat|trunk|branch|wall|end)"
_PART = rf"(?:(?:the |its |that |one |my )(?:{_WHICH} )*(?:seams?|joints?|sides?|ends?|edges?|corners?|heel|throat|cheeks?|underside|top|bottom|left|right|back|front|fourth|other|others|rest|last)(?: (?:one|ones|two|three|pair|side|end|seam))?)"
_JUST = r"(?:only|just|merely)"
_SO_FAR = r"(?: so far| for now| right now| at the moment| yet)*"
_STAPLER = r"(?:stapler|staple gun|gun|staples)"
_TAPE = r"(?:tape gun|tape|roll|181 ?a-?p)"
_SQUEEGEE = r"(?:squeegee|rubbing (?:stick|tool|block)|rub stick)"
_NOT_YET = r"(?:'ve not|have not|haven't|'ve yet to|have yet to)(?: yet| even| ever| quite| really)*"
_NEVER = r"(?:had not|hadn't|didn't|did not|never|'ve never|have never)(?: even| ever| quite| really)*"
_GONE = r"(?:gotten|got|get|been|gone|go|come|came|made it)(?: (?:back|round|around|over|across))*(?: (?:to|at|over|across|along|round|around|there))?(?: (?:it|that|them|that one|there|this one))?"
_STILL = r"(?: still| is still|'s still| is|'s| are|'re| are still)?"
_PUT_IN = r"(?:put (?:it |them |that )?in|shot(?: (?:it|them))?|drove(?: (?:it|them) in)?|filled (?:it |them )?in|put back|got(?: (?:it|them))?|added|stapled|set)"
_LATE = r"(?:after (?:a (?:bit of a )?(?:fight|struggle|while|fashion)|some (?:trouble|fiddling|work|persuasion)|a (?:lot|bit|little) of (?:trouble|work|fiddling|persuasion))|eventually|in the end|with (?:some|a bit of|a little|a lot of) (?:trouble|effort|work|persuasion)|the second time|without (?:any )?trouble|no trouble|no problem)"


def _stopped_at(done: str, tools: str, lack: str) -> tuple[Plainer, ...]:
    """What a tool was not brought to: "whose bottom seam I've not gotten to with the stapler", "which the squeegee never got to"."""
    cues = tuple(f" {tool}" for tool in done.split())
    with_it = rf"{_GONE}(?: yet)? with (?:the |my |any |a )?{tools}"
    return (
        Plainer(cues, rf"(?P<x>(?:that |which )?{_I} ?{_NOT_YET} {with_it}(?: yet)?){_ENDS}", (("x", f"{lack} yet"),)),
        Plainer(cues, rf"(?P<x>(?:that |which )?{_I} ?{_NEVER} {with_it}){_ENDS}", (("x", lack),)),
        Plainer(cues, rf"(?<=, )(?P<x>(?:which|that) (?:the|my) {tools} (?:never|didn't|couldn't|hasn't|has not)(?: even| yet)? (?:get|got|gotten|reach|reached|touch|touched|made it)(?: to| at| near)?){_ENDS}", (("x", f"it {lack}"),)),
    )


ENGLISH_SAID_OF_A_PART = (
    # --- all that a part has is the first of two acts
    *(
        Plainer((f"only {only}", f"just {only}", f"merely {only}"), rf"(?<![\w']){only},? (?:and|then) {then}(?![\w'])[^?!]{{0,70}}?[.,;] (?:and |but |while )?{_PART}(?P<x>(?: is| are|'s|'re| was| were| got)? {_JUST} {only}(?: down)?{_SO_FAR}){_ENDS}", (("x", lack),), unless=rf"(?:now|since|later|then) (?:{then}|done)|went back")
        for only, then, lack in (("stapled", "taped", " still needs tape"), ("taped", "stapled", " still needs staples"), ("taped", "rubbed", " isn't rubbed"))
    ),
    Plainer(("staples",), rf"(?<![\w'])(?:taped?)(?![\w'])[^?!]{{0,70}}?[.,;] (?:and |but |while )?{_PART}(?P<x>(?: (?:has|have|got))? {_JUST}(?: (?:has|have|got))? staples(?: in (?:it|them))?{_SO_FAR}){_ENDS}", (("x", " still needs tape"),)),
    # --- what a part asks for, and more of it
    Plainer((" tape", " staples"), rf"(?<![\w']){_PART}{_STILL}(?P<x> (?:wait(?:s|ing) (?:on|for)|await(?:s|ing)|needs?|wants?|wanting|could (?:use|do with)|short (?:of|on)|shy of|hungry for|begging for|crying for|due|owed) (?:some |a bit |a little |a lot |a strip of |a piece of |any )*(?:more )?)(?=(?:tape|staples)(?! (?:gun|measure)))", (("x", " still needs "),), beside=("more", "hungry", "begging", "crying", "owed")),
    Plainer((" roll",), rf"(?<![\w']){_PART}{_STILL}(?P<x> (?:wait(?:s|ing) (?:on|for)|await(?:s|ing)) (?:a |the |another |more )*(?:(?:new|next|fresh|other) )?rolls?(?: of tape)?){_ENDS}", (("x", " still needs tape"),)),
    Plainer((" it.", " it,"), rf"(?<![\w'])(?:has|got|have|'s got) (?P<t>tape|staples)(?:,| and| but|, but|, and)+ {_PART}(?P<x>{_STILL} (?:wants|needs|waits (?:for|on)|waiting (?:for|on)) (?:it|some|them))(?=[.,;!]|$)", (("x", r" still needs \g<t>"),)),
    Plainer((", which ",), rf"(?:except|but|save|bar)(?: for)? {_PART}(?: (?:on|at|along|by) (?:the )?\w+(?: (?:side|end))?)?(?P<x>, which (?:still )?(?:wants|needs|requires|lacks))(?= (?:some |its |more |the )?(?:tape|taping|staples|stapling|rub|rubbing))", (("x", " that still needs"),)),
    # --- a part that a tool was not brought to
    *_stopped_at("stapler staple staples gun", _STAPLER, "isn't stapled"),
    *_stopped_at("tape roll 181", _TAPE, "isn't taped"),
    *_stopped_at("squeegee rub", _SQUEEGEE, "isn't rubbed"),
    # --- neither of two things
    Plainer((" or tabs", " or cross tabs", " or staples"), r"(?P<x>(?:hasn't got|haven't got|hasn't|doesn't have|don't have|didn't get|never got|got no|got neither|has neither|have neither)(?: any)?) (?:staples|tabs|cross tabs)(?P<y> or )(?=(?:any )?(?:cross )?(?:tabs|staples)(?![\w']))", (("x", "has no"), ("y", " and no "))),
    Plainer(("neither staples", "neither tabs"), r"(?P<x>(?:has|have|got|has got|'s got|with) neither) (?:staples|tabs)(?P<y> nor )(?=(?:cross )?(?:tabs|staples)(?![\w']))", (("x", "has no"), ("y", " and no "))),
    Plainer((" or tab ",), r"(?:couldn't|can't|could not|didn't|never) (?:even )?staple(?P<x> or (?:cross )?tab) (?:that side|that one|it|there|the \w+|that)(?P<y>)(?=[.,;!]|$)", (("x", ""), ("y", " and it has no tabs"))),
    # --- three sides told by their names
    Plainer(("taped ", "stapled "), r"(?<![\w'])(?<!not )(?<!never )(?<!n't )(?:taped|stapled) (?P<x>(?:on )?(?:the )?(?P<s>top|bottom|left|right|front|back)(?: side| seam)?(?: and|,) (?:the )?(?!(?P=s))(?:top|bottom|left|right|front|back)(?: side| seam)?)(?= only| for now|[.;!]|$)", (("x", "two of the sides"),), unless=r"(?<![\w'])(?:sides(?! only)|others?|rest|back flap|throat|heel|all|every(?:thing| side| seam| joint| one)|both|too|also|then|first|last|third|fourth)(?![\w'])"),
    Plainer((" sides", " the sides"), r"(?<![\w'])(?:taped|stapled|rubbed)(?: down)? (?P<x>(?:the |on |on the )?(?P<s>top|bottom) and (?:the |its )?sides)(?= only| for now|[.,;!]|$| and\b)(?! and (?:then )?(?:on )?(?:the )?(?:top|bottom|back|front|ends?|underside|rest|fourth|last))", (("x", r"the \g<s> and both sides"),), unless=r"(?<![\w'])(?:top and (?:the |its )?sides(?![\w'])[^?!]*(?<![\w'])bottom|bottom and (?:the |its )?sides(?![\w'])[^?!]*(?<![\w'])top)(?![\w])"),  # what is told of the fourth is read by itself
    # --- tape that ends before its end, or lifts, and what has to be done over
    Plainer((" tape",), rf"(?<![\w'])tape(?:'s| is)?(?: (?:laid|put|all))?(?: on| down)?(?P<x>,? (?:though |but |and |only )*(?:it |that )?(?:ending|ends|ended|stopping|stops|stopped|quits|quit|gives out|gave out|falls|fell|came up|comes up|came out|runs out|ran out)(?: about| maybe| just| like)* (?:{SAID_NUMBER}|an?|half an?|a couple(?: of)?|a few)(?: (?:inch|inches|foot|feet))? (?:before|short(?: (?:of|at|on))?|shy(?: of)?)) (?:the |its )(?:\w+ )?(?:corner|end|edge|heel|throat|seam|side|top|bottom|joint)", (("x", " doesn't reach"),), unless="patched|pieced|spliced|added|went back|another piece|more tape on|filled"),
    Plainer(("ing away",), r"(?<![\w'])(?:tape|strip)(?: (?:on|at|along) (?:the |one )?\w+(?: \w+)?)?(?P<x>(?:'s| is| was) (?:already |now |all )*(?:coming|pulling|peeling) away)(?![\w'])", (("x", " came away"),)),
    Plainer(("bubbl", "wrinkl", "blister", "pucker"), r"(?<![\w'])tape[^.?!,;]{0,40}?(?:bubbl|wrinkl|blister|pucker)\w+[^.?!,;]{0,40}?(?P<x>,? (?:and|so|,) (?:it's|it is|that's|now it's) (?:coming|pulling|peeling|lifting)(?: (?:away|off|up|loose))?)(?![\w'])", (("x", ", the tape came off"),)),
    Plainer((" redo", " do over"), rf"(?<=[a-z] )(?<!one )(?<!else )(?<!ones )(?<!piece )(?P<x>(?:that |which )?{_I}(?:'ve| have)?(?: got to| gotta| have to| need to| must|'ll have to) (?:redo|do over))(?=[.;!]|$)", (("x", ", i have to redo it"),)),
    # --- what was missed, and what he did about it
    Plainer((" went back and", " came back and"), rf"(?P<x>(?:the |one |few |two |three |couple of )*staples? (?:that |which )?{_I}(?:'d| had)? (?:missed|skipped|forgot),? {_I} (?:went|came) back (?:and|to) {_PUT_IN})(?=[.,;!]|$| after| later)", (("x", "stapled it"),)),
    # --- how far apart they are, behind "but"
    Plainer((" but at ", " but only at ", " but every ", " but only every "), rf"(?<!not )(?:stapled|staples(?: in)?)(?P<x>,? but (?:only |just )?(?:at|every)(?: about| around| like)?)(?= {SAID_NUMBER}(?: inch(?:es)?)?(?: centers| on center| apart| spacing)?(?:[.,;!]|$| instead))", (("x", " every"),)),
    Plainer(("ran short of staples", "ran low on staples", "short on staples", "staples ran low", "low on staples"), rf"(?:^|(?<=[.;!?] )|(?<=, ))(?P<x>(?:{_I} (?:ran|was|were|am|got|'m)(?: running)? (?:short|low) (?:of|on) staples|(?:the )?staples ran (?:low|short))[.,;] (?:so )?)[^.?!;]{{2,60}}?(?:has|have|got|gave it|with|put|are|'re|spread) (?P<y>them)(?= (?:about |at |around |maybe )*(?:every |at |{SAID_NUMBER}))", (("x", ""), ("y", "staples"))),
    # --- how wide the tape is that he put on
    Plainer(("tape that ", "tape which ", "tape i ", "tape we "), rf"(?P<x>(?:the )?tape (?:that |which )?(?:{_I} (?:put|laid|ran|stuck|used|had|got|rolled)(?: (?:on|down))?|(?:went|is|was put|got put|was used) (?:on|down))(?: (?:to|on|for) (?:it|this|that|this one))?(?: (?:is|was|'s)(?: only| just)*) )(?={SAID_NUMBER} inch)", (("x", "the tape i used was "),)),
    Plainer(("tape that ", "tape which ", "tape i ", "tape we "), rf"(?P<x>(?:the )?tape (?:that |which )?{_I} (?:put|laid|ran|used|got|rolled)(?: (?:on|down))?(?: (?:to|on|for))? (?P<p>(?:{KIND} )?(?:number )?(?:\d{{1,3}}|{SAID_COUNT}))(?: (?:is|was|'s)(?: only| just)*) )(?={SAID_NUMBER} inch)", (("x", r"on \g<p> the tape i used was "),)),
    # --- what is in, and how it went
    Plainer(("vanes",), rf"(?<![\w'])vanes(?: (?:finally|all))* (?:went|are|got put) in(?P<x>,? {_LATE})(?=[.,;!]|$| and\b| but they're in)", (("x", ""),)),
    Plainer(("wasn't any damage", "weren't any ", "wasn't any tear", "was no damage"), r"(?P<x>(?:there )?(?:wasn't|weren't|was no|were no)(?: any)?) (?=(?:damage|tears|holes|rips)(?! (?:that|except|other|but|worth fixing))(?:[.,;!]|$| anywhere| on it| to (?:it|the)))", (("x", "no"),)),
    Plainer(("tape covers",), r"(?<![\w'])(?P<x>(?:the )?tape covers (?P<n>all four|every (?:seam|joint|side)|all (?:the )?(?:seams|joints|sides)|the whole (?:thing|joint|seam)|everything)(?P<s> sides| of them)?)(?=,? and (?:it's|it is|it got|it was|i|we|rubbed|that's))", (("x", r"taped \g<n>"),), unless=r"(?<!no )(?:except|but the|but one|wasn't|isn't)"),
    Plainer(("all four and ", "all four."), r"(?<![\w'])(?:taped|stapled|rubbed) (?P<x>all four)(?=[.,;!]|$| and )", (("x", "all four sides"),)),
    Plainer(("tape everywhere", "tape all over", "tape all around", "tape all round"), r"(?:(?<=[.,;] )|(?<=[.,;] and ))(?P<x>(?:it's got |there's |i've got )?tape (?:everywhere|all over(?: it)?|all (?:a)?round(?: it)?))(?=[.,;!]|$| and (?:it's|rubbed|it is|i rubbed))", (("x", "taped all around"),)),
    Plainer(("looks good", "looks fine", "looks right", "look good", "look fine", "taping's good", "taping is good"), r"(?:(?<=[.,;] )|(?<= and ))(?:the |my )?(?P<x>(?:tape|taping)(?:'s| is| looks)(?: all| just| pretty| real)* (?:good|fine|right|great|solid))(?=[.,;!]|$| and (?:rubbed|staples|the staples|it))", (("x", "taped"),), unless=r"(?:no|any|without|needs?|still) (?:more )?tap|not taped|n't taped|peel|lift|comes? off|came off"),
    Plainer(("181",), r"181 ?a-?[ph] (?P<x>(?:on|over|along|across) every) (?:seam|joint|side|edge)(?=[.,;!]|$| and\b)(?! (?:but|except))", (("x", "on each"),)),
    Plainer(("all the way round at", "all the way around at", "all round at", "all around at"), rf"(?<![\w'])staples(?: (?:went|are|got|put|were put|all))*(?: in)?(?P<x> all (?:the way )?(?:a)?round) at(?= {SAID_NUMBER})", (("x", ""),)),
    # --- the piece of a run
    Plainer(("run ",), rf"(?<!the )(?<!this )(?<!of )run (?:\d{{1,2}}|{SAID_COUNT}|[a-d])(?P<x> )(?=piece (?:number )?(?:\d{{1,3}}|{SAID_COUNT})(?:[.,;:]| is| was|'s))", (("x", ", "),)),
    Plainer((" made it to ", " made it at "), rf"(?P<x>{_I}? ?made it (?:to|at) )(?={SAID_NUMBER}(?: (?:and|a half|and a half))* inches(?:[.,;!]|$))", (("x", "length "),)),
    *(
        Plainer((f"done about {doing}",), rf"(?P<x>nothing(?:'s| has)?(?: yet)?(?: been)? done (?:yet )?about {doing})(?= (?:it|this|that|up|in|to)(?![\w']))", (("x", f"still have to {do}"),))
        for doing, do in (("closing", "close"), ("tying", "tie"), ("hooking", "hook"), ("joining", "join"), ("taping", "tape"), ("sealing", "seal"), ("stapling", "staple"), ("rubbing", "rub"))
    ),
)
