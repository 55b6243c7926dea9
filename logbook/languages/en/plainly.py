"""English turns of words that are read as the plain words for them: all of them, in the order in which they are looked for."""

from __future__ import annotations

from logbook.languages.en.another_in_mind import ENGLISH_ANOTHER_IN_MIND
from logbook.languages.en.answered_by_himself import ENGLISH_ANSWERED_BY_HIMSELF
from logbook.languages.en.answered_plainly import ENGLISH_ANSWERED_PLAINLY
from logbook.languages.en.around_the_piece import ENGLISH_AROUND_THE_PIECE
from logbook.languages.en.as_it_says import ENGLISH_AS_IT_SAYS
from logbook.languages.en.asked_and_told import ENGLISH_ASKED_AND_TOLD
from logbook.languages.en.asked_measures import ENGLISH_ASKED_MEASURES
from logbook.languages.en.asked_of_him_plainly import ENGLISH_ASKED_OF_HIM
from logbook.languages.en.asked_of_himself import ENGLISH_ASKED_OF_HIMSELF
from logbook.languages.en.asked_what_and_which import ENGLISH_ASKED_WHAT_AND_WHICH
from logbook.languages.en.beside_plainly import ENGLISH_BESIDE_PLAINLY
from logbook.languages.en.borne_out import ENGLISH_BORNE_OUT
from logbook.languages.en.breaths import ENGLISH_BREATHS
from logbook.languages.en.by_his_word import ENGLISH_BY_HIS_WORD
from logbook.languages.en.came_out_otherwise import ENGLISH_CAME_OUT_OTHERWISE
from logbook.languages.en.coming_round import ENGLISH_COMING_ROUND
from logbook.languages.en.complained_plainly import ENGLISH_COMPLAINED_PLAINLY
from logbook.languages.en.corrected_plainly import ENGLISH_CORRECTED_PLAINLY
from logbook.languages.en.courtesies import ENGLISH_COURTESIES
from logbook.languages.en.cured_plainly import ENGLISH_CURED_PLAINLY
from logbook.languages.en.disowned import ENGLISH_DISOWNED
from logbook.languages.en.fastening import ENGLISH_FASTENING
from logbook.languages.en.filled_in import ENGLISH_FILLED_IN
from logbook.languages.en.found_by_others import ENGLISH_FOUND_BY_OTHERS
from logbook.languages.en.fronted import ENGLISH_FRONTED
from logbook.languages.en.gaps_plainly import ENGLISH_GAPS_PLAINLY, ENGLISH_JOINTS_SET_BESIDE
from logbook.languages.en.hardly_so import ENGLISH_HARDLY_SO
from logbook.languages.en.harmed_by_others import ENGLISH_HARMED_BY_OTHERS
from logbook.languages.en.harms_plainly import ENGLISH_HARMS_PLAINLY
from logbook.languages.en.in_part import ENGLISH_IN_PART
from logbook.languages.en.last_one_and_this import ENGLISH_LAST_ONE_AND_THIS
from logbook.languages.en.learned_english import ENGLISH_LEARNED
from logbook.languages.en.learned_late import ENGLISH_LEARNED_LATE
from logbook.languages.en.learned_on_site import ENGLISH_LEARNED_ON_SITE
from logbook.languages.en.learned_on_site_more import ENGLISH_LEARNED_ON_SITE_MORE
from logbook.languages.en.left_plainly import ENGLISH_LEFT_PLAINLY
from logbook.languages.en.meant_plainly import ENGLISH_MEANT_PLAINLY
from logbook.languages.en.measured import ENGLISH_MEASURED
from logbook.languages.en.mixed_in import ENGLISH_MIXED_IN
from logbook.languages.en.mouths import ENGLISH_MOUTHS
from logbook.languages.en.named_aside import ENGLISH_NAMED_ASIDE
from logbook.languages.en.none_there import ENGLISH_NONE_THERE
from logbook.languages.en.not_yet_joined import ENGLISH_NOT_YET_JOINED
from logbook.languages.en.not_of_the_work import ENGLISH_NOT_OF_THE_WORK
from logbook.languages.en.numbers_aloud import ENGLISH_NUMBERS_ALOUD
from logbook.languages.en.one_breath import ENGLISH_ONE_BREATH
from logbook.languages.en.owned_up import ENGLISH_OWNED_UP
from logbook.languages.en.parts_plainly import ENGLISH_PARTS_PLAINLY
from logbook.languages.en.plainer import ENGLISH_PLAINER
from logbook.languages.en.plainer_aloud import ENGLISH_ALOUD
from logbook.languages.en.printed_plainly import ENGLISH_PRINTED_PLAINLY
from logbook.languages.en.promised import ENGLISH_PROMISED
from logbook.languages.en.put_otherwise import ENGLISH_PUT_OTHERWISE
from logbook.languages.en.run_together import ENGLISH_RUN_TOGETHER
from logbook.languages.en.said_askew import ENGLISH_SAID_ASKEW
from logbook.languages.en.said_of_a_part import ENGLISH_SAID_OF_A_PART
from logbook.languages.en.said_flatly import ENGLISH_SAID_FLATLY
from logbook.languages.en.seen_otherwise import ENGLISH_SEEN_OTHERWISE
from logbook.languages.en.sealed_told import ENGLISH_TURNED_PLAINLY
from logbook.languages.en.set_against import ENGLISH_SET_AGAINST
from logbook.languages.en.set_beside_plainly import ENGLISH_SET_BESIDE_PLAINLY
from logbook.languages.en.tabs_plainly import ENGLISH_TABS_PLAINLY
from logbook.languages.en.taping_said import ENGLISH_TAPING_SAID
from logbook.languages.en.terse_plainly import ENGLISH_TERSE_PLAINLY
from logbook.languages.en.to_come_plainly import ENGLISH_TO_COME_PLAINLY
from logbook.languages.en.told_the_other_way import ENGLISH_TOLD_THE_OTHER_WAY
from logbook.languages.en.named_by_number import ENGLISH_NAMED_BY_NUMBER
from logbook.languages.en.said_before_plainly import ENGLISH_SAID_BEFORE
from logbook.languages.en.said_beside_plainly import ENGLISH_SAID_BESIDE_PLAINLY
from logbook.languages.en.told_next_to_it import ENGLISH_TOLD_NEXT_TO_IT
from logbook.languages.en.told_of_it import ENGLISH_TOLD_OF_IT
from logbook.languages.en.told_shortly_after import ENGLISH_TOLD_SHORTLY_AFTER
from logbook.languages.en.turned_about import ENGLISH_TURNED_ABOUT
from logbook.languages.en.turned_down import ENGLISH_TURNED_DOWN
from logbook.languages.en.usual_plainly import ENGLISH_USUAL_PLAINLY
from logbook.languages.en.verb_ahead import ENGLISH_VERB_AHEAD
from logbook.languages.en.waits_plainly import ENGLISH_WAITS_PLAINLY
from logbook.languages.en.where_plainly import ENGLISH_WHERE_PLAINLY

ENGLISH_PLAINLY = (
    *ENGLISH_TOLD_NEXT_TO_IT,
    *ENGLISH_AROUND_THE_PIECE,
    *ENGLISH_SAID_BEFORE,
    *ENGLISH_OWNED_UP,
    *ENGLISH_SEEN_OTHERWISE,
    *ENGLISH_HARDLY_SO,
    *ENGLISH_ASKED_OF_HIMSELF,
    *ENGLISH_ANSWERED_BY_HIMSELF,
    *ENGLISH_ASKED_WHAT_AND_WHICH,
    *ENGLISH_CAME_OUT_OTHERWISE,
    *ENGLISH_FRONTED,
    *ENGLISH_JOINTS_SET_BESIDE,
    *ENGLISH_ANOTHER_IN_MIND,
    *ENGLISH_AS_IT_SAYS,
    *ENGLISH_LAST_ONE_AND_THIS,
    *ENGLISH_MIXED_IN,
    *ENGLISH_TURNED_ABOUT,
    *ENGLISH_VERB_AHEAD,
    *ENGLISH_SET_AGAINST,
    *ENGLISH_LEARNED_LATE,
    *ENGLISH_NOT_YET_JOINED,
    *ENGLISH_WAITS_PLAINLY,
    *ENGLISH_PUT_OTHERWISE,
    *ENGLISH_PARTS_PLAINLY,
    *ENGLISH_DISOWNED,
    *ENGLISH_BORNE_OUT,
    *ENGLISH_NAMED_ASIDE,
    *ENGLISH_COMPLAINED_PLAINLY,
    *ENGLISH_COMING_ROUND,
    *ENGLISH_SAID_FLATLY,
    *ENGLISH_TERSE_PLAINLY,
    *ENGLISH_SAID_OF_A_PART,
    *ENGLISH_USUAL_PLAINLY,
    *ENGLISH_TOLD_OF_IT,
    *ENGLISH_NAMED_BY_NUMBER,
    *ENGLISH_SAID_BESIDE_PLAINLY,
    *ENGLISH_CURED_PLAINLY,
    *ENGLISH_CORRECTED_PLAINLY,
    *ENGLISH_ASKED_MEASURES,
    *ENGLISH_FOUND_BY_OTHERS,
    *ENGLISH_ASKED_OF_HIM,
    *ENGLISH_ASKED_AND_TOLD,
    *ENGLISH_RUN_TOGETHER,
    *ENGLISH_LEARNED_ON_SITE,
    *ENGLISH_LEARNED_ON_SITE_MORE,
    *ENGLISH_LEARNED,
    *ENGLISH_BREATHS,
    *ENGLISH_NUMBERS_ALOUD,
    *ENGLISH_ANSWERED_PLAINLY,
    *ENGLISH_ONE_BREATH,
    *ENGLISH_TAPING_SAID,
    *ENGLISH_NONE_THERE,
    *ENGLISH_PLAINER,
    *ENGLISH_ALOUD,
    *ENGLISH_FASTENING,
    *ENGLISH_TURNED_PLAINLY,
    *ENGLISH_MEASURED,
    *ENGLISH_NOT_OF_THE_WORK,
    *ENGLISH_COURTESIES,
    *ENGLISH_MOUTHS,
    *ENGLISH_FILLED_IN,
    *ENGLISH_PROMISED,
    *ENGLISH_LEFT_PLAINLY,
    *ENGLISH_HARMS_PLAINLY,
    *ENGLISH_WHERE_PLAINLY,
    *ENGLISH_TABS_PLAINLY,
    *ENGLISH_BESIDE_PLAINLY,
    *ENGLISH_TO_COME_PLAINLY,
    *ENGLISH_TOLD_THE_OTHER_WAY,
    *ENGLISH_SET_BESIDE_PLAINLY,
    *ENGLISH_MEANT_PLAINLY,
    *ENGLISH_SAID_ASKEW,
    *ENGLISH_PRINTED_PLAINLY,
    *ENGLISH_GAPS_PLAINLY,
    *ENGLISH_BY_HIS_WORD,
    *ENGLISH_TOLD_SHORTLY_AFTER,
    *ENGLISH_IN_PART,
    *ENGLISH_HARMED_BY_OTHERS,
    *ENGLISH_TURNED_DOWN,
)
