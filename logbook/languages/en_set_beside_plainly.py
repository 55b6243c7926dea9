"""English of what is only set beside what was done: "every four goes faster than every two", tape that was peeled off for another, the corner that the lift caught; and the plain words for it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_COUNT = r"(?:one|two|three|four|five|six|eight|ten|twelve|\d+)(?: (?:and )?(?:a half|a quarter|\d/\d))?(?:[- ]?inch(?:es)?)?"
_TORN = r"(?:peeled|tore|ripped|pulled|stripped|scraped)"
_TOOLS = r"(?:caught|hit|clipped|snagged|bumped|banged|tore|poked|scraped|dinged|rammed|knocked|gouged|stabbed)"

ENGLISH_SET_BESIDE_PLAINLY = (
    Plainer((" than ",), rf"(?:every|at|on) {_COUNT}(?: apart)?(?P<x>,? (?:goes|went|go|is|are|was|works|worked|runs|takes|gets done|saves)(?: (?:so|a lot|a bit|a whole lot|much|way|that much))* (?:faster|quicker|easier|simpler|cheaper|less (?:time|work|trouble|staples)|better) than (?:it is |doing |at |every |going )*{_COUNT}(?: apart)?)(?=[.,;!?]|$| (?:so|and|but|would|does|is|ever)\b)", (("x", ""),)),
    Plainer((" beats ",), rf"(?:every|at|on) {_COUNT}(?: apart)?(?P<x>,? (?:which |and that |and it )?beats (?:doing |every |at |going )*{_COUNT}(?: apart)?(?: (?:for|any|by|every) [^.,;!?]*)?)(?=[.,;!?]|$)", (("x", ""),)),
    Plainer((" off and ", " off, "), rf"(?P<x>(?:with |in )?(?:the |some |that )?(?:cloth|gray|grey|duct|masking|packing|painter's)(?: cloth)?(?: tape| stuff)?(?: at| on)?(?: first)?,? (?:and |but )?(?:then )?[^.]{{0,48}}?(?<!have )(?<!'ve )(?<!to ){_TORN} (?:it|that)(?: all| right| back)* off(?: again)?,? (?:and |then )*(?:put|went with|used|laid|ran|stuck)(?: on| down)? )(?=(?:the |some )?(?:printed |listed |good |right |real |proper |stamped )*foil\b)", (("x", "taped with "),)),
    Plainer(tuple(f" {one}" for one in ("caught", "hit", "clipped", "snagged", "bumped", "banged", "poked", "scraped", "dinged", "rammed", "knocked", "gouged")), rf"(?:corner|edge|side|end|spot|cheek|lid|facing|foil|place|face)(?: that| where|,)? (?:the|his|her|somebody's|someone's|my|a|that|they) (?:\w+ )?\w+ {_TOOLS}(?: it)?(?P<x>(?:,? (?:is|'s|was|stayed|stays))? ?(?:still |left |hanging |just )*(?:open|loose|hanging|ripped|like that|the same|as it was)(?: about)?)(?=[.,;!?]|$| (?:about|the size|and|as|by|where|with|for)\b)", (("x", " is torn and not patched"),)),
    # a round throat wants none
    Plainer((" vanes",), r"(?<!square )(?:radius|rounded|round throat|curved|sweep|swept)[^.?!]{0,40}?(?P<x>,? (?:and |so |which means )*(?:it |there's |that |there are )*(?:no (?:turning )?vanes (?:needed|required|necessary)|(?:needs|takes|wants|gets) no (?:turning )?vanes|(?:doesn't|don't|didn't) (?:need|take|want|call for)(?: any)? (?:turning )?vanes))(?=[.,;!]|$)", (("x", ""),), unless=r"square throat"),
)
