"""The path of one text, in order: items, whose words, what was left undone, what is stated, what of it stands, the pieces and their facts."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from logbook.reading.composed import without_stops
from logbook.reading.names import going_back, listed, other_things, told_of_a_part
from logbook.reading.own import answers
from logbook.reading.pieces import drafts, entries, leak_tests
from logbook.reading.meant.as_meant import as_meant
from logbook.reading.clauses.claims import Claim
from logbook.reading.composed.compose import compose
from logbook.reading.own.elsewhere import signed, without
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.items import book, itemise
from logbook.reading.undone.left_undone import LeftUndone, left_undone
from logbook.reading.clauses.mention import Mention
from logbook.reading.pieces.only_planned import only_planned
from logbook.reading.own.own_words import OwnWords, own_words
from logbook.reading.names.parting import parted
from logbook.reading.words.phrases import phrases_said
from logbook.reading.meant.piece_by_piece import joined, read_parts, tell_all
from logbook.reading.names.pointing_back import pointing_back
from logbook.reading.composed.run_on import ended
from logbook.reading.pieces.shift import is_shift, shift_claims
from logbook.reading.stated.stated import Stated, stated
from logbook.reading.names.told_ahead import named_by_others, with_a_mark
from logbook.reading.pieces.told_entries import fact_of, told_entries
from logbook.reading.words.tokens import tokens
from logbook.reading.unread import given, read_places, unread
from logbook.reading.compared.compared_claims import compared_claims
from logbook.said import Entry, Reading

_OF_PLANS = ("RUBBED", "TAPED", "STAPLED")  # acts that are planned of a piece that is there


def read_text(text: str, found, code: str, source: str | None, job) -> Reading:
    """The note as it is meant. It is read more than once, in other words; what of it stands as it stood before is not read again."""
    whole: dict[str, Reading] = {}
    parts: dict[str, Reading] = {}

    def reads(text: str, found) -> Reading:
        if text not in whole:
            whole[text] = _read_out(text, found, code, source, job, alone)
        return whole[text]

    def alone(part: str) -> Reading:
        """Of a part that is on one piece."""
        if part not in parts:
            found = tokens(part)
            parts[part] = _read_as_one(part, itemise(found, book(code)), found, code, source, job)
        return parts[part]

    return as_meant(text, found, code, job, reads)


def _read_out(text: str, found, code: str, source: str | None, job, alone: Callable[[str], Reading]) -> Reading:
    """`alone`: what reads a part that is on one piece, and is not parted."""
    lexicon = book(code)
    language, items = lexicon.language, itemise(found, lexicon)
    composed = compose(items, text, language.letters, language.forms)
    if at := parted(Row.of(text, composed), language):
        parts_read = read_parts(text, at, alone)
        if parts_read and at[0][0] == 0 and tell_all(parts_read):
            return joined(Reading(code, source, text), parts_read)
        whole = _read_as_one(text, items, found, code, source, job, composed)
        return joined(whole, parts_read) if parts_read else whole
    return _read_as_one(text, items, found, code, source, job, composed)


def _read_as_one(text: str, items, found, code: str, source: str | None, job, composed=None) -> Reading:
    """`composed`: the items as they are composed, where that was done already."""
    language = book(code).language
    if language.run_on.subjects and without_stops.has_none(found):
        signed, items = without_stops.with_signs(text, items, language.run_on)
        return replace(without_stops.as_heard(_read(signed, _composed(signed, items, language), found, code, source, job), text), text=text)
    if composed is None or ended(items, text, language.run_on) is not items:
        composed = _composed(text, items, language)
    return _read(text, composed, found, code, source, job)


def _composed(text: str, items, language):
    return compose(ended(items, text, language.run_on), text, language.letters, language.forms)


def _read(text: str, items, found, code: str, source: str | None, job) -> Reading:
    """Whose words, what is left undone, what is stated, what of it stands; then the pieces and their entries."""
    language = book(code).language
    told = own_words(text, items, found, job, language)
    base = Reading(code, source, text, withdraws=told.taken_back)
    left = left_undone(told, language)
    said = stated(told, left, language)
    named, claims = compared_claims(told, left.row, said, language)
    if told.taken_back is not None and told.taken_back.what == "this":
        return base
    if other_things.a_lack(left.row):
        return replace(base, reason="reading.nothing-said")
    if is_shift(left.row, named, claims):
        row = replace(left.row, text=text)
        facts = tuple(fact_of(one, row, False) for one in shift_claims(row, claims))
        return replace(base, shift=facts, unread=_unread(told, left, said, read_places(facts, ()), language))
    named = _named(told, left, named, claims, said.taken, language)
    if only_planned(left.row, named, claims, {at for at, why in told.not_own.items() if why == "plan"} | left.plans):
        return replace(base, reason=_why(told, left))
    if not any(one.kind is not None or one.mark is not None or one.batch for one in named) and not any(item.concept in ("LEAK_TEST", "CFM") for item in left.row.items):
        claims = signed(left.row, told.cut, claims)
    fittings = _fittings(text, told, left, said, named, claims, _phrase_claims(found, job, code, told.whole.items), language)
    reason = None if fittings or told.taken_back else _why(told, left)
    not_read = _unread(told, left, said, [*read_places((), fittings), *((one.start, one.end) for one in claims)], language, fittings)
    return replace(base, fittings=given(told.whole, fittings, not_read, language), reason=reason, unread=not_read)


def _named(told: OwnWords, left: LeftUndone, named: list[Mention], claims: list[Claim], taken: set[int], language) -> list[Mention]:
    """The mentions of his pieces, with those that only what is said of them shows to be some."""
    row, not_own = left.row, told.not_own
    named = named_by_others(row, named, claims, taken, language)
    in_sight = row.blanked({at for at, why in not_own.items() if not (why == "plan" and row.items[at].concept in _OF_PLANS)}).blanked(left.plans)
    named = with_a_mark(row, in_sight, not_own, named, claims, taken, language)
    named = told_of_a_part.of_the_piece(row, pointing_back(row, named, language))
    return going_back.told_of_before(row, answers.asked_of(row, told.replies, named, language), language)


def _fittings(text: str, told: OwnWords, left: LeftUndone, said: Stated, named: list[Mention], claims: list[Claim], phrases: list[Claim], language) -> tuple[Entry, ...]:
    """The pieces that are named, each with the claims on it."""
    row = left.row
    made, regions = drafts.drafts(row, listed.together(row, listed.kinds_ahead(row, named)))
    leak_tests.leaks(row, said.row, made, regions)
    drafts.share_out(row, made, regions, claims, listed.directed(row, {one.mark for one in named if one.mark is not None}, language))
    for one in phrases:
        made[regions[drafts.region_of(regions, one.first)][1]].claims.append(one)
    told_of = without(row, told.aside)
    done = [entries.settle(told_of, draft, text, language) for draft in made]
    entries.copy_over(made, regions, done, said.copied)
    entries.carry(made, done, row, language)
    return told_entries(replace(row, text=text), made, done)


def _unread(told: OwnWords, left: LeftUndone, said: Stated, read: list[tuple[int, int]], language, stated: tuple[Entry, ...] = ()):
    """What was said and not read. `read`: the places of the text that were; `stated`: the pieces, with their facts."""
    spent = told.spent | left.in_turns_at | left.waiting_at | told.phrase_at | told.saying_so | left.plans | {at for one in said.copied for at in range(one.first, one.last)}
    return unread(told.whole, told.cut, read, spent, told.not_own, language, stated)


def _why(told: OwnWords, left: LeftUndone) -> str:
    return "reading.not-own-work" if told.not_own or left.plans else "reading.nothing-said"


def _phrase_claims(found, job, code: str, items) -> list[Claim]:
    """What the phrases of the crew state."""
    made = []
    for said in phrases_said(found, job, code):
        first = next(at for at, item in enumerate(items) if item.last > said.first)
        made += [Claim(name, value, first, first + 1, said.start, said.end, via="phrase") for name, value in said.facts]
    return made
