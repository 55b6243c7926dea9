"""Words that copy: "same size", "same thing on the other side", "same as six except the top drops three"."""

from __future__ import annotations

from dataclasses import dataclass, replace

from logbook.facts import Move
from logbook.languages.language import Language
from logbook.reading.clauses.claims import Claim, claim
from logbook.reading.clauses.grammar import Row
from logbook.reading.clauses.marks import MARK, mark_text

SIZES = ("inlet_size", "outlet_size", "branch_size")
_NOUNS = {"TAPE": "taped", "STAPLES": "stapled", "TAPED": "taped", "STAPLED": "stapled"}
_OPPOSITE = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}


@dataclass(frozen=True, slots=True)
class Copy:
    """What is copied from where: `mark` None is the fitting before; `names` None is everything."""

    first: int
    last: int
    start: int
    end: int
    mark: str | None
    run: str | None
    names: tuple[str, ...] | None
    until: int  # exceptions stand up to this item
    excepts: bool


def copies(row: Row, taken: set[int], language: Language) -> list[Copy]:
    made: list[Copy] = []
    pattern = f"(?P<w>SAME_AS (?:DET|FITTING|NUMBER|KIND){{0,3}} (?P<m>{MARK}) (?:(?:ON|OF)? (?P<r>RUN NUMBER? (?P<rm>{MARK})))? COMMA? (?P<x>EXCEPT|ONLY)?)"
    for match in row.find(pattern):
        last = match.end("w")
        while row.items[last - 1].concept == "COMMA":
            last -= 1
        run = mark_text(row, *match.span("rm"), language) if match.start("rm") >= 0 else None
        until = row.sentence_end(last)
        taken.update(range(match.start(), last))
        made.append(Copy(match.start(), last, row.items[match.start()].start, row.items[last - 1].end,
                         mark_text(row, *match.span("m"), language), run, None, until, match.start("x") >= 0))  # fmt: skip
    for match in row.find(f"(?P<w>(?:SAME_SIZE|SAME_THING SIZE_WORD) (?P<as>WORD) (?:DET|FITTING|NUMBER|KIND){{0,3}} (?P<m>{MARK})) (?=SEP|$|AND|BUT|FILLER)"):
        if row.words(*match.span("as")).lower() in ("as", "que"):  # "same size as twenty-one"
            taken.update(range(*match.span("w")))
            first, last = match.span("w")
            made.append(Copy(first, last, row.items[first].start, row.items[last - 1].end, mark_text(row, *match.span("m"), language), None, SIZES, last, False))
    for match in row.find("(?P<s>SAME_SIZE|SAME_THING SIZE_WORD)"):  # "62 is the same size": no harm of the piece before
        at, last = match.span("s")
        if at in taken:
            continue
        taken.add(at)
        made.append(Copy(at, last, row.items[at].start, row.items[last - 1].end, None, None, SIZES, at, False))
    for match in row.find("(?:FROM|OFF) DET? (?P<w>(?P<s>WORD) INLET)"):  # "off the same trunk"
        if row.words(*match.span("s")).lower() in ("same", "mismo", "misma"):
            first, last = match.span("w")
            made.append(Copy(first, last, row.items[first].start, row.items[last - 1].end, None, None, ("inlet_size",), last, False))
    for match in row.find("(?P<s>SAME_THING)"):
        at = match.start()
        if at in taken or _of_the_other_side(row, at):
            continue
        if at and row.items[at - 1].concept == "SIDE" and any(row.items[k].concept.startswith("MOVE") for k in range(max(0, at - 8), at)):
            continue  # "… derecho igual": of the side
        if any(row.items[k].concept in _NOUNS for k in range(max(0, at - 2), at)) and row.items[at - 1].concept in (*_NOUNS, "BE", "DET", "FILLER"):
            continue  # "staples all four sides, tape the same"
        until = row.sentence_end(at)
        if row.items[at + 1].concept == "INLET" if at + 1 < len(row.items) else False:  # "off the same trunk"
            made.append(Copy(at, at + 2, row.items[at].start, row.items[at + 1].end, None, None, ("inlet_size",), at + 2, False))
            continue
        excepts = any(row.items[k].concept == "EXCEPT" for k in range(at, until))
        made.append(Copy(at, at + 1, row.items[at].start, row.items[at].end, None, None, None, until, excepts))
    return made


def of_measures(row: Row) -> dict[int, str]:
    """The "same" of "drops two inches in the same two feet", which copies nothing of a piece: item -> the concept it then is."""
    return {match.start(): "FILLER" for match in row.find("SAME_THING (?=LEN)") if row.words(match.start(), match.end()).lower() in ("same", "the same")}


def _of_the_other_side(row: Row, at: int) -> bool:
    """ "Same thing on the other side" is of a side, unless a piece is named right before: "collar three is the same thing on the other side of the trunk"."""
    behind = at + 1
    while behind < len(row.items) and row.items[behind].concept in ("ON", "DET", "FILLER", "BE", "IT"):
        behind += 1
    other = behind < len(row.items) and row.items[behind].concept == "OTHER_SIDE"
    return other and not (at > 1 and row.items[at - 1].concept in ("NUM", "MARKED") and row.items[at - 2].concept.startswith(("K_", "FITTING", "NUMBER")))


def mirrored(row: Row, claims: list[Claim]) -> list[Claim]:
    """ "left side in four, back eighteen, same thing on the other side": the opposite side moves alike."""
    made: list[Claim] = []
    for match in row.find("(?P<w>(?P<n>TAPE|STAPLES|TAPED|STAPLED) (?:BE|DET|FILLER)? SAME_THING) (?=SEP|$|AND)"):
        act = _NOUNS[row.items[match.start("n")].concept]
        told = [c for c in claims if c.last <= match.start() and c.name in ("sides_stapled", "sides_taped") and not any(item.concept in ("STOP", "QUERY") for item in row.items[c.last : match.start()])]
        made.append(claim(row, act, True, *match.span("w"), weak=True))
        if told and told[-1].name != f"sides_{act}":
            made.append(claim(row, f"sides_{act}", told[-1].value, *match.span("w")))
    for match in row.find("(?P<s>SIDE) (?:FILL|COMMA){0,2} SAME_THING (?!(?:FILL|ON)* OTHER_SIDE)"):
        before = _moved_before(claims, match.start())
        if before is not None and row.items[match.start()].value == (_OPPOSITE[before.value[0].side],):  # "izquierdo entra tres en dieciocho, derecho igual"
            made.append(_opposite(row, before, match.start(), match.end()))
    for match in row.find("SAME_THING (?:FILL|ON)* OTHER_SIDE"):
        if not _of_the_other_side(row, match.start()):
            continue
        before = _moved_before(claims, match.start())
        if before is not None:
            made.append(_opposite(row, before, match.start(), match.end()))
    return made


def _moved_before(claims: list[Claim], at: int) -> Claim | None:
    """The one side whose move was told last, shortly before."""
    before = [c for c in claims if c.name == "side_moves" and c.last <= at and at - c.last <= 12]
    return before[-1] if before and len(before[-1].value) == 1 and before[-1].value[0].side in _OPPOSITE else None


def _opposite(row: Row, before: Claim, at: int, end: int) -> Claim:
    move = before.value[0]
    opposite = Move(_OPPOSITE[move.side], move.by, move.back, move.way)
    return replace(before, value=(opposite,), first=at, last=end, start=row.items[at].start, end=row.items[end - 1].end, uses=(), took_back=(), read_as=None)
