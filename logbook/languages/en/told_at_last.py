"""English of a piece that is told by its number alone at the end of what is told of it: "waiting on nothing but a rub down is one eleven"."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.told_at_last import ToldAtLast

_DONE = r"(?:un)?(?:re)?(?:stapled|taped|closed|sealed|rubbed|fastened|finished|done|hung|patched|mended|wiped|trimmed|cut|made|built|folded|installed|put|joined|tied)"
_STATE = r"(?:waiting|short|shy|missing|lacking|wanting|needing|started|begun|stuck|stopped|torn|ripped|crushed|dented|wet|bare|open|ready|punctured|delaminated|soaked|dirty|dusty|outdoors|outside|buried|good|clean)"
_FRONT = rf"(?:{_DONE}|{_STATE}|left (?:for|to|out|off|open|undone|bare|untaped|unstapled|without|with|behind|until|till|alone|standing|like)|(?:up|down|out) (?:in|on|and|there|of|to|with|by)|not (?:yet )?{_DONE}|(?:yet|still|already|almost|nearly|only half|half) (?:to be )?(?:{_DONE}|{_STATE})|with|without)"
_IS = r"(?:is|was|stands|stood|sits|sat|remains|remained|hangs|hung|came|comes|stays|stayed)"
_BEGINS = r"(?:^|(?<=[.;!?,] ))(?:(?:okay|ok|so|well|and|now|yeah|um|uh),? )*"
_ON = r"(?:on|onto|for|with|of|about)"
_AT = r"(?:at|to|in|into|through|thru|around|over|off|from|inside|against)"
_WORDS = r"(?: (?!(?:by|inch|inches)\b)[a-z'-]+)"
_A_KIND = rf"(?:an? |the |that |it's an? |that's an? )?(?:\w+ )?{KIND}(?![\w'])"
_NOUN = (
    r"(?:length|spacing|width|legs?|height|thickness|size|gap|distance|throat|radius|offset|run|floor|room|slope|turn|angle|inlet|outlet|opening|branch|sides?|top|bottom|left|right|front|back|board|pressure|static|temperature|temp|air|gauge|count|total|depth|hangers?"
    r"|screws?|washers?|staples?|tabs?|tape|strips?|flap|number|piece|fitting|end|ends|heel|cheek|tap|collar|it|this|that|there|here|he|she|what|which|who|mine|one|day|time|each|both|piece|weight|damper|diameter|round|straps?|rods?|long|wide|high|apart|class|age)"
)
_WITHIN = r"(?:with|without|in|by|for|from|no|of|on|nothing but|as|to) (?:an? |the |my |its )?(?:(?!(?:an?|the|my|its) )[a-z'-]+ ){0,3}"

ENGLISH_TOLD_AT_LAST = ToldAtLast(
    leads=frozenset("on onto for with of about at to in into through thru around over off from inside against is was stands stood sits sat remains remained hangs hung came comes stays stayed what how where 's by".split()),
    slots=(
        (rf"\b(?:only|last|one|first|main|biggest|final|single) (?:other )?(?:thing|job|step|item|bit|work)s?{_WORDS}{{0,3}} {_ON}", r"(?:is|was|'s|are|were|would)\b", 1),  # "only thing left on seven is the vanes"
        (rf"\b(?:only|last|one|first|main|biggest|final|single) (?:other )?(?:thing|job|step|item|bit|work)s?{_WORDS}{{0,3}} {_AT}", r"(?:is|was|'s|are|were|would)\b", 13),
        (rf"\b(?:what|where|how|why|which){_WORDS}{{1,5}} {_ON}", "", 5),  # "four inches is where the staples got put on fifty"
        (rf"\b(?:what|where|how|why|which){_WORDS}{{1,5}} {_AT}", "", 13),
        (r"\b(?:is|was|'s) (?:what|how|where)", r"(?:carries|carried|sees|saw|has|had|got|gets|takes|took|needs|needed|wants|lacks|moves|handles|serves|is|was|came|went|ended|sits|stands|hangs|hung)\b", 5),  # "kitchen exhaust is what forty five carries"
        (rf"{_BEGINS}{_FRONT}\b(?: [a-z'#-]+)* {_IS}", "", 5),  # "waiting on nothing but a rub down is one eleven"
        (rf"\b(?:that's|that is|that was|that went|that got put|used|put|got put) {_ON}", rf"(?:{_A_KIND}|board is)", 3),  # "cloth tape that's on four an end cap"
        (rf"\b(?:end|start|first thing|last thing|best|worst|job|one|piece) of (?:the|my|our) (?:day|shift|morning|lot|bunch|afternoon) {_IS}", "", 5),
        (rf"[a-z'-]+ {_ON}", rf"an? {KIND}(?![\w'])", 13),
        (rf"[a-z'-]+ {_ON}", r"(?:otherwise|(?:stapling|taping|tape|spacing|board|facing|wiping|rubbing) (?:is|was|came|went|ended|got)\b)", 13),  # "three inches apart on nineteen otherwise …"
        (rf"\b(?:hung|hangs|hanging|carried|supported|rides|riding|sits|sitting|weighs)(?: straight| right| directly| only)? (?:off|from|on|by|of)", "", 13),  # "hung straight off ninety six with no hanger"
        (rf"\bair (?:going |moving |running |blowing |flowing |coming )?(?:through|thru|in|inside|of)", "", 13),
        (rf"\b(?:{KIND}|sleeve|connection) at", r"(?!by\b)", 25),  # "the elbow at thirty four came out with …"
    ),
    behind=rf"(?:$|[.;:,!?]|{_A_KIND}|an? |it\b|its\b|it's|which|that\b|that's|who|and|but|so\b|then|because|when|while|if|till|until|with|without|no\b|not\b|only|the\b|this|yet|is\b|was\b|has|had|got|came|went|ended|carries|carried|sees|saw|gets|takes|took|needs|needed|wants|lacks|moves|handles|serves|sits|stands|hangs"
    rf"|hung|stapled|taped|rubbed|closed|sealed|all\b|otherwise|though|board is|section|(?:stapling|taping|tape|spacing|board|facing|wiping|rubbing) (?:is|was|came|went|ended|got)\b|(?:washers|staples|screws|tabs|vanes) #|181|today|yesterday|from|there|#)",
    measured=rf"\b{_NOUN} {_IS}",
    within=rf"\b{_WITHIN}{_NOUN} {_IS}",
    spaced=r"\b(?:hangers?|screws?|straps?|supports?|rods?|trapezes?|staples?|tabs?|washers?|stapled|spacing|spaced|every|screwed|bolts?)\b",
)  # fmt: skip
