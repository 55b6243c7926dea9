"""Claims to entries: whose each claim is, what was corrected, carried over, contradicted; then facts in order."""

from __future__ import annotations

from bisect import bisect_right
from collections import Counter
from dataclasses import dataclass, field, replace
from fractions import Fraction

from logbook.facts import ORDER, Move
from logbook.reading.claims import Claim, Open, TakenBack, claim
from logbook.reading.grammar import Row
from logbook.reading.headings import Mention

BRANCHED = ("tee", "branch", "wye")
_CLOSED = ("straight", "transition", "offset", "elbow", "tee", "branch", "wye", "end_cap", "plenum", "collar", "repair")


@dataclass
class Draft:
    """An entry while it is put together."""

    begin: int  # first item that is its own
    kind: Claim | None = None
    mark: Claim | None = None
    claims: list[Claim] = field(default_factory=list)
    amends: bool = False
    another: bool = False
    same_as: tuple | None = None
    withdrawn: list[TakenBack] = field(default_factory=list)
    carried: list[tuple[Claim, int]] = field(default_factory=list)  # claim, position it came from
    leak: bool = False


Regions = list[tuple[int, int]]  # from this item on the words are of this draft


def drafts(row: Row, found: list[Mention]) -> tuple[list[Draft], Regions]:
    """The entries of a text, from the places where fittings are named, and which words are whose."""
    made, regions = [Draft(0)], [(0, 0)]

    def begin(item: int) -> Draft:
        made.append(Draft(item))
        regions.append((item, len(made) - 1))
        return made[-1]

    for mention in found:
        now = made[regions[-1][1]]
        if mention.batch:
            if now.kind or now.mark:
                begin(mention.first)
            kind = _kind_claim(row, mention)
            first = True
            for mark, (start, end) in mention.batch:
                if not first:
                    begin(made[-1].begin)
                first = False
                made[-1].kind = kind
                made[-1].mark = claim(row, "mark", mark, start, end)
            continue
        kind, mark = _kind_claim(row, mention), _mark_claim(row, mention)
        if _is_new(now, mention, row):
            again = next((k for k, draft in enumerate(made) if mark is not None and draft.mark is not None and draft.mark.value == mark.value), None)
            if again is not None and (kind is None or made[again].kind is None or made[again].kind.value == kind.value):
                regions.append((mention.first, again))  # spoken of again
                continue
            now = begin(mention.first)
        now.amends = now.amends or mention.amends
        now.another = now.another or mention.another
        if kind is not None:
            if now.kind is None:
                for mate in made:
                    if mate is now or mate.begin == now.begin and mate.kind is None:  # a batch is of one kind
                        mate.kind = kind
            elif mention.corrects and now.kind.value != kind.value:
                now.kind = replace(kind, took_back=(TakenBack(now.kind.value, now.kind.start, now.kind.end),))
        if mark is not None:
            if now.mark is None:
                now.mark = mark
            elif mention.corrects and now.mark.value != mark.value:
                now.mark = replace(mark, took_back=(TakenBack(now.mark.value, now.mark.start, now.mark.end),))
    return made, regions


def region_of(regions: Regions, item: int) -> int:
    return max(0, bisect_right(regions, (item, len(regions) + 1)) - 1)


def _is_new(now: Draft, mention: Mention, row: Row) -> bool:
    if mention.mark is not None and now.mark is not None and mention.mark != now.mark.value:
        return not mention.corrects
    if mention.corrects and mention.kind is not None and now.kind is not None:
        return False
    if mention.mark is not None and now.mark is None and now.kind is not None and mention.kind is not None:
        return mention.kind != now.kind.value and not _apposed(row, now, mention)
    if mention.mark is None and mention.kind is not None and now.kind is not None:
        if mention.another:
            return True
        if mention.kind == now.kind.value:
            return False
        return _starts_sentence(row, mention) and mention.kind not in ("branch", "hanger", "repair", "collar", "register")
    if mention.another and (now.kind is not None and now.mark is not None) and mention.mark != now.mark.value:
        return True
    return False


def _apposed(row: Row, now: Draft, mention: Mention) -> bool:
    """ "straight collar", "pants wye": two kinds side by side are one thing; the later names it."""
    return now.kind.last >= mention.first - 1


def _starts_sentence(row: Row, mention: Mention) -> bool:
    before = [item.concept for item in row.items[max(0, mention.first - 2) : mention.first]]
    lead = [item.concept for item in row.items[mention.first : mention.kind_at[0]]] if mention.kind_at else []
    stopped = not before or before[-1] in ("STOP", "QUERY") or (before[-1] == "FILLER" and before[0] in ("STOP", "QUERY"))
    return stopped or (lead[:1] == ["FILLER"] and before[-1:] == ["STOP"])


def _kind_claim(row: Row, mention: Mention) -> Claim | None:
    if mention.kind is None:
        return None
    return claim_plain(row, "kind", mention.kind, *mention.kind_at)


def _mark_claim(row: Row, mention: Mention) -> Claim | None:
    if mention.mark is None:
        return None
    made = claim_plain(row, "mark", mention.mark, *mention.mark_at)
    backs = tuple(TakenBack(str(int(b.value.value)), b.start, b.end) for b in row.items[mention.mark_at[1] - 1].took_back if b.concept == "NUM")
    return replace(made, took_back=backs)


def claim_plain(row: Row, name: str, value, first: int, last: int) -> Claim:
    """A claim that takes no hedge in front of it and is never doubted by one."""
    return replace(claim(row, name, value, first, last), hedged=False, first=first, start=row.items[first].start)


def share_out(made: list[Draft], regions: Regions, claims: list[Claim]) -> None:
    """Every claim to the entry whose stretch of words it stands in; "both of them" to all so far."""
    batches = Counter(begin for begin, _ in regions)
    for one in sorted(claims, key=lambda c: (c.first, c.last)):
        at = region_of(regions, one.last - 1 if one.pending else one.first)  # "still need to tape 22" names its own
        begin, holder = regions[at]
        if one.both_at >= begin:
            mates = sorted({index for _, index in regions[: at + 1]})
        elif batches[begin] > 1:
            mates = [index for other, index in regions[max(0, at - batches[begin]) : at + 1] if other == begin]
        else:
            mates = [holder]
        for place in mates:
            made[place].claims.append(one)


def settle(row: Row, draft: Draft, text: str) -> list[Claim]:
    """The facts of one entry as claims: roles of sizes, angles and mending settled, corrections done."""
    claims = [c for c in draft.claims if c.name != "(nothing)"]
    kind = draft.kind
    claims = _roles(claims, kind, draft)
    kind = draft.kind
    claims = _leak(claims, draft)
    claims = _angles(row, claims, draft)
    kind = draft.kind
    value = kind.value if kind else None
    claims = [c for c in claims if not c.kinds or value is None or value in c.kinds]
    claims = _mended(row, claims, draft)
    claims = _weak(claims, draft)
    claims = _moves(claims)
    head = [c for c in (draft.kind, draft.mark) if c is not None]
    return _last_word(row, head + claims, draft)


def _roles(claims: list[Claim], kind: Claim | None, draft: Draft) -> list[Claim]:
    """Which opening each size is of."""
    value = kind.value if kind else None
    have: dict[str, Claim] = {}
    done: list[Claim] = []
    last_role = None
    for one in claims:
        if not one.name.startswith("(") or not one.name.strip("()").endswith(("size", "named")):
            done.append(one)
            continue
        role = one.name.strip("()")
        if role == "branch_named":
            role = "branch_size" if "inlet_size" in have else "size"
        if one.corrects and last_role is not None and role in ("size", "to_size"):
            role = last_role
        elif role == "to_size":
            role = "outlet_size" if "inlet_size" in have and value not in BRANCHED else ("branch_size" if value in BRANCHED and "inlet_size" in have else "inlet_size")
        elif role == "size":
            if "inlet_size" not in have:
                role = "inlet_size"
            elif value in BRANCHED:
                role = "branch_size"
            elif value in ("transition", "offset") and "outlet_size" not in have:
                role = "outlet_size"
            else:
                role = "inlet_size"
        made = replace(one, name=role)
        if role in have and not one.corrects and have[role].value == one.value:
            continue
        have[role] = made
        last_role = role
        done.append(made)
    inlet, outlet = have.get("inlet_size"), have.get("outlet_size")
    if inlet and outlet and not _same(inlet.value, outlet.value):
        if value is None:
            draft.kind = Claim("kind", "transition", inlet.first, outlet.last, inlet.start, outlet.end)
        elif value == "offset":
            draft.kind = replace(kind, value="transition")
    elif value is None and outlet is None and "branch_size" in have and inlet is not None:
        pass
    return done


def _same(one, other) -> bool:
    return one == other or one == other[::-1]


def _leak(claims: list[Claim], draft: Draft) -> list[Claim]:
    if not draft.leak:
        return [c for c in claims if c.name != "(leak_area)"]
    names = {"static_pressure": "leak_pressure", "airflow": "leak_flow", "(leak_area)": "leak_area"}
    return [replace(c, name=names.get(c.name, c.name)) for c in claims]


def _angles(row: Row, claims: list[Claim], draft: Draft) -> list[Claim]:
    kind = draft.kind.value if draft.kind else None
    spent = {at for c in claims if c.name != "(angle)" for at in c.uses}
    if draft.mark is not None:
        spent.update(range(draft.mark.first, draft.mark.last))
    done: list[Claim] = []
    seen = False
    for one in claims:
        if one.name != "(angle)":
            done.append(one)
            continue
        item = row.items[one.first if one.first == one.last - 1 else one.last - 1]
        at = one.last - 1
        if at in spent:
            continue
        degrees = item.concept == "DEG"
        temperature = degrees and (one.value not in (90, 45, 30, 60, 22) or _warm(row, at))
        if kind in ("elbow", "wye") and not temperature:
            if not seen or one.corrects:
                done.append(replace(one, name="turn_angle"))
                seen = True
        elif degrees and kind != "offset" and (temperature or kind is not None or one.value > 30):
            if kind in ("elbow", "wye") and not temperature:
                continue
            done.append(replace(one, name="surface_temperature"))
        elif kind is None and not degrees and one.value in (90, 45) and _names_elbow(row, at):
            draft.kind = claim_plain(row, "kind", "elbow", at, at + 1)
            kind = "elbow"
            done.append(replace(one, name="turn_angle"))
            seen = True
    return done


def _warm(row: Row, at: int) -> bool:
    near = [item.concept for item in row.items[max(0, at - 4) : at + 4]]
    return "TEMP" in near


def _names_elbow(row: Row, at: int) -> bool:
    before = [row.items[k].concept for k in range(max(0, at - 2), at)]
    if not before or before[-1] in ("STOP", "QUERY"):
        return True
    return any(c in ("DET", "PIECE_COUNT", "FITTING", "SIZE", "COMMA", "BE", "ANOTHER") for c in before)


def _mended(row: Row, claims: list[Claim], draft: Draft) -> list[Claim]:
    """Tape and mastic on a mend are how it was mended, not how the piece was closed."""
    damage = [c for c in claims if c.name == "facing_damage" and c.value != "none"]
    repaired = [c for c in claims if c.name == "damage_repaired"]
    methods = [c for c in claims if c.name == "(method)"]
    is_repair = draft.kind is not None and draft.kind.value == "repair"
    rest = [c for c in claims if c.name not in ("(method)", "damage_repaired", "damage_width")]
    widths = [c for c in claims if c.name == "damage_width"]
    if not damage and not is_repair:
        if repaired and any(c.value is False for c in repaired):
            return rest + [c for c in repaired if c.value is False]
        if not (repaired and any(c.name in ("(method)",) for c in methods)):
            return rest
    anchor = repaired[0] if repaired else (methods[0] if methods else (damage[0] if damage else None))
    extra: list[Claim] = list(repaired[:1])
    method = None
    for one in sorted((c for c in rest if c.name in ("taped", "closure") and c.value is not False), key=lambda c: c.first):
        near = anchor is not None and -2 <= one.first - anchor.first <= 9 and (repaired or is_repair or methods)
        if near and (repaired or is_repair):
            way = "mastic" if one.value == "mastic" else "tape"
            if method is None or way == "mastic":
                method = replace(one, name="repair_method", value=way, weak=False)
            if not is_repair and one.name in ("taped", "closure"):
                rest.remove(one)
            elif is_repair and one.name == "closure" and way == "mastic":
                rest.remove(one)
    said = row.text[repaired[0].start : repaired[0].end].lower() if repaired else ""
    if method is None and ("tap" in said.split("patch")[0] and ("tape" in said or "cinta" in said)):
        method = replace(repaired[0], name="repair_method", value="tape")
    for one in methods:
        if one.value in ("plug", "replaced") or method is None and (repaired or is_repair):
            method = replace(one, name="repair_method")
            if not extra and one.value in ("plug", "replaced"):
                extra.append(replace(one, name="damage_repaired", value=True))
            break
    if method is not None:
        extra.append(method)
        if is_repair and not any(c.name == "damage_repaired" for c in extra) and damage:
            pass
    others = [c for c in rest if c.name not in ("facing_damage",)]
    if draft.kind is None and damage and (extra) and not [c for c in others if c.name not in ("run", "place", "mark", "closure_mark", "service")]:
        first = extra[0]
        draft.kind = Claim("kind", "repair", first.first, first.last, first.start, first.end)
    return rest + extra + (widths if damage or is_repair else [])


def _weak(claims: list[Claim], draft: Draft) -> list[Claim]:
    strong = {c.name for c in claims if not c.weak}
    kind = draft.kind.value if draft.kind else None
    kept, seen = [], set()
    for one in claims:
        if one.weak and (one.name in strong or one.name in seen or (kind is not None and kind not in _CLOSED)):
            continue
        if one.weak:
            seen.add(one.name)
        kept.append(one)
    return kept


def _moves(claims: list[Claim]) -> list[Claim]:
    """All moves of an entry as one claim, side by side; a set-back said alone fills the moves that lack one."""
    moved = [c for c in claims if c.name == "side_moves"]
    if not moved:
        return claims
    moves: list[Move] = []
    base = moved[0]
    also: list[tuple[int, int]] = list(base.also)
    backs: list[TakenBack] = []
    for one in moved:
        joined = list(one.value)
        backs.extend(one.took_back)
        if one is not base:
            also.append((one.start, one.end))
        if len(joined) == 1 and joined[0].side is None and joined[0].by is None:
            back = joined[0].back
            lacking = [i for i, m in enumerate(moves) if m.back is None]
            if one.corrects and moves:
                backs.append(TakenBack((moves[-1],), base.start if len(moves) == 1 else one.start, base.end if len(moves) == 1 else one.end))
                moves[-1] = replace(moves[-1], back=back)
                if backs[-1].start == one.start:
                    backs.pop()
            elif lacking:
                for i in lacking:
                    moves[i] = replace(moves[i], back=back)
            elif not moves:
                moves.append(joined[0])
            continue
        for move in joined:
            same = [i for i, m in enumerate(moves) if m.side == move.side]
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
    merged = replace(base, value=tuple(moves), also=tuple(also), took_back=tuple(backs), hedged=any(c.hedged for c in moved),
                     said_unit=next((c.said_unit for c in moved if c.said_unit), None), read_as=next((c.read_as for c in moved if c.read_as), None))  # fmt: skip
    done, put = [], False
    for one in claims:
        if one.name != "side_moves":
            done.append(one)
        elif not put:
            done.append(merged)
            put = True
    return done


def _last_word(row: Row, claims: list[Claim], draft: Draft) -> list[tuple]:
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
        elif one.corrects or one.name == "place":
            kept[before] = replace(one, took_back=(*old.took_back, TakenBack(old.value, old.start, old.end), *one.took_back))
        elif one.name == "closure" and "mastic" in (old.value, one.value):
            kept.append(one)
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
            kept[before] = one if one.value == "hung" else old
        else:
            kept.append(one)
            conflicts.update((id(old), id(one)))
    for flip in flips:  # "vanes in, no wait, they're not"
        at = next((i for i in range(len(kept) - 1, -1, -1) if kept[i].value is True and kept[i].last <= flip.first), None)
        if at is not None:
            old = kept[at]
            kept[at] = replace(flip, name=old.name, value=False, took_back=(TakenBack(True, old.start, old.end),))
    for scratch in scratched:
        gone = [c for c in kept if c.name in scratch.value and c.last <= scratch.first] if scratch.value else [c for c in kept if c.last <= scratch.first][-1:]
        for one in gone[-1:] if not scratch.value else gone:
            kept.remove(one)
            draft.withdrawn.append(TakenBack(one.value, one.start, one.end, one.name))
    return [(one, id(one) in conflicts) for one in kept] + [(one, False) for one in opens]


def carry(made: list[Draft], done: list[list[tuple]], row: Row) -> None:
    """A run holds on until another is said; "another one" carries the kind; "same size" and "same thing" copy."""
    latest: dict[str, tuple[Claim, int]] = {}
    for place, rows in enumerate(done):
        own = {one.name: one for one, _ in rows}
        carried = {one.name for one, _ in made[place].carried}
        if "run" not in own and "run" in latest and not made[place].amends:
            one, source = latest["run"]
            made[place].carried.append((replace(one, took_back=()), source))
        if "kind" not in own and "kind" not in carried and made[place].another and "kind" in latest:
            made[place].carried.append(latest["kind"])
        latest |= {name: (own[name], place) for name in ("run", "kind") if name in own}


def order(one: Claim) -> tuple:
    """Kind, mark and run first; then as the words end, the shorter words first."""
    anchor_end = one.end
    if one.name in ("kind", "mark", "run"):
        return (0, ORDER[one.name], 0, 0)
    return (1, anchor_end, -one.start, 0 if one.name == "closure_mark" else 1)


__all__ = ["Draft", "Open", "Fraction", "carry", "drafts", "order", "settle", "share_out"]
