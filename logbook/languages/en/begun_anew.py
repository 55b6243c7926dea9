"""English that takes back what was said of a piece and begins anew with the right one: "forget all of that, wrong piece. It's fitting ten", "repaired
nine. No, that's number eight".

Regular expressions over lower-case letters, as in `plainer.py`. What was taken back is left out; a name that was wrong gives place to the right one.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.plainer import Plainer

_BARE = rf"(?:[a-z]-?)?{NUMBER}(?![\w'/-]| by | inch| feet| foot| degree| and a )"
_NAME = rf"(?<!to )(?<!into )(?<!off )(?<!from )(?<!than )(?<!as )(?<!like )(?<!by )(?<!beside )(?<!with )(?:{KIND}|number),? (?:number )?{_BARE}"
_OTHER = rf"(?:(?!(?:{KIND}|number),? (?:number )?(?!(?P=n)(?![\w'-]))(?:\d+|{NUMBER})(?![\w'/-]| by | inch)).)*?"
_SO = r"(?:(?:no|nope|wait|oh|ah|uh|um|well|sorry|shoot|damn|hang on|hold on|hold up|okay|ok|you know what|actually|and|but|so|hey|please|just)[,. ]+)*"
_TAKE = r"(?:forget|scratch|strike|scrap|erase|delete|ignore|disregard|never ?mind|cancel|toss|throw out|take back|wipe|drop|kill|lose)"
_ALL = rf"{_TAKE}(?: (?:about|out))? (?:all (?:of )?(?:that|this|it|what i (?:just )?said)|everything(?: i(?:'ve)?(?: just)? (?:said|told you))?|(?:the|that) whole (?:thing|lot|business)|the lot)"
_THAT = rf"{_TAKE}(?: about)? (?:that(?: one)?|what i (?:just )?said|it|this|that last one)|i take (?:that|it)(?: all)? back"
_WRONG = (
    r"(?:(?:i'm|i was|i am|we're|was|been|i've been|had)(?: (?:looking at|on|reading|talking about|standing (?:at|by|under)|describing|telling you about|in front of))* (?:the )?wrong (?:one|piece|fitting|duct|number|section|tag|note|run|end|page|line|straight|elbow|tee|transition|cap)"
    r"|(?:that's |it's |that was |got |had |i had )?(?:the )?wrong (?:one|piece|fitting|duct|number|section|tag|note|straight|elbow|tee|transition|cap)|(?:that's|that was|it's) (?:not (?:this|the right|that) one|a different one|another one|the other one|somebody else's)|not (?:this|that) one)"
)
_AGAIN = r"(?:(?:let me|i'll|let's|gotta|i'm gonna|i'm going to|i want to|i need to|can i|i better|we'll|lemme) (?:just )?(?:start|begin|try|do|say|take|back up and (?:start|begin))(?: (?:that|it|this))?(?: (?:all|right|clean))* (?:over|again|anew|fresh|from the (?:top|start|beginning))(?: again| from the (?:top|start|beginning))?|starting over|start over|do[- ]over|from the top|take two|back to the beginning)"
_STOP = r"[,.;!-]+ "
_GOES = r"(?:(?:okay|ok|so|well|now|right|alright|all right|here goes|here we go|this is|it's|that's|it was|i mean|i meant|i'm (?:on|at|looking at)|this one's|this one is|the right one is|a|an|the)[, ]+)*"
_NEXT = rf"(?={_GOES}(?:{KIND}|number),? (?:number )?(?:[a-z]-?)?(?:\d|{NUMBER}))"
_TAKEN = rf"(?:{_SO}(?:(?:{_ALL}|{_THAT}){_STOP}{_SO}(?:{_WRONG}|{_AGAIN})|(?:{_ALL}|{_AGAIN})|{_WRONG}{_STOP}{_SO}(?:{_ALL}|{_THAT}|{_AGAIN})))(?:{_STOP}{_SO}(?:{_WRONG}|{_AGAIN}))*"

_SLIP = r"(?:no|nope|wait|correction|sorry|my mistake|my bad|my fault|oops|whoops|i'm wrong|i was wrong|i'm sorry|that's wrong|that's not right|i misspoke|i lied?|wrong number|wrong one|wrong piece|hold on|hang on|excuse me|actually|scratch that|strike that|let me correct that|i said it wrong|got that wrong)"
_IS = r"(?:that's|it's|that was|it was|this is|that is|it is|make (?:that|it)|i mean|i meant|should be|that should be|it should be|call it|that would be|that'd be|the number is|the number's|it's really|that's really|that's actually|it's actually)"
_HERE = r"(?: (?:i'm (?:on|at|looking at|talking about)|i (?:meant|mean)|i should have said|here|really|instead|i did|that i did|we did|not (?:number )?(?:\d+|[\w-]+)))?"
_SEEN = r" (?:i'm (?:on|at|looking at|talking about)|i (?:meant|should have said)|that i did)"
_SLIPS = rf"(?:{_SLIP}[,.;-]* )+"
_SLIPS_TOO = rf"(?:{_SLIP}[,.;-]* )*"
_DID = "(?:" + "|".join(rf"(?<={word} )" for word in ("taped", "stapled", "rubbed", "rubbed down", "repaired", "fixed", "patched", "hung", "finished", "did", "closed", "wiped", "trimmed", "made", "built", "on", "in", "of", "for")) + ")"
_NUMBER_WRONG = r"(?:(?:that's |i had |i gave you |i said )?(?:the )?wrong (?:number|one|piece|tag|mark))"
_NOT_SO = "".join(rf"(?<!{word} )" for word in ("not", "isn't", "wasn't", "ain't", "was", "no", "or", "thought", "said"))
_NONE_BEFORE = rf"(?:(?!(?:{KIND}|number),? (?:number )?(?:\d|{NUMBER})).)*?"
_FIXED = (
    (rf"{_SLIPS}{_IS} (?:(?:{KIND}|number),? )(?:number )?", _HERE),
    (rf"{_SLIPS_TOO}{_NUMBER_WRONG}[,.;-]+ {_SLIPS_TOO}{_IS} ", _HERE),  # by its number alone, where it is told that the number was wrong
    (rf"{_SLIPS}{_IS} ", _SEEN),
)
_END = r"(?=[.,;!]|$)"
_NAMED = ("that's", "it's", "that was", "it was", "this is", "make ", "i mean", "should be", "call it", "that would", "that'd", "the number")
_CUES = ("start", "begin", "over", "top", "take two", "forget", "scratch", "strike", "scrap", "erase", "delete", "ignore", "disregard", "never mind", "nevermind", "cancel", "toss", "throw out", "take back", "wipe", "drop", "kill", "lose", "take that", "take it", " again")

ENGLISH_BEGUN_ANEW = (
    Plainer(
        _CUES,
        rf"(?P<x>(?:(?:okay|ok|so|well|alright|this is|this here is|here's|a|the)[, ]+)*{_NAME.replace(_BARE, f'(?P<n>{_BARE})')}{_OTHER}[,.;!-] {_TAKEN}{_STOP}){_NEXT}",
        (("x", ""),),
    ),
    # --- "straight twelve. No. Elbow twelve": the kind alone was wrong
    Plainer(("no", "wait", "sorry", "oops", "nope", "correction"), rf"(?P<x>{KIND},? (?:number )?(?P<n>{_BARE})[.;,] (?:(?:no|nope|wait|sorry|oops|correction|hold on|hang on|scratch that)[.,;! ]+)+(?:(?:it's|that's|i mean|this is)(?: (?:an?|the))? )?)(?={KIND},? (?:number )?(?P=n)(?![\w'-]))", (("x", ""),)),
    # --- the same piece, told from its name on anew
    Plainer(_CUES, rf"{_NAME.replace(_BARE, f'(?P<n>{_BARE})')}(?P<x>{_OTHER}[,.;!-] {_SO}{_AGAIN})[.,;!] (?!{_GOES}(?:{KIND}|number),? (?:number )?(?:[a-z]-?)?(?:\d|{NUMBER}))(?=[^.?!]*\w)", (("x", ""),)),
    # --- the name alone was wrong, and is set right at once: "repaired nine. No, correction, that's number eight"
    *(
        Plainer(_NAMED, rf"{_NOT_SO}{name}{_BARE}[.;,] {_SLIPS}{_IS} ){right},? (?:number )?{_BARE}{_HERE}{_END}", (("x", ""),))
        for name, right in ((rf"{KIND},? (?P<x>(?:number )?", "number"), (rf"(?P<x>(?:(?:{KIND}|number),? (?:number )?|{_DID})", KIND), (rf"(?P<x>(?:number |{_DID})", "number"))
    ),
    # --- behind what is told of the only piece: "straight nine, stapled, taped. Correction, that's number eight"
    *(
        Plainer(_NAMED, rf"^{_NONE_BEFORE}{_NOT_SO}{name}{_OTHER}[.;] (?P<x>{fixed}){_BARE}(?P<y>{behind}){_END}", (("w", means), ("x", "number "), ("y", "")))
        for name, means in ((rf"{KIND}(?P<w>,? (?:number )?(?P<n>{_BARE}))", ""), (rf"(?P<w>number (?P<n>{NUMBER}))(?![\w/-]| by | inch)", "it"))
        for fixed, behind in _FIXED
    ),
    # --- and of one of several
    *(Plainer(_NAMED, rf"(?<!^){_NOT_SO}(?:{KIND}|number),? (?:number )?(?P<w>(?P<n>{_BARE})){_OTHER}(?P<x>[.;] {fixed}(?P<m>{_BARE}){behind}){_END}", (("w", r"\g<m>"), ("x", ""))) for fixed, behind in _FIXED),
)
