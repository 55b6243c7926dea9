"""English of a question that another put and of what he was told: "he asked me if it was taped and I had to say no". The answer is read as if it stood alone.

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_ASKED = r"(?:asked|asks|asking|wanted to know|wants to know|wondered|wonders)(?: (?:me|us))?(?: (?:just now|today|this morning|yesterday|again))?(?: (?:if|whether|about|did|do|does|is|are|was|were|had|have|has)(?![\w']))"
_SO = r"(?:,? (?:and|but|so)|[.,;]|[.,;] (?:and|but|so|well)) "
_SAY = rf"{_I}(?:'d| had| have|'ve)?(?: (?:had to|have to|could only|got to|gotta|just|only|must|could))* (?:say|said|tell|told|answer|answered|admit|admitted)(?: (?:him|her|them|the \w+|that|it was a|it's a|that's a))*"
_ANSWER = r"(?:the )?answer(?:'s| is| was|'d be| would be)(?: (?:a|still|just))*"
_REPLY = r"(?:no|nope|yes|yeah|yep|not yet|not|it|they|i|we|neither|none)(?![\w'])(?! (?:can|could|will|would|should)(?![\w']))|(?:it's|they're|i'm|it'd|that it|that they|that i)(?! going)(?![\w'])"

ENGLISH_ASKED_PLAINLY = (
    # --- "what I didn't do is wipe it", "what I haven't done on 12 is the rub"
    *(
        Plainer(("what i ", "what we "), rf"(?<![\w'])(?P<x>what (?P<s>i|we)(?: still)? (?P<n>(?:didn't|did not|haven't|have not|never)(?: (?:do|did|done|get to|got to|gotten to|get done|manage|touch))?|forgot)(?P<on> (?:on|to|with|for) (?:the )?(?:[a-z]+ )?\d+)?(?: is|'s| was)(?: to)? )(?={ahead})", (("x", rf"\g<on> \g<s> {says}"),), unless=unless)
        for ahead, says, unless in (
            (r"(?:wipe|tape|staple|rub|trim|patch|bend|warm|heat|clean|put|close|mend|fix|hang)(?![\w'])", "didn't ", r"what (?:i|we) forgot"),
            (r"(?:the|any|a) (?:[a-z]+ )?(?:rub|rubbing|wipe|wiping|tape|taping|stapling|staples|trimming|trim|patch|vanes|tabs|washers|flap)(?![\w'])", "didn't do ", r"what (?:i|we) forgot"),
            (r"(?:(?:the|any|a) (?:[a-z]+ )?)?(?:rub|rubbing|wipe|wiping|tape|taping|staple|stapling|staples|trimming|trim|patch|vanes|tabs|washers|flap)(?![\w'])", "forgot ", r"what (?:i|we) (?:didn't|did|haven't|have|never)"),
        )
    ),
    Plainer(
        (" say", " said", " tell", " told", " answer", " admit"),
        rf"{_ASKED}(?![^.?!]{{0,40}} (?:his|her|their|your) )[^.?!]{{3,90}}?{_SO}(?P<x>{_SAY},? |{_ANSWER},? )(?={_REPLY})",
        (("x", ""),),
        beside=("asked", " ask", "want", "wonder"),
    ),
    # --- "I asked Mike if he wiped the board before I taped it and he said no": what another did on a piece of mine
    Plainer(
        (" if he ", " if she ", " if they "),
        rf"(?P<x>{_I} asked [\w']+(?: \w+)? if (?:he|she|they)(?: had|'d)? )(?=(?:wiped|cleaned|stapled|rubbed|trimmed|warmed|bent|taped|dusted|checked)(?![\w'])[^.?!]{{3,60}} (?:before|after|when) {_I} )[^.?!]{{3,90}}?(?P<y>{_SO}(?:he|she|they) (?:(?:said|told me|says|goes|admitted) )?(?:no|nope|not|never|(?:that )?(?:he|she|they)? ?(?:didn't|did not|hadn't|had not|forgot|never did)))(?=[.,;!]|$)",
        (("x", "had we "), ("y", "? no")),
    ),
    Plainer(
        (" say", " said", " tell", " told", " answer", " admit"),
        rf"(?:did|have|are|is|was|were) {_I}? ?[^.?!]{{3,60}}\? (?:well,? |so,? )?(?P<x>{_SAY},? |{_ANSWER},? )(?={_REPLY})",
        (("x", ""),),
        beside=("? ",),
    ),
    # --- what is drawn, and in the same breath what is there
    Plainer(
        (" and i ", " and we ", " and it ", " and they ", " and there ", " and it's ", " and they're ", " and there's "),
        r"(?:drawings?|prints?|plans?|sheet|specs?|detail|submittals?|ticket)(?: (?:shows?|showed|calls? for|called for|wants?|wanted|has|have|had|says?|said|asks? for))[^.?!,;]{3,60}?(?P<x>,? and)(?= (?:i|we|it|they|there|it's|they're|there's) (?!shows?|calls?|wants?|says?|said|asks?|also|did(?! not|n't))(?:\w))",
        (("x", "."),),
        beside=("drawing", "print", "plan", "sheet", "spec", "detail", "submittal", "ticket"),
    ),
)
