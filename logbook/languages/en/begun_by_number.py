"""English of a piece whose bare number he begins with: what he did with it before its kind, what he looks at, what he asks himself of it.

A number that could be a count, a time, a run, a size or a room is left as it is: it must be greater than ten, and its kind or its size told of it.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.names import FIRST_NAMES
from logbook.languages.en.numbers import SAID_COUNT
from logbook.languages.plainer import Plainer

_BIG = rf"(?!(?:one|two|three|four|five|six|seven|eight|nine|ten)(?![\w-]))(?:(?:one|two|three|four|five) {SAID_COUNT}|{SAID_COUNT})"
_N = rf"(?!(?:90|45|ninety|forty[- ]five)(?![\w-]))(?:[1-9]\d{{1,2}}|{_BIG})(?![\w'/-]|\.\d)"
_SIZE = rf"(?:{SAID_COUNT} (?:by|x) {SAID_COUNT}|\d+ ?x ?\d+)(?![\w'])"
_BEGINS = r"(?:^|(?<=[.!?] ))(?:(?:okay|ok|so|um|uh|hm|hmm|well|and|alright|all right|now|next|right)[, ]+)*"
_NAMES = "|".join(sorted(FIRST_NAMES))
_WHO = r"(?:i|we|me and (?:my )?\w+(?: \w+)?|\w+ and (?:i|me)|us two|the (?:two|three) of us|helped me|helped us|helped me to)"
_DID = r"(?:did|set|put up|hung|made|built|lift|lifted|raised|raise|hang|set up|carried|carry|closed|close|finished|finish|got|started|knocked out|put together|put in|slid in|stuck up|ran|worked on|were on|was on|am on|are on)"
_KINDS = rf"{KIND}(?![\w'-])"
_ITS = rf"(?:it's|it is|its|that's|that is|this is|this one's|was)(?: an?| another| the)? (?:{_SIZE}|[\w-]+ (?:inch )?{_KINDS}|{_KINDS})"
_TOLD = rf"(?:,? (?:an? |the )?{_KINDS},? (?:(?:on |off |of )?run (?:\d+|\w+),? )?(?:{_SIZE}|cut to length)|,? an? {_KINDS}(?:[.,]|$))"
_FIRST = r"(?:tape|staples|stapling|taping|mastic|vanes|turning vanes|board|spacing|pressure|static|gap|length|throat)"

ENGLISH_BEGUN_BY_NUMBER = (
    # --- "we did 64 a tee fourteen by ten", "me and sal put up 48 straight twelve by twelve": what was done with it, its kind behind
    Plainer(tuple(f" {one} " for one in ("did", "set", "up", "hung", "made", "built", "lift", "lifted", "hang", "carried", "closed", "finished", "got", "started", "out", "together", "in", "ran", "on", "raised", "raise", "carry", "close", "finish")), rf"(?<![\w']){_WHO} (?:just |then |finally |also )?{_DID} (?P<x>)(?={_N}{_TOLD})", (("x", "number "),), beside=(" by ", "x", " run ")),
    # --- "Pete helped me lift 22. It's a straight", "I finished 58 at ten past four": its kind in the next words
    Plainer((". it's ", ". that's ", ". it is ", ". its ", ", it's ", " it's ", ". this one's ", ". this is "), rf"(?<![\w']){_WHO} (?:just |then |finally |also )?{_DID} (?P<x>)(?={_N}(?: (?:today|just now|this morning|up|in|together|alone|by (?:myself|ourselves)))*[.,;]? {_ITS})", (("x", "number "),)),
    *(
        Plainer((f"me {verb} ", f"us {verb} ", f"me to {verb} ", f"hand {verb}", f"hand to {verb}", f"us to {verb} "), rf"(?<![\w'])(?P<x>(?:{_NAMES}|he|she|they|(?:the|my) \w+(?: \w+)?) (?:helped (?:me|us)|gave (?:me|us) a hand)(?: to)? {verb} )(?=(?:number |piece |{KIND} )?{_N}(?:[.,;:]| with| and| up| on| off|$))", (("x", f"we {done} "),))
        for verb, done in (("lift", "lifted"), ("raise", "raised"), ("hang", "hung"), ("put up", "put up"), ("set", "set"), ("carry", "carried"), ("make", "made"), ("build", "built"), ("close", "closed"), ("finish", "finished"), ("put together", "put together"))
    ),
    # --- "we hung 96, …, then tied in 97, which is thirty four by eight": the second one
    Plainer((", which is ", ", which was ", ", which's ", ", that is "), rf"(?:,? (?:and )?then|,? and)(?: (?:i|we))? (?:tied in|hooked up|hung|set|put up|did|built|made|taped|closed|finished|lifted) (?:number )?(?P<n>{_N})(?P<y>,? (?:which|that)(?: is| was|'s) )(?=(?:an? )?(?:{_SIZE}|{_KINDS}))", (("y", r". number \g<n> is "),)),
    # --- "we got 111 up on run seven straight": up, and where
    Plainer((" up on ", " up in ", " up, ", " up off ", " up for "), rf"(?<![\w']){_WHO} (?:just |then |finally |also )?(?:got|put|have|had|hung) (?P<x>)(?={_N} up(?:,| on run (?:\d+|\w+)| on the [\w ]{{3,20}}?| in the [\w ]{{3,20}}?),? (?:an? |the |it's an? )?{_KINDS})", (("x", "number "),)),
    # --- "I'm standing here with twenty seven thinking about the joint": what he has before him
    Plainer((" with ", " at ", " under ", " by ", " beside "), rf"(?<![\w'])(?:standing|sitting|kneeling|stood|sat|looking|staring|squatting|working|down here|up here|over here|back)(?: (?:here|there|right here|down here|up here|over here))? (?:with|at|under|by|beside|in front of) (?P<x>)(?={_N},? (?:thinking|wondering|looking|trying|scratching|and (?:i|we|it|it's|the|there's|i'm)|it's|there's|the (?:joint|tape|seam|corner|vanes|top|bottom)|in front of me|in my hands|now)(?![\w']))", (("x", "number "),), beside=KIND[3:-1].replace("(?:", "").split("|")),
    # --- "Fifty-two. It's thirty-six by eight, a straight", "Number 92? I left before the staples. It's a straight"
    Plainer((". it's ", "? it's ", ". that's ", ": it's ", ", it's ", "... it's ", " it's ", " its "), rf"{_BEGINS}(?P<x>){_N}(?P<y>[.,:?!]|\.\.\.) (?={_ITS})", (("x", "number "), ("y", "."))),
    Plainer(("? ",), rf"{_BEGINS}(?:number |piece |fitting |{KIND} )(?:\d{{1,3}}|{_N})(?P<y>\?) (?=(?:i|we|it|that one|he|they)(?:'s|'m)? [^?!]{{1,60}}[.] {_ITS})", (("y", ","),)),
    Plainer(("let me ", "lemme ", "let's see", "what's on", "what was", "where was"), rf"{_BEGINS}(?P<x>){_N}(?P<y>,? (?:let me|lemme|let's) (?:see|think|look)(?: (?:about )?(?:what(?:'s| is| was) (?:on|in|with) it|it over|here|now|back))?,?) (?={_ITS}|{_KINDS})", (("x", "number "), ("y", ","))),
    # --- "Eighty-seven, tape is 181A-H, ironed on. Tee, …": one thing of it before its kind
    Plainer((". ",), rf"{_BEGINS}(?P<x>){_N}[,:] (?=(?:the )?{_FIRST}(?:'s| is| are| was| were| went)(?![\w'])[^?]*[.] (?:it's an? |an? |the )?{_KINDS},)", (("x", "number "),)),
    # --- "Was 65 laid out from the female end?": what he asks himself of it, its kind behind
    Plainer(("? ",), rf"{_BEGINS}(?P<q>was|is|did (?:i|we) (?:tape|staple|rub|trim|wipe|patch|fix)|are|were|has|does) (?P<x>(?:number )?)(?P<n>{_N})(?P<r>(?: (?:laid out|made|built|cut|taped|stapled|rubbed|trimmed|wiped|tight|closed|hung|patched|fixed|all|really|done|down)(?![\w'])[^.?!]*)?\?) (?=[^?]*(?:{_ITS}|[.] (?:an? )?{_KINDS},))", (("q", r"number \g<n>. \g<q>"), ("x", "it"), ("n", ""))),
    # --- "Up and hung, 124. … Twelve by ten straight": how far it got, and its number
    Plainer((" hung, ", "hung, ", " up, "), rf"{_BEGINS}(?P<x>(?:(?:it's|that's|she's) )?(?:up and hung|hung(?: up)?(?: and tied in)?|all hung|hung and done), )(?P<n>{_N})(?=[.;:](?: |$)|, (?:an? |the )?(?:{_SIZE}|{_KINDS}))", (("x", "hung number "),)),
    # --- "second thing, the straight it sits in, 123": the next piece, told by the one before
    Plainer((" it sits in, ", " it sits on, ", " it goes in, ", " it goes into, ", " it's in, ", " it ties into, ", " it comes off, ", " it's on, ", " it taps, ", " it taps into, "), rf"(?:^|(?<=[.!?;,] ))(?P<y>(?:(?:second|next|then|third|last|now|also|and)(?: (?:thing|one|up|piece))?,? )+)(?P<x>the (?P<k>{KIND})(?: that| which)? it(?:'s| sits| goes| ties| comes| taps)(?: in| on| into| off| onto)?, )(?=(?:number )?{_N}[.,;])", (("x", r"\g<k> "),)),
    # --- "35 straight cut to length": no measure of it is a name
    Plainer((" cut to length",), rf"{_BEGINS}(?P<x>)(?={_N},? {_KINDS},? cut to length)", (("x", "number "),)),
    # --- "Finished 58 at ten past four, Tom held the light. Straight, …": when
    Plainer((" at ", " around ", " about ", " before ", " by "), rf"(?:^|(?<=[.!?] )|(?<=i )|(?<=we ))(?:(?:okay|ok|so|and) )*(?:finished|done with|started|closed|wrapped up|hung|set|built|made) (?P<x>)(?={_N} (?:at|around|about|before|by|just before|just after|right after) (?:lunch|noon|break|quitting|\w+(?: \w+)? (?:past|to|after|of|thirty|fifteen|o'clock)|\d{{1,2}}:\d\d|\d{{1,2}})(?![\w'])[^?]*[.] (?:an? |it's an? )?{_KINDS},)", (("x", "number "),)),
    # --- "I put 33 on the high pressure side. … Straight, …": where
    Plainer((" on the ", " in the ", " over the ", " by the "), rf"(?<![\w'])(?:i|we) (?:put|set|hung|have|built|made) (?P<x>)(?={_N} (?:on|in|over|by) the (?!inside|outside)[a-z][^?]*[.] (?:an? |it's an? )?{_KINDS},)", (("x", "number "),)),
    # --- "I had three done. 73, straight, …": how many there are
    Plainer((" done",), rf"(?<![\w'])(?:had|have|got|has) (?P<x>(?:two|three|four|five|six|[2-6])(?: (?:of (?:them|these|those)|pieces))? (?:all )?)(?=(?:done|finished|closed|up|together|made)(?: (?:by|before|today|already)[\w ]*)?[.:;] (?:number )?{_N},)", (("x", "some "),)),
    # --- "105 reducer, …; 106 straight, …; 107 elbow, …": each piece begins a sentence of its own
    Plainer((";", ", "), rf"(?:^|(?<=[.,;!?] ))(?:(?:okay|ok|so|and|then),? )*\d{{1,3}},? {_KINDS}(?:,| {_SIZE})[^?]*?(?P<x>[;,] (?:and |then |and then )?)(?=\d{{1,3}},? {_KINDS}(?:,| {_SIZE}))", (("x", ". "),)),
)
