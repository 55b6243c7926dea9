"""English for several pieces told of together and for one of them."""

from __future__ import annotations

from types import MappingProxyType

from logbook.languages.several import Several

_B = r"(?<![\w'])"
_DIGITS = r"(?:[a-z]-?)?\d{1,3}"
_WORDS = r"(?:thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?)"
_SMALL = r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)"
_NUM = rf"(?:\d+(?:[ -]\d+/\d+|\.\d+|/\d+)?|{_WORDS}|{_SMALL})"
_MEASURE = (
    rf"(?<![\w/'-])(?:(?:about|around|maybe|roughly|like|close to|nearly|almost) )?(?:(?:an? |one )?(?:half|quarter)(?: (?:of )?an)?|(?:{_NUM}|an?) (?:sixteenths|eighths|quarters)|{_NUM}(?: and (?:a|one|three|an) (?:half|quarters?|eighths?))?|an inch and an? (?:half|quarter|eighth)|a foot(?: and a half)?)"
    r"(?:[ -](?P<u>inch(?:es)?|feet|foot|ft|degrees?|pounds)|\")?(?![\w/'-])"
)
_THINGS = r"(?<![a-z])(?:stapl\w*|spac\w*|tap(?:e|ed|ing)|rub\w*|scrim|vanes?|tabs?|flap|hang\w*|straps?|screw\w*|washers?|gap|joint|wip\w*|dust\w*|dirt\w*|greas\w*|trim\w*|insulation|legs?|groove|step|tear|torn|hole|rip\w*|crush\w*|delaminat\w*|punctur\w*|dent\w*|gouge\w*|gash\w*|peel\w*|soak\w*|damag\w*|wet|patch\w*|mend\w*|fix\w*|damper|degrees|pressure|air|test\w*|leak\w*|buried|outside|roof|kitchen|cloth|mastic|foil|masking|closure|moves?|goes in|slope|clinch\w*|warm\w*|heat\w*|done|good|fine|ok|okay|finished|seam|corner|bottom|top|side|sides|end|facing|built|made|by)(?![a-z])"
_ADJ = r"(?:first|second|third|fourth|last|middle|other|next)"
_LOOKS = r"(?:big|bigger|biggest|small|smaller|smallest|little|long|longer|longest|short|shorter|shortest|left|right|left-hand|right-hand|upper|lower|odd|new|old|near|far)"

ENGLISH_SEVERAL = Several(
    cues=rf"{_B}(?:both|all|each|neither|none|they(?:'?re|'?ve)?|them|the (?:other|first|second|third|last|middle)|(?:two|three|four|five) of|(?:one|two|three|four|five) {{several}}|everything|except|apart from|those (?:on|in)|the ones? (?:in|on)|first one|one of)(?![\w'])|{_B}(?:{{several}}) {_DIGITS}|\d,? (?:and|&) (?:{{kind}} )?\d",
    digits=_DIGITS,
    numerals=_WORDS,
    number=rf"(?:{_DIGITS}|{_WORDS})",
    no_name=r"(?: ?(?:\"|°|%)|[ -](?:inch(?:es)?|mm|cm|millimet(?:er|re)s?|centimet(?:er|re)s?|in\.|ft|feet|foot|degrees?|pounds?|lbs?|percent|by|x|times|o'clock|sided|sides?|gauge|cfm|long|wide|deep|apart|staples|tabs|hangers|screws|vanes|minutes|hours|pieces|and an? (?:half|quarter)|and three quarters|eighths|\d+/\d+|straights|elbows|tees|sleeves|caps|of|in twenty|over|back)(?![\w'])|[/.]\d|-\d|\w|x\d)",
    no_name_before=r"(?:every|at|about|around|than|by|x|ul|in twenty|over|under|roughly|maybe|nearly|only|run|line|floor|room|within|is like) $",
    joins=r"(?:, and |, | and | & | nor | or )",
    neither=r"(?<![a-z])neither $",
    on_it=r"(?:^|[.;:?!,] |(?<= )but |(?<= )and )(?:and |but )*(?:on|in|for|with) (?:number )?$",
    told_of=r",? (?:they|they'?re|it|it's|i|we|the|there|there's|no|only|all|nothing|every)(?![\w])",
    listed=r"^(?:(?:straights|elbows|tees|sleeves|branches|offsets|transitions|reducers|caps|collars|pieces|numbers|marks) )",
    with_act=r" *(?:(?:stapled|taped|rubbed|wiped|trimmed|closed|hung)(?: down| up)? (?:the |number )*)",
    ranges=r"(?: through | thru | to |-| up to )",
    led=r"(?:number|numbers|mark|marks|piece|pieces|no\.|#|fitting|fittings)",
    whole=(
        rf"{_B}(?:(?:all(?! [^.;?!]*(?:otherwise|(?:other|apart|aside) (?:than|from) that)(?![\w']))|both|each|every one|either)(?! of (?:his|hers|theirs|yours|their|your|(?!mine)[a-z]+'s)(?![\w']))(?: of)?(?: (?:them|these|those|'em|mine|ones?|(?:the |my |these |those |of )*(?:two |three |four |five |six )?(?:pieces|fittings|{{several}})|(?:of )?(?:the |my |these |those )?(?:two|three|four|five|six)(?! (?:sides?|seams|joints|corners|ends|edges|flaps|inch\w*))))?"
        r"(?! (?:around|round|the|sides?|ends?|seams?|joints?|corners?|edges?|flaps?|of it|right|i\b|staples?|tabs?|hangers?|straps?|vanes?|screws?|time|day|(?:two|three|four) (?:sides|seams|joints|corners|ends|edges|flaps)|over|along)(?![\w']))"
        r"|(?:the )?(?:two|three|four|five) of them|everything(?= (?:on|is)|'s| has)|(?:the|these|those|my) (?:two |three |four )?{several}|(?:two|three|four|five|six) (?:of (?:the|my) )?(?:{several}|pieces|fittings)|the (?:pair|lot)(?! on)|(?:^|(?<=[.;?!] )){several}(?=,))(?![\w'])(?<!at all)"
    ),
    theirs=rf"{_B}(?:they(?=(?:re|ve)(?![\w]))|(?:they|them|these|those)(?![\w]))",
    nothing=(
        rf"{_B}(?:none of (?:them|these|those|the (?:two|three|four|five|six|{{several}})|(?:the )?{{several}}|my {{several}})|neither(?: of (?:them|these|those|the (?:two|{{several}})))?(?: one)?(?! (?:number |{{kind}} )?\d))(?P<v> (?:got|get|gets|has got|have got|has any|have any|has|have|had|is|are|was|were|did|does))?(?![\w'])"
    ),
    some=rf"{_B}(?P<c>one|two|three|four|five|six|seven) of (?:them|these|those|the (?:{{several}}|two|three|four|five|six|seven|pieces)|my {{several}})(?![\w'])",
    done_to=r"(?<![a-z])(?:taped|stapled|rubbed(?: down)?|wiped(?: down)?|trimmed|patched|tape|staple|rub|wipe|trim|patch) (?:number )?$",
    the_one_in=r"(?<![a-z])(?:(?:the|that) ones?|those|(?:^|(?<=[.;?!,] ))(?:the )?(?:hangers|staples|tabs|straps|screws)) (?:in|on|at|for|from) (?:number )?$",
    rest=rf"{_B}(?:the )?(?:rest(?: of (?:them|those))?|others|other (?:two|three|four|five)(?: (?:{{several}}|ones))?)(?![\w'])(?! of (?:the|it))",
    beside=r"(?<![a-z])(?:on|in|of|for|to|with|at) (?:the )?$",
    few=rf"{_B}(?:the |my )?(?P<n>first|last) (?P<c>two|three|four|five)(?: ones| pieces| of them)?(?! (?:inch|feet|foot|sides|seams|joints|weeks|days|inches))(?![\w'])",
    counts=MappingProxyType({"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7}),
    one_of=rf"{_B}(?:one of (?:them|the|these|those|my)(?: (?:two|three|four|five))?(?: (?:{{several}}|pieces))?)(?=[^.;?!]*,? (?:that's|that is|it's|and that's|namely) (?:number |mark |the {{kind}},? )?(?P<m>{{name}})(?![\w/]))",
    placed=(
        rf"{_B}(?:the |my |that |(?<! at )(?<!,at ))(?P<n>{_ADJ}|{_LOOKS})(?: (?:one|piece|(?P<k>{{kind}})))?(?: of (?:the|those|these) (?:pair|two|three|lot|{{several}})| of them)?"
        r"(?:(?:, |,? (?:that's|which is|i mean) | (?=number|mark|no\.|#))(?:number |mark |no\. |#)?(?P<m>{name})(?!{no_name})(?P<c>,)?)?(?![\w])"
        r"(?=[,.;:?!]|$|'s|(?<=,) | (?:is|isn't|was|wasn't|are|has|hasn't|had|got|gets|goes|doesn't|does|didn't|did|never|needs|still|came|comes|went|i|we|i've|i'd|on|with|without|no|not|only|every|at|measures|measured|runs|ran|stapled|taped|rubbed|and|but|it's|it|the|there's|tabs|hangs|moves|weighs|four|three|two|didn't|wasn't|\d+|ten|twelve|eight|nine|six|five|fourteen|sixteen)(?![\w]))"
    ),
    places=MappingProxyType({"first": 0, "second": 1, "third": 2, "fourth": 3, "middle": 1, "last": -1, "other": None}),
    called=rf"{_B}(?:the )(?P<k>{{kind}}|(?P<s>{_NUM} by {_NUM}))(?:'s| is)(?: (?:number|mark))? (?P<m>{{name}})(?!{{no_name}})(?![\w])",
    subject=r"(?:'s (?:got|fine|good|done|the|staples|tape|flap|side|vanes|screws|tabs|fan|corner|bottom|hangers|side|side's|is|been|not|all|at|every|just|only|missing|taped|stapled|rubbed|outside|buried|in)|'s (?=[a-z])| (?:is|isn't|was|wasn't|has|hasn't|had|hadn't|got|gets|did|didn't|does|doesn't|never|needs|still|came|went|looks|leaked|held|closes|goes|moves|runs|torn|ripped|crushed|soaked|punctured|delaminated|dented|i|we|i'm|i've|got|next to it|on the other hand|too|not)(?![\w']))",
    starts=r"[.;:?!,] +|(?<= )(?:but|except that|except for|except|(?<!the )only|though|although|while|and|so|just|because|apart from|aside from|other than|save|whereas|then|plus)(?= )",
    leads=r"(?:and |but |so |then |well |oh |now |also |with |for |on |in |of |as for |it's |that's |number |mark |the one on |the one in |the ones on |the )*",
    apart=r"(?:except(?: for| that)?|apart from|aside from|other than|all but|but not|only not|bar|save|excepting|besides)(?: on| for| in| at)? $",
    leans=(
        r"(?<![a-z])(?:next to|beside|into|onto|against|near|like|than|between|behind|past|before|after|off|goes to|tied to|connects? to|joins|runs to|feeds) (?:the |number )?(?:{kind} )?\d"
        r"|(?<![a-z])(?:i mean|sorry|no|not|correction|make that|rather|actually|scratch that),? (?:it's |that's |the |number |mark )*(?:{kind} )?{name}(?=[.,;]|$)|(?<![a-z])(?:mixed (?:it |them )?up|swapped|renumbered|alike|ditto|other way (?:round|around)|respectively|used to be|supposed to|should have|should be|tomorrow i|i'll|we'll|going to|gonna)(?![a-z])"
    ),
    agree=(("'re", "'s"), ("re", "'s"), ("ve", " has"), (" are", " is"), (" were", " was"), (" have", " has"), ("'ve", " has"), (" aren't", " isn't"), (" weren't", " wasn't"), (" haven't", " hasn't"), (" don't", " doesn't"), (" need", " needs"), (" still have", " still has"), (" all", ""), (" both", ""), (" each", "")),
    hollow=rf"(?:{_NUM}|[a-z]-?\d+|i|i've|we|we've|got|have|has|did|do|made|built|took|done|two|three|the|these|those|both|all|of|them|they|they're|it|it's|is|are|and|or|on|off|in|to|so|hey|boss|ok|okay|well|today|yesterday|here|this|morning|afternoon|my|mine|a|an|that's|that|there's|there|main|bench|number|numbers|mark|marks|piece|pieces|one|ones|each|against|wall|next|up|now|straights?|elbows?|tees?|sleeves?|branch|branches|offsets?|transitions?|reducers?|caps?|end|collars?|wyes?|plenums?|ready|hang|by|total|altogether|for|you)",
    things=_THINGS,
    measure=_MEASURE,
    laid=r"(?<![a-z])(?:long|wide|deep|square)(?![a-z])",
    denied=r"(?<![a-z])(?:no|not|never|none|without|nothing|\w+n't)(?![a-z])",
    hedged=r"(?<![a-z])(?:think|guess|maybe|probably|might|sure|reckon|believe)(?![a-z])",
    same_but=r"tape on [^.?!]*? same(?: tape| stuff| kind| thing)?,? (?:but|only) ",
    same=r"[ ,]*(?:is |was |got |'s )?(?:just )?(?:the )?same(?: thing| way| deal| story)?(?: there| again)?[ ,.]*",
    short=r"[ ,]*(?:(?:i|we) (?=hav|did))?(?:'s the (?:only )?one (?:that|which) |still |just |though |too |either |yet )*(?:(?P<no>isn't|wasn't|ain't|doesn't|didn't|hasn't|haven't|don't|is not|was not|did not|does not|has not)|(?P<yes>is|was|does|did|has))(?: yet| though| either| too| all right| it)*(?:, |[ ,.!]*)",
    acts=r"(?<![a-z])(?:stapled|taped|rubbed down|rubbed|wiped down|wiped|trimmed|patched|warmed|hung|clinched)(?![a-z])",
    is_not="isn't", is_so="is", the="the",
    not_it=r"(?:,? ?(?:but|and|just) )?(?:not|isn't|wasn't)(?: (?:at all|yet|so far))*[ ,.!]*",
    nouns=r"(?<![a-z])(?:legs of the staples|staple legs|legs|staples|tabs|hangers|straps|screws|vanes|washers)(?![a-z])",
    sides=r"(?<![a-z])(?:side|sides|top|bottom|left|right|back|front|end|ends|seam|corner|flap|foot|throat|heel|joint|places|spots?|part|half|last|first)(?![a-z])",
    of_one_piece=r"(?<![a-z])(?:seams|sides|joints|corners|flaps|ends|tabs|staples|screws|holes|tears|vanes|hangers|panels)(?![a-z])",
    classes=frozenset(("181", "475", "723", "800")),
    of_one="number",
    nots=MappingProxyType({"is": "isn't", "are": "isn't", "was": "wasn't", "were": "wasn't", "has": "has no", "have": "has no", "had": "had no", "any": "has no", "does": "doesn't", "did": "didn't", "got": "never got", "get": "never gets", "gets": "never gets"}),
    never="never", it="it",
    doubt="about ",
    farewell=4,
    bye=r"(?:(?:okay|ok|alright|all right|thanks|thank you|bye|over|that's it|that's all)[,.! ]*)+",
    answers=r"(?<![a-z])(?:it|its|it's|they|they're|them|those|these|this|one|ones|other|others|both|rest|all|each|none|neither|any|no|nope|not|never|nothing|\w+n't|yes|yep|still|yet|later|soon|after|before|tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|tonight|next|need\w*|have|has|had|will|\w+'ll|want\w*|left|wait\w*|finish\w*|do|does|did|done|same|too|either|except|but|to do|two|three|four|five|six|seven|eight|nine|ten|open|missing|undone|coming)(?![a-z])",
    next_one=r"(?:(?:and|then|next|next up|now|okay|ok|alright|all right|so|also)[,.]? )*(?:an? |the |my )?",
    of_all=(
        (r"(?:either|any) of (?:those|these)(?: two)?(?=[.,;!]|$)|(?<=on )(?:these|those)(?=[.,;!]|$)|(?<=\bthe tape on )the whole (?:lot|bunch)\b|(?:the whole |the )(?:pair|lot|bunch)(?=[.,;!]|$| (?:needs?|tomorrow|later|today|tonight|is|isn't|still|waits?|gets?|has|hasn't|when|before|after|didn't|doesn't)\b)|(?:these|those) two(?=[.,;!]|$)|(?<=for )the two(?=[.,;!]|$)|(?:a|a single) one of (?:them|these|those)|(?<=rubbed )anything(?=[.,;!]|$)|(?<=rubbed )them(?=[.,;!]|$)", "it"),
    ),
    of_two=r"\b(?:either|pair|two)\b",
    of_mark=r"(?<=[.!?] )(?:(?:actually|wait|correction|oh|no|and|but|sorry),? )*(?P<m>{mark})(?={subject})|(?:(?<!stapled )(?<!staples )\bon|\bi lied about|\bforgot to (?:rub|tape|staple)) (?:number )?(?P<n>{mark})(?=[.,;!]|$)",
    of_others=(
        r"\b(?:both(?! back)|neither(?= (?:one|of)\b|[.,;]|$)|either of|(?:on|in|for|to|of|with) either(?! (?:side|end|edge|seam|joint|face|way))|same|likewise|ditto|identical|former|latter|as before|previous|none(?= (?:went|go|goes|got|gets|are|were|had|have|has|is|was)\b)|(?:of|all|any|for|to|with) (?:them|these|those)|other (?:one|two|piece|ones|{kind})"
        r"|(?:first|second|third|last) (?:one|piece|{kind}|(?:two|three)(?= (?:are|were|have|had|got|aren't|don't|i|we)\b|[.,]))|another one|(?:the|that|this|my) {kind}(?! (?:number |no\.? ?|#)?\d)|like (?:the|that|this|it|i)|all (?:two|three|five|six|four(?! (?:sides|seams|joints|corners|edges|ends|around|round|of (?:its|the|my)))(?= (?:of|are|have|got|{kind}|piece)))|the (?:two|three|four|five) of)\b"
        r"|(?:^|[.;?!] )(?:(?:and|but|also|then|so|oh|okay) )*(?:all(?! (?:except|but|sides|four|around|round|over|the way|of it|right|set|that|this|i|we)\b)|every\w*|nothing|nobody|no one|they|these|those|them|the (?:rest|others?)|any|each|scratch|strike|forget|drop|delete)\b"
    ),
)
