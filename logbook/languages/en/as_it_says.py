"""English of what the box, the boss or the first try had it, and what it is: "two and a half, or so the box says, I measured one and it's two".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.measured import _M
from logbook.languages.plainer import Plainer

_L = rf"(?:half an?|half|(?:an?|one|three|five|seven)[- ](?:half|quarters?|eighths?|sixteenths?)|{_M}(?: and (?:an? half|(?:three|five|seven)[- ](?:quarters|eighths|sixteenths)))?)(?:[- ]inch(?:es)?| inch)?"
_BOX = r"(?:box|label|sticker|carton|wrapper|package|packaging|invoice|packing slip|core|bag|sleeve|tag)"
_TOOL = r"(?:a|the|my) (?:tape measure|tape|ruler|rule|stick|scale)"
_ONE = r"(?:it|them|that|those|one|a few|a couple|one of them|two of them|a couple of them|one or two)"
_MEASURED = rf"(?:i|we) (?:(?:laid|put|held|ran|stuck|hooked|dropped|set) {_TOOL}(?: down)? (?:on|to|across|against|over) {_ONE}|(?:measured|checked|remeasured)(?: {_ONE})?)(?: (?:myself|too|though|today))*"
_IT_IS = r"(?:it's|it is|it was|they'?re|they are|they were|that's|that one's|i get|i got|it came to|it comes to|it measures)(?: (?:really|actually|more like|only|just|about))*"
_USED = r"(?:i|we) (?:used|ran|put on|went with|put|grabbed|had to use|ended up with|ended up using)"
_WIDE = r"(?:two(?: and a half)?|three|2(?:[ -]1/2|\.5)?|3)"
_SAY_SO = rf"(?:or so|or|at least|so|according to|per|going by|is what|that's what|by|if you believe) (?:the |what (?:the |it says on the )?)?{_BOX}(?: (?:says|said|reads|claims|has it|says anyway))?"

ENGLISH_AS_IT_SAYS = (
    # --- "washers two and a half, or so the box says, I measured one and it's two"
    Plainer((" box", " label", " sticker", " carton", " wrapper", " packag", " invoice", " slip", " core", " bag", " sleeve", " tag"), rf"(?<![\w'-])(?P<x>{_L}(?: wide| long| across)?,? {_SAY_SO}[,.;:]+ (?:but |and |well |only |then )*{_MEASURED}(?:[,.;]|,? and|,? but)? ?(?:and )?{_IT_IS} )(?={_L})", (("x", ""),)),
    Plainer((" box", " label", " sticker", " carton", " wrapper", " packag", " invoice", " slip", " core", " bag", " sleeve", " tag"), rf"(?<![\w'-])(?P<x>{_L} )(?:staples?|legs?|washers?|tape|board)(?P<z>,? {_SAY_SO}[,.;:]+ (?:but |and |well |only |then )*{_MEASURED}(?:[,.;]|,? and|,? but)? ?(?:and )?{_IT_IS} )(?={_L})", (("x", ""), ("z", " "))),
    # --- "told us to use three inch. I used two inch"
    Plainer(
        (" use", " ran ", " put", " went with", " grabbed", " ended up"),
        rf"(?:told (?:us|me)|said|says|wants?|wanted|asked (?:us|me)|calls? for|called for|supposed to be|supposed to use|spec(?:'s| is)?)(?: (?:to|for|use|run|be|is|it|us|me|put|on|the))* {_WIDE}(?:[- ]inch)?(?: (?:on everything|everywhere|for this))?[.,;] (?:but |and |well |so )*{_USED} (?:the |a )?{_WIDE}(?:[- ]inch)?(?P<y>)(?=[.,;!]| because| cause|$)",
        (("y", " tape"),),
        beside=("tape", "181a"),
        unless="board|washer|collar",
    ),
    # --- "first time around I used the two-inch, inspector made me strip it, second time around I used the three-inch"
    Plainer(
        ("second ", "next ", "this time"),
        r"(?:^|(?<=[.!?:;,] ))(?P<x>(?:the |my )?first (?:time|go|go-around|try|pass)(?: around| round| through)?,? (?:(?!\d\d)[^.?!])*?(?:strip|pull|tear|tore|torn|redo|redid|peel|rip|took it|take it|start(?:ed)? over|left|forgot|missed|skipped|didn't)(?:(?!\d\d)[^.?!])*?[,.;] (?:and |so |then |but )*(?:(?:the |my )?(?:second|next) (?:time|go|go-around|try|pass)(?: around| round| through)?|this time)(?: around)?,? )(?=(?:i|we|it) )",
        (("x", ""),),
    ),
)
