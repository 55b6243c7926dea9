"""What a polite man puts before, between and behind what he has to say, and the plain words that are left without it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_SAY = (
    r"(?:(?:let|make) you (?:know|aware)|inform you|tell you|advise you|notify you|report(?: back)?|mention|point out|state|confess|admit|add|note|record|remark|draw your attention to the fact|call your attention to the fact"
    r"|bring (?:it )?to your attention|have it on record|put on record|share)"
)
_THAT = r"(?:(?: (?:here|also|now|to you|for the record|as well))*(?:,? that|[,:])? )"
_AT_ONCE = r"(?! (?:the|a|an|any|me|him|them|to|it|if|about|what|when|how|your|no|in)(?![\w']))"  # "report it", "add the tape": that is what he would like to do
_OF_ACTS = (("taping", "taped"), ("stapling", "stapled"), ("rubbing", "rubbed"), ("wiping", "wiped"), ("trimming", "trimmed"), ("sealing", "sealed"), ("patching", "patched"))
_NUMBER = r"(?:\d+(?:[ -]\d+/\d+|\.\d+)?|(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?: and (?:a|an|one|three) (?:half|quarter|quarters))?)"
_PROPER = r"(?:proper|right|good|foil|real|listed|correct|aluminum|silver|other|181\S*|special|approved|usual)"
_THINGS = r"(?:(?:turning |the |any |its )*(?:vanes?|tape|staples|mastic|tabs))"

ENGLISH_COURTESIES = (
    Plainer(("please ", "kindly "), r"(?:^|(?<=[.!?;] )|(?<=, ))(?P<x>(?:please|kindly)(?: (?:do|also|just|kindly|please))? (?:note|be advised|be aware|be informed|take note|be so kind as to note|take notice)(?: (?:here|also))?(?:,? that|[,:])? )", (("x", ""),)),
    Plainer(("to ",), rf"(?:^|(?<=[.!?;,] ))(?P<x>(?:(?:but|and|so|now|sir|hello|hi),? )?{_I}(?:'d| would| should| wish| want| need| have| must| just| am| 'm|'m| felt| feel)(?: (?:also|just|like|only|only want|sorry|obliged|bound|glad|happy|pleased|writing|calling|here|afraid|wish))*(?: to)? {_SAY}{_AT_ONCE}{_THAT})(?=\S)", (("x", ""),)),
    Plainer(("you should", "you ought", "you must", "you need", "you might", "you may", "you'd better", "you will want", "you'll want"), r"(?:^|(?<=[.!?;,] ))(?P<x>(?:(?:and|but|also),? )?you(?:'d| should| ought to| must| need to| might(?: want| like)? to| may(?: want| like| wish)? to| will want to|'ll want to)(?: (?:also|like to|better|probably))* (?:know|be aware|be told|be informed)(?! (?:better|if|what|how|who|about|the|when)(?![\w']))(?:,? that|[,:])? )", (("x", ""),)),
    Plainer(("if you'll", "if you will", "if i may", "if i might", "if you'd", "if you don't mind", "if you would", "if you please", "if it please"), r"(?<=,)(?P<x> (?:and |but )?if (?:you'll|you will|you'd|you would|you don't mind|you please|it pleases?|i may|i might|you can)(?: (?:me|my|pardon|excuse|forgive|allow|permit|saying|say|so|be|ask|the|bold|delay|language|french|you|be so bold))*,)(?= )", (("x", ""),)),
    Plainer(("kindly ",), r"(?:^|(?<=[.!?;] ))(?P<x>kindly)(?= (?:have|tape|staple|rub|wipe|trim|put|make|see|send|bring|get|ask|tell|let|do|check|hang|leave|use|fix|patch|arrange|ensure|remind)(?![\w']))", (("x", "please"),)),
    *(Plainer((f"of {doing}",), rf"(?P<x>(?:taken|took|take|had|gone to) the (?:liberty|trouble|time|opportunity|chance) of {doing})(?![\w'])", (("x", done),)) for doing, done in _OF_ACTS),
    # --- how far apart, in so many words
    Plainer(("interval", "centers", "centres", "spacings"), rf"(?P<x>(?:at|in|on|with)(?: (?:about|roughly))?) (?P<m>{_NUMBER}(?:[- ]inch(?:es)?|\"| in\.?| foot| feet)?)(?P<y>,? (?:intervals?|centers|centres|spacings))(?![\w'])", (("x", "every"), ("y", ""))),
    Plainer(("intervals of", "interval of"), rf"(?P<x>(?:at|in|with) (?:an |regular )?intervals? of(?: (?:about|roughly))?) (?={_NUMBER})", (("x", "every"),)),
    # --- what was left out, and what a piece still waits for
    Plainer(("omit",), rf"(?P<x>{_I} (?:have |had |'ve )?(?:omitted|omit)) (?={_THINGS}(?![\w']))", (("x", "i left out"),)),
    Plainer(("omitted",), rf"{_THINGS} (?P<x>(?:was|were|is|are|has been|have been|had been|got) omitted)(?![\w'])", (("x", "were left out"),)),
    Plainer(("await",), r"(?P<x>(?:still |yet |is |are )*await(?:s|ing)?(?: (?:its|the|their|some))?) (?=(?:tape|staples|vanes|taping|stapling|rubbing|mastic)(?![\w']))", (("x", "still needs"),)),
    Plainer(("i will be ", "we will be ", "i'll be ", "we'll be ", "i shall be ", "i shall ", "we shall "), rf"the (?P<t>tape|taping|staples|vanes|rubbing)(?P<x>,? (?:which |that )?{_I}(?:'ll| will| shall)(?: be)? (?:appl(?:y|ying)|put(?:ting)?|do(?:ing)?|add(?:ing)?|attend(?:ing)? to|see(?:ing)? to|install(?:ing)?|fit(?:ting)?|get(?:ting)? to)(?: (?:it|them|in|on))*)(?![\w'])", (("x", r" still to do"),)),
    # --- what he asks leave for
    Plainer((" if i ", " if we "), rf"(?P<x>(?:would|will|is|might) (?:it|that) be (?:all ?right|okay|ok|fine|acceptable|possible|a problem|any trouble|too much trouble)(?: with you)? if {_I}) (?P<v>taped|stapled|left|used|rubbed|put|skipped|hung|wiped)(?![\w'])", (("x", "may i"),)),
    Plainer(("hoping", "hoped", "wondering"), rf"(?P<x>{_I} (?:was|were|had been|am|'m)?(?: just)? ?(?:hoping|hoped|wondering if) (?:that )?{_I} (?:could|can|might|may)) (?=leave|tape|staple|skip|use|put|hang|do)", (("x", "can i"),)),
    # --- why it was another tape: the one that did not come is not on it
    Plainer(("cloth", "duct ", "masking", "packing"), rf"(?:cloth|duct|masking|packing)(?: tape)?[^.?!]{{0,60}}?(?P<x>,? (?:since|because|as|'cause|cause|for|and|but|seeing as)? ?(?:the|our|my) {_PROPER} (?:tape|stuff|kind|one|rolls?)(?: (?:had|has|have|is|was|did|hasn't|hadn't|isn't|wasn't|didn't|never|not|been|yet|still|all|ran|gone|out|come|came|arrived?|in|delivered|here|finish|finished|on (?:order|backorder|the truck)|run|shown|showed|up|there|left|available|of stock|on site))+)(?=[.,;!]|$)", (("x", ""),)),
    Plainer(("cloth", "duct ", "masking", "packing"), r"(?P<x>(?:(?:just|plain|old|regular|ordinary|normal|cheap|standard|simple|basic|common|usual) )+)(?=(?:gray |grey |silver )?(?:cloth|duct|masking|packing) (?:tape|kind))", (("x", ""),)),
)
