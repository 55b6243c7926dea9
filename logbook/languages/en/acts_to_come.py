"""English frames of any act: whose list it is on, which day it is set for, and what has to happen first."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.en.filth import FILTHS
from logbook.languages.en.done_over import ENGLISH_DONE_OVER
from logbook.languages.en.taping import ENGLISH_ACTS_TAPING

_DAY = (
    r"(?:tomorrow|tonight|later(?: on)?|this (?:afternoon|evening|weekend)|the (?:weekend|morning|afternoon)|in the (?:morning|afternoon)|first thing|next (?:week|shift|trip|visit|\w+day)|(?:on )?(?:mon|tues|wednes|thurs|fri|satur|sun)day|after (?:lunch|break)"
    r"|(?:by|before|at|around) (?:noon|lunch|quitting time|tonight|the end of the day|\w+day))"
)
_WILL = r"gonna|going to|'ll|will|have to|need to|got to|gotta|want to|wanna|plan to|planning to|hope to|hoping to|intend to|like to|should|can|looking to|fixing to"
_DONE_FIRST = r"(?:stapl|tap(?:e|ed|ing)\b|rubb|dry\b|dried|clean|wip|seat|everything|it's (?:all )?(?:square|tight|together)|joint|seam)"
# "once Pete is back": what is awaited is told in the present, and is no work on the piece: "the tape goes on once it's stapled" is how it is always done
_FIRST = rf"(?:once|when|whenever|as soon as|soon as|until|till) (?!i (?:was|got|went|came)\b)(?=(?:the |my |our |his |some |a )?[\w']+(?: [\w-]+)? ?(?:is|are|'s|'re|has|have|gets?|comes?|brings?|shows?|moves?|frees?|opens?|returns?|finds?|arrives?|lets?|warms?|quits?|stops?|leaves?|clears?|fixes|[\w-]+s up)\b)(?![^.;,]*\b{_DONE_FIRST})"
_THEN = rf"(?:{_DAY}\b|{_FIRST})"
_NAMED = r"(?:the |my |its |all the |that )?(?:{noun}|{doing})(?: (?:job|part|work|of it))?"
_STAYS = r"(?:'s| is| are| was|'re| will be|'ll be| stays| went)(?: (?:still|all|just|only|now|down|already|gonna be|going to be))*"
_WHOSE = r"(?:the |my |his |her |our |their |your |tomorrow's |monday's |\w+'s )"
_SIDE = r"(?:(?:top|bottom|left|right|back|front|far|near|last|fourth|third|other|long|short|one|blind) (?:side|seam|end|joint|edge|corner|half|cheek|one)|top|bottom|underside|back|heel|throat)"
_NO_REACH = r"(?:(?:i|we|the \w+|my \w+|nobody)(?: just| really| sure)? (?:can't|cant|cannot|couldn'?t|could not|can not|could never|doesn'?t|didn'?t|won't|wouldn't|could|can)(?: even| quite)? (?:reach|fit|get (?:at|to|in|up|around|behind|under|over))(?: (?:in|up|over|around|there|it|in there|up there|back there|far enough))*)"
_PUTS_OFF = r"(?:put|putting|pushed|pushing|moved|left|leaving|bumped|kicked|shoved|moving|holding|held)"

ENGLISH_ACTS_TO_COME = replace(
    ENGLISH_ACTS_TAPING,
    hints=ENGLISH_ACTS_TAPING.hints + r"|list|sheet|plate|slated|sched|booked|set for|job|goes|goin|once|until|till|when|off",
    to_do=(
        *ENGLISH_ACTS_TAPING.to_do,
        rf"{_NAMED}{_STAYS} (?:up |down |high )?(?:on|at the top of) {_WHOSE}(?:[\w-]+ )?(?:list|sheet|plate|schedule|calendar|to-?do|agenda|docket|dance card|whiteboard)\b",
        rf"{_NAMED}{_STAYS} (?:slated|set|down|booked|scheduled|planned|penciled in|in line|up|due|kept|saved|marked|meant|there|left|waiting|on) (?:for|until|till) {_DAY}\b",
        rf"{_NAMED}{_STAYS} (?:for )?(?:\w+'s|his|hers?|theirs?|yours|mine|the (?:kid|apprentice|helper|next shift|night crew|other crew|next crew)'?s?)(?: (?:job|turn|task|work|problem|baby))? (?:to do\b|{_DAY}\b)",
        rf"{_NAMED}(?: (?:still|then|just|now|only))* (?:remains?|is left|are left) (?:to (?:be (?:done|finished|made|added)|do|come|follow)|open|outstanding|undone|pending)\b",
        rf"{_NAMED}(?: (?:then|just|only))* (?:(?:will |'ll |'s going to |is going to )?(?:follow|come|happen|take place|get done|be done)|follows|comes|happens|takes place|is coming|'s coming|gets done|gets (?:put|laid) on|(?:is|'s) on)(?: (?:next|up|on|in|then|only|along|off|out))*,? (?:for )?{_DAY}\b",
        rf"{_NAMED}(?: (?:then|just|only))* (?:follows|comes next|comes after(?= that| this)|will follow|to follow)(?=$|[.,;]| (?:after|as soon|when|once))",
        rf"{_PUTS_OFF} {_NAMED} (?:off |back |over )?(?:until|till|for|to) {_THEN}",
        rf"{_PUTS_OFF} (?:off|back) {_NAMED} (?:until|till|for|to) {_THEN}",
    ),
    unfinished=(
        *ENGLISH_ACTS_TAPING.unfinished,
        r"(?!(?:but |and |so |then |just )*(?:don't|do not|nobody|nothing|never|won't|can't)\b)(?:.{0,90}? )?(?:until|till|til|'til) (?:i|we) (?:can (?:get|do|finish)\b|get (?:to|back|around|another|more|some|a|the|my)\b|do\b|finish\b|come back\b|go back\b|have (?:another|more|time)\b)",
        rf".{{0,60}}?\b(?:bare|open|loose|clamped|undone|unfinished|as is|like that|naked)(?: like that)? (?:until|till|til) (?:{_DAY})",
        r"(?:but |and |still |there's |there are |there is |got |has |have |[#\d]+ )*(?:no|zero) (?:# ?|#+ )(?:#+ )?(?:in|on|up|over|here|there|installed|at|[#\d]| )*yet\b",
        r"(?:but |and |so |(?:[#\d]+,? )?(?:staples?|tape|rub),? )*(?:none|nothing)(?: of (?:it|that|them|those))?(?:'s| is| are)?(?: been| got)? (?:done|finished|started)(?: (?:on|to) (?:it|this one|[#\d]+))?(?: yet| so far)\b",
        rf"(?:(?:and|but|so|then|i guess|i think|[#\d]+) )*(?:(?:i|we)(?:'m|'re|'d| am| are)?(?: still| just| probably)*)? ?(?:(?:{_WILL})(?: still| just| probably| maybe| try to)* (?:(?:come|go) back and )?(?:(?:finish|wrap|button|close|complete)|be (?:done|finished|through)(?: with)?)|(?:finishing|wrapping|buttoning|closing|completing)\b)(?: (?:it|this|that|this one|that one|her))?(?: (?:up|off|out|in))?,? (?:first thing |sometime |right |early |maybe |probably |either )*{_THEN}",
    ),
    unfinished_looks=ENGLISH_ACTS_TAPING.unfinished_looks + r"|\b(?:is|are|am|will) to\b|'m to|'ll|\bwill\b|\bto be\b|\bgonna\b|\bgoing to\b|\bmust\b|\bgets?\b",
    done_over=ENGLISH_DONE_OVER,
    piece_waits=r"(?:(?:still|just|though|now|then)? ?(?:has to|have to|had to|will have to|'ll have to|is gonna have to|'s gonna have to|needs to|must|gets to|can|could|will|'ll|is gonna|'s gonna) wait\b|waits (?:on|for|until|till)\b)",
    partly=(
        *ENGLISH_ACTS_TAPING.partly,
        rf"{_NO_REACH} to (?:even |quite |really |get in and )?{{verb}}\b",
        r"(?:the |that |this |one |its |my )(?:\w+ )?(?:side|seam|end|joint|edge|corner|cheek|half|one)(?:,? (?:which|that))?(?: (?:is|i|we|i've|we've|'s))*(?: (?:have|still|only|just|got))* (?:bare|naked) of {noun}\b",
    ),
    of_one=(
        *ENGLISH_ACTS_TAPING.of_one,
        ("taped", False, r"(?<!in the )(?:the |its |that )?(?:back|bottom|top|left|right|front|underside|(?:far|near|last|other|fourth|left|right|back|top|bottom|long|short) side)(?:'s| is| was| stays| stayed| sits| is staying)(?: (?:still|just|all|left))* (?:bare|naked|uncovered)\b(?! (?:glass|fiber|fib|insulation|metal|end))"),
        ("scrim_shows", False, r"(?:the |that |my )?(?:tape|foil)(?: (?:on it|on there|up there|on top|on the bottom|on (?:\w+ )?[\w-]*[#\d][\w-]*))?(?: just| still)* (?:won't|doesn't|didn't|isn't|wouldn't|never|don't)(?: really| quite| even| ever)* (?:show|shows|showed|showing|let|letting)(?: me see)? (?:the |any |no |much |its |enough )?(?:scrim|weave)\b(?: (?:show|through|come|showing|up))*"),
        ("trimmed", False, r"(?:left|leaving|leaves|forgot)(?: all| some| a (?:bit|little|lot)| most| plenty| part| half)*(?: of)? (?:the |that |my |its )?(?:insulation|fiber ?glass|glass) (?:in|inside|on|at|hanging (?:out of|off)|sticking out of|still in) (?:the |that |its |my )?(?:male|female|end|cut|flap|edge|lip)\b"),
        ("taped", False, r"(?<!at the )(?<!from the )(?<!to the )(?<!over the )(?<!past the )(?:foot|feet|inch|inches|side|bit|spot|stretch|end|corner|piece|strip|gap|seam)(?: [\w']+){0,6}? where (?:the |my |that )?(?:roll|tape|foil)(?: just| finally)* (?:ended|quit|ran out|gave out|died|ran dry|ran short|came up short|stopped)\b"),
        ("taped", False, r"(?:the |my |that |our )?(?:roll|tape|foil)(?: just| then| went and)* (?:ended|quit|ran out|gave out|died|was gone|ran dry)(?: on (?:me|us))?,? (?:on|at|before|halfway|half way|short of|right at|with) (?:the |my |that |a |one |two |down |through )"),
        ("stapled", None, r"(?:only|just|nothing but) (?:the )?tape(?:'s| is| that)? (?:holds|holding|keeps|keeping|closes|closing)\b|tape (?:alone|by itself|on its own)(?:'s| is)? (?:holds|holding|keeps|keeping)\b|(?:it's|it is|that's) (?:just |only )?the tape (?:that )?(?:holds|holding|keeps|keeping)\b"),
        ("surface_clean", False, rf"{FILTHS} (?:got|blew|fell|drifted|settled|came|ran|dripped|sifted|slipped|crept|flew|found its way)(?: (?:in|all|right|up|down))* (?:under|underneath|beneath|behind) (?:the |my |that )?(?:tape|foil)\b"),
        ("surface_clean", False, r"(?:smears?|streaks?|stains?|smudges?|grit|lumps|crumbs|specks|bits|dust|oil|grease|dirt)(?: \w+){0,2} (?:under|beneath|underneath) (?:the |my |that )?(?:foil|tape)\b"),
        ("surface_clean", False, rf"tap(?:e|ed|ing)\b[^.;]{{0,40}}? with (?:\w+ )?(?:{FILTHS}) (?:all over|on) (?:my|his|the|both) (?:gloves?|hands?|fingers?)\b"),
        ("surface_clean", False, rf"still (?:some |a (?:bit|little|film|smear|coat) of |plenty of |that |a lot of )?{FILTHS}\b(?: \w+){{0,4}}? on\b(?! (?:the|my|his) (?:floor|bench|truck|gloves?|hands?|saw|cart|pallet|table))(?![^.;]*\b(?:wiped|cleaned|got it off)\b)"),
    ),
    of_sentence=(
        *ENGLISH_ACTS_TAPING.of_sentence,
        ("taped", False, r"(?:no (?:more )?tape(?: left)?|(?:ran|run|all|fresh) out of tape|out of tape|tape(?:'s| is| was) (?:all )?(?:gone|out|used up))\b[^.;]{0,60}?\b(?:stapled only|only stapled|just stapled|only (?:the |got )?staples|staples only|just (?:the )?staples)\b"),
        ("surface_clean", False, rf"{FILTHS} (?:got|blew|fell|drifted|settled|came|ran|dripped|sifted|slipped|crept|flew)(?: (?:in|all|right|up|down|on))* (?:under|underneath|beneath|behind)(?: (?:there|it))?(?=[.,;]| and| when| while| before)[^.;]*\b(?:tape|taped|taping|foil)\b(?![^.;]*\bwiped)"),
    ),
    looks=ENGLISH_ACTS_TAPING.looks + r"|under|stapled only|only stapled|just stapled|staples only|only (?:the |got )?staples",
    across=(
        *ENGLISH_ACTS_TAPING.across,
        ("partly", rf"(?:{{noun}}|{{done}})\b[^.;]{{0,40}}?(?:,| but| and)+ (?:and |but |while |only )?(?:the |that )(?:{_SIDE}|(?:one|side|seam|end|joint|edge|corner)(?! (?:next|beside|before|after|i |we |he |over there|i'm))(?: \w+){{1,5}}?)(?: still| just| really)* (?:has|got|gets|had|have|has got)(?: (?:still|just|got))* (?:none|nothing|zero|not a (?:one|thing))\b"),
        ("partly", rf"{_SIDE}(?: tomorrow)?,? (?:(?:which|that|the one|where) )?{_NO_REACH} to (?:even |quite |really )?{{verb}}\b"),
        ("to_do", rf"(?:the |my |its |that |some )?{{noun}}(?:'s| is| are|'re| goes| go| gets| can| will|'ll|'s gonna| is gonna| has to)(?: (?:still|only|just|then|be|go|going|gonna|to|get|put|have))* (?:on|in)(?: (?:there|it|them))?,? (?:only |but only |not )?{_THEN}[^.;,]*"),
    ),
)
