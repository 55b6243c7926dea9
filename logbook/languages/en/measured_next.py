"""English that measures one piece and then, by the number alone, the next: "27 is hung every six feet, 28 every nine"."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT, SAID_NUMBER
from logbook.languages.measured_next import Measured, MeasuredNext

_V = rf"(?:(?:an?|one|two|three) hundred(?:(?: and)? {SAID_COUNT})?|(?:one|two|three) (?:ten|eleven|twelve|\w+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty(?:[- ]\w+)?)(?![\w'-])|(?:three|five|seven)[- ](?:eighths|quarters|sixteenths)|{SAID_NUMBER})"
_UNIT = r"(?:[ -](?:inch(?:es)?|in\.?|feet|foot|ft|degrees|pounds|lbs?|millimeters?|mm|inches of water|of an inch))?"
_M = rf"(?:[a-z]-?\d{{1,3}}|\d{{1,3}}|{SAID_COUNT})(?![\w'/-]*\w| (?:{'|'.join(('by', 'and a', 'inch', 'inches', 'feet', 'sides', 'degrees', 'hundred'))})(?![\w']))"
_JOINT = r"(?:[,;.]|(?:,)? (?:and|&|but|while|whereas))(?: (?:and|but|while|then|now))?"
_LINK = r"(?:'s|,| (?:is|are|was|were|has|have|had|got|gets|takes|sees|reads|at|on|to|only|just|about|hangs|runs|weighs|comes(?: in)?(?: at)?|came(?: in)?(?: at)?|they'?re|they are|it'?s|it is|every|one every|(?:(?:they|it|those|these|mine|i|we) )?(?:all )?(?:came out|ended up|wound up|turned out|landed|ran|run|went|go|measured?|stand|got|found|have|put (?:them|it))(?: (?:at|to|out at|in at))?|more like|closer to|a good|a full|up to|out to))*"
_TAIL = r"(?: (?:apart|wide|long|heavy|legs|ones|on center|on centers|of static))*"
_LED = rf"(?:on|in|under|for|of|at) (?:the )?(?:{KIND} )?(?:number )?(?:[a-z]-?)?(?:\d{{1,3}}|{SAID_COUNT})"
_SMALL = r"(?!.*(?:ty(?![\w])|teen|hundred|\d\d))"
_LARGE = r".*(?:ty(?!\w)|ty[- ]|teen|hundred|ten(?!\w)|\d\d)"
_UP_TO_FORTY = r"(?!.*(?:fifty|sixty|seventy|eighty|ninety|hundred|[4-9]\d|\d\d\d))"
_ENDS = rf"(?=[.,;!]|$| (?:and|but|while) (?:the )?(?:on |in |at |under )?(?:{KIND}|number|\d))"
_EXCEPT = r"(?:but|except(?:ing)?(?: for)?|save(?: for)?|bar|apart from|aside from|other than|barring)"
_WHOLE = r"(?:everywhere|all over|all around|all round|all the way (?:around|round)|throughout|on every side|on all sides|most places|every place)"
_THERE = r"(?:where|which|there|that|and there|and that|and those|but there)"

ENGLISH_MEASURED_NEXT = MeasuredNext(
    cues=("stapl", "hang", "hung", "strap", "tape", "static", "air", "degrees", "weigh", "pound", "screw", "gap", "tabs", "legs"),
    behind=rf"(?P<j>{_JOINT}) (?P<on>(?:(?:the one|that|those|the ones) )?(?:on|in|at|under|for|of) (?:the )?)?(?:the )?(?P<k>{KIND} )?(?P<n>number )?(?P<m>{_M})(?P<link>{_LINK}) (?P<v>(?:about )?{_V}(?![\w'/-]))(?P<u>{_UNIT})(?P<t>{_TAIL})(?P<end>){_ENDS}",
    ahead=rf"(?P<j>{_JOINT}) (?:(?:every|at|to|only|just) )*(?P<v>(?:about )?{_V}(?![\w'/-]))(?P<u>{_UNIT})(?P<t>{_TAIL}) (?P<on>(?:on|in|under|for) (?:the )?)(?P<k>{KIND} )?(?P<n>number )?(?P<m>{_M})(?P<end>){_ENDS}",
    ends=rf"(?<![\w'/-])(?:{_V}{_UNIT}|an inch|a foot)(?:[ -](?:apart|wide|long|heavy|tape|staples|legs|staple spacing|spacing|spacing on the staples|static|of static|of water|gap|gap at the joint|at the joint|on center|on centers|screws|hangers|hanger to hanger|center to center|air))*(?: {_LED})?(?:, (?:hanger to hanger|center to center|staple to staple))?$",
    apart_cues=("but ", "except", "save ", " bar ", "apart from", "aside from", "other than", "barring"),
    apart=rf"(?P<x>,?(?: {_WHOLE})? {_EXCEPT}(?: (?:on|at|by|in|along|under|over|around|near|down|up|behind))* (?:the |its |my |that |one )?(?P<p>[a-z][\w' -]{{2,30}}?)(?:,|, and| and)? {_THERE},?(?: {_EXCEPT}(?: (?:on|at|by|in|for))* (?:the |its )?[\w' ]{{3,25}}?,?)?(?: (?:it|they|those|the \w+))?(?:'s|'re| is| are| was| were| run| runs| go| goes| went| hang| hangs| sit| sits| got| comes| came)*(?: (?:only|about|up|out|more|like|every|at|on|to|closer|down|spread|spaced|just))* )(?P<v>{_V}(?![\w'/-]))(?P<u>{_UNIT})(?P<t>{_TAIL})(?=[.,;!]|$)",
    said=rf"(?<![\w'/-])(?P<n>{_V})(?![\w/])(?P<u>{_UNIT})",
    told_so=rf"(?<![\w']){_LED}(?P<end>)(?=[,;.]| and| but| while)",
    led=rf"{_LED}$",
    number="number ",
    nouns=("legs",),
    names=rf"(?:{KIND}|number) (?:[a-z]-?\d|\d|{SAID_COUNT})|(?<![\w'/.-])(?:[a-z]-)?\d\d\d?(?![\w'/.\"-])(?! (?:inch|feet|foot|degrees|pounds|mm|by))",
    unless=r"n't|(?<![\w'])(?:not|never|no|none|if|should|supposed|wants?|needs?|except|but|took|sides|side|plan|was (?:at|every)|were (?:at|every))(?![\w'])|\?",
    metric=r"(?<![\w'])(?:millimeters?|mm|centimeters?|cm)(?![\w'])",
    things=(
        Measured(r"(?<![\w'])(?:half|three-eighths|three eighths|quarter|five-sixteenths|\d/\d+)(?: of an)?(?:[- ]inch)? (?:staples|legs)|staple legs|legs (?:are|of|on)", "has {v} {u} staples", "inch", r".*(?:half|quarter|eighth|sixteenth|/|\.)", least=True),
        Measured(r"(?<![\w'])stapl(?:ed|es|ing)\b[^.?!]*(?:every|apart|\bat\b|inch|millimeter|center)|(?:inch|millimeter) (?:staple spacing|spacing on the staples)", "is stapled every {v} {u}", "inches", _SMALL),
        Measured(r"(?<![\w'])(?:hung|hangs|hangers?|straps)\b[^.?!]*(?:every|apart|\bat\b|feet|foot|center)", "is hung every {v} {u}", "feet"),
        Measured(r"(?<![\w'])tape\b[^.?!]*(?:inch|wide|width)|inch (?:\w+ )?tape\b", "has {v} {u} wide tape", "inch", _SMALL, least=True),
        Measured(r"(?<![\w'])static\b", "runs at {v} {u} of static", "inches", _SMALL),
        Measured(r"(?<![\w'])(?:air|degrees)\b(?! (?:off|out of))", "has air at {v} {u}", "degrees", _LARGE),
        Measured(r"(?<![\w'])(?:weighs|weighed|pounds)\b", "has a damper that weighs {v} {u}", "pounds", _LARGE),
        Measured(r"(?<![\w'])screws?\b[^.?!]*(?:every|apart|\bat\b|inch|center)", "has screws every {v} {u}", "inches", _UP_TO_FORTY),
        Measured(r"(?<![\w'])gap\b", "has a {v} {u} gap at the joint", "inch", _SMALL),
        Measured(r"(?<![\w'])tabs\b[^.?!]*\blong\b", "has cross tabs {v} {u} long", "inches", _UP_TO_FORTY, least=True),
        Measured(r"(?<![\w'])tabs\b[^.?!]*(?:every|apart|center)", "has cross tabs every {v} {u}", "inches", _UP_TO_FORTY),
    ),
)  # fmt: skip
