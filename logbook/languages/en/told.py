"""English words that take an act back, answer for it or weigh it."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.en.accidents import ENGLISH_ACCIDENTS
from logbook.languages.en.ailing import ENGLISH_AILING
from logbook.languages.en.asides import ENGLISH_ASIDES
from logbook.languages.en.belied import ENGLISH_BELIED
from logbook.languages.en.by_the_side import ENGLISH_BY_THE_SIDE
from logbook.languages.en.came_off import ENGLISH_CAME_OFF
from logbook.languages.en.echoes import ENGLISH_ECHOES, ENGLISH_OWN_QUESTIONS
from logbook.languages.en.misled import ENGLISH_MISLED
from logbook.languages.en.mistrusted import ENGLISH_MISTRUSTED
from logbook.languages.en.no_longer import ENGLISH_NO_LONGER
from logbook.languages.en.not_so import ENGLISH_NOT_SO
from logbook.languages.en.plain_notes import ENGLISH_PLAIN_NOTES
from logbook.languages.en.refused import ENGLISH_REFUSED
from logbook.languages.en.parts_told import ENGLISH_PARTS_TOLD
from logbook.languages.en.stretches import ENGLISH_STRETCHES
from logbook.languages.en.spoken_aside import ENGLISH_SPOKEN_ASIDE
from logbook.languages.en.taping import ENGLISH_TAPING
from logbook.languages.en.told_around import ENGLISH_TOLD_AROUND
from logbook.languages.en.voices import ENGLISH_ORDERS, ENGLISH_VOICES
from logbook.languages.en.wanted import ENGLISH_WANTED
from logbook.languages.en.weighed import ENGLISH_WEIGHED
from logbook.languages.told import Ticks, Told

ENGLISH_TICKS = Ticks(
    yes="yes|yep|yup|yeah|y|ok|okay|check|checked|done|good|true|x(?=\\])|\u2713|\u2714|\u2705",
    no="nah|naw|nuh[- ]uh|uh[- ]uh|negative|no check|not checked|not done|not (?:installed|fitted|applied|provided|present|used|in(?: place)?|on|there|put in|put on)|absent|omitted|left (?:out|off)|out of stock|(?:not |un)available|lacking|nope|none|no|nil|nada|n|ng|false|missing|skipped|forgot|not|\u2717|\u2718|\u274c|(?<=\\[)[ _]?(?=\\])",
    later="not (?:done )?yet|n/a yet|no,? not yet|tbd|to ?do|pending|later|tomorrow|to come|to follow|open|not started|(?:on|back)[- ]?order(?:ed)?|outstanding|incomplete|in progress|tonight|next week|after lunch|monday|tuesday|wednesday|thursday|friday",
    partly="(?:all but|except|most|half|some|partly|partial|mostly|almost|nearly|three quarters)(?: (?:\\d+|one|two|three|a few|a couple|for one|for two|of (?:it|them)|there|all|done|the last \\w+))?",
    idle="n ?/ ?a|na|not (?:needed|required)|same|see (?:note|photo|pic|picture)",
    zero="0|zero",
    small="(?: (?:down|in|on|up|out|it|clean|visible|all|dry))?",
)
_INCH = r"(?:(?:an? )?(?:[a-z-]+|[\d./ -]+)(?: and a half)?[ -]inch|[\d./ -]+\")"
_TAPE_TAKEN = (
    r"\b(?:(?:joint|side|seam|corner|end|one|it|that|rest|other|others|back|front|top|bottom|left|right|last|fourth|piece|edge|half|foot|heel|throat|cap)(?:'s| has| have| just| only)* (?:got|gets|took)|(?:i|we) (?:just |only |then |ended up and )?(?:used|grabbed|took|put on|ran))(?: (?:the|some|only|just|my))*$"
    r"|\b(?:finish\w*|went|go|going|clos\w+|did|ended|end|stuck|made do|make do|taped|done|patch\w*)(?: (?:it|them|up|off|out|the|last|rest|side|one|ones|joint|seam|back|top|bottom|that|ahead))* (?:with|using|in)(?: (?:the|some|my|only|just))*$"
    r"|\b(?:switch\w*|chang\w+|go|went|going|drop\w*|mov\w+|resort\w*)(?: (?:over|down|back|up))* to(?: (?:the|some|my))*$"
    r"|\b(?:left|had|have|got|find|was left|only (?:roll|tape|stuff|thing|kind)(?: [\w' ]{1,24}?)?)(?: (?:on|in) (?:the|my|our) \w+)?(?: was| is|'s|,)$"
    rf"|\btap(?:ed|e)(?: it)?$|\btap(?:ed|e) (?:it )?{_INCH} [^.;]{{1,40}}?(?: and|, and|,| but|, but)$"
)
_TAPE_USED_UP = rf"\b(?:out of|no more|short on|low on|used up|through)(?: (?:the|my|our|all))* {_INCH}|\b{_INCH}(?: (?:roll|tape))? (?:ran|gave|run) out\b"

_OVER = r"(?:over|past|above|beyond|upwards? of|north of|in excess of|(?:more|wider|farther|further|greater|longer|higher|bigger|hotter) than)"
_UNDER = r"(?:under|below|beneath|shy of|short of|south of|(?:less|narrower|shorter|smaller|colder|cooler|lower) than)"
_TO_THE_FIGURE = r"(?: (?:about|the|that|an?|every|all of))*\s*$"

ENGLISH_TOLD = Told(
    tape_taken=_TAPE_TAKEN,
    tape_used_up=_TAPE_USED_UP,
    goes_over=rf"(?<![\w'-])(?P<w>{_OVER}){_TO_THE_FIGURE}",
    stays_under=rf"(?<![\w'-])(?P<w>{_UNDER}|not quite){_TO_THE_FIGURE}",
    bound_ahead=rf"(?:(?:just|a|hair|touch|bit|little|tad|slightly|barely|well|way|somewhat) )*(?:{_OVER}|{_UNDER})",
    keeps_within=rf"^ (?:(?:ever|any|anything|go|goes|going|run|runs|running|get|getting|gets|spaced|set|hung|in) )*(?:{_OVER}|{_UNDER})(?= )",
    denied_before=r"(?:\bno|\bnot|n't|\bnever|\bnothing|\bnone|\bnowhere)(?: (?!and\b|but\b|so\b)[\w']+){0,6}$",
    begun=r"(?P<when>(?<![\w'])(?:when|before|since|after|once|till|until|as soon as|by the time|the minute|while)(?: \w+)? )?(?:\w+ )?(?:started|began)\b",
    stopped=r"(?<![\w'])(?:quit|stopp?\w*|ran (?:out|short)|got (?:called|pulled|sent)|never|didn't|couldn't|only|halfway|half way|left|went home|broke|jammed|died|not|lunch)(?![\w'])",
    worked_on=r"^.{0,24}?(?<![\w'])(?:at|from|on|in|with|near|by|over) .*(?<![\w'])(?:worked|went|came|kept|finished|ended|all the way|all four|all around|around|done|every|it was)(?![\w'])",
    at_another_time=r"(?:went|got|were|have been|came) (?:on|done|it|them|theirs|taped|stapled|rubbed)(?: (?:right |a little |just )?(?:this|yesterday|today|after\w*|later|before|at|on|in|by|last|next|first thing)(?: .{1,40})?)?|yesterday|earlier|(?:earlier )?this morning|last night|(?:up )?(?:on|in) the (?:lift|ladder|bench|floor|ground|air)",
    first_and_second=r"(?<=the )(?P<n>(?P<first>first|former|one(?=[,;]| and\b| but\b))|second|latter|other)(?![\w'])",
    weighed=ENGLISH_WEIGHED,
    echoes=ENGLISH_ECHOES,
    own_questions=ENGLISH_OWN_QUESTIONS,
    came_off=ENGLISH_CAME_OFF,
    voices=ENGLISH_VOICES,
    orders=ENGLISH_ORDERS,
    ticks=ENGLISH_TICKS,
    wanted=ENGLISH_WANTED,
    stretches=ENGLISH_STRETCHES,
    parts=ENGLISH_PARTS_TOLD,
    asides=replace(
        ENGLISH_ASIDES,
        ailing=(*ENGLISH_AILING, *ENGLISH_ACCIDENTS, *ENGLISH_MISTRUSTED),
        said=(*ENGLISH_SPOKEN_ASIDE, *ENGLISH_MISLED, *ENGLISH_NO_LONGER, *ENGLISH_TOLD_AROUND, *ENGLISH_ASIDES.said, *ENGLISH_NOT_SO, *ENGLISH_PLAIN_NOTES, *ENGLISH_BELIED, *ENGLISH_BY_THE_SIDE, *ENGLISH_TAPING, *ENGLISH_REFUSED)),
)
