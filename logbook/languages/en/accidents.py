"""English that tells what befell a piece and not what it did to it: "it fell off the horses", "a forklift caught the corner".

He may have looked it over and found nothing, or not have looked: it is asked, unless he tells of the facing himself. Rows like those of `ailing.py`.
"""

from __future__ import annotations

_IT = r"(?:it|this one|this|that one|her|(?:the|my|this|that) (?:\w+ )?(?:piece|fitting|duct|board|elbow|transition|reducer|offset|tee|wye|straight|section|collar|cap|sleeve|plenum|side|end|top|bottom|corner|edge|facing|foil|male end|female end|shiplap|flap|panel))"
_SHE = r"(?:it|this one|that one|she|the whole (?:thing|piece)|(?:the|my) (?:piece|fitting|duct|elbow|transition|reducer|offset|tee|wye|straight|section|collar|cap|sleeve|plenum))"
_THING = r"(?:pipe|conduit|drill|hammer|wrench|ladder|beam|stud|plank|two by four|bucket|hard hat|battery|screwdriver|screw gun|staple gun|stapler|tool ?box|tool bag|tools?|box|rod|strut|hanger|light|sprinkler head|brick|block|drywall|sheetrock|sheet of \w+|section|something|somebody's \w+)"
_RIG = r"(?:fork ?lift|forks|scissor lift|boom lift|lift|cart|buggy|pallet jack|truck|van|dolly|ladder|scaffold(?:ing)?|gang ?box|door|hoist|tail ?gate|drywall cart|hand truck|(?:the|a|some) (?:drywaller|painter|plumber|electrician|sparky|fitter|laborer|kid|guy)s?|somebody|someone|they|he)"
_ON = r"(?:on|onto|against|into|across)"
_BUMPS = r"(?:caught|clipped|hit|bumped|backed into|backed over|ran into|ran over|rammed|smacked|banged(?: into)?|knocked(?: into)?|whacked|bashed|walked into|rolled (?:into|over)|drove (?:into|over)|swung into|leaned on|leaned against|stood on|knelt on|kneeled on|sat on|climbed on|walked on|crawled over)"

ENGLISH_ACCIDENTS: tuple[tuple[tuple[str, ...], str], ...] = (
    (("facing_damage",), rf"{_SHE}(?:'s| has| had| just| went and| kind of)* (?:fell|fallen|tumbled|rolled|blew|blown|tipped|toppled)(?: right| clean| straight)? (?:off|over|down the|on its|out of my hands?)(?! schedule| the (?:drawing|list)| (?:a|one|two|three|four|five|six|\d)).*"),
    (("facing_damage",), rf"{_SHE}(?:'s| has| had| just| kind of)* (?:took|taken) (?:a|quite a|one) (?:\w+ )?(?:fall|tumble|spill|dive|hit|knock|whack|beating|lick|bump|ride)\b.*"),
    (("facing_damage",), rf"(?:i|we|he|they|somebody|someone|the \w+|my \w+) (?:dropped|drop) {_IT}(?! (?:a|an|about|one|two|three|four|five|six|seven|eight|\d|down|in|into|off at|by|to|below|over)\b)(?: (?:on (?:the )?(?:floor|ground|concrete|slab|deck|stairs|corner|end|edge)|coming|going|getting|while|when|once|twice|pulling|carrying|off the) ?.*)?$"),
    (("facing_damage",), rf"(?:a|the|my|his|their|some)? ?(?:\w+ )?{_THING}s? (?:fell|dropped|came down|crashed|landed|rolled|slid|tipped)(?: (?:right|down|over|off))* {_ON} {_IT}\b.*"),
    (("facing_damage",), rf"(?:dropped|set|leaned|threw|slid|rolled) (?:a|an|the|my|his|their|somebody's|some) (?:\w+ )?{_THING} {_ON} {_IT}\b.*"),
    (("facing_damage",), rf"{_RIG}(?:'s| has| had| just| kind of| almost)* {_BUMPS} {_IT}\b(?! with\b).*"),
    (("facing_damage",), rf"{_SHE}(?:'s| has| had| was)?(?: been| got| gotten| get)+ (?:hit|bumped|clipped|banged(?: around)?|knocked (?:around|over|down|off)|dropped|kicked(?: around)?|leaned on|backed into|run into|rolled over|stepped over|sat on|stood on)(?: (?:by|on|with|when|coming|going|in|off|around|once|twice|a) ?.*)?$"),
    (("facing_damage",), rf"(?:mice|mouse|rats?|squirrels?|birds?|pigeons?|a dog|the dog|critters?|animals?)(?: (?:has|have|had))? (?:got|gotten|been|were|was|nested|lived)(?: (?:at|in|into|on|to|inside))+ (?:{_IT}|the (?:liner|insulation|glass|inside))\b.*"),
)
