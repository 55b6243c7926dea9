"""How long the day report and the closeout package take, and in how much memory. Printed, never asserted.

    python tests/bench/paper.py day [FITTINGS PHOTOS_EACH]
    python tests/bench/paper.py package [FITTINGS PHOTOS_EACH [KILOBYTES]]

The package is compared with plain tools on the same bytes: read every file, hash it with SHA-256 and SHA-512, copy it.
"""

import hashlib
import json
import random
import resource
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))


def peak() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def day(fittings: int, each: int) -> None:
    import paper_days

    from logbook.day import document
    from logbook.paper import reports

    made, copies = paper_days.many(fittings, each)
    before, start = peak(), time.perf_counter()
    whole = document({"en": made}, "2026-10-13T17:05:00-05:00")
    pages = reports.html(whole, copies)
    printed = reports.pdf(whole, copies)
    print(json.dumps({
        "fittings": fittings, "photos": len(copies), "seconds": round(time.perf_counter() - start, 2), "pdf_mb": round(len(printed) / 1e6, 1),
        "html_mb": round(len(pages) / 1e6, 1), "peak_mb": round(peak()), "peak_before_mb": round(before),
    }))  # fmt: skip


def package(fittings: int, each: int, kilobytes: int = 60) -> None:
    import paper_days

    from logbook.handover.verify import verify
    from logbook.paper.package import Closeout, build

    with tempfile.TemporaryDirectory() as place:
        root = Path(place)
        photos = [root / "originals" / f"{at}.jpg" for at in range(fittings * each)]
        (root / "originals").mkdir()
        (root / "spool").mkdir()
        made = random.Random(7)
        digests = []
        for at in range(fittings * each):
            content = b"\xff\xd8" + at.to_bytes(4, "big") + made.randbytes(kilobytes * 1000)
            digests.append(hashlib.sha256(content).hexdigest())
            (root / "originals" / f"{digests[-1]}.jpg").write_bytes(content)
        photos = sorted((root / "originals").iterdir())

        def documents(kind):
            for at in range(fittings):
                shown = digests[at * each : (at + 1) * each]
                one = paper_days.fitting(at, shown)
                yield one[kind]

        closeout = Closeout(
            job=paper_days.JOB, language="en", notes=lambda: documents(0), pieces=lambda: documents(1), journal=lambda: iter(()),
            original=lambda digest: root / "originals" / f"{digest}.jpg", rules=[], files=[("job/job.toml", photos[0])],
        )  # fmt: skip
        start = time.perf_counter()
        with open(root / "out.zip", "wb") as file:
            built = build(file, closeout, root / "spool")
        ours, high = time.perf_counter() - start, peak()
        start = time.perf_counter()
        with open(root / "plain", "wb") as copy:
            for path in photos:
                content = path.read_bytes()
                hashlib.sha256(content).digest()
                hashlib.sha512(content).digest()
                copy.write(content)
        plain = time.perf_counter() - start
        (root / "plain").unlink()
        start = time.perf_counter()
        verdict = verify(root / "out.zip")
        print(json.dumps({
            "fittings": fittings, "photos": built.photos, "photo_kb": kilobytes, "zip_mb": round((root / "out.zip").stat().st_size / 1e6), "seconds": round(ours, 1),
            "plain_seconds": round(plain, 1), "ratio": round(ours / plain, 2), "peak_mb": round(high), "verify_seconds": round(time.perf_counter() - start, 1),
            "verify": verdict.status, "peak_after_verify_mb": round(peak()),
        }))  # fmt: skip


if __name__ == "__main__":
    what, *numbers = sys.argv[1:]
    {"day": day, "package": package}[what](*(int(one) for one in numbers or ("60", "3")))
