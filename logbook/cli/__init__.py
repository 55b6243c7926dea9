"""The command `logbook`: one file a verb, imported only when it is asked for.

Every verb module has `configure(parser)` and `run(args) -> exit code`; the first line of its docstring is its
help. Exit codes: 0 nothing flagged, 1 something flagged, 2 bad input or machinery.
"""

from __future__ import annotations

import argparse
import ast
import sys
from importlib import import_module
from importlib.resources import files

from logbook import __version__
from logbook.mistake import BAD, Broken

VERBS = (
    "demo", "serve", "work", "take", "log", "hear", "read", "check", "layout", "rules", "tags", "day", "handover", "verify",
    "backup", "restore", "doctor", "people",
)  # fmt: skip


def _first_line(verb: str) -> str:
    """The help of a verb, read from its source so that listing the verbs imports none of them."""
    source = files("logbook.cli").joinpath(f"{verb}.py").read_text(encoding="utf-8")
    return ast.get_docstring(ast.parse(source)).splitlines()[0]


def main(argv: list[str] | None = None) -> int:
    argv = sys.argv[1:] if argv is None else argv
    parser = argparse.ArgumentParser(prog="logbook", description="A job-site voice and photo logbook with fitting QA.")
    parser.add_argument("--version", action="version", version=f"logbook {__version__}")
    verbs = parser.add_subparsers(dest="verb", metavar="VERB", required=True)
    asked = next((word for word in argv if word in VERBS), None)
    for verb in VERBS:
        one = verbs.add_parser(verb, help=_first_line(verb), description=_first_line(verb))
        if verb == asked:
            import_module(f"logbook.cli.{verb}").configure(one)
    args = parser.parse_args(argv)
    try:
        return import_module(f"logbook.cli.{args.verb}").run(args)
    except Broken as broken:
        from logbook.wording import say

        key, values = broken.mistake.key, broken.mistake.values
        print(say(f"{key}.error", "en", **values), say(f"{key}.cure", "en", **values), sep="\n", file=sys.stderr)
        return BAD
    except BrokenPipeError:
        return BAD
