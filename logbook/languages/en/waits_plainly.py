"""English of an act that he was called from, and of what is all done but for one thing, as the plain words for them."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT as _COUNT
from logbook.languages.plainer import Plainer

_TAKEN = r"(?:(?:got|was|were|been|getting)(?: just| then)? (?:called|pulled|dragged|sent|yanked|taken|hauled|bumped|moved)(?: right)?|(?:he|they|boss|foreman|lead|office|the \w+) (?:called|pulled|dragged|yanked|took) (?:me|us)|(?:i |we )?had to (?:go|leave|run|quit|stop))(?: (?:away|off|out|over))*(?: (?:of|from|on|to|for))?(?: (?:the |that |this |another |a )?[\w-]+){0,3}?"
_BEFORE = r"before (?:i|we)(?:'d)?(?: (?:ever|even|could|had|was|were|got|around|a|chance|time|able|all|quite|to|the))*"
_WORK = r"(?:(?:the |its |my )?(?P<a>tape|taping|staples|stapling|rub(?:bing)?(?: ?down)?|vanes|trimming))"
_WELL = r"(?:good|done|finished|complete|fine|all set|closed up|together|ok|okay|ready)"
_BUT = r"(?:except|but|bar|barring|save|minus|other than|apart from|aside from|short of)(?: for)?"
_LEADS = r"(?:the |my |our )?(?:foreman|super|superintendent|boss|lead|office|gc|owner|supervisor|general|contractor|engineer)"
_LEADER = rf"(?:{_LEADS}|he|they|somebody|someone)"
_PULLED = r"(?:called|pulled|dragged|sent|yanked|hauled|bumped|moved|taken)"
_OFF_IT = rf"(?:right |clean |back )*(?:off|away|out)(?: of| from)? (?:it|that|this|this one|that one|the (?:job|piece|fitting)|(?:the )?{KIND}(?: (?:number )?\d+)?)"
_THINGS = r"(?:screws|washers|rivets|gasket|lid|door|flange|frame|hangers?|straps?|clips?|caulk|handle|latch)"

_NEXT_PIECE = r"(?:(?:up|in|on)(?: to| onto| with)?|into|onto|to|with) (?:the )?(?:number |piece |straight |elbow |tee |transition |offset |cap |plenum |wye |next |existing |trunk|main|riser|unit)"

ENGLISH_WAITS_PLAINLY = (
    # --- the joint to the next that waits
    *(
        Plainer(
            (f"{tie} ", f"{tying} ", f"{tied} "),
            rf"(?P<x>(?:i |we |it |and |but )*(?:still |just |only )*(?:(?:need|needs|have|has|got|gotta|want|wants|going|gonna have)(?: to)?(?: (?:be|get(?: it| this one)?))?|left to|yet to(?: be)?|to be) (?:{tie}|{tying}|{tied})(?: it| this one| this| that| her)?) (?={_NEXT_PIECE}|(?:(?:up|in|on)(?: to| onto)?|into|onto|to|with) (?:\d{{1,3}}|{_COUNT})(?![\w'/-])(?! (?:inch|in|by|feet|foot)))",
            (("x", f"haven't {tied} it"),),
            unless=r"(?:didn't|don't|doesn't|never) (?:need|have)|already",
        )
        for tie, tying, tied in (("tie", "tying", "tied"), ("hook", "hooking", "hooked"), ("connect", "connecting", "connected"), ("join", "joining", "joined"))
    ),
    Plainer(("before i", "before we"), rf"(?P<x>{_TAKEN} {_BEFORE} (?:finish(?:ed|ing)?|done with|get to|got to|start(?:ed)?(?: on)?|through with|do|did) {_WORK})(?=[.,;!]|$| (?:on|and|so)\b)", (("x", r"it still needs \g<a>"),), beside=("called", "pulled", "dragged", "sent", "yanked", "taken", "hauled", "bumped", "moved", "took", "had to")),
    Plainer(("pulled off", "taken off", "yanked off", "moved off"), rf"(?P<x>(?:i |we )?(?:got|was|were|been)(?: just| then)? (?:pulled|taken|yanked|moved) off(?: of)? (?:it|this|that|this one|that one) {_BEFORE}) (?:tape|staple|rub|trim)", (("x", "I never got to"),)),
    # --- who called him off the piece
    Plainer((" off", " away", " out"), rf"(?<!before )(?P<x>{_LEADER}(?: (?:then|just|had|went and|came and))* (?:(?P<v>called|pulled|dragged|yanked|hauled|sent|moved|bumped)|took) (?:me|us) (?={_OFF_IT}(?![\w'])))", (("x", "I got hauled "),), beside=(" me ", " us ")),
    Plainer((" by ",), rf"(?P<v>(?:i |we )?(?:got|was|were|been|gotten)(?: just| then)* {_PULLED}) {_OFF_IT}(?P<x> by {_LEADS}(?![\w']))", (("v", "I got hauled"), ("x", ""))),
    Plainer(("i got ", "i was ", "we got ", "we were "), rf"(?:i|we) (?:got|was|were)(?: just| then)* (?P<v>pulled|yanked|taken|moved) (?={_OFF_IT}(?![\w']))", (("v", "hauled"),), unless=r"before (?:i|we)"),
    Plainer(("bar ", "barring", "except", " but ", "save", "minus", "than ", "from ", "short of"), rf"(?<!not )(?P<x>(?:all )?{_WELL} {_BUT}) (?=(?:the |its |a few |two |one |some )*{_THINGS}(?P<y>)(?:[.,;!]|$| (?:and|which|that|on)\b))", (("x", "is not finished,"), ("y", "")), beside=("screw", "washer", "rivet", "gasket", "lid", "door", "flange", "frame", "hanger", "strap", "clip", "caulk", "handle", "latch")),
    # --- the time or the room for it that he never had
    Plainer(
        ("never ", "didn't ", "did not "),
        r"(?P<x>(?:never|didn't|did not)(?: (?:really|even|quite))? (?:had|have|got|get|left|leave|found|find|made|make) (?:a chance|the chance|time|the time|any time|room|the room|enough room|a minute|a way) to get (?:it|that|them|this one|her) (?P<v>rubbed(?: down)?|taped|stapled|wiped(?: down)?|trimmed|patched))(?![\w'])",
        (("x", r"didn't get it \g<v>"),),
    ),
    Plainer((" on order", " ordered", " backorder"), r"(?:vanes|tabs|straps|hangers)(?P<x> (?:are|is|were|was)(?: still| all)?) (?=on (?:back ?)?order|back ?ordered)", (("x", ""),)),
)
