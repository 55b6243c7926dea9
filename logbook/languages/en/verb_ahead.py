"""English that tells what became of a thing ahead of the thing, and the plain words for it: "forgotten were the vanes", "two inch wide was the tape", "nothing over them".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT, SAID_NUMBER
from logbook.languages.plainer import Plainer

_IS = r"(?:is|was|are|were)"
_DET = r"(?:the |its |my |all the |all its |those )"
_RUB = r"(?:rub(?:bing)?(?:[- ]?down)?|burnishing|squeegee(?:ing)?)"
_THING = rf"(?:turning vanes|vanes|(?:cross )?tabs|tape|taping|staples|stapling|washers|screws|trimming|wiping|patch|{_RUB})(?![\w'-])"
_M = rf"(?:{SAID_NUMBER}|an?|half an)(?: (?:of )?(?:an )?inch(?:es)?| in\.?)"
_NUMBER = rf"(?:\d{{1,3}}|(?:one|two) (?:oh[- ])?{SAID_COUNT}|{SAID_COUNT})"
_PIECE = rf"(?:(?:the |my )?(?:{KIND} )?(?:number |piece )?{_NUMBER}|it|this one|that one|the {KIND})"
_ACT = r"(?:rubbed(?: down)?|taped|stapled|wiped(?: down)?|trimmed|patched|bent|put (?:in|on))"
_BEGINS = r"(?:^|(?<=[.,;!?] )|(?<= and )|(?<= but ))"
_ENDS = r"(?=[.,;!]|$| (?:and|but|so|because|cause|since|till|until|yet|the|it|stapled|taped|straight|ten|twelve|fourteen|sixteen|eighteen|twenty|\d))"
_HARMED = ("tear", "torn", "rip", "hole", "punctur", "crush", "delaminat", "dent", "gash", "split", "wet", "loose", "peel", "bubbl", "damage", "broke", "cut in")

ENGLISH_VERB_AHEAD = (
    # --- what was not done to it, ahead of what it was not done with
    Plainer(("forgotten", "overlooked", "left out", "left off", "skipped", "missed", "omitted"), rf"{_BEGINS}(?P<x>(?:completely |just |plain |still )?(?:forgotten|overlooked|left out|left off|skipped|missed|omitted)(?: by me| again| altogether)? {_IS} )(?={_DET}?{_THING})", (("x", "I forgot "),)),
    Plainer(("yet to be ", "not yet ", "still not ", "not ", "waiting to be ", "left to be "), rf"{_BEGINS}(?P<x>(?:still )?(?:yet to be|not yet|still not|waiting to be|left to be) )(?={_ACT} {_IS} {_DET})", (("x", "still to be "),)),
    Plainer((" but ", " except "), rf"(?P<x>everything(?:'s| is| was) (?:all )?(?:done|finished|ready)(?: up)?)(?: (?:on|with|for|in) {_PIECE})?(?P<y>,? (?:but|except|except for)) (?={_DET}?{_THING})", (("x", "all done"), ("y", ", still needs"))),
    # --- how wide or how far, ahead of what is
    Plainer((" wide is", " wide was"), rf"{_BEGINS}(?P<x>(?P<m>{_M} wide) (?:is|was) (?:the |my )tape(?: (?:that )?(?:went|got put|i put|i used|used|is|was))?)(?= (?:on|for|over) |[.,;]|$)", (("x", r"\g<m> tape"),)),
    Plainer((" is where ", " was where ", " is how far ", " was how far ", " is what ", " was what ", " is how ", " was how "), rf"{_BEGINS}(?P<x>(?P<m>{_M})(?: apart)? (?:is|was) (?:where|how far(?: apart)?|how|what) (?:the |my |all the )?staples (?:got put|went in|went|landed|ended up|came out|are|were|sit|got shot|got set|got driven|are set|were set|are put|were put)(?: in| apart| to| at)?)(?= (?:on|in|along|for) |[.,;]|$)", (("x", r"the staples are \g<m> apart"),)),
    Plainer((" leg of ", " legs of ", " leg on ", " legs on "), rf"{_BEGINS}(?P<x>(?P<m>{SAID_NUMBER}(?: (?:of )?(?:an )?inch(?:es)?)?) (?:is|was|are|were) the legs? (?:of|on) (?:the|my) staples(?: (?:that )?(?:i )?(?:used|shot|put|went in|got used))?)(?= (?:on|in|for) |[.,;]|$)", (("x", r"\g<m> leg staples"),)),
    Plainer(("open", "gapped", "gaping", "split", "apart"), rf"{_BEGINS}(?P<x>(?:opened up|opened|open|gapped|gaping|split|apart)(?: by| about)*) (?P<m>{_M})(?P<y> (?:is|was)) the joint(?P<z>)(?= (?:on|of|at|to|in) |[.,;]|$)", (("x", "a gap of"), ("y", " at"))),
    Plainer((" there is", " there was", " there are", " there were"), rf"(?:board|tape|facing|flap|spacing|foil)(?P<x> there) (?={_IS} (?:\d|one|two|three|a |half|inch))", (("x", ""),)),
    # --- what is over the staples: nothing
    Plainer((" but staples", " but the staples", " except staples", " besides staples"), rf"{_BEGINS}(?P<x>nothing(?: (?:is|was|went|got put|goes))?) (?:on|over|across) (?:the |its )?(?:seams?|joints?|flaps?)(?: of {_PIECE})?(?P<y>(?: (?:right )?(?:now|yet))? (?:but|except|besides) (?:the |just )?staples)", (("x", "there is no tape"), ("y", ""))),
    Plainer(("nothing ",), r"(?:staples|stapled|tape|taping|mastic|sealed)(?![\w'])[^.?!]{0,60}? (?P<x>nothing(?: (?:is|was|went|got put|goes))?(?: (?:on|over|across))) (?:them|top of (?:them|it)|the (?:seams?|joints?|staples|flaps?)|it)(?P<y>)(?![\w'])(?! (?:but|except|besides|else|now|yet))", (("x", "no tape on"), ("y", "")), unless="mastic"),
    Plainer(("nothing ",), r"nothing (?:is |was |went |got put |goes )?(?:on|over|across) (?:them|the (?:seams?|joints?|staples|flaps?)|it)(?P<x>)(?= (?:it's|it is|they're|they are|the (?:staples|flap) (?:is|are)) )", (("x", "."),)),
    Plainer((" but tape", " but the tape", " except tape", " except the tape"), r"(?P<x>nothing (?:on|over|across) (?:them|the (?:seams?|joints?|staples|flaps?)|it) (?:but|except) )(?=(?:the )?tape(?![\w'-]))", (("x", ""),)),
    # --- the last of it, with the rest told behind
    *(
        Plainer((f"the rest of the {one}",), rf"(?P<x>the rest of the {one}(?:ing|e|es) (?:was|is|are|were|got)(?: all)? (?:done|on|in|good|down|finished))(?![\w'-])", (("x", f"the rest is {done}"),))
        for one, done in (("tap", "taped"), ("stapl", "stapled"))
    ),
    Plainer((" inch round",), rf"tabs [^.,;?!]{{0,30}}bent(?P<x>)(?= {SAID_NUMBER} inch round)", (("x", ","),)),
    Plainer(("sealing ", "closing "), rf"{_BEGINS}(?P<x>(?:the )?(?:sealing|closing)) (?:on|of) {_PIECE} (?P<y>(?:is|was|got) done) (?=with (?:tape|mastic|foil|cloth|duct|181))", (("x", "the joint"), ("y", "is sealed"))),
    # --- what it was mended and closed with
    Plainer((" gone over with",), r"(?P<x>(?:was|got|were|been) gone over with) (?=(?:some |a bit of |foil |pressure |heat )*(?:tape|mastic))", (("x", "was patched with"),), beside=_HARMED),
    Plainer(("mend", "patch", "fix", "repair", "cover"), r"(?P<x>(?P<a>(?:foil |heat |some )?tape|mastic) (?:is|was) (?:all|what|the only thing|everything)(?: that)?(?: (?:was|is|got|i|we))*(?: (?:used|put on|had|took|went on|needed))?(?: to| for)? (?:mend(?:ed|ing)?|patch(?:ed|ing)?|fix(?:ed|ing)?|repair(?:ed|ing)?|cover(?:ed|ing)?) (?:it|that|them|the \w+))(?=[.,;]|$| )", (("x", r"it was patched with \g<a>"),), beside=_HARMED),
    Plainer((" the closing", " the closure", " the seal"), r"(?:^|(?<=[.,;] )|(?<= and ))(?P<x>(?P<a>(?:cloth |duct |foil |heat |masking )*tape|mastic|caulk) (?:is|was) the (?:closing|closure|sealing|seal)) (?=(?:on|of|for|over) )", (("x", r"the closure is \g<a>"),)),
    Plainer((" cut down ", " cut in ", " cut up "), rf"(?:top|bottom|(?:left|right|back|front)(?: side)?|side) (?:was|is|got|were) (?P<x>cut) (?=(?:down|in|up) {SAID_NUMBER}(?: inch(?:es)?)? (?:over|in|back) )", (("x", "brought"),)),
)

ENGLISH_WANTING = (  # looked for first: what is left is read by rows of its own
    Plainer((" thing",), rf"(?:only|last|one) thing (?P<x>(?:still )?(?:wanting|lacking|wanted|needed|short)) (?=(?:on|for|with|in) {_PIECE} {_IS} )", (("x", "left"),)),
)
