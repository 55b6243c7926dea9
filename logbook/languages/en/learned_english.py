"""English as those say it who learned it on the job: "the vanes I don't have put yet", "no taped yet", "I tape it after".

Rows like those of `plainer.py`; words in the build of Spanish are in `calques.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

ENGLISH_LEARNED = (
    # --- the thing ahead of what he has not done to it, run on into what he did
    Plainer((" don't have ", " dont have ", " do not have "), r"(?:vanes|tape|staples|tabs|mastic) (?:i|we) (?P<h>(?:don't|dont|do not) have) (?:put|taped|stapled|done|installed|bent)(?: (?:in|on|them|it|any))*(?: yet| today)?(?P<x>)(?= (?:(?:i|we) still|stapled|taped|rubbed|trimmed|wiped|hung|it's|they're)(?![\w']))", (("h", "haven't"), ("x", ","))),
    Plainer((" don't have ", " dont have ", " do not have "), r"(?:i|we|they) (?P<x>(?:don't|dont|do not) have) (?=(?:put|taped|stapled|rubbed|done|trimmed|wiped|bent|installed|finished|made|hung)(?![\w']))", (("x", "haven't"),)),
    Plainer(("vanes ", "tape ", "staples ", "tabs ", "mastic "), r"(?:vanes|tape|staples|tabs|mastic) (?:i|we) (?:haven't|have not|didn't|did not|don't|dont|never|couldn't)(?: (?:have|put|get|got|had|done|do|use|used))?(?: (?:in|on|them|it|any))*(?: yet| today)?(?P<x>)(?= (?:(?:i|we) still|stapled|taped|rubbed|trimmed|wiped|hung|it's|they're)(?![\w']))", (("x", ","),)),
    Plainer((" put ",), r"(?:still |just )*(?:have|need|gotta|got|had|going|gotta)(?: to)? put (?:them|it|(?:the |my )?(?:turning )?(?:vanes|veins|tape|staples|tabs))(?: in| on)?(?P<x>)(?= (?:(?:it's |its )(?=stapled|taped|rubbed)|(?:stapled|taped|rubbed|trimmed|wiped)(?: (?:all|on|four|three|two|every|down|with)| and|,|$)))", (("x", ","),)),
    # --- "no taped yet", "I tape it after", as those say it who learned English late
    Plainer((" no ",), r"(?:is|it|it's|by \w+|still|yet|but|and|not|piece|one) (?P<x>no) (?=(?:taped|stapled|rubbed|trimmed|wiped|sealed|patched)(?: down)?(?:[.,;]|$| (?:yet|because|cause|still|today|so far)\b))", (("x", "not"),)),
    Plainer((" after", " later"), r"i (?:tape|staple|rub|trim|wipe|patch|seal)(?: (?:it|them|that))?(?: down)? (?P<x>after|later)(?=[.,;!]|$)", (("x", "tomorrow"),)),
    Plainer(("after i ",), r"(?:^|(?<=[.,;!] ))(?P<x>after) (?=i (?:tape|staple|rub|trim|wipe|patch|seal) (?:it|them|that)(?: down)?(?:[.,;!]|$))", (("x", "tomorrow"),)),
    Plainer((" not yet ",), r"(?:by \w+|long|inch(?:es)?|piece|and|but|it's|its|is) (?P<x>not yet (?P<v>rubbed down|rubbed|trimmed|wiped(?: down| off)?|cleaned|taped|stapled))(?![\w'])", (("x", r"not \g<v> yet"),)),
    # --- the tool or the thing ahead of what he did not do with it: "with the squeegee I did not pass", "the lines of the scrim you can't see them"
    Plainer(("squeegee ", "spatula ", "scraper ", "plastic ", "paddle "), r"(?:^|(?<=[.,;!?] )|(?<= and )|(?<= but ))(?P<x>(?:with )?the (?:squeegee|spatula|scraper|plastic|paddle) (?:i|we) (?:did not|didn't|have not|haven't|never|not|no)(?: even| yet)? (?:pass|passed|use|used|go|went|run|ran)(?: it)?(?: over(?: it)?)?(?: yet)?)(?=[.,;!]|$| (?:because|cause|since|and|but)\b)", (("x", "I did not rub it down"),)),
    Plainer(("scrim ",), r"(?P<x>the (?:(?:lines|threads|weave|pattern|squares|mesh|net|drawing|threading) of the scrim|scrim(?: lines| threads| pattern)?) (?:you|we|i|one) (?:can't|cannot|can not|couldn't|don't|do not|no)(?: yet| even)? (?:see|make out)(?: (?:them|it|that|through|yet|anywhere))*)(?=[.,;!]|$| (?:because|and|but|in|on)\b)", (("x", "the scrim does not show"),)),
    Plainer((" fit", " enter", " go in", " reach"), r"(?:because|cause|since|that) (?P<x>(?:the|my|a) (?:hand|hands|arm|arms|fingers|gun|tape gun|stapler|squeegee|head|body|elbow of me|ladder|lift) (?:don't|doesn't|do not|does not|didn't|won't|can't|cannot|no|not)(?: even)? (?:fit|fits|enter|enters|go in|reach|reaches)(?: (?:in|there|in there|behind|inside|it))*)(?=[.,;!]|$| (?:and|but|so)\b)", (("x", "I can't reach it"),)),
    *(
        Plainer((f"{verb} it", f"{verb} them", f"{verb} that", f"{verb} the"), rf"(?:hole|tear|rip|puncture|cut|gash|slit|split)s?(?![\w'])[^.?!]{{0,60}}?(?:i|we) (?:did not|didn't|haven't|have not|never|couldn't|could not)(?: get to| even)? (?P<x>{verb}) (?:it|them|that|the (?:hole|tear|rip|puncture|cut|gash|slit|split))(?: up)?(?=[.,;!]|$| (?:yet|because|cause|and|but|so|today)\b)", (("x", plain),))
        for verb, plain in (("close", "repair"), ("closed", "repaired"), ("seal", "repair"), ("sealed", "repaired"))
    ),
    Plainer((" catch ", " notice ", " spot ", " realize ", " caught ", " noticed "), r"[\w'-]+(?P<x>,?(?: and| but)? (?:i|we|nobody|no one) (?:didn't |did not |never |hadn't |only )?(?:catch|caught|notice|noticed|spot|spotted|realize|realized) (?:it|that)(?: (?:until|till|'til|before|after|when|too late)(?: [^.,;?!]*)?)?)(?=[.,;!]|$)", (("x", ""),), beside=("staple", "leg", "tape")),
    Plainer((" other kind", " other type", " other sort", " other one"), r"(?:gun|stapler|tool) (?:is|was|it's) (?P<x>(?:of )?the other (?:kind|type|sort|one))(?=[.,;!]|$)", (("x", "different"),)),
)
