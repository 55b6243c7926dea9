"""English of work that is told of in a frame that does not say it was done: "is listed as taped", "no more taped than I am", "is short of being stapled", "no way is it taped".

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.plainer import Plainer

_DONE = r"(?:taped|stapled|rubbed(?: down| out)?|wiped(?: down)?|trimmed|sealed|patched|fixed|mended|repaired|pre-?heated)(?![\w])"
_DOING = r"(?:taping|stapling|rubbing(?: (?:down|out))?|wiping(?: down)?|trimming|patching|mending|sealing)(?![\w])"
_NAMED = rf"(?:(?:{KIND}|number) (?:number )?(?:[a-z]-?)?{NUMBER}|it|this one|that one)"
_IS = r"(?:is|was|got|gets|'s|has been|been)"
_SO = r"(?: (?:still|just|all|only|already|always|now))*"
_ENDS = r"(?=[.,;!]|$)"

ENGLISH_HARDLY_SO = (
    # --- as it is written or believed
    Plainer(
        (" as ", " to be ", " marked", " assumed", " presumed", " hopefully", " believed", " thought", " considered", " reported", " rumored", " called"),
        rf"(?<![\w]){_IS}{_SO}(?P<x> (?:(?:listed|logged|marked|marked down|down|written up|wrote up|recorded|entered|reported|noted|put down|signed off|shown|checked off|carried|counted|tagged|set down) as(?: being| all)?|(?:said|rumored|believed|assumed|presumed|thought|reported|alleged|understood|considered) to (?:be|have been)|assumed|presumed|marked|tagged|reported|hopefully))(?= {_DONE})",
        (("x", " supposedly"),),
    ),
    Plainer((" may ", " has got to be", " can be"), rf"{_NAMED},? (?:(?P<x>may (?:very |just )?(?:well )?have been)|(?P<y>(?:has|'s) got to be)|(?P<z>can be))(?= {_DONE}(?! (?:down |up )?(?:yet|still|tomorrow|later|after|before)(?![\w])))", (("x", "might have been"), ("y", "must be"), ("z", "could be"))),
    # --- no more so than something that is not
    Plainer((" no more ",), rf"(?<![\w])(?:{_IS}|ain't){_SO}(?P<x> no more) {_DONE}(?P<y> than [^.?!,;]*)", (("x", " not"), ("y", ""))),
    Plainer((" less than ", " short of ", " missed ", " dodged ", " ducked ", " escaped ", " shy of "), rf"{_NAMED}(?:,? )(?P<x>(?:(?:is|was|'s|came up|fell)(?: (?:well|way|far|a bit|a little|just))* (?:less than|short of|shy of)(?: being| getting)?|(?:missed|dodged|ducked|escaped)(?: (?:being|getting))))(?= {_DONE})", (("x", "isn't"),)),
    Plainer((" before being", " before getting", " before ever"), rf"(?P<x>before (?:ever )?(?:being|getting))(?= {_DONE})", (("x", "before it was"),)),
    Plainer((" instead of being", " instead of getting", " rather than"), rf"(?:hung|built|made|left|shipped|sent|painted|set|put|up|out)(?: (?:up|out|over|in|on))*(?P<x>,? (?:instead of (?:being|getting)|rather than(?: being| getting)?))(?= {_DONE})", (("x", ", not"),)),
    # --- the work by its name
    Plainer(("ing",), rf"{_NAMED}(?:,? )(?P<x>(?:(?:is|'s)(?: (?:still|now|next))* (?:up|slated|scheduled|overdue) for|requires|calls for|wants|demands))(?= (?:the |a |some |more |its )?{_DOING})", (("x", "still needs"),), beside=(" for ", " requires", " wants", " demands")),
    Plainer(("ing",), rf"{_NAMED}(?:,? )(?P<x>(?:escaped|avoided|dodged|ducked|missed out on|missed|went without|skipped)(?: (?:the|any|all))?) (?P<w>{_DOING}){_ENDS}", (("x", "didn't get any"),), beside=("escaped", "avoided", "dodged", "ducked", "missed", " went without", "skipped")),
    Plainer((" gave up ", " quit on ", " bailed on "), r"(?:i|we) (?P<x>(?:just )?(?:gave up(?: on)?|quit on|bailed on))(?= (?P<v>tap|stapl|rubb|wip|trimm)ing(?: down)?(?![\w]))", (("x", "didn't finish"),)),
    # --- what they would like, what he only said, what he will not believe
    Plainer(("'d like ", " would like "), rf"(?:they|he|she|(?:the |my )?(?:boss|foreman|lead|super|office|inspector|gc|engineer))(?P<x>(?:'d| would) like)(?= {_NAMED} {_DONE})", (("x", " wants"),)),
    Plainer((" only said", " only told", " only claimed", " just said", " only pretended"), rf"(?:i|we) (?P<x>(?:only|just) (?:said|claimed|pretended|let on|told (?:him|her|them|the \w+|you))(?: that)? (?:i|we)(?:'d| had)?)(?= {_DONE})", (("x", "never"),)),
    Plainer((" refuse to believe", " deny ", " can't believe", " won't believe"), rf"(?:i|we) (?P<x>(?:refuse to believe|deny|won't believe)(?: that)?)(?= {_NAMED} (?:is|was|has been|got) {_DONE})", (("x", "doubt"),)),
    Plainer(("no way ", "no means ", "no time "), rf"(?P<x>(?:there's )?(?:in no way|no way|by no means|at no time) (?:is|was|has|had|did)(?: anybody call)? )(?P<n>{_NAMED})(?P<y>(?: been| get| got)?)(?= {_DONE})", (("x", ""), ("y", " is not"))),
    Plainer(("no circumstances ", "no account "), rf"(?P<x>(?:under no circumstances|on no account) (?:can you |should you |would i )?(?:call|mark|log|put|write))(?= {_NAMED}(?: down)?(?: as)? {_DONE})", (("x", "don't call"),)),
)
