"""English words for how a thing was left that name no act: tape that was only laid on, tabs that stand, glass that is still on the flap."""

from __future__ import annotations

from logbook.languages.language import State

_JUST = r"(?:only|just|merely|simply)(?: kind of| sort of| been)*"
_LAID = r"(?:laid|stuck|set|slapped|sitting|lying|laying|draped|patted|tacked|resting|thrown)"
_RUBBED = r"(?<!no )(?<!not )(?<!never )(?<!isn't )(?<!wasn't )(?:rubbed|squeegeed|burnished)\b|(?:went|gone|going) (?:back )?over|with (?:the|a|my) (?:plastic|card|spoon|squeegee|stick)"

ENGLISH_STATES_TOLD: tuple[State, ...] = (
    # tape that nobody rubbed
    State("rubbed_down", False, (rf"(?:(?:'s|is|was|got|went) )?{_JUST} {_LAID}(?: it| the tape)?(?: (?:on|down|there|in place|over it))+(?=$|[.,;]| (?:and|for|so|till|until)\b)",), ("TAPE", "TAPED"), righted=_RUBBED, cues=("laid", "stuck", "set ", "slapped", "sitting", "lying", "laying", "draped", "patted", "tacked", "resting", "thrown")),
    # harm that stays as it is
    State("damage_repaired", False, (r"(?:no|not any|nothing|without|out of|haven't got|don't have|didn't have|never had|got no|had no|have no|ran out of)(?: (?:more|any|a|the))*(?: (?:duct board|board|fabric|mastic|tape|foil|plug|patch|scrap|stuff|material|piece|pieces|glass))?(?: \w+){0,3}? (?:to|for) (?:fix|fixing|patch|patching|mend|mending|repair|repairing|plug|plugging|replace|replacing|cover|covering)(?:(?: (?:it|that|this|them))?(?: with| up)?)", r"(?:nobody|no one)(?:'ll| will|'s going to| is going to| is gonna|'s gonna)(?: ever)? (?:look|see it|notice|see that|know)\b.*"), ("DAMAGE",), apart=True, cues=(" fix", " patch", " mend", " repair", " plug", " replac", " cover", "nobody", "no one")),
    # the tabs of a collar
    State("tabs_bent", False, (r"(?:still |just |all )*(?:sticking|standing|pointing|stuck|sitting|poking)(?: (?:straight|right|up|out|in))+(?=$|[.,;]| (?:so|and|into|like|because|for)\b)",), ("TABS", "TAB_WORD"), ("collar", "branch"), uses=True, cues=("sticking", "standing", "pointing", "stuck", "sitting", "poking")),
)
