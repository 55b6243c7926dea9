"""English for what is not there, told by where it is or by what ran out: "out of cross tabs", "the vanes were never put in", "forgot the patch", "ran out of 181A-P".

All are read as "no vanes", "no cross tabs", "no patch"; tape by its mark as tape, of which so much more is known. Rows like those of `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_SINCE = r"(?:got|found|borrowed|grabbed|bought|fetched|picked up|made|cut) (?:some )?more|another (?:box|set|batch|roll)|(?:then|later|after that|finally|so) (?:i |we )?(?:got|put|set|slid|went)|put (?:them|'em) in(?! yet)|went back|but (?:i|we) (?:got|found|had)|got (?:them|'em) in|are in now|for the next|on the next|for tomorrow"
_ANY = r"(?:the |an? |any |my |its |their |enough )?"
_NOT = r"(?<!not )(?<!n't )(?<!never )(?<!almost )(?<!nearly )(?<!wasn't )"
_NOUNS = (("vanes", r"(?:turning )?vanes"), ("cross tabs", r"(?:cross )?tabs"), ("mastic", r"mastic"))
_AHEAD = r"(?:(?:i |we |i'm |we're |i was |we were |it's |it is |got |just )*(?:(?:run|ran|running) (?:clean |plumb |all )?out of|clean out of|all out of|out of|short (?:on|of)|shy of|missing|nothing in the way of|bare of|minus|zero|all out|fresh out of))"
_ELSEWHERE = r"(?:back (?:at|in) (?:the )?(?:shop|truck|van|yard|office)|at the (?:shop|yard|supply house)|(?:still )?(?:in|on) (?:the|my|his) (?:truck|van|box|shelf|trailer|gang ?box)|still in the (?:box|bag|package)|home on the bench)"
_NEVER = r"(?:(?:won't|wouldn't|didn't|don't) (?:fit|go in|stay in|stick)(?: in)?|never (?:put|set|slid|gone|went|got put|been put|installed|placed)(?: in| on| down)?|not (?:to be found|here)|nowhere to be found)"

_MARK = r"(?:u ?l )?(?:181|one[- ]?eighty[- ]?one|one eight one|a hundred (?:and )?eighty[- ]one) ?-? ?a(?:[- ]+[ph])?(?: (?:pressure |heat |foil )?(?:tape|foil|stuff))?(?![\w'-])"
_FORGOT = r"(?:forgot|forgot about|left out|left off|skipped|missed|never did|didn't do|did not do|haven't done|didn't put on|never put on|haven't put on|didn't get to|never got to)"
_END = r"(?=[.,;!]|$| (?:so|and|but|on|for|today|because|cause|again)\b)"
_NOT_ON = rf"(?:(?:that |which )?(?:i|we) (?:didn't|did not|never|haven't|have not|couldn't|still have to|still gotta|gotta|have to|need to) (?:get to|put|put on|get|get on|have|use|do|done|got to)(?: on)?|(?:is |are |was |were |'s )?(?:not|still not) (?:in|on|there|done)(?: there)?|(?:isn't|aren't|wasn't|weren't) (?:in|on|there|done)|(?:is |was |were )?never (?:put|done|taped)(?: on| in| down)?|(?:forgotten|nowhere to be found)|(?:still )?to come|on order|(?:never|didn't|did not|hasn't|won't|wouldn't) (?:went|go|gone|made it|make it|stick|stay|hold|stuck)(?: on| in)?|(?:fell|came|peeled|popped) (?:right |back )?off|(?:got|was|is) (?:left off|left out|forgotten|skipped|missing)|(?:is |are |was |were |'s )?{_ELSEWHERE})"


def _none_of_them():
    for thing, said in _NOUNS:
        beside = (thing.split()[-1],)
        yield Plainer(("out of", "short on", "short of", "shy of", "missing", "way of", "bare of", "minus", "zero"), rf"{_NOT}(?P<x>{_AHEAD} {_ANY}){said}{_END}", (("x", "no "),), unless=_SINCE, beside=beside)
        if thing == "mastic":
            continue
        yield Plainer((" are ", "'re ", " were ", "n't ", " never ", " shop", " truck"), rf"(?<![\w'])(?P<x>(?:the |my |its )?{said}(?:(?: are| were|'re| is)(?: all)?)? (?:{_ELSEWHERE}|{_NEVER})){_END}", (("x", f"no {thing}"),), unless=_SINCE, beside=beside)
        yield Plainer((" out",), rf"{_NOT}(?<!no )(?P<x>(?:left|took|pulled|yanked) {_ANY}(?P<n>{said}) out){_END}", (("x", r"no \g<n>"),), unless=_SINCE, beside=beside)


_BRINGERS = r"(?:they|he|she|nobody|(?:the |our |my )?(?:supplier|supply house|shop|office|warehouse|driver|boss|foreman|super|lead|distributor|store|vendor|counter))"
_BRING = r"(?:(?:never|didn't|did not|hasn't|haven't|forgot to|still hasn't|still haven't)(?: (?:ever|even|yet))* (?:send|sent|bring|brought|ship|shipped|deliver|delivered|order|ordered|drop off|dropped off|give|gave|have|had|load|loaded|pack|packed)(?: (?:me|us|out|over))*)"

_RODS = r"(?:the |my |our )(?:tie )?(?:rods|channels?|stiffeners)"
_SENT = r"(?:(?: (?:got|were|was|all|went|been))+ (?:sent|shipped|delivered|dropped off|taken)?(?: off| back| out| over| up| away)? ?(?:to|at|with) (?:the|another|some) (?:\w+ )?(?:building|job|site|floor|crew|shop|yard|truck|guys?))"

ENGLISH_NONE_THERE = (
    # --- the rods or the channel, which is not there to be put in
    Plainer((" never ", "n't ", " not ", "'s not "), rf"(?<![\w'])(?P<x>{_RODS}(?:'s| is| are|'re| was| were| has| have)?(?: still)?(?: not|n't| never)(?: (?:even|been|yet|got|gotten|ever))* (?:cut|come|came|here|made|bent|welded|drilled|delivered|shipped|sent|arrived|show(?:ed)?(?: up)?|get here|got here|make it|made it))(?=(?P<y> yet| so far)?(?:[.,;!]|$| (?:so|and|but|because|today)))", (("x", "no tie rods"),), unless=rf"hanger|trapeze|{_SINCE}"),
    Plainer((" sent", " shipped", " delivered", " dropped", " taken", " went to"), rf"(?<![\w'])(?P<x>{_RODS}{_SENT})(?=[.,;!]|$| (?:so|and|but|because|today))", (("x", "no tie rods"),), unless=rf"hanger|trapeze|{_SINCE}"),
    # --- who never brought them
    *(
        Plainer((" never ", "n't ", " not ", "forgot to "), rf"(?P<x>(?:{_BRINGERS} {_BRING}) {_ANY}){said}(?P<y>)(?=[.,;!]|$| (?:so|and|but|yet|today|because|cause|it|i|we)(?![\w']))", (("x", "no "), ("y", ",")), unless=_SINCE, beside=(thing.split()[-1],))
        for thing, said in _NOUNS
    ),
    # --- tape by its mark
    Plainer((" out of", "outta", "short on", "short of", "shy of", " no more", "forgot", "have any", "find any", "any more", "enough", "left out", "zero", "bare of", "way of"), rf"(?<!now we're )(?<!now i'm )(?<!now )(?<!now all )(?<!now we are )(?<!now i am )(?:out of|outta|short (?:on|of)|shy of|no more|forgot|left out|zero|bare of|in the way of|(?:didn't|don't|couldn't|did not|could not) (?:have|find|get)|any more|enough) (?P<x>{_ANY}{_MARK})", (("x", "tape"),)),
    Plainer((" left", " back at", " in the ", " on the ", " order", " didn't", " never", " not ", " come"), rf"(?P<x>{_MARK}) (?=(?:i|we) (?:didn't|never|forgot)|(?:is |was |were |'s )?(?:not (?:on|in)\b|to come|{_ELSEWHERE}|on order|never (?:put|went|made)))", (("x", "tape"),)),
    # --- the mend
    Plainer(("patch",), rf"{_NOT}(?P<x>(?:{_FORGOT}|{_AHEAD}) {_ANY}patch(?:es|ing)?){_END}", (("x", "no patch"),), unless=rf"{_SINCE}|used|instead|went with|mended|sealed|mastic"),
    Plainer(("patch",), rf"(?<![\w'])(?P<x>(?:the |a |my |its )?patch(?:es)? {_NOT_ON}(?: (?:yet|now|so far|today))*){_END}", (("x", "no patch"),), unless=_SINCE),
    *_none_of_them(),
)
