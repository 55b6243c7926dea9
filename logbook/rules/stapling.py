"""Fastening before the tape: staples through the flap, or tabs of tape where there is no flap."""

from __future__ import annotations

from collections.abc import Callable

from logbook.findings import Example, Outcome, Rule, Source
from logbook.piece import Piece
from logbook.rules.using import Use
from logbook.runs import Around

UMC = Source("CL-01, CL-07", "a", "umc-6-5")


def fastened(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    tabs, flap, stapled = use.peek("cross_tabs"), use.peek("staple_flap"), use.said("stapled")
    if stapled and flap is False and not tabs:
        use.said("staple_flap")
        use.said("cross_tabs")
        return use.departs("no-flap")
    if stapled:
        return use.meets("stapled")
    if tabs:
        use.said("cross_tabs")
        if flap and stapled is False:
            use.said("staple_flap")
            return use.departs("flap-not-stapled")
        return use.meets("cross-tabs")
    if stapled is False and not (flap is False and tabs is None):
        return use.departs("not-stapled")
    if flap is False:
        use.said("staple_flap")
        return use.departs("no-tabs") if use.said("cross_tabs") is False else use.unsaid("tabs-unsaid", "cross_tabs")
    return use.unsaid("unsaid", "stapled")


FASTENED = Rule(
    id="fastened",
    concerns=("straight", "transition", "offset", "elbow", "tee", "branch", "wye", "end_cap", "plenum"),
    weight="must",
    silent="flag",
    may_stand=("phrase",),
    limits=(),
    source=UMC,
    judge=fastened,
    kind_unsaid=True,
    examples=(
        Example("Straight four, eighteen by twelve, stapled every two inches.", "meets", "stapled"),
        Example("Straight four, eighteen by twelve, no flap, so cross tabs eight inches every twelve.", "meets", "cross-tabs"),
        Example("Straight four, eighteen by twelve, not stapled yet.", "departs", "not-stapled"),
        Example("Straight four, eighteen by twelve, taped.", "unsaid", "unsaid"),
    ),
)


def _done_or_departs(piece: Piece, around: Around, act: str, names: tuple[str, ...], judge: Callable[[Use], Outcome | None]):
    """A rule about how an act was done is due where the act was said. Where nobody said the act but somebody said of
    this piece how it was done (hearing often loses the ending of a word), it is due only if that departs."""
    use = Use(piece, around)
    if use.said(act):
        return judge(use)
    if piece.value(act) is False or not any(use.peek(name) is not None for name in names):
        return None
    found = judge(use)
    return found if found is not None and found.verdict == "departs" else None


def staple_spacing(piece: Piece, around: Around) -> Outcome | None:
    return _done_or_departs(piece, around, "stapled", ("staple_spacing",), _staple_spacing)


def _staple_spacing(use: Use) -> Outcome | None:
    limit, spacing = use.limit("staple_spacing"), use.known("staple_spacing")
    if spacing is None:
        return use.unsaid("unsaid", "staple_spacing", limit=limit)
    reckoned = {"spacing_in": spacing, "limit_in": limit}
    answer = use.meets if spacing <= limit else use.departs
    case = "close-enough" if spacing <= limit else "too-far-apart"
    return answer(case, limit=limit, reckoned=reckoned, stated_by="staple_spacing")


STAPLE_SPACING = Rule(
    id="staple-spacing",
    concerns=(),
    weight="must",
    silent="ask",
    may_stand=("shift", "phrase"),
    limits=("staple_spacing",),
    source=Source("CL-01", "a", "umc-6-5"),
    judge=staple_spacing,
    examples=(
        Example("Straight four, stapled every two inches.", "meets", "close-enough"),
        Example("Straight four, stapled every two and a quarter inches.", "departs", "too-far-apart"),
        Example("Straight four, stapled every three.", "departs", "too-far-apart"),
        Example("Straight four, staple every three, taped.", "departs", "too-far-apart"),
        Example("Straight four, stapled about every two inches.", "unclear", "hedged-at-the-limit"),
        Example("Straight four, stapled.", "unsaid", "unsaid"),
        Example("Tramo recto cuatro, engrapado cada dos pulgadas.", "meets", "close-enough", language="es"),
    ),
)


def staple_leg(piece: Piece, around: Around) -> Outcome | None:
    return _done_or_departs(piece, around, "stapled", ("staple_leg",), _staple_leg)


def _staple_leg(use: Use) -> Outcome | None:
    leg, board = use.known("staple_leg"), use.known("board_thickness")
    thick = board is not None and board > 1
    limit = use.limit("staple_leg_thick") if thick else use.limit("staple_leg")
    if limit is None:
        return None
    if leg is None:
        return use.unsaid("unsaid", "staple_leg", limit=limit)
    reckoned = {"leg_in": leg, "limit_in": limit}
    if leg < limit:
        return use.departs("too-short", limit=limit, reckoned=reckoned, stated_by="staple_leg")
    if board is None:
        return use.unsaid("board-unsaid", "board_thickness", limit=limit, reckoned=reckoned)
    told = {"board": board}
    return use.meets("long-enough", limit=limit, reckoned=reckoned, stated_by="staple_leg", tells=told)


STAPLE_LEG = Rule(
    id="staple-leg",
    concerns=(),
    weight="should",
    silent="count",
    may_stand=("job", "shift"),
    limits=("staple_leg", "staple_leg_thick"),
    source=Source("CL-03", "b", "ah116-iv"),
    judge=staple_leg,
    examples=(
        Example("Straight four, one-inch board, stapled with half-inch staples.", "meets", "long-enough"),
        Example("Straight four, one-inch board, stapled with three-eighths staples.", "departs", "too-short"),
        Example("Straight four, stapled.", "unsaid", "unsaid"),
    ),
)


def staple_clinch(piece: Piece, around: Around) -> Outcome | None:
    return _done_or_departs(piece, around, "stapled", ("staple_clinch",), _staple_clinch)


def _staple_clinch(use: Use) -> Outcome | None:
    limit, clinch = use.limit("staple_clinch"), use.known("staple_clinch")
    if clinch is None:
        return use.unsaid("unsaid", "staple_clinch", limit=limit)
    if clinch != limit:
        return use.departs(clinch, limit=limit, text=f"{clinch}-wrong", stated_by="staple_clinch")
    return use.meets(clinch, limit=limit, stated_by="staple_clinch")


STAPLE_CLINCH = Rule(
    id="staple-clinch",
    concerns=(),
    weight="should",
    silent="count",
    may_stand=("job", "shift"),
    limits=("staple_clinch",),
    source=Source("CL-01", "a", "umc-6-5"),
    judge=staple_clinch,
    examples=(
        Example("Straight four, stapled, staples clinched outward.", "meets", "outward"),
        Example("Straight four, stapled, staples clinched inward.", "departs", "inward"),
        Example("Straight four, stapled.", "unsaid", "unsaid"),
    ),
)


def cross_tabs(piece: Piece, around: Around) -> Outcome | None:
    return _done_or_departs(piece, around, "cross_tabs", ("cross_tab_length", "cross_tab_spacing"), _cross_tabs)


def _cross_tabs(use: Use) -> Outcome | None:
    least, most = use.limit("cross_tab_length"), use.limit("cross_tab_spacing")
    length, spacing = use.known("cross_tab_length"), use.known("cross_tab_spacing")
    reckoned = {"least_length_in": least, "most_spacing_in": most}
    reckoned |= {} if length is None else {"length_in": length}
    reckoned |= {} if spacing is None else {"spacing_in": spacing}
    both = {"limit": [least, most], "reckoned": reckoned}
    if length is not None and length < least:
        return use.departs("too-short", stated_by="cross_tab_length", **both)
    if spacing is not None and spacing > most:
        return use.departs("too-far-apart", stated_by="cross_tab_spacing", **both)
    if length is None:
        return use.unsaid("length-unsaid", "cross_tab_length", **both)
    if spacing is None:
        return use.unsaid("spacing-unsaid", "cross_tab_spacing", **both)
    return use.meets("long-and-close", stated_by="cross_tab_length", **both)


CROSS_TABS = Rule(
    id="cross-tabs",
    concerns=(),
    weight="must",
    silent="ask",
    may_stand=("shift", "phrase"),
    limits=("cross_tab_length", "cross_tab_spacing"),
    source=Source("CL-07", "a", "umc-6-5-figure"),
    judge=cross_tabs,
    examples=(
        Example("Straight four, no flap, cross tabs eight inches long every twelve inches.", "meets", "long-and-close"),
        Example("Straight four, no flap, cross tabs six inches long every twelve inches.", "departs", "too-short"),
        Example("Straight four, no flap, cross tabs eight inches long every sixteen inches.", "departs", "too-far-apart"),
        Example("Straight four, no flap, cross tabs.", "unsaid", "length-unsaid"),
    ),
)
