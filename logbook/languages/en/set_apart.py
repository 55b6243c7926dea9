"""English that names a part of the piece, for what nobody reads that is told of it: "the back against the wall I couldn't get at"."""

from __future__ import annotations

from logbook.languages.told import SetApart

WHICH = r"(?:last|first|other|far|near|left|right|left ?hand|right ?hand|top|bottom|back|front|wide|small|narrow|short|long|fourth|third|second|inner|outer|inside|outside|upper|lower|male|female|end|one|two|three|big|little|odd|very|final|remaining|single|hidden|tight|bad|half|few|couple|2|3|4|2nd|3rd|4th)"
PLACE = r"(?:sides?|ends?|corners?|edges?|seams?|joints?|flaps?|faces?|panels?|underside|heel|throat|cheeks?|section|collar|mouth|lip|neck|top|bottom|back|front)(?! of (?:the|this|my) (?:room|hall|hallway|building|day|week|line|run|house|job|shop|truck|van|roll|page|month|shift|ladder|floor|roof)\b)(?! (?:wall|room|door|hall)\b)"
_BIT = r"(?:foot|feet|stretch|bit|part|half|strip|row|spots?|places?|piece|patch|ones?|two|three|four|few|couple|inches|inch|staples?|legs?|tabs?|hangers?|straps?|screws?|washers?|yard|rolls?)"
_SOME = r"(?:one|two|three|four|five|a few|a couple|some|several|a dozen(?: or so)?|half a dozen|a handful|half|most)"
_NOT = r"(?:\w+n't|cannot|not|never|hardly|barely|nobody|nothing|none|neither)"
_ILL = (
    rf"(?:{_NOT}(?! (?:problem|trouble|worse|bad|an issue|matter))|forgot|missed|skipped|left (?:it|them|that|like|as|out|off|long|alone|bare|loose|undone)|ran (?:out|short|dry|low)|out of|too short|gets? away|got away|went wrong|lost (?:track|count|my place)|bare|naked|loose|gave (?:up|out)|fell|popped|went|quit|died|jammed|slipped|lifts|lifting|peel(?:s|ing)"
    r"|wander(?:s|ed)?|drift(?:ed|s)?|different|differently|wrong|wider|narrower|farther|further|shorter|smaller|thinner|mess|messy|iffy|doubt(?:ful)?|questionable|sloppy|crooked|sticks?|sticking|standing|the other way|like (?:it|they) (?:was|were)|as (?:it|they) (?:was|were)|came (?:off|out|loose))(?![\w'])"
)
PART = (
    rf"(?:(?:the|its|that|this|my|one|every other|any|at|on|in|of|along|round|under|by|both) (?:{WHICH} )*(?:{PLACE}|(?:left|right)(?= (?:is|has|comes|went|i|we|didn't|isn't|hasn't)\b|'s|$))"
    rf"|the (?:(?:very )?(?:last|first|final|odd|other|remaining|two|three)) (?:{WHICH} )*{_BIT}"
    rf"|(?:the|its) (?:rest|others|other|fourth|third|remainder|fourth one|third one)(?= (?:is|are|was|were|i|we|has|have|didn't|isn't|aren't|wasn't|weren't|couldn't|'s|no|not|of it|of them|never|got|got's)\b|'s|$)"
    rf"|(?:a|one|some|two|three|a few|a couple of|a short|a small|a little|the odd) (?:(?:short|small|little|odd|bad|foot|single|whole) )*(?:spots?|places?|corners?|sides?|edges?|panels?|seams?|joints?|piece|stretch|strip|patch|flap|section)(?! (?:of|by) (?:the )?(?:tape|duct|wood|pipe|cardboard|paper|two|\d+))"
    r"|underneath(?: it)?|on top\b)"
)

ENGLISH_SET_APART = SetApart(
    part=PART,
    some=rf"^(?:(?:and|oh|well|so|but|though|there's|there are|there is|only|just|apart from|except|except for|bar|all but|save for|until|till) )*{_SOME}(?: (?:of (?:them|those|the \w+)|or two|or three|staples?|legs?|tabs?|hangers?|straps?|screws?|washers?|corners?|vanes?|up|down|at|by|near|in|on))*(?: [\w'-]+){{0,7}}? {_ILL}",
    otherwise=rf"{PART}(?: [\w',-]+){{0,8}}? {_ILL}|(?<![\w']){_ILL}(?: [\w'-]+){{0,4}}? {PART}",
    counted=r"\b(?:one|two|three|both|some|most|1|2|3)(?: of (?:the|its|them))?(?: (?:sides?|corners?|edges?|seams?|ends?|panels?|faces?))(?![\w'])|^(?:except|apart from|only)\b|\bthe last (?:one|panel|corner|edge)\b",
    staple_clinch=r"\b(?:inwards?|(?:turn(?:ed|s)?|fold(?:ed|s)?|went|go(?:es)?|bent|bends?|points?|pointed|faces?|faced|curl(?:ed|s)?) (?:in|the other way|the wrong way)|the other way(?: round)?|the wrong way(?: round)?)(?![\w'])",
    groove_step=r"\b(?:(?:to |on |toward )?(?:the )?outside|outwards?|(?:faces?|faced|came|turned|points?|looks?|went) (?:out|the other way|the wrong way)|the other way(?: round)?|the wrong way(?: round)?)(?![\w'])(?! of (?:the|this) (?:building|wall|room))",
    harmless=r"(?:but|and|so|then) (?:i|we) (?:still |just |did |finally )*(?:got|did|do|managed|made|reached)\b|\b(?:pulled it|shot another|put another|did (?:it|that|those|them|this)|got (?:it|that|them) (?:too|done|in the end|with)|off the (?:wall|floor|ceiling|beam|deck)|label|stamp|writing|printing|next (?:to it|one)|next door|isn't mine|not mine|not ours|for now|hang (?:it|that|them)|to hang|even (?:on|at|in)|with the lamp|squared|clean of|cut clean|cut out|took|takes|extra|awkward|tricky|a pain|hard to|open because)\b|\b(?:same|as well|too|also|ready|fine|good|ok|okay|perfect|solid|clean|tidy|pretty|neat|nice|covered|sound|done|from the (?:wall|ceiling|floor|door)|on the (?:floor|ground|slab|bench|table|deck|horses))$",
)
