"""The words of a part of a clause with its acts and pieces as signs, so that one pattern reads every act.

"I didn't leave the tape off straight nine" becomes "i didn't leave the <n> off #": `<n>` is what an act is done with, `<d>` the act
as done, `<b>` the act as something to do, `<u>` a word that says by itself that it is not done, `#` a piece.
"""

from __future__ import annotations


from logbook.languages.language import Language
from logbook.reading.clauses.denials import DENIED
from logbook.reading.clauses.grammar import Row, code
from logbook.reading.words.kinds import KIND_CONCEPTS
from logbook.reading.clauses.parts import Part
from logbook.reading.words.tokens import plain
from logbook.record import record

_DONE = ("STAPLED", "TAPED", "RUBBED", "TRIMMED", "WIPED", "PREHEATED", "REPAIRED", "BENT", "SEATED", "REINFORCED")
_TO_DO = ("STAPLE", "TAPE_IT", "RUB", "TRIM", "WIPE", "REPAIR_IT", "HEAT_IT")
_NOUNS = ("TAPE", "STAPLES", "VANES", "TABS", "TIE_RODS", "SCRIM")
SIGNS = {**dict.fromkeys(_DONE, "<d>"), **dict.fromkeys(_TO_DO, "<b>"), **dict.fromkeys(_NOUNS, "<n>"), "UNTAPED": "<u>", "UNSTAPLED": "<u>"}
_DRAWN = frozenset((*SIGNS, *KIND_CONCEPTS, "FITTING", "NUMBER", "BRANCH_WORD", "CORRECTION_ON", "WORD"))  # the others stand as they were said
_OF_UN = {"UNTAPED": "taped", "UNSTAPLED": "stapled"}


@record
class Sketch:
    first: int
    last: int  # items first to last - 1
    sentence: int
    words: str
    places: tuple[tuple[int, int], ...]  # (where in the words, item)
    acts: tuple[tuple[int, str], ...]  # (item, fact)

    def item(self, at: int) -> int:
        """The item whose sign or words stand at this place of the words."""
        found = self.first
        for start, item in self.places:
            if start > at:
                break
            found = item
        return found

    def acts_in(self, start: int, end: int) -> list[tuple[int, str]]:
        first, last = self.item(start), self.item(max(start, end - 1))
        return [(item, name) for item, name in self.acts if first <= item <= last]


def sketches(row: Row, cut_up: tuple[Part, ...], language: Language) -> tuple[Sketch, ...]:
    panels = code("PANEL") in row.string
    return tuple(_sketch(row, part, language, panels) for part in cut_up)


def _sketch(row: Row, part: Part, language: Language, panels: bool) -> Sketch:
    words, length, places, acts = [], 0, [], []
    at, items, text, letters, void, drawn = part.first, row.items, row.text, row.string, code("VOID"), _DRAWN
    while at < part.last:
        item = items[at]
        concept = item.concept
        said = plain(text[item.start : item.end])
        if concept not in drawn and letters[at] != void:
            places.append((length, at))
            words.append(said)
            length += len(said) + 1
            at += 1
            continue
        sign, width = SIGNS.get(concept), 1
        if concept == "SEATED" and not panels:
            sign = None  # "the tape is still sitting on the roll"
        if letters[at] == void or concept == "CORRECTION_ON":  # "forget what I said about nine": nothing of it is forgotten
            said = "_"
        elif concept == "WORD" and said in language.told.weighed.undone:
            acts.append((at, dict(language.told.weighed.undone_names)[said]))
            said = "<u>"
        elif sign is not None:
            acts.append((at, _OF_UN.get(concept) or DENIED[concept][0]))
            said = sign + (" 's" if said.endswith("'s") else "")
        elif concept.startswith("K_") or concept in ("FITTING", "NUMBER", "BRANCH_WORD"):
            width = _named(row, at, part.last)
            said = "#" if width > 1 or concept.startswith("K_") else said
        places.append((length, at))
        words.append(said)
        length += len(said) + 1
        at += width
    return Sketch(part.first, part.last, part.sentence, " ".join(words), tuple(places), tuple(acts))


def _named(row: Row, at: int, last: int) -> int:
    """How many items name the piece: "straight", "number", "nine"."""
    end = at + 1
    while end < last and end < at + 3 and row.items[end].concept in ("NUMBER", "FITTING", "DASH"):
        end += 1
    return end - at + 1 if end < last and row.items[end].concept in ("NUM", "MARKED", "LETTER") else 1
