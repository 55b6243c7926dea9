"""English of one who ticks a piece off thing by thing, a comma behind each: "Vanes, none on the truck, left out.", "Tape, half way round.", "Stapled four. Tape, three sides only."

Each is read as the plain words for it. Rows like those of `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT
from logbook.languages.plainer import Plainer

_IS = r"(?:,| -|:|\.) "
_BEGINS = r"(?:^|(?<=[.,;!?] )|(?<= and )|(?<= but ))"
_END = r"(?=[.;,!]|$)"
_SINCE = r"(?:got|found|borrowed|grabbed|bought|fetched|picked up|made|cut) (?:some )?more|another (?:box|set|batch|roll)|went back|come back|came back|finish(?:ed|ing)|(?:did|got|taped|stapled|rubbed) the (?:rest|other)|the rest (?:i|we|after|later)|all (?:done|there) now"
_PLACE = r"(?:truck|van|cart|shop|box|gun|job|site|gang ?box|trailer|tool ?box|bag|yard|store|store ?room|floor|shelf|bench|stapler|roll|lift|bin|bucket|kit|warehouse|order|delivery|load|crate)"
_THERE = rf"(?: (?:on|in|at|with|to be found on|to be found in) (?:the|my|this|that|our|his) {_PLACE}| (?:here|around|available|to be had|to be found|with (?:me|us|it)|on hand|on site|in stock|to put in|in sight|anywhere|came|sent|supplied|delivered|that fit|to fit)(?: (?:today|now|yet|here))?)"
_SKIPPED = r"(?:,? (?:so |and )?(?:i |we |got |they got |they're |they are )?(?:(?:left|leaving)(?: (?:it|them|'em)(?: (?:out|off))?| (?:out|off))|(?:skipped|omitted|forgot)(?: (?:it|them|'em))?))"
_THINGS = (("vanes", r"(?:turning )?vanes", "no vanes"), ("stapl", r"staples", "no staples"), ("tape", r"tape", "no tape"), ("tabs", r"cross tabs", "no cross tabs"))

_PART = (
    r"(?:about |maybe |only |just |got |gone |went |like )*(?:half ?way|part ?way|half|partly|most(?:ly)?|some|a bit|a little|a third|two thirds|three quarters|not all)"
    r"(?: (?:done|on|in|round|around|along|down|up|across|over|through|there|of (?:it|them|the way|it all|the seams?)|the way|it|all))*"
)
_ACTS = (("tap", r"tap(?:e|ing)", "taped"), ("stapl", r"stapl(?:es|ing)", "stapled"), ("rub", r"rub(?:bing)?(?:[ -]?(?:down|it))?", "rubbed"))
_SIDES = r"(?:one|two|three|four|[1-4])"
_NO_INCH = r"(?![ -]?(?:inch|in\b|\"|and a|by|x|feet|foot|mm|\d|/))"
_N = rf"(?:\d+|{SAID_COUNT})"

_SOME_DONE = tuple([f"{many} {done}" for many in ("one", "two", "three", "four") for done in ("taped", "stapled")])
_ONES = tuple("cap straight elbow tee transition reducer offset plenum wye branch section piece".split())
_SEVERAL = rf"(?:{'|'.join(_ONES)})s(?!\w)"

_WAITS = r"(?:none yet|not yet|(?:still )?(?:to do|to come|pending|waiting)|tomorrow|later(?: today| on)?|(?:in the|tomorrow) morning|monday|after lunch)"
_TOLD_OFF = r"(?:(?:the |my )?(?:boss|lead|super|foreman|inspector|gc|office|\w+) (?:said|says|told (?:me|us))(?: to)? (?:skip|leave|forget|no|don't|not to|never mind)(?: (?:it|them|that|off|out|bother|for now|with it|with them))*)"
_NOT_RIGHT = r"(?:wrong (?:size|ones|kind|width|set)|none came|never came|(?:the )?supplier (?:was |is |came )?short|(?:ran|came|came up|are|were) short|(?:the |my )?(?:boss|lead|super|foreman|other (?:guy|crew|truck)|shop|somebody|someone) (?:has|have|got|took|still has) (?:them|'em)|what vanes|no need|waiting(?: (?:on|for) (?:them|the supplier|parts))?)"

# those of which it must be known before it is told whether mastic is what closes the joint, or before their thing is looked for beside its place
ENGLISH_TERSE_FIRST = (
    Plainer(("half", "part", "most", "some", "a bit", "a little", "third", "quarters", "not all"), rf"{_BEGINS}(?P<x>(?:the )?mastic(?:{_IS}| ){_PART}){_END}", (("x", "mastic on half of it"),), unless=_SINCE, beside=("mastic",)),
    Plainer(("none", "not yet", "later", "tomorrow", "to do", "to come", "pending", "ran out", "waiting"), rf"{_BEGINS}(?P<x>(?:the )?mastic{_IS}(?:none yet|not yet|none(?:{_THERE}{_SKIPPED}?|{_SKIPPED})|ran out|(?:still )?(?:to do|to come|pending|waiting)|tomorrow|later(?: today)?|(?:in the|tomorrow) morning)){_END}", (("x", "no mastic yet"),), unless=_SINCE, beside=("mastic",)),
    Plainer(("forgot", "skipped", "pail ", "tube ", "bucket ", "dried", "missed"), rf"{_BEGINS}(?P<x>(?:the )?mastic{_IS}(?:forgot(?: (?:it|about it))?|skipped(?: it)?|missed it|(?:the )?(?:pail|tube|bucket|can)(?:'s| was| is| had| went)? (?:dry|empty|gone|dried(?: (?:out|up))?)|dried (?:out|up)(?: on me)?|{_TOLD_OFF})){_END}", (("x", "no mastic"),), unless=_SINCE, beside=("mastic",)),
    Plainer(("missed",), rf"{_BEGINS}(?P<x>(?:the )?mastic{_IS}(?:(?:the )?(?:top|bottom|back|left|right|far side|one side|one spot) (?:side )?missed|missed (?:the )?(?:top|bottom|back|left|right|far side|one side|a spot|one spot)(?: side)?)){_END}", (("x", "mastic on half of it"),), unless=_SINCE, beside=("mastic",)),
    Plainer((" half", " reach", " get to"), rf"{_BEGINS}(?P<x>(?:the )?mastic{_IS}(?:(?:only |just )?on (?:the )?(?:top|bottom|front|back|left|right|near|easy) half|(?:i |we )?(?:couldn't|could not|can't) (?:reach|get to|get at) (?:the )?[\w-]+(?: side)?)){_END}", (("x", "mastic on half of it"),), unless=_SINCE, beside=("mastic",)),
    # --- the patch that did not go on, or not all of it
    Plainer(("ran out of", "out of "), rf"{_BEGINS}(?P<x>(?:the )?patch{_IS}(?:(?:i |we )?(?:ran )?out of|no more) (?:mesh|fabric|mastic|foil|tape|time)){_END}", (("x", "not patched"),), unless=_SINCE),
    Plainer(("half", "part", "most", "some", "not all"), rf"{_BEGINS}(?P<x>(?:the )?patch{_IS}{_PART}){_END}", (("x", "patched half of it"),), unless=_SINCE, beside=("patch",)),
    Plainer((" clinched in", " turned in", " bent in"), rf"{_BEGINS}staples(?P<x>{_IS}none (?:clinched|turned|bent) in(?:ward|side)?){_END}", (("x", ""),)),
    # --- what the sign stands between: "Vanes, back at the shop", "Vanes, didn't fit"
    Plainer(("shop", "truck", " van", "yard", "office", "fit", "stay", "stick", "go in"), rf"{_BEGINS}(?:the )?(?:turning )?(?:vanes|cross tabs)(?P<x>{_IS})(?=(?:back (?:at|in) the|at the (?:shop|yard|supply)|still (?:in|on|at) the|(?:in|on) the (?:truck|van|box|shop)(?=[.,;!]|$)|(?:didn't|don't|won't|wouldn't) (?:fit|go in|stay in|stick))(?![\w']))", (("x", " "),)),
    Plainer((" short", " them", " 'em", "wrong ", " came", "supplier", "what vanes", "no need", "waiting"), rf"{_BEGINS}(?P<x>(?:the )?(?:turning )?vanes{_IS}{_NOT_RIGHT}){_END}", (("x", "no vanes"),), unless=_SINCE),
    *(
        Plainer((" said ", " says ", " told "), rf"{_BEGINS}(?P<x>(?:the )?{said}{_IS}{_TOLD_OFF}){_END}", (("x", means),), unless=_SINCE, beside=(cue,))
        for cue, said, means in (*_THINGS, ("rub", r"rub(?:bing)?(?:[ -]?down)?", "not rubbed"), ("patch", r"patch", "not patched"), ("tabs", r"tabs", "tabs are not bent"))
    ),
    # --- what waits: "Tabs, later", "Patch, tomorrow"
    *(
        Plainer(("yet", "to do", "to come", "pending", "waiting", "tomorrow", "later", "morning", "monday", "after lunch"), rf"{_BEGINS}(?P<x>(?:the )?{said}{_IS}{_WAITS}){_END}", (("x", means),), unless=_SINCE, beside=(cue,))
        for cue, said, means in (("tabs", r"tabs", "tabs are not bent yet"), ("patch", r"patch(?:es)?", "not patched yet"), ("tape", r"tape", "not taped yet"), ("stapl", r"staples", "not stapled yet"), ("rub", r"rub(?:bing)?(?:[ -]?down)?", "not rubbed yet"))
    ),
    # --- how many sides of each: "Taped: 31 four, 32 three"
    Plainer(("taped: ", "taped, ", "stapled: ", "stapled, "), rf"(?<![\w'])(?P<x>(?P<d>taped|stapled)[:,] )\d{{1,3}}(?P<y> )(?:all )?{_SIDES}(?P<z>(?: sides)?),? (?:and )?\d{{1,3}}(?P<v> )(?:all )?{_SIDES}(?P<w>(?: sides)?){_END}", (("x", ""), ("y", r" \g<d> "), ("z", " sides"), ("v", r" \g<d> "), ("w", " sides"))),
    # --- vanes in some of several: "vanes in all but 22", "vanes in 40, none in 41"
    Plainer(("vanes in ",), rf"(?<![\w'])vanes in (?:all|both|each)(?: of them)?(?P<x> (?:but|except(?: for)?|bar|save) )(?={_N}{_END})", (("x", ", no vanes in "),)),
    Plainer((" none in ",), rf"(?<![\w'])vanes in {_N}(?:(?:,| and) {_N})*,? (?:and |but )?(?P<x>none) in (?={_N}(?:(?:,| and) {_N})*{_END})", (("x", "no vanes"),)),
)

ENGLISH_TERSE_PLAINLY = (
    # --- what is not there: "Vanes, none on the truck, left out"
    *(Plainer((" none ", " none, "), rf"{_BEGINS}(?P<x>(?:the )?{said}{_IS}none(?:{_THERE}{_SKIPPED}?|{_SKIPPED})){_END}", (("x", means),), unless=_SINCE, beside=(cue,)) for cue, said, means in _THINGS),
    *(Plainer((" none left",), rf"{_BEGINS}(?P<x>(?:the )?{said}{_IS}none left{_THERE}?){_END}", (("x", means),), unless=rf"{_SINCE}|(?<!\w)(?:vanes (?:are |went |is )?(?:all )?in)(?!\w)", beside=(cue,)) for cue, said, means in _THINGS if cue != "tape"),
    Plainer((" none left",), rf"{_BEGINS}(?P<x>(?:the )?tape{_IS}none left{_THERE}?){_END}", (("x", "no tape"),), unless=rf"{_SINCE}|(?<!\w)taped(?!\w)"),
    # --- what did not last: "Tape, ran out"
    Plainer((" ran out", " run out", " ran dry"), rf"{_BEGINS}(?P<x>(?P<t>tape|staples){_IS}(?:(?:we|i|just|it|they|roll) )*(?:ran|run) (?:out|dry)){_END}", (("x", r"ran out of \g<t>"),), unless=_SINCE),
    # --- how far it went: "Tape, half way round, quit for lunch"
    *(Plainer(("half", "part", "most", "some", "a bit", "a little", "third", "quarters", "not all"), rf"{_BEGINS}(?P<x>(?:the )?{said}{_IS}{_PART}){_END}", (("x", f"half {means}"),), unless=_SINCE, beside=(cue,)) for cue, said, means in _ACTS),
    *(Plainer(("started",), rf"{_BEGINS}(?P<x>(?:the )?{said}{_IS}(?:just |only )?started(?: (?:it|on it|that))?){_END}", (("x", f"half {means}"),), unless=_SINCE, beside=(cue,)) for cue, said, means in _ACTS),
    *(Plainer((" only",), rf"{_BEGINS}(?P<x>(?:the )?{said}{_IS})(?=(?:the )?(?:top|bottom|left|right)(?: side)?(?:(?:,| and|, and) (?:the )?(?:top|bottom|left|right)(?: sides?)?)* only{_END})", (("x", f"{means} "),), beside=(cue,)) for cue, said, means in _ACTS),
    Plainer(("side",), rf"{_BEGINS}(?P<x>(?:the )?rub(?:bing)?(?:[ -]?down)?{_IS})(?=(?:only |just )?(?:one|two|three|[123]) sides?(?: only| done| so far)?{_END})", (("x", "rubbed "),)),
    # --- what is on its way: "Vanes, on order"
    Plainer(("on order", "coming", "to come", "back order", "backorder"), rf"{_BEGINS}(?:turning )?vanes(?P<x>{_IS})(?=(?:still )?(?:on (?:back ?)?order|coming|to come|back ?ordered)(?![\w']))", (("x", " "),)),
    # --- on how many sides, told of two acts one behind the other: "stapled four, taped three"
    Plainer(
        ("taped ", "tape, ", "tape: "),
        rf"(?<![\w'])stapled,? {_SIDES}(?P<x>)(?=[.,;]? (?:and )?(?:taped|tape),? (?:only |just |all |on )*{_SIDES}(?: sides?|(?<=all four)|(?<=all 4))(?![\w'])){_NO_INCH}",
        (("x", " sides"),),
    ),
    Plainer(("four", "4"), rf"(?<![\w'])stapled,? {_SIDES}(?P<x>)[.,;]? (?:and )?taped,? (?:four|4)(?P<y>){_END}", (("x", " sides"), ("y", " sides"))),
    Plainer(("taped three", "taped two", "taped 3", "taped 2"), rf"(?<![\w'])stapled,? four(?P<x>)[.,;]? (?:and )?taped,? (?:two|three|[23])(?P<y>){_END}", (("x", " sides"), ("y", " sides"))),
    Plainer(("taped three", "taped two", "taped 3", "taped 2"), rf"(?<![\w'])stapled,? (?:every |at )?(?:two|2)(?: inch(?:es)?)?[.,;] (?:and )?taped,?(?P<x>) (?:three|two|[23])(?P<y>){_END}", (("x", " with"), ("y", " inch tape")), beside=(" by ", "x"), unless=r"pieces|fittings|numbers|both|(?:straight|elbow|tee|cap)s|(?<!\w)(?:one|1),? (?:and )?(?:two|2)(?!\w)"),
    Plainer(_SOME_DONE, rf"{_BEGINS}{_SIDES}(?P<x>) (?:taped|stapled),? and (?:all )?{_SIDES}(?P<y>) (?:taped|stapled)(?![\w'])", (("x", " sides"), ("y", " sides")), beside=_ONES, unless=_SEVERAL),
    Plainer(_SOME_DONE, rf"{_BEGINS}{_SIDES}(?P<x>) (?:taped|stapled),? and (?:all )?{_SIDES}(?P<y>) (?:taped|stapled)(?![\w'])", (("x", " of them"), ("y", " of them")), beside=tuple([f"{one}s" for one in _ONES])),
    # --- over what length: "Over eight, run of 36", "top down four, run of 16"
    Plainer(("run of", " run "), rf"(?<![\w'])(?:over|off) {_N}(?: inch(?:es)?)?(?P<x>(?:,| in)? (?:a |with a )?run(?: of)? )(?=(?:\d\d|(?:twelve|\w+teen|\w+ty(?:[- ]\w+)?))(?: inch(?:es)?)?{_END})", (("x", ", length of "),), beside=("offset",)),
    Plainer((" run",), rf"(?<![\w'])(?:over|offset),? {_N}(?: inch(?:es)?)?(?:,| in)? {_N}(?P<x>(?: inch(?:es)?)?(?: of)? run){_END}", (("x", " long"),), beside=("offset",)),
    Plainer((" run",), rf"(?<![\w']){_N}[ -]inch offset(?:,| in)? (?:a )?{_N}(?P<x>(?:[ -]inch(?:es)?)?(?: of)? run){_END}", (("x", " long"),)),
    Plainer((" run of ",), rf"(?<![\w'])(?:top|bottom|left|right|sides?) (?:side )?(?:comes |goes |drops |steps )?(?:down|up|in|out) {_N}(?: inch(?:es)?)?(?P<x>(?:,| in| over)? (?:a )?run of )(?={_N}(?: inch(?:es)?)?{_END})", (("x", " back "),)),
    # --- the piece that he mended, its kind behind: "Mend on 45. Straight, 20 by 14."
    Plainer(("mend", "repair", "fix", "touch", "patch", "rework", "work on"), rf"^(?:(?:okay|ok|so|and|a|the|quick|little|small)[, ]+)*(?P<x>(?:mend(?:ing)?|repairs?|fix|touch[- ]?up|patch(?: job)?|rework|work) (?:on|to|of|for) (?:piece |fitting |number )?)(?P<n>{_N})(?P<y>[.,:;] )(?=(?:an? |the |it's an? )?{KIND},)", (("x", "piece "), ("y", ". "))),
    Plainer(("mend on ", "mend to ", "mending on "), r"^(?:(?:okay|ok|so|and|a|the|quick|little|small)[, ]+)*(?P<x>mend(?:ing)? (?:on|to) )(?=(?:piece |fitting |number )?\d)", (("x", "repair on "),)),
)
