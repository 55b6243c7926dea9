"""English that sets a part apart and says right behind that it was done since: "taped save the back, and the back's got its tape too now" is taped."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_PART = r"(?:top|bottom|back|front|left|right|heel|throat|neck|end|male end|female end|far end|near end|underside|flap|collar|branch|corner|(?:top|bottom|back|front|left|right|far|near|long|short|last|fourth|other|blind|inside|outside) (?:side|seam|end|corner|edge|joint|cheek|one)|last (?:foot|few inches|six inches|bit|two feet))"
_SINCE = r"(?:,? (?:too|now|since then|since|as well|also|after (?:lunch|break|that|dinner|coffee)|afterwards|after|today|later on|later|this morning|this afternoon|yesterday|last night|last thing|just now|by now|in the end|again))+"
_BE = r"(?:'s|'ve| is| has| was| got| had| have)"
_JOINT = r"(?:[,;.]| -| and| but|, and|, but|; and|\. and|, which|, though)(?: (?:and|but|then|now|so))?"


def _cured(act: str, done: str, thing: str) -> Plainer:
    did = rf"(?:did|got|finished|done|caught|hit|{done})"
    cured = (
        rf"(?:the |that )?(?P=p){_BE}(?: (?:been|all|got|it's|just|got its|has its))*(?: (?:done|finished|{done}|(?:its|some|the) {thing}|it))(?: (?:down|up|on it))?{_SINCE}"
        rf"|(?:the |that |that one |it )?(?:(?P=p)|that|that one|which),? (?:i|we)(?:'ve)? (?:just |then |already )?{did}(?: (?:it|that))?{_SINCE}"
        rf"|(?:i|we)(?:'ve| have)?(?: (?:just|then|already|since|went back and|came back and))* {did} (?:the |that )?(?P=p){_SINCE}"
    )
    return Plainer(
        ("except", "save ", "but ", " bar ", "apart from", "aside from", "other than"),
        rf"(?<!not )(?<!n't )(?<!never )(?<!be ){act}(?:\b[^.?!;]{{0,50}}?)?(?P<x>(?:,)?(?: (?:on |at )?(?:all|everything|everywhere|all over|all around|every side))? (?:except(?: for)?|save(?: for)?|but(?: for)?|bar|apart from|aside from|other than)(?: (?:on|at|along|in))? (?:the|its|my) (?P<p>{_PART}){_JOINT} (?:{cured}))(?![\w'])",
        (("x", ""),),
        beside=("now", "since", " too", "as well", "also", "after", "today", "later", "this ", "yesterday", "last ", "in the end", "again"),
    )


ENGLISH_CURED_PLAINLY = (
    _cured("taped", "taped|sealed", "tape"),
    _cured("stapled", "stapled", "staples"),
    _cured("rubbed", "rubbed", "rub"),
)
