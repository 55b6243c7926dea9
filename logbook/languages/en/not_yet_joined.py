"""English of a joint to the next piece that is not closed: "not tied in to 72", "the joint over to 72 wasn't made", "with 72 it is not connected".

The other piece is no piece of the note's work there, and the tape of this one is another matter. Rows like those of `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT as _COUNT
from logbook.languages.plainer import Plainer

_PIECE = rf"(?:the next(?: (?:one|piece|section|joint|fitting|{KIND}))?|the (?:last|other|previous) (?:one|piece|section)|the one (?:behind|before|after|ahead of) it|(?:(?:the |number |piece |section )*(?:{KIND} )?(?:number )?(?:\d{{1,3}}|{_COUNT}|one (?:oh )?{_COUNT})(?! (?:inch|in\b|by |feet|foot|x |spots?|places?|sides?|corners?))(?![\w'/-])))"
_OWN = rf"(?:(?:the |number )?(?:{KIND} )?(?:number )?(?:\d{{1,3}}|{_COUNT}))"
_TO = r"(?:(?:over |on |up |back |in )?(?:to|with|onto|on to|into)|against|at)"
_TIED = r"(?:(?:tied|hooked|joined|connected|closed|buttoned|coupled|mated|married)(?: (?:it|this|that|them|this one))?(?: (?:in|up|on|together))?)"
_TIE = r"(?:(?:tie|hook|join|connect|close|button|couple|mate|marry)(?: (?:it|this|that|them|this one|that one))?(?: (?:in|up|on))?)"
_TYING = r"(?:(?:tying|hooking|joining|connecting|closing|coupling)(?: (?:it|this|that|them|this one))?(?: (?:in|up|on))?)"
_JOINT = r"(?:joint|tie[- ]in|connection|coupling|junction|tie-in joint)"
_NOT = r"(?:not|never|isn't|is not|wasn't|was not|hasn't been|has not been|ain't|is still not|still isn't|still not|didn't get|did not get|never got)"
_DID_NOT = r"(?:(?:(?:i|we|he|they|nobody|but|and) )*(?:didn't|did not|haven't|have not|never|couldn't|could not|can't|forgot to|forgot|didn't get to|didn't get around to|never got to|had no time to|didn't have time to)(?: (?:get to|even|yet|get))*)"
_DONE = r"(?:made|done|closed|finished|tied|sealed up|closed up|made up|complete|there)"
_ENDS = r"(?= *(?:yet|still|either|at all|today|now|so far|tomorrow)*(?:$|[,;.!]| (?:and|but|because|cause|since|till|until|on account|as|the|it|i|we|stapled|taped|its)(?![\w'])))"
_BY = r"(?: (?:yet|still|at all))?"
_CUES = (" tie", "tie in", "tie-in", "tied", "tying", "join", "hook", "connect", "clos", "button", "coupl", "mate", "married", "marry")
_OPEN = "still have to tie it in"

ENGLISH_NOT_YET_JOINED = (
    # --- "not tied in to 72", "it isn't joined to 72"
    Plainer(_CUES, rf"(?:it's |it |that's |this one is |this one |piece )?(?P<x>{_NOT}(?: \w+ly)?(?: yet)? {_TIED} {_TO} {_PIECE}{_BY}){_ENDS}", (("x", _OPEN),), beside=("not ", "n't ", "never ")),
    # --- "I didn't tie it in to 72", "forgot to join it to 72", "couldn't get it tied in to 72"
    Plainer(_CUES, rf"(?P<x>{_DID_NOT} (?:{_TIE}|(?:(?:it|this one|that|them) )?{_TIED}) {_TO} {_PIECE}{_BY}(?:[^.;?!]{{0,70}}?,? (?:so|and) (?:that|the|this) joint(?:'s| is)(?: still)? open)?){_ENDS}", (("x", _OPEN),), beside=("n't ", "not ", "never ", "forgot ", "time to ")),
    # --- "the joint over to 72 was not made", "the tie-in to 72 was skipped", "the joint to 72 is open"
    Plainer(
        (" joint ", "joint ", "tie-in ", "tie in ", "connection ", "coupling "),
        rf"(?P<x>(?:the |that |its |this )?{_JOINT} (?:{_TO} {_PIECE}|between (?:it|this|this one|that one) and {_PIECE}|there)(?: \w+ly)? (?:{_NOT}(?: yet)? {_DONE}|(?:(?:was|got|is|has been|still|has to|will have to|gets|is going to|i|we|still has to) ){{1,2}}(?:skipped|left|open|undone|wait|waiting|later|tomorrow|pending|outstanding|left for (?:later|tomorrow)|put off)|(?:skipped|open|waits|pending|outstanding|left open))(?: open)?{_BY}){_ENDS}",
        (("x", _OPEN),),
        unless=r"joint [^.,;]{0,30} is open (?:an?|one|two|three|half|quarter|\d)",
    ),
    # --- "haven't tied ten in to eleven yet", "the joint from 109 to the next piece is waiting on a longer ladder"
    Plainer(
        _CUES,
        rf"(?P<x>{_DID_NOT} (?:(?:tie|tied|hook|hooked|join|joined|connect|connected|close|closed|couple|coupled) (?P<m>{_OWN})(?: (?:in|up|on|together))?|(?:get |got )?(?P<n>{_OWN}) (?:tied|hooked|joined|connected|closed|coupled)(?: (?:in|up|on))?) {_TO} {_PIECE}{_BY}){_ENDS}",
        (("m", r"\g<m> is not tied in yet"), ("n", r"\g<n> is not tied in yet")),
        beside=("n't ", "not ", "never ", "forgot ", "time to "),
    ),
    Plainer(
        ("joint from ", "joint between ", "connection from ", "tie-in from "),
        rf"(?P<a>(?:the )?{_JOINT} (?:from|between) )(?:the )?(?:{KIND} )?(?:number )?(?:\d{{1,3}}|{_COUNT})(?P<x> (?:to|and) {_PIECE} (?:(?:is|was|has been)(?: still)? (?:waiting|on hold|held up|holding)[^.,;]*|{_NOT}(?: yet)? {_DONE}|(?:is )?(?:still )?open|(?:has to|will have to|needs to) wait[^.,;]*)(?:,? (?:so|and) (?:it|that one) (?:ain't|isn't|is not) (?:closed|made|done))?)(?=[.;!]|,|$)",
        (("a", ""), ("x", f", {_OPEN}")),
    ),
    # --- "that joint isn't made", "the joint isn't made yet", where the piece is up
    Plainer((" joint ",), rf"(?P<x>(?:the|that|this) (?:end )?joint (?:isn't|is not|wasn't|was not|hasn't been|never got|did not get|didn't get) made(?: up)?{_BY}){_ENDS}", (("x", _OPEN),)),
    # --- "no tie-in to 72 yet", "never got to the joint to 72", "haven't made the connection to 72"
    Plainer(
        ("tie-in ", "tie in ", "joint ", "connection "),
        rf"(?P<x>(?:no (?=tie|conn)|{_DID_NOT} (?:make |made |do |done |get to |got to |close |closed )?(?:to )?(?:the |that |its )?)(?:joint|tie[- ]in|connection)(?: {_TO} {_PIECE})?{_BY}){_ENDS}",
        (("x", _OPEN),),
        beside=("no ", "n't ", "not ", "never ", "forgot"),
    ),
    # --- "with 72 it is not connected", "to the next one we did not join it"
    Plainer(
        _CUES,
        rf"(?P<x>(?:with|to) {_PIECE},? (?:it's |it is |it |is |i |we )+(?:not|isn't|no|didn't|did not|never|don't)(?: yet)? (?:{_TIED}|{_TIE})(?: it)?{_BY}){_ENDS}",
        (("x", _OPEN),),
        beside=("not ", "n't ", "no ", "never "),
    ),
    # --- "tie in to 72 tomorrow", "tying it in to 72 we do tomorrow", "we were going to close it to 72 and the foreman pulled us off"
    Plainer(
        _CUES,
        rf"(?P<x>(?:(?:i|we)(?:'ll| will) )?(?:{_TIE}|{_TYING}) {_TO} {_PIECE},?(?: (?:(?:i|we)(?:'ll| will)?(?: do)?|is|is for|comes|waits for|has to wait(?: for| till| until)?|for|on))? (?:tomorrow|later|monday|tuesday|wednesday|thursday|friday|next week|in the morning|after)(?: morning)?){_ENDS}",
        (("x", _OPEN),),
        beside=("tomorrow", "later", "day", "next week", "morning", "after"),
    ),
    Plainer(
        _CUES,
        rf"(?P<x>(?:i|we) (?:was|were|are|am) (?:just )?(?:going|about|fixing|gonna) (?:to )?{_TIE} {_TO} {_PIECE})(?=,? (?:and|but|when|then)(?: then)? (?:the )?(?:foreman|boss|super|lead|gc|lift|office|they|he|lights|alarm|rain|it started|whistle|the whistle))",
        (("x", _OPEN),),
    ),
    Plainer((" on either end", " at either end", " on both ends", " either way"), rf"(?P<x>{_NOT} {_TIED}(?: on| at)? (?:either end|both ends|either way)){_ENDS}", (("x", _OPEN),), beside=("not ", "n't ", "never ")),
)
