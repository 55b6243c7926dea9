"""What a rule function looks words up with: it keeps which facts and which standing words were used, in order."""

from __future__ import annotations

from logbook import limits
from logbook.findings import Lean, Outcome
from logbook.piece import Piece
from logbook.runs import Around


class Use:
    """The words of one piece as one rule uses them. Lives only while the rule function runs."""

    def __init__(self, piece: Piece, around: Around):
        self.piece, self.around, self.job = piece, around, around.job
        self.facts: list[str] = []
        self.leans: list[Lean] = []

    def limit(self, name: str):
        return self.job.limit(name)

    def peek(self, name: str):
        """The value that was said, without leaning on it: only to see whether the rule is due."""
        return self.piece.value(name)

    def said(self, name: str):
        """The value that was said, or None; from here on the finding uses it."""
        value = self.piece.value(name)
        if value is not None and name not in self.facts:
            self.facts.append(name)
        return value

    def known(self, name: str):
        """The value that was said, else the word that stands for it, or None."""
        value = self.said(name)
        if value is not None:
            return value
        word = self.standing(name)
        if word is None:
            return None
        lean = Lean(name, word.via)
        if lean not in self.leans:
            self.leans.append(lean)
        return word.value

    def standing(self, name: str):
        word = self.piece.stands(name)
        return word if word is not None and limits.may_stand(name, word.via) else None

    def via(self, name: str) -> str | None:
        """job or shift where the value stands and was not said."""
        word = self.standing(name)
        return None if word is None or self.piece.value(name) is not None else word.via

    def meets(self, case: str, **more) -> Outcome:
        return self._outcome(case, "meets", more)

    def departs(self, case: str, **more) -> Outcome:
        return self._outcome(case, "departs", more)

    def unsaid(self, case: str, asks: str | None, **more) -> Outcome:
        return self._outcome(case, "unsaid", {"asks": asks} | more)

    def unclear(self, case: str, asks: str | None, **more) -> Outcome:
        return self._outcome(case, "unclear", {"asks": asks} | more)

    def _outcome(self, case: str, verdict: str, more: dict) -> Outcome:
        stated = more.pop("stated_by", None)
        used = {"facts": tuple(self.facts), "leans_on": tuple(self.leans)}
        return Outcome(case, verdict, **used, stated=None if stated is None else self.via(stated), **more)


def closed(piece: Piece) -> bool:
    """Taped, or closed with mastic: the piece says that its joints are closed."""
    if piece.value("taped") is False and piece.value("closure") != "mastic":  # "no tape, mastic": closed by the other
        return False
    mended = piece.value("kind") == "repair" and piece.value("repair_method") == "mastic"
    return piece.value("taped") is True or piece.value("closure") == "mastic" or mended


def against_the_air(piece: Piece) -> bool:
    """On a return or exhaust run people speak from the unit outward, against the air."""
    word = piece.stands("service")
    service = piece.value("service") or (None if word is None else word.value)
    return service in ("return", "exhaust")
