"""English for the same states in the words that men use besides: work that waits on a list, glass that was shoved in, a flap that only lies there."""

from __future__ import annotations

from logbook.languages.language import State

_EXTRA = r"(?:extra|excess|surplus|leftover|left over)"
_GLASS = r"(?:insulation|glass|fiber ?glass|wool|fluff|fuzz|fibers|batting)"
_LIST = r"(?:the |my |a |his )?(?:punch[- ]?list|to[- ]?do list|snag list|work list|hit list|short list|my list|the list|the board for tomorrow|the punch)"
_ITSELF = r"^(?:(?:but|and|so|well|now|still|just|this|that|one|piece|it|it's|its|she|she's|this one's|that one's|these|they're|is|was|i'm|only|about|like|maybe) )*"
_BLADES = r"(?:turning |air |any |the |its )*(?:blades?|fins|deflectors?|guides|splitters?|louvers|rails)"

ENGLISH_WORDS_TOLD: tuple[State, ...] = (
    # work that is not at its end
    State(
        "(open)",
        None,
        (
            rf"{_ITSELF}(?:a )?(?:work in progress|in progress|in process|pending|on hold|half[- ]baked|mid[- ]way|midway|partway(?: there| done)?|part way(?: there| done)?)(?: (?:for now|right now|at the moment|till tomorrow|until tomorrow|still|on this one))*$",
            rf"{_ITSELF}(?:almost|nearly|close to|not quite|ninety percent|90 percent|ninety five percent|95 percent|eighty percent|80 percent|three quarters|mostly|about|half|not a hundred percent|not one hundred percent) (?:done|finished|complete|completed|there|through|ready)(?: (?:with it|yet|on this one))*$",
            rf"{_ITSELF}(?:to be|still to be|has to be|got to be|gotta be|needs to be|yet to be) (?:finished|completed|continued|wrapped up|buttoned up)(?: (?:later|tomorrow|up|off))*$",
            rf"{_ITSELF}(?:still )?(?:on|goes on|went on|put it on|stays on|added to|going on) {_LIST}$|^(?:a |one )?punch[- ]?list item$",
            r"(?:still|there's|there is|got|more|some|a little|a bit of|plenty of)(?: (?:got|some|more|have|a|bit|of|little|still))* (?:work|stuff|things) (?:left )?to (?:do|finish)(?: (?:on|with|to) (?:it|this one|this|her|that|the \w+))?$|(?:work|something|stuff)(?:'s| is)? (?:still )?left (?:to do )?(?:on|with) (?:it|this one|this|her)$",
            r"^(?:(?:i|we|and|but|just|only|may have|must have) )*(?:missed|overlooked|neglected|bypassed) (?:a |one |the |that |two |a couple of |a few )*(?:(?:last|other|far|back|bottom|top|left|right|little|small|whole) )*(?:spots?|places?|heel|throat|side|seam|corner|end|edge|stretch|section)(?: (?:on|at|in|by|near|along) (?:the |that )?[a-z]+(?: (?:side|seam|end|edge|corner))?)?$",
            r"^(?:(?:it's|it|is|still|all|and|but|just|left) )*(?:unfinished|incomplete|half done|half finished|not finished) (?:at|on|along|in|by) (?:the |one |its )?(?:(?:last|other|far|back|bottom|top|left|right) )*(?:heel|throat|side|seam|corner|end|edge|back|bottom|top|left|right|front)$",
            r"^(?:(?:i|we|it|so|and|but|just|had to|got|then) )*(?:left off|stopped|quit|knocked off|walked off|paused|broke off) (?:half ?way|part ?way|midway|in the middle|mid ?stream|on it|there)(?: (?:through|on it|round|around|of it))*$",
            r"^(?:(?:i|we) )*(?:ran|run) out of (?:time|day|daylight|steam|hours) (?:on|for|with) (?:it|this one|this|her)$",
            r"^(?:(?:just|i'm|we're) )*(?:finish|save|complete) (?:it|this one|her|this|the rest|that one)(?: up| off| out)? (?:for |on |till |until |in )?(?:the )?(?:tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|later|morning|after lunch|next week|next time|another day)(?: morning| first thing)?$",
            rf"{_ITSELF}waiting (?:on|for) (?:the |some |more |a |my |our )*(?:parts?|materials?|board|supplies|delivery|the other end|an answer|other piece|stock|truck)$",
            rf"{_ITSELF}(?:needs?|wants?|could use|requires?)(?: (?:some|a|a little|a bit of|one|one more|another|its|more))* (?:touch(?:ing)?[- ]?ups?|touching up|rework|re-work|attention|tlc|looking at|a look|once over|going over|thing|more thing|another thing|cleaning up|cleanup|clean up|straightening out|finishing|finishing touches|finish work|redoing|redone|adjusting)(?: (?:on|at|for) .*)?$",
            r"^(?:(?:the|just|only|and|but|its|my) )*(?:other |last |far |near |back |front |top |bottom |left |right |one )?(?:end|side|corner|seam|bottom|top|back|front|edge|lap)(?:'s| is| are)? (?:left|still|yet|remaining|waiting)(?: (?:to do|to go|left|undone))+$|^(?:(?:just|only|and|but|still) )*(?:one|two|three|a couple) (?:more )?(?:sides?|ends?|seams?|corners?|edges?) (?:left )?to (?:do|go|finish)$",
            r"^(?:(?:left|leaving|it's|has|with|got) )*(?:the |its |an |one |that )*(?:other |far |back )?end(?:'s| is)?(?: (?:left|still|just))* open(?:,? (?:no|without a|needs a) cap)?$|^open end$",
            r"^(?:(?:it's|all|looks|it|is|and|but) )*(?:good|done|fine|finished|complete|ok|okay|all set|set) (?:except|but|save|other than|apart from|minus|short of)(?: for)? (?:the |one |that |a )?(?:last |other |far |back |bottom |top )?(?:side|end|corner|seam|edge|bottom|top|back|front|heel|throat|lap|bit|spot)$",
        ),
        pending=True,
        righted=r"(?:came|went|got|gotten|been) back|back (?:at|on) it|finished it|finished (?:up|her)|got it (?:done|finished|all)|(?:it's|is|all|now) done|done now|wrapped it up|took care of it|knocked it out|buttoned it up|caught up",
        cues=("progress", "in process", "pending", "on hold", "half", "part way", "partway", "midway", "mid-way", "almost", "nearly", "close to", "not quite", "percent", "quarters", "mostly", "about", "to be ", "list", "to do", "to go", "to finish", "missed", "overlooked", "neglected", "bypassed", "unfinished", "incomplete", "not finished", "left", "stopped", "quit", "knocked", "walked", "paused", "broke off", "pulled", "called", "dragged", "taken", "yanked", "sent", "out of", "tomorrow", "day", "later", "morning", "lunch", "next", "waiting", "need", "want", "could use", "require", "still", "remaining", "open", "except", "but", "save", "other than", "apart from", "minus", "short of"),
    ),
    # held by nothing but its tape, a flap that was left lying
    State(
        "stapled",
        False,
        (
            r"nothing(?:'s| is)?(?: \w+)? (?:fastening|holding|keeping|closing|pinning|securing)(?: (?:it|them|that|this one|the (?:joint|seam|flap)|things))?(?: (?:together|shut|down|up|on|in))* (?:but|except|other than|besides) (?:the )?(?:tape|foil|mastic|mud)",
            r"(?:tape|foil|mastic|mud)(?:'s| is)? (?:all|the only thing|the one thing|what)(?: that)?(?:'s| is)? (?:holding|keeping|fastening|closing|securing)(?: .*)?",
            r"(?:nothing|not a thing|no staples?|zilch|not one staple)(?:'s| is| are)? (?:under|underneath|beneath|behind|below) (?:the |that |my |its )?tape(?! (?:but|except|besides))(?: (?:holding|to hold|keeping) .*)?|under(?:neath)? the tape (?:there's|is|it's|it has) (?:nothing|no staples?|not a thing)",
            r"nothing (?:got|was|is|has been|ever got) (?:stapled|pinned|stitched|fastened)",
            r"flaps?(?:'s| is| are| was)? (?:just |only |all |still |simply )+(?:laying|lying|sitting|resting|hanging|laid|taped over|taped down|folded over|flopped|flopping|stuck down|stuck)(?: (?:there|loose|over|down|on it|flat))*(?! (?:and|then) (?:stapled|staples))|(?:didn't|never|haven't|couldn't|not|hasn't been|wasn't|isn't|aren't) (?:pin|pinned|staple|stapled|fasten|fastened|tack|tacked|secure|secured|catch|caught) (?:down )?(?:the |its |that )flaps?(?: down)?",
        ),
        cues=("nothing", "all that", "all holding", "only thing", "one thing", "what", "under", "beneath", "behind", "below", "flap", "not a thing", "zilch"),
    ),
    # more insulation than there should be, put out of the way
    State(
        "trimmed",
        False,
        (
            rf"(?:stuffed|folded|shoved|jammed|tucked|pushed|crammed|mashed|packed|wadded|rolled|smashed|bent|poked|forced) (?:all )?(?:the |that |its |my )?{_EXTRA}(?: {_GLASS})?(?: (?:in|under|back|down|inside|behind|over|into it|in there|away|back in))+",
            rf"{_EXTRA}(?: {_GLASS})?(?:'s| is| was| got| just)*(?: (?:all|still|just))* (?:there|jammed|stuffed|shoved|folded|tucked|bunched|wadded|crammed|mashed|packed|pushed)(?: (?:in|under|back|down|inside|there|in there|in the \w+|behind|up))*$",
            rf"(?:cut|edge|cut edge)(?:'s| is| was| came out| looks)? (?:all |pretty |real |kind of |still )*(?:shaggy|fuzzy|hairy|furry|raggedy|whiskery)|(?:ragged|raggedy|shaggy|loose|untrimmed|stringy) {_GLASS}(?: (?:at|in|on|along) .*)?$|^(?:the |a )?(?:shaggy|raggedy|fuzzy) cut$",
            rf"{_GLASS}(?:'s| is| sits| stands)?(?: (?:still|all|a little|a bit))* proud(?: of .*)?$",
        ),
        kinds=("transition",),
        cues=("extra", "excess", "surplus", "leftover", "left over", "shaggy", "fuzzy", "hairy", "furry", "ragged", "whiskery", "loose", "untrimmed", "stringy", "proud"),
    ),
    # an elbow without its blades
    State(
        "vanes",
        False,
        (
            r"^(?:(?:it|it's|got|has|there's|with|and|but|i|we|left|forgot|skipped|out|the) )*(?:no|without|minus|zero|not any|missing) (?:turning |air )?(?:turning blades|fins|deflectors?|guides|splitters?|louvers|rails)(?: (?:in it|inside|in there|in|on it|in this one|at all|yet))*$",
            rf"^(?:(?:the|its|my|all|turning|air) )*{_BLADES}(?:'re| are|'s| is| were)? (?:missing|not in|left out|still out|not there|on order|not in yet|in the truck|in the box|in the shop)$|{_BLADES} (?:aren't|weren't|never went|didn't go|isn't) in\b",
            r"vanes?(?:'re| are| is)? (?:still )?on (?:back ?)?order|out of vanes(?: (?:on|for|at|by) [\w -]{1,24})?$",
        ),
        ("K_ELBOW", "VANES", "THROAT"),
        apart=True,
        kinds=("elbow",),
        uses=True,
        cues=("blade", "fins", "deflector", "guides", "splitter", "louver", "rails", "vane"),
    ),
    # the step told by other names of it
    State("groove_step", "outside", (r"(?:lip|ledge|notch|low shoulder|low lip|low ledge|shelf of the lap|low step)(?:'s| is| are)? (?:faces?|facing|points?|pointing|turned|looks?|looking|on|to|toward|left)? ?(?:on |to |toward |towards )?(?:the )?(?:out|outside|outward|room|foil|facing)(?: side)?$",), cues=("lip", "ledge", "notch", "shoulder", "shelf", "step")),
    State("groove_step", "inside", (r"(?:ledge|notch|low shoulder|low lip|low ledge|shelf of the lap)(?:'s| is| are)? (?:faces?|facing|points?|pointing|turned|looks?|looking|on|to|toward|left)? ?(?:on |to |toward |towards )?(?:the )?(?:in|inside|inward|air|air side|glass)(?: side)?$",), cues=("lip", "ledge", "notch", "shoulder", "shelf")),
    State("panel_seated", False, (r"(?:won't|wouldn't|doesn't|didn't|isn't|not) (?:go|going|come|drop|sink|slide|get|lay|lie) (?:all the way |quite |fully )?(?:down|home|in|flat|all the way)(?: .*)?$",), ("PANEL",), uses=True, cues=("n't", "not ")),
    # tape that hangs, staples that are up: nothing was hung
    State("taped", False, (r"(?:'s|is|are|just|still|all|end's)? ?(?:hanging|dangling|flopping|drooping)(?: (?:off|down|loose|free|there|by a thread|(?:at|off|from) the (?:corners?|ends?|seams?|edges?|sides?|joints?|bottom|top|back|heel|throat|far end)))*$",), ("TAPE",), uses=True, cues=("hanging", "dangling", "flopping", "drooping")),
    State("taped", False, (r"(?:left|leaving|leave) (?:the |that |one |my )?(?:(?:far|back|bottom|top|left|right|other|last|near|front) )+(?:side|seam|edge|end|corner|joint)?(?: side)? ?(?:all |still )*(?:bare|naked|uncovered|exposed)$",), cues=("bare", "naked", "uncovered", "exposed")),
    State("taped", False, (r"^(?:(?:but|and|so|now|well|yeah|still) )*(?:it's|it is|she's|this one's|they're) (?:still |all |just |sitting )*(?:bare|naked|uncovered|exposed|open to the air|bare naked)$",), cues=("bare", "naked", "uncovered", "exposed", "open to the air")),
    State("taped", False, (r"(?<!no )(?<!any )(?<!for )(?<!the )(?<!that )(?<!zero )(?<!not )(?:lifted|lifting|peeling|peeled|loose|curling|curled|unstuck|dangling|flapping|hanging) (?:foil )?tape (?:at|on|along|in|down|over) (?:the |that |my |one )?(?:top|bottom|left|right|front|back|far|other|near|heel|throat|corners?|ends?|seams?|edges?|sides?|joints?|underside)\b",), ("TAPE",), uses=True, cues=("lift", "peel", "loose", "curl", "unstuck", "dangling", "flapping", "hanging")),
    # the tape pressed on by hand alone
    State("rubbed_down", False, (r"(?:only|just|simply) (?:hand[- ]?|thumb[- ]?|finger[- ]?)?(?:pressed|pushed|smoothed|patted|thumbed|rubbed|mashed) (?:it|the tape|that|them)?(?: (?:down|on|out|flat|in))* ?(?:with|by|using) (?:my |the |a |his )?(?:bare )?(?:hands?|thumbs?|fingers?|palms?|fist|sleeve|glove|elbow)|(?:pressed|smoothed|patted|rubbed) (?:it |the tape |that |them )?(?:down |on |out )?(?:with|by) (?:my )?(?:hand|thumb|fingers?|palm) (?:only|alone|and (?:that's it|nothing else))", r"rubb?(?:ing|down)(?:'s| is)? (?:still )?(?:left|to go|to come|left to do|not done)$"), (), cues=("only", "just", "simply", "alone", "nothing else", "that's it", "left", "to go", "to come", "not done")),
    # a wrong tape that he used
    State("closure", "other_tape", (r"(?:used|put(?: on)?|ran|laid) (?:on )?(?:the |a |some )?wrong (?:kind of |sort of |type of |roll of )?tape(?: on (?:it|the \w+|this one|there))?",), (), cues=("wrong",)),
)
