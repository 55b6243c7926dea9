"""English of what is printed on tape and of tape that is told by its name: "stamped 181A-P", "told him no sir, 181A-P", "tape's on every seam", "rag, alcohol, dry rag, then tape"; and the plain words for it."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_MARK = r"(?:ul[ -])?(?:181|1-?81\b|1 81|one[ -](?:hundred (?:and )?)?(?:eight|ate|81))"
_ROLL = r"(?:tape|roll|backing|liner|core|foil|pail|bucket|spool|wrapper|label|box)"
_STEP = r"(?:wet rag|rag|wipe(?: down)?|alcohol(?: wipe)?|solvent|cleaner|dry rag|clean rag|damp rag)"
_PLANNED = r"tomorrow|should|supposed|has to|have to|need|next time|remember|the way|steps?\b|rule|always|never|not |n't|will|going to|gonna|would"

_181 = r"(?:ul )?(?:181 ?-?a(?:[- ]?[ph])?|181|ul)"

ENGLISH_PRINTED_PLAINLY = (
    # --- tape on which nothing stands: "foil tape, there's no 181A print on it", "taped, it doesn't say 181A", "nothing printed on it"
    Plainer(
        (" no ", " nothing ", "without any ", "n't say", "not say", "n't have"),
        rf"(?<![\w'])(?:tape|taped|foil)(?![\w'])[^.;?!]{{0,70}}?[, ] ?(?P<x>(?:(?:there's|there is|there was|it's got|it has|it had|has|with|it came with|which has) (?:no|nothing)|no|nothing|without any|(?:it |that )?(?:doesn't|didn't|does not) (?:say|have))(?: {_181})?(?: (?:print(?:ing)?|marking|stamp|printed|stamped|writing))?(?: (?:on|anywhere on|along) (?:it|the (?:roll|tape|back|backing|liner|core)))?)(?=[.,;!]|$| (?:so|and|but|stapled|because)(?![\w']))",
        (("x", "no UL mark on it"),),
        unless=rf"(?<![\w'])(?:i|we)(?:'d|'ve)? (?:put|used|have|had|got|found|get) no |(?<!there's )(?<!there is )(?<!has )(?<!got )(?<!with )no {_181}(?: on (?:it|the \w+))?(?:[.,;]|$)|(?:wrong|other) (?:box|roll)|so i used|instead",
        beside=("181", "print", "marking", "stamp", "writing"),
    ),
    # --- how wide the tape is, told behind it: "heat tape, but it's only two and a half inch because the three inch was gone"
    Plainer(
        ("but it's", "but only", "but it was", "but it is", "but just", "but that's", "though it's", "only it's"),
        rf"(?<![\w'])(?:(?:heat|foil|pressure|181 ?-?a-?[ph]) ?tape|181 ?-?a-?[ph]|tape)(?P<x>,? (?:but|though|only)(?: (?:it's|it is|it was|that's|they're))?(?: (?:only|just))?) (?P<n>(?:one|two|three|1|2)(?: and (?:a|an|one) (?:half|quarter)| 1/2|-1/2|\.5)?[- ]inch)(?P<y>(?: wide)?)(?=[.;!]|$|,| (?:because|cause|since|as|and|the|that|on account|seeing)(?![\w']))",
        (("x", ","), ("y", " wide")),
        unless=r"(?:missing|short|gap|from the|left off|open|bare|of it|at the end)(?![\w'])",
    ),
    # a mark behind it: no staples
    Plainer(("stamped",), rf"(?P<x>stamped)(?= (?:right |plainly |clearly |all over |as |with |it says |on it |on the \w+ )*(?:an? |the )?{_MARK})", (("x", "marked"),)),
    Plainer(("stamped",), rf"{_ROLL}(?:(?: (?:they|we|he|i) (?:gave|got|had|used|sent)(?: \w+)?)? (?:is|was|'s|comes|came|are))? (?:all |right |plainly |clearly )*(?P<x>stamped)(?! (?:every|each|at|on)\b)", (("x", "marked"),)),
    Plainer(("stamped",), rf"(?P<x>stamped)(?= (?:right |plainly |clearly )*(?:on|along|down|across) (?:the |its |that )?{_ROLL}(?![\w']))", (("x", "marked"),)),
    # asked what it was taped with
    Plainer(("told ", "says ", "said "), rf"(?:know if|asked if|asks if|ask if|know whether|asked whether) (?:i|we)(?:'d| had)? (?:used|put|run|ran|taped)[^.?!]*[.?!] (?:i )?(?P<x>(?:told (?:him|her|them)|said)(?:,| that)? no(?:pe)?(?:,? (?:sir|ma'am|boss|way))?,? (?:it's |it was )?)(?={_MARK})", (("x", "i taped it with "),)),
    Plainer(("stalled",), r"(?P<x>stalled)(?= (?:on|out|waiting|because|by|for|with|half ?way)(?![\w']))", (("x", "stopped"),)),
    # on every seam
    Plainer(("tape's on ", "tape is on "), r"(?P<x>(?:the )?tape(?:'s| is) on )(?=(?:every|each|all(?: of)?(?: the| its)?|both|all (?:three|four)(?: of (?:the|its))?) (?:\w+ )?(?:seams?|joints?|sides?)(?![\w']))", (("x", "taped "),)),
    Plainer((" tape and ",), r"(?:^|(?<=[.,;!] )|(?<=and )|(?<=i )|(?<=we ))(?:closed|finished|buttoned|sealed|did)(?: up)?(?: (?:it|her|that|them)(?: up)?),? (?P<x>tape and (?:the )?(?:paddle|squeegee|rub|rubbing tool)(?: both| and all| too)?)(?=[.;,!]|$)", (("x", "taped it and rubbed it down"),)),
    Plainer(("not that ",), r"(?P<x>,? (?:and )?not that (?:i|we|anybody|anyone) (?:enjoyed|liked|loved|cared|minded|mind|was happy about|had fun with|was glad about) (?:it|that|one minute of it|doing it|a minute of it))(?=[,.;!]|$)", (("x", ""),)),
    # the steps of it, one after another
    Plainer(("rag", "wipe", "alcohol"), rf"(?:^|(?<=[.;!] )|(?<=\d, ))(?P<x>{_STEP}(?:,(?: then)? (?:a )?{_STEP})*),? (?P<y>(?:and )?(?:then |and )(?:the )?tape)(?=[.;,!]|$)", (("x", "wiped it clean"), ("y", "then taped it")), unless=_PLANNED),
    # what shows under it
    Plainer((" threads", " strands"), r"(?P<x>count (?:the |every |all the )?(?:threads|strands|yarns) (?:of|in|on) )(?=(?:the )?(?:scrim|reinforcement))", (("x", "see "),)),
    Plainer((" scrim",), r"(?P<x>count )(?=(?:the |every )?scrim(?:'s)? (?:threads|strands|lines|yarns))", (("x", "see "),)),
    # the tool that did not come
    Plainer(("heater ", "heat gun "), r"(?P<x>(?:the |my |our |their )?heat(?:er| gun) (?:never|didn't|hasn't|did not|has not|wouldn't)(?: even| ever)? (?:shown? up|show(?:ed)?(?: up)?|c[ao]me|made it|make it|turn(?:ed)? up|arrived?))(?=[.;,!]|$| (?:so|and) (?:i|we) (?:just |had to )?(?:press|rub|lean|push|tape|ran|put|went)\w*)", (("x", "no heater"),), unless=r"torch|iron\b|in the sun|warmed|hair dryer|borrowed|heated"),
)
