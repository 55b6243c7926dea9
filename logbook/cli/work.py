"""Hear, read and judge what waits in a job folder, until stopped."""

from __future__ import annotations

import logging
import os
import signal
import sys
import threading
from functools import cache
from pathlib import Path

from logbook import __version__

ASKED = (signal.SIGTERM, signal.SIGINT)  # to stop


def configure(parser) -> None:
    parser.add_argument("--folder", type=Path, default=Path("uploads"), help="the job folder (default ./uploads)")
    parser.add_argument("--engine", default="whisper", choices=("whisper", "scripted"))
    parser.add_argument("--prepared", type=Path, help="folder of prepared transcripts (engine scripted)")
    parser.add_argument(
        "--second", default="base", choices=("base", "small", "medium", "none"),
        help="weights that hear a doubtful note once more when nothing waits; base listens by slower means (default), none: nobody does",
    )  # fmt: skip
    parser.add_argument("--beside", action="store_true", help="stop when standard input ends: a server that is killed takes its worker along")
    parser.add_argument("--once", action="store_true", help="stop when nothing waits any more")


def run(args) -> int:
    signal.pthread_sigmask(signal.SIG_BLOCK, ASKED)  # threads that libraries begin inherit it: a stop is for the thread that hears
    from logbook import running, store, worker
    from logbook.mistake import BAD, OK, Broken, Mistake
    from logbook.wording import say
    signal.pthread_sigmask(signal.SIG_UNBLOCK, ASKED)

    folder = store.open_folder(args.folder)
    if isinstance(folder, Mistake):
        if args.beside:  # its lines are the server's log, where every line is JSON; the server says the words itself
            running.begin("worker")
            running.tell("cannot-go-on", logging.ERROR, key=folder.key)
            return BAD
        for part in ("error", "cure"):
            print(say(f"{folder.key}.{part}", "en", **folder.values), file=sys.stderr)
        return BAD
    first = ears(args.engine, args.prepared)
    bench = worker.Bench(first, again=second_ears(args.second, args.engine, first))
    with folder:
        if args.once or sys.stderr.isatty():
            print(say("store.work.ready", "en", engine=args.engine), file=sys.stderr)
        if args.once:
            answered = 0
            while any(done := worker.work_once(folder, bench)):
                answered += done.notes
            print(say("store.work.heard", "en", count=answered), file=sys.stderr)
            return OK
    running.begin("worker")
    running.tell("starts", version=__version__, pid=os.getpid(), engine=args.engine)
    stop = threading.Event()
    for each in ASKED:
        signal.signal(each, lambda *_: _asked_to_stop(args.folder, bench, stop))
    if args.beside:
        threading.Thread(target=_end_with_the_server, daemon=True).start()
    try:
        worker.work(args.folder, bench, stop)
    except Broken as broken:
        running.tell("cannot-go-on", logging.ERROR, key=broken.mistake.key)
        raise
    running.tell("stops")
    return OK


def _asked_to_stop(folder: Path, bench, stop: threading.Event) -> None:
    """Once: finish what is being heard. Twice: put it back as if it had never been taken, and end now."""
    from logbook import running, worker

    if not stop.is_set():
        stop.set()
        running.tell("stopping", notes=len(bench.holds))
        return
    worker.put_back(folder, bench)
    running.tell("stops", notes=len(bench.holds))
    os._exit(0)


def _end_with_the_server() -> None:
    """Standard input ends when the server is gone. At once, in the middle of anything: what is written is written whole,
    and the next worker sees that the holder of a note is dead. Waiting here would let workers pile up behind one lock."""
    signal.pthread_sigmask(signal.SIG_BLOCK, ASKED)
    while os.read(0, 4096):  # not through sys.stdin: its lock would be asked for again when this process ends
        pass
    os._exit(0)


def second_ears(weights: str, name: str, first):
    """Who hears doubtful notes again: larger weights where they are asked for and can be had, else the first ears."""
    if weights == "none":
        return None
    if weights == "base" or name != "whisper":
        return first

    @cache
    def load():
        from logbook.hearing import engine
        from logbook.mistake import Mistake
        from logbook.wording import say

        made = engine.make(name, weights=weights)
        if isinstance(made, Mistake):
            print(say(f"{made.key}.error", "en", **made.values), file=sys.stderr)
            return first()
        return made

    return load


def ears(name: str, prepared: Path | None):
    """The engine of that name, loaded when the first sound waits. Broken: it cannot be loaded, with what to install."""
    from logbook.hearing import engine
    from logbook.mistake import Broken, Mistake

    @cache
    def load():
        made = engine.make(name, prepared)
        if isinstance(made, Mistake):
            raise Broken(made)
        return made

    return load
