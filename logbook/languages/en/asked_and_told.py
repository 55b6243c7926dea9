"""English of what another man asked and he answered, in one breath: "he says did you rub that and I said no", "the boss asked me was it taped and I told him yeah".

What was asked is read as his own question, with its answer behind it. Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.plainer import Plainer

_WHO = r"(?:(?:the|my|our|this|that) (?:(?!i )[a-z'-]+ ){1,2}|(?!i |we |you |it |that |and |so |which |tag |drawing )[a-z']+ )"
_ASKED = r"(?:(?:asked|asks|asking|hollered|hollers|yelled|yells|goes|go|said|says|say|was like|is like|wanted to know|wants to know|called (?:up|down|over))(?: (?:to|at))?(?: (?:me|us))?(?: (?:just now|today|this morning|earlier))?,? (?:so |well |hey )*)"
_MINE = rf"(?:i|we|it|they|that|this|that one|this one|the [a-z]+(?: [a-z]+)?|everything|all of it|(?:{KIND} )?(?:number )?\d+)"
_SO = r"(?:,? (?:and|but|so)(?: then)?|[.,;?](?: (?:and|but|so|well))?)"
_SAY = r"(?:i|we)(?: (?:just|only|had to|have to|gotta|then|kinda))* (?:told|tell|said|says|say|go|goes|went|was like|am like|answered|answer)(?: (?:him|her|them|the \w+))?(?: (?:that|well|uh|um))*,?"
_IT_DID = r"(?: (?:sir|not yet|not really|not at all|(?:i|we|it|they|it's|they're|that) (?:did|didn't|did not|have|haven't|have not|never|hadn't|had|is|isn't|is not|was|wasn't|not|are|aren't|do|don't)(?: not)?(?! [a-z])))*"
_REPLY = rf"(?:(?:no|nope|nah|yes|yeah|yep|sure)(?![\w']){_IT_DID}(?P<z>,|(?= ))?|(?:not yet|not really|none|never|they|it|i|we|it's|they're|three|two|half|just|only|every)(?![\w']))(?! (?:can|could|will|would|should|might|going|gonna)(?![\w'])|'ll|'d)"
_CUES = (" told ", " tell ", " said", " say", " go ", " goes ", " went ", " was like ", " answered ")
_ENDED = (("z", r"."),)


_MUCH = r"(?:(?:about|like|it's|they're|they go|every|at|around) )*(?:an? |\d|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|in(?:ward|side)?(?![\w'])|out(?:ward|side)?(?![\w']))"


def _asked(x: str, question: str, means: tuple[tuple[str, str], ...], beside: tuple[str, ...], reply: str = _REPLY) -> Plainer:
    return Plainer(
        _CUES,
        rf"(?P<x>(?:(?:and|so|then|but|because|cause) )?{_WHO}{_ASKED}{x}){question}(?P<t>{_SO} {_SAY} ){reply}",
        (("x", ". "), *means, ("t", "? "), *(_ENDED if reply is _REPLY else ())),
        beside=beside,
    )


_ON = r"(?: (?!and |but |so |i |can |will |gonna |should |could |would )[\w'-]+){0,8}?"
_DID = r"(?:did|have|had|is|are|was|were|has|does|do)"

ENGLISH_ASKED_AND_TOLD = (
    _asked("", rf"(?:{_DID} {_MINE}{_ON})", (), tuple(f" {word} " for word in ("did", "have", "had", "is", "are", "was", "were", "has", "does", "do"))),
    _asked("", rf"(?:{_DID} (?P<y>you(?: guys)?){_ON}(?: (?:before|when) (?P<w>you){_ON})?)", (("y", "i"), ("w", "i")), (" you ",)),
    # --- he asked, and was told of his own piece
    Plainer(
        (" no", " not ", " never", " hadn't", " didn't"),
        rf"(?P<x>(?:(?:and|so|then|but) )?(?:i|we) (?:asked|ask)(?: (?:him|her|them|the [a-z]+|(?!if |is |did )[a-z']+))? )(?P<q>(?:is|are|was|were|did (?:i|we))(?: (?:(?:{KIND} )?(?:number )?\d+|it|they|everything|the [a-z]+|that))?{_ON})(?P<t>{_SO} (?:he|she|they)(?: (?:just|only))* (?:told (?:me|us)|said|says|goes|went|was like)(?: that)?,? )(?=(?:no|nope|nah|not yet|never)(?![\w']))",
        (("x", ". "), ("t", "? ")),
        beside=(" asked", " ask "),
    ),
    _asked("(?:if|whether) ", rf"(?P<i>(?:i|we|you)(?:'d| had|'ve| have)? )(?:ever )?(?:rubbed|taped|stapled|wiped|cleaned|trimmed|bent|put|warmed|heated|patched|fixed|used|hung){_ON}", (("i", "i "),), (" if ", " whether ")),
    _asked("(?:if|whether) ", rf"(?P<p>(?:it|they|that|everything|the [a-z]+(?: [a-z]+)?))(?P<b>'s|'re| is| are| was| were)(?= ){_ON}", (("b", ""), ("p", r"is \g<p>")), (" if ", " whether ")),
    _asked("", rf"(?P<y>you (?:guys )?)(?:rub|tape|staple|wipe|clean|trim|bend|warm|heat|patch|fix|use|hang|put|get){_ON}", (("y", "did i "),), (" you ",)),
    _asked("", rf"(?:how (?:far|wide|long|close|big|many)(?![^.?!]{{0,40}} (?:has to|have to|had to|supposed|need|needs|must|allowed|want|wants|ought|could|may)(?![\w']))|what size|which way|what (?:i|we|you) (?:got|used|put|have)){_ON}", (), (" how ", " what ", " which "), _MUCH),
    # --- asked aloud, and he does not know: another's piece, or one he has not looked at
    Plainer(
        ("know", "tell you", "no idea", "not sure", "remember", "beats me", "couldn't say"),
        rf"(?:^|(?<=[.,;?!] )|(?<=um )|(?<=uh )|(?<=okay )|(?<=so )|(?<=and )|(?<=but ))(?P<x>{_DID} (?:(?:{KIND} )?(?:number )?\d+|it|that one|the [a-z]+(?: on (?:{KIND} )?(?:number )?\d+)?)(?: (?:ever|get|got|been|all|even|actually|done))* (?:taped|stapled|rubbed|wiped|trimmed|patched|fixed|tight|hung)(?: (?:down|up|off|all|around|yet))*,? (?:(?:well|uh|um),? )?(?:(?:i|we) (?:(?:don't|dont|do not|couldn't|could not|can't|wouldn't) (?:know|tell (?:you|ya)|say|remember|recall)(?: about (?:that|it)(?: one)?)?|am not sure|have no idea)|i'm not sure|no idea|not sure|beats me|who knows))(?=[.,;!]|$| )",
        (("x", ""),),
        beside=tuple(f"{word} " for word in ("did", "have", "had", "is", "are", "was", "were", "has")),
    ),
    # --- his own, beside the one that was asked about
    Plainer(
        (" next to ", " beside ", " behind ", " which ", " after ", " across from ", " in front of "),
        r"(?:i|we) (?:did|built|made|finished|had|got|put together) (?P<x>)(?=\d{2,3}(?: (?:right|just|down))?(?: (?:next to|beside|behind|after|before|across from|in front of) (?:it|that|that one|them|his)(?![\w'])|,? which ))",
        (("x", "number "),),
    ),
)
