"""Copy a job while it is used: the log and every file that the copy does not have yet."""

from __future__ import annotations

import sys
from pathlib import Path


def configure(parser) -> None:
    parser.add_argument("out", type=Path, metavar="OUT_FOLDER", help="a new folder, or an earlier copy of the same job; best on another disk")
    parser.add_argument("--folder", type=Path, default=Path("uploads"), help="the job folder (default ./uploads)")
    parser.add_argument("--prove", action="store_true", help="read the whole copy again and compare every digest")
    parser.add_argument("--language", choices=("en", "es"), default="en")


def run(args) -> int:
    from logbook import store
    from logbook.mistake import FLAGGED, OK, Mistake
    from logbook.store import copying
    from logbook.wording import say

    folder = store.open_folder(args.folder)
    if isinstance(folder, Mistake):
        return refused(folder, args.language)
    with folder:
        made = copying.back_up(folder, args.out, prove=args.prove)
    if isinstance(made, Mistake):
        return refused(made, args.language)
    proven = copying.prove(args.out) if args.prove else None
    if isinstance(proven, Mistake):
        return refused(proven, args.language)
    told = {"files": made.files, "new": made.new, "bytes": f"{made.bytes / 1_000_000:.1f}", "seq": made.seq, "hash": made.hash}
    print(say("store.backup.done", args.language, **told))
    if proven is not None:
        print(say("keeping.proven", args.language))
    for one in made.problems:
        refused(one, args.language)
    return FLAGGED if made.problems else OK


def refused(mistake, language: str) -> int:
    from logbook.mistake import BAD
    from logbook.wording import say

    for part in ("error", "cure"):
        print(say(f"{mistake.key}.{part}", language, **mistake.values), file=sys.stderr)
    return BAD
