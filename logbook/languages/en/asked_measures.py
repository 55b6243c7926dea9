"""English of what another asked to know of a piece and he told: "the boss asked me what the staple spacing is on tee 104 and I told him three", "what's the slope on 9? Six in twenty-four".

Regular expressions over lower-case letters, as in `plainer.py`. What is asked for by its name is read as told ("the slope on 9 is six in twenty-four"),
what is asked otherwise as his own question, which `logbook.reading.own.answers` answers. What is asked of another man's piece is left.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.plainer import Plainer

_ASKS = ("asked", " asks", " to know", " asking", "wondered")
_WHO = r"(?:(?:(?:the|my|our|a|new|old|this) )*(?!(?:i|we|you|i've|and|or|if|when)(?![\w']))[a-z]+(?: (?!(?:i|we)(?![\w']))[a-z]+)? )?"
_ASKED = rf"(?:^|(?<=[.?!;,] )|(?<=and )|(?<=but ))(?P<x>{_WHO}(?:just |then |also )?(?:asked|asks|wanted to know|wants to know|was asking|wondered)(?: (?:me|us|me about it))?(?: (?:just now|today|this morning|yesterday|again|at lunch))?,? )"
_ASKED_WHETHER = _ASKED.removesuffix(")") + "(?:if|whether) )"
_OWN = r"(?![^.?!]{0,60} (?:his|her|their|your|you|he|she|they had|should|shall|supposed|will|would|could|can|must|may|has to|have to|(?<!i )(?<!we )had to|need|needs|want|wants|allowed|going to|gonna|drawn|drawing|print)(?![\w']))"
_PIECE = rf"(?:the )?(?:my )?(?:{KIND},? )?(?:number )?(?:[a-z]-?)?{NUMBER}"
_AT = r"(?:on|of|in|at|for|through|along)"
_SAID = r"(?:i|we)(?:'d| had to| just| only| have to)* (?:told (?:him|her|them|the \w+)|said|say|tell (?:him|her|them)|answered),?(?: that)?"
_SO = rf"(?:(?:,? and|,? but|,? so|[.,;])(?: (?:and|so|well))* {_SAID} (?:(?:it's|it is|they're|they are|it was|they were|that's) )?"
_BARE = r"|(?:,? and|,? but|[.,;]) (?:(?:well|and) )?(?:it's|it is|they're|they are|that's|it was|they were) |[.] )"
_ANSWER = r"(?=(?:(?:about|only|just|roughly|maybe|right at|around|every|exactly|at|over|a little over|close to) )*(?:\d|(?:an?|half|quarter|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty)(?![\w'])))"
_KNOWN = r"(?!(?:i|we|he|she|you)(?:'d|'ll|'m| don't| didn't| would| was| could| can| will)(?![\w'])|to |let |ask |later|maybe|that i)"
_NAME = r"(?:(?:the )?(?:staple|hanger|strap|screw|cross tab|tab) spacing|(?:the )?(?:slope|tape width|leg length|static pressure|static|air temperature|throat radius)|the pressure)"
_THINGS = r"(?:(?:the )?(?:staples?|cross tabs|tabs|hangers|straps|screws|washers|legs|staple legs|tape|joint|air|pressure|damper|coil)(?![\w']))"
_LEAD = r"(?: (?:well|um|uh|okay|ok|so|i'd say|i told (?:him|her|them)|(?:they|he|she|the \w+) (?:told me|said|says)(?: (?:that|it's|it is))*|it's|it is|they're|they are|that's|it was)[.,]?)* "
_MEASURED = r"(?:how (?:far apart|wide|long|hot|cold|warm|heavy|tight|close|big|far)|what|which (?:way|tape))"
_OF_THESE = r"(?:staple|leg|hanger|strap|tape|tab|screw|slope|static|pressure|gap|joint|temperature|cold it|warm it|damper|coil|spacing|clinch|washer)"
_NO = r"(?:no|nope|yes|yep|yeah|not|it (?:isn't|is not|wasn't|was not|doesn't|does not|is|does|has)|they (?:aren't|are not|weren't|don't|do not|are|do)|i (?:did not|didn't|had not|hadn't|did|had)|it's not)(?![\w'])"
_ASIDE = r"(?:[.,;]|,? and|,? but)(?: (?:and|so|well))* (?:(?:i|we)(?: had to| just)* (?:told (?:him|her|them)|said|say|tell (?:him|her|them))(?: that)? )?"
_LED = r"(?:(?:and|so|okay|ok|alright|well|um|uh|hey),? )*"

ENGLISH_ASKED_MEASURES = (
    # --- asked for by its name: "what the slope is on 9 and I told him …", "the hanger spacing on 9, and it's …", "about the cross tabs on 9 and I said …"
    *(
        Plainer(_ASKS, rf"{_ASKED}{_OWN}(?P<w>{ahead}){name}(?P<b>{be}) ?{_AT} {_PIECE}(?P<c>{then})(?P<y>{_SO}{_BARE}){answer}", (("x", ""), ("w", ""), ("b", ""), ("c", ""), ("y", says)), beside=beside)
        for ahead, name, be, then, says, beside, answer in (
            ("what ", _NAME, " (?:is|was|runs)", "", " is ", ("spacing", "slope", "static", "width", "length", "temper", "radius", "pressure"), _ANSWER),
            ("(?:what |about )?", _NAME, "", "(?: is| was)?", " is ", ("spacing", "slope", "static", "width", "length", "temper", "radius", "pressure"), _ANSWER),
            ("how hot ", "the air", "(?: is| was| gets| runs)?", "(?: is| was| gets| runs)?", " is ", ("how hot",), _ANSWER),
            ("about ", _THINGS, "", "", " are ", (" about ",), _KNOWN),
        )
    ),
    Plainer(_ASKS, rf"{_ASKED}{_OWN}{_MEASURED} (?=[^.?!]{{0,60}}{_OF_THESE})(?=[^.?!]{{0,80}}(?:{KIND}|\d|it(?![\w'])|(?:this|that) one))[^.?!]{{3,80}}?(?P<y>{_SO}){_KNOWN})", (("x", ""), ("y", "? ")), beside=(" how ", " what ", " which "), unless=r"(?:know|wondered) (?:how|what) to "),
    # --- whether it is listed, hangs by itself, is turned out, was warmed
    Plainer((" if ", " whether "), rf"{_ASKED_WHETHER}{_OWN}(?=[^.?!]{{0,70}}(?:listed|rated|ul(?![\w])|own hangers|own rods?|by itself|on its own|outward|turned out|inward|warmed|heated|pre-?heated))[^.?!]{{5,80}}?(?P<y>{_ASIDE})(?={_NO})", (("x", ""), ("y", "? ")), beside=_ASKS),
    Plainer(("warm", "heat"), rf"(?<![\w'])(?:i|we)(?:'d| had)? (?:pre-?)?(?:warm|heat)(?:ed)?(?: up)?(?P<x>) (?:the )?(?:{KIND} )?(?:number )?{NUMBER}(?: up)? (?:first|before|ahead of)(?![\w'])", (("x", " it on"),)),
    # --- asked aloud, and answered himself
    Plainer(("what",), rf"(?:^|(?<=[.?!;] ))(?P<w>{_LED}what(?:'s|s| is| was) ){_NAME} ?{_AT} {_PIECE}(?P<y>\?{_LEAD}){_ANSWER}", (("w", ""), ("y", " is ")), beside=("? ",)),
    Plainer(("how hot",), rf"(?:^|(?<=[.?!;] ))(?P<w>{_LED}how hot (?:is|was|does|did) )the (?:supply |return )?air(?P<b>(?: get| run)?) ?{_AT} {_PIECE}(?P<c>(?: get| run)?)(?P<y>\?{_LEAD}){_ANSWER}", (("w", ""), ("b", ""), ("c", ""), ("y", " is ")), beside=("? ",)),
    Plainer(("how much",), rf"(?:^|(?<=[.?!;] ))(?P<w>{_LED}how much )(?:static(?: pressure)?)(?P<b> is(?: there)?| was(?: there)?) {_AT} {_PIECE}(?P<y>\?{_LEAD}){_ANSWER}", (("w", ""), ("b", ""), ("y", " is ")), beside=("static",)),
    Plainer(("what ",), rf"(?:^|(?<=[.?!;] ))(?P<w>{_LED}what (?:static|pressure|static pressure) (?:does|is|did) ){_PIECE}(?P<y>(?: run| see| running| running at| run at| at)?\?{_LEAD}){_ANSWER}", (("w", ""), ("y", ", static pressure ")), beside=("? ",)),
    Plainer(("where",), rf"(?:^|(?<=[.?!;] ))(?P<w>{_LED}where(?:'d| did| does| is|'s| was) )(?P<n>(?:the )?(?:{KIND},? )?(?:number )?{NUMBER})(?P<y>(?: go| going| end up| ended up| at| hung| installed| get hung)?\?)(?= (?:it's|it is|it went|it goes|it ended up|it sits|it hangs|it got)(?![\w']))", (("w", ""), ("y", ".")), beside=("? ",)),
)
