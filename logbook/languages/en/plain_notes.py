"""English of everyday notes that tells of no fact, or of what is left: a tape that only held it for a while, a coin, what stands beside it. Patterns over sketches of sentences."""

from __future__ import annotations

from logbook.languages.en.asides import _TO_COME
from logbook.languages.told import Aside

_HOLDING_TAPE = r"(?:(?:the |some |a (?:piece|strip|bit) of |a little |a couple (?:pieces|strips) of |masking |painter's |painters |duct |blue |cloth |scotch |packing |electrical )+(?:tape|#)|(?:masking|painter's|painters|duct|blue|cloth) tape)"
_THERE = r"(?: (?:on|across|over|along|at|to) (?:the |one |a |two |each |that |this )*(?:\w+ )?(?:seams?|joints?|corners?|edges?|sides?|ends?|spots?|flaps?|places?))?"
_COIN = r"(?:quarter|nickel|dime|penny|half dollar|silver dollar|fifty cent piece|golf ball|baseball|softball|fist|thumb(?:nail)?|pea|marble|grapefruit|tennis ball)"

ENGLISH_PLAIN_NOTES = (
    # --- not taped, that's tomorrow
    Aside(
        rf"(?P<later>(?:not|isn't|ain't|wasn't|hasn't been|haven't been|haven't|no|didn't|never)(?: (?:been|it|yet|all|any|got))* (?P<act><[ndb]>)(?: (?:it|yet|down|up|on it|in it))* ,? ?(?P<x>(?:and |but )?(?:that's|that is|that'll be|that will be|that one's|it's|that goes|that'd be|that comes|gonna be|they're|those are|this is)"
        rf"(?: (?:for|going to be|gonna be|a job for|on the list for|coming|set for|my job for|happening|up for|next|still to come|work for))* ?(?:{_TO_COME}|tomorrow(?:'s)? (?:job|work|problem|morning)|the next (?:step|thing)|next|still to come|my next (?:job|step))))(?= [.,;]|$)",
        ("that's", "that is", "that'll", "that will", "that one's", "it's", "that goes", "that'd", "that comes", "gonna be", "they're", "those are", "this is"),
        states=(("<act>", False),),
        names=True,
        unless=r"\byet\b",
    ),
    # --- a tape that held it until the right one was on
    Aside(
        rf"(?P<x>(?:i |we )?(?:used|put|had|ran|stuck|slapped|threw) {_HOLDING_TAPE}{_THERE} (?:just |only |enough )*(?:(?:to|for) (?:hold|holding|keep|tack|tacking) (?:it|them|things|the \w+|her)(?: (?:together|in place|shut|closed|still|down|up))*|temporarily|for now|for the time being)(?: (?:while|till|until) [^.,;?]+)?) ,? ?"
        r"(?:(?:and |but )?(?:then|after(?: that)?) )(?:i |we )?(?:went|came|ran|put|did|closed|sealed|covered|<d>)(?:[^.?;]*?(?:181 ?a-?[ph]|<n>|<d>|pressure tape|heat tape|foil tape|right tape|good tape)(?![\w-])|(?<=<d>))",
        ("to hold", "for hold", "to keep", "to tack", "temporarily", "for now", "for the time"),
        states=(("taped", True),),
        unless=r"never|didn't|not |half|most|some of|only (?:one|two|three)",
        names=True,
    ),
    # --- as big as a coin or a fist
    Aside(rf"(?P<x>(?:(?:about |maybe |around |roughly )*(?:the size of|as big as|big as|bigger than|no bigger than|smaller than|size of|as large as) (?:a |an |my )(?:\w+ )?{_COIN}|(?:a )?(?:quarter|nickel|dime|penny|coin|fist)[- ]sized?))(?! (?:inch|of an inch|in(?! (?:the|my|it|one|this|that)\b)))", ("size", " big", "bigger", "smaller", "as large")),
    # --- up against something: where it sits
    Aside(r"(?P<x>(?:it's|it is|it was|that's|she's|is|was|being|sits|sitting) up (?:tight |hard |right |flush |real |so |too )*(?:against|next to|beside|close to|tight to|near) [^.,;?]*?)(?= [.,;]| and| so| but|$)", ("against", "next to", "beside", "close to", "tight to", "near")),
)
