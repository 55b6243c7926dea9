"""English of what was left or is not there, told of him who left it or of the thing itself: "Chris got pulled off before he taped it", "he closed it up with none", "puncture in the cheek, open".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.names import FIRST_NAMES
from logbook.languages.plainer import Plainer

_NAMES = "|".join(sorted(FIRST_NAMES))
_HELPER = rf"(?:{_NAMES}|he|she|they|(?:the|my) (?:new )?(?:kid|guy|helper|partner|apprentice|buddy|other guy|lead|boy))"
_OFF = r"(?:(?:got|was|were|had been) (?:pulled(?: off| away)?(?: it)?|called (?:away|off|down|over|out)|sent (?:off|home|down|away|out|over)|taken off(?: it)?|needed (?:elsewhere|downstairs|upstairs)|moved (?:off|over)|dragged (?:off|away))|(?:left|went home|took off|quit|walked off|ran off|disappeared|clocked out|knocked off|had to (?:go|leave|run|quit))(?: (?:for lunch|early|on me|sick))?)"
_THING = r"(?P<t>(?:turning )?vanes|tie rods|staples|tape)"
_HARM = r"(?:puncture|tear|rip|hole|gash|slit|cut|split)"
_NO = r"(?:no|nope|wait|sorry|hold on|hang on|scratch that|i mean|actually)"

ENGLISH_TOLD_OF_IT = (
    # --- who was called away before his act is done
    *(
        Plainer((f" {act}", f" {doing}", f" {done}"), rf"(?<![\w'])(?P<x>(?:{_HELPER}|i|we) {_OFF},? before (?:he|she|they|i|we) (?:could |ever |even |had |got to |got around to )*(?:{done}|{act}|{doing})(?: (?:it|that|this one))?)(?=[.,;]|$| and| but)", (("x", f"i got called away, i didn't {act} it"),), beside=(" before ",), unless=r"before [^?]*(?:so i|and i|but i|so we|and we|so the other|came back|went back|but (?:he|she|they) (?:came|went|did))(?![\w'])")
        for act, doing, done in (("tape", "taping", "taped"), ("staple", "stapling", "stapled"), ("rub", "rubbing", "rubbed(?: down)?"), ("trim", "trimming", "trimmed"), ("wipe", "wiping", "wiped"), ("patch", "patching", "patched"))
    ),
    Plainer((" before ",), rf"(?<![\w'])(?P<x>(?:{_HELPER}|i|we) {_OFF},? before (?:he|she|they|i|we) (?:got|put|had) the (?P<t>tape|staples|vanes|mastic)(?: (?:on|in)))(?: it)?(?=[.,;]|$| and| but)", (("x", r"i got called away, i didn't put the \g<t> on"),), unless=r"before [^?]*(?:so i|and i|but i|so we|and we|came back|went back)(?![\w'])"),
    # --- a strip of it: of tape
    Plainer((" strip",), r"(?:haven't|have not|didn't|did not|never|hadn't)(?: (?:even|yet|actually|really))* (?:put|laid|lay|ran|run|stuck) (?:a|one|any|a single|one single|so much as a) strips?(?P<x>)(?= (?:on|over|down|around)(?: (?:it|that|this|there|the (?:joint|seams?|corners?)))?(?: yet)?(?:[.,;]|$| and| but))", (("x", " of tape"),), unless=r"tape|mastic|vane|rail"),
    Plainer((" strip", " piece ", " lick", " scrap", " inch "), r"(?:haven't|have not|didn't|did not|never|hadn't)(?: (?:even|yet|actually|really))* (?:put|laid|lay|ran|run|stuck|got) (?:a|one|any|a single|one single|so much as a) (?:strip|piece|lick|scrap|inch)(?P<x>)(?= (?:on|over|down|around)(?: (?:it|that|this|there|the (?:joint|seams?|corners?)))?(?: yet)?(?:[.,;]|$| and| but))", (("x", " of tape"),), beside=("tape",), unless=r"mastic|vane|rail"),
    # --- one act only, for want of the other
    Plainer(("stapled only", "only stapled", "taped only", "only taped"), r"(?<![\w'])(?:stapled(?P<x> only)|only (?:stapled|got it stapled)(?P<y>))(?=[,;.] (?:(?:and|because|since|cause) )?(?:i|we|he|they|there was|there's|had) (?:had |have |has |got |was |were |ran )?(?:no |out of |outta )(?:more )?tape)", (("x", ", not taped"), ("y", ", not taped"))),
    Plainer(("no tape left", "no more tape", "no staples left", "no more staples", "no mastic left"), r"(?<=[.,;] )(?P<x>(?:(?:and|because|since|cause) )?(?:i|we) (?:had|have|got) no (?:more )?(?P<t>tape|staples|mastic)(?: left)?)(?=[.,;]|$)", (("x", r"we ran out of \g<t>"),)),
    # --- for want of staples they are further apart: they are there
    Plainer(("short of ", "short on ", "low on ", "running out of ", "running low", "out of staples", "saving staples"), rf"(?:every|at) [\w/. -]{{1,20}}? (?P<x>,? ?(?:since|because|cause|'cause|as|seeing as|seeing that|on account) (?:of )?(?:{_HELPER}|i|we|it) (?:was|were|is|are|'s|'re|got|ran) (?:almost |nearly |getting |running |a little |kinda |all )*(?:short (?:of|on)|low on|out of|saving) staples)(?=[.,;]|$| and| then)", (("x", ""),)),
    # --- a harm and how it stands
    Plainer((", open", ", still open", ", left open", ", untouched", ", unpatched", ", as it is", ", as is"), rf"(?<![\w'])(?:{_HARM})s? (?:in|on|through|across) (?:the )?(?:\w+ )?\w+(?P<x>, (?:(?:it's |that's )?(?:still |left )?open|untouched|unpatched|(?:left )?as (?:it )?is))(?=[.;]|$)", (("x", ", not patched"),)),
    # --- the thing that was to go in, and did not
    Plainer((" with none", " without them", " without any", " without it"), rf"(?P<x>(?:{_HELPER}|i|we) (?:was|were) supposed to (?:slide|put|set|drop|get|install|stick|slip|fit) (?:in |on )?(?:the |some )?{_THING}(?: (?:in|on|in it|on it|in there))?,? (?:and|but|and then|and instead|only) (?:{_HELPER}|i|we)?(?: just| went and| then)* ?(?:closed|sealed|put|buttoned|shut|taped|stapled|folded|made|built)(?: (?:it|that|her|the thing))?(?: (?:up|together|shut))? (?:with none|without (?:them|any|it)))(?![\w'])", (("x", r"there are no \g<t> in it"),)),
    Plainer(("vane rail", "vane runner", "vane track", "vane stock"), r"(?P<x>vane )(?:rails?|runners?|tracks?|stock)(?= (?:was|were|is|are|'s) (?:all )?(?:used up|gone|out|finished|empty|missing|on back ?order|sold out)(?![\w']))", (("x", ""),)),
    Plainer((" them out", " them back out", " them all out"), rf"(?:^|(?<=[.!?] ))(?:the )?(?:turning )?vanes(?:[\w ]{{1,24}}?)(?:,|, so|,? so|,? and|[.]) (?:i|we|so i|so we) (?:took|pulled|yanked|cut|ripped|slid) (?P<x>them)(?= (?:back |all |right )?out(?: of (?:it|(?:{KIND} )?(?:number )?\d+))?(?: again)?(?:[.,;]| and (?:left|closed|taped)|$))", (("x", "the vanes"),), unless=r"(?:put|slid|set|dropped) (?:them|the vanes|new ones|another set) (?:back )?in|new vanes|vanes back in"),
    Plainer((" rods",), r"(?P<x>(?:(?:and )?(?:i'm |i was )?(?:wondering|thinking|asking|worried) about (?:the )?(?:tie )?rods,?(?: well,?| and| but)* )there(?:'s| are| is|'re) none)(?= in (?:it|there|this)|[.,;]|$| on)", (("x", "there are no tie rods"),)),
    # --- taken back in one breath
    Plainer((" no ",), rf"(?<![\w'])(?P<x>(?P<t>(?:tie )?rods|vanes|turning vanes)(?: are| is)?(?: (?:in|in it|in there|in this|on it))? {_NO}(?: {_NO})* )(?=no (?P=t)(?![\w']))", (("x", ""),)),
    Plainer((" that was the other ", " that's the other ", " that was on the other ", " that is the other "), rf"(?P<x>(?:i|we) (?:put|got|had|have|did|taped|stapled|used) (?:[\w' ]{{2,30}}? )?{_NO}(?:,? {_NO})*,? (?:that|those)(?:'s| was| is| were| are) (?:on |for |in )?the other (?:one|{KIND}|ninety|ell|trans)[.,;]? )(?=this one)", (("x", ""),)),
    Plainer((" to the inside", " to the outside"), rf"(?P<x>to the (?:in|out)side,? {_NO}(?:,? {_NO})*,? )(?=to the (?:in|out)side(?![\w']))", (("x", ""),)),
    # --- the end it was laid out from, asked and answered
    Plainer(("? no", "? nope", "? nah"), r"(?:was|is|did (?:i|we)) (?P<x>(?:it|this|this one|that)?(?: (?:laid out|lay it out|made|measured|measure it|built|cut))? from the (?:fe)?male(?: end| side)?\? (?:no|nope|nah),? )(?=(?:it was |it's |i did it |i went )?from the (?:fe)?male)", (("x", "laid out "),)),
    # --- what a measure is of
    Plainer(("gauge on ", "gage on "), r"(?<![\w'])(?P<x>gau?ge)(?= on (?:the|my|his|that|this) (?:staple )?(?:gun|stapler|staple gun|knife|cutter|saw|groover|shiplap tool|tool)(?![\w']))", (("x", "guide"),)),
    # --- his own question, answered with a count of sides
    Plainer(("was it ", "is it ", "were they "), r"(?P<x>(?:was|is) (?:it|this|this one|that) (?P<v>stapled|taped)\?)(?= (?:only |just |on )?(?:one|two|three|1|2|3|all four|four)(?: of (?:the )?four)? sides?(?![\w']))", (("x", r"\g<v>"),)),
)
