"""English sentences that tell what will be built or how it is to be done, and so nothing of any piece: regular expressions over the start of a clause."""

from __future__ import annotations

from logbook.languages.turns_of_words import WholeTurns

_WHEN = r"(?:(?:tomorrow|tonight|monday|tuesday|wednesday|thursday|friday|saturday|first thing|next week|next|in the morning|after lunch|after break|later),? )?"
_LATER = r"(?:tomorrow|tonight|later|in the morning|after lunch|after break|next week|monday)"

_SOON = r"(?:tomorrow|tonight|monday|tuesday|wednesday|thursday|friday|saturday|first thing|next week|in the morning|after lunch|after break)"
_PIECE = r"(?:the |a |an |that )?(?:straight|elbow|ninety|forty-five|tee|wye|branch|cap|end cap|collar|transition|reducer|offset|plenum|boot|section|piece|number|hanger|damper)s?\b"

ENGLISH_PLANS = WholeTurns(
    plans=(
        _SOON + r",? (?:(?:i'll|i will|i'm going to|i'm gonna|gonna|we'll|we will|we're going to) (?:just |also |then |probably )*(?:do|start|start on|tackle|get to|get on|lay out|be on|knock out) |(?:i do|i make|i build|i start|i start on|i'm on|we do|we make|we build|we start on|we're on|it's) )" + _PIECE,
        r"(?:i'll|i will|i'm going to|i'm gonna|gonna|going to|we'll|we will|we're going to) (?:just |also |then |probably )*(?:do|start|start on|tackle|get to|get on|lay out|be on|knock out) " + _PIECE + r"(?:(?!\b(?:and|so|but)\b).)*\b(?:next|after this|" + _SOON + r")\b",
        _WHEN + r"(?:i'll|i will|i'm going to|i'm gonna|i am going to|gonna|going to|we'll|we will|we're going to|we're gonna) (?:just |also |then |probably )?(?:build|make|knock out|put together|whip up|whip out|fab|fabricate|bang out|crank out)\b(?! sure)",
        r"(?:i'm|i am|we're|we are) (?:doing|building|making|starting|starting on)\b(?:(?!\b(?:and|so|but)\b).)*\b" + _LATER + "$",
        r"(?:go )?(?:put|stick|throw|slap) (?:the |some |those |that |more )?(?:tape|vanes|staples|mastic|tabs|cross tabs)\b(?:(?!\b(?:and|so|i'm|i'll|we|i)\b).)*\b" + _LATER + "$",
    ),
    orders=(
        r"before you (?:close|cover|hang|leave|start|build|wrap|button|finish|seal|head)\b(?!.*\b(?:i|we)\b)",
        r"(?:(?:we|i|you|they) )?(?:still )?(?:need|needs|got|gotta|have|want) ?(?:to )?(?:order|buy|pick up|fetch|send for|send out for)\b",
        r"what (?:happens|would happen|if) (?:i|we|you|somebody|a guy)\b",
    ),
    leads=r"(?:(?:and|but|so|well|ok|okay|hey|oh|now|then|listen|look|alright|all right),? )*",
    own_again=r"(?:but |and |so )?(?:mine|ours|i|we|this one|it's|it is|that one's|that one is)\b",
)
