"""English words of forms, tags and thumbs: "MARK: 15", "the tag reads R-3-07", "Tp. Rb."."""

from __future__ import annotations

from logbook.languages.en.acts_done import ACTS_DONE
from logbook.languages.en import taken_for as en_taken_for
from logbook.languages.en.calques import ENGLISH_CALQUES
from logbook.languages.language import Forms

_TOOL = r"(?:squeegee|paddle|rubbing (?:stick|tool|block)|rub (?:stick|tool|block)|plastic (?:card|squeegee)|spreader)"
_STUFF = r"(?:(?:foil |pressure |aluminum )?tape|181 ?a ?-? ?p|a ?-? ?p tape)"
_OVER = r"(?:down|around|along|over|across|up and down|up|on|onto|through|into|all)"
_WHERE = r"(?:it|them|all|every|each|both|the|its|this one|that one|four|all four|straight|elbow|tee|cap)"
_SKIN = r"(?:foil|facing|jacket|board|skin|surface|outside)"

_OFF = r"(?:took|taken|peeled|stripped|pulled|ripped|tore|pried|scraped|wiped|yanked|removed|dug|popped)"
_WHAT = r"(?:(?:the|that|those|my|all|of|this|every|old|first|original|a|an|wrong|bad|staples?|tape|stuff|legs?|on|at|apart|that was|that were|i had|it|them|wide|roll|strips?|crown|set|kind|ones?|mastic|spacing|inch) )*?"
_OUT = r"(?P<out>(?:(?:off|out|back|right|all|up|clean|again|of it) )*)"
_ON = r"(?:put|laid|ran|used|went|shot|drove|stuck|set|redid|did|restapled|re-stapled|retaped|re-taped|came back|it's|they're|got|slapped|went back|went over)"
_NEW = r"(?:(?:it|them|on|back|in|over|with|the|at|down|new|some|fresh|all|a|an|to|every|ones|tape|staples|again|up|right|proper|good|that's|now|is|are|around) )*?"
_THEN = r"(?:[,.] |(?:and|then|so|i|we|just|now|but|after that) )+"
_TAIL = r"(?P<tail>(?: (?:on|in|back on|back in|instead)(?= [,.]| and |$))?)"
_PART = r"(?! [^.]{0,30}\b(?:half|part|last|rest|other|remaining|top|bottom|left|right|seam|side|corner)\b)"

_BIT = r"(?:hair|touch|bit|little bit|little|tad|smidge|smidgen|shade|skosh|fraction|whisker|good bit|fair bit)"
_A_BIT = rf"(?:(?:just |maybe |only |like )*(?:a |some )?{_BIT}|just|slightly|barely|well|way|somewhat|a lot)"

ENGLISH_FORMS = Forms(
    lettered={"T": "K_TEE"},
    beyond=rf"(?<![\w'])(?<!\bno )(?<!\bnot )(?<!\bnever )(?:{_A_BIT} (?:over|past|above|beyond|(?:more|better|wider|farther|further|bigger|greater|less) than|under|shy of|north of)|(?:more|better|wider|farther|further|bigger|greater) than|upwards? of|north of|in excess of)$",
    has_to_do=r"^(?:(?:but|and|so|now|just|only|i|we|he|they|you)(?: |'ll |'d ))*(?:still |only |just )?(?:have|has|'ve got|there's|there is|there are|leaves|leaving)(?: still| yet| only| just)?(?: |$)|^(?:(?:but|and|so|only|now) )?(?:i|we)'ve(?: still| only| just)? (?:got|the|a|one|both|all|two|three|four|that|this|those|some|its) |^(?:(?:i|we) )?still got |^(?:(?:i|we) )?got .*(?: yet| still)$",
    work_to_do=r"\b(?:there's|there is|have|has|i've|we've|leaves|leaving|got|still)(?: just| only| still| got)* (?:the|its|my|all the|that) \w+ to do$",
    thought=en_taken_for.THOUGHT,
    thought_so=en_taken_for.THOUGHT_SO,
    found_by=en_taken_for.FOUND_BY,
    above=r"(?<![\w'])(?<!\bno )(?<!\bnot )(?<!\bnever )(?:over|above|past|beyond|exceeds|exceeding|(?:steeper|more|higher|greater|hotter|better|worse) than|upwards? of|north of|at least)$",
    and_more=rf"(?:,? (?:or|and) (?:(?:maybe |just )*a {_BIT}(?: (?:more|over|better|extra|past))?|some|change|better|more)|,? maybe a {_BIT} (?:more|over|past)|,? plus)(?= apart| between| on center|[,.;]|$)",
    swap_verbs=rf"(?:could|should|would)(?:'ve)?|shoulda|coulda|meant|supposed|wanted to|going to|planned|{_OFF}|out of|no more|short on|swapped|switched|traded|changed|replaced|bumped|redid|recut|re-cut|re-did",
    swaps=(
        rf"(?P<off>{_OFF} (?:(?:off|out|up|back) )*){_WHAT}(?P<old><m>|<c>) {_WHAT}{_OUT}(?P<link>{_THEN}{_ON} ){_NEW}(?P<new><m>|<c>){_TAIL}{_PART}",
        rf"(?P<off>(?:(?:ran|run|was|were|am|are|all) )*(?:out of|short on|no more) ){_WHAT}(?P<old><m>|<c>) {_WHAT}(?P<out>)(?P<link>{_THEN}{_ON} ){_NEW}(?P<new><m>|<c>){_TAIL}{_PART}",
        rf"(?P<off>(?:swapped|switched|traded|changed|replaced) (?:(?:out|from) )*){_WHAT}(?P<old><m>|<c>) {_WHAT}{_OUT}(?P<link>(?:for|to|with|over to|out for|into) ){_NEW}(?P<new><m>|<c>){_TAIL}{_PART}",
        rf"(?P<old><m>|<c>) {_WHAT}(?P<link>{_THEN}(?:changed|switched|swapped|bumped|redid|recut|re-cut|re-did|moved) (?:it|them|that|those|all of it|out) (?:(?:up|over|out|down|all) )*(?:to|for|with|at) ){_NEW}(?P<new><m>|<c>){_TAIL}{_PART}",
        rf"(?P<label>back|every|over|at) (?P<old><m>) (?P<link>{_THEN}(?:redid|recut|re-cut|re-did|redrew|re-marked|remarked) (?:it|them|that|those|all of it|the line|the lines|the cut) (?:[,.] |(?:and|now|it's|so|then|they're) )*)(?P=label) (?P<new><m>){_PART}",
        rf"(?P<off>(?:could've|could have|would've|would have|should've|should have|shoulda|coulda|should|(?:was|were) (?:meant|supposed|going) to|meant to|wanted to|planned (?:on|to))(?: (?:be|have|been|had|used|use|using|put|gone|go|with|get|got|taken|on))* ){_WHAT}(?P<old><c>)(?P<out>(?: tape| on it| on there| there)?) (?P<link>(?:,|but|till|until|and|so) )(?:(?!<c>|not |never |n't )[^ .?]+ ){{0,10}}?(?P<new><c>){_PART}",
        rf"(?<!every )(?P<old><m>|<c>) {_WHAT}(?P<link>{_THEN}{_OFF} (?:it|them|that|those|all of it|it all) (?:(?:all|back|right|off|out|up|clean) )*{_THEN}{_ON} ){_NEW}(?P<new><m>|<c>){_TAIL}{_PART}",
    ),
    lays=frozenset(("put", "puts", "did", "do", "make", "made", "use", "used", "apply", "applied", "place", "placed", "install", "installed", "stick", "sticked", "stuck", "have", "had", "got", "get", "fit", "fitted", "glue", "glued", "insert", "mount", "mounted", "bring", "brought")),
    calques=ENGLISH_CALQUES,
    wipes=frozenset(("clean", "wipe", "brush")),
    heats=frozenset(("heat", "warm", "preheat", "hot")),
    has_not=frozenset(("has not", "have not", "hasn't", "haven't", "had not", "hadn't")),
    nothing=frozenset(("nothing", "no", "none", "any", "neither", "never")),
    others=frozenset(("he", "she", "they", "nobody", "no one", "nobody has", "nobody's")),
    nobody=frozenset(("nobody", "no one", "nobody has", "nobody's")),
    well=frozenset(("hard", "strong", "strongly", "complete", "well", "careful", "carefully", "correct", "correctly", "perfect", "perfectly", "normal", "very", "much", "enough", "also", "same")),
    always=r"\b(?:always|usually|normally|generally|mostly|typically|every (?:time|day|piece|one|joint)|each time|all the time|most days|rule)\b",
    spaces=frozenset(("space", "separation", "opening", "distance", "hole", "light")),
    between=frozenset(("between", "in between", "union", "unions")),
    steps=frozenset(("first", "after", "later", "afterwards", "second", "finally", "last", "next")),
    there=frozenset(("is there", "are there")),
    enters=frozenset(("enter", "enters", "entered", "inside")),
    habit=r"\b(?:always|usually|normally|never|ever|whenever|when|if|unless|generally|mostly|typically|every (?:time|day|piece|one|joint)|each time|all the time|most days|you(?! (?:can |could )?see the scrim)|they|he|she|before i|till i|until i|once i|gonna|can|could|should|would|must|let me|remind|rule|wait|waits|waiting|want|wants|until(?! (?:you |i |we )?(?:can )?(?:see|the scrim))|till(?! (?:you |i |we )?(?:can )?(?:see|the scrim))|now(?= .*\b(?:after|then|later)\b))\b",
    earlier=frozenset(("first", "earlier", "before")),
    misspoke=r"(?:i|we|i'd|we'd)(?: (?:first|had|originally|think i|may have|must have|must've|just|only))* (?:said|wrote|put|had|called|told(?: \w+)?|gave(?: \w+)?|logged|read|listed)(?: (?:it|this|that|this one|that one|you|as|down|in|at|first|earlier|before|as a|a|the))*",
    instead=frozenset(("instead", "instead of")),
    as_drawn=(
        r"(?<!not )(?<!n't )\b(?:just |exactly |right )?(?:like|as|the way|how|where) (?:it|they|she|that|this|one|you|those)(?:'s|'re| is| are| all)* (?:should|ought to|supposed to|has to|have to|needs? to)(?: be| go| look| face| sit)?(?=$|[,.;!])",
        r"\b(?:became|turned into|shrank to|shrunk to) (?:an? |only |just |about |maybe )*(?:\d|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|\w+teen|\w+ty)\b",
        r"(?<=\w )(?<!not )(?<!n't )(?:just |exactly |same )?(?:like|as|per|to) (?:the |our |that )?(?:spec|print|drawing|plan|detail|code|book|sheet)s?(?: (?:says?|calls? for|calls? it|shows?(?: it)?|wants?(?: it)?|asks?(?: for)?|has it|requires?))?(?=$|[,.;!])",
        r"\b(?:that's|that is|so that's|it's|this is|which is) (?:exactly |just |precisely )?(?:what|how|the way|the size) (?:i|we) (?:\w+ )?(?:built|made|did|cut|got|have|have here|put together|ran|used|went with|laid out)\b",
        r"\b(?:that's|that is|which is) (?:exactly |just |precisely )?(?:how|the way) (?:[\w-]+ ){1,3}(?:is|was|got|are|were) (?:stapled|taped|built|made|done|hung|rubbed|closed|cut)\b",
        r"\b(?:that's|that is|which is) (?:exactly |just |precisely )?(?:what|how) (?:it|this|this one|she) (?:is|came out|measures)\b",
        r"\b(?:i|we) (?:built|made|did|cut) (?:it |mine |this one )?(?:just |exactly )?(?:like that|that way|to (?:it|that|the print|the drawing|the plan)|so|that size|the same)(?: size)?\b",
    ),
    planned=(
        r"(?:build|make|knock out|bang out|crank out|whip up|start|start on|begin|cut|put together|fab|fab up|lay out|fabricate|get started on|get going on|tackle|fold up)\b(?! (?:it|that|them)(?:self)? (?:tight|off|flush|up))",
        r"do (?:the |number |piece |fitting )*(?:\S+ ){1,3}as (?:a|an)\b",
        r"(?:tape|staple|rub|close|seal|do|hang|finish)(?: up| down)? (?:the|this|that|our|all the|all of the)(?: (?:whole|entire|rest of the|rest of this))* (?:run|line|system|floor|job|building|lot|trunk|loop)\b",
    ),
    not_begun=frozenset(("built", "started", "begun", "made", "touched", "gotten", "cut")),
    unsaid=(("facing_damage", "wet", r"\b(?:(?:no|nope|nah)[,.]|wait,?|actually,?|sorry,?|correction,?) (?:it's |that's |it was |a |the |all )*(?:dry (?:board|sheet|stock|piece|panel|one|section)s?)\b|\b(?:used|grabbed|took|picked|made (?:it|this one|mine)(?: over)? (?:of|from|out of|with)|cut (?:it|mine|this one) (?:from|of|out of)|started(?: over| again)? (?:with|on)|went with|built (?:it )?(?:from|of|with|out of)) (?:a |the |some |another |one )?(?:fresh |new )?dry (?:board|sheet|stock|piece|panel|one|section)s?\b"), ("facing_damage", "wet", r"\b(?:no|nope|nah|wait|actually|sorry)\b.{0,24}\b(?:it was|it's|it is|was|board's|the board was) (?:all |bone |perfectly |just |still )?dry\b|\b(?:no|nope|nah|wait|actually|sorry)\W{1,3}(?:that's |it's |it was )?(?:the |just the )?(?:floor|deck|slab|ladder|cart|bench|plastic|ground|lift|table|tarp)(?:'s| is| was)\b|\bthe (?:board|facing|foil|panel)(?:'s| is| was) (?:all |bone |perfectly |just |still )?dry\b|\b(?:no|nope|nah|wait|actually|sorry)[,.;!]\W{0,2}(?:bone |perfectly )?dry (?:board|panel|facing)\b"),),
    too_late=r"\btaped\b[^.;,]*[, ]+(?:and )?(?:then|after that|afterwards?)(?: i| we)?\s*$",
    acts=(
        *ACTS_DONE,
        ("preheated", True, r"^(?:and |then |but |so |first )*(?:i|we) (?:(?:first |already |also )*(?:heat|heated|warm|warmed|preheat)(?: (?:up|first|before|good|well))*(?: (?:the |it |all |that )*(?:foil|facing|board|surface|joint|paper|piece)?)?(?:$| (?:with|first|before|good))|(?:first )?(?:make|made|put) (?:it |the \w+ )?(?:hot|warm)(?:$| (?:with|first|before|the)))"),
        ("preheated", True, r"(?:put|held|took|turned|ran|passed|had|used|worked|played|kept|aimed|blew) (?:the |my |an? |our )?(?:iron|heat ?gun|hot air gun|torch|(?:space |salamander )?heater|heat)(?: going)? (?:to|on|over|across|at|along) (?:it|them|the|both|all|my|that|this|each)(?: (?!no\b|not\b)\w+){0,3}? (?:first|before|ahead|for (?:a|an|ten|five|two|three|\d+|about|some|a few|a good)\b|until|till|then)|(?:put|held|took|turned|ran|passed) (?:the |my |a )?gun (?:to|on|over|across|along) (?:it|them|the (?:board|facing|foil|panels?|faces?)|both \w+)(?: \w+){0,2}? (?:before|ahead of) (?:the )?(?:(?:p-?|pressure |foil )?tape|taping|181a-?p|i tape|i put the tape|putting the tape)"),
        ("preheated", True, r"(?<!nothing )(?<!not )(?<!never )(?<!nobody )(?:got|was|were|been) (?:pre-?heated|warmed|heated)(?: up)?(?: (?:by|with) (?:the|a|my) \w+(?: gun)?)?(?= (?:first|before|to|ahead|good|well|all|through|right|and)\b|$)"),
        ("preheated", True, r"(?:hit|went over|warmed|ran over|worked|touched) (?:it|them|the (?:joint|seam|facing|foil|board|edges?|corner|surface|whole thing)s?)(?: all| up| over| down)* with (?:the |my |an? )?(?:iron|heat gun|torch|heater)(?: \w+){0,3} (?:first|before)\b"),
        ("rubbed_down", True, rf"(?:ran|took|worked|pushed|dragged|pulled|laid|used|put|hit|went|leaned|bore|pressed|gave|smoothed|ironed|flattened|beat|pounded|stroked|bearing down|worn out)\b(?: \S+){{0,8}}? (?:the |my |a |our )?{_TOOL}(?: (?:over|on|down|across|along|to) {_WHERE}.*| hard| good|$)"),
        ("rubbed_down", True, rf"{_TOOL}(?:'s| has| is)? (?:been )?(?:over|down|across) (?:it|all|every|the whole|both|each).*"),
        ("scrim_shows", True, r"(?:can|could|i|you) see (?:every|all the|each|the|any) (?:\S+ )?(?:threads?|lines?|squares?|bits?|strands?|cross|weave|pattern)(?: of (?:the )?(?:scrim|weave|facing|pattern|glass))?(?: (?:through|in) .*)?"),
        ("stapled", True, rf"(?:ran|shot|put|drove|fired|punched|popped|laid|set|sank|threw|stuck|got) (?:the |my |some |in |plenty of )*(?:\S+ inch )?staples? {_OVER} {_WHERE}"),
        ("taped", True, rf"(?:ran|put|laid|stuck|rolled|pulled|wrapped|slapped|pressed|stretched|threw|used|got) (?:the |my |some |good |that |a strip of )*{_STUFF} {_OVER} {_WHERE}(?! (?:tear|hole|rip|gash|cut|spot|patch|puncture|slit|bench|table|truck|floor|cart|shelf|lift|roll|list|scissor|ladder))"),
        ("taped", True, rf"{_STUFF}(?:'s| is| went)?(?: on)? (?:all )?(?:the way )?(?:a)?round(?: it)?"),
        ("staple_clinch", "outward", r"(?:staples?|legs?|points?|prongs?|ones|they)\b(?!.* (?:should|ought|must|supposed|have to|has to|need to|needs to) (?:go|point|turn|be|look|face|open)).*\b(?:kick|flare|spread|point|turn|fold|bend|curl|splay|open|face|clinch|head|go|lay|lie|bent|roll)(?:e?s|ed|ing|ned)?(?: over| back| up| flat)? (?:to |to the |toward the |towards the |on the )?(?:outside|outwards?)"),
        ("staple_clinch", "inward", r"(?:staples?|legs?|prongs?|points?)(?: (?:all|just|just all|are|were|got|have|had|'ve|both|that|kind of))* (?:flare|flared|flaring|turned|bent|curled|folded|hooked|clinched|rolled|splayed) (?:over |back )?in(?! (?:to|the|place|good|fine|clean|nice|easy|tight|all|every|it|this|that|there|line|half|two)\b)"),
        ("staple_clinch", "inward", r"(?:legs?|prongs?|points)(?: all| just| both)* (?:went|go|goes|came|point|face|lay|lie|kick) (?:over |back )?in(?! (?:to|the|place|good|fine|clean|nice|easy|tight|it|this|that|there|line)\b)|clinch(?:ed|es)? (?:the |them |my |all |those |these |every one of the )*(?:staples |legs |ones )?in(?! (?:to|the|place|good|fine|clean|nice|easy|tight|it|this|that|there|line)\b)"),
        ("staple_clinch", "outward", r"staples?(?: (?:all|just|are|were))* (?:kick|flare|point|turn|fold|bend|curl|splay|bent)(?:e?s|ed|ing)?(?: over| back)? out(?! (?:to|at|of)\b)"),
        ("staple_clinch", "outward", r"(?<!to )(?:flar|flare|kick|spread|bend|bent|turn|fold|splay|throw|threw|curl|point)(?:e?s|e?d|ing)? (?:its|their|both|the|both its|all its|those)(?: two| both)? (?:staple )?legs? (?:over |back |wide )?(?:outwards?|out)(?! (?:to|of|at)\b)"),
        ("staple_clinch", "inward", r"(?<!to )(?:flar|flare|kick|bend|bent|turn|fold|tuck|roll|curl|hook|point)(?:e?s|e?d|ing)? (?:its|their|both|the|both its|all its|those)(?: two| both)? (?:staple )?legs? (?:over |back )?(?:inwards?|in|under)(?! (?:to|the|place)\b)"),
        ("staple_clinch", "inward", r"legs?(?: (?:all|just|are|were|got|have|had|both))* (?:turned|curled|folded|bent|tucked|rolled|hooked|doubled) (?:(?:over|back|in) )?under(?:neath)?(?= (?:instead|and|but|on|like|at|with)\b|$)"),
        ("staple_clinch", "outward", r"(?:staple )?legs? (?:kick|flare|spread|point|turn|fold|bend|curl|splay|open|bent|roll)(?:e?s|ed|ing)?(?: over| back)? out"),
        ("staple_clinch", "inward", r"(?:staples?|legs?|points?|prongs?|ones|they)\b(?!.* (?:should|ought|must|supposed|have to|has to|need to|needs to) (?:go|point|turn|be|look|face|open)).*\b(?:kick|flare|spread|point|turn|fold|bend|curl|splay|open|close|face|clinch|head|go|bent|roll)(?:e?s|ed|ing|ned)?(?: over| back| up| flat)? (?:to |to the |toward the |towards the |on the |the )?(?:inside|inwards?)"),
        ("staple_clinch", "inward", r"\bstaples?\b(?: (?:on|in|of) (?:\w+[ -]?){1,4}?)? (?:all|both|every one|every last one) (?:turned|curled|folded|bent|clinched|pointing) in$|^(?:(?:and|but|so|with) )*(?:every|each)(?: last| single)* one(?: of them| of those)? (?:is |was |got |came out )?(?:turned|curled|folded|bent|clinched|pointing|points) in(?= because| since|$)|\blegs?\b.*\bgo(?:es)? straight in and (?:curl|fold|bend)s? (?:under|in)"),
        ("staple_clinch", "inward", r"(?:staples?|staple legs) (?:are |is )?(?:point|turn|bend|curl|fold|bent|clinch|hook)(?:s|ed|ing)? (?:over |back )?in$"),
        ("staple_clinch", "outward", r"(?:staples?|staple legs) (?:are |is )?(?:point|turn|bend|curl|fold|bent|clinch|hook)(?:s|ed|ing)? (?:over |back )?out$"),
        ("staple_clinch", "inward", r"(?:legs?|points?|prongs?|staples?|tips)(?: of (?:the|those|my) staples)?(?: (?:all|just|both|are|is|do|did|will|kind of|on me))* (?:bend|bent|fold|folded|cross|crossed|curl|curled|close|closed|turn|turned|hook|hooked|roll|rolled|tuck|tucked|clinch|clinched|come|came|go|went|point)(?:s|es|ed|ing)? (?:over |up |back |together |right )*(?:in (?:toward|towards|on|at) (?:each other|one another|themselves|this|that|it|me|these|everything)|inside|to the (?:inside|middle|center))(?! the (?:duct|box|truck|shop|building|joint|flap))"),
        ("staple_clinch", "inward", r"(?:stapler|staple gun|gun|anvil)(?: \w+){0,3} (?:clinch|fold|turn|curl|bend|roll)(?:e?s|ed|ing)? (?:(?:them|the legs|legs|everything|both) )?(?:back )?inwards?"),
        ("staple_clinch", "outward", r"outward(?:s|ly)? (?:clinch(?:ed|ing)?|flar(?:ed|ing)|bent|turned)|clinch(?:ed|es|ing)? outwards?"),
        ("surface_clean", False, r"(?:wiped?|wiping|dusted|cleaned)(?: (?:it|them|that|the (?:facing|foil|dust|joint|seam)|(?:straight|elbow|tee|cap|collar|branch|reducer|transition|offset|number|piece|section) [\w-]+))?(?: (?:down|off|up))* (?:(?:right |only |just )*(?:after(?! that\b)|once|when)) (?:the |my |it |it's |i |i'd |we |she |all of |was |is |already |had |got )*(?:tape|taping|taped)\b|tap(?:e|ed|ing)(?: it| that)?(?: (?:went|goes|came|was|is)(?: on)?)? (?:(?<!went tape )(?<!start with tape )(?:(?<!the tape )first(?=$|[.,;])|first(?=,? (?:and |then |and then )?(?:wip|dust|clean)))|before (?:wip|i wip|dust|clean)\w*)(?:,? (?:and |then |and then )?(?:wiped?|dusted|cleaned)(?: (?:it|down|off))*(?: (?:after(?:wards?)?|second|later|last))?)?"),
        ("taped", True, r"tape (?:goes|runs|went|ran|is) (?:all the way|clear|the whole way|clean|right) (?:a?round|over)(?: it)?(?: though| too)?$|^(?:the |my |that )?tape(?:'s| is| has)? (?:held|still holding|stayed put|stayed on|held up)(?: (?:fine|good|on|up|well|though|nice))*$"),
        ("taped", True, r"under (?:the |good |proper )*listed (?:foil )?tape|(?:was|were) (?:putting|laying|running|sticking) (?:the |my )?tape on\b|^(?:i |we )?went (?:with )?(?:the )?tape first$"),
        ("taped", True, r"tape (?:over|across|around|on) (?:the (?:lot|whole (?:lot|thing|works|joint|seam))|all of (?:it|them)|everything|it all|every (?:seam|joint|edge|corner))$"),
        ("taped", True, r"(?:the |my )?tape (?:covers|bridges|hides|spans|closes)(?: over)? ?(?:it|that|them|those|right over)?$"),
        ("rubbed_down", True, r"\ba (?:good|nice|hard|solid|thorough|proper|firm)(?:,? (?:hard|long|solid|firm))? rub(?:bing)?(?:[- ]?down)?\b(?! (?:when|once|later|tomorrow|if|before))"),
        ("facing_damage", "none", r"(?:none of (?:them|these|those|'em)|neither(?: one)?(?: of (?:them|these|those))?)(?: (?:with|has|have|had|got))+ (?:an?|one|so much as an?) (?:single )?(?:scratch|mark|nick|ding|dent|scuff|blemish|tear|rip|hole)(?: (?:on|in) (?:it|them|the foil|the facing))?"),
        ("facing_damage", "none", rf"(?:not an?|not one|no|isn't an?|ain't an?|without an?|nary an?|not even an?|wasn't an?)(?: single)? (?:scratch|mark|nick|ding|dent|scuff|blemish|wrinkle|pinhole|flaw|tear|rip)(?:es|s)? (?:on|in|to|anywhere on) (?:the |its |it's )?(?:{_SKIN}|it)"),
        ("surface_clean", True, rf"{_SKIN}(?:'s| is| was| are)?(?: on .{{2,24}})?(?: is| was| looks| looked)? (?:nice and |good and |bone |all |real |perfectly )?(?:clean|dry)(?: as .*| and dry| and clean|$)"),
        ("surface_clean", True, r"^(?:nice and |good and |all )?clean(?:,? and dry)?$"),
        ("panel_seated", True, r"panel\b.*\b(?:fell|dropped|went|slid|slipped|popped|snapped) (?:right |straight |clean |down |back )*in(?:to)? (?:the |its |that )?(?:new |fresh |re-?cut )?(?:shiplap|groove|rabbet|step)"),
    ),
    tags=frozenset(("tag", "mark", "number", "label", "sticker", "tagged", "marked", "labeled", "labelled", "stenciled", "numbered", "stamp", "num", "no.")),
    asked=(
        ("NUMBER", frozenset(("which one", "which one is it", "which one's this", "which piece", "which fitting", "what number", "what number is it", "what's the number", "which number", "which one is this"))),
        ("RUN", frozenset(("what run", "which run", "what run is it", "what's the run", "which run is it"))),
        ("SIZE_WORD", frozenset(("what size", "what size is it", "what's the size", "which size"))),
    ),
    pieces=frozenset(("pieces", "parts")),
    tells=frozenset(("is", "was", "says", "said", "reads", "read", "shows", "on it", "on", "it", "'s", "as", "being", "would be", "should be", "there", "here", "number", "its", "it's", "this one")),
    alone=(
        ("SAME_THING", frozenset(("same", "ditto"))),
        ("TAPED", frozenset(("tp", "tpd"))), ("RUBBED", frozenset(("rb", "rbd", "rubd"))), ("STAPLED", frozenset(("stp", "stpd", "stpl"))),
        ("K_STRAIGHT", frozenset(("str", "strt"))), ("K_ELBOW", frozenset(("elb", "ellb"))), ("K_TRANSITION", frozenset(("trans", "trn", "rdcr", "redcr"))), ("K_OFFSET", frozenset(("ofst", "offs"))),
    ),
    before_measure=(("LENGTH", frozenset(("l", "len", "lgth"))), ("STAPLED", frozenset(("st", "stp", "stpl"))), ("OVER", frozenset(("ov",))), ("WIDE", frozenset(("w", "wd", "wid"))), ("BOARD", frozenset(("bd", "brd"))), ("BRANCH_WORD", frozenset(("br",)))),
    in_twos=r"(?:twos|threes|fours|fives|sixes|[2-6]'?s)",
    turns={"nineties": 90, "90s": 90, "90's": 90, "ninetys": 90, "45s": 45, "45's": 45, "forty-fives": 45, "forty fives": 45, "forty fifths": 45},
    numbered=(("K_EQUIPMENT_CONNECTION", frozenset(("connection",))), ("K_DAMPER_SLEEVE", frozenset(("sleeve",)))),
    first=(("K_COLLAR", frozenset(("drop", "drops"))), ("K_OFFSET", frozenset(("off", "ofs", "offs"))), ("K_STRAIGHT", frozenset(("str", "st", "strt", "strs"))), ("K_ELBOW", frozenset(("el", "elb", "elbs"))), ("K_BRANCH", frozenset(("br",))), ("K_HANGER", frozenset(("hgr", "hngr", "hgrs"))), ("K_TRANSITION", frozenset(("trans", "red", "trn", "tr"))), ("K_END_CAP", frozenset(("cp", "ec"))), ("K_COLLAR", frozenset(("clr", "coll")))),
)
