"""English for a piece on which he stopped before it was done, told without an act: "got pulled off it", "saving it for tomorrow", "not a hundred percent"."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.language import State

_DAY = r"(?:tomorrow|tonight|later|monday|tuesday|wednesday|thursday|friday|saturday|next (?:week|shift|time|trip|monday)|first thing|in the morning|the morning|this afternoon|after (?:lunch|break)|another day)"
_WHEN = rf"(?:(?:on|first thing|early|right|again|there|from there|sometime|for|come|bright and early) )*{_DAY}\b"
_PIECE = rf"(?:it|that|this|this one|that one|her|the {KIND})"
_NUMBERED = rf"(?:{_PIECE}|(?:the )?(?:{KIND} )?(?:number )?\d+)"
_PART = r"(?:(?:the |its |that |one )?(?:(?:other|far|near|last|long|short|top|bottom|left|right|back|front|inside|outside) )*(?:side|end|corner|seam|joint|edge|half|bottom|top|back|front|heel|throat|cheek|underside|last bit|last foot|last of it|rest(?: of it)?|others?))"
_MINE = rf"^(?:(?:and|but|so|then|i|i'm|i am|i'll|we|we're|we'll|will|be|gonna|going to|just|only|still|probably|guess|have to|gotta|had to|{_NUMBERED})[ ,]+)*"
_TAKEN = r"(?:called|pulled|dragged|sent|yanked|taken|hauled|bumped|moved)(?: (?:right|back|clean))?"
_STOPPED = r"(?:finish|finished|done|through|complete|wrapped|wrap|button|close|closed|seal|sealed|touch|touched|do|did)"
_AWAY = r"(?:got|get|gets|was|were|been|being|(?:he|they|boss|foreman|lead|office) (?:called|pulled|dragged|sent|yanked|took) (?:me|us))(?: just| then)?"

ENGLISH_WAITS_TOLD: tuple[State, ...] = (
    State(
        "(open)",
        None,
        (
            rf"{_AWAY}(?: {_TAKEN})? (?:away|off|out|over|onto|on to|down|up|to)\b[^.;]{{0,40}}? before (?:i|we)(?:'d| [\w']+){{0,5}}? {_STOPPED}\b(?! (?:the |its |with the )?(?:tap|stapl|rub|trim|van))",
            rf"(?:got|was|were|been)(?: just| then)? {_TAKEN} (?:away|off|out)(?: of| from)? {_NUMBERED}(?![^.;]*\b(?:for a|while|minute)\b)",
            rf"(?<!before they )(?<!before he )(?:pulled|called|dragged|yanked|took) (?:me|us) (?:away |off |out )(?:of |from )?{_NUMBERED}(?![^.;]*\b(?:for a|while|minute)\b)",
            rf"(?:taping|stapling|rubbing|wiping|trimming|closing)(?: (?:it|this|that|{_PIECE}|{_PART}|down|up|the seams?))* (?:when|and|but|till|until)(?: then)? (?:(?:i|we) (?:got|was|were) {_TAKEN}|(?:they|he|somebody|(?:the |my )?(?:foreman|boss|super|lead|office)) (?:called|pulled|dragged|yanked|hauled|sent|took) (?:me|us)) (?:away|off|out|over|onto|down|up|to)\b(?![^.;]*\b(?:for a|while|minute)\b)",
            rf"^(?:and|then|but|so|till|until|when)(?: then)?(?: i| we)? (?:got|was|were) {_TAKEN} (?:away|off)(?: (?:to|for|by|halfway|in the middle|part ?way)\b[^.;]*)?$",
            rf"{_MINE}(?:saving|keeping|leaving|saved|left|save|keep|leave) (?:{_PIECE}|{_PART})(?: (?:as is|like that|there))? (?:for|till|until) {_WHEN}",
            rf"{_MINE}(?:picking|pick) (?:(?:{_PIECE}|{_PART}|things) )?(?:back )?up(?: (?:again|there|where i left off|where i stopped|where we left off))*,? {_WHEN}",
            rf"{_MINE}(?:finish|finishing|wrap up|wrapping up|do|doing|get|getting|hit|hitting|knock out) (?:{_PIECE}|{_PART})(?: (?:up|off|out))?,? {_WHEN}(?: (?:morning|afternoon))?$",
            rf"{_MINE}the (?:screws|washers|caps?|lid|door|gasket|flange|clips?)(?:'s| is| are|'re)?(?: (?:for|next|coming))* (?:tomorrow|monday|in the morning|next week)(?: (?:morning|afternoon))?$",
            r"(?<!i'm )(?<!i am )(?<!we're )(?<!he's )(?<!was i )(?:isn't|is not|not|ain't|aren't)(?: (?:quite|yet|all|at|still|really|exactly|a|one|anywhere near|close to|even))* (?:hundred|100) ?(?:percent|per cent|%)(?! (?:sure|certain|on|about|positive|happy|clear|confident|aluminum|straight|of the (?:time|way)))",
            r"(?:(?:fifty|sixty|seventy|eighty|ninety)(?:[ -]\w+)?|[5-9]\d) ?(?:percent|per cent|%) (?:of the way (?:there|done)|done|finished|complete|there|through|of it)\b",
            rf"{_PART}(?: of (?:it|this one))?(?:'s not| is not| isn't| ain't| aren't| hasn't been| never got)(?: (?:quite|all|been|really|even))* (?:done|finished|touched|closed up)\b",
        ),
        pending=True,
        righted=r"(?:came|went|got|gotten|been|going) back|back (?:at|on) it|finished it|finished (?:up|her)|got it (?:done|finished|all)|(?:it's|is|all|now) (?:all )?done|done now|wrapped it up|took care of it|knocked it out|buttoned it up|caught up|did it (?:anyway|today|after all)|went ahead",
        cues=("called", "pulled", "dragged", "yanked", "hauled", "sent ", "taken", "bumped", "moved", "took ", "saving", "saved", "keep", "leav", "left", "pick", "tomorrow", "tonight", "later", "day", "next", "first thing", "morning", "afternoon", "lunch", "hundred", "100", "percent", "per cent", "%", "done", "finished", "touched", "closed up"),
        part="whole",
    ),
)
