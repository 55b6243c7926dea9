"""A ZIP read with suspicion: names that leave the folder, twins, links, bombs, bytes that belong to nobody.

Written from the file format (PKWARE APPNOTE 6.3.10); reads nothing before the directory has been looked through,
and never more of a file than the directory says.
"""

from __future__ import annotations

import stat
import struct
import unicodedata
import zipfile
from collections.abc import Iterator
from pathlib import Path

from logbook.handover.bag import CHUNK, FIXED_TIME
from logbook.mistake import Mistake

MOST_FILES = 1_000_000
MOST_GROWTH = 100  # times what a compressed file takes; ours are stored
MOST_LINE = 16 << 20
_LOCAL = struct.Struct("<4s5H3L2H")


def unsafe(name: str) -> bool:
    """A name that could leave its folder, or that another system reads as another name."""
    parts = name.split("/")
    return (
        name.startswith(("/", "~")) or "\\" in name or ":" in parts[0] or any(part in ("", ".", "..") for part in parts)
        # plain letters are the common case, and a package has thousands of names
        or not (name.isascii() and name.isprintable()) and any(unicodedata.category(sign) in ("Cc", "Cf", "Cs", "Zl", "Zp") for sign in name)
    )  # fmt: skip


class Archive:
    """Opens the directory of a ZIP. Raises `zipfile.BadZipFile` or `ValueError` where there is none."""

    def __init__(self, path: Path):
        self.size = path.stat().st_size
        self._zip = zipfile.ZipFile(path)
        self._entries = [info for info in self._zip.infolist() if not info.filename.endswith("/")]
        self._folders = [info for info in self._zip.infolist() if info.filename.endswith("/")]  # `is_dir` falls over an empty name
        self._by_name = {info.filename: info for info in self._entries}
        self._refused = {info.filename for info in self._entries if self._bomb(info)} if len(self._entries) <= MOST_FILES else set(self._by_name)

    def __enter__(self) -> Archive:
        return self

    def __exit__(self, *_) -> None:
        self._zip.close()

    def base(self) -> str | None:
        """The one folder with a `bagit.txt` in it; None: this is no bag."""
        found = sorted({name.split("/")[0] for name in self._by_name if name.count("/") == 1 and name.endswith("/bagit.txt")})
        return found[0] if found else None

    def names(self, base: str) -> set[str]:
        return {name.removeprefix(f"{base}/") for name in self._by_name if name.startswith(f"{base}/") and not unsafe(name)}

    def outside(self, base: str) -> list[str]:
        return sorted(name for name in self._by_name if not name.startswith(f"{base}/") and not unsafe(name))

    def problems(self) -> list[Mistake]:
        found = [Mistake("verify.unsafe-name", _shown(info), {"where": _shown(info)}) for info in [*self._entries, *self._folders] if unsafe(info.filename.rstrip("/"))]
        folded: dict[str, str] = {}
        seen: set[str] = set()
        for info in self._entries:
            same = unicodedata.normalize("NFC", info.filename).casefold()
            if info.filename in seen:
                found.append(Mistake("verify.twice", _shown(info), {"where": _shown(info)}))
            elif same in folded:
                found.append(Mistake("verify.twins", _shown(info), {"where": _shown(info), "other": folded[same]}))
            seen.add(info.filename)
            folded.setdefault(same, info.filename)
            if info.flag_bits & 0x1:
                found.append(Mistake("verify.encrypted", _shown(info), {"where": _shown(info)}))
            if stat.S_ISLNK(info.external_attr >> 16):
                found.append(Mistake("verify.link", _shown(info), {"where": _shown(info)}))
        if len(self._entries) > MOST_FILES:
            found.append(Mistake("verify.too-many", "", {"number": len(self._entries)}))
        found += [Mistake("verify.bomb", name, {"where": name, "bytes": self._by_name[name].file_size}) for name in sorted(self._refused)[:20]]
        return found + self._gaps()

    def remarks(self) -> list[Mistake]:
        """Signs that another program packed it again; the content may be whole all the same."""
        names = [info.filename for info in self._entries if "/data/" in info.filename]
        again = any(info.compress_type != zipfile.ZIP_STORED or info.date_time != FIXED_TIME for info in self._entries)
        return [Mistake("verify.packed-again", "")] if again or names != sorted(names) else []

    def chunks(self, name: str, most: int | None = None) -> Iterator[bytes]:
        """The bytes of a file, never more than its directory entry says (or `most`). Raises BadZipFile."""
        info = self._by_name[name]
        if name in self._refused or (most is not None and info.file_size > most):
            raise zipfile.BadZipFile("too large")
        left = info.file_size
        with self._zip.open(info) as file:
            while chunk := file.read(min(CHUNK, left + 1)):
                left -= len(chunk)
                if left < 0:
                    raise zipfile.BadZipFile("longer than the directory says")
                yield chunk
        if left:
            raise zipfile.BadZipFile("shorter than the directory says")

    def lines(self, name: str) -> Iterator[bytes]:
        rest = b""
        for chunk in self.chunks(name):
            *whole, rest = (rest + chunk).split(b"\n")
            if len(rest) > MOST_LINE:
                raise ValueError("a line without an end")
            yield from whole
        if rest:
            yield rest

    def _bomb(self, info: zipfile.ZipInfo) -> bool:
        """Says it holds far more than it takes, or more than the file has room for."""
        return info.compress_size > self.size or info.file_size > MOST_GROWTH * info.compress_size + CHUNK

    def _gaps(self) -> list[Mistake]:
        """Files must stand one behind the other: no two share bytes, and no bytes belong to nobody."""
        found, at = [], 0
        with open(self._zip.filename, "rb") as file:
            for info in sorted(self._zip.infolist(), key=lambda one: one.header_offset):
                file.seek(max(info.header_offset, 0))  # an end record that lies gives offsets before the file
                head = file.read(_LOCAL.size) if info.header_offset >= 0 else b""
                if len(head) < _LOCAL.size or head[:4] != b"PK\x03\x04":
                    found.append(Mistake("verify.unreadable", _shown(info), {"where": _shown(info), "why": "no local header"}))
                    continue
                long_name, long_extra = _LOCAL.unpack(head)[-2:]
                if info.header_offset < at:
                    found.append(Mistake("verify.overlap", _shown(info), {"where": _shown(info)}))
                elif info.header_offset > at:
                    found.append(Mistake("verify.loose-bytes", _shown(info), {"where": _shown(info), "bytes": info.header_offset - at}))
                at = info.header_offset + _LOCAL.size + long_name + long_extra + info.compress_size
                if info.flag_bits & 0x8:  # a data descriptor follows
                    at += self._descriptor(file, at)
            start = self._zip.start_dir
            if start != at:
                key = "verify.loose-bytes" if start > at else "verify.overlap"
                found.append(Mistake(key, "directory", {"where": "directory", "bytes": start - at}))
            tail = self.size - start
            file.seek(start)
            if tail > 0 and not _ends_well(file.read(min(tail, 1 << 28)), len(self._zip.comment)):
                found.append(Mistake("verify.loose-bytes", "end", {"where": "end", "bytes": tail}))
        return found

    @staticmethod
    def _descriptor(file, at: int) -> int:
        file.seek(at)
        return next((size for size in (24, 20) if _follows(file, at + size)), 16 if file.read(4) == b"PK\x07\x08" else 12)


def _follows(file, at: int) -> bool:
    """Another header starts here: only then was the descriptor a long one."""
    file.seek(at)
    return file.read(4) in (b"PK\x03\x04", b"PK\x01\x02")


def _ends_well(tail: bytes, comment: int) -> bool:
    """The end record stands at the very end, without a comment that could hide something."""
    return comment == 0 and tail[-22:-18] == b"PK\x05\x06"


def _shown(info: zipfile.ZipInfo) -> str:
    """A name that is safe to print."""
    return "".join(sign if sign.isprintable() else "□" for sign in info.filename)[:200]
