"""English sentences whose deed is another's: people by their trade, their name, their firm or where they come from; and what he only looked on at, was shown or tried on a scrap."""

from __future__ import annotations

from logbook.languages.elsewhere import CLAUSE, ON, SENTENCE, Aside

KINDS = r"(?:straights?|elbows?|nineties|ninety|tees?|(?:end )?caps?|collars?|transitions?|offsets?|branch(?:es)?|wyes?|plenums?|boots?|reducers?|pieces?|fittings?|sections?|runs?|hangers?)"
COUNTS = r"(?:a|an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|twenty|thirty|forty|fifty|sixty|hundred|\d+|couple|couple of|dozen|few|half a dozen)"
_PARTS = (
    r"(?:staples?|tape|tapes|vanes?|tabs?|seams?|joints?|flaps?|facing|foil|scrim|weave|board|panels?|screws?|washers?|straps?|duct|ductwork|line|trunk|riser|main|ones?|things?|stuff|all|everything|nothing|none|half|most|rest|whole|corners?|edges?|sides?|ends?|top|bottom|left|right|back|front|heel"
    r"|throat|cheeks?|lip|step|groove|shiplap|butt|cuts?|slope|sizes?|inlet|outlet|gaps?|tears?|holes?|damage|patch|repair|mastic|fabric|cloth|insulation|gun|stapler|knife|saw|blade|tools?|machine|squeegee|iron|wind|rain|cold|heat|sun|rolls?|box|batch|lot|job|work|length|bevel|notch|number|mark|tag)"
)
_SMALL = (
    r"(?:i|i'm|i've|i'd|i'll|we|we've|we're|we'd|we'll|it|its|it's|this|these|my|our|mine|ours|you|your|me|us|him|her|them|they|he|she|said|says|say|told|tells|asked|asks|wants|wanted|just|also|then|now|not|never|no|got|gets|have|has|had|is|are|was|were|be|been|being|will|would|can|could|should|might|do|does|did|done|stapled|taped|rubbed|hung|built|made|put|used|forgot|finished|closed|ran"
    r"|which|who|what|when|where|why|how|if|in|on|at|by|for|with|of|to|from|and|or|but|so|because|since|after|before|until|till|while|only|really|very|too|still|already|yet|finally|all|once|twice|same|every|each|any|some|way|time|day|bit|inch|inches|foot|feet|far|near)"
)
_STRANGER = rf"(?!(?:{_SMALL}|{_PARTS}|{KINDS})\b)[a-z][\w'&-]*"
_DET = r"(?:the|some|an?|one of (?:the|those|them)|two of (?:the|those)|three of (?:the|those)|couple of the|a couple of(?: the)?|both(?: of)?(?: the| those)?|those|them|that|another|his|her|their|somebody's|someone's)"
_DEED = r"(?:hung|stapled|taped|rubbed|built|made|did|put(?: up| in| on)?|left|used|forgot|finished|closed(?: up| off)?|cut|ran|fabbed|started|slapped(?: up| on)?|threw(?: up| on)?|skipped|missed|installed|laid|sealed|wrapped|mounted|strapped|screwed|patched|shot|hooked up|knocked out|banged out|butchered|screwed up|messed up|whipped up|makes?|staples?|tapes?|rubs|hangs|builds?|puts?|leaves?|uses?)"
_HOW = r"(?:went and |went ahead and |just |only |already |still |always |never |even |all |once |also |actually |must have |must've )*"
_PIECES = rf"(?:(?:the|a|an|another|all the|every|those|them|some|more|most of the|half the|{COUNTS}|couple|few|of|whole|entire|new|old|big|little|long|short|square|round|other|next|last) )*(?:{KINDS}|number)\b"
_WHAT = rf"(?:{_PIECES}|(?:the|a|an|his|her|their|theirs|everything|everybody|all of|half of|half the|most of|nothing|anything|duct tape|gray tape|grey tape|cloth|masking|two inch|twenty feet|another)\b(?! (?:(?:\w+ )?(?:holes?|tears?|rips?|gash|dents?|gaps?|nicks?|punctures?|slits?|cuts?|mark|boot|foot|knee)\b|(?:inside|outside|edges?) of it)))"
_HAVING = rf"(?:had|has|have|'s got|'ve got|needs?|needed|wants?|wanted) {_PIECES}(?! (?:number )?(?:\d|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|\w+ty)\b))"
_FROM = r"(?:(?:from|at|on|in|over|out of|up|down|off|named|called|next door|upstairs|downstairs|across|before|after|ahead of|behind|they call|that|who|with) (?:(?!(?:i|we|me|us|it|this|" + _DEED + r")\b)[\w'-]+ ){0,5}?)?"
_FIRM = r"(?:mechanical|sheet metal|sheetmetal|heating|hvac|brothers|bros|sons|contracting|contractors|construction|incorporated|crews?|guys|boys|gang|outfit|bunch|shift|fellas|twins|cousins|temps|old timers|old-timers|union hall)"
_HE = rf"(?:(?:big|little|old|young|crazy|fat|slim|tall|uncle|mister|mr|that|this|some) )?(?:{{name}})(?:'s (?!(?:{_PARTS}|{KINDS})\b)[\w'-]+)?"
_WITH = rf"(?:(?:and|&) (?:(?:his|her|the|a|that) )?(?:{_STRANGER} ){{1,2}})?"
_THEY = (
    rf"(?:{_DET} (?:{_STRANGER} ){{1,3}}{_WITH}{_FROM}|{_HE} {_WITH}{_FROM}|(?:[a-z][\w']* ){{1,2}}{_FIRM} {_FROM}|{{who}} {_FROM}|(?:the )?other (?:two|three|one|guy|guys|half|fella|crew) {_FROM}"
    r"|whoever (?:was|had|did|came|worked|built) (?:[\w'-]+ ){0,5}?|(?:my|our) (?:(?:[a-z]+ )?[a-z]+ (?:he|she|they)|brother-in-law|brother in law|old (?:boss|foreman|partner|crew|lead)|first (?:boss|foreman|partner|lead)|cousins?|uncle|nephew|neighbors?) )"
)

OTHER_HANDS = (
    # somebody did it, to something that is not the piece spoken of
    Aside(
        frozenset("hung stapled taped rubbed built made did put left used forgot finished closed cut ran fabbed started slapped threw skipped missed installed laid sealed wrapped mounted strapped screwed patched shot hooked knocked banged butchered messed whipped make makes staple staples tape tapes rubs hangs build builds puts leave leaves use uses".split()),
        rf"{_THEY}{_HOW}{_DEED} {_WHAT}",
        SENTENCE,
    ),
    # somebody worked a hanger loose, and has it to put back
    Aside(
        frozenset("knocked bumped pulled ripped tore kicked hit bent yanked snagged shook took moved unhooked cut".split()),
        rf"{_THEY}{_HOW}(?:knocked|bumped|pulled|ripped|tore|kicked|hit|bent|yanked|snagged|shook|took|moved|unhooked|cut)(?: (?:down|off|out|loose|into))?(?: (?:a|an|the|one|one of|two|two of|some|some of|couple|of|my|our))+ (?:\w+ )?(?:hangers?|straps?|rods?)\b(?! (?:on|at|by|under|over|from|of|holding) (?:{KINDS}|number)\b)",
        SENTENCE,
    ),
    Aside(frozenset("had has have got need needs needed want wants wanted".split()), rf"{_THEY}{_HOW}{_HAVING}", SENTENCE),
    Aside(
        frozenset("taping stapling rubbing hanging building making closing cutting putting running doing finishing".split()),
        rf"{_THEY}(?:is|are|was|were|'s|'re|has been|have been|keeps?|kept) (?:still |just |busy |out there |over there |up there |already )*(?:taping|stapling|rubbing|hanging|building|making|closing|cutting|putting|running|doing|finishing) (?:up )?{_WHAT}",
        SENTENCE,
    ),
    # a piece that is somebody's by his name: "Joey's straight had a gap"
    Aside(
        frozenset("had has have got is was were didn't doesn't isn't wasn't hasn't never looks leaks came went needs leaked looked".split()),
        rf"(?!(?:it|that|this|there|here|what|who|one|today|yesterday|tomorrow|tonight|let|he|she|where|how|when|everything|nothing|board|tape|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|morning|afternoon|week|{_PARTS}|{KINDS})'s)(?:that |this )?[a-z]+'s (?:last |other |first |big |old |whole )*(?:{KINDS}|one|ones|stuff|work|side|joints?|seams?|tape)(?: (?:number )?\w+(?:-\w+)?)? (?:had|has|have|got|is|was|were|didn't|doesn't|isn't|wasn't|hasn't|never|looks|leaks|came|went|needs|leaked|looked|all)\b",
        SENTENCE,
    ),
    # what people do all day: "the fire marshal walked through at eleven", "my kid turned six"
    Aside(
        frozenset("walked came stopped showed left went called arrived swung dropped drove quit ate comes coming goes laughed slept sat retired lives moved turned turns graduated married".split()),
        rf"(?!.*\b{KINDS} (?:number )?(?:\d|{COUNTS}\b|\w+teen\b|\w+ty\b))(?:{_THEY}|(?:my|our) (?:kid|kids|wife|husband|son|daughter|boy|girl|mom|dad|mother|father|grandson|dog|girlfriend|boyfriend)s? ){_HOW}(?:walked (?:by|through|in|up|out|around|off|past|over)|came (?:by|through|in|over|up|around)|stopped (?:by|in)|showed up|left(?: (?:at|early|for|around|before|by|after|on|already|us|me))|went (?:home|to|by|off)|called|arrived|swung by|dropped (?:by|in)|drove|quit|ate|is coming|comes (?:by|in|at)|laughed|slept|sat|retired|lives|moved|turned|turns|graduated|got married)\b",
        CLAUSE,
    ),
    Aside(frozenset("their his her".split()), rf"(?:their|his|her) (?:[\w'-]+ ){{0,2}}?{KINDS}\b(?! (?:gun|knife|stapler))", SENTENCE),
    # "his staples are a mile apart": of what another built
    Aside(frozenset("his her".split()), r"(?:all )?(?:his|her) (?:[\w'-]+ )?(?:staples|staple job|tape job|tape|vanes|tabs|seams|joints|screws|hangers|flaps?)(?:'s| (?:is|are|was|were|look|looks|had|have|came|went|wander|stop|run))\b", CLAUSE),
    # somebody asked how it is to be done
    Aside(
        frozenset("asked asks wondered wonders wanted wants".split()),
        r"(?:somebody|someone|they|he|she|{who}|{name}|(?:the|my|our|one of the|some|an?) [\w'-]+(?: [\w'-]+)?) (?:just |always |keeps |kept )?(?:asked|asks|wondered|wonders|(?:wanted|wants) to know)(?: me| us| him| the \w+)? (?:if|whether|why|how come|when|where) (?:we|you|i|they|he) (?:could|can|can't|should|have to|had to|need(?:ed)?(?: to)?|ought to|may|might|would|get to|always|use|do|don't|never|bother|put|go)\b",
        SENTENCE,
        "question",
    ),
    # he looked on, was shown, was taught
    Aside(
        frozenset("watch watched watching observed observing shadowed shadowing".split()),
        r"(?:(?:i|we|they|he|she|boss|so|then|just|only|mostly|today|sat|stood|there|and|let|made|had|got|have|'m|am|was|were|me|us|to|all|day|morning) )*(?:watch|watched|watching|observed|observing|shadowed|shadowing) (?:(?:and|while|as|how) )?(?:them|him|her|they|he|she|somebody|someone|others|people|the (?!tape|staples|board|joint|seam|gap|facing|foil)\w+|my \w+|how|a \w+|{name})\b",
        SENTENCE,
    ),
    Aside(
        frozenset("learned learnt learning practiced practised practicing practise practice taught shown studied training class lesson demo showed shows instructor trainer teacher".split()),
        r"(?:(?:i|we|today|they|he|she|then|so|all|mostly|just|this morning|{name}|the \w+|my \w+) )*(?:i'm |we're |am |are |was |were |been |got |being |only |still )*(?:(?:learned|learnt|learning|practiced|practised|practicing|studied|taught|shown)(?: (?:me|us|him|her))?(?: about| on)? (?:how|to|what|where|why|the|on|with|putting|stapling|taping|cutting|hanging|building|rubbing)\b|showed (?:me|us) (?:how|what|where|the way)\b)",
        SENTENCE,
    ),
    Aside(
        frozenset("class school training instructor trainer teacher workshop".split()),
        r"(?:(?:today|yesterday|this morning|back|over|and|then) )*(?:in|at|during) (?:the |our |my )?(?:class|school|training|night school|trade school|workshop|the apprenticeship)\b(?! (?:room|rooms|gym|hall|building|job|wing|office|lobby|kitchen))|(?:the|our|my|an?) (?:instructor|trainer|teacher)(?: \w+)? (?:had|made|let|has|makes|lets|wanted|showed|told|got)\b|(?:we|i|they) (?:had|got|gave us|have|sat through|did) (?:a |an |some |the |our |hours? of |another )*(?:class|training|lesson|demo|demonstration|toolbox talk|refresher)\b(?: on| in| about| for)?",
        SENTENCE,
    ),
    # tried on a scrap
    Aside(
        frozenset("scrap scraps offcut practice practiced tried".split()),
        r"(?:(?:i|we|he|they|just|then|so) )*(?:practiced|practised|tried(?: it| that| one)?(?: out)?|played around|messed around|tested(?: it)?|experimented)(?: \w+)? (?:on|with) (?:a |an |some |the )?(?:scraps?|offcuts?|old|junk|spare|bad|throwaway|leftover)\b|(?:on|with|used|grabbed|took) (?:a |an |some |the )?(?:scraps?|offcuts?|junk)(?: \w+)? (?:of board |to |we|i|he|they|for)\b",
        ON,
    ),
)
