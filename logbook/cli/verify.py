"""check that a closeout package is whole, from the package alone

Exit code 0 whole, 1 not whole (every problem listed), 2 not a package. Nothing but the file is needed.
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("package", metavar="OUT.zip", help="the package as it was handed over")
    parser.add_argument("--key", metavar="FILE", help="the firm's public key (PEM): the package must be signed with it")
    parser.add_argument("--language", choices=("en", "es"), default="en", help="language of the answer")
    parser.add_argument("--json", action="store_true", help="print one JSON document on standard output")


def run(args: argparse.Namespace) -> int:
    from logbook.handover import signing
    from logbook.handover.verify import NOT_A_PACKAGE, NOT_WHOLE, verify
    from logbook.mistake import BAD, Mistake
    from logbook.wording import say

    def told(mistake: Mistake, part: str) -> str:
        return say(f"{mistake.key}.{part}", args.language, **mistake.values)

    key = signing.public_key(Path(args.key)) if args.key else None
    if isinstance(key, Mistake):
        print(told(key, "error"), told(key, "cure"), sep="\n", file=sys.stderr)
        return BAD
    verdict = verify(Path(args.package), key)
    if args.json:
        print(json.dumps(document(verdict, told), ensure_ascii=False, indent=1))
        return verdict.status
    if verdict.status == NOT_A_PACKAGE:
        print(say("verify.not-a-package", args.language), *(f"{told(one, 'error')} {told(one, 'cure')}" for one in verdict.problems), sep="\n", file=sys.stderr)
        return verdict.status
    if verdict.status == NOT_WHOLE:
        print(say("verify.not-whole", args.language, number=len(verdict.problems)))
        print(*(f"- {told(one, 'error')}" for one in verdict.problems), sep="\n")
        print(*dict.fromkeys(told(one, "cure") for one in verdict.problems), sep="\n")
    else:
        print(say("verify.whole", args.language, files=verdict.files, bytes=verdict.bytes, journal=(verdict.journal or "-")[:16]))
        if key is not None and verdict.signed_by:
            print(say("verify.signed-by", args.language, key=verdict.signed_by[:16]))
    for remark in verdict.remarks:
        print(told(remark, "error"), told(remark, "cure"))
    return verdict.status


def document(verdict, told) -> dict:
    """The JSON of a check: `status` is the exit code."""
    lists = {
        name: [{"problem": one.key.removeprefix("verify."), "where": one.where, "says": told(one, "error"), "cure": told(one, "cure")} for one in found]
        for name, found in (("problems", verdict.problems), ("remarks", verdict.remarks))
    }
    return {
        "status": verdict.status, "whole": verdict.status == 0, **lists, "files": verdict.files, "bytes": verdict.bytes,
        "journal": verdict.journal, "signed_by": verdict.signed_by, "about": verdict.about,
    }  # fmt: skip
