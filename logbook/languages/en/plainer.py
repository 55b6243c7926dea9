"""English said in a roundabout way, and the plain words that it is read as. Regular expressions over lower-case letters."""

from __future__ import annotations

from logbook.languages.en.numbers import SAID_COUNT as _COUNT
from logbook.languages.en.numbers import SAID_NUMBER as _NUMBER
from logbook.languages.plainer import Plainer

_MEASURE = rf"(?:{_NUMBER}(?: by {_NUMBER})?(?![\w'/-]))"
_MARK = rf"(?:\d{{1,3}}|(?!(?:one|two|three|four) ){_COUNT})"
_SOON = r"(?:(?:it's |that's |that'll be |i'll do (?:it|that) |i'll get (?:it|to it|to that) |on |come |just |probably |for )*(?:first thing|tomorrow|tonight|later|monday|tuesday|wednesday|thursday|friday|saturday|next week|next time|in the morning|this afternoon|after (?:lunch|break|dinner|coffee))(?![\w']))"
_I = r"(?:i|we)"
_PUT_OFF = rf"{_I} (?:did not|didn't|never|haven't|have not|couldn't|could not)(?: (?:ever|quite|really|actually))* (?:get|got|gotten) (?:around |round )?to (?:the |any of the |doing the )?"
_WAITING = r"(?:pending|still open|still to do|still to come|to do|to be done|outstanding|not yet|later|tomorrow|tbd|waiting|on hold|open|incomplete|not done|not done yet)"
_LABELS = r"(?:stapled|taped|rubbed(?: down)?|trimmed|wiped|vanes|turning vanes|tabs bent|preheated|preheat)"
_AWAY = r"(?:(?:still )?(?:on (?:vacation|a holiday|holiday|leave|strike|a cruise|a break|their break|their own time)|out sick|off sick|at the beach|at lunch|in (?:florida|hawaii|vegas|bed|cancun)|a no[- ]show|no[- ]shows|awol|taking (?:the|a|their) (?:day|week|nap)(?: off)?|playing hooky|off fishing|gone fishing|hiding from me|stuck in traffic|calling in sick)|called (?:in|out) sick|took the (?:day|week) off|(?:decided|elected) not to (?:show|come)(?: up| in)?|missed the (?:bus|boat|truck|train)|stood me up)"
_AWAY_CUES = ("vacation", "holiday", "leave", "strike", "cruise", "break", "time", "sick", "beach", "lunch", "florida", "hawaii", "vegas", "bed", "cancun", "show", "awol", "off", "hooky", "fishing", "hiding", "traffic", "stood me", "not to", "missed")
_WORST = r"(?:at (?:the )?(?:very )?(?:worst|most|widest|biggest|max)|is the (?:worst|widest|biggest)(?: one| of (?:it|them))?|(?:was|for) the (?:worst|widest)(?: one| of (?:it|them))?)"


def _left_for(cue: str, said: str, done: str) -> Plainer:
    """ "I did not get to the trimming. First thing Monday." """
    return Plainer((f"to {cue}", f"the {cue}"), rf"(?:{_I} )?(?P<x>(?:did not|didn't|never|haven't|have not|couldn't|could not)(?: (?:ever|quite|really|actually))* (?:get|got|gotten) (?:around |round )?to (?:the |any of the |doing the )?{said}(?: down)?(?: it)?)(?=[^.?!]{{0,60}}[.,;] (?:but |and |so )?{_SOON})", (("x", f"haven't {done} it yet"),))


ENGLISH_PLAINER = (
    # --- which of them, and its number behind: "the third one, 19"
    Plainer(
        (" one, ", " two, ", " three, ", "first, ", "second, ", "third, ", "last, ", "other, ", " next, ", "one after, ", "one before, ", "former, ", "latter, "),
        rf"(?P<x>(?:the|my) (?:(?:first|second|third|fourth|last|other|next|final)(?: one| two| three| ones| pair)?|one (?:before|after|next to it)|former|latter), )(?:number )?{_MARK}(?:(?:,| and|, and) {_MARK})*(?:(?P<y>,)(?= (?:\w+n't|is|was|has|had|got|i|we|no|not|none|nope|never|still|that|only|needs)(?![\w]))|(?=[.,;:!]|$))",
        (("x", "number "), ("y", "")),
    ),
    # --- pieces by their numbers alone, of which the first and the second are told of behind
    Plainer(
        ("former", "latter", "the first", "the second", "the third", "the other", "the last", "first one", "second one", "other one", "last one"),
        rf"(?:^|(?<=[.!?] )|(?<=[.!?] of )|(?<=^of ))(?P<x>)(?:{_MARK}(?:, and |, | and | & ))+{_MARK}(?=[.:,;]|$| only | just | are | both | have | had | were | got | each )(?=[^?]{{0,160}}(?<![a-z])(?:former|latter|first|second|third|other|last)(?: one)?(?: (?:is|isn't|has|hasn't|had|got|was|wasn't|i|i've|we|never|didn't|and|that|which)(?![\w'])|'s|[.,;]|$))",
        (("x", "numbers "),),
    ),
    # --- who did the harm he does not know, that it is there he does
    Plainer((" who ", " how "), r"(?:(?<=[.!?,;] )|^)(?P<x>(?:i |we )?(?:never did|didn't ever|didn't|don't|do not|can't|couldn't|could not|never)(?: ever)? (?:find out|figure out|know|found out|tell you|say))(?= (?:who|how) (?:\w+ ){0,2}?(?:tore|torn|ripped|poked|punctured|crushed|dented|stepped|cut|damaged|broke|kicked|gouged)(?![\w']))", (("x", "no idea"),)),
    # --- what the squeegee does
    Plainer(("with the squeegee", "with a squeegee", "with my squeegee"), r"(?P<x>been over(?: (?:it|them|that|all of it))? with (?:the|a|my) squeegee)(?![\w'])", (("x", "rubbed down"),)),
    # --- a seam that is bare has no tape on it
    Plainer(("bare seam", "bare joint", "bare side", "naked seam", "naked joint"), r"(?<!strip )(?<!stripped )(?P<x>bare|naked)(?= (?:seams?|joints?|sides?)(?![\w']))", (("x", "untaped"),)),
    # --- a look at the tape between two measures: nothing is taped
    Plainer((" tape", " ruler", " rule", "let me ", "lemme "), rf"(?:(?:every|back|by|at|it's|is|are|only)(?P<c>,) |(?<=[,.;] )|^)(?P<x>(?:let me|lemme|let's|i'll|i gotta|i got to|let us) (?:just )?(?:(?:put|hook|get|lay|run|stretch|pull|throw|slap|grab|drop|hold|stick) (?:the|my|a) (?:tape(?: measure)?|measuring tape|ruler|rule|stick)(?: (?:on|across|over|to|out|back|up|down|in|along|it|there|that|this|again|once more|here|real quick|quick))*|(?:check|see|count|look|measure|think)(?: (?:it|that|this|them|again|here|now|real quick|quick|once more))*)(?:[,.;]|\.\.\.) ?)(?=(?:okay,? |ok,? |no,? |it's |that's |so |yeah,? |there,? |make it |call it |more like |back |down |up |in |out |over |about |wait,? )*{_MEASURE})", (("c", ""), ("x", ""))),
    Plainer(("let me put", "let me get", "let me slap", "let me throw", "let me stick", "lemme put"), r"(?:let me|lemme) (?:just |go )?(?P<x>(?:put|get|slap|throw|stick) (?:the|some|my|a little) tape (?:on|down)(?: (?:it|there|this|this one))?)(?![\w'])", (("x", "tape it"),)),
    # --- a jest of what is not there, and what will be put in
*(
        Plainer(_AWAY_CUES, rf"(?:{things})(?: (?:for|on|to) (?:it|this one|(?:number )?\w+(?: (?:number )?[\w-]+)?))? (?P<x>(?:(?:is|are|was|were|have|has) )?{_AWAY})(?=[.,;]| today| this week|$)", (("x", f"{be} not {where} yet"),))
        for things, be, where in (("(?:turning )?vanes", "are", "in"), ("staples|tabs", "are", "in"), ("tape|mastic", "is", "on"))
    ),
    Plainer(("when i", "then i", "when we", "then we", "tomorrow", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"), rf"(?:(?:they'll|they will|it'll|it will|she'll|should|due|coming|come|comes|gets? here|back|here) [^.?!]{{0,30}}(?:monday|tuesday|wednesday|thursday|friday|saturday|tomorrow|next week|in the morning|tonight),? (?:and )?(?:that's when|then|so then|that is when) {_I}(?P<x>) |(?:^|[.] )(?:tomorrow|tonight|monday|tuesday|wednesday|thursday|friday|next week) {_I}(?P<y>) )(?:put|tape|staple|rub)(?: (?:it|them|those|the \w+))*(?: (?:in|on|down))?(?=[.,;]|$)", (("x", " will"), ("y", " will"))),
    # --- what he has not got to, with the time that it is left for
    *(_left_for(*row) for row in (("trim", "trim(?:ming)?", "trimmed"), ("tap", "tap(?:e|ing)", "taped"), ("stapl", "stapl(?:e|ing)", "stapled"), ("rub", "rub(?:bing)?", "rubbed"), ("wip", "wip(?:e|ing)", "wiped"))),
    # --- forms filled in aloud
    Plainer(("pending", "open", "to do", "to be", "to come", "outstanding", "yet", "later", "tomorrow", "tbd", "waiting", "hold", "incomplete", "not done"), rf"(?:(?:^|(?<=[.;\n] )){_LABELS}(?P<x>,)(?= {_WAITING}(?:[.;]|$))|(?<=, ){_LABELS}(?P<y>,)(?= (?:pending|outstanding|tbd|to be done|to do)(?:[.;]|$)))", (("x", ":"), ("y", ":"))),
    Plainer(("repair",), r"(?:^|(?<=[.;\n] ))(?P<x>repair[,:] (?:is |it's )?(?:still |yet )?(?:open|pending|to do|to be done|outstanding|waiting|not done|not yet|to come)(?: yet)?)(?=[.;]|$)", (("x", "not repaired yet"),)),
    Plainer(("temperature,", "temperature:", "temp:"), rf"(?P<a>(?:air|duct|supply air|air stream|stream) temp(?:erature)?(?P<x>[,:]) (?:is |about )?(?:{_COUNT}|(?:one|two|three|a) hundred(?: and)?(?: {_COUNT})?)(?P<y>))(?=[.;,]|$)", (("x", ""), ("y", " degrees"))),
    # --- the thing stands first, and then what was not done to it
    Plainer(("bent them", "bend them", "folded them", "fold them"), rf"(?P<x>the (?:[\w-]+ )?)tabs(?P<y>(?: on (?:it|this one|the collar))?,? (?P<w>{_I} (?:haven't|have not|didn't|did not|never|hadn't|still haven't)(?: (?:even|yet|really|got to|gotten to|bent|bend|bending))*? (?:bent|bend|folded|fold) )them)", (("x", ""), ("y", r", \g<w>the tabs"))),
    Plainer((" not put", " no put", " not use", " no use"), rf"(?P<x>(?:the |a )?(?P<t>tape|staples?|vanes|mastic|tabs),? {_I} (?:not|no) (?:put|use)(?: (?:it|them))?)(?=[.,;]|$| yet| today| in| on)(?![^?!]{{0,30}}{_SOON})", (("x", r"i didn't put the \g<t>"),)),
    Plainer((" not put", " no put", " not use", " no use"), rf"(?P<x>(?:the |a )?(?P<t>tape|staples?|vanes|mastic|tabs),? {_I} (?:not|no) (?:put|use)(?: (?:it|them))?)(?=[.,;]|$| yet| today| in| on)(?=[^?!]{{0,30}}{_SOON})", (("x", r"i haven't put the \g<t> yet"),)),
    *(
        Plainer((f"did i {act}", f"did we {act}"), rf"did (?P<i>{_I}) {act}(?: (?:it|that|them|this|this one|the seams?|down|on))*\? (?:{_I} (?:was|were) (?:going|about|fixing|meaning|planning|supposed|all set) to|{_I} meant to|{_I} wanted to)(?:,[^.?!]*)?(?: [^.?!]*)?[.,;] (?:[^.?!]{{1,60}}[.] )?(?P<x>(?:so|well|and so|but|then),? (?:no|nope))(?=[.,]|$)(?:[.,] (?:(?:i|we|i'll|we'll) )?(?P<y>(?:have|need|got) to (?:go|come|get) back to (?:that|it|this|them)))?", (("x", rf"so \g<i> haven't {done} it yet"), ("y", f"have to go back and {act} it")))
        for act, done in (("rub", "rubbed"), ("tape", "taped"), ("staple", "stapled"), ("trim", "trimmed"), ("wipe", "wiped"))
    ),
    # --- what is asked and answered of the scrim
    Plainer(("scrim",), r"scrim(?: (?:on|of|in) [^.?!,]{1,20})?(?:[.?,!] (?:[^.?!]{1,24}[.?!] )??)(?:(?P<q>can (?:i|you|we) see it\? )(?:[^.?!]{1,30}[.] ){0,2}?)?(?:(?P<n>(?:no|nope|nah)[.,] ))?(?:i |you |we )?(?:can't|can not|cannot|can|couldn't|could|don't|do) see (?P<x>it|them)(?![\w'])", (("q", ""), ("n", ""), ("x", "the scrim"))),
    # --- the staples
    Plainer(("in it", "went in", "in there", "i put in", "i used", "i shot"), rf"(?<=, )(?P<w>(?:so |and )?(?:(?:three|five|seven|one) (?:eighths?|sixteenths?|quarters?)|half|half inch|\d+/\d+)(?: inch| ones)*)(?P<x> (?:is|are|was|were) what(?:'s| is| are| went)?(?: (?:in (?:it|there|this one)|in|(?:{_I}) (?:put in|used|shot|put in it)))+)(?=[.,;]|$)", (("x", " staples are in it"),), unless=r"^(?!.*(?:staple|staples|legs?)(?![\w']))"),
    Plainer(("legs",), rf"(?P<x>(?:wanted|wants|tried|tries|kept (?:on )?(?:trying|wanting)|likes?|liked|keeps wanting|was (?:trying|wanting)) to (?P<v>curl|fold|roll|bend|turn) the (?:staple )?legs) (?:in(?:ward|wards|side)?|toward|towards)(?![\w'])[^.?]*?(?:{_I} (?:just )?(?:let it|left it(?: (?:that way|like that|so))?|let them|let 'em|let it be|went with it))", (("x", "clinched the legs"),)),
    Plainer(("legs",), r"staple legs (?P<x>[^.?!,]{0,40}, (?:they|and they|so they)(?: (?:kind of|sort of|kinda|all|just|mostly))*)(?= (?:fold|curl|bend|turn|point|face|go|roll)s? (?:in|inward|inwards|toward|towards)(?![\w']))", (("x", ""),)),
    Plainer(("how far apart", "spacing"), rf"how far apart (?:are|were) (?:these|they|those|the staples|my staples)[.?,][^?]{{0,100}}?(?:so|call it|that's|say|it's) (?P<x>)(?={_MEASURE}(?: inch(?:es)?)? {_WORST})", (("x", "stapled every "),)),
    Plainer(("tabs",), r"tabs[^.?!]{0,60}[,;.] (?:but |and )?(?:two|three|four|five|six|a few|a couple|some)(?P<x>)(?= (?:are|is|were|still)(?: (?:still|all|just|not))* (?:stick|stand|stood|up|straight|point|pok))", (("x", " of them"),)),
    Plainer(("taped it first", "taped first", "taped that first"), r"taped(?: it| that)?(?P<x> first)(?=[.,;!]|$)", (("x", ""),), unless=r"wip|dust|clean|dry|dri|brush|swep|sweep|rag(?![a-z])|bl[eo]w|vacuum|wash"),
    # --- "straight" that is no piece; what he set about and did at once; a board put in anew
    Plainer(("straight up", "straight out"), r"(?:one|two|three|four|five|six|some|a few|a couple|most)(?: of (?:them|the tabs))?(?: (?:is|are|was|were|still|all|just))+ (?:stick|stand|point|pok)ing(?: (?:still|all|right|just))* (?P<x>straight) (?:up|out)(?![\w'])", (("x", "right"),)),
    Plainer(("better ", "should ", "gotta ", "have to ", "guess i", "let me ", "need to ", "i'd best", "i'll "), rf"(?:(?<=[.?!,] )|^)(?P<x>(?:(?:okay|ok|so|well|alright|guess|then|and),? )*(?:{_I}(?:'d| had)? better|{_I}'d best|{_I} (?:should|oughta|ought to|gotta|got to|have to|need to|guess i'll|better)|i'll|let me) (?:just |go ahead and )?(?P<v>patch|tape|staple|fix|repair|rub|trim|wipe)(?: (?:it|that|them|this|one|up|down|over))*[.!] )(?=(?:(?:okay|ok|done|so|alright|now|good|there)(?: we go| now)?[,.] )?(?:{_I} |{_I}'ve )?(?P=v)(?:ed|d|bed|med|led)(?![\w']))", (("x", ""),)),
    Plainer((" out and ",), r"(?P<x>(?:cut|took|pulled|tore|slid|sawed|ripped) (?:that|the|this)(?: (?:whole|entire|bad|wet|bottom|ruined|soaked|top|back|front))* (?:panel|board|piece|side|section|sheet) out and (?:put|set|slid|glued|fit|fitted|dropped|cut) (?:in )?(?:a|another)(?: (?:new|fresh|good|dry|whole))* (?:one|panel|piece|board|section|side)(?: in| back in)?)(?=[.,;]| and|$)", (("x", "replaced that panel"),)),
    Plainer((" on a ", " on the "), r"(?:set|laid|put|stood|dropped|lay|sat|left|leaned)(?: [\w-]+){1,4} down (?P<x>on (?:a|the|some) (?:wet|damp|soaked|muddy|puddled) (?:floor|slab|ground|concrete|deck|grass|pavement))(?![\w'])", (("x", "there"),)),
    Plainer(("not fixing", "ain't fixing"), r"(?P<x>i(?:'m| am) not fixing (?:it|that|them|those))(?![\w'])", (("x", "that's that"),), unless=r"tear|torn|rip|hole|punctur|dent|crush|gash|damage|wet|slit|crack|soaked|nick|scuff|gouge|split|poke|cut"),
    # --- he sets right what he said himself
    Plainer((" was ",), rf"(?P<a>length|width|height|offset|spacing|static|pressure|size|trunk|branch|gap|throat|thickness|diameter|temperature) was {_MEASURE}(?: (?:inches|inch|long|wide))?(?P<x>[.,;] (?:and |but |now )?(?:the )?(?P=a) (?:is|is now|'s now|should be) )(?={_MEASURE})", (("x", ", no, "),)),
    Plainer(("told you", "i said", "we said", "told him", "told them"), rf"(?:(?P<w>(?:i think |think |i know )?{_I} (?:told (?:you|him|her|them|the office)|said)(?: that)? )(?=(?:number )?(?:\d+|(?:straight|elbow|tee|wye|cap|end cap|collar|transition|offset|plenum|branch) [\w-]+) (?:was|is) ))[^.?!]{{1,40}}?(?:every )?{_MEASURE}(?: (?:inches|inch|long))?(?P<x>[.,;] (?:well,? |but |and |actually,? |really,? )*(?:it's|it is|they're|it was|mine's|that's)(?: (?:really|actually|more like|,))*,? )(?=(?:every )?{_MEASURE})", (("w", ""), ("x", ", no, "))),
    Plainer(("told you", "i said", "told him"), rf"(?:(?<=[.?!] )|^)(?:(?:oh|and|also|hey|so|wait|now) )*on (?:number |the )?(?:(?:straight|elbow|tee|wye|cap|end cap|collar|transition|offset|branch|plenum) )?(?:number )?\d+,? {_I} (?:told (?:you|him|them)|said) (?:it was |it's )?{_MEASURE}(?: (?:inches|inch))? (?:long|wide|back)(?P<w>[.,;] (?:but |and |actually,? |well,? )*(?:it's|it is|it was|that's)(?: (?:really|actually))*,? )(?={_MEASURE})", (("w", ", make that "),)),
    Plainer((" i wish", "in my dreams", "if only", "dream on", "not even close", "yeah right", "fat chance", "not hardly", "think again", "try again"), rf"{_MEASURE}(?: (?:inches|inch|degrees))?(?P<of> of \w+| apart)?(?P<x>\? (?:(?:ha|no|nope|oh|well|yeah|please|hah)[,.!]* )*(?:i wish|in my dreams|if only|dream on|not even close|yeah right|fat chance|not hardly|think again|try again)[.,!]+ (?:try |it's |more like |make it |call it |that's )*){_MEASURE}(?: (?:inches|inch|degrees))?(?P<z>)", (("x", ", no, "), ("z", r"\g<of>"))),
    Plainer(("what am i saying", "listen to me", "what did i say"), r"(?<=, )(?:no|wait)(?P<x>, (?:what am i saying|listen to me|what did i say|what am i talking about))(?=, )", (("x", ""),)),
    Plainer(("well, no,", "or no,", "or, no,", "well no,"), rf"{_MEASURE}(?: inch(?:es)?)?, (?P<x>(?:well|or),? )(?=no, {_MEASURE})", (("x", ""),)),
    Plainer(("no, ", "wait, "), rf"(?:no|wait), (?P<x>(?P<n>{_COUNT}), )(?=(?P=n) (?:inch|inches|by|long|wide)(?![\w']))", (("x", ""),)),
    Plainer(("that's what it", "that's it", "there", "that's the"), rf"{_MEASURE} long(?P<x>[.] ){_MEASURE}(?P<y>[.,] (?={_NUMBER} and))?(?:{_MEASURE})?(?=(?:, there)?, (?:there|that's what it (?:says|is|reads|measures)|that's it|that's the one))", (("x", ", no, "), ("y", ", no, "))),
    # --- a piece of a hundred and more, said of ahead
    Plainer(("for ", "on "), rf"(?:(?:^|(?<=[.!?] ))(?P<x>for|on) )(?P<m>(?:one|two) (?:(?:twen|thir|for|fif|six|seven|eigh|nine)ty(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?|(?:thir|four|fif|six|seven|eigh|nine)teen|eleven|twelve|\d\d))(?=,? {_I}(?![\w']))", (("x", "on number"),)),
    # --- an act for which one never went back
    Plainer((" back and ", " back to "), r"(?:never|didn't|did not|haven't|couldn't)(?P<x>(?: (?:did|really|even|actually|ever))* (?:go|get|come|went|got|came|gone|gotten|make it) back (?:and |to |to go and ))(?=(?:tape|staple|rub|wipe|trim|patch|bend|close)(?: |[.,;]|$))", (("x", " "),)),
)
