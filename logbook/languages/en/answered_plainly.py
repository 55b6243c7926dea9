"""English of what a man was told, wrote or thought, and what he found when he looked; of a question that he answers with a day; of what waits for something.

Regular expressions over lower-case letters, as in `en_plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.asked_others import ENGLISH_ASKED_OTHERS
from logbook.languages.en.asked_plainly import ENGLISH_ASKED_PLAINLY
from logbook.languages.en.gone_over import ENGLISH_GONE_OVER
from logbook.languages.en.measured import _M
from logbook.languages.en.promised import _ENDS, _TIME
from logbook.languages.en.ran_short import ENGLISH_RAN_SHORT
from logbook.languages.en.service_told import ENGLISH_SERVICE_TOLD
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_KIND = r"(?:straight|elbow|tee|offset|transition|reducer|wye|branch|collar|end cap|cap|plenum|piece|number|fitting)"
_ORDINAL = r"the (?:other|second|first|last|latter|former|third)(?: (?:one|two|piece))?"
_NUMBERED = rf"(?:{_KIND} )?\d+"
_THIS = rf"(?:{_ORDINAL}|{_NUMBERED})"
_L = rf"(?:(?:half an?|half|(?:an?|one|three|five|seven)[- ](?:half|quarters?|eighths?|sixteenths?))(?:[- ]inch)?|{_M}(?: and (?:three|five|seven)[- ](?:quarters|eighths|sixteenths))?)"
_NOT_DONE = r"(?:(?:i|we) (?:did not|didn't|have not|haven't|never did|don't|forgot)(?: yet)?|no|nope|nah|not yet|it isn't|it's not|they aren't|they'?re not|it is not|they are not)"
_WILL_I = r"(?:(?:and |but |so |ok |okay )*(?:(?:when )?(?:am|are) (?:i|we|they) (?:going to|gonna|going in|planning to)|(?:when )?(?:will|do|shall) (?:i|we|they)|(?:when )?is it (?:going to|gonna)|will it)(?: (?:do it|do that|do them|get to it|be|get done|put them in|put it on|go in|tape it|staple it|rub it))?|(?:and |so |ok )*when(?:'s that| is that| then)?|going to|gonna)"
_TOOL = r"(?:a|the|my) (?:tape measure|tape|ruler|rule|stick|scale)"
_MEASURED_IT = (
    rf"(?:{_I} (?:laid|put|held|ran|stuck|took|hooked|pulled|got|dropped|set) {_TOOL}(?: down)? (?:on|to|across|against|up to|along|over)(?: top of)? (?:it|them|that|those|the (?:staples|row|seam|joint)|a few|a couple)"
    rf"|{_I} (?:measured|checked|remeasured|counted)(?: (?:it|them|that|those))?)(?: (?:myself|just now|too|today|this morning|again))*"
)
_IT_IS = r"(?:it's|it is|it was|they'?re|they are|they were|that's|i get|i got|it came to|it comes to|it measures|it came out(?: at)?)(?: (?:really|actually|more like|only|just|about))*"
_WROTE = r"(?:wrote(?: (?:it )?down)?|writes|put down|put on the (?:tag|sheet|log)|told me|said|says|claims|claimed|has down|had down|logged|marked(?: down)?|called out|reported|swears|guessed|taught|was taught|was told)"
_WAS_TOLD = rf"(?:,?(?: (?:which is|that's|is|was|at least that's|or that's|according to))? (?:what|how)|,) (?:the |my |our |that )?\w+(?: \w+)? {_WROTE}"
_BOX = r"(?:box|label|sticker|carton|wrapper|package|packaging|invoice|packing slip|core|sleeve)"
_CAME_OUT = rf"(?:what (?:came|comes|rolled|i pulled|i took|i got|we got|we pulled) (?:out(?: of (?:it|the {_BOX}|there))?|off (?:it|the (?:roll|core)))|what(?:'s| is| was) (?:in (?:it|there|the {_BOX})|inside)|the (?:roll|tape|stuff)(?: (?:itself|inside|in it|in there))*|what (?:i|we) (?:put|got|laid) (?:on|down))"
_IS = r"(?:'s|is|was|measures|measured|runs|ran|came to|comes to)(?: (?:really|actually|more like|only|just|about|at|a))*"
_THOUGHT = r"(?:(?:or so )?(?:i|we) (?:thought|figured|guessed|believed|assumed|was sure|would have (?:said|sworn)|would've (?:said|sworn)|'d have (?:said|sworn)|could have sworn|could've sworn|swore))"
_OFF = r"(?:rip|pull|peel|tear|strip|take|cut|yank)"
_THE_TAPE = r"(?:all )?(?:the|my) (?:tape|staples|vanes)(?: (?:all|back|right))* (?:off|out)(?![\w'])"
_NOT_OF = rf"(?! (?:to |up |on |onto |at )?(?:of )?(?:the (?!staples|seams?|joints?|bottom|top|left|right|back|whole)\w+|the next|another|that other|{_KIND}|\d))"  # not of another piece
_WOULD = rf"(?:{_I}|you|he|they|nobody|that|it|life|things|the \w+)(?:'d| would)(?![\w'])"
_TURNED = r"(?:turned|bent|folded|clinched|turn|pointing)"
_THE_SIDE = r"the (?:bottom|top|left|right|back|fourth|last one|last|other one|other)(?: side| one)?"
_ONE_SIDE = rf"on {_THE_SIDE}"
_MOST_SIDES = r"(?:the other |the |all )?(?:three|two|3|2|most|other)(?: (?:of the )?(?:sides|faces|seams))?"
_LEGS = ("staple", "leg", "clinch", "point")
_ANY_REASON = r"[^.?!;]{0,60}?"
_NOT_BACK = rf"{_ANY_REASON}(?:,? (?:and|&|but|so|then) |[,.;] )(?:{_I} )?(?:still )?(?:haven'?t|have not|didn'?t|did not|never|not)(?: (?:yet|even))? (?:put|got|gotten)(?: (?:it|them|any|more|around to putting it))? (?:back|on)(?: yet| on| since)*"


ENGLISH_ANSWERED_PLAINLY = (
    *ENGLISH_ASKED_PLAINLY,
    *ENGLISH_ASKED_OTHERS,
    *ENGLISH_RAN_SHORT,
    *ENGLISH_GONE_OVER,
    *ENGLISH_SERVICE_TOLD,
    # --- "Did I put the vanes in? I did not. Am I going to? Monday."
    Plainer(("? ",), rf"(?<![\w']){_NOT_DONE}[.,;!] (?P<x>{_WILL_I}\? (?:(?:yes|yeah|yep|sure|of course|i am)[.,;]? )?)(?={_TIME}{_ENDS})", (("x", "will do it "),)),
    Plainer(("? y", "? sure", "? of course", "? i am", "? i will", "? soon", "? when the", "? later"), rf"(?<![\w']){_NOT_DONE}[.,;!] (?P<x>{_WILL_I}\? (?:yes|yeah|yep|sure|of course|i am|i will|yes,? i (?:am|will)|soon|as soon as [^.?!]+|when the [^.?!]+))(?=[.!;]|$)", (("x", "will do it later"),)),
    # --- "the other one still wants it"
    *(
        Plainer((" wants ", " want ", " needs ", " need "), rf"(?<![\w']){one}(?:'s| is| was| got| has been)? (?:all )?(?P<a>taped|stapled|rubbed)(?: (?:up|down|off|already|and done))*[,;.] (?:but |and |while )*{other}(?P<x> (?:still )?(?:wants?|needs?) (?:it|that|some|the same)(?: yet| still| done)?)(?=[.,;!]|$)", (("x", r" is not \g<a> yet"),))
        for one, other in ((_ORDINAL, _ORDINAL), (_NUMBERED, _NUMBERED))
    ),
    Plainer((" wants ", " want "), rf"(?<![\w']){_THIS}(?P<x> (?:still )?wants? )(?=(?:its tape|its vanes|its staples|tape|taping|staples|stapling|vanes|rubbing)(?: yet| still)?(?=[.;!]|$))", (("x", " still needs "),)),
    # --- legs turned one way on most sides and the other way on one
    Plainer((" in", "inward"), rf"(?P<x>(?:they |the legs )?{_TURNED} out(?:wards?)?,? (?:on|along) {_MOST_SIDES}(?:[.,;]|(?= (?:and|but))) (?:but |and |only )*(?:{_ONE_SIDE} ?)?,? ?(?:they'?re|they are|they|it's|i)? ?(?:{_TURNED} )?in(?:wards?)?)(?: (?:on|along) (?:{_THE_SIDE}|two|one|2|1)(?: sides?)?)?(?=[.,;!]|$)", (("x", "turned inward"),), beside=_LEGS),
    Plainer((" out",), rf"{_TURNED} (?P<y>in(?:wards?)?)(?P<x>,? (?:on|along) {_THE_SIDE}(?:,|;|\.| and| but)* (?:they'?re |but |and )*(?:{_TURNED} )?out(?:wards?)? (?:on|along) {_MOST_SIDES})(?=[.,;!]|$)", (("y", "inward"), ("x", "")), beside=_LEGS),
    Plainer((" out",), rf"(?P<x>){_TURNED} out(?:wards?)?(?P<y>,? (?:on|along) {_MOST_SIDES})(?=[.,;!]|$)", (("x", "i think "), ("y", "")), beside=_LEGS),  # of the other side nothing is said
    Plainer((" side", " faces", " seams"), rf"(?P<v>{_TURNED} (?:out|in)(?:wards?)?)(?P<x>,? (?:on|along) (?:all(?: (?:of )?the| four)?|both|every|the other|4|four) (?:sides?|faces|seams))(?=[.,;!]|$)", (("x", ""),), beside=_LEGS),
    # --- "the inspector had me rip the tape off and I haven't put it back"
    Plainer((" me ",), rf"(?P<x>(?:(?:had|made|got) me (?:to )?{_OFF} (?={_THE_TAPE}{_NOT_OF})|(?:told|asked|wanted) me to {_OFF} (?={_THE_TAPE}{_NOT_OF}{_NOT_BACK})))", (("x", "came, I ripped "),)),
    Plainer((" back", " on"), rf"(?<![\w']){_OFF} {_THE_TAPE}{_NOT_OF}(?P<y>{_NOT_BACK})(?=[.,;!]|$)", (("y", ""),), beside=(" me ",)),
    # --- "leaving it bare till the other tape comes"
    *(
        Plainer((" till ", " until ", " til "), rf"(?P<x>(?:(?:{_I}(?:'m|'re| am| are)? )?(?:leaving|keeping|left|leave) (?:it|that|this|this one|that one|the (?:seams?|joints?))|(?:it|that one|this one|the (?:seams?|joints?))(?:'s| is| are)? (?:staying|stays|sits|sitting|going to stay)) {so}) (?:till|until|til)(?![\w'])(?![^.?!]*(?:(?:then|and|now|so)(?: {_I})?(?: \w+)? (?:{act}|put)|showed|came|yesterday|got here|this morning))", (("x", f"not {act} yet"),))
        for so, act in (("(?:bare|naked|untaped)", "taped"), ("unstapled", "stapled"), ("unrubbed", "rubbed"))
    ),
    # --- "how many taped? Two. The wall's in the way of the others."
    Plainer(("how many ",), r"(?P<x>how many(?: sides)?(?: (?:of them|of those|are|did i get|got))* (?P<a>taped|stapled|rubbed)\? (?:just |only )?)(?:one|two|three|four|all four|1|2|3|4)(?P<y>)(?=[.,;!]|$)", (("x", ""), ("y", r" sides \g<a>")), unless=rf"\d(?:,| and|, and) (?:{_KIND} )?\d|(?:straights|elbows|tees|offsets|pieces|fittings|collars|caps)"),
    # --- "I went up to prove him wrong and he's right"
    Plainer(("right",), rf"(?<=[.;!] )(?P<x>(?:so |and |but |well )*{_I} (?:went|climbed|got|looked|checked|crawled|walked|ran)[^.?!,;]*?,? (?:and|but) (?:(?:damn it|sure enough|turns out|it turns out|of course|wouldn't you know it),? )?)(?=(?:he|she|they)(?:'s| is| was|'re| were| are)(?: (?:dead|absolutely|perfectly))? right(?=[.!;]|$))", (("x", ""),), beside=(" say", " said", " claim", " swear", " swore", " told", " think", " thinks", " bet")),
    # --- "Had straight 103 been stapled at two I'd have slept better. It's stapled at four."
    Plainer(("had ", "if "), rf"(?:^|(?<=[.?!] ))(?P<x>(?:had|if) ){_KIND} \d+(?P<y> (?:had )?been (?P<a>taped|stapled|rubbed)(?: down)?(?: [^.?!;]*?)? {_WOULD}[^.?!;]*)[.;!] (?P<z>(?:but )?(?:it isn't|it wasn't|it's not|it is not|it was not|i didn't|i did not|we didn't))(?=[.,;!]|$)", (("x", ""), ("y", ""), ("z", r"it's not \g<a>"))),
    Plainer(("had ", "if "), rf"(?:^|(?<=[.?!] ))(?P<x>(?:had|if) ){_KIND} \d+(?P<y> (?:had )?been [^.?!;]*? {_WOULD}[^.?!;]*)(?=[.;!] (?:it|they|but|as it is|i|instead|the staples|the tape)(?![\w]))", (("x", ""), ("y", ""))),
    Plainer(("had ",), rf"(?:^|(?<=[.?!] ))(?P<x>had) {_KIND} \d+(?P<y> been) [^.?!;]*? {_WOULD}(?![\w])", (("x", "if"), ("y", " had been"))),
    # --- "the box says three inches. What came out of the box is two and a half."
    Plainer((" say", " said", " read", " claim"), rf"(?P<x>(?:the |that |its )?{_BOX} (?:says|said|reads|claims|claimed)(?: (?:it's|it is|it was))? {_L}(?: wide| tape)?[.,;:] (?:but |and |well )*{_CAME_OUT} ?{_IS} )(?P<m>{_L})(?P<y>)(?: wide| inches wide)?(?=[.,;!]|$)", (("x", "the tape is "), ("y", " wide")), beside=("tape", "181a"), unless="staple"),
    Plainer((" say", " said", " read", " claim"), rf"(?P<x>(?:the |that |its )?{_BOX} (?:says|said|reads|claims|claimed)(?: (?:it's|it is|it was|they'?re))? {_L}(?: staples?| legs?| long)*[.,;:] (?:but |and |well )*{_CAME_OUT} ?(?:{_IS}|are|were) )(?P<m>{_L})(?P<y>)(?=[.,;!]|$)", (("x", "the staple legs are "), ("y", " long")), beside=("staple",), unless="tape"),
    # --- "every three, which is what the apprentice wrote down; I laid a tape on it myself and it's an inch and three quarters"
    Plainer((" wrote", " writes", " put down", " told me", " said", " says", " claim", " down", " logged", " marked", " called", " reported", " swears", " guessed"), rf"(?P<x>(?:every|at) {_M}(?: apart)?{_WAS_TOLD}[.,;:]+ (?:but |and |then |so )*{_MEASURED_IT}(?:,? and|,|;|\.)? ?{_IT_IS} (?:every )?(?:an? (?=inch))?)(?={_M})(?!{_M}(?: inches)? (?:long|wide|by|x|deep|tall))", (("x", "every "),), beside=("stapl",)),
    Plainer((" tape ",), rf"(?<![\w'])(?P<x>{_I} (?:laid|put|held|hooked|dropped) (?:a|the|my) tape(?: measure)?(?: down)? (?:on|to|across|against|along) (?:it|them|that|those)(?: myself)?(?:,? and|,|;) )(?={_IT_IS} {_M}(?! ?(?:inches |inch )?wide))", (("x", "measured it, "),)),
    # --- "stapled at four, is what it'd be if Denny had done it. I did it, so two."
    Plainer((" if ",), rf"(?P<x>(?:every|at) {_M}(?: apart)?,? (?:is|that's|which is|that would be)(?: (?:what|how))? ?(?:(?:it|they|you)(?:'d| would)(?: have)?(?: (?:be|been|get|have|gotten|see|find))? )?if [^.?!;,]+[.,;!] (?:but |and |only )*{_I} did(?: it| this one| them| these)?(?: myself)?,? (?:so|and) (?:it's |they'?re |that's )?(?:every |at )?)(?={_M})", (("x", "every "),), beside=("stapl",)),
    Plainer((" if ",), rf"(?P<x>(?:stapled )?(?:every|at) {_M}(?: apart)?,? (?:is|that's|which is|that would be)(?: (?:what|how))? ?(?:it|they|you)(?:'d| would)(?: have)?(?: (?:be|been|get|have|gotten|see|find))? if [^.?!;,]+)(?=[.,;!]|$)", (("x", ""),), beside=("stapl",)),
    # --- "Low step to the outside, I thought, so I pulled it apart, and no, it was to the inside all along."
    Plainer(("thought", "figured", "guessed", "believed", "assumed", "sure", "sworn", "said", "swore"), rf"(?P<x>(?:to the |on the |facing |faces )?(?P<a>in|out)(?:side|ward)?, {_THOUGHT}[.,;](?: (?:but |and |so |then )*[^.?!]{{0,70}}?)? (?:(?:and|but) )?(?:no|nope),? (?:it was|it's|it is|it faced|it faces) )(?=(?:to the |on the |facing )?(?!(?P=a))(?:in|out)(?:side|ward)?(?![\w']))", (("x", " "),), beside=("step", "groove", "shiplap")),
)
