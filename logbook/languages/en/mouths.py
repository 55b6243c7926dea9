"""English as it is spoken on a job: by those who learned it late ("the step I cut it to outside", "no have tape"), and by those who speak it their own way
("she ain't got no tape on her", "finna tape it"); and the plain words that it is read as.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_THING = r"(?:tape|mastic|staples?|(?:turning )?vanes?|cross tabs?|tabs?|flaps?)"
_HARM = r"(?:gaps?|tears?|rips?|holes?|damage|dents?|punctures?)"
_ENDS = r"(?=[.,;!]|$)"
_PIECE = r"(?:straight|elbow|tee|wye|cap|end cap|collar|transition|offset|plenum|branch)(?: (?:number )?[\w-]+){1,2}"
_PART = r"(?:tape|staples?|vanes?|tabs?|flap|step|groove|facing|foil|paper|board|panel|joint|seam|gap|scrim|mastic)"
_IS = r"(?:is|are|was|were|ain't|isn't|aren't|wasn't|weren't|don't|doesn't|didn't|got|no have|not have|need|needs|stick|sticks|stay|stays|come|comes|go|goes|look|looks|face|faces)"
# (the act, what it is called when it is done, its stem)
_ACTS = (("tape", "taped"), ("staple", "stapled"), ("rub", "rubbed"), ("wipe", "wiped"), ("trim", "trimmed"), ("patch", "patched"), ("fix", "fixed"), ("repair", "repaired"), ("seal", "sealed"))
_GOING = r"(?:going to|gonna|fixing to|fixin' to|fixin to|ought to|oughta|need to|have to|want to|got to|gotta|hope to|hoping to|plan to|planning to|will|'ll|about to|aim to|trying to|try to|tryna|let me|should)"
_COUNT = r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?)"
_DENIES = r"(?:ain't|haven't|hasn't|didn't|don't|never|have not|has not|did not)"
_NONE_OF = r"(?:none of|no part of|not (?:an?|one)(?: single)? (?:inch|foot|bit|part|strip|piece|side|seam) of|not one(?: single one)? of)"
_ITS = r"(?:all |any )?(?:the|that|this|my|these|those|its) (?:tape|taping|foil|seams?|joints?|staples?|stapling|sides?|edges?|ends?|flaps?|facing|board|surface)"
_GONE_WRONG = r"(?:(?:peel|lift|bubbl|wrinkl|curl|pucker|flar|gapp)(?:ed|ing|ling|led|s)?(?: (?:up|off|back))?|(?:missed|misfired|bent|broke|broken|popped|pulled through|wasted|torn|loose|tore)(?: (?:up|off|out|over|loose))?|(?:off|up|loose|undone) (?:again|on me))"

ENGLISH_MOUTHS = (
    Plainer(("plumb", "dang", "darn", "damn", "doggone", "dadgum", "frick", "freak", "frigg", "fuck", "bloody", "stinkin"), r"(?P<x>(?:plumb|dang|darn|damn|doggone|dadgum|frickin'?|frigging|freakin'?|freaking|friggin'?|fuckin'?|fucking|goddamn|bloody|stinkin'?|stinking) )(?!near|sure|nail)(?=[a-z])", (("x", ""),)),
    Plainer((" near", "nigh"), r"(?P<x>(?:damn|darn|dang|dern|pert|purt|pretty|mighty|goddamn)[- ](?:near|nigh)|near about|near 'bout|nigh on(?:to)?)(?= (?:all |completely |finished |done )?(?:taped|stapled|rubbed|trimmed|wiped|finished|done|sealed))", (("x", "almost"),)),
    # --- a piece that is "she": what is on her is on it, and she is no woman who taped
    Plainer(("she ", "she's "), r"(?P<x>she)(?= (?:ain't|(?:do|does|did|has|is|was)(?:n'?t| not)|has|had|is|was|got|never got|never had|needs?|wants)(?![\w'])[^.?!;,]{0,40}? (?:on|in|inside|to|for) her(?![\w'])(?! (?:piece|own|\w+ (?:straight|elbow))))", (("x", "it"),)),
    Plainer((" on her", " in her", " inside her"), rf"she(?:'s)? [^.?!;,]{{1,50}}? (?:on|in|inside) (?P<x>her){_ENDS}", (("x", "it"),)),
    Plainer(("she's ", "she is ", "she got "), r"(?P<x>she)(?:'s| is| got)(?= (?:all |good |done |just |only |still |not |already |been |pretty much |real |well |got |half )*(?:un)?(?:taped|stapled|rubbed|sealed|trimmed|wiped|hung|tight|buttoned|closed|wet|soaked|torn|missing|short|lacking|open|bare|ready|finished|rained on|dinged|crushed|punctured|ripped)(?![\w'])(?! (?:the|it|that|this|my|his|all the|number|straight|elbow|tee|collar|\d)))", (("x", "it"),)),
    Plainer((" in him", " inside him", " in her"), r"(?P<x>he|she)(?P<v>'s got| has got| has| got|'s|'s gotten)(?= (?:no|not a|not any|without|nary)[^.?!;,]{1,24} (?:in|inside) (?P<y>him|her)(?![\w']))", (("x", "it"), ("v", " has"), ("y", "it"))),
    Plainer(("she ",), r"(?P<x>she)(?= (?:won't|ain't|(?:do|does|did|is)(?:n'?t| not)) (?:\w+ )?(?:pull|sit|fit|close|butt|seat|line|meet|lay|lie|hold|tight|snug)(?:ing)?(?![\w']))", (("x", "it"),)),
    # --- no and no are one no
    Plainer((" no ", " nary "), rf"(?P<x>(?:ain't|don't|doesn't|didn't|hasn't|haven't|hadn't|never) (?:hardly |really |even )?(?:got|have|had|has|see|show|find) (?:no|nary|nary a)(?: (?:kind|sort) of)?) {_HARM}", (("x", "has no"),)),
    *(
        Plainer((f"{done} none", f"{act} none"), rf"(?P<x>(?:{_I} )?{_DENIES} (?:really |even |yet |got )?(?:{done}|{act})(?: down)? none(?: of (?:it|that|this|them|the|my|that there)(?: (?:tape|staples|tape down|seams?|joints?))?)?(?: down)?)(?![\w'])", (("x", f"didn't {act} it{' down' if act == 'rub' else ''}"),))
        for act, done in _ACTS[:4]
    ),
    # --- none of it, not an inch of it: "none of that tape is rubbed down"
    *(
        Plainer(("none of", "no part of", "not an inch of", "not one ", "not a "), rf"(?P<x>{_NONE_OF} (?:it|that|this|{_ITS}(?: (?:on|of) (?:it|there|this one|that one))?)(?:(?:'s| is| was| are| were| got| gets| has| have|'ve)?(?: (?:ever|yet|even))?(?: (?:been|got|gotten))?)) (?P<v>{done})(?![\w'])", (("x", "it is not"),))
        for _, done in _ACTS[:5]
    ),
    Plainer(("none of", "not one ", "no part of"), rf"(?<=[.,;!] )(?P<x>(?:and |but |so )?{_NONE_OF} {_ITS}(?: (?:on|in) (?:it|there))?(?:'s| is| was| are| were| has| have| looks?| seems?)?(?: (?:been|come|came|gone|went))? {_GONE_WRONG})(?=[.,;!]|$| and | on | at | in )", (("x", ""),)),
    Plainer(("not much", "not many", "not enough", "no more", "no much", "few staple", "little tape"), r"(?P<x>,? (?:because|cause|'cause|since|as|for) (?:(?:it|there|i|we|is|was|were|have|had|got|they|are|there's|it's|don't) )*(?:not much|not many|not enough|no more|no much|few|little) (?:more )?(?:staples?|tape)(?: (?:left|in the box|here|today|more|have))*)(?=[.,;!]|$)", (("x", ""),)),
    Plainer(("nothing but", "nothin but", "nothin' but"), r"(?P<x>(?:(?:there )?(?:ain't|isn't|is|there's|it's|it's got|has|got) )?nothin[g']? but (?:the )?(?P<t>staples)(?: (?:on|in) (?:it|there|this one))?)(?=[.,;!]|$)", (("x", "stapled, no tape"),)),
    Plainer(("nothing but", "nothin but", "nothin' but"), r"(?P<x>(?:(?:there )?(?:ain't|isn't|is|there's|it's|it's got|has|got) )?nothin[g']? but (?:the )?tape(?: (?:on|in) (?:it|there|this one))?)(?=[.,;!]|$)", (("x", "taped, no staples"),)),
    Plainer(("forget nothing", "forget anything", "forgot nothing", "miss nothing", "missing nothing", "miss anything"), rf"(?P<x>(?:{_I} )?(?:don't|didn't|do not|did not|never|not|ain't) (?:forget|forgot|miss|missed|missing|leave out) (?:nothing|nothin'|anything))(?=[.,;!]|$)", (("x", ""),)),
    Plainer(("there is not", "there are not", "there's not", "has not", "have not"), rf"(?:there is|there are|there's) (?P<x>not)(?= (?:(?:any|a) )?(?:{_HARM}|{_THING})(?![\w']))", (("x", "no"),)),
    Plainer(("n't never", "aint never"), r"(?P<x>(?:wasn't|weren't|isn't|ain't|aren't) never)(?= (?:been |got |gotten )?(?:taped|stapled|rubbed|trimmed|wiped|put|patched|fixed|bent))", (("x", "was never"),)),
    Plainer(("n't never",), r"(?P<x>(?:didn't|don't|haven't|hasn't|hadn't) never)(?= (?:tape|staple|rub|trim|wipe|put|patch|fix|bend|bent|been|got|get))", (("x", "never"),)),
    # --- what he is about to do
    Plainer(("finna", "fitna", "imma", "ima ", "i'ma", "tryna", "trynna", "gon ", "gon' ", "gna ", "fixin"), r"(?P<x>(?:i'm |i am |i'm just |we're )?(?:finna|fitna|imma|ima|i'ma|tryna|trynna|gon'?|gna|fixin'? to))(?= (?:go ahead and |get |have |go |just |start |hit |do |put |[a-z]+))(?! lie)", (("x", "i'm going to"),)),
    *(
        Plainer((f" {done}",), rf"{_GOING} (?:go ahead and |go |just |try and )*(?P<x>(?:get|have) (?:it|her|them|that|this|this one|that one) (?:all )?{done})(?=[.,;!]|$| (?:up|down|tomorrow|today|tonight|later|before|after|in|here|first|soon|when|once|by|monday|tuesday|wednesday|thursday|friday|next)(?![\w']))", (("x", f"{act} it"),))
        for act, done in _ACTS
    ),
    # --- "no have", "not have", "miss", "lack": there is none
    Plainer(("no ha", "not ha", "no got", "no exist"), rf"(?<!i )(?<!we )(?<!you )(?P<x>(?:(?:it|she|this one|this|is) )?(?:no|not) (?:have|has|got|had)(?: (?:no|any|the|a))?)(?= (?:(?:little|small|big|more) )?(?:{_THING}|{_HARM}|problem)(?![\w']))", (("x", "has no"),)),
    Plainer(("no ha", "not ha", "no exist", "no there"), rf"(?P<x>(?:the )?(?P<t>{_THING}|{_HARM}),? (?:(?:it|is|she|they) )?(?:no|not) (?:have|has|exist|there is|there are|is there|there))(?: (?:yet|still|here|inside|in it|on it))*{_ENDS}", (("x", r"no \g<t>"),)),
    Plainer(("miss", "lack"), r"(?<!n't )(?<!nt )(?<!not )(?<!never )(?<!to )(?<!you )(?<!will )(?P<x>(?:(?:it|this|she|this one|still) )?(?:is |was |have |has )?(?:miss|misses|lack|lacks|lacking|missing)(?: of)?(?: (?:the|some|its|any|a))? )(?P<t>tape|mastic|staples?|vanes?)(?= (?:in|on|at|of|one|the|two|three|all|inside|for|yet|still|to)(?![\w'])|[.,;!]|$)(?! (?:on|at) (?:site|the (?:site|job|shop|truck)))", (("x", "no "),), unless=r"missing (?:tape )?(?:gun|measure)|a little|just missing"),
    Plainer(("lack",), rf"(?<!for )(?<!any )(?P<x>(?:is )?lack(?:ing)? of )(?={_THING}(?![\w']))", (("x", "no "),)),
    Plainer((" lack", " miss"), r"(?P<x>(?:only )?(?:the )?(?P<t>tape|mastic|staples?|vanes?) (?:only )?(?:(?:is|are|was) )?(?:lack|lacks|miss|misses|lacking)(?: yet| still)?)(?=[.,;!]|$| (?:in|on|at|of|one|inside|for)(?![\w']))", (("x", r"no \g<t>"),)),
    Plainer((" zero", " none", " nothing", " no"), rf"(?<!no )(?<!no the )(?<!nor )(?P<x>(?:{_I} )?(?:(?:did|do|make|made|put|have|had|get|got) )?(?:the )?(?P<t>(?:turning )?vanes?|staples?|tape|rub|mastic) (?:zero|nothing|none|no)){_ENDS}(?!, (?:mastic|stapled?|taped?|yes)(?![\w']))", (("x", r"no \g<t>"),)),
    Plainer((" me not ", " us not ", " me no ", " us no "), rf"(?P<x>(?:they )?(?:give|gave|bring|brought|send|sent) (?:me|us) (?:not|no)(?: (?:the|any))?) (?={_THING}(?![\w']))", (("x", "i have no"),)),
    Plainer(("wait",), r"(?:is |are |am |still )?wait(?:s|ing)?(?P<x>) (?=(?:the |its |my )?(?:turning )?(?:vanes?|tape|staples)(?![\w']))", (("x", " for"),)),
    Plainer(("want to be", "wants to be"), rf"(?:{_PIECE}|it|she|this one|this),? (?P<x>wants? to be)(?= (?:still )?(?:taped|stapled|rubbed|wiped|trimmed|patched|fixed|sealed))", (("x", "needs to be"),)),
    *(
        Plainer((f" and {act}",), rf"(?:have to|got to|gotta|need to|going to|gonna|will|'ll|should) (?P<x>(?:get|go|come|climb|crawl|head|run|circle)(?: (?:back|up|down|over|around|in|on|out|to|there|here|it))* and )(?={act}(?![\w']))", (("x", ""),))
        for act, _ in _ACTS[:5]
    ),
    Plainer(("the only thing", " is all "), r"(?P<x>(?:the )?(?P<t>tape|taping|vanes?|staples|rubbing|rub)(?:'s| is| are|s) (?:the only things?|all)(?: that)?(?: (?:it's|it is|she's|that's|is|are|it|she))? (?:missing|wanting|lacking|left|needed|short|wants|needs|lacks|wantin'|missin'|lackin'|left to do))(?![\w'])", (("x", r"still needs \g<t>"),)),
    *(
        Plainer(("nobody", "no one", "no-one", "can't anybody"), rf"(?P<x>(?:(?:can't|ain't) nobody(?: gonna)?|can't anybody|(?:nobody|no one|no-one)(?: can|(?:'s| is)(?: ever)? (?:gonna|going to)| will|'ll| could| gets to)(?: ever)?) (?:say|claim|tell (?:you|me|us|anybody))(?: that)? {_I} (?:didn't|never|forgot to|did not) {act}(?:d|ped|bed)?)(?![\w'])", (("x", f"i {done}"),))
        for act, done in _ACTS[:5]
    ),
    Plainer(("nobody", "no one", "no-one"), rf"(?P<x>(?:nobody|no one|no-one)(?: can|'s gonna|'s going to| is going to| is gonna| will|'ll| could)(?: ever)? (?:say|claim|tell (?:you|me|us|anybody))(?: that)? {_I} (?:left|closed|hung|built|made) (?P<w>[^.?!;,]{{1,30}}?) without (?:any |its |the |the turning |turning )?(?P<t>tape|mastic|staples|vanes))(?=[.,;!]|$)", (("x", r"i put \g<t> in \g<w>"),)),
    *(
        Plainer((f"{act} ", f"{act},"), rf"(?:(?<=[.;!?,] )|^)(?P<x>(?:and |but )?{act}(?: (?:it|them|her|that|this one))?(?: (?:down|off|up))?(?:,? (?:though|however|now))?,? (?:that|this),? (?:(?:they|you|he|people|anybody|anyone) (?:can|could|may) say )?{_I} (?:just )?(?:didn't|did not|never did|haven't))(?=[.,;!]|$| yet)", (("x", f"i didn't {act} it"),))
        for act, _ in _ACTS[:7]
    ),
    # --- what he forgets is what he forgot
    Plainer(("forget", "forgot"), rf"(?P<x>{_I} (?:also )?(?:forget|forgot|forgotten)(?:(?: to)? (?:put|place|install|insert|do|make|apply)(?: in)?)?(?: (?:the|my|some|any))? (?P<t>{_THING}))(?! (?:gun|measure|at|that|was|were|is|are|if|how|which|what|width|number))(?![\w'])", (("x", r"i forgot the \g<t>"),)),
    Plainer((" i forg", " we forg"), rf"(?P<x>(?:the )?(?P<t>tape|staples?|vanes?),? {_I} (?:forget|forgot)(?: (?:it|them|inside|in|on|to|put|place|install)){{0,4}}){_ENDS}", (("x", r"i forgot the \g<t>"),)),
    Plainer(("i forget to ", "we forget to "), rf"{_I} (?P<x>forget) to (?:tape|staple|rub|wipe|trim|put|bend)(?![\w'])", (("x", "forgot"),), unless="always|never|sometimes|usually"),
    Plainer(("still need", "needs the", "needs its", "need the", "need its"), rf"(?:still |{_PIECE},? (?:(?:is )?(?:ready|done|ok|okay|made|finish|finished|all good),? )?(?:but )?(?:still |it )?)needs?(?P<x> (?:the|its|some|my|his))(?= (?:turning )?(?:vanes?|tape|staples)(?! (?:gun|measure|from|back|for|number|in the)))", (("x", ""),)),
    # --- the thing stands first, and is told of again behind it
    Plainer((" she ", " he ", " they ", " it "), rf"(?:(?<=[.,;] )|^)(?:(?:and|but|because|so|only) )?(?:the |my |this )?{_PART} (?P<x>(?:she|he|they|it) )(?={_IS}(?![\w'])(?! \w+ing(?![\w'])))", (("x", ""),)),
    Plainer((" she ", " he "), rf"(?:(?<=[.,;] )|^)(?:the |my |this )?{_PIECE} (?P<x>(?:she|he) )(?=(?:is|are|was|no have|not have)(?![\w'])(?! \w+ing(?![\w'])))", (("x", ""),)),
    Plainer(("step i ", "step, i ", "step we ", "groove i "), rf"(?P<x>(?:the )?(?:low )?(?:step|groove),? {_I} (?:cut|make|made|put|did|do|turn|turned|face|faced|have|leave|left)(?: it)?(?: (?:to|toward|on|in|at|facing))?(?: the)?) (?P<y>out ?side|inside)(?![\w'])", (("x", "the step is"),)),
    Plainer((" i not ", " we not ", " i no ", " we no "), rf"(?:the )?(?P<t>vanes?|staples?|tape|tabs)(?P<x> {_I} (?:no|not) (?:put|install|place|insert|have|use|bring)(?: (?:it|them))?){_ENDS}", (("x", " not put in"),)),
    # --- the plain form of a verb for what it left: "is break", "not fix"
    Plainer((" rip", " tear", " tore", " brea", " broke", " crack"), r"(?:foil|facing|paper|cover|skin|jacket)(?: (?:of|on) (?:the )?\w+)?(?P<x>(?: (?:is|are|was|got|get|have))+ (?:little |all |a bit )?(?:rip|tear|tore|break|broke|broken|crack|cracked))(?![\w'])", (("x", " is torn"),)),
    Plainer((" broke", " brea", " crack", " smash"), r"(?:board|corner|edge|end|insulation|panel)(?: (?:of|on) (?:the )?\w+)?(?P<x>(?: (?:is|are|was|got|get|have))+ (?:little |all |a bit )?(?:break|broke|broken|crack|cracked|smash))(?![\w'])", (("x", " is crushed"),)),
    Plainer((" no ", " not "), rf"(?:(?:and|but|is|was|still|yet|{_I}) )*(?P<x>(?:no|not) (?:yet )?(?:fix|repair|patch)(?: (?:it|yet|still|that|them))*){_ENDS}(?<!fix to)", (("x", "not repaired"),), unless=r"no (?:damage|tear|hole|rip)"),
    Plainer((" not do", " not make", " no do", " no make"), r"(?:tape|taping|rub|rubbing|staples?|stapling|vanes?|trim)(?P<x> (?:is )?(?:not|no) (?:do|make))(?= yet|[.,;!]|$)", (("x", " not done"),)),
    Plainer((" not put", " no put"), rf"(?:in the (?:hand|box|truck|bag|van)|still|here|yet), {_I} (?P<x>(?:not|no) put)(?=[.,;!]|$)", (("x", "didn't put them in"),)),
    Plainer(("opening",), r"(?P<x>(?:an? )?opening) (?=(?:of )?(?:an? )?(?:three |five |seven |one )?(?:half|quarter|quarters|eighths?|sixteenths?|1/[248]|3/8|5/8|3/4|3/16|1/16)(?: (?:of an )?inch| in)? (?:with|to|at|against|between|from|by))", (("x", "a gap"),)),
    Plainer((" not of ", " is not ", "isn't "), r"tape (?P<x>(?:is not|isn't|was not|wasn't) (?:of |the |a )*(?:cloth|duct tape|duct|masking)(?: (?:tape|kind|type|one))?,? (?:but |it )*(?:is|it's|was|but)) (?=(?:the )?(?:181|foil|aluminum|pressure))", (("x", "is"),)),
    Plainer(("humid", "moist"), r"(?:board|panel|insulation|facing|it|all) (?:is|was|got|feels) (?:all |still |a bit |little )?(?P<x>humid|moist)(?![\w'])", (("x", "wet"),)),
    Plainer(("step ",), r"step(?P<x>(?: is)? (?:going|goes|go|gone|went|looking|look) (?:to the )?(?P<w>out|in))(?=[.,;!]|$)", (("x", r" is \g<w>side"),)),
    Plainer(("waiting",), r"(?P<x>(?:the )?(?P<t>vanes|tape|staples),? (?:i am|we are|i'm|we're|i|we) (?:still )?wait(?:ing)?(?: (?:for )?(?:them|it))?)(?=[.,;!]|$)", (("x", r"waiting for \g<t>"),)),
    Plainer(("close", "cover", "fill"), rf"(?:hole|tear|rip|cut)[^.?!]{{0,40}}?(?P<x>{_I} (?:did not|didn't|no|not|don't) (?:close|closed|cover|covered|fill|filled)(?: it)?)(?=[.,;!]|$)", (("x", "not repaired"),)),
    *(
        Plainer((f"to {act}",), rf"(?P<x>{_I} (?:meant|wanted|intended|was going|were going|was fixing|was supposed) to {act})(?= [^.?!]{{1,30}}[,.;] (?:but |and )?(?:it |that )?(?:just |flat |plumb |clean |completely |totally |slap )*(?:slipped my mind|slipped by me|got away from me|got by me|escaped me))", (("x", f"i forgot to {act}"),))
        for act, _ in _ACTS[:5]
    ),
    Plainer((" press", " squeeg", " smooth"), rf"(?:(?:but|and|{_I}|is|tape) )*(?P<x>(?:no|not) (?:use |used )?(?:the |my )?(?:press|squeegee|smooth)(?:e?d)?(?: (?:it|them|the tape|down|good|well|with (?:the |my |a )?(?:squeegee|tool|roller|stick|paddle|iron|hand)))*){_ENDS}", (("x", "not rubbed down"),)),
    # --- told in the past, and then as it is now
    Plainer(("now ", "today "), rf"(?P<x>(?:before|first|yesterday|earlier|this morning|in the morning),? (?:it |she |this )?(?:(?:has|have|had|is|was|with|no have|not have) )*(?:no |without )?(?P<t>tape|staples?|vanes?)[,.;] (?:but |and )?(?:now|today) (?:{_I} )?(?:already )?(?:put|install|have|has|is|with|it has|it have|yes|yes it is|yes it has))(?: (?:it|them|in))?(?![\w'])", (("x", r"\g<t> is in"),)),
    Plainer(("now is ", "now have ", "now has "), r"(?:[,.;] |but |and )now(?P<x>)(?= (?:is|have|has) (?:tape|staple|vane|rub|all |good |wip|trim|patch|repair|close|seal|tight))", (("x", " it"),)),
    # --- "is tape and staple": is taped and stapled
    *(
        Plainer((f" {act}",), rf"(?<!there )(?:is|it's|was|are|be|been|is taped and|is tape and|is staple and|is stapled and)(?: (?:all|now|already|good|well|also|both|not|not yet))* (?P<x>{act})(?= (?:and|all|every|with|yet|already|good|well|four|in all|too|also|complete|completely|around)(?![\w'])|[.,;!]|$)(?! (?:and|with) (?:a |the )?(?:measure|gun))", (("x", done),), unless=r"(?:left|missing|remain|thing|what|which|need|problem|rest|type|kind|between)")
        for act, done in (("tape", "taped"), ("staple", "stapled"), ("rub", "rubbed"))
    ),
    Plainer(("all the side", "all side ", "all side,", "all side.", "every sides"), r"(?P<x>(?:in |on )?(?:all the sides?|all side|every sides))(?![\w'])(?! (?:seams?|panels?|pieces?))", (("x", "on all sides"),)),
    # --- the neighbour that a gap is at
    Plainer((" gap", " open"), rf"(?:^|(?<=[.,;] ))(?:(?:but|and|so|only) )?(?P<x>(?:with|against|at|by|between (?:it|she|her|he|him|this|this one|that) and|(?:the )?joint (?:with|to|at)) (?:the )?(?:number |straight |piece |no\.? )?(?:\d+|{_COUNT}) )(?=(?:the joint )?(?:is|there's|there is|has|have|{_I} have|got|it's|it has|we have)(?: (?:a|one|little|small|some|an|about))* (?:gap|open|space|{_COUNT}|\d))", (("x", ""),)),
    # --- a side that is spaced otherwise
    Plainer((" side", " back", " bottom", " top"), r"(?:every|each|stapled?) (?:two|2)(?: inch(?:es)?)?(?P<x>,? (?:and |but |only |except )*(?:in |on )?(?P<s>(?:one|the (?:back|top|bottom|left|right|other|last)) side|the (?:back|top|bottom|left|right)),?(?: is| are| it's| i put| have)?(?: (?:at|every|each|in))? (?P<n>three|four|five|six|3|4|5|6)(?: inch(?:es)?)?)(?=[.,;!]|$| because| apart)", (("x", r" but \g<s> every \g<n>"),)),
    Plainer((" like",), r"(?!(?:looks?|looked|looking|feels?|sounds?|you|would|i|they|we|something|it's|that's|what's|is|was)(?![\w']))[\w'-]*\w(?P<x>,? like)(?=[.,;!]|$)", (("x", ""),)),
    Plainer(("dust", "dirt"), rf"(?P<x>(?:the )?(?:dust|dirt),? {_I} (?:didn't|did not|no|not|never|don't) (?:take|took|get|got|remove|removed|clean|cleaned|wipe|wiped|brush|blow)(?: (?:it|away|off|out|first|before))*)(?=[.,;!]|$)", (("x", "i didn't wipe it"),)),
    Plainer(("dust", "dirt"), rf"(?P<x>{_I} (?:didn't|did not|no|not|never|don't) (?:take|took|get|got|remove|removed|clean|cleaned|wipe|brush)(?: (?:away|off|out))? the (?:dust|dirt)(?: (?:away|off|out|first|before))*)(?=[.,;!]|$| before)", (("x", "i didn't wipe it"),)),
    Plainer(("tape for", "tape of"), r"(?P<x>tape (?:for|of)(?: the)? (?P<k>masking|duct|cloth|packing))(?![\w'])", (("x", r"\g<k> tape"),)),
    Plainer(("where's ", "where is ", "where are "), r"(?P<x>where(?:'s| is| are) (?:the |my |its )?(?P<t>tape|vanes|staples)(?: at)?\? (?:(?:well|it|they|she),? )*(?:ain't|isn't|aren't|not|nowhere)(?: (?:there|here|on|in|on it|in it|on there))?)(?=[.,;!]|$)", (("x", r"no \g<t>"),)),
    Plainer(("tape and staple", "staple and tape"), rf"(?<!to )(?:finish|finished|done|made|ready|complete)(?: (?:it|both|all|them|good))*,? (?P<x>(?:(?P<a>tape and staple)|staple and tape)){_ENDS}", (("x", "taped and stapled"),), unless=r"need|have to|still|must|will|going to|gonna|tomorrow|left"),
    # --- measures and places said short
    Plainer((" eight",), r"(?:legs?|staples?|gap|tear|hole|rip|open|crack)[^.,;]{0,24}? (?P<x>(?P<n>three|five|seven) eight)(?= inch|[.,;]|$| long| wide)", (("x", r"\g<n> eighths"),)),
    Plainer((" eight ",), r"(?P<x>(?P<n>three|five|seven) eight) (?=(?:inch )?(?:legs?|staples?|gap|tear|hole))", (("x", r"\g<n> eighths"),)),
    Plainer(("top of roof", "top of the roof", "top the roof"), r"(?P<x>(?:on|in|to)(?: the)? top (?:of )?(?:the )?roof)(?! (?:deck|truss|joist))", (("x", "on the roof"),)),
    # --- whose it is
    Plainer((" not me", " not us", " not i", "i not ", "i no ", "we not ", "we no "), r"(?:^|(?<=[.;,] ))(?P<x>(?:my|the|a|one|our) (?:\w+ )?\w+(?:,? (?:he|she|they|who))?) (?P<y>make|made|makes|do|did|does|build|built|cut|hang|hung|stapled?|taped?)(?= [^.?!;]{1,40}, not (?:me|us|i)(?![\w']))", (("x", "somebody"), ("y", "made"))),
    Plainer((" not make", " no make", " not do", " no do", " not build", "didn't make", "didn't build"), rf"(?P<x>{_PIECE}(?:,? (?:it |that )?{_I} (?:did )?(?:not|no|didn't) (?:make|made|do|did|build|built)(?: (?:it|this one))?,? (?:it )?is (?:from|of) ))(?=(?:the |my )?(?:other|another|night|day|second|first|next|different))", (("x", "somebody else's, from "),)),
    Plainer((" i no ", " we no "), r"(?:(?<=[.,;!] )|^|(?<= but )|(?<= and ))(?:the )?(?:rub(?:bing)?(?: down)?|tape|staples?|vanes?|trim|wipe)(?P<x> (?:i|we) no (?:do|did|make|put|have|finish)(?: (?:it|them))?(?: yet| today)?)(?=[.,;!]|$)", (("x", " was not done"),)),
    Plainer((" no stick", " no hold", " no stay"), r"(?<![\w'])tape (?P<x>no )(?=(?:stick|hold|stay)(?![\w']))", (("x", "does not "),)),
)
