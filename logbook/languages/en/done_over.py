"""English that tells that what is on the piece will come off or be done anew: "it is to be pulled off and redone", "I'll strip that"."""

_DAY = r"(?:tomorrow|tonight|later|(?:on )?(?:mon|tues|wednes|thurs|fri|satur|sun)day|next (?:week|shift|\w+day)|first thing|in the (?:morning|afternoon)|this (?:afternoon|evening|week)|after (?:lunch|break|the weekend))"
_LEADS = r"(?:(?:and|but|so|then|well|now|also|please note|as for that|of course|however|therefore|i know) )*"
_SPOT = r"(?:tape|foil|staples?|stapling|taping|seams?|joints?|flap|strip|run|piece|whole (?:thing|seam|joint|piece)|(?:top|bottom|left|right|back|front|far|near|other|last|short|long) (?:side|seam|end|joint|edge|one)|wrong (?:one|stuff|tape)|stuff)"
_WHAT = rf"(?:it|it all|all of it|that|that one|this|this one|they|these|those|them|(?:the )?(?:\w+ )?{_SPOT})"
_ON = r"(?: (?:on|at|of|along|under) (?:it|that|there|the \w+(?: \w+)?|\w+ [\w-]+))?"
_MUST = r"(?:is to|are to|has to|have to|had better|has got to|have got to|'s got to|'s to|'s gotta|needs? to|gotta|got to|must|should|will|'ll|is going to|are going to|'s going to|'s gonna|is gonna|gonna|wants? to|is supposed to|is due to|gets? to)"
_I_MUST = r"(?:am to|'m to|are to|'re to|have to|'ve got to|have got to|need to|must|should|will|'ll|am going to|'m going to|'m gonna|are going to|'re going to|'re gonna|gotta|got to|want to|plan to|mean to)"
_OFF = r"(?:pulled|stripped|torn|ripped|peeled|cut|taken|scraped)(?: (?:back|right|all))* (?:off|out|apart|up|down|loose)"
_ANEW = r"(?:redone|re-?taped|re-?stapled|re-?rubbed|re-?fastened|re-?closed|re-?sealed|done (?:over|again|anew|new|properly|right)|replaced|changed(?: out| over)?|swapped(?: out)?|stripped|renewed|opened(?: up)?(?= and| again|$))"
_OFF_IT = r"(?:pull|strip|tear|rip|peel|cut|take|scrape) (?:it|that|this|them|those|these|it all|all of it|all that|the (?:\w+ )?(?:tape|foil|staples|stuff|seam|joint))(?: (?:back|right|all))* (?:off|out|apart|up|down|loose|and)"
_OVER_IT = r"(?:redo|re-?tape|re-?staple|re-?fasten|re-?close|re-?seal|replace|change(?: out)?|swap(?: out)?|strip|renew)(?: out)? (?:it|that|this|them|those|these|that one|this one|it all|all of it|the (?:\w+ )?(?:tape|foil|staples|stapling|taping|seam|joint|side|bottom|top|back|stuff))\b"

ENGLISH_DONE_OVER = (
    rf"{_LEADS}{_WHAT}{_ON} ?{_MUST}(?: (?:still|all|then|just|first|only))* (?:(?:be|get) (?:all )?(?:{_OFF}|{_ANEW})|(?:come|go) (?:back |right |all )?(?:off|out|apart)\b(?! to\b)(?! of the))",
    rf"{_LEADS}{_WHAT}{_ON} (?:gets|get) (?:all )?(?:{_OFF}|{_ANEW})\b.*\b{_DAY}",
    rf"{_LEADS}(?:still )?to be (?:{_OFF}|{_ANEW})\b",
    rf"{_LEADS}(?:i|we) ?{_I_MUST}(?: (?:still|just|then|have to|need to|first|go back and|come back and))* (?:{_OFF_IT}|{_OVER_IT}|do (?:it|that|them|the \w+) (?:over|again|anew)|(?:pull|strip|peel|rip|tear) (?:it|that|them|those|the (?:\w+ )?(?:tape|foil|staples|stuff))(?=$| {_DAY}))",
)
