"""English of a question that he answers himself with the reason why not, with a part, or with a time to come: "Vanes? The box never came", "are the tabs bent? Half of them", "the plug? Not cut yet".

The answer is read as the plain no that it is, or as what it says yes to. Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.measured import _M as _MEASURE
from logbook.languages.plainer import Plainer

_STARTS = r"(?:^|(?<=[.!?;,] ))"
_LEADS = r"(?:(?:and|now|so|then|okay|ok|well|how about|what about|as for) )*"
_ASKS = r"(?:(?:did|have|had) (?:i|we)(?: get| got| have)? |(?:is|was|are|were|did|does|has) (?:it|they|there|that|this one|that one|those|the \w+)(?: \w+)? (?:get |got |have )?|any |got |got any |is there (?:any )?|are there (?:any )?)"
_THE = r"(?:(?:the|any|my|its|some|turning|cross|tie|steel) )*"
_THINGS = r"(?:vanes?|tape|staples|tabs|rods|stiffeners|reinforcing|reinforcement|preheat(?:ing)?|pre-heat|rub ?-?down|wipe ?-?down|trimming|taping|stapling|rubbing|wiping)"
_DEEDS = r"(?:taped?|stapled?|rub(?:bed)?|wiped?|trim(?:med)?|bent|bend|reinforced?|pre-?heat(?:ed)?|warmed|clean(?:ed)?|fix(?:ed)?|patch(?:ed)?|mend(?:ed)?|repair(?:ed)?|vaned|fastened)"
_TAIL = r"(?: (?:it|them|that|down|up|off|in|on|at all|around|all|yet|over|first|the \w+|this one|that one|[\w'-]+)){0,4}"
_WHETHER = rf"{_STARTS}(?!(?:why|how|what|which|when|who|with|should|could|can|do) |(?:got|need|any)(?: any| more| some)* (?:tape|staples)(?: left| around)?\?){_LEADS}(?:{_ASKS}(?:(?!you |he |they )[\w'-]+ ){{0,4}}?)?{_THE}(?:{_THINGS}|{_DEEDS}){_TAIL}\? (?:(?:well|oh|uh|um|ha|don't ask|please|funny|look|yeah)[.,!]? )?"

_THINGS_SENT = r"(?:they|it|those|that|(?:the |that |my |our |whole |second |last )*(?:box|boxes|order|delivery|shipment|carton|crate|truck|supply house|counter|yard|shop|warehouse|stuff|material|bundle|pallet|kit|roll|rolls|set|sets|guy|driver|rods|vanes|rails))"
_NEVER_CAME = rf"(?:{_THINGS_SENT} )?(?:still )?(?:never|didn't|did not|hasn't|haven't|has not|have not)(?: (?:even|yet|ever|been))* (?:came|come|show|showed|shown|arrive|arrived|ship|shipped|sent|send|get here|got here|make it|made it|deliver|delivered|bring|brought|load|loaded)(?: (?:up|in|out|it|them|any|over|yet|today|off))*"
_THEY_ARE = r"(?:(?:(?:they|it|that|those|we|i|all of them|the \w+)(?:'re|'s| are| is| was| were|'m| am| got)?|still|all|sitting|sat|left|back|over|out|down|up) )*"
_PLACE = r"(?:shop|truck|van|gang ?box|job ?box|trailer|office|warehouse|yard|supply house|car|pickup|lift|shelf|bag|roll|connex|conex|container|basement|store|tool box|toolbox|cart|other (?:building|site|job|floor|truck)|first floor|second floor|ground|boat|road|dumpster|dock|loading dock|pallet|rack|cage|tool crib|crib)"
_AWAY = rf"{_THEY_ARE}(?:in|on|at|with) (?:the|my|his|our|their|somebody's|some other) (?:[\w']+'s )?{_PLACE}"
_TAKEN = rf"(?:{_THINGS_SENT} |all (?:of (?:them|it) )?)?(?:got |were |was |all |went |been )*(?:sent|shipped|delivered|dropped|taken|moved|went|gone) (?:off |back |out |over |up |away )?(?:to|at|with) (?:the|another|some) [\w' ]{{3,30}}"
_ANOTHERS = r"(?:somebody|someone|another crew|the other crew|the next crew|night shift|my helper|the helper|the apprentice|\w+) (?:took|has|had|swiped|borrowed|walked off with|ran off with|grabbed|got) (?:them|it|the (?:last|whole|only) [\w ]{2,20}|the \w+)(?: all)?"
_OUT = r"(?:(?:i|we|they|it|that|those|they're|it's|that's|we're|i'm|all|were|was|are|is|still|they were|it was) )*(?:on back ?-?order|backordered|ran out|run out|fresh out|clean out|used up|all gone|out of (?:them|it|stock|tape|staples|vanes|rods|rags|room|time))"
_TOOL = (
    r"(?:(?:the |my |our )*(?:roll|tape gun|gun|stapler|staple gun|squeegee|iron|heat gun|torch|knife|rag|lift|ladder|scaffold|breaker|compressor|battery|blade|rubber|roller)"
    r"(?:'s| is| was| had| has| got)?(?: (?:all|already|just|been|gone|still|completely))* (?:jammed|jam|broke|broken|busted|quit|died|dead|dull|empty|shot|lost|missing|gone|walked off|disappeared|froze|frozen|dried (?:out|up)|went (?:down|dead|missing|with \w+ \w+)|tripped|ran out|snapped|out|cold|had to go(?: \w+){0,3}|stuck|in (?:the|my|his) [\w' ]{3,20}))"
)
_COULD_NOT = r"(?:(?:i|we|there) )?(?:couldn't|could not|can't|cannot|wasn't able to|had no|didn't have|don't have|haven't got|never got(?! to| around)|wasn't any|weren't any|got no|nobody had|nobody brought|never had|found no|couldn't find)(?: [\w'-]+){1,7}"
_NOT_HIS = r"(?:not|isn't|wasn't|that's not) (?:my|our) (?:job|problem|department|mess|work|doing)"
_MEANT_TO = r"(?:(?:i|we|it|they) )?(?:meant|wanted|tried|planned|hoped|was going|was gonna|were going|intended|supposed|was supposed|forgot|should have|should've)(?: to)?(?: (?:be|have|it|do it))?(?: but (?:i |we )?(?:forgot|ran out|never|didn't|couldn't|there was)[\w' ]{0,30})?(?=[.,;!]|$)"
_WHY_NOT = rf"(?:(?:supposed to|should have|should've|meant to)[.,;] )?(?:{_NOT_HIS}|{_MEANT_TO}|{_NEVER_CAME}|{_AWAY}|{_TAKEN}|{_ANOTHERS}|{_OUT}|{_TOOL}|{_COULD_NOT})"
_YET = r"(?! [^.?!]*(?:till|until|so i|but i|then i|so we|but we|finally|ended up)(?![\w']))"
_DID_IT_AFTER_ALL = r"(?:so|but|then|and) (?:then |so |finally |later |just )*(?:i|we) (?:\w+ )?(?:used|did|got|borrowed|went back|found|made|cut|put|taped|stapled|rubbed|wiped|trimmed|fixed|switched|finished)"
_ENDS = rf"(?=[.,;!]|$| (?:so|and|yet|today|this morning|because|cause|since|when|after)(?![\w']))(?!(?:[.,;!])?(?: [^.?!]{{0,40}},?)? {_DID_IT_AFTER_ALL})"

_SOON = (
    r"(?:(?:it's |they're |that's |still |on )*(?:tomorrow|later|tonight|monday|tuesday|wednesday|thursday|friday|next week|this afternoon|after (?:lunch|break)|in the morning|first thing(?: \w+){0,2})|(?:it's |they're |that's |that |it )?(?:still )?to (?:do|come|go|be done)"
    r"|(?:i'll|we'll|i will|i'm going to|gonna|going to) (?!say|have to say|tell|guess|go with)[\w' ]{3,40}|(?:still )?waiting (?:on|for) [\w' ]{3,40}|(?:it's |they're )?(?:coming|due) [\w' ]{3,30}|when (?:the|my|i|we) [\w' ]{3,40}|(?:still )?(?:working on|getting to) (?:it|that|them))"
)

_N = r"(?:one|two|three|four|five|six|seven|eight|nine|ten|\d+)"
_SOME = rf"(?:(?:only|just|about|maybe|i got|i did|got|did|well) )*(?:(?:half|most|some|part|a few|a couple|a third|two thirds|three quarters|{_N})(?: (?:of|out of)(?: the| my| its)?(?: (?:them|it|those|'em|that|{_N}|tabs|vanes|way))?)?|a bit|the (?:top|bottom|front|back|near|easy|outside|far|other) (?:ones|half|part)|(?:not )?all (?:but|except)(?: for)? [\w' ]{{2,25}}|everything but [\w' ]{{2,25}}|part ?way|half ?way|mostly|partly|almost(?: all)?|nearly(?: all)?|kind of|sort of|not (?:on )?(?:(?:all|every one|any) (?:of )?(?:them|it|the way)|(?:the|those|that) [\w' ]{{2,30}}))"
_SIDE = r"(?:the )?(?:near|far|top|bottom|left|right|front|back|long|short|inside|outside)(?: side| seam| one)?"
_SIDES = rf"(?:{_SIDE}(?:(?:,| and|, and) {_SIDE})+)"
_YES_BUT = r"(?:(?:yes|yeah|yep|sure|they are|it is|it was|i did|well|mostly|pretty much)[,.]? (?:but )?)"
_EXCEPT = r"(?:(?:all )?(?:but|except|minus|apart from|other than|save)(?: for)? (?:on )?(?!i |we |the (?:tape|roll))[\w' ]{2,25})"
_PART_ENDS = r"(?=[.,;!]|$| (?:so|and|but|because|cause|before|the other|yet|then)(?![\w']))"

_PLACES = r"(?:on |at |along )?the (?!truck|van)[\w ]{2,20}"
_ALL = r"(?:(?:yes|yeah|yep)[.,]? )?(?:all (?:of (?:them|'em)|around|the way around)|(?:every|each) (?:single |last )?one(?: of them)?|the whole lot|the lot|all (?:four|five|six|seven|eight|ten|twelve)(?: of them)?)"

_BEFORE_NO = r"(?:no|nope|nah|not|i didn't|i did not|it isn't|it's not|we didn't|they aren't|they're not)(?![\w'])"

_MEND = r"(?:plug|patch|repair|mend|fix)"
_NOT_CUT = r"(?:it's |that's |i |we )?(?:still )?(?:not|isn't|haven't|hasn't been|never got) (?:(?:even|been|it) )*(?:cut|made|in|on|there|glued|put (?:in|on)|done)(?: (?:it|one|in|on))*"

_FOUND = r"(?:no|nope|not yet|nah|negative|not so far|it isn't|it's not)"
_JOINED = r"(?:tied in|tied|joined|hooked up|hooked|connected|closed|coupled|mated|made up|buttoned up|taped|done)"

_HARMED = r"(?:(?:little |big |small |other |whole |two )*(?:tears?|holes?|rips?|gash(?:es)?|slits?|gouges?|punctures?|splits?|dents?|(?:crushed|mashed|torn|dented|wet|soaked|bad) (?:corner|end|edge|spot|panel|board|side|place)))(?: (?:on|in|at|by|near|up) (?:the )?[\w ]{2,20}?)?"
_MENDS = r"(?:fix|patch|mend|repair|plug|tape over|tape up|cover|cut out|replace|seal)"
_MENDED = r"(?:fixed|patched|mended|repaired|cut out|plugged|replaced|covered|taped over|sealed)"
_ASKED_OF_HARM = rf"{_STARTS}(?P<x>{_LEADS}(?:(?:did|have) (?:i|we) (?:ever |get to |get around to |go and )?(?:{_MENDS}|{_MENDED}|fixing|patching|mending) (?:the|that|those|my) (?P<h>{_HARMED})|(?:is|was|are|were|did|has) (?:the|that|those|my) (?P<g>{_HARMED}) (?:been |get |got |all )?{_MENDED})(?: (?:up|over|yet|with \w+))*\? "
_HARM = r"(?:hole|tear|torn|tore|rip|ripped|gash|slit|gouge|puncture|punctured|cut|split|crushed|dent|dented|mashed|delaminated|wet|soaked)(?![\w'])"
_OF_IT = r"(?:(?:did|have) (?:i|we) (?:get )?|(?:is|was|are|were) (?:it|that|this one|that one|everything|the (?:tape|seams?|joints?|facing))(?: all)? |all )?"
_ALL_OF_IT = r"(?: (?:it|that|them|the (?:seams?|joints?|tape|facing|thing|whole thing)))?(?: (?:down|up|off|on it|on|all|around|all around))*"

_NAMED = r"(?:the )?(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|number|piece)(?: number)? \d{1,3}"

ENGLISH_ANSWERED_BY_HIMSELF = (
    # --- why not, for a no
    Plainer((" box", " boxes"), rf"{_WHETHER}(?P<x>(?:the |that |my |our |whole |second |last )*box(?:es)?) (?={_NEVER_CAME}{_ENDS}|(?:got|was|is|'s|went) ){_YET}", (("x", "no. They"),)),
    Plainer(("? ",), rf"{_WHETHER}(?P<x>)(?!(?:\w+ ){{1,3}}?box(?:es)? (?!in|on))(?={_WHY_NOT}{_ENDS}){_YET}", (("x", "no. "),)),
    Plainer(("where", "what happened to"), rf"{_STARTS}{_LEADS}(?P<x>(?:where(?:'s| is| are|'re)|what happened to) {_THE})(?:vanes|rods|stiffeners)\? (?P<y>)(?={_WHY_NOT}{_ENDS})", (("x", ""), ("y", "no. "))),
    Plainer(("vanes? wrong", "rods? wrong", "? they sent the wrong", "? sent the wrong", "in? wrong", "it? wrong"), rf"{_STARTS}{_LEADS}(?:{_ASKS})?(?:[\w']+ ){{0,3}}?(?:vanes|rods)(?: (?:in|on)(?: it)?)?\? (?P<x>)(?=(?:(?:they|he|it)(?:'s| was| were| are|'re)? |the )?(?:sent |brought |all )?(?:the )?wrong (?:size|kind|ones|radius|box|length|set))", (("x", "no. "),)),
    # --- a time to come
    Plainer(("? ",), rf"{_WHETHER}(?P<x>)(?={_SOON}(?=[.,;!]|$))", (("x", "not yet. "),)),
    Plainer(("like to say", "love to say", "wish i could say"), rf"{_WHETHER}(?P<x>(?:i'd (?:like|love) to say|i wish i could say) (?:yes|so|it is|i did|they are)[.,;] (?:but |and )?)(?={_BEFORE_NO})", (("x", ""),)),
    Plainer(("? with what",), rf"{_WHETHER}(?P<x>with what[,.;?!]+ (?:i|we|there) (?:had|have|was|got|didn't|never|couldn't)[^.?!;]*)(?=[.;!]|$)", (("x", "no"),)),
    # --- one side and the other
    Plainer((" yes", " yeah", " sure", " yep"), rf"{_WHETHER}(?P<x>{_PLACES},? (?:yes|yeah|yep|sure)[.,;] (?:but |and )?{_PLACES},? (?:no|nope|nah|not|not yet))(?=[.,;!]|$)", (("x", "no"),)),
    Plainer((" no.", " no,", " nope", " not"), rf"{_WHETHER}(?P<x>{_PLACES},? (?:no|nope|nah|not|not yet)[.,;] (?:but |and )?{_PLACES},? (?:yes|yeah|yep|sure))(?=[.,;!]|$)", (("x", "no"),)),
    # --- all of it
    Plainer(("tabs ",), rf"{_STARTS}(?P<x>{_LEADS}(?:{_ASKS}|are |were |did i (?:get|bend|fold|hammer)(?: down| over)? )?(?:the |all |of |my )*tabs (?:all |get |got )*(?:bent|bend|folded|fold|down|hammered|over)(?: (?:over|down|flat|in|up|tight|all|around))*\? (?:{_ALL}|yes|yeah|yep|yup|sure|sure are|(?:yes,? |yeah,? )?(?:they (?:sure )?are|i (?:sure )?did|they all are)|you bet))(?=[.,;!]|$)", (("x", "the tabs are bent"),), unless=r"cross tabs|all but|except"),
    Plainer(("vanes",), rf"vanes(?: (?:all|in|there|put in|in it))*\? (?P<x>{_ALL}(?: in)?)(?=[.,;!]|$)(?![^?!]{{0,60}}(?:truck|box|shop|bench|order|missing|short))", (("x", "they're in"),), unless=r"all but|except"),
    Plainer(("how many",), rf"{_STARTS}{_LEADS}(?P<x>how many (?:of the |of my |of )?tabs (?:are |did (?:i|we) |got |have i |i got )(?:bent|bend|folded|fold|down|over|hammered)(?: (?:down|over|flat))?\? (?:just |only |about |maybe )*(?P<n>{_N}) (?:out )?of (?:the )?(?!(?P=n)(?![\w])){_N})(?=[.,;!]|$)", (("x", r"only \g<n> of the tabs are bent"),)),
    # --- a part of it
    Plainer((" tabs",), rf"{_STARTS}{_LEADS}(?:{_ASKS}|are |were |did i (?:get|bend|fold|hammer)(?: down| over)? )?(?:the |all |of |my )*(?:tabs)(?: (?:all|bent|bend|folded|down|over|in|up))*\? (?P<x>{_YES_BUT}?{_SOME}|{_YES_BUT}{_EXCEPT}){_PART_ENDS}", (("x", "no"),), unless=r"cross tabs"),
    Plainer((" vanes", "vanes"), rf"{_STARTS}{_LEADS}(?:{_ASKS}|are |were |did i get )?(?:the |all |of |my |turning )*vanes(?: (?:all|in|there|put in))*\? (?P<x>{_YES_BUT}?{_SOME}|{_YES_BUT}{_EXCEPT}){_PART_ENDS}", (("x", "no"),)),
    Plainer(("? part", "? most", "? almost", "? nearly", "? half", "? kind of", "? sort of", "? just about", "? more or less", "? well, ", "? yes", "? a bit"), rf"{_STARTS}{_LEADS}{_OF_IT}(?:taped?|stapled?){_ALL_OF_IT}\? (?P<x>(?:well, |{_YES_BUT})?(?:partly|mostly|almost(?: all)?|nearly(?: all)?|part ?way|half ?way|a bit|kind of|sort of|just about|more or less|in part)(?: (?:around|round|done|so|up))*)(?=[.,;!]|$)", (("x", "no"),)),
    *(
        Plainer(("? ",), rf"{_STARTS}(?P<x>{_LEADS}{_OF_IT}{verb}{_ALL_OF_IT}\? {_YES_BUT}?)(?=(?!not ){_SOME}|{_EXCEPT}|on (?:the (?!truck|van)|all|both|one|two|three|four)|all but |except |every(?:thing|where) but ){_YET}", (("x", f"{done} "),), unless=rf"{verb}[^.?!]*\? {_N} (?:inch|apart|and a|by )")
        for verb, done in (("taped?", "taped"), ("stapled?", "stapled"))
    ),
    *(
        row
        for verb, done in (("taped?", "taped"), ("stapled?", "stapled"))
        for row in (
            Plainer(("? ",), rf"{_STARTS}(?P<x>{_LEADS}{_OF_IT}{verb}{_ALL_OF_IT}\? {_YES_BUT}?(?:only |just |on )*{_SIDE}(?: only)?)(?=[.,;!]|$)", (("x", f"only one side is {done}"),)),
            Plainer(("? ",), rf"{_STARTS}(?P<x>{_LEADS}{_OF_IT}{verb}{_ALL_OF_IT}\? {_YES_BUT}?(?:only |just |on )*){_SIDES}(?P<y>(?: only)?)(?=[.,;!]|$)", (("x", "only "), ("y", f" is {done}"))),
        )
    ),
    Plainer(("? ",), rf"{_STARTS}{_LEADS}{_OF_IT}(?:rub(?:bed)?|wiped?|trim(?:med)?|cleaned){_ALL_OF_IT}\? (?P<x>{_YES_BUT}?{_SOME}|{_YES_BUT}{_EXCEPT}|(?:just |only |on )*(?:{_SIDES}|{_SIDE})(?: only)?){_PART_ENDS}{_YET}", (("x", "no"),)),
    Plainer(("staples? ",), rf"{_STARTS}(?P<x>{_LEADS}(?:the |any )?staples\? (?:yes, |just |only |on )*)(?=(?:one|two|three|all four|four) sides?(?: only)?(?:[.,;!]|$))", (("x", "stapled "),)),
    *(Plainer(("? ",), rf"{_STARTS}(?P<x>{_LEADS}(?:did (?:i|we) {verb} (?P<n>{_NAMED})|(?:is|was) (?P<m>{_NAMED})(?: all)? {done})\? {_YES_BUT}?(?:only |just )?)(?=(?!not ){_SOME}|{_EXCEPT}|on (?:all|both|one|two|three|four)|all but |except )", (("x", rf"\g<n>\g<m> {done} "),)) for verb, done in (("tape", "taped"), ("staple", "stapled"))),
    # --- what he could see through the tape, and whether the facing was clean
    Plainer(("scrim",), rf"(?P<x>(?:(?:can|could) (?:you|i|we) see|does|is|do i see|did|was) (?:the |any )?(?:scrim|weave)(?: (?:show|showing|come through|coming through|through|at all|yet|there))*\? (?:well,? )?(?:not (?:really|much|quite|everywhere|all over|very|so much|yet|on [\w ]{{3,24}})|no|nope|barely|hardly|scarcely|a little|in spots|in places|only [\w ]{{3,24}}|just [\w ]{{3,24}}|kind of|sort of|not at all|maybe half|half of it))(?=[.,;!]|$)", (("x", "the scrim doesn't show"),)),
    Plainer(("scrim? ",), r"(?<![\w'])scrim(?P<x>\? )(?=(?:showing|shows|showed|you can see|coming through))", (("x", " "),)),
    Plainer(("clean? ", "clean first? ", "clean it? ", "dust free? ", "clean when "), rf"{_STARTS}{_LEADS}(?P<x>(?:(?:is|was) (?:it|the (?:facing|foil|surface|board)) )?clean(?: first| enough)?\? )(?P<y>(?:no|nope|nah|it was not|it wasn't|it isn't|it's not|hardly|not really|not so much|not quite|not very|not at all|far from it|filthy|dusty)(?=[.,;!]|$))", (("x", "wiped? "), ("y", "no"))),
    # --- a measure that was asked for, and is not so
    Plainer(("staples at", "staples every", "staples on"), rf"{_STARTS}{_LEADS}(?P<x>(?:are |were )?(?:the |my |all the )*staples (?:all |still )?(?:at|every|on|spaced) {_MEASURE}(?: (?:apart|centers?))?\? (?:no|nope|nah|they are not|they aren't|they're not|not quite|not hardly|not really|almost|close|not even close)[.,;] (?:(?:they're|they are|it's|more like|i'm|mine are|they came out|they run|they're more like) )?(?:at |every |about )*)(?={_MEASURE}(?![\w'/-]))", (("x", "the staples are at "),)),
    # --- which way, from which end, by which end
    Plainer((" way ", " legs", "clinch?", "clinched?"), rf"{_STARTS}{_LEADS}(?P<x>(?:(?:(?:which|what) way|how) (?:(?:do|did|are|were|does|is) )?(?:the |my )?(?:(?:staple )?legs?|staples|clinch)(?: (?:on \w+|go|turn|fold|clinch|clinched|point|pointing|face|facing|turned|bent))*|(?:the |my )?(?:legs|staple legs)(?: (?:which way|turned|clinched|go))?|(?:the )?clinch(?:ed)?(?: which way)?)\? (?:they (?:all )?(?:go|turn|fold|clinch|point) |they're |to the |turned |all )*(?P<w>in|out)(?:ward|side)?s?(?:, not (?:in|out)(?:ward)?)?)(?=[.,;!]|$)", (("x", r"the legs are clinched \g<w>ward"),)),
    Plainer((" step",), rf"{_STARTS}{_LEADS}(?P<x>(?:(?:which|what) way(?:'s|'d| is| does| did| was)? (?:the )?(?:low )?step(?: (?:go|face|facing|turned|end up|sit))?|(?:the )?(?:low )?step(?:'s| is)?(?: where| which way| on which side)?|where(?:'s| is) (?:the )?(?:low )?step)\? (?:it's |it goes |it faces )?(?:to |on |toward )?(?:the )?)(?P<w>in|out)(?P<y>(?:side|ward|wards)?)(?=[.,;!]|$)", (("x", "the step is to the "), ("y", "side"))),
    Plainer((" air ", "air?"), rf"{_STARTS}{_LEADS}(?P<x>(?:(?:(?:by |at |from |out of )?which end|where) (?:does|did|is) (?:the )?air (?:leave|leaving|go out|going out|come out|coming out|exit|get out|blow out)(?: (?:by|from|at|of|through))?|(?:the )?air (?:leaves|goes out|comes out)(?: (?:where|by which end|which end|by))?|which end(?:'s| is) the air (?:out|out of))\? (?:by |at |from |out )?(?:the )?)(?P<e>male|female)(?P<y>(?: end| one)?)(?=[.,;!]|$)", (("x", "the air leaves by the "), ("y", " end"))),
    Plainer(("which end", "what end", "from where"), rf"{_STARTS}{_LEADS}(?P<x>(?:(?:laid (?:it )?out|made|measured|built|started|marked (?:it )?out)(?: it)? (?:from|off) (?:which|what) end|(?:from |off )?(?:which|what) end (?:did|do) (?:i|we) (?:lay it out|lay out|start|measure|make it|build it|mark it out)(?: it)?(?: (?:from|off|at|on))?|(?:from )?(?:which|what) end (?:was|is) it (?:laid out|made|measured|started)(?: from| off)?)\? (?:from |off )?(?:the )?)(?P<e>male|female)(?P<y>(?: end| one)?)(?=[.,;!]|$)", (("x", "laid it out from the "), ("y", " end"))),
    # --- what tape it was
    Plainer(("what tape", "which tape", "what kind of tape", "what roll", "which roll"), rf"{_STARTS}{_LEADS}(?P<x>(?:what|which)(?: kind of| sort of)? (?:tape|roll)(?: (?:is|was|did|i|we|use|used|it|on|that|got|goes|went))*\? (?:it has |it's got |there's |there was )?)(?=(?:no|nothing) (?:name|mark|marking|number|print|printing|writing|label|stamp|listing))", (("x", "the tape has "),)),
    # --- harm by its place, and its mend by what it was mended with
    Plainer(("torn?", "ripped?", "punctured?", "crushed?", "dented?", "tears?", "holes?", "damaged?"), rf"{_STARTS}{_LEADS}(?P<x>(?:is |was )?(?:it )?(?P<h>torn|ripped|punctured|crushed|dented)(?: anywhere| at all)?\? )(?=(?:just |only )?(?:on|at|along|in|by|near) the )", (("x", r"it's \g<h> "),)),
    Plainer(("? with ", "? tape ", "? used "), r"(?P<x>(?P<v>fix|patch|mend|repair)(?:ed)?(?: it| that)?\? (?:just |only |yes, |yeah, )*(?:with |used )(?:just |only |some |a piece of |a strip of )*)(?=(?:foil )?tape|mastic|fabric|glass fabric|a plug|cloth tape|duct tape)", (("x", r"\g<v>ed it with "),)),
    Plainer(("? part", "? half", "? most", "? some", "? only ", "? just ", "? the ", "? a few", "? yes", "? all but"), rf"{_STARTS}{_LEADS}{_OF_IT}(?:the |that )?(?:tear |hole |rip |corner )?(?:fix(?:ed)?|patch(?:ed)?|mend(?:ed)?|repair(?:ed)?){_ALL_OF_IT}\? (?P<x>{_YES_BUT}?{_SOME}|{_YES_BUT}{_EXCEPT}){_PART_ENDS}{_YET}", (("x", "no"),)),
    Plainer(("about it?", "about that?", "with it?", "with that?", "for it?", "to it?", "about them?"), rf"{_HARM}(?:(?!seam)[^?]){{0,90}}?[.!;] (?P<x>(?:so |and |now )*(?:what did (?:i|we) do (?:about|with|for|to) (?:it|that|them)\? (?:(?:absolutely|just) )?(?:nothing|not a thing|not much|left it|i left it|zip)|(?:did|have) (?:i|we) (?:do|done) anything (?:about|with|for|to) (?:it|that|them)\? (?:no|nope|nah|not yet|i didn't|not a thing|nothing)))(?=[.,;!]|$)", (("x", "it's not repaired"),)),
    Plainer(("? no", "? nah", "? never", "? forgot", "? i did", "? it is", "? it's", "? haven't", "? we did"), rf"{_ASKED_OF_HARM}(?:no|nope|nah|never|never did|forgot(?: to)?|i didn't|i did not|it isn't|it's not|it is not|haven't|we didn't|not really|not quite)(?:,? (?:i|we|it) (?:did not|didn't|haven't|isn't|is not|never did))?)(?=[.,;!]|$)", (("x", r"there's a \g<h>\g<g>, it's not repaired"),)),
    Plainer(("? not yet", "? no, not yet", "? haven't yet", "? still "), rf"{_ASKED_OF_HARM}(?:no, )?(?:not yet|haven't yet|still (?:to do|have to)|{_SOON}))(?=[.,;!]|$)", (("x", r"there's a \g<h>\g<g>, it's not repaired yet"),)),
    Plainer(("? yes", "? yeah", "? yep", "? sure", "? i did", "? it is"), rf"{_ASKED_OF_HARM}(?:yes|yeah|yep|sure|i did|it is|sure did|it was)(?:,? (?:i|we|it) (?:did|is|was))?(?P<w>,? (?=with ))?)(?=[.,;!]|$|with )", (("x", r"there's a \g<h>\g<g>, I fixed it "),)),
    # --- the mend, which waits for its plug or is not there
    Plainer(("plug", "patch", "repair", "mend"), rf"{_STARTS}(?P<x>{_LEADS}(?:is there |any |the |a |my |board )*{_MEND}\? (?:{_NOT_CUT} yet|{_NOT_CUT}(?= )|not yet|{_SOON}))(?=[.,;!]|$)", (("x", "it's not repaired yet"),)),
    Plainer(("plug", "patch", "repair", "mend"), rf"{_STARTS}(?P<x>{_LEADS}(?:is there |any |the |a |my |board )*{_MEND}\? (?:(?:no|nope|nah|none|{_NOT_CUT}|{_WHY_NOT})))(?=[.,;!]|$)", (("x", "it's not repaired"),)),
    Plainer(("fixed?", "patched?", "mended?", "repaired?", "fix it?", "patch it?", "mend it?", "repair it?"), r"(?:fix(?:ed)?|patch(?:ed)?|mend(?:ed)?|repair(?:ed)?)(?: it| that| yet)*\? (?P<x>(?:(?:no|nope|nah|not yet)[.,]+ )?(?:(?:i'm|we're|it's|that's|still|just) )*(?:waiting|held up|holding)(?: here| still)? (?:on|for) (?:the |more |some |a |my |foil |fabric |patch )*(?:tape|mastic|fabric|board|plug|patch|stuff|bucket|roll)(?: (?:for|to do) (?:that|it))?)(?=[.,;!]|$)", (("x", "not yet"),)),
    # --- whether it is joined to the next one
    Plainer(
        ("? no", "? not", "? nah", "? neg", "? it isn't", "? it's not"),
        rf"{_STARTS}(?P<x>{_LEADS}(?:is|was|has) (?:it|this one|that one|she)(?: been| all)* {_JOINED}(?: (?:in|up))? (?:to|with|into|onto) (?:the |number )?[\w' -]{{1,25}}?(?: yet)?\? {_FOUND})(?=[.,;!]|$)",
        (("x", "still have to tie it in"),),
    ),
    Plainer(
        ("joint", "tie-in", "tie in", "connection"),
        rf"{_STARTS}(?P<x>{_LEADS}(?:is |was )?(?:the |my )?(?:joint|tie[- ]in|connection) (?:to|at|with|between|into) (?:the |number )?[\w' -]{{1,25}}?(?: (?:closed|done|made|taped|tight|up))?(?: yet)?\? (?:{_FOUND}|(?:still |it's |that's |wide )*open|(?:still |it's )*not (?:closed|done|made|taped)(?: up)?))(?=[.,;!]|$| yet)",
        (("x", "still have to tie it in"),),
    ),
)
