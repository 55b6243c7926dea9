"""English for the speaker and somebody with him."""

from __future__ import annotations

from logbook.languages.together import Together

_AND = r"(?:and|&|n|'n'?)"
_AND_ME = r"(?:I|i|me|myself)"

ENGLISH_TOGETHER = Together(
    looks=r"(?i)\b(?:us|(?:and|&|n) (?:i|me|myself)|(?:me|myself) (?:and|&|n))\b",
    people=(
        r"(?:(?:[Mm]y|[Tt]he|[Oo]ur|[Tt]his|[Tt]hat) (?:new |young |other |old |big |little )?(?:helper|partner|buddy|boy|kid|guy|fella|son|brother|cousin|nephew|uncle|dad|wife|apprentice|journeyman|lead|foreman|boss|super|mechanic|crew|guys|boys|team|tin ?knocker|laborer|second man|new guy|other guy|old man)"
        r"|[Hh]im|[Hh]er|[Hh]e|[Ss]he|[Tt]hem)"
    ),
    pairs=(
        rf"(?:{{name}}, )?{{name}},? {_AND} {_AND_ME}",
        rf"(?:[Mm]e|[Mm]yself) {_AND} {{name}}(?:,? {_AND} {{name}})?",
        r"(?:[Tt]he|[Bb]oth|[Aa]ll) (?:two |three |four |both )?of us(?: both| two| three)?",
        r"(?:[Bb]oth|[Tt]wo|[Aa]ll|[Tt]hree) of us",
        r"[Uu]s (?:two|three|guys|both|all)",
    ),
    not_behind=(
        r"(?i)\b(?:with|to|for|from|by|of|between|than|like|on|at|about|without|behind|beside|over|under|near|told|tell|tells|let|lets|give|gave|gives|sent|send|ask|asked|asks|help|helped|make|made|had|have|has|got|get|saw|see|show|showed|call|called|want|wants|wanted"
        r"|need|needs|needed|owe|owes|leave|left|thank|thanks|meet|joined|nor|neither|either|was|wasn't|were|is|isn't|not|none|one|any|some|each|most|paid|put|found|heard|caught|left|it's|that's|(?:no|every|any)(?:body|one) but) $"
    ),
    before=r" (?!(?:it|is|isn't|it's|that|this|the|a|an|and|or|but|so|for|to|in|on|at|by|with|of|from|no|there|there's|i|i'm|i've|i'll|he|she|they|you|who|me|both)\b)[a-z][\w']*|'(?:ve|ll|d|re)\b",
    days=frozenset("monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december today tomorrow yesterday".split()),
    we="we",
    as_one=(("we're", "I'm"), ("we are", "I am"), ("we were", "I was"), ("we weren't", "I wasn't"), ("we aren't", "I'm not"), ("we", "I"), ("our", "my")),
    only_as_many=r" (?:[a-z]+ing|forget)\b",
)
