"""Further plain words for work that was done, by the concept of the act. Words of common speech, no published source."""

from __future__ import annotations

from logbook.languages.ways import ways

WORK_DONE: tuple[tuple[str, str], ...] = (
    ("STAPLED", ways("did|done with", "the|all the|all my", "stapling") + "|stapling complete|stapling's complete|stapling is complete|popped the staples in|popped staples in|" + ways("pinned|tacked|secured|held", "|it|it down|it shut", "with staples") + "|" + ways("pinned|tacked|secured", "the flap|the flap down|the flap shut", "with staples")),
    ("TAPED", ways("did|done with", "the|all the|all my", "taping") + "|taping's complete|taping is complete"),
    ("RUBBED", ways("did|done with", "the|all the|all my", "rubbing|rub down|rubdown|rubbing down") + "|rubbing complete|rub down complete|rubdown complete|rubbing's complete"),
    ("WIPED", "it was clean when|it was clean and dry when|made sure it was clean|made sure the facing was clean|made sure it was clean and dry|" + ways("took|taken", "a|the|my", "rag", "to it|to the facing|to the foil|to the seams")),
    ("PREHEATED", "gave it heat first|gave it some heat first|heat gun on the facing first|heat gun on it first|got it warm first|got it warm before i taped|got it warm before the tape|took the chill off|took the chill off it|took the chill off first"),
    ("TRIMMED", ways("insulation|wool|glass|fiberglass", "is|'s|all|", "out of|off|off of", "the", "male end|flap") + "|" + ways("cut back|took back|peeled back", "the", "insulation|wool|glass|fiberglass", "on|at|off", "the male end|the flap")),
    ("HUNG", "raised it into place|raised into place|set it in the hangers|set it on the hangers|set in the hangers|hooked it on the hangers"),
    ("TIGHT", "sits tight|sits good and tight|sits nice and tight|sits real tight"),
)
