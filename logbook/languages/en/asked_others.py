"""English of what a man asked another of his own piece, and what that one told him: "I asked Luis whether he wiped it and he said no", "did Marco put the vanes in? I asked him. He forgot them".

Regular expressions over lower-case letters, as in `plainer.py`. The question is read as his own, and the answer as a bare one. A piece
that is named in the question alone is the other man's.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_HE = r"(?:he|she|they|he's|they've)"
_WHO = r"(?:him|her|them|the \w+(?: \w+)?|my \w+|[a-z]+)"
_WHEN = r"(?: (?:just now|today|this morning|yesterday|again|about it|about that|on the phone|myself))*"
_ENDS = r"(?=[.,;!]|$)"
_TOLD = r"(?:(?:and|but|so|well),? )*(?:(?:he|she|they|[a-z]+)(?: (?:just|then|only))* (?:said|says|told (?:me|us)|tells me|answered|admitted|replied)(?:,? that)?,? )?"
_NOT = rf"(?:(?:he|she|they|it|nobody|no one|none of (?:them|us)|{_I}) )?(?:did not|didn't|had not|hadn't|has not|hasn't|have not|haven't|forgot|never did|never|was not|wasn't|were not|weren't|is not|isn't|are not|aren't)(?: (?:get|got|gotten|to|around|do|done|bother|have|time|remember|put|been|had))*(?: (?:it|them|that|to|in|so|to it))*"
_NO = rf"{_TOLD}(?:no|nope|{_NOT}|(?:nobody|no one|none of (?:them|us)|not one of (?:them|us)) (?:did|had|has)|(?:the |his |her |their )?(?:answer|reply) (?:is|was|came back)(?: a)? no)(?:,? (?:as it turns out|it turns out|apparently))?"
_YES = rf"{_TOLD}(?:yes|yeah|yep|(?:he|she|they|it) (?:did|had|has|was)|(?:the |his |her |their )?(?:answer|reply) (?:is|was|came back)(?: a)? yes)"
_LOOKED = rf"(?:(?:well|so|and),? )?{_I} (?:asked(?: {_WHO})?|checked|looked|called(?: {_WHO})?|inquired|had a look){_WHEN}[.,;:]+(?: and)? "
_DEED = r"(?:wiped|cleaned|stapled|rubbed|trimmed|warmed|bent|taped|dusted|put|patched|mended|used|closed|folded)"
_ASKED = rf"{_I} (?:asked|had to ask|went and asked) {_WHO}{_WHEN} (?:if|whether) "
_SEP = r"(?:,? and|,? but|[.,;])"

ENGLISH_ASKED_OTHERS = (
    *(
        Plainer((" if ", " whether "), rf"(?P<x>{_ASKED}(?:{_HE}|(?:anybody|anyone|somebody|someone)(?: else)?)(?: had|'d)? )(?={_DEED}(?![\w']))(?![^.?!]{{0,60}} (?:(?:his|her|their|your)(?![\w'])|\d))[^.?!]{{3,70}}?(?P<y>{_SEP} {answer}){_ENDS}", (("x", "i "), ("y", f"? {reply}")), beside=("asked", "to ask"))
        for answer, reply in ((_NO, "no"), (_YES, "yes"))
    ),
    *(
        Plainer((" if ", " whether "), rf"(?P<x>{_ASKED})(?!(?:he|she|they|i|we|you|anybody|anyone|somebody|someone)(?![\w']))(?![^.?!]{{0,60}} (?:his|her|their|your)(?![\w']))(?=[^.?!]{{3,50}}? (?:got|was|were|is|are|had been|has been|has|had) )[^.?!]{{3,70}}?(?P<y>{_SEP} {answer}){_ENDS}", (("x", ""), ("y", f"? {reply}")), beside=("asked", "to ask"))
        for answer, reply in ((_NO, "no"), (_YES, "yes"))
    ),
    *(
        Plainer(("? ",), rf"(?:did|had|has|have|was|were|is|are) (?P<w>(?:anyone|anybody|any of (?:us|you|them)|somebody|someone)(?: else)? )?[^.?!]{{4,70}}\?(?P<x> (?:{_LOOKED})?{answer}){_ENDS}", (("w", "we "), ("x", f" {reply}")), unless=r"\? (?:no|yes|nope|yeah|yep)[.,;!]")
        for answer, reply in ((_NO, "no"), (_YES, "yes"))
    ),
    Plainer(("who ",), rf"(?:^|(?<=[.!;] ))(?P<x>who) {_DEED}(?: down)? [^.?!]{{2,50}}\?(?P<y> (?:{_LOOKED})?(?:nobody|no one|not a soul|none of us)(?: did)?(?:,? (?:as it turns out|it turns out|it seems|apparently|i'm told))?){_ENDS}", (("x", "have i"), ("y", " no")), beside=("? ",)),
    Plainer(("did any", "has any", "had any"), r"(?:did|had|has) (?P<w>(?:anyone|anybody|any of (?:us|you|them))(?: else)?) [^.?!]{4,70}\? (?:no|yes|nope|yeah|yep)[.,;!]", (("w", "we"),)),
)
