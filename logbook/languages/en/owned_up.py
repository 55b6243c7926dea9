"""English of what he told a man who asked, and of what is so: "he goes did you tape it and I go yep. I didn't". What he said to him is no more than what was asked.

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_HE_ASKS = r"(?:asked|asks|asking|goes|wanted to know|wants to know|wondered|wonders|says?|said|yells|yelled|hollers|hollered|called over|calls over|called down)(?: (?:me|us))?,?(?: (?:just now|today|this morning|yesterday|again))?(?: (?:if|whether|did|do|does|is|are|was|were|had|have|has)(?![\w']))"
_YES = r"(?:yes|yep|yeah|yup|sure|sure thing|of course|uh huh|absolutely|you bet|affirmative|it is|it was|they are|there are|it's done|i did|all done|you know it)(?:,? (?:sir|boss|ma'am|chief|i did|it is|it was|they are|sure|of course|yeah|all done|absolutely))*"
_I_SAID = rf"(?:i|we)(?:'m| am| was)?(?: (?:just|only|always|all))* (?:say|said|go|went|like|told (?:him|her|them|the \w+)|tell (?:him|her|them)|answered|nodded|hollered|yelled)(?: back)?(?: (?:him|her|them))?,? {_YES}"
_BUT = r"(?:(?:but|well|and|only|except|though|truth is|the truth is|tell you the truth|really|in fact|fact is|thing is),? )*"
_IT_IS_NOT = (
    r"(?:(?:it|they|she|there|that)(?:'s|'re)? ?(?:isn't|wasn't|ain't|not|hasn't|weren't|aren't|is not|was not|are not|never was|didn't|doesn't|don't|never did)|(?:i|we) (?:didn't|did not|hadn't|haven't|never did|never had))"
    r"(?: (?:either|so|yet|even|at all|though|really|actually|now|any|one))*(?=[.,;!]|$)"
)
_NOT_TRUE = r"(?:i lied|i was lying|i fibbed|that was a lie|that's a lie|which was a lie|which is a lie|it was a lie|that wasn't true|which wasn't true|that's not true|not true|that was a fib|lied to (?:him|her|them|his face)|(?:i )?shouldn't have(?: said (?:so|that))?)"
_CUES = ("asked", " asks", "asking", " goes", "to know", "wonder", " say", " said", " yell", " holler", " over ", " called ")
_OF_YES = (" yes", " yep", " yeah", " yup", " sure", " of course", " uh huh", " absolutely", " you bet", " affirmative", " it is", " it was", " they are", " there are", " done", " i did", " you know")
_BEFORE = rf"{_HE_ASKS}[^.?!]{{3,90}}?"

ENGLISH_OWNED_UP = (
    Plainer(_CUES, rf"{_BEFORE}(?P<x>(?:,? (?:and|so|but)|[.,;?]+(?: (?:and|so|well|but))?) {_I_SAID}[.,;!]+ {_BUT})(?={_IT_IS_NOT})", (("x", ". "),), beside=_OF_YES),
    *(
        Plainer(_CUES, rf"{_HE_ASKS}{you}[^.?!]{{3,90}}?(?P<x>(?:,? (?:and|so|but)|[.,;?]+(?: (?:and|so|well|but))?) {_I_SAID}[.,;!]+ {_BUT}{_NOT_TRUE})(?=[.,;!]|$)", (("x", says),), beside=_OF_YES)
        for you, says in ((r"(?: (?:you|i|we)(?![\w']))", ". i didn't"), (r"(?! (?:you|i|we)(?![\w']))", ". it's not"))
    ),
    # --- asked of himself, or in another's words
    Plainer(("? ",), rf"(?<=\? )(?P<x>{_YES}[.,;!]+ {_BUT})(?={_IT_IS_NOT})", (("x", ""),)),
    Plainer(("? ",), rf"(?<=\? )(?P<x>{_YES}[.,;!]+ {_BUT}{_NOT_TRUE})(?=[.,;!]|$)", (("x", "no"),), beside=("lie", "lying", "true", "fib", "shouldn't have")),
)
