"""English words for a stretch of a piece in which something is wider than in the rest of it."""

from logbook.languages.told import Stretches

_START = r"(?:(?:very )?(?:first|last) (?:\w+ ){0,3}?(?:feet|foot|inches|ones?|few|couple|two|three|four|dozen|half|third|bit|run|row|stretch|part|section|staples)|(?:start|beginning|end|tail end|corners?|heel|throat|middle|far end|near end|bottom|back|bend|curve|radius))"

STRETCH = rf"(?<![\w'])(?:(?:at|in|on|toward|towards|near|for|around|by|over|to) )?(?:the|that|my) {_START}(?![\w'])|^at (?:first|one end)(?![\w'])"

ENGLISH_STRETCHES = Stretches(
    stretch=STRETCH,
    wide=r"(?<![\w'])(?:wide|wider|sloppy|loose|looser|lazy|too far apart|farther apart|further apart|far apart|(?<!cut )off|spread out|stretched)(?![\w'])",
    adds=r"(?<![\w'])(?:add|added)(?![\w'])",
    mended=r"(?<!not )(?<!n't )(?<!never )(?<!n't have time to )(?<![\w'])(?:went back|going back|added|(?:put|shot|threw|stuck|drove|popped) (?:\w+ )?(?:more|some|extra|another|others)|fixed|redid|redone|did (?:it|them|those|that) (?:over|again)|filled (?:it|them|that|those)? ?in|doubled|pulled (?:it|them|those)|tightened|closed (?:it|them) up)(?![\w'])",
    ticked_parts=r"(?:(?:long|short|left|right|top|bottom|back|front|near|far|big|small|male|female|branch|trunk|other|inside|outside|first|second|third|fourth) (?:hand )?(?:sides?|ends?|seams?|edges?|faces?|joints?|ones?)|tops?|bottoms?|left|right|backs?|front|heels?|throats?|cheeks?|flaps?|ends?|seams?|corners?|edges?|branch|trunk|main|collar)",
    ticked_yes="on|in|there",
    ticked_leads="and |but |the |then ",
    ticked_on=r" (?:on|of|for) (?:the )?(?:[a-z]+ ){0,2}\d+",
)
