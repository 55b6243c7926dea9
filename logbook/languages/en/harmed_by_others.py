"""English of harm that somebody or something else did to the piece: "a ladder foot put a hole in the facing", "the electrician went through it".

Whoever did it, it is on the piece, and is read as what he tells of it himself. Rows like those of `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.names import FIRST_NAMES
from logbook.languages.plainer import Plainer

_NAMES = "|".join(sorted(FIRST_NAMES))
_WHO = (
    r"(?<!if )(?<!unless )(?<!before )(?<!who )(?<!from )(?<!in case )(?<!so )(?:(?:somebody|someone|some(?: other)? (?:guy|fella|dude|kid|idiot|trade|clown|genius)|somebody|someone|one|two|another|couple)(?: of (?:the|them|my|our|those)(?: \w+)?)?(?: else)?(?:'s \w+)?"
    rf"|(?:the|my|our|that|a|an|his|their|some) (?!(?:only|first|last|tape|staples?|vanes?|flap|facing|foil|scrim|edge|joint|seam|corner|one|same|next|other (?:one|piece)|drawing|plan|book|spec|inspector|side|end)\b)(?:[a-z]+ )?[a-z]+(?:'s \w+)?|they|he|she|(?:{_NAMES})(?:'s \w+)?)"
)
_LED = r"(?: (?:has|have|had|must have|must've|already|just|then|went and|accidentally|somehow|kind of|also|backed up and|came by and|came through and|slipped and|fell and))*"
_SKIN = r"(?:the |this |that |my )?(?:whole |outer |outside )?(?:facing|foil|jacket|scrim|skin|corner|edge|side|panel|board|end|face|heel|throat|cheek)(?![\w'])"
_INTO = rf"(?:in|on|into|through|down|across|at|along|near)(?: to)? (?:{_SKIN}|it(?![\w'])|this(?: one)?(?![\w'])|that one|one (?:side|corner|end|edge)|the (?:top|bottom|back|front|left|right))"
_MARKS = r"(?:a|an|another|two|some|one)(?: (?:big|little|small|long|good|nice|bad|clean|nasty|quarter|half|[\w-]+[- ]inch|fair|pretty good))* (?:hole|tear|rip|gash|dent|slit|cut|puncture|scrape|scratch|gouge|ding|nick|split)s?"
_MADE = rf"(?:punched|put|poked|knocked|kicked|drove|ran|made|left|stuck|tore|cut|bumped|jabbed|ripped) {_MARKS} {_INTO}"
_TORE = rf"(?:tore|torn|ripped|dented|dinged|crushed|mashed|smashed|scraped|scratched|gouged|punctured|nicked|clipped|caught|split|creased|banged up|beat up|chewed up) (?:up )?(?:{_SKIN}|it(?! (?:to|off|down|out|back|up to|at|for|from|in|short|long|square|straight|clean|by|with|into)\b)(?![\w'])|one (?:corner|side|edge|end)|the (?:top|bottom|back))"
_SLICED = r"(?:cut|sliced) (?:up |right |clean )?(?:through |into )?(?:the |this |that |my )?(?:facing|foil|jacket|scrim|skin)(?![\w'])"
_THROUGH = rf"(?:(?:went|gone|go|put (?:his|their|her|a|the) \w+(?: \w+)?|stuck (?:his|their|a|the) \w+|ran (?:a|the|his) \w+|fell) (?:right |clean |straight |up )*(?:through|into)|stepped (?:right |hard )*(?:through|on|onto)) (?:{_SKIN}|it(?![\w']))"
_CUES = (" hole", " tear", " rip", " gash", " dent", " slit", " cut", " punctur", " scrap", " scratch", " goug", " ding", " nick", " split", " tore", " torn", " dented", " crush", " mash", " smash", " slice", " clipp", " caught", " crease", " bang", " beat", " chew", " through", " stepped")

_OUT = r"(?:left|set|stood|stacked|put|let) (?:it|this one|that one|them|the (?:piece|board|duct|section|straight|elbow|tee))(?: sit)?(?: out)?(?: outside)? (?:in|under) (?:the )?(?:rain|weather|wet|mud|puddle|drip|leak|snow|water)"
_SKIN_CUES = ("facing", "foil", "jacket", "scrim", "skin", "corner", "edge", "side", "panel", "board", " end", "face", "heel", "throat", "cheek", " it", "this", "that one", "top", "bottom", "back", "front")

ENGLISH_HARMED_BY_OTHERS = (
    Plainer((" rain", " weather", " wet", " mud", " puddle", " drip", " leak", " snow", " water"), rf"(?<![\w'-])(?P<x>{_WHO}{_LED}) (?={_OUT})", (("x", "I"),)),
    Plainer((" through",), rf"(?<![\w'-])(?P<x>(?:{_WHO}{_LED}|i|i accidentally|i just) (?:went|gone|ran|poked|busted|came) (?:right |clean |straight )*through) (?={_SKIN})", (("x", "I punctured"),)),
    Plainer(_CUES, rf"(?<![\w'-])(?P<x>{_WHO}{_LED}) (?={_MADE}|{_TORE}|{_SLICED}|{_THROUGH})", (("x", "I"),), unless=r"on the (?:last|other|next) job|yesterday's|(?:his|her|their) (?:glove|pants|shirt|thumb|finger|hand|jacket)s?(?![\w'])", beside=_SKIN_CUES),
)
