"""Print tags for the fittings: the mark in large letters over a code that a photo can be told by.

    logbook tags tags.pdf --folder uploads --run 2
    logbook tags tags.pdf --mark B-12 --mark B-13
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from logbook.mistake import BAD, OK, Mistake
from logbook.wording import LANGUAGES, say


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", type=Path, metavar="FILE.pdf", help="the print to write")
    parser.add_argument("--folder", type=Path, default=Path("uploads"), metavar="DIR", help="the job folder, or a job.toml (default ./uploads)")
    parser.add_argument("--run", metavar="RUN", help="only the marks of one run of the schedule")
    parser.add_argument("--mark", action="append", default=[], metavar="MARK", help="only these marks, also such as no schedule names")
    parser.add_argument("--language", choices=LANGUAGES, default="en")


def run(args: argparse.Namespace) -> int:
    from logbook import job as jobs
    from logbook.photos import tags

    job = jobs.load(args.folder)
    if isinstance(job, tuple):
        return _refused(job)
    plan = job.revision()
    wanted = [] if plan is None else tags.of_schedule(plan.rows, args.run, args.mark)
    known = {tags.bare_mark(mark) for mark, _ in wanted}
    wanted += [(mark, args.run) for mark in args.mark if tags.bare_mark(mark) not in known]
    if not wanted:
        why = say(f"tags.no-marks.{'why-no-schedule' if plan is None else 'why-none-named'}", "en")
        return _refused((Mistake("tags.no-marks", "", {"why": why}),))
    from logbook.paper import tags as paper

    args.file.write_bytes(paper.pdf(job.id, job.name, wanted, args.language))
    print(say("tags.wrote", args.language, count=len(wanted), file=args.file))
    if not job.tags:
        print(say("tags.turn-on", args.language))
    return OK


def _refused(mistakes: tuple[Mistake, ...]) -> int:
    for one in mistakes:
        where = f"{one.where}: " if one.where else ""
        print(where + say(f"{one.key}.error", "en", **one.values), say(f"{one.key}.cure", "en", **one.values), sep="\n", file=sys.stderr)
    return BAD
