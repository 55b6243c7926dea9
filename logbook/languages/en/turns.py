"""English words that take an act back, in part or whole, or set it right again, without naming it a second time."""

from __future__ import annotations

from logbook.languages.en.came_off import STOCK
from logbook.languages.turns import Turns

_SOME = (
    r"(?:(?:just |only |about |maybe |like )?(?:one|two|three|four|five|six|seven|eight|ten|twelve|a couple|couple|a few|few|some|several|half|most|a bunch|a lot|another|the last one|the last two|the others?|both)"
    r"(?: of (?:them|'em|those|these|it|the|my))?)"
)
_PART = r"(?:cheeks?|heel|throat|branch|trunk|main|tap|take-?off)"  # of a piece that has more than one
_SPOT = (
    r"(?:corners?|edges?|ends?|spots?|places?|sections?|stretch|strip|seams?|joints?|sides?|half|third|back|front|bottom|top|left|right|underside|throat|heel|cheeks?|rest|tail|lap|overlap|middle|"
    r"(?:half |quarter )?(?:foot|feet|inch|inches)|piece|part|last (?:bit|foot|inch|two|few)|others?|ones)"
)
_ANY_TAPE = r"(?:(?:the|our|that) )?(?:(?:\w+ )?tape|181[ -]?a[ -]?[ph]|one eighty[ -]?one a(?: dash)?[ -]?[ph]|a[ -]?p)\b"
# why a piece is taken back
_NO_SUCH = (
    r"(?:(?:that|this|it|she|there)(?:'s| is| was| isn't| wasn't)(?: just)? (?:not|wrong|no such|never|already|a (?:duplicate|double|mistake|repeat|wrong|different|test|bad)|an (?:error|accident)|the (?:other|wrong|same)|another|some ?(?:body|one)|a?n?other|on (?:the other|another|a different)|for (?:the other|another|a different)|from|mine|ours|my (?:mistake|bad))"
    r"|(?:i|we|it|that) (?:already |just |accidentally )?(?:sent|said|logged|called|recorded|never|didn't send|went to)|wrong|duplicate|double|twice|not|never|different|other|already|no such|doesn't|isn't|wasn't|somebody|someone|another)\b"
)
# what stands by a spot of a piece and tells which
_BY_WHICH = r"(?:tees?|elbows?|ells?|nineties|ninety|collars?|branch|wye|transition|reducer|offset|take-?off|taps?|straights?|caps?|plenum|boots?|dampers?|doors?|walls?|ceiling|decks?|floor|columns?|beams?|joists?|studs?|hangers?|straps?|rods?|units?|handler|fans?|registers?|grilles?|flanges?|openings?|pipes?|conduits?)"
# a joint that "came up tight" is no tape that came up
_WELL = r"(?:(?:real|really|pretty|all|nice and|so|just|good and|nicely|very|dead|good|perfectly) )*(?:tight|snug|flush|closed|together|sharp|smooth|flat|level|beautiful|beautifully|solid|good|fine|nice|nicely|clean|great|square|okay|ok|perfect|perfectly|straight|well|right)\b"


# how big the damage is, right before its name
_MEASURED = r"(?: (?:an?|the|about|maybe|\d[\d/. -]*|(?:one|two|three|four|five|six|half|quarter|eighth|sixteenth|three-quarter|half-inch|quarter-inch|one-inch|two-inch|three-inch|inch-and-a-half)|and|of|inch|inches|in|mm|mil|millimeter|cm))*"

_DID = r"\b(?<!to )(?<!'ll )(?<!will )(?<!gonna )(?<!should )(?<!can )(?<!could )(?<!didn't )(?<!not )(?<!never )(?<!gotta )(?<!i'd )(?<!must )"
_ON_IT = r" (?:on|of|in|at|around|inside|along) (?:(?:the|that|my|this|it|one|a|its) ?)?(?:(?:[\w-]+ ){0,3}?[\w-]+(?: (?:of|on|in|for|at) (?:the |that |this )?[\w-]+)?(?: [\w-]+)?)?"
_TAKES = r"(?:scratch|scrap|strike|delete|erase|drop|lose|kill|toss|trash|dump|discard|cancel|void|remove|wipe|clear|ignore|disregard|throw (?:out|away)|take (?:out|back))"
_TOLD = r"(?:(?:the|that|this|my) (?:very )?(?:last|previous|whole|first|other)? ?(?:last |previous )?(?:note|one|message|recording|entry|thing|memo)|(?:my|the) last|what i|anything i|everything i|any of (?:it|that|this)|(?<=scratch )(?:that|it|this)|(?<=scrap )(?:that|it|this)|(?<=delete )(?:that|it|this)|(?<=erase )(?:that|it|this)|(?<=strike )(?:that|it|this))"

_NOT_HERE = r"(?<!n't )(?<!not )(?<!never )(?<!n't been )(?<!n't yet )(?<!n't even )(?<!n't really )"  # "a gap I haven't closed"

ENGLISH_TURNS = Turns(
    over_there=r"(?:inch(?:es)? )?(?:apart )?(?:(?:every ?where|every ?place|any ?where) else|elsewhere|(?:past|beyond|after) (?:it|that|there|the \w+)|from there|(?:on )?the rest\b|(?:further|farther) (?:down|on|along|up)|(?:toward|towards|near|nearer|nearing|by|along|around|at|over by|close to|next to|down|up|across) (?:the|that|one|each|both|where|my|its)\b|on (?:top|bottom|back|some|most|others)\b|for the (?:last|first|rest|final)\b|where (?:the|it|i|we|there|that|they|my|you)\b)",
    spreads=r"(?:drift|stretch|wander|creep|crept|spread|open|widen|stray|slip|slid|slide|grow|grew|jump|wide|widen|sneak|run|ran|stretch|relax|balloon|float|go|goes|went|going|gets?|get(?=ting)t|got|end(?:ed)? up(?: closer| nearer| more like)?|let (?:it|them) (?:go|slip|slide|drift|run))(?:e?s|e?d|ing|ped|ping)?(?: (?:up|out|wider|off|all the way|it|them|on|as far as|clear|way|apart))* (?:out |up )?to|became|(?:ends?|ended|winds?|wound|finish|finishes|finished)(?: up)? at|turned into|then(?: there's| there is| comes| i've got| i got| you hit)? (?:a|one|this one) (?:short |bad |little )?(?:stretch|spot|place|run|section|bit|patch)",
    why_wide=(r"(?:(?:but|because|cause|since|and|i|we|was|were|got|is) )*(?:ran|running|getting|got|short|low|was|were)(?: (?:short|low))?(?: (?:on|of))? (?:on |of )?staples",),
    # words that may stand beside a fault when it is the work that is at fault: nothing else may
    beside=frozenset(
        "rail rails slot slots runner runners round the a an is are was were be been 's 're it they them 'em that this these those there there's here it's they're that's still already kinda kind sort of"
        " little bit just pretty real really on at in to up by under over along behind around right only maybe about like one one's got has have had gets get i we i've we've"
        " my its and but though although except for two three four five six seven eight nine ten twelve couple few some several half most bunch lot another last first others other corner corners corner's"
        " near far inner outer against toward wall"
        " edge edges edge's end ends end's spot spots place places section sections stretch strip seam seams seam's joint joints joint's side sides side's back front bottom top left"
        " bottom's top's back's underside rest tail lap overlap middle foot feet inch inches piece part bits hand"
        " tape tape's tapes staple staples vane vanes tab tabs tab's panel panel's shiplap groove well so now today again from where was which who all way down off out also even"
        " looks look looking seems feels went came come do did does each no any you can see guess think then gonna i'm we're set sets thank thanks you okay ok alright sorry well yeah yes oh"
        " twice monday tuesday wednesday thursday friday saturday sunday overnight yesterday".split()
    ),
    nouns=(
        (r"tapes?(?:'s)?|taping", "taped"), (r"staples?(?:'s)?|stapling|staplers?|(?<!heat )(?<!tape )(?<!temp )gun", "stapled"), (r"rub(?:bed|bing)?", "rubbed_down"), (r"vanes?(?:'s)?", "vanes"), (r"tabs?(?:'s)?", "cross_tabs"), (r"panel(?:'s)?", "panel_seated"),
    ),
    # what may be wrong with the work; the acts it can be wrong with
    faults=(
        (rf"peel(?:ing|ed(?! (?:it|that|them|the|all|everything|one|off (?:it|the|that)))|s)|lift(?:ing|ed|s)|curl(?:ing|ed|s)|flapping|unstuck|let(?:ting|s)? (?:go|loose)|[\w']+ (?:com(?:ing|e|es)|came) (?:up(?! {_WELL})|unstuck|unglued)|bare|uncovered|exposed|puckered (?:up|open)", ("taped", "cross_tabs")),
        (r"(?<!no )(?<!any )(?<!not a )(?<!the )(?<!for )(?:bubbl(?:ed|ing|es?|y)|wrinkl(?:ed|ing|es?|y)|fish ?mouth(?:s|ed)?|air pockets?|pockets? of air)(?! (?:out|gone|flat)\b)", ("rubbed_down",)),
        (r"bent (?:over|up|sideways)|crumpled|folded over", ("stapled",)),
        (r"backwards?|(?:the )?wrong way(?: (?:round|around))?|upside down", ("vanes",)),
        (r"(?:is|are|was|were|got|'s|'re)(?: a little| kind of| all| pretty)* (?:bent(?! (?:to|in|and|right|good|nice|by|from))|crooked|cracked|twisted|cockeyed|mangled|crushed|dented|flattened)|rattl(?:es?|ing)", ("vanes",)),
        (r"(?<!it )(?<!she )s(?:its?|at|itting) (?:up|proud|high|off)(?: (?:off|of|on|from|above) the flap)?|rid(?:e|es|ing) (?:up|high)|stand(?:s|ing)? (?:off|proud)|(?:didn't|don't|won't|never) sink", ("stapled",)),
        (r"(?:corner|end|side|edge)(?:'s| is| are) (?:still )?up", ("panel_seated",)),
        (r"spotty|patchy|hit (?:or|and) miss", ("stapled", "taped", "rubbed_down")),
        (r"popp(?:ed|ing)(?! (?:the |my |all the |some |a |one )?(?:staples?|vanes?) in)(?: (?:out|loose|off|up))?|pull(?:ed|ing|s) (?:out|through|loose|off|away)|tor(?:e|n) (?:out|through|loose)", ("stapled", "taped", "vanes", "tabs_bent", "cross_tabs")),
        (r"loose(?! panel| piece| sheet| glass| insulation)|(?:com(?:ing|e|es)|came) (?:off|out|loose|apart|undone)" + STOCK + r"(?! (?:(?:one|two|three|four|five|six|seven|eight|[\d/-]+)(?: and (?:a|an|one|three) \w+)?(?: inch(?:es)?)? (?:apart|on center)|right|good|fine|nice|nicely|clean|great|square|to|at|okay|ok|perfect|straight|well|about|around|roughly|almost|nearly|like|just|every|exactly|(?:a|an|one|two|three|four|five|six|seven|eight|half)\b|right at|closer|a (?:little|bit|hair) (?:over|under|more|less|past|wide)|\d))|f(?:a|e)ll(?:en|ing|s)? (?:out|off|down)|stick(?:ing|s)? (?:up|out)|stuck up|hanging (?:off|down|loose|out)|missing|broke(?:n)?(?: off)?|sprung|wobbly|floppy|proud", ()),
        (r"(?:corners?|seams?|joints?|sides?|back|top|bottom|left|right|spots?|underside|edges?)(?:'s| is| are)?(?: still| a little| kinda| kind of| wide)* open", ("taped", "cross_tabs")),
        (r"not (?:quite |real |really |all |all that |too |so |very )?(?:tight|flat|snug|down tight)|(?:isn't|aren't|ain't|wasn't|weren't) (?:quite |real |really |all |all that |too |so |all the way )?(?:tight|flat|snug|down)", ("tabs_bent", "vanes", "panel_seated", "taped", "cross_tabs", "stapled")),
    ),
    any_side=r"(?<![\w'])(?:the|that|its|this|one) (?!other|and|is|are|but|with|not|no)[a-z'-]+ (?=(?:side|end|edge|face|cheek)(?![\w']))|(?<![\w'])(?:right |over |up |down )*(?:near|by|next to|beside|close to|toward|towards|under|above|below|behind|past|just past|at|from|against|around) (?:the|that|my|a) (?:first |next |last |old |big |little )?" + _BY_WHICH + r"(?![\w'])|(?<![\w'])(?:at|on|of|around|along) the (?:heel|throat|cheek|crotch)(?! side)(?![\w'])|(?<![\w'])on (?:me|us)(?![\w'])",
    meanwhile=r" (?:because|since|'?cause|when|while|as|after|once|the minute|the second|as soon as|every time) (?:i|we|i'm|we're|he|she|they|it|it's|you|the|my|somebody|someone|a|of)\b.*$",
    # tabs that stand where they should lie
    standing=(
        rf"tabs?(?: \w+| (?:on|in|at|of|along|around) the [\w ]{{1,16}}?|{_ON_IT})?(?: is| are| was| were|'re|'s)?(?: still| just| all| kind of| kinda| a little| pretty| real)* (?:flop\w*|flap\w*|wiggl\w*|wobbl\w*|rattl\w*|loose|sprung|springy|springing|slack|lazy|wavy|unbent|straight|stick(?:s|ing)?(?: straight| right)? (?:up|out)|stand(?:s|ing)?(?: straight| tall)?(?: up| out)?|point(?:s|ing)?(?: straight| right)? (?:up|out|in)|pok(?:e|es|ing) (?:up|out)|half[- ]?(?:way )?(?:bent|down|over)|proud|up in the air|not down|not bent|waving|in the breeze)",
        r"(?:loose|floppy|wobbly|unbent|straight|wiggly) tabs?", r"(?:only|just) (?:got|bent|folded|did) (?:about |maybe )?(?:half|some|most|a few|a couple|two|three|four|five|six)(?: of (?:them|those))?(?: (?:over|down|bent|folded))?$",
        r"(?:tabs?|ones|rest|others?|them|few|couple|two|three|four|one|some) (?:of (?:the|them|those) ?(?:tabs?)? ?)?(?:is |are |'re |'s |were |was )?(?:still |just |all |left )*(?:standing|straight(?: out| up)?|up|upright|out|sticking (?:up|out)|not down|not over)",
        r"(?:they|those|these|them)(?: all| both| still| just)* (?:stick|stand|poke|point|are|'re)(?: still| all| just)* (?:(?:sticking|standing|poking|pointing) )?(?:straight (?:out|up)|up|out|straight)$",
        r"left (?:the )?(?:others?|rest|other ones|two|three|four|a few|a couple|some)(?: of them)?(?: standing| up| straight| alone| off)?",
    ),
    tabs_short=(
        r"(?:a|one|two|three|couple|few) tabs? short|short (?:a|one|two|three|a couple(?: of)?|of a|of two|some) tabs?", r"(?:missed|skipped|forgot|lost|broke|snapped|tore|cut)(?: off)? (?:a|one|two|three|a couple(?: of)?|some|a few)(?: of)?(?: the| my| those)? tabs?(?! (?:back|down|over))", r"tabs?(?: still| all)? (?:need|needs|want|wants|could use|could stand|have yet|remain)(?: some| to be| a little)? (?:bending|bent|folding|folded|knocking|hammering|work)\b",
        r"every (?:other|second|third)(?: one)?(?: of)?(?: the| my| those)? tabs?|every (?:other|second|third) one of (?:the|those|my) tabs",
        r"(?<!every )(?<!each )(?<!put )(?<!used )(?:all but|only|just|a few|few|some|half|most|a couple|couple|one|two|three|four|five|six|ten)(?! (?:inch|inches|round|all|each|every(?! other| second| third))\b)(?: \w+)?(?: of)?(?: the| my| those| them)?(?: \w+)? tabs?|tabs? (?:on|at) (?:the )?(?:one|two|three|top|bottom|left|right|back|front)",
        r"tabs? (?:that )?(?:i|we) (?:(?:just|really|still) )*(?:couldn't|can't|could not|didn't|never could|never) (?:\w+ )?(?:get|bend|fold|reach|turn|flatten|lay|get to)\b",
        r"tabs? (?:is |are |were |was )?(?:\w+ )?(?:except|minus|but|short of|save|bar)\b",
    ),
    tabs_all=(r"(?:but |and |no |well |now )*(?:they're|they are)(?: all| both| every one)? (?:bent|folded|turned|down|flat)(?: (?:over|down|flat|tight|in|good|and|nice|under|underneath|inside|all|every|one|of|them))*",
        r"(?:but |and |no |well |now )*(?:all|every one|each one|every single one|every last one)(?: \w+)?(?: of (?:them|'em|those))?(?: ?are| is|'re|'s)? (?:bent|folded|turned|down|flat)(?: (?:over|down|flat|tight|in|good|and|nice|under|underneath|inside|against|to|the|board|face))*",),
    # those that a denial is told of, behind them
    tabs_left=(r"(?:couple|few|some|one|two|three|four|five|six|half|most|several|bunch)(?: \w+)?(?: of)?(?: the| my| those| them)? tabs? (?:that |which )?(?:i|we) (?:just |really |still |simply )*(?:couldn't|could not|can't|cannot|never could|never|didn't)(?: \w+)? (?:get|got|reach|bend|fold|turn|flatten|grab|touch|do|see)\b", r"tabs? (?:that |which )?(?:i|we) (?:couldn't|could not|can't|didn't|never|haven't) (?:get |got |quite |even )*(?:bent|bend|down|over|folded|fold|to bend|to lay down|to lie down)",
        r"(?:couple|few|some|one|two|three|half|most|several|bunch)(?: of)?(?: the| my| those)? tabs? (?:still )?(?:didn't|wouldn't|won't|don't|doesn't|aren't|isn't|weren't|ain't)\b",),
    tabs_done=(
        r"tabs?(?: is| are| were| was|'re|'s| have been| got)?(?: all| both| every one| now)* (?:hug(?:ging|ged|s)?|snug(?:ged)?|tight|flat|flush|cinched|clamped|mashed|locked|pinched|knocked|beat)(?: (?:down|over|up|in|tight|flat|to|on|onto|against|inside|the|board|duct|inside of))*",
        r"(?:cinched|clamped|mashed|locked|pinched|snugged)(?: (?:down|over|in|all|every|each|of|the|my|its|single|last|one))* tabs?(?: (?:down|over|in|flat|tight|back|all|around))*",
        rf"tabs?(?:{_ON_IT})?(?: is| are| were| was|'re|'s| have been| got)?(?: all| now| nice and| good and| both)* ?(?:bent|folded|laid|lay|lie|flat|flattened|down|over|turned|hammered|pounded|knocked|crimped|pushed|pressed|smashed)(?: (?:over|down|in|flat|tight|back|out|and|all|around|nice|good))*",
        r"(?:bent|folded|laid|flattened|turned|hammered|pounded|knocked|crimped|pushed|pressed|beat)(?: (?:over|down|in|all|every|each|of|the|my|its|single|last|one|eight|ten|twelve))* tabs?(?: (?:over|down|in|flat|tight|back|all|around))*",
    ),
    # the same, said as something that did not happen
    unhappened=(
        (r"none(?: of (?:them|it|those|'em|the (?:tabs|staples|tape|vanes)))?(?: is| are| were| was|'s|'re)? (?:actually |really |all that |even )?(?:tight|flat|down|holding|sticking|stuck|through|flush|snug|seated|biting|catching)", ()),
        (r"rocks?|rocking|hangs up|hung up|binds|binding|cocked|teeters|(?:doesn't|didn't|won't|wouldn't|don't) (?:go|sit|drop|lay|lie) (?:down|flat|in|right)?", ("panel_seated",)),
        (r"(?:didn't|did not|don't|won't|wouldn't|doesn't) (?:quite |really |all )?fit", ("vanes", "panel_seated")),
        (r"(?:didn't|did not|don't|doesn't|won't|wouldn't|isn't|aren't|ain't|wasn't|weren't|never|not|refuses to|refused to|fails to|failed to|can't get (?:it|them|that) to) (?:really |quite |all |even |going to |gonna )?"
         r"(?:bite|biting|bit|catch|catching|caught|grab|grabbing|hold|holding|held|stick(?! (?:up|out)\b)|sticking(?! (?:up|out)\b)|stuck|take|took|go (?:in|through|all the way)|going through|gone through|seat|seating|sit|drop in|clinch|bend|stay|staying|lay|lie(?= (?:down|flat|in|right|good|on|there))|laying|lying|close(?! (?:up|in|together|tight))|reach|make it(?! to (?:the )?(?:tap(?:e|ing)|stapl|rub|wip|trim|vanes|turning))|make the|come all the way)(?: (?:down|put|on|flat|good|right|through|in))?", ()),
    ),
    missed=(
        (r"(?:only |just )(?:put|got|used|set|ran|had|have)(?: in)? (?:(?:in )?every (?:other|second|third)|half(?: of)?|a couple(?: of)?|two|three|some)(?: of)?(?: the| my)? (?:ones?|vanes?|slots?|rails?|blades?|them)(?: in)?", ("vanes",)),
        r"(?:missed|skipped|left off|left out|left(?= (?:the|a|an|one|two|three|about|some|half|most|that|my|out|off|a couple)\b)|passed over|forgot|(?:couldn't|could not|can't|cannot|wasn't able to|didn't|did not|no way to|never|hard to(?! see)|unable to|too tight to) (?:really |quite |even )?(?:reach|get(?: at| to| into| under| behind| around| up to| in to| in)?|do|see|finish|tape|staple|rub|bend|make))"
        rf" (?:(?:it|that|them|the tape|tape|a staple|staples|my hand|the gun|the stapler) )?(?:(?:all the way |all )?(?:under|behind|around|on|at|to|in|into|up|over|along|down|back) )*(?:the |a |an |my |that |this |one |its |about )*(?:{_SOME}|every (?:other|second|third|fourth)(?: (?:one|tab|vane|staple))?|(?:whole |very |far |near |back |bottom |top |left |right |inside |outside |inner |outer |lower |upper |other |last |first |fourth |tight |male |female |wall |door |window |floor |ceiling |long )*{_SPOT}|there|in there|under there|back there|all of (?:it|them))\b",
    ),
    ran_short=(
        rf"{_SPOT}(?: (?:about|maybe|like|on|at|the|a|an|long|or so|in|of|back|bottom|top|left|right|foot|feet|inch|inches|two|three|six|side|corner))*? (?:that |where |which )?(?:i|we) (?:missed|skipped|never (?:got to|got around to|got|did|reached|made it to|touched|finished)|ran out of (?:time|day|light|tape) (?:for|before)|(?:just |really )?(?:couldn't|can't|didn't|could not) (?:quite |even )?(?:reach|get(?: to| at| into| under| it)?|do|tape|staple|see))",
        r"(?:ran|came up|come up|fell|was|were|is|are|'s|we're|i'm|i was|it's|went) (?:(?:a|an|one|two|about|half|couple|few) )*(?:foot|feet|inch|inches|little|bit|hair) short",
        r"(?:ran|came up|come up|fell) short (?:on|by|at|in|around|near)",
        r"^(?:but |and |just )*short (?:one|two|three|a|an|half|couple|on|by)\b",
        r"(?:ran|run|running) out(?: of (?:tape|staples|it|them))? before the (?:end|bottom|top|back|last|corner)|(?:ran|run|running) out(?: of (?:tape|staples|it|them))? (?:on|at|before|halfway|half way|partway|by|along|around|near|just|with|about)\b|^(?:but |and then )(?:i |we )?(?:ran|run) out$",
        r"(?:one|two|couple|few|foot|feet|inch|inches) (?:too )?short|(?:one|two|couple|few) (?:sets? of |of )?(?:staples?|vanes?|tabs?) (?:too )?short",
    ),
    # how far an act went that did not go all the way; read behind the act
    extents=(
        r"^(?:only |just )?where (?:it|they|you|the \w+|anybody|anyone|he|people|folks) (?:shows?|looks?|sees?|can see|could see|checks?|will look|will see|notices?)\b", r"^(?:only |just )?on the sides? (?:that |which )?(?:you can see|you see|shows?|anybody sees|faces out)\b",
        r"(?:most|some|part|half|parts|bits|a little|a bit|a third|two thirds|three quarters|one half) of (?:it|them|the|that|'em)\b",
        r"^(?:it |them |that |down |up )*(?:about |like |maybe )*(?:nearly|almost|not quite|just short of|three quarters|three-quarters|two thirds|a third|a quarter)(?: of)?(?: all)?(?: the)?(?: way| length)?(?: (?:around|round|down|up|along|across|over))?(?: (?:it|the \w+))?$",
        r"^(?:it |them |that |down |up )*(?:nearly|almost|not quite) (?:(?:all|the whole)(?: the)? (?:way|thing)|to the (?:end|bottom|top|corner)|all (?:of it|around|round|over|four|four sides|the sides)|everywhere|every side)\b",
        r"(?:most of|part of|half of|some of|halfway|half way|partway|part way|part|half)(?: of)?(?: the)? way\b|halfway|partway",
        r"(?:what|whatever|where|wherever|everything|all|anywhere|every place|everywhere|the parts|as (?:much|far|many) as) (?:that )?(?:i|we) (?:could|can)\b(?! (?:see|tell|judge|make out|feel|reckon)\b)",
        r"^(?:only |just )*(?:the )(?:one|ones|two|three|side|sides|part|parts|bit|half|seams?|stretch|edges?|ends?)(?: (?:side|sides|seam|seams|ones))? (?:that )?(?:i|we|you) (?:could|can|had|have|was able to)\b",
        r"(?:until|till|'til|before) (?:i|we|the \w+) (?:ran|run) out|(?:in|here and there|a few|a couple(?: of)?|(?:in |at )?(?:two|three|four)) (?:spots|places)(?! (?:on|in) run)|here and there|spots here and there",
        r"(?:just|only|at) (?:on |at )?the (?:corners|ends|edges)(?: only)?\b|(?:the )?(?:corners|ends|edges) only|only (?:the |at the |on the )?(?:corners|ends|edges)",
        r"^(?:it |them |that )?(?:some|a little|a bit|a little bit)(?= ?$)", r"^(?:it |them |that |down )*for (?:about |maybe |like |all of )*(?:a|a few|a couple|five|ten|fifteen|twenty|thirty|\d+)(?: of)? seconds?\b",
        r"temporar(?:ily|y)|just to hold (?:it|them|her)(?: together)?|enough to hold (?:it|them)|but not (?:all|the whole)|and nowhere else|and nothing else|(?:and |, )?left the (?:rest|others?)",
    ),
    # of four sides; behind an act that has no count of its own
    sides_only=(r"(?:over |down |only |just |tight |all around |around )*on (?:just |only )?(?:one|two|three)(?: of the four| of the sides)? ?sides?",),
    # what he did a second time: the measure behind it is how it is now
    goes_over=(
        r"(?:went|came|gone|turned|gone right|went right) (?:right |all the way )?back(?= ?(?:over|and|in|through|around|again|to it|on it|at it|there|later|after|up in|up there|under|with|this|(?:every|each)(?! (?:[\w-]+ )?(?:minutes?|mins?|hours?|days?|mornings?|times?))|[,.;]|$))(?! and forth)(?: over)?(?: it| them| that)?",
        r"(?:went|gone) again(?= (?:every|each))",
        r"(?:went|gone|ran|came) (?:around|over|through)(?: (?:it|them|that|the whole (?:thing|joint|seam|way)))?(?: all)? (?:again|twice|a second time|one more time|once more)",
        r"(?:did|do|ran|shot|stapled|taped|cut|made|laid|set|hung|rolled) (?:it|them|that|those|this one|that one|(?:the|that) (?:\w+ )?(?:side|end|joint|seam|back|top|bottom|left|right|one|bunch|strip|piece)) (?:all )?over(?: again)?(?! (?:the|it|them|a|to)\b)",
        r"(?:redid|redone|re-did|re-?(?:cut|stapled|taped|spaced|hung|made|worked|measured|shot|bent|ran|laid|set|marked))\b(?: (?:it|them|that|those|the whole thing|the \w+))?",
        r"(?:fixed|changed|corrected|tightened|straightened) (?:it|that|them|those)\b(?: up| in| out)?(?! with)",
        r"(?:pulled|yanked|ripped|tore|took|pried|peeled|backed|stripped|scraped) (?:it|them|that|those|all (?:of )?(?:it|that)|the (?:whole )?(?:lot|staples|tape|screws|tabs|strip|mess|thing))(?: all| back| right)* ?(?:off|out|apart|loose|up)?(?: again)?(?= ?(?:and|,|;|\.|so|then))",
        r"(?:filled|stitched|shot|added|put)(?: in)?(?: (?:one|another|some|more|extra|a few|staples))*(?: (?:in )?between)(?: (?:them|those|each|every one|each one))*",
        r"(?:doubled|tightened|closed) (?:it|them|that|those) up\b",
        # what he measured, where a bare measure follows: "I thought two, but I measured and it's three"
        r"(?:measured|checked)(?: (?:it|them|that|those))?(?: (?:again|after|with (?:a|the|my) \w+))?(?=,? (?:and |but |so )*(?:they're|they are|they were|it's|it is|it was|it's more like|that's|it came out|they came out|i got|it comes out)? ?(?:at |really |actually |all |more like |to )*(?:\d|one|two|three|four|five|six|eight|a half)(?![\w-]))",
        r"(?:put|laid|held|ran) (?:a|the|my) (?:ruler|rule|tape measure|measuring tape|stick|gauge) (?:on|to|up to|against|across) (?:it|them|that|those)",
        r"(?:the |my )?(?:ruler|tape measure|measuring tape)(?: (?:says|said|reads|shows|showed))",
        r"turns? out(?: that)?|turned out(?: that)?|(?:but|and) (?:it's|they're|it is|they are) (?:really|actually)",
    ),
    strips=r"(?:peel|pull|stripp?|scrap|tore|rip|ripp|yank|took|cut)(?:ed)? (?:(?:it|that|the (?:whole )?(?:lot|mess|thing|masking|cloth|cheap stuff|duct tape|tape)|all of (?:it|that)|everything|every (?:bit|inch)(?: of it)?)(?: (?:all|back|right))*(?: off| out| loose)?|off (?:it|that|the (?:\w+ )?(?:lot|tape|masking)))(?=[,;.]| (?:and|then|so)\b)",
    only_meant=r"(?:n't|\b(?:not|never|could|would|should|will|'ll|gonna|going to|have to|gotta|need to|needs to|got to|ought to|might|may|if|wish|when|before|until|tomorrow|later|nobody|somebody|he|she|they)\b)(?! (?:i|we) )",
    # a gap that was closed again
    anew=(
        r"\b(?:threw|tossed|scrapped|binned|trashed|junked|pitched|chucked|dumped|ditched|went|goes)\b.{0,24}\b(?:out|it|that|them|away|(?:dumpster|trash|bin|garbage|scrap)(?: \w+)?)\b.{0,40}\b(?:built|made|cut|did|folded|started|laid out|took|used|grabbed|got|opened)\b.{0,20}\b(?:fresh|new|another|over|dry (?:one|sheet|board|piece)|good (?:one|sheet|board|piece))\b",
        rf"{_DID}(?:cut|sawed|sliced|lopped|took|trimmed) (?:(?:about |just |maybe )?(?:that|the|it|all the|an?|[\w-]+)(?: [\w'-]+){{0,4}}? )?(?:off|out|away|back)\b(?! (?:of|the (?:tape|old tape)))[^?]{{0,70}}?\b(?:new|fresh|another|recut|re-cut|remade|spliced|like new|good as new|clean board)\b",
        rf"{_DID}(?:cut|sawed|sliced|lopped|trimmed) (?:(?:off|out|away|back) )?(?:that|(?:the|all the) (?:bad|crushed|torn|damaged|mashed|wet|ruined|busted|chewed up|chewed-up|dented|broken|ripped)) (?:end|part|piece|bit|section|corner|spot|stuff|side|edge|foot)(?: (?:off|out|away|back))?\b",
        rf"{_DID}(?:made|built|put on|put in|cut|spliced in|set in|glued in|folded) (?:it |me )?(?:an?|another|in a|on a) (?:new|fresh|good) (?:\w+ )?(?:end|one|piece|panel|section|side|corner|board|male|female|top|bottom)\b",
    ),
    records=(
        r"\b(?:regarding|about|as for|on|re)\b.{0,40}\b(?:recorded|logged|noted|reported|sent in|called in|turned in|entered|spoke of|told (?:you|him|her|them)(?: of| about)?|talked about)\b.{0,12}\b(?:this morning|earlier|before|yesterday|last (?:night|week)|today|a while (?:ago|back)|monday|tuesday|wednesday|thursday|friday|saturday)",
        r"\b(?:entry|note|report|recording|message|log|record)\b.{0,40}\b(?:for|on|about|of)\b.{0,40}\b(?:overstated|understated|(?:is|was|are|were) (?:wrong|off|a mistake|mistaken|not right|incorrect)|isn't right|wasn't right|(?:had|has|got) (?:it|that|the \w+) wrong|needs? (?:fixing|correcting|changing)|should (?:say|read|have said|have read))\b",
        r"\bi (?:said|told \w+|reported|logged|called in|sent in|put down|wrote down)\b.{0,40}\b(?:but )?(?:i was wrong|that's wrong|that was wrong|my mistake|i was off|i misspoke|i had it wrong)\b",
    ),
    closes=(
        _NOT_HERE + r"(?:(?:got|brought|worked) (?:it|that|them|the gap|the joint)(?: back| right| all)? (?:shut|tight|closed|together|in tight|(?:up )?tight|up (?=now|snug|flush|tight))(?: now)?|(?:closed|pulled|drew|squeezed|snugged|pushed|shoved|tapped|knocked) (?:it|that|them|the gap|the joint)(?! (?:apart|open|off|down))(?![^.]*\bstill (?:an?|half|three|\d))(?: back| right| all)? ?(?:up|shut|tight|closed|together|out|up tight|in tight)?(?: now)?(?! with)|closed (?:up )?(?:now|tight))",
        _NOT_HERE + r"(?:(?:it's |is |all |nice and |good and )?(?:tight|closed|snug|gone) now|now (?:it's|it is|that's) (?:all |nice and |good and )?(?:tight|closed|snug|gone)|(?:it's|it is) (?:all |nice and |good and )?(?:tight|closed up|gone)(?: now)?)",
        _NOT_HERE + r"(?:now |and |it |she |then |so )+(?:all )?(?:closes|fits|goes together|went together|pulls up|pulled up|butts up|comes together|came together|closed up|mates)(?: (?:up|real|nice|nice and|good and|all|dead))* (?:tight|snug|flush|good|clean|perfect)\b",
    ),
    # how little of it, said before the act
    fractions=(
        r"(?<!and a )(?<!and )(?<!& a )(?<!& )(?:half|most|some|part|parts|bits|less than half|more than half|three quarters|two thirds|a third|a quarter|one third|(?:fifty|sixty|seventy|eighty|ninety|\d\d) percent)(?: of)? (?:the|it|'em|them|my|that|those|its)(?:'s|s)?",
    ),
    degrees=(
        r"(?:a few|a couple(?: of)?|some|tacked|little) (?:little |small )*(?:pieces|bits|dabs|strips|spots) of",
        r"(?<!more than )(?:half ?way|part ?way|part of the way|mid-?way|half the way|(?:one|two|three) sides?|(?:a |one )(?:quarter|third) of the way|two thirds of the way|most of the way)(?: (?:a?round|through|along|over|there|in|into it|up|down|across|done|it))* with(?: the| my| that)?",
        r"(?:just |only )?(?:started|began)|(?:in the middle of|halfway through|half way through|partway through|part way through)",
        r"(?:(?<!and a )(?<!& a )half|partly|partially|(?<!and )(?<!& )three quarters|(?<!and )(?<!& )two thirds|(?:fifty|sixty|seventy|eighty|ninety|\d\d) percent|far from|anything but|nowhere near|hardly|barely|not all|not completely|not fully|not entirely|not quite)",
    ),
    # the same, as a thought of its own behind the act
    alone=(
        rf"^(?!but (?:that|this) one (?:i|we|is|has|got|it)\b)(?:except|all but|every side but|all sides but|but|bar|save|apart from|aside from|other than|besides|short of)(?: for)? (?:the|that|my) (?:last |back |far |other |whole )?(?:one|{_SPOT}) (?:by|against|up against|at|under|behind|near|next to|towards?|facing|along|over|above|below|where|on|in|that's|that is|i|we) .{{2,40}}$",
        r"^(?:but |well |and )*(?:except|apart from|aside from|other than|save|bar|but)(?: for)?(?: right| just| over)? (?:where|wherever|under|behind|around) (?:the|that|my|it|i|we|they|you|there's|there)\b(?! (?:says?|said)\b)[^.;]{2,50}$",
        r"^(?:but |well |and |only )*(?:(?:there's|there is|it's got|got|left|has) )?(?:a |one |about |maybe |an? )*(?:good |long |little |short |whole )*(?:stretch|spot|place|section|piece|run|strip|corner|seam|side|foot|(?:\w+ )?(?:feet|inches))(?: or so| or two)?(?: (?:on|at|in|along|down|near|of|under) (?:the |it|this )?(?:\w+ )?(?:\w+)?)?(?: that's| that has| that's got| is| has| got)?(?: with)? (?:nothing|none|not a thing|no tape|no staples) (?:in|on|over|holding) (?:it|there|them)$",
        r"^(?:but |well |or |and |just |only |at least )*(?:most|some|part|half|parts|bits|nearly all|almost all|not quite all|not all|just about all|about half|maybe half|nearly|almost) of (?:it|them|that|'em)(?: anyway| anyways| at least| so far| though)?$",
        r"^(?:but |well |or |and )*(?:mostly|partly|partially|partway|part way|halfway|half way|for the most part|in spots|in places|not (?:completely|entirely|fully|quite|all the way(?: around| down| in)?|everywhere|all around|perfect))(?: anyway| though| at least)?$",
        r"^(?:but |well |or |and |at least |just )*(?:as (?:far|much) as|where|wherever|what|whatever|everything) (?:i|we) (?:could|can)(?: reach| get| do)?(?: at| to| into)?(?: it| there)?(?: anyway)?$",
        rf"^(?:but |well |and )*(?:just|only)(?: on| at)?(?: the)? (?:{_SPOT}|top and bottom)(?: side| half| part)?(?: though| so far)?$",
        r"^(?:but |well |and )*(?:it's|they're|i'm|we're|that's|it is|they are|it isn't|i am) (?:not |still not )?(?:quite |all )?(?:finished|done|complete|all done|finished up)(?: yet| with it| though)?$(?<!it's done)(?<!it's finished)(?<!they're done)(?<!i'm done)(?<!we're done)(?<!that's done)(?<!it is done)(?<!all done)(?<!complete)",
        r"^(?:but |well |and |only |just )*(?:one|two|three) (?:sides?|of the sides|of the four)(?: of it| anyway| so far)*$",
        rf"^give or take(?: the| a)? {_SPOT}$",
    ),
    left_to_do=(
        rf"^(?:but |and |i |we |still |just |only )*(?:got|(?:gotta|got to|have to|need to) (?:do|get|finish))(?: the| that| one| my)?(?: whole| back| bottom| top| left| right| other| last)* (?:{_SPOT}|{_PART}) (?:when|once|as soon as|after|if) .*$",
        rf"^(?:but |and |though |just |only )*(?:the |that |one )?(?:whole |back |bottom |top |left |right |other |last )*(?:{_SPOT}|{_PART})(?: still| yet)?(?: needs it| needs doing| needs (?:some|more)| to go| to do| left to do| to be done| has to be done| needs to be done)(?: yet| still| tomorrow| later)?$",
        rf"^(?:but |and |i |we |still |i've |we've |i'm |just |only )*(?:(?<=still )(?:got|have|had)|(?:gotta|got to|have to|need to) (?:do|get|finish|go back for|go back and (?:do|get)))(?: the| that| one| my)?(?: whole| back| bottom| top| left| right| other| last)* (?:{_SPOT}|{_PART})(?: to (?:do over|do again|redo|do|go|finish|fix)| left(?: to do)?| yet| later| tomorrow)*$",
        rf"^(?:but |and |i |we |i've |we've |i'm |just |only )*(?:got|have|had)(?: the| that| one| my)?(?: whole| back| bottom| top| left| right| other| last)* (?:{_SPOT}|{_PART})(?: to (?:do over|do again|redo|do|go|finish|fix)| left(?: to do)?| yet| later| tomorrow)+$",
        rf"^(?:but |and |then )*(?:i'll|i will|we'll|gonna|i'm gonna|i'm going to) (?:get|do|finish|catch|hit|go back for|come back for|come back and get|go back and get)(?: the| that| my)?(?: whole| back| bottom| top| left| right| other| last)* (?:{_SPOT}|{_PART})(?: later| tomorrow| after lunch| after| in a bit| when .*)?$",
    ),
    excepts=(
        rf"(?:but |and )*(?:the |my |that )?(?:whole |very |far |back |bottom |top |left |right |inside |outside |lower |upper |other |last )*(?:top and bottom|bottom and top|{_SPOT}|{_PART})(?:'s)?(?: side| panel| edge)? ?(?:isn't|aren't|is not|are not|not|ain't|hasn't been|haven't been|wasn't|weren't|is still not|still isn't)(?: yet| done| either| though| so good)?$",
        rf"(?:but |and |only )?not (?:on |at |in |so much )?(?:the|my|that|one|two)(?: (?:whole|very|far|near|back|bottom|top|left|right|inside|outside|inner|outer|lower|upper|other|last|first|fourth|tight|male|female|wall|long))* (?:{_SPOT}|back|{_PART})(?: (?:by|against|near|next to|toward) the \w+)?$",
        r"(?:(?:everything|everywhere|all|all around|all over|all the way around|every side|all sides|all four sides|all four|the whole thing|the whole way|all of it)(?:'s| is| was)?(?: \w+)? (?:but|except)(?: for)?|except|except for|but for|all but|but|minus|bar)(?: maybe| just| about| like| the| a| last)* (?:\w+|\d+) (?:inch|inches|foot|feet)",
        rf"(?:(?:everything|everywhere|all|all around|all over|all the way around|every side|all sides|all four sides|all four|the whole thing|the whole way|all of it) (?:but|except)|(?:with )?(?:the |one |a )*(?:single )?exception(?: being| is| of)?:?|except|except for|but for|bar|save|save for|minus|short of|other than|apart from|aside from|all but|everything but|but)(?: for)?(?: maybe| just| on| at| in| where)*(?: the| a| an| that| my| one)*"
        rf" (?:(?:whole |very |far |back |bottom |top |left |right |inside |outside |lower |upper |other |last |tight )*(?:{_SPOT}|{_PART})|{_SOME})\b",
    ),
    on_the_way=r"(?:i |we |then |at first |back |found them and |found it and |(?:opened|cut|pulled|took|busted|popped) (?:it|her|that one|the \w+) (?:back |all )?(?:up|open|apart|down)(?: again)? )*(?:and )?(?:i |we )?",
    tab_word="tab",
    of_mending=frozenset("second third fourth strip try round stuck held holding holds sticks clean on went fine good tight flat new fresh more extra missing proper properly better longer with before after lunch break morning this afternoon later time hammer pliers knife squeegee roll gun stapler same once too lot every finished fixed stapled taped rubbed bent pressed shot filled added hit caught finish belong belongs ones listed rated foil real whole stuff material gear put one two an inch inches apart every each center centers side way".split()),
    # what mends only what it makes; the first that matches
    mends_only=(
        (r"(?:taped|stapled) (?:up )?(?:the )?(?:rest|others?|remaining|missing)", ("taped", "stapled", "tabs_bent", "cross_tabs", "gap")),
        (r"(?:got (?:it|that|them|'em) (?:all )?)?(?:re-?)?stapled", ("stapled", "gap")), (r"(?:got (?:it|that|them|'em) (?:all )?)?(?:re-?)?taped", ("taped", "damage_repaired", "gap")),
        (r"rubbed (?:\w+ )+(?:back|flat|again)", ("rubbed_down", "taped")), (r"(?:got (?:it|that|them|'em) (?:all )?)?rubbed", ("rubbed_down",)),
    ),
    # a fault that was set right
    mended=(
        r"(?:went|gone|ran|shot)(?: back)? (?:over|down|along|around|through) (?:it|them|the (?:seam|flap|joint|whole thing))(?: all| again)* (?:at|every|with|on)\b.*|(?:shot|stapled|did) (?:it|them|that)(?: all)* (?:again|over|anew)\b.*",
        r"(?:start(?:ed)? (?:all )?over|(?:did|taped|stapled) it (?:all )?(?:over|again))\b(?! (?:tomorrow|later|monday|next))|(?:the )?(?:second|third|fourth|next|this|last) (?:go|try|time|attempt|round|strip|piece|set|one)(?: a?round)?,? ?(?:'s |has |finally )*(?:it's|it is|it|i|i got|went|is|stuck|held|holds|holding|sticks|took|came(?! (?:off|loose|up|out|apart|away))|stayed)\b(?! (?:came|peeled|fell|popped|off|came off|peeled off|wouldn't|didn't|won't|isn't|not|never))",
        r"(?:rubbed|worked|pressed|smoothed|ironed|slit|popped|squeegeed)(?: (?:it|them|that|those|the air|right|all|back))+ (?:out|flat|down|and)\b.*",
        r"(?:put|set|slid|slipped|dropped|popped|screwed|pinned|got) (?:it|them|'em|those|all of them|the lot)(?: all| right)* back (?:in|on|where)|(?:they're|it's|they are|it is|those are|all of (?:it|them) is)(?: all| right| now| safely)* back (?:in|on|where (?:they|it)|up)|went back(?: and|,| to| over)?|(?:it |they )?(?:went|goes|came) (?:right |straight |all )*(?:back )?(?:on|in|up) again|(?:got|did|redid|fixed|caught|fix|finished|hit) (?:it|them|that|those|'em|the rest|both|the others?)(?: (?:over|again|now|too|later|after|up|all|back))*|"
        r"(?:ran|laid|put|stuck|slapped|rolled|used|cut)(?: down| on| in)? (?:a |some |one )?(?:new|fresh|another) (?:piece|strip|length|run|bit|tape|one)\b|"
        r"(?:press|push|stuck|smooth|tuck|rubb|work|slap|tack)(?:ed)? (?:it|them|that|those|'em) (?:back )?(?:down|in|on|flat|back)|put (?:it|them|those|that|another|a new|new|more|'em|one|two)(?: (?:more|another|piece|pieces|strip|bit|one|ones|staples?|tape|vanes?|set|right|all|good|new|fresh|straight|of|them|those|inch|three|four|five|six))* (?:in|on|back|there|down|over|it)|"
        r"(?:(?:thought better of it|changed my mind|came back|turned around|had second thoughts)(?: and|,)? )?(?:taped|stapled|bent|rubbed|folded|did|got|finished|caught|added|filled in) (?:up )?(?:the (?:rest|others?|other (?:one|half|two|three|four|side|ones|end|corner|six)|remaining \w+|missing ones?))\b|"
        r"(?:bent|folded|knocked|pounded|hammered|pushed) (?:it|them|those|that|'em|both|the tabs)(?: all| back| both| right| each)* (?:down|over|in|flat|tight)|(?:re-?taped|re-?stapled|re-?did|redone|replaced|tightened|added|snugged)\b|(?:fixed|reset|straightened|tightened|re-?seated|replaced|stuck) the (?:vanes?|tabs?|tape|staples?|panel|corner|seam|spot|edge)\b|taped (?:it|that|them|over|right over|again)|stapled (?:it|that|them|again)|"
        r"(?:it's |they're |it is |they are |that's |everything's )?(?:all )?(?:good|fine|tight|holding|down|solid|okay|ok|flat|fixed|set) now|(?:now|it) (?:it's|is|they're|are|holds) (?:good|fine|tight|holding|down|solid|okay|ok|flat|fixed|all|on|in)|took care of (?:it|them|that)|that's (?:fixed|done|taken care of)|(?:went|started over|went back over it|did it over|redid it) (?:with|in)\b.*(?:tape|181 ?a|inch|mastic)",
    ),
    bare=(
        r"(?:but |and )?none (?:in|on) (?:number )?(?:\d+|(?:(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|oh|\w+teen|\w+ty)[- ]?)+)",
        r"(?:none|nothing|not (?:a|one) (?:strip|piece|inch|stitch|scrap|lick|bit|single one)(?: of it)?(?: left)?)(?: of it)?(?: left)? on (?:it|this one|that one|there|here|any of it)(?: now| yet| at all)?|(?:it's|this one's|it is|this one is|that one's|is)? ?(?:still )?(?:bare|naked)(?: as \\w+)?",
    ),
    thought=(
        r"(?:you|anybody|anyone|one|a man|a person|folks|people)(?:'d| would| might| could| may)(?: all)? (?:think|swear|say|guess|bet|figure|believe|assume|be forgiven for thinking)\b",
        r"i (?:want|wanted|wanna|'d like|would like|would love)(?: to)? say\b", r"(?:i |we )?(?:thought(?! (?:i'd|i would|you should) (?:tell|let|say|mention|know))|figured(?! (?:i'd|i would) (?:tell|let|say))|could've sworn|could have sworn|would've sworn|would have sworn|swore|would've bet|was sure|said|told (?:you|them|him|everybody)|had it down as|called it|assumed)\b",
    ),
    said_so=(r"(?:it|they|there|this one|mine|i|we|these|that one|she|everything|that)(?: actually| just)?",),
    says_done=(r"(?:it's|it is|that's|that is|she's|{who} is|{who}'s)(?: all)? (?:done|finished)",),
    affirms=(
        r"(?:and )?now (?:it|the panel|she) (?:sits|seats|fits|drops in|drops right in|goes in|lies flat|lays flat)(?: (?:good|fine|nice|right|flat|tight|in|down|all the way))*",
        r"(?:{who} )?(?:is|are|did|does|do|has|have|'s|'re)(?: (?:it|them))?(?: (?:now|though|already|in|on|there|in there|on there|all|done|today|too|after all|anyway|just now|alright|all right|indeed))*",
        r"(?:it's|they're|that's|it is|they are|now it's|now they're|i've|we've)(?: (?:all|already|both|now|still))?(?: (?:in|on|there|in there|on there|done|now|in place|got (?:it|them)|done it|did it))+(?: (?:now|already|today|just now))?",
    ),
    denies=(
        r"(?:{who} )?(?:isn't|aren't|wasn't|weren't|didn't|doesn't|don't|hasn't been|haven't been|hasn't|haven't|ain't|is not|are not|was not|did not|does not|do not|has not|have not|never did|never was|'s not|'re not)"
        r"(?: (?:really|quite|now|actually|in|on|there|done|at all|any|one|it|them|have (?:any|one|it|them)|get (?:any|one|it|them|done)|got (?:any|one)|do (?:it|that)|be|all the way|though|after all))*",
        r"(?:it's|they're|it is|they are) not(?: (?:really|quite|now|actually|in|on|there|done|at all|though|all the way))*",
        r"not (?:really|quite|exactly|at all|all the way|all of it|everywhere)|(?:it |they |that one |this one )?(?:went|got put|goes|came|got) (?:together|in|up|out|on)? ?without(?: (?:it|them|any|one))?|without(?: (?:any|it|them))?",
    ),
    out_again=(r"(?:had to |have to |went and )?(?:take|took|pull|pulled|yank|yanked|pop|popped) (?:it|them|'em|those|all of them) (?:to get|so|because|'?cause|when|for)\b.*", r"(?:took|pulled|yanked|ripped|popped|take|pull|taking|pulling) (?:it|them|'em|those|that|all of (?:it|them)|both)(?: back| right| all| straight)* (?:out|off|down)(?! (?:me|us|him|my hands)\b)(?: again| after| later| of there)*",),
    in_after_all=(r"(?<!(?<!had )(?<!back )to )(?<!let me )(?<!let us )(?<!lets )(?<!let's )(?<!should )(?<!might )(?<!could )(?<!would )(?<!must )(?<!may )(?:put|got|installed|slid|set|stuck) (?:it|them|'em|those|both|some|the things) (?:back |right )?(?:in|on)(?: after all| now| anyway| later| too)?",),
    leads=r"(?:(?:i'm|i am|we're) (?:looking|standing|staring) (?:right )?(?:at|by|next to|in front of) (?:it|this one)(?: right now| now)? and |i (?:checked|looked|went and looked|looked at it|just looked|just checked)(?: it)? and |but |found (?:it|them|some|one) |and |so |well |oh |wait |yes |yeah |yep |no |nope |nah |actually |now |then |though |sorry |it turns out |turns out |in fact |you know |except |only |just )*",
    # work that waits: {act} is one of `waiting`
    waiting=(
        (r"tape|taping", "taped"), (r"staples|stapling", "stapled"), (r"(?:turning )?vanes", "vanes"), (r"rub(?:bing)?(?: it)?(?: down| out)?|rub-?downs?", "rubbed_down"), (r"(?:cross )?tabs", "cross_tabs"),
    ),
    waits=(
        r"(?:the |my )?(?:{act})(?:'s| is| are| will| gets| get)?(?: just| still)?(?: be| come| comes| coming| go| goes| going)?(?: in| on)? (?:next|later|later on|to come|to follow|to go on|to go in|after lunch|after break|afterwards?|(?:on |next |come )?(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)(?: morning)?|tonight|next week|first thing(?: tomorrow| monday)?|tomorrow|yet to come|still to come|in the morning|this afternoon|last)(?: on| in)?(?: yet)?",
        r"(?:the |my )?(?:{act})(?: is|'s| are)? (?:all|the only thing|the last thing) (?:that's |that is |i have |i've got |we have )?left(?: to do)?",
        r"(?:(?:the |my )?(?:only |one |last |big |main )*)?things? (?:that's |that is |i have |i've got )?(?:left|missing|lacking)(?: to do)?(?: (?:on|in|from|with) [\w -]+?)?(?: is| are|'s) (?:the )?(?:{act})|(?:all|only thing) it (?:lacks|needs|wants)(?: is|'s)? (?:the )?(?:{act})",
        r"(?:i |we |i'm |we're )?(?:left|leaving|saved|saving|holding|save|kept) (?:the )?(?:{act}) (?:for|until|till) (?:later|last|tomorrow|after|the|monday|lunch|this|\w+ shift).*",
        r"(?:the |my )?(?:{act}) (?:i|we)(?:'m|'re|'ve| had to| have to| will)? ?(?:left|leaving|saved|saving|put off|putting off|kept|pushed|bumped|leave|save|never got to|didn't get to|didn't get around to|ran out of (?:time|day) for)\b(?! (?:the|a|on|in place|alone))(?: (?:for|until|till|to|it|that|undone|off)\b.*)?",
        r"(?:but |and |then )?(?:the |my |its )?(?:{act})(?:,| that)? (?:i'll|i will|we'll|we will|i'm gonna|i'm going to|we're gonna|i gotta|i've gotta|i have to|i've got to|i need to|i still have to|i still need to|we still have to)(?: have to| need to| still)?"
        r" (?:do|put|get|get to|finish|add|install|hit|catch|lay|run|slap|throw|stick|set|tackle|wrap up|take care|come back|hang|save|leave|knock out)\b(?! (?:the|a) (?:next|other)).*",
        r"(?:the |my )?(?:{act})(?:'s| is| are) (?:for|on|due|set for|scheduled for|down for) (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|later|tonight|order|the (?:next|morning|night|other) (?:shift|crew)|next \w+|after \w+)\b.*",
        r"(?:now |then |so )?(?:on|moving on|going on|moving|ready) (?:to|for) (?:the )?(?:{act})",
        r"(?:the )?(?:{act}) (?:can wait|has to wait|will have to wait|waits|is waiting)\b.*",
        r"(?!rub(?: it)?\b)(?:the |my )?(?:{act})(?: goes| go| comes| come| gets| get| can| will| could| should| has to| have to)*(?: go| come| wait| be)?(?: in| on| up)? (?:when|once|as soon as|whenever) (?:i|we|it|it's|they|they're|he|she|somebody|the|that|this|my|our)\b(?! (?:was|were|had|did)\b)(?!.*\b(?:was|were|had|did|came|went|(?<!'ve )(?<!have )got|(?<!'s )(?<!is )(?<!are )(?<!gets )\w{2,}ed)\b).*",
    ),
    # what a move had to do with
    room=(
        r"(?:only|just|all) (?:had|have|has|got|gets?|gave|left)|had (?:only|just)|all (?:the )?(?:room|space|length) (?:that )?(?:i|we|there)|(?:gave|let|left|allowed) (?:me|us)(?: have)?(?: just| only)?|all (?:that )?(?:i|we) (?:could get|got|had|have)|"
        r"(?:squeez|squish|cramm?|crowd|jamm|pinch)\w*(?: it| that| them| all| the| \w+ inch(?:es)?| \w+){0,4} (?:in|into|inside|within)|to (?:get|do|make|pull|bring) (?:there|it|that|them)$|(?:it's |it is )?all (?:happening|happens|over) (?:in|within|inside)|in the (?:space|span|course|length|first|last)(?: of)?|all (?:that )?there (?:was|is|were)|as far back as|as much as (?:i|we|there)|(?:inches?|foot|feet) of (?:run|room|space|length|slope|taper)|i (?:only )?(?:did|made|got|brought|took) it in|"
        r"(?:only )?(?:had |got )?(?<!no )(?<!not enough )(?<!enough )(?:room|space) for|(?:inside of|within|inside|in just|in only)(?: just| only)? \w+|to do it in|to work with|for it$|to make it in|(?:does|did|do) it in",
    ),
    # how it looks to another, which the words behind it set against how it is
    seems=(
        r"(?:(?:from|by|going by|judging by|in|looking at) (?:the|that|this|my) (?:picture|photo|pic|shot|outside|top|floor|ground|looks of it)(?: here)? )?(?:you|anybody|anyone|somebody|someone|one|people|a guy|most people|folks|he|she|they|the inspector)(?:'d| would| might| may| could| will|'ll)(?: \w+)? (?:think|swear|say|guess|figure|believe|bet|assume|expect|suppose|take it|conclude)\b",
        r"(?:it|that|this|she|the \w+|straight \d+)? ?(?:looks?|seems?|sounds?|appears?|might look|may look|may seem|might seem)(?: there| to you| from here| in (?:the|that) \w+)? (?:like|as if|as though)\b",
    ),
    # what he was after and did not get or use
    wishes=(
        r"(?:i'd|i would|we'd) (?:\w+ )?(?:love|like) to (?:be able to )?(?:say|tell you|report|claim)\b",
        r"(?:the|that) (?:one|stuff|tape|piece|roll|junk) (?:before (?:it|this|that|this one|that one)|that was on (?:it|there)(?: before| first)?|i had on (?:it|there)(?: before| first)?) (?:was|had)\b.*\b(?:tore|pulled|ripped|took|peeled|threw|tossed|scrapped|trashed)\b.*",
        r"(?:i|we) (?:was|were) (?:after|hoping for|shooting for|looking for|going for|aiming for|thinking of|thinking about|gonna use|going to use|planning on)",
        r"(?:i|we)(?:'d|'d have| had)? (?:wanted|would've liked|would have liked|liked|meant to use|planned on|thought about|considered|figured on|thought of)\b",
        r"(?:i|we) (?:had|brought|pulled|got) [\w ]+? (?:out for|in mind|in hand|lined up|ready for)\b|(?:was|were) going to (?:use|go with|put|be)\b|(?:almost|nearly) (?:used|went with|put)\b",
        r"(?:(?:i|we)(?:'d| had)? )?(?:wanted|meant to have|meant to get|hoped for|hoped to have|hoped to get|asked for|was supposed to have|were supposed to have|was meant to have|aimed for|(?:almost|nearly|darn near|about) (?:had|got|made|put|cut|left|faced|turned|set)) (?:the |that |my |its )?(?:low |shiplap )?(?:step|lip|side of the lap|groove|rabbet)\b",
    ),
    cuts_out=r"\bhole(?:'s| is| was)(?: all)? (?:cut|laid out|open)\b|\b(?:cut|cutting|eyeballed|laid out|marked|scribed|drew|measured|traced|sawed)(?: out)? (?:the|my|a|that|its) (?:\w+ )?hole\b",
    goes_on=r"(?:kept|keep) (?:right )?(?:on )?(?:going|working)|carried on|kept at it|(?:walked|moved|went) on",
    mends=(
        r"(?:i|we) (?:put|use|used|apply|applied|cover|covered with|close|closed with|did) (?:the |some )?mastic(?: (?:and|with) (?:the )?(?:glass )?(?:fabric|mesh|cloth|gauze|net))?(?=[.,;]|$)",
        r"(?:already|just|is|it's|now|only|was|i put it|i closed it) (?:closed |covered |only |just )*with (?:a |the |some |only |piece of )*tape(?=[.,;]|$)",
        rf"(?:a |one |another |two )?(?:little |big |good |small |wide |single |quick )*(?:piece|strip|patch|bit|square|hunk|length|swatch|chunk|scrap|band|layer) of {_ANY_TAPE}(?: (?:on|over|across|onto|to|for) (?:it|that|them|this))?|tape patch(?:ed)?",
        r"(?:taped|patched|covered|closed|sealed|bridged|fixed|mended|repaired|dressed|doctored|stuck|glued|pasted|tacked|pinned|laid|pressed|flattened)(?: (?:it|that|them|this|her))?(?: (?:up|over|shut|back|down|right))* (?:with|w/|w|using|by) (?:some |a |the |more )?(?:\w+ )?tape",
        r"(?:wrapped|bandaged|band-aided|splinted|bound|strapped|held|pulled)(?: (?:it|that))?(?: (?:up|back|down|together|in place|shut))* (?:with|in|by|using) (?:some |a |the )?(?:\w+ )?tape",
        r"(?:the )?tape(?:'s| is)? (?:just |all that's |what's )?(?:holds|holding|held|keeps|keeping) (?:it|that)(?: (?:together|down|shut|up|in place|closed))?",
        r"taped (?:over |up |across )?(?:the|that|this) (?:little |big |small )?(?:slice|cut|nick|scrape|scratch|slash|crease|ding|spot|place)\b(?! (?:sides?|ends?))|taped (?:right |straight )?(?:across|along|around) (?:it|that)|(?:threw|slapped|stuck)(?: some| just| a little)* tape (?:at (?:it|that)|(?:right |straight )?over (?:top|the top))",
        r"taped (?:(?:it|that|this|them) )?(?:right )?over(?: (?:it|that|this|them))?(?! (?:the )?(?:seam|joint|staples|whole|all))",
        r"(?:smeared|slathered|brushed|buttered|painted|smoothed|troweled|globbed|put|daubed|dabbed|spread|worked|slopped|gooped|rolled|laid|got|packed)(?: (?:some|a little|a bit of|more|a coat of|a dab of|a gob of))* mastic(?: and (?:glass |fiberglass )?(?:fabric|mesh|cloth|gauze))? (?:on|over|across|into|around|in) (?:it|that|them|the (?:\w+ )?(?:spot|place|area|tear|hole|gash|rip|cut|slit|gouge|split|puncture|damage|patch|corner|bubble|blister|peel)s?)",
        rf"^[^.!?]{{0,80}}?\b(?:it|that|she|the (?:tear|hole|rip|spot|gash|cut|slit)) (?:just |only )?(?:got|gets) (?:some |a little |a bit of |just )*(?:{_ANY_TAPE}|(?:mastic|mud)(?: and (?:glass )?(?:fabric|cloth|mesh))?|(?:glass )?(?:fabric|cloth|mesh) and mastic)(?! (?:all|on (?:all|the seams?|both|every|four|three)|around|every|too|also|at the (?:seam|joint)))",
        rf"used (?:just |only |some |plain |regular |the |my |a bit of |a strip of )*{_ANY_TAPE} (?:for|as|on|over) (?:the |a |my )?(?:patch|fix|mend|repair|it|that)\b|{_ANY_TAPE}(?:'s| is| was)? (?:all|what) (?:that |it got|it has|i|we)(?: (?:used|did|had|put|gave it|got|ran))?(?: (?:on|for|over|across) (?:it|that|there))?(?=[.,;]| and | but |$)|(?:put|stuck|threw|slapped|ran|laid|got|smacked)(?: some| a little| the| just| a strip of| a piece of)* {_ANY_TAPE} (?:over|across)(?=[.,;]| and |$)",
        r"(?:mastic'd|masticked|masticed|mastic'ed|mudded|buttered) (?:it|that|this|over it|right over)|(?:mastic|mud) (?:over|on|across) (?:it|that|the (?:\w+ )?(?:spot|place|area|tear|hole|gash|rip|slit|gouge|split|puncture)s?)",
        r"(?:(?:put|stuck|threw|slapped|got|smeared|brushed|used) )?(?:some |a little |more )*(?:mastic|mud)(?: and (?:glass |fiberglass )?(?:fabric|mesh|scrim|cloth|gauze))? (?:on|over|across|into) (?:it|that|them|the (?:tear|hole|gash|rip|spot|cut|slit|gouge|split|puncture)s?)|(?:glass |fiberglass )?(?:fabric|mesh|cloth|gauze) and mastic (?:on|over) (?:it|that)",
        rf"(?:(?:put|stuck|threw|slapped|ran|laid|pressed|got|smacked|stretched|used|just) )?(?:a (?:little )?(?:piece|strip|patch|bit|square) of |some |more |foil |pressure )*{_ANY_TAPE} (?:on|over|across|onto|along) (?:it|that|them|the (?:bad |soft |crushed |broken )?(?:tear|hole|gash|rip|spot|cut|slit|gouge|split|puncture|dent|bubble|crack|crease|break|slice|scrape|corner)s?)",
    ),
    on_damage=(r"[^.;,]{0,24}?(?:taped|taping)(?: (?:up|over|across|shut|closed|back))*(?: (?:the|that|this|my|its|a|both|all|those|them))*(?: (?:little|big|small|long|bad|old|other|one))*" + _MEASURED,
               r"[^.;,]{0,24}?\b(?:tape|foil|181a-?p)(?: (?:right|straight|just))? (?:over|on|across|onto|around|round)(?: top of)?(?: (?:the|that|this|my|its|a|both|all|those))*(?: (?:little|big|small|long|bad|old|other|one))*" + _MEASURED),
    tapes_it=(r"^(?:,? (?:in|inch|inches|long|wide|across|on|the|top|bottom|side|left|right|an?|and|half|quarter|quarters|eighths?|one|two|three|four|five|six|about|maybe|roughly|round|over|[\d/½¼¾\"-]+))*,? (?:and |then |just |got |i )*taped(?: up| over| shut| closed| down| across)?\W*$", r"^[^.!?]{0,60}?\b(?:taped|tape) (?:it|that|this|them)(?: (?:over|up|shut|back|down|closed|good|real good))*(?! (?:all|around|off|on|both|four|every|and stap|tight|every))",
              r"^[^.!?;]{0,80}[.;,!] ?(?:and |but |so |well )*(?:i |we |i've |we've )?(?:just |still |really )*(?:didn't|never|haven't|did not|have not|couldn't|wasn't able to|didn't get to|forgot to)(?: \w+)? tap(?:e|ed) (?:over )?(?:it|that|them)(?: (?:over|up|shut|closed))?(?! (?:all|around|off|on|both|four|every))\b",
              r"^[^.!?;]{0,80}[.;,!] ?(?:and |but |so )*(?:i |we )?(?:just )?left (?:it|that|them) (?:untaped|un-taped|with no tape|without tape|without any tape)\b"),
    # words about an act that say it was not done
    hollow=(
        r"\b(?:lie|lied|fib|bluff|kid you|cheat|stretch the truth|tell a tale)(?: to you| to him| to them)? (?:and|by|when i) (?:say|said|saying|tell you|telling you|told you|claim|claiming|claimed|write|put down|swear|mark|log|report)\b",
        r"\b(?:could|can|might|could've|could have)(?: just| always| easily)? (?:pretend|pretended|make believe|make out|made out|act like|acted like|fool you into thinking)\b",
        r"\bif (?:i|we)(?:'d| had)(?: ever| really| actually)?(?= .*\b(?:i'd|we'd|i would|you'd) (?:say|tell|have (?:said|told)|let you know|know|be (?:done|home|finished|gone)))",
        r"(?:i'd|i would|we'd|i'll) be (?:lying|fibbing|kidding|a liar|making it up) (?:if|to say)(?: i| we)?(?: said| told you| say| claimed)?",
        r"(?:i |we )?(?:can't|cannot|couldn't|won't|wouldn't) (?:say|claim|swear|tell you) (?:that )?(?:i|we|it's|it is|they're|it was|it got)\b", r"(?:i )?wish (?:i could|i can|we could) (?:say|tell you)", r"(?:i'd|i would|we'd|i'll) (?:\w+ )?(?:love|like|give (?:\w+ )+|kill|want)(?: (?:nothing better than|to be able))* to (?:say|tell you|report|claim|swear)\b",
        r"(?:it'd|it would|would|'d) (?:be|look|make|work|hold|pass)\b.*\b(?:if|with) (?:there (?:were|was)|it had|it was|i had|it's got|it got|we had|somebody had|someone had)",
    ),
    # what he said before and now says otherwise
    takes_it_back=r"(?<![a-z])(?:(?:scratch|strike|erase|delete|forget|scrap|cancel|ignore|disregard) (?:that|it|all that|that last (?:bit|part))|(?:take|took) (?:that|it|this) back|cross (?:that|it) (?:out|off)|or rather|correction|i lied|i'm lying|i misspoke|forget i said|my mistake|that's wrong|i was wrong|i'm wrong|i was mistaken)(?![a-z])",
    turns_to_no=r"(?:(?:no|but|well|so|it's|to)(?![a-z])[, ]*)*(?:(?:it|that|this|they|i|we|she|there|that one|this one)(?:'s| is| was| are| had| have)? )?(?:\w+n't|not|never|no|none|nothing|nope|meant to|supposed to|was (?:going|meant|about) to|only (?:meant|planned|wanted) to|forgot)(?![a-z])",
    did_it_not=r"(?:i|we) (?:never|didn't|did not|haven't|have not|hadn't)(?: (?:even|ever|really|actually|yet))* \w+(?: (?:it|that|them|one))?(?: (?:out|off|down|in|on|up|away|at all|yet|back))*",
    only_so_many=r"(?<!\w)(?:only|just) the (?:(?P<first>first)|last)(?: (?P<n>one|two|three|four|[1-4]))?(?: (?:of them|ones?))?(?!\w)(?! (?:sides?|seams?|corners?|foot|feet|inch|inches|half|few|staples?|bit|part|strip))",
    so_many=("one|1", "two|2", "three|3", "four|4"),
    others_of_them=r"(?:and |but |so )*(?:all )?(?:of )?(?:the (?:others?|rest|remaining|remainder)(?: (?:two|three|four|five|ones|pieces|of (?:them|'em)|\d))*)",
    formerly=(r"(?:i|we)(?:'d| had)? (?:said|told (?:you|them|him)|gave (?:you|them)|called (?:it|that|it in|in)|sent (?:it )?in|put (?:it )?down|wrote (?:it )?down|had it (?:down )?as|reported)\b", r"not (?:the|what) [\w ]*(?:i|we) (?:called in|said|told you|sent in|gave you)"),
    earlier=r"(?:from|i did|i made|i sent(?: in)?|i told you about|i called in|we did|i logged|i reported|i recorded|i turned in|i gave you|i talked about|i built|we logged|we built|i spoke of) (?:this morning|earlier(?: today)?|before|yesterday|last night|the other day|monday|tuesday|wednesday|thursday|friday|last week|before lunch|first thing|in the morning|an hour ago|a while ago|the morning|last time|this afternoon)",
    keeps=(
        rf"(?:don't|dont|do not|never|please don't|better not|shouldn't|wouldn't|won't|mustn't|didn't|not|no (?:need|reason|call|cause|point|use)(?: for you| at all)? (?:to|in)|(?:don't|didn't|doesn't) (?:need|have|want)(?: you)? to|needn't|nobody (?:needs|has) to|no sense(?: in)?|rather than|instead of)(?: (?:you|go|and|to|ever|even|just|please|going|gonna|really|want))* {_TAKES}(?:ing)? {_TOLD}(?![\w'])"
        rf"|(?<![\w']){_TAKES} {_TOLD}[^.?;]{{0,30}}?,? but (?:don't|do not|i won't|i didn't|didn't|leave it|keep it|never mind|i changed my mind|no)(?![\w'])"
    ),
    takes_back=(
        ("last", r"{verb} please (?:the |that |my )?(?:very )?(?:last|previous|latest) (?:note|message|recording|audio|one)(?: before)?"),
        ("last", r"{verb} (?:please )?(?:the |my |that )?(?:note|message|recording|audio) (?:of |from )?before(?: this)?(?: please)?"),
        ("last", r"(?:the |my )?(?:last|previous) (?:note|message|recording|audio)(?: before)? (?:is|was) (?:not (?:good|correct|right)|wrong|bad|a mistake|mistake|no good),? (?:so |please |you can )*{verb}(?: it)?(?: please)?"),
        ("last", r"{verb} (?:the |that |my |what |everything |all (?:the |that )?)*(?:(?:last|previous|latest) )?(?:note|one|message|recording|thing|entry|bit|memo|stuff)? ?(?:that )?i(?:'ve)? just (?:gave|sent|said|told|recorded|made|left|did|put in|handed in|given|talked about)(?: you| in| them)?"),
        ("last", r"{verb} (?:out )?(?:the |that |my )(?:very )?(?:last|previous|latest) (?:note|one|message|recording|thing|entry|bit|memo)(?: i (?:sent|gave you|said|made|recorded|did|left))?(?: out| back| down| off)?"),
        ("last", r"{verb} (?:what|whatever|everything|anything|all|all that|the stuff) (?:that )?i(?:'ve| have)? just (?:said|told (?:you|them)|sent|gave you|recorded) (?:on|about|for|of) (?:the|that|this|my) [a-z]+(?: piece| one)?(?= ?[,.!]| ?$)"),
        ("mark", r"{verb} (?:the |that |my )(?:note|entry|one|recording|message|memo)(?: i (?:sent|gave you|made|left))? (?:on|about|for|of|with) "),
        ("mark", r"{verb} (?:what|whatever|everything|anything|all|the stuff|that stuff|all that) (?:that )?i(?:'d| had|'ve)? (?:just )?(?:said|told (?:you|them|him)|sent|gave you|logged|called in|reported|put down|recorded|wrote)(?: in)?(?: earlier| before)? (?:on|about|for|of|regarding) "),
        ("mark", r"(?:ignore|disregard|strike|delete|erase|cancel|void|remove|(?:don't|do not) count|(?:forget(?: about)?|never ?mind|(?P<d>drop)|kill|skip|scratch)(?= (?:(?:number|piece|fitting|section) )?[\w-]+(?: [\w-]+)?(?: please)?(?:(?(d)(?!))$|,? " + _NO_SUCH + r"))) "),
        ("mark", r"take (?=(?:the |that )?(?:(?:fitting|number|piece|section|elbow|straight|transition|tee|collar|cap|offset) )+\S+(?: \S+)? back(?= ?[,.!]| ?$| please| it\b))"),
        ("last", r"what i (?:just )?(?:said|told you|gave you|sent(?: you)?|recorded)(?: (?:just now|a (?:minute|second|moment|while) ago|before|earlier))?,? (?:please )?(?:take (?:it|that) (?:back|out|off)|forget (?:it|that)|scratch (?:it|that)|strike (?:it|that)|throw it (?:out|away)|drop it|delete it|erase it)(?= ?[,.!]| ?$)"),
        ("alone", r"{verb} (?:what|whatever|everything|anything|all|the stuff|all that) (?:that )?i(?:'d| had|'ve)? (?:just )?(?:said|told (?:you|them|him)|sent|gave you|called in|put down)(?: just now| earlier| before| a (?:minute|second) ago)? (?:on|about|for|regarding) (?:the|that|my) (?:\w+ )?(?:straight|elbow|ninety|tee|cap|collar|transition|offset|branch|plenum|wye|boot|sleeve|piece|one|fitting|reducer)(?= ?[,.!]| ?$)"),
        ("alone", r"(?:don't|do not|please don't) (?:write|put|take|jot|log|note|record) (?:any of )?(?:that|this|it)(?: (?:last )?(?:one|part|bit))?(?: down| in)?,? (?:please |no |sorry )*(?:i|we) (?:was|were|am|'m) (?:just |only )?(?:talking|yelling|hollering|speaking|shouting|kidding|joking|answering)\b[^.;,]*"),
        ("this", r"{verb} (?:all of )?(?:this|that) (?:whole |entire )(?:note|thing|recording|message|one|memo)|{verb} this (?:note|recording|message|memo)"),
    ),
    unsaid=r"(?<![\w'])(?:forget|scratch|ignore|disregard|strike|never ?mind|cancel|erase)(?: that)?(?: what)? (?:i|we)(?: just| ever| even)? (?:said|told you|say)(?: that| it| so| anything)?(?= *(?:[.,;!]|-|$))",
    no_such=rf"\b(?:{_NO_SUCH}|(?:a|the|my|an) (?:mistake|duplicate|repeat|error|wrong one|double))",
    fault_ahead=r"(?:(?:and|but|also|there's|there was|had|got|a|the|one|small|little) )*(?:gaps?|tears?|rips?|holes?|dents?|punctures?|gash(?:es)?)\b(?!'?s? (?:closed|tight|gone))",
    regardless=r"\b(?:anyway|anyways|anyhow|regardless|just the same|all the same)\b",
    forgets=r"(?:can't|cannot|can not|don't|do not|couldn't) (?:remember|recall|say|tell you|swear)(?: for sure| now| anymore)? (?:if|whether)|(?:not sure|no idea|no clue|not certain|who knows|don't know|couldn't tell you)(?: now| anymore)? (?:if|whether)",
    tells=(
        r"(?:supposed|asked|told|ordered|meant|paid|expected|forced|made|begged|(?:want(?:s|ed)?|asked|asks|told|tells|ordered) me) to (?:write|say|tell you|tell them|tell everybody|put down|log|report|swear|claim|sign)\b(?: (?:down|off|that))*",
        r"(?:i'm |i am )?not saying", r"(?:don't|do not|never|please don't|better not) (?:write|put|record|hear|read|mark|take|spell|mistake|log|note)(?: (?:it|that|me|this|down|as|up|for|in))* (?=not|no|un)",
        r"(?:don't|do not|no need to|no reason to|quit|stop|nobody (?:has|have|needs|need|had) to|(?:you|they|he) (?:don't|didn't|do not) (?:have|need|got) to|don't you) (?:keep )?(?:be )?(?:tell|ask|remind|nag|warn)(?:ing)?\b(?: me| us| about)*",
    ),
)
