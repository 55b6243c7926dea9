"""All that Spanish says in a roundabout way, in the order in which it is looked for. Where two rows find the same words the first has them."""

from __future__ import annotations

from logbook.languages.es.asked_plainly import SPANISH_ASKED_PLAINLY
from logbook.languages.es.face_is_foil import SPANISH_FACE_IS_FOIL
from logbook.languages.es.fronted import SPANISH_FRONTED
from logbook.languages.es.in_part import SPANISH_IN_PART
from logbook.languages.es.let_be import SPANISH_LET_BE
from logbook.languages.es.none_there import SPANISH_NONE_THERE
from logbook.languages.es.breaths import SPANISH_BREATHS
from logbook.languages.es.not_after_all import SPANISH_NOT_AFTER_ALL
from logbook.languages.es.not_of_the_work import SPANISH_NOT_OF_THE_WORK
from logbook.languages.es.not_so_ill import SPANISH_NOT_SO_ILL
from logbook.languages.es.not_yet_joined import SPANISH_NOT_YET_JOINED
from logbook.languages.es.other_senses import SPANISH_OTHER_SENSES
from logbook.languages.es.of_all_of_them import SPANISH_OF_ALL_OF_THEM
from logbook.languages.es.plainer import SPANISH_PLAINER
from logbook.languages.es.plainer_told import TOLD
from logbook.languages.es.ran_short import SPANISH_RAN_SHORT
from logbook.languages.es.still_owed import SPANISH_STILL_OWED
from logbook.languages.es.told_askew import SPANISH_TOLD_ASKEW
from logbook.languages.es.told_at_the_end import SPANISH_TOLD_AT_THE_END
from logbook.languages.es.told_in_passing import SPANISH_TOLD_IN_PASSING
from logbook.languages.es.told_in_turn import SPANISH_TOLD_IN_TURN
from logbook.languages.es.told_of_several import SPANISH_TOLD_OF_SEVERAL
from logbook.languages.es.told_plainly import SPANISH_TOLD_PLAINLY
from logbook.languages.es.told_shortly import SPANISH_TOLD_SHORTLY
from logbook.languages.es.told_shortly_after import SPANISH_TOLD_SHORTLY_AFTER
from logbook.languages.es.what_for import SPANISH_WHAT_FOR

SPANISH_SAID_PLAINER = (
    *SPANISH_WHAT_FOR,
    *SPANISH_NOT_OF_THE_WORK,
    *SPANISH_LET_BE,
    *SPANISH_OTHER_SENSES,
    *SPANISH_NONE_THERE,
    *SPANISH_STILL_OWED,
    *SPANISH_FRONTED,
    *SPANISH_NOT_AFTER_ALL,
    *SPANISH_BREATHS,
    *SPANISH_FACE_IS_FOIL,
    *SPANISH_RAN_SHORT,
    *SPANISH_TOLD_OF_SEVERAL,
    *SPANISH_TOLD_IN_PASSING,
    *SPANISH_NOT_SO_ILL,
    *SPANISH_OF_ALL_OF_THEM,
    *SPANISH_NOT_YET_JOINED,
    *SPANISH_TOLD_PLAINLY,
    *SPANISH_PLAINER,
    *SPANISH_ASKED_PLAINLY,
    *SPANISH_TOLD_ASKEW,
    *SPANISH_TOLD_IN_TURN,
    *SPANISH_TOLD_SHORTLY,
    *SPANISH_TOLD_SHORTLY_AFTER,
    *SPANISH_TOLD_AT_THE_END,
    *TOLD,
    *SPANISH_IN_PART,
)
