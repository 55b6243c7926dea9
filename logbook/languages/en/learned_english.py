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
)
