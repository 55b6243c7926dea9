"""English frames of any act: what he never got to, and an act that went over a spot and no farther."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.en.acts import ENGLISH_ACTS
from logbook.languages.en.promised import ENGLISH_PROMISE

_ONLY = r"(?: (?:only|just|down|up|about|maybe|like|it|her))*"
_SPOT = r"(?:single |little |lousy |short )?(?:edge|end|corner|stretch|spot|strip|patch|section)"
_TIME = r"(?:(?:when|once|as soon as|whenever) (?:i|we|it|they|the|he|she|somebody|my|there)(?:'\w+)?|in (?:the (?:morning|afternoon|evening)|a (?:bit|minute|while|few))|some other time|another (?:day|time)|by (?:\w+day|noon|tonight|tomorrow)|before (?:i|we) (?:leave|go|quit|knock off))"
_PART = r"(?:heel|throat|cheeks?|top|bottom|left|right|front|back|ends?|corners?|sides|lid)"
_WHOLE = r"(?:done|finished|complete|completed|closed up|closed in|buttoned up|wrapped up|put together|together|good to go|set|ready)"
_BUT = r"(?:except|all but|bar|barring|but|other than|apart from|aside from|save|minus|short of|with the exception of|excepting|besides|outside of)"
_A_PART = rf"(?:(?:the|its|on|at|in|along|over|around|one|a|that|this|my|for|of|top|bottom|left|right|front|back|far|last|outside|inside|long|short|near|male|female|whole|upper|lower) )*(?:{_PART}|side|seam|seams|joint|edge|edges|face|panel|flap|underside|backside|wall side|last (?:few |couple of )?(?:foot|feet|inches)|corner|end)"
_FEW = r"(?:a|one|two|three|four|five|six|eight|ten|\d+|half a|a couple|a couple of|a few|the first|the first few|the first couple(?: of)?) (?:foot|feet|ft|inch|inches)"

ENGLISH_ACTS_TOLD = replace(
    ENGLISH_ACTS,
    promise=ENGLISH_PROMISE,
    says_no=(*ENGLISH_ACTS.says_no, r"(?:it's|they're|that's|she's) not(?: \w+){0,3}"),
    hints=ENGLISH_ACTS.hints + r"|coming|finish|complete| an? |foot|feet|inch|saving|saved|sides|vane",
    unfinished_looks=ENGLISH_ACTS.unfinished_looks + r"|\bclosed (?:up|in)\b|\btogether\b|\bgood to go\b|\b(?:good|fine|okay|ok|right|alright|set|ready|decent|solid|all) (?:except|bar|barring|but|other|apart|aside|save|minus|besides|outside)\b|\b(?:un)?til\b|\btill\b|\byet\b|\bso far\b|\bloose\b|\bbegs\b|\bbegging\b|\bdue for\b|\bcrying\b|\bscreaming\b|\basking for\b|\bin need\b",
    begins_anew=r"\b(?:so|but|because|cause) (?=i\b|we\b|it\b|nobody\b)",
    unfinished=(
        *ENGLISH_ACTS.unfinished,
        r"(?:(?:and|but|one|two|of|the|my|our|that|a|found|i|it|this one|that one|#+|on run \w+|on \w+) )*(?:(?:is|'s|are|was|got|has|been|went|hanging|knocked|bumped|shook|pulled|worked|coming|all) )*loose(?=$| on (?:run|the run|\w+ run|one end|#)| at (?:the|one) | by the | up there| there$| now$| from )",
        rf"(?:(?:it|it's|she's|this one|that one|this one's|that one's|everything|everything's|is|'s|was|are|i|i've|we|we've|got|have|all|now|just|pretty much|mostly|about|and|but|so|well|#+)[ ,]*)*{_WHOLE}(?: (?:with|up|now|today|it|this one|that one|#+(?: #+)?))*,? {_BUT} {_A_PART}(?: of (?:it|this one|#+(?: #+)?))?(?=$|[.,;]| (?:which|still|because|where|against|by|on|near|yet)\b)",
        rf"(?:(?:it|it's|she's|this one|this one's|that one|that one's|everything|everything's|is|'s|was|all|now|just|and|but|so|well|looks|looking|looked|real|pretty|#+)[ ,]*)*(?:good|fine|okay|ok|all right|alright|decent|solid)(?: (?:everywhere|all around|all over))? {_BUT}(?: for)? (?:(?:the|its|on|at|one|that|far|last|near|other|outside|inside|long|short|top|bottom|left|right|back|front|wall) )*(?:{_PART}|side|seam|joint|edge|corner|underside)(?: side| end| seam| corner)?$",
        r"(?:i |we )?(?:quit|stopped|knocked off|left it|left off|had to stop|had to quit) (?:on it )?(?:with|at) (?:about |maybe |still )?(?:one|two|three|a|an|the last) (?:\w+ )?(?:sides?|seams?|ends?|joints?|corners?|foot|feet|edges?)(?: or so| or two)?(?: left| still)? (?:to go|left|to do)$",
        r"(?:it |this one |that one |#+(?: #+)? )?(?:is |'s |it's )?(?:still )?(?:pending|on hold|waiting on me|not signed off)$",
        r"(?:it |this one |that one |#+(?: #+)? )?(?:still )?(?:needs?|wants) (?:one|two|three|a|an|another|some|a couple(?: of)?|its|more)(?: (?:more|other|last))? (?:hangers?|straps?|rods?|screws?|washers?|clips?|braces?|supports?|gaskets?)\b",
    ),
    undone=(
        *ENGLISH_ACTS.undone,
        r"(?:never(?: ever| even| did| really)?|haven't|hasn't|have not|has not|hadn't)(?: yet| even| ever| really)? (?:got|get|gotten) to (?:even |actually |ever )?{verb}\b(?![^.;]*\b(?:until|till|before)\b)",
    ),
    to_do=(
        *ENGLISH_ACTS.to_do,
        rf"(?:saving|saved|keeping) (?:the |my )?(?:{{noun}}|{{doing}}) for (?:{_TIME}|after|tomorrow|later|next|the morning|lunch|\w+day|tonight|this afternoon)\b",
        r"{noun}(?:'s| is| are|'re)? (?:coming|due)(?: in| out| here)?,? (?:with the|on the|in the (?:morning|afternoon)|tomorrow|later|this afternoon|tonight|next|when|after|(?:on )?\w+day)\b",
    ),
    lists=ENGLISH_ACTS.lists.replace("incomplete)", "incomplete|to finish|to complete|to finish up|work left|remaining work|work remaining|what's left on it|still open)"),
    partly=(
        *ENGLISH_ACTS.partly,
        r"{noun}(?: down)?(?:'s| is) (?:only|just|barely|hardly) (?:started|begun|half done)\b",
        rf"{{done}}{_ONLY} (?:the last (?:few |couple of |two |three )?(?:foot|feet|inches))(?: or so| or two)?(?: only| and (?:quit|stopped|ran out))\b",
        r"{done}(?: only| just)+ (?:the last (?:few |couple of |two |three )?(?:foot|feet|inches))(?: or so| or two)?$",
        rf"{{done}}{_ONLY} {_FEW}(?: or so| or two)? (?:of (?:it|them|this one|that one|the (?:seam|joint|edge|side|flap|tape|straight|tee|piece|thing)s?)|on (?:one|each|the) (?:end|side))\b",
    ),
    of_one=(
        *ENGLISH_ACTS.of_one,
        ("preheated", False, r"(?:didn't|did not|never|couldn't|no time to|had no time to|forgot to|too lazy to|wasn't about to|didn't want to)(?: (?:bother|go|even|want|have time|take the time))*(?: to)? (?:get|getting|got|bring|bringing|brought|dig|digging|dug|pull|pulling|pulled|plug|plugging|plugged|fire|firing|fired|break|drag|dragging|haul|fetch|grab|grabbing|set|setting)(?: up| out| in)? (?:the |my |an? |any )?(?:iron|torch|heat ?gun|heater|hot air gun)(?: (?:out|in|up|over|down))?(?: (?:to|and) (?:warm|heat|preheat|iron) (?:it|them|that|the \w+)(?: (?:up|first|ahead|beforehand|down))*)?(?! of (?:his|the other))"),
        ("vanes", False, r"\b(?<!finished )(?<!done )(?<!through )(?:(?:still |just |only |now )?(?:working on|started on|starting on|busy with|in the middle of)|trying to get|(?:saving|saved|holding|keeping)) (?:the |my |its )?vanes(?: in)?(?:$| (?:now|still|right now)$| (?:for|till|until) (?:\w+day|tomorrow|later|the morning|next|after)\b)"),
        ("tabs_bent", False, r"\btabs (?:are |were |got |is )?(?:only |just )?(?:bent|folded|turned|crimped|hammered|down|over)(?: over| down| in| flat)* (?:on|along) (?:only |just )?(?:one|two|three|1|2|3)(?: out)?(?: of)?(?: the)?(?: four| 4)? sides?\b"),
    ),
    across=(
        *ENGLISH_ACTS.across,
        ("partly", r"{noun},? (?:but|only|except)(?: (?:there's|there are|i've got|i got))? (?:none|nothing|nary a one|not (?:a|one|any)(?: one)?)(?: at all)? (?:on|in|along|under|at|over|down|across) (?:the |that |one |its |my )"),
        ("partly", rf"{{done}}{_ONLY} (?:the )?{_PART}(?:,? but|,)? (?:and )?not (?:the |on the |at the )?{_PART}\b"),
        ("to_do", rf"(?:gets|will get|'ll get) {{done}}(?: down| up)?,? {_TIME}\b[^.;,]*"),
        ("to_do", rf"(?:{{noun}}|{{doing}})(?: down)?(?:'s| is| will be|'ll be| comes| happens| waits)(?: for)? {_TIME}\b(?! (?:found|saw|noticed|tore|cut|broke|heard))[^.;,]*"),
        (
            "partly",
            rf"{{done}}{_ONLY} (?:(?:one|a|1) (?:{_SPOT}|seam|joint)|a side)(?: of (?:it|them))?(?: or so| or two| only)?(?=$|[.;]|,(?! (?:and |then |now |so )*(?:(?:i|we) )?(?:did |got |(?:{{!done}} ))?(?:it |them )?(?:on )?(?:the )?(?:other|others|second|next|another|rest|last|both)\b))",
        ),
    ),
)
