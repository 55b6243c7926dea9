"""Draw the cut sheet of a fitting: marks, set-backs, angles, slants, stock.

    logbook layout transition --from 20x14 --to 20x11 --flat bottom
    logbook layout elbow --size 16x10 --turn 90
"""

from __future__ import annotations

import argparse
import json
import sys
from fractions import Fraction
from pathlib import Path

from logbook.facts import SIDES
from logbook.measure import parse
from logbook.mistake import BAD, OK, Mistake
from logbook.wording import say

KINDS = ("transition", "offset", "elbow", "tee", "branch", "end_cap", "straight")


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("kind", choices=KINDS)
    parser.add_argument("--from", dest="large", metavar="WxH", help="larger size of a transition, inside, inches")
    parser.add_argument("--to", dest="small", metavar="WxH", help="smaller size of a transition")
    parser.add_argument("--size", metavar="WxH", help="inside size of any other fitting")
    parser.add_argument("--branch", metavar="WxH", help="branch opening of a tee or branch")
    parser.add_argument("--flat", default="", help="sides that stay flat: bottom,left")
    parser.add_argument("--set-back", metavar="IN", help="set-back to use, where it is longer than needed")
    parser.add_argument("--by", metavar="IN", help="shift of an offset")
    parser.add_argument("--over", metavar="IN", help="length between the bends of an offset")
    parser.add_argument("--axis", choices=("width", "height"), default="width", help="the way an offset shifts")
    parser.add_argument("--turn", default="90", metavar="DEG", help="turn of an elbow")
    parser.add_argument("--pieces", type=int, default=2, help="pieces of a mitred elbow")
    parser.add_argument("--throat", default="0", metavar="IN", help="throat radius; with --method board a radius elbow")
    parser.add_argument("--at", default="12", metavar="IN", help="from the end to the near edge of a branch")
    parser.add_argument("--entry", choices=("square", "45"), default="45", help="entry of a branch")
    parser.add_argument("--length", metavar="IN", help="length of a straight")
    parser.add_argument("--board", default="1", metavar="IN", help="board thickness")
    parser.add_argument("--method", choices=("section", "board"), default="section")
    parser.add_argument("--job", type=Path, help="job.toml whose slope limit holds")
    parser.add_argument("--language", choices=("en", "es"), default="en")
    out = parser.add_mutually_exclusive_group()
    out.add_argument("--svg", action="store_true", help="print the drawing")
    out.add_argument("--pdf", type=Path, metavar="FILE", help="write a half-sheet print")
    out.add_argument("--json", action="store_true")


def run(args: argparse.Namespace) -> int:
    from logbook.geometry import cut_drawing, cut_sheet

    sheet = _sheet(args)
    if isinstance(sheet, Mistake):
        for part in ("error", "cure"):
            print(say(f"{sheet.key}.{part}", args.language, **sheet.values), file=sys.stderr)
        return BAD
    if args.json:
        print(json.dumps(cut_sheet.to_json(sheet), ensure_ascii=False, indent=1))
    elif args.svg:
        print(cut_drawing.svg(sheet, args.language))
    elif args.pdf:
        from logbook.paper import cut_sheet as paper

        args.pdf.write_bytes(paper.pdf(sheet, args.language))
        print(args.pdf)
    else:
        from logbook.geometry.cut_text import lines

        print("\n".join(lines(sheet, args.language)))
    return OK


def _sheet(args):
    """The cut sheet that was asked for, or the first thing that was given wrongly."""
    from logbook import job as jobs
    from logbook.geometry import elbow, offset, take_off, transition

    job = jobs.load(args.job) if args.job else jobs.default()
    if isinstance(job, tuple):
        return job[0]
    given = {}
    for name, read in _READ.items():
        value = getattr(args, name)
        given[name] = None if value is None else read(value)
        if isinstance(given[name], Mistake):
            return given[name]
    missing = next((name for name in _NEEDS[args.kind] if given[name] is None), None)
    if missing:
        flag = {"large": "--from", "small": "--to"}.get(missing, f"--{missing}")
        return Mistake("layout.needs", "", {"kind": say(f"facts.kind.{args.kind}", args.language), "missing": flag})
    flat = tuple(side for side in args.flat.split(",") if side)
    if set(flat) - set(SIDES):
        return Mistake("layout.bad-side", "--flat", {"came": args.flat})
    rise, run = job.limit("slope")
    board, size = given["board"], given["size"]
    match args.kind:
        case "transition":
            wanted = transition.Wanted(
                given["large"], given["small"], flat, Fraction(rise, run), board, args.method, given["set_back"]
            )
            return transition.lay_out(wanted)
        case "offset":
            return offset.lay_out(size, given["by"], given["over"], args.axis, board)
        case "elbow" if args.method == "board":
            return elbow.radius(size, given["turn"], given["throat"], board)
        case "elbow":
            return elbow.mitred(size, given["turn"], args.pieces, given["throat"], board)
        case "tee" | "branch":
            return take_off.branch(args.kind, size, given["branch"], given["at"], args.entry, board)
        case "end_cap":
            return take_off.end_cap(size, board)
    return take_off.straight(size, given["length"], board)


def _length(text: str) -> Fraction | Mistake:
    value = parse(text)
    return Mistake("layout.bad-length", "", {"came": text}) if value is None else value


def _size(text: str) -> tuple[Fraction, Fraction] | Mistake:
    sides = [parse(side) for side in text.lower().split("x")]
    if len(sides) != 2 or None in sides or min(sides) <= 0:
        return Mistake("layout.bad-size", "", {"came": text})
    return sides[0], sides[1]


_READ = {
    "large": _size, "small": _size, "size": _size, "branch": _size, "set_back": _length, "by": _length,
    "over": _length, "turn": _length, "throat": _length, "at": _length, "length": _length, "board": _length,
}  # fmt: skip
_NEEDS = {
    "transition": ("large", "small"), "offset": ("size", "by", "over"), "elbow": ("size",),
    "tee": ("size", "branch"), "branch": ("size", "branch"), "end_cap": ("size",), "straight": ("size", "length"),
}  # fmt: skip
