"""English words for the insulation that has to come out of a male end or off a flap: taken out, or left in."""

from __future__ import annotations

from logbook.languages.language import State

_GLASS = r"(?:(?:extra |excess |surplus |leftover )?(?:insulation|glass|fiber ?glass|fib(?:er|re)s?|fluff|fuzz|wool|batting|stuffing))"
_LAP = r"(?:(?:staple |stapling )?flap|male end|male side|male part|male piece|male|lap|slip end|tongue|end)"
_SOME = r"(?: (?:all|of|the|its|that|any|some|every bit|most))*"
_AMOUNT = r"(?: (?:about|maybe|around|some|all|the|its|that|an?|one|two|half|quarter|inch|inches|bit|little|strip|layer|of|good|solid|whole|lot))*"
_PULL = r"(?:clean(?:ed)?|scraped?|pull(?:ed)?|peel(?:ed)?|strip(?:ped)?|took|take|taken|shaved?|cut|pick(?:ed)?|dug|dig|carved?|scoop(?:ed)?|pluck(?:ed)?|gouged?|got|get|rak(?:e|ed)|hollow(?:ed)?)"
_OUT = r"(?:out|off|away|back)(?: of)?(?! (?:the )?(?:\w+ )?(?:truck|van|shop|rack|pallet|box|bag|trailer|hole|warehouse|cart))"
_OF_LAP = rf"(?:(?: from| of)? (?:the |its |that )?{_LAP})?"
_NEVER = r"(?:never|nobody|no one|didn't|did not|haven't|have not|hasn't|forgot to|forgot|couldn't|can't|neglected to|failed to)"
_NOT = r"(?:never|not|isn't|wasn't|aren't|hasn't been|didn't|won't|wouldn't|ain't)"
_THINGS = ("FLAP", "MALE", "END", "SHIPLAP", "TRIM", "K_TRANSITION")
_FLAP = r" ?(?:staple |stapling )?flap"
_MALE = r"(?:the |its )?(?:male end|male side|male|slip end)"
_CUES = ("insulation", "glass", "fib", "fluff", "fuzz", "wool", "batting", "stuffing")

_DAY = r"(?:tomorrow|tonight|later|this (?:afternoon|evening)|(?:mon|tues|wednes|thurs|fri|satur|sun)day|next (?:week|shift)|first thing|in the (?:morning|afternoon)|after (?:lunch|break)|(?:once|when|as soon as) (?:i|we|the|my) )"
_WHOSE_LAP = rf"(?:,? (?:(?:that's|that is|left|still) )*(?:in|at|on|of|inside|from) (?:the |its |that )?{_LAP}(?: (?:of|on) (?:it|this one|that one|(?:the )?\w+(?: [\w-]+)?))?)?"
_IS_TO = r"(?:is to|has to|have to|needs to|must|will|'ll|is going to|'s going to|is gonna|'s gonna|gonna|has yet to|is yet to|is still to|still has to|still needs to|should)"
_CUT_OUT = r"(?:(?:cut|taken|pulled|scraped|trimmed|cleaned|shaved|dug|peeled|stripped|carved)(?: (?:out|off|away|back))?|removed)"

ENGLISH_GLASS_TOLD: tuple[State, ...] = (
    State(
        "trimmed",
        False,
        (
            rf"{_GLASS}{_WHOSE_LAP}(?: (?:then|only|just|still))* (?:comes|goes|gets {_CUT_OUT}|(?:is|'s) coming)(?: (?:then|only))*(?: (?:out|off|away|back))?(?=.*\b{_DAY})",
            rf"{_GLASS}{_WHOSE_LAP} ?{_IS_TO}(?: (?:still|then|just))* (?:come (?:out|off)|(?:be|get) {_CUT_OUT})",
            rf"{_LAP}(?: (?:of|on) \w+(?: [\w-]+)?)? (?:gets|will get|will have|is getting|has to get|is to get|has to have)(?: (?:its|the|all|that|of))* {_GLASS} {_CUT_OUT}",
        ),
        _THINGS,
        pending=True,
        apart=True,
        cues=_CUES,
    ),
    State(
        "trimmed",
        False,
        (
            rf"{_NEVER}(?: (?:even|ever|really|quite|got to|get to|get|bother to|bothered to))* {_PULL}(?:ing)?{_SOME} {_GLASS}(?: {_OUT}{_OF_LAP})?",
            rf"(?:in|inside|at) {_MALE}(?: of it)?,? (?:(?:all|the|its|that|of) )*{_GLASS}(?:'s| is| are| was)(?: (?:all|still|just|sitting))* (?:still|there|in there|in it|left)(?: (?:in|there|in there))*",
            rf"(?:left|leaving|leave){_AMOUNT} {_GLASS}(?: still| sitting| stuck)* (?:in|on|inside) (?:there|it|(?:the |its |that )?{_LAP})",
            rf"(?:there's|there is|there was|there are|got|has|have|had|with)(?: still)?{_AMOUNT} {_GLASS}(?: still| left)+ (?:in|on|inside)(?: (?:there|it|(?:the |its |that )?{_LAP}))?",
            rf"(?:there's|there is|there was|there are|got|has|have|had) still{_AMOUNT} {_GLASS} (?:in|on|inside) (?:there|it|(?:the |its |that )?{_LAP})",
            rf"(?:there's|there is|there was|there are|got|has|have|had|with)(?: still)(?: (?:about|maybe|some|a|an|one|two|half|quarter|inch|inches|bit|little|strip|layer|piece|patch|ring|of|good|solid|lot))* {_GLASS}(?: left| hanging| sitting)? (?:in|on|at|along|around|inside)(?: (?:one|a|the|each|both|two|that|its|every|top|bottom|left|right|back|front|far|inside|outside))* (?:corners?|sides?|edges?|ends?|top|bottom|back|front|cheeks?|shiplap)",
            rf"still (?:has|have|had|got|holds|carries|full of){_AMOUNT} {_GLASS}",
            rf"{_GLASS}{_WHOSE_LAP}(?: (?:still|just|simply|all))* (?:(?:was|is|has been|were|got|'s)(?: (?:still|just|simply|all))* (?:left|kept)|remains?|remained|stays|stayed|still sits)(?: (?:in place|in there|inside|alone|there|where it (?:was|is)|as it (?:was|is)|as is|in|untouched))(?! (?:of|on) the)",
            rf"{_GLASS}(?: (?:in|at|on|of|inside|from) (?:the |its |that )?{_LAP})?,? (?:i|we)(?: (?:just|still|also|simply|clean))* {_NEVER}(?: (?:even|ever|really|quite|get to|bother to|got to))* (?:{_PULL}|trim|remove)(?: (?:it|them))?(?: {_OUT})?(?=$|[.,;]| (?:and|because|so)\b)",
            rf"(?:left|leaving|leave){_AMOUNT} {_GLASS} in(?=$|[.,;]| (?:because|so|and|for)\b)",
            rf"without{_SOME} {_GLASS}(?: being)? (?:pulled|cut|cleaned|taken|scraped|dug|trimmed|stripped|peeled)(?: (?:out|off|back))?",
            rf"without {_PULL}ing{_SOME} {_GLASS}(?: (?:out|off|back))?",
            rf"{_GLASS}{_WHOSE_LAP}(?:'s| is| was| has| got)? {_NOT}(?: (?:been|got|get|gotten|come|came))* (?:pulled|cut|cleaned|taken|scraped|dug|trimmed|stripped|peeled|removed|cleared|out|off)(?: (?:out|off|back))?",
        ),
        _THINGS,
        apart=True,
        cues=_CUES,
    ),
    State(
        "trimmed",
        True,
        (
            rf"{_PULL}{_SOME} {_GLASS} {_OUT}{_OF_LAP}",
            rf"{_GLASS}(?: (?:in|at|on|of|inside|from) (?:the |its |that )?{_LAP})?,? (?:i|we)(?: already| all|'ve|'d| have| had| also)* {_PULL}(?: (?:it|them))?(?: {_OUT}|(?<=pull)|(?<=pulled)|(?<=cut)|(?<=scraped)|(?<=cleaned))(?: (?:already|too|also|all))*(?=$|[.,;]| and\b)",
            rf"{_GLASS}(?:'s| is| are| was| were| has been| got)?(?: all)? (?:cleaned|scraped|pulled|peeled|stripped|taken|shaved|cut|picked|dug|carved|scooped|trimmed|plucked) {_OUT}{_OF_LAP}",
        ),
        _THINGS,
        apart=True,
        cues=_CUES,
    ),
    State(
        "trimmed",
        False,
        (
            rf"(?:left|leaving|leave)(?: the| its| that| whole| long)*{_FLAP}(?: still| hanging| sticking)* (?:on|off)(?: of)? {_MALE}",
            rf"(?:left|leaving|leave)(?: the| its| that)*{_FLAP} (?:full|long|whole|uncut|full length|full size|as is|as it is|as it was|wide)(?=$|[.,;]| (?:and|because|so|on|instead)\b)",
            rf"{_FLAP}(?: (?:on|of) (?:it|that one|\d+))?(?:'s| is| was)?(?: (?:left|still|all|just))+ (?:full|long|whole|uncut|full length|full size|as is|as it was|wide)(?=$|[.,;]| (?:and|because|so|on|instead)\b)",
            rf"{_FLAP}(?: (?:on|of) (?:it|that one|\d+))?(?:'s| is| was)? (?:uncut|not cut(?: back| off| down)?|full length)(?=$|[.,;]| (?:and|because|so)\b)",
            rf"{_FLAP}(?:'s| is| was)?(?: still| left| hanging| sticking)* (?:on|off|out of)(?: of)? {_MALE}",
            rf"{_NEVER}(?: (?:even|ever|really|quite|get to|bother to))* (?:cut|trim|slice|knife|shave)(?:med|d)? (?:it|that|them|the flap|the staple flap) (?:back|off|away|down|flush)",
        ),
        ("FLAP",),
        kinds=("transition",),
        apart=True,
        cues=("flap",),
    ),
    State(
        "trimmed",
        False,
        (
            rf"male (?:end|side)(?:'s| is| was)?(?: still| all)* (?:full of|packed with|stuffed with|choked with|loaded with)(?: the| old| loose)* {_GLASS}",
            rf"{_NEVER}(?: (?:even|ever|really|quite))* (?:get|got|had)(?: the| all the| any of the| its)? (?:extra|excess|surplus|leftover)(?: insulation| glass| fiber ?glass| fibers?| stuff| wool)? (?:cut|trimmed|taken|pulled|cleaned|shaved) (?:away|off|out|back)",
        ),
        ("MALE", "END", "SHIPLAP", "TRIM", "K_TRANSITION", "MISSING"),
        kinds=("transition",),
        apart=True,
        cues=("male", "extra", "excess", "surplus", "leftover"),
    ),
    State(
        "tabs_bent",
        False,
        (r"without(?: even| ever)? (?:bending|folding|turning|knocking|hammering|laying)(?: (?:any of |all |all of |down |over )?(?:them|the tabs|its tabs|those|it|any|one))?(?: over| down| flat| back)*",),
        ("TABS", "TAB_WORD"),
        apart=True,
        cues=("without",),
    ),
)
