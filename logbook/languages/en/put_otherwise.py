"""English of what was meant otherwise a moment before, or is told by another: a measure that was read off the wrong sheet, the room there was, staples that come tomorrow, another trade's damper; and the plain words for it."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_NUMBER
from logbook.languages.plainer import Plainer

_N = rf"{SAID_NUMBER}(?:[- ](?:inch(?:es)?|feet|foot|ft))?"
_SHEET = r"(?:drawing|print|plan|plans|sheet|detail|submittal|shop drawing)"
_HOLD = r"(?:hold on|wait|hang on|scratch that|no wait|correction|sorry|strike that)"
_TRADE = r"(?:sheet metal|tin|controls?|fire alarm|mechanical|other|plumbing|pipe|equipment)"
_DAY = r"(?:tomorrow|tonight|next week|in the morning|later|(?:on |by )?(?:monday|tuesday|wednesday|thursday|friday))"
_SIZE = r"(?:\d+|\w+(?: \w+)?) (?:by|x) (?:\d+|\w+)"

ENGLISH_PUT_OTHERWISE = (
    # what there was room for, and what was drawn and done
    Plainer((" went with ", " stuck to ", " stuck with ", " followed ", " kept to "), rf"(?:^|(?<=[.;!, ]))(?P<x>(?:the |my |our )?{_SHEET} (?:says|shows|wants|has|calls for|said|had|called for|showed) )(?:hangers|straps|staples|screws) (?:every|at|on) {_N}(?P<y>[,.]? (?:(?:i|we) (?:had|have) (?:the |plenty of )?room (?:for|to go|to run|to hang)(?: them)?(?: at)? (?:every|each|at) {_N},? )?(?:and |so |but )*(?:i|we) (?:went with|stuck to|stuck with|followed|kept to) (?:the {_SHEET}|it|that))(?=[.;!]|$)", (("x", ""), ("y", ""))),
    Plainer((" room ",), rf"(?P<x>(?:i|we) (?:had|have) (?:the |plenty of )?room (?:for|to go|to run|to hang)(?: them)?(?: at)? (?:every|each|at) {_N},? but )", (("x", ""),)),
    # a measure, and the one that is meant
    Plainer(("hold on", "wait", "hang on", "scratch that", "correction", "sorry", "strike that"), rf"(?P<t>screws|staples|hangers|tabs) (?:are )?(?:on|at|every) (?P<x>{_N}(?:[- ]?inch)?(?: centers?| on center)?,? (?:no,? )?{_HOLD},(?: no,)?(?: i(?:'m| was) (?:reading|looking at|on) [^.,;?!]*,)? (?:the )?(?P=t) (?:are |is )?(?:on|at|every) )(?={_N})", (("x", ""),)),
    Plainer(("outlet", "inlet", "branch"), rf"(?:outlet|inlet|branch)(?: (?:on|of) (?:the )?{KIND} (?:number )?\w+)?(?P<x>(?:'s| is| was)?(?: not|n't) {_SIZE}(?: inch(?:es)?)?,? (?:it's|it is|but|make it|that's) )(?={_SIZE})", (("x", " is "),)),
    # staples that come tomorrow
    Plainer((" staples",), rf"(?P<x>(?:the |my |our )?(?:supply house|supplier|shop|office|vendor|warehouse|boss|store|distributor|lead|foreman) (?:is|are|'s|'ll be|will be|was going to be) (?:sending|shipping|bringing|dropping off|getting|ordering)(?: over| us| me| out| up| in)* (?!{KIND})[^.;!?,]*?staples {_DAY})(?=[.;!]|, (?:but )?(?:today|i |we ))", (("x", ""),)),
    Plainer((" together with ",), r"(?P<x>went together with (?:the |my )?(?P<m>half|nine[- ]sixteenths?|9/16|1/2|three[- ]eighths|3/8|five[- ]eighths|5/8)(?:[- ]inch)?(?: staples| ones)?)(?=[,.;!]|$| and)", (("x", r"was stapled with \g<m> inch staples"),), beside=("staple", "clinch")),
    # tabs, and no staples
    Plainer((" tab it", " tab that", " tab them"), r"(?P<x>did (?:i|we) (?:cross[- ]?)?tab (?:it|that|them|her)\? (?:(?:yes|yeah|yep|yup|sure|you bet|of course),? )*(?:i|we) (?:sure |certainly )*did)(?=[.,:;!]|$| with\b)", (("x", "cross tabbed it"),), unless=r"\bcollars?\b|stub"),
    Plainer((" tab it", " tab that", " tab them"), r"(?P<x>did (?:i|we) (?:cross[- ]?)?tab (?:it|that|them|her)\? (?:(?:no|nope|nah),? )*(?:i|we) (?:didn't|did not))", (("x", "no cross tabs"),), unless=r"\bcollars?\b|stub"),
    Plainer((" inchers", "-inchers"), rf"{SAID_NUMBER}(?P<x>[- ]inchers)(?= (?:at|every|on|spaced)(?![\w']))", (("x", " inches long,"),), beside=(" tab", "-tab")),
    # what hangs on a sleeve
    Plainer((" sleeve ",), rf"(?P<x>(?:the |some |those |them )?{_TRADE} (?:guys?|crew|fellas|fellows|boys|man|men|hands|techs?|contractor|sub|outfit) (?:went and |just |have |had )*(?:hung|hooked|mounted|clamped|set) )(?:their|his|an?|the|that) (?:\w+ )?(?:damper|heater|coil|actuator)(?P<y>)(?: right| straight)? (?:off|on|onto|to|from)(?: of)? (?:my|our|this) [^.;?!]*?(?P<z>sleeve)(?= (?:number )?(?:\d|\w+,))", (("x", ""), ("y", " hung"), ("z", "damper sleeve")), unless=r"damper sleeve"),
    Plainer((" riding ", " hanging ", " resting ", " bearing "), r"(?P<x>,? (?:and |so )?(?:nothing|none of it|no weight)(?:'s| is) (?:riding|hanging|resting|bearing|sitting) on (?:the |my )?(?:board|duct|ductboard|duct board))(?=[.;,!]|$)", (("x", ""),), beside=("own rod", "own hanger", "own strap", "own support", "own thread")),
    Plainer(("how many times ",), r"(?:^|(?<=[.!?;] ))(?P<x>how many times (?:do|have|must|am) i (?:have to|got to|gotta|need to|going to) (?:say|tell|repeat)(?: (?:it|this|that|you|them|him|people))*,? )(?=[^?.!;]*(?:[.!;]|$))", (("x", ""),)),
    # the wall's thermometer, beside what the board read
    Plainer((" wall ", " wall,", " wall."), rf"(?P<x>(?:the )?(?:thermometer|gauge|thermostat) on the (?:wall|post|column) (?:says|said|reads|read|shows|showed|had) (?:it's |it was )?{SAID_NUMBER}(?: degrees)?[,.;] (?:(?:and |but )?i (?:couldn't|don't|do not|could not) care(?: less)? (?:about|for|what) the wall(?: says| reads)?[,.;] )?(?:but |and )?)(?=(?:the )?(?:board|foil|facing|surface|skin) [^.?!]*?(?:read|reads|was|is|said|says|showed|measured) (?:at )?{SAID_NUMBER}(?![\w']))", (("x", ""),)),
    # what was kept from staying open
    Plainer(("that's why ", "that is why "), rf"(?P<x>if (?:i|we)(?:'d| had) left )(?:{KIND} )(?:number )?(?:\d+\w?|\w+)(?P<y> (?:untaped|unstapled|open|undone)[^.;!?]*? (?:would|could|might)(?:'ve| have)[^.;!?,]*,? (?:and |so )*that(?:'s| is) why )(?=(?:i|we) (?!didn't|never|couldn't|had|will|need))", (("x", ""), ("y", ": "))),
    Plainer((" only number ",), rf"(?P<x>of (?:the|my|those|all the) (?:two|three|four|five|six|\d) )(?:cap|end cap|elbow|tee|straight|collar|transition|reducer|offset|plenum)(?P<y>s,? only number )(?=\d+|{SAID_NUMBER})", (("x", ""), ("y", " "))),
    # a cap that a test found loose is no piece of its own
    Plainer((" found ", " spotted ", " caught "), r"(?:before|after|until|till|when|once|then) (?:i|we) (?:found|caught|noticed|spotted|fixed)(?P<x> (?:the|a|that|one) (?:loose|open|missing|bad|leaky|leaking|blown)(?: end)? (?:cap|collar|door|access door|seam))(?! (?:number|on|at|\d))", (("x", " it"),), beside=("leak test", "cfm", "leakage")),
    # --- what nobody will find there
    Plainer(
        ("if you", "you can look", "good luck "),
        rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:if you(?:'re| are)? (?:go |ever |just )*(?:look|looking|hunt|hunting|search|searching|check|checking|reach|feel|feeling)(?: (?:around|in there|all day))? for )(?:the |any |a |its |some )?)(?P<t>tape|staples?|vanes?|tabs|flap)(?: (?:on|in|inside|at) (?:the )?(?:{KIND} |number )*\w+(?:-\w+)?)?(?P<y>,? (?:well,? )?you (?:won't|will not|ain't going to|aren't going to|'re not going to|'ll never|'ll not|will never|ain't gonna|aren't gonna)(?: (?:ever|really))* (?:find|see) (?:any|it|them|one|none|that|a thing|nothing|much))(?=[.,;!]|$| there| in there)",
        (("x", "there's no "), ("y", "")),
    ),
)
