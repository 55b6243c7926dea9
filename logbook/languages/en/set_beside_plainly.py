"""English of what is only set beside what was done: "every four goes faster than every two", tape that was peeled off for another, the corner that the lift caught; and the plain words for it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_COUNT = r"(?:one|two|three|four|five|six|eight|ten|twelve|\d+)(?: (?:and )?(?:a half|a quarter|\d/\d))?(?:[- ]?inch(?:es)?)?"
_TORN = r"(?:peeled|tore|ripped|pulled|stripped|scraped)"
_TOOLS = r"(?:caught|hit|clipped|snagged|bumped|banged|tore|poked|scraped|dinged|rammed|knocked|gouged|stabbed)"

_THIN = r"(?:a |an |the |my |even a |one )*(?:business card|credit card|card|playing card|dime|penny|nickel|coin|knife(?: blade)?|blade|razor(?: blade)?|fingernail|sheet of paper|piece of paper|paper|hair|feeler(?: gauge)?|putty knife|matchbook|thumbnail|toothpick)"

ENGLISH_SET_BESIDE_PLAINLY = (
    Plainer((" than ",), rf"(?:every|at|on) {_COUNT}(?: apart)?(?P<x>,? (?:goes|went|go|is|are|was|works|worked|runs|takes|gets done|saves)(?: (?:so|a lot|a bit|a whole lot|much|way|that much))* (?:faster|quicker|easier|simpler|cheaper|less (?:time|work|trouble|staples)|better) than (?:it is |doing |at |every |going )*{_COUNT}(?: apart)?)(?=[.,;!?]|$| (?:so|and|but|would|does|is|ever)\b)", (("x", ""),)),
    Plainer((" beats ",), rf"(?:every|at|on) {_COUNT}(?: apart)?(?P<x>,? (?:which |and that |and it )?beats (?:doing |every |at |going )*{_COUNT}(?: apart)?(?: (?:for|any|by|every) [^.,;!?]*)?)(?=[.,;!?]|$)", (("x", ""),)),
    Plainer((" off and ", " off, "), rf"(?P<x>(?:with |in )?(?:the |some |that )?(?:cloth|gray|grey|duct|masking|packing|painter's)(?: cloth)?(?: tape| stuff)?(?: at| on)?(?: first)?,? (?:and |but )?(?:then )?[^.]{{0,48}}?(?<!have )(?<!'ve )(?<!to ){_TORN} (?:it|that)(?: all| right| back)* off(?: again)?,? (?:and |then )*(?:put|went with|used|laid|ran|stuck)(?: on| down)? )(?=(?:the |some )?(?:printed |listed |good |right |real |proper |stamped )*foil\b)", (("x", "taped with "),)),
    Plainer(tuple(f" {one}" for one in ("caught", "hit", "clipped", "snagged", "bumped", "banged", "poked", "scraped", "dinged", "rammed", "knocked", "gouged")), rf"(?:corner|edge|side|end|spot|cheek|lid|facing|foil|place|face)(?: that| where|,)? (?:the|his|her|somebody's|someone's|my|a|that|they) (?:\w+ )?\w+ {_TOOLS}(?: it)?(?P<x>(?:,? (?:is|'s|was|stayed|stays))? ?(?:still |left |hanging |just )*(?:open|loose|hanging|ripped|like that|the same|as it was)(?: about)?)(?=[.,;!?]|$| (?:about|the size|and|as|by|where|with|for)\b)", (("x", " is torn and not patched"),)),
    # a round throat wants none
    Plainer((" vanes",), r"(?<!square )(?<![\w'])(?:rad|radius|rounded|round throat|curved|sweep|swept)[^.?!]{0,40}?(?P<x>,? (?:and |so |which means )*(?:it |there's |that |there are )*(?:no (?:turning )?vanes (?:needed|required|necessary)|(?:needs|takes|wants|gets) no (?:turning )?vanes|(?:doesn't|don't|didn't) (?:need|take|want|call for)(?: any)? (?:turning )?vanes))(?=[.,;!]|$)", (("x", ""),), unless=r"square throat"),
    # what is told by the way, and begins as a question does
    Plainer((", which is ", ", which was "), r"(?<=, )(?P<x>which (?:is|was) (?:exactly |just |about |pretty much |also |mostly )*(?:what|how|where|when|who|all|as much as|as far as) (?:(?!\b(?:not|no|never|none|taped|stapled|rubbed|wiped|tape|staples|vanes|inch(?:es)?|wrong|out|open|torn|wet|short|missing|why)\b|n't|\d)[^.,;?!])*(?:, |(?=[.;!]|$)))", (("x", ""),)),
    Plainer((", which is why ", ", which is the reason "), r"(?<=, )(?P<x>which is (?:why|the reason(?: why| that)?) )", (("x", "so "),)),
    Plainer((", which the tape", ", which my tape"), r"(?<=, )(?P<x>which )(?=(?:the|my) tape (?:covers|bridges|hides|spans|closes)(?P<y>)(?: over)?(?=[.,;!]|$))", (("x", ""), ("y", " it"))),
    # a joint that nothing thin goes into
    Plainer(
        ("card", "dime", "penny", "nickel", "coin", "knife", "blade", "nail", "paper", "hair", "feeler", "matchbook", "toothpick"),
        rf"(?P<x>(?:so |and |that )*(?:you |i |we |nobody |a man )?(?:can't|cannot|can not|couldn't|could not|won't|wouldn't)(?: even| hardly)? (?:get|slide|slip|fit|stick|push|work|put|squeeze|poke|find room for) {_THIN} (?:in|into|through|between|under)(?: (?:between|it|there|them|the (?:joint|seam|crack|two|pieces)|any of (?:it|them)))*)(?=[.,;!]|$| (?:anywhere|all around|on any side))",
        (("x", "the joint is tight"),),
    ),
    Plainer(
        ("not even ", ", no ", "won't ", "doesn't "),
        rf"(?P<x>(?:so |and |that )*(?:(?:not even|no) {_THIN} (?:will |can |could )?(?:fits?|goes|go|slips?|slides?|gets?)|(?:a|my|even a) (?:business |credit |playing |putty |razor )?(?:card|dime|penny|nickel|coin|knife|blade|fingernail|thumbnail|hair|toothpick|matchbook) (?:won't|doesn't|didn't|wouldn't|can't) (?:even )?(?:fit|go|slip|slide|get)) (?:in|into|through|between)(?: (?:between|it|there|them|(?:any of )?the (?:joints?|seams?|crack|corners?|two|pieces)))*)(?=[.,;!]|$| (?:anywhere|all around|on any side))",
        (("x", "the joint is tight"),),
    ),
    # why it is not, asked by another; what it was that held him up
    Plainer((" why ",), r"(?P<x>(?:the |my |his |our |some )?\w+(?: \w+)? (?:wanted to know|asked(?: me| us)?|was asking|wondered|wants to know|asks(?: me)?) why )(?=[^.?!,]*\b(?:no|not|isn't|wasn't|never|hasn't|hadn't|without|aren't|doesn't|didn't)\b)", (("x", ""),)),
    Plainer(("i told ", "i said ", "i explained"), r"(?:no|not|isn't|wasn't|never|hasn't|hadn't|without|aren't|doesn't|didn't) [^.?!]*?(?P<x>,? (?:and |so )?i (?:told (?:him|her|them|the \w+)|said|explained)(?: that)? (?:it's |it was |that's )?because )", (("x", ", because "),)),
    Plainer(("what ", "only thing that "), r"(?:^|(?<=[.;!?] ))(?P<x>(?:what|the (?:only )?thing that) (?:slowed|held|got|bothered|stopped|beat|cost)(?: me| us)?(?: up| down| time)? )(?:on|with) [\w' -]{1,24}?(?P<y> (?:was|is) (?:the |my |that |this )?\w+(?: \w+)?)(?P<z>[:;,.]) ", (("x", ""), ("y", ""), ("z", ","))),
)
