"""English words that take an act back, answer for it or weigh it."""

from __future__ import annotations

from dataclasses import replace

from logbook.languages.en.asides import ENGLISH_ASIDES
from logbook.languages.en.belied import ENGLISH_BELIED
from logbook.languages.en.by_the_side import ENGLISH_BY_THE_SIDE
from logbook.languages.en.came_off import ENGLISH_CAME_OFF
from logbook.languages.en.echoes import ENGLISH_ECHOES, ENGLISH_OWN_QUESTIONS
from logbook.languages.en.no_longer import ENGLISH_NO_LONGER
from logbook.languages.en.not_so import ENGLISH_NOT_SO
from logbook.languages.en.plain_notes import ENGLISH_PLAIN_NOTES
from logbook.languages.en.refused import ENGLISH_REFUSED
from logbook.languages.en.taping import ENGLISH_TAPING
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
ENGLISH_TOLD = Told(done_anew=r"(?<![\w'])(?:now|then|fixed|redid|redone|moved|added|again|changed|went (?:back|over)|before|first)(?![\w'])", part_by_part=r"(?<![\w'])(?:tops?|bottoms?|left|right|sides?|faces?|cheeks?|ends?|seams?|joints?|heel|throat|corners?|edges?|flaps?|backs?|rest|others?|remainder|balance|elsewhere|everywhere|fourth|panels?|front)(?![\w'])", first_and_second=r"(?<=the )(?P<n>(?P<first>first|former|one(?=[,;]| and\b| but\b))|second|latter|other)(?![\w'])", weighed=ENGLISH_WEIGHED, echoes=ENGLISH_ECHOES, own_questions=ENGLISH_OWN_QUESTIONS, came_off=ENGLISH_CAME_OFF, voices=ENGLISH_VOICES, orders=ENGLISH_ORDERS, ticks=ENGLISH_TICKS, wanted=ENGLISH_WANTED, asides=replace(ENGLISH_ASIDES, said=(*ENGLISH_NO_LONGER, *ENGLISH_ASIDES.said, *ENGLISH_NOT_SO, *ENGLISH_PLAIN_NOTES, *ENGLISH_BELIED, *ENGLISH_BY_THE_SIDE, *ENGLISH_TAPING, *ENGLISH_REFUSED)))
