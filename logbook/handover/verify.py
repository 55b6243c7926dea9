"""Is a package whole? Needs nothing but the package: no log, no network, no software of ours on the other side.

    verify(path, key=None) -> Verdict

Every problem is listed, none stops the search. What lies outside a package cannot be told from inside it: a
package rebuilt whole by somebody else is found out only by a signature whose key you know, or by the journal's
newest hash printed on paper.
"""

from __future__ import annotations

import hashlib
import json
import zipfile
import zlib
from dataclasses import dataclass, field
from pathlib import Path

from logbook import chain
from logbook.handover import signing
from logbook.handover.archive import Archive, unsafe
from logbook.handover.bag import ALGORITHMS, DECLARATION, SIGNATURE, decoded
from logbook.mistake import Mistake

TAGS = ("bagit.txt", "bag-info.txt", *(f"manifest-{a}.txt" for a in ALGORITHMS), *(f"tagmanifest-{a}.txt" for a in ALGORITHMS))
NEEDED = (
    "index.html", "how-to-check.html", "cover.pdf", "register/as-built.csv", "register/as-built.json", "register/as-built.xlsx",
    "register/datapackage.json", "register/missing.csv", "register/photos.csv", "notes/notes.jsonl", "pieces/pieces.jsonl",
    "journal/journal.jsonl", "job/job.toml", "job/rules.json",
)  # fmt: skip
WHOLE, NOT_WHOLE, NOT_A_PACKAGE = 0, 1, 2
UNREADABLE = (zipfile.BadZipFile, zlib.error, ValueError, OSError, NotImplementedError, RuntimeError, EOFError)
SMALL = 64 << 20  # a tag file is never larger


@dataclass
class Verdict:
    """`problems` break the package, `remarks` do not. `status` is the exit code."""

    status: int
    problems: list[Mistake] = field(default_factory=list)
    remarks: list[Mistake] = field(default_factory=list)
    files: int = 0
    bytes: int = 0
    base: str = ""
    about: dict[str, str] = field(default_factory=dict)
    journal: str | None = None  # newest hash
    signed_by: str | None = None  # fingerprint


def verify(path: Path, key: bytes | None = None) -> Verdict:
    """`key` is the raw public key that must have signed. Never raises for what a file may hold."""
    if not path.is_file():
        return Verdict(NOT_A_PACKAGE, [Mistake("verify.no-file", str(path), {"file": str(path)})])
    try:
        archive = Archive(path)
    except (zipfile.BadZipFile, OSError, ValueError, NotImplementedError, EOFError) as error:
        return Verdict(NOT_A_PACKAGE, [Mistake("verify.not-a-zip", str(path), {"file": str(path), "why": str(error)[:120]})])
    with archive:
        base = archive.base()
        if base is None:
            return Verdict(NOT_A_PACKAGE, [Mistake("verify.not-a-bag", str(path), {"file": str(path)})])
        verdict = Verdict(WHOLE, base=base)
        _Check(archive, verdict).all(key)
    verdict.status = NOT_WHOLE if verdict.problems else WHOLE
    return verdict


class _Check:
    """One pass over one package; problems and digests add up."""

    def __init__(self, archive: Archive, verdict: Verdict):
        self.archive, self.verdict, self.base = archive, verdict, verdict.base
        self.digests: dict[str, dict[str, str] | None] = {}

    def wrong(self, key: str, where: str = "", **values) -> None:
        self.verdict.problems.append(Mistake(f"verify.{key}", where, {"where": where} | values))

    def all(self, key: bytes | None) -> None:
        self.verdict.problems += self.archive.problems()
        self.verdict.remarks += self.archive.remarks()
        self.names = self.archive.names(self.base)
        for outside in self.archive.outside(self.base):
            self.wrong("outside", outside)
        for name in TAGS:
            if name not in self.names:
                self.wrong("tag-missing", name)
        self._declaration()
        self._digest_all()
        manifests = {algorithm: self._manifest(f"manifest-{algorithm}.txt") for algorithm in ALGORITHMS}
        self._compare(manifests, {name for name in self.names if name.startswith("data/")}, "data/")
        tags = {algorithm: self._manifest(f"tagmanifest-{algorithm}.txt") for algorithm in ALGORITHMS}
        loose = {SIGNATURE, *(f"tagmanifest-{a}.txt" for a in ALGORITHMS)}
        self._compare(tags, {name for name in self.names if not name.startswith("data/") and name not in loose}, "")
        self._about()
        for name in NEEDED:
            if f"data/{name}" not in self.names:
                self.wrong("needed-missing", f"data/{name}")
        self._journal()
        self._signature(key)

    def _declaration(self) -> None:
        if "bagit.txt" in self.names and self._small("bagit.txt") != DECLARATION:
            self.wrong("declaration", "bagit.txt")

    def _small(self, name: str) -> bytes:
        """A tag file; empty where it cannot be read (already a problem)."""
        if name not in self.names:
            return b""
        try:
            return b"".join(self.archive.chunks(f"{self.base}/{name}", SMALL))
        except UNREADABLE:
            return b""

    def _digest_all(self) -> None:
        for name in sorted(self.names):
            counted = {algorithm: hashlib.new(algorithm) for algorithm in ALGORITHMS}
            try:
                for chunk in self.archive.chunks(f"{self.base}/{name}"):
                    for digest in counted.values():
                        digest.update(chunk)
                    if name.startswith("data/"):
                        self.verdict.bytes += len(chunk)
            except UNREADABLE as error:
                self.wrong("unreadable", name, why=str(error)[:120])
                self.digests[name] = None
                continue
            self.digests[name] = {algorithm: digest.hexdigest() for algorithm, digest in counted.items()}
            self.verdict.files += name.startswith("data/")

    def _manifest(self, name: str) -> dict[str, str]:
        found: dict[str, str] = {}
        try:
            lines = self._small(name).decode("utf-8").splitlines()
        except UnicodeDecodeError:
            self.wrong("manifest-line", name, line="1")
            return found
        for number, line in enumerate(lines, 1):
            digest, _, path = line.partition(" ")
            path = decoded(path.lstrip(" *"))
            if not path or len(digest) not in (64, 128) or unsafe(path):
                self.wrong("manifest-line", name, line=str(number))
            elif path in found:
                self.wrong("manifest-twice", name, path=path)
            else:
                found[path] = digest.lower()
        return found

    def _compare(self, manifests: dict[str, dict[str, str]], there: set[str], inside: str) -> None:
        """Each file against each manifest; a moved file is named with its old place."""
        listed = set().union(*manifests.values())
        missing, added = sorted(listed - there), sorted(there - listed)
        known = {manifests[ALGORITHMS[0]].get(path): path for path in missing}
        for path in added:
            found = self.digests.get(path)
            old = known.get(found["sha256"]) if found else None
            if old is None:
                self.wrong("added", path)
            else:
                self.wrong("renamed", path, old=old)
                missing.remove(old)
                known.pop(found["sha256"])
        for path in missing:
            self.wrong("dropped", path)
        for path in sorted(listed & there):
            found = self.digests.get(path)
            differing = [a for a, one in manifests.items() if found and path in one and one[path] != found[a]]
            if differing:
                self.wrong("changed", path, algorithms=", ".join(differing))
            for algorithm, one in manifests.items():
                if path not in one:
                    self.wrong("not-in-manifest", path, manifest=f"{algorithm}")
            if inside and not path.startswith(inside):
                self.wrong("manifest-line", path, line=path)

    def _about(self) -> None:
        for line in self._small("bag-info.txt").decode("utf-8", "replace").splitlines():
            name, colon, value = line.partition(":")
            if colon:
                self.verdict.about[name.strip()] = value.strip()
        oxum = self.verdict.about.get("Payload-Oxum")
        counted = f"{self.verdict.bytes}.{sum(name.startswith('data/') for name in self.names)}"
        if oxum != counted:
            self.wrong("oxum", "bag-info.txt", expected=oxum or "–", came=counted)

    def _journal(self) -> None:
        """The chain holds from its first row; the newest hash is that of bag-info, and every hash on a day report is in it."""
        name = "data/journal/journal.jsonl"
        if name not in self.names or self.digests.get(name) is None:
            return
        hashes: set[str] = set()

        def rows():
            for number, line in enumerate(self.archive.lines(f"{self.base}/{name}"), 1):
                try:
                    told = json.loads(line)
                    row = chain.Row(*(told[part] for part in ("seq", "at", "act", "ids", "digest", "before", "hash")))
                except (ValueError, KeyError, TypeError):
                    self.wrong("journal-row", name, row=str(number))
                    return
                hashes.add(row.hash)
                self.verdict.journal = row.hash
                if row.act == "erased":
                    self.verdict.remarks.append(Mistake("verify.erased", f"journal {row.seq}", {"seq": row.seq, "date": str(row.at)[:10]}))
                yield row

        try:
            self.verdict.problems += list(chain.problems(rows()))
        except (TypeError, *UNREADABLE):
            self.wrong("journal-row", name, row="–")
        printed = self.verdict.about.get("Journal-Newest-Hash")
        if printed is not None and printed != (self.verdict.journal or chain.START):
            self.wrong("journal-newest", name, expected=printed[:16], came=(self.verdict.journal or chain.START)[:16])
        for day in sorted(one for one in self.names if one.startswith("data/days/") and one.endswith(".json")):
            self._day(day, hashes)

    def _day(self, name: str, hashes: set[str]) -> None:
        try:
            reports = json.loads(self._small(name))["reports"]
            printed = {report["journal"]["hash"] for report in reports if report["journal"]["seq"]}
        except (ValueError, KeyError, TypeError):
            self.wrong("day-unreadable", name)
            return
        for one in sorted(printed - hashes):
            self.wrong("day-hash", name, hash=one[:16])

    def _signature(self, key: bytes | None) -> None:
        if SIGNATURE not in self.names:
            if key is not None:
                self.wrong("not-signed", SIGNATURE, expected=signing.fingerprint(key)[:16])
            else:
                self.verdict.remarks.append(Mistake("verify.unsigned", SIGNATURE))
            return
        self.verdict.signed_by, problem = signing.check(self._small(SIGNATURE), self._small(signing.SIGNS), key)
        if problem:
            self.verdict.problems.append(problem)
        elif key is None:
            self.verdict.remarks.append(Mistake("verify.key-not-given", SIGNATURE, {"key": self.verdict.signed_by}))
