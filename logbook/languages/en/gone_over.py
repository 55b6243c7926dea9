"""English of what is done with a rubbing tool and a bare side, by other words: "I still have to go over the tape with the squeegee".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_IT = r"(?:it|them|that|this|all of it|(?:all )?(?:the|my) (?:tape|foil|seams?|joints?|edges?|taping)(?: on (?:it|that|this(?: one)?))?)"
_WITH = r"(?:with|using) (?:the|a|my|that|some) (?:(?:plastic|rubber|little|hand|nylon|hard) )?(?:rubbing tool|rub tool|squeegee|smoothing tool|smoother|tool|roller|scraper|spreader|burnisher|stick|bone)"
_AGAIN = r"(?: (?:again|once more|one more time|twice|good|hard|real good|more|too|now))*"

_SIDE = r"(?:bottom|top|back|front|left|right|throat|heel|underside|(?:last|far|near|other|fourth|inside|outside|wall|back|bottom|top|long) (?:side|seam|corner|end|joint))(?: side| seam| corner| end| joint)?"
_PART = rf"(?<!seam on )(?<!joint on )(?<!edge on )(?<!corner on )(?:the |one )?(?:{_SIDE}|side|corner|end)"  # "the seam on top is bare" is told as it stands
_NAME = r"(?:it|this one|that one|(?:the )?(?:\w+ )?(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|sleeve|number|piece|section) ?(?:[a-z]-?)?\d*|(?:[a-z]-?)?\d+)"
_OF_STAPLES = r"^(?!.*tap(?:e|ing)).*stapl"

ENGLISH_GONE_OVER = (
    *(
        Plainer(
            (f"{verb} over", f"{verb} back over", f"{verb} around"),
            rf"(?P<x>{verb}(?: back)? (?:over|around) {_IT}{_AGAIN} {_WITH})(?![\w'])",
            (("x", means),),
            beside=("tool", "squeegee", "roller", "smoother", "scraper", "spreader", "burnish", "stick", "bone"),
        )
        for verb, means in (("go", "rub it down"), ("going", "rubbing it down"), ("gone", "rubbed it down"), ("went", "rubbed it down"))
    ),
    Plainer(("legs of ",), r"(?P<x>legs of (?:all )?(?:the|my|those|these) staples)(?![\w'])", (("x", "staple legs"),)),
    # --- a side that is bare has no tape on it
    *(
        row
        for bare in ("bare", "naked")
        for row in (
            Plainer((f" still {bare}", f"'s {bare}", f" is {bare}", f" are {bare}"), rf"{_PART}(?: of {_NAME}| on {_NAME})?(?:'s| is| are)(?P<x>(?: all| just)? {bare})(?=[.,;!]| because| since| and | so |$)", (("x", " not taped"),), unless=_OF_STAPLES),
            Plainer((f" still {bare}",), rf"{_PART}(?: of {_NAME}| on {_NAME})?(?:'s| is| are)(?P<x> still {bare})(?=[.,;!]| because| since| and | so |$)", (("x", " not taped yet"),), unless=_OF_STAPLES),
            Plainer((f" {bare} on the ", f" {bare} in the "), rf"(?:it's|it is|{_NAME}(?:'s| is)?)(?P<x> (?:still )?{bare})(?= (?:on|in) (?:the )?{_SIDE}(?:[.,;!]| and | because|$))", (("x", " not taped"),), unless=_OF_STAPLES),
            Plainer((f"{bare} board", f"{bare} seam", f"{bare} fiberglass", f"{bare} joint"), rf"(?:there's|there is|there are|it's got|i see|still)(?P<x>(?: some| a)? {bare} (?:duct ?board|board|seams?|joints?|fiberglass))(?= (?:on|in|at|along) (?:the )?{_SIDE}(?![\w']))", (("x", " no tape"),), unless=_OF_STAPLES),
        )
    ),
)
