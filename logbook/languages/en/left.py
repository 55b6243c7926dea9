"""English that tells that what is not done is still to come: "I'll get it tomorrow", "ran out halfway round", "those come in Thursday"."""

from __future__ import annotations

from logbook.languages.left import Left

_DAY = r"(?:tomorrow|tmrw|tmw|tomorow|tonight|(?:mon|tues|wednes|thurs|fri|satur)day|next week|first thing|(?:(?:in the|tomorrow) morning|(?:this|tomorrow) afternoon)|after (?:lunch|break|dinner)|later(?: on| today| this week)?(?! than)|end of the day|another day|the next shift)"
_WILL = r"(?:i'll|we'll|i will|we will|i'm (?:gonna|going to)|we're (?:gonna|going to)|gonna|going to|will|have to|gotta|got to|need to|i've got to|i gotta|want to|plan to|hope to|be able to)"
_DO = (
    r"(?:get|do|finish|grab|catch|hit|pick|fix|handle|take care|close|wrap|button|reach|patch|swap|replace|change|tape|seal|rub|staple|bend|trim|put|run|knock|flip|hop|deal|tackle|come|go|circle|head)"
)
_THAT = r"(?:it|that|them|those|these|this one|that one|the (?:rest|other|others|last|fourth|back|far|bottom|top|remaining|second|next|ends?|corners?|heel|throat|missing|spot|piece)(?: \w+)?|there|up there|the \w+ (?:side|seam|end|corner|spot|one|half|edge)s?)"
_BACK = r"(?:(?:come|coming|go|going|get|getting|circle|circling|head|heading|be(?= back (?:for|to|and|with|on)\b)) back(?! (?:to|on) (?:the|a) (?:truck|shop|van|office|other)))"

_LEADS = r"(?:(?:and|but|so|then|well|ok|okay|sorry|anyway|now|yeah|no|boss|oh),? )*"
_FIRST = r"(?:just |still |then |probably |try to |have to |need to |be |go (?:ahead )?and |come back and |go back and |get back and )*"
# "the rails come with the afternoon delivery, so I will put them in after that", "Joe brings the gun at two and I'll do it then": what it waits for, told ahead of it
_COMES = r"(?:comes?|(?:(?:is|are|was|were) |'s |'re )?(?:coming|due|charging|on order|on the way|on its way|not here|still out|at the shop|in the shop|back|getting fixed|being fixed)|isn't here|aren't here|arrives?|(?:gets?|will be|'ll be) (?:here|back|in)|shows? up|brings?|is bringing|'s bringing|delivers?|lands?|went to get|ran to get|(?:has|have|'s) (?:my|the))"
_WAITED_FOR = rf"(?:the |my |our |more |a |another |some |his |new |they |it )*(?:(?!not\b|never\b|i\b|we\b)[\w'-]+ ){{0,5}}?{_COMES}\b[^.;]{{0,50}}?"
_BESIDE = (
    rf"(?<!was )(?<!were )(?<!never )(?<!not ){_WILL} {_FIRST}{_DO}\b",
    rf"(?<!not ){_BACK}(?! (?:tomorrow|later) and (?:saw|found))",
    rf"(?:'ll|will|gonna|going to|till|until|come|comes|coming|due|back|here|for|rest|that's|it's|taping)(?: (?!not\b|did|was|were)[\w']+){{0,5}}? {_DAY}",
    rf"(?:finishing|doing|getting|catching|closing|fixing|patching|picking) (?:it|that|them|this|the rest|the other \w+|the last \w+)(?: (?:up|off|out))? {_DAY}",
    rf"^(?:and |so |then |but )*{_DAY}$",
    r"(?:'ll|will|gonna|going to|when i|once i|until i|till i) (?:\w+ )?get to (?:it|that|them)",
    r"(?:until|till|'til) (?:(?:i|we|they|he|she|the|somebody|my|our|it|that)(?: (?!\w+ed\b|was|were|ran|got|quit|came|went|had|did|could|broke|took|gave|found|saw|lifted|told|died)[\w']+){1,5}$|(?:\w+day|tomorrow|lunch|after|next|later|the (?:morning|next))\b)",
    r"waiting (?:on|for)\b|pending\b",
    r"on (?:back ?)?order|back ?ordered",
    r"not finished|isn't finished|unfinished|incomplete",
    r"(?:can|has to|have to|must|will|'ll) wait|yet(?! (?:another|when|before))\b",
    r"(?:that's|it's|they're|that is) (?:\w+ )?for (?:the morning|later|the next|another day)",
    r"still working on|in the middle of|(?:couldn't|didn't|can't) finish|not through|ran dry|run dry",
    r"that's (?:tomorrow|next|for later)|still (?:open|to do|waiting|left|to come)",
)
_BEHIND = (
    rf"{_WAITED_FOR}(?:,|,? and|,? so|,? then)(?: (?:and|so|then|when|once it does|after that))* {_WILL} {_FIRST}{_DO}\b(?: (?:to|up|out|on|off|back|around|with|at|for|of))* {_THAT}\b",
    r"(?:they|it|those|that|these)(?:'ll|'re|'s| will| are| is)? (?:come|comes|coming|arrive|arrives|be here|due)(?: in| out| over| up)? (?:with|on) (?:the|tomorrow's|this afternoon's|monday's)(?: [\w-]+)? (?:delivery|truck|shipment|order|load)\b",
    rf"{_WILL} {_FIRST}{_DO}\b(?: (?:to|up|out|on|off|back|around|with|at|for|of))* {_THAT}\b",
    rf"(?:{_WILL} |i'm |we're |i )*{_BACK}(?: (?:to|for|and|on|up|around|over|there|in|with|out|tomorrow|later|after)\b|$)",
    rf"{_DAY}(?:,? (?:i'll|we'll|probably|maybe|hopefully|first thing))*(?: {_DO}\b.*)?$",
    r"(?:i'm |we're |just |still )*waiting (?:on|for)\b",
    rf"(?:that|it|they|those|this)(?:'s| is|'ll be|'ll| will be| will| are|'re| gets?| comes?| can| has to| goes| got to)(?: (?:coming|due|be|in|for|to|have|my|all|on|up))* (?:{_DAY}|next\b|wait\b|come\b|follow\b|later\b)",
    r"(?:it's|that's|this is|this one's|it is) (?:still |just |only )*(?:open|unfinished|incomplete|half (?:done|finished)|not (?:finished|done|complete))\b",
    r"(?:i |we |the roll )?(?:ran) (?:out|short)\b",
    r"(?:i |we )?(?:didn't|haven't|couldn't|never) (?:get|got|gotten) to (?:it|that|them|the)\b",
    r"(?:still|left) (?:to do|open)\b",
    r"(?:and )?(?:a |another )?(?:couple|few|two|three|four|six|eight|one|foot)(?: of| more| or two| or so)* (?:feet|foot|inches|spots|places|corners)?(?: or so| or two)? ?(?:left|to go|still to do)\b",
    r"(?:(?:the )?(?:last|other|fourth|back|bottom|top) (?:(?:one|side|two|seam|end) )?)?(?:i |we )?(?:can't|couldn't|cannot) (?:reach|get(?: to| at| in)?|do|finish|touch)(?: [^.]{1,30}?)? (?:until|till|'til|before)\b",
)

ENGLISH_LEFT = Left(
    beside=rf"\b(?:{'|'.join(_BESIDE)})",
    in_part=r"\b(?:still (?:open|bare|undone|waiting|left|to do)|(?:ran|run|running|runs) (?:out|short|low|dry)|(?:out of|no more|short on|low on) (?:tape|staples|mastic|time|daylight)|(?:roll|box|spool|tape|tube)(?:'s| is| was)? (?:gone|done|empty|went|gave out|ended|quit|died)|(?:called|pulled|dragged|yanked|hauled|sent|took|taken) (?:me |us )?(?:right |back )?(?:off|away|down to|up to|over to|onto|to (?:the|help|another))(?! (?:the |my |its )?(?:tape|staples|paper|backing))|haven't (?:gotten|got) to|quit (?:at|for the)|had to (?:stop|leave|quit)|(?:one|two|three|more) (?:sides? |seams? |ends? |corners? )?to go)\b",
    behind=rf"{_LEADS}(?:{'|'.join(_BEHIND)})",
    ahead=r"\b(?:ran|run) (?:out|short) of (?:tape|mastic|staples)\b|\bnot (?:done|finished|complete) (?:with|on) (?:it|this|#)|\b(?:come|coming|go|going|get) back (?:to|for)\b",
    mends=rf"\b(?:{_WILL} {_FIRST}(?:cut|make|put|set|glue|fit|slide|build|get|order|swap|drop)(?: in| on| out)? (?:a|an|the|another|some|that)(?: (?:new|other|whole|good|fresh|dry))* (?:plug|patch|panel|board|piece|sheet|side|mesh|fabric|mastic)(?: (?:in|on|out|over))*(?: (?:for|on|in|over|of|to) (?:it|that|them|there|the (?:corner|hole|tear|spot|end|side|bad spot)))?|{_WILL} {_FIRST}(?:get|fix|patch|do|handle|take care of|deal with|see to)(?: (?:to|around to))* (?:it|that|them|those)\b|{_BACK} (?:to|for|and (?:fix|patch|get|do)) (?:it|that|them)\b|waiting (?:on|for) (?:the |some |a |more |new |another |my )*(?:fabric|mesh|mastic|panel|board|plug|patch|tape|piece|material|sheet|one)|(?:on|going on) (?:my|the|our|tomorrow's) (?:to-?do |punch )?list|(?:haven't|didn't|couldn't|never) (?:get|got|gotten) (?:around )?to(?: (?:it|that|them|fixing|patching)\b|(?=$|[.,;]))|(?:haven't|didn't|never|have not) (?:put|done|did) (?:anything|a thing|nothing)(?: (?:on|over|about|to|with|for) (?:it|that|them))?|(?:leaving|left) (?:it|that|them) for (?:tomorrow|later|the morning|now|monday|next)|(?:that's|it's|they're) (?:(?:next|tomorrow)|for (?:tomorrow|later|the morning))|needs (?:attention|work|looking at|taking care of|to be (?:taken care of|dealt with|looked at)))",
    others=r"\b(?:hang|hung|hanging|goes up|go up|going up|put it up|get it up|ship|send|start on|starting|next piece|next one|drawing|schedule|off|home|vacation)\b",
)  # fmt: skip
