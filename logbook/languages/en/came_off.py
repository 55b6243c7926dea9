"""English words for work that goes away again ("undid the staples", "it let go overnight") and for work that is put back."""

from __future__ import annotations

from logbook.languages.told import CameOff

_V = (
    r"(?:pull(?:ed|ing)?|t(?:ore|ear|earing|orn)|stripp?(?:ed|ing)?|ripp?(?:ed|ing)?|peel(?:ed|ing)?|took|take|taking|taken|yank(?:ed|ing)?|pr(?:ied|y|ying)|cut(?:ting)?|scrap(?:ed|ing)|knock(?:ed)?|popp?(?:ed|ing)?|dug|dig|pick(?:ed|ing)?"
    r"|fish(?:ed)?|lift(?:ed)?|slit|slic(?:ed|ing)|shook|shak(?:en|ing)|beat|snipp(?:ed)?|clipp?(?:ed)?|hack(?:ed)?|work(?:ed)?|wrench(?:ed)?|unhook(?:ed)?|drilled|pluck(?:ed)?|blew|burst|sprung|spring|tweez(?:ed))"
)
_SELF = r"(?:und(?:id|o|oing|one)|remov(?:ed|ing)|unpick(?:ed|ing)|unstapl(?:ed|ing)|untap(?:ed|ing)|unstuck|unfasten(?:ed)?|unzipp(?:ed)|pulled|yanked|stripped|popped|plucked|peeled(?! \w+ (?:back|up|down)))"
_OFF = r"(?:right |straight |all |back |clean |clear |completely |mostly )*(?:off|out|loose|away|free|apart|open)(?! (?:of )?(?:the|a|that|my|one|another|this)(?: \w+)? (?:rolls?|scraps?|stock|coil|spool|reel|offcuts?)(?![\w']))(?: again| of there)*"
_MODS = r"(?:(?:the|my|all|of|those|that|these|every|each|single|last|whole|damn|every one of|all of|both|its|our|what|same|old|rusty|first|bad|crooked|wrong|loose|torn|previous|his|their|bent|original|existing|half-inch|wrinkled|dirty|wet|cheap|short|long) )*"
_FROM = r"(?!(?: right| back| straight)* (?:off|out|down|up|from)(?: of| off)? (?:the|my|a|his|our) (?:back of the )?(?:truck|van|cart|rack|bench|table|pile|box|saw|stack|trailer|bed|lift|gang|pallet|bin|crate|press|wrapper|packaging)(?![\w']))"
_NOT_OF = r"(?! (?:of )?(?:the|my|a|his|our) (?!top|bottom|left|right|side|sides|back|whole|seam|seams|joint|joints|facing|board|duct|piece|corner|corners|elbow|straight|cap|tee|flap|other|first|second)\w+)"
_IT = r"(?:every one|every last one|every single one|every bit|each one|the lot|the whole lot|the whole thing|the whole row|the works|all|it all|them all|it|them|'em|that|those|everything|both|the whole mess|that mess)(?: of (?:it|them|those|'em|that))?"

STOCK = r"(?! (?:of )?(?:the|a|an|my|that|one) (?:\w+ )?(?:knife|saw|blade|cutter|shears|rolls?|table|bench|press|template|jig|stick|spool|reel|line|cart|truck|van|scraps?|offcuts?|pile|stock|box|shop)(?![\w']))"  # behind "came off": where it was cut or taken from

ENGLISH_CAME_OFF = CameOff(
    taken=(
        rf"(?!pull(?:ed|ing)? my <[nb]> off the (?:fe)?male){_V} {_MODS}<[nb]> (?:back )?{_OFF}", rf"{_V} {_OFF} {_MODS}<[nb]>", rf"(?!pulled my <[nb]> off the (?:fe)?male){_SELF} {_MODS}<[nb]>",
        rf"(?:has|have|had|needed|got|getting|getting) {_MODS}<[nb]> (?:pulled|torn|taken|ripped|peeled|stripped|cut|removed)(?: {_OFF})?",
        rf"(?:unbent|straightened|unfolded|flattened out|bent (?:back )?(?:out|up)) {_MODS}<[nb]>(?: (?:all|back|up|out|straight|again))*",
    ),
    taken_it=(
        r"(?:it|she|that)(?:'s| is| was)? (?:all )?(?:bare|naked|open) again",
        r"(?:it|they|those|all of (?:it|them)|the lot)(?: (?:just|all|then))* (?:came|come|fell|dropped|popped|slid|blew|peeled|walked)(?: (?:right|straight|all|clean))* (?:back (?:off|out)|off|loose|out again)(?= again| by | before | over |$)",
        r"(?:it|they|that|those)(?: ?(?:'s|'re|is|are|was|were))(?: (?:all|back|already))* (?:off|out) (?:again|now)", r"(?:had to |have to )?(?:pull|pulled|yank|yanked|rip|ripped|strip|stripped) (?:them|'em|it)(?: all)?(?: to (?:get|fit|clear|slide|squeeze|pass|go) .*)?$", r"^(?:and |then )*(?:it (?:just )?|just )(?:fell|dropped|popped|peeled|blew) (?:right |straight |all |clean )*(?:back )?off(?: again)?$|^(?:and |then )*(?:fell|dropped|popped|peeled|blew) (?:right |straight |all |clean )+(?:back )?off(?: again)?$", r"^(?:and |then )*(?:came|fell|dropped|popped|peeled|blew) (?:right |straight |all |clean )*(?:back (?:off|out)|off|loose|out) again$",
        rf"(?!work){_V} {_IT}{_FROM} (?:right |all |back |straight |clean )*(?:off|out|loose|away|apart)(?: again)?(?! (?:me|us|him|my hands)\b){_NOT_OF}", rf"{_SELF} {_IT}{_FROM}(?! (?:tight|snug|together|closed|shut|flush|straight|square|over|up|in|down|into)\b)(?! one (?:up|ahead|forward|first)\b)(?: again| back| right)*(?: out| off)?", rf"{_V} (?:right |all |back )*(?:off|out) {_IT}{_FROM}",
        r"(?:the |a |that )?(?:whole |entire |damn )*(?:strip|thing|lot|works|row|length|mess|run) (?:of it )?(?:had |has |have |just |all )*(?:let go|peeled(?: off| up| away)?|come off|came off|fell off|fallen off|popped off|dropped off|blown off|lifted off|come loose|came loose)",
        rf"(?:peel|pull|strip|take|tear|rip|cut) {_IT} (?:all |right |back )*(?:off|out)(?: again)?",
    ),
    fell=(
        rf"<n>(?! (?:that|which) (?:came|fell) with)(?: (?!not|never|didn't|won't|because|somebody|someone|who|he|she|they|<)[\w'#]+){{0,9}}? (?:came out of #|let go|letting go|lets go|fell(?: (?:right|straight|clean|back|all))* (?:off|out|down)|(?:peeled|popped|dropped|blew|came)(?: (?:right|straight|clean|back|all))+ (?:off|loose)(?! the)|came off{STOCK}|(?:'s|has|have|had|'ve) (?:all |just |already |partly )*come (?:off{STOCK}|loose|away|undone|unstuck)|came loose|came away|came undone|came unstuck|dropped off|dropped out|peeled off|peeled away|peeled back|popped off|popped out|popped loose|blew off|slid off|gave out|gave up|gave way|released|unstuck itself|walked off(?! with)|flew off|washed off|melted off|quit sticking|lost its grip|didn't last|is on the floor|(?:was|were) (?:all )?(?:on|all over) the (?:floor|ground|slab|deck)|is lying on the floor|on the floor now|is in the (?:bin|trash|dumpster|garbage)|went in the (?:bin|trash|dumpster|garbage)|has gone|is gone|are gone|got (?:ripped|torn|pulled|peeled|knocked|stripped) (?:off|out|loose)|(?:was|were|has been|have been) (?:ripped|torn|pulled|peeled|stripped|taken) (?:off|out)|came back (?:off|out))(?: again| already| overnight| by morning)?",
    ),
    facts=((r"(?:straighten|unbent|unfold)", "tabs_bent"),),
    worn=r"(?<![\w'])(?:old|rusty|bad|crooked|wrong|loose|torn|previous|his|their|first|extra|spare|original|existing|wrinkled|dirty|cheap|bent|short|few|couple|two|three|some|one|half|several)(?![\w'])",
    earlier=r"(?<![\w'])(?:old|previous|his|their|first|extra|spare|original|existing|wrong|cheap|rusty)(?![\w'])",
    back_on=(
        r"(?:put|shot|ran|laid|stuck|drove|set|slid|slapped|threw|fired|gave|added|installed|used|went with|went on with|rolled|pressed|tacked|hit)(?: [\w'#]+){0,3}? (?:new|fresh|another|more|others|good|ones|longer|shorter|better|listed|rated|181[\w-]*|it back|them back|'em back|that back|back (?:in|on)|<n>)(?![\w'])",
        r"(?:went|goes|go|popped|slid|came) (?:right |straight |all )*back (?:in|on|up)", r"(?:went|goes|go|popped|slid|came) (?:right |straight )*(?:in|on) again", r"(?:they|it|those|all)(?: ?(?:'re|'s|are|is|were|was))?(?: (?:all|right|now|safely|already))* back (?:in|on|where (?:they|it) (?:belongs?|goes?|were|was)|in place|there|home)", r"(?:redid|redone|redo|did|done) (?:it|them|that|the lot|all of (?:it|them)|everything)?(?: all)?(?: over| again| from scratch| right)*", r"re-?(?:stapled|taped|rubbed|bent|did|done|installed|set)\b", r"(?:started|began) (?:all )?(?:over|again|fresh|from scratch)",
        r"(?:new|fresh) (?:ones|<n>|roll|strip|tape)(?: (?:is|are|went))?(?: back| right)* (?:in|on|there)", r"bent (?:them|'em|it|those) (?:all )?(?:back )?(?:down|over|in)", r"<[db]>",
        r"(?:the )?(?:second|third|fourth|next|new|last) (?:time|strip|one|try|go|piece|round|set|lot)(?: (?:around|round))? ?(?:it|that|they|i|one|them)? ?(?:(?:'s|is|are|has|have|finally|got it|went|go|goes|put it) )*(?:on|down|in|stuck|held|holding|holds|took|stayed|sticking|sticks)(?![\w'])",
    ),
    back_over=(
        r"(?:went|came|gone|goes) (?:right |straight |all )*(?:back(?: (?:over|around|through|along)(?: (?:it|them|that|(?:the )?(?:joint|seam|piece|whole \w+|same \w+)))?)?|again|over (?:it|them|that) again) (?:(?:every|each)(?! (?:[\w-]+ )?(?:minutes?|mins?|hours?|days?|mornings?|times?|weeks?|now|so often|few|night|break|single|side|one|piece))|at (?:an? inch|\d|two|one|three)(?! o'clock))",
        r"(?:went|came|gone) (?:right |straight |all )*back over (?:it|them|that|the (?:joint|seam|whole thing|same joint|same seam))(?! with (?:my|a|the) (?:eye|flashlight|light|finger|hand))",
    ),
    lies=r"^(?:(?:and|now|so) )*(?:it's|they're|it is|they are|all|every|the lot|most|lying|laying|sitting|hanging|what's left)\b.*\b(?:floor|ground|trash|bin|dumpster|garbage|slab|deck)\b",
    not_again=r"(?<![\w'])(?:not|never|no|\w+n't|yet|still|without|nobody|tomorrow|later|going|will|\w+'ll|need|needs|have to|gonna|gotta|to|should)(?![\w'])",
    unsettled=r"(?<![\w'])(?:if|would|might|could|will|won't|never|not|no|nobody|\w+n't|before|until|till|unless|so|or|can|may|needs?|must|gotta|should|has to|have to|got to|going|almost|nearly|tried|to|when|once|think|says|said|try|trying)(?![\w'])",
    looks=r"(?<![\w'])(?:off|out|pull|yank|rip|strip|loose|away|apart|undid|undo|undone|remov\w+|un\w+ed|unbent|straightened|let go|pulled|stripped|peeled|yanked|plucked|popped|gone|floor|trash|bin|dumpster|gave|released|open|free|back|walked|quit|grip|last)(?![\w'])",
)
