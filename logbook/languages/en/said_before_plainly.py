"""English of what a man said before and of what is so: "throat's twelve, I said. It's four", "I'd not taped it either and I still haven't".

What he said before is left out where his next words tell otherwise. Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.en.numbers import SAID_NUMBER
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_SAID = rf"{_I}(?:'d| had|'ve)?(?: just| already| only)? (?:said|told (?:you|him|her|them|the office|the boss|[a-z]+)|wrote(?: down)?|written(?: down)?|put down|texted|reported|called in|figured|thought|guessed)"
_ONLY = r"(?:that|it)(?: was|'s) (?:just |only )?(?:(?:the|a|my) (?:layout|drawing|plan|plans|sketch|print|guess|number off the (?:drawing|print|sheet)|other one)|what (?:the (?:drawing|print|sheet) (?:says|said|had|wanted)|i (?:wanted|meant|planned|laid out))|before i (?:measured|looked|checked)(?: it)?|off the (?:drawing|print|sheet)|from memory|this morning|yesterday)"
_WHY = rf"(?:(?:{_ONLY}|{_I} (?:just )?(?:measured|checked|looked|put the tape on it)(?: it)?(?: again| now| just now)?)[.,;]? (?:and |but |so )*)?"
_IS = rf"(?:(?:no|well|but|and|wait|actually|really|sorry|in fact),? )*(?:it's|it is|they're|they are|it was|that's|it (?:came|come) out(?: at)?|it turned out(?: at)?|it ended up(?: at)?|it measures|it reads|{_I} (?:cut|made|did|ran|laid|built|set) (?:it|them|that)(?: out)?(?: at| to| in| over)?|{_I} get|{_I} got)(?: (?:really|actually|only|just|more like|about))*"
_VALUE = rf"(?<![\w'/-])(?!\d{{3}}){SAID_NUMBER}(?![\w'/-])(?: inch(?:es)?)?"
_END = r"(?=[.,;!]|$)"
_STUFF = r"(?:(?:the |some )?(?:mastic|(?:(?:grey |gray |silver |plain |regular |ordinary )?(?:cloth|duct|foil|masking|heat|packing|unlisted) )?tape|181[ -]?[ab]-?[pmh]|cloth|staples|cross tabs))"
_MEND = r"(?:plugged|patched(?: up)?|mended|fixed(?: up)?|repaired|replaced|cut out)"
_IS_NOT = rf"(?:it (?:isn't|is not|ain't|wasn't|was not|hasn't been|hadn't been)|it's not(?: true| so| right)?|that's not (?:so|true|right)|that ain't so|{_I} (?:didn't|did not|hadn't|had not|haven't|never did)|not true|not so)"
_ACTS = (("tape", "taped"), ("staple", "stapled"), ("rub", "rubbed"), ("trim", "trimmed"), ("wipe", "wiped"))
_THEN = r"(?: (?:down|off|yet|then|either|too|when [^.,;?!]{2,30}|this morning|at (?:noon|lunch|\w+(?: o'clock)?)|yesterday|earlier|before|monday|tuesday|wednesday|thursday|friday|a minute ago|the last time [^.,;?!]{2,20}))*"

ENGLISH_SAID_BEFORE = (
    # --- a measure, as he said it, and what it is
    Plainer(
        (" said", " told ", " wrote", " written", " put down", " texted", " reported", " called in", " figured", " thought", " guessed"),
        rf"(?<![\w'/-])(?P<p>every |at |over |back |in )?(?P<x>{_VALUE}(?: apart)?,? (?:is what )?{_SAID}(?: before| earlier| at first)?[.,;] {_WHY}{_IS} (?:(?P=p))?)(?={_VALUE}(?: apart)?{_END})",
        (("x", ""),),
    ),
    Plainer(
        (" said", " told ", " wrote", " written", " thought"),
        rf"(?<![\w'/-])(?P<x>{_VALUE})(?P<y>(?P<u> long| wide| deep),? (?:is what )?{_SAID}(?: before| earlier| at first)?[.,;] {_WHY}{_IS} (?P<v>{_VALUE})){_END}",
        (("x", ""), ("y", r"\g<v>\g<u>")),
    ),
    Plainer((" said ",), rf"(?<![\w'/-])(?P<p>every|at|over|back|spaced)(?P<x>,? {_SAID} {_VALUE}[.,;] (?:(?:but|and|well) )*{_WHY}{_IS})(?= {_VALUE}{_END})", (("x", ""),)),
    # --- what he said it was closed with, and what it is closed with
    Plainer(
        (" said", " told ", " wrote", " written", " reported", " called in", " thought"),
        rf"(?<![\w'/-])(?P<x>{_STUFF}(?: (?:in|on) it)?,? (?:is what )?{_SAID}(?: before| earlier| at first)?[.,;] (?:{_IS_NOT}[.,;] )?{_IS} )(?={_STUFF}{_END})",
        (("x", ""),),
    ),
    Plainer((" said ", " told ", " wrote ", " thought "), rf"(?:^|(?<=[.!?;,] ))(?P<x>{_SAID} (?:that )?(?:it's |it was |i used |i put )?{_STUFF}[.,;] (?:{_IS_NOT}[.,;] )?{_IS} )(?={_STUFF}{_END})", (("x", "it's "),)),
    Plainer((" was for ", " is for ", " were for ", " are for "), rf"(?<=, )(?P<x>the (?:mastic|tape|vanes|staples|washers|rods)(?: was| is| were| are|'s) for (?:number )?(?:[a-z]-?)?{NUMBER})(?=[.;!]|$)", (("x", "so much for that"),)),
    # --- the harm he said he had mended
    Plainer(
        (" said", " told ", " wrote", " reported", " thought"),
        rf"(?:^|(?<=[.!?;,] ))(?P<x>{_SAID} (?:that )?(?:it's|it is|it was|it had been|it'd been|{_I}(?:'d| had)?)(?: all)? )(?P<d>{_MEND}(?: and {_MEND})?)(?: it| that)?(?P<y>(?:[.,;]| and| but)+ (?:(?:but|and|well|no),? )*{_IS_NOT})(?=[.,;!]|$)",
        (("x", "it's not "), ("y", "")),
    ),
    # --- that it is so, as he said, and it is not
    Plainer(
        (" said", " told ", " wrote", " thought"),
        rf"[a-z]+(?:'s|'re| is| are| was| were)(?P<x>) (?:all )?(?:in|on|taped|stapled|rubbed(?: down)?|trimmed|wiped|bent|patched|plugged|mended|fixed|closed|sealed)(?P<y>,? {_SAID}(?: before| earlier)?[.,;] (?:(?:but|and|well|no),? )*(?:it (?:isn't|is not|ain't|wasn't)|it's not|they (?:aren't|are not|ain't|weren't)|they're not|{_I} (?:didn't|hadn't|haven't)))(?=[.,;!]|$)",
        (("x", " not"), ("y", "")),
    ),
    # --- as he always does it, and as he did it here
    Plainer(("always", "usually", "normally"), rf"[\w']+(?P<x>,? (?:the way |like |as |which is how )?{_I} (?:always|usually|normally) (?:do|go|turn|shoot|clinch)(?: (?:it|them|that|em))?(?: (?:that way|like that|so))?)(?=[,.;] (?:except|only|but)(?![\w']))", (("x", ""),), beside=("clinch", "legs", "spac", "every ", "staples")),
    # --- what was not done then, and is not done now
    *(
        Plainer(
            (f"not {done}", f"n't {done}"),
            rf"(?P<x>{_I}(?:'d not| had not| hadn't)) {done}(?: (?:it|that|this one|them))?(?P<y>{_THEN}(?:,? and|,|[.;]) (?:(?:and|well) )*{_I} (?:still haven't|haven't still|haven't (?:now|yet)|ain't yet)(?: either| now| yet)*)(?=[.,;!]|$)",
            (("x", "i still haven't"), ("y", "")),
        )
        for _, done in _ACTS
    ),
    *(
        Plainer(
            (f"not {done}", f"n't {done}", f"n't been {done}"),
            rf"(?P<x>it (?:wasn't|was not|hadn't been|had not been)) {done}(?P<y>{_THEN}(?:,? and|,|[.;]) (?:(?:and|well) )*it (?:still isn't|still ain't|still hasn't been|isn't (?:now|yet)|hasn't been yet)(?: either| now| yet)*)(?=[.,;!]|$)",
            (("x", "it still isn't"), ("y", "")),
        )
        for _, done in _ACTS
    ),
    # --- what was not done then, and is now
    *(
        Plainer(
            (f"not {done}", f"n't {done}"),
            rf"(?<![\w'])(?P<x>{_I}(?:'d not| had not| hadn't)) {done}(?: (?:it|that|this one|them))?(?P<y>{_THEN}(?:,? and|,? but|,|[.;]) (?:(?:and|well|but) )*(?:now {_I} have|{_I} have (?:now|since)|{_I}'ve done (?:it|that)(?: now| since)?|{_I}'ve since done (?:it|that)))(?=[.,;!]|$)",
            (("x", "i've"), ("y", "")),
        )
        for _, done in _ACTS
    ),
    # --- the thing ahead of what was never begun
    *(
        Plainer(
            ("started", "begun", "touched"),
            rf"(?:^|(?<=[.!?;,] )|(?<= and )|(?<= but ))(?P<x>(?:the )?(?:{things})(?: (?:on|of) (?:it|this one|that))?,? {_I}(?:'ve not| haven't| have not| ain't)(?: even| yet| really)* (?:started|begun|touched)(?: on)?(?: (?:it|that|them|yet))*)(?=[.,;!]|$)",
            (("x", f"i haven't {done} it yet"),),
        )
        for things, done in (("tape|taping", "taped"), ("stapling", "stapled"), ("rub(?:bing)?(?: ?down)?", "rubbed"), ("trim(?:ming)?", "trimmed"))
    ),
    # --- a joint or a seam told as what is wrong
    Plainer(("what's wrong", "what is wrong", "only thing wrong", "trouble is", "problem is"), r"(?:^|(?<=[.!?;,] ))(?P<x>(?:what's wrong|what is wrong|the only thing wrong|the (?:trouble|problem))(?: with it| here| now)? is )(?P<t>the joint|the seam)(?P<y>,)(?= (?:it's )?(?:an? |one |three |five |seven |half |about )+(?:eighths?|quarters?|sixteenths?|inch|half)[^.?!;,]{0,20}? (?:open|gap|off))", (("x", ""), ("y", " is"))),
    # --- the roll, set right by its width alone behind its print
    Plainer((" inch",), rf"(?P<x>(?:(?:two|three|four|2|3)(?: and a half)?|2\.5|2-1/2)(?:[- ]inch)(?: wide)?)(?P<m>(?: tape)?,? (?:of )?(?:the )?181[ -]?[ab]-?[pmh])(?P<y>[.,;] (?:(?:no|wait|sorry|hold on|scratch that|correction|nope),? )+(?:that's|it's|that was|it was|make (?:that|it)) (?:the )?(?P<v>{SAID_NUMBER}[- ]inch)(?: (?:roll|tape|one|wide|stuff))*)(?=[.,;!]|$)", (("x", r"\g<v>"), ("y", "")), beside=("181",)),
    # --- washers and screws, set right by their name
    Plainer(
        ("screws", "washers"),
        rf"(?<![\w'])(?P<t>screws|washers)(?P<k>(?: (?:are|at|every|on))*) (?P<x>{_VALUE}(?:, washers(?: (?:are|at))? {_VALUE})?[.,;] (?:(?:no|wait|sorry|strike that|scratch that|correction|hold on|actually|nope|i mean)[.,;]? )+(?:the )?(?P=t)(?: (?:are|at|every|on))* )(?={_VALUE}{_END})",
        (("x", ""),),
        unless=r"washers[^.]*[.,;] (?:no|wait|sorry|strike that|scratch that)[^.]* screws",
    ),
    # --- some of the tabs, set right by their count
    Plainer(
        ("tabs",),
        r"tabs[^.?!]{0,40}bent[^.?!]{0,20}[,;.] (?P<x>(?:(?:but|and|no|wait|hold on|hang on|sorry|actually|except|well|nope|scratch that)[,.]? )+)(?:one|two|three|four|five|six|\d|some|a few|a couple)(?P<y>(?: of (?:them|those|the tabs))?(?: (?:at|on|along|by|in) the [a-z]+(?: (?:side|end|edge|corner))?)?) (?P<z>(?:aren't|isn't|weren't|are not|is not)(?: bent)?|(?:is|are|was|were)(?: still| all| just)* (?:stick|stand|point|pok)ing(?: (?:still|all|right|just|straight))* (?:up|out))(?=[.,;!]|$| and)",
        (("x", "no, "), ("y", " of them"), ("z", "are sticking up")),
    ),
    # --- a harm that nothing covers
    Plainer((" nothing ",), r"(?<![\w'])(?:tear|torn|rip|ripped|hole|puncture|punctured|gash|slit|crushed|dent|gouge|cut)(?![\w'])[^?!;]{0,60}?[,. ](?P<x>(?:and |but |with )?(?:there's |there is )?nothing (?:over|on|across|covering) it)(?: yet| now| at all| so far)?(?=[.,;!]|$| and )", (("x", "not patched"),), unless=r"nothing (?:over|on) it but|patched|plugged|(?:hole|crack|gash|dent|cut) in (?:the|a|my) (?:floor|wall|ceiling|roof|deck|slab|drywall|truck|tarp|glove|shirt)"),
    # --- vanes that were not there and came
    Plainer(("vanes",), rf"(?P<x>(?:the )?vanes (?:weren't|were not|hadn't come|weren't even)(?: (?:here|in|there|on site|on the truck|yet|come))* (?:at (?:\w+|\d+)(?: o'clock)?|this morning|yesterday|earlier|before|when [^.,;?!]{{2,30}})(?:[,.;]? (?:so|and) {_I} [^.?!;]{{2,40}})?[.,;] (?:(?:but|and|so),? )*(?:they|the vanes)(?: have|'ve)? (?:came|come|got here|showed up|arrived)(?: [^.,;?!]{{2,20}}?)?,? (?:and |so )?)(?=(?:now )?(?:they're|they are) (?:all )?in(?![\w']))", (("x", "vanes, "),)),
    # --- how it was when he began to talk
    *(
        Plainer(
            (f"n't {done}", f"not {done}", f"n't been {done}"),
            rf"(?<![\w'])(?P<x>(?:and )?when {_I} (?:started|began|picked up|called|rang|got on|first|dialed|opened)[^.,;?!]{{0,30}}?,? (?:the (?:tape|joint|seams?|piece|facing)|it|this one|nothing) (?:wasn't|weren't|was not|had not been|hadn't been|was) {done}(?: down)?[.,;] (?:(?:but|and|well) )*)(?={_I}(?:'ve| have)?(?: just| since| only just)* {done}(?![\w']))",
            (("x", ""),),
        )
        for _, done in _ACTS
    ),
    *(
        Plainer(
            (f"n't {done}", f"not {done}", f"n't been {done}"),
            rf"(?:^|(?<=[.!?;] ))(?P<x>(?:{_SAID})(?: before| earlier| yesterday)?(?: that)? )(?:(?:the )?(?:{KIND}) )?(?P<n>)(?:[a-z]-?)?{NUMBER}(?P<y> (?:wasn't|isn't|hadn't been|hasn't been|was not|is not) {done}(?: (?:yet|down))*[.,;] (?:(?:well|but|and),? )*(?:it|she)(?:'s| is| has been)(?: now|(?: now)? {done}))(?=[.,;!]|$)",
            (("x", "number "), ("y", f" is {done}")),
        )
        for _, done in _ACTS
    ),
    # --- turned the gun about
    Plainer(
        ("gun", "this one"),
        rf"(?P<x>(?:but|except|only)(?: that)?,? (?:(?:on|with|for) this one,? |here,? |this time,? )?(?:{_I} (?:had|flipped|turned|held|swung|got)(?: the)? gun[^.,;?!]{{0,30}}?,? (?:and|so) (?:they're|they are|they went|they all went|the legs are|the legs went)(?: all| clinched| turned| bent| pointing)*|(?:for |on |with )?this one,? (?:which|that|where) {_I} (?:did|shot|turned|went|clinched|put in)(?: them)?) in(?:ward|wards|side)?)(?=[.,;!]|$)",
        (("x", "but they're clinched inward"),),
        beside=("clinch", "legs", "staples", "outward"),
    ),
    # --- it was bare when he came, and he got round to it
    Plainer(
        ("when i ", "when we "),
        rf"(?:^|(?<=[.!?;] ))(?P<x>when {_I} (?:got|came|walked|showed up|started)[^.,;?!]{{0,20}},? )(?:(?:straight|elbow|tee|number|piece) )?(?:[a-z]-?)?{NUMBER} had (?P<y>no tape and )(?=an? )(?=[^?]*(?:tape[^.?!;]{{0,20}},? {_I}(?:'ve| have)?(?: only| just| since)* (?:put|got (?:a)?round to)))",
        (("x", ""), ("y", "")),
    ),
    # --- which piece it is that has them
    Plainer((" that got ", " that has ", " that's got ", " that had ", " that have "), rf"(?:^|(?<=[.!?;,] ))(?P<x>{_SAID} (?:that )?(?:it's got|it has|it had|it got|there (?:are|were|is)) (?P<t>(?:the |some |turning )*(?:vanes|tie rods|rods|channels?|staples|cross tabs|tape|mastic))(?: in it| on it)?[.,;] (?:(?:no|but|well|it isn't),? )*it's (?:the )?(?:(?:{KIND}) )?(?:[a-z]-?)?{NUMBER} (?:that|which)(?:'s)? (?:got|has|had|have) (?:them|it|those)[.,;] )(?:(?:this one|it|(?:the )?(?:(?:{KIND}) )?(?:[a-z]-?)?{NUMBER}) (?:has|got|has got)(?P<y> none))(?![\w'])", (("x", ""), ("y", r" no \g<t>"))),
    # --- a gap beside another's
    Plainer(("mine's got", "mine has", "mine's at", "mine is"), rf"(?<![\w'])gap(?![\w'])[^?]{{0,90}}?(?<![\w'])mine(?:'s got| has| has got|'s at| is at) (?:an? |about )?{_VALUE}(?P<x>)(?=[.,;!]|$)", (("x", " gap"),)),
    Plainer(("to say",), rf"(?P<x>{_I}? ?(?:was )?(?:just )?(?:about|going|gonna) to say (?:that )?{_I}(?:'d| had|'ve) (?P<d>[a-z]+) (?:it|that|them),? (?:and |but |well,? )*)(?={_I}(?:'ve| have)? (?P=d) )", (("x", ""),)),
    # --- asked aloud, and answered
    *(
        Plainer(
            (f"if i {done}", f"whether i {done}", f"if we {done}", f"if it's {done}", f"whether it's {done}"),
            rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:he|she|they|the (?:boss|foreman|kid|office|inspector)|[a-z]+)(?:'s| is| was|'re)? (?:asking|asks|asked|wants to know|wanted to know|wondering)(?: me)? (?:if|whether) (?:{_I}(?:'ve|'d)?|it's|it is) ){done}(?P<w>(?: it| that| them| down)*)(?P<y>[.?,] (?:well,? )?(?:no|nope|nah),? not yet)(?=[.,;!]|$)",
            (("x", "i haven't "), ("w", " it"), ("y", " yet")),
        )
        for _, done in _ACTS
    ),
)

ENGLISH_SAID_BEFORE_FIRST = (
    # --- of two that were not, one is done since
    *(
        Plainer(
            (f"was {done}", f"were {done}", f"been {done}"),
            rf"(?:^|(?<=[.!?;] ))(?P<x>(?:neither|none)(?: one| of (?:them|the two|those))?(?: was| were|'d been| had been) {done}(?: down)? (?:when {_I} [^.?!;]{{2,30}}|this morning|at (?:noon|lunch)|yesterday|earlier|before)[.;,] (?:(?:and|but|well|now) )*)(?:{_I}(?:'ve| have)?(?: since)?(?P<y> (?:done|did|finished|got)) (?:number )?(?:[a-z]-?)?{NUMBER})(?:[.,;]|,? but|,? and)(?: (?!haven't|not)[\w']+){{0,6}}?[.,;]? (?:(?:but|and) )?(?:number )?(?:[a-z]-?)?{NUMBER}(?P<z> {_I} (?:haven't|have not|still haven't)(?: (?:got|gotten)(?: around| round)? to| done| touched| started)?(?: it)?(?: yet)?|,? not yet| {_I} (?:still |'ve still )?(?:have|got|have got|need) to do|(?: is|'s) still to (?:do|come))(?=[.,;!]|$)",
            (("x", ""), ("y", f" {done}"), ("z", f" i haven't {done} yet")),
        )
        for _, done in _ACTS
    ),
    *(
        Plainer(
            (f"was {done}", f"were {done}", f"been {done}"),
            rf"(?:^|(?<=[.!?;] ))(?P<x>(?:neither|none)(?: one| of (?:them|the two|those))?(?: was| were|'d been| had been) {done}(?: down)? (?:when {_I} [^.?!;]{{2,30}}|this morning|at (?:noon|lunch)|yesterday|earlier|before)[.;,] (?:(?:and|but|well|now) )*){_I}(?:'ve| have)?(?: since)?(?P<y> (?:done|did|finished|got) (?:both|them both|(?:number )?(?:[a-z]-?)?{NUMBER} and (?:number )?(?:[a-z]-?)?{NUMBER}))(?: of them)?(?: since| now| both| too)*(?=[.,;!]|$)",
            (("x", ""), ("y", f" {done} both")),
        )
        for _, done in _ACTS
    ),
    # --- a bare measure that was another's, behind a word that sets right
    Plainer((" was the other one", " was another one", " was for the other one", " was the one before", " was the last one"), rf"(?:no|wait|sorry|scratch that|correction)[,.]? (?:(?:no|wait|sorry),? )*(?:(?:make (?:it|that)|it's|that's) )?(?:back |every |at |over )?{_VALUE}(?P<x>, (?:that|the {SAID_NUMBER}) was (?:for )?(?:the (?:other one|one before|last one)|another one))(?=[.;!]|$)", (("x", ""),)),
    # --- another's piece, told of before his own
    Plainer((" isn't mine", " is not mine", " ain't mine", " wasn't mine"), rf"(?:^|(?<=[.!?;] ))(?P<x>(?:number )?(?:[a-z]-?)?{NUMBER} (?:isn't|is not|ain't|wasn't) mine[.,;] (?:[^.?!;]{{2,90}}[.!;] ))(?=[^?]*(?:number )?(?:[a-z]-?)?{NUMBER}(?: is|'s) mine(?![\w']))", (("x", ""),)),
    # --- done while he talked
    *(
        Plainer(
            ("started this", "began this", "when i started", "when i began"),
            rf"(?:^|(?<=[.!?;] ))(?P<x>(?:when )?(?:{_I} )?(?:started|began) (?:this|the|talking|to talk)(?: note| recording| call| message)?,? (?:with )?(?:the )?{things} (?:was |were )?(?:still )?{off} )(?:(?:{KIND}) )?(?:number )?(?:[a-z]-?)?{NUMBER}(?P<y>[.,;] (?:(?:and|but|well) )*{_I}(?:'ve| have)?(?: just| only just)* (?:finished|done|did|put) (?:it|that|them)(?: on| in)?(?: (?:now|just now|since|while (?:talking|i talked|i was talking)))*)(?=[.,;!]|$)",
            (("x", "number "), ("y", f", i {done} it")),
        )
        for things, off, done in (("tape", "(?:off|not on)", "taped"), ("staples", "(?:out of|not in)", "stapled"))
    ),
    # --- the two told the wrong way about
    Plainer(("other way", "wrong way", "backwards", "the reverse"), rf"(?:^|(?<=[.!?;] ))(?P<x>[^.!?;]{{5,90}}[.,;] (?:(?:no|wait|sorry|hold on),? )*(?:it's |that's |it was )?(?:the )?(?:other way (?:about|around|round)|wrong way (?:about|around|round)|backwards|the reverse)[,:.;] )(?=(?:[a-z]-?)?{NUMBER} (?:got|has|gets|is|was) )", (("x", ""),), beside=("mastic", " tape", "181a", "staples", "tabs", "vanes")),
    # --- his own piece by its number
    Plainer(("my ",), rf"(?:^|(?<=[.!?;] ))my (?P<x>)(?=(?:\d{{2,3}}|(?:twen|thir|for|fif|six|seven|eigh|nine)ty[- ][a-z]+), (?:an? )?{KIND}(?![\w'-]))", (("x", "number "),)),
)
