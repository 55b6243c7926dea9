"""English that sets a part of a piece apart: "all but the last foot", "save for the last six inches", "the right? Nope."."""

from __future__ import annotations

from types import MappingProxyType

from logbook.languages.all_but import AllBut

_PART = r"(?:foot|feet|ft|inch|inches|bit|stretch|hand|hand's width|hand's breadth|hand width|corners?|ends?|side|seam|joint|edge|strip|branch|throat|heel|collar|flap|back|top|bottom|left|right|front|tap|lip|spot|section|half|quarter|third|mouth|cheek|underside|under side|inside|outside|far one|last one|few inches|couple of inches)"
_SIDE = r"(?:top|bottom|left|right|back|front|fourth|fourth one|other one|inside|outside|sides|ends?|far|near|wall|rest|underside|far end|near end|last one|last side)"
_NAMED = rf"(?:the|its|my|that) (?:{_SIDE}|{_SIDE} (?:side|one|seam|edge|end|joint|hand side|of it)|other (?:side|end|seam)|hand side)"
_NONE = (
    r"(?:nope|no|none|nothing|nah|not yet|not a (?:strip|stitch|staple|scrap|bit|one|thing|lick|single one|chance)|not one|not an inch|never got (?:to it|there|any)|couldn't(?: (?:get|reach)(?: (?:it|there|at it|in there))?)?|didn't(?: (?:get|reach|do) (?:it|there|any|to it))?|bare|naked|no (?:tape|staples|such luck)|haven't(?: yet)?|without|skipped(?: it)?|forgot(?: it)?|still open)"
)

_WHICH = r"(?:(?:left|right|top|bottom|back|front|far|near|inside|outside|upper|lower|male|female|other|short|long|hand|second|third|fourth|last|big|small|little|inner|outer|one|extra) ){0,3}"
_THING = r"(?:seams?|joints?|sides?|ends?|edges?|corners?|throat|heel|cheeks?|flaps?|insulation|wool|glass|fiberglass|top|bottom|left|right|back|front|underside|branch|collar|neck|mouth|strip)"
_WHERE = r"(?: (?:of|at|in|out of|on|by|along|under|inside|from|behind|near|over|against|up by|up against|next to|towards?|facing|to) (?:(?:the|its|that|my) )?(?:\w+ ){0,2}?\w+| next to (?:it|that|the \w+)| (?:above|below|beside|underneath|behind) it| there)?"
_NEVER_WENT = r"(?:never|didn't|did not|haven't|couldn't)(?: (?:ever|even))? (?:go|went|gone|got|get|gotten|come|came|make|made it)(?: (?:back|around|over|round))*(?: (?:to|for))?"
_FEW = r"(?:third|fourth|last|other|remaining)(?: (?:one|ones|two|three|pair|couple))?"
_CANNOT = r"(?:(?:(?:couldn't|could not|can't|cannot|wasn't able to|was not able to|never could|had no way to) (?:quite |really |even )?(?:get|reach|squeeze|fit|do|go|manage|bring|stretch|bend|work|put|come at)|didn't manage(?: to)?|never managed(?: to)?|gave up on)(?: (?!but|and|so|because)[\w'-]+){0,5}|(?:clean )?forgot(?: (?:about )?(?:it|that|them|that one))?|overlooked(?: it)?)"
_NOT_SO = rf"(?:,? ?(?:(?:i|we)(?: did| have| had| could|'d|'ve)?(?:n't| not)(?: yet)?|(?:i|we) never did|(?:is|was|are|were|did|does|do|has|have|had|ain)(?:n't|'t| not)(?: yet)?|(?:,|:|=|-)? ?no(?:pe)?|not(?: yet)?|never|(?:i|we) (?:just |still )?(?:{_NEVER_WENT}(?: (?:it|that|them|that one|those))?|{_CANNOT}|left|skipped)))"
_ENDS_SO = r"(?= ?(?:[.,;!?]|$| and | but | because | since | cause ))"
_BEGINS_SO = r"(?:(?<=[,;.:] )|(?<= and )|(?<= but )|(?<=, but )|(?<=, and ))"
_OTHER_HARM = rf"(?:the |its |that )?{_WHICH}(?:other|one|second|third|tears?|holes?|rips?|dents?|gash|cuts?|slits?|punctures?|corner|spot|crush)(?: (?:one|two|hole|tear|rip|dent|spot))?"

ENGLISH_ALL_BUT = AllBut(
    left_out_part=rf"{_BEGINS_SO}(?P<of>(?:the |its |that |my )?{_WHICH}(?:(?P<part>{_THING})|{_FEW}|second(?: one)?|rest){_WHERE}?{_NOT_SO}|(?<= )(?:i |we )?(?:clean |plain |just )?(?:{_NEVER_WENT}|skipped|missed|forgot(?: about)?) the (?:{_FEW}|rest|(?P<parts>(?:top|bottom|left|right|back|front|far|near|inside|outside)(?: one| side)?))(?: (?P<parted>{_THING}))?){_ENDS_SO}",
    left_out_harm=rf"(?P<of>{_BEGINS_SO}{_OTHER_HARM}{_WHERE}?{_NOT_SO}|(?<=[ ,])not {_OTHER_HARM}{_WHERE}){_ENDS_SO}",
    seen_to=r" ?[.,;]? ?(?:so|but|and|then) (?:then )?[\w']+(?: [\w']+)? (?:did|got|finished|reached|went|taped|stapled|rubbed|wiped|trimmed|caught)\b(?! (?:not|nothing|none|away|stuck))| ?[.,;] ?(?:(?:and|so|then|but|now|since|later) )*(?:(?:i|we)(?:'ve| have)? )?(?:went back|came back|got back|taped|stapled|rubbed|wiped|trimmed|did|done|got|fixed)(?: (?:it|that|them|those|to it|and|for it|now|since|after))",
    left_out_told=rf"(?P<of>(?:{_BEGINS_SO}|^)(?:the |its |that )?(?:{_WHICH}{_THING}{_WHERE}? \w+ed(?: (?:down|off|back|out))?|\w+ed(?: (?:down|off))?{_WHERE}),? (?P<told>no(?:pe|t yet)?))(?= ?(?:[.;!]|$)|, (?:i|we) (?:forgot|did|have|could|never|left|ran|was|were))",
    only_one=r"\b(?:two|three|four|five|six|couple(?: of)?|few|several|[2-9]) (?:\w+ )?(?:tears|holes|rips|dents|gashes|cuts|slits|punctures|spots|corners)\b[^.;!?]*?(?P<of>\b(?:only|just) (?:(?:the|patched|fixed|mended|got|did|closed|repaired) )*(?:\w+ ){0,2}?(?:one|first|second|near|far|top|bottom|left|right|big|small)\b)",
    so_many=r"\b(?:one|two|three|half|most|some) (?:of (?:them|it|the)|sides?|seams?|joints?|edges?)\b|\bthe first (?:one|two|three|couple)\b",
    a_part=rf"\b{_THING}\b|\b(?:one|two|three|most) of (?:them|the four|it)\b|\bthe first (?:one|two|three|couple)\b",
    apart=rf"(?<!nothing )(?<!anything )(?<!none )(?<!could )(?<!can )(?<!not )(?:(?<=all )but|(?<=sides )but|(?<=side )but|(?<=seams )but|(?<=everything )but|(?<=everywhere )but|(?<=the whole thing )but|(?<=whole lot )but|except(?: for| at| on)?|excepting|save(?: for)?|(?<=, )bar|minus|apart from|other than|short of|shy of|aside from) (?:the|a|an|one|my|its|that|about|maybe|last)(?: (?!one(?![a-z])|ones|time|tape|staples?|vanes?)[\w'/-]+){{0,3}}? ?(?<![\w'-]){_PART}(?![\w'-]| (?:one|ones|piece|elbow|straight|tee|by|of the (?:tape|roll|line|day|hall|run)))"
    rf"|(?:a|one|two|three|half a|about a|\d+) (?:foot|feet|hand)s? (?:short|shy) of (?:the|its) (?:end|edge|corner|seam|joint|mark|top|bottom)",
    side=rf"(?:(?<=[.?!;] )|(?<=[.?!;] and )|(?<=, and )|(?<=, but ))(?:(?:and|but|what about|how about|as for|now|oh) )*{_NAMED}(?:[?:]|,| -) ?(?:(?:well|ah|er|uh|hm|sorry|that's a|that's)[, ]+)*{_NONE}(?= *(?:[.,;!]|$))"
    rf"|(?<![a-z]){_NAMED} (?:hasn't got|hasn't|haven't got|doesn't have|don't have|didn't get|never got|never had|never saw|hasn't seen|didn't see|has not got) (?:one|any|a single one|a one|it|a strip|a stitch|an inch|a staple|a scrap|a lick)(?: of (?:it|them|that))?(?= *(?:[.,;!]|$))",
    cured=r"[^.?!]{0,80}?[.,;]? ?(?:and |but |which |then |so )*(?:(?:that(?: one)?|it|those|this) )?(?:(?:i|we)(?:'ve| have)? )?(?:went back|got (?:it|that|them|to it)|did (?:it|that|them|after|later|too|last)|came back|finished|fixed|done (?:now|since|too|after)|(?P<taped>taped (?:it|that))|(?P<stapled>stapled (?:it|that))|(?<=i )(?:did|got|taped|stapled)(?! (?:not|n't)))",
    fewer=r"(?<![a-z])(?:all )?(?:four|4|three|3)(?: of the)? sides?[.,;] (?:(?:well|no|wait|i lie|i'm lying|actually|okay|ok|or|sorry|hold on|hang on|make that|make it|rather|let me see|more like|on|only|just|it's|really|call it)[,. ]+)+(?P<n>one|two|three|1|2|3)(?: sides?| of them)?(?=[.,;!]|$)",
    numbers=MappingProxyType({"one": 1, "two": 2, "three": 3, "1": 1, "2": 2, "3": 3}),
)
