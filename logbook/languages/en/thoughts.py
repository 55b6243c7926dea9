"""English said to oneself while one works: "let me see", "what's it say", and the questions a man asks himself and answers."""

from __future__ import annotations

from logbook.languages.thoughts import Thoughts

_IT = r"(?:it|that|this|these|those|them|'em|here|there|one|(?:the|my) (?:thing|damn thing|number|light|flashlight|ladder|other hand))"
_LOOK = (
    r"(?:see|look|check|think|count|read|measure|feel|find|get|grab|pull|turn|unroll|unfold|hold|put|stick|bend|squint|climb|reach|shine|walk|step|flip|lift|run|remember|recall|recheck|double[ -]check|make sure|lay|hook|stretch|wipe my|"
    r"lean|crawl|duck|move|dig|try|open|scroll|zoom|ask|guess|say)"
)
_TOOL = r"(?:tape measure|measuring tape|tape|ruler|rule|square|gauge|needle|dial|readout|meter|thermometer|scale|level|stick|box|roll|label|tag|card|sheet|paper|print|drawing|screen|wall)"
_SMALL = (
    rf"(?:it|that|this|these|those|they|them|we|i|you|do|does|did|say|says|said|read|reads|reading|show|shows|is|was|are|were|have|has|had|got|get|here|there|again|the|a|an|my|our|now|then|size|sizes|number|numbers|thing|things|"
    rf"kind|sort|mark|come|came|comes|out|at|of|to|on|off|in|for|with|call|called|use|used|make|made|makes|go|goes|going|looking|see|seeing|am|'m|about|mean|trying|name|word|today|exactly|actually|even|really|then|s|'s|'re|'d|{_TOOL})"
)
_HOW_MUCH = r"(?:much|many|far|big)"
_PART = r"(?:(?:and|the|any|turning|cross|staple|as for|got|has|with|now) )*"
_PARTS = r"(?:tape|staples|vanes|tabs|flap|scrim|tears?|gaps?|damage|mastic|step|legs?|washers|screws|hangers)"
_MOMENT = r"(?:a |one |half a |just a |just one |gimme a |give me a |give me one )*(?:second|sec|minute|moment|tick)"

_THEN = r"(?:(?:and|but|so|then|i|we|just|had to|came back|went back|and then|later|after that) )*"
_WHENEVER = r"(?: (?:now|since|today|right after|after|later|this \w+|at \w+(?: \w+)?|around \w+|before \w+|after \w+|right away|myself|when \w+ \w+(?: \w+)?))*"

ENGLISH_THOUGHTS = Thoughts(
    leads=frozenset("and so well okay ok now but then right yeah oh no hmm alright".split()),
    opens=frozenset("let lemme what what's whats how where where's which who's give gimme just one bear stand hold pull turn flip i'm i where's there don't come says it good".split()),
    said=(
        r"(?:(?:and|so|well|okay|ok|now|but|then|right|yeah|oh|alright) )*(?:"
        rf"(?:let me|lemme|let's|let us) (?:just |quick |quickly |go |first |only )*{_LOOK}(?: [a-z'-]+){{0,7}}"
        rf"|(?:what|what's|whats|where|where's|which|how)(?: {_SMALL}){{0,7}}"
        rf"|how {_HOW_MUCH}(?: (?:is|was|are|were|do|did|does|have) (?:it|that|this|i|we|they|there|i have|we have))?(?: (?:have|got|come|there|here|now|say|go|be))*"
        r"|what else(?: (?:is there|was there|have i got|did i do|do i have|is on (?:it|there)|do we have))?|what do you call (?:it|them|that)"
        rf"|{_MOMENT}|bear with me|stand by|hold (?:it|this|that|the (?:light|ladder|flashlight|phone)|still)(?: (?:up|there|here|a second|a sec|for me))*"
        rf"|(?:i'm|i am) (?:looking(?: right| straight| up)*(?: at (?:it|this|that))?|reading (?:it|this|that)(?: off)?(?: (?:of )?the {_TOOL})?|counting|thinking|checking|measuring(?: it| that)?|trying to (?:see|read|remember|think)(?: it)?)(?: (?:now|here|again))*"
        rf"|(?:turn|flip|roll|pull) (?:it|that|this|them|the roll|the box) (?:over|around|round|out|up)(?: here)?|hold (?:the|my) (?:tape measure|tape|ruler|rule|stick|gauge) (?:on|to|up to|against|across) (?:it|that|this|there|here|them)|come on|don't (?:rush me|tell me)|where was i|good question|there it is|(?:there|here) (?:they are|she is|it is)|there we (?:go|are)|who's counting"
        r"|(?:i )?(?:can't|cannot) (?:remember|recall|think)(?: now)?|says here|it says(?: here)?|it reads"
        r")"
    ),
    never=(
        r"(?<![\w'])(?:(?<!the )tape(?! measure)|taped|taping|stapl\w+|rub\w*|trim\w*|wip\w+|vanes?|flaps?|tabs?|scrim|mastic|foil|facing|seams?|joints?|gaps?|tears?|torn|holes?|steps?|groove|panel|screws?|washers?|hang\w*|hung|wide|width|apart|long|weigh\w*|thick|deep|every|legs?|"
        r"straights?|elbows?|tees?|offsets?|wyes?|branch\w*|collars?|transitions?|reducers?|plenums?|sleeves?|caps?|boots?|fix\w*|patch\w*|close|closed|seal\w*|finish\w*|do (?:it|that) (?:later|tomorrow)|later|tomorrow|\d+|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty|twelve|eleven|eighths?|quarters?|half an?|other|cold|hot|dirty|dusty|wet|clean|dry|no|not|never)(?![\w'])"
        r"|(?:put|stick|get|throw|slap|run|lay|hold) (?:a|some|the|my) (?:tape|piece of tape|strip)(?! measure)(?: on| down)?$|one$"
    ),
    asks=frozenset("what what's whats how where where's which did do does is isn't are aren't was wasn't were have has am can could didn't haven't hasn't".split()),
    asked=(
        r"(?:(?:and|so|well|okay|ok|now|but|then|right|yeah|oh|alright) )*(?:"
        r"(?:did|didn't|do|have|haven't|can|could|am) (?:i|we|you) |(?:does|did|has|hasn't|is|isn't|was|wasn't) (?:it|that|this|this one|that one|there|anything|anybody|anyone|any|one) ?|(?:are|aren't|were|weren't|do|did) (?:they|there|these|those|any|all) ?"
        r"|(?:is|are|was|were) (?:the|my) (?!(?:one|ones|same|right|wrong|only|first|last|next|best|other)(?![\w']))"
        r")"
    ),
    asked_flatly=(
        r"(?:did|didn't|have|haven't) (?:i|we) (?!(?:ever )?(?:mention|mentioned|tell|told|say|said|forget to (?:say|mention|tell)|just|not)(?![\w']))"
        r"|(?:is|isn't|was|wasn't) (?:it|this|this one|that one|there|the (?:tape|facing|flap|scrim|seam|joint|board|surface)) |(?:are|aren't|were|weren't) (?:they|there|the (?:vanes|staples|tabs|legs|seams|joints)) |has (?:it|this one|that one) (?:got|been) |does (?:it|this one|that one) (?:have|show|need)(?![\w'])"
    ),
    replies=(
        r"(?:(?:well|oh|um|uh|hmm?|okay|let me see|honestly|actually|and|so) )*(?:"
        r"(?:yes|yeah|yep|yup|yea|no|nope|nah|negative|affirmative|sure|you bet|nuh-uh|uh-uh|uh-huh|mm-hm|absolutely|definitely)"
        r"(?:$| (?:sir|ma'am|boss|i|we|it|it's|that's|they|they're|there|there's|this|that|not|never|can't|couldn't|didn't|haven't|hasn't|isn't|wasn't|won't|don't|doesn't|sure|of course|all|you)(?![\w]))"
        r"|(?:it|that|they|there|this) (?:is|isn't|are|aren't|was|wasn't|were|weren't|does|doesn't|do|don't|has|hasn't|did|didn't)(?:$| not$| not )"
        r"|(?:i|we) (?:did|didn't|have|haven't|do|don't|can|can't|could|couldn't|sure did|never did|did not|do not|have not|cannot|forgot|skipped)(?:$| not$| not )"
        r"|not (?:yet|really|that i|at all|quite|here|there|anywhere|everywhere|all|so far|me|fully|completely|entirely|much|even|enough|well|exactly)(?![\w'])|never did|of course(?: not)?|looks like it|(?:it )?doesn't look like it|(?:i )?don't think so|i think so|'fraid not|afraid not|guess not|i guess not|nowhere$|nothing$|none$"
        r")"
    ),
    asked_what=(
        r"(?:(?:and|so|well|okay|ok|now|but|then|right|yeah|oh|alright) )*(?:(?:what|where)(?:'?s|'re| is| are| was| were| did| do| does| have| has)(?! (?:left|missing|not|next|more|wrong|done|up|the matter)\b)"
        r"|how (?:wide|far|long|deep|big|thick|many|much|heavy|close|tall)\b.* (?:is|are|was|were|did|do|does|have|has|'s)\b|how (?:wide|thick|heavy) ?$|which (?:way|tape|roll|staples?|side|one)\b.* (?:is|are|was|were|did|do|does|have)\b|what (?:size|kind of|sort of|width|gauge|tape|staples?|leg|length) .*(?:is|are|was|were|did|do|does|have)\b)"
    ),
    told=(
        rf"(?:(?:the {_TOOL}(?:'s|s)?(?: at| is| says| reads| shows)?|{_TOOL} (?:says|reads|shows)|well|oh|okay|so|right|about|i'd say|i think|looks like|call it|it's|they're|that's|it says|says|it reads|it was|they were|and|every|only|just|all|a|an|the) )*(?:\d|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|quarter|eighth|sixteenth|\w+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty)\b"
        r"|cloth|duct tape|masking|foil tape|packing|mastic|no-?name|gray|silver|inward|outward|inside|outside|in$|out$|male|female)"
        r"|(?:no|nope|nah)(?:$| (?:sir|i|we|it|it's|they|there|there's|sign|nobody|not)\b)|nowhere|not (?:here|there|in|on|anywhere|yet)|none|nothing|nobody|there (?:is|are|isn't|aren't)|i don't (?:see|have)|i can't|can't|couldn't|don't see|didn't|haven't|never|missing|gone"
    ),
    thing=rf"{_PART}(?:{_PARTS}|taped|taping|stapled|stapling|scrim showing|rubbed|rubbed down|rub|rubbing|rub down|trimmed|trim|wiped|wiped down|clean|preheated|preheat)",
    part=rf"{_PART}(?:{_PARTS})",
    answers=frozenset("yes yeah yep yup no nope nah".split()),
    yes_or_no=r"(?:(?:well|oh|and|so|that's a|a|big|hell|why|that) )*(?:yes|yeah|yep|yup|no|nope|nah|negative|affirmative|sure)(?: (?:sir|ma'am|boss|siree))?",
    goes_on=r"(?:not|never|no|nope|yes|yeah|yep|i|we|it|it's|that's|they|they're|there|there's|haven't|didn't|can't|couldn't|still|but|just|only|nothing|none|nobody|every|at|about|maybe|because|since|sorry|wait|hold|hang|actually|make|more|\d|a|an|half|one|two|three|four|five|six|seven|eight|nine|ten)(?![\w-])",
    found_out=(
        r"wait|scratch (?:that|it|the \w+)|hold (?:on|that)|hang on|oh|whoops|oops|correction|sorry|my (?:mistake|bad)|(?:i was|i'm|that's|that was|was) wrong|misspoke|i lied|i meant|make that|should be|no(?=[,.;])",
        r"looking (?:at|closer|again)|(?:just |went and |double |re)?checked|just (?:looked|measured)|i looked|(?:went|going|came|got) back|turns out|come to think|there (?:they are|it is|she is)|found|(?:i|we) (?:skipped|missed|forgot)|actually|really|on second (?:look|thought)|second look|take that back|i see(?! the scrim)",
    ),
    since=(r"since|after(?:ward|wards)?|now|by now|in the meantime|this time",),
    by_now=(r"(?:by |right |just )?now(?! that)|since(?! (?:the|i|we|it|they))|as of|this time|afterwards?|in the meantime",),
    good_now=(
        r"(?: (?:it|that|there|with the \w+))*[,;]? ?(?:(?:and|so|but) )*(?:now (?:it|they|you|that|the|everything|i|all)\b(?!.*(?:\bnot\b|n't|\bno\b|\bexcept\b|\bbut\b))|(?:it's |that's |they're |it |all |that )*(?:is |looks |shows |sticks |sits |came out )*(?:all )?(?:good|fine|shows|done|okay|ok|all right|tight|smooth|perfect|solid|mended|fixed|like it should)(?: (?:everywhere|all over|all around|all round|all the way))*(?: (?:now|there|again|as it should))*$)",
    ),
    came_upon=(r"\b(?:found|saw|noticed|spotted|caught|discovered|spied)\b",),
    set_right=(r"^(?:(?:so|and|then|well) )*(?:(?:i|we) )?(?:just |then )?(?:re-?)?(?:taped|stapled|rubbed|wiped|trimmed|squeegeed)(?: down)? (?:it|that|that side|there|them|that one|that part|that seam|that corner)(?: (?:up|over|down|in|good|too|all|myself))*\W*$",),
    at_once=(r"\b(?:right away|straight away|on the spot|then and there|there and then|at once)\b",),
    gone_back=(r"(?:(?:got|grabbed|fetched|found|brought|opened|pulled out|borrowed|went and got|went for|picked up) (?:me |myself )?(?:a|another|some|more|the)(?: (?:new|fresh|full|other|more|second))*(?: (?:roll|tape|strip|box|piece|squeegee|iron|stapler|gun|staples|rag))?(?: of (?:tape|foil|staples))?,? (?:and|so|then)|caught (?:it|that) and|saw (?:it|that),? (?:and|so))(?: (?:i|we|just|then))*$", r"(?:went|came|gone|got|climbed|ran) (?:back|up there|over there)(?: (?:up|over|in|there|there today|this morning|today|yesterday|later|after \w+|on \w+day))* (?:and|to)(?: (?:i|we|just|got it|finally))*$", r"(?:this morning|today|after (?:lunch|break)|later(?: on)?) (?:i|we)(?: (?:went|got) (?:back|up|over)(?: there)? and)?$"),
    done_to_it=r" ?(?:it|that|them|those|the staples|the tape|that side|the whole side|the whole thing)?(?: (?:in|on|up|down|off|good|myself|right|all around|all the way|too))*(?=[.,;!?]|$| (?:and|so|now|this|today|yesterday|but|then|every|with|two|at|on \w+day)(?![\w']))",
    back_then=(r"finish\w*|half(?:way)?|until|till|at (?:noon|lunch|break|first|quitting)|yesterday|last night|when|earlier|(?:on )?(?:monday|tuesday|wednesday|thursday|friday)|before (?:lunch|break|noon)|this morning|left",),
    done_since=(
        (rf"{_THEN}(?:finished|completed|wrapped up) (?:it|them|that|her|the job|the rest)(?: off| up)?{_WHENEVER}", ()),
        (rf"{_THEN}(?:got|did) (?:it|them|that)(?: all)? done{_WHENEVER}", ()),
        (rf"{_THEN}(?:it |it's |it has |they )?(?:got|has got|got me|gave it|put on) (?:its|the last|the other|the missing|a) (?:strip|piece|length)(?: of tape)?{_WHENEVER}", ("taped",)),
        (rf"{_THEN}(?:they|all|all of them|every one|every one of them|the lot)?(?: ?'re| are)?(?: all)? ?(?:bent|folded|down)(?: (?:over|down|flat|tight|in))*(?: now| since){_WHENEVER}", ("tabs_bent",)),
        (rf"{_THEN}(?:bent|folded) (?:them|every one|all of them|those|the lot|every one of them|'em)(?: all| over| down| flat| tight| myself)*{_WHENEVER}", ("tabs_bent",)),
        (rf"{_THEN}(?:they|it|all of them)(?: ?'re| are|'s| is)(?: all)? now", ("tabs_bent", "trimmed", "surface_clean")),
    ),
    told_so=(r"(?:i|we)(?:'d| had| have|'ve)? (?:said|told|called|wrote|written|gave|thought|figured|marked|reported|logged|listed|assumed|claimed|put (?:it|that|this|this one|\w+) down)",),
)
