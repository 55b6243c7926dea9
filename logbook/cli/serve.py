"""Serve a job folder: the pages, the phone, and one hearing worker beside them."""

from __future__ import annotations

import errno
import gc
import logging
import os
import signal
import subprocess
import sys
import threading
from pathlib import Path

WORKER_FINISHES, WORKER_PUTS_BACK = 30, 10  # seconds; together with open requests a stop takes less than a minute


def configure(parser) -> None:
    parser.add_argument("--folder", type=Path, default=Path("uploads"), help="the job folder (default ./uploads), made if missing")
    parser.add_argument("--host", default="127.0.0.1", help="address to listen on; another than this machine's own needs --tls")
    parser.add_argument("--port", type=int, default=8460)
    parser.add_argument("--name", help="the name phones reach this machine by; stands in the certificate and the QR code, and is remembered")
    parser.add_argument("--tls", action="store_true", help="speak HTTPS with a certificate of this machine's own authority")
    parser.add_argument("--behind-proxy", action="store_true", help="a proxy in front of this server speaks HTTPS")
    parser.add_argument("--engine", default="whisper", choices=("whisper", "scripted"))
    parser.add_argument("--prepared", type=Path, help="folder of prepared transcripts (engine scripted)")
    parser.add_argument(
        "--second", default="base", choices=("base", "small", "medium", "none"),
        help="weights that hear a doubtful note once more when nothing waits (default base, by slower means)",
    )  # fmt: skip


def run(args) -> int:
    from logbook import store
    from logbook.mistake import Mistake
    from logbook.store.folder import hold

    if args.host not in ("127.0.0.1", "::1", "localhost") and not args.tls and not args.behind_proxy:
        return _refused(Mistake("store.needs-tls", "--host", {"host": args.host}))
    folder = store.open_folder(args.folder, create=True)
    held = folder if isinstance(folder, Mistake) else hold(folder.path)
    if isinstance(held, Mistake):
        return _refused(held)
    folder.close()
    return serve(args)


def _refused(mistake) -> int:
    from logbook.mistake import BAD
    from logbook.wording import say

    for part in ("error", "cure"):
        print(say(f"{mistake.key}.{part}", "en", **mistake.values), file=sys.stderr)
    return BAD


def serve(args) -> int:
    """Serves until it is told to stop; the worker is a process of its own and is started again when it ends."""
    from logbook import __version__, running
    from logbook.mistake import OK, Mistake
    from logbook.settings import Settings, state_of
    from logbook.web import authority, create_app, first_link
    from logbook.web.listening import listen
    from logbook.web.naming import addresses, name_of
    from logbook.web.relay import Relay
    from logbook.wording import say

    secure, state = args.tls or args.behind_proxy, state_of(args.folder)
    name = name_of(args.name, args.host, state) if secure else args.name or ("localhost" if args.host == "127.0.0.1" else args.host)
    if isinstance(name, Mistake):
        return _refused(name)
    scheme = "https" if secure else "http"
    settings = Settings(args.folder.resolve(), state, f"{scheme}://{name}:{args.port}", secure)
    app, relay = create_app(settings), None
    gc.collect()
    gc.freeze()  # what lives as long as the server is not gone through for rubbish again: 50 ms now and then in the middle of a page
    try:
        if args.tls:
            chain, key = authority.ensure(settings.state, tuple(dict.fromkeys((name, "localhost", "127.0.0.1", *addresses()))))
            server = listen(app, "127.0.0.1", 0, settings.upload_limit)
            relay = Relay(chain, key, args.host, args.port, server.effective_port)
            server.application = relay.told(app)
            relay.start()
        else:
            server = listen(app, args.host, args.port, settings.upload_limit, behind_proxy=args.behind_proxy)
    except OSError as error:
        if error.errno not in (errno.EADDRINUSE, errno.EADDRNOTAVAIL, errno.EACCES):
            raise
        return _refused(Mistake("store.no-port", "--port", {"host": args.host, "port": args.port, "why": os.strerror(error.errno).lower()}))
    running.begin("server")
    stop = threading.Event()
    worker = threading.Thread(target=_keep_a_worker, args=(args, stop), daemon=True)
    signal.signal(signal.SIGTERM, _stop)
    try:
        worker.start()
        running.tell("starts", version=__version__, pid=os.getpid(), secure=secure)
        print(say("store.serve.ready", "en", folder=args.folder, address=settings.address), flush=True)
        link = first_link(settings)
        if link:  # on standard output alone: it is a key, and no key stands in the log
            print(say("store.serve.first", "en", link=link), flush=True)
        server.run()
    except KeyboardInterrupt:
        pass
    finally:
        if sys.stderr.isatty():
            print(say("store.serve.stopping", "en"), file=sys.stderr)
        running.tell("stopping")
        stop.set()
        if relay:
            relay.stop()
        server.close()
        worker.join()
        running.tell("stops")
    return OK


def _stop(*_) -> None:
    """Asked to stop: the requests that run are answered, then this ends; asking again changes nothing."""
    signal.signal(signal.SIGTERM, signal.SIG_IGN)
    raise KeyboardInterrupt


def _keep_a_worker(args, stop: threading.Event) -> None:
    from logbook import running

    command = [sys.executable, "-m", "logbook", "work", "--folder", str(args.folder), "--engine", args.engine, "--beside"]
    command += ["--second", args.second]
    command += ["--prepared", str(args.prepared)] if args.prepared else []
    while not stop.is_set():
        process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=sys.stderr)
        while process.poll() is None and not stop.wait(0.2):
            pass
        if process.poll() is None:
            _end(process)
            return
        running.tell("worker-ended", logging.WARNING, code=process.returncode)
        stop.wait(2.0)


def _end(process: subprocess.Popen) -> None:
    """Asks the worker to finish what it hears; then to put it back; then ends it."""
    for wait in (WORKER_FINISHES, WORKER_PUTS_BACK):
        process.terminate()
        try:
            process.wait(wait)
            return
        except subprocess.TimeoutExpired:
            continue
    process.kill()
    process.wait()
