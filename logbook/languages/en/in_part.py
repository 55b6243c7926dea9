"""English for work that went only so far, told behind it: "taped it as far as the hanger", "bent the tabs, got halfway", "rubbed for the most part".

However it is told, it is read as work done in places: no such extent is the whole. Rows like those of `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_NOT = r"(?<!could've )(?<!would've )(?<!should've )(?<!could have )(?<!would have )(?<!should have )(?<!not )(?<!never )(?<!n't )(?<!no )(?<!isn't )"
_THE = r"(?:the |my |its |all the |all my )?"
_DONE = r"(?:taped|stapled|pinned|rubbed|burnished|squeegeed|wiped|cleaned|trimmed|sealed)"
_PUT = rf"(?:(?:bent|folded|crimped|turned) {_THE}tabs|(?:put|got|set|slid) {_THE}(?:vanes|staples|tape) (?:in|on|down)|(?:tape|staples|vanes|mastic)(?:'s| is| are|'re|'s all| are all)? (?:in|on|down|done)|tabs (?:are |'re |all )*(?:bent|folded|down|over))"
_WITH = r"(?: with (?:the |my )?[\w'-]+(?: tape| ?181[\w -]{1,4})?)?"
_FILL = rf"(?: (?:it|them|'em|her|this one|that|down|up|over|off|out|in|on|flat|good|nice|tight|{_THE}(?:seams?|joints?|tape|flap|lap|facing|foil|end|edges?|glass|insulation|whole thing)))*{_WITH}"
_ACT = rf"{_NOT}(?:{_DONE}|{_PUT}){_FILL}"
_MENDED = rf"{_NOT}(?:patched|mended|fixed|repaired|covered)"
_FILL_MENDED = r"(?: (?:it|them|that|the \w+|up|over|with (?:tape|mastic|fabric)))*"
_END = r"(?=[.,;!]|$| (?:and|but|so|then|because|since|cause|with)\b)"
_PART = r"(?:front|back|top|bottom|left|right|heel|throat|far side|near side|back side|inside|outside|underside|one side|last side|corners?|ends?|flap|overlap|last (?:foot|bit|few inches|six inches))"
_STOPS = r"(?:hanger|strap|beam|wall|pipe|corner|rod|joist|deck|brace|conduit|stud|column|truss|ceiling|sprinkler|heel|throat)"
_I = r"(?:i|we)"

_WHERE = (
    rf"(?:only |just |pretty much )*(?:on|along|over|in|at) (?:the |what |whatever )?(?:parts?|sides?|bits|places|spots|seams|edges|ends|corners|ones|stretch|stuff|areas?)? ?(?:that |which |where )?{_I} (?:could|can|was able to|were able to) (?:reach|get (?:to|at|my hands on)|see)"
    rf"|(?:only |just )*(?:on|along|at) the (?:easy|open|reachable|visible|accessible|exposed|near|handy) (?:sides?|parts?|ones?|edges?|seams?|end)"
    rf"|(?:only |just )*(?:on the (?:sides?|parts?|bits) (?:that |where )?(?:shows?|matters?|counts?|faces? \w+(?: \w+)?|you(?:'ll| can)? see)|where (?:it shows|you can see it|you'll see it))"
    rf"|(?:only|just) (?:on|along|over|across) the (?:front|face|near side|room side|easy side|good side)|(?:up top|on top|topside|top side|up front|in front|on the (?:front|face)) only"
    rf"|(?:only |just )*(?:as far as|up to|down to|over to|out to) (?:the|that|my) (?:\w+ )?{_STOPS}|to within (?:a|an|about|maybe|one|two|three|six|a couple)(?: \w+)? (?:foot|feet|inch|inches) of (?:the \w+|it|there)"
)
_BUT = (
    rf"(?:but|just|only|though|although) not (?:behind|underneath|under|inside|in back|in the back|around back|up top|down low|out back|at|on|in(?! the (?:rain|cold|dark|wet|sun|way))|along|the)(?: (?:it|there|{_THE}[\w-]+(?: side| end| seam)?))?"
    rf"|(?:but|less|barring|bar|minus|save|save for|saving|not counting|not including|leaving out|sans|discounting) (?:for )?(?:the|that|one) {_PART}"
)
_DEGREE = (
    r"for the most part|in the main|by and large|(?:just |only )?(?:partially|incompletely)|to a point|up to a point|to some extent"
    r"|(?:about |maybe |like |say |roughly |only |probably |i'd say )*(?:fifty|sixty|seventy|seventy[- ]five|eighty|eighty[- ]five|ninety|ninety[- ]five|ninety[- ]nine|[5-9]\d) ?(?:percent|per cent|%)(?: of (?:the way|it|them)| done| there| finished| complete)?"
    r"|(?:not quite|nearly|almost|not|just about|pretty near|damn near|close to)(?: all| clear| clean)? (?:the way|around|round|of the way)(?: (?:around|round|up|down|along|across|over|through))?(?: (?:it|yet))?"
    r"|(?:just |only )?(?:in (?:spots|places|parts|(?:a few|some|a couple of|two|three) (?:spots|places))|here and there)"
    r"|(?:just |only )?(?:some|a little|a bit|a little bit)|(?:only |just |about )*every other (?:one|tab|vane|side|corner|seam)"
)
_SHORT = (
    rf"(?:(?:and|then|but|so) )*(?:(?:till |until )?the (?:tape|roll|staples|gun|stapler|mastic|battery|light) |{_I} (?:just )?|it )?ran (?:out|dry)(?: on me)?(?: (?:halfway|partway|half way|near the end|at the (?:end|corner|heel|bottom)))?"
    rf"|(?:(?:and|then|but|till|until) )*(?:{_I} )?(?:got|was|were) (?:called|pulled|dragged|sent|hauled) (?:away|off|out|over)(?: (?:it|to \w+(?: \w+)?|on me|halfway|partway))?"
    rf"|(?:(?:and|then|but) )*(?:{_I} )?(?:got|was) interrupted(?: (?:halfway|half way|partway|in the middle))?(?: (?:through|of it))?"
    rf"|(?:(?:and|then|but) )*(?:{_I} )?(?:stopped|quit|gave up|petered out|left off) (?:at|by|before|near|short of|halfway to|right at) (?:the|that) (?:\w+ )?{_STOPS}"
    rf"|(?:(?:and|then|but) )*(?:{_I} )?(?:only |just )?(?:got|made it|went|came) (?:only |just |about )?(?:halfway|half way|part ?way|most of the way|part of the way)(?: (?:through|around|round|down|along|up|there|with it))?"
)
_TO_GO = r"(?:(?:and|but|with|still|just|only|there's|got|i got|i've got|have|i have) )*(?:a|one|one more|another|two|two more) (?:sides?|seams?|ends?|edges?|corners?|joints?) (?:left )?(?:to (?:go|do|finish)|left)"

# a patch that covers the harm in part; what else may be taped in part is known without these rows
_ON_THE_HARM = (
    rf"(?:just |only )?in (?:spots|places|parts)|here and there|mostly|mostly there|half ?way|part ?way|half[- ]done|(?:most|some|part|half) of (?:it|the way)|(?:just|only) (?:at |on )?the (?:corners?|ends?|middle|worst (?:of it|part))(?: of it)?|what {_I} could|where (?:{_I} could(?: \w+){{0,2}}|it shows)|as far as {_I} could(?: \w+)?"
    rf"|all but (?:a|an|about|the last) (?:\w+ )?(?:inch|inches|foot|end|corner|bit)|(?:but |and )?(?:not|except|except for|apart from|aside from|other than|save for|but {_I} left|but left|but skipped|but missed|missed|with the exception of|minus) (?:under |on |at |where |for )?(?:the \w+(?: is)?|a spot|a few|one|one (?:end|spot|corner)|some)|(?:just |only |on )*(?:one|two|three) (?:sides|edges|of (?:the )?(?:four|three))|(?:two|three) out of (?:four|three)"
)

_CUES_WHERE = (" could", " can", " able to", " easy ", " open ", " reachable", " visible", " accessible", " exposed", " near ", " handy ", " show", " matter", " count", " faces ", " face ", " see", " front", " room side", "good side", "top only", "topside", "side only", "as far as", " up to ", " down to ", " over to ", " out to ", " within ")
_CUES_BUT = (" not ", " less ", "barring", " bar ", "minus", " save ", "saving", "leaving out", " sans ", "discounting", " but the ", " but that ", " but one ")
_CUES_DEGREE = ("most part", "in the main", "by and large", "partially", "incompletely", " a point", "some", "percent", "per cent", "%", "the way", " around", " round", "a little", "a bit", "every other", " in spots", " in places", " in parts", " spots", " places", "here and there")
_CUES_SHORT = (" ran out", " ran dry", "called", "pulled", "dragged", " sent ", "hauled", "interrupted", " stopped ", " quit ", "gave up", "petered", "left off", "halfway", "half way", "partway", "part way", "of the way")
_CUES_TO_GO = ("side", "seam", "end", "edge", "corner", "joint")

_CUES_ON_THE_HARM = (" in spots", " in places", " in parts", "here and there", "mostly", "half", "part", "most ", "some", "corner", " end", "middle", "worst", " could", "all but", " not ", "except", "apart from", "aside from", "other than", " save ", "left", "skipped", "missed", "exception", "minus", " side", " edge", " of four", " of three", "out of", "it shows")
_HARMED = ("tear", "torn", "rip", "hole", "cut", "gash", "punctur", "dent", "crush", "damag", "split", "slit", "loose", "peel", "harm")

_DONE_SINCE = r"finish(?:ed|ing)|(?:did|got|taped|stapled|rubbed|patched) the (?:rest|other|last)|(?:came|went|gone|got) back|(?:got|grabbed|opened|found) (?:another|a new|a fresh|more)|the rest (?:i|we|from|after)|other (?:half|side|end) (?:i|we|after|later|from)|all (?:done|there) now|since then"

_EXTENTS = ((_CUES_WHERE, _WHERE), (_CUES_BUT, _BUT), (_CUES_DEGREE, _DEGREE), (_CUES_SHORT, _SHORT), (_CUES_TO_GO, _TO_GO))

# one part of it, and no more: "taped the top is all", "all I taped was the top", "all I did was tape the top"
_SIDE = rf"(?:the |my |that )?(?:{_PART}|cheeks?|seam|ends?)(?: side| seam| joint| half| edge| end| part| lap)?(?: (?:and|or) (?:the )?(?:{_PART}|cheeks?)(?: side| seam| joint| end)?)?"
_NO_MORE = r"(?:,? (?:which |and that |that |it )?(?:is|was) (?:all|it)|[,.]? (?:and )?(?:that's|thats|that is|that was) (?:it|all)|,? (?:and |but )?(?:nothing|none|no place|nowhere|not a thing) else)(?: (?:i|we|it|they) (?:did|got|had|got to|got done|had time for|could get)(?: (?:to|done))?| so far| for now| today| really| tonight| right now)*"
_CUES_NO_MORE = ("all", "that's it", "thats it", "that is it", "that was it", "is it", "was it", " else")
_DENIED = r"(?:isn't|aren't|wasn't|weren't|ain't|not|never) (?:[a-z]+ ){0,2}?(?:taped|stapled|rubbed|wiped|trimmed|sealed)"  # one part and the other: read as they stand
_COUNTED_SIDES = ("top", "bottom", "left", "right")
_ALL_OF_IT = r"(?:all|the only (?:thing|part|side|seam|bit))(?: (?:that|which))?"

ENGLISH_IN_PART = (
    Plainer(_CUES_NO_MORE, rf"{_NOT}{_DONE}(?: down)? {_SIDE}(?P<x>{_NO_MORE}){_END}", (("x", " only"),), unless=f"{_DONE_SINCE}|{_DENIED}", beside=_COUNTED_SIDES),
    Plainer(_CUES_NO_MORE, rf"{_NOT}(?:{_DONE}(?: down)? {_SIDE}|(?:got|have|had) {_SIDE} {_DONE}(?: down)?)(?P<x>{_NO_MORE}){_END}", (("x", " only in places"),), unless=f"{_DONE_SINCE}|{_DENIED}"),
    Plainer(_CUES_NO_MORE, rf"(?P<w>)(?:the |my ){_PART}(?: side| seam| joint| half| edge| end| part)? (?:is|was|are|were|got|gets|has been|'s) {_DONE}(?: down)?(?P<x>{_NO_MORE}){_END}", (("w", "only "), ("x", "")), unless=f"{_DONE_SINCE}|{_DENIED}"),
    Plainer(("all ", "the only "), rf"(?P<x>{_ALL_OF_IT}(?: (?:i|we))?(?:'ve|'s| have| has| is| was)?(?: (?:got|been))? (?P<d>{_DONE})(?: down)?(?: so far| yet| on it)? (?:is|was) (?P<p>{_SIDE})){_END}", (("x", r"only \g<p> is \g<d>"),), unless=f"{_DONE_SINCE}|{_DENIED}"),
    *(
        Plainer((f"all i did was {act}", f"all we did was {act}", f"all i've done is {act}", f"all i did is {act}", f"all i could do was {act}", f"all i managed was to {act}"), rf"(?P<x>all {_I}(?:'ve)? (?:did|done|could do|managed) (?:is|was)(?: to)? {act}(?: down)? (?P<p>{_SIDE})){_END}", (("x", rf"{done} \g<p> only"),), unless=f"{_DONE_SINCE}|{_DENIED}")
        for act, done in (("tape", "taped"), ("staple", "stapled"), ("rub", "rubbed"), ("wipe", "wiped"), ("trim", "trimmed"), ("seal", "sealed"))
    ),
    *(Plainer(cues, rf"{_ACT}(?P<x>,? (?:{extent})){_END}", (("x", " only in places"),), unless=_DONE_SINCE) for cues, extent in _EXTENTS),
    *(Plainer(cues, rf"{_MENDED}(?P<x>{_FILL_MENDED},? (?:{extent})){_END}", (("x", " half of it"),), unless=_DONE_SINCE, beside=_HARMED) for cues, extent in (*_EXTENTS, (_CUES_ON_THE_HARM, _ON_THE_HARM))),
)
