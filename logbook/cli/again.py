"""`logbook check --again DAY`: today's rule book beside what is kept of a day. It reads and writes nothing down."""

from __future__ import annotations

import argparse
import json
import sys
from datetime import date

from logbook.mistake import BAD, FLAGGED, OK, Mistake
from logbook.wording import say

SHORT = 12  # characters of a digest that people compare


def run(args: argparse.Namespace) -> int:
    """Exit 1 where today's book flags what the kept findings do not."""
    from logbook import store
    from logbook.store.again import again

    language = args.language or "en"
    if args.files or args.photo or args.job:
        return _refused(Mistake("again.no-folder"))
    if not _is_day(args.again):
        return _refused(Mistake("again.not-a-day", "--again", {"came": args.again[:40]}))
    folder = store.open_folder(args.folder)
    if isinstance(folder, Mistake):
        return _refused(folder)
    with folder:
        found = again(folder, args.again, language)
    if isinstance(found, Mistake):
        return _refused(found)
    if args.json:
        print(json.dumps(found, ensure_ascii=False, indent=1))
    else:
        _show(found, language)
    newly = any(
        row["today"] and row["today"]["shows"] == "flag" and not (row["kept"] and row["kept"]["shows"] == "flag")
        for piece in found["pieces"]
        for row in piece["findings"]
    )
    return FLAGGED if newly else OK


def _show(found: dict, language: str) -> None:
    from logbook import labels

    kept = found["kept_under"] or ""
    told = {"date": found["day"], "kept": kept[:SHORT] or "–", "today": found["today"][:SHORT]}
    print(say("again.signed" if found["signed"] else "again.unsigned", language, **told))
    if kept == found["today"]:
        print(say("again.same-book", language))
    changed = [(piece, [row for row in piece["findings"] if not row["same"]]) for piece in found["pieces"]]
    changed = [(piece, rows) for piece, rows in changed if rows]
    if not changed:
        print(say("again.nothing", language, pieces=len(found["pieces"])))
        return
    print(say("again.differ", language, count=found["differ"], pieces=len(changed)))
    wide = max(len(say(f"again.{side}", language)) for side in ("kept", "today"))
    for piece, rows in changed:
        name = " ".join(part for part in (labels.kind(piece["kind"], language), piece["mark"] or "") if part) or piece["piece"]
        print()
        print("  " + name + (", " + say("report.run", language, run=piece["run"]) if piece["run"] else ""))
        for row in rows:
            print(f"    {row['rule']}")
            for side in ("kept", "today"):
                print(f"      {say(f'again.{side}', language):<{wide}}  {_told(row[side], language)}")


def _told(side: dict | None, language: str) -> str:
    if side is None:
        return say("again.not-due", language)
    return f"{say('check.verdict.' + side['verdict'], language)}: {side['says']}"


def _is_day(text: str) -> bool:
    try:
        return date.fromisoformat(text).isoformat() == text
    except ValueError:
        return False


def _refused(mistake: Mistake) -> int:
    print(say(f"{mistake.key}.error", "en", **mistake.values), say(f"{mistake.key}.cure", "en", **mistake.values), sep="\n", file=sys.stderr)
    return BAD
