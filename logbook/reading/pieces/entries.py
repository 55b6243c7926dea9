"""The facts of one entry: moves put together, the last word found, contradictions kept, what holds on carried over."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.facts import BY_NAME, ORDER, Move
from logbook.languages.language import Language
from logbook.reading.pieces import mends, roles
from logbook.reading.undone import partly
from logbook.reading.clauses.claims import Claim, TakenBack
from logbook.reading.pieces.drafts import Draft, Regions, region_of
from logbook.reading.pieces.found_out import found_out
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of


def settle(row: Row, draft: Draft, text: str, language: Language) -> list[Claim]:
    """The facts of one entry as claims: roles of sizes, angles and mending settled, corrections done."""
    claims = [c for c in draft.claims if c.name != "(nothing)"]
    kind = draft.kind
    said = kind.value if kind else None
    claims = roles.roles(claims, kind, draft)
    kind = draft.kind
    claims = roles.leak(claims, draft)
    claims = roles.angles(row, claims, draft)
    kind = draft.kind
    value = kind.value if kind else None
    claims = claims if value == "collar" else _without_bent(row, claims)
    claims = [c for c in claims if not c.kinds or value is None or value in c.kinds or said in c.kinds]  # an offset that changes size is a transition, and shifts still
    if any(c.name == "collar_diameter" and c.weak for c in claims):
        of_others = {at for c in claims if c.name != "collar_diameter" for at in c.uses}
        claims = [c for c in claims if c.name != "collar_diameter" or not c.weak or c.first not in of_others]  # "cross tabs … distance between them, fourteen inches": no width of a collar
    claims = _by_their_spacing(claims, draft) if value in _STAPLED_KINDS else claims
    claims = _of_a_collar(claims) if value == "collar" else claims
    claims = roles.of_a_round_turn(row, claims, kind) if value == "elbow" else claims
    if kind is None and draft.mark is None:
        claims += _of_hangers(claims)
    claims = mends.mended(row, claims, draft)
    claims = partly.reconciled(roles.weak(claims, draft))
    claims = _moves(_shifts(claims, value))
    head = [c for c in (draft.kind, draft.mark) if c is not None]
    return _last_word(row, head + claims, draft, language)


_STAPLED_KINDS = ("straight", "transition", "offset", "elbow", "tee", "branch", "wye", "end_cap", "plenum")


def _by_their_spacing(claims: list[Claim], draft: Draft) -> list[Claim]:
    """ "Three-eighths staples, spaced two": staples so far apart are in it."""
    spaced = next((c for c in claims if c.name == "staple_spacing"), None)
    described = any(c.name in ("staple_leg", "staple_clinch") for c in claims)
    if spaced is None or not described or draft.amends or any(c.name in ("stapled", "sides_stapled") for c in claims):
        return claims
    return [*claims, replace(spaced, name="stapled", value=True, weak=True, took_back=(), said_unit=None, hedged=False)]


def _of_a_collar(claims: list[Claim]) -> list[Claim]:
    """The tabs of a collar are its own metal ones, that are bent: it has no tabs of tape."""
    done: list[Claim] = []
    for one in claims:
        if one.name == "cross_tabs" and (one.value is False or one.weak):
            opens = tuple(replace(item, denies="tabs_bent") if item.denies == "cross_tabs" else item for item in one.opens)
            one = replace(one, name="tabs_bent", opens=opens, weak=False)
        if one.name not in ("cross_tabs", "cross_tab_length", "cross_tab_spacing"):
            done.append(one)
    return done


def _without_bent(row: Row, claims: list[Claim]) -> list[Claim]:
    """ "The collar tabs of the takeoff stick straight out": tabs that are bent or not are those of metal, and hold no joint."""
    bent = [c for c in claims if c.name == "tabs_bent" and c.kinds]
    if not bent or "cross" in row.text.lower():
        return claims
    return [c for c in claims if not (c.name in ("cross_tabs", "cross_tab_length", "cross_tab_spacing") and any(c.first < one.last and c.last > one.first for one in bent))]


def _of_hangers(claims: list[Claim]) -> list[Claim]:
    """ "Run seven is hung at twelve foot centers": of no piece, so it tells of the hangers."""
    return [replace(one, name="kind", value="hanger", said_unit=None, took_back=()) for one in claims if one.name == "hanger_spacing"][:1]


def _shifts(claims: list[Claim], kind: str | None) -> list[Claim]:
    """On an offset "rises five inches in twenty-eight" is the shift and its length: no side of it moves alone."""
    if kind != "offset" or any(c.name == "offset_by" for c in claims):
        return claims
    done: list[Claim] = []
    for one in claims:
        lone = one.value[0] if one.name == "side_moves" and len(one.value) == 1 else None
        sideways = lone is not None and (lone.side is None or lone.side in ("left", "right") and lone.way is None)  # "jogs left six inches over three feet"
        if lone is None or not sideways or lone.by is None:
            done.append(one)
            continue
        done.append(replace(one, name="offset_by", value=lone.by, took_back=()))
        if lone.back is not None and not any(c.name == "length" for c in claims):
            done.append(replace(one, name="length", value=lone.back, took_back=()))
    return done


_FEWEST = 6  # inches; less is no length that a side moves over


def _moves(claims: list[Claim]) -> list[Claim]:
    """All moves of an entry as one claim, side by side; a set-back said alone fills the moves that lack one."""
    moved = [c for c in claims if c.name == "side_moves"]
    if not moved:
        return claims
    dropped: list[TakenBack] = []
    for level in (c for c in claims if c.name == "level_sides" and c.corrects):  # "right in two, left in two, no, right's flat and left in four"
        over = [c for c in moved if c.first < level.first and len(c.value) == 1 and c.value[0].side in level.value]
        dropped += [TakenBack(c.value, c.start, c.end) for c in over]
        moved = [replace(c, corrects=True) if c.first > level.first else c for c in moved if c not in over]
    if not moved:
        return [c for c in claims if c.name != "side_moves"]
    moves: list[Move] = []
    said_by: list[int] = []  # which claim each move came from
    unsure = False
    base = moved[0]
    also: list[tuple[int, int]] = list(base.also)
    backs: list[TakenBack] = dropped
    for place, one in enumerate(moved):
        said_by += [place - 1] * (len(moves) - len(said_by))
        joined = list(one.value)
        backs.extend(one.took_back)
        if one is not base:
            also.append((one.start, one.end))
        if len(joined) == 1 and joined[0].side is None and joined[0].by is None:
            back = joined[0].back
            lacking = [i for i, m in enumerate(moves) if m.back is None]
            if one.fills and lacking:  # "…, los dos en dieciocho"
                moves = [replace(m, back=back) if m.back is None else m for m in moves]
                continue
            if one.corrects and moves:
                backs.append(TakenBack((moves[-1],), base.start if len(moves) == 1 else one.start, base.end if len(moves) == 1 else one.end))
                moves[-1] = replace(moves[-1], back=back)
                if backs[-1].start == one.start:
                    backs.pop()
            elif lacking and len({said_by[i] for i in lacking}) == 1:
                for i in lacking:
                    moves[i] = replace(moves[i], back=back)
            elif len(lacking) == len(moves) == 2 and _alike(*moves):
                moves = [replace(m, back=back) for m in moves]  # "left in three. Right in three. Back eighteen."
            elif lacking or not moves:  # of two moves that lack one it could be either: it fills neither
                moves.append(joined[0])
            elif back is not None and back >= _FEWEST and len(moves) == 1 and moves[0].back not in (back, None):
                moves[0] = replace(moves[0], back=None)  # "back twenty-four, it's back eighteen": which of them is not said
            continue
        for move in joined:
            same = [i for i, m in enumerate(moves) if m.side == move.side]
            if move.by is None and move.side is not None and not same and len(moves) == 1 and moves[0].side is None and moves[0].back is None and moves[0].by is not None:
                moves[0] = replace(moves[0], side=move.side, back=move.back)  # "in four. The set-back on the left's eighteen."
                continue
            if move.by is None and same and moves[same[0]].by is not None and not one.corrects:
                unsure = unsure or moves[same[0]].back not in (None, move.back)
                moves[same[0]] = replace(moves[same[0]], back=moves[same[0]].back or move.back)
                continue
            if same and move.side is not None:
                old = moves[same[0]]
                if one.corrects or old.by is None:
                    if old != move and old.by is not None:
                        backs.append(TakenBack((old,), base.start, base.end))
                    moves[same[0]] = Move(move.side, move.by if move.by is not None else old.by, move.back if move.back is not None else old.back, move.way or old.way)
                    continue
                if old.by == move.by and (old.back is None or move.back is None):
                    moves[same[0]] = replace(old, back=old.back or move.back)
                    continue
                if old == move:
                    continue
            if one.corrects and moves and len(joined) == 1 and moves[-1].back is None and moves[-1].by == move.by and _ACROSS.get(moves[-1].side) == move.side:
                backs.append(TakenBack((moves[-1],), base.start, base.end))
                moves[-1] = move  # "left in three, no …, right in three"
                continue
            if one.corrects and move.side is None and moves:
                old = moves[-1]
                moves[-1] = Move(old.side, move.by, move.back if move.back is not None else old.back, move.way or old.way)
                continue
            if moves and len(moves) == 1 and moves[0].side is None and moves[0].by is None:
                moves[0] = replace(move, back=move.back if move.back is not None else moves[0].back)
                continue
            moves.append(move)
    if any(c.fills for c in moved):
        back = next(m.back for c in moved if c.fills for m in c.value if m.back is not None)
        moves = [replace(m, back=back) if m.back is None else m for m in moves]
    if len(moves) == 2 and moves[0].back is None and _alike(*moves):
        moves[0] = replace(moves[0], back=moves[1].back)  # "left in three and right in three, back eighteen"
    merged = replace(base, value=tuple(moves), also=tuple(also), took_back=tuple(backs), hedged=unsure or any(c.hedged for c in moved),
                     said_unit=next((c.said_unit for c in moved if c.said_unit), None), read_as=next((c.read_as for c in moved if c.read_as), None))  # fmt: skip
    done, put = [], False
    for one in claims:
        if one.name != "side_moves":
            done.append(one)
        elif not put:
            done.append(merged)
            put = True
    return done


def _alike(one: Move, other: Move) -> bool:
    """Opposite sides that move as far and the same way: what is told once behind them is told of both."""
    return _ACROSS.get(one.side) == other.side and one.by is not None and (one.by, one.way) == (other.by, other.way)


_ACROSS = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}


def _last_word(row: Row, claims: list[Claim], draft: Draft, language: Language) -> list[tuple]:
    """Corrections and contradictions: the last word counts where a word of correction stands, else both stand."""
    kept: list[Claim] = []
    conflicts: set[int] = set()
    scratched = [c for c in claims if c.name == "(scratch)"]
    flips = [c for c in claims if c.name == "(flip)"]
    opens = [c for c in claims if c.name == "(open)"]
    for one in sorted((c for c in claims if not c.name.startswith("(")), key=lambda c: (c.first, c.last)):
        if one.for_run is not None:
            kept.append(one)
            continue
        before = next((i for i in range(len(kept) - 1, -1, -1) if kept[i].name == one.name and kept[i].for_run is None), None)
        if before is None:
            kept.append(one)
            continue
        old = kept[before]
        if one.name in ("shiplap_sides", "butt_sides", "level_sides", "joined_to") and not one.corrects:
            kept[before] = replace(old, value=tuple(dict.fromkeys(old.value + one.value)), also=(*old.also, (one.start, one.end)))
        elif old.value == one.value:
            opened = (*old.opens, *one.opens)
            kept[before] = replace(old, hedged=old.hedged and one.hedged, opens=opened)
        elif one.corrects or _redone(row, old, one) or one.name == "place" or (old.part == "undone" and one.value is True):
            kept[before] = replace(one, took_back=(*old.took_back, TakenBack(old.value, old.start, old.end), *one.took_back))
        elif one.name in _SPACED and _elsewhere(row, old, one):  # "every two on top and every three on the bottom": the wider one counts
            wide, other = (one, old) if one.value > old.value else (old, one)
            kept[before] = replace(wide, also=(*wide.also, (other.start, other.end)), hedged=wide.hedged or other.hedged)
        elif one.name in _SIZED and old.value is not None and _elsewhere(row, old, one):  # "half inch staples on three sides, finished with quarter inch": the smaller one counts
            small, other = (one, old) if one.value < old.value else (old, one)
            kept[before] = replace(small, also=(*small.also, (other.start, other.end)), hedged=small.hedged or other.hedged)
        elif one.name == "closure" and "other_tape" in (old.value, one.value) and _elsewhere(row, old, one):
            kept[before] = one if one.value == "other_tape" else old
        elif one.name == "closure" and "mastic" in (old.value, one.value):
            kept.append(one)
        elif found_out(row, old, one, language):
            kept[before] = replace(one, took_back=(*old.took_back, TakenBack(old.value, old.start, old.end), *one.took_back))
        elif one.pending or (old.pending and one.value is False):
            kept[before] = replace(one, opens=(*old.opens, *one.opens))
        elif old.pending:
            kept[before] = replace(old, opens=(*old.opens, *one.opens))
        elif one.name in ("facing_damage",) and "none" in (old.value, one.value):
            kept[before] = one if old.value == "none" else old
        elif one.name == "gap" and 0 in (old.value, one.value):
            kept[before] = one if old.value == 0 else old  # "tight, but a half-inch gap on top": the gap counts
        elif one.name in ("kind", "mark"):
            continue
        elif one.name == "stage":
            kept[before] = replace(one, took_back=(TakenBack(old.value, old.start, old.end),)) if one.corrects else one if one.value == "hung" else old
        else:
            kept.append(one)
            conflicts.update((id(old), id(one)))
    for flip in flips:  # "vanes in, no wait, they're not"
        at = next((i for i in range(len(kept) - 1, -1, -1) if kept[i].value is True and kept[i].last <= flip.first), None)
        if at is not None:
            old = kept[at]
            kept[at] = replace(flip, name=old.name, value=False, took_back=(TakenBack(True, old.start, old.end),))
    for scratch in scratched:
        gone = [c for c in kept if c.name in scratch.value and c.last <= scratch.first] if scratch.value else [c for c in kept if c.last <= scratch.first and c.name not in ("kind", "mark")][-1:]
        for one in gone[-1:] if not scratch.value else gone:
            kept.remove(one)
            draft.withdrawn.append(TakenBack(one.value, one.start, one.end, one.name))
    return [(one, id(one) in conflicts) for one in kept] + [(one, False) for one in opens]


_SPACED = ("staple_spacing", "cross_tab_spacing", "screw_spacing")
_SIZED = ("staple_leg", "tape_width", "cross_tab_length", "washer_size")
_OF_A_PART = ("SIDE", "OTHER_SIDE", "BACK", "SIDE_WORD", "END", "JOINT", "EXCEPT", "THROUGH")


def _elsewhere(row: Row, old: Claim, one: Claim) -> bool:
    """Whether two measures of one thing are of two parts of the piece."""
    near = row.items[old.last : min(len(row.items), one.last + 3)]
    said = {word for item in row.items[old.last : one.last] if item.concept not in ("NUM", "LEN", "FRAC") for word in row.text[item.start : item.end].lower().split()}  # the "half" of two and a half is none
    return any(item.concept in _OF_A_PART for item in near) or bool({"some", "few", "couple", "rest", "others", "half", "halfway", "most", "finished", "finish"} & said)


def _redone(row: Row, old: Claim, one: Claim) -> bool:
    """ "stapled at three, pulled those, did it again at two": what was done the second time counts."""
    between = row.items[old.last : one.first]
    undone = any(item.concept in ("UNDONE", "REDID") for item in between)
    said = set(row.text[row.items[old.last - 1].end : row.items[one.last - 1].end].lower().replace(",", " ").split())
    since = said & words_of("small.since") if old.value is False and one.value is True and not old.pending else ()
    return bool(undone or {"did", "again"} <= said or since or (one.value is False and "again" in said)) and one.name not in ("kind", "mark", "run")


def copy_over(made: list[Draft], regions: Regions, done: list[list[tuple]], copied) -> None:
    """ "Same as six", "same thing": the facts of the piece meant, to the piece that says so, or to all of its batch."""
    for said in copied:
        holder = regions[region_of(regions, said.first)][1]
        mates = [place for place, draft in enumerate(made) if draft.begin == made[holder].begin]
        source = min(mates) - 1
        if said.mark is not None:
            source = next((k for k, draft in enumerate(made) if k not in mates and draft.mark is not None and draft.mark.value == said.mark), None)
        for place in mates:
            own = {one.name for one, _ in done[place]}
            if source is None:
                names = tuple(dict.fromkeys(one.name for one, _ in done[place] if said.last <= one.first < said.until and said.excepts))
                made[place].same_as = (said, names)
            elif source >= 0:
                _copied(made, done, said, place, source, own)


def _copied(made: list[Draft], done: list[list[tuple]], said, place: int, source: int, own: set[str]) -> None:
    theirs = {one.name for one, _ in done[source]}
    if any(one.name == "kind" and one.value == "collar" for one, _ in done[source]):  # "A13 likewise, but the tabs aren't bent"
        done[place] = [(mine, clash) for one, clash in done[place] for mine in _of_a_collar([one])]
        own = {one.name for one, _ in done[place]}
    for one, first in [(one, source) for one, _ in done[source]] + [(one, first) for one, first in made[source].carried if one.name not in theirs]:
        wanted = said.names is None or one.name in said.names
        if wanted and one.name not in own and one.name in BY_NAME and one.name not in ("mark", "run", "stage", "joined_to"):
            made[place].carried.append((replace(one, also=(*one.also, (said.start, said.end)), opens=(), took_back=()), first))


def carry(made: list[Draft], done: list[list[tuple]], row: Row, language: Language) -> None:
    """A run holds on until another is said; "another one" carries the kind; "same size" and "same thing" copy."""
    latest: dict[str, tuple[Claim, int]] = {}
    for place, rows in enumerate(done):
        own = {one.name: one for one, _ in rows}
        carried = {one.name for one, _ in made[place].carried}
        if "run" not in own and "run" in latest and not made[place].amends:
            one, source = latest["run"]
            made[place].carried.append((replace(one, took_back=()), source))
        if "kind" not in own and "kind" not in carried and "kind" in latest and (made[place].another or _of_the_noun(row, own, *latest["kind"], place, language)):
            made[place].carried.append(latest["kind"])
        latest |= {name: (own[name], place) for name in ("run", "kind") if name in own}


def _of_the_noun(row: Row, own: dict[str, Claim], kind: Claim, source: int, place: int, language: Language) -> bool:
    """ "El recto 50, … Y el 51, veinte por diez, …": an article and a number alone, of a piece that is new here by its size, stand for the noun right before."""
    mark, text = own.get("mark"), row.text
    if mark is None or source != place - 1 or kind.start is None or "inlet_size" not in own or own["inlet_size"].start < mark.end or not {"outlet_size", "branch_size", "collar_diameter", "(angle)", "offset_by"}.isdisjoint(own):
        return False
    said, before = text[kind.start : kind.end].lower(), text[: mark.start].lower().split()[-1:]
    return any(before == [article] and re.search(noun, said) is not None for article, noun in language.forms.same_noun)


def order(one: Claim) -> tuple:
    """Kind, mark and run first; then as the words end, the shorter words first."""
    anchor_end = one.end
    if one.name in ("kind", "mark", "run"):
        return (0, ORDER[one.name], 0, 0)
    return (1, anchor_end, -one.start, 0 if one.name == "closure_mark" else 1)
