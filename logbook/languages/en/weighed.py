"""English words that an act can stand under: denials, verbs that deny by themselves, and how many of them make a yes. Patterns over sketches."""

from __future__ import annotations

from logbook.languages.told import Weighed

_MEASURE = r"(?:inch|foot|strip|stitch|shred|scrap|piece|bit|lick|sliver|scratch|trace|speck|whiff|hint|sign|drop|dab|yard|roll|ounce|square inch|single one|thing|set|pair|row|line|length|wrap|one)"
_ANY = r"(?:so much as |even |a single |any sign of |any kind of |(?:a|an|any|the|its|one|my|your|some|those|that|all|of|on|to|in|with|from|doing|putting|getting|a lick of|" + rf"(?:a|an|one|any|single|damn|lousy|solitary)(?: \w+)? {_MEASURE}(?: worth)? of" + r") )*"

_WHEN = (
    r"(?:tomorrow|tonight|later(?: on)?|next(?: week| up)?|last|soon|in the morning|this afternoon|after (?:lunch|break|dinner|the \w+|i|we|hours)|monday|tuesday|wednesday|thursday|friday|saturday|sunday|come \w+day|first thing|before (?:we|i|you|they|it)|when (?:i|we|it|they|the)|once (?:i|we|it|they|the)|at (?:noon|\w+ o'clock|the end)|by (?:\w+day|tomorrow|noon|tonight|the end|next|quitting|then)|as soon as (?:i|we|it|they|the|he|she|somebody|my)|whenever (?:i|we|it|they|the)|at lunch|some other (?:day|time)"
    r"|on (?:monday|tuesday|wednesday|thursday|friday)|in a (?:bit|minute|while|few)|this evening|the day after|any day now|next shift|on the next (?:trip|truck|shift|visit))"
)
_THINGS = (
    r"(?:floors?|bench|van|truck|shop|hands?|thumbs?|fingers?|gloves?|boots?|glasses|goggles|lunch ?box|box|boxes|phone|hose|ladder|table|tools?|toolbox|knife|knives|eyes?|neck|knees?|ankle|wrist|foreman|boss|super|guy|pants|jacket|sleeve|hat|hard hat|cords?|handle|sign|poster|note|drawings?|plans?|papers?|receipt|tickets?|carton|bags?"
    r"|bumper|seat|mirror|windshield|plastic|poly|tarps?|carpet|stairs|kitchen|bandage|coffee|lunch|nails?|nose|face|hair|head|dog|windows|walls)(?! (?:is|are|was|were|has|had|got|'s|broke|fell|ran|went|walked|needs|side|end|seam|joint|edge|of (?:it|#)))"
)

_LYING = r"(?:sitting|lying|laying|leaning|stuck|parked|standing|resting|waiting|piled|stacked|hanging|back|over|out|up|down|right)"
_PUT_BY = (
    r"(?:box|lift|scissor lift|scaffold|dash|tailgate|closet|corridor|lobby|yard|driveway|roof|hall|porch|loading dock|truck|van|shop|gang ?box|job box|tool ?box|tool bag|trailer|office|supply house|warehouse|yard|cart|pallet|crate|tailgate|connex|container|dock|floor|ground|bag|roll|holster|pocket|back pocket|belt|tool belt|pouch|bucket|bench|table|shelf|wall|package|wrapper"
    r"|wrapping|plastic|carton|case|stack|rack|hook|charger|car|cab|pickup|liner|spool|dispenser|sawhorse|sawhorses|locker|apron|sleeve|lunchbox|stairs|hallway|doorway)"
)
_AWAY = rf"(?:(?:in|on|at|by|under|against|beside|next to|behind|inside) (?:(?:the|my|its|a|our|his|her|their|somebody's|\w+ 's) )?(?:[\w']+ )?{_PUT_BY}(?![\w'])(?! (?:side|seam|joint|end|edge))|in (?:the|my|its|a|our|his) (?:gang |job |tool )?#|at home|back home)"
_NOT_SPARE = r"(?<!rest of the )(?<!rest of my )(?<!extra )(?<!spare )(?<!other )(?<!leftover )(?<!left over )(?<!more )(?<!new )(?<!old )(?<!unused )(?<!wrong )"
_FOR = r"(?: for (?:it|#|this one|that one|mine|this|here))?"
_WAS = r"(?: ?(?:'s|is|are|was|were))?"

_LACKING = (
    r"(?:leav(?:e|es|ing)|left|keep(?:ing)?|kept|sent?|let|ship(?:ped)?|send(?:ing)?)(?: (?!<)[\w'#-]+){0,6} <u>",
    rf"(?:leav(?:e|es|ing)|left) {_ANY}<n>(?: (?!<|undone)[\w'#-]+){{0,3}}? (?:off|out|behind|undone|in the (?:box|truck|bag|van|gangbox)|on the (?:truck|bench|floor|cart))",
    rf"(?:leav(?:e|es|ing)|left) (?:off|out) {_ANY}<n>",
    rf"(?:leav(?:e|es|ing)|left)(?: [\w'#-]+){{0,4}} (?:without|with no|minus|short of) {_ANY}<[nbd]>",
    rf"(?:skip(?:s|ped|ping)?|forg(?:e|o)t(?:s|ten|ting)?|miss(?:ed|ing)?|neglect(?:s|ed|ing)?|omit(?:s|ted|ting)?|dodg(?:e|ed|ing)|avoid(?:ed|ing)?|refus(?:e|ed|ing)|fail(?:s|ed|ing)?|shirk(?:ed|ing)?|duck(?:ed|ing)?|spar(?:e|ed|ing) (?:it|her|myself)|pass(?:ed|ing) (?:up|on)|scrimp(?:ed|ing)?|skimp(?:ed|ing)?|cheap(?:ed|ing) out|flak(?:ed|ing) out|bail(?:ed|ing)?|pass(?:ed|ing) over|overlook(?:ed|ing)?) (?:out )?{_ANY}<[nbd]>",
    rf"(?:with ?out|lack(?:s|ed|ing)?(?: for)?|bare of|free of|devoid of|short of|shy of|empty of|innocent of|clear of|starved of|missing) {_ANY}<[nbd]>",
    r"<u>",
)
_NEAR = (
    r"(?:nearly|almost|damn near|darn near|just about|all but|about|(?:came|was|got|come) (?:this |so |that |real |very |awful |pretty |within an? \w+ )*(?:close to|near to|near|of)|(?:this|so|that) close to|within an? \w+ of|on the verge of|(?:was )?tempted to"
    r"|(?:had )?half a mind to|(?:i |we )?(?:thought|dreamed) (?:about|of)|considered|toyed with)(?: (?:i|we|i'd|just|even|completely|clean|plumb))*"
)

ENGLISH_WEIGHED = Weighed(
    undone_names=(
        ("unrubbed", "rubbed_down"), ("unburnished", "rubbed_down"), ("unsqueegeed", "rubbed_down"), ("unpressed", "rubbed_down"), ("unsmoothed", "rubbed_down"), ("untrimmed", "trimmed"), ("unbent", "tabs_bent"), ("unfolded", "tabs_bent"), ("unwiped", "surface_clean"), ("uncleaned", "surface_clean"), ("undusted", "surface_clean"), ("unwashed", "surface_clean"), ("unswept", "surface_clean"),
        ("unpatched", "damage_repaired"), ("unrepaired", "damage_repaired"), ("unmended", "damage_repaired"), ("unfixed", "damage_repaired"), ("vaneless", "vanes"), ("stapleless", "stapled"), ("unsecured", "stapled"),
        ("unwarmed", "preheated"), ("unvaned", "vanes"), ("unfastened", "stapled"), ("unsealed", "taped"),
    ),
    lacking=_LACKING,
    near_miss=tuple(rf"{_NEAR}(?: (?!<|not |never |no |but |because |if |and )[\w'#-]+){{0,5}}? {words}" for words in _LACKING if words != "<u>"),
    lot_of=r"(?<![\w'])(?:(?:all|every|each|none|not one|no|most|any)(?: (?:single|other|last|of|the|my|our|these|them|today ?'s|his))* (?:#s?|pieces?|fittings?|ones?|joints?|elbows?|straights?|others?|lot)|(?:everybody|everyone|everything|anybody)(?: else)?(?: ?'s)?)(?![\w'])",
    but_this=r"(?:but|except(?: for)?|save(?: for)?|bar|until|till|apart from|other than|excepting|barring|with the exception of|not)(?: (?:for|on|with|in|number))*(?![\w'])",
    finished=r"(?<![\w'])(?:finished(?: (?:it|them|the job|the rest|up|off))*|(?:got|did) (?:it|the rest|the other half|all of it) (?:done|finished|too|after|later)|(?:did|got|taped|stapled|rubbed) the (?:rest|other half)|carried on and finished|it's (?:all )?(?:done|finished) now)(?![\w'])",
    did_so=r"(?<![\w'])(?:did|didn't|have|haven't|was|wasn't|ended up|wound up|in the end|forgot|left|skipped|finally|actually)(?![\w'])",
    not_his_word=r"(?<![\w'])(?:never|not|\w+n't)(?: (?:once|ever|even|actually|really))* (?:said|say|saying|claimed?|told (?:you|anybody|him|them)|tell (?:you|anybody|him|them))(?![\w'])",
    belied=(
        r"^(?:(?:and|but|so|well|now|look|listen) )*(?:whoever|anybody|anyone|any man|any fool|the (?:guy|fella|fellow|man|one|person|clown|joker|bird|genius|idiot)|somebody|someone|he|she|they|the \w+|if (?:he|she|they|anybody|anyone|somebody|someone|the \w+))"
        r"(?: (?:who|that))?(?: (?:just|ever|keeps?|went and|is|was|has been))* (?:told|tells?|telling|says?|said|saying|thinks?|thought|claims?|claimed|claiming|wrote|swears?|swore|reported|spread|spreading|put down)(?: (?:you|me|him|her|them|it|that|down|around))*(?![\w'])",
        r"(?:(?:is|was|are|'s|'re|(?:he|she|it|that)'s|they're|(?:he|she|it|that) is|they are|must be|has to be|got it) (?:just |dead |plain |flat |flat out |all |dead flat |clean )*(?:wrong|lying|mistaken|blind|dreaming|a liar|liars|confused|full of (?:it|beans|\w+)|out of (?:his|her|their) (?:mind|head|tree)|drunk|crazy|nuts|off|seeing things|pulling your leg)"
        r"|(?:(?:he|she|they) )?(?:needs?|wants) (?:glasses|new glasses|(?:his|her|their) eyes \w+|a flashlight|to look again)|(?:(?:he|she|they) )?(?:hasn't|haven't|didn't|never|doesn't|don't) (?:look|looked|seen|see|been|know|checked|check|opened|bothered)(?: [\w'#]+){0,5}|(?:(?:he|she|they) )?(?:lied|lies)|made (?:it|that) up)(?: (?:about (?:it|that|me)|to you|there|again|too|on that))*$",
    ),
    # a denial of what is not done, right before the act: "not stapling", "no tape"; only under another denial
    denied=(
        rf"(?:not|never|n't|\w+n't|no) (?:have |had |get |getting |gotten |having |been |be |being |got |yet |fully |all )*{_ANY}<[nbd]>",
    ),
    # one denial by itself, with the act, that nothing else reads
    not_a_bit=(
        r"what (?:isn't|is not|ain't|wasn't|hasn't been|didn't get|never got|did not get) (?:in|on|there|done|put on|put in|finished)(?: (?:it|there|yet|(?:on|in|for) [\w'#-]+(?: [\w'#-]+)?))? (?:is|was|are|were) (?:just |only )?(?:the |its |any |my )?<[nb]>",
        rf"{_NOT_SPARE}<n>{_FOR}{_WAS}(?: all| both)* (?:still|just)(?: {_LYING})* {_AWAY}",
        rf"{_NOT_SPARE}<n>{_FOR}{_WAS}(?: all| both)* (?:sitting|lying|laying|leaning|stuck|parked|piled|stacked|riding around|riding|rolling around|bouncing around)(?: (?:back|over|out|up|down|right|there))* {_AWAY}",
        rf"<n>{_FOR}{_WAS}(?: all| both)* (?:still |just )*(?:wrapped|shrink-?wrapped|in (?:the|their|its) (?:wrap|wrapper|wrapping|plastic|box|boxes|crate|package)|on order|on back ?order|back-?ordered|in transit|crated(?: up)?|boxed(?: up)?|packed(?: up| away)?)$",
        rf"^(?:(?:and|but|the|its) )*<n>{_WAS} (?:on|in) (?:the|its|my) (?:roll|spool|reel|wrapper|package)$",
        rf"<n> for (?:it|#|this one|that one|mine|this|here){_WAS}(?: all| both)*(?: {_LYING})* {_AWAY}",
        rf"<n>{_FOR} (?:(?:never|didn't|hasn't|haven't)(?: ever| even)? (?:left|leave|came? (?:off|out of|up from|down from)|come (?:off|out of)|made it (?:off|out of|in from|over from)|got (?:off|out of)|gotten (?:off|out of)|moved from) (?:the |my |its |his |our )?(?:[\w']+ )?(?:{_PUT_BY}|#)|(?:stayed|stays|remained) (?:home|behind|{_AWAY}))",
        rf"^(?:(?:and|but|the|its|all|both) )*<n>{_FOR}{_WAS} (?:still |just |all )*(?:sitting|lying|laying|leaning|standing|stacked|piled)(?: right| over)* (?:next to|beside|by|against|under|behind|alongside) (?:it|#|me|the \w+)",
        r"before (?:i|we|anybody|anyone|it)(?: ever| even| finally| had)* (?:remembered|remembering|thought of|noticed|realized|thought about|missed|hit me about)(?: (?:i|we))?(?: (?:forgot|missed|left out|had|about|the|its|those|my|any))* <n>",
        r"^(?:and )?(?:then|only then|only after|after that|too late)(?: i| we)? (?:remembered|thought of|noticed|realized|saw|missed)(?: (?:the|its|about|those))* <n>$",
        r"(?:not|never|\w+n't|nobody(?:'s| has)?|no one(?:'s| has)?)(?: (?:have|has|even|ever|yet|been|really|quite|so much as))* (?:touch(?:ed)?|got(?:ten)? (?:near|close to|around to)|get (?:near|around to)|start(?:ed)?(?: on| in on)?|begun|been near|gone near|come (?:near|close to)|laid a (?:hand|finger) on|looked at)(?: (?:the|its|any|that|my|putting|doing|laying|running))* <[nb]>(?! (?:since|again|gun|measure|after|a second))",
        r"what(?:'s| is| was) (?:still )?(?:missing|lacking|absent|not (?:in|on|there|done))(?: yet)?(?: (?:on|from|in|for) [\w'#-]+(?: [\w'#-]+)?)? (?:is|was|are|were) (?:just |only )?(?:the |its |any |my )?<[nb]>",
        r"(?:never|didn't|don't|haven't|not once)(?: have| had| actually| even| ever| once| you| go| be)*(?: i| we)? (?:writing down|putting down|write down|put down|write|jot down|say|saying|said|claim|claimed|told (?:you|anybody|anyone|him|them)|tell (?:you|anybody|anyone|him|them)|report|reported|log|logged|promise|promised|swear|swore)(?: that| you| anything about)* (?:#|it|they|she|this one|that one|any of it) (?:was|is|were|are|had been|got|has been|has|had)(?: all| been)? <d>",
        r"(?:fresh air|thin air|daylight|air|nothing|a hole|an? (?:empty|blank) (?:spot|space|slot)|empty space|bare board|open space) (?:where|in place of|instead of) (?:the |its |any |my |her )?<n>",
        r"(?:wouldn't|don't|do not|needn't|won't|no (?:use|point|sense)|no need to)(?: (?:bother|go|even|be|you|to|waste your time|trying))* (?:look(?:ing)?|search(?:ing)?|hunt(?:ing)?) for (?:any |the |its |signs of )?<[nb]>",
        r"it's (?:only |just )?(?:the )?<[nbd]> (?:that |which |what )?(?:isn't|aren't|wasn't|weren't|is missing|are missing|'s missing|is lacking|didn't (?:get|happen)|never (?:got|happened)|i (?:skipped|forgot|didn't|never|left)|it's missing|it lacks)",
        rf"(?:without|not|never(?: \w+){{0,2}}|nary|no|\w+n't(?: [\w']+){{0,3}}) (?:so much as |even |as much as )*(?:a|an|one|any)? ?(?:(?!two|three|four|half|quarter|\d)\w+ )?{_MEASURE}(?: worth)?(?: of)? (?:the |any |that )?<n>",
        r"<n> (?:is |'s |are |was )?(?:a myth|a rumou?r|a fairy tale|a legend|a dream|conspicuous by (?:its|their) absence|nowhere (?:to be (?:seen|found)|in sight)|absent|nonexistent|non-existent|history|a no show)\b",
        r"not (?:one|a) <n>|not (?:one|a) single <n>",
        r"(?:there|it)(?:'s| is| was| has|) ?(?:not|isn't|wasn't|ain't|never was|hasn't got|hasn't|doesn't have) (?:even )?(?:one|a|a single|one single|a lone) <[nb]>(?=$| (?:in|on|to|behind|under|holding|anywhere|there|through|at|near|within)(?![\w']))",
        r"(?:with |has |have |got )?(?:all |exactly |a grand total of |a full |every one of )?(?:zero|nil|zilch|nada|zip|bugger all|diddly|none) (?:in the way of |on the |for |of )?(?:its |the |her |his |those |them )*<n>",
        r"ain't no <[nbd]>|never (?:no|any) <[nbd]>",
        r"<d>(?: (?:down|up|over))? (?:(?:absolutely|just about|next to|exactly|not) )?(?:nothing|none of (?:it|them|that)|zilch|zip|nada|squat|diddly|bupkis|not a thing|nary a thing|no part of (?:it|#))(?! (?:but|except|else|besides|other|more|less|off|loose|wrong|on)(?![\w']))",
    ),
    not_yet=r"(?<![\w'])(?:haven't|hasn't|havent|hasnt|yet)(?! (?:a|an|any|so much|no)(?![\w']))(?![\w'])",
    barely=(
        r"<n> (?:is |'s |are )?(?:only |just |about )?half (?:on|done|in|down|up|finished)$",
        r"^(?:so |and |but )*(?:only |just |about |maybe |roughly )*half of (?:number )?(?:#|[\w-]+)(?: is|'s| got| has been| are| was)? <d>(?! (?:it )?(?:every|on|at|to))",
        r"(?:hardly|barely|scarcely|almost|nearly|all but|(?:just )?as good as|next to|practically|virtually|close to|not quite|not exactly|not really|not altogether|not entirely|not wholly|halfway|partway|half way|part way|mostly|(?<!a )half|most of the way|some of the way) (?:through |into |with |at |there |done |finished |finishing |being |been |got |having |what (?:you'd|you would|i'd|i would|anybody'd|one would|they'd|most would) (?:call|describe as) |something (?:you'd|i'd) call |the |my |its |all )*<[db]>(?! (?:it )?(?:every|on|at|to))",
        r"(?:hardly|barely|scarcely|next to no|almost no|practically no)(?: (?:any|a|an|one|a single|a bit of|a lick of|much))? <n>(?! (?:left|over|remaining|to spare|on hand|anymore|in the|on the truck))",
        r"<n> (?:is |'s |was )?(?:only|just|barely|hardly) (?:half |partly |part way |halfway |just |been )*(?:started|on|begun|half done|done halfway|in on one side)$",
        r"(?:was|is|were|are|'s) (?:still )?(?:next|up next|last|first|ready|waiting|due|all set|slated|scheduled)(?: in line)? to (?:be|get) (?:\w+ )?<d>",
        r"not what (?:you'd|you would|i'd|i would|anybody'd|most people would) call (?:properly |really |well )?<[db]>",
        r"(?:nearly|almost|halfway|partway|part way|half way|most of the way|about|not|not quite) (?:done|finished|through|there)(?: with)? (?:the |my )?<[bdn]>",
        r"(?:in the middle of|in the midst of|midway through|partway through|halfway through|half through|working on|just starting on|just started on|started on|starting on) (?:the |my |with the |on the )?(?:<[bd]>|taping|stapling|rubbing)(?= it| them| down|$)",
        r"<n> (?:is |'s |are |was )?(?:only |just )?(?:on|around|along|down|over|across|in) (?:about |maybe |just |only )?(?:(?:most|half|some|part|parts|three quarters|two thirds|a third|one third|a quarter|one quarter|the first half|a bit|bits) of\b|(?<!in )half$|half (?:(?:the|my|its|this|that) )?(?:seams?|joints?|flaps?|laps?|tabs|sides?|corners?|edges?|ends?|perimeter|piece|thing|#))",
        r"<n> (?:is |'s |are |was )?(?:only |just )?(?:in|on|over|across) (?:the |one )?(?:top|bottom|upper|lower|left|right|first|front|back) half\b(?! (?:and|is|inch|an inch))|(?:only |just |about )*half (?:of )?(?:the |my |its |them |all the )*<n> (?:is|are|got|were|'re)(?: all)? (?:on|in|down|up|there)$|(?:one|two|three|four|a|a couple) <n> (?:short|shy|light)(?! (?:of|by))",
        r"(?:most|half|some|part|parts|three quarters|two thirds|a third|a quarter|ninety percent|half the length) of (?:the |this |that )?#(?: (?:is|has|got|'s|has got|was))* (?:the |its )?<[dn]>",
    ),
    passive=r"(?:gets?|getting|is to|are to|will|'ll|is due to|is going to|gonna|going to|has to|needs to)(?: be| get| be getting)*(?: all| both)? <d>$",
    when=_WHEN,
    to_come=(
        rf"(?:gets?|getting|goes|is due|is slated|slated|is scheduled|scheduled|is booked|due|is to|is getting|will get|'ll get|sees|receives|will be|'ll be|to be|is being|comes?) (?:to be |to get |its |her |the |be |for |up for |a |some |being |on the list for )*<[ndb]>(?: [\w'#]+){{0,5}}? {_WHEN}",
        rf"^(?:and |but |so )*{_WHEN} (?:[\w']+ )?(?!(?:i|we) <d>)(?:#|it|this one|that one|she|i|we|i'll|we'll|they|the \w+) ?(?:gets?|goes|is due|will get|will be|'ll be|'ll|will|is to be|is getting|sees|receives)? (?:its |her |the |be |a |some |to |being )*<[ndb]>",
        rf"<n> (?:all |both )?(?:go|goes) (?:in|on|down) (?!last|before|after (?:i|we|the)|when the|once (?:it|the)){_WHEN}",
        rf"<[nb]> (?:is |'s |are |will be |comes |goes |happens |starts |waits till |waits until |waits for |is due |is set for |is slated for |is scheduled for |is down for |is for )+{_WHEN}(?! 's)",
    ),
    supply=(
        rf"<n>(?: for (?:it|#|that one|this one))? (?:is |are |'s |will |'ll )?(?:come|comes|coming|arrives?|arriving|shows? up|showing up|gets? here|due|on order|on the way|on backorder|backordered|lands?|ships?|be here|here)(?: in)?(?: [\w']+){{0,2}}? {_WHEN}",
        r"<n>(?: for (?:it|#|that one|this one))? (?:is|are|'s) (?:still )?(?:on order|on the way|on backorder|backordered|in the mail|at the supply house|in transit|on a truck somewhere|sold out|out of stock)",
    ),
    after_all=r"(?:(?:and|so|but|in the end|eventually|finally|yes|yeah|well|then) )*(?:i|we|it|they)(?: (?:actually|finally|really|sure|already))* (?:did|have|was|were|is|are|got to it|got it done)(?: (?:it|so|that|now|too|all of it|after all|later|in the end))*$",
    unreal=(
        r"<[dnb]>(?:ing)?(?: (?:it|them|that|this|down|it down|on|up|#))*,?(?: (?:it|that) ?(?:'s|is|was))?(?: ?'s| is| was| were)?(?: (?:also|just|only|really))* (?:(?:something|a thing|one thing|the thing|what|the part|a job|the step) )?(?:that )?(?:i|we)(?: ?'d| would)(?: have|'ve| of) (?:done|gotten to|got to|gladly done|finished|seen to|taken care of)(?! (?:it|that) (?:twice|again|better|other))",
        r"<[dnb]>(?:ing)?(?: (?:it|them|that|down|it down))* (?:would've|would have|woulda|'d have) (?:happened|been done|gotten done|got done|been next|come next|followed)(?= .*(?<![\w'])(?:if|had|but|only|except|when)(?![\w']))",
        r"(?:would've|would have|woulda|'d have|'d've|i'd have|we'd have|i'd of) (?:\w+ )?(?:put|set|slid|installed|fitted|stuck|run|had|added|given it|thrown)(?: (?:in|on|some|the|any|a|few|couple|of|my|more|two|three|four|proper|real|tie))* <n>",
        r"^(?:(?:and|but|so|well|yeah|yes|probably|i know|maybe) )*(?:i|we) (?:know i |really |probably |know we )?(?:should have|should've|shoulda|should of|ought to have|oughta have) (?:\w+ )?<d>(?! (?:that line|the line|all|both|two|three|four|more|every|with|at|on twos|closer|tighter|wider|sooner|more|longer|different|twice|again|harder|earlier|better|straighter|first))",
        r"^(?:(?:and|but|so|well|yeah|yes|probably|i know|maybe|really) )*(?:i|we) (?:know i |really |probably |know we )?(?:should have|should've|shoulda|should of|ought to have|oughta have|was supposed to have|were supposed to have) (?:\w+ )?<d>(?: (?:it|that|them|her|down|off|out|the \w+|the \w+ \w+|#))* (?:first|beforehand|before (?:i|we|the) (?:\w+ )?(?:<d>|<n>|\w+ing|ran|put|closed|laid|stuck|wrapped)\b.*)$",
        r"(?:would've|would have|woulda|'d have|'d've|i'd have|we'd have|i'd of|could've|could have|coulda) (?!called|said|sworn)(?:\w+ )?<d>(?!(?: (?:it|this|that|them|these|this one|the whole thing|up|down|#+|the \w+|[\w-]*\d[\w-]*))* (?:a lot |a little |a bit |way |much )*(?:every|with|at|on|closer|tighter|wider|sooner|more|smoother|longer|different|differently|twice|again|harder|first thing|earlier|better|straighter|neater|cleaner|faster|quicker|nicer|prettier|blind|in (?:his|her|their|my) sleep))",),
    has_it=(
        r"(?:just|only|plain|nothing but)(?: plain)? <n>(?: (?:straight|right|shot|driven|#))* (?:into|through|to) the (?:\w+ )?(?:board|joint|seam|flap|butt|facing|duct)$",
        r"(?:held|holding|closed|sealed|stuck)(?: (?:together|shut|closed|on|up|it|down))* (?:by|with|on)(?: (?:nothing but|just|only|the|plain|mere))* <n>(?: (?:alone|only))?$",
        r"<n>(?: (?:is|'s|was))?(?: the)? (?:all|only thing|only stuff|one thing)(?: that)?(?: that's)? (?:holds|holding|keeps|keeping|closes) (?:it|#|this|the \w+)(?: (?:together|shut|closed))?$",
        r"^(?:(?:#|number|(?!(?:never|not|nobody|neither|without|hardly|nor|no|isnt|aint)(?![\w-]))[\w-]+) )?(?:only |just )?(?:has|have|'s got|got) (?:the |its |good |some |only |just )?<n>$",
        r"(?:has|have|got|wears|carries|sports|is wearing|has got|'s got|kept) (?:all |every one of |both )*(?:its|her|their|his|all) (?:own |full )?<n>", r"(?:complete|fitted out|fitted|finished|all done) with (?:its |the |her )?<n>",
    ),
    ticked=(
        (r"(?:the |any |and |but )*<[nbd]>(?: (?:is|are|was|that's|gets|got))?(?: a| an| big| definite| hard| also)* (?:yes|yep|yeah|yup|check|affirmative|aye|done|ok|okay|si|tick|sure)", True),
        (r"(?:the |any |and |but )*<[nbd]>(?: (?:on|in|for|at|of) (?:#|it|this one|that one))?(?: (?:is|are|was|that's|gets|got|amounts to|comes to))?(?: a| an| big| definite| hard| also)* (?:no|nope|nah|negative|nay|nil|none|zero|never|not|not yet|not so much|not a chance|unfortunately not)", False),
        (r"(?:and |but |it's |that's )*(?:a )?(?:yes|yep|check|affirmative|aye)(?: a| big)* (?:on|to|for) (?:the )?<[nbd]>", True), (r"(?:and |but |it's |that's )*(?:a )?(?:no|nope|nah|negative|nay)(?: a| big)* (?:on|to|for) (?:the )?<[nbd]>", False),
    ),
    put_aside=(
        r"(?:instead of|in place of|rather than|in lieu of|as opposed to)(?: (?:the|any|using|putting|shooting|running|doing|it|in|on|getting))* <[nbd]>(?! (?:every|on|at|by|with|in|an?|two|three|\d+|one|legs?|from|through|flat|down)(?![\w']))",
    ),
    tools=(
        (r"(?:heat gun|torch|heater|iron)", "preheated"), (r"(?:tape gun|tape roll|roll(?: of (?:<n>|tape))?|strip of <n>|<n> roll)", "taped"), (r"(?:squeegee|rubbing stick|rubbing tool|rub|rubdown|<[bd]>)", "rubbed_down"),
        (r"(?:stapler|staple gun|stapling gun|staple hammer|staple|single staple|gun)", "stapled"), (r"(?:rag|wet rag|wipe|cloth)", "surface_clean"),
    ),
    tool_others=r"(?<![\w'])(?:inch|wide|narrow|other|old|spare|first|last|good|big|small|second|new|cloth|foil|wider|narrower|heat|caulk|tape|glue|foam|nail|screw|grease|spray|paint) ?$",
    tool_frames=(
        r"(?:never|hasn't|has not|not once|never once|didn't|no)(?: [\w']+){0,2}? (?:saw|seen|see|met|meet|touched|touch|felt|feel|known|knew|tasted|been near|got near|came near|come near) (?:a|an|the|any|one|so much as a|my) {tool}",
        rf"(?:left|kept|leaving|keeping|had) (?:the|my) {{tool}} (?:back )?{_AWAY}(?: (?:on|for) (?:this|that|it|#)| this time| the whole time)",
        rf"{{tool}} (?:(?:never|didn't)(?: ever| even)? (?:left|leave|came? out|come out|made it out|got pulled|got picked up|came off|come off)(?! of (?:staples|ammo|gas))(?: (?:of|the|my|its|a|his|our) (?:[\w']+ )?(?:{_PUT_BY}|#))?|(?:stayed|stays|remained) (?:home|put|holstered|behind|{_AWAY}))(?: (?:on|for) (?:this|that|it|#)(?: one)?)?",
        r"(?:never|didn't|did not|haven't|hasn't|nobody|no one|nor)(?: [\w']+){0,2}? (?:put|took|take|laid|lay|brought|bring|got|get|set|held|hold|ran|run|laid|touched|touch|swung)(?: [\w']+)? (?:a|an|the|any|my|one|so much as a|no) {tool} (?:to|on|near|at|anywhere near|against|over|around|in|across|close to) (?:it|this|that|#|her|the \w+)",
        r"(?:the |my |a |any |no )?{tool} (?:never|didn't|hasn't|ever)(?: ever| even| once| so much as)* (?:touch(?:ed)?|came? near|get near|got near|gotten near|went near|met|see|saw|kissed|come near|got to|reached) (?:it|this one|that one|#|her|the \w+)",
        r"took no {tool} to (?:it|this one|that one|#|her)",
        r"never (?:took|pulled|got|brought|dragged|unpacked|picked up|grabbed|had) (?:the|my|a) {tool}(?: (?:out|over|up|down|off|here))",
    ),
    met=r"(?<![\w'])(?:took|didn't|ever|nobody|no one|nor|saw|seen?|met|meet|touch(?:ed)?|felt|feel|known|knew|tasted|near|left|kept|leaving|keeping|stayed|stays|remained|never|had)(?![\w'])",
    other_things=(rf"<[db]> (?:up |off |out |down |over )*(?:the |my |our |his |her |a |an |their |some )+{_THINGS}",),
    nots=r"(?<![\w'])(?:not|never|no(?! (?:i|we|it|they|that|this|these|those|there|sir|boss|i've|we've|it's|they're)(?![\w']))(?! (?!way |time |chance |doubt |seam |joint |side |spot )[\w<>#-]+(?: either| neither| there| on it| in it)? (?:(?:and|so|but|then) )*(?:i|we|i've)(?![\w']))|nobody|no one|neither|nor|hardly|cannot|none|nothing|nowhere|rarely|seldom|anything but|far from|nowhere near|\w+n't|isnt|arent|wasnt|werent|didnt|dont|doesnt|havent|hasnt)(?![\w'])(?! longer (?:than|wider))",
    # before the act: what follows is no statement of it
    holds_back=r"(?<![\w'])(?:will|won't|'ll|i'll|we'll|gonna|should|shouldn't|if|unless|whether|going to|about to|meant to|wanted to|tempted|planning|plan|supposed to|thought|because|since|so that|who|why|he|she|they|his|her|their|you|your|let's|think|doubt|sure|mind|afraid|ask|asked|asking|problem|trouble|time|until|till|only|just|much|many|reason|excuse|the one|the ones|when|while|though|although|after|before|but|or|as|call)(?![\w'])|^(?:please )?(?:don't|never(?! (?:once|yet|have|did|ever have)(?![\w'])| \w+ed )|do not) ",
    habit=r"(?<![\w'])(?:(?:never|not) once|never yet|never ever|in my life|in all my (?:life|years|days)|in \w+ years)(?![\w'])",
    no_fault=(
        r"(?:not (?:a|one)(?: single)?(?: one)?|none|nary an?|not any)(?: of)?(?: the| my| its| those| these| his)* (?:<n>|tabs?)(?: (?:on|of|in|at|around) (?:#(?: \d+)?|it|this one|that one|the collar))?(?: (?:is|are|was|were|'s|got|that's|that are|i|we|still|left|to be|ended up|stayed|came out|stands?|sitting))*"
        r" (?:loose|standing|up|straight|proud|unbent|unfolded|floppy|sticking (?:up|out)|sticks (?:up|out)|stick (?:up|out)|open|upright|flapping|missing|lifted|lifting)(?: (?:on|of|in|at|around) (?:#(?: \d+)?|it|this one|that one|the collar))?$",
    ),
    in_general=r"(?<![\w'])(?:an?|any|every|another) (?:[\w-]+ )?#",  # no piece of his but any of its kind
    past=r"(?<![\w'])(?:was|were|had|been|should|would|could|might|if|when|unless|before|after|until)(?![\w'])",
    concord=r"(?:n't|never|nobody|no one|ain't)(?: [\w']+){0,4} (?:no|none)$|(?<![\w'])no [\w-]+(?: [\w-]+)? (?:and |or |nor )?no$|(?<![\w'])(?:none|nothing)(?: (?:of (?:them|those|that|it)|(?:in|on) (?:it|there|here|this|this one|that one)|at all|whatsoever))* (?:and |so )?no$|(?<![\w'])so (?:it|they|that|this|this one|i|we|she)(?: [\w']+){1,4}$",
)
