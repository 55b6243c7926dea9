"""write the closeout package of a job, which anybody can verify

A BagIt ZIP with register, photos, words, findings, decisions, day reports and journal; missing fittings and open
findings come first. Exit code 0 when it was written, whatever is flagged in it.
"""

from __future__ import annotations

import argparse
import json
import os
import sys
from dataclasses import asdict
from pathlib import Path


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("out", nargs="?", metavar="OUT.zip", help="where the package goes")
    parser.add_argument("--folder", default="uploads", metavar="DIR", help="the job folder (default ./uploads)")
    parser.add_argument("--language", choices=("en", "es"), help="without it the job's first language")
    parser.add_argument("--sign", metavar="KEY", help="sign with the firm's private Ed25519 key (PEM)")
    parser.add_argument("--voices", metavar="WORDS", help="carry the crew's recordings too, for the firm's own archive: say who asked them and when")
    parser.add_argument("--new-key", metavar="NAME", help="make a key pair NAME.pem (keep it) and NAME.pub.pem (give it away), and stop")
    parser.add_argument("--json", action="store_true", help="print one JSON document on standard output")


def run(args: argparse.Namespace) -> int:
    from datetime import UTC, datetime

    from logbook.mistake import OK, Mistake
    from logbook.wording import say

    if args.new_key:
        return _new_key(Path(args.new_key))
    if not args.out:
        return _refused(Mistake("handover.no-place", ""))
    voices = None if args.voices is None else " ".join(args.voices.split())
    if voices == "":
        return _refused(Mistake("handover.voices-unasked", "--voices"))
    from logbook import store
    from logbook.paper.handing_over import hand_over

    folder = store.open_folder(args.folder)
    if isinstance(folder, Mistake):
        return _refused(folder)
    with folder:
        language = args.language or (folder.job.languages[0] if folder.job.languages else "en")
        done = hand_over(folder, Path(args.out), language, datetime.now(UTC), Path(args.sign) if args.sign else None, voices)
    if isinstance(done, Mistake):
        return _refused(done)
    if done.built.photos_not_carried:
        print(say("handover.photos-left-out", language, count=done.built.photos_not_carried), file=sys.stderr)
    if args.json:
        print(json.dumps({"file": str(done.path), "sha256": done.sha256, "size": done.bytes, **asdict(done.built)}, ensure_ascii=False, indent=1))
    else:
        print(done.path, f"SHA-256 {done.sha256}", sep="\n")
    return OK


def _new_key(name: Path) -> int:
    from logbook.handover import signing
    from logbook.mistake import OK, Mistake

    private, public = name.with_suffix(".pem"), name.with_suffix(".pub.pem")
    for path in (private, public):
        if path.exists():
            return _refused(Mistake("handover.key-there", str(path), {"file": str(path)}))
    pair = signing.new_key()
    with open(os.open(private, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
        file.write(pair[0])
    public.write_bytes(pair[1])
    print(private, public, sep="\n")
    return OK


def _refused(mistake) -> int:
    from logbook.mistake import BAD
    from logbook.wording import say

    print(say(f"{mistake.key}.error", "en", **mistake.values), say(f"{mistake.key}.cure", "en", **mistake.values), sep="\n", file=sys.stderr)
    return BAD
