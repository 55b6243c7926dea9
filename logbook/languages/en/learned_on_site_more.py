"""More English of who learned it on the site: what nobody did or gave, harm told by who did it, tape without a mark, joints to the next piece.

"Rub nobody do", "ladder make hole", "tape not have the number", "I no connect with five". Rows like those of `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.numbers import SAID_COUNT as _COUNT
from logbook.languages.plainer import Plainer

_DENIED = r"(?:no|not|don't|dont|do not|didn't|did not|never|can't|couldn't|am not)"
_STARTS = r"(?:^|(?<=[.,;!] )|(?<= and )|(?<= but )|(?<= so ))"
_ENDS = r"(?=[.,;!]|$| (?:because|cause|and|but|so|today|yet|sorry|boss)(?![\w']))"
_ACTS = (
    ("(?:rubbing|rub)", "rub it down", "the rubbing"), ("(?:taping|tape)", "tape it", "the tape"), ("(?:stapling|staples?)", "staple it", "the staples"),
    ("(?:trimming|trim)", "trim it", "the trimming"), ("(?:turning )?vanes?", "put the vanes in", "the vanes"),
)
_N = rf"(?P<n>\d{{1,3}}|{_COUNT})(?![\w/'-])(?! (?:inch|inches|sides?|staples?|by)(?![\w']))"
_NEXT = rf"(?:the |number |piece |fitting |straight |elbow |tee |duct |next one |next )*{_N}"
_PLACES = r"(?:the |my |boss |his |our )*(?:truck|van|shop|home|house|office|car|box|store|warehouse|other (?:job|site|building|floor|truck))"

ENGLISH_LEARNED_ON_SITE_MORE = (
    # --- "rub nobody do", "vanes nobody give me", "staple I put none", "tape is for after", "vanes I forget in truck"
    *(
        Plainer((" nobody ", " no one "), rf"{_STARTS}(?P<x>(?:the )?{said},? (?:nobody|no one) (?:do|does|did|put|puts|make|made|give|gives|gave|bring|brings|brought|send|sent)(?: (?:me|it|them|us|in|on))*){_ENDS}", (("x", f"I did not {act}"),))
        for said, act, _ in _ACTS
    ),
    *(
        Plainer((" none", " nothing", " zero", " not one", " no one"), rf"{_STARTS}(?P<x>(?:the )?{said},? (?:i|we) (?:put|use|have|do|make|shoot|did|used)(?:ed)? (?:none|nothing|zero|not one)){_ENDS}", (("x", f"I did not {act}"),))
        for said, act, _ in _ACTS
    ),
    *(
        Plainer((" forget", " forgot", " leave ", " left "), rf"{_STARTS}(?P<x>(?:the )?{said},? (?:i|we) (?:forget|forgot|leave|left)(?: (?:it|them))? (?:in|at|on) {_PLACES}){_ENDS}", (("x", f"I forgot {thing}"),))
        for said, _, thing in (_ACTS[1], _ACTS[2], _ACTS[4])
    ),
    Plainer((" for after", " for later"), rf"{_STARTS}(?:the )?(?:rubbing|rub|taping|tape|stapling|staples?|trimming|trim|vanes?) (?:is |are |stay |stays )?for (?P<x>after|later)(?=[.,;!]|$)", (("x", "tomorrow"),)),
    Plainer((" much ", " many ", " enough "), r"(?:^|(?<=[.,;!] )|(?<= and )|(?<= but )|(?<=because )|(?<=cause ))(?P<x>(?:i|we) (?:have not|haven't|not have|no have|don't have|had not) (?:so |too |very )?(?:much|many)) (?=(?:staples?|tape)(?:[.,;!]|$| left| now))", (("x", "I am short on"),)),
    Plainer((" fall", " fell"), r"(?:^|(?<=[.,;!] )|(?<= but )|(?<= and ))(?:the )?tape (?P<x>(?:is |was |it )?(?:fall|falls|fell|fallen)(?: (?:down|off|again))*)(?=[.,;!]|$| (?:because|cause|from|too)(?![\w']))", (("x", "came off"),)),
    # --- taped over what was not wiped
    Plainer((" without clean", " without wip"), r"(?:tape|taped|put tape|put the tape)(?: (?:it|on|on it|all))?(?P<x> without (?:clean|wipe|cleaning|wiping)(?: (?:it|first|before|nothing|the (?:facing|foil|board|dust)))*)(?=[.,;!]|$)", (("x", ". I did not wipe it"),)),
    Plainer((" after i clean", " after i wipe", " after clean", " after wipe", " afterwards i clean"), r"(?<![\w'])(?:tape|put tape|put the tape)(?: it)?(?P<x>(?:,|[.]|,? and) (?:and )?after(?:wards)? (?:i |we )?(?:clean|wipe)(?: (?:it|with (?:the |a )?rag|the (?:facing|foil|board)))*)(?=[.,;!]|$)", (("x", ". I did not wipe it before"),)),
    # --- tape without a mark, or from no list
    Plainer(("tape not have ", "tape no have ", "tape don't have ", "tape dont have ", "tape have not ", "tape have no ", "tape not has "), rf"tape (?P<x>(?:not|no|don't|dont|have not|have no|not has)(?: have)? (?:any |the |a |that |no )*(?:number|mark|letters?|print|printing|stamp|name|writing|ul)(?: (?:number|mark|print|letters?))?(?: (?:181|one eighty one|one eighty[- ]one|ul)(?: ?a ?-?p)?)?(?: (?:on|in) (?:it|the back|the roll))?){_ENDS}", (("x", "is without mark"),)),
    Plainer(("tape from ", "tape of "), rf"{_STARTS}(?P<x>(?:i (?:use|put|have|used) )?(?:the |some |a )?tape (?:is )?(?:from|of) (?:the |a )?(?:supermarket|home store|hardware store|dollar store|grocery|walmart|my house|my home|home|kitchen|gas station|corner store))(?=[.,;!]|$)", (("x", "I used tape that is not listed"),)),
    Plainer(("electric tape", "tape electric", "paper tape", "painter tape", "plastic tape"), r"(?:use|put|used|is|only|with|have) (?:the |a |some |my )?(?P<x>electric tape|tape electric)(?![\w'])", (("x", "electrical tape"),)),
    # --- glass that was not cut away
    Plainer((" no cut", " not cut", " don't cut", " didn't cut", " no trim", " not trim"), rf"(?:insulation|glass|fiber|extra board)(?![\w'])[^.?!]{{0,30}}[.,;] (?:but |and )?(?P<x>(?:i|we) {_DENIED} (?:cut|trim)(?: (?:it|that|the extra|nothing|it off|off))?){_ENDS}", (("x", "I did not trim it"),)),
    # --- a gap between two pieces
    Plainer(("between ",), rf"{_STARTS}(?P<x>between (?:the |these |both |this |two )*(?:pieces?|ducts?|parts?|boards?|one and (?:the )?other|two)(?: of them)? (?:is|are|it is|have|has|stay|there is|it have) (?:a |an |about |like )*(?P<m>(?:half|quarter|eighth|one quarter|one eighth|three eighths?|three sixteenths?|three quarters?|one|two)(?: of)?(?: an?)? inch(?:es)?)(?: (?:empty|open|opening|space|hole|gap|of (?:space|gap|air|nothing)))?){_ENDS}", (("x", r"the joint has a \g<m> gap"),)),
    # --- harm told by who did it
    Plainer((" make ", " made ", " do ", " open "), rf"{_STARTS}(?P<x>(?:the |a |my |some )*(?:ladder|lift|forklift|knife|screwdriver|hammer|truck|cart|scaffold|pallet|hook|drill|pipe) (?:make|makes|made|do|open)(?: (?:me|a|one|the|small|big|little))* (?P<h>hole|tear|cut|rip|dent|puncture)(?: (?:in|on) (?:it|the \w+|top|side|bottom|facing|foil|board|corner))?){_ENDS}", (("x", r"there is a \g<h> in the facing"),)),
    Plainer(("is broke", "was broke", "is tear ", "is rip ", "is torn "), rf"{_STARTS}(?P<x>(?:is|was) (?:broken?|torn|tear|rip|ripped|cut) (?:the |some )?(?P<w>foil|facing)){_ENDS[:-1]}| (?:on|in|at) )", (("x", r"the \g<w> is torn"),)),
    Plainer((" break ", " broke ", " crush ", " smash "), rf"{_STARTS}(?P<x>(?:i|we|he|somebody|helper|they|forklift|ladder) (?:break|breaks|broke|crush|crushes|smash|smashes) (?:the |one |a |me the |its )?(?P<c>corner|edge)){_ENDS}", (("x", r"the \g<c> is crushed"),)),
    Plainer((" make it wet", " make wet", " get it wet"), rf"{_STARTS}(?P<x>(?:the )?(?:water|rain|pipe|sprinkler|roof|leak|somebody|they) (?:make|makes|made|get|gets|got) (?:it |the board |the piece |all )?wet){_ENDS}", (("x", "it got wet"),)),
    Plainer((" is open",), rf"(?:foil|facing|paper|silver) is open[^.?!,;]{{0,24}}[.,;] (?:but |and )?(?P<x>(?:i|we) {_DENIED} (?:close|fix|tape|patch|cover)(?: (?:it|that|nothing))?){_ENDS}", (("x", "I did not repair it"),)),
    # --- one of several, by its number: "six have hole"; several of a kind without their ending; "same like"
    Plainer((" have ",), rf"(?:^|(?<=[.!?;] ))(?P<x>)(?:\d{{1,3}}|{_COUNT}) (?P<y>have) (?=(?:small |big |little |one )?(?:hole|tear|dent|rip|puncture|crack)(?![\w']))", (("x", "number "), ("y", "has"))),
    Plainer(("two ", "three ", "four "), r"(?:^|(?<=[.!?] )|(?<=today )|(?<=make )|(?<=finish ))(?:two|three|four) (?:straight|elbow|tee|wye|end cap|collar|transition|offset|plenum)(?P<x>)(?=,? (?:number )?\d{1,3}(?:,| and) )", (("x", "s"),)),
    Plainer(("same like ",), r"(?<![\w'])same (?P<x>like)(?= (?:the |number |straight |elbow |tee |collar |transition |offset )*(?:\d|\w+[.,; ]))", (("x", "as"),)),
    # --- the joint to the next piece
    Plainer((" connect", " join", " close it ", " close this ", " attach"), rf"(?P<x>(?:i|we) (?:still )?{_DENIED} (?:connect|join|close|attach)(?:ed)?(?: (?:it|this|this one|yet))*(?: yet)? (?:with|to) {_NEXT})(?: yet)?{_ENDS}", (("x", r"it is not joined to number \g<n> yet"),)),
    Plainer(("joint ", "union ", "connection "), rf"{_STARTS}(?P<x>(?:the |this |that )?(?:joint|union|connection) (?:with|to|of) {_NEXT},? (?:(?:i|we|is|it|have|has|stay|stays) )*(?:no|not|don't|didn't|without|never)(?: (?:have|put|got|any))* (?:tape|taped|staples?|stapled|close|closed|connect|connected|join|joined|finish|finished|seal|sealed)(?: (?:it|them|and|or|no|nothing|staples?|tape))*(?: yet)?){_ENDS}", (("x", r"it is not joined to number \g<n> yet"),)),
)
