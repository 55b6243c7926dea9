"""What is typed short in messages from phone to phone, beside the shorthand of the trade: "stpl ev 3", "tape nxt wk", "taping in am", "gotten 2 the tape"."""

from __future__ import annotations

from logbook.languages.thumbs import Short

_ACT = r"\b(?:tape|taping|rub|rubbing|staple|stapling|vanes|finish|finishing|trim|wipe|it|do|back|hang|due|in|come|comes|coming|here)\s+$"
_OF_A_PIECE = r"^\W*[a-z]{2,10}\.?\s*#?\s*\d{1,3}\s+$"

ENGLISH_TEXTED = (
    Short("ev", "every", before=r"\b(?:st\w*|staples?|tabs|screws|hangers?)\s*$", after=r"\s*\d"),
    *(Short(one, "next week", before=r"[a-z]\s+$") for one in ("nxt wk", "nxt week", "next wk")),
    *(Short(one, means, before=_ACT, after=r"\s*(?:[.,;\n]|$|am\b|morn)") for one, means in (("mon", "Monday"), ("tue", "Tuesday"), ("tues", "Tuesday"), ("wed", "Wednesday"), ("thur", "Thursday"), ("thurs", "Thursday"), ("thu", "Thursday"), ("fri", "Friday"), ("sat", "Saturday"))),
    Short("in am", "in the morning"),
    Short("in the am", "in the morning"),
    Short("aft", "after", after=r"\s+(?:lunch|break|lnch|work|dinner|that)\b"),
    Short("lnch", "lunch"),
    Short("2", "to", before=r"\b(?:gotten|get|got|go|good|come|back|want|able|time|ready)\s+$", after=r"\s+(?:the|it|that|tape|taping|rub|rubbing|staple|stapling|vanes|go)\b"),
    *(Short(one, "haven't") for one in ("havnt", "hvnt", "havent", "haven t", "hvn't")),
    *(Short(one, "hasn't") for one in ("hasnt", "hasn t")),
    *(Short(one, "didn't") for one in ("ddnt", "didn", "dident", "didint", "dint", "din't")),
    *(Short(one, "don't") for one in ("dnt", "dont")),
    *(Short(one, "ain't") for one in ("hain't", "haint")),
    *(Short(f"{one}nae", f"{one}n't") for one in ("is", "was", "did", "has", "have", "does", "could", "would", "are", "were")),
    *(Short(one, means) for one, means in (("havnae", "haven't"), ("cannae", "can't"), ("dinnae", "don't"), ("didnay", "didn't"), ("brung", "brought"), ("'fore", "before"), ("afore", "before"), ("bended", "bent"), ("putted", "put"), ("cutted", "cut"), ("teared", "torn"), ("sticked", "stuck"), ("breaked", "broken"), ("ductape", "duct tape"), ("duck tape", "duct tape"), ("duc tape", "duct tape"))),
    Short("nae", "no", after=r"\s+(?:tape|vanes?|staples?|gaps?|flap|tears?|holes?|damage|mastic|rub)\b"),
    Short("str8", "straight", after=r"\s*#?\s*\d"),
    Short("st", "straight", before=r"\b(?:on|for|at|in|of)\s+$", after=r"\s*#?\s*\d"),
    Short("tr", "transition", before=r"^\W*$", after=r"\s*#?\s*\d{1,3}\b(?!\s*[\"/])"),
    Short("4", "for", before=r"\b(?:time|waiting|wait|looking|ready|room|out|thx|thanks)\s+$", after=r"\s+(?:tape|taping|vanes|staples|the|it|me|u|you|that|now)\b"),
    Short("2", "to", before=r"\b(?:need|needs|have|has|got|still)\s+$", after=r"\s+(?:patch|repair|mend|bend|put|get|go|come)\b"),
    Short("2do", "to do"),
    Short("vaneless", "without vanes"),
    Short("tapeless", "without tape"),
    *(Short(one, f", {one}", before=_OF_A_PIECE, after=r"\s*(?:\"|in\b|inch|')?\s*(?:gap|tear|hole|rip|open|puncture|off)") for one in ("1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "1/16", "3/16")),
    *(Short(one, "181A-P") for one in ("181a p", "181ap")),
)
