"""English of what lies beside the piece: tape on a hose, the gap to the wall, a ladder and its feet, a sheet of board and its size, a thermometer that lies. Patterns over sketches of sentences."""

from __future__ import annotations

from logbook.languages.told import Aside

_NO_DUCT = (
    r"(?:hoses?|windows?|boots?|shoes?|drop cloths?|lunch ?box|ladder|tarps?|handles?|cords?|extension cord|gloves?|thumb|fingers?|sign|pants|jacket|knees?|phone|thermos|cooler|flashlight|hard hat|hat|glasses|drywall|door ?(?:frame|jamb|way)|baseboards?|trim work|carpet"
    r"|bumper|mirror|seat|light switch(?:es)?|outlets?|sprinkler heads?|smoke (?:head|detector)s?|pipes?|conduit|wires?|radio|glass|counter ?tops?|cabinets?|furniture|floor tiles?|floors?|labels?|tags?|paperwork|drawings?|benche?s?|tables?|saw ?horses?|layout)"
)
_BUILDING = r"(?:walls?|ceiling|beams?|joists?|studs?|deck|drywall|slab|column|pipes?|conduit|floor|roof|grid|framing|block|brick|concrete|shaft|lights?|sprinkler (?:pipe|head|line)s?|rafters?|truss(?:es)?|soffit|purlins?|unistrut|cable tray)"
_SO_WIDE = r"(?:(?:there ?'s|there is|there was|i left|i've got|got|has|have|had|with|leaves|left|about|maybe|only|just|a|an|one|two|three|four|five|six|half|quarter|eighth|sixteenth|inch|inches|good|and|of|more than|at least|\d[\d/.]*(?:\")?) )*"
_TO_IT = rf"(?:between (?:[^ .,?;<]+ ){{1,5}}?(?:and|&) (?:the|a|that|my|our) {_BUILDING}|(?:to|from|off|up to|away from) (?:the|a|that) {_BUILDING})(?! (?:side|end|seam|joint|edge|flange))"
_BROKEN = r"(?: ?'s| is| was|'d)?(?: been)?(?: (?:all|dead|just|way|always|long|so|clean|since|plain))* (?:broken|broke|wrong|off|busted|no good|stuck|junk|shot|lying|out of whack|bad|in the sun|by the heater)"
_WRITES = r"(?:said|says|reads?|showed|shows|claims|claimed|had it at|has it at|went|goes|gives|gave)"

_ON_IT = r"(?: (?:on|in|of|at|around|round) (?:#(?: [^ .,?;]+)?|it|this one|that one|[^ .,?;]+))?"
_NOT_ONE = r"(?:there(?: ?'s| is| are)? )?(?:no|not an?|not one|not a single|never an?|nary an?|isn't an?|isn't one|isn't a single|aren't any|ain't an?)(?: single)?"
_ISNT = r"(?: ?(?:that|which|where it|you'd say))? ?(?:'s not|is not|isn't|ain't|wasn't|aren't|that's not|are not|didn't (?:come|get|end up)|doesn't (?:come|sit|pull))"

ENGLISH_BY_THE_SIDE = (
    # --- not one of them that is not so: they all are
    Aside(rf"(?P<x>{_NOT_ONE} (?:joint|seam|corner|connection)s?{_ON_IT}(?:{_ISNT} (?:all |real |good and )?(?:tight|closed(?: up)?|snug|pulled up|shut)| (?:that )?(?:is|'s|are) (?:loose|open|gapped|gapping|gaping)))(?= [.,;]|$| and| but)", (" joint", " seam", " corner", " connection"), states=(("gap", 0),), names=True),
    Aside(rf"(?P<x>{_NOT_ONE} (?:spot|place|inch|foot|side|part|piece|corner|seam|joint|stretch){_ON_IT}(?: where| that)? ?(?:you (?:can't|don't|won't) see (?:the )?<n>|(?:the |that |its )?<n> (?:doesn't|isn't|didn't|don't|won't) (?:show|come|read|pop|print|telegraph)\w*(?: through| up)?))(?= [.,;]|$| and| but)", (" spot", " place", " inch", " foot", " side", " part", " piece", " corner", " seam", " joint", " stretch"), states=(("scrim_shows", True),), names=True, unless=r"^(?!.*(?:scrim|<n>)).*$"),
    Aside(rf"(?P<x>{_NOT_ONE} (?P<n><n>){_ON_IT}{_ISNT} (?:all )?(?P<act><d>)(?: (?:over|down|in|flat))*)(?= [.,;]|$| and| but)", (" tab", " vane"), states=(("<act>", True),), names=True),
    # --- legs that go out on one part and in on another go in
    Aside(
        r"(?:<n>|legs?|clinch(?:ed)?|clinches|points?|turned|bent|curl(?:ed)?)(?: [^ .?;]+){0,9}? (?P<x>(?:out|outwards?) ?,? (?:on|along|at|except|but|and)(?![\w'])(?: [^ .?;]+){0,9}? (?:inwards?|in)(?= (?:on|along|at|down)(?![\w'])| ?[.,;]|$))",
        (" inward", " in on ", " in along ", " in at ", " in down "),
        states=(("staple_clinch", "inward"),),
        names=True,
        unless=r"(?<![\w'])(?:not|never|no|nobody|nothing|moves?|inch(?:es)?|step|air|offset|vanes?)(?![\w'])|n't",
    ),
    # --- a hole that is meant to be there
    Aside(
        r"(?P<x>(?:(?:there ?'s|there is|has|have|got|with|a|an|the|that|one|its) )*holes?)(?: (?:cut|drilled|made|in|on|at|of|the|side|top|bottom|left|right|it|#|\d+|that|'s|is|i|already|piece))* ?,? ?(?:but )?(?:(?:it|that|'s|is|the one|one|just|only|there) ?)*(?:for (?:the|a|an|my) (?:#|access door|tap|collar|damper|shaft|thermostat|sensor|probe|take-?off|register|rod|wire|conduit|pitot|gauge|door)|where (?:the|a) (?:#|damper|shaft|thermostat|sensor|probe|collar|tap|rod|wire|gauge)(?: shaft| rod)? (?:goes|sits|mounts|comes|will)|(?:meant|supposed) to be there|on purpose)(?![\w'])",
        (" hole",),
        names=True,
        unless=r"too (?:big|large)|wrong|torn|ragged|(?<![\w'])(?:not|never|no|extra|second|other)(?![\w'])|n't",
    ),
    # --- filth that was found when the tape was on
    Aside(
        r"(?:found|noticed|saw|spotted|discovered) (?:(?:some|all that|that|the|a bit of|a lot of) )*(?:dust|grease|oil|dirt|sawdust|mud)(?: [^ .,?;]+){0,4}? ?,? (?P<x>)(?:only )?after (?:i|we) ?(?:'d|had|already)? ?<d>",
        (" after i ", " after we "),
        states=(("surface_clean", False),),
        unless=r"peeled|pulled|wiped|cleaned|off",
    ),
    # --- a tape that is to give way to the listed one when that comes
    Aside(
        r"(?:duct|cloth|masking|duck|gray|grey|packing|painter ?'s|wrong)(?: <n>| tape)?(?: [^ .?;]+){0,12}? (?P<x>)(?P<later>(?:for now ,? ?)?(?:till|until) (?:(?:the|some|my|our|more|any) )?(?:(?:listed|right|real|good|proper|foil|correct|new)(?: (?:stuff|<n>|tape|roll|one))?|181[^ ]*|<n>|roll) (?:comes?|gets?|arrives?|shows?|is|'s)(?: (?:in|here|up))?)(?![\w'])",
        (" till ", " until "),
    ),
    # --- tape on what is no duct
    Aside(
        rf"(?P<x>(?:(?:i|we|he|they|she|have|had|'ve|just|only|used|use|put|wrapped|stuck|ran|keep|kept|got|the|some|a|my|that|bit|piece|strip|scrap|roll|of|old|cheap|other|duct|masking|painter ?'s|painters|cloth|electrical|packing|gaffer|duck|blue|gray|grey) )*"
        rf"(?:(?:duct|masking|painter ?'s|painters|cloth|electrical|packing|gaffer|duck) )?(?:tape|<n>|masking|cloth|duct tape|masking tape|cloth tape|painter's tape|electrical tape|packing tape|gaffer tape|duck tape)(?: (?:'s|is|was|goes|went|only|just|all))* (?:on|around|round|over|across|onto|for|to (?:hold|fix|patch|mend|wrap|protect)) (?:(?:the|my|a|our|his|their|an) )+(?:(?!side|end|seam|joint)\w+ )?{_NO_DUCT})(?= [.,;]|$| and| but| for| to (?:hold|mark|keep|show)| so)",
        tuple(f" {one}" for one in ("hose", "window", "boot", "shoe", "drop cloth", "lunch", "ladder", "tarp", "handle", "cord", "extension", "glove", "thumb", "finger", "sign", "pants", "jacket", "knee", "phone", "thermos", "cooler", "flashlight", "hard hat", "hat", "glasses", "drywall", "door", "baseboard", "trim work", "carpet", "bumper", "mirror", "seat", "light", "outlet", "sprinkler", "smoke", "pipe", "conduit", "wire", "radio", "glass", "counter", "cabinet", "furniture", "floor", "label", " tag", "paperwork", "drawing", "bench", "table", "horse", "layout")),
        names=True,
    ),
    # --- how far the piece is from the building is no gap of its joint
    Aside(
        rf"(?P<x>{_SO_WIDE}(?:[^ .,?;<#]+ )?(?:gap|clearance|space|room|air)(?: (?:left|there|there is|of [^ .,?;<]+(?: inch(?:es)?)?))*(?: (?:on|at|by|beside|over|above|under|behind|around|round) (?:[^ .,?;<]+ ){{0,2}}?(?:#|it|this one|that one|\d+))?(?: ,)? {_TO_IT})",
        tuple(f" {one}" for one in ("wall", "ceiling", "beam", "joist", "stud", "deck", "drywall", "slab", "column", "pipe", "conduit", "floor", "roof", "grid", "framing", "block", "brick", "concrete", "shaft", "light", "sprinkler", "rafter", "truss", "soffit", "purlin", "unistrut", "cable tray")),
        names=True,
    ),
    # --- the ladder and its feet, a sheet and its size
    Aside(
        r"(?P<x>(?:(?:the|my|our|a|an|that|his|this) )*(?:\w+ )?(?:step ?)?(?:ladder|scaffold|lift|plank)(?: (?:i|we|he) \w+| i'm on| here| we have| we've got)? ?(?:'s|is|was)?(?: (?:only|just|about))* ?(?:an? )?(?!(?:on|in|at|by|with|under|over)(?![\w']))[^ .,;#<]+(?:[ -]foot(?:er)?| feet| ft| footer)(?: (?:tall|high|long|one))?)(?= [.,;]|$| and| so| but)",
        (" ladder", " scaffold", " lift", " plank"),
        names=True,
    ),
    Aside(r"(?P<x>(?:(?:on|off|from|with|up) )*(?:(?:the|my|our|a|an|that) )+[^ .,;#<]+[ -](?:foot(?:er)?|ft) (?:step ?|extension )?(?:ladder|scaffold|plank))", (" ladder", " scaffold", " plank"), names=True),
    Aside(
        r"(?P<x>(?:(?:the|our|these|those|full|whole|board|my) )*(?:sheets?(?: of (?:duct ?)?board)?|board|boards) ?(?:'re|'s|are|is|come|comes|came|were|was|measures?|runs?)(?: (?:in|at|all|only|as|to us))* [^ .,;#<]+(?: (?:foot|feet|ft))?(?: (?:by|x) [^ .,;]+)(?: (?:feet|foot|ft|sheets?))?)(?= [.,;]|$| and| so)",
        (" sheet", " board"),
        unless=r"cut|left|scrap",
    ),
    # --- what a broken thermometer said
    Aside(
        rf"(?P<x>(?:(?:the|my|that|a|our|his|wall|shop|old|one) )*(?:thermometer|gauge|thermostat|temp gun|heat meter)(?: (?:on|in|at|by|over) (?:the|my|his) [^ .,?;]+(?: [^ .,?;]+)?)? {_WRITES} [^.?;]{{1,40}}? [.,;]? ?(?:but |and |only |though |except )*(?:it|that|that one|that thing|the thing|which){_BROKEN})(?= [.,;]|$| and| so| but)",
        ("thermometer", "gauge", "thermostat", "temp gun", "heat meter"),
        names=True,
    ),
)
