"""Read facts out of the words of a note, and show which words they come from."""

from __future__ import annotations

import argparse
import json
import sys
import textwrap
from pathlib import Path

from logbook.mistake import BAD, OK, Mistake
from logbook.wording import LANGUAGES, say

TONGUE = "en"  # of the command line's own sentences
STDIN = "-"
WIDE = 96


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("files", nargs="*", metavar="FILE", help="notes as UTF-8 text; - or nothing: standard input")
    parser.add_argument("--language", choices=LANGUAGES, help="of the words; without it the language is found")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument("--explain", action="store_true", help="show under the words what was read, taken back, left alone and why")


def run(args: argparse.Namespace) -> int:
    from logbook.reading import read
    from logbook.said import reading_to_json

    names = args.files or [STDIN]
    documents, worst = [], OK
    for name in names:
        text = _text(name)
        if isinstance(text, Mistake):
            worst = BAD
            told = {"input": name, "error": say(f"{text.key}.error", TONGUE, **text.values), "cure": say(f"{text.key}.cure", TONGUE, **text.values)}
            documents.append(told)
            if not args.json:
                print(told["error"], told["cure"], sep="\n", file=sys.stderr)
            continue
        reading = read(text, language=args.language)
        documents.append({"input": name, **reading_to_json(reading)})
        if not args.json:
            _show(reading, args.explain)
    if args.json:
        many = len(documents) > 1
        bare = documents[0] if "error" in documents[0] else {key: value for key, value in documents[0].items() if key != "input"}
        print(json.dumps({"documents": documents} if many else bare, ensure_ascii=False, indent=1))
    return worst


def _text(name: str) -> str | Mistake:
    """The words of an input, stripped at both ends, or why it cannot be read."""
    from logbook.reading import MOST_CHARACTERS

    shown = "(stdin)" if name == STDIN else Path(name).name
    try:
        raw = sys.stdin.buffer.read() if name == STDIN else Path(name).read_bytes()
    except OSError as error:
        return Mistake("reading.no-file", name, {"name": shown, "came": error.strerror or "?"})
    try:
        text = raw.decode("utf-8-sig").strip()
    except UnicodeDecodeError as error:
        return Mistake("reading.bytes", name, {"name": shown, "byte": error.start})
    if len(text) > MOST_CHARACTERS:
        return Mistake("reading.too-many", name, {"name": shown, "most": MOST_CHARACTERS, "came": len(text)})
    return text


def _show(reading, explain: bool) -> None:
    language = reading.language or TONGUE
    if explain:
        _explain(reading, language)
        return
    for entry in reading.fittings:
        print(say("reading.entry", language, number=entry.position + 1))
        for fact in entry.facts:
            print(f"  {_name(fact.name, language)}: {_value(fact, language)}  «{fact.words}»")
        for item in entry.open_items:
            print("  " + say("reading.open", language, words=item.text))
    if reading.shift is not None:
        print(say("reading.shift", language))
        for fact in reading.shift:
            print(f"  {_name(fact.name, language)}: {_value(fact, language)}  «{fact.words}»")
    if reading.withdraws is not None:
        print(say("reading.withdraws", language, words=reading.withdraws.words))
    if not reading.fittings and reading.shift is None and reading.withdraws is None:
        print(say(reading.reason or "reading.nothing-said", language))


def _explain(reading, language: str) -> None:
    """The note line by line, under each line what its words became."""
    from logbook.reading.explain import left_alone

    notes: list[tuple[int, int, str]] = []
    for entry in reading.fittings:
        for fact in entry.facts:
            if fact.from_fitting is None:
                notes.append((fact.start, fact.end, f"{entry.position + 1} {_name(fact.name, language)}: {_value(fact, language)}"))
            for back in fact.withdrawn:
                notes.append((back.start, back.end, say("reading.taken-back", language, name=_name(fact.name, language))))
        for back in entry.withdrawn:
            notes.append((back.start, back.end, say("reading.taken-back", language, name=_name(back.name, language))))
        for item in entry.open_items:
            notes.append((item.start, item.end, say("reading.open", language, words=item.text)))
    notes += [(f.start, f.end, f"{say('reading.shift', language)} {_name(f.name, language)}: {_value(f, language)}") for f in reading.shift or ()]
    if reading.withdraws is not None:
        notes.append((reading.withdraws.start, reading.withdraws.end, say("reading.withdraws", language, words=reading.withdraws.words)))
    notes += [(one.start, one.end, say(f"reading.left.{one.why}", language)) for one in left_alone(reading)]
    at = 0
    for line in textwrap.wrap(reading.text, WIDE) or [""]:
        at = max(at, reading.text.find(line.split(" ")[0], at))
        print(line)
        for start, end, told in sorted(notes):
            if at <= start < at + len(line) + 1:
                print(" " * (start - at) + "^" * max(1, min(end - start, len(line) - (start - at))) + " " + told)
        at += len(line)
    if not notes:
        print(say(reading.reason or "reading.nothing-said", language))


def _name(name: str, language: str) -> str:
    return say(f"facts.name.{name}", language)


def _value(fact, language: str) -> str:
    from logbook.facts import to_json

    value = json.dumps(to_json(fact.name, fact.value), ensure_ascii=False)
    marks = [say(f"reading.mark.{key}", language) for key, there in (("hedged", fact.hedged), ("conflict", fact.conflict)) if there]
    marks += [say("reading.mark.read-as", language, words=fact.read_as)] if fact.read_as else []
    return value + (f" ({', '.join(marks)})" if marks else "")
