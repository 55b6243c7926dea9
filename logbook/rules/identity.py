"""Which piece it is, and what size: without these nothing else can be told from the note."""

from __future__ import annotations

from logbook.findings import Example, Outcome, Rule, Source, Told
from logbook.piece import Piece
from logbook.rules.using import Use
from logbook.runs import Around

OWN = Source("", "c")
BRANCHED = ("tee", "branch", "wye")


def mark_said(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    bothers = None if around.scheduled or around.job.tags else "ask"
    doubt, *about = piece.mark_unclear or (None,)
    mark = use.said("mark")
    match doubt:
        case "no-mark":
            return use.unsaid("unsaid", "mark", silent=bothers)
        case "second-piece" | "several-pieces" | "no-piece":
            return use.unclear(doubt, "mark", tells={"mark": mark or ""})
        case "other-mark":
            return use.unclear(doubt, "mark", offers=tuple(dict.fromkeys((about[0], about[-1]))), tells={"one": about[0], "other": about[-1]})
        case str():
            return use.unclear("which-run", "run", offers=piece.mark_unclear, tells={"mark": mark or "", "runs": piece.mark_unclear})
    if mark is None:
        return use.unsaid("unsaid", "mark", silent=bothers)
    return use.meets("said", tells={"mark": mark})


MARK_SAID = Rule(
    id="mark-said",
    concerns=(),
    weight="must",
    silent="flag",
    may_stand=("tag",),
    limits=(),
    source=OWN,
    judge=mark_said,
    examples=(
        Example("Elbow twelve on run two, twelve by ten.", "meets", "said"),
        Example("Elbow, twelve by ten, vanes in, stapled and taped.", "unsaid", "unsaid"),
        Example("Codo doce, doce por diez.", "meets", "said", language="es"),
    ),
)


def sizes_said(piece: Piece, around: Around) -> Outcome | None:
    use = Use(piece, around)
    kind = use.said("kind")
    if kind is None:
        return use.unsaid("kind-unsaid", "kind")
    needed = ["inlet_size"]
    needed += ["outlet_size"] if kind == "transition" else []
    needed += ["branch_size"] if kind in BRANCHED else []
    missing = [name for name in needed if use.said(name) is None]
    if missing:
        return use.unsaid(f"{missing[0].removesuffix('_size')}-unsaid", missing[0])
    sizes = {"size": Told("inlet_size", piece.value("inlet_size"))}
    return use.meets("all-said", text=None if len(needed) > 1 else "one-said", tells=sizes)


SIZES_SAID = Rule(
    id="sizes-said",
    concerns=("transition", "offset", "elbow", "tee", "branch", "wye", "straight"),
    weight="must",
    silent="flag",
    may_stand=(),
    limits=(),
    source=Source("SJ-03", "a", "inside-sizes"),
    judge=sizes_said,
    kind_unsaid=True,
    examples=(
        Example("Transition five, twenty by fourteen to twenty by eleven.", "meets", "all-said"),
        Example("Transition five, inlet twenty by fourteen.", "unsaid", "outlet-unsaid"),
        Example("Tee nine, sixteen by twelve.", "unsaid", "branch-unsaid"),
    ),
)
