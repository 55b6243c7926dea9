"""English that leads a listener astray: scorn for what he would never do, a wish told before the truth, what he only wanted, what passed for done. Patterns over sketches of sentences."""

from __future__ import annotations

from logbook.languages.told import Aside

_I = r"(?:i|we)"
_WOULD = rf"{_I} ?(?:'d| would)"
_NUMBER = r"(?:(?:an )?inch and a (?:half|quarter)|(?:\d[\d/.]*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|half|quarter)(?: and (?:a|an|one|three) \w+)?(?: (?:inch(?:es)?|feet|foot))?)"
_ALL = r"(?:all(?: of (?:it|them)| around| the way around| four| sides)?|everything|every (?:side|seam)|the whole (?:thing|way|piece)|done)"
_WORK = r"(?!(?:said|told|mentioned|explained|written|been|done|promised|reported|asked|planned|expected|thought|hoped|wanted|heard|seen)(?![\w']))[a-z]+"
_NOT_WANTED = r"(?:want(?:ed|ing)?|mean|meant|try|trying|like|care|cared|plan|planned|planning|intend|intended|intending|going|gonna|willing|wanting|meaning|looking|thinking)"
_TILL = r"(?:right up |up )?(?:until|till|'til)"
_FROM_AFAR = r"(?:from (?:across|here|over here|the (?:ground|door|floor|far|ladder|lift)|down|below|ten|a distance|where)|at (?:first glance|a glance|first|a distance))"

ENGLISH_MISLED = (
    # --- scorn: what he would never do
    Aside(
        rf"(?:(?<=[.?!,;] )|^)(?P<x>(?:(?:yeah|yes|sure|right|oh|ha|uh huh|of course|well|no|man) ,? ?)*(?:like|as if|as though) {_WOULD}(?: ever| really| just| even| go and)* (?:<[bdn]>|{_WORK})[^.?!]*?)(?= [.?!;]| ,|$)",
        (" like i", " like we", " as if ", " as though "),
        names=True,
    ),
    Aside(
        rf"(?:(?<=[.?!,;] )|^)(?P<x>(?:(?:yeah|yes|sure|right|oh|ha|of course) ,? ?)+(?:because|cause|'cause) {_WOULD}(?: ever| really| just| totally| always)* (?:<[bdn]>|{_WORK})[^.?!]*?)(?= [.?!;]| ,|$)",
        ("because i", "because we", "cause i", "cause we"),
        names=True,
    ),
    # --- the measure he would rather tell, or that anybody would, before the one it is
    Aside(
        rf"(?:(?<=[.?!,;] )|^)(?P<x>(?:(?:and|but|so|now|well) )*(?:{_WOULD}|{_I} (?:could|can)|i'm supposed to|{_I} always)(?: (?:like|love|give \w+|be able|want|just|always|usually|happily|gladly|normally|rather))*(?: to)? (?:tell you|say|swear|report|write(?: down)?|put down|call it)(?: (?:that|it's|they're|it was|they were|it is|they are))* [^.?!<]*?{_NUMBER}[^.?!<]*?)"
        rf"(?: [.;,])(?= (?:(?:but|only|except|and|the truth is|truth is|well|fact is|really|in fact|tell the truth) ,? ?)*(?:it's|they're|it is|they are|it was|they were|those are|that's|it comes out|they come out|it came out|they came out|it measures|mine are|mine's)(?: (?:not|really|more like|closer to|about|every|at|only|just|out at|good for|nearer))* {_NUMBER})",
        ("tell you", " say ", " swear", " report", " write", "put down", "call it"),
        names=True,
        unless=rf"^(?:(?:and|but|so|now|well) )*{_WOULD} (?:just )?say(?! [^.?!]*(?:like (?:everybody|every|the|all|you|they|always)|if |same as|as always|out of habit))",
    ),
    # --- what it came out as, where it should be otherwise
    Aside(
        rf"(?P<x>(?:where|when|though|although|while|whereas) (?:it|they|that|those|the \w+|you)(?: really| all)? (?:should|ought to|has to|have to|needs? to|'s supposed to|'re supposed to|is supposed to|are supposed to|was supposed to|were supposed to)(?: really| all)? (?:be|have been|have|want|run|go|turn|face|point|be turned|be facing)(?: (?:a|an|only|at|every|on|about|no more than|at most|at least|to|to the|on the))* (?:{_NUMBER}(?: (?:apart|wide|long))?|<d>|in(?:side|ward|wards)?|out(?:side|ward|wards)?|the other way))(?= [.,;]|$| and| but)",
        (" should ", " ought to ", " has to ", " have to ", " need", " supposed to "),
        names=True,
    ),
    # --- what he only wanted
    Aside(
        rf"(?P<x>(?:it ?(?:'s|is|wasn't|isn't|ain't) )?(?:not )?(?:that|because|like|as if|as though|for lack of wanting) {_I} (?:didn't|don't|did not|wasn't|weren't|was not|hadn't|wouldn't|never)(?: really| ever| even)* {_NOT_WANTED}(?: to)?(?: (?P<act><[bnd]>)[^.,;?!]*?)?)(?= [.,;]|$| because| but| only| it was| it's)",
        ("not that i", "not that we", "not because i", "not because we", "not like i", "not as if", "not as though", "n't that i", "n't because i", "n't like i", "n't that we", "n't as if"),
        states=(("<act>", False),),
        names=True,
    ),
    # --- what passed for done, until somebody looked; what it looks like from afar says nothing
    *(
        Aside(
            rf"(?P<x>(?:passed (?:for|as)|passes (?:for|as)|looked|looks|seemed|seems|appeared|appears|could pass for|went for|sounded)(?: (?:like|as if|as though|to be|it was|it's|they were|they're|all|good and|properly|nicely|perfectly|fully|being))* (?P<act><d>)(?: (?:up|down|on|all|around|good|fine|tight|to me|to anybody|to everyone|enough|and done))*) {when}(?![\w'])",
            cues,
            states=told,
            names=True,
        )
        for when, cues, told in ((_TILL, (" until", " till", "'til"), (("<act>", False),)), (_FROM_AFAR, (" from ", " at first", " at a "), ()))
    ),
    # --- "all", and what he leaves out of it
    Aside(
        rf"(?P<act><d>)[^.?!]*?(?: [.,;])? (?:and |but |only )*(?P<x>(?:when i say|when i said|by|saying|say) {_ALL} ,? ?(?:(?:i|we|that) )?(?:leaves? out|left out|leaving out|don't (?:count|mean|include)|'m not counting|am not counting|not counting|didn't (?:count|mean|do)|except|mean (?:everything|all|every \w+|the lot) (?:but|except)|mean all but|mean (?:one|two|three)))(?! (?:nothing|none))",
        ("say all", "said all", "by all", "say every", "said every", "by every", "say the whole", "by the whole", "say done", "by done"),
        states=(("<act>", False),),
        names=True,
        corrects=True,
    ),
    # --- what would be well but for what he did: that he did it is all that is told
    Aside(
        rf"(?P<x>(?:(?:it|that|this one|#|everything|there|you|nobody|they|this|i) ?(?:'d|would|could|might|wouldn't|couldn't)(?: have)?(?: [^ .,?;<]+){{0,5}}? (?:fine|good|perfect|right|nothing to (?:say|tell|complain|fix|report)(?: about)?|pass|passed|problem|complaint|complain|happy|all right|okay|ok|great|word)|no (?:problem|complaint|trouble)s?) if {_I} hadn't)(?= )",
        (" if i hadn't", " if we hadn't"),
        names=True,
    ),
    Aside(
        rf"(?P<x>if {_I} hadn't) [^.?!;]*?(?P<y>(?:, )?(?:you|he|they|somebody|the \w+)(?: ?'d| would| could| might)(?: have)? (?:complain|say something|say so|have (?:something|a point|a case|reason)|be right|yell|holler|squawk|flag|write)[^.?!;,]*? ,? (?:but|only|and) {_I} did)(?= [.,;]|$)",
        ("if i hadn't", "if we hadn't"),
        names=True,
    ),
    # --- what anybody would take him to have done, which he tells next
    Aside(
        rf"(?:(?<=[.?!,;] )|^)(?P<x>(?:you'd|you would|anybody'd|anybody would|he'd|they'd) (?:think|guess|figure|bet|suppose)[^.?!]*? {_I}(?: ?'d| would)(?: have|'ve) <[dn]>[^.?!]*?)(?= [.?!]|$)",
        ("think", "guess", "figure", "bet", "suppose"),
        names=True,
    ),
    # --- as what it was sold
    Aside(
        rf"(?P<x>(?:it |this |that )?(?:was |were |is |been |got |came )?(?:sold|described|billed|quoted|pitched|advertised|bid|passed off)(?: (?:to|on) (?:me|us|him|them))? as (?:an? |about |only )*{_NUMBER}(?: (?:static|of static|pressure|of pressure|degrees))*)(?= [.,;]|$| and| but)",
        ("sold", "described", "billed", "quoted", "pitched", "advertised", " bid ", "passed off"),
        names=True,
    ),
    # --- "no" as what he answered, and no lack
    Aside(
        rf"(?P<x>{_I} (?:told|answered|gave) (?:him|her|them|you|the \w+|\w+)(?: (?:a (?:hard|flat|big|firm)|straight|flat out|plain))? no)(?=(?: [,.;])? (?:and|but|so) (?:i |we |then |just |instead )*(?:<d>|put|used|ran|went|stuck|laid|shot|hung|closed)(?![\w']))",
        (" no ", " no,", " no."),
        names=True,
    ),
)
