"""English said of measures in a roundabout way, and the plain words that it is read as: how hot, what pressure, how far a side moves and over what length.

Regular expressions over lower-case letters, as in `en_plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.numbers import SAID_NUMBER
from logbook.languages.plainer import Plainer

_NUMBER = rf"(?:{SAID_NUMBER}(?: point \w+)?)"
_UNIT = r"(?:-| )?(?:inches|inch|in\.?|foot|feet|ft|\"|')(?![\w])"
_M = rf"(?:(?:an? )?(?:foot|inch)(?: and (?:a half|a quarter|an eighth))(?![\w])|an? (?:foot|inch)(?![\w])|{_NUMBER}(?![\w/])(?:{_UNIT})?(?: and (?:a half|a quarter)(?![\w]))?)"
_TENS = r"(?:ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?)"
_ONES = r"(?:one|two|three|four|five|six|seven|eight|nine)"
_TAPERS = ("transition", "reducer", "taper", "trans ", "increaser")  # such talk is of these alone
_CAME_TO = r"(?:work(?:s|ed)? out|came out|comes out|came in|comes in|figure[sd]?(?: out)?|end(?:s|ed) up|w(?:inds|ound) up|turn(?:s|ed) out|pencil(?:s|ed) out|check(?:s|ed)(?: out)?|lands|landed|climb(?:s|ed)|tops out)(?: (?:to|to be|at|as|about|being|around|up to))*"
_READS = r"(?:reads|reading|read|shows|showed|says|said|measures|measured|is reading|is showing|is sitting at|is up to|is up at|went up to|came up to|comes up to|runs|is running|hits|hit|gets up to|got up to|jumped to|stands at)(?: (?:at|about|around))?"
_EXCUSES = r"(?:i'm|i am|i was|we're|we were|i had|i've got|i got|i have)(?: just| been)? (?:reading|holding|looking at|measuring|using|on|going by|working off|hooked|got)[^,.;?!]{0,40}"
_SORRY = r"(?:sorry|sorry about that|my mistake|my bad|my fault|correction|excuse me|pardon me)"
_MUTTERS = (
    r"(?:(?:where's|where is|where'd i put|hang on,? where's|hold on,? where's) (?:the|my|that) (?:\w+ )?(?:tape measure|tape|gauge|rule|ruler|stick|meter|thermometer|pencil|glasses|light|flashlight|manometer|reader|gun)|what's (?:that|this|it say|that say|it read|that read)(?: say| there| now)?|what does (?:it|that|this) (?:say|read)"
    r"|(?:let me|lemme) (?:see|look|read it|read that|get my glasses|get the light on it|check)(?: (?:here|now))?|tape measure|here's the (?:tape measure|gauge|rule|ruler))"
)
_FOUND_IT = r"(?:there|here|ah|okay|ok|got it|here it is|there it is|there we go|here we go|fine|good|all right|alright|yeah|yep|so)"


def _of_two(one: str, other: str) -> tuple[Plainer, ...]:
    """ "Three each side, back eighteen, except the right, that's back twelve." """
    before = rf"(?P<x>(?P<n>{_M}),? (?:on |off |in )?(?:each side|per side|both sides|a side|each|apiece),?(?: and)? back (?P<m>{_M}),? (?:except|but|only|other than)(?: for)?(?: on)? the "
    behind = rf"(?: side)?,?(?: (?:that's|which is|which was|it's|it|is|was|went|goes|at|only|just|that one's|that one is|i went))* back (?P<k>{_M}))"
    return tuple(
        Plainer((" back ",), rf"{before}{side}{behind}", (("x", rf"{rest} in \g<n> back \g<m>, {side} in \g<n> back \g<k>"),), beside=_TAPERS)
        for side, rest in ((one, other), (other, one))
    )


def _by_letter(letter: str, side: str) -> tuple[Plainer, ...]:
    """ "L: 4 in, 18 back", "T 4/18": a side by its letter, before how far it moves and over what length."""
    begins = r"(?:^|(?<=[,;|/:\n-] )|(?<=[.] ))"
    cues = (f"{letter}: ", f"{letter} ", f"{letter} =")
    return (
        Plainer(cues, rf"{begins}(?P<x>{letter}(?: ?[:=] ?| ))\d+(?:-\d/\d)?(?:\"| ?in(?:ch)?)?(?: move)?(?:(?P<y>/)|,| over| back) ?\d+", (("x", f"{side} "), ("y", " over ")), beside=_TAPERS),
        Plainer(cues, rf"{begins}(?P<x>{letter}(?: ?[:=] ?))(?=(?:level|flat|straight|0)(?![\w']))", (("x", f"{side} "),), beside=_TAPERS),
    )


ENGLISH_MEASURED = (
    # --- over what length a side moves, told of the cut and not of the side
    Plainer(("inches from the end", "inch from the end", "back from the end", "inches off the end", "inches from the edge", "inches from the female", "inches from the male"), rf"(?:moves?|comes?|came|drops?|dropped|goes|went|in|down|up|out) (?:in |down |up |out |over )?{_M}(?: (?:in|down|up|out))?(?P<x>,? (?:and|then|and then|so)?,? ?(?:i|we) (?:started|began|set|made|put|marked) (?:the|my|our|that) (?:cut|slope|taper|line|mark|layout)(?: (?:back|in))? )(?P<m>{_M})(?P<y> (?:back )?(?:from|off) (?:the|its) (?:end|edge|(?:female|male) end))(?![\w'])", (("x", ", back "), ("y", "")), beside=_TAPERS),
    Plainer(("set-back", "setback", "set back"), rf"(?P<k>set[- ]?back)(?![\w'])(?! (?:of |is |was |at )?{_M})[^?!]{{0,50}}[.,;] (?P<x>(?:i|we) (?:made|cut|put|set|laid|had|marked) (?:it|that)(?: (?:at|only|just|back))* )(?P<m>{_M})(?! (?:long|wide|apart|by)(?![\w']))(?=[.,;]|$| and (?:the )?(?:top|bottom|left|right|sides?|both))", (("x", "the set back is "),), beside=_TAPERS),
    Plainer((" called it", " called that", " figured it", " called them"), rf"(?:^|(?<=[.;,!] ))(?:(?:and|so|but) )*(?P<x>)(?:about )?{_NUMBER} (?:in|to) (?:twelve|12)(?P<y>,? (?:is what |that's what )?(?:i|we) (?:called|figured|had|made|wrote|said|put) (?:it|that)(?: (?:at|for))?)(?= on |[.,;]|$| in )", (("x", "slope "), ("y", ""))),
    Plainer((" open up ", " opens up ", " opened up ", " opening up ", " flare ", " flares ", " flared ", " spread ", " spreads ", " kick out", " kicks out"), rf"(?<![\w'])sides? (?:each )?(?P<x>(?:open(?:s|ed|ing)? up|flares?(?:d)?(?: out)?|spreads?(?: out)?|kicks? out))(?= (?:by )?{_M})", (("x", "go out"),), beside=_TAPERS),
    # --- "three inches apart it came out": how far apart they are, and nothing that came out of the piece
    Plainer((" apart it", " apart they", " apart that", " apart the", " apart mine", " center it", " center they"), rf"{_M} (?:apart|on center)(?P<x>,? (?:it|they|that|mine|the staples|the stapling)(?: all| just| kind of| sort of)* (?:came|ended|turned|worked|wound|landed)(?: out| up| in)?(?: to(?: be)?| at| being)?)(?=[.,;!]|$| and | but )", (("x", ""),)),
    # when he looked is no time to come
    Plainer((" after ", " before "), r"(?:i|we) (?:just |then |re-?)*(?:measured|checked|counted|tested|felt|inspected|remeasured|rechecked|looked(?: at| over)?|went (?:over|back to|back over)|found)(?: (?:it|them|that|this one|that one|her))?(?: again)?(?P<x> (?:right |just )?(?:after|before) (?:lunch|break|coffee|dinner|the break|the meeting))(?=[.,;]| and| it)", (("x", ""),)),
    # --- "it shifts five inches to one side in a length of twenty": which side, how far, over what length
    Plainer(_TAPERS, rf"(?:(?<=[.,;] )|(?<=\bit )|(?<=\d )|(?<=\d, )|(?<=\band ))(?P<x>(?:shifts?|moves?|comes|goes|runs|steps|slides|drifts|swings)(?: over| in)? (?P<m>{_M}) (?:over )?(?:to|toward|towards) (?:the )?(?P<s>left|right|one)(?: (?:hand )?side)?,? (?:in|over|within|across|on)(?: (?:a|the) (?:total )?(?:length|distance|run|span|stretch) of)? )(?={_M}(?! to))", (("x", r", \g<s> side moves \g<m> over "),), unless=r"offset"),
    # --- a question that he answers himself
    Plainer(("how far back", "how far in", "how far down", "how far up"), rf"(?:(?P<x>(?:and |so )?how far (?P<w>back|in|down|up)(?: (?:is|was) (?:it|that)| did (?:i|it) (?:go|come|set it)| does it (?:go|come))?[?,.]* (?:{_MUTTERS}[,.?]+ (?:{_FOUND_IT}[,.]+ )*)?))(?=(?:about |it's |at )*{_M})", (("x", r"\g<w> "),)),
    # --- what is muttered while one looks for the number
    Plainer(("where's", "where is", "where'd i", "what's ", "what does", "let me ", "lemme ", "tape measure,", "here's the "), rf"(?<=[,.;?] )(?P<x>{_MUTTERS}[,.?]+ (?:{_FOUND_IT}[,.]+ )*)(?=(?:about |at |around |it's |it says |it reads |that's |call it |back |down |up |in )*{_M})", (("x", ""),)),
    Plainer(("reads ", "says ", "showing ", "shows "), rf"(?<![\w'])(?:reads|says|showing|shows|reading)(?P<x>, {_MUTTERS}[,.?]+ (?:{_FOUND_IT}[,.]+ )*)(?={_M})", (("x", " "),)),
    Plainer((", fine, ", ", okay, ", ", ok, ", ", good, ", ", alright, "), rf"(?P<n>{_NUMBER})(?P<x>, (?:fine|okay|ok|good|alright|all right), )(?P<y>(?P=n) )(?=degrees?(?![\w]))", (("x", ""), ("y", " "))),
    # --- what he takes back, with why, and what he says again whole
    Plainer(("i'm ", "i was ", "i had ", "i've got ", "i got ", "i am ", "we were ", "i have "), rf"(?<=[,.] )(?:no|wait|nope|hold on|hang on|no wait)(?P<x>, (?:no, |wait, )?{_EXCUSES})(?=[,.] (?:it's |that's |so |make that )?(?:back|in|out|over|up|down|every|{_NUMBER})(?![\w']))", (("x", ""),)),
    Plainer((", sorry", ", my ", ", correction", ", excuse", ", pardon"), rf"(?P<x>{_M} (?P<p>over|in|by|back|and) {_M}[.,;] (?:no, |well, )?){_M} (?P=p) {_M}(?P<y>,? {_SORRY})(?=[.,;]|$)", (("x", ""), ("y", ""))),
    Plainer((" back ", " over it"), rf"{_M}(?: apart)?(?P<x>[.,;] (?:well,? |but |and |then |so )*(?:i|we) (?:went|came|got|did go)(?: and)? (?:back|over it)(?: over it| to it)?(?: again| later)?(?: (?:with|and got|and put|and grabbed|using) (?:the|my|a) (?:tape measure|tape|ruler|rule)(?: on it)?| and (?:measured|checked|looked|counted|remeasured)(?: it| them)?(?: again)?)*(?:,? and|,| so) (?:it's|it is|they're|it was|they were|i got|i get|it came out|it's really)(?: really| actually| more like| at)* )(?=(?:every )?{_M})", (("x", ", no, "),)),
    Plainer(("i said", "we said", "told you", "told him", "told them"), r"(?P<w>(?:i think |i know )?(?:i|we) (?:told (?:you|him|her|them|the office)|said)(?: that)? )(?=(?:number )?(?:\d+|(?:straight|elbow|tee|wye|cap|end cap|collar|transition|offset|plenum|branch) [\w-]+) (?:was|is|has|had|comes|came|goes) [^.?!]{1,60}[.,;] (?:well,? |but |and |then )*(?:i|we) (?:went|came|got) back(?![\w']))", (("w", ""),)),
    # --- how hot
    Plainer(("degree",), rf"(?<!run )(?<!number )(?<!straight )(?<!elbow )(?<!piece )(?<![\w'])(?:two|three|four)(?P<x> )(?={_TENS}[- ]degrees? (?:supply |discharge |process |hot )?(?:air|f|fahrenheit|supply|discharge)(?![\w']))", (("x", " hundred "),)),
    Plainer(("air", "temp", "discharge"), rf"(?<![\w'])(?:air|air temp\w*|temperature|temp|discharge)(?:'s)?,?(?: (?:is|was|at|about|around|now|still|just|only|really|of|up to|getting|gets|runs|running|hits|reads|reading|says|measured|measures|up|to|comes|coming|in|out|off|there|it|this|that|on|the|unit|furnace|heater|burner),?)*,? (?:two|three|four)(?P<x> )(?={_TENS}(?![\w'-])(?! (?:by|cfm|square|inch|inches|x|long|pascals?)(?![\w'])))", (("x", " hundred "),)),
    Plainer((" air ",), r"(?P<x>(?:hot|heated) air(?: (?:is|at|of|running|runs|comes? in at|coming in at|coming at|about|around))* )(?=(?:\d{3}|two|three|four)(?![\w/]))(?!\w+ (?:cfm|hundred cfm))", (("x", "air temperature "),)),
    # --- how it was, and how it is by now
    Plainer((" now", "now "), rf"(?<![\w'])(?:static|pressure|air|air temp\w*|temperature|temp|set ?-?back|spacing|slope|flow|airflow|throat|length|hangers)(?P<x> (?:was|were|used to be|started (?:out )?at|had been) (?:at )?{_M}(?: degrees| cfm| apart)?(?: (?:before|yesterday|this morning|at first|originally|last week|earlier|then|to start))*[,.;] (?:but |and |so )*(?:now (?:it's|it is|they're|they are|we're|it reads|it runs|we have)|(?:it's|it is|they're|they are|we're) now)(?: up| down| at| to)* )(?={_M})", (("x", " is "),)),
    Plainer((" from ",), rf"(?<![\w'])(?:static|pressure|air|air temp\w*|temperature|temp|flow|airflow|spacing|set ?-?back)(?P<x> (?:has |have )?(?:dropped|went|gone|came|fell|climbed|rose|jumped|is|got|moved|changed)(?: down| up)? from {_M}(?: degrees| cfm)?,? (?:down |up )?to )(?={_M})", (("x", " is "),)),
    Plainer((" of static ", "static "), rf"(?P<x>(?:had|was at|were at|was running|were running|used to have|ran) {_M}(?: of)? static(?: (?:on|in) (?:it|this|there|here))?,? (?:last week|yesterday|before|this morning|at first|originally|earlier|last time)[.,;] (?:but |and |so )*(?:now )?(?:it's|it is|we're at|we have|it reads|it runs|it's at|i've got)(?: now| at| down to| up to)* )(?={_M})", (("x", "static is "),)),
    Plainer(("leak", "cfm"), rf"{_M} cfm(?P<x>[.,;] (?:but |and |then |so )*(?:(?:i|we) )?(?:sealed it(?: up)?[.,;]? (?:and |then )*)?(?:got|brought|knocked|worked|had|have) (?:it |that )?down to )(?={_M})", (("x", ", no, "),)),
    Plainer(("i'd ",), rf"(?P<x>i'd (?:call|make|put) (?:it|that)(?: at)? )(?=(?:about )?{_M} (?:of )?(?:static|pressure|back)(?![\w']))", (("x", "about "),)),
    # --- what pressure
    Plainer(("static reading", "pressure reading"), rf"(?<![\w'])(?:static|pressure)(?P<x> readings?(?: (?:on|in) (?:it|this|there))? (?:was|is|of|were|at|came in at|came up|came out at|:) )(?={_NUMBER}(?! ?degrees?))", (("x", " is "),)),
    Plainer((" water",), rf"(?:kneeling|standing|sitting|lying|laying|working|walking|wading|stood|crawling|up to my \w+) in (?P<x>{_M} of water)", (("x", "water"),)),
    Plainer(("static", "pressure"), rf"(?<![\w'])(?:static|static pressure|pressure)(?:'s)?,?(?: (?:is|was|at|of|about|around|on it|here))*,? (?:zero|one|two|three)(?P<x> )(?={_ONES}(?! (?:by|inch|inches|x|hundred|and|sides?|eighths?|quarters?|halves|sixteenths?)(?![\w']))(?![\w'-]))", (("x", " point "),)),
    Plainer(("static", "pressure"), rf"(?<![\w'])(?:static|static pressure|duct pressure|pressure)(?: (?:on|in) (?:it|this|this one|there|the duct|the line))?(?P<x> {_READS} )(?={_NUMBER}(?![\w/])(?! ?(?:degrees?|by|x|cfm)(?![\w'])))", (("x", " is "),)),
    Plainer((" over ", " more than ", " above ", " past "), rf"(?<![\w'])(?:static|pressure)(?P<x> (?:is |was |'s )?(?:over|more than|above|past|beyond) (?:the )?(?:two|2)(?: inches| inch| limit)*, (?:it's |at |about |call it |like |it reads |i get )*)(?={_NUMBER})", (("x", " is "),)),
    # --- hangers
    Plainer(("supports", "rods", "unistrut"), rf"(?P<x>(?:the )?(?:supports|rods|unistruts?))(?= [^.?!,]{{0,24}}(?:every|at|spaced|are|set) {_NUMBER} ?-?(?:feet|foot|ft|'))", (("x", "hangers"),), unless=r"tie rods?|damper|coil|heater"),
    Plainer(("supports",), rf"(?P<x>supports)(?= {_NUMBER} ?-?(?:feet|foot|ft|') (?:apart|on center|o\.?c|between))", (("x", "hangers"),)),
    Plainer(("longest", "biggest", "widest", "greatest", "worst", "max"), rf"(?P<x>(?:the )?(?:longest|biggest|widest|greatest|worst|max|maximum) (?:gap|span|spacing|distance|space|stretch|run|bay|reach)(?: (?:between|from)(?: any| the)? (?:two|them|hangers|one to the next)(?: hangers)?| of (?:them|'em))?(?: is| was|'s|:)? )(?={_NUMBER} ?-?(?:feet|foot|ft|'))", (("x", "hangers every "),), unless=r"^(?!.*(?:hang|strap|trapeze))"),
    Plainer((" feet", " foot", " ft", "'"), rf"(?:hangers|straps|trapezes)[^.?!]{{0,30}} (?P<n>{_NUMBER}) ?-?(?:feet|foot|ft|')(?: apart| on center| o\.?c\.?)?,? (?P<x>(?:except|but|other than|only)(?: for)?(?: at| over| in| on)? (?:one|the one|a|the last|the first|the end) (?:bay|spot|place|gap|span|stretch|space|pair)(?: (?:of them|by \w+ \w+|at the end|there))?,?(?: (?:that's|that is|which is|where it's|where they're|is|it's|at|went|goes|runs|i went|came out at|came to))+ )(?={_NUMBER})", (("x", "one at "),)),
    # --- a piece by its number, told of first by where it is
    Plainer((" between ",), rf"(?<![\w'])(?:transition|reducer|elbow|straight|tee|offset|piece|fitting|section|one)(?P<x> (?:that goes |that sits |sitting |that's |in )?between (?:(?:number|straight|elbow|tee|offset|transition|piece) )?(?:the )?{_NUMBER} and (?:(?:number|straight|elbow|tee|offset|transition|piece) )?(?:the )?{_NUMBER}),? (?P<y>(?:(?:it's|that's|is|which is|it is|i) )?(?:marked(?: it)?(?: as)?|mark|tagged|tag|number|numbered)) (?=\w)", (("x", ""), ("y", "number"))),
    Plainer(("facing", "board", "surface", "foil"), rf"(?<![\w'])(?:facing|board|surface|foil)(?: on (?:\w+ )?(?:\d+|{_TENS}))?(?: (?:is|was))? (?P<w>{_READS}) (?:\d\d|{_TENS})(?P<x>)(?=[.,;]|$| when| and| so| but)", (("w", "is"), ("x", " degrees"))),
    Plainer(("square ninety", "square throat ninety", "square 90"), r"(?:^|(?<=[.,;] )|(?<=[.,;] a )|(?<=[.,;] the ))(?P<x>square (?:throat )?)(?=(?:ninety|90)(?![\w'-]))", (("x", ""),)),
    # --- a size in words
    Plainer((" wide",), rf"(?P<x>(?P<a>{_M}) (?:down |up |going |over )?to (?P<b>{_M}) wide,?(?: and| by| but)? (?:it's )?(?P<c>{_M}) (?:deep|high|tall)(?: both(?: ends)?| all the way)?)(?![\w'])", (("x", r"\g<a> by \g<c> to \g<b> by \g<c>"),), beside=_TAPERS),
    Plainer((" deep", " high", " tall"), rf"(?P<x>(?P<c>{_M}) wide,?(?: and| by| but)? (?:it's |goes )?(?:from )?(?P<a>{_M}) (?:down |up )?to (?P<b>{_M}) (?:deep|high|tall))(?![\w'])", (("x", r"\g<c> by \g<a> to \g<c> by \g<b>"),), beside=_TAPERS),
    Plainer((" wide",), rf"{_M}(?: of an inch)? wide(?P<x>,?(?: (?:and|but|by|only|just|about|it's))* )(?={_M} (?:deep|high|tall)(?![\w']))", (("x", " by "),)),
    # --- slopes
    Plainer(("slope", "pitch", "taper", "set back", "setback", "set-back"), rf"(?<![\w'])(?:slope|pitch|taper|set ?-?back)(?: on (?:the )?\w+(?: \w+)?)??(?P<x> {_CAME_TO} )(?={_M})", (("x", " is "),)),
    Plainer(("slope ", "pitch ", "taper ", "slope:", "pitch:", "slope,"), r"(?<![\w'])(?:slope|pitch|taper),?(?: (?:of|is|at|on|the|left|right|top|bottom)|:|=)* \d+(?P<x>/)(?=\d+(?![\d/]))", (("x", " in "),)),
    Plainer(("one to ", "one in ", "1 to ", "1 in ", "1:"), rf"(?:at|on|is|it's|to|a) (?:about )?(?:one|1) (?:to|in) {_NUMBER}(?P<x>)(?= (?:on|off) the (?:left|right|top|bottom)| on (?:both|each|all)|[.,;]|$)(?! slope)", (("x", " slope"),), beside=_TAPERS),
    Plainer((" in ", " to "), rf"(?:^|(?<=[.] ))(?P<x>)(?:one|two|three|four|1|2|3|4) (?:in|to) {_NUMBER} (?:slope )?(?=on (?:transition|reducer|trans|taper|number)(?![\w']))", (("x", "slope "),), beside=_TAPERS),
    # --- how far a side moves, and over what length
    *(
        Plainer((f" the {one} and ",), rf"(?P<x>(?:both sides|each side|both)?,? ?(?:(?:come|comes|move|moves|are|go|goes) )?(?:in )?(?P<n>{_M})(?: in)?(?: each| each side| both sides| on both sides| on each side)?,?(?: and)? back (?P<a>{_M}) (?:on|for) the {one}(?: side)? and (?:back )?(?P<b>{_M}) (?:on|for) the {other}(?: side)?)", (("x", rf" {one} in \g<n> back \g<a>, {other} in \g<n> back \g<b>"),), beside=_TAPERS)
        for one, other in (("left", "right"), ("right", "left"), ("top", "bottom"), ("bottom", "top"))
    ),
    Plainer((" takes ",), rf"(?:left|right|top|bottom)(?: side)? (?P<x>takes) (?={_M}(?:[,.;]|$| (?:and )?(?:the )?(?:left|right|top|bottom)(?![\w'])))", (("x", "moves"),), beside=_TAPERS),
    Plainer((" all ", " only ", " everything", " whole "), r"(?P<x>(?:the )?(?P<s>left|right|top|bottom)(?: side)?(?: ?(?:takes|gets|does|carries|makes|moves)| has)? (?:all of it|it all|the whole (?:change|thing)|everything|all the change)|(?:the )?(?P<t>left|right|top|bottom)(?: side)?(?:'s| is) the only (?:one|side|panel)(?: (?:that|which) (?:moves|changes|tapers|comes in|goes))?)(?![\w'])", (("x", r"all on the \g<s>\g<t>"),), beside=_TAPERS),
    Plainer((" from zero ", " from nothing ", " from 0 "), rf"(?P<x>(?:goes|comes|runs|tapers) from (?:zero|nothing|0) to )(?={_M})", (("x", "comes in "),), beside=_TAPERS),
    Plainer((" in. ", " down. ", " up. ", " out. "), rf"(?:comes|goes|drops|moves|rises) (?:in|down|up|out)(?P<x>[.]) (?={_M}[.,])", (("x", ""),), beside=_TAPERS),
    Plainer(("i mark", "we mark"), rf"(?:i|we) (?P<x>marked|mark) (?=(?:it )?{_M} (?:back|over|in|down|up)(?![\w']))", (("x", "laid out"),)),
    Plainer(("split it", "split that", "split them", "splits it"), rf"(?P<x>splits? (?:it|that|them)(?: even| evenly| up)?,? (?P<n>{_M}) and (?P=n))(?![\w/])", (("x", r"\g<n> each side"),), beside=_TAPERS),
    Plainer(("recut", "re-cut", "remade", "redid", "tossed", "scrapped", "trashed", "ditched"), rf"back {_M}[^.?!]{{0,30}}?(?P<x>[.,;] (?:(?:but |and |so )*(?:i |we )?(?:tossed|scrapped|trashed|threw out|ditched) (?:that|it|that one)(?: out| away)?[.,;] (?:and |so |then )*(?:i |we )?(?:re-?cut|remade|re-?did|cut|made) (?:it|another|a new one)|(?:and |so |then )*(?:i |we )?(?:re-?cut|remade|re-?did) (?:it|that))(?: over| again)?(?: at| to| with)?)(?= back {_M})", (("x", ", no,"),), beside=_TAPERS),
    Plainer(("instead of ",), rf"(?P<x>instead of (?:the |back |going back )?{_M}(?: back)?,? (?:i|we) (?:gave it|went|went back|made it|took it back|set it back) (?:back )?)(?={_M}[.,;]| (?:back|on))", (("x", "back "),), beside=_TAPERS),
    Plainer(("metric",), r"(?<![\w'])(?:left|right|top|bottom|both sides|sides)(?: (?:side|comes|come|moves|drops))* (?:in|down|up|out) \d{2,3}(?P<x>)[.,;]? (?:and )?(?:set )?back \d{3}(?P<y>)(?![\d\w])", (("x", " mm"), ("y", " mm")), beside=_TAPERS),
    Plainer((" most,", " least,", " more,", " less,", " furthest,"), rf"(?:left|right|top|bottom)(?: side)? (?:moves|comes in|comes down|comes up|drops|changes|tapers)(?P<x> (?:the )?(?:most|more|least|less|furthest|farthest),? )(?={_M})", (("x", " "),), beside=_TAPERS),
    Plainer((" minus ", " less "), rf"(?P<x>{_M} (?:minus|less) (?:the )?{_M},? (?:so|that's|which is|makes it|that makes it|is) )(?={_M})", (("x", ""),)),
    Plainer(("every side", "all four", "all sides"), rf"(?P<x>(?P<n>{_M}) (?:off|from|off of) (?:every side|all four sides|all sides|all four of them|all four))(?![\w'])", (("x", r"all four sides in \g<n>"),), beside=_TAPERS),
    Plainer((" zero ", " nothing ", " 0 "), r"(?P<x>(?:in|out|up|down) (?:zero|nothing|0) (?:on|at) the (?P<s>left|right|top|bottom)(?: side)?)(?![\w'])", (("x", r"\g<s> level"),), beside=_TAPERS),
    Plainer((" none", " zero", " nothing", " 0"), rf"(?:left|right|top|bottom)(?: side)? (?:in |down |up |out )?{_M}(?: back {_M})?,? (?:and )?(?:the )?(?:left|right|top|bottom)(?: side)?:? (?P<x>none|zero|nothing|0)(?=[.,;]|$)", (("x", "level"),), beside=_TAPERS),
    Plainer((" off the ", " off of the "), rf"off (?:of )?the (?:left|right|top|bottom)(?: side)?(?P<x>, )(?=(?:over|in) {_M}(?:[.,;]|$| and))", (("x", " "),), beside=_TAPERS),
    *_of_two("left", "right"),
    *_of_two("top", "bottom"),
    *(row for letter, side in (("l", "left"), ("r", "right"), ("t", "top"), ("b", "bottom")) for row in _by_letter(letter, side)),
    Plainer(("/1", "/2", "/3", "/4"), r"(?<![\w'])(?:left|right|top|bottom|both)(?: side| sides)?:?(?: in| down| up| out)? (?:\d+|\d+-\d/\d)(?P<x>/)(?=(?:1[02458]|2[02468]|3[06]|4[028])(?![\d/]))", (("x", " over "),), beside=_TAPERS),
    Plainer((" sides ",), rf"(?P<x>(?:i |we )?(?:bring|brought|pull|pulled|took|take|move|moved|draw|drew)(?: in)? (?:the |both |both the |its )*(?:two )?sides(?: in)?(?: by)? )(?={_M})", (("x", "both sides come in "),), beside=_TAPERS),
    Plainer(("'m coming", "'re coming", "'m bringing", "'m going", "'re going", "'m pulling"), rf"(?P<x>(?:i'm|we're) (?:coming|going|bringing it|pulling it|bringing that|cutting) )(?=(?:in|down|up|over) {_M})", (("x", "it comes "),), beside=_TAPERS),
    Plainer(("everything", "the whole ", " change", "whole thing"), r"(?P<x>(?:everything|(?:all (?:of )?)?the (?:whole |entire )?(?:change|move|taper|difference|reduction)|the whole thing)(?: is| comes| goes| came| was)?(?: all)? )(?=(?:on|off|from) (?:of )?the (?:left|right|top|bottom)(?![\w']))", (("x", "all "),), beside=_TAPERS),
    Plainer(("drops in", "dropped in", "drop in"), rf"(?<![\w'])(?:left|right|sides?)(?: side)? (?P<x>(?:drops|dropped|drop) in )(?={_M})", (("x", "comes in "),)),
    Plainer((" toward", " to the middle", " to the center"), rf"(?P<x>(?:moves|moved|goes|comes|came|shifts|slides|went) (?P<n>{_M}) (?:towards?|to) the (?:middle|center|centre|inside))", (("x", r"comes in \g<n>"),), beside=_TAPERS),
    Plainer((" in ", " over ", " within "), rf"(?<![\w'])(?:in|down|up|out) {_M}(?P<x>,? (?:and )?(?:i did |it does |all )?(?:that|all that|that's|that was|it's|it was|this|this is|does it|did it|all)(?: all| only| just)* (?:in|over|within) )(?={_M})", (("x", " over "),), beside=_TAPERS),
    Plainer((" side",), r"on the (?P<x>(?:near|far|wall|door|window|street|hall|corridor|inside|outside|front|back|north|south|east|west) side(?:,|\.\.\.|\.|-|—)* ?(?:that's|that is|which is|meaning|so that's|i mean) the )(?=(?:left|right|top|bottom)(?![\w']))", (("x", ""),)),
    Plainer(("back it", "backed it", "back that", "backed that", "backed her"), rf"(?P<x>back(?:ed)? (?:it|that|her)(?: (?:up|off|out|down))?)(?= (?:only |just |about )?{_M}(?:[.,;]|$| on| and| for| because))", (("x", "back"),), beside=_TAPERS),
    Plainer(("set back", "setback", "set-back"), rf"(?:set ?-?back)(?P<x>(?:'s| is| was| came out| came)?(?: (?:a bit|a little|kind of|kinda|way|too|pretty|really))* (?:short|tight|long|small|close|off)(?:,| at|:)+ )(?={_M})", (("x", " "),)),
)
