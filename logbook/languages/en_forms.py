"""English words of forms, tags and thumbs: "MARK: 15", "the tag reads R-3-07", "Tp. Rb."."""

from __future__ import annotations

from logbook.languages.language import Forms

ENGLISH_FORMS = Forms(
    tags=frozenset(("tag", "mark", "number", "label", "sticker", "tagged", "marked", "labeled", "labelled", "stenciled", "numbered", "stamp", "num", "no.")),
    tells=frozenset(("is", "was", "says", "said", "reads", "read", "shows", "on it", "on", "it", "'s", "as", "being", "would be", "should be", "there", "here", "number", "its", "it's", "this one")),
    alone=(
        ("TAPED", frozenset(("tp", "tpd"))), ("RUBBED", frozenset(("rb", "rbd", "rubd"))), ("STAPLED", frozenset(("stp", "stpd", "stpl"))),
        ("K_STRAIGHT", frozenset(("str", "strt"))), ("K_ELBOW", frozenset(("elb", "ellb"))), ("K_TRANSITION", frozenset(("trans", "trn", "rdcr", "redcr"))), ("K_OFFSET", frozenset(("ofst", "offs"))),
    ),
    before_measure=(("LENGTH", frozenset(("l", "len", "lgth"))), ("STAPLED", frozenset(("st", "stp", "stpl"))), ("OVER", frozenset(("ov",)))),
    turns={"nineties": 90, "90s": 90, "90's": 90, "ninetys": 90, "45s": 45, "45's": 45, "forty-fives": 45, "forty fives": 45, "forty fifths": 45},
    first=(("K_COLLAR", frozenset(("drop", "drops"))), ("K_OFFSET", frozenset(("off", "ofs", "offs"))), ("K_STRAIGHT", frozenset(("str", "st", "strt"))), ("K_ELBOW", frozenset(("el", "elb"))), ("K_TRANSITION", frozenset(("trans", "red", "trn"))), ("K_END_CAP", frozenset(("cp",))), ("K_COLLAR", frozenset(("clr", "coll")))),
)
