"""English words that are of something else than a piece of the speaker's own."""

from __future__ import annotations

from logbook.languages.elsewhere import BACK, CLAUSE, ON, SENTENCE, TO_COME, WORDS, Aside, Elsewhere
from logbook.languages.en.other_days import OTHER_DAYS
from logbook.languages.en.orders_out import ORDERS_OUT
from logbook.languages.en.other_hands import OTHER_HANDS


def _aside(cues: str, words: str, reach: str, why: str = "other") -> Aside:
    return Aside(frozenset(cues.split()), words, reach, why)


_MODS = r"(?:(?!i\b|we\b|it\b|my\b|our\b)[\w'-]+ ){0,2}?"
_DET = r"(?:(?:the|a|an|that|those|these|this|their|his|her|your|some|all|one of the|other|another|both|two|three|four|couple of) )*"
_TRADES = (
    r"(?:flex|alarm|sprinkler|fire|pipe|steam|sheet metal|sheetmetal|drywall|steel|iron|roof|paint|insulation|electrical|controls?|glass|low voltage|cable|concrete|framing|plumbing|tile|carpet|ceiling|demo|gas|elevator|masonry)"
)
_PEOPLE = (
    r"(?:guys?|crews?|gang|boys|fellas|outfit|people|folks|contractors?|team|subs?|plumbers?|electricians?|sparkies|sparky|roofers?|painters?|framers?|carpenters?|drywallers?|pipe ?fitters?|steam ?fitters?|sprinkler ?fitters?|fitters?|welders?|masons?|laborers?"
    r"|tin knockers?|tinners?|iron ?workers?|insulators?|glaziers?|tilers?|janitors?|inspectors?|engineers?|architects?|owners?|tenants?|landlord|salesman|sales rep|foreman|super|apprentices?|helpers?|journeym[ae]n|night shift|day shift|first shift|second shift|neighbors?)"
)
_THINGS = (
    r"(?:conduits?|pipes?|piping|gas (?:line|pipe|main)|water (?:line|pipe|main)|sprinkler (?:pipe|line|main|head|branch)s?|drain(?:s| lines?)?|cable trays?|spiral|flex(?: duct)?|sheet metal|sheetmetal|galvanized(?: \w+)?|galv|black iron|black pipe|copper|unistrut|condensate line|line ?sets?|sprinklers?|stairs?|railing"
    r"|trucks?|van|crane|elevator|pallets?|skid|forklift|generator|compressor|gang ?box|job ?box|toolbox|trailer|lunch|traffic|weather|rain|parking|pictures?|photos?|snapshot|video|clip)"
)
_DID = (
    r"(?:is|are|was|were|has|have|had|got|gets|get|ran|run|runs|hung|hangs|put|puts|left|leaves|came|comes|went|goes|sits?|sat|brought|brings|took|gave|did|does|made|makes|built|builds|cut|shot|tore|ripped|bent|drove|used|uses|closed|sealed|stapled|taped|rubbed|strapped|screwed|clamped|bolted|wrapped|hooked|mounted"
    r"|wrote|walked|started|finished|moved|needs?|showed|shows|dropped|delivered|worked|works|trimmed|patched|painted|zip-tied|tied|poured|framed|plumbed|always|usually|just|already|still|will|'ll|all|supposedly)"
)
_STUFF = (
    r"(?:(?:(?:one|two|three|four|half|quarter|[\d/½¼¾]+)(?: and a (?:half|quarter))?[ -]?(?:inch|in)?|inch and a (?:half|quarter)|foil|cloth|duct|pressure|heat|wide|narrow|cheap|outward|divergent|glass|new|good|fresh|long|short|turning|181 ?a-?[phm]) )*"
    r"(?:tape|181 ?a-?[phm]|staples?|mastic|vanes?|vane rail|rail|board|duct ?board|fabric|mesh|elbows|straights|nineties|washers?|screws|hangers?|strap|rod|stuff|blades?|glue|cloth|sealant)"
)
_PACK = r"(?:box(?:es)?|rolls?|cases?|cartons?|buckets?|pails?|tubes?|bundles?|sheets?|pallets?|skids?|packs?|packages?|bags?|crates?|cans?|gallons?|sleeves|dozen|truckloads?|loads?)"
_MANY = r"(?:(?:a|an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|\d+|half|couple|few|some|several|more|another|whole|full|dozen|of|the|last|my|our|extra|good|many|no|about) )+"
_NO_CLASS = r"(?!(?:the )?(?:475|four (?:hundred (?:and )?)?seventy[- ]five|800|eight hundred|1400|fourteen hundred)(?: [\w-]+)? (?:duct ?)?board\b)"  # so the board is called, it is no count of boards: "plenum box four, 1400 board"
_NOT_WITH = "".join(rf"(?<!{used} {of})" for used in ("with", "using", "used") for of in ("", "a ", "the ", "an old ", "the last ", "the last of ", "the last of a ", "the end of ", "the end of a "))  # "taped with the last of a roll of …": what it is closed with
_WHEN = r"(?:first (?:thing|up) (?:tomorrow|in the morning|monday|after \w+)|tomorrow(?: morning| afternoon| night)?|tonight|come (?:mon|tues|wednes|thurs|fri|satur|sun)day|come (?:morning|next week)|next (?:week|monday|shift|month)|in the morning|the day after|later this week|after the holiday)"
_NUMBER = r"(?:\d+[a-z]?|(?:(?:one|two|three|four|five|six|seven|eight|nine|oh|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty)(?:[ -](?!by\b|on\b))?)+)"
_PAPER = (
    r"(?:sheets?|pages?|details?|plans?|drawings?|dwgs?|prints?|blueprints?|schedules?|revisions?|rfi|submittals?|tickets?|work orders?|cut ?sheets?|cut ?lists?|take-?offs?|layouts?|sketch(?:es)?|specs?|addendum|elevations?|section|note|keynote|markup|redlines?|legend|minutes|log ?book|catalog|brochure|manual|book|screen|model|office)"
)
_GIVES = r"(?:shows?|showed|has|had|lists?|listed|gives?|gave|calls|called|says?|said|reads?|wants?|wanted|puts?|draws?|drew|makes?|notes?|specifies|asks|goes with|depicts|carries|tells|marks?|bumps?|changes?|moves?|turns?)"
_KINDS = r"(?:straights?|elbows?|nineties|tees?|caps?|collars?|transitions?|offsets?|branch(?:es)?|plenums?|pieces?|fittings?|number|piece)"
_BODY = (
    r"(?:thumbs?|fingers?|hands?|knuckles?|knees?|toes?|foot|feet|legs?|arms?|shoulders?|back|head|nose|ears?|eyes?|face|neck|ribs?|ankle|wrist|shins?|boots?|shoes?|gloves?|pants|jeans|jacket|coat|shirt|sleeve|hat|hard ?hat|glasses|goggles|vest"
    r"|belt|phone|radio|lunch ?box|lunch|wife|kids?|daughter|dog|truck|van|car|tire|windshield|bumper|mirror|mug|cup|cooler|bag|toolbox|tools?|drill|ladder|pencil|notebook|clipboard|knife|blade)"
)
_HOURS = r"(?:lunch|traffic|weather|rain|parking|photos?|pictures?|snapshots?|video|clip)"  # of which he speaks in passing, and goes on with his own: "lunch is in ten minutes, stapled it"
_DAY = r"(?:mon|tues|wednes|thurs|fri|satur|sun)day"
_AHEAD = rf"(?:(?:starting|beginning|come|from|for|on|by|as of|early|late|sometime|first thing) )*(?:tomorrow|{_DAY}|next (?:week|month|shift|{_DAY})|the day after)(?: (?:morning|afternoon|night|on))?|{_WHEN}|after (?:lunch|break|dinner|the weekend|this|that)|later(?: on| today)?|this afternoon|in (?:an hour|a bit|a while|a minute|the afternoon)"
_WE = r"(?:i|we|you|they|you guys|the \w+|everybody)"
_STARTS = r"(?:start|starts|switch|switches|move|moves|go|goes|change|changes|get|gets|do|does|build|builds|begin|begins|make|makes|hit|hits|use|uses|run|runs|finish|finishes|need|needs|want|wants|tackle|knock out|jump|head|hang|tie|close|reach|come|comes)"
_BEGINS = rf"(?:{_WE}(?:'re|'m| are| is| am)(?! (?:not )?(?:done|stapled|taped|finished|good|in|up|hung))(?: all| only| just| probably| gonna be| going to be| supposed to be| back)* (?:(?!nothing|anything)\w+ing|on|off|at|in|over|up|down|straights|elbows|supposed|due|set|back)\b|{_WE} {_STARTS}\b)"
_FINISHES = r"(?:i|we)(?:'re|'m| are| am)? (?:(?:going to|gonna) )?(?:just |probably |only )*(?:finish|wrap|button|clos|complet)(?:e|ing)?(?: (?:it|this|that|this one|that one|her))?(?: (?:up|off|out|in))?(?: (?:first thing|sometime|right))* (?:tomorrow|tonight|on |come |by |this |next |mon|tues|wednes|thurs|fri|satur|sun|later|after|in the)"  # what it is that is finished then is the piece he tells of
_WILL_BE = rf"(?:{_BEGINS}|{_WE}(?:'ll| will)\b|(?:it|that|this|there)(?:'s| is|'ll be| will be)\b|no more\b)"

ENGLISH_ELSEWHERE = Elsewhere(
    leads=r"(?:(?:and|but|so|well|ok|okay|hey|oh|now|then|listen|look|alright|all right|yeah|yes|no|because|since|man|great|boss|sure|fyi|btw|by the way|anyway|just so you know|you know|heads up|meanwhile|though|while|wonderful|nope|yep) )*",
    who=_PEOPLE,
    comes_back=frozenset("so then why meaning means therefore hence".split()),
    joins=frozenset("and but so while then".split()),
    own_piece=r"(?:(?:and|but|so|well|anyway|now|ok|okay) )*(?:mine|ours|this one|today|here|not (?:here|this time|today|on this one)|now)\b|(?:(?:and|but|so|well|anyway|now|ok|okay) )*(?:i|we) (?:always |still )?(?:\w+ed|did|put|made|hung|cut) (?:mine|ours)\b",
    goes_then=r"(?:(?:and |then |the |my |all |that )*(?:\w+ ){1,2}(?:goes|go|gets|get|comes|come|has to|have to|should|can|could)|to|for)\b",
    made_then=r"(?:.*\b(?:i|we)(?:'ve)? (?:just |already |only |finally |also )*|(?:okay |ok |so |yeah |and |well |alright |then )*)(?:(?:did|built|made|finished|finished up|wrapped up|knocked out|folded|folded up|cut|put together|assembled|hung)\b|(?:got|put|had) .*\b(?:done|built|together|finished|made)\b|\b(?:was|were|got) (?:built|made|done|finished|put together)\b).*\b(?:this afternoon|after lunch|after break|later|later on|in the morning|tonight)$|.*\b(?:was|were|got) (?:built|made|done|finished|put together) (?:this afternoon|after lunch|after break|later|later on|in the morning|tonight)$",
    own_deed=r"(?:(?:and|so|then|now|today|already) )*(?:(?:i|we)(?:'ve)? (?:already |just |only |finally |also )*(?:did|got|stapled|taped|rubbed|hung|built|made|put|finished|closed|cut|left|used)|today|this one|mine|ours|what i)\b",
    fixing_holes=(
        r"(?:screw|bolt|rod|anchor|mounting|factory|pre-?drilled|pre-?punched|existing|pilot|rivet|weep|sight)(?:'s)? <h>|<h> (?:in|on) the (?:metal|collar|flange|sleeve|bracket|angle|strap|hanger|unit|channel)\b"
        r"|(?:lin(?:e|es|ed|ing) up|match(?:es|ed|ing)?|fit(?:s|ting)?|hit(?:s|ting)?|us(?:e|es|ed|ing)|through|into)(?: up)?(?: with| to)? (?:the |my |their |his )(?:same |old |existing )?<h>(?: that)?(?:(?:'s| were| was| are| is| had been)? (?:already |still )?(?:there|in it|drilled|punched))"
    ),
    unmet=r"(?:(?:but|and|so|well) )*(?:it|they|he|she|that) (?:didn't|never did|did not|won't|hasn't|haven't)(?: (?:come|show|arrive|happen|though|so))*$",
    own_again=r"so (?:now )?(?:the|my|this|every|all the|half the) (?:staples?|tape|vanes?|tabs?|flap|seams?|joints?|facing|foil|scrim|weave|panel|groove|legs)\b|(?:(?:and|but|so|then|while|now|only|though|where|whereas) )*(?:mine|ours|i|we|i've|we've|i'm|my|our|this one|today|here|it's|it is|it|these|the one (?:i|we)|there's|there is|board's|the board|what (?:i|we|hangs|came out|went up)|that's (?:what|how) (?:i|we))\b",
    another=r"(?:(?:and|but|so) )*(?:(?:the|that) (?:piece|one|section|fitting|stuff|duct|line|run) (?:next|beside|behind|after|before|above|below|under|over|by|on|in|across|ahead|past|they|he|with)\b|(?:the|that) (?:other|next|last|previous|far|first|old) (?:one|piece|section|fitting)\b|(?:last \w+|yesterday|\w+day)'s )",
    goes_on=r"(?:(?:and|but|so|then|while|only) )*(?:me,? )?(?:i|we) (?:just |only |then )*(?:stapled|taped|rubbed|hung|trimmed|wiped|closed|finished|did|put|tore|fixed|patched|cut|pulled|added)\b.*\b(?:it|on|off|over|rest)\b",
    harms=(
        r"\b(?:(?:went|came|poked|punched|broke|pushed|got|fell|slipped|drove|ran|kicked|put|shoved|jammed|stuck|rammed)(?: (?:his|her|their|a|the|its) [\w']+)?(?: right| clean| straight)? (?:through|thru|into|over)|stepped on|stood on|sat on|leaned on|backed into|kicked|dropped(?! off)|poked|punched|punctured|crushed|smashed|dented|tore|torn|ripped|hit|gouged|nicked|scraped|cut (?:it|into|through|a(?! (?:straight|elbow|tee|cap|collar|transition|offset|branch|plenum|piece|fitting|new)))|slashed|bent|soaked|sat in|knocked|left (?:an?|his|her|their) (?:[\w-]+ ){0,2}?(?:holes?|tears?|rips?|gash|dents?|gouge|punctures?|boot ?print|footprint)|got it|got to it|got into it)\b"
    ),
    asides=(
        *OTHER_HANDS,
        *OTHER_DAYS,
        *ORDERS_OUT,
        # paper: what is drawn, listed or asked for
        _aside(
            "sheet sheets page pages detail details plan plans drawing drawings dwg print prints blueprint blueprints schedule revision rfi submittal ticket work cut cutsheet cutlist takeoff take layout layouts sketch sketches spec specs addendum elevation section note keynote markup redlines legend minutes log catalog brochure manual book screen model office",
            rf"(?:(?:the|a|my|our|his|their|that|this|new|old|latest|shop|duct|mechanical|site|building|field|current|contract|updated|foreman's|engineer's|architect's|job|fab|release) )*{_PAPER}(?: (?:no\.? )?(?:[a-z]{{1,2}}-? ?\d+(?:[.-]\d+)?|\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]|(?:for|of|from|on|in) (?:the )?[\w-]+(?: \w+)?))? ?(?:, )?{_GIVES}\b",
            SENTENCE,
            "drawing",
        ),
        _aside("paper theory principle according per", r"(?:on paper|in theory|in principle|according to (?:the|my|his|our|their) \w+|(?:as )?per (?:the )?(?:drawings?|plans?|prints?|spec|schedule|sheet))\b(?!.*\b(?:i built|i made|like i built)\b)", SENTENCE, "drawing"),
        _aside("rfi revision addendum bulletin asi", r"(?:the |that |an? )?(?:rfi|revision|addendum|bulletin|asi|change order)\b(?: \w+)? (?:came|is|says|moved|changed|dropped|bumped|turned)\b", SENTENCE, "drawing"),
        _aside(
            "list lists order to-do",
            r"(?:(?:the|my|our|his|this|that|here's|here is|new|today's|tomorrow's|monday's) )*(?:(?:cut|shop|punch|shopping|material|materials|wish|buy|job|task|build|pick|stock|parts|fab|work|order|tag|piece) (?:list|order|sheet)|order of work|take-?off|inventory|stock count|list (?:for|from|of) (?:the )?(?:tomorrow|monday|tuesday|wednesday|thursday|friday|next|office|morning|afternoon|shop|boss|foreman))(?: (?:for|from|on|of) (?:the )?[\w']+(?: \w+)?)?(?: week| shift)?(?: (?:is|has|says|reads|goes))?$",
            ON,
            "plan",
        ),
        _aside("build make cut order buy", r"(?:still )?(?:left )?to (?:build|make|cut|order|buy|fab|get|pick up)(?: (?:yet|today|tomorrow|next|this week|for [\w ]+))?$", ON, "plan"),
        _aside("list", r"(?:next(?: up| one)?|first(?: up| one)?|then|up next|last)(?: thing)? on (?:the|my|our) (?:list|schedule|sheet|board)\b", SENTENCE, "plan"),
        _aside(
            "tomorrow tonight monday tuesday wednesday thursday friday saturday next morning later lunch break dinner weekend after afternoon hour bit while",
            rf"(?:{_AHEAD})(?:[,:] ?| )(?:(?:and|so|then|i think|i guess|looks like|sounds like|supposedly|probably|maybe) )*{_WILL_BE}",
            TO_COME,
            "plan",
        ),
        _aside(
            "when once soon whenever till until", rf"(?:when|whenever|once|as soon as|soon as|until|till) (?:{_WE}|it|that|this|the \w+ \w+)(?:'re|'s)?(?: finally| ever| all| do)* (?:{_STARTS}|shows? up|arrives?|is|are|lands?|(?:start|switch|mov|go|gett|do|build|mak|hang)ing)\b(?!.*\b(?:did|went|was|were|got|had)\b)(?=.*\b(?:tomorrow|next (?:week|month|shift|floor|phase)|{_DAY}|next|later|second floor|the roof)\b|.*? (?:the |those |them )?(?:{_KINDS}s|nineties|fittings|pieces|floor|line|job)\b|(?: \w+){{0,3}}? (?:in|here|up|on site|down)?(?:,|$| we're| we'll| we are))",
            TO_COME,
            "plan",
        ),
        _aside(
            "tomorrow tonight monday tuesday wednesday thursday friday saturday week morning later lunch shift month",
            rf"(?!{_FINISHES}){_BEGINS}(?:(?!\b(?:so|but|stapled|taped|rubbed|i)\b).)*\b(?:tomorrow|tonight|(?:on |come |by |this )?{_DAY}|next (?:week|month|shift)|later this week|after (?:lunch|break)|in the morning)(?: morning| afternoon| night)?$",
            TO_COME,
            "plan",
        ),
        _aside("tomorrow tomorrow's monday tuesday wednesday thursday friday next", rf"(?:for|on|come) (?:tomorrow|{_DAY}|next (?:week|shift))(?: morning)?$", TO_COME, "plan"),
        _aside("tomorrow tonight come next morning later holiday", rf"{_WHEN}(?:'s)?(?:,? (?:the |our |my )?(?:pieces?|work|list|batch|lot|plan|job))? (?:it's|is|are|we've got|we have|i've got|i have|we do|i do|comes?|brings?|will be|means|calls for)\b", SENTENCE, "plan"),
        _aside("tomorrow's monday's tuesday's wednesday's thursday's friday's week's", r"(?:tomorrow's|monday's|tuesday's|wednesday's|thursday's|friday's|next week's) (?:[\w]+ ){1,2}(?:is|are|will|won't|have|has|don't|get|gets|need|needs)\b", SENTENCE, "plan"),
        _aside("want wanted asked need needed", r"(?:so )?(?:you (?:want(?:ed)?|need(?:ed)?|would like|'d like)|(?:you|they|he|she) (?:asked for|asked me for|(?:is|are) asking for))(?! to know)(?: (?:it|them|that|this|one|us to|me to))?\b(?!.*\b(?:that's|which is) what)", SENTENCE, "drawing"),
        _aside("drawing drawings plan plans print prints revision rev schedule changes addendum", r"(?:(?:the|new|latest|revised|updated|changed|current) )+(?:drawings?|plans?|prints?|revisions?|rev(?: \w)?|schedule|changes|addendum)(?: (?:from|for|off) .*)?$", ON, "drawing"),
        _aside("photo photos picture pictures pic pics shot video", r"(?:(?:i'm|i am|we're|he|she|they|office|i|we) )?(?:supposed|meant|asked|told|need|needed|want|wants|wanted|have|has) (?:me |us )?to (?:get|take|send|snap|shoot) (?:a |some |them )*(?:photo|picture|pic|shot|video)s?\b", SENTENCE, "plan"),
        _aside("photo picture pic shot snapshot video close-up closeup", rf"(?:(?:this is|that's|it's|here's|just|only) )*(?:a |the |my |that )*(?:photo|picture|pic|shot|snapshot|video|close-?up)(?: (?:here|above|below|i sent))? (?:of|shows|is of|is only of|is just of) (?!(?:the |my |our )?(?:{_KINDS}|it|this|mine|\d+|side|joint|seam|tear|hole|damage|gap))", SENTENCE),
        # what the board stands, and how heavy is too heavy: a limit, and nothing of this piece
        _aside("good rated made listed takes take max tops fine okay handles", r"(?:the |this |that |duct ?|our )*board(?:'s| is|'ll| will| only| can| itself)*(?: only)? (?:good|rated|made|listed|takes?|max(?:es)? out|tops out|fine|okay|handles?)(?: only| just)? (?:to|for|at|up to)?(?: only| about)? ?(?:a |an |plus or minus )?(?:[\d./-]+|half|one|two|three|inch|four|five)\b.*", CLAUSE, "drawing"),
        _aside("over anything above heavier past", r"(?:anything |everything |stuff |whatever's |things |if it's )?(?:over|above|past|more than|heavier than) (?:fifty|50)\b.*\b(?:should|has to|have to|needs? to|must|gets?|hangs?|supposed to|ought to|wants?|own)\b.*", CLAUSE, "drawing"),
        # stock, orders, prices
        _aside(
            "box boxes roll rolls case cases carton cartons bucket buckets pail pails tube tubes bundle bundles sheet sheets pallet pallets skid skids pack packs package packages bag bags crate crates can cans gallon gallons sleeves dozen truckload load loads",
            rf"{_NOT_WITH}\b{_MANY}{_PACK} (?:of )?(?:(?:the|that|this|our|my) )?{_STUFF}(?:,? (?:and|or) (?:(?:the|that|this|our|my|some) )?{_STUFF})?\b(?! (?:on it|over it|around it|all around|(?:on|in|into) (?:the |this )?(?:" + _KINDS + r"|one|\d)))",
            WORDS,
        ),
        _aside(
            "need order buy get grab fetch bring send pick ship deliver want reorder",
            rf"(?:(?:we|i|they|you|somebody|someone|can you|could you|can somebody|please|gotta|got to|have to|also|still|go|the shop|the office|the truck) )*(?:need|order|buy|get|grab|fetch|bring|send|pick up|ship|deliver|want|reorder|short)(?:s|ed)?(?: (?:me|us|up|down|over|out|in|to order|to buy|to get|some more))* {_MANY}(?:{_PACK}|more|{_STUFF})\b",
            SENTENCE,
            "reminder",
        ),
        _aside(
            "box boxes roll rolls case cases carton cartons bucket buckets bundle bundles sheet sheets pallet pallets skid skids pack packs bag bags load loads truckload",
            rf"{_NOT_WITH}(?:{_MANY}|the |our |my |that |this |whole |full )*{_PACK} of (?:(?:the|that|this|our|my) )?{_STUFF}(?: (?:\w+ ){{0,2}}?(?:came|showed|arrived|got|is|are|was|were|sat|left|went|gone|landed|walked|missing|to go)\b|$)",
            SENTENCE,
        ),
        _aside("asked ordered requested", rf"(?:(?:i|we) )?(?:asked|ordered|requested|called) (?:for )?(?:(?:the|a|some|more|{_MANY.strip()}) ?)*(?:[\w/½¼-]+ ){{0,3}}?(?:tape|staples|stuff|rolls?|box|boxes|board|mastic|181 ?a-?[phm])$", CLAUSE),
        _aside("low short down", rf"(?:(?:we're|we are|i'm|we|i|they're|running|getting|are|is|am|all|about|almost|nearly) )+(?:low on|short of|short on|down to) (?:(?:the|our|my|that|any|more|{_MANY.strip()}) ?)*(?:{_PACK} of )?{_STUFF}\b(?!.*\bso\b)", CLAUSE, "plan"),
        _aside(
            "sent sends came shorted delivered brought promised ordered shipped due expected backordered arrived received bought returned",
            r"(?:the |our |my )?(?:supply house|supplier|vendor|warehouse|shop|store|office|truck|driver|van|delivery|distributor|yard)(?: \w+)? (?:sent|sends|shorted|delivered|brought|promised|shipped|dropped off|gave|owes|is out of|is bringing|has|had|came)\b",
            SENTENCE,
        ),
        _aside(
            "promised ordered due expected backordered shipped delivered arrived order",
            rf"(?:{_MANY}|the |our |my |those )*(?:[\w-]+ ){{0,2}}?(?:{_STUFF}|tees|caps|collars|transitions|offsets|dampers|fittings|pieces|grilles|registers|diffusers)(?: (?:for|on) (?:run )?[\w-]+(?: \w+)?)? (?:were|was|are|is|have been|got|should've been) (?:promised|ordered|due|expected|backordered|shipped|delivered|on order|supposed to (?:come|be here|get here|arrive))\b",
            CLAUSE,
        ),
        _aside("stock count inventory carton box boxes crate shelf gangbox trailer warehouse", rf"{_NO_CLASS}{_MANY}(?:(?!(?:inch|eighths?|sixteenths?|quarters?|half|mm|millimet(?:er|re)s?|cm)\b)[\w-]+ )?{_STUFF}(?:,? and .*)?(?: (?:all|still|sitting|left|here|are|is|that|in stock|on hand|on the shelf))*(?: (?:in|on) (?:the|our|a|my) (?:carton|box|boxes|crate|shelf|gang ?box|trailer|truck|van|warehouse|shop|stock))?$", SENTENCE),
        _aside("bucks dollars cents price prices cost costs roll box apiece thousand hundred", rf"(?:(?:the|our|this|that|good|a) )*{_STUFF}(?:'s| is| are| has| have| went| costs?| runs?| comes?| now)*\b.*\b(?:bucks|dollars?|cents|price|prices|a roll|a box|a case|a sheet|apiece|to a box|to the box|per box|per roll|thousand)\b", SENTENCE),
        _aside("cost costs price prices pay paid charge charges", r"(?:the )?(?:price|cost) of\b|(?:they|the \w+ \w+|supply house) (?:charges?|charged|want|wants) .*\b(?:roll|box|case|sheet)\b", SENTENCE),
        # what was not used
        _aside(
            "trash dumpster garbage bin back truck box carton shelf van drawer scrap floor shop home gangbox",
            r"(?:(?:the|that|those|his|their|my|our|this|all|old|wrong|other) )*(?:(?!staples\b|tape\b|its\b|all\b|mastic\b)(?:[\w/½¼-]+ ){1,3}(?:tape|staples|stuff|ones|board|mastic|181 ?a-?[phm])|(?:[\w/½¼-]+ ){0,3}(?:rolls?|box|boxes|case|stuff|carton|bucket)) (?:i had |they sent |he gave me )?(?:just |all |is |are |was |were |still |got |has |have )*(?:went|goes|go|stayed|stays|tossed|thrown|chucked|dumped|sent|sitting|sits|is|are|landed|ended up|put|lives|belongs|in|back)(?: (?:right|straight|all|back|out|out to|into|still|away|behind))* (?:in|into|on|to|at|back)(?: (?:the|my|a|our|its|his))?(?: (?:\w+))? (?:trash|dumpster|garbage|bin|truck|box|carton|shelf|van|drawer|scrap|scrap pile|floor|shop|supply house|gang ?box|boss|foreman|store)\b",
            CLAUSE,
        ),
        _aside(
            "sent gave tossed threw chucked dumped returned handed refused trashed scrapped ditched rejected put binned pitched",
            rf"(?:(?:i|we|then|just|had to|so|had|have) )*(?:sent|gave|tossed|threw|chucked|dumped|returned|handed|refused|trashed|scrapped|ditched|rejected|binned|pitched|turned down|wouldn't take|wouldn't use)(?: (?:him|her|them|it|back|out|away|over|down|aside|in the trash|all|right))* (?:(?:the|that|those|his|their|her|its|a|an|some|any|all|of|my|our|old|wrong|bad|other|loaner|{_MANY.strip()}) ?)*(?:[\w/½¼-]+ ){{0,3}}?(?:tape|staples|stuff|ones|roll|rolls|box|boxes|board|mastic|181 ?a-?[phm])(?: (?:back|out|away|in the (?:trash|dumpster|bin)|they (?:sent|gave) \w+))*$",
            CLAUSE,
        ),
        _aside("gun stapler hammer loaner", r"(?:(?:that|this|the|my|his|their) )+(?:(?:loaner|borrowed|old|other|spare|own|rental|shop|regular|usual|new|cheap) )+(?:gun|stapler|hammer|tool|one)s?(?:'s)? (?:always |only )?(?:clinch|point|turn|bend|shoot|drive|set)(?:es|s)\b", CLAUSE),
        _aside("dropped delivered shipped brought sent", rf"(?!i\b|we\b)(?:[\w'.]+ ){{1,3}}(?:dropped off|delivered|shipped|sent over|brought over|brought up|brought) (?:(?:the|our|some|more|those|{_MANY.strip()}) ?)+(?:{_PACK} of )?{_STUFF}\b", SENTENCE),
        # another's piece
        _aside(
            "his hers theirs",
            r"(?:(?:that's|that one's|this one's|it's|which is|is) )?(?:his|hers|theirs)(?: (?:is|was|are|were|has|had|got|have|didn't|wasn't|isn't|came|went|leaves?|ran|runs|looks))\b",
            SENTENCE,
        ),
        _aside("everybody everyone everybody's everyone's somebody's someone's everyone", r"(?:everybody|everyone|somebody|someone|anybody)(?:'s)? else(?:'s)?\b", SENTENCE),
        _aside("other", r"(?:that|the) other (?:unit|side of the building|building|floor|crew|shift|outfit)(?:'s)?\b(?!.*\b(?:i|we) (?:built|made|did|closed|taped|stapled))", SENTENCE),
        _aside(
            "piece pieces work baby job sheet ticket doing handiwork belongs belong mine ours built made taped did theirs his hers not nothing somebody someone shop night day shift crew wasn't weren't me us preach teach tell drill repeat hammer",
            r"(?:\b(?:is|was|'s|are|were|that's|it's|that one's|those are|all) (?:{name}|{who}|night shift|day shift|the (?:other|night|day|next) (?:crew|shift|guy|guys|outfit)|the shop|somebody else|someone else)(?:'s|s'|')(?: (?:piece|pieces|work|baby|job|doing|handiwork|one|ones|problem|fitting))?(?= ?$| (?:and|but|so|not|now|too|anyway|though|over|up|down|by|on|from|to|which|who|i|we)\b|,)"
            r"|\bbelongs? to (?!me\b|us\b|this|run\b|a (?:riser|run|line|branch|system|shaft|trunk|long|short|tall)\b|the (?:same|run|riser|line|trunk|supply|return|exhaust|main|system|branch|\w+ (?:run|line|riser|system|floor|side))|supply|return|exhaust)\w+"
            r"|\b(?:goes|put it|put that|write it|log it|mark it|count it) (?:on|to|under) (?:{name}(?:'s)?|his|her|their|the other (?:crew|shift)'s|night shift's)(?: (?:sheet|ticket|list|log|name|note|tally|count))?\b"
            r"|\b(?:was|were|got|is|been) (?:built|made|done|put up|hung|put together|fabbed|assembled)(?: \w+)? by (?!me\b|us\b|hand\b|myself|noon|lunch|then|now|the (?:time|book|end)|\d)(?:the |some |an? )?(?:(?!book|spec|print|rule)[\w-]+ )??(?:{name}|{who}|(?:other|night|day) (?:crew|shift|guys?)|somebody|someone|shop|others?)\b"
            r"|^(?:and |but |so )*(?:that's |it's |which is |that one's |those are |they're |all )?(?:not (?:mine|ours|by (?:me|us)|my (?:work|piece|doing|job|circus|baby|problem)|our (?:work|job|doing|pieces?|problem))|(?:nothing|none) (?:of (?:ours|mine|our \w+)|to do with (?:me|us|our))|somebody else's(?: \w+)?|someone else's(?: \w+)?|theirs|the other (?:crew|outfit|shift|guys?)'s?(?: \w+)?)$"
            r"|^(?:and |but |so |though )*(?:(?:the|some|that|another|an?) )?(?:{name}|{who}|(?:other|night|day|next) (?:crew|shift|guys?|outfit)|sheet metal shop|shop|somebody else|someone else|he|she|they|others?) (?:did|made|built|put up|put together|fabbed)(?: up)? (?:that one|that|those|it|them|this one|these|all of (?:it|them|that))(?: all| up| ones?| one)?(?: (?:yesterday|this morning|last week|last night))?$"
            r"|\b(?:i|we) (?:had|have|'ve got|got)(?: got)? nothing to do with (?:it|that|this|those|them|that one)\b|\b(?:i|we) (?:didn't|did not|never) (?:build|make|touch|do|work on) (?:it|that one|this one|any of (?:it|them|those)|those|either)\b|\bnot by (?:me|us)\b"
            r"|\b(?:is|was|are|were|'s) (?:not|n't) (?:mine|ours)\b|\b(?:wasn't|isn't|aren't|weren't) (?:mine|ours)\b"
            r"|^(?:it |that )?(?:wasn't|was not|weren't|sure wasn't) (?:me|us)$"
            r"|^(?:i|we) (?:preach|teach|tell|drill|repeat|hammer)(?: (?:that|this|it|them))*(?: (?:to|into|at))? (?:every|all|each|the|my|any|new)\b(?: [\w']+){1,2}$)",
            BACK,
        ),
        _aside("ask", r"\bask (?:{name}|him|her|them|the (?:other|night|day) \w+)(?: about (?:it|that|them|those|that one))?$", BACK),
        _aside("monday tuesday wednesday thursday friday tomorrow tomorrow's monday's week", r"\b(?:is|are|that's) (?:an? |for |the )*(?:monday|tuesday|wednesday|thursday|friday|tomorrow|next week)(?:'s)?(?: (?:morning|afternoon))?(?: (?:job|work|piece|one|task))$", BACK, "plan"),
        _aside("heard hear", r"(?:(?:i|we) )?(?:just )?(?:heard|hear)(?: that| how)?(?! (?:you|me|it|back)\b)\b", SENTENCE),
        # pieces that are not the one spoken of
        _aside("yesterday's", rf"yesterday's (?!(?:{_KINDS}|fitting) (?:number )?(?:{_NUMBER}|[a-z]-?\d+)\b)[\w'-]+\b|(?:like |unlike |not like )?yesterday's$", SENTENCE),
        _aside("yesterday", r"yesterday (?:by|at|around|about) (?:this|that) time\b", SENTENCE),
        _aside("mine ours", r"(?:the|that) (?:left|right|upper|lower|top|bottom|far|near|old|bad|wrong|first|other|crooked|ugly)(?:-hand| hand)? one(?:'s| is| was| has| had| got| there| over there)\b(?!.*\b(?:mine|ours)\b)", SENTENCE),
        _aside("threw tossed scrapped demoed pitched chucked", r".*\b(?:piece|one|fitting|duct|elbow|straight|tee) (?:that )?(?:they|he|she|somebody|the [\w ]+?)(?:'d| had)? (?:just )?(?:threw|thrown|tossed|scrapped|demoed|pitched|chucked)\b", SENTENCE),
        _aside("himself herself themselves", rf"(?:number )?(?:{_NUMBER}|that one|that|the \w+) (?:he|she|they)(?:'d| had|'ve|'s| has)? (?:\w+ )?(?:hung|stapled|taped|built|made|did|done|rubbed|put up|put)\b.*\b(?:himself|herself|themselves)\b", SENTENCE),
        _aside("talk talking fuss arguing argument chatter noise", r"\b(?:talk|talking|fuss|arguing|argument|chatter) about (?:[\w'/-]+ ?){1,4}?(?= (?:i|we|he|they)\b|[,.;]|$)", WORDS),
        _aside("nearly almost near close", r"(?:i|we)(?:'d)? (?:almost|nearly|damn near|just about|came close to|came this close to|very nearly) (?:sent|sending|hung|hanging|grabbed|grabbing|used|using|put|putting|called|calling|shipped|shipping|threw|throwing|closed|closing|cut|cutting|let|went|going|walked|walking|built|building|made|making|quit|ordered|taped over|stapled through)\b", CLAUSE),
        _aside("next", r"(?:maybe |perhaps |so )*(?:on|for|with) the next (?:one|piece|job|go|time)\b", SENTENCE, "plan"),
        _aside("was were wasn't isn't ain't hasn't", rf"(?:number |piece |fitting )?(?:{_NUMBER}) (?:isn't|ain't|is not|hasn't been|wasn't|was never) (?:even )?(?:cut|built|started|made|begun|touched|laid out)(?: yet| at all)?$", CLAUSE, "plan"),
        _aside("sent told supposed asked", r"(?:i|we) (?:was|were|got) (?:sent|told|supposed|asked)(?: up| over| down)? to (?:do|build|make|start|hang|cut) ", CLAUSE, "plan"),
        _aside("number piece", rf"(?:number |piece |fitting )(?:{_NUMBER}) was (?:already |all )?(?:done|built|made|there|up|finished)(?: already)?$", CLAUSE),
        _aside("formerly previously", rf"\b(?:formerly|previously)(?: known as| called| numbered| marked)?(?: as)? (?:number )?(?:{_NUMBER})(?: by (?:{_NUMBER}))?", WORDS),
        _aside("used", rf"\b(?:which |that |it )?used to (?:be|read|say) (?:an? |number )?(?:{_NUMBER})(?: by (?:{_NUMBER}))?", WORDS),
        _aside("old", r"\b(?:the|my|that|those|our|his) old (?:[\w/.-]+ by [\w/.-]+ )?(?:cut-? ?offs?|offcuts?|scraps?|drops?|blanks?|tags?|pieces?|leftovers)\b", WORDS),
        _aside("run", rf"(?:and )?(?:i|we|he|they) (?:was|were) on run (?:{_NUMBER}|[a-z])$", CLAUSE),
        _aside("scrap bin trash dumpster garbage junk", r"(?:so |and )*(?:the|that|my) (?:\w+ )?(?:piece|one|blank|straight|elbow|cap|transition|offset|sheet)(?: piece)?(?:'s| is| went| ended up| landed| lies| goes)(?: now)? (?:in|into|on|to) the (?:scrap|bin|trash|dumpster|garbage|junk)\b", CLAUSE),
        _aside("tape", r"\b(?:because|since|cause|as) (?:the|my|that|our|no) tape (?:wouldn't|won't|didn't|doesn't|don't|couldn't|would not|never)\b[^.;,]*", WORDS),
        _aside("flap", r"\b(?:that|the|this|one|back|top|bottom|left|right)(?: \w+)? (?:seam|side|edge|end|joint|corner)(?:'s| is| was| got)?(?:n't| not) (?:stapled|staples) (?:because|since|as|'cause|cause) (?:there's|there is|there was|it's got|it has|it had|i had|i've got) no (?:\w+ )?flap(?: on (?:it|that side|there|that one))?", WORDS),
        # tight, but of the room, the day or the money
        _aside("tight", r"\b(?:i know|you know|granted)(?:,)? (?:it's|that's|it is|this is|it was) (?:an? )?(?:(?:little|bit|pretty|kind of|kinda|real|very|so|too) )*tight\b(?! (?:all|joint|seam))", WORDS),
        _aside("tight", r"\b(?:the|that|this|its|my) (?:hole|opening|chase|shaft|corner|gap|spot|place|elbow|throat|turn|bend|radius|fit in there)(?: in the \w+)?(?: was| is|'s)(?: just| way| really)? too tight\b", WORDS),
        _aside("stack pile bundle pallet skid", r"(?<!from )(?<!off )(?<!of )(?<!with )(?<!used )\b(?:the|that|those) (?:wet|damp|torn|broken|crushed|muddy|dirty) (?:stack|pile|bundle|pallet|skid)s?(?: of \w+)? (?:outside|out back|out there|in the yard|in the rain|by the \w+)\b", WORDS),
        _aside("tight", r"\b(?:money|schedule|time|timeline|budget|space|room|clearance|clearances|ceiling|access|parking|deadline|things|hours|cash)(?:'s| is| was| are| were| got| gets)? (?:(?:all|real|pretty|so|too|a little|kind of) )*tight\b", WORDS),
        _aside("tight", r"\b(?:it's|it is|it was|that's|this is)(?: (?:real|pretty|kind of|kinda|so|awful|awfully|a little|a bit))* tight (?:up|down|back|over) (?:here|there|against the \w+)\b", WORDS),
        _aside("tight", r"(?:\b(?:it's|it is|it was|that's|was|is|kind of|pretty|real|a) )*\btight (?:in (?:there|here|that|this|the (?:corner|chase|ceiling|shaft|closet|corridor|back))|getting (?!it (?:all )?(?:tight|closed))\w+(?: \w+){0,4}|quarters|spots?|squeeze|spaces?|schedule|budget|deadline|work(?:ing)?)\b(?: (?:getting|up|in|to) [\w ]{2,24}$)?", WORDS),
        _aside("story", r"(?:so )?(?:i|we|he|they)(?:'ve)? (?:told|tell|heard|know|gave) (?:[\w' ]+ )?(?:the|a|that) (?:story|one|joke|tale) (?:about|of|where)\b", ON),
        # other trades, other duct, other things
        _aside(
            "guy guys crew crews gang boys fellas outfit people folks contractor contractors team sub subs plumber plumbers electrician electricians sparkies sparky roofer roofers painter painters framer framers carpenter carpenters drywaller drywallers fitter fitters pipefitters steamfitters welder welders mason masons laborers knocker knockers tinners ironworkers insulators glaziers tilers janitor inspector inspectors engineer engineers architect owner owners tenant tenants landlord salesman neighbor neighbors",
            rf"(?:{_DET}(?:{_TRADES} )?(?:{_PEOPLE}|(?!my |our )[\w'-]+ (?:guys|crew|sub|gang|boys|contractor))(?: (?:upstairs|downstairs|next door|over there|on \w+|on the \w+|ahead of us|behind us|from \w+))?|(?:our|my) (?:{_TRADES} )?(?:plumbers?|electricians?|roofers?|painters?|framers?)) (?:\w+ly )?(?:{_DID}(?! (?:me |us )?(?:(?:an?|another|two|some) )?(?:\w+ )?(?:holes?|tears?|rips?|gash|dents?|cuts?|punctures?)(?: with| in (?:it|this one|there|(?:the |its |one )?(?:side|top|bottom|back|cheek|heel|throat|facing|foil|board|corner|end|panel))\b| ?[.,;]|$))|never|didn't|don't|doesn't|haven't|hasn't|won't)\b",
            SENTENCE,
        ),
        _aside("watching watched helping helped watch", r".*\b(?:watching|watched|watch|helping|helped) (?:(?:the|those|some|a|my|our) )?(?:{who}|{name})\b", SENTENCE),
        _aside(
            "conduit conduits pipe pipes piping gas water sprinkler sprinklers drain drains cable spiral flex metal sheetmetal galvanized galv iron copper unistrut condensate line linesets stairs railing truck trucks van crane elevator pallet pallets skid forklift generator compressor gangbox gang jobbox job toolbox trailer lunch traffic weather rain parking picture pictures photo photos snapshot video clip",
            rf"(?!{_DET}{_HOURS}\b){_DET}(?:{_MODS}){_THINGS}(?:(?: \w+){{0,1}}? (?:trunk|riser|main|hangers?|straps?|joints?|sleeves?|elbows?|tees?|collars?|seams?|run|line|boxes|crew|brackets?|clamps?|supports?))?(?: (?:on|over|under|above|below|in|by|from|beside|next to) (?:the |run )?[\w-]+(?: \w+)?)? {_DID}\b(?! (?:(?:right|all|just|always) )?in (?:the|my|our) way\b)(?!(?: \w+){{0,3}}? (?:on|over|into|in|through|onto) (?:it|this one|my (?:duct|board|piece)|the (?:board|duct|foil|facing|insulation|piece|top of it|side of it))\b)",
            SENTENCE,
        ),
        _aside("lunch traffic weather rain parking photo photos picture pictures snapshot video clip", rf"{_DET}{_HOURS}(?: \w+)? {_DID}\b(?!(?: \w+){{0,3}}? (?:on|over|into|in|through|onto) (?:it|this one|my (?:duct|board|piece)|the (?:board|duct|foil|facing|insulation|piece))\b)", CLAUSE),
        _aside("duct ductwork trunk riser main duct's", r"(?:(?:the|all|that|this|their|existing|old) )*(?:[\d/]+ by [\d/]+ |\w+ by \w+ )?(?:duct|ductwork|trunk|riser|main|plenum|run)(?: (?:on|in|over|under|above|below|by|from) (?:the |run )?[\w-]+(?: \w+)?)? (?:is|was|are|were) (?:all )?(?:sheet metal|sheetmetal|spiral|galvanized|galv|flex|metal|tin|steel|stainless|aluminum|black iron|pvc)\b", SENTENCE),
        _aside("existing old demoed demo'd", r"(?:(?:the|that|this|their|an?) )*(?:existing|old|original)(?: old)? (?:[\d/]+ (?:by|x) [\d/]+ |\w+ by \w+ )?(?:trunk|riser|main|duct|ductwork|plenum|run|branch|line|return|supply)\b|(?:they|we|i|somebody|demo crew) (?:demoed|demo'd|tore out|ripped out|took down) (?:the|their|that|an?) (?:old|existing)\b", SENTENCE),
        _aside("they've they", rf"(?:.*\b)?they(?:'ve got| have got| have| got|'re using| use| run) (?:\w+ )?{_THINGS}\b", SENTENCE),
        _aside("galvanized spiral galv iron stainless pvc aluminum", r"(?:(?:the|all|that|this|their|existing|old) )*(?:[\d/]+ by [\d/]+ |\w+ by \w+ )?(?:galvanized|galv|spiral|black iron|stainless|pvc|aluminum|sheet metal|metal|tin) (?:trunk|riser|main|duct|plenum|run|elbow|tee|straight|piece)s?\b", SENTENCE),
        _aside("plumber's plumbers' electrician's electricians' sprinkler fitters' fitter's plumber electrician crew's neighbor unit's", rf"{_DET}(?:{_TRADES} )?(?:{_PEOPLE}|neighbor unit|other unit)(?:'s|s'|') (?!gonna|going|been|coming|not\b|here|there|an?\b|the\b|got|done)", SENTENCE),
        _aside("gas iron copper steel conduit pipe", rf"{_MANY}(?:foot|feet|ft|lengths?|sticks?|joints?) of (?:gas |water |black |copper |steel |iron |drain |sprinkler )*(?:pipe|conduit|iron|copper|steel|tubing|main|rail)\b", SENTENCE),
        # stories
        _aside(
            "ago back job jobs remember time once used yesterday's years when seen saw story year winter summer spring fall",
            r"(?:(?:\w+ )?(?:years|months|weeks|jobs) (?:ago|back)|years back|ages ago|back in (?:the (?:day|days|old days|old country|\w*ties)|my day|high school|school|\d+|'\d+|[\w' ]{2,20} (?:we|i|they|nobody|everybody|you))\b|back in (?:january|february|march|april|may|june|july|august|september|october|november|december|the (?:spring|summer|fall|winter))(?: of [\w' -]+?)?,? (?:on|at|over at|for) (?:the|a|that|another|some) [\w']+(?: (?:job|site|project|building|school|tower))?\b|last (?:year|winter|summer|spring|fall),? (?:on|at|over at) (?:the|a|that|another|some) [\w']+(?: (?:job|site|project|building|school|tower))? (?:i|we)\b|back when|(?:on|at) (?:my|our|the) (?:last|old|previous|other|first) (?:job|site|place|shop|company|project)|(?:my|our|the) (?:last|old|previous|other) (?:job|site|boss|outfit|company)|when (?:i|we) (?:was|were|started)\b|i remember (?:a|the|one|when|this one)|(?:one|this one|there was a|there was this|there was one) time(?: (?:i|we|a|at|on|in)\b)|once upon|i (?:once|used to)\b|we (?:once|used to)\b|i've seen\b(?! (?:it|them|more|better|worse|bigger|less|fewer|plenty|none|no|the (?:tape|staples|vanes)))|i (?:saw|seen) (?:a|one|some|this)\b|in (?:my|all my) \w+ years|last job\b|(?:we|i) had (?:a|one|this) (?:job|guy|fella|foreman|case)\b)",
            ON,
        ),
        _aside("telling talking told story stories thinking", r"(?:(?:i|we)(?:'m| am| was| were|'ve been| had been)?(?: just| only)? )?(?:telling|talking|told|thinking|story|stories)(?: (?:to|with))?(?: (?:my|the|his|our) \w+| \w+)? about (?:that|this|a|one|the|some) (?:\w+ )?(?:job|place|site|outfit|crew|time|guy|fella|house|school)(?: \w+)*? (?:where|when|that|who)\b", SENTENCE),
        _aside("job site", r"(?:on|at) (?:that|a|one|another|my last|some) (?:\w+ )?(?:job|site) (?:in|over in|up in|down in|out in|over at|back in|we did|i did|i was on|before this)\b", SENTENCE),
        _aside("usually normally rule often tend times days habit", r"(?:usually|normally|as a rule|most days|most times|half the time|nine times out of ten|every so often|i tend to|i'm in the habit of|most of the time|(?:on )?a normal day)\b", CLAUSE),
        _aside("trust like care fan believe", r"(?:i|we) (?:don't|do not|never|wouldn't|won't|can't) (?:trust|like|care for|believe in|go for|hold with|think much of)\b|(?:i'm|i am|we're) (?:not a|no) fan of\b|not a fan of\b", CLAUSE),
        _aside("you", r"you (?:didn't|never|haven't|forgot|missed|skipped|left)\b", SENTENCE),
        _aside("not", r"not (?:my|our|the|this|any) (?:facing|duct|ductwork|board|foil|piece|joint|work|fitting|run)$", CLAUSE),
        Aside(frozenset(("first", "original", "initial")), r"(?:my|our|the) (?:very )?(?:first|original|initial) (?:thought|idea|guess|plan|count|measure|measurement|try|attempt|cut|number|layout|notion|version)\b(?:(?! (?:was|were|is) (?:right|good|fine|to (?:tape|staple|rub)))) ?(?:[\w' ]+? )?(?:was|were|said|came|gave|had|made|called)\b(?! (?:straight|elbow|tee|cap|collar|transition|offset|branch|plenum|number|fitting|piece|good|fine|right|no good))", SENTENCE, "drawing", keeps=True),
        Aside(frozenset(("first",)), r"(?:at )?first (?:off )?(?:i|we) (?:counted|figured|thought|measured|guessed|reckoned|saw|made it|called it|had it)\b", SENTENCE, "drawing", keeps=True),
        # hopes, dreams, threats, jests
        _aside("dreamt dreamed dream dreaming nightmare nightmares imagine imagined imagining picture pretend fantasy wish wished", r"(?:(?:i|last night i|last night|all night|had|i had) )*(?:dreamt|dreamed|dream|dreaming|a dream|a nightmare|nightmares?|imagine|imagined|imagining|pretend|wish|wished)\b", SENTENCE, "condition"),
        _aside("had were should", r"(?:had (?:the|my|our|that|those|a|some|any|they|he|she|it|we|i) (?!to\b)(?:[\w'-]+ )+?(?:come|been|shown|arrived|worked|held|gotten|got|had|sent|brought|made|given|known|gone)\b|were (?:the|my|our|that|those|there|it|they|he|she|we|i) [\w' -]+|should (?:the|my|our|that|those|a|any|they|he|she|anybody|somebody) [\w'-]+ [\w' -]+)", SENTENCE, "condition"),
        _aside("world body anybody anyone whoever nobody leave leaves", r"(?:in a perfect world|in an ideal world|over my dead body|not on my watch|not in this life|(?:anybody|anyone|whoever|any man|any guy|the next (?:guy|man|one)) (?:who |that )?(?:staples|tapes|rubs|leaves|skips|forgets|builds|hangs|cuts|closes|puts)\b|leave (?:one more|another)\b|one more (?:untaped|unrubbed|loose|bare)\b)", SENTENCE, "condition"),
        _aside("there there's", r"(?:there(?:'s| is| isn't| ain't| was) (?:no|not even an?|even an?|no such thing as an?|not an?) (?:(?:such|even|a) )*(?:straight|elbow|tee|cap|collar|transition|offset|branch|plenum|piece|fitting)\b)", SENTENCE),
        _aside("not nor", r"\b(?:not|nor) (?:so much as |even |one |a single )*an? (?:single )?(?:straight|elbow|ninety|tee|cap|collar|transition|offset|branch|plenum|fitting|piece(?! of))\b", WORDS),
        _aside("haven't didn't never", r"(?:i|we) (?:haven't|didn't|never|have not|did not) (?:yet )?(?:built|made|build|make|closed|close|finished|finish|started|start)(?: so much as)? (?:a thing|anything|a single (?:thing|piece|fitting)|nothing)\b", SENTENCE, "plan"),
        _aside("roger copy ten-four understood 10-4 four", r"(?:roger|copy|ten[ -]four|10-4|understood|loud and clear)(?: (?:that|on|boss|wilco))*$", ON),
        _aside("forbid", r"(?:god|heaven|heavens) forbid\b", SENTENCE, "condition"),
        _aside("trick secret key way thing", r"(?:the|my) (?:trick|secret|key|right way|best way|proper way|whole trick)(?: (?:to|with|of) [\w ]+?)? is\b", SENTENCE),
        _aside("next", r"next time\b", SENTENCE, "reminder"),
        _aside(
            "next previous before after beside behind ahead",
            r"the (?:(?:next|previous) (?:one|piece|section|fitting)|one (?:before|after|next to|beside|behind|ahead of)(?: (?:it|that|this|this one|that one))?)(?:'s| is| was| got| has been)(?: all| already| been| just)* (?:stapled|taped|rubbed|hung|wiped|done|finished|closed|clean|bare)\b",
            CLAUSE,
        ),
        _aside("somebody someone anybody please", r"(?:will|would|can|could) (?:somebody|someone|anybody|one of you|you guys)\b|(?:somebody|someone) please\b", SENTENCE, "reminder"),
        _aside("let tell text call remind", r"(?:let|tell|text|call|remind) (?:{name}|{who}|him|her|them|the (?:other|night|day|next) \w+)\b", SENTENCE, "reminder"),
        _aside("stapling taping rubbing", r"(?:stapling|taping|rubbing)(?: \w+)? (?:is|ain't|isn't) (?:like|an? |the (?:same|trick|key)|easy|hard|all about|an art|a science)", SENTENCE),
        _aside("sample practice mock mock-up mockup demo dummy display training show ignore disregard", r"(?:(?:this is|this was|it's|that's|just|only) )*(?:(?:a|the|my|our|some) )?(?:sample|practice|mock-?up|mock up|demo|dummy|display|training)(?: (?:piece|fitting|one|joint|section|elbow|straight|board|panel))?\b|(?:(?:this is|this was|it's|that's|that was) )?(?:just |only )?(?:to show|for show|for practice)\b|(?:ignore|disregard) (?:this|that|it)(?: (?:one|note))?$", ON),
        # the man, the weather, the day
        _aside("thumb finger fingers hand knuckle knuckles knee toe foot leg arm shoulder head nose ear eye face neck rib ankle wrist shin", rf"(?:(?:i|he|she|just|then) )*(?:cut|nicked|smashed|sliced|jammed|banged|burned|burnt|pinched|hurt|poked|stuck|stapled|taped|wrapped|skinned|cracked|hit) (?:up )?(?:my|his|her|both my|the kid's) (?:\w+ )?{_BODY}\b", SENTENCE),
        _aside("boot boots shoe shoes glove gloves pants jeans jacket coat shirt sleeve hat glasses goggles vest belt phone radio lunch lunchbox wife kid's kids' daughter dog windshield bumper mirror mug cup cooler bag toolbox thumb finger hand knee", rf"(?:(?!\b{_KINDS}\b).)*?\b(?:tape|taped|staples?|stapled|mastic|glue|foil)\b(?:(?!\b{_KINDS}\b).)*?\b(?:on|in|to|over|all over|into|onto|around) (?:my|his|her|your|their|the (?:battery|kid's|kids'))(?: \w+)? {_BODY}\b", CLAUSE),
        # teaching, orders to others
        _aside("told tell showed taught teach teaching show explained showing telling asked lesson preach preached", r"(?:(?:i|we|so|then|just|always|keep|kept|been|had to|gotta|and) )*(?:told|tell|showed|show|taught|teach|teaching|explained to|showing|telling|preach to|preached to|reminded|warned|drill into)(?: it into)? (?!you\b)(?:him|her|them|the (?:kid|kids|new guy|apprentice|helper|boy|boys|crew|guys|young \w+)|my (?:helper|apprentice|partner|kid|son|brother|guy|guys|boys|crew)|{name}|every \w+|all \w+)\b(?! (?:the truth|yes|no|straight out|flat out|it|it's|that it|this|number|straight|elbow|tee|cap|collar|transition|offset|branch|(?:\w+ )*(?:doesn't|don't|isn't|wasn't|can't|won't))\b)(?!.*\b(?:doesn't|don't|can't)\b)", SENTENCE),
        _aside("read recite give tell show remind repeat quiz test what what's", r"(?:(?:okay|ok|so|can you|could you|would you|hey|please|now) )*(?:(?:read|recite|give|tell|remind|repeat|show|quiz|test)(?: me)?(?: back)?(?: to me)?(?: of| on)?|what's|what is|what are|what were)(?: again)? (?:the |that |those |them |all the |our )?(?:rules?|limits?|spec|specs|checklist|book|standard|numbers for \w+)(?: again| for me| back| for this| here| on \w+)*$", SENTENCE),
        _aside("lesson rule advice tip remember", r"(?:(?:the|my|today's|first|here's|a|one|golden|number one) )*(?:lesson|rule|advice|tip)(?: (?:of the day|for today|number one|one|of thumb|for (?:the|my) \w+))?$", SENTENCE),
        _aside("keep mind wear watch put clinch staple tape rub wipe use cut lay run start hold always never", r"(?:always |never |please |just )?(?:keep|mind|wear|watch|check) (?:your|those|them|the|an eye on|it|all your)\b", SENTENCE, "reminder"),
        _aside("kid kids apprentice helper asked wanted wondered asks wants boy", r"(?:the|my|our|that) (?:new )?(?:kid|kids|apprentice|helper|new guy|boy|young \w+|rookie|trainee|green ?horn)(?: (?:just|always|keeps?|kept))? (?:asked|asks|asking|wanted to know|wants to know|wondered|wonders)\b", ON),
        _aside("wanted wants", r"(?:the |my |our |that )?(?:new )?(?:kid|kids|apprentice|helper|new guy|boy|rookie|trainee|{name})(?: just| always)? (?:wanted|wants) (?:me |us )?to (?:tape|staple|rub|use|put|mastic|skip|leave)\b", SENTENCE),
        _aside("tape", r"\bthe (?:tape|mastic|stapler|gun) was (?:already )?(?:out|open|in my hand|sitting there|right there|handy|on the (?:bench|cart|gun|lift))\b", WORDS),
        _aside("yesterday's", rf"\byesterday's (?!(?:{_KINDS}|fitting) (?:number )?(?:{_NUMBER}|[a-z]-?\d+)\b)[^.;,?!]*?(?= so | but |[.;,?!]|$)", WORDS),
        _aside("yesterday before last monday tuesday wednesday thursday friday", r"(?:the day before yesterday|yesterday|last (?:week|night|monday|friday)|this morning) (?:they|he|she|the \w+) (?:wanted|asked|said|told|had)\b", SENTENCE),
    ),
)
