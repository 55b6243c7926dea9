"""English of a man who turns his words before he comes to what he did: what was promised and never went in, what he is asked about and answers with a jest, what another would have skipped.

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND, NUMBER
from logbook.languages.en.measured import _M
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_ENDS = r"(?=[.,;!]|$)"
_THING = r"(?:turning vanes|vanes|staples|tape|mastic|washers|tie rods|cross tabs|insulation)"
_PIECE = rf"(?:(?:the )?{KIND} (?:number )?{NUMBER}|(?:number )?{NUMBER}|it|this one|that one)"
_WHAT = r"(?:(?:some|a bit of|plain|regular|ordinary|cheap|just|only|old|that|the|cloth|grey|gray|silver|black|clear|blue|green|brown) )*"
_STUFF = r"(?:(?:duct|masking|packing|painter's|painters|electrical|cloth|foil|metal|scotch|gaffer|box|vinyl) tape|181[ab]?(?:-?[a-z])?|pressure[- ]sensitive tape|heat[- ]activated tape|tape)"
_LATER = r"(?:tomorrow|today|tonight|later|monday|tuesday|wednesday|thursday|friday|this morning|this afternoon|in the morning|next week|first thing)"
_WHO = r"(?:the |my |our )?(?:boss|lead|foreman|super|superintendent|inspector|gc|pm|old man|office|engineer|helper|partner|other guy|kid|owner)"
_ACTS = r"(?:stapled|taped|rubbed(?: down)?|trimmed|wiped|warmed|patched|sealed|vaned)"
_AND_SAID = rf"(?:,? (?:and|but|so)|[.;]) {_I} (?:said|told (?:him|her|them|the \w+)|answered|went)(?: (?:just|only))*,? "
_TRUTH = r"(?:between you and me|between us|truth is|the truth is|truth be told|to tell (?:you )?the truth|in truth|of course|in fact|actually|really|fact is|honestly|to be honest|naturally|obviously)"
_JEST = r"(?: (?:just|only))?(?: (?:to (?:see (?:his|her|their) face|wind (?:him|her|them) up|get a rise(?: out of (?:him|her|them))?|tease (?:him|her|them)|rib (?:him|her|them)|mess with (?:him|her|them)|annoy (?:him|her|them)|shut (?:him|her|them) up|get rid of (?:him|her|them)|keep (?:him|her|them) (?:happy|quiet)|make (?:him|her|them) (?:happy|go away|sweat|laugh))|as a joke|for a laugh|for fun|for the fun of it))"
_MORE = rf"(?:(?:but|and|well|no|yes|though|{_TRUTH}),? (?:(?:is|that) )?)*"
_BUT = rf"(?:[;,.] (?:and |well,? )?(?:but|though|{_TRUTH}),? (?:(?:is|that) )?|,? but )"
_AFTER = rf"(?:{_JEST}(?:[;,.]|,? but) {_MORE}|{_BUT}{_MORE})"  # in jest, or set against what he said
_ALL_OF_IT = r"(?!,? (?:though|however|but|only|at least|staple|tape|rub|wipe|trim)(?![\w']))"
_PART = r"(?:(?:the )?(?:top|bottom|left|right|front|back|heel|throat)(?: side| seam| edge)?)"
_YES = r"(?:yes|yeah|yep|done|good|ok|okay)"
_NOT = r"(?:no|nope|not yet|not done|not)"
_MEAL = r"(?:sandwich|burger|pizza|burrito|hot dog|donut|doughnut|coffee|lunch|breakfast|sub|hoagie|taco|tacos|pie|steak|soup|salad)"
_SIZE = rf"{_M}(?: by {_M})?(?: inch(?:es)?)?"


def _asked(said: str, truth: str, is_so: str) -> Plainer:
    """What he told the asker, and behind it how it is: the last is read as the answer."""
    return Plainer(
        (" asked", " asks", " wanted to know", " wants to know"),
        rf"(?:(?<=[.!;] )|^)(?P<w>{_WHO} (?:asked|asks|wanted to know|wants to know)(?: me| us)?,? )(?P<q>(?:if |whether |had |have |did )(?:{_I}(?: had|'d|'ve)? ))(?:(?:ever|even|actually) )?(?P<a>{_ACTS}) (?P<p>{_PIECE})(?P<x>{_AND_SAID}(?:that )?(?:{said}){_AFTER}(?P<i>{_I})(?: still)? {truth}(?: (?:at all|so|it|that))?){_ENDS}{_ALL_OF_IT}",
        (("w", ""), ("q", "had i "), ("x", f"? {is_so}")),
        beside=(" said", " told ", " answered", " went"),
    )


ENGLISH_COMING_ROUND = (
    # --- what was said of them, and that none went in
    Plainer(
        (" none ", " not one ", " never "),
        rf"(?:(?<=[.,;!] )|(?<=and )|(?<=but )|^)(?P<x>(?:whatever|no matter what|regardless of what|never mind what|for all that|despite what) (?:(?!{KIND} )[\w']+ ){{1,7}}(?:about|of|on|for) (?:the |any |those |some )?(?P<t>{_THING}),? (?:none|not one)(?: of (?:them|it))?)(?= (?:ever |has |have |was |were )?(?:ever )?(?:went|made it|got put|were put|was put|gone|been put|is in|are in|got used|found its way))",
        (("x", r"no \g<t>"),),
        beside=("whatever", "no matter", "regardless", "never mind", "for all", "despite"),
    ),
    # --- what there is on it
    Plainer(
        ("on it", "on there", "on the seams", "on this one", "on that one"),
        rf"(?:(?<=[.,;!:] )|(?<=so )|(?<=but )|(?<=and )|^)(?P<x>what(?:'s| is| went| ended up| wound up| got put)(?: now)? on (?:it|there|the seams|this one|that one)(?: now| right now| at the moment)? (?:is|was) )(?={_WHAT}{_STUFF}{_ENDS})",
        (("x", "it's taped with "),),
        beside=("what's on", "what is on", "what went", "what ended", "what wound", "what got"),
    ),
    # --- asked of himself, and answered; and whether it is there yet
    Plainer(
        ("there was", "there is"),
        rf"(?:(?<=[.!?;] )|^)(?P<x>(?:was|is) there )(?P<a>an? (?:[a-z]+ ){{1,3}}(?:in|on|at) (?:the \w+ of )?(?:the )?{KIND} (?:number )?{NUMBER})(?P<y>\? (?:yes|yeah|yep|sure|oh yes)?[,.]? ?there (?:was|is))(?P<z>,|(?=\.))",
        (("x", "there was "), ("y", ""), ("z", ",")),
        beside=("was there a", "is there a"),
    ),
    Plainer((" now? no", " still? no", " anymore? no", " any more? no", " today? no"), r"(?:(?<=[.!?;] )|^)(?P<x>(?:is|are) (?:there (?:still )?(?:one|a \w+|any|some)|it still there)(?: in it| there)?(?: now| still| anymore| any more| today)?\? (?:no|nope|not any ?more|not now|no longer)[,.] (?:because |'cause |since )?)(?=(?:i|we)(?:'ve)? (?:taped|patched|closed|covered|fixed|repaired|mended))", (("x", ""),)),
    # --- what he cannot claim of the facing is not so
    Plainer(
        (" claim ", " pretend ", "be lying"),
        rf"(?P<x>{_I} (?:can't|cannot|can not|couldn't|won't) (?:claim|pretend)(?: that)? |{_I}(?:'d| would) be lying if {_I} (?:said|told you|claimed)(?: that)? )(?=(?:the )?(?:facing|board|surface|face|foil|seams?|it)(?: (?:around it|round it|around there|there|on it|at the seams?))? (?:was|were))(?:the )?(?:facing|board|surface|face|foil|seams?|it)(?: (?:around it|round it|around there|there|on it|at the seams?))? (?P<y>was|were)(?= (?:clean|wiped|dry|dusted)(?![\w']))",
        (("x", ""), ("y", r"\g<y> not")),
    ),
    # --- the same on the other piece, of another width
    Plainer(
        (" same but", " same, but", " same tape but", " same stuff but", " same only", " same tape, but", " same stuff, but"),
        rf"(?P<k>{KIND}) (?:number )?(?P<n>{NUMBER})[.,:;]? (?:[^.?!]{{0,60}}?[.,] )?(?:the )?tape on (?:the )?(?:{KIND})(?: (?:number )?{NUMBER})? is (?:the )?(?P<c>{_STUFF})[^.?!]{{0,30}}(?P<x>[,;.] (?:and |but )?(?:on )?(?:the )?(?P=k)(?: (?:number )?{NUMBER})?(?: it's|'s| is| has| got| it is)? (?:the )?same(?: tape| stuff| kind| thing)?,? (?:but|only)(?: (?:it's|in|just|only))* )(?P<m>{_M})(?P<z>(?: inch(?:es)?)?(?: wide)?){_ENDS}",
        (("x", r", the tape on \g<k> \g<n> is \g<c> "), ("z", " wide")),
    ),
    # --- what the answer is to what he was asked
    Plainer(
        ("answer to whether", "answer on whether", "answer to if"),
        r"(?P<x>(?:(?:but|and|well|so) )?(?:the|my) answer (?:to|on) (?:whether|if) (?=(?:i|we) ))[^.?!,;]{4,60}?(?P<y> (?:is|was)(?: a| still| still a)?)(?= (?:no|yes|not yet)(?![\w']))(?: (?:no|yes|not yet))(?:(?P<z>,? and (?:to |on )(?:whether|if) )(?=(?:i|we) )[^.?!,;]{4,60}?(?P<e>,?(?: is| was)?(?: a)?)(?= (?:no|yes|not yet)(?![\w'])))?",
        (("x", "did "), ("y", "?"), ("z", ". did "), ("e", "?")),
    ),
    # --- what another would have skipped, and he did not
    Plainer(
        (" would have ", " would've ", "'d have "),
        rf"(?P<x>the (?P<t>{_THING}|rub|rubbing down|taping|stapling),? (?:which|that) (?:(?:the|a|any|some|my|most|that) )?(?:[\w']+ ){{1,7}}?(?:would have|would've|'d have) (?:skipped|left out|left off|forgotten|forgot|missed|passed over),? (?P<i>{_I}) (?P<n>didn't|did not|never did))(?: (?:skip|leave out|leave off|forget|miss))?{_ENDS}",
        (("x", r"\g<i> didn't skip the \g<t>"),),
    ),
    # --- what he told the boss, and how it is
    _asked(r"no|nope|not yet|no way|never", r"(?:had|did|have)(?! not)", "yes"),
    _asked(r"yes|yeah|yep|sure|sure thing|of course|yes sir|sure did|it was|i had|i did|all done", r"(?:hadn't|didn't|haven't|had not|did not|have not|never did|never had)(?: and i still (?:haven't|have not))?", "no"),
    # --- what he said he would do, and when the time came did
    Plainer(
        (" came", " is here", "'s here", "has come"),
        rf"(?P<x>{_I} (?:said|told (?:you|him|them)|promised)(?: (?:yesterday|monday|tuesday|wednesday|thursday|friday|last week|this morning|last night))?(?: that)? {_I}(?:'d| would) (?:tape|staple|rub|trim|wipe|hang|patch)(?: (?:it|this|that|this one))?(?: (?:down|up))?(?: on| by)? {_LATER}[,.;]? (?:and |well,? |but )*{_LATER}(?: came(?: around| round)?| is here|'s here| has come)(?:,? and|[,;.])(?: so)?) (?=it's |it is |{_I}(?:'ve)? (?:did|have|taped|stapled|rubbed|trimmed|wiped|hung|patched))",
        (("x", ""),),
        beside=("i'd ", "would "),
    ),
    # --- a list of sides with a yes or a no behind each: the one with a no tells of it
    Plainer(
        (" no", " nope", " not"),
        rf"(?:(?<=[.,;!:] )|^)(?P<x>(?:(?:all |its |the |four |all four )?(?:sides|seams|edges) )?(?P<a>taped|stapled|rubbed down|rubbed|wiped|trimmed)(?: (?:sides|seams|edges|down))?[:,-] ?(?:{_PART}[:,]? {_YES},? (?:and |but )?)*)(?P<p>{_PART})(?P<y>[:,]? {_NOT})(?P<z>(?:,? (?:and )?{_PART}[:,]? (?:{_YES}|{_NOT}))*){_ENDS}",
        (("x", ""), ("y", r" is not \g<a>"), ("z", "")),
        beside=(" yes", " yeah", " yep", " done", " good", " ok"),
    ),
    Plainer((" regardless",), r"(?:put|left|used|installed|set|stuck|shot|ran|taped|stapled|rubbed|wiped|trimmed|bent)(?: [\w']+){0,4}?(?P<x> regardless)(?=[.,;!]|$)", (("x", " anyway"),)),
    # --- what was meant for it, and what it came out as
    Plainer((" came out", " ended up", " wound up", " turned out"), rf"(?P<x>(?:was|were) (?:to have been|to be|meant to be|supposed to be|going to be) {_SIZE}(?:,? but|,? and|[,;])(?: (?:it|that))? (?:came out|ended up|wound up|turned out)(?: (?:at|as|to be|being|only))* )(?={_M} by )", (("x", "is "),)),
    Plainer((", not ",), rf"(?<=, )(?P<x>not (?:the |an? )?(?:inch and a (?:half|quarter)|{_M})(?: (?:inch|inches|board|stuff|one))*(?: that| which)? (?:i|we|they|he|she|you|the \w+) (?:said|told (?:you|him|them)|thought|promised|figured|expected)(?: (?!and |but )[\w']+){{0,4}}, )", (("x", ""),)),
    Plainer(("right the first time",), rf"(?:(?<=length )|(?<=width )|(?<=height )|(?<=size )|(?<=spacing )|(?<=offset )|(?<=pressure ))(?P<x>was right (?:the first time|at first|to begin with)[,:] )(?={_M})(?:{_M})(?: (?:inch|inches))?(?P<y>,? (?:so )?(?:forget|scratch|never mind|ignore|strike|not) (?:the|about the|that) {_M})?{_ENDS}", (("x", "is "), ("y", ""))),
    Plainer(
        ("sticker", "label", " tag "),
        rf"(?P<x>(?:don't|do not|never) (?:believe|trust|go by|mind|listen to) (?:the|that|its) (?:sticker|label|tag) on )(?:the )?{KIND} (?:number )?{NUMBER}(?P<y>(?:,? (?:that|which|it))? (?:says|reads|saying|reading|said) (?:an? )?{_M}(?: inch(?:es)?)?[,;.] (?:(?:because|but|really),? )*(?:it's|it is)(?: (?:really|actually))?) (?:an? )?{_M}(?P<z>(?: inch(?:es)?)?){_ENDS}",
        (("x", ""), ("y", " is"), ("z", " inch")),
        beside=("believe", "trust", "go by", "mind", "listen"),
    ),
    # --- the one act that it has had
    *(
        Plainer((f"{doing}'s all", f"{doing} is all", f"{doing} was all"), rf"(?P<x>(?:the )?{doing}(?:'s| is| was) all (?:that's|that has|that|it's|it has|it) (?:happened to it|been done(?: to it)?|got done(?: to it)?|had|gotten|got)(?: (?:today|so far|yet|now))*){_ENDS}", (("x", f"it's only been {done}"),))
        for doing, done in (("stapling", "stapled"), ("taping", "taped"), ("rubbing", "rubbed"))
    ),
    Plainer(
        ("every intention of",),
        r"(?P<x>had (?:every|the full|the best) intention of )(?:(?P<a>patching)|(?P<b>taping)|(?P<c>stapling)|(?P<d>rubbing)|(?P<e>trimming)|(?P<f>wiping)|(?P<g>fixing)|(?P<h>mending))(?![\w'])",
        (("x", "was going to "), ("a", "patch"), ("b", "tape"), ("c", "staple"), ("d", "rub"), ("e", "trim"), ("f", "wipe"), ("g", "fix"), ("h", "mend")),
    ),
    # --- a meal that he left
    Plainer((" finish it", " finished it", " finish that", " finish mine"), rf"(?<![\w']){_MEAL}(?![\w'])(?: (?!tap|stapl|rub|trim|wip|fix|patch|hung|hang|cut)[\w']+){{0,7}}?(?P<x> (?:and|but)(?: (?:i|then))* (?:didn't|did not|couldn't|never)(?: even)? finish(?:ed)? (?:it|that|mine))(?=[.,;!]|$)", (("x", ""),), unless=r"(?<![\w'])(?:lunch|coffee|breakfast)[^.?!]{0,40}(?:finish|finished) (?:it|that)"),
    # --- how it was left, where another may have come by since
    Plainer(("unless ",), rf"(?:(?<=[.!?;] )|^)(?P<x>unless (?!i |we |you |it )(?:the )?[\w']+(?: crew| shift| guy)? (?:got to|gets to|finished|came back to|did|touched|taped|stapled|rubbed)(?: it| that| them)?(?: (?:overnight|last night|since|already|in the night|this morning|behind my back|after i left))*,(?: which (?:he|she|they|nobody|never)(?: (?!is |has )[\w']+){{1,4}},)? )(?=(?:{KIND} (?:number )?{NUMBER}|(?:number )?{NUMBER}) (?:isn't|is not|hasn't|still|is still|has no|never))", (("x", "i think "),)),
    # --- the heat of the day, where he speaks of no work
    Plainer((" degrees by ",), rf"(?P<x>(?:it|it'd) (?:was|got to|hit|had been|been|must have been) {_M} degrees by )(?=(?:noon|lunch|midday|\w+ o'clock|two|three|ten|eleven|the afternoon))", (("x", "it was hot by "),), unless=rf"(?<![\w'])(?:straight|elbow|tee|wye|branch|end cap|cap|collar|transition|offset|plenum|door|sleeve|piece|fitting|number|tape|taped|taping|mastic|facing|board|surface|seams?|joints?|rubbed|stapled|{NUMBER} (?:is|was|isn't|got|has))(?![\w'])"),
)
