"""English words for a part of a piece that a measure is told of."""

from __future__ import annotations

from logbook.languages.en.set_apart import PART, PLACE, WHICH
from logbook.languages.en.stretches import STRETCH
from logbook.languages.told import PartsTold

_WORD = (
    "tops?|bottoms?|left|right|sides?|faces?|cheeks?|ends?|seams?|joints?|heel|throat|corners?|edges?|flaps?|backs?|front|underside|underneath|panels?|branch|collar|mouth|neck"
    "|start|beginning|middle|bend|curve|radius|stretch|spots?|places?|rest|others?|ones|remainder|balance|elsewhere|everywhere|fourth|first|last"
)

ENGLISH_PARTS_TOLD = PartsTold(
    word=rf"(?<![\w'])(?:{_WORD})(?![\w'])",
    named=rf"(?<![\w'])(?:{PART})|{STRETCH}|^(?:{WHICH} )*{PLACE}|(?<![\w'])the (?:{WHICH}) ones?(?![\w'])|(?<![\w'])one of (?:the|its) (?:\w+ )?(?:sides?|corners?|seams?|joints?|edges?|ends?|faces?|panels?)(?![\w'])",
    further=r"(?<![\w'])(?:then|after that|from there|past|by the (?:time|end)|towards?|near(?:er)?|until|till|rest|others?|last|except|only|some|few|couple|one|another|spans?|ends?|but|where|further on|farther on|halfway|half)(?![\w'])",
    then=r"(?:and |but )*(?:after that|from there(?: on)?|past that|beyond that|then|towards the end|further (?:on|down|along|up))(?![\w'])",
    that=r"(?:and |so )*(?:which|that's|that is|it's|it is|they're|they are|those are|there it's|there they're|it comes to|they came out)(?![\w'])",
    again=r"\b(?:when|with|once|whenever|if|after|by the (?:time|last|end)|goes? (?:up |down )?to|went (?:up |down )?to|gets? (?:up )?to|got (?:up )?to|jumps? to|climbs? to|climbed to|hits?|more like|reads?|showed|shows|peaks? at|up to|dropped (?:off |down )?to|fell (?:off |down )?to|(?:was |is |gone |had come )?down to|cooled (?:off |down )?to|at (?:night|noon|full|start ?up)|on a (?:cold|hot|bad) \w+)(?![\w'])",
    unlike=r"(?<![\w'])(?:over)?lap(?:s|ped|ping)?(?![\w'])|(?<![\w'])(?:cent(?:er|re)ed|(?:each|either) side|past the (?:seam|joint|edge))(?![\w'])",
    by_now=r"(?<![\w'])(?:now|fixed|redid|redone|added|changed|went (?:back|over)|again|used to|originally|at first|first (?:go|try|time|pass)|before i|pulled|filled in|respaced|re-?stapled|tightened|moved|should|supposed|wanted|drawing|print|plan)(?![\w'])",
)
