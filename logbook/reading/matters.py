"""What words that nobody understood may tell of: the facts of the things, acts and measures they name.

Where they name none ("mine came out closer to three", "not the third"), it is what the words right before them told of.
"""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row

_MEASURES = frozenset("LEN NUM FRAC EVERY APART COUNT".split())
_MEASURED = ("staple_spacing", "hanger_spacing", "gap")
DENYING = frozenset("NOT NO NOT_DONE MISSING FORGOT LEFT_OUT PENDING".split())
_TAPES = "TAPE TAPED TAPE_IT C_MASTIC CLOSURE MARK181"
_STAPLES = "STAPLES STAPLED STAPLE"
# concepts, whether a measure stands beside them, the facts; the first row that fits a concept counts
_ROWS: tuple[tuple[frozenset[str], bool | None, tuple[str, ...]], ...] = tuple(
    (frozenset(concepts.split()), measured, names)
    for concepts, measured, names in (
        ("TABS", None, ("tabs_bent",)),
        ("K_HANGER", None, ("hanger_spacing",)),
        ("RUB RUBBED", None, ("rubbed_down",)),
        ("TRIM TRIMMED", None, ("trimmed",)),
        ("WIPE WIPED", None, ("surface_clean",)),
        ("VANES", None, ("vanes",)),
        ("GAP TIGHT", None, ("gap",)),
        ("DAMAGE REPAIR_IT", None, ("facing_damage",)),
        ("GROOVE SEATED", None, ("groove_step",)),
        ("TEMP_F", None, ("surface_temperature",)),
        (_STAPLES, True, ("staple_spacing",)),
        (_STAPLES, False, ("stapled",)),
        ("FLAP", None, ("stapled",)),
        (_TAPES, None, ("taped",)),
    )
)


def about(row: Row, first: int, last: int, before: int) -> tuple[str, ...]:
    """The facts that the items `first` to `last` - 1 may tell of; `before`: how far back the words before them reach."""
    concepts = {row.items[at].concept for at in range(first, last)}
    measured = bool(concepts & _MEASURES)
    told = _named(concepts, measured)
    if told:
        return told
    if "AMISS" in concepts:
        return _amiss(row, first, last)
    if "WORD" in concepts and not measured:  # "I'm not an animal": of something else
        return ()
    denies = bool(concepts & DENYING)
    for at in reversed(range(before, first)):
        told = _named({row.items[at].concept}, measured)
        if told:
            return tuple(name for name in told if denies or (measured and name in _MEASURED))
    return ()


_AMISS = (("LEG", "staple_clinch"), ("STAPLES", "staple_spacing"), ("TABS", "cross_tab_spacing"), ("K_HANGER", "hanger_spacing"), ("SCREWS", "screw_spacing"), ("TAPE", "taped"), ("TAPED", "taped"), ("VANES", "vanes"))


def _amiss(row: Row, first: int, last: int) -> tuple[str, ...]:
    """ "las grapas quedaron muy separadas": something is the matter with what was named in these words, or with the piece."""
    while first > 0 and row.items[first - 1].concept not in ("COMMA", "STOP", "QUERY", "AND", "BUT"):
        first -= 1
    here = {item.concept for item in row.items[first:last]}
    return next(((name,) for concept, name in _AMISS if concept in here), ("facing_damage",))


def named_in(row: Row, first: int, last: int) -> tuple[str, ...]:
    """The facts of the things and acts that these items name."""
    concepts = {row.items[at].concept for at in range(first, last)}
    named = tuple(name for name in _named(concepts, False) if name not in _MEASURED)
    return (*named, "staple_spacing") if concepts & {"EVERY", "APART"} else named


def _named(concepts: set[str], measured: bool) -> tuple[str, ...]:
    names = [name for told, beside, names in _ROWS if told & concepts and beside in (None, measured) for name in names]
    return tuple(dict.fromkeys(names))
