"""Closing the joints: taped or mastic, a listed product, wide enough, warm enough, rubbed down, all sides."""

from __future__ import annotations

from fractions import Fraction

from logbook.findings import Example, Outcome, Rule, Source, Word
from logbook.limits import MARK_OF
from logbook.piece import Piece
from logbook.rules.using import Use, closed
from logbook.runs import Around

SEAMS = ("transition", "offset")  # "both sides" of these are their two cut seams, not a count of sides
ROUND_ABOUT = ("straight", "end_cap", "plenum", "elbow", "tee", "wye")


def taped(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if use.said("taped") is False and piece.value("closure") != "mastic":  # "no tape, mastic": closed by the other
        return use.departs("not-taped")
    if _partly(piece):
        use.said("sides_taped")
        return use.departs("partly", reckoned={"sides": Fraction(piece.value("sides_taped"))})
    if piece.value("taped"):
        return use.meets("closed")
    if closed(piece) or piece.value("closure") == "mastic":
        use.said("closure")
        use.said("repair_method")
        return use.meets("closed", text="mastic")
    return use.unsaid("unsaid", "taped")


def _partly(piece: Piece) -> bool:
    sides = piece.value("sides_taped")
    whole = (2, 4) if piece.value("kind") in SEAMS else (4,)
    return sides is not None and sides not in whole


TAPED = Rule(
    id="taped",
    concerns=(
        "straight", "transition", "offset", "elbow", "tee", "branch", "wye", "end_cap", "plenum", "collar", "repair",
    ),  # fmt: skip
    weight="must",
    silent="flag",
    may_stand=("phrase",),
    limits=(),
    source=Source("CL-08", "a", "ul-181a"),
    judge=taped,
    kind_unsaid=True,
    examples=(
        Example("Straight four, eighteen by twelve, stapled and taped.", "meets", "closed"),
        Example("Straight four, eighteen by twelve, closed with mastic.", "meets", "closed"),
        Example("Straight four, eighteen by twelve, no tape, closed with mastic.", "meets", "closed"),
        Example("Straight four, eighteen by twelve, stapled, not taped yet.", "departs", "not-taped"),
        Example("Straight four, eighteen by twelve, stapled, taped three sides.", "departs", "partly"),
        Example("Straight four, eighteen by twelve, stapled.", "unsaid", "unsaid"),
    ),
)


def _of_the_tape(piece: Piece, outcome: Outcome | None) -> Outcome | None:
    """Where nobody said that it is taped, how the tape is or went on is due only if that departs: there is tape that was told of."""
    if closed(piece) or (outcome is not None and outcome.verdict == "departs" and piece.value("taped") is not False):
        return outcome
    return None


def closure_listed(piece: Piece, around: Around) -> Outcome | None:
    return _of_the_tape(piece, _closure_listed(piece, around))


def _closure_listed(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    use.said("taped")
    closure = use.known("closure")
    said = use.said("closure_mark")
    if closure == "other_tape":
        return use.departs("not-listed")
    if said is not None:
        if closure is not None and MARK_OF.get(closure) != said:
            return use.departs("mark-of-another", tells={"mark": said, "closure": Word(f"closure-{closure}")})
        return use.meets("mark-said", tells={"mark": said})
    stands = use.standing("closure_mark")
    if stands is not None and MARK_OF.get(closure) == stands.value:
        use.known("closure_mark")
        told = {"mark": stands.value, "closure": Word(f"closure-{closure}"), "who": Word(f"who-{stands.via}")}
        text = "closure-said" if piece.value("closure") is not None else None
        return use.meets("mark-stands", text=text, stated_by="closure_mark", tells=told)
    if closure is None:
        return use.unsaid("closure-unsaid", "closure_mark")
    return use.unsaid("mark-unsaid", "closure_mark", tells={"closure": Word(f"closure-{closure}")})


CLOSURE_LISTED = Rule(
    id="closure-listed",
    concerns=(),
    weight="must",
    silent="ask",
    may_stand=("job", "shift"),
    limits=(),
    source=Source("CL-08, CL-09, CL-27", "a", "ul-181a-ah121"),
    judge=closure_listed,
    examples=(
        Example("Straight four, stapled and taped with 181A-P.", "meets", "mark-said"),
        Example("Straight four, stapled and taped with cloth tape.", "departs", "not-listed"),
        Example("Straight four, stapled and taped with pressure tape.", "unsaid", "mark-unsaid"),
        Example("Straight four, stapled and taped.", "unsaid", "closure-unsaid"),
        Example(
            "Straight four, stapled and taped with pressure tape.", "meets", "mark-stands",
            job='[standing]\nclosure_mark = { tape_pressure = "181A-P" }',
        ),
    ),
)  # fmt: skip


def tape_width(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    closure = use.known("closure")
    if piece.value("taped") is False:
        return None
    if closure is None:
        return _too_narrow_for_any(use)
    if closure not in ("tape_pressure", "tape_heat"):
        return None
    use.known("closure_mark")
    if closure == "tape_heat":
        limit, board, weight, source = use.limit("tape_width_heat"), None, None, Source("CL-13", "b", "ah116-iv")
        needed = "heat"
    else:
        board = use.known("board_thickness")
        limit, weight = _pressure_tape(use, board)
        source, needed = None, "any-board" if board is None else None
    width = use.known("tape_width")
    if width is None:
        return use.unsaid("unsaid", "tape_width", limit=limit)
    more = {"limit": limit, "reckoned": {"width_in": width, "limit_in": limit}, "source": source, "stated_by": "tape_width"}
    told = {"tells": {} if board is None else {"board": board}}
    if width >= limit:
        return use.meets("wide-enough", text=needed, **told, **more)
    narrowest = min(use.limit(name) for name in ("tape_width_1", "tape_width_1_5", "tape_width_2"))
    if needed == "any-board" and width >= narrowest:
        return use.unsaid("board-unsaid", "board_thickness", **more)
    return use.departs("too-narrow", text=None if needed is None else f"too-narrow-{needed}", weight=weight, **told, **more)


def _too_narrow_for_any(use: Use) -> Outcome | None:
    """Whichever tape it is, no board takes one as narrow as this."""
    width = use.known("tape_width")
    narrowest = min(use.limit(name) for name in ("tape_width_1", "tape_width_1_5", "tape_width_2", "tape_width_heat"))
    if width is None or width >= narrowest:
        return None
    return use.departs("too-narrow", text="too-narrow-any-board", limit=narrowest, reckoned={"width_in": width, "limit_in": narrowest}, stated_by="tape_width")


def _pressure_tape(use: Use, board: Fraction | None) -> tuple[Fraction, str | None]:
    """The width that the board needs, and the weight where the row is only advice."""
    if board is None:
        return max(use.limit(name) for name in ("tape_width_1", "tape_width_1_5", "tape_width_2")), None
    if board <= 1:
        return use.limit("tape_width_1"), None
    return (use.limit("tape_width_1_5"), "should") if board < 2 else (use.limit("tape_width_2"), None)


TAPE_WIDTH = Rule(
    id="tape-width",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=("job", "shift"),
    limits=("tape_width_1", "tape_width_1_5", "tape_width_2", "tape_width_heat"),
    source=Source("CL-10, CL-11, CL-12, CL-13", "a*", "ah119-5-3"),
    judge=tape_width,
    examples=(
        Example("Straight four, one-inch board, taped with three-inch 181A-P.", "meets", "wide-enough"),
        Example("Straight four, one-inch board, taped with two-inch 181A-P.", "departs", "too-narrow"),
        Example("Straight four, two-inch board, taped with two and a half inch 181A-P.", "departs", "too-narrow"),
        Example("Straight four, taped with 181A-P.", None),
        Example("Straight four, taped with two-inch tape.", "departs", "too-narrow"),
        Example("Straight four, taped with three-inch tape.", None),
    ),
)


def tape_cold(piece: Piece, around: Around) -> Outcome | None:
    return _of_the_tape(piece, _tape_cold(piece, around))


def _tape_cold(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    if use.known("closure") != "tape_pressure":
        return None
    limit, temperature = use.limit("cold"), use.known("surface_temperature")
    if temperature is None:
        return use.unsaid("temperature-unsaid", "surface_temperature", limit=limit)
    more = {"limit": limit, "reckoned": {"temperature_f": temperature, "limit_f": limit}, "stated_by": "surface_temperature"}
    if temperature > limit:
        return use.meets("warm-enough", **more)
    match use.said("preheated"):
        case True:
            return use.meets("preheated", **more)
        case False:
            return use.departs("cold", **more)
    return use.unsaid("preheat-unsaid", "preheated", silent="ask", **more)


TAPE_COLD = Rule(
    id="tape-cold",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=("shift",),
    limits=("cold",),
    source=Source("CL-16", "a*", "ah119-5-3"),
    judge=tape_cold,
    defers=True,
    examples=(
        Example("Straight four, taped with 181A-P at seventy degrees.", "meets", "warm-enough"),
        Example("Straight four, taped with 181A-P at forty degrees, preheated.", "meets", "preheated"),
        Example("Straight four, taped with 181A-P at forty degrees, not preheated.", "departs", "cold"),
        Example("Straight four, taped with 181A-P at forty degrees.", "unsaid", "preheat-unsaid"),
        Example("Straight four, stapled, 181A-P at forty degrees, not preheated.", "departs", "cold"),
    ),
)


def rubbed_down(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    rubbed_all = use.peek("rubbed_down") is True and use.peek("scrim_shows") is not False
    said = piece.fact("closure")
    unsure = rubbed_all and said is not None and (said.hedged or said.conflict)  # rubbed down is rubbed down, whichever tape he is not sure of
    closure = use.peek("closure") if unsure else use.known("closure")
    told = use.peek("taped") is True or use.peek("rubbed_down") is False or use.peek("scrim_shows") is False
    tape = closure == "tape_pressure" or (closure is None and told)
    if not tape or use.peek("taped") is False:
        return None
    rubbed, scrim = use.said("rubbed_down"), use.said("scrim_shows")
    if rubbed is False:
        return use.departs("not-rubbed")
    if scrim is False:
        return use.departs("scrim-hidden")
    if rubbed:
        return use.meets("rubbed", text="rubbed-and-scrim" if scrim else None)
    return use.unsaid("unsaid", "rubbed_down")


RUBBED_DOWN = Rule(
    id="rubbed-down",
    concerns=(),
    weight="must",
    silent="flag",
    may_stand=("phrase",),
    limits=(),
    source=Source("CL-20", "b", "ah116-iv"),
    judge=rubbed_down,
    examples=(
        Example("Straight four, taped and rubbed down.", "meets", "rubbed"),
        Example("Straight four, taped, not rubbed down yet.", "departs", "not-rubbed"),
        Example("Straight four, taped with 181A-P.", "unsaid", "unsaid"),
        Example("Straight four, closed with mastic.", None),
        Example("Straight four, stapled, not rubbed down yet.", "departs", "not-rubbed"),
    ),
)


def surface_clean(piece: Piece, around: Around) -> Outcome | None:
    return _of_the_tape(piece, _surface_clean(piece, around))


def _surface_clean(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    match use.said("surface_clean"):
        case True:
            return use.meets("clean")
        case False:
            return use.departs("not-clean")
    return use.unsaid("unsaid", "surface_clean")


SURFACE_CLEAN = Rule(
    id="surface-clean",
    concerns=(),
    weight="should",
    silent="count",
    may_stand=(),
    limits=(),
    source=Source("CL-15", "a*", "ah119-5-3"),
    judge=surface_clean,
    examples=(
        Example("Straight four, wiped clean and taped.", "meets", "clean"),
        Example("Straight four, taped.", "unsaid", "unsaid"),
        Example("Straight four, stapled, the facing is dusty.", "departs", "not-clean"),
        Example("Straight four, stapled, wiped clean.", None),
    ),
)


_ACT_OF = {"sides_stapled": "stapled", "sides_taped": "taped"}


def all_sides(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    counts = {name: use.said(name) for name in ("sides_stapled", "sides_taped")}
    counts = {name: sides for name, sides in counts.items() if sides is not None}
    limit = use.limit("all_sides")
    if piece.value("kind") in SEAMS:
        counts = {name: sides for name, sides in counts.items() if sides != 2}
    elif piece.value("kind") not in ROUND_ABOUT:
        counts = {name: sides for name, sides in counts.items() if sides == 3}
    if not counts:
        return None
    least = min(counts, key=lambda name: counts[name])
    if counts[least] >= limit and any(act not in counts and piece.value(_ACT_OF[act]) is False for act in _ACT_OF):
        return None  # four sides stapled and the tape not all there: its own rule tells that
    if counts[least] < limit:
        told = {"act": Word(least), "count": Word(f"count-{counts[least]}")}
        return use.departs("too-few", limit=limit, reckoned={"sides": counts[least], "limit": limit}, tells=told)
    return use.meets("four", limit=limit, text=None if len(counts) == 2 else f"four-{least}")


ALL_SIDES = Rule(
    id="all-sides",
    concerns=(),
    weight="must",
    silent="not due",
    may_stand=(),
    limits=("all_sides",),
    source=Source("EC-01, SJ-12", "c"),
    judge=all_sides,
    examples=(
        Example("End cap four, ten by eight, four sides stapled, four sides taped.", "meets", "four"),
        Example("End cap four, ten by eight, three sides taped.", "departs", "too-few"),
        Example("Transition four, stapled and taped both sides.", None),
        Example("End cap four, ten by eight, four sides stapled, not taped.", None),
    ),
)
