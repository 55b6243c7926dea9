"""The path of one text, in order: items, whose words, what was not done, claims, entries, facts."""

from __future__ import annotations

from dataclasses import replace

from logbook.facts import BY_NAME
from logbook.reading import afar, air_told, anchored, answers, article_marks, as_wanted, asides, condition, contrasts, cut_from_a_roll, denied_of_all, done_over, drafts, ends, entries, going_back, how_big, leak_tests, legs_told, line_pressure, listed, lone_measures, moves, not_happened, not_home, one_left_out, other_things, out_of_tape, own_questions, part_of_it, partly, places, put_off, read_off, reasons, room, set_right, side_counts, sides_done, sizes, spaced_past, staples, states, supports, tabs, tapes, the_others, told_acts, told_of_a_part, turned, without_stops
from logbook.reading.all_but import all_but
from logbook.reading.as_meant import as_meant
from logbook.reading.by_now import by_now
from logbook.reading.came_off import undoings
from logbook.reading.claims import Claim, run
from logbook.reading.compose import compose
from logbook.reading.elsewhere import elsewhere, signed, without
from logbook.reading.gap_at_one import gap_at_one
from logbook.reading.grammar import Row
from logbook.reading.headings import mentions
from logbook.reading.how_hot import how_hot
from logbook.reading.in_its_clause import ACT_FACTS, UNHEDGED, Places, marked
from logbook.reading.items import WHOLE, book, itemise, kind_concept
from logbook.reading.lone_spacing import lone_spacings
from logbook.reading.measured_apart import measured_apart
from logbook.reading.not_that_one import not_that_one
from logbook.reading.only_planned import only_planned
from logbook.reading.of_both import of_both
from logbook.reading.parting import parted
from logbook.reading.parts import parts
from logbook.reading.piece_by_piece import joined, read_parts, tell_all
from logbook.reading.pieced_moves import pieced_moves
from logbook.reading.pointing_back import pointing_back
from logbook.reading.phrases import phrases_said
from logbook.reading.phrasing import in_any
from logbook.reading.retold import retold
from logbook.reading.run_on import ended
from logbook.reading.runs import runs
from logbook.reading.sameness import copies, mirrored, of_measures
from logbook.reading.shift import is_shift, shift_claims
from logbook.reading.stance import clauses, stances
from logbook.reading.still_coming import still_coming
from logbook.reading.taking_back import scratched, withdraws
from logbook.reading.ticked_off import ticked_off
from logbook.reading.tokens import tokens
from logbook.reading.turned_round import turned_round
from logbook.reading.turned_unread import without_turned
from logbook.reading.two_voices import by_turns
from logbook.reading.undone import undone, unfinished
from logbook.reading.told_alike import told_alike
from logbook.reading.told_ahead import named_by_others, with_a_mark
from logbook.reading.unread import given, read_places, unread
from logbook.reading.used_that import used_that
from logbook.reading.waits_its_turn import waits_its_turn
from logbook.reading.whole_turns import whole_turns, whose
from logbook.said import Earlier, Entry, Fact, OpenItem, Reading, SameAs, Span


def read_text(text: str, found, code: str, source: str | None, job) -> Reading:
    return as_meant(text, found, code, job, lambda text, found: _read_out(text, found, code, source, job))


def _read_out(text: str, found, code: str, source: str | None, job, alone: bool = False) -> Reading:
    """`alone`: the text is on one piece, and is not parted."""
    lexicon = book(code)
    language, items = lexicon.language, itemise(found, lexicon)
    composed = None if alone else compose(items, text, language.letters, language.forms)
    if composed is not None and (at := parted(Row.of(text, composed), language)):
        parts_read = read_parts(text, at, lambda part: _read_out(part, tokens(part), code, source, job, alone=True))
        if parts_read and tell_all(parts_read):
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
    language = book(code).language
    items = own_questions.as_built(text, by_turns(text, items, language), language)
    beside = asides.asides(Row.of(text, items), language)
    whole = answers.topics(asides.without(text, items, beside), language)
    items = whole.items
    taken_back, saying_so = withdraws(whole, language, text)
    phrase_at = {at for said in phrases_said(found, job, code) for at, item in enumerate(items) if item.first < said.last and item.last > said.first}
    row = whole.blanked(saying_so | phrase_at)
    row = row.recoded(side_counts.recodes(row, language) | of_measures(row))
    cut = clauses(row)
    ticks = ticked_off(row, language)
    row = row.blanked(ticks.spent)
    aside = elsewhere(row, cut, language)
    replies = answers.answers(row.blanked(aside), cut, language)
    answered, spent = [*beside.claims, *ticks.claims, *replies.claims], beside.spent | ticks.spent | replies.spent
    replies.names |= ticks.names
    row = row.blanked(spent)
    cut_up = parts(row, cut)
    but_one = one_left_out.places(row)
    if but_one:
        marks = list(dict.fromkeys(mark for one in mentions(row, set(), language) for mark, _ in one.batch))
        but_one = one_left_out.of_these(row, but_one, marks, language)
        cut_up = one_left_out.without(cut_up, but_one)
    wanted = as_wanted.as_wanted(row, cut_up, language)
    spent |= wanted.spent
    row = row.blanked(wanted.spent)
    first = retold(row.blanked(aside), cut_up, language)
    spent |= first.spent
    row = row.blanked(first.spent)
    away = afar.afar(row.blanked(aside), cut_up, language)
    spent |= away.spent
    row = row.blanked(away.spent)
    not_own = {at: why for at, why in {**stances(row, language), **away.not_own}.items() if at not in spent and at not in replies.names}
    not_own = {at: why for at, why in not_own.items() if at not in wanted.of_piece} | {at: "drawing" for at in wanted.wished}
    not_own = {at: why for at, why in not_own.items() if items[at].concept != "GROOVE" or why not in ("drawing", "other")}  # "the step should face in, mine faces out": it is the step that faces out
    supposed, doubted = turned.supposed(row, cut, language)
    doubted |= away.doubted | turned.forgotten(row, cut, language)
    not_own |= {at: "condition" for at in supposed if at not in not_own and at not in spent and [item.concept for item in items[at + 1 : at + 2]] != ["STATIC"]}  # whatever he said it needs at a pressure, that is the pressure
    not_own |= {at: why for at, why in (whose(row, cut, language) | aside).items() if at not in not_own and at not in spent}
    own = row.blanked(not_own)
    turned_to, turned_at, of_piece = turned.turned(row, not_own, cut, language)
    own = own.blanked(turned_at)
    of_piece = of_piece | set(away.not_own) | first.of_piece
    left_so, left_so_at = states.told(own, cut_up, language)
    row, own = row.blanked({at for at in left_so_at if items[at].concept == "K_HANGER"}), own.blanked(left_so_at)
    waiting, waiting_at = unfinished(own, cut_up, language)
    own = own.blanked(waiting_at)
    in_turns, in_turns_at = whole_turns(row, own, row.blanked({at for at, why in not_own.items() if why not in ("drawing", "other")} | turned_at), row.blanked({at for at, why in not_own.items() if why not in ("drawing", "other", "condition")}), language)
    own = own.blanked(in_turns_at)
    short, short_at = not_happened.short_of_done(row.blanked(aside), own, not_own, cut, cut_up, language)
    left = undone(own.blanked(short_at), cut, language)
    undone_at = [(set_right.righted(row, cut_up, one, at, language), at) for one, at in undoings(row, own.blanked(short_at))]
    left_out = [*partly.sides_left_out(own.blanked({first for first, _, _ in but_one}), cut), *partly.half_done(own.blanked(short_at), cut, language)]
    sided, sided_at = side_counts.counts(row, own.blanked(left.plans), cut_up, language)
    stated = own.blanked(left.blank | left.plans | short_at | {at for _, at in undone_at})
    headed = row.blanked({at for at in not_own if at not in of_piece} | (turned_at - of_piece)).blanked(left.plans | staples.side_counts(row) | sided_at)
    headed = headed.blanked({at for at in in_turns_at if items[at].concept == "NUM" or items[at].concept.startswith("K_")})

    taken: set[int] = set()
    taken |= (how_many := article_marks.counted(headed, language))
    headed = headed.blanked(how_many)
    copied = copies(headed, taken, language)
    claims: list[Claim] = [*answered, *first.claims, *wanted.claims, *away.claims, *left_so, *waiting, *left.claims, *left_out, *(one for one, _ in undone_at), *turned.but_not(row, not_own, cut), *contrasts.so_is(own, cut, language), *turned.not_after_all(own), *short, *tabs.tabs_said(row, own.blanked(short_at), cut_up, left.blank | left.plans, language), *turned_to]
    claims += in_turns
    claims += runs(headed, taken, language)
    stated = stated.blanked(places.of_the_joined(stated))
    claims += places.joins(stated, taken, language)
    claims += run(moves.LEVEL_FRAMES, stated, taken)
    named = [one for one in drafts.disowned(row, mentions(headed, taken, language), language) if one.kind is not None or one.mark_at is None or one.mark_at[0] not in short_at]
    named = contrasts.with_each(row, named, language)
    taken.update(at for m in named if m.mark_at for at in range(*m.mark_at))
    taken.update(at for m in named for _, span in m.batch for at in range(*span))
    stated = stated.recoded(staples.on_a_piece(row, {mark for m in named for mark in (m.mark, *(one for one, _ in m.batch)) if mark is not None}))
    stated = stated.recoded({at: "FILLER" for m in named if m.mark_at and _tells_where(row, m.mark_at[0]) for at in (m.mark_at[0] - 1, m.mark_at[0])})
    stated = stated.recoded({m.kind_at[0]: kind_concept(m.kind) for m in named if m.kind_at and items[m.kind_at[0]].concept == "BRANCH_WORD"})
    for frames in (legs_told.FRAMES, cut_from_a_roll.FRAMES, air_told.FRAMES, not_home.FRAMES, spaced_past.FRAMES, how_big.FRAMES, ends.FRAMES, moves.FRAMES, staples.SPACING_FRAMES, tapes.BOARD_FRAMES, supports.FRAMES, condition.FRAMES, sides_done.FRAMES, sizes.FRAMES, staples.FRAMES, tapes.FRAMES):
        claims += run(frames, stated, taken)
    claims += line_pressure.pressures(row, stated, cut, taken, language)
    claims += read_off.read_off(row, taken, claims, language)
    claims += sizes.sizes(stated, taken)
    claims += lone_spacings(stated, taken, language)
    claims += waits_its_turn(row, named, language)
    claims += places.places(stated, language)
    claims = side_counts.not_whole(sided, claims, row)
    claims += side_counts.beside(sided, claims, row)
    claims += room.room(row, stated, cut, language, taken, claims)
    claims = moves.sided(stated, claims)
    claims = anchored.anchored(stated, claims, taken)
    claims += lone_measures.lone_measures(row, stated, taken, claims, cut_up, language)
    named, claims = told_alike(row, named, claims, taken)
    claims += how_hot(row, stated, taken, claims, language)
    claims = pieced_moves(row, stated, claims, taken, language)
    claims += told_acts.told(row, stated, cut_up, language)
    claims += used_that(row, claims, language)
    claims += out_of_tape.out_of_tape(row, own, cut_up, language)
    claims += lone_measures.lone_ways(row, stated, claims, cut_up, language)
    claims += ends.by_words(stated, claims, cut_up, language)
    claims += ends.step_after_wish(own, claims, language)
    claims = not_home.of_the_joint(row, claims + mirrored(stated, claims))
    claims = other_things.made_anew(row, condition.closed_again(row, gap_at_one(row, claims), language), language)
    claims = done_over.done_over(row, told_acts.unsaid(row, claims, language), language)
    claims = [*part_of_it.of_a_part(row, partly.of_the_rest(row, reasons.without_reasons(row, claims), language)), *scratched(row)]
    claims = put_off.put_off(row, claims, language)
    where = Places.of(row, cut)
    claims = [replace(one, hedged=True) if one.first in doubted and one.name in ACT_FACTS else one for one in claims]
    claims = [marked(row, cut, where, one) for one in claims]
    claims += [*of_both(row, named, claims), *denied_of_all.of_all(row, named, claims)]
    named, claims = not_that_one(row, named, turned_round(row, all_but(row, claims, language), cut, language), cut, language)
    claims = still_coming(row, by_now(row, cut_up, claims, language), language)
    named, claims = listed.told_ahead(row, named, measured_apart(row, named, claims, language))
    claims = the_others.of_the_others(row, named, _excepted(row, named, claims), language)
    if but_one:
        named, claims = one_left_out.excepted(row, but_one, named, claims, language)

    claims = without_turned(row, cut_up, claims, spent | set(not_own), language)
    base = Reading(code, source, text, withdraws=taken_back)
    if taken_back is not None and taken_back.what == "this":
        return base
    if other_things.a_lack(row):
        return replace(base, reason="reading.nothing-said")
    told = spent | in_turns_at | waiting_at | phrase_at | saying_so | left.plans | {at for one in copied for at in range(one.first, one.last)}
    if is_shift(row, named, claims):
        row = replace(row, text=text)
        facts = tuple(_fact(one, row, False) for one in shift_claims(row, claims))
        return replace(base, shift=facts, unread=unread(whole, cut, read_places(facts, ()), told, not_own, language))
    named = named_by_others(row, named, claims, taken, language)
    named = with_a_mark(row, row.blanked({at for at, why in not_own.items() if not (why == "plan" and items[at].concept in ("RUBBED", "TAPED", "STAPLED"))}).blanked(left.plans), not_own, named, claims, taken, language)
    named = told_of_a_part.of_the_piece(row, pointing_back(row, named, language))
    named = going_back.told_of_before(row, answers.asked_of(row, replies, named, language), language)
    if only_planned(row, named, claims, {at for at, why in not_own.items() if why == "plan"} | left.plans):
        return replace(base, reason=_why(not_own, left))
    if not any(m.kind is not None or m.mark is not None or m.batch for m in named) and not any(item.concept in ("LEAK_TEST", "CFM") for item in items):
        claims = signed(row, cut, claims)
    made, regions = drafts.drafts(row, listed.together(row, listed.kinds_ahead(row, named)))
    leak_tests.leaks(row, stated, made, regions)
    drafts.share_out(row, made, regions, claims, listed.directed(row, {one.mark for one in named if one.mark is not None}, language))
    _phrases(found, job, code, items, made, regions)
    told_of = without(row, aside)
    done = [entries.settle(told_of, draft, text, language) for draft in made]
    entries.copy_over(made, regions, done, copied)
    entries.carry(made, done, row, language)
    fittings = _entries(replace(row, text=text), made, done, job)
    reason = None if fittings or taken_back else _why(not_own, left)
    not_read = unread(whole, cut, [*read_places((), fittings), *((one.start, one.end) for one in claims)], told, not_own, language)
    return replace(base, fittings=given(whole, fittings, not_read, language), reason=reason, unread=not_read)


def _tells_where(row: Row, at: int) -> bool:
    """ "the top of eighteen comes down": the piece between a thing and what is said of it."""
    return at > 1 and row.items[at - 1].concept in ("OF", "ON", "IN") and row.items[at - 2].concept in ("SIDE", "PANEL", "STAPLES", "TAPE", "VANES", "GROOVE", "SHIPLAP")


def _why(not_own, left) -> str:
    return "reading.not-own-work" if not_own or left.plans else "reading.nothing-said"


def _excepted(row: Row, named, claims: list[Claim]) -> list[Claim]:
    """ "All are rubbed, except 5 isn't": what is said of the exception counts for it."""
    made = claims
    for one in named:
        if one.mark is None or "EXCEPT" not in [item.concept for item in row.items[max(0, one.first - 1) : one.mark_at[0]]]:
            continue
        until = row.sentence_end(one.last)
        made = [replace(c, corrects=True) if one.last <= c.first < until else c for c in made]
    return made


def _phrases(found, job, code, items, made, regions) -> None:
    for said in phrases_said(found, job, code):
        first = next(at for at, item in enumerate(items) if item.last > said.first)
        holder = regions[drafts.region_of(regions, first)][1]
        for name, value in said.facts:
            made[holder].claims.append(Claim(name, value, first, first + 1, said.start, said.end, via="phrase"))


def _entries(row: Row, made, done, job) -> tuple[Entry, ...]:
    kept: list[tuple[int, Entry]] = []
    where: dict[int, int] = {}
    for place, draft in enumerate(made):
        own = [(one, conflict, None) for one, conflict in done[place] if one.name in BY_NAME]
        opens = [item for one, _ in done[place] for item in one.opens]
        if not own and not opens and draft.same_as is None and not draft.withdrawn:
            continue
        if not _worth(row, own, opens, draft) or _only_goes_on(row, draft, own):
            continue
        where[place] = len(kept)
        kept.append((place, own))
    entries_made = []
    for place, own in kept:
        draft = made[place]
        rows = own + [(one, False, where[source]) for one, source in draft.carried if source in where]
        rows.sort(key=lambda r: entries.order(r[0]) if r[2] is None or not r[0].also else (1, r[0].also[-1][1], 0, 0))
        facts = tuple(_fact(one, row, conflict, source) for one, conflict, source in rows)
        items = {(o.about, o.denies, o.start, o.end): o for one, _ in done[place] for o in one.opens}
        opens = tuple(OpenItem(row.text[o.start : o.end], o.about, o.denies, o.start, o.end) for o in items.values())
        withdrawn = tuple(Earlier(b.value, row.text[b.start : b.end], b.start, b.end, name=b.name) for b in draft.withdrawn)
        same = None
        if draft.same_as is not None:
            copy, names = draft.same_as
            same = SameAs(copy.mark, copy.run, copy.names, names, row.text[copy.start : copy.end], copy.start, copy.end)
        entries_made.append(Entry(where[place], facts, opens, withdrawn, draft.amends, same))
    return tuple(entries_made)


def _worth(row: Row, own, opens, draft) -> bool:
    """An entry that says nothing but where and on which run ("all good on run two") is none."""
    names = {one.name for one, *_ in own}
    barred = any(one.name == "place" and any(item.value == WHOLE for item in row.items[one.first : one.last]) for one, *_ in own)  # "la que va bajo tierra es la 78"
    if draft.pointed and draft.kind is None and not barred:  # "nos vemos el quince"
        names -= {"mark"}
    if draft.mark is None and draft.kind is None and any(one.name == "stage" and one.value == "made" for one, *_ in own):
        names = names - {"stage"}
    if draft.mark is None and draft.kind is None and all(one.about == "other" for one in opens):
        opens = ()  # "just waiting on the lift"
    if draft.mark is None and draft.kind is None and own and all(one.value is False and in_any("acts.short_of").search(row.words(one.first, one.last).lower()) for one, *_ in own):
        names, opens = set(), ()  # "we're out of staples, somebody bring up a box": no piece was told of
    return bool(opens or draft.same_as or draft.withdrawn or names - {"run", "place", "service"})


def _only_goes_on(row: Row, draft, own) -> bool:
    """ "Moving on to the cap": what he turns to next; nothing is said of it yet."""
    if draft.mark is not None or [one.name for one, *_ in own if one.name not in ("run", "place", "service")] != ["kind"]:
        return False
    said = row.text[max(0, draft.kind.start - 24) : draft.kind.start].lower()
    return draft.another and any(words in said for words in ("moving on", "on to", "onto", "next", "sigue", "siguiente", "sigo", "seguimos"))


def _fact(one: Claim, row: Row, conflict: bool, source: int | None = None) -> Fact:
    return Fact(
        name=one.name,
        value=one.value,
        words=row.text[one.start : one.end],
        start=one.start,
        end=one.end,
        hedged=one.hedged and one.name not in UNHEDGED,
        via=one.via,
        said_unit=one.said_unit,
        also=tuple(Span(row.text[start:end], start, end) for start, end in one.also),
        withdrawn=tuple(Earlier(b.value, row.text[b.start : b.end], b.start, b.end) for b in one.took_back),
        conflict=conflict,
        from_fitting=source,
        read_as=one.read_as,
        for_run=one.for_run,
    )
