"""English that crews say every day, and the plain words for it: measures listed behind their thing, what would be rejected, what a tool does to every staple, part of the vanes that were drawn."""

from __future__ import annotations

from logbook.languages.en.left_plainly import KIND
from logbook.languages.en.numbers import SAID_COUNT, SAID_NUMBER
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_MARK = rf"(?:(?:number |{KIND} )?(?:\d{{1,3}}|{SAID_COUNT}))"
_AT = rf" (?:(?:at|is at|are at|every|is|are) )?{SAID_NUMBER}(?: (?:feet|foot|ft|inch|inches|in))?"
_SHEET = r"(?:drawing|print|plan|plans|sheet|card|ticket|detail|submittal|cut list|shop drawing)"
_DRAWN = rf"(?:the |my |our |that )?{_SHEET}(?: (?:says|shows|wants|has|calls for|asks for|gives|lists|called for|showed|said|had|wanted))"
_FEW = r"(?:one|two|three|four|five|six|1|2|3|4|5|6)"
_MORE = r"(?:two|three|four|five|six|seven|eight|nine|ten|2|3|4|5|6|7|8|9|10)"
_TURNS = r"(?:clinches|turns|bends|curls|folds|rolls|drives|shoots|throws|sets|points|is clinching|is turning|is bending|is curling|is folding|was clinching|was turning|was bending|was curling|was folding|clinched|turned|bent|curled|folded)"
_CLOTH = r"(?:cloth|duct|masking|packing|gray|grey|silver|fabric|electrical|vinyl|wrong|old|bad)"
_REJECTS = r"(?:reject|fail|flag|bounce|refuse|kick back|red[- ]tag|turn down|send back|write up|not (?:pass|accept|take|sign)|pull down|tear out)"
_JUDGE = r"(?:the |my |our )?(?:lead|inspector|foreman|super|engineer|boss|office|city|gc|he|she|they)"


def _first_of(thing: str) -> Plainer:
    """ "Hangers: 139 at six feet, 140 at eight": those behind have been written out, the first has not."""
    return Plainer(
        (f"{thing}: ", f"{thing}, ", f"{thing} - "),
        rf"(?:^|(?<=[.;!?\n] ))(?P<x>(?:the )?{thing}(?: spacing)?(?::|,| -) )(?:number |piece )?\d{{1,3}}(?P<a>){_AT}(?=[,.] (?:and )?(?:number|{KIND}) \d+ (?:is|has) )",
        (("x", "number "), ("a", f" {thing}")),
    )


ENGLISH_USUAL_PLAINLY = (
    # --- one thing, and how far apart it is on each of the pieces
    _first_of("hangers"),
    _first_of("staples"),
    _first_of("straps"),
    _first_of("screws"),
    # --- what would be rejected, if it were so
    Plainer(
        (" if ",),
        rf"{_JUDGE}(?: (?:will|would|is going to|is gonna|has to|can|could|won't|wouldn't|may|might|just)|'ll|'d)+ {_REJECTS} (?:it|this|that|them|this one|that one|{KIND} (?:number )?\d+|(?:number )?\d+)(?: (?:again|right away|on the spot|tomorrow|for sure))*(?P<x>,? (?:even )?if (?:the |its |my |any |any of the |one of the )?(?:staples?|tape|legs?|tabs?|vanes|seams?|joints?|hangers?|gap|it|they|there)(?![\w'])[^.?!;]*)(?=[.;!]|$)",
        (("x", ""),),
    ),
    # --- part of the vanes that were drawn
    Plainer(
        ("where the ", "where my ", "and the ", "but the ", "when the ", ", the "),
        rf"(?P<x>(?:(?:there's|there are|there is|i've got|it's got|it has|i have|we have|has|got|only|just|i put|we put|i got) )+{_FEW}(?: (?:of them|vanes|turning vanes|blades))?(?: (?:in|into) (?:it|there|this one|that one|here)| in)?,? (?:where|and|but|when) {_DRAWN} {_MORE}(?: (?:vanes|of them))?)(?=[.,;!]|$)",
        (("x", "some of the vanes are missing"),),
        beside=("vanes", "blades"),
        unless=r"(?P<n>one|two|three|four|five|six|[1-6])(?: \w+){0,5},? (?:where|and|but|when) (?:the |my )?\w+ \w+(?: for)? (?P=n)(?![\w'])",
    ),
    # --- the tool that clinches wrong clinched every staple of it
    Plainer(
        (" in", "inward"),
        rf"(?P<x>(?:the|my|this|that|our) (?:new |old |other |little |loaner |air |pneumatic |borrowed )*(?:stapler|staple gun|gun) {_TURNS}(?: (?:them|the legs|the staples|its legs|'em|every one|all of them))?(?: (?:all|always|back))* (?:in(?:wards?|side)?))(?=[.,;!]|$| and | so )",
        (("x", "the staples are clinched inward"),),
        unless=r"(?<![\w'])(?:swapped|switched|used|other one|other gun|other stapler|another|old one|instead|borrowed|fixed|adjusted|flipped|pulled|went back|outward|out)(?![\w'])",
    ),
    # --- the tape that was pulled for the listed one
    *(
        Plainer(
            ("listed", " foil", " ul "),
            rf"(?P<x>(?:(?:{_I}|so {_I}|then {_I}) )?(?:pulled|stripped|peeled|ripped|took|tore|got)(?: off| out)?(?: (?:all|all of))? (?:the|that|his|my) (?:\w+ )?{_CLOTH} (?:tape|stuff|one)(?: (?:back )?off)?{whose},? )(?P<z>(?:and |then |and then )?)(?=(?:[^.?!]{{0,60}}[ ,])?(?:put|laid|ran|rolled|stuck|used|went with)(?: (?:on|down|back))?(?: (?:the|some|a))? (?:listed|foil|ul|right|proper)(?![\w']))",
            (("x", on), ("z", "")),
        )
        for whose, on in ((rf" (?:of |on )?(?:{KIND} )?(?:number )?(?P<n>\d+)", r"on number \g<n> i "), ("(?: (?:of )?it)?", ""))
    ),
    # --- what was meant to be, and the roll that ran out
    Plainer((" to get ", " to have "), r"(?P<x> was (?:going|supposed|meant) to (?:get|have) (?:the |our |all )?(?:listed|foil|ul)(?: foil)? (?:tape|roll)(?: on it)?)(?=[.,;] (?:but |then |only )*(?:the|that|my) (?:roll|tape) ran out)", (("x", ""),), beside=("ran out",)),
    # --- a flap that is cut back so that the ends go together
    Plainer(("flap back",), r"(?:cut|trimmed|pulled|shaved|sliced|peeled) (?P<x>the )(?P<y>(?:staple |stapling )?flap) back(?![\w'])", (("x", ""), ("y", "it")), beside=("transition", "offset", "reducer")),
    # --- he looked, and there was none
    Plainer(("found nothing", "saw nothing", "found none", "saw none", "nothing came off", "nothing on the rag"), r"(?<![\w'])(?:wiped|brushed|dusted|cleaned|swept|blew|vacuumed)(?! nothing)(?: [\w']+){0,5}?(?P<x>,? (?:and |but |and then )?(?:(?:found|saw|got) (?:nothing|none)|nothing came off|nothing on the rag)(?: (?:on|off) (?:it|the rag|there|the facing))?)(?=[.,;!]|$)", (("x", ""),)),
    # --- the gun that warms
    Plainer(
        (" gun on ", " gun to ", " gun over "),
        rf"(?P<x>(?:{_I} )?(?:never|didn't|did not|haven't)(?: (?:even|ever|actually))* (?:put|run|ran|use|used|take|took|hold|held|turn|turned|get|got|wave|waved) (?:the|a|my) gun (?:on|to|over) (?:it|that|this|them|the (?:facing|board|seam|joint|tape)))(?=[.,;!]|$| and | before | first| so )",
        (("x", "not preheated"),),
        beside=("cold", "degree", " warm", "heat", "in the shop", "in here", "freez", "chilly", "forty", "fifty", "thirty"),
        unless=r"staple gun|(?<![\w'])(?:no|without|any|missing|out of) staples",
    ),
    # --- a list that is held against what he saw
    Plainer((" list ", " sheet ", " card ", " log ", " notes ", " tag "), rf"(?:^|(?<=[.;!?] ))(?P<x>(?:the|my|your|our) (?:list|sheet|card|log|notes?|tag) (?:says|say|said|has|had)(?: that)? )(?:{KIND} )?(?:number )?\d+(?:'s| is)?(?P<y>[:,]? (?:(?:stapled|taped|rubbed|wiped|trimmed|hung)(?: down)?(?:, and |, | and )?)+)[.,;] (?:but |and )?(?P<z>(?:now )?{_I}(?:'ve| have)? (?:just |now )?(?:looked|checked|been up|went up|gone over)(?: [\w']+){{0,4}}?)[.:,;] (?=(?:(?:stapled|taped|rubbed|wiped|trimmed|hung)(?: down)?[,:] (?:yes|no|agreed|right|ok|okay|true|wrong)[.,;] ?(?:and )?){2})", (("x", ""), ("y", ": "), ("z", ""))),
    # --- the number that was wrong
    Plainer((" called ", " said was ", " had as "), rf"(?:^|(?<=[.;!?] ))(?P<x>(?:the|that) (?:piece|one|straight|elbow|tee|fitting)(?: that)? {_I} (?:called|had as|had down as|logged as|named|put down as) (?:number )?\d+,? (?:is|should be|was)(?: really| actually)? )(?=(?:number )?\d+(?=[.,;]| ))", (("x", "piece "),)),
    # --- a piece by its number, where it lies
    Plainer(("they've got ", "they got ", "we've got ", "they have ", "we have ", "they put ", "they ran ", "he's got ", "i've got "), r"(?:^|(?<=[.;!?,] ))(?P<x>(?:they|we|he|i)(?:'ve|'s| have| has)?(?: got)? )(?=\d{2,3} (?:running|lying|sitting|laying|going|hanging|buried|strung|laid))(?:\d{2,3})(?P<y> )(?=(?:running|lying|sitting|laying|going|hanging|buried|strung|laid)(?![\w']))", (("x", "number "), ("y", " is "))),
    Plainer(
        (" in ", " into "),
        r"(?:^|(?<=[.;!?,] ))(?P<x>(?:(?:\w+ )?\w+ (?:told me|says|said)(?: that)? )?(?:the |its |those )?(?:turning )?vanes (?:for it )?(?:go|are going|will go|get put|come) (?:in|into|in to) (?:number |piece )?(?P<n>\d{2,3}) (?:(?:on |in )?(?:next week|tomorrow|monday|tuesday|wednesday|thursday|friday|later|the morning|this afternoon)))(?=[.,;!]|$)",
        (("x", r"number \g<n>, the vanes aren't in yet"),),
        unless="went in|already|all in now",
    ),
    Plainer(("trunk ",), r"(?:(?:^|(?<=[.;!?] )|(?<=for )|(?<=on ))(?P<x>trunk) )(?=\d{1,3}(?:[.:,]|$))(?!\d+, \d)", (("x", "number"),), unless=r"branch|wye|reducer| tee|transition|take-?off|collar|trunk is|trunk's"),
    # --- what shows through a joint, and whose joint it is
    Plainer(("daylight", " light "), r"(?<!not )(?<!n't )(?<!never )(?P<x>shows|is showing|showed)(?= (?:some |a bit of |a little |a sliver of |plenty of )?(?:daylight|light)(?: (?:at|on|in|along|through|all)(?![\w'])|[.;!]|$))", (("x", "has"),)),
    Plainer((" joint of ",), r"(?:^|(?<=[.;!?] ))(?P<x>(?:the )?joint of (?:number )?(?P<n>\d{2,3}))(?= (?:to|with|and) (?:number )?\d)", (("x", r"number \g<n>, the joint"),)),
    Plainer((" not closed", " isn't closed"), r"joint (?:at|to|of|on) (?:the )?[\w ]{1,20}?,? (?P<x>(?:is )?not closed,? |isn't closed,? )(?=(?:there's )?a gap)", (("x", ""),)),
    # --- the widest of a row that is told one by one
    Plainer(("one of ", "one at ", "one that's "), r"(?P<x>(?:(?P<n>six|seven|eight|nine|ten|eleven|twelve|[6-9]|1[0-2]), )(?:(?:six|seven|eight|nine|ten|eleven|twelve|[6-9]|1[0-2]),? ){1,6}(?:and )?(?:then )?(?:only )?one (?:of|at|that's) )(?=(?:thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|1[3-9]|2\d)(?![\w'/]))", (("x", ""),), beside=("tabs", "screws")),
    Plainer(("one of ", "one at ", "one that's "), r"(?P<x>(?:(?:one|two|1|2),? ){2,7}(?:and )?(?:then )?(?:only )?one (?:of|at|that's) )(?=(?:three|four|five|six|[3-6])(?![\w'/]))", (("x", ""),), beside=("staple",)),
    # --- what somebody saw on his piece and told him of
    Plainer((" pointed out", " noticed ", " spotted ", " pointed to "), r"(?:^|(?<=[.;!?] ))(?P<x>(?!(?:i|we|you|never|nobody|who|anybody|if) )(?:(?:the |my |our )?[a-z]+ )(?:just |already |also )?(?:pointed out|noticed|spotted|pointed to)(?: to (?:me|us))?(?: that)? )(?=(?:the|one|two|three|there's|there is|there are|it|straight|elbow|tee|transition|offset|branch|end cap|number \d+|\d+|some|a|my|on the|at the|in the) )(?!(?:the |my )?(?:\w+ ){1,3}(?:his|her|their) )", (("x", "i found that "),), unless=r"(?:he|she|they|ray|it)(?:'s| is| was|'re| are) (?:wrong|mistaken|not right)|not true|isn't true|isn't so"),
    # --- what he did not do, said the other way round
    Plainer(("what i didn't", "what i did not", "what we didn't", "thing i didn't", "what i never"), rf"(?:^|(?<=[.;!?,] )|(?<=and )|(?<=but ))(?P<x>(?:what|the (?:one |only )?thing)(?: that)? (?P<i>{_I}) (?:didn't|did not|never did|didn't get to)(?: do)?(?: (?:on|with|to) (?P<p>(?:(?:the )?(?:straight|elbow|tee|wye|cap|end cap|collar|transition|offset|branch|plenum|sleeve|number) )?[\w-]*\d[\w-]*|it|this one|that one))?(?:,[^.?!;]{{1,140}}?,)? (?:is|was|'s) )(?=(?:wipe|tape|staple|rub|trim|put|heat|warm|bend|patch|clean|close)(?![\w']))", (("x", r"\g<p>, \g<i> didn't "),)),
    # --- dust that stayed
    Plainer(("dust",), r"(?:forgot|forgotten|failed|neglected) to (?P<x>(?:blow|brush|get|sweep|knock|shake) (?:the |all the |that )?(?:saw ?dust|dust) off(?: of it| it)?)(?![\w'])", (("x", "wipe it"),)),
    Plainer(("dust",), r"(?P<x>(?:the )?(?:saw ?dust|dust)(?: (?:from|off) [\w ]{1,24}?)? (?:was|is) still (?:all over|on|under) (?:it|the (?:board|facing|seam|tape))(?: (?:underneath|under it|under the tape|when i taped|beneath|below))?)(?=[.,;!]|$| when)", (("x", "i didn't wipe it"),), unless=r"wiped|brushed|blew|cleaned|so i"),
    # --- the tape covers it
    Plainer((" cover", " runs over", " goes over", " applied", " over the "), r"(?:^|(?<=[.;!?,] )|(?<= and ))(?P<x>(?:the )?tape (?:covers|runs over|goes over|lies over|is over|has been applied (?:over|to|on|along)|was applied (?:over|to|on|along)|runs along) (?:it all|all of it|(?:the|its) (?:whole|full|entire) (?:joint|seam|length|thing|piece)|every (?:seam|joint)|all (?:the )?(?:seams|joints)))(?=[.;!]|$)", (("x", "taped"),), unless=r"n't|not |except|but "),
    # --- what was planned for it, and is not
    Plainer((" of its own but", " of its own, but"), rf"(?P<x>{_I}(?:'d| had)? (?:planned|wanted|meant|figured on|was going to (?:hang|put|use)|had in mind) (?:for )?(?:a |its |some )?(?:hangers?|straps?|rods?|supports?) of its own,? but )(?=(?:there's|there is|there was|i |we |no |the |they |it )(?![\w']))", (("x", ""),)),
    Plainer(("over the roof",), r"(?<![\w'])(?:runs|run|running|goes|going|lies|laid|hangs|sits)(?P<x>(?: out)? over the roof)(?! of )(?=[.,;!]|$| and | to )", (("x", " across the roof"),)),
    # --- asked for, and there are none
    Plainer(("asked about ", "asking about ", "wondered about "), rf"(?:^|(?<=[.;!?] ))(?P<x>(?:you|he|they|the lead|the inspector) (?:asked|were asking|was asking|wondered)(?: me)? about (?:the )?(?P<t>washers|tie rods|screws|hangers|cross tabs) )(?=(?:on|for|in) )(?:on|for|in) (?:{KIND} )?(?:number )?\d+[.,;:] (?:well,? )?(?P<y>there are none|there aren't any|it has none|it hasn't got any|i didn't use any)(?=[.,;!]|$)", (("x", ""), ("y", r"there are no \g<t>"))),
    # --- how far apart he went, and how far he was to go
    Plainer((" for the ",), r"every (?:two|three|four|five|six|[2-6])(?P<x> )(?=for the (?:whole|entire|full) )", (("x", " inches "),), beside=("stapl",)),
    Plainer((" every ", " at "), rf"(?<![\w'])(?P<x>(?:it|they|that one) (?:should have|should've|was to have|was supposed to have) (?:had |been )?(?:staples|stapled) (?:every|at) {SAID_NUMBER}(?: inches)?,? (?:and|but) {_I}(?:'ve| have)? (?:gone|went|ran|run|did|done|put them) )(?=(?:every|at) )", (("x", "stapled "),)),
    Plainer(("run twos", "run two", "go twos", "do twos"), rf"(?P<x>{_I} (?:was|were) (?:gonna|going to|supposed to|meant to) (?:run|go|do|shoot) (?:twos|two|two inch|at two) on )(?:{KIND} )?(?:number )?(?:\d+|{SAID_COUNT}|one {SAID_COUNT})(?P<y>,? (?:and|but) {_I} (?:ended up|wound up|came out|finished)(?: at| with)? )(?={SAID_NUMBER})", (("x", ""), ("y", ", stapled every "))),
    # --- the piece that he names behind
    Plainer((" i mean,",), rf"(?:taped|stapled|rubbed|hung|closed|wiped|trimmed) (?P<x>it, )(?:number )?(?:\d+|{SAID_COUNT})(?P<y> i mean,)", (("x", "number "), ("y", ","))),
    Plainer((" collar of ",), r"(?P<x>(?:the )?collar of (?:the )?)(?=(?:damper )?sleeve (?:number )?\d)", (("x", ""),), beside=("screw",)),
    Plainer((" just like ", " exactly like ", " same as "), r"(?:^|(?<=[.;!?] ))(?P<n>\d+ (?:through|to|thru|and) \d+)(?P<x> (?:came out|are|were|went|turned out)(?: all)? (?:just|exactly) like (?:it|that|that one))(?=[.;!]|$)", (("x", " are the same"),)),
    Plainer(("on ",), r"(?:^|(?<=[.!?] ))on (?P<x>)(?=\d{2,3} (?:the|it|they|i|we|he|my) \w)", (("x", "number "),), unless=r"(?<![\w'])(?:number|page|floor|sheet|detail) \d"),
    # --- how it should be, behind a measure that is told: "every six foot and that's short of what it should be"
    Plainer(
        ("should be", "should have been", "should've been", "ought to be", "supposed to be", "wanted", "allowed", "book says"),
        rf"(?:every|at|about|are|is|came out|ended up|'s|'re) (?:about |maybe |like |at |every )*{SAID_NUMBER}(?:[ -](?:inches|inch|feet|foot|ft))?(?: apart| on center| wide)?(?P<x>,? (?:and |but |so |which )*(?:that's|that is|is|it's|they're|those are|this is)(?: a (?:little|bit|hair|touch)| way| just| too| an? \w+)* (?:(?:short of|shy of|more than|wider than|further than|farther than|bigger than|over|past|beyond|longer than|less than|off of|off from)(?: what| where)?|(?:right |exactly )?(?:what|where|how|the way)) (?:(?:it|they|that|those|the \w+) )?(?:should be|should have been|should've been|ought to be|(?:is|are|'s|'re|was|were) supposed to be|wanted|allowed|(?:the )?book says))(?=[.,;!]|$)",
        (("x", ""),),
    ),
    # --- there on one, and not on the next: "on 50 the vanes are in, on 51 they're not"
    Plainer(
        ("on ", "in "),
        rf"(?:on|in) {_MARK},? (?:the |my |its )?(?:turning )?(?P<t>tape|vanes|staples|mastic)(?:'s| is| are|'re)(?: all)? (?:on|in|there|in there|on there|in it|on it)(?P<x>(?:,? (?:and |but )?(?:on|in))? (?P<m>{_MARK}),? (?:it's not|it is not|it isn't|they're not|they are not|they aren't|it ain't|they ain't|there's none|there isn't any|there aren't any|there's not|none|no))(?=[.,;!]|$)",
        (("x", r". \g<m> has no \g<t>"),),
    ),
)
