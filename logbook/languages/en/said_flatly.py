"""English said with a shrug, and the plain words that it is read as: "the rubbing just plain didn't happen", "the rip can wait till tomorrow", "was gonna mend it, ended up cutting the panel out".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER, PIECE
from logbook.languages.en.measured import _M
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_ENDS = r"(?=[.,;!]|$)"
_ACT = r"(?:the |its |my )?(?:rub(?:bing)?(?:[ -]?down)?|burnishing|ironing|squeegee(?:ing)?|taping|tape(?: job)?|stapling|trimming|wiping(?: down)?|wipe(?:[ -]down)?|preheating|warming)"
_HARM = r"(?:tear|rip|hole|puncture|gash|slit|slice|gouge|dent|split|nick)s?"
_PART = r"(?:the |that |its )?(?:[\w-]+ )?(?:foil|facing|jacket|skin|board|throat|heel|cheek|top|bottom|back|front|side|corner|seam|end|edge|flap)"
_HARM_THERE = rf"(?:the|that|this|a|one) (?:(?:little|small|big|long) )?{_HARM}(?: (?:in|on|at|along|down) (?:{_PART}|{PIECE})(?: (?:of|on|in) {PIECE})?)?"
_DAY = r"(?:tomorrow|tonight|later|next week|another day|(?:the|in the) morning|this afternoon|monday|tuesday|wednesday|thursday|friday|saturday)"
_WAITS = rf"(?:can|will have to|'ll have to|has to|have to|is going to have to|is gonna have to|'s gonna have to|will|'ll|gets to|get to|might have to|may have to|is going to|is gonna|'s gonna)(?: just)? (?:wait|keep)(?: (?:(?:till|until|for|to)(?! i )[^.,;?!]{{1,30}}|a (?:day|while|bit)|{_DAY}))?"
_WAITS_STILL = r"(?=[.,;!]|$)(?!, nobody)(?![^?!]{0,60}(?<![\w'])(?:but|so|then|and) (?:i |we )?(?:\w+ )?(?:patched|mended|fixed|repaired)(?! it yet))"
_NOT = r"(?:didn't|did not|never|hasn't|has not|hadn't|wasn't|isn't|ain't|weren't)"
_NOT_THE_WALL = r"(?:against|by|at|next to|up against|facing|behind|toward|towards|near|along|tight to) (?:the|that) \w+(?: \w+)?"
_PANEL = r"(?:panel|board|side|section|sheet|piece of board)"
_CUT_OUT = rf"(?:(?:cutting|cut|tearing|tore|taking|took|pulling|pulled|ripping|ripped) (?:the|that|its) (?:(?:whole|entire|bad|damn|torn) )*{_PANEL} (?:right )?out(?: and (?:putting|put|setting|set|gluing|glued|fitting|fit|stuck|sticking)(?: in)? (?:a|an?other) (?:new|fresh|good|whole)(?: (?:one|{_PANEL}))?(?: in)?)?|(?:replacing|replaced|swapping(?: out)?|swapped(?: out)?|changing(?: out)?|changed(?: out)?) (?:the|that) (?:(?:whole|entire|bad|torn) )*{_PANEL}(?: out)?)"
_CARRY = r"(?:carry|take|haul|move|load|ship|send|lift|touch|grab|pick up|walk off with|run off with)"
_CARD = r"(?:card|tag|ticket|label|sticker|traveler|cut sheet|job card|work card)"
_BOSS = r"(?:the |my )?(?:boss|foreman|lead|super|gc|office|engineer|inspector|old man)"


ENGLISH_SAID_FLATLY = (
    # --- plainly so, of what did not happen
    Plainer(("plain ", "flat", "straight up", "downright", "outright", "sort of", "kind of", "kinda"), rf"{_ACT}(?: (?:on|for) {PIECE})?,? (?:it )?(?P<x>(?:just |really )*(?:plain old|plain flat|plain|flat[- ]out|flat|straight up|downright|outright|sort of|kind of|kinda) )(?={_NOT}(?![\w']))", (("x", ""),)),
    Plainer((", that ", ", it ", ", that's", ", it's"), rf"(?<!no )(?<!any ){_ACT}(?: (?:on|for) {PIECE})?(?P<x>, (?:that|it)(?: just| really)*)(?= (?:isn't|ain't|is not|didn't|did not|never|wasn't|won't|hasn't)(?: \w+)? (?:happen|getting|get|got|gonna))", (("x", ""),)),
    Plainer((" what i ", " what we "), r"(?P<x>(?P<a>rubbed(?: down)?|taped|stapled|trimmed|wiped)(?:'s| is| was) (?:just )?what (?:i|we) (?:didn't|did not|never|haven't|have not)(?: quite)?(?: do| did| done| get to| got to| get| got)*)(?=[.,;!]|$)", (("x", r"not \g<a>"),)),
    Plainer((" what i ", " what we "), rf"{_ACT}(?P<x>(?:'s| is| was) (?:just )?what (?:i|we) (?:didn't|did not|never|haven't|have not)(?: quite)?(?: do| did| done| get to| got to| get| got)*)(?=[.,;!]|$)", (("x", " didn't happen"),)),
    Plainer(("got away from", "got by me", "got past me", "slipped by me", "slipped past me", "slipped my mind"), rf"{_ACT}(?: (?:on|for) {PIECE})?(?P<x> (?:just |kind of |sort of )?(?:got away from (?:me|us)|got (?:by|past) (?:me|us)|slipped (?:by|past) (?:me|us)|slipped my mind))(?=[.,;!]|$)", (("x", " didn't happen"),)),
    # --- a harm that waits is not mended
    Plainer((" wait", " keep"), rf"{_HARM_THERE}(?P<x>(?: |(?=')){_WAITS}){_WAITS_STILL}", (("x", " still needs to be patched"),)),
    Plainer((" wait", " keep"), rf"{_HARM_THERE}(?:(?:,? (?:and|but) |[,.;] )(?:it|that|that one)|(?:,? (?:that|which)))(?P<x>(?: |(?=')){_WAITS}){_WAITS_STILL}", (("x", " still needs to be patched"),)),
    Plainer(("problem", " job", "for tomorrow", "for monday", "for later"), rf"{_HARM_THERE}(?P<x>(?:'s| is)(?: a)?(?: just)? (?:{_DAY}'s (?:problem|job|work|business)|(?:(?:a|my) )?(?:job |problem |work )?for {_DAY}|(?:somebody|someone) else's (?:problem|job))){_ENDS}", (("x", " still needs to be patched"),)),
    Plainer(("leave ", "leaving ", "left "), rf"(?:(?<=[.,;] )|^)(?P<x>(?:(?:i'm|i'll|we're|we'll|i am|i|we) )?(?:leave|leaving|left) )(?={_HARM_THERE} for)(?:the|that|this|a|one) [^.,;?!]{{3,45}}?(?P<y> for {_DAY})(?= |[.,;!]|$)", (("x", ""), ("y", " still needs to be patched"))),
    Plainer(("get to the", "see to the", "deal with the", "get to that", "see to that", "deal with that"), rf"(?:(?<=[.,;] )|^)(?P<x>(?:i'll|we'll|i will|we will|i'm gonna|i'm going to) (?:get to|see to|deal with) )(?={_HARM_THERE} {_DAY})(?:the|that|this|a|one) [^.,;?!]{{3,45}}?(?P<y> {_DAY}(?: morning)?){_ENDS}", (("x", ""), ("y", " still needs to be patched"))),
    Plainer(("leaving", "letting"), rf"{_HARM_THERE}(?P<x>,? (?:i'm|we're|i am|we are) (?:just )?(?:leaving|letting) (?:it |that )?(?:be|alone|go|as is|for now)){_ENDS}", (("x", " isn't patched"),)),
    # --- meant to mend it, and put in a new panel
    Plainer(
        (" panel", " board", " side", " section", " sheet"),
        rf"(?:(?<=[.,;] )|^)(?P<x>(?:(?:i|we) )?(?:(?:was|were|'d been) (?:gonna|going to|about to|fixing to|set to)|meant to|planned to|wanted to|started to|thought (?:i|we)'d|figured (?:i|we)'d) (?:just )?(?:mend|patch|fix|tape(?: up| over)?|repair|cover) ){_HARM_THERE}(?P<y>(?: with (?:(?:some|a bit of|a piece of) )?(?:tape|mastic|fabric|a patch))?(?:[,;.]? (?:but|and|so|then))*[,;.]? (?:{_I} )?(?:instead )?(?:just )?(?:(?:ended up|wound up|finished up|finally|went and|went ahead and)(?: just| by)* )?{_CUT_OUT})(?![\w'])",
        (("x", ""), ("y", ", replaced the panel")),
        unless=r"(?:haven't|didn't|never|couldn't|will|gonna|going to) (?:\w+ )?(?:cut|replace|swap|change)",
    ),
    Plainer(("with tape", "with some tape", "with mastic"), rf"(?:was|were|meant|planned|wanted)(?: (?:gonna|going to|about to|fixing to|to))? (?P<v>mend|patch|fix|repair) {_HARM_THERE}(?P<x> with (?:some )?(?:tape|mastic)){_ENDS}", (("v", "patch"), ("x", ""))),
    # --- the legs the wrong way: in
    Plainer(("wrong way", "wrong direction"), r"(?<!n't )(?<!not )(?<!never )(?:clinched|clenched|crimped|turned|folded|bent|pointing|facing|legs?|staples)(?: (?:all|just|over|are|go|going))* (?P<x>(?:in )?the wrong (?:way|direction)(?: (?:around|round))?[,:;-]* (?:and )?(?:they're |they go |they point |it's |that is |that's |meaning )?)(?=(?:in|inward|inwards|inside|toward|towards|to the inside|out|outward|outwards)(?![\w']))", (("x", ""),), beside=("staple", "clinch", "clench", "leg")),
    Plainer(("wrong way", "wrong direction"), r"(?<!n't )(?<!not )(?<!never )(?:clinched|clenched|crimped|turned|folded|bent|pointing|facing|legs?|staples)(?: (?:all|just|over|are|go|going))* (?P<x>(?:in )?the wrong (?:way|direction),? into the (?:duct|air|airstream|air stream|inside))(?![\w'])", (("x", "inward"),), beside=("staple", "clinch", "clench", "leg")),
    Plainer(("wrong way", "wrong direction"), r"(?P<x>(?:aren't|are not|weren't|were not|ain't) (?=(?:clinched|clenched|turned|folded|bent)))(?:clinched|clenched|turned|folded|bent)(?P<y> the wrong (?:way|direction)[,.;] (?:they're |they are |they go |they all go )?)(?=(?:out|outward|outwards)(?![\w']))", (("x", "are "), ("y", " ")), beside=("staple", "clinch", "clench", "leg")),
    # --- what nobody is to carry off is named
    Plainer((" yet",), rf"(?:(?<=[.!;] )|(?<=, )|^)(?P<x>(?:(?:please|hey|listen|so|and),? )*(?:don't(?: you(?: guys)?| anybody| anyone| nobody| (?:let|have) (?:anybody|anyone|them|him|the \w+|nobody))?|do not|nobody(?: better)?|no one(?: better)?|let nobody) {_CARRY} )(?:number )?(?!(?:one|two|three|four|[1-4]) ){NUMBER}(?P<y>(?: (?:out of (?:here|there|the shop)|out the door|out|up|away|off|over|down|anywhere|to the \w+|on the \w+))* (?:just )?yet)(?=[.,;:!]| -|$| because)", (("x", "number "), ("y", ""))),
    # --- a card is made out for one piece, not for an angle
    Plainer(("card", "tag", "ticket", "label", "sticker", "traveler", "cut sheet"), rf"(?<![\w']){_CARD} (?:for|on|of|from) (?:the )?(?:elbow|ell) (?P<x>)(?=(?:45|90|forty-five|ninety|forty five)(?! ?(?:degrees?|deg|°)|[\w'-]| (?:by|x) {NUMBER}))", (("x", "number "),)),
    # --- how far open it stands
    Plainer(("open", "gapped", "gaping"), rf"(?<![\w'/-]){_M} (?P<x>(?:is|was) (?:what's|what is|what i see|what you see|what you can see|what i'm seeing|what i've got|what i got|what i measured?|how much is|how much it's|the amount)(?: (?:still|left|showing|standing|standing there|of it))* (?:open|gapped|gaping))(?= (?:at|in|on|along) (?:the|that|one|my|its) (?:\w+ )?joint)", (("x", "is the gap"),)),
    Plainer(("showing open", "standing open", "sitting open", "still open at", "hanging open"), rf"there(?:'s| is) (?P<x>(?:still |about |maybe )*(?P<v>{_M})(?: of it)? (?:showing|standing|sitting|hanging|still|left) open)(?= (?:at|in|on|along) (?:the|that|one|my|its) (?:\w+ )?joint)", (("x", r"a \g<v> gap"),)),
    # --- the air that goes through it
    Plainer(("degree",), rf"(?P<x>they(?:'ve| have|'re| are|'ll be)?(?: (?:got|run|ran|running|have|put|putting|send|sending|blow|blowing|move|moving))(?: (?:about|maybe|like|around|something like))* )(?=[\w -]{{2,50}}? degrees?(?: (?:hot|of))* air (?:(?:going|running|coming|moving|blowing|flowing|passing) )?(?:through|in|down) (?:the )?(?:{KIND}|number|it\b|this))", (("x", "they're pushing "),)),
    # --- never did
    Plainer(("never did trim",), r"(?P<x>never did trim)(?![\w'])", (("x", "never trimmed"),)),
    # --- every side but one
    Plainer((" but the ", " except the ", " except for the ", " besides the ", " save the ", " other than the "), rf"(?:every|each) side (?:but|except(?: for)?|besides|save|other than) (?P<x>the (?:one|side|part|face)(?: (?:that's|that is|that sits|that goes))? (?:right |up )?{_NOT_THE_WALL})(?=,? (?:got|gets|has|is|was|had|has been|took)\b)", (("x", "the back"),)),
    Plainer((" but the ", " except the ", " except for the ", " besides the ", " save the ", " other than the "), rf"all (?:of )?(?:the |its |four )*sides (?:but|except(?: for)?|besides|save|other than) (?P<x>the (?:one|side|part|face)(?: (?:that's|that is|that sits|that goes))? (?:right |up )?{_NOT_THE_WALL})(?=,? (?:got|get|have|are|were|had|have been|took)\b)", (("x", "the back"),)),
    # --- no two staples farther apart than that
    Plainer(
        ("more than", "over ", "farther", "further"),
        rf"(?P<x>(?:not one|not a single|not a|no two|no|not any two) (?=staples?\b))staples?(?: (?:on|in|along) {PIECE})?(?P<y> (?:(?:is|are|was|were|sits?|lands?)(?: any)? )?(?:more|farther|further|over)(?: than)? ){_M}(?P<z> (?:(?:away |off )?from (?:the|its|another) (?:next(?: (?:one|staple))?|neighbou?r|one (?:before|beside|next to) it|staple)|from another|apart))(?![\w'])",
        (("x", ""), ("y", " are "), ("z", " apart")),
    ),
    # --- what is wanted is not what was had
    Plainer((" board",), rf"(?:(?<=[.!;] )|^)(?P<x>{_BOSS} (?:wanted|asked for|called for|ordered|drew|figured on) )(?:number )?{NUMBER}(?P<y> (?:in|out of|from|made of) {_M}(?: |-)?board(?:[.,;]| and| but) (?:(?:well|but|and|so|anyway),? )*(?:it's|it is|it got|i used|i made it (?:out of|in|from)|what (?:it|he)(?:'s| is) (?:got|getting) is) )(?={_M}(?: board)?[.,;])", (("x", "number "), ("y", ", the board is "))),
    Plainer((" board",), rf"(?:(?<=[.!;] )|^)(?P<x>{_BOSS} (?:wanted|asked for|called for|ordered|drew|figured on) )(?:the )?{KIND} (?:number )?{NUMBER}(?P<y> (?:in|out of|from|made of) {_M}(?: |-)?board(?:[.,;]| and| but) (?:(?:well|but|and|so|anyway),? )*(?:it's|it is|it got|i used|i made it (?:out of|in|from)|what (?:it|he)(?:'s| is) (?:got|getting) is) )(?={_M}(?: board)?[.,;])", (("x", ""), ("y", ", the board is "))),
    # --- told another to, and did it himself
    *(
        Plainer(
            (f"to {verb} ",),
            rf"(?:(?<=[.!;] )|^)(?P<x>(?:i )?(?:told|asked|had told|got|wanted) (?:[a-z]+|the \w+) to {verb} (?:the )?){piece}(?: (?:down|off|up))?(?P<z>(?:,| and| but) (?:[^.?!]{{0,70}}?(?<![\w']))?(?:(?:so|and|but|then) )*i (?:just |finally )*(?:ended up doing|wound up doing|did|had to do|went and did) it (?:myself|on my own))(?=[.,;!]|$)",
            (("x", f"I {done} {name}"), ("z", "")),
            beside=("myself", "on my own"),
        )
        for piece, name in ((rf"(?:number )?{NUMBER}", "number "), (rf"{KIND} (?:number )?{NUMBER}", ""))
        for verb, done in (("rub", "rubbed"), ("tape", "taped"), ("staple", "stapled"), ("trim", "trimmed"), ("wipe", "wiped"))
    ),
    # --- of two, one is his
    Plainer(("mine is", "mine's", "mine has", "mine got"), rf"{NUMBER} is (?:my (?:{KIND}|one)|mine)(?P<x>(?:,? (?:and|but)|[.,;]) (?:number |piece )?{NUMBER} is (?!mine|my )[a-z]+(?:'s)?(?: (?:{KIND}|one))?[.,;]+ (?:and |so |but )*mine)(?= (?:is|has|got|was)\b|'s)", (("x", ", it"),)),
    # --- a number taken back for what else it numbers
    Plainer((" number", " page", " room", " truck", " bay"), rf"(?<![\w'/-])(?P<x>(?P<n>{NUMBER})[,.]? (?:(?:no|wait|sorry|nope|hold on|scratch that|hang on)[,.]? )+(?:piece )?(?:that's|that was|(?P=n)(?: is| was|'s)) (?:the|my|our|a) (?:room|page|truck|floor|street|house|phone|door|bay|gauge|ticket|job|unit|locker|suite|apartment)(?: number)?[,.;] (?:(?:it's|it is|it was|make that|so|i mean|the (?:real )?number is) )*(?:(?:at|every) )?)(?={NUMBER}(?![\w'-]))", (("x", ""),)),
    Plainer((" cfm",), rf"(?<![\w'/-])(?P<x>{NUMBER}[,.]? (?:(?:no|wait|sorry|nope|hold on|scratch that|hang on|i mean|make that)[,.]? )+(?:it's |it was )?)(?={NUMBER} cfm)", (("x", ""),)),
    # --- what another crew is said to have done
    Plainer(("sounds like", "seems like", "looks like", "sounded like", "looked like", "seemed like"), r"(?P<x>(?:it )?(?:sounds|seems|looks|sounded|looked|seemed)(?: to me)? like )(?=(?:the|that) (?:night|day|other|morning|evening|weekend|second|graveyard|swing|late|early) (?:crew|shift|guys|gang|boys|fellas|bunch)(?![\w']))", (("x", ""),)),
    # --- a transition that is not so, but so
    Plainer((" down to ",), rf"(?P<x>(?:isn't|is not|wasn't|ain't) {_M} down to {_M}[,;.]* (?:but |rather )*(?:it's |it is |it goes |that's )?)(?={_M} down to )", (("x", "is "),)),
    Plainer((" both ends",), rf"(?<![\w'/-])(?P<a>{_M})(?P<x> down to )(?P<b>{_M})(?P<y>,? (?:and )?)(?P<d>{_M})(?P<z> (?:deep|tall|high)(?: |-)?(?:at|on|in) both ends)(?![\w'])", (("x", r" by \g<d> to "), ("y", " by "), ("z", ""))),
    Plainer(("hold on", "hang on"), r"(?:hold|hang) on(?P<x>(?:,? (?:hold|hang) on)+)(?=[.,;!])", (("x", ""),)),
    # --- he measured its neighbour
    Plainer((" long",), rf"(?:(?<=[.!;] )|^)(?P<x>(?:(?:i|we) )?(?:told you|said|had you put|gave you) )(?:the )?{KIND} {NUMBER}(?P<y> (?:was|is|as|at) {_M} long[.,;] (?:(?:well|no|but|sorry|turns out),? )*(?:that|it|the {_M})(?: was|'s| is) (?:its neighbor|the (?:neighbor|one next to it|one beside it|wrong one|other one|piece next to it)|another (?:one|piece)|a different (?:one|piece))(?: [^.,;]{{1,40}})?[.,;] (?:(?:piece |number )?{NUMBER}|it|that one|this one)(?: itself)?(?: runs| is|'s| measures| goes| comes to) )(?P<m>{_M})(?P<e>(?: long)?)(?=[.,;!]|$)", (("x", "correction, "), ("y", " is "), ("e", " long"))),
    # --- what the crew needs from the store, where no piece is spoken of
    Plainer(
        ("need tape", "need staples", "need some", "need mastic", "and staples", "and tape"),
        r"(?<![\w'])(?:i|we)(?: also| still)? need (?:(?!tape|staples|mastic)[\w' -]{2,20} and )?(?P<x>(?:some )?)(?=(?:tape|staples|mastic)(?:[.,;!]|$| and))",
        (("x", "more "),),
        beside=("i need ", "we need "),
        unless=rf"(?<![\w'])(?:{KIND}|number|piece|fitting|it|this one|that one|this|seams?|joints?|sides?|corners?|flap|ends?|top|bottom|back)(?![\w'])|(?<![\w']){NUMBER}(?:[.,;:]| is| isn't| has| got|'s)|^(?!.*(?<![\w'])need(?: [\w'-]+)+[,;.]? (?:and )?(?:i |we )(?:also )?need )",
    ),
    # --- he cannot say that he did not: he did
    Plainer(
        (" say ", " claim ", " swear", "tell you", " pretend"),
        rf"(?P<x>{_I} (?:can't|cannot|couldn't|won't|can not|wouldn't) (?:say|claim|swear|tell you|pretend)(?: that)? {_I} (?:didn't|did not|never) )(?:(?P<a>leave)|(?P<b>skip)|(?P<c>forget)|(?P<d>miss)|(?P<e>tear)|(?P<f>rip)|(?P<g>poke)|(?P<h>crush)|(?P<k>dent)|(?P<l>use))(?![\w'])",
        (("x", "i "), ("a", "left"), ("b", "skipped"), ("c", "forgot"), ("d", "missed"), ("e", "tore"), ("f", "ripped"), ("g", "poked"), ("h", "crushed"), ("k", "dented"), ("l", "used")),
    ),
)
