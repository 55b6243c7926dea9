"""English that tells the measure before the thing that it is of, the mend beside the width of the harm, and why the staples or the tape are not those
that they should be: "an eighth of an inch, that's what's open at the corner", "the half inch staples ran out, so it's all quarter inch leg".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.en.numbers import SAID_NUMBER as _N
from logbook.languages.plainer import Plainer

_LEN = rf"(?:half an inch|(?:a )?(?:half|quarter) inch|an inch(?: and a (?:half|quarter|eighth))?|{_N}(?: of an)?(?:[- ](?:inch(?:es)?|in))?)"
_SMALL = r"(?:(?:an?|one|three|five|seven|nine|eleven) (?:half|quarters?|eighths?|sixteenths?)(?: of an)?(?:[- ]inch)?|\d+/\d+(?: (?:inch|in))?|half(?: an)? inch|quarter inch)"
_JOINT = r"(?:the |its |one |that )?(?:(?:top|bottom|left|right|back|front|far|near|other|heel|throat|inside|outside|last) )*(?:corners?|joint|seam|heel|throat|end|edge|side|top|bottom|back)"
_HARM = r"(?:holes?|tears?|rips?|gash(?:es)?|slits?|gouges?|punctures?|cuts?|splits?)"
_MENDED = r"(?:fixed|patched|covered|mended|repaired|closed|taped)"
_LISTED = r"(?:ul|listed|181|181 ?a-?p|good|right|real|proper|marked|rated)"
_NEVER_CAME = r"(?:never (?:came|made it|showed|got|arrived|turned up)|didn't (?:come|make it|show|get here|arrive)|hasn't (?:come|shown|arrived)|was never (?:sent|delivered|ordered))"
_END = r"(?=[.,;!]|$)"
_THERE = r"(?:the |our |this |that )?(?:duct ?board|board|facing|foil|skin|surface|gun|thermometer|gauge)"

_HARM_TOLD = r"(?:(?:an? |one |that |the |some |big |little |small |two |three |half |\\d)*(?:hole|tear|rip|gash|slit|gouge|puncture|cut|split)(?![\\w'])|(?:tore|ripped|punched|poked|punctured|gouged|slit|sliced) )"

ENGLISH_TOLD_THE_OTHER_WAY = (
    # --- the end first, and then what is at it
    Plainer((" air ",), r"(?:^|(?<=[.!?] ))(?P<x>(?:the |it's the |by the |at the )?(?P<e>male|female) end[.,;:] (?:and )?(?:that's|that is|it's) (?:where|the (?:one|end)(?: that| where)?) (?:the )?air (?:(?P<o>leaves|goes out|comes out|exits|gets out|blows out)|(?P<i>comes in|goes in|enters|gets in)))(?: (?:by|at|of|from|through))?(?=[.,;!]|$)", (("x", r"air leaves by the \g<e> end"),), unless=r"(?:comes|goes|gets) in(?![\w'])|enters"),
    Plainer((" end as ", " end for "), r"(?P<x>(?:kept|used|took|had|picked|made|left) the (?P<e>male|female) end (?:as|for) (?:the |my |a )?(?:start|starting (?:point|end)|reference|datum|zero|base|beginning|zero end)(?: (?:point|end|line))?)(?=[.,;!]|$| (?:when|of|and|while|again|this))", (("x", r"laid it out from the \g<e> end"),)),
    Plainer((" clinch",), r"(?:^|(?<=[.!?;] ))(?P<x>(?P<w>inward|outward|in|out)s?[.,;] (?:that's |i mean )?(?:the |my )?(?:clinch|staples?,? clinched?|legs)(?:,? (?:i mean|that is|i'm talking about|is what i mean))?)(?=[.,;!]|$)", (("x", r"legs clinched \g<w>"),)),
    Plainer((" turn in", " turn out", " fold in", " fold out", " bend in", " curl in", " go in"), r"(?:gun|stapler|anvil)(?![\w'])[^.;!?]{0,40}?,? so (?P<x>they)(?= (?:all |just )?(?:turn|fold|bend|curl|go) (?:in|out)(?:ward|wards)?(?=[.,;!]|$))", (("x", "the legs"),)),
    Plainer(("tabs, ",), r"(?<!cross )(?P<x>(?:the |my )?tabs, (?:i|we) (?:(?:only|just|could only|got to) )*(?:bent|bend|folded|got|hammered)(?: down| over)? (?:only |just )?(?P<n>one|two|three|four|five|six|seven|some|a few|a couple|half|most|\d)(?: (?:of|out of)(?: the| my)? (?:\w+|them))?(?: (?:bent|down|over|folded))*)(?=[.,;!]|$| and| before| because| so)", (("x", r"only \g<n> of the tabs are bent"),)),
    Plainer(("tabs, ",), r"(?<!cross )(?P<x>(?:the |my )?tabs, (?:i|we) (?:bent|folded|hammered|got)(?: down| over)? (?:them all|all of them|every one(?: of them)?|every last one|all the way around)(?: (?:bent|down|over|tight))*)(?=[.,;!]|$| and)", (("x", "the tabs are bent"),), unless=r"all but|except"),
    # --- what was done to the harm named right before
    Plainer((" taped it",), rf"(?:^|(?<=[.!?;] )){_HARM_TOLD}[^.;!?]*[.;!] (?:[^.;!?]*(?:punched|poked|through|by|from|wide|long|across)[^.;!?]*[.;!] )?(?:so |and |well |then )*(?:i|we) (?:just |only |went ahead and )*(?P<x>taped it)(?: up| off)?(?=[.,;!]|$)", (("x", "taped over it"),)),
    Plainer((" taped it",), rf"(?:^|(?<=[.!?;] ))(?:there's|there is|there was|it's got|it has|got|i found|put|made|i put) {_HARM_TOLD}[^.;!?]*[.;!] (?:so |and |well |then )*(?:i|we) (?:just |only |went ahead and )*(?P<x>taped it)(?: up| off)?(?=[.,;!]|$)", (("x", "taped over it"),)),
    # --- what he asks himself that he mended it with
    Plainer(("what did i use", "what did we use", "what'd i use", "what did i put", "what's on it", "what went on"), rf"{_HARM_TOLD}(?:(?!taped|stapled|seams)[^?]){{0,90}}?[.!;] (?P<x>(?:so |and |now )*what(?: did|'d) (?:i|we) (?:use|put|fix it with|do it with|mend it with|patch it with|close it with)(?: (?:on|over|for|to fix|to patch|to mend|to close)(?: (?:it|that|there))?)?\? (?:just |only |plain |some )*)(?=tape(?![\w']))", (("x", "patched it with "),)),
    Plainer(("what did i use", "what did we use", "what'd i use", "what did i put"), rf"{_HARM_TOLD}(?:(?!taped|stapled|seams)[^?]){{0,90}}?[.!;] (?P<x>(?:so |and |now )*what(?: did|'d) (?:i|we) (?:use|put|fix it with|do it with|mend it with|patch it with|close it with)(?: (?:on|over|for|to fix|to patch|to mend|to close)(?: (?:it|that|there))?)?\? (?:just |only |plain |some )*)(?=(?:fabric|mastic|a plug|glass fabric)(?![\w']))", (("x", "fixed it with "),)),
    # --- a set of hangers
    Plainer(("hanger set ", "hangers set ", "strap set "), r"(?P<x>(?:hangers?|strap) set)(?= (?:number )?\d+(?![\w/-]))(?! \d+ (?:feet|foot|ft|inches|inch|apart|on))", (("x", "hanger"),)),
    # --- one side's taped
    Plainer((" side's ",), r"(?:one|only one|just one|the one)(?: of the)? side(?P<x>'s)(?= (?:taped|stapled|rubbed)(?![\w']))", (("x", " is"),)),
    # --- the measure first
    Plainer((" open", " gapped", "the gap"), rf"(?P<x>(?P<n>{_LEN}),? (?:that's|that is|is|that was) (?:what's|what is|how much is|how far it's|all that's|how much|how wide the gap is|the gap|what the gap is)(?: still)?(?: open| gapped)?)(?= (?:at|on|in|along|around) {_JOINT}(?![\w']))", (("x", r"gap of \g<n>"),)),
    Plainer((" read", " showed", " said", " was at"), rf"(?P<x>(?P<n>{_N}) degrees?,? (?:that's|that is|that was|is|was) what (?P<t>{_THERE}) (?:read|reads|showed|said|was(?: at)?)(?: me)?)(?=[.,;!]|$| (?:when|at|on|in|up|before|and|this)(?![\w']))", (("x", r"\g<t> was \g<n> degrees"),)),
    Plainer((" degrees",), rf"(?:i|we) (?:didn't|did not|never did|skipped it|forgot)(?P<x>,?)(?= (?:it was|it's|cause it was) (?:only |about |just |like )*{_N} degrees(?![\w']))", (("x", "."),)),
    # --- staples that were not those that they should have been
    Plainer((" ran out", " gave out", " were gone", " never came", " were all gone", " run out"), rf"(?P<x>(?:because |since )?(?:the |my |all the )?{_SMALL}(?: leg)? (?:staples|ones) (?:ran out|run out|gave out|were (?:all )?gone|never came|were out)(?: on (?:me|us))?(?: (?:again|at noon|halfway|early))?,? (?:and |so |and so |then )*)(?=[^.;!?]{{0,40}}?(?<![\w']){_SMALL}(?: leg| legs| ones| staples)(?![\w']))", (("x", ""),)),
    Plainer((" leg", " long"), rf"(?:strip|staples?|stapler|gun|stick|box)(?![\w'])[^.;!?]{{0,70}}?(?P<x>(?:they were|they're|they are|it was|those were|those are|these are)(?: all| only| just)*) {_SMALL} (?:legs?|long)(?P<y> (?:instead of|not|rather than|and not|in place of) (?:the )?(?:half|{_SMALL})(?: inch)?(?: (?:legs?|ones))?)?{_END}", (("x", "the staples were"), ("y", ""))),
    # --- tabs: some of how many, and what was in the way of bending them
    Plainer((" tabs out of ",), rf"(?P<x>(?P<a>{_N}) tabs out of (?:the |my )?(?P<b>{_N}))(?! by)(?![\w'/-])(?=[^.;!?]{{0,50}}?(?<![\w'])(?:not|aren't|weren't|never|standing|sticking|straight|up|unbent|loose|open)(?![\w']))", (("x", r"\g<a> of the \g<b> tabs"),)),
    Plainer((" tabs",), r"(?P<x>before (?:i|we) (?:ever |even |had )?(?:bent|folded|hammered|bend|got to|turned)(?: down| over)? (?:the|my|its|those|any) tabs(?: (?:down|over|in))?,? (?:so |and |and so |and now |now )*(?:they're|they are|they)(?: all| still)* (?:not |n't |never got )(?:bent|folded|down|hammered|turned)(?: (?:down|over|in))?)(?=[.,;!]|$)", (("x", "and the tabs are not bent"),)),
    # --- harm, and what it was or was not mended with
    Plainer(("anything over", "anything on", "a thing over", "a thing on", "a patch on", "a patch over"), r"(?P<x>(?P<w>nobody|no one|i never|we never|i didn't|we didn't|i haven't|they never)(?: has| ever| even)* (?:put|stuck|laid|slapped|got|run|ran) (?:anything|a thing|so much as a patch|a patch|any tape|so much as tape) (?:over|on|across|in) (?:them|it|that|those|either(?: one)?|any of them))(?=[.,;!]|$| (?:yet|and|so)(?![\w']))", (("x", r"\g<w> patched it"),), beside=("hole", "tear", "rip", "gash", "slit", "gouge", "punct", "cut ")),
    Plainer((" strips of tape", " strip of tape", " pieces of tape", " piece of tape", " layers of tape", " lengths of tape", " bits of tape"), rf"{_HARM}(?![\w'])[^?!]{{0,80}}?(?<![\w']){_MENDED} (?:it|that|them|this|the {_HARM})(?: (?:up|over))? with (?P<x>(?:(?:just|only|a|an|one|two|three|four|a couple of|a few|some|another|\d) )*(?:strips?|pieces?|layers?|lengths?|bits?) of )(?=tape(?![\w']))", (("x", ""),)),
    Plainer((" got tape", " gets tape", " just tape"), rf"(?:no|out of|without)(?: more| any| glass| the)* (?:glass fabric|fabric|mastic|board|plug|glass|scrim)[^.;!?]{{0,20}} for (?:the|that|this) {_HARM}[^.;!?]{{0,40}}?(?P<x>(?:so )?(?:that one|it|that|this one)(?: just| only)? (?:got|gets)(?: just| only)? tape){_END}", (("x", "I taped over it"),)),
    Plainer((" wide", " across", " long"), rf"(?P<x>(?:the|that|this) (?P<h>{_HARM}(?: (?:from|off|in|by|on) (?:the|my|a|his) (?!joint|seam)[a-z]+)?)(?:'s| is| was)(?: about| only| just)? (?P<n>{_LEN}) (?P<w>wide|across|long),? (?:and |so |but )+)(?=(?:i|we) (?:just )?{_MENDED} (?:it|that|over it))", (("x", r"there's a \g<h>, \g<n> \g<w>, "),)),
    # --- a listed tape that never came, and what is on it instead
    Plainer(("tape never", "tape didn't", "tape hasn't", "tape was never"), rf"(?P<x>(?:because |since )?(?:the |my |our |any )?{_LISTED} tape {_NEVER_CAME}[^.,;!?]{{0,40}}?,? (?:so )?)(?=(?:{KIND} (?:number )?{NUMBER}|it|this one|that one|this|number {NUMBER})(?:'s| is| was| got)(?: all| just)? (?:taped|closed|sealed)(?: up)? with (?!no))", (("x", ""),)),
    # --- one side of it, where no sign stands before it
    Plainer((" side of it", " corner of it", " end of it", " edge of it"), r"(?:good|down|off|two|tight|on|in|up|taped|rubbed|stapled|wiped|trimmed)(?P<x> )(?=(?:the |one |a )(?:\w+ )?(?:side|corner|end|edge) of it (?:is|was|got|gets)(?: all| still| kind of)* (?:wet|soaked|damp|torn|ripped|crushed|dented|punctured|gouged|mashed)(?![\w']))", (("x", ". "),)),
    # --- nothing hangs on the last one
    Plainer(("nothing on that one", "nothing on this one"), rf"(?:accessor|damper|heater|coil|fan|pounds)[^?!]*stapled,? (?:and )?taped,? (?:and )?rubbed(?: down)?(?P<x>,? (?:and )?nothing on (?:that|this) one){_END}", (("x", ""),)),
    # --- a hole that is meant to be there
    Plainer(("test hole", "probe hole", "sensor hole", "pitot hole", "gauge hole"), r"(?:test|probe|sensor|pitot|gauge) (?P<x>holes?)(?![\w'])", (("x", "port"),)),
    Plainer(("hole for",), r"(?P<x>(?:the |its |a )?holes? for (?:the |a |its )?(?:\w+ )?(?:sensor|probe|thermometer|thermostat|detector|collar|damper|gauge|control|controls|tap|takeoff|take-off|actuator)(?: still)? (?:needs?|has|have|wants?|gotta)(?: still)?(?: to be| to get)? (?:drilling|drilled|cutting|cut|to be drilled|to be cut|boring|bored|punching|punched))(?: (?:in|out|yet|through))*(?=[.,;!]|$| and )", (("x", "I still have to drill the port"),)),
    # --- what is short, and when it goes on
    Plainer(("shorted me", "short me", "shorted us", "sent me the wrong", "owes me", "owe me", "owes us"), r"(?P<x>(?:they|he|the (?:shop|yard|supply house|warehouse)|somebody) (?:shorted|short|sent me the wrong|owes|owe) (?:me|us) )(?=[^.;!?]{3,60}?,? (?:so |and )?(?:i|we)(?:'ll| will) (?:put|stick|install|set|screw|fit|mount|glue) (?:that|it|them|those|that one) (?:on|in) )", (("x", "I still need "),)),
)
