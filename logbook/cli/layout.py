"""Draw the cut sheet of a fitting: marks, set-backs, angles, slants, stock.

    logbook layout transition --from 20x14 --to 20x11 --flat bottom
    logbook layout elbow --size 16x10 --turn 90
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

from logbook.mistake import BAD, OK, Mistake

KINDS = ("transition", "offset", "elbow", "tee", "branch", "end_cap", "straight")
_NAMED = (
    "large", "small", "size", "branch", "flat", "set_back", "air", "by", "over", "axis", "turn", "pieces", "throat", "at", "entry", "length", "board", "method",
)  # fmt: skip


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("kind", choices=KINDS)
    parser.add_argument("--from", dest="large", metavar="WxH", help="larger size of a transition, inside, inches")
    parser.add_argument("--to", dest="small", metavar="WxH", help="smaller size of a transition")
    parser.add_argument("--size", metavar="WxH", help="inside size of any other fitting")
    parser.add_argument("--branch", metavar="WxH", help="branch opening of a tee or branch")
    parser.add_argument("--flat", help="sides that stay flat: bottom,left")
    parser.add_argument("--set-back", metavar="IN", help="set-back to use, where it is longer than needed")
    parser.add_argument("--air", choices=("narrows", "widens"), help="whether a transition narrows (default) or widens along the air")
    parser.add_argument("--by", metavar="IN", help="shift of an offset")
    parser.add_argument("--over", metavar="IN", help="length between the bends of an offset")
    parser.add_argument("--axis", choices=("width", "height"), help="the way an offset shifts (default width)")
    parser.add_argument("--turn", metavar="DEG", help="turn of an elbow (default 90)")
    parser.add_argument("--pieces", metavar="N", help="pieces of a mitred elbow (default 2)")
    parser.add_argument("--throat", metavar="IN", help="throat radius; with --method board a radius elbow")
    parser.add_argument("--at", metavar="IN", help="from the end to the near edge of a branch (default 12)")
    parser.add_argument("--entry", choices=("square", "45"), help="entry of a branch (default 45)")
    parser.add_argument("--length", metavar="IN", help="length of a straight")
    parser.add_argument("--board", metavar="IN", help="board thickness (default 1)")
    parser.add_argument("--method", choices=("section", "board"), help="from a section (default) or from flat board")
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
        from logbook.geometry.cut_text import refusal

        error, cure = refusal(sheet, args.language)
        flags = [_flag(name) for name in sheet.where.split(", ") if name in _NAMED]
        print(error + (f" ({', '.join(flags)})" if flags else ""), cure, sep="\n", file=sys.stderr)
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
    from logbook.geometry import asked

    job = jobs.load(args.job) if args.job else jobs.default()
    if isinstance(job, tuple):
        return job[0]
    given = {name: str(getattr(args, name)) for name in _NAMED if getattr(args, name) is not None}
    return asked.lay_out(args.kind, given, job.limit)


def _flag(field: str) -> str:
    return {"large": "--from", "small": "--to"}.get(field, f"--{field.replace('_', '-')}")
