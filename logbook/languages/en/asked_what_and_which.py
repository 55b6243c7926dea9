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
    # --- which side is not
    Plainer(("which ", "what side"), rf"{_STARTS}{_LEADS}(?P<x>(?:which|what) (?:side|seam|end|edge|one|joint)(?: of it)?(?:'s| is|'s still| is still|'s the one| did| have)?(?: (?:i|we))? (?:not|n't|isn't|wasn't|didn't get|never got|haven't|didn't)(?: (?:been|get|got|yet))* (?P<a>taped|stapled|rubbed|wiped|trimmed)(?: down)?(?: yet)?\? )(?:just |only )?(?=the {_PART}(?:[.,;!]|$))", (("x", r"it's not \g<a> on "),)),
    *(Plainer((f"not {do}?", f"forget to {do}?"), rf"{_STARTS}{_LEADS}(?P<x>(?:which|what) (?:side|seam|end|edge|one|joint)(?: of it)? did (?:i|we) (?:not|forget to) {do}\? )(?:just |only )?(?=the {_PART}(?:[.,;!]|$))", (("x", f"it's not {done} on "),)) for do, done in (("tape", "taped"), ("staple", "stapled"), ("rub", "rubbed"), ("wipe", "wiped"), ("trim", "trimmed"))),
    # --- only that side
    *(Plainer((f"{done} only the ", f"{done} just the "), rf"(?P<x>(?:i |we )?{done} (?:only|just) {_SIDE})(?=[.,;!]|$)", (("x", f"only one side is {done}"),)) for done in ("taped", "stapled")),
    *(Plainer((f"{done} only the ", f"{done} just the "), rf"(?P<x>(?:i |we )?{done} (?:only|just) ){_SIDES}(?P<y>)(?=[.,;!]|$)", (("x", "only "), ("y", f" is {done}"))) for done in ("taped", "stapled")),
    # --- what is on the facing
    Plainer(("what's on", "what is on", "what was on"), rf"{_STARTS}{_LEADS}(?P<x>what(?:'s| is| was) on (?:the (?:facing|foil|board|surface|seam|joint)|it)\? (?:just |some |a little |a bit of |a lot of |it's |there's )*){FILTHS}(?P<y>)(?=[.,;!]|$)", (("x", "there's "), ("y", " on the facing"))),
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
