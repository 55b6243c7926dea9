"""English that sets a number right by itself behind what was told with it: "… every two. Wait, that's sixteen I'm holding, not seventeen"."""

from __future__ import annotations

from logbook.languages.number_set_right import NumberSetRight
from logbook.languages.en.left_plainly import KIND

_SLIP = r"(?:(?:no|nope|wait(?: a (?:minute|second|sec))?|correction|sorry|my mistake|my bad|oops|whoops|hold on|hang on|hold up|excuse me|actually|scratch that|strike that|i lied?|i was wrong|i'm wrong|i misspoke|wrong number|oh|well|okay|ok|so|shoot|and|but|yeah)[,.;]? )"
_SLIPS = rf"{_SLIP}*"
_IS = r"(?:that's|it's|that was|it was|this is|that is|it is|this one's|this one is|that one's|that one is|i mean|i meant|i'm on|i'm at|i'm holding|i'm looking at|we're on)(?: (?:really|actually))?"
_ISNT = r"(?:not|it's not|that's not|it isn't|that isn't|this isn't|this is not|that is not|it is not|it wasn't|that wasn't|this one isn't|this one's not)"
_HERE = r"(?: (?:(?:that )?(?:i'm|i am|we're) (?:holding|looking at|on|at|standing at|under|talking about|working on|doing)|(?:that )?i(?:'ve)? (?:got|have)(?: in my hands?)?|(?:that )?i (?:did|made|meant|just did)|in my hands?|in front of me|on the bench|here|right here|up here|over here|really|actually|instead|now))*"
_NAME = rf"(?:(?:{KIND}|number) )?(?:number )?"

ENGLISH_NUMBER_SET_RIGHT = NumberSetRight(
    cues=(" not ", "n't ", "i said ", "i told you ", "i called it "),
    named=rf"(?<![\w'])(?:{KIND}|number),? (?:number )?<(?P<n>\d+)>(?! by | x )",
    fixes=(
        # "that's sixteen I'm holding, not seventeen"
        rf"(?<=[.;,!-] )(?:{_SLIPS}{_IS}|{_SLIP}{_SLIPS}(?<=[,.;] )) ?{_NAME}<(?P<m>\d+)>{_HERE},? (?:and |it's |that's )?not {_NAME}<(?P<n>\d+)>{_HERE}(?=[.;,!]|$)",
        # "it's not eighteen, it's nineteen", "not seventeen, sixteen"
        rf"(?<=[.;!-] )(?:{_SLIPS}{_ISNT} {_NAME})<(?P<n>\d+)>{_HERE}[,;.] (?:but )?(?:{_IS} )?{_NAME}<(?P<m>\d+)>{_HERE}(?=[.;,!]|$)",
        # "I said nine, this is ten"
        rf"(?<=[.;,!-] )(?:{_SLIPS}(?:i said|i told you|i called it)(?: (?:it was|it's|this was))? {_NAME})<(?P<n>\d+)>[,;.]? (?:and |but )?{_SLIPS}{_IS} {_NAME}<(?P<m>\d+)>{_HERE}(?=[.;,!]|$)",
        # "it's sixteen, I said seventeen"
        rf"(?<=[.;!-] ){_SLIPS}{_IS} {_NAME}<(?P<m>\d+)>{_HERE}[,;]? (?:and |but |not )?(?:i said|i told you|i called it)(?: (?:it was|it's|this was))? {_NAME}<(?P<n>\d+)>(?=[.;,!]|$)",
    ),
)
