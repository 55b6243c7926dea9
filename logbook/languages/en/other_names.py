"""English things of many names, each in the one name that most of the patterns know: "turning fins" are vanes, "crossed strips" are cross tabs.

What a thing is called says nothing of whether it is there: "ran out of turning blades" is to be read as "ran out of vanes" is.
"""

from __future__ import annotations

from logbook.languages.thumbs import Short

_VANES = "turning_vanes turning_blades turning_guides turning_fins turning_deflectors turning_louvers turning_splitters blades_for_turning blades_to_turn blades_of_turning air_guides guides_of_air guides_for_air fins_for_turning fins_of_turning fins_for_air air_turns air_deflectors double_wall_vanes single_wall_vanes vane_rails vns"
_VANE = "turning_vane turning_blade vane_rail vane_set"
_CROSS_TABS = (
    "tape_crosses crosses_of_tape little_crosses cross_pieces_of_tape cross_pieces crossed_pieces cross_strips_of_tape cross_strips pieces_of_tape_crossed pieces_of_tape_across pieces_of_tape_in_cross strips_of_tape_across strips_of_tape_crossed"
    " tapes_crossed crossed_tapes crossed_pieces_of_tape crossed_strips pieces_of_crossed_tape cross-tabs crosstabs tape_tabs tabs_of_tape cross_straps cross_taps"
)
_CROSS_TAB = "cross_of_tape tape_cross crosstab"


def _of(names: str, means: str) -> tuple[Short, ...]:
    return tuple([Short(one.replace("_", " "), means, same=True) for one in names.split()])


ENGLISH_OTHER_NAMES = (*_of(_VANES, "vanes"), *_of(_VANE, "vane"), *_of(_CROSS_TABS, "cross tabs"), *_of(_CROSS_TAB, "cross tab"))
