"""Of what there is none: a part of the piece, so that two denials are none ("no seam I didn't tape"), or a thing beside it ("no time, the tape isn't rubbed")."""

from __future__ import annotations

import re

_OF_WHAT = re.compile(
    r"\b(?:nothing|none|any|one|thing|joint|seam|side|corner|edge|spot|inch|foot|place|part|piece|bit|section|fitting|end|lip|crack|gap|hole|tear|staple|tape|tab|vane|flap|panel|face|strip|square|\w*where|straight|elbow|tee|cap|collar|run|nail|way|chance)s?\b|<"
)
_RELATIVE = re.compile(r"\b(?:that|which|que|without|no hay)\b|\bun(?:$|taped|stapled)")
_UP_TO_ITS_SUBJECT = re.compile(r"(?:(?!\b(?:the|my|it|i|we)\b).)*")
_NO_THING = re.compile(r"no (?:(?:single|one|bare|open|loose|other|more|damn|inside|outside|top|bottom|left|right|back|front|male|female|end|long|short|whole|foil) )*\S+")


def of_a_part(said: str) -> bool:
    """Whether what there is none of could be a part of the piece: "no seam …", not "no time …", "no help today …"."""
    head = (_NO_THING.match(said) or _UP_TO_ITS_SUBJECT.match(said)).group()
    return _OF_WHAT.search(head) is not None or _RELATIVE.search(said) is not None
