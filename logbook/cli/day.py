"""write the daily QA report of a day: HTML, PDF/A and JSON

Without a date, the newest day with notes. The report is headed as said by the installer; it approves nothing.
"""

from __future__ import annotations

import argparse
import json
import sys
from datetime import date


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("date", nargs="?", metavar="DATE", help="the day, as 2026-10-13; without it the newest day with notes")
    parser.add_argument("--folder", default="uploads", metavar="DIR", help="the job folder (default ./uploads)")
    parser.add_argument("--language", choices=("en", "es", "both"), help="without it the job's first language")
    parser.add_argument("--json", action="store_true", help="print the report's JSON document on standard output")


def run(args: argparse.Namespace) -> int:
    from datetime import UTC, datetime

    from logbook import store
    from logbook.mistake import OK, Mistake
    from logbook.paper.making import make_day

    folder = store.open_folder(args.folder)
    if isinstance(folder, Mistake):
        return _refused(folder)
    with folder:
        languages = _languages(args.language, folder.job.languages)
        day = args.date or store.newest_day(folder)
        if day is None or not _is_date(day):
            return _refused(Mistake("report.no-notes" if day is None else "report.bad-date", "", {"came": day}))
        made = make_day(folder, day, languages, datetime.now(UTC))
    if isinstance(made, Mistake):
        return _refused(made)
    if args.json:
        print(json.dumps(made.document, ensure_ascii=False, indent=1))
    else:
        print(*made.files.values(), sep="\n")
    return OK


def _languages(asked: str | None, job: tuple[str, ...]) -> tuple[str, ...]:
    if asked == "both":
        return tuple(job) if len(job) > 1 else ("en", "es")
    return (asked or (job[0] if job else "en"),)


def _is_date(text: str) -> bool:
    try:
        return date.fromisoformat(text).isoformat() == text
    except ValueError:
        return False


def _refused(mistake) -> int:
    from logbook.mistake import BAD
    from logbook.wording import say

    print(say(f"{mistake.key}.error", "en", **mistake.values), say(f"{mistake.key}.cure", "en", **mistake.values), sep="\n", file=sys.stderr)
    return BAD
