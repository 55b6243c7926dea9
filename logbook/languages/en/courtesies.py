"""What a polite man puts before, between and behind what he has to say, and the plain words that are left without it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_SAY = (
    r"(?:(?:let|make) you (?:know|aware)|inform you|tell you|advise you|notify you|report(?: back)?|mention|point out|state|confess|admit|add|note|record|remark|draw your attention to the fact|call your attention to the fact"
    r"|bring (?:it )?to your attention|have it on record|put on record|share)"
)
_THAT = r"(?:(?: (?:here|also|now|to you|for the record|as well))*(?:,? that|[,:])? )"
_AT_ONCE = r"(?! (?:the|a|an|any|me|him|them|to|it|if|about|what|when|how|your|no|in)(?![\w']))"  # "report it", "add the tape": that is what he would like to do
_OF_ACTS = (("taping", "taped"), ("stapling", "stapled"), ("rubbing", "rubbed"), ("wiping", "wiped"), ("trimming", "trimmed"), ("sealing", "sealed"), ("patching", "patched"))
_NUMBER = r"(?:\d+(?:[ -]\d+/\d+|\.\d+)?|(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?: and (?:a|an|one|three) (?:half|quarter|quarters))?)"
_PROPER = r"(?:proper|right|good|foil|real|listed|correct|aluminum|silver|other|181\S*|special|approved|usual)"
_THINGS = r"(?:(?:turning |the |any |its )*(?:vanes?|tape|staples|mastic|tabs))"

_A_PIECE = r"(?:the )?(?:straight|elbow|tee|wye|cap|end cap|collar|transition|offset|plenum|branch|number|piece|hangers?|damper)(?![\w'])"
_NAMED = r"(?:the )?(?:straight|elbow|tee|wye|cap|end cap|collar|transition|offset|plenum|branch|number)(?: (?:number )?[\w-]+)"
_WHEN = r"(?:tomorrow|later|monday|tuesday|wednesday|thursday|friday|next week|the morning|another day|the next shift|after lunch)"
_WISHED = r"(?:hoped|wanted|meant|planned|intended|every intention|been hoping|been meaning|been planning|wished)"

ENGLISH_COURTESIES = (
    # --- "stapled about every two inches, I'd say", "roughly every three, I didn't put a tape measure on it": of the measure, which is not sure already, and not of the act
    Plainer((" i'd say", " i would say", " i guess", " i think", " i reckon", " give or take"), rf"(?:about|around|roughly|maybe|approximately|close to|more or less)(?: every)? {_NUMBER}(?: inch(?:es)?)?(?: apart)?(?P<x>,? (?:i'd say|i would say|i guess|i think|i reckon|give or take))(?=[.,;!]|$)", (("x", ""),)),
    Plainer((" measure on", " ruler on", " measure it", " measure them", " measure that"), r"(?:about|around|roughly|maybe|close to) [^.,;!?]{1,40}(?P<x>(?:,|[.]|,? but|,? and) (?:i|we) (?:didn't|did not|never|haven't|couldn't) (?:put (?:a|the|my) (?:tape measure|measure|ruler|rule|tape rule) on (?:it|them|that)|measure (?:it|them|that|every one))(?: though| exactly)?)(?=[.,;!]|$)", (("x", ""),), beside=("about", "around", "roughly", "maybe", "close to")),
    # --- what stands between and says nothing of the work
    Plainer(("what was on", "what was in", "what we had", "what i had", "what there was"), r"with (?P<x>what (?:was|we had|i had|there was)(?: left)?(?: (?:on|in) (?:the|my) (?:truck|van|shelf|box|gang ?box))?,? (?:which|and that) (?:was|is)(?: the)? )(?=\d|one|two|three|181|foil|cloth|heat|pressure|the)", (("x", ""),)),
    Plainer(("box of ",), r"(?:the |that )?(?P<x>box of )(?P<n>washers|staples|screws)(?P<y> (?:they|he|she|the shop|the office|somebody) (?:sent|gave|brought|had)(?: (?:me|us|up|over))?) (?=(?:is|was|were|are) )", (("x", ""), ("y", ""))),
    Plainer((" back ",), rf"(?:so|but|and) (?P<x>(?:she's|it's|that's|she is|it is|i'm|we're|i went|we went|i'm only|it goes|she goes|went)(?: only| just)? )back (?:{_NUMBER}|\w+teen|twenty|twenty[- ]\w+|thirty)(?=[.,;]|$| (?:inch|and|on|from))", (("x", ""),)),
    Plainer((" her",), r"(?:in|on|into|off|over) (?P<x>her)(?=[.,;!]|$| (?:and|but|too|now|good|down|all|with)(?![\w']))", (("x", "it"),), beside=("vane", "tape", "staple", "tabs", "mastic", "rubbed")),
    Plainer(("went ",), r"(?:(?<=[.!?,;] )|^)(?P<x>(?:it |this one |she |that one )?went (?:(?:way|a lot|much|a whole lot|so much|a bit) )?(?:better|smoother|easier|faster|quicker) than (?:the |that )?last (?:one|time))(?=[.,;!]|$)", (("x", "okay"),)),
    Plainer(("before you ask", "before anybody asks", "before anyone asks", "if you're asking", "in case you ask"), r"(?P<x>(?:and |well |so )*(?:before (?:you|anybody|anyone) asks?|if you're asking|in case you(?: were)? ask(?:ing)?),?(?: (?:yes|yeah|yep))?,? )(?=(?:the|it|its|it's|i|we|all|my)(?![\w']))", (("x", ""),)),
    Plainer((" is, ", " was, ", " at, ", " are, ", "'s, "), rf"(?:trunk|branch|main|inlet|outlet|tap|leg|size|run|it)(?: is| was| are|'s| at)(?P<x>, (?:hang on|hold on|let me (?:see|look|think)|lemme (?:see|look|think)|wait|one second|one sec|uh|um|hm),) (?={_NUMBER}|\w+teen|\w+ty)", (("x", ""),)),
    Plainer((" both of them", " both of 'em", " both of those"), r"(?P<x>both of (?:them|'em|those)) (?=(?:set )?back|over|in (?:\d|\w+teen|twenty|thirty|twelve)|at (?:a set|twenty|\d))", (("x", "both"),)),
    Plainer((" hung up on run",), r"(?:got|have|had) (?:number )?[\w-]+(?P<x> hung up) (?=on run)", (("x", " hung"),)),
    Plainer(("nothing got ", "nothing was ", "nothing is ", "nothing's "), r"(?P<x>nothing(?:'s| got| was| is| has been| has got)(?: all)? (?:torn|ripped|damaged|punctured|crushed))(?=[.,;!]|$| (?:this time|and|so)(?![\w']))", (("x", "no damage"),)),
    Plainer(("boss", "chief", " man ", " bro ", "dude", "buddy", " sir ", "foreman", "fellas", "guys"), rf"^(?:hey|hi|yo|hello|ok|okay|so|morning|good morning|sorry|listen|alright|well)(?: there)? (?:boss|chief|man|bro|dude|buddy|sir|foreman|fellas|guys)(?P<x>) (?={_A_PIECE}|\d)", (("x", ","),)),
    Plainer(("please",), rf"(?:^|(?<=[.!?;] )|(?<=, ))(?P<x>please,? (?:forgive me|excuse me|pardon me|pardon|sorry|accept my apolog(?:y|ies)|be patient|bear with me|don't be (?:angry|mad|upset)|find (?:below|enclosed|attached|here)|boss|sir|mister|ma'am|(?:my )?friend)[,.:;]? )(?={_A_PIECE}|{_I}(?![\w']))", (("x", ""),)),
    Plainer(
        ("note", "write", "down", "log", "record", "jot", "enter", "register"),
        rf"(?:^|(?<=[.!?;] )|(?<=, ))(?P<x>(?:(?:please|kindly|could you|can you|would you|will you)(?: (?:please|kindly|just|also))* )(?:note(?: down)?|write(?: it)?(?: down)?|put(?: it)? down|log(?: in)?|record|mark down|jot down|take down|enter|register|let the record show|make a note)(?: for me)?(?:,? that|[:,])? )(?={_A_PIECE}[^.?!]*(?P<q>\?)?)", (("x", ""), ("q", ".")),
    ),
    Plainer((" be noted", " be said", " be mentioned", " be pointed", " be added", " be recorded", " be known", " be admitted", " be stated"), r"(?:^|(?<=[.!?;,] ))(?P<x>(?:(?:and|but),? )?(?:it|this) (?:should|must|has to|needs to|ought to|is to|may|might|can) (?:also |perhaps )?be (?:noted|said|mentioned|pointed out|added|recorded|known|admitted|stated)(?: here)?(?:,? that|[,:])? )", (("x", ""),)),
    Plainer((" want to say", " wanted to say"), rf"(?P<x>{_I} (?:just|only) (?:want|wanted|wish) to say(?: that)? )", (("x", ""),)),
    Plainer(("if you ",), rf"(?P<x>if you (?:look|go|check|see|come|pass|have a look|take a look|get up)(?: (?:at|over to|closely|to|by|on))* (?P<p>{_NAMED}),? you(?:'ll| will| would| can| may)? (?:see|find|notice)(?: that)? (?:it|she))(?![\w'])", (("x", r"\g<p>"),)),
    Plainer(("remiss", "negligent", "amiss", "dishonest"), rf"(?P<x>{_I}(?:'d| would| should) be (?:remiss|negligent|dishonest|lying)(?: of me)? (?:if {_I} (?:did not|didn't|failed to)|not to|to not) (?:mention|say|report|tell you|point out|note|add|admit)(?: that)? )", (("x", ""),)),
    # what he guesses is only that he has to tell it
    Plainer(
        (" tell you ", " mention ", " let you know ", " should know ", " oughta know ", " ought to know ", " point out "),
        rf"(?:^|(?<=[.!?;,] )|(?<= so )|(?<= and )|(?<=^so )|(?<=^and ))(?P<x>(?:i guess|i think|i figure|i suppose|i reckon|maybe|probably),? (?:(?:{_I} )?(?:probably |also |just )*(?:should|oughta|ought to|better|gotta|got to|have to|need to)(?: probably| also| just)* (?:tell you(?: guys)?|mention(?: to you)?|let you know|point out)|you (?:guys )?(?:should|oughta|ought to|better) (?:probably )?know)(?:,? that)?(?: about)? )",
        (("x", ""),),
        beside=("i guess", "i think", "i figure", "i suppose", "i reckon", "maybe", "probably"),
    ),
    # how far apart he meant to put them, and what it came to
    Plainer(
        (" ended up", " wound up"),
        rf"(?:^|(?<=[.!?;,] )|(?<= and )|(?<= so )|(?<= but )|(?<=^so ))(?P<x>(?:{_I} )?(?:was |were |am )?(?:gonna|going to|trying to|tried to|meant to|wanted to|going for|shooting for|aiming for|started(?: out)?|start(?:ed)? off)(?: (?:run|go|do|hit|keep|hold|put|space|shoot|staple))?(?: (?:the |them |it )?(?:staples)?)?(?: at| for| with| on| every)* ?(?:twos|two inch(?:es)?|every two|2 in(?:ch(?:es)?)?|(?<=every )two)(?P<p> on {_NAMED})?,? (?:and|but)(?: then)?(?: {_I})? (?:ended|wound) up )(?=(?:at|every|running|going|more like|about|closer to)\b)",
        (("x", r"\g<p> staples ended up "),),
        unless=r"\b(?:pressure|static|fan|(?:gauge|meter) (?:read|say|show)s?|inches of water)\b",
    ),
    Plainer(("if it is not", "if it's not", "if it isn't", "if it's no", "if it is no", "if that's all right", "if you have a moment"), r"(?:^|(?<=[.!?;] ))(?P<x>if (?:it is not|it's not|it isn't|it's no|it is no|that's all right|you have a moment)(?: [\w']+){0,5}, )", (("x", ""),)),
    Plainer(("rather than",), rf"(?P<x>rather than) (?:the )?{_NUMBER}(?![\w'/])", (("x", "instead of"),)),
    Plainer(("much as ",), rf"(?:^|(?<=[.!?;] ))(?P<x>much as {_I}(?:'d| would| should)?(?: [\w']+){{1,6}}, )", (("x", ""),)),
    # --- what he wished and could not do
    *(
        Plainer((f"to {act}", f"of {doing}"), rf"(?P<x>{_I} ?(?:had|have|was|were|'d|'ve)? ?(?:{_WISHED}) (?:to {act}|of {doing}))(?= [^.?!]{{1,30}}[,.;] (?:but|however|though|only)[, ]+(?:{_I}|there|the|time|it) (?:ran out|did not|didn't|couldn't|could not|was not|wasn't|never|were not|had to (?:leave|go|stop)))", (("x", f"i didn't {act}"),))
        for act, doing in (("tape", "taping"), ("staple", "stapling"), ("rub", "rubbing"), ("wipe", "wiping"), ("trim", "trimming"))
    ),
    Plainer((" unable to ",), rf"(?P<x>{_I} (?:was|were|am|are|have been|'m|'re) unable to) (?=tape|staple|rub|wipe|trim|put|get|install|fit|reach|bend|patch|close)", (("x", "i couldn't"),)),
    Plainer(("impossible to", "not possible to", "not practical to"), r"(?P<x>(?:it )?(?:proved|was|turned out|is|proved to be)(?: to be)? (?:impossible|not possible|not practical) to (?P<v>fit|install|place|put)) (?=(?:the |any )?(?:turning )?vanes)", (("x", "i couldn't put"),)),
    Plainer((" shall ",), r"(?:will|it|that|this|they|we|i|tape|\w+) (?P<x>shall)(?= (?:be|not|have|get|do|tape|staple|rub|put|finish|come|go))", (("x", "will"),)),
    Plainer((" none",), rf"(?P<x>(?:(?:was|were|is|are)(?: supposed| meant| due| scheduled)? to (?:receive|get|have|be given)|should(?:'ve| have) (?:received|gotten|got|had)|called for|needed)) (?:the |its )?{_THINGS}(?: [^.?!,;]{{1,30}})?(?P<y>[.,;] (?:(?:and|but|instead|so far),? )*(?:it|they|that one|this one|she) (?:received|got|has|have|had|was given|were given|ended up with|carries|gets?) none(?: at all)?)(?=[.,;!]|$)", (("x", "has no"), ("y", "")), beside=("vane", "tape", "staple", "tabs", "mastic")),
    *(
        Plainer((f"{doing} of",), rf"(?P<x>(?:the )?{doing}(?: down)? (?:of|on) (?P<p>{_NAMED}) (?:has|have|was|is|had)(?: been)? (?:left|put off|postponed|deferred|held)(?: over)? (?:for|to|till|until)(?: the)? {_WHEN})(?![\w'])", (("x", rf"\g<p> will be {done} tomorrow"),))
        for doing, done in _OF_ACTS[:5]
    ),
    *(
        Plainer((f"{doing} of", f"{doing} down of"), rf"(?P<x>(?:the )?{doing}(?: down)? (?:of|on) (?P<p>{_NAMED}) (?:has not been|was not|hasn't been|wasn't|never got|is not|isn't|could not be|couldn't be) (?:done|carried out|completed|performed|finished|attended to|started|begun))(?![\w'])", (("x", rf"\g<p> was not {done}"),))
        for doing, done in _OF_ACTS[:5]
    ),
    Plainer(("hence ", "therefore ", "thus "), r"(?P<x>(?:and )?(?:hence|therefore|thus))(?= (?:they|it|there|the|i|we|no)(?![\w']))", (("x", "so"),)),
    Plainer(("if i may:", "if i might:"), r"(?P<x>,? if i (?:may|might))(?=:)", (("x", ""),)),
    Plainer(("please ", "kindly "), r"(?:^|(?<=[.!?;] )|(?<=, ))(?P<x>(?:please|kindly)(?: (?:do|also|just|kindly|please))? (?:note|be advised|be aware|be informed|take note|be so kind as to note|take notice)(?: (?:here|also))?(?:,? that|[,:])? )", (("x", ""),)),
    Plainer(("to ",), rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:(?:but|and|so|now|sir|hello|hi),? )?{_I}(?:'d| would| should| wish| want| need| have| must| just| am| 'm|'m| felt| feel)(?: (?:also|just|like|only|only want|sorry|obliged|bound|glad|happy|pleased|writing|calling|here|afraid|wish))*(?: to)? {_SAY}{_AT_ONCE}{_THAT})(?=\S)", (("x", ""),)),
    Plainer(("staples", "tape", "screws", "hangers", "tabs", "vanes", "washers"), rf"(?:staples|tape|screws|hangers|tabs|vanes|washers)(?P<x> (?:that |which )?{_I}(?:'ve| have|'d| had)? (?:fired|shot|drove|ran|set|laid|installed|stuck|hung|cut|fitted)(?: (?:down|up|in))?) (?:in(?P<y>to)?|on(?P<z>to)?|for|under|at|along) (?:{_NAMED}|\d{{1,3}}|it|this one|that one|there) (?:is|are|was|were)(?![\w'])", (("x", ""), ("y", ""), ("z", "")), beside=(" i ", " we ", " i've ", " we've ", " i'd ", " we'd ")),
    Plainer((", sad to say,", ", sorry to say,", ", i'm sorry to say,", ", i hate to say,", ", believe it or not,", ", truth be told,", ", to be honest,", ", i'm afraid,", ", unfortunately,", ", i must say,", ", i have to say,", ", i have to admit,", ", i admit,"), r"(?:mine|ours), (?:(?:straight|elbow|tee|wye|collar|transition|offset|branch|plenum|number) )?\d+(?P<x>, (?:sad to say|sorry to say|i'm sorry to say|i hate to say|believe it or not|truth be told|to be honest|i'm afraid|unfortunately|i must say|i have to say|i have to admit|i admit))(?=,)", (("x", ""),)),
    Plainer((", however,", ", though,", ", unfortunately,", ", on the other hand,", ", sadly,", ", as it happens,", ", i'm afraid,", ", i am afraid,", ", regrettably,", ", by contrast,", ", sorry to say,", ", i regret,", ", i see,", ", i notice,", ", sad to say,", ", i'm sorry to say,", ", i am sorry to say,", ", i hate to say,", ", believe it or not,", ", truth be told,", ", to be honest,", ", to be fair,", ", to my shame,", ", i must say,", ", i have to say,", ", i have to admit,", ", i'll admit,", ", i admit,", ", if you must know,", ", as you know,", ", like i said,", ", for what it's worth,", ", god help me,", ", wouldn't you know it,"), r"[\w'-]+(?P<x>, (?:however|though|unfortunately|on the other hand|sadly|as it happens|i'm afraid|i am afraid|regrettably|by contrast|sorry to say|i regret|i see|i notice|sad to say|i'm sorry to say|i am sorry to say|i hate to say|believe it or not|truth be told|to be honest|to be fair|to my shame|i must say|i have to say|i have to admit|i'll admit|i admit|if you must know|as you know|like i said|for what it's worth|god help me|wouldn't you know it),)(?= (?:is|isn't|are|aren't|was|wasn't|were|weren't|has|hasn't|have|haven't|had|hadn't|did|didn't|does|doesn't|never|still|got|went|goes|came|comes|sits?|stands?|runs?|shows?|remains?|stays?|measures?)(?![\w']))", (("x", ""),)),
    Plainer(("it noted", "it recorded", "it known", "it on record", "it on the record", "it written", "it down", "it in the log", "it logged", "you to know", "you to note", "him to know", "it to be noted", "it understood", "it clear"), rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:(?:but|and|so|also),? )?{_I}(?:'d| would| should| wish| want| need| must| just| do)(?: (?:also|just|like|only|want|wish|need))*(?: to have)? (?:it (?:to be )?(?:noted|recorded|known|understood|on (?:the )?record|written down|put down|down|in the log|logged|clear)|you to (?:know|note)|him to know)(?: (?:here|also|now))?(?:,? that|[,:]) )", (("x", ""),)),
    Plainer(("what i ", "what we ", "what he ", "what you ", "what caught ", "what struck ", "what bothers ", "what worries "), rf"(?:^|(?<=[.!?;] ))(?P<x>(?:(?:and|but|now),? )?what (?:(?:i|we|he|you)(?:'ve| have| had| also| then| just| still)* (?:found|find|saw|see|noticed|notice|spotted|discovered|have|had|got|noted|observed|came across|ran into|missed|don't like|didn't like|do not like|did not like)|(?:caught my eye|struck me|bothers me|worries me))(?: (?:there|wrong|today|then|here))* (?:on|with|at|in|about|of|under) (?P<p>{_NAMED}(?:, {_NAMED},)?),? (?:is|was|are|were|'s)(?: that)? )(?!(?:the )?(?:question|whether|if|how)(?![\w']))", (("x", r"\g<p>, "),)),
    Plainer(("you should", "you ought", "you must", "you need", "you might", "you may", "you'd better", "you will want", "you'll want"), r"(?:^|(?<=[.!?;,] ))(?P<x>(?:(?:and|but|also),? )?you(?:'d| should| ought to| must| need to| might(?: want| like)? to| may(?: want| like| wish)? to| will want to|'ll want to)(?: (?:also|like to|better|probably))* (?:know|be aware|be told|be informed)(?! (?:better|if|what|how|who|about|the|when)(?![\w']))(?:,? that|[,:])? )", (("x", ""),)),
    Plainer(("if you'll", "if you will", "if i may", "if i might", "if you'd", "if you don't mind", "if you would", "if you please", "if it please"), r"(?<=,)(?P<x> (?:and |but )?if (?:you'll|you will|you'd|you would|you don't mind|you please|it pleases?|i may|i might|you can)(?: (?:me|my|pardon|excuse|forgive|allow|permit|saying|say|so|be|ask|the|bold|delay|language|french|you|be so bold))*,)(?= )", (("x", ""),)),
    Plainer(("kindly ",), r"(?:^|(?<=[.!?;] ))(?P<x>kindly)(?= (?:have|tape|staple|rub|wipe|trim|put|make|see|send|bring|get|ask|tell|let|do|check|hang|leave|use|fix|patch|arrange|ensure|remind)(?![\w']))", (("x", "please"),)),
    *(Plainer((f"of {doing}",), rf"(?P<x>(?:taken|took|take|had|gone to) the (?:liberty|trouble|time|opportunity|chance) of {doing})(?![\w'])", (("x", done),)) for doing, done in _OF_ACTS),
    # --- how far apart, in so many words
    Plainer(("interval", "centers", "centres", "spacings"), rf"(?P<x>(?:at|in|on|with)(?: (?:about|roughly))?) (?P<m>{_NUMBER}(?:[- ]inch(?:es)?|\"| in\.?| foot| feet)?)(?P<y>,? (?:intervals?|centers|centres|spacings))(?![\w'])", (("x", "every"), ("y", ""))),
    Plainer(("intervals of", "interval of"), rf"(?P<x>(?:at|in|with) (?:an |regular )?intervals? of(?: (?:about|roughly))?) (?={_NUMBER})", (("x", "every"),)),
    # --- what was left out, and what a piece still waits for
    Plainer(("omit",), rf"(?P<x>{_I} (?:have |had |'ve )?(?:omitted|omit)) (?={_THINGS}(?![\w']))", (("x", "i left out"),)),
    Plainer(("omitted",), rf"{_THINGS} (?P<x>(?:was|were|is|are|has been|have been|had been|got) omitted)(?![\w'])", (("x", "were left out"),)),
    Plainer(("await",), r"(?P<x>(?:still |yet |is |are )*await(?:s|ing)?(?: (?:its|the|their|some))?) (?=(?:tape|staples|vanes|taping|stapling|rubbing|mastic)(?![\w']))", (("x", "still needs"),)),
    Plainer(("i will be ", "we will be ", "i'll be ", "we'll be ", "i shall be ", "i shall ", "we shall "), rf"the (?P<t>tape|taping|staples|vanes|rubbing)(?P<x>,? (?:which |that )?{_I}(?:'ll| will| shall)(?: be)? (?:appl(?:y|ying)|put(?:ting)?|do(?:ing)?|add(?:ing)?|attend(?:ing)? to|see(?:ing)? to|install(?:ing)?|fit(?:ting)?|get(?:ting)? to)(?: (?:it|them|in|on))*)(?![\w'])", (("x", r" still to do"),)),
    # --- what he asks leave for
    Plainer((" if i ", " if we "), rf"(?P<x>(?:would|will|is|might) (?:it|that) be (?:all ?right|okay|ok|fine|acceptable|possible|a problem|any trouble|too much trouble)(?: with you)? if {_I}) (?P<v>taped|stapled|left|used|rubbed|put|skipped|hung|wiped)(?![\w'])", (("x", "may i"),)),
    Plainer(("hoping", "hoped", "wondering"), rf"(?P<x>{_I} (?:was|were|had been|am|'m)?(?: just)? ?(?:hoping|hoped|wondering if) (?:that )?{_I} (?:could|can|might|may)) (?=leave|tape|staple|skip|use|put|hang|do)", (("x", "can i"),)),
    # --- why it was another tape: the one that did not come is not on it
    Plainer(("cloth", "duct ", "masking", "packing"), rf"(?:cloth|duct|masking|packing)(?: tape)?[^.?!]{{0,60}}?(?P<x>,? (?:since|because|as|'cause|cause|for|and|but|seeing as)? ?(?:the|our|my) {_PROPER} (?:tape|stuff|kind|one|rolls?)(?: (?:had|has|have|is|was|did|hasn't|hadn't|isn't|wasn't|didn't|never|not|been|yet|still|all|ran|gone|out|come|came|arrived?|in|delivered|here|finish|finished|on (?:order|backorder|the truck)|run|shown|showed|up|there|left|available|of stock|on site))+)(?=[.,;!]|$)", (("x", ""),)),
    Plainer(("cloth", "duct ", "masking", "packing"), r"(?P<x>(?:(?:just|plain|old|regular|ordinary|normal|cheap|standard|simple|basic|common|usual) )+)(?=(?:gray |grey |silver )?(?:cloth|duct|masking|packing) (?:tape|kind))", (("x", ""),)),
)
