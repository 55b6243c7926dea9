"""Why the rest of the words state nothing: whose they are, and which numbers measured nothing of a fitting."""

from __future__ import annotations

from dataclasses import dataclass

from logbook.reading.own.answers import answers
from logbook.reading.composed.compose import compose
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.items import book, itemise
from logbook.reading.composed.size_pairs import MEASURES
from logbook.reading.clauses.stance import clauses, stances
from logbook.reading.words.tokens import tokens
from logbook.reading.own.turned import supposed
from logbook.reading.undone.undone import undone
from logbook.reading.unread import read_places
from logbook.said import Reading


@dataclass(frozen=True, slots=True)
class LeftAlone:
    """A stretch of words that states no fact, and the wording key of the reason."""

    start: int
    end: int
    why: str


def left_alone(reading: Reading) -> tuple[LeftAlone, ...]:
    if reading.language is None:
        return ()
    lexicon = book(reading.language)
    items = compose(itemise(tokens(reading.text), lexicon), reading.text, lexicon.language.letters, lexicon.language.forms)
    row = Row.of(reading.text, items)
    told = answers(row, clauses(row), lexicon.language)
    answered = told.spent | told.names
    row = row.blanked(told.spent)
    why = {at: reason for at, reason in stances(row, lexicon.language).items() if at not in answered}
    why |= {at: "condition" for at in supposed(row, clauses(row), lexicon.language)[0] if at not in why and at not in answered}
    own = row.blanked(why)
    why = {**dict.fromkeys(undone(own, clauses(own), lexicon.language).plans, "plan"), **why}
    spans = read_places(reading.shift or (), reading.fittings)
    spans += [(reading.withdraws.start, reading.withdraws.end)] if reading.withdraws is not None else []
    found: list[LeftAlone] = []
    for at, item in enumerate(items):
        if at in why:
            if found and found[-1].why == why[at] and at - 1 in why:
                found[-1] = LeftAlone(found[-1].start, item.end, why[at])
            else:
                found.append(LeftAlone(item.start, item.end, why[at]))
        elif item.concept in (*MEASURES, "COUNT") and not any(start < item.end and end > item.start for start, end in spans):
            found.append(LeftAlone(item.start, item.end, "number"))
    return tuple(found)

