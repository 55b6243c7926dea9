"""English of the piece before and of this one, of how warm it was where he taped, of what a piece may be called: "the last one had no vanes, this one's got them", "where I taped it was sixty-five".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_LAST = r"(?:(?:the|that|my) (?:last|previous|other|first) (?:one|elbow|straight|tee|piece)|the one (?:before|i did before|ahead of)(?: (?:it|this|this one|that))?|one just like (?:it|this|this one)|(?:last week|yesterday|this morning|last time)'s(?: one)?)"
_HAS = r"(?:'s got| has got| has| got| does have|'s)"
_PART = r"(?:vanes|tape|staples|tabs)"
_TEN = r"(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?"
_DEGREES = rf"(?:{_TEN}|\d\d)(?![\w/.-]*\d)(?! (?:by|inch|inches|feet|foot|percent|of|minutes|guys|staples)(?![\w']))"
_THERE = r"(?:(?:in (?:the|that) (?:room|corner|spot|hall|bay|shaft) |over |up |down |right |in )?where|when|while)"
_WORK = r"(?:taped|finished|done|stapled|rubbed(?: down)?|closed|sealed|trimmed|wiped|complete|good)"
_SMALL = r"(?: (?:only|just|about|maybe|down to|up to|around|like|a good|still))*"

ENGLISH_LAST_ONE_AND_THIS = (
    # --- the last one had none, this one has them
    Plainer(
        (" this one", " this has", " this thing"),
        rf"(?:^|(?<=[.!?;:,] ))(?P<x>(?=[^.!?;]*{_LAST})(?=[^.!?;]*?(?<![\w'])(?P<t>{_PART})(?![\w']))[^.!?;]*[.;,!] (?:but |and |well |so )*)this (?:one|thing)(?P<y>{_HAS} (?:them|it|some|'em|all of them|all of it)(?: (?:all|in|on|in there|in it|on it))*)(?=[.,;!]|$)",
        (("x", ""), ("y", r" has \g<t>")),
    ),
    Plainer((" this one i", " this one we"), rf"(?:^|(?<=[.!?;:,] ))(?P<x>{_LAST}(?:,? (?:i|we)(?: [^.!?;,]*)?| [^.!?;,]*)[.;,!] (?:but |and |well |so )*)(?=this one (?:i|we) (?:taped|stapled|rubbed|did tape|did staple|did rub|wiped|trimmed|didn't|did not|forgot))", (("x", ""),), unless=r"\d,? (?:and |& )?\d"),
    # --- how warm it was where he taped
    Plainer((" taped",), rf"(?:^|(?<=[.!?;:,] )|(?<= but )|(?<= and ))(?P<x>{_THERE} (?:i|we) taped(?: (?:it|that|this|this one))?,?(?: it)?(?: was| is|'s))(?={_SMALL} {_DEGREES}(?: degrees)?(?:[.,;!]|$| in | and | so | but )){_SMALL} {_DEGREES}(?P<z>(?: degrees)?)", (("x", "I taped it, it was"), ("z", " degrees"))),
    Plainer((" taped",), rf"(?<![\w'])(?:it (?:was|is)|it's|was){_SMALL} {_DEGREES}(?P<z>)(?= {_THERE} (?:i|we) taped)", (("z", " degrees"),)),
    # --- how warm the air is in it, by the number alone
    Plainer(
        ("air ", "air's"),
        rf"(?<![\w'])(?:the |its )?(?:supply |discharge )?air(?: (?:in|inside|going through|coming through|through) (?:it|there|that|the duct|that duct|this|this duct|here))?(?:'s| is| comes (?:in|out|through)| will be)?(?: (?:at|about|around|up to|running|only|maybe|like|over|under|a good))* (?:(?:an?|one|two|three) (?:hundred(?: and)?(?: {_TEN}| (?:ten|twenty))?|{_TEN})|[12]\d\d|3[0-4]\d)(?P<z>)(?=[.,;!]|$| according| per | says | and (?:it's|the|i|we)| in (?:it|the duct|there))",
        (("z", " degrees"),),
        unless=r"cfm|cubic|fpm|feet per",
    ),
    # --- another says he did it, and it is not there
    Plainer(
        (" says", " said", " swears", " swore", " claims", " claimed", " told ", " tells "),
        r"(?<![\w'])(?:says|said|swears|swore|claims|claimed|told (?:me|us)|tells (?:me|us))(?: that)? (?:he|she|they|it's|it was|it is|they're)(?:'d| had|'ve| has| have)? [^.?!;,]*?(?:taped|stapled|rubbed|wiped|trimmed|put)[^.?!;,]*(?P<x>[,;] (?:but |and |well |only )*)(?:(?:he|she|they) (?:did not|didn't|never did|has not|hasn't|have not|haven't)(?P<y>[,;] (?:and |because |cause )*))?(?=(?:there's|there is|there are|there isn't|there aren't|it's got|it has) (?:no|any|not|nothing)(?![\w'])|it isn't|it's not|it is not|they aren't|they're not|(?:i )?(?:can't|don't) see any|not an? )",
        (("x", ". "), ("y", ". ")),
    ),
    # --- what it may not be called
    Plainer(
        ("call ", "mark ", "write ", "put ", "log "),
        rf"(?:^|(?<=[.!?;:,] )|(?<= but )|(?<= and ))(?P<x>(?:please )?(?:(?:you |i |we )?(?:don't|do not|can't|cannot|couldn't|wouldn't|shouldn't)) (?:go and |ever |really )*(?:call|mark|write|put|log) (?:it|that|this|this one)(?: down)?(?: as)? )(?={_WORK}(?:[.,;!]|$| because| cause| yet| since))(?P<w>{_WORK})(?P<y>(?:,? (?:because|cause|since|'cause))?,? (?:it|that|she) ?(?:ain't|isn't|is not|'s not)(?: yet)?)?",
        (("x", "it's not "), ("y", "")),
        unless=r"(?<![\w'])(?:until|till|unless|if)(?![\w'])",
    ),
    # --- a rule of his own, which tells nothing of this piece
    Plainer(
        ("without ",),
        r"(?:^|(?<=[.!?;:,] ))(?P<x>(?:(?:i|we|you)(?:'d| would)? (?:never|not ever)|(?:i|we|you) (?:wouldn't|won't|would not|can't)|never|don't ever) (?:call|consider|say|mark|sign|count|log) (?:(?:it|that|this|one|them|an? \w+|the \w+|any \w+|off|is|it's|of) )*(?:(?:finished|done|complete|closed|good|ready) )?without (?:any |its |the |turning )*)(?P<t>vanes|tape|staples)(?P<w>[^.!?,;]*[.!,;] (?:[^.!?]{0,60}[.!] )?(?:and |so |but |well )*)(?P<y>they|it)(?='re| are|'s| is| went| were| was)",
        (("x", ""), ("t", ""), ("y", r"the \g<t>")),
    ),
    Plainer(
        ("without ",),
        r"(?:^|(?<=[.!?;:,] ))(?P<x>(?:(?:i|we|you)(?:'d| would)? (?:never|not ever)|(?:i|we|you) (?:wouldn't|won't|would not|can't)|never|don't ever) (?:call|consider|say|mark|sign|count|log) (?:(?:it|that|this|one|them|an? \w+|the \w+|any \w+|off|is|it's|of) )*(?:(?:finished|done|complete|closed|good|ready) )?without [^.!?,;]*)(?=[.!,;]|$)",
        (("x", ""),),
    ),
    # --- "wide, like three": so much, and no piece that it is the same as
    Plainer((", like ", " like "), r"(?:wide|apart|deep|long|high|tall|narrow|far|big|close|tight|short|open|off)(?P<x>,? like )(?=(?:(?:about|maybe|an?|every) )*(?:one|two|three|four|five|six|seven|eight|nine|ten|half|\d)(?![\w']*(?: by| x|\d)))", (("x", ", about "),)),
    # --- "the top on 5": the top of the piece
    Plainer((" on ",), r"(?:only |just |not )?the (?:top|bottom|back|left|right|left side|right side|far side|back side) (?P<x>on )(?=\d{1,3} (?:is|isn't|was|wasn't|has|got|'s|only|just))", (("x", "of number "),)),
    # --- two ends, as high as one another
    *(
        Plainer(
            (" end",),
            rf"(?<![\w'])(?P<x>(?:both ends(?: are| is|'re| run)? (?P<h>{{n}})(?: inch(?:es)?)? (?:high|tall|deep)|(?P<k>{{n}})(?: inch(?:es)?)? (?:high|tall|deep)(?: on| at)? both ends),? (?:and |with )?(?:the )?{one} end(?:'s| is| are)? (?P<a>{{n}})(?: inch(?:es)?)?(?: wide)?,? (?:and )?(?:the )?{other} end(?:'s| is| are)? (?P<b>{{n}})(?: inch(?:es)?)?(?: wide)?)(?=[.,;!]|$)".replace("{n}", r"\d{1,2}"),
            (("x", rf"\g<{first}> by \g<h>\g<k> to \g<{last}> by \g<h>\g<k>"),),
        )
        for one, other, first, last in ((r"(?:big|large|wide|bigger|larger|wider)", r"(?:small|little|narrow|smaller|narrower)", "a", "b"), (r"(?:small|little|narrow|smaller|narrower)", r"(?:big|large|wide|bigger|larger|wider)", "b", "a"))
    ),
)
