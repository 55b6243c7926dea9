"""English that tells of stuff he did not use: "two-inch tape's no good, so it got the three-inch", "found three-eighths staples, put them back". Patterns over sketches of sentences."""

from __future__ import annotations

from logbook.languages.told import Aside

_SIZE = r"(?:[\w/-]*(?:inch(?:es)?|eighths?|quarter|half|sixteenths?|duct|cloth|masking|foil|short|narrow|no-?name)|\d[\d/\"-]*)"
_STUFF = rf"(?:(?:the|that|some|any|a box of|a roll of|the box of|the roll of) )*(?:{_SIZE} (?:(?:wide|leg|long|inch) )?<n>|(?:duct|cloth|masking|foil|packing|electrical|gaffer|silver) tape)"
_OTHER = r"(?<![\w-])(?!no |not )(?:[^ .?,;<]+[- ]inch|[^ .?,;<]+\"|\d[\d /-]*(?:in|inch)|181a|the (?:right|good|real|proper|listed|ul|wide|long) (?:stuff|ones|one|tape|<n>)|three|three and a half|half inch)(?![\w])"
_BAD = (
    r"(?: ?(?:'s|is|are|was|were|isn't|aren't|ain't))?(?: (?:just|really|always|way|simply))* (?:no good|no use|useless|junk|garbage|trash|worthless|illegal|too (?:narrow|short|thin|small|skinny|light|weak)|not (?:good|wide|long|strong|allowed|listed|legal)(?: enough)?|asking for trouble|against the \w+"
    r"|(?:won't|don't|doesn't|can't|never|will not|does not|do not) (?:do|hold|stick|work|cut it|pass|last|stay|count|grab)|peels|let go|lets go|dries out|dry out|falls? off)(?![\w'])"
)
_USED = r"(?<![\w'])(?:any(?:how|way)|all (?:i|we) (?:had|got)|it's what|that's what|(?:used|shot|ran|put|got|has|have|took) (?:it|them|that|those)(?! (?:right )?(?:back|out|away|aside))|went with (?:it|them|that|those)|had to|only (?:thing|width|ones?|kind)|but (?:i|we) (?:used|put|taped|stapled)|i'll|we'll|gonna|going to|tomorrow|later|monday|needs)(?![\w'])"
_IT = r"(?:it|them|that|those|the box|the roll|that box|that roll)"
_GIVEN = r"(?:found|they sent|sent|handed|gave|they had|had|there was|there were|grabbed|picked up|somebody left|someone left|left|was what i (?:found|grabbed|had)|were what i (?:found|grabbed|had)|brought|came with|got)"
_BACK = rf"(?:(?:put|sent|gave|took|threw|handed|shipped) {_IT} (?:right )?(?:back|out|away|aside)|(?:tossed|binned|returned|refused|ditched) {_IT}|(?:swapped|traded|changed|exchanged) {_IT}(?: out)? for|left {_IT} (?:in the|on the|there)|set {_IT} aside|(?:didn't|did not|wouldn't|would not) (?:use|touch|shoot|take|put on) {_IT})"

ENGLISH_REFUSED = (
    # --- stuff that is no good in general, and what he put on instead
    Aside(rf"(?P<x>{_STUFF}{_BAD}(?: ,? ?i know)?)(?![\w'])[^?]*?{_OTHER}", ("no good", "no use", "useless", "junk", "garbage", "trash", "worthless", "illegal", "too ", "not ", "n't ", "never", "trouble", "against", "peels", "lets go", "let go", "dries", "fall"), names=True, unless=_USED),
    # --- what he was given or found, and gave back
    Aside(rf"(?P<x>{_GIVEN}(?: (?:me|us|him))?(?: (?:a|some|the|only|first|nothing but))* {_STUFF})[^.?;<]*?[.,;]? ?(?:(?:and|but|so|then|i|we|,) )*{_BACK}", ("back", "out", "away", "aside", "tossed", "binned", "returned", "refused", "ditched", "swapped", "traded", "changed", "exchanged", "left", "use", "touch", "shoot", "take", "put on"), names=True, unless=_USED),
    Aside(rf"(?P<x>{_STUFF} (?:was|were) (?:all|what) (?:i|we|they|he) (?:found|had|grabbed|saw|got)[^.?,;<#]*)[^.?;<]*?[.,;]? ?(?:(?:and|but|so|then|i|we|,) )*{_BACK}", ("found", "had", "grabbed", "saw", "got"), names=True),
    # --- what there was, and what he waited for
    Aside(rf"(?P<x>all (?:they|we|i|he|the truck|the shop) had(?: (?:left|there|on the truck))? (?:was|were) {_STUFF})[^.?;<]*?(?:(?:and|but|so|then|i|we|,) )*(?:waited|held out|held off|hunted|went|drove|sent)[^.?;<]*? (?:for|on|get|got)(?: (?:the|some|a roll of))* {_OTHER}", ("waited", "held", "hunted", "went", "drove", "sent"), names=True),
)
