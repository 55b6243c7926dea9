"""English of what there was no more of and what took its place: "ran out of half inch staples, so I finished it with three eighths".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.measured import _M
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_L = rf"(?:(?:half an?|half|(?:an?|one|three|five|seven)[- ](?:half|quarters?|eighths?|sixteenths?)|quarter)(?:[- ]inch)?|{_M}(?:[- ]inch)?)"
_OUT = rf"(?:(?:{_I}(?:'re|'m)? ?)?(?:had )?(?:(?:ran|run|was|were|am|are)(?: \w+)?|(?<='re )(?:all|clean|plumb|fresh|right|completely)|(?<='m )(?:all|clean|plumb|fresh|right|completely)|(?<='re)|(?<='m)) out of|(?:^|(?<=[.!;] )|(?<=so ))(?:all )?out of|(?:{_I} )?had no more|(?:^|(?<=[.!;] ))(?:there's |there is |there was |we've got |we got |i've got |i got |got )?no(?: more)?|(?:the )?(?:shop|truck|supply house|van|store|gang box|box)(?:'s| is| was)(?: all| clean| fresh)* out of|(?:fresh|clean|plumb) out of)"
_WHERE = r"(?: (?:about |some ?where |right )*(?:half ?way|half way|part ?way|midway|most of the way|two thirds|three quarters|near the end|at the end)(?: (?:through|around|along|down|into|of|up|across|on))*)?"
_PIECE = r"(?: (?:on |of |with )?(?:the )?(?:\w+ )?(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|sleeve|number)? ?(?:[a-z]-?)?\d+)?"
_SO = r"(?:,? (?:so|and|and so|and then|then|so then)|[,.;]|[.;,] (?:so|then|and)) "
_REST = rf"(?:{_I} )?(?:had to )?(?:finish(?:ed)?(?: (?:it|up|off|it up|it off|the rest|the other half|the last side|out))*|did the (?:rest|other half|last side|last bit)(?: of)?{_PIECE}|(?:the )?(?:rest|other half)(?: of it)?(?: (?:is|was|got|has))?) (?:with |in |using )?(?:the |some )?"
_WIDTH = r"(?:an? )?(?:inch and a (?:half|quarter)|(?:one|two|three|four|1|2|3|4)(?: and a (?:half|quarter)|-1/2)?[- ]inch)"
_HERE = r" (?:left|anymore|any more|here|around|to be had|with me|with us|(?:left )?(?:on|in) (?:the|my|this) (?:\w+ )?(?:truck|van|box|bag|cart|lift|trailer|shop|bucket|job|site|shelf|bench|building))"
_SPOT = r"the (?:(?:last|bottom|top|back|front|left|right|heel|throat|far|other|fourth|third|long|short|inside|outside) )+(?:side|seam|end|joint|corner|edge|piece|bit|half|part|cheek|one)s?"
_FOR_IT = rf"(?:(?:{_I} )?(?:had to )?(?:use|used|put in|put|shot|went with|go with|switched to|grabbed)|(?:it|this one|the \w+|(?:the )?(?:straight|elbow|tee|offset|transition|reducer|wye|branch|cap|end cap|plenum|number) [\w-]+)(?:'s)? (?:got|has|gets|is|took)) (?:the |some )?"
_PART = r"(?:last|other|fourth|bottom|top|back|front|left|right|rest|throat|heel|end|corner|third)(?![\w'])"
_THINGS = (("staples", r"(?:staples?|legs?)"), ("tape", r"(?:tape|foil tape|foil)"))

_BAD = r"(?:cloth|duct|masking|gray|grey|packing|painter's|painters|electrical|hardware store|unlisted|plain)(?: duct| cloth)? tape"

_HAD = r"(?:i|we|they|he|you|(?:the |my |our )?(?:shop|truck|supply house|van|store|gang box|box|cart|boss|lead|foreman))"
_HAD_ONLY = rf"{_HAD}(?:'d)? (?:only (?:had|have|has|got)|(?:had|have|has|got) (?:only|just|nothing but|nothing left but))(?: left)?(?: the| some)?|all(?: that)? (?:{_HAD} had|there was)(?: left)? (?:was|were|is)(?: the| some)?|there (?:was|were) only(?: the| some)?|only(?: had| got| have)?(?: the| some)?"

ENGLISH_RAN_SHORT = (
    Plainer(
        ("out of ", "no more"),
        rf"(?P<x>{_OUT}) (?:the |our |my )?(?:(?:good|listed|foil|right|regular|rated|approved|ul|aluminum) )+tape(?P<w>{_WHERE}){_PIECE}{_SO}{_REST}{_BAD}(?=[.,;!]|$| on | and )",
        (("x", "i used"), ("w", " on")),
        beside=("finish", "rest", "other half", "last "),
    ),
    # --- "… and finished the back seam with masking tape", "… and used duct tape on the last side"
    Plainer(
        ("out of ", "no more"),
        rf"(?P<x>{_OUT}) (?:the |our |my )?(?:(?:good|listed|foil|right|regular|rated|approved|ul|aluminum) )+tape(?P<w>{_WHERE}){_PIECE}{_SO}(?:{_I} )?(?:had to )?(?:(?:finish(?:ed)?|did|close[d]?|taped?|sealed) (?P<s>{_SPOT})(?P<y> with (?:the |some )?)|(?:use[d]?|put|ran|went to|switched to) (?:the |some )?){_BAD}(?=[.,;!]|$| on | and | for )",
        (("x", "i used"), ("w", " on"), ("y", " with ")),
    ),
    # --- "the only staples left on the truck were the three-eighths ones, so that is what I used"
    *(
        Plainer(
            ("the only ",),
            rf"(?P<x>the only {words}(?: (?:i|we|that|was|were|had|have|got|left|there|with me|around|(?:on|in|at) the \w+))* (?:was|is|were|are)(?: only| just)? (?:the |some |an? )?)(?P<m>{_L}|{_BAD})(?P<y>(?: {words}| ones?| kind)?,? (?:and |so )+(?:that's|that is|those are|those were|that was|(?={_I} used)))(?P<z> ?(?:what|all)? ?(?:{_I} (?:used|put in|shot|went with|put on)|went (?:in|on))(?: it| them| those| that| in it)?)",
            (("x", "i used "), ("m", rf"\g<m> {thing}"), ("y", ""), ("z", "")),
        )
        for thing, words in (("staples", r"(?:staples?)"), ("tape", r"(?:tape|foil)"))
    ),
    *(
        row
        for thing, words in _THINGS
        for row in (
            Plainer(
                ("out of ", "no more"),
                rf"(?P<x>{_OUT}) (?:the |our |my )?{_L} {words}(?P<w>{_WHERE}){_PIECE}{_SO}{_REST}{_L}(?P<y>)(?: {words}| ones)?(?=[.,;!]|$| on | and )",
                (("x", "i used"), ("w", " on"), ("y", f" {thing}")),
                beside=("finish", "rest", "other half", "last "),
            ),
            Plainer(
                ("out of ", "no more"),
                rf"(?P<x>{_OUT} (?:the |our |my )?{_L} {words}(?:{_HERE})*){_PIECE}{_SO}{_FOR_IT}{_L}(?:(?: ones)? {words}|(?P<y>)(?: ones)?)(?=[.,;!]|$| on | for | in )",
                (("x", "here is "), ("y", f" {thing}")),
            ),
        )
    ),
    # --- "the shop had only three-eighths staples left, so that is what is in the board"
    *(
        Plainer(
            ("only ", "nothing but", "all they had", "all we had", "all i had", "all he had", "all there was"),
            rf"(?P<x>(?:{_HAD_ONLY}) )(?P<m>{_L}|{_BAD})(?P<y>(?: {words}| ones)?(?:{_HERE}| today)*(?:,? (?:and|so|and so)|[.;,])+ (?:that's|that is|those are|these are|they're|it's|that was) what(?:'s| is| are| was| went| got used| (?:i|we|he|they) (?:used|put|put in|put on|shot|had to use|went with))?(?: (?:in|on)(?= (?:it|there|this|that one|here)(?![\w'])))?)(?=[.,;!]|$| (?:in|on|here|there|it|this|for)(?![\w']))",
            (("x", "I used "), ("m", rf"\g<m> {thing}"), ("y", "")),
            unless=r"(?:staples?|tape|ones) i mean",
            beside=cues,
        )
        for thing, words, cues in (("staples", r"staples?", ("staple",)), ("tape", r"(?:foil )?tape", ("tape",)))
    ),
    # --- "asked for half inch staples and he brings quarter inch, so that's what's in straight 22"
    *(
        Plainer(
            ("asked for", "ordered ", "wanted ", "needed ", "told ", "sent "),
            rf"(?P<x>(?:(?:i|we) )?(?:asked(?: [\w']+)? for|ordered|wanted|needed|(?:told|asked|sent) (?:the |my )?[\w']+ to (?:bring|get|grab|fetch|send|hand)(?: me| us)?|(?:told|sent) (?:the |my )?[\w']+ for) (?:the |some )?{_L}(?: {words})?(?:,? and|,? but|[.,;]|,? so)? (?:they|he|she|it|(?:the |my )?[\w']+)? ?(?:sent|sends|brought|brings|gave|gives|handed|hands|got|came with|come with|comes with|had|showed up with|shows up with)(?: me| us| back| over| up)* (?:the |some )?)(?P<m>{_L})(?: ones| {words})?(?P<y>(?:[.,;]|,? so|,? and)+(?: (?:so|and))* (?:that's|that is|those are|that was|they're) (?:what(?:'s| is| went| i used| i put| we used| we put| got used)|the ones i used))(?= (?:on|in|for) |[.,;!]|$)",
            (("x", "i used "), ("m", rf"\g<m> {thing}"), ("y", "")),
        )
        for thing, words in _THINGS
    ),
    # --- by its width alone, which no staple has: "no more three inch on the truck, used two inch"
    Plainer(
        ("out of ", "no more", " no ", "no "),
        rf"(?P<x>{_OUT} (?:the |our |my )?{_WIDTH}(?:{_HERE})*){_PIECE}{_SO}(?:{_FOR_IT}|(?:{_I} )?(?:taped|closed|did) (?:it|this one|{_PIECE})? ?with (?:the |some )?){_WIDTH}(?P<y>)(?: ones?| stuff)?(?=[.,;!]|$| on | for | in )",
        (("x", "here is "), ("y", " tape")),
    ),
    # --- "three inch tape on three sides and two inch on the last one"
    Plainer(
        (" tape ",),
        rf"{_L} (?:wide )?(?:foil )?tape [^.?!]{{0,60}}?(?:,|[,.;] (?:and|but|so)| and| but| so)? ?{_REST}{_L}(?P<y>)(?: ones)?(?=[.,;!]|$)",
        (("y", " tape"),),
        beside=("finish", "rest", "other half", "last "),
    ),
    Plainer(
        (" tape ",),
        rf"{_L} (?:wide )?(?:foil )?tape (?:on|for|over|around|in|at) [^.?!,;]{{1,30}}?(?:,|,? and|,? but) (?:only )?{_L}(?P<y>)(?: only)? (?:on|for|over|around|in|at) (?:the |that )?{_PART}(?P<z> one)?",
        (("y", " tape"), ("z", " side")),
    ),
    Plainer(
        (" tape ",),
        rf"{_L} (?:wide )?(?:foil )?tape (?:on|for|over|around|in|at) [^.?!,;]{{1,30}}?(?:,|,? and|,? but) (?:the |that )?{_PART}(?: one| side| seam)? (?:got|has|is|gets|took|only got|only has) (?:the |only )?{_L}(?P<y>)(?=[.,;!]|$)",
        (("y", " tape"),),
    ),
    # --- "the only roll left was the two inch, so that's what went on straight 76"
    Plainer(
        ("roll ", "rolls "),
        rf"rolls?(?: (?:i|we|they|that|was|had|have|got|left|there|in the \w+|on the \w+|with me))* (?:was|is|were|are)(?: only| just)? (?:the |an? )?{_L}(?P<y>)(?: one| ones| kind| stuff)?(?=[.,;!]| and | so |$)",
        (("y", " tape"),),
        unless=r"^(?!.*(?:only|last|left|so that|so i|that's what|all))",
    ),
    # --- no time left, and none of what ran out
    Plainer(("out of time", "out of day", "out of light"), r"(?P<x>(?:ran|run|running|was|were) (?:clean |plumb |all )?out of (?:time|day|daylight|light))(?= (?:to|for) )", (("x", "had no time"),)),
    Plainer(
        (" none", " any"),
        r"out of (?P<t>tape|staples|vanes|screws)(?: (?:halfway|yesterday|today|this morning))?(?:,? so|,? and|,? but|[.;,]) (?:the )?(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|sleeve|number|piece)?(?: number)? ?(?:[a-z]-)?\d+ (?P<x>(?:still )?(?:has none|has not got any|has nothing on it|didn't get any|got none|doesn't have any|hasn't got any))(?=[.,;!]| yet| and | on it|$)",
        (("x", r"has no \g<t>"),),
        beside=("out of ",),
    ),
)
