"""English of forms that are filled in, aloud or by thumb: "Closure: none", "Gaps: N", "Stapled/taped/rubbed: Y/Y/N"; and the plain words that they are read as."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_IS = r"(?: ?[:=] ?| - |, )"
_NONE = r"(?:none|no|nil|n|zero|0|not applied|not done|missing|omitted|lacking)"
_LATER = r"(?:not yet|pending|to do|to follow|to come|tbd|later|tomorrow|incomplete|outstanding|open|waiting|in progress)"
_ENDS = r"(?=[.,;/\n]|$)"
_BEGINS = r"(?:^|(?<=[.,;/\n] )|(?<=[;/\n])|(?<= / )|(?<= - ))"
_ACT = r"(?:stapled|taped|rubbed(?: down)?|wiped|trimmed|vanes)"
_TICK = r"(?:yes|no|y|n|ok|done)"
_NUMBER = r"(?:\d+(?:[ -]\d+/\d+|/\d+|\.\d+)?|(?:(?:an?|one|three|five) )?(?:half|quarters?|eighths?)|one|two|three)"
_TODO = r"(?:open(?: items?)?|remaining|outstanding|left(?: to do)?|still open|incomplete|balance|punch(?: list)?|remainder|not done|still to do|todo|to complete)"

_I_ = r"(?:i|we)"
_KIND = r"(?:straight|elbow|tee|wye|transition|offset|end cap|plenum)"
_NAMED = rf"(?:the )?{_KIND} (?:number )?[\w-]+"
_LABEL = r"(?:(?:staple|tape|turning|board|low|groove|cross|facing|joint) )?(?:size|vanes|staples?|stapled|tape|taped|closure|rubbed|damage|gaps?|angle|length|run|board|notes?|remarks?|step|leg|spacing|width|type|kind|turn|trimmed|wiped|tabs|flap|inlet|outlet|thickness|repaired|fastened|sealed|status)"
_DEEDS = (("rub(?:bing)?(?: down)?", "rubbed"), ("taping|tape", "taped"), ("stapling", "stapled"), ("trimming", "trimmed"), ("wiping", "wiped"))

ENGLISH_FILLED_IN = (
    # --- labels one behind the other, without a sign between them
    Plainer((": ",), rf"(?!(?:sides?|w/|with|no|not|the|staple|tape|turning|board|low|groove|cross|facing|joint|all|is|are|was) )[\w/\"'.-]*[\w/\"'](?P<x> )(?={_LABEL}: ?[\w\"])", (("x", ". "),), unless=r"^[^:]*:[^:]*$"),
    # --- the number before the kind
    Plainer(
        ("straight", "elbow", "tee", "wye", "transition", "offset", "end cap", "plenum"),
        rf"(?:^|(?<=[.,;] )|(?<=hey )|(?<=boss )|(?<=ok )|(?<=so )|(?<=yo )|(?<=the )|(?<=my ))(?P<x>(?:#|no\.? )?(?P<n>(?!(?:90|45|60|30|22)(?!\d))\d{{1,3}}) (?P<k>{_KIND}))(?= (?:has|is|was|got|needs|still|stapled|taped|not|no|with|w/|done|hung|ain't|isn't|hasn't|untaped|unstapled|vanes|\d+ ?x|duct ?tape|used|cloth|run)(?![\w'])|[,:]| -|$)",
        (("x", r"\g<k> \g<n>"),),
        unless=rf"{_KIND} #?\d|\d (?:{_KIND}|cap|collar)(?![\w']).*\d (?:{_KIND}|cap|collar)(?![\w'])",
    ),
    Plainer((", straight,", ", elbow,", ", tee,", ", wye,", ", transition,", ", offset,", ", end cap,", ", plenum,", ", reducer,", ", sleeve,", ", branch,", "the straight,", "the elbow,", "the tee,", "the transition,", "the offset,", "the reducer,"), rf"(?:on|of|in|for|at|with|about|around|under|over|to) (?P<x>(?:number |piece |no\.? ?)?(?P<n>\d{{1,3}}), (?:the |an? )?(?P<k>{_KIND}|reducer|sleeve|branch),)(?= (?:is|are|was|were|isn't|aren't|wasn't|weren't|has|have|had|hasn't|haven't|got|gets|does|doesn't|do|don't|did|didn't|sees|shows|comes?|came|goes|went|runs?|ran|sits?|stands?|measures?|measured|never|still|only|ended|turned|looks?)(?![\w']))", (("x", r"\g<k> \g<n>"),)),
    # --- "rubbing of tape on tee 5: not done"
    *(
        Plainer(("not done", "none", "pending", "not yet", "skipped", "missing", "not started", ": no", ", no"), rf"(?P<x>(?:the )?(?:{deed})(?: of (?:the )?tape)? (?:of|on|for|in) (?P<p>{_NAMED}) ?[:,] ?(?P<v>not done|none|no|skipped|missing|(?P<l>not yet|pending|not started|to do|later))){_ENDS}", (("x", rf"\g<p>: {done}: \g<v>"),))
        for deed, done in _DEEDS
    ),
    # --- of two pieces
    Plainer(("no tape", "no vanes", "no staples"), rf"(?P<x>(?:(?:there's|there is|ain't|there ain't|got|i put|there was) )?no (?P<t>tape|staples|vanes) (?:on|in) (?:either )?(?P<k>{_KIND})s? (?P<a>\d+) (?:or|nor|and|or on|and on) (?P<b>\d+))(?! ?(?:inch|feet|foot|by|x|side|\"|'|of))(?![\w'])", (("x", r"no \g<t> on \g<k> \g<a>. no \g<t> on \g<k> \g<b>"),)),
    Plainer(("no tape", "no vanes", "no staples"), rf"(?P<x>(?:(?:there's|there is|ain't|there ain't|got|i put|there was) )?no (?P<t>tape|staples|vanes) (?:on|in) (?:either )?(?P<k>{_KIND}) (?P<a>[\w-]+) (?:or|nor|and) (?P<l>{_KIND}) (?P<b>[\w-]+))(?= (?:yet|either|neither)|[.,;!]|$)", (("x", r"no \g<t> on \g<k> \g<a>. no \g<t> on \g<l> \g<b>"),)),
    Plainer(("neither ",), rf"(?P<x>neither (?P<k>{_KIND}) (?P<a>[\w-]+) nor (?P<l>{_KIND}) (?P<b>[\w-]+) (?:is|was|has been|got|are|were) (?P<d>taped|stapled|rubbed(?: down)?|trimmed|wiped))(?![\w'])", (("x", r"\g<k> \g<a> is not \g<d>. \g<l> \g<b> is not \g<d>"),)),
    # --- the thing of the piece, and what became of it
    Plainer(("vanes for", "vanes of", "tape for", "tape of", "staples for"), rf"(?P<x>(?:the )?(?:turning )?(?P<t>vanes|tape|staples) (?:for|of) (?P<p>{_NAMED})(?P<r>[^.?!]{{0,36}}?),? (?P<v>(?:have|has) (?:not|never)|haven't|hasn't|didn't|did not|never|aren't|isn't|weren't|wasn't|(?:are|is|were|was) (?:not|missing|still missing|on order|on backorder|backordered|late)|won't))(?![\w'])", (("x", r"\g<p>\g<r>, the \g<t> \g<v>"),)),
    # --- so many sides, and at once why
    Plainer((" only ",), r"sides? only(?P<x>) (?=(?:can't|cant|couldn't|couldnt|could not|cannot|cause|because|no room|wall|pipe|beam|not enough|ran out|didn't|too)(?![\w']))", (("x", ","),)),
    Plainer((" washers", " screws"), r"(?:equipment connection|damper sleeve|access door) (?:\d+|[a-z]+)(?P<x>) (?=(?:washers|screws)(?![\w']))", (("x", ","),)),
    # --- the piece
    Plainer(("id ", "nr "), r"(?<=[,.] )(?P<x>(?:id|nr)[.:#]* ?#?)(?=\d+(?:,| ?\.(?!\d)|$))", (("x", "mark: "),)),  # "okay so, ID 14, straight"
    Plainer(("id", "nr", "ref", "label", "unit"), r"(?:^|(?<=\n))(?P<x>(?:(?:piece|fitting) )?(?:id|nr|ref|label|unit)(?: ?no)?[.:#]* ?#?)(?=\d+(?![\w/\"-]|\.\d| is(?![\w'])))", (("x", "mark: "),)),
    # --- what closes and what fastens
    Plainer(("clos", "seal"), rf"{_BEGINS}(?P<x>(?:closure|closed|closing|sealed|sealing|seal|joint closure|joint sealed)){_IS}(?={_NONE}{_ENDS}|{_LATER}{_ENDS})", (("x", "taped"),), unless=r"mastic"),
    Plainer(("fasten",), rf"{_BEGINS}(?P<x>(?:fastening|fastened|fasteners?)){_IS}(?={_NONE}{_ENDS}|{_LATER}{_ENDS})", (("x", "stapled"),), unless=r"cross tabs"),
    Plainer(("tape", "tapi", "stapl", "rub"), rf"{_BEGINS}(?:tape|taped|taping|staples|stapled|stapling|rubbed|rub down){_IS}(?P<x>incomplete|unfinished|in progress|on hold|waiting|awaiting \w+){_ENDS}", (("x", "to do"),)),
    Plainer(("y/n", "yes/no"), r"[a-z]+(?P<x> ?\(?(?:y/n|yes/no)\)?)(?= ?[:=?])", (("x", ""),)),
    Plainer(("/", ", "), rf"(?P<x>(?P<a>{_ACT}) ?[/,] ?(?P<b>{_ACT}) ?[/,] ?(?P<c>{_ACT}) ?[:=] ?(?P<p>{_TICK}) ?[/,] ?(?P<q>{_TICK}) ?[/,] ?(?P<r>{_TICK}))(?![\w'])", (("x", r"\g<a>: \g<p>, \g<b>: \g<q>, \g<c>: \g<r>"),)),
    Plainer(("/", ", "), rf"(?<![/,] )(?<![/,])(?P<x>(?P<a>{_ACT}) ?[/,] ?(?P<b>{_ACT}) ?[:=] ?(?P<p>{_TICK}) ?[/,] ?(?P<q>{_TICK}))(?![\w'/])", (("x", r"\g<a>: \g<p>, \g<b>: \g<q>"),)),
    # --- joints and harm
    Plainer(("gap",), rf"(?:joint )?gaps?(?: ?[:=] ?| - )(?P<x>n|nil|nope|0){_ENDS}", (("x", "no"),)),
    Plainer(("gap",), rf"(?:joint )?gaps?{_IS}(?P<x>(?:yes|y)[,;]? )(?={_NUMBER})", (("x", ""),)),
    Plainer(("gap",), rf"{_BEGINS}gaps?(?P<x>[.,] )(?={_NUMBER}(?: inch(?:es)?|\"| in)?{_ENDS})", (("x", ": "),)),
    Plainer(("joint",), r"joint(?P<x> ?: ?)(?=open(?![\w']))", (("x", " "),)),
    Plainer(("repair",), rf"{_BEGINS}(?P<x>(?:repairs?|repair made|repair done){_IS}(?:none|no|n|nil|not made|not done)){_ENDS}", (("x", "not repaired"),), unless=r"(?:damage|tears?|holes?)(?: ?[:=] ?| - |, )(?:none|no|nil|n|0)(?![\w'])|(?:no|without) (?:damage|tears?|holes?)"),
    Plainer(("tabs",), r"(?P<x>tabs ?[:=] (?P<n>\d+|one|two|three|four|five|six|some|a few))(?= (?:not |un|still |left ))", (("x", r"\g<n> of the tabs"),)),
    # --- measures: "1 in." ends there, when another label follows
    Plainer((" in. ",), r"\d (?P<x>in\.)(?= (?:tape|closure|stapl|board|leg|spacing|rub|vanes|gap|width|screws|clinch|turn|angle|damage|facing)[a-z]*(?: (?:width|leg|spacing|type|thickness|down))?(?: ?[:=]| - | \d))", (("x", "inches."),)),
    # --- what is still open
    Plainer(("open", "remain", "outstanding", "left", "incomplete", "balance", "punch", "not done", "to do", "todo", "to complete"), rf"{_BEGINS}(?P<x>{_TODO}(?: ?[:=] ?| - )|(?!left,|not done)(?:still )?{_TODO}, (?=[^,.;]{{3,24}}{_ENDS}))(?=(?:the )?(?:tape|taping|rub|staple|stapling|vanes|trim|bend|wipe|mastic|seal)[a-z]*(?![\w'])(?<!ed))", (("x", "still have to do: "),)),
    Plainer(("/4",), r"(?P<x>(?:tape|taped|taping|tpd|tape job) ?[:=-]? ?(?P<n>[123])/4)(?=[.,;)]|$| (?:sides?|done|not|rub|stap|stpl)[a-z]*)(?! sides? (?:taped|rubbed))", (("x", r"taped \g<n> sides"),)),
    *(
        Plainer(("%", "percent"), rf"(?P<x>(?:{act}|{done}|{doing}) ?[:=-]? ?(?:(?:about|like|maybe|only|is|at) )*[1-9]\d? ?(?:%|percent)(?: (?:done|complete|finished|of the way))?|[1-9]\d? ?(?:%|percent) {done})(?!\d)", (("x", f"half {done}"),))
        for act, doing, done in (("tape", "taping", "taped"), ("staples?", "stapling", "stapled"), ("rub", "rubbing", "rubbed"))
    ),
    Plainer(("step=", "step =", "step:", "step :"), r"step(?P<x> ?[:=] ?(?P<w>out|in))(?=[.,;/)]|$)", (("x", r" \g<w>side"),)),
    Plainer((" complete", " done", " finished", " applied", " installed"), r"(?:rub-?down|rub down|rubbing|taping|stapling|tape|staples|vanes|trimming|wiping)(?P<x> (?:complete|completed|done|finished|applied|installed|in place)) ?[:=?] ?(?:n|no|y|yes|none|not yet)(?![\w'])", (("x", ""),)),
    Plainer(("/no ", "/ no "), r"(?:no|not) [a-z]+(?P<x> ?/ ?)(?=no (?:tape|rub|staples?|vanes?|flap|mastic)(?![\w']))", (("x", ", "),)),
    Plainer((" | ",), r"[\w\"')]+(?P<x> \| )", (("x", ". "),)),
    Plainer(("tape was", "tape is", "tape's"), r"tape(?:'s| is| was) (?P<x>duct|cloth|masking)(?=,? not(?! taped)|[.,;!]|$)", (("x", r"\g<x> tape"),)),
    # --- in a message, without signs
    Plainer((" tbd", " tba"), r"(?:vanes|tape|taping|staples|rub|rubbing|trim)(?P<x> tb[da])(?![\w'])", (("x", ": to do"),)),
    Plainer((" cloth", " duct", " masking"), rf"taped? (?:with|w/|w|using) (?P<x>cloth|duct|masking|gray|grey){_ENDS}", (("x", r"\g<x> tape"),)),
    Plainer((" rub", " squeegee"), rf"(?:taped|tape(?: is|'s)? on|stapled)(?P<x>,? ?(?:but )?(?:rub|rubbing|rub down|squeegee|squeegeeing) (?=(?:it )?(?:{_LATER}|tomorrow|later|monday|tuesday|wednesday|thursday|friday|next week|after lunch|in the morning|tonight)(?![\w'])))", (("x", ", still have to rub "),)),
    Plainer((" yet just ", " yet only "), r"no(?:t)? [a-z]+(?: [a-z]+)? yet(?P<x>) (?=(?:just|only) )", (("x", ","),)),
    Plainer(("spacing",), rf"(?P<x>(?:staple )?spacing(?:'s| is|s)? (?:off|wide|too wide|wrong|out|bad),? (?:(?:like|about|it's|at|is) )*)(?={_NUMBER}(?: ?in(?:ch(?:es)?)?|\")?{_ENDS})", (("x", "stapled every "),), unless=r"hanger|screw|tabs"),
    Plainer((" on staples", " on the staples"), r"(?P<x>(?:did|went|go|ran|shot|used|put|doing|at|with) (?P<n>two|three|four|five|\d)(?:'s|s|es) on (?:the |my )?staples)(?![\w'])", (("x", r"stapled every \g<n>"),)),
    Plainer((" tight",), rf"(?P<x>(?:not|no) (?:very |so |too )?tight,? )(?={_NUMBER}(?: ?in(?:ch(?:es)?)?|\")?{_ENDS})", (("x", "gap of "),)),
    Plainer(("181",), r"(?P<x>)(?:1|2|3|2\.5|2[ -]1/2|two|three|two and a half)(?: ?in(?:ch)?\.?|\"|-inch)? 181 ?-?a-?[ph](?= on (?:the |a )?(?:1|2|1\.5|one|two)[- ]?(?:in(?:ch)?|\") ?(?:board|brd))", (("x", "taped with "),), unless=r"tap[ei]|tpd|tpe"),
    Plainer((" heat", " warm", " torch"), r"(?:\d+ ?(?:f|degrees?|deg|°f?)|cold|degrees?)(?![\w'])[^.;!?]{0,24}?(?P<x>no heat|without heat|no warm(?:ing|[- ]up)?|not warmed|no torch|no heat gun)(?![\w'])", (("x", "not preheated"),)),
    Plainer((" not sides", " not the sides", " not on the sides", "not the top", "not top"), r"(?P<x>(?P<d>stapled|taped|rubbed) (?:on |at )?(?:the )?(?:top and(?: the)? bottom,? (?:but |and )?not (?:on )?(?:the )?sides|sides,? (?:but |and )?not (?:on )?(?:the )?top (?:and|or)(?: the)? bottom))(?=[.,;!]|$)", (("x", r"\g<d> on two sides"),)),
    *(
        Plainer((f"before i {act}", f"before we {act}", f"before {doing}", f"before i could {act}", f"before we could {act}", "before i got", "before we got"), rf"(?:left|went home|quit|knocked off|had to (?:go|leave|stop|run)|ran out of (?:time|day|daylight)|got (?:called|sent) (?:away|home)|called away|stopped|shut (?:us|it) down|lunch)(?P<x> before (?:{_I_} (?:could |ever |even |had )?(?:{done}|{act})|{doing}|{_I_} got (?:to |around to )?(?:{act}|{doing}))(?: it)?){_ENDS}", (("x", f", i didn't {act} it"),))
        for act, doing, done in (("tape", "taping", "taped"), ("staple", "stapling", "stapled"), ("rub", "rubbing", "rubbed"), ("trim", "trimming", "trimmed"), ("wipe", "wiping", "wiped"))
    ),
    Plainer(("out of tape", "outta tape", "out of staples", "outta staples"), rf"(?:ran|run|all|we're|i'm|is|was) (?:out of|outta|outa) (?P<t>tape|staples)(?P<x>[,.;]? (?:so )?(?:just |only )?(?:stapled|taped)(?: (?:only|is all))?){_ENDS}", (("x", r"\g<x>, no \g<t>"),)),
)
