"""English of sides left for later, a facing that stays damp, another man's work, a wish, a price and a mend, told next to what he did; and the plain words for each.

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.en.measured_next import _V
from logbook.languages.plainer import Plainer

_END = r"(?=[.,;!?]|$)"
_PIECE = rf"(?:(?:the |that )?(?:{KIND} )?(?:number )?{NUMBER})"
_TALK = r"(?:(?:honestly|to be honest|man|i mean|you know|of course|well|i'll be honest|truth is|tell you the truth|i tell you|i gotta say),? )*"
_STUFF = r"(?:staples|tape|mastic|foil|fabric|vanes)"

# --- sides
_OTHERS = r"(?:the )?(?:other|last|remaining) (?:one|two|three|1|2|3)(?: sides?)?"
_SOME = r"(?:one|two|three|[123]) sides?"
_STAND = r"(?:,? (?:they))?(?:'s|'re| is| are| was| were| sits?)(?: (?:right|tight|jammed|hard|still|all|kind of|pretty much|pushed))*(?: (?:up|in|back|over|down))?(?: (?:against|by|to|behind|under|next to|on|beside|along|at|near|close to|inside))(?: the| a| that| some)* (?!floor|bench|table|ground|cart)[a-z]+(?: [a-z]+)?"
_LATER = r"(?:i|we)(?:'ve| have|'ll|'m|'re)?(?: (?:still|yet|gotta|got to|need to|have to|haven't|didn't|gonna|going to))"

# --- damp
_WIPED = r"(?:gave (?:it|that|the \w+|her) a (?:quick |good |little )?(?:wipe|once[- ]over)|wiped|dried|toweled|towelled|blotted|cleaned|mopped|ragged)(?! (?:my|the (?:floor|table|bench|truck|tools?|gauge|gun))\b)"
_FACE = r"(?:(?:it|that|she|this|the (?:facing|foil|board|surface|skin|jacket|duct|seam|joint|thing))(?:'s| is| was| stays?| stayed| feels?| felt| looks?| looked)?|they're)"
_DAMP = r"(?:damp|wet|sweaty|sweating|moist|dripping|clammy|dewy|tacky with wet|beading up|sweating up)"
_NOT_DRY = r"(?:(?:just|still|really) )*(?:isn't|is not|ain't|wasn't|was not|won't|wouldn't|doesn't|didn't|never|'s not|not)(?: (?:really|all|quite|all the way|completely|that|ever|get|gets|getting|got|totally|too|very|exactly))* (?:dry|dried|drying|clean|dry out|dry off|come clean|came clean)"
_KIND_OF = r"(?: (?:still|kind of|kinda|sort of|sorta|a little|a little bit|a bit|pretty|real|really|all|just|somewhat|slightly|getting|gets|keeps|kept|keep|always|staying|right back to))*"

# --- another man's
_MAN = r"(?:[a-z]+|the (?:other guy|lead|boss|foreman|new guy|apprentice|helper|kid))"
_SAYS = r"(?:told me|tells me|says?|said|claims?|claimed|swears?|swore|thinks|figures)"
_WHO_KNOWS = r"(?:(?:i|we) (?:don't|do not|didn't|wouldn't|couldn't|can't) (?:know|see (?:it|that|him)|tell you|say|check(?: it)?|swear to it|vouch for (?:it|that))(?: (?:for sure|myself|about that))?|(?:i|we) (?:wasn't|was not|weren't|were not) (?:there|around|here|with him|on that|looking)(?: (?:for that|then|that day))?|who knows|ask him|that's on him|don't ask me|beats me|no idea)"
_ONLY_MINE = r"(?:all|the only (?:one|piece|thing|duct|fitting)) (?:that )?(?:i|we) (?:did|made|built|touched|worked on|put together|got to|had)(?: (?:today|myself|on this|up here|this morning))? (?:was|is|were) (?:just )?"

# --- mends
_HARM = r"(?:puncture|tear|rip|hole|slit|cut|gash|nick|split|scrape)"
_MENDED = r"(?:patched|fixed|repaired|mended|taped up|touched up)"
_TAPE_ON = r"(?:and |so |then )?(?:i |we |just )*(?:put|slapped|stuck|threw|ran|laid) (?:some |a (?:piece|strip|bit) of |the |foil |good )*tape (?:on|over|across)(?: (?:it|that|there|top|the \w+))?"
_MASTIC_ON = r"(?:and |so |then )?(?:i |we |just )*(?:(?:put|slapped|smeared|brushed|used|laid|spread) )?(?:some |the )?(?:(?:fabric|mesh) and )?mastic(?: and (?:the |some )?(?:fabric|mesh))? (?:on|over|across)(?: (?:it|that|there|top))?"
_YES = r"(?:yes|yeah|yep|yup|sure|i did|of course)(?:,? (?:i did|sir|boss|man))?"

ENGLISH_TOLD_NEXT_TO_IT = (
    # --- "Taped two sides, the other two are up against the beam and I still have to tape those"
    *(
        Plainer(
            (" other ", " last ", " remaining "),
            rf"(?<![\w'])(?:{act}d(?: (?:on|only|just|it on))* {_SOME}|{thing}(?:'s| is| are)? on (?:only |just )?{_SOME}|{_SOME} (?:are |is |got |have )?{act}d)(?: of (?:it|them))?(?:[,;.]| and| but)+ (?:and |but )?{_OTHERS}(?P<x>{_STAND}(?:,? (?:and|so|but)|[,;.])+ )(?={_LATER})(?:[a-z']+ ){{2,6}}?(?P<z>{act}|get to|do|reach)(?P<y> (?:those|them|that|these|it|that one)(?: (?:two|three|ones))?)?(?: later| yet| tomorrow)?{_END}",
            (("x", " "), ("y", ""), ("z", act)),
            beside=(act, thing),
        )
        for act, thing in (("tape", "tape"), ("staple", "staples"))
    ),
    Plainer(
        (" other ", " last ", " remaining "),
        rf"(?<![\w'])(?:taped|stapled)(?: (?:on|only|just|it on))* (?:one|two|three|[123]) sides?(?: of (?:it|them))?(?P<x>(?:[,;.]| and| but)+ (?:and |but )?{_OTHERS}{_STAND}(?:,? (?:and|so|but)|[,;.])+ (?:i|we) (?:couldn't|can't|could not|cannot) (?:[a-z']+ ){{0,3}}?(?:tape|staple|get to|do|reach) (?:those|them|that|these|it|that one)(?: (?:two|three|ones|sides?))?){_END}",
        (("x", ""),),
    ),
    # --- sides that stand against something hang from nothing by that
    Plainer((" up against ", " up by ", " up to ", " up tight"), rf"(?<![\w'])(?:{_OTHERS}|(?:one|two|three) of (?:them|the sides))(?:'s|'re| is| are| was| were) (?P<x>up )(?=(?:tight )?(?:against|by|to) )", (("x", ""),)),
    Plainer(
        (" then the other two", " then the other 2", " then the last one", " then the other one"),
        r"(?<![\w'])(?:taped|stapled)(?: all)? (?P<n>two|three|2|3) sides(?P<x>,?(?: and)? then (?:(?<=two sides, then )|(?<=two sides then )|(?<=two sides and then )|(?<=two sides, and then )|(?<=2 sides, then )|(?<=2 sides then ))the other (?:two|2)(?: sides)?|,?(?: and)? then (?:(?<=three sides, then )|(?<=three sides then )|(?<=three sides and then )|(?<=three sides, and then ))the (?:last|other) one)(?=[.,;!]|$)",
        (("n", "four"), ("x", "")),
    ),
    # --- "I wiped it off but it's still kind of damp"
    Plainer(
        (" damp", " wet", "sweat", " moist", " dripping", " clammy", " dewy", " beading", " dry", " dried", " clean"),
        rf"(?<![\w']){_WIPED}[^.;?!]{{0,40}}?(?P<x>(?:[,;.]|,? but|,? though|,? and| only)+ (?:but |though |and |only )*{_TALK}(?:(?:{_FACE}|still|kind of|kinda){_KIND_OF}(?: (?:feels|felt|looks|looked|stays))? {_DAMP}|(?:it|that|she|this|the (?:facing|foil|board|surface|skin|jacket|duct|seam|joint))(?: (?=just|still|really|isn't|is|ain't|wasn't|was|won't|wouldn't|doesn't|didn't|never|not)|(?='s not)){_NOT_DRY})(?: (?:again|right back|to the touch|on me|some|a little|though|to be honest|honestly|in here|out here|in there|underneath|up here))*)(?=[.,;!]|$| when| after| before| by the time)",
        (("x", " but it's not clean and dry"),),
        unless=r"waited|let it dry|dried up now|dry now|it's dry(?!w)|it dried|came back|wiped it again|dried (?:it )?again",
    ),
    # --- a rag that is damp wets no board
    Plainer((" rag", " towel", " cloth", " sleeve", " gloves"), rf"(?<![\w'])(?P<x>(?:but |and |though )?(?:my|the|that|this) (?:rag|towel|cloth|sleeve|gloves?|hands?)(?:'s| is| was| are| were){_KIND_OF} {_DAMP})(?=[.,;!]|$)", (("x", ""),)),
    Plainer((" damp", " wet", "sweat", " moist", " dripping"), rf"(?<=[.,;!] )(?P<x>(?:but |and |though |man,? )*(?:everything(?: else)?|the (?:whole|rest of the) (?:place|house|building|room|attic|basement|job))(?:'s| is| was){_KIND_OF} (?:damp|wet|sweaty|sweating|moist|dripping)(?: (?:in|out|up|down) (?:here|there))?)(?=[.,;!]|$)", (("x", ""),)),
    # --- "Marco told me he taped sixteen, I don't know, I was not there"
    Plainer(
        (" told me ", " tells me ", " says ", " say ", " said ", " claims ", " claimed ", " swears ", " swore ", "according to "),
        rf"(?:^|(?<=[.!?] ))(?:{_MAN} {_SAYS}(?: that)? (?:he|she|they)(?:'s|'d| had| has| did| already)* [a-z]+ [^.?!,;]*{_PIECE}|according to {_MAN},? [^.?!,;]*{_PIECE}[^.?!,;]*)(?P<x>(?:(?:[,;.]|,? but|,? and)+ (?:but |and |well )*{_WHO_KNOWS})+)(?=[.,;!]|$)",
        (("x", ""),),
    ),
    # --- "Carlos tore the facing on seven and he says he fixed it. All I did was eight"
    Plainer(
        (" i did", " i made", " i built", " i touched", " i worked on", " i put together", " i got to ", " i had ", " we did", " i only "),
        rf"(?:^|(?<=[.!?] ))(?P<x>(?!(?:i|we|so i|and i|all|the only)\b)(?:(?!(?<![\w'])(?:i|we|my|our|me)(?![\w])).)*?[.!;] )(?:so |but |and |anyway,? )?(?:(?P<y>{_ONLY_MINE}|i only (?:did|made|built|touched|worked on) )(?:(?=(?:the |that )?(?:{KIND}|number) )|(?P<z>)(?={NUMBER}{_END}))|(?={_PIECE}(?:'s| is| was) (?:the only (?:one|piece|thing)|all)(?: that)? (?:i|we) (?:did|made|built|touched|worked on)))",
        (("x", ""), ("y", ""), ("z", "number ")),
    ),
    Plainer(("i only did ", "i only made ", "i only built "), rf"(?:^|(?<=[.!?;] ))(?:so |but |and |anyway,? )?(?P<y>i only (?:did|made|built) )(?:(?=(?:the |that )?(?:{KIND}|number) )|(?P<z>)(?={NUMBER}[.,;:] (?:an? |it's an? |the )?{KIND}(?![\w'])))", (("y", ""), ("z", "number "))),
    Plainer((" i did ", " i made ", " i built ", " i touched ", " i worked on ", " i put together "), rf"(?:^|(?<=[.!?;] ))(?:so |but |and |anyway,? )?(?P<y>{_ONLY_MINE})(?:(?=(?:the |that )?(?:{KIND}|number) )|(?P<z>)(?={NUMBER}{_END}))", (("y", ""), ("z", "number "))),
    # --- "Once I get more staples I'll staple eight"
    Plainer(
        ("once ", "when ", "soon as ", "after ", "if "),
        rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:once|when|as soon as|soon as|after|if) (?:(?:the|my|our|more|some|those|that)(?: more)? {_STUFF} (?:ever )?(?:shows? up|comes?(?: in)?|gets? here|gets? in|arrives?|lands?)|(?:i|we) (?:get|find|have|pick up|grab|scrounge|buy)(?: (?:me|us|up|some|more|another|a|new|box|roll|bucket|case|of|fresh|the|any|good|those|my))* {_STUFF}(?: (?:from the (?:truck|shop|van)|in|here))?),? (?P<i>i|we)(?:'ll| will|'m gonna| am gonna|'m going to| can|'re gonna) )(?=(?:staple|tape|rub|finish|close|seal|patch|hang)(?![\w']))",
        (("x", r"\g<i> still have to "),),
    ),
    Plainer(
        ("once ", "when ", "soon as ", "after "),
        rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:once|when|as soon as|soon as|after) (?:i|we) (?:got|found|had|picked up|grabbed|scrounged up|bought)(?: (?:me|us|up|some|another|a|new|box|roll|bucket|case|of|fresh|the|any|good|those|my))* (?:more(?: {_STUFF})?|{_STUFF})(?: (?:from the (?:truck|shop|van)|in|here))?,? )(?=(?:i|we) (?:stapled|taped|rubbed|finished|closed|sealed|patched)(?![\w']))",
        (("x", "then "),),
        unless=r"ran (?:out )?again|wasn't enough",
    ),
    # --- "I didn't fix it with tape, I fixed it with fabric and mastic"
    Plainer(
        ("n't fix", "n't patch", "n't mend", "n't repair", " not fix", " not patch", " not mend", " not repair", "never fix", "never patch"),
        rf"(?<![\w'])(?P<x>(?:i|we) (?:didn't|did not|never) (?P<v>fix|patch|mend|repair)(?:ed)?(?: (?:it|that|this|them|the \w+))? (?:with|using) (?:just |only |any |the |foil |a piece of )*{_STUFF}(?:,|;|\.| but)+ (?:but |and |no )*)(?:(?=(?:i|we) (?:fixed|patched|mended|repaired)(?![\w']))|(?P<y>(?:i|we) (?:used|put|did it with|went with|did) )(?=(?:some |the |a )*(?:fabric|mastic|tape|foil)))",
        (("x", ""), ("y", "i fixed it with ")),
    ),
    # --- "Taped, rubbed, stapled, hung, done. That's what I want to hear from you guys tomorrow."
    Plainer(
        ("what i want", "what i wanna", "what i need", "what i expect", "what we want", "what i'd like", "what i would like", "what they want", "what he wants", "what the boss wants", "how i want", "how we want"),
        r"(?:^|(?<=[.?!] ))(?P<x>[^.?!]*[.!:,-]+ (?:that's|that is|this is|now that's) (?:the kind of thing |all |just |exactly )?(?:what|all|how) (?:i|we|they|he|the boss)(?:'d| would)? ?(?:want|wanna|wants|need|needs|expect|like|love) (?:to )?(?:hear|see|be hearing|be seeing|read|get|(?:them|it|these|those|everything|every one|all of them)(?: all)? (?:done|to be|to look))(?: (?:from|out of|off|by|for|of|tomorrow|monday|next|every|when)[^.?!]*)[.!]?)",
        (("x", ""),),
    ),
    Plainer((" want to hear ", " want to see ", " wanna hear ", " wanna see ", " expect to hear ", " expect to see "), r"(?:^|(?<=[.?!] ))(?P<x>(?:so |and |okay,? )*(?:i|we) (?:want to|wanna|expect to) (?:hear|see) [^.?!]*(?: from| out of) (?:you|everybody|everyone|all of you|y'all|the crew|these guys)(?: guys| all)?(?: (?:tomorrow|monday|tuesday|wednesday|thursday|friday|today|tonight|every day|next week|from now on))?(?:[.!]|$))", (("x", ""),)),
    Plainer((" want to see ", " wanna see ", " wants to see ", " like to see "), rf"(?:^|(?<=[.?!] ))(?P<x>(?:so |and |okay,? )*(?:i|we|he|they|the (?:boss|lead|foreman|inspector|super))(?:'d)? (?:want to|wanna|wants to|like to) see (?:{_PIECE}|it|them|this|that|these|this one|that one|all of them|everything)(?: all)? (?:taped|stapled|rubbed|wiped|hung|done|finished|closed|sealed|trimmed)(?: down| up)?(?:(?: and|,) (?:taped|stapled|rubbed|wiped|hung|done)(?: down| up)?)* (?:by )?(?:tomorrow|monday|tuesday|wednesday|thursday|friday|tonight|next week|the end of the (?:day|week)|lunch|quitting time|first thing)(?: morning)?)(?=[.!,;]|$)", (("x", ""),)),
    # --- "You want vanes in the sixteen by sixteen or what?"
    Plainer((" want ", " need ", " like "), rf"(?:^|(?<=[.!?] ))(?:so |hey |and |okay,? |boss,? )*(?:do )?(?:you|they|you guys|y'all)(?:'d| would)? (?:want|need|like)(?: \w+){{1,3}}(?P<x> (?:in|on|for|to) (?:the|that|this) {_V} (?:by|x) {_V}(?: (?:one|elbow|straight|tee|piece))?)(?=(?: too| as well)?(?:,? or (?:what|no|not|nah|leave [a-z]+ out))?\?)", (("x", ""),)),
    # --- what a thing costs, and how many are left
    Plainer(
        (" bucks", " dollars", " cents"),
        rf"(?:^|(?<=[.!?;] ))(?P<x>(?:and |so |hey |oh |by the way,? |the |these |those |them |turning )*(?:{_STUFF}|tabs|board|rolls?|boxes)(?: of \w+)? (?:runs?|ran|costs?|go(?:es)? for|went for|are|is|were|was) (?:about |like |us |around |now |up to )*{_V}(?: and a half)? (?:bucks|dollars|cents)(?: (?:apiece|each|a (?:roll|box|set|piece|pop|bucket|sheet|case)|now|per \w+))*(?:,?(?: and| but| so)? (?:we've got|we have|we got|i've got|i have|i got|there's|there are|we're down to)(?: (?:only|about|like|just))* \w+(?: \w+)? left(?: (?:in|on) the \w+)?)?[.;,!] )",
        (("x", ""),),
    ),
    Plainer((" a set in ", " one set in ", " a full set in "), rf"(?<![\w'])(?:put|stuck|set|slid|installed|got|threw) (?:a|one|a full|the|that) (?P<x>set) in (?={_PIECE})", (("x", "set of vanes"),), beside=("vanes",), unless="hangers? (?:set|pair)|set of (?!vanes)"),
    # --- what the drawing calls for, and is in
    Plainer(
        ("calls for ", "asks for ", "wants ", "shows ", "called for "),
        rf"(?:^|(?<=[.!?] ))(?P<x>(?:the |so |my )*(?:drawings?|prints?|plans?|sheet|spec|specs|sketch) (?:calls?|called|asks?|wants?|shows?)(?: for)? (?:turning )?vanes (?:on|in|for) )(?:the )?{KIND} (?:number )?{NUMBER}(?:,? run {NUMBER})?,?(?P<y> (?:and |so |yeah,? )*(?:they're|they are|they went|those are|those went)) (?=in(?: there)?{_END})",
        (("x", ""), ("y", " vanes are")),
    ),
    # --- "straight, 18 by 12, came out at forty-six inches"
    Plainer((" came out at ", " came out to ", " came out ", " comes out at ", " ended up ", " measured out ", " comes to ", " came to "), rf"(?:^|(?<=[.!?] ))(?:okay,? |so |and |a )*straight(?:,? (?:number )?{NUMBER})?(?:,? run {NUMBER})?, {_V} (?:by|x) {_V}[,;.]? (?:and |it )*(?P<x>(?:came|comes|ended|ends|measured|measures) (?:out|up)?(?: ?(?:at|to))? )(?:about |right at |exactly )?{_V}(?: inch(?:es)?)?(?P<y>)(?=[.,;]|$)", (("x", ""), ("y", " long"))),
    # --- "Thirteen's up. Run two."
    Plainer(("'s up", "'s hung"), rf"^(?:okay,? |so |alright,? )*{NUMBER}(?P<x>'s) (?=(?:up|hung)(?:[.,;]|$))", (("x", " is"),)),
    # --- "offset six inches over thirty-six, not eight like on the print"
    Plainer(
        (" not ",),
        rf"(?<![\w'])(?:over|in|of|at|offset|long|wide|every|by) {_V}(?: inch(?:es)?)?(?: (?:long|wide|over))?(?P<x>,? (?:and )?not {_V}(?: inch(?:es)?)? (?:like|as|the way|what)(?: (?:it|they|he|that))?(?: (?:says?|shows?|was|is|has|have|it))*(?: (?:on|in))? (?:the|my|their|his) (?:print|drawings?|plans?|sheet|tag|sketch|spec|ticket|paper|list)(?: (?:says?|shows?|has(?: it)?|calls for|said|wants))?){_END}",
        (("x", ""),),
    ),
    # --- "Six-inch tabs every twelve, didn't have enough tape for longer"
    Plainer(
        (" enough ", "ran short", "low on tape"),
        rf"(?<=tabs )[^.?!]*?(?P<x>(?:,|;|\.)? (?:(?:cause|because|since|and|but|as|i|we|there) )*(?:didn't have|did not have|don't have|hadn't|haven't got|wasn't|there wasn't|not|never had) enough (?:tape|foil)(?: left| on me)? (?:for (?:any |the )?(?:longer|bigger|more|eights?|eight[- ]inch|twelves?|better|real|full)(?: (?:ones|tabs|than that))?|to (?:make|cut|go|do) (?:them |it )?(?:any )?(?:longer|bigger|closer)(?: (?:ones|tabs))?)){_END}",
        (("x", ""),),
    ),
    # --- "He goes, you taped that with duct tape? I go no, that's 181A-P."
    Plainer(
        (" i go", " i say", " i said", " i told ", " i'm like", " i tell "),
        rf"(?:^|(?<=[.!?;] ))(?P<x>(?:so |and |then )*{_MAN} (?:goes|says|said|asks|asked|go|was like|is like|comes up and goes|yells)(?: (?:to )?me)?,? (?:did )?you (?:tape|taped|close|closed|seal|sealed|use|used|do|did|put)(?: (?:that|it|this|that one|this one))?(?: up| on)?(?: (?:with|using))? (?:the |that |some )?(?:[a-z]+ )?(?:tape|mastic|stuff)(?: (?:on|with) (?:that|it|this))?\? (?:and |so )?i(?:'m like| go| say| said| told him| tell him| goes),? (?:no|nope|nah)(?: (?:man|boss|sir|dude|way))?[,.;] )(?=(?:that's|it's|that is|it is|this is|i used|i put|we used|all|that was|it was)(?! (?:not|never|no|nothing|none)\b))",
        (("x", ""),),
    ),
    Plainer(
        (" i go ", " i say ", " i said ", " i told ", " i'm like ", " i tell "),
        rf"(?:^|(?<=[.!?;] ))(?P<x>(?:so |and |then )*{_MAN} (?:goes|says|said|asks|asked|go|was like|is like|yells)(?: (?:to )?me)?,? (?:did )?you (?:tape|taped|close|closed|seal|sealed|do|did)(?: (?:that|it|this|that one|this one))?(?: up)? (?:with|using) (?P<t>(?:the |that |some )?(?:[a-z]+ )?(?:tape|mastic))\? (?:and |so )?i(?:'m like| go| say| said| told him| tell him),? {_YES})(?=[.,;!]|$)",
        (("x", r"i taped it with \g<t>"),),
    ),
    # --- how wide the harm was, and the tape that mended it
    Plainer(
        (" tape ",),
        rf"(?<![\w']){_MENDED} (?:a|the|that|one|this|up a|up the)(?: (?:little|small|bad|big))? {_HARM} (?:on|in) {_PIECE}(?:,? run {NUMBER})?(?P<x>[.;,] (?:(?:it|that|hole|tear)(?:'s| was| is) |was |is |about |like |maybe |only |just )*)(?:an? |about )*(?:half(?: an)?|an(?= inch)|{_V})(?:[ -]inch(?:es)?)?(?: (?:wide|long|across))?(?P<y>[.,;] {_TAPE_ON}){_END}",
        (("x", ", "), ("y", ", put tape over it")),
    ),
    Plainer(
        (" mastic ",),
        rf"(?<![\w']){_MENDED} (?:a|the|that|one|this|up a|up the)(?: (?:little|small|bad|big))? {_HARM} (?:on|in) {_PIECE}(?:,? run {NUMBER})?(?:(?P<x>[.;,] (?:(?:it|that|hole|tear)(?:'s| was| is) |was |is |about |like |maybe |only |just )*)(?:an? |about )*(?:half(?: an)?|an(?= inch)|{_V})(?:[ -]inch(?:es)?)?(?: (?:wide|long|across))?)?(?P<y>[.,;] {_MASTIC_ON}){_END}",
        (("x", ", "), ("y", ", put mastic over it")),
    ),
    Plainer((" tape ",), rf"(?<![\w']){_MENDED} (?:a|the|that|one|this|up a|up the)(?: (?:little|small|bad|big))? {_HARM} (?:on|in) {_PIECE}(?:,? run {NUMBER})?(?P<y>[.,;] {_TAPE_ON}){_END}", (("y", ", put tape over it"),)),
)

ENGLISH_SPOKEN_TO = (
    # --- "okay so boss straight 44 run 2"
    Plainer(("boss", "chief", "bro", "dude", "buddy"), rf"^(?:(?:okay|ok|so|hey|alright|all right|yo|well|yeah|um|uh)[, ]+)+(?P<x>(?:boss|chief|bro|dude|buddy)[, ]+)(?={KIND},? (?:number )?\d|{KIND},? (?:number )?{NUMBER}(?![\w'/-]| by ))", (("x", ""),)),
)
