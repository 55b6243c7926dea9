"""English that mixes one piece, one measure or one thing into the telling of another: "no, thirty was the last one, this one's twenty-four", "I said I rubbed 11, I never rubbed 12".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.numbers import SAID_NUMBER as _NUMBER
from logbook.languages.plainer import Plainer

_KIND = r"(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|piece|fitting|section|number)"
_I = r"(?:i|we)"
_ACT = r"(?:taped|stapled|rubbed|wiped|trimmed|hung|put (?:vanes|tape|staples) (?:in|on))"
_VERB = r"(?:tape|staple|rub|wipe|trim|hang|put (?:vanes|tape|staples|any|them) (?:in|on)|taped|stapled|rubbed|wiped|trimmed|hung)"
_OTHER = r"(?:the )?(?:last|other|previous|next) (?:one|piece|straight|elbow|transition|tee)"

ENGLISH_MIXED_IN = (
    # --- a measure of another piece, and then his own
    Plainer(
        ("last one", "other one", "previous one", "next one", "last piece", "other piece", "last straight", "last elbow", "last transition", "last tee"),
        rf"(?<![\w'])(?P<x>(?:(?:{_KIND} )?{_NUMBER}(?: inches)?|that|it)(?:'s| was| is| goes| went)(?: (?:for|on|from|with|what (?:i|we) (?:did|had|used|put)(?: on)?))? {_OTHER}[,.;] (?:and |but |so )?(?:this one(?:'s| is| was| gets| got| goes| comes)|this is|here it's|mine's|on this one it's)(?: (?:back|every|at|really|only))* )(?={_NUMBER})",
        (("x", "make that "),),
    ),
    # --- what he said he did to one, and what he did not do to another
    Plainer(
        (" said ", " told ", " say ", "i said", "we said"),
        rf"(?<![\w'])(?P<x>{_I} (?:said|say|told (?:him|her|them|you|the \w+|\w+))(?: that)? )(?={_I} {_ACT}(?: (?:down|up))? (?:{_KIND} )?(?P<n>\d{{1,3}})[,.;]? (?:but |and |only )*{_I} (?:never|didn't|did not|haven't|have not) {_VERB}(?: (?:down|up))? (?:{_KIND} )?(?!(?P=n)(?!\d))\d)",
        (("x", ""),),
    ),
    # --- whom he told of it, or who may look: what is behind is how it is
    Plainer(
        (" about ",),
        rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:(?:so|and|i|we|already|just) )*(?:told|called|texted|warned|radioed) (?:him|her|them|(?:the|my) \w+|(?!you\b)\w+) about )(?=(?:the (?:tape|staples|vanes|tabs|gap|tear|hole) (?:on|in) )?(?:the )?{_KIND}? ?(?:number )?\d{{1,3}}[,.;:] (?:it|it's|there's|there is|there are|i|they're|no|that) )",
        (("x", ""),),
    ),
    Plainer(
        ("you look at", "you check", "you open", "you go look", "you walk up", "you feel", "you turn over", "you see"),
        rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:(?:so|and|now|well) )*(?:if|when) you (?:look at|check|open up|open|go look at|walk up to|feel|turn over|see) )(?:the )?{_KIND}? ?(?:number )?\d{{1,3}}(?P<y>,?) (?=(?:there's|there is|there are|there isn't|there aren't|it's|it isn't|you'll see there's|you'll see) )",
        (("x", "on "), ("y", ",")),
    ),
    # --- a fault that nobody is to count
    Plainer(
        ("count", "ignore", "forget", "overlook", "look at", "mind", "squint past", "see past"),
        r"(?:^|(?<=[.!?;:,] ))(?P<x>(?:(?:sure|yeah|oh|well|and|but),? )*(?:(?:it|that|this one|everything)(?:'s|'d be| is| would be| looks) )?(?:all )?(?:perfect|fine|good|great|tight|beautiful|pretty|nice|done)(?: enough)?,? (?:if|as long as|so long as|provided) you(?:'ll)? (?:don't (?:count|look at|mind|see)|ignore|forget|overlook|look past|see past|squint past)(?: about)? )(?P<y>(?:the|that) (?=inch|eighth|half|quarter))?(?=(?:the |an? |that |those |this |my |its |inch|eighth|half|quarter))",
        (("x", "there's "), ("y", "an ")),
    ),
    # --- what he nearly said
    Plainer(
        ("to say ", "to tell ", "to write ", "to put down ", "to report ", "gonna "),
        rf"(?<![\w'])(?P<x>{_I} (?:was|were|had been)(?: just| all)? (?:going to|gonna|about to|fixing to|set to|ready to) (?:say|tell (?:you|him|them)|write|put down|report|call it) (?:that |it's )?{_NUMBER}(?P<w> sides? (?:taped|stapled|rubbed(?: down)?))[,;.]? (?:but|only|except|then)(?: then)?,? (?:it's|they're|that's|it was|i only got|i got|there's|i count|i see)(?: (?:really|only|just|actually))* )(?={_NUMBER}(?P<y>)(?:[.,;!]|$| because| cause))",
        (("x", ""), ("y", r"\g<w>")),
    ),
    # --- an arm, and no fitting
    Plainer((" elbow",), rf"(?<![\w'])(?P<x>(?:put|stuck|ran|drove|shoved|got) (?:his|her|my|their|an|one|somebody's)(?: (?:big|left|right|damn|whole))* elbows? (?:right |straight |clean )?through )(?=(?:the |my |our )?{_KIND} (?:number )?\d)", (("x", "poked a hole in "),)),
    Plainer((" elbow",), rf"(?<![\w'])(?:put|stuck|ran|drove|shoved|got|went|jabbed|poked|hit|banged|bumped|slammed|caught|leaned)(?: (?:it|this|that))?(?: with)? (?:his|her|their|an|one|somebody's)(?: (?:big|left|right|damn|whole))* (?P<x>elbows?)(?= (?:right |straight )?(?:into|against|on) (?:the |my |our )?{_KIND} (?:number )?\d)", (("x", "arm"),)),
    # --- what was cut, before how long it is
    Plainer(("cut ",), rf"(?:^|(?<=[.!?;,] )|(?<=[.!?;,] i )|(?<=[.!?;,] we )|(?<=^i )|(?<=^we ))(?P<x>cut (?P<n>{_KIND} (?:number )?\d{{1,3}}))(?= (?:down |back |off )?(?:to|at) {_NUMBER})", (("x", r"\g<n>, cut it"),)),
    Plainer(("cut ",), rf"(?:^|(?<=[.!?;,] )|(?<=[.!?;,] i )|(?<=[.!?;,] we )|(?<=^i )|(?<=^we ))(?P<x>cut (?P<n>\d{{1,3}}))(?= (?:down |back |off )?(?:to|at) {_NUMBER})", (("x", r"number \g<n>, cut it"),)),
    # --- half of it, and no measure
    Plainer((" back half", " front half"), r"(?:on|in|along|over|down|across|for|of) the (?P<x>(?:back|front) half)(?! (?:an? )?inch)(?![\w'-])", (("x", "far side"),)),
    # --- boxes that are none of his, and tape on what is none of his
    Plainer((" box ", "box "), r"(?<![\w'])(?:(?:vav|junction|pull|tool|gang|electrical|j|fan|lock|shipping|cardboard|staple|parts|fuse|breaker|panel) box(?:es)?(?P<x> (?:number )?\d{1,3})(?! by)|(?:room|suite|floor|bay|level|unit) (?:number )?\w+,? (?P<y>box (?:number )?\d{1,3})(?! by))(?=[.,;]|$| and | on | in )", (("x", ""), ("y", ""))),
    Plainer((" tape on ", " tape across", " tape over", " tape around"), r"(?:^|(?<=[.!?;:,] ))(?P<x>(?:there's |they've got |they got |saw |got )?(?:some |a piece of |a strip of |the |that )?(?:painter's|masking|blue|caution|electrical|red|danger|their|his|painters|yellow) tape (?:all )?(?:on|across|over|around) (?:the|a|his|their) (?:wall|floor|door|window|glass|pipe|ladder|truck|cart|light|fixture|opening|doorway|stairs|hallway|handle|cord|conduit|hose|trim|baseboard|ceiling|grid|column|frame)s?)(?=[.,;!]|$| and | but )", (("x", ""),)),
)
