"""English that tells what is left on a piece, and the plain words that it is read as: "the rub down is what's missing" still needs the rub down."""

from __future__ import annotations

from logbook.languages.en.plainer import _COUNT
from logbook.languages.plainer import Plainer

KIND = r"(?:straight|section|elbow|ninety|forty-five|tee|wye|branch|end cap|cap|collar|transition|reducer|offset|plenum|access door|damper sleeve|sleeve|equipment connection|piece|fitting)"
NUMBER = rf"(?:\d+|{_COUNT}(?: {_COUNT})?)"
PIECE = rf"(?:(?:the )?(?:{KIND} )?(?:number )?{NUMBER}|it|this one|that one|this|that|the {KIND})"
_RUB = r"(?:rub(?:bing)?(?:[ -]?down)?|burnishing|squeegee(?:ing)?)"
_WORK = rf"(?:(?:the |its |a |some |any )*(?:tape|taping|staples|stapling|vanes|turning vanes|mastic|trimming|{_RUB})(?: job| work| part)?)"
_LEFT = r"(?:left(?: to do)?|open|missing|lacking|to go|to do|not done|undone|outstanding|remaining|short|still (?:open|left|to do|missing|to go))"
_ON = rf"(?: (?:on|for|with|about|from) {PIECE})?"
_DAY = r"(?:tomorrow|tonight|later|next week|first thing|in the morning|this afternoon|after (?:lunch|break)|(?:on |come )?(?:monday|tuesday|wednesday|thursday|friday|saturday)|when (?:i|we|the|it) )"
_ENDS = r"(?=[.,;!]|$)"
_I = r"(?:i|we)"
_IS_LEFT = ("'s left", "is left", "thing left", "have left", "got left")
_ALL_THATS_LEFT = r"(?:what|all)(?: that)?(?:'s| is| i've got| i have) left(?: to do)?|(?:the |my )?(?:only|last|one) thing(?: that's| i have| i've got)? left(?: to do)?"
_A_PART = r"(?:the |its |that |one )(?:other |last |far |near |back |front |top |bottom |left |right |heel |throat |long |short )*(?:top|bottom|left|right|back|front|heel|throat|sides?|seams?|joints?|corners?|end|cheeks?)(?![\w'])"
_SHARES_NAMED = ("better part", "greater part", "bigger part", "better half", "bigger half", "the bulk", "the majority", "lion's share", "most everything", "most all of", "nearly everything", "almost everything", " chunk", "good part", "big part", "fair part", "good portion", "big portion", "good piece of", "good bit")
_SHARE = r"(?:the (?:better|greater|bigger) (?:part|half)|the (?:bulk|majority)|the lion's share|a (?:good|big|fair) (?:chunk|part|portion|piece|bit))(?: of)?"
_ON_IT = r"(?<!not )(?:taped|stapled|rubbed|burnished|wiped|cleaned|trimmed|bent|(?:tape|staples|mastic)(?:'s| is| are)?)(?: (?:down|up|on|in|over|along|only|just|about|maybe))*"

ENGLISH_LEFT_PLAINLY = (
    # --- a part of it that is no numbered side, and nothing else
    Plainer(
        ("only the ", "just the "),
        r"(?<!not )(?:only|just) (?P<x>the (?:front|face|underside|near side|far side|room side|wall side|open side|easy side|outside)(?: (?:seam|side|face|of it))?)(?= (?:of (?:it |that |this )?[^.?!;,]{1,24}? )?(?:is|got|was|has been|has got|gets|has)(?: (?:been|all|now))* (?:stapled|taped|tape|staples)(?=[.,;!]|$| on| and| so| now| right| for))",
        (("x", "one side"),),
    ),
    # --- "collar 5 has mastic, straight 6 hasn't had any": of the same
    Plainer(
        (" any",),
        r"(?<![\w'])(?P<t>mastic)(?![\w'])(?:(?!(?<![\w'])(?:tape|taped|staples?|stapled|vanes?|tabs?|washers?|damage|gaps?|screws?|hangers?)(?![\w']))[^?!]){1,90}?(?P<x>(?:hasn't|has not|haven't|didn't|did not|never|doesn't|don't)(?: (?:had|got|gotten|get|have|has|seen|see|ever))+ any)(?=[.,;!]|$| (?:and|yet|but|on|till|until))",
        (("x", r"hasn't had any \g<t>"),),
        beside=("mastic",),
    ),
    # --- the vanes are still in the box: they are not in the piece; the back one is a side; the damper in sleeve 10
    Plainer((" in the ", " in my ", " on the ", " on my ", " at the ", " in a "), r"(?<![\w'])(?:(?:vanes|turning vanes)(?=(?:'re| are)\b)|(?:tape|staples|tabs|washers)(?=(?:'s| is|'re| are) still\b))(?P<x>(?:'s| is|'re| are)(?: all| still| just| sitting| lying| over)* (?:in|on|at|out in|back in|back at|down in|out on) (?:the|my|his|a|its) (?:box|boxes|truck|van|bag|crate|carton|bucket|gang ?box|tool ?box|tool bag|shop|warehouse|store|package|cart|lift|bench|floor))(?=[.,;!]|$| and\b| so\b| because\b)", (("x", " missing"),), unless=r"(?:rest|more|extra|leftover|other|spare|another|empty|used|roll)"),
    Plainer(("back one",), r"(?<=\bthe )(?P<x>back one)(?=[.,;!]|$| (?:is|isn't|i|that|which|has|still|needs|doesn't|and|but|with|yet)\b)", (("x", "back side"),)),
    Plainer(("in sleeve ",), r"damper in (?P<x>sleeve)(?= (?:number )?\d)", (("x", "damper sleeve"),)),
    # --- the rub down is what's missing, the only thing open is the tape
    Plainer(("what's", "what is", "all that", "all it", "thing"), rf"(?P<x>(?P<a>{_WORK})(?:'s| is| are|'re)(?: all| pretty much| about| just| really)* (?:what's|what is|that's|all that's|the (?:only |one |last )+thing(?: that's| that is)?)(?: still| all)* {_LEFT}){_ON}(?:,? and (?:that|it)(?:'s| is) not (?:on|done|in)(?: yet)?)?", (("x", r"still needs \g<a>"),)),
    Plainer(("mastic",), r"(?P<x>(?:the )?mastic(?:'s| is) the (?:last|only|one) thing(?: (?:left|to do|to go|missing))*(?:,? (?:and|but) (?:that|it)(?:'s| is|n't| isn't)(?: not| still)* (?:on|done|in|there|happened)(?: yet)?)?)(?=[.,;!]|$)", (("x", "still needs to be taped"),), unless=r"(?<!not )taped|with 181"),
    Plainer(("last thing",), rf"(?P<x>(?P<a>(?!(?:the )?mastic){_WORK})(?:'s| is| are) the last thing(?: (?:left|to do|to go))*,? (?:and|but) (?:that|it)(?:'s| is|n't| isn't)(?: not| still)* (?:on|done|in|there|happened)(?: yet)?)", (("x", r"still needs \g<a>"),)),
    Plainer(("thing", "item", "step"), rf"(?P<x>(?:(?:the|my|just|only|with) )*(?:(?:only|one|last|main|single) )+(?:thing|item|step|job)(?: (?:that's|that is|i have|we have|i got|i've got|i'm|it's|is))*(?: {_LEFT})+(?:(?:,? (?:is|would be|and that's|that's|it's)|[,.:;])(?: just| only| still)*) )(?={_WORK}{_ENDS}|(?:the )?(?:tape|staples|vanes|mastic) on the )", (("x", "still needs "),), unless=r"(?:thing|item) (?:left|open)[^.?!]{0,30}(?:hang|next piece)"),
    Plainer((" open on ", " left on ", " missing on ", " open for ", " left for ", " missing from ", " to do on ", "not done on"), rf"(?P<x>(?:the )?(?:only|one|last) thing (?:that's |still )*(?:open|left|missing|not done|to do)(?: to do)? (?:on|for|with|from) )(?:{PIECE})(?:, [^.?!]{{1,50}}?,)?(?P<y>(?: (?:is|would be)|[:.,]) )(?={_WORK}{_ENDS}|(?:the )?(?:tape|staples|vanes|mastic) on the )", (("x", ""), ("y", ", it still needs "))),
    Plainer(("last thing", "one more thing", "one thing"), rf"(?<=[.,;] )(?P<x>(?:(?:and|but|so) )?(?:the )?(?:last thing|one more thing|one thing)(?: (?:left|to go|to do|open|on it))*(?: is| would be|[,:.]) )(?={_WORK}{_ENDS})", (("x", "still needs "),)),
    Plainer(("to do", "to go"), rf"(?P<x>(?:i|we|i've|we've)(?: still)? (?:got|have|had|'ve got)(?: still| just| only)* (?P<a>{_WORK}) to (?:do|go|finish|put on|run)(?: still| yet)?)", (("x", r"it still needs \g<a>"),)),
    Plainer((" to go",), rf"(?:(?<=[.,;:] )|(?<=and )|^)(?P<x>(?P<a>(?:the )?(?:tape|taping|staples|stapling|vanes|{_RUB}|trimming))(?:'s| is| are)?(?: still)? to go)(?: (?:yet|still|on))?{_ENDS}", (("x", r"still needs \g<a>"),)),
    Plainer((" owe ",), rf"(?P<x>(?:i|we)(?: still|'ll still)? owe )(?:{PIECE})(?P<y> )(?=(?:[\w-]+ ){{0,5}}?(?:tape|taping|staples|stapling|rub|rubbing|vanes|mastic|trimming|patch)\b)", (("x", ""), ("y", " still needs "))),
    Plainer((" left to close", " left to tape", " left to seal", " still to close", " still to tape", " to close up"), r"(?P<x>(?:(?:just|only|and) )*(?:one|two|a|three|the last) (?:more )?(?:joint|seam|side|end|corner|edge)s? (?:left|still|more) to (?:close|tape|seal)(?: up)?)(?=[.,;!]|$)", (("x", "one seam isn't taped yet"),)),
    Plainer(("waits for", "waits on"), r"(?P<x>waits (?:for|on))(?= (?:its |the |some |more |a )?(?:tape|vanes|staples|rub|rubbing|taping|stapling|patch|trimming)\b)", (("x", "still needs"),)),
    Plainer(("before i ", "before we "), r"(?:stopped|quit|knocked off|left|walked off|went home|got called (?:off|away)|had to (?:go|leave|stop|quit))(?: (?!before)[\w']+){0,3} (?P<x>before (?:i|we)(?: ever| even| had| could| got around to)*)(?= (?:tape|staple|rub|trim|wipe|taped|stapled|rubbed|trimmed|wiped)\b)", (("x", "and never"),)),
    Plainer((" bare", " naked", " uncovered"), r"(?:seam|joint|edge)s?(?P<x> (?:on|along|at|across) (?:the |that )?[\w-]+(?: (?:side|end|edge))?)(?= (?:is|are|'s) (?:still |all )?(?:bare|naked|uncovered)\b)", (("x", ""),)),
    Plainer(("has none", "got none", "have none"), r"(?:taped|tape)\b[^.?!]{0,60}? the (?:top|bottom|back|front|left|right|underside|heel|throat|far|other|last|wall|near)(?: (?:side|end|edge|seam|one))?(?P<x>(?:'s got| has| have| got) none)(?=[.,;!]|$)", (("x", " isn't taped"),)),
    *(
        Plainer((f"with the {tool}", f"with {tool}", f"with my {tool}", f"with any {tool}"), rf"(?:couldn't|can't|could not|cannot|didn't|never|won't)(?: (?:even|quite|ever))? (?P<x>(?:reach|get(?: to| at| into| behind)?|got(?: to| at)?)) (?:the |that )(?:[\w-]+ ){{1,3}}?(?P<y>with (?:the |my |any )?(?:{tool}))(?=[.,;!]|$)", (("x", act), ("y", "")))
        for tool, act in (("tape", "tape"), ("stapler", "staple"), ("squeegee", "rub"))
    ),
    Plainer(("rub left", "down left", "rubbing left", "taping left", "stapling left", "trimming left"), rf"(?<!no )(?<!any )(?P<x>(?P<a>(?:{_RUB}|taping|stapling|trimming)) left(?: (?:to do|on it|to go))*){_ENDS}", (("x", r"still needs \g<a>"),)),
    Plainer(("missing", "lacking", "short", "minus"), rf"(?P<x>(?:missing|lacking|short|minus) (?P<a>(?:its|the|a) {_RUB}))(?! (?:tool|stick|block))", (("x", r"still needs \g<a>"),)),
    # --- to do on straight 80: tape, rub
    *(
        Plainer(("to do on", "to-do on", "to do for", "left on", "left for", "open on", "list for", "list on", "items on", "items for", "not done on", "to go on", "to finish on", "remaining on", "remains on", "outstanding on"), rf"(?:(?<=[.!?] )|^)(?P<x>(?:(?:still|what's|things|work|what) )*(?:to[- ]do|remaining|remains|outstanding|left(?: to do| to go| to finish)?|to finish|not done(?: yet)?|open(?: items?)?|punch(?: |-)list|to[- ]do list) (?:on|for) )(?P<n>{PIECE})(?P<y>[:,-]+)(?= {ahead})(?: (?P<a>one[,:.)]|1[.):]|first[,:]?)(?= ))?[^.?!]{{0,40}}(?:(?P<s>[.] )(?P<b>(?:two|2|second|then)[,:.)]* ))?", (("x", ""), ("y", means), ("a", ""), ("s", ", "), ("b", "")))
        for ahead, means in ((r"(?!(?:is|was|are|nothing|none|not|no)\b)", ", still have to do:"), (r"(?=(?:nothing|none)\b)", ", to do:"))
    ),
    # --- closing it up tomorrow, set up to be taped
    Plainer(("closing", "sealing", "buttoning"), rf"(?<!was )(?<!were )(?<!been )(?<!of )(?<!before )(?<!after )(?P<x>(?:(?:i'm|we're|i am|we are) )?(?:closing|sealing|buttoning)(?: (?:it|this one|that one|this|her|them|the (?:seams?|joints?)))(?: (?:up|in|all|off))*)(?= {_DAY})", (("x", "I'll tape it"),)),
    Plainer(("ready for", "ready to", "set to", "set up to", "prepped", "waiting to", "up for tape"), r"(?P<x>(?:all )?(?:set up|set|ready|prepped|lined up)(?: (?:and|now|there))* (?:to be taped|to get taped))(?=[.,;!]|$| (?:tomorrow|later|next|in|after|when|now|up))", (("x", "ready for tape"),)),
    Plainer(("should get ", "ought to get", "want it", "like it"), r"(?P<x>(?:(?:it|that|this) )?(?:should|ought to) get|(?:(?:i|we) )?(?:want|(?:would|'d) like) it) (?=(?:taped|rubbed|stapled|trimmed|patched|sealed)(?: down| up)?(?:[.,;!]|$| (?:tomorrow|later|when|first|before|yet|too|soon)))", (("x", "needs to be"),), unless=r"(?:he|they|lead|boss|inspector|who|didn't|don't) (?:\w+ )?want"),
    Plainer(("ready to be rubbed", "ready to be stapled", "ready to be trimmed", "set to be rubbed", "ready to get rubbed"), r"(?P<x>(?:all )?(?:ready|set) to (?:be|get)) (?=(?:rubbed|stapled|trimmed))", (("x", "needs to be"),), unless=r"(?:was|were) (?:all )?ready"),
    Plainer((" and rub", "& rub", "+ rub"), rf"(?:(?<=[.,;] )|(?<=: ))(?P<x>(?:tape|taping) (?:and|&|\+|then) (?:rub|rubbing)(?:[ -]?down)?)(?= (?:are |is |it |for )?{_DAY})", (("x", "still needs tape and a rub down"),)),
    Plainer((", no, ", ", no not", " no not"), r"(?P<a>tape|mastic|staples|rub(?:bing)?(?: ?down)?)(?P<x>[,:]? no,? not)(?= (?:till|until|yet|before))", (("x", " is not done"),)),
    Plainer(("needs both", "need both", "needs 'em both"), r"(?P<a>taped|stapled)(?:,? (?:and|&|\+|n) |, )(?P<b>rubbed|taped)(?: down)?[^?!]{0,60}?(?:still )?needs? (?P<x>(?:them |'em )?both(?: of (?:them|those))?)(?=[.,;!]|$)", (("x", r"to be \g<a> and \g<b>"),)),
    Plainer(("needs both", "needs 'em both"), r"(?:needs|wants) (?P<x>both)(?=[.,;!]|$)", (("x", "work"),), unless=r"(?:taped|stapled)(?:,? (?:and|&|\+|n) |, )(?:rubbed|taped)"),
    # a share by another name is half of it to the reader: none of them is all
    Plainer(_SHARES_NAMED, rf"(?P<a>{_ON_IT}) (?P<x>{_SHARE}) (?=(?:it|this|that|the|my|its)\b)", (("x", "half of"),)),
    Plainer(_SHARES_NAMED, rf"(?P<a>{_ON_IT}) (?P<x>{_SHARE}|most everything|most all of it|nearly everything|almost everything)(?=[.,;!]|$| (?:and|with|so)\b)", (("x", "half of it"),)),
    Plainer(_SHARES_NAMED, r"(?P<x>(?:the |a )(?:better|greater|bigger) (?:part|half) of|the (?:bulk|majority) of|the lion's share of|a (?:good|big|fair) (?:chunk|part|portion|piece|bit) of) (?=(?:it|the (?:seams?|joints?|flap|tabs|staples|sides?))(?:'s| is| got| has| are| was)(?: been)? (?:taped|stapled|rubbed|bent|wiped|cleaned|trimmed))", (("x", "half of"),)),
    Plainer(("besides",), r"everything (?P<x>besides) (?=tape|staple|rub|trim|the (?:tape|staples|vanes|rub))", (("x", "except"),)),
    Plainer(("got back",), r"never (?P<x>got back(?: (?:over|up|around|in|there))*) to (?=(?:tape|staple|rub|trim|patch|wipe|bend|seal|finish|the ))", (("x", "got"),)),
    Plainer(("proper", "right and", "good and"), r"(?:i'll|we'll|gonna|going to|will) (?:staple|tape) it(?P<x> (?:proper(?:ly)?|right|good)) and (?=tape|rub)", (("x", ""),)),
    Plainer(("tape ran out", "roll ran out", "tape run out", "mastic ran out", "tape's run out"), rf"(?P<x>(?:the )?(?:tape|roll|mastic)(?:'s)? (?:ran|run) out) on {PIECE}(?=[^.?!]{{0,40}}\b(?:none|no tape|bare|without|nothing|open)\b)", (("x", "ran out of tape"),)),
    Plainer(("nothing else has", "nothing else is", "nothing else was", "nothing else got"), r"(?P<a>taped|stapled|rubbed)(?: down)?[,.;] (?:but |and )?(?P<x>nothing else (?:has(?: been)?|is|was|got)(?: (?P=a))?)(?=[.,;]|$)", (("a", r"\g<a> on one side only"), ("x", "that's all"))),
    Plainer(("mastic", "sealing"), r"(?P<x>(?:the )?(?:mastic|sealing)(?:'s| is)? (?:only |just |about |maybe )*(?:half|halfway|partly|mostly|part way)(?: |-)?(?:done|on|finished|there|round|around)?)(?=[.,;!]|$| (?:and|so|but)\b)", (("x", "it's only half taped"),), unless=r"(?<!half )taped|with 181|tear|hole|patch"),
    Plainer(("gave up on",), rf"(?P<x>gave up on (?:the |its )?)(?=(?:tape|taping|staples|stapling|vanes|{_RUB})(?:[.,;!]|$| (?:on|too|because|since|and|when|after)\b))", (("x", "no "),)),
    Plainer(("on the list", "on my list", "on the punch list", "on our list"), r"(?P<x>(?:still )?on (?:the|my|our) (?:to-?do |punch )?list[:,] )(?=(?:tape|rub|staple|trim|patch|wipe|bend)\b)", (("x", "Still have to "),)),
    Plainer(("crew", "guys", "guy "), rf"(?P<x>the (?:tape|taping) (?:crew|guys?|team) (?:comes?|is coming|'s coming|will come|gets? here|will be here|'ll be here|are coming)(?: (?:through|in|by|over|up))*)(?= {_DAY})", (("x", "taping"),)),
    # --- he is at it still, and what will be done with it
    Plainer(("working on", "busy with", "at work on"), rf"(?P<x>(?:(?:i'm|we're|i am|we are) )?(?:still |now |just )*(?:working on|busy with|at work on) (?P<a>(?:the |its )?(?:tape|taping|staples|stapling|{_RUB}|mastic)))(?=[.,;!]|$| (?:right now|now|on it|yet|still|when|as))", (("x", r"still needs \g<a>"),), unless=r"(?:was|were) (?:working on|busy)"),
    Plainer((" tbd", " outstanding", " incomplete", " unfinished", " on hold", " not complete", "to be done"), rf"(?:(?<=[.,;:] )|^)(?:(?:straight|elbow|tee|piece) \d+ )?(?P<x>(?P<a>(?:the )?(?:tape|taping|stapling|{_RUB}|trimming|vanes))(?:'s| is| are)?(?: still)* (?:tbd|outstanding|incomplete|unfinished|on hold|not complete|to be done|pending))(?=[.,;!]|$)", (("x", r"still needs \g<a>"),)),
    Plainer(("closure", "closing", "sealing"), r"(?:(?<=[.,;:] )|^)(?P<x>(?:the )?(?:closure|closing|sealing)(?: it up| up)?(?:'s| is)?(?: still)* (?:tbd|outstanding|incomplete|unfinished|on hold|pending|to be done|to do|to come|left(?: to do)?|not done(?: yet)?))(?=[.,;!]|$)", (("x", "still needs to be taped"),)),
    Plainer(("back",), r"(?<![\w'])(?:need to|needs to|have to|has to|gotta|got to|will|i'll|we'll|gonna|going to)(?P<x> (?:come|go|get|head) back(?: (?!but|because)[\w']+){0,6}? and) (?=(?:tape|staple|rub|trim|patch|seal|bend|wipe)\b)", (("x", ""),)),
    Plainer(("short tape", "short staples", "short a little", "short some"), r"(?<!the )(?<!used )(?<!with )(?<!those )(?<!my )(?<!some )(?<!of )(?P<x>(?:(?:it's|still|is|a little|a bit) )*short (?:(?:some|a little|a bit of) )?)(?=(?:tape|staples|mastic) (?:on|at|along|in) (?!it\b|this|that one|there|them|all of))", (("x", "no "),)),
    Plainer(("closed", "sealed"), r"(?P<x>(?:isn't|is not|not|'s not|ain't) (?:all the way|fully|completely|quite|totally|entirely|all) (?:closed|sealed)(?: up)?)(?=[.,;!]|$| (?:yet|around))", (("x", "is only half taped"),)),
    *(
        Plainer((f"{act} ",), rf"{act}(?: down)? [^.?!]{{2,50}}?(?:,|and|but) (?:and |but )?(?:i |we )?(?P<h>haven't|have not)(?P<x> (?:done|gotten|got|hit|reached)(?: to| at)?)(?= the (?:bottom|top|back|front|left|right|underside|heel|throat|rest|(?:far|other|last|near|back|bottom|top|fourth) (?:side|one|end|edge|seam))\b)", (("x", f" {act}"),))
        for act in ("taped", "stapled", "rubbed")
    ),
    # --- nothing is left: neither is anything lacking
    Plainer(("left to", "more to"), rf"(?P<x>(?:no|not any|isn't any) (?:more )?(?P<a>tape|taping|staples|stapling|{_RUB}|trimming) (?:left |more )?to (?:put on|put in|do|run|lay|go|go on|be done))", (("x", "nothing open"),)),
    # --- the insulation that should have come out, and did not
    Plainer(("insulation", "fiberglass", "the glass"), r"(?:insulation|fiberglass|glass) (?:in|at|on|of|inside) the (?:male|slip) end(?: (?:of|on) [\w-]+(?: \w+)?)? (?P<x>(?:should(?: have|'ve)|was supposed to(?: have)?|ought to(?: have)?|was meant to(?: have)?|was to(?: have)?) (?:been |be |come |have come )?(?P<v>(?:cut|taken|pulled|scraped|trimmed|cleaned|shaved|dug|peeled|stripped)(?: (?:out|off|away|back))?|removed|out)(?:,? (?:and|but)|[.;]) (?:it|that) (?:wasn't|was not|isn't|is not|never was|hasn't|has not|hasn't been|has not been|didn't|did not))(?=[.,;!]|$)", (("x", r"was not \g<v>"),)),
    # --- "remains" and "open" are "left"
    Plainer(("remain",), r"(?P<x>what(?: still)? remains(?: to (?:do|be done)| open| undone| outstanding)?)(?=(?: (?:on|for|with|of) [^.,;?!]{1,30}?)?(?:'s| is)\b|,? and\b|[.,;!]|$)", (("x", "what's left"),)),
    Plainer(("remain",), r"(?P<x>all(?: that)?(?: still)? remains(?: to (?:do|be done)| open| undone)?)(?=(?: (?:on|for|with) [^.,;?!]{1,30}?)?(?:'s| is)\b)", (("x", "all that's left"),)),
    Plainer(("remain", "outstanding", "open item", "open point", "open work"), r"(?P<x>(?:(?:the|my) )?(?:(?:one|only|last) )?(?:remaining (?:work|item|step|task|job|operation|thing)|outstanding (?:work|item|task|job|thing)|open (?:item|point|work))(?: (?:left|there|still))?)(?=(?: (?:on|for|with) [^.,;?!]{1,30}?)?(?:'s| is)\b)", (("x", "all that's left"),)),
    Plainer(("outstanding", "remaining", "left", "open", "missing", "lacking", "undone", "pending"), rf"(?:(?<=[.;!] )|^)(?P<x>(?:(?:still|yet) )?(?:outstanding|remaining|left|open|missing|lacking|undone|pending)(?: to (?:do|be done))?)(?= on (?:{PIECE}|there) (?:is|are) | is (?:{_WORK}{_ENDS}|the (?:tape|staples|taping|stapling|rubbing|vanes)\b))", (("x", "all that's left"),)),
    # --- what is left of a piece: a part of it, or an act
    Plainer(_IS_LEFT, rf"(?P<x>(?:{_ALL_THATS_LEFT})) (?:on|with|for|of|in) {PIECE}(?P<y>(?:'s| is))(?= (?:just |only )*{_A_PART})", (("x", ""), ("y", ": still have to do"))),
    Plainer(_IS_LEFT, rf"(?P<x>(?:{_ALL_THATS_LEFT})(?:'s| is))(?= (?:just |only )*{_A_PART})", (("x", "still have to do"),)),
    Plainer(_IS_LEFT, rf"(?P<x>what(?:'s| is|'ve i got| i've got| i have) left(?: to do)?)(?= (?:on|with|for|of) {PIECE}(?:'s| is) )", (("x", "all that's left"),)),
    Plainer(("nothing left", "nothing more", "nothing else", "nothing open"), rf"(?<=[.,;!] )(?P<x>(?:there's |there is |got )?nothing (?:left|more|else|open)(?: to do| open| left)?(?: (?:on|with|for) (?:that one|this one|it|that|this|her|him|there))?)(?= (?:on|with|for) {PIECE}(?:[.;!]|,(?! (?:but|except))|$)|[.;!]|,(?! (?:but|except))|$)", (("x", "all finished"),)),
    Plainer(("any more rubbing", "any rubbing", "more rubbing", "any more taping", "more tape"), rf"(?P<x>(?:doesn't|didn't|does not|did not|won't|don't) (?:need|want|take) (?:any |no )?(?:more |extra |further )+(?:{_RUB}|taping|tape|stapling))", (("x", "was rubbed down"),), unless=r"more (?:taping|tape|stapling)"),
    # --- closed after all
    Plainer(("finished the tap", "finished tap", "finished up the tap", "got the tap", "finished the rub", "finished rub", "finished up the rub"), rf"(?<!not )(?<!haven't )(?<!hasn't )(?<!never )(?<!once i )(?<!when i )(?P<x>(?:finished|got)(?: up)? (?:the )?(?:tape|taping|(?P<r>{_RUB}))(?: (?:done|finished))?)(?=[.,;!]|$| on (?:it|{PIECE})| (?:too|and|this morning|today|up))", (("x", "taped it"),), unless=rf"finished (?:up )?(?:the )?{_RUB}|got the {_RUB}"),
    Plainer(("roll", "tape"), r"(?:new|another|fresh|more|the) (?:roll|tape)(?: of tape)?(?: (?:today|this morning|came|came in|finally))*,? (?:so |and |then )*(?:i |we )?(?:went back and |came back and )?(?P<x>(?:closed|finished|sealed|buttoned) (?:it|her|that|this one)(?: (?:up|in|off))?)(?=[.,;!]|$| and)", (("x", "taped it"),), unless=r"tomorrow|next week|when the"),
    # --- sealed with mastic or not at all
    Plainer(("sealed", "closed", "mastic"), r"(?P<x>(?:(?:still )?needs? to be|has to be|have to be) (?:sealed|closed)(?: up)?)(?=[.,;!]|$| (?:yet|still|tomorrow|up))", (("x", "still needs to be taped"),), unless=r"(?:taped|with 181|tape's on|tape is on|mastic'?s? (?:is )?on)(?! yet)"),
    Plainer(("not sealed", "isn't sealed", "not closed", "isn't closed", "hasn't been sealed", "haven't sealed", "never sealed"), r"(?P<x>(?P<a>not|isn't|hasn't been|ain't) (?:sealed|closed)(?: up)?)(?= yet)", (("x", r"\g<a> taped"),), unless=r"(?<!not )taped|with 181|corner|gap"),
    Plainer(("mastic",), r"(?P<x>(?:still )?needs (?:the |its |some )?mastic(?:,? and (?:that|it)(?:'s| is) not (?:on|done|in)(?: yet)?)?)(?=[.,;!]|$)", (("x", "still needs to be taped"),), unless=r"(?<!not )taped|with 181|corner|fabric|patch|tear|hole"),
    Plainer(("mastic",), r"(?:(?<=[.,;] )|(?<=and ))(?P<x>(?:the )?mastic(?:'s| is|)(?: not|n't) (?:on|in|done|there)(?= yet|[.,;!]|$)|no mastic(?: on(?: it)?)?(?= yet))", (("x", "not taped"),), unless=r"(?<!not )taped|with 181|corner|fabric|patch|tear|hole"),
    # --- he told it as not done, and went back for it
    *(
        Plainer((f"wasn't {act}", f"isn't {act}", f"not {act}", f"hadn't {act}", f"hadn't been {act}", f"hasn't been {act}"), rf"(?P<x>(?:{_I} (?:said|told (?:you|him|them))|you asked why)(?: that)? (?:{PIECE}) (?:wasn't|isn't|was not|is not|hadn't been|hasn't been) {act}(?: (?:down|yet))*[,.;]? (?:well,? |but |so |and |now )*)(?={_I} (?:went|came|got|did|just|finally|since|have)[^.?!]*?{act})", (("x", ""),))
        for act in ("taped", "rubbed", "stapled", "trimmed", "patched")
    ),
    # --- what he names in passing is the piece
    Plainer(("remind me",), rf"(?:(?<=[.!?,] )|^)(?P<x>remind me (?:on|about) )(?={KIND} (?:number )?{NUMBER},)", (("x", ""),)),
    Plainer(("remind me",), rf"(?:(?<=[.!?,] )|^)(?P<x>remind me (?:that )?)(?={KIND} (?:number )?{NUMBER} (?:has|is|isn't|needs|still|doesn't|hasn't|'s)\b)", (("x", ""),)),
    Plainer((" you wanted", " you asked", " you needed", " you were asking", " you sent", " you told me"), rf"the (?:{KIND})(?P<x> (?:that )?you (?:wanted|asked (?:me )?(?:for|about)|needed|were asking (?:about|for)|sent me (?:to do|for)|told me (?:to do|to build|about)),? (?:that's |it's |number )*)(?={NUMBER}[,.])", (("x", " "),)),
    Plainer(("put ", "mark ", "write ", "log "), rf"(?:(?<=[.!?,] )|^)(?P<x>(?:put|mark|write|log) )(?:{KIND} )?{NUMBER}(?P<y> (?:down )?as )(?=(?:not |in|un|done|complete|finished|open))", (("x", "number "), ("y", ", "))),
    *(
        Plainer((f"supposed to {verb}",), rf"(?P<x>(?:when|once|after) i'm (?:done|finished|through) with )(?:{PIECE})(?P<y>,? (?:then )?i'm supposed to )(?={verb})", (("x", "number "), ("y", ", I still have to ")))
        for verb in ("tape", "staple", "rub", "trim")
    ),
    # --- what one needs, and what the next one: "straight 67 needs a rub and straight 68 needs tape and a rub"
    Plainer((" needs ", " wants "), rf"{PIECE} (?:still )?(?:needs|wants) (?:(?:a|its|some|the|to be) )?(?:{_RUB}|tape|taping|staples|stapling|vanes|trimming|taped|stapled|rubbed(?: down)?|wiped|trimmed)(?P<x>,? and)(?= (?:{KIND} (?:number )?|number )?{NUMBER} (?:still )?(?:needs|wants|is|isn't|has|doesn't)(?![\w']))", (("x", "."),)),
)
