"""Read facts out of the words of a note, and show which words they come from."""

from __future__ import annotations

import argparse
import json
import sys
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
    for one in reading.unread:
        print(say("reading.unread-words", language, words=one.words))
    if not reading.fittings and reading.shift is None and reading.withdraws is None:
        print(say(reading.reason or "reading.nothing-said", language))


def _explain(reading, language: str) -> None:
    """The note line by line, under each line what its words became."""
    notes = sorted(_told(reading, language))
    for at, line in _lines(reading.text):
        print(line.rstrip())
        for start, end, told in notes:
            if at <= start < at + len(line) or (start < at < end and not line.isspace()):
                first = max(start - at, 0)
                print(" " * first + "^" * max(1, min(end - at, len(line)) - first) + " " + told)
    if not notes:
        print(say(reading.reason or "reading.nothing-said", language))


def _told(reading, language: str):
    """(start, end, what is told of these words) of every fact, what it replaced, what is still to do and what was left alone."""
    from logbook.reading.explain import left_alone

    for entry in reading.fittings:
        number = entry.position + 1
        for fact in entry.facts:
            label = f"{number} {_name(fact.name, language)}: {_value(fact, language)}"
            if fact.from_fitting is None:
                yield fact.start, fact.end, label
                for also in fact.also:
                    yield also.start, also.end, say("reading.with", language, name=f"{number} {_name(fact.name, language)}")
            for also in fact.also if fact.from_fitting is not None else ():
                yield also.start, also.end, say("reading.from", language, label=label, number=fact.from_fitting + 1)
            for back in fact.withdrawn:
                yield back.start, back.end, say("reading.taken-back", language, name=f"{number} {_name(fact.name, language)}")
        for back in entry.withdrawn:
            yield back.start, back.end, say("reading.taken-back", language, name=f"{number} {_name(back.name, language)}")
        for item in entry.open_items:
            yield item.start, item.end, say("reading.open", language, words=item.text)
        if entry.same_as is not None:
            yield entry.same_as.start, entry.same_as.end, say("reading.same-as", language, number=number, mark=entry.same_as.mark)
    for fact in reading.shift or ():
        yield fact.start, fact.end, f"{say('reading.shift', language)} {_name(fact.name, language)}: {_value(fact, language)}"
    if reading.withdraws is not None:
        yield reading.withdraws.start, reading.withdraws.end, say("reading.withdraws", language, words=reading.withdraws.words)
    for one in reading.unread:
        yield one.start, one.end, say("reading.unread", language)
    for one in left_alone(reading):
        yield one.start, one.end, say(f"reading.left.{one.why}", language)


def _lines(text: str):
    """(offset, line) of a text, its own lines cut at a blank where they are wider than the page; no character is lost."""
    at = 0
    for own in text.splitlines() or [""]:
        begin = 0
        while len(own) - begin > WIDE:
            cut = own.rfind(" ", begin + 1, begin + WIDE)
            cut = begin + WIDE if cut <= begin else cut + 1
            yield at + begin, own[begin:cut]
            begin = cut
        yield at + begin, own[begin:]
        at = text.find(own, at) + len(own) + 1


def _name(name: str, language: str) -> str:
    return say(f"facts.name.{name}", language)


def _value(fact, language: str) -> str:
    from logbook import labels
    from logbook.facts import exact_to_json, to_json

    value = labels.value(fact.name, to_json(fact.name, fact.value), exact_to_json(fact.name, fact.value), language)
    marks = [say(f"reading.mark.{key}", language) for key, there in (("hedged", fact.hedged), ("conflict", fact.conflict)) if there]
    marks += [say("reading.mark.read-as", language, words=fact.read_as)] if fact.read_as else []
    return value + (f" ({', '.join(marks)})" if marks else "")
