"""English orders to another man ("Pete, have 120 taped before they come for it"): what is to be done by a time that comes, or by whom he calls by his name, is told of no piece."""

from __future__ import annotations

from logbook.languages.elsewhere import SENTENCE, Aside

_PIECE = r"(?:(?:that|the|those) )?(?:(?:number|straights?|elbows?|tees?|wyes?|end caps?|caps?|collars?|transitions?|offsets?|branch|plenum|section|piece|fitting) )*(?:number )?(?:(?:[a-z]-?)?\d+|it|them|(?:one |two |a )?(?:hundred|\w+teen|\w+ty|five|six|seven|eight|nine|ten|eleven|twelve)(?: (?:and |oh )?\w+)?)(?:(?: and|,) (?:number )?\d+)*"
_DONE = r"(?:stapled|taped|rubbed|wiped|trimmed|hung|finished|done|ready|closed|sealed)"
_DO = r"(?:staple|tape|rub|wipe|trim|hang|finish|close|seal)"
_SO = r"(?:please |you |you guys |just |go |go and |go ahead and |kindly )*"
_BY_THEN = (
    r"(?:by (?:noon|lunch|quitting time|the end of|tonight|tomorrow|the time|then|\d+|two|three|four|five|six|monday|tuesday|wednesday|thursday|friday|saturday)|before (?:noon|lunch|quitting time|you (?:leave|go|quit|start|head)|(?:i|we) (?:get|come|leave|go)|they (?:come|get|leave|show|want|need|pick)|(?:he|she|the \w+) (?:comes|gets|leaves|shows|wants|needs|picks)|tomorrow|monday|friday)"
    r"|for me|when (?:i|they) (?:get|come)|when (?:he|she|the \w+) (?:gets|comes)|so (?:they|he|we|i) can|tomorrow|tonight|first thing|as soon as you)\b"
)

ORDERS_OUT = (
    Aside(frozenset(("have",)), rf"(?:{{name}} )?{_SO}have {_PIECE} (?:all )?{_DONE}\b.*\b{_BY_THEN}", SENTENCE, "reminder"),
    Aside(frozenset(("have",)), rf"{{name}}, {_SO}have {_PIECE} (?:all )?{_DONE}\b", SENTENCE, "reminder"),
    Aside(frozenset(("get",)), rf"(?:{{name}},? )?{_SO}get {_PIECE} (?:all )?{_DONE}\b", SENTENCE, "reminder"),
    Aside(frozenset("staple tape rub wipe trim hang finish close seal".split()), rf"(?:{{name}},? )?{_SO}{_DO} {_PIECE} .*\b{_BY_THEN}", SENTENCE, "reminder"),
    Aside(frozenset("staple rub wipe trim hang finish close seal".split()), rf"{{name}}, {_SO}{_DO} {_PIECE}$", SENTENCE, "reminder"),
    Aside(frozenset(("do", "make", "build")), rf"(?:{{name}},? )?{_SO}(?:do|make|build) {_PIECE} (?:exactly |just )?(?:the same(?: way)? as|same as|like) ", SENTENCE, "reminder"),
    # the same to nobody by his name: "when you tape 20 do it before noon", "once you get to 20 staple it every two"
    Aside(
        frozenset(("when", "once", "before", "after", "if")),
        rf"(?:when|once|as soon as|before|after|if)(?: you)(?: guys| ever| finally| go to| get to| go and| go| start to| do)* (?:{_DO}|build|make|cut|reach|start(?: on)?|come to|open up|(?<=get to)|(?<=go to)) ?{_PIECE}(?:,)? .*?(?:do (?:it|that|them)|make sure|be sure|don't|do not|remember|use the|watch|mind|please|leave|{_DO} (?:it|them|all)|call me|let me know|put)\b",
        SENTENCE,
        "reminder",
    ),
)
