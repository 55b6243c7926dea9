"""build the demonstration job from shipped recordings and pictures, and serve it

Everything in it is invented and synthetic; the path it takes is the ordinary one, with real Whisper.
"""

from __future__ import annotations

import json
import sys
import time
from argparse import ArgumentParser
from pathlib import Path


def configure(parser) -> None:
    parser.add_argument("--folder", type=Path, default=Path("demo-job"), metavar="DIR", help="where it is built (default ./demo-job)")
    parser.add_argument("--no-serve", action="store_true", help="build it and stop")
    parser.add_argument("--json", action="store_true", help="print what was built as one JSON document")
    parser.add_argument("--engine", default="whisper", choices=("whisper", "scripted"), help="scripted: the shipped transcripts, without torch")
    parser.add_argument("--port", type=int, default=8460)


def run(args) -> int:
    from logbook import demo
    from logbook.mistake import OK, Mistake

    started = time.monotonic()
    folder = demo.lay(args.folder)
    if isinstance(folder, Mistake):
        return _refused(folder)
    with folder:
        document = _build(folder, args, started)
        if isinstance(document, Mistake):
            return _refused(document)
        if args.json:
            print(json.dumps(document, ensure_ascii=False, indent=1), flush=True)
        else:
            _tell(document)
        if args.no_serve:
            return OK
        out = sys.stderr if args.json else sys.stdout
        for one in demo.sign_ins(folder):
            print("  {role:<11} {name:<11} {password}".format(**one), file=out)
    from logbook.cli import serve

    prepared = demo.PREPARED if args.engine == "scripted" else None
    parser = ArgumentParser()
    serve.configure(parser)  # so that no option of the server can be missing
    told = ["--folder", str(args.folder), "--port", str(args.port), "--engine", args.engine]
    return serve.run(parser.parse_args([*told, *(("--prepared", str(prepared)) if prepared else ())]))


def _build(folder, args, started: float):
    from datetime import UTC, datetime

    from logbook import demo, store, worker
    from logbook.cli.work import ears
    from logbook.mistake import Mistake
    from logbook.paper.handing_over import hand_over
    from logbook.paper.making import make_day

    _say("taking")
    taken = demo.hand_in(folder)
    if isinstance(taken, Mistake):
        return taken
    load = ears(args.engine, demo.PREPARED if args.engine == "scripted" else None)
    bench, answered = worker.Bench(load), 0
    _say("hearing", count=_waiting(folder), engine=args.engine)
    while any(done := worker.work_once(folder, bench)):
        answered += done.notes
        _say("heard", count=answered, left=_waiting(folder), seconds=round(time.monotonic() - started))
    _say("paper")
    date = demo.day()["date"].isoformat()
    made = make_day(folder, date, ("en", "es"), datetime.now(UTC))
    if isinstance(made, Mistake):
        return made
    package = folder.path / "reports" / "handover.zip"
    handed = hand_over(folder, package, "en", datetime.now(UTC))
    if isinstance(handed, Mistake):
        return handed
    store.catch_up(folder, bench.reckoner)
    return demo.built(folder, load().name, made.files, package, time.monotonic() - started)


def _waiting(folder) -> int:
    return folder.db.execute("SELECT count(*) FROM notes WHERE state IN ('waiting', 'hearing')").fetchone()[0]


def _tell(document: dict) -> None:
    from logbook.wording import say

    print(say("demo.built", "en", **document))
    for one in document["flagged_pieces"]:
        print(say("demo.flagged-piece", "en", mark=one["mark"] or "?", run=one["run"] or "?", rules=", ".join(one["rules"])))
    print(*document["files"].values(), sep="\n")


def _say(key: str, **values) -> None:
    from logbook.wording import say

    print(say(f"demo.{key}", "en", **values), file=sys.stderr, flush=True)


def _refused(mistake) -> int:
    from logbook.mistake import BAD
    from logbook.wording import say

    for part in ("error", "cure"):
        print(say(f"{mistake.key}.{part}", "en", **mistake.values), file=sys.stderr)
    return BAD
