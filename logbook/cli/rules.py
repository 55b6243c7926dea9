"""Tell the rule book: what holds, the limits of this job, the source and spoken examples."""

from __future__ import annotations

import argparse
import json
import sys
import textwrap
from pathlib import Path

from logbook.mistake import BAD, OK, Mistake
from logbook.wording import LANGUAGES, say

WIDE = 96


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("id", nargs="?", metavar="ID", help="one rule of the book; without it all of them")
    parser.add_argument("--job", type=Path, metavar="job.toml", help="the job file whose limits, weights and silence hold")
    parser.add_argument("--language", choices=LANGUAGES, default="en")
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(args: argparse.Namespace) -> int:
    from rapidfuzz import process

    from logbook import job as jobs
    from logbook import rules

    job = jobs.DEFAULT if args.job is None else jobs.load(args.job)
    if isinstance(job, tuple):
        return _refuse(job, args)
    book = rules.book(job, args.language)
    if args.id is not None:
        nearest, _, _ = process.extractOne(args.id, rules.BY_ID.keys())
        if args.id not in rules.BY_ID:
            return _refuse((Mistake("rules.no-such-rule", "ID", {"came": args.id, "nearest": nearest}),), args)
        book = [one for one in book if one["id"] == args.id]
    if args.json:
        whole = {"rules": book, "digest": rules.book_digest(job)}
        print(json.dumps(whole if args.id is None else book[0], ensure_ascii=False, indent=1))
        return OK
    for rule in book:
        _show(rule, args.language)
    return OK


def _refuse(mistakes: tuple[Mistake, ...], args) -> int:
    told = [{part: say(f"{m.key}.{part}", args.language, **m.values) for part in ("error", "cure")} for m in mistakes]
    if args.json:
        print(json.dumps({part: "\n".join(one[part] for one in told) for part in ("error", "cure")}, ensure_ascii=False, indent=1))
    for one in told:
        print(one["error"], one["cure"], sep="\n", file=sys.stderr)
    return BAD


# --- for people


def _show(rule: dict, language: str) -> None:
    from logbook import labels

    print(f"{rule['id']}: {rule['name']}")
    _paragraph(rule["holds"], "  ")
    _line("concerns", ", ".join(labels.kind(kind, language) for kind in rule["concerns"]) or _told("every", language), language)
    for limit in rule["limits"]:
        _line("limit", f"{limit['name']} {_value(limit, language)}", language)
    _line("weight", _told(f"weight-{rule['weight']}", language), language)
    _line("silent", _told(f"silent-{rule['silent'].replace(' ', '-')}", language), language)
    if rule["may_stand"]:
        _line("may-stand", ", ".join(_told(f"stand-{via}", language) for via in rule["may_stand"]), language)
    _line("source", rule["source"] + (f" ({rule['ref']})" if rule["ref"] else ""), language)
    for example in rule["examples"]:
        verdict = _told("not-due", language) if example["verdict"] is None else say(f"facts.verdict.{example['verdict']}", language)
        _line("examples", f"“{example['words']}” – {verdict}", language)
    print()


def _value(limit: dict, language: str) -> str:
    from logbook import labels

    value, unit = limit["value"], limit["unit"]
    if value is None:
        return _told("empty", language)
    if isinstance(value, list):
        return say("facts.slope", language, rise=labels.number(value[0]), run=labels.number(value[1]))
    shown = labels.word(value, language) if isinstance(value, str) else labels.number(value, limit.get("exact"))
    return shown if unit is None else f"{shown} {unit}"


def _told(key: str, language: str) -> str:
    return say(f"rules.told.{key}", language)


def _line(key: str, text: str, language: str) -> None:
    _paragraph(text, f"  {_told(key, language)}: ", "    ")


def _paragraph(text: str, first: str, then: str | None = None) -> None:
    print(textwrap.fill(text, WIDE, initial_indent=first, subsequent_indent=first if then is None else then))
