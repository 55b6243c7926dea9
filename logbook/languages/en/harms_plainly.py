"""English that tells what a damage looks like and whether anybody saw to it, and the plain words that it is read as."""

from __future__ import annotations

from logbook.languages.en.numbers import SAID_NUMBER
from logbook.languages.plainer import Plainer

_HARM = r"(?:tears?|torn|tore|rips?|ripped|holes?|punctur\w*|gash\w*|slits?|cuts?|slices?|nick\w*|dents?|dented|dinged|crush\w*|mashed|smashed|squash\w*|stepped on|bust\w*|caved|broken|wet|soaked|damp|soggy|water|rain\w*|peel\w*|lift\w*|loose|separat\w*|delaminat\w*|bubbl\w*|damag\w*|gouge\w*|scuff\w*|split|poked?)"
_TOLD = rf"(?<![\w']){_HARM}(?![\w'])[^?]{{0,140}}?"
_BOARD = r"(?:panel|board|piece|side|top|bottom|end|section|corner|sheet|liner)"
_THAT = rf"(?:it|that|them|those|this|(?:the|that|this|a|its|one|my) (?:(?:whole|bad|wet|torn|crushed|bottom|top|back|other|good|new|fresh|dry|ruined) )*{_BOARD})"
_SWAP = rf"(?:(?:swap|change|switch|trade)(?: out)?(?: {_THAT})?(?: out)?|replace(?: {_THAT})?|(?:cut|put|set|make|build|fit|glue) (?:in |out |off )?(?:a |another |the )?(?:new |fresh |good |dry |board )*(?:plug|{_BOARD})(?: (?:in|on|out|off))?(?: (?:it|there|for (?:it|that|that one|there)))?|put (?:some |a )?(?:fabric(?: and mastic)?|mastic|patch|tape)(?: (?:on|over) {_THAT})|plug (?:it|that)|(?:recut|re-cut|redo|remake|rebuild) {_THAT}|glue (?:it|that|them)(?: (?:back|down))*|cut (?:it|that|the end|that end|the corner)(?: (?:off|out|back))+)"
_SWAPPED = rf"(?:(?:swapped|changed|switched|replaced|plugged|glued|stuck)(?: out)?(?: {_THAT})?(?: (?:out|back|down))*)"
_NOT_YET = r"(?:gotta|got to|have to|has to|had better|need to|needs to|want to|i'll|we'll|i will|we will|will|gonna|going to|didn't|did not|couldn't|can't|haven't|have not|hasn't|never|not|should|supposed to|waiting to|yet to|still to|time to|meant to|forgot to|about to|chance to)"
_TILL = r"(?:till|until|'til|for now|for the time|right now|as of now)"

_PAST_TAPE = r"(?:delaminat(?:ed|ing)|crushed|mashed|smashed|squashed|caved in|soaked|waterlogged|wet|soggy)"
_MENDED_IT = r"(?:plug|replac\w*|swapp?\w*|new (?:panel|board|piece|side|end|corner)|cut (?:it|that|the \w+) (?:off|out|back)|dried|dry|fix\w*|repair\w*|patch\w*|mended|redo|rebuilt|not (?:wet|crushed|soaked|delaminated)|n't (?:wet|crushed|soaked|delaminated)|wipe[d]?|(?:nothing|none of it|never|not|no)(?: \w+){0,3}? (?:wet|crushed|soaked|mashed)|(?:crushed|smashed|mashed) (?:the|my|that) (?:old|first|last|other)|(?:made|built|cut) (?:it|this one|another|a new)(?: one)?(?: again| over)?)"


def _not_done(cues: tuple[str, ...], verb: str) -> Plainer:
    """ "It's soaked. Gotta swap the panel", "haven't glued it or swapped it" """
    return Plainer(cues, rf"{_TOLD}(?<![\w']){_NOT_YET}(?: (?:still|just|even|been|got|get|gotten|to|go|come|back|and|be|it|quite|ever|have|really|probably))* (?P<x>{verb})(?P<y> or {verb})?(?= (?:still|yet|tomorrow|(?:mon|tues|wednes|thurs|fri|satur)day|today|with|when|first|later|before|after|next|on|this|in|but|and|so|because)\b|[.,;!]|$)", (("x", "repair it"), ("y", "")), unless=r"don't (?:have|need) to|doesn't (?:have|need) to|didn't (?:have|need) to")


_NOT_ITS_OWN = r"(?:(?<=[.!?] )|^)(?=[^.!]*(?:worried|afraid|scared|nervous|hate|checked|looked|looking|last one|other (?:guy|one|crew|fella)|(?<![\w'])(?:his|her|their|they|frames?|framers?|dollar)(?![\w'])|[a-z]+'s (?:elbow|straight|tee|piece|duct|run|work|section)|(?:gaps|tears|holes|dents)\?))(?:[^.?!]*?(?<![\w']))?"
_NO_OTHER_THING = r"(?:(?!vanes|staple|tape|tabs|straps|screws|washers|hangers)[^.?!])"

ENGLISH_HARMS_PLAINLY = (
    # --- "the board is delaminated at one end. Taped it": tape mends no board that is crushed, wet or comes apart
    Plainer(("taped it", "taped that", "taped over", "put tape"), rf"(?<![\w']){_PAST_TAPE}(?![\w'])[^.;?!,]{{0,40}}?(?:[.;]|(?:,|,? and|,? so|,? but)(?! (?:i |we )?(?:just|only)))(?: (?:so|and|but|then|i|we|just|only|anyway|went ahead and))* taped (?:it|that)(?: (?:up|down|anyway|anyhow|as is|for now|though))*(?P<x>)(?=[.,;!]|$)", (("x", ", damage is not repaired"),), unless=_MENDED_IT),
    # --- who made it, told behind: "straight nine, had a tear that I made with the lift"
    Plainer((" had a",), r"[\w'-]+(?P<x>, had) (?=an? (?:\w+ ){0,2}(?:tear|rip|hole|gash|slit|dent|puncture|split|nick)(?![\w'-])[^.?!;]*? (?:that |which )(?:i|we|he|they|somebody|someone|the \w+) (?!cut for|made for))", (("x", ", it had"),), unless=r"if |would|wish"),
    # --- tape where the mastic was spoiled: "I just taped it because the mastic had skinned over"
    Plainer(("mastic had", "mastic has", "mastic was", "mastic is", "mastic's"), r"(?:taped|tape on|used tape|with tape)(?! and)[^.;?!]{0,40}? (?:because|cause|since|as|on account of|seeing as)(?P<x> (?:the |my |our )?mastic(?: had| has| was| is|'s)(?: all| just| been)* (?:skinned over|dried (?:out|up)|frozen|froze(?: up)?|gone (?:bad|hard|off)|set up|hardened|no good|all gone|gone|empty|out|spoiled|left open))(?![\w'])", (("x", " that was at hand"),)),
    Plainer(("tape is all", "tape's all", "tape was all", "just tape", "only tape"), rf"{_TOLD}(?P<x>(?:just |only )?tape(?:'s| is| was) all (?:i|we|that|that was|there was)(?: (?:had to|could))? ?(?:put|used|got|went|use|stuck|slapped) (?:on|over) (?:it|that|there|the (?:tear|hole|rip|slit|gash)))(?![\w'])", (("x", "I patched it with tape"),)),
    Plainer(("peeled", "lifted", "come off", "come away", "come loose", "pulled away", "let go", "separated"), r"(?:facing|foil|jacket|skin|scrim)(?P<x>(?:'s| has| have|'ve)(?: all| just)*) (?=(?:peeled|lifted|come|pulled|let go|separated)(?: (?:off|away|loose|up|back|from))+(?![\w']))", (("x", ""),)),
    Plainer(("left it", "leave it", "left that", "left them"), rf"{_TOLD}(?P<x>(?:i|we)(?: just| had to)? (?:left|leave) (?:it|that|them) (?:like (?:that|it is|it was)|that way|as (?:it is|is|it was)|alone|be))(?=[.,;!]|$| (?:because|cause|since|as|for|and|but|until|till|so)(?![\w']))", (("x", "it's not repaired"),), unless=_MENDED_IT),
    # --- how big the harm is, in a breath of its own
    Plainer(
        (" inch", '"'),
        rf"(?<![\w'])(?:holes?|tear|tore|torn|rip|ripped|gash|slit|puncture|dent|put (?:a|his|my|their) \w+ through|poked|gouge|cut)(?![\w'])[^.?!;]{{0,60}}?(?P<x>\.) (?:(?:it's|it is|maybe|about|around|like|roughly|just|only|say|call it|a good) )*{SAID_NUMBER} ?(?:inch(?:es)?|\")(?: (?:or so|long|wide|across|tall|deep|of it|maybe|about))*(?=[.,;])",
        (("x", ","),),
    ),
    # --- what has to be done about it
    _not_done(("swap", "change", "switch", "trade", "replace", "plug", "glue", "cut ", "fabric", "mastic", "new "), _SWAP),
    Plainer(("swapped", "changed", "switched", "replaced", "plugged", "glued", "stuck"), rf"{_TOLD}(?<![\w'])(?:haven't|have not|hasn't|has not|never|not|isn't|wasn't|didn't get it|ain't)(?: (?:been|got|gotten|even|yet|quite))* (?P<x>{_SWAPPED}(?: or {_SWAPPED})?)(?= (?:yet|still|so)\b|[.,;!]|$)", (("x", "repaired"),)),
    Plainer((" be replaced", " be swapped", " be changed", " be cut", " be plugged", " be recut", " be redone", " be remade", " be glued"), rf"{_TOLD}(?<![\w'])(?:has|have|needs|need|gotta|ought|should|going|wants|will|must|yet)(?: to)? be (?P<x>replaced|swapped(?: out)?|changed(?: out)?|cut (?:out|off)|plugged|recut|redone|remade|glued(?: back)?(?: down)?)(?=[.,;!]|$| (?:yet|still|tomorrow|before|and|but|later|when|with)\b)", (("x", "repaired"),), unless=r"n't (?:have|need) to be"),
    Plainer(("replacing", "swapping", "changing", "plugging", "gluing", "recutting"), rf"{_TOLD}(?:needs|wants|need|could use) (?P<x>(?:replacing|swapping|changing|plugging|gluing|recutting)(?: (?:out|back down))?)(?=[.,;!]|$| (?:yet|still|tomorrow|before|and|but|later)\b)", (("x", "to be repaired"),)),
    Plainer(("swapping", "changing", "replacing", "plugging"), rf"{_TOLD}(?P<x>(?:i'm|we're|i am|we are|will be|gonna be) (?:swapping|changing|replacing|plugging)(?: (?:it|that|them|{_THAT}))?(?: out)?)(?= (?:tomorrow|later|next|monday|tuesday|wednesday|thursday|friday|in the morning|when|as soon|first|after|this afternoon))", (("x", "I'll repair it"),)),
    Plainer(("needs a", "needs some", "needs its", "needs one", "wants a", "need a", "needs fabric", "needs mastic", "needs to come"), rf"{_TOLD}(?:needs|wants|need|could use|gonna need|will need|'ll need) (?P<x>(?:a |an |some |one |its |another )?(?:(?:new|board|fresh|good|dry|proper) )*(?:plug|panel|patch|patching|plugging|fabric(?: and mastic)?|mastic(?: and fabric)?|{_BOARD})(?: (?:cut in|put in|swapped|on it))?)(?= (?:yet|still|tomorrow|on|before)\b|[.,;!]|$)", (("x", "to be repaired"),)),
    Plainer(("to change", "to fix", "to swap", "to replace", "to patch", "to mend", "to plug"), rf"{_TOLD}(?P<x>(?:i |we )?(?:don't|didn't|do not) have (?:a |any |the |another )?(?:\w+ )?(?:{_BOARD}|fabric|mastic|tape|plug|patch|glue|stuff) to (?:change|fix|swap|replace|patch|mend|plug|do)(?: (?:it|that|them))?(?: (?:out|with|up))*)", (("x", "I haven't repaired it"),)),
    *(
        Plainer(("that way", "like that", "like this", "as is", "as it is"), rf"{_TOLD}(?P<x>(?:it'?s? |that'?s? |they'?r?e? )?(?:is |are |'s )?(?:going to |gonna |will |'ll |has to |have to |gotta )?(?:stay|stays|staying|sit|sits|sitting|stayed)(?: there| up there)? (?:that way|like that|like this|as is|as it is){till})(?=[.,;]|$)", (("x", plain),), unless=r"(?:as is|as it is),? (?:and )?(?:patched|replaced)")
        for till, plain in (("", "it's not repaired"), (rf" {_TILL}[^.,;?]*", "it's not repaired yet"))
    ),
    Plainer((" fix the", " fix that", " fix a", " fix this", " fix those"), rf"(?<![\w']){_NOT_YET}(?: (?:still|just|even|get|to|go|come|back|and|be))* (?P<x>fix)(?= (?:the|that|a|this|those) (?:\w+ )?{_HARM}(?![\w']))", (("x", "patch"),)),
    Plainer((" patch", " mend", " fix", " repair"), r"(?P<x>(?:i|we)(?:'ve| have|'m| am|'re| are)? (?:been meaning to|gotta|got to|have to|to have to|want to|wanna|should|must|oughta|ought to|going to|gonna|just have to|just gotta|supposed to|meaning to|hoping to|need to)(?: (?:still|go|get|just|probably|really|come back and|go back and|get in there and))* )(?=(?:patch|mend|fix|repair)(?: (?:it|that|them|this|those|the|up|over)\b|[.,;]|$| (?:tomorrow|later|when|first|before|after|still|yet|on)\b))(?![^.!?]{0,40}\?)", (("x", "still have to "),)),
    Plainer((" patched", " mended", " fixed", " repaired"), r"(?<!was )(?<!were )(?P<x>(?:(?:it|that|this|they) )?(?:(?:(?:is|are|'s) )?(?:supposed|meant|going|still|has|have) )?(?:to|should|must|ought to) (?:be|get)(?: (?:all|still|properly|really))*) (?=(?:patched|mended|fixed|repaired)(?:[.,;]|$| (?:tomorrow|later|when|first|before|still|yet|on|up)\b))", (("x", "needs to be"),), unless=r"(?:not|n't) (?:have |need )?to be (?:patched|mended|fixed|repaired)"),
    Plainer(("unable to", "no way to"), r"(?P<x>(?:was |were |am |'m )?(?:unable|not able) to|(?:had |have |there's |there was )?no way to)(?= (?:patch|mend|fix|repair|tape|staple|rub|trim|bend|wipe))", (("x", "couldn't"),)),
    # --- nobody saw to it
    Plainer(("forgot to", "meant to", "neglected", "bothered", "around to", "failed to", "no time to"), r"(?:i |we )?(?P<x>(?:forgot|neglected|failed|meant|never bothered|didn't bother|never got around|didn't get around|had no time|didn't have time) to (?P<v>patch|mend|fix|repair))(?= it| that| them|[.,;]|$)(?![^.?!]{0,30}(?:went back|so i did|did it))", (("x", r"didn't \g<v>"),)),
    Plainer(("taken care", "dealt with", "seen to", "looked after", "touched", "addressed", "handled", "looked at", "attended"), rf"{_TOLD}(?P<x>(?:hasn't|has not|haven't|isn't|wasn't|never|not)(?: (?:been|got|gotten|even|yet|really))* (?:taken care of|dealt with|seen to|looked after|(?<=been )touched|addressed|handled|attended to))", (("x", "isn't repaired"),)),
    Plainer(("no patch", "without a patch", "without patch"), r"(?P<x>(?:no|without(?: a| any)?|zero) patch(?:es)?(?: (?:on|over)(?: (?:it|them|there|that|any(?: of them)?|those))?)?(?: yet)?)(?=[.,;!]|$| and| but)", (("x", "not patched"),)),
    Plainer(("repair", "fix:", "patch:", "patched:", "fixed:"), r"(?:(?<=[.;\n,] )|^)(?P<x>(?:repaired|repair|patched|patch|fixed|fix|mended)[:=-] ?(?:no|none|n|not (?:yet|done)|negative)(?: yet)?)(?=[.;,]|$)", (("x", "not repaired"),), unless=r"(?:damage|tears?|holes?)[:,=-] ?(?:none|no\b|nil|zero|n/a)"),
    Plainer(("what's left", "that's left", "what is left", "still to do", "all that's"), r"(?:(?<=[.!?] )|^)(?P<x>(?P<v>fix|patch|mend|repair|replace|swap|plug)) (?:the|that|a) (?:[^.?!,]{1,40}),? (?:(?:and|but) )?(?P<y>(?:that's|is|it's) (?:all )?(?:what's left|that's left|what is left|still to do|all that's left))", (("x", "still have to patch"), ("y", "and that's that"))),
    Plainer((" of the ", " of those ", " of its "), r"(?P<x>(?:patched|fixed|mended|plugged|taped over|covered)(?: only| just)* (?:one|two|three|four|half|some|most|a couple)(?: out)? of (?:the |those |its )(?:two |three |four |five |six )?)(?=(?:\w+ )?(?:holes|tears|rips|punctures|dents|nicks|cuts|slits)\b)", (("x", "didn't patch all of the "),), unless=r"(?:the other|then the rest|both|all of them) (?:one |two )?(?:too|after|now|later|also)"),
    # --- patched, and open again
    Plainer(
        ("patch", "mend", "fix", "repair"),
        r"(?<![\w'])(?:patched|mended|fixed|repaired)(?![\w'])[^?]{0,60}?(?<=[ ,.])(?:it|that|the (?:patch|tape|tear|rip|hole|mend|mastic)|she)(?P<x>(?:'s| is| has| just| then| kind of)*(?: (?:still|wide|back|again|right|all))*(?: (?:torn|tore|ripped|split|come|came|opened|popped|peeled|pulled|busted|let go|open|loose))(?: (?:back|up|again|open|off|loose|out|right|go|undone|apart))*(?: again)?)(?=[.,;!]|$| (?:on me|already|over|when|since|and|so|at)\b)",
        (("x", " isn't patched now"),),
        unless=r"(?:opened|opens|open) (?:it |that )?up and|the other (?:one|is|two)|(?:went back|came back|again) and (?:patched|fixed|mended)|re-?patched|(?:patched|fixed|mended) it again|not (?:open|torn|ripped|loose)|(?:was|were|been) (?:torn|open|ripped|loose|peeled)|before (?:it|that)",
    ),
    Plainer(("in a patch", "in patches", "in one patch", "in a few patches", "in some patches", "bare patch"), r"(?:in (?:a|an|one|two|three|a few|some|little|big|small)?(?: (?:little|small|big))? ?|bare )(?P<x>patch)(?P<y>(?:es)?)(?=[.,;!]|$| (?:about|on|by|near|at|and|where|along|of)\b)", (("x", "spot"), ("y", "")), unless=r"in (?:a|one) patch of (?:new|board)"),
    Plainer(("only on", "just on", "only over", "just over", "only covers", "just covers", "only got"), rf"{_TOLD}(?P<x>(?:the )?(?:mastic|tape|fabric|patch)(?:'s| is)? (?:only|just) (?:on|over|covers|got)(?: about)? (?:half|part|some|most|one end|a piece)(?: of (?:it|them|that))?)(?=[.,;!]|$)", (("x", "it's not patched"),)),
    Plainer(("how it went", "that way", "like that", "how it's hung", "how it is", "went up so"), rf"{_TOLD}(?P<x>(?:and )?(?:that's|that is) (?:how|the way) (?:it|she) (?:went up|went in|is hung|'s hung|'s up there|hangs|is up there|got hung)|(?:it )?(?:went up|hung it|put it up|sent it up) (?:that way|like that))(?=[.,;!]|$)", (("x", "left it"),)),
    Plainer(("left it for", "leaving it for", "left that for", "leaving that for"), rf"{_TOLD}(?:left|leaving) (?:it|that|them)(?P<x> for (?:you|the (?:lead|boss|foreman|inspector|next guy|night (?:crew|shift)))(?: to (?:look at|see|decide|fix|deal with|handle|check))?)(?=[.,;!]|$)", (("x", ""),)),
    Plainer(("anyway", "anyhow", "regardless", "all the same"), rf"{_TOLD}(?P<x>(?:i |we )?(?:put|stuck|set|used|hung|ran|installed|built|closed|tied) (?:it|her|that)(?: (?:in|on|up|into place|together|with it))* (?:anyway|anyhow|regardless|all the same|just the same))(?=[.,;!]|$)", (("x", "hung it anyway"),), unless=r"patched|fixed|mended|repaired|replaced|swapped|plugged|taped over|covered"),
    # --- harms in other words
    Plainer(("came apart", "coming apart", "comes apart"), r"(?P<x>(?:the )?(?:board (?:came|is coming|comes|'s coming) apart from the (?:facing|foil|skin|jacket)|(?:facing|foil|skin|jacket)(?:'s| is)? (?:came|come|coming|comes) apart from the (?:board|glass|insulation)))", (("x", "the facing came loose"),)),
    Plainer(("taped over", "tape over"), rf"{_TOLD}(?P<x>(?:taped over|put tape over|ran tape over) (?:all|every one|each|both|each one)(?: of (?:them|those|'em|it))?)(?=[.,;!]|$)", (("x", "taped over it"),)),
    Plainer(("board cracked", "board split", "board broke", "board snapped"), r"(?P<x>(?:the |my )?board (?:cracked|split|broke|snapped)(?: (?:open|through|in half|in two|on me))*)(?![\w'])", (("x", "cracked board"),), unless=r"(?:off|scrap|score|along the line)"),
    Plainer(("peeled back", "peeling back", "lifted back", "tore back", "folded back"), r"(?:peel(?:ed|ing)|lifted|tore|torn|ripped|folded)(?P<x> back)(?= (?:about |maybe |around |a good |like )*(?:\d|an?\b|one|two|three|four|five|six|eight|ten|twelve))", (("x", " off"),)),
    Plainer(("cut the foil", "cut the facing", "cut the jacket", "cut the skin", "cut my foil"), r"(?P<x>cut) the (?:foil|facing|jacket|skin)(?=[^.?!]{0,50}(?:patch|repair|mend|by accident|accident|taped over|fix))", (("x", "tore"),)),
    Plainer(("knife", "blade"), r"(?:knife|blade)[^.?!]{0,30}?(?P<x>cut|went through|got) the (?:foil|facing|jacket|skin)", (("x", "tore"),)),
    Plainer(
        ("through the ", "through my "),
        r"(?:^|(?<=[.,;] )|(?<= and )|(?<= but )|(?<= i )|(?<=^i ))(?P<x>(?:(?:went|sliced|nicked|going|gone)(?: (?:right|clean|straight|clear|all the way))*|(?:cut|scored|cutting)(?: (?:right|clean|straight|clear|too deep and))+) through) (?:the|my) (?:foil|facing|jacket|skin)(?! (?:first|to|for|side|when|of the (?:scrap|other)))",
        (("x", "tore"),),
        unless=r"score line|(?:cut|cutting) (?:the|an|my) opening|(?:shiplap|groove|slit|mark|opening|cut[- ]?out|notch|tabs?|hole for|tap) (?:is|was|goes|went|cut)|staples? (?:went|cut|tore)|(?:for|at) the (?:collar|tap|takeoff|branch|opening)",
    ),
    # --- "corner's crushed. Patched the corner with tape": of the harm, and not of the joint there
    Plainer(("ed the ", "ed that "), r"(?:patched|mended|fixed|repaired|covered) (?P<x>(?:the|that) (?:\w+ )?(?:corner|side|edge|end|top|bottom|spot|place|heel|throat|cheek))(?= (?:up )?(?:with|using) )", (("x", "it"),), beside=("crush", "torn", "tear", "rip", "hole", "punctur", "dent", "split", "gash", "damage")),
    # --- "patched the tear on nineteen. It was three inches wide": of the harm
    Plainer(
        (". it was ", ". it's ", ". that was ", ". that's ", ", it was ", ", it's "),
        r"(?P<d>tear|rip|hole|cut|gash|puncture|split|slit)(?![\w'])[^.?!]{0,40}[.,] (?P<x>(?:it|that)(?: was|'s| is))(?= (?:about |maybe |around |roughly |a good |like |only )*(?:\d|one|two|three|four|five|six|an? |half|quarter)[^.,;]{0,22}?(?:wide|across|long)\b)",
        (("x", r"the \g<d> was"),),
    ),
    # --- there is none
    Plainer((" none.", " none,", " none;", " none on", " none at", " none in", " none!"), rf"{_NOT_ITS_OWN}(?P<n>gaps?|tears?|holes?|rips?|dings?|dents?|wet spots?)(?![\w'])(?! (?:none|no)\b)[^?!]{{0,60}}?[.,;?] {_NO_OTHER_THING}{{0,50}}?(?<![\w'])(?:has|have|had|got|there are|there's|there were|shows|see|saw|found|find)(?P<x> none)(?=[.,;!]|$| (?:on|at|in) (?:it|mine|this one)\b)", (("x", r" no \g<n>"),)),
    Plainer((" without one", " without any", " without a single"), rf"{_NOT_ITS_OWN}(?P<n>gap|tear|hole|rip|ding|dent)s?(?![\w'])[^?!]{{0,90}}?[.,;?] {_NO_OTHER_THING}{{0,50}}?(?<![\w'])(?:together|in|up|closed|out|home|through|it)(?P<x> without (?:one|any|a single one))(?=[.,;!]|$)", (("x", r" with no \g<n>"),)),
    Plainer(("facing", "foil", "jacket", "nothing wrong"), r"(?P<x>(?:the )?(?:facing|foil|jacket|skin)(?:'s| is| looks| was)? (?:all (?:good|fine|right|ok|okay)|in one piece|whole|perfect|in good shape|like new)|nothing(?:'s| is)? wrong (?:with|on|in) the (?:facing|foil|board|jacket|skin))(?=[.,;!]|$| (?:and|on|all|so)\b)", (("x", "facing's fine"),)),
    Plainer(("damage", "tears", "holes", "rips", "dings"), r"(?:(?<=[.;\n,] )|^)(?P<x>(?:facing )?(?:damages?|tears?|holes?|rips?|dings)(?: to (?:the )?(?:facing|board|foil))?[,:=-] ?(?:none|no|nil|zero|n/a|0|not any))(?=[.;,\n]|$)", (("x", "no damage"),)),
    Plainer(("do i have", "is there", "is that a", "did i get", "do we have"), rf"(?P<x>(?:do (?:i|we) have|is there|is that|did (?:i|we) get) (?:a|any|some) (?:(?:little|small|big) )?{_HARM}(?: (?:there|here|on it|in it|in the (?:facing|foil|board)|on that))*[,?] (?:(?:let me|lemme) (?:look|see|check)(?: (?:again|here|at it))?[,.] )?(?:no|nope|nah),? )", (("x", "no tears, "),), unless=r"(?:ask|asked|wants to know)"),
    Plainer(("looked", "thought", "seemed"), r"(?P<x>(?:(?:i )?thought (?:it|the \w+|that) was|looked|seemed) (?:a little |kind of |a bit |all )?(?:wet|torn|damp|soaked|crushed|ripped|dented|peeled|loose)(?:,| but|,? and)* (?:but )?(?:it|that)(?:'s| was| is) (?:only |just )+(?:\w+ )?\w+)(?=[.,;]|$)", (("x", "was all right"),)),
    # --- one harm named for another
    Plainer((", not a", "not a ", " not the "), rf"(?P<x>(?:a |an |the )(?P<d>(?:{_HARM})),? (?:no,? |wait,? |well,? )*not (?:a |an |the )?(?P=d),? (?:it's |more (?:of|like) |but |just |really )*)(?=(?:a |an |the )?(?:{_HARM}|corner))", (("x", ""),)),
    # --- another lent a hand
    *(
        Plainer((f"helped me {verb}", f"helped me to {verb}", f"helped us {verb}", f"gave me a hand {verb}"), rf"(?P<x>(?:he|she|they|somebody|the \w+|my \w+|[a-z]+) (?:helped (?:me|us)|gave (?:me|us) a hand)(?: to)? {verb})(?![\w'])", (("x", f"we {done}"),))
        for verb, done in (("patch", "patched"), ("fix", "fixed"), ("mend", "mended"), ("repair", "repaired"), ("tape", "taped"), ("staple", "stapled"), ("rub", "rubbed"))
    ),
)
