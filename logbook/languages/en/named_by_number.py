"""English of a piece that is named by its bare number before its kind: "today's piece is twenty-three, straight", "ninety-five run two, tee"."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.names import FIRST_NAMES
from logbook.languages.en.numbers import SAID_COUNT
from logbook.languages.plainer import Plainer

_NUMBER = rf"(?:\d{{1,3}}|(?:one|two|three|four|five) hundred(?: and)? {SAID_COUNT}|(?:one|two|three|four|five) {SAID_COUNT}|{SAID_COUNT})"
_A_KIND = rf"(?:an? |the |my |it's an? |that's an? )?{KIND}(?![\w'])(?! (?:across|down|up|through|over|in|out|on|back|to|as))"
_WHAT = r"(?:piece|fitting|mine|ours|(?:what|the one|all) (?:i|we)(?: actually| really| did)? (?:built|made|cut|did|have|got|put together|finished))"
_ON_RUN = r"(?: (?:on|of|for|in) (?:run )?(?:\d+|\w+)| here| today| now)?"
_NAMES = "|".join(sorted(FIRST_NAMES))
_MINDS = r"(?:i|we) (?:don't|do not|didn't) (?:like|love|trust|care for|feel good about)|(?:worries|bothers|bugs|concerns|troubles) me|needs (?:work|looking at|another look|fixing)|i'm (?:worried about|not (?:happy|proud|sure) (?:with|of|about))|(?:went|is|was) (?:wrong|bad|off|short)|i (?:messed up|botched|got wrong)"
_TROUBLE = r"the (?:(?:real|only|big|one|main) )?(?:problem|trouble|issue|headache|bad news|sore spot|stinker|ugly one|weak one)"
_BEGINS = r"(?:^|(?<=[.!?] ))(?:(?:okay|ok|so|um|uh|well|and|alright|all right|now|next)[, ]+)*"

ENGLISH_NAMED_BY_NUMBER = (
    # --- who speaks, before the run he is on: "Ray here, run five, that's the return"
    Plainer((" here, run", " here on run", " here, on run", " again, run", " here run"), rf"(?:^|(?<=[.!?] ))(?:(?:okay|ok|so|well|alright|all right|hey|hi|yeah)[, ]+)*(?P<x>(?:this is |it's )?(?:{_NAMES})(?: here| again),?) (?=(?:on )?run (?:\d+|\w+))", (("x", ""),)),
    # --- what befell it: "I tore the facing on sixteen getting it up the ladder"
    Plainer(
        ("facing on ", "foil on ", "corner on ", "facing of ", "corner of ", "side of ", "board on "),
        rf"(?:tore|ripped|punctured|dented|crushed|gouged|poked a hole in|put a hole in|tear in|rip in|hole in) (?:the |its )?(?:facing|foil|corner|side|board) (?:on|of) (?P<x>)(?:\d{{2,3}}|\w+teen|twenty[- ]\w+|(?:thir|for|fif|six|seven|eigh|nine)ty(?:[- ]\w+)?|eleven|twelve)(?=[.,;]|$| (?:getting|with|when|while|trying|carrying|on the way|bringing|hauling|dragging|taking|because)(?![\w']))",
        (("x", "number "),),
    ),
    # --- the number ahead of its kind where no sign stands between: "96 three piece ninety", "okay 41 that's the forty five elbow"
    Plainer((" piece ninety", " piece elbow", " piece forty", " piece 90", " piece 45", "-piece ", " that's the ", " that's a ", " that is the ", " a ninety ", " a forty "), rf"(?:^|(?<=[.!?;] )|(?<= then )|(?<= next ))(?:(?:okay|ok|so|um|uh|well|and|alright|all right|now|next|then)[, ]+)*(?P<x>)(?:\d{{1,3}}|(?!(?:one|two|three|four) ){SAID_COUNT})(?P<y> (?=(?:three|two|four|3|2|4)[- ]piece)| (?:that's|that is) | )(?=(?:(?:the|a|an|my|our) )?(?:(?:three|two|four|3|2|4)[- ]piece (?:ninety|elbow|forty[- ]five|90|45)|(?:ninety|forty[- ]five|90|45) elbow)(?![\w'-]))", (("x", "number "), ("y", ", "))),
    Plainer((" that's the ninety", " that's the forty", " that's the 90", " that's the 45"), r"(?:^|(?<=[.!?;] ))(?:(?:okay|ok|so|um|uh|well|and|alright|all right|now|next)[, ]+)*(?P<x>)\d{1,3}(?P<y> that's the )(?:ninety|forty[- ]five|90|45)(?P<z>)(?= (?:\w+ by|stapled|taped|with|one inch|inch|it's|i)(?![\w'])|[.,;]|$)", (("x", "number "), ("y", ", a "), ("z", " elbow"))),
    # --- one piece and then another: what is told between is of the first
    Plainer(("after that i ", "after that we "), rf"(?<![\w'])(?P<x>and after that,? )(?=(?:i|we) (?:made|built|did|cut|closed up|put together|knocked out|finished|hung|taped|stapled) (?:up )?(?:the |an? )?{KIND} (?:number )?{_NUMBER}(?![\w']))", (("x", ". Then "),)),
    Plainer(("piece is ", "fitting is ", "mine is ", "mine on ", "ours is ", "piece today ", "built is ", "made is ", "cut is ", "did is ", "have is ", "got is ", "together is ", "finished is "), rf"{_WHAT}{_ON_RUN} is (?P<x>){_NUMBER},? (?={_A_KIND})", (("x", "number "),)),
    Plainer(("next, ", "next up", "up next"), rf"(?:^|(?<=[.!?;] ))(?:(?:okay|ok|so|and|alright|then),? )*(?P<x>(?:next(?: up)?|up next)[,:]? )(?=(?:the |an? )?{KIND} (?:number )?{_NUMBER}(?![\w'])(?![^.?!;]*(?:'ll|\b(?:will|gonna|going to|tomorrow|after|later|to (?:build|make|cut|do|tape|staple)|monday|then)\b)))", (("x", ""),)),
    Plainer(("what it is: ", "what it is, "), r"(?:^|(?<=[.!?;] ))(?P<x>what it is[:,] )", (("x", ""),)),
    Plainer((" run ",), rf"{_BEGINS}(?P<x>){_NUMBER},? (?=run (?:\d+|\w+),? {_A_KIND})", (("x", "number "),)),
    Plainer((" hung, run", " taped, run", " stapled, run", " done, run", " hung, tied", " done, tied"), rf"{_BEGINS}(?P<x>){_NUMBER} (?=(?:is |got )?(?:hung|taped|stapled|done),? (?:on )?(?:run|tied))", (("x", "number "),)),
    Plainer(("then ", "after that"), rf"(?:^|(?<=[.!?;] ))(?:(?:and|so|okay|ok|but),? )*(?:then|after that),? (?P<x>)(?={_NUMBER}(?:'s| is| was| got| has)(?: just)? (?:an? |another |the ){KIND}(?![\w']))", (("x", "number "),)),
    Plainer((" is a ninety", "'s a ninety", ", a ninety", " is a 90", " is a forty", "'s a forty", ", a forty", " is a 45", " was a ninety"), rf"(?<![\w'-])(?<!elbow )(?<!wye )(?<!bend )(?:number |piece |fitting )?{_NUMBER}(?: (?:on|of) run (?:\d+|\w+))?(?:,|'s| is| was|, it's|, that's)(?: just)? a (?:ninety|forty[- ]five|90|45)(?: degree)?(?P<x>)(?=[.,;]|$| (?:with|no|and|on|off|in|at|two|three)\b)", (("x", " elbow"),)),
    Plainer((" on ",), rf"(?:^|(?<=[.!?] ))(?P<x>(?:{_NAMES})(?: here| again)?,? on ){_NUMBER}(?P<y>,?) (?={_A_KIND}[.,;])", (("x", "number "), ("y", ","))),
    Plainer((" done",), rf"{_BEGINS}(?P<x>){_NUMBER}(?P<y>(?: is|'s)? (?:all )?done,?) (?={_A_KIND}(?:,| on)? run (?:\d+|\w+))", (("x", "number "), ("y", ","))),
    Plainer(("this here", "here's ", "here is "), rf"(?:^|(?<=[.!?] ))(?:(?:okay|ok|so|alright|and|now|yeah|um|uh),? )*(?:this here(?:'s| is)|here(?:'s| is)) (?P<x>){_NUMBER} (?=(?:on|off) run (?:\d+|\w+)|(?:it's|its|that's) (?:an? |the ){KIND})", (("x", "number "),)),
    Plainer((" the same",), rf"(?:and then|and|then),? (?P<x>){_NUMBER}(?='s the same| is the same)", (("x", "number "),)),
    # --- a second piece by what it was closed with: "93 with heat tape too, but two inch, straight"
    Plainer((" with ",), rf"{_BEGINS}(?P<x>){_NUMBER},?(?= (?:is |was |got |we did |i did )?with (?:the |a |some )?(?:(?:\d|[\w-]+ inch|[\w-]+ and a half inch|heat|hot|foil|pressure|gray|grey|cloth|duct|181a-?\w|wide|narrow)[\w -]{{0,24}}?)?(?:tape|mastic|181a-?\w)(?![\w'])[^?]* {KIND}(?![\w']))", (("x", "number "),)),
    Plainer((" tape too", " mastic too", " tape as well", " mastic as well"), r"with (?:the |a |some )?[\w -]{0,24}?(?:tape|mastic)(?P<x>,? (?:too|as well|also))(?=[.,;])", (("x", ""),)),
    Plainer((" but ",), r"(?:tape|181a-?[hp])(?: too| as well)?,? (?P<x>but (?:it's |only |just |that's )*)(?=(?:[\w-]+ and a half|[\w-]+|\d[\d./ -]*)[ -]inch(?: wide)?[.,;])", (("x", ""),)),
    # --- the piece that is not as it should be, told of behind: "what I don't like is 240. It's a straight, …"
    Plainer(("what ", "the "), rf"(?:^|(?<=[.!?] ))(?:(?:and|but|so|now|okay),? )*(?P<x>(?:what (?:{_MINDS})|{_TROUBLE}) is (?:number )?)(?={_NUMBER}[.,:;] (?:it's|it is|that's|{_A_KIND}))", (("x", "number "),)),
    # --- a second collar by its number and how wide it is; both of two that are up, each told of behind
    Plainer(("inch",), rf"(?<=[.!?;] )(?:(?:and|then|next) )?(?P<x>){_NUMBER}(?:,|'s| is| was|, that's| is also|, also)?(?= (?:also |a |an )?(?:\d+|{SAID_COUNT})[ -]inch(?:es)?(?: round)?[,.;])", (("x", "collar "),), beside=("collar", "spin-in", "spin in", "takeoff"), unless=rf"(?!collar){KIND} (?:number )?{_NUMBER}"),
    *(
        Plainer(("both ",), rf"(?:^|(?<=^ok )|(?<=^okay )|(?<=^so ))(?P<x>both (?:of the |the |my |of my )?(?P<k>{KIND})(?:e?s)? (?:are|were|got|went) {state}(?: (?:now|there|today))?[.:;] )(?:number )?(?P<a>){_NUMBER}(?P<c>), [^?]*?[.;] (?:(?:and|then|but) )?(?:number )?(?P<b>){_NUMBER}(?P<d>)(?=,)", (("x", ""), ("a", r"\g<k> "), ("b", r"\g<k> "), ("c", means), ("d", means)))
        for state, means in (("(?:up|hung|hung up|up in the air)", " is hung"), ("(?:in|in place)", ""), ("(?:done|made|built|finished|together|on the bench)", ""))
    ),
    # --- the one for which it did not last: "20 I taped, 21 I ran out of tape"
    Plainer(("out of tape", "out of staples", "out of mastic"), rf"(?:^|(?<=[.,;] )|(?<=and )|(?<=but ))(?:on )?(?:{KIND} )?{_NUMBER},? (?:i|we) (?:just |then )?ran out of (?:tape|staples|mastic)(?P<x>)(?=[.,;]|$)", (("x", " on"),)),
    # --- a set of hangers by its number
    Plainer(("hanger set", "hangers set", "strap set", "trapeze set"), rf"(?P<x>(?:hangers?|straps?|trapeze) set (?:number |no\.? |#)?)(?={_NUMBER}(?![\w'/-]|\.\d)(?! (?:feet|foot|ft|inches|inch|in|by|and a half|apart|on cent|o\.c|wide))[, ])", (("x", "hangers number "),)),
    # --- one told right after another: "started with seven, 18 by 12 straight, …, and then we did eight, same size, straight as well", "…, 102, same thing, …"
    Plainer(("started with", "started off with", "started out with", "began with", "kicked off with"), rf"(?<![\w'])(?P<x>(?:started(?: off| out)?|began|kicked off)(?: (?:today|this morning|the day))? with) (?={_NUMBER},)", (("x", "did"),)),
    Plainer((" as well", " too", " also", " again"), rf"(?:size|same|{_NUMBER})(?P<x>, (?:an? |another )?{KIND} (?:as well|too|also|again))(?=,)", (("x", ""),)),
    Plainer((", same ", ", the same "), rf"[\w']+(?P<x>,(?: and| then| and then)? ){_NUMBER}, (?:(?:the|pretty much the|exactly the|all the) )?same(?: (?:thing|deal|story|again|piece|kind))?(?=, )", (("x", ". "),)),
    # --- "we cut seventy two to length, twenty by twelve straight": the piece, and its kind behind its size
    Plainer((" cut ", " trimmed "), rf"(?<![\w'])(?:i|we) (?:cut|trimmed) (?P<x>)(?={_NUMBER} (?:to length|down|to fit|short)(?: today| this morning)?, (?:a |an )?(?:{SAID_COUNT} (?:by|x) {SAID_COUNT}|\d+ ?x ?\d+),? (?:{KIND})(?![\w']))", (("x", "number "),)),
    # --- three in a row, with no word before the last: "did three of them, 91, 92, 93, all straights"
    Plainer((" of them, ", " of these, ", " of 'em, ", "did two, ", "did three, ", "did four, ", "made two, ", "made three, ", "made four, "), rf"(?<![\w'])(?P<x>(?P<v>did|made|built|have|got|hung|finished) (?:two|three|four|five|six|a couple|[2-6])(?: (?:of (?:them|these|'em|those)|pieces|more|today))*,? )(?=(?:(?:straights?|{KIND}s?) )?{_NUMBER}(?:,| and) {_NUMBER}(?![\w'/-])(?! inch))", (("x", r"\g<v> "),)),
    Plainer((" all ",), rf"(?<![\w'-]){_NUMBER}, {_NUMBER}(?P<x>,) (?={_NUMBER}, all (?:of (?:them|these) )?{KIND}s(?![\w']))", (("x", " and"),)),
    # --- a riser by its number: "riser 170 goes up three stories"
    Plainer(("riser ", "risers "), rf"{_BEGINS}(?:the )?riser (?P<x>)(?={_NUMBER}(?:,|'s| is| was| goes| runs| went| has) (?!inch|by|foot|feet|stor))", (("x", "number "),)),
    Plainer(("branch ",), rf"{_BEGINS}(?:the )?branch (?P<x>)(?={_NUMBER} (?:\d+|{SAID_COUNT}) (?:by|x) )", (("x", "piece "),)),
    # --- what comes next: "Next up is thirty-three, that's going to be a tee."
    Plainer((" going to be ", " gonna be ", " will be ", "'ll be "), rf"(?:^|(?<=[.!?;] ))(?P<x>(?:(?:okay|ok|so|and|then|now|but)[, ]+)*(?:(?:the )?(?:next(?: up| one| piece)?|up next|after (?:this|that)(?: one)?|tomorrow|then)(?:'s| is| comes| it's| i've got|,)* )?(?:number |piece |fitting )?{_NUMBER},?(?: and)?(?: (?:that|that's|it|it's|which|which is|this one|is))?(?:'ll be| ?(?:is )?(?:going to be|gonna be|will be)) (?:an? |the |another |my )?(?:[\w-]+ ){{0,2}}?{KIND}(?:[.!;] |[.!]?$))", (("x", ""),)),
    # --- the number ahead of a branch: "T23. Branch off the 20 by 12, branch is 10 by 8"
    Plainer(("branch off ", "branch from "), rf"(?:^|(?<=[.!?] ))(?P<x>(?:number |piece |fitting )?(?P<n>[a-z]?-?{_NUMBER})(?:[.,:;] (?:it's |that's )?(?:an? )?|(?:'s| is) an? ))branch(?P<y>,?) (?=(?:off|from) (?:of )?(?:the |a |that )?{_NUMBER} (?:by|x) )", (("x", ""), ("y", r" \g<n>,"))),
    # --- how wide a collar is, before its number
    Plainer(("collar ",), rf"(?:^|(?<=[.!?] ))(?:an? |the )?collar(?P<x>) {_NUMBER}[ -]inch(?:es)?(?: round)?,? (?=(?:number|piece|fitting|mark) )", (("x", ","),)),
)
