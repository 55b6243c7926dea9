"""English of a measure or a lack that is told of a part in few words, and the plain words for it: "tab spacing sixteen", "the rest fifteen", "one underneath I didn't get to"."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT, SAID_NUMBER
from logbook.languages.plainer import Plainer

_ENDS = r"(?=[.,;!]|$| and\b| but\b)"
_ACTED = r"(?:taped|stapled|rubbed|patched|trimmed|wiped|put|screwed|closed)"
_ACCESSORY = r"(?:damper|fire damper|coil|heater|unit|fan|vav|accessory)"
_DIM = rf"(?:\d{{1,2}}|{SAID_COUNT})"
_SIDE = r"(?:top|bottom|left|right|back|front|heel|throat)"

ENGLISH_PARTS_PLAINLY = (
    # --- "16x10. Radius throat, 6 inches, on the 16": a side by how long it is, where no piece has that number
    Plainer(
        (" on the ", " along the ", " across the "),
        rf"^(?=.*?(?<![\w/'-])(?P<a>{_DIM})(?: ?x ?| by )(?P<b>{_DIM})(?![\w/-])[^?!]{{0,160}}? (?:on|along|across) the (?P<n>(?P=a)|(?P=b))(?P<x>)(?=[.,;!]|$| and (?:taped|stapled|rubbed)))(?!.*(?:{KIND}|number|#|run|and|(?:^|[.;] )(?:on )?) ?(?:number )?(?P=n)(?![\w/-])(?! ?(?:x|by|inch)))",
        (("x", " side"),),
        beside=(" by ", "x"),
    ),
    # --- how far apart, named by the thing ahead of it
    Plainer(("tab spacing", "tabs spacing"), rf"(?P<x>(?:cross[ -])?tabs? spacing(?:'s| is| at| of|:)*) (?={SAID_NUMBER})", (("x", "cross tabs every"),)),
    Plainer(("screwed",), r"screwed (?:the |that |a )?(?:metal |steel )?(?:collar|sleeve|duct)[^.;?!]{0,20}?(?P<x>,? with (?:\w+ )?washers,)(?= every )", (("x", " with washers"),)),
    Plainer((" sides, staple", " sides, stapled"), rf"(?<= sides, )(?:staples|stapled) (?P<x>at)(?= {SAID_NUMBER}(?: inch(?:es)?)?(?:[.,;!]|$))", (("x", "every"),)),
    Plainer(("mm",), r"(?:stapled|staples)(?: at| on| every)? (?P<x>(?P<n>[3-9]\d|1[0-5]\d))(?=[.,;!]|$)", (("x", r"\g<n> mm"),), unless=r"\d ?(?:inch|in\b)"),
    Plainer(("the rest", "the others"), rf"tabs?\b[^?!]{{0,80}}? apart,? (?:and |but )?(?:the rest|the others)(?P<x>(?: are| were| at| is)*) (?={SAID_NUMBER}(?: inches)?[.,;!]|$)", (("x", " every"),)),
    Plainer(("the rest", "the others", "the other"), r"(?:taped|tape)\b[^.?!]{0,40}? degrees,? (?:and |but )?(?:the rest|the others|the other \w+) (?:at|was|were|is) (?P<x>(?P<n>\d+|[a-z]+ty(?:[ -]\w+)?))(?=[.,;!]|$)", (("x", r"\g<n> degrees"),)),
    Plainer((" long sides", " short sides", " long ones", " short ones"), rf"{SAID_NUMBER}(?: inches)? on the(?P<x>(?: two)?) (?:long|short) (?:sides|ones)(?:,| and|, and) {SAID_NUMBER}(?: inches)? on the(?P<y>(?: two)? (?P<s>long|short) ones)(?=[.,;!]|$)", (("x", ""), ("y", r" \g<s> sides"))),
    # --- what it weighs, not what was asked for
    Plainer(("should have been", "should've been", "was supposed to be", "supposed to be"), rf"{_ACCESSORY}[^.?!]{{0,40}}? (?P<x>(?:should have been|should've been|was supposed to be) {SAID_NUMBER} (?:pounds|lbs?),? (?:but |and )?(?:they|he|the shop|the supplier|we|i) (?:sent|got|shipped|delivered|brought|gave me|gave us)(?: (?:me|us))? (?:one of|one that's|one at|a)) {SAID_NUMBER}(?P<y>(?: (?:pounds|lbs?))?)(?=[.,;!]|$| instead)", (("x", "weighs"), ("y", " pounds"))),
    # --- one of several that was not done
    Plainer(("get to", "got to", "reach"), r"(?:patched|fixed|repaired|mended)\b[^?!]{0,60}?(?P<x>(?:there's|there is)(?: still)? (?:one|another|another one|one more)(?: (?:on|by|at|in|near|under) the)?(?: [\w-]+)?,? (?:that |which )?(?:i|we) (?:didn't|couldn't|never|haven't) (?:get|got|gotten|reach|reached)(?: to)?)(?=[.,;!]|$)", (("x", "one hole is not patched"),)),
    Plainer(("manage", "reach", "get to"), r"(?:taped|rubbed)\b[^?!]{0,60}?(?P<x>what (?:i|we) (?:didn't|couldn't|never) (?:manage|reach|managed|get to|get)(?: to (?:do|get|reach))?(?:'s| is| was)) (?:the )?(?:underside|bottom|top|back|far side|left|right|heel|throat)(?P<y>)(?=[.,;!]|$)", (("x", ""), ("y", " isn't taped"))),
    Plainer(("vanes",), rf"vanes\b[^?!]{{0,80}}?(?P<x>in the (?:second|other|next|third)(?: one)?, (?:number )?(?P<n>\d+), (?:i|we) (?:left|forgot|skipped) (?:them|those)(?: out)?){_ENDS}", (("x", r"elbow \g<n> has no vanes"),)),
    Plainer(("trimmed",), r"trimmed(?P<x> on (?:three|two) sides?,? (?:(?:and|but) )?(?:on )?the (?P<s>fourth|last|other)(?: one| side)?,?(?: there's| there is)?(?: still)?(?: about| maybe)? (?:an inch|half an inch|two inches|a strip|some)(?: of (?:it|flap))?(?: is| was)?(?: still)? (?:standing|left|sticking (?:up|out)))", (("x", r", but not on the \g<s> side"),)),
    # --- tabs that stand, a gun that shot nothing, tape that is too narrow
    Plainer(("standing", "sticking"), r"tabs\b[^?!]{0,60}?(?:one|two|three|four|a couple|some|a few)(?: of (?:them|'em))? (?P<x>(?:wouldn't|didn't|won't|couldn't) (?:go|bend|fold|lay)(?: over| down)?,? (?:and|so)(?: they're| they are| it's)) (?=(?:still )?(?:standing|sticking) (?:up|out))", (("x", "tabs are still"),)),
    Plainer(("wrong way", "wrong direction"), r"tabs\b(?: on \w+)?(?P<x>(?: are| were|'re| got| went| came out)*(?: all)? (?:bent|folded|turned|hammered) the wrong (?:way|direction))(?=[.,;!]|$)", (("x", " are not bent over"),)),
    Plainer(("blanks", "shooting air", "firing air", "shooting empty"), r"(?P<x>(?:the |my |that )?(?:gun|stapler|staple gun)(?:'s| was| is| kept| must have been| had been)* (?:shooting|firing) (?:blanks|air|empty|nothing))(?:(?P<y> (?:for|on|over|along|in)) (?=the |that |one |its )|(?=[.,;!]|$))", (("x", "no staples"), ("y", " in")), unless=r"went back|reloaded|re-?shot|refilled|shot (?:them|it) again|noticed|filled in|redid|caught it"),
    Plainer(("wide enough",), r"tape(?P<x>(?:'s not| isn't| is not| wasn't| was not)(?: quite| really| even)? wide enough)(?=[.,;!]|$| on\b| for\b)", (("x", " is too narrow"),)),
    # --- whose piece it is, and who else was told
    Plainer((" mine but ", " mine, but ", " my piece but "), rf"(?:{KIND}|number|piece) \d+(?P<x> (?:isn't|is not|wasn't|'s not) (?:mine|my piece|my work),? but)(?= (?:i|we)(?: did| still| went and)? {_ACTED})", (("x", ","),)),
    Plainer(("tell you too", "telling you too", "tell you also"), rf"(?P<x>(?:i|we) told \w+ (?:about )?)(?:the )?{KIND} (?:number )?\d+(?P<y>,? (?:but|and) (?:i'll|i will|i'm) (?:tell|telling) you (?:too|also|as well)[:,.])", (("x", ""), ("y", ","))),
    # --- the branch that is not taped to its trunk is a joint of the piece, and not one to the next
    Plainer((" taped to ", " stapled to ", " sealed to "), r"(?:branch|tap|leg|side|cheek|cap|collar|throat|heel)(?: (?:just|still))?(?: isn't| is not| ain't| wasn't| was not|'s not| never got)(?: even| all| fully)? (?:taped|stapled|sealed)(?P<x> to (?:the|its) (?:trunk|main|body|trunk line|heel|throat|run))(?=[.,;!]|$| (?:yet|at all|and|but)(?![\w']))", (("x", ""),)),
    # --- the sides that have it, and the one that has none: "stapled top, left and right and the bottom has no staples"
    *(
        Plainer((f" no {thing}", " none", " nothing", " bare"), rf"(?<![\w'])(?<!not ){act}(?: the)? {_SIDE}(?:,? (?:the )?{_SIDE})*,? and (?:the )?{_SIDE}(?P<x>(?:,| and|, and| but|, but)? (?:the )?{_SIDE}(?: side)?(?:'s| has| is| got| gets)? (?:no {thing}|none|nothing|bare)(?: (?:on it|at all|yet))?)(?=[.,;!]|$)", (("x", " only"),))
        for act, thing in (("stapled", "staples"), ("taped", "tape"))
    ),
)
