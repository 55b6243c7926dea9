"""English as an ear writes it that hears a breath: a comma in the middle of a measure ("two and, a half wide"), and two measures that are the ends of one ("every two, two and a quarter, somewhere in there").

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.names import FIRST_NAMES
from logbook.languages.en.numbers import SAID_COUNT as _NUMBER
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

_NAMES = "|".join(sorted(FIRST_NAMES))

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
    # --- "there's a quarter-inch opening left at the branch joint": a gap, and no branch
    Plainer((" opening",), rf"(?:there's|there is|there was|left|leaves|leaving|with|got|has|have|shows?)(?: (?:about|like|maybe|still|me|only|just|around))*(?: an?)? (?:{_N} |\d+ )?(?:and an? )?(?:{_OF_ONE}|{_PARTS}|{_N}|\d/\d{{1,2}})[- ]?(?:inch(?:es)?|\")?,? (?P<x>opening(?: left| still| showing)?)(?=[.,;!]|$| (?:at|on|in|along|by|near|around|between)\b)", (("x", "gap"),), unless=r"door|frame|register|grille|for the (?:branch|collar|tap)"),
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
    # --- the mend in a sentence of its own
    Plainer(("fabric and mastic", "fabric, mastic", "mastic and fabric", "mesh and mastic"), r"(?<=[.;!] )(?P<x>)(?=(?:the )?(?:glass |fiberglass )?(?:fabric|mesh)(?:,| and) mastic|mastic and (?:glass )?(?:fabric|mesh)(?=[.;!]|$))", (("x", "patched with "),), beside=("tear", "tore", "torn", "rip", "hole", "punctur", "gash", "cut", "dent", "crush", "repair", "patch", "mend", "fix")),
    # --- why it was this one: "because that is only what is left on the cart"
    Plainer(
        ("because", "cause ", "since "),
        r"(?P<x>(?:because|'?cause|since) (?:that|it|this)(?:'s| is| was) (?:(?:only|just|all) )*(?:what|all|the only (?:thing|tape|one|stuff|roll|kind))(?:'s|(?: that)? (?:is|was|were|i had|we had|i've got|there was|they had|i got|i could find))(?: left)?(?: (?:on|in) (?:the|my) \w+)?)(?= (?:rubbed|stapled|taped|and|then|hung|trimmed|wiped)\b)",
        (("x", ","),),
    ),
    # --- the thing ahead of what he has not done to it, run on into what he did
    Plainer((" don't have ", " dont have ", " do not have "), r"(?:vanes|tape|staples|tabs|mastic) (?:i|we) (?P<h>(?:don't|dont|do not) have) (?:put|taped|stapled|done|installed|bent)(?: (?:in|on|them|it|any))*(?: yet| today)?(?P<x>)(?= (?:(?:i|we) still|stapled|taped|rubbed|trimmed|wiped|hung|it's|they're)(?![\w']))", (("h", "haven't"), ("x", ","))),
    Plainer((" don't have ", " dont have ", " do not have "), r"(?:i|we|they) (?P<x>(?:don't|dont|do not) have) (?=(?:put|taped|stapled|rubbed|done|trimmed|wiped|bent|installed|finished|made|hung)(?![\w']))", (("x", "haven't"),)),
    Plainer(("vanes ", "tape ", "staples ", "tabs ", "mastic "), r"(?:vanes|tape|staples|tabs|mastic) (?:i|we) (?:haven't|have not|didn't|did not|don't|dont|never|couldn't)(?: (?:have|put|get|got|had|done|do|use|used))?(?: (?:in|on|them|it|any))*(?: yet| today)?(?P<x>)(?= (?:(?:i|we) still|stapled|taped|rubbed|trimmed|wiped|hung|it's|they're)(?![\w']))", (("x", ","),)),
    Plainer((" to put ",), r"(?:still |just )*(?:have|need|gotta|got|had|going) to put (?:them|it)(?: in| on)?(?P<x>)(?= (?:stapled|taped|rubbed|trimmed|wiped)(?: (?:all|on|four|three|two|every|down|with)| and|,|$))", (("x", ","),)),
    # --- "no taped yet", "I tape it after", as those say it who learned English late
    Plainer((" no ",), r"(?:is|it|it's|by \w+|still|yet|but|and|not|piece|one) (?P<x>no) (?=(?:taped|stapled|rubbed|trimmed|wiped|sealed|patched)(?: down)?(?:[.,;]|$| (?:yet|because|cause|still|today|so far)\b))", (("x", "not"),)),
    Plainer((" after", " later"), r"i (?:tape|staple|rub|trim|wipe|patch|seal)(?: (?:it|them|that))?(?: down)? (?P<x>after|later)(?=[.,;!]|$)", (("x", "tomorrow"),)),
    Plainer(("after i ",), r"(?:^|(?<=[.,;!] ))(?P<x>after) (?=i (?:tape|staple|rub|trim|wipe|patch|seal) (?:it|them|that)(?: down)?(?:[.,;!]|$))", (("x", "tomorrow"),)),
    Plainer((" not yet ",), r"(?:by \w+|long|inch(?:es)?|piece|and|but|it's|its|is) (?P<x>not yet (?P<v>rubbed down|rubbed|trimmed|wiped(?: down| off)?|cleaned|taped|stapled))(?![\w'])", (("x", r"not \g<v> yet"),)),
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
)
