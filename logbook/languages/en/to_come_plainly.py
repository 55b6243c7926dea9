"""English of work that waits, told by asking whether it is needed or by what would have been: "should it be rubbed? I guess so", "would be done if the roll hadn't ended"."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.plainer import Plainer

_IT = r"(?:it|this|that|this one|that one|she|they|the (?:tape|seams?|joints?|flap))"
_ACT = r"(?P<a>rubbed(?: down)?|taped|stapled|wiped(?: down)?|trimmed|burnished)"
_ACTING = r"(?P<a>rubbing|taping|stapling|wiping|trimming|a rub(?: down)?|rubbed(?: down)?|taped|stapled|wiped|tape|staples|vanes)"
_YES = r"(?:(?:well|oh|hm|hmm|um|uh),? )*(?:i (?:guess|suppose|reckon|think)(?: so| it does| it should| that's right)?|yeah|yes|yep|probably|i'd say so|sure|of course|it does|it should|supposed to|afraid so)"
_NOT_DONE_SINCE = r"(?![^?]{0,50}?\b(?:did|it is|it's (?:been )?(?:done|rubbed|taped|stapled)|so i|already|is done)\b)(?=[.,;!]|$)"
_DAY = r"(?:tomorrow|later|tonight|monday|tuesday|wednesday|thursday|friday|in the morning|next week|after lunch|this afternoon)"
_WOULD = r"(?:would(?:'ve| have)|woulda|'d(?: have|'ve)|could(?:'ve| have)|coulda|would|could) (?:be |been )?(?:all )?(?:done|finished|closed(?: up)?|complete|wrapped up|buttoned up|through)\b[^.;?!]{0,40}?"
_GAVE_OUT = r"(?:hadn't|had not|didn't|wasn't|weren't)(?: \w+)? (?:ended|end|run (?:out|dry|short)|quit|given out|give out|died|die|jammed|jam|locked up|gone|left|out|busted|broke|broken|empty)(?: on (?:me|us|him))?(?: (?:again|halfway|early|at noon))?"
_ON_ME = r"(?:the |my |that |our )?(?:{of})"
_SHORT = r"if (?:i|we|they) (?:hadn't|had not) (?:run (?:out|short) of|been (?:out of|short on|short of)) (?:{of})"


def _would(of: str, means: str) -> Plainer:
    what = rf"if {_ON_ME.format(of=of)} {_GAVE_OUT}|{_SHORT.format(of=of)}|but (?:i|we|they) (?:ran out of|ran short of|was out of|were out of) (?:{of})|but {_ON_ME.format(of=of)} (?:ended|ran out|gave out|quit|died|jammed)(?: on (?:me|us))?"
    return Plainer(("would", "'d have", "'d've", "could'", "coulda", "could have"), rf"(?P<x>{_WOULD}(?:{what}))(?=[.,;!]|$)", (("x", means),), unless=r"\b(?:sooner|faster|quicker|earlier)\b", beside=("hadn't", "had not", "didn't", "wasn't", "weren't", "but "))


_SIDE = r"(?:(?:top|bottom|left|right|back|front|far|near|last|fourth|third|other|long|short|one|blind) (?:side|seam|end|joint|edge|corner|half|cheek|one)|top|bottom|underside|back|heel|throat)"
_FIRST = r"(?: (?:first thing|morning|afternoon))?(?:,? (?:when|once|as soon as) [^.;,?!]{3,40}?)?"

_PART_WORD = r"(?:seams?|joints?|flap|ends?|sides?|rest|others?|edges?|corners?)"
_ANY_PART = r"(?:(?:female|male|trunk|branch|tap|collar|inlet|outlet|big|small|left|right|far|near|back|top|bottom|last|other|fourth|long|short) (?:side|end|seam|joint|edge|corner|half|foot|bit|one|part|leg)|branch|trunk|tap|tap-?in|heel|throat|top|bottom|back|underside|corners?|ends|flaps?|seams?|last (?:foot|few inches|couple of feet|bit))"
_GOES_ON = r"(?=[.,;!?]|$| (?:my|the|it's|i|we|so|but|and|because|cause|since|he|she|they|there|that's|tomorrow|after|when|once|yet|still|anyway)(?![\w']))(?! (?:the|my) (?:tap|rub|stapl))"
_GETS = r"(?:get|do|hit|finish|catch|pick up|go back for|come back for|tackle)"
_NO_REACH = r"(?:i|we)(?: just| really)? (?:can'?t|cannot|couldn'?t|could not)(?: even| quite)? (?:reach|get (?:at|to|in|up|around|behind|under|over)|fit)(?: (?:in|up|over|around|there|it|far enough))*"
_THEY = r"(?:i|we|you(?: guys)?|they|he|she|it|that|this|somebody|the [a-z]+(?: [a-z]+)?|[a-z]+)"
_COMES = r"(?:(?:'s|'re|is|are) (?:here|back|in|dry|done|ready|over|out of the way|free|open)|get|gets|find|finds|show|shows|come|comes|arrive|arrives|quit|quits|bring|brings|send|sends|warm|warms|dry|dries|stop|stops|finish|finishes|deliver|delivers|open|opens|land|lands|start|starts|clear|clears)(?![\w'])"
_NAMED = rf"(?:{KIND}|number) (?:number )?{NUMBER}"

_ONE = r"(?:it|this|that|this one|that one|them|the (?:\w+ )?(?:seams?|joints?|sides?|tape|flap|top|bottom|back|rest|tabs|tear|hole|end|ends)|(?:both|all|all four|the other|the last) (?:seams?|joints?|sides?|ends?))"
_WAY = r"(?: (?:down|up|off|on|out|in|over|all|good|too|then))*"
_WHEN = rf"(?:(?:first thing |sometime |early |some time |probably |maybe |come )?(?:on )?{_DAY}(?: (?:morning|afternoon|night|first thing|early))?|first thing(?: tomorrow| in the morning| monday)?|(?:when|once|as soon as) (?:i|we) (?:get back|come back|get (?:more|another|some|the)[^.,;!?]{{2,30}})|after (?:break|dinner|coffee|work)|before (?:i|we) (?:go|leave)(?: home)?)"

_DONE = r"(?:taped|stapled|rubbed(?: down| out)?|wiped(?: down)?|trimmed|sealed|patched|fixed|mended|repaired|closed|finished)(?![\w])"

ENGLISH_TO_COME_PLAINLY = (
    # --- "when I get more staples straight nine gets stapled": what a time to come brings
    Plainer(
        (" gets ",),
        rf"(?:^|(?<=[.!?;] ))(?:(?:so|and|but|well|then|now|okay),? )*(?:when|whenever|once|as soon as|soon as|the minute|the day) {_THEY} ?{_COMES}(?:(?!{_NAMED})[^.?!;]){{0,50}}?(?P<y>,?) {_NAMED}(?P<x> gets)(?= (?:(?:its|the|some|all|fully|finally) )*(?:taped|stapled|rubbed|wiped|trimmed|patched|fixed|closed|sealed|finished|vanes|tape|staples|mastic|tabs)(?![\w']))",
        (("y", ","), ("x", " will get")),
        beside=("when", "once ", "soon as", "the minute", "the day"),
    ),
    Plainer((" get ",), rf"(?:i|we)(?P<x>(?: really| probably| still)* (?:should|ought to|oughta|'d better|had better)(?: really| probably| still)*) get (?:it|that|this one|the (?:\w+ )?{_PART_WORD}|{_SIDE}|the {_SIDE})(?: all)? (?:rubbed|taped|stapled|wiped|trimmed)(?![\w'])", (("x", " still have to"),), beside=("should", "ought", "better")),
    Plainer(("tomorrow", "morning", "later", "day ", "after lunch", "next week"), rf"(?:and|but|then|,|\.) (?P<x>(?:then )?{_DAY}{_FIRST},? (?:i|we)(?:'ll| will)? {_GETS} )(?:the |that |its )?{_SIDE}(?P<y>,? (?:which |that |where )?{_NO_REACH} to (?P<v>tape|rub|staple|wipe)(?: (?:down|it))?)(?=[.,;!]|$)", (("x", ""), ("y", r", i still have to \g<v> it")), beside=("reach", " get ", " fit ")),
    Plainer(("tomorrow", "morning", "later", "day ", "after lunch", "next week"), rf"(?:and|but|then|,|\.) (?P<x>(?:then )?{_DAY}{_FIRST},? (?:i|we)(?:'ll| will)? {_GETS} )(?:the |that |its )?{_SIDE}(?P<y>)(?=[.,;!]|$| (?:and|where|that|which|i)\b)", (("x", ""), ("y", " tomorrow"))),
    Plainer((" bare", " naked"), r"(?P<x>(?:that |which |this |so that |it )?(?:leaves|leaving|leave)(?: me| us)?(?: with)? )(?:just |only )?(?P<s>(?:the |that |one |a |my )(?:\w+ )?(?:side|seam|end|joint|edge|corner|cheek|half)s?)(?P<y> (?:bare|naked))\b(?P<z> (?:till|until) [^.,;?!]*)?", (("x", ""), ("y", " is bare"), ("z", ""))),
    Plainer((" bare", " naked"), r"(?:side|seam|end|joint|edge|corner|cheek|half)(?P<x> (?:stays|stayed|stands|remains|sits|has to stay|will stay|'ll stay|goes) (?:bare|naked))\b(?P<z> (?:till|until) [^.,;?!]*)?", (("x", " is bare"), ("z", ""))),
    Plainer(("should ", "shouldn't ", "must ", "ought "), rf"(?P<x>(?:should|shouldn't|must|ought) {_IT}(?: to)? (?:be|get) {_ACT}(?: too| first| as well)?\? {_YES}){_NOT_DONE_SINCE}", (("x", r"still has to be \g<a>"),), beside=("?",)),
    Plainer(("need ", "want ", "have to be "), rf"(?P<x>(?:does|do|doesn't|will|would) {_IT} (?:still )?(?:need|want|have to be|need to be)(?: any| the| some)? {_ACTING}(?: too| first| as well)?\? {_YES}){_NOT_DONE_SINCE}", (("x", r"still needs \g<a>"),), beside=("?",)),
    Plainer(("rub it?", "tape it?", "staple it?", "wipe it?", "rub it down?", "trim it?"), rf"(?P<x>(?:(?:did|do|should|will) (?:i|we|you) )?(?P<a>rub|tape|staple|wipe|trim) it(?: down| off)?\? (?P<d>{_DAY}))(?=[.,;!]|$)", (("x", r"i'll \g<a> it \g<d>"),)),
    _would("roll|tape|foil|roll of tape", "is not taped, out of tape"),
    _would("stapler|staples|staple gun", "is not stapled, out of staples"),
    # --- "the trunk is rubbed, the branch I still have to do", "… the branch I didn't do": the part stands first, and the act was told before
    Plainer(
        (" haven't", " still need", " have to ", " gotta ", " got to ", " need to "),
        rf"(?P<x>(?:the|that|its) {_ANY_PART},? (?:still needs?(?: it| that| one| doing| to be done)|(?:i|we)(?:'ve| have)?(?: just| really)? (?:(?:still |yet )?(?:gotta|got to|have to|need to|still have to|still need to|still gotta) (?:do|hit|get(?: to)?|finish|go over|catch)|(?:haven't|have not) (?:yet )?(?:done|gotten to|got to|hit|finished))))(?: yet| still)?{_GOES_ON}",
        (("x", "the bottom still needs it"),),
        beside=("taped", "rubbed", "stapled", "rubbing"),
    ),
    Plainer((" didn't do", " never did", " didn't hit"), rf"(?P<x>(?:the|that|its) {_ANY_PART},? (?:i|we)(?: just| really)? (?:didn't|never) (?:do|did|hit)){_GOES_ON}", (("x", "the bottom isn't"),), beside=("taped", "rubbed", "stapled", "rubbing")),
    # --- what it could stand, begs for, is too high for: "straight nine could stand to be rubbed down"
    Plainer(
        (" to be ", " to get ", " being ", " getting "),
        rf"(?<![\w])(?P<x>(?:could (?:really |sure )?(?:stand|use)|(?:could|can) do with|wouldn't mind|would like|'d like|begs?|(?:is|'s|just|still|sits there) (?:just |still )?(?:begging|asking|dying|crying out|screaming|aching|itching|hoping|overdue|long overdue)|cries out|deserves?|(?:is|'s) (?:on|in|still on|next on) (?:the |my |our )?(?:list|line|queue|schedule|lineup)) (?:to be|to get|being|getting)(?: (?:all|good and|properly|finally))*)(?= {_DONE})",
        (("x", " still has to be"),),
    ),
    Plainer((" to be ", " to get "), rf"(?<![\w])(?:is|'s|was)(?P<x> (?:meant|intended|destined) to (?:be|get)|(?<=was) to be)(?= {_DONE})(?! (?:and|but|yet))", (("x", " supposed to be"),)),
    Plainer((" to be ", " to get "), rf"(?<![\w])(?:is|'s|was|it's)(?: (?:way|just|much|still|all))* too [a-z]+(?: [a-z]+)?(?P<x> (?:for (?:me|us|anybody) )?to (?:be|get))(?= {_DONE})", (("x", ", it's not"),)),
    Plainer((" do with ",), r"(?P<x>(?:could|can) (?:sure |really )?do with)(?= (?:some |a little |a bit of |more |a )?(?:tape|taping|staples|stapling|vanes|mastic|rub(?:bing)?(?: down)?|wiping|wipe|trimming)(?![\w]))", (("x", "still needs"),)),
    Plainer((" to be ", " to get "), rf"(?P<x>(?:refuses|refused) to (?:be|get))(?= {_DONE})", (("x", "isn't"),)),
    # --- what should have been done to it, and was not
    Plainer(
        ("shoulda", "should've", "should have", "should of", "ought to have", "oughta have", "ought to've", "ought've"),
        rf"(?:{_NAMED}|(?<=^)(?:it|this one|that one)|(?<=[.!?;,] )(?:it|this one|that one)|they|(?:the |that |its |my )?(?:seams?|joints?|flap|tear|rip|hole))(?:,| that)? (?P<x>(?:really |probably |sure )?(?:shoulda|should(?:'ve| have| of)|ought to(?:'ve| have)|oughta have|ought've) (?:been|gotten|got)(?: (?:all|really))*)(?= {_DONE}(?:(?P<z>,? and) {_DONE})?(?: (?:down|up|with [a-z0-9' -]+?))?(?P<y>(?: (?:yesterday|by now|already|last (?:week|night)|first|long ago|(?:a long time|hours|days|a week) ago|this morning|earlier|monday|tuesday|wednesday|thursday|friday|before (?:i|we|it|they|lunch|the)[^.?!,;]*))?)(?:[.;,!]| but |$))(?![^.?!]*(?<![\w'])(?:and|so|then) (?:it|they|this one|she|i|we)(?:'s)? (?:is|was|has|got|were|are|did|have|just|finally|taped|stapled|rubbed|now)(?![\w']))",
        (("x", "would've been"), ("y", ""), ("z", " and would've been")),
        unless=r"(?<![\w'])(?:i|we) (?:said|told|meant|called)(?![\w'])",
    ),
    Plainer((" must",), rf"(?:{_NAMED}|it|this one|that one)(?:,| that)? (?P<x>must(?:'ve| have| of) (?:been|gotten|got))(?= {_DONE})", (("x", "is probably"),)),
    # --- as a note to himself: "stapled and taped, rub it down tomorrow morning"
    Plainer(
        ("rub ", "tape ", "staple ", "trim ", "wipe ", "patch ", "bend ", "fold ", "put ", "get ", "squeegee ", "burnish "),
        rf"(?:^|(?<=[.,;] ))(?:(?:and|but|then|so|just|gotta|must) )*(?P<x>)(?:(?:rub|tape|staple|trim|wipe|patch|squeegee|burnish)(?: {_ONE}{_WAY}|(?: (?:down|up|off|over))+)|(?:bend|fold) (?:the |those |its )?tabs{_WAY}|(?:put|get) (?:the |its |in the )?(?:turning )?(?:vanes|tape|staples|tabs)(?: (?:in|on|down|over))*) {_WHEN}(?=[.,;!]|$)",
        (("x", "still have to "),),
        beside=("tomorrow", "morning", "later", "tonight", "day", "after ", "week", "first thing", "when ", "once ", "as soon", "before "),
        unless=r"(?:said|says|told me|told us|wants? (?:me|us)|asked|like|did it|done it|went ahead|ended up|anyway|already)(?![\w'])",
    ),
    # --- "must be taped yet", "is to be rubbed still"
    Plainer((" be ",), r"(?P<x>(?:(?:is|are|was|'s|'re) )?(?:must|to|supposed to|meant to)(?: still)? be) (?:taped|stapled|rubbed(?: down)?|trimmed|wiped|patched|sealed|fixed)(?: (?:up|down))?(?P<y> (?:yet|still))(?=[.,;!]|$)", (("x", "still has to be"), ("y", "")), beside=(" yet", " still")),
    Plainer(("got to be ", "gotta be ", "got to get ", "gotta get "), r"(?!(?:everything|it all|they all|that all)(?![\w]))[\w-]+(?P<x>(?: still)?(?:'s|'ve| has| have)(?: still| just)* (?:got to|gotta)(?: still)? (?:be|get)) (?:taped|stapled|rubbed(?: down)?|trimmed|wiped|patched|sealed)(?: (?:up|down))?(?P<y> (?:yet|still))?(?=[.,;!]|$| (?:tomorrow|later|after|when|and|but|before)(?![\w']))", (("x", " still has to be"), ("y", ""))),
)
