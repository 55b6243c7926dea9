"""English of a collar's tabs that are through the board, and of what was done with them then: "tabs are in but I haven't bent them yet"."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_TABS = r"(?<!cross )(?<!cross-)(?:tabs|(?P<s>(?:every|each|every single|the) tab))"
_IN = r"(?:(?:(?: all| just|,)? (?:are|were|is|'re|went|got|have been|sit|stick|poke|come|came|pushed|poked|stuck|slid|inserted|sticking|poking|sitting)| all| just)* (?:in|through|inserted|out)(?: (?:the|their) (?:slots?|slits?|cuts?|board|holes?|inside)| (?:fine|ok|okay|good|all the way|there|place|inside|all right|nicely))*)"
_THEN = r"(?:,? (?:but|and|only|though)|[,.;])(?: (?:so|then|just|now))*"
_BEND = r"(?:bend|fold|turn|knock|hammer|crimp|lay)"
_BENT = r"(?:bent|folded|turned|knocked|hammered|crimped|bend|fold|laid)"
_THEM = r"(?: (?:(?:any|one|all|a single one) of )?(?:them|'em|em|those|these|the tabs)| it| one| any)?"
_OVER = r"(?: (?:over|down|back|flat|out|tight|inside|at all))*"
_LATER = r"(?: (?:yet|still|tomorrow|later|tonight|so far))?"
_ENDS = r"(?=[.,;!]|$| (?:because|cause|since|so)\b)"
_COUNTED = r"(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|twenty|\d\d?)"
_CUES = ("tabs", "tab ")
_BENDS = ("bend", "bent", "fold", "turn", "knock", "hammer", "crimp", "lay", "laid")

ENGLISH_TABS_PLAINLY = (
    Plainer(_CUES, rf"{_TABS}(?P<x>{_IN}{_THEN} (?:(?:{_I}|they)(?:'ve| have| are|'re)? )?(?:just )?(?:still )?(?:have|need|needs|got|gotta|has|had|yet|want|left)(?: yet)? ?(?:to )?(?:be )?(?:go and |go back and |get )?(?:{_BEND}|{_BENT}){_THEM}{_OVER}{_LATER}){_ENDS}", (("s", "tabs"), ("x", " still have to be bent"),), beside=_BENDS),
    Plainer(_CUES, rf"{_TABS}(?P<x>{_IN}{_THEN} (?:{_I} )?(?:just |still )*(?:haven't|have not|hasn't|didn't|did not|never|ain't|not)(?: even| actually| got| gotten| quite)* {_BENT}{_THEM}{_OVER} (?:yet|still|so far)){_ENDS}", (("s", "tabs"), ("x", " are not bent yet"),), beside=_BENDS),
    Plainer(_CUES, rf"{_TABS}(?P<x>{_IN}{_THEN} (?:{_I} )?(?:just |still )*(?:haven't|have not)(?: even| actually| got| gotten| quite)* {_BENT}{_THEM}{_OVER}){_ENDS}", (("s", "tabs"), ("x", " are not bent yet"),), beside=_BENDS),
    Plainer(_CUES, rf"{_TABS}(?P<x>{_IN}{_THEN} (?:{_I} )?(?:just |still )*(?:didn't|did not|never)(?: even| actually| got| ever)* {_BENT}{_THEM}{_OVER}){_ENDS}", (("s", "tabs"), ("x", " are not bent"),), beside=_BENDS),
    Plainer(_CUES, rf"{_TABS}(?P<x>{_IN}{_THEN} (?:they|none of them|none)(?:'re| are| is| were)? ?(?:still |just )*(?:(?:aren't|isn't|not|ain't|haven't been) )?{_BENT}{_OVER}(?: yet)){_ENDS}", (("s", "tabs"), ("x", " are not bent yet"),), beside=_BENDS, unless=r"(?:are|'re) (?:all )?bent"),
    Plainer(_CUES, rf"{_TABS}(?P<x>{_IN}{_THEN} (?:{_I} )(?:'ve |have |also |already )*(?:bent|folded|hammered|crimped) (?:(?:all|every one) of )?(?:them|'em|em)(?: all)?{_OVER}){_ENDS}", (("s", "tabs"), ("x", " are bent"),), beside=_BENDS, unless=r"except|all but|but (?:one|two|three|not|half)|most|half|n't|never"),
    # --- some of them, told as what he has still to do
    Plainer(
        _CUES,
        rf"(?<!cross )(?<!all but )(?<!except )(?<!besides )(?P<x>(?P<s>(?:(?:about |maybe |like |still |there's |the |those |my )*(?:one|two|three|four|five|six|\d|some|a few|a couple(?: of)?|half(?: of)?)(?: of)?(?: the| my| those)? )tabs?)(?:,? (?:that |which )?{_I}(?:'ve|'ll| have| will)?(?: still| just)* (?:have to|need to|got to|gotta|has to|go back and)(?: still| go| go back and| get in there and)* {_BEND}|(?:,? (?:that|which))?(?: still)? (?:have to|has to|need to|needs to|got to|gotta|to) (?:be |get )?{_BENT}){_OVER}(?: (?:yet|still|tomorrow|later))?){_ENDS}",
        (("x", r"\g<s> still need bending"),),
        beside=_BENDS,
    ),
    Plainer(
        _CUES,
        rf"(?P<x>{_I}(?:'ve|'ll| have| will)?(?: still| just)* (?:have to|need to|got to|gotta|has to)(?: still| go| go back and)* {_BEND}(?: (?:over|down|back|up|in))? (?:the (?:last |other )?|about |maybe |like )*(?P<n>one|two|three|four|five|six|\d|some|a few|a couple)(?: of| more)*(?: the| my| those)? tabs?){_OVER}(?: (?:yet|still|tomorrow|later))?{_ENDS}",
        (("x", r"\g<n> tabs still need bending"),),
        beside=_BENDS,
    ),
    # --- all of them, counted: "ten tabs out of ten are bent"
    Plainer((" of ",), rf"(?<![\w'/-])(?P<x>(?:all )?(?P<n>{_COUNTED})(?: of)?(?: the)?(?: tabs)? (?:out of|of) (?:the |all )?(?P=n)(?: tabs)?)(?= (?:are |were |got |is |went )?(?:all )?(?:bent|folded|turned|hammered|down|crimped|tight)(?![\w']))", (("x", "all the tabs"),), beside=("tabs",), unless=rf"(?<![\w'/-])(?:but|except|not)(?![\w'])"),
)
