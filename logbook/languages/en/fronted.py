"""English that puts what is lacking at the front or the end of its sentence, and the plain words for it: "what I skipped was the rub", "rubbing it is the bit I left out", "the bottom aside, it's taped", "I got no further than the staples".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import NUMBER
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_BEGINS = r"(?:^|(?<=[.,;!?] )|(?<= and )|(?<= but ))"
_ENDS = r"(?=[.,;!]|$| and | but | because | since | so | though )"
_RUB = r"(?:rub(?:bing)?(?:[- ]?down)?|burnishing|squeegee(?:ing)?)"
_NOUN = rf"(?:the |a |any |its |my |that |those )*(?:{_RUB}|tap(?:e|ing)|stapl(?:es|ing)|(?:turning )?vanes|trim(?:ming)?|wip(?:e|ing)(?:[- ]?down)?|(?:cross )?tabs|washers|screws|patch)(?![\w'-])"
_DEED = r"(?:rubbing|taping|stapling|wiping|trimming|preheating|warming|bending|patching)(?: (?:it|them|that|this|the (?:tape|seams?|facing|foil|joint|tabs|extra|excess|insulation|tear|hole|flap|fiber|glass)))?(?: (?:down|off|up|over|back|first|beforehand))*"
_VERB = r"(?:rub|tape|staple|wipe|trim|preheat|warm|bend|patch|clean)(?![\w'-])"
_PART = r"(?:thing|part|bit|step|job|piece of it|item)"
_WHAT = rf"(?:what|all|the (?:(?:one|only|last|main|other) )*{_PART}|(?:one|the one|only) {_PART}|something|the one)(?: (?:that|which))?"
_DID_NOT = r"(?:didn't|did not|never|haven't|have not|couldn't|hadn't)(?: (?:quite|even|ever|really|actually|yet))*"
_LACKED = rf"(?:{_DID_NOT} (?:do|done|did|get to|got to|gotten to|get|got|bother with|bothered with|have time for|put on|put in|manage|finish|get around to|got around to)|skipped|skip|forgot(?: about)?|left out|left off|left undone|missed|passed on|had no time for|ran out of time for|let slide|neglected|overlooked|omitted)"
_UNLESS = r"(?:didn't|never|not|haven't) (?:skip|forg[eo]t|miss|leave|left|neglect|overlook)"
_LACKS = r"(?:isn't|is not|not|'s not) (?:in|on)(?: (?:it|there|this one|here|that))?"
_SIDE = r"(?:(?:top|bottom|left|right|back|front|underside|heel|throat|far|near|last|fourth|other|outside|inside)(?: (?:side|seam|end|joint|edge|corner|one|cheek))?|(?:one|a) (?:side|seam|end|joint|edge|corner))"
_WHOLE = r"(?:the (?:whole|entire) (?:thing|piece|joint|lot)|everything|it(?:'s| is| has| got)|all of it|(?:all )?the (?:seams|joints|sides|rest)(?: of it)?|they(?:'re| are))"
# the thing itself before him who left it: with what it is done to, or where
_WHERE = r"(?: (?:on|round|around|along|over|in|at|across|for) (?:(?:the|that|this|its|all|my|one|first|second|third|last|other|far|near|whole|main|male|female|short|long|top|bottom|left|right|back|front) )*(?!it\b)[\w-]+(?: (?:side|end|seam|edge|joint|corner|one|two))?)"
_SELF = r"(?:it|that|this|them|that one|this one|(?:the |that |my )(?:tape|seams?|joints?|facing|foil|board|flap|piece|one|(?:top|bottom|back|front|last|far|other)(?: (?:side|end|seam|one))?))"
_LEFT_IT = rf"(?:{_LACKED}|left undone|let go|let slide|ran out of time for|{_DID_NOT} (?:think of|remember|go back for|come back for))"
_NOBODY = r"(?:nobody|no one|none of us|neither of us)(?: (?:ever|has|had|even))* (?:did|done|got to|gotten to|bothered with|remembered|thought of)"
_NO_TIME = r"(?:(?:there was |there's |we had |i had |had )?no (?:time|chance|way)|never happened|didn't happen|never got (?:to it|done)|not (?:done|yet)|not on this one|no)"
_OWED = r"(?:(?:will|'ll|have|'ve got|got|need|still need|want|gotta|can only|am going|'m going|are going|'re going)(?: to)?(?: (?:still|go|get|be able to|go and|come back and))*) (?:do|put|get|lay|run|slide|finish|see to|take care of|come back for)"
_FRONTED_ACTS = (
    ("rub", rf"(?:the |that )?(?:rubbing|burnishing|squeegeeing)(?: {_SELF})(?: (?:down|in|out|good))*", rf"(?:the |that |any )?{_RUB}", "I skipped the rub", "I still have to rub it"),
    ("tap", rf"(?:the )?taping(?: {_SELF})(?: (?:up|over))*", r"(?:the |that |any |my )?(?:tape|taping)", "I skipped the tape", "I still have to tape it"),
    ("stapl", rf"(?:the )?stapling(?: {_SELF})(?: (?:down|up|shut))*", r"(?:the |that |any |my )?(?:staples|stapling)", "I skipped the staples", "I still have to staple it"),
    ("wip", rf"(?:the )?wiping(?: {_SELF})(?: (?:down|off|first|clean|beforehand))*", r"(?:the |that |any )?(?:wipe(?:[- ]?down)?|wiping(?: (?:down|off))?)", "I skipped the wipe", "I still have to wipe it"),
    ("trim", rf"(?:the )?trimming(?: (?:{_SELF}|the (?:extra|insulation|glass|fiber|excess)))(?: (?:off|out|back|away))*", r"(?:the |that |any )?(?:trim|trimming)", "I skipped the trim", "I still have to trim it"),
    ("vane", r"(?:putting|setting|sliding) (?:the |any |its )?(?:turning )?vanes(?: in)?", r"(?:the |any |its |those )?(?:turning )?vanes", "there are no vanes", "I still have to put the vanes in"),
)
_DAY = r"(?:tomorrow|tonight|later|monday|tuesday|wednesday|thursday|friday|next|this|in the|first thing|yet)"
_CLOSED_OTHERWISE = r"tap(?:e|ed|ing)(?![\w'])|181|patch|tear|torn|hole|rip|fabric|gap"
_STAGE = r"(?:the )?(?:staples|stapling|stapl(?:ing|e) (?:it|them)|tape|taping(?: it)?)"

ENGLISH_FRONTED = (
    # --- what was not done, at the end: "what I skipped was the rub", "the only thing I didn't do is wipe it"
    Plainer((" was ", " is ", " were ", " are ", "'s "), rf"{_BEGINS}(?P<x>{_WHAT} {_I} (?:just |kind of |sort of )*(?:{_LACKED})(?: on (?:it|this one|that one))?,? (?:is|was|were|are|would be|'d be)(?: just| only)* )(?={_NOUN}{_ENDS})", (("x", "I skipped "),), unless=_UNLESS),
    Plainer((" was ", " is "), rf"{_BEGINS}(?P<x>{_WHAT} )(?P<w>{_I}) (?P<l>didn't|did not|never|haven't|couldn't)(?P<y>(?: ever| even| quite| yet)* (?:do|done|did|get to|got to|get around to|got around to|gotten to|manage)(?: on it)?,? (?:is|was)(?: to)? )(?={_VERB})", (("x", ""), ("l", "did not"), ("y", " "))),
    Plainer(("not in", "not on", "isn't in", "isn't on"), rf"{_BEGINS}(?P<x>what(?:'s| is)? ?{_LACKS} (?:is|are|was) )(?={_NOUN}{_ENDS})", (("x", "there are no "),)),
    # --- and at the front: "rubbing it is the bit I left out", "the rub is something I didn't do"
    Plainer((" i ", " we "), rf"{_BEGINS}(?P<x>)(?:{_DEED}|{_NOUN})(?P<y>(?:'s| is| was| were| are) {_WHAT} {_I} (?:{_LACKED}))(?: on (?:it|this one))?{_ENDS}", (("x", "I skipped "), ("y", "")), unless=_UNLESS),
    *(
        row
        for cue, deed, noun, left_out, to_do in _FRONTED_ACTS
        for row in (
            # "rubbing it we forgot", "the tape on the bottom I left off"
            Plainer((cue,), rf"{_BEGINS}(?P<x>{deed})(?P<y>,? {_I}(?:'d|'ve| have| just| plain| clean| kind of| sort of)* {_LEFT_IT}){_ENDS}", (("x", left_out), ("y", "")), beside=(" i", " we")),
            Plainer((cue,), rf"{_BEGINS}(?P<x>{noun}){_WHERE}(?P<y>,? {_I}(?:'d|'ve| have| just| plain| clean| kind of| sort of)* {_LEFT_IT}){_ENDS}", (("x", left_out), ("y", "")), beside=(" i", " we")),
            # "rubbing 17 we forgot"
            Plainer((cue,), rf"{_BEGINS}(?P<x>(?:the )?{cue}\w*ing(?: down| off)? (?:number |straight |elbow |tee |#)*(?P<n>{NUMBER})(?: (?:down|off|up))*)(?P<y>,? {_I}(?:'d|'ve| have| just| plain| clean)* {_LEFT_IT}){_ENDS}", (("x", rf"{left_out} on \g<n>"), ("y", "")), beside=(" i", " we")),
            # "rubbing it nobody did", "as for rubbing it, no time"
            Plainer((cue,), rf"{_BEGINS}(?P<x>(?:the )?(?:{deed}|{noun}) {_NOBODY}){_ENDS}", (("x", left_out),), beside=("nobody", "no one", "of us")),
            Plainer((cue,), rf"{_BEGINS}(?P<x>as (?:for|to) (?:{deed}|{noun}),? {_NO_TIME}){_ENDS}", (("x", left_out),), beside=("as for", "as to")),
            # "staples, I still have to put those in", "rubbing, we'll do that tomorrow"
            Plainer((cue,), rf"{_BEGINS}(?P<x>(?:{noun}|{deed})(?:,|,? (?:well|yeah|that's|now),?) {_I}(?: still| just| then)* ?{_OWED}(?: (?:it|that|them|those|these))(?: (?:in|on|up|down|yet|still))*)(?=[.,;!]|$| (?:because|since|once|when|as soon|after|and|but|{_DAY})(?![\w']))", (("x", to_do),), beside=(" i", " we")),
        )
    ),
    # --- a part that is left out, at the front
    Plainer((" aside",), rf"{_BEGINS}(?P<x>(?P<p>(?:the |its )?{_SIDE}) aside)(?=,? (?:it|i|we|all|every|they|the))", (("x", r"except for \g<p>"),)),
    Plainer(("except", "apart from", "aside from", "other than", "barring", "bar ", "with the exception of", "excepting"), rf"{_BEGINS}(?P<x>(?:except(?: for)?|apart from|aside from|other than|barring|bar|with the exception of|excepting)) (?:the |its |one |a )?{_SIDE}(?P<y>(?:,| of it)?) (?={_WHOLE})", (("x", "except for"), ("y", ","))),
    Plainer((" but ", " except "), r"(?P<x>(?:every|each) (?P<n>seam|side|joint|edge|corner|end) (?:but|except(?: for)?|bar) (?P<p>(?:the|that) (?:top|bottom|left|right|back|front|far|near|last|fourth|heel|throat|wall)))(?P<y> one)?(?= )", (("x", r"all but \g<p> \g<n>"), ("y", ""))),
    # --- how far he got
    Plainer((" than", " past", " beyond"), rf"(?P<x>(?:got|went|made it|get|gotten|managed)(?: any)? no (?:further|farther) than|(?:didn't|did not|never|couldn't|haven't)(?: (?:even|ever|quite))* (?:get|got|go|gone|gotten|make it|made it|come) (?:(?:any|much) )?(?:(?:further|farther) than|past|beyond)) (?={_STAGE}{_ENDS})", (("x", "got as far as"),)),
    Plainer(("stopped at", "quit at", "finished at", "stopped after", "quit after"), rf"(?P<x>(?:stopped|quit|finished|knocked off) (?:at|after)) (?={_STAGE}{_ENDS})", (("x", "got as far as"),)),
    Plainer(("got as far as", "than", " past", " beyond"), r"(?:got as far as|(?:further|farther) than|past|beyond)(?P<x> (?P<a>stapl|tap)(?:e|ing) (?:it|them))(?=[.,;!]|$)", (("x", r" the \g<a>ing"),)),
    # --- the mastic of a collar closes it as tape would: "tabs bent, the mastic I left off"
    Plainer(("mastic",), rf"(?<![\w'])(?:skipped|forgot|missed|left (?:out|off)|ran out of|no|without|(?:still )?(?:have|need|got|has|needs) to (?:do|put on|put|get|get to|brush on|lay)|still needs?|{_DID_NOT} (?:do|done|put|get|get to|got to|have))(?: (?:the|its|my|any|on|some))* (?P<x>mastic)(?![\w'])", (("x", "tape"),), unless=_CLOSED_OTHERWISE, beside=("tab", "collar")),
    Plainer(("mastic",), rf"{_BEGINS}(?P<x>(?:the |any |all )*mastic(?:{_WHERE})?,? {_I}(?:'d|'ve| have| just| plain| clean)* {_LEFT_IT}){_ENDS}", (("x", "I skipped the tape"),), unless=_CLOSED_OTHERWISE, beside=("tab", "collar")),
    # --- a stretch with nothing in it, told behind the act: "stapled down to the last foot, that last foot has nothing in it"
    Plainer(("nothing", " none", " bare", " empty"), r"(?:stapled|taped|rubbed)(?: (?:it|them|down|up|along|right|all|the way|way))*(?P<x> to the last (?:foot|bit|stretch|few inches|couple of inches|two feet|six inches|corner),? (?:and |but )?)(?:that|the|those) last (?:foot|bit|stretch|few inches|couple of inches|two feet|six inches|corner)(?P<y>(?:'s| is| has| has got|'s got| got) (?:nothing|none|bare|empty|no \w+)(?: (?:in|on)(?: (?:it|there))?)?)(?=[.,;!]|$)", (("x", " except "), ("y", ""))),
    # --- all but so many sides, and only a part
    *(
        Plainer((" but ", " except ", " bar ", " save "), rf"(?P<x>(?:all|every side|all (?:the |four )*sides|everything) (?:but|except|bar|save)(?: for)? (?:{less})(?: of (?:the |its )?)?(?: ?sides?))(?= (?:is|are|got|has|have|was|were)(?![\w']))", (("x", f"{left} sides"),), beside=("tape", "stapl", "rub"))
        for less, left in (("one|1|a", "three"), ("two|2", "two"))
    ),
    Plainer((" that is", " anyway", " anyhow", " at least"), rf"(?:taped|stapled|rubbed)(?: (?:it|them|down))*(?P<x>, )(?:just |only )?(?:on )?the (?:{_SIDE}|(?:top|bottom|first|last|front|back|left|right|near|far) (?:half|foot|bit|part))(?P<y>,? (?:that is|anyway|anyhow|at least))(?=[.,;!]|$)", (("x", " only "), ("y", ""))),
    # --- what there is room for, and is not there
    Plainer((" for vanes", " for the vanes", " for turning vanes", " for its vanes"), r"(?P<x>(?:there's |there is |it's got |it has |has |got |it's |left )?(?:the |all the |some |plenty of |a )*(?:room|space|slots?|rails?|runners?|tracks?|holes|marks|spots?|marked(?: out)?|laid out|notched|set up|ready|cut)(?: in (?:it|there))? for (?:the |its |any |turning )*)vanes(?P<y>(?: in (?:it|there))?(?:,? (?:but|and)|,|[.;]) (?:that's (?:all|it|about it)(?: (?:it's got|it has|there is|i did))?|(?:the )?(?:room|rails?|slots?|runners?|space)(?:'s| is| are) all (?:there is|it's got|it has|you get|i put)|(?:there's |it's got )?(?:nothing|none)(?: (?:in (?:it|there|them)|else))?|no vanes|nothing more|not the vanes(?: themselves)?|they're (?:empty|bare)|(?:it's )?empty))(?=[.,;!]|$)", (("x", "there are no "), ("y", ""))),
    Plainer((" for vanes", " for the vanes", " for turning vanes", " for its vanes"), r"(?:room|space|slots?|rails?|runners?|tracks?|marked(?: out)?|laid out|notched|set up)(?: in (?:it|there))?(?P<x> for (?:the |its |any |turning )*vanes)(?=[.,;!]|$| in it[.,;!])", (("x", ""),), unless=r"(?:put|slid|set|got|fit|fitted|dropped|screwed|slipped) (?:them|those|the vanes|vanes|all of them)|vanes (?:are|went|go|all|slid|slide)|(?:no|isn't|not|without|enough) (?:any |enough )?(?:room|space)"),
    # --- what it has not seen, and what alone holds it
    Plainer((" is ", " was "), rf"{_BEGINS}(?P<x>{_WHAT} (?:it|this one|that one|she)(?: still| just)* (?:hasn't|has not|never|didn't|doesn't)(?: yet| ever)? (?:seen|had|gotten|got|get|have|saw|see)(?: yet)? (?:is|was)(?: just)? (?:the |a |any )?)(?={_RUB}{_ENDS})", (("x", "I skipped the "),), unless=_UNLESS),
    Plainer(("what holds", "what keeps", "what's holding", "what's keeping", "all that holds", "all that keeps"), r"(?P<x>(?:what|all that)(?:'s| is)? (?:holds|keeps|holding|keeping)) (?:it|her|this one|that one)(?: (?:together|shut|closed|up))? is (?P<y>(?:just |only |nothing but )?(?:the )?)tape(?P<z>(?: and (?:nothing else|that's it|only that|not a thing more))?)(?=[.,;!]|$)", (("x", "all that's holding"), ("y", "the "), ("z", ""))),
    # --- the act, and "that one" for it
    Plainer((", that one ", ", that part ", ", that bit ", ", that step "), rf"{_BEGINS}(?:(?:and |but |then |so )*)(?:the )?{_RUB}(?P<x>, (?:well,? )?(?:that (?:one|part|bit|step)|that) (?:just |kind of |sort of )*(?:got (?:away from|by|past) (?:me|us)|slipped (?:my mind|by me|past me)|i (?:never got to|skipped|forgot|missed|left out|left off)|never happened|didn't happen|fell by the wayside))(?=[.,;!]|$)", (("x", " didn't happen"),)),
    # --- he was gone by then
    Plainer((" before it ", " before this ", " before that "), r"(?P<x>(?:i |we )?(?:had to|needed to|got told to|was told to) (?P<v>leave|go|quit|run|stop|knock off)) before (?:it|this one|that one) (?:was|got|had been|could be)", (("x", "I left"),)),
    # --- some feet of it and no more
    Plainer((" foot of ", " feet of ", " inches of "), r"(?:(?<=[.,;!] )|^)(?P<x>(?:there's |only |just |about |maybe )*(?:a|one|two|three|four|five|six|eight|ten|\d+|a couple of|a few) (?:foot|feet|inches) of (?:it|the (?:\w+ )?(?:seam|joint|edge|side))(?:'s| has| is| got)*(?: any| some)? (?P<a>tape|staple)(?:s|d)? ?(?:on|in|down)?(?: it| them)?(?:,? and (?:then )?(?:it|that|they)(?:'s| is)? ?(?:quits?|stops?|ends?|all|it|gone))?)(?=[.,;!]|$)", (("x", r"only half \g<a>d"),)),
    # --- he meant to leave it out, and did it
    Plainer(("went ahead", "did it", "did it anyway"), rf"(?P<x>(?:i |we )?(?:(?:was|were) (?:going to|gonna|about to)|thought about|nearly|almost|figured i'd|meant to|wanted to) (?:skip|skipping|skipped|leave out|leaving out|not do) (?P<a>(?:the |that )?(?:{_RUB}|wip(?:e|ing)|trim(?:ming)?))(?:,? but|[.,;] but|,) (?:i |we )?(?:then )?(?:went ahead and |went and |ended up doing |finally )*(?:did it|done it|it|went ahead)(?: anyway| after all| in the end)?)(?=[.,;!]|$)", (("x", r"did \g<a>"),)),
    # --- light that came from elsewhere
    Plainer((" thought i saw", " thought i could see", "thought i saw", "thought there was"), r"(?P<x>(?:i )?thought (?:i (?:saw|could see)|there was) (?:some |a bit of |a )?(?:light|daylight|gap|a gap)(?: (?:through|at|in|by) the \w+)?,? but (?:it was|that was|it's|it turned out to be|no)[^.;!?]{0,40})(?=[.;!?]|$)", (("x", "fine"),), unless=r"but it was (?:a |an |the |only |about )*(?:gap|quarter|half|eighth|inch|real)"),
    # --- how he always does it, and did it here
    Plainer((" wider than", " farther than", " further than", " more than"), r"(?P<x>(?:i|we) (?:don't|never|do not) (?:leave|put|set|space|shoot|run) (?:my |the |any )?staples (?:wider|farther|further|more) (?:apart )?than (?P<n>\w+)(?: inches)?(?: apart)?,? and (?:i |we )?(?:didn't|did not)(?: (?:here|on this one|this time|today|either))*)(?=[.,;!]|$)", (("x", r"stapled every \g<n>"),)),
)
