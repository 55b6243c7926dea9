"""English whose clauses and measures run together without a sign between them: "back twelve three eighths staples", "it's tony number eighteen".

A sign is put there, or the plain words for what stands between. Rows like those of `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.breaths import _N, _OF_ONE, _PARTS
from logbook.languages.en.filth import FILTHS
from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.names import FIRST_NAMES
from logbook.languages.en.numbers import SAID_COUNT as _NUMBER
from logbook.languages.plainer import Plainer

_NAMES = "|".join(sorted(FIRST_NAMES))

ENGLISH_RUN_TOGETHER = (
    # --- "there's a quarter-inch opening left at the branch joint": a gap, and no branch
    Plainer((" opening",), rf"(?:there's|there is|there was|left|leaves|leaving|with|got|has|have|shows?)(?: (?:about|like|maybe|still|me|only|just|around))*(?: an?)? (?:{_N} |\d+ )?(?:and an? )?(?:{_OF_ONE}|{_PARTS}|{_N}|\d/\d{{1,2}})[- ]?(?:inch(?:es)?|\")?,? (?P<x>opening(?: left| still| showing)?)(?=[.,;!]|$| (?:at|on|in|along|by|near|around|between)\b)", (("x", "gap"),), unless=r"door|frame|register|grille|for the (?:branch|collar|tap)"),
    # --- the board by its class, the sides of one act behind those of another
    Plainer(("seventy-five", "seventy five"), r"(?:board|duct ?board|e ?i|class)(?:,| is|'s)? (?P<x>four seventy[- ]five)(?=[.,;]|$| (?:stapled|taped|board|on|and))", (("x", "475"),)),
    Plainer((" sides and ",), r"(?:taped|stapled) (?:on |all )?(?:two|three|four|[2-4]) sides and (?:taped|stapled) (?:on |all )?(?:two|three|four|[2-4])(?P<x>)(?=[.,;]|$| (?:and|but|rubbed|so)\b)", (("x", " sides"),)),
    Plainer((" sides taped", " sides stapled"), r"(?:i |we )?(?:got|have) (?P<n>two|three|four|[2-4]) sides (?P<v>taped|stapled)(?P<x>)(?= (?:still|but|and|i|haven't|need)\b)", (("x", ","),)),
    Plainer(("same size, ",), rf"same size, (?:{_N}|\d+|{_NUMBER})(?: inches| inch| feet| foot)(?P<x>)(?=[.,;]|$)", (("x", " long"),)),
    Plainer((" inch run ", " inch on run "), rf"(?:collar|spin[- ]?in)(?P<x> )(?=(?:{_N}|\d+) inch(?: round)?(?P<y> )(?:on )?run (?:\d|\w))", (("x", ", "), ("y", ", "))),
    Plainer((" box",), r"(?:reheat|vav|terminal|heater|electrical|junction|control|actuator) (?P<x>box)(?![\w'])", (("x", "motor"),)),
    # --- dirt on the facing, and what the piece still waits for
    Plainer(("facing and ", "facing, and ", "facing but ", "foil and ", "foil, and ", "surface and ", "board and ", "seam and ", "seams and ", "it and it still", "it and i still"), rf"{FILTHS} (?:all over|on|across|over|along)(?: top of)? (?:the |my |its |that )?(?:facing|foil|surface|board|face|jacket|seams?|joints?|it)(?P<x>,? (?:and|but)) (?=(?:it|this one|i|we|they)(?: still| also)*(?:'s| is| has| have| needs?| gotta| got| wants?)(?: still| also)* (?:to|not|tap|stapl|rub|be))", (("x", "."),)),
    # --- how a test was run
    Plainer((" up to ", " to ", " at "), r"(?P<x>(?:took|brought|ran|cranked|blew|raised|got|set|put|held) (?:it|her|the duct|the pressure|the section|the run)(?: up)?(?: to| at)) (?=(?:half|one|two|three|an?|\d)(?: an?)?(?: and a half)? ?(?:inch|half|quarter|\d))", (("x", "pumped it to"),), beside=("leak", "cfm", "fan", "test")),
    Plainer((" for ",), rf"hangers?(?![\w'])[^.?!;]{{0,48}}(?:feet|foot|ft)(?P<x> for) (?=(?:the |a )?(?:\d+|{_N}|\w+[- ]\w+) by )", (("x", " on"),)),
    # --- "got the elbow up, number 55": hung
    Plainer((" up",), rf"(?:^|(?<=[.!?,;] )|(?<=and ))(?P<x>(?:i |we )?(?:got|have|put|'ve got) (?P<k>(?:the|that|this|my) {KIND}) up)(?=[.,;!]|$| (?:on run|and|number|tied)\b)", (("x", r"hung \g<k>"),)),
    # --- "six inches over in a length of 42"
    Plainer((" in a length of ", " over a length of "), rf"(?:{_N}|\d+)(?: and (?:an? |three |five |seven )?(?:half|quarters?|eighths?))?(?: inch(?:es)?)? over (?P<x>in a length of )(?=\d|\w)", (("x", "in "),)),
    Plainer((" over to the ",), rf"(?:{_N}|\d+)(?: and (?:an? |three |five |seven )?(?:half|quarters?|eighths?))?(?: inch(?:es)?)? over(?P<x> to the (?:left|right|top|bottom)) (?=in (?:\d|{_NUMBER}))", (("x", ""),)),
    # --- how big a hole is: no offset
    Plainer((" across",), r"(?:holes?|tears?|rips?|punctures?|gash|slit|dent|cut)(?![\w'])[^?;]{0,48}? inch(?:es)?(?P<x> across)(?![\w'])(?! (?:the|from|to|a)\b)", (("x", " wide"),)),
    Plainer((" long",), r"(?:tears?|rips?|gash|slit|cut|split)(?![\w'])[^?;]{0,64}?(?<![\w'])(?:(?:one|two|three|four|five|six|[1-6])(?: and a half)?|half an?|an?)[- ]inch(?:es)?(?P<x> long)(?![\w'])", (("x", " wide"),), unless=r"tabs?(?![\w'])|strips?"),
    # --- why it was this one: "because that is only what is left on the cart"
    Plainer(
        ("because", "cause ", "since "),
        r"(?P<x>(?:because|'?cause|since) (?:that|it|this)(?:'s| is| was) (?:(?:only|just|all) )*(?:what|all|the only (?:thing|tape|one|stuff|roll|kind))(?:'s|(?: that)? (?:is|was|were|i had|we had|i've got|there was|they had|i got|i could find))(?: left)?(?: (?:on|in) (?:the|my) \w+)?)(?= (?:rubbed|stapled|taped|and|then|hung|trimmed|wiped)\b)",
        (("x", ","),),
    ),
    # --- who speaks, and then the piece
    Plainer((" number ", " straight ", " elbow ", " tee ", " fitting ", " piece "), rf"(?:^|(?<=[.!?] ))(?:(?:hey|hi|yo|yeah|okay|ok|so|man|uh|um|alright),? )*(?:it's|its|this is|it is) (?:{_NAMES})(?: here| again)?(?P<x>)(?= (?:number|straight|elbow|tee|fitting|piece) (?:\d|{_NUMBER}))", (("x", ","),)),
    Plainer(("ninety, ",), rf"(?:two|three|four|2|3|4)[- ]piece ninety(?P<x>)(?=, (?:\d{{1,3}}|{_NUMBER}),)", (("x", " elbow"),)),
    Plainer(("male end layout",), r"(?P<x>(?P<e>female|male) end layout)(?![\w'])", (("x", r"laid out from the \g<e> end"),)),
    Plainer(("proud of ",), r"(?P<x>(?:i'm|i am|we're|i was|we are)(?: (?:pretty|real|kind of|kinda|sort of|mighty|damn|very|right))* proud of (?:it|that|this|them|her|that one|this one|the \w+))(?![\w'])", (("x", "all good"),)),
    # --- the collar, its number and how wide it is, run on
    Plainer((" inch",), rf"(?:collar|spin[- ]?in|take[- ]?off|starter) (?:number )?(?:\d+|{_NUMBER})(?: on)? run (?:\d+|{_N})(?P<x>) (?:{_N}|\d+) inch(?: round)?(?P<y>)(?= (?:off|collar|tabs|mastic|spin))", (("x", ","), ("y", ","))),
    Plainer((" inch number ", " inch round number "), rf"(?:collar|spin[- ]?in|take[- ]?off|starter)(?P<x> )(?=(?:{_N}|\d+) inch(?: round)?(?P<y> )number)", (("x", ", "), ("y", ", "))),
    Plainer(("static",), r"static(?: pressure)?(?P<x> there)(?= (?:is|was|runs|reads)\b)", (("x", ""),)),
    Plainer((" sides taped ", " sides stapled "), r"(?:stapled|taped) (?:on )?(?:all |the )?(?:two|three|four|[2-4]) sides(?P<x>)(?= (?:taped|stapled) (?:on )?(?:all |the )?(?:two|three|four|[2-4]) sides)", (("x", ","),)),
    # --- two measures run together: "back twelve three eighths staples", "twenty by ten inch and a half board"
    Plainer(
        ("three", "five", "seven", "one "),
        r"(?<![\w'-])(?:(?:twenty|thirty|forty|fifty|sixty)[- ](?:one|two|three|four|five|six|seven|eight|nine)|two|four|six|eight|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|\d{1,2})(?P<x> )(?=(?:one|three|five|seven)[- ](?:quarters?|eighths?|sixteenths?)(?:[- ]inch)? (?:long )?(?:staples?|legs?|crown|gap|hole|tear|opening)(?![\w']))",
        (("x", ", "),),
    ),
    Plainer(("inch and a half ", "inch and a quarter "), rf"(?<![\w'-])(?:{_N}|(?:twenty|thirty|forty|fifty|sixty)[- ]\w+|thirty|forty|fifty|sixty)(?P<x> )(?=inch and a (?:half|quarter) (?:thick )?(?:board|duct ?board|tape|staples?)(?![\w']))", (("x", ", "),)),
    # --- what ran out, run on behind another act
    Plainer((" ran out of ", " run out of "), r"(?:stapled|trimmed|wiped|clean|cleaned|bent|cut|made)(?: (?:every (?:two|three|one|2|3)(?: inches)?|it|up|off|good|down|all four sides|all around))*(?P<x>)(?= (?:then )?(?:i |we )?(?:ran|run) out of (?:the |my )?(?:tape|foil|181|one eighty))", (("x", ","),)),
    # --- on how many sides, and then what was not done
    Plainer((" sides ",), r"(?:stapled|taped)(?: it)?(?: on| at| down)? (?:on )?(?:all|both|all four|all 4|the four|four|4|three|3|two|2) sides(?P<x>)(?= (?:not|no|haven't|have not|hasn't|didn't|never|ain't|isn't|but) )", (("x", ","),)),
)
