"""English of what another asked and he answered, read as his own question and answer: "he asked was 88 taped, I told him no"; and of the least distance told by what no two have less of."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.en.measured import _M
from logbook.languages.plainer import Plainer

_WHO = r"(?:he|she|they|somebody|someone|(?:the |my |our )?(?:boss|lead|foreman|super|superintendent|inspector|gc|pm|old man|office|engineer|kid|helper|partner|other guy))"
_ASKED = rf"(?:{_WHO} (?:just |then |also )?(?:asked|asks|wanted to know|wants to know|was asking|hollered|called down|called up)(?: (?:me|us|about it))?,?(?: (?:if|whether))?)"
_ACT = r"(?:rubbed(?: down| out)?|taped|stapled|wiped(?: down)?|trimmed|vaned|clean|sealed|pre-?heated|warmed)"
_ALL = r"(?:(?: all)?(?: the way)? (?:around|round|over)| on all (?:four )?sides| (?:yet|already|too|first))?"
_PIECE = rf"(?:(?:the )?(?:{KIND} )?(?:number )?{NUMBER})"
_TOLD = r"(?:[.?,;!]|,? and|,? but)(?: (?:and|so|but|well))* (?:i|we)(?: (?:just|only))? (?:told (?:him|her|them)|said|answered|said to (?:him|her|them)|had to (?:say|tell (?:him|her|them))|go|went),?(?: that)? (?=(?:no|nope|not|yes|yeah|yep|it|the|all|both|three|two|one|only|just|everywhere|everything|i|we|she|sure|half)\b)"
_PART = r"(?:top|bottom|back|front|left|right|heel|throat|neck|flap|collar|underside|(?:top|bottom|back|front|left|right|far|near|long|short|throat|heel|last|other|blind|fourth) (?:side|seam|end|corner|edge|joint|cheek|one)|(?:side|seam|end|edge|joint) (?:by|at|near|against|behind|next to) the \w+)"
_NOT_THERE = rf"(?:on |along |at )?(?P<s>the {_PART}),? (?:no|isn't|is not|not|wasn't|ain't|hasn't been|didn't get it)(?P<e>(?: yet)?)(?=[,.;]| and | but |$)"

_CLOSE = rf"(?P<v>(?:{_M}|an?(?= (?:inch|foot)))(?: (?:and (?:a|three) (?:half|quarters?)))?(?: (?:inch(?:es)?|feet|foot|ft))?)"
_NO_TWO = r"(?:no two(?: of (?:the|my|its))?|not one pair of(?: the| my)?|no pair of(?: the| my)?|none of (?:the|my|its)|not any two(?: of the)?)"

ENGLISH_ASKED_OF_HIM = (
    # --- answered for one part of it
    *(
        Plainer(
            cues,
            rf"{asked}(?P<a>{_ACT}){_ALL}(?P<t>{told})(?P<y>(?:no,? |well,? |not quite,? )?(?:but )?{_NOT_THERE})",
            (("x", ""), ("c", ","), ("t", ", "), ("y", r"\g<s> isn't \g<a>\g<e>")),
            beside=beside,
        )
        for cues, asked, told, beside in (
            ((" asked", " asks", " to know", " asking", "hollered", "called down", "called up"), rf"(?P<x>{_ASKED} (?:was|is|did (?:i|we) (?:get|have))?)(?: )?{_PIECE}(?: (?:was|is|got|had been|been|is all|was all))*(?P<c>,?) ", _TOLD.replace("no|nope", "no|nope|on"), ("told ", " said", "answered", "had to ", " go", "went")),
            (("? ",), rf"{_PIECE}(?P<x>)(?P<c>,) (?:is it |was it |all )?", r"\? ", (" the ", " The ")),
        )
    ),
    Plainer(
        (" asked", " asks", " to know", " asking", "hollered", "called down", "called up"),
        rf"(?P<x>{_ASKED} (?:was|is|did (?:i|we) (?:get|have))?)(?: )?(?P<p>{_PIECE})(?: (?:was|is|got|had been|been|is all|was all))*(?P<c>,?) (?P<a>{_ACT}{_ALL})(?P<t>{_TOLD})",
        (("x", ""), ("c", ","), ("t", "? ")),
        beside=("told ", " said", "answered", "had to ", " go", "went"),
    ),
    Plainer(
        ("closer", "nearer", "less than", "under ", "more than", "farther", "further"),
        rf"(?P<x>{_NO_TWO} )(?P<n>hangers?|straps|staples?|screws?|cross tabs|tabs)(?: (?:on|in|under|of|along|for) {_PIECE})?(?P<y>(?: (?:is|are|was|were|sits?|hangs?|stand|stands|come|comes|go|goes|get|gets))*(?: (?:any|ever|set|spaced))*(?: (?:closer|nearer)(?: together| to each other)?(?: than)| less than| under| (?:more|farther|further|wider)(?: apart)? than)(?: about)? ){_CLOSE}(?P<z>(?: apart)?)(?=[.,;!]|$| and| but)",
        (("x", ""), ("y", " are "), ("z", " apart")),
    ),
)
