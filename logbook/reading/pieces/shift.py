"""A start-of-shift note: materials and method for the day, and no fitting."""

from __future__ import annotations

from dataclasses import replace

from logbook.facts import BY_NAME
from logbook.reading.clauses.claims import Claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.mention import Mention

_EARLY = 14  # items: the words that open a shift stand early
_KEPT = ("run", "surface_temperature")


def is_shift(row: Row, mentions: list[Mention], claims: list[Claim]) -> bool:
    if any(m.mark is not None or m.batch for m in mentions) or any(m.kind not in (None, "hanger", "straight", "repair") for m in mentions):
        return False
    concepts = [item.concept for item in row.items[:_EARLY]]
    names = {c.name for c in claims}
    opened = "SHIFT" in concepts or "DAY" in concepts[:5]
    method = names & {"board_thickness", "tape_width", "staple_leg", "closure_mark", "staple_spacing", "surface_temperature", "run", "air_leaves_by", "board_class"}
    acts = {c.name for c in claims if not c.weak and not (c.name == "stapled" and row.items[c.first].concept == "STAPLES") and not _is_a_label(row, c)} & {"taped", "stapled", "rubbed_down", "inlet_size", "side_moves", "(size)", "vanes", "(to_size)", "stage"}
    if any(c.value is False and c.name in ("stapled", "taped", "rubbed_down", "vanes") and not (opened and len(method) > 3 and _to_come(row, c)) for c in claims):
        return False  # what is not done is not done on a piece
    if method == {"run"} and any(item.concept in ("WILL", "PENDING") for item in row.items):
        return False  # "Monday we'll hang run four": a plan
    if opened:
        return bool(method) and not acts & {"(size)", "side_moves", "vanes", "taped", "(to_size)", "rubbed_down"}
    return len(method) >= 3 and not acts and bool(names & {"board_thickness"})


def _is_a_label(row: Row, one: Claim) -> bool:
    """ "Tape, 181A-P, three inch": what the day's tape is, as a form asks for it; nothing is taped yet."""
    return one.name == "taped" and [item.concept for item in row.items[one.last : one.last + 2]] in (["COMMA", "MARK181"], ["COMMA", "CLOSURE"], ["SIGN", "MARK181"], ["SIGN", "CLOSURE"])


def _to_come(row: Row, one: Claim) -> bool:
    """ "… and I'll be stapling every two": how the day's work is done, told before any of it."""
    return any(item.concept == "WILL" for item in row.items[one.first : one.last])


def shift_claims(row: Row, claims: list[Claim]) -> list[Claim]:
    """The claims a shift note may make, runs said for one run marked so."""
    kept: list[Claim] = []
    first_run: Claim | None = None
    run_now: Claim | None = None
    for one in sorted(claims, key=lambda c: (c.first, c.last)):
        if one.name == "(angle)" and row.items[one.last - 1].concept == "DEG":
            one = replace(one, name="surface_temperature")
        if one.name == "run":
            run_now = one
            if first_run is None:
                first_run = one
                kept.append(one)
            continue
        if one.name not in BY_NAME or one.weak or not (BY_NAME[one.name].may_stand or one.name in _KEPT):
            continue
        same = run_now is not None and not any(item.concept in ("STOP", "QUERY") for item in row.items[run_now.last : one.first])
        if one.name == "service" and run_now is not None:
            one = replace(one, for_run=run_now.value)
        elif same and run_now is not first_run:
            one = replace(one, for_run=run_now.value)
        if not any(k.name == one.name and k.value == one.value and k.for_run == one.for_run for k in kept):
            kept.append(one)
    return kept
