"""English as an ear writes it that hears a breath: a comma in the middle of a measure ("two and, a half wide"), and two measures that are the ends of one ("every two, two and a quarter, somewhere in there").

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_N = r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|twenty|twenty[- ](?:two|four|six|eight)|thirty|\d{1,2})"
_PARTS = r"(?:half|quarters?|eighths?|sixteenths?)"
_OF_ONE = rf"(?:an?|one|three|five|seven|nine) {_PARTS}"
_GOES_ON = r"(?:[- ]inch(?:es)?)?(?=[.,;!]|$| (?:wide|apart|long|tape|foil|staples?|legs?|and|but|on|in|rubbed|taped|stapled|all|so|then|i|it|they|that's|it's)(?![\w']))"
_HOT = r"(?=(?:(?:one|two|three) (?:hundred|(?:twen|thir|for|fif|six|seven|eigh|nine)ty)|\d{3})(?![\w'/]))"
_THEREABOUTS = r"(?:,? ?(?:or )?(?:somewhere|someplace)? ?(?:in there|around there|about there|right around there|thereabouts|there abouts|in between|between there)(?: somewhere)?)"

_SUBJECT = r"(?:^|(?<=[.,;:!?] )|(?<=\band )|(?<=\bbut )|(?<=\bso )|(?<=\bthen )|(?<=\bcause )|(?<=\bum )|(?<=\buh )|(?<=\d ))(?:the|my) (?:[a-z]+ )?(?:tape|foil|steps?|grooves?|staples?|legs?|scrim|vanes|tabs|flap|hangers?|screws|washers|gap|static|pressure|damper|insulation|facing|slope)"
_A_PART = r"(?:the |that |its |my )?(?:one |other |last )?(?:[a-z]+ )?(?:joint|seam|side|end|corner|edge|top|bottom|back|heel|throat)(?: (?:by|at|near|over|behind|next to|against|along|under|above) the \w+)?"
_NEVER_ON = r"(?:never (?:got|went|did get|made it|get)(?: (?:put|stuck|laid|run|driven|shot))?(?: (?:on|in|there|down))?|(?:i|we) (?:never|didn't|did not|forgot to|haven't)(?: (?:ever|even))? (?:put|get|got|run|ran|shot|shoot)(?: (?:it|them|any))?(?: put)?(?: (?:on|in|there|down))?|(?:didn't|did not|hasn't|haven't) (?:get|go|gone|got|gotten)(?: put)?(?: (?:on|in|there))?|(?:isn't|aren't|is not|'s not|is) (?:on there|on|in|there|missing|not there)(?<!is on)(?<!is in)(?<!is there)(?<!is on there))(?: yet)?"

ENGLISH_BREATHS = (
    # --- the thing, and "it" or "they" for it
    Plainer((" it's ", " it is ", " it was "), rf"{_SUBJECT}(?P<x>,? (?:it's|it is|it was)) ", (("x", " is"),)),
    Plainer((" they're ", " they are ", " they were ", " they go ", " they bent ", " they run ", " they all "), rf"{_SUBJECT}(?P<x>,? they(?:'re| are| were)?)(?= (?:all |both |just )*(?:folded|bent|turned|clinched|pointing|facing|curled|go|goes|run|every|at|about|two|three|four|five|six|eight|ten|twelve|in|on|not|every|straight|spaced|a|half|\d)(?![\w']))", (("x", " are"),), unless=r" they (?:go|run|bent)"),
    # --- the tape on one part of it
    *(
        Plainer((f"{thing} on ", f"{thing} at ", f"{thing} along "), rf"(?<![\w'])(?P<x>(?:the |any |no )?{thing} (?:on|at|along|over|in) (?P<p>{_A_PART})(?:,? the one (?:by|at|near|over|behind|next to|against|along|under|above) the \w+)?,? {_NEVER_ON})(?=[.,;!]|$| and | but | so | because | cause )", (("x", rf"\g<p> isn't {done}"),))
        for thing, done in (("tape", "taped"), ("staples", "stapled"))
    ),
    # --- what is wrong with the legs, and with how many of them
    Plainer((" not all", " most of them", " some of them", " a lot of them", " half of them", " a few of them", " but most"), r"(?:legs?|staples?|clinch|ends)(?![\w'])[^.?!;]{0,60}(?<![\w'])(?:in|inwards?|inside|under|wrong way)(?P<x>,? (?:not all(?: of (?:them|'em))?,? (?:but |just )?(?:most|a lot|some|half|plenty|quite a few|a bunch)(?: of (?:them|'em))?|(?:most|some|a lot|half|a few|a bunch) of (?:them|'em))(?: (?:are|were|did|anyway|though))*)(?=[.,;!]|$)", (("x", ""),), beside=("leg", "clinch", " inward")),
    # --- one a foot
    Plainer((" a foot", " per foot"), r"(?<![\w'])(?P<x>(?:one|1) (?:a|per|each|to a|to the|in a) foot)(?! (?:and|long|wide|apart|from|of))(?![\w'])", (("x", "every twelve inches"),), beside=("tab", "screw")),
    # --- torn, by another word for it
    Plainer((" left it tore", " left it rip", " left it busted", " left it broke"), r"left it (?P<x>tore(?: up)?|ripped up|busted(?: up)?|broke)(?=[.,;!]|$| and| so)", (("x", "torn"),)),
    # --- the comma of a breath
    Plainer((" and,",), rf"(?<![\w'-]){_N} and(?P<x>,) {_OF_ONE}{_GOES_ON}", (("x", ""),)),
    Plainer((", and a", ", and one ", ", and three ", ", and five ", ", and seven "), rf"(?<![\w'-]){_N}(?P<x>,) and {_OF_ONE}{_GOES_ON}", (("x", ""),), unless=r"and (?:an? )?half (?:of|the|it)"),
    Plainer((" a,", " an,"), rf"(?<![\w'-]){_N} and an?(?P<x>,) (?:half|quarter|eighth)(?![\w'])", (("x", ""),)),
    Plainer((", eighth", ", sixteenth", ", quarters"), r"(?<![\w'-])(?:one|three|five|seven|nine|eleven|thirteen|fifteen)(?P<x>,) (?:eighths?|sixteenths?|quarters)(?![\w'])", (("x", ""),)),
    Plainer((", inch",), rf"(?<![\w'-])(?:{_N}|an?|half|quarter|eighths?|sixteenths?|quarters)(?P<x>,) inch(?:es)?(?= (?:tape|foil|staples?|legs?|wide|long|apart|gap|hole|tear|rip)(?![\w'])|[.,;!]|$)", (("x", ""),)),
    Plainer((", by ",), rf"(?<![\w'-]){_N}(?P<x>,) by {_N}(?![\w'])", (("x", ""),)),
    Plainer((" i lied", " i lie", " i'm lying", " i'm wrong", " i was wrong", " take that back", " that's wrong"), rf"(?<=[,.;] )(?P<x>(?:no|wait|nope|well),? (?:i lied|i lie|i'm lying|i'm wrong|i was wrong|i take (?:that|it) back|that's wrong),? )(?=(?:(?:they're|it's|they are|it is|it was|that's|they were) )?(?:really |actually )?(?:every |at )?(?:{_N}|an?|half|quarter)(?![\w']))", (("x", "no, "),)),
    Plainer((" ones",), r"(?:no|wait),? (?:they|those|these) (?:were|are) (?P<x>the )(?:half|quarter|(?:one|three|five|seven|nine)[- ](?:quarters?|eighths?|sixteenths?))(?:[- ]inch)?(?P<y> ones)(?![\w'])", (("x", ""), ("y", ""))),
    Plainer(tuple(f"no {n}, {n} " for n in ("one", "two", "three", "four", "six", "eight", "ten", "twelve", 2, 3, 4, 6, 8, 10, 12)), rf"(?<![\w'])no (?P<x>(?P<n>{_N}), )(?=(?P=n) (?:inch(?:es)?|feet|foot)(?![\w']))", (("x", ""),)),
    Plainer(("'s tore", " is tore", " was tore", " got tore", " are tore"), r"(?<![\w'])[a-z]+(?:'s| is| was| got| are) (?P<x>tore)(?= up| open|[.,;!]|$| and| but| so| on| at)", (("x", "torn"),)),
    # --- how hot the air is, and where he read it
    Plainer((" said ", " says ", " reads ", " showed ", " shows "), rf"(?<![\w'])air(?: (?:in|on|through|inside|coming|off|up) (?:[a-z]+ ){{0,2}}?[a-z]+)?(?P<x>(?:'s| is| was)(?: (?:running|coming|real|pretty|too|way|blowing))*(?: (?:hot|warm|through|out))+[^.?!;\d]{{0,40}}? (?:says|said|reads|showed|shows) ){_HOT}", (("x", " is "),), beside=(" hot", " warm")),
    Plainer(("thermometer ", "probe "), rf"(?<![\w'])(?P<x>(?:the |my |a )?(?:thermometer|probe) (?:in|inside|down|down in) (?:the )?(?:duct|line|air|there|it|air stream) (?:says|said|reads|showed|shows|is at) ){_HOT}", (("x", "the air is "),)),
    # --- from one to the other
    Plainer((" and a", " and one ", " and three "), rf"(?<![\w'])(?:every|at|go|going|about|like|are) (?P<n>{_N})(?: inch(?:es)?)?(?P<x>,? (?:maybe |or |sometimes |say )*)(?P=n) and {_OF_ONE}(?![\w'])(?!(?: inch(?:es)?)? (?:along|on|at|by|down|across|near|over|for|up|apart (?:on|along|at))(?![\w']))", (("x", " to "),), beside=("every ", " at ", "stapl")),
    Plainer(("in there", "around there", "about there", "thereabouts", "in between"), rf"(?<![\w'])(?:every|at|about|are) {_N}(?: inch(?:es)?)?(?P<x>,? (?:maybe |or |sometimes |say )*){_N}(?: inch(?:es)?)?{_THEREABOUTS}", (("x", " to "),), beside=("every ", " at ", "stapl")),
    # --- what another did to another piece, behind his own
    Plainer(
        (" partner ", " helper ", " buddy ", " apprentice ", " foreman ", " other guy ", " other crew "),
        rf"(?!(?:that|like|when|while|after|before|because|since|than|how|if|as|where|what|until|and|but|so)\b)\w+(?P<x> (?:and |but )?)(?=(?:my|the|our) (?:partner|helper|buddy|apprentice|foreman|other guy|other crew) (?:already |just )?(?:taped|stapled|rubbed|made|built|hung|trimmed|wiped|sealed|did|finished) (?:the )?(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|piece|fitting|section) (?:number )?(?:\d+|{_N}))",
        (("x", ", "),),
    ),
)
