"""English that names the piece in the middle of what it tells of it: "the staples on straight 31 are turned in", "I taped straight 31 over dust"."""

from __future__ import annotations

from logbook.languages.named_ahead import NamedAhead

_ACT = r"(?:taped|stapled|rubbed|wiped|trimmed|closed|sealed|hung|built|made|patched|tape|staple|rub|wipe|trim|put up|cut|folded|left|did)"
_BEGINS = r"(?:^|[.,;:!?] (?:and |but |so |then |also |oh |well |yeah |okay )*|(?<![\w'])(?:and|but|so|that|because|then|also|since|where) )"

ENGLISH_NAMED_AHEAD = NamedAhead(
    turns=(
        (r"(?<![\w'])(?!(?:out|went|goes|go|going|got|get|gets|getting|back|over|came|come|on|up|down|moved?|onto|same|next|close|near|tied|joined|hooked|connects?|connected|goes|runs?|ran|beside|compared|similar|thanks|meet|meets|butts?|butted) )[a-z'-]+(?P<drops> (?:on|of|in|for|at|around|across|over|to|from|between)) $", r" (?!(?:and|or|to|through|thru|on|in|by|into|onto)(?![\w']))[a-z]"),
        (rf"(?<![\w']){_ACT} $", r" (?:over (?:the |some |all |that |a )?(?:dust|dirt|grease|oil|sawdust|wet|dusty|greasy|water)|(?:right )?over|with|without|using|at|cold|in the cold|like|before|down)\b"),
        (r"(?:^|[.,;:!?] |(?<![\w'])(?:and|but|so) )$", r"'s [a-z-]+ [a-z]"),
        (r"(?:^|[.,;:!?] (?:and |but |so |then |also )*|(?<![\w'])(?:and|but|so) )(?P<drops>(?:on|in|with|for) )$", r" (?!(?:and|or|to|through|thru|on|in|by|into|onto)(?![\w']))[a-z]"),
        (r"(?:^|(?<=[.!?] ))(?:i |we )[^,;.!?]*(?P<drops> (?:on|in)) $", r" *(?:[.!]|$)"),
    ),
    names=r"(?:(?:the|that|this|my|our|a|an|piece|number|fitting|no\.?|#) ?)*$",
)
