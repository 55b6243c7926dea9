"""English words that deny or affirm at a distance: "turning vanes were specified; none went in", "guess what's not on it: tape"."""

from __future__ import annotations

from logbook.languages.language import Afar

_TAIL = r"(?: (?:on|in|to|with|of) (?:it|this one|that one|there|mine|this piece|the piece|this)| today| this time| either| at all| though| anyway| here| so far as i know| that day| again| instead)*(?: (?:because|'?cause|since|on purpose|by mistake|by accident|on account of|due to|for lack of|for now)(?![\w'])[^<]*)?"
_THEM = r"(?:them|those|these|it|any|one|'em|none|a single one)"

ENGLISH_AFAR = Afar(
    leads=r"(?:(?:but|and|so|well|no|nope|because|cause|cuz|since|turns out|honestly|actually|apparently|sadly|sorry|though|then|which is why|that's why|yep|yeah|anyway|in the end|still) )*",
    # the whole of it: the part named last is not there
    none=(
        rf"(?:none|not one|not a one|not a single one|zero)(?: of {_THEM})?(?: (?:is|are|was|were|got|ever|actually|have been|has been|had been|went|made it|came|did|ended up))+"
        rf"(?: (?:installed|put|placed|used|fitted|set|included|provided|added|applied|mounted|supplied|delivered|shot|driven|laid|run|in|on|there))*{_TAIL}",
        rf"(?:there|it|this one|she|i|we|mine)(?:'s| is| are| were| was| has| have| had| got|'ve got|'s got) (?:none|no such thing)(?: of {_THEM})?{_TAIL}",
        rf"(?:they|those|that|these|it)(?: just| simply)? (?:never|didn't|did not|haven't|hasn't) (?:ever )?(?:went|go|gone|got|get|gotten|been|make it|made it|came|come|show up|showed up|arrive|arrived|turn up|turned up)(?: (?:put|set|installed|in|on|there))*{_TAIL}",
        rf"(?:i|we) (?:never|didn't|did not|couldn't|don't) (?:ever |actually |really )?(?:put|get|got|install|installed|order|ordered|use|used|receive|received|have|had|shoot|shot|run|ran|add|added|set|fit|bother with|bring|brought) {_THEM}(?: in| on)?{_TAIL}",
        rf"(?:you|anybody|anyone|nobody|no one)(?: (?:will|won't|'ll|can|can't|will not|would|wouldn't|would never))*(?: not| never| ever)* (?:find|see|spot) {_THEM}{_TAIL}",
        rf"(?:nobody|no one)(?: ever| even)? (?:ordered|brought|sent|gave|bought|shipped|packed|delivered|put|had|bothered with)(?: me| us)? {_THEM}(?: up| over| out| in| on)?{_TAIL}",
        rf"(?:they|he|she|the \w+)(?: never| didn't| did not)(?: ever| even)? (?:ordered?|brought|bring|sent|send|gave|give|bought|buy|shipped|ship|packed|pack|delivered?|suppl(?:y|ied))(?: me| us)? {_THEM}(?: up| over| out)?{_TAIL}",
        rf"(?:(?:i|we) )?(?:just )?(?:left|kept|had to leave|ended up leaving|chose to leave) (?:them|those|these|it|'em) (?:out|off|in the (?:box|truck|bag|van)|on the (?:truck|bench|floor|cart))(?: of (?:it|there|this one))?(?: (?:of |on |at |in )?the (?:bottom|top|back|front|left|right|throat|heel|end|corner|last|far|near|inside|wall)(?: side| seam| corner| end)?)?{_TAIL}",
        rf"(?:i|we)(?: just| plain| totally| clean)? (?:forgot|forgot about|missed|never thought of|left off|left out) {_THEM}{_TAIL}",
        rf"(?:i|we)(?: just)? (?:skipped|passed on|did without|went without|omitted|had to skip|decided against|passed up) ?{_THEM}?{_TAIL}",
        rf"(?:it|this one|that one|mine|she|the (?:elbow|piece|duct|thing|fitting))(?: just)? (?:went|goes|got built|was built|got made|was made|got put|got hung|was closed|got closed|came|left the bench|does|did)(?: (?:in|up|together|out|on|over))* (?:naked|empty|without)(?: {_THEM})?{_TAIL}",
        rf"(?:i|we) (?:built|made|closed|finished|hung|assembled|put|buttoned) (?:it|this one|her|that one|mine)(?: up| together| in)* without(?: {_THEM})?{_TAIL}",
    ),
    # the whole of it; the noun alone stands behind
    asks_riddle=r"\bwhat\b[^.?]{0,36}\b(?:missing|lacking|lacks?|not have|doesn't have|don't have|didn't get|never got|hasn't got|goes without|went without|short of|forgot|left out)\b",
    riddles=(
        r"(?:all|everything|the only thing|only thing|the one thing|one thing|what) (?:it|she|that one|this one|he|#)?(?:'s| is| was)? ?(?:missing|lacking|short of|wanting|without|lacks|wants)(?: is| are)?",
        r"(?:(?:guess|know|you know|do you know|wanna know|want to know|ask me|take a guess|bet you know|i'll tell you|you can guess|here's) )*(?:what(?:'s| is| are)?|(?:the )?(?:one|only) thing(?:'s)?(?: that's| that)?)"
        r" (?:(?:it|this one|she|i|that|we|this|that one|is|are|still|just) )*(?:not (?:in|on)|missing|absent|isn't (?:in|on)|aren't (?:in|on)|ain't (?:in|on|got)|doesn't have|didn't get|never got|won't find|lacks|lacking|left out|left off|forgot|skipped|don't have|does not have|didn't put (?:in|on)|hasn't got|went without)"
        r"(?: in| on| from)*(?: (?:it|this one|there|here|any of it|mine))*(?: is| was| are)?",
        r"(?:it )?(?:doesn't have|does not have|never got|didn't get|hasn't got|lacks|is missing|went without|goes without)",
        r"what (?:did|do) (?:i|we) (?:forget|skip|miss|not have|not (?:put|do|get)|leave (?:out|off))(?: (?:to put|to do))?(?: (?:in|on|from|of|out|off|for|with))*(?: (?:it|this one|that one|here|there))?|what (?:does it (?:not have|lack)|doesn't it have|didn't it get|did it never get)",
    ),
    # from here to the end of the clause nothing is stated but which piece it is
    idle=(
        r"who (?:needs|wants|cares about|has time for|asked for|bothers with)\b",
        r"\bno (?:knowledge|idea|clue|record|memory|recollection|opinion|information|info|word)(?: \w+)? (?:of|about|on|if|whether|as to|regarding)\b",
        r"\b(?:can't|cannot|couldn't|won't) (?:speak|vouch|answer|testify|comment) (?:to|for|on|about)\b",
        r"\b(?:don't|do not|didn't|wouldn't) (?:know|remember|recall) (?:anything |a thing |much |squat )?(?:about|of)\b",
    ),
    # nor which piece
    almost=(
        r"\b(?:was|were|am|'m)(?: just)? (?:about|going|fixing|gonna|ready)(?: to)? (?:say|tell you|write|log|put down|call in)\b|\b(?:almost|nearly) (?:said|logged|told you|wrote|called in)\b",
    ),
    # the whole of it: as done as something that never is
    similes=(r"(?:and |it's |they're )?(?:about|just) as (?:on|in|taped|stapled|done|sealed|closed|finished|rubbed|tight|solid|stuck) as (?:my|a|an|the|your|his|her) .+",),
    # yes and no over the radio, right before the noun
    radio=((r"(?:that's a |that is a |it's a )?negative(?: on)?(?: the| any)?", False), (r"(?:that's (?:an? )?|it's an? )?affirm(?:ative)?(?: on)?(?: the)?", True)),
    # somebody is at it: it is not done
    ongoing=(
        r"(?:\b(?:i'm|we're|he's|she's|they're|somebody's)|\b(?:my|our|the) (?!next|last|only|thing|one|tape|first)\w+(?:'s| is)|\b{name}(?:'s| is))(?: (?:just|still|busy|out there|over there|in there|back there|up there|right now))* (?:rubbing|taping|stapling)\b(?! (?:is|was|done|looks))",
    ),
    # two denials of somebody who would say otherwise
    nobody=(
        r"(?:(?:nobody|no one|don't anybody|don't let anybody)(?: can't| cannot| can| could| gets to| is going to| won't| will)*|(?:you|he|they)(?: can't| cannot| could never| better not| isn't going to| aren't going to| won't)) (?:tell(?: me| us)?|say|claim|accuse me|convince me|make out)(?: that| of)?\b(?=.*\b(?:isn't|wasn't|aren't|weren't|never|didn't|ain't|don't|doesn't|not|without|skipped|forgot|skipping|forgetting|no)\b)",
    ),
    never_without=(
        r"\b(?:never(?: have i)?(?: ever)?|not once(?: have i)?|i've never|i never|i don't|we don't|we never) (?:(?:ever|once|in my life|yet|in \w+ years) )*(?:left|leave|built|build|sent|send|made|make|hung|hang|close|closed|let|ship|shipped|put up|turn out|turned out)\b.*\bwithout(?: \w+){0,2}$",
    ),
    nor_this=(
        r"(?:i'm |i ain't |i am )?(?:not|ain't) (?:about to start|starting|gonna start|going to start|starting now)\b.*|(?:this one|this|# ?\d*|\w+ \w+)(?: ?'s| is| was) no (?:different|exception)|(?:same|nor|not) (?:here|on this one|this one|with this one|today)|didn't start (?:with|now|today)\b.*",
    ),
    # "what I did was …", which asks nothing
    clefts=(
        r"(?:(?:but|and|so|now|well|here's) )*what (?:came out|comes out|came of (?:it|that)|you(?:'re| are)? (?:see|seeing|looking at|get|have)(?: here| there)?|went (?:right|up|in|well|together)|(?:hangs|sits|lies|is hanging|is up) (?:there |here |up )?(?:now|there|here)?)(?: (?:of (?:it|that)|now|there|here|today))*(?: (?:is|was|are|were)\b|'s\b|$)",
        r"(?:(?:but|and|so|now|well|here's) )*what (?:i|we|i've|we've)(?: [\w']+)? ?(?:ended up with|came up with|wound up with|was left with|started with|have|got|had|did|made|built|used|put|cut|ran|went with)(?: (?:here|on (?:it|this one|this|that one)|today|for this one|in it|up here|so far|next|first|for you|there|up there|down there|over there|with what (?:i|we)(?:'ve)? (?:had|got|have)))*(?: (?:is|was|are|were)\b|'s\b|$)",
        r"(?:(?:but|and|so|now|well|here's) )*what (?:i|we|i've|we've)(?: actually| really| just| ended up)? (?:did|do|built|made|hung|set|mounted|used|put|went with|have|got|ran|cut|doing|building|making|did instead)(?: here| on it| in it| instead| in| on| with)*(?: is|'s| was| were| are| says| reads| shows| has)\b",
        r"(?:(?:but|and|so|now|well) )*what (?:actually |really )?(?:went|ended up|got put|got used|wound up)(?: \w+)? (?:on|in|onto|over)\b",
        r"(?:(?:but|and|so|now|well) )*what(?:'s| is) (?:wrong with|on|in|holding|closing|sealing|around) (?!it\b)(?:[\w'-]+ ){1,4}?is\b",
        r"(?:(?:but|and|so|now|well) )*where (?:[\w'-]+ ){1,4}?(?:goes|hangs|sits|runs|ended up|is going)(?: to)? is\b",
        r"(?:(?:but|and|so|now|well|here's|that's) )*(?:why|what) (?:i|we)(?:'m|'re|'d| am| are| had| have)?(?: just| only| really)* (?:calling|called|call|reporting|reported|report|phoning|phoned|writing|wrote|texting|texted|ringing|rang|mentioning|mention|bringing up|bring up|brought up|telling|flagging|flagged|stopped)\b",
        r"(?:(?:but|and|so|now|well|here's|that's) )*how (?:i|we)(?:'ve| have)?(?: just)? (?:found|left|built|made|hung|did|put up|closed|have)\b",
        r"(?:(?:but|and|so|now|well) )*(?:all|the only thing) (?:i|we) did(?: here| on it| to it)? (?:is|was)\b",
    ),
    # the words right before it are another's
    attributed=(
        r"(?:they|he|she|(?:the|my|our) \w+|somebody)(?: had| always| kept)? (?:told|tells|telling) (?:me|us)(?: so)?|(?:is|was|that's|that is|that was) what (?:he|she|they|the \w+) (?:said|told (?:me|us)|wanted|asked for|claimed)|(?:so )?(?:they|he|she|the \w+) (?:say|says|claims?|claimed|tells? me|told me)|or so (?:i'm|i was|we were) told",
    ),
    had_none=r"(?:i|we|they|you) (?:just )?(?:didn't|don't|did not|never) (?:have|get|got|find) (?:them|it|any|those|that|none)(?: (?:though|here|with me|on me|today|anymore))*",
    faulty=frozenset("loose missing bad bent crooked popped broken extra spare more leftover old wrong short".split()),
    # what took the place of it
    own_instead=(
        r"\b(?!\w+ (?:up |out )?(?:(?:an?|my|the|some|another|new|fresh|more|other) )*(?:blades?|knife|gun|saw|bit|tool|pencil|marker|gloves|ladder|lift|batter(?:y|ies))$)(?:made|cut|bent|used|found|got|bought|borrowed|put|went back|bummed|dug up|swapped|grabbed|ended up with|went with)\b.*\b(?:my own|our own|some|new|others?|another|instead|fresh|good ones|them in|more|mastic)\b",
    ),
)
