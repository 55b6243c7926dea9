"""One hand-in in a process of its own, so that what it asks of the disk can be read from outside: FOLDER [LIMIT]."""

import resource
import sys

from handing import note, picture, tone

from logbook import store

folder = store.open_folder(sys.argv[1])
if len(sys.argv) > 2:  # no file may grow beyond this: what a full disk looks like without one
    import signal

    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (int(sys.argv[2]), int(sys.argv[2])))
print("begin", flush=True)
got = store.receive(folder, note("11111111-1111-4111-8111-111111111111", audio=(tone(300),), photos=(picture(9),)))
print("acknowledged" if hasattr(got, "received_at") else got.key, flush=True)
