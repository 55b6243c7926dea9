"""English of fastening and of the cut end said in a roundabout way, and the plain words that it is read as. Regular expressions over lower-case letters."""

from __future__ import annotations

from fractions import Fraction

from logbook.languages.en_plainer import _COUNT, _MEASURE
from logbook.languages.language import State
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_BOX = r"(?:the|my|our|their|its|a|his) (?:[\w']+ )?(?:box|boxes|truck|van|shop|bucket|bag|gang ?box|roll|bench|cart|trailer|package|carton|plastic|yard|toolbox|crate|warehouse|trunk)"
_KIND = r"(?:straight|transition|reducer|offset|elbow|ninety|tee|wye|branch|plenum|end cap|cap|section|piece|duct)"
_WAIT = r"(?:(?:hold on|hang on|let me (?:see|look|think|check|measure|count)|lemme (?:see|look|think|check|measure)|one sec(?:ond)?|um+|uh+|hm+|okay|ok|wait|well|so|i think|it was|it's|they're|call it|there|yeah|oh)[.,;]* )*"
_SCARCE = rf"(?:(?:there(?:'s| is| was| are| were) |{_I}(?:'m| am|'re| are| was| were) |{_I} (?:had|got|have|ran|was|were) )*(?:not (?:much|many|enough|a lot of)|few|too few|short (?:of|on)|(?:running |getting |ran |run )?(?:low|short|thin)(?: on| of)?|running out of|almost out of|about out of|to save|saving)(?: the)? staples?(?: (?:left|in the gun|on me|with me|on hand))?)"
_EXTRA = r"(?:extra|excess|surplus|leftover) (?:insulation|glass|fiberglass|board|stuff|material|wool)"
_OUTWARD = r"(?:out(?:ward|wards|side)?|to the outside)"

ENGLISH_FASTENING = (
    # --- in, but not in the piece: where they lie stands behind a stop
    Plainer(("in. ", "in, ", "on. ", "on, "), rf"(?:vanes|staples|tabs|tape|mastic)(?:'s| is| are|'re)?(?: all)?(?P<x> (?:in|on)[.,;]+ (?:(?:yeah|well|yes|but|only|just|right|i mean|still|sitting|ha),? )*(?:in|on))(?= {_BOX}(?![\w']))", (("x", " still in"),)),
    # --- so many vanes, and how many it takes
    Plainer(("vanes",), rf"(?P<n>{_COUNT})(?P<x> )(?:turning )?vanes(?: (?:in|in it|in there|there))?(?P<y>[.,;] (?:but |and )?(?:it|this one|she|that one|that size|this size|the elbow|they|the rail|the print)(?: (?:really|only))?(?: (?:takes?|needs?|wants?|calls for|should have|has room for|gets|holds)|'s supposed to have|'s for|'s made for) (?!(?P=n)(?![\w]))(?P<m>{_COUNT}))(?: of them)?(?=[.,;]|$)", (("x", r" of the \g<m> "), ("y", ""))),
    Plainer(("vanes",), rf"(?P<x>(?:it|she|this one|that one|the elbow)(?: (?:takes?|needs?|wants?|calls for|should have|has room for|gets|holds)|'s supposed to have) (?P<m>{_COUNT}) (?:of the )?(?:turning )?vanes?[.,;]? (?:and |but |so )?(?:i |we )?(?:only |just )*(?:had|got|have|put(?: in)?|used|found) (?!(?P=m))(?P<n>{_COUNT}))(?: in| of them| in it| on hand)*(?=[.,;]|$)", (("x", r"put in \g<n> of the \g<m> vanes"),)),
    Plainer(("rails are in", "rail is in", "rails in", "rail's in"), r"(?P<x>(?:the )?(?:vane )?rails?(?: are| is|'s) in[.,;]? (?:but |and )?)(?=(?:there's |there are |got )?(?:no|the|without|not the|none of the) (?:turning )?vanes)", (("x", ""),)),
    Plainer(("vanes",), r"vanes(?: are|'ll be| will be|'re)?(?P<x> (?:coming |come |due )?(?:on|with|in) the (?:next|tomorrow's|afternoon|morning) (?:trip|truck|delivery|load|order|run|shipment))(?=[.,;]|$)", (("x", " still have to go in"),)),
    # --- what he is going to do, without saying that it is he
    Plainer(("going to", "fixing to", "planning to", "hoping to"), r"(?:^|(?<=[.,;] )|(?<= and )|(?<= but ))(?P<x>)(?:going|fixing|planning|hoping) to (?=(?:vane|put|add|install|staple|tape|rub|trim|bend|finish|come|slide|screw|fix|tab|cross tab)(?![\w']))", (("x", "i'm "),)),
    Plainer((" vaning", "to vane ", "'ll vane ", "will vane ", "gonna vane "), r"(?P<x>(?P<v>(?:to|'ll|will|gonna) )vane|vaning)(?P<y>)(?= (?:it|this|that|the elbow|this one|that one|elbow [\w-]+)(?![\w']))", (("x", r"\g<v>put the vanes in"),)),
    # --- what he asks himself, and answers
    Plainer(("how far apart", "how close", "what spacing"), rf"(?P<x>(?:how (?:far apart|close(?: together)?)|what spacing) (?:did|do|are|were|have) (?:i|we|they|those|these|the [\w]+)(?: (?:put|puts|set|space|spaced|got|have|run|place|lay|go|gone|do|done|at))?(?: (?:those|these|them|the [\w]+|it|that))?[.,?;]+ {_WAIT}(?:(?P<n>{_COUNT})[.,;] (?=every (?P=n)(?![\w'-])))?)(?=every)", (("x", ""),)),
    Plainer(("which way",), rf"(?P<x>(?:now )?which way (?:does|did|do|is|are) (?:the |that |my |those |these )?(?:groove|low step|step|clinch|staples?|legs)(?: (?:go|goes|face|facing|run|point|clinch|turn|turned))?(?: (?:on|in) (?:this|it|that|here)(?: one)?)?[.,?;]+ {_WAIT})(?=(?:the |they |it )?(?:low |clinched |bent |turned |go |legs |step|inside|outside|in|out))", (("x", ""),)),
    Plainer(("step is,", "step's,", "step is the"), r"(?P<x>(?:the )?(?:low )?step(?:'s| is),? )(?=(?:um+,? |uh+,? )?(?:the )?(?:low )?step(?:'s| is| came| ended| faces))", (("x", ""),)),
    # --- which way the staples went, and that it was the other way than they ought to
    Plainer(("clinch", "bent", "turned"), r"(?:clinched|bent|turned|folded) (?P<x>(?:out|outward|in|inward)[.,;] (?:no|wait|hang on|hold on|actually|sorry|nope)(?![\w'])[^.?!]{0,70}?(?:they're|they are|it's|they|the staples are) (?:all )?(?:clinched|bent|turned|folded) )(?=(?:in|out)(?:ward|wards|side)?(?![\w']))", (("x", ""),)),
    Plainer(("staple", "legs"), rf"(?:staples|legs)(?P<x> (?:didn't|did not|don't|never|wouldn't|won't|aren't|are not|weren't|ain't|not) (?:clinch|clinched|turn|turned|bend|bent|fold|folded|go|point|pointing)(?: {_OUTWARD})[.,;]? (?:and |but )?(?:they|it|they're|those|those are|the legs)(?: (?:all|just|mostly|are|went|go|turned|bent|came|folded|clinched|pointing|clinch|turn|bend|fold|point))* )(?=in(?:ward|wards|side)?(?![\w'])|to the inside)", (("x", " clinched "),)),
    Plainer(("clinch", "bent", "turned", "folded"), rf"(?:staples|legs)(?P<x> (?:didn't|did not|don't|never|wouldn't|won't|aren't|are not|weren't|ain't|not) (?:clinch|clinched|turn|turned|bend|bent|fold|folded) {_OUTWARD})(?=[.,;]|$| on| like| the way)", (("x", " clinched the wrong way"),)),
    Plainer(("points", "tips", "prongs", "legs", "ends of"), r"(?P<x>(?:the )?(?:staples?'? )?(?:points|tips|prongs|legs|ends of the staples)(?: (?:all|just|of the staples|of them))*(?: (?:are|stick|sticking|poke|poking|come|coming|point|pointing|show|showing|out|through|up|end up|ended up))* (?:on|to|into|in|at) (?:the )?(?:inside|air ?stream|air ?way|air|duct))(?=[.,;]|$| of)", (("x", "the staples are clinched inward"),), unless=r"tabs|screws|vanes"),
    Plainer(("clinched wrong", "clinched them wrong", "clinched backwards", "clinched them backwards"), r"clinched(?P<x>(?: (?:them|it|those))? (?:wrong|backwards),? (?:and )?(?:they're|they|they are|so they)(?: (?:all|are|turned|went|bent|go|point|face))* )(?=in(?:ward|wards|side)?(?![\w']))", (("x", " "),)),
    # --- few staples are staples
    Plainer((" staple",), rf"(?:every {_MEASURE}|{_MEASURE}(?: inch(?:es)?)? apart)(?: inch(?:es)?)?(?P<x>,? (?:because|cause|'cause|since|as|on account of|due to|with|to|i|we) ?{_SCARCE})(?=[.,;]|$| and)", (("x", ""),)),
    Plainer((" staple",), rf"(?P<x>{_SCARCE}(?:[.,;]? (?:so|and|,))*,? (?:i|we) )(?:just |kind of |kinda |had to )*(?P<v>stretched|spread|spaced|opened|went|put)(?P<y> (?:them|'em|it|those|mine))?(?= (?:out |up )?(?:to |at )?(?:every )?{_MEASURE})", (("x", "i "), ("y", " the staples"))),
    # --- the short ones
    Plainer((" ones ", " ones,"), rf"(?P<x>(?:{_I} )?(?:only|just) had (?:the )?(?P<n>(?:three|five|seven|one) (?:eighths?|sixteenths?|quarters?)|(?:a )?half(?: inch)?|quarter(?: inch)?|\d/\d+)(?: inch)? (?:ones|staples)(?: (?:left|on the truck|with me|on me|in the (?:gun|truck|van|box)))?,? (?:so |and |and so )(?:{_I} )?)(?:just )?(?:stapled|used|shot)(?P<w>(?: it| that)?)(?P<y>(?: with)? (?:those|them|that|'em))", (("x", "i "), ("w", " it"), ("y", r" with \g<n> staples"))),
    # --- a flap that is not there, and nothing but tape
    Plainer(("flap",), rf"(?:no (?:staple )?flap|flap(?:'s| is| was)? (?:gone|missing|torn off|ripped off|cut off|off)|without a flap)(?: (?:on|at) [\w ]{{1,20}}?)?(?P<x>[.,;]? (?:(?:so|and|then|{_I}) )*(?:just|only) (?P<v>tape(?:d)?))(?: it)?(?=[.,;]|$| all| over| on)(?![^.?!]*(?:tabs|stapl))", (("x", r", no staples, no cross tabs, \g<v>"),)),
    Plainer(("just tape", "only tape", "tape only"), r"(?:(?:no|without(?: any| a)?|not (?:a|one)(?: single)?|zero|not any) (?:staples?|tabs|cross tabs)|(?:not|never|didn't|un)[ -]?stapled?)(?: (?:in it|on it|at all|it))?[.,;]+ (?:it's |that's |so )?(?P<x>(?:just|only)(?: the)? tape|tape only)(?=[.,;]|$)", (("x", "taped it"),)),
    # --- what is left on a piece, the name of it behind a stop
    Plainer(("thing left", "things left", "step left", "thing to do", "job left"), r"(?:one|only|last|a) (?:more )?(?:thing|step|job)(?: (?:is|that's))?(?: left| to do| to go)+(?: (?:on|to) (?:it|this one|that one|do))?(?P<x>[.:;] )(?=(?:the |it's |and that's |that's )?(?:rub|tap|stapl|vane|trim|wip|mastic|tabs))", (("x", ", "),)),
    # --- the piece stands between the verb and how long it was cut
    Plainer(("cut ", "chopped", "sawed"), rf"(?P<x>(?:{_I} )?(?:cut|chopped|sawed) (?P<k>(?:the )?{_KIND} (?:number )?(?:[a-z]-?)?{_COUNT}))(?P<y> (?:down |back |off )*(?:to|at) )(?={_MEASURE}(?! by))", (("x", r"\g<k>"), ("y", ", cut down to "))),
    # --- what stands first, and what was not done with it
    Plainer(tuple(f"{one} " for one in ("extra", "excess", "surplus", "leftover")), rf"(?P<x>(?:that |the |all that )?{_EXTRA}(?: (?:at|on|by) the (?:cut|slope|end))?,? (?:{_I}|nobody) (?:didn't|did not|never|haven't|have not|couldn't)(?: (?:get|got|have|even|ever|yet|really))* (?:get|got|gotten|take|took|taken|cut|trim|trimmed|shave|shaved|pull|pulled|knock|clean|cleaned|touch|touched|to)(?: (?:that|it|any of it|to it))?(?: (?:off|out|back|away|trimmed|down|up))*)(?=[.,;]|$| yet)", (("x", "the extra insulation is not trimmed"),)),
    Plainer(("tabs",), rf"(?P<x>(?:the |its |those )?tabs,? {_I} (?:just )?(?:left|leave)(?: (?:them|'em|those|all))* (?P<v>straight|standing|sticking|up|open|unbent|flat|alone|as is|the way they were)(?: (?:up|out|straight|like that))*)(?=[.,;]|$| for| and| because)", (("x", "did not bend the tabs"),)),
    Plainer((" cut them ", " cut 'em ", " made them "), rf"tabs[^?!]{{0,60}}?(?P<x>(?:i |we )?(?:only )?(?:cut|made) (?:them|'em)(?: (?:only|at|just|about))? )(?P<m>{_MEASURE}(?: inch(?:es)?)?)(?P<y>(?: long)?(?: instead of (?:{_MEASURE}(?: inch(?:es)?)?|the \w+))?)(?=[.,;]|$| and| because| not)", (("x", "the tabs are "), ("y", " long"))),
    Plainer(("tabs short", "tabs too short", "tabs a little short"), rf"tabs(?P<x> (?:too |a little |a bit )?short),? (?:at |about |only )?(?={_MEASURE})", (("x", ","),)),
    Plainer(("pieces of tape", "strips of tape", "pieces for", "strips for"), rf"{_MEASURE}(?: inch)?(?P<x> (?:pieces|strips)(?: of (?:the )?(?:\w+ )?tape)? (?:as|for|like))(?= (?:the )?(?:cross )?tabs)", (("x", ""),)),
    Plainer(("between",), rf"(?:tabs|staples|screws)[^.?!]{{0,50}}[,.] (?:so |and )?(?:that's|it's|which is|makes it|that makes it|that comes to|comes to|so)(?: like| about| maybe| around| roughly)? {_MEASURE}(?: inch(?:es)?)?(?P<x> (?:in )?between(?: (?:them|each|tabs|each one|staples|screws))?)(?=[.,;]|$)", (("x", " apart"),)),
    Plainer((" tab it", " tab this", " tab that", " tab her"), r"(?:didn't|did not|never|haven't|forgot to|couldn't|not|gotta|have to|need to|will|i'll|to) (?P<x>(?:cross )?tab)(?P<y> (?:it|this one|this|that one|her))(?![\w'])", (("x", "put cross tabs"), ("y", " on it"))),
    # --- on which sides there are staples
    Plainer(("got staples on", "put staples on", "has staples on", "staples only on"), r"(?P<x>(?:it )?(?:got|put|has|there's|there are) staples (?P<o>only )?on) (?=(?:the )?(?:top|bottom|front|back|left|right|sides?)(?:,| and))", (("x", r"stapled \g<o>"),)),
    # --- no stapler, no staples
    Plainer(("no stapler", "no staple gun", "without a stapler", "without a staple gun"), r"(?P<x>(?:there was |i had |we had |had |with )?(?:no|without(?: a| my| the)?) (?:stapler|staple gun)(?: (?:today|here|with me|on me|on hand|handy|on the truck|around))*,? (?:so |and )?(?:i |we |it's )?(?:just |only )*tape(?:d)?(?: only)?)(?: it)?(?=[.,;]|$)", (("x", "not stapled, taped"),)),
    Plainer(("list to ",), r"(?P<x>(?:it's |that's |still |it is )*on (?:my|the|our) (?:to-?do )?list to) (?=(?:staple|tape|rub|trim|vane|bend|wipe)(?![\w']))", (("x", "still have to"),)),
    Plainer(("holding it", "holds it"), r"(?P<x>(?:the )?(?:only thing|all|all that|all that's|what's|the only thing that's|only thing that's)(?: that's)? (?:holding it|holds it)(?: (?:together|up|shut|closed))? is (?:the |just |some )*tape)(?=[.,;]|$)", (("x", "held together with tape, nothing else"),)),
    # --- the groove and the panel
    Plainer(("the low step", "the step"), r"(?P<x>it's (?:on the )?(?P<w>outside|inside|out|in), the (?P<s>low step|step))(?=[.,;]|$)", (("x", r"the \g<s> is \g<w>"),)),
    Plainer(("proud", " high"), r"panel(?:'s| is|s are|s)?(?P<x> (?:sitting|sits|sat|seated|seats))(?= (?:up |a little |a bit |a hair |about |just |still )*(?:proud|high)(?![\w']))", (("x", " stands"),)),
    # --- the gap is to the next piece
    Plainer(("gap ",), rf"gap(?P<x> (?:to|with|against|up against|next to|where it meets|between it and|between this and) (?:the )?{_KIND} (?:number )?[\w-]+)(?=[.,;]|$| of| about| that| and)", (("x", ""),)),
    # --- the insulation by what it does
    Plainer(("insulation", "fiberglass", "glass"), r"(?:insulation|fiberglass|glass)(?: (?:still|is|just))*(?P<x> (?:sticks|stuck|pokes|poked|hangs|hung)) out", (("x", " is sticking"),)),
    Plainer(("insulation", "fiberglass"), r"(?:insulation|fiberglass)(?: (?:at|on|by|along) the (?:cut|slope|end|taper))?(?P<x>(?: is)? (?:still |yet )?(?:needs?|has|have|got) to (?:come off|come out|be (?:cut|trimmed|shaved|taken|cleaned)(?: (?:off|out|back|away))?))(?=[.,;]|$| yet)", (("x", " is not trimmed yet"),)),
    Plainer(("insulation", "fiberglass"), rf"(?P<x>forgot (?:all )?(?:about )?)(?=(?:the |that )?{_EXTRA})", (("x", "forgot to trim "),)),
    # --- vanes that lie ready
    Plainer(("vanes",), r"vanes(?: are|'re)?(?: all)? (?:cut|made|made up|bent|bent up|ready|fabbed|fabricated|here|assembled|done up|built|set out|laid out)(?P<x>[^.?!]{0,30}?[.,;]? (?:but |and |just )*(?:i |we )?(?:still |just )*(?:gotta|got to|have to|need to|hafta|haven't|didn't)(?: (?:get to|gotten to|got to))? (?:slide|slid|put|putting|get|set|screw|screwed|pop|drop|install|installed|mount|mounted|stick|fit) (?:them|'em|those)(?: (?:in|yet|on))*)(?=[.,;]|$| tomorrow| later| after| before)", (("x", ", the vanes still have to go in"),)),
    Plainer((" vanes in",), rf"(?:^|(?<=[.,;] )|(?<= and )|(?<= i )|(?<= we )|(?<= got )|(?<= then ))(?P<x>slid|slipped|popped|dropped|snapped|worked|set|stuck|screwed)(?= (?:the |all the |all |my |in the )?(?:{_COUNT} )?(?:turning )?vanes in(?![\w'])(?! (?:the|my) (?:box|truck|van|shop)))", (("x", "put"),)),
    # --- none of the extra is left
    Plainer(tuple(f"{one} " for one in ("extra", "excess", "surplus", "leftover")), rf"(?P<x>(?:there's |there is )?(?:no|not any|none of the) {_EXTRA}(?: (?:is |'s )?(?:left|in there|hanging|on there|at the cut|in the cut|sticking out|over))*[.,;]+ (?:i |we )?(?:cut|trimmed|shaved|sliced|took|got|pulled|cleaned) (?:it|that|all of it)(?: all)?(?: (?:off|out|back|away|up))*)(?=[.,;]|$)", (("x", "trimmed the extra insulation"),)),
    # --- inches in figures, before what only they can be
    Plainer((" in at ", " in every ", " in long", " in wide", " in apart", " in oc", " in o.c", " in on center", " in @", " in tabs", " in legs", " in staples", " in washers"), r"(?<![\w.,'-])\d+(?: \d+/\d+|/\d+|\.\d+)?(?P<x> in)(?= (?:at|every|long|wide|apart|oc|o\.c|on centers?|@|tabs|cross tabs|legs?|staples|washers)(?![\w']))", (("x", " inch"),)),
    # --- no flap there, and what he put instead
    Plainer(("where there's no flap", "where there is no flap", "where there was no flap", "where it had no flap", "where it has no flap", "where the flap"), rf"(?P<x>where (?:there(?:'s| is| was)|it ha[sd]|it didn't have|it doesn't have) (?:no|a|any) flap|where the flap (?:is|was|'s) (?:missing|gone|cut off|torn off|torn))(?=,? (?:{_I} |it's |there's |it got )?(?:put|used|ran|cross|tab|did|got|installed|has|ha[sd])?)", (("x", "no flap on one end,"),)),
    # --- a part of the day or a time to come that owns the piece
    Plainer(("tomorrow's", "next week's", "monday's"), r"(?P<x>(?:the |any )?(?:vanes|staples|tape|tabs|board|mastic)(?: sets?)? (?:for|on) (?:tomorrow|next week|monday|tuesday|wednesday|thursday|friday)'s [^.?!,;]*)(?=[.?!,;]|$)", (("x", "no news"),)),
)

_WASHERS = r"(?:\w+ )?washers?"
_NO_WASHER = (
    rf"(?:(?:there's |there is |there are |with |got |has |have )?(?:no|zero|without|without any|without the|minus the|not (?:a|one|a single)|sans)|skipped|forgot|forgot the|forgot to put|left (?:out|off)|never (?:put|used|had|got)|(?:didn't|did not|haven't|don't|hasn't) (?:put|use|have|get|got|used)|missing|ran out of|out of)(?: (?:any|the|its|on|those))* {_WASHERS}(?! (?:smaller|less|under|narrower|below|missing|left over|loose|bigger|over|larger|needed|required))",
    r"(?<!no )(?<!not )(?<!none )(?<!any )washers?(?: (?:are|is|were|was|all|still|got|just))* (?:missing|left (?:off|out)|skipped|forgotten|not (?:on|in|there)|aren't (?:on|in|there)|still in the (?:box|truck|bag))",
    rf"(?:just|only) (?:the )?screws,? (?:with )?no {_WASHERS}",
)
ENGLISH_FASTENING_STATES = (
    State("panel_seated", False, (r"(?:seats|seated|sits|sat|drops|dropped|goes|went)(?: in| down)?(?: good| fine| tight| nice)? (?:on|at|along) (?:only |just )?(?:one|two|three)(?: of the four)? (?:edges?|sides?|corners?|ends?)",), ("PANEL",), uses=True, cues=("seats", "seated", "sits", "sat", "drops", "dropped", "goes", "went")),
    # screws that hold by their heads alone
    State("washer_size", Fraction(0), _NO_WASHER, ("WASHERS",), ("equipment_connection", "damper_sleeve"), uses=True, cues=("washer",)),
)
