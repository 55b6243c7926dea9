"""English of who learned it on the site: verbs without endings, articles left out, the thing ahead of the "no".

"The rubbing I no have time", "somebody take my tape so is no tape", "they bend inward", "corner is crush, I no change nothing".
Rows like those of `plainer.py`; what is told so in the present is in `composed/in_the_present.py`.
"""

from __future__ import annotations

from logbook.languages.plainer import Plainer

_DENIED = r"(?:no|not|don't|dont|do not|didn't|did not|never)"
_ENDS = r"(?=[.,;!]|$| (?:because|cause|and|but|so|for|today|yet|sorry|boss)(?![\w']))"
_NEW = r"(?:the |a |an |my |some |more |new |other |another |next |from |shop |that )*"
_STUFF = r"(?:box|roll|tape|staples?|gun|vanes?|delivery|order|truck|material|materials|mastic|pail|bucket|stock|one|tool|squeegee|rolls|boxes)"
_KIND = r"(?:straight|elbow|tee|wye|branch|cap|end cap|collar|transition|reducer|offset|plenum)"
_HUNDREDS = r"(?:(?:one|two|three|a) hundred(?: and)?(?: (?:(?:twen|thir|for|fif|six|seven|eigh|nine)ty|\w+teen|ten|eleven|twelve|one|two|three|four|five|six|seven|eight|nine)){0,2}|[1-3]\d\d)"
_LEGS = r"(?:bend|bends|bent|close|closes|closed|turn|turns|turned|fold|folds|folded|curl|curls|curled|go|goes|went|point|points|look|looks|face|faces)"
_THEY = rf"(?:they(?: all| is| are)? {_LEGS}|(?:the )?legs?(?: all| is| are| was)? (?:{_LEGS}|is|are|come|comes))(?: over)?"


def _no_time(said: str, done: str) -> Plainer:
    """ "The rubbing I no have time", "tape no time": the act ahead of the time for it."""
    return Plainer(
        (" time", " chance"),
        rf"(?:^|(?<=[.,;!] )|(?<= and )|(?<= but ))(?P<x>(?:for |to )?(?:the )?{said}(?: down)?,? (?:(?:i|we) )?(?:{_DENIED}(?: have| got| get| had)?|no more)(?: the| enough| any| more)* (?:time|chance)(?: (?:to do|for|to do it|for it|for that))?){_ENDS}",
        (("x", f"I did not {done}"),),
    )


ENGLISH_LEARNED_ON_SITE = (
    *(_no_time(*row) for row in (("(?:rubbing|rub)", "rub it down"), ("(?:taping|tape)", "tape it"), ("(?:stapling|staples?)", "staple it"), ("(?:trimming|trim)", "trim it"), ("(?:cleaning|wiping|clean|wipe)", "wipe it"), ("(?:turning )?vanes?", "put the vanes in"))),
    # --- the cause, and what is not there for it
    Plainer((" so is no ", " so no ", " so there is no ", " so is not ", " so not have ", " so no have "), r"(?:take|took|takes|steal|stole|bring|brings|brought|lost|lose|break|broke|broken|is broke|is jam|is freeze|is empty|is finish)(?![\w'])[^.?!;]{0,30}?(?P<x>,? so (?:there )?(?:is |has |have )?(?:no|not have|no have) )(?=(?:tape|staples?|vanes?|mastic|tabs?|rub)(?: (?:on|in|at|here)(?: (?!for)\w+){0,3})?(?:[.,;!]|$))", (("x", ". no "),)),
    # --- the legs of the staples, told of by "they"
    Plainer(("to the inside", "to inside", " inward", " inside"), rf"staples?(?![\w'])(?:(?!vane|tape|tab|cap|flap)[^.?!]){{0,40}}?(?P<x>(?:[.,;]|,? but|,? and) (?:but |and )?{_THEY} (?:(?:to )?(?:the )?inside|inwards?))(?: (?:of (?:the )?(?:duct|board|box)))?(?P<y>,? (?:and )?(?:not|no|instead of)(?: to)?(?: the)? (?:outside|outwards?))?(?=[.,;!]|$)", (("x", ", the legs are clinched inward"), ("y", ""))),
    Plainer(("to the outside", "to outside", " outward", " outside"), rf"staples?(?![\w'])(?:(?!vane|tape|tab|cap|flap)[^.?!]){{0,40}}?(?P<x>(?:[.,;]|,? but|,? and) (?:but |and )?{_THEY} (?:(?:to )?(?:the )?outside|outwards?))(?P<y>,? (?:and )?(?:not|no|instead of)(?: to)?(?: the)? (?:inside|inwards?))?(?=[.,;!]|$)", (("x", ", the legs are clinched outward"), ("y", ""))),
    # --- the flap that came off
    Plainer(("flap ",), r"flap(?P<x> (?:is |was |get |got |it |has )?(?:break|brake|brakes|breaks|broke|broken|tear|rip|fall|fell|come|came|torn|ripped)(?: it)? (?:off|away))(?![\w'])", (("x", " is gone"),), unless=r"tape[^.?!]{0,20}flap"),
    # --- harm that was left as it is, or only covered
    Plainer((" change", " touch", " repair", " fix", " do "), rf"(?:crush|crushed|dent|dented|tear|torn|hole|wet|rip|ripped|cut|puncture|broke|broken|split|delaminate|delaminated|damage|damaged)(?![\w'])[^?!]{{0,40}}?[.,;] (?:but |and )?(?P<x>(?:i|we) (?:no|not|don't|didn't) (?:change|touch|repair|fix|do) (?:nothing|anything|no thing|it|the board|the panel|that)(?: (?:for|about) (?:it|that))?){_ENDS}", (("x", "I did not repair it"),)),
    Plainer((" with tape", " with the tape", " with piece of tape", " with a piece of tape"), rf"(?<!no )(?<!any )(?:crush|crushed|dent|tear|torn|(?<!cut the )(?<!cut a )(?<!made a )(?<!made the )hole|rip|puncture|split|gash|slit)(?![\w'])(?! for)[^?!]{{0,40}}?[.,;] (?:but |and )?(?:i|we) (?:only |just )?(?P<x>(?:fix|cover|repair|patch|close|fixed|covered)(?: only| just)? with (?:the |a |only |just )*(?:piece of |little |some )*tape(?: only| over)?){_ENDS}", (("x", "patched it with tape"),)),
    # --- what he waits for, behind what is not there
    Plainer((" wait",), rf"no (?P<t>tape|staples|vanes|mastic)(?! left| came| come| more|[\w'])[^.?!]{{0,30}}?[.,;] (?:so |and |because )?(?P<x>(?:i|we|is|am|i'm)(?: am| is| still)? wait(?:s|ing)?(?: for| to)? {_NEW}{_STUFF})(?: (?:from|of) [\w ]{{1,20}})?{_ENDS}", (("x", r"waiting for \g<t>"),)),
    Plainer(("no put ", "not put ", "no tape again", "no install "), r"tape (?:was|is) on[^?!]{0,40}? (?:off|away|out)[.,;] (?:but |and )?(?P<x>(?:i |we )?(?:no|not) (?:put|tape|install)(?: it)? (?:again|back|new)(?: on)?(?: yet)?)(?=[.,;!]|$)", (("x", "have not taped it again yet"),)),
    # --- the bare thing ahead of a bare verb
    *(Plainer((" no put", " not put", " no there", " not there", " no install"), rf"(?:^|(?<=[.,;!] )|(?<= but )|(?<= and ))(?:the )?{thing}(?P<x> (?:is |was )?(?:no|not) (?:put|install|there))(?: yet)?{_ENDS}", (("x", plain),)) for thing, plain in (("(?:tape|mastic)", " is not on"), ("staples?", "s are not in"), ("vanes", " are not in"))),
    # --- "cut" is no work done where it is still to do
    Plainer((" extra ", " excess "), r"(?:must|need|needs|need to|needs to|have to|has to|will|tomorrow i|later i|i no|i not|no) (?:still )?(?P<x>(?:cut|trim)(?: off)? (?:the )?(?:extra|excess) (?:insulation|glass|board))(?![\w'])", (("x", "trim the insulation"),)),
    # --- the facing, wiped before
    Plainer(("clean ", "wipe "), r"(?:^|(?<=[.,;!] ))(?P<x>(?:clean|wipe)(?: it| all| everything| good| well| the (?:facing|foil|board))*(?: (?:before|first))? with (?:the |a |an |my |dry |clean |good |one )*(?:rag|cloth|towel)(?: (?:before|first))?)(?=[.,;!]|$)", (("x", "I wiped it clean"),), unless=r"(?<![\w'])(?:tomorrow|must|need|needs|should|always|have to|has to|later|will|please|remember|next time|don't forget|make sure)(?![\w'])"),
    # --- one side that has none
    *(Plainer((" missing ", " miss ", " misses "), rf"(?:tape|staples?)(?P<x> (?:is |are )?(?:missing|miss|misses)(?: (?:on|in|at))? {gone} sides?)(?=[.,;!]|$)", (("x", f" only on {left}"),)) for gone, left in (("(?:one|1)", "three sides"), ("(?:two|2)", "two sides"), ("(?:three|3)", "one side"))),
    # --- a joint to the next piece, and nothing in it
    Plainer((" in that joint", " on that joint", " in this joint", " in the joint", " at that joint", " in that connection"), r"(?:joint|connection|union) (?:with|to) [^.?!]{1,24}? (?:open|not close|no close|not closed)[^.?!]{0,10}?(?P<x>,? no (?:staples?|tape)(?:,| and| or|)(?: no)? (?:staples?|tape) (?:in|on|at) (?:that|this|the) (?:joint|connection|union))", (("x", ""),)),
    # --- the two ends of a branch
    Plainer(("big ", "bigger "), r"branch[.,;] (?:[^?!]{0,40}[.,;] )?(?P<x>(?:the )?big(?:ger)? (?:duct|one|pipe|box|opening|size|part)(?: is)?)(?= [\w]+(?: [\w]+)? by )[^.?!]{1,30}?[.,;] (?:and )?(?P<y>(?:the )?small(?:er)? (?:duct|one|pipe|box|opening|size|part)(?: is)?)(?= [\w]+(?: [\w]+)? by )", (("x", "trunk"), ("y", "branch"))),
    Plainer(("run ",), r"(?:^|[.!] |finish |make |do )(?:number |piece |fitting )+[\w-]+(?: [\w-]+)?(?P<x>,? (?:on )?(?P<r>run (?:number )?[\w-]+),) branch(?=[.,])", (("x", r" on \g<r> is a"),)),
    # --- a piece of a hundred and more, behind a verb without ending
    Plainer(("i do ", "i make ", "i finish ", "we do ", "we make ", "we finish ", "i did ", "i made "), rf"(?:^|(?<=[.!?;,] )|(?<=today ))(?P<x>(?:i|we) (?:do|make|finish|did|made))(?= {_HUNDREDS}, (?:it's |is |a |an |the )*(?:[\w-]+ )?{_KIND}(?![\w']))", (("x", "number"),)),
)
