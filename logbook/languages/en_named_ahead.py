"""English that names the piece in the middle of what it tells of it: "the staples on straight 31 are turned in", "I taped straight 31 over dust"."""

from __future__ import annotations

from logbook.languages.named_ahead import NamedAhead

_THING = (
    r"(?:staples?|legs?|points|tape|foil tape|taping|tape job|spacing|joints?|seams?|steps?|grooves?|shiplap|facing|foil|skin|scrim|flap|tabs|vanes|corners?|top|bottom|back|front|sides?|ends?|throat|heel|clinch|rub|insulation"
    r"|wool|board|gap|washers|screws|hangers|straps|rods|damper|roll|patch|tear|rip|hole|staple spacing|tab spacing|air|static|pressure|collar|slope|set ?back)"
)
_DOES = (
    r" (?:(?:just|only|still|all|really|actually|also|sort of|kind of) )*(?:is|are|was|were|isn't|aren't|wasn't|weren't|ain't|be|has|have|had|hasn't|haven't|hadn't|got|gets|came|comes|come|measures?|measured|doesn't|don't|didn't|does|do|runs?|ran|needs?|needed|bent|bend|points?|pointed|turned|turn|curl"
    r"|curled|sits?|sticks?|stuck|looks?|looked|shows?|showed|went|goes|never|won't|wouldn't|faces?|faced|ended|end|stands?|stayed|stays|moves?|moved|drops?|dropped|lifts?|lifted|peels?|peeled|split|broke|tore|weighs|wants?|reads?|fell|could|couldn't|can|can't|drip|holds?|held)\b"
)
_ACT = r"(?:taped|stapled|rubbed|wiped|trimmed|closed|sealed|hung|built|made|patched|tape|staple|rub|wipe|trim|put up|cut|folded|left|did)"
_BEGINS = r"(?:^|[.,;:!?] (?:and |but |so |then |also |oh |well |yeah |okay )*|(?<![\w'])(?:and|but|so|that|because|then|also|since|where) )"

ENGLISH_NAMED_AHEAD = NamedAhead(
    turns=(
        (rf"{_BEGINS}(?:[a-z'-]+ ){{0,4}}?{_THING}(?: (?:i|we) (?:put|used|ran|have|had|got|shot|laid))?(?P<drops> (?:on|in|of|for|at|around|to|across|over)) $", _DOES),
        (rf"(?<![\w']){_ACT} $", r" (?:over (?:the |some |all |that |a )?(?:dust|dirt|grease|oil|sawdust|wet|dusty|greasy|water)|(?:right )?over|with|without|using|at|cold|in the cold|like|before|down)\b"),
        (r"(?:^|[.,;:!?] |(?<![\w'])(?:and|but|so) )$", rf"'s (?:[a-z-]+ ){{0,3}}?{_THING}\b"),
        (r"(?:^|[.,;:!?] (?:and |but |so |then |also )*|(?<![\w'])(?:and|but|so) )(?P<drops>(?:on|in|with|for) )$", r" (?:the|i|we|it|one|two|three|there|there's|my|all|some|every|staples|legs|tape|they|no|nothing)\b"),
    ),
    names=r"(?:(?:the|that|this|my|our|a|an|piece|number|fitting|no\.?|#) ?)*$",
)
