"""English of one word set against another: what he would like it to be and what it is, another piece and this, what was and is no more, another's and his own.

Regular expressions over lower-case letters, as in `plainer.py`.
"""

from __future__ import annotations

from logbook.languages.en.measured import _M
from logbook.languages.en.numbers import SAID_NUMBER as _NUMBER
from logbook.languages.plainer import Plainer

_I = r"(?:i|we)"
_DONE = r"(?:taped|stapled|rubbed(?: down)?|wiped|trimmed)"
_SIZE = rf"{_NUMBER} (?:by|x) {_NUMBER}"
_TOO_MUCH = r"(?:is|would be|might be|may be|was)(?: kind of| maybe| probably)? (?:an? )?(?:strong word|big word|generous(?: word)?|stretching it|stretch|putting it (?:kindly|strongly|nicely|mildly)|too (?:kind|strong|generous)|kind word|pushing it|saying (?:a lot|too much)|overstatement|optimistic)"
_ONLY_SO = r"(?:(?:which|that|at least that|at least it)(?:'s| is| was| would be) (?:what|how|the)|is what|supposedly|allegedly|so they say|or so they say|if you believe|if i (?:was|were)|in theory|on paper|in (?:my|his|their) dreams|like it should|like it's supposed to|like the book says|officially)"
_THEN = r"(?:this morning|yesterday|before (?:lunch|break|noon)|earlier|at first|when i left(?: it)?|monday|tuesday|wednesday|thursday|friday|last night|last week|an hour ago)"
_ENDS = r"(?=[.,;!]|$| and | but | because )"
_PLACED = r"(?:truck|van|bus|locker|badge|gate|dock|lane|ticket|invoice|permit|phone|hat|radio|channel|parking spot|seat|bed|exit|highway|route|door)"

ENGLISH_SET_AGAINST = (
    # --- a word that is too much for it
    Plainer((" word", "generous", "stretch", "putting it", "too kind", "too strong", "pushing it", "saying ", "overstate", "optimistic"), rf"(?<![\w'])(?P<x>(?:calling it |saying )?(?P<a>{_DONE}) {_TOO_MUCH}){_ENDS}", (("x", r"it's not all \g<a>"),)),
    Plainer(("so-called", "so called"), rf"(?<![\w'])(?P<x>so[- ]called )(?P<a>{_DONE})", (("x", "i think "),)),
    # --- so far apart as it would be nice, and as it is
    Plainer(
        ("what ", "how ", "suppos", "alleged", "they say", "believe", "if i ", "theory", "paper", "dreams", "should", "book says", "official"),
        rf"(?<![\w'])(?P<x>(?:every|at) {_M}(?: inch(?:es)?)?(?: apart)?,? {_ONLY_SO}[^.?!;,]{{0,50}}[.,;] (?:but |and |only |really |well )*(?:it's|they're|they are|it is|{_I} got|it came out|it comes out|mine's)(?: (?:really|actually|only|about|more like|closer to))* (?:every |at )?)(?={_M}(?! (?:inch |in )?(?:long|legs?|wide|by|sides?|of|staples|tabs)))",
        (("x", "every "),),
    ),
    Plainer(("suppos", "alleged", "in theory", "on paper", "officially"), rf"(?<![\w'])(?P<x>(?:supposedly|allegedly|in theory|on paper|officially)(?: it's)? )(?P<a>stapled )(?P<y>(?:every|at) {_M}(?: inch(?:es)?)?(?: apart)?[.,;] (?:but |and |only |really )*(?:it's|they're|they are|it is)(?: (?:really|actually|only|more like|closer to))* (?:every |at )?)(?={_M}(?! (?:inch |in )?(?:long|legs?|wide|by|sides?|of|staples|tabs)))", (("x", ""), ("y", "every "))),
    # --- another counts so, he counts otherwise
    Plainer((" says ", " said ", " claims "), rf"(?<![\w'])(?:says|said|claims|claimed|swears)(?: it's| they're)? (?P<m>{_M}(?: inch(?:es)?)? apart|every {_M}(?: inch(?:es)?)?)[.,;] (?:but |and |well )*(?P<x>{_I} (?:say|said|get|got|count|counted|make it|measured)(?: every)? )(?={_M}(?:[.,;!]|$| and | i ))", (("x", "the staples are every "),)),
    Plainer((" looking at ", " measuring ", " talking about ", " thinking of ", " counting "), r"(?P<x>,? (?:but |because |cause |only )(?:he|she|they)(?:'s| is| was| were|'d been) (?:looking at|measuring|talking about|thinking of|counting) (?:number )?\d{1,3}[,;.] (?:and |but )?)(?=(?:number )?\d{1,3}(?:'s| is| are|'s got| has) )", (("x", ". "),)),
    # --- "14 by 12, no that's 21, 20 is 12 by 12"
    Plainer(("that's ", "that is ", "that was "), rf"(?:no|hold on|wait|hang on|nope|sorry)[,.]? (?P<x>that(?:'s| is| was) (?:number )?\d{{1,3}}[,.;] (?:and |but )?(?:number )?\d{{1,3}}(?:'s| is| was)(?: an?)? )(?={_SIZE})", (("x", "make that "),)),
    Plainer(("drawn ", "designed ", "shown ", "spec'd ", "detailed ", "called out "), rf"(?<![\w'])(?P<x>(?:'s |is |was |it's )?(?:drawn|designed|shown|spec'd|detailed|called out)(?: as| at)? {_SIZE},? (?:but |and |only )?(?:(?:i|we) )?(?:built|made|cut|came out)(?: it)?(?: at| as)? )(?={_SIZE})", (("x", ""),)),
    Plainer(("cut it", "trimmed it", "took it"), rf"(?:cut|trimmed|took) it (?:down |back )?to (?P<x>{_NUMBER}(?: inch(?:es)?)?[,.;] [^.;]{{0,40}}?(?:too long|not enough|wouldn't go|didn't fit|too tight|too big|still long)[,.;] (?:so |then |and )*(?:{_I} )?(?:cut|trimmed|took) it (?:again |down |back )*to )(?={_NUMBER})", (("x", ""),)),
    # --- was so, and is no more
    Plainer((" not now", " not any", " not today", " no more", " isn't now", " ain't now", "isn't anymore", "ain't anymore"), rf"(?:was|were)(?: all)? tight {_THEN}[.,;] (?:but |and )*(?P<x>(?:not|it isn't|it's not|it ain't|ain't|isn't) (?:now|any ?more|no more|today)[.,;] (?:(?:it's|now it's|there's|now there's|i see|i got|it's open) )?(?:like |about |a good )*(?=an? |half|quarter|eighth|three|five|\d))", (("x", "now there's a gap of "),)),
    Plainer((" not now", " not any", " not today", " no more", " isn't now", " ain't now", "isn't anymore", "ain't anymore"), rf"(?P<x>(?:was|were)(?: all)? (?P<a>{_DONE}|tight|clean|dry) {_THEN}[.,;] (?:but |and )*(?:not|it isn't|it's not|it ain't|ain't|isn't) (?:now|any ?more|no more|today)){_ENDS}", (("x", r"is not \g<a> now"),)),
    # --- what it needs
    Plainer(("what ",), r"(?:^|(?<=[.!?;,] ))(?P<x>what (?P<n>it|this one|(?:straight |elbow |number |tee )?\d{1,3}) (?:still )?(?:needs|wants|lacks|could use|is missing)(?: still| yet| most)? (?:is|was) )(?:some |a |the |its )?(?:tape|staples|vanes|mastic)(?![\w'])", (("x", r"\g<n> still needs "),)),
    # --- others' and his own
    Plainer((" mine ",), rf"(?:^|(?<=[.!?;,] ))(?P<x>all (?:of )?(?:[a-z]+'s|his|hers|theirs)(?: (?:straights|pieces|elbows|stuff|ones))? (?:are|were|got|have been) (?P<a>{_DONE})[.;,] (?:but |and )?(?:all (?:of )?)?)mine (?P<y>aren't|are not|weren't|isn't|not){_ENDS}", (("x", ""), ("y", r"aren't \g<a>"))),
    # --- numbers and names that are of something else
    Plainer((" number ", " no. "), rf"(?<![\w'])(?<!access ){_PLACED}(?:'s| is| was)? (?:number|no\.) (?P<x>\d{{1,4}})(?![\d/.-])", (("x", "so and so"),)),
    Plainer(("the piece is ", "my piece is ", "the fitting is ", "the piece was "), r"(?:^|(?<=[.!?;,] )|(?<= and )|(?<= but ))(?:the|my) (?:piece|fitting)(?: here| i'm on| i did| i made)? (?:is|was) (?P<x>)(?=\d{1,3}[.,;])", (("x", "number "),)),
    Plainer((" mean ",), r"(?<![\w'])(?P<x>(?:part number |the number |the mark )?181a-?[phm]) (?:doesn't|don't|does not|didn't) mean (?:anything|a thing|nothing|much|squat)", (("x", "that"),)),
    # --- how far he got a gap closed
    Plainer((" it to ", " it up to", " it down to", " it in to", " it back to"), r"(?<![\w'])(?P<x>(?:an? )?(?:half|quarter|eighth|sixteenth|three[- ](?:eighths|sixteenths|quarters)|\d/\d+)(?:[- ]inch)?(?: gap)?[,.;] (?:(?:and|then|so|i|we|but) )*(?:closed|brought|pulled|squeezed|got|worked|took|drew|knocked) it (?:all |back )?(?:up |down |in |together )*to (?:about |like |maybe )*)(?=(?:an? )?(?:half|quarter|eighth|sixteenth|three[- ](?:eighths|sixteenths|quarters)|\d/\d+)(?![\w']))", (("x", ""),), beside=("gap",)),
    Plainer((" it to ", " it up to", " it down to", " it in to", " it back to"), r"(?<![\w'])(?P<x>(?:closed|brought|pulled|squeezed|got|worked|took|drew|knocked) it (?:all |back )?(?:up |down |in |together )*to (?:about |like |maybe )*)(?=(?:an? )?(?:half|quarter|eighth|sixteenth|three[- ](?:eighths|sixteenths|quarters)|\d/\d+)(?![\w']))", (("x", "now it's "),), beside=("gap",)),
    # --- from afar, and what was done in the end
    Plainer((" say ", " think ", " swear ", " guess ", " figure "), rf"(?:^|(?<=[.!?;,] ))(?P<x>from (?:the (?:floor|ground|ladder|door|hall|hallway|lift|stairs|outside)|here|down here|over here|there|a distance|afar|far away|below),? (?:you'd|you would|anybody'd|he'd|they'd|i'd) (?:say|think|swear|guess|figure)(?: that)? )(?:(?:straight|elbow|tee|number|piece) \d{{1,3}}|(?P<k>)\d{{1,3}}|it|this one|it's)(?P<y>(?: is| was|'s)?(?: all)? {_DONE}){_ENDS}", (("x", ""), ("k", "number "), ("y", ""))),
    Plainer(("untaped", "unstapled", "unrubbed"), r"(?:^|(?<=[.!?;,] ))(?P<x>(?:it |this one )?(?:looks|looked) un(?:taped|stapled|rubbed)[^.?!,;]*?,? but )(?=(?:it's|it is|i|we) )", (("x", ""),)),
    *(
        Plainer(("up taping", "up stapling", "up rubbing", "up wiping", "up trimming"), rf"(?<![\w'])(?P<x>(?:{_I} )?(?:just |finally |then )*(?:ended|wound) up {doing})(?= (?:it|them|that|this|both|all|over|down|the|every)(?![\w'])|[.,;!]|$)", (("x", f"I {done}"),))
        for doing, done in (("taping", "taped"), ("stapling", "stapled"), ("rubbing", "rubbed"), ("wiping", "wiped"), ("trimming", "trimmed"))
    ),
)
