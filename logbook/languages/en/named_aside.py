"""English that names the piece by the way: in a question he answers, in what was to be said of it, behind "the one we talked about", as the place that is over it.

Regular expressions over lower-case letters, as in `plainer.py`: each is read with the name said plainly.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT
from logbook.languages.plainer import Plainer

_KIND = rf"(?:{KIND}|straight)"
_N = r"\d{2,4}(?![\w'/.-]\w)(?! ?(?:inch|inches|by|feet|foot|degrees|percent|cfm|pounds|minutes|dollars|of)(?![\w']))"
_WAIT = r"(?:hang on|hold on|wait(?: a (?:minute|second))?|no|sorry|actually|hold it|scratch that|then i)"
_YES_NO = r"(?:yes|yeah|yep|yup|no|nope|nah|not yet|it is|it was|it isn't|it's not|i did|i didn't|they are|they aren't|almost|sure|of course|none|some|one)(?![\w'])"
_ASKS = r"(?:so |and |okay,? )*(?:is|are|was|were|did|does|do|has|have|any|how|what|which|where)(?![\w'])"
_TWO_ASKED = rf"(?<![\w'])(?:on|of|for|in|at|number|{_KIND}) (\d{{2,4}})(?!\d).*(?<![\w'])(?:on|of|for|in|at|number|and|is|over|{_KIND}) (?!\1(?!\d))\d{{2,4}}(?![\d'/.-])(?! ?(?:inch|inches|by|feet|foot|degrees|percent|cfm|pounds|minutes))"
_FIGURE = r"\d+(?:\.\d+)?(?:(?: ?cfm| cubic feet(?: a| per)? ?(?:minute)?))?"

ENGLISH_NAMED_ASIDE = (
    # --- "sleeve 134 for the fire damper": no second piece
    Plainer(("sleeve",), rf"(?<!damper )(?<![\w'])(?P<x>sleeve (?:number |no\.? )?(?P<n>\d{{1,4}}|{SAID_COUNT}),? (?:is )?(?:for|of|around|with) (?:the|a|an|my|our|that|its) (?:\w+ )?damper)(?![\w'])(?!s)", (("x", r"damper sleeve \g<n>"),)),
    Plainer((" duct ",), rf"(?<![\w'])(?:branch|straight|elbow|tee|offset|transition|end cap)(?P<x> duct)(?= (?:number )?{_N})", (("x", ""),)),
    # --- "I was going to say 35 is finished but hang on, …"
    Plainer((" say ", " said ", " thought "), rf"(?P<x>i (?:was (?:going to|gonna|about to) say|wanted to say|almost said|nearly said|thought)(?: that)? (?:the )?)(?:{_KIND} )?(?P<n>{_N})(?P<y>(?: is|'s| was)(?: all| totally)* (?:finished|done|complete|ready|good|all set|okay),?(?: but| and)?,? {_WAIT}),? ", (("x", "number "), ("y", ","))),
    # --- "the tee we talked about, 36?"
    Plainer((" talked ", " talking ", " spoke ", " told you", " asked ", " mentioned ", " showed "), rf"(?P<x>(?:(?:you )?(?:know|remember) )?the )(?:{_KIND})(?P<y> (?:that )?(?:i|we|you|he)(?: were| was|'ve| had)? (?:talked|talking|spoke|told (?:you|him|them)|asked|mentioned|showed (?:you|him))(?: me| you| him)?(?: about)?(?: (?:yesterday|earlier|this morning|before|monday|friday))?,? ?(?:number )?,?) ?(?P<n>{_N})(?P<z>[?,])", (("x", ""), ("y", ""), ("z", ","))),
    # --- "Is the male end on 310 clean? Yes, …"
    Plainer(("? ",), rf"^(?P<w>){_ASKS}[^.?!]{{3,60}}?(?P<x> (?:on|of|for|in|at) (?P<n>{_N}))(?: [^.?!,]{{1,30}})?\? (?={_YES_NO})", (("w", r"number \g<n>. "), ("x", "")), unless=_TWO_ASKED + rf"|(?<![\w'])(?:{_KIND}s?,? (?:number )?\d|his|her|their|your|you|they|he)(?![\w'])"),
    # --- "Is 320 ready? Yes, …", "321? No, …"
    Plainer(("? ",), rf"(?:^|(?<=[.?!] ))(?P<x>(?:and |so |okay,? )*(?:is|was|are we done with|done with) )(?P<n>{_N})(?P<y>(?: (?:all )?(?:ready|done|finished|good|complete|closed|okay|set))?(?: (?:yet|now|too|to go))?\?) (?={_YES_NO})", (("x", "number "), ("y", "."))),
    Plainer(("? ",), rf"(?<=[.?!] )(?P<x>(?:and |what about |how about |okay )*)(?P<n>{_N})(?P<y>\?) (?={_YES_NO})", (("x", "number "), ("y", ".")), unless=rf"(?<![\w'])(?:{_KIND},? (?:number )?)\d"),
    # --- "Can we close the ceiling? Over 320, yes, …"
    Plainer(("over ",), rf"(?:^|(?<=[.?!;] ))(?P<x>(?:and |but )?over )(?={_N},)", (("x", "number "),)),
    # --- "the connection of 153 with the fan"
    Plainer(("connection ",), rf"(?P<x>(?:the |in the |on the )?connection (?:of|on|from|at) (?:the )?)(?P<n>{_N}) (?=(?:with|to|and) (?:the|a) (?:fan|unit|air handler|machine|blower|coil|equipment|furnace|metal))", (("x", "number "), ("n", r"\g<n>, the connection"))),
    # --- what a test was allowed is no measure of it, and what it came to is no piece
    Plainer(("allow", "permitted"), rf"(?P<x>(?:the )?(?:(?:allowed|allowable|permitted)(?: leakage| leak| rate| flow)?|allowance)(?: (?:is|was|we had|for it|for that one|for it is|for it was))*:? {_FIGURE})(?=[,.;])", (("x", "it was tested"),), beside=("leak", "test")),
    Plainer((" got ", " came ", " read ", " measured ", " tested ", " at "), r"(?<![\w'])(?:we|it|i|that)(?:'re)? (?:got|came in at|came out at|came to|came out|came in|measured|read|tested at|got to)(?: about| around)? \d+(?:\.\d+)?(?P<x>)(?=[,.;]|$| and| so)", (("x", " cfm"),), beside=("leak test", "leakage", "allowance", "leak tested")),
    Plainer((" over", " under"), r"(?<=[.?!,;] )(?P<x>[a-z-]+|\d+)(?P<y> (?:over|under))(?=[.,;])", (("x", "a little"), ("y", " more")), beside=("leak test", "leakage", "allowance", "leak tested")),
    # --- "the 138 and the 139, two straights"
    Plainer((" and the ",), r"(?:^|(?<=[.!?] ))(?P<x>the )\d{2,4}(?P<y> and the )\d{2,4}(?=[,:]| are| have)", (("x", ""), ("y", " and "))),
    Plainer((" the same",), rf"\d{{2,4}},? (?:they are |are )?(?:two|both) {_KIND}s?(?P<x>,? (?:are )?(?:just )?the same(?: size| kind| drawing)?)(?=\.)", (("x", ""),)),
)
