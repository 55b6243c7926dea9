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

ENGLISH_ALL_BUT = AllBut(
    apart=rf"(?<!nothing )(?<!anything )(?<!none )(?<!could )(?<!can )(?<!not )(?:(?<=all )but|(?<=everything )but|(?<=everywhere )but|(?<=the whole thing )but|(?<=whole lot )but|except(?: for| at| on)?|excepting|save(?: for)?|(?<=, )bar|minus|apart from|other than|short of|shy of|aside from) (?:the|a|an|one|my|its|that|about|maybe|last)(?: (?!one(?![a-z])|ones|time|tape|staples?|vanes?)[\w'/-]+){{0,3}}? ?(?<![\w'-]){_PART}(?![\w'-]| (?:one|ones|piece|elbow|straight|tee|by|of the (?:tape|roll|line|day|hall|run)))"
    rf"|(?:a|one|two|three|half a|about a|\d+) (?:foot|feet|hand)s? (?:short|shy) of (?:the|its) (?:end|edge|corner|seam|joint|mark|top|bottom)",
    side=rf"(?:(?<=[.?!;] )|(?<=[.?!;] and )|(?<=, and )|(?<=, but ))(?:(?:and|but|what about|how about|as for|now|oh) )*{_NAMED}(?:[?:]|,| -) ?(?:(?:well|ah|er|uh|hm|sorry|that's a|that's)[, ]+)*{_NONE}(?= *(?:[.,;!]|$))"
    rf"|(?<![a-z]){_NAMED} (?:hasn't got|hasn't|haven't got|doesn't have|don't have|didn't get|never got|never had|never saw|hasn't seen|didn't see|has not got) (?:one|any|a single one|a one|it|a strip|a stitch|an inch|a staple|a scrap|a lick)(?: of (?:it|them|that))?(?= *(?:[.,;!]|$))",
    cured=r"[^.?!]{0,80}?[.,;]? ?(?:and |but |which |then |so )*(?:(?:that(?: one)?|it|those|this) )?(?:(?:i|we)(?:'ve| have)? )?(?:went back|got (?:it|that|them|to it)|did (?:it|that|them|after|later|too|last)|came back|finished|fixed|done (?:now|since|too|after)|(?P<taped>taped (?:it|that))|(?P<stapled>stapled (?:it|that))|(?<=i )(?:did|got|taped|stapled)(?! (?:not|n't)))",
    fewer=r"(?<![a-z])(?:all )?(?:four|4|three|3)(?: of the)? sides?[.,;] (?:(?:well|no|wait|i lie|i'm lying|actually|okay|ok|or|sorry|hold on|hang on|make that|make it|rather|let me see|more like|on|only|just|it's|really|call it)[,. ]+)+(?P<n>one|two|three|1|2|3)(?: sides?| of them)?(?=[.,;!]|$)",
    numbers=MappingProxyType({"one": 1, "two": 2, "three": 3, "1": 1, "2": 2, "3": 3}),
)
