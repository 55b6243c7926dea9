"""English of the piece that a man had before his eyes or in his mind when he spoke: "Thought it was taped, it's not, I was looking at 17".

The other piece is named only to tell how the mistake came about. Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_KIND = r"(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|piece|fitting)"
_NUMBER = rf"(?:the )?(?:{_KIND} )?(?:number )?(?:[a-z]-?)?\d{{1,3}}"
_SEES = r"(?:looking at|thinking (?:of|about)|talking about|standing (?:at|by|next to)|staring at|picturing|mixing (?:it|this|that|this one|them) up with|confusing (?:it|this|that|this one) with|reading(?: off)?)"
_WAS = r"(?:i|we)(?:'d been| was| were| had been|'ve been)(?: (?:just|only|actually|still|probably|really))*"
_HAD_IT = r"(?:i|we) (?:had|got|mixed|confused|was confusing) (?:it|this|that|this one|them|the two)(?: (?:mixed up|confused|up|backwards|crossed))? with"
_DENIED = (
    r"(?:(?:it|this one|that one|she|\d{1,3})(?: (?:really|actually|still))?(?: has no \w+| got no \w+|'s| is|'s got| has| does| did)? ?(?:not|isn't|ain't|wasn't|doesn't|hasn't|didn't|is|has|does|did)?|they(?:'re| are) (?:not|in)|they aren't|there(?:'s| is| are) (?:none|not|no \w+)|there (?:isn't|aren't)(?: any)?|(?:i|we) (?:didn't|did not|haven't|never|did|have))"
    r"(?: (?:not|taped|stapled|rubbed|trimmed|wiped|hung|there|in|on|any|at all|yet|down|it|that|them|done))*"
)

ENGLISH_ANOTHER_IN_MIND = (
    Plainer(
        ("looking", "thinking", "talking", "standing", "staring", "picturing", "mix", "confus", "reading"),
        rf"(?<![\w'])(?:{_DENIED}|no|nope)(?P<x>(?:[,;.-]| -)? ?(?:(?:and|but|because|cause|since|sorry|no|my mistake|that's|it's)[, ]+)*(?:{_WAS} {_SEES}|{_HAD_IT}) {_NUMBER}(?: (?:again|there|instead|over there|all along|before|earlier|yesterday|then|the whole time))*)(?=[.,;!]|$| and | but )",
        (("x", ""),),
        unless=r"[,.] no wait|no, wait|scratch that",
    ),
    # --- and what he said of it meanwhile
    Plainer(
        ("when i said", "when we said", "when i told", "when i called"),
        rf"(?:^|(?<=[.!?,;] ))(?P<x>(?:(?:and|but|sorry|oh|no|wait)[, ]+)*{_WAS} {_SEES} {_NUMBER} when (?:i|we) (?:said|told you|called)(?: (?:that|it|it was|it's))?(?: (?:taped|stapled|rubbed(?: down)?|wiped|trimmed|done|good|finished|tight))?[.,;] )(?=[^.!?]*\d)",
        (("x", ""),),
    ),
)
