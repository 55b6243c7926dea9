"""Units and number words of English."""

from __future__ import annotations

from logbook.languages.language import Numbers
from logbook.languages.told import LoneNumbers

UNITS = (
    ("in", "in|inch|inches|inchers|incher|\"|''|”|in.|inchs|inche|ins|''"),
    ("ft", "foot|feet|foots|feets|ft|ft.|'|’|footer"),
    ("mm", "mm|millimeter|millimeters|millimetre|millimetres|mil|mils|millis"),
    ("cm", "cm|centimeter|centimeters|centimetre|centimetres|centi"),
    ("m", "m|meter|meters|metre|metres"),
    ("deg", "degree|degrees|deg|°|degree's"),
    ("degF", "degrees fahrenheit|fahrenheit|degrees f|°f|f|deg f|degree f"),
    ("degC", "degrees celsius|celsius|centigrade|degrees c|°c|degrees centigrade|c|deg c"),
    ("of water", "of water|water|water column|water gauge|of water column|of water gauge|of static"),
    ("lps", "liters a second|liters per second|litres a second|litres per second|liter a second|l/s|lps"),
    ("cfm", "cfm|cubic foot per minute|cubic foot a minute|cubic feet per minute|cubic feet a minute|c.f.m.|cfms|c f m|cubic feet"),
    ("inwg", "\" w.g.|\" wg|\" w.c.|\" wc|\" of water|in. w.c.|in w.c.|in. wc|'' w.g.|'' wg|inches of water|inch of water|inches water|inches w.g.|in. w.g.|in wg|inches wg|inch wg|inch w.g.|inches of water gauge|inch water gauge|inches water gauge|inch of water gauge|inches water column|inches of water column|inch water column|in. wg|inch water|inch of water column|inches wc|inch wc|iwg|w.g.|wg"),
    ("kpa", "kpa|kilopascal|kilopascals"),
    ("pa", "pascal|pascals|pa"),
    ("lb", "pounds|pound|lbs|lb|pounder|lb.|lbs."),
    ("kg", "kilos|kilograms|kg|kilogram|kilo"),
    ("ft2", "square foots|square feets|square feet|square foot|sq ft|sq. ft.|square ft|ft2|sf|sqft|ft²|feet squared|square footage"),
    ("m2", "square meters|square metres|m2|m²"),
)

NUMBERS = Numbers(
    ones={"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "zero": 0},
    teens={"ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
           "seventeen": 17, "eighteen": 18, "nineteen": 19},
    tens={"twenty": 20, "thirty": 30, "forty": 40, "fourty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90},
    hundreds={},
    scales={"hundred": 100, "thousand": 1000},
    halves={"half": (1, 2), "quarter": (1, 4), "third": (1, 3), "eighth": (1, 8), "8th": (1, 8), "sixteenth": (1, 16)},
    parts={"half": 2, "halves": 2, "quarter": 4, "quarters": 4, "fourth": 4, "fourths": 4, "eighth": 8, "eighths": 8,
           "sixteenth": 16, "sixteenths": 16, "third": 3, "thirds": 3, "thirty-second": 32, "thirty-seconds": 32,
           "sixty-fourth": 64, "sixty-fourths": 64, "fifth": 5, "fifths": 5, "tenth": 10, "tenths": 10},
    joins=("and", "n", "&"),
    articles=("a", "an"),
    point=("point",),
    zero_between=("oh", "zero", "aught", "ought", "o"),
)  # fmt: skip

# a number as it is said and written, for regular expressions over lower-case letters
SAID_COUNT = r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?|\d+(?:[ -]\d+/\d+|/\d+|\.\d+)?)"
SAID_NUMBER = rf"(?:(?:an?|one|three|five|seven) (?:half|quarters?|eighths?|sixteenths?)|{SAID_COUNT}(?: (?:and|&) (?:a|an|one|three|five|seven) (?:half|quarters?|eighths?|sixteenths?))?)"

_PAST = r"(?: (?:this|that|the|my|our|old|good old|poor|poor old|number|piece|fitting|here|there|is|was|mr|mister))*"
ENGLISH_LONE_NUMBERS = LoneNumbers(
    before_thing=rf"\b(?:through|thru|into|onto|in|on|of|with|behind|inside|against|about|happened to|look(?:s|ed|ing)? at|curs(?:ed|ing) at|swear(?:ing)? at|yell(?:ed|ing)? at|star(?:ed|ing) at|for|(?<!where )(?<!when )it's|this is|that's|that is|here's|here comes|call(?:ed)? it){_PAST}$",
    before_doing=(
        r"\b(?:kissed|gave|gives|brag about|bragged about|bragging about|hit|bumped|clipped|dinged|dented|dropped|tore|tears|ripped|rips|poked|pokes|gouged|nicked|knocked|knocks|crushed|crushes|smashed|squashed|flattened|soaked|drowned|stabbed|jabbed|nailed|banged|kicked|kicks|stepped on|steps on|stomped on|sat on|sits on|fell on|ran over|runs over"
        r"|backed over|backed into|backs into|drove over|leaned on|butchered|murdered|botched|ruined|wrecked|screwed up|messed up|trashed|forgot|forgot about|remember|skip|skipped|trim|trimmed|wipe|wiped|rub|rubbed|tape|taped|staple|stapled|clean|cleaned|patch|patched|mend|mended|fixed"
        rf"|finish|finished|love|hate|blame|hated|loved|left|put up|hung|hang|meet|introduce|presenting|about){_PAST}$"
    ),
    behind=r"\s*(?:$|[.,?!;:]|(?:and|but|or|so|with|because|'cause|cause|since|again|today|now|anyway|too|when|while|till|until|after|before|a (?:bath|shower|soaking|dent|hole|beating|kick|whack)|where|which|who|over|on the|in the|off the|from the|down|up|wide|open|this morning|right|all (?:turned|clinched|bent|curled|went|point|face|crooked|gone|torn|wet)|fits?|never|still|itself|there|good|like|has|had|is|isn't|was|wasn't)(?![\w'])|'s(?! (?:inch|foot)))",
    before_subject=r"(?:^|[,;:—-] ?|(?:^| )(?:and|but|so|because|cause|'cause|that|then|anyway|well|okay|ok|now|if|when|while|where|say|says|said|think|swear|know|admit|confess|like|poor|poor old|old|good old|my|our|number|piece|yeah|yes|no|oh|see)) ?$",
    subject=(
        r"\s*(?:(?:'s|is|was|are|has|had|isn't|wasn't|hasn't|ain't|didn't|doesn't|don't|did|does|won't|will|wouldn't|never|only|just|still|also|almost|nearly|finally|actually|really|got|gets|went|goes|took|came|comes|leaves?|left|fits?"
        r"|sits|looks|ended|turned|fell|made|needs?|needed|wants?|wanted|kicked|beat|gave|fought|kept|killed|broke|cracked|split|drank|swallowed|and (?:me|i|myself|my)|here|there|on the|wound up|caught|lost|leaks?|leaked|shows|stays|stands|ran|runs|put|stuck|snapped|held|holds|won|laughed|screamed|cried|smells|drove"
        r"|nearly|about|damn near|could|couldn't|might|should|must)(?![\w']))"
    ),
    opens=r"^(?:(?:and|but|so|okay|ok|well|now|yeah|oh|anyway|poor|old|number|piece) ?,? )*#\s*,(?! ?(?:\w+ ){0,2}(?:inch|inches|foot|feet|minutes|hours|bucks|years|guys|times|of)(?![\w']))",
    no_piece=(
        r"\b(?:born|bucks|dollars?|cents|grand|degrees|years?|percent|points?|minutes|hours|o'clock|a\.?m|p\.?m|miles|pounds|birthday|turned|turning|age|lottery|back in|class of|make sure|don't forget|remind|tell (?:him|her|them|the|\w+ to)|(?:needs|has|have|should|ought) to (?:be|do|get|finish)"
        r"|(?:other|another|next|night|day|last) (?:crew|shift|guys?|guy|one|outfit)|outside|out here|in here|in the (?:shade|sun)|the high|(?:won|lost|up|down) by|(?:i|we|he|they) (?:paid|bet|owe|won)|per|each|feet|foot|inch|inches|drawing|sheet|detail)(?![\w'])"
    ),
)
