"""English said in one breath, with "only" and "on the back" where a sentence would end: "it's taped only on the back I forgot it"; and the plain words for it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_COUNT = r"(?:one|two|three|four|five|six|\d+)(?: (?:and )?(?:a half|a quarter|\d/\d)|[ -]1/2|\.5|\.25)?(?:[- ]?(?:inch(?:es)?|in\b))?"
_SIDE = r"(?:(?:top|bottom|back|front|left|right|last|other|far|near|one|wall|short|long|fourth|under)(?: side)?|underside|heel|throat|seam)"
_DONE = r"(?:taped|stapled|rubbed|rubbed down|done|good|closed|sealed|hung|up|finished)"
_ENDS = r"(?=[.,;!]|$| and| so| because| cause| cuz| but)"
_BOSS = r"(?:they|he|she|(?:the |my |our )?(?:boss|gc|lead|super|foreman|inspector|office|engineer|customer|guys?))"
_LATER = r"(?:after|when|once|later|tomorrow|tonight|next|first thing|monday|tuesday|wednesday|thursday|friday|as soon|before|in the morning|this afternoon)"
_POOR = r"(?:masking|duct|cloth|blue|painter's|gr[ae]y|scotch|packing)"
_GOOD = r"(?:real|listed|foil|good|right|ul|181|heat|pressure|regular|proper)"

ENGLISH_ONE_BREATH = (
    # --- what is excepted stands behind "only", or behind "on the back"
    Plainer((" on the ",), rf"(?P<w>but|only|and then|and|then|except|though)?(?P<x>,? on) the {_SIDE} (?:i|we) (?:just |kinda |kind of |sorta )*(?:forgot|didn't|missed|skipped|never did|never got to)(?P<y> (?:it|that|do it|get it|get to it|to|to do it))?{_ENDS}", (("w", "but"), ("x", ""), ("y", "")), beside=(" forgot", " didn't", " missed", " skipped", " never ")),
    Plainer((" on the ",), rf"(?:but|only|and then|and|then|though)(?P<x> on) the {_SIDE} (?P<y>it's|it is|it ain't|it isn't)(?P<z> not)?{_ENDS}", (("x", ""), ("y", "is"), ("z", " not")), beside=(" not", " isn't", " ain't")),
    Plainer((" only on ", " only i ", " only we ", " only the "), rf"{_DONE}(?P<x>,? only) (?=on (?:(?:piece|number|the|straight|elbow|tee) )?[\w-]+(?: [\w-]+)? (?:i|it|it's|the|we|there|there's|they)\b|(?:i|we) |the (?:tape|staples?|flap|seam|vanes?|bottom|top|back) (?:is|was|isn't|ain't|aren't|has|got|wasn't)\b)", (("x", ", but"),)),
    # --- what another wants done later is still to do
    Plainer((" want it ", " wants it ", " want this ", " wants that ", " wants this ", " want that "), rf"(?P<x>{_BOSS} wants? (?:it|this one|that one|that|this) )(?:taped|stapled|rubbed|trimmed|wiped)(?: down| up| in)? {_LATER}\b", (("x", "it still needs to be "),)),
    # --- what he denies to have left open, and tells to be done
    Plainer((" leave it ", " leave that ", " left it "), r"(?P<x>(?:i|we) (?:didn't|did not|never) (?:leave|left) (?:it|that|that one|her|this one) (?:open|untaped|unstapled|bare|loose|like that)(?:,? (?:and|so|cause|because))?,? )(?=(?:i|we|it's|it was|it's been|it is) )", (("x", ""),)),
    # --- tape that held it till the right one went over
    Plainer((" to hold ", " holding ", " that held "), rf"(?P<x>(?:(?:i|we) )?(?:(?:used|put|had|with|some|a little|a piece of|just|only) )*{_POOR} tape(?: on)?(?: first)?,?(?: just)? (?:to hold|holding|that held) (?:it|the flap|that|them|the seam)(?: for a (?:minute|sec|second|bit)| down| shut| together| closed)*,? (?:and then|and|then|till|until|while) )(?=(?:i |we )?(?:[\w']+ ){{0,5}}?(?:the |with )*{_GOOD}(?: tape| stuff| one)?(?![\w']))", (("x", ""),)),
    # --- a measure of the tape that it is set against, and what tape there still was
    Plainer((" not the ", " not 2", " not 3", " not two", " not three", ", not "), rf"(?:tape|staples?)(?: is| are)?(?: {_COUNT})?(?P<x>,? not) (?=(?:the |my )?(?:{_COUNT}|wide|narrow|regular|long|short|half inch)(?: (?:ones?|kind|roll|stuff|tape))?(?:[.,;!]|$| and| so| because| cause))", (("x", " instead of"),)),
    Plainer((" tape left",), rf"(?:only|just|all (?:i|we) (?:had|got) (?:was|is)|all there was was|all there was)(?: (?:the|some|a little|had|got|have))*(?: {_POOR}){{1,2}} tape(?P<x> left(?: over)?(?: (?:on|in|at) (?:the|my|our) (?:\w+ )?(?:truck|van|box|bag|shop|lift|cart|site|job))?)", (("x", ""),)),
)  # fmt: skip
