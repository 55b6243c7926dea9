"""English of what is told shortly after its thing: the distance before the staples, a side put right, stock that is low, a jest taken back.

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.measured import _M
from logbook.languages.en.plainer_aloud import _COUNT
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_SMALL = r"(?:(?:half an?|a half|half|quarter|(?:a|an|one|three|five|seven|nine)[- ](?:quarters?|eighths?|sixteenths?))(?:[- ]inch)?)"
_GOOD = r"(?:(?:good|right|long|longer|usual|regular|normal|big|bigger|proper|listed|real|half|half[- ]inch) )*"
_WIDTH = r"(?:one|two|three|four|[1-4])(?: and (?:a|one)[- ]half| 1/2|\.5)?"  # of tape; a piece that is named by its number is none
_OUT = rf"(?:(?:{_I} )?(?:ran|run|was|were|am|are)(?: (?:all|clean|plumb|just))? out of|(?:i'm|we're) (?:all )?out of|(?:^|(?<=[.!;,] )|(?<=so ))(?:all )?out of|{_I} (?:had|have) no more)"
_THESE = r"(?:these|those|they|this one|this|that|it)(?: ?(?:'s|'re| is| are))(?: (?:all|just|only|the|a))*"
_ARE = r"(?:,? (?:so|and so|which is why)|[.;,](?: so)?)"
_OF_STOCK = r"(?:(?:i'm|we're|i am|we are|truck's|the truck is|shop's|the shop is|the gang box is|you're|they're)(?: (?:all|almost|nearly|about|just|completely|running|getting|pretty|also|now))* (?:out of|low on|short on)|(?:running|getting) (?:low|short) on|(?:i|we|you|they|the truck|the shop)(?:'ll)?(?: (?:still|also|just|really))* (?:needs?|wants?) (?:some |a lot |a few )?more|(?:bring|send|order|get)(?: (?:me|us))? (?:some |a few |a case of |more )*more)"
_SIDE = r"(?:top|bottom|left|right)"
_MOVES = r"(?:comes?|drops?|rises?|goes|moves?|slants?|slopes?|closes?|opens?|steps?|pulls?|runs?|is|stays?)"
_SORRY = r"(?:(?:no|nope|wait|sorry|hang on|hold on|scratch that|not that)[,.]? )+"

_ACT_NAME = r"(?:taping|tape|stapling|staples|rubbing(?: down)?|rub[- ]?down|wiping|wipe[- ]?down|trimming|trim|(?:turning )?vanes)"

ENGLISH_TOLD_SHORTLY_AFTER = (
    # --- "rubbed, but the end, the air goes out of the male end": what is said of the end, and no act left out there
    Plainer((" but the ",), r"(?<= but )(?P<x>the (?P<p>(?:\w+ )?(?:end|ends|way|direction|flow|groove|joint)),? )(?=(?:the |its )?(?:air|flow|low step|step|male|female)(?: (?:end|side))? (?:goes|leaves|comes|exits|flows|blows|runs|faces|is|points|ends)(?![\w']))", (("x", ""),)),
    # --- "that's wrong, isn't it, anyway taped": a question back, and nothing that is denied of what comes
    Plainer(("isnt it", "isn't it", "aint it", "ain't it"), r"(?:that's|thats|it's|its|this is|that is)(?: \w+){1,3}?(?P<x>,? (?:isn'?t|ain'?t) it)(?![\w'])", (("x", ""),)),
    # --- "ninety degrees, sixteen by ten, vanes in": the turn, and not how warm it is
    Plainer(("degrees",), r"(?:right here|number [\w-]+|#?\d+|here),? (?P<x>(?P<n>ninety|forty[- ]five|90|45) degrees)(?=, (?:\w+(?:[- ]\w+)? by|\d+ ?(?:x|by)))", (("x", r"\g<n> degree elbow"),), beside=("vane", "elbow")),
    # --- "okay so, vanes, no, and I'm not going back up there": an answer to himself, and no correction
    Plainer(("vanes, no", "staples, no", "tabs, no", "tape, no", "rub, no", "rubdown, no", "rub down, no"), r"(?:^|(?<=[.;!] ))(?:(?:okay|ok|so|well|alright|right|now|and|but|anyway)[, ]+)+(?P<x>(?P<t>vanes|staples|tabs|tape|rub|rub ?down), no)(?=[.,;]|$)", (("x", r"no \g<t>"),)),
    # --- "every two on the staples": how far apart they are, and that they are there
    Plainer(("on the staples", "on my staples", "with the staples"), rf"(?P<x>)(?:every|about every) (?:about |roughly )?{_M}(?:[- ]inch(?:es)?)?(?P<y> (?:on|with) (?:the|my) staples)(?=[.,;!]|$| and | all )", (("x", "staples "), ("y", ""))),
    # --- "out of the good staples so these are three-eighths": what took their place
    Plainer(("out of ", "no more"), rf"(?P<x>{_OUT} (?:the |our |my )?{_GOOD}staples{_ARE} {_THESE} )(?={_SMALL})(?P<m>{_SMALL})(?P<y>)(?: ones| staples)?(?=[.,;!]|$| and )", (("x", "stapled with "), ("y", " staples"))),
    *(
        Plainer(("out of ", "no more"), rf"(?P<x>{_OUT} (?:the |our |my )?{_GOOD}{ran_out}{_ARE} (?:{_THESE}|(?:{_I} )?(?:used|had to use|went to|put on|switched to)(?: the| some)?) ){_WIDTH}{told}(?=[.,;!]|$| and | on )", (("x", "i used "), ("y", " tape")), unless=r"\bout of [^.;,]*(?:staple|screw|board|vane|leg)")
        for ran_out, told in ((rf"{_WIDTH}(?:[- ]inch)?(?: (?:foil )?tape)?", r"(?:[- ]inch)?(?P<y>)(?: tape| ones| one)?"), (r"(?:foil )?tape", r"(?:[- ]inch(?P<y>)(?: tape| ones| one)?)"))
    ),
    # --- "Bottom comes up three, no, it's the top. Top comes down three": the side taken back has not moved
    Plainer(
        ("it's the ", "i mean the ", "that's the ", "it was the "),
        rf"(?:^|(?<=[.;!?,] ))(?P<x>(?:the )?{_SIDE}(?: side)? {_MOVES} [^.;!?]{{1,30}}[,.;] {_SORRY}(?:it's|it is|i mean|that's|it was) the (?P<t>{_SIDE})(?: side)?(?: that (?:moves|does|comes \w+|goes \w+))?[.,;!] )(?=(?:so )?(?:the )?(?P=t)(?: side)? {_MOVES} )",
        (("x", ""),),
    ),
    # --- what there is in stock: its width is that of no joint
    Plainer(("out of ", "low on ", "short on ", " more "), rf"(?<![\w']){_OF_STOCK} (?:the |that |our )?(?P<x>{_M}(?:[- ]inch)?(?: wide)? )(?=(?:foil )?tape(?:[.,;!]|$| (?:on|in|at) the truck| up here| out here| down here| again| tomorrow| and (?:staples|mastic|screws)))(?![^.;!]*(?:,? so |[,;] and |[,;] but )(?:i|it|this|these|we|the rest) )", (("x", ""),)),
    # --- "Tape I put only in the five. The six no."
    *(
        Plainer((f"{thing} i ", f"{thing} we "), rf"(?:^|(?<=[.;!?,] ))(?P<x>(?:the )?{thing} {_I} (?:put|ran|laid|used|shot|set) only (?:in|on|around) (?:the |number )*)(?P<n>{_COUNT})(?P<y>[.,;] (?:and |but )?(?:the |number )*)(?P<m>{_COUNT})(?P<z>,? (?:no|not|none|nothing|didn't get any|has none|got none))(?=[.,;!]|$)", (("x", "number "), ("y", f" has {thing}. number "), ("z", f" has no {thing}")))
        for thing in ("tape", "staples", "vanes")
    ),
    # --- "taped three sides, the back I can't get at, so no tape there": the side that is told already
    Plainer(("no tape there", "no tape back there", "no tape on that", "no tape on it"), r"tape[d]? (?:only |just )?(?:on )?(?:one|two|three|[1-3]) (?:of the )?(?:sides|four|faces)[^.;!?]{1,50}?(?:can't|couldn't|cannot|could not) (?:get at|get to|reach)(?: it)?(?P<x>(?:,| so| and)+ no tape (?:back there|there|on that(?: one| side)?|on it))(?=[.,;!]|$)", (("x", ""),)),
    # --- "I told the GC it's hung. It's not hung": what he told another, and what is
    Plainer((" told ",), rf"(?:^|(?<=[.;!?,] ))(?P<x>{_I} told (?:the |my )?[\w']+(?: [\w']+)? (?:that )?it(?:'s| is| was) (?:already |all )?(?P<w>hung|up|taped|stapled|rubbed|closed|sealed|done)(?: up| in)?[.,;] (?:and |but |well,? )*)(?=it(?:'s| is) not (?:really |actually )?(?P=w)|it (?:isn't|ain't|wasn't) (?:really |actually )?(?P=w))", (("x", ""),)),
    # --- "still need to put mastic on it": the joint is not closed yet
    Plainer(("mastic on",), r"(?<![\w'])(?:(?<!no )(?<!n't )(?<!not )(?<!never )needs?|(?<!don't )(?<!not )have|has|got|gotta|going|ought|meaning)(?: to)? (?P<x>(?:put|brush|slap|get|spread|smear) (?:the |some |any |my )?mastic on (?:it|that|there|them|this one))(?=[.,;!]|$| yet| still| tomorrow| later| next)", (("x", "tape it"),)),
    # an act by its name that is told as done
    Plainer(("not an issue", "n't an issue", "not a problem", "n't a problem", "n't missing", "not missing"), rf"(?:^|(?<=[.?!;,] ))(?:the |my )?{_ACT_NAME}(?P<x>(?:'s| is| are| was| were)(?: not|n't) (?:an issue|a problem|missing))(?= *(?:[.,;!]|$)| (?:here|on this one|this time|any more))", (("x", " is done"),)),
    Plainer(("got to the ",), rf"(?:^|(?<=[.?!;,] ))(?:and |but |so )*(?:i |we )?(?:finally |even )*(?P<x>got to )the {_ACT_NAME}(?P<y> (?:this time|too|as well|at last|finally|after all|before (?:lunch|dark|i left)))(?= *[.,;!]|$)", (("x", "did "), ("y", ""))),
    Plainer(("as for ", "as far as "), rf"(?:^|(?<=[.?!;,] ))(?P<x>as (?:for|far as) )(?:the |my )?{_ACT_NAME}(?P<y>(?: goes| is concerned)?, (?:(?:that's|it's|that is|it is|they're|that|all|already) )*)(?=(?:done|finished|taken care of|all set|complete)(?: *[.,;!]|$))", (("x", ""), ("y", " is "))),
)
