"""English of what a coin goes through, and of joints that are no longer open or left as they were: "you could slide a quarter through", "there isn't now", "closed it with it still sticking out"; of joints set beside others: "not as tight as they should be, half an inch at the top"; and the plain words for it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_SLIDE = r"(?:slide|slip|fit|stick|drop|push|poke|shove|roll|pass|feed|get|put|lose)"
_LENGTH = r"(?:half an? inch|an? (?:half|quarter|eighth|sixteenth)(?: of an)?(?: ?-?inch)?|(?:half|quarter|eighth|sixteenth)(?: ?-?inch)|(?:three|five|seven) (?:quarters|eighths|sixteenths)(?: of an)?(?: inch)?|(?:one|two|an?|1|2) inch(?:es)?|\d+/\d+(?: (?:of an )?inch)?)(?![\w/])"
_ABOUT = r"(?:(?:about|maybe|like|say|call it|roughly|around|almost|nearly|close to|probably|i'd say|just|only|a good) )*"
_NOT_TIGHT = r"(?:not|isn't|aren't|wasn't|weren't|don't|doesn't|didn't|won't|wouldn't)"
_MEETS = r"(?:meet|fit|close|come together|pull up|pull together|butt(?: together)?|line up|go together|sit|be|come)"
_SHOULD = r"(?: as (?:on |in |with |at )?(?:the|my|that|most|any) \w+(?: \w+)?| as (?:it|they|that|i|you|we)(?:'d| had)?(?: (?:should|could|ought to|might|like|would like|want|wanted|hoped|used to|usually|would|are|were|is|was|have|be|been|do|did|get))*)"
_ENDS = r"(?:the (?:two )?(?:ends|pieces|sections|boards|panels|halves|sides)|them|the two)"
_JOINT = r"(?:joints?|seams?|ends?|corners?|lap)"

ENGLISH_JOINTS_SET_BESIDE = (
    # how wide it stands, without the word for it
    Plainer((" between ",), rf"there(?:'s| is| was)(?: still)* {_ABOUT}{_LENGTH}(?P<x>(?: (?:showing|of (?:nothing|space|air|room|daylight|light)|open|left))?)(?= (?:in )?between {_ENDS})(?! of (?:staples|tabs))", (("x", " gap"),)),
    Plainer((" off at the", " out at the", " shy at the", " apart at the"), rf"(?:it's|it is|they're|that's|joint's|joint is|ends are) {_ABOUT}{_LENGTH}(?P<x> (?:off|out|shy|apart))(?= at the (?:\w+ )?(?:joint|seam|corner|lap|butt))", (("x", " open"),)),
    Plainer((" as tight", " as snug", " as close", " so tight", " so snug", " as flush"), rf"{_JOINT}(?: (?:at|on) the \w+(?: \w+)?)?(?P<x>(?: just| still| really)* {_NOT_TIGHT}(?: (?:quite|really|all|even))*(?: {_MEETS})?(?: (?:up|together|in))* (?:as|so|that) (?:tight|snug|close|flush)(?:ly)?(?: up)?{_SHOULD}?)(?=,? (?:and |there's |it's |maybe |about |{_ABOUT}{_LENGTH}))", (("x", " has a gap"),), unless=r"not so tight as to"),
    Plainer(("tight", "loose"), rf"{_JOINT}(?: (?:at|on) the \w+)?(?P<x>(?:'s| is| are)(?: (?:not|n't)(?: (?:quite|all that|real|really|that|too|very|so))*|n't(?: (?:quite|all that|real|really))*) tight|(?: could be| could have been| could stand to be) tighter)(?=,? {_ABOUT}{_LENGTH}(?: (?:at|on|by|along|in) the |[.;!]|$))", (("x", " has a gap"),)),
    Plainer((" than ",), rf"(?<!last )(?<!other )(?<!next ){_JOINT}(?:'s| is| came out| ended up)(?: \w+)?(?P<x> (?:a (?:bit|little|hair|touch|lot) )?(?:looser|wider|sloppier) than (?:the (?:last|other|others|rest|ones? (?:on|before|next|at)|next|first|\w+ one)(?: (?:one|ones|joint|joints|piece|\d+|it))?(?: \d+)?|number \d+|usual|normal|it was))(?=[.,;!]|$| and | but )", (("x", " looser than"),)),
    Plainer((" than this",), rf"(?:last|other|next|first) {_JOINT}(?: on \w+)? (?:is|was) (?P<x>(?:looser|wider|sloppier) than this(?: one)?)(?=[.,;!]|$)", (("x", "different"),)),
    Plainer(("light",), r"(?<![\w'])(?:flash|trouble |work |drop )?light[^.;!?]{0,30}?,? (?:and |but )?(?P<x>nothing (?:comes|came|shows|showed|gets|got|shines|shone)(?: through| out)?)(?=[.,;!]|$)", (("x", "no gap"),)),
)

ENGLISH_GAPS_PLAINLY = (
    # a coin, no measure
    Plainer((" a quarter ",), rf"{_SLIDE}(?P<x> a quarter)(?= (?:right |clean |straight |all the way )*(?:through|into|between|inside|down|under|sideways|edgewise|on edge|in (?:it|there|that|the|edgewise|sideways|between)|in[.;,!]))", (("x", " a coin"),)),
    Plainer((" there isn't", " there ain't", " there's not", " there is not", " there's none", " there is none"), r"there (?:was|used to be) [^.?!;,]*?(?<![\w'])(?:gap|crack|opening|daylight|space)(?![\w'])[^.?!;]*[.;,!] (?P<x>(?:and |but |well )*there(?:'s none| is none| isn't| ain't|'s not| is not)(?: one| any| a gap)? (?:now|anymore|any more|any longer))(?=[.;!]|$)", (("x", "not anymore"),)),
    Plainer((" is now", "'s one now"), r"(?P<x>there (?:wasn't|was not|was no|wasn't any|was never)(?: an?)? )(?:gap|crack|opening)(?![\w'])[^.?!;]*[.;,!] (?P<y>(?:and |but |well )*there(?: is|'s one| is one) now,? (?:about |maybe )*)(?=(?:an? |one |three |five )?(?:quarter|half|eighths?|sixteenths?|inch|\d/\d+)(?![\w']))", (("x", "there is a "), ("y", "the gap is "))),
    Plainer(("sticking", "poking", "proud"), r"(?P<x>(?:(?:i|we) )?(?:meant|was going|were going|intended|planned|wanted) to (?:shave|trim|cut|slice)(?: it| that| them)?(?: off| back| flush)*[^.;!?]*? (?:with it |it's |it is |while it was )?still (?:sticking|poking|standing)(?: right)? (?:out|proud))(?=[.;,!]|$)", (("x", "the insulation is not trimmed"),), beside=("insulation", "fiber", "glass")),
)
