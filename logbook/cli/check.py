"""Take a note as text or sound the whole way: what was said, what departs, what was not said."""

from __future__ import annotations

import argparse
import hashlib
import json
import sys
import textwrap
from pathlib import Path

from logbook.cli.take import SOUND
from logbook.mistake import BAD, FLAGGED, OK, Mistake
from logbook.wording import LANGUAGES, has, say

TONGUE = "en"  # of the command line's own sentences
STDIN = "-"
WIDE = 96
ORDER = ("departs", "unclear", "unsaid", "meets")


def configure(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("files", nargs="*", metavar="FILE", help="notes as UTF-8 text or as sound; - or nothing: text from standard input")
    parser.add_argument("--job", type=Path, metavar="job.toml", help="the job file: limits, standing words, schedule, crew phrases")
    parser.add_argument("--photo", action="append", type=Path, default=[], metavar="P", help="a photo of the one note; may be given several times")
    parser.add_argument("--language", choices=LANGUAGES, help="of the words and of the answer; without it the language is found")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument("--engine", default="whisper", help="for sound: whisper, or scripted (prepared transcripts)")
    parser.add_argument("--again", metavar="DAY", help="what today's rule book says of a day's pieces beside what is kept; changes nothing")
    parser.add_argument("--folder", default="uploads", metavar="DIR", help="the job folder of --again (default ./uploads)")
    parser.add_argument("--prepared", type=Path, metavar="DIR", help="folder of prepared transcripts")


def run(args: argparse.Namespace) -> int:
    if args.again is not None:
        from logbook.cli import again

        return again.run(args)
    from logbook import job as jobs

    job = jobs.DEFAULT if args.job is None else jobs.load(args.job)
    if isinstance(job, tuple):
        return _refuse(job, args.json)
    names = args.files or [STDIN]
    if args.photo and len(names) > 1:
        return _refuse((Mistake("check.photo-of-many", "--photo", {"count": len(names)}),), args.json)
    photos, worst = _photos(args.photo)
    words = _words(names, args)
    documents = [_document(name, words[place], job, photos, args.language) for place, name in enumerate(names)]
    for document in documents:
        worst = max(worst, _exit_code(document))
        if not args.json:
            _show(document, args.language)
    if args.json:
        several = len(documents) > 1 or "error" in documents[0]
        bare = [doc if several else {k: v for k, v in doc.items() if k != "input"} for doc in documents]
        print(json.dumps({"documents": bare} if len(documents) > 1 else bare[0], ensure_ascii=False, indent=1))
    return worst


def _words(names: list[str], args) -> list:
    """The text or the transcript of every input, or the mistake; sounds are heard together, in one batch."""
    given = [_given(name) for name in names]
    sounds = [place for place, one in enumerate(given) if one is _SOUND]
    if not sounds:
        return given
    from logbook.decoding.sound import decode
    from logbook.hearing import engine, second

    ears = engine.make(args.engine, args.prepared)
    decoded = {place: ears if isinstance(ears, Mistake) else decode(names[place]) for place in sounds}
    good = [place for place in sounds if not isinstance(decoded[place], Mistake)]
    heard = second.hear_twice(ears, [decoded[place] for place in good], [args.language] * len(good)) if good else []
    for place, mistake in decoded.items():
        given[place] = mistake
    for place, one in zip(good, heard):
        given[place] = _not_heard(one, decoded[place], names[place]) or one
    return given


_SOUND = object()


def _given(name: str):
    """The text of an input, or `_SOUND`, or why it cannot be read."""
    from logbook import intake

    try:
        raw = sys.stdin.buffer.read() if name == STDIN else Path(name).read_bytes()
    except OSError as error:
        return Mistake("check.no-file", name, {"name": name, "came": error.strerror or "?"})
    shown = "(stdin)" if name == STDIN else Path(name).name
    kind = intake.kind(raw[: intake.HEAD])
    if (kind in intake.SOUND_KINDS or Path(name).suffix.lower() in SOUND) and name != STDIN:
        return _SOUND  # also where a recording was named and nothing of one is in it: hearing tells what came
    try:
        text = raw.decode("utf-8-sig").strip()
    except UnicodeDecodeError as error:
        return Mistake("check.not-text", name, {"name": shown, "byte": error.start})
    if not text:
        return Mistake("check.empty", name, {"name": shown})
    if len(text) > intake.TEXT_SIGNS:
        return Mistake("check.too-long", name, {"name": shown, "most": intake.TEXT_SIGNS, "came": len(text)})
    return text


def _not_heard(heard, sound, name: str) -> Mistake | None:
    """A recording without words is bad input: silence is never a pass."""
    if isinstance(heard, Mistake):
        return heard
    if heard.text:
        return None
    why = say(f"hearing.why.{heard.unheard[0].why}", TONGUE) if heard.unheard else say("hearing.why.no_speech", TONGUE)
    return Mistake("hearing.not-heard", name, {"seconds": sound.whole_seconds, "why": why})


def _photos(paths: list[Path]) -> tuple[list, int]:
    """The photos as the rules look at them, and the exit code so far: one that cannot be seen is told, and kept out."""
    if not paths:
        return [], OK
    from logbook.decoding import pictures
    from logbook.note import Photo

    photos, worst = [], OK
    for path in paths:
        seen = pictures.look(path)
        if isinstance(seen, Mistake):
            print(*_told(seen).values(), sep="\n", file=sys.stderr)
            worst = BAD
            if not path.is_file():
                continue
        digest = hashlib.sha256(path.read_bytes()).hexdigest()
        # when the note was spoken is not known here, so nothing is said of how long before it the photo was taken
        good = {} if isinstance(seen, Mistake) else seen
        photos.append(Photo(digest, tags=tuple(good.get("tags", ())), readable=bool(good), seen=good))
    return photos, worst


def _document(name: str, words, job, photos, language: str | None) -> dict:
    if isinstance(words, Mistake):
        return {"input": name, **_told(words)}
    from logbook.pipeline import check

    return {"input": name, **check(words, job=job, photos=photos, language=language, says_in=language)}


def _exit_code(document: dict) -> int:
    if "error" in document:
        return BAD
    return FLAGGED if any(f["shows"] == "flag" for one in document["fittings"] for f in one["findings"]) else OK


def _told(mistake: Mistake) -> dict:
    return {part: say(f"{mistake.key}.{part}", TONGUE, **mistake.values) for part in ("error", "cure")}


def _refuse(mistakes: tuple[Mistake, ...], as_json: bool) -> int:
    told = [_told(mistake) for mistake in mistakes]
    if as_json:
        print(json.dumps({part: "\n".join(one[part] for one in told) for part in ("error", "cure")}, ensure_ascii=False, indent=1))
    for one, mistake in zip(told, mistakes):
        print(f"{mistake.where}: {one['error']}" if mistake.where else one["error"], one["cure"], sep="\n", file=sys.stderr)
    return BAD


# --- for people


def _show(document: dict, language: str | None) -> None:
    if "error" in document:
        print(f"{document['input']}: {document['error']}", document["cure"], sep="\n", file=sys.stderr)
        return
    tongue = language or document["language"] or TONGUE
    print(f"{document['input']}")
    _paragraph(f"“{document['text']}”", "  ")
    for stretch in document.get("transcript", {}).get("unheard", ()):
        why = say(f"hearing.why.{stretch['why']}", tongue)
        _paragraph(say("hearing.show.unheard" if stretch["until"] > stretch["second"] else "hearing.show.at", tongue, second=stretch["second"], until=stretch["until"], why=why), "  ")
    if "reason" in document and has(document["reason"], tongue):
        _paragraph(say(document["reason"], tongue), "  ")
    if not document["fittings"]:
        key = "shift" if document["shift"] else "takes-back" if document["withdraws"] else "no-fitting"
        _paragraph(say(f"check.show.{key}", tongue), "  ")
    for fitting in document["fittings"]:
        _show_fitting(fitting, tongue)
    for position, rule in document["questions"]:
        finding = next(f for f in document["fittings"][position]["findings"] if f["rule"] == rule)
        _paragraph(say("check.show.question", tongue, question=finding["do"] or finding["says"]), "  ")
    if document["fittings"]:
        _paragraph(say("check.show.caution", tongue), "  ")
    print()


def _show_fitting(fitting: dict, tongue: str) -> None:
    print()
    print("  " + _title(fitting, tongue))
    findings = sorted(fitting["findings"], key=lambda f: ("flag", "ask", "count", "file").index(f["shows"]))
    for verdict in ORDER:
        for finding in findings:
            if finding["verdict"] == verdict and not (verdict == "unsaid" and finding["shows"] == "count"):
                flag = say("check.show.flag", tongue) if finding["shows"] == "flag" else ""
                word = say(f"check.verdict.{verdict}", tongue)
                _paragraph(" ".join(part for part in (finding["says"], flag) if part), f"    {word:<18}", " " * 22)
                if finding["do"] and verdict != "meets":
                    _paragraph(say("check.show.do", tongue, do=finding["do"]), " " * 22)
    left = [f["says"] for f in findings if f["verdict"] == "unsaid" and f["shows"] == "count"]
    if left:
        _paragraph(" ".join(left), f"    {say('check.show.also-unsaid', tongue):<18}", " " * 22)
    words = [f"{_label(word['name'], tongue)} {_value(word, tongue)}" for word in fitting["assumed"]]
    if words:
        _paragraph("; ".join(words), f"    {say('check.show.assumed', tongue):<18}", " " * 22)


def _title(fitting: dict, tongue: str) -> str:
    said = {fact["name"]: fact for fact in reversed(fitting["facts"])}
    parts = [_value(said["kind"], tongue) if "kind" in said else say("check.show.no-kind", tongue)]
    if "mark" in said:
        parts.append(said["mark"]["value"])
    if "run" in said:
        parts.append(say("check.show.of-run", tongue, run=said["run"]["value"]))
    sizes = [_value(said[name], tongue) for name in ("inlet_size", "outlet_size", "branch_size") if name in said]
    title = " ".join(parts)
    return title[:1].upper() + title[1:] + (": " + " – ".join(sizes) if sizes else "")


def _label(name: str, tongue: str) -> str:
    from logbook import labels

    return labels.name(name, tongue)


def _value(fact: dict, tongue: str) -> str:
    from logbook import labels

    return labels.value(fact["name"], fact["value"], fact.get("exact"), tongue)


def _paragraph(text: str, first: str, then: str | None = None) -> None:
    print(textwrap.fill(text, WIDE, initial_indent=first, subsequent_indent=first if then is None else then))
