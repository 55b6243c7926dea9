"""The command `logbook`: one file a verb, imported only when it is asked for.

Every verb module has `configure(parser)` and `run(args) -> exit code`; the first line of its docstring is its
help. Exit codes: 0 nothing flagged, 1 something flagged, 2 bad input or machinery.
"""

from __future__ import annotations

import argparse
import ast
import sys
import traceback
from importlib import import_module
from importlib.resources import files

from logbook import __version__
from logbook.mistake import BAD, Broken, Mistake

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
        return _told(broken.mistake)
    except BrokenPipeError:
        return BAD
    except OSError as error:
        return _told(Mistake("store.no-use", values={"file": error.filename or "-", "why": error.strerror or str(error)}))
    except Exception:  # a fault of ours: told whole, and never with the code that says "something flagged"
        traceback.print_exc()
        return BAD


def _told(mistake: Mistake) -> int:
    from logbook.wording import say

    print(*(say(f"{mistake.key}.{part}", "en", **mistake.values) for part in ("error", "cure")), sep="\n", file=sys.stderr)
    return BAD
