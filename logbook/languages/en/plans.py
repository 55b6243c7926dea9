"""English sentences that tell what will be built or how it is to be done, and so nothing of any piece: regular expressions over the start of a clause."""

from __future__ import annotations

from logbook.languages.turns_of_words import WholeTurns

_WHEN = r"(?:(?:tomorrow|tonight|monday|tuesday|wednesday|thursday|friday|saturday|first thing|next week|next|in the morning|after lunch|after break|later),? )?"
_LATER = r"(?:tomorrow|tonight|later|in the morning|after lunch|after break|next week|monday)"

_SOON = r"(?:tomorrow|tonight|monday|tuesday|wednesday|thursday|friday|saturday|first thing|next week|in the morning|after lunch|after break)"
_US = r"(?:(?:i think|i guess|i say|i reckon|maybe|probably|honestly|really|actually),? (?:that )?)*(?:i|we|they|all of us)"
_SO = r"(?: also| just| really| probably| maybe| all| always| try to| start to)*"
_BETTER = rf"{_SO}(?:'d (?:better|best|be better off|do better)| had better| had best| should| ought to| oughta| might want to| might wanna){_SO}"
_WAY = r"use|using|try|trying|start|starting|switch|switching|go with|go to|be using|be taping|be stapling|stick with"
_HOW = rf"(?:{_WAY}|(?:get|staple|tape)(?! (?:it|that|this|the|them|those|these|my)\b))"
_ON = r"(?:from (?:now|here|this point|today|then|tomorrow) (?:on|out|forward|onward|onwards)|from here on out|going forward|next time|on the next (?:one|ones|job|floor)|in the future|starting (?:tomorrow|monday|next week))"
_PIECE = r"(?:the |a |an |that )?(?:straight|elbow|ninety|forty-five|tee|wye|branch|cap|end cap|collar|transition|reducer|offset|plenum|boot|section|piece|number|hanger|damper)s?\b"

ENGLISH_PLANS = WholeTurns(
    plans=(
        rf"{_US}(?:{_BETTER} {_HOW}| could(?: also| maybe| just| probably)* (?:{_WAY}))\b(?!.*\b(?:so|and) (?:i|we)\b)",  # how it had better be done
        r"(?:let's|lets|let us|how about (?:we )?|what if we|what about|(?:it'd |it would |it might )?be (?:better|smart|nice|good|smarter) (?:to |if we )?|better to |better off |best to |why don't we )(?: just| all| maybe)* ?(?:use|using|used|try using|try the|switch|switching|be using|stick with)\b",
        r"(?:(?:i|we)(?:'ll|'re going to|'re gonna| will| are going to|'m going to|'m gonna)|gonna|going to) (?:(?!\b(?:and|but|so)\b).)*\b" + _ON + r"$",
        r"(?:we're|we are|i'm|i am|everybody's|they're|they are|(?:they|he|she) wants? us|we were told|he said|they said) (?:all |now |just |only |to be |to )*(?:using|use|going (?:with|to)|go (?:with|to)|running|switching(?: over)? to|switch to|sticking with|stick with|taping|stapling)\b(?:(?!\b(?:and|but|so)\b).)*\b" + _ON + r"$",
        _ON + r",? (?:let's|i'll|we'll|i will|we will|we should|i should|we're going|we're gonna|i'm gonna|i'm going|it's going|use)\b",
        _SOON + r",? (?:(?:i'll|i will|i'm going to|i'm gonna|gonna|we'll|we will|we're going to) (?:just |also |then |probably )*(?:do|start|start on|tackle|get to|get on|lay out|be on|knock out) |(?:i do|i make|i build|i start|i start on|i'm on|we do|we make|we build|we start on|we're on|it's) )" + _PIECE,
        r"(?:i'll|i will|i'm going to|i'm gonna|gonna|going to|we'll|we will|we're going to) (?:just |also |then |probably )*(?:do|start|start on|tackle|get to|get on|lay out|be on|knock out) " + _PIECE + r"(?:(?!\b(?:and|so|but)\b).)*\b(?:next|after this|" + _SOON + r")\b",
        _WHEN + r"(?:i'll|i will|i'm going to|i'm gonna|i am going to|gonna|going to|we'll|we will|we're going to|we're gonna) (?:go |just |also |then |now )*(?:start|get started|get going|get to work|begin work) on (?:" + _PIECE + r"|(?:it|that|that one|this one)\b(?=.*\b" + _SOON + r"\b))",
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
    own_again=r"(?:but |and |so )?(?:mine|ours|(?:i|we)(?!'ll| will|'m (?:gonna|going)|'re (?:gonna|going)|'d)|this one|it's|it is|that one's|that one is)\b",
)
