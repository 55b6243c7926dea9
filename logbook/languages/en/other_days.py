"""English sentences of other jobs and other years, of material that is wanted, and of pieces that are still to be built."""

from __future__ import annotations

from logbook.languages.elsewhere import CLAUSE, ON, SENTENCE, WORDS, Aside
from logbook.languages.en.other_hands import COUNTS, KINDS

_SITE = r"(?:job|jobs|site|place|shop|company|project|outfit|employer|gig|firm|union|local|crew|boss|foreman|building|tower|plant|hospital|school|airport|church|bank|mall|stadium|casino|hotel|library|college|university|high school|courthouse|prison|clinic|warehouse|mill|refinery)"
_EARLIER = r"(?:last|old|previous|other|first|second|former|next-to-last)"
_WHO = r"(?:i|we|they|he|she|you|nobody|everybody|everyone|somebody|people|the \w+|my \w+|some \w+)"
_YEARS = r"(?:last (?:year|month|winter|summer|spring|fall|december|january|february|march)|(?:a |some |two |three |four |five |ten |twenty |few |couple of |many )*(?:years?|months?|weeks|summers|winters) (?:ago|back|before)|back in \d{4}|in (?:19|20)\d\d|years (?:ago|back)|one (?:summer|winter|year|spring|fall)|years back|way back|once)"
_AWAY = (
    r"(?:texas|arizona|phoenix|tucson|tulsa|oklahoma|vegas|las vegas|nevada|reno|dallas|houston|austin|denver|colorado|utah|salt lake|ohio|cleveland|columbus|cincinnati|toledo|dayton|akron|michigan|detroit|flint|chicago|illinois|indiana|indianapolis|kansas|wichita|nebraska|omaha|iowa|des moines|missouri|st\.? louis|memphis"
    r"|nashville|tennessee|kentucky|louisville|georgia|atlanta|florida|miami|tampa|orlando|alabama|mississippi|louisiana|new orleans|arkansas|little rock|carolina|charlotte|raleigh|virginia|richmond|baltimore|maryland|philly|philadelphia|pittsburgh|pennsylvania|jersey|new york|brooklyn|queens|the bronx|buffalo|albany|boston"
    r"|connecticut|vermont|maine|california|la|l\.a\.|san diego|sacramento|fresno|oakland|oregon|portland|washington|seattle|tacoma|spokane|idaho|boise|montana|wyoming|dakota|minnesota|minneapolis|wisconsin|milwaukee|alaska|anchorage|hawaii|mexico|canada|toronto|the navy|the army|the service)"
)
_STUFF = (
    r"(?:(?:(?:[\d/½¼]+|one|two|three|four|half|quarter|inch and a half|inch|two and a half)[ -]?(?:inch|in)? |foil |cloth |duct |pressure |heat |wide |duct ?board |turning |glass |good |new |of (?:the|that|those) |the |that |those )*(?:tape|181 ?a-?[phm]|staples?|mastic|vanes?|board|duct ?board|fabric|mesh|washers?|screws|hangers?|strap|rod|blades?|knives))"
)
_PACK = r"(?:box(?:es)?|rolls?|cases?|cartons?|buckets?|pails?|tubes?|bundles?|sheets?|pallets?|packs?|bags?|cans?|gallons?|loads?|sets?)"
_WANTS = (
    r"(?:(?:(?:i|we|they|you|he|she|somebody|someone|shop|office|the \w+(?: \w+)?|[a-z]+ floor(?: crew)?)(?:'re|'ll|'m|'s| are| is| will| could| gonna| going to| can| might)* )?(?:gonna |going to |still |also |really |please |could |can |tell (?:the \w+|them|him|her|{name}) (?:that )?(?:we|i) |(?:the |that )?(?:[\w ]+ )?(?:says?|said) (?:that )?(?:they|we|he|she)(?:'ll|'re| will)? )*"
    r"(?:need|needs|want|wants|order|send|bring|get|grab|short|low on|out of|waiting (?:on|for)|use|buy|fetch|deliver|put (?:me|us) down for|add to the (?:list|order)|send (?:me|us|up|over)(?: up| over)?|bring (?:me|us|up|over)|order (?:me|us|up)|where are(?: my| the| our)?)(?: me| us| up)? )"
)
_WILL = (
    r"(?:(?:i|we|they|he|she|you|me and [\w']+|[\w']+ and (?:me|i)|us|the \w+|{name}|{name} and (?:me|i))(?:'ll|'d| will| would| might| may| can| could|'m going to|'re going to|'s going to| am going to| are going to| is going to| are gonna|'re gonna|'m gonna| gonna|'m planning to|'re planning to| plan to| plan on| want to|'d like to| would like to| hope to| need to| have to| got to| gotta| get to| should|'re supposed to|'m supposed to|'re to"
    r"| ought to| are supposed to|'re hoping to|'m hoping to|'re fixing to|'m fixing to|'re looking to)|(?:gonna|going to|hoping to|planning to|planning on|supposed to|fixing to|looking to|aiming to|got to|gotta|thinking (?:of|about|i'll|we'll)|(?:the )?plan(?:'s| is| was)?(?: for (?:today|tomorrow|monday|the \w+))? (?:is )?to|(?:{name}|(?:the )?(?:boss|foreman|super|lead|office|gc)|they|he|she) (?:wants?|asked|told|has|needs?) (?:us|me|him|them)(?: next week| tomorrow)? to))"
)
_BUILD = r"(?:build|make|knock out|start(?: on)?|do|fab|fabricate|bang out|crank out|cut(?: out)?|lay out|put together|finish(?: up)?(?! (?:straight|elbow|ninety|tee|wye|branch|end cap|cap|collar|transition|reducer|offset|plenum|number|piece|fitting|up (?:straight|elbow|tee)|that one|this one|it)\b(?!s))|tackle|get (?:going |started )?on|work on|be on|go to|move (?:on )?to|jump on|get to|get into|begin|assemble|whip (?:up|out)|hit|set|install|run|pull)(?:ing)?"
_LEAD = r"(?:(?:maybe|probably|hopefully|looks like|sounds like|guess|i guess|i think|i figure|thinking|next|then|later(?: on)?|tomorrow(?: morning)?|tonight|monday|tuesday|wednesday|thursday|friday|first thing(?: monday| tomorrow| friday| in the morning)?|in the morning|after (?:lunch|break|that|this)|this afternoon|next week|morning|soon|if we have time|if there's time|once .{3,40}?|when .{3,40}?|as soon as .{3,40}?|with any luck|god willing|so|and),? )*"
_TO_BUILD = rf"(?:(?:the|a|an|another|those|them|these|some|more|all|rest of the|rest of|other|last|next|new|first|couple of|few|number|numbers|{COUNTS}|(?:[\w/]+ by [\w/]+)) )*(?:{KINDS}|numbers)\b(?! (?:tape|staples?|seam|joint))"

OTHER_DAYS = (
    # other jobs, other years
    Aside(
        frozenset("last old previous other first second former".split()),
        rf"(?:(?:over|down|out|back|up|even|like) )*(?:at|on|in|for|with) (?:my|our|the|that|his) {_EARLIER} (?:\w+ ){{0,2}}?{_SITE}\b(?: (?:i|we) (?:was|were|worked|had)(?: on| at| for| with)?)?(?:,? (?:\w+ ){{0,2}}?{_YEARS})?,? ?(?=(?:{_WHO}|it|all|not)\b|$)",
        ON,
    ),
    Aside(
        frozenset("job jobs site place shop company project outfit gig firm building tower plant hospital school airport church bank mall stadium casino hotel library college university courthouse prison clinic warehouse mill refinery".split()),
        rf"(?:(?:over|down|out|back|up|even) )*(?:at|on|in|for|with) (?:the|a|an|that|this one|some|another) (?:\w+ ){{0,2}}?{_SITE}(?: job| site| project)? {_YEARS},? ?(?:{_WHO}|it|all|not)\b|(?:over|down|out|back) (?:at|on|in) (?:the|a|an|that|another) (?:\w+ ){{0,1}}?{_SITE}(?: job| site| project)? (?:they|nobody|people|everybody|he|she)\b|(?:over |down |out |back )?(?:at|on|in|for) (?:the|that|an?) (?:\w+ ){{1,2}}job,? (?:they|nobody|everybody|he|she)\b",
        SENTENCE,
    ),
    Aside(frozenset("ago back year month winter summer spring fall once years".split()), rf"{_YEARS},? (?:at (?:the|a|an|my|that) [\w' ]+? )?(?:{_WHO})\b(?! (?:today|just)\b)(?!.*\b(?:straight|elbow|tee|cap|transition|offset|plenum|number) \d)", SENTENCE),
    Aside(frozenset("in down back over out up at".split()), rf"(?:(?:down|back|over|out|up|when i (?:was|lived|worked)|when we (?:was|were|lived|worked)) )*in (?:[a-z]+ )?{_AWAY},? (?:{_WHO})\b", SENTENCE),
    Aside(frozenset(("other",)), rf"(?:(?:over|down|out|back|up) )*(?:at|in|on) the other (?:building|tower|wing|site|job|unit|side of the building|house|phase)\b,? (?:{_WHO}|it|all)\b(?!.*\b(?:straight|elbow|tee|cap|transition|offset|plenum|number) \d)", SENTENCE),
    Aside(
        frozenset("worked work before started came moved hired".split()),
        r"(?:(?:back )?(?:before|when|until) (?:i|we) (?:came|started|moved|got|hired|signed|joined|worked|learned)(?: \w+)? (?:here|out|on|over|with|for|in|at|up|this)\b(?!.*\b(?:today|this morning|straight \d|elbow \d)\b)|(?:i|we) (?:(?:once|used to|had) )*work(?:ed)? (?:for|with|under|beside|alongside) (?:a|an|this|some|one|that) \w+(?: \w+)? (?:who|that|and|from|where)\b|(?:my|the) (?:old|first|last) (?:boss|foreman|lead|partner|journeyman|teacher|super)\b)",
        ON,
    ),
    # material that is wanted
    Aside(
        frozenset("need needs want wants order send bring get grab short low out waiting use buy fetch deliver put add where".split()),
        rf"{_WANTS}(?:(?:{COUNTS}|more|some|another|extra|about|maybe|at least|around|the|my|our|those|all the|any) )+(?:[\w/]+ by [\w/]+ |[\w]+ inch |new |good |big |small |long |short )*(?:straights|elbows|nineties|tees|(?:end )?caps|collars|transitions|offsets|branches|wyes|plenums|boots|reducers|pieces|fittings|sections|dampers|registers|grilles|diffusers|hangers)\b(?! (?:taped|stapled|rubbed|hung|done|closed|finished|on run))",
        SENTENCE,
        "reminder",
    ),
    Aside(
        frozenset("need needs want wants order send bring get grab short low out use buy fetch deliver put add".split()),
        rf"(?!waiting){_WANTS}(?:(?:{COUNTS}|more|some|another|extra|about|maybe|at least|around) )+(?:{_PACK} (?:of )?{_STUFF}|more {_STUFF}|181 ?a-?[phm])(?: (?:and|or) (?:(?:{COUNTS}|more|some) )*(?:{_PACK} of )?{_STUFF})*(?: (?:by|for|on|before|up here|over here|tomorrow|today|please|asap|when you|from the|if|this|next)\b.*|$)",
        CLAUSE,
        "reminder",
    ),
    # what is to be built
    Aside(
        frozenset("build make knock start do fab fabricate bang crank cut lay put finish tackle get work be go move jump begin assemble whip hit set install run pull building making starting doing cutting working".split()),
        rf"{_LEAD}{_WILL} (?:(?:still|also|just|then|finally|be able to|go|go ahead and|try to|try and|come back and|start|begin|probably|hopefully|maybe|get to|only|all) )*{_BUILD} {_TO_BUILD}",
        SENTENCE,
        "plan",
    ),
    Aside(
        frozenset("hang hanging".split()),
        rf"{_LEAD}{_WILL} (?:(?:still|also|just|then|finally|be able to|go|go ahead and|try to|try and|start|begin|probably|hopefully|get to|only|all) )*(?:hang|hanging|put up) (?:(?:numbers?|the|all|straights|pieces) )*(?:\d+|[a-z]+(?:-[a-z]+)?) (?:through|thru|to) (?:\d+|[a-z]+(?:-[a-z]+)?)\b",
        SENTENCE,
        "plan",
    ),
    Aside(
        frozenset("next then from after".split()),
        rf"(?:and |so )?(?:next|then|after (?:this|that)|from there)(?: up)?,? (?:i|we|we're|i'm) (?:only |just |gonna |going to )*{_BUILD} {_TO_BUILD}(?! (?:and|but|so) (?:i|we))",
        SENTENCE,
        "plan",
    ),
    Aside(frozenset("tomorrow next".split()), r"(?:(?:and|then|so) )*(?:tomorrow(?:'s work| morning)?|next week|next up|up next|next)$", SENTENCE, "plan"),
    Aside(frozenset("will won't would wouldn't hope hoping wish".split()), r"(?:i |we |let's |just |here's )?(?:hope|hoping)(?: that)?(?: (?:it|this|the|that|they|we|he|she|to|for|nobody|everybody)\b)", SENTENCE, "condition"),
    # holes and tape that are not on duct
    Aside(
        frozenset("hole holes tear tears rip rips tape taped crack dent puncture leak leaks wet gap gaps".split()),
        r"(?<!\bby )(?<!\bat )(?<!near )(?<!next to )(?<!against )(?<!along )(?<!toward )(?<!towards )(?<!facing )(?<!under )(?<!behind )(?<!over )(?<!above )(?<!below )\b(?:(?:the|my|his|her|our|their|that|an?|one of my) )(?:\w+ )?(?:tarp|tent|fence|wall|floor|ceiling|roof|road|gloves?|pants|boots?|tires?|window|door|hose|cord|bucket|ladder|truck|van|trailer|coat|shirt|cooler|cup|hat|gang box|lunch ?box|sleeping bag|bag|pocket|ramp|carpet|drywall|sheetrock|tile|curb|parking lot|street|bridge|radio|phone|screen|windshield|bumper|pipe|drain|sink|toilet|porta-john|port-a-john|fridge|heater|compressor|generator|plastic|visqueen|poly)(?: (?:out (?:there|back|front)|in (?:the \w+|here)|on (?:the \w+|level \w+)))?(?:'s got| has| had| got|'s| is| was)(?: also| still| all)? (?:an? |the |some |two |three |another |full of )?(?:\w+ )?(?:holes?|tears?|rips?|tape|cracks?|dents?|punctures?|leaks?|wet|torn|leaking|taped|gaps?)(?: (?:in|on|over) it)?\b",
        WORDS,
    ),
    Aside(
        frozenset("hole holes tear tears rip rips crack cracks dent puncture gap".split()),
        r"\b(?:(?:there's|there is|there was|got|has|have|found|saw|with) )?(?:an? |two |three |some |big |little |a big |a little )*(?:holes?|tears?|rips?|cracks?|dents?|punctures?|gap) in (?:the|my|his|her|our|their|that|one of my) (?:\w+ )?(?:tarp|tent|fence|wall|floor|ceiling|roof|road|gloves?|pants|boots?|tires?|window|door|hose|cord|bucket|ladder|truck|van|trailer|coat|shirt|cooler|cup|hat|bag|pocket|ramp|carpet|drywall|sheetrock|tile|curb|parking lot|street|bridge|radio|phone|screen|windshield|bumper|pipe|drain|sink|toilet|fridge|heater|plastic|visqueen|poly|schedule|plan|budget|day)\b",
        WORDS,
    ),
)
