"""English frames of any act: what he never got to, and an act that went over a spot and no farther."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.en_acts import ENGLISH_ACTS

_ONLY = r"(?: (?:only|just|down|up|about|maybe|like|it|her))*"
_SPOT = r"(?:single |little |lousy |short )?(?:edge|end|corner|stretch|spot|strip|patch|section)"
_TIME = r"(?:(?:when|once|as soon as|whenever) (?:i|we|it|they|the|he|she|somebody|my|there)(?:'\w+)?|in (?:the (?:morning|afternoon|evening)|a (?:bit|minute|while|few))|some other time|another (?:day|time)|by (?:\w+day|noon|tonight|tomorrow)|before (?:i|we) (?:leave|go|quit|knock off))"
_FEW = r"(?:a|one|two|three|four|five|six|eight|ten|\d+|half a|a couple|a couple of|a few|the first|the first few|the first couple(?: of)?) (?:foot|feet|ft|inch|inches)"

ENGLISH_ACTS_TOLD = replace(
    ENGLISH_ACTS,
    hints=ENGLISH_ACTS.hints + r"| an? |foot|feet|inch|saving|saved",
    begins_anew=r"\b(?:so|but|because|cause) (?=i\b|we\b|it\b|nobody\b)",
    undone=(
        *ENGLISH_ACTS.undone,
        r"(?:never(?: ever| even| did| really)?|haven't|hasn't|have not|has not|hadn't)(?: yet| even| ever| really)? (?:got|get|gotten) to (?:even |actually |ever )?{verb}\b(?![^.;]*\b(?:until|till|before)\b)",
    ),
    to_do=(
        *ENGLISH_ACTS.to_do,
        rf"(?:saving|saved|keeping) (?:the |my )?(?:{{noun}}|{{doing}}) for (?:{_TIME}|after|tomorrow|later|next|the morning|lunch|\w+day|tonight|this afternoon)\b",
    ),
    partly=(
        *ENGLISH_ACTS.partly,
        r"{noun}(?: down)?(?:'s| is) (?:only|just|barely|hardly) (?:started|begun|half done)\b",
        rf"{{done}}{_ONLY} {_FEW}(?: or so| or two)? (?:of (?:it|them|this one|that one|the (?:seam|joint|edge|side|flap|tape|straight|tee|piece|thing)s?)|on (?:one|each|the) (?:end|side))\b",
    ),
    across=(
        *ENGLISH_ACTS.across,
        ("to_do", rf"(?:gets|will get|'ll get) {{done}}(?: down| up)?,? {_TIME}\b[^.;,]*"),
        ("to_do", rf"(?:{{noun}}|{{doing}})(?: down)?(?:'s| is| will be|'ll be| comes| happens| waits)(?: for)? {_TIME}\b(?! (?:found|saw|noticed|tore|cut|broke|heard))[^.;,]*"),
        (
            "partly",
            rf"{{done}}{_ONLY} (?:one|a) {_SPOT}(?: of (?:it|them))?(?: or so| or two| only)?(?=$|[.;]|,(?! (?:and |then |now |so )*(?:(?:i|we) )?(?:did |got |(?:{{!done}} ))?(?:it |them )?(?:on )?(?:the )?(?:other|others|second|next|another|rest|last|both)\b))",
        ),
    ),
)
