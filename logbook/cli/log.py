"""Print the log: notes with their state, pieces with facts, findings and questions."""

from __future__ import annotations

import json
import sys
from datetime import date
from pathlib import Path


def configure(parser) -> None:
    parser.add_argument("--date", metavar="D", help="one day of the job, as 2026-10-14")
    parser.add_argument("--folder", type=Path, default=Path("uploads"), help="the job folder (default ./uploads)")
    parser.add_argument("--language", choices=("en", "es"), default="en")
    parser.add_argument("--json", action="store_true")


def run(args) -> int:
    from logbook import labels, store
    from logbook.mistake import BAD, FLAGGED, OK, Mistake
    from logbook.wording import say

    no_day = args.date is not None and not _is_day(args.date)
    folder = Mistake("store.no-day", values={"came": args.date}) if no_day else store.open_folder(args.folder)
    if isinstance(folder, Mistake):
        for part in ("error", "cure"):
            print(say(f"{folder.key}.{part}", args.language, **folder.values), file=sys.stderr)
        return BAD
    with folder:
        if args.date:
            found = store.day_documents(folder, args.date, args.language)
            doc = {"date": args.date, "notes": found["notes"], "pieces": found["pieces"]}
        else:
            doc = {"notes": list(store.each_note(folder, args.language)), "pieces": list(store.each_piece(folder, args.language))}
    flagged = any(one["shows"] == "flag" and one.get("stands") in ("open", "in hand") for piece in doc["pieces"] for one in piece["findings"])
    if args.json:
        print(json.dumps(doc, ensure_ascii=False, indent=1))
        return FLAGGED if flagged else OK
    if not doc["notes"]:
        print(say("store.log.empty", args.language))
    for note in doc["notes"]:
        state = say(f"facts.state.{note['state']}", args.language)
        print(say("store.log.note", args.language, time=note["spoken_at"], who=note["spoken_by"], state=state))
        if note["text"]:
            print(f"    “{note['text']}”")
        elif note["problem"]:
            print(f"    {note['problem']['why']} {note['problem']['cure']}")
    for piece in doc["pieces"]:
        kind = next((labels.value("kind", f["value"], None, args.language) for f in piece["facts"] if f["name"] == "kind"), "–")
        mark = piece["mark"] or say("store.log.unmarked", args.language)
        print(say("store.log.piece", args.language, mark=mark, run=piece["run"] or "–", kind=kind))
        for one in piece["findings"]:
            if one["shows"] in ("flag", "ask"):
                print(f"    {say('facts.verdict.' + one['verdict'], args.language)}: {one['says']}")
    return FLAGGED if flagged else OK


def _is_day(text: str) -> bool:
    try:
        return date.fromisoformat(text).isoformat() == text
    except ValueError:
        return False
