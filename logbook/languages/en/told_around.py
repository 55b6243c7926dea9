"""English that tells an act around its words: what lies behind or ahead of a man, what he owns up to forgetting, what it would be a lie to say. Patterns over sketches of sentences."""

from __future__ import annotations

from logbook.languages.en.filth import FILTHS
from logbook.languages.told import Aside

_OF_IT = r"(?: (?:down|up|in|on|it|of (?:it|this one|that one|#(?: [\w-]*\d[\w-]*)?|[\w-]*\d[\w-]*)|(?:on|for) (?:it|this one|that one|#)))*"
_STILL = r"(?: (?:all|still|yet|just|now|well|long|both|left|already|only|lies|lie|lying|sits|sitting|is|are|lays|ahead|right))*"
_ME = r"(?:me|us|my)"
_AHEAD = rf"(?:(?:ahead|in front) of {_ME}|before {_ME}|what ?'s ahead(?: of {_ME})?|lies ahead|lie ahead|is ahead|are ahead|to come yet)"
_BEHIND = rf"(?:behind {_ME}|out of the way|over and done with|history)"
_ENDS = r"(?= [.,;]|$| (?:and|but|so|now|yet|too|while|still)(?![\w']))"
_WORK = r"(?:the |my |its |that |any |a |all the )*(?:<[ndb]>|rub(?:down|bing)?)"
_FORGETS = r"(?:forgetting|skipping|leaving (?:off|out)|missing|omitting|neglecting|overlooking|skimping on|passing over|not (?:doing|getting to|putting on|putting in|remembering))"
_OWNED = r"(?:own(?:ed|ing)? up to|admit(?:ted|ting)?(?: to)?|confess(?:ed|ing)?(?: to)?|guilty of|sorry (?:for|about)|apologi[sz]e for|to blame for|my (?:fault|mistake|bad|doing|sin|error|crime)(?: (?:was|is|'s|for|in))?|(?:that|it|so) (?:was|'s) (?:me|mine)?|(?:was|is|'s) (?:me|my)|regret|credit for|plead guilty to|answer for|the (?:only |one )?(?:thing|mistake|sin)(?: i made)? (?:was|is|'s)|so (?:was|is|'s)|except for|besides|other than|apart from|by|from|of)"
_LIE = r"(?:(?:i|we|it|that|you) ?(?:'d| would) be (?:a |an )?(?:lie|liar|lying|fibbing|wrong|untrue|false|kidding myself|stretching it|stretch|untruth|unfair|dishonest)(?: (?:for me|of me))?(?: (?:if (?:i|we|you)|to|for me to))?(?: (?:say|said|tell|told|claim|claimed|write|wrote|put down|call|called|saying|claiming|telling))?(?: (?:you|him|them|her|anybody|anyone))?(?: (?:that|it|so))?)"

_FIXED = r"(?:no|nope|wait|sorry|oops|hold on|hang on|hold it|(?:scratch|strike|change|fix|forget|correct|erase) (?:that|it|the (?:out|in|outward|inward))|correction|actually|i mean|make (?:that|it)|rather|i lie|my mistake|i take that back|take that back|i was wrong|wrong)"
_EITHER_WAY = r"(?:out|outward|outwards|outside|in|inward|inwards|inside)"
_THEY_TURN = r"(?:(?:(?:the|all|of) )*(?:legs?|they|it|those|mine|these|staples|<n>)(?: (?:all|really|actually|just))* ?(?:'re|are|is|'s|were)? ?(?:clinched|turned|folded|bent|curled|pointing|facing|turning|folding|fold|turn|bend|point|go|face|curl|clinch|went|came|ended up)?s? ?)?"

_CUES_AHEAD = ("ahead", "in front of", "before me", "before us", "lies ahead", "to come yet")

ENGLISH_TOLD_AROUND = (
    # --- behind him or ahead of him
    Aside(rf"(?P<x>(?:all|what|the only thing)(?: that| which)? ?(?:'s|is|i 've|i have|we have|i've)(?: (?:left|got|still|yet))* {_AHEAD}(?: on (?:it|#))?(?: now| still)* ?(?:is|'s|,|:) (?P<later>(?:just )?{_WORK.replace('(?:<[ndb]>', '(?:(?P<act><[ndb]>)')}{_OF_IT})){_ENDS}", _CUES_AHEAD, states=(("<act>", False),), names=True, unless="n't"),
    Aside(rf"(?P<x>(?P<later>{_WORK.replace('(?:<[ndb]>', '(?:(?P<act><[ndb]>)')}{_OF_IT} ?(?:'s|is|are|'re|,)?{_STILL} {_AHEAD})){_ENDS}", _CUES_AHEAD, states=(("<act>", False),), names=True, unless=r"n't|(?<![\w'])not(?![\w'])"),
    Aside(rf"(?P<x>(?P<later>(?:i|we) ?(?:'ve|have|got|'ve got|have got)(?: (?:still|yet|just|only|got))* {_WORK.replace('(?:<[ndb]>', '(?:(?P<act><[ndb]>)')}{_OF_IT}{_STILL} {_AHEAD})){_ENDS}", _CUES_AHEAD, states=(("<act>", False),), names=True, unless=r"n't|(?<![\w'])not(?![\w'])"),
    Aside(rf"(?P<act><[nd]>){_OF_IT}(?P<x> ?(?:'s|is|are|'re)(?: (?:all|well|now|long|safely|already|both))* {_BEHIND}){_ENDS}", ("behind me", "behind us", "out of the way", "over and done", "history"), states=(("<act>", True),), names=True, unless=r"n't|(?<![\w'])(?:not|almost|nearly|once|when|until|till)(?![\w'])"),
    Aside(rf"(?:i|we) ?(?:'ve|have|got|'ve got|have got)(?: (?:got|now|already))* (?:the )?(?P<act><[nd]>){_OF_IT}(?: and (?:the )?(?P<other><[nd]>){_OF_IT})?(?P<x> (?:all |both |now )*{_BEHIND}){_ENDS}", ("behind me", "behind us", "out of the way"), states=(("<act>", True), ("<other>", True)), names=True, unless=r"n't|(?<![\w'])not(?![\w'])"),
    Aside(rf"(?P<act><[nd]>){_OF_IT} ?(?:'s|is|are|'re)(?: (?:all|well|now|long|safely|already|both))* behind {_ME},? and so ?(?:'s|is|are)(?P<x>) (?:the |my )*(?P<other><[nd]>){_OF_IT}{_ENDS}", ("behind me", "behind us"), states=(("<other>", True),), names=True),
    # --- what he owns up to
    Aside(rf"(?:^|.*?[ ,;.])(?:{_OWNED}) (?:my |me |us |our )?(?P<x>{_FORGETS} (?:(?:to|the|any|my|all|its|that|doing|a|on|out|put|of) )*(?P<act><[ndb]>))(?! (?:measure|gun|roll))", ("forgetting", "skipping", "leaving o", "missing", "omitting", "neglecting", "overlooking", "skimping", "passing over", "not doing", "not getting", "not putting", "not remember"), states=(("<act>", False),), names=True, unless=r"instead of|without|rather than|(?<![\w'])(?:not|no|never|nobody|danger|afraid|risk|accused|accuses?|fear|keep|kept|him|his|he|they|their)(?![\w']) (?:\w+ ){0,2}(?:of |from |for )?(?:forg|skip|leav|miss|omit|neglect|overlook|pass)"),
    # --- what it would be a lie to say
    Aside(rf"(?P<x>{_LIE} (?:(?:#|it|the [^ ,.?;]+|i|we|[\w-]*\d[\w-]*)(?: [^ ,.?;<]+){{0,4}}? )?(?:was|were|is|'s|had|got) (?:all |perfectly |really |quite )*(?:free of|clear of|clean of|without(?: any)?) {FILTHS}[^.?,;<]*)", ("lie", "liar", "lying", "fibbing", "wrong", "untrue", "false", "kidding", "stretch", "untruth", "unfair", "dishonest"), states=(("surface_clean", False),), names=True, unless="n't"),
    Aside(rf"(?P<x>{_LIE} (?:there (?:was|were|is)|(?:#|it|the [^ ,.?;]+|i|we)(?: [^ ,.?;<]+){{0,3}}? (?:had|got|found|left|has|was|were)) (?:any |some |a (?:bit|speck|spot|lot|grain) of |still |all )*(?:{FILTHS}|dusty|dirty|greasy|oily)[^.?,;<]*)", ("lie", "liar", "lying", "fibbing", "wrong", "untrue", "false", "kidding", "stretch", "untruth", "unfair", "dishonest"), states=(("surface_clean", True),), names=True, unless=r"n't|free of|(?<![\w'])(?:no|not|without)(?![\w'])"),
    Aside(rf"(?P<x>{_LIE} (?:(?:i|we) (?:just )?(?:forgot|skipped|missed|left off|left out|never did|omitted)(?: (?:the|any|to|on|about|my|its))* (?P<act><[ndb]>)))", ("lie", "liar", "lying", "fibbing", "wrong", "untrue", "false", "unfair", "dishonest"), states=(("<act>", True),), names=True),
    Aside(rf"(?P<x>{_LIE} (?:(?:i|we|#|it|this one|that one|she|they|the [^ ,.?;<]+|[\w-]*\d[\w-]*)(?: [\w-]*\d[\w-]*)? ?(?:'d|'s|is|was|are|were|got|has been|had|had been|has|have)? ?(?:(?:all|fully|really|ever|been|even|properly) )*)(?P<act><d>)(?: (?:down|up|it|them|over))*)", ("lie", "liar", "lying", "fibbing", "wrong", "untrue", "false", "kidding", "stretch", "untruth", "unfair", "dishonest"), states=(("<act>", False),), names=True, unless="n't|(?<![\\w'])(?:not|never)(?![\\w'])"),
    Aside(r"(?P<x>(?:i|we) (?:won't|wouldn't|can't|cannot|am not going to|'m not going to|ain't going to|don't) (?:say|tell you|claim|pretend)(?: that)? (?:i|we) (?:didn't|did not|never|haven't|hadn't) (?P<act><[bd]>)(?: (?:it|them|down|up))*)", ("won't say", "wouldn't say", "can't say", "cannot say", "won't tell", "can't tell", "won't claim", "can't claim", "going to say", "won't pretend", "don't say"), states=(("<act>", True),), names=True),
    # --- what is not to be thought of how he did it
    Aside(r"(?:don't|do not|never|nobody|you don't|don't anybody)(?: (?:you|ever|go|even))* (?P<x>(?:think|thinking|believe|say|tell \w+|imagine|assume)(?: that)? (?:i|we) (?:just )?<d>(?: (?:it|#|them|that one|[\w-]*\d[\w-]*))* (?:cold|unwarmed|un-warmed|unheated|unwiped|dirty|dusty|wet|without (?:warming|heating|wiping|cleaning)(?: it)?(?: first)?))" + _ENDS, ("think", "believe", "say ", "tell ", "imagine", "assume"), names=True),
    # --- the harm that was mended is another's
    Aside(r"(?P<x>(?:and |but |so |though )*(?:that|it|this|which) ?(?:'s|is|was|isn't|ain't|wasn't)(?: not)? (?:the (?:same )?)(?:one|tear|hole|rip|dent|puncture|gash|slit|spot|damage|corner)(?: (?:that|which))? (?:i|we)(?: 've| have|'ve)? (?:already )?(?:<d>|plugged|fixed|mended|replaced|covered))(?= [.,;]|$| and| but)", ("the tear", "the hole", "the rip", "the dent", "the puncture", "the gash", "the slit", "the spot", "the one", "the same", "the damage", "the corner"), names=True, unless=r"^(?!.*(?:not|n't))"),
    # --- which way the legs go, set right
    *(
        Aside(
            rf"(?:legs?|clinch\w*|clinches|<n>|<d>|turned|folded|bent)(?: [^ .?;,]+){{0,5}}? ?(?P<x>{_EITHER_WAY} [.,;] (?:and |but |well |oh )*(?:{_FIXED}(?: [,.:;-])? )+{_THEY_TURN})(?P<n>{way})(?! (?:on|at|along|by|there|between|it)(?![\w']))(?![\w'-])",
            ("leg", "clinch", "stapl"),
            states=(("staple_clinch", value),),
            names=True,
            unless=r"(?<![\w'])(?:step|lip|tabs|flap|vanes|inch(?:es)? in|moves?)(?![\w'])",
        )
        for way, value in (("(?:out|outward|outwards|outside)", "outward"), ("(?:in|inward|inwards|inside)", "inward"))
    ),
    # --- tabs and what hangs by itself, set right
    Aside(
        rf"(?:tabs|<n>)(?: (?:on|of|in) [^ .?;,]+(?: [^ .?;,]+)?)? ?(?:'re|are|is|were|got|all)?(?: all| now)* ?(?P<x>(?:<d>|bent|folded|hammered)(?: (?:over|down|flat|in|tight))* [.,;] (?:and |but |well |oh )*(?:{_FIXED}(?: [,.:;-])? )+(?:they|the tabs|those|some|most|half of them|two|three)? ?(?:'re|are|were)?(?: (?:all|still|just|only))* ?(?:standing|sticking up|straight|up|proud|upright|not <d>|not down|not flat)(?: (?:up|out|still|over))*)(?= [.,;]|$)",
        (" tabs",),
        states=(("tabs_bent", False),),
        names=True,
    ),
    Aside(
        rf"(?P<x>(?:on|with|has|from|by|off) (?:its|their) own(?: (?:two|rods|rod|straps|strap|hangers|hanger|wires|supports|all-thread|unistrut|trapeze))* [.,;] (?:and |but |well |oh )*(?:{_FIXED}(?: [,.:;-])? )+(?:(?:it|that|the (?:damper|coil|duct|thing))(?: ?'s| is| hangs| sits| rides| rests)?(?: just| really)* )?(?:on|off|from|carried by|held by|supported by|carries)(?: the)? (?:duct|it|board|elbow|straight|sleeve)(?: itself)?)(?= [.,;]|$)",
        (" own",),
        states=(("accessory_supported", False),),
        names=True,
    ),
)
