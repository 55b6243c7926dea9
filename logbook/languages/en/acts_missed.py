"""English frames of any act by its name: what he never got to, what is not done yet, what he will do another day. And turning vanes, which are named as acts are."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.en.acts_to_come import ENGLISH_ACTS_TO_COME

_NOT = r"(?:never|didn't|did not|haven't|have not|hasn't|has not|hadn't|couldn't|could not|wasn't able to|ain't|not)(?: (?:yet|even|ever|really|quite|actually))*"
_ACT = r"(?:the |any |my |that |its |all the )*(?:{noun}|{doing})(?: (?:part|step|job|work))?"
_CALLED = r"(?:pulled|called|sent|yanked|taken|dragged|moved|hauled)(?: (?:off|away|home|out|over|down|up|to|it|the|another|piece|job|this|that|me))*"
_WILL = r"(?:i'll|i will|we'll|we will|i'm gonna|i'm going to|we're gonna|we're going to|i can|i have to|i gotta|i've got to|i need to|i get to)"
_OMITS = r"(?:overlooked|neglected|bypassed|omitted|missed(?: out on)?|spaced(?: out)? on|blanked(?: out)? on|whiffed(?: on)?|ducked(?: out on| out of)?|dodged|shirked|slacked(?: off)? on|slept on|punted(?: on)?|bailed(?: out)? on|(?:breezed|flew|sailed|blew|rushed)(?: right| clean| on)? past|(?:blew|went|walked) (?:right|clean) (?:by|past)|zoned(?: out)? on|glossed over|lost track of|wussed out on|chickened out on|walked away from|dispensed with|did away with|nixed|scrapped|ditched|passed (?:up|over)|(?:went|did|going|doing) without|brushed off|begged off(?: on)?|bagged|weaseled out of|blew off|left (?:out|off)|let slide)"
# what comes in between an act and the work before it: "hung it before I'd taped it", "got called off before I had it rubbed"
_MEANWHILE = (
    r"(?:hung|hang|hauled|put|shoved|pushed|slid|stuck|set|stood|closed|covered|boxed|buried|lifted|raised|moved|sent|shipped|loaded|left|leave|went|walked|quit|stopped|ran|called|pulled|yanked|dragged|took|came|showed|rang|broke|died|lunch|needed|wanted|grabbed|drywalled|sheetrocked)"
)
_STOOD = r"(?:i|we)(?:'d| had)(?: (?:even|ever|fully|properly|really|quite|all the way|gotten it|got it))*"
_PART = r"(?:(?:best|better|bigger|greater|main|first|top|bottom|front) (?:part|half|bit|stretch))"
_STRETCH = r"(?:first|last|top|bottom|front|back|near|far)(?: (?:one|two|three|four|five|six|eight|ten|twelve|few|couple(?: of)?|half|\d+))?(?: or (?:two|three|so))? (?:inch|inches|foot|feet)(?: or so| or two)?"
_THREE = r"(?:one|two|three|1|2|3)(?: out)? of (?:the |its |my )?(?:four|4)(?: (?:sides|seams|joints|edges|corners))?"
_DAY = r"(?:tomorrow|tonight|later|next|after|in the|on|when|once|this|\w+day|first thing)"

ENGLISH_ACTS_MISSED = replace(
    ENGLISH_ACTS_TO_COME,
    forms=(
        *ENGLISH_ACTS_TO_COME.forms,
        (
            "vanes",
            r"(?:(?:turning )?vanes?)",
            r"(?:(?:put|set|install|get|slide|fit|drop|mount)(?: in)? (?:the |any |my |some |its |those )*(?:turning )?vanes?(?: in)?)",
            r"(?:(?:putting|setting|installing|fitting|getting)(?: in)? (?:the |any |my |some |its |those )*(?:turning )?vanes?(?: in)?)",
            r"(?:vaned)",
        ),
    ),
    hints=ENGLISH_ACTS_TO_COME.hints + r"|bagged|gave|give|giving|brain|moment|lapse|radar|heads?\b|minds?\b|spaced|blanked|whiff|duck|dodg|shirk|slack|slept|punted|bailed|breez|flew|sailed|blew|walked|rushed|zoned|gloss|lost track|out on|dispens|nixed|scrap|ditch|passed|without|jumped|brushed|begged|weasel|window|shuffle|seat|escaped|the cut|casualty|tabled|shelv|postpon|defer|absent|awol|\bmia\b|nowhere|limbo|hold|zip|zilch|show|got to|get to|gotten to|made it|make it|done|missing|less|put off|before|touched|started|begun|\bdo\b|left",
    undone=(
        *ENGLISH_ACTS_TO_COME.undone,
        rf"(?:never(?: (?:even|ever|really|quite|actually))* (?:got|get|gotten)(?: (?:around|back|down|as far as))?|{_NOT} (?:made|make) it(?: (?:around|back|as far as))?)(?: to)? {_ACT}(?![\w'-]| (?:gun|measure|done|on (?:the|my) (?:truck|cart)))",
        rf"(?<!almost )(?<!nearly )(?<!about )(?<!never )(?<!not )(?<!n't )(?<!ever ){_OMITS} {_ACT}(?: down)?(?![\w'-]| (?:gun|measure|roll|with|twice|again|off|on (?:the|my) (?:truck|cart|floor|bench)|in (?:the|my) (?:truck|box|shop)|to (?:the|my|him|her|joe)|i (?:put|laid|used)))",
        rf"(?:gave|give|giving) {_ACT} (?:a|the) (?:miss|pass|skip)\b(?! and)",
        rf"(?:brain fart|brain freeze|senior moment|lapse) (?:on|with) {_ACT}",
        rf"{_ACT}(?: (?:down|on|for) (?:it|this one))?(?:(?:'s| is| are| was| were|'re)? (?:not|never)|(?: is| are| was| were)n't| ain't|(?: has| have|'s|'ve)? (?:not|never) been|(?: has| have)n't been) (?:done|finished|complete|completed|started|there)\b(?! (?:right|well|properly|the right|like|by|with|until|till))",
        rf"{_ACT}(?:'s| is| are| was|'re) (?:missing|absent|still missing|all missing)(?! (?:on|at|in|along|from|a|one|two|three|some))\b",
        r"^(?:but |all )?(?:less|minus|sans) (?:the |any )?{noun}$",
        rf"(?:holding|held|hold) off (?:on )?{_ACT}",
        rf"{_CALLED} before (?:i (?:got|did|had) (?:to )?)?{_ACT}",
        rf"{_NOT} (?:started|touched|begun|start|touch|begin|start on|started on) {_ACT}",
        rf"\b{_MEANWHILE}\b[^.;]{{0,50}}? before {_STOOD} {{done}}\b",
        rf"\b{_MEANWHILE}\b[^.;]{{0,50}}? before (?:i|we) (?:had|got) (?:it|them|that|this one|the (?:tape|joint|seams?)) (?:all )?{{done}}\b",
    ),
    to_do=(
        *ENGLISH_ACTS_TO_COME.to_do,
        rf"(?:put|putting|pushed|pushing) off (?:on )?{_ACT}",
        rf"{_ACT},? {_WILL} (?:do|get to|finish|tackle|handle|see to|put (?:in|on)|take care of|come back for|go back for)(?: (?:it|that|them))?(?=$|[.,;]| {_DAY})",
        rf"(?:only|one|last|sole) (?:thing|part|step|bit|job)(?: (?:that's|that is|still|i have|i've got|i got|to do|left|remaining|missing|undone|open|on it))+(?: to do)?(?:'s| is|:)? (?:to )?(?:{_ACT}|{{verb}})",
    ),
    partly=(
        *ENGLISH_ACTS_TO_COME.partly,
        rf"(?:only|just) (?:about |maybe )?(?:the )?{_STRETCH}(?: of (?:it|the \w+))?(?:'s| is| are| got| has| have| was| were)* (?:any )?(?:{{done}}|{{noun}})\b",
        rf"{{noun}} (?:only |just |about )*(?:covers?|covered|reach(?:es|ed)|does|did)(?: about| maybe| only| just| like)* (?:half|most|part|some|two thirds|a third|three quarters|a quarter|the {_STRETCH})\b",
        rf"{{done}} (?:about |maybe |only |just )*the {_PART} of (?:it|them|this one|that one|the \w+)\b",
        rf"(?<![\w'])(?:only |just )?{_THREE}(?: (?:have|has|had|been|got|are|is|were|was))* {{done}}\b",
        r"{done}(?: it| them)?(?: (?:all|the way|up|down|along|over))* to within (?:about |maybe )?(?:a|an|half an?|one|two|three|four|six|eight|\d+|a couple of|a few) (?:inch|inches|foot|feet|hand)\b",
        r"{done}(?: (?:it|her|them))?(?: (?:a (?:little|bit|hair|foot|few inches)|too|way|about \w+|an inch|\w+ inches))? (?:short|shy) (?:on|at|along|by|near) (?!\d)",
    ),
    unfinished_looks=ENGLISH_ACTS_TO_COME.unfinished_looks + r"|as far as",
    unfinished=(
        *ENGLISH_ACTS_TO_COME.unfinished,
        r"(?:(?:and|so|but|well|ok|okay) )*(?:that's|this is|it's|that was|that is) (?:about |just |only )*as far as (?:i|we)(?:'ve| have)? (?:got|gotten|went|made it|managed)(?: (?:with (?:it|this one|that one|her)|today|so far|on it|up to now|before .*))*$",
    ),
    of_one=(
        *ENGLISH_ACTS_TO_COME.of_one,
        ("surface_clean", False, r"taped(?: (?:it|over it|them|over|the \w+))? before (?:i|we)(?:'d| had)(?: (?:even|ever))* (?:wiped|cleaned|dusted|brushed)\b"),
    ),
    across=(
        *ENGLISH_ACTS_TO_COME.across,
        ("partly", rf"{{noun}},? (?:(?:only|just) )?(?:on |over |for )?(?:the )?{_STRETCH}(?: of (?:it|the \w+))?,? (?:only|and (?:no|nothing) \w+)(?=$|[.,;])"),
        ("undone", r"(?<!never )(?:tried|trying|went|wanted|attempted|meant)(?: my best| like hell| twice| hard)? to {verb}\b[^.;,]{0,24}?(?:,| and| but)+ (?:and |but )?(?:i |we |it |just )*(?:couldn't|could not|can't|cannot|wasn't able|no go|no luck|no dice|wouldn't go|gave up)\b(?![^.;]*{!done})"),
    ),
)
