"""English words around a measure that was asked for, drawn or meant, and around the one it came out as: regular expressions over the lower-case words of a part of a clause."""

from __future__ import annotations

from logbook.languages.told import Wanted

_PAPER = r"(?:spec|specs|specification|code|print|prints|drawing|drawings|detail|details|plan|plans|book|manual|sheet|schedule|standard|list|paper|submittal|blueprint|rule|limit|job|cut sheet|table|chart|card|instructions|engineer|foreman|boss|super|inspector|architect|office|shop|lead)"
_WHO = rf"(?:they|he|she|somebody|(?:the |our |my |that |this )?(?:\w+ )?{_PAPER}(?: book| sheet| people| guy)?)"
_ASKS = r"(?:wants?|wanted|says?|said|asks? for|asked for|calls? for|called for|calls? out|called out|needs?|requires?|required|specif(?:y|ies|ied)|gives?|gave|shows?|showed|has|have|had|allows?|allowed|orders?|ordered|lists?|drew|draws|puts|likes|limits|told me(?! to (?:put|tape|use|do|fix|patch|leave|go|make)\b))"

_M = "<m>(?: of an inch| inch)?"
_ABOUT = "(?:(?:about|maybe|almost|nearly|like|a good|a full|some|only|just|a|an|the) )*"
_COUNTED = "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a foot|half"

ENGLISH_WANTED = Wanted(
    looks=rf"\b(?:i'd|we'd|would've|what (?:it|that|this one)|wouldn't|won't|wish|love to|like to|been right|been better|been nice|been correct|been plenty|been good|been fine|been enough|couldn't|could not|can't|able to|no way to|last time|time before|last one|one before|told me|normally|usually|typically|ordinarily|as a rule|most days|most of the time|{_PAPER}|not|isn't|aren't|wasn't|weren't|didn't|ain't|wants?|wanted|meant|mean(?:ing)? to|suppos|should|shoulda|ought|oughta|aim|shoot|shot for|going for|planned|plan|intended|short|small|narrow|skinny|stubby|no good|tried|trying|hoping|hoped|target|goal|asked|order|called|calls|drawn|drew|drawings?|max|maximum|minimum|limit|specified|required|allowed|laid|needs to|has to|have to be|better be|need)",
    wants=(
        r"\b(?:i|we)(?:'d| would)(?: rather| sooner)?(?: have|'ve| of) (?:used|put|run|gone|liked|preferred|had|wanted|shot|spaced|kept)\b|\b(?:i|we)(?:'d| would) (?:rather|sooner|prefer|like)\b",
        r"^(?:as a rule|normally|usually|most days|typically|ordinarily)\b|\b(?:normally|usually|typically|ordinarily|as a rule|most of the time)$|\bi (?:usually|normally|typically|always) (?:go|run|space|staple|shoot|do|set|use)\b",
        rf"(?<!like )(?<!as )(?<!per )(?<!what )\b{_WHO} (?:\w+ )?{_ASKS}\b",
        r"\b(?:meant|wanted|intended|planned|tried|trying|hoped|hoping|aimed|aiming|figured on|was going|were going|started out|set out)\b(?! it$)",
        r"\b(?:shooting|shot|going|aiming|aimed|looking|went|reaching) for\b",
        r"\b(?:was|were|is|are|it's|they're|'s) (?:meant|supposed|intended|to have been|drawn|specified|called out|shown|detailed|figured|laid out|written|listed|required)\b",
        r"^(?:was |were |is |are )?(?:meant|supposed|intended|drawn|specified|called out|called for|asked for|shown|detailed|required)\b",
        r"(?<!where it )(?<!where there )(?<!where they )(?<!like it )(?<!like they )(?<!\bas it )(?<!\bas they )(?<!way it )(?<!way they )\b(?:should|shoulda|oughta|ought to|has to|have to|needs to|need to|better|must)(?: really| rightly| all| both)? (?:be|have|get|sit|run|land|measure|go|of|fold|flare|curl|turn|bend|clinch|kick|spread|point|butt|close|meet|fit|come|lay|lie|stand|hit)\b",
        r"\bshould(?:'ve| have) (?:been|had|run|landed|gone|come)\b",
        rf"\bon (?:the |that |our )?{_PAPER}\b(?! (?:side|end))",
        rf"\b(?:is|was|were|are|'s) (?:the |our )(?:{_PAPER}|max|maximum|minimum|goal|target|idea|number)\b|\b(?:is|was|were|are|'s) (?:spec'd|what they (?:want|wanted|asked for|drew))\b",
        r"^(?:the |our )?(?:max|maximum|minimum|limit|target|goal|rule|spec|plan)(?: is| was|'s)?\b",
        r"\b(?:allowed|specified|called out|required|drawn|spec'd)\b",
        r"\bi (?:laid|marked) (?:them|it|these|those|that) out (?:at|on|for)\b",
        rf"\b(?:is|was|'s|are|were) (?:what|how|the \w+)(?:'s| is| was)? (?:(?:i|we|{_WHO})(?:'d| had| have)? )?(?:signed for|paid for|expected|came for|put in for|were? promised|{_ASKS})\b",
        r"\b(?:that|this|it|which)(?:'s| was| is) (?:the|our|their) (?:order|ask|call|request|number|instructions?|note|word|deal)\b",
        r"^(?:i |we |it |they )?needed (?!to\b)",
        r"\b(?:wish|like|love) (?:i could|to be able to|to) (?:say|tell (?:you|him|them)|report|claim)\b",
        r"\b(?:couldn't|could not|can't|wasn't able to|no way to) (?:do|get|make|hold|hit|keep|manage)(?: it| them)?(?: at| to| down to)? (?:\d|one|two|three|four|five|six|seven|eight|nine|ten|twelve|sixteen|(?:an? )?(?:half|quarter|eighth)|an inch)\b(?!.* of\b)",
        r"\b(?:is|was|'s) what (?:it|that|she|this one|the (?:slope|taper|side|move|change|drop))(?:'d| would| really| actually| should)* (?:needs?|needed|takes?|took|wants?|wanted|calls? for|called for|gets|have had)\b",
        r"^(?!.*\b(?:because|'?cause|cuz|since)\b)(?!.*\b(?:tabs?|vanes?|staples?) (?:\w+ )*?(?:aren't|isn't|weren't|wasn't|not)\b).*\b(?:wouldn't|didn't|won't|couldn't|doesn't) (?:fit|go|work|clear|reach|make it)(?: in there| in| there)?$",
        r"\b(?:the )?(?:last time|time before|last one|one before)$",
        r"\b(?:would have|would've|'d have) been (?:right|better|nice|correct|plenty|by the book|good|fine|safer|enough)\b",
    ),
    rejected=r"\b(?:came up|looked|looks|were|was|seemed|turned out|proved|came out|are|is)(?: way| a little| a bit| a hair| kinda)* (?:too )?(?:short|small|narrow|wide|skinny|thin|long|stubby|far|no good)\b",
    instead=r"\b(?:went with|go with|used|using|switched|cut|made|swapped|put|peeled|redid|shot|ran|now)\b",
    denied=r"(?:(?:and|but|so|no) )*(?:(?:on|of|for|in) (?:\w+ )?[\w-]+ )?(?:(?:it|they|that|these|i|we|this|the staples|staples|tape|the tape|tabs|screws|hangers|the screws|the tabs|the hangers|washers|mine|ours)(?:'s|'re| is| are| was| were)? ?)?(?:not|isn't|aren't|wasn't|weren't|didn't|ain't|neither|nor|never)\b",
    never=r"\b(?:like|as|per|to|by|following|matching|meets?|same as|within|(?:did|built|made|used|have|got|exactly|just|to|with) what) (?:the |our |that )?(?:spec|print|drawing|plan|detail|code|book|rule)s?\b(?! for)|\bto spec\b",
    verb_of="mine ours they these those it i we staples screws hangers tabs",
    set_against=rf"(?:(?:where|though|although|while|versus|against|when|not|instead of) |(?:the |our )?{_PAPER} )",
    runs_on=r"(?:mine|ours|i|we|they|these|it|what i|on this|this one|got|ended|came|wound|landed)\b",
    agrees=(
        r"(?:and |so |well |yes |yep |yeah )*(?:that's|that is|it's|it is|they're|they are|i|we|mine|ours|these|this|it|they|which is|exactly|right|dead|so) ?(?:is |are |was |just |all |exactly |right |dead )*(?:what |where |how )?(?:i |we |it |they |mine )?(?:exactly )?(?:did|got|have|has|is|are|cut|built|set|hit it|hit that|held it|held that|held to it|kept it|kept to it|kept to that|nailed it|made it|came out(?: so| at)?|landed|gave (?:it|them)|put (?:in|on)|went with|ran|used|shot|stuck to it|there|on it|on that|dead on|right on|spot on|on the money)(?: exactly| too| here| on this one| on it| all the way(?: around)?)*",
        r"(?:and )?(?:dead|right|spot|bang) (?:on|nuts)(?: it| that| the money)?",
    ),
    differs=r"(?:but |and |well )*(?:mine|ours|these|they|it|that|this one|i|we) ?(?:'re |'s |are |is |was |were |did |do |does )?(?:not|aren't|isn't|ain't|wasn't|weren't|didn't|don't|doesn't|never)(?: quite| exactly| all| get that| do that| hold that| make it| make that)*",
    # the part behind it tells of no measure got
    not_yet=r"\b(?:will|gonna|going to|i'll|we'll|i'd|we'd|tomorrow|later|if|would|could've|could have|should|supposed|ought|next time|you'd|they'd|he'd|you need|not|never|isn't|wasn't|aren't|don't|didn't|won't|can't|no)\b",
    says_of_it=r"(?:and |but |now )*(?:(?:that|which|this|it)(?:'s| is| was|'d be)|(?:is|was)|as|like|per) ?(?:what|the|our|how|as|all|per|just|only|supposed|on the|in the|specified|called|ordered|required|drawn|asked)\b",
    gets=r"(?:and |but |well |so |instead |what )*(?:they|it|she|he|we|i|that one|this one|mine|ours|what (?:they|it|we|i))(?:'s|'ve|'re| has| have| is| are)? ?(?:actually |really |just |only |ended up |wound up )*(?:got|gets|get|getting|has|have|had|came|come|went|used|sent|gave|showed up|brought|with|put|made|built|is|are|done|taking|took)\b",
    others=r"^(?:and |but )*(?:he|she|somebody|someone|the (?:other|new|night|day) \w+|the \w+(?:er|or|ian|man)s?|my \w+(?:er|or)) ",
    around=frozenset(
        "i i'm im i've i'd i'll we we're we've they're they them these those it it's its that that's this mine ours one ones what how is was are were be been 's 're 've has had have got get gets getting"
        " came come comes coming out up in at on of to for from by off down with between apart every each all both only just about around roughly near nearly almost more less like closer nearer a an the and so well then now here there"
        " instead actually really honestly exactly even good solid honest true real over under went go goes going ran run runs end ended ending wound turn turned landed land lands sit sits sitting lie lies set hit hits stand stands"
        " measure measures measured measuring count counts counted call calls figure figured reckon read reads say says show shows tape ruler rule number"
        " used use using put putting laid shot shoot fired drove stuck kept keep left gave give gives made make makes did do done cut space spaces spaced spacing spread stretched stretch opened open widened moved let let's backed cheated fudged"
        " center centers centre centres pitch distance inch inches apiece another next other staple staples staple's it'll along across wide width way whole thing right sorry boss yeah yes yep ok okay though anyway straight job myself best most least far could can manage managed do get told me him her you give take"
        " the stuff roll same size side narrow skinny bit hair touch full maybe probably pretty sure know than mine's ours spot spots place places went work works worked him brought box gun loaded finished ended grabbed stick strip strips edge today time flare flared point points pointed pointing face faces facing fold folded bend bent curl curled turned wrong clinch clinched leg legs but last seam seams joint joints seam's god mostly mainly fine except which until till near worse by my talking fit".split()
    ),
    alone=frozenset("the my these those on i mean that that's is of for all".split()),
    weather=frozenset("morning night tonight outside inside basement attic garage building shop truck phone thermometer temperature temp degrees degree cold chilly freezing above below zero weather air wall deck roof floor taped tape's board facing foil surface said when while no any without heat".split()),
    cold=r"(?<![\w'])(?:cold(?:er|est)?|chilly|freezing|freez\w+|pre-?heat\w*|heat(?:er|ed|ing|s)?(?! tape)|warm\w*|thermometer|temperature|temp)(?![\w'])",
    reads=r"(?<![\w'])(?:is|was|it's|that's|at|says?|said|reads?|showed|shows|only|about|call it)(?: (?:at|about|around|only|maybe|just|like|down to))*$",
    hangs=frozenset("hangs hanging".split()),
    cold_ahead=r"(?<![\w'])(?:cold|chilly|freezing|frost|frosty|icy)(?: (?:in|out|up|down|over) (?:here|there)| (?:in|on) the \w+)?$",
    off_a_thermometer=r"^ ?(?:degrees )?(?:on|by|off|according to) (?:the |my |a |our |his )?(?:thermometer|phone|wall)(?![\w'])",
    instrument=r"(?<![\w'])(?:thermometer|thermocouple|probe|temp gun|temperature gun)(?![\w'])",
    gapes=(
        rf"(?:see|seeing|spot|show(?:s|ing)?) {_ABOUT}{_M} (?:at|on|along|in|through|over|of daylight|of light|of black)",
        rf"(?:another|one more|a last) {_M} (?:to|before it'd|and it'd|till it) (?:close|go|meet|pull|shut|be tight)",
        rf"(?:fit|fit-up|fitup)(?:'s| is| was) {_ABOUT}{_M} (?:off|out|open)",
        rf"(?:fit|joint|seam)(?:'s| is| was) (?:sloppy|loose|poor|bad|rough|ugly|not great|crooked)[\w ]* ?,? {_ABOUT}{_M} (?:at|on|along|in)",
        rf"(?:good|fine|tight|closed|ok|okay|snug)(?: everywhere| all around)? (?:except|but|besides|save)(?: for)? (?:the |one |that |on |at )*(?:\w+ )?(?:corner|side|end|spot|place|seam|heel|throat) ?,? {_ABOUT}{_M}",
        rf"{_M} (?:(?:that|which) )?(?:i|we|it|they|you|the \w+) (?:just )?(?:couldn't|can't|won't|wouldn't|didn't|could not|never could) (?:quite )?(?:close|get|pull|shut|bring|squeeze|draw|make up|take up)",
        rf"{_M} (?:is|was|'s) (?:all|as (?:close|tight|near|snug|good) as|the (?:closest|best|tightest|nearest)|about as (?:close|tight|near)) (?:i|we|it|they)(?:'d)? (?:could|can|would|got|get|came|come|pulled)?",
        rf"(?:closest|tightest|nearest|best) (?:that )?(?:i|we|it|they)(?:'d)? (?:could|can|would|got|get)(?: \w+){{0,4}} (?:is|was|'s) {_ABOUT}{_M}",
        rf"(?:pulled|got|closed|brought|drew|squeezed|drawn|down|up|came) (?:it|them|the (?:joint|seam|ends|pieces|two|boards?)|up|down|together)?(?: up| down| together)* ?(?:to )?within {_ABOUT}{_M}",
        rf"(?:lacks?|lacking|lacked|misses|missed|missing|shy|short|wants|needs) (?:of )?(?:closing|meeting|touching|being tight|home)?(?: by)? ?{_ABOUT}{_M}(?: of (?:closing|meeting|touching|being tight))?(?: (?:on|at|along) the (?:left|right|top|bottom|back|front|heel|throat|far side|near side|corner))(?! (?:panel|sheet))",
        rf"(?:doesn't|don't|didn't|won't|wouldn't|does not|do not|did not|not quite|never) (?:quite )?(?:meet|touch|close|come together|butt|seat|pull up|go home|meeting|touching)(?: up)?(?: (?:on|at) the \w+)?(?: by)? {_ABOUT}{_M}",
        rf"(?:joint|joints|seam|corner|side|end|ends|edges?|heel|throat)(?:'s| is| are| stays| was| sits?| stands?)? {_ABOUT}{_M} (?:off|open|apart|shy|out|away|shut|proud of closing|from (?:closing|meeting|touching|tight))",
        rf"{_M} (?:shy|short|proud|away|off|out) (?:of|from) (?:closing|meeting|touching|shut|tight|home|being (?:tight|closed|shut))",
        rf"(?:won't|wouldn't|didn't|doesn't|couldn't|can't) (?:\w+ )?(?:close|pull up|come together|get|shut)(?: (?:up|on me))?(?: the)? (?:last|final) {_M}",
        rf"(?:opens|opened|gapes|gaped|gapped|gaps|spreads|yawns)(?: \w+)?(?: (?:up|on me|out))*(?: (?:to|by|about|a good))* ?{_M}",
        rf"{_M} (?:of (?:space|air|nothing|daylight|light) )?(?:in )?between (?:the (?:two )?(?:boards?|pieces?|ends?|panels?|halves|sections|faces|edges|two)|(?:the )?two (?:boards|pieces|ends|panels)|one (?:end|board|piece) and the other)",
        rf"(?:touch|meet|close|butt)\w*(?: [\w']+){{0,3}} ?,? (?:there's )?{_ABOUT}{_M} between (?:them|the two|'em)",
        rf"(?:left|leaves|leaving|leave) (?:a |an |about |me |us )*{_M} (?:open|showing|uncovered|unclosed|not closed)",
        rf"(?:butts?|butted|tight|snug|closed|shut|meets|flush)(?: (?:everywhere|all around|all the way|around|up|good))*,? (?:except|but|save|minus|less|apart from)(?: (?:for|maybe|about|a good))* {_M}",
    ),
    gapes_there=(rf"(?:it's|it is|i've got|i got|there's|got|well|except|but|only|maybe|and)(?: (?:for|about|maybe|a good))* ?,? ?{_M} (?:on|at|in|along|by|over) (?:the|one|that)", rf"(?:where|there|the \w+|side|corner|one end) (?:it's|it is|i've got|i got|there's|is|has|that's|shows) {_ABOUT}{_M}$"),
    ordinal=frozenset("last first next other".split()),
    away=frozenset("off from below above".split()),
    heats=(
        r"(?<![\w'])(?:air|furnace|burner|heater|boiler|discharge|heat exchanger|supply temp\w*|air temp\w*|temp\w*|inside temp|coil|oven|dryer|thermometer|thermocouple|probe)(?:'s)?(?: [^ .?!,]+){0,6}?,?"
        r" (?:is|was|at|hits|hit|measured|measures|reads|read|showed|shows|says|said|of|to|blowing|blows|puts out|putting out|puts|putting|pushing|sending|sends|pumping|shooting|dumping|throws|throwing|makes|runs|running|with|got|gets|about|around|like|set for|set at|temperature|temp|air)(?: (?:about|around|up to|like|a good|at))*,?$|(?<![\w'])air (?:in|through|inside|on|coming \w+) (?:\w+ ){0,2}\w+'s$|(?<![\w'])(?:air|supply|discharge|duct) temp\w*(?: (?:on|in|at) (?:\w+ )?[\w-]+)?[,:]$"
        r"|(?<![\w'])(?:thermometer|thermocouple|probe) (?:in|into|down|inside|at|through|up)(?![\w'])[^.?!]*(?:[,:]|(?<![\w'])(?:got|get|gets|read|reads|says|said|showed|shows|hit|hits|was|is)(?: (?:about|around|like))*)$"
    ),
    heats_behind=r"^ ?(?:degrees )?(?:is|was|'s) what (?:the |my |our )?(?:air|supply|discharge|probe|thermometer|thermocouple|coil|furnace|heater|unit)\b|^ ?(?:degrees )?(?:on|at) (?:the |my |an? )?(?:air )?(?:probe|thermocouple)(?![\w'])",
    not_the_air=r"(?<![\w'])boiler(?:'s| is| was| in \w+)*(?: (?:runs?|running|set|kept|at|up|to|fired|hot))+ (?:at |to )?(?![^.?!]*(?:air|coil|duct|blow))|(?<![\w'])(?:iron|gun|glue|torch|welder|pizza|ovens?|stove|grill|fryer|rated|rating|good (?:for|to|up to)|limit|limits|links?|fusible|trips?|tripped|melts?|attic|ceiling|roof|on the deck|sun|feels?|felt|up here|in here|out here|adhesive|dryer temp\w*|hair dryer|max|maximum|allowed|allows|handle|handles|withstand)(?:'s)?(?![\w'])",
    of_air=r"(?<![\w'])(?:air|supply|discharge|duct|furnace|burner|heater|boiler|exchanger|unit|coil|inside|through|coming|comes|blow\w*|temp\w*|measured|probe|thermo\w+|plenum|register|outlet|hot|in it|in there|sees|gets|runs|running|carr(?:y|ies)|takes)(?:'s)?(?![\w'])",
    of_moves=r"(?<![\w'])(?:left|right|top|bottom|sides?|both|moves?|moved|goes (?:in|out|up|down|over)|comes (?:in|over|up|down)|drops?|rises|kicks?|steps (?:in|down|up)|(?:leans|pulls|cuts) (?:in|out|over))(?![\w'])",
    one_side=r"(?<![\w'])(?:the|that|one|only one|a) side(?:'s)? (?:that )?(?:moves|comes|goes|drops|tapers|is in|changes)(?![\w'])"
    rf"|(?<![\w'])(?:on|off) (?:the |just |only )*one side(?![\w'])|(?<![\w'])(?:moves|moved|drops|rises|kicks|(?:goes|comes|steps|kicks|moves|leans|pulls|cuts) (?:in|out|up|down|over)) (?:about |like |only |just )?(?:\d|(?:{_COUNTED})(?![\w']))",
    instead_of=r"(?<![\w'])(?:instead of|rather than)(?: the| a| back)*$",
    all_of_it=r"(?<![\w'])all (?:(?:is|of it|of that|comes|goes|was) )*(?:on|off|from) (?:of )?the (?:left|right|top|bottom)(?![\w'])",
    so_long=r"(?<![\w'])(?:set ?-?backs?|back|taper|tapers|slope|slopes|length|run|over|in|within|inside|gave|had|took|takes|room)(?![\w'])",
    not_a_move=r"(?<![\w'])(?:no room for|not enough room|wouldn't|would|couldn't|should|supposed|wanted|asked|ought|print|drawing|not|isn't|wasn't|never|from the|away|ceiling|wall|floor|tall|pieces?)(?![\w'])",
    so_warm=frozenset("morning afternoon evening day night weather shop room building garage basement attic truck trailer warehouse air board facing foil".split()),
    there_warm=frozenset("in inside outside out here there outdoors indoors".split()),
    in_a_place=frozenset("in inside out".split()),
    holds_up=frozenset("strap straps strapping rods wires trapezes unistrut".split()),
    home=frozenset(("home",)),
    cut_off=frozenset("piece pieces strip strips length lengths scrap scraps bits bit".split()),
    rolls=frozenset({"roll", "rolls"}),
    wide=r"(?<![\w'])(?:wide|width|narrow|skinny|roll|ruler|measures?|measured|across|inch|inches|edge)(?![\w'])",
    counted=r"(?<![\w'])(?:all|other|others|both|on|in|the|these|those|of|only|each|every|for|thing|step|number)$",
    clinched=r"^(?:in|out)wards?$|^flar(?:e|es|ed|ing)(?: (?:in|out)(?:wards?|side)?)?$",
    than=r"(?<![\w'])(?:than|not|instead of|rather than|over|past|beyond|above|under|below|short of)(?: (?:a|an|the|even|at|every|to|about))*$",
    reason=r"(?<![\w'])(?:because|'?cause|since|on account|due to|thanks to|for lack|so (?:that|i|we|it)|where|when|while|with the|as the|which|which is|and i|if you|that's what|not|instead of|rather than|for no)(?![\w'])",
)
