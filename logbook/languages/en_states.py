"""English words for how a thing was left: metal tabs, vanes, damage, panels, what hangs on a duct, stiffening, insulation at a cut."""

from __future__ import annotations

from fractions import Fraction

from logbook.languages.language import Ends, State

_NOT = r"(?:(?:did|do|does|has|have|had|is|are|was|were|would|wo|could|ca|ai)n't|didnt|dont|doesnt|wont|wouldnt|couldnt|cant|isnt|aren't|can't|won't|not|never|couldn't|refuses? to|refused to|fail(?:s|ed) to)"
_NOT_DO = r"(?:(?:did|do|does|would|wo|could|ca)n't|didnt|dont|wont|couldnt|cant|can't|won't|never|couldn't)"
_SOFT = r"(?: (?:even|really|quite|just|ever|yet|get|got|gotten|getting|to|all|be|been|the|it|them|that|a|any|around|want|wanna|me|no))*"
_AWAY = r"(?:in|on|at|under|back (?:in|at|on)|over (?:in|at)|out (?:in|on)|down (?:in|at)) (?:the |my |a |his |our |their |somebody's )?(?:\w+ )?(?:truck|trucks|van|box|boxes|shop|gang ?box|job box|trailer|office|supply house|warehouse|yard|cart|pallet|crate|tailgate|connex|container|loading dock|floor|ground|bag)"
_LEFT = (
    r"(?:left|leaving|leave|leavin|let) (?:it|that|them|her|those|this)(?: (?:go|be|alone|torn|ripped|crushed|busted|split|hanging|hanging open|wide open|gaping|exposed|bare|ride|as is|as it is|as it was|how it is|like that|like it is|that way|for now|there|open|just|just like that|the way it is|the way it was))*$",
    r"(?:left|leaving) (?:it|that|them) (?:be|alone|as is|like that)",
)
_GLASS = r"(?:insulation|board|stuff|meat|glass|fiber ?glass|fibers?|fluff|fuzz|wool|batting|material)"
_WASTE = r"(?:waste|scrap|offcuts?|trimmings|leftovers)"
_EXTRA = r"(?:extra|excess|spare|loose|leftover|left over|ragged|fuzzy|surplus|raw|hanging|overhanging|unwanted)"
_STRUCTURE = r"(?:structure|deck|joists?|steel|beams?|slab|bar joists?|building|unistrut|strut|framing|purlins?|red iron|rafters?|trusses|truss|ceiling)"
_HOLDERS = r"(?:hangers?|straps?|supports?|rods?|brackets?|trapezes?|chains?|cables?)"
_STIFF = r"(?:tie[- ]?rods?|rods?|channels?|stiffeners?|stiffening|reinforcement|reinforcing|reinforcements?|bracing|braces)"
_CARRIES = r"(?:duct|ductwork|board|duct ?board|plenum|panel|section|fitting|box|side|straight|elbow|transition)"

ENGLISH_STATES: tuple[State, ...] = (
    # turning vanes
    State("vanes", False, (_AWAY, rf"(?:back ?ordered|on back ?order|on order|{_NOT_DO}{_SOFT} (?:come|came|show|showed|shown|arrive|arrived|ship|shipped|here|make it|made it|in stock|go in|gone in|went in)|no[- ]shows?)",
        r"(?:w/o|w/out|sans|less|minus|lacking|missing|lacks|hasn't any|(?:ran|run|running|fresh|was|were|am|are|'m) (?:clean |all )?out of|short on|no more|never (?:got|had|put|bought|brought|saw|received) (?:any|the|its|my)|couldn't (?:get|find) (?:any|the)|(?:did|do)n't have (?:any|the)) (?:\w+ )?(?:vanes?|vane rails?|blades)"), ("VANES",), ("elbow",), uses=True),
    State("vanes", False, (r"(?:haven't|hasn't|havent|hasnt|have not|has not)(?: \w+){0,2} (?:come|shown|arrived|shipped|gone in|showed)(?: in| up)?",), ("VANES",), ("elbow",), uses=True, pending=True),
    State("vanes", False, (r"vane-?less|un-?vaned|non-?vaned|vane-free", r"(?:plain|bare|empty|hollow|naked|open) (?:on the )?inside", r"(?:went in|goes in|is|it's|came out|built it|made it|left it|went up|went together) (?:bare|empty|hollow|naked)(?: inside)?(?! (?:of|on|board|foil|facing|flap|seam|where|along))",
        r"(?:nothing|not a thing|zip|nada)(?: at all)?(?: \w+)?(?: (?:in|inside)(?: of)?(?: it| there| the \w+)?)? (?:to|that|that'll|that will|for) (?:turns?|turning|guides?|guiding|steers?|steering|directs?|swings?)", r"(?:there's |there is |has |got |with )?nothing (?:at all )?(?:in the|inside the) (?:heel|cheeks?|turn|elbow|throat)"), (), ("elbow",)),
    # the panel that was freed
    State("panel_seated", False, (r"catch(?:es|ing)? on|caught on|hang(?:s|ing) up|hung up|binds?|binding|bows?|bowed|rocks?|rocking|teeters?|wobbles?|wobbly|cocked|crooked|proud|rides? (?:up|high)|sticks? (?:up|out)|stands? (?:\w+ ){0,3}?(?:proud|off|up|high)|pops? (?:back )?(?:up|out)|springs? (?:back|up|out)|too (?:wide|long|tight|big|fat|snug) (?:for|to)",
        rf"{_NOT}{_SOFT} (?:go|sit|drop|seat|seated|bed|bedded|settle|settled|lay|lie|fall|home|flush|flat|down|in all the way|fit|nest)(?: (?:home|in|down|flat|flush|right|all the way))*"), ("PANEL",)),
    State("panel_seated", False, (rf"(?:it |which |that )?{_NOT}{_SOFT} (?:bedded|seated|seat|sit down|sit flat|go home|drop home|drop in|settle)",), ("PANEL",), apart=True),
    State("panel_seated", True, (r"like it grew there|like it (?:belongs|belonged|was born)(?: there| in there)?|bedded(?: (?:down|in|good|nice))?|nest(?:s|ed)(?: in| down)?|(?:is |sits |sat |sitting |lies |lays |went |goes |dropped |drops |it's |that's )(?:in |down |right |all the way |dead |nice and )*(?:home|flush)|(?:down |right |back |snug |tight |home )*into (?:the |its |that )?(?:new |fresh |recut |re-cut )?(?:shiplap|groove|rabbet|step|seat|slot)",), ("PANEL",)),
    # damage left as it was
    State("damage_repaired", False, (*_LEFT, r"(?:left|stays|stayed|staying) (?:open|torn|wide open|unpatched|hanging|exposed|as is|as it is|that way|like that)$", r"(?:did|do|done|doing|about) (?:nothing|not a thing|squat|jack)(?: about| to| with| for| on)?(?: it| that)?|nothing(?:'s| was| is| got| has)?(?: been)? done(?: about| to| with| for| on)?(?: it| that)?",
        rf"{_NOT_DO}{_SOFT} (?:touch|touched|bother|bothered|fix|fixed|patch|patched|repair|repaired|mend|mended|deal|dealt|mess|messed|do anything|done anything|do a thing|cover|covered|plug|plugged|replace|replaced|address|addressed)(?: with)?(?: it| that| them)?",
        r"(?:the |that |my )?(?:other|second|last|third|rest|remaining|other two|long|short|big|small|little|bigger|smaller|longer|shorter|top|bottom|one)(?: (?:one|ones|two|tear|rip|hole|cut|of them))?(?:'s| is| are|'re| was| were| stays| stayed| got left)(?: (?:still|left|just|wide|all|there))* (?:open|torn|bare|exposed|showing|unrepaired|unfixed|not (?:fixed|patched|repaired|done|taped|covered)|untouched|as is|like it was|hanging open|gaping|ripped)(?: open)?",
        r"(?:patch|plug|fabric|mastic|repair|mend|piece of tape|tape on (?:it|the \w+))(?: (?:on|over|from) [\w ]{1,20}?)?(?: (?:has|had|have|just|all|already))* (?:peeled|came (?:off|loose|back off)|fell (?:off|out)|let go|lifted|failed|popped|blew (?:off|out)|didn't (?:hold|stick|take)|isn't (?:holding|sticking)|won't (?:hold|stick)|wouldn't (?:hold|stick))(?: (?:off|back|up|away|again|already|overnight))*",
        r"(?:is|are|'s) (?:back |wide )*(?:to being )?open again|(?:is|are|'s) back to (?:being )?open", r"un-?(?:repaired|patched|fixed|mended|treated|touched|sealed|covered)", r"(?:hung|sent|ran|used|put|shipped|installed|closed) it (?:up )?(?:anyway|like that|as is|regardless|just the same)|(?:as is|as-is|like that)$|liv(?:e|ing|ed) with it|kept (?:on )?going|walked (?:away|on)|looked the other way|will have to do",
        r"still (?:ripped|torn|busted|split|crushed|dented|punctured|gouged|caved in)", r"(?:no|without a|with no) (?:patch|repair|fix|mend|bandaid|band-aid)(?: on it| over it| yet| at all)?", r"nobody(?:'s| has)? (?:fixed|patched|touched|mended|repaired)"), ("DAMAGE",), apart=True),
    State("damage_repaired", False, (r"(?:haven't|hasn't|havent|hasnt|have not|has not)" + _SOFT + r" (?:touched|bothered|dealt|messed|done anything|done a thing|covered|plugged|replaced|addressed)(?: with)?(?: it| that| them)?",), ("DAMAGE",), apart=True, pending=True),
    State("damage_repaired", False, (r"(?:is |'s |are |it's )?(?:still|yet) (?:\w+ )?(?:there|showing|open|wide open|in it|visible|in the (?:facing|foil|board|skin))",), ("DAMAGE",)),
    State("damage_repaired", False, (r"^(?:but |and |yeah |yes |yep |well )*(?:(?:it's|it is|that's|they're) )?(?:still|yet) (?:right |in )?(?:there|showing|open|visible)(?: too| today| now)?$|^(?:(?:it's|it is|that's|they're) )?(?:there|open|showing) (?:still|yet)$",), ("DAMAGE",), apart=True),
    State("damage_repaired", False, (r"(?:hole|tear|rip|gash|split|slit|gouge|dent|puncture)s?(?:'s| is| are)? still (?:there|open|showing|in it|in there|like that)",), cues=("still",)),
    State("facing_damage", "puncture", (r"(?:boot|boots|foot|knee|elbow|hand|finger|ladder|fork|forks|forklift|screw|screwdriver|screw gun|drill|bit|knife|blade|pipe|conduit|strut|stud|rod|bolt|strap|nail|hammer|wrench|tool|pole|stick|corner of (?:the|a) \w+)(?: \w+){0,2}? (?:went|gone|poked|came|punched|pushed|stabbed|jabbed|drove|ran|broke|busted|got|slipped|tore)(?: (?:right|clean|straight|clear|all the way|its way))? (?:through|thru|into)",
        r"(?:poked|stabbed|jabbed|punched|put|drove|ran|shoved|stuck|jammed|kicked|rammed|pushed) (?:a|my|his|the|somebody's|their) (?:boot|foot|knee|elbow|hand|finger|thumb|ladder|fork|screwdriver|screw|drill|bit|knife|pipe|conduit|strut|stud|rod|bolt|nail|hammer|wrench|tool|pole|stick)(?: (?:right|clean|straight|clear))? (?:through|thru)"), (), cues=("through", "thru", "into")),
    State("facing_damage", "none", (r"(?:not|nary|ain't) (?:a|one|a single) (?:tear|rip|hole|nick|scratch|mark|puncture|ding)(?: or (?:a )?\w+)?(?: anywhere| on it| in it)?",), (), cues=("not a", "not one", "nary", "ain't")),
    # a joint nothing goes into
    State("gap", Fraction(0), (r"(?:can't|cannot|couldn't|can not|cant|couldnt) (?:even )?(?:get|slide|fit|slip|stick|push|poke|put|see)(?: so much as)? (?:a|my|your|any|the) (?:\w+ )?(?:card|dime|nickel|penny|paper|knife|blade|razor|fingernail|thumbnail|light|daylight)(?: \w+)? (?:in|into|through|between|inside)(?: (?:it|there|that|the (?:joint|seam|corner|lap)))?", r"no (?:light|daylight|opening|crack|space|slack)s? (?:at|in|through|between|coming through|showing at|showing in|showing through)(?: any of)? (?:the|any|my|either) (?:joint|seam|lap|corner|end)s?", r"no (?:opening|light|space|room|crack|gap)s? (?:at all )?(?:anywhere|to speak of|whatsoever)(?: (?:at|in|around|on) the (?:joint|seam|lap|corner)s?)?"), cues=("card", "dime", "nickel", "penny", "paper", "knife", "blade", "razor", "nail", "light", "no ")),
    # what hangs on a duct
    State("accessory_supported", False, (rf"un-?supported|un-?hung|{_NOT}{_SOFT} (?:support|supported|hang|hung|strap|strapped|rod|rodded|brace|braced|hold up)(?! (?:it |that )?(?:on|off|from) (?:the |my )?(?:board|duct))(?: \w+)?(?: up)?(?: on its own| separately| independently| by itself)?",
        rf"(?:no|without(?: a| any)?|w/o(?: a| any)?|nothing but|minus)(?: \w+)? {_HOLDERS}(?: (?:of (?:its|their) own|on it|for it|under it|at all|yet))*", rf"(?:needs?|wants?|waiting (?:on|for)|lacks|missing) (?:its|their|a|some|the) (?:own )?{_HOLDERS}",
        rf"(?:carried|held(?: up)?|supported|holding|hanging|hung|riding|rides|sits|sitting|hangs|resting|rests|bolted|mounted|screwed|setting|perched|bears|bearing|weight(?:'s| is)?)(?: right| straight| just| only| up| down| all| in| solely| nothing)* (?:by|from|on|off|off of|from|to|with)(?: nothing)?(?: but| only| just)? (?:the |this |my |our )?(?:duct ?)?{_CARRIES}\b",
        rf"{_CARRIES}(?:'s| is| has| does)? (?:the only thing |all that's |all |what's )?(?:holding|carrying|supporting|taking|holds|carries|takes|bearing|doing)(?: (?:it|the|all|that|up|up all|all of))*(?: (?:weight|load|holding|work))?", r"nothing(?:'s| is)?(?: \w+)? (?:holding|supporting|under|carrying|above)(?: it)?"), ("ACCESSORY", "LB", "WEIGHS"), apart=True, kinds=()),
    State("accessory_supported", False, (r"(?:hanging|riding|sitting|resting|hangs|rides|sits)(?: right| straight)? (?:off|on|from)(?: of)? (?:it|this one|this)(?: alone)?$",), ("ACCESSORY",)),
    State("accessory_supported", False, (rf"(?:let|letting|lets|left|leaving|having|made|making|makes) (?:the |my |this )?{_CARRIES} (?:to )?(?:carry|carrying|hold|holding|take|taking|support|supporting|handle|do)\b",), ("ACCESSORY", "LB", "WEIGHS"), apart=True),
    State("accessory_supported", True, (rf"(?:rodded|strapped|hung|supported|braced|trapezed|chained|hangs|tied off|suspended)(?: (?:it|up|off|back|right|separately|straight|solid))* (?:to|from|off|off of|up to|on|with|by) (?:the |its |a |two |four )?(?:own )?(?:{_STRUCTURE}|{_HOLDERS})\b", rf"(?:has|got|with|on|gave it|put it on|hung on|hangs on) (?:its|their) own {_HOLDERS}"), ("ACCESSORY", "LB", "WEIGHS"), apart=True),
    # stiffening
    State("reinforced", False, (r"un-?(?:reinforced|braced|stiffened)|nothing(?:'s| is| was)?(?: \w+)? (?:stiffening|bracing|reinforcing)(?: it)?",), cues=("inforc", "brac", "stiff", "rod", "channel")),
    State("reinforced", False, (rf"(?:forgot|forgotten|skipped|left out|left off|missing|never put(?: in)?|{_NOT}{_SOFT} (?:put|install|add|fit|run|use|have|need)|no|without|w/o|ran out of|out of|minus)(?: \w+){{0,2}}? {_STIFF}",
        rf"{_STIFF}(?: (?:for|on|in) \w+(?: \w+)?)?(?:'s)?(?: \w+){{0,2}}? (?:left out|left off|skipped|missing|forgotten|{_NOT}{_SOFT} (?:go in|went in|in|put in|come|came|there|installed|on|fitted)|{_AWAY}|on order|back ?ordered)"), ("TIE_RODS",), uses=True, cues=("inforc", "brac", "stiff", "rod", "channel")),
    # extra insulation at a cut
    State("trimmed", False, (rf"(?:left|leaving|there's|there is|there was|still has|still have|still got|still|it's got|has got|got|has|all) (?:\w+ ){{0,3}}?{_EXTRA}(?: \w+)? {_GLASS}(?!(?:'s| is| was)?(?: all)? (?:off|trimmed|cut|shaved|gone|out|sliced|removed|came off|pulled))(?! (?:in|on|at) the (?:truck|shop|floor|van|bench|trash|dumpster|box))(?:(?:'s| is| was)? (?:hanging|sticking|bunched|poking|balled|wadded|dangling|piled))?", rf"{_NOT}{_SOFT} (?:trim|trimmed|shave|shaved|slice|sliced|cut|pare|pared|clean|cleaned|scrape|scraped|peel|peeled|pull|pulled|take|took|remove|removed|touch)(?: \w+){{0,3}}? (?:{_EXTRA} )?{_GLASS}",
        rf"{_GLASS}(?:'s| is| was| at the cut| in the cut)* (?:still )?(?:hanging|sticking|bunched|poking|balled|wadded|puffing|puffed|in the way|left|in there|overhanging|untrimmed|dangling|bulging|piled)", r"un-?trimmed"), ("K_TRANSITION", "SLOPE", "TRIM", "TRIMMED"), apart=True, cues=("insulation", "glass", "fib", "fluff", "fuzz", "wool", "batting", "material", "stuff", "meat", "board", "waste", "scrap", "offcut", "trim", "leftover")),
    State("trimmed", False, (rf"(?:left|leaving|there's|there is|there was|still has|still have|still got|still) (?:\w+ ){{0,3}}?{_EXTRA}(?: \w+)? {_GLASS}(?!(?:'s| is| was)?(?: all)? (?:off|trimmed|cut|shaved|gone|out|sliced|removed|came off|pulled))(?! (?:in|on|at) the (?:truck|shop|floor|van|bench|trash|dumpster|box))(?:(?:'s| is| was)? (?:hanging|sticking|bunched|poking|balled|wadded|dangling|piled))?", rf"{_GLASS}(?:'s| is| was| at the cut| in the cut)* (?:still )?(?:hanging|bunched|balled|wadded|overhanging|untrimmed|dangling|piled)"), cues=("insulation", "glass", "fib", "fluff", "fuzz", "wool", "batting", "material", "stuff", "meat", "board", "waste", "scrap", "offcut", "trim", "leftover")),
    State("trimmed", False, (rf"{_WASTE}(?: (?:at|in|behind|on|from) the (?:cut|slope|taper|groove))?(?:'s| is| was| are)? (?:still )?(?:in there|there|hanging|left|in it|on it|inside|in the way)", r"no trim(?:ming)? (?:done|at|on|on it|work)|without trimming|(?:skipped|forgot) the trim(?:ming)?|(?:skipped|forgot) to trim(?: it)?"), cues=("insulation", "glass", "fib", "fluff", "fuzz", "wool", "batting", "material", "stuff", "meat", "board", "waste", "scrap", "offcut", "trim", "leftover")),
    State("trimmed", True, (rf"(?:sliced|shaved|cut|trimmed|peeled|pared|cleaned|scraped|pulled|took|knocked|whacked|lopped|carved|skived|removed|got rid of|plucked|ripped|buzzed|nipped|got)(?: (?:off|out|away|back|down|up|all|of))*(?: (?:the|that|my|any|of))* {_EXTRA}(?: \w+)? {_GLASS}(?: (?:off|out|away|back|down))?", rf"{_EXTRA}(?: \w+)? {_GLASS}(?:'s| is| was)? (?:all )?(?:gone|off|out|trimmed|cut|shaved|sliced|removed|cleaned)(?: (?:off|out|away|back|up))?"), cues=("insulation", "glass", "fib", "fluff", "fuzz", "wool", "batting", "material", "stuff", "meat", "board", "waste", "scrap", "offcut", "trim", "leftover")),
)

ENGLISH_ENDS = Ends(
    layout=r"(?:laid|lay(?:ed|ing)? ?out|layout|measured?|measuring|measurements?|marks?|marked|marking|lines?|struck|strike|scribed?|snapped|start(?:ed|ing)?|pulled|hooked|worked|working|referenced?|dimensions?|dimensioned|datum|squared|figured|built|made|rule|ruler|my tape|tape measure|zero(?:ed)?|burned)",
    leads=r"(?:from|off|of|at|on|to|by|was|is|it's|=|with|:|,|end)(?: (?:the|my|its|that|this|wrong|other))*$",
    from_there=r"(?:where|what|which|that's|it's).* (?:from|off|off of)$|(?:from|off|off of) (?:there|it|that)$|(?:used|using|took) (?:it|that)(?: instead)?$",
    enters=r"(?:enters?|entering|com(?:es|ing) in|goes in|going in|in by|catches|catching|caught|receives?|receiving|takes the air|inlet|intake|upstream|hits|blow(?:s|ing)? in(?:to)?|faces the (?:fan|unit|air)|gets the air|toward the (?:fan|unit)|in)",
    leaves=r"(?:leav(?:es|ing)|exits?|exiting|out|discharg(?:e|es|ing)|downstream|lets? (?:it|the air) (?:out|go)|dumps?|dumping|outlet|outgoing|away)",
    air=r"(?:air|airflow|flow|flows|flowing|wind|discharge|discharges|downstream|upstream|outlet|inlet|intake|exhausts?|blow(?:s|ing)?|enters?|exits?)",
    acts=r"(?:compressor|air (?:gun|hose|hammer|stapler|nailer|tools?|line|chisel)|tap(?:e|ed|ing)(?<!my tape)|stapl\w+|rubb\w+|trimm\w+|hung|hang\w*|mastic)",
)

_LINE = r"(?:line|system|main|trunk|riser|loop|run|duct|unit|fan|air handler|supply|return|exhaust|leg|side|branch|whole thing)"
_RUNS = r"(?:running|run|runs|operating|operates|rated|good|set|designed|pulling|pulls|pushing|pushes|seeing|sees|carrying|carries|holding|holds|making|makes|sitting|sits|up)"
_ABOUT = r"(?:(?:at|for|to|around|about|only|just|close|up|a|an|like)\b ?)*"
LINE_RUNS_AT = (
    rf"\b{_LINE}(?:'s| is| was|'ll be)?(?: there| here)? (?:{_RUNS} {_ABOUT}|(?:at|up to|around) {_ABOUT})$"
    rf"|\b(?:we're|we are|it's|it is|she's|they're|they) {_RUNS} (?:it )?{_ABOUT}$"
)
LINE_IS = r"-? (?:static )?(?:system|pressure class|class)\b"
LINE_CUE = rf"\b{_LINE}\b|\bclass\b|\b(?:running|seeing|pulling|pushing|carrying|rated|designed|runs)\b"
