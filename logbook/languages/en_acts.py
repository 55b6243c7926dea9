"""The forms in which English names an act, and the frames that deny, half do or put off any of them: "stapling got skipped", "before I could trim it"."""

from __future__ import annotations

from logbook.languages.language import ActWords

_GLASS = (
    r"(?:(?:extra|excess|surplus|left-?over|overhanging|protruding|loose|spare|ragged|stray)(?: bit of| piece of| strip of| fuzzy| pink| yellow)? (?:insulation|fiber ?glass|glass|fib(?:er|re)s?|fluff|fuzz|wool|stuffing|material)"
    r"|(?:the )?(?:extra|excess|surplus)(?= (?:insulation |glass )?(?:at|on|where|inside|by) (?:the|my|that) cut))"
)
_WHO = r"(?:i|we|he|she|they|anybody|anyone|anybody else|my \w+|the \w+)"
_OF_4 = r"(?: (?:out )?(?:of|in)(?: the| its| all| his| my)?(?: four| 4)| ?/ ?4)?(?: of (?:the|its|my))?(?: (?:whole|long|short|flat|full|outside|main))?"
_ELSE = r"(?:the |its )?(?:other|remaining)"
_PART = r"(?:cut|end|side|seam|edge|half|joint|corner|panel|cheek|face|part)"
_GONE = (
    r"(?:skipped|omitted|missed(?! (?:the|a|it|my|one|two|some))|forgotten|forgot|left out|left off|left undone|overlooked|neglected|bypassed|passed over|let slide|not done|never done|undone|ignored|blown off|dropped|a no-go|nonexistent|none|nil|zero)"
)
_COULD = r"(?:could|can|got to|get to|got a chance to|had a chance to|got the chance to|had the chance to|had time to|got around to|was able to|were able to|managed to|finished|got done|got started|started|got any|ever got to|even got to)"
_SKIPS = (
    r"(?:skipped (?:right |clean )?(?:over|past)|let (?:slide|go)|skipped|skip|passed on|forgot|left out|left off|left undone|missed|blew off|omitted|never got to|didn't get to|didn't do|didn't bother with|never bothered with|never did|gave up on|bailed on|ditched|ignored|overlooked|neglected|had no time for|didn't have time for)"
)
_FAILS = (
    r"(?:forgot(?: all about)?|neglected|failed|omitted|didn't think|never thought|didn't bother|never bothered|never managed|didn't manage|wasn't able|weren't able|had no time|had no way|had no chance|never got (?:time|a chance|the chance|around)|never remembered|didn't remember|"
    r"didn't have time|didn't have a chance|didn't get (?:time|a chance|the chance|around)|never took the time|didn't take the time|couldn't be bothered|too lazy|no time|too rushed)"
)

_OF_IT = r"(?: (?:on|of|from) (?:it|this one|that one|the \w+(?: \w+)?|\w+ [\w-]+))?"
_CUT_OFF = r"(?:cut|sliced|torn|ripped|trimmed|hacked|knifed|chopped|lopped|chewed|sheared|broken|snapped|sawn|sawed|shaved|ground|knocked|tore|razored|whacked)"

_FILTH = r"\b(?:dew|frost|ice|condensation|moisture|dust|saw-?dust|dirt|mud|grease|oil|powder|grit|overspray|soot)\b"
_FILTHS = r"(?:dew|frost|ice|slush|snow|condensation|moisture|dust|saw[- ]?dust|dirt|mud|grease|oil|powder|grit|grime|overspray|(?:glove |finger|hand)prints?|smudges?|smears|soot|crud|gunk|lint|fuzz|fluff|fibers?|chalk|ash|sand|sweat|shavings|filings|plaster|crumbs)\b(?! (?:free|cover|mask|pan|bin))"
_FILTHY = rf"(?:(?:all|a|an|the|that|some|old|nothing but|pure|plain|white|fine|dry|wet|gray|grey|concrete|drywall|metal|sheetrock|loose|light|heavy|cutting|machine|hydraulic|joint|floor|good|thick|little|morning|his|their|somebody's|skin of|film of|layer of|coat of|bed of|dusting of|smear of|patch of|bit of|lot of|half an inch of) )*{_FILTHS}"
_TAPE_ON = r"(?: (?:on|of|at|in|for|around) [\w' -]{1,28}?)?"
_UNTIL = r"(?:(?!\b(?:no|not|wiped?|dried|dry|cleaned|clean|brushed|swept|until|before|never|didn't|after|once)\b)[^.;])*?"

# the piece itself, and what may stand before it, where work waits on it
_ITSELF = (
    r"(?:(?:but|and|so|well|yeah|now|though|still|just|the|this|that|whole|thing|one|piece|it|it's|its|she|she's|he|he's|they|they're|these|those|i|i'm|we|we're|i've|we've|which|is|was|are|'s|'re|as for|#+)[ ,]*)*"
)
_PART_OF_IT = r"(?:the |its |my |that |this |one |a )?(?:top |bottom |left |right |far |back |front |last |other )?(?:lid|top|bottom|side|back|front|cover|cheek|heel|throat|door|end|leg|branch|corner|panel|half|cap|frame|saddle|boot|flange|opening)(?:'s| is| are|)"
_HALF = r"(?:half|halfway|half way|part|partly|partway|part way|mostly|about half|three quarters|two thirds|a third|a quarter)"
_PARTS = r"(?:gasket|latch|hinges?|handle|frame|cover|insulation|liner|screws|washers|lid|door|flange|clips?|collar|boot|end|panel|damper|sleeve|hardware|trim ring|weatherstrip|corner piece|last piece)"
_AGAIN = r"re-?(?:made|built|done|cut|worked|laid|placed|fastened|set|seated|squared|fit|fitted|sized|closed)"
_PUT_RIGHT = rf"(?:{_AGAIN}|fixed|swapped|flipped|turned|narrowed|widened|shortened|lengthened|moved|raised|lowered|squared|straightened|taken (?:apart|down|out|off)|opened|made|done|cut|closed|finished|adjusted|tightened|scrapped|changed|split|rotated|corrected|put right|looked at)"
_COMES = r"(?:come (?:apart|back|down|off|out)|go back (?:on|to) the (?:bench|table|shop)|start over|get (?:its|a|another|some) )"
_WORK = r"(?:(?:re\w+|fix|flipp?|swapp?|turn|narrow|widen|shorten|tighten|straighten|squar|finish|clos|adjust|cutt|mov|rotat)ing\b|(?:more |some |another \w+ of |a little |a bit of |an hour of )*work\b|(?:a|another|its|one) (?:new |other )?(?:side|panel|end|lid|top|bottom|half|piece|leg|door|frame|corner|cheek|hour|day|collar|flange)\b)"

_LACKS = r"(?:missing|lacking|lacks|short(?: of)?|wanting|wants|needing|needs|without|shy(?: of)?|doesn't have|does not have|hasn't got|hasn't had|hasn't gotten|never got|never had|didn't get|ain't got|could use|could stand|don't have|haven't got)"
_THE_PIECE = r"(?:it|she|this one|that one|this|that|the (?:piece|thing|joint|cap|elbow|tee|collar|straight)|i|we|i'm|we're)"
_SPOTS = r"(?:top|bottom|left|right|front|back|sides?|side|half|ends?|corners?|edges?|underside|cheeks?|lid|heel|throat|inside|outside|near|far)"
_A_SPOT = rf"(?:(?:the |one |two |three |a |first |my |its |just |only )+(?:first |last |long |short |near |far |two |three |other )*{_SPOTS}|(?:the |my |just |only )*(?:one|two|three|first|second|last|near|far) (?:seam|joint)s?)\b"
_NOT_THERE = r"(?:the ones? (?:up|on|in|at|by|behind|under|against|that|next|facing)\b|underneath|below|behind|in back|on the back|(?:the |on the |at the |along the |under the |my )(?:\w+ )?(?:bottom|back|backside|underside|top|far|sides?|seams?|ends?|corners?|other|left|right|rest|long|short|inside|outside)\b)"
_DAY = r"(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|tonight|next week|first thing|in the morning|this afternoon|after lunch|after break|later|when i get back|at the end of the day|come monday)"
_DIDN_T = r"(?:didn't|did not|never(?: did\b| got (?:to it|around to it|the chance)|(?=$|[,.;]))|hasn't|haven't|couldn't|forgot(?! (?:how|why|who))|ran out of (?:time|day|tape|staples)|went home|quit|took off|blew it off|disappeared|vanished|got (?:pulled|called|sent) (?:off|away|home))\b"
_ONLY = r"(?:it's|it is|this one's|this is|so|and|but|just|well|all|then) "
_USUALLY = r"(?:normally|usually|ordinarily|any other day|most days|most times|as a rule|by rights|nine times out of ten|on a good day)"

ENGLISH_ACTS = ActWords(
    forms=(
        ("stapled", r"(?:staples?|stapling|stitching)", r"(?:re-?staple|staple|shoot (?:it|them|the flap|that flap|staples|a staple|any staples)|run the stapler|put (?:the |any |a |some )?staples?)", r"(?:stapling|shooting (?:it|the flap|staples))", r"(?:stapled|stitched)"),
        ("taped", r"(?:tape|taping)", r"(?:re-?tape|tape(?! (?:measure|gun))|seal (?:it|them|around|this one|that one|the (?:joint|seam|corner)s?)|(?:lay|put|run|get) (?:the |any |some |my )?tape)", r"(?:taping|sealing)", r"(?:taped)"),
        ("rubbed_down", r"(?:rubbing(?: down| it down| out)?|rub-?downs?|rub downs?|rub|burnish(?:ing)?|squeegee(?:ing)?)", r"(?:rub|burnish|squeegee|run the squeegee|get the squeegee|press it down|press down the tape)", r"(?:rubbing|burnishing|squeegeeing)", r"(?:rubbed|burnished|squeegeed)"),
        ("surface_clean", r"(?:wip(?:e|ing)(?: down| off)?|wipe-?down|cleaning|dusting)", r"(?:wipe|dust|(?:brush|sweep|rag) (?:it|them|that|the (?:facing|board|foil|seam|dust|joint))(?: off| down| clean)?|clean (?:it|off|the (?:facing|board|foil|surface|dust|joint|seam|face))|blow (?:it|the (?:dust|facing)) off|get the dust off)", r"(?:wiping|dusting|cleaning(?= done| first| beforehand| at all|$)|cleaning (?:it|the (?:facing|board|foil|surface|joint|seam)))", r"(?:wiped|dusted|cleaned)"),
        ("preheated", r"(?:pre-?heat(?:ing)?|warm(?:ing)?-?up|warming|ironing)", r"(?:pre-?heat|warm|heat|iron)", r"(?:pre-?heating|warming|heating|ironing)", r"(?:pre-?heated|warmed|heated|ironed)"),
        ("trimmed", r"(?:trimming|trim)", rf"(?:trim|shave|(?:cut|slice|pull|clean|knock|take|carve|scrape) (?:away |off |out |back )?(?:all )?(?:of )?(?:the |that |any |my )?{_GLASS}|remove (?:the |that |any )?{_GLASS})", rf"(?:trimming|shaving|(?:cutting|pulling|removing)(?: away| off| out)? (?:the |that |any )?{_GLASS})", r"(?:trimmed|shaved)"),
        ("tabs_bent", r"(?:tab bending)", r"(?:bend|fold|knock|hammer|lay|crimp)(?: down| over| back)? (?:the |all |all the |any |my |any of the |every |those |each )*tabs?", r"(?:bending|folding|hammering)(?: down| over)? (?:the |all |my |those |any |of )*tabs?", r"(?:tabs bent|(?:bent|folded) (?:the |all the |those |all my |my )?tabs)"),
        ("cross_tabs", r"(?:(?:cross[- ]?)tabs?|tabs)", r"(?:(?:put|cut|make|add|lay) (?:on |in |the |any |some |my )*(?:cross[- ]?)?tabs?)", r"(?:(?:putting|cutting|making|adding) (?:on |in |the |any )*(?:cross[- ]?)?tabs?)", r"(?:tabbed)"),
    ),  # fmt: skip
    looks=r"sweat|drip|bead|left it|let it|lived with|extra|excess|surplus|over that|over them|over all|over it|over top|as it was|as is|like that|the way it|anyway|anyhow|all the same|regardless|just the same|just l|just s|only l|only s|nothing done|nothing else|no pressure|supposed|meant|ought|press|smooth|leaned|worked|pushed|squeez|flatten|mash|slick|shiny|plain|blank|mirror|flat silver|flat foil|all flat|dew|frost|dust|condens|moist|mud|greas|grit|powder|dirt|wet|damp|out of|short o[nf]|jam|dead|died|quit|broke|bust|empty|gone|froze|dry|leak|stole|missing|all it|all this|all she|didn't shoot|never shot|didn't pin|never pinned|shoot it|pin it|stitch it|tack it|fell|came|peel|drop|let go|blew|just the|only the|most of|half of|part of|some of|still|wrong|bad tape|kind of",
    hints=(
        r"held|holding|kept|keeping|too |(?:one|two|three) of|when (?:they|he|she|somebody|the|lunch)|let |letting|tacked|caught|pinned|greas|filth|fuzz|fluff|lint|fib(?:er|re)|hardly|far from|nowhere|anything|out of|gap|bare|naked|uncover|expos|stops|quits|ends|ended|shy|gives out|gave out|dies|heat|scrap|bits|slip|got by|got past|wayside|through the|skip|omit|miss|forg|lef|leav|overlook|neglect|bypass|slide|let go|undone|n't|\bno[tn]?\b|none|never|nil|zero|\bnobody|without|before|\bun[a-z-]+ed|\bnon|only|just|half|list|agenda|owe|due|short|lack|want|wait|need|has to|have to|got to|gotta|"
        r"next|follow|yet|still|shift|'ll|will|going|gonna|should|can|could|supposed|meant|extra|excess|surplus|over|loose|spare|ragged|stray|protrud|iron|torch|heat|cold|scrim|weave|pattern|dust|dirt|grit|grease|oil|mud|grim|film|powder|soot|spray|"
        r"flap|tab|throat|empty|hollow|nothing|fail|bother|time|chance|remember|lazy|rush|one|most|some|part|stay|stick|poke|hang|gone|to[- ]?do|open|punch|remain|outstand|pending|unfinish|incomplete|tomorrow|frost|dew|wet|moist|damp|condens|quit|gave|stopp|knocked|to be |plan|intend|aim|mean|hop(?:e|ing)|figur|busy|middle|as we|as i|moment|(?<!k)now|run out|far as"
    ),
    undone=(
        r"before (?:anyone|anybody|someone|somebody|any of us)(?: else)?(?:'d| had| ever| even| could)* {done}\b",
        r"before (?:the |any )?{noun} (?:did|could)\b(?! (?:any|the))",
        r"too (?:tight|close|high|far|cold|wet|dark|low|narrow|cramped|awkward)(?: (?!not|never)[\w']+){0,6}? to (?:even |really |get in and )?{verb}\b(?! (?:any )?(?:closer|more|again|every|right|straight))(?![^.;]*\b(?:{!done}|but)\b)",
        r"(?:held|holding|hold|kept|keeping) (?:back |off )(?:on )?(?:the |my |any )?(?:{noun}|{doing})\b",
        r"(?:held|holding|kept|keeping) (?:the |my )?{noun} (?:back|off)\b",
        r"(?:forgot all about|forgot about|(?:went|walked|blew|skipped|drove) right (?:past|by|over)|clean forgot|plumb forgot) (?:the |my |its |any )?{noun}\b",
        r"{noun}[- ]?wise,? (?:(?:it's|it is|she's|there's|it has|i've|we're|it)(?: got| has)? )?(?:naked|bare|nothing|none|zip|zero|lacking|short)\b",
        r"{doing}(?: it| them| [\w' -]{1,24}?)? (?:was|is) (?:(?!my|our)[\w' -]{2,22}?)(?:'s|s') (?:job|work|task|part|business|end of it|turn)\b[^.;]*\b(?:went home|quit|left|never|didn't|is gone|was gone|took off|no show|called in|forgot|walked off|got sent)\b",
        r"(?:without|with not|with no|not) (?:so much as |even |a |any )*(?:one|single|solitary|lone) (?:single |solitary |lone |lousy )?{noun}\b(?! (?:side|line|row|end))",
        rf"(?:the |my |any |that |all )*{{noun}}(?: (?:it|them|down|inside|out|up|off|part|step|job|work|of it|the \w+))*(?: (?:also|just|all|then|simply))?(?:(?: is| was| were| are| got| gets|'s| ended up| had been| has been))* (?:just |all |plain |also )?{_GONE}(?! (?:on|at) (?:the|one|two|a couple))\b",
        r"{noun}(?: (?:down|it|inside|part|step))*(?: just| simply)? (?:never|didn't|did not|hasn't|has not|haven't|don't|doesn't) (?:ever |even |actually )?(?:happen(?:ed)?|took place|take place|get done|got done|gotten done|occur(?:red)?)\b",
        r"{noun}(?: (?:down|it|inside|part|step))*(?: just| completely| totally| clean)? (?:slipped (?:my|our) minds?|got (?:by|past|away from) (?:me|us)|fell through the cracks|went by the (?:wayside|board)|fell by the wayside)\b",
        rf"(?:the |my |any )?{{noun}}(?: down| part| step)? (?:i|we|he|they)(?:'ll admit i| had to| just| kinda| kind of| plain| went and| sort of)* {_SKIPS}\b",
        rf"{{noun}}(?: down| part| step)?(?: is| was|'s) (?:the (?:part|step|bit|thing|one thing|one) |what |exactly what |just what )(?:that )?(?:i|we)(?: had to| just| kinda| plain| went and)* {_SKIPS}\b",
        rf"(?:what|the (?:part|step|bit|thing|one thing|only thing)(?: that)?) (?:i|we)(?: had to| just| kinda| plain| went and)* {_SKIPS}(?: (?:on|for|with) [\w -]{{1,24}}?)? (?:is|was) (?:the )?{{noun}}\b",
        r"(?:no|zero|nil|minus|sans|not any|skipped(?: right| clean)?(?: out| over| past)?(?: on)?|skip|forgot(?: all)?(?: about)?|passed on|blew off|bailed on|left out|never did|did no|did zero|didn't do|didn't get to|omitted|never got to|got no|had no|hasn't had(?: any)?|haven't done|gave it no|no sign of|didn't bother with|let slide)(?: the| a| any| all the| that| my)? {doing}\b",
        r"without (?:so much as |even |ever |any |first )?(?:a |the |its |my |that )?{doing}\b",
        rf"before {_WHO}(?: ever| even| really)? {_COULD} (?:\w+ )?(?:{{verb}}|{{doing}}|{{noun}})\b",
        r"(?<![\w'])(?:un|non)-?(?!stapled|taped){done}\b(?! (?:space|building|room|area|shop|garage|basement|attic|warehouse|side of|floor|house))",
        rf"(?<!almost )(?<!nearly )(?<!about ){_FAILS} (?:back )?(?:to )?(?:even |really |ever )?{{verb}}\b",
        rf"(?<!almost )(?<!nearly )(?<!about ){_FAILS} {{doing}}\b",
        r"before (?:it|this one|that one|they|she)(?: was| were| had been| got| even got| ever got)+ {done}\b",
        r"(?:meant|supposed|told|asked|going|fixing|wanted) to {verb}\b[^.;]*\b(?:didn't|never|did not|without doing|hasn't|forgot|went home|left early|and nobody|no one|couldn't|ran out of)\b",
        r"never (?:had|seen|saw|gotten|got|felt) (?:a |any |so much as a |the )?{noun}\b",
        r"(?:left|leaving|put|sent|built|closed|went|goes)(?: it| that| them| the \w+)?(?: up| out| together)? (?:un|non)-?(?!stapled|taped){done}\b",
    ),
    partly=(
        r"{done}(?: it| them)? (?:only |just )?as far as (?:the |that )\w+(?! (?:eye|crow)\b)",
        r"(?:just|only|barely) enough {noun} to (?:hold|keep|tack|catch)\b",
        r"(?:tacked|held|caught|pinned)(?: (?:it|together|on|up|shut|down))* with (?:just |only |about |maybe )?(?:one|two|three|four|five|six|a couple(?: of)?|a few|a handful of) {noun}\b",
        r"(?:was|were) (?:just |still |in the middle of |halfway through |busy )*{doing}(?: (?:it|this one|that one|down|the \w+))* when (?:they|he|she|somebody|someone|the \w+|lunch|my|it|i|we) (?:\w+ )?(?:called|pulled|took|sent|broke|ran|died|quit|blew|rang|hollered|came|started|yanked|needed)\b",
        r"{noun}(?:'s| is| was| came up| comes up| ran)(?: a little| a bit)? short(?: (?:by|about|a|an|maybe|one|two|three|six|couple|of|few|good))* (?:foot|feet|inch|inches)\b",
        r"(?:gave up(?: on)?|quit|quitting|stopped|knocked off) {doing}\b(?: (?:it|down|her))*(?=$|[.,;]| (?:after|when|halfway|half|about|at|once|with|because|part|on the)\b)(?! (?:when|once|after|at) [^.;]*\b(?:done|finished|all the way|all four|around|end of the day)\b)",
        r"(?:only|just) (?:gave|got|given) (?:it )?(?:the |one |on the )(?:\w+ )?(?:top|bottom|left|right|front|back|sides?|half|ends?|corners?|edges?|seam|one)(?: \w+)? (?:a|its|any|some)? ?(?:good |quick |little |real )*{noun}\b",
        r"(?:missed|skipped|left out|left off|ran out of|run out of)(?: (?:the|some|a few|a couple(?: of)?|two|three|four|my|all the))* {noun} (?:on|in|along|under|down|across) (?:the |one |two |that )(?!(?:truck|van|shop|box|lift|job|cart)\b)\w+(?: (?:sides?|seams?|ends?|corners?|edge|half))?",
        r"{done} (?:only |just )?(?:the )?(?:one|first) (?:seam|joint|half|edge) (?:only|so far|of (?:it|the two|them))\b",
        r"{done}(?: it| them)? (?:from|on|along) (?:the |my |its |that )?(?:[\w-]+ ){0,2}(?:side|end|face|edge|half|seam|left|right|top|bottom|front|back) only\b",
        r"(?<!no )(?<!any )(?<!without )(?<!not a )(?:gaps?|skips?|breaks?|bare spots?|bare patches|voids?) in (?:the |my |that )?{noun}(?! (?:gun|measure))",
        r"(?:{noun}|{done})(?:'s| is| was| goes| went| runs| got)?(?: on)? (?:only |just )?(?:up to|as far as|to|down to|over to) (?:the |that |my )[\w ]{2,24}? (?:and|but) (?:not|no|never|nothing|none|no further|not any)(?: any)? (?:past|beyond|further|farther|after|behind)\b",
        r"{noun}(?: (?:on|of|in|for) [\w' -]{1,26}?)? (?:just |all |only )*(?:stops?|stopped|quits?|quit|ends?|ended|runs? out|ran out|gives? out|gave out|dies|died|comes up|came up|falls|fell|peters out)(?: (?:about|maybe|just|a|an|one|two|three|four|six|few|couple|half|good|foot|feet|inch|inches|well|right|way|hand|some))* (?:short of|shy of|before|short(?= |$)|shy(?= |$)|halfway|half way|partway|two thirds of the way|(?:foot|feet|inch|inches) from the (?:end|corner|top|bottom|back|last \w+))",
        rf"{{done}} (?:just |only |up |down )*(?:the )?(?:one|first|near|top|left|right|long|short|front|bottom|outside|inside) {_PART}(?: of [\w -]+?)? (?:and|but) (?:not|left|missed|skipped|never (?:got|did)|didn't (?:get|do)|forgot) (?:the |that )?(?:other|others|second|far|back|bottom|rest|last|opposite|top|short|long|inside|outside)\b",
        r"(?:half|side|end|seam|part|one) (?:of )?(?:[\w· -]{1,40}? )?(?:i|we) {done}\b[\w ]{0,30}? (?:and|but|while) (?:the |that )?(?:\w+ )?(?:half|side|end|seam|part|one|rest|other)(?: of it)? (?:i |we )?(?:just |sure |never |still )*(?:ain't|isn't|is not|wasn't|not|didn't|did not|hasn't|haven't|forgot|skipped|missed|never)\b",
        r"half (?:of )?[\w· -]{1,40}?(?:is|was|got|'s|are) {done} and (?:the )?(?:other )?half (?:ain't|isn't|is not|wasn't|aren't|not|didn't|don't|hasn't)",
        r"(?:only|just) (?:got |put |shot |had )*(?:about |maybe )?(?:a handful|a couple|a few|a dozen|one or two|two or three|three or four|half a dozen) (?:of )?{noun}\b",
        r"{done} (?:about |maybe |roughly |only )*(?:half|part|most|a third|two thirds|three quarters|a quarter|some) of (?:it|them|this one|that one|the \w+|(?:straight|transition|reducer|offset|elbow|ninety|tee|wye|branch|plenum|end cap|cap|collar|section|number|fitting)s?)\b",
    ),
    to_do=(
        r"(?:let|letting|have|having|get|getting) (?:the (?:\w+ ){0,2}(?:guys?|crew|shift|man|men|fellas?|boys|kid|helper|apprentice|team)|somebody|someone|somebody else|him|them) (?:to )?{verb}\b",
        r"next (?:one |piece |thing |job )?to (?:get |be )?(?:{verb}|{done})\b",
        r"(?:left|leaving|saved|saving) (?:it|this one|that one|her)(?: [\w']+){0,4} to {verb}\b",
        r"(?:leaving|left|leave) (?:the |that |my )?{noun} for (?!(?:a|an|the end|good|dead|this|that|it)\b)(?:the )?[a-z]+\b",
        r"(?:still |yet )?(?:wanting|awaiting|crying for|begging for|in need of|due)(?: for)? (?:a |its |the |some )?(?:good |full |real |proper )?{noun}\b",
        r"{noun}(?:'ll| will|'s going to|'s gonna)? (?:have to|has to|got to|gotta|needs to) (?:come|go on|go in|wait|be done|happen)(?: on)? (?:after|later|tomorrow|when|next|until|till|once)\b",
        r"^(?:and |but |still |just |is |it's )*to be {done}\b",
        r"(?:i |we |i'm |we're )?(?:plan|planning|intend|aim|aiming|mean|hope|hoping|figure|figuring)(?: on| to| for) (?:{doing}|{verb})\b",
        r"^(?:and |so |then )*(?:what's )?next(?: up| thing| step| job| on the list)?(?:'s| is| comes) (?:the |to )?(?:{doing}|{noun}|{verb})\b",
        r"(?:somebody|someone)(?:'s| has) (?:got to|gotta|gonna have to|going to have to|to) {verb}\b",
        r"{noun}(?:'s| is| was| stays| goes| falls| will be)(?: still| all| now)? (?:on|up to|with) (?:the )?(?:(?:night|day|second|third|next|other|late|swing|morning|evening|first) (?:shift|crew|guys?|men|fellas|team)|next (?:guy|man|crew|fella)|him|them|you|somebody else|someone else)\b",
        r"{doing} (?:on |of |for )?(?:the |that |number )?(?!(?:is|was|got|went|it)\b)[a-z]+ [\w-]+(?:'s| is) (?:still |all )*(?:on (?:my|the|our|tomorrow's) (?:to-?do |punch |punch-?)?list|still (?:to come|to do|ahead|pending|waiting|left)|left to do|next up|for tomorrow|for later)\b",
        r"(?:hasn't|haven't|has not|have not) (?:had|seen|gotten|got|felt) (?:a |any |so much as a |the )?{noun}\b",
        r"(?:the |my )?{noun}(?: (?:down|it|them|inside|the \w+|off|up|out|on it|(?:on |for )?(?:this|that)(?: one)?))*(?:'s| is| are| stays| goes| will be)*(?: still| all)? (?:on (?:my|the|our|tomorrow's|his) (?:to-?do |punch |punch-?|to do )?list|on the agenda|on deck|still (?:to come|to do|ahead|pending|waiting|left|open)|left to do|next up|up next|to come|to follow|not (?:done )?yet|for tomorrow|a job for (?:tomorrow|later|monday)|can wait|will have to wait|has to wait|had to wait till tomorrow|(?:\w+ )?(?:\w+day|tomorrow|tonight|next \w+|somebody|somebody else|someone else|\w+ (?:guy|crew|shift|man|fella|team))'s (?:job|work|problem|headache|business|baby|to-?do|worry|chore))\b",
        rf"(?:(?:second|night|day|next|third|first|other|late|swing) shift|{_WHO}|somebody|someone)(?:'ll|'s going to|'s gonna| will| has to| have to| needs to| need to| gotta| got to| is gonna| is going to| still has to| still needs to| still have to| should| can| is supposed to)+(?: (?:finish|do|come back and|go back and|get|come|go|still|also|start|handle|take care of))* (?:the |up |on )?(?:{{doing}}|{{verb}}|{{noun}})\b",
        r"(?:still |yet )?owes?(?: it| them| you| me| us| the \w+)? (?:a |the |its |some |another )?(?:good |full |real |proper |hard )?{noun}\b",
        r"{noun}(?: down)? (?:i|we)(?:'ll|'d| will)?(?: still)? owe(?: you| it| them)?\b",
        r"(?:still |yet )?(?:due|short|lacking|wanting|awaiting|waiting on|waiting for|in need of|needs|needing|could use|wants) (?:for )?(?:a |its |the |some )?(?:good |full |real |proper |hard )?{doing}\b",
    ),
    lists=r"(?:still |what's |the |things |stuff )*(?:to[- ]?do|left to do|left|open items?|punch list|remaining|outstanding|not done(?: yet)?|undone|pending|unfinished|yet to do|incomplete)(?: list| on it| on this one| still| yet| is| are)?",
    across=(
        # what the piece lacks, told as what it is that it lacks
        ("against", rf"{{noun}}(?: down| it down)? (?:is|are|was) (?:(?:the (?:only |one |very )?thing|what|all)(?: that)? ){_THE_PIECE}(?:'s| is| are|'m|'re)?(?: still| just| really)* {_LACKS}\b"),
        ("against", rf"(?:what|all|the (?:only |one |main |last |big )*thing)(?: that)?(?: {_THE_PIECE})?(?:'s| is| are|'m|'re)?(?: still| just| really)* {_LACKS}(?: (?:on|in|here|from|with|about) (?:it|this one|that one|there))?(?: is| are| was|'s| would be) (?:the |a |some |its |any |that |just )*(?:good |real |proper )*{{noun}}\b"),
        ("against", rf"(?:all|the only thing) (?:that )?{_THE_PIECE}(?:'s| is|'ve|'s got| has got)?(?: still)? (?:got |has |have |had )?(?:left|to do)(?: to do)?(?: (?:on|to) (?:it|this one))? is (?:the )?(?:{{noun}}|{{verb}})\b"),
        ("to_do", r"(?:(?:just |only )?one (?:thing|job|item|step|chore)|the (?:one|only|last) (?:thing|job|item|step)) (?:left|to go|missing|outstanding|remaining|not done|i didn't (?:do|get to)|undone)(?: to do)?(?: on (?:it|this one))?(?:,|:| is| and that's|, that's|, and that's| -)? (?:the |its |my )?{noun}\b(?! (?:is|was) (?:done|on))"),
        ("to_do", r"(?:that|which) (?:just |only |still )?leaves (?:me |us )?(?:with )?(?:just |only )?(?:the |its )?(?:{doing}|{noun})\b"),
        ("undone", rf"(?:the )?(?:{{doing}}|{{noun}})(?: down| it down| part)?, (?:well |that |i |we |i just |just )*{_SKIPS} (?:it|that|them|that one)\b"),
        # what was to be, and was not
        ("against", rf"{_USUALLY},?(?: i| we)(?:'d| would|) (?:always |just |go ahead and |have )*{{verb}}\b(?![^.;]*\b(?:{{!done}}|did (?:it|that|so|them|the)|(?:i|we) did|managed|went ahead)\b)[^.;]{{0,60}}?,? but\b"),
        ("against", rf"(?:supposed|meant|told|asked|s'posed|ought|paid|promised) (?:to )?{{verb}}\b(?![^.;]*(?<!before i )(?<!when i )(?<!once i )(?<!after i )(?<!before we )\b{{!done}})[^.;]{{0,60}}?,? (?:and|but|only|except) (?:(?:he|she|they|i|we|nobody|somebody|it|the \w+|that)(?:'s| has| had| just| plain| sure| still)* )?{_DIDN_T}"),
        ("against", r"\bso (?:it|this|that|mine|she)(?: one)?(?:'s| is| was| went| goes| stays| got)*(?: [\w']+){0,3}? (?:(?:un-?|not ){done}|(?:without(?: any| its| the| a)?|with no) {noun})\b"),
        ("undone", r"(?:haven't|hasn't|never|didn't|nobody|not)(?: been| got| even| ever|'s)* (?:touch(?:ed)?|hit|gone (?:over|around|near)|went (?:over|around|near)|bless(?:ed)?)(?: (?:it|them|this one|that one|the \w+))? with (?:any |the |a |my |so much as a )?(?:piece of |strip of )?{noun}\b"),
        ("partly", r"(?:one|two|three) (?:seams?|sides?|ends?|joints?|edges?|halves|corners?)(?: (?:is|are|got|was|were))? {done},? (?:and |but |with )?(?:the other |another )?(?:one|two|three)?(?: (?:one|more))? ?(?:to go|left|to do|more to|waiting|isn't|not|aren't|still|undone|bare|open)\b"),
        ("partly", r"{done} (?:one|two|three) (?:seams?|sides?|ends?|joints?|edges?|corners?),? (?:and |but |with )?(?:one|two|three)(?: more)? (?:to go|left|to do|waiting)\b"),
        ("against", r"(?:supposed|meant|ought|told|asked) to {verb}[^.;]{0,30}?,? (?:and |but )?(?:i|we) (?:only |just |really )*(?:{!done}|did|got|bent|folded) (?:only |just |about |maybe )*(?:half|most|some|part|a few|a couple|one (?:side|seam)|the (?:top|front|ends?|corners?|outside) ?(?:only)?(?=$|[.,;]))(?: of (?:it|them))?"),
        ("against", r"(?:supposed|meant|ought|told|asked) to {verb}(?:(?<=tab)|(?<=tabs))[^.;]{0,30}?,? (?:and |but )?(?:i|we) (?:only |just |really )*(?:did|got|bent|folded) (?:only |just |about |maybe )*(?:one|two|three|four|five|six|seven|eight|nine|ten|\d+)\b"),
        ("undone", r"(?:needed|wanted|could have used|could've used|called for|deserved) (?:a |some |its )?(?:good )?(?:{doing}|{noun})(?: down| off)?,? (?:and|but) (?:it |that |this one )?(?:didn't|never|hasn't)(?: ever)? (?:get|got|had|gotten)\b"),
        ("against", r"(?:i'd|i would|we'd|would|woulda|would've|i'd've)(?: have| of|'ve)? {done}\b(?![^.;]*\b{!done}\b)(?![^.;]*\bif\b)[^.;]{0,40}?,? (?:but|only|except)\b(?! (?:the|that|not) )"),
        # how far it went, and where it did not
        ("partly", rf"{{noun}}(?:'s| is| are| was| were| went| goes| ran| runs)?(?: just| only| in| on)* (?:on|in|along|over|across|down) {_A_SPOT}[^.;]{{0,40}}?,? (?:and |but )?(?:none|nothing|nada|not a one|no {{!noun}}|not a \w+)(?: at all)? (?:(?:on|in|along|under|at|over|down|for) (?:the|that|this|my)|underneath|below|behind|anywhere else)\b"),
        ("partly", rf"{{done}} (?:the |my )(?:seams?|joints?|ones?|sides?)(?: (?!and|but)[\w']+){{0,4}},? (?:but )?not {_NOT_THERE}"),
        ("partly", rf"{{done}}(?: down| up| it| just| only| along| on| over)* {_A_SPOT}[^.;]{{0,40}}?,? (?:and |but )?(?:not|none|nothing)(?: a thing)? {_NOT_THERE}"),
        ("partly", r"{done}(?: down| up| it| just| only| along| on)* (?:the |my )?(?:corners?|ends?|edges?) but not (?:the |in |on )"),
        ("partly", rf"(?:{{noun}}|{{done}})(?: (?:down|along|on|across|over|only|just|about|up|around|in))* {_A_SPOT}[^.;]{{0,24}}?(?: and|,|, and) that(?:'s| was| is) (?:all|it\b|as far|where|the end)[^.;,]*"),
        ("partly", r"{noun}[^.;]{0,30}? and (?:then )?(?:stops|quits|ends|stopped|quit|ended)\b(?! (?:and|to|for) )"),
        ("partly", rf"{{done}} {_A_SPOT}[^.;]{{0,30}}?,? (?:and |but )?(?:the )?(?:rest|others?|remaining \w+|bottom|back|second|last one)(?: of it)? (?:i'll|i will|i'm|we'll|will|can wait|later|tomorrow|gets|waits|still|i didn't|i couldn't|i left|didn't|never|is still|isn't|ain't|wasn't)\b"),
        ("partly", r"{noun} (?:on|in|to|for|along) (?:only |just )?one (?:seam|joint|side|end|half|edge|corner) (?:only|so far|of (?:it|the two|them)|and not|but not)\b"),
        ("partly", r"(?:only|just) one (?:seam|joint|edge)(?:'s| is| has)?(?: of it)? (?:got |has |had )?(?:any )?(?:{noun}|{done})\b"),
        # told in the present, and to come
        ("to_do", r"before (?:it|this one|that one|she|they) (?:goes|go|gets hung|is hung|gets put|leaves|flies)(?: (?:up|in|out|on|anywhere|to the \w+|on the \w+))*,? (?:it|this one|that one|she|they)(?:'s| is|'ll| will| gets| get| has to| needs to| still)+(?: going to| gonna)?(?: get| be)? {done}\b"),
        ("to_do", rf"(?:it|this one|that one|she)(?:'ll| will)? gets? {{done}} (?:when|once|before|as soon as|{_DAY}|at lunch|on (?:monday|tuesday|wednesday|thursday|friday)|by (?:the )?(?:night|second|day|next))\b"),
    ),
    of_one=(
        # all that it has is another thing: so it has none of this one, unless the note tells it
        ("taped", None, rf"(?:^(?:{_ONLY})*(?:stapled|staples|staple job) and nothing else$)|(?:^(?:{_ONLY})*(?:only|just|nothing but) staples(?: (?:in|on|holding) (?:it|there|this one|it together))?$)|(?:closed|held|done|put together)(?: it| up| together| shut)* with (?:just |only |nothing but )?staples(?: only| alone| and (?:nothing else|that's (?:it|all)))\b|all (?:{_THE_PIECE}(?:'s)? ?)?(?:has|got|have) (?:on it |in it |got )?(?:is|are) staples\b(?! (?:every|on|at)\b)"),
        ("stapled", None, rf"(?:^(?:{_ONLY})*(?:taped?|tape job) and nothing else$)|(?:^(?:{_ONLY})*(?:only|just|nothing but) tape(?: (?:on|holding) (?:it|there|this one|it together))?$)|all (?:{_THE_PIECE}(?:'s)? ?)?(?:has|got|have) (?:on it |in it |got )?(?:is|are) (?:the )?tape\b|(?:only thing|all|what|all that)(?:'s| is| that's)? (?:holding|keeping|closing)(?: (?:it|her|this one|that one|the \w+))?(?: (?:together|up|shut|closed|on))* is (?:the )?tape\b|(?:rel(?:ies|ying|y)|depend(?:s|ing)|count(?:s|ing)|held|hold(?:s|ing)|going)(?: (?:it|up|together|shut))* (?:on|by|with) (?:the |just the |just |only the |nothing but )?tape(?: alone| only)?\b(?<!on tape)|nothing(?:'s| is)? (?:holding|keeping) (?:it|her|this one)(?: (?:together|up|shut|closed|on))* (?:but|except) (?:the )?tape\b|tape (?:took|takes) (?:the )?place of (?:the |any )?staples|tape instead of (?:the )?staples"),
        ("taped", None, r"(?:got|gotten|made it|only got|stopped) as far as (?:the )?(?:staples|stapling)\b"),
        ("rubbed_down", None, r"(?:got|gotten|made it|only got|stopped) as far as (?:the )?(?:tape|taping)\b"),
        ("taped", False, r"(?:mastic|mud)(?:'s| is| went| goes)? (?:only|just) (?:on|along|down|over|around) (?:the |one |two |three |both |its )?(?:long|short|top|bottom|near|far|front|back|outside|inside|left|right|one|two|three|half|cheeks?|seams?|corners?|sides?)\b|(?:only|just) (?:got |put |ran |used |laid )?(?:the )?mastic (?:on|along|down|over) (?:the |one |two |three )?(?:long|short|top|bottom|near|far|front|back|outside|inside|left|right|half|one|two|three)\b"),
        ("taped", False, r"(?:ran|run|was|were|'m|am) (?:clean |all )?out of (?:mastic|mud)(?!,? (?:so |and |but |then )*(?:(?:i|we|it's|it is|just|only|had to|went ahead and|ended up) )*(?:used?|using|tape|taped|taping|went|switched|finished|opened|got|put|ran|grabbed|fell back|foil|p tape|181 ?a-?[ph]|pressure)\b)"),
        ("rubbed_down", False, r"(?:rubbed|burnished|squeegeed)(?: down)? (?:only |just )?(?:one|two|three|2|3)(?: out)? of (?:the |its |all )?(?:four|4)\b|(?:squeegee|rub stick|rubbing stick|thumb)(?:'s| is| was| has)? (?:just )?(?:broke|quit|gave out|snapped|blistered|wore out)(?: (?:on|me|off|in|up|two))* (?:after|halfway|half way|partway|before)\b"),
        ("sides_stapled", 3, r"(?:one|a|the|that) (?:\w+ )?side(?: of it)? (?:that )?(?:i|we) (?:missed|skipped|couldn't (?:get|reach)|never (?:got|hit))(?: it)? with (?:the |my )?(?:stapler|gun|staple gun)\b"),
        ("tabs_bent", False, r"(?:haven't|hasn't|never|didn't|not) (?:bent|folded|bend|fold)(?: over| down)? (?:a single|one|any|any of|a|all)(?: of)?(?: the| those)?(?: \w+)? tabs?\b"),
        ("trimmed", False, r"(?:extra|excess|surplus)(?: insulation| glass| board| stuff)?(?: (?:at|in|on) the \w+)?,? (?:that |which )?(?:i |we )?(?:didn't|never|haven't) (?:touch|trim|cut|bother|clean|pull|take|took|pulled|cleaned)\w*\b"),
        ("taped", False, r"nothing(?: at all)? (?:over|on|across|covering) (?:the |any of the |its |my |those )?(?:seams?|joints?)\b|(?:seams?|joints?)(?: (?:have|has|got|had|with)|'ve|'s)+ nothing (?:on|over) (?:them|it)\b"),
        ("taped", False, r"(?:mastic|mud)(?:'s| is| went| goes| got)? (?:only|just|maybe|about)(?: about)? (?:half|part|most)(?:way| way| of the way)?(?: (?:a)?round| of it| around it| up)?\b"),
        ("surface_clean", False, r"^(?:(?:just )?taped it |it's on there )?(?:dust|dirt|grease|mud|grit|fuzz|wet|sawdust)(?:,)? and all$"),
        ("taped", False, r"(?:hung|sent|left|installed|put|ran|shipped|put up|hanging|leaving)(?: (?:it|this one|that one|her|the \w+))?(?: up| out| in)? (?:bare|naked)\b(?! (?:glass|fiber|end|spot|metal))|^(?:but |and |just |all )*(?:bare|naked) (?:seams|joints)$"),
        ("taped", False, r"(?:(?:with|left|leaving|its|the|all the|all its|both|my|their|every|has|got) )+(?:wide )?(?:bare|naked|uncovered|undressed|exposed|open) (?:seams?|joints?)\b(?! (?:of|by|at|about|three|two|one|half|an?|a) )"),
        ("taped", False, r"(?:(?:with|its|the|all|both|my|their|every|four) )*(?:seams?|joints?)(?:(?:'s| is| are| was| were| left| still| all| hanging| stayed)+)? (?:bare|naked|uncovered|undressed|exposed)\b(?! (?:glass|fiber|fib|insulation))"),
        ("preheated", False, r"(?:nobody|no one|none of us|not one of us)(?:'s)?(?: (?:had|brought|has|could find|found|owned|carried|got))(?: even)? (?:an? |the |any )?(?:heat ?gun|iron|torch|heater)\b"),
        ("surface_clean", False, rf"\b(?:tape|taped|taping|181 ?a-?p)\b(?:(?! (?:not|until|after|once|wiped|dried)\b)[^.;,])*? (?:when|while|with) (?:the |my |its )?(?:foil|facing|board|surface|skin|jacket|joint|seam)s?(?: (?:still|was|were|had|has|got|all|full of|covered in|covered with|sweating))+ {_FILTHY}"),
        ("trimmed", False, r"(?:left|leaving|leaves|there's|still has|still got|has) (?:all |some |the |my |a few |those |lots of |plenty of )*(?:scraps?|bits|pieces|chunks|crumbs|strings|shreds|tags|hunks|tufts|ends) of (?:the |loose |old |pink |yellow )?(?:glass|insulation|fiber ?glass|fiber|fluff|fuzz)\b(?! on the (?:floor|bench|truck))"),
        ("surface_clean", False, r"(?:taped|had to tape) (?:it|this|her|that|them|this one|the (?:thing|joint|seam|seams))(?: (?:all|up|while it was|when it was|still))* (?:wet|damp|dewy|frosty)\b"),
        ("surface_clean", False, rf"tape\b{_TAPE_ON}(?: (?:is|'s|was|has|just|all|went|got|ended up|sits?|sitting|lies|lying|laying|laid|rides?|riding|resting|rests|stuck|sticking|stands|floating|floats|down|put|right|holding|standing))+ (?:on|over|to|in|atop|on top of|onto) {_FILTHY}"),
        ("surface_clean", False, rf"tap(?:e|ed|ing)\b(?!,)(?: (?!and|but|then|so|after|before|once|no|not|off)[\w'-]+){{0,6}}? (?:over|on top of|onto|across|through) {_FILTHY}"),
        ("surface_clean", False, rf"{_FILTHY}(?: (?:is|'s|was|left|still|all|trapped|caught|sealed|stuck|lying|sitting|went|got|showing))* (?:under|underneath|behind|beneath|below) (?:the |my |that |its )?tape\b"),
        ("surface_clean", False, rf"(?:before|then|only then|after that|too late)(?: i| we)?(?: ever| even| finally)? (?:notic(?:e|ed|ing)|saw|spott(?:ed|ing)|found|felt|see|realized) (?:there was |it was on |about )?{_FILTHY}"),
        ("surface_clean", False, r"(?:only|just|didn't|never) (?:got to |got around to |did |thought of |ever )*(?:wip(?:e|ed|ing)|dust(?:ed|ing)|clean(?:ed|ing))(?! (?:up|again|the (?:bench|floor|table)))(?: (?:it|them|this one|that|down|off|[\w-]+ [\w-]+)){0,3} (?:until |till )?after (?:(?:i|we)(?:'d| had)?|it was|the tape was|the tape went|it had been)(?: already| been)? (?:taped|taping|on|down|put (?:the |my )?tape)\b"),
        ("surface_clean", False, r"only (?:got to |got around to )?(?:wip(?:ed|ing)|dust(?:ed|ing)) (?:it|them|this one|that)(?: down| off)? after(?:wards?)?(?=$|[.,;])"),
        ("trimmed", False, rf"(?:left|leaving|leave)(?: all)?(?: of)? (?:the |that |some |a little |a bit of |my )?{_GLASS}"),
        ("trimmed", False, rf"{_GLASS}(?: [\w'-]+){{0,9}}? (?:(?:is|was|are|'s|got|i|we) )*(?:left (?:on|in|there|hanging|inside|at|behind|alone)|still (?:in|on|there|hanging|inside|sticking|at)|stays|stayed|(?:hanging|sticking|poking) (?:out|off|over|in|at|there)|(?:never|wasn't|weren't|isn't|aren't|not|didn't get|never got|haven't|hasn't been|didn't)(?: \w+)? (?:removed?|trim(?:med)?|cut|shaved?|taken|took|take|pull(?:ed)?|clean(?:ed)?|touch(?:ed)?|bother(?:ed)?))\b"),
        ("trimmed", False, rf"(?:never|didn't|did not|haven't|couldn't|can't) (?:\w+ )?(?:cut|shave|shaved|remove|removed|pull|pulled|clean|cleaned|knock|take|took|taken|dig|dug|slice|sliced|touch|touched|get)(?: away| off| out| back| up| at)* (?:the |that |any |all the )?{_GLASS}"),
        ("trimmed", False, rf"(?:there's|there is|got|has|have|still|some|with)(?: (?:still|some|a bit of|a lot of|the|a little|all the|all that))* {_GLASS}(?: (?:still|left|in|on|at|inside|there|where|hanging|sticking|by))"),
        ("trimmed", True, rf"(?:cut|shaved|trimmed|pulled|took|cleaned|removed|sliced|knocked|dug|scraped|carved)(?: (?:away|off|out|back|up|all))* (?:the |that |my |all the |all that )?{_GLASS}"),
        ("trimmed", True, rf"{_GLASS}(?: (?:at|on|inside|by) (?:the|my|that) \w+)?(?: (?:is|was|are|'s|all|got|has been))* (?:trimmed|removed|cut (?:off|away|out|back)|shaved(?: off| away)?|gone|cleaned (?:out|up|off)|pulled(?: out)?|taken (?:off|out)|sliced off)\b"),
        ("surface_clean", False, r"(?:wasn't|isn't|not|weren't|ain't|hardly|far from|nowhere near|anything but) (?:exactly |really |quite |all that |too |very |so |what (?:you'd|i'd|anybody'd|anybody would|anyone would|you would|i would) call )+(?:the )?(?:clean(?:est)?|spotless)\b(?! up)"),
        ("surface_clean", False, r"(?:wasn't|isn't|hadn't|not|weren't|didn't let it|never let it|didn't wait for it to) (?:quite |all |really |even |fully |get )*(?:dry|dried)\b(?: (?!once|after|until)[\w']+){0,3}? (?:when|before|and) (?:i |we |the |my )*tap(?:e|ed|ing)\b"),
        ("surface_clean", False, r"(?:didn't|never|haven't|did not) (?:bother|bothered|use|used|get|take|took|run|ran|put|grab|touch)(?: it)?(?: with)? (?:the |a |my |any )rag\b(?! (?:for|on the (?:bench|floor)))"),
        ("rubbed_down", False, rf"(?:(?:could|can|was able to|managed to) only (?:really |just )?(?:rub|burnish|squeegee)|(?:only|just) (?:rubbed|burnished|squeegeed))(?: down| it)* (?:on )?(?:{_A_SPOT}|half|part|some|one)"),
        ("surface_clean", False, rf"(?:only|just) (?:wiped|dusted|cleaned)(?: off| down| it)* (?:on )?(?:{_A_SPOT}|half|part|some)"),
        ("preheated", False, r"(?:didn't|did not|never|couldn't|haven't|hadn't) (?:pre-?heat|warm|heat|iron)(?:ed)? (?:it|the (?:board|facing|foil|joint|seam|surface|tape)|this one|that one)\b"),
        ("preheated", False, r"(?:didn't|did not|never|haven't|hadn't) (?:pre-?heat|warm|heat)(?:ed)? (?:anything|a thing|nothing|any of it|none of it|it any|up anything)\b"),
        ("preheated", False, r"(?:skipped|without|with no|no|didn't (?:bother with|use|put|get|do|have)|never (?:used|put|got|had|did)|got no|had no|did no|gave it no|didn't give it)(?: the| an?| any| my)? (?:heat|pre-?heat(?:ing)?|warm-?up|warming(?: up)?|heating)(?: (?:on|to|out|up|for) (?:it|the (?:board|facing|foil|joint|seam|surface)|this one|that one|anything))?(?=$| before| first| at all)(?! gun)"),
        ("preheated", False, r"no (?:heat|iron|torch)(?: at all)? (?:on|to|went on|touched|put to) (?:it|the (?:board|facing|foil|joint|seam|surface)|this one)"),
        ("preheated", False, r"(?:no|without (?:an?|the|any)) (?:iron|torch|heat gun|heater)(?: and|,|/| or)* (?:no |an? |any )?(?:iron|torch|heat gun|heater|heat|nothing)"),
        ("preheated", False, r"(?:not|never|nobody|no one|nothing(?: was| got)?|wasn't|weren't|nor) (?:been |even |ever |pre)?(?:warmed|heated|ironed)\b(?! (?:enough|all the way))"),
        ("preheated", False, r"(?:stone|ice|dead) cold(?: facing| board| surface)?(?: no heat)?$"),
        ("scrim_shows", False, r"(?:can't|cannot|can not|couldn't|could not|cant|couldnt|don't|didn't|never could|never|hard to|barely) (?:really |even |quite |hardly )?(?:see|make out|read|find|feel|tell|get|pick out|raise)(?: (?:any|the|a bit of|much of the|much|that))* (?:scrim|weave|pattern|threads)(?! (?:number|code))"),
        ("scrim_shows", False, r"(?:the |that )?(?:scrim|weave(?: of the scrim)?|(?:scrim |facing )?pattern)(?:'s| is| stays| stayed| was| remains| keeps| looks)* (?:still )?(?:hidden|invisible|covered|buried|lost|not (?:there|visible|showing|through|coming)|hiding|gone|smooth(?:ed)? over|out of sight|nowhere to be seen|nowhere|blind)"),
        ("scrim_shows", False, r"(?:no|zero|not any|without any|not a bit of|hardly any|no sign of(?: the| any)?) (?:scrim|weave)(?: (?:pattern|lines?|showing|shows?|visible|through|at all|coming through|in sight|yet|there|under|to be seen))*$"),
        ("scrim_shows", False, r"(?:scrim|weave)(?: pattern)? (?:won't|wouldn't|will not|refuses to|refused to|never|fails to|failed to|doesn't|didn't|does not|did not|isn't|wasn't|hasn't|ain't) (?:want to )?(?:come|came|show|showed|shown|showing|print|read|pop|appear|telegraph|coming|raise|rise)\b"),
        ("vanes", False, r"(?:empty|bare|hollow|naked|open|plain)(?: \w+)? (?:throat|turn|heel|bend|corner|inside|guts?)\b(?! (?:seam|joint|side|edge))"),
        ("surface_clean", False, r"(?:tap(?:e|ed|ing)|stuck|stuck it|laid|put|went|slapped|right|down|181a-?p|mastic)(?: (?:it|the tape|tape|with [\w -]{2,12}?|right|straight|on|down|directly))* (?:over|on top of|on|onto|to|across) (?:all )?(?:the |that |some |a (?:film|layer|coat) of |all that |a )?(?:dirty |wet |fine |drywall |concrete |metal |sheetrock |loose |light |greasy |muddy )*(?:dust|saw-?dust|dirt|grit|grease|oil|mud|grime|film|frost|dew|condensation|moisture|damp|powder|overspray|soot|dusty|dirty|greasy|oily|grimy|muddy|wet)\b(?! (?:free|cover))"),
        ("surface_clean", False, rf"{_FILTHS}(?: \w+){{0,4}} (?:on|all over|over|under) (?:it|everything|the (?:facing|board|foil|joint|seam|surface|tape|face|jacket))\b{_UNTIL}\b(?:tape|taped|taping|stuck|closed)\b(?! (?:off|up the room))"),
        ("surface_clean", False, r"(?:facing|foil|board|surface|joint|seam|face|jacket)(?:'s| is| was| were| stayed| had)*(?: still| a bit| a little| kind of| kinda| pretty| all| real| too| never| some)* (?:grimy|gritty|dusty|dirty|greasy|oily|filthy|sooty|muddy|dust on it|dirt on it|grease on it|oil on it)\b"),
        ("surface_clean", False, r"(?:didn't|did not|never|couldn't|not|nobody|wasn't|weren't|forgot to|no time to|hasn't been) (?:\w+ )?(?:wipe|wiped|dust|dusted|clean|cleaned)(?: (?:it|the|off|down|any of it|anything)){0,2}"),
        ("staple_flap", False, rf"flap-?less|flap{_OF_IT}(?:'s| is| was| got| had been| came| has been| has| went| had to (?:be|get))+(?: \w+ly)?(?: all| clean| right| just| accidentally)* {_CUT_OFF}(?: (?:clean|right|all))*(?: (?:off|away))?(?! (?:half|part|a little|some)(?: |$))|flap{_OF_IT}(?: \w+ly| clean| right| just| all)* (?:broke|tore|ripped|snapped|sheared|fell|came|peeled|popped|split|pulled|wore) (?:(?:right|clean|all|completely) )*(?:off|away)|{_CUT_OFF} (?:the |my |that |its |off the )*(?:stapling |staple )?flap(?: (?:right |clean )?(?:off|away))?(?! (?:to|down to|back to|flush|even|square|straight)(?: |$))|(?:lost|losing|loses|tore off|broke off|ripped off|knocked off|ruined|wrecked) (?:the |my |its |that )?(?:stapling |staple )?flap|without (?:a|any|the) (?:stapling |staple )?flap|(?:in place of|instead of|in lieu of|where there's no) (?:the |a )?flap"),
        ("cross_tabs", False, r"tab-?less|(?:no|without(?: any)?|never (?:made|put|cut|did)(?: any)?|didn't (?:make|put|cut|do)(?: any| on any)?|zero|skipped(?: the)?|omitted(?: the)?|put no|made no|used no|forgot(?: the)?) (?:cross[- ]?)?tabs\b(?! (?:needed|required|necessary|bent|down|up|standing|left|loose|over))"),
        ("stapled", False, r"flap(?:'s)?(?: is| was)?(?: never| didn't| hasn't| wasn't| isn't| not| never did)(?: got| get| been| even| yet)* (?:shot|stapled|stitched|fastened|caught)\b"),
        ("taped", False, r"(?:nothing(?:'s| is| was)?) (?:sealing|closing|covering) (?:it|them|this one|the (?:joint|seam|corner)s?)|(?:not|never|isn't|wasn't) (?:closed|sealed)(?: up)? with (?:anything|any \w+)|no tape(?: and|,|/| or|)(?: no| nor)? mastic|neither tape nor mastic|no mastic(?: and|,|/| or|)(?: no| nor)? tape"),
        ("taped", False, r"(?<!only )(?<!last )(?<!any )(?<!all the )tape(?:'s| is| was)? (?:still|left|locked|back|sitting|stuck)(?: (?:out|up|down|over|back|locked|sitting))* (?:in|on|at) (?:the|my|his|our) (?:truck|van|trailer|shop|box|gang ?box|office|other \w+|lift|floor below)"),
        ("taped", False, r"(?:left|leaving) (?:the |all the |my )?tape (?:off|out)(?: of| on)?\b"),
        ("taped", False, r"(?:left|leaving) (?:the |all the |my )?(?:seams?|joints?|corners?)(?: all| wide)? (?:bare|open|naked|uncovered|exposed)\b"),
        ("trimmed", False, r"(?:never|didn't|did not|haven't|couldn't|forgot to) (?:\w+ )?(?:cut|trim|trimmed|shave|shaved|clean|cleaned|pull|pulled|take|took) (?:the |any |all the )?(?:extra|excess|surplus|overhang)(?: (?:out|off|away|back))*$"),
        ("preheated", False, r"(?:skipped|no|without|forgot|didn't (?:have|bring|use|grab)|had no|never (?:used|had|grabbed)|left)(?: the| an?| my| any)? (?:iron|torch|heat ?gun|heater)\b(?! tape)"),
        ("preheated", False, r"(?:taped|stuck|laid|put|went on|slapped)(?: it| them| the tape| the 181a-?p| 181a-?p| tape| on)*(?: on)? (?:stone |ice |dead |plain )?cold\b(?! (?:day|morning|side|room|weather|air|facing|board))"),
        ("trimmed", False, r"(?:left|leaving) (?:the |all the |that )?(?:extra|excess|surplus|overhang|leftover) (?:on|in|there|hanging|alone|at the cut)\b(?! the (?:truck|van|box|shop|cart))"),
        ("stapled", False, r"(?:nothing|not a thing|not one)(?: \w+)? (?:shot|stapled|punched|driven|put) (?:through|in|into) (?:it|the flap|there)|stapled (?:nothing|none of it|nowhere)|(?:no|zero|without|not one|not a) (?:single )?staples? (?:in|on|to|holding|through|at all|anywhere|put|went)\b"),
    ),
    of_sentence=(
        ("rubbed_down", False, r"\b(?:tape|taped|181 ?a-?p|foil)\b[^.;]{0,90}?\b(?:not|never|\w+n't|nobody|no one)(?:'s)?(?: (?:been|got|get|gets|even|really|ever|once|properly|much))* (?:press(?:ed)?|smooth(?:ed)?|lean(?:ed)? on|worked (?:in|down)|work it|push(?:ed)? down|pushed (?:on|in)|squeezed? (?:it )?down|flatten(?:ed)?|bore down on|bear down on|mash(?:ed)? down)(?: (?:it|down|on|in|flat|that|out|at all|the tape|yet))*(?=$|[.,;]| (?:and|but|so|because|since|you|vanes)\b)"),
        ("surface_clean", False, rf"(?:nothing|not a thing|not much|little) (?:under|underneath|below|beneath|behind) (?:the |that |my )?(?:tape|181a-?p){_TAPE_ON} (?:but|except|only|other than) {_FILTHY}"),
        ("surface_clean", False, rf"{_FILTH}{_UNTIL} \b(?:when|while) (?:i |we |the |it )?(?:was )?tap(?:e|ed|ing)\b"),
        ("surface_clean", False, rf"{_FILTH}{_UNTIL} \b(?:and|but|so) (?:i|we) (?:just |still |went ahead and |only )*tap(?:ed|e)(?: (?:right|straight|it|on))* (?:over|on top of|across|onto|through) (?:it|that|them|all of it|everything)\b"),
        ("surface_clean", False, rf"{_FILTHS}(?: (?!no|not|never|off|gone)[\w']+){{0,7}}? (?:on|in|over|along|across) (?:it|everything|the \w+){_UNTIL}[,.]? (?:and |but |so )?(?:(?:i|we) )?(?:the )?tape(?:d|'s| is| went| goes| got)*(?: right| straight| on| just)* (?:over|on top of|onto|across) (?:it|that|them|top|all of it)\b"),
        ("surface_clean", False, rf"{_FILTHS}(?: (?!no|not|never|off|gone)[\w']+){{0,7}}? (?:on|in|over|along|across) (?:it|everything|the \w+){_UNTIL}[,.]? (?:and |but |so )?(?:i|we) (?:just |went ahead and |still )*(?:taped|put (?:the )?tape on)(?: (?:it|that|her|them|on|up))* (?:as it was|as is|like that|the way it was|anyway|anyhow|all the same|regardless|just the same)\b"),
        ("surface_clean", False, rf"{_FILTHS}(?: (?!no|not|never|off|gone)[\w']+){{0,7}}? (?:on|in|over|along|across|to) (?:it|everything|the \w+),? (?:and |but )?(?:i|we) (?:just )?(?:left it|let it (?:be|go)|lived with it)\b"),
        ("trimmed", False, r"\b(?:extra|excess|surplus)(?: insulation| glass| board| stuff)? (?:at|in|on|from) the \w+, (?:it's|that's|they're|it is|well it's) (?:all |just )?still (?:in|on|there|hanging)\b|\b(?:extra|excess|surplus)(?: insulation| glass| board| stuff)?, (?:i |we )?(?:didn't|never|haven't) (?:touch|trim|cut|bother|clean|pull|take)"),
        ("rubbed_down", False, r"\btape(?:'s| is| was| went|) (?:on|up)\b[^.;]{0,12}\bbut (?:it's |it is |that's )?(?:just |only )(?:kind of |sort of )?(?:laying|lying|sitting|resting|hanging)(?: there| on (?:it|there|top))?\b"),
        ("rubbed_down", False, r"\btape\b(?:(?!\bno\b)[^.;]){0,40}? (?:with )?nothing (?:else )?done to (?:it|the tape)\b|\bno pressure on (?:the |that |any of the )?tape\b"),
        ("surface_clean", False, r"(?:facing|foil|board|surface|face|joint|seam)(?:'s| is| was| were)? (?:all |still |a little |kind of )*(?:wet|damp|frosty|dewy|sweating|sweaty|dripping|beaded(?: up)?)\b[^.;]{0,90}?\bwhen (?:i |we |the |it )?(?:was )?tap(?:e|ed|ing)\b"),
        ("stapled", False, r"\bflap\b[^.;]{0,90}?\b(?:didn't|did not|never|haven't|hasn't|wouldn't|couldn't)(?: get to| got to| go and| even| actually| ever)* (?:shoot|shot|pin|pinned|stitch|stitched|tack|tacked|nail|nailed|fasten|fastened|gun|gunned) (?:it|that|her|any of it)\b(?! (?:twice|again|enough|close|every|at|too))"),
        ("stapled", False, r"(?:stapler|staple gun|gun|compressor|hose|air|magazine|staples|stapling)\b[^.;]{0,90}?\b(?:jam(?:med|s)?|dead|died|quit|broke(?:n)?|busted|empty|out|gone|down|froze|ran dry|leak(?:ed|ing)|stolen|missing|(?:won't|wouldn't|doesn't|didn't) (?:fit|reach|go))\b[^.;]{0,90}?\b(?:(?:just|only) (?:taped|tape)|tape only|tape alone|taped only|(?:tape|mastic)'s all|(?:tape|mastic) is all|(?:there's|there are|there is|it's got|it has|got) (?:none|no|not)|there (?:aren't|isn't|ain't) (?:any|one|a one|none)|went (?:together |up |out )?without)"),
        ("stapled", False, r"(?:out of|short on|short of) staples\b[^.;]{0,90}?\b(?:(?:just|only) taped|tape only|there (?:aren't|isn't|ain't) (?:any|one|none)|there's none|it's got none|it has none|(?:this one|it)(?:'s| is)? (?:bare|without)|went (?:together |up |out )?without)"),
        ("taped", False, r"(?:out of|short on|short of) tape\b[^.;]{0,90}?\b(?:(?:it|this one|she|that one)(?:'s| is| went| got)? (?:\w+ )?(?:bare|naked|without|open|dry)|there (?:isn't|ain't|aren't) (?:any|none)|there's none|it's got none|(?:just|only) stapled)"),
        ("taped", False, r"(?:tape|roll|tape gun)(?:'s| is| was)? (?:busted|broke(?:n)?|gone|dead|missing|stolen|empty|froze)[^.;]{0,90}?\b(?:(?:just|only) stapled|stapled only|that's all it got|went (?:together |up |out )?without|there (?:isn't|ain't|aren't) any)"),
        ("taped", False, r"\b(?:stapled|staples)\b[^.;]{0,90}?\b(?:that's|that is|which is) all (?:it|this one|she|that one) (?:got|has|gets|have)\b[^.;]{0,90}?\btape"),
        ("taped", False, r"\btape\b[^.;]{0,90}?\b(?:fell|came|peeled|dropped|let go|blew)\b[^.;]{0,90}?\b(?:off|loose|go)\b[^.;]{0,90}?\b(?:got none|has none|none (?:now|on it|left)|bare|nothing on it|it's off|tossed it|threw it (?:out|away))"),
        ("scrim_shows", False, r"\b(?:scrim|weave|pattern|threads)\b[^.;]{0,90}?\b(?:all|only thing|just|nothing but|what)(?: [\w']+){0,6}? (?:is|are|see|was|shows?|got|get|find|there's)(?: (?:a|an|the|just|plain|smooth|shiny|slick|bare|blank|flat|to see))* (?:smooth|slick|shiny|flat|plain|bare|blank|a mirror|glass)(?: (?:silver|foil|face|surface|tape|metal|aluminum))?\b"),
        ("scrim_shows", False, r"\b(?:see|find|read|feel|show|shows?|look|looks|looking) (?:for )?(?:the |any |a )?(?:scrim|weave|pattern|threads)\b[^.;]{0,60}?\b(?:shiny|smooth|slick|blank|plain|bare|flat) (?:silver|foil|face|surface|tape|metal|aluminum)\b"),
        ("taped", False, r"(?:just|only) the (?:corners?|ends?|edges?|middle) (?:have|has|got|had) (?:any )?tape\b"),
        ("taped", False, r"(?:most|half|part|some) of (?:it|straight|the)[\w· -]{0,30} (?:has|have|got|is under) tape\b"),
        ("trimmed", False, r"\b(?:trim|insulation|glass|fiberglass)\b[^.;]{0,90}?\b(?:it's|that's|they're|it is) (?:all |just |all just )?still (?:in|on|there|hanging)\b"),
        ("closure", "other_tape", r"(?:wrong|bad|other|some kind of|kind of) tape\b.{0,80}\b(?:cloth|masking|duct|painters?|painter's|electrical|packing|vinyl)\b"),
    ),
    no_plan=r"(?:i|we|he|they)'?d (?:forgotten|missed|skipped|already|never|not|rather|sooner|hate|say|bet|swear|be (?:lying|a liar|happy|glad|ashamed|surprised|proud)|(?:love|like) to (?:say|tell)|wager)\b",
    still_to_do=r"(?:and |but |so |then )*(?:i'm |we're |i'll |we'll |i |we )?(?:gonna |going to |'ll |will |have to |need to |gotta |got to |plan to |planning to |about to |fixing to )*(?:(?:go|come|head|get) back and )?(?<!^)(?:get|do|hit|finish|catch|handle|tackle)(?: to)? (?:it|that|them|those|these)(?=$|[.,;]| (?:after|tomorrow|later|in|when|once|on|this|monday|tonight|first|next|before|up|at|soon|as|with|by)\b)|(?:and |but )?(?:which|that|it's one) (?:i|we|still|the \w+)(?:'ll| will| haven't| have not| have yet| still| need| gotta|'m going| am going| got to| have to| owe|'s still|'s going| has to| needs)\b",
    yet=r"\byet\b(?! another)(?! (?:when|before))",
    needless=r"^(?: (?:was|were|is|are|isn't|wasn't))?(?: \w+)? ?(?:needed|required|necessary|called for|to do|problem|problems|trouble|issues?|short|missing|left (?:on|in) (?:the|my))\b",
    waits_for=r"\b(?:had to|have to|needed to|need to|wait(?:ed|ing)?|first|dry|dried|until)\b",
    a_side=r"\b(?:fourth|last|third|other|one|wall|back|far|near|top|bottom|left|right|single|\w+) sides?\b",
    unlisted=(
        r"(?:tape|roll|foil|stuff|kind)\b(?: (?:i|we|he|she|they|that|got|bought|found|picked|up|came|is|was|some|a|roll|of|grabbed|brought))* (?:from|at|off of|out of) (?:the |a |some )?(?:(?:hardware|dollar|big[- ]?box|home|paint|drug|auto[- ]?parts|grocery|discount|thrift|corner|convenience|general|farm|feed|craft) (?:store|center|shop|place)|lumber ?yard|gas station|flea market|bargain bin|internet|swap meet|kitchen drawer|junk drawer|garage)\b",
        r"(?:un-?listed|un-?marked|un-?rated|un-?labell?ed|no-?name|no name|off-?brand|general purpose|un-?branded|non-?listed|non-?ul|bargain|home center|blank)(?: \w+){0,2} (?:tape|roll|foil|stuff|kind|junk)\b|(?:tape|roll|foil|stuff)(?:'s| is| was)? (?:un-?listed|un-?marked|un-?rated|un-?labell?ed|no-?name|off-?brand|blank)\b",
        r"(?:no|not(?! on)|isn't|ain't|wasn't|without|aren't|doesn't|didn't|don't|couldn't|never|zero|nor|lacks|missing|has none of the)(?: \w+){0,4}? (?:ul(?:[- ](?:listed|listing|mark|label|number|stamp|rating|rated|anything|tag|sticker))?|listing|listed(?! (?:on|in|at))|181(?! ?a? ?-? ?[phm]\b)(?: \w+)?|rated for|rating)\b",
        r"(?:mark|print|printing|stamp|number|listing|label)s? (?:on|of|for) (?:the |that |my )?(?:tape|roll|backing)(?:'s| is| was| are)? (?:gone|missing|blank|none|not there|worn off|unreadable)|(?:backing|liner|roll|tape)(?: on (?:the|that) roll)?(?:'s| is| was) (?:blank|bare|unmarked|plain)\b",
        r"(?:tape|roll|foil|stuff)\b[^.;]*\b(?:no|without(?: any)?|doesn't have(?: any| a)?|hasn't got(?: any| a)?|with no|ain't got(?: no| any)?) (?:\w+ )?(?:mark(?:ing)?s?|stamps?|print(?:ing)?|labels?|listings?)\b(?! left)",
        r"181 ?b\b",
        r"(?:nothing|not a thing|not a word|not one word|no words?|zip|nada)(?: at all)? (?:printed|stamped|written|marked|stenciled)(?: anywhere)? (?:on|along) (?:the |this |that |my |its )?(?:tape|roll|backing|back|liner)\b|(?:tape|roll)(?:'s)?(?: (?:i|we|he) (?:used|had|got|put on|grabbed))?(?:'s| is| was| isn't| wasn't|has|'s got)*(?: not| never| no)* (?:printed|stamped|marked|labell?ed|stenciled|listed|rated)(?<!is marked)(?<!'s marked)(?<!was marked)(?<!is printed)(?<!is stamped)(?<!is labeled)(?<!is listed)(?<!is rated)(?<!was printed)(?<!was stamped)(?<!was listed)$",
        r"(?:tape|roll)\b(?:'s| is| was| with)?(?: \w+)? (?:for|made for|meant for|rated for) (?:flex|flex duct|flexible duct|pipe|packing|carpet|drywall|concrete)\b|(?:tape|roll|it|this)(?:'s| is| was)? (?:not|isn't|wasn't) (?:for|made for|meant for) (?:board|duct ?board|this|glass)\b",
        r"(?:tape|roll)\b[^.;]*\bwithout (?:a|any|its|the) (?:number|numbers|name|letters?|writing|words)\b",
        r"^(?:and |with |but )?(?:no|not any|zero|without(?: any)?) (?:print(?:ing)?|writing|stamp(?:ing)?|lettering)(?: (?:on (?:it|the back(?:ing)?|the roll|that)|at all|anywhere|whatsoever))*$",
        r"(?<!fabric )(?<!glass )(?<!and )(?<!with )(?<!\+ )(?<!\+)(?<!& )(?:just |plain |the |some |gray |silver )*cloth$",
        r"(?:search|look|check|hunt|turn|read)(?:ed)? .{0,40}\b(?:ul|181|listing)\b.{0,25}\b(?:came up empty|found (?:nothing|none)|nothing|no luck|not there|couldn't find)\b",
    ),
    of_the_piece=(
        r"\b(?:waiting (?:for|on)|missing|lacking|lacks|needs|wants) (?:its|a|an|the|my|another|some|one) (?:\w+ )?(?:end|cap|collar|door|lid|panel|side|top|bottom|branch|boot|saddle|flange|frame|plug|cover|cheek|leg|corner|sleeve|access door)\b|\b(?:end|cap|collar|door|lid|panel|side|top|bottom|branch|boot|flange|frame|cover|cheek|leg|corner)(?: itself)?(?: is|'s)? still (?:missing|to come|waiting)\b|"
        r"\bowe (?:it|her|them|that one|this one) (?:the (?:other|last|rest|far|back)|another|two|one)\b|\b(?:fill|close|seal|plug|tighten|caulk|redo|mend|square|fix|patch|repair)\b(?: up| in| off| out)* (?:that|it|them|this|those|(?:the|a|one|that|my|this) (?:gap|corner|joint|seam|hole|rest|other|last|tear|rip|split))\b"
        r"|\b(?:do|doing|finish|finishing|hit|hitting)\b(?: up| off)* (?:it|the (?:far|near|other|back|front|top|bottom|left|right|last|inside|outside|rest)(?: of it)?(?: (?:side|sides|end|ends|half|edge|edges|seam|seams|joint|corner|corners|one))?)\b"
        r"|\bother (?:one|two|three|side|sides|half|end|ends|corner|corners)(?: is| are|'s)?(?: still)? pending"
    ),
    unfinished_looks=r"\b(?:finish|done|complet|button|wrap|open|missing|lack|short|(?:com|go|get|circl)\w* back|half|part|third|quarter|need|want|could|has to|have to|got to|gotta|must|should|suppos|coming|circl|redo|remak|rebuil|fix|recut|mak(?:e|ing)|build|working|at work|through with|busy|messing|fight|tacked|clamp|propp|pinned|dry|loose|mocked|progress|left (?!side|panel|in\b|comes|by\b)\w|leaving|quit|stopp|knocked|walked|set aside|parked|tie|hook|connection|joint|pieces|incomplete|undone|had to|will|going to|gonna)|'ll|unfinished",
    unfinished=(
        rf"(?:and |but |the |its |one |a |my )*(?:\w+ )?{_PARTS}(?:'s| is| are)? (?:still |yet )(?:to (?:go|come|be|get)\b|missing\b|off\b|out\b|waiting\b|loose\b|not (?:on|in)\b|has to\b|needs to\b)",
        r"(?:but |and |the |its |one |both )*(?:\w+ )?ends?(?:'s| is| are| stays)? (?:still|wide|left)(?: \w+)? open\b(?! (?:to|for)\b)",
        rf"(?!(?:and |but |so |then )*(?:i|i'm|we|we're|i've|we've)\b){_ITSELF}(?:missing|lacks|lacking|short|goes back to the (?:bench|table|shop)\b|going back to the (?:bench|table|shop)\b)(?: (?:its|a|an|the|one|another) (?:\w+ )?(?:end|cap|collar|door|lid|panel|side|top|bottom|branch|boot|saddle|flange|frame|cover|cheek|leg|corner|sleeve)\b|(?<=bench)|(?<=table)|(?<=shop))",
        rf"{_ITSELF}(?:got|had|have|only got|only have) (?:it|this one|that one|#+(?: #+)?) (?:only |about |just )*{_HALF} (?:done|built|made|together|finished|closed)\b",
        rf"{_ITSELF}(?:(?:is|was|are|'s|got|gets) )?(?:not|isn't|ain't|wasn't|aren't|never|n't)(?: (?:quite|all the way|all|completely|fully|really|even|yet|totally|entirely|been|gotten|got|get|near|anywhere near|close to))* (?:finished|done|complete|completed|closed up|closed in|buttoned up|put together|assembled|wrapped up|together)(?: (?:yet|up|with (?:it|this one|that one|her|#+(?: #+)?)))*(?: (?:until|till|because|since|by a long shot|either|though)\b.*)?$",
        rf"{_ITSELF}(?:{_PART_OF_IT} )?(?:(?:only|just|still|about|maybe|kind of|sort of|at best|sitting|sits|stands|left|is|was) )*(?:unfinished|incomplete|{_HALF}(?: |-)(?:built|done|made|finished|together|closed|assembled|complete|there|through|formed|folded)|in (?:two |three |four )?(?:#+|pieces|parts)$|(?:tacked|clamped|propped|pinned)(?: (?:up|together|in place|on|down|shut))?|dry[- ]?fit(?:ted)?|loose[- ]?fit(?:ted)?|mocked up|a work in progress|in progress|wide open)(?: (?:yet|still|now|for now|till|until|because|since|so far)\b.*)?$",
        rf"{_ITSELF}(?:{_PART_OF_IT} )?(?:needs?|wants?|still needs|still wants|could use|could stand)(?: (?:to|be|get|all|still|a lot of|a good bit of|some|more))* (?:{_PUT_RIGHT}\b|{_COMES}|{_WORK})",
        rf"{_ITSELF}(?:{_PART_OF_IT} )?(?:still |now |will |'ll |is going to |'s going to |gonna |going to )*(?:(?:has|have|has got|have got|got) to|(?:gotta|must|should|needs|supposed)(?: to)?) (?:be |get |all |just )*(?:{_PUT_RIGHT}\b(?! (?:it|them|that|this|the)\b)|{_COMES}|(?:take|pull|cut|move|turn|tear|strip|open|spin|flip|pop|bust|break|knock) (?:it|this one|that one|her|#+(?: #+)?)(?: (?:all|back|right))* (?:apart|out|down|off|over|around|up|open|loose|shorter)\b)",
        rf"{_ITSELF}(?:(?:will|'ll|gonna|going to|have to|has to|need to|got to|gotta|must|had better|want to|wanna|be) )*(?:come|coming|go|going|get|getting|circle|circling) back(?: (?:around|up|over))?(?: (?:to (?:it|this one|that one|her|#+(?: #+)?)|for (?:it|this one|that one)|on (?:it|this one))\b.*|(?: (?:tomorrow|later|monday|after \w+|in the morning|this afternoon))*$| (?:and|to) (?:fix|finish|do|redo|close|patch|finish up|button|square|cut)\b.*)",
        rf"{_ITSELF}(?:(?:will|'ll|gonna|going to|have to|need to|got to|gotta|must|has to) )+(?:still |just )*(?:finish|complete|close|button|wrap|redo|remake|rebuild|fix|recut|get (?:back )?to)(?: (?:it|this one|that one|her|#+(?: #+)?|(?:a|the|that|one|my) (?:\w+ )?(?:corner|seam|joint|end|side|panel|cut|edge)))(?: (?:up|in|off|over|again))?\b",
        rf"{_ITSELF}(?:(?:will|'ll|gonna|going to|have to|need to|got to|gotta|must|has to) )*(?:be )?(?:make|making|build|building|do|doing) (?:another(?: one)?|a new one|it over|it again|that over|one over)\b",
        rf"{_ITSELF}(?:still )?(?:working on|at work on|not through with|busy with|messing with|fighting with|fighting) (?:it|this one|that one|#+(?: #+)?)(?: (?:still|yet|now))?$",
        rf"{_ITSELF}(?:(?:didn't|did not|couldn't|could not|never|haven't|have not|hasn't|can't) )(?:quite |even |get to |got to |manage to )*(?:finish|finished|complete|completed|button|wrap)(?: (?:it|this one|that one|her|up|in|#+(?: #+)?))*(?: (?:yet|today|because|before|since|in time)\b.*)?$",
        rf"{_ITSELF}(?:left|leaving|had to leave|quit|quitting|stopped|stopping|knocked off|walked away from|set aside|parked)(?: (?:on|with|at))?(?: (?:it|this one|that one|her|#+(?: #+)?))? (?:(?:sitting|just|about|only|at) )*(?:unfinished|undone|incomplete|{_HALF}(?: |-)?(?:done|built|through|finished|there)?|in pieces|for (?:later|tomorrow|the next (?:guy|crew|shift)|second shift|night shift|monday))\b",
        rf"{_ITSELF}(?:the |my |its |a )?(?:tie[- ]?in|hook[- ]?up|connection|joint|joints|last joint)(?: (?:to|with|at|between|on|into) [^.;,]{{1,30}}?)?(?: (?:is|'s|was|are|still|yet|has|been|got|left|stays))* (?:undone|unmade|not (?:made|closed|done|finished|together)|unfinished|pending|still waiting|waiting|still open)\b",
        rf"{_ITSELF}(?:left|leaving|had to leave) (?:the |my |its |a )?(?:tie[- ]?in|hook[- ]?up|connection|joint|joints|last joint|seam)(?: (?:to|with|at|between|on|into) [^.;,]{{1,30}}?)? (?:open|undone|loose|unmade|unfinished|apart|for (?:later|tomorrow))\b",
    ),
    vanes=r"vanes?\b",
    with_vanes=frozenset(
        "fine slid slipped into heel throat rail rails runner runners pinned riveted screwed like you me showed showing first fastened secured glued solid perfect plumb lined aligned mounted attached locked bolted welded spaced centered straight happy great beautiful clean square"
        " correct right factory airfoil double single thickness wall radius inch set sets pair five six seven eight nine ten new good nice standard hollow steel metal galvanized made bent cut myself yourself ourselves pieces piece well tight snug there here way as same full regular"
        " loose checked fight trouble hitch fuss problem problems sweat easy snapped clipped tacked tapped pushed dropped stuck fitted popped crimped soldered sealed every last cheek cheeks turn bend corner side sides before closed closing course sure yes yep".split()
    ),
    asks=(
        (r"(?=.*\b(?:stapl|fastened|shot))(?=.*how many (?:of the |of its )?sides)", "sides_stapled", "count"),
        (r"(?=.*\btap(?:e|ed|ing)\b)(?=.*how many (?:of the |of its )?sides)", "sides_taped", "count"),
        (r"(?=.*\bsides\b)(?=.*\b(?:stapled|stapling|staples)\b)(?!.*\b(?:did|do|is|are|was|were|have)\b)", "sides_stapled", "count"),
        (r"(?=.*\bsides\b)(?=.*\b(?:taped|taping|tape)\b)(?!.*\b(?:did|do|is|are|was|were|have)\b)", "sides_taped", "count"),
        (r"(?=.*\btabs?\b)(?=.*\b(?:how (?:far apart|close|often|many inches)|spacing|spaced|apart|centers|on center)\b)", "cross_tab_spacing", "length"),
        (r"(?=.*\btabs?\b)(?=.*\b(?:how long|length|long|how big)\b)", "cross_tab_length", "length"),
        (r"(?=.*\bstapl)(?=.*\b(?:how long|leg|legs|length|what size)\b)", "staple_leg", "length"),
        (r"(?=.*\bstapl)(?=.*\b(?:how far apart|how close|how often|spacing|spaced|apart|pitch|centers|on center|how many inches|every what)\b)", "staple_spacing", "length"),
        (r"(?=.*\b(?:tape|roll|181\w*)\b)(?=.*\b(?:how wide|width|wide)\b)", "tape_width", "length"),
        (r"(?=.*\b(?:gap|opening at the joint|how (?:tight|open) is|daylight)\b)(?!.*\b(?:staples|tabs|screws|hangers)\b)", "gap", "length"),
        (r"(?=.*\bwashers?\b)(?!.*\bscrews?\b)", "washer_size", "length"),
        (r"(?=.*\bscrews?\b)(?!.*\b(?:how many|washers?)\b)", "screw_spacing", "length"),
        (r"(?=.*\bhangers?\b)(?!.*\b(?:how many|how wide)\b)", "hanger_spacing", "length"),
        (r"(?=.*\bthroat\b)", "throat_radius", "length"),
        (r"(?:and |so )?(?:the |what |what's the |how's the )?(?:spacing|how far apart|how often|every what|centers)(?: is it| are they)?$", "(spacing)", "length"),
        (r"(?=.*\b(?:temp|temperature|degrees|how (?:cold|warm|hot)|thermometer)\b)(?!.*\b(?:inside|in) the duct\b)", "surface_temperature", "degrees"),
        (r"(?=.*\b(?:clinch|clinched|legs|staples)\b)(?=.*\b(?:which way|what way|which direction|inward or outward|in or out|point|curl|fold)\b)", "staple_clinch", "way"),
        (r"(?:(?:and|so|the|my|your|any|how about|what about|cross) )*tabs$", "cross_tab_length", "length"),
        (r"(?:(?:and|so|the|my|what|what's|how about|what about) )*tape$", "tape_width", "length"),
        (r"(?:(?:and|so|the|my|what|what's|how about|what about) )*(?:duct )?board$", "board_thickness", "length"),
        (r"(?:and |so )?how (?:big|wide|long|bad|large)(?: (?:is|was|a|are|were|of|it|that|they|them|one|the \w+))*$", "(size)", "length"),
        (r"(?=.*\b(?:mark|ul|listed|listing|label|181|stamp|number)\b)(?=.*\b(?:tape|roll|backing|foil)\b)", "(listed)", "yes"),
    ),
    topic_over=r"(?:well |oh |that |it |(?:it|that|they)'s |they're |was |is )*(?:no|nope|none|nah|not|what|which|where|who|how|why|gone|dried|never was|never happened|closed|tight|isn't any|wasn't any|there isn't|there wasn't|there's (?:no|none)|cut (?:it|that) (?:off|out)|didn't see|don't (?:know|see)|somebody else's|wasn't mine|different|other|wrong)\b(?! (?:fixed|patched|mended|taped|touched|repaired|done|yet|sealed))",
    that_is_it=r"(?:(?:well|yep|yeah|and|so|but|guess what|sorry) )*(?:that's|that is|it's|this is|guess) (?:exactly |just |all )*what(?:'s| is| was|) ?(?:on|went|ended up|got|sealing|closing|holding|i|we)\b(?!.*\b(?:not|didn't|n't|supposed|should|wanted)\b)",
    why_not=r"(?:(?:and|so|but|now|well|you ask|they ask|you wonder|i know) )*(?:why|how come|what's the reason|the reason)(?: (?:is|are|was|were|there's|there is|there are|i|we|has|have|did|does|do|it|they))*(?: (?:no|not|isn't|aren't|wasn't|weren't|didn't|haven't|hasn't|doesn't|don't|never|without))\b",
    says_no=(
        r"(?:not )?(?:hardly|barely|scarcely)(?: (?:at all|so|that))*",
        r"(?:ha|hah|haha|as if|dream on|yeah right|right|you wish|you're funny|very funny|what (?!do|did|tears?|holes?|rips?|gaps?|damage|dents?|about|a\b|an\b|the\b|i\b|we\b|kind)\w+)",
        r"(?:not (?:a|an|one|any)(?: single| solitary)? (?:strip|inch|staple|piece|bit|lick|stroke|scrap|vane|one|tab|foot|swipe|pass|wipe|shot)|none|zero|nil|zip|zilch|nada|nothing|not any|bupkis|squat|jack)(?: of (?:it|them|'em|that|those))?(?: (?:at all|whatsoever|anywhere|to speak of|on it|in it|there|put on|went (?:on|in)|so far|today|i'm afraid|sorry))*",
        r"(?:no|nope|nah|negative|never|none|not|nay|neither)(?: sir| ma'am| boss| chief| way| dice| joy| luck| time| chance| idea)?(?: (?:not|i|it|we|they) .*)?",
        r"(?:(?:i|we|it|they|he|she|there|that|this one|the \w+)(?:'d| just| sure| plain| really)? )?(?:didn't|did not|don't|do not|doesn't|does not|isn't|is not|wasn't|was not|aren't|are not|haven't|have not|hasn't|ain't|couldn't|can't|never (?:did|was|got|have|happened|got to it|got around)|won't|forgot|skipped|missed|left|ran out|passed|blew (?:it|that) off)(?: \w+){0,4}",
        r"(?:i |we )?(?:let (?:it|that) slide|plumb forgot|clean forgot|forgot all about it|skipped (?:it|them|'em|that)|forgot (?:it|them|'em|to)|missed (?:it|them)|there isn't one|there aren't any|there's none)(?: .*)?",
    ),
    says_yes=(
        r"(?:all|both|each|each one|every one|every single one|every last one)(?: of (?:them|'em|those))?(?: (?:sir|boss|all the way(?: around)?|tight|good))*",
        r"(?:(?:i|we|it|they|he|she|this one) )(?:sure |really |just )?(?:did|do|does|is|are|was|were|have|has)(?: (?:now|all of it|all of them|every bit|all around|too|it|that))*",
    ),
    none_of_it=r"(?:(?:so|well|and|just|plain|exactly|absolutely|that's|it's|that makes|a big|a fat|there was|there is|there's|i|we|did|got|it got|she got) )*(?:none|zero|nil|zip|zilch|nada|not any|bupkis|not a (?:one|single one|bit|lick|scrap|strip|inch|stroke)|no such thing|nothing at all|no|nope|nah|negative|(?:it |that |they )?(?:didn't|never|did not) happen(?:ed)?|not happening|(?:it |that |they )?(?:got |was |were )?(?:skipped|forgotten|left out|left off))(?: of (?:it|them|that))?(?: (?:at all|whatsoever|anywhere|done|so far|today|there|i'm afraid|sorry))*",
    ironies=r"\b(?:in (?:my|your|his) dreams|(?:yeah|yea|sure|oh) right|when (?:pigs|hell|cows|donkeys) \w+|as if|i wish|fat chance|my foot|my eye|you wish|dream on|said (?:nobody|no one)|if only|likely story|on what planet|in another life|ha ha|just kidding|not really)\b",
    sides=(
        *((four - less, False, rf"(?:all |the |its )*(?:{word}|{four}) sides? (?:minus|less|but|except|short|all but)(?: for)?(?: the)? (?P<minus>one|two|1|2)") for four, word in ((4, "four"),) for less in (0,)),
        *((n, False, rf"(?:{words}){_OF_4}(?: sides?|(?<=4) ?sides?)\b(?! (?:of|on) (?:the |that |my |each |every )?(?:joint|seam|cut|flap|corner|gap|line|lap|board|miter)s?\b)") for n, words in ((1, "one|1|a single|a lone|single"), (2, "two|2|a pair of|a couple|a couple of|couple of|both"), (3, "three|3"), (4, "four|4|all"))),
        *((n, False, rf"(?:{words})(?: (?:out )?of(?: the| its)? (?:four|4)| ?/ ?4)") for n, words in ((1, "one|1"), (2, "two|2"), (3, "three|3"), (4, "four|4"))),
        *((n, False, rf"sides? (?:w/ ?|with )?(?:stapled|taped|staples|tape|stapling|taping|done)[: =]*(?:{words})") for n, words in ((1, "one|1"), (2, "two|2"), (3, "three|3"), (4, "four|4"))),
        *((n, True, rf"(?<!every )(?<!each )(?<!any )(?:{words}) of (?:them|'?em|those)") for n, words in ((1, "one|1"), (2, "two|2"), (3, "three|3"))),
        (1, True, r"the (?:last|fourth)(?: one| side)?(?=$| too| as well| after| later| when)"),
        *((n, True, rf"{_ELSE} (?:{words})") for n, words in ((1, "one|1|side"), (2, "two|2|pair"), (3, "three|3"))),
    ),
    numbers=(("one", 1), ("two", 2), ("1", 1), ("2", 2)),
    of_all=r"of|out of|out of the|off of",
    stands_for_act=r"^(?:on|around|along|across)\b|\b(?:did|done|do|have|has|had|got|get|is what|are|is|was|were|only|just)\b",
    denied_side=r"(?<![\w'])(?:in the way|no|not|none|nothing|never|without|w/o|missing|bare|forgotten|forgot|skipped|missed|lacks?|lacking|short|un(?:stapled|taped)|left|couldn't|needs?|to go|waiting|waits?|\w+n't)(?![\w'])",
    rest_left=r"\b(?:forgot|skipped|missed|left|not|never (?:got|did)|couldn't (?:get|do|reach)|didn't (?:get|do)|can't (?:get|reach))(?: to| at)? (?:the |its )?(?:other|fourth|last|rest)\b.*",
    because=r"\b(?:because|since|'?cause|'?cuz)\b.*",
    side_waits=r"(?:and |but |then )*(?:(?:the |that |its )?(?:fourth|last|other|far|back|top|bottom|left|right|near|remaining) (?:one|two|three|side|sides|seam|joint|edge|half)|the (?:top|bottom|back|front|sides|ends)|(?:the |that )(?:fourth|rest)(?: of it)?)(?: (?:is|i'll|we'll|i will|i can|catch|get|hit|do|finish|pick up|grab|'s|gets|comes|waits|waits till|waits until|has to wait till|will be|goes|done|it|for|sometime))* (?:after|tomorrow|later|this afternoon|in the|monday|tonight|when|in a|next|soon|another|first thing)\b",
    side_to_come=r"\bheld (?:by|on by|together by|up by|in place by) (?!staples|tape)|\b(?:i'll|we'll|i will|gonna|going to|later|tomorrow|have to)\b",
)  # fmt: skip
