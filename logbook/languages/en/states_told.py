"""English words for how a thing was left that name no act: tape that was only laid on, tabs that stand, glass that is still on the flap."""

from __future__ import annotations

from fractions import Fraction

from logbook.languages.language import State

_JUST = r"(?:only|just|merely|simply)(?: kind of| sort of| been)*"
_LAID = r"(?:laid|stuck|set|slapped|sitting|lying|laying|draped|patted|tacked|resting|thrown)"
_RUBBED = r"(?<!no )(?<!not )(?<!never )(?<!isn't )(?<!wasn't )(?:rubbed|squeegeed|burnished)\b|(?:went|gone|going) (?:back )?over|with (?:the|a|my) (?:plastic|card|spoon|squeegee|stick)"

_GLASS = r"(?:insulation|glass|fiber ?glass|fib(?:er|re)s?|fluff|fuzz|wool|batting|stuffing)"
_LAP = r"(?:(?:staple |stapling )?flap|male end|male|lap|cut|edge|slip end|tongue)"
_GLASS_CUES = ("insulation", "glass", "fib", "fluff", "fuzz", "wool", "batting", "stuffing")

ENGLISH_STATES_TOLD: tuple[State, ...] = (
    # tape that nobody rubbed
    State("rubbed_down", False, (rf"(?:(?:'s|is|was|got|went) )?{_JUST} {_LAID}(?: it| the tape)?(?: (?:on|down|there|in place|over it))+(?=$|[.,;]| (?:and|for|so|till|until)\b)",), ("TAPE", "TAPED"), righted=_RUBBED, cues=("laid", "stuck", "set ", "slapped", "sitting", "lying", "laying", "draped", "patted", "tacked", "resting", "thrown")),
    # glass on the flap or in the male end
    State("trimmed", False, (rf"{_LAP}(?: (?:on|of) \w+(?: \w+)?)?(?: is|'s| was)? still (?:carrying|has|had|got|with|wearing|holding|full of)(?: (?:all|its|the|some|that|of))* {_GLASS}", rf"{_GLASS}(?:'s| is| was)?(?: all)? still (?:in|on)(?: (?:it|there|(?:the )?{_LAP}))?(?=$|[.,;]| (?:so|and|but|of|on)\b)"), ("FLAP", "MALE", "END", "SHIPLAP", "TRIM", "K_TRANSITION"), apart=True, cues=_GLASS_CUES),
    State("trimmed", True, (rf"(?:cleaned|scraped|pulled|peeled|stripped|took|shaved|cut|picked) (?:all )?(?:of )?(?:the |its |that )?{_GLASS} (?:off|from|out of|back from|off of) (?:of )?(?:the |its )?{_LAP}(?: (?:on|of) \w+(?: \w+)?)?(?: (?:down )?to (?:the )?(?:bare )?(?:facing|foil))?", rf"{_LAP}(?: (?:on|of) \w+(?: \w+)?)?(?: is| was|'s)? (?:cut back|trimmed back|scraped|stripped|cleaned)(?: (?:off|up|back|down|all|the way|to (?:the )?(?:bare )?(?:facing|foil)))* clean\b"), ("FLAP", "MALE", "END", "SHIPLAP", "TRIM", "K_TRANSITION"), apart=True, cues=(*_GLASS_CUES, " clean")),
    State("trimmed", False, (rf"(?:left|leaving|there's|there is|has|have|had|got|still|with)(?: (?!no\b|not\b|any\b|none\b|never\b)[\w/\".-]+){{0,8}}? {_GLASS} (?:still |left )?(?:in|on|at|inside) (?:the |its |that |both )?(?:staple flap|flap|male ends?|male|slip end|tongue)(?! clean)",), ("FLAP", "MALE", "END", "SHIPLAP", "K_TRANSITION"), apart=True, cues=_GLASS_CUES),
    # a male end cleared of its glass
    State("trimmed", True, (rf"(?:male ends?|slip end)(?: (?:on|of) \w+(?: \w+)?)?(?:'s| is| are| was| were| got| has been)?(?: all| both| already| nice and)* (?:(?:cleaned|cleared|scraped|hollowed|scooped|dug|carved) (?:out|back)|(?:cleaned|cleared|scraped|stripped|free|rid|bare|empty)(?: out| back)? of (?:all )?(?:the |its )?{_GLASS}|scraped|stripped|cleared)", r"(?:(?:cleaned|cleared|scraped|hollowed|scooped|dug|carved) out|scraped|stripped|cleared) (?:the |its |both )?(?:male ends?|slip end)"), ("MALE", "END"), ("transition",), uses=True, cues=("male end", "slip end")),
    # screws that hold by their heads alone
    State("washer_size", Fraction(0), (r"(?:didn't|don't|never|couldn't|can't) (?:really )?(?:see|saw|seen) (?:the |any |a |much )?(?:point|need|use|sense|reason) (?:of|in|for|to use|to put|putting)(?: any| the)? washers", r"washers,? (?:that )?(?:i|we) (?:just )?(?:didn't|never|don't) (?:bother|bothered)(?: with| putting)*", r"what good (?:are|is|do) (?:the )?washers", r"washers (?:seemed|looked|felt|are|were) (?:like )?(?:a waste|overkill|pointless|silly|too much)"), ("WASHERS",), ("equipment_connection", "damper_sleeve"), uses=True, cues=("washer",)),
    # harm that stays as it is
    State("damage_repaired", False, (r"(?:no|not any|nothing|without|out of|haven't got|don't have|didn't have|never had|got no|had no|have no|ran out of)(?: (?:more|any|a|the))*(?: (?:duct board|board|fabric|mastic|tape|foil|plug|patch|scrap|stuff|material|piece|pieces|glass))?(?: \w+){0,3}? (?:to|for) (?:fix|fixing|patch|patching|mend|mending|repair|repairing|plug|plugging|replace|replacing|cover|covering)(?:(?: (?:it|that|this|them))?(?: with| up)?)", r"(?:nobody|no one)(?:'ll| will|'s going to| is going to| is gonna|'s gonna)(?: ever)? (?:look|see it|notice|see that|know)\b.*"), ("DAMAGE",), apart=True, cues=(" fix", " patch", " mend", " repair", " plug", " replac", " cover", "nobody", "no one")),
    # the tabs of a collar
    State("tabs_bent", False, (r"(?:still |just |all )*(?:sticking|standing|pointing|stuck|sitting|poking)(?: (?:straight|right|up|out|in))+(?=$|[.,;]| (?:so|and|into|like|because|for)\b)",), ("TABS", "TAB_WORD"), ("collar", "branch"), uses=True, cues=("sticking", "standing", "pointing", "stuck", "sitting", "poking")),
    # harm that was passed by
    State(
        "damage_repaired",
        False,
        (
            r"(?:tear|rip|hole|gash|dent|split|slit|puncture)s? (?:just )?stays?(?: (?:in|in it|there|like that|as it is|open|put))*$",
            r"^(?:(?:and|so|but|i|we|just) )*(?:walked|went|kept|drove|moved) (?:right |straight |on )*(?:past|by) (?:it|that)$",
            r"(?:put|did|used|laid|stuck) nothing (?:over|on|to|about|across|for) (?:it|that|them|the \w+)$",
            r"nothing(?: has|'s)? (?:went|gone|been put|was put|got put|put) (?:on|over|across) (?:it|that|them)$",
            r"(?:somebody|someone|one of us|i|we) (?:ought to|oughta|should|needs? to|has to|have to|better) (?:patch|fix|mend|plug|cover|repair|see to|replace) (?:it|that|them|this)\b",
        ),
        ("DAMAGE",),
        apart=True,
        cues=(" stay", " past", " by ", "nothing", "ought", " should", " need", " has to", " have to", " better"),
    ),
    # a recut step that shows where it should not
    State(
        "groove_step",
        "outside",
        (
            r"(?:low step|step|rabbet|lap|lip)(?:'s| is)?(?: (?:still|just|all))* (?:showing|shows|visible|standing|sticking)(?: (?:out|up|proud))* (?:on |from |to )?(?:the )?outside(?: face)?",
            r"(?:see|seeing) (?:the|its|that) (?:low )?(?:step|lap|rabbet|lip) (?:from|on|at) (?:the )?outside",
        ),
        cues=("outside",),
    ),
)
