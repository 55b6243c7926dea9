"""English of what another said of his piece, or wanted of it, and what came true: "he said tee 30 has a gap, I looked and he's right", "they want branch 44 buried … so it's buried".

Regular expressions over lower-case letters, as in `plainer.py`: what came true is read as told by himself.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.plainer import Plainer

_WHO = r"(?:he|she|they|somebody|someone|(?:the|my|our|that) (?:\w+ ){0,2}?(?:foreman|boss|lead|inspector|super|helper|apprentice|partner|gc|engineer|kid|guy|guys|owner|crew|office)|(?!(?:i|we|you|it|that|this|what|who|and|so|but)(?![\w']))[a-z]+)"
_SAID = r"(?: just| also| then)* (?:said|says|told me|claims|claimed|thinks|thought|swears|swore)(?: that)?,? "
_PIECE = rf"(?:the |my |your )?(?:(?:{KIND}|straight),? )?(?:number )?\d{{1,4}}"
_RIGHT = r"(?:(?:i|we)(?: went(?: up| over| back)?| climbed up| got up there)?(?: and)? ?(?:looked|checked|measured|saw)(?: at it| it| myself| inside)?(?:,? and| and yeah,?| and yes,?|[.,;])? )?(?:(?:and|yeah|yep|yes|well),? )*(?:he|she|they|it|that)(?:'s|'re| is| was| were| are) (?:dead |absolutely |totally )?(?:right|true|correct)(?! (?:side|hand|one|there|end|on|by|at|next|here|behind|over))"
_HAS = r"(?:has|had|'s got|is missing|has got|is short|leaks|isn't|wasn't|needs)(?![\w'])"
_THERE = r"(?:buried|under the (?:slab|floor|driveway|ground)|in the (?:ground|slab|dirt|trench|concrete)|underground|outside|outdoors|on the roof)"

ENGLISH_BORNE_OUT = (
    Plainer((" right", " true", " correct"), rf"(?:^|(?<=[.?!] ))(?P<x>{_WHO}{_SAID}){_PIECE} ?{_HAS}[^.?!]{{2,70}}[.;!] (?P<y>{_RIGHT}),(?= (?:about|like|maybe|around|almost|a|an|it's|by) ?)", (("x", ""), ("y", "it's"))),
    Plainer((" right", " true", " correct"), rf"(?:^|(?<=[.?!] ))(?P<x>{_WHO}{_SAID}){_PIECE} ?{_HAS}[^.?!]{{2,70}}(?P<y>[.;!] {_RIGHT})(?=[.!;]|$|, (?:and|but|so)(?![\w']))", (("x", ""), ("y", ""))),
    Plainer(
        (" want ", " wants ", " wanted "),
        rf"(?:^|(?<=[.?!] ))(?P<x>(?:(?:the|my|our) [\w ]{{2,40}}? (?:says|said) )?{_WHO}(?: all| really)* (?:want|wants|wanted) )(?=(?:the )?(?:(?:{KIND}|straight),? )?(?:number )?\d{{1,4}},? (?:to be |put |run )?{_THERE}.{{0,160}}?(?<!if )(?:it's|it is|that's where it)(?: now| all)* (?:{_THERE}|is|went))",
        (("x", ""),),
        beside=("it's ", "it is ", "that's where"),
    ),
)
