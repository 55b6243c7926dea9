"""English that tells that he does not trust his own piece, whatever he said of it before: "it's a mess", "it won't hold", "don't close the ceiling yet".

How it is closed and held may not be so then: it is asked. Whole clauses, so that nothing is taken for it that is told of the job or the weather. Rows like those of `ailing.py`.
"""

from __future__ import annotations

_CLOSED = ("taped", "stapled")
_IT = r"(?:it|this one|this|that one|that|she|her|(?:the|this|that|my) (?:whole )?(?:thing|piece|fitting|duct|seam|joint|corner|lap|end|elbow|transition|straight|tee|offset|section|collar))"
_SO = r"(?: (?:really|just|kind of|kinda|sort of|pretty|still|honestly|all|a|an|a real|a total|a complete|a bit|a little|only|probably|frankly|definitely))*"
_LEAD = r"^(?:(?:and|but|so|well|honestly|frankly|man|yeah|look|i think|i think that|i know|i guess|i'm afraid|tell you the truth|to be honest) )*"
_END = r"(?: (?:to me|honestly|i know|i think|i guess|though|anyway|man|boss|if you ask me|for now|right now))*$"
_POOR = r"(?:mess|junk|garbage|trash|crap|no good|not good|not great|not right|bad|disaster|hack job|sloppy|ugly|temporary|placeholder|goner|shot|scrap|messed up|screwed up|botched|half[- ]assed|bad work|poor work|shaky|sketchy|questionable|iffy|weak|flimsy|not my best(?: work| one)?|nothing to be proud of)"

ENGLISH_MISTRUSTED: tuple[tuple[tuple[str, ...], str], ...] = (
    (_CLOSED, rf"{_LEAD}{_IT}(?:'s| is| looks| looked| came out| turned out| ended up| was| feels| felt){_SO} {_POOR}{_END}|^{_SO}(?: )?(?:not my best work|nothing to be proud of){_END}"),
    (_CLOSED, rf"{_LEAD}(?:{_IT} )?(?:doesn't|don't|didn't) (?:look|feel|seem|come out|turn out|go) (?:right|good|great|so good|too good|well|tight|like much){_END}"),
    (_CLOSED, rf"{_LEAD}(?:i|we)(?:'ve| have)?{_SO} (?:botched|butchered|bungled|screwed up|messed up|goofed up|fouled up|hosed|ruined|(?:screwed|messed|goofed|fouled) {_IT} up)(?: {_IT})?(?: up)?{_END}"),
    (_CLOSED, rf"{_LEAD}(?:there's|there is|got|i got|i've got|we got|we have|i have|{_IT} has|{_IT}'s got) (?:a|an|some|one) (?:\w+ )?(?:problem|issue|trouble|situation)s? (?:with|on) {_IT}{_END}|{_LEAD}{_IT} (?:has|'s got) (?:a|an|some) (?:\w+ )?(?:problem|issue)s?{_END}"),
    (_CLOSED, rf"{_LEAD}{_IT} (?:failed|flunked|didn't pass|won't pass|isn't going to pass|didn't make it|won't last|won't hold(?: up)?|(?:isn't|ain't|is not) (?:gonna|going to) (?:hold(?: up)?|last|make it))(?: (?:inspection|long|the winter|a year|a week))*{_END}"),
    (_CLOSED, rf"{_LEAD}{_IT}(?:'ll| will|'s going to|'s gonna| is going to| is gonna|'s bound to| is bound to) (?:leak|whistle|blow apart|come apart|let go|open up|fail|peel|fall apart|pop open)(?: (?:there|at .*|on .*|sooner or later|when .*|once .*|someday))?{_END}"),
    (_CLOSED, rf"{_LEAD}(?:i|we)(?:'d| would)? (?:like to |want to |probably )?(?:redo|remake|do over) {_IT}(?: (?:if|when|given|had).*)?{_END}|{_LEAD}(?:somebody|someone|you|we|i)(?: (?:probably|really))? (?:should|ought to|might want to|better|needs to|has to) (?:redo|remake|check|look at|look over|double[- ]check|inspect) {_IT}{_END}|^(?:probably )?(?:should|might want to|ought to|better) (?:redo|remake|check|look at|double[- ]check|inspect) {_IT}{_END}"),
    (_CLOSED, rf"{_LEAD}(?:please )?(?:don't|do not|nobody) (?:hang|use|install|close|cover|insulate|bury)(?: (?:{_IT}|up|the ceiling|in))+(?: (?:yet|up yet|until .*|till .*))?$|{_LEAD}hold (?:off|up) on (?:hanging|closing|covering|using|{_IT})\b.*"),
    (_CLOSED, rf"{_LEAD}(?:i|we) (?:don't|do not|wouldn't|can't|couldn't)(?: (?:really|quite|fully|exactly))? (?:trust|vouch for|swear to|swear by|stand behind|guarantee|bet on) {_IT}{_END}|{_LEAD}{_IT} (?:worries|bothers|scares|concerns|bugs) me{_END}"),
    (_CLOSED, r"^(?:i )?lost (?:my place|track)(?: (?:of (?:it|where i was|what i did)))?$|^(?:i'm )?not sure (?:what|how much|which part) (?:i|of it i) (?:did|got done|finished|left)\b.*$"),
    (_CLOSED, rf"{_LEAD}(?:the )?(?:inspector|lead|foreman|boss|super|qa guy|qa)(?:'s)? (?:isn't going to|won't|ain't gonna|is not going to|isn't gonna|'s not going to) (?:like|pass|accept|approve|sign off on|love|be happy with) {_IT}{_END}"),
)
