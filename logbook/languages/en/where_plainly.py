"""English that tells where a piece is and what it is tied to, and the plain words that it is read as: "both up" are both hung."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.plainer import Plainer

_GOES = r"(?:is|it's|she's|sits|sitting|lies|laid|laying|lays|goes|going|runs|running|run|ran|went|ends up|comes|came|put|lives|routed|heads|heading|gets|sat|stuck|mounted|hangs|hanging|installed|set)"
_ROOMS = r"(?:mechanical|electrical|boiler|fan|equipment|server|conference|break|bath|room|office|closet|shaft|corridor|door|kitchen|elevator|hall|hallway|lobby|suite|unit \d|apartment|classroom|lab|chase|gym|stair)"
_GROUND = r"(?:ground|dirt|concrete|slab|pour|earth)"
_A_WAY = r"step|groove|lip|clinch|legs|staples?(?! )|female|male|inside|radius|dimension|measur"

ENGLISH_WHERE_PLAINLY = (
    # --- outdoors, and in the ground
    Plainer(
        (" outside",),
        rf"(?<![\w'])(?:{_GOES}|{KIND} (?:number )?{NUMBER}'s)(?: (?:it|them|out|up|right|all|clear|exposed|uncovered|hung|there|on))* (?P<x>outside|out of doors)(?! (?:of )?(?:the )?(?:\w+ )?{_ROOMS})(?=[.,;]|$| (?:for|about|maybe|like|to the (?:unit|condenser|chiller|rooftop|building|other)|between|near|from|on the|along|over|up|and|then|with|where|in the|at the))",
        (("x", "outdoors"),),
        unless=_A_WAY,
    ),
    Plainer(
        (" outside", " out of doors"),
        rf"(?:put|hung|hang|ran|mounted|set|installed|placed|stuck) (?:the )?(?:{KIND} )?(?:number )?{NUMBER}(?: up| out)* (?P<x>outside|out of doors)(?! (?:of )?(?:the )?(?:\w+ )?{_ROOMS})(?=[.,;]|$| (?:for|on the|along|over|and|where|in the|by the|behind))",
        (("x", "outdoors"),),
        unless=_A_WAY,
    ),
    Plainer((" bury ",), rf"(?:had me|made me|had us|made us|had to)(?P<x> bury) (?:{KIND} )?(?:number )?{NUMBER}(?P<y>)(?=[.,;]|$| and | so )", (("x", " put"), ("y", " in the ground"))),
    # --- what sits in a piece by its number: "the takeoff of 128"
    Plainer((" of ",), r"(?:collar|take-?off|spin-?in|starting collar|round tap)(?P<x> (?:of|on) (?:number |piece )?)(?=\d{2,3}(?:[.,;]| (?:are|is|aren't|isn't|have|has|were|was|still)(?![\w'])))", (("x", " "),), beside=("tabs",)),
    Plainer(("the ground", "the dirt", "the concrete", "the slab", "the pour", "the earth"), rf"(?<![\w'])(?:is|it's|sits|sitting|lies|laid|laying|lays|run|runs|running|went|put|ends up|gets|set)(?: (?:it|right|all|half|partly))*(?P<x>)(?: (?:down|out))?(?: (?:in|into|inside)) the {_GROUND}(?=[.,;]|$| (?:and|under|by|next|along|so|then|they|for|with|about|between|outside|out))", (("x", ","),)),
    Plainer(("in the open", "to the sky", "in the elements", "to the elements", "no roof"), r"(?P<x>(?:out in the open(?! (?:office|ceiling|area|room|floor))|(?:open|exposed) to the (?:sky|elements)|out in the elements))(?=[.,;]|$| )", (("x", "outdoors"),), unless=r"ceiling|office"),
    Plainer((" passes ",), rf"{KIND} (?:number )?{NUMBER} (?P<x>passes) (?=(?:under|through|over|behind|above|below|across|beneath)\b)", (("x", "goes"),)),
    # --- what hangs by itself
    Plainer((", own ", ". own ", " w/ own "), r"(?:damper|coil|pounds?|lbs?|heater|humidifier|silencer)\b[^?!]{0,40}?[,.] (?P<x>own) (?=(?:rods|hangers|straps|supports?|strut|wires?|hanger|trapeze|unistrut|all-thread|threaded)\b)", (("x", "on its own"),)),
    # --- up, both of them
    Plainer(("both up", "all up", "all three up"), r"(?:both|all(?: (?:two|three|four|five))?) (?P<x>up)(?=[.,;]|$| and (?:taped|tied|joined|sealed|closed|rubbed|stapled))", (("x", "hung"),)),
    Plainer(("'s up",), rf"(?:{KIND} (?:number )?{NUMBER})(?P<x>'s up)(?=[.,;]|$| (?:and|now|there|already|too)\b)", (("x", " is hung"),)),
    Plainer(("so is", "so's"), rf"(?P<w>is up|is hung|'s up|is taped|is rubbed)(?:[^.?!]{{0,30}}) and (?P<x>so is |so's )(?P<n>(?:the )?{KIND} (?:number )?{NUMBER})(?P<y>)(?=[.,;]|$)", (("x", ""), ("y", r" \g<w>"))),
    # --- tied to this one, no, to that one
    Plainer((" to ", " into "), rf"(?:tied|joined|connected|hooked|married|taped|fastened|sealed)(?: (?:in|up|it))* (?:to|into) (?:the |number |{KIND} )*{NUMBER},? (?:no|wait|sorry|wait no|no wait|I mean|i mean|correction),? (?P<x>(?:to|into) )(?=(?:number |{KIND} )*{NUMBER})", (("x", ""),)),
    # --- told by who learned the language late
    Plainer(("am hang", "i hang ", "we hang ", "are hang"), rf"(?:(?<=[.!?,] )|(?<=\d )|^)(?P<x>(?:(?:i am|i'm|we are|we're) hang|(?:i|we) (?:already )?hang) )(?:the |this )?(?={KIND}|it\b(?! up)|him\b)", (("x", "I hung "),), unless=r"tomorrow|later|monday|next week|every day|always"),
    Plainer(("connect with", "connect it with", "connected with", "connect to", "join with", "join it with"), rf"(?:(?<=[.!?,] )|(?<= and )|^)(?P<x>(?:i|we) (?:also |then |already )?(?:connect|join|attach|tie)(?:ed)?(?: (?:it|him|this))? (?:with|to) )(?:the |number |{KIND} )*(?={NUMBER})", (("x", "connected to "),), unless=r"tomorrow|later|monday|next week|every day|always"),
)
