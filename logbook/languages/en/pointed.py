"""English that points back to a piece: "the tee isn't taped", "no tape on the straight", "the second one has none"."""

from __future__ import annotations

from types import MappingProxyType

from logbook.languages.pointed import Pointed

_SAYS = (
    r"(?='s|\s(?:is|isn't|was|wasn't|has|hasn't|had|hadn't|got|gets|doesn't|does|didn't|did|never|needs|need|still|went|wants|don't|isnt|wasnt|doesnt|didnt|hasnt|ain't|has to|looks|came|only|gonna|goes|without|with no|(?:i|we) (?:did|didn't|haven't|have|never|forgot|skipped|taped|stapled|rubbed|put|left|only|just|got|couldn't|used|had|wiped|trimmed|did not|have not)|(?:i've|we've|i'd|we'd|i'll|we'll)|to)(?![\w']))"
)
_SO = r"(?:^|(?<=[.,;?!] )|(?<=\bbut )|(?<=\band )|(?<=\bso )|(?<=\bthough )|(?<=\bexcept )|(?<=\bis )|(?<=\bthat )|(?<=\bbecause )|(?<=\bwhile )|(?<=\bthink )|(?<=\bonly ))"
_NOT_A_NUMBER = r"(?! (?:number |no\. ?)?(?:\d|one\b|two\b|three\b|four\b|five\b|six\b|seven\b|eight\b|nine\b|ten\b|eleven\b|twelve\b|\w+teen\b|(?:twen|thir|for|fif|six|seven|eigh|nine)ty))"
_TOLD = (
    r"(?:(?:^|(?<=[.,;?!] ))(?:(?:and|but|so|also|except|only|well|oh|okay|yeah|well|then|plus) )*(?:(?:there's|theres|there is|i've got|i got|we've got|got|it's|i see|i|we|forgot|skipped|missed|didn't|didnt|haven't|havent|not|did|never|still|have|need|needs|to|put|got|get|was|is|are|were) )*"
    r"(?:(?:any|the|a|an|my|some|all|no|not|little|small|big|bad|half|quarter|three|two|inch|eighth|sixteenth|good|bit|of|cloth|duct|masking|foil|short|wrong|turning|listed|more|every|other|four|open|hole|puncture|through|under|dust|dirt|dusty|dirty|behind|over|at|two|joint|end) )*"
    r"(?:none|nothing|dust|dirt|tape|taped|stapled|staples?|vanes?|flap|tabs?|scrim|tear|tears|rip|hole|holes|puncture|gap|gaps|dust|dirt|mastic|damage|dent|joint|joints|step|washers|screws|rubbing|rub down|rubbed|trimming|wiping|wiped|trimmed|rub|tape job|facing|foil|seam|seams)(?: (?:down|up|showing|shows|open|missing|left|still|done|bent))*)"
)

_NO_PLACE = "".join(rf"(?<!(?<![a-z]){word} )" for word in "as like than into from by against near beside behind above below matches onto".split()) + r"(?:(?<! to )|(?<=got to )|(?<=get to ))(?<![\w'])"
_NO_MORE = (
    r"(?![\w'-]*-)(?!\w)(?!(?:'s| is| was| isn't| wasn't)? (?:[a-z]+'s|his|hers|theirs|yours|mine)(?![a-z]))(?!(?:'s| is| was) an? )(?!,? (?:that's |which is |it's )?(?:number |no\.? |#)?\d)"
    r"(?! (?:of|that|which|who|run|line|leg|side|end|joint|piece|seam|panel|collar|flange|flap|neck|throat|boot|cap)(?![a-z]))"
)

ENGLISH_POINTED = Pointed(
    kinds=MappingProxyType({
        "straight": "straight", "straight duct": "straight", "elbow": "elbow", "ell": "elbow", "tee": "tee", "branch": "branch", "wye": "wye", "cap": "end_cap", "end cap": "end_cap", "collar": "collar", "boot": "collar",
        "offset": "offset", "transition": "transition", "reducer": "transition", "plenum": "plenum", "damper sleeve": "damper_sleeve", "sleeve": "damper_sleeve", "equipment connection": "equipment_connection", "connection": "equipment_connection",
        "access door": "access_door",
    }),
    several=MappingProxyType({"straights": "straight", "elbows": "elbow", "ells": "elbow", "tees": "tee", "branches": "branch", "wyes": "wye", "caps": "end_cap", "end caps": "end_cap", "collars": "collar", "offsets": "offset", "transitions": "transition", "reducers": "transition"}),
    kind=(
        rf"{_SO}(?P<x>(?:(?:the|that|this|my) )?{{kind}}){_SAYS}(?!(?: (?:is|was)|'s)? (?:\w+ ){{0,2}}(?:\d+|\w+) by )",
        rf"{_TOLD} (?:on|in|of|for|from) (?P<x>(?:the|that|my) {{kind}}){_NOT_A_NUMBER}(?= *(?:[.,;?!]|$)| (?:that |which )?(?:i|we|is|isn't|and|but|yet|either|though|too|still|at|all)\b)",
        rf"(?:^|(?<=[.?!] ))(?:(?:and|but|now|so|then|as) )*(?:on|in|for|with) (?P<x>(?:the|that|my) {{kind}}){_NOT_A_NUMBER}(?=,| (?:no|not|i|it|the|there|nothing|every|only|three|two)\b)",
        r"(?:the|one) (?:with|without|that has|that's got|missing|that needs|that's missing|that isn't)[^.,;?!]{2,40} (?:is|was|would be) (?P<x>the {kind})(?= *(?:[.,;]|$))",
        rf"(?:^|(?<=[.,;?!] )|(?<=\band )|(?<=\bbut ))(?:(?:i|we|also|then|did|just|never|forgot to|didn't|didnt|haven't|havent|have|not|couldn't|could|only|still have to|have to|need to|got to) )*(?:tape|taped|staple|stapled|rub|rubbed|wipe|wiped|trim|trimmed) (?P<x>(?:the|that) {{kind}}){_NOT_A_NUMBER}(?= *(?:[.,;?!]|$)| (?:yet|with|and|but|at|down|too|all|every)\b)",
        rf"(?:^|(?<=[.,;?!] )|(?<=\band )|(?<=\bbut ))(?:except|but not|not|all but|everything but|just not|only not) (?P<x>the {{kind}}){_NOT_A_NUMBER}(?= *(?:[.,;?!]|$))",
        rf"(?<![\w'])(?:all|every\w*|both)(?:'s| is| are| of \w+)? [^.,;?!]{{0,24}}? (?:but|except|except for|bar|minus|excepting|besides) (?P<x>the {{kind}}){_NOT_A_NUMBER}(?= *(?:[.,;?!]|$))",
    ),
    place=(
        r"(?P<x>the (?P<n>former|latter)(?: one)?)(?='s|[.,;?!]|$|\s(?:every|at|on|with|in|no|none|not|by|only|two|three|four|to|for|and|but|without|got|isn't|is|has|hasn't|didn't|never|i|we|i've)(?![\w']))",
        rf"{_SO}(?P<x>(?:the )?(?P<n>first|last) (?P<c>two|three|four|five|six)(?: ones| pieces)?)(?=\s(?:are|aren't|were|weren't|have|haven't|had|got|don't|didn't|did|never|need|still|both|all|went|(?:i|we) (?:did|didn't|haven't|have|never|forgot|skipped|taped|stapled|rubbed|left|got|couldn't))(?![\w']))",
        r"(?:on|in|of|for|taped|stapled|rubbed|rubbed down|tape|staple|rub|did|not|except|but|just|only) (?P<x>the (?P<n>first|last) (?P<c>two|three|four|five|six)(?: ones| pieces)?)(?= *(?:[.,;?!]|$)| (?:and|but|yet|either|too|are|aren't)\b)",
        rf"{_SO}(?P<x>(?:the )?(?P<n>first|second|third|fourth|other|last|middle|former|latter)(?: one)?){_SAYS}(?! (?:time|i (?:taped|stapled|put)))",
        rf"{_NO_PLACE}(?P<x>the (?P<n>other) (?:one|{{kind}})){_NO_MORE}",
        r"(?:on|in|of|for) (?P<x>the (?P<n>one))(?=,? [^.?;]*?(?:on|in|of|for) the other(?: one)?(?= *(?:[.,;?!]|$)))",
        r"(?:on|in|of|for) (?P<x>the (?P<n>first|second|third|fourth|other|last|middle|former|latter)(?: one)?)(?= *(?:[.,;?!]|$)| (?:and|but|it|it's|i|i'm|i've|we|we've|you|there's|there is|there isn't|there was|there are|no|not|only|yet|either|too|is|isn't|was|are|two|three|four|nothing|nobody|half|all|(?:the|my|its) (?:tape|staples|flap|vanes|scrim|facing|foil|tabs|squeegee|gun|stapler|roll|back|top|bottom|joint|seam|insulation|groove|step|gap|throat)|tape|tape's|staples|vanes)\b)",
        r"(?<![\w'])the (?:first|second|third|last|other|former)(?: one)? (?:and|or) (?P<x>(?:the )?(?P<n>second|third|fourth|last|other|latter)(?: one)?)(?= *(?:[.,;?!]|$)| (?:and|but|not)\b)",
        r"(?:taped|stapled|rubbed|tape|staple|rub|did|not|except|but|just|only) (?P<x>the (?P<n>first|second|third|fourth|other|last|middle|former|latter)(?: one)?)(?= *(?:[.,;?!]|$)| (?:and|but|yet|either|too)\b)",
    ),
    places=MappingProxyType({"one": 0, "first": 0, "second": 1, "third": 2, "fourth": 3, "middle": 1, "last": -1, "other": None, "former": 0, "latter": -1}),
    looks=r"\b(?:first|second|third|fourth|other|last|middle|former|latter)\b|(?:straight|elbow|ell|tee|branch|wye|cap|collar|boot|offset|transition|reducer|plenum|sleeve|connection|door)(?:'s | (?:is|isn't|was|wasn't|has|hasn't|got|doesn't|does|didn't|never|needs|still|went|i |ain't|with|only|came|look|need|had|want))|the (?:end |damper |equipment |access )?(?:straight|elbow|ell|tee|branch|wye|cap|collar|boot|offset|transition|reducer|plenum|sleeve|connection|door)\b",
    other="the other",
    no_piece=(
        r"(?<![a-z])(?:guys?|fella|man|crew|mine|rolls?|guns?|box|boxes|coats?|layers?|pieces? of tape|strips? of tape)(?![a-z])"
        r"|(?<![a-z])(?:one|either|left|right|far|near|first|hinge) (?:side|end|seam|joint|edge|panel|half|flap|hanger|strap|corner|hole|tear|rip|vane|tab|collar|door|face)(?![a-z])"
        r"|(?<![a-z])between (?:this|it|that)(?: one)? and $"
        r"|(?<![a-z])(?:out|short|shy|low|rid) (?:of|on) $"
        r"|(?<!this )(?<!that )(?<!other )(?<!first )(?<!second )(?<![a-z])one(?='s| is| isn't| was| wasn't| has| got| of the| (?:i|we) |,| and)"
    ),
    parts=r"(?<![a-z])(?:side|seam|joint|end|edge|panel|half|strip|collar|door|hanger|strap|rod|damper|vane|the (?:top|bottom|back|left|right|front)|three (?:of the |of the four )?sides|sides? (?:\w+,? ){0,2}three)(?![a-z])",
    harms=r"(?<![a-z])(?<!no )(?:holes?|tears?|rips?|corners?|gaps?|cuts?|dents?)(?![a-z])",
    of_it=r"(?<![a-z])(?:the |a )?(?:holes?|tears?|rips?|gaps?|corners?|seams?|joints?|staples?|legs|hangers?|flap|tabs|vanes|step|facing|sides?|back|bottom|top|all|everything) (?:on|of|in|at|out of) $",
    joins=" and ",
    piece="number",
    pieces="numbers",
    listed=r"(?:(?<![a-z])(?:numbers|(?P<k>{several})) |(?:^|(?<=[.;?!] ))(?=[^.;?!]*[.;?!]))(?P<all>\d{1,3}(?:(?:,? and| &|,) \d{1,3})+)(?![\w/-])",
    counts=MappingProxyType({"two": 2, "three": 3, "four": 4, "five": 5, "six": 6}),
)
