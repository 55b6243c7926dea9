"""The package on the disk: a BagIt 1.0 bag (RFC 8493) in a ZIP, written once from front to back.

Files are stored, not compressed, with one fixed time, in the order of their names: the same log gives the same
bytes. Sizes and digests are counted while the bytes pass; only names and digests stay in memory.
"""

from __future__ import annotations

import hashlib
import zipfile
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import BinaryIO

DECLARATION = b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"
ALGORITHMS = ("sha256", "sha512")
SIGNATURE = "bag-signature.json"  # stands outside the tag manifests, because it signs one of them
FIXED_TIME = (1980, 1, 1, 0, 0, 0)  # the earliest a ZIP can say
CHUNK = 1 << 20


@dataclass(frozen=True)
class Entry:
    """A file of the package: its place under `data/` and its bytes, from the disk, from memory, or made when asked."""

    path: str
    source: Path | bytes | Callable[[], bytes]

    def chunks(self) -> Iterator[bytes]:
        if isinstance(self.source, Path):
            with open(self.source, "rb") as file:
                while chunk := file.read(CHUNK):
                    yield chunk
        else:
            yield self.source if isinstance(self.source, bytes) else self.source()

    def size(self) -> int | None:
        return self.source.stat().st_size if isinstance(self.source, Path) else None


@dataclass
class Written:
    """What went in: digests by path, files and bytes of the payload."""

    digests: dict[str, dict[str, str]] = field(default_factory=dict)
    files: int = 0
    bytes: int = 0


def write(out: BinaryIO, base: str, entries: Iterable[Entry], about: Iterable[tuple[str, str]], tags: Iterable[Entry] = (),
          sign: Callable[[bytes], bytes] | None = None) -> Written:  # fmt: skip
    """Write the bag into `out` (seekable). `entries` come in the order of their paths; `about` are lines of
    bag-info.txt; `tags` further files beside it; `sign` turns the tag manifest into the bytes of the signature.
    """
    done = Written()
    tag_digests: dict[str, dict[str, str]] = {}
    with zipfile.ZipFile(out, "w", zipfile.ZIP_STORED, allowZip64=True, strict_timestamps=True) as archive:
        tag_digests["bagit.txt"], _ = _store(archive, f"{base}/bagit.txt", Entry("bagit.txt", DECLARATION))
        for entry in entries:
            path = f"data/{entry.path}"
            if path in done.digests:
                raise ValueError(f"{path} twice in one package")
            done.digests[path], size = _store(archive, f"{base}/{path}", entry)
            done.files += 1
            done.bytes += size
        lines = [*about, ("Payload-Oxum", f"{done.bytes}.{done.files}")]
        info = "".join(f"{name}: {' '.join(value.split())}\n" for name, value in lines).encode()
        for entry in (Entry("bag-info.txt", info), *tags, *(Entry(f"manifest-{a}.txt", _manifest(done.digests, a)) for a in ALGORITHMS)):
            tag_digests[entry.path], _ = _store(archive, f"{base}/{entry.path}", entry)
        for algorithm in ALGORITHMS:
            manifest = _manifest(tag_digests, algorithm)
            _store(archive, f"{base}/tagmanifest-{algorithm}.txt", Entry("", manifest))
            if algorithm == "sha256" and sign is not None:
                signature = sign(manifest)
        if sign is not None:
            _store(archive, f"{base}/{SIGNATURE}", Entry("", signature))
    return done


def _store(archive: zipfile.ZipFile, name: str, entry: Entry) -> tuple[dict[str, str], int]:
    counted = {algorithm: hashlib.new(algorithm) for algorithm in ALGORITHMS}
    info = zipfile.ZipInfo(name, FIXED_TIME)
    info.external_attr = 0o644 << 16
    info.create_system = 3
    size = entry.size()
    with archive.open(info, "w", force_zip64=size is not None and size >= zipfile.ZIP64_LIMIT) as file:
        total = 0
        for chunk in entry.chunks():
            for digest in counted.values():
                digest.update(chunk)
            file.write(chunk)
            total += len(chunk)
    return {algorithm: digest.hexdigest() for algorithm, digest in counted.items()}, total


def _manifest(digests: dict[str, dict[str, str]], algorithm: str) -> bytes:
    """Two blanks between digest and path: `sha256sum -c` reads it too."""
    return "".join(f"{found[algorithm]}  {encoded(path)}\n" for path, found in sorted(digests.items())).encode()


def encoded(path: str) -> str:
    """RFC 8493 section 2.1.3: only CR, LF and % are written in percent form."""
    return path.replace("%", "%25").replace("\n", "%0A").replace("\r", "%0D")


def decoded(path: str) -> str:
    for written, sign in (("%0D", "\r"), ("%0d", "\r"), ("%0A", "\n"), ("%0a", "\n"), ("%25", "%")):
        path = path.replace(written, sign)
    return path
