"""English turns that put the denial, the wish or the outcome aside of the thing: "what it isn't is rubbed", "that was the idea, they ended up sixteen apart", "I'd say we go with mastic"."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_ACTS = r"(?:stapled|taped|rubbed|trimmed|wiped|sealed)"
_NUMBER = r"(?=(?:about |at |like )?(?:a |an |one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|\w+ty|half|\d))"

ENGLISH_SAID_ASKEW = (
    Plainer(("what ",), rf"(?P<x>what (?:it|she|this one|this|that one) (?:isn't|is not|ain't|hasn't been) (?:is|was) )(?={_ACTS})", (("x", "it isn't "),)),
    Plainer((" no",), rf"(?:^|(?<=[.;,] ))(?:and |but )?(?P<x>(?P<t>{_ACTS})(?: (?:it|down|before that|first|before|off|at all|yet)){{1,3}},? no)(?=[.;]|,? (?:and|but|so)\b|$)", (("x", r"not \g<t>"),)),
    Plainer(("ended up", "came out", "wound up"), rf"(?P<x>,? (?:or )?(?:at least )?that was the (?:idea|plan|intention|intent)(?: anyway)?[,;.]? (?:but )?(?:they|it|mine|the staples|the tabs) (?:ended up|came out|wound up)(?: at| being)? ){_NUMBER}", (("x", ", no, "),), beside=("that was the",)),
    Plainer(("i'd say we", "i'd say you", "thinking we", "thinking you", "thinking maybe we"), r"(?P<x>(?:i'd say|(?:i was|i'm|i've been|was) (?:just )?thinking)(?: that| maybe)* (?:we|you)(?: could| should| might)?) (?:go with|use|try|do|make|switch|put|run|build|get)(?![\w'])", (("x", "we should"),)),
)
