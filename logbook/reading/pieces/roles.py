"""What a claim is of, once the fitting is known: which opening a size, a turn or a temperature, air or a leak test, a seam."""

from __future__ import annotations

import re
from dataclasses import replace

from logbook.reading.clauses.claims import Claim
from logbook.reading.pieces.drafts import Draft, claim_plain
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.items import concept_at
from logbook.reading.words.phrasing import words_of

_LET_IN = ("access_door", "register")  # an opening in a larger side
BRANCHED = ("tee", "branch", "wye")
_CLOSED = ("straight", "transition", "offset", "elbow", "tee", "branch", "wye", "end_cap", "plenum", "collar", "equipment_connection", "damper_sleeve", "access_door", "repair")


def roles(claims: list[Claim], kind: Claim | None, draft: Draft) -> list[Claim]:
    """Which opening each size is of."""
    value = kind.value if kind else None
    have: dict[str, Claim] = {}
    done: list[Claim] = []
    last_role = None
    trunk_later = value in BRANCHED and any(one.name == "(inlet_size)" for one in claims)
    trunk = value == "branch" and any(c.name == "(trunk_size)" for c in claims) and sum(c.name in ("(size)", "(trunk_size)", "(branch_size)", "(branch_named)") for c in claims) > 1
    trunk = trunk or value == "branch" and any(c.name == "(same_trunk)" for c in claims)
    hosted = value in BRANCHED and any(c.name == "(host_size)" for c in claims) and not any(c.name == "(branch_size)" for c in claims)
    claims = [replace(c, name="(trunk_size)") if c.name == "(host_size)" else c for c in claims]
    trunk = trunk or hosted
    branch_said = any(c.name == "(branch_size)" for c in claims)
    for one in claims:
        if not one.name.startswith("(") or not one.name.strip("()").endswith(("size", "named")):
            done.append(one)
            continue
        role = one.name.strip("()")
        if role == "trunk_size":
            role = "inlet_size" if trunk else "size"
        elif trunk and role in ("size", "branch_named"):
            role = "branch_size"  # "eight by eight out of the side of the sixteen by ten"
        if role == "branch_named":
            role = "branch_size" if "inlet_size" in have else "size"
        if one.corrects and last_role is not None and role in ("size", "to_size"):
            role = last_role
        elif role == "to_size":
            role = "outlet_size" if "inlet_size" in have and (value not in BRANCHED or value == "tee" and branch_said) else ("branch_size" if value in BRANCHED and "inlet_size" in have else "inlet_size")
        elif role == "size":
            if "inlet_size" not in have and trunk_later and "branch_size" not in have:
                role = "branch_size"  # "un take-off de ocho por ocho sobre el troncal de veinte por diez"
            elif "inlet_size" not in have:
                role = "inlet_size"
            elif value in BRANCHED:
                role = "branch_size"
            elif value in ("transition", "offset") and "outlet_size" not in have:
                role = "outlet_size"
            else:
                role = "inlet_size"
        if value in _LET_IN and role == "inlet_size" and role in have and not one.corrects:  # "access door 12 by 12, in the 20 by 14"
            if min(one.value) * max(one.value) >= min(have[role].value) * max(have[role].value):
                continue
            done.remove(have.pop(role))
        made = replace(one, name=role)
        if role in have and not one.corrects and have[role].value == one.value:
            continue
        have[role] = made
        last_role = role
        done.append(made)
    inlet, outlet = have.get("inlet_size"), have.get("outlet_size")
    if value in ("tee", "branch") and inlet and outlet and "branch_size" not in have:  # "el tronco de veinte por doce, la salida de diez por diez"
        return [replace(one, name="branch_size") if one is outlet else one for one in done]
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


def leak(claims: list[Claim], draft: Draft) -> list[Claim]:
    if not draft.leak:
        return [c for c in claims if c.name != "(leak_area)"]
    names = {"static_pressure": "leak_pressure", "airflow": "leak_flow", "(leak_area)": "leak_area"}
    return [replace(c, name=names.get(c.name, c.name)) for c in claims]


def angles(row: Row, claims: list[Claim], draft: Draft) -> list[Claim]:
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
        turn = any(row.items[k].concept in ("K_ELBOW", "K_WYE") for k in (at - 1, at + 1) if 0 <= k < len(row.items)) or row.words(at, at + 1).lower().endswith("degree") and not (_of_weather(row, at) or _of_a_place(row, at) or _warm(row, at))  # "seventy-five degree elbow"
        temperature = degrees and not turn and (one.value not in (90, 45, 30, 60, 22) or _warm(row, at) or _of_a_place(row, at) or _taped_at(row, at))
        if kind is None and turn and concept_at(row.items, at + 1) in _OF_AN_ELBOW:  # "ninety degree square throat on number 43"
            draft.kind = claim_plain(row, "kind", "elbow", at, at + 1)
            kind = "elbow"
        if not degrees and not turn and one.value != 90 and [item.concept for item in row.items[max(0, at - 2) : at]] == ["TEMP", "COMMA"]:
            done.append(replace(one, name="surface_temperature"))  # "cold in here, forty-five"
            continue
        if kind in ("elbow", "wye") and not temperature:
            if not seen or one.corrects:
                done.append(replace(one, name="turn_angle"))
                seen = True
        elif degrees and (kind != "offset" or temperature and concept_at(row.items, at - 1) in ("BE", "HEDGE")) and (temperature or kind is not None or one.value > 30):
            if kind in ("elbow", "wye") and not temperature:
                continue
            done.append(replace(one, name="surface_temperature"))
        elif kind is None and not degrees and one.value in (90, 45) and _names_elbow(row, at):
            draft.kind = claim_plain(row, "kind", "elbow", at, at + 1)
            kind = "elbow"
            done.append(replace(one, name="turn_angle"))
            seen = True
    return done


_OF_AN_ELBOW = ("THROAT", "SQUARE", "VANES", "TURNING")
_WARMED = ("PREHEATED", "HEAT_IT")
_TAPED = ("TAPE", "TAPED", "CLOSURE", "MARK181")
_BETWEEN = ("ON", "DET", "NUM", "MARKED", "NUMBER", "FITTING", "RUN", "LETTER", "IT", "COMMA", "SIZE", "THIS", "OF", "DASH")


def _of_weather(row: Row, at: int) -> bool:
    """ "On a forty-five degree morning", "in a forty degree shop" """
    behind = row.text[row.items[at].end : row.items[at].end + 24].lower().replace(",", " ").replace(".", " ").split()
    return bool(behind) and behind[0] in words_of("told.wanted.so_warm")


def _of_a_place(row: Row, at: int) -> bool:
    """ "Thirty five degree in building", "forty degrees in the shop": how warm it was there."""
    behind = row.text[row.items[at].end : row.items[at].end + 32].lower().replace(",", " , ").replace(".", " , ").split()
    if not behind or behind[0] not in words_of("told.wanted.there_warm"):
        return False
    if behind[0] not in words_of("told.wanted.in_a_place"):
        return True
    return any(word in words_of("told.wanted.so_warm") or word in words_of("told.wanted.there_warm") for word in behind[1:3])


def _taped_at(row: Row, at: int) -> bool:
    """ "Put the pressure tape on elbow 31 at 45 degrees", "… without warming it": how warm it was, and no turn."""
    if any(concept_at(row.items, k) in _WARMED for k in range(at + 1, at + 4)):
        return True
    if concept_at(row.items, at - 1) != "ON" or row.words(at - 1, at).lower() not in ("at", "a"):
        return False
    back = at - 2
    while back >= 0 and (row.items[back].concept in _BETWEEN or row.items[back].concept.startswith("K_")):
        back -= 1
    return back >= 0 and row.items[back].concept in _TAPED


def _warm(row: Row, at: int) -> bool:
    first, last = at, at + 1
    while first > max(0, at - 4) and row.items[first - 1].concept not in ("STOP", "QUERY"):
        first -= 1
    while last < min(len(row.items), at + 4) and row.items[last].concept not in ("STOP", "QUERY"):
        last += 1
    if last <= at + 1 or row.items[at + 1].concept in ("OUT", "OUTSIDE"):
        return at + 1 < len(row.items) and row.items[at + 1].concept in ("OUT", "OUTSIDE") or any(item.concept == "TEMP" for item in row.items[first:last])  # "con cuarenta y cinco grados afuera"
    return any(item.concept == "TEMP" for item in row.items[first:last])


def _names_elbow(row: Row, at: int) -> bool:
    before = [row.items[k].concept for k in range(max(0, at - 2), at)]
    if not before or before[-1] in ("STOP", "QUERY"):
        return True
    if before[-1] == "THIS":  # "that ninety over by the door"
        return True
    return any(c in ("DET", "THROAT", "PIECE_COUNT", "FITTING", "SIZE", "COMMA", "BE", "ANOTHER") for c in before)


def weak(claims: list[Claim], draft: Draft) -> list[Claim]:
    strong = {c.name for c in claims if not c.weak and c.part != "undone"}
    kind = draft.kind.value if draft.kind else None
    kept, seen = [], set()
    for one in claims:
        if one.weak and (one.name in strong or one.name in seen or (kind is not None and kind not in _CLOSED)):
            continue
        if one.weak:
            seen.add(one.name)
        kept.append(one)
    return kept


_ROUND = re.compile(r"^(?!.*\b(?:sq|square)\b).*(?:\b(?:round|rad|radius(?:ed)?|curved|swept|smooth)[- ](?:throat|elbow|ell|heel|ninety|turn|bend)\b)", re.DOTALL)


def of_a_round_turn(row: Row, claims: list[Claim], kind: Claim) -> list[Claim]:
    """ "A round-throat elbow, no vanes": such a turn takes none, and none are missing."""
    if not any(one.name == "vanes" and one.value is False for one in claims):
        return claims
    first, last = row.sentence_start(kind.first), row.sentence_end(kind.first)
    if _ROUND.search(row.words(first, last).lower()) is None:
        return claims
    return [one for one in claims if one.name != "vanes" or one.value is not False]
