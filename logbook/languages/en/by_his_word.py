"""English that gives what is told to another's word: "according to Marco straight 4 is taped", "straight 4 is taped, the foreman says". It is read as "Marco says …", with all that holds for another's words."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_PEOPLE = r"(?:foreman|super|superintendent|inspector|engineer|architect|plumber|electrician|apprentice|helper|boss|lead|journeyman|partner|buddy|brother|cousin|kid|guy|guys|fella|owner|contractor|gc|customer|supervisor|manager|day shift|night shift|crew|others)"
_NO_NAME = r"(?:the|my|our|that|his|her|their|this|it|what|who|me|you|us|myself|code|spec|specs|plan|plans|print|prints|drawing|drawings|tag|sheet|schedule|label|tape|rule|ruler|gauge|meter|level|laser|thermometer|gun|scale|dial|radio|readout|reading|display|stick|paper|phone|book|law|legend|rumor|memory|mine|a|an|i|we|nobody|someone|somebody|them|they)"
_WHO = rf"(?:(?:the|my|our|that|his) (?:other |old |new |night |day )?{_PEOPLE}|him|her|(?!{_NO_NAME}(?![\w'])){{name}})"
_NAME = _WHO.format(name=r"[a-z]+")
_AT_FIRST = r"(?:(?<=[.;!?] )|^)"
_CLAUSE = r"(?:(?<=[.;!?,] )|^)(?P<x>)(?!(?:and|but|so|according|now|well|if|i|we|stapled|taped|rubbed|trimmed|wiped|patched|fixed|sealed|hung)(?![\w']))[^.;!?,]{6,80}?"
_ENDS = r"(?=[.;!]|$)"
_TOLD = r"(?:says|claims|swears|tells me|told me|reckons|thinks)"
_OWN = rf"(?P<w>{_NAME}|he|she|they)"
_DONE = r"(?:stapled|taped|rubbed|trimmed|wiped|patched|fixed|sealed|hung)(?: (?:and|,) (?:stapled|taped|rubbed|trimmed|wiped))*(?: (?:down|up|all|good|too|over|every \w+))*"
_OF_THE_AIR = r"(?<![\w'])(?:static|pressure|degrees?|water|cfm)(?![\w'])"  # how hot and how hard the air is, others know

ENGLISH_BY_HIS_WORD = (
    # --- the man's own tape and rule are no other man
    Plainer(("according to",), r"(?:(?<=[.;!?,] )|^)(?P<x>according to (?:my|the|our) (?:tape(?: measure)?|measuring tape|rule|ruler|laser|stick),? )", (("x", ""),)),
    Plainer(("according to",), rf"{_AT_FIRST}(?:and |but |so |now )?(?P<x>according to )(?:{_NAME})(?P<y>,?)(?= [^ ])", (("x", ""), ("y", " says"))),
    Plainer(("according to",), rf"{_CLAUSE}(?P<y>,? according to (?P<w>{_NAME})){_ENDS}", (("x", r"\g<w> says "), ("y", "")), unless=_OF_THE_AIR),
    Plainer(("according to",), rf"(?<=, )(?P<x>){_DONE}(?P<y>,? according to (?P<w>{_NAME})){_ENDS}", (("x", r"\g<w> says it is "), ("y", "")), unless=_OF_THE_AIR),
    Plainer((" says", " claims", " swears", " tells me", " told me", " reckons", " thinks"), rf"(?<=, )(?P<x>){_DONE}(?P<y>, (?:or so |so |at least that's what |that's what )?(?:{_OWN}) {_TOLD}){_ENDS}", (("x", r"\g<w> says it is "), ("y", "")), unless=_OF_THE_AIR),
    Plainer((" says", " claims", " swears", " tells me", " told me", " reckons", " thinks"), rf"{_CLAUSE}(?P<y>, (?:or so |so |at least that's what |that's what )?(?:{_OWN}) {_TOLD}){_ENDS}", (("x", r"\g<w> says "), ("y", "")), unless=_OF_THE_AIR),
    # --- the step that another told of, and he saw himself
    Plainer((" looks ", " faces ", " points "), r"step(?! up)[^.?!]{1,40}?(?:looks|faces|points|is) (?:to the )?(?:in|out)(?:side|ward|wards)?[.,;][^?!]{1,60}? (?P<x>it)(?= (?:looks|faces|points) (?:to the )?(?:in|out)(?:side|ward|wards)?(?=[.,;]|$))", (("x", "the low step"),)),
    Plainer((" says ", " claims ", " swears "), rf"{_CLAUSE}(?P<y>, (?:or so |so )?(?:says|claims|swears) (?P<w>{_NAME})){_ENDS}", (("x", r"\g<w> says "), ("y", "")), unless=_OF_THE_AIR),
)
