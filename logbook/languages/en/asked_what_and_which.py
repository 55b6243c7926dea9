"""English of a man who asks himself what and which, and answers: "what's left? The rub", "which side's not taped? The back", "what's holding it? The duct".

Question and answer are read as the plain words that they make together. Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.answered_by_himself import _SIDE, _SIDES
from logbook.languages.en.filth import FILTHS
from logbook.languages.en.measured import _M
from logbook.languages.plainer import Plainer

_STARTS = r"(?:^|(?<=[.!?;,] ))"
_LEADS = r"(?:(?:and|now|so|then|okay|ok|well) )*"
_ONLY = r"(?:(?:just|only|well|still|yes|yeah|the|its|to|i have to|i still have to|go and)[,.]? )*"
_ENDS = r"(?=[.,;!]|$| (?:and|but|on the|tomorrow|yet|still)(?![\w']))"
_LEFT = r"(?:what(?:'s|s| is| do i have| have i got| did i)(?: still| not)? (?:left(?: to (?:do|go))?|it (?:still )?(?:need|want|lack)|to (?:do|go)|not done|still to do|undone|open|remaining|waiting|have left)(?: on (?:it|this one|that one))?|what does it (?:still )?(?:need|want|lack)|(?:is there )?anything (?:else )?(?:left|still)(?: to (?:do|go|be done))?(?: on it)?|what else(?: is left| does it need)?)\? "
_WORKS = (
    (r"(?:taping|tape it(?: up)?|tape|taping it(?: up)?)", "tape it"),
    (r"(?:stapling|staple it|staples|stapling it)", "staple it"),
    (r"(?:rub(?:bing)?(?:[- ]?down)?|rub it(?: down)?|rubbing it(?: down)?)", "rub it down"),
    (r"(?:trimming|trim it|trim|trimming it)", "trim it"),
    (r"(?:wiping(?: down)?|wipe it(?: down)?|wipe ?-?down)", "wipe it"),
)
_PART = r"(?:(?:top|bottom|back|front|left|right|far|near|long|short|other|last|fourth|inside|outside)(?: (?:side|seam|one|end|edge|cheek))?|heel|throat|two \w+|one (?:by|at|against|behind) the \w+)"

ENGLISH_ASKED_WHAT_AND_WHICH = (
    # --- what is left to do
    *(Plainer(("left", "need?", "want?", "lack?", " to do?", " to go?", "not done?", "undone?", "still?", "what else", "remaining?", "open?"), rf"{_STARTS}{_LEADS}(?P<x>{_LEFT}{_ONLY}{said}){_ENDS}", (("x", f"i still have to {do}"),)) for said, do in _WORKS),
    *(Plainer(("left? ", "need? ", "want? ", " to do? ", " to go? "), rf"{_STARTS}{_LEADS}{_LEFT}{_ONLY}(?:taping|tape|stapling|staples?|rubbing|rub|trimming|trim|wiping|wipe)(?: it)?(?: down| up)?(?P<y> and (?:the |to )?{said}){_ENDS}", (("y", f" and {do}"),)) for said, do in _WORKS),
    Plainer(("forget anything", "miss anything", "leave anything", "skip anything", "forgot anything", "missed anything"), rf"{_STARTS}{_LEADS}(?P<x>(?:did|have) (?:i|we) (?:forget|forgot|forgotten|miss|missed|leave|left|skip|skipped) anything(?: out| off)?\? (?:yes|yeah|yep|just|only|well)?,? ?)(?=(?:the |my )?(?:staples|tape|vanes|rub|tabs|flap|trim)(?![\w'])(?! (?:is|are|was|were|went)))", (("x", "i forgot "),)),
    # --- whether it is joined at both ends, whether an end is open
    Plainer(("joined? ", "tied in? ", "hooked up? ", "connected? "), rf"{_STARTS}{_LEADS}(?:is it )?(?:all )?(?:joined|tied in|hooked up|connected)\? (?:[^?!]{{0,40}}[.,;] (?:but |and )?)?(?P<x>to (?:the )?[\w ]{{1,15}}?,? (?:no|nope|not yet|not to))(?=[.,;!]|$)", (("x", "still have to tie it in"),)),
    Plainer((" open? ",), rf"{_STARTS}{_LEADS}(?P<x>is (?P<e>(?:the|that|one|any) (?:\w+ )?(?:end|joint|seam|side))(?: still)? open\? (?:yes|yeah|yep|still|it is|it still is|sure is))(?=[.,;!]|$)", (("x", r"\g<e> is still open"),)),
    # --- which side is not
    Plainer(("which ", "what side"), rf"{_STARTS}{_LEADS}(?P<x>(?:which|what) (?:side|seam|end|edge|one|joint)(?: of it)?(?:'s| is|'s still| is still|'s the one| did| have)?(?: (?:i|we))? (?:not|n't|isn't|wasn't|didn't get|never got|haven't|didn't)(?: (?:been|get|got|yet))* (?P<a>taped|stapled|rubbed|wiped|trimmed)(?: down)?(?: yet)?\? )(?:just |only )?(?=the {_PART}(?:[.,;!]|$))", (("x", r"it's not \g<a> on "),)),
    *(Plainer((f"not {do}?", f"forget to {do}?"), rf"{_STARTS}{_LEADS}(?P<x>(?:which|what) (?:side|seam|end|edge|one|joint)(?: of it)? did (?:i|we) (?:not|forget to) {do}\? )(?:just |only )?(?=the {_PART}(?:[.,;!]|$))", (("x", f"it's not {done} on "),)) for do, done in (("tape", "taped"), ("staple", "stapled"), ("rub", "rubbed"), ("wipe", "wiped"), ("trim", "trimmed"))),
    # --- only that side
    *(Plainer((f"{done} only the ", f"{done} just the "), rf"(?P<x>(?:i |we )?{done} (?:only|just) {_SIDE})(?=[.,;!]|$)", (("x", f"only one side is {done}"),)) for done in ("taped", "stapled")),
    *(Plainer((f"{done} only the ", f"{done} just the "), rf"(?P<x>(?:i |we )?{done} (?:only|just) ){_SIDES}(?P<y>)(?=[.,;!]|$)", (("x", "only "), ("y", f" is {done}"))) for done in ("taped", "stapled")),
    # --- what is on the facing
    Plainer(("what's on", "what is on", "what was on", "anything on"), rf"{_STARTS}{_LEADS}(?P<x>(?:what(?:'s| is| was)|(?:is there )?anything) on (?:the (?:facing|foil|board|surface|seam|joint)|it)\? (?:yes, |yeah, |just |some |a little |a bit of |a lot of |it's |there's )*){FILTHS}(?P<y>)(?=[.,;!]|$)", (("x", "there's "), ("y", " on the facing"))),
    Plainer(("on it? ", "facing? ", "foil? ", "there? ", "board? ", "dust? ", "oil? ", "grease? ", "dirt? "), rf"{_STARTS}{_LEADS}(?P<x>(?:is there |was there |any )+(?:any )?(?P<f>{FILTHS})(?: (?:on|under) (?:it|the \w+))?\? (?:a (?:bit|little)|some|yes|yeah|yep|there is|there was|plenty|lots|loads|all over|everywhere)(?: of it)?)(?=[.,;!]|$)", (("x", r"there's \g<f> on the facing"),)),
    Plainer(("dusty? ", "dirty? ", "greasy? ", "oily? ", "filthy? "), rf"{_STARTS}{_LEADS}(?P<x>(?:is it |was it |is the facing |was the facing )?(?P<f>dusty|dirty|greasy|oily|filthy)\? (?:yes|yeah|yep|a bit|a little|some|it is|it was|very|all over))(?=[.,;!]|$)", (("x", r"the facing is \g<f>"),)),
    # --- the tape by its mark, and how wide it is
    Plainer(("how wide",), rf"(?:tape|181 ?a-?[ph])(?: tape)?[.,?!] (?P<x>how wide(?: is it|'s it|'s that|'s the roll)?\? (?:it's |just |only )?)(?=(?:{_M}|two|three)(?![\w']))", (("x", "the tape width is "),)),
    Plainer((", no mark", ", no name", ", no print", ", no number", ", no label"), r"(?:with|is|it's|used) (?:foil )?tape(?P<x>, no (?:mark|marks|marking|markings|name|print|printing|number|numbers|label))(?= on (?:it|the back|the roll))", (("x", " with no name"),)),
    # --- what it is closed with, and what holds up what hangs on it
    Plainer(("closed with?", "sealed with?", "closed up with?"), rf"{_STARTS}{_LEADS}(?P<x>what(?:'s| is| was) (?:it|that|this one) (?:closed|sealed)(?: up)? with\? (?:just |only )?)(?=(?:foil )?tape(?:[.,;!]|$))", (("x", "it's closed with "),)),
    Plainer(("own hanger", "own rod", "own strap", "own support", "hanger?", "support?", "supports?", "rods?", "straps?"), rf"{_STARTS}{_LEADS}(?P<x>(?:(?:does it have|has it got|is there|did it get) )?(?:its own|a|any|their own|separate|own) (?:hangers?|supports?|rods?|straps?|threaded rod)(?: (?:on it|for it|of its own))?\? (?:no|nope|none|nah|it doesn't|it does not|there isn't|not one|not a one|never got any))(?=[.,;!]|$)", (("x", "no hanger of its own"),), beside=("damper", "heater", "coil", "actuator", "motor", "pound", "accessor", "silencer", " fan")),
    Plainer(("holding it", "carrying it", "supporting it", "holding that", "carrying that", "it hanging", "it hang ", "it hangs ", "it hung "), rf"{_STARTS}{_LEADS}(?P<x>(?:what(?:'s| is) (?:holding|carrying|supporting) (?:it|that|them)(?: up)?|what(?:'s| is| does) it (?:hanging|hang|hung) (?:on|from|off))\? (?:just |only |nothing but |on )*(?:the )?(?:duct|board|duct ?board|straight|elbow|sleeve)(?: itself)?)(?=[.,;!]|$)", (("x", "it rides on the duct"),), beside=("damper", "heater", "coil", "actuator", "motor", "pound", "accessor", "silencer", " fan")),
    # --- tabs and how far apart, the gap and how much
    Plainer(("tabs? every", "tabs? at ", "tabs? on "), r"(?:cross )?tabs(?P<x>\? )(?=(?:every|at|on) )", (("x", " "),)),
    Plainer(("gap? ", "gap there? ", "gap at"), rf"(?P<w>(?:is there |any |was there )?(?:a |any )?)gap(?: (?:there|at the joint|in it|anywhere))?(?P<x>\? (?:there is|there was|yes|yeah|yep|a little|some|sure is|there sure is)(?: one| some)?[.,] (?:how (?:much|big|wide|far)(?: is it)?\? )?(?:it's |about |maybe )*)(?=(?:{_M}|half|quarter|three|five|a |an )(?![\w']))", (("w", "a "), ("x", " of "))),
    # --- the freed panel
    Plainer(("panel", "seat", "flush"), rf"{_STARTS}{_LEADS}(?P<x>(?:does |did |is )?(?:the |that |freed )*panel (?:seated?|sits?|seating|sitting|flush|go in|goes in|drop in|lie|lay|lays)(?: (?:in|flat|flush|down|right|all the way|home))*\? (?:well,? |no,? )?(?:it )?(?:rides up|rocks|stands proud|sticks up|sits (?:high|proud)|won't (?:go|sit|seat|drop)|doesn't|not quite|not really|almost|nearly|kind of|sort of|no|nope)(?: (?:in|down|a bit|a little|on one side))*)(?=[.,;!]|$)", (("x", "the panel doesn't seat"),)),
)
