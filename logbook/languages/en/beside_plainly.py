"""English of what stands beside a piece and is none of its facts: a tool that was left by it, the unit it leads to, what he asks himself before he tells it, the number he said first."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.plainer import Plainer

_TOOL = r"(?:stapler|staple gun|knife|knives|razor|tape measure|measuring tape|ruler|straightedge|square|squeegee|marker|pencil|pen|drill|driver|screwdriver|ladder|iron|snips|hammer|mallet|level|gloves?|flashlight|light|radio|phone|charger|coffee|lunch|lunchbox|thermos|jacket|hat|glasses|keys|clipboard|toolbox|tool bag|bag|tools?)"
_MY = rf"(?:my|the|our|his|that) (?:\w+ )?{_TOOL}"
_CUES = ("stapler", "staple gun", "kni", "razor", "measur", "ruler", "straightedge", "square", "squeegee", "marker", "pen", "drill", "driver", "ladder", "iron", "snips", "hammer", "mallet", "level", "glove", "light", "radio", "phone", "charger", "coffee", "lunch", "thermos", "jacket", "hat", "glasses", "keys", "clipboard", "bag", "tool")
_SPOT = r"(?:down |sitting |lying |laying |back |over |right |out |up )*(?:on|by|next to|beside|inside|near|under|behind|at|in|with|against|there by)"
_LAID = r"(?:left|put|set|laid|had|dropped|forgot|saw|lost)"
_BY_NOW = r"(?=[.!?;]|$|, (?:who|did|has|have|if|can|anybody|somebody|tell|hand|bring|please|i think)\b)"
_PIECE = rf"(?:{KIND}s? (?:number )?{NUMBER}|number {NUMBER})"
_ASIDE = rf"(?:(?!\b(?:and|but|which|so)\b)[^.?!,;]){{0,40}}?{_PIECE}"
_WRONG = r"(?:(?:uh|um|oh),? )?(?:no,? wait|wait,? no|no|nope|wait|sorry|scratch that|hold on|oops|my bad|correction),? (?:no, )?(?:that's|that was|this is|this was|that one's|that one was|that'd be)(?: actually| really)?"
_ACT = r"(?:i |we |it's |it is |i've |well,? |uh,? |um,? |okay,? )*(?:stapled|taped|rubbed|trimmed|wiped|put|used|made|cut|folded|bent|hung|sealed|closed|burnished|cleaned|warmed|every|staples|flap|vanes|tape|181)"

_DEED = r"(?:tape|taped|staple|stapled|rub|rubbed|wipe|wiped|trim|trimmed|hung|hang|close|closed|seal|sealed|mend|mended|patch|patched|fix|fixed|repair|repaired|warm|warmed|heat|heated|preheat|preheated|bend|bent|put|use|get|got|have|screwed|been)(?![\w'])"
_MUCH = r"(?:\d[\d/. -]*|(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?: and (?:a half|a quarter|three quarters))?)(?: ?(?:inch(?:es)?|in\b|\"))?"
_GUESSED = r"(?:i|we)(?: would|'d) have (?:said|guessed|bet|told you|sworn)"

ENGLISH_BESIDE_PLAINLY = (
    # --- what he would have said, and what it came to
    Plainer(("have said", "have guessed", "have bet", "have told", "have sworn"), rf"(?P<x>{_MUCH}(?: apart)?,? {_GUESSED}(?: if you(?:'d)? asked me)?[,.;]? (?:but |and |though )*(?:(?:it|they|that) (?:came (?:to|out(?: at| to)?)|measured|turned out(?: to be)?|was|were|is|are|ran)|it's|they're|turns out (?:it's|they're)|i (?:measured|got|found)) )(?={_MUCH})", (("x", ""),)),
    # --- a tool, and where it lies
    Plainer(_CUES, rf"(?:who|where|where's|anybody|anyone|somebody|someone|has|did|lost|can't find|missing|looking for)(?![\w])[^.?!,]{{0,30}} {_MY}[^.?!]{{0,24}}[.?!,] (?P<x>(?:(?:i think|i swear|pretty sure|maybe|i know|and|cause|because|i could have sworn),? )*(?:(?:i|we)(?: must have| had| just| know i| think i)? {_LAID} (?:it|them|that)|(?:it|they)(?:'s| was| were| is| are|'re)) {_SPOT} {_ASIDE}){_BY_NOW}", (("x", ""),), beside=("who", "where", "any", "some", "has", "did", "lost", "find", "missing", "looking")),
    Plainer(_CUES, rf"(?:^|(?<=[.?!,] ))(?P<x>(?:(?:i think|i|we|must have|and|oh|hey|shoot|damn|also),? )*(?:left|lost|forgot|dropped|set|put|laid) {_MY} {_SPOT} {_ASIDE}){_BY_NOW}", (("x", ""),)),
    Plainer(_CUES, rf"(?:^|(?<=[.?!,] ))(?P<x>(?:(?:i think|and|oh|hey|also),? )*{_MY}(?:'s| is| was| are| were| should be| must be)(?: still)? {_SPOT} {_ASIDE}){_BY_NOW}", (("x", ""),)),
    # --- the unit it leads to is on the roof, and not the piece
    Plainer(("roof",), r"(?:on|at|to|off|off of|from|for|of|by|into) (?:the |a |an |that |our |this |one )*(?P<x>roof(?:[- ]?top)? )(?:\w+ )?(?:units?|air handlers?|handlers?|ahu|rtu|condensers?|package|machine|exhaust fan|fan)(?![\w'])", (("x", ""),), beside=("unit", "handler", "ahu", "rtu", "condenser", "package", "machine", "fan")),
    # --- what he asks himself before he tells it
    Plainer(("what ", "how "), rf"(?:^|(?<=[.,;!?] )|(?<=, so )|(?<=[.,;!?] so )|(?<=okay )|(?<=uh ))(?:what (?:all |else |exactly )?(?:did|have) (?:i|we) (?:do|done|use|used|got|put|get)(?: (?:to|on|with|for|here|there|so far)(?: (?:it|this one|that one|this|that|here|there))?)?|what (?:else|all)|how did (?:i|we) (?:do|make|close|seal|build|staple|finish) (?:it|that one|this one|that|this))(?P<x>(?: ?\.\.\.+|…| ?[-–—]+|\.|,)) (?={_ACT}(?![\w'])[^?]*$)", (("x", "?"),), unless=r"what else (?:is|do|needs|to)"),
    # --- hung from a piece is joined to it
    Plainer(("hung",), rf"(?<![\w'])hung(?: (?:it|this one|that one|that|them|{_PIECE}))?(?P<x> (?:right )?(?:off of|off|onto|on to)) (?=(?:of )?(?:{_PIECE}|\d{{2,3}})(?=[.,;!]|$| (?:and|but)\b))", (("x", " and tied to"),), beside=(" off", " onto", " on to")),
    # --- the number he said first was another's
    Plainer(("wait", " no", "sorry", "scratch", "hold on", "oops", "my bad", "correction"), rf"(?:^|(?<=[.!?] ))(?P<k>{KIND}) (?:number )?(?P<f>{NUMBER})(?:[,.] [^.?!]{{1,60}}?)?(?P<x>[,.] {_WRONG} (?:number |{KIND} )*(?P<n>\d+))(?=[.,;] (?P=k) (?:number )?(?P=n)(?!\d))", (("f", r"\g<n>"), ("x", ""))),
    Plainer(("wait", " no", "sorry", "scratch", "hold on", "oops", "my bad", "correction"), rf"(?:^|(?<=[.!?] )){KIND} (?:number )?(?P<f>\d{{3}}), [^.?!]{{1,60}}?(?P<x>[,.] {_WRONG} (?:number |{KIND} )*(?P<n>\d{{3}}))(?=[.,;]|$)", (("f", r"\g<n>"), ("x", ""))),
    # --- tape by its look and where it was bought
    Plainer(("from the ", "from a ", "out of the "), r"(?P<x>(?:i |we )?(?:put|used|ran|stuck|slapped|threw|laid) (?:(?:some|a strip|a piece|a bit|a little|a few strips|a roll) (?:of )?)?)(?P<k>(?:the |that |some |this )*(?:silver|gray|grey|shiny|cheap|cloth|duct|plain|regular|generic)(?: \w+)? tape)(?P<y> (?:(?:i |we )?(?:got|bought|had|picked up) )?(?:from|out of|at) (?:the|a) (?:hardware store|big box store|truck|gas station|dollar store|store|home center|lumber yard|van|corner store))(?= (?:on|over|all over|across|around)(?![\w']))", (("x", "taped it with "), ("y", ",")), unless=r"(?:never|didn't|don't|won't|not) (?:put|use)"),
    # what he would have done, and did not: "had I stapled it at three" is "if I had"
    Plainer(tuple(f"had {who} " for who in ("i", "we", "he", "they", "it")), r"(?:^|(?<=[.;!?,] )|(?<=\band )|(?<=\bbut ))(?P<x>had (?P<who>i|we|he|they|it)) (?=[^.?!]*?(?:(?<=i|u|e|y|t)'d\b|\b(?:would|wouldn't|could|might)\b))(?!not run |had )", (("x", "if \\g<who> had"),)),
    # --- the roll that ended, and another tape for the rest of it: it is closed, and with that
    Plainer(
        (" ran out", " gave out", " ran short", " run out"),
        rf"(?:^|(?<=[.;!?,] )|(?<=\band )|(?<=\bbut ))(?P<x>(?:(?:the |my |our )?(?:listed |good )?(?:foil|tape|roll|181[\w-]*)(?: tape)? (?:ran|gave|run) (?:out|short)(?: on me)?(?: (?:on|at|by|before|after|with|for) (?:the )?(?:first|second|third|fourth|last|back|bottom|top|left|right|one)(?: (?:side|seam|joint|edge|one))?)?|(?:i |we )?(?:ran|run) (?:out|short)(?: of| on) (?:the )?(?:listed |good )?(?:foil|tape|181[\w-]*)(?: tape)?(?: (?:on|at|by) (?:the )?(?:first|second|third|fourth|last|back|bottom|top|left|right) (?:side|seam|joint|edge))?)(?: (?:on|of|at) (?={_PIECE})|,? ?(?=[,.]|so|and)))"
        r"(?=[^.?!]{0,48}?(?:\b(?:so|and|then)|,) (?:i |we )?(?:finished|did|used|closed|went|switched|got|put|the (?:fourth|last|other|rest|back|bottom|top|left|right|heel)(?: (?:side|one|seam))? (?:got|has|is|went))\b[^.?!]{0,40}?\b(?:duct|cloth|masking|duck|gray|grey|packing|painter's)\b)",
        (("x", "on "),),
    ),
    # --- cloth is a tape here
    Plainer((" cloth ", " masking "), r"(?:\b(?:used|ran|switched to|went to|changed to|finished with|finished in|tape and|foil and|sides and|sides, and)) (?:the )?(?P<x>cloth|masking)(?= (?:on|over|for|across|around|along) (?:the|it|one|that|this|all|its)\b)", (("x", r"\g<x> tape"),), unless=r"\b(?:rag|wipe|wiped|wiping|drop cloth)\b"),
    # --- one denial behind another: "nor is it stapled" is "it is not stapled"
    Plainer(("nor ", "neither "), rf"(?:^|(?<=[.;!?,] )|(?<=\band )|(?<=\bbut ))(?P<x>(?:nor|neither) (?P<does>is|was|are|were|has|have|had|did|does|do) (?P<who>it|i|we|they|she|he|(?:the |my |its )?(?:tape|flap|seams?|joints?|staples|vanes|tabs)|{_PIECE}))(?= (?:\w+ ){{0,2}}?{_DEED})", (("x", r"\g<who> \g<does> not"),)),
    Plainer(("nor ",), r"(?<=[.;!?,] )(?P<x>(?:and )?nor(?: are there| is there| were there| did i use| did i put(?: in| on)?)?(?: any| an?| the| its)*)(?= (?:tape|staples?|vanes|turning vanes|tabs|cross tabs|flap|washers|screws|mastic)(?![\w']))", (("x", "no"),)),
    Plainer(("nor ",), r"(?<=, )(?P<x>(?:and )?nor(?: yet| even| was it| is it| ever)*)(?= (?:taped|stapled|rubbed|wiped|trimmed|hung|closed|sealed|mended|patched|repaired|warmed|preheated|bent)(?![\w']))", (("x", "not"),)),
)
