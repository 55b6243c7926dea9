"""English where a fault, a lack or another man's hand stands far from the piece: "something's wrong with the staples on straight 7", "the only one with tape on is 6", "tape and staples on every side but the top of 7"."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.plainer import Plainer

_NAMED = rf"(?:(?:the )?{KIND} (?:number )?{NUMBER}|number {NUMBER})"
_THING = r"(?:staples?|stapling|tape|tape job|taping)"
_SOME = r"(?:the |my |his |some of the |a few of the |all the |those |these )?"
_WRONG = r"(?:(?:something|anything|a little something)(?:'s| is| was)? (?:wrong|off|not right|up|funny|the matter|amiss) (?:with|about)|(?:a |an |some |the )?(?:problems?|issues?|trouble) (?:with|on))"
_TELLS = r"(?:(?:there's|there is|there are|there was|i've got|i got|i have|we have|we've got|i see|i saw|i think|having|i'm having|had|i had|and|but|so|got) )*"
_POOR = r"(?:no good|not (?:any |very |so |too )?(?:good|right|great)|(?:really |pretty |kind of |all |just |so |very )*(?:bad|wrong|awful|terrible|crooked|sloppy|ugly|crap|crappy|junk|garbage|trash|shot|a mess|messed up|screwed up|goofed up|funny|off|lousy|a disaster|poor|weird))"
_ENDS = r"(?=[.,;!]|$| and | but | so )"
_SIDE = r"(?:top|bottom|back|front|left|right|underside|throat|heel)(?: (?:side|one|seam|edge))?"
_SORT = r"(?:tape|staples)(?:(?:,? and|,|,? &) (?:tape|staples))?"
_EVERY_SIDE = rf"(?<!no ){_SORT}(?: (?:is|are|went|goes))? (?:on|along|down) (?P<x>(?:(?:every|each) (?:side|seam)|all (?:of )?(?:the |its )?(?:sides|seams))"
_BUT_ONE = rf",? (?:but|except|save|bar)(?: for)? )the {_SIDE}"
_UNSEEN = r"(?:one|side|part) (?:(?:that )?(?:you|i|we) (?:can't|cannot|couldn't) (?:see|reach|get (?:at|to))|(?:(?:that's|that is|up) )?against the wall|(?:facing|on) the wall)"
_BEGINS = r"(?:^|(?<=[.;!?] ))"
_ONE = r"(?:the|my) only (?:one|piece)(?: of (?:them|those|these|the (?:two|three|four|five|lot|bunch)))?"


def _only_one(done: str, said: str, cues: tuple[str, ...]) -> tuple[Plainer, ...]:
    """ "The only one with tape on is 6", "6 is the only one with tape on": it alone."""
    has = rf"(?: (?:so far|yet|now|already))?(?: (?:that's|that is|that has been|that's been|that got|that has|that's got|that i|i|i've|with|which is|to get|having))*(?: (?:any|the|its|some))? {said}(?: (?:so far|yet|now|already|today))*"
    cues_beside = ("only one", "only piece")
    lead, ends = r"(?P<x>(?:and |but |so |well,? )?", r")(?=[.,;!]|$)"
    named, bare = rf"(?P<n>(?:{KIND} )?(?:number )?{NUMBER})", rf"(?:{KIND} )?(?:number )?(?P<n>{NUMBER})"
    return tuple(
        Plainer(cues, begins + lead + said_so + ends, (("x", rf"only \g<n> is {done}"),), beside=cues_beside)
        for begins, piece in (("^", named), (r"(?<=[.;!?] )", bare))  # where others were named before it, its kind was too
        for said_so in (rf"{_ONE}{has}(?: is|'s|:|,|, that's| was| would be)+ {piece}", rf"{piece}(?: is|'s| was) {_ONE}{has}")
    )


ENGLISH_COMPLAINED_PLAINLY = (
    # --- a complaint of the staples of a piece says that something is the matter, and no more
    Plainer(("staple", "stapling", " tape", " taping"), rf"{_BEGINS}(?P<x>(?P<a>{_TELLS}{_WRONG} {_SOME}{_THING}) (?:on|in|of|at) (?P<p>{_NAMED})){_ENDS}", (("x", r"\g<p>, \g<a>"),)),
    Plainer(("staple", "stapling", "tape", "taping"), rf"{_BEGINS}(?P<x>(?P<a>{_SOME}{_THING}) (?:on|in|of) (?P<p>{_NAMED})(?P<b> (?:is|are|was|were|look|looks|looked|came out|turned out|'s) {_POOR})){_ENDS}", (("x", r"\g<p>, \g<a>\g<b>"),)),
    Plainer(("staple", "stapling", " tape", " taping"), rf"{_BEGINS}(?P<x>(?P<a>{_TELLS}{_WRONG} {_SOME}{_THING}) (?:on|in|of|at) (?P<p>\d{{1,3}})){_ENDS}", (("x", r"number \g<p>, \g<a>"),)),
    Plainer(("staple", "stapling", "tape", "taping"), rf"{_BEGINS}(?P<x>(?P<a>{_SOME}{_THING}) (?:on|in|of) (?P<p>\d{{1,3}})(?P<b> (?:is|are|was|were|look|looks|looked|came out|turned out|'s) {_POOR})){_ENDS}", (("x", r"number \g<p>, \g<a>\g<b>"),)),
    # --- of two things each is on its own piece
    Plainer(("staples on", "tape on", "staples in"), rf"{_BEGINS}(?P<x>(?P<a>staples|tape) (?:on|in) (?P<p>{_NAMED}),? (?:and )?(?P<b>staples|tape) (?:on|in) (?P<q>{_NAMED}))(?=[.;!]|$)", (("x", r"\g<p> has \g<a>, \g<q> has \g<b>"),)),
    # --- every side but one, whichever way the sides are counted
    Plainer((" but ", " except ", " save ", " bar "), rf"{_EVERY_SIDE} (?:of|on) (?P<n>(?:{KIND} )?(?:number )?{NUMBER}){_BUT_ONE}(?P<z>)(?! (?:of|on|where))(?=[ .,;!]|$)", (("x", "all four sides but "), ("z", r" of \g<n>"))),
    Plainer((" but ", " except ", " save ", " bar "), rf"{_EVERY_SIDE}{_BUT_ONE}(?=[ .,;!]|$)", (("x", "all four sides but "),)),
    Plainer((" but ", " except ", " save ", " bar "), rf"{_EVERY_SIDE},? (?:but|except|save|bar)(?: for)? the {_UNSEEN})(?=[ .,;!]|$)", (("x", "all four sides but the back"),)),
    # --- it alone
    *_only_one("taped", r"(?:taped|tape(?: on(?: it)?)?)", (" tape",)),
    *_only_one("stapled", r"(?:stapled|staples(?: in(?: it)?| on(?: it)?)?)", (" staple",)),
    *_only_one("rubbed", r"(?:rubbed(?: down| out)?)", (" rubbed",)),
    # --- another man's piece, and his own behind it
    Plainer(
        (" only did ", " just did ", " i did "),
        rf"{_BEGINS}(?!(?:i|we|and|then|but|so|it|they) )[a-z]+ (?:did|taped|stapled|rubbed(?: down)?|made|built|wrapped) (?P<p>)(?=\d)\d{{1,3}}(?P<x>(?: ?(?:,|\.\.\.|\.|;|…)| and|, and| but|, but)? i (?:(?:only|just) )*did )(?=\d{{1,3}}(?:[.,;!]|$))",
        (("p", "number "), ("x", ", I did number ")),
    ),
)
