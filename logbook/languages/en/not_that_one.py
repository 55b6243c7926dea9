"""English that denies of a piece by its name what was told of another: "32 isn't", "32 I haven't", "I can't say the same for 32"."""

from __future__ import annotations

from logbook.languages.not_that_one import NotThatOne

_TRAIL = r"(?: (?:really|quite|actually|yet|so far|at all|though|either|any|one|it|them|though|so much|as yet|i'm afraid|sorry to say|unfortunately|now|still|all the way))*(?: (?:because|'cause|cause|cuz|since|on account of|thanks to) .+)?"
_AUX = r"(?:isn't|aren't|wasn't|weren't|ain't|hasn't|haven't|hadn't|doesn't|don't|didn't|is not|was not|has not|did not|does not|have not|'s not|isnt|hasnt|didnt|doesnt|wasnt|havent)"

ENGLISH_NOT_THAT_ONE = NotThatOne(
    cues=r"n't|nt(?![a-z])|(?<![a-z])(?:not|no|nope|nah|none|never|without|cannot|yet)(?![a-z])",
    leads=r"(?:(?:but|and|while|whereas|though|only|just|so|well|then|yet|as for|with|on|in|except|for) )*(?:the |my )?(?:(?:number|piece|fitting|no\.?) )?",
    ahead=r"(?:(?:but|and|which|that) )*(?:(?:i|we|you) (?:can't|cannot|couldn't|wish i could|wouldn't) say (?:the same|that|so|as much|it)(?: thing)? (?:for|of|about|on)|(?:the )?same (?:can't|cannot|couldn't) be said (?:for|of|about)|not(?: so(?: much)?)?(?: for| with| on)?|(?:that|it)(?:'s| is) (?:not (?:so|true|the case)|another story|a different story|a whole other story) (?:for|of|with|on|about)|is more than (?:i|we|you) can say (?:for|of))(?: (?:number|piece|fitting|the|my))?",
    behind=rf"(?:it |that one |this one |there )?(?:(?:i|we) )?{_AUX}(?: been)?(?: (?:got|get|have|had))?{_TRAIL}"
    rf"|(?:i |we )?never (?:was|were|did|has|have|got|had|saw|got to|did get)(?: (?:any|it|them|one|to it))?"
    rf"|(?:i |we )?(?:couldn't|could not|can't)(?: (?:do|reach|get to|get at|manage))?{_TRAIL}"
    rf"|(?:(?:i|we)(?:'ve| have)? |has |is )?yet to(?: (?:be|have|get|do)(?: it| that| any| done)?)?"
    rf"|(?:(?:i'm|we're|is|was|it's) )?(?:no|nope|nah|not|not yet|not so much|not so|not really|not at all|not a chance|no such luck|no way|none|not one|not a one|not any|nothing|not either|not quite|not exactly|negative|without)(?: (?:yet|sir|i'm afraid|at all|so far|sorry))*"
    rf"|(?:has|had|got|'s got|there's|there is|i see|with) (?:none|nothing|not one|not a one|zero|zip)(?: of (?:it|that|them))?(?: (?:at all|yet|in it|on it|there))*"
    rf"|(?:i|we|you) (?:can't|cannot|couldn't|wish i could|wouldn't) say (?:the same|that|so|as much)(?: thing)? (?:for|of|about|on)",
    later=r"(?<![a-z])yet(?![a-z])|so far",
)
