"""What a measure was taken for, and by what it was found to be another ("called it two, but the rule says two and a half")."""

from __future__ import annotations

THOUGHT = (
    r"(?<![\w'])(?:thought|figured|guess(?:ed)?|called|put (?:it |them |that )?down|wrote|jotted|reckon(?:ed)?|said|look(?:s|ed)?(?! (?:good|fine|ok|okay|great|nice|like|right|clean|tight|all))|eye-?balled|estimated|took (?:it|them|that) for"
    r"|marked (?:it |them )?(?:as|at|down)|logged|noted|judged|by eye|at first|meant|was sure)(?![\w'])"
)
_SETS_RIGHT = r"(?:sorry|no|wait(?: a (?:minute|second|sec))?|hang on|hold on|correction|scratch that|strike that|my mistake|oh|my bad)"
THOUGHT_SO = rf"(?<![\w'])(?:(?:yesterday|this morning|last (?:week|time|night)|{_SETS_RIGHT}(?=[,.:;!]))(?![\w'])|i(?:'d| would)?(?: have)? (?:said|guess(?:ed)?|thought|figured|reckon(?:ed)?|called it)|or so i (?:thought|figured|said)|by eye|at first|in my head|from memory)(?![\w'])"
_TOOL = r"(?:rule|ruler|tape measure|measuring tape|tape|plate|name ?plate|tag|label|sticker|scales?|gau?ge|thermometer|stick|card|box|data ?plate|calipers?|roll|gun|print|core|carton)(?: (?:on|of|from) (?:the|it|its)(?: (?:roll|box|gun|side|core|carton))?)?"
_SAYS = r"(?:(?:was|is|'s|were|had been) (?:set )?(?:to|on|at)|says?|said|reads?|shows?|showed|had|gave|tells?|told|makes?|made)(?: it| them| me| otherwise)*(?: is|'s| at| was| are)?"
_IT = r"(?:it|they|that|spacing|this)(?:'s|'re)?"
_CAME = r"(?:is|are|was|were|measures?|measured|came (?:out )?(?:to|at|in at)|comes (?:out )?(?:to|at)|turned out(?: to be| at)?|reads?|runs?|ran|weighs?|weighed|worked out (?:to|at))"
_I_GOT = r"i(?:'ve)? (?:measured?|get|got|make|made|found?|counted|checked)(?: it| them| that)*(?: at| as| to be)?"
_LOOKED = r"i(?:'ve| have)? (?:just )?(?:checked|looked|read (?:it|the \w+)|looked at (?:it|the \w+)|measured(?: it| them)?(?: again)?)"
FOUND_BY = (
    rf"(?:(?P<right>[,;.:] ?(?:{_SETS_RIGHT}[,.:;!]* )+)(?:{_LOOKED},? (?:and )?)?|(?:[,;.] ?|(?<=yesterday) |(?<=this morning) )(?:{_LOOKED}|today|now),? |(?:[,;.] ?| )(?:but|wrong|no|only|and|yet|well|turns out)(?: that)?(?:[,;.])? ?|[,;.] )(?:but |now |wrong,? |actually,? |really |in fact,? |when i (?:checked|measured|looked),? (?:that )?)*"
    rf"(?:(?:it|they|that)'(?:s|re)|{_IT} (?:\w+ )?{_CAME}|(?:the |my |a )?{_TOOL} {_SAYS}|(?P<own>{_I_GOT}|measure[ds]?)|actual(?:ly)?|in fact|turned out(?: to be)?|came (?:out )?(?:to|at|in at))"
    r" (?:(?:actually|really|only|just|more like|closer to|nearer|to be|at|a good|a full|in fact|about) )*$"
)
