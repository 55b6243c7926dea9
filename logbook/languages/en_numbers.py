"""Units and number words of English."""

from __future__ import annotations

from logbook.languages.language import Numbers

UNITS = (
    ("in", "in|inch|inches|\"|''|”|in.|inchs|inche|ins|''"),
    ("ft", "foot|feet|ft|ft.|'|’|footer"),
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
    ("pa", "pascal|pascals|pa"),
    ("lb", "pounds|pound|lbs|lb|pounder|lb.|lbs."),
    ("kg", "kilos|kilograms|kg|kilogram|kilo"),
    ("ft2", "square feet|square foot|sq ft|sq. ft.|square ft|ft2|sf|sqft|ft²|feet squared|square footage"),
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
