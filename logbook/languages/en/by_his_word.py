"""English that gives what is told to another's word: "according to Marco straight 4 is taped", "straight 4 is taped, the foreman says". It is read as "Marco says …", with all that holds for another's words."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_NUMBER as _NUMBER
from logbook.languages.plainer import Plainer

_PEOPLE = r"(?:foreman|super|superintendent|inspector|engineer|architect|plumber|electrician|apprentice|helper|boss|lead|journeyman|partner|buddy|brother|cousin|kid|guy|guys|fella|owner|contractor|gc|customer|supervisor|manager|day shift|night shift|crew|others)"
_NO_NAME = r"(?:the|my|our|that|his|her|their|this|it|what|who|me|you|us|myself|code|spec|specs|plan|plans|print|prints|drawing|drawings|tag|sheet|schedule|label|tape|rule|ruler|gauge|meter|level|laser|thermometer|gun|scale|dial|radio|readout|reading|display|stick|paper|phone|book|law|legend|rumor|memory|mine|as|like|which|enough|easier|sooner|well|a|an|i|we|nobody|someone|somebody|them|they)"
_WHO = rf"(?:(?:the|my|our|that|his) (?:other |old |new |night |day )?{_PEOPLE}|him|her|(?!{_NO_NAME}(?![\w'])){{name}})"
_NAME = _WHO.format(name=r"[a-z]+")
_AT_FIRST = r"(?:(?<=[.;!?] )|^)"
_CLAUSE = r"(?:(?<=[.;!?,] )|^)(?P<x>)(?!(?:and|but|so|according|now|well|if|i|we|stapled|taped|rubbed|trimmed|wiped|patched|fixed|sealed|hung)(?![\w']))[^.;!?,]{6,80}?"
_BEGINS = r"(?:(?<=[.;!?] )|^)(?:(?:and|so|okay|ok|well|now),? )*(?:the |my )?"
_PIECE = rf"(?:{KIND} (?:number )?{_NUMBER}|(?:number|piece|fitting|section) {_NUMBER})"
_ENDS = r"(?=[.;!]|$)"
_TOLD = r"(?:says|said|claims|claimed|swears|swore|tells (?:me|us)|told (?:me|us)|reckons|thinks|promises(?: me| us)?|promised(?: me| us)?|insists|insisted|assures me|assured me)(?: (?:up and down|to god|on his mother))?"
_TOLD_CUES = (" says", " said", " claim", " swears", " swore", " tells ", " told ", " reckons", " thinks", " promise", " insist", " assure")
_OWN = rf"(?P<w>{_NAME}|he|she|they)"
_DONE = r"(?:stapled|taped|rubbed|trimmed|wiped|patched|fixed|sealed|hung)(?: (?:and|,) (?:stapled|taped|rubbed|trimmed|wiped))*(?: (?:down|up|all|good|too|over|every \w+))*"
_OF_THE_AIR = r"(?<![\w'])(?:static|pressure|degrees?|water|cfm)(?![\w'])"  # how hot and how hard the air is, others know

ENGLISH_BY_HIS_WORD = (
    # --- the man's own tape and rule are no other man
    Plainer(("according to",), r"(?:(?<=[.;!?,] )|^)(?P<x>according to (?:my|the|our) (?:tape(?: measure)?|measuring tape|rule|ruler|laser|stick),? )", (("x", ""),)),
    Plainer(("according to",), rf"{_AT_FIRST}(?:and |but |so |now )?(?P<x>according to )(?:{_NAME})(?P<y>,?)(?= [^ ])", (("x", ""), ("y", " says"))),
    Plainer(("according to",), rf"{_CLAUSE}(?P<y>,? according to (?P<w>{_NAME})){_ENDS}", (("x", r"\g<w> says "), ("y", "")), unless=_OF_THE_AIR),
    Plainer(("according to",), rf"(?<=, )(?P<x>){_DONE}(?P<y>,? according to (?P<w>{_NAME})){_ENDS}", (("x", r"\g<w> says it is "), ("y", "")), unless=_OF_THE_AIR),
    Plainer(_TOLD_CUES, rf"(?<=, )(?P<x>){_DONE}(?P<y>, (?:or so |so |at least that's what |that's what )?(?:{_OWN}) {_TOLD}){_ENDS}", (("x", r"\g<w> says it is "), ("y", "")), unless=_OF_THE_AIR),
    Plainer(_TOLD_CUES, rf"{_CLAUSE}(?P<y>, (?:or so |so |at least that's what |that's what )?(?:{_OWN}) {_TOLD}){_ENDS}", (("x", r"\g<w> says "), ("y", "")), unless=_OF_THE_AIR),
    # --- what another says begins a clause of its own
    Plainer(_TOLD_CUES, rf"[\w'-]+(?P<x> )(?=and (?:{_NAME}|he|she|they) {_TOLD}(?: that)? (?:it|it's|they|they're|he|he's|she|she's|the|that|all|everything|this)(?![\w]))", (("x", ", "),)),
    *(
        Plainer((" from what ", " by what ", " going by ", " going on "), rf"{begins}{_DONE}(?P<y>(?: too| as well)?,? (?:just )?(?:from|by|going by|going on) what (?P<w>{_NAME}|he|she|they) {_TOLD}){_ENDS}", (("x", rf"\g<w> says {it}"), ("y", "")))
        for begins, it in ((r"(?<=, )(?P<x>)", "it is "), (r"(?:(?<=[.;!?,] )|^)(?P<x>)(?:it|that one|this one)(?: is|'s| got| was) ", ""))
    ),
    # --- and what he did himself is told behind it: the piece stays named
    *(
        Plainer(cues, rf"{_BEGINS}{_PIECE}(?P<x>)(?= (?:is|was|got|has|isn't|wasn't|hasn't|never)(?![\w'])|'s )[^.;!?,]{{4,60}}?(?P<y>{by})(?=,? (?:and |but |so )*(?:i|we|i've|we've|my)(?![\w'-]))", (("x", r", \g<w> says it"), ("y", "")), unless=_OF_THE_AIR)
        for cues, by in ((("according to",), rf",? according to (?P<w>{_NAME})"), (_TOLD_CUES, rf", (?:or so |so |at least that's what |that's what )?{_OWN} {_TOLD}"))
    ),
    *(
        Plainer(cues, rf"(?<=\w )(?P<x>and )(?:it|they)(?:'s| is| was| got| are|'re)(?![\w'])[^.;!?,]{{3,60}}?(?P<y>{by}){_ENDS}", (("x", r", and \g<w> says "), ("y", "")), unless=_OF_THE_AIR)
        for cues, by in ((("according to",), rf",? according to (?P<w>{_NAME})"), (_TOLD_CUES, rf", (?:or so |so |at least that's what |that's what )?{_OWN} {_TOLD}"))
    ),
    # --- the step that another told of, and he saw himself
    Plainer((" looks ", " faces ", " points "), r"step(?! up)[^.?!]{1,40}?(?:looks|faces|points|is) (?:to the )?(?:in|out)(?:side|ward|wards)?[.,;][^?!]{1,60}? (?P<x>it)(?= (?:looks|faces|points) (?:to the )?(?:in|out)(?:side|ward|wards)?(?=[.,;]|$))", (("x", "the low step"),)),
    Plainer((" says ", " claims ", " swears "), rf"{_CLAUSE}(?P<y>, (?:or so |so )?(?:says|claims|swears) (?P<w>{_NAME})){_ENDS}", (("x", r"\g<w> says "), ("y", "")), unless=_OF_THE_AIR),
)
