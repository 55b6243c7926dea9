"""English of forms that are filled in, aloud or by thumb: "Closure: none", "Gaps: N", "Stapled/taped/rubbed: Y/Y/N"; and the plain words that they are read as."""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_IS = r"(?: ?[:=] ?| - |, )"
_NONE = r"(?:none|no|nil|n|zero|0|not applied|not done|missing|omitted|lacking)"
_LATER = r"(?:not yet|pending|to do|to follow|to come|tbd|later|tomorrow|incomplete|outstanding|open|waiting|in progress)"
_ENDS = r"(?=[.,;/\n]|$)"
_BEGINS = r"(?:^|(?<=[.,;/\n] )|(?<=[;/\n])|(?<= / )|(?<= - ))"
_ACT = r"(?:stapled|taped|rubbed(?: down)?|wiped|trimmed|vanes)"
_TICK = r"(?:yes|no|y|n|ok|done)"
_NUMBER = r"(?:\d+(?:[ -]\d+/\d+|/\d+|\.\d+)?|(?:(?:an?|one|three|five) )?(?:half|quarters?|eighths?)|one|two|three)"
_TODO = r"(?:open(?: items?)?|remaining|outstanding|left|still open|incomplete|balance|punch(?: list)?|remainder|not done|still to do|todo|to complete)"

ENGLISH_FILLED_IN = (
    # --- the piece
    Plainer(("id", "nr", "ref", "label", "unit"), r"(?:^|(?<=\n))(?P<x>(?:(?:piece|fitting) )?(?:id|nr|ref|label|unit)(?: ?no)?[.:#]* ?#?)(?=\d+(?![\w/\"-]|\.\d| is(?![\w'])))", (("x", "mark: "),)),
    # --- what closes and what fastens
    Plainer(("clos", "seal"), rf"{_BEGINS}(?P<x>(?:closure|closed|closing|sealed|sealing|seal|joint closure|joint sealed)){_IS}(?={_NONE}{_ENDS}|{_LATER}{_ENDS})", (("x", "taped"),), unless=r"mastic"),
    Plainer(("fasten",), rf"{_BEGINS}(?P<x>(?:fastening|fastened|fasteners?)){_IS}(?={_NONE}{_ENDS}|{_LATER}{_ENDS})", (("x", "stapled"),), unless=r"cross tabs"),
    Plainer(("tape", "tapi", "stapl", "rub"), rf"{_BEGINS}(?:tape|taped|taping|staples|stapled|stapling|rubbed|rub down){_IS}(?P<x>incomplete|unfinished|in progress|on hold|waiting|awaiting \w+){_ENDS}", (("x", "to do"),)),
    Plainer(("y/n", "yes/no"), r"[a-z]+(?P<x> ?\(?(?:y/n|yes/no)\)?)(?= ?[:=?])", (("x", ""),)),
    Plainer(("/", ", "), rf"(?P<x>(?P<a>{_ACT}) ?[/,] ?(?P<b>{_ACT}) ?[/,] ?(?P<c>{_ACT}) ?[:=] ?(?P<p>{_TICK}) ?[/,] ?(?P<q>{_TICK}) ?[/,] ?(?P<r>{_TICK}))(?![\w'])", (("x", r"\g<a>: \g<p>, \g<b>: \g<q>, \g<c>: \g<r>"),)),
    Plainer(("/", ", "), rf"(?<![/,] )(?<![/,])(?P<x>(?P<a>{_ACT}) ?[/,] ?(?P<b>{_ACT}) ?[:=] ?(?P<p>{_TICK}) ?[/,] ?(?P<q>{_TICK}))(?![\w'/])", (("x", r"\g<a>: \g<p>, \g<b>: \g<q>"),)),
    # --- joints and harm
    Plainer(("gap",), rf"(?:joint )?gaps?(?: ?[:=] ?| - )(?P<x>n|nil|nope|0){_ENDS}", (("x", "no"),)),
    Plainer(("gap",), rf"(?:joint )?gaps?{_IS}(?P<x>(?:yes|y)[,;]? )(?={_NUMBER})", (("x", ""),)),
    Plainer(("gap",), rf"{_BEGINS}gaps?(?P<x>[.,] )(?={_NUMBER}(?: inch(?:es)?|\"| in)?{_ENDS})", (("x", ": "),)),
    Plainer(("joint",), r"joint(?P<x> ?: ?)(?=open(?![\w']))", (("x", " "),)),
    Plainer(("repair",), rf"{_BEGINS}(?P<x>(?:repairs?|repair made|repair done){_IS}(?:none|no|n|nil|not made|not done)){_ENDS}", (("x", "not repaired"),), unless=r"(?:damage|tears?|holes?)(?: ?[:=] ?| - |, )(?:none|no|nil|n|0)(?![\w'])|(?:no|without) (?:damage|tears?|holes?)"),
    Plainer(("tabs",), r"(?P<x>tabs ?[:=] (?P<n>\d+|one|two|three|four|five|six|some|a few))(?= (?:not |un|still |left ))", (("x", r"\g<n> of the tabs"),)),
    # --- measures: "1 in." ends there, when another label follows
    Plainer((" in. ",), r"\d (?P<x>in\.)(?= (?:tape|closure|stapl|board|leg|spacing|rub|vanes|gap|width|screws|clinch|turn|angle|damage|facing)[a-z]*(?: (?:width|leg|spacing|type|thickness|down))?(?: ?[:=]| - | \d))", (("x", "inches."),)),
    # --- what is still open
    Plainer(("open", "remain", "outstanding", "left", "incomplete", "balance", "punch", "not done", "to do", "todo", "to complete"), rf"{_BEGINS}(?P<x>{_TODO}(?: ?[:=] ?| - ))(?=(?:the )?(?:tape|taping|rub|staple|stapling|vanes|trim|bend|wipe|mastic|seal)[a-z]*(?![\w']))", (("x", "still have to do: "),)),
    # --- in a message, without signs
    Plainer((" tbd", " tba"), r"(?:vanes|tape|taping|staples|rub|rubbing|trim)(?P<x> tb[da])(?![\w'])", (("x", ": to do"),)),
    Plainer((" cloth", " duct", " masking"), rf"taped? (?:with|w/|w|using) (?P<x>cloth|duct|masking|gray|grey){_ENDS}", (("x", r"\g<x> tape"),)),
    Plainer((" rub ", " rub,"), rf"taped(?P<x>,? ?(?:but )?(?:rub|rubbing|rub down) (?=(?:{_LATER}|tomorrow|later|monday|tuesday|wednesday|thursday|friday|next week|after lunch|in the morning|tonight)(?![\w'])))", (("x", ", still have to rub "),)),
    Plainer(("out of tape", "outta tape", "out of staples", "outta staples"), rf"(?:ran|run|all|we're|i'm|is|was) (?:out of|outta|outa) (?P<t>tape|staples)(?P<x>[,.;]? (?:so )?(?:just |only )?(?:stapled|taped)(?: (?:only|is all))?){_ENDS}", (("x", r"\g<x>, no \g<t>"),)),
)
