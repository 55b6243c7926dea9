"""English words for how a thing was left that name no act: tape that was only laid on, tabs that stand, glass that is still on the flap."""

from __future__ import annotations

from logbook.languages.language import State

_JUST = r"(?:only|just|merely|simply)(?: kind of| sort of| been)*"
_LAID = r"(?:laid|stuck|set|slapped|sitting|lying|laying|draped|patted|tacked|resting|thrown)"
_RUBBED = r"(?<!no )(?<!not )(?<!never )(?<!isn't )(?<!wasn't )(?:rubbed|squeegeed|burnished)\b|(?:went|gone|going) (?:back )?over|with (?:the|a|my) (?:plastic|card|spoon|squeegee|stick)"

ENGLISH_STATES_TOLD: tuple[State, ...] = (
    # tape that nobody rubbed
    State("rubbed_down", False, (rf"(?:(?:'s|is|was|got|went) )?{_JUST} {_LAID}(?: it| the tape)?(?: (?:on|down|there|in place|over it))+(?=$|[.,;]| (?:and|for|so|till|until)\b)",), ("TAPE", "TAPED"), righted=_RUBBED, cues=("laid", "stuck", "set ", "slapped", "sitting", "lying", "laying", "draped", "patted", "tacked", "resting", "thrown")),
    # the tabs of a collar
    State("tabs_bent", False, (r"(?:still |just |all )*(?:sticking|standing|pointing|stuck|sitting|poking)(?: (?:straight|right|up|out|in))+(?=$|[.,;]| (?:so|and|into|like|because|for)\b)",), ("TABS", "TAB_WORD"), ("collar", "branch"), uses=True, cues=("sticking", "standing", "pointing", "stuck", "sitting", "poking")),
)
