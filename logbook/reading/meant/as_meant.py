"""The note as it is read: what is said twice is said once, words stand in the one spelling that the patterns know, and who works with the speaker is "we".

What is read of the words so set right keeps the places and the words of the note.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from logbook.reading.meant import apart_from_all, articles, asked_aloud, bare_names, clause_stops, dashes, false_ands, false_stops, fluent, lettered, measured_next, named_ahead, number_set_right, one_number, plainly, pointed, stand_in, together, told_in_turn
from logbook.reading.meant.each_alone import each_alone
from logbook.reading.meant.one_by_one import one_by_one
from logbook.reading.meant.longhand import as_written, cuts, signs, with_apostrophes
from logbook.reading.meant.mastic_as_tape import mastic_as_tape
from logbook.reading.words.phrases import phrases_said
from logbook.reading.words.spelled import Cut, written_out
from logbook.reading.words.tokens import Token, tokens
from logbook.said import Reading

_NAMES = ("mark", "kind", "stage", "place", "service", "run")  # what alone tells of no work
Reads = Callable[[str, tuple[Token, ...]], Reading]


def as_meant(text: str, found: tuple[Token, ...], code: str, job, read: Reads) -> Reading:
    """The note past what is said twice and what is uttered between its words, in the spelling that is known."""
    same = with_apostrophes(text)
    if same != text:
        return replace(as_written(as_meant(same, tokens(same), code, job, read), text, ()), text=text)
    if spelled := _not_the_crews(signs(text, found, code), found, job, code):
        return _set_right(text, spelled, lambda text, found: as_meant(text, found, code, job, read))
    if plain_words := plainly.first(text, found, code):
        return _set_right(text, plain_words, lambda text, found: as_meant(text, found, code, job, read))
    if right := number_set_right.cuts(text, found, code):
        return _set_right(text, right, lambda text, found: as_meant(text, found, code, job, read), slips=True)
    told = one_by_one(text, code, lambda part: as_meant(part, tokens(part), code, job, read))
    if told is not None:
        return told
    if written := lettered.cuts(found, code):
        return _set_right(text, written, lambda text, found: as_meant(text, found, code, job, read))
    if parted := dashes.cuts(found):
        return _set_right(text, parted, lambda text, found: as_meant(text, found, code, job, read))
    if parted := told_in_turn.cuts(found, code):
        return _set_right(text, parted, lambda text, found: as_meant(text, found, code, job, read))
    if left_out := articles.cuts(text, found, code):
        return _set_right(text, left_out, lambda text, found: as_meant(text, found, code, job, read))
    alone = lambda text, found: each_alone(text, code, lambda one: _as_it_stands(one, tokens(one), code, job, read), lambda: _as_it_stands(text, found, code, job, read))  # noqa: E731
    return mastic_as_tape(text, code, lambda: alone(text, found), lambda made: _set_right(text, made, alone))


def _as_it_stands(text: str, found: tuple[Token, ...], code: str, job, read: Reads) -> Reading:
    in_clauses = lambda text, found: _clause_by_clause(text, found, code, lambda text, found: _of_pieces(text, found, code, lambda text, found: _pointing(text, found, code, job, read)))  # noqa: E731
    made = measured_next.cuts(text, found, code)
    return _set_right(text, made, in_clauses) if made else in_clauses(text, found)


def _clause_by_clause(text: str, found: tuple[Token, ...], code: str, read: Reads) -> Reading:
    if apart := apart_from_all.cuts(found, code):
        return _set_right(text, apart, lambda text, found: _clause_by_clause(text, found, code, read))
    made = clause_stops.cuts(text, found, code)
    return _set_right(text, made, read) if made else read(text, found)


def _of_pieces(text: str, found: tuple[Token, ...], code: str, read: Reads) -> Reading:
    """With the word for a piece before a number that alone names one; several numbers are left as they are said, where each is found to name a piece so."""
    made = bare_names.names(found, code)
    if not made.cuts:
        return _of_one_number(text, found, code, read)
    told = read(text, found) if made.several else None
    if told is not None and bare_names.all_named(told, made.marks):
        return told
    written = _set_right(text, made.cuts, read)
    return written if bare_names.all_named(written, made.marks) else told or read(text, found)


def _of_one_number(text: str, found: tuple[Token, ...], code: str, read: Reads) -> Reading:
    """Where nothing names the piece, with the word for one before the only number that nothing has read."""
    told = read(text, found)
    made = one_number.cuts(found, told, code)
    if not made:
        return told
    written = _set_right(text, made, read)
    return written if any(fact.name == "mark" for one in written.fittings for fact in one.facts) and any(fact.name not in _NAMES for one in written.fittings for fact in one.facts) else told


def _past_slips(text: str, found: tuple[Token, ...], code: str, job, read: Reads) -> Reading:
    in_order = lambda said, found: _smoothed(said, found, code, (fluent.once, fluent.smoothed, fluent.once, asked_aloud.questions, plainly.cuts, false_ands.cuts, false_stops.cuts), lambda text, found: _spelled(text, found, code, job, read))  # noqa: E731
    return named_ahead.with_names_ahead(text, in_order(text, found), code, lambda ahead: in_order(ahead, tokens(ahead)))


def _smoothed(text: str, found: tuple[Token, ...], code: str, ways, read: Reads) -> Reading:
    for at, smooth in enumerate(ways, 1):
        if smooth in ways[: at - 1]:
            continue  # on these words it found nothing before
        made = smooth(text, found, code)
        if made:
            return _set_right(text, made, lambda text, found: _smoothed(text, found, code, ways[at:], read), slips=smooth is plainly.cuts)
    return read(text, found)


def _spelled(text: str, found: tuple[Token, ...], code: str, job, read: Reads) -> Reading:
    """Words in the known spelling, but not those of a phrase that the crew made its own."""
    made = _not_the_crews(cuts(text, found, code), found, job, code)
    if made:
        in_the_known = lambda text, found: _named(text, found, code, job, read)  # noqa: E731
        return _set_right(text, made, lambda text, found: _smoothed(text, found, code, (plainly.cuts,), in_the_known), slips=True)
    return _named(text, found, code, job, read)


def _not_the_crews(made: tuple[Cut, ...], found: tuple[Token, ...], job, code: str) -> tuple[Cut, ...]:
    """Those that are in no phrase that the crew made its own."""
    own = phrases_said(found, job, code) if made else ()
    return tuple(cut for cut in made if not any(cut.start < said.end and cut.end > said.start for said in own)) if own else made


def _named(text: str, found: tuple[Token, ...], code: str, job, read: Reads) -> Reading:
    made = together.cuts(text, code)
    return _set_right(text, made, lambda text, found: _speaking(text, found, code, job, read)) if made else _speaking(text, found, code, job, read)


def _speaking(text: str, found: tuple[Token, ...], code: str, job, read: Reads) -> Reading:
    """A phrase that the crew made its own stays: "closed our way"."""
    made = _not_the_crews(together.as_one(text, code), found, job, code)
    return _set_right(text, made, read) if made else read(text, found)


def _pointing(text: str, found: tuple[Token, ...], code: str, job, read: Reads) -> Reading:
    """With the names of the pieces that its words point to, where they do."""
    told = _past_slips(text, found, code, job, read)
    made = pointed.cuts(text, told, code) if told.fittings else ()
    if not made:
        return told
    return stand_in.without(_set_right(text, made, lambda text, found: _clause_by_clause(text, found, code, lambda text, found: _past_slips(text, found, code, job, read))))


def _set_right(text: str, made: tuple[Cut, ...], read: Reads, slips: bool = False) -> Reading:
    written = written_out(text, made)
    return replace(as_written(read(written, tokens(written)), text, made, slips), text=text)
