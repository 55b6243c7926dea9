"""English words that answer for an act named before them: "and I did", "it isn't", "Nope.", "in my dreams"."""

from __future__ import annotations

from logbook.languages.told import Echoes, OwnQuestions

_SURE = r"(?: (?:sure|sure as hell|damn well|certainly|most certainly|really|still|just|actually|finally|already|now|absolutely|definitely|honestly|plainly|simply|straight up|sure enough))*"
_IT = r"(?:i|we|it|they|she|this one|that one|this|that|mine|ours|these|those|this thing|the thing|every one|all of (?:it|them)|nothing|the piece)"
_TRAIL = (
    r"(?: (?:it|them|that|so|one|some|any|now|today|tonight|already|in|on|up|there|here|all|every one|every last one|too|though|anyway|in fact|indeed|either|yet|at all|myself|ourselves|then|right|still|done|of course|obviously|really"
    r"|after all|alright|all right|in there|on there|right now|as we speak|as well|by hand|every bit|ok|okay|thank you|for the record|sir|believe me|trust me|honest|again|for once|this time|before you ask|at last|like it or not|and then some|in place|where they belong|where it belongs|like they should be|nice|good|solid|tight))*"
)
_YES_AUX = r"(?:is|are|was|were|does|do|did|has|have|had|am|got (?:it|them|some|one|'em))"
_NO_AUX = r"(?:isn't|aren't|wasn't|weren't|doesn't|don't|didn't|hasn't|haven't|hadn't|ain't|is not|are not|was not|were not|does not|do not|did not|has not|have not|had not|never (?:did|was|were|has|have|got|had|is|are)|hasn't been|haven't been|'s not|'re not)"

_NOT_ENDING = r"(?!(?:that|this|it)(?:'s| is| was)(?: about| pretty much| really| just| basically)* (?:all|it)(?: (?:i|we|it|there)\b.*)?$)"  # "stapled two spots and that's all"

_LIES = r"(?:sitting|lying|laying|stuck|parked|standing|resting|waiting|riding|sleeping|still|just|all|right|back|over|out|safe|sound|safe and sound|nice and dry|asleep|happily|in fact|where i left them)"
_PUT_BY = (
    r"(?:trucks?|van|shop|gang ?box|job box|tool ?box|tool bag|trailer|office|supply house|warehouse|yard|cart|pallet|crate|tailgate|container|dock|floor|ground|bag|pocket|pouch|bucket|bench|table|shelf|wall|package|wrapper|plastic|carton|case|rack|car|cab|pickup|locker|lunchbox"
    r"|stairs|hallway|doorway|garage|basement|lobby|elevator|lift|box|corner|house|kitchen|back seat|bed|closet|trash|dumpster|bin|sack)"
)
_AWAY = rf"(?:(?:in|on|at|by|under|behind|next to|beside|inside) (?:(?:the|my|a|our|his|their|your|somebody's) )?(?:[\w']+ )?{_PUT_BY}|in (?:the|my|a|our|his|their) (?:[\w']+ )?#|at home|home|back home|on order|on backorder|backordered|in transit|somewhere else|elsewhere|in (?:chicago|another state|the mail))(?: (?:by|next to|behind|under|on|in|at|of|with|where|since|waiting|i guess|right now|yet|today|if|and|for)(?: [\w'#]+){{0,6}})?"

_THEN = r"(?:(?:and|but|so|well|then|now) )*"

ENGLISH_ECHOES = Echoes(
    leads=r"(?:(?:in real life|in reality|in actual fact|in actuality|in truth|in practice|as a matter of fact|in point of fact|on the ground|on the wall|up there|out there|up top|when you look|if you look|for real|the reality is|the truth of it is|forget that|forget it|forget i said (?:it|that)|never mind that|between us|between you and me|just between us|truth be told|to be honest|if i'm honest|not gonna lie|in my defense|for what it's worth|deep down|god help me|heaven help me|lord help me|so help me|believe it or not|sad to say|sorry to say|i'm sorry to say|i'm ashamed to say|shame on me|like a fool|fool that i am|which is to say|that is to say|which means|meaning|in other words|i mean|and|but|wait|hang on|hold on|hold up|scratch that|strike that|correction|well|oh|so|then|yes|yeah|yep|no|nope|nah|sure|actually|now|today|tonight|as of now|by now|right now|this morning|honestly|in fact|fact is|truth is|turns out|sorry|ok|okay|guess what|you know what|of course|course|now that|because|cause|since|as it happens|lo and behold|sure enough|only|except|though|still|look|listen|hey|there) )*",
    yes=(
        r"(?:i |we |so i |then i )?(?:(?:found|borrowed|dug up|got|grabbed|bought|made|cut|bent|scrounged) (?:some|a set|a pair|a few|one|them|more|a roll|a box)(?: \w+){0,3} and )?(?:put|got|slid|set|stuck|slipped|shot|popped|ran|fitted|installed) (?:them|'em|those|some|a set|a pair|all of them|the lot) (?:back |right |all |straight )*(?:in|on|there)(?: anyway| after all| now| instead| too| myself| later)*",
        r"(?:i|we|so i) (?:left|kept|let) (?:them|it|'em|those|all of them) (?:in|on|be|there|alone|right there|right where (?:they|it) (?:are|is)|where (?:they|it) (?:are|is))(?: though| anyway)?",
        r"(?:you|i|we|anybody|anyone) (?:can|could|do|did)(?: (?:see|find|feel|spot) (?:it|them|one|plenty))?(?: there| plain| clear| anywhere)*|(?:i|we) (?:see|saw|found) (?:it|them|plenty)(?: there| myself| with my own eyes)*",
        rf"{_NOT_ENDING}{_IT}{_SURE} {_YES_AUX}{_TRAIL}",
        rf"{_NOT_ENDING}(?:it|she|that|this)'s(?: (?:in|on|there|here|got (?:it|them|some|one|'em|all of them)|all|every bit of it|now|very much))+{_TRAIL}|(?:they|those|these)'re(?: (?:in|on|there|all|every one|now|right))+{_TRAIL}|(?:i|we)'ve{_TRAIL}|it's got (?:it|them|some|one|'em)",
        rf"(?:did|does|has|is|have){_TRAIL}",
        r"(?:(?:i|we|ended up|wound up|went ahead and|just|so|already|then) )*(?:got|had|getting) (?:it|that|them|her) (?:all )?done(?: (?:today|tonight|already|early|now|instead|myself|anyway|after all|this \w+|before [\w ]{2,24}))*",
        r"(?:(?:i|we|just|so|already|then) )*(?:ended up|wound up) doing (?:it|that|them|her)(?: (?:today|tonight|already|early|now|instead|myself|anyway|after all|this \w+|before [\w ]{2,24}))*",
        r"(?:(?:i|we|so|then) )*(?:got to|got around to|got round to) (?:it|that|them)(?: (?:today|tonight|already|early|after all|instead|anyway|this \w+|before [\w ]{2,24}))+",
    ),
    no=(
        r"(?!.*(?:n't|not|never)\b)(?:so )?(?:it|it's|i|we|she|she's|this one|that one|mine|the \w+|closed|built|made|hung|put|went|finished|buttoned|sealed|folded)(?: [\w']+){0,4} (?:(?:minus|with none of|lacking) (?:them|it|any|those|one)|without(?: (?:them|it|any|those|one))?)(?: (?:in|on|today|now|anyway|for now|again|instead))*",
        r"(?:i |we |went back |went and looked |looked |checked |pulled it apart |opened it up )*(?:and |and then )*(?:i |we )?(?:found|saw|see|find|counted|(?:there )?(?:was|were|is|are)|there's|got|it had|it has|had) (?:nothing|none|no such thing|not a (?:one|thing|single one)|zero|zip|bare (?:board|foil|facing|flap|seam)|an? (?:empty|bare) (?:flap|seam|joint))(?: of (?:them|it|the kind))?(?: (?:done|there|left))*(?: (?:in|on|under|along|at|where|there|inside)(?: [\w']+){0,4})?",
        r"(?:didn't|doesn't|don't|hasn't|haven't|never|it didn't|it never|it hasn't|it doesn't)(?: (?:even|ever|really))* (?:get|got|have|had|see|seen|saw|use|used|take|took|need) (?:so much as |even )*(?:an?|one|any|the first) (?:inch|foot|strip|stitch|shred|scrap|piece|bit|lick|yard|single one|one|stick|hair)(?: of (?:it|that|them|those))?",
        r"(?:you|i|we|nobody) (?:can't|cannot|couldn't|don't|didn't|can not|do not|never) (?:see|find|feel|spot)(?: (?:it|any|one|them|a thing|none|a trace|a sign|a bit of it|that))*(?: there| on mine| anywhere| at all| myself)*|(?:you|we|i) (?:can't|cannot|couldn't)|nobody can",
        rf"{_IT}{_SURE} {_NO_AUX}{_TRAIL}",
        rf"(?:it|she|that|this)'s not{_TRAIL}|(?:they|those|these)'re not{_TRAIL}|{_NO_AUX}{_TRAIL}",
        rf"{_IT} can't say (?:so|that|as much)",
    ),
    belies=(
        r"(?:you|they|he|she|people|folks|i|we) (?:heard|read|were told|was told|got it|had it|got told) (?:it |that )?(?:all |dead |plain )?wrong",
        r"(?!the \w+ \w+ off(?![\w']))(?:that|this|it|which|the \w+|the \w+ \w+|he|she|they|somebody|whoever \w+ (?:it|that)|those \w+)(?:'s|'re| is| are| was| were| has it| have it| got it| had it| wasn't| isn't)? (?:a |an |all |just |flat |dead |plain |only |simply |outright |complete |completely |total |being |pure |big |fat |wasn't |not )*(?:lie|lies|lying|wrong|untrue|false|mistaken|baloney|bologna|nonsense|bull|bs|rubbish|garbage|incorrect|off|mistake|error|rumou?r|out of date|old news|making (?:it|that) up|full of it|dreaming|blind|confused|kidding|a joke|not how it is)(?: (?:of me|about that|there|on that|on that one|about it|again|though|as usual|too|by the way))*",
        r"(?:that|this|it|which|the \w+|he|she|they|those \w+)(?: isn't| wasn't| ain't| aren't| weren't|(?:'s|'re| is| are| was| were) not)(?: \w+)? (?:true|so|honest)(?: (?:about that|there|on that|on that one|about it|again|though|as usual|too|by the way))*",
        r"(?:don't|do not|never) (?:believe|buy|trust) (?:it|him|that|them|her|a word(?: of it)?|that one)", r"not (?:true|so|the case|the truth)(?: at all)?", r"that is a lie|that's a lie|lies|baloney|nonsense|bull|wrong",
    ),
    heads=r"(?:the )?(?:wrong|bad|problem|fault|trouble|not (?:right|good|so good))(?: (?:one|thing|part|bit))?",
    absurd=r"(?:then )?(?:i'm|i am|my name's|my name is|you can call me|call me|i'll eat|i'd eat|pigs|hell|the moon|i was born) (?:the pope|a monkey|a monkey's uncle|a dutchman|a ballerina|the queen|the king|president|the president|santa|santa claus|my (?:hat|boots|tool belt)|fly|fly too|froze over|yesterday|made of cheese|elvis|not \w+|a fool|a liar|blind|a plumber|\w+ \w+)",
    whether=r"(?<![\w'])(?:whether|wonders? if|wondering if|want to know if|wants to know if|ask if|asks if|asked if|ask me if|asks me if|asked me if|(?:asked|asks|wanted to know|wants to know|wondered)(?: me| us)? (?:would|could|can|should|will|did|do) (?:i|we)|in case anyone (?:asks|wonders|cares))(?![\w'])",
    bears_out=(r"(?:(?:i|we) (?:checked|looked|went and looked|measured|felt) )?(?:and )?(?:that|he|she|they|it|the \w+)(?:'s|'re| is| are| was| were) (?:dead |absolutely |exactly |quite |too )*(?:right|correct|true|not wrong|not lying|not mistaken|spot on)(?: (?:about that|there|on that|too|for once))*",),
    by_doing=r"^(?:i|we|did|didn't|have|haven't|never did|did not|have not)\b",
    to_a_question=(
        (r"(?:no|nope|nah|negative|not?|never|no (?:sir|ma'am|siree|way|such luck|chance|sirree|boss|i didn't)|hell no|heck no|god no|afraid not|not (?:me|yet|today|a chance|on your life|likely|really|at all|exactly|hardly|even close|a one|one|a thing|for all the tea in china)|i wish|in (?:my|your) dreams|dream on|fat chance|as if|yeah right|when pigs fly|don't make me laugh|you wish|you're joking|no dice|nothing|none|zip|zero|zilch|nada|not an? (?:inch|strip|stitch|shred|scrap|piece|bit|lick|single one|sliver|one)(?: of it)?|guess again|think again|not since .*|don't be silly|you must be joking|what for|forget it|i forgot|forgot|skipped (?:it|them)|left (?:it|them) (?:off|out)|didn't happen|(?:it's |they're |that's |all |still |just |right |over |out |back |sitting |lying |laying |leaning )+(?:in|on|at|by|under|against|next to|beside) (?:the|my|its|a|our|his) (?:[\w']+ )?(?:truck|van|shop|box|gang ?box|tool ?box|trailer|roll|bag|cart|pallet|crate|floor|ground|pocket|pouch|belt|bucket|bench|shelf|wall|package|wrapper|carton|case|rack|car|cab|supply house|warehouse|yard|liner|plastic)|nobody home|sadly no|'fraid not|not by me|too bad|ran out|(?:i've |i have |i )?(?:seen|had|got) (?:more|better|thicker|bigger) .* (?:on|in|under|than) .*)", False),
        (r"(?:yes|yep|yeah|yup|sure|sure thing|you bet|you bet your .*|absolutely|affirmative|affirm|correct|of course|of course (?:it is|i did|they are|it does|it has)|naturally|roger|roger that|check|aye|indeed|damn right|damn straight|you know it|and how|every (?:inch|bit|last one|one|single one|seam|joint|square inch|last inch|last bit|edge|corner|side)(?: of (?:it|them|the way))?|(?:from )?(?:top|end|front|head) to (?:bottom|end|back|toe)|all of (?:it|them)|all the way(?: around| round)?|twice|on all four sides|all four(?: sides)?|one hundred percent|a hundred percent|hundred percent|with my own (?:two )?hands|yes (?:sir|ma'am|indeed|i did|it is|they are)|yessir|also yes|yes again|yes too|sure (?:is|did|does|are)|uh huh|mm hmm|done|oh yes|hell yes|heck yes|good as gold|does a bear .*|is the pope .*)", True),
    ),
    fault_asked=r"(?<![\w'])(?:loose|missing|crooked|standing|standing up|sticking up|sticking out|broken|popped|open|short|floppy)$",
    between=(
        r"(?:oh )?(?:what an?|good|silly|stupid|dumb|funny|fair|some) (?:\w+ )?question|(?:what kind of|why would you ask) .*question.*|funny you (?:should )?ask|you have to ask|do you (?:even )?have to ask|come on|are you (?:kidding|serious|joking)(?: me)?|give me a break",
        r"(?:no |oh |hang on |hold on )*(?:wait|hang on|hold on|scratch that|no|sorry|hold up)(?: (?:a|one) (?:minute|second|sec))?|(?:no )?(?:i was |i'm )?(?:that's|that was|that is|it was|i'm thinking of|i meant|thinking of|looking at|i was looking at|i was thinking of) (?:the|an|some|that) (?:other|wrong|next|last|old) (?:one|piece|fitting|job|elbow|#)",
        r"(?:but |and )?(?:the )?wrong (?:size|ones|kind|type|color|sort|set)s?|(?:but )?(?:too|way too) (?:big|small|long|short|late|few|wide)|no good|bad ones",
        r"(?:then )?(?:i |we )?(?:went|looked|checked|came|walked|peeked|counted|turned|opened|flipped|pulled|lifted)(?: (?:it|in|up|back|over|around|again|inside|under|there|and|looked|checked|to|look|check|closer|the|flap|joint|later|first))*",
        r"(?:i|we) (?:found|got|borrowed|dug up|came across|scrounged|made|cut|bought|changed my mind|thought better of it)(?: .*)?",
        r"(?:that|this|which|that one) (?:is|was|wasn't|isn't|'s|were) .*|that's .*|which .*", r"(?:they|it|he|she|i|we|somebody)(?:'d| had| have| has)? (?:\w+)(?: (?:in|up|back|over|later|yesterday|today|this morning|and looked|and checked|to look|again|there|out))*", r"i (?:go|say|said|goes|tell him|told him|tell them|answer|answered|shout back|looked|checked|went and looked|just looked|double checked|say to him|says)(?: \w+){0,2}",
        r"he (?:goes|says|said|asks|asked|shouts)(?: me)?", r"(?:does|is|did|has|are|do|have|was) (?:it|they|i|we|she|this one)", r"me", r"what do you think", r"you ask|you may ask|you wonder|you might wonder|you'll ask|before you ask", r"(?:ask|asked) (?:me|him|away)(?: again)?", r"(?:go|come) (?:and )?(?:look|see)", r"(?:look|think) again", r"wait|hold on|hang on|oh|well|right|so|now",
    ),
    lacking=(r"(?:with ?out|with no|with zero|missing|lacks?|lacking|bare of|short of|shy of|free of) (?:any |its |the |a |my |some )*<[nbd]>", r"<u>"),
    wanted=r"(?<![\w'])(?:should|supposed|need|needs|want|wants|meant|required|ought|have to|has to|gonna|going|will|could|would|can|may|might|must)(?![\w'])",
    away=(
        rf"(?:which|that|they|them|those|these|it|all of (?:them|it)|the lot|both|every one of them)(?: ?(?:'s|'re|is|are|was|were))?(?: {_LIES})* {_AWAY}",
        rf"(?:(?:i|we|they|somebody|he) )?(?:just |only |went and )?(?!put it\b)(?:left|forgot|forgotten|have|had|got|'ve got|keep|kept|put|saw|dropped|am keeping|'m keeping) (?:them|it|those|these|'em|all of them)(?: {_LIES})* {_AWAY}",
        r"(?:(?:i|we|they|somebody|he) )?(?:just |only |went and )?(?:left|forgot) (?:them|it|those|these|'em|all of them) (?:at home|home|behind|back (?:there|at the \w+))",
    ),
    retorts=(r"(?:yeah |sure |oh |well )*(?:with what|what with|using what|since when|says who|who says|according to who|according to whom|on what planet|in what world|by what miracle|in this (?:wind|cold|heat|weather|rain))(?: (?:#|my|the|a)(?: \w+)*)?",),
    in_place=r" (?:in|on|there|got|has|have)\b",
    of_sight=r"(?<![\w'])(?:see|feel|find|spot)(?![\w'])",
    my_own=r"^(?:mine|ours|this one|this)(?![\w'])",
    slips=r"^(?!.*(?<![\w'])(?:said|says|told|tells|wants?|wanted|asked|ordered|suggested)(?![\w'])).*(?<![\w'])(?:almost|nearly|this close|came close|close to|about to|tempted|forg\w+|skip\w*|miss\w*|neglect\w*|overlook\w*)(?![\w'])",
    after_all=r"(?<![\w'])(?:and then|then|in the end|eventually|so) (?:i|we) (?:actually |really )?did(?![\w'])|(?<![\w'])(?:actually|in fact) did(?![\w'])",
    theirs=rf"^{_THEN}(?:he|she|the other \w+)(?![\w'])[^/]*/(?:he|she)(?![\w'])|^{_THEN}(?:they|the other \w+|second shift|first shift|night shift|day shift|the (?:crew|guys|boys|fellas) (?:on|from|in|at|over|below|above|upstairs|downstairs|next door|before))(?![\w'])[^/]*/they(?![\w'])",
    asked_and_told=r"^(?:(?:so|hey|well|now) )?(?:did|have|had|has|is|are|was|were|does|do|got) (?:i|we|it|#|they|the|any|there|a|this|that) ?.* (?P<told>no|nope|nah|no sir|no i didn't|i did not|i didn't|it isn't|it is not|they aren't|negative|yes|yep|yeah|yup|yes sir|i did|it is|they are|you bet|yes i did|sure did|of course)$",
    of_the_piece=r"^(?:but |and )*(?:it|this|this one|that one|that|she)(?:'s not| isn't| is not| ain't| wasn't)(?: all| quite| really| totally| completely| anywhere near)* done(?: yet| all the way| though| so far)*$",
    of_him=r"^(?:\w+ )?(?:did|have|do) (?:you|ya)(?![\w'])|^(?:you|ya)(?![\w'])",
    of_another=r"(?<![\w'])(?:you|your|anybody|anyone|somebody|he|they|she)(?![\w'])",
    measured=r"<n>(?: (?:on|of|in|at|for) [^ ]+(?: [^ ]+)?)?(?: (?:'s|'re|is|are|was|were|measured?|came|come|ran|run)(?: (?:about|at|all|only|just|to|out|every))*| every| at) (?:(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|fourteen|sixteen|a|half|quarter|\d[\d/.]*)(?![\w'])|[^ ]* ?(?:inch(?:es)?|apart|wide|long))",
    not_so=r"(?:that|it|they)(?:'s|'re| is| was| are| were) (?:wrong|off|a mistake|my mistake|not right)|(?:they|those|these|it|that)(?:'re| are| were|'s| is| was)?(?:n't| not| ain't| aren't| weren't| isn't| wasn't)(?: so| that| true| it)?|not so|no",
    done_with=r"^(?:(?:but|and|so|then|i|we|just|already|went ahead and|ended up|wound up) )*(?:did|doing|got|had) (?:it|that|them)(?: done)?(?: (?:today|tonight|already|early|now|instead|myself|anyway|after all|this \w+|later|too))*(?P<with> (?:with|using|in) (?:(?!and |but |then |not |no )[^ ]+ ){0,4}?(?:<n>|tape|inch|inches|foil|mastic|[^ ]*inch(?:es)?|leg|legs|that|181[^ ]*|[^ ]*tape))$",
    told_of=r"(?:(?<=was the )|(?<=is the )|(?<=were the )|(?<=are the ))<n>(?: (?:on|of|at) (?:the )?#)? <d>|<n>(?: (?:on|of|at) (?:the )?#)?(?: (?:'s|is|isn't|are|aren't|was|wasn't|were|weren't|has|hasn't|have|haven't|had|hadn't|ain't|been|got|gotten|not|never|even|all|still))+ <d>",
    would=r"(?<![\w'])(?:would(?:n't)? have|(?:i|we|he|they) ?'d(?: not)? have|would've|woulda)(?![\w'])",
    of_it=r"(?:it|they|this one|that|the \w+) (?:wasn't|weren't|was not|were not|isn't|aren't|ain't)$",
    looks=r"(?<![\w'])(?:is|are|was|were|does|do|did|has|have|had|am|isn't|aren't|wasn't|weren't|doesn't|don't|didn't|hasn't|haven't|hadn't|ain't|not|never|it's|they're|she's|that's|we've|i've|can|can't|see|left|kept|let|nothing|none|without|minus|put|got|slid|found|no|nope)(?![\w'])|\?",
)

_FINE = r"(?:ok|okay|all right|alright|fine|allowed|legal|acceptable|permitted|good enough|good|enough|close enough|tight enough|plenty|a problem|an issue|a big deal|a deal|bad|wrong|too (?:much|big|wide|far(?: apart)?|cold|steep|long|short|narrow|close|small|little|few|many|hot|low|high|loose|late|thin)|not enough|against (?:code|the book|the rules)|to code|up to code|in spec|within spec|out of spec|within the limit|over the limit)"
ENGLISH_OWN_QUESTIONS = OwnQuestions(
    leads=rf"(?:(?:so|and|but|hey|ok|okay|well|now|quick|question|one question|just|boss|chief|tell me|let me ask|let me ask you|i wonder|wondering|just wondering|honest question|dumb question|i gotta ask)[,:]? )*"
    rf"(?:(?:is|was|would|will|isn't|wouldn't) (?:it|that|this)(?: be)?(?: really| even| still)* {_FINE}(?: with (?:you|the book|the inspector|them|everybody))? (?:if|that|to|when|for me to)|(?:do|does|did|would|will|can|are|am) (?:it|you|they|we|he|i|anybody|the book|the inspector|the rules) (?:really )?(?:matter|hurt|mind|care|allow|let me|allowed to|supposed to|ok with it|okay with it|allowed) ?(?:if|that|when|to)?"
    r"|(?:would|will|could|can|do|does) (?:you|they|he|she|anybody|anyone|the (?:\w+ )?\w+|an? \w+) (?:\w+ )?(?:pass|accept|take|buy|allow|approve|sign off on|live with|let me have|be okay with|be ok with|be happy with|go for)"
    r"|(?:can|could|may|should) (?:i|we|you|a man|a guy)(?: just| still)? (?:get away with|go with|leave it (?:with|at)|live with|use|have|run|go|leave|space (?:it|them)(?: at)?|staple (?:it|them)?(?: at| every)?|hang (?:it|them)(?: at| every)?)|(?:what|what happens|what'll happen|what would happen|how bad is it|how bad|how much does it matter|who cares|anybody care|anyone mind|any problem|any trouble|ok|okay|all right) (?:if|that|when|with))(?= )",
    bare=r"(?:(?:so|and|but|hey|well|now|boss)[,]? )*(?:is|are|was|were|will|would|does|do|did|isn't|aren't) ",
    tails=rf" (?:{_FINE}|pass(?: muster| inspection)?|fly|work|do|do it|count|cut it|meet (?:code|spec|the book|it)|hold up)(?:(?: (?:there|here|or not|or what|anymore|now|by (?:the book|code|you)|with (?:you|the book)))*$|(?= (?:for|on|at|in|with|under|over|along|against) ))",
    owns=r"(?:(?:(?:i'm |just |only )?ask(?:ing)?|i ask|i only ask|the reason i ask is|reason i ask)?,? ?(?:because|cause|'cause|cuz|since|as|well|and|see|but) ?,? ?)*"
    r"(?:(?:that's|that is|it's|it is|this is|this one's|that was|it was|those are|they're|which is|mine's|mine is|mine was|here it's|here it is)(?: exactly| pretty much| just| already| about| all| kind of)* ?(?:how|what|what's|the way|where|all|like that|that way|so)(?: (?:i|we|it|it's|i've|we've|mine|this one|she|they|the \w+|is|went|got|came|did|there|on|in|at|around|along|between)\b.*)?$|that's all (?:i|we|it|there)\b.*$"
    r"|(?:mine|ours|this one|these|it|they|that one) (?:does|is|are|did|do|has|have|went|was|were)(?: (?:that|it|so|exactly that|just that|too|already))*$|(?:i|we)(?: already| just| sort of| kind of| went ahead and| went and)* (?:did|done|do|have|had|got|went)(?: (?:it|that|so|just that|exactly that|already|that way|this way|it that way|it this way|it like that))*$"
    r"|(?:i'm|we're|i ain't|we ain't) (?:not |never )*(?:gonna |going to )*(?:pull|redo|chang|tak|tear|do)\w*\b.*$|(?:it's|they're|that's) (?:already |all )*(?:done|in|up|on|stapled|taped|closed|hung|built|there)\b.*$"
    r"|there's one (?:on|in|at) (?:mine|it|this one|this|the \w+)\b|i(?:'ve)? (?:got|have|had) (?:one|that|it)(?: (?:on|in|here|there)\b.*)?$)",
    restates=r"(?:(?:(?:i'm |just )?asking )?(?:because|cause|'cause|since|see|well|and) )*(?:mine|ours|it|that|they|these|those|this one|the \w+|i|we|there)(?:'s|'re| is| are| was| were| came| comes| did| got| have| had| went| used| put| ran| left| cut| stapled| taped| spaced)\b",
)
