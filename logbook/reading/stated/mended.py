"""Harm that was mended, and with what."""

from __future__ import annotations

from logbook.reading.clauses.claims import Found
from logbook.reading.clauses.grammar import Row
from logbook.reading.words.phrasing import words_of


def repaired(found: Found):
    """ "Fixed it"; where fewer were fixed than were counted ("five tears, I fixed four") it is not mended."""
    row, at = found.row, found.last
    few = row.items[at].value.value if at < len(row.items) and row.items[at].concept == "NUM" else 1 if _one_alone(row, at) else None
    if few is not None and any(row.items[k].concept == "DAMAGE" and row.items[k - 1].concept == "NUM" and row.items[k - 1].value.value > few for k in range(max(1, found.first - 14), found.first)):
        yield found.claim("damage_repaired", False, group="w", hedged=False)
        return
    if row.words(found.first, found.first + 1).lower().split()[0] in words_of("small.mends") and _is_to_be_done(row, found.first):
        return
    yield found.claim("damage_repaired", True, group="w")


def _one_alone(row: Row, at: int) -> bool:
    """ "Parché una": of the tears told before."""
    return at < len(row.items) and row.items[at].concept == "DET" and row.words(at, at + 1).lower() in words_of("small.one_alone") and (at + 1 == len(row.items) or row.items[at + 1].concept in ("STOP", "COMMA", "AND", "BUT"))


def _is_to_be_done(row: Row, at: int) -> bool:
    """ "I can patch it", "asked Joe to patch it": nothing says that it was done; "I had to patch it" does."""
    before = at - 1
    while before >= 0 and row.items[before].concept == "FILLER" and not words_of("small.governs").issuperset(row.words(before, before + 1).lower().split()[-1:]):
        before -= 1
    said = row.words(max(0, before - 1), before + 1).lower().split() if before >= 0 else []
    if said[-1:] == ["to"]:
        return said[-2:-1] != ["had"]
    return bool(said) and said[-1] in words_of("small.governs")


def method(found: Found):
    """What the harm was mended with; "no fabric" behind a harm mends nothing."""
    before = found.at("m") - 1
    while before >= 0 and found.row.items[before].concept in ("DET", "ANOTHER", "WORD", "FILLER") and found.at("m") - before < 3:
        before -= 1
    behind = found.row.words(found.last, found.last + 1).lower() if found.last < len(found.row.items) else ""
    if before >= 0 and found.row.items[before].concept in ("NO", "NOT_DONE") and behind in ("left", "on", "around", "here"):
        return  # "no fabric left"
    if not any(item.concept in ("DAMAGE", "REPAIRED", "REPAIR_IT", "K_REPAIR") for item in found.row.items) and found.row.words(found.first, found.last).lower().startswith("swap"):
        return  # "swapped the top to a butt edge"
    if not any(item.concept in ("DAMAGE", "REPAIRED", "REPAIR_IT", "K_REPAIR") for item in found.row.items) and before >= 0 and found.row.items[before].concept in ("NO", "NOT", "NOT_DONE"):
        return  # "closed it with mastic, no fabric": nothing was damaged
    if before >= 0 and found.row.items[before].concept == "NOT":  # "crushed, not replaced"
        yield found.claim("damage_repaired", False, group="m", weak=True, hedged=False)
        return
    if before >= 0 and found.row.items[before].concept in ("NO", "NOT_DONE"):
        if found.item("m").value == "mastic" and any(item.concept in ("REPAIRED", "TAPED", "TAPE") for item in found.row.items[found.row.sentence_start(found.first) : found.first]):
            return  # "taped over it, no fabric": how it was mended
        if found.item("m").value == "mastic" and not any(item.concept in ("DAMAGE", "K_REPAIR", "REPAIRED") for item in found.row.items):
            return  # "mastic but no fabric": how it is closed
        # "it's crushed, no plug, no new panel"
        yield found.claim("damage_repaired", False, group="m", hedged=False)
        return
    yield found.claim("(method)", found.item("m").value, group="w")
