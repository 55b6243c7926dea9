"""A Spanish clause that goes back to a piece by its kind: "el codo 60 y el recto 61; al codo le puse …, al recto …", "me falta tallar el recto"."""

from __future__ import annotations

from logbook.reading.clauses.grammar import Row

_ARTICLES = frozenset("el la al del ese esa este esta dicho dicha".split())
_BOUNDS = frozenset("STOP QUERY COMMA AND BUT OR".split())
_LEADS = frozenset("DET THRU ON IN TO FROM OF OFF FILLER ONLY NOW ALSO SO THIS WITH ALL".split())
_TELLS = frozenset(  # what begins to tell of the piece that leads
    "BE HAVE NO NOT NOT_DONE YET PENDING IT DET STAPLED TAPED RUBBED HUNG WIPED TRIMMED FILLER I FORGOT EVERY WITH STAPLES TAPE VANES ON_BENCH WILL LATER ONLY DAMAGE GAP TAKES MOVE_DOWN SAME_THING CLOSURE C_MASTIC".split()
)
_WORKS = frozenset("STAPLED STAPLE TAPED TAPE TAPE_IT RUBBED RUB TRIMMED TRIM WIPED WIPE BENT HANG HUNG VANES STAPLES FLAP TABS REPAIR_IT REPAIRED CLOSURE HAVE FORGOT PENDING SIDE SIDE_WORD JOINT".split())
_BETWEEN = frozenset("DET ON TO OF FROM OFF FILLER SIDE SIDE_WORD JOINT BACK IN".split())  # between the work and what it is done to
_NUMBERED = frozenset("NUM MARKED NUMBER FITTING LETTER".split())


def gone_to(row: Row) -> list[tuple[int, int]]:
    """(where its clause begins, the kind) of every kind that has its article and no number, and is told of."""
    found = []
    for at, item in enumerate(row.items):
        if item.concept.startswith("K_") and at > 0 and _is_pointed(row, at) and (begin := _begins(row, at)) is not None:
            found.append((begin, at))
    return found


def _is_pointed(row: Row, at: int) -> bool:
    said = row.text[: row.items[at].start].lower().split()[-1:]
    behind = [item.concept for item in row.items[at + 1 : at + 3]]
    return bool(said) and said[0] in _ARTICLES and not (behind[:1] and behind[0] in _NUMBERED or behind[:1] == ["COMMA"] and behind[1:] and behind[1] in _NUMBERED)


def _begins(row: Row, at: int) -> int | None:
    begin = at
    while begin > 0 and row.items[begin - 1].concept not in _BOUNDS:
        begin -= 1
        if row.items[begin].concept.startswith("K_") or row.items[begin].concept in ("TIED", "NUM", "MARKED"):
            return None
    led = [item.concept for item in row.items[begin:at]]
    behind = row.items[at + 1].concept if at + 1 < len(row.items) else "STOP"
    if _LEADS.issuperset(led):
        return begin if behind in _TELLS else None
    last = len(led)
    while last and led[last - 1] in _BETWEEN and led[last - 1] not in _WORKS:
        last -= 1
    return begin if last and led[last - 1] in _WORKS and behind not in ("FROM", "OF", "OFF") else None
