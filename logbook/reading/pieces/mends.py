"""How damage to the board was mended, and what of the tape and mastic of a note went into the mend.

"A tear in the facing, taped it" closes no joint: that tape is the mend's. What is said of the seams, the sides or the rest is the
piece's own. A note of mended damage and nothing else is of a repair; damage that is told as still open stays open.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from logbook.languages import LANGUAGES
from logbook.reading.clauses.claims import Claim
from logbook.reading.pieces.drafts import Draft, claim_plain
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.likely import Likely
from logbook.reading.words.phrasing import apart, words_of

_OF_BOARD = ("PANEL", "BOARD", "FACING", "SIDE", "JOINT", "FITTING", "END")


def _of_the_board(row: Row, one: Claim) -> bool:
    """ "Swapped the panel", where a gun, tape or tabs that were swapped are no damage."""
    first = one.first
    while first > 0 and row.items[first - 1].concept not in ("COMMA", "STOP", "QUERY"):
        first -= 1
    last = one.last
    while last < len(row.items) and row.items[last].concept not in ("COMMA", "STOP", "QUERY"):
        last += 1
    named = row.text[one.start : one.end].lower().removesuffix(" in").split()[-1] not in ("it", "them", "that", "the", "swapped", "replaced", "changed", "one")
    return named or any(item.concept in _OF_BOARD or item.concept.startswith("K_") for item in row.items[first:last])


def _how_it_stands(row: Row, repaired: list[Claim]) -> list[Claim]:
    """ "Patched one, the other's still open": what is told last, where that is that it is not mended."""
    last = max(repaired, key=lambda c: c.first, default=None)
    goes_on = last is not None and last.first > 0 and row.items[last.first - 1].concept == "AND" and last.last - last.first <= 2  # "taped over it and kept going"
    return [last] if last is not None and last.value is False and not goes_on else repaired[:1]


def _told_apart(row: Row, mend: Claim, one: Claim) -> bool:
    """ "Fixed it with mastic. Stapled, taped.": how the piece was closed is told behind how it was mended."""
    between = [item.concept for item in row.items[mend.last : one.first]]
    return "STOP" in between or "STAPLED" in between or "STAPLES" in between


def mended(row: Row, claims: list[Claim], draft: Draft) -> list[Claim]:
    """Tape and mastic on a mend are how it was mended, not how the piece was closed."""
    damage = [c for c in claims if c.name == "facing_damage" and c.value != "none"]
    claims = _tape_on_damage(row, claims, damage)
    if draft.kind is None or draft.kind.value != "repair":
        claims = _mastic_behind(row, claims, damage)
    claims = _taped_over(row, claims, damage, draft.kind is not None and draft.kind.value == "repair")
    claims = _of_a_mend_denied(row, claims)
    repaired = [c for c in claims if c.name == "damage_repaired"]
    methods = [c for c in claims if c.name == "(method)"]
    is_repair = draft.kind is not None and draft.kind.value == "repair"
    rest = [c for c in claims if c.name not in ("(method)", "damage_repaired", "damage_width")]
    over = next((c for c in repaired if is_repair and c.value is True and "tape" in row.text[c.start : c.end].lower()), None)
    if over is not None and not any(c.name == "taped" for c in rest):
        rest.append(replace(over, name="taped"))  # tape on a repair closes it
    widths = [c for c in claims if c.name == "damage_width"]
    if not damage and not is_repair:
        if repaired and any(c.value is False for c in repaired):
            return rest + [_left_open(row, c) for c in repaired if c.value is False]
        patched = [c for c in repaired if any(word in (c.read_as or row.text[c.start : c.end]).lower() for word in _PATCHED)]
        if draft.kind is not None and draft.kind.value == "end_cap" and not patched and not (repaired and methods):
            return rest  # "a plug on the dead leg, cap nine": what closes it
        over = [c for c in repaired if c.value is True and row.text[c.start : c.end].lower().startswith("tape")]
        if over and not methods and not patched and not any(c.name == "taped" for c in rest) and not any(item.concept in ("GAP", "PARTED") for item in row.items):
            return [*rest, replace(over[0], name="taped", weak=True)]  # "stapled, taped it over": nothing was damaged
        if not (repaired and methods) and not patched and not any(c.value == "plug" or (c.value == "replaced" and _of_the_board(row, c)) for c in methods):
            return rest
    fixed = [c for c in repaired if c.value is True]
    anchor = fixed[0] if fixed else (methods[0] if methods else (damage[0] if damage else None))
    extra: list[Claim] = _how_it_stands(row, repaired)
    method = None
    if any(c.name == "repair_method" for c in rest):  # "tape on it" said how; other tape is the piece's own
        how = [c for c in rest if c.name == "repair_method" and c.value == "mastic"]
        rest = [c for c in rest if not (c.name == "closure" and c.value == "mastic" and not is_repair and any(c.first < m.last and m.first < c.last for m in how))]
        _only_a_mend(draft, damage, repaired, [c for c in rest if c.name not in ("facing_damage", "repair_method")])
        return [*rest, *_how_it_stands(row, repaired), *(widths if damage or is_repair else [])]
    tapes = sorted((c for c in rest if c.name in ("taped", "closure") and c.value is not False), key=lambda c: c.first)
    again = damage and not fixed and not methods and _tapes_it(row, tapes, damage[0]) and any(_own_object(row, c) or _later(row, damage[0], c) for c in tapes[1:])
    if again:  # "a tear, taped it, and taped the seams": the first tape is the mend's
        anchor = damage[0]
        extra = [replace(tapes[0], name="damage_repaired", value=True, weak=False), *extra[:0]]
    beside = [one for one in tapes if anchor is not None and _in_one_sentence(row, anchor, one)] or tapes
    for one in beside:  # "mended it with mastic. Taped, rubbed": the tape of the next sentence is the piece's own
        near = anchor is not None and (-2 <= one.first - anchor.first <= 9 or _with_it(row, anchor, one)) and (fixed or is_repair or methods or (again and one is tapes[0]))
        if not near or not (fixed or is_repair or again) or (_own_object(row, one) and not is_repair):
            continue
        if not is_repair and method is not None and _told_apart(row, anchor, one):
            continue
        way = "mastic" if one.value == "mastic" else "tape"
        if method is None or way == "mastic":
            method = replace(one, name="repair_method", value=way, weak=False)
        if not is_repair and one.name in ("taped", "closure"):
            rest.remove(one)
        elif is_repair and one.name == "closure" and way == "mastic" and not any(c.name == "closure_mark" for c in rest):
            rest.remove(one)
    said = row.text[repaired[0].start : repaired[0].end].lower() if repaired else ""
    if method is None and any(c.value is True for c in repaired) and ("tap" in said.split("patch")[0] and ("tape" in said or "cinta" in said)):
        method = replace(repaired[0], name="repair_method", value="tape")
    for one in methods:
        if one.value in ("plug", "replaced") or method is None and (repaired or is_repair):
            method = replace(one, name="repair_method")
            if not extra and one.value in ("plug", "replaced"):
                extra.append(replace(one, name="damage_repaired", value=True))
            break
    if method is not None:
        extra.append(method)
        if is_repair and damage and not repaired and method.value == "tape" and not any(c.name == "damage_repaired" for c in extra):
            extra.append(replace(method, name="damage_repaired", value=True))  # "repair on five, a tear, put tape on it": it is what the repair was
    others = [c for c in rest if c.name not in ("facing_damage",)]
    _only_a_mend(draft, damage, extra, others)
    return rest + extra + (widths if damage or is_repair else [])


def _of_a_mend_denied(row: Row, claims: list[Claim]) -> list[Claim]:
    """ "I didn't patch it with tape": what a mend that was not made would have been made with closes no joint."""
    denied = [c for c in claims if c.name == "damage_repaired" and c.value is False]
    return [c for c in claims if c.name not in ("taped", "closure", "closure_mark") or not any(_right_with(row, one, c) for one in denied)]


def _right_with(row: Row, mend: Claim, one: Claim) -> bool:
    between = [item.concept for item in row.items[mend.last : one.first]]
    return "WITH" in between and {"WITH", "DET", "IT", "FILLER"}.issuperset(between)


def _left_open(row: Row, one: Claim) -> Claim:
    """ "… the seam is loose, I'll fix it": with no damage told, what is to be mended is the work; it is open, and no damage stands unrepaired."""
    if not any(item.concept == "REPAIR_IT" for item in row.items[one.first : one.last]):
        return one
    return replace(one, name="(open)", value=None, opens=tuple(replace(o, denies=None) for o in one.opens))


def _in_one_sentence(row: Row, one: Claim, other: Claim) -> bool:
    first, last = sorted((one.first, other.first))
    return not any(item.concept in ("STOP", "QUERY") for item in row.items[first:last])


_OF_A_MEND = ("run", "place", "mark", "closure_mark", "closure", "service", "rubbed_down", "surface_clean", "scrim_shows", "tape_width")


def _only_a_mend(draft: Draft, damage: list[Claim], mends: list[Claim], others: list[Claim]) -> None:
    """A note of mended damage and nothing else is of a repair."""
    if draft.kind is None and damage and any(c.value is True for c in mends) and not [c for c in others if c.name not in _OF_A_MEND]:
        first = mends[0]
        draft.kind = Claim("kind", "repair", first.first, first.last, first.start, first.end)


def _tape_on_damage(row: Row, claims: list[Claim], damage: list[Claim]) -> list[Claim]:
    """ "Ran tape over the dent", "taped the dent": tape whose object is the damage closes no joint."""
    if not damage or any(c.name in ("damage_repaired", "repair_method") for c in claims):
        return claims
    for one in claims:
        if one.name != "taped" or one.value is not True or one.pending:
            continue
        at = next((k for k in range(one.first, min(one.last + 8, len(row.items))) if row.items[k].concept == "DAMAGE" and row.items[k].start >= row.items[one.first].end), None)
        if at is None or not any(pattern.fullmatch(row.text[one.start : row.items[at].start].lower().replace("’", "'").strip()) for pattern in _on_damage()):
            continue
        spread = replace(one, name="damage_repaired", last=max(one.last, at + 1), end=max(one.end, row.items[at].end))
        return [*(c for c in claims if not (c.name == "taped" and c.value is True and c.first < spread.last and spread.first < c.last)), spread, replace(spread, name="repair_method", value="tape", weak=False)]
    return claims


def _mastic_behind(row: Row, claims: list[Claim], damage: list[Claim]) -> list[Claim]:
    """ "One-inch hole, mastic and fabric": right behind the damage, it is how that was mended and closes no joint."""
    if not damage or any(c.name in ("damage_repaired", "repair_method") for c in claims):
        return claims
    for one in claims:
        if one.name != "closure" or one.value != "mastic" or one.pending:
            continue
        told = max((c for c in damage if c.last <= one.first), key=lambda c: c.last, default=None)
        between = {item.concept for item in row.items[told.last : one.first]} if told is not None else {"STOP"}
        if between <= _OF_DAMAGE and "COMMA" in between:
            rest = [c for c in claims if not (c.name in ("closure", "taped", "(method)") and c.first < one.last and one.first < c.last)]
            return [*rest, replace(one, name="damage_repaired", value=True, weak=False), replace(one, name="repair_method", weak=False)]
    return claims


_OF_DAMAGE = frozenset("COMMA DET LEN NUM FRAC LONG WIDE FACING DAMAGE_PLACE IN ON AND FILLER BOARD SIDE SIDE_WORD JOINT HEDGE ROUND OVER BE IT".split())


@cache
def _on_damage() -> tuple[Likely, ...]:
    return tuple(Likely(words) for code in LANGUAGES for words in LANGUAGES[code].turns.on_damage)


def _taped_over(row: Row, claims: list[Claim], damage: list[Claim], kind_is_repair: bool) -> list[Claim]:
    """ "a three inch gash in it. Stuck tape on it": tape on the damage, with nothing between that it could be of instead."""
    for one in damage:
        last, stops = one.last, 0
        while last < len(row.items) and stops < 2 and last - one.last < 24:
            concept = row.items[last].concept
            if concept == "JOINT" and row.items[last - 1].concept == "DET" and row.items[last - 2].concept in ("BY", "ON", "IN"):
                last += 1  # "a tear in the skin by the corner, haven't taped it"
                continue
            if concept == "JOINT" and all(row.items[k].concept in ("DET", "ON", "IN", "OF", "NUM") for k in range(one.last, last)):
                last += 1  # "quedó aplastada una esquina y le puse cinta"
                continue
            if concept in ("STAPLED", "STAPLES", "RUBBED", "JOINT", "SIDES_ALL", "EVERY") or (stops and concept == "K_STRAIGHT"):
                break
            stops += concept in ("STOP", "QUERY")
            last += 1
        behind = row.text[one.end : row.items[last - 1].end].lower().replace("’", "'") if last > one.last else ""
        match = next((m for pattern in _mends() if (m := pattern.search(behind))), None)
        listed = last < len(row.items) and row.items[last].concept in ("STAPLED", "STAPLES", "RUBBED")
        if match is None and (one.value in _TAPED_OVER or one.value in _OF_THE_BOARD and not listed):  # "a rip in the facing, taped it and moved on"
            match = next((m for pattern in _tapes_it_alone() if (m := pattern.search(behind))), None)
        if match is None:
            continue
        start, end = one.end + match.start(), one.end + match.end()
        first, until = row.within(one.last, last, match, one.end)
        if _denied(row, first, until, one.last) or _only_to_come(row, first, until, one.last):
            return _not_mended(row, claims, first, until)
        if any(c.name == "(method)" and c.value in ("plug", "replaced") and one.first < c.first <= until for c in claims):
            continue  # "crushed, cut in a plug and taped over the plug": the tape is over the mend
        marked = {c.first for c in claims if c.name == "closure_mark"}  # the print on the tape of a mend states what tape it is
        rest = [c for c in claims if not (c.name in ("taped", "damage_repaired", "(method)", "closure") and not (c.name == "closure" and c.first in marked) and c.start < end and c.end > start and c.value is not False)]
        rest = [c for c in rest if not (c.name == "damage_repaired" and c.value is False and c.start >= end and _goes_on(row, c))]  # "put tape over it and then I kept going"
        if any(c.name == "damage_repaired" for c in rest):
            if not any(c.name == "repair_method" for c in rest):  # "… put a patch of tape over it and it's fixed"
                kept = rest if all(c.value is False for c in rest if c.name == "damage_repaired") else [c for c in claims if c in rest or c.name != "taped"]  # "one's patched with tape, the other's open"; "it's repaired, had a tear and I put tape over it" tapes no joint
                return [*kept, replace(claim_plain(row, "repair_method", True, first, until), value="mastic" if re.search(r"mastic|mud|mastique", match.group()) else "tape")]
            continue
        if kind_is_repair:
            rest = list(claims)
        spread = claim_plain(row, "damage_repaired", True, first, until)
        return [*rest, spread, replace(spread, name="repair_method", value="mastic" if re.search(r"mastic|mud|mastique", match.group()) else "tape")]
    return claims


def _denied(row: Row, first: int, until: int, begin: int) -> bool:
    """ "a tear, no tape on it yet": the mend is denied in its own clause."""
    while first > begin and row.items[first - 1].concept not in ("COMMA", "STOP", "QUERY", "AND", "BUT"):
        first -= 1
    return any(item.concept in ("NO", "NOT", "NOT_DONE", "FORGOT", "UNTAPED") for item in row.items[first:until])


_TO_COME = ("WILL", "GOING_TO", "PENDING", "NEED", "REMIND")


def _only_to_come(row: Row, first: int, until: int, begin: int) -> bool:
    """ "A tear, I'll get tape over it", "…, somebody should put tape over it": nothing is mended yet."""
    while first > begin and row.items[first - 1].concept not in ("COMMA", "STOP", "QUERY", "AND", "BUT") and row.words(first - 1, first).lower() not in ("so", "then", "so i"):
        first -= 1
    supposed = any(item.concept == "IF" for item in row.items[first : row.sentence_end(first)])
    had = [row.words(at, at + 1).lower().replace("’", "'").endswith("'d") for at in range(first, until)]
    return any(item.concept in _TO_COME and (supposed or not was) or row.words(at, at + 1).lower() in words_of("small.wishes") for at, item, was in zip(range(first, until), row.items[first:until], had))


def _not_mended(row: Row, claims: list[Claim], first: int, until: int) -> list[Claim]:
    """The claims where what was denied of tape or mastic is that the damage is mended."""
    of_it = [c for c in claims if c.name in ("taped", "closure", "damage_repaired", "(method)") and c.first < until and first < c.last]
    opens = tuple(replace(opened, denies="damage_repaired") for c in of_it for opened in c.opens)[:1]
    spread = replace(claim_plain(row, "damage_repaired", False, first, until), opens=opens, pending=bool(opens))
    return [*(c for c in claims if c not in of_it and not (c.name == "damage_repaired" and c.value is False)), spread]


_TAPED_OVER = ("tear", "puncture")
_OF_THE_BOARD = ("crushed", "delaminated")  # where no other act goes on behind: "the corner got crushed, taped it, rubbed it" is the piece's own tape


def _goes_on(row: Row, one: Claim) -> bool:
    """Words that leave damage as it is only where nothing was done about it before."""
    return any(re.fullmatch(LANGUAGES[code].turns.goes_on, row.text[one.start : one.end].lower()) for code in LANGUAGES)


@cache
def _tapes_it_alone() -> tuple[Likely, ...]:
    return tuple(pattern for code in LANGUAGES for pattern in apart(code, "turns.tapes_it"))


@cache
def _mends() -> tuple[Likely, ...]:
    return tuple(pattern for code in LANGUAGES for pattern in apart(code, "turns.mends"))


def _with_it(row: Row, anchor: Claim, one: Claim) -> bool:
    """ "Reparé un piquete en el foil de la recta treinta con tape": told in one breath, with what it was mended."""
    if one.value == "mastic" and row.items[one.first - 1].concept == "WITH":  # "… about an inch wide, with fabric and mastic"
        return 0 < one.first - anchor.last <= 16 and not any(item.concept in ("STAPLED", "STAPLES", "TAPED", "STOP") for item in row.items[anchor.last : one.first])
    return 0 < one.first - anchor.last <= 20 and row.items[one.first - 1].concept == "WITH" and not any(item.concept in ("COMMA", "STOP", "AND", "QUERY") for item in row.items[anchor.last : one.first])


_PATCHED = ("patch", "mend", "repair", "parch", "remend", "repar")  # a mend, though the ears lost what was damaged


def _own_object(row: Row, one: Claim) -> bool:
    """Whether tape is said of the seams, the sides or the rest, so that it cannot be the mend's."""
    first, last = one.first, one.last
    while first > 0 and row.items[first - 1].concept not in ("STOP", "QUERY", "COMMA", "AND") and one.first - first < 4:
        first -= 1
    while last < len(row.items) and row.items[last].concept not in ("STOP", "QUERY", "COMMA", "AND") and last - one.last < 5:
        last += 1
    near = row.items[first:last]
    said = row.text[row.items[first].start : row.items[last - 1].end].lower().split()
    whole = any(item.concept in ("JOINT", "SIDES_ALL", "AROUND", "STAPLED", "STAPLES") or (item.concept == "SIDE_WORD" and row.items[k - 1].concept == "NUM") for k, item in enumerate(near, first))
    return whole or bool({"rest", "otherwise", "seams", "seam", "resto", "costuras", "everything", "demás"} & set(said))


def _later(row: Row, damage: Claim, one: Claim) -> bool:
    """Whether a sentence ends between the damage and this tape."""
    return any(item.concept in ("STOP", "QUERY") for item in row.items[damage.last : one.first])


def _tapes_it(row: Row, tapes: list[Claim], damage: Claim) -> bool:
    """ "a tear in the facing, taped it": right behind the damage, of nothing else."""
    return bool(tapes) and 0 < tapes[0].first - damage.last <= 4 and not _own_object(row, tapes[0]) and tapes[0].name == "taped" and not _later(row, damage, tapes[0])
