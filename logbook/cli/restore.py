"""Bring a copy back into a new folder and prove it by its digests and its journal."""

from __future__ import annotations

from pathlib import Path


def configure(parser) -> None:
    parser.add_argument("copy", type=Path, metavar="COPY", help="a folder made by logbook backup")
    parser.add_argument("--folder", type=Path, required=True, metavar="NEW", help="a new or empty folder; never a job that is there")
    parser.add_argument("--language", choices=("en", "es"), default="en")


def run(args) -> int:
    from logbook.cli.backup import refused
    from logbook.mistake import FLAGGED, OK, Mistake
    from logbook.store import copying
    from logbook.wording import say

    made = copying.restore(args.copy, args.folder)
    if isinstance(made, Mistake):
        return refused(made, args.language)
    key = "keeping.restored-lacking" if made.problems else "store.backup.restored"
    print(say(key, args.language, notes=made.notes, files=made.files, seq=made.seq, hash=made.hash, count=len(made.problems)))
    for one in made.problems:
        refused(one, args.language)
    return FLAGGED if made.problems else OK
