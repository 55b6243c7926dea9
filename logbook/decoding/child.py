"""A stranger's file is decoded in a child process that limits itself; its crash is an answer, not ours.

`run("logbook.decoding.samples:read", path, limits)` starts a fresh interpreter. The child imports the module
(with its libraries at the top, so that the parent never imports it), measures its own address space, allows itself `memory` bytes more, and only then opens the file. The function
gets the open file, the settings and `put` for bulk bytes, and returns a small mapping or a `Mistake`:

    def read(file: BinaryIO, put: Callable[[bytes], None], **settings) -> dict | Mistake

What comes back is `Answer(values, data)` with the mapping and all bytes that were put, or a `Mistake` of the
function's own, or one of `decoding.*` when the child hit a limit or died. PyAV or Pillow with their libraries
need 120 MB of address space at most once imported; 256 MB more holds a 12-megapixel picture and any sound
(measured), so this is the default.
"""

from __future__ import annotations

import io
import json
import os
import signal
import struct
import subprocess
import sys
from dataclasses import asdict, dataclass
from importlib import import_module
from pathlib import Path

from logbook.mistake import Mistake

PACKAGE_PARENT = Path(__file__).resolve().parents[2]
OUT_OF_MEMORY, FAILED = 3, 4  # exit codes of the child
HEAD = struct.Struct(">cI")  # kind of frame (d bulk bytes, j the closing JSON) and its length
STDERR_KEPT = 2000


@dataclass(frozen=True)
class Limits:
    """`memory` bytes of address space beyond the imports, `cpu` seconds, `wall` seconds, `files` it may open itself.

    None: the stranger's file is open already, and whatever it names, no other file and no socket can be opened.
    """

    memory: int = 256 * 2**20
    cpu: int = 30
    files: int = 0
    wall: float = 90.0


@dataclass(frozen=True)
class Answer:
    values: dict
    data: bytes


def run(task: str, path: Path | str, limits: Limits = Limits(), **settings: object) -> Answer | Mistake:
    """Do `module:function` on the file at `path`. OSError of the parent (no such file) is `decoding.no-file`."""
    where = Path(path).name
    order = json.dumps({"task": task, "limits": asdict(limits), "settings": settings})
    try:
        with open(path, "rb") as file:
            done = subprocess.run(
                [sys.executable, "-m", "logbook.decoding.child", order],
                stdin=file,
                capture_output=True,
                timeout=limits.wall,
                env={**os.environ, "PYTHONPATH": str(PACKAGE_PARENT), "OMP_NUM_THREADS": "1"},
                check=False,
            )
    except subprocess.TimeoutExpired:
        return Mistake("decoding.too-slow", where, {"name": where, "seconds": int(limits.wall)})
    except OSError as error:
        return Mistake("decoding.no-file", where, {"name": where, "why": error.strerror or str(error)})
    return _answer(done, where, limits)


def _answer(done: subprocess.CompletedProcess, where: str, limits: Limits) -> Answer | Mistake:
    if done.returncode in (-signal.SIGXCPU, -signal.SIGKILL):
        return Mistake("decoding.too-slow", where, {"name": where, "seconds": limits.cpu})
    if done.returncode == OUT_OF_MEMORY:
        return Mistake("decoding.too-big", where, {"name": where, "megabytes": limits.memory // 2**20})
    if done.returncode != 0:
        why = done.stderr.decode(errors="replace").strip().splitlines()[-1:] or [f"code {done.returncode}"]
        return Mistake("decoding.crashed", where, {"name": where, "why": why[0][:STDERR_KEPT]})
    data, closing, stream = [], None, io.BytesIO(done.stdout)
    while head := stream.read(HEAD.size):
        kind, length = HEAD.unpack(head)
        body = stream.read(length)
        if kind == b"d":
            data.append(body)
        else:
            closing = json.loads(body)
    if closing is None:
        return Mistake("decoding.crashed", where, {"name": where, "why": "no answer"})
    if "mistake" in closing:
        return Mistake(closing["mistake"], where, {"name": where, **closing["values"]})
    return Answer(closing["values"], b"".join(data))


# --- in the child


def _limit(limits: dict) -> None:
    """Hold this process to `limits`; where the system has no such limits (not Linux) the wall clock remains."""
    try:
        import resource
    except ImportError:
        return
    statm = Path("/proc/self/statm")
    if statm.exists():
        now = int(statm.read_text().split()[0]) * resource.getpagesize()
        resource.setrlimit(resource.RLIMIT_AS, (now + limits["memory"],) * 2)
    resource.setrlimit(resource.RLIMIT_CPU, (limits["cpu"], limits["cpu"] + 1))
    os.closerange(3, 256)
    resource.setrlimit(resource.RLIMIT_NOFILE, (3 + limits["files"],) * 2)
    resource.setrlimit(resource.RLIMIT_FSIZE, (0, 0))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))


def _serve(order: dict) -> int:
    name, function = order["task"].split(":")
    module = import_module(name)
    task, warm_up = getattr(module, function), getattr(module, "warm_up", None)
    if warm_up is not None:  # libraries import parts of themselves at first use, which the limits would not let them
        warm_up()
    answers = sys.stdout.buffer
    sys.stdout = sys.stderr  # nothing a library prints may get between the frames

    def put(kind: bytes, body: bytes) -> None:
        answers.write(HEAD.pack(kind, len(body)))
        answers.write(body)

    _limit(order["limits"])
    try:
        result = task(sys.stdin.buffer, lambda body: put(b"d", body), **order["settings"])
    except MemoryError:
        return OUT_OF_MEMORY
    except Exception as error:  # whatever a decoder raises: the file is not ours, the parent tells the person
        print(f"{type(error).__name__}: {error}", file=sys.stderr)
        return FAILED
    if isinstance(result, Mistake):
        closing = {"mistake": result.key, "values": dict(result.values)}
    else:
        closing = {"values": result}
    put(b"j", json.dumps(closing).encode())
    answers.flush()
    return 0


if __name__ == "__main__":
    sys.exit(_serve(json.loads(sys.argv[1])))
