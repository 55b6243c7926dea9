"""English of closing a joint: a side that still waits for its tape, mastic that is not on, tape that has no listing, and what other tape there was."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.en.acts_short import ENGLISH_ACTS_TOLD
from logbook.languages.en.filth import FILTHS, FILTHY, SWEATY
from logbook.languages.en.turns import ENGLISH_TURNS
from logbook.languages.told import Aside

_SPOT = r"(?:sides?|seams?|joints?|edges?|ends?|corners?|top|bottom|back|front|left|right|underside|heel|throat|cheeks?|half)"
_OF_IT = r"(?: (?:more|long|short|other|last|back|top|bottom|left|right|far|near|inside|outside))*"

# the sides that are left, as the subject of what they wait for
_WHERE = r"(?: (?:by|on|against|next to|at|under|behind|facing|along|toward|towards|up against) (?:the|that|my) [\w-]+(?: side)?)?"
_ONE = rf"(?:the |that |its |this |my )?(?:(?:whole|long|short|other|last|far|near|back|inside|outside|remaining|other two|other three) )*(?:left and right|right and left|top and bottom|{_SPOT}|fourth|last|other|others|rest|other (?:one|two|three)|(?:last|fourth) one)(?: (?:one|side|sides|seam|panel|edge|end|half))?(?: and (?:the )?{_SPOT})?"
_TIME = r"(?:tomorrow|later|after(?= \w)|tonight|next|another|first thing|monday|tuesday|wednesday|thursday|friday|when|once|as soon as|soon as|until|till|'til|this afternoon|in the (?:morning|afternoon)|in a (?:bit|minute|while)|from (?:the|a) (?:lift|ladder|other side))\b"
_NOT_PAST = r"(?! (?:lunch |break )?(?:i|we|they|he|she|it|the \w+|my \w+|somebody) (?:(?:had|finally|just|all) )*(?:\w+ed|came|got|went|left|took|had|was|were|did|put|ran|made|gave|let|brought|found)\b)(?!.* (?:i|we) (?:taped|stapled|did|got it|had|went|ran)\b)"
_WAITS = (
    rf"(?:(?: will| 'll|'ll| gonna| is going to| are going to| just)* (?:has|have|had|got|gotta|need|needs)(?: to)?(?: just)? wait\b.*"
    rf"|(?: 'll| will|'ll|'s|'s just| is| are| just| can| still)* wait(?:s|ing)?(?:$| (?:on|for|till|until|'til|while|because) .*)"
    rf"|(?: 'll| will|'ll)? (?:gets?|be) (?:it|its|done|hit|caught|finished|closed|closed up)(?: then)? {_TIME}.*"
    rf"|(?: 's| is| are|'s|'ll be| will be|'re) (?:(?:for|till|waiting for|up) )?{_TIME}{_NOT_PAST}.*"
    rf"|(?P<bare> (?:for )?{_TIME}){_NOT_PAST}.*"
    rf"|(?: 's| is| are|'s)? (?:still )?(?:to come|to follow|next|to be done|up next)$"
    rf"|,? (?:i|we)(?: 'll|'ll| will|'m gonna| gonna|'m going to| can| plan to| need to| have to| still have to| still need to) (?:catch|get|do|hit|finish|pick up|grab|close|go back for|come back for)(?: (?:it|them|that|to it|to that))?(?:$| (?:with .*|{_TIME}.*)))"
)

_RID_OF = r"(?:wip|brush|swep|sweep|clean|blew|blow|blown|knock|get |got |rag|vacuum|dried|dry |dusted|wash|no |not (?!(?:yet )?(?:taped|stapled|rubbed|trimmed|hung|done))|never (?!taped|stapled|rubbed)|without|keep|kept)"
_PRINT = r"(?:mark(?:ing)?s?|stamps?|print(?:ing)?|labels?|listings?|ul(?: \w+)?|181\w*|numbers?|writing|words?|letter(?:s|ing)?|rating)"

ENGLISH_ACTS_TAPING = replace(
    ENGLISH_ACTS_TOLD,
    to_do=(
        *ENGLISH_ACTS_TOLD.to_do,
        r"(?:{noun}|{doing})(?: (?:down|on it))?(?: (?:got|was|is|gets|has been|had to be)|'s(?: been)?) (?:pushed|bumped|moved|put off|postponed|rescheduled|delayed|kicked|held over|shoved|carried over)(?: (?:back|off|over|out))? (?:to|till|until|for|into) (?:the (?:morning|afternoon|next|night|second|day|following|end)|this|tomorrow|later|next|after|another|when|lunch|first thing|(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b",
        r"(?:holding|hold|held|keeping|waiting) (?:back |off )(?:on )?(?:the |my |any )?(?:{noun}|{doing})\b(?: (?:it|on it|this one|that one))?,? (?:until|till|'til|for now|for (?:tomorrow|later))\b",
        rf"(?:one|two|three|1|2|3|the last(?: one| two| three)?|another|(?:just|only|still|have|got|leaves|leaving)(?: me| us| got)? (?:the|that|a|one|two|three|its))(?: more)?{_OF_IT} {_SPOT}(?: left| still| yet| more)* to (?:go and )?{{verb}}\b",
    ),
    partly=(
        *ENGLISH_ACTS_TOLD.partly,
        r"(?:{noun}|{doing})(?: (?:is|was|got)|'s)?(?: (?:only|just|barely))* (?:started|begun|half done|half finished|partly done|partway done|half on)(?=$|[.;]|,? (?:and |but )?(?:not (?:finished|done)|isn't (?:finished|done)|never (?:finished|got done)))",
        r"(?:the |my )?{doing}(?: (?:it|them|down))?(?: (?:on|of|for) [\w' -]{1,26}?)? (?:got|was|gets|is)(?: (?:kind of|sort of))? (?:cut (?:short|off)|interrupted|stopped|rained out|called off|held up|broken off)\b(?! (?:for (?:a|an|ten|lunch)|but))",
        r"(?:just |only )?(?:one|two|three|a single|just a|only a|a couple(?: of)?|couple(?: of)?|a few)(?: (?:little|short|quick|lousy|small))* (?:strips?|pieces?|bits?|dabs?|chunks?|spots?) of (?:(?:the|my|that|cloth|masking|duct|foil) )*{noun}\b"
        r"(?! (?:on|over|across|for) (?:it|that|them|the (?:tear|hole|rip|cut|gash|spot|nick|puncture|dent|slit|scrape))\b)(?![^.;]*\b(?:each|every|per|all|both|apiece)\b)",
    ),
    of_one=(
        *ENGLISH_ACTS_TOLD.of_one,
        ("taped", False, r"\b(?:the |any )?mastic(?:'s not| is not|'s never| isn't| ain't| wasn't| not| hasn't| never)(?: (?:been|gone|got|gotten|even|quite|all|put|brushed|troweled|made it))* (?:on|down|done|applied|finished)\b(?: (?:it|there|yet))*"),
        ("taped", False, r"\b(?:the )?mastic(?: (?:is|went|goes|only|just))*(?:'s)?(?: (?:only|just))? on (?:only |just )?(?:(?:the )?(?:one|two|three|1|2|3)(?: of (?:the )?(?:four|4))? sides?|three of (?:the )?four|half of it)\b"),
        ("taped", False, rf"\b(?:all )?(?:the )?mastic(?:'s| is)?(?: on)?(?: (?:everywhere|all around|all the way around|all over|every side|all sides))? (?:but|except|except for|minus|all but)(?: on)? (?:the |one |that ){_SPOT}\b"),
        ("taped", False, rf"(?:\w+n't|never|not|no)(?: (?:get|got|put|gotten|have|any|get to|reach|brush|the))* mastic (?:on|to|in|under|behind|at|across) (?:the |that |one )(?:\w+ )?{_SPOT}\b"),
        ("taped", False, r"\b(?:not|isn't|wasn't|never|hasn't|haven't|ain't)(?: (?:been|got|yet|gotten))* taped (?:down )?(?:to|onto) the (?:board|facing|foil|duct board|duct|panel|opening)\b"),
        ("taped", False, r"(?<=stapled )(?:and|but) (?:still |left |just |wide )*(?:open|bare|naked)\b(?! to)"),
        # what lies on the facing, or a facing that was wet
        ("surface_clean", False, rf"^(?:(?!\b{_RID_OF})[^.;])*?\b{FILTHS} (?:all over|on|across|over|along)(?: top of)? (?:the |my |its |that )?(?:facing|foil|surface|board|face|jacket|seams?|joints?|flap|lap)\b(?![^.;]*\b{_RID_OF})"),
        ("surface_clean", False, r"\b(?:facing|foil|board|surface|face|skin|seams?|joints?)(?:'s| is| was| were)(?: (?:still|all|kind of|a little|pretty))* (?:sweating|sweaty|dewy|frosty|frosted(?: over)?|beaded(?: up)?|fogged(?: up)?)\b"),
        ("surface_clean", False, rf"\btaped\b(?: (?!after|once|before|dried|dry|until|over|the|that|a|but|and|not|no|never|where|with|back)[\w-]+){{0,3}}? (?:(?:still|while it was(?: still)?|soaking|dripping|a little|kind of) )*(?:{FILTHY}|{SWEATY})(?=$|[.;]|,(?! (?:spot|panel|corner|board)))"),
        ("surface_clean", False, rf"\b(?:was|is|were|'s|are)(?: (?:still|all|kind of|a little|pretty|soaking))* (?:{FILTHY}|{SWEATY})\b(?: [\w-]+){{0,3}}? when (?:i |we |he |the |it )?(?:was |got )?(?:tap(?:e|ed|ing)|tape went|put the tape|laid the tape)\b"),
        ("surface_clean", False, r"(?:didn't|did not|never|couldn't|forgot to|no time to)(?: (?:even|really|bother to|get to|stop to))* dry (?:it|that|them|this one|the (?:facing|foil|board|seams?|joints?))(?: (?:off|first|down|out|up|beforehand))*(?=$|[.;,])"),
    ),
    sides=(*ENGLISH_ACTS_TOLD.sides, *((n, False, rf"(?:{words}) (?:taped|stapled|rubbed) sides?") for n, words in ((1, "one|1"), (2, "two|2"), (3, "three|3"), (4, "four|4")))),
    of_sentence=(
        *ENGLISH_ACTS_TOLD.of_sentence,
        ("surface_clean", False, r"\b(?:facing|foil|board|surface|face|seams?|joints?)(?:'s| is| was| were)?(?: (?:still|all|a little|kind of|pretty))* (?:wet|damp|soaked)\b[^.;]{0,60}\btaped(?: (?:it|that|them|right))? (?:anyway|anyhow|regardless|over it|over that|all the same|just the same)\b"),
        ("surface_clean", False, rf"\b(?:facing|foil|board|surface|face|jacket|seams?|joints?)(?:'s| is| was| were| had| has| all| still| just)* (?:(?!\b{_RID_OF})[^.;]){{0,24}}?\b{FILTHS}(?: (?:on|all over) it)?,? (?:and |but |so )?(?:i |we )?(?:just |still )?taped (?:right |straight )?(?:over|on top of)(?: (?:it|that|the (?:dust|dirt)))?(?=$|[.,;])"),
        ("surface_clean", False, rf"{FILTHS}\b[^.;]{{0,40}}\btape (?:(?:just|only) )?(?:went|'s|is|goes|got put|got laid)(?: (?:right|straight|just))* on top(?: of it)?(?=$|[.,;])"),
        ("taped", False, r"(?:got|has|have|had|just|only|nothing but) (?:the |some |its )?staples(?: (?:in (?:it|there)|on it))? (?:and|,) ?(?:that's|that is) (?:it|all)(?: (?:it|she|this one) (?:has|got|gets))?(?! (?:the|my|i))|\bnaked\b[^.;]{0,30}\bstapled\b|\bstapled\b[^.;]{0,30}\bnaked\b"),
    ),
    looks=ENGLISH_ACTS_TOLD.looks + r"|naked|staples|wet|damp|soaked|dust|dirt|mud|grit|oil|grease",
    numberless=r"(?:and |with |but )?(?:no|not any|zero|without(?: any)?) numbers?(?: (?:on (?:it|that)|at all|anywhere|whatsoever|(?:that )?i could (?:find|see|read)))*",
    cleans_with=r"\b(?:clean|wip|wash|dust|wet|damp|swab|mop|soft)\w*\b",
    unlisted=(
        *ENGLISH_ACTS_TOLD.unlisted,
        rf"\b(?:no|not a|not any|without(?: a| any)?|isn't any|isn't a|wasn't any|ain't no|nary a) (?:\w+ )?{_PRINT}(?: (?:at all|anywhere|whatsoever|printed|stamped|that i (?:could|can) see))* (?:on|along|anywhere on|inside|either on) (?:the |that |this |its |either )?(?:tape|roll|liner|backing|core|wrapper)\b",
        rf"\b(?:tape|roll|liner|backing)\b(?: (?:i|we) (?:used|had|put on|grabbed|got))?(?: (?:on|for|from) (?:it|this one|that one|the \w+))? (?:doesn't|didn't|does not|did not|don't)(?: (?:even|actually))* (?:say|read|show|carry|have|bear|list|mention)(?: (?:a|an|any|the|no))* (?:{_PRINT}|181\w*)\b(?! ?-?[phm]\b)",
        rf"\b(?:tape|roll|liner|backing)\b(?: (?:i|we) (?:used|had|put on|grabbed|got))? ?(?:has|had|'s got|got|with|came with|shows?|carries) (?:no|zero|not any|not a) (?:\w+ )?{_PRINT}\b(?! ?-?[phm]\b)",
        rf"\b(?:can't|couldn't|can not|could not|didn't|don't|never|unable to)(?: (?:find|see|make out|spot|read|come up with|locate))+ (?:any|a|the|an|one)(?: \w+)? ?{_PRINT}\b(?! ?-?[phm]\b)(?: (?:\w+ ){{0,2}}on (?:it|the (?:tape|roll|liner|backing|back|core|box)))",
        r"\b(?:doesn't|didn't|does not|did not|don't) (?:say|read|show) (?:anything|a thing|a word|181\w*)(?: (?:on (?:it|the (?:back|roll|liner|backing|core))|anywhere))+$",
        r"\b(?:isn't|not|ain't|wasn't|aren't)(?: (?:really|actually|even))? (?:the |a |any )?(?:marked|listed|printed|stamped|approved|rated|ul|labell?ed) (?:kind|stuff|tape|one|roll|type|sort)\b",
        r"\btap(?:e|ed|ing)\b(?: (?:it|them|this one|that one|her|up|over|shut|down|all around|all the way around|on (?:all|both|three|four) sides|the (?:joints?|seams?)))* (?:with|in|using) (?:(?:just|only|some|plain|the|that|my|old|regular|gray|silver|a|roll of) )*(?:cloth|fabric|masking|packing|vinyl|electrical|painter's|painters|gaffer)(?: (?:stuff|kind))?(?=$| (?:because|since|but|as|for now|when|until|till|and (?!mastic|mesh|glass)))",
    ),
    ran_out=(
        r"(?:(?:but|and|so|then|because|since|just) )*(?:(?:i|we|i'm|we're|i've|we've|i was|we were|he|they) )?(?:(?:ran|run|running|just|got|all|clean|been) )*out of tape(?: (?:on (?:it|me|us|this one|that one|the last one|the roll)|for (?:it|this one|that one)|up (?:here|there)|there|here|right (?:then|there)|at that point|by then|today|already|again|now|for now|altogether|completely|so (?:it|she|this one|that one) (?:stays|stayed|sits|waits)(?: (?:open|like that|as is))?))*"
        r"(?:,? so (?:that's|it's|this|it|she|there's|i|we|you) .*)?|(?:(?:but|and|so|then|because|since) )*(?:(?:the|my|our) )?(?:tape|roll|roll of tape|tape roll)(?: (?:just|finally))?(?: (?:ran|gave|run) out| quit| died|'s (?:all )?gone| is (?:all )?gone| was gone)(?: (?:on (?:it|me|us|this one|that one)|there|here|right (?:then|there)|today))*"
    ),
    short_of=r"\b(?:out of|short of|short on|low on|no more) (?:the |any )?(?:[\w-]+ )?(?:tape|staples|vanes|mastic|tabs)\b|\b(?:tell|call|ask|text) (?:the |my |our )?(?:office|shop|supply house|warehouse|driver|truck)\b|\b(?:need|needs|bring|order|send|get me|pick up|want)\b.{0,40}\b(?:box|boxes|rolls?|case|cases|bag|bags|tubes?|buckets?) of\b",
    fetched=r"\b(?:got|found|borrowed|grabbed|opened|fetched|bummed|went|sent|another|more|new|ran (?:up|down|over)|back)\b",
    hints=ENGLISH_ACTS_TOLD.hints + r"|mastic|wet|damp|sweat|dew|frost|dust|dirt|fogg|beaded|smudg|smear|gunk|crud|shaving|filing|plaster|print|pushed|bumped|postpon|resched|delay|kicked|shoved|carried|moved",
    denied_side=rf"{ENGLISH_ACTS_TOLD.denied_side}|(?<![\w'])to (?:tape|staple|rub|do|finish|close|seal)(?![\w'])",
)

# a side told of by itself behind the act, that has none of it
_SIDE = (
    rf"(?:(?:the|that|its|my|this|one) )?(?:(?:whole|very|long|short|other|last|far|near|back|front|top|bottom|left|right|inside|outside|lower|upper|third|fourth|wall|hall|ceiling|floor|deck|beam|column|pipe|shaft|window|door|north|south|east|west|street|blind|hidden|tight) )*"
    rf"(?:{_SPOT}|underneath|other one|last one|fourth(?: one)?)(?: (?:one|side|sides|seam|seams|joint|joints|panel|edge|end|half))?(?: (?:by|on|against|next to|at|under|behind|facing|along|toward|towards|up against|over by|in) (?:the|that|my) [\w-]+(?: side)?)?"
)
_ISNT = r"(?:isn't|aren't|is not|are not|'s not|not|ain't|wasn't|weren't|hasn't(?: been)?|haven't(?: been)?|never(?: got| was| did)?|didn't(?: get| happen)?)"
_NONE_THERE = (
    rf"(?:(?:(?:there's|there is|with|got) )?(?:none|nothing|not a thing|zero|zip)(?: (?:at all|yet))? (?:(?:on|along|at|under) {_SIDE}|underneath|behind)"
    rf"|{_SIDE} (?:has|have|had|got|gets|shows?)(?: (?:still|just))? (?:none|nothing|zero|not a thing)(?: (?:on it|at all|there))*"
    rf"|{_SIDE} {_ISNT}(?: (?:done|though|either|any|it|been|so far|at all|gotten to|closed|touched|covered))*"
    rf"|{_SIDE} ?(?:is|'s|was|are|were|stays|stayed)(?: (?:still|just|all))* (?:undone|unfinished|left off|left out|left undone)(?: (?:though|for now|right now))*"
    rf"|(?:i |we )?(?:didn't|never|couldn't|can't|did not|could not|wasn't able to|no way to)(?: (?:even|really|quite|manage to|ever))* (?:do|did|get|got|finish|finished|reach|hit|touch|cover|get to|got to|get at|get around to) {_SIDE}(?: (?:done|at all|though|with it|because .*))*"
    rf"|(?:i |we )?(?:left|leaving|skipped|missed|had to leave|had to skip) (?:off |out )?{_SIDE}(?: (?:off|out|undone|alone|though|as is))*)"
)
_IS_BARE = (
    rf"(?!(?:the |both |that |one |each )*(?:\w+ )?ends?\b.* open)(?:{_SIDE} ?(?:is|'s|was|are|were|stays|stayed)(?: (?:still|just|left|wide|all))* (?:bare|naked|open|empty|uncovered|not covered|not closed)(?: (?:though|for now|right now))*"
    rf"|(?:i |we )?(?:left|leaving|had to leave) {_SIDE} (?:bare|naked|open|uncovered)(?: (?:though|for now))*)"
)
_LEADS = r"(?:but |and |then |with |just |only |so |well |though )*"

ENGLISH_TURNS_TAPING = replace(
    ENGLISH_TURNS,
    alone=(
        *ENGLISH_TURNS.alone,
        (rf"^{_LEADS}{_NONE_THERE}$", ("taped", "stapled", "rubbed_down")),
        (rf"^{_LEADS}{_IS_BARE}$", ("taped",)),
    ),
    mended=(
        *ENGLISH_TURNS.mended,
        r"(?:got|have|had) (?:it|them|that) all (?:done|finished|on|closed)\b",
        r"(?:(?:went (?:and|out and|down and|back and) )?(?:opened|got|grabbed|found|borrowed|fetched|bummed|started|cracked open)|sent for) (?:up |me |us )?(?:another|a new|a fresh|some more|more|one more|a second|a full)(?: (?:roll|one|box|case|tape|staples))?(?: of (?:tape|staples))?\b",
    ),
    left_to_do=(
        *ENGLISH_TURNS.left_to_do,
        (rf"^{_LEADS}(?:i'll|i will|we'll|we will|i'm gonna|gonna|going to|i'm going to|i have to|i need to|need to|have to|gotta|will)(?: (?:go back and|come back and|still))? (?:get|do|hit|catch|finish|grab|close|tape|go back for|come back for) {_ONE}{_WHERE}(?:$| {_TIME}.*)", ("taped", "stapled", "rubbed_down")),
        (rf"^{_LEADS}{_SIDE} {_ISNT}(?: (?:done|been|gotten to|closed))* yet$", ("taped", "stapled", "rubbed_down")),
        (rf"^{_LEADS}(?:i |we )?(?:still )?(?:haven't|have not)(?: (?:even|really|quite))* (?:done|got|gotten|finished|reached|hit|touched|gotten to|got to|covered) {_SIDE}(?: (?:yet|though|done))*$", ("taped", "stapled", "rubbed_down")),
        (rf"^(?:but |and |then |with |just |only |so )*{_ONE}{_WHERE}{_WAITS}$", ("taped", "stapled", "rubbed_down")),
    ),
)

ENGLISH_TAPING = (
    # --- none of it left out; what the next piece waits for
    Aside(r"(?P<x>(?:and |with |there's )*no (?:side|seam|spot|corner|edge|joint|part)s? (?:left out|left off|missed|skipped|forgotten|left bare|left open)(?: (?:anywhere|at all|on it))*)(?= [.,;]|$)", ("no ",), names=True),
    Aside(r"(?P<x>(?:and |but )*(?:the |my )?next (?:one|piece|#)(?: over| up| down)?(?: 's| is|'s)? (?:still |just )*(?:waiting|waits|needs?|wants?|gets?) [^.;,]*)", ("next ",)),
    # --- what was seen to, what was taken off for it, and heat that nobody needs
    Aside(r"(?:put|ran|laid|stuck|got) (?:some |a (?:piece|strip) of )?(?:fresh|new|more) <n> (?:on|over|down on) #(?: \w+)? ?(?P<x>where (?:it|the <n>|the end|the edge|the corner)(?: had|'d)? (?:lifted|peeled(?: (?:up|off|back))?|came (?:up|off|loose)|come (?:up|off|loose)|let go|popped))", ("where",), names=True),
    Aside(r"(?P<x>(?:the|that|my) (?:(?:old|bad|wrong|first|original) )*(?:cloth|duct|masking|gray|vinyl|foil) tape (?:is|came|'s|went|got|has come)(?: (?:all|already))? (?:off|pulled|stripped|gone|pulled off|stripped off)(?: of)?) ?#? , (?:and |so |now |but )*(?=(?:it's|it is|there's|it has|i put|i used|it got|i've got|this one's) [^.;]*181)", ("tape",), names=True),
    Aside(r"(?P<x>(?:(?:it |that )?(?:didn't|don't|doesn't|did not|won't|never|wasn't any) need(?:ed)?|no need (?:for|of|to))(?: to be| to get| to)?(?: (?:any|no|the|much))? (?:heat|heating|heated|warming|warmed|preheat(?:ing|ed)?|<b>|<d>)(?: (?:up|first|it|gun))*) ?,? (?=(?:because |since |cause |as )?(?:it|the \w+|board|facing)(?:'s| is| was| were) )", ("need",), names=True, unless=r"stapl|rub"),
    # --- it is not to be called done; there is nothing left to do on it
    Aside(r"(?P<x>(?:don't|do not|never|can't|you can't)(?: (?:you|go|just|please))* (?:count|consider|figure|call|mark|log|put|write)(?: (?:#|it|this one|that one|her|that))?(?: (?:down|up|off))? (?:as )?(?:being )?(?:all )?(?:done|finished|complete|completed|closed|ready)(?: (?:yet|just yet|with it|either))*)(?= [.,;]|$| because| cause| since| till| until)", ("don't", "do not", "never", "can't"), names=True),
    Aside(r"<d>[^.;]*? , (?:and |with |so )*(?P<x>nothing (?:else |more )?left(?: (?:on|to do|for me|with|to do on) ?(?:it|this one|that one|#)?)?)(?= [.,;]|$)", ("nothing",), names=True),
    # --- cloth tape, had no other tape: what else there was
    Aside(r"(?P<x>(?:because |since |as |cause )?(?:(?:i|we|they|there) )?(?:didn't have|don't have|had|have|haven't got|hadn't got|had not got|there was|there's|there is|was|couldn't find|didn't find|wasn't|there wasn't|there isn't|got)(?: (?:a|any|no|not))* (?:other|better|wider|different|fresher|more suitable) <n>(?: (?:around|handy|here|there|left|up there|on hand|on site|with (?:me|us)|at the time|in the (?:box|truck|van|bag)))*)(?= [.,;]|$| and| so| but)", ("other", "better", "wider", "different", "fresher", "suitable")),
)
