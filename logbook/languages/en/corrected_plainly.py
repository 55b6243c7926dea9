"""English that sets a measure right by its number alone: "a hundred degrees, no, three hundred" has the unit once, and "three inches wide, sorry, two" what it measures."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.en.measured_next import _V
from logbook.languages.plainer import Plainer

_NO = r"(?:no|nope|wait|sorry|oops|hold on|hang on|(?:scratch|strike|change) that|correction|i mean|make (?:that|it)|i misspoke|i take (?:that|it) back|take (?:that|it) back|(?:take back|scratch|strike|forget) (?:the|that) last (?:part|bit|thing|one)|my mistake|i lie)"
_FIXES = rf"(?P<j>[.,;]) (?:(?:and|but|well|oh|ah) )*{_NO}(?:[,.:;-]? {_NO})*[,.:;-]? (?:(?:it's|it is|that's|they're|to|more like|really) )*"
_TAKE = r"(?:scratch|strike|forget|erase|delete|ignore|disregard|take back|never ?mind|cancel|scrap|kill|drop)(?: about)?"
_LAST = r"(?:the|that|this|my) (?:very )?last (?:part|bit|thing|piece|one|statement|line|sentence|word|item|count|number)(?: (?:of (?:that|it)|i (?:just )?(?:said|told you|gave you)))?"
_INSTEAD = r"(?=(?:[,.;:-]| -)+ (?:(?:and|but|well|it's|that's|they're|it is|that is|i|we|it|there's|there are|actually|really|in fact|make it|should be|it was|is|was|got),? )*(?:not|never|only|just|didn't|did not|haven't|hasn't|couldn't|isn't|wasn't|ain't|aren't|no|none|nothing|every|taped|stapled|rubbed|wiped|trimmed|one|two|three|\d|an? )(?![\w']))"
_END = r"(?=[.,;!]|$| and| but)"

_IN_DOORS = r"(?:truck|trailer|van|cab|office|shop|house|lunch ?room|break ?room|car|conex|container)"

ENGLISH_CORRECTED_PLAINLY = (
    Plainer((" does have ", " do have ", " does got "), r"(?:it|this one|that one|this|that|they|she|\d{1,3})(?P<x> (?:does|do) (?:have|got)) (?!to\b|a (?:question|problem)\b)", (("x", " has"),), unless=r"(?:what|which|where|why|how|who)(?: \w+)? do(?:es)?\b"),
    Plainer((" i had", " we had"), r"(?:^|(?<=[.!?;] ))(?P<x>had (?P<i>i|we) (?=had |known |gotten |got |brought |found |the time)(?P<v>had|known|gotten|got|brought|found)?)(?=.*(?:isn't|it's not|is not|wasn't|didn't))", (("x", r"if \g<i> had \g<v>"),)),
    Plainer(("except ", "only "), rf"(?<=[.;!] )(?P<x>except(?: that| for| on)?,? )(?=(?:number |straight |elbow |tee |the )?{NUMBER} (?:has|is|isn't|was|wasn't|got|needs|still|never|hasn't|doesn't))", (("x", "but "),)),
    Plainer(("mine ", "ours "), r"(?P<x>(?:mine|ours) (?:(?:all )?(?:came out|come out|turned out|ended up|are|were|is)(?: at)?)) (?=(?:\w+|\d+)(?: and a half)?(?:[- ]inch(?:es)?)? long)", (("x", "they're"),), beside=("tabs", "strips")),
    Plainer((" on the duct", " on the skin", " on the jacket", " on the panel", " on the metal"), rf"(?:it was|it's|it is|was|read|reads|showed|shows|got|measured|only|about|around|but) (?:(?:about|maybe|only|around|like) )*{_V}(?: degrees)? on (?P<x>the (?:duct|skin|jacket|panel|metal|duct ?board))(?=[.,;]|$| (?:when|while|with|and|but|so|this|before|today|right)\b)", (("x", "the board"),), unless=r"pounds?|lbs|pressure|inch"),
    # --- how warm it was where he sat, beside how warm what he taped was
    Plainer(
        tuple(f" {place}" for place in ("truck", "trailer", "van", "cab", "office", "shop", "house", "lunch", "break", "car", "conex", "container")),
        rf"(?P<x>(?:(?:it|that)(?:'s| is| was) )?(?:(?:about|maybe|around|like|a nice|a cozy) )*(?:{_V})(?: degrees)? (?:in|inside|up in|back in) (?:the|my|his|our) (?:\w+ )?{_IN_DOORS}(?:,? (?:but|and|though)|[.,;])) (?P<y>(?:it was |it's |was |and |only )*)(?=[^?]{{0,30}}? on the (?:duct|board|foil|facing|surface|skin|jacket|panel)(?![\w']))",
        (("x", ""), ("y", "it was ")),
    ),
    Plainer(("degrees", "pounds", "lbs"), rf"(?<![\w'/-]){_V} (?P<u>degrees|pounds|lbs){_FIXES}{_V}(?P<x>){_END}", (("x", r" \g<u>"),)),
    Plainer((" wide",), rf"(?<![\w'/-]){_V}(?: |-)inch(?:es)?(?P<w> wide){_FIXES}{_V}(?: inch(?:es)?)?(?P<x>){_END}", (("w", ""), ("x", " wide"))),
    # --- what he said last is taken back, and is told otherwise behind it; a count of sides by its number alone
    Plainer((" last ",), rf"(?<=[.,;!] )(?:(?:no|wait|oh|sorry|actually|and|but|so),? )*{_TAKE} (?P<x>{_LAST}){_INSTEAD}", (("x", "that"),)),
    Plainer(
        (" sides", " side"),
        rf"(?:taped|stapled)(?: (?:on|up|along|down))*(?: (?:all|the))* (?:four|4|three|3) sides{_FIXES}(?:(?:only|just|it's|there's|i only (?:did|got)|i (?:did|got)|make (?:it|that)|like),? )*(?:one|two|three|1|2|3)(?P<x>){_END}",
        (("x", " sides"),),
    ),
    # --- he was right before: "every three, no, two, no, I was right, three"
    Plainer(("right",), rf"(?<=[.,;] )(?:(?:no|wait|hold on|nope),? )*(?P<x>(?:i (?:was|had (?:it|that)) right(?: (?:the first time|before|at first|all along|to begin with))?|(?:the )?first (?:one|number|time) was right|right the first time)[.,;:]? (?:it's |it is |that's )?)(?={_V}{_END})", (("x", "no, "),)),
    Plainer(("right",), rf"(?<![\w'/-]){_V}(?: inch(?:es)?)?(?P<x>[.,;] (?:(?:no|wait|sorry|make that|make it|i mean),? )+{_V}(?: inch(?:es)?)?[.,;] (?:(?:no|wait|nope|hold on),? )+(?:i (?:was|had (?:it|that)) right(?: (?:the first time|before|at first|all along|to begin with))?|(?:the )?first (?:one|number|time) was right))(?=[.;!]|$)", (("x", ""),)),
    # --- what was wrong is named, and the right measure stands alone: "I gave you the wrong length on straight fourteen. It's forty-six"
    *(
        Plainer(
            (" wrong",),
            rf"(?P<w>(?:i|we) (?:gave|told|sent|had|got|said)(?: (?:you|them|him))? the )?(?:wrong (?:{thing})|(?:{thing})(?: (?:i (?:gave|told|sent|said|wrote|had))(?: (?:you|them|him))?)?(?: \w+)? wrong|(?:had|got|gave|told)(?: (?:you|them|him))? the (?:{thing}) wrong)(?: (?:on|for|of) (?:the |that )?(?:{KIND}|number)? ?(?:number )?(?:[a-z]-?)?{NUMBER})?(?: (?:was|is) wrong)?(?P<x>[.,;:] (?:(?:and|but|actually|really|well),? )*(?:it's|it is|it was|that's|should be|it should be|make (?:it|that)|right one is|the right one's)(?: (?:really|actually|supposed to be))*) (?={_V}(?: inch(?:es)?)?{_END})",
            (("w", ""), ("x", says)),
        )
        for thing, says in (("length", ". The length is"), ("(?:staple )?spacing", ". Stapled every"), ("gap", ". The gap is"))
    ),
    Plainer(
        ("length ",),
        rf"length i (?:gave|told|sent|said|wrote|had)(?: (?:you|them|him))? (?:on|for|of) (?:the |that )?(?:{KIND}|number)? ?(?:number )?(?:[a-z]-?)?{NUMBER} (?:was|is) wrong(?P<x>[.,;:] (?:(?:and|but|actually|really|well),? )*(?:it's|it is|it was|that's|should be|it should be|make (?:it|that))(?: (?:really|actually))*) (?={_V}(?: inch(?:es)?)?{_END})",
        (("x", ". The length is"),),
    ),
    # --- to and fro, and back again: "It's a supply. No, return. Supply, sorry, supply."
    Plainer(("supply", "return", "exhaust"), r"(?<=[.!?,] )(?P<x>(?P<s>supply|return|exhaust),? (?:(?:sorry|no|wait|i mean|yeah|yes)[,. ]+)+(?:it's )?(?P=s))(?![\w'])", (("x", r"no, \g<s>"),)),
)
