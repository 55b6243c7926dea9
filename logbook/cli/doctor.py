"""Check a job folder from its pages to its paper, and mend what is safe to mend."""

from __future__ import annotations

import json
from pathlib import Path


def configure(parser) -> None:
    parser.add_argument("--folder", type=Path, default=Path("uploads"), help="the job folder (default ./uploads)")
    parser.add_argument("--only-look", action="store_true", help="mend nothing")
    parser.add_argument("--json", action="store_true")
    parser.add_argument("--language", choices=("en", "es"), default="en")


def run(args) -> int:
    """0 whole (after mending), 1 problems, 2 no job folder or one of a newer version."""
    from logbook.cli.backup import refused
    from logbook.mistake import FLAGGED, OK, Mistake
    from logbook.store import doctoring
    from logbook.wording import say

    found = doctoring.examine(args.folder, mend=not args.only_look)
    if isinstance(found, Mistake):
        return refused(found, args.language)
    mended = [say(key, args.language, **values) for key, values in found.mended]
    if args.json:
        print(json.dumps(document(found, mended, args.language), ensure_ascii=False, indent=1))
        return FLAGGED if found.problems else OK
    for what in mended:
        print(say("store.doctor.mended", args.language, what=what))
    for one in (*found.problems, *found.remarks):
        print(f"{say(f'{one.key}.error', args.language, **one.values)}\n    {say(f'{one.key}.cure', args.language, **one.values)}")
    for seq, at in found.compared.erased:
        print(say("store.doctor.erased", args.language, seq=seq, at=at))
    told = {"notes": found.notes, "files": found.files, "rows": found.rows, "hash": found.hash}
    if found.problems:
        print(say("keeping.not-whole", args.language, count=len(found.problems), **told))
    else:
        print(say("store.doctor.whole", args.language, **told))
    print(say("keeping.compared", args.language, rows=found.compared.rows, of=found.compared.of))
    return FLAGGED if found.problems else OK


def document(found, mended: list[str], language: str) -> dict:
    from logbook.wording import say

    def told(one) -> dict:
        return {"key": one.key, "where": one.where} | {part: say(f"{one.key}.{part}", language, **one.values) for part in ("error", "cure")}

    return {
        "folder": str(found.path),
        "whole": not found.problems,
        "notes": found.notes,
        "files": found.files,
        "journal": {"seq": found.rows, "hash": found.hash, "compared": found.compared.rows},
        "problems": [told(one) for one in found.problems],
        "remarks": [told(one) for one in found.remarks],
        "mended": mended,
    }
